package units

import (
	"strconv"
	"time"
)

// Date is a civil day of the Gregorian calendar, without time or zone: days
// since 1970-01-01. The zero value is that day; IsZero tells it from a day
// that was given only where 1970-01-01 cannot be meant.
type Date int32

const secondsPerDay = 24 * 60 * 60

// NewDate gives the date of a year, month and day, and whether there is such a
// day.
func NewDate(year int, month time.Month, day int) (Date, bool) {
	t := time.Date(year, month, day, 0, 0, 0, 0, time.UTC)
	y, m, d := t.Date()
	days := t.Unix() / secondsPerDay
	return Date(days), y == year && m == month && d == day && days == int64(Date(days))
}

// ParseDate reads an ISO 8601 calendar date, as in "2000-04-15".
func ParseDate(text string) (Date, error) {
	wrong := func(problem string) (Date, error) {
		return 0, &ParseError{Quantity: "Date", Text: text, Problem: problem, Accepts: []string{"year-month-day, such as 2000-04-15"}, Word: true}
	}
	digits, sign := text, 1
	if len(text) > 10 && (text[0] == '+' || text[0] == '-') {
		digits = text[1:]
		if text[0] == '-' {
			sign = -1
		}
	}
	at := len(digits) - 6
	if at < 4 || digits[at] != '-' || digits[at+3] != '-' || (at > 4 && digits == text) {
		return wrong("not a date")
	}
	year, bad1 := whole(digits[:at])
	month, bad2 := whole(digits[at+1 : at+3])
	day, bad3 := whole(digits[at+4:])
	if bad1 || bad2 || bad3 {
		return wrong("not a date")
	}
	date, ok := NewDate(sign*year, time.Month(month), day)
	if !ok {
		return wrong("there is no such day")
	}
	return date, nil
}

// whole reads an unsigned number of digits only.
func whole(text string) (value int, bad bool) {
	for _, r := range text {
		if r < '0' || r > '9' {
			return 0, true
		}
	}
	value, err := strconv.Atoi(text)
	return value, err != nil
}

// String gives the date in ISO 8601. ParseDate reads it back.
func (d Date) String() string {
	text, _ := d.AppendText(make([]byte, 0, len("+5881580-07-11")))
	return string(text)
}

// AppendText adds the date to a text, as String gives it. It never fails.
func (d Date) AppendText(text []byte) ([]byte, error) {
	year, month, day := d.midnight().Date()
	switch {
	case year > 9999:
		text = append(text, '+')
	case year < 0:
		text, year = append(text, '-'), -year
	}
	for least := 1000; year < least && least > 1; least /= 10 {
		text = append(text, '0')
	}
	text = strconv.AppendInt(text, int64(year), 10)
	return append(text, '-', digit(int(month)/10), digit(int(month)), '-', digit(day/10), digit(day)), nil
}

// digit gives the last digit of a number.
func digit(n int) byte { return '0' + byte(n%10) }

// MarshalText gives the date in ISO 8601.
func (d Date) MarshalText() ([]byte, error) { return []byte(d.String()), nil }

// UnmarshalText reads a date as ParseDate does.
func (d *Date) UnmarshalText(text []byte) error {
	date, err := ParseDate(string(text))
	if err == nil {
		*d = date
	}
	return err
}

func (d Date) midnight() time.Time { return time.Unix(int64(d)*secondsPerDay, 0).UTC() }

// Year gives the calendar year.
func (d Date) Year() int { return d.midnight().Year() }

// Month gives the month of the year.
func (d Date) Month() time.Month { return d.midnight().Month() }

// Day gives the day of the month, from 1.
func (d Date) Day() int { return d.midnight().Day() }

// Weekday gives the day of the week.
func (d Date) Weekday() time.Weekday { return d.midnight().Weekday() }

// DaysInMonth gives the number of days of the date's month.
func (d Date) DaysInMonth() int {
	t := d.midnight()
	return time.Date(t.Year(), t.Month()+1, 0, 0, 0, 0, 0, time.UTC).Day()
}

// Add gives the date a number of whole days later.
func (d Date) Add(days int) Date { return d + Date(days) }

// Sub gives the days from other to d.
func (d Date) Sub(other Date) Days { return Days(int(d) - int(other)) }

// IsZero tells whether the date was never set.
func (d Date) IsZero() bool { return d == 0 }
