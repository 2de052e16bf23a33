package rainfall_test

import (
	"fmt"
	"os"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// recordOf reads a monthly record of testdata.
func recordOf(t require.TestingT, file string) []rainfall.MonthlyRain {
	text, err := os.ReadFile("testdata/" + file)
	require.NoError(t, err)
	record, err := rainfall.ReadMonths(string(text))
	require.NoError(t, err)
	return record
}

func seattle(t require.TestingT) []rainfall.DailyRain {
	text, err := os.ReadFile("testdata/seattle_daily.csv")
	require.NoError(t, err)
	days, err := rainfall.ReadDays(string(text))
	require.NoError(t, err)
	require.Len(t, days, 366+365)
	return days
}

func TestReadMonths(t *testing.T) {
	record := recordOf(t, "wichita_record.csv")
	require.Len(t, record, 382)
	assert.Equal(t, rain(1980, time.January, 46.3), record[0])
	assert.Equal(t, rain(2011, time.October, 46.2), record[381])
	record = recordOf(t, "fort_collins_record.csv")
	require.Len(t, record, 103*12)
	assert.Equal(t, rain(1895, time.February, 39), record[1])

	for name, text := range map[string]string{
		"a month to a line":  "# a remark\nyear,month,rain in,by\n2000,1,2,me\n2000,3,,me\n2000,2, NA ,me\n2001,dec,1.5,you\n",
		"brackets":           "rain (in) , Year, MONTH\n2,2000,1\n,2000,2\n1.5,2001,December\n",
		"colon":              "\ufeffyear,month,rain:in\n2000,Jan,2\n2001,12,1.5\n",
		"a year to a line":   "year,jan in,february in,DEC in\n2000,2,,NA\n2001,,,1.5\n",
		"each with its unit": "year,month,rain mm\n2000,1,2 in\n2001,12,1.5 in\n",
		"lines end as usual": "year,month,rain in\r\n2000,1,2\r\n2001,12,1.5\r\n",
	} {
		record, err := rainfall.ReadMonths(text)
		require.NoError(t, err, name)
		assert.Equal(t, []rainfall.MonthlyRain{
			{Year: 2000, Month: 1, Rain: 2 * units.RainInch}, {Year: 2001, Month: 12, Rain: 1.5 * units.RainInch},
		}, record, name)
	}
	record, err := rainfall.ReadMonths("year,month,rain m\n-9999,1,1000\n9999,1,1\n")
	require.NoError(t, err)
	assert.Len(t, record, 2, "the limits themselves")
}

func TestReadMonthsRefuses(t *testing.T) {
	const depth = " is not a depth of rain; 0 mm to 1000 m; leave the cell empty where nothing was measured"
	for text, want := range map[string]string{
		"":                                          "text: is empty; begin with the header year,month,rain (mm)",
		"month,rain mm\n1,2\n":                      `line 1: "month,rain mm" names no column year; a header such as year,month,rain (mm)`,
		"year;month;rain mm\n":                      "its columns parted by commas",
		"year,rain mm\n":                            `line 1: "year,rain mm" names no column month`,
		"year,month\n":                              `line 1: "year,month" names no column rain`,
		"year,month,rain\n":                         `line 1, column 3: "rain" has no unit; one of m, mm, cm, in behind the name, as in rain (m)`,
		"year,month,rain kg\n":                      `line 1, column 3: "rain kg" has a unit that is not one of a depth of rain; one of m, mm, cm, in`,
		"year,year,month,rain mm\n":                 `line 1, column 2: "year" names the column year again`,
		"year,jan mm,january mm\n":                  `line 1, column 3: "january mm" names the column january again`,
		"year,jan mm,feb\n":                         `line 1, column 3: "feb" has no unit`,
		"year,month,rain mm\n2000,1\n":              "line 2: has 2 cells; 3, as many as the header",
		"year,month,rain mm\n2000,13,5\n":           `line 2, column 2 (month): "13" is not a month; a whole number from 1 to 12`,
		"year,month,rain mm\n2000,0,5\n":            `line 2, column 2 (month): "0" is not a month`,
		"year,month,rain mm\nMM,1,5\n":              `line 2, column 1 (year): "MM" is not a year; a whole number from -9999 to 9999`,
		"year,month,rain mm\n10000,1,5\n":           `line 2, column 1 (year): "10000" is not a year`,
		"year,month,rain mm\n-10000,1,5\n":          `line 2, column 1 (year): "-10000" is not a year`,
		"year,month,rain mm\n2000,1,T\n":            `line 2, column 3 (rain mm): "T"` + depth + ", and write a trace of rain as 0",
		"year,month,rain mm\n2000,1,-99\n":          `line 2, column 3 (rain mm): "-99"` + depth,
		"year,month,rain mm\n2000,1,Inf\n":          `line 2, column 3 (rain mm): "Inf"` + depth,
		"year,month,rain mm\n2000,1,NaN\n":          `line 2, column 3 (rain mm): "NaN"` + depth,
		"year,month,rain m\n2000,1,1001\n":          `line 2, column 3 (rain m): "1001"` + depth,
		"year,month,rain mm\n2000,1,5\n2000,1,6\n":  `line 3, column 3 (rain mm): "6" is the rain of January 2000 again; each month once`,
		"year,Jan mm\n2000,5\n# a remark\n2000,6\n": `line 4, column 2 (Jan mm): "6" is the rain of January 2000 again`,
		"year,month,rain mm\n2000,\"1,5\n":          "line 2: extraneous or missing",
		"\"year":                                    "line 1: extraneous or missing",
	} {
		record, err := rainfall.ReadMonths(text)
		refusedAt(t, err, want)
		assert.Nil(t, record)
	}
}

func TestReadDays(t *testing.T) {
	days := seattle(t)
	assert.Equal(t, rainfall.DailyRain{Date: day(t, "2012-01-02"), Rain: 10.9 * units.RainMillimetre}, days[1])
	days, err := rainfall.ReadDays("rain in,date\n1,2000-02-28\n,2000-02-29\nNA,2000-03-01\n0,2000-03-02\n")
	require.NoError(t, err)
	assert.Equal(t, []rainfall.DailyRain{{Date: day(t, "2000-02-28"), Rain: units.RainInch}, {Date: day(t, "2000-03-02")}}, days)
}

func TestReadDaysRefuses(t *testing.T) {
	for text, want := range map[string]string{
		"":                             "text: is empty; begin with the header date,rain (mm)",
		"day,rain mm\n":                `line 1: "day,rain mm" names no column date`,
		"date\n":                       `line 1: "date" names no column rain`,
		"date,rain\n":                  `line 1, column 2: "rain" has no unit`,
		"date,rain mm\n2001-02-29,1\n": `line 2, column 1 (date): "2001-02-29" is not a date; year-month-day, such as 2000-04-15`,
		"date,rain mm\n2001-03-01,x\n": `line 2, column 2 (rain mm): "x" is not a depth of rain`,
		"date,rain mm\n2001-03-01,1\n2001-03-01,1\n": `line 3, column 1 (date): "2001-03-01" comes after 2001-03-01; each day once, in order`,
	} {
		days, err := rainfall.ReadDays(text)
		refusedAt(t, err, want)
		assert.Nil(t, days)
	}
}

// FuzzReadMonths: no panic, and what is read is a record that the rest of the
// package takes.
func FuzzReadMonths(f *testing.F) {
	for _, seed := range []string{"year,month,rain mm\n2000,1,5\n", "year,Jan mm,Feb in\n2000,1,\n", "#\n", "year,month,rain mm\n2000,1,-5\n", "\"", "year,month,rain:\n"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		record, err := rainfall.ReadMonths(text)
		if err != nil {
			return
		}
		if _, err := rainfall.SumMonths(record, 1); err != nil {
			t.Fatal(err)
		}
	})
}

func FuzzReadDays(f *testing.F) {
	for _, seed := range []string{"date,rain mm\n2000-01-01,5\n", "date,rain in\n2000-01-01,\n2000-01-02,1\n", "date,rain\n", "\n\n", "date,rain mm\n+11970-01-01,0"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		days, err := rainfall.ReadDays(text)
		if err != nil {
			return
		}
		if _, err := rainfall.MonthTotals(days); err != nil {
			t.Fatal(err)
		}
		if _, err := rainfall.DayTotals(days, 4, 1, 3, 31); err != nil {
			t.Fatal(err)
		}
	})
}

// BenchmarkCenturyOfDays reads and sums a hundred years of daily rain.
func BenchmarkCenturyOfDays(b *testing.B) {
	var text strings.Builder
	text.WriteString("date,rain mm\n")
	first, _ := units.NewDate(1901, time.January, 1)
	for i := range 36525 {
		fmt.Fprintf(&text, "%s,%.1f\n", first.Add(i), float64(i*7919%301)/10)
	}
	for b.Loop() {
		days, err := rainfall.ReadDays(text.String())
		if err != nil {
			b.Fatal(err)
		}
		months, err := rainfall.MonthTotals(days)
		if err != nil || len(months) != 1200 {
			b.Fatal(len(months), err)
		}
		if years, err := rainfall.KeyTotals(months, allMonths); err != nil || len(years) != 100 {
			b.Fatal(len(years), err)
		}
	}
}

// My gauge book is a file: how much fell in it?
func ExampleReadMonths() {
	record, err := rainfall.ReadMonths("year,month,rain in\n2001,4,1.5\n2001,5,\n2001,6,2.5\n")
	fmt.Println(len(record), "months known;", record[1].Month, record[1].Rain.In(units.US), err)
	_, err = rainfall.ReadMonths("year,month,rain in\n2001,4,trace\n")
	fmt.Println(err)
	// Output:
	// 2 months known; June 2.5 in <nil>
	// line 2, column 3 (rain in): "trace" is not a depth of rain; 0 mm to 1000 m; leave the cell empty where nothing was measured, and write a trace of rain as 0
}

// And with a line for every day?
func ExampleReadDays() {
	days, err := rainfall.ReadDays("date,rain mm\n2001-06-01,12\n2001-06-02,0\n2001-06-03,\n")
	fmt.Println(len(days), "days known", err)
	// Output: 2 days known <nil>
}
