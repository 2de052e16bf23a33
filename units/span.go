package units

import (
	"math"
	"strconv"
)

// Span is a printed span of a quantity: it stays a span, and a user takes its
// low end, its high end or the middle by name.
type Span[Q ~float64] struct {
	Low  Q `json:"low"`  // the lower printed figure
	High Q `json:"high"` // the higher printed figure
}

// End names a place in a printed span.
type End int

// The ends of a span.
const (
	Low    End = iota + 1 // the lower printed figure
	Middle                // half way between the two
	High                  // the higher printed figure
)

// ends are the texts of the ends, in the order of the constants.
var ends = [...]string{Low: "low", Middle: "middle", High: "high"}

// String names the end in lower case.
func (e End) String() string {
	if e < Low || e > High {
		return "unknown end"
	}
	return ends[e]
}

// MarshalText returns the end's name, and an error for a value that is none of the
// three, since UnmarshalText would not read it back.
func (e End) MarshalText() ([]byte, error) {
	if e < Low || e > High {
		return nil, noEnd(strconv.Itoa(int(e)))
	}
	return []byte(ends[e]), nil
}

// UnmarshalText reads the name of an end.
func (e *End) UnmarshalText(text []byte) error {
	for end := Low; end <= High; end++ {
		if ends[end] == string(text) {
			*e = end
			return nil
		}
	}
	return noEnd(string(text))
}

func noEnd(text string) error {
	return &ParseError{Quantity: "End", Text: text, Problem: "no such word", Accepts: []string{"low", "middle", "high"}, Word: true}
}

// Other gives the opposite end: what is low for the grass is high for the
// mouths.
func (e End) Other() End { return High + Low - e }

// At returns the span's value at an end, NaN for an end that is none of the three.
func (s Span[Q]) At(end End) Q {
	switch end {
	case Low:
		return s.Low
	case High:
		return s.High
	case Middle:
		return s.Low + (s.High-s.Low)/2
	}
	return Q(math.NaN())
}

// Single is the span of one printed figure.
func Single[Q ~float64](q Q) Span[Q] { return Span[Q]{Low: q, High: q} }
