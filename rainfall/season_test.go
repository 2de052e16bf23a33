package rainfall_test

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// seattleWeather reads two years of daily weather.
func seattleWeather(t *testing.T) []rainfall.DailyWeather {
	rows := csvRows(t, "testdata/seattle_daily.csv")
	var record []rainfall.DailyWeather
	for _, row := range rows[1:] {
		var v [3]float64
		for i := range v {
			var err error
			v[i], err = strconv.ParseFloat(row[i+1], 64)
			require.NoError(t, err)
		}
		record = append(record, rainfall.DailyWeather{Date: day(t, row[0]), Rain: units.RainDepth(v[0]) * units.RainMillimetre, High: units.Temperature(v[1]), Low: units.Temperature(v[2])})
	}
	require.Len(t, record, 731)
	return record
}

// TestSeattle holds the sums and dates against those computed apart, with a
// general-purpose package, from the same public record; forwards and shuffled.
func TestSeattle(t *testing.T) {
	record := seattleWeather(t)
	back := slices.Clone(record)
	slices.Reverse(back)
	for _, record := range [][]rainfall.DailyWeather{record, back} {
		for _, c := range []struct {
			year, reaches, before, sum0, sum5, start, spring, autumn string
		}{
			{"2012", "2012-02-08", "196.35", "511.3", "823.6", "2012-01-01", "2012-03-19", "2012-11-10"},
			{"2013", "2013-02-14", "199.45", "575.9", "1055.6", "2013-02-03", "2013-03-04", "2013-11-21"},
		} {
			first := day(t, c.year+"-01-01")
			number := func(text string) float64 { v, _ := strconv.ParseFloat(text, 64); return v }
			at, err := rainfall.DegreeDayDate(record, rainfall.WarmthMean, 0, first, 200)
			require.NoError(t, err)
			assert.Equal(t, c.reaches, at.String())
			sum, err := rainfall.DegreeDaySum(record, rainfall.WarmthMean, 0, first, at.Add(-1))
			require.NoError(t, err)
			assert.InDelta(t, number(c.before), float64(sum), 0.005)
			sum, err = rainfall.DegreeDaySum(record, rainfall.WarmthMean, 0, first, day(t, c.year+"-03-31"))
			require.NoError(t, err)
			assert.InDelta(t, number(c.sum0), float64(sum), 0.05+1e-9)
			sum, err = rainfall.DegreeDaySum(record, rainfall.WarmthMean, 5, first, day(t, c.year+"-06-30"))
			require.NoError(t, err)
			assert.InDelta(t, number(c.sum5), float64(sum), 0.05+1e-9)
			season, err := rainfall.SeasonByWarmth(record, 5, 5, first, day(t, c.year+"-07-01"), day(t, c.year+"-12-31"))
			require.NoError(t, err)
			assert.Equal(t, c.start, season.Start.String())
			assert.Equal(t, season.End.Sub(season.Start), season.Length)
		}
		years, err := rainfall.FrostYears(record, 0, 7)
		require.NoError(t, err)
		require.Len(t, years, 2)
		assert.Equal(t, "2012-03-19 true 2012-11-10 true", fmt.Sprint(years[0].LastSpring, years[0].Spring, years[0].FirstAutumn, years[0].Autumn))
		assert.Equal(t, "2013-03-04 true 2013-11-21 true", fmt.Sprint(years[1].LastSpring, years[1].Spring, years[1].FirstAutumn, years[1].Autumn))
		// Parted in January, as south of the equator: one summer is whole.
		south, err := rainfall.FrostYears(record, 0, 1)
		require.NoError(t, err)
		require.Len(t, south, 1)
		assert.Equal(t, "2013-01-01", south[0].Turn.String())
	}
}

// made makes a run of days of equal ends.
func made(t require.TestingT, from string, means ...float64) []rainfall.DailyWeather {
	first := day(t, from)
	var record []rainfall.DailyWeather
	for i, mean := range means {
		record = append(record, rainfall.DailyWeather{Date: first.Add(i), High: units.Temperature(mean + 4), Low: units.Temperature(mean - 4)})
	}
	return record
}

// TestSeasonByWarmth: at the limit is neither over nor under it, four days are not
// five, and cold before the turn ends nothing.
func TestSeasonByWarmth(t *testing.T) {
	record := made(t, "2001-01-01",
		6, 6, 6, 6, 5, 6, 6, 6, 6, 6, // from the 6th on
		4, 4, 4, 4, 4, 9, // cold before the turn
		4, 4, 5, 4, 4, 4, 4, 4, 9) // the turn on the 16th; from the 20th on
	season, err := rainfall.SeasonByWarmth(record, 5, 5, day(t, "2001-01-01"), day(t, "2001-01-16"), day(t, "2001-01-25"))
	require.NoError(t, err)
	assert.Equal(t, "2001-01-06 2001-01-20 true", fmt.Sprint(season.Start, season.End, season.Ended))
	assert.Equal(t, units.Days(14), season.Length)
	// The turn before the start: the end is looked for from the start on.
	season, err = rainfall.SeasonByWarmth(record, 5, 5, day(t, "2001-01-01"), day(t, "2001-01-02"), day(t, "2001-01-25"))
	require.NoError(t, err)
	assert.Equal(t, "2001-01-11", season.End.String())
}

// TestSeasonRefuses what it does not know, instead of guessing.
func TestSeasonRefuses(t *testing.T) {
	record := made(t, "2001-01-01", 6, 7, 8, 9, 10)
	from, to := day(t, "2001-01-01"), day(t, "2001-01-05")
	hole := slices.Delete(slices.Clone(record), 2, 3)
	twice := append(slices.Clone(record), record[3])
	gap, turned := slices.Clone(record), slices.Clone(record)
	gap[1].High = units.Temperature(math.NaN())
	turned[1].High, turned[1].Low = turned[1].Low, turned[1].High
	for want, bad := range map[string][]rainfall.DailyWeather{
		"record: lacks 2001-01-03; every day of the span":             hole,
		"record[5].date: 2001-01-04 is there twice; each day once":    twice,
		"record[1]: 3 °C to NaN °C are not the temperatures of a day": gap,
		"record[1]: 11 °C to 3 °C are not the temperatures of a day":  turned,
		"record: lacks 2001-01-01; every day of the span":             nil,
	} {
		sum, err := rainfall.DegreeDaySum(bad, rainfall.WarmthMean, 0, from, to)
		refusedAt(t, err, want)
		assert.True(t, math.IsNaN(float64(sum)))
		_, err = rainfall.DegreeDayDate(bad, rainfall.WarmthMean, 0, from, 1000)
		refusedAt(t, err, want)
		_, err = rainfall.SeasonByWarmth(bad, 5, 2, from, from, to)
		refusedAt(t, err, want)
	}
	_, err := rainfall.DegreeDaySum(record, rainfall.WarmthMean, 0, to, from)
	refusedAt(t, err, "last: 2001-01-01 is before first, 2001-01-05")
	hot := slices.Clone(record)
	hot[4].High = 101
	_, err = rainfall.DegreeDaySum(hot, rainfall.WarmthMean, 0, from, to)
	refusedAt(t, err, "record[4]: 6 °C to 101 °C are not the temperatures of a day; -100 °C to 100 °C")
	_, err = rainfall.DegreeDaySum(record, 3, 0, from, to)
	unknown(t, err, `rainfall.DegreeDaySum: form is "3": no such word; it takes one of: mean, corn`)
	_, err = rainfall.DegreeDaySum(record, 1, 31, from, to)
	impossible(t, err, "rainfall.DegreeDaySum: base is 31 °C, must be from -30 °C to 30 °C")
	_, err = rainfall.DegreeDaySum(record, 1, 0, from, day(t, "2001-01-06"))
	refusedAt(t, err, "record: lacks 2001-01-06")
	_, err = rainfall.DegreeDayDate(record, 1, 0, from, 0)
	impossible(t, err, "rainfall.DegreeDayDate: target is 0 °C day, must be above 0 °C day")
	_, err = rainfall.DegreeDayDate(record, 1, 99, from, 10)
	impossible(t, err, "rainfall.DegreeDayDate: base is 99 °C")
	_, err = rainfall.DegreeDayDate(record, 0, 0, from, 10)
	unknown(t, err, `rainfall.DegreeDayDate: form is "0"`)
	_, err = rainfall.DegreeDayDate(record, 1, 0, from, 41)
	refusedAt(t, err, "record: ends on 2001-01-05 with 40 °C day of the 41 °C day; every day until the target is reached")
	at, err := rainfall.DegreeDayDate(record, 1, 0, from, 40)
	require.NoError(t, err)
	assert.Equal(t, to, at)
	_, err = rainfall.SeasonByWarmth(record, 5, 2, from, to.Add(1), to)
	refusedAt(t, err, "turn: 2001-01-06 is outside the span; 2001-01-01 to 2001-01-05")
	_, err = rainfall.SeasonByWarmth(record, 5, 0, from, from, to)
	impossible(t, err, "rainfall.SeasonByWarmth: run is 0 days, must be at least 1 day")
	_, err = rainfall.SeasonByWarmth(record, units.Temperature(math.NaN()), 5, from, from, to)
	impossible(t, err, "rainfall.SeasonByWarmth: limit is NaN, must be a finite number")
	_, err = rainfall.SeasonByWarmth(record, 11, 5, from, from, to)
	refusedAt(t, err, "record: has no 5 days in a row over 11 °C from 2001-01-01 to 2001-01-05")
	season, err := rainfall.SeasonByWarmth(record, 5, 5, from, from, to)
	require.NoError(t, err)
	assert.Equal(t, rainfall.GrowingSeason{Start: from, End: to.Add(1), Length: 5}, season, "it has not ended")

	_, err = rainfall.FrostYears(record, 0, 7)
	refusedAt(t, err, "record: has no year with every day")
	_, err = rainfall.FrostYears([]rainfall.DailyWeather{{Date: math.MinInt32}, {Date: math.MaxInt32}}, 0, 7)
	refusedAt(t, err, "record: has no year with every day") // and at once, over twelve million years
	_, err = rainfall.FrostYears(nil, 0, 7)
	refusedAt(t, err, "record: is empty")
	_, err = rainfall.FrostYears(twice, 0, 7)
	refusedAt(t, err, "record[5].date: 2001-01-04 is there twice")
	for _, month := range []int{0, 13} {
		_, err = rainfall.FrostYears(record, 0, month)
		impossible(t, err, "must be from 1 to 12")
	}
	_, err = rainfall.FrostYears(record, units.Temperature(math.Inf(1)), 7)
	impossible(t, err, "rainfall.FrostYears: limit is +Inf °C")
	years := frostYears(t)
	_, err = rainfall.FrostOdds(nil, rainfall.FrostSpring, from)
	refusedAt(t, err, "years: is empty")
	_, err = rainfall.FrostOdds(years, 3, from)
	unknown(t, err, "one of: spring, autumn")
	_, err = rainfall.FrostOdds(years, rainfall.FrostSpring, day(t, "2001-08-01"))
	refusedAt(t, err, "date: 2001-08-01 is more than half a year from the turn of summer, 1 July")
	_, err = rainfall.FrostDate(years, 0, 0.5, from)
	unknown(t, err, "one of: spring, autumn")
	for _, chance := range []units.Fraction{0.1, 0.9, units.Fraction(math.NaN())} {
		_, err = rainfall.FrostDate(years, rainfall.FrostSpring, chance, from)
		impossible(t, err, "must be from 20 % to 80 %") // four years: 1/5 to 4/5
	}
	_, err = rainfall.FrostDate(nil, rainfall.FrostSpring, 0.5, from)
	refusedAt(t, err, "years: is empty")
	years[2].Spring = false
	_, err = rainfall.FrostDate(years, rainfall.FrostSpring, 0.5, from)
	refusedAt(t, err, "years[2]: has no frost in the spring of the summer of 2003-07-01")
}

// frostYears makes four years: last frosts of 10, 20, 30 April and 10 May (82, 72,
// 62 and 52 days before July), first ones of 1, 11, 21 and 31 October (92, 102, 112
// and 122 days from it).
func frostYears(t require.TestingT) []rainfall.FrostYear {
	var years []rainfall.FrostYear
	for i, dates := range [][2]string{{"04-20", "10-21"}, {"04-10", "10-01"}, {"05-10", "10-31"}, {"04-30", "10-11"}} {
		year := strconv.Itoa(2001 + i)
		years = append(years, rainfall.FrostYear{Turn: day(t, year+"-07-01"), LastSpring: day(t, year+"-"+dates[0]), Spring: true, FirstAutumn: day(t, year+"-"+dates[1]), Autumn: true})
	}
	return years
}

// TestFrostYears: odds are counts, dates are ranks m/(n + 1) of 1/5 to 4/5.
func TestFrostYears(t *testing.T) {
	years := frostYears(t)
	for _, c := range []struct {
		side rainfall.FrostSide
		date string
		want units.Fraction
	}{
		{rainfall.FrostSpring, "2010-04-10", 1}, {rainfall.FrostSpring, "2010-04-11", 0.75}, {rainfall.FrostSpring, "2010-04-30", 0.5},
		{rainfall.FrostSpring, "2010-05-10", 0.25}, {rainfall.FrostSpring, "2010-05-11", 0}, {rainfall.FrostSpring, "2010-01-01", 1},
		{rainfall.FrostAutumn, "2010-09-30", 0}, {rainfall.FrostAutumn, "2010-10-01", 0.25}, {rainfall.FrostAutumn, "2010-10-21", 0.75},
		{rainfall.FrostAutumn, "2010-10-31", 1}, {rainfall.FrostAutumn, "2010-12-31", 1},
	} {
		odds, err := rainfall.FrostOdds(years, c.side, day(t, c.date))
		require.NoError(t, err)
		assert.Equal(t, c.want, odds, c.date)
	}
	turn := day(t, "2010-07-01")
	for _, c := range []struct {
		side   rainfall.FrostSide
		chance units.Fraction
		want   string
	}{
		{rainfall.FrostSpring, 0.8, "2010-04-10"}, {rainfall.FrostSpring, 0.2, "2010-05-10"}, {rainfall.FrostSpring, 0.5, "2010-04-25"}, // half way of 20 and 30 April
		{rainfall.FrostAutumn, 0.2, "2010-10-01"}, {rainfall.FrostAutumn, 0.8, "2010-10-31"}, {rainfall.FrostAutumn, 0.5, "2010-10-16"}, {rainfall.FrostAutumn, 0.3, "2010-10-06"},
	} {
		at, err := rainfall.FrostDate(years, c.side, c.chance, turn)
		require.NoError(t, err)
		assert.Equal(t, c.want, at.String(), "%v %v", c.side, c.chance)
	}
	years[0].Spring, years[0].Autumn = false, false
	odds, err := rainfall.FrostOdds(years, rainfall.FrostSpring, day(t, "2010-04-01"))
	require.NoError(t, err)
	assert.Equal(t, units.Fraction(0.75), odds, "a year without frost counts as none")
	odds, err = rainfall.FrostOdds(years, rainfall.FrostAutumn, day(t, "2010-12-01"))
	require.NoError(t, err)
	assert.Equal(t, units.Fraction(0.75), odds)

	// The turn of the year lies within the halves of the south.
	south := []rainfall.FrostYear{{Turn: day(t, "2005-01-01"), LastSpring: day(t, "2004-10-01"), Spring: true, FirstAutumn: day(t, "2005-04-01"), Autumn: true}}
	odds, err = rainfall.FrostOdds(south, rainfall.FrostSpring, day(t, "2012-09-20"))
	require.NoError(t, err)
	assert.Equal(t, units.Whole, odds)
	odds, err = rainfall.FrostOdds(south, rainfall.FrostAutumn, day(t, "2012-05-20"))
	require.NoError(t, err)
	assert.Equal(t, units.Whole, odds)
	odds, err = rainfall.FrostOdds([]rainfall.FrostYear{{Turn: day(t, "2005-12-01"), FirstAutumn: day(t, "2006-03-01"), Autumn: true}}, rainfall.FrostAutumn, day(t, "2012-03-20"))
	require.NoError(t, err)
	assert.Equal(t, units.Whole, odds, "autumn after the turn of the year")
	// The whole half year is there, its last day too.
	_, err = rainfall.FrostOdds(frostYears(t), rainfall.FrostAutumn, day(t, "2010-12-31"))
	require.NoError(t, err)
}

// TestTargetRows: no row twice, every span the right way round, bases and sources
// named; the table is a copy.
func TestTargetRows(t *testing.T) {
	seen := map[string]bool{}
	for _, row := range rainfall.TargetRows() {
		assert.False(t, seen[row.Rule], row.Rule)
		seen[row.Rule] = true
		assert.True(t, 0 < row.Sum.Low && row.Sum.Low <= row.Sum.High, row.Rule)
		assert.Zero(t, row.Base, row.Rule) // 0 °C or 32 °F, all of them
		assert.NotEmpty(t, row.Begins)
		assert.NotEmpty(t, row.Source)
		assert.Equal(t, "A", row.Mark)
	}
	rainfall.TargetRows()[0].Rule = "x"
	assert.Equal(t, "first-nitrogen-netherlands", rainfall.TargetRows()[0].Rule)
	got, err := rainfall.DegreeDayTarget("hay", units.Low)
	unknown(t, err, "one of: first-nitrogen-netherlands")
	assert.True(t, math.IsNaN(float64(got)))
	for _, bad := range []float64{math.NaN(), math.Inf(-1)} {
		_, err = rainfall.ColdOf(units.Temperature(bad))
		assert.True(t, units.Impossible(err))
	}
}

// TestWarmthAdds: a longer span never has less warmth, and two halves make a whole.
func TestWarmthAdds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		means := rapid.SliceOfN(rapid.Float64Range(-10, 30), 2, 30).Draw(t, "means")
		record := made(t, "2001-01-01", means...)
		from, to := record[0].Date, record[len(record)-1].Date
		part := from.Add(rapid.IntRange(0, len(record)-2).Draw(t, "part"))
		form := rainfall.DegreeDayForm(rapid.IntRange(1, 2).Draw(t, "form"))
		whole, err := rainfall.DegreeDaySum(record, form, 5, from, to)
		require.NoError(t, err)
		one, err := rainfall.DegreeDaySum(record, form, 5, from, part)
		require.NoError(t, err)
		other, err := rainfall.DegreeDaySum(record, form, 5, part.Add(1), to)
		require.NoError(t, err)
		assert.InDelta(t, float64(whole), float64(one+other), 1e-9)
		if one > 0 {
			at, err := rainfall.DegreeDayDate(record, form, 5, from, one)
			require.NoError(t, err)
			assert.LessOrEqual(t, at, part)
		}
	})
}

// A day of 17 and 9 °C over a base of 6.
func ExampleDegreeDays() {
	warmth, err := rainfall.DegreeDays(rainfall.WarmthMean, 17, 9, 6)
	fmt.Println(warmth.In(units.Metric), err)
	warmth, err = rainfall.DegreeDays(rainfall.WarmthCorn, units.Fahrenheit(70), units.Fahrenheit(45), units.Fahrenheit(50))
	fmt.Println(warmth.In(units.US), err)
	// Output:
	// 7 °C day <nil>
	// 10 °F day <nil>
}

// How much warmth had the first week of January?
func ExampleDegreeDaySum() {
	first, _ := units.ParseDate("2026-01-01")
	week := []rainfall.DailyWeather{{Date: first, High: 8, Low: 2}, {Date: first.Add(1), High: 4, Low: -6}, {Date: first.Add(2), High: 10, Low: 4}}
	sum, err := rainfall.DegreeDaySum(week, rainfall.WarmthMean, 0, first, first.Add(2))
	fmt.Println(sum.In(units.Metric), err)
	// Output: 12 °C day <nil>
}

// When had there been 10 of them?
func ExampleDegreeDayDate() {
	first, _ := units.ParseDate("2026-01-01")
	days := []rainfall.DailyWeather{{Date: first, High: 8, Low: 2}, {Date: first.Add(1), High: 4, Low: -6}, {Date: first.Add(2), High: 10, Low: 4}}
	at, err := rainfall.DegreeDayDate(days, rainfall.WarmthMean, 0, first, 10)
	fmt.Println(at, err)
	// Output: 2026-01-03 <nil>
}

// At what sum do I spread the first nitrogen?
func ExampleDegreeDayTarget() {
	low, _ := rainfall.DegreeDayTarget("first-nitrogen-netherlands", units.Low)
	high, err := rainfall.DegreeDayTarget("first-nitrogen-netherlands", units.High)
	fmt.Println(low.In(units.Metric), high.In(units.Metric), err)
	// Output: 180 °C day 250 °C day <nil>
}

// From when is it counted?
func ExampleTargetRows() {
	for _, row := range rainfall.TargetRows() {
		if row.Rule == "first-nitrogen-britain" {
			fmt.Println(row.Begins, row.Sum.Low.In(units.Metric), row.Source)
		}
	}
	// Output: 1 January 200 °C day BRITAIN-T200
}

// How long was my season? The means are over 5 °C from the 88th day, 20 + 365/2π
// arccos(5/12) = 86.3 after the first, to the 319th.
func ExampleSeasonByWarmth() {
	first, _ := units.ParseDate("2026-01-01")
	var year []rainfall.DailyWeather
	for i := range 365 {
		mean := units.Temperature(10 - 12*math.Cos(2*math.Pi*float64(i-20)/365))
		year = append(year, rainfall.DailyWeather{Date: first.Add(i), High: mean + 5, Low: mean - 5})
	}
	season, err := rainfall.SeasonByWarmth(year, 5, 5, first, first.Add(181), first.Add(364))
	fmt.Println(season.Start, season.End, season.Length.In(units.US), err)
	// Output: 2026-03-29 2026-11-16 232 days <nil>
}

// It was 27 °F last night.
func ExampleColdOf() {
	cold, err := rainfall.ColdOf(units.Fahrenheit(27))
	fmt.Println(cold, err)
	// Output: hard freeze <nil>
}

// aSpring is two years of frost, as FrostYears gives them.
func aSpring() []rainfall.FrostYear {
	var years []rainfall.FrostYear
	for _, text := range [][2]string{{"2024-07-01", "2024-04-20"}, {"2025-07-01", "2025-05-02"}, {"2026-07-01", "2026-04-26"}} {
		turn, _ := units.ParseDate(text[0])
		last, _ := units.ParseDate(text[1])
		years = append(years, rainfall.FrostYear{Turn: turn, LastSpring: last, Spring: true})
	}
	return years
}

// When were the frosts around the summer?
func ExampleFrostYears() {
	first, _ := units.ParseDate("2026-01-01")
	var year []rainfall.DailyWeather
	for i := range 365 {
		mean := units.Temperature(10 - 12*math.Cos(2*math.Pi*float64(i-20)/365))
		year = append(year, rainfall.DailyWeather{Date: first.Add(i), High: mean + 5, Low: mean - 5})
	}
	years, err := rainfall.FrostYears(year, 0, 7)
	fmt.Println(years[0].LastSpring, years[0].FirstAutumn, err)
	// Output: 2026-03-28 2026-11-16 <nil>
}

// How likely is a frost after 25 April?
func ExampleFrostOdds() {
	date, _ := units.ParseDate("2027-04-25")
	odds, err := rainfall.FrostOdds(aSpring(), rainfall.FrostSpring, date)
	fmt.Println(odds.In(units.US), err)
	// Output: 66.7 % <nil>
}

// On what day is it an even chance?
func ExampleFrostDate() {
	turn, _ := units.ParseDate("2027-07-01")
	date, err := rainfall.FrostDate(aSpring(), rainfall.FrostSpring, 50*units.Percent, turn)
	fmt.Println(date, err)
	// Output: 2027-04-26 <nil>
}
