package season_test

import (
	"cmp"
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/internal/season"
)

// given tells the leaders' ground of the days before one, as a log of a season would: where
// each move was and on which days those ate there first and last who came first.
func given(in *season.Input, r *season.Result, before int) (all []season.Given) {
	first, last, hungry := map[int]int{}, map[int]int{}, map[int]bool{}
	for _, v := range r.Visits {
		rotation := r.Moves[v.Move].Rotation
		lag := lagOf(in, rotation, v.Group)
		opened := v.Day - lag // what a stay of several days has for this one
		if in.First(&in.Rotations[rotation], opened) != lag {
			continue
		}
		if was, seen := first[v.Move]; v.Day < before && (!seen || opened < was) {
			first[v.Move] = opened
		}
		last[v.Move] = max(last[v.Move], opened)
		hungry[v.Move] = v.Day > r.Moves[v.Move].Day && v.Eaten < in.Groups[v.Group].Demand[v.Day]*(1-1e-6)
	}
	for i, m := range r.Moves {
		from, led := first[i]
		if !led {
			continue
		}
		there := last[i] == before-1 && m.Day+m.Stay > before && !hungry[i] // a cut to come is not in a log
		all = append(all, season.Given{
			Rotation: m.Rotation, Land: m.Land, Day: from, Days: last[i] - from + 1, Open: there || last[i] >= before, From: m.From, To: m.To,
		})
	}
	slices.SortStableFunc(all, func(a, b season.Given) int { return cmp.Compare(a.Day, b.Day) })
	return all
}

// idle tells whether the leaders of a rotation want nothing on some day.
func idle(in *season.Input) bool {
	for i := range in.Rotations {
		for day := range in.Days {
			if in.First(&in.Rotations[i], day) != 0 {
				return true
			}
		}
	}
	return false
}

func lagOf(in *season.Input, rotation, group int) int {
	for _, m := range in.Rotations[rotation].Members {
		if m.Group == group {
			return m.Lag
		}
	}
	return -1
}

// TestToldIsChosen: a season whose leaders are given the ground that they chose is the same
// season: what stands, what is due, stays and fronts.
func TestToldIsChosen(t *testing.T) {
	compared, moves := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		in := seasons().Draw(t, "season")
		if idle(in) {
			in.Cuts = nil // where a cut breaks off a stay of leaders who want nothing, nobody's days tell of it
		}
		day := rapid.IntRange(0, in.Days-1).Draw(t, "day")
		var want, got season.State
		keep := func(to *season.State) func(season.State) {
			return func(s season.State) {
				if s.Day == day {
					*to = s
				}
			}
		}
		r := season.Watch(in, keep(&want))
		ground := given(in, r, day+1)
		told := *in
		told.Log = &season.Log{Days: day + 1, Given: ground}
		season.Watch(&told, keep(&got))
		sameState(t, want, got)
		compared++
		moves += len(ground)
	})
	assert.GreaterOrEqual(t, compared, 100)
	assert.Greater(t, moves, 500)
}

// TestToldFromADocument: the same holds for a season that is begun again in the middle, with
// what is due, stays and fronts, and told from there on.
func TestToldFromADocument(t *testing.T) {
	compared, underWay := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		in := seasons().Draw(t, "season")
		if in.Days < 3 {
			return
		}
		if idle(in) {
			in.Cuts = nil
		}
		stop := rapid.IntRange(0, in.Days-2).Draw(t, "stopped")
		day := rapid.IntRange(stop+1, in.Days-1).Draw(t, "day")
		var states []season.State
		r := season.Watch(in, func(s season.State) { states = append(states, s) })
		over := stop + 1
		rest := anew(in, &states[stop])
		rest.Log = &season.Log{Days: day - stop}
		for _, g := range given(in, r, day+1) {
			if g.Day -= over; g.Day+g.Days > 0 || g.Open {
				rest.Log.Given = append(rest.Log.Given, g)
			}
		}
		var got season.State
		season.Watch(rest, func(s season.State) {
			if s.Day == day-over {
				got = s
			}
		})
		compared++
		for i := range got.Lands {
			if got.Stays[i].Days > 0 {
				got.Stays[i].From += over
				underWay++
			} else {
				got.Stays[i] = season.Stay{}
			}
			for j := range got.Lands[i] {
				p := &got.Lands[i][j]
				if p.Bitten != season.Never {
					p.Bitten += over
				}
				for k := range p.Due {
					p.Due[k].Day += over
				}
				underWay += len(p.Due)
			}
		}
		sameState(t, states[day], got)
	})
	assert.Greater(t, compared, 50)
	assert.Greater(t, underWay, 20)
}

func sameState(t require.TestingT, want, got season.State) {
	const alike = 1e-9
	for i, w := range want.Stays {
		g := got.Stays[i]
		require.InDelta(t, w.First, g.First, alike)
		g.First = w.First
		require.Equal(t, w, g, "land %d", i)
	}
	require.Equal(t, want.Fronts, got.Fronts)
	require.InDeltaSlice(t, want.At, got.At, alike)
	for i := range want.Lands {
		pieces := parted(got.Lands[i], want.Lands[i])
		for j, w := range parted(want.Lands[i], got.Lands[i]) {
			g := pieces[j]
			require.InDelta(t, w.To, g.To, alike)
			require.InEpsilon(t, w.Mass, g.Mass, alike, "land %d, stretch %d", i, j)
			require.Equal(t, w.Bitten, g.Bitten)
			require.Len(t, g.Due, len(w.Due))
			for k, due := range w.Due {
				require.Equal(t, [2]int{due.Group, due.Day}, [2]int{g.Due[k].Group, g.Due[k].Day})
				require.InDelta(t, due.Eat, g.Due[k].Eat, alike*math.Max(1, due.Eat))
				require.InDelta(t, due.Use, g.Due[k].Use, alike)
			}
		}
	}
}

// parted parts the stretches of a land at the borders of others: a border between ground
// that is alike may stand in the one season and not in the other.
func parted(pieces, others []season.Stretch) (all []season.Stretch) {
	from := 0.0
	for _, p := range pieces {
		length := p.To - from
		for _, to := range append(bordersBetween(others, from, p.To), p.To) {
			part := season.Stretch{To: to, Mass: p.Mass, Bitten: p.Bitten}
			for _, d := range p.Due {
				d.Eat *= (to - from) / length
				part.Due = append(part.Due, d)
			}
			all, from = append(all, part), to
		}
	}
	return all
}

func bordersBetween(pieces []season.Stretch, from, to float64) (all []float64) {
	const apart = 1e-6
	for _, p := range pieces {
		if p.To > from+apart && p.To < to-apart {
			all = append(all, p.To)
		}
	}
	return all
}

// TestToldAnything: whatever a log tells, of ground that is not ready, under others or twice at
// once, nobody eats more than he wants or below the leave mass, the books of every day close,
// and what stands in an evening can be written down.
func TestToldAnything(t *testing.T) {
	grazed := 0.0
	rapid.Check(t, func(t *rapid.T) {
		in := seasons().Draw(t, "season")
		in.Cuts = nil
		in.Log = &season.Log{Days: in.Days}
		for i := range rapid.IntRange(1, 20).Draw(t, "given") {
			of := rapid.IntRange(0, len(in.Rotations)-1).Draw(t, "rotation")
			g := season.Given{
				Rotation: of, Land: rapid.SampledFrom(in.Rotations[of].Lands).Draw(t, "land"), Day: rapid.IntRange(-5, in.Days-1).Draw(t, "day"),
				Days: rapid.IntRange(1, 12).Draw(t, "days"), Open: i%7 == 0,
			}
			if g.To = in.Lands[g.Land].Length; !in.Lands[g.Land].Paddock {
				at := places(t, "place", 2, g.To)
				g.From, g.To = at[0], at[1]
			}
			in.Log.Given = append(in.Log.Given, g)
		}
		lowest := make([]float64, len(in.Lands)) // what stood at first may be below the leave mass
		for i := range in.Lands {
			lowest[i] = in.Lands[i].Leave
			for _, s := range in.Lands[i].Stretches {
				lowest[i] = min(lowest[i], s.Mass)
			}
		}
		r := season.Watch(in, func(s season.State) {
			for i, pieces := range s.Lands {
				from := 0.0
				for _, p := range pieces {
					require.Greater(t, p.To, from)
					require.GreaterOrEqual(t, p.Mass, lowest[i]*(1-1e-9))
					require.LessOrEqual(t, p.Mass, in.Lands[i].Ceiling*(1+1e-9))
					for _, d := range p.Due {
						require.GreaterOrEqual(t, d.Eat, 0.0)
						require.Greater(t, d.Day, s.Day)
					}
					from = p.To
				}
			}
			for _, stay := range s.Stays {
				if stay.Days > 0 {
					require.True(t, stay.Planned >= 1 && stay.First > 0 && stay.First <= 1, stay)
				}
			}
		})
		for day, d := range r.Days {
			require.InDelta(t, d.Start+d.Grown, d.Eaten+d.Trampled+d.End, 1e-9*(1+d.Start))
			for g := range in.Groups {
				require.LessOrEqual(t, r.Eaten[g][day], in.Groups[g].Demand[day]*(1+1e-9))
			}
			grazed += d.Eaten
		}
	})
	assert.Greater(t, grazed, 1000.0)
}

// TestLeftByALog: one figure for ground that stood apart, 0.2 on 10 m and 0.3 on 30 m of 5 m,
// a mean of 0.275, is a mean of 0.11: 0.08 and 0.12. Of ground of which nobody knows what was
// eaten 0.1 is left, and 0.05 where that stood. All of it is bitten, nobody is fed less or
// more for it, and a day in the log on which nothing is told is one on which nobody grazes.
func TestLeftByALog(t *testing.T) {
	in := handSeason(3, none, lane(5, season.Stretch{To: 10, Mass: 0.2, Bitten: -30}, season.Stretch{To: 40, Mass: 0.3, Bitten: -30}, season.Stretch{To: 60, Mass: 0.05, Bitten: -9}))
	join(in, 10, 0)
	in.Log = &season.Log{Days: 3, Left: []season.Left{{Day: 1, To: 40, Mass: 0.11}, {Day: 2, From: 10, To: 60, Bare: true}}}
	var days [][]season.Stretch
	r := season.Watch(in, func(s season.State) { days = append(days, s.Lands[0]) })
	masses := func(day int) (all []float64) {
		for _, s := range days[day] {
			all = append(all, s.Mass)
		}
		return all
	}
	assert.InDeltaSlice(t, []float64{0.2, 0.3, 0.05}, masses(0), 1e-12)
	assert.InDeltaSlice(t, []float64{0.08, 0.12, 0.05}, masses(1), 1e-12)
	assert.InDeltaSlice(t, []float64{0.08, 0.1, 0.05}, masses(2), 1e-12)
	assert.Equal(t, []int{1, 2, 2}, []int{days[2][0].Bitten, days[2][1].Bitten, days[2][2].Bitten})
	assert.Empty(t, r.Moves)
	assert.Equal(t, []string{"0 group 0 10 5", "1 group 0 10 5", "2 group 0 10 5"}, fed(r))
}

// TestLeftWhileDue: what leaders left is no figure of ground to which a follower is still to
// come: 20 m of 5 m at 0.2 hold 8 kg, of which the ewe's 2 kg, by 0.8, stand for the morrow
// above 0.1. What stands there when the ewe has left counts.
func TestLeftWhileDue(t *testing.T) {
	in := handSeason(4, none, lane(5, season.Stretch{To: 60, Mass: 0.2, Bitten: -30}))
	join(in, 6, 0)
	join(in, 2, 1)
	in.Log = &season.Log{
		Days: 2, Given: []season.Given{{Day: 0, Days: 1, To: 20}},
		Left: []season.Left{{Day: 0, To: 20, Mass: 0.15}, {Day: 1, To: 20, Mass: 0.12}},
	}
	var first []season.Stretch
	season.Watch(in, func(s season.State) { first = append(first, s.Lands[0][0]) })
	assert.InDelta(t, 0.1+2/0.8/100, first[0].Mass, 1e-12)
	assert.Len(t, first[0].Due, 1)
	assert.InDelta(t, 0.12, first[1].Mass, 1e-12)
	assert.Equal(t, 1, first[1].Bitten)
}
