package grazing

import (
	"bytes"
	"cmp"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"math"
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
}

// days gives the length of the stay: the day of coming counts, that of leaving does
// not, and a stay of hours is a day.
func (m *LoggedMove) days() units.Days { return max(units.Day, units.Days(m.Out-m.In)) }

// LogError is something wrong in a log of moves.
type LogError struct {
	Line    int    `json:"line"`    // of the log, its header being 1; 0 where it is the whole log
	Column  string `json:"column"`  // its name, "" for the line
	Text    string `json:"text"`    // what stands there
	Problem string `json:"problem"` // what is wrong and what would be right
}

// Error tells where, what and how to mend it.
func (e *LogError) Error() string {
	where := "the log of moves"
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

// logColumns are the columns that a log must have, and the quantity behind each.
var logColumns = []string{"paddock", "in", "out", "area", "animals"}

const logHeader = "paddock, in, out, area (ac), animals (AU)"

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
)

// ReadMoves reads a log of moves: comma-separated, a header first, one stay a line.
//
// The columns are paddock, in, out, area and animals, in any order, and others are
// left alone. Dates are as 2026-06-01. The unit of the land and of the animals
// stands in the header, as in area (ac) or area (ha) and animals (AU), or with each
// number. A line that begins with # is a remark. The stays come back in the order
// of their days.
//
// Errors: a *LogError with the line, the column and the mend: a column missing or
// twice, a cell that cannot be read, a stay that ends before it begins, land or animals
// beyond what a farm can have, or the same stay twice
//
// Check: TestReadMoves, TestBadLogs
//
// Source: definition: the form of the log is ours
func ReadMoves(log string) ([]LoggedMove, error) {
	if len(log) > mostLogBytes {
		return nil, &LogError{Problem: fmt.Sprintf("is longer than %d million bytes: part it by years", mostLogBytes>>20)}
	}
	reader := csv.NewReader(bytes.NewReader([]byte(strings.TrimPrefix(log, "\ufeff"))))
	reader.Comment, reader.FieldsPerRecord, reader.TrimLeadingSpace = '#', -1, true
	head, err := reader.Read()
	if err != nil {
		return nil, logTrouble(err, "is empty: begin with the header "+logHeader)
	}
	columns, err := readLogHead(head)
	if err != nil {
		return nil, err
	}
	var moves []LoggedMove
	for {
		row, err := reader.Read()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			return nil, logTrouble(err, "")
		}
		line, _ := reader.FieldPos(0)
		if len(moves) == mostLogMoves {
			return nil, &LogError{Line: line, Problem: fmt.Sprintf("there are more than %d stays: part the log by years", mostLogMoves)}
		}
		move, err := columns.move(row, line)
		if err != nil {
			return nil, err
		}
		moves = append(moves, move)
	}
	if len(moves) == 0 {
		return nil, &LogError{Problem: "has a header and no stays"}
	}
	slices.SortStableFunc(moves, func(a, b LoggedMove) int {
		return cmp.Or(cmp.Compare(a.In, b.In), cmp.Compare(a.Out, b.Out), cmp.Compare(a.Paddock, b.Paddock))
	})
	if err := repeated(moves); err != nil {
		return nil, err
	}
	return moves, nil
}

// logTrouble turns an error of the CSV reader into one of ours.
func logTrouble(err error, empty string) error {
	var parse *csv.ParseError
	switch {
	case errors.Is(err, io.EOF):
		return &LogError{Problem: empty}
	case errors.As(err, &parse):
		return &LogError{Line: parse.Line, Problem: parse.Err.Error() + ": cells with a comma or a quote stand in quotes, a quote within them twice"}
	}
	return &LogError{Problem: err.Error()}
}

// logColumn is where a column stands and the unit of its header.
type logColumn struct {
	at   int
	unit string
}

// logHead is the columns by name.
type logHead map[string]logColumn

func readLogHead(head []string) (logHead, error) {
	columns := logHead{}
	for i, cell := range head {
		name, unit, _ := strings.Cut(strings.TrimSpace(cell), "(")
		name = strings.ToLower(strings.TrimSpace(name))
		if !slices.Contains(logColumns, name) {
			continue
		}
		if _, twice := columns[name]; twice {
			return nil, &LogError{Line: 1, Column: name, Problem: "stands twice in the header"}
		}
		columns[name] = logColumn{i, strings.TrimSpace(strings.TrimSuffix(strings.TrimSpace(unit), ")"))}
	}
	for _, name := range logColumns {
		if _, has := columns[name]; !has {
			return nil, &LogError{Line: 1, Column: name, Problem: "is missing in the header: it is " + logHeader}
		}
	}
	return columns, nil
}

// move reads one line.
func (h logHead) move(row []string, line int) (LoggedMove, error) {
	var m LoggedMove
	cell := func(name string) string {
		if at := h[name].at; at < len(row) {
			return strings.TrimSpace(row[at])
		}
		return ""
	}
	wrong := func(name, problem string) (LoggedMove, error) {
		return m, &LogError{Line: line, Column: name, Text: cell(name), Problem: problem}
	}
	if m.Paddock = cell("paddock"); m.Paddock == "" {
		return wrong("paddock", "is empty: every stay has a paddock")
	}
	var err error
	if m.In, err = units.ParseDate(cell("in")); err != nil {
		return wrong("in", "is no day: write it as 2026-06-01")
	}
	if m.Out, err = units.ParseDate(cell("out")); err != nil {
		return wrong("out", "is no day: write it as 2026-06-01")
	}
	if m.Out < m.In {
		return wrong("out", "is before they came, "+m.In.String())
	}
	if m.Area, err = units.ParseArea(withHeadUnit(cell("area"), h["area"].unit)); err != nil || !(m.Area >= leastLogArea && m.Area <= mostLogArea) {
		return wrong("area", "is no land above 0 with a unit: put the unit into the header, as in area (ac), or behind each number")
	}
	if m.Animals, err = units.ParseAnimalUnits(withHeadUnit(cell("animals"), h["animals"].unit)); err != nil || !(m.Animals >= 0 && m.Animals <= mostLogAnimals) {
		return wrong("animals", "is no number of animal units from 0 up: put the unit into the header, as in animals (AU)")
	}
	return m, nil
}

// withHeadUnit puts the header's unit behind a bare number.
func withHeadUnit(cell, unit string) string {
	if unit == "" || strings.ContainsAny(cell[min(len(cell), 1):], " abcdfghijklmnopqrstuvwxyzACUD²") {
		return cell
	}
	return cell + " " + unit
}

// repeated refuses a log in which one stay is written twice.
func repeated(moves []LoggedMove) error {
	for i := range moves {
		for j := i + 1; j < len(moves) && moves[j].In == moves[i].In; j++ {
			if moves[i] == moves[j] {
				return &LogError{Text: moves[i].Paddock, Problem: fmt.Sprintf("has the same stay twice, from %s to %s: two groups at a time have different animals, or are one line", moves[i].In, moves[i].Out)}
			}
		}
	}
	return nil
}

// RecordRules is what a log of moves is read with.
type RecordRules struct {
	Today  units.Date     `json:"today"`         // the day of the question; stays that begin later are left out
	Demand units.Demand   `json:"demand_kg_day"` // what an animal unit eats in a day, as of herd.UnitDemand
	Use    units.Fraction `json:"use"`           // share of what stood that was eaten
	Rest   units.Days     `json:"rest_days"`     // rest wanted before the next stay
}

// PaddockRecord is what a log tells of one paddock.
type PaddockRecord struct {
	Paddock   string        `json:"paddock"`         // its name
	Stays     int           `json:"stays"`           // stays that had begun
	Grazed    units.Days    `json:"grazed_days"`     // days of all stays together
	Use       units.UseRate `json:"use_aud_m2"`      // animal-unit days taken from an area
	Harvested units.Yield   `json:"harvested_kg_m2"` // what was eaten, by the demand
	Standing  units.Yield   `json:"standing_kg_m2"`  // what stood in all, by the share eaten
	Left      units.Date    `json:"left"`            // the day on which the last stay ended
	Shortest  units.Days    `json:"shortest_days"`   // the shortest rest between two stays; 0 with one stay
	Rested    units.Days    `json:"rested_days"`     // since the last stay; 0 where they are on it
	Occupied  bool          `json:"occupied"`        // they are on it
	Ready     units.Date    `json:"ready"`           // the day on which it has rested enough
}

var recordGuard = units.Formula{
	Name: "grazing.PaddockRecords", Source: "NEB-AUM",
	Arguments: []units.Argument{
		{Name: "demand", Unit: "kg/day", Factor: 1, Domain: atLeast(0)},
		{Name: "use", Unit: "%", Factor: float64(units.Percent), Domain: above(0, 1)},
		{Name: "rest", Unit: "days", Factor: 1, Domain: between(0, longestLook)},
	},
}

// PaddockRecords tells of each paddock in a log what was taken from it, what grew,
// what rest it had and when it is ready; the one to go to next comes first.
//
// Method: animal units × days ÷ area, added up over the stays; × what an animal unit
// eats is harvested; ÷ the share eaten is what stood; rest from the day of leaving to
// the next day of coming
//
// The harvest is what the animals should have eaten, not what was weighed: where they
// were fed beside the pasture, or gained or lost, it is off by that. The land of a
// paddock is that of each stay, so strips of one paddock are each an area of their
// own. Readiness is a matter of days here: look at the grass before you open the gate.
//
// Errors: a *LogError of ReadMoves; *units.DomainError where a rule is impossible
//
// Check: TestPaddockRecordsByHand, TestPaddockRecordsRefuse, TestRecordsAddUp
//
// Source: NEB-AUM animal-unit days; ours: harvested and standing yield by them
func PaddockRecords(log string, rules RecordRules) ([]PaddockRecord, error) {
	if _, err := units.Answer(&recordGuard, 0.0, float64(rules.Demand), float64(rules.Use), float64(rules.Rest)); err != nil {
		return nil, err
	}
	moves, err := ReadMoves(log)
	if err != nil {
		return nil, err
	}
	at := map[string]int{}
	records := []PaddockRecord{}
	for i := range moves {
		m := &moves[i]
		if m.In > rules.Today {
			continue
		}
		n, known := at[m.Paddock]
		if !known {
			n = len(records)
			at[m.Paddock] = n
			records = append(records, PaddockRecord{Paddock: m.Paddock})
		}
		records[n].add(m, rules.Today)
	}
	for i := range records {
		records[i].finish(rules)
	}
	slices.SortStableFunc(records, func(a, b PaddockRecord) int {
		return cmp.Or(cmp.Compare(a.Ready, b.Ready), cmp.Compare(a.Paddock, b.Paddock))
	})
	return records, nil
}

// add takes one stay into the record, as far as it lies before today.
func (r *PaddockRecord) add(m *LoggedMove, today units.Date) {
	days := m.days()
	if m.Out > today {
		days = units.Days(today-m.In) + 1
		r.Occupied = true
	}
	if r.Stays > 0 {
		rest := max(0, units.Days(m.In-r.Left))
		if r.Stays == 1 || rest < r.Shortest {
			r.Shortest = rest
		}
	}
	r.Stays++
	r.Grazed += days
	r.Use += units.UseRate(float64(m.Animals) * float64(days) / float64(m.Area))
	r.Left = max(r.Left, min(m.Out, today))
}

func (r *PaddockRecord) finish(rules RecordRules) {
	r.Harvested = units.Yield(float64(r.Use) * float64(rules.Demand))
	r.Standing = units.Yield(float64(r.Harvested) / float64(rules.Use))
	if !r.Occupied {
		r.Rested = units.Days(rules.Today - r.Left)
	}
	r.Ready = r.Left + units.Date(math.Ceil(float64(rules.Rest)))
}
