package herd_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/herd"
	"example.org/soum/units"
)

// TestDrinkingRows: no row twice, every span the right way round, every source
// named; the table is a copy and each row is what Drinking gives.
func TestDrinkingRows(t *testing.T) {
	seen := map[string]bool{}
	for _, row := range herd.DrinkingRows() {
		key := fmt.Sprint(row.Animal, row.By)
		assert.False(t, seen[key], key)
		seen[key] = true
		assert.True(t, 0 < row.Water.Low && row.Water.Low <= row.Water.High, key)
		assert.Regexp(t, sourceKey, row.Source, key)
		assert.Contains(t, []string{"A", "B"}, row.Mark, key)
		got, err := herd.Drinking(row.Animal, row.By, row.Head*float64(row.Days), units.High)
		require.NoError(t, err)
		same(t, key, row.Water.High, got)
	}
	herd.DrinkingRows()[0].Head = 77
	assert.NotEqual(t, 77.0, herd.DrinkingRows()[0].Head)
}

// TestDrinkingRefuses: what there is no row for comes with what there is.
func TestDrinkingRefuses(t *testing.T) {
	got, err := herd.Drinking("goose", herd.DrinkByKansas, 1, units.Low)
	assert.True(t, math.IsNaN(float64(got)))
	assert.ErrorContains(t, err, "cattle-beef")
	_, err = herd.Drinking("horse", herd.DrinkByOhio, 1, units.Low)
	assert.ErrorContains(t, err, `ohio": has no figure of "horse"`)
	assert.ErrorContains(t, err, "one of: south dakota")
	for _, head := range []float64{math.NaN(), math.Inf(1), -1} {
		_, err = herd.Drinking("horse", herd.DrinkBySouthDakota, head, units.Low)
		assert.True(t, units.Impossible(err), head)
	}
}

// TestMoreWaterInTheHeat: warmer, heavier or more milk is never less water.
func TestMoreWaterInTheHeat(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		weight := units.LiveWeight(rapid.Float64Range(200, 900).Draw(t, "weight"))
		milk := units.Milk(rapid.Float64Range(0, 50).Draw(t, "milk"))
		warm := units.Celsius(rapid.Float64Range(-20, 45).Draw(t, "warm"))
		more := rapid.Float64Range(0, 20).Draw(t, "more")
		base, _ := herd.CowWater(weight, milk, warm)
		for _, other := range []units.WaterRate{
			waterOf(herd.CowWater(weight+units.LiveWeight(more), milk, warm)),
			waterOf(herd.CowWater(weight, milk+units.Milk(more), warm)),
			waterOf(herd.CowWater(weight, milk, warm+units.Temperature(more))),
		} {
			if !(float64(other) >= float64(base)*(1-1e-12)) || !(base > 0) {
				t.Fatalf("%v, then %v", base, other)
			}
		}
		drinker := herd.BeefDrinker(rapid.IntRange(1, 5).Draw(t, "drinker"))
		if a, b := waterOf(herd.BeefWater(drinker, warm)), waterOf(herd.BeefWater(drinker, warm+units.Temperature(more))); !(float64(b) >= float64(a)*(1-1e-12)) || !(a > 0) {
			t.Fatalf("%v, then %v", a, b)
		}
		curve := herd.WaterCurve(rapid.IntRange(1, 5).Draw(t, "curve"))
		if a, b := waterOf(herd.WaterByWeight(curve, weight)), waterOf(herd.WaterByWeight(curve, weight+units.LiveWeight(more))); !(float64(b) >= float64(a)*(1-1e-12)) || !(a > 0) {
			t.Fatalf("%v, then %v", a, b)
		}
		if a, b := waterOf(herd.DairyWater(milk)), waterOf(herd.DairyWater(milk+units.Milk(more))); !(float64(b) >= float64(a)*(1-1e-12)) {
			t.Fatalf("%v, then %v", a, b)
		}
	})
}

// TestDrinkingEnums: a word that is none is refused and nothing panics.
func TestDrinkingEnums(t *testing.T) {
	for _, n := range []int{-1, 0, 6, 99} {
		_, err := herd.BeefWater(herd.BeefDrinker(n), 25)
		assert.True(t, units.Impossible(err), n)
		_, err = herd.WaterByWeight(herd.WaterCurve(n), 300)
		assert.True(t, units.Impossible(err), n)
	}
	// The printed ends themselves lie within.
	_, err := herd.BeefWater(herd.DrinkerBull, units.Fahrenheit(90))
	require.NoError(t, err)
	_, err = herd.WaterByWeight(herd.CurveDairyHeifer, 200*units.LivePound)
	require.NoError(t, err)
}

// What does a dry pregnant cow drink at 85 °F?
func ExampleBeefWater() {
	water, err := herd.BeefWater(herd.DrinkerDryCow, units.Fahrenheit(85))
	fmt.Println(water.In(units.US), err)
	// Output:
	// 15 gal/day <nil>
}

// What does a cow of 1,300 lb with 10 lb of milk drink at 90 °F?
func ExampleCowWater() {
	water, err := herd.CowWater(1300*units.LivePound, 10*units.MilkPoundPerDay, units.Fahrenheit(90))
	fmt.Println(water.In(units.US), err)
	// Output:
	// 17.4 gal/day <nil>
}

// What does a dairy cow with 100 lb of milk drink on a day of 80 °F?
func ExampleDairyWater() {
	water, err := herd.DairyWater(100 * units.MilkPoundPerDay)
	fmt.Println(water.In(units.US), err)
	// Output:
	// 45.7 gal/day <nil>
}

// What does a dairy heifer of 500 lb drink at 80 °F?
func ExampleWaterByWeight() {
	water, err := herd.WaterByWeight(herd.CurveDairyHeifer, 500*units.LivePound)
	fmt.Println(water.In(units.US), err)
	// Output:
	// 6.95 gal/day <nil>
}

// What do thirty laying hens drink?
func ExampleDrinking() {
	water, err := herd.Drinking("hen-laying", herd.DrinkByCompilation, 30, units.High)
	fmt.Println(water.In(units.US), err)
	// Output:
	// 2.25 gal/day <nil>
}

// Who prints what a dairy cow drinks?
func ExampleDrinkingRows() {
	for _, row := range herd.DrinkingRows() {
		if row.Animal == "cow-dairy" {
			fmt.Println(row.By, row.Water.Low.In(units.US), "to", row.Water.High.In(units.US), row.Mark)
		}
	}
	// Output:
	// kansas 15 gal/day to 30 gal/day A
	// ohio 25 gal/day to 25 gal/day B
	// south dakota 10 gal/day to 16 gal/day A
}

// A ewe eats 4 lb of hay of 90 % dry matter: how much water with it?
func ExampleWaterByFeed() {
	water, err := herd.WaterByFeed(herd.FeedWaterSheep, 3.6*units.PoundPerDay, units.Whole)
	fmt.Println(water.In(units.US), err)
	// Output:
	// 1 gal/day <nil>
}

// The herd drinks 300 gal a day: what must the trough give in the heat?
func ExamplePeakWater() {
	peak, err := herd.PeakWater(300 * units.GallonPerDay)
	fmt.Println(peak.In(units.US), err)
	// Output:
	// 600 gal/day <nil>
}

func waterOf(w units.WaterRate, _ error) units.WaterRate { return w }
