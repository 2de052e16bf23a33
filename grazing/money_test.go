package grazing_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/grazing"
	"example.org/soum/units"
)

// money reads an amount.
func money(t require.TestingT, text string) units.Money {
	m, err := units.ParseMoney(text)
	require.NoError(t, err)
	return m
}

func price(t require.TestingT, text string) units.FeedPrice {
	p, err := units.ParseFeedPrice(text)
	require.NoError(t, err)
	return p
}

// TestFenceCost: to the cent, in another currency, and what is refused; print is in
// the tables.
func TestFenceCost(t *testing.T) {
	for _, c := range []struct {
		fence        units.Length
		price, costs string
		per          units.Length
	}{
		{units.Mile, "0.18 USD", "950.40 USD", units.Foot},
		{100 * units.Metre, "2.77 EUR", "277.00 EUR", units.Metre},
	} {
		got, err := grazing.FenceCost(c.fence, money(t, c.price), c.per)
		require.NoError(t, err)
		assert.Equal(t, c.costs, got.String())
	}
	for _, bad := range [][2]units.Length{{-1, 1}, {1, 0}, {units.Length(math.NaN()), 1}, {1, units.Length(math.Inf(1))}} {
		_, err := grazing.FenceCost(bad[0], money(t, "1 USD"), bad[1])
		assert.True(t, units.Impossible(err), bad)
	}
	_, err := grazing.FenceCost(1, money(t, "1 USD"), 0)
	assert.ErrorContains(t, err, "grazing.FenceCost")
}

// TestCostOfYear: to the cent and what is refused; print is in the tables.
func TestCostOfYear(t *testing.T) {
	// 1,000 over 8 years, 6 % of half, 2.5 %: 125 + 30 + 25
	got, err := grazing.CostOfYear(money(t, "1000 EUR"), 8, 6*units.Percent, 2.5*units.Percent)
	require.NoError(t, err)
	assert.Equal(t, "125.00 EUR", got.Depreciation.String())
	assert.Equal(t, "30.00", got.Interest.Amount.StringFixed(2))
	assert.Equal(t, "180.00", got.Total.Amount.StringFixed(2))
	for _, years := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		_, err := grazing.CostOfYear(money(t, "1 USD"), years, 0, 0)
		assert.True(t, units.Impossible(err), years)
	}
	_, err = grazing.CostOfYear(money(t, "1 USD"), 1, -0.01, 0)
	assert.True(t, units.Impossible(err))
	_, err = grazing.CostOfYear(money(t, "1 USD"), 1, 0, units.Fraction(math.NaN()))
	assert.True(t, units.Impossible(err))
}

// TestFenceLives is a second reading of what print gives (A).
func TestFenceLives(t *testing.T) {
	type life struct {
		years, upkeep float64
	}
	want := map[string]life{
		"woven": {20, 8}, "barbed": {20, 8}, "high-tensile-8-wire": {25, 5}, "high-tensile-electric-5-wire": {25, 5},
		"temporary-divider": {4, 0}, "pipe-and-tank": {10, 0},
	}
	for _, row := range grazing.FenceLives() {
		got := life{row.Years, math.Round(float64(row.Maintenance/units.Percent)*1e6) / 1e6}
		assert.Equal(t, want[row.Kind], got, row.Kind)
		rowIs(t, row.Kind, row.Source, row.Mark)
		delete(want, row.Kind)
	}
	assert.Empty(t, want)
	grazing.FenceLives()[0].Kind = "changed"
	assert.NotEqual(t, "changed", grazing.FenceLives()[0].Kind)
}

// TestCostPerUse: 44 USD an acre over 160 acres that give 40 AUM is 176 an AUM.
func TestCostPerUse(t *testing.T) {
	got, err := grazing.CostPerUse(money(t, "7040 USD"), 40*units.AnimalUnitMonth)
	require.NoError(t, err)
	assert.Equal(t, "176.00 USD", got.String())
	for _, use := range []units.UnitDays{0, -1, units.UnitDays(math.NaN())} {
		_, err = grazing.CostPerUse(money(t, "1 USD"), use)
		assert.True(t, units.Impossible(err), use)
	}
}

// TestRent: the rules by hand. 61.95 an acre on 4 acres a head is 247.80; over 1.3
// AU for 5 months 247.80 ÷ 6.5 = 38.12. 1.2 AU at 100 a ton: × 0.20 = 24.00, ÷ 8.5
// × 1.2 = 14.12. 3,000 an acre: 45 to 60. 3 short tons at 100 × 25 % = 75.
func TestRent(t *testing.T) {
	head, err := grazing.RentPerHead(money(t, "61.95 USD"), units.Acre, 4*units.Acre)
	require.NoError(t, err)
	assert.Equal(t, "247.80 USD", head.String())
	use, err := grazing.RentPerUse(head, 1.3*units.AnimalUnit, 150*units.Day)
	require.NoError(t, err)
	assert.Equal(t, "38.12 USD", use.String())

	for rule, want := range map[grazing.RentRule]string{grazing.RentByQuality: "24.00 USD", grazing.RentByEighth: "14.12 USD"} {
		got, err := grazing.RentByHay(1.2*units.AnimalUnit, price(t, "100 USD/short ton"), rule)
		require.NoError(t, err)
		assert.Equal(t, want, got.String())
		same, err := grazing.RentByHay(1.2*units.AnimalUnit, price(t, "0.05 USD/lb"), rule)
		require.NoError(t, err)
		assert.Equal(t, want, same.String())
	}
	for _, end := range []units.End{-1, 0, 4} {
		rent, err := grazing.RentByValue(money(t, "3000 USD"), end)
		assert.ErrorContains(t, err, "grazing.RentByValue: end is ")
		assert.Zero(t, rent)
	}
	for end, want := range map[units.End]string{units.Low: "45.00 USD", units.Middle: "52.50 USD", units.High: "60.00 USD"} {
		got, err := grazing.RentByValue(money(t, "3000 USD"), end)
		require.NoError(t, err)
		assert.Equal(t, want, got.Amount.StringFixed(2)+" USD")
	}
	forage, err := grazing.RentByForage(3*units.FreshShortTon, price(t, "100 USD/short ton"))
	require.NoError(t, err)
	assert.Equal(t, "75.00", forage.Amount.StringFixed(2))

	_, err = grazing.RentByHay(1, price(t, "100 USD/t"), 7)
	assert.ErrorContains(t, err, "quality")
	_, err = grazing.RentByHay(1, units.FeedPrice{}, grazing.RentByQuality)
	assert.EqualError(t, err, "grazing.RentByHay: hay is 0 kg, must be above 0 kg")
	got, err := grazing.RentByForage(1, units.FeedPrice{Money: money(t, "1 USD"), Per: -1})
	assert.EqualError(t, err, "grazing.RentByForage: hay is -1 kg, must be above 0 kg")
	assert.Zero(t, got)
	_, err = grazing.RentByHay(-1, price(t, "100 USD/t"), grazing.RentByQuality)
	assert.True(t, units.Impossible(err))
	_, err = grazing.RentPerHead(money(t, "1 USD"), 0, 1)
	assert.True(t, units.Impossible(err))
	_, err = grazing.RentPerHead(money(t, "1 USD"), 1, -1)
	assert.True(t, units.Impossible(err))
	_, err = grazing.RentPerUse(money(t, "1 USD"), 0, 1)
	assert.True(t, units.Impossible(err))
	_, err = grazing.RentPerUse(money(t, "1 USD"), 1, 0)
	assert.True(t, units.Impossible(err))
	_, err = grazing.RentByForage(-1, price(t, "100 USD/t"))
	assert.True(t, units.Impossible(err))
}

// TestHayPerUse: 26 lb a day and 20 % wasted at 100 a short ton: 26 × 30 ÷ 0.8 ×
// 0.05 = 48.75. Alabama's cow (B): 3.75 bales of 1,200 lb for 245 USD in 150 days,
// 1.63 a day: 25 lb × 1.2 at 245 ÷ 4,500 lb.
func TestHayPerUse(t *testing.T) {
	got, err := grazing.HayPerUse(price(t, "100 USD/short ton"), 26*units.FreshPound, 20*units.Percent)
	require.NoError(t, err)
	assert.Equal(t, "48.75 USD", got.String())
	month, err := grazing.HayPerUse(units.FeedPrice{Money: money(t, "245 USD"), Per: 4500 * units.FreshPound}, 25*1.2*units.FreshPound, 0)
	require.NoError(t, err)
	assert.InDelta(t, 1.63, month.Amount.InexactFloat64()/30, 0.005)
	for _, bad := range []units.Fraction{-0.1, 1, units.Fraction(math.NaN())} {
		_, err = grazing.HayPerUse(price(t, "100 USD/t"), 1, bad)
		assert.True(t, units.Impossible(err), bad)
	}
	_, err = grazing.HayPerUse(price(t, "100 USD/t"), -1, 0)
	assert.True(t, units.Impossible(err))
	_, err = grazing.HayPerUse(units.FeedPrice{}, 1, 0)
	assert.EqualError(t, err, "grazing.HayPerUse: hay is 0 kg, must be above 0 kg")
}

func TestPaybackYears(t *testing.T) {
	years, err := grazing.PaybackYears(money(t, "950 USD"), money(t, "380 USD"))
	require.NoError(t, err)
	assert.InDelta(t, 2.5, years, 1e-12)
	years, err = grazing.PaybackYears(money(t, "950 USD"), money(t, "380 EUR"))
	assert.True(t, math.IsNaN(years))
	assert.EqualError(t, err, `grazing.PaybackYears: gain is "380 EUR": 950 USD and 380 EUR are two currencies, change one into the other first; it takes one of: USD`)
	var word *units.ParseError
	assert.ErrorAs(t, err, &word)
	for _, gain := range []string{"0 USD", "-1 USD"} {
		years, err = grazing.PaybackYears(money(t, "950 USD"), money(t, gain))
		assert.True(t, math.IsNaN(years))
		assert.ErrorContains(t, err, "grazing.PaybackYears: gain is "+gain+", must be above 0 USD")
		var domain *units.DomainError
		assert.ErrorAs(t, err, &domain)
	}
}

// TestNoPriceOverflows: where numbers together are beyond all floats there is an error
// and no money, and nothing panics.
func TestNoPriceOverflows(t *testing.T) {
	usd, hay := money(t, "1 USD"), price(t, "1 USD/kg")
	const huge, tiny = 1e300, 1e-300
	for name, ask := range map[string]func() (any, error){
		"FenceCost":    func() (any, error) { return grazing.FenceCost(huge, usd, tiny) },
		"CostPerUse":   func() (any, error) { return grazing.CostPerUse(usd, 5e-324) },
		"RentPerHead":  func() (any, error) { return grazing.RentPerHead(usd, tiny, huge) },
		"RentPerUse":   func() (any, error) { return grazing.RentPerUse(usd, tiny, tiny) },
		"RentPerUse 2": func() (any, error) { return grazing.RentPerUse(usd, huge, huge) },
		"RentByHay": func() (any, error) {
			return grazing.RentByHay(1, units.FeedPrice{Money: usd, Per: 5e-324}, grazing.RentByEighth)
		},
		"RentByForage": func() (any, error) { return grazing.RentByForage(huge, units.FeedPrice{Money: usd, Per: tiny}) },
		"HayPerUse":    func() (any, error) { return grazing.HayPerUse(hay, 1.7e308, 0.99) },
		"GainOfDays":   func() (any, error) { return grazing.GainOfDays(huge, huge, usd, 1, 1, usd) },
	} {
		got, err := ask()
		assert.ErrorContains(t, err, "grazing."+strings.TrimSuffix(name, " 2")+": the result overflows", name)
		assert.Zero(t, got, name)
	}
}

// TestGainOfDays: three days, 75 less 15; print is in the tables.
func TestGainOfDays(t *testing.T) {
	three, err := grazing.GainOfDays(50, 3*units.Day, money(t, "0.50 USD"), 2, 0.5*units.Hour, money(t, "15 USD"))
	require.NoError(t, err)
	assert.Equal(t, "60.00", three.Gain.Amount.StringFixed(2))
	none, err := grazing.GainOfDays(50, 1, money(t, "0.50 USD"), 2, 1, money(t, "15 EUR"))
	assert.EqualError(t, err, `grazing.GainOfDays: wage is "15 EUR": 0.50 USD and 15 EUR are two currencies, change one into the other first; it takes one of: USD`)
	assert.Zero(t, none)
	for i := range 4 {
		numbers := [4]float64{1, 1, 1, 1}
		numbers[i] = -1
		_, err = grazing.GainOfDays(numbers[0], units.Days(numbers[1]), money(t, "1 USD"), numbers[2], units.Days(numbers[3]), money(t, "1 USD"))
		assert.True(t, units.Impossible(err), i)
	}
}

// A mile of portable fence at 18 cents a foot?
func ExampleFenceCost() {
	price, _ := units.ParseMoney("0.18 USD")
	cost, _ := grazing.FenceCost(units.Mile, price, units.Foot)
	fmt.Println(cost)
	// Output: 950.40 USD
}

// A fence of 925 USD lasts 25 years. What does it cost in one?
func ExampleCostOfYear() {
	first, _ := units.ParseMoney("925 USD")
	cost, _ := grazing.CostOfYear(first, 25, 8*units.Percent, 5*units.Percent)
	fmt.Println(cost.Total)
	// Output: 120.25 USD
}

// How long do they say that fences last?
func ExampleFenceLives() {
	for _, row := range grazing.FenceLives()[:4] {
		fmt.Println(row.Kind, row.Years, "years")
	}
	// Output:
	// woven 20 years
	// barbed 20 years
	// high-tensile-8-wire 25 years
	// high-tensile-electric-5-wire 25 years
}

// The land costs 7,040 USD a year and gives 40 AUM.
func ExampleCostPerUse() {
	cost, _ := units.ParseMoney("7040 USD")
	each, _ := grazing.CostPerUse(cost, 40*units.AnimalUnitMonth)
	fmt.Println(each, "an AUM")
	// Output: 176.00 USD an AUM
}

// Land at 61.95 USD an acre, four acres a head: what does a cow pay?
func ExampleRentPerHead() {
	rent, _ := units.ParseMoney("61.95 USD")
	head, _ := grazing.RentPerHead(rent, units.Acre, 4*units.Acre)
	fmt.Println(head)
	// Output: 247.80 USD
}

// She is 1.3 animal units and stays for five months.
func ExampleRentPerUse() {
	rent, _ := units.ParseMoney("247.80 USD")
	use, _ := grazing.RentPerUse(rent, 1.3*units.AnimalUnit, 150*units.Day)
	fmt.Println(use, "an AUM")
	// Output: 38.12 USD an AUM
}

// Hay is 100 USD a short ton. What is a pair's month on irrigated pasture worth?
func ExampleRentByHay() {
	hay, _ := units.ParseFeedPrice("100 USD/short ton")
	one, _ := grazing.RentByHay(1.2*units.AnimalUnit, hay, grazing.RentByQuality)
	other, _ := grazing.RentByHay(1.2*units.AnimalUnit, hay, grazing.RentByEighth)
	fmt.Println(one, "by one rule,", other, "by the other")
	// Output: 24.00 USD by one rule, 14.12 USD by the other
}

// Land sells for 3,000 USD an acre. What rent is that?
func ExampleRentByValue() {
	value, _ := units.ParseMoney("3000 USD")
	low, _ := grazing.RentByValue(value, units.Low)
	high, _ := grazing.RentByValue(value, units.High)
	fmt.Println(low.Round(0), "to", high.Round(0))
	// Output: 45 USD to 60 USD
}

// It grows 3 short tons an acre, and hay is 100 USD.
func ExampleRentByForage() {
	hay, _ := units.ParseFeedPrice("100 USD/short ton")
	rent, _ := grazing.RentByForage(3*units.FreshShortTon, hay)
	fmt.Println(rent.Round(0), "an acre")
	// Output: 75 USD an acre
}

// And what would the same month cost in hay?
func ExampleHayPerUse() {
	hay, _ := units.ParseFeedPrice("100 USD/short ton")
	cost, _ := grazing.HayPerUse(hay, 26*units.FreshPound, 20*units.Percent)
	fmt.Println(cost, "an AUM")
	// Output: 48.75 USD an AUM
}

// The fence cost 950 USD and saves 380 a year.
func ExamplePaybackYears() {
	cost, _ := units.ParseMoney("950 USD")
	gain, _ := units.ParseMoney("380 USD")
	years, _ := grazing.PaybackYears(cost, gain)
	fmt.Println(years, "years")
	// Output: 2.5 years
}

// Three more days of grazing for 50 cows at the price of two moves?
func ExampleGainOfDays() {
	saving, _ := units.ParseMoney("0.50 USD")
	wage, _ := units.ParseMoney("15 USD")
	extra, _ := grazing.GainOfDays(50, 3*units.Day, saving, 2, 0.5*units.Hour, wage)
	fmt.Println(extra.Feed.Round(0), "less", extra.Labour.Round(0), "are", extra.Gain.Round(0))
	// Output: 75 USD less 15 USD are 60 USD
}
