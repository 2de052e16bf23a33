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

// Forty-five ewes stand on an acre and a half today.
func ExampleHeadDensity() {
	density, _ := grazing.HeadDensity(45, 1.5*units.Acre)
	fmt.Println(density.In(units.US))
	// Output: 30 head/ac
}

// The weight on the ground is the same weight whatever the ground: density
// times area.
func TestStockDensityHalvesOnTwiceTheLand(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		weight := drawn(t, "weight", 1, 1e5, units.LiveKilogram)
		area := drawn(t, "area", 0.01, 100, units.Hectare)
		one, err := grazing.StockDensity(weight, area)
		require.NoError(t, err)
		two, err := grazing.StockDensity(weight, 2*area)
		require.NoError(t, err)
		assert.Equal(t, one, 2*two)
	})
}

// Sixteen dry cows of 1,000 lb stand on two acres today. How dense is that?
func ExampleStockDensity() {
	density, _ := grazing.StockDensity(16*1000*units.LivePound, 2*units.Acre)
	fmt.Println(density.In(units.US))
	// Output: 8,000 lb/ac
}
