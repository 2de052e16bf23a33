package rainfall_test

import (
	"encoding/csv"
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

// fortCollins reads the monthly record of 1961 to 1990.
func fortCollins(t *testing.T) []rainfall.MonthlyRain {
	file, err := os.Open("testdata/fort_collins_1961_1990.csv")
	require.NoError(t, err)
	defer file.Close()
	r := csv.NewReader(file)
	r.Comment = '#'
	rows, err := r.ReadAll()
	require.NoError(t, err)
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
		{"April alone: 10 ÷ 40", "2000-05-01", spring, record, 10.0 / 40},
		{"April and May: 25 ÷ 100", "2000-06-30", spring, record, 25.0 / 100},
		{"never above 1: 225 ÷ 150", "2000-07-01", spring, record, 1},
		{"a month the record lacks is left out of both sums: 15 ÷ 60", "2000-06-02", spring, record[5:], 15.0 / 60},
		{"none known", "2002-08-01", spring, record, 1},
		{"no record", "2000-08-01", spring, nil, 1},
		{"no key months", "2000-08-01", nil, record, 1},
		{"across the turn of the year, before January is past: 40 ÷ 80", "2001-01-20", winter, record, 40.0 / 80},
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
	for _, months := range [][]int{{0}, {13}, {4, 4}} {
		_, err := rainfall.KeyRainShare(on, months, record, normals)
		assert.ErrorContains(t, err, "key month")
	}
	for wrong, bad := range refused() {
		_, err := rainfall.KeyRainShare(on, []int{4}, bad, normals)
		assert.ErrorContains(t, err, wrong)
	}
	normals[7] = -1
	_, err := rainfall.KeyRainShare(on, []int{4}, record, normals)
	assert.ErrorContains(t, err, "the normal of August is -1000 mm")
}

func refused() map[string][]rainfall.MonthlyRain {
	return map[string][]rainfall.MonthlyRain{
		"record[1]: April 2000 stands twice":           {rain(2000, 4, 10), rain(2000, 4, 12)},
		"record[0]: month 13 is none of 1 to 12":       {rain(2000, 13, 10)},
		"record[0]: month 0 is none of 1 to 12":        {rain(2000, 0, 10)},
		"record[0]: the rain of April 2000 is -1 mm":   {rain(2000, 4, -1)},
		"record[0]: the rain of April 2000 is NaN mm":  {rain(2000, 4, math.NaN())},
		"record[0]: the rain of April 2000 is +Inf mm": {rain(2000, 4, math.Inf(1))},
	}
}

func TestMonthNormalsRefuses(t *testing.T) {
	for wrong, bad := range refused() {
		_, err := rainfall.MonthNormals(bad)
		assert.ErrorContains(t, err, wrong)
	}
	normals, err := rainfall.MonthNormals([]rainfall.MonthlyRain{rain(2000, 1, 10)})
	assert.ErrorContains(t, err, "no year of the record has February")
	assert.Zero(t, normals)
}

func TestYearTotalRefuses(t *testing.T) {
	for wrong, bad := range refused() {
		_, err := rainfall.YearTotal(bad, 2000)
		assert.ErrorContains(t, err, wrong)
	}
	_, err := rainfall.YearTotal(fortCollins(t)[:12+11], 1962)
	assert.ErrorContains(t, err, "the record lacks December 1962")
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
