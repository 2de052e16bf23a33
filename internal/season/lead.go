package season

import "slices"

const (
	// dust is a length, in metres, that is rounding and not ground: many times
	// the last digit of a place some kilometres down a lane.
	dust = 1e-11
	// crumb is the share of a want that is rounding and not hunger: what dust
	// is of a strip of a hand's breadth.
	crumb = 1e-10
	// same is the share of a mass by which neighbours eaten down to one residual
	// differ by rounding.
	same = 1e-12
)

// lead is step 3: the leaders' moves of a day, rotation by rotation.
func (r *run) lead() {
	if r.day < r.First {
		return
	}
	for i := range r.rotations {
		rot := &r.rotations[i]
		if rot.busy >= r.day {
			r.collect(rot, 0)
			continue
		}
		for part := 0; part < rot.Moves && rot.busy < r.day; part++ {
			r.move(i, part)
		}
	}
}

// want sums what all members will want of ground opened today, a share of it
// each in wants; visits after the season's last day are not booked.
func (r *run) want(rot *rotation, day int) float64 {
	if rot.wantsOf == day {
		return rot.total
	}
	total, wants := 0.0, rot.wants
	for m := range wants {
		member, want := &rot.Members[m], 0.0
		if on := day + member.Lag; on < r.Days {
			want = r.Groups[member.Group].Demand[on]
		}
		wants[m] = want
		total += want
	}
	rot.total, rot.wantsOf = total, day
	return total
}

// move opens ground for one of the day's moves.
func (r *run) move(index, part int) {
	rot := &r.rotations[index]
	want := r.want(rot, r.day) / float64(rot.Moves)
	left := want
	for left > crumb*want {
		if rot.front < 0 && !r.choose(rot, part, left) {
			rot.short[r.day] = r.shortage(rot)
			return
		}
		l := &r.lands[rot.Lands[rot.front]]
		if l.Paddock {
			r.enter(index, part, left)
			return
		}
		left -= r.strip(index, part, left)
	}
}

// ready tells whether a stretch may be grazed.
func (r *run) ready(rot *rotation, l *land, s *stretch) bool {
	return s.lack*l.fade <= l.ripe && s.due == 0 && r.rested(s) >= rot.ShortestRest
}

// rested gives the days since the last bite.
func (r *run) rested(s *stretch) int {
	if s.bitten == Never {
		return -Never
	}
	return r.day - int(s.bitten)
}

// head is the ground that must be ready for a land to be entered: a lane's
// first stretch, the whole of a paddock (a cut may have parted it).
func (l *land) head() []stretch {
	if l.Paddock {
		return l.stretches
	}
	return l.stretches[:1]
}

// waited gives the days that a land's head has rested, its last grazed part
// counting; -1 where it is not ready.
func (r *run) waited(rot *rotation, l *land) int {
	days := -Never
	head := l.head()
	for i := range head {
		if !r.ready(rot, l, &head[i]) {
			return -1
		}
		days = min(days, r.rested(&head[i]))
	}
	return days
}

// choose is step 3a: of the lands whose head is ready, the one rested longest;
// ties go by the order of the document.
func (r *run) choose(rot *rotation, part int, left float64) bool {
	best, longest := -1, -1
	for i, at := range rot.Lands {
		l := &r.lands[at]
		waited := r.waited(rot, l)
		if waited <= longest || (l.Paddock && r.stay(rot, l, part, left) == 0) {
			continue
		}
		best, longest = i, waited
	}
	if best < 0 {
		return false
	}
	rot.front, rot.at, rot.near = best, 0, 0
	r.lands[rot.Lands[best]].passes++
	return true
}

// shortage tells why no land was ready.
func (r *run) shortage(rot *rotation) Reason {
	growing := false
	for _, at := range rot.Lands {
		l := &r.lands[at]
		if r.waiting(rot, l) {
			return NoRest
		}
		growing = growing || l.Peak[r.day] > 0
	}
	if !growing {
		return NoGrowth
	}
	return NoGrass
}

// waiting tells whether it is for rest alone that a land's head is not ready.
func (r *run) waiting(rot *rotation, l *land) bool {
	head := l.head()
	for i := range head {
		if head[i].lack*l.fade > l.ripe {
			return false
		}
	}
	return r.waited(rot, l) < 0
}

// strip is steps 3b and 3c: from the front, stretch by stretch while ready,
// until what is wanted is there. It gives what was booked, kg; nothing where
// the stretch at the front is not ready, and then the front is gone.
func (r *run) strip(index, part int, left float64) float64 {
	rot := &r.rotations[index]
	l := &r.lands[rot.Lands[rot.front]]
	use := rot.Use[0]
	first := l.find(rot.at, rot.near)
	if first == len(l.stretches) || !r.ready(rot, l, &l.stretches[first]) {
		rot.front = -1
		return 0
	}
	from, shortest := rot.at, max(rot.ShortestStrip, 2*dust)
	to, last := r.reach(rot, l, first, left, use)
	for last < len(l.stretches) && l.stretches[last-1].to-to < 2*shortest && r.ready(rot, l, &l.stretches[last]) {
		last++ // as far as it matters where the ready run ends
	}
	runEnd := l.stretches[last-1].to
	if to-from < shortest {
		to = min(from+shortest, runEnd)
	}
	if runEnd-to < shortest-dust { // a whole one, but for rounding, stands alone
		to = runEnd
	}
	if to < runEnd {
		to = r.split(l, first, to)
	}
	booked := r.open(index, part, first, to, left, use)
	rot.at, rot.near = to, last
	if to >= l.Length {
		rot.front = -1
	}
	return booked
}

// find gives the index of the stretch that begins at a place, looking near an index first.
func (l *land) find(at float64, near int) int {
	i := min(near, len(l.stretches))
	for i > 0 && l.stretches[i-1].from >= at {
		i--
	}
	for i < len(l.stretches) && l.stretches[i].from < at {
		i++
	}
	return i
}

// reach gives the place where a strip from a stretch that is ready must end to hold so
// much, or the end of the ready run, and the first stretch behind that place.
func (r *run) reach(rot *rotation, l *land, first int, left, use float64) (to float64, behind int) {
	behind = first
	for ; behind < len(l.stretches) && (behind == first || r.ready(rot, l, &l.stretches[behind])); behind++ {
		s := &l.stretches[behind]
		perMetre := l.Width * use * (l.stand(s) - l.Leave)
		if capacity := perMetre * s.length(); left >= capacity {
			left -= capacity
			continue
		}
		return s.from + left/perMetre, behind + 1
	}
	return l.stretches[behind-1].to, behind
}

// open books a strip, from a stretch on, for all members: groups without lag eat
// their share now, the others on their day. Where the strip holds more than is
// wanted (it took in a remainder), the want is spread over all of it.
func (r *run) open(index, part, first int, to, left, use float64) float64 {
	rot := &r.rotations[index]
	at := rot.Lands[rot.front]
	l := &r.lands[at]
	from, capacity, mass := l.stretches[first].from, 0.0, 0.0
	last := first
	r.stands = r.stands[:0]
	for ; last < len(l.stretches) && l.stretches[last].to <= to; last++ {
		s := &l.stretches[last]
		stand := l.stand(s)
		r.stands = append(r.stands, stand)
		capacity += l.Width * use * (stand - l.Leave) * s.length()
		mass += stand * s.length()
	}
	booked := min(left, capacity)
	share, gross := booked/capacity, 1/use
	total := r.want(rot, r.day)
	id := r.opened(Move{
		Day: r.day, Part: part, Rotation: index, Land: at, Pass: l.passes, From: from, To: to,
		Stay: 1, Before: mass / (to - from), Use: use, Want: booked, Ready: -1,
	})
	l.booked.include(first, last-1)
	l.fresh.include(first, last-1)
	for i := first; i < last; i++ {
		s := &l.stretches[i]
		l.occupy(s, id, r.day)
		r.room(s, len(rot.Members))
		stands := r.stands[i-first]
		part := share * use * (stands - l.Leave) / total // eaten, for each part wanted
		for m, member := range rot.Members {
			switch {
			case rot.wants[m] == 0:
			case member.Lag > 0:
				r.keep(l, s, booking{int32(m), int32(r.day + member.Lag), part * rot.wants[m], gross})
			default:
				stands -= r.eat(l, s, member.Group, part*rot.wants[m], gross)
			}
		}
		l.set(s, stands)
		r.leave(l, s, stands)
	}
	if rot.Members[len(rot.Members)-1].Lag == 0 {
		l.join(first, last-1)
	}
	return booked
}

// opened writes a move down and gives its number.
func (r *run) opened(m Move) int {
	r.opens++
	if !r.brief {
		r.result.Moves = append(r.result.Moves, m)
	}
	return r.opens - 1
}

// room gives an empty stretch places for so many bookings, out of one list of all: one
// by one they would be most of what a season allocates.
func (r *run) room(s *stretch, bookings int) {
	if int(s.room) < bookings {
		s.at, s.room = int32(len(r.places)), int32(bookings)
		r.places = slices.Grow(r.places, bookings)[:len(r.places)+bookings]
	}
}

// keep keeps grass of a stretch for a member of the rotation.
func (r *run) keep(l *land, s *stretch, b booking) {
	r.places[s.at+s.due] = b
	s.due++
	l.due[b.day]++
}

// stay gives the days that a whole paddock feeds the rotation: the most days
// whose wants it holds at the efficiency of that stay; 0 where not even one.
func (r *run) stay(rot *rotation, l *land, part int, left float64) int {
	standing := l.standing() - l.Leave*l.Width*l.Length
	sum, days := 0.0, 0
	for n := 1; r.day+n <= r.Days; n++ {
		sum += r.wantOn(rot, n-1, part, left)
		if sum > rot.use(n)*standing {
			break
		}
		days = n
	}
	return days
}

// wantOn gives what all members want of a paddock on day i of a stay that
// begins now, with so much of this move left and the day's later moves to come.
func (r *run) wantOn(rot *rotation, i, part int, left float64) float64 {
	want := r.want(rot, r.day+i)
	if i > 0 {
		return want
	}
	return left + want*float64(rot.Moves-part-1)/float64(rot.Moves)
}

// use gives the share eaten for a stay of so many days.
func (rot *rotation) use(days int) float64 {
	return rot.Use[min(days, len(rot.Use))-1]
}

// enter lets the rotation into a whole paddock for the days it feeds them, and
// books every day of every member; of parts that stand unlike (a cut may have
// parted it) each gives its share of what stands above the residual.
func (r *run) enter(index, part int, left float64) {
	rot := &r.rotations[index]
	at := rot.Lands[rot.front]
	l := &r.lands[at]
	days := r.stay(rot, l, part, left)
	use, mass := rot.use(days), l.standing()/l.Width
	gross := 1 / use
	id, spare := r.opened(Move{
		Day: r.day, Part: part, Rotation: index, Land: at, Pass: l.passes, To: l.Length,
		Stay: days, Before: mass / l.Length, Use: use, Ready: -1,
	}), l.Width*(mass-l.Leave*l.Length)
	l.booked.include(0, len(l.stretches)-1)
	l.fresh.include(0, len(l.stretches)-1)
	for j := range l.stretches {
		s := &l.stretches[j]
		l.occupy(s, id, r.day)
		r.room(s, days*len(rot.Members))
	}
	booked := 0.0
	for i := range days {
		want := r.wantOn(rot, i, part, left)
		total := r.want(rot, r.day+i)
		for m, member := range rot.Members {
			for j := range l.stretches {
				s := &l.stretches[j]
				if rot.wants[m] > 0 {
					r.keep(l, s, booking{int32(m), int32(r.day + i + member.Lag), want * rot.wants[m] / total * (l.stand(s) - l.Leave) / spare, gross})
				}
			}
		}
		booked += want
	}
	if !r.brief {
		r.result.Moves[id].Want = booked
	}
	rot.front, rot.busy = -1, r.day+days-1
	r.collect(rot, 0)
}
