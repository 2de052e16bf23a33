package season

import "slices"

// rotation is a Rotation of the running season.
type rotation struct {
	*Rotation
	index int
	front int // index into Lands: the lane of the strip opened last; -1: none
	at    float64
	// What each member will want of ground opened on day wantsOf, and all of them.
	wants   []float64
	total   float64
	wantsOf int
	asked   []float64 // of each member, of those who eat now
	given   int       // the last day of visits that were due before the first; -1: none
	settled bool      // the early mark matters no more: all ground that nobody has bitten this season stands at the least mass
	busy    int       // the last day of the strip that the leaders stand on; -1: none
	told    []*Given  // by a log: ground that is still to be opened today
	short   []Reason  // by day: why the leaders found too little
}

// run is a season under way.
type run struct {
	*Input
	brief     bool
	lands     []land
	rotations []rotation
	result    Result
	day       int
	book      *Day // of today, the last of the result
	opens     int  // moves so far
	numbers   []float64
	rooms     [][]visit // lists given back
	trial     []plot    // the pieces of a paddock on trial
	keeps     []keeping // of the strip that is opened
	masses    []float64 // above the leave mass, of its stretches
	ends      []Stretch
}

// steps is a season: its days, each in the order of the rules.
func (r *run) steps(in *Input, each func(State)) {
	r.begin(in)
	for r.day = 0; r.day < in.Days; r.day++ {
		r.result.Days = append(r.result.Days, Day{Start: r.standing()}) // before the day's cuts
		r.book = &r.result.Days[r.day]
		r.cut()
		r.follow()
		for i := range r.rotations {
			r.lead(&r.rotations[i])
		}
		r.seen()
		r.feed()
		r.grow()
		r.write()
		if each != nil {
			each(r.state())
		}
	}
	r.finish()
}

func (r *run) begin(in *Input) {
	r.Input, r.opens, r.day = in, 0, 0
	last := &r.result
	r.result = Result{Moves: last.Moves[:0], Visits: last.Visits[:0], Fed: last.Fed[:0], Days: slices.Grow(last.Days[:0], in.Days), Surplus: last.Surplus[:0], Eaten: last.Eaten[:0], Hay: last.Hay[:0], Stood: last.Stood[:0], Lands: last.Lands[:0]}
	r.numbers = zeros(r.numbers, 2*len(in.Groups)*in.Days)
	flat := r.numbers
	for range in.Groups {
		r.result.Eaten, flat = append(r.result.Eaten, flat[:in.Days:in.Days]), flat[in.Days:]
		r.result.Hay, flat = append(r.result.Hay, flat[:in.Days:in.Days]), flat[in.Days:]
	}
	if !r.brief {
		r.result.Stood = slices.Grow(r.result.Stood, in.Days*len(in.Lands))
	}
	for i := range r.lands { // of the season before
		for j := range r.lands[i].stretches {
			if s := &r.lands[i].stretches[j]; cap(s.visits) > 0 {
				r.rooms, s.visits = append(r.rooms, s.visits), nil
			}
		}
	}
	r.lands = sized(r.lands, len(in.Lands))
	for i := range r.lands {
		r.beginLand(&r.lands[i], i)
	}
	r.rotations = sized(r.rotations, len(in.Rotations))
	for i := range r.rotations {
		rot := &r.rotations[i]
		*rot = rotation{Rotation: &in.Rotations[i], index: i, front: -1, wantsOf: -1, given: -1, busy: -1,
			told: rot.told[:0], wants: zeros(rot.wants, len(in.Rotations[i].Members)), asked: zeros(rot.asked, len(in.Rotations[i].Members)), short: zeros(rot.short, in.Days)}
		r.goOn(rot)
	}
}

// goOn takes up what was under way on the morning of the first day: the visits due and
// the front. Ground to which somebody is still to come is a move of before the first day.
func (r *run) goOn(rot *rotation) {
	for _, at := range rot.Lands {
		l := &r.lands[at]
		if l.stay.Days > 0 {
			l.stayMove = r.opened(r.underWay(rot, l, l.stay.From, 0, l.Length))
			for i := range l.stretches {
				l.stretches[i].move = int32(l.stayMove)
			}
		}
		for i := range l.Stretches {
			r.goOnWith(rot, l, i)
		}
	}
	if rot.At > 0 {
		l := &r.lands[rot.Lands[rot.Front]]
		rot.front, rot.at, l.passes = rot.Front, rot.At, 1
	}
}

// goOnWith takes up the visits due on a stretch.
func (r *run) goOnWith(rot *rotation, l *land, i int) {
	s, opened := &l.stretches[i], -1
	for _, d := range l.Stretches[i].Due {
		m := slices.IndexFunc(rot.Members, func(m Member) bool { return m.Group == d.Group })
		if m < 0 || d.Day < 0 || d.Day >= len(l.visits) {
			continue
		}
		r.keep(l, i, visit{int32(m), int32(d.Day), d.Eat / l.area(s), d.Use})
		opened = min(opened, d.Day-rot.Members[m].Lag)
		rot.given = max(rot.given, d.Day)
		if rot.Members[m].Lag == 0 {
			rot.busy = max(rot.busy, d.Day)
		}
	}
	if len(s.visits) == 0 {
		return
	}
	if i > 0 && !r.brief { // a strip may lie over several stretches
		if before := l.stretches[i-1].move; before >= 0 && r.result.Moves[before].Day == opened {
			s.move, r.result.Moves[before].To = before, s.to
			return
		}
	}
	s.move = int32(r.opened(r.underWay(rot, l, opened, s.from, s.to)))
}

// underWay gives the move of ground that was opened before the first day, of which no
// more is known than what is still to come.
func (r *run) underWay(rot *rotation, l *land, opened int, from, to float64) Move {
	return Move{Day: opened, Rotation: rot.index, Land: l.index, From: from, To: to, Stay: max(1, l.stay.Days), Planned: l.stay.Planned, Ready: -1}
}

// standing gives what stood in the evening before.
func (r *run) standing() float64 {
	total := 0.0
	for i := range r.lands {
		total += r.lands[i].stands
	}
	return total
}

// cut is step 1: what stands above the stubble leaves as hay.
func (r *run) cut() {
	for _, c := range r.Cuts {
		if c.Day != r.day {
			continue
		}
		l := &r.lands[c.Land]
		for i, last := r.split(l, c.From), r.split(l, c.To); i < last; i++ {
			s := &l.stretches[i]
			over := l.mass(s) - c.Stubble
			if over <= 0 {
				continue
			}
			r.book.Cut += over * l.area(s)
			l.gone += over * l.area(s)
			l.set(s, c.Stubble)
			s.bitten, s.listed = int32(r.day), false
		}
	}
}

// feed is step 4: what a group wants and did not find is hay.
func (r *run) feed() {
	for g := range r.Groups {
		want := r.Groups[g].Demand[r.day]
		short := want - r.result.Eaten[g][r.day]
		if short <= crumb*want {
			continue
		}
		r.result.Hay[g][r.day] = short
		r.book.Hay += short
		r.result.Fed = append(r.result.Fed, Fed{Day: r.day, Group: g, Hay: short, Reason: r.reason(g)})
	}
}

// reason tells why a group is fed today: for what its leaders lacked on the day that it
// follows.
func (r *run) reason(group int) Reason {
	for i := range r.rotations {
		rot := &r.rotations[i]
		for _, m := range rot.Members {
			switch {
			case m.Group != group:
				continue
			case m.Lag > 0 && (r.day < rot.Grass+m.Lag || r.day < m.Lag):
				return LeadIn
			case rot.short[r.day-m.Lag] != NoReason:
				return rot.short[r.day-m.Lag]
			}
			return CutBefore
		}
	}
	return NoLand
}

// grow is step 5: everything grows one day on the exact logistic map.
func (r *run) grow() {
	for i := range r.lands {
		l := &r.lands[i]
		l.stands -= l.gone
		l.gone = 0
		z := l.growth(r.day)
		if z == 1 {
			continue
		}
		for j := range l.stretches {
			l.stretches[j].gap *= z
		}
	}
}

// write is step 6: masses, what is ready again, what outgrew the mower.
func (r *run) write() {
	if r.brief {
		return
	}
	for i := range r.lands {
		l := &r.lands[i]
		if l.Peak[r.day] > 0 {
			stands := l.standing()
			r.book.Grown += stands - l.stands
			l.stands = stands
		}
		r.result.Stood = append(r.result.Stood, l.stands)
		r.book.End += l.stands
		r.look(l)
	}
}

// look tells the moves of a land which of its stretches are grazeable again tomorrow, and
// lists those that have outgrown the mower's mark.
func (r *run) look(l *land) {
	for i := range l.stretches {
		s := &l.stretches[i]
		if (s.ready || s.move < 0) && l.mower == 0 || len(s.visits) > 0 || l.stay.Days > 0 {
			continue
		}
		if s.move >= 0 && !s.ready && s.gap <= l.least*(1+same) {
			m := &r.result.Moves[s.move]
			if r.rested(s)+1 >= r.rotations[m.Rotation].ShortestRest {
				s.ready, m.Ready = true, r.day+1
			}
		}
		if s.gap < l.mower && !s.listed {
			s.listed = true
			r.result.Surplus = append(r.result.Surplus, Surplus{Day: r.day, Land: l.index, From: s.from, To: s.to})
		}
	}
}

// state gives what stands this evening.
func (r *run) state() State {
	st := State{Day: r.day}
	for i := range r.lands {
		l := &r.lands[i]
		st.Lands = append(st.Lands, r.pieces(l, nil))
		st.Stays = append(st.Stays, l.stay)
	}
	for i := range r.rotations {
		rot := &r.rotations[i]
		at := 0.0
		if rot.front >= 0 {
			at = rot.at
		}
		st.Fronts, st.At = append(st.Fronts, max(0, rot.front)), append(st.At, at)
	}
	return st
}

// pieces puts what stands on a land to a list.
func (r *run) pieces(l *land, all []Stretch) []Stretch {
	for i := range l.stretches {
		s := &l.stretches[i]
		piece := Stretch{To: s.to, Mass: l.mass(s), Bitten: int(s.bitten)}
		for _, v := range s.visits {
			piece.Due = append(piece.Due, Due{r.groupOf(l, v), int(v.day), v.eat * l.area(s), v.use})
		}
		all = append(all, piece)
	}
	return all
}

func (r *run) groupOf(l *land, v visit) int {
	for i := range r.rotations {
		if slices.Contains(r.rotations[i].Lands, l.index) {
			return r.rotations[i].Members[v.member].Group
		}
	}
	return -1
}

// finish hands over the end state and closes the moves.
func (r *run) finish() {
	if r.brief {
		return
	}
	r.ends = r.ends[:0]
	for i := range r.lands {
		l, from := &r.lands[i], len(r.ends)
		r.ends = r.pieces(l, r.ends)
		r.result.Lands = append(r.result.Lands, r.ends[from:len(r.ends):len(r.ends)])
		for j := range l.stretches {
			if s := &l.stretches[j]; s.move >= 0 && !s.ready {
				r.result.Moves[s.move].Ready = -1 // a piece of it is not ready yet
			}
		}
	}
	for i := range r.result.Moves {
		if m := &r.result.Moves[i]; m.leftArea > 0 {
			m.After = m.left / m.leftArea
		}
	}
}

// want sums what all members will want of ground opened on a day, each in wants; visits
// after the season's last day are left out.
func (r *run) want(rot *rotation, day int) float64 {
	if rot.wantsOf == day {
		return rot.total
	}
	rot.total, rot.wantsOf = 0, day
	for m, member := range rot.Members {
		rot.wants[m] = 0
		if on := day + member.Lag; on < r.Days {
			rot.wants[m] = r.Groups[member.Group].Demand[on]
		}
		rot.total += rot.wants[m]
	}
	return rot.total
}

// unmet gives what a group wants today and has not eaten yet.
func (r *run) unmet(group int) float64 {
	return max(0, r.Groups[group].Demand[r.day]-r.result.Eaten[group][r.day])
}
