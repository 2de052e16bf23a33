package farm

import (
	"fmt"
	"slices"

	"example.org/soum/forage"
	"example.org/soum/herd"
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
// stays. What the plan's cuts gave is added to the hay in store, what it fed is taken off,
// down to nothing. The account of the soil's water begins where it began
//
// Note: a document has one height for a paddock, so that one of which a cut took a part
// has the mean of its parts.
//
// Errors: a *document error where the new day is before the farm's or after its season,
// or the farm is wrong
//
// Check: TestFollowedPlanGoesOn, TestFollowedByHand, TestFollowedHay
//
// Source: ours: the rules in DEVELOPERS.md
func (f *Farm) Followed(today units.Date) (*Farm, error) {
	r, err := f.resume(today)
	if err != nil {
		return nil, err
	}
	result, err := r.goOn(&r.input, func(*season.State) error { return nil })
	if err != nil {
		return nil, err
	}
	feed := &r.next.Feed
	feed.Hay = max(0, feed.Hay+r.made(result.Days[:r.over])-f.asFed(r.fed(result)))
	return r.next, r.next.Check()
}

// resumed is a farm on its way to a later day.
type resumed struct {
	*ready
	today  units.Date
	over   int // days up to then
	next   *Farm
	logged bool   // there is a log
	told   []told // by land
}

// resume begins to carry a farm on.
func (f *Farm) resume(today units.Date) (*resumed, error) {
	if err := f.Check(); err != nil {
		return nil, err
	}
	switch {
	case today < f.Today:
		return nil, document.Wrong("today", today, "is before the day of the farm's heights", "a date from "+f.Today.String()+" to "+f.Season.To.String())
	case today > f.Season.To:
		return nil, document.Wrong("today", today, "is after the season's end", "a date from "+f.Today.String()+" to "+f.Season.To.String()+", or a farm whose season.to is later")
	}
	made, err := settle(f, units.Middle)
	if err != nil {
		return nil, err
	}
	r := &resumed{ready: made, today: today, over: int(today - f.Today), next: document.Copy(f), told: make([]told, len(f.Land))}
	r.next.Today = today
	for i := range made.input.Lands {
		for _, piece := range made.input.Lands[i].Stretches {
			r.told[i].border(units.Length(piece.To))
		}
		r.told[i].border(0)
	}
	for _, c := range made.input.Cuts {
		r.told[c.Land].border(units.Length(c.From))
		r.told[c.Land].border(units.Length(c.To))
	}
	return r, nil
}

// goOn steps a season to the evening before today and writes what stands there, once it
// is corrected, and the animals of the day, into the document.
func (r *resumed) goOn(in *season.Input, correct func(*season.State) error) (*season.Result, error) {
	morning := r.morning()
	result := season.Watch(in, func(evening season.State) {
		if evening.Day == r.over-1 {
			morning = evening
		}
	})
	for _, step := range []func() error{
		func() error { return correct(&morning) }, func() error { return r.takeOver(&morning) }, r.settleGroups,
	} {
		if err := step(); err != nil {
			return nil, err
		}
	}
	if b := r.next.Rain.Balance; b != nil {
		b.Begun = fmt.Sprintf("%04d-%02d", r.soilFirst/12, r.soilFirst%12+1)
	}
	r.next.Cuts = slices.DeleteFunc(r.next.Cuts, func(c Cut) bool { return c.Date < r.today })
	return result, nil
}

// morning gives what stands on the morning of the document's own day.
func (r *resumed) morning() (st season.State) {
	for i := range r.input.Lands {
		st.Lands = append(st.Lands, slices.Clone(r.input.Lands[i].Stretches))
		st.Stays = append(st.Stays, r.input.Lands[i].Stay)
	}
	for i := range r.input.Rotations {
		st.Fronts, st.At = append(st.Fronts, r.input.Rotations[i].Front), append(st.At, r.input.Rotations[i].At)
	}
	return st
}

// made gives the hay of the cuts of some days.
func (r *resumed) made(days []season.Day) (hay units.FreshFeed) {
	for i := range days {
		hay += r.farm.hayOf(units.DryMatter(days[i].Cut))
	}
	return hay
}

// fed gives what grazers were fed up to today.
func (r *resumed) fed(result *season.Result) (kg units.DryMatter) {
	for i := range result.Fed {
		if f := &result.Fed[i]; f.Day < r.over && r.grazer(f.Group) {
			kg += units.DryMatter(f.Hay)
		}
	}
	return kg
}

// takeOver writes what stands on a morning into the document.
func (r *resumed) takeOver(morning *season.State) error {
	for i := range r.next.Land {
		if err := r.takeLand(i, morning); err != nil {
			return err
		}
	}
	for i := range r.next.Rotations {
		rotation := &r.next.Rotations[i]
		rotation.Front = nil
		if at := morning.At[i]; at > 0 {
			rotation.Front = &Front{Land: rotation.Land[morning.Fronts[i]], At: units.Length(at)}
		}
		if grass := r.grass[i]; grass != never {
			day := r.date(grass)
			rotation.GrassFrom = &day
		}
	}
	return nil
}

func (r *resumed) takeLand(i int, morning *season.State) error {
	l, stands := &r.next.Land[i], morning.Lands[i]
	if l.isPaddock() {
		stands = []season.Stretch{mean(stands)}
	}
	pieces, from := make([]Stretch, len(stands)), 0.0
	for j := range stands {
		p, err := r.stretch(i, &stands[j])
		if err != nil {
			return err
		}
		if was := slices.IndexFunc(l.Stretches, func(s Stretch) bool { return float64(s.To) > (from+stands[j].To)/2 }); was >= 0 {
			p.Note, p.Extra = l.Stretches[was].Note, l.Stretches[was].Extra
		}
		pieces[j], from = p, stands[j].To
	}
	l.Height, l.Grazed, l.Stretches, l.Stay = 0, nil, pieces, nil
	if p := &pieces[0]; len(pieces) == 1 && len(p.Due)+len(p.Note)+len(p.Extra) == 0 {
		l.Height, l.Grazed, l.Stretches = p.Height, p.Grazed, nil
	}
	if stay := morning.Stays[i]; stay.Days > 0 {
		first := units.Fraction(stay.First)
		l.Stay = &Stay{From: r.date(stay.From), Planned: units.Days(stay.Planned), Days: units.Days(stay.Days), First: &first}
	}
	return nil
}

// mean makes one piece of a paddock of which a cut took a part: it is grazed whole, so its
// mean and its last bite count.
func mean(pieces []season.Stretch) season.Stretch {
	all, from := season.Stretch{Bitten: season.Never}, 0.0
	for _, p := range pieces {
		all.Mass += p.Mass * (p.To - from) / pieces[len(pieces)-1].To
		all.Bitten = max(all.Bitten, p.Bitten)
		all.To, from = p.To, p.To
	}
	return all
}

// stretch gives a stretch of a land as the document has it.
func (r *resumed) stretch(land int, piece *season.Stretch) (p Stretch, err error) {
	at := &r.lands[land]
	height, err := forage.HeightOf(units.Yield(piece.Mass), at.density)
	if units.Impossible(err) {
		return p, err
	}
	p = Stretch{To: units.Length(piece.To), Height: min(height, r.farm.Land[land].ceiling(at.pasture))}
	if piece.Bitten != season.Never {
		day := r.date(piece.Bitten)
		p.Grazed = &day
	}
	for _, d := range piece.Due {
		p.Due = append(p.Due, Due{Group: r.farm.Groups[d.Group].ID, Date: r.date(d.Day), Eat: units.DryMatter(d.Eat), Use: units.Fraction(d.Use)})
	}
	return p, nil
}

// settleGroups makes the animals those of today.
func (r *resumed) settleGroups() error {
	for i := range r.next.Groups {
		g := &r.next.Groups[i]
		if len(g.Events)+len(g.Births) == 0 && g.Gain == 0 && len(r.farm.weanings(g.ID)) == 0 {
			continue
		}
		r.carry(g, r.herd[i].On(r.today))
	}
	after, err := r.next.herds()
	if err != nil {
		return err
	}
	for i := range after {
		if state := r.herd[i].On(r.today); after[i].On(r.today).Stage != state.Stage { // a birth that is past would have it otherwise
			r.next.Groups[i].today(r.today).Stage = &state.Stage
		}
	}
	return nil
}

// carry puts a group's state on a day into the document and takes out what is past. A
// figure that a group cannot begin with becomes an event of that day.
func (r *resumed) carry(g *Group, state herd.State) {
	g.Events = slices.DeleteFunc(g.Events, func(e Event) bool { return e.Date <= r.today })
	for j := range g.Births {
		if b := &g.Births[j]; b.Weaned != nil && *b.Weaned <= r.today {
			b.Young, b.Into = 0, "" // they are among the others
		}
	}
	g.Stage = state.Stage
	if g.Grown != 0 && state.Weight >= g.Grown {
		g.today(r.today).Weight = &state.Weight
	} else if class, err := g.class(); err != nil || g.Weight != 0 || state.Weight != class.Weight {
		g.Weight = state.Weight
	}
	if state.Head > 0 || g.Head == 0 {
		g.Head = state.Head
	} else {
		g.today(r.today).Head = &state.Head
	}
}

// today gives the group's event of a day, made where there is none.
func (g *Group) today(date units.Date) *Event {
	at := slices.IndexFunc(g.Events, func(e Event) bool { return e.Date == date })
	if at < 0 {
		g.Events = append(g.Events, Event{Date: date})
		at = len(g.Events) - 1
	}
	return &g.Events[at]
}

// longestLag gives the days of a rotation's last group behind the leader.
func (r *Rotation) longestLag() int {
	if r == nil {
		return 0
	}
	return int(r.Groups[len(r.Groups)-1].Behind)
}
