package herd

import (
	"math"

	"example.org/soum/units"
)

// thousandPounds is the animal unit's weight in base units.
const thousandPounds = float64(1000 * units.LivePound)

// AnimalUnits returns the animal units of one animal in proportion to its
// weight, one for each 1,000 lb.
//
// Empirical: weight / 1000
//
// Where:
//   - weight in lb: live weight; >= 0
//   - result in AU: animal units
//
// Note: the sources agree on the proportion and not on the unit: a cow of 1,000
// lb with a young calf (NDMC-AU, EXT-AUM), with or without one (MANITOBA-AUM), a
// dry cow of 1,100 lb (JORNADA-1994). By weight^0.75 a light animal counts more
// and a heavy one less: MetabolicAnimalUnits.
//
// Source: NDMC-AU; EXT-AUM
func AnimalUnits(weight units.LiveWeight) (units.AnimalUnits, error) {
	return units.Answer(&formulaAnimalUnits, units.AnimalUnits(float64(weight)/thousandPounds), float64(weight))
}

// DryCowUnits returns the animal units of a dry cow by the reckoning that gives
// a nursing cow of 1,000 lb the whole unit and a dry one a tenth less.
//
// Empirical: weight / 1000 - 0.1
//
// Where:
//   - weight in lb: live weight; > 100; 1000 to 1200 [EXT-AUM]
//   - result in AU: animal units
//
// Note: by the same reckoning a calf of over four months counts 0.3 beside its
// mother. Other sources give the dry cow the whole unit.
//
// Source: EXT-AUM
func DryCowUnits(weight units.LiveWeight) (units.AnimalUnits, error) {
	value := units.AnimalUnits(float64(weight)/thousandPounds - 0.1)
	return units.Answer(&formulaDryCowUnits, value, float64(weight))
}

// MetabolicAnimalUnits returns the animal units of one animal by metabolic
// weight, the weight in 1,000 lb to the power 0.75.
//
// Empirical: pow(weight / 1000, 0.75)
//
// Where:
//   - weight in lb: live weight; >= 0
//   - result in AU: animal units
//
// Note: a cow of 1,200 lb is 1.147 by this rule and 1.2 by weight alone: carry
// the rule with the number.
//
// Source: NDSU-METABOLIC the exponent follows from the printed value
func MetabolicAnimalUnits(weight units.LiveWeight) (units.AnimalUnits, error) {
	root := math.Sqrt(float64(weight) / thousandPounds) // two square roots are the same on every machine, a power need not be
	return units.Answer(&formulaMetabolicAnimalUnits, units.AnimalUnits(root*math.Sqrt(root)), float64(weight))
}

// IntakeAnimalUnits returns the animal units of one animal by what it eats in a
// year, one for each 9,490 lb (1,000 lb of cow at 2.6 % for 365 days).
//
// Formula: weight * intake * 365 / (9490 * 0.45359237)
//
// Where:
//   - weight in lb: live weight; >= 0
//   - intake in %: forage of a day as a share of live weight; 0 to 100
//
// Source: TX-AU-CHART
func IntakeAnimalUnits(weight units.LiveWeight, intake units.Fraction) (units.AnimalUnits, error) {
	value := float64(weight) * float64(intake) * 365 / float64(9490*units.DryMatterPound)
	return units.Answer(&formulaIntakeAnimalUnits, units.AnimalUnits(value), float64(weight), float64(intake))
}

// HeadPerUnit returns how many animals make one animal unit. Print rounds it to
// whole head.
//
// Formula: 1 / each
//
// Where:
//   - each in AU: animal units of one animal; > 0
//
// Source: TX-AU-CHART last column
func HeadPerUnit(each units.AnimalUnits) (float64, error) {
	return units.Answer(&formulaHeadPerUnit, 1/float64(each), float64(each))
}

// TotalUnits returns the animal units of a herd: each class's head times the
// animal units of one of them, summed.
//
// Errors: a *units.DomainError where the two lists differ in length, or a number
// is negative or not a number
//
// Check: TestTotalUnits, TestTotalUnitsRefuses
//
// Source: PSU-FOUR-STEPS step 1
func TotalUnits(head []float64, each []units.AnimalUnits) (units.AnimalUnits, error) {
	nan := units.AnimalUnits(math.NaN())
	if err := sameLength(len(head), len(each)); err != nil {
		return nan, err
	}
	total := 0.0
	for i := range head {
		part, err := units.Answer(&partOfTotal, head[i]*float64(each[i]), head[i], float64(each[i]))
		if err != nil {
			return nan, err
		}
		total += part
	}
	return units.Answer(&sumOfTotal, units.AnimalUnits(total))
}

// A list is outside what a doc comment can declare, so these guards stand here.
var (
	anyNumber   = units.Limits{Low: 0, High: math.Inf(1), LowOf: -1, HighOf: -1}
	partOfTotal = units.Formula{Name: "herd.TotalUnits", Source: "PSU-FOUR-STEPS", Arguments: []units.Argument{
		{Name: "head", Factor: 1, Domain: anyNumber},
		{Name: "each", Unit: "AU", Factor: 1, Domain: anyNumber},
	}}
	sumOfTotal = units.Formula{Name: "herd.TotalUnits", Source: "PSU-FOUR-STEPS"}
)

// sameLength refuses lists of different lengths.
func sameLength(want, got int) error {
	lists := units.Formula{Name: "herd.TotalUnits", Source: "PSU-FOUR-STEPS", Arguments: []units.Argument{
		{Name: "len(each)", Factor: 1, Domain: units.Limits{Low: float64(want), High: float64(want), LowOf: -1, HighOf: -1}},
	}}
	_, err := units.Answer(&lists, 0.0, float64(got))
	return err
}

// UnitDefinition is whose animal unit is meant, by the feed it wants in a day.
type UnitDefinition int

// The definitions of an animal unit's daily feed.
const (
	UnitTwentyFivePounds UnitDefinition = iota + 1 // 25 lb of dry matter
	UnitTwentySixPounds                            // 26 lb, oven dry
	UnitThirtyPounds                               // 30 lb, air dry
)

// UnitDemand returns what one animal unit wants in a day by a stated definition.
//
// Table: 25 lb, 26 lb or 30 lb a day
//
// Where:
//   - definition: whose unit it is
//
// Note: the sources disagree. 25 lb of dry matter is Penn State's and SDSU's;
// 26 lb is oven dry with NDMC-AU and OSU-PSS-2871, and 90 % dry with NEB-AUM;
// 30 lb is the same 26 lb air dry with NDMC-AU, and is used as dry matter, with
// room for waste, by UMAINE-LESSON-5. Choose one and keep to it: the month
// differs by a fifth.
//
// Source: PSU-STAY 25 lb; OSU-PSS-2871 and NDMC-AU 26 lb; UMAINE-LESSON-5 30 lb
func UnitDemand(definition UnitDefinition) (units.Demand, error) {
	return units.Answer(&formulaUnitDemand, unitDemand(definition), float64(definition))
}

// UnitMonth returns what one animal unit wants in a month, or any other time,
// by a stated definition.
//
// Table: the day's feed of UnitDemand times the days
//
// Uses: UnitDemand
//
// Where:
//   - definition: whose unit it is
//   - days in days: length of the month, 30 as the extension services reckon; >= 0
//
// Source: MANITOBA-AUM 780 lb; SDSU-AUM 750 lb; SCS-COLORADO-M240 900 lb
func UnitMonth(definition UnitDefinition, days units.Days) (units.DryMatter, error) {
	feed := units.DryMatter(float64(unitDemand(definition)) * float64(days))
	return units.Answer(&formulaUnitMonth, feed, float64(definition), float64(days))
}

// DrySheepRate returns the stocking rate of any stock told in dry sheep: one
// for each 50 kg of live weight.
//
// Formula: head * weight / 50 / area
//
// Where:
//   - head: number of animals; >= 0
//   - weight in kg: live weight of one; >= 0
//   - area in ha: land that can be grazed, not all that is held; > 0
//
// Note: a quick check by weight. Stock that grow or give milk count more than
// their weight in the tables of dry sheep equivalents: a breeding ewe 1.5
// [SA-DSE], a ewe with lambs at foot 3.3 [CRADLE-COAST-DSE].
//
// Source: CRADLE-COAST-DSE quick check
func DrySheepRate(head float64, weight units.LiveWeight, area units.Area) (units.HeadRate, error) {
	rate := head * float64(weight) / float64(50*units.LiveKilogram) / float64(area)
	return units.Answer(&formulaDrySheepRate, units.HeadRate(rate), head, float64(weight), float64(area))
}
