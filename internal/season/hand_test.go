package season_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/internal/season"
)

// The eight cases were worked by hand by somebody who had the rules and not the code.
// Density 100 kg/ha and cm, so that kg/m² are metres: aim 0.2, least 0.1 + ¾ · 0.1, leave
// 0.1, ceiling 0.4; a cow wants 10 kg a day, a ewe 2; of what disappears 0.80, 0.75, 0.75,
// 0.70, 0.65 are eaten by the days of a stay; the shortest rest is 15 days, the shortest
// strip 4 m, the longest stay 5 days. In June K/V - 1 is multiplied by 3^-0.1 a day.

const printed = 1e-6 // the last digit

var (
	none = math.Log(3) * 0
	june = 0.01 * math.Log(3) // P, so that 4P/K = 0.1 ln 3
)

// handSeason is a season of so many days with one growth.
func handSeason(days int, peak float64, lands ...season.Land) *season.Input {
	in := &season.Input{Days: days}
	rot := season.Rotation{ShortestRest: 15, LongestStay: 5, Moves: 1, ShortestStrip: 4, Use: []float64{0.80, 0.75, 0.75, 0.70, 0.65, 0.60, 0.60}}
	for i := range lands {
		l := lands[i]
		l.Aim, l.Least, l.Leave, l.Ceiling = 0.2, 0.175, 0.1, 0.4
		for range days {
			l.Peak = append(l.Peak, peak)
		}
		in.Lands = append(in.Lands, l)
		rot.Lands = append(rot.Lands, i)
	}
	in.Rotations = []season.Rotation{rot}
	return in
}

// join lets a group that wants so much a day follow so many days behind.
func join(in *season.Input, want float64, lag int) {
	var demand []float64
	for range in.Days {
		demand = append(demand, want)
	}
	in.Rotations[0].Members = append(in.Rotations[0].Members, season.Member{Group: len(in.Groups), Lag: lag})
	in.Groups = append(in.Groups, season.Group{Demand: demand})
}

func lane(width float64, stretches ...season.Stretch) season.Land {
	return season.Land{Width: width, Length: stretches[len(stretches)-1].To, Stretches: stretches}
}

func paddock(area, mass float64, bitten int) season.Land {
	return season.Land{Width: area, Length: 1, Paddock: true, Stretches: []season.Stretch{{To: 1, Mass: mass, Bitten: bitten}}}
}

// opened lists the moves as day, land, place and days, with a mark where below the aim.
func opened(r *season.Result) (all []string) {
	for _, m := range r.Moves {
		text := fmt.Sprintf("%d land %d %.6g-%.6g", m.Day, m.Land, m.From, m.To)
		if m.Stay > 1 {
			text += fmt.Sprintf(" %d days", m.Stay)
		}
		if m.Below {
			text += " below"
		}
		all = append(all, text)
	}
	return all
}

// fed lists the feeding as day, group, kg and reason.
func fed(r *season.Result) (all []string) {
	for _, f := range r.Fed {
		all = append(all, fmt.Sprintf("%d group %d %.6g %d", f.Day, f.Group, f.Hay, f.Reason))
	}
	return all
}

// evenings holds what stands on all land each evening.
func evenings(t *testing.T, r *season.Result, first int, want ...float64) {
	t.Helper()
	for i, mass := range want {
		assert.InDelta(t, mass, r.Days[first+i].End, printed, "evening %d", first+i)
	}
}

// TestHandJump: another run that is ready stands before hay. The old rule looked at the
// first stretch of each lane alone.
func TestHandJump(t *testing.T) {
	in := handSeason(5, none, lane(10, season.Stretch{To: 20, Mass: 0.2, Bitten: -20}, season.Stretch{To: 50, Mass: 0.15, Bitten: -30}, season.Stretch{To: 75, Mass: 0.2, Bitten: -40}, season.Stretch{To: 100, Mass: 0.2, Bitten: -5}))
	join(in, 10, 0)
	r := season.Run(in)
	assert.Equal(t, []string{"0 land 0 50-62.5", "1 land 0 62.5-75", "2 land 0 0-12.5", "3 land 0 12.5-20"}, opened(r))
	assert.Equal(t, []string{fmt.Sprint("3 group 0 4 ", int(season.NoRest)), fmt.Sprint("4 group 0 10 ", int(season.NoRest))}, fed(r))
	evenings(t, r, 0, 172.5, 160, 147.5, 140, 140)
}

func TestHandBelowTheAim(t *testing.T) {
	in := handSeason(6, none,
		lane(10, season.Stretch{To: 20, Mass: 0.18, Bitten: -40}), lane(10, season.Stretch{To: 30, Mass: 0.18, Bitten: -68}),
		lane(10, season.Stretch{To: 12.5, Mass: 0.2, Bitten: -13}), lane(10, season.Stretch{To: 50, Mass: 0.17, Bitten: -99}))
	join(in, 10, 0)
	r := season.Run(in)
	assert.Equal(t, []string{"0 land 1 0-15.625 below", "1 land 1 15.625-30 below", "1 land 0 0-20 2 days below", "3 land 2 0-12.5"}, opened(r))
	winter := int(season.NoGrowth)
	assert.Equal(t, []string{fmt.Sprint("4 group 0 10 ", winter), fmt.Sprint("5 group 0 10 ", winter)}, fed(r))
	for land, mass := range []float64{21.6, 30, 12.5, 85} {
		assert.InDelta(t, mass, r.Stood[3*4+land], printed)
	}
	assert.InDelta(t, 0.18-10.8/0.75/200, r.Lands[0][0].Mass, printed)
}

func TestHandStay(t *testing.T) {
	in := handSeason(6, june, paddock(500, 0.2, -31), paddock(500, 0.12, -12))
	join(in, 10, 0)
	join(in, 2, 1)
	var states []season.State
	r := season.Watch(in, func(s season.State) { states = append(states, s) })
	assert.Equal(t, []string{"0 land 0 0-1 4 days"}, opened(r))
	assert.Equal(t, 3, r.Moves[0].Planned)
	for day, mass := range []float64{92.096381, 81.339146, 70.261046, 57.712720, 59.335737, 64.020407} {
		assert.InDelta(t, mass, r.Stood[2*day], printed, "day %d", day)
	}
	grass := int(season.NoGrass)
	assert.Equal(t, []string{fmt.Sprint("0 group 1 2 ", int(season.LeadIn)), fmt.Sprint("4 group 0 10 ", grass), fmt.Sprint("5 group 0 10 ", grass), fmt.Sprint("5 group 1 2 ", grass)}, fed(r))
	assert.Equal(t, season.Stay{From: 0, Planned: 3, Days: 4, First: 1}, states[3].Stays[0])
	assert.Zero(t, states[4].Stays[0])
}

func TestHandTurnOut(t *testing.T) {
	in := handSeason(20, june, lane(10, season.Stretch{To: 300, Mass: 0.11, Bitten: season.Never}))
	join(in, 10, 0)
	r := season.Run(in)
	require.GreaterOrEqual(t, len(r.Moves), 2)
	assert.Equal(t, 5, r.Moves[0].Day)
	assert.True(t, r.Moves[0].Below)
	assert.InDelta(t, 21.331909, r.Moves[0].To, printed)
	assert.Equal(t, 6, r.Moves[1].Day)
	assert.InDelta(t, 39.389457, r.Moves[1].To, printed)
	assert.Len(t, r.Fed, 5)
}

func TestHandPlannedAnew(t *testing.T) {
	in := handSeason(7, none, lane(10, season.Stretch{To: 200, Mass: 0.2, Bitten: season.Never}))
	join(in, 10, 0)
	join(in, 6, 2)
	var states []season.State
	r := season.Watch(in, func(s season.State) { states = append(states, s) })
	want := []string{"0 land 0 0-20", "1 land 0 20-40", "2 land 0 40-60", "3 land 0 60-80", "4 land 0 80-100", "5 land 0 100-112.5", "6 land 0 112.5-125"}
	assert.Equal(t, want, opened(r))
	evenings(t, r, 2, 355, 335, 315, 295, 275)
	assert.Len(t, r.Fed, 2)

	assert.Equal(t, 40.0, states[1].At[0])
	assert.InDelta(t, 0.1375, states[1].Lands[0][0].Mass, printed)
	due := states[1].Lands[0][0].Due
	require.Len(t, due, 1)
	assert.Equal(t, [2]int{1, 2}, [2]int{due[0].Group, due[0].Day})
	assert.InDelta(t, 6, due[0].Eat, printed)
	assert.InDelta(t, 0.8, due[0].Use, printed)
	again := season.Run(anew(in, &states[1]))
	assert.Empty(t, again.Fed)
	evenings(t, again, 0, 355, 335, 315, 295, 275)
	underWay := []string{"-2 land 0 0-20", "-1 land 0 20-40"} // to which the group behind is still to come
	assert.Equal(t, append(underWay, "0 land 0 40-60", "1 land 0 60-80", "2 land 0 80-100", "3 land 0 100-112.5", "4 land 0 112.5-125"), opened(again))
}

// anew gives the season that goes on in the morning after a state.
func anew(in *season.Input, s *season.State) *season.Input {
	over := s.Day + 1
	next := &season.Input{Days: in.Days - over, From: in.From - over}
	for i := range in.Lands {
		l := in.Lands[i]
		l.Peak, l.Stretches, l.Stay = l.Peak[over:], nil, s.Stays[i]
		l.Stay.From -= over
		for _, piece := range s.Lands[i] {
			if piece.Bitten != season.Never {
				piece.Bitten -= over
			}
			due := piece.Due
			piece.Due = nil
			for _, d := range due {
				d.Day -= over
				piece.Due = append(piece.Due, d)
			}
			l.Stretches = append(l.Stretches, piece)
		}
		next.Lands = append(next.Lands, l)
	}
	for i := range in.Groups {
		next.Groups = append(next.Groups, season.Group{Demand: in.Groups[i].Demand[over:]})
	}
	for i := range in.Rotations {
		rot := in.Rotations[i]
		rot.Front, rot.At, rot.Grass = s.Fronts[i], s.At[i], rot.Grass-over
		next.Rotations = append(next.Rotations, rot)
	}
	for _, c := range in.Cuts {
		if c.Day -= over; c.Day >= 0 {
			next.Cuts = append(next.Cuts, c)
		}
	}
	return next
}

func TestHandNobody(t *testing.T) {
	in := handSeason(61, 0, lane(10, season.Stretch{To: 100, Mass: 0.1, Bitten: season.Never}))
	join(in, 0, 0)
	for day := range in.Lands[0].Peak {
		in.Lands[0].Peak[day] = 0.40 * 0.8 / 31 * math.Log(3) // May: 1 · 0.40 · 0.8 / 31 / ρ
		if day >= 31 {
			in.Lands[0].Peak[day] = 0.008 * math.Log(3) // June
		}
	}
	r := season.Run(in)
	for day, mass := range map[int]float64{0: 108.743918, 30: 367.244202, 31: 369.792059, 60: 397.461732} {
		assert.InDelta(t, mass, r.Days[day].End, printed)
	}
	assert.Empty(t, r.Moves)
	assert.Empty(t, r.Fed)
}

func TestHandStripOfDays(t *testing.T) {
	in := handSeason(5, none, lane(25, season.Stretch{To: 100, Mass: 0.3, Bitten: season.Never}))
	join(in, 10, 0)
	r := season.Run(in)
	assert.Equal(t, []string{"0 land 0 0-5.33333 2 days", "2 land 0 5.33333-10.6667 2 days", "4 land 0 10.6667-14.6667"}, opened(r))
	evenings(t, r, 0, 736.666667, 723.333333, 710, 696.666667, 684.166667)
	assert.Empty(t, r.Fed)
}

func TestHandCutDuringAStay(t *testing.T) {
	in := handSeason(6, none, paddock(800, 0.2, -68), lane(10, season.Stretch{To: 100, Mass: 0.2, Bitten: -40}))
	join(in, 10, 0)
	join(in, 6, 1)
	in.Cuts = []season.Cut{{Day: 2, Land: 0, Stubble: 0.12, To: 1}}
	var states []season.State
	r := season.Watch(in, func(s season.State) { states = append(states, s) })
	for day, mass := range [][2]float64{{146.666667, 200}, {125.333333, 200}, {80, 195}, {80, 179.5}, {80, 159.5}, {80, 139.5}} {
		assert.InDelta(t, mass[0], r.Stood[2*day], printed, "paddock, day %d", day)
		assert.InDelta(t, mass[1], r.Stood[2*day+1], printed, "lane, day %d", day)
	}
	assert.InDelta(t, 29.333333, r.Days[2].Cut, printed)
	assert.Equal(t, []string{"0 land 0 0-1 3 days", "2 land 1 0-8", "3 land 1 8-28", "4 land 1 28-48", "5 land 1 48-60.5"}, opened(r))
	assert.Equal(t, []string{fmt.Sprint("0 group 1 6 ", int(season.LeadIn)), fmt.Sprint("3 group 1 3.6 ", int(season.CutBefore))}, fed(r))
	assert.Zero(t, states[2].Stays[0])
	assert.InDelta(t, 0.1375, states[2].Lands[1][0].Mass, printed)
	assert.InDelta(t, 8, states[2].At[0], printed)
}
