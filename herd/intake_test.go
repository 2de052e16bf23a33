package herd_test

import (
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.org/soum/herd"
	"example.org/soum/units"
)

// near tells whether two numbers agree but for rounding; numbers too small for
// all their digits count as nothing.
func near(a, b float64) bool { return math.Abs(a-b) <= 1e-12*(math.Abs(a)+math.Abs(b))+1e-300 }

// TestDemandScales: twice the animals want twice as much, and so on for each
// argument; more of anything never wants less.
func TestDemandScales(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		head := rapid.Float64Range(0, 1000).Draw(t, "head")
		weight := units.LiveWeight(rapid.Float64Range(0.1, 1500).Draw(t, "weight"))
		intake := units.Fraction(rapid.Float64Range(0, 0.1).Draw(t, "intake"))
		pasture := units.Fraction(rapid.Float64Range(0, 0.5).Draw(t, "pasture"))
		once, err := herd.Demand(head, weight, intake, pasture)
		if err != nil {
			t.Fatal(err)
		}
		for i, more := range []struct {
			head            float64
			weight          units.LiveWeight
			intake, pasture units.Fraction
		}{{2 * head, weight, intake, pasture}, {head, 2 * weight, intake, pasture}, {head, weight, 2 * intake, pasture}, {head, weight, intake, 2 * pasture}} {
			twice, err := herd.Demand(more.head, more.weight, more.intake, more.pasture)
			if err != nil || !near(float64(twice), 2*float64(once)) {
				t.Fatalf("argument %d doubled: %v then %v (%v)", i, once, twice, err)
			}
		}
	})
}

// TestFeedAdds: two stretches of time need what the whole needs.
func TestFeedAdds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		demand := units.Demand(rapid.Float64Range(0, 1e4).Draw(t, "demand"))
		a := units.Days(rapid.Float64Range(0, 400).Draw(t, "a"))
		b := units.Days(rapid.Float64Range(0, 400).Draw(t, "b"))
		first, _ := herd.Feed(demand, a)
		second, _ := herd.Feed(demand, b)
		whole, err := herd.Feed(demand, a+b)
		if err != nil || !near(float64(first+second), float64(whole)) {
			t.Fatalf("%v + %v, whole %v (%v)", first, second, whole, err)
		}
	})
}

// What do twenty cows of 1,200 lb eat in a day?
func ExampleDemand() {
	demand, err := herd.Demand(20, 1200*units.LivePound, 3*units.Percent, units.Whole)
	fmt.Println(demand.In(units.US), err)
	_, err = herd.Demand(20, 1200*units.LivePound, 3, units.Whole)
	fmt.Println(err)
	// Output:
	// 720 lb/day <nil>
	// herd.Demand: intake is 300 %, must be from 0 % to 100 %
}

// How much is that in a winter of 180 days?
func ExampleFeed() {
	feed, err := herd.Feed(720*units.PoundPerDay, 180)
	fmt.Println(feed.In(units.US), "or", feed.ShortTons(), "short tons", err)
	// Output:
	// 129,600 lb or 64.8 short tons <nil>
}
