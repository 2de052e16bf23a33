package farm

import (
	"example.org/soum/internal/english"
	"math"

	"example.org/soum/internal/season"
	"example.org/soum/units"
)

// stayNotes tells of each rotation where it grazes below the aim, and which paddocks want a
// cross wire.
func stayNotes(r *ready, result *season.Result) (all []Note) {
	for i := range r.input.Rotations {
		moves, below := 0, 0
		var firstBelow *season.Move
		for k := range result.Moves {
			m := &result.Moves[k]
			if m.Rotation != i || m.Day < 0 {
				continue
			}
			moves++
			if m.Below {
				if below++; below == 1 {
					firstBelow = m
				}
			}
		}
		leader := r.farm.Rotations[i].Groups[0].Group
		if below > 0 {
			date := r.date(firstBelow.Day).String()
			all = append(all, note("below-aim", Values{"group": leader, "moves": below, "of": moves, "first": date},
				"%d of %d moves of %s are on grass below the turn-in height, first on %s: nothing that had rested stood at it.", below, moves, leader, date))
		}
	}
	return append(all, wireNotes(r, result)...)
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
				"%s holds more than a stay should take (%s, up to %s): cut it in %d with a cross wire, so that nothing is bitten twice in a stay.", id, english.Often(w.times), units.Days(w.longest).In(units.Metric), w.parts))
		}
	}
	return all
}
