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

func TestNumberForPeople(t *testing.T) {
	for _, c := range []struct {
		v    float64
		want string
	}{
		{0, "0"}, {math.Copysign(0, -1), "0"}, {1, "1"}, {-1, "-1"},
		{1250, "1,250"}, {1249.6, "1,250"}, {-1250, "-1,250"}, {999, "999"}, {1000, "1,000"}, {43560, "43,560"}, {1234567.8, "1,234,568"}, {999999.5, "1,000,000"},
		{0.143, "0.143"}, {1.0 / 7, "0.143"}, {12.7, "12.7"}, {12.74, "12.7"}, {99.94, "99.9"}, {99.96, "100"}, {9.996, "10"}, {0.9996, "1"},
		{0.13, "0.13"}, {2.5, "2.5"}, {100.4, "100"}, {0.00123456, "0.00123"}, {0.000001, "0.000001"}, {1e-7, "1e-07"}, {-1e-7, "-1e-07"},
		{123456789012345, "123,456,789,012,345"}, {1e15, "1e+15"}, {math.MaxFloat64, "1.8e+308"},
		{math.Inf(1), "+Inf"}, {math.Inf(-1), "-Inf"}, {math.NaN(), "NaN"},
	} {
		if got := units.Number(c.v); got != c.want {
			t.Errorf("Number(%v) is %q, want %q", c.v, got, c.want)
		}
	}
}

func TestNumberKeepsThreeDigits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := rapid.Float64Range(-1e14, 1e14).Draw(t, "v")
		got := units.Number(v)
		back, err := units.ParseFraction(strings.ReplaceAll(got, ",", "") + " share")
		if err != nil || math.Abs(float64(back)-v) > 0.00501*math.Abs(v) {
			t.Fatalf("Number(%v) is %q", v, got)
		}
	})
}

func TestInForPeople(t *testing.T) {
	for _, c := range []struct{ got, want string }{
		{(1250 * units.PoundPerAcre).In(units.US), "1,250 lb/ac"},
		{(1250 * units.PoundPerAcre).In(units.Metric), "1,401 kg/ha"}, // × 1.12085
		{(8 * units.HeightInch).In(units.US), "8 in"},
		{(8 * units.HeightInch).In(units.Metric), "20.3 cm"}, // 20.32
		{(3.5 * units.Acre).In(units.US), "3.5 ac"},
		{(3.5 * units.Acre).In(units.Metric), "1.42 ha"}, // 1.4164
		{(28 * units.Percent).In(units.US), "28 %"},
		{(28 * units.Percent).In(units.Metric), "28 %"},
		{(4.5 * units.Day).In(units.US), "4.5 days"},
		{units.Celsius(20).In(units.US), "68 °F"},
		{units.Celsius(20).In(units.Metric), "20 °C"},
		{(18 * units.FahrenheitDegree).In(units.Metric), "10 °C"},
		{(18 * units.FahrenheitDegree).In(units.US), "18 °F"},
		{(45 * units.Foot).In(units.US), "45 ft"},
		{(45 * units.Foot).In(units.System(7)), "13.7 m"}, // an unknown system counts as metric
		{(60 * units.AnimalUnitDay).In(units.US), "2 AUM"},
		{(60 * units.AnimalUnitDay).In(units.Metric), "60 AUD"},
		{units.Length(math.NaN()).In(units.US), "NaN ft"},
		{units.Length(math.Inf(-1)).In(units.US), "-Inf ft"},
	} {
		if c.got != c.want {
			t.Errorf("got %q, want %q", c.got, c.want)
		}
	}
}

func TestWhatParsingTakes(t *testing.T) {
	for text, want := range map[string]units.Area{
		"3.5 ac": 3.5 * units.Acre, "3.5ac": 3.5 * units.Acre, " 3.5\tac\n": 3.5 * units.Acre, "3.5\u00a0ac": 3.5 * units.Acre,
		".5 ha": 0.5 * units.Hectare, "5. ha": 5 * units.Hectare, "-2 ha": -2 * units.Hectare, "+2 ha": 2 * units.Hectare,
		"1e2 ha": 100 * units.Hectare, "1E+2 ha": 100 * units.Hectare, "1e-2ha": 0.01 * units.Hectare, "0007 m²": 7 * units.SquareMetre,
	} {
		if got, err := units.ParseArea(text); err != nil || got != want {
			t.Errorf("%q is %v (%v), want %v", text, got, err, want)
		}
	}
}

func TestWhatParsingRefuses(t *testing.T) {
	area := "; area takes a number and one of: m2, ha, ft2, yd2, ac"
	for text, want := range map[string]string{
		"":            `"": no number in front` + area,
		" ":           `" ": no number in front` + area,
		"ac":          `"ac": no number in front` + area,
		"many ac":     `"many ac": no number in front` + area,
		"3.5":         `"3.5": the unit is missing` + area,
		"0":           `"0": the unit is missing` + area,
		"NaN":         `"NaN": the unit is missing` + area,
		"1,250 ac":    `"1,250 ac": write the number without commas, with a decimal point` + area,
		"3,5 ac":      `"3,5 ac": write the number without commas, with a decimal point` + area,
		"1 250 ac":    `"1 250 ac": the number is not one number` + area,
		"1.2.3 ac":    `"1.2.3 ac": the number is not one number` + area,
		"3.5 kg":      `"3.5 kg": no unit "kg"` + area,
		"3.5 AC":      `"3.5 AC": no unit "AC"` + area,
		"3.5 ac.":     `"3.5 ac.": no unit "ac."` + area,
		"3.5 m":       `"3.5 m": no unit "m"` + area,
		"1e999 ac":    `"1e999 ac": the number is too large` + area,
		"1e308 ac":    `"1e308 ac": the number is too large` + area, // it is 4e311 m²
		"--1 ac":      `"--1 ac": no number in front` + area,
		". ac":        `". ac": no number in front` + area,
		"0x10 ac":     `"0x10 ac": no unit "x10 ac"` + area,
		"infinity ac": `"infinity ac": no number in front` + area,
		"1_000 ac":    `"1_000 ac": no unit "_000 ac"` + area,
		"½ ac":        `"½ ac": no number in front` + area,
	} {
		got, err := units.ParseArea(text)
		var parse *units.ParseError
		if !errors.As(err, &parse) || err.Error() != want || !math.IsNaN(float64(got)) {
			t.Errorf("got  %v, %v\nwant %s", got, err, want)
		}
	}
}

// TestTonIsRefusedWithAHint: a ton may be 907, 1,000 or 1,016 kg.
func TestTonIsRefusedWithAHint(t *testing.T) {
	for _, text := range []string{"3 ton", "3 tons", "3 ton/ac"} {
		var errs []error
		_, err := units.ParseMass(text)
		errs = append(errs, err)
		_, err = units.ParseDryMatter(text)
		errs = append(errs, err)
		_, err = units.ParseYield(text)
		errs = append(errs, err)
		for _, err := range errs {
			if err == nil || !strings.Contains(err.Error(), `may be the tonne or the short ton: write "t" or "short ton"`) {
				t.Errorf("%q: %v", text, err)
			}
		}
	}
	if got, err := units.ParseMass("3 tonnes"); err != nil || got != 3*units.Tonne {
		t.Errorf("3 tonnes: %v, %v", got, err)
	}
	if got, err := units.ParseMass("3 short tons"); err != nil || got != 3*units.ShortTon {
		t.Errorf("3 short tons: %v, %v", got, err)
	}
}

// TestUnmarshalLeavesTheValueOnError for quantities, temperatures, dates,
// money, prices, ends and systems alike.
func TestUnmarshalLeavesTheValueOnError(t *testing.T) {
	for _, q := range quantities() {
		full := with(q, 7)
		if err := full.UnmarshalText([]byte("rubbish")); err == nil || value(full) != 7 {
			t.Errorf("%s: %v, %v", name(q), err, full)
		}
	}
	warm, end, system := units.Celsius(7), units.Middle, units.US
	date, money, price := units.Date(7), units.Money{Currency: "USD"}, units.FeedPrice{Per: 7}
	if warm.UnmarshalText([]byte("rubbish")) == nil || warm != 7 {
		t.Error("a temperature was lost")
	}
	if end.UnmarshalText([]byte("rubbish")) == nil || end != units.Middle {
		t.Error("an end was lost")
	}
	if system.UnmarshalText([]byte("rubbish")) == nil || system != units.US {
		t.Error("a system was lost")
	}
	if date.UnmarshalText([]byte("rubbish")) == nil || date != 7 {
		t.Error("a date was lost")
	}
	if money.UnmarshalText([]byte("rubbish")) == nil || money.Currency != "USD" {
		t.Error("money was lost")
	}
	if price.UnmarshalText([]byte("rubbish")) == nil || price.Per != 7 {
		t.Error("a price was lost")
	}
}

func TestSystems(t *testing.T) {
	for _, s := range []units.System{units.Metric, units.US} {
		text, err := s.MarshalText()
		if err != nil {
			t.Fatal(err)
		}
		back := units.System(9)
		if err := back.UnmarshalText(text); err != nil || back != s {
			t.Errorf("%q is read as %v (%v)", text, back, err)
		}
	}
	for _, s := range []units.System{-1, 2, 9} {
		want := fmt.Sprintf(`"%d": no such system; system takes one of: metric, US`, int(s))
		if text, err := s.MarshalText(); err == nil || err.Error() != want || text != nil || s.String() != "unknown system" {
			t.Errorf("%d is written as %v, %s, %v", int(s), s, text, err)
		}
	}
	var s units.System
	if err := s.UnmarshalText([]byte("imperial")); err == nil || err.Error() != `"imperial": no such system; system takes one of: metric, US` {
		t.Error(err)
	}
}
