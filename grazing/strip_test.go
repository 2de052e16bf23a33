package grazing_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/grazing"
	"example.org/soum/units"
)

func TestStripLengthAndStripAreaAreInverse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		area := drawn(t, "area", 0.001, 20, units.Acre)
		width := drawn(t, "width", 5, 1000, units.Foot)
		length, err := grazing.StripLength(area, width)
		require.NoError(t, err)
		back, err := grazing.StripArea(length, width)
		require.NoError(t, err)
		nearly(t, area, back)

		// half the width takes twice the length
		twice, err := grazing.StripLength(area, width/2)
		require.NoError(t, err)
		require.Equal(t, 2*length, twice)
	})
}

// TestPartOfTheDay is the printed case whose inputs stand open: 42 smaller cows, 70
// % of their feed, twelve hours, 2,000 lb/ac, under a third of an acre. With the
// neighbouring example's 50 cows on 1.3 acres of 1,600 lb/ac a cow eats 41.6 lb,
// and 42 × 41.6 × 0.7 × 0.5 ÷ 2,000 = 0.306 acre.
func TestPartOfTheDay(t *testing.T) {
	each := 1.3 * 1600 / 50
	assert.InDelta(t, 41.6, each, 1e-9)
	demand, err := grazing.PartOfDayDemand(units.Demand(42*each)*units.PoundPerDay, 70*units.Percent, 50*units.Percent)
	require.NoError(t, err)
	area, err := grazing.StayArea(demand, units.Day, 2000*units.PoundPerAcre, units.Whole)
	require.NoError(t, err)
	assert.InDelta(t, 0.306, area.Acres(), 0.0005)
	assert.Less(t, area.Acres(), 1.0/3)
}

// A strip a day for a week and no back wire: how long is the first one open?
func ExampleStripOpen() {
	open, _ := grazing.StripOpen(units.Day, 7)
	fmt.Println(open.In(units.US))
	// Output: 7 days
}

// And is it bitten again?
func ExampleRegrowthBitten() {
	least, _ := grazing.RegrowthBitten(7*units.Day, 0)
	most, _ := grazing.RegrowthBitten(7*units.Day, units.Whole)
	fmt.Println(least.In(units.US), "to", most.In(units.US))
	// Output: 2 days to 3 days
}

// A lane of 660 ft in strips of 44 ft: how many days?
func ExampleStripsPerLane() {
	strips, _ := grazing.StripsPerLane(660*units.Foot, 44*units.Foot)
	fmt.Println(strips)
	// Output: 15
}

// The herd eats 1,747 lb a day, 70 % of it on pasture, half of that by night.
func ExamplePartOfDayDemand() {
	demand, _ := grazing.PartOfDayDemand(1747*units.PoundPerDay, 70*units.Percent, 50*units.Percent)
	fmt.Println(demand.In(units.US))
	// Output: 611 lb/day
}
