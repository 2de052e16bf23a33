package season_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/soum/internal/season"
)

// farm is equal lanes, all standing alike, under one group and even growth.
type farm struct {
	lanes, rest, days       int     // days of rest; of the season
	width, length           float64 // m
	mass                    float64 // at the start, kg/m²
	turnIn, leave, ceiling  float64 // kg/m²
	peak                    float64 // kg/m² and day
	head                    float64 // of 11 kg a day
	shortestStrip, useOfAll float64 // m; share eaten of what disappears
}

func (f farm) run() *season.Result {
	even := func(value float64) []float64 {
		all := make([]float64, f.days)
		for day := range all {
			all[day] = value
		}
		return all
	}
	in := &season.Input{
		Days: f.days, Groups: []season.Group{{Demand: even(11 * f.head)}},
		Rotations: []season.Rotation{{
			Members: []season.Member{{Group: 0}}, ShortestRest: f.rest, LongestStay: 5, Moves: 1,
			ShortestStrip: f.shortestStrip, Use: []float64{f.useOfAll},
		}},
	}
	for i := range f.lanes {
		in.Lands = append(in.Lands, season.Land{
			Width: f.width, Length: f.length, Aim: f.turnIn, Least: f.leave + 0.75*(f.turnIn-f.leave), Leave: f.leave, Ceiling: f.ceiling, Peak: even(f.peak),
			Stretches: []season.Stretch{{To: f.length, Mass: f.mass, Bitten: season.Never}},
		})
		in.Rotations[0].Lands = append(in.Rotations[0].Lands, i)
	}
	return season.Run(in)
}

// hay adds up what the group was short of.
func (f farm) hay() float64 {
	total := 0.0
	for _, d := range f.run().Days {
		total += d.Hay
	}
	return total
}

// TestHayMayMoveTheWrongWay keeps cases of what is often taken for granted and
// is not so: that fewer head, more land, a shorter rest or more growth would
// always save hay. A strip or a stay of one day more or less moves all that follows, so
// that a small change may cost, or save, days of hay. The farms were found by trying some
// thousands.
func TestHayMayMoveTheWrongWay(t *testing.T) {
	plain := farm{lanes: 3, rest: 24, days: 180, width: 25, length: 150, mass: 0.30, turnIn: 0.20, leave: 0.12, ceiling: 0.40, peak: 0.007, head: 5, shortestStrip: 5, useOfAll: 0.6}
	changed := plain
	changed.head *= 1.003333
	require.Less(t, changed.hay(), plain.hay()-plain.day(), "more head took less hay")

	plain = farm{lanes: 3, rest: 29, days: 180, width: 30, length: 180, mass: 0.25, turnIn: 0.20, leave: 0.10, ceiling: 0.40, peak: 0.005, head: 5, shortestStrip: 5, useOfAll: 0.6}
	changed = plain
	changed.width *= 1.005
	require.Greater(t, changed.hay(), plain.hay()+plain.day(), "more land took more hay")

	plain = farm{lanes: 2, rest: 31, days: 180, width: 25, length: 200, mass: 0.25, turnIn: 0.20, leave: 0.12, ceiling: 0.60, peak: 0.006, head: 7, shortestStrip: 5, useOfAll: 0.6}
	changed = plain
	changed.rest = 30
	require.Greater(t, changed.hay(), plain.hay()+plain.day(), "a shorter rest took more hay")

	plain = farm{lanes: 2, rest: 20, days: 180, width: 30, length: 190, mass: 0.18, turnIn: 0.20, leave: 0.12, ceiling: 0.60, peak: 0.004, head: 5, shortestStrip: 5, useOfAll: 0.6}
	changed = plain
	changed.peak *= 1.02
	require.Greater(t, changed.hay(), plain.hay()+plain.day(), "more growth took more hay")
}

// day is what the group wants of a day, so that no rounding is taken for a change.
func (f farm) day() float64 { return 11 * f.head }

// TestLaterStripMayMoveTheWrongWay: a first strip grows with demand and with
// the residual (TestFirstStrip), one on a later pass need not: what is left higher grows
// faster, and the remainders of the pass before, that join a strip or not, lie elsewhere.
func TestLaterStripMayMoveTheWrongWay(t *testing.T) {
	const margin = 30 // m²: a metre and more of these lanes

	plain := farm{lanes: 4, rest: 22, days: 180, width: 20, length: 160, mass: 0.18, turnIn: 0.20, leave: 0.10, ceiling: 0.60, peak: 0.006, head: 7, shortestStrip: 5, useOfAll: 0.6}
	higher := plain
	higher.leave = 0.11
	require.Less(t, higher.secondPass(t), plain.secondPass(t)-margin, "a higher residual took a smaller strip")

	plain = farm{lanes: 2, rest: 28, days: 180, width: 30, length: 180, mass: 0.28, turnIn: 0.20, leave: 0.10, ceiling: 0.50, peak: 0.006, head: 5, shortestStrip: 5, useOfAll: 0.6}
	moreHead := plain
	moreHead.head *= 1.003333
	require.Less(t, moreHead.secondPass(t), plain.secondPass(t)-margin, "more head took a smaller strip")
}

// secondPass gives the area of the first strip of the first land's second
// pass that holds a whole day's want.
func (f farm) secondPass(t *testing.T) float64 {
	for _, m := range f.run().Moves {
		if m.Land == 0 && m.Pass == 2 && math.Abs(m.Want/f.day()-1) < 1e-6 {
			return (m.To - m.From) * f.width
		}
	}
	require.Fail(t, "there was no second pass")
	return 0
}

// TestNothingIsOpenedBeforeTheSeason: animals come on day 3; a follower that
// wants grass from then on waits for the leader's first strip, and nobody is
// fed before.
func TestNothingIsOpenedBeforeTheSeason(t *testing.T) {
	in := &season.Input{
		Days: 8, From: 3,
		Lands: []season.Land{{
			Width: 10, Length: 100, Aim: 0.2, Least: 0.175, Leave: 0.1, Ceiling: 0.5, Peak: make([]float64, 8),
			Stretches: []season.Stretch{{To: 100, Mass: 0.3, Bitten: season.Never}},
		}},
		Groups: []season.Group{{Demand: []float64{0, 0, 0, 8, 8, 8, 8, 8}}, {Demand: []float64{0, 0, 0, 4, 4, 4, 4, 4}}},
		Rotations: []season.Rotation{{
			Lands: []int{0}, Members: []season.Member{{Group: 0}, {Group: 1, Lag: 2}}, ShortestRest: 1, LongestStay: 5, Moves: 1, Grass: 3, Use: []float64{0.8},
		}},
	}
	result := season.Run(in)
	require.Equal(t, 3, result.Moves[0].Day)
	require.Len(t, result.Fed, 2) // the follower's days 3 and 4
	for i, fed := range result.Fed {
		require.Equal(t, season.Fed{Day: 3 + i, Group: 1, Hay: 4, Reason: season.LeadIn}, fed)
	}
}
