package units_test

import (
	"math"
	"testing"

	"example.org/soum/units"
)

var texts = []string{
	"", "3.5 ac", "250 lb/ac/in", "28 %", "1,250 lb", "-0 m", "NaN kg", "-Inf °F", "1e400 m", "0x1p-2 m", "1e m", "3 ton", "12.50 USD", "180 USD/t", "2000-04-15",
	"+12345-01-01", "-0001-02-29", "1e-324 kg", "\xff\xfe", "5\u00a0m²", "1e999999999 USD", "--", "1 USD/", "9999999999-99-99",
}

// FuzzParseQuantity reads any text as every quantity: no panic, and what is
// read prints as text that reads as the same value.
func FuzzParseQuantity(f *testing.F) {
	for _, text := range texts {
		f.Add(text)
	}
	all := quantities()
	f.Fuzz(func(t *testing.T, text string) {
		for _, q := range all {
			got := with(q, 0)
			if err := got.UnmarshalText([]byte(text)); err != nil {
				if err.Error() == "" || value(got) != 0 {
					t.Fatalf("%s: %q: %v %v", name(q), text, got, err)
				}
				continue
			}
			if err := readsBack(q, value(got)); err != nil {
				t.Fatal(err)
			}
		}
	})
}

// FuzzParseTemperature is FuzzParseQuantity for temperatures.
func FuzzParseTemperature(f *testing.F) {
	for _, text := range texts {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		if got, err := units.ParseTemperature(text); err == nil {
			if err := temperatureReadsBack(float64(got)); err != nil {
				t.Fatal(err)
			}
		}
	})
}

// FuzzStringOfAnyFloat prints any bits as every quantity.
func FuzzStringOfAnyFloat(f *testing.F) {
	for _, v := range odd {
		f.Add(math.Float64bits(v))
	}
	all := quantities()
	f.Fuzz(func(t *testing.T, bits uint64) {
		v := math.Float64frombits(bits)
		for _, q := range all {
			if err := readsBack(q, v); err != nil {
				t.Fatal(err)
			}
		}
		if units.Number(v) == "" {
			t.Fatalf("%v has no text", v)
		}
	})
}

// FuzzParseMoney reads any text as money and as a price.
func FuzzParseMoney(f *testing.F) {
	for _, text := range texts {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		if got, err := units.ParseMoney(text); err == nil {
			back, err := units.ParseMoney(got.String())
			if err != nil || !back.Amount.Equal(got.Amount) || back.Currency != got.Currency {
				t.Fatalf("%q is read as %v, printed and read as %v (%v)", text, got, back, err)
			}
			if sum, err := got.Add(back); err != nil || sum.Currency != got.Currency {
				t.Fatal(sum, err)
			}
		}
		if got, err := units.ParseFeedPrice(text); err == nil {
			back, err := units.ParseFeedPrice(got.String())
			if err != nil || back.String() != got.String() || back.Per != got.Per {
				t.Fatalf("%q is read as %v, printed and read as %v (%v)", text, got, back, err)
			}
			_ = got.Of(units.FreshFeed(3), 2)
		}
	})
}

// FuzzParseDate reads any text as a date.
func FuzzParseDate(f *testing.F) {
	for _, text := range texts {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		got, err := units.ParseDate(text)
		if err != nil {
			return
		}
		back, err := units.ParseDate(got.String())
		if err != nil || back != got {
			t.Fatalf("%q is read as %v, printed and read as %v (%v)", text, got, back, err)
		}
	})
}
