package sheet_test

import (
	"errors"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/internal/document"
	"example.org/soum/internal/sheet"
	"example.org/soum/units"
)

// readings is a form with every kind of cell: a name, a day, a whole number, a quantity
// that must be there and one that may.
var readings = sheet.Form{
	Name: "readings", Header: "place, day, count, height (in)",
	Must: []string{"place", "day", "count", "height"}, May: []string{"from"}, Gap: "NA",
}

var (
	height = sheet.Measure[units.Height]{Parse: units.ParseHeight, Low: units.HeightMillimetre, High: 10 * units.HeightMetre, What: "a height of grass", Allowed: "a height above 0 with a unit"}
	from   = sheet.Measure[units.Length]{Parse: units.ParseLength, High: 1000 * units.Metre, What: "a place along a lane", Allowed: "a distance from its start"}
)

type reading struct {
	place  string
	day    units.Date
	count  int
	height units.Height
	from   units.Length
	begun  bool
	line   int
}

func read(form *sheet.Form, text string) ([]reading, error) {
	s, err := form.Open(text)
	if err != nil {
		return nil, err
	}
	var all []reading
	for s.Next() {
		r := reading{place: s.Cell("place"), line: s.Line()}
		var errs [4]error
		r.day, errs[0] = s.Date("day")
		r.count, errs[1] = s.Whole("count", "a count", 1, 100)
		r.height, errs[2] = height.Read(s, "height")
		r.from, r.begun, errs[3] = from.Given(s, "from")
		for _, err := range errs {
			if err != nil {
				return nil, err
			}
		}
		all = append(all, r)
	}
	return all, s.Err()
}

func TestRead(t *testing.T) {
	day, _ := units.NewDate(2026, time.June, 1)
	six := []reading{{place: "home, top", day: day, count: 3, height: 6 * units.HeightInch, line: 2}}
	with := func(change func(*reading)) []reading {
		r := six[0]
		change(&r)
		return []reading{r}
	}
	for name, c := range map[string]struct {
		text string
		want []reading
	}{
		"the unit in the heading":     {"place,day,count,height (in)\n\"home, top\",2026-06-01,3,6\n", six},
		"behind a colon":              {"place,day,count,height: in\n\"home, top\",2026-06-01,3,6", six},
		"with the number":             {"place,day,count,height\n\"home, top\",2026-06-01,3,6 in\n", six},
		"that of the number counts":   {"place,day,count,height (cm)\n\"home, top\",2026-06-01,3,6 in\n", six},
		"any order, any case, spaces": {" Height (in) ,COUNT, Day,Place\r\n 6 , 3,2026-06-01, \"home, top\"\r\n", six},
		"a remark before it all":      {"# mine\nplace,day,count,height (in)\n\"home, top\",2026-06-01,3,6\n", with(func(r *reading) { r.line = 3 })},
		"a mark of the editor":        {"\ufeffplace,day,count,height (in)\n\"home, top\",2026-06-01,3,6\n", six},
		"what may be there":           {"place,day,count,height (in),from (ft)\n\"home, top\",2026-06-01,3,6,0\n", with(func(r *reading) { r.begun = true })},
		"it may be empty":             {"place,day,count,height (in),from (ft)\n\"home, top\",2026-06-01,3,6,\n", six},
		"it may be a gap":             {"place,day,count,height (in),from (ft)\n\"home, top\",2026-06-01,3,6,NA\n", six},
		"nothing but a header":        {"place,day,count,height\n", nil},
	} {
		got, err := read(&readings, c.text)
		require.NoError(t, err, name)
		assert.Equal(t, c.want, got, name)
	}
}

func TestReadRefuses(t *testing.T) {
	const head = "place,day,count,height (in)\n"
	for text, want := range map[string]document.Error{
		"": {Path: "readings", Problem: "is empty", Allowed: "begin with the header place, day, count, height (in)"},
		"place,day,count\n": {
			Path: "readings, line 1", Value: `"place,day,count"`, Problem: "names no column height", Allowed: "a header such as place, day, count, height (in)",
		},
		"# mine\nplace;day\n": {
			Path: "readings, line 2, column 1", Value: `"place;day"`, Problem: "is not the name of a column", Allowed: "one of: place, day, count, height, from",
		},
		"place,day,Place,height\n": {
			Path: "readings, line 1, column 3", Value: `"Place"`, Problem: "names the column place again", Allowed: "each column once",
		},
		head + "a,2026-06-31,3,6\n": {
			Path: "readings, line 2, column 2 (day)", Value: `"2026-06-31"`, Problem: "is not a date", Allowed: "year-month-day, such as 2000-04-15",
		},
		head + "\"a\nb\",2026-06-01,101,6\n": { // the cell is on the line after
			Path: "readings, line 3, column 3 (count)", Value: `"101"`, Problem: "is not a count", Allowed: "a whole number from 1 to 100",
		},
		head + "a,2026-06-01,3,tall\n": {
			Path: "readings, line 2, column 4 (height (in))", Value: `"tall"`, Problem: "is not a height of grass", Allowed: "a height above 0 with a unit",
		},
		head + "a,2026-06-01,3,6\nb,2026-06-01,3,0\n": {
			Path: "readings, line 3, column 4 (height (in))", Value: `"0"`, Problem: "is not a height of grass", Allowed: "a height above 0 with a unit",
		},
		head + "a,2026-06-01,3,\n": {
			Path: "readings, line 2, column 4 (height (in))", Value: `""`, Problem: "is not a height of grass", Allowed: "a height above 0 with a unit",
		},
		"place,day,count,height,from\na,2026-06-01,3,6 in,NaN ft\n": {
			Path: "readings, line 2, column 5 (from)", Value: `"NaN ft"`, Problem: "is not a place along a lane", Allowed: "a distance from its start",
		},
		head + "a,2026-06-01,3\n": {Path: "readings, line 2", Problem: "has 3 cells", Allowed: "4, as many as the header"},
		head + "a,\"b\n": {
			Path: "readings, line 2", Problem: "extraneous or missing \" in quoted-field", Allowed: "a cell with a comma or a quote stands in quotes, a quote within it twice",
		},
		head + strings.Repeat("ü", 100) + ",x,3,6\n": {
			Path: "readings, line 2, column 2 (day)", Value: `"x"`, Problem: "is not a date", Allowed: "year-month-day, such as 2000-04-15",
		},
		strings.Repeat("ü", 100) + "\n": {
			Path: "readings, line 1, column 1", Value: `"` + strings.Repeat("ü", 60) + `…"`, Problem: "is not the name of a column", Allowed: "one of: place, day, count, height, from",
		},
	} {
		_, err := read(&readings, text)
		var got *document.Error
		require.ErrorAs(t, err, &got, text)
		assert.Equal(t, want, *got, text)
	}
}

// TestForms: what the other forms allow, and refuse.
func TestForms(t *testing.T) {
	loose := readings
	loose.Name, loose.Others, loose.Ragged, loose.Spaced = "", true, true, true
	got, err := read(&loose, "place,seen by,day,count,height in,from ft\na,me,2026-06-01,3,6\n")
	require.NoError(t, err)
	assert.Equal(t, 6*units.HeightInch, got[0].height)
	assert.False(t, got[0].begun, "a line that ends early")
	for text, want := range map[string]string{
		"":              "text: is empty; begin with the header place, day, count, height (in)",
		"place;day\n":   `line 1: "place;day" names no column place; a header such as place, day, count, height (in), its columns parted by commas; a number has a decimal point`,
		"a,place,place": `line 1, column 3: "place" names the column place again; each column once`,
	} {
		_, err := read(&loose, text)
		assert.EqualError(t, err, want)
	}

	short := readings
	short.MostBytes, short.MostLines = 100, 2
	_, err = read(&short, strings.Repeat("#", 101))
	assert.EqualError(t, err, "readings: 101 bytes are too many; at most 100; split it, by years for example")
	text := "place,day,count,height\n" + strings.Repeat("a,2026-06-01,3,6 in\n", 2)
	got, err = read(&short, text)
	require.NoError(t, err)
	assert.Len(t, got, 2)
	_, err = read(&short, text+"a,2026-06-01,3,6 in\n")
	assert.EqualError(t, err, "readings, line 4: there are more than 2 lines; a shorter text; split it, by years for example")

	months := sheet.Form{Must: []string{"april"}, Alias: func(name string) string {
		if name == "apr" {
			return "april"
		}
		return name
	}}
	s, err := months.Open("Apr (mm)\n")
	require.NoError(t, err)
	assert.True(t, s.Has("april"))
	assert.False(t, s.Has("apr"))
	_, err = months.Open("apr,april\n")
	assert.ErrorContains(t, err, `line 1, column 2: "april" names the column april again`)
}

func TestUnit(t *testing.T) {
	for heading, want := range map[string]string{
		"height (in)": "",
		"height":      `readings, line 1, column 4: "height" has no unit; one of m, mm, cm, ft, in behind the name, as in height (m)`,
		"height (kg)": `readings, line 1, column 4: "height (kg)" has a unit that is not one of a height of grass; one of m, mm, cm, ft, in behind the name, as in height (m)`,
	} {
		s, err := readings.Open("place,day,count," + heading + "\n")
		require.NoError(t, err)
		err = height.Unit(s, "height")
		if want == "" {
			assert.NoError(t, err)
			continue
		}
		assert.EqualError(t, err, want)
	}
	s, err := readings.Open("place,day,count,height (in)\n")
	require.NoError(t, err)
	assert.ErrorContains(t, from.Unit(s, "from"), "names no column from")
}

// TestWarmth: a unit whose nothing is not nothing is read as such.
func TestWarmth(t *testing.T) {
	warmth := sheet.Measure[units.Temperature]{Parse: units.ParseTemperature, Low: -100, High: 100, What: "a temperature"}
	form := sheet.Form{Must: []string{"warmth"}}
	s, err := form.Open("warmth (°F)\n32\n50\n")
	require.NoError(t, err)
	for _, want := range []units.Temperature{0, 10} { // (50 - 32) ÷ 1.8 = 10
		require.True(t, s.Next())
		got, err := warmth.Read(s, "warmth")
		require.NoError(t, err)
		assert.InDelta(t, float64(want), float64(got), 1e-12)
	}
}

// TestErr: what is wrong ends the reading for good, and no line is read behind it.
func TestErr(t *testing.T) {
	s, err := readings.Open("place,day,count,height\na\nb,2026-06-01,3,6 in\n")
	require.NoError(t, err)
	assert.False(t, s.Next())
	assert.False(t, s.Next())
	var wrong *document.Error
	assert.True(t, errors.As(s.Err(), &wrong))
}

// FuzzRead: any text is read or refused with a *document.Error.
func FuzzRead(f *testing.F) {
	for _, seed := range []string{"place,day,count,height (in)\na,2026-06-01,3,6\n", "\"", "#\n", "place (,day:,count,height ()\n,,,\n", "\ufeff,\n\n,"} {
		f.Add(seed)
	}
	loose := readings
	loose.Others, loose.Ragged, loose.Spaced = true, true, true
	f.Fuzz(func(t *testing.T, text string) {
		for _, form := range []*sheet.Form{&readings, &loose} {
			_, err := read(form, text)
			var wrong *document.Error
			if err != nil && !errors.As(err, &wrong) {
				t.Fatal(err)
			}
		}
	})
}
