package rainfall_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// It has rained and the soil is 2 mm short of full. May the cows go in?
func ExampleGroundFor() {
	ground, err := rainfall.GroundFor(2 * units.RainMillimetre)
	fmt.Println(ground, err)
	// Output: soft <nil>
}

// What will it cost me if they do?
func ExamplePuggingLoss() {
	least, _ := rainfall.PuggingLoss(units.Low)
	most, err := rainfall.PuggingLoss(units.High)
	fmt.Println(least.In(units.US), "to", most.In(units.US), "of a year's grass", err)
	// Output: 16 % to 80 % of a year's grass <nil>
}

// TestFirmDeficit holds the limit on either side of it.
func TestFirmDeficit(t *testing.T) {
	assert.InDelta(t, 0.003, float64(rainfall.FirmDeficit()), 1e-12) // printed: 3 mm
	for deficit, want := range map[units.RainDepth]rainfall.Ground{rainfall.FirmDeficit(): rainfall.GroundFirm, rainfall.FirmDeficit() - 1e-9: rainfall.GroundSoft} {
		got, err := rainfall.GroundFor(deficit)
		require.NoError(t, err)
		assert.Equal(t, want, got)
	}
}

// How dry must it be before they may go back in?
func ExampleFirmDeficit() {
	fmt.Println(rainfall.FirmDeficit().In(units.Metric), "short of full")
	// Output: 3 mm short of full
}
