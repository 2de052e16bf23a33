package units_test

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/soum/units"
)

var inf = math.Inf(1)

// trial is a formula of three arguments: an area above 0, a share from 0 to 1
// that its source covers from 20 to 60 %, a height up to the first argument's
// number.
var trial = units.Formula{
	Name: "forage.Trial", Source: "TRIAL-BOOK",
	Arguments: []units.Argument{
		{Name: "area", Unit: "ac", Factor: float64(units.Acre), Domain: units.Limits{Low: 0, High: inf, LowOpen: true, LowOf: -1, HighOf: -1}},
		{
			Name: "share", Unit: "%", Factor: float64(units.Percent), Domain: units.Limits{Low: 0, High: 1, LowOf: -1, HighOf: -1},
			Range: units.Limits{Low: 0.2, High: 0.6, LowOf: -1, HighOf: -1, Source: "TRIAL-BOOK"},
		},
		{
			Name: "left", Factor: 1, Domain: units.Limits{Low: -inf, High: 0, LowOf: -1, HighOf: 0},
			Range: units.Limits{Low: -5, High: inf, LowOpen: true, LowOf: -1, HighOf: -1, Source: "OTHER-BOOK"},
		},
	},
}

func TestErrorsTeach(t *testing.T) {
	acre := float64(units.Acre)
	for _, c := range []struct {
		value             float64
		area, share, left float64
		want              string
	}{
		{1, acre, 0.3, 0, ""},
		{1, 0, 0.3, -1, "forage.Trial: area is 0 ac, must be above 0 ac"},
		{1, -2 * acre, 0.3, -9, "forage.Trial: area is -2 ac, must be above 0 ac"},
		{1, math.NaN(), 0.3, 0, "forage.Trial: area is NaN, must be above 0 ac"},
		{1, inf, 0.3, 0, "forage.Trial: area is +Inf ac, must be above 0 ac"},
		{1, acre, 1.5, 0, "forage.Trial: share is 150 %, must be from 0 % to 100 %"},
		{1, acre, math.NaN(), 0, "forage.Trial: share is NaN, must be from 0 % to 100 %"},
		{1, 2, 0.3, 3, "forage.Trial: left is 3, must be at most area (2)"},
		{1, 2, 0.3, -inf, "forage.Trial: left is -Inf, must be at most area (2)"},
		{1, acre, 0.7, 0, "forage.Trial: share is 70 %, outside what TRIAL-BOOK covers (from 20 % to 60 %); the value is still given"},
		{1, acre, 0.1, -5, "forage.Trial: share is 10 %, outside what TRIAL-BOOK covers (from 20 % to 60 %); the value is still given"},
		{1, acre, 0.3, -5, "forage.Trial: left is -5, outside what OTHER-BOOK covers (above -5); the value is still given"},
		{1, 2, 0.1, 3, "forage.Trial: left is 3, must be at most area (2)"}, // impossible goes before out of range
		{inf, acre, 0.3, 0, "forage.Trial: the result overflows (+Inf)"},
		{math.NaN(), acre, 0.3, 0, "forage.Trial: the result overflows (NaN)"},
		{inf, acre, 0.1, 0, "forage.Trial: the result overflows (+Inf)"},
	} {
		got, err := units.Answer(&trial, units.Yield(c.value), c.area, c.share, c.left)
		var domain *units.DomainError
		switch {
		case c.want == "" && err == nil, err != nil && err.Error() == c.want:
		default:
			t.Errorf("got  %v\nwant %s", err, c.want)
		}
		if impossible := errors.As(err, &domain); impossible != math.IsNaN(float64(got)) || impossible != units.Impossible(err) || !impossible && got != units.Yield(c.value) {
			t.Errorf("%v: the value is %v", err, got)
		}
	}
}

func TestErrorsHaveTheirParts(t *testing.T) {
	_, err := units.Answer(&trial, 1.0, 1, 0.7, 0)
	var ranged *units.RangeError
	if !errors.As(err, &ranged) || units.Impossible(err) || units.Impossible(nil) {
		t.Fatal(err)
	}
	if got := fmt.Sprintf("%s %s %d %.4g %.4g %.4g %s %s", ranged.Function, ranged.Argument, ranged.Index, ranged.Value, ranged.Low, ranged.High, ranged.Unit, ranged.Source); got != "forage.Trial share 2 70 20 60 % TRIAL-BOOK" {
		t.Error(got)
	}
	_, err = units.Answer(&trial, 1.0, 2, 0.3, 3)
	var domain *units.DomainError
	if !errors.As(err, &domain) {
		t.Fatal(err)
	}
	if got := fmt.Sprintf("%s %s %d %g %g %g %q %s", domain.Function, domain.Argument, domain.Index, domain.Value, domain.Low, domain.High, domain.Unit, domain.Source); got != `forage.Trial left 3 3 -Inf 2 "" TRIAL-BOOK` {
		t.Error(got)
	}
	if !units.Impossible(fmt.Errorf("in lane 3: %w", err)) {
		t.Error("a wrapped error was not recognised")
	}
}

// TestLimitsInWords tells every form of limits.
func TestLimitsInWords(t *testing.T) {
	for want, l := range map[string]units.Limits{
		"a finite number":              {Low: -inf, High: inf, LowOf: -1, HighOf: -1},
		"at least 2 in":                {Low: 2, High: inf, LowOf: -1, HighOf: -1},
		"above 2 in":                   {Low: 2, High: inf, LowOpen: true, LowOf: -1, HighOf: -1},
		"at most 9 in":                 {Low: -inf, High: 9, LowOf: -1, HighOf: -1},
		"below 9 in":                   {Low: -inf, High: 9, HighOpen: true, LowOf: -1, HighOf: -1},
		"from 2 in to 9 in":            {Low: 2, High: 9, LowOf: -1, HighOf: -1},
		"above 2 in and at most 9 in":  {Low: 2, High: 9, LowOpen: true, LowOf: -1, HighOf: -1},
		"at least 2 in and below 9 in": {Low: 2, High: 9, HighOpen: true, LowOf: -1, HighOf: -1},
		"above 2 in and below 9 in":    {Low: 2, High: 9, LowOpen: true, HighOpen: true, LowOf: -1, HighOf: -1},
	} {
		f := units.Formula{Name: "f", Source: "S-S", Arguments: []units.Argument{{Name: "a", Unit: "in", Factor: 1, Domain: l}}}
		_, err := units.Answer(&f, 1.0, math.NaN())
		if err == nil || !strings.HasSuffix(err.Error(), "must be "+want) {
			t.Errorf("got %v, want %s", err, want)
		}
	}
}

func TestBoundsAreInsideUnlessOpen(t *testing.T) {
	for _, c := range []struct {
		v                 float64
		lowOpen, highOpen bool
		holds             bool
	}{
		{2, false, false, true}, {9, false, false, true}, {2, true, false, false}, {9, true, false, true},
		{2, false, true, true}, {9, false, true, false}, {5, true, true, true}, {1.999, false, false, false}, {9.001, false, false, false},
	} {
		f := units.Formula{Name: "f", Source: "S-S", Arguments: []units.Argument{{Name: "a", Factor: 1, Domain: units.Limits{Low: 2, High: 9, LowOpen: c.lowOpen, HighOpen: c.highOpen, LowOf: -1, HighOf: -1}}}}
		if _, err := units.Answer(&f, 1.0, c.v); (err == nil) != c.holds {
			t.Errorf("%+v: %v", c, err)
		}
	}
}

// TestAnswerTakesAnyFloats: it does not panic, and what comes without a domain
// error is the value.
func TestAnswerTakesAnyFloats(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		any := func(name string) float64 {
			return rapid.OneOf(rapid.SampledFrom(odd), rapid.Float64Range(-2, 2), rapid.Float64()).Draw(t, name)
		}
		v := any("value")
		got, err := units.Answer(&trial, v, any("area"), any("share"), any("left"))
		if units.Impossible(err) != math.IsNaN(got) || !math.IsNaN(got) && got != v {
			t.Fatalf("%v with %v", got, err)
		}
		if err != nil && strings.ContainsAny(err.Error(), "\n") {
			t.Fatal(err)
		}
	})
}

func TestAnswerTakesNoMemoryWhereAllIsWell(t *testing.T) {
	area, share := 2.0, 0.3
	if n := testing.AllocsPerRun(100, func() { sink, _ = units.Answer(&trial, units.Yield(1), area, share, 0) }); n != 0 {
		t.Errorf("%v allocations", n)
	}
}

// TestGap tells an argument between two parts that a source covers.
func TestGap(t *testing.T) {
	err := trial.Gap(1, 0.28, 0.25, 0.30, "GAP-BOOK")
	want := "forage.Trial: share is 28 %, outside what GAP-BOOK covers (at most 25 % or at least 30 %); the value is still given"
	if err.Error() != want || units.Impossible(err) {
		t.Errorf("got  %v\nwant %s", err, want)
	}
}

var sink units.Yield

func BenchmarkAnswer(b *testing.B) {
	b.ReportAllocs()
	share := 0.3
	for b.Loop() {
		sink, _ = units.Answer(&trial, units.Yield(1), 2, share, 0)
	}
}

func BenchmarkParseArea(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := units.ParseArea("3.5 ac"); err != nil {
			b.Fatal(err)
		}
	}
}
