package units

import (
	"fmt"
	"math"
	"strings"
	"unicode"
)

// DomainError says that an argument of a formula is impossible (a negative
// area, a share above one, not a number). The value that comes with it is NaN.
type DomainError struct {
	Function string  // as in "forage.Available"
	Argument string  // the parameter's name, or "result"
	Index    int     // the parameter's place, from 1; 0 for the result
	Value    float64 // in Unit
	Low      float64 // in Unit
	High     float64 // in Unit
	Unit     string  // the unit the source takes, "" for a plain number
	Source   string  // the keys of SOURCES.md
	wanted   string
}

// Error tells what was wrong, where, its value and what would be right.
func (e *DomainError) Error() string {
	if e.Argument == "result" {
		return fmt.Sprintf("%s: the result overflows (%s)", e.Function, number(e.Value, e.Unit))
	}
	return fmt.Sprintf("%s: %s is %s, must be %s", e.Function, e.Argument, number(e.Value, e.Unit), e.wanted)
}

// RangeError says that an argument lies outside what the source of a formula
// was fitted on or printed for. The formula's value comes with it.
type RangeError struct {
	Function string  // as in "forage.UsableShare"
	Argument string  // the parameter's name
	Index    int     // the parameter's place, from 1
	Value    float64 // in Unit
	Low      float64 // in Unit
	High     float64 // in Unit, never below Low
	Gap      bool    // the source covers what is up to Low and from High on, and nothing between
	Unit     string  // the unit the source takes, "" for a plain number
	Source   string  // the key of the limits
	wanted   string
}

// Error tells the value, the limits and whose they are.
func (e *RangeError) Error() string {
	return fmt.Sprintf("%s: %s is %s, outside what %s covers (%s); the value is given all the same",
		e.Function, e.Argument, number(e.Value, e.Unit), e.Source, e.wanted)
}

// Outside tells the value and whose limits it lies outside, in a sentence.
func (e *RangeError) Outside() string {
	return fmt.Sprintf("%s is %s, outside what %s covers (%s).", e.Argument, number(e.Value, e.Unit), e.Source, e.wanted)
}

// ParseError says that a text is not the quantity it should be, or that a word or a
// name is not one that a table has a row for. The value that comes with it is NaN.
type ParseError struct {
	Quantity string   // as in "Area"
	Text     string   // as given
	Problem  string   // what is wrong with it
	Accepts  []string // the units it takes, one spelling each
	Word     bool     // one of Accepts is the whole text, there is no number
	Function string   // the formula whose argument it is, "" for none
	Argument string   // the parameter's name, with Function
	Index    int      // the parameter's place, from 1, with Function
}

// Error tells the text, the problem and the units that would be right.
func (e *ParseError) Error() string {
	form := "a number and one of"
	if e.Word {
		form = "one of"
	}
	if e.Function != "" {
		said := fmt.Sprintf("%s: %s is %q: %s", e.Function, e.Argument, e.Text, e.Problem)
		if len(e.Accepts) == 0 {
			return said
		}
		return fmt.Sprintf("%s; it takes %s: %s", said, form, strings.Join(e.Accepts, ", "))
	}
	return fmt.Sprintf("%q: %s; %s takes %s: %s", e.Text, e.Problem, e.What(), form, strings.Join(e.Accepts, ", "))
}

// What names what the text should have been, in plain words: "fresh feed",
// "stage".
func (e *ParseError) What() string {
	name := e.Quantity[strings.LastIndex(e.Quantity, ".")+1:]
	var b strings.Builder
	for i, r := range name {
		if unicode.IsUpper(r) && i > 0 {
			b.WriteByte(' ')
		}
		b.WriteRune(unicode.ToLower(r))
	}
	return b.String()
}

// number prints a value with its unit, short enough to read.
func number(v float64, unit string) string {
	text := fmt.Sprintf("%.6g", v)
	switch {
	case unit == "" || math.IsNaN(v):
		return text
	case unit == "days" && text == "1":
		unit = "day"
	}
	return text + " " + unit
}
