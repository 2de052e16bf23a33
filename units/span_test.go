package units_test

import (
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.org/soum/units"
)

func TestSpan(t *testing.T) {
	s := units.Span[units.Density]{Low: 250 * units.PoundPerAcreInch, High: 300 * units.PoundPerAcreInch}
	for end, want := range map[units.End]float64{units.Low: 250, units.Middle: 275, units.High: 300} {
		if got := s.At(end).PoundsPerAcreInch(); !(math.Abs(got-want) <= 1e-9) {
			t.Errorf("at the %v end %v, want %v", end, got, want)
		}
	}
	for _, end := range []units.End{0, 4, 9, -1} {
		if got := s.At(end); !math.IsNaN(float64(got)) {
			t.Errorf("at %d, which is not an end, %v", int(end), got)
		}
	}
	if one := units.Single(3 * units.Day); one.Low != 3 || one.High != 3 || one.At(units.Middle) != 3 {
		t.Error(one)
	}
	wide := units.Span[units.Days]{Low: -math.MaxFloat64, High: -math.MaxFloat64}
	if got := wide.At(units.Middle); got != -math.MaxFloat64 {
		t.Errorf("the middle of a single figure is %v", got)
	}
}

func TestMiddleLiesBetween(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := rapid.Float64Range(-1e300, 1e300).Draw(t, "a"), rapid.Float64Range(-1e300, 1e300).Draw(t, "b")
		s := units.Span[units.Days]{Low: units.Days(min(a, b)), High: units.Days(max(a, b))}
		if m := s.At(units.Middle); m < s.Low || m > s.High {
			t.Fatalf("the middle of %v is %v", s, m)
		}
	})
}

func TestEnds(t *testing.T) {
	for end, want := range map[units.End]struct {
		text  string
		other units.End
	}{units.Low: {"low", units.High}, units.Middle: {"middle", units.Middle}, units.High: {"high", units.Low}} {
		text, err := end.MarshalText()
		var back units.End
		if err != nil || string(text) != want.text || end.String() != want.text || end.Other() != want.other || back.UnmarshalText(text) != nil || back != end {
			t.Errorf("%d: %q %v, the other end %v, read back %v", int(end), text, err, end.Other(), back)
		}
	}
	var end units.End
	if err := end.UnmarshalText([]byte("top")); err == nil || err.Error() != `"top": no such word; end takes one of: low, middle, high` {
		t.Error(err)
	}
	for _, end := range []units.End{0, 4, -1} {
		want := fmt.Sprintf(`"%d": no such word; end takes one of: low, middle, high`, int(end))
		if text, err := end.MarshalText(); err == nil || err.Error() != want || text != nil || end.String() != "unknown end" {
			t.Errorf("%d is written as %v", int(end), end)
		}
	}
}
