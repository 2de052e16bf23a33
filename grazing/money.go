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

// moneyGuard is the limits of a formula that answers in money, whose arguments the
// generator of limits does not see.
func moneyGuard(name string, arguments ...units.Argument) units.Formula {
	for i := range arguments {
		if arguments[i].Factor == 0 {
			arguments[i].Factor = 1
		}
	}
	return units.Formula{Name: "grazing." + name, Source: "the user's prices", Arguments: arguments}
}

// moneyOf gives the answer in money, none where an argument is impossible.
func moneyOf(guard units.Formula, answer func() (units.Money, error), arguments ...float64) (units.Money, error) {
	if _, err := units.Answer(&guard, 0.0, arguments...); err != nil {
		return units.Money{}, err
	}
	return answer()
}

// FenceCost returns what a length of fence, wire or pipe costs at the user's price.
//
// Method: price × length ÷ the length that the price is for, rounded to cents
//
// Errors: *units.DomainError where a length is impossible
//
// Check: TestFenceCost
//
// Source: ARS-SPURGE-FENCE a mile at 18 cents a foot; LSP-FENCE half a mile at 20
func FenceCost(fence units.Length, price units.Money, per units.Length) (units.Money, error) {
	guard := moneyGuard("FenceCost", units.Argument{Name: "fence", Unit: "m", Domain: units.AtLeast(0)}, units.Argument{Name: "per", Unit: "m", Domain: units.Above(0, inf)})
	return moneyOf(guard, func() (units.Money, error) {
		return price.Times(share(float64(fence) / float64(per))).Round(cents), nil
	}, float64(fence), float64(per))
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
// Errors: *units.DomainError where the life is 0 or below or a share impossible
//
// Check: TestCostOfYear
//
// Source: IOWA-FENCE-COSTS table 6
func CostOfYear(first units.Money, years float64, interest, maintenance units.Fraction) (YearlyCost, error) {
	guard := moneyGuard("CostOfYear", units.Argument{Name: "years", Domain: units.Above(0, inf)},
		units.Argument{Name: "interest", Unit: "%", Factor: float64(units.Percent), Domain: units.AtLeast(0)},
		units.Argument{Name: "maintenance", Unit: "%", Factor: float64(units.Percent), Domain: units.AtLeast(0)})
	if _, err := units.Answer(&guard, 0.0, years, float64(interest), float64(maintenance)); err != nil {
		return YearlyCost{}, err
	}
	var cost YearlyCost
	var err error
	if cost.Depreciation, err = first.Divide(share(years), cents); err != nil {
		return YearlyCost{}, err
	}
	cost.Interest = first.Times(share(float64(interest) / 2)).Round(cents)
	cost.Maintenance = first.Times(share(float64(maintenance))).Round(cents)
	if cost.Total, err = cost.Depreciation.Add(cost.Interest); err == nil {
		cost.Total, err = cost.Total.Add(cost.Maintenance)
	}
	return cost, err
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
// Errors: *units.DomainError where there is no grazing
//
// Check: TestCostPerUse
//
// Source: definition: cost over grazing; SDSU-RENT compares rents so
func CostPerUse(cost units.Money, use units.UnitDays) (units.Money, error) {
	guard := moneyGuard("CostPerUse", units.Argument{Name: "use", Unit: "AUM", Factor: float64(units.AnimalUnitMonth), Domain: units.Above(0, inf)})
	return moneyOf(guard, func() (units.Money, error) { return cost.Divide(share(float64(use/units.AnimalUnitMonth)), cents) }, float64(use))
}

// RentPerHead returns the rent for each head of land rented by area.
//
// Method: rent × land for each head ÷ the area that the rent is for, rounded to
// cents
//
// Rents an acre say little: from 11.65 to 61.95 USD an acre across South Dakota in
// 2012, and 25.25 to 36.90 USD an AUM.
//
// Errors: *units.DomainError where an area is impossible
//
// Check: TestRent
//
// Source: SDSU-RENT; NDSU-RENT a worked example
func RentPerHead(rent units.Money, per, land units.Area) (units.Money, error) {
	guard := moneyGuard("RentPerHead", units.Argument{Name: "per", Unit: "m2", Domain: units.Above(0, inf)}, units.Argument{Name: "land", Unit: "m2", Domain: units.AtLeast(0)})
	return moneyOf(guard, func() (units.Money, error) { return rent.Times(share(float64(land) / float64(per))).Round(cents), nil }, float64(per), float64(land))
}

// RentPerUse returns the rent for each animal-unit month of a rent for each head.
//
// Method: rent ÷ (animal units × months of 30 days), rounded to cents
//
// Errors: *units.DomainError where the animal or the time is none
//
// Check: TestRent
//
// Source: SDSU-RENT
func RentPerUse(rent units.Money, each units.AnimalUnits, days units.Days) (units.Money, error) {
	guard := moneyGuard("RentPerUse", units.Argument{Name: "each", Unit: "AU", Domain: units.Above(0, inf)}, units.Argument{Name: "days", Unit: "days", Domain: units.Above(0, inf)})
	return moneyOf(guard, func() (units.Money, error) {
		return rent.Divide(share(float64(each)*float64(days)/float64(units.AnimalUnitMonth)), cents)
	}, float64(each), float64(days))
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
// Errors: *units.DomainError where the animal is impossible; an error where the
// rule is none, or the price is for no mass
//
// Check: TestRent
//
// Source: RANCHERS-EDGE
func RentByHay(animals units.AnimalUnits, hay units.FeedPrice, rule RentRule) (units.Money, error) {
	factor, has := map[RentRule]decimal.Decimal{RentByQuality: rentQuality, RentByEighth: decimal.NewFromInt(1).DivRound(rentEighth, 12)}[rule]
	if !has {
		return units.Money{}, noRow("grazing.RentRule", fmt.Sprint("rule ", int(rule)), "no such rule", namesRentRule[1:])
	}
	if !(hay.Per > 0) {
		return units.Money{}, noRow("grazing.RentByHay", hay.String(), "a price for no mass", []string{"such as 180 USD/short ton"})
	}
	guard := moneyGuard("RentByHay", units.Argument{Name: "animals", Unit: "AU", Domain: units.AtLeast(0)})
	return moneyOf(guard, func() (units.Money, error) {
		ton := hay.Money.Times(share(float64(units.FreshShortTon / hay.Per)))
		return ton.Times(factor).Times(share(float64(animals))).Round(cents), nil
	}, float64(animals))
}

// The shares of the price of hay that RANCHERS-EDGE prints as rent, mark B: a fifth for
// excellent grass and legume, or one part in 8.5.
var (
	rentQuality = decimal.RequireFromString("0.20")
	rentEighth  = decimal.RequireFromString("8.5")
)

// RentByValue returns the yearly rent of an area by what the land sells for, at an
// end of the printed span.
//
// Method: value × 1.5 to 2.0 %, rounded to cents
//
// Errors: none but that of the end, which gives the middle
//
// Check: TestRent
//
// Source: IOWA-C2-23
func RentByValue(value units.Money, end units.End) (units.Money, error) {
	return value.Times(share(float64(rentOfValue.At(end)))).Round(cents), nil
}

// RentByForage returns the yearly rent of an area by the forage it is expected to
// give.
//
// Method: forage × price of grass hay × 25 %, rounded to cents
//
// Errors: *units.DomainError where the forage is impossible
//
// Check: TestRent
//
// Source: IOWA-C2-23
func RentByForage(forage units.FreshFeed, hay units.FeedPrice) (units.Money, error) {
	guard := moneyGuard("RentByForage", units.Argument{Name: "forage", Unit: "kg", Domain: units.AtLeast(0)})
	return moneyOf(guard, func() (units.Money, error) {
		return hay.Of(forage, cents*2).Times(share(float64(rentOfForage))).Round(cents), nil
	}, float64(forage))
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
// Errors: *units.DomainError where the demand or the waste is impossible
//
// Check: TestHayPerUse
//
// Source: definition: price times feed; HFG-HAY-COSTS, ALABAMA-STOCKPILE a day's cost
func HayPerUse(hay units.FeedPrice, demand units.FreshFeed, waste units.Fraction) (units.Money, error) {
	guard := moneyGuard("HayPerUse", units.Argument{Name: "demand", Unit: "kg", Domain: units.AtLeast(0)},
		units.Argument{Name: "waste", Unit: "%", Factor: float64(units.Percent), Domain: units.Limits{Low: 0, LowOf: -1, High: 1, HighOpen: true, HighOf: -1}})
	return moneyOf(guard, func() (units.Money, error) {
		month := float64(demand) * float64(units.AnimalUnitMonth) / (1 - float64(waste))
		return hay.Of(units.FreshFeed(month), cents), nil
	}, float64(demand), float64(waste))
}

// PaybackYears returns the years until what was spent has come back.
//
// Method: cost ÷ gain of a year
//
// A trade paper's graziers look for 2 to 3 years on productive land, 3 to 5 on
// range, and judge fence and water by the acre [STOCKMAN-PAYBACK].
//
// Errors: an error where the currencies differ or the gain is not above nothing
//
// Check: TestPaybackYears
//
// Source: definition: cost over yearly gain
func PaybackYears(cost, gain units.Money) (float64, error) {
	switch {
	case cost.Currency != gain.Currency:
		return math.NaN(), fmt.Errorf("grazing.PaybackYears: %s and %s are two currencies: change one into the other first", cost, gain)
	case !gain.Amount.IsPositive():
		return math.NaN(), fmt.Errorf("grazing.PaybackYears: the gain of a year is %s: it must be above 0, or the cost never comes back", gain)
	}
	return cost.Amount.DivRound(gain.Amount, 12).InexactFloat64(), nil
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
// Errors: *units.DomainError where a number is below 0; an error where the
// currencies differ
//
// Check: TestGainOfDays
//
// Source: HALICH-LAST-DAYS
func GainOfDays(head float64, days units.Days, saving units.Money, moves float64, each units.Days, wage units.Money) (ExtraDays, error) {
	guard := moneyGuard("GainOfDays", units.Argument{Name: "head", Domain: units.AtLeast(0)}, units.Argument{Name: "days", Unit: "days", Domain: units.AtLeast(0)},
		units.Argument{Name: "moves", Domain: units.AtLeast(0)}, units.Argument{Name: "each", Unit: "h", Factor: float64(units.Hour), Domain: units.AtLeast(0)})
	if _, err := units.Answer(&guard, 0.0, head, float64(days), moves, float64(each)); err != nil {
		return ExtraDays{}, err
	}
	extra := ExtraDays{
		Feed:   saving.Times(share(head * float64(days))).Round(cents),
		Labour: wage.Times(share(moves * float64(each/units.Hour))).Round(cents),
	}
	var err error
	extra.Gain, err = extra.Feed.Add(extra.Labour.Times(decimal.NewFromInt(-1)))
	return extra, err
}
