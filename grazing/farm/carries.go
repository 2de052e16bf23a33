package farm

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"

	"example.org/soum/herd"
	"example.org/soum/internal/document"
	"example.org/soum/internal/season"
	"example.org/soum/units"
)

// Limit is what binds where land carries no more.
type Limit int

// The limits.
const (
	LimitNone   Limit = iota + 1 // none up to the head that were tried
	LimitGrass                   // nothing had grown high enough
	LimitRest                    // grass enough, not rested long enough
	LimitWinter                  // nothing grows at the time
	LimitWater                   // the source gives no more
	LimitRoom                    // print keeps no more pigs or birds on so much ground
)

// mostTried bounds the scan: this many times the head in the document, and
// triedBeside more.
const (
	mostTried   = 4
	triedBeside = 20
)

// Carried is what the land carries of one group, the others as they stand.
type Carried struct {
	Group   string            `json:"group"`               // the group's id
	Low     int               `json:"head_low"`            // by the printed spans of grass and appetite: the least of their low end, middle and high end
	Middle  int               `json:"head_middle"`         // between the two
	High    int               `json:"head_high"`           // the most
	Limits  [3]Limit          `json:"limits"`              // what bound at each; where none did, the land carries that many at least
	Units   units.AnimalUnits `json:"animal_units_middle"` // of that group, by weight
	English string            `json:"english"`             // the same in words
}

// limitWords tells a limit in words.
var limitWords = map[Limit]string{
	LimitNone: "no limit was met", LimitGrass: "grass and hay run short", LimitRest: "the land has not rested long enough",
	LimitWinter: "nothing grows at the time", LimitWater: "the water gives out", LimitRoom: "there are more on the ground than print keeps there",
}

// text is what the land carries in words, beside the head that the plan begins with; room
// is what print has of it.
func (c *Carried) text(head float64, room *keptOn) string {
	if c.High == 0 {
		return fmt.Sprintf("With all else as it stands, and the hay there is, the land has no room for %s: with one, %s. The plan begins with %s.", c.Group, limitWords[c.Limits[1]], units.Number(head))
	}
	number := func(head int, limit Limit) string {
		if limit == LimitNone {
			return fmt.Sprintf("at least %d", head)
		}
		return strconv.Itoa(head)
	}
	text := fmt.Sprintf("With all else as it stands, and the hay there is, the land has room for %s head of %s (%s to %s over the printed spans of grass and appetite); the plan begins with %s.",
		number(c.Middle, c.Limits[1]), c.Group, number(c.Low, c.Limits[0]), number(c.High, c.Limits[2]), units.Number(head))
	if c.Limits[1] != LimitNone {
		text += fmt.Sprintf(" With one more, %s.", limitWords[c.Limits[1]])
	}
	if c.Limits[1] == LimitRoom {
		text += fmt.Sprintf(" The printed figure is of %s.", room.source)
	}
	return text
}

// Leaders tells how many head of the leading group of each rotation the land
// carries, every other group as it stands: Carries of each, in the order of the
// rotations. Of a rotation that begins without animals, since its young are
// still to come, nothing is told.
//
// Method: Carries, rotation by rotation. It runs a season for every head tried at
// three ends of the printed spans, and so takes many times as long as a plan.
//
// Errors: those of Plan
//
// Check: TestLeadersAreCarries
//
// Source: ours: the rules in DEVELOPERS.md
func (f *Farm) Leaders() ([]Carried, error) {
	if err := f.Check(); err != nil {
		return nil, err
	}
	return f.carriesOf(1)
}

// CarriesEach tells how many head the land carries of every group that is in a rotation
// and begins with animals, every other group as it stands: Carries of each, in the order
// of the rotations.
//
// Method: Carries, group by group
//
// Errors: those of Plan
//
// Check: TestLeadersAreCarries
//
// Source: ours: the rules in DEVELOPERS.md
func (f *Farm) CarriesEach() ([]Carried, error) {
	if err := f.Check(); err != nil {
		return nil, err
	}
	return f.carriesOf(math.MaxInt)
}

// carriesOf gives what is carried of the first groups of each rotation that have animals,
// of so many at the most.
func (f *Farm) carriesOf(most int) ([]Carried, error) {
	all := []Carried{}
	for i := range f.Rotations {
		told := 0
		for _, m := range f.Rotations[i].Groups {
			if told == most || f.Groups[f.groupIndex(m.Group)].Head == 0 {
				continue // of young that are still to come nothing is told
			}
			carried, err := f.carries(m.Group)
			if err != nil {
				return nil, err
			}
			all, told = append(all, carried), told+1
		}
	}
	return all, nil
}

// Carries tells how many head of a group the land carries with every other
// group as it stands: the largest whole number such that with it and with every
// smaller one its rotation needs no feed beyond what the farm allows, at the
// low, the middle and the high end of the printed spans of density, intake and
// pasture share.
//
// Method: seasons run with 1, 2, 3 … head, the changes of the document in
// proportion, until one needs more feed than the hay in store and cut by then
// gives, or more water than the source, or, of pigs and birds, until there are more on the
// ground than print keeps there. Days before there is any grass, groups in no rotation and
// rations do not count. The scan ends at four times the head in the document and 20 more.
// More grass does not always carry more head, since a stay of one day more or less moves
// all that follows, so the three are given in order.
//
// Errors: an error that names the group where there is none; else those of
// Plan
//
// Check: TestCarriesIsTheLargest, TestCarriesNamesTheLimit
//
// Source: ours: the rules in DEVELOPERS.md
func (f *Farm) Carries(group string) (Carried, error) {
	if err := f.Check(); err != nil {
		return Carried{}, err
	}
	return f.carries(group)
}

// carries is Carries of a farm that is checked.
func (f *Farm) carries(group string) (Carried, error) {
	at := f.groupIndex(group)
	if at < 0 {
		return Carried{}, document.Wrong("group", strconv.Quote(group), "is the id of no group", "the id of a group in the farm")
	}
	if f.Groups[at].Head == 0 {
		return Carried{}, document.Wrong("group", strconv.Quote(group), "begins without animals", "the id of a group with head at the start")
	}
	var found [3]capacity
	for i, end := range []units.End{units.Low, units.Middle, units.High} {
		r, err := settle(f, end)
		if err != nil {
			return Carried{}, err
		}
		found[i] = r.scan(at)
	}
	slices.SortStableFunc(found[:], func(a, b capacity) int { return cmp.Compare(a.head, b.head) })
	herds, err := f.herds()
	if err != nil {
		return Carried{}, err
	}
	each, err := herd.AnimalUnits(herds[at].On(max(f.Today, f.Season.From)).Weight)
	if units.Impossible(err) {
		return Carried{}, err
	}
	c := Carried{
		Group: group, Low: found[0].head, Middle: found[1].head, High: found[2].head, Limits: [3]Limit{found[0].limit, found[1].limit, found[2].limit},
		Units: units.AnimalUnits(found[1].head) * each,
	}
	c.English = c.text(f.Groups[at].Head, keptOnOf(herds[at].Class.Name))
	return c, nil
}

// capacity is the most head of a group that the land carries, and what bound.
type capacity struct {
	head  int
	limit Limit
}

// scan gives the most head of a group that the land carries.
func (r *ready) scan(group int) capacity {
	var runner season.Runner
	drinks := r.drinks()
	rotation := slices.IndexFunc(r.input.Rotations, func(of season.Rotation) bool { return of.Has(group) })
	most := mostTried*int(r.herd[group].Head) + triedBeside
	room := r.printedRoom(group, rotation)
	for head := 1; head <= most; head++ {
		factor := float64(head) / r.herd[group].Head
		switch {
		case float64(head) > room:
			return capacity{head - 1, LimitRoom}
		case !r.waterHolds(drinks, group, factor):
			return capacity{head - 1, LimitWater}
		}
		in := multiplied(r.input, group, factor)
		if short := r.needs(runner.Brief(&in), rotation); short.limit != LimitNone {
			return capacity{head - 1, short.limit}
		}
	}
	return capacity{most, LimitNone}
}

// LandNeed is the land that a herd needs, by widening the farm's own.
type LandNeed struct {
	Factor float64    `json:"factor"`  // on every lane's width and every paddock's area
	Area   units.Area `json:"area_m2"` // of the land in rotation
	Found  bool       `json:"found"`   // false: no land carries it
	Limit  Limit      `json:"limit"`   // what binds where none does: water, of which land gives no more, or what binds on the widest
}

const (
	widest   = 64   // the largest factor tried
	landStep = 1.01 // from one factor to the next
)

// LandFor tells how much land of this farm's kind its herd needs: every lane is
// widened, and every paddock enlarged, by one factor, until this and all that
// were tried above it carry the herd without feed beyond what the farm allows.
//
// Method: doubling up to 64 times the land until a season needs no more feed
// than the hay in store and cut gives, then down in steps of 1 % to the last that carries.
// Hay does not fall evenly with land, hence "all that were tried". Where the water does not
// reach, no land is looked for.
//
// Errors: those of Plan
//
// Check: TestLandForCarries
//
// Source: ours: the rules in DEVELOPERS.md
func (f *Farm) LandFor() (LandNeed, error) {
	if err := f.Check(); err != nil {
		return LandNeed{}, err
	}
	r, err := settle(f, units.Middle)
	if err != nil {
		return LandNeed{}, err
	}
	if !r.waterHolds(r.drinks(), -1, 1) {
		return LandNeed{Limit: LimitWater}, nil
	}
	var runner season.Runner
	bound := func(factor float64) Limit {
		in := r.widened(factor)
		return r.needs(runner.Brief(&in), -1).limit
	}
	carries := func(factor float64) bool { return bound(factor) == LimitNone }
	factor := 1.0 / 8
	for !carries(factor) {
		if factor *= 2; factor > widest {
			return LandNeed{Limit: bound(widest)}, nil
		}
	}
	top := factor
	for i := 1; ; i++ {
		smaller := top / math.Pow(landStep, float64(i))
		if smaller < 1.0/widest || !carries(smaller) {
			break
		}
		factor = smaller
	}
	need := LandNeed{Factor: factor, Found: true, Limit: LimitNone}
	for i := range f.Land {
		if f.rotationOf(f.Land[i].ID) != nil {
			need.Area += f.Land[i].area() * units.Area(factor)
		}
	}
	return need, nil
}
