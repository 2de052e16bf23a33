package herd_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"example.org/soum/herd"
	"example.org/soum/units"
)

// TestWaterLimits: rising within a scale and sort, worse and worse, every source
// named; the table is a copy.
func TestWaterLimits(t *testing.T) {
	type key struct {
		scale herd.WaterScale
		stock herd.Drinkers
	}
	last := map[key]herd.WaterLimit{}
	scales := map[herd.WaterScale]bool{}
	for _, limit := range herd.WaterLimits() {
		k := key{limit.Scale, limit.For}
		assert.Greater(t, limit.From, last[k].From, k)
		assert.Greater(t, limit.Grade, last[k].Grade, k)
		last[k] = limit
		scales[limit.Scale] = true
		assert.Regexp(t, sourceKey, limit.Source)
		assert.Contains(t, []string{"A", "B"}, limit.Mark)
	}
	for scale := herd.WaterScale(1); scale.String() != ""; scale++ {
		assert.True(t, scales[scale], scale)
	}
	herd.WaterLimits()[0].From = 1
	assert.NotEqual(t, 1.0, herd.WaterLimits()[0].From)
}

// TestWaterQualityRefuses: a sort that the scale has no limits for is not good
// water.
func TestWaterQualityRefuses(t *testing.T) {
	_, err := herd.WaterQuality(10, herd.SouthDakotaNitrate, herd.DrinkersPoultry)
	assert.ErrorContains(t, err, "one of: grown")
	_, err = herd.WaterQuality(10, herd.DakotaSulfate, herd.DrinkersBreeding)
	assert.ErrorContains(t, err, "one of: grown, young")
	for _, amount := range []float64{-1, math.NaN(), math.Inf(1)} {
		_, err = herd.WaterQuality(amount, herd.MontanaSolids, herd.DrinkersGrown)
		assert.True(t, units.Impossible(err), amount)
	}
	_, err = herd.WaterQuality(10, 99, herd.DrinkersGrown)
	assert.Error(t, err)
	// Nitrate as NO3 is 4.43 times its nitrogen: 440 and 1,300 are 100 and 300.
	assert.InDelta(t, 100, 440/4.43, 1)
	assert.InDelta(t, 300, 1300/4.43, 7)
}

// The pond has 5,600 ppm of dissolved solids: may the dry cows and the hens have it?
func ExampleWaterQuality() {
	for _, stock := range []herd.Drinkers{herd.DrinkersGrown, herd.DrinkersBreeding, herd.DrinkersPoultry} {
		quality, err := herd.WaterQuality(5600, herd.MontanaSolids, stock)
		fmt.Println(stock, quality, err)
	}
	// Output:
	// grown reasonable <nil>
	// breeding unfit <nil>
	// poultry unfit <nil>
}

// Who draws the line for sulfate where?
func ExampleWaterLimits() {
	for _, limit := range herd.WaterLimits() {
		if limit.Grade == herd.GradeUnfit && limit.Scale >= herd.DakotaSulfate && limit.Scale <= herd.LaboratorySulfate {
			fmt.Println(limit.Scale, limit.For, limit.From)
		}
	}
	// Output:
	// dakota sulfate grown 1000
	// dakota sulfate young 500
	// dakota sulfate earlier grown 1500
	// south dakota sulfate grown 3000
	// canadian sulfate grown 2000
	// saskatchewan sulfate grown 1000
	// laboratory sulfate grown 1000
}

// The meter shows 8 mmho/cm: how much is dissolved?
func ExampleDissolvedSolids() {
	ppm, err := herd.DissolvedSolids(8)
	fmt.Println(ppm, err)
	// Output:
	// 5120 <nil>
}

// Water of 2,000 ppm sulfate, 15 gal of it with 12 kg of feed at 0.2 % sulfur: is that
// over the limit of 0.5 %?
func ExampleDietSulfur() {
	share, err := herd.DietSulfur(2000, 15*units.GallonPerDay, 12*units.KilogramPerDay, 0.2*units.Percent)
	fmt.Printf("%.2f %% %v\n", share.Percent(), err)
	// Output:
	// 0.52 % <nil>
}
