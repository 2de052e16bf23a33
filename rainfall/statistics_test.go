package rainfall_test

import (
	"fmt"
	"math"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/rainfall"
	"example.org/soum/units"
)

const mm = units.RainMillimetre

var allMonths = []int{1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12}

// annual gives the rain of the years of Fort Collins, 1895 to 1997.
func annual(t require.TestingT) []units.RainDepth {
	years, err := rainfall.KeyTotals(recordOf(t, "fort_collins_record.csv"), allMonths)
	require.NoError(t, err)
	require.Len(t, years, 103)
	return rainfall.Depths(years)
}

// spring gives its rain of April to June.
func spring(t require.TestingT) []units.RainDepth {
	years, err := rainfall.KeyTotals(recordOf(t, "fort_collins_record.csv"), []int{4, 5, 6})
	require.NoError(t, err)
	return rainfall.Depths(years)
}

// The deciles of the annual rain as R 4.2.2 computes them from the same public
// record, quantile(type = 6) and quantile(type = 7), to 0.1 mm.
func TestDecilesOfFortCollins(t *testing.T) {
	for rule, want := range map[rainfall.QuantileRule][9]float64{
		rainfall.RuleWeibull: {266.8, 301.6, 328.2, 345.2, 370, 395.4, 430.4, 480.2, 536.2},
		rainfall.RuleSpread:  {268.4, 303.6, 328.6, 345.6, 370, 395.2, 423.2, 474.6, 530.8},
	} {
		deciles, err := rainfall.Deciles(annual(t), rule)
		require.NoError(t, err)
		for i := range want {
			assert.InDelta(t, want[i], deciles[i].Millimetres(), 0.05+1e-9, "%v %d", rule, i)
			q, err := rainfall.Quantile(annual(t), units.Fraction(i+1)*10*units.Percent, rule)
			require.NoError(t, err)
			assert.InDelta(t, want[i], q.Millimetres(), 0.05+1e-9)
		}
	}
}

// Mean, deviation and variation as R 4.2.2 gives them.
func TestVariationOfFortCollins(t *testing.T) {
	v, err := rainfall.Variation(annual(t))
	require.NoError(t, err)
	assert.InDelta(t, 27.1, v.Percent(), 0.05)
	assert.InDelta(t, 104.57/385.8, v.Whole(), 0.00005, "to the digits of mean and deviation")
	v, err = rainfall.Variation(spring(t))
	require.NoError(t, err)
	assert.InDelta(t, 37.8, v.Percent(), 0.05)
	v, err = rainfall.Variation([]units.RainDepth{1 * mm, units.RainDepth(math.NaN()), 3 * mm})
	require.NoError(t, err)
	assert.InDelta(t, math.Sqrt2/2, v.Whole(), 1e-12, "mean 2, deviation √((1 + 1) ÷ 1), the gap left out")
}

func TestDecileOf(t *testing.T) {
	deciles, err := rainfall.Deciles(annual(t), rainfall.RuleWeibull)
	require.NoError(t, err)
	for depth, want := range map[float64]int{0: 1, 186: 1, 266.8: 1, 267: 2, 370: 5, 371: 6, 536.2: 9, 537: 10, 721: 10} {
		got, err := rainfall.DecileOf(units.RainDepth(depth)*mm, deciles)
		require.NoError(t, err)
		assert.Equal(t, want, got, depth)
	}
	for _, depth := range []float64{-1, math.NaN(), math.Inf(1), 1001e3} {
		_, err := rainfall.DecileOf(units.RainDepth(depth)*mm, deciles)
		impossible(t, err, "rainfall.DecileOf: depth is ")
	}
	_, err = rainfall.DecileOf(1000*units.RainMetre, deciles)
	require.NoError(t, err, "the limit itself")
	deciles[4], deciles[5] = deciles[5], deciles[4]
	_, err = rainfall.DecileOf(1, deciles)
	refusedAt(t, err, "deciles[5]: ")
	assert.ErrorContains(t, err, "is below the decile before it")
	deciles[2] = -1 * mm
	_, err = rainfall.DecileOf(1, deciles)
	refusedAt(t, err, "deciles[2]: -1 mm is not a depth of rain")
}

// TestQuantileProperties: between the least and the most, never falling, the
// middle of both rules the same, and both scale.
func TestQuantileProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var depths, double []units.RainDepth
		for _, d := range rapid.SliceOfN(rapid.Float64Range(0, 2000), 1, 40).Draw(t, "depths") {
			depths = append(depths, units.RainDepth(d)*mm)
			double = append(double, 2*units.RainDepth(d)*mm)
		}
		share := units.Fraction(rapid.Float64Range(0, 1).Draw(t, "share"))
		rule := rainfall.QuantileRule(rapid.IntRange(1, 2).Draw(t, "rule"))
		least, _ := rainfall.Quantile(depths, 0, rule)
		most, _ := rainfall.Quantile(depths, 1, rule)
		q, err := rainfall.Quantile(depths, share, rule)
		require.NoError(t, err)
		higher, _ := rainfall.Quantile(depths, share+(1-share)/3, rule)
		assert.True(t, least <= q && q <= most && q <= higher)
		twice, _ := rainfall.Quantile(double, share, rule)
		assert.InDelta(t, 2*q.Millimetres(), twice.Millimetres(), 1e-9)
		one, _ := rainfall.Quantile(depths, 0.5, rainfall.RuleWeibull)
		other, _ := rainfall.Quantile(depths, 0.5, rainfall.RuleSpread)
		assert.InDelta(t, one.Millimetres(), other.Millimetres(), 1e-9)
	})
}

func TestStatisticsRefuse(t *testing.T) {
	gap := units.RainDepth(math.NaN())
	for wrong, depths := range map[string][]units.RainDepth{
		"depths: a record of 0 known depths is too short": {gap}, "depths[1]: -1 mm is not a depth of rain; 0 mm to 1000 m": {1 * mm, -1 * mm}, "depths[0]: +Inf mm": {units.RainDepth(math.Inf(1))},
	} {
		_, err := rainfall.Quantile(depths, 0.5, rainfall.RuleSpread)
		refusedAt(t, err, wrong)
		_, err = rainfall.Deciles(depths, rainfall.RuleSpread)
		refusedAt(t, err, wrong)
		_, err = rainfall.Variation(depths)
		refusedAt(t, err, wrong)
		_, err = rainfall.ChanceAtLeast(depths, 1*mm, rainfall.PositionCount)
		refusedAt(t, err, wrong)
	}
	ok := []units.RainDepth{1 * mm, 2 * mm}
	for _, share := range []units.Fraction{-0.1, 1.1, units.Fraction(math.NaN())} {
		q, err := rainfall.Quantile(ok, share, rainfall.RuleSpread)
		impossible(t, err, "must be from 0 % to 100 %")
		assert.True(t, math.IsNaN(float64(q)))
	}
	for _, n := range []int{-1, 0, 3} {
		_, err := rainfall.Quantile(ok, 0.5, rainfall.QuantileRule(n))
		unknown(t, err, fmt.Sprintf(`rainfall.Quantile: rule is "%d": no such word; it takes one of: weibull, spread`, n))
		deciles, err := rainfall.Deciles(ok, rainfall.QuantileRule(n))
		unknown(t, err, "rainfall.Deciles: rule is")
		assert.True(t, math.IsNaN(float64(deciles[0])) && math.IsNaN(float64(deciles[8])))
		_, err = rainfall.ChanceAtLeast(ok, 1*mm, rainfall.PlottingPosition(2*n-1))
		unknown(t, err, "rainfall.ChanceAtLeast: position is")
	}
	_, err := rainfall.ChanceAtLeast(ok, gap, rainfall.PositionCount)
	impossible(t, err, "rainfall.ChanceAtLeast: depth is NaN, must be from 0 mm to 1e+06 mm")
	_, err = rainfall.Variation(ok[:1])
	refusedAt(t, err, "depths: a record of 1 known depth is too short; 2 or more")
	_, err = rainfall.Variation([]units.RainDepth{0, 0})
	refusedAt(t, err, "depths: has no rain in any year")
}

// Ranks of the years of Fort Collins as R 4.2.2 gives them: 721 mm first, 186 last;
// under 75 % of the normal 383.3 mm in 15 of 103 years, in spring under 75 % of
// 161.2 mm in 30.
func TestChanceAtLeast(t *testing.T) {
	for _, c := range []struct {
		depth    float64
		position rainfall.PlottingPosition
		want     float64
	}{
		{721, rainfall.PositionWeibull, 1.0 / 104},
		{563, rainfall.PositionWeibull, 6.0 / 104}, // 1979
		{186, rainfall.PositionWeibull, 103.0 / 104},
		{186, rainfall.PositionCount, 1},
		{186, rainfall.PositionHazen, 205.0 / 206},
		{722, rainfall.PositionHazen, 0},
		{0.75 * 383.3, rainfall.PositionCount, 88.0 / 103},
	} {
		got, err := rainfall.ChanceAtLeast(annual(t), units.RainDepth(c.depth-1e-6)*mm, c.position)
		require.NoError(t, err)
		assert.InDelta(t, c.want, got.Whole(), 1e-12, c.depth)
	}
	got, err := rainfall.ChanceAtLeast(spring(t), 0.75*161.2*mm, rainfall.PositionCount)
	require.NoError(t, err)
	assert.InDelta(t, 73.0/103, got.Whole(), 1e-12)
	got, err = rainfall.ChanceAtLeast([]units.RainDepth{2 * mm, 1 * mm, 3 * mm}, 2*mm, rainfall.PositionCount)
	require.NoError(t, err)
	assert.InDelta(t, 2.0/3, got.Whole(), 1e-12, "at least: the depth itself counts")
}

func TestDryMonthRuns(t *testing.T) {
	var normals [12]units.RainDepth
	for m := range normals {
		normals[m] = 40 * mm
	}
	record := []rainfall.MonthlyRain{
		rain(2000, 11, 10), rain(2000, 12, 20), rain(2001, 1, 29), rain(2001, 2, 30), // 30 is three quarters
		rain(2001, 3, 5), rain(2001, 5, 5), rain(2000, 10, 50),
	}
	runs, err := rainfall.DryMonthRuns(record, 75*units.Percent, normals)
	require.NoError(t, err)
	require.Len(t, runs, 3)
	assert.Equal(t, []int{2000, 11, 3}, []int{runs[0].Year, runs[0].Month, runs[0].Months}, "across the turn of the year, unsorted")
	assert.InDelta(t, 59, runs[0].Rain.Millimetres(), 1e-9)
	assert.InDelta(t, 120, runs[0].Normal.Millimetres(), 1e-9)
	assert.Equal(t, []int{2001, 3, 1}, []int{runs[1].Year, runs[1].Month, runs[1].Months}, "April is not known")
	assert.Equal(t, []int{2001, 5, 1}, []int{runs[2].Year, runs[2].Month, runs[2].Months})
}

// Longest runs of days under 1 mm as R 4.2.2 counts them in the same public
// record, 81 days in 2012 and 35 in 2013; days with 1 mm or more 148 and 119.
func TestSeattleDryDays(t *testing.T) {
	days := seattle(t)
	for year, want := range map[int][2]int{2012: {81, 148}, 2013: {35, 119}} {
		var one []rainfall.DailyRain
		for _, d := range days {
			if d.Date.Year() == year {
				one = append(one, d)
			}
		}
		runs, err := rainfall.DryDayRuns(one, 1*mm)
		require.NoError(t, err)
		longest, dry := 0, 0
		for _, r := range runs {
			longest = max(longest, r.Days)
			dry += r.Days
		}
		assert.Equal(t, want[0], longest)
		assert.Equal(t, want[1], len(one)-dry)
	}
	gap := []rainfall.DailyRain{{Date: 10, Rain: 0}, {Date: 11, Rain: 0.5 * mm}, {Date: 13}, {Date: 14, Rain: mm}}
	runs, err := rainfall.DryDayRuns(gap, mm)
	require.NoError(t, err)
	assert.Equal(t, []rainfall.DryDays{{First: 10, Days: 2, Rain: 0.5 * mm}, {First: 13, Days: 1}}, runs)
}

func TestDryRunsRefuse(t *testing.T) {
	for wrong, bad := range refused() {
		_, err := rainfall.DryMonthRuns(bad, 1, [12]units.RainDepth{})
		refusedAt(t, err, wrong)
	}
	for _, share := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		_, err := rainfall.DryMonthRuns(nil, units.Fraction(share), [12]units.RainDepth{})
		impossible(t, err, "rainfall.DryMonthRuns: share is")
	}
	_, err := rainfall.DryMonthRuns(nil, 1, [12]units.RainDepth{6: -1})
	refusedAt(t, err, "normals[6]: -1000 mm is not a depth of rain")
	for _, under := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		_, err = rainfall.DryDayRuns(nil, units.RainDepth(under))
		impossible(t, err, "rainfall.DryDayRuns: under is")
	}
	_, err = rainfall.DryDayRuns([]rainfall.DailyRain{{Rain: -1}}, 1)
	refusedAt(t, err, "days[0].rain: -1000 mm is not a depth of rain")
}

// How many years in ten bring at least 300 mm?
func ExampleChanceAtLeast() {
	years := []units.RainDepth{280 * mm, 310 * mm, 402 * mm, 355 * mm, 290 * mm, 330 * mm, 260 * mm, 410 * mm, 305 * mm}
	chance, err := rainfall.ChanceAtLeast(years, 300*mm, rainfall.PositionWeibull)
	fmt.Println(chance.In(units.Metric), err)
	// Output: 60 % <nil>
}

// Nine years in ten bring more than what?
func ExampleQuantile() {
	years := []units.RainDepth{280 * mm, 310 * mm, 402 * mm, 355 * mm, 290 * mm, 330 * mm, 260 * mm, 410 * mm, 305 * mm}
	depth, _ := rainfall.Quantile(years, 10*units.Percent, rainfall.RuleWeibull)
	fmt.Println(depth.In(units.Metric))
	// Output: 260 mm
}

// In which tenth of the years does this one lie?
func ExampleDecileOf() {
	years := []units.RainDepth{280 * mm, 310 * mm, 402 * mm, 355 * mm, 290 * mm, 330 * mm, 260 * mm, 410 * mm, 305 * mm}
	deciles, _ := rainfall.Deciles(years, rainfall.RuleWeibull)
	decile, _ := rainfall.DecileOf(300*mm, deciles)
	fmt.Println(decile)
	// Output: 4
}

// Where do the tenths of my record begin?
func ExampleDeciles() {
	years := []units.RainDepth{280 * mm, 310 * mm, 402 * mm, 355 * mm, 290 * mm, 330 * mm, 260 * mm, 410 * mm, 305 * mm}
	deciles, _ := rainfall.Deciles(years, rainfall.RuleWeibull)
	fmt.Println(deciles[0].In(units.Metric), deciles[4].In(units.Metric), deciles[8].In(units.Metric))
	// Output: 260 mm 310 mm 410 mm
}

// How far does my rain go up and down?
func ExampleVariation() {
	v, _ := rainfall.Variation([]units.RainDepth{200 * mm, 300 * mm, 400 * mm})
	fmt.Println(v.In(units.Metric))
	// Output: 33.3 %
}

// The driest of 19 years: what chance has one as dry?
func ExampleRankChance() {
	chance, _ := rainfall.RankChance(rainfall.PositionWeibull, 1, 19)
	fmt.Println(chance.In(units.Metric))
	// Output: 5 %
}

// And how often does it come?
func ExampleReturnPeriod() {
	years, _ := rainfall.ReturnPeriod(5 * units.Percent)
	fmt.Println("once in", units.Number(years), "years")
	// Output: once in 20 years
}

// A drought of one year in ten: what is the chance of one in the ten years of my
// lease?
func ExampleAtLeastOnce() {
	chance, _ := rainfall.AtLeastOnce(10, 10)
	fmt.Println(chance.In(units.Metric))
	// Output: 65.1 %
}

// How long did the dry spell last?
func ExampleDryMonthRuns() {
	normals, _ := rainfall.MonthNormals(years())
	runs, _ := rainfall.DryMonthRuns(years(), 80*units.Percent, normals)
	for _, r := range runs {
		fmt.Println(r.Months, "months from", time.Month(r.Month), r.Year)
	}
	// Output: 12 months from January 2000
}

// And how many days without a real rain?
func ExampleDryDayRuns() {
	var days []rainfall.DailyRain
	for i, depth := range []units.RainDepth{5, 0, 0.4, 0, 7} {
		days = append(days, rainfall.DailyRain{Date: units.Date(11474 + i), Rain: depth * mm})
	}
	runs, _ := rainfall.DryDayRuns(days, 1*mm)
	fmt.Println(runs[0].Days, "days from", runs[0].First)
	// Output: 3 days from 2001-06-02
}
