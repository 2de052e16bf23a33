package season

// plot is a piece of a paddock on trial.
type plot struct{ area, gap float64 }

// stayUse gives the share eaten on a day of a stay: that of the days planned, and of a
// day stayed on that of so many days.
func (rot *rotation) stayUse(stay *Stay, i int) float64 {
	if i < stay.Planned {
		return rot.use(stay.Planned)
	}
	return rot.use(i + 1)
}

// asks gives what a member wants of a day of a stay.
func (r *run) asks(rot *rotation, m Member, stay *Stay, i int) float64 {
	day := stay.From + i + m.Lag
	if day >= r.Days {
		return 0
	}
	want := r.Groups[m.Group].Demand[day]
	if i == 0 {
		want *= stay.First
	}
	return want
}

// graze lets the members of one lag eat on a paddock, on day i of a stay, what they want,
// over its pieces in proportion to what stands above the leave mass.
func (r *run) graze(rot *rotation, l *land, lag, i int) {
	use, asked, above := rot.stayUse(&l.stay, i), 0.0, 0.0
	for m, member := range rot.Members {
		if rot.asked[m] = 0; member.Lag == lag {
			rot.asked[m] = min(r.asks(rot, member, &l.stay, i), r.unmet(member.Group))
			asked += rot.asked[m]
		}
	}
	for j := range l.stretches {
		s := &l.stretches[j]
		above += l.area(s) * l.above(s)
	}
	if asked <= 0 || above <= 0 {
		return
	}
	share := min(1, above*use/asked)
	for j := range l.stretches {
		s := &l.stretches[j]
		part := share * l.above(s) / above // of what each wants, per area
		for m, want := range rot.asked {
			if want > 0 {
				r.bite(l, s, rot.Members[m].Group, part*want, use)
			}
		}
	}
	if l.stayMove >= 0 && !r.brief {
		r.result.Moves[l.stayMove].After = l.standing() / (l.Width * l.Length)
	}
}

// holds tells whether a paddock feeds everybody of a stay from today to its day last, as
// the days ahead are stepped: followers, leaders, growth. The followers of today have
// eaten.
func (r *run) holds(rot *rotation, l *land, stay Stay, last int) bool {
	r.trial = r.trial[:0]
	for i := range l.stretches {
		r.trial = append(r.trial, plot{l.area(&l.stretches[i]), l.stretches[i].gap})
	}
	for day := r.day; day <= stay.From+last+rot.longestLag() && day < r.Days; day++ {
		for m := len(rot.Members) - 1; m >= 0; {
			lag, asked := rot.Members[m].Lag, 0.0
			i := day - stay.From - lag
			for ; m >= 0 && rot.Members[m].Lag == lag; m-- {
				if i >= 0 && i <= last {
					asked += r.asks(rot, rot.Members[m], &stay, i)
				}
			}
			if asked > 0 && !(day == r.day && lag > 0) && !r.taste(l, asked/rot.stayUse(&stay, i)) {
				return false
			}
		}
		z := l.growth(day)
		for i := range r.trial {
			r.trial[i].gap *= z
		}
	}
	return true
}

// taste takes so much from the paddock on trial, and tells whether it was there.
func (r *run) taste(l *land, gone float64) bool {
	above := 0.0
	for _, p := range r.trial {
		above += p.area * max(0, l.Ceiling/(1+p.gap)-l.Leave)
	}
	if gone > above*(1+same) {
		return false
	}
	for i := range r.trial {
		p := &r.trial[i]
		mass := l.Ceiling / (1 + p.gap)
		p.gap = l.Ceiling/(mass-max(0, mass-l.Leave)*min(1, gone/above)) - 1
	}
	return true
}

// planned gives the days for which a paddock is entered today: the most of which every
// trial holds; 0 where not even one.
func (r *run) planned(rot *rotation, l *land, first float64) int {
	days := 0
	for n := 1; n <= rot.LongestStay && r.day+n <= r.Days; n++ {
		if !r.holds(rot, l, Stay{From: r.day, Planned: n, Days: n, First: first}, n-1) {
			break
		}
		days = n
	}
	return days
}

// enter lets the rotation into a paddock for the days that it feeds them; first is the
// part of the day's want that is still to be found. By a log they may be there for fewer days
// than it feeds them, and where it feeds them for none.
func (r *run) enter(rot *rotation, l *land, told *Given, part int, first float64, below bool) {
	days := max(1, r.planned(rot, l, first))
	l.passes++
	rot.front = -1
	l.stay = Stay{From: r.day, Planned: days, Days: days, First: first}
	if told != nil {
		r.stayUntil(rot, &l.stay, told.until())
	}
	mass, area := l.standing(), l.Width*l.Length
	m := Move{
		Day: r.day, Part: part, Rotation: rot.index, Land: l.index, Pass: l.passes, To: l.Length, Stay: days, Planned: days, Below: below,
		Before: mass / area, Use: rot.use(days), Holds: (mass - l.Leave*area) * rot.use(week) / r.want(rot, r.day), Ready: -1,
	}
	for i := range days {
		for _, member := range rot.Members {
			m.Want += r.asks(rot, member, &l.stay, i)
		}
	}
	l.stayMove = r.opened(m)
	for i := range l.stretches {
		l.occupy(&l.stretches[i], l.stayMove, r.day)
	}
	r.graze(rot, l, 0, 0)
}

// week is the stay whose share eaten tells what a paddock would hold as a rule.
const week = 7

// occupy gives a stretch to a move: from today its rest is broken.
func (l *land) occupy(s *stretch, move, day int) {
	s.move, s.bitten, s.ready = int32(move), int32(day), false
}

// stayOf gives the paddock on which the leaders stay today or stayed yesterday.
func (r *run) stayOf(rot *rotation) *land {
	for _, at := range rot.Lands {
		if l := &r.lands[at]; l.stay.Days > 0 && r.day-l.stay.From <= l.stay.Days {
			return l
		}
	}
	return nil
}

// stayOn lets the leaders stay a day longer where they stayed yesterday, if it feeds them
// and those still to come.
func (r *run) stayOn(rot *rotation, l *land) bool {
	i := r.day - l.stay.From
	if !r.holds(rot, l, l.stay, i) {
		return false
	}
	l.stay.Days = i + 1
	if l.stayMove >= 0 && !r.brief {
		m := &r.result.Moves[l.stayMove]
		m.Stay = i + 1
		for _, member := range rot.Members {
			m.Want += r.asks(rot, member, &l.stay, i)
		}
	}
	r.graze(rot, l, 0, i)
	return true
}

// vacate ends the stays of a rotation whose last visit is over, the leaders having had
// their morning after.
func (r *run) vacate(rot *rotation) {
	for _, at := range rot.Lands {
		if l := &r.lands[at]; l.stay.Days > 0 && r.day >= l.stay.From+l.stay.Days-1+max(1, rot.longestLag()) {
			l.stay = Stay{}
		}
	}
}
