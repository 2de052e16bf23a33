// Package season steps a grazing season day by day: lanes grazed in strips, whole
// paddocks stayed in for days, groups that follow one another, regrowth of every
// stretch from its own day, hay where no grass is ready.
//
// The rules stand in DEVELOPERS.md, "The season, rule by rule"; the words here are
// theirs. Everything is in base units (metre, square metre, kilogram of dry matter, day)
// and days count from 0, the first day computed. The package knows neither dates nor
// animals nor weather: demand comes by day and group, potential growth by day and land.
package season

import (
	"math"
	"slices"
)

// Never is the day of the last bite of a stretch that was not grazed within
// memory: it counts as rested longest of all.
const Never = math.MinInt32

// Input is a season to be run. Run changes nothing in it.
type Input struct {
	Days      int
	From      int // the season's first day, before 0 where the season is under way
	Lands     []Land
	Groups    []Group
	Rotations []Rotation
	Cuts      []Cut
	Log       *Log // what is known of the days; nil: all ground is chosen
}

// Land is a lane, grazed in strips across its width, or a paddock that is grazed whole.
type Land struct {
	Width, Length float64 // a paddock's area is their product
	Paddock       bool
	Aim           float64   // T: the mass from which it is ripe
	Least         float64   // T0: the mass from which it is grazed where nothing is ripe
	Leave         float64   // R: the mass that stands after the last group
	Ceiling       float64   // K: the mass at which growth ends
	Peak          []float64 // by day: growth at half the ceiling, kg/m² and day
	MowAbove      float64   // list what outgrows this mass; 0: nothing is listed
	Stretches     []Stretch // in order along the lane
	Stay          Stay      // of a paddock; no days: none
}

// Stretch is a piece of a lane with one history.
type Stretch struct {
	To     float64 // metres from the lane's start
	Mass   float64 // V: dry matter standing, kg/m²
	Bitten int     // day of the last bite, negative before the first day computed, or Never
	Due    []Due   // visits still to come
}

// Due is grass of a stretch kept for a group.
type Due struct {
	Group, Day int
	Eat        float64 // kg of the stretch, of what it had
	Use        float64 // share eaten of what disappears
}

// Stay is a rotation's time on a paddock.
type Stay struct {
	From    int     // its first day
	Planned int     // days when it was entered
	Days    int     // with those stayed on; 0: nobody stays or is to come
	First   float64 // share of the first day's want
}

// Group is what one group of animals wants of the pasture.
type Group struct {
	Demand []float64 // by day, kg of dry matter
}

// Rotation is land in order, grazed by groups in order.
type Rotation struct {
	Lands         []int
	Members       []Member  // by lag, the leader's 0 first
	ShortestRest  int       // days
	LongestStay   int       // days on a strip or paddock, 1 or more
	Moves         int       // a day
	ShortestStrip float64   // metres
	Front         int       // index into Lands: the lane of the strip opened last, up to At
	At            float64   // metres from the lane's start; 0: no front
	Grass         int       // grass-from: the first day on which there is ground to graze
	Use           []float64 // share eaten of what disappears, by whole days of stay, from 1 (index 0 is one move of a day or less)
}

// Has tells whether a group is in the rotation.
func (r *Rotation) Has(group int) bool {
	return slices.ContainsFunc(r.Members, func(m Member) bool { return m.Group == group })
}

// use gives the share eaten for a stay of so many days.
func (r *Rotation) use(days int) float64 { return r.Use[min(days, len(r.Use))-1] }

// longestLag gives the days of the last group behind the leaders.
func (r *Rotation) longestLag() int { return r.Members[len(r.Members)-1].Lag }

// Member is a group of a rotation, so many whole days behind the leader.
type Member struct {
	Group, Lag int
}

// Cut takes what stands above the stubble between two places of a land.
type Cut struct {
	Day, Land int
	Stubble   float64 // kg/m²
	From, To  float64 // metres
}

// Reason tells why a group was fed.
type Reason int

// The reasons for feeding.
const (
	NoReason  Reason = iota
	LeadIn           // a follower waits for ground that its leaders have grazed
	NoGrass          // nothing had grown to the least mass
	NoRest           // grass enough, but not rested long enough, or kept for others
	NoGrowth         // nothing grows at this time of the year
	CutBefore        // the leaders found enough that day; a cut took what was kept
	NoLand           // the group is in no rotation
	NoStrip          // what is ready is too short for a strip, or too little for a day
)

// Result is what came of a season.
type Result struct {
	Moves   []Move
	Visits  []Visit
	Fed     []Fed
	Days    []Day
	Surplus []Surplus
	Stood   []float64   // by day, and of a day by land, what stands at its end, kg
	Lands   [][]Stretch // at the end
	Eaten   [][]float64 // by group and day, kg
	Hay     [][]float64 // by group and day, kg wanted, before waste
}

// Balance gives start + growth - eaten - trampled - cut - left of all days, which is
// rounding only.
func (r *Result) Balance() (left float64) {
	for _, d := range r.Days {
		left += d.Start + d.Grown - d.Eaten - d.Trampled - d.Cut - d.End
	}
	return left
}

// Move is a strip opened, or a paddock entered, for the leader of a rotation.
type Move struct {
	Day, Part      int // Part: which of the day's moves, from 0; two pieces of one move share it
	Rotation, Land int
	Pass           int     // how many times moves have begun on this land
	From, To       float64 // metres; a whole paddock: 0 and its length
	Stay           int     // days, with those stayed on
	Planned        int     // days when it was opened
	Below          bool    // it was grazed below the aim
	Before         float64 // mean mass when it was opened, kg/m²
	After          float64 // mean mass after the last group, kg/m²; 0 where the season ends before
	Use            float64 // share eaten of what disappears
	Want           float64 // kg kept for all groups; of a paddock what they want of it
	Holds          float64 // of a paddock: days that it held when it was entered, at the share of a week's stay
	Ready          int     // first day, up to Days, by which all of it could be grazed again; -1: none
	left, leftArea float64
}

// Visit is a group eating on ground of a move, or of one before the first day (Move -1).
type Visit struct {
	Day, Group, Move, Land int
	Eaten                  float64 // kg
	Use                    float64 // share eaten of what disappeared
}

// Fed is hay wanted by a group on a day.
type Fed struct {
	Day, Group int
	Hay        float64 // kg of dry matter wanted, before waste
	Reason     Reason
}

// Day is the book of one day.
type Day struct {
	Start, Grown, Eaten, Trampled, Cut, End, Hay float64 // kg over all lands
}

// Surplus is a stretch that outgrew the mass above which it is mown before anybody
// reached it.
type Surplus struct {
	Day, Land int
	From, To  float64
}

// State is what stands in the evening of a day: with it as an Input whose first day is
// the next one, the season goes on the same.
type State struct {
	Day    int
	Lands  [][]Stretch
	Stays  []Stay    // by land
	Fronts []int     // by rotation: index into its Lands
	At     []float64 // by rotation; 0: no front
}

// Run steps the season to its end. The input must be sound (ceiling above aim, aim not
// under the least mass, that above leave, leave above 0, masses above 0 and up to the
// ceiling, lags in order, as many peaks and demands as days): package farm sees to it.
func Run(in *Input) *Result { return Watch(in, nil) }

// Watch runs a season as Run does and shows the state in the evening of every day; what
// it is shown is each's to keep.
func Watch(in *Input, each func(State)) *Result {
	var r run
	r.steps(in, each)
	return &r.result
}

// Runner steps seasons one after the other in the same memory. A Result of it
// holds until its next season.
type Runner struct{ run }

// Run steps a season in full.
func (r *Runner) Run(in *Input) *Result {
	r.brief = false
	r.steps(in, nil)
	return &r.result
}

// Brief steps a season and keeps only what was eaten, cut and fed: no moves, no visits,
// no standing grass, no surplus. Its figures are those of Run, bit for bit.
func (r *Runner) Brief(in *Input) *Result {
	r.brief = true
	r.steps(in, nil)
	return &r.result
}

// StandsAt gives the first day, from another on, on which a stretch would be rested and
// stand at its land's least mass if nobody came to it; -1 where it does on none.
func StandsAt(l *Land, s Stretch, rest, from int) int {
	gap := l.Ceiling/s.Mass - 1
	for day, peak := range l.Peak {
		if day >= from && gap <= (l.Ceiling/l.Least-1)*(1+same) && day-s.Bitten >= rest {
			return day
		}
		gap *= math.Exp(-4 * peak / l.Ceiling)
	}
	return -1
}
