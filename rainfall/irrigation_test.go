package rainfall_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// TestCropUseRows: no row twice, every span the right way round; roots as printed (a
// second reading: alfalfa 4 ft, small grains 3, pasture 2, corn 3.5, turf 1); the
// table is a copy.
func TestCropUseRows(t *testing.T) {
	roots := map[string]float64{"alfalfa-utah": 4, "small-grains-utah": 3, "pasture-grass-utah": 2, "corn-utah": 3.5, "turf-utah": 1}
	seen := map[string]bool{}
	for _, row := range rainfall.CropUseRows() {
		assert.False(t, seen[row.Crop], row.Crop)
		seen[row.Crop] = true
		assert.True(t, 0 < row.Use.Low && row.Use.Low <= row.Use.High, row.Crop)
		assert.InDelta(t, roots[row.Crop], row.Root.Feet(), 1e-12, row.Crop)
		assert.NotEmpty(t, row.Source)
		assert.Contains(t, "AB", row.Mark)
	}
	rainfall.CropUseRows()[0].Crop = "x"
	assert.Equal(t, "alfalfa-utah", rainfall.CropUseRows()[0].Crop)
	got, err := rainfall.CropUse("hops", units.Low)
	unknown(t, err, "one of: alfalfa-utah")
	assert.True(t, math.IsNaN(float64(got)))
}

// What shall I give when half of what two feet of loam hold is gone?
func ExampleIrrigationDepth() {
	depth, err := rainfall.IrrigationDepth(2*units.Foot, units.HoldingInchPerFoot, 50*units.Percent)
	fmt.Println(depth.In(units.US), err)
	// Output: 1 in <nil>
}

// What must I pump for 0.75 in, with a quarter lost?
func ExampleGrossIrrigation() {
	gross, err := rainfall.GrossIrrigation(0.75*units.RainInch, 75*units.Percent)
	fmt.Println(gross.In(units.US), err)
	// Output: 1 in <nil>
}

// How long will an inch do at 0.16 in a day?
func ExampleIrrigationInterval() {
	days, err := rainfall.IrrigationInterval(units.RainInch, 0.16*units.RainInchPerDay)
	fmt.Println(days.In(units.US), err)
	// Output: 6.25 days <nil>
}

// How long must a sprinkler of a quarter inch an hour run for 2 in?
func ExampleIrrigationTime() {
	time, err := rainfall.IrrigationTime(2*units.RainInch, 0.25*units.RainInchPerHour)
	fmt.Println(time.Hours(), "h", err)
	// Output: 8 h <nil>
}

// What does pasture use in a week in Utah?
func ExampleCropUse() {
	low, _ := rainfall.CropUse("pasture-grass-utah", units.Low)
	high, err := rainfall.CropUse("pasture-grass-utah", units.High)
	fmt.Println(units.Number(low.InchesPerWeek()), units.Number(high.InchesPerWeek()), "in/week", err)
	// Output: 1 1.5 in/week <nil>
}

// How deep do its roots go?
func ExampleCropUseRows() {
	for _, row := range rainfall.CropUseRows() {
		if row.Crop == "pasture-grass-utah" {
			fmt.Println(row.Root.In(units.US), row.Source)
		}
	}
	// Output: 2 ft UTAH-IRRIGATION
}
