package rainfall_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// TestCropRows: no row twice, the span the right way round; the table is a copy.
func TestCropRows(t *testing.T) {
	seen := map[string]bool{}
	for _, row := range rainfall.CropRows() {
		assert.False(t, seen[row.Crop], row.Crop)
		seen[row.Crop] = true
		assert.True(t, row.MidLow > 0 && row.MidLow <= row.MidHigh && row.Initial >= 0 && row.Late >= 0, row.Crop)
		assert.Contains(t, row.Source, "FAO-56", row.Crop)
		assert.Equal(t, "B", row.Mark, row.Crop)
	}
	rainfall.CropRows()[0].Crop = "x"
	assert.Equal(t, "pasture-rotated", rainfall.CropRows()[0].Crop)

	_, err := rainfall.CropCoefficient("hops", rainfall.StageMid, units.Low)
	unknown(t, err, "one of: pasture-rotated, pasture-extensive")
	_, err = rainfall.CropCoefficient("open-water-shallow", rainfall.StageInitial, units.Low)
	unknown(t, err, `rainfall.CropCoefficient: stage is "initial": no coefficient of "open-water-shallow"; it takes one of: mid`)
	got, err := rainfall.CropCoefficient("turf-cool", 4, units.Low)
	unknown(t, err, `stage is "4": no coefficient of "turf-cool"; it takes one of: initial, mid, late`)
	assert.True(t, math.IsNaN(got))
	_, err = rainfall.CropCoefficient("turf-cool", 0, units.Low)
	unknown(t, err, `stage is "0"`)
}

// What does rotated pasture use at full cover?
func ExampleCropCoefficient() {
	low, _ := rainfall.CropCoefficient("pasture-rotated", rainfall.StageMid, units.Low)
	high, err := rainfall.CropCoefficient("pasture-rotated", rainfall.StageMid, units.High)
	fmt.Println(low, high, err)
	// Output: 0.85 1.05 <nil>
}

// Which hay uses most?
func ExampleCropRows() {
	most := rainfall.CropRow{}
	for _, row := range rainfall.CropRows() {
		if row.MidHigh > most.MidHigh {
			most = row
		}
	}
	fmt.Println(most.Crop, most.MidHigh)
	// Output: alfalfa-hay-one-cut 1.2
}

// Reference grass uses 5 mm today. What does my pasture use?
func ExampleCropWater() {
	used, err := rainfall.CropWater(5*units.RainMillimetrePerDay, 0.95)
	fmt.Println(used.In(units.Metric), err)
	// Output: 4.75 mm/day <nil>
}
