package season

// dust is a length, in metres, that is rounding and not ground.
const dust = 1e-9

// lead is step 3: the leaders' moves of a day, rotation by rotation.
func (r *run) lead() {
	for i := range r.rotations {
		rot := &r.rotations[i]
		rot.note(r.day, NoReason)
		if rot.busy >= r.day {
			for m := range rot.Members {
				if rot.Members[m].Lag == 0 {
					r.collect(rot, m)
				}
			}
			continue
		}
		for part := 0; part < rot.Moves && rot.busy < r.day; part++ {
			r.move(i, part)
		}
	}
}

// note keeps why the leader of a day found too little, for those who follow.
func (rot *rotation) note(day int, why Reason) {
	for len(rot.short) <= day {
		rot.short = append(rot.short, NoReason)
	}
	rot.short[day] = why
}

func (rot *rotation) shortages(day int) Reason { return rot.short[day] }

// want sums what all members will want of ground opened today, a share of it
// each in wants; visits after the season's last day are not booked.
func (r *run) want(rot *rotation, day int) float64 {
	total := 0.0
	for m, member := range rot.Members {
		rot.wants[m] = 0
		if on := day + member.Lag; on < r.Days {
			rot.wants[m] = r.Groups[member.Group].Demand[on]
		}
		total += rot.wants[m]
	}
	return total
}

// move opens ground for one of the day's moves.
func (r *run) move(index, part int) {
	rot := &r.rotations[index]
	want := r.want(rot, r.day) / float64(rot.Moves)
	left := want
	for left > 1e-12*want {
		if rot.front < 0 && !r.choose(rot, part, left) {
			rot.note(r.day, r.shortage(rot))
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
	return s.mass >= l.TurnIn && len(s.due) == 0 && r.rested(s) >= rot.ShortestRest
}

// rested gives the days since the last bite.
func (r *run) rested(s *stretch) int {
	if s.bitten == Never {
		return -Never
	}
	return r.day - s.bitten
}

// choose is step 3a: of the lands whose first stretch is ready, the one rested
// longest; ties go by the order of the document.
func (r *run) choose(rot *rotation, part int, left float64) bool {
	best, longest := -1, -1
	for i, at := range rot.Lands {
		l := &r.lands[at]
		s := &l.stretches[0]
		if !r.ready(rot, l, s) || r.rested(s) <= longest {
			continue
		}
		if l.Paddock && r.stay(rot, l, part, left) == 0 {
			continue
		}
		best, longest = i, r.rested(s)
	}
	if best < 0 {
		return false
	}
	rot.front, rot.at = best, 0
	r.lands[rot.Lands[best]].passes++
	return true
}

// shortage tells why no land was ready.
func (r *run) shortage(rot *rotation) Reason {
	growing := false
	for _, at := range rot.Lands {
		l := &r.lands[at]
		s := &l.stretches[0]
		if s.mass >= l.TurnIn && (len(s.due) > 0 || r.rested(s) < rot.ShortestRest) {
			return NoRest
		}
		growing = growing || l.Peak[r.day] > 0
	}
	if !growing {
		return NoGrowth
	}
	return NoGrass
}

// strip is steps 3b and 3c: from the front, stretch by stretch while ready,
// until what is wanted is there. It gives what was booked, kg; nothing where
// the stretch at the front is not ready, and then the front is gone.
func (r *run) strip(index, part int, left float64) float64 {
	rot := &r.rotations[index]
	l := &r.lands[rot.Lands[rot.front]]
	use := rot.Use[0]
	first := l.find(rot.at)
	last := first // behind the ready run
	for last < len(l.stretches) && r.ready(rot, l, &l.stretches[last]) {
		last++
	}
	if last == first {
		rot.front = -1
		return 0
	}
	from, runEnd := rot.at, l.stretches[last-1].to
	to := l.reach(first, last, left, use)
	if to-from < rot.ShortestStrip {
		to = min(from+rot.ShortestStrip, runEnd)
	}
	if runEnd-to < rot.ShortestStrip {
		to = runEnd
	}
	l.split(to)
	booked := r.open(index, part, from, to, left, use)
	rot.at = to
	if to >= l.Length {
		rot.front = -1
	}
	return booked
}

// find gives the index of the stretch that begins at a place.
func (l *land) find(at float64) int {
	for i := range l.stretches {
		if l.stretches[i].from >= at {
			return i
		}
	}
	return len(l.stretches)
}

// reach gives the place where a strip must end to hold so much, or the end of
// the ready run.
func (l *land) reach(first, last int, left, use float64) float64 {
	for i := first; i < last; i++ {
		s := &l.stretches[i]
		perMetre := l.Width * use * (s.mass - l.Leave)
		if capacity := perMetre * s.length(); left >= capacity {
			left -= capacity
			continue
		}
		to := s.from + left/perMetre
		if s.to-to < dust {
			return s.to
		}
		return to
	}
	return l.stretches[last-1].to
}

// open books a strip for all members: groups without lag eat their share now,
// the others on their day. Where the strip holds more than is wanted (it took
// in a remainder), the want is spread over all of it.
func (r *run) open(index, part int, from, to, left, use float64) float64 {
	rot := &r.rotations[index]
	at := rot.Lands[rot.front]
	l := &r.lands[at]
	first, capacity, mass := l.find(from), 0.0, 0.0
	last := first
	for ; last < len(l.stretches) && l.stretches[last].to <= to; last++ {
		s := &l.stretches[last]
		capacity += l.Width * use * (s.mass - l.Leave) * s.length()
		mass += s.mass * s.length()
	}
	booked := min(left, capacity)
	share := booked / capacity
	total := r.want(rot, r.day)
	id := len(r.result.Moves)
	r.result.Moves = append(r.result.Moves, Move{
		Day: r.day, Part: part, Rotation: index, Land: at, Pass: l.passes, From: from, To: to,
		Stay: 1, Before: mass / (to - from), Use: use, Want: booked, Ready: -1,
	})
	for i := first; i < last; i++ {
		s := &l.stretches[i]
		s.move, s.bitten = id, r.day
		eaten := share * use * (s.mass - l.Leave)
		for m, member := range rot.Members {
			if rot.wants[m] > 0 && member.Lag > 0 {
				s.due = append(s.due, booking{m, r.day + member.Lag, eaten * rot.wants[m] / total, use})
			}
		}
		for m, member := range rot.Members {
			if rot.wants[m] > 0 && member.Lag == 0 {
				r.eat(l, s, member.Group, eaten*rot.wants[m]/total, use)
			}
		}
	}
	return booked
}

// stay gives the days that a whole paddock feeds the rotation: the most days
// whose wants it holds at the efficiency of that stay; 0 where not even one.
func (r *run) stay(rot *rotation, l *land, part int, left float64) int {
	s := &l.stretches[0]
	standing := l.Width * l.Length * (s.mass - l.Leave)
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
// books every day of every member.
func (r *run) enter(index, part int, left float64) {
	rot := &r.rotations[index]
	at := rot.Lands[rot.front]
	l := &r.lands[at]
	s := &l.stretches[0]
	days := r.stay(rot, l, part, left)
	use, area := rot.use(days), l.Width*l.Length
	id := len(r.result.Moves)
	s.move, s.bitten = id, r.day
	booked := 0.0
	for i := range days {
		want := r.wantOn(rot, i, part, left)
		total := r.want(rot, r.day+i)
		for m, member := range rot.Members {
			if rot.wants[m] > 0 {
				s.due = append(s.due, booking{m, r.day + i + member.Lag, want * rot.wants[m] / total / area, use})
			}
		}
		booked += want
	}
	r.result.Moves = append(r.result.Moves, Move{
		Day: r.day, Part: part, Rotation: index, Land: at, Pass: l.passes, To: l.Length,
		Stay: days, Before: s.mass, Use: use, Want: booked, Ready: -1,
	})
	rot.front, rot.busy = -1, r.day+days-1
	for m := range rot.Members {
		if rot.Members[m].Lag == 0 {
			r.collect(rot, m)
		}
	}
}
