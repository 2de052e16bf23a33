package farm

import (
	"math"

	"example.org/soum/internal/season"
	"example.org/soum/units"
)

// stayNotes tells of each rotation when it turns out, where it grazes below the aim, and
// which paddocks want a cross wire.
func stayNotes(r *ready, result *season.Result) (all []Note) {
	for i := range r.input.Rotations {
		moves, below := 0, 0
		var first, firstBelow *season.Move
		for k := range result.Moves {
			m := &result.Moves[k]
			if m.Rotation != i || m.Day < 0 {
				continue
			}
			if moves++; moves == 1 {
				first = m
			}
			if m.Below {
				if below++; below == 1 {
					firstBelow = m
				}
			}
		}
		leader := r.farm.Rotations[i].Groups[0].Group
		if moves > 0 && r.turnsOutLater(i, first.Day) {
			date := r.date(first.Day).String()
			all = append(all, note("turn-out", Values{"group": leader, "date": date},
				"%s turn out on %s, the first day on which grass in their rotation is high enough.", leader, date))
		}
		if below > 0 {
			date := r.date(firstBelow.Day).String()
			all = append(all, note("below-aim", Values{"group": leader, "moves": below, "of": moves, "first": date},
				"%d of %d moves of %s are on grass below the turn-in height, first on %s: nothing that had rested stood at it.", below, moves, leader, date))
		}
	}
	return append(all, wireNotes(r, result)...)
}

// turnsOutLater tells whether a rotation's first move of the season comes after a wait for
// grass.
func (r *ready) turnsOutLater(rotation, first int) bool {
	of := &r.input.Rotations[rotation]
	thisSeason := func(_, bitten int) bool { return bitten >= r.input.From }
	return first > r.first && !r.bitten(of, thisSeason) && r.input.Groups[of.Members[0].Group].Demand[r.first] > 0
}

// wires is what is told of a paddock: how often it held more than a stay, and into how
// many it would be cut.
type wires struct{ times, parts, longest int }

// wireNotes tells of paddocks that are left with a day's grass or more, or stayed in
// beyond the longest stay, to cut them.
func wireNotes(r *ready, result *season.Result) (all []Note) {
	told := make([]wires, len(r.lands))
	for k := range result.Moves {
		m := &result.Moves[k]
		l, rot := &r.input.Lands[m.Land], &r.input.Rotations[m.Rotation]
		if !l.Paddock || m.Want <= 0 || m.Day < 0 {
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
			id := r.farm.Land[i].ID
			all = append(all, note("cut-paddock", Values{"land": id, "times": w.times, "parts": w.parts, "longest": w.longest},
				"%s holds more than a stay should take (%s, up to %s): cut it in %d with a cross wire, so that nothing is bitten twice in a stay.", id, often(w.times), units.Days(w.longest).In(units.Metric), w.parts))
		}
	}
	return all
}
