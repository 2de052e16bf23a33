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
	Front         int       // index into Lands: where the moves go on, at At
	At            float64   // metres from the lane's start; 0: the moves begin anywhere
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
	Stood   []float64   // by day, and of a day by land, what stands at its end, kg
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
	Start, Grown, Eaten, Trampled, Cut, End, Hay float64 // kg over all lands
}

// Surplus is a stretch that outgrew the mass above which it is mown before the
// front reached it.
type Surplus struct {
	Day, Land int
	From, To  float64
}

// stretch is a Stretch of the running season. Growth is a product on K/V - 1,
// the same for all of a land, so it is kept once, in land.fade, and a stretch is
// only looked at when somebody comes to it (or the day is written down).
type stretch struct {
	from, to      float64
	lack          float64 // (K/V - 1) ÷ the land's fade
	bitten        int32
	move          int32 // the move that opened it last; -1: none yet
	at            int32 // its bookings begin there in the run's list of all
	due           int32 // its bookings
	room          int32 // places for them
	listed, ready bool
}

// booking is grass kept on a stretch for a group of the rotation.
type booking struct {
	member, day int32
	eaten       float64 // kg/m²
	gross       float64 // what disappears for each part of it
}

func (s *stretch) length() float64 { return s.to - s.from }

// land is a Land of the running season.
type land struct {
	*Land
	stretches []stretch
	passes    int
	due       []int32 // bookings on all its stretches, by day
	booked    window  // no stretch outside of it has a booking
	fresh     window  // nor waits, grazed, to be ready again
	fade      float64 // what growth has put on the lack of all stretches
	lift      float64 // 1 ÷ fade
	peak      float64 // of the day whose factor is daily
	daily     float64 // what a day's growth puts on it
	ripe      float64 // K/T - 1: the lack from which it may be grazed
	over      float64 // K/M - 1, of the mower's mark M; below it what is listed
	nearest   float64 // the least lack of what has been grazed and is not ripe again
	rested    int     // the first day on which something that is ripe has rested
	stands    float64 // kg, when it was last written down
	gone      float64 // kg, eaten, trampled and cut since then
}

// faint is the fade at which it is put on the stretches and begins anew at 1:
// long before its inverse leaves the range of a number.
const faint = 1e-100

// huge is where the product of two lacks is about to leave the range of a number.
const huge = 1e300

// stand gives what stands on a stretch now, kg/m².
func (l *land) stand(s *stretch) float64 { return l.Ceiling / (1 + s.lack*l.fade) }

// set changes what stands, other than by growth.
func (l *land) set(s *stretch, mass float64) {
	s.lack = (l.Ceiling/mass - 1) * l.lift
}

// occupy gives a stretch to a move: from today its rest is broken.
func (l *land) occupy(s *stretch, move, day int) {
	s.move, s.bitten, s.ready = int32(move), int32(day), false
}

// rotation is a Rotation of the running season.
type rotation struct {
	*Rotation
	front int // index into Lands; -1: none
	at    float64
	near  int      // about where the stretch is that begins at it
	busy  int      // last day of a stay in a paddock
	short []Reason // by day: why the leader found too little
	// What each member will want of ground opened on day wantsOf, and all of them.
	wants   []float64
	total   float64
	wantsOf int
}

// Runner steps seasons one after the other in the same memory. A Result of it
// holds until its next season.
type Runner struct{ run }

// run is a season under way.
type run struct {
	*Input
	brief     bool
	lands     []land
	rotations []rotation
	result    Result
	day       int
	book      *Day      // the last of the result
	places    []booking // of which stretches take their bookings
	opens     int       // moves so far
	numbers   []float64 // of Eaten and Hay
	counts    []int32   // of the lands' due
	ends      []Stretch // of Lands, all in one
	stands    []float64 // of the stretches of a strip that is opened
}

// Run steps the season to its end. The input must be sound (ceiling above
// turn-in above leave above 0, masses above 0 and up to the ceiling, lags in
// order, as many peaks and demands as days): package grazing sees to it.
func Run(in *Input) *Result { return Watch(in, nil) }

// Watch runs a season as Run does and shows the stand at the end of every day,
// after growth; what it is shown is each's to keep.
func Watch(in *Input, each func(day int, lands [][]Stretch)) *Result {
	var r run
	r.steps(in, each)
	return &r.result
}

// Run steps a season in full.
func (r *Runner) Run(in *Input) *Result {
	r.brief = false
	r.steps(in, nil)
	return &r.result
}

// Brief steps a season and keeps only what was eaten, cut and fed: no moves, no
// visits, no standing grass, no surplus. Its figures are those of Run, bit for
// bit.
func (r *Runner) Brief(in *Input) *Result {
	r.brief = true
	r.steps(in, nil)
	return &r.result
}

func (r *run) steps(in *Input, each func(day int, lands [][]Stretch)) {
	r.begin(in)
	for r.day = 0; r.day < in.Days; r.day++ {
		r.result.Days = append(r.result.Days, Day{Start: r.standing()}) // before the day's cuts
		r.book = &r.result.Days[r.day]
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
}

func (r *run) begin(in *Input) {
	r.Input, r.places, r.opens = in, r.places[:0], 0
	last := &r.result
	r.result = Result{Moves: last.Moves[:0], Visits: last.Visits[:0], Fed: last.Fed[:0], Days: last.Days[:0], Surplus: last.Surplus[:0], Eaten: last.Eaten[:0], Hay: last.Hay[:0], Stood: last.Stood[:0], Lands: last.Lands[:0]}
	r.numbers = zeros(r.numbers, 2*len(in.Groups)*in.Days)
	flat := r.numbers
	for range in.Groups {
		r.result.Eaten, flat = append(r.result.Eaten, flat[:in.Days:in.Days]), flat[in.Days:]
		r.result.Hay, flat = append(r.result.Hay, flat[:in.Days:in.Days]), flat[in.Days:]
	}
	if !r.brief {
		r.result.Stood = slices.Grow(r.result.Stood, in.Days*len(in.Lands))
		moves := 8
		for i := range in.Rotations {
			moves += in.Days * in.Rotations[i].Moves * 9 / 8
		}
		r.result.Moves = slices.Grow(r.result.Moves, moves)
		r.result.Visits = slices.Grow(r.result.Visits, moves*len(in.Groups))
	}
	r.result.Days = slices.Grow(r.result.Days, in.Days)
	r.beginLands()
	r.rotations = sized(r.rotations, len(in.Rotations))
	for i := range in.Rotations {
		rot := &r.rotations[i]
		*rot = rotation{Rotation: &in.Rotations[i], front: -1, busy: -1, wantsOf: -1, wants: zeros(rot.wants, len(in.Rotations[i].Members)), short: zeros(rot.short, in.Days)}
		r.goOn(rot)
	}
}

// goOn puts the front where an earlier season left it.
func (r *run) goOn(rot *rotation) {
	if rot.At > 0 {
		l := &r.lands[rot.Lands[rot.Front]]
		rot.front, rot.at, l.passes = rot.Front, r.split(l, 0, rot.At), 1
	}
}

func (r *run) beginLands() {
	r.lands = sized(r.lands, len(r.Lands))
	reach := r.Days // and the longest lag, for what is booked on the last day
	for i := range r.Rotations {
		members := r.Rotations[i].Members
		reach = max(reach, r.Days+members[len(members)-1].Lag)
	}
	r.counts = zeros(r.counts, reach*len(r.Lands))
	counts := r.counts
	for i := range r.Lands {
		l := &r.lands[i]
		*l = land{Land: &r.Lands[i], stretches: l.stretches[:0], booked: nowhere, fresh: nowhere, fade: 1, lift: 1, daily: 1, nearest: math.Inf(1), rested: math.MaxInt}
		l.due, counts = counts[:reach:reach], counts[reach:]
		l.ripe = l.Ceiling/l.TurnIn - 1
		if l.MowAbove > 0 {
			l.over = l.Ceiling/l.MowAbove - 1
		}
		from := 0.0
		for _, s := range l.Stretches {
			piece := stretch{from: from, to: s.To, bitten: int32(s.Bitten), move: -1}
			l.set(&piece, s.Mass)
			l.stretches = append(l.stretches, piece)
			from = s.To
		}
		l.stands = l.standing()
	}
}

// zeros gives a list of so many zero values, in the memory of an old one where it
// is large enough.
func zeros[T any](old []T, n int) []T {
	all := slices.Grow(old[:0], n)[:n]
	clear(all)
	return all
}

// sized gives a list of so many values, those of an old one where it has them.
func sized[T any](old []T, n int) []T {
	if cap(old) < n {
		return append(old[:cap(old)], make([]T, n-cap(old))...)
	}
	return old[:n]
}

// standing gives what stood at the end of the day before.
func (r *run) standing() float64 {
	total := 0.0
	for i := range r.lands {
		total += r.lands[i].stands
	}
	return total
}

// standing gives what stands now.
func (l *land) standing() float64 {
	total, fade, all := 0.0, l.fade, l.stretches
	if len(all)%2 == 1 {
		s := &all[len(all)-1]
		total = (s.to - s.from) / (1 + s.lack*fade)
	}
	for i := 1; i < len(all); i += 2 { // two by two: a season spends most of its time on these divisions
		s, t := &all[i-1], &all[i]
		x, y := 1+s.lack*fade, 1+t.lack*fade
		if both := x * y; both < huge {
			total += ((s.to-s.from)*y + (t.to-t.from)*x) / both
		} else {
			total += (s.to-s.from)/x + (t.to-t.from)/y
		}
	}
	return total * l.Ceiling * l.Width
}

// cut is step 1: what stands above the stubble leaves as hay.
func (r *run) cut() {
	for _, c := range r.Cuts {
		if c.Day != r.day {
			continue
		}
		l := &r.lands[c.Land]
		from, to := r.split(l, 0, c.From), r.split(l, 0, c.To)
		for i := range l.stretches {
			s := &l.stretches[i]
			mass := l.stand(s)
			if s.from < from || s.to > to || mass <= c.Stubble {
				continue
			}
			cut := (mass - c.Stubble) * s.length() * l.Width
			r.book.Cut += cut
			l.gone += cut
			l.set(s, c.Stubble)
			s.bitten = int32(r.day)
			s.listed = false
		}
	}
}

// split parts the stretch that a place lies in, at or behind the i-th, and gives the
// boundary there: one that is there already, where the place all but lies on it.
func (r *run) split(l *land, i int, at float64) float64 {
	if at < dust {
		return 0
	}
	for i+1 < len(l.stretches) && l.stretches[i+1].from < at+dust {
		i++
	}
	for i > 0 && l.stretches[i-1].to > at-dust {
		i--
	}
	s := &l.stretches[i]
	if math.Abs(s.to-at) < dust || at > s.to {
		return s.to
	}
	behind := *s
	behind.from = at
	behind.at, behind.room = int32(len(r.places)), s.due
	r.places = append(r.places, r.bookings(s)...)
	for _, b := range r.bookings(s) {
		l.due[b.day]++
	}
	s.to = at
	l.insert(i+1, behind)
	return at
}

// bookings gives those of a stretch.
func (r *run) bookings(s *stretch) []booking { return r.places[s.at : s.at+s.due] }

// insert puts a stretch into a land before another.
func (l *land) insert(at int, s stretch) {
	l.stretches = append(l.stretches, s)
	copy(l.stretches[at+1:], l.stretches[at:])
	l.stretches[at] = s
	l.booked.inserted(at)
	l.fresh.inserted(at)
}

// remove takes one out that has no bookings.
func (l *land) remove(at int) {
	l.stretches = slices.Delete(l.stretches, at, at+1)
	l.booked.removed(at)
	l.fresh.removed(at)
}

// window is stretches of a land from one to another; there is none where low is above
// high.
type window struct{ low, high int }

// nowhere is a window with nothing in it: its low is beyond all stretches.
var nowhere = window{math.MaxInt32, -1}

// include makes the window hold more stretches.
func (w *window) include(first, last int) { w.low, w.high = min(w.low, first), max(w.high, last) }

// inserted tells that a stretch was put in, parted from the one before it.
func (w *window) inserted(at int) {
	if at <= w.low {
		w.low++
	}
	if at <= w.high+1 {
		w.high++
	}
}

// removed tells that a stretch was taken out.
func (w *window) removed(at int) {
	if at < w.low {
		w.low--
	}
	if at <= w.high {
		w.high--
	}
}

// follow is step 2: followers, the longest lag first, eat what was booked.
func (r *run) follow() {
	for i := range r.rotations {
		r.collect(&r.rotations[i], 1)
	}
}

// collect lets the members whose lag is so much or more eat what was booked for
// them today.
func (r *run) collect(rot *rotation, least int) {
	for _, at := range rot.Lands {
		l := &r.lands[at]
		if l.due[r.day] == 0 {
			continue
		}
		first, last := len(l.stretches), -1
		for j := l.booked.low; j <= l.booked.high; j++ {
			if s := &l.stretches[j]; s.due > 0 && r.serve(rot, l, s, least) {
				first, last = min(first, j), j
			}
		}
		l.tighten()
		l.join(first, last)
	}
}

// tighten leaves the stretches without bookings at both ends out of the window.
func (l *land) tighten() {
	w := &l.booked
	for w.low <= w.high && l.stretches[w.low].due == 0 {
		w.low++
	}
	for w.high >= w.low && l.stretches[w.high].due == 0 {
		w.high--
	}
	if w.low > w.high {
		*w = nowhere
	}
}

// join makes one stretch of neighbours, from the first to the last, that one move
// left alike: they grow alike from now on. Without it every pass would leave its boundaries on the land for
// good, and a season slows down from pass to pass.
func (l *land) join(first, last int) {
	for j := last; j > first; j-- {
		s, before := &l.stretches[j], &l.stretches[j-1]
		if !alike(before, s) {
			continue
		}
		mass := (l.stand(before)*before.length() + l.stand(s)*s.length()) / (s.to - before.from)
		before.to = s.to
		l.set(before, mass)
		l.remove(j)
	}
}

// alike tells whether two neighbours have one history from here on.
func alike(a, b *stretch) bool {
	return a.move >= 0 && a.move == b.move && a.bitten == b.bitten &&
		a.due == 0 && b.due == 0 && math.Abs(a.lack-b.lack) <= same*a.lack
}

// serve is collect on one stretch, the longest lag first. It tells whether the
// last of the groups has been there.
func (r *run) serve(rot *rotation, l *land, s *stretch, least int) bool {
	for {
		at, lag, alone := -1, -1, true
		for i, b := range r.bookings(s) {
			if int(b.day) != r.day {
				continue
			}
			switch of := rot.Members[b.member].Lag; {
			case of > lag:
				at, lag, alone = i, of, true
			case of == lag:
				alone = false
			}
		}
		if lag < least {
			return false
		}
		if alone {
			r.take(rot, l, s, at)
		} else {
			r.share(rot, l, s, lag)
		}
		if s.due == 0 {
			return true
		}
	}
}

// share gives how much of what is booked there is above what is to be left.
func (l *land) share(stands, booked float64) float64 {
	there := stands - l.Leave
	switch {
	case there >= booked:
		return 1
	case there > 0:
		return there / booked
	}
	return 0
}

// take is share for one booking, as nearly all are.
func (r *run) take(rot *rotation, l *land, s *stretch, at int) {
	due, stands := r.bookings(s), l.stand(s)
	b := due[at]
	share := l.share(stands, b.eaten*b.gross)
	stands -= r.eat(l, s, rot.Members[b.member].Group, share*b.eaten, b.gross)
	l.due[r.day]--
	for ; at+1 < len(due); at++ {
		due[at] = due[at+1]
	}
	s.due--
	l.set(s, stands)
	r.leave(l, s, stands)
}

// share lets the members of one lag eat, never below what is to be left; where a
// cut took what had been kept, they share what there is.
func (r *run) share(rot *rotation, l *land, s *stretch, lag int) {
	booked, stands, due := 0.0, l.stand(s), r.bookings(s)
	for _, b := range due {
		if int(b.day) == r.day && rot.Members[b.member].Lag == lag {
			booked += b.eaten * b.gross
		}
	}
	share, kept := l.share(stands, booked), due[:0]
	for _, b := range due {
		if int(b.day) == r.day && rot.Members[b.member].Lag == lag {
			stands -= r.eat(l, s, rot.Members[b.member].Group, share*b.eaten, b.gross)
			l.due[r.day]--
			continue
		}
		kept = append(kept, b)
	}
	s.due = int32(len(kept))
	l.set(s, stands)
	r.leave(l, s, stands)
}

// eat books what a group eats of a stretch per area and gives what disappears: so
// many times as much, the rest being trampled.
func (r *run) eat(l *land, s *stretch, group int, eaten, gross float64) (gone float64) {
	area := s.length() * l.Width
	gone = eaten * gross
	s.bitten = int32(r.day)
	s.listed = false
	r.result.Eaten[group][r.day] += eaten * area
	r.book.Eaten += eaten * area
	r.book.Trampled += (gone - eaten) * area
	l.gone += gone * area
	if !r.brief {
		r.visited(int(s.move), group, eaten*area)
	}
	return gone
}

// leave tells a move what stands on a stretch once the last group has been there,
// and the land to look when it is ripe again.
func (r *run) leave(l *land, s *stretch, stands float64) {
	if s.due > 0 || r.brief {
		return
	}
	if s.lack < l.nearest {
		l.nearest = s.lack
	}
	area := s.length() * l.Width
	m := &r.result.Moves[s.move]
	m.left += stands * area
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
	r.result.Visits = append(r.result.Visits, Visit{Day: r.day, Group: group, Move: move, Eaten: eaten})
}

// feed is step 4: what a group wants and did not find is hay.
func (r *run) feed() {
	day, eaten := r.day, r.result.Eaten
	for g := range r.Groups {
		want := r.Groups[g].Demand[day]
		short := want - eaten[g][day]
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
		if peak := l.Peak[r.day]; peak != l.peak {
			l.peak, l.daily = peak, math.Exp(-4*peak/l.Ceiling)
		}
		l.stands -= l.gone
		l.gone = 0
		if l.daily != 1 {
			l.fade *= l.daily
			if l.fade < faint {
				l.rebase()
			}
			l.lift = 1 / l.fade
		}
		if !r.brief {
			r.note(l, i)
		}
	}
}

// rebase puts the fade on the stretches and begins it anew at 1.
func (l *land) rebase() {
	for j := range l.stretches {
		l.stretches[j].lack *= l.fade
	}
	l.nearest *= l.fade
	l.fade = 1
}

// note writes down what stands on a land and what has grown, and looks for
// ground that is ready again or has outgrown the mower's mark.
func (r *run) note(l *land, index int) {
	if l.daily < 1 {
		stands := l.standing()
		r.book.Grown += stands - l.stands
		l.stands = stands
	}
	if l.nearest*l.fade <= l.ripe || r.day+1 >= l.rested {
		r.look(l)
	}
	if l.over > 0 {
		r.list(l, index)
	}
}

// look tells the moves of a land which of its stretches are ready again, and the
// land when to look next.
func (r *run) look(l *land) {
	nearest, rested, fresh := math.Inf(1), math.MaxInt, nowhere
	for j := l.fresh.low; j <= l.fresh.high; j++ {
		s := &l.stretches[j]
		if s.ready || s.move < 0 {
			continue
		}
		fresh.high = j
		if fresh.low > j {
			fresh.low = j
		}
		if s.due > 0 {
			continue
		}
		if s.lack*l.fade > l.ripe {
			if s.lack < nearest { // min takes its time over what is no number
				nearest = s.lack
			}
			continue
		}
		m := &r.result.Moves[s.move]
		if on := int(s.bitten) + r.rotations[m.Rotation].ShortestRest; on > r.day+1 {
			rested = min(rested, on)
			continue
		}
		s.ready = true
		m.Ready = r.day + 1
	}
	l.nearest, l.rested, l.fresh = nearest, rested, fresh
}

// list writes down the stretches of a land that have outgrown the mower's mark.
func (r *run) list(l *land, index int) {
	for j := range l.stretches {
		s := &l.stretches[j]
		if s.lack*l.fade < l.over && !s.listed && s.due == 0 {
			s.listed = true
			r.result.Surplus = append(r.result.Surplus, Surplus{Day: r.day, Land: index, From: s.from, To: s.to})
		}
	}
}

// write is step 6.
func (r *run) write() {
	if r.brief {
		return
	}
	end := 0.0
	for i := range r.lands {
		stands := r.lands[i].stands
		r.result.Stood = append(r.result.Stood, stands)
		end += stands
	}
	r.book.End = end
}

// stand gives what stands on every land.
func (r *run) stand() [][]Stretch {
	lands := make([][]Stretch, len(r.lands))
	for i := range r.lands {
		lands[i] = r.lands[i].pieces(nil)
	}
	return lands
}

// pieces puts what stands on the land to a list.
func (l *land) pieces(all []Stretch) []Stretch {
	for i := range l.stretches {
		s := &l.stretches[i]
		all = append(all, Stretch{To: s.to, Mass: l.stand(s), Bitten: int(s.bitten)})
	}
	return all
}

// finish hands over the end state and closes the moves.
func (r *run) finish() {
	if r.brief {
		return
	}
	r.ends = r.ends[:0]
	for i := range r.lands {
		from := len(r.ends)
		r.ends = r.lands[i].pieces(r.ends)
		r.result.Lands = append(r.result.Lands, r.ends[from:len(r.ends):len(r.ends)])
	}
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
