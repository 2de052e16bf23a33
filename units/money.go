package units

import (
	"errors"
	"fmt"
	"math"
	"strings"

	"github.com/shopspring/decimal"
)

// Money is an amount in a currency. The zero value is nothing of no currency
// and adds to any.
type Money struct {
	Amount   decimal.Decimal // exact, in the currency's main unit
	Currency string          // three capital letters, as in ISO 4217
}

// largestExponent keeps a hostile text such as "1e999999999 USD" from filling
// memory when it is added or printed.
const largestExponent = 30

// ParseMoney reads an amount such as "12.50 USD".
func ParseMoney(text string) (Money, error) {
	wrong := func(problem string) (Money, error) {
		return Money{}, &ParseError{Quantity: "Money", Text: text, Problem: problem, Accepts: []string{"a currency of three capital letters such as USD or EUR"}}
	}
	trimmed := strings.TrimSpace(text)
	end := numberEnd(trimmed)
	switch {
	case end == 0:
		return wrong("no number in front")
	case end > 4*largestExponent:
		return wrong("the number has too many digits")
	}
	amount, err := decimal.NewFromString(trimmed[:end])
	if err != nil { // NaN, Inf, or a power of ten beyond all money
		return wrong("the number is no amount of money")
	}
	if places := int(amount.Exponent()); places < -largestExponent || amount.NumDigits()+max(0, places) > largestExponent {
		return wrong("the number has too many digits")
	}
	currency := strings.TrimSpace(trimmed[end:])
	switch {
	case currency == "":
		return wrong("the currency is missing")
	case len(currency) != 3 || strings.Trim(currency, "ABCDEFGHIJKLMNOPQRSTUVWXYZ") != "":
		return wrong("no currency " + fmt.Sprintf("%q", currency))
	}
	return Money{Amount: amount, Currency: currency}, nil
}

// String prints the amount and its currency. ParseMoney reads it back where
// there is a currency.
func (m Money) String() string {
	places := max(0, -m.Amount.Exponent())
	return strings.TrimSpace(m.Amount.StringFixed(places) + " " + m.Currency)
}

// MarshalText prints the money as String does: money is text both ways.
func (m Money) MarshalText() ([]byte, error) { return []byte(m.String()), nil }

// UnmarshalText reads money as ParseMoney does.
func (m *Money) UnmarshalText(text []byte) error {
	money, err := ParseMoney(string(text))
	if err == nil {
		*m = money
	}
	return err
}

// Add returns the sum of two amounts of one currency; the error of another currency is
// a *ParseError.
func (m Money) Add(other Money) (Money, error) {
	switch {
	case m.Currency == "" && m.Amount.IsZero():
		return other, nil
	case other.Currency == "" && other.Amount.IsZero():
		return m, nil
	case m.Currency != other.Currency:
		return Money{}, &ParseError{
			Quantity: "Money", Text: other.String(), Problem: m.String() + " and " + other.String() + " are two currencies, change one into the other first",
			Accepts: []string{m.Currency}, Word: true, Function: "units.Money.Add", Argument: "other", Index: 1,
		}
	}
	return Money{Amount: m.Amount.Add(other.Amount), Currency: m.Currency}, nil
}

// Times gives the amount multiplied by a number.
func (m Money) Times(factor decimal.Decimal) Money {
	return Money{Amount: m.Amount.Mul(factor), Currency: m.Currency}
}

// Divide returns the amount divided by a number, rounded half away from zero to so many
// decimal places, from -30 to 30. The error of other places, and of dividing by 0, is a
// *DomainError.
func (m Money) Divide(by decimal.Decimal, places int32) (Money, error) {
	wrong := DomainError{Function: "units.Money.Divide", Low: math.Inf(-1), High: math.Inf(1)}
	switch {
	case by.IsZero():
		wrong.Argument, wrong.Index, wrong.wanted = "by", 1, "other than 0"
		return Money{}, &wrong
	case places < -largestExponent || places > largestExponent:
		wrong.Argument, wrong.Index, wrong.Value = "places", 2, float64(places)
		wrong.Low, wrong.High, wrong.wanted = -largestExponent, largestExponent, fmt.Sprintf("from %d to %d", -largestExponent, largestExponent)
		return Money{}, &wrong
	}
	return Money{Amount: m.Amount.DivRound(by, places), Currency: m.Currency}, nil
}

// Round gives the amount rounded half away from zero to so many decimal places.
func (m Money) Round(places int32) Money {
	return Money{Amount: m.Amount.Round(places), Currency: m.Currency}
}

// FeedPrice is money for a mass of feed as it lies, such as "180 USD/t".
type FeedPrice struct {
	Money Money     // what it costs
	Per   FreshFeed // the mass that costs so much
	unit  string    // the mass's unit as it was written
}

// ParseFeedPrice reads a price such as "180 USD/t" or "0.09 USD/lb".
func ParseFeedPrice(text string) (FeedPrice, error) {
	wrong := func(problem string) (FeedPrice, error) {
		return FeedPrice{}, &ParseError{Quantity: "FeedPrice", Text: text, Problem: problem, Accepts: []string{"a currency and a mass: USD/t, USD/kg, USD/lb, USD/short ton, with any currency"}}
	}
	money, per, found := strings.Cut(text, "/")
	if !found {
		return wrong("no mass that the price is for")
	}
	var parse *ParseError
	amount, err := ParseMoney(money)
	if errors.As(err, &parse) {
		return wrong(parse.Problem)
	}
	mass, err := ParseFreshFeed("1 " + per)
	if errors.As(err, &parse) {
		return wrong(parse.Problem)
	}
	return FeedPrice{Money: amount, Per: mass, unit: strings.TrimSpace(per)}, nil
}

// String prints the price. ParseFeedPrice reads it back.
func (p FeedPrice) String() string { return p.Money.String() + "/" + p.unit }

// MarshalText prints the price as String does.
func (p FeedPrice) MarshalText() ([]byte, error) { return []byte(p.String()), nil }

// UnmarshalText reads a price as ParseFeedPrice does.
func (p *FeedPrice) UnmarshalText(text []byte) error {
	price, err := ParseFeedPrice(string(text))
	if err == nil {
		*p = price
	}
	return err
}

// Of returns what so much feed costs, to so many decimal places. Without a price it is
// nothing, and so it is for a mass of feed that is not a number.
func (p FeedPrice) Of(feed FreshFeed, places int32) Money {
	times := float64(feed / p.Per)
	if times-times != 0 {
		return Money{}
	}
	return p.Money.Times(decimal.NewFromFloat(times)).Round(places)
}
