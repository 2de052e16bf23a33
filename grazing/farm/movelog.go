package farm

import (
	"cmp"
	"fmt"
	"slices"

	"example.org/soum/internal/document"
	"example.org/soum/internal/sheet"
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

// movesForm is a log of moves.
var movesForm = sheet.Form{
	Name: "log", Header: "paddock, in, out, area (ac), animals (AU)",
	Must: []string{"paddock", "in", "out", "area", "animals"}, May: []string{"group", "from", "to", "left"},
	Others: true, Ragged: true, MostBytes: mostLogBytes, MostLines: mostLogMoves,
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

// What the cells of quantities hold.
var (
	landCell   = sheet.Measure[units.Area]{Parse: units.ParseArea, Low: leastLogArea, High: mostLogArea, What: "an area of land", Allowed: "land above 0, its unit in the heading as in area (ac), or behind each number"}
	herdCell   = sheet.Measure[units.AnimalUnits]{Parse: units.ParseAnimalUnits, High: mostLogAnimals, What: "a number of animal units", Allowed: "0 or more, the unit in the heading as in animals (AU), or behind each number"}
	placeCell  = sheet.Measure[units.Length]{Parse: units.ParseLength, High: mostLogPlace, What: "a place along a lane", Allowed: "a distance from its start, its unit in the heading as in from (ft), or behind each number; empty where the whole land is meant"}
	heightCell = sheet.Measure[units.Height]{Parse: units.ParseHeight, Low: leastLogHeight, High: mostLogHeight, What: "a height of grass", Allowed: "a height above 0, its unit in the heading in brackets, as (in), or behind each number"}
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
// Errors: a *document error with the line, the column and the mend: a column missing or
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

// stay is a stay and where it stands in the log.
type stay struct {
	LoggedMove
	sheet *sheet.Sheet
	line  int
}

// wrong tells what is wrong with a cell of the stay's line.
func (s *stay) wrong(column, text, problem, allowed string) error {
	return s.sheet.WrongAt(s.line, column, text, problem, allowed)
}

// someStays gives the stays of a log, which must have one.
func someStays(log string) ([]stay, error) {
	stays, err := readStays(log)
	if err == nil && len(stays) == 0 {
		err = &document.Error{Path: movesForm.Name, Problem: "has a header and no stays", Allowed: "a line for each stay under the header"}
	}
	return stays, err
}

// readStays is ReadMoves with the lines.
func readStays(log string) ([]stay, error) {
	s, err := movesForm.Open(log)
	if err != nil {
		return nil, err
	}
	var stays []stay
	for s.Next() {
		move, err := readMove(s)
		if err != nil {
			return nil, err
		}
		stays = append(stays, stay{move, s, s.Line()})
	}
	if err := s.Err(); err != nil {
		return nil, err
	}
	slices.SortStableFunc(stays, func(a, b stay) int {
		return cmp.Or(cmp.Compare(a.In, b.In), cmp.Compare(a.Out, b.Out), cmp.Compare(a.Paddock, b.Paddock))
	})
	return stays, repeated(stays)
}

// readMove reads one stay.
func readMove(s *sheet.Sheet) (m LoggedMove, err error) {
	if m.Paddock, err = readPaddock(s); err != nil {
		return m, err
	}
	if m.In, err = s.Date("in"); err != nil {
		return m, err
	}
	if m.Out, err = s.Date("out"); err != nil {
		return m, err
	}
	if m.Out < m.In {
		return m, s.Wrong("out", "is before they came, "+m.In.String(), "the day on which they left; the same day counts as one")
	}
	if m.Area, err = landCell.Read(s, "area"); err != nil {
		return m, err
	}
	if m.Animals, err = herdCell.Read(s, "animals"); err != nil {
		return m, err
	}
	m.Group = s.Cell("group")
	if m.From, m.To, err = readPlace(s); err != nil {
		return m, err
	}
	m.Left, _, err = heightCell.Given(s, "left")
	return m, err
}

// readPaddock reads the name of the land.
func readPaddock(s *sheet.Sheet) (string, error) {
	if s.Cell("paddock") == "" {
		return "", s.Wrong("paddock", "is empty", "the name of the land")
	}
	return s.Cell("paddock"), nil
}

// readPlace reads where along a lane it is.
func readPlace(s *sheet.Sheet) (from, to units.Length, err error) {
	if from, _, err = placeCell.Given(s, "from"); err != nil {
		return 0, 0, err
	}
	to, given, err := placeCell.Given(s, "to")
	if err == nil && given && to <= from {
		err = s.Wrong("to", "is not beyond from", "a place further along the lane than from")
	}
	return from, to, err
}

// repeated refuses a log in which one stay is written twice.
func repeated(stays []stay) error {
	for i := range stays {
		for j := i + 1; j < len(stays) && stays[j].In == stays[i].In; j++ {
			if m := &stays[i].LoggedMove; *m == stays[j].LoggedMove {
				return stays[j].wrong("paddock", m.Paddock, fmt.Sprintf("has the same stay twice, from %s to %s", m.In, m.Out), "each stay once; two groups at a time have different animals, or are one line")
			}
		}
	}
	return nil
}
