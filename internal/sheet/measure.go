package sheet

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"example.org/soum/units"
)

// Measure is what the cells of a column of quantities may hold.
type Measure[Q ~float64] struct {
	Parse     func(string) (Q, error) // of a number with a unit, as units.ParseHeight
	Low, High Q                       // both may be there
	What      string                  // as in "a height of grass"
	Allowed   string                  // what would be right
}

// Unit refuses a column whose heading has no unit, or not one of the quantity.
func (m *Measure[Q]) Unit(s *Sheet, column string) error {
	c := s.find(column)
	if c == nil {
		return s.Need(column)
	}
	_, err := m.Parse("1 " + c.unit)
	if err == nil {
		return nil
	}
	problem, allowed := "has no unit", "a unit of "+m.What+" behind the name, in brackets"
	if c.unit != "" {
		problem = "has a unit that is not one of " + m.What
	}
	if refused := new(units.ParseError); errors.As(err, &refused) {
		allowed = fmt.Sprintf("one of %s behind the name, as in %s (%s)", strings.Join(refused.Accepts, ", "), column, refused.Accepts[0])
	}
	return s.wrongHeading(c.at, problem, allowed)
}

// Read reads a cell: a number with its unit, or a bare number where the heading has the
// unit.
func (m *Measure[Q]) Read(s *Sheet, column string) (Q, error) {
	q, given, err := m.Given(s, column)
	if err == nil && !given {
		err = s.Wrong(column, "is not "+m.What, m.Allowed)
	}
	return q, err
}

// Given is Read where a cell may be empty, or its column missing: nothing is given then.
func (m *Measure[Q]) Given(s *Sheet, column string) (q Q, given bool, err error) {
	c := s.find(column)
	if c == nil {
		return 0, false, nil
	}
	cell := s.in(c)
	if cell == "" {
		return 0, false, nil
	}
	q, ok := m.value(cell, c)
	if !ok || !(q >= m.Low && q <= m.High) {
		return 0, false, s.Wrong(column, "is not "+m.What, m.Allowed)
	}
	return q, true, nil
}

func (m *Measure[Q]) value(cell string, c *column) (q Q, ok bool) {
	number, err := strconv.ParseFloat(cell, 64)
	switch bare := err == nil && c.unit != ""; {
	case !bare:
		q, err = m.Parse(cell)
	case m.factor(c) > 0:
		q = Q(number * c.factor)
	default:
		q, err = m.Parse(cell + " " + c.unit)
	}
	return q, err == nil
}

// factor gives what one of the heading's unit is, so that the unit is read once; 0 for a
// unit whose nothing is not nothing, as a degree Fahrenheit.
func (m *Measure[Q]) factor(c *column) float64 {
	if !c.read {
		none, err := m.Parse("0 " + c.unit)
		one, _ := m.Parse("1 " + c.unit)
		if c.read = true; err == nil && none == 0 {
			c.factor = float64(one)
		}
	}
	return c.factor
}
