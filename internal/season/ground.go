package season

import (
	"math"
	"slices"
	"sort"
)

const (
	// dust is a length, in metres, that is rounding and not ground: many times the
	// last digit of a place some kilometres down a lane.
	dust = 1e-9
	// digits is what a length, in metres, may lose when it is written down: a strip is as
	// long as the shortest if it is no shorter than by this.
	digits = 1e-6
	// crumb is the share of a want that is rounding and not hunger.
	crumb = 1e-9
	// same is the share of a mass by which rounding parts what is one.
	same = 1e-12
)

// stretch is a Stretch of the running season. Growth multiplies its gap, K/V - 1.
type stretch struct {
	from, to      float64
	gap           float64
	bitten        int32
	move          int32   // the move that opened it last; -1: none yet
	visits        []visit // still to come
	listed, ready bool
}

// visit is grass of a stretch kept for a member of its rotation.
type visit struct {
	member, day int32
	eat         float64 // kg/m²
	use         float64 // share eaten of what disappears
}

func (s *stretch) length() float64 { return s.to - s.from }

// land is a Land of the running season.
type land struct {
	*Land
	index     int
	stretches []stretch
	stay      Stay
	stayMove  int // the move that began the stay; -1: before the first day
	passes    int
	visits    []int32 // by day: how many are to come, on all its stretches
	due       int     // no stretch before this one has visits to come
	// The gaps K/V - 1 at its marks: ground is beyond a mark where its gap is no wider.
	aim, least, early, mower float64
	lowest                   float64 // of any early mark
	peak, factor             float64 // of the day reckoned last, and what its growth puts on a gap
	stands                   float64 // kg, in the evening before
	gone                     float64 // kg, eaten, trampled and cut since then
}

// mass gives V, what stands on a stretch, kg/m².
func (l *land) mass(s *stretch) float64 { return l.Ceiling / (1 + s.gap) }

// set changes what stands on a stretch.
func (l *land) set(s *stretch, mass float64) { s.gap = l.Ceiling/mass - 1 }

// above gives what stands above the leave mass on an area of a stretch, kg/m².
func (l *land) above(s *stretch) float64 { return max(0, l.mass(s)-l.Leave) }

func (l *land) area(s *stretch) float64 { return s.length() * l.Width }

// standing gives what stands on all of the land, kg.
func (l *land) standing() float64 {
	total := 0.0
	for i := range l.stretches {
		s := &l.stretches[i]
		total += l.area(s) * l.mass(s)
	}
	return total
}

// growth gives what a day puts on the gap of every stretch of the land.
func (l *land) growth(day int) float64 {
	if peak := l.Peak[day]; peak != l.peak {
		l.peak, l.factor = peak, math.Exp(-4*peak/l.Ceiling)
	}
	return l.factor
}

// begin makes a land of the running season.
func (r *run) beginLand(l *land, index int) {
	in := &r.Lands[index]
	*l = land{Land: in, index: index, stretches: l.stretches[:0], stay: in.Stay, stayMove: -1, factor: 1, visits: zeros(l.visits, r.reach())}
	l.aim, l.least, l.early = in.Ceiling/in.Aim-1, in.Ceiling/in.Least-1, in.Ceiling/in.Least-1
	l.lowest = in.Ceiling/max(halfAim*in.Aim, in.Leave+(in.Aim-in.Leave)/4) - 1
	if in.MowAbove > 0 {
		l.mower = in.Ceiling/in.MowAbove - 1
	}
	from := 0.0
	for i := range in.Stretches {
		given := &in.Stretches[i]
		s := stretch{from: from, to: given.To, bitten: int32(given.Bitten), move: -1}
		l.set(&s, given.Mass)
		l.stretches = append(l.stretches, s)
		from = given.To
	}
	l.stands = l.standing()
}

// reach gives the days of the season and of the visits after its last.
func (r *run) reach() int {
	lag := 0
	for i := range r.Rotations {
		lag = max(lag, r.Rotations[i].longestLag())
	}
	return r.Days + lag
}

// rested gives the days since the last bite.
func (r *run) rested(s *stretch) int { return r.day - int(s.bitten) }

// fresh tells whether nobody has bitten a stretch since the season's first day.
func (r *run) fresh(s *stretch) bool { return int(s.bitten) < r.From }

// ready tells whether a stretch is rested, nobody is due there, and it stands at the aim
// (ripe) or at the mark that does where nothing is ripe.
func (r *run) ready(rot *rotation, l *land, s *stretch, ripe bool) bool {
	mark := l.aim
	if !ripe {
		mark = l.least
		if l.early > mark && r.fresh(s) {
			mark = l.early
		}
	}
	return s.gap <= mark*(1+same) && len(s.visits) == 0 && l.stay.Days == 0 && r.rested(s) >= rot.ShortestRest
}

// split parts the stretch that a place lies in and gives the index of the one that
// begins there, all but for rounding.
func (r *run) split(l *land, at float64) int {
	i := sort.Search(len(l.stretches), func(i int) bool { return l.stretches[i].to > at+dust })
	if i == len(l.stretches) || l.stretches[i].from >= at-dust {
		return i
	}
	behind := l.stretches[i]
	behind.from = at
	behind.visits = append(r.room(), behind.visits...)
	for _, v := range behind.visits {
		l.visits[v.day]++
	}
	l.stretches[i].to = at
	l.stretches = slices.Insert(l.stretches, i+1, behind)
	return i + 1
}

// join makes one stretch of neighbours, from the first to the last, that one move left
// alike: they grow alike from now on, and without it every pass would leave its borders
// on the land for good.
func (r *run) join(l *land, first, last int) {
	for i := min(last, len(l.stretches)-1); i > first; i-- {
		a, b := &l.stretches[i-1], &l.stretches[i]
		if a.move < 0 || a.move != b.move || a.bitten != b.bitten || len(a.visits)+len(b.visits) > 0 || math.Abs(a.gap-b.gap) > same*a.gap {
			continue
		}
		mass := (l.mass(a)*a.length() + l.mass(b)*b.length()) / (b.to - a.from)
		a.to, a.ready = b.to, a.ready && b.ready
		l.set(a, mass)
		l.stretches = slices.Delete(l.stretches, i, i+1)
		l.due = min(l.due, first)
	}
}

// bite takes so much of a stretch per area for a group, of which a share is eaten and the
// rest trampled.
func (r *run) bite(l *land, s *stretch, group int, eat, use float64) {
	area, gone := l.area(s), eat/use
	l.set(s, l.mass(s)-gone)
	s.bitten, s.listed = int32(r.day), false
	r.result.Eaten[group][r.day] += eat * area
	r.book.Eaten += eat * area
	r.book.Trampled += (gone - eat) * area
	l.gone += gone * area
	if !r.brief {
		r.visited(l, int(s.move), group, eat*area, use)
	}
}

// visited writes a visit down, one for each day, group, land and move.
func (r *run) visited(l *land, move, group int, eaten, use float64) {
	all := r.result.Visits
	for i := len(all) - 1; i >= 0 && all[i].Day == r.day; i-- {
		if all[i].Group == group && all[i].Move == move && all[i].Land == l.index {
			all[i].Eaten += eaten
			return
		}
	}
	r.result.Visits = append(all, Visit{Day: r.day, Group: group, Move: move, Land: l.index, Eaten: eaten, Use: use})
}

// left tells a move what stands on a stretch of it when its last visit is over.
func (r *run) left(l *land, s *stretch) {
	if r.brief || s.move < 0 || len(s.visits) > 0 {
		return
	}
	m := &r.result.Moves[s.move]
	m.left += l.mass(s) * l.area(s)
	m.leftArea += l.area(s)
}

// keep keeps grass of a stretch for a member of the rotation.
func (r *run) keep(l *land, at int, v visit) {
	s := &l.stretches[at]
	if s.visits == nil {
		s.visits = r.room()
	}
	s.visits = append(s.visits, v)
	l.visits[v.day]++
	l.due = min(l.due, at)
}

// drop takes the visits from a stretch for which a test holds, and gives its room back
// where none is left.
func (r *run) drop(l *land, s *stretch, which func(visit) bool) {
	kept := s.visits[:0]
	for _, v := range s.visits {
		if which(v) {
			l.visits[v.day]--
		} else {
			kept = append(kept, v)
		}
	}
	if s.visits = kept; len(kept) == 0 && cap(kept) > 0 {
		r.rooms = append(r.rooms, kept)
		s.visits = nil
	}
}

// room gives an empty list of visits, one given back where there is one.
func (r *run) room() []visit {
	if n := len(r.rooms); n > 0 {
		list := r.rooms[n-1]
		r.rooms = r.rooms[:n-1]
		return list[:0]
	}
	return make([]visit, 0, 8)
}

// zeros gives a list of so many zero values, in the memory of an old one where it is
// large enough.
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
