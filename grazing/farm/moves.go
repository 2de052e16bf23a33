package farm

import (
	"slices"

	"example.org/soum/forage"
	"example.org/soum/grazing"
	"example.org/soum/internal/season"
	"example.org/soum/units"
)

// moves gives the moves with who came to each, those of ground that was opened before
// today apart.
func moves(r *ready, result *season.Result, visits [][]Visit, met *problems) (underWay, planned []Move) {
	all, ready, before := make([]Move, len(result.Moves)), make([]units.Date, len(result.Moves)), 0
	for i := range result.Moves {
		m := &result.Moves[i]
		if m.Day < 0 {
			before++
		}
		all[i] = r.move(m, met)
		all[i].Visits = visits[i]
		if m.Ready >= 0 && m.Ready < r.input.Days {
			ready[i] = r.date(m.Ready)
			all[i].ReadyAgain = &ready[i]
		}
	}
	over := func(m Move) bool { return len(m.Visits) == 0 } // but for the leaders' choice to stay on
	return slices.DeleteFunc(all[:before:before], over), all[before:]
}

// visits gives the visits to the ground of each move, those of a group of one day each
// joined in one, in order of their first day.
func visits(r *ready, result *season.Result) [][]Visit {
	places := 0
	for i := range result.Moves {
		places += len(r.input.Rotations[result.Moves[i].Rotation].Members)
	}
	room, all := make([]Visit, places), make([][]Visit, len(result.Moves)) // a move may have room for more than came
	for i := range result.Moves {
		most := len(r.input.Rotations[result.Moves[i].Rotation].Members)
		all[i], room = room[:0:most], room[most:]
	}
	for i := range result.Visits {
		v := &result.Visits[i]
		of, group := &all[v.Move], r.farm.Groups[v.Group].ID
		at := slices.IndexFunc(*of, func(before Visit) bool { return before.Group == group })
		if at < 0 {
			at = len(*of)
			*of = append(*of, Visit{Group: group, From: r.date(v.Day)})
		}
		visit := &(*of)[at]
		visit.To = r.date(v.Day)
		visit.Eaten += units.DryMatter(v.Eaten)
	}
	return all
}

func (r *ready) move(m *season.Move, met *problems) Move {
	land, at, date := &r.farm.Land[m.Land], &r.lands[m.Land], r.date(m.Day)
	move := Move{
		Date: date, Rotation: m.Rotation, Land: land.ID, Pass: m.Pass, Stay: units.Days(m.Stay), Below: m.Below,
		Area: units.Area((m.To - m.From) * r.input.Lands[m.Land].Width), Leave: at.leaveHeight,
	}
	var err error
	if m.Day >= 0 {
		r.meetStay(m, met)
		move.Height, err = forage.HeightOf(units.Yield(m.Before), at.density)
		met.keep(err, date, 1)
		move.Density, err = grazing.StockDensity(r.weightOn(m.Day, m.Rotation), move.Area)
		met.keep(err, date, 1)
	}
	if m.After > 0 {
		move.Left, err = forage.HeightOf(units.Yield(m.After), at.density)
		met.keep(err, date, 1)
		if m.After > float64(at.leave)*(1+1e-9) { // a strip longer than their want, beyond rounding
			move.Leave = move.Left
		}
	}
	if land.isPaddock() {
		return move
	}
	move.From, move.To = units.Length(m.From), units.Length(m.To)
	move.Length = move.To - move.From
	if pace := r.farm.Fence.Pace; pace > 0 {
		move.Paces = float64(move.Length / pace)
	}
	if roll := r.farm.Fence.Roll; roll > 0 {
		move.Rolls = float64(land.Width / roll)
	}
	return move
}

// meetStay keeps a stay that print has no share eaten for.
func (r *ready) meetStay(m *season.Move, met *problems) {
	if moves := r.input.Rotations[m.Rotation].Moves; moves > 1 || m.Stay >= len(usableShares()) {
		_, err := forage.UsableShare(units.Days(m.Stay) / units.Days(moves))
		met.keep(err, r.date(m.Day), m.Stay)
	} // else whole days, all of them printed
}

// weightOn gives the live weight of a rotation's leading groups on a day: of all
// that stand there together when the ground is opened.
func (r *ready) weightOn(day, rotation int) units.LiveWeight {
	total := units.LiveWeight(0)
	for _, m := range r.input.Rotations[rotation].Members {
		if m.Lag == 0 {
			state := r.state(m.Group, day)
			total += units.LiveWeight(state.Head) * state.Weight
		}
	}
	return total
}

// surplus lists ground that outgrows the mower's mark, neighbours of one day in one.
func surplus(r *ready, result *season.Result) []Surplus {
	all := make([]Surplus, 0, len(result.Surplus))
	for _, over := range result.Surplus {
		s := Surplus{Date: r.date(over.Day), Land: r.farm.Land[over.Land].ID, From: units.Length(over.From), To: units.Length(over.To)}
		if n := len(all); n > 0 && all[n-1].Land == s.Land && all[n-1].Date == s.Date && all[n-1].To == s.From {
			all[n-1].To = s.To
			continue
		}
		all = append(all, s)
	}
	return all
}
