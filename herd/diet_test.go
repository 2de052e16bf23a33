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

// TestOverlapRows: no row twice, every span the right way round, every source
// named; the table is a copy.
func TestOverlapRows(t *testing.T) {
	seen := map[string]bool{}
	for _, row := range herd.OverlapRows() {
		assert.False(t, seen[row.Name], row.Name)
		seen[row.Name] = true
		assert.True(t, 0 < row.Share.Low && row.Share.Low <= row.Share.High && row.Share.High < 1, row.Name)
		assert.Regexp(t, sourceKey, row.Source, row.Name)
		assert.Contains(t, []string{"A", "B"}, row.Mark, row.Name)
	}
	herd.OverlapRows()[0].Name = "x"
	assert.NotEqual(t, "x", herd.OverlapRows()[0].Name)
	_, err := herd.PrintedOverlap("cattle-goat", units.Low)
	assert.ErrorContains(t, err, "sheep-goat-summer")
}

// TestDietsOfOtherKinds: no printed diet is none here.
func TestDietsOfOtherKinds(t *testing.T) {
	for _, kind := range []herd.Kind{-1, 0, herd.Pigs, herd.Geese, herd.Donkeys, 99} {
		got, err := herd.DietShare(kind, herd.PlantsGrass, 0)
		assert.True(t, units.Impossible(err) && math.IsNaN(float64(got)), kind)
	}
	_, err := herd.DietShare(herd.Geese, herd.PlantsGrass, 0)
	assert.ErrorContains(t, err, "one of: cattle, sheep, goats, horses")
	assert.NotContains(t, err.Error(), "pigs")
	// Goats' spans add up to 60 to 110 %, as told in the doc.
	var low, high float64
	for plants := herd.PlantsGrass; plants <= herd.PlantsBrowse; plants++ {
		low += first(herd.DietShare(herd.Goats, plants, 0))
		high += first(herd.DietShare(herd.Goats, plants, units.Whole))
	}
	assert.InDelta(t, 0.60, low, 1e-9)
	assert.InDelta(t, 1.10, high, 1e-9)
}

// TestDietOverlapRefuses what is no diet.
func TestDietOverlapRefuses(t *testing.T) {
	for _, pair := range [][2][]units.Fraction{
		{{0.5, 0.5}, {1}},
		{{0.5, -0.1}, {0.5, 0.5}},
		{{0.5, 0.6}, {0.5, 0.5}},
		{{0.5, 0.5}, {0.5, math.MaxFloat64}},
		{{units.Fraction(math.NaN())}, {1}},
	} {
		got, err := herd.DietOverlap(pair[0], pair[1])
		assert.True(t, units.Impossible(err) && math.IsNaN(float64(got)), pair)
	}
	// Ten tenths are one, whatever their floats add up to; a thousandth too much is
	// not.
	tenths := make([]units.Fraction, 10)
	for i := range tenths {
		tenths[i] = 0.1
	}
	got, err := herd.DietOverlap(tenths, tenths)
	require.NoError(t, err)
	assert.InDelta(t, 1, float64(got), 1e-12)
	_, err = herd.DietOverlap([]units.Fraction{0.3, 0.701}, []units.Fraction{0.3, 0.7})
	assert.True(t, units.Impossible(err))
}

// TestOverlapIsMutual: one with the other is the other with the one, never more
// than the whole; a diet overlaps itself in all that it is.
func TestOverlapIsMutual(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		diet := func(name string) []units.Fraction {
			a := rapid.Float64Range(0, 1).Draw(t, name+" grass")
			b := rapid.Float64Range(0, 1-a).Draw(t, name+" forbs")
			return []units.Fraction{units.Fraction(a), units.Fraction(b), units.Fraction(max(0, 1-a-b))}
		}
		one, other := diet("one"), diet("other")
		ab, err := herd.DietOverlap(one, other)
		if err != nil {
			t.Fatal(err)
		}
		ba, _ := herd.DietOverlap(other, one)
		self, _ := herd.DietOverlap(one, one)
		if ab != ba || ab < 0 || float64(ab) > 1+1e-12 || !near(float64(self), 1) {
			t.Fatalf("%v, %v, with itself %v", ab, ba, self)
		}
		alone := rapid.Float64Range(0, 1000).Draw(t, "alone")
		head, _ := herd.CoGrazing(alone, min(ab, 1))
		if head < alone/2*(1-1e-12) || head > alone*(1+1e-12) {
			t.Fatalf("%v of %v", head, alone)
		}
	})
}

// How much browse do goats choose?
func ExampleDietShare() {
	low, _ := herd.DietShare(herd.Goats, herd.PlantsBrowse, 0)
	high, err := herd.DietShare(herd.Goats, herd.PlantsBrowse, units.Whole)
	fmt.Println(low.In(units.US), "to", high.In(units.US), err)
	// Output:
	// 30 % to 50 % <nil>
}

// The land carries 100 sheep or 90 goats; their diets have 60 % in common. How many
// of each together?
func ExampleCoGrazing() {
	sheep, _ := herd.CoGrazing(100, 60*units.Percent)
	goats, err := herd.CoGrazing(90, 60*units.Percent)
	fmt.Printf("%.0f sheep and %.0f goats %v\n", sheep, goats, err)
	// Output:
	// 70 sheep and 63 goats <nil>
}

// How much do sheep and goats eat of the same?
func ExamplePrintedOverlap() {
	share, err := herd.PrintedOverlap("sheep-goat-summer", units.Middle)
	fmt.Println(share.In(units.US), err)
	// Output:
	// 77 % <nil>
}

// Who measured what sheep and cattle have in common?
func ExampleOverlapRows() {
	for _, row := range herd.OverlapRows() {
		if row.Name == "sheep-cattle-late-spring-colorado" {
			fmt.Println(row.Share.Low.In(units.US), row.Source)
		}
	}
	// Output:
	// 53 % MACCRACKEN-1981
}

// Goats took 49 % herbs, 27 shrubs, 24 trees; sheep 84, 6 and 10: how alike is that?
func ExampleDietOverlap() {
	goats := []units.Fraction{0.49, 0.27, 0.24}
	sheep := []units.Fraction{0.84, 0.06, 0.10}
	share, err := herd.DietOverlap(goats, sheep)
	fmt.Println(share.In(units.US), err)
	// Output:
	// 65 % <nil>
}

// How many sheep go with twelve cows?
func ExampleAddOn() {
	sheep, err := herd.AddOn(herd.AddSheepArkansas, 12, 0)
	fmt.Println(sheep, err)
	// Output:
	// 24 <nil>
}
