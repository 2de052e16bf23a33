package rainfall_test

import (
	"errors"
	"fmt"
	"math"
	"os"
	"strconv"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// indexRow is a row of the reference of wichita_index.csv.
type indexRow struct {
	year, month int
	p3, p12     float64
	index       map[string]string // printed digits by column
}

func wichitaIndex(t require.TestingT) []indexRow {
	rows := csvRows(t, "testdata/wichita_index.csv")
	var all []indexRow
	for _, cells := range rows[1:] {
		row := indexRow{index: map[string]string{}}
		for i, cell := range cells {
			row.index[rows[0][i]] = cell
		}
		row.year, _ = strconv.Atoi(cells[0])
		row.month, _ = strconv.Atoi(cells[1])
		row.p3, _ = strconv.ParseFloat(row.index["P3"], 64)
		row.p12, _ = strconv.ParseFloat(row.index["P12"], 64)
		all = append(all, row)
	}
	require.Len(t, all, 24)
	return all
}

// sumsEnding gives the rain of so many months that end with a calendar month.
func sumsEnding(t require.TestingT, record []rainfall.MonthlyRain, month time.Month, months int) (depths []units.RainDepth) {
	sums, err := rainfall.SumMonths(record, months)
	require.NoError(t, err)
	for _, s := range sums {
		if s.Month == month {
			depths = append(depths, s.Rain)
		}
	}
	return depths
}

// The fits as R 4.2.2 gives them: Wichita three months by Thom, Fort Collins
// years and springs by Thom; shares without rain by count.
func TestFitsOfWichita(t *testing.T) {
	record := recordOf(t, "wichita_record.csv")
	for month, want := range map[time.Month][2]float64{
		time.March: {3.4509, 34.596}, time.June: {6.8300, 44.684}, time.September: {4.7205, 53.114}, time.December: {3.0163, 45.155},
	} {
		fit, err := rainfall.FitRain(sumsEnding(t, record, month, 3), rainfall.FitThom)
		require.NoError(t, err)
		assert.InDelta(t, want[0], fit.Shape, 0.00005, month)
		assert.InDelta(t, want[1], fit.Scale.Millimetres(), 0.0005, month)
		assert.Zero(t, fit.Dry)
	}
	for month, want := range map[time.Month]float64{time.January: 1.0 / 32, time.February: 2.0 / 32, time.November: 1.0 / 31, time.April: 0} {
		for kind := rainfall.FitThom; kind <= rainfall.FitMoments; kind++ {
			fit, err := rainfall.FitRain(sumsEnding(t, record, month, 1), kind)
			require.NoError(t, err)
			assert.InDelta(t, want, fit.Dry.Whole(), 1e-12, month)
		}
	}
	fit, err := rainfall.FitRain(annual(t), rainfall.FitThom)
	require.NoError(t, err)
	assert.InDelta(t, 14.1955, fit.Shape, 0.00005)
	assert.InDelta(t, 27.18085, fit.Scale.Millimetres(), 0.000005, "R 4.2.2; 27.1809 where it is printed")
	fit, err = rainfall.FitRain(spring(t), rainfall.FitThom)
	require.NoError(t, err)
	assert.InDelta(t, 7.1648, fit.Shape, 0.00005)
	assert.InDelta(t, 23.3098, fit.Scale.Millimetres(), 0.00005)
}

// TestIndexOfWichita: SPI of 1, 3 and 12 months to half of the last digit of the
// reference. Its column by L-moments of one month (SPEI 1.8.1) lacks the
// correction for months without rain in January, February and November; for these
// the corrected values stand here, computed with R 4.2.2 from the same fit.
func TestIndexOfWichita(t *testing.T) {
	record := recordOf(t, "wichita_record.csv")
	corrected := map[[2]int]string{
		{2000, 1}: "0.3907", {2000, 2}: "1.3665", {2000, 11}: "-0.0401", {2001, 1}: "0.9429", {2001, 2}: "1.9503", {2001, 11}: "-0.3914",
	}
	for _, c := range []struct {
		column string
		months int
		fit    rainfall.Fit
	}{
		{"SPI1_thom", 1, rainfall.FitThom}, {"SPI3_thom", 3, rainfall.FitThom}, {"SPI12_thom", 12, rainfall.FitThom},
		{"SPI3_ml", 3, rainfall.FitLikelihood},
		{"SPI1_lmom", 1, rainfall.FitMoments}, {"SPI3_lmom", 3, rainfall.FitMoments}, {"SPI12_lmom", 12, rainfall.FitMoments},
	} {
		indices, err := rainfall.RainIndex(record, c.months, c.fit)
		require.NoError(t, err)
		require.Len(t, indices, 382-c.months+1)
		got := map[[2]int]rainfall.MonthlyIndex{}
		for _, i := range indices {
			got[[2]int{i.Year, i.Month}] = i
		}
		for _, row := range wichitaIndex(t) {
			at := [2]int{row.year, row.month}
			printed := row.index[c.column]
			if c.column == "SPI1_lmom" && corrected[at] != "" {
				printed = corrected[at]
			}
			want, err := strconv.ParseFloat(printed, 64)
			require.NoError(t, err)
			assert.InDelta(t, want, got[at].Index, 0.00005+1e-9, "%s %v", c.column, at)
			assert.False(t, got[at].Bounded)
		}
	}
}

// The fits differ as the reference says: likelihood against Thom at most 0.0007,
// L-moments against Thom up to 0.20 (three months, the whole record).
func TestFitsDiffer(t *testing.T) {
	record := recordOf(t, "wichita_record.csv")
	by := map[rainfall.Fit][]rainfall.MonthlyIndex{}
	for fit := rainfall.FitThom; fit <= rainfall.FitMoments; fit++ {
		var err error
		by[fit], err = rainfall.RainIndex(record, 3, fit)
		require.NoError(t, err)
	}
	likelihood, moments := 0.0, 0.0
	for i, thom := range by[rainfall.FitThom] {
		likelihood = max(likelihood, math.Abs(by[rainfall.FitLikelihood][i].Index-thom.Index))
		moments = max(moments, math.Abs(by[rainfall.FitMoments][i].Index-thom.Index))
	}
	assert.InDelta(t, 0.0007, likelihood, 0.00005)
	assert.InDelta(t, 0.20, moments, 0.005)
}

// A month without rain has the index of the plain share of such years, whatever
// the fit: qnorm(1/32), qnorm(2/32), qnorm(1/31) with R 4.2.2.
func TestIndexOfDryMonths(t *testing.T) {
	want := map[int]float64{1: -1.8627319, 2: -1.5341205, 11: -1.8485963}
	for fit := rainfall.FitThom; fit <= rainfall.FitMoments; fit++ {
		indices, err := rainfall.RainIndex(recordOf(t, "wichita_record.csv"), 1, fit)
		require.NoError(t, err)
		dry := 0
		for _, i := range indices {
			if i.Rain == 0 {
				dry++
				assert.InDelta(t, want[i.Month], i.Index, 1e-7)
			}
		}
		assert.Equal(t, 4, dry)
	}
	// a month that is always dry, and one with a single depth, have no index
	var record []rainfall.MonthlyRain
	for year := 2000; year < 2010; year++ {
		record = append(record, rain(year, 7, 0), rain(year, 8, 5), rain(year, 9, float64(year-1995)))
	}
	indices, err := rainfall.RainIndex(record, 1, rainfall.FitThom)
	require.NoError(t, err)
	require.Len(t, indices, 10)
	assert.Equal(t, 9, indices[0].Month)
}

// TestIndexIsFinite: whatever finite record, no index is infinite or not a number,
// and more rain in the same month never has a lower one.
func TestIndexIsFinite(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		depth := rapid.OneOf(rapid.Just(0.0), rapid.Float64Range(0, 500), rapid.Float64Range(0, 1e6), rapid.Float64Range(0, 1e-300), rapid.Float64Range(99.999999, 100))
		var record []rainfall.MonthlyRain
		for year := range rapid.IntRange(1, 40).Draw(t, "years") {
			for m := time.January; m <= time.December; m += 3 {
				record = append(record, rain(1900+year, m, depth.Draw(t, "rain")))
			}
		}
		fit := rainfall.Fit(rapid.IntRange(1, 3).Draw(t, "fit"))
		indices, err := rainfall.RainIndex(record, 1, fit)
		require.NoError(t, err)
		for _, a := range indices {
			require.False(t, math.IsNaN(a.Index) || math.IsInf(a.Index, 0), a)
			for _, b := range indices {
				if a.Month == b.Month && a.Rain < b.Rain {
					require.LessOrEqual(t, a.Index, b.Index+1e-9)
				}
			}
		}
	})
}

// A thousand years of drizzle and one flood: its chance is nearer to 1 than a
// number can tell.
func TestIndexIsBounded(t *testing.T) {
	var record []rainfall.MonthlyRain
	for year := range 1000 {
		record = append(record, rain(1000+year, 5, 1e-3+1e-9*float64(year)))
	}
	record = append(record, rain(2000, 5, 1e6))
	indices, err := rainfall.RainIndex(record, 1, rainfall.FitThom)
	require.NoError(t, err)
	last := indices[len(indices)-1]
	assert.True(t, last.Bounded)
	assert.InDelta(t, 8.209536, last.Index, 1e-6)
	assert.False(t, indices[0].Bounded)
}

// FuzzStandardIndex: no panic, and nothing infinite beside a nil or a range error.
func FuzzStandardIndex(f *testing.F) {
	f.Add(0.1, 2.0, 0.02, 0.1)
	f.Add(0.0, 1e300, 1e-300, 0.0)
	f.Add(1e300, 1e-300, 1e-300, 0.0)
	f.Add(1e9, 1e9, 1.0, 0.0)
	f.Add(1.0, 5e-324, 5e-324, 0.999999999)
	f.Fuzz(func(t *testing.T, depth, shape, scale, dry float64) {
		index, err := rainfall.StandardIndex(units.RainDepth(depth), shape, units.RainDepth(scale), units.Fraction(dry))
		if units.Impossible(err) {
			return
		}
		if math.IsNaN(index) || math.IsInf(index, 0) {
			t.Fatal(depth, shape, scale, dry, index, err)
		}
	})
}

func TestStandardIndexTellsItsBound(t *testing.T) {
	_, err := rainfall.StandardIndex(0, 2, 20*mm, 0)
	var ranged *units.RangeError
	require.True(t, errors.As(err, &ranged))
	assert.ErrorContains(t, err, "rain is 0 mm, outside what the fit covers (above 0 mm)")
	_, err = rainfall.StandardIndex(9000*mm, 2, 20*mm, 0)
	assert.ErrorContains(t, err, "rain is 9000 mm, outside what the fit covers (at least 0 mm and below 9000 mm)")
}

// The ratio of the first two L-moments of a gamma distribution is exactly
// gamma(a + 1/2) ÷ (√π gamma(a + 1)); the approximation is printed as within
// 0.005 % of it.
func TestShapeOfRatio(t *testing.T) {
	for _, shape := range []float64{0.02, 0.05, 0.1, 0.2, 0.4, 0.7, 0.95, 1.05, 1.2, 1.5, 2, 3, 5, 10, 30, 100} {
		up, _ := math.Lgamma(shape + 0.5)
		down, _ := math.Lgamma(shape + 1)
		ratio := math.Exp(up-down) / math.Sqrt(math.Pi)
		assert.InEpsilon(t, shape, rainfall.ShapeOfRatio(ratio), 5.1e-5, shape)
	}
}

func TestFitRefuses(t *testing.T) {
	for wrong, depths := range map[string][]units.RainDepth{
		"depths: a record of 0 known depths is too short; 1 or more": nil,
		"depths[1]: -1 mm is not a depth of rain":                    {mm, -1 * mm},
		"depths: has no two different depths above 0 mm":             {0, 0, 5 * mm, 5 * mm},
	} {
		fit, err := rainfall.FitRain(depths, rainfall.FitThom)
		refusedAt(t, err, wrong)
		assert.True(t, math.IsNaN(fit.Shape) && math.IsNaN(float64(fit.Scale)) && math.IsNaN(float64(fit.Dry)))
	}
	for _, n := range []int{-1, 0, 4} {
		_, err := rainfall.FitRain([]units.RainDepth{1, 2}, rainfall.Fit(n))
		unknown(t, err, fmt.Sprintf(`rainfall.FitRain: fit is "%d": no such word; it takes one of: thom, likelihood, moments`, n))
	}
	near := []units.RainDepth{1, units.RainDepth(math.Nextafter(1, 2))}
	if fit, err := rainfall.FitRain(near, rainfall.FitThom); err != nil {
		refusedAt(t, err, "too much alike")
	} else {
		assert.Greater(t, fit.Shape, 1e12)
	}
}

func TestRainIndexRefuses(t *testing.T) {
	for wrong, bad := range refused() {
		_, err := rainfall.RainIndex(bad, 3, rainfall.FitThom)
		refusedAt(t, err, wrong)
	}
	_, err := rainfall.RainIndex(nil, 0, rainfall.FitThom)
	impossible(t, err, "rainfall.RainIndex: months is 0, must be at least 1")
	for _, n := range []int{-1, 0, 4} {
		_, err = rainfall.RainIndex(nil, 1, rainfall.Fit(n))
		unknown(t, err, "rainfall.RainIndex: fit is")
	}
}

// TestClassRows: no class twice, every row with source and mark, the list a copy.
func TestClassRows(t *testing.T) {
	seen := map[string]bool{}
	for _, r := range rainfall.ClassRows() {
		key := fmt.Sprint(r.Scheme, r.Name)
		assert.False(t, seen[key], key)
		seen[key] = true
		assert.True(t, r.LowOpen || r.HighOpen || r.Low <= r.High, key)
		assert.Regexp(t, `^[A-Z][A-Z0-9]*(-[A-Z0-9]+)+`, r.Source)
		assert.Contains(t, []string{"A", "B", "practice"}, r.Mark)
	}
	rainfall.ClassRows()[0].Name = "other"
	assert.Equal(t, "extremely dry", rainfall.ClassRows()[0].Name)
}

// TestRainClass: no number between two bands is without a class.
func TestRainClass(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		scheme := rainfall.ClassScheme(rapid.IntRange(1, 9).Draw(t, "scheme"))
		low, high := -10.0, 10.0
		switch scheme {
		case rainfall.SchemeMonitorWhole, rainfall.SchemeMonitorBounds, rainfall.SchemePercentOfYear:
			low, high = 0, 100
		case rainfall.SchemeDecilePairs, rainfall.SchemeDecileSplit:
			low = 1
		}
		name, err := rainfall.RainClass(scheme, rapid.Float64Range(low, high).Draw(t, "value"))
		require.NoError(t, err)
		assert.NotEmpty(t, name)
	})
	for _, c := range []struct {
		scheme rainfall.ClassScheme
		value  float64
		want   string
	}{
		{rainfall.SchemeMonitorWhole, 101, "value is 101, must be from 0 to 100"},
		{rainfall.SchemeMonitorBounds, -1, "value is -1, must be from 0 to 100"},
		{rainfall.SchemeDecilePairs, 11, "value is 11, must be from 1 to 10"},
		{rainfall.SchemeDecileSplit, 0, "value is 0, must be from 1 to 10"},
		{rainfall.SchemePercentOfYear, -1, "value is -1, must be at least 0"},
		{rainfall.SchemePercentOfYear, math.Inf(1), "value is +Inf, must be at least 0"},
		{rainfall.SchemeIndex, math.NaN(), "value is NaN, must be a finite number"},
		{rainfall.SchemeIndex, math.Inf(-1), "value is -Inf, must be a finite number"},
	} {
		name, err := rainfall.RainClass(c.scheme, c.value)
		impossible(t, err, c.want)
		assert.Empty(t, name)
	}
	for _, n := range []int{-1, 0, 10} {
		_, err := rainfall.RainClass(rainfall.ClassScheme(n), 0)
		unknown(t, err, fmt.Sprintf(`rainfall.RainClass: scheme is "%d": no such word; it takes one of: index, index older`, n))
	}
	// years of Fort Collins under 75 % of normal, as R 4.2.2 counts them
	droughts := 0
	for _, depth := range annual(t) {
		name, err := rainfall.RainClass(rainfall.SchemePercentOfYear, depth.Millimetres()/383.3*100)
		require.NoError(t, err)
		if name == "drought" {
			droughts++
		}
	}
	assert.Equal(t, 15, droughts)
}

// How dry was the year 1966 at Fort Collins, with 186 mm?
func ExampleStandardIndex() {
	index, err := rainfall.StandardIndex(186*units.RainMillimetre, 14.1955, 27.1809*units.RainMillimetre, 0)
	word, _ := rainfall.RainClass(rainfall.SchemeIndex, index)
	fmt.Printf("%.2f %s %v\n", index, word, err)
	// Output: -2.36 extremely dry <nil>
}

// How often is a year as dry as that?
func ExampleChanceOfIndex() {
	chance, _ := rainfall.ChanceOfIndex(-2)
	fmt.Println(chance.In(units.Metric))
	// Output: 2.28 %
}

// Which distribution does my record of Junes follow? By hand: mean 50 mm, A =
// ln 50 - 3.790246 = 0.121777, shape (1 + √1.162370) ÷ 0.487110, scale 50 ÷ 4.266.
func ExampleFitRain() {
	fit, err := rainfall.FitRain([]units.RainDepth{20 * mm, 40 * mm, 80 * mm, 60 * mm, 0}, rainfall.FitThom)
	fmt.Printf("shape %.1f, scale %.0f mm, %s dry, %v\n", fit.Shape, fit.Scale.Millimetres(), fit.Dry.In(units.Metric), err)
	// Output: shape 4.3, scale 12 mm, 20 % dry, <nil>
}

// How dry are the last twelve months? R 4.2.2 has -1.69 for 515.2 mm.
func ExampleRainIndex() {
	text, _ := os.ReadFile("testdata/wichita_record.csv")
	record, _ := rainfall.ReadMonths(string(text))
	indices, _ := rainfall.RainIndex(record, 12, rainfall.FitThom)
	last := indices[len(indices)-1]
	word, _ := rainfall.RainClass(rainfall.SchemeIndex, last.Index)
	fmt.Printf("%d-%02d: %s, %s\n", last.Year, last.Month, last.Rain.In(units.Metric), word)
	// Output: 2011-10: 515 mm, severely dry
}

// My index is -1.6. What is that called?
func ExampleRainClass() {
	for _, scheme := range []rainfall.ClassScheme{rainfall.SchemeIndex, rainfall.SchemeIndexOlder, rainfall.SchemeMonitorIndex} {
		name, _ := rainfall.RainClass(scheme, -1.6)
		fmt.Println(name)
	}
	// Output:
	// severely dry
	// severe drought
	// extreme drought
}

// Which percentiles does the US Drought Monitor call severe?
func ExampleClassRows() {
	for _, r := range rainfall.ClassRows() {
		if r.Scheme == rainfall.SchemeMonitorWhole && r.Name == "severe drought" {
			fmt.Println(r.Low, "to", r.High, r.Source)
		}
	}
	// Output: 6 to 10 MONITOR-CLASSES D2
}
