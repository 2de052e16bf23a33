package units

import (
	"errors"
	"math"
	"slices"
	"strings"
)

// Formula is what a formula's doc comment declares of it: its name, its
// arguments with their units and limits, its source. Each package's
// formulas_gen.go holds one for every formula, written from the comments by go
// generate, so that comment and guard are one thing.
type Formula struct {
	Name      string     // as in "forage.Available"
	Source    string     // the doc comment's section Source
	Quantity  string     // the quantity of the result, as in "Yield"; "" for a plain number
	Unit      string     // the unit of the result that Where names, "" where it names none
	Empirical bool       // Lines are over the numbers in the units of Where
	Lines     []Line     // the section Formula or Empirical; none for a look-up
	Lookup    string     // the section Table or Method where there are no lines
	Arguments []Argument // in the order of the function's parameters
}

// Argument is one argument of a Formula. Limits are in base units; a bound
// that is another argument is named by its index in LowOf or HighOf, else -1.
type Argument struct {
	Name     string   // the parameter's name
	Quantity string   // as in "Height"; "" for a plain number or a word
	Words    []string // of an enumeration, the value of the first being 1
	Unit     string   // the unit of the doc comment, "" for a plain number
	Factor   float64  // base units in one Unit
	Domain   Limits   // what is possible
	Range    Limits   // what the source covers; Source "" where the source names none
}

// Limits is an interval.
type Limits struct {
	Low, High         float64 // in base units, infinite for no bound
	LowOpen, HighOpen bool    // the bound itself lies outside
	LowOf, HighOf     int     // the index of the argument that is the bound, or -1
	Source            string  // the key of whose limits they are
}

// inside tells whether v lies strictly between limits that are plain numbers:
// most values do, and this is the quick way to know.
func (l *Limits) inside(v float64) bool {
	return v > l.Low && v < l.High && l.LowOf < 0 && l.HighOf < 0
}

// holds tells whether v lies within the limits; a bound at infinity is open,
// so that no infinity passes.
func (l *Limits) holds(v float64, arguments []float64) bool {
	low, high := l.bounds(arguments)
	if !(v >= low && v <= high) || v-v != 0 { // v-v is NaN for an infinity
		return false
	}
	return !(l.LowOpen && v == low) && !(l.HighOpen && v == high)
}

func (l *Limits) bounds(arguments []float64) (low, high float64) {
	low, high = l.Low, l.High
	if l.LowOf >= 0 && l.LowOf < len(arguments) {
		low = arguments[l.LowOf]
	}
	if l.HighOf >= 0 && l.HighOf < len(arguments) {
		high = arguments[l.HighOf]
	}
	return low, high
}

// Answer gives value as the result of formula for these arguments (in base
// units, in the order of the declaration): with nil where all is well, NaN and
// a *DomainError where an argument is impossible or the value overflows, value
// and a *RangeError where an argument lies outside the source's range. The
// first of several wins, in the order of the arguments, domain before range.
// It takes no memory where all is well.
func Answer[Q ~float64](formula *Formula, value Q, arguments ...float64) (Q, error) {
	ranged := -1
	for i := range formula.Arguments {
		a, v := &formula.Arguments[i], arguments[i]
		if !a.Domain.inside(v) && !a.Domain.holds(v, arguments) {
			return Q(math.NaN()), formula.domainError(i, arguments)
		}
		if a.Range.Source != "" && ranged < 0 && !a.Range.inside(v) && !a.Range.holds(v, arguments) {
			ranged = i
		}
	}
	if value-value != 0 {
		return Q(math.NaN()), &DomainError{Function: formula.Name, Argument: "result", Value: float64(value), Source: formula.Source}
	}
	if ranged >= 0 {
		return value, formula.rangeError(ranged, arguments)
	}
	return value, nil
}

// AnswerWithin is Answer where the other arguments narrow the limits of one: a source
// covers less for one kind of stock than for another, or a layer is no deeper than
// what it lies in. Limits with a source take the place of the argument's range, those
// without one that of what is possible.
func AnswerWithin[Q ~float64](formula *Formula, argument int, limits Limits, value Q, arguments ...float64) (Q, error) {
	narrow := *formula
	narrow.Arguments = slices.Clone(formula.Arguments)
	if limits.Source != "" {
		narrow.Arguments[argument].Range = limits
	} else {
		narrow.Arguments[argument].Domain = limits
	}
	return Answer(&narrow, value, arguments...)
}

// Between is limits of plain numbers, in base units; with a source they are what it
// covers, without one what is possible.
func Between(low, high float64, source string) Limits {
	return Limits{Low: low, High: high, LowOf: -1, HighOf: -1, Source: source}
}

// AtLeast is limits of what is possible from a plain number on, in base units.
func AtLeast(low float64) Limits { return Between(low, math.Inf(1), "") }

// Above is limits of what is possible beyond one plain number and up to another, in
// base units.
func Above(low, high float64) Limits {
	limits := Between(low, high, "")
	limits.LowOpen = true
	return limits
}

// NoFigure gives NaN and the error of a word that a formula has no figure for, beside
// these other arguments: the error of NoRow.
func NoFigure[Q ~float64](formula *Formula, argument int, problem string, accepts []string, arguments ...float64) (Q, error) {
	a := &formula.Arguments[argument]
	text := ""
	if word := int(arguments[argument]); word >= 1 && word <= len(a.Words) {
		text = a.Words[word-1]
	}
	return Q(math.NaN()), formula.NoRow(a.Name, text, problem, accepts, arguments...)
}

// NoRow gives the error of a text, or a word, of which a look-up has no row beside
// these other arguments: a *ParseError with those that it takes. Where an argument is
// impossible by itself, its error comes first. A text counts as 0 among the arguments.
func (f *Formula) NoRow(argument, text, problem string, accepts []string, arguments ...float64) error {
	if _, err := Answer(f, 0.0, arguments...); Impossible(err) {
		return err
	}
	at := slices.IndexFunc(f.Arguments, func(a Argument) bool { return a.Name == argument })
	return &ParseError{
		Quantity: argument, Text: text, Problem: problem, Accepts: slices.Clone(accepts), Word: true,
		Function: f.Name, Argument: argument, Index: at + 1,
	}
}

func (f *Formula) domainError(i int, arguments []float64) error {
	a := &f.Arguments[i]
	low, high := a.Domain.bounds(arguments)
	return &DomainError{
		Function: f.Name, Argument: a.Name, Index: i + 1,
		Value: arguments[i] / a.Factor, Low: low / a.Factor, High: high / a.Factor,
		Unit: a.Unit, Source: f.Source, wanted: f.wanted(&a.Domain, a, arguments),
	}
}

func (f *Formula) rangeError(i int, arguments []float64) error {
	a := &f.Arguments[i]
	low, high := a.Range.bounds(arguments)
	return &RangeError{
		Function: f.Name, Argument: a.Name, Index: i + 1,
		Value: arguments[i] / a.Factor, Low: low / a.Factor, High: high / a.Factor,
		Unit: a.Unit, Source: a.Range.Source, wanted: f.wanted(&a.Range, a, arguments),
	}
}

// wanted says in words what lies within the limits.
func (f *Formula) wanted(l *Limits, a *Argument, arguments []float64) string {
	low, high := l.bounds(arguments)
	bound := func(v float64, of int) string {
		text := number(v/a.Factor, a.Unit)
		if of >= 0 {
			text = f.Arguments[of].Name + " (" + text + ")"
		}
		return text
	}
	above, below := "at least ", "at most "
	if l.LowOpen {
		above = "above "
	}
	if l.HighOpen {
		below = "below "
	}
	switch {
	case a.Words != nil:
		return "from " + bound(low, -1) + " to " + bound(high, -1) + ": " + strings.Join(a.Words, ", ")
	case math.IsInf(low, -1) && math.IsInf(high, 1):
		return "a finite number"
	case math.IsInf(high, 1):
		return above + bound(low, l.LowOf)
	case math.IsInf(low, -1):
		return below + bound(high, l.HighOf)
	case l.LowOpen || l.HighOpen:
		return above + bound(low, l.LowOf) + " and " + below + bound(high, l.HighOf)
	default:
		return "from " + bound(low, l.LowOf) + " to " + bound(high, l.HighOf)
	}
}

// Impossible reports whether an error of a formula means that there is no value: an
// argument is impossible, or a word is not one that it has a figure for.
func Impossible(err error) bool {
	if err == nil {
		return false // and nothing is put on the heap
	}
	var domain *DomainError
	var word *ParseError
	return errors.As(err, &domain) || errors.As(err, &word)
}
