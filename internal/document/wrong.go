package document

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"example.org/soum/units"
)

// Shown is a quantity that prints for people.
type Shown interface{ In(units.System) string }

// Quantity is a number that prints for people.
type Quantity interface {
	~float64
	Shown
}

// Wrong makes the error of one thing that is wrong in a document.
func Wrong(path string, value any, problem, allowed string) error {
	text := fmt.Sprint(value)
	if q, ok := value.(Shown); ok {
		text = Both(q)
	}
	return &Error{Path: path, Value: text, Problem: problem, Allowed: allowed}
}

// NotAbove0 is Wrong for a quantity that must lie above 0: what is 0 was left out,
// or might as well have been.
func NotAbove0[Q Quantity](path string, value Q, allowed string) error {
	if value == 0 {
		return Wrong(path, value, "is not above 0, or was left out", allowed)
	}
	return Wrong(path, value, "is negative", allowed)
}

// NoRow is Wrong for the name of a row of a table, beside the error of the table;
// otherwise says what may stand in place of a name. An error that is not of a name
// comes back as it is.
func NoRow(path, name string, err error, otherwise string) error {
	var parse *units.ParseError
	if errors.As(err, &parse) {
		return Wrong(path, strconv.Quote(name), "is the name of no row: "+parse.Problem, "one of: "+strings.Join(parse.Accepts, ", ")+otherwise)
	}
	return err
}

// Inside puts the place of an object before the path of what is wrong in it. Paths are
// made on the way out, since nearly always nothing is wrong.
func Inside(place string, err error) error {
	if e, ours := err.(*Error); ours {
		switch {
		case e.Path == "" || e.Path[0] == '[':
			e.Path = place + e.Path
		default:
			e.Path = place + "." + e.Path
		}
	}
	return err
}

// InList is Inside for an object of a list.
func InList(list string, i int, err error) error { return Inside(fmt.Sprintf("%s[%d]", list, i), err) }

// CheckID tells what is wrong with an id, which may be there twice already.
func CheckID(id string, twice bool) error {
	if id == "" {
		return Wrong("id", `""`, "is empty", "a name of your own")
	}
	if twice {
		return Wrong("id", strconv.Quote(id), "stands twice", "a name that no other has")
	}
	return nil
}

// Both prints a quantity in metric and in US units, since the reader's own text is
// gone by the time a value is checked.
func Both(q Shown) string {
	metric, us := q.In(units.Metric), q.In(units.US)
	if metric == us {
		return metric
	}
	return metric + " (" + us + ")"
}

// SpanText prints both ends of a span.
func SpanText[Q Quantity](s units.Span[Q]) string { return Both(s.Low) + " to " + Both(s.High) }

// IsShare reports whether a span goes upward within 0 and 1.
func IsShare(s units.Span[units.Fraction]) bool {
	return s.Low >= 0 && s.High >= s.Low && s.High <= 1
}

// Listed gives an empty list for none: as JSON it is walked through by readers for
// whom null is not a list.
func Listed[T any](list []T) []T {
	if list == nil {
		return []T{}
	}
	return list
}
