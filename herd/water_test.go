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

// TestWaterFiguresAreTheTableOfWater: every row, at what it is for, comes out of
// Water; every rule but the unknown has one row; the table is a copy.
func TestWaterFiguresAreTheTableOfWater(t *testing.T) {
	seen := map[herd.WaterRule]bool{}
	for _, row := range herd.WaterFigures() {
		assert.False(t, seen[row.Rule], row.Rule)
		seen[row.Rule] = true
		head, weight := row.Head, row.Weight
		if head == 0 {
			head = 1
		} else {
			weight = 70 * units.LiveKilogram
		}
		for season, span := range map[herd.Season]units.Span[units.WaterRate]{herd.Summer: row.Summer, herd.Winter: row.Winter} {
			low, err := herd.Water(head, weight, row.Rule, season, 0)
			require.NoError(t, err)
			same(t, row.Rule.String(), span.Low, low)
			high, err := herd.Water(head, weight, row.Rule, season, units.Whole)
			require.NoError(t, err)
			same(t, row.Rule.String(), span.High, high)
		}
	}
	for rule := herd.WaterRule(1); rule.String() != ""; rule++ {
		assert.Equal(t, rule != herd.WaterUnknown, seen[rule], rule)
	}
	herd.WaterFigures()[0].Head = 77
	assert.NotEqual(t, 77.0, herd.WaterFigures()[0].Head)
}

// TestWaterUnknown: no figure in print is no figure here, and other faults of
// the arguments are told first.
func TestWaterUnknown(t *testing.T) {
	got, err := herd.Water(12, 5, herd.WaterUnknown, herd.Summer, 0)
	assert.True(t, math.IsNaN(float64(got)))
	assert.True(t, units.Impossible(err))
	assert.ErrorContains(t, err, "no figure is printed")
	assert.ErrorContains(t, err, `herd.Water: rule is "unknown"`)
	assert.ErrorContains(t, err, "one of: cattle, horse")
	_, err = herd.Water(-12, 5, herd.WaterUnknown, herd.Summer, 0)
	assert.ErrorContains(t, err, "head is -12")
	for _, rule := range []herd.WaterRule{-1, 0, 99} {
		_, err = herd.Water(12, 5, rule, herd.Summer, 0)
		assert.True(t, units.Impossible(err), rule)
	}
}

// TestWaterGrows: with head in proportion, and never falling along the span.
func TestWaterGrows(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rule := herd.WaterRule(rapid.IntRange(2, int(herd.WaterTurkey)).Draw(t, "rule"))
		season := herd.Season(rapid.IntRange(1, 2).Draw(t, "season"))
		head := rapid.Float64Range(0, 500).Draw(t, "head")
		weight := units.LiveWeight(rapid.Float64Range(1, 900).Draw(t, "weight"))
		place := units.Fraction(rapid.Float64Range(0, 1).Draw(t, "place"))
		one, err := herd.Water(head, weight, rule, season, place)
		if err != nil {
			t.Fatal(err)
		}
		if two, _ := herd.Water(2*head, weight, rule, season, place); !near(float64(two), 2*float64(one)) {
			t.Fatalf("%v, twice the head %v", one, two)
		}
		if high, _ := herd.Water(head, weight, rule, season, 1); float64(high) < float64(one)*(1-1e-12) {
			t.Fatalf("%v at %v is above the high end %v", one, place, high)
		}
	})
}

// Which figures of water go by weight, and who prints them?
func ExampleWaterFigures() {
	for _, figure := range herd.WaterFigures() {
		if figure.Weight > 0 {
			fmt.Println(figure.Rule, figure.Summer.High.In(units.US), "for", figure.Weight.In(units.US), figure.Source)
		}
	}
	// Output:
	// cattle 1.5 gal/day for 100 lb KSU-WATER
	// horse 1 gal/day for 100 lb KSU-WATER at least
}

// How much water do two cows of 1,300 lb need in summer and in winter?
func ExampleWater() {
	for _, season := range []herd.Season{herd.Summer, herd.Winter} {
		water, err := herd.Water(2, 1300*units.LivePound, herd.WaterCattle, season, units.Whole)
		fmt.Println(season, water.In(units.US), err)
	}
	_, err := herd.Water(12, 5*units.LiveKilogram, herd.WaterUnknown, herd.Summer, units.Whole)
	fmt.Println(err)
	// Output:
	// summer 39 gal/day <nil>
	// winter 19.5 gal/day <nil>
	// herd.Water: rule is "unknown": no figure is printed for this kind of stock; it takes one of: cattle, horse, dairy cow, small ruminant, lactating ewe, lactating goat, lactating sow, pig, chicken, turkey
}
