package units_test

import (
	"math"
	"testing"
	"time"

	"pgregory.net/rapid"

	"example.org/soum/units"
)

// TestDateAgainstTheCalendarOfTheStandardLibrary walks 600 years day by day,
// adding a day to time.Time in parallel.
func TestDateAgainstTheCalendarOfTheStandardLibrary(t *testing.T) {
	at := time.Date(1699, time.December, 25, 0, 0, 0, 0, time.UTC)
	date, ok := units.NewDate(1699, time.December, 25)
	if !ok {
		t.Fatal("no first day")
	}
	for at.Year() < 2300 {
		text := at.Format(time.DateOnly)
		parsed, err := units.ParseDate(text)
		made, ok := units.NewDate(at.Year(), at.Month(), at.Day())
		if err != nil || !ok || parsed != date || made != date || date.String() != text ||
			date.Year() != at.Year() || date.Month() != at.Month() || date.Day() != at.Day() || date.Weekday() != at.Weekday() {
			t.Fatalf("%s: parsed %v (%v), made %v (%v), counted %v", text, parsed, err, made, ok, date)
		}
		at, date = at.AddDate(0, 0, 1), date.Add(1)
	}
}

// TestDateKnownDays checks days that are told elsewhere: 2000-01-01 was a
// Saturday and day 10,957 of Unix time (30 × 365 + 7 leap days).
func TestDateKnownDays(t *testing.T) {
	d, ok := units.NewDate(2000, time.January, 1)
	if !ok || d != 10957 || d.Weekday() != time.Saturday {
		t.Errorf("%v is day %d, a %v", d, d, d.Weekday())
	}
	if zero := units.Date(0); zero.String() != "1970-01-01" || zero.Weekday() != time.Thursday || !zero.IsZero() || d.IsZero() {
		t.Errorf("the zero date is %v, a %v", zero, zero.Weekday())
	}
}

func TestLeapYears(t *testing.T) {
	for year, days := range map[int]int{1900: 28, 1996: 29, 2000: 29, 2001: 28, 2004: 29, 2100: 28, 2400: 29, 0: 29, -4: 29, -1: 28} {
		d, ok := units.NewDate(year, time.February, 1)
		if !ok || d.DaysInMonth() != days {
			t.Errorf("February of %d has %d days, want %d", year, d.DaysInMonth(), days)
		}
		if _, ok := units.NewDate(year, time.February, 29); ok != (days == 29) {
			t.Errorf("29 February %d: %v", year, ok)
		}
	}
	for month, days := range []int{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31} {
		if d, _ := units.NewDate(2001, time.Month(month+1), 15); d.DaysInMonth() != days {
			t.Errorf("month %d has %d days, want %d", month+1, d.DaysInMonth(), days)
		}
	}
}

func TestImpossibleDates(t *testing.T) {
	takes := "; date takes one of: year-month-day, such as 2000-04-15"
	for text, problem := range map[string]string{
		"2000-02-30": "there is no such day", "2001-02-29": "there is no such day", "2000-13-01": "there is no such day",
		"2000-00-01": "there is no such day", "2000-04-00": "there is no such day", "2000-04-31": "there is no such day",
		"+5881580-07-12": "there is no such day", "-5877641-06-22": "there is no such day", // one day beyond the type
		"+999999999999-01-01": "there is no such day", "+99999999999999999999-01-01": "not a date",
		"": "not a date", "today": "not a date", "2000-4-15": "not a date", "2000/04/15": "not a date", "15.04.2000": "not a date",
		"20000415": "not a date", "2000-04-15T00:00": "not a date", " 2000-04-15": "not a date", "2000-04-15 ": "not a date",
		"12345-01-01": "not a date", "200-01-01": "not a date", "-200-01-01": "not a date", "2000-04--5": "not a date", "２０００-04-15": "not a date",
		"2000-0a-15": "not a date", "+-2000-04-15": "not a date",
	} {
		want := `"` + text + `": ` + problem + takes
		if got, err := units.ParseDate(text); err == nil || err.Error() != want || got != 0 {
			t.Errorf("got  %v, %v\nwant %s", got, err, want)
		}
	}
	for _, d := range []struct {
		year, day int
		month     time.Month
	}{{2000, 30, 2}, {2001, 29, 2}, {2000, 1, 13}, {2000, 1, 0}, {2000, 0, 1}, {2000, -1, 1}, {10_000_000, 1, 1}, {-10_000_000, 1, 1}, {math.MaxInt, 1, 1}, {math.MinInt, 1, 1}, {2000, math.MaxInt, 1}, {2000, 1, math.MaxInt}} {
		if got, ok := units.NewDate(d.year, d.month, d.day); ok {
			t.Errorf("NewDate(%d, %d, %d) is %v", d.year, d.month, d.day, got)
		}
	}
}

func TestFarYears(t *testing.T) {
	for _, text := range []string{"0000-01-01", "0001-12-31", "-0001-06-15", "-0044-03-15", "-9999-01-01", "-10000-02-28", "9999-12-31", "+10000-01-01", "+12345-02-28", "+5881580-07-11", "-5877641-06-23"} {
		d, err := units.ParseDate(text)
		if err != nil || d.String() != text {
			t.Errorf("%q is read as %v (%v)", text, d, err)
		}
	}
	first, _ := units.ParseDate("-5877641-06-23")
	last, _ := units.ParseDate("+5881580-07-11")
	if first != math.MinInt32 || last != math.MaxInt32 {
		t.Errorf("the ends of the type are %d and %d", first, last)
	}
}

func TestEveryDateReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := units.Date(rapid.Int32().Draw(t, "d"))
		text, err := d.MarshalText()
		if err != nil {
			t.Fatal(err)
		}
		var back units.Date
		if err := back.UnmarshalText(text); err != nil || back != d {
			t.Fatalf("%d is printed %q and read as %d (%v)", d, text, back, err)
		}
		if made, ok := units.NewDate(d.Year(), d.Month(), d.Day()); !ok || made != d {
			t.Fatalf("%v is made as %v (%v)", d, made, ok)
		}
	})
}

func TestDaysBetweenDates(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := units.Date(rapid.Int32Range(-1e9, 1e9).Draw(t, "d"))
		n := rapid.IntRange(-1e9, 1e9).Draw(t, "n")
		if got := d.Add(n).Sub(d); got != units.Days(n) {
			t.Fatalf("%v and %d days later are %v apart", d, n, got)
		}
	})
	if got := units.Date(math.MaxInt32).Sub(math.MinInt32); got != 1<<32-1 {
		t.Errorf("the ends are %v apart", got)
	}
}
