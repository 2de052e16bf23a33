package farm

import (
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
	Low     int               `json:"head_low"`            // with thin grass and hungry stock, by the printed spans
	Middle  int               `json:"head_middle"`         // half way
	High    int               `json:"head_high"`           // with thick grass and modest stock
	Limits  [3]Limit          `json:"limits"`              // what bound at each
	Units   units.AnimalUnits `json:"animal_units_middle"` // of that group, by weight
	English string            `json:"english"`             // the same in words
}

// limitWords tells a limit in words.
var limitWords = map[Limit]string{
	LimitNone: "no limit was met", LimitGrass: "grass and hay run short", LimitRest: "the land has not rested long enough",
	LimitWinter: "nothing grows at the time", LimitWater: "the water gives out",
}

// text is what the land carries in words, beside the head that the plan begins with.
func (c *Carried) text(head float64) string {
	text := fmt.Sprintf("With all else as it stands, and the hay there is, the land has room for %d head of %s (%d to %d over the printed spans of grass and appetite); the plan begins with %s.",
		c.Middle, c.Group, c.Low, c.High, units.Number(head))
	if c.Limits[1] != LimitNone {
		text += fmt.Sprintf(" With one more, %s.", limitWords[c.Limits[1]])
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
	all := []Carried{}
	for i := range f.Rotations {
		members := f.Rotations[i].Groups
		first := slices.IndexFunc(members, func(m Member) bool { return f.Groups[f.groupIndex(m.Group)].Head > 0 })
		if first < 0 {
			continue // young that are still to come
		}
		carried, err := f.carries(members[first].Group)
		if err != nil {
			return nil, err
		}
		all = append(all, carried)
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
// gives, or more water than the source. Days before there is any grass, groups in no
// rotation and rations do not count. The scan ends at four times the head in the document
// and 20 more.
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
	c := Carried{Group: group}
	for i, end := range []units.End{units.Low, units.Middle, units.High} {
		r, err := settle(f, end)
		if err != nil {
			return Carried{}, err
		}
		head := 0
		head, c.Limits[i] = r.scan(at)
		*[]*int{&c.Low, &c.Middle, &c.High}[i] = head
		if end == units.Middle {
			each, err := herd.AnimalUnits(r.herd[at].On(max(f.Today, f.Season.From)).Weight)
			if units.Impossible(err) {
				return Carried{}, err
			}
			c.Units = units.AnimalUnits(head) * each
		}
	}
	c.English = c.text(f.Groups[at].Head)
	return c, nil
}

// scan gives the most head of a group that the land carries, and what bound.
func (r *ready) scan(group int) (int, Limit) {
	var runner season.Runner
	drinks := r.drinks()
	rotation := slices.IndexFunc(r.input.Rotations, func(of season.Rotation) bool { return of.Has(group) })
	most := mostTried*int(r.herd[group].Head) + triedBeside
	for head := 1; head <= most; head++ {
		factor := float64(head) / r.herd[group].Head
		if !r.waterHolds(drinks, group, factor) {
			return head - 1, LimitWater
		}
		in := multiplied(r.input, group, factor)
		if limit := r.needs(runner.Brief(&in), rotation); limit != LimitNone {
			return head - 1, limit
		}
	}
	return most, LimitNone
}

// needs tells what bound where a rotation, or with -1 the whole farm, needed more feed in
// a season than was in store and cut by then; LimitNone where it did not. What other
// rotations need of the store comes first: they share no land with it, so no head of its
// can change that.
func (r *ready) needs(result *season.Result, rotation int) Limit {
	allowed, day, own, others := float64(r.farm.hayAllowed()), 0, 0.0, 0.0
	for _, f := range result.Fed {
		for ; day <= f.Day; day++ {
			allowed += float64(r.farm.madeAllowed(units.DryMatter(result.Days[day].Cut)))
		}
		switch {
		case !r.counts(&f): // it depends on neither land nor head
		case rotation >= 0 && !r.input.Rotations[rotation].Has(f.Group):
			others += f.Hay
		default:
			if own += f.Hay; own > max(0, allowed-others)+1e-9 {
				return limits[f.Reason]
			}
		}
	}
	return LimitNone
}

var limits = map[season.Reason]Limit{
	season.NoGrass: LimitGrass, season.NoRest: LimitRest, season.NoGrowth: LimitWinter,
	season.CutBefore: LimitGrass, season.LeadIn: LimitGrass, season.NoStrip: LimitGrass,
}

// drinks gives what each group drinks at the most, by day; nothing where print
// has no figure.
func (r *ready) drinks() [][]units.WaterRate {
	if r.farm.Water.Supply == 0 {
		return nil
	}
	all := make([][]units.WaterRate, len(r.herd))
	for g := range r.herd {
		all[g] = make([]units.WaterRate, r.input.Days)
		r.drink(g, units.High, func(from, to int, drink units.WaterRate) {
			for day := from; day < to; day++ {
				all[g][day] = drink
			}
		})
	}
	return all
}

// waterHolds tells whether the source gives what all groups drink, one group's
// head multiplied by a factor.
func (r *ready) waterHolds(drinks [][]units.WaterRate, group int, factor float64) bool {
	if r.farm.Water.Supply == 0 {
		return true
	}
	for day := range r.input.Days {
		total := units.WaterRate(0)
		for g := range drinks {
			drink := drinks[g][day]
			if g == group {
				drink *= units.WaterRate(factor)
			}
			total += drink
		}
		if total > r.farm.Water.Supply {
			return false
		}
	}
	return true
}

// LandNeed is the land that a herd needs, by widening the farm's own.
type LandNeed struct {
	Factor float64    `json:"factor"`  // on every lane's width and every paddock's area
	Area   units.Area `json:"area_m2"` // of the land in rotation
	Found  bool       `json:"found"`   // false: not even the widest tried carries
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
// Hay does not fall evenly with land, hence "all that were tried".
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
	var runner season.Runner
	carries := func(factor float64) bool {
		in := r.widened(factor)
		return r.needs(runner.Brief(&in), -1) == LimitNone
	}
	factor := 1.0 / 8
	for !carries(factor) {
		if factor *= 2; factor > widest {
			return LandNeed{}, nil
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
	need := LandNeed{Factor: factor, Found: true}
	for i := range f.Land {
		if f.rotationOf(f.Land[i].ID) != nil {
			need.Area += f.Land[i].area() * units.Area(factor)
		}
	}
	return need, nil
}
