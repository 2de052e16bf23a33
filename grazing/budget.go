package grazing

import (
	"time"

	"example.org/soum/units"
)

// GrazeableMass returns the dry matter that can be grazed in a period, what
// stands above the mass to be left and what grows meanwhile. Below nothing it
// is what is missing.
//
// Formula: mass - leave + growth * days
//
// Where:
//   - mass in kg/ha: dry matter standing at the start; >= 0
//   - leave in kg/ha: dry matter to be left at the end; >= 0
//   - growth in kg/ha/day: growth expected, below nothing where more dies than grows; any
//   - days in days: length of the period; >= 0
//
// Note: the mass to be left is the animals' safety as much as the grass's: the
// source keeps at least 1,500 kg green dry matter a hectare before ewes with
// twins. Ask an adviser for your stock.
//
// Source: AWI-MLA-8-4 worked example
func GrazeableMass(mass, leave units.Yield, growth units.Growth, days units.Days) (units.Yield, error) {
	grazeable := units.Yield(float64(mass) - float64(leave) + float64(float64(growth)*float64(days)))
	return units.Answer(&formulaGrazeableMass, grazeable, float64(mass), float64(leave), float64(growth), float64(days))
}

// HeadNeed returns the dry matter to set aside for one animal through a
// period.
//
// Formula: intake * days * (1 + spoilage)
//
// Where:
//   - intake in kg/day: dry matter the animal eats in a day; >= 0
//   - days in days: length of the period; >= 0
//   - spoilage in %: trampled and fouled, as a share of what is eaten; 0 to 100
//
// Note: the spoilage is added to what is eaten. Where a sheet gives waste as a
// share of what is offered, divide by one less the waste instead: 15 % one way
// is 13 % the other.
//
// Source: AWI-MLA-8-4 worked example; OSU-PSS-2871 animal-unit month and year
func HeadNeed(intake units.Demand, days units.Days, spoilage units.Fraction) (units.DryMatter, error) {
	need := units.DryMatter(float64(intake) * float64(days) * (1 + float64(spoilage)))
	return units.Answer(&formulaHeadNeed, need, float64(intake), float64(days), float64(spoilage))
}

// HeadPerLand returns the animals that each unit of land feeds through a
// period, exact and not rounded: round down.
//
// Formula: grazeable / need
//
// Where:
//   - grazeable in kg/ha: dry matter that can be grazed, as of GrazeableMass; >= 0
//   - need in kg: dry matter set aside for one animal, as of HeadNeed; > 0
//
// Source: AWI-MLA-8-4 worked example
func HeadPerLand(grazeable units.Yield, need units.DryMatter) (units.HeadRate, error) {
	rate := units.HeadRate(float64(grazeable) / float64(need))
	return units.Answer(&formulaHeadPerLand, rate, float64(grazeable), float64(need))
}

// GrowthLessNeed returns what grows beyond what is eaten, per area and day;
// below nothing, what the stand loses.
//
// Formula: growth - demand / area
//
// Where:
//   - growth in lb/ac/day: growth of the whole area; any
//   - demand in lb/day: dry matter the herd eats in a day; >= 0
//   - area in ac: all the land the herd lives off; > 0
//
// Source: OHIO-2012 worked example
func GrowthLessNeed(growth units.Growth, demand units.Demand, area units.Area) (units.Growth, error) {
	surplus := units.Growth(float64(growth) - float64(demand)/float64(area))
	return units.Answer(&formulaGrowthLessNeed, surplus, float64(growth), float64(demand), float64(area))
}

// CoverAfter returns the average cover of a farm after some days of growth
// and grazing. Below nothing, the grass ran out before.
//
// Formula: cover + (growth - demand / area) * days
//
// Where:
//   - cover in kg/ha: average dry matter standing over the whole farm; >= 0
//   - growth in kg/ha/day: average growth; any
//   - demand in kg/day: dry matter the herd eats in a day, bought feed taken off; >= 0
//   - area in ha: all the land; > 0
//   - days in days: how far to look ahead; >= 0
//
// Note: growth is held the same for all the days: look ahead by weeks, not by
// seasons.
//
// Source: definition: what was there, what grew, what was eaten; AWI-MLA-8-4 is its case without stock
func CoverAfter(cover units.Yield, growth units.Growth, demand units.Demand, area units.Area, days units.Days) (units.Yield, error) {
	after := units.Yield(float64(cover) + float64((float64(growth)-float64(demand)/float64(area))*float64(days)))
	return units.Answer(&formulaCoverAfter, after, float64(cover), float64(growth), float64(demand), float64(area), float64(days))
}

// BalanceCover returns the average cover a farm needs on the day when growth
// catches up with demand: paddocks stand evenly from just grazed to ready, so
// that half of a round's feed stands above the residual.
//
// Formula: rate * intake * round * 0.5 + residual
//
// Where:
//   - rate in head/ha: animals per area of the whole farm; >= 0
//   - intake in kg/day: dry matter one animal takes from pasture in a day; >= 0
//   - round in days: length of the round on that day; >= 0
//   - residual in kg/ha: dry matter left behind; >= 0
//
// Source: SIDDC-COVER worked example
func BalanceCover(rate units.HeadRate, intake units.Demand, round units.Days, residual units.Yield) (units.Yield, error) {
	cover := units.Yield(float64(rate)*float64(intake)*float64(round)*0.5 + float64(residual))
	return units.Answer(&formulaBalanceCover, cover, float64(rate), float64(intake), float64(round), float64(residual))
}

// BudgetMonth is one month of a feed budget.
type BudgetMonth struct {
	Month      time.Month      `json:"month"`         // 1 is January
	Supply     units.DryMatter `json:"supply_kg"`     // grown in the month and eatable
	Need       units.DryMatter `json:"need_kg"`       // wanted by the animals in the month
	Difference units.DryMatter `json:"difference_kg"` // supply less need, below nothing where feed is short
}

// monthGuard and yearGuard are the limits of MonthBalance, which takes tables
// and so has no limits written by the generator.
var (
	yearGuard = units.Formula{
		Name: "grazing.MonthBalance", Source: monthSource,
		Arguments: []units.Argument{
			{Name: "annual", Unit: "kg/ha", Factor: float64(units.KilogramPerHectare), Domain: atLeast(0)},
			{Name: "area", Unit: "ha", Factor: float64(units.Hectare), Domain: atLeast(0)},
			{Name: "use", Unit: "%", Factor: float64(units.Percent), Domain: between(0, 1)},
			{Name: "year", Factor: 1, Domain: between(1, 9999)},
			{Name: "sum of shares", Unit: "%", Factor: float64(units.Percent), Domain: between(0.9, 1.1)},
		},
	}
	monthGuard = units.Formula{
		Name: "grazing.MonthBalance", Source: monthSource,
		Arguments: []units.Argument{
			{Name: "shares", Unit: "%", Factor: float64(units.Percent), Domain: between(0, 1)},
			{Name: "demand", Unit: "kg/day", Factor: float64(units.KilogramPerDay), Domain: atLeast(0)},
		},
	}
)

const monthSource = "PSU-MONTHS"

// MonthBalance returns supply, need and their difference for the twelve months
// of a year, January first: the textbook budget. Supply is the year's yield ×
// the month's share × the share eaten × the area; need is the demand × the days
// of the month.
//
// Nothing is carried over: what June has too much, August does not get. The
// shares are used as they are, never rescaled, and printed ones rarely add up
// to 100 %; a row outside 90 to 110 % is refused. A grazing season carries grass
// over, loses some and stops regrowing where it is bitten too short: where it
// differs from this budget, follow the season.
//
// Errors: *units.DomainError names the first argument that is impossible.
//
// Check: TestMonthBalanceByHand, TestMonthBalanceRefuses
//
// Source: PSU-MONTHS the sum behind acres per animal unit by month, solved for the feed
func MonthBalance(annual units.Yield, shares [12]units.Fraction, area units.Area, use units.Fraction, demand [12]units.Demand, year int) ([]BudgetMonth, error) {
	sum := 0.0
	for i := range shares {
		if _, err := units.Answer(&monthGuard, 0.0, float64(shares[i]), float64(demand[i])); err != nil {
			return nil, err
		}
		sum += float64(shares[i])
	}
	eatable, err := units.Answer(&yearGuard, float64(annual)*float64(area)*float64(use), float64(annual), float64(area), float64(use), float64(year), sum)
	if err != nil {
		return nil, err
	}
	months := make([]BudgetMonth, 0, len(shares))
	for i := range shares {
		month := time.Month(i + 1)
		first, _ := units.NewDate(year, month, 1)
		supply := units.DryMatter(eatable * float64(shares[i]))
		need := units.DryMatter(float64(demand[i]) * float64(first.DaysInMonth()))
		months = append(months, BudgetMonth{Month: month, Supply: supply, Need: need, Difference: supply - need})
	}
	return months, nil
}

func atLeast(low float64) units.Limits {
	return units.Limits{Low: low, LowOf: -1, High: inf, HighOf: -1}
}

func between(low, high float64) units.Limits {
	return units.Limits{Low: low, LowOf: -1, High: high, HighOf: -1}
}
