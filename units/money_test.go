package units_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"

	"example.org/soum/units"
)

func money(t interface{ Fatal(...any) }, text string) units.Money {
	m, err := units.ParseMoney(text)
	if err != nil {
		t.Fatal(err)
	}
	return m
}

func TestMoneyText(t *testing.T) {
	for text, want := range map[string]string{
		"12.50 USD": "12.50 USD", "12.50USD": "12.50 USD", " 0 EUR ": "0 EUR", "-3 EUR": "-3 EUR", "+3 EUR": "3 EUR",
		"1e2 USD": "100 USD", "0.10 USD": "0.10 USD", ".5 GBP": "0.5 GBP", "1e-30 USD": "0." + strings.Repeat("0", 29) + "1 USD",
	} {
		if got := money(t, text).String(); got != want {
			t.Errorf("%q is printed %q, want %q", text, got, want)
		}
	}
	takes := "; money takes a number and one of: a currency of three capital letters such as USD or EUR"
	for text, problem := range map[string]string{
		"": "no number in front", "USD": "no number in front", "12.50": "the currency is missing", "0": "the currency is missing",
		"12.50 usd": `no currency "usd"`, "12.50 $": `no currency "$"`, "12.50 US": `no currency "US"`, "12.50 USDX": `no currency "USDX"`, "1,250 USD": `no currency ",250 USD"`,
		"12.50 USD/t": `no currency "USD/t"`, "NaN USD": "the number is no amount of money", "Inf USD": "the number is no amount of money",
		"1e999999999 USD": "the number is no amount of money", "1e-999999999 USD": "the number is no amount of money", "1e30 USD": "the number has too many digits",
		strings.Repeat("9", 31) + " USD": "the number has too many digits", strings.Repeat("9", 99999) + " USD": "the number has too many digits",
		"1e99999999999999999999 USD": "the number is no amount of money", "1e31 USD": "the number has too many digits", "1e-31 USD": "the number has too many digits",
	} {
		if _, err := units.ParseMoney(text); err == nil || !strings.HasSuffix(err.Error(), problem+takes) {
			t.Errorf("got  %v\nwant %s", err, problem+takes)
		}
	}
}

// TestMoneyIsExact: ten times 0.10 are 1.00, which floats miss.
func TestMoneyIsExact(t *testing.T) {
	var sum units.Money
	for range 10 {
		var err error
		if sum, err = sum.Add(money(t, "0.10 USD")); err != nil {
			t.Fatal(err)
		}
	}
	if sum.String() != "1.00 USD" || !sum.Amount.Equal(decimal.NewFromInt(1)) {
		t.Error(sum)
	}
}

func TestTwoCurrenciesDoNotAdd(t *testing.T) {
	if _, err := money(t, "1 USD").Add(money(t, "1 EUR")); err == nil ||
		err.Error() != `units.Money.Add: other is "1 EUR": 1 USD and 1 EUR are two currencies, change one into the other first; it takes one of: USD` {
		t.Error(err)
	}
	foreign := units.Money{Amount: decimal.NewFromInt(1), Currency: "a\nb"}
	if _, err := money(t, "1 USD").Add(foreign); err == nil || // what a user gave does not break the line
		err.Error() != `units.Money.Add: other is "1 a\nb": 1 USD and 1 a b are two currencies, change one into the other first; it takes one of: USD` {
		t.Error(err)
	}
	// Nothing of no currency adds to any; nothing of a currency is of that one.
	if got, err := (units.Money{}).Add(money(t, "1 EUR")); err != nil || got.String() != "1 EUR" {
		t.Error(got, err)
	}
	if got, err := money(t, "1 EUR").Add(units.Money{}); err != nil || got.String() != "1 EUR" {
		t.Error(got, err)
	}
	if _, err := money(t, "0 USD").Add(money(t, "1 EUR")); err == nil {
		t.Error("0 USD and 1 EUR were added")
	}
	if _, err := (units.Money{Amount: decimal.NewFromInt(1)}).Add(money(t, "1 EUR")); err == nil {
		t.Error("1 of no currency was added")
	}
	if got := (units.Money{}).String(); got != "0" {
		t.Errorf("nothing is printed %q", got)
	}
}

func TestMoneyDivideTimesRound(t *testing.T) {
	three := decimal.NewFromInt(3)
	for places, want := range map[int32]string{0: "3 USD", 2: "3.33 USD", 4: "3.3333 USD"} {
		if got, err := money(t, "10 USD").Divide(three, places); err != nil || got.String() != want {
			t.Errorf("10 USD in three to %d places are %v (%v), want %s", places, got, err, want)
		}
	}
	if _, err := money(t, "10 USD").Divide(decimal.Zero, 2); err == nil || err.Error() != "units.Money.Divide: by is 0, must be other than 0" || !units.Impossible(err) {
		t.Error(err)
	}
	for _, places := range []int32{-31, 31, math.MaxInt32, math.MinInt32} { // more digits than memory holds
		got, err := money(t, "10 USD").Divide(three, places)
		if want := fmt.Sprintf("units.Money.Divide: places is %.6g, must be from -30 to 30", float64(places)); err == nil || err.Error() != want || got != (units.Money{}) {
			t.Errorf("got  %v, %v\nwant %s", got, err, want)
		}
	}
	for _, c := range []struct{ got, want string }{
		{money(t, "12.345 USD").Round(2).String(), "12.35 USD"}, // half away from 0
		{money(t, "-12.345 USD").Round(2).String(), "-12.35 USD"},
		{money(t, "12.50 USD").Times(three).String(), "37.50 USD"},
	} {
		if c.got != c.want {
			t.Errorf("got %s, want %s", c.got, c.want)
		}
	}
}

func TestMoneyReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		amount := decimal.New(rapid.Int64().Draw(t, "digits"), rapid.Int32Range(-11, 11).Draw(t, "places"))
		m := units.Money{Amount: amount, Currency: rapid.StringMatching(`[A-Z]{3}`).Draw(t, "currency")}
		back := money(t, m.String())
		if !back.Amount.Equal(m.Amount) || back.Currency != m.Currency || back.String() != m.String() {
			t.Fatalf("%v is read as %v", m, back)
		}
	})
}

func TestFeedPrice(t *testing.T) {
	for _, c := range []struct{ price, feed, want string }{
		{"180 USD/t", "500 kg", "90.00 USD"},              // 180 × 0.5
		{"0.09 USD/lb", "1 short ton", "180.00 USD"},      // 0.09 × 2,000
		{"45 EUR/short ton", "1000 lb", "22.50 EUR"},      // 45 ÷ 2
		{"180 USD / t", "1 lb", "0.08 USD"},               // 0.18 × 0.45359237 = 0.0816
		{"-5 USD/t", "1 t", "-5.00 USD"},                  // paid to take it
		{"1 USD/kg", "-1 kg", "-1.00 USD"},                // given back
		{"1 USD/kg", "NaN kg", "0"},                       // no mass, no price
		{"1 USD/kg", "Inf kg", "0"},                       // nor without bound
		{"1 USD/kg", "0.0050000000000000 kg", "0.01 USD"}, // half a cent goes up
	} {
		price, err := units.ParseFeedPrice(c.price)
		if err != nil {
			t.Fatal(err)
		}
		feed, err := units.ParseFreshFeed(c.feed)
		if err != nil {
			t.Fatal(err)
		}
		got := price.Of(feed, 2)
		if text := got.Amount.StringFixed(2) + " " + got.Currency; text != c.want && got.String() != c.want {
			t.Errorf("%s at %s cost %v, want %s", c.feed, c.price, got, c.want)
		}
		var back units.FeedPrice
		text, err := price.MarshalText()
		if err != nil {
			t.Fatal(err)
		}
		if err := back.UnmarshalText(text); err != nil || back.String() != price.String() || back.Per != price.Per {
			t.Errorf("%s is read as %v (%v)", text, back, err)
		}
	}
	price := units.FeedPrice{Money: money(t, "180 USD")}
	for _, c := range []struct{ per, feed units.FreshFeed }{{0, 5}, {0, 0}, {units.FreshFeed(math.NaN()), 5}, {1e-300, 1e300}, {units.FreshFeed(math.Inf(1)), units.FreshFeed(math.Inf(1))}} {
		price.Per = c.per
		if got := price.Of(c.feed, 2); got != (units.Money{}) {
			t.Errorf("%v at a price for %v costs %v", c.feed, c.per, got)
		}
	}
	takes := "; feed price takes a number and one of: a currency and a mass: USD/t, USD/kg, USD/lb, USD/short ton, with any currency"
	for text, problem := range map[string]string{
		"180 USD": "no mass that the price is for", "": "no mass that the price is for", "180/t": "the currency is missing", "USD/t": "no number in front",
		"180 USD/": "the unit is missing", "180 USD/ton": `"ton" may be the tonne or the short ton: write "t" or "short ton"`, "180 USD/5 kg": "the number is not one number",
		"180 USD/acre": `no unit "acre"`, "180 USD/t/t": `no unit "t/t"`, "180 usd/t": `no currency "usd"`,
	} {
		want := `"` + text + `": ` + problem + takes
		if _, err := units.ParseFeedPrice(text); err == nil || err.Error() != want {
			t.Errorf("got  %v\nwant %s", err, want)
		}
	}
}
