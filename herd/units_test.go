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

// TestTexasChart goes through the chart row by row as its makers did: pounds a
// year, animal units of 9,490 lb, whole head to the unit.
func TestTexasChart(t *testing.T) {
	for _, row := range []struct {
		kind        string
		lb, percent float64
		year, au    float64
		headToAUnit float64
	}{
		{"beef cow", 1000, 2.6, 9490, 1.00, 1},
		{"horse", 1100, 3.0, 12045, 1.27, 1},
		{"ewe", 130, 3.5, 1661, 0.18, 6},
		{"Spanish nanny", 90, 4.5, 1478, 0.16, 6},
		{"Angora nanny", 70, 4.5, 1150, 0.12, 8},
		{"white-tailed deer", 100, 3.5, 1278, 0.13, 7},
		{"axis deer", 150, 3.5, 1916, 0.20, 5},
		{"sika deer", 145, 3.5, 1852, 0.20, 5},
		{"Barbado sheep", 120, 3.5, 1533, 0.16, 6},
		{"aoudad", 200, 3.5, 2555, 0.27, 4},
		{"common eland", 1000, 2.5, 9125, 0.96, 1},
	} {
		weight, share := units.LiveWeight(row.lb)*units.LivePound, units.Fraction(row.percent)*units.Percent
		day, err := herd.Demand(1, weight, share, units.Whole)
		require.NoError(t, err)
		year, err := herd.Feed(day, 365)
		require.NoError(t, err)
		au, err := herd.IntakeAnimalUnits(weight, share)
		require.NoError(t, err)
		head, err := herd.HeadPerUnit(au)
		require.NoError(t, err)
		assert.InDelta(t, row.year, year.Pounds(), 0.5+1e-6, row.kind)
		assert.InDelta(t, row.au, au.AnimalUnits(), 0.005+1e-9, row.kind)
		assert.InDelta(t, row.headToAUnit, math.Round(head), 0, row.kind)
		assert.InDelta(t, year.Pounds()/9490, au.AnimalUnits(), 1e-12, row.kind)
	}
}

func TestTotalUnits(t *testing.T) {
	total, err := herd.TotalUnits([]float64{30, 1}, []units.AnimalUnits{1.6, 1.7})
	require.NoError(t, err)
	assert.InDelta(t, 49.7, total.AnimalUnits(), 1e-9) // 30 * 1.6 + 1.7, as printed
	none, err := herd.TotalUnits(nil, nil)
	require.NoError(t, err)
	assert.Zero(t, none)
}

func TestTotalUnitsRefuses(t *testing.T) {
	for _, c := range []struct {
		head []float64
		each []units.AnimalUnits
		says string
	}{
		{[]float64{1, 2}, []units.AnimalUnits{1}, "len(each) is 1"},
		{[]float64{1}, []units.AnimalUnits{1, 2}, "len(each) is 2"},
		{[]float64{-1}, []units.AnimalUnits{1}, "head is -1"},
		{[]float64{1, math.NaN()}, []units.AnimalUnits{1, 1}, "head is NaN"},
		{[]float64{1}, []units.AnimalUnits{-0.2}, "each is -0.2"},
		{[]float64{1}, []units.AnimalUnits{units.AnimalUnits(math.Inf(1))}, "each is +Inf"},
		{[]float64{1e308, 1e308}, []units.AnimalUnits{1, 1}, "result"},
	} {
		got, err := herd.TotalUnits(c.head, c.each)
		assert.True(t, math.IsNaN(float64(got)))
		assert.True(t, units.Impossible(err))
		assert.ErrorContains(t, err, c.says)
	}
}

// TestMetabolicUnits: the power 3/4 undone by the power 4/3; above the linear
// unit below 1,000 lb and under it above; heavier is never less.
func TestMetabolicUnits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		lb := rapid.Float64Range(0.01, 5000).Draw(t, "lb")
		weight := units.LiveWeight(lb) * units.LivePound
		metabolic, err := herd.MetabolicAnimalUnits(weight)
		if err != nil {
			t.Fatal(err)
		}
		if back := 1000 * math.Pow(float64(metabolic), 4.0/3); math.Abs(back-lb) > 1e-9*lb {
			t.Fatalf("%v lb comes back as %v", lb, back)
		}
		linear, _ := herd.AnimalUnits(weight)
		if (lb < 999 && metabolic <= linear) || (lb > 1001 && metabolic >= linear) {
			t.Fatalf("%v lb: %v against %v", lb, metabolic, linear)
		}
		heavier, _ := herd.MetabolicAnimalUnits(weight * 1.01)
		if heavier <= metabolic {
			t.Fatalf("%v lb: heavier is not more", lb)
		}
	})
}

func TestHeadPerUnitIsTheInverse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		each := units.AnimalUnits(rapid.Float64Range(1e-4, 10).Draw(t, "each"))
		head, err := herd.HeadPerUnit(each)
		if err != nil {
			t.Fatal(err)
		}
		if total, _ := herd.TotalUnits([]float64{head}, []units.AnimalUnits{each}); !near(float64(total), 1) {
			t.Fatalf("%v head of %v make %v", head, each, total)
		}
	})
}

func TestUnitDefinitionUnknown(t *testing.T) {
	for _, d := range []herd.UnitDefinition{-1, 0, 4} {
		got, err := herd.UnitDemand(d)
		assert.True(t, units.Impossible(err) && math.IsNaN(float64(got)), d)
		feed, err := herd.UnitMonth(d, 30)
		assert.True(t, units.Impossible(err) && math.IsNaN(float64(feed)), d)
	}
}

// How many animal units is a cow of 1,284 lb?
func ExampleAnimalUnits() {
	au, err := herd.AnimalUnits(1284 * units.LivePound)
	fmt.Println(au, err)
	// Output:
	// 1.284 AU <nil>
}

// And a dry cow of 1,200 lb, where the unit is a cow in milk?
func ExampleDryCowUnits() {
	au, err := herd.DryCowUnits(1200 * units.LivePound)
	fmt.Println(au.In(units.US), err)
	au, err = herd.DryCowUnits(1500 * units.LivePound)
	fmt.Println(au.In(units.US), err)
	// Output:
	// 1.1 AU <nil>
	// 1.4 AU herd.DryCowUnits: weight is 1500 lb, outside what EXT-AUM covers (from 1000 lb to 1200 lb); the value is still given
}

// How many animal units is a cow of 1,200 lb by metabolic weight?
func ExampleMetabolicAnimalUnits() {
	au, err := herd.MetabolicAnimalUnits(1200 * units.LivePound)
	fmt.Printf("%.3f %v\n", au.AnimalUnits(), err)
	// Output:
	// 1.147 <nil>
}

// How many ewes of 130 lb eat as much as one animal unit?
func ExampleHeadPerUnit() {
	ewe, _ := herd.IntakeAnimalUnits(130*units.LivePound, 3.5*units.Percent)
	head, err := herd.HeadPerUnit(ewe)
	fmt.Printf("%.1f ewes, in whole head %.0f %v\n", head, head, err)
	// Output:
	// 5.7 ewes, in whole head 6 <nil>
}

// What part of an animal unit is an Angora nanny of 70 lb, by what she eats?
func ExampleIntakeAnimalUnits() {
	nanny, err := herd.IntakeAnimalUnits(70*units.LivePound, 4.5*units.Percent)
	fmt.Printf("%.2f %v\n", nanny.AnimalUnits(), err)
	// Output:
	// 0.12 <nil>
}

// How many animal units are thirty cows of 1.6 and a bull of 1.7?
func ExampleTotalUnits() {
	total, err := herd.TotalUnits([]float64{30, 1}, []units.AnimalUnits{1.6, 1.7})
	fmt.Println(total.In(units.US), err)
	// Output:
	// 49.7 AU <nil>
}

// What does an animal unit want in a day, by each definition?
func ExampleUnitDemand() {
	for d := herd.UnitTwentyFivePounds; d <= herd.UnitThirtyPounds; d++ {
		demand, err := herd.UnitDemand(d)
		fmt.Println(d, demand.In(units.US), err)
	}
	// Output:
	// twenty five pounds 25 lb/day <nil>
	// twenty six pounds 26 lb/day <nil>
	// thirty pounds 30 lb/day <nil>
}

// How much forage is an animal unit month?
func ExampleUnitMonth() {
	month, err := herd.UnitMonth(herd.UnitTwentySixPounds, 30)
	fmt.Println(month.In(units.US), "or", month.In(units.Metric), err)
	// Output:
	// 780 lb or 354 kg <nil>
}

// How many dry sheep to the hectare are ten of 60 kg on 2 ha?
func ExampleDrySheepRate() {
	rate, err := herd.DrySheepRate(10, 60*units.LiveKilogram, 2*units.Hectare)
	fmt.Println(rate.In(units.Metric), err)
	// Output:
	// 6 head/ha <nil>
}
