package rainfall_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// TestPassRows is a second reading of the prints.
func TestPassRows(t *testing.T) {
	var got []string
	for _, r := range rainfall.PassRows() {
		got = append(got, fmt.Sprintf("%s %.1f-%.1f in %g-%g %s", r.Source, r.Water.Low.Inches(), r.Water.High.Inches(), r.Passes.Low, r.Passes.High, r.Mark))
		assert.NotEmpty(t, r.Name)
		assert.NotEmpty(t, r.Text)
	}
	assert.Equal(t, []string{
		"HFG-CYCLES 35.0-35.0 in 5-5 A", "IDAHO-DRYLAND 14.0-14.0 in 1-1 B", "CLOVIS-2006 19.5-20.0 in 5-5 A",
		"CALIFORNIA-CUTS 0.0-0.0 in 6-8 B", "MICHIGAN-CUTS 0.0-0.0 in 2-3 B", "MICHIGAN-CUTS 0.0-0.0 in 5-5 B",
	}, got)
	rainfall.PassRows()[0].Name = ""
	assert.NotEmpty(t, rainfall.PassRows()[0].Name)
}

// TestRainForPassesIsTheInverse of Passes, across the gap too.
func TestRainForPassesIsTheInverse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rain := units.RainDepth(rapid.Float64Range(0, 80).Draw(t, "rain")) * units.RainInch
		passes, ranged := rainfall.Passes(rain)
		back, err := rainfall.RainForPasses(passes)
		assert.InDelta(t, rain.Inches(), back.Inches(), 1e-9)
		for _, end := range []float64{10, 25, 30} { // on an end itself the last bit decides
			if math.Abs(rain.Inches()-end) < 1e-9 {
				return
			}
		}
		assert.Equal(t, ranged == nil, err == nil)
	})
}

// TestWaterUseRows: no name twice, spans the right way round, sources and marks, and
// each list a copy.
func TestWaterUseRows(t *testing.T) {
	seen := map[string]bool{}
	for _, r := range rainfall.WaterUseRows() {
		assert.False(t, seen[r.Name], r.Name)
		seen[r.Name] = true
		assert.True(t, 0 <= r.Use.Low && r.Use.Low <= r.Use.High, r.Name)
		assert.Regexp(t, `^[A-Z][A-Z0-9]*(-[A-Z0-9]+)+$`, r.Source)
		assert.Contains(t, []string{"A", "B"}, r.Mark)
		assert.NotEmpty(t, r.Water)
	}
	rainfall.WaterUseRows()[0].Name = ""
	assert.NotEmpty(t, rainfall.WaterUseRows()[0].Name)
	use, err := rainfall.WaterUse("rye", units.Low)
	unknown(t, err, "oats-nebraska")
	assert.True(t, math.IsNaN(float64(use)))
}

func TestForageByDateRows(t *testing.T) {
	for _, r := range rainfall.ForageByDateRows() {
		assert.True(t, 0 < r.Grown.Low && r.Grown.Low <= r.Grown.High && r.Grown.High < 1)
		got, err := rainfall.GrownShare(r.Place, r.Month, units.High)
		require.NoError(t, err)
		assert.Equal(t, r.Grown.High, got)
	}
	_, err := rainfall.GrownShare("miles-city", 5, units.Low)
	unknown(t, err, `rainfall.GrownShare: month is "5": no figure of this month of "miles-city"; it takes one of: 7`)
	rainfall.ForageByDateRows()[0].Place = ""
	assert.NotEmpty(t, rainfall.ForageByDateRows()[0].Place)
}

// TestCriticalMonths is a second reading of the prints.
func TestCriticalMonths(t *testing.T) {
	want := map[string]string{
		"mixed-grass": "4-6 A", "warm-season-range": "5-7 B", "warm-season-range-nebraska": "6-7 B", "wyoming-central-and-eastern": "3-5 B",
		"stipa-bouteloua-prairie": "4-7 A", "miles-city": "4-5 A", "streeter": "5-6 A", "cheyenne": "4-6 A",
	}
	got := map[string]string{}
	for _, r := range rainfall.CriticalMonths() {
		got[r.Place] = fmt.Sprintf("%d-%d %s", r.First, r.Last, r.Mark)
	}
	assert.Equal(t, want, got)
	rainfall.CriticalMonths()[0].Place = ""
	assert.NotEmpty(t, rainfall.CriticalMonths()[0].Place)
}

// TestYieldsRise: more water is never less grass or stock, and use undoes yield.
func TestYieldsRise(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rain := units.RainDepth(rapid.Float64Range(1, 1000).Draw(t, "rain")) * mm
		more := rain + units.RainDepth(rapid.Float64Range(0, 100).Draw(t, "more"))*mm
		for _, line := range []rainfall.RainLine{rainfall.LineShortGrass, rainfall.LineGrassland} {
			a, _ := rainfall.YieldByRain(line, rain)
			b, _ := rainfall.YieldByRain(line, more)
			assert.LessOrEqual(t, a, b)
		}
		for _, rule := range []rainfall.StockingRule{rainfall.StockingFrench, rainfall.StockingWesternAustralia} {
			a, _ := rainfall.PotentialStocking(rule, rain)
			b, _ := rainfall.PotentialStocking(rule, more)
			assert.LessOrEqual(t, a, b)
		}
		use := units.RainUse(rapid.Float64Range(0, 40).Draw(t, "use")) * units.UseKilogramPerHectareMillimetre
		yield, err := rainfall.YieldOfWater(rain, use)
		require.NoError(t, err)
		back, err := rainfall.UseOfWater(yield, rain)
		require.NoError(t, err)
		assert.InDelta(t, float64(use), float64(back), 1e-12)
	})
	_, err := rainfall.YieldByRain(rainfall.LineGrassland, 40*mm)
	assert.ErrorContains(t, err, "at least 56.6667 mm")
	_, err = rainfall.PotentialStocking(rainfall.StockingFrench, 200*mm)
	assert.ErrorContains(t, err, "at least 250 mm")
	_, err = rainfall.PotentialStocking(rainfall.StockingWesternAustralia, 20*mm)
	assert.ErrorContains(t, err, "at least 67.8571 mm")
	for _, n := range []int{-1, 0, 3} {
		_, err = rainfall.YieldByRain(rainfall.RainLine(n), 1)
		assert.True(t, units.Impossible(err))
		_, err = rainfall.PotentialStocking(rainfall.StockingRule(n), 1)
		assert.True(t, units.Impossible(err))
	}
}

func BenchmarkYieldByRain(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		_, _ = rainfall.YieldByRain(rainfall.LineShortGrass, 0.1)
	}
}

func BenchmarkPotentialStocking(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		_, _ = rainfall.PotentialStocking(rainfall.StockingFrench, 0.6)
	}
}

// I want five passes. How much rain is that?
func ExampleRainForPasses() {
	rain, err := rainfall.RainForPasses(5)
	fmt.Println(rain.In(units.US), err)
	// Output: 35 in <nil>
}

// Five cuts on 20 in of water: how much is that for each?
func ExampleRainPerPass() {
	each, _ := rainfall.RainPerPass(20*units.RainInch, 5)
	fmt.Println(each.In(units.US))
	// Output: 4 in
}

// With 14 in of rain, what do another 10 in of water bring?
func ExamplePassesAdded() {
	added, err := rainfall.PassesAdded(14*units.RainInch, 10*units.RainInch)
	fmt.Println(units.Number(added), err)
	// Output: 1 <nil>
}

// What speaks against the rule?
func ExamplePassRows() {
	r := rainfall.PassRows()[1]
	fmt.Println(r.Passes.Low, "cut on", r.Water.Low.In(units.US)+":", r.Text)
	// Output: 1 cut on 14 in: cold dryland at 5,000 ft, a season of about 60 days, 1.3 t/ac
}

// May and June brought 5 in. What will my short grass yield?
func ExampleYieldByRain() {
	yield, _ := rainfall.YieldByRain(rainfall.LineShortGrass, 5*units.RainInch)
	fmt.Println(yield.In(units.US))
	// Output: 420 lb/ac
}

// My alfalfa used 100 cm of water.
func ExampleAlfalfaYield() {
	yield, _ := rainfall.AlfalfaYield(100 * units.RainCentimetre)
	fmt.Printf("%.2f t/ha\n", float64(yield/units.TonnePerHectare))
	// Output: 12.14 t/ha
}

// What do 15 in of rain make on range in Kansas, at the low end?
func ExampleYieldOfWater() {
	use, _ := rainfall.WaterUse("range-colorado-kansas", units.Low)
	yield, _ := rainfall.YieldOfWater(15*units.RainInch, use)
	fmt.Println(yield.In(units.US))
	// Output: 870 lb/ac
}

// 14,260 kg of lucerne on 670 mm: is that good?
func ExampleUseOfWater() {
	use, _ := rainfall.UseOfWater(14260*units.KilogramPerHectare, 670*mm)
	fmt.Println(use.In(units.Metric))
	// Output: 21.3 kg/ha/mm
}

// What does an inch of rain grow in Texas?
func ExampleWaterUse() {
	low, _ := rainfall.WaterUse("range-texas", units.Low)
	high, _ := rainfall.WaterUse("range-texas", units.High)
	fmt.Println(low.In(units.US), "to", high.In(units.US))
	// Output: 74 lb/ac/in to 144 lb/ac/in
}

// Which water does the figure of lucerne count?
func ExampleWaterUseRows() {
	for _, r := range rainfall.WaterUseRows() {
		if r.Name == "lucerne-canterbury" {
			fmt.Println(r.Water)
		}
	}
	// Output: water used, dryland
}

// What could land with 650 mm a year carry at best?
func ExamplePotentialStocking() {
	head, _ := rainfall.PotentialStocking(rainfall.StockingFrench, 650*mm)
	fmt.Println(head.In(units.Metric))
	// Output: 20.8 head/ha
}

// How much of the year's grass is made by 1 June?
func ExampleGrownShare() {
	share, _ := rainfall.GrownShare("northern-great-plains", 6, units.Middle)
	fmt.Println(share.In(units.US))
	// Output: 69 %
}

// Who prints such shares?
func ExampleForageByDateRows() {
	fmt.Println(rainfall.ForageByDateRows()[0].Source)
	// Output: HEITSCHMIDT-2004
}

// Which months' rain decides in Wyoming?
func ExampleCriticalMonths() {
	for _, r := range rainfall.CriticalMonths() {
		if r.Place == "wyoming-central-and-eastern" {
			fmt.Println(r.First, "to", r.Last)
		}
	}
	// Output: 3 to 5
}
