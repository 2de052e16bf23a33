package grazing_test

import (
	"fmt"
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

// TestRestIsRestingShareOfTheRound: each paddock rests for that share of a round.
func TestRestIsRestingShareOfTheRound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		paddocks := float64(rapid.IntRange(2, 60).Draw(t, "paddocks"))
		groups := float64(rapid.IntRange(1, int(paddocks)).Draw(t, "groups"))
		stay := drawn(t, "stay", 0.5, 7, units.Day)
		rest, err := grazing.Rest(stay, paddocks, groups)
		require.NoError(t, err)
		round, err := grazing.Cycle(stay, paddocks)
		require.NoError(t, err)
		share, err := grazing.RestingShare(paddocks, groups)
		require.NoError(t, err)
		require.InDelta(t, float64(rest), float64(share)*float64(round), 1e-9*float64(round))
		if paddocks > groups {
			back, err := grazing.StayOfRest(rest, paddocks, groups)
			require.NoError(t, err)
			nearly(t, stay, back)
		}
		build, err := grazing.PaddocksToBuild(rest, stay, groups)
		require.NoError(t, err)
		require.Equal(t, paddocks, build)
	})
}

// TestPaddocksToBuildKeepsTheRest: never less rest than was wanted, and one paddock
// fewer would give less.
func TestPaddocksToBuildKeepsTheRest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rest, stay := drawn(t, "rest", 5, 90, units.Day), drawn(t, "stay", 0.25, 10, units.Day)
		groups := float64(rapid.IntRange(1, 4).Draw(t, "groups"))
		n, err := grazing.PaddocksToBuild(rest, stay, groups)
		require.NoError(t, err)
		kept, err := grazing.Rest(stay, n, groups)
		require.NoError(t, err)
		require.GreaterOrEqual(t, float64(kept), float64(rest)*(1-1e-8))
		require.Less(t, float64(stay)*(n-1-groups), float64(rest))
	})
}

// Twelve paddocks, a leader and a follower: how much of the farm rests?
func ExampleRestingShare() {
	share, _ := grazing.RestingShare(12, 2)
	fmt.Println(share.In(units.US))
	// Output: 83.3 %
}

// Five weeks of rest, stays of three days, one herd: how many paddocks?
func ExamplePaddocksToBuild() {
	paddocks, _ := grazing.PaddocksToBuild(35*units.Day, 3*units.Day, 1)
	fmt.Println(paddocks)
	// Output: 13
}

// I have eight paddocks and want 35 days of rest. How long do they stay?
func ExampleStayOfRest() {
	stay, _ := grazing.StayOfRest(35*units.Day, 8, 1)
	fmt.Println(stay.In(units.US))
	// Output: 5 days
}
