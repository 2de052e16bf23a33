package forage

import (
	"errors"

	"github.com/shopspring/decimal"

	"example.org/soum/units"
)

// cents is the places that an amount of money is rounded to.
const cents = 2

// times multiplies money by a finite number and rounds it.
func times(m units.Money, factor float64) units.Money {
	return m.Times(decimal.NewFromFloat(factor)).Round(cents)
}

// WastedHay is hay wasted at a feeder and what it cost.
type WastedHay struct {
	// Each is the hay wasted of one bale, as it lies.
	Each units.FreshFeed `json:"each_kg"`
	// Cost is what that cost.
	Cost units.Money `json:"cost"`
	// All is the hay wasted of all bales.
	All units.FreshFeed `json:"all_kg"`
	// Total is what all of it cost.
	Total units.Money `json:"total"`
}

var wasteCostGuard = guard("WasteCost", "ILL-FEEDERS",
	units.Argument{Name: "bale", Unit: "lb", Factor: float64(units.FreshPound), Domain: anyAmount},
	units.Argument{Name: "waste", Unit: "%", Factor: float64(units.Percent), Domain: wholeShare},
	units.Argument{Name: "bales", Factor: 1, Domain: anyAmount})

// WasteCost tells what hay wasted at a feeder costs: a bale, and all of them, each
// bale's cost rounded to hundredths before they are added up.
//
// Errors: a domain error where weight or number is below 0, or the share is not from 0
// to 100 %
//
// Check: TestWasteCost
//
// Source: ILL-FEEDERS
func WasteCost(bale units.FreshFeed, waste units.Fraction, price units.Money, bales float64) (WastedHay, error) {
	each := units.FreshFeed(float64(bale) * float64(waste))
	all, err := units.Answer(&wasteCostGuard, units.FreshFeed(float64(each)*bales), float64(bale), float64(waste), bales)
	if err != nil {
		return WastedHay{}, err
	}
	cost := times(price, float64(waste))
	return WastedHay{Each: each, Cost: cost, All: all, Total: times(cost, bales)}, nil
}

var feedCostGuard = guard("FeedCost", "OHIO-HAY-2010", units.Argument{Name: "feed", Unit: "lb", Factor: float64(units.FreshPound), Domain: anyAmount})

// FeedCost tells what so much bought feed costs.
//
// Errors: a domain error where the feed is below 0 or not a number; an error where the
// price is for no mass
//
// Check: TestFeedCost
//
// Source: OHIO-HAY-2010
func FeedCost(feed units.FreshFeed, price units.FeedPrice) (units.Money, error) {
	if _, err := units.Answer(&feedCostGuard, feed, float64(feed)); err != nil {
		return units.Money{}, err
	}
	if price.Per == 0 {
		return units.Money{}, errors.New("forage.FeedCost: price: it is for no mass")
	}
	return price.Of(feed, cents), nil
}

var nutrientCostGuard = guard("NutrientCost", "NDSU-COST",
	units.Argument{Name: "content", Unit: "%", Factor: float64(units.Percent), Domain: units.Limits{Low: 0, High: 1, LowOpen: true, LowOf: -1, HighOf: -1}},
	units.Argument{Name: "per", Unit: "lb", Factor: float64(units.Pound), Domain: anyAmount})

// NutrientCost tells what so much of a nutrient costs in a feed, from the feed's price
// and its content, so that feeds can be compared. Content and price are of the same
// feed: both as it lies, or both dry.
//
// Errors: a domain error where the content is not above 0 and up to 100 %, or the mass
// is below 0
//
// Check: TestNutrientCost
//
// Source: NDSU-COST
func NutrientCost(price units.FeedPrice, content units.Fraction, per units.Mass) (units.Money, error) {
	feed, err := units.Answer(&nutrientCostGuard, units.FreshFeed(float64(per)/float64(content)), float64(content), float64(per))
	if err != nil {
		return units.Money{}, err
	}
	return price.Of(feed, cents), nil
}

// Fertility is what hay brings to the ground it is fed on, and what it is worth.
type Fertility struct {
	// Nitrogen, Phosphorus and Potassium are the masses as the source tells them.
	Nitrogen   units.Mass `json:"nitrogen_kg"`
	Phosphorus units.Mass `json:"phosphorus_kg"`
	Potassium  units.Mass `json:"potassium_kg"`
	// Worth is the sum of their prices.
	Worth units.Money `json:"worth"`
}

var fertilityGuard = guard("HayFertility", "OHIO-HAY-2010", units.Argument{Name: "hay", Unit: "lb", Factor: float64(units.FreshPound), Domain: anyAmount})

// HayFertility tells what nutrients bought hay brings onto the land it is fed on, 40 lb
// of nitrogen, 13 of phosphorus and 50 of potassium in a short ton, and what they would
// cost as fertiliser. The source does not say whether the last two are elements or
// oxides: give the prices of what its table, or yours, means.
//
// It is worth that only where the ground lacks them and the dung is spread as stock
// move; none of the nitrogen that is lost as gas or to water is taken off. Rules on
// nutrients near water come first.
//
// Errors: a domain error where the hay is below 0 or not a number; an error where the
// prices are of two currencies
//
// Check: TestHayFertility
//
// Source: OHIO-HAY-2010
func HayFertility(hay units.FreshFeed, nitrogen, phosphorus, potassium units.FeedPrice) (Fertility, error) {
	if _, err := units.Answer(&fertilityGuard, hay, float64(hay)); err != nil {
		return Fertility{}, err
	}
	var worth units.Money
	var mass [3]units.Mass
	for i, price := range [...]units.FeedPrice{nitrogen, phosphorus, potassium} {
		mass[i] = units.Mass(float64(hay) * float64(hayNutrients[i]))
		sum, err := worth.Add(price.Of(units.FreshFeed(mass[i]), cents))
		if err != nil {
			return Fertility{}, err
		}
		worth = sum
	}
	return Fertility{mass[0], mass[1], mass[2], worth}, nil
}

// hayNutrients is OHIO-HAY-2010, mark A.
var hayNutrients = [...]units.Fraction{40 * units.PoundPerShortTon, 13 * units.PoundPerShortTon, 50 * units.PoundPerShortTon}

var headDayGuard = guard("HeadDayCost", "ALABAMA-HAY",
	units.Argument{Name: "head", Factor: 1, Domain: units.Limits{Low: 0, High: infinity, LowOpen: true, LowOf: -1, HighOf: -1}},
	units.Argument{Name: "days", Unit: "days", Factor: 1, Domain: units.Limits{Low: 0, High: infinity, LowOpen: true, LowOf: -1, HighOf: -1}})

// HeadDayCost tells what feed costs for one animal in a day.
//
// Errors: a domain error where head or days are not above 0
//
// Check: TestHeadDayCost
//
// Source: ALABAMA-HAY
func HeadDayCost(total units.Money, head float64, days units.Days) (units.Money, error) {
	if _, err := units.Answer(&headDayGuard, head*float64(days), head, float64(days)); err != nil {
		return units.Money{}, err
	}
	by := decimal.NewFromFloat(head).Mul(decimal.NewFromFloat(float64(days)))
	return total.Divide(by, cents)
}
