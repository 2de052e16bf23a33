package grazing

import (
	"fmt"
	"math"
	"slices"

	"github.com/shopspring/decimal"

	"example.org/soum/units"
)

// cents is how many decimal places an answer in money has.
const cents = 2

// share is a plain number as a decimal.
func share(v float64) decimal.Decimal { return decimal.NewFromFloat(v) }

// costOf gives so many times a price, in cents, and nothing beside an error.
func costOf(price units.Money, times float64, err error) (units.Money, error) {
	if err != nil {
		return units.Money{}, err
	}
	return price.Times(share(times)).Round(cents), nil
}

// costOver gives money over a number above 0, in cents, and nothing beside an error.
func costOver(cost units.Money, parts float64, err error) (units.Money, error) {
	if err != nil {
		return units.Money{}, err
	}
	return cost.Divide(share(parts), cents)
}

// timesOf gives how many times the mass that a price is for goes into so much feed, as
// the answer of a formula for these arguments; the price is the one at index, from 1.
func timesOf(formula *units.Formula, index int, price units.FeedPrice, feed units.FreshFeed, arguments ...float64) (float64, error) {
	if price.Per > 0 {
		return units.Answer(formula, float64(feed/price.Per), arguments...)
	}
	if _, err := units.Answer(formula, 0.0, arguments...); err != nil {
		return math.NaN(), err
	}
	mass := units.Argument{Name: formula.Arguments[index-1].Name, Unit: "kg", Factor: float64(units.FreshKilogram), Domain: units.Above(0, inf)}
	return math.NaN(), units.OutOfDomain(formula.Name, index, mass, float64(price.Per))
}

// FenceCost returns what a length of fence, wire or pipe costs at the user's price.
//
// Method: price × length ÷ the length that the price is for, rounded to cents
//
// Where:
//   - fence in ft: length of the fence, wire or pipe; >= 0
//   - price: the user's, of so much of it
//   - per in ft: the length that the price is for; > 0
//
// Check: TestFenceCost
//
// Source: ARS-SPURGE-FENCE a mile at 18 cents a foot; LSP-FENCE half a mile at 20
func FenceCost(fence units.Length, price units.Money, per units.Length) (units.Money, error) {
	times, err := units.Answer(&formulaFenceCost, float64(fence)/float64(per), float64(fence), 0, float64(per))
	return costOf(price, times, err)
}

// YearlyCost is what something that lasts costs in a year.
type YearlyCost struct {
	Depreciation units.Money `json:"depreciation"` // first cost over the years it lasts
	Interest     units.Money `json:"interest"`     // on half of the first cost, the mean of what is tied up
	Maintenance  units.Money `json:"maintenance"`  // a share of the first cost
	Total        units.Money `json:"total"`        // the three together
}

// CostOfYear returns what something that lasts costs in a year: depreciation,
// interest and maintenance, each rounded to cents.
//
// Method: first ÷ life; first ÷ 2 × interest; first × maintenance; their sum
//
// The printed sums of the source are one more than its parts, which were rounded
// before. Its interest is 4 % of the first cost, which is 8 % of half: that reading
// is ours.
//
// Where:
//   - first: what it costs to buy
//   - years: how long it lasts; > 0
//   - interest in %: of a year; >= 0
//   - maintenance in %: of a year, as a share of the first cost; >= 0
//
// Check: TestCostOfYear
//
// Source: IOWA-FENCE-COSTS table 6
func CostOfYear(first units.Money, years float64, interest, maintenance units.Fraction) (YearlyCost, error) {
	shares := float64(interest) + float64(maintenance)
	if _, err := units.Answer(&formulaCostOfYear, shares, 0, years, float64(interest), float64(maintenance)); err != nil {
		return YearlyCost{}, err
	}
	var cost YearlyCost
	var err error
	if cost.Depreciation, err = first.Divide(share(years), cents); err != nil {
		return YearlyCost{}, err
	}
	cost.Interest = first.Times(share(float64(interest) / 2)).Round(cents)
	cost.Maintenance = first.Times(share(float64(maintenance))).Round(cents)
	sum := cost.Depreciation.Amount.Add(cost.Interest.Amount).Add(cost.Maintenance.Amount)
	cost.Total = units.Money{Amount: sum, Currency: first.Currency}
	return cost, nil
}

// FenceLifeRow is how long a kind of fence lasts and what upkeep it takes, and what
// print gives for its cost.
type FenceLifeRow struct {
	// Kind is the fence or part, lower case with hyphens.
	Kind string `json:"kind"`
	// Years is how long it lasts.
	Years float64 `json:"years"`
	// Maintenance is the yearly upkeep as a share of the first cost; 0 where print
	// gives none so.
	Maintenance units.Fraction `json:"maintenance"`
	// Printed is what print gives of its cost, in words, with the year.
	Printed string `json:"printed"`
	// Source is a key of SOURCES.md with the place.
	Source string `json:"source"`
	// Mark is how the figure was come by.
	Mark string `json:"mark"`
}

// FenceLives gives the table of how long fences last. Its costs are old and of
// their places: they are told and never computed with.
//
// Check: TestFenceLives
//
// Source: IOWA-FENCE-COSTS, LSP-FENCE, ARS-SPURGE-FENCE, IOWA-FENCE-2012, TEAGASC-FENCE, as the row says
func FenceLives() []FenceLifeRow { return slices.Clone(fenceLives) }

// CostPerUse returns what each animal-unit month of grazing costs.
//
// Method: cost ÷ AUM, rounded to cents
//
// Where:
//   - cost: of all of it
//   - use in AUM: the grazing; > 0
//
// Check: TestCostPerUse
//
// Source: definition: cost over grazing; SDSU-RENT compares rents so
func CostPerUse(cost units.Money, use units.UnitDays) (units.Money, error) {
	months := float64(use / units.AnimalUnitMonth)
	_, err := units.Answer(&formulaCostPerUse, 1/months, 0, float64(use))
	return costOver(cost, months, err)
}

// RentPerHead returns the rent for each head of land rented by area.
//
// Method: rent × land for each head ÷ the area that the rent is for, rounded to
// cents
//
// Rents an acre say little: from 11.65 to 61.95 USD an acre across South Dakota in
// 2012, and 25.25 to 36.90 USD an AUM.
//
// Where:
//   - rent: of a year
//   - per in ac: the area that the rent is for; > 0
//   - land in ac: land for each head; >= 0
//
// Check: TestRent
//
// Source: SDSU-RENT; NDSU-RENT a worked example
func RentPerHead(rent units.Money, per, land units.Area) (units.Money, error) {
	times, err := units.Answer(&formulaRentPerHead, float64(land)/float64(per), 0, float64(per), float64(land))
	return costOf(rent, times, err)
}

// RentPerUse returns the rent for each animal-unit month of a rent for each head.
//
// Method: rent ÷ (animal units × months of 30 days), rounded to cents
//
// Where:
//   - rent: for each head
//   - each in AU: one animal in animal units; > 0
//   - days in days: how long it grazes; > 0
//
// Check: TestRent
//
// Source: SDSU-RENT
func RentPerUse(rent units.Money, each units.AnimalUnits, days units.Days) (units.Money, error) {
	months := float64(each) * float64(days) / float64(units.AnimalUnitMonth)
	_, err := units.Answer(&formulaRentPerUse, months+1/months, 0, float64(each), float64(days))
	return costOver(rent, months, err)
}

// RentRule is a rule of pasture rent by the price of hay.
type RentRule int

// The rules of rent by hay.
const (
	RentByQuality RentRule = iota + 1 // a quality factor of 0.20, excellent grass and legume
	RentByEighth                      // hay price over 8.5
)

// RentByHay returns the rent of a head for a month by the price of hay.
//
// Method: animal units × price of a short ton × 0.20, or ÷ 8.5, rounded to cents
//
// The two differ by 1.7 times, and both are meant for irrigated pasture: too high
// for dry range.
//
// Where:
//   - animals in AU: the animal; >= 0
//   - hay: its price
//   - rule: how the rent follows from it
//
// Errors: a *units.DomainError where the price is for no mass
//
// Check: TestRent
//
// Source: RANCHERS-EDGE
func RentByHay(animals units.AnimalUnits, hay units.FeedPrice, rule RentRule) (units.Money, error) {
	tons, err := timesOf(&formulaRentByHay, 2, hay, units.FreshShortTon, float64(animals), 0, float64(rule))
	if err != nil {
		return units.Money{}, err
	}
	return hay.Money.Times(share(tons)).Times(rentShares[rule]).Times(share(float64(animals))).Round(cents), nil
}

// rentShares is the shares of the price of hay that RANCHERS-EDGE prints as rent, mark
// B: a fifth for excellent grass and legume, or one part in 8.5.
var rentShares = [...]decimal.Decimal{
	RentByQuality: decimal.RequireFromString("0.20"),
	RentByEighth:  decimal.NewFromInt(1).DivRound(decimal.RequireFromString("8.5"), 12),
}

// RentByValue returns the yearly rent of an area by what the land sells for, at an
// end of the printed span.
//
// Method: value × 1.5 to 2.0 %, rounded to cents
//
// Where:
//   - value: what the area sells for
//   - end: of the printed span
//
// Check: TestRent
//
// Source: IOWA-C2-23
func RentByValue(value units.Money, end units.End) (units.Money, error) {
	times, err := units.Answer(&formulaRentByValue, float64(rentOfValue.At(end)), 0, float64(end))
	return costOf(value, times, err)
}

// RentByForage returns the yearly rent of an area by the forage it is expected to
// give.
//
// Method: forage × price of grass hay × 25 %, rounded to cents
//
// Where:
//   - forage in lb: what the area is expected to give in a year, as hay lies; >= 0
//   - hay: the price of grass hay
//
// Errors: a *units.DomainError where the price is for no mass
//
// Check: TestRent
//
// Source: IOWA-C2-23
func RentByForage(forage units.FreshFeed, hay units.FeedPrice) (units.Money, error) {
	times, err := timesOf(&formulaRentByForage, 2, hay, forage, float64(forage), 0)
	if err != nil {
		return units.Money{}, err
	}
	return hay.Money.Times(share(times)).Round(2 * cents).Times(share(float64(rentOfForage))).Round(cents), nil
}

// IOWA-C2-23, mark A.
var rentOfValue = units.Span[units.Fraction]{Low: 1.5 * units.Percent, High: 2.0 * units.Percent}

const rentOfForage = 25 * units.Percent

// HayPerUse returns what an animal-unit month costs in hay: beside CostPerUse it
// tells grass from hay.
//
// Method: price × what the animal unit eats of hay in 30 days ÷ (1 - waste),
// rounded to cents
//
// Pasture is about a third of the price of bought feed by one adviser [SDSU-OLLILA];
// a winter day of hay for a cow was about 1.35 USD in Virginia and 1.63 in Alabama.
//
// Where:
//   - hay: its price
//   - demand in lb: what the animal unit eats of hay in a day, as it lies; >= 0
//   - waste in %: share of the hay that is wasted; >= 0 and < 100
//
// Errors: a *units.DomainError where the price is for no mass
//
// Check: TestHayPerUse
//
// Source: definition: price times feed; HFG-HAY-COSTS, ALABAMA-STOCKPILE a day's cost
func HayPerUse(hay units.FeedPrice, demand units.FreshFeed, waste units.Fraction) (units.Money, error) {
	month := float64(demand) * float64(units.AnimalUnitMonth) / (1 - float64(waste))
	times, err := timesOf(&formulaHayPerUse, 1, hay, units.FreshFeed(month), 0, float64(demand), float64(waste))
	return costOf(hay.Money, times, err)
}

// PaybackYears returns the years until what was spent has come back.
//
// Method: cost ÷ gain of a year
//
// A trade paper's graziers look for 2 to 3 years on productive land, 3 to 5 on
// range, and judge fence and water by the acre [STOCKMAN-PAYBACK].
//
// Where:
//   - cost: what was spent
//   - gain: what it brings in a year
//
// Errors: a *units.DomainError where the gain is not above 0, since the cost then never
// comes back; a *units.ParseError where the two are of two currencies
//
// Check: TestPaybackYears
//
// Source: definition: cost over yearly gain
func PaybackYears(cost, gain units.Money) (float64, error) {
	if !gain.Amount.IsPositive() {
		above := units.Argument{Name: "gain", Unit: gain.Currency, Factor: 1, Domain: units.Above(0, inf)}
		return math.NaN(), units.OutOfDomain(formulaPaybackYears.Name, 2, above, gain.Amount.InexactFloat64())
	}
	if cost.Currency != gain.Currency {
		return math.NaN(), twoCurrencies(&formulaPaybackYears, cost, "gain", gain, 0, 0)
	}
	return units.Answer(&formulaPaybackYears, cost.Amount.DivRound(gain.Amount, 12).InexactFloat64(), 0, 0)
}

// twoCurrencies gives the error of money in another currency than other money beside it.
func twoCurrencies(formula *units.Formula, beside units.Money, argument string, money units.Money, arguments ...float64) error {
	problem := fmt.Sprintf("%s and %s are two currencies, change one into the other first", beside, money)
	return formula.NoRow(argument, money.String(), problem, []string{beside.Currency}, arguments...)
}

// ExtraDays is what some more days of grazing bring.
type ExtraDays struct {
	Feed   units.Money `json:"feed"`   // what is not fed meanwhile
	Labour units.Money `json:"labour"` // of the moves
	Gain   units.Money `json:"gain"`   // feed less labour
}

// GainOfDays returns what some more days of grazing bring: the feed saved less the
// work of the moves.
//
// Method: head × days × what a head saves in a day; moves × time of one × wage of an
// hour; the difference, each rounded to cents
//
// Take for the saving what the last days save, not the mean of all days: the first
// extra days of grazing come cheap, the last ones cost moves, fence and thin animals,
// and a mean saving overstates them [HALICH-LAST-DAYS].
//
// Where:
//   - head: animals that graze; >= 0
//   - days in days: the days of grazing; >= 0
//   - saving: what one of them saves in a day
//   - moves: moves in those days; >= 0
//   - each in h: time of a move; >= 0
//   - wage: of an hour
//
// Errors: a *units.ParseError where saving and wage are of two currencies
//
// Check: TestGainOfDays
//
// Source: HALICH-LAST-DAYS
func GainOfDays(head float64, days units.Days, saving units.Money, moves float64, each units.Days, wage units.Money) (ExtraDays, error) {
	fed, hours := head*float64(days), moves*float64(each/units.Hour)
	arguments := [...]float64{head, float64(days), 0, moves, float64(each), 0}
	if _, err := units.Answer(&formulaGainOfDays, fed+hours, arguments[:]...); err != nil {
		return ExtraDays{}, err
	}
	extra := ExtraDays{
		Feed:   saving.Times(share(fed)).Round(cents),
		Labour: wage.Times(share(hours)).Round(cents),
	}
	var err error
	if extra.Gain, err = extra.Feed.Add(extra.Labour.Times(decimal.NewFromInt(-1))); err != nil {
		return ExtraDays{}, twoCurrencies(&formulaGainOfDays, saving, "wage", wage, arguments[:]...)
	}
	return extra, nil
}
