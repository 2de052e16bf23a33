package grazing_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/grazing"
	"example.org/soum/units"
)

func TestPaddocksAndRestAreInverse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rest := drawn(t, "rest", 7, 120, units.Day)
		stay := drawn(t, "stay", 0.5, 14, units.Day)
		groups := float64(rapid.IntRange(1, 4).Draw(t, "groups"))
		paddocks, err := grazing.Paddocks(rest, stay, groups)
		require.NoError(t, err)
		back, err := grazing.Rest(stay, paddocks, groups)
		require.NoError(t, err)
		nearly(t, rest, back)

		// rounded up, the rest is kept and less than one stay is added
		kept, err := grazing.Rest(stay, math.Ceil(paddocks-1e-9), groups)
		require.NoError(t, err)
		assert.GreaterOrEqual(t, float64(kept), float64(rest)*(1-1e-9))
		assert.Less(t, float64(kept), float64(rest+stay)*(1+1e-9))

		// one round is the rest and one stay of every group
		cycle, err := grazing.Cycle(stay, paddocks)
		require.NoError(t, err)
		nearly(t, rest+stay*units.Days(groups), cycle)
	})
}

func TestPaddocksAddUpToTheLand(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		area := drawn(t, "area", 0.1, 500, units.Acre)
		paddocks := float64(rapid.IntRange(1, 60).Draw(t, "paddocks"))
		paddock, err := grazing.PaddockArea(area, paddocks)
		require.NoError(t, err)
		whole, err := grazing.LandForPaddocks(paddock, paddocks)
		require.NoError(t, err)
		nearly(t, area, whole)

		// with a paddock a day the day's land is the paddock
		daily, err := grazing.DailyArea(area, units.Days(paddocks))
		require.NoError(t, err)
		nearly(t, paddock, daily)
	})
}

// More groups than paddocks have nowhere to stand.
func TestRestRefusesMoreGroupsThanPaddocks(t *testing.T) {
	rest, err := grazing.Rest(3*units.Day, 2, 3)
	assert.True(t, math.IsNaN(float64(rest)))
	var domain *units.DomainError
	require.ErrorAs(t, err, &domain)
	assert.Equal(t, "groups", domain.Argument)
}
