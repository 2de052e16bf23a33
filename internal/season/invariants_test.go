package season_test

import (
	"cmp"
	"fmt"
	"math"
	"reflect"
	"slices"
	"testing"

	gocmp "github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/internal/season"
)

const (
	// near is the share to which the rules promise their sums.
	near = 1e-9
	// rounding is the share that one day's sums may be off: floats carry 16
	// digits, and a day adds up some hundred of them. In metres it is the same
	// of a lane of some hundred metres, which two nearly equal places may leave.
	rounding = 1e-12
	hair     = 1e-10 // metres: the day loop takes boundaries nearer than a tenth of it for one
	// sliver is a length, in metres, below which two pieces of ground that
	// should only touch may overlap by rounding.
	sliver = 1e-6
)

// property checks something of a hundred generated seasons.
func property(t *testing.T, holds func(t *rapid.T, in *season.Input)) {
	t.Helper()
	rapid.Check(t, func(t *rapid.T) { holds(t, seasons().Draw(t, "season")) })
}

// stands is what stood on every land at the end of every day, after growth.
type stands [][][]season.Stretch

func watch(in *season.Input) (*season.Result, stands) {
	var all stands
	result := season.Watch(in, func(s season.State) { all = append(all, s.Lands) })
	return result, all
}

// at finds the stretch over a place.
func at(stretches []season.Stretch, place float64) season.Stretch {
	i, _ := slices.BinarySearchFunc(stretches, place, func(s season.Stretch, place float64) int {
		if s.To < place {
			return -1
		}
		return 1
	})
	return stretches[i]
}

// pieces calls for every piece of a land in the finest parting of the season (by
// its first stand, its moves and its cuts), with its middle; not for those a
// rounding error long, which have no place between their ends.
func pieces(in *season.Input, r *season.Result, land int, each func(from, to, middle float64)) {
	bounds := []float64{}
	for _, s := range in.Lands[land].Stretches {
		bounds = append(bounds, s.To)
	}
	for _, m := range r.Moves {
		if m.Land == land {
			bounds = append(bounds, m.From, m.To)
		}
	}
	for _, c := range in.Cuts {
		if c.Land == land {
			bounds = append(bounds, c.From, c.To)
		}
	}
	slices.Sort(bounds)
	from := 0.0
	for _, to := range bounds {
		if to-from > hair {
			each(from, to, (from+to)/2)
			from = to
		}
	}
}

func overlap(from, to, otherFrom, otherTo float64) bool {
	return min(to, otherTo)-max(from, otherFrom) > sliver
}

// lastVisits gives the day on which each move was grazed last.
func lastVisits(r *season.Result) []int {
	last := make([]int, len(r.Moves))
	for i := range last {
		last[i] = -1
	}
	for _, v := range r.Visits {
		last[v.Move] = max(last[v.Move], v.Day)
	}
	return last
}

// lag gives a group's days behind the leader, and its rotation; -1 for none.
func lag(in *season.Input, group int) (days, rotation int) {
	for i := range in.Rotations {
		for _, m := range in.Rotations[i].Members {
			if m.Group == group {
				return m.Lag, i
			}
		}
	}
	return 0, -1
}

// TestMassIsKept: start + growth = eaten + trampled + cut + left.
func TestMassIsKept(t *testing.T) {
	property(t, func(t *rapid.T, in *season.Input) {
		r := season.Run(in)
		require.Len(t, r.Days, in.Days)
		var grown, gone float64
		for i, d := range r.Days {
			require.InDelta(t, d.Start+d.Grown, d.Eaten+d.Trampled+d.Cut+d.End, rounding*(d.Start+d.Grown), "day %d", i)
			if i > 0 {
				require.InDelta(t, r.Days[i-1].End, d.Start, rounding*d.Start, "day %d", i)
			}
			standing := 0.0
			for _, kg := range r.Stood[i*len(in.Lands) : (i+1)*len(in.Lands)] {
				standing += kg
			}
			require.InDelta(t, d.End, standing, rounding*d.End, "day %d", i)
			grown, gone = grown+d.Grown, gone+d.Eaten+d.Trampled+d.Cut
		}
		start, left := massOf(in), r.Days[in.Days-1].End
		require.InDelta(t, start, r.Days[0].Start, rounding*start)
		allowed := near * grown
		if grown == 0 {
			allowed = near * start
		}
		require.InDelta(t, start+grown, gone+left, allowed)
	})
}

// massOf adds up what stands at the start.
func massOf(in *season.Input) float64 {
	total := 0.0
	for _, l := range in.Lands {
		from := 0.0
		for _, s := range l.Stretches {
			total += s.Mass * (s.To - from) * l.Width
			from = s.To
		}
	}
	return total
}

// TestBooksAgree: groups, visits, feeding and days are views of one book, and
// of what disappears the share of the move's use is eaten.
func TestBooksAgree(t *testing.T) {
	property(t, func(t *rapid.T, in *season.Input) {
		r := season.Run(in)
		eaten, hay := make([][]float64, len(in.Groups)), make([][]float64, len(in.Groups))
		for g := range in.Groups {
			eaten[g], hay[g] = make([]float64, in.Days), make([]float64, in.Days)
		}
		days := make([]season.Day, in.Days)
		for _, v := range r.Visits {
			eaten[v.Group][v.Day] += v.Eaten
			days[v.Day].Eaten += v.Eaten
			days[v.Day].Trampled += v.Eaten * (1/v.Use - 1)
		}
		for _, f := range r.Fed {
			hay[f.Group][f.Day] += f.Hay
			days[f.Day].Hay += f.Hay
			require.NotEqual(t, season.NoReason, f.Reason, "%+v", f)
		}
		for g := range in.Groups {
			require.InDeltaSlice(t, eaten[g], r.Eaten[g], near, "group %d", g)
			require.Equal(t, hay[g], r.Hay[g], "group %d", g)
		}
		for i, d := range r.Days {
			require.InDelta(t, days[i].Eaten, d.Eaten, rounding*d.Start)
			require.InDelta(t, days[i].Trampled, d.Trampled, rounding*d.Start)
			require.InDelta(t, days[i].Hay, d.Hay, rounding*d.Hay)
		}
	})
}

// TestEatenAndHayMakeTheDemand, of each group and day.
func TestEatenAndHayMakeTheDemand(t *testing.T) {
	property(t, func(t *rapid.T, in *season.Input) {
		r := season.Run(in)
		for g, group := range in.Groups {
			for day, want := range group.Demand {
				require.InDelta(t, want, r.Eaten[g][day]+r.Hay[g][day], near*want, "group %d, day %d", g, day)
			}
		}
	})
}

// TestStandStaysBetweenResidualAndCeiling: R ≤ V ≤ K on what has been grazed;
// where a cut went below R, its stubble is the least. What was never grazed or
// cut only keeps below K.
func TestStandStaysBetweenResidualAndCeiling(t *testing.T) {
	property(t, func(t *rapid.T, in *season.Input) {
		r, all := watch(in)
		for i := range in.Lands {
			l := &in.Lands[i]
			least := l.Leave
			for _, c := range in.Cuts {
				if c.Land == i {
					least = min(least, c.Stubble)
				}
			}
			pieces(in, r, i, func(from, to, middle float64) {
				first := firstVisit(r, i, from, to)
				for day := range in.Days {
					mass := at(all[day][i], middle).Mass
					within := mass > 0 && mass <= l.Ceiling*(1+rounding) && (day < first || mass >= least*(1-rounding))
					if !within { // asked a million times
						t.Fatalf("land %d at %v, day %d: %v kg/m²", i, middle, day, mass)
					}
				}
			})
		}
	})
}

// firstVisit gives the day on which ground was grazed first; a day beyond all
// days where it never was.
func firstVisit(r *season.Result, land int, from, to float64) int {
	first := math.MaxInt
	for _, v := range r.Visits {
		if m := &r.Moves[v.Move]; m.Land == land && overlap(from, to, m.From, m.To) {
			first = min(first, v.Day)
		}
	}
	return first
}

// TestEatenIsWhatWasBooked: where no cut came between, the visits of a move
// add up to what was booked, which is no more than stood there above the
// residual, and each group has its share by what it wants on its days.
func TestEatenIsWhatWasBooked(t *testing.T) {
	property(t, func(t *rapid.T, in *season.Input) {
		r := season.Run(in)
		last := lastVisits(r)
		eaten := make([]float64, len(r.Moves))
		for _, v := range r.Visits {
			eaten[v.Move] += v.Eaten
		}
		for i, m := range r.Moves {
			l := &in.Lands[m.Land]
			require.Positive(t, m.Want)
			if !l.Paddock { // which grows on while they stay
				holds := (m.To - m.From) * l.Width * (m.Before - l.Leave) * m.Use
				require.LessOrEqual(t, m.Want, holds*(1+near), "%+v", m)
			}
			if cutBetween(in, m, max(m.Day, last[i])+m.Stay+10) {
				require.LessOrEqual(t, eaten[i], m.Want*(1+near), "%+v", m)
				continue
			}
			require.InDelta(t, m.Want, eaten[i], near*m.Want, "%+v", m)
		}
		for _, v := range r.Visits {
			m := r.Moves[v.Move]
			behind, _ := lag(in, v.Group)
			if m.Stay > 1 || in.Lands[m.Land].Paddock || cutBetween(in, m, max(m.Day, last[v.Move])+m.Stay+10) {
				continue
			}
			share := in.Groups[v.Group].Demand[m.Day+behind] / wanted(in, m.Rotation, m.Day)
			require.InDelta(t, m.Want*share, v.Eaten, near*m.Want, "%+v of %+v", v, m)
		}
	})
}

// cutBetween tells whether a cut came between the opening of a move and its
// last visit.
func cutBetween(in *season.Input, m season.Move, last int) bool {
	return slices.ContainsFunc(in.Cuts, func(c season.Cut) bool {
		return c.Land == m.Land && c.Day > m.Day && c.Day <= last && c.From < m.To && c.To > m.From
	})
}

// wanted adds up what a rotation will want of ground opened on a day.
func wanted(in *season.Input, rotation, day int) float64 {
	total := 0.0
	for _, m := range in.Rotations[rotation].Members {
		if day+m.Lag < in.Days {
			total += in.Groups[m.Group].Demand[day+m.Lag]
		}
	}
	return total
}

// TestStripIsNoLongerThanItsWant: a strip holds more than its want only where
// it was drawn out to the shortest strip, or took in a remainder shorter than
// one; both at once make it shorter than two.
func TestStripIsNoLongerThanItsWant(t *testing.T) {
	property(t, func(t *rapid.T, in *season.Input) {
		r, all := watch(in)
		for _, m := range r.Moves {
			l, shortest := &in.Lands[m.Land], in.Rotations[m.Rotation].ShortestStrip
			if l.Paddock || m.Day == 0 || m.To-m.From <= 2*shortest+sliver || slices.ContainsFunc(in.Cuts, func(c season.Cut) bool { return c.Day == m.Day }) {
				continue // the stand before it was opened is known from the evening before
			}
			without := 0.0 // what all but a shortest strip of it holds
			from := 0.0
			for _, s := range all[m.Day-1][m.Land] {
				length := min(s.To, m.To-shortest) - max(from, m.From)
				without += max(0, length) * l.Width * m.Use * (s.Mass - l.Leave)
				from = s.To
			}
			require.LessOrEqual(t, without, m.Want*(1+near), "%+v", m)
		}
	})
}

// TestStaysFeedEverybody: where no cut came between, whoever is in a paddock eats all that
// they want there, on the days planned and on those stayed on.
func TestStaysFeedEverybody(t *testing.T) {
	property(t, func(t *rapid.T, in *season.Input) {
		r := season.Run(in)
		last := lastVisits(r)
		for i, m := range r.Moves {
			if l := &in.Lands[m.Land]; !l.Paddock || cutBetween(in, m, m.Day+m.Stay+10) || cutBetween(in, m, max(m.Day, last[i])) {
				continue
			}
			require.LessOrEqual(t, m.Planned, in.Rotations[m.Rotation].LongestStay)
			require.LessOrEqual(t, m.Planned, m.Stay)
			require.LessOrEqual(t, m.Day+m.Stay, in.Days)
			for _, member := range in.Rotations[m.Rotation].Members {
				for day := m.Day + 1; day < m.Day+m.Stay; day++ { // the first may be parted
					if on := day + member.Lag; on < in.Days {
						require.InDelta(t, 0, r.Hay[member.Group][on], near*in.Groups[member.Group].Demand[on], "%+v, day %d", m, on)
					}
				}
			}
		}
	})
}

// TestNobodyIsFedBesideReadyGrass: on a day on which leaders find nothing at all, no lane
// has a row of ready ground as long as a strip must be, and no paddock is ready that holds
// ten times what is wanted.
func TestNobodyIsFedBesideReadyGrass(t *testing.T) {
	fed := 0
	property(t, func(t *rapid.T, in *season.Input) {
		var all stands
		var stays [][]season.Stay
		r := season.Watch(in, func(s season.State) { all, stays = append(all, s.Lands), append(stays, s.Stays) })
		for day := 1; day < in.Days; day++ {
			if slices.ContainsFunc(in.Cuts, func(c season.Cut) bool { return c.Day == day }) {
				continue
			}
			for i := range in.Rotations {
				rot := &in.Rotations[i]
				ate, hungry := 0.0, 0.0
				for _, m := range rot.Members {
					ate += r.Eaten[m.Group][day]
					if m.Lag == 0 {
						hungry += r.Hay[m.Group][day]
					}
				}
				if ate > 0 || hungry == 0 {
					continue
				}
				fed++
				for _, land := range rot.Lands {
					l := &in.Lands[land]
					ready := func(s season.Stretch) bool {
						return s.Mass >= l.Least*(1+near) && len(s.Due) == 0 && day-s.Bitten >= rot.ShortestRest
					}
					from, begun, above := 0.0, 0.0, 0.0
					for _, s := range all[day-1][land] {
						if !ready(s) {
							begun, above = s.To, math.Inf(-1)
						}
						above += (s.Mass - l.Leave) * (s.To - from) * l.Width
						if !l.Paddock {
							require.Less(t, s.To-begun, min(rot.ShortestStrip, l.Length)+sliver, "day %d, land %d", day, land)
						}
						from = s.To
					}
					if l.Paddock && stays[day-1][land].Days == 0 {
						require.Less(t, above*rot.Use[0], 10*wanted(in, i, day), "day %d, land %d", day, land)
					}
				}
			}
		}
	})
	require.Greater(t, fed, 1000)
}

// TestPlannedAnew: stopped in the evening of any day and begun again from what is written
// down, the season is the same.
func TestPlannedAnew(t *testing.T) {
	property(t, func(t *rapid.T, in *season.Input) {
		in = start(in)
		if in.Days < 2 {
			return
		}
		stop := rapid.IntRange(0, in.Days-2).Draw(t, "stopped in the evening of")
		var kept season.State
		whole := season.Watch(in, func(s season.State) {
			if s.Day == stop {
				kept = s
			}
		})
		rest := season.Run(anew(in, &kept))
		for day := stop + 1; day < in.Days; day++ {
			was, is := whole.Days[day], rest.Days[day-stop-1]
			require.InDeltaSlice(t, []float64{was.Start, was.Eaten, was.Cut, was.Hay, was.End}, []float64{is.Start, is.Eaten, is.Cut, is.Hay, is.End}, near*was.Start, "day %d", day)
		}
		var want, got []string
		for _, m := range whole.Moves {
			if m.Day > stop {
				want = append(want, fmt.Sprintf("%d %d %.5f %.5f %d", m.Day-stop-1, m.Land, m.From, m.To, m.Stay))
			}
		}
		for _, m := range rest.Moves {
			if m.Day >= 0 {
				got = append(got, fmt.Sprintf("%d %d %.5f %.5f %d", m.Day, m.Land, m.From, m.To, m.Stay))
				continue
			}
			require.True(t, slices.ContainsFunc(whole.Moves, func(was season.Move) bool {
				return was.Land == m.Land && was.Day <= stop && overlap(was.From, was.To, m.From, m.To)
			}), "under way: %+v", m)
		}
		require.Equal(t, want, got)
	})
}

// TestGroupIsOnOneLandADay, the one its leader opened so many days before; or
// on the lands of moves that followed one another on one day.
func TestGroupIsOnOneLandADay(t *testing.T) {
	property(t, func(t *rapid.T, in *season.Input) {
		r := season.Run(in)
		place := make([]int, len(r.Moves)) // among the moves of its rotation
		count := make([]int, len(in.Rotations))
		for i, m := range r.Moves {
			place[i] = count[m.Rotation]
			count[m.Rotation]++
		}
		visited := map[[2]int][]int{}
		for _, v := range r.Visits {
			m := &r.Moves[v.Move]
			behind, rotation := lag(in, v.Group)
			require.Equal(t, rotation, m.Rotation)
			require.GreaterOrEqual(t, v.Day-behind, m.Day, "%+v of %+v", v, *m)
			require.Less(t, v.Day-behind, m.Day+m.Stay, "%+v of %+v", v, *m)
			key := [2]int{v.Day, v.Group}
			require.NotContains(t, visited[key], place[v.Move], "a visit stands twice")
			visited[key] = append(visited[key], place[v.Move])
		}
		for key, moves := range visited {
			slices.Sort(moves)
			require.Equal(t, len(moves)-1, moves[len(moves)-1]-moves[0], "day and group %v: moves %v", key, moves)
		}
	})
}

// TestRestIsKept: no stretch is grazed again before the shortest rest, from
// the last bite of the last group, a cut or a bite before the season; and none
// that has not grown to the turn-in mass.
func TestRestIsKept(t *testing.T) {
	property(t, func(t *rapid.T, in *season.Input) {
		r, all := watch(in)
		last := lastVisits(r)
		for i, m := range r.Moves {
			l, rest := &in.Lands[m.Land], in.Rotations[m.Rotation].ShortestRest
			if last[i] < 0 {
				continue // opened for followers alone, and a cut took what was kept
			}
			require.GreaterOrEqual(t, last[i], m.Day)
			for j, earlier := range r.Moves[:i] {
				if earlier.Land == m.Land && overlap(m.From, m.To, earlier.From, earlier.To) {
					require.GreaterOrEqual(t, m.Day-last[j], rest, "%+v after %+v", m, earlier)
				}
			}
			stand := l.Stretches
			if m.Day > 0 {
				stand = all[m.Day-1][m.Land]
			}
			from := 0.0
			for _, s := range stand {
				if overlap(m.From, m.To, from, s.To) {
					mark := l.Aim
					if m.Below {
						mark = min(l.Least, max(l.Aim/2, l.Leave+(l.Aim-l.Leave)/4))
					}
					require.GreaterOrEqual(t, s.Mass, mark*(1-rounding), "%+v", m)
					if s.Bitten != season.Never {
						require.GreaterOrEqual(t, m.Day-s.Bitten, rest, "%+v", m)
					}
				}
				from = s.To
			}
		}
	})
}

// TestUngrazedStretchesFollowTheClosedForm: what is neither grazed nor cut
// stands at K / (1 + (K/V − 1) exp(−4 ΣP/K)).
func TestUngrazedStretchesFollowTheClosedForm(t *testing.T) {
	property(t, func(t *rapid.T, in *season.Input) {
		r, all := watch(in)
		for i := range in.Lands {
			l := &in.Lands[i]
			pieces(in, r, i, func(from, to, middle float64) {
				cut := slices.ContainsFunc(in.Cuts, func(c season.Cut) bool { return c.Land == i && c.From < to && c.To > from })
				if cut || to-from < sliver || firstVisit(r, i, from, to) < in.Days {
					return
				}
				potential := 0.0
				for day, p := range l.Peak {
					potential += p
					start := at(l.Stretches, middle).Mass
					want := l.Ceiling / (1 + (l.Ceiling/start-1)*math.Exp(-4*potential/l.Ceiling))
					require.InEpsilon(t, want, at(all[day][i], middle).Mass, near, "land %d at %v, day %d", i, middle, day)
				}
			})
		}
	})
}

// TestMovesAreInOrder, by day, rotation and part; within the season; inside
// their land; and the passes of a land count up one by one.
func TestMovesAreInOrder(t *testing.T) {
	property(t, func(t *rapid.T, in *season.Input) {
		r := season.Run(in)
		passes := make([]int, len(in.Lands))
		for i, m := range r.Moves {
			l := &in.Lands[m.Land]
			require.True(t, m.Day >= 0 && m.Day < in.Days && m.Part >= 0 && m.Part < in.Rotations[m.Rotation].Moves, "%+v", m)
			require.Contains(t, in.Rotations[m.Rotation].Lands, m.Land)
			require.True(t, 0 <= m.From && m.From < m.To && m.To <= l.Length, "%+v", m)
			require.Contains(t, []int{max(1, passes[m.Land]), passes[m.Land] + 1}, m.Pass, "%+v", m)
			passes[m.Land] = m.Pass
			if l.Paddock {
				require.True(t, m.From == 0 && m.To == l.Length, "%+v", m)
			} else {
				require.True(t, m.Stay == m.Planned && (m.Stay == 1 || in.Rotations[m.Rotation].Moves == 1) && m.Stay <= in.Rotations[m.Rotation].LongestStay, "%+v", m)
			}
			if i > 0 {
				before := r.Moves[i-1]
				require.LessOrEqual(t, slices.Compare([]int{before.Day, before.Rotation, before.Part}, []int{m.Day, m.Rotation, m.Part}), 0)
			}
		}
		for i, v := range r.Visits {
			require.True(t, v.Day >= 0 && v.Day < in.Days, "%+v", v)
			require.True(t, i == 0 || r.Visits[i-1].Day <= v.Day, "%+v", v)
		}
	})
}

// TestReadyIsTheFirstDay by which all ground of a move could be grazed again,
// and After is what stood when its last group had been there: both worked from
// the evenings' stands, the second with that day's growth taken back.
func TestReadyIsTheFirstDay(t *testing.T) {
	property(t, func(t *rapid.T, in *season.Input) {
		r, all := watch(in)
		last := lastVisits(r)
		for i, m := range r.Moves {
			l, rest := &in.Lands[m.Land], in.Rotations[m.Rotation].ShortestRest
			if m.Stay > 1 && cutBetween(in, m, m.Day+m.Stay+10) {
				continue // its days were off
			}
			if slices.ContainsFunc(r.Moves[i+1:], func(later season.Move) bool {
				return (later.Below || l.Paddock && later.Day <= m.Day+m.Stay+6) && later.Land == m.Land && overlap(m.From, m.To, later.From, later.To)
			}) {
				continue // grazed again before it was ripe, or as soon as everybody had been
			}
			ready, after := 0, 0.0
			pieces(in, r, m.Land, func(from, to, middle float64) {
				if from < m.From-hair || to > m.To+hair {
					return
				}
				evening := at(all[last[i]][m.Land], middle).Mass
				back := math.Exp(4 * l.Peak[last[i]] / l.Ceiling)
				after += (to - from) * l.Ceiling / (1 + (l.Ceiling/evening-1)*back)
				day := last[i]
				switch members := in.Rotations[m.Rotation].Members; {
				case l.Paddock: // the leaders have a morning after to stay on
					day = max(day, m.Day+m.Stay-1+max(1, members[len(members)-1].Lag))
				case m.Stay > 1:
					day = max(day, m.Day+m.Stay-1) // theirs, although they want nothing
				}
				for ; day < in.Days; day++ {
					if s := at(all[day][m.Land], middle); s.Mass >= l.Least*(1-rounding) && day+1-s.Bitten >= rest {
						break
					}
				}
				ready = max(ready, day+1)
			})
			if ready > in.Days {
				ready = -1
			}
			require.Equal(t, ready, m.Ready, "%+v", m)
			if l.Paddock || m.Stay == 1 { // on the last of a strip's days they may want nothing
				require.InEpsilon(t, after/(m.To-m.From), m.After, near, "%+v", m)
			}
		}
	})
}

// TestSurplusIsWhatOutgrewTheMower: whatever is listed stood above its mark on
// the evening of its day, one of the season's, and whatever stands above it at the end was listed.
func TestSurplusIsWhatOutgrewTheMower(t *testing.T) {
	property(t, func(t *rapid.T, in *season.Input) {
		r, all := watch(in)
		for _, s := range r.Surplus {
			l := &in.Lands[s.Land]
			require.Positive(t, l.MowAbove)
			require.Greater(t, at(all[s.Day][s.Land], (s.From+s.To)/2).Mass, l.MowAbove, "%+v", s)
		}
		for i, l := range in.Lands {
			pieces(in, r, i, func(from, to, middle float64) {
				stands := at(r.Lands[i], middle)
				if l.MowAbove == 0 || to-from < sliver || stands.Mass <= l.MowAbove || stands.Bitten > in.Days-20 { // animals may be there, or due
					return
				}
				require.True(t, slices.ContainsFunc(r.Surplus, func(s season.Surplus) bool {
					return s.Land == i && s.From < middle && middle < s.To
				}), "land %d at %v", i, middle)
			})
		}
	})
}

// comparableDays is how many days two runs that differ by rounding are held
// against each other. A stand that gives a fixed want, and is not eaten down to
// its residual, keeps a difference and lets it grow as the stand grows, by
// 4P/K a day: over 250 days 1e-16 may become 1e-9, over 100 hardly 1e-12.
const comparableDays = 100

// start gives the first days of a season.
func start(in *season.Input) *season.Input {
	in = copyOf(in)
	in.Days = min(in.Days, comparableDays)
	for i := range in.Lands {
		in.Lands[i].Peak = in.Lands[i].Peak[:in.Days]
	}
	for i := range in.Groups {
		in.Groups[i].Demand = in.Groups[i].Demand[:in.Days]
	}
	in.Cuts = slices.DeleteFunc(in.Cuts, func(c season.Cut) bool { return c.Day >= in.Days })
	return in
}

// TestParting: one stretch or many of the same give the same numbers.
func TestParting(t *testing.T) {
	property(t, func(t *rapid.T, in *season.Input) {
		in = start(in)
		parted := copyOf(in)
		for i := range parted.Lands {
			l := &parted.Lands[i]
			for _, place := range places(t, "parted at", rapid.IntRange(1, 5).Draw(t, "parts"), l.Length) {
				for j, s := range l.Stretches {
					if place < s.To {
						s.To = place
						l.Stretches = slices.Insert(l.Stretches, j, s)
						break
					}
				}
			}
		}
		same(t, season.Run(in), season.Run(parted))
	})
}

// same compares all numbers of two seasons except how the land is parted.
func same(t *rapid.T, want, got *season.Result) {
	require.Empty(t, gocmp.Diff(want, got, cmpopts.EquateApprox(near, near), cmpopts.IgnoreUnexported(season.Move{}),
		cmpopts.IgnoreFields(season.Result{}, "Lands", "Surplus")))
}

// TestDoubleFarm: widths, areas and demand doubled double every mass and leave
// days and lengths; exactly, doubling being exact in binary.
func TestDoubleFarm(t *testing.T) {
	property(t, func(t *rapid.T, in *season.Input) {
		double := copyOf(in)
		for i := range double.Lands {
			double.Lands[i].Width *= 2
		}
		for i := range double.Groups {
			twice(double.Groups[i].Demand)
		}
		want := season.Run(in)
		for i := range want.Moves {
			want.Moves[i].Want *= 2
		}
		for i := range want.Visits {
			want.Visits[i].Eaten *= 2
		}
		for i := range want.Fed {
			want.Fed[i].Hay *= 2
		}
		for i := range want.Days {
			d := &want.Days[i]
			for _, kg := range []*float64{&d.Start, &d.Grown, &d.Eaten, &d.Trampled, &d.Cut, &d.End, &d.Hay} {
				*kg *= 2
			}
		}
		twice(want.Stood)
		for g := range in.Groups {
			twice(want.Eaten[g])
			twice(want.Hay[g])
		}
		require.Empty(t, gocmp.Diff(want, season.Run(double), cmpopts.IgnoreUnexported(season.Move{})))
	})
}

func twice(all []float64) {
	for i := range all {
		all[i] *= 2
	}
}

// TestGroupsWithoutLagMayChangeOrder among themselves, and no number changes.
func TestGroupsWithoutLagMayChangeOrder(t *testing.T) {
	property(t, func(t *rapid.T, in *season.Input) {
		in = start(in)
		in.Groups = append(in.Groups, season.Group{Demand: byDay(t, "demand of the second leader", in.Days, 1, 50)})
		r := &in.Rotations[0]
		r.Members = slices.Insert(r.Members, 1, season.Member{Group: len(in.Groups) - 1})
		swapped := copyOf(in)
		leaders := 0
		for leaders < len(r.Members) && r.Members[leaders].Lag == 0 {
			leaders++
		}
		members := swapped.Rotations[0].Members
		turn := rapid.IntRange(1, leaders-1).Draw(t, "turned by")
		copy(members, append(slices.Clone(members[turn:leaders]), members[:turn]...))
		want, got := season.Run(in), season.Run(swapped)
		for _, r := range []*season.Result{want, got} {
			slices.SortFunc(r.Visits, func(a, b season.Visit) int {
				return cmp.Or(a.Day-b.Day, a.Move-b.Move, a.Group-b.Group)
			})
		}
		same(t, want, got)
	})
}

// TestRunChangesNothing in its input, gives the same every time, and the same
// watched or not.
func TestRunChangesNothing(t *testing.T) {
	property(t, func(t *rapid.T, in *season.Input) {
		before := copyOf(in)
		first := season.Run(in)
		require.Equal(t, before, in)
		watched, all := watch(in)
		require.Equal(t, before, in)
		require.Equal(t, first, watched)
		require.Len(t, all, in.Days)
		require.Equal(t, first.Lands, all[in.Days-1])
	})
}

// TestNumbersAreNumbers: nothing in a result is infinite, NaN, or below 0 but
// growth by a rounding.
func TestNumbersAreNumbers(t *testing.T) {
	property(t, func(t *rapid.T, in *season.Input) {
		r := season.Run(in)
		for i := range r.Days {
			require.GreaterOrEqual(t, r.Days[i].Grown, -rounding*r.Days[i].Start)
			r.Days[i].Grown = max(0, r.Days[i].Grown)
		}
		finite(t, reflect.ValueOf(*r), "result")
	})
}

func finite(t *rapid.T, v reflect.Value, name string) {
	switch v.Kind() {
	case reflect.Float64:
		if f := v.Float(); math.IsNaN(f) || math.IsInf(f, 0) || f < 0 {
			t.Fatalf("%s is %v", name, f)
		}
	case reflect.Slice:
		for i := range v.Len() {
			finite(t, v.Index(i), name)
		}
	case reflect.Struct:
		for i := range v.NumField() {
			finite(t, v.Field(i), name+"."+v.Type().Field(i).Name)
		}
	}
}

// TestLessGrowthNeverGivesMore: without stock, lower peaks give no higher mass
// on any land or day; cuts or not.
func TestLessGrowthNeverGivesMore(t *testing.T) {
	property(t, func(t *rapid.T, in *season.Input) {
		in = copyOf(in)
		in.Rotations = nil
		poorer := copyOf(in)
		for i := range poorer.Lands {
			shares := byDay(t, "share of the growth", in.Days, 0, 1)
			for day := range shares {
				poorer.Lands[i].Peak[day] *= shares[day]
			}
		}
		_, rich := watch(in)
		_, poor := watch(poorer)
		for day := range rich {
			for i := range in.Lands {
				require.Len(t, poor[day][i], len(rich[day][i]))
				for j, s := range rich[day][i] {
					require.LessOrEqual(t, poor[day][i][j].Mass, s.Mass*(1+rounding), "land %d, stretch %d, day %d", i, j, day)
				}
			}
		}
	})
}

// TestFirstStrip: at a given mass a strip is want ÷ (width × use × (V − R))
// long, and longer for more demand or a higher residual.
func TestFirstStrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := season.Land{
			Width: number(t, "width", 5, 50), Length: 10000, // more than any of these strips
			Leave: number(t, "leave", 0.03, 0.15), Aim: 0.2, Least: 0.2, Ceiling: 0.6, Peak: []float64{0},
			Stretches: []season.Stretch{{To: 10000, Mass: number(t, "mass", 0.2, 0.6), Bitten: season.Never}},
		}
		demand, use := number(t, "demand", 1, 200), number(t, "use", 0.4, 0.8)
		length := func(demand, leave float64) float64 {
			l := l
			l.Leave = leave
			r := season.Run(&season.Input{
				Days: 1, Lands: []season.Land{l}, Groups: []season.Group{{Demand: []float64{demand}}},
				Rotations: []season.Rotation{{Lands: []int{0}, Members: []season.Member{{}}, ShortestRest: 1, LongestStay: 1, Moves: 1, ShortestStrip: 0.001, Use: []float64{use}}},
			})
			require.Len(t, r.Moves, 1)
			return r.Moves[0].To - r.Moves[0].From
		}
		strip := length(demand, l.Leave)
		require.InEpsilon(t, demand/(l.Width*use*(l.Stretches[0].Mass-l.Leave)), strip, near)
		more := number(t, "more", 1.001, 1.3)
		require.InEpsilon(t, more, length(demand*more, l.Leave)/strip, near)
		require.Greater(t, length(demand, l.Leave*more), strip)
	})
}

// TestBriefIsRun: what a brief season keeps is what the full one has, bit for
// bit, in memory that served another season before.
func TestBriefIsRun(t *testing.T) {
	var runner season.Runner
	property(t, func(t *rapid.T, in *season.Input) {
		full, brief := season.Run(in), runner.Brief(in)
		require.Equal(t, full.Fed, append([]season.Fed(nil), brief.Fed...))
		require.Equal(t, full.Eaten, brief.Eaten)
		require.Equal(t, full.Hay, brief.Hay)
		for i := range full.Days {
			f, b := full.Days[i], brief.Days[i]
			require.Equal(t, []float64{f.Eaten, f.Trampled, f.Cut, f.Hay}, []float64{b.Eaten, b.Trampled, b.Cut, b.Hay}, "day %d", i)
		}
		again := runner.Run(in)
		require.Equal(t, full.Moves, append(full.Moves[:0:0], again.Moves...))
		require.Equal(t, full.Visits, append(full.Visits[:0:0], again.Visits...))
		require.Equal(t, full.Days, again.Days)
		require.Equal(t, full.Lands, again.Lands)
	})
}
