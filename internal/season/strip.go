package season

import "math"

// keeping is what a strip keeps for a member on a day, all of it.
type keeping struct {
	member, day int
	kg          float64
}

// strip opens ground of a run from its start, for what is left of a want, and gives how
// much of it was found.
func (r *run) strip(rot *rotation, g ground, part int, left float64, below bool) float64 {
	l := &r.lands[rot.Lands[g.at]]
	from, end := l.stretches[g.first].from, l.stretches[g.last].to
	days, kept, to := r.sizeOfStrip(rot, l, g, left)
	behind := g.last + 1
	if to < end {
		behind = r.split(l, to)
	}
	if rot.front != g.at || math.Abs(rot.at-from) > dust {
		l.passes++
	}
	rot.front, rot.at = g.at, to
	if to >= l.Length-dust {
		rot.front = -1
	}
	if days > 1 {
		rot.busy = max(rot.busy, r.day+days-1)
	}
	found := r.open(rot, l, g.first, behind, days, left, kept, Move{
		Day: r.day, Part: part, Rotation: rot.index, Land: l.index, Pass: l.passes, From: from, To: to,
		Stay: days, Planned: days, Below: below, Use: rot.use(days), Ready: -1,
	})
	if rot.longestLag() == 0 && days == 1 {
		r.join(l, g.first, behind-1)
	}
	return found
}

// sizeOfStrip gives the days of a strip, what is kept for all of them, and where it ends.
func (r *run) sizeOfStrip(rot *rotation, l *land, g ground, left float64) (days int, kept, to float64) {
	if g.told != nil {
		return r.daysTold(rot, l, g, left)
	}
	from, end := l.stretches[g.first].from, l.stretches[g.last].to
	days, kept, to = r.daysOfStrip(rot, l, g, left)
	if to-from < rot.ShortestStrip-digits {
		to = min(from+rot.ShortestStrip, end)
	}
	if end-to < rot.ShortestStrip-digits {
		to = end
	}
	return days, kept, to
}

// daysOfStrip gives the fewest whole days that make a strip as long as the shortest, if
// the run holds them, what is kept for all of them, and where the strip ends.
func (r *run) daysOfStrip(rot *rotation, l *land, g ground, left float64) (days int, kept, to float64) {
	holds := 0.0
	for i := g.first; i <= g.last; i++ {
		holds += l.area(&l.stretches[i]) * l.above(&l.stretches[i])
	}
	days, kept, to = 1, left, l.reach(g, left/rot.use(1))
	from := l.stretches[g.first].from
	for rot.Moves == 1 && to-from < rot.ShortestStrip-digits && days < rot.LongestStay && r.day+days < r.Days {
		more := kept + r.want(rot, r.day+days)
		if more/rot.use(days+1) > holds*(1+same) {
			break
		}
		days, kept = days+1, more
		to = l.reach(g, kept/rot.use(days))
	}
	return days, kept, to
}

// reach gives the place up to which a run must be opened for so much to disappear, or its
// end.
func (l *land) reach(g ground, gone float64) float64 {
	for i := g.first; i <= g.last; i++ {
		s := &l.stretches[i]
		perMetre := l.Width * l.above(s)
		if holds := perMetre * s.length(); gone > holds {
			gone -= holds
			continue
		}
		return s.from + gone/perMetre
	}
	return l.stretches[g.last].to
}

// open keeps the ground of a strip for all members and days, in proportion to what stands
// above the leave mass; leaders eat their first day now. It gives how much of what is
// left today was found.
func (r *run) open(rot *rotation, l *land, first, behind, days int, left, kept float64, m Move) float64 {
	r.masses = r.masses[:0]
	holds, mass := 0.0, 0.0
	for i := first; i < behind; i++ {
		s := &l.stretches[i]
		above := l.above(s)
		r.masses = append(r.masses, above)
		holds += above * l.area(s)
		mass += l.mass(s) * s.length()
	}
	found := 1.0
	if kept > 0 {
		found = min(1, holds*m.Use/kept)
	}
	m.Before, m.Want = mass/(m.To-m.From), kept*found
	move := r.opened(m)
	r.keepings(rot, days, left, found)
	for i := first; i < behind; i++ {
		s := &l.stretches[i]
		l.occupy(s, move, r.day)
		part := 0.0 // per area
		if holds > 0 {
			part = r.masses[i-first] / holds
		}
		for _, k := range r.keeps {
			if k.day == r.day && rot.Members[k.member].Lag == 0 {
				r.bite(l, s, rot.Members[k.member].Group, k.kg*part, m.Use)
			} else {
				r.keep(l, i, visit{int32(k.member), int32(k.day), k.kg * part, m.Use})
			}
		}
		r.left(l, s)
	}
	return left * found
}

// keepings lists what a strip keeps: for its first day a part of what is wanted, for the
// others all. A later day of the leaders is theirs although they want nothing.
func (r *run) keepings(rot *rotation, days int, left, found float64) {
	r.keeps = r.keeps[:0]
	for i := range days {
		part := found
		if total := r.want(rot, r.day+i); i == 0 {
			part *= left / total
		}
		for m, member := range rot.Members {
			if kg := part * rot.wants[m]; kg > 0 || (member.Lag == 0 && i > 0) {
				r.keeps = append(r.keeps, keeping{m, r.day + i + member.Lag, kg})
			}
		}
	}
}

// opened writes a move down and gives its number.
func (r *run) opened(m Move) int {
	r.opens++
	if !r.brief {
		r.result.Moves = append(r.result.Moves, m)
	}
	return r.opens - 1
}
