package season

// follow is step 2: followers, the longest lag first, eat what was kept for them on
// strips, and in a stay what they want.
func (r *run) follow() {
	for i := range r.rotations {
		rot := &r.rotations[i]
		for m := len(rot.Members) - 1; m >= 0 && rot.Members[m].Lag > 0; m-- {
			if rot.Members[m-1].Lag != rot.Members[m].Lag { // the leader's is 0
				r.come(rot, rot.Members[m].Lag)
			}
		}
	}
}

// come lets the members of one lag eat on all ground where they are due today.
func (r *run) come(rot *rotation, lag int) {
	for _, at := range rot.Lands {
		l := &r.lands[at]
		if i := r.day - l.stay.From - lag; l.stay.Days > 0 && i >= 0 && i < l.stay.Days {
			r.graze(rot, l, lag, i)
		}
	}
	r.visit(rot, lag)
}

// visit lets the members of one lag eat what was kept for them on strips, no more than
// they want.
func (r *run) visit(rot *rotation, lag int) {
	due := false
	for _, at := range rot.Lands {
		due = due || r.lands[at].visits[r.day] > 0
	}
	if !due {
		return
	}
	for m := range rot.Members {
		rot.asked[m] = 1
		if rot.Members[m].Lag == lag && (r.day <= rot.given || r.Log != nil) {
			rot.asked[m] = r.part(rot, m)
		}
	}
	for _, at := range rot.Lands {
		l := &r.lands[at]
		if l.visits[r.day] == 0 {
			continue
		}
		first, last := len(l.stretches), -1
		for l.due < len(l.stretches) && len(l.stretches[l.due].visits) == 0 {
			l.due++
		}
		for i := l.due; i < len(l.stretches) && l.visits[r.day] > 0; i++ {
			if s := &l.stretches[i]; len(s.visits) > 0 && r.serve(rot, l, s, lag) {
				first, last = min(first, i), i
			}
		}
		r.join(l, first, last)
	}
}

// part gives which part of what was kept for a member today it wants: all, but where it
// was kept before the first day and there are fewer head since, or a log has it in several
// places.
func (r *run) part(rot *rotation, member int) float64 {
	kept := 0.0
	for _, at := range rot.Lands {
		l := &r.lands[at]
		if l.visits[r.day] == 0 {
			continue
		}
		for i := range l.stretches {
			s := &l.stretches[i]
			for _, v := range s.visits {
				if int(v.day) == r.day && int(v.member) == member {
					kept += v.eat * l.area(s)
				}
			}
		}
	}
	if want := r.unmet(rot.Members[member].Group); kept > want*(1+crumb) {
		return want / kept
	}
	return 1
}

// serve is visit on one stretch: members of one lag share what is above the leave mass
// by what they ask. It tells whether anybody was due.
func (r *run) serve(rot *rotation, l *land, s *stretch, lag int) bool {
	asked, any := 0.0, false
	for _, v := range s.visits {
		if int(v.day) == r.day && rot.Members[v.member].Lag == lag {
			asked, any = asked+rot.asked[v.member]*v.eat/v.use, true
		}
	}
	if !any {
		return false
	}
	share := 1.0
	if there := l.above(s); asked > there {
		share = there / asked
	}
	for _, v := range s.visits {
		if int(v.day) == r.day && rot.Members[v.member].Lag == lag && v.eat > 0 {
			r.bite(l, s, rot.Members[v.member].Group, share*rot.asked[v.member]*v.eat, v.use)
		}
	}
	r.drop(l, s, func(v visit) bool { return int(v.day) == r.day && rot.Members[v.member].Lag == lag })
	r.left(l, s)
	return true
}
