package rainfall_test

import (
	"encoding/csv"
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

// csvRows reads a file of testdata, its head first.
func csvRows(t require.TestingT, path string) [][]string {
	file, err := os.Open(path)
	require.NoError(t, err)
	defer file.Close()
	r := csv.NewReader(file)
	r.Comment = '#'
	rows, err := r.ReadAll()
	require.NoError(t, err)
	return rows
}

// fortCollins reads the monthly record of 1961 to 1990.
func fortCollins(t *testing.T) []rainfall.MonthlyRain {
	rows := csvRows(t, "testdata/fort_collins_1961_1990.csv")
	var record []rainfall.MonthlyRain
	for _, row := range rows[1:] {
		year, err := strconv.Atoi(row[0])
		require.NoError(t, err)
		for m, cell := range row[1:] {
			mm, err := strconv.ParseFloat(cell, 64)
			require.NoError(t, err)
			record = append(record, rainfall.MonthlyRain{Year: year, Month: time.Month(m + 1), Rain: units.RainDepth(mm) * units.RainMillimetre})
		}
	}
	require.Len(t, record, 30*12)
	return record
}

// The normals as computed with R 4.2.2 from the same public record, to 0.1 mm.
func TestFortCollinsNormals(t *testing.T) {
	normals, err := rainfall.MonthNormals(fortCollins(t))
	require.NoError(t, err)
	want := [12]float64{10.8, 9.9, 34.3, 44.8, 68.1, 48.3, 46.2, 32.2, 33.0, 24.7, 18.0, 13.0}
	sum := 0.0
	for m, mm := range want {
		assert.InDelta(t, mm, normals[m].Millimetres(), 0.05+1e-9, time.Month(m+1))
		sum += normals[m].Millimetres()
	}
	assert.InDelta(t, 383.3, sum, 0.05)
	assert.InDelta(t, 161.2, (normals[3] + normals[4] + normals[5]).Millimetres(), 0.05)
}

// Totals of the years 1961 to 1972 as computed with R 4.2.2.
func TestFortCollinsYears(t *testing.T) {
	record := fortCollins(t)
	for i, mm := range []float64{721, 335, 306, 205, 410, 186, 541, 338, 450, 364, 355, 252} {
		total, err := rainfall.YearTotal(record, 1961+i)
		require.NoError(t, err)
		assert.InDelta(t, mm, total.Millimetres(), 1e-6, 1961+i)
	}
}

// April to June 1966 had 83 mm, 51.5 % of normal (R 4.2.2): on 1 July the whole
// run is past.
func TestKeyRainShareOfADrySpring(t *testing.T) {
	record := fortCollins(t)
	normals, err := rainfall.MonthNormals(record)
	require.NoError(t, err)
	share, err := rainfall.KeyRainShare(day(t, "1966-07-01"), []int{4, 5, 6}, record, normals)
	require.NoError(t, err)
	assert.InDelta(t, 51.5, share.Percent(), 0.05)
}

func day(t require.TestingT, text string) units.Date {
	date, err := units.ParseDate(text)
	require.NoError(t, err)
	return date
}

func rain(year int, month time.Month, mm float64) rainfall.MonthlyRain {
	return rainfall.MonthlyRain{Year: year, Month: month, Rain: units.RainDepth(mm) * units.RainMillimetre}
}

func TestKeyRainShare(t *testing.T) {
	var normals [12]units.RainDepth
	for m, mm := range []float64{10, 20, 30, 40, 60, 50, 45, 35, 30, 25, 50, 30} {
		normals[m] = units.RainDepth(mm) * units.RainMillimetre
	}
	spring := []int{4, 5, 6}
	winter := []int{11, 12, 1}
	record := []rainfall.MonthlyRain{
		rain(1999, 4, 40), rain(1999, 5, 30), rain(1999, 6, 20),
		rain(2000, 3, 500), rain(2000, 4, 10), rain(2000, 5, 15), rain(2000, 6, 200), rain(2000, 7, 1),
		rain(2000, 11, 25), rain(2000, 12, 15), rain(2001, 1, 8),
	}
	for _, c := range []struct {
		name   string
		date   string
		months []int
		record []rainfall.MonthlyRain
		want   float64
	}{
		{"before the run opens the last one counts: (40 + 30 + 20) ÷ (40 + 60 + 50)", "2000-03-31", spring, record, 90.0 / 150},
		{"the run opens and nothing of it is past", "2000-04-01", spring, record, 1},
		{"April is not wholly past on its last day", "2000-04-30", spring, record, 1},
		{"April, the others normal: (10 + 60 + 50) ÷ 150", "2000-05-01", spring, record, 120.0 / 150},
		{"April and May, June normal: (10 + 15 + 50) ÷ 150", "2000-06-30", spring, record, 75.0 / 150},
		{"never above 1: 225 ÷ 150", "2000-07-01", spring, record, 1},
		{"a month the record lacks is normal: (40 + 15 + 50) ÷ 150", "2000-06-02", spring, record[5:], 105.0 / 150},
		{"none known", "2002-08-01", spring, record, 1},
		{"no record", "2000-08-01", spring, nil, 1},
		{"no key months", "2000-08-01", nil, record, 1},
		{"across the turn of the year, before January is past: (25 + 15 + 10) ÷ 90", "2001-01-20", winter, record, 50.0 / 90},
		{"and after: 48 ÷ 90", "2001-02-01", winter, record, 48.0 / 90},
		{"and until the next run: 48 ÷ 90", "2001-10-31", winter, record, 48.0 / 90},
		{"the next run opens", "2001-11-01", winter, record, 1},
	} {
		t.Run(c.name, func(t *testing.T) {
			got, err := rainfall.KeyRainShare(day(t, c.date), c.months, c.record, normals)
			require.NoError(t, err)
			assert.InDelta(t, c.want, got.Whole(), 1e-12)
		})
	}
	got, err := rainfall.KeyRainShare(day(t, "2000-05-01"), spring, record, [12]units.RainDepth{})
	require.NoError(t, err)
	assert.Equal(t, units.Whole, got, "a month whose normal is nothing tells nothing")
}

func TestKeyRainShareRefuses(t *testing.T) {
	normals := [12]units.RainDepth{3: 1, 4: 1}
	on := day(t, "2000-06-01")
	record := []rainfall.MonthlyRain{rain(2000, 4, 10)}
	for want, months := range map[string][]int{
		"keyMonths[0]: 0 is not a month; 1 to 12": {0}, "keyMonths[1]: 13 is not a month": {4, 13}, "keyMonths[1]: 4 is named again": {4, 4},
		"keyMonths[2]: 12 goes round the year more than once; the months in the order they come": {11, 1, 12}, "keyMonths[2]: 2 goes round": {5, 3, 2},
	} {
		_, err := rainfall.KeyRainShare(on, months, record, normals)
		refusedAt(t, err, want)
	}
	for wrong, bad := range refused() {
		_, err := rainfall.KeyRainShare(on, []int{4}, bad, normals)
		refusedAt(t, err, wrong)
	}
	normals[7] = -1
	_, err := rainfall.KeyRainShare(on, []int{4}, record, normals)
	refusedAt(t, err, "normals[7]: -1000 mm is not a depth of rain")
}

func refused() map[string][]rainfall.MonthlyRain {
	return map[string][]rainfall.MonthlyRain{
		"record[1]: April 2000 is there twice; each month once":          {rain(2000, 4, 10), rain(2000, 4, 12)},
		"record[0].month: 13 is not a month; 1 to 12":                    {rain(2000, 13, 10)},
		"record[0].month: 0 is not a month; 1 to 12":                     {rain(2000, 0, 10)},
		"record[0].rain: -1 mm is not a depth of rain; 0 mm to 1000 m":   {rain(2000, 4, -1)},
		"record[1].rain: NaN mm is not a depth of rain; 0 mm to 1000 m":  {rain(2000, 3, 1), rain(2000, 4, math.NaN())},
		"record[0].rain: +Inf mm is not a depth of rain; 0 mm to 1000 m": {rain(2000, 4, math.Inf(1))},
	}
}

func TestMonthNormalsRefuses(t *testing.T) {
	for wrong, bad := range refused() {
		_, err := rainfall.MonthNormals(bad)
		refusedAt(t, err, wrong)
	}
	normals, err := rainfall.MonthNormals([]rainfall.MonthlyRain{rain(2000, 1, 10)})
	refusedAt(t, err, "record: has no February in any year; every month in one year or more")
	for _, normal := range normals {
		assert.True(t, math.IsNaN(float64(normal)))
	}
}

func TestYearTotalRefuses(t *testing.T) {
	for wrong, bad := range refused() {
		_, err := rainfall.YearTotal(bad, 2000)
		refusedAt(t, err, wrong)
	}
	total, err := rainfall.YearTotal(fortCollins(t)[:12+11], 1962)
	refusedAt(t, err, "record: lacks December 1962; all twelve months of the year")
	assert.True(t, math.IsNaN(float64(total)))
}

// One year is its own normal, and twice the rain is twice the normal.
func TestMonthNormalsScale(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var record, double []rainfall.MonthlyRain
		for year := range rapid.IntRange(1, 5).Draw(t, "years") {
			for m := time.January; m <= time.December; m++ {
				r := rain(2000+year, m, rapid.Float64Range(0, 400).Draw(t, "rain"))
				record = append(record, r)
				r.Rain *= 2
				double = append(double, r)
			}
		}
		one, err := rainfall.MonthNormals(record)
		require.NoError(t, err)
		two, err := rainfall.MonthNormals(double)
		require.NoError(t, err)
		for m := range one {
			assert.InDelta(t, 2*float64(one[m]), float64(two[m]), 1e-12)
		}
		share, err := rainfall.KeyRainShare(day(t, "2000-12-31"), []int{3, 4, 5}, record, one)
		require.NoError(t, err)
		assert.True(t, share >= 0 && share <= 1)
	})
}

// Yearly rain of Seattle as R 4.2.2 sums it from the same public record.
func TestSeattleTotals(t *testing.T) {
	days := seattle(t)
	years, err := rainfall.DayTotals(days, 1, 1, 12, 31)
	require.NoError(t, err)
	require.Len(t, years, 2)
	assert.InDelta(t, 1226.0, years[0].Rain.Millimetres(), 0.05)
	assert.InDelta(t, 828.0, years[1].Rain.Millimetres(), 0.05)
	months, err := rainfall.MonthTotals(days)
	require.NoError(t, err)
	require.Len(t, months, 24)
	total, err := rainfall.YearTotal(months, 2012)
	require.NoError(t, err)
	assert.InDelta(t, 1226.0, total.Millimetres(), 0.05)

	// 1 to 12 January 2012: 10.9 + 0.8 + 20.3 + 1.3 + 2.5 + 4.3 + 1.0 = 41.1
	years, err = rainfall.DayTotals(days, 1, 1, 1, 12)
	require.NoError(t, err)
	assert.InDelta(t, 41.1, years[0].Rain.Millimetres(), 1e-9)
	// across the turn of the year, the second winter has no end
	years, err = rainfall.DayTotals(days, 11, 1, 2, 28)
	require.NoError(t, err)
	require.Len(t, years, 1)
	want := 0.0
	for _, m := range months {
		if number := m.Year*12 + int(m.Month); number >= 2012*12+11 && number <= 2013*12+2 {
			want += m.Rain.Millimetres()
		}
	}
	assert.InDelta(t, want, years[0].Rain.Millimetres(), 1e-9)
	// a day is missing: its month and its year are gaps
	broken := append(days[:40:40], days[41:]...)
	months, err = rainfall.MonthTotals(broken)
	require.NoError(t, err)
	assert.Len(t, months, 23)
	assert.Equal(t, time.March, months[1].Month)
	months, err = rainfall.MonthTotals(days[1:31])
	require.NoError(t, err)
	assert.Empty(t, months, "a month that begins on the 2nd is not whole")
	years, err = rainfall.DayTotals(broken, 1, 1, 12, 31)
	require.NoError(t, err)
	require.Len(t, years, 1)
	assert.Equal(t, 2013, years[0].Year)
}

func TestDailyRefuses(t *testing.T) {
	for wrong, bad := range map[string][]rainfall.DailyRain{
		"days[1].date: 1970-01-02 comes after 1970-01-02; each day once, in order": {{Date: 1}, {Date: 1}},
		"days[0].rain: -1000 mm is not a depth of rain":                            {{Date: 1, Rain: -1}},
		"days[0].rain: NaN mm is not a depth of rain":                              {{Date: 1, Rain: units.RainDepth(math.NaN())}},
	} {
		_, err := rainfall.MonthTotals(bad)
		refusedAt(t, err, wrong)
		_, err = rainfall.DayTotals(bad, 1, 1, 2, 1)
		refusedAt(t, err, wrong)
	}
	for want, d := range map[string][4]int{
		"rainfall.DayTotals: firstDay is 29, must be from 1 to 28":  {2, 29, 3, 1},
		"rainfall.DayTotals: lastDay is 29, must be from 1 to 28":   {1, 1, 2, 29},
		"rainfall.DayTotals: firstMonth is 0, must be from 1 to 12": {0, 1, 1, 1},
		"rainfall.DayTotals: lastMonth is 13, must be from 1 to 12": {1, 1, 13, 1},
		"rainfall.DayTotals: lastDay is 31, must be from 1 to 30":   {1, 1, 6, 31},
		"rainfall.DayTotals: firstDay is 0, must be from 1 to 31":   {1, 0, 6, 30},
	} {
		_, err := rainfall.DayTotals(nil, d[0], d[1], d[2], d[3])
		impossible(t, err, want)
	}
	// the last days that a date can name
	edge := []rainfall.DailyRain{{Date: math.MinInt32}, {Date: math.MaxInt32 - 1}, {Date: math.MaxInt32}}
	months, err := rainfall.MonthTotals(edge)
	require.NoError(t, err)
	assert.Empty(t, months)
	years, err := rainfall.DayTotals(edge, 6, 1, 5, 31)
	require.NoError(t, err)
	assert.Empty(t, years)
}

// Sums of 3 and of 12 months at Wichita as R 4.2.2 gives them.
func TestWichitaSums(t *testing.T) {
	record := recordOf(t, "wichita_record.csv")
	for _, months := range []int{3, 12} {
		sums, err := rainfall.SumMonths(record, months)
		require.NoError(t, err)
		require.Len(t, sums, 382-months+1)
		by := map[[2]int]float64{}
		for _, s := range sums {
			by[[2]int{s.Year, int(s.Month)}] = s.Rain.Millimetres()
		}
		for _, row := range wichitaIndex(t) {
			want := map[int]float64{3: row.p3, 12: row.p12}[months]
			assert.InDelta(t, want, by[[2]int{row.year, row.month}], 0.05)
		}
	}
	// unsorted, and March is not known
	sums, err := rainfall.SumMonths([]rainfall.MonthlyRain{rain(2000, 5, 3), rain(2000, 4, 5), rain(2000, 2, 10), rain(2000, 1, 20), rain(1999, 12, 40)}, 2)
	require.NoError(t, err)
	assert.Equal(t, []rainfall.MonthlyRain{rain(2000, 1, 60), rain(2000, 2, 30), rain(2000, 5, 8)}, rounded(sums))
	sums, err = rainfall.SumMonths(record, 400)
	require.NoError(t, err)
	assert.Empty(t, sums)
}

// rounded takes the last bits off sums of whole millimetres.
func rounded(record []rainfall.MonthlyRain) []rainfall.MonthlyRain {
	for i := range record {
		record[i] = rain(record[i].Year, record[i].Month, math.Round(record[i].Rain.Millimetres()))
	}
	return record
}

func TestSumMonthsRefuses(t *testing.T) {
	for wrong, bad := range refused() {
		_, err := rainfall.SumMonths(bad, 3)
		refusedAt(t, err, wrong)
	}
	_, err := rainfall.SumMonths(nil, 0)
	impossible(t, err, "rainfall.SumMonths: months is 0, must be at least 1")
}

// Years and springs at Fort Collins as R 4.2.2 sums them.
func TestKeyTotals(t *testing.T) {
	record := recordOf(t, "fort_collins_record.csv")
	years, err := rainfall.KeyTotals(record, allMonths)
	require.NoError(t, err)
	require.Len(t, years, 103)
	for year, mm := range map[int]float64{1966: 186, 1939: 200, 1954: 203, 1934: 226, 1974: 295, 1902: 468, 1983: 493, 1979: 563, 1961: 721} {
		assert.Equal(t, year, years[year-1895].Year)
		assert.InDelta(t, mm, years[year-1895].Rain.Millimetres(), 1e-6)
	}
	springs, err := rainfall.KeyTotals(record, []int{4, 5, 6})
	require.NoError(t, err)
	for year, mm := range map[int]float64{1954: 61, 1966: 83, 1974: 118, 1983: 275} {
		assert.InDelta(t, mm, springs[year-1895].Rain.Millimetres(), 1e-6)
	}
	assert.InDelta(t, float64(springs[1].Rain), float64(rainfall.Depths(springs)[1]), 0)

	// a winter is of the year in which it begins, and one that lacks a month is none
	winters, err := rainfall.KeyTotals([]rainfall.MonthlyRain{
		rain(2000, 1, 7), rain(2000, 11, 1), rain(2001, 1, 4), rain(2000, 12, 2), rain(2001, 6, 9), rain(2001, 11, 9), rain(2002, 1, 9), rain(2002, 12, 9),
	}, []int{11, 12, 1})
	require.NoError(t, err)
	require.Len(t, winters, 1)
	assert.Equal(t, 2000, winters[0].Year)
	assert.InDelta(t, 7, winters[0].Rain.Millimetres(), 1e-9)
}

func TestKeyTotalsRefuses(t *testing.T) {
	for wrong, bad := range refused() {
		_, err := rainfall.KeyTotals(bad, []int{4})
		refusedAt(t, err, wrong)
	}
	_, err := rainfall.KeyTotals(nil, nil)
	refusedAt(t, err, "keyMonths: is empty; the months that decide the year")
	_, err = rainfall.KeyTotals(nil, []int{4, 4})
	refusedAt(t, err, "keyMonths[1]: 4 is named again; each month once")
}

// What fell in each month of my daily book?
func ExampleMonthTotals() {
	var days []rainfall.DailyRain
	for i := range 30 {
		days = append(days, rainfall.DailyRain{Date: units.Date(11474 + i), Rain: 2 * units.RainMillimetre}) // from 1 June 2001
	}
	months, _ := rainfall.MonthTotals(days)
	fmt.Println(months[0].Month, months[0].Rain.In(units.Metric))
	// Output: June 60 mm
}

// And from 10 to 20 June?
func ExampleDayTotals() {
	var days []rainfall.DailyRain
	for i := range 30 {
		days = append(days, rainfall.DailyRain{Date: units.Date(11474 + i), Rain: 2 * units.RainMillimetre})
	}
	totals, _ := rainfall.DayTotals(days, 6, 10, 6, 20)
	fmt.Println(totals[0].Year, totals[0].Rain.In(units.Metric))
	// Output: 2001 22 mm
}

// How much fell in the last three months of each?
func ExampleSumMonths() {
	sums, _ := rainfall.SumMonths(years(), 3)
	fmt.Println(sums[0].Month, sums[0].Year, sums[0].Rain.In(units.Metric))
	// Output: March 2000 90 mm
}

// How much fell from April to June, year by year?
func ExampleKeyTotals() {
	springs, _ := rainfall.KeyTotals(years(), []int{4, 5, 6})
	for _, s := range springs {
		fmt.Println(s.Year, s.Rain.In(units.Metric))
	}
	// Output:
	// 2000 90 mm
	// 2001 150 mm
}

// The same as a plain list.
func ExampleDepths() {
	springs, _ := rainfall.KeyTotals(years(), []int{4, 5, 6})
	fmt.Println(len(rainfall.Depths(springs)))
	// Output: 2
}
