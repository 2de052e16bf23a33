package rainfall

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"example.org/soum/internal/sheet"
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
// may also stand in brackets or behind a colon; a number with a unit of its own keeps
// that. Other columns are not read. A month is a number from 1 or an English name of
// three letters or more. An empty cell, or NA, is a gap: the record has no such month.
// Lines that begin with # are remarks.
//
// Errors: each names line and column, counted from 1, what stands there and what would
// be right: a column that is missing or named twice, rain without unit, a cell that is
// not a number, is below zero or above 1,000 m, a month that is there twice
//
// Check: TestReadMonths, TestReadMonthsRefuses, FuzzReadMonths
//
// Source: definition: text into a record
func ReadMonths(text string) ([]MonthlyRain, error) {
	s, err := monthsForm.Open(text)
	if err != nil {
		return nil, err
	}
	columns, err := rainColumns(s)
	if err != nil {
		return nil, err
	}
	var record []MonthlyRain
	seen := map[calendar]bool{}
	for s.Next() {
		year, err := s.Whole("year", "a year", -9999, 9999)
		if err != nil {
			return nil, err
		}
		for _, column := range columns {
			month, err := monthOf(s, column)
			if err != nil {
				return nil, err
			}
			depth, known, err := rainCell.Given(s, column)
			if err != nil {
				return nil, err
			}
			if !known {
				continue
			}
			if seen[calendar{year, month}] {
				return nil, s.Wrong(column, fmt.Sprintf("is the rain of %s %d again", month, year), "each month once")
			}
			seen[calendar{year, month}] = true
			record = append(record, MonthlyRain{year, month, depth})
		}
	}
	if err := s.Err(); err != nil {
		return nil, err
	}
	return record, nil
}

// ReadDays reads a daily record of rain from CSV text.
//
// Method: the first line names the columns, among them "date" and "rain" with
// its unit, as in "date,rain mm"; the rest as in ReadMonths. A date is
// year-month-day. An empty cell, or NA, is a gap: the record has no such day.
//
// Errors: as in ReadMonths; days that are not in their order, or there twice
//
// Check: TestReadDays, TestReadDaysRefuses, FuzzReadDays
//
// Source: definition: text into a record
func ReadDays(text string) ([]DailyRain, error) {
	s, err := daysForm.Open(text)
	if err != nil {
		return nil, err
	}
	if err := rainCell.Unit(s, "rain"); err != nil {
		return nil, err
	}
	var days []DailyRain
	var last units.Date
	for began := false; s.Next(); began = true {
		day, err := s.Date("date")
		if err != nil {
			return nil, err
		}
		if began && day <= last {
			return nil, s.Wrong("date", fmt.Sprintf("comes after %s", last), "each day once, in order")
		}
		last = day
		depth, known, err := rainCell.Given(s, "rain")
		if err != nil {
			return nil, err
		}
		if known {
			days = append(days, DailyRain{day, depth})
		}
	}
	if err := s.Err(); err != nil {
		return nil, err
	}
	return days, nil
}

var monthsForm = sheet.Form{
	Header: "year,month,rain (mm)", Must: []string{"year"}, May: append(monthNames(), "month", "rain"), Gap: "NA", Others: true, Spaced: true,
	Alias: func(name string) string {
		if m, ok := monthNamed(name); ok {
			return monthNames()[m-time.January]
		}
		return name
	},
}

var daysForm = sheet.Form{Header: "date,rain (mm)", Must: []string{"date", "rain"}, Gap: "NA", Others: true, Spaced: true}

// rainCell is what a column of rain may hold.
var rainCell = sheet.Measure[units.RainDepth]{
	Parse: units.ParseRainDepth, High: mostRain, What: "a depth of rain",
	Allowed: "0 mm to 1000 m; leave the cell empty where nothing was measured, and write a trace of rain as 0",
}

// monthNames gives the names of the months in lower case, January first.
func monthNames() []string {
	var names []string
	for m := time.January; m <= time.December; m++ {
		names = append(names, strings.ToLower(m.String()))
	}
	return names
}

// monthNamed reads an English month of at least three letters.
func monthNamed(name string) (time.Month, bool) {
	for i, month := range monthNames() {
		if len(name) >= 3 && strings.HasPrefix(month, strings.ToLower(name)) {
			return time.January + time.Month(i), true
		}
	}
	return 0, false
}

// rainColumns gives the columns that hold rain: one for each month that the header
// names, or the one beside the month.
func rainColumns(s *sheet.Sheet) ([]string, error) {
	columns := slices.DeleteFunc(monthNames(), func(name string) bool { return !s.Has(name) })
	if len(columns) == 0 {
		if err := s.Need("month", "rain"); err != nil {
			return nil, err
		}
		columns = []string{"rain"}
	}
	for _, column := range columns {
		if err := rainCell.Unit(s, column); err != nil {
			return nil, err
		}
	}
	return columns, nil
}

// monthOf gives the month that a column of rain is of in a line.
func monthOf(s *sheet.Sheet, column string) (time.Month, error) {
	if column != "rain" {
		month, _ := monthNamed(column)
		return month, nil
	}
	if month, ok := monthNamed(s.Cell("month")); ok {
		return month, nil
	}
	month, err := s.Whole("month", "a month", int(time.January), int(time.December))
	return time.Month(month), err
}
