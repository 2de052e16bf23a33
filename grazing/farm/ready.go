package farm

import (
	"fmt"
	"math"
	"slices"
	"sync"

	"example.org/soum/forage"
	"example.org/soum/herd"
	"example.org/soum/internal/document"
	"example.org/soum/internal/season"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// ready is a farm made ready for the day loop at one end of the printed spans. Nothing
// changes it once it is made, but Seasons.Rain its own: what a question varies, it varies
// in a copy.
type ready struct {
	farm      *Farm
	end       units.End
	start     units.Date
	first     int // the day from which the animals are here
	lands     []site
	herd      []herd.Group
	spells    [][]spell // by group
	months    []month
	yearParts []yearPart // in order
	record    []rainfall.MonthlyRain
	soil      []SoilMonth // by month of the account; nil where none is kept
	soilFirst int         // the account's first month, by monthIndex
	grass     []int       // by rotation: grass-from, or never
	input     season.Input
	outside   []rangeNote // met while it was made
}

// site is land with its figures settled.
type site struct {
	pasture                *forage.Pasture
	density                units.Density
	turnIn, leave, ceiling units.Yield
	least                  units.Yield // T0, from which it is grazed where nothing stands at the aim
	leaveHeight            units.Height
	annual                 units.Yield
}

// growsLike tells whether the potential growth of two lands is the same.
func (at *site) growsLike(other *site) bool {
	return at.pasture == other.pasture && at.annual == other.annual && at.turnIn == other.turnIn && at.leave == other.leave && at.ceiling == other.ceiling
}

// settle makes a farm ready. It fails with a DomainError of a formula where
// the document's figures are impossible together.
func settle(f *Farm, end units.End) (*ready, error) {
	days := int(f.Season.To.Sub(f.Today)) + 1
	r := &ready{
		farm: f, end: end, start: f.Today, first: max(0, int(f.Season.From.Sub(f.Today))), months: monthsOf(f.Today, days), record: f.Rain.Series(),
		lands: make([]site, 0, len(f.Land)), spells: make([][]spell, 0, len(f.Groups)), grass: make([]int, len(f.Rotations)),
		input: season.Input{
			Days: days, From: int(f.Season.From.Sub(f.Today)),
			Lands: make([]season.Land, 0, len(f.Land)), Groups: make([]season.Group, 0, len(f.Groups)), Rotations: make([]season.Rotation, 0, len(f.Rotations)),
		},
	}
	var err error
	if r.herd, err = f.herds(); err != nil {
		return nil, err
	}
	met := new(problems)
	for i := range f.Land {
		if err := r.settleLand(&f.Land[i], met); err != nil {
			return nil, pathed("land", i, err)
		}
	}
	for i := range f.Rotations {
		r.input.Rotations = append(r.input.Rotations, r.rotation(&f.Rotations[i]))
	}
	if err := r.rainOn(met); err != nil {
		return nil, err
	}
	r.yearParts = yearParts(&r.input)
	for i := range r.herd {
		r.spells = append(r.spells, r.spellsOf(&r.herd[i]))
		r.input.Groups = append(r.input.Groups, season.Group{Demand: r.demand(i, met)})
		if met.err != nil {
			return nil, pathed("groups", i, met.err)
		}
	}
	r.input.Cuts = r.cuts(met)
	r.outside = met.ranges
	return r, met.err
}

func (r *ready) date(day int) units.Date { return r.start.Add(day) }

// text prints a quantity in the reader's units.
func (r *ready) text(q document.Shown) string { return q.In(r.farm.Units) }

// mass gives what stands at a height, by the land's density.
func (r *ready) mass(at *site, height units.Height, met *problems) units.Yield {
	mass, err := forage.Standing(height, at.density)
	met.keep(err, r.start, 1)
	return mass
}

// settleLand adds land with its figures, but for its growth.
func (r *ready) settleLand(l *Land, met *problems) error {
	pasture, err := l.pasture()
	if err != nil {
		return err
	}
	at := site{pasture: pasture}
	if at.density, err = l.density(pasture, r.end); err != nil {
		return err
	}
	if at.annual, err = l.yield(pasture); err != nil {
		return err
	}
	if own := r.farm.OwnFactor; own != nil {
		at.annual *= units.Yield(own.Growth)
	}
	rotation := r.farm.rotationOf(l.ID)
	at.leaveHeight = rotation.leave(pasture)
	at.turnIn, at.least = r.mass(&at, rotation.turnIn(pasture), met), r.mass(&at, rotation.least(pasture), met)
	at.leave, at.ceiling = r.mass(&at, at.leaveHeight, met), r.mass(&at, l.ceiling(pasture), met)
	land := season.Land{
		Width: float64(l.Width), Length: float64(l.length()), Paddock: l.isPaddock(),
		Aim: float64(at.turnIn), Least: float64(at.least), Leave: float64(at.leave), Ceiling: float64(at.ceiling),
		Stretches: r.stretches(l, &at, met),
	}
	if l.isPaddock() {
		land.Width = float64(l.Area) // a paddock is a lane of length one
	}
	if l.Stay != nil {
		land.Stay = l.Stay.season(r.start)
	}
	if height := r.outgrown(l, pasture); height > 0 {
		land.MowAbove = float64(r.mass(&at, height, met))
	}
	r.lands = append(r.lands, at)
	r.input.Lands = append(r.input.Lands, land)
	return met.err
}

// outgrown gives the height above which grass has got ahead of the animals: the document's,
// or for land that is grazed half way from turn-in to where growth ends (ours); else 0.
func (r *ready) outgrown(l *Land, pasture *forage.Pasture) units.Height {
	rotation := r.farm.rotationOf(l.ID)
	if l.MowAbove > 0 || rotation == nil {
		return l.MowAbove
	}
	return (rotation.turnIn(pasture) + l.ceiling(pasture)) / 2
}

// season gives the stay as the day loop has it.
func (stay *Stay) season(start units.Date) season.Stay {
	days, first := stay.Days, units.Whole
	if days == 0 {
		days = stay.Planned
	}
	if stay.First != nil {
		first = *stay.First
	}
	return season.Stay{From: int(stay.From.Sub(start)), Planned: int(stay.Planned), Days: int(days), First: float64(first)}
}

// stretches gives today's stand.
func (r *ready) stretches(l *Land, at *site, met *problems) []season.Stretch {
	pieces := l.Stretches
	if len(pieces) == 0 {
		pieces = []Stretch{{To: l.length(), Height: l.Height, Grazed: l.Grazed}}
	}
	all := make([]season.Stretch, len(pieces))
	for i := range pieces {
		p := &pieces[i]
		all[i] = season.Stretch{To: float64(p.To), Mass: float64(min(r.mass(at, p.Height, met), at.ceiling)), Bitten: season.Never}
		if p.Grazed != nil {
			all[i].Bitten = int(p.Grazed.Sub(r.start))
		}
		for _, d := range p.Due {
			all[i].Due = append(all[i].Due, season.Due{Group: r.farm.groupIndex(d.Group), Day: int(d.Date.Sub(r.start)), Eat: float64(d.Eat), Use: float64(d.Use)})
		}
	}
	all[len(all)-1].To = float64(l.length())
	return all
}

// demand gives what a group wants of the pasture on every day.
func (r *ready) demand(group int, met *problems) []float64 {
	demand := make([]float64, r.input.Days)
	for _, sp := range r.spells[group] {
		from := max(sp.from, r.first) // before the season the animals are elsewhere
		if from >= sp.to {
			continue
		}
		wants, err := r.herd[group].DemandOn(r.date(from), r.end.Other())
		met.keep(err, r.date(from), sp.to-from)
		for day := from; day < sp.to; day++ {
			demand[day] = float64(wants)
		}
	}
	return demand
}

// usableShares holds the share eaten of a stay of whole days, from one on; beyond the
// last it stays what it is.
var usableShares = sync.OnceValue(func() (shares []float64) {
	for stay := units.Day; ; stay++ {
		use, err := forage.UsableShare(stay)
		shares = append(shares, float64(use))
		if err != nil {
			return shares
		}
	}
})

func (r *ready) rotation(of *Rotation) season.Rotation {
	rotation := season.Rotation{
		ShortestRest: int(of.ShortestRest), LongestStay: longestStay, Moves: max(1, of.MovesADay), ShortestStrip: float64(r.shortestStrip(of)), Use: usableShares(),
		Lands: make([]int, 0, len(of.Land)), Members: make([]season.Member, 0, len(of.Groups)),
	}
	if of.LongestStay > 0 {
		rotation.LongestStay = int(of.LongestStay)
	}
	for _, id := range of.Land {
		rotation.Lands = append(rotation.Lands, r.farm.landIndex(id))
	}
	for _, m := range of.Groups {
		rotation.Members = append(rotation.Members, season.Member{Group: r.farm.groupIndex(m.Group), Lag: int(m.Behind)})
	}
	if of.Front != nil {
		rotation.Front, rotation.At = slices.Index(of.Land, of.Front.Land), r.frontAt(of.Front)
	}
	return rotation
}

// shortestStrip gives the shortest strip of a rotation: the document's, or the longest of
// what the kinds of its groups are given room for.
func (r *ready) shortestStrip(of *Rotation) units.Length {
	if of.ShortestStrip > 0 {
		return of.ShortestStrip
	}
	longest := shortestOfAll
	for _, m := range of.Groups {
		switch kind := r.kindOf(m.Group); {
		case kind == herd.Cattle || kind.Equine():
			longest = max(longest, shortestOfLarge)
		case kind.Ruminant() || kind == herd.Pigs:
			longest = max(longest, shortestOfSmall)
		}
	}
	return longest
}

// frontAt gives the place of a front: the nearest border of the lane's stretches where
// one is as near as places are told, so that no sliver of what is grazed lies before it.
func (r *ready) frontAt(f *Front) float64 {
	lane := &r.input.Lands[r.farm.landIndex(f.Land)]
	at, near := float64(f.At), float64(logRound)
	for _, piece := range lane.Stretches {
		if away := math.Abs(piece.To - float64(f.At)); away <= near && piece.To < lane.Length {
			at, near = piece.To, away
		}
	}
	return at
}

func (r *ready) cuts(met *problems) (cuts []season.Cut) {
	for _, c := range r.farm.Cuts {
		at := r.farm.landIndex(c.Land)
		to := c.To
		if to == 0 {
			to = r.farm.Land[at].length()
		}
		cuts = append(cuts, season.Cut{
			Day: int(c.Date.Sub(r.start)), Land: at, Stubble: float64(r.mass(&r.lands[at], c.Stubble, met)), From: float64(c.From), To: float64(to),
		})
	}
	return cuts
}

// multiplied gives a season with one group's head, and its changes, in proportion.
func multiplied(in season.Input, group int, factor float64) season.Input {
	in.Groups = slices.Clone(in.Groups)
	demand := slices.Clone(in.Groups[group].Demand)
	for i := range demand {
		demand[i] *= factor
	}
	in.Groups[group].Demand = demand
	return in
}

// widened gives the season with every lane's width and every paddock's area multiplied.
func (r *ready) widened(factor float64) season.Input {
	in := r.input
	in.Lands = slices.Clone(in.Lands)
	for i := range in.Lands {
		in.Lands[i].Width *= factor
	}
	return in
}

func (r *ready) kindOf(group string) herd.Kind { return r.classOf(group).Kind }

func (r *ready) classOf(group string) *herd.Class { return &r.herd[r.farm.groupIndex(group)].Class }

// pathed puts the place in the document before an error.
func pathed(list string, i int, err error) error { return fmt.Errorf("%s[%d]: %w", list, i, err) }
