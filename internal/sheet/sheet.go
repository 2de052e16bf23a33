// Package sheet reads CSV text whose first line names its columns, with errors that
// tell the line and the column, what stands there and what would be right.
//
// A heading is a name, in any case, and where the column holds quantities their unit:
// "height (in)", "height: in". Columns come in any order. Lines that begin with # are
// remarks.
package sheet

import (
	"cmp"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"

	"example.org/soum/internal/document"
	"example.org/soum/units"
)

// Form is what a sheet may hold.
type Form struct {
	Name   string   // begins the path of every error, as in "readings"; "" for a text that is alone
	Header string   // a whole first line as an example, for errors
	Must   []string // the columns that it must have, in lower case
	May    []string // the columns that it may have besides
	Others bool     // columns of other names are left alone; they are refused otherwise
	Spaced bool     // a unit may also stand behind a space, as in "rain mm"; a name is one word then
	Ragged bool     // a line may end early: the cells left out are empty
	Gap    string   // stands for an empty cell too, as "NA"; "" for nothing does
	// Alias gives the column that is meant by a name in lower case, for columns that
	// have more than one name; nil where each has one.
	Alias func(name string) string

	MostBytes int // the longest text, 0 for any
	MostLines int // the most lines under the header, 0 for any
}

// Sheet is a text that is read line by line.
type Sheet struct {
	form    *Form
	reader  *csv.Reader
	columns []column // those of the form; a few, so that a search is quicker than a map
	head    []string
	first   int      // the line of the header
	cells   []string // of the line that is read
	lines   int      // read so far, without the header
	err     error
}

// column is where a column stands and what its heading says.
type column struct {
	name    string
	at      int
	heading string
	unit    string // "" where the heading has none
	read    bool   // the unit, as factor
	factor  float64
}

// Open reads the header of a text.
func (f *Form) Open(text string) (*Sheet, error) {
	s := &Sheet{form: f}
	if f.MostBytes > 0 && len(text) > f.MostBytes {
		return nil, s.wrong("", fmt.Sprintf("%d bytes", len(text)), "are too many", fmt.Sprintf("at most %d; split it, by years for example", f.MostBytes))
	}
	s.reader = csv.NewReader(strings.NewReader(strings.TrimPrefix(text, "\ufeff"))) // some editors put a mark in front
	s.reader.Comment, s.reader.TrimLeadingSpace, s.reader.ReuseRecord = '#', true, true
	if f.Ragged {
		s.reader.FieldsPerRecord = -1
	}
	head, err := s.reader.Read()
	switch {
	case errors.Is(err, io.EOF):
		return nil, s.wrong("", "", "is empty", "begin with the header "+f.Header)
	case err != nil:
		return nil, s.trouble(err)
	}
	s.head = slices.Clone(head)
	s.first, _ = s.reader.FieldPos(0)
	for at, heading := range s.head {
		if err := s.add(at, heading); err != nil {
			return nil, err
		}
	}
	if err := s.Need(f.Must...); err != nil {
		return nil, err
	}
	return s, nil
}

// add notes one column of the header.
func (s *Sheet) add(at int, heading string) error {
	name, unit := s.form.parts(heading)
	switch {
	case !slices.Contains(s.form.Must, name) && !slices.Contains(s.form.May, name):
		if s.form.Others {
			return nil
		}
		return s.wrongHeading(at, "is not the name of a column", "one of: "+strings.Join(slices.Concat(s.form.Must, s.form.May), ", "))
	case s.Has(name):
		return s.wrongHeading(at, "names the column "+name+" again", "each column once")
	}
	s.columns = append(s.columns, column{name: name, at: at, heading: strings.TrimSpace(heading), unit: unit})
	return nil
}

// parts splits a heading into the name of a column and a unit.
func (f *Form) parts(heading string) (name, unit string) {
	marks := "(:"
	if f.Spaced {
		marks = " (:"
	}
	name = strings.TrimSpace(heading)
	if at := strings.IndexAny(name, marks); at >= 0 {
		name, unit = name[:at], strings.Trim(name[at:], " (:)")
	}
	name = strings.ToLower(strings.TrimSpace(name))
	if f.Alias != nil {
		name = f.Alias(name)
	}
	return name, unit
}

// Need refuses a header that lacks one of these columns.
func (s *Sheet) Need(columns ...string) error {
	for _, name := range columns {
		if s.Has(name) {
			continue
		}
		allowed := "a header such as " + s.form.Header
		if len(s.head) == 1 && strings.ContainsAny(s.head[0], ";\t") {
			allowed += ", its columns parted by commas; a number has a decimal point"
		}
		return s.wrong(fmt.Sprintf("line %d", s.first), quoted(strings.Join(s.head, ",")), "names no column "+name, allowed)
	}
	return nil
}

// Has reports whether the header names a column.
func (s *Sheet) Has(column string) bool {
	return s.find(column) != nil
}

func (s *Sheet) find(name string) *column {
	for i := range s.columns {
		if s.columns[i].name == name {
			return &s.columns[i]
		}
	}
	return nil
}

// Next reads the next line: false at the end, or where something is wrong with it (Err).
func (s *Sheet) Next() bool {
	if s.err != nil {
		return false
	}
	cells, err := s.reader.Read()
	switch s.cells = cells; {
	case errors.Is(err, io.EOF):
		return false
	case err != nil:
		s.err = s.trouble(err)
		return false
	}
	if s.lines++; s.form.MostLines > 0 && s.lines > s.form.MostLines {
		s.err = s.Wrong("", fmt.Sprintf("there are more than %d lines", s.form.MostLines), "a shorter text; split it, by years for example")
		return false
	}
	return true
}

// Err gives what ended the reading before the end of the text, nil where nothing did.
func (s *Sheet) Err() error { return s.err }

// trouble turns an error of the CSV reader into one of ours.
func (s *Sheet) trouble(err error) error {
	var parse *csv.ParseError
	switch {
	case !errors.As(err, &parse):
		return s.wrong("", "", err.Error(), "comma-separated text")
	case errors.Is(err, csv.ErrFieldCount):
		return s.wrong(fmt.Sprintf("line %d", parse.Line), "", fmt.Sprintf("has %d cells", len(s.cells)), fmt.Sprintf("%d, as many as the header", len(s.head)))
	}
	return s.wrong(fmt.Sprintf("line %d", parse.Line), "", parse.Err.Error(), "a cell with a comma or a quote stands in quotes, a quote within it twice")
}

// Line gives the line that is read, counted from 1 over the whole text; that of the
// header before the first and behind the last.
func (s *Sheet) Line() int {
	if len(s.cells) == 0 {
		return s.first
	}
	line, _ := s.reader.FieldPos(0)
	return line
}

// Cell gives what stands in a column, "" where the header does not name it.
func (s *Sheet) Cell(column string) string {
	if c := s.find(column); c != nil {
		return s.in(c)
	}
	return ""
}

// in gives what stands in a column, "" where the line ends before it.
func (s *Sheet) in(c *column) string {
	if c.at >= len(s.cells) {
		return ""
	}
	cell := strings.TrimSpace(s.cells[c.at])
	if cell == s.form.Gap {
		return ""
	}
	return cell
}

// Wrong gives the error of the cell in a column, or of the whole line where the header
// does not name the column.
func (s *Sheet) Wrong(column, problem, allowed string) error {
	line, text := s.Line(), ""
	if c := s.find(column); c != nil {
		text = s.in(c)
		if c.at < len(s.cells) { // a line of the sheet may go over several of the text
			line, _ = s.reader.FieldPos(c.at)
		}
	}
	return s.WrongAt(line, column, text, problem, allowed)
}

// WrongAt is Wrong for a line that was read before, by what stood there.
func (s *Sheet) WrongAt(line int, column, text, problem, allowed string) error {
	place := fmt.Sprintf("line %d", line)
	c := s.find(column)
	if c == nil {
		return s.wrong(place, "", problem, allowed)
	}
	return s.wrong(fmt.Sprintf("%s, column %d (%s)", place, c.at+1, cut(c.heading)), quoted(text), problem, allowed)
}

// wrongHeading gives the error of a heading.
func (s *Sheet) wrongHeading(at int, problem, allowed string) error {
	return s.wrong(fmt.Sprintf("line %d, column %d", s.first, at+1), quoted(strings.TrimSpace(s.head[at])), problem, allowed)
}

func (s *Sheet) wrong(place, value, problem, allowed string) error {
	path := s.form.Name
	switch {
	case path == "":
		path = cmp.Or(place, "text")
	case place != "":
		path += ", " + place
	}
	return &document.Error{Path: path, Value: value, Problem: problem, Allowed: allowed}
}

func quoted(text string) string { return strconv.Quote(cut(text)) }

// cut keeps what an error shows of a long text.
func cut(text string) string {
	const longest = 60
	n := 0
	for at := range text {
		if n++; n > longest {
			return text[:at] + "…"
		}
	}
	return text
}

// Whole reads a cell that holds a whole number between two bounds; what says what it is,
// as in "a year".
func (s *Sheet) Whole(column, what string, low, high int) (int, error) {
	v, err := strconv.Atoi(s.Cell(column))
	if err != nil || v < low || v > high {
		return 0, s.Wrong(column, "is not "+what, fmt.Sprintf("a whole number from %d to %d", low, high))
	}
	return v, nil
}

// Date reads a cell that holds a day.
func (s *Sheet) Date(column string) (units.Date, error) {
	date, err := units.ParseDate(s.Cell(column))
	if err != nil {
		return 0, s.Wrong(column, "is not a date", "year-month-day, such as 2000-04-15")
	}
	return date, nil
}
