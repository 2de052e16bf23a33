package season_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/internal/season"
)

// still is a lane of 10 m by 100 m on which nothing grows, with 0.3 kg/m² of which 0.1
// is left, all that disappears being eaten: ten metres hold 20 kg.
func still(days int, members []season.Member, demand ...float64) *season.Input {
	in := &season.Input{
		Days: days, From: season.Never, // so that nothing has an early mark
		Lands: []season.Land{{
			Width: 10, Length: 100, Aim: 0.2, Least: 0.2, Leave: 0.1, Ceiling: 0.5, Peak: make([]float64, days),
			Stretches: []season.Stretch{{To: 100, Mass: 0.3, Bitten: season.Never}},
		}},
		Rotations: []season.Rotation{{Lands: []int{0}, Members: members, ShortestRest: 20, LongestStay: 5, Moves: 1, ShortestStrip: 1, Use: []float64{1}}},
	}
	for _, want := range demand {
		all := make([]float64, days)
		for day := range all {
			all[day] = want
		}
		in.Groups = append(in.Groups, season.Group{Demand: all})
	}
	return in
}

// TestWhatACutLeavesIsShared opens 20 m a day for a leader that wants 8 kg and two
// followers that want 20 kg and 12 kg, and cuts the ground to 0.116 kg/m² before they
// come. Of the 32 kg kept for them 3.2 kg stand above the residual: two that come
// together have a tenth of their wants each.
func TestWhatACutLeavesIsShared(t *testing.T) {
	in := still(3, []season.Member{{Group: 0}, {Group: 1, Lag: 1}, {Group: 2, Lag: 1}}, 8, 20, 12)
	in.Cuts = []season.Cut{{Day: 1, Land: 0, Stubble: 0.116, To: 20}}
	r := season.Run(in)
	require.InDelta(t, 20, r.Moves[0].To, 1e-9)
	assert.InDelta(t, 2, r.Eaten[1][1], 1e-9)
	assert.InDelta(t, 1.2, r.Eaten[2][1], 1e-9)
}

// TestStripsPartReadyGround has ground that is bitten on two days, both ready: a strip
// whose want ends 0.3 m before the border between the two ends there, though less than the
// shortest strip is left of its stretch, since the ground behind the border is ready too.
// At the end of what is ready the piece joins.
func TestStripsPartReadyGround(t *testing.T) {
	for _, c := range []struct {
		behind float64 // what stands behind the border, kg/m²
		to     float64 // m
	}{{0.3, 10}, {0.15, 10.3}} {
		in := still(1, []season.Member{{Group: 0}}, 20)
		in.Lands[0].Stretches = []season.Stretch{{To: 10.3, Mass: 0.3, Bitten: -50}, {To: 100, Mass: c.behind, Bitten: -40}}
		assert.InDelta(t, c.to, season.Run(in).Moves[0].To, 1e-9)
	}
}

// TestTheLongestLagIsServedFirst puts two groups a day apart into a paddock for two days
// and cuts it on the second: the follower, which comes to the first day's grass, has what
// it wants of the little there is, and the leader the rest.
func TestTheLongestLagIsServedFirst(t *testing.T) {
	in := still(4, []season.Member{{Group: 0}, {Group: 1, Lag: 1}}, 60, 30)
	in.Lands[0].Paddock, in.Rotations[0].Use = true, []float64{1, 1, 1, 1}
	in.Cuts = []season.Cut{{Day: 1, Land: 0, Stubble: 0.14, To: 100}}
	r := season.Run(in)
	require.Equal(t, 2, r.Moves[0].Stay)
	assert.InDelta(t, 30, r.Eaten[1][1], 1e-9)
	assert.InDelta(t, 10, r.Eaten[0][1], 1e-9)
}
