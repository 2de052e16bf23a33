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

// TestClemsonMisprints: four cells of the chart's row of 92 °F are printed one too
// low: by the form they are 80.8, 82.65, 84.5 and 88.3, printed 80, 82, 84 and 87.
func TestClemsonMisprints(t *testing.T) {
	for _, cell := range []struct{ humidity, printed float64 }{{40, 80}, {50, 82}, {60, 84}, {80, 87}} {
		got, err := herd.HeatIndex(herd.HeatFahrenheit, units.Fahrenheit(92), units.Fraction(cell.humidity)*units.Percent)
		require.NoError(t, err)
		assert.InDelta(t, cell.printed+1, math.Round(got), 1e-9, cell)
	}
}

// TestHeatFormsAgree within 0.2 over the chart: 76 to 100 °F, 40 to 90 %.
func TestHeatFormsAgree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		degrees := rapid.Float64Range(76, 100).Draw(t, "°F")
		humidity := units.Fraction(rapid.Float64Range(0.4, 0.9).Draw(t, "humidity"))
		f := first2(herd.HeatIndex(herd.HeatFahrenheit, units.Fahrenheit(degrees), humidity))
		c := first2(herd.HeatIndex(herd.HeatCelsius, units.Fahrenheit(degrees), humidity))
		if math.Abs(f-c) > 0.2 {
			t.Fatalf("%v and %v", f, c)
		}
		damper := first2(herd.HeatIndex(herd.HeatFahrenheit, units.Fahrenheit(degrees), humidity+0.05))
		if damper <= f {
			t.Fatalf("%v, damper %v", f, damper)
		}
	})
}

func first2(v float64, _ error) float64 { return v }

// TestHeatSteps: rising within a scale, every source named; the table is a copy.
func TestHeatSteps(t *testing.T) {
	last := map[herd.HeatScale]float64{}
	for _, step := range herd.HeatSteps() {
		assert.Greater(t, step.From, last[step.Scale])
		last[step.Scale] = step.From
		assert.Regexp(t, sourceKey, step.Source)
		assert.Contains(t, []string{"A", "B"}, step.Mark)
		got, err := herd.HeatClass(step.From, step.Scale)
		require.NoError(t, err)
		assert.Equal(t, step.Level, got)
	}
	for scale := herd.HeatScale(1); scale.String() != ""; scale++ {
		assert.Positive(t, last[scale], scale)
	}
	herd.HeatSteps()[0].From = 1
	assert.NotEqual(t, 1.0, herd.HeatSteps()[0].From)
	_, err := herd.HeatClass(math.NaN(), herd.SafetyIndex)
	assert.True(t, units.Impossible(err))
	for _, scale := range []herd.HeatScale{-1, 0, 99} {
		_, err = herd.HeatClass(80, scale)
		assert.ErrorContains(t, err, "safety index", scale)
	}
}

// How hot is a day of 88 °F and 70 % for the cows, and what does that mean?
func ExampleHeatIndex() {
	index, err := herd.HeatIndex(herd.HeatFahrenheit, units.Fahrenheit(88), 70*units.Percent)
	level, _ := herd.HeatClass(index, herd.SafetyIndex)
	fmt.Printf("%.0f %v %v\n", index, level, err)
	// Output:
	// 83 danger <nil>
}

// The same from the dew point: 31 °C with a dew point of 15.8 °C?
func ExampleDewPointHeatIndex() {
	index, err := herd.DewPointHeatIndex(31, 15.8)
	fmt.Printf("%.0f %v\n", index, err)
	// Output:
	// 78 <nil>
}

// What do wind and sun make of an index of 76?
func ExampleHeatAdjusted() {
	index, err := herd.HeatAdjusted(76, 2*units.MetrePerSecond, 600)
	fmt.Printf("%.1f %v\n", index, err)
	// Output:
	// 80.6 <nil>
}

// From what index on is a dairy cow of high yield stressed?
func ExampleHeatClass() {
	for _, index := range []float64{66, 70} {
		level, err := herd.HeatClass(index, herd.HighYieldIndex)
		fmt.Println(index, level, err)
	}
	// Output:
	// 66 none <nil>
	// 70 stressed <nil>
}

// Where do the classes of the livestock safety index begin?
func ExampleHeatSteps() {
	for _, step := range herd.HeatSteps() {
		if step.Scale == herd.SafetyIndex {
			fmt.Println(step.From, step.Level)
		}
	}
	// Output:
	// 75 alert
	// 79 danger
	// 84 emergency
}
