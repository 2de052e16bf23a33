package season

import (
	"math"
	"slices"
)

// Log is what is known of days that are past. With it nobody chooses ground: leaders
// graze what they are given, and where nothing is given they graze nowhere. Followers come
// to what was kept for them, as ever. A log names those who eat: where leaders want nothing,
// it tells of ground by those who come first to it, and of what these have not come to by its
// end it tells nothing, so that the rules choose.
type Log struct {
	Days  int     // from the first day on
	Given []Given // in the order of their days
	Left  []Left  // a later one of the same evening lies over those before it
}

// Given is the leaders' ground on some days, in place of a choice; that of others as many
// days before as they come behind.
type Given struct {
	Rotation, Land int
	Day, Days      int     // the day they came, before 0 too, and the days they were there, 1 or more
	Open           bool    // they are there when the log ends: when they will leave is no fact
	From, To       float64 // metres; of a paddock 0 and its length
}

// until gives the day on which they were gone.
func (g *Given) until() int {
	if g.Open {
		return math.MaxInt32
	}
	return g.Day + g.Days
}

// Left is what a log tells of ground in the evening of the last day that somebody was there.
type Left struct {
	Day, Land int
	From, To  float64
	Mass      float64 // what stood there on average, kg/m²; 0: nobody read it
	Bare      bool    // what they ate cannot be reckoned: nothing is left above the leave mass
}

// First gives the lag of those who come first to ground that is opened on a day, being the
// first who want something of it; -1 where nobody does.
func (in *Input) First(rot *Rotation, day int) int {
	for _, m := range rot.Members {
		if on := day + m.Lag; on < in.Days && in.Groups[m.Group].Demand[on] > 0 {
			return m.Lag
		}
	}
	return -1
}

// tells tells whether a log is to say which ground was opened on a day.
func (r *run) tells(rot *rotation, day int) bool {
	if r.Log == nil || day >= r.Days {
		return false
	}
	lag := r.First(rot.Rotation, day)
	return lag >= 0 && day+lag < r.Log.Days
}

// leadAsTold is step 3 for a rotation where a log tells its ground. What was under way
// before the first day goes on as it was planned until the log tells where they are.
func (r *run) leadAsTold(rot *rotation) {
	r.earlyMark(rot)
	share, l := 1.0, r.stayOf(rot)
	on := r.listTold(rot, l)
	if l != nil {
		share = r.stayAsTold(rot, l, on)
	}
	if r.day <= rot.busy {
		share = r.stripAsTold(rot, on, share)
	}
	r.vacate(rot)
	if share > 0 {
		r.movesTold(rot, share)
	}
}

// whereTold is what a log tells of where the leaders are today.
type whereTold struct {
	begun       bool // it has told of them by now
	stay, strip int  // the day on which they will be gone from where they were; 0: they are gone
}

// listTold lists the ground that is to be opened today by a log, and tells where they are.
func (r *run) listTold(rot *rotation, l *land) (on whereTold) {
	rot.told = rot.told[:0]
	for i := range r.Log.Given {
		g := &r.Log.Given[i]
		switch {
		case g.Rotation != rot.index || g.Day > r.day:
			continue
		case r.day >= g.until():
		case !r.standsOn(rot, l, g):
			rot.told = append(rot.told, g)
		case r.lands[g.Land].Paddock:
			on.stay = max(on.stay, g.until())
		default:
			on.strip = max(on.strip, g.until())
		}
		on.begun = true
	}
	return on
}

// stayAsTold lets the leaders eat in their stay if they are there, and gives which part of
// their day is left.
func (r *run) stayAsTold(rot *rotation, l *land, on whereTold) float64 {
	if on.stay <= r.day && (on.begun || r.day >= l.stay.From+l.stay.Days) {
		l.stay.Days = min(l.stay.Days, r.day-l.stay.From) // they have left
		return 1
	}
	if on.begun {
		r.stayUntil(rot, &l.stay, on.stay)
	}
	r.graze(rot, l, 0, r.day-l.stay.From)
	share := r.lacking(rot)
	if share > 0 && on.stay <= r.day+1 {
		l.stay.Days = r.day - l.stay.From
	}
	return share
}

// stripAsTold does the same on a strip of several days.
func (r *run) stripAsTold(rot *rotation, on whereTold, share float64) float64 {
	if on.begun && on.strip <= r.day {
		r.lapse(rot, r.day)
		return share
	}
	if on.begun {
		r.busyUntil(rot, on.strip)
	}
	r.visit(rot, 0)
	if share = r.lacking(rot); share > 0 && on.strip <= r.day+1 {
		r.lapse(rot, r.day)
	}
	return share
}

// standsOn tells whether the leaders are on given ground already: in their stay, or on a
// strip that keeps something for them today.
func (r *run) standsOn(rot *rotation, stay *land, g *Given) bool {
	l := &r.lands[g.Land]
	if l.Paddock {
		return l == stay && (g.Day < r.day || !r.entersAnew(rot, l))
	}
	return slices.ContainsFunc(l.stretches, func(s stretch) bool {
		return s.from < g.To-dust && g.From < s.to-dust && slices.ContainsFunc(s.visits, func(v visit) bool {
			return int(v.day) == r.day && rot.Members[v.member].Lag == 0
		})
	})
}

// entersAnew tells whether a paddock in which they stayed up to yesterday, told of by itself
// from today on, is entered anew and not stayed on in: a log that begins today tells them
// apart only where so short a rest allows the one.
func (r *run) entersAnew(rot *rotation, l *land) bool {
	known := rot.ShortestRest <= 1
	if r.day > 0 {
		known = r.tells(rot, r.day-1)
	}
	return known && r.day >= l.stay.From+l.stay.Days && r.day >= r.lastVisit(l)
}

// stayUntil sets the days of a stay that goes on today by the day on which it was over.
func (r *run) stayUntil(rot *rotation, stay *Stay, over int) {
	if r.tells(rot, over) {
		stay.Days = min(stay.Days, over-stay.From)
	}
	stay.Days = max(r.day-stay.From+1, stay.Days)
}

// busyUntil ends the days of a strip on the day on which it was left.
func (r *run) busyUntil(rot *rotation, over int) {
	if over <= rot.busy && r.tells(rot, over) {
		r.lapse(rot, over)
	}
}

// movesTold opens the ground that a log gives today, for a part of the day: each piece for
// what is left of a move, the next for the rest of it. Ground that is given when nobody
// wants anything more is opened all the same.
func (r *run) movesTold(rot *rotation, share float64) {
	total := r.want(rot, r.day)
	if total <= 0 {
		return
	}
	one, more := total*share/float64(rot.Moves), rot.Moves // of one move, and the moves to come
	for left := 0.0; len(rot.told) > 0; {
		told := rot.told[0]
		rot.told = rot.told[1:]
		if left <= crumb*one && more > 0 {
			left, more = one, more-1
		}
		if l := &r.lands[told.Land]; l.Paddock {
			r.enter(rot, l, told, 0, r.firstTold(rot, l, left, one, more), false)
			left, more = 0, 0
			continue
		}
		g := r.groundTold(rot, told)
		for more > 0 && r.longer(rot, g, left) {
			left, more = left+one, more-1
		}
		left -= r.strip(rot, g, 0, left, false)
		r.busyUntil(rot, told.until())
	}
}

// firstTold gives the part of the day's want for which a paddock was entered: that of the
// first of the day's moves for which it holds, all that is left where it holds for none, and
// a move's where everything had been found.
func (r *run) firstTold(rot *rotation, l *land, left, one float64, more int) float64 {
	part := func(left float64, more int) float64 { return min(1, (left+one*float64(more))/r.want(rot, r.day)) }
	all := part(left, more)
	if all <= crumb {
		return 1 / float64(rot.Moves)
	}
	for ; more >= 0; left, more = one, more-1 {
		if first := part(left, more); r.holds(rot, l, Stay{From: r.day, Planned: 1, Days: 1, First: first}, 0) {
			return first
		}
	}
	return all
}

// groundTold gives the stretches of a lane that are given.
func (r *run) groundTold(rot *rotation, told *Given) ground {
	l := &r.lands[told.Land]
	first := r.split(l, told.From)
	return ground{at: slices.Index(rot.Lands, told.Land), first: first, last: r.split(l, told.To) - 1, told: told}
}

// longer tells whether given ground is longer than the rules would open for a want: then it
// served the next move too. On ground that was not ready by the rules, it is where neither
// the shortest strip nor a remainder that joined it is the reason.
func (r *run) longer(rot *rotation, g ground, left float64) bool {
	l := &r.lands[g.told.Land]
	own := 0.0
	r.chosen(rot, l, g, left, func(_ int, to float64) { own = max(own, to) })
	if own == 0 {
		own = max(l.reach(g, left/rot.use(1)), l.stretches[g.first].from+rot.ShortestStrip) + rot.ShortestStrip
	}
	return g.told.To > own+logged
}

// daysTold is daysOfStrip on given ground: the days that they were there, and those that the
// rules give a strip of this length where they left it before.
func (r *run) daysTold(rot *rotation, l *land, g ground, left float64) (days int, kept, to float64) {
	days, kept = max(1, min(g.told.Day+g.told.Days, r.Days)-r.day), left
	r.chosen(rot, l, g, left, func(own int, to float64) {
		if math.Abs(to-g.told.To) < logged {
			days = max(days, own)
		}
	})
	for i := 1; i < days; i++ {
		kept += r.want(rot, r.day+i)
	}
	return days, kept, g.told.To
}

// chosen shows the strips that the rules would open where given ground begins: of a ripe row,
// and of a grazeable one.
func (r *run) chosen(rot *rotation, l *land, g ground, left float64, show func(days int, to float64)) {
	for _, ripe := range []bool{true, false} {
		if row, long := r.row(rot, g.at, g.first, ripe); long && left > 0 {
			days, _, to := r.sizeOfStrip(rot, l, row, left)
			show(days, to)
		}
	}
}

// logged is how near, in metres, places in a log are told at the least.
const logged = 1e-3

// seen takes over what a log tells of the evening.
func (r *run) seen() {
	if r.Log == nil {
		return
	}
	for i := range r.Log.Left {
		if left := &r.Log.Left[i]; left.Day == r.day {
			r.see(left)
		}
	}
}

// see sets the last bite of ground that somebody left, and what stands there if it was read
// and nobody is still to come: one figure for all of it, so that what stood apart stays apart.
func (r *run) see(left *Left) {
	l := &r.lands[left.Land]
	first, behind := r.split(l, left.From), r.split(l, left.To)
	due, stood := l.stay.Days > 0 && r.day < r.lastVisit(l), 0.0
	for i := first; i < behind; i++ {
		s := &l.stretches[i]
		due, stood = due || len(s.visits) > 0, stood+l.mass(s)*l.area(s)
	}
	for i := first; i < behind; i++ {
		s := &l.stretches[i]
		s.bitten, s.listed = int32(r.day), false
		mass := l.mass(s)
		switch {
		case left.Mass > 0 && !due:
			mass = min(l.Ceiling, mass*left.Mass*l.Width*(l.stretches[behind-1].to-l.stretches[first].from)/stood)
		case left.Bare:
			mass = min(mass, l.Leave)
		}
		if was := l.mass(s); math.Abs(mass-was) > same*was {
			l.gone += (was - mass) * l.area(s)
			l.set(s, mass)
		}
	}
}

// lastVisit gives the last day on which somebody comes in a land's stay.
func (r *run) lastVisit(l *land) int {
	lag := 0
	for i := range r.rotations {
		if slices.Contains(r.rotations[i].Lands, l.index) {
			lag = r.rotations[i].longestLag()
		}
	}
	return l.stay.From + l.stay.Days - 1 + lag
}
