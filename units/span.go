package units

// Span is a printed span of a quantity: it stays a span, and a user takes its
// low end, its high end or the middle by name.
type Span[Q ~float64] struct {
	Low  Q `json:"low"`
	High Q `json:"high"`
}

// End names a place in a printed span.
type End int

// The ends of a span.
const (
	Low    End = iota + 1 // the lower printed figure
	Middle                // half way between the two
	High                  // the higher printed figure
)

// String names the end in lower case.
func (e End) String() string {
	switch e {
	case Low:
		return "low"
	case Middle:
		return "middle"
	case High:
		return "high"
	}
	return "unknown end"
}

// Other gives the opposite end: what is low for the grass is high for the
// mouths.
func (e End) Other() End { return High + Low - e }

// At gives the span's value at an end; an end that is none of the three gives
// the middle.
func (s Span[Q]) At(end End) Q {
	switch end {
	case Low:
		return s.Low
	case High:
		return s.High
	}
	return s.Low + (s.High-s.Low)/2
}

// Single is the span of one printed figure.
func Single[Q ~float64](q Q) Span[Q] { return Span[Q]{Low: q, High: q} }
