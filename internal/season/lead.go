package season

import "math"

// lead is step 3 for a rotation: where its leaders graze today.
func (r *run) lead(rot *rotation) {
	if r.day < r.From {
		return // the animals are not here yet
	}
	if r.tells(rot, r.day) {
		r.leadAsTold(rot)
		return
	}
	r.earlyMark(rot)
	share, l := 1.0, r.stayOf(rot) // share: the part of the day for which ground is still to be found
	switch {
	case l != nil && r.day < l.stay.From+l.stay.Days:
		if r.day <= rot.busy { // a document may have them on a strip too, and they are in one place
			r.lapse(rot, r.day)
		}
		r.graze(rot, l, 0, r.day-l.stay.From)
		if share = r.lacking(rot); share > 0 { // the stay is off from today on
			l.stay.Days = r.day - l.stay.From
		}
	case r.day <= rot.busy:
		r.visit(rot, 0)
		if share = r.lacking(rot); share > 0 {
			r.lapse(rot, r.day)
		}
	case l != nil && !r.plenty(rot) && r.stayOn(rot, l):
		share = 0
	}
	r.vacate(rot)
	if r.want(rot, r.day) <= 0 {
		return
	}
	for part := 0; share > 0 && part < rot.Moves; part++ {
		if r.move(rot, part, share) {
			return
		}
	}
}

// lacking gives which part of their day the leaders have not found.
func (r *run) lacking(rot *rotation) float64 {
	want, short := 0.0, 0.0
	for _, m := range rot.Members {
		if m.Lag == 0 {
			want += r.Groups[m.Group].Demand[r.day]
			short += r.unmet(m.Group)
		}
	}
	if short <= crumb*want {
		return 0
	}
	return short / want
}

// lapse drops what the strip on which the leaders stand keeps for its days from one on.
func (r *run) lapse(rot *rotation, from int) {
	rot.busy = from - 1
	for _, at := range rot.Lands {
		l := &r.lands[at]
		for i := range l.stretches {
			if s := &l.stretches[i]; len(s.visits) > 0 {
				r.drop(l, s, func(v visit) bool { return int(v.day) >= from+rot.Members[v.member].Lag })
				r.left(l, s)
			}
		}
	}
}

// What the early mark is made of; both are ours.
const (
	mostAhead = 60  // days
	halfAim   = 0.5 // of the aim: first turn in early spring at 4 to 5 in where 8 to 10 is usual [CORNELL-INTENSIVE]
)

// earlyMark sets the mark from which ground that nobody has bitten this season is grazed:
// early enough that what is in front of the leaders does not outgrow them.
func (r *run) earlyMark(rot *rotation) {
	if !r.waitsForEarly(rot) {
		return
	}
	spare := 0.0
	for _, at := range rot.Lands {
		l := &r.lands[at]
		for i := range l.stretches {
			s := &l.stretches[i]
			spare += l.area(s) * l.above(s)
		}
	}
	ahead := min(mostAhead, r.Days-1-r.day)
	if want := r.want(rot, r.day); want > 0 {
		ahead = int(min(float64(ahead), math.Floor(spare*rot.use(1)/want*(1+same))))
	}
	for _, at := range rot.Lands {
		l := &r.lands[at]
		outgrown := l.MowAbove
		if outgrown == 0 {
			outgrown = (l.Aim + l.Ceiling) / 2
		}
		sum := 0.0
		for _, peak := range l.Peak[r.day : r.day+ahead] {
			sum += 4 * peak / l.Ceiling
		}
		l.early = max(l.least, min(l.lowest, (l.Ceiling/outgrown-1)*math.Exp(sum)))
	}
}

// waitsForEarly tells whether the early mark can matter today: ground that nobody has
// bitten this season stands below the least mass, but not below any early mark.
func (r *run) waitsForEarly(rot *rotation) bool {
	if rot.settled {
		return false
	}
	rot.settled = true
	waits := false
	for _, at := range rot.Lands {
		l := &r.lands[at]
		l.early = l.least
		for i := range l.stretches {
			if s := &l.stretches[i]; s.gap > l.least && r.fresh(s) {
				rot.settled = false
				waits = waits || s.gap <= l.lowest*(1+same)
			}
		}
	}
	return waits
}

// ground is a run: ready neighbours of a lane, or a whole paddock.
type ground struct {
	at          int // index into the rotation's lands
	first, last int // stretches
	bitten      int32
	told        *Given // it is given by a log
}

// row gives the ready neighbours of a lane from a stretch on, and whether they are long
// enough for a run.
func (r *run) row(rot *rotation, at, first int, ripe bool) (g ground, long bool) {
	l := &r.lands[rot.Lands[at]]
	g = ground{at: at, first: first, last: first - 1, bitten: math.MaxInt32}
	for i := first; i < len(l.stretches) && r.ready(rot, l, &l.stretches[i], ripe); i++ {
		g.last, g.bitten = i, min(g.bitten, l.stretches[i].bitten)
	}
	if g.last < first {
		return g, false
	}
	return g, l.stretches[g.last].to-l.stretches[first].from >= min(rot.ShortestStrip, l.Length)-digits
}

// runs shows every run of a rotation, in the order of its land. Of a paddock the part of
// a day that is to be found must be there.
func (r *run) runs(rot *rotation, ripe bool, first float64, show func(ground)) {
	for at, land := range rot.Lands {
		l := &r.lands[land]
		for i := 0; i < len(l.stretches); i++ {
			g, long := r.row(rot, at, i, ripe)
			switch {
			case l.Paddock && (g.last < len(l.stretches)-1 || i > 0):
				i = len(l.stretches)
				continue
			case l.Paddock:
				long = r.holds(rot, l, Stay{From: r.day, Planned: 1, Days: 1, First: first}, 0)
			}
			if long {
				show(g)
			}
			i = max(i, g.last)
		}
	}
}

// best gives the run whose oldest last bite is the earliest.
func (r *run) best(rot *rotation, ripe bool, first float64) (best ground, found bool) {
	best.bitten = math.MaxInt32
	r.runs(rot, ripe, first, func(g ground) {
		if !found || g.bitten < best.bitten {
			best, found = g, true
		}
	})
	return best, found
}

// plenty tells whether ripe ground elsewhere holds what is wanted for the longest stay, so
// that nobody needs to stay on.
func (r *run) plenty(rot *rotation) bool {
	holds := 0.0
	r.runs(rot, true, 1, func(g ground) {
		l := &r.lands[rot.Lands[g.at]]
		use := rot.use(1)
		if l.Paddock {
			use = rot.use(rot.LongestStay)
		}
		for i := g.first; i <= g.last; i++ {
			holds += l.area(&l.stretches[i]) * l.above(&l.stretches[i]) * use
		}
	})
	return holds >= r.want(rot, r.day)*float64(rot.LongestStay)
}

// next gives the ground to be opened now: the front if ripe, the best ripe run, the front
// if grazeable, the best grazeable run.
func (r *run) next(rot *rotation, first float64) (g ground, below, found bool) {
	for _, ripe := range []bool{true, false} {
		if rot.front >= 0 {
			l := &r.lands[rot.Lands[rot.front]]
			if g, long := r.row(rot, rot.front, r.split(l, rot.at), ripe); long {
				return g, !ripe, true
			}
		}
		if g, found := r.best(rot, ripe, first); found {
			return g, !ripe, true
		}
	}
	return ground{}, false, false
}

// move finds ground for one of the day's moves, and tells whether it ends the day.
func (r *run) move(rot *rotation, part int, share float64) bool {
	total := r.want(rot, r.day)
	want := total * share / float64(rot.Moves)
	later := want * float64(rot.Moves-part-1)
	for left := want; left > crumb*want; {
		first := min(1, (left+later)/total)
		g, below, found := r.next(rot, first)
		if !found {
			if rot.short[r.day] == NoReason {
				rot.short[r.day] = r.shortage(rot)
			}
			return false
		}
		if l := &r.lands[rot.Lands[g.at]]; l.Paddock {
			r.enter(rot, l, nil, part, first, below)
			return true
		}
		left -= r.strip(rot, g, part, left, below)
	}
	return false
}

// shortage tells why nothing more was found.
func (r *run) shortage(rot *rotation) Reason {
	ready, stands, grows := false, false, false
	for _, at := range rot.Lands {
		l := &r.lands[at]
		all := true
		for i := range l.stretches {
			s := &l.stretches[i]
			is := r.ready(rot, l, s, false)
			all = all && is
			ready = ready || (is && !l.Paddock)
			stands = stands || s.gap <= l.least*(1+same)
		}
		ready = ready || (all && l.Paddock)
		grows = grows || l.Peak[r.day] > 0
	}
	switch {
	case ready:
		return NoStrip
	case stands:
		return NoRest
	case !grows:
		return NoGrowth
	}
	return NoGrass
}
