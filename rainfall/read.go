package rainfall

import (
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"
	"time"

	"example.org/soum/units"
)

// DailyRain is the rain of one day.
type DailyRain struct {
	Date units.Date      `json:"date"` // the day
	Rain units.RainDepth `json:"rain"` // fallen on it
}

// ReadMonths reads a monthly record of rain from CSV text.
//
// Method: the first line names the columns: "year", "month" and "rain" with its
// unit, as in "year,month,rain mm", a month to a line; or "year" and the twelve
// months with their unit, as in "year,Jan mm,Feb mm", a year to a line. The unit
// may also stand in brackets or behind a colon. Other columns are not read. A
// month is a number from 1 or an English name of three letters or more. An empty
// cell, or NA, is a gap: the record has no such month. Lines that begin with #
// are remarks.
//
// Errors: each names line and column, counted from 1, what stands there and what would be right:
// a column that is missing or stands twice, rain without unit, a cell that is no
// number, below zero or above 1,000 m, a month that stands twice
//
// Check: TestReadMonths, TestReadMonthsRefuses, FuzzReadMonths
//
// Source: definition: text into a record
func ReadMonths(text string) ([]MonthlyRain, error) {
	s, err := openSheet("rainfall.ReadMonths", text)
	if err != nil {
		return nil, err
	}
	year, err := s.column("year")
	if err != nil {
		return nil, err
	}
	columns, month, err := s.monthColumns()
	if err != nil {
		return nil, err
	}
	var record []MonthlyRain
	seen := map[[2]int]bool{}
	for s.advance() {
		y := s.whole(year, "a year", -9999, 9999)
		for _, c := range columns {
			m := c.month
			if month >= 0 {
				m = s.month(month)
			}
			depth, known := s.depth(c)
			if s.err != nil || !known {
				continue
			}
			if seen[[2]int{y, int(m)}] {
				s.fail(c.at, "%s %d stands twice", m, y)
			}
			seen[[2]int{y, int(m)}] = true
			record = append(record, MonthlyRain{y, m, depth})
		}
	}
	if s.err != nil {
		return nil, s.err
	}
	return record, nil
}

// ReadDays reads a daily record of rain from CSV text.
//
// Method: the first line names the columns, among them "date" and "rain" with
// its unit, as in "date,rain mm"; the rest as in ReadMonths. A date is
// year-month-day. An empty cell, or NA, is a gap: the record has no such day.
//
// Errors: as in ReadMonths; days that are not in their order, or twice
//
// Check: TestReadDays, TestReadDaysRefuses, FuzzReadDays
//
// Source: definition: text into a record
func ReadDays(text string) ([]DailyRain, error) {
	s, err := openSheet("rainfall.ReadDays", text)
	if err != nil {
		return nil, err
	}
	date, err := s.column("date")
	if err != nil {
		return nil, err
	}
	rain, err := s.rainColumn("rain")
	if err != nil {
		return nil, err
	}
	var days []DailyRain
	var last units.Date
	for began := false; s.advance(); began = true {
		day, err := units.ParseDate(s.row[date])
		if err != nil {
			s.fail(date, "%q is no date: write year-month-day, such as 2000-04-15", s.row[date])
		}
		if began && day <= last {
			s.fail(date, "%s comes after %s: each day stands once, in order", day, last)
		}
		last = day
		if depth, known := s.depth(rain); known && s.err == nil {
			days = append(days, DailyRain{day, depth})
		}
	}
	if s.err != nil {
		return nil, s.err
	}
	return days, nil
}

// sheet is CSV text that is read line by line.
type sheet struct {
	function string
	r        *csv.Reader
	head     []string
	row      []string
	err      error // the first thing that was wrong
}

// rainColumn is a column of rain with its unit.
type rainColumn struct {
	at    int
	month time.Month // of a column of one month, else 0
	unit  units.RainDepth
}

func openSheet(function, text string) (*sheet, error) {
	s := &sheet{function: function, r: csv.NewReader(strings.NewReader(strings.TrimPrefix(text, "\ufeff")))}
	s.r.Comment, s.r.TrimLeadingSpace, s.r.ReuseRecord = '#', true, true
	row, err := s.r.Read()
	if errors.Is(err, io.EOF) {
		return nil, fmt.Errorf("%s: the text is empty: the first line names the columns", function)
	}
	if err != nil {
		return nil, fmt.Errorf("%s: %w", function, err)
	}
	s.head = slices.Clone(row)
	s.row = s.head
	return s, nil
}

// advance reads the next line, false at the end and where something was wrong.
func (s *sheet) advance() bool {
	if s.err != nil {
		return false
	}
	row, err := s.r.Read()
	s.row = row
	switch {
	case errors.Is(err, io.EOF):
		return false
	case errors.Is(err, csv.ErrFieldCount):
		line, _ := s.r.FieldPos(0)
		s.err = fmt.Errorf("%s: line %d has %d columns, the first line names %d", s.function, line, len(row), len(s.head))
	case err != nil:
		s.err = fmt.Errorf("%s: %w", s.function, err)
	}
	return s.err == nil
}

// fail keeps what was wrong in a cell.
func (s *sheet) fail(at int, format string, args ...any) {
	if s.err == nil {
		line, _ := s.r.FieldPos(at)
		s.err = fmt.Errorf("%s: line %d, column %d (%s): %s", s.function, line, at+1, s.head[at], fmt.Sprintf(format, args...))
	}
}

// parts splits a heading into a name in lower case and a unit: "rain mm",
// "rain (mm)", "rain:mm".
func parts(heading string) (name, unit string) {
	heading = strings.TrimSpace(heading)
	at := strings.IndexAny(heading, " (:")
	if at < 0 {
		return strings.ToLower(heading), ""
	}
	return strings.ToLower(heading[:at]), strings.Trim(heading[at:], " (:)")
}

// column finds the one column of a name.
func (s *sheet) column(name string) (int, error) {
	at := -1
	for i, heading := range s.head {
		if got, _ := parts(heading); got == name {
			if at >= 0 {
				return 0, fmt.Errorf("%s: line 1 names %q twice", s.function, name)
			}
			at = i
		}
	}
	if at < 0 {
		hint := ""
		if len(s.head) == 1 && strings.ContainsAny(s.head[0], ";\t") {
			hint = "; columns are parted by commas, and a number has a decimal point"
		}
		return 0, fmt.Errorf("%s: the first line names no column %q; it names %q%s", s.function, name, s.head, hint)
	}
	return at, nil
}

func (s *sheet) rainColumn(name string) (rainColumn, error) {
	at, err := s.column(name)
	if err != nil {
		return rainColumn{}, err
	}
	return s.unitOf(at)
}

func (s *sheet) unitOf(at int) (rainColumn, error) {
	_, unit := parts(s.head[at])
	if unit == "" {
		s.fail(at, "no unit: write \"%s mm\" or \"%s in\"", strings.TrimSpace(s.head[at]), strings.TrimSpace(s.head[at]))
		return rainColumn{}, s.err
	}
	one, err := units.ParseRainDepth("1 " + unit)
	if err != nil {
		s.fail(at, "the unit %q is none of rain: %v", unit, err)
		return rainColumn{}, s.err
	}
	return rainColumn{at: at, unit: one}, nil
}

// monthColumns gives the column of rain and the column of the month, or the
// twelve columns of the months and -1.
func (s *sheet) monthColumns() ([]rainColumn, int, error) {
	var columns []rainColumn
	var named [13]bool
	for i, heading := range s.head {
		name, _ := parts(heading)
		m, ok := monthNamed(name)
		if !ok {
			continue
		}
		if named[m] {
			return nil, 0, fmt.Errorf("%s: line 1 names %s twice", s.function, m)
		}
		named[m] = true
		c, err := s.unitOf(i)
		if err != nil {
			return nil, 0, err
		}
		c.month = m
		columns = append(columns, c)
	}
	if columns != nil {
		return columns, -1, nil
	}
	month, err := s.column("month")
	if err != nil {
		return nil, 0, err
	}
	rain, err := s.rainColumn("rain")
	return []rainColumn{rain}, month, err
}

// monthNamed reads an English month of at least three letters.
func monthNamed(name string) (time.Month, bool) {
	for m := time.January; m <= time.December; m++ {
		if len(name) >= 3 && strings.HasPrefix(strings.ToLower(m.String()), strings.ToLower(name)) {
			return m, true
		}
	}
	return 0, false
}

func (s *sheet) month(at int) time.Month {
	if m, ok := monthNamed(strings.TrimSpace(s.row[at])); ok {
		return m
	}
	return time.Month(s.whole(at, "a month", int(time.January), int(time.December)))
}

func (s *sheet) whole(at int, what string, least, most int) int {
	v, err := strconv.Atoi(strings.TrimSpace(s.row[at]))
	if err != nil || v < least || v > most {
		s.fail(at, "%q is not %s from %d to %d", s.row[at], what, least, most)
	}
	return v
}

// depth reads a cell of rain; false for a gap.
func (s *sheet) depth(c rainColumn) (units.RainDepth, bool) {
	cell := strings.TrimSpace(s.row[c.at])
	if cell == "" || cell == "NA" {
		return 0, false
	}
	v, err := strconv.ParseFloat(cell, 64)
	depth := units.RainDepth(v) * c.unit
	switch {
	case err != nil:
		s.fail(c.at, "%q is no number: an empty cell is a gap, and a trace of rain is 0", cell)
	case depth < 0:
		s.fail(c.at, "%s is below zero: leave the cell empty where nothing was measured", cell)
	case !finite(depth):
		s.fail(c.at, "%s is no depth of rain", cell)
	}
	return depth, true
}
