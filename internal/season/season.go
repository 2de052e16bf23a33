// Package season steps a grazing season day by day: lanes grazed in strips
// behind a moving front, whole paddocks, groups that follow one another, regrowth
// of every stretch from its own day, hay where no land is ready.
//
// The rules stand in DEVELOPERS.md, "The season, rule by rule"; the numbers in
// the comments here point there. Everything is in base units (metre, square
// metre, kilogram of dry matter, day) and days count from 0, the first day of
// the season. The package knows neither dates nor animals nor weather: demand
// comes by day and group, potential growth by day and land.
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
	First     int // the day from which animals are here; no ground is opened before
	Lands     []Land
	Groups    []Group
	Rotations []Rotation
	Cuts      []Cut
}

// Land is a lane, grazed in strips across its width, or a paddock that is
// grazed whole.
type Land struct {
	Width, Length float64 // a paddock's area is their product
	Paddock       bool
	TurnIn        float64   // T: the mass from which it is grazed
	Leave         float64   // R: the mass that stands after the last group
	Ceiling       float64   // K: the mass at which growth ends
	Peak          []float64 // by day: growth at half the ceiling, kg/m² and day
	MowAbove      float64   // list what outgrows this mass; 0: nothing is listed
	Stretches     []Stretch // in order along the lane
}

// Stretch is a piece of a lane with one history.
type Stretch struct {
	To     float64 // metres from the lane's start
	Mass   float64 // V: dry matter standing, kg/m²
	Bitten int     // day of the last bite, negative before the season, or Never
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
	Moves         int       // a day
	ShortestStrip float64   // metres
	Use           []float64 // share eaten of what disappears, by whole days of stay, from 1 (index 0 is one move of a day or less)
}

// Has tells whether a group is in the rotation.
func (r *Rotation) Has(group int) bool {
	return slices.ContainsFunc(r.Members, func(m Member) bool { return m.Group == group })
}

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
	LeadIn           // a follower waits for the first strips to be opened
	NoGrass          // nothing had grown to the turn-in mass
	NoRest           // grass enough, but not rested long enough
	NoGrowth         // nothing grows at this time of the year
	CutBefore        // a cut took what had been kept for the group
	NoLand           // the group is in no rotation
)

// Result is what came of a season.
type Result struct {
	Moves   []Move
	Visits  []Visit
	Fed     []Fed
	Days    []Day
	Surplus []Surplus
	Lands   [][]Stretch // at the end
	Eaten   [][]float64 // by group and day, kg
	Hay     [][]float64 // by group and day, kg wanted, before waste
}

// Move is a strip opened, or a paddock entered, for the leader of a rotation.
type Move struct {
	Day, Part      int // Part: which of the day's moves, from 0; two pieces of one move share it
	Rotation, Land int
	Pass           int     // how many times the front has begun on this land
	From, To       float64 // metres; a whole paddock: 0 and its length
	Stay           int     // days; 1 for a strip
	Before         float64 // mean mass when it was opened, kg/m²
	After          float64 // mean mass after the last group, kg/m²; 0 where the season ends before
	Use            float64 // share eaten of what disappears
	Want           float64 // kg, of all groups
	Ready          int     // first day, up to Days, by which all of it could be grazed again; -1: none
	left, leftArea float64
}

// Visit is a group eating on ground of a move.
type Visit struct {
	Day, Group, Move int
	Eaten            float64 // kg
}

// Fed is hay wanted by a group on a day.
type Fed struct {
	Day, Group int
	Hay        float64 // kg of dry matter wanted, before waste
	Reason     Reason
}

// Day is the book of one day.
type Day struct {
	Start, Grown, Eaten, Trampled, Cut, End, Hay float64   // kg over all lands
	Standing                                     []float64 // by land at the day's end, kg
}

// Surplus is a stretch that outgrew the mass above which it is mown before the
// front reached it.
type Surplus struct {
	Day, Land int
	From, To  float64
}

// stretch is a Stretch of the running season.
type stretch struct {
	from, to, mass float64
	bitten         int
	due            []booking
	move           int // the move that opened it last; -1: none yet
	listed, ready  bool
}

// booking is grass kept on a stretch for a group of the rotation.
type booking struct {
	member, day int
	eaten       float64 // kg/m²
	use         float64
}

func (s *stretch) length() float64 { return s.to - s.from }

// land is a Land of the running season.
type land struct {
	*Land
	stretches []stretch
	passes    int
	owed      int // bookings on all its stretches
}

// rotation is a Rotation of the running season.
type rotation struct {
	*Rotation
	front int // index into Lands; -1: none
	at    float64
	busy  int      // last day of a stay in a paddock
	short []Reason // by day: why the leader found too little
	wants []float64
}

// run is a season under way.
type run struct {
	*Input
	lands     []land
	rotations []rotation
	result    *Result
	day       int
	book      Day
	places    []booking // not given to a stretch yet
	standings []float64 // not given to a day yet
}

// Run steps the season to its end. The input must be sound (ceiling above
// turn-in above leave above 0, masses above 0 and up to the ceiling, lags in
// order, as many peaks and demands as days): package grazing sees to it.
func Run(in *Input) *Result { return Watch(in, nil) }

// Watch runs a season as Run does and shows the stand at the end of every day,
// after growth; what it is shown is each's to keep.
func Watch(in *Input, each func(day int, lands [][]Stretch)) *Result {
	r := begin(in)
	for r.day = 0; r.day < in.Days; r.day++ {
		r.book = Day{Start: r.standing()} // before the day's cuts
		r.cut()
		r.follow()
		r.lead()
		r.feed()
		r.grow()
		r.write()
		if each != nil {
			each(r.day, r.stand())
		}
	}
	r.finish()
	return r.result
}

func begin(in *Input) *run {
	r := &run{Input: in, result: &Result{}}
	r.lands = make([]land, len(in.Lands))
	for i := range in.Lands {
		l := land{Land: &in.Lands[i]}
		from := 0.0
		l.stretches = make([]stretch, 0, 2*len(l.Stretches)+8)
		for _, s := range l.Stretches {
			l.stretches = append(l.stretches, stretch{from: from, to: s.To, mass: s.Mass, bitten: s.Bitten, move: -1})
			from = s.To
		}
		r.lands[i] = l
	}
	r.rotations = make([]rotation, len(in.Rotations))
	for i := range in.Rotations {
		r.rotations[i] = rotation{Rotation: &in.Rotations[i], front: -1, busy: -1, wants: make([]float64, len(in.Rotations[i].Members)), short: make([]Reason, in.Days)}
	}
	r.result.Eaten = make([][]float64, len(in.Groups))
	r.result.Hay = make([][]float64, len(in.Groups))
	r.result.Days = make([]Day, 0, in.Days)
	r.standings = make([]float64, in.Days*len(in.Lands))
	flat := make([]float64, 2*len(in.Groups)*in.Days)
	for g := range in.Groups {
		r.result.Eaten[g], flat = flat[:in.Days:in.Days], flat[in.Days:]
		r.result.Hay[g], flat = flat[:in.Days:in.Days], flat[in.Days:]
	}
	return r
}

func (r *run) standing() float64 {
	total := 0.0
	for i := range r.lands {
		total += r.lands[i].standing()
	}
	return total
}

func (l *land) standing() float64 {
	total := 0.0
	for i := range l.stretches {
		s := &l.stretches[i]
		total += s.mass * s.length()
	}
	return total * l.Width
}

// cut is step 1: what stands above the stubble leaves as hay.
func (r *run) cut() {
	for _, c := range r.Cuts {
		if c.Day != r.day {
			continue
		}
		l := &r.lands[c.Land]
		from, to := l.split(c.From), l.split(c.To)
		for i := range l.stretches {
			s := &l.stretches[i]
			if s.from < from || s.to > to || s.mass <= c.Stubble {
				continue
			}
			r.book.Cut += (s.mass - c.Stubble) * s.length() * l.Width
			s.mass = c.Stubble
			s.bitten = r.day
			s.listed = false
		}
	}
}

// split parts the stretch that a place lies in and gives the boundary there:
// one that is there already, where the place all but lies on it.
func (l *land) split(at float64) float64 {
	if at < dust {
		return 0
	}
	for i := range l.stretches {
		s := &l.stretches[i]
		if math.Abs(s.to-at) < dust {
			return s.to
		}
		if at-s.from < dust || at > s.to {
			continue
		}
		behind := *s
		behind.due = append([]booking(nil), s.due...)
		l.owed += len(s.due)
		behind.from = at
		s.to = at
		l.stretches = append(l.stretches, stretch{})
		copy(l.stretches[i+2:], l.stretches[i+1:])
		l.stretches[i+1] = behind
		return at
	}
	return at
}

// follow is step 2: followers, the longest lag first, eat what was booked.
func (r *run) follow() {
	for i := range r.rotations {
		rot := &r.rotations[i]
		for m := len(rot.Members) - 1; m >= 0; m-- {
			lag := rot.Members[m].Lag
			if lag > 0 && (m == len(rot.Members)-1 || rot.Members[m+1].Lag != lag) {
				r.collect(rot, lag)
			}
		}
	}
}

// collect lets the members of a lag eat what was booked for them today.
func (r *run) collect(rot *rotation, lag int) {
	for _, at := range rot.Lands {
		l := &r.lands[at]
		for j := 0; j < len(l.stretches) && l.owed > 0; j++ {
			r.serve(rot, l, &l.stretches[j], lag)
		}
	}
}

// serve is collect on one stretch, never below what is to be left; where a cut
// took what had been kept, they share what there is.
func (r *run) serve(rot *rotation, l *land, s *stretch, lag int) {
	booked, use := 0.0, 0.0
	for _, b := range s.due {
		if b.day == r.day && rot.Members[b.member].Lag == lag {
			booked, use = booked+b.eaten, b.use
		}
	}
	if booked == 0 {
		return
	}
	share := min(1, max(0, s.mass-l.Leave)*use/booked)
	kept := s.due[:0]
	for _, b := range s.due {
		if b.day == r.day && rot.Members[b.member].Lag == lag {
			r.eat(l, s, rot.Members[b.member].Group, share*b.eaten, use)
			continue
		}
		kept = append(kept, b)
	}
	l.owed -= len(s.due) - len(kept)
	s.due = kept
	r.leave(l, s)
}

// eat takes a mass per area off a stretch for a group: of what disappears the
// share use is eaten, the rest trampled.
func (r *run) eat(l *land, s *stretch, group int, eaten, use float64) {
	area := s.length() * l.Width
	gone := eaten / use
	s.mass -= gone
	s.bitten = r.day
	s.listed = false
	r.result.Eaten[group][r.day] += eaten * area
	r.book.Eaten += eaten * area
	r.book.Trampled += (gone - eaten) * area
	r.visited(s.move, group, eaten*area)
}

// leave tells a move what stands on a stretch once the last group has been there.
func (r *run) leave(l *land, s *stretch) {
	if len(s.due) > 0 {
		return
	}
	area := s.length() * l.Width
	m := &r.result.Moves[s.move]
	m.left += s.mass * area
	m.leftArea += area
}

// visited writes a visit down, one for each day, group and move.
func (r *run) visited(move, group int, eaten float64) {
	all := r.result.Visits
	for i := len(all) - 1; i >= 0 && all[i].Day == r.day; i-- {
		if all[i].Group == group && all[i].Move == move {
			all[i].Eaten += eaten
			return
		}
	}
	r.result.Visits = append(all, Visit{Day: r.day, Group: group, Move: move, Eaten: eaten})
}

// feed is step 4: what a group wants and did not find is hay.
func (r *run) feed() {
	for g := range r.Groups {
		want := r.Groups[g].Demand[r.day]
		short := want - r.result.Eaten[g][r.day]
		if short <= 1e-9*want {
			continue
		}
		r.result.Hay[g][r.day] = short
		r.book.Hay += short
		r.result.Fed = append(r.result.Fed, Fed{Day: r.day, Group: g, Hay: short, Reason: r.reason(g)})
	}
}

// reason tells why a group is fed today.
func (r *run) reason(group int) Reason {
	for i := range r.rotations {
		rot := &r.rotations[i]
		for _, m := range rot.Members {
			if m.Group != group {
				continue
			}
			if r.day < r.First+m.Lag {
				return LeadIn
			}
			if why := rot.short[r.day-m.Lag]; why != NoReason {
				return why
			}
			return CutBefore // the leader found enough that day
		}
	}
	return NoLand
}

// grow is step 5: everything grows one day on the exact logistic map.
func (r *run) grow() {
	for i := range r.lands {
		l := &r.lands[i]
		fade := math.Exp(-4 * l.Peak[r.day] / l.Ceiling)
		grown := 0.0
		for j := range l.stretches {
			s := &l.stretches[j]
			if fade < 1 { // without growth the map would still change a mass, by its rounding
				mass := l.Ceiling / (1 + (l.Ceiling/s.mass-1)*fade)
				grown += (mass - s.mass) * s.length()
				s.mass = mass
			}
			r.notice(l, i, s)
		}
		r.book.Grown += grown * l.Width
	}
}

// notice lists a stretch that has outgrown the mower's mark, and tells a move
// when its ground is ready again.
func (r *run) notice(l *land, index int, s *stretch) {
	if l.MowAbove > 0 && s.mass > l.MowAbove && !s.listed && len(s.due) == 0 {
		s.listed = true
		r.result.Surplus = append(r.result.Surplus, Surplus{Day: r.day + 1, Land: index, From: s.from, To: s.to})
	}
	if s.ready || s.move < 0 || len(s.due) > 0 || s.mass < l.TurnIn {
		return
	}
	m := &r.result.Moves[s.move]
	if r.day+1-s.bitten >= r.rotations[m.Rotation].ShortestRest {
		s.ready = true
		m.Ready = r.day + 1
	}
}

// write is step 6.
func (r *run) write() {
	n := len(r.lands)
	r.book.Standing, r.standings = r.standings[:n:n], r.standings[n:]
	for i := range r.lands {
		r.book.Standing[i] = r.lands[i].standing()
		r.book.End += r.book.Standing[i]
	}
	r.result.Days = append(r.result.Days, r.book)
}

// stand gives what stands on every land.
func (r *run) stand() [][]Stretch {
	lands := make([][]Stretch, len(r.lands))
	for i := range r.lands {
		lands[i] = make([]Stretch, len(r.lands[i].stretches))
		for j := range lands[i] {
			s := &r.lands[i].stretches[j]
			lands[i][j] = Stretch{To: s.to, Mass: s.mass, Bitten: s.bitten}
		}
	}
	return lands
}

// finish hands over the end state and closes the moves.
func (r *run) finish() {
	r.result.Lands = r.stand()
	for i := range r.lands {
		for j := range r.lands[i].stretches {
			s := &r.lands[i].stretches[j]
			if s.move >= 0 && !s.ready {
				r.result.Moves[s.move].Ready = -1 // a piece of it is not ready yet
			}
		}
	}
	for i := range r.result.Moves {
		m := &r.result.Moves[i]
		if m.leftArea > 0 {
			m.After = m.left / m.leftArea
		}
	}
}
