package herd_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/herd"
	"example.org/soum/units"
)

// TestTapeInInchesAndMetres: the metric rules are those in inches within 1 %.
func TestTapeInInchesAndMetres(t *testing.T) {
	for _, pair := range [][2]herd.TapeRule{{herd.TapeHorse, herd.TapeHorseMetric}, {herd.TapePig, herd.TapePigMetric}} {
		inches, err := herd.TapeWeight(1.7, 1.6, pair[0])
		require.NoError(t, err)
		metric, err := herd.TapeWeight(1.7, 1.6, pair[1])
		require.NoError(t, err)
		assert.InEpsilon(t, float64(inches), float64(metric), 0.01)
		assert.NotEqual(t, inches, metric)
	}
}

// TestTapeGrowsAsTheCube: twice as long and round is eight times as heavy, where
// nothing is added.
func TestTapeGrowsAsTheCube(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		girth := units.Length(rapid.Float64Range(0.2, 3).Draw(t, "girth"))
		length := units.Length(rapid.Float64Range(0.2, 3).Draw(t, "length"))
		rule := rapid.SampledFrom([]herd.TapeRule{herd.TapeCattle, herd.TapeSmall, herd.TapeHorse, herd.TapeHorseMetric, herd.TapePig, herd.TapePigMetric}).Draw(t, "rule")
		small, err := herd.TapeWeight(girth, length, rule)
		if err != nil {
			t.Fatal(err)
		}
		large, _ := herd.TapeWeight(2*girth, 2*length, rule)
		if !near(float64(large), 8*float64(small)) {
			t.Fatalf("%v then %v", small, large)
		}
	})
}

// TestGirthRises: a wider goat or foal is never lighter, within the chart or not.
func TestGirthRises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		girth := units.Length(rapid.Float64Range(26, 40).Draw(t, "girth")) * units.Inch
		more := units.Length(rapid.Float64Range(0, 10).Draw(t, "more")) * units.Inch
		for rule := herd.GirthGoat; rule <= herd.GirthYoungFoal; rule++ {
			rises(t, rule.String(), first(herd.GirthWeight(girth, rule)), first(herd.GirthWeight(girth+more, rule)))
		}
	})
}

// A bull is 60 in round and 53 in long: what does he weigh?
func ExampleTapeWeight() {
	weight, err := herd.TapeWeight(60*units.Inch, 53*units.Inch, herd.TapeCattle)
	fmt.Printf("%.0f lb %v\n", weight.Pounds(), err)
	// Output:
	// 636 lb <nil>
}

// A dairy doe is 32 in round: what does she weigh?
func ExampleGirthWeight() {
	weight, err := herd.GirthWeight(32*units.Inch, herd.GirthGoat)
	fmt.Println(weight.In(units.US), err)
	_, err = herd.GirthWeight(22*units.Inch, herd.GirthYoungFoal)
	fmt.Println(err)
	// Output:
	// 100 lb <nil>
	// herd.GirthWeight: girth is 22 in, must be above 25.1 in
}
