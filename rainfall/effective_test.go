package rainfall_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// TestEffectiveRainMeets: each pair of lines joins at its own break, 35 mm at 75 and
// 32 mm at 70; the other breaks that are about would jump (at 100 mm from 50 to 55).
func TestEffectiveRainMeets(t *testing.T) {
	for by, at := range map[rainfall.EffectiveRule]float64{rainfall.EffectiveManual: 75, rainfall.EffectiveDependable: 70, rainfall.EffectiveShort: 250} {
		under := sure[units.RainDepth](t)(rainfall.EffectiveRain(by, units.RainDepth(at-1e-9)*units.RainMillimetre))
		over := sure[units.RainDepth](t)(rainfall.EffectiveRain(by, units.RainDepth(at+1e-9)*units.RainMillimetre))
		assert.InDelta(t, float64(under), float64(over), 1e-11, by)
	}
	for _, by := range []rainfall.EffectiveRule{0, 6, -1} {
		_, err := rainfall.EffectiveRain(by, 0.06)
		assert.True(t, units.Impossible(err))
	}
}

// TestEffectiveIsNeverMore than what fell, and more rain never leaves less.
func TestEffectiveIsNeverMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		by := rainfall.EffectiveRule(rapid.IntRange(1, 5).Draw(t, "by"))
		rain := units.RainDepth(rapid.Float64Range(0, 0.6).Draw(t, "rain"))
		more := rain + units.RainDepth(rapid.Float64Range(0, 0.2).Draw(t, "more"))
		less, greater := sure[units.RainDepth](t)(rainfall.EffectiveRain(by, rain)), sure[units.RainDepth](t)(rainfall.EffectiveRain(by, more))
		assert.True(t, less >= 0 && less <= rain*(1+1e-12) && greater >= less-1e-15)
		storm, larger := sure[units.RainDepth](t)(rainfall.EffectiveOfStorm(rain)), sure[units.RainDepth](t)(rainfall.EffectiveOfStorm(more))
		assert.True(t, storm >= 0 && storm <= rain*(1+1e-12) && larger >= storm-1e-15)
		use, held := units.RainDepth(rapid.Float64Range(0, 0.3).Draw(t, "use")), units.RainDepth(rapid.Float64Range(0, 0.2).Draw(t, "held"))
		full := sure[units.RainDepth](t)(rainfall.EffectiveByUse(rain, use, held))
		assert.True(t, full >= 0 && full <= rain*(1+1e-12) && full <= use*(1+1e-12))
	})
}

// How much of 60 mm in June counts? It depends on whom I ask.
func ExampleEffectiveRain() {
	for by := rainfall.EffectiveShort; by <= rainfall.EffectiveLessFive; by++ {
		rain, _ := rainfall.EffectiveRain(by, 60*units.RainMillimetre)
		fmt.Println(by, rain.In(units.Metric))
	}
	// Output:
	// short 54.2 mm
	// manual 26 mm
	// dependable 26 mm
	// seventy 42 mm
	// less five 41.2 mm
}

// Four inches fell, the grass wanted six, half of its store is three.
func ExampleEffectiveByUse() {
	rain, err := rainfall.EffectiveByUse(4*units.RainInch, 6*units.RainInch, 3*units.RainInch)
	fmt.Println(rain.In(units.US), err)
	// Output: 2.95 in <nil>
}

// A shower of 0.8 in: how much of it may I leave off the next watering?
func ExampleEffectiveOfStorm() {
	rain, err := rainfall.EffectiveOfStorm(0.8 * units.RainInch)
	fmt.Println(rain.In(units.US), err)
	// Output: 0.7 in <nil>
}
