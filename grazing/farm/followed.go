package farm

import (
	"slices"

	"example.org/soum/forage"
	"example.org/soum/internal/document"
	"example.org/soum/internal/season"
	"example.org/soum/units"
)

// Followed returns the farm as it stands on the morning of a later day if its plan is
// followed to the letter: a plan made from it goes on with the same moves, feed and
// masses. The given farm is not changed. For what went otherwise, CarryOn takes a log.
//
// Method: the season is stepped to the evening before; what stands and when it was bitten
// becomes heights and stretches, the visits still to come become due and stay, the place
// of the strips the front, and the first day of grass grass_from. Head, weight and stage
// of the groups become those of the day; changes and cuts that are past go. season.from
// stays. The hay in store stays as it was: take off what was fed, and add what the cuts
// gave
//
// Note: a document has one height for a paddock, so that one of which a cut took a part
// has the mean of its parts.
//
// Errors: a *document error where the new day is before the farm's or after its season,
// or the farm is wrong
//
// Check: TestFollowedPlanGoesOn, TestFollowedByHand
//
// Source: ours: the rules in DEVELOPERS.md
func (f *Farm) Followed(today units.Date) (*Farm, error) {
	if err := f.Check(); err != nil {
		return nil, err
	}
	if today < f.Today || today > f.Season.To {
		return nil, document.Wrong("today", today, "is not a day of the plan", "a date from "+f.Today.String()+" to "+f.Season.To.String())
	}
	made, err := settle(f, units.Middle)
	if err != nil {
		return nil, err
	}
	r := &resumed{ready: made, today: today, next: document.Copy(f)}
	r.next.Today = today
	if over := int(today - f.Today); over > 0 {
		season.Watch(&made.input, func(evening season.State) {
			if evening.Day == over-1 && err == nil {
				err = r.takeOver(&evening)
			}
		})
	}
	if err != nil {
		return nil, err
	}
	for _, step := range []func() error{r.settleGroups, r.carrySoil} {
		if err := step(); err != nil {
			return nil, err
		}
	}
	r.next.Cuts = slices.DeleteFunc(r.next.Cuts, func(c Cut) bool { return c.Date < today })
	return r.next, r.next.Check()
}

// takeOver writes what stands in an evening into the document of the next morning.
func (r *resumed) takeOver(evening *season.State) error {
	for i := range r.next.Land {
		if err := r.takeLand(i, evening); err != nil {
			return err
		}
	}
	for i := range r.next.Rotations {
		rotation := &r.next.Rotations[i]
		rotation.Front = nil
		if at := evening.At[i]; at > 0 {
			rotation.Front = &Front{Land: rotation.Land[evening.Fronts[i]], At: units.Length(at)}
		}
		if grass := r.grass[i]; grass != never {
			day := r.date(grass)
			rotation.GrassFrom = &day
		}
	}
	return nil
}

func (r *resumed) takeLand(i int, evening *season.State) error {
	l, at := &r.next.Land[i], &r.lands[i]
	ceiling := l.ceiling(at.pasture)
	l.Height, l.Grazed, l.Stretches, l.Stay = 0, nil, nil, nil
	var pieces []Stretch
	for _, piece := range evening.Lands[i] {
		height, err := forage.HeightOf(units.Yield(piece.Mass), at.density)
		if units.Impossible(err) {
			return err
		}
		p := Stretch{To: units.Length(piece.To), Height: min(height, ceiling)}
		if piece.Bitten != season.Never {
			day := r.date(piece.Bitten)
			p.Grazed = &day
		}
		for _, d := range piece.Due {
			p.Due = append(p.Due, Due{Group: r.farm.Groups[d.Group].ID, Date: r.date(d.Day), Eat: units.DryMatter(d.Eat), Use: units.Fraction(d.Use)})
		}
		pieces = append(pieces, p)
	}
	if stay := evening.Stays[i]; stay.Days > 0 {
		first := units.Fraction(stay.First)
		l.Stay = &Stay{From: r.date(stay.From), Planned: units.Days(stay.Planned), Days: units.Days(stay.Days), First: &first}
	}
	if l.isPaddock() {
		whole := ground{land: l}
		for _, p := range pieces {
			mass := r.mass(at, p.Height, new(problems))
			whole.pieces = append(whole.pieces, piece{to: p.To, mass: mass, grazed: p.Grazed})
		}
		whole.join()
		height, err := forage.HeightOf(whole.pieces[0].mass, at.density)
		l.Height, l.Grazed = min(height, ceiling), whole.pieces[0].grazed
		if units.Impossible(err) {
			return err
		}
		return nil
	}
	if len(pieces) == 1 && len(pieces[0].Due) == 0 {
		l.Height, l.Grazed = pieces[0].Height, pieces[0].Grazed
		return nil
	}
	l.Stretches = pieces
	return nil
}
