package farm

import (
	"math"
	"slices"

	"example.org/soum/internal/season"
	"example.org/soum/units"
)

// remarkStays tells of each rotation when it turns out, where it grazes below the aim,
// and which paddocks want a cross wire.
func (s *setting) remarkStays(r *season.Result) {
	for i := range s.input.Rotations {
		first, below, all := -1, 0, 0
		at := 0 // the first move below the aim
		for k := range r.Moves {
			m := &r.Moves[k]
			if m.Rotation != i {
				continue
			}
			if all++; first < 0 {
				first = m.Day
			}
			if m.Below {
				if below++; below == 1 {
					at = m.Day
				}
			}
		}
		leader := s.farm.Rotations[i].Groups[0].Group
		if first > s.first && !s.turnedOut(i) && s.input.Groups[s.input.Rotations[i].Members[0].Group].Demand[s.first] > 0 {
			s.notes.add("turn-out", []value{word("group", leader), day("date", s.date(first))},
				"%s turn out on %s, the first day on which grass in their rotation is high enough.", said(leader), day("", s.date(first)))
		}
		if below > 0 {
			s.notes.add("below-aim", []value{word("group", leader), whole("moves", below), whole("of", all), day("first", s.date(at))},
				"%s of %s moves of %s are on grass below the turn-in height, first on %s: nothing that had rested stood at it.", whole("", below), whole("", all), said(leader), day("", s.date(at)))
		}
	}
	s.remarkPaddocks(r)
}

// turnedOut tells whether ground of a rotation was bitten this season before the plan.
func (s *setting) turnedOut(rotation int) bool {
	return slices.ContainsFunc(s.input.Rotations[rotation].Lands, func(at int) bool {
		return slices.ContainsFunc(s.input.Lands[at].Stretches, func(piece season.Stretch) bool { return piece.Bitten >= s.input.From })
	})
}

// wires is what is told of a paddock: how often it held more than a stay, and into how
// many it would be cut.
type wires struct{ times, parts, longest int }

// remarkPaddocks tells of paddocks that are left with a day's grass or more, or stayed in
// beyond the longest stay, to cut them.
func (s *setting) remarkPaddocks(r *season.Result) {
	told := make([]wires, len(s.lands))
	for k := range r.Moves {
		m := &r.Moves[k]
		l, rot := &s.input.Lands[m.Land], &s.input.Rotations[m.Rotation]
		if !l.Paddock || m.Want <= 0 {
			continue
		}
		spare := max(0, m.After-l.Leave) * l.Width * l.Length * rot.Use[0]
		if parts := int(math.Ceil(m.Holds / float64(rot.LongestStay))); parts > 1 && (m.Stay > rot.LongestStay || spare*float64(m.Stay) >= m.Want) {
			w := &told[m.Land]
			w.times, w.parts, w.longest = w.times+1, max(w.parts, parts), max(w.longest, m.Stay)
		}
	}
	for i, w := range told {
		if w.times > 0 {
			id := s.farm.Land[i].ID
			s.notes.add("cut-paddock", []value{word("land", id), whole("times", w.times), whole("parts", w.parts), whole("longest", w.longest)},
				"%s holds more than a stay should take (%s, up to %s): cut it in %s with a cross wire, so that nothing is bitten twice in a stay.", said(id), said(often(w.times)), said(units.Days(w.longest).In(units.Metric)), whole("", w.parts))
		}
	}
}
