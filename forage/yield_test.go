package forage_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"example.org/soum/forage"
	"example.org/soum/units"
)

// TestYieldRows: no crop twice, yields climb or stay, the table a copy.
func TestYieldRows(t *testing.T) {
	seen := map[string]bool{}
	for _, row := range forage.YieldRows() {
		assert.False(t, seen[row.Crop], row.Crop)
		seen[row.Crop] = true
		assert.True(t, 0 < row.Low && row.Low <= row.Middle && row.Middle <= row.High, row.Crop)
		assert.Regexp(t, keyOfSource, row.Source)
		assert.Equal(t, "A", row.Mark)
	}
	forage.YieldRows()[0].Low = 0
	assert.NotZero(t, forage.YieldRows()[0].Low)
	yield, err := forage.CropYield("moss", units.Low)
	assert.True(t, math.IsNaN(float64(yield)))
	assert.ErrorContains(t, err, "corn-stover")
}

// What do turnips sown in summer grow?
func ExampleCropYield() {
	low, _ := forage.CropYield("brassica-sown-in-summer", units.Low)
	high, _ := forage.CropYield("brassica-sown-in-summer", units.High)
	fmt.Println(low.In(units.US), "to", high.In(units.US))
	// Output: 4,000 lb/ac to 8,000 lb/ac
}

// Which crops have yields of Penn State?
func ExampleYieldRows() {
	count := 0
	for _, row := range forage.YieldRows() {
		if row.Source == "PSU-MONTHS" {
			count++
		}
	}
	fmt.Println(count)
	// Output: 10
}
