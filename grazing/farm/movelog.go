package farm

import (
	"bytes"
	"cmp"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"example.org/soum/units"
)

// LoggedMove is one stay in a log of moves.
type LoggedMove struct {
	Paddock string            `json:"paddock"`    // the name in the log
	In      units.Date        `json:"in"`         // the day on which they came
	Out     units.Date        `json:"out"`        // the day on which they left; the same day counts as one
	Area    units.Area        `json:"area_m2"`    // the land they were on
	Animals units.AnimalUnits `json:"animals_au"` // the herd in animal units
	Group   string            `json:"group"`      // which animals; "" where the log does not tell
	From    units.Length      `json:"from_m"`     // along the lane; 0: its start
	To      units.Length      `json:"to_m"`       // along the lane; 0: not told
	Left    units.Height      `json:"left_m"`     // the height read when they had left; 0: nobody has
}

// days gives the length of the stay: the day of coming counts, that of leaving does
// not, and a stay of hours is a day.
func (m *LoggedMove) days() units.Days { return max(units.Day, units.Days(m.Out-m.In)) }

// LogError is something wrong in a log of moves, or in the readings that come
// with it.
type LogError struct {
	Readings bool   `json:"readings"` // it is the readings of today, not the log
	Line     int    `json:"line"`     // its header being 1; 0 where it is the whole
	Column   string `json:"column"`   // its name, "" for the line
	Text     string `json:"text"`     // what stands there
	Problem  string `json:"problem"`  // what is wrong and what would be right
}

// Error tells where, what and how to mend it.
func (e *LogError) Error() string {
	where := "the log of moves"
	if e.Readings {
		where = "the readings of today"
	}
	if e.Line > 0 {
		where += fmt.Sprintf(", line %d", e.Line)
	}
	if e.Column != "" {
		where += fmt.Sprintf(", column %q", e.Column)
	}
	if e.Text != "" {
		where += fmt.Sprintf(": %.60q", e.Text)
	}
	return where + ": " + e.Problem
}

// logForm is the form of a list that a farmer keeps.
type logForm struct {
	readings  bool
	must, may []string // its columns
	header    string
	lines     string // what its lines are
}

var movesForm = logForm{
	must: []string{"paddock", "in", "out", "area", "animals"}, may: []string{"group", "from", "to", "left"},
	header: "paddock, in, out, area (ac), animals (AU)", lines: "stays",
}

// The most that a log may hold: a paddock a day for more than a lifetime.
const (
	mostLogBytes = 4 << 20
	mostLogMoves = 50000
)

// What a stay may hold at the most and the least, far beyond any farm: it keeps the
// sums finite.
const (
	leastLogArea   = 1e-3 * units.SquareMetre
	mostLogArea    = 1e8 * units.Hectare
	mostLogAnimals = 1e7 * units.AnimalUnit
	mostLogPlace   = 1e5 * units.Metre
	leastLogHeight = 1e-4 * units.HeightMetre
	mostLogHeight  = 10 * units.HeightMetre
)

// ReadMoves reads a log of moves: comma-separated, a header first, one stay a line.
//
// The columns are paddock, in, out, area and animals, in any order, and, where they
// are kept, group (which animals), from and to (the place along a lane) and left (the
// height read when they had left it); others are left alone. Dates are as 2026-06-01. The unit of a figure
// stands in the header, as in area (ac) or area (ha), animals (AU), from (ft) and
// left (in), or with each number. A line that begins with # is a remark. The stays
// come back in the order of their days.
//
// Errors: a *LogError with the line, the column and the mend: a column missing or
// twice, a cell that cannot be read, a stay that ends before it begins, land or animals
// beyond what a farm can have, or the same stay twice
//
// Check: TestReadMoves, TestReadPlaces, TestBadLogs
//
// Source: definition: the form of the log is ours
func ReadMoves(log string) ([]LoggedMove, error) {
	stays, err := someStays(log)
	if err != nil {
		return nil, err
	}
	moves := make([]LoggedMove, len(stays))
	for i := range stays {
		moves[i] = stays[i].LoggedMove
	}
	return moves, nil
}

// stay is a stay and its line in the log.
type stay struct {
	LoggedMove
	line int
}

// someStays gives the stays of a log, which must have one.
func someStays(log string) ([]stay, error) {
	stays, err := readStays(log)
	if err == nil && len(stays) == 0 {
		err = &LogError{Problem: "has a header and no stays"}
	}
	return stays, err
}

// readStays is ReadMoves with the lines.
func readStays(log string) ([]stay, error) {
	var stays []stay
	err := movesForm.read(log, func(row *logRow) error {
		move, err := row.move()
		stays = append(stays, stay{move, row.line})
		return err
	})
	if err != nil {
		return nil, err
	}
	slices.SortStableFunc(stays, func(a, b stay) int {
		return cmp.Or(cmp.Compare(a.In, b.In), cmp.Compare(a.Out, b.Out), cmp.Compare(a.Paddock, b.Paddock))
	})
	return stays, repeated(stays)
}

// read gives the lines of a list one by one.
func (f *logForm) read(text string, each func(*logRow) error) error {
	if len(text) > mostLogBytes {
		return &LogError{Readings: f.readings, Problem: fmt.Sprintf("is longer than %d million bytes: part it by years", mostLogBytes>>20)}
	}
	reader := csv.NewReader(bytes.NewReader([]byte(strings.TrimPrefix(text, "\ufeff"))))
	reader.Comment, reader.FieldsPerRecord, reader.TrimLeadingSpace = '#', -1, true
	head, err := reader.Read()
	if err != nil {
		return f.trouble(err, "is empty: begin with the header "+f.header)
	}
	columns, err := f.head(head)
	if err != nil {
		return err
	}
	for lines := 0; ; lines++ {
		cells, err := reader.Read()
		switch {
		case errors.Is(err, io.EOF):
			return nil
		case err != nil:
			return f.trouble(err, "")
		}
		line, _ := reader.FieldPos(0)
		if lines == mostLogMoves {
			return &LogError{Readings: f.readings, Line: line, Problem: fmt.Sprintf("there are more than %d %s: part the log by years", mostLogMoves, f.lines)}
		}
		if err := each(&logRow{f, columns, cells, line}); err != nil {
			return err
		}
	}
}

// trouble turns an error of the CSV reader into one of ours.
func (f *logForm) trouble(err error, empty string) error {
	var parse *csv.ParseError
	switch {
	case errors.Is(err, io.EOF):
		return &LogError{Readings: f.readings, Problem: empty}
	case errors.As(err, &parse):
		return &LogError{Readings: f.readings, Line: parse.Line, Problem: parse.Err.Error() + ": cells with a comma or a quote stand in quotes, a quote within them twice"}
	}
	return &LogError{Readings: f.readings, Problem: err.Error()}
}

// logColumn is where a column stands and the unit of its header.
type logColumn struct {
	at   int
	unit string
}

// head finds the columns by name.
func (f *logForm) head(head []string) (map[string]logColumn, error) {
	columns := map[string]logColumn{}
	for i, cell := range head {
		name, unit, _ := strings.Cut(strings.TrimSpace(cell), "(")
		name = strings.ToLower(strings.TrimSpace(name))
		if !slices.Contains(f.must, name) && !slices.Contains(f.may, name) {
			continue
		}
		if _, twice := columns[name]; twice {
			return nil, &LogError{Readings: f.readings, Line: 1, Column: name, Problem: "stands twice in the header"}
		}
		columns[name] = logColumn{i, strings.TrimSpace(strings.TrimSuffix(strings.TrimSpace(unit), ")"))}
	}
	for _, name := range f.must {
		if _, has := columns[name]; !has {
			return nil, &LogError{Readings: f.readings, Line: 1, Column: name, Problem: "is missing in the header: it is " + f.header}
		}
	}
	return columns, nil
}

// logRow is a line of a list.
type logRow struct {
	form    *logForm
	columns map[string]logColumn
	cells   []string
	line    int
}

// cell gives what stands in a column, "" where it is not there.
func (r *logRow) cell(name string) string {
	if column, has := r.columns[name]; has && column.at < len(r.cells) {
		return strings.TrimSpace(r.cells[column.at])
	}
	return ""
}

func (r *logRow) wrong(name, problem string) error {
	return &LogError{Readings: r.form.readings, Line: r.line, Column: name, Text: r.cell(name), Problem: problem}
}

// logCell reads a cell with its unit, or that of the header. It must lie between
// two bounds, and may be empty where the column is not one of those it must have.
func logCell[Q ~float64](r *logRow, name string, parse func(string) (Q, error), low, high Q, problem string) (Q, error) {
	if r.cell(name) == "" && slices.Contains(r.form.may, name) {
		return 0, nil
	}
	q, err := parse(withHeadUnit(r.cell(name), r.columns[name].unit))
	if err != nil || !(q >= low && q <= high) {
		return 0, r.wrong(name, problem)
	}
	return q, nil
}

// name reads the name of the land.
func (r *logRow) name() (string, error) {
	if r.cell("paddock") == "" {
		return "", r.wrong("paddock", "is empty: every "+strings.TrimSuffix(r.form.lines, "s")+" has a paddock")
	}
	return r.cell("paddock"), nil
}

// place reads where along a lane it is.
func (r *logRow) place() (from, to units.Length, err error) {
	const problem = "is no place along a lane: a distance from its start, with the unit in the header, as in %[1]s (ft), or behind each number; empty where the whole land is meant"
	if from, err = logCell(r, "from", units.ParseLength, 0, mostLogPlace, fmt.Sprintf(problem, "from")); err != nil {
		return 0, 0, err
	}
	if to, err = logCell(r, "to", units.ParseLength, 0, mostLogPlace, fmt.Sprintf(problem, "to")); err == nil && r.cell("to") != "" && to <= from {
		err = r.wrong("to", "is not beyond from: the place ends where it begins, or before")
	}
	return from, to, err
}

// height reads a height that somebody measured.
func (r *logRow) height(name string) (units.Height, error) {
	return logCell(r, name, units.ParseHeight, leastLogHeight, mostLogHeight, "is no height of grass above 0 with a unit: put the unit into the header, as in "+name+" (in), or behind each number")
}

// move reads one stay.
func (r *logRow) move() (m LoggedMove, err error) {
	if m.Paddock, err = r.name(); err != nil {
		return m, err
	}
	if m.In, err = units.ParseDate(r.cell("in")); err != nil {
		return m, r.wrong("in", "is no day: write it as 2026-06-01")
	}
	if m.Out, err = units.ParseDate(r.cell("out")); err != nil {
		return m, r.wrong("out", "is no day: write it as 2026-06-01")
	}
	if m.Out < m.In {
		return m, r.wrong("out", "is before they came, "+m.In.String())
	}
	if m.Area, err = logCell(r, "area", units.ParseArea, leastLogArea, mostLogArea, "is no land above 0 with a unit: put the unit into the header, as in area (ac), or behind each number"); err != nil {
		return m, err
	}
	if m.Animals, err = logCell(r, "animals", units.ParseAnimalUnits, 0, mostLogAnimals, "is no number of animal units from 0 up: put the unit into the header, as in animals (AU)"); err != nil {
		return m, err
	}
	m.Group = r.cell("group")
	if m.From, m.To, err = r.place(); err != nil {
		return m, err
	}
	m.Left, err = r.height("left")
	return m, err
}

// withHeadUnit puts the header's unit behind a bare number.
func withHeadUnit(cell, unit string) string {
	if unit == "" || strings.ContainsAny(cell[min(len(cell), 1):], " abcdfghijklmnopqrstuvwxyzACUD²") {
		return cell
	}
	return cell + " " + unit
}

// repeated refuses a log in which one stay is written twice.
func repeated(stays []stay) error {
	for i := range stays {
		for j := i + 1; j < len(stays) && stays[j].In == stays[i].In; j++ {
			if m := &stays[i].LoggedMove; *m == stays[j].LoggedMove {
				return &LogError{Text: m.Paddock, Problem: fmt.Sprintf("has the same stay twice, from %s to %s: two groups at a time have different animals, or are one line", m.In, m.Out)}
			}
		}
	}
	return nil
}
