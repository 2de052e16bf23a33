package herd_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"example.org/soum/herd"
	"example.org/soum/units"
)

// TestNutrientsArePartOfTheManure: the mass of a nutrient is the manure's times
// its share, losses only take away, and no row is missing.
func TestNutrientsArePartOfTheManure(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		kind := herd.ManureKind(rapid.IntRange(2, int(herd.ManureTurkeyHen)).Draw(t, "kind"))
		nutrient := herd.Nutrient(rapid.IntRange(1, 3).Draw(t, "nutrient"))
		weight := units.LiveWeight(rapid.Float64Range(1, 1e5).Draw(t, "weight"))
		days := units.Days(rapid.Float64Range(1, 400).Draw(t, "days"))
		manure, err := herd.ManureMass(kind, weight, days)
		if err != nil {
			t.Fatal(err)
		}
		excreted, err := herd.NutrientMass(kind, nutrient, herd.Excreted, weight, days)
		if err != nil {
			t.Fatal(err)
		}
		kept, err := herd.NutrientMass(kind, nutrient, herd.AfterLosses, weight, days)
		if err != nil {
			t.Fatal(err)
		}
		share, _ := herd.NutrientShare(kind, nutrient, herd.Excreted)
		if !near(float64(excreted), float64(manure)*float64(share)) || !(0 < kept && kept < excreted && excreted < manure) {
			t.Fatalf("%v of %v, after losses %v", excreted, manure, kept)
		}
		double, _ := herd.NutrientMass(kind, nutrient, herd.Excreted, 2*weight, days)
		longer, _ := herd.NutrientMass(kind, nutrient, herd.Excreted, weight, 2*days)
		if !near(float64(double), 2*float64(excreted)) || !near(float64(longer), 2*float64(excreted)) {
			t.Fatalf("%v, of twice the weight %v, in twice the time %v", excreted, double, longer)
		}
	})
}

func TestManureUnknown(t *testing.T) {
	for _, kind := range []herd.ManureKind{-1, 0, herd.ManureUnknown, 99} {
		a, errA := herd.ManurePerUnitYear(kind)
		b, errB := herd.NutrientShare(kind, herd.Nitrogen, herd.Excreted)
		c, errC := herd.ManureMass(kind, 1000, 1)
		d, errD := herd.NutrientMass(kind, herd.Nitrogen, herd.Excreted, 1000, 1)
		for _, err := range []error{errA, errB, errC, errD} {
			assert.True(t, units.Impossible(err), kind)
			if kind == herd.ManureUnknown {
				assert.ErrorContains(t, err, "no figure is printed")
			}
		}
		assert.True(t, math.IsNaN(float64(a)+float64(b)+float64(c)+float64(d)), kind)
	}
	for _, nutrient := range []herd.Nutrient{-1, 0, 4} {
		_, err := herd.NutrientShare(herd.ManureHen, nutrient, herd.Excreted)
		assert.True(t, units.Impossible(err), nutrient)
	}
	for _, fate := range []herd.Fate{-1, 0, 3} {
		_, err := herd.NutrientMass(herd.ManureHen, herd.Nitrogen, fate, 1000, 1)
		assert.True(t, units.Impossible(err), fate)
	}
}

// How much manure does 1,000 lb of beef cow leave in a day?
func ExampleManureMass() {
	mass, err := herd.ManureMass(herd.ManureBeefCow, 1000*units.LivePound, 1)
	fmt.Println(mass.In(units.US), err)
	// Output:
	// 63 lb <nil>
}

// How much manure is that in a year?
func ExampleManurePerUnitYear() {
	mass, err := herd.ManurePerUnitYear(herd.ManureBeefCow)
	fmt.Println(mass.ShortTons(), "short tons", err)
	// Output:
	// 11.5 short tons <nil>
}

// How much nitrogen is in a ton of hen manure, fresh and by the time it is spread?
func ExampleNutrientShare() {
	fresh, _ := herd.NutrientShare(herd.ManureHen, herd.Nitrogen, herd.Excreted)
	spread, err := herd.NutrientShare(herd.ManureHen, herd.Nitrogen, herd.AfterLosses)
	fmt.Printf("%.2f and %.2f lb %v\n", fresh.PoundsPerShortTon(), spread.PoundsPerShortTon(), err)
	// Output:
	// 26.93 and 18.46 lb <nil>
}

// How much nitrogen does 1,000 lb of beef cow drop in a year?
func ExampleNutrientMass() {
	n, err := herd.NutrientMass(herd.ManureBeefCow, herd.Nitrogen, herd.Excreted, 1000*units.LivePound, 365)
	fmt.Println(n.In(units.US), err)
	// Output:
	// 126 lb <nil>
}

// A cow leaves 120 lb a day: how many short tons in a year?
func ExampleYearlyManure() {
	year, err := herd.YearlyManure(120 * units.Pound)
	fmt.Printf("%.1f %v\n", year.ShortTons(), err)
	// Output:
	// 21.9 <nil>
}
