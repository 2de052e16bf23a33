package forage_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/forage"
	"example.org/soum/units"
)

func money(text string) units.Money {
	m, err := units.ParseMoney(text)
	if err != nil {
		panic(err)
	}
	return m
}

func price(text string) units.FeedPrice {
	p, err := units.ParseFeedPrice(text)
	if err != nil {
		panic(err)
	}
	return p
}

// TestWasteCost: what all the bales lose, and what is refused; print is in the tables.
func TestWasteCost(t *testing.T) {
	got, err := forage.WasteCost(1200*units.FreshPound, 20.5*units.Percent, money("70 USD"), 180)
	require.NoError(t, err)
	assert.InDelta(t, 180*246, got.All.Pounds(), 1e-6)
	for _, bad := range [][3]float64{{-1, 0.1, 1}, {1, 1.1, 1}, {1, 0.1, math.Inf(1)}, {math.NaN(), 0.1, 1}} {
		_, err := forage.WasteCost(units.FreshFeed(bad[0]), units.Fraction(bad[1]), money("70 USD"), bad[2])
		assert.True(t, units.Impossible(err), bad)
	}
}

// TestNutrientCost: 200 EUR/t at 20 %: 10 kg are in 50 kg, 10 EUR; print is in the table.
func TestNutrientCost(t *testing.T) {
	got, err := forage.NutrientCost(price("200 EUR/t"), 20*units.Percent, 10*units.Kilogram)
	require.NoError(t, err)
	assert.Equal(t, "10.00 EUR", got.Round(2).String())
	for _, content := range []float64{0, -1, 1.1, math.NaN()} {
		_, err = forage.NutrientCost(price("97 USD/t"), units.Fraction(content), 1)
		assert.True(t, units.Impossible(err), content)
	}
	_, err = forage.NutrientCost(price("97 USD/t"), 0.1, -1)
	assert.True(t, units.Impossible(err))
}

// TestHayFertility: an Ohio handout of 2010 prints 40 lb N, 13 P and 50 K in a ton; what
// they are worth is in the table.
func TestHayFertility(t *testing.T) {
	got, err := forage.HayFertility(1*units.FreshShortTon, price("0.45 USD/lb"), price("0.57 USD/lb"), price("0.39 USD/lb"))
	require.NoError(t, err)
	assert.InDelta(t, 40, got.Nitrogen.Pounds(), 1e-9)
	assert.InDelta(t, 13, got.Phosphorus.Pounds(), 1e-9)
	assert.InDelta(t, 50, got.Potassium.Pounds(), 1e-9)
	_, err = forage.HayFertility(1, price("0.45 USD/lb"), price("0.57 EUR/lb"), price("0.39 USD/lb"))
	assert.ErrorContains(t, err, `phosphorus is "0.57 EUR/lb": another currency than the price before it; it takes one of: USD`)
	none := price("0.57 USD/lb")
	none.Per = 0
	_, err = forage.HayFertility(1, price("0.45 USD/lb"), none, price("0.39 USD/lb"))
	refuses(t, err, "phosphorus")
	_, err = forage.HayFertility(units.FreshFeed(math.NaN()), price("0.45 USD/lb"), price("0.57 USD/lb"), price("0.39 USD/lb"))
	assert.True(t, units.Impossible(err))
}

// TestHeadDayCost: what is refused; print is in the table.
func TestHeadDayCost(t *testing.T) {
	for _, bad := range [][2]float64{{0, 1}, {1, 0}, {-1, -1}, {math.NaN(), 1}, {1, math.Inf(1)}} {
		_, err := forage.HeadDayCost(money("245 USD"), bad[0], units.Days(bad[1]))
		assert.True(t, units.Impossible(err), bad)
	}
}

// TestFeedCost: what no table holds.
func TestFeedCost(t *testing.T) {
	_, err := forage.FeedCost(1, units.FeedPrice{})
	refuses(t, err, "price")
	assert.ErrorContains(t, err, "price is 0 kg, must be above 0 kg")
	_, err = forage.NutrientCost(units.FeedPrice{}, 0.5, 1)
	refuses(t, err, "price")
	one, err := forage.FeedCost(1*units.FreshTonne, price("200 EUR/t"))
	require.NoError(t, err)
	assert.Equal(t, "200.00 EUR", one.Round(2).String())
	for _, feed := range []float64{-1, math.NaN(), math.Inf(1)} {
		_, err = forage.FeedCost(units.FreshFeed(feed), price("200 EUR/t"))
		assert.True(t, units.Impossible(err), feed)
	}
}

// What do 65 bales of 1,000 lb cost at 60 USD a ton, which is 30 a bale?
func ExampleFeedCost() {
	cost, err := forage.FeedCost(65*1000*units.FreshPound, price("60 USD/short ton"))
	fmt.Println(cost.Round(0), err)
	// Output: 1950 USD <nil>
}

// Bales of 1,200 lb at 70 USD, 180 of them, a fifth wasted: what does that cost?
func ExampleWasteCost() {
	got, err := forage.WasteCost(1200*units.FreshPound, 20.5*units.Percent, money("70 USD"), 180)
	fmt.Println(got.Each.In(units.US), got.Cost, got.Total, err)
	// Output: 246 lb 14.35 USD 2583.00 USD <nil>
}

// What does a pound of protein cost in forage of 4.8 %?
func ExampleNutrientCost() {
	cost, err := forage.NutrientCost(price("97.33 USD/short ton"), 4.8*units.Percent, 1*units.Pound)
	fmt.Println(cost, err)
	// Output: 1.01 USD <nil>
}

// What is a ton of bought hay worth to my land?
func ExampleHayFertility() {
	got, err := forage.HayFertility(1*units.FreshShortTon, price("0.45 USD/lb"), price("0.57 USD/lb"), price("0.39 USD/lb"))
	fmt.Println(got.Nitrogen.In(units.US), got.Worth, err)
	// Output: 40 lb 44.91 USD <nil>
}

// Hay for 245 USD feeds a cow 150 days: what is that a day?
func ExampleHeadDayCost() {
	cost, err := forage.HeadDayCost(money("245 USD"), 1, 150)
	fmt.Println(cost, err)
	// Output: 1.63 USD <nil>
}
