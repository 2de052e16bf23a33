package farm_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/grazing/farm"
	"example.org/soum/herd"
	"example.org/soum/units"
)

// TestSeasonsAreThePlan: a farm made ready once, whose season is run with the document's
// own rain, is fed day by day what its plan is fed, however often it is run.
func TestSeasonsAreThePlan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		holding := drawFarm(t)
		plan, err := holding.Plan()
		require.NoError(t, err)
		seasons, err := holding.Seasons(units.Middle)
		require.NoError(t, err)
		want := make([]float64, len(plan.Days))
		for _, f := range plan.Feeding {
			if f.Counts {
				require.True(t, eatsHay(t, holding, f.Group))
				want[f.To-holding.Today] += float64(f.Wanted)
			}
		}
		require.NoError(t, seasons.Rain(holding.Rain.Series()))
		for range 2 {
			days, sum, wanted := seasons.Run(), 0.0, 0.0
			require.Len(t, days, len(plan.Days))
			for i := range days {
				for _, fed := range days[i].Fed {
					sum += float64(fed)
				}
				wanted += want[i]
			}
			require.InDelta(t, wanted, sum, 1e-9*(1+wanted))
			require.InDelta(t, float64(plan.Hay.Eaten-plan.Hay.Opening), sum, 1e-9*(1+sum))
		}
	})
}

// eatsHay tells whether hay stands in for a group's pasture.
func eatsHay(t *rapid.T, f *farm.Farm, id string) bool {
	for i := range f.Groups {
		if f.Groups[i].ID == id {
			class, err := herd.ClassByName(f.Groups[i].Class.Name)
			require.NoError(t, err)
			kind := class.Kind
			return kind.Ruminant() || kind.Equine() || kind == herd.Rabbits || kind == herd.Geese
		}
	}
	t.Fatalf("no group %s", id)
	return false
}

// TestSeasonsMultiply: twice the appetite of a group that is all there is wants twice
// the feed where there is no grass, and an end that is none is refused.
func TestSeasonsMultiply(t *testing.T) {
	holding := exampleFarm(t)
	_, err := holding.Seasons(0)
	require.ErrorContains(t, err, "end")
	seasons, err := holding.Seasons(units.Low)
	require.NoError(t, err)
	fed := func() (sum float64) {
		for _, day := range seasons.Run() {
			for _, wanted := range day.Fed {
				sum += float64(wanted)
			}
		}
		return sum
	}
	once := fed()
	seasons.Multiply("", 30)
	assert.Greater(t, fed(), once)
	seasons.Multiply("nobody", 100)
	many := fed()
	seasons.Multiply("", 1.0/30)
	assert.InDelta(t, once, fed(), 1e-6*(1+once))
	assert.Greater(t, many, once)
	assert.Nil(t, seasons.Potential(-1))
	assert.Len(t, seasons.Potential(0), int(holding.Season.To.Sub(holding.Today))+1)
	assert.InDelta(t, float64(holding.Feed.Hay)*0.90*0.87, float64(seasons.Store()), 1e-6) // 90 % dry, 13 % wasted
}
