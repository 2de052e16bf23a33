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

// depths gives depths from millimetres.
func depths(mm ...float64) []units.RainDepth {
	made := make([]units.RainDepth, len(mm))
	for i, v := range mm {
		made[i] = units.RainDepth(v) * units.RainMillimetre
	}
	return made
}

// TestWaterBalanceByHand: a store of 100 mm with 60 in it; the sums stand beside.
func TestWaterBalanceByHand(t *testing.T) {
	rain, demand := depths(80, 10, 0, 50), depths(30, 60, 80, 20)
	for _, c := range []struct {
		rule rainfall.BucketRule
		easy units.Fraction
		want [][4]float64 // actual, short, drained, store
	}{
		{rainfall.BucketPlain, 0, [][4]float64{
			{30, 0, 10, 100}, // 60 + 80 - 30 = 110, 10 over
			{60, 0, 0, 50},   // 100 + 10 - 60
			{50, 30, 0, 0},   // all that was left
			{20, 0, 0, 30},   // 50 - 20
		}},
		{rainfall.BucketExponential, 0, [][4]float64{
			{30, 0, 10, 100},
			{10 + 100*(1-math.Exp(-0.5)), 50 - 100*(1-math.Exp(-0.5)), 0, 100 * math.Exp(-0.5)},                              // lacks 50 of 100
			{100*math.Exp(-0.5) - 100*math.Exp(-1.3), 80 - 100*math.Exp(-0.5) + 100*math.Exp(-1.3), 0, 100 * math.Exp(-1.3)}, // and 80 more
			{20, 0, 0, 30 + 100*math.Exp(-1.3)},
		}},
		{rainfall.BucketStress, 0.6, [][4]float64{
			{30, 0, 40, 70}, // 140: 40 drain, then 30 are used of a full store
			{60, 0, 0, 20},  // 80 in it, 20 short of full: all easy
			{20, 60, 0, 0},  // 80 short, 0.2 / 0.4 of 80 is 40, but 20 are there
			{20, 0, 0, 30},  // 50 in it: 0.5 / 0.4 is over 1, all of 20
		}},
	} {
		got, err := rainfall.WaterBalance(rainfall.Bucket{Holds: 0.1, Start: 0.06, Rule: c.rule, Easy: c.easy}, rain, demand)
		require.NoError(t, err)
		for i, want := range c.want {
			step := got[i]
			assert.Equal(t, rain[i], step.Rain)
			assert.Equal(t, demand[i], step.Demand)
			for k, v := range []units.RainDepth{step.Actual, step.Short, step.Drained, step.Store} {
				assert.InDelta(t, want[k], v.Millimetres(), 1e-9, "%v, step %d, %d", c.rule, i+1, k)
			}
			assert.InDelta(t, 100-want[3], step.Deficit.Millimetres(), 1e-9)
		}
	}
	// A mild shortage: 100 mm hold 10 after use, 90 short: stress 0.1 / 0.4 of 8 mm.
	got, err := rainfall.WaterBalance(rainfall.Bucket{Holds: 0.1, Start: 0.01, Rule: rainfall.BucketStress, Easy: 0.6}, depths(0), depths(8))
	require.NoError(t, err)
	assert.InDelta(t, 2, got[0].Actual.Millimetres(), 1e-9)
}

// TestWaterBalanceKeepsWater: what comes in is used, drained or stays; no store is
// over full or under empty; wetter is never thirstier.
func TestWaterBalanceKeepsWater(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		bucket := rainfall.Bucket{Holds: units.RainDepth(rapid.Float64Range(0.01, 0.4).Draw(t, "holds")), Rule: rainfall.BucketRule(rapid.IntRange(1, 3).Draw(t, "rule"))}
		bucket.Start = bucket.Holds * units.RainDepth(rapid.Float64Range(0, 1).Draw(t, "start"))
		if bucket.Rule == rainfall.BucketStress {
			bucket.Easy = units.Fraction(rapid.Float64Range(0, 0.95).Draw(t, "easy"))
		}
		n := rapid.IntRange(1, 40).Draw(t, "n")
		rain, demand := make([]units.RainDepth, n), make([]units.RainDepth, n)
		for i := range n {
			rain[i], demand[i] = units.RainDepth(rapid.Float64Range(0, 0.1).Draw(t, "rain")), units.RainDepth(rapid.Float64Range(0, 0.1).Draw(t, "demand"))
		}
		steps, err := rainfall.WaterBalance(bucket, rain, demand)
		require.NoError(t, err)
		before := bucket.Start
		for _, s := range steps {
			assert.InDelta(t, float64(before+s.Rain), float64(s.Actual+s.Drained+s.Store), 1e-12)
			assert.InDelta(t, float64(s.Demand), float64(s.Actual+s.Short), 1e-12)
			assert.True(t, s.Store >= 0 && s.Store <= bucket.Holds && s.Drained >= 0 && s.Actual >= 0 && s.Short >= 0, s)
			before = s.Store
		}
		rain[0] += 0.01
		wetter, err := rainfall.WaterBalance(bucket, rain, demand)
		require.NoError(t, err)
		for i := range steps {
			assert.GreaterOrEqual(t, float64(wetter[i].Store), float64(steps[i].Store)-1e-12)
			assert.GreaterOrEqual(t, float64(wetter[i].Actual), float64(steps[i].Actual)-1e-12)
		}
	})
}

// TestWaterBalanceRefuses what is no bucket and what is not known; nothing that is
// not finite comes out of what is.
func TestWaterBalanceRefuses(t *testing.T) {
	good := rainfall.Bucket{Holds: 0.1, Start: 0.05, Rule: rainfall.BucketPlain}
	for _, c := range []struct {
		change func(*rainfall.Bucket)
		want   string
	}{
		{func(b *rainfall.Bucket) { b.Holds = 0 }, "bucket.holds: 0 mm is not what a bucket can hold; above 0 mm"},
		{func(b *rainfall.Bucket) { b.Holds = units.RainDepth(math.NaN()) }, "bucket.holds: NaN mm"},
		{func(b *rainfall.Bucket) { b.Holds = units.RainDepth(math.Inf(1)) }, "bucket.holds: +Inf mm"},
		{func(b *rainfall.Bucket) { b.Start = 0.11 }, "bucket.start: 110 mm cannot be in a bucket that holds 100 mm"},
		{func(b *rainfall.Bucket) { b.Start = -1 }, "bucket.start: -1000 mm"},
		{func(b *rainfall.Bucket) { b.Start = units.RainDepth(math.NaN()) }, "bucket.start: NaN mm"},
		{func(b *rainfall.Bucket) { b.Easy = 0.5 }, "does not go with the rule plain"},
		{func(b *rainfall.Bucket) { b.Rule, b.Easy = rainfall.BucketStress, 1 }, "bucket.easy: 1"},
		{func(b *rainfall.Bucket) { b.Rule, b.Easy = rainfall.BucketStress, -0.1 }, "bucket.easy: -0.1"},
	} {
		bad := good
		c.change(&bad)
		_, err := rainfall.WaterBalance(bad, depths(1), depths(1))
		refusedAt(t, err, c.want)
	}
	for _, rule := range []rainfall.BucketRule{-1, 0, 4} {
		bad := good
		bad.Rule = rule
		_, err := rainfall.WaterBalance(bad, depths(1), depths(1))
		unknown(t, err, "no such word; it takes one of: plain, stress, exponential")
	}
	for _, c := range []struct {
		rain, demand []units.RainDepth
		want         string
	}{
		{nil, nil, "rain: is empty; one value or more"},
		{depths(1), nil, "demand: 0 values beside 1 value of rain"},
		{depths(1), depths(1, 2), "demand: 2 values beside 1 value of rain"},
		{depths(math.NaN()), depths(1), "rain[0]: NaN mm is not a depth of rain; 0 mm to 1000 m"},
		{depths(1), depths(-1), "demand[0]: -1 mm is not a depth of rain"},
		{depths(math.Inf(1)), depths(1), "rain[0]: +Inf mm is not a depth of rain"},
		{depths(1, math.NaN()), depths(1, 1), "rain[1]: NaN mm is not a depth of rain"},
	} {
		_, err := rainfall.WaterBalance(good, c.rain, c.demand)
		refusedAt(t, err, c.want)
	}
	rapid.Check(t, func(t *rapid.T) {
		any := func(name string) units.RainDepth { return units.RainDepth(rapid.Float64Min(0).Draw(t, name)) }
		bucket := rainfall.Bucket{Holds: any("holds"), Rule: rainfall.BucketRule(rapid.IntRange(1, 3).Draw(t, "rule"))}
		bucket.Start = min(bucket.Holds, any("start"))
		steps, err := rainfall.WaterBalance(bucket, []units.RainDepth{any("r1"), any("r2")}, []units.RainDepth{any("d1"), any("d2")})
		if err != nil {
			return
		}
		for _, s := range steps {
			sum := s.Actual + s.Short + s.Drained*0 + s.Store + s.Deficit
			assert.False(t, math.IsNaN(float64(sum)) || math.IsInf(float64(s.Drained), 0), s)
		}
	})
}

// The soil is 90 mm short of the 100 that it holds, 60 % of which are easy: what does
// the grass get of what it wants?
func ExampleStressCoefficient() {
	share, err := rainfall.StressCoefficient(0.090, 0.100, 60*units.Percent)
	fmt.Println(units.Number(share), err)
	// Output: 0.25 <nil>
}

// The grass wanted 80 mm this month and got 60.
func ExampleGrowthShare() {
	share, err := rainfall.GrowthShare(60*units.RainMillimetre, 80*units.RainMillimetre)
	fmt.Println(share.In(units.US), err)
	// Output: 75 % <nil>
}

// Three months of a dry spring on soil of 100 mm, full at the start.
func ExampleWaterBalance() {
	bucket := rainfall.Bucket{Holds: 0.1, Start: 0.1, Rule: rainfall.BucketPlain}
	steps, err := rainfall.WaterBalance(bucket, depths(40, 20, 30), depths(60, 90, 110))
	for _, s := range steps {
		share, _ := rainfall.GrowthShare(s.Actual, s.Demand)
		fmt.Println(s.Store.In(units.Metric), "left,", s.Short.In(units.Metric), "short, growth", share.In(units.Metric))
	}
	fmt.Println(err)
	// Output:
	// 80 mm left, 0 mm short, growth 100 %
	// 10 mm left, 0 mm short, growth 100 %
	// 0 mm left, 70 mm short, growth 36.4 %
	// <nil>
}
