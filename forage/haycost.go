package forage

import (
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

// WasteCost tells what hay wasted at a feeder costs: a bale, and all of them, each
// bale's cost rounded to hundredths before they are added up.
//
// Where:
//   - bale in lb: weight of one bale; >= 0
//   - waste in %: share of it that is wasted; 0 to 100
//   - price: of one bale
//   - bales: how many; >= 0
//
// Check: TestWasteCost
//
// Source: ILL-FEEDERS
func WasteCost(bale units.FreshFeed, waste units.Fraction, price units.Money, bales float64) (WastedHay, error) {
	each := units.FreshFeed(float64(bale) * float64(waste))
	all, err := units.Answer(&formulaWasteCost, units.FreshFeed(float64(each)*bales), float64(bale), float64(waste), 0, bales)
	if err != nil {
		return WastedHay{}, err
	}
	cost := times(price, float64(waste))
	return WastedHay{Each: each, Cost: cost, All: all, Total: times(cost, bales)}, nil
}

// FeedCost tells what so much bought feed costs.
//
// Where:
//   - feed in lb: feed as it lies; >= 0
//   - price: money for a mass of it
//
// Errors: a *units.DomainError where the price is for no mass
//
// Check: TestFeedCost
//
// Source: OHIO-HAY-2010
func FeedCost(feed units.FreshFeed, price units.FeedPrice) (units.Money, error) {
	if _, err := units.Answer(&formulaFeedCost, feed, float64(feed), 0); err != nil {
		return units.Money{}, err
	}
	if !(price.Per > 0) {
		return units.Money{}, forNoMass(&formulaFeedCost, 2, price)
	}
	return price.Of(feed, cents), nil
}

// forNoMass refuses a price that is not for a mass.
func forNoMass(formula *units.Formula, index int, price units.FeedPrice) error {
	mass := units.Argument{Name: formula.Arguments[index-1].Name, Unit: "kg", Factor: 1, Domain: units.Limits{High: infinity, LowOpen: true, LowOf: -1, HighOf: -1}}
	return units.OutOfDomain(formula.Name, index, mass, float64(price.Per))
}

// NutrientCost tells what so much of a nutrient costs in a feed, from the feed's price
// and its content, so that feeds can be compared. Content and price are of the same
// feed: both as it lies, or both dry.
//
// Where:
//   - price: money for a mass of the feed
//   - content in %: share of the nutrient in it; > 0 and <= 100
//   - per in lb: mass of the nutrient; >= 0
//
// Errors: a *units.DomainError where the price is for no mass
//
// Check: TestNutrientCost
//
// Source: NDSU-COST
func NutrientCost(price units.FeedPrice, content units.Fraction, per units.Mass) (units.Money, error) {
	feed, err := units.Answer(&formulaNutrientCost, units.FreshFeed(float64(per)/float64(content)), 0, float64(content), float64(per))
	if err != nil {
		return units.Money{}, err
	}
	if !(price.Per > 0) {
		return units.Money{}, forNoMass(&formulaNutrientCost, 1, price)
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

// HayFertility tells what nutrients bought hay brings onto the land it is fed on, 40 lb
// of nitrogen, 13 of phosphorus and 50 of potassium in a short ton, and what they would
// cost as fertiliser. The source does not say whether the last two are elements or
// oxides: give the prices of what its table, or yours, means.
//
// It is worth that only where the ground lacks them and the dung is spread as stock
// move; none of the nitrogen that is lost as gas or to water is taken off. Rules on
// nutrients near water come first.
//
// Where:
//   - hay in lb: hay as it lies; >= 0
//   - nitrogen: its price, none where there is none
//   - phosphorus: the same
//   - potassium: the same
//
// Errors: a *units.ParseError where the prices are of two currencies; a
// *units.DomainError where one is for no mass
//
// Check: TestHayFertility
//
// Source: OHIO-HAY-2010
func HayFertility(hay units.FreshFeed, nitrogen, phosphorus, potassium units.FeedPrice) (Fertility, error) {
	if _, err := units.Answer(&formulaHayFertility, hay, float64(hay), 0, 0, 0); err != nil {
		return Fertility{}, err
	}
	var worth units.Money
	var mass [3]units.Mass
	for i, price := range [...]units.FeedPrice{nitrogen, phosphorus, potassium} {
		if !price.Money.Amount.IsZero() && !(price.Per > 0) {
			return Fertility{}, forNoMass(&formulaHayFertility, i+2, price)
		}
		mass[i] = units.Mass(float64(hay) * float64(hayNutrients[i]))
		sum, err := worth.Add(price.Of(units.FreshFeed(mass[i]), cents))
		if err != nil {
			name := formulaHayFertility.Arguments[i+1].Name
			return Fertility{}, formulaHayFertility.NoRow(name, price.String(), "another currency than the price before it", []string{worth.Currency}, float64(hay), 0, 0, 0)
		}
		worth = sum
	}
	return Fertility{mass[0], mass[1], mass[2], worth}, nil
}

// hayNutrients is OHIO-HAY-2010, mark A.
var hayNutrients = [...]units.Fraction{40 * units.PoundPerShortTon, 13 * units.PoundPerShortTon, 50 * units.PoundPerShortTon}

// HeadDayCost tells what feed costs for one animal in a day.
//
// Where:
//   - total: what all of it cost
//   - head: number of animals; > 0
//   - days in days: how long; > 0
//
// Check: TestHeadDayCost
//
// Source: ALABAMA-HAY
func HeadDayCost(total units.Money, head float64, days units.Days) (units.Money, error) {
	if _, err := units.Answer(&formulaHeadDayCost, head*float64(days), 0, head, float64(days)); err != nil {
		return units.Money{}, err
	}
	by := decimal.NewFromFloat(head).Mul(decimal.NewFromFloat(float64(days)))
	return total.Divide(by, cents)
}
