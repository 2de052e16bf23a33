package grazing

import (
	"fmt"
	"math"
	"slices"

	"example.org/soum/units"
)

// RainYear is the kind of year that a rate of stocking is meant for.
type RainYear int

// The kinds of year.
const (
	YearBelow  RainYear = iota + 1 // drier than normal
	YearNormal                     // normal
	YearAbove                      // wetter than normal
)

// InitialRateRow is a row of the table of InitialRate.
type InitialRateRow struct {
	// Site is the ground: a survey's map unit, a condition class or a trial, lower
	// case with hyphens.
	Site string `json:"site"`
	// Year is the kind of year; normal where the source names none.
	Year RainYear `json:"year"`
	// Rate is the printed span of grazing taken from an area in a year.
	Rate units.Span[units.UseRate] `json:"rate"`
	// When says what the figure holds for.
	When string `json:"when"`
	// Source is a key of SOURCES.md with the place.
	Source string `json:"source"`
	// Mark is how the figure was come by.
	Mark string `json:"mark"`
}

// InitialRates gives the table of InitialRate, as a copy.
//
// Check: TestInitialRates
//
// Source: ours: a collection, each figure with the source and mark on its row
func InitialRates() []InitialRateRow { return slices.Clone(initialRates) }

// InitialRate gives the grazing that a source starts a piece of land with, at an
// end of its printed span: to begin with and to correct by what the grass shows.
//
// The animal-unit month is not one thing: Colorado's is 900 lb, others print 750
// to 870 (herd.UnitMonth); a rate goes with its source's month. Two Colorado
// sheets differ for the same condition (excellent 0.34 to 0.42 and 0.24), since
// their sites differ: neither is your land. A dry year gives 58 to 83 % of a normal
// one on the Montana units of the table, and 95 % on the wet one. A rate
// that was tried in a trial is no advice: on the blue grama the same grazing at a
// higher density gave less gain a head and a hectare [LAURIAULT-2023].
//
// Too many stock starve, eat poisonous plants and strip the ground. Start at the
// low end, look at the grass, and ask an adviser who knows the land.
//
// Where:
//   - site: as in InitialRates
//   - year: the kind of year that the rate is meant for
//   - end: of the printed span
//
// Errors: a *units.ParseError that lists the sites, or the years, that have a rate
//
// Source: NRCS-MONTANA-RATES, SCS-COLORADO-M240, SCS-COLORADO-326, SAMA-LAND,
// GILLEN-2004, GUNTER-2019, LAURIAULT-2023, ANDRADE-2022, as the row says
func InitialRate(site string, year RainYear, end units.End) (units.UseRate, error) {
	arguments := [...]float64{0, float64(year), float64(end)}
	var sites, years []string
	for _, row := range initialRates {
		switch {
		case row.Site == site && row.Year == year:
			return units.Answer(&formulaInitialRate, row.Rate.At(end), arguments[:]...)
		case row.Site == site:
			years = append(years, row.Year.String())
		}
		if !slices.Contains(sites, row.Site) {
			sites = append(sites, row.Site)
		}
	}
	if years != nil {
		problem := fmt.Sprintf("no rate of %q for such a year", site)
		return units.UseRate(math.NaN()), formulaInitialRate.NoRow("year", year.String(), problem, years, arguments[:]...)
	}
	return units.UseRate(math.NaN()), formulaInitialRate.NoRow("site", site, "no such site", sites, arguments[:]...)
}

// TameRate returns the rate of tame dryland pasture beside that of native range on
// the same soil.
//
// Formula: native * 1.5
//
// Where:
//   - native in AUM/ac: rate of native range, as of InitialRate; >= 0
//
// Note: Montana only; elsewhere ask locally.
//
// Source: NRCS-MONTANA-RATES
func TameRate(native units.UseRate) (units.UseRate, error) {
	return units.Answer(&formulaTameRate, native*1.5, float64(native))
}

// UseOfYield returns the grazing an area gives by its forage.
//
// Formula: yield * use / demand
//
// Where:
//   - yield in lb/ac: forage of the year; >= 0
//   - use in %: share of it that may be eaten; 0 to 100
//   - demand in lb/day: what the animal unit eats in a day, as of herd.UnitDemand; > 0
//
// Note: sources take 25 % of all that stands on range, 35 % of the palatable
// forage (Colorado), 50 % of it on reseeded land: the share and the forage it is a
// share of go together, and so does the animal unit, 25 to 30 lb a day by source.
//
// Source: COLORADO-MINE-REPORT forage × proper use ÷ lb per AUM; SCS-COLORADO-326
func UseOfYield(yield units.Yield, use units.Fraction, demand units.Demand) (units.UseRate, error) {
	rate := units.UseRate(float64(yield) * float64(use) / float64(demand))
	return units.Answer(&formulaUseOfYield, rate, float64(yield), float64(use), float64(demand))
}

// LandOfUse returns the land behind each animal-unit day of a rate: acres per AUM
// of AUM per acre. UseOfLand turns it round.
//
// Formula: 1 / rate
//
// Where:
//   - rate in AUM/ac: grazing per area; > 0
//
// Source: SCS-COLORADO-M240 the two columns of the condition table
func LandOfUse(rate units.UseRate) (units.LandPerUse, error) {
	return units.Answer(&formulaLandOfUse, units.LandPerUse(1/float64(rate)), float64(rate))
}

// UseOfLand returns the grazing per area of a rate told as land: AUM per acre of
// acres per AUM. LandOfUse turns it round.
//
// Formula: 1 / land
//
// Where:
//   - land in ac/AUM: land behind each unit of grazing; > 0
//
// Source: SCS-COLORADO-M240 the two columns of the condition table
func UseOfLand(land units.LandPerUse) (units.UseRate, error) {
	return units.Answer(&formulaUseOfLand, units.UseRate(1/float64(land)), float64(land))
}

// FeedForUse returns the feed behind an amount of grazing: what a loft must hold to
// take its place.
//
// Formula: use / 30 * month
//
// Where:
//   - use in AUM: grazing; >= 0
//   - month in lb: what an animal unit takes in a month of 30 days; >= 0
//
// Note: print runs from 750 to 900 lb for the month, of dry matter or air-dry: say
// which one you use.
//
// Source: NRCS-BRYAN-528 a year's feed, and a month's in tons of hay
func FeedForUse(use units.UnitDays, month units.DryMatter) (units.DryMatter, error) {
	feed := units.DryMatter(float64(use) / 30 * float64(month))
	return units.Answer(&formulaFeedForUse, feed, float64(use), float64(month))
}

// HeadForUse returns how many animals an amount of grazing carries for so long,
// exact and not rounded: round down.
//
// Formula: use / (each * days)
//
// Where:
//   - use in AUM: grazing on offer, as of Use; >= 0
//   - each in AU: one animal in animal units; > 0
//   - days in days: how long; > 0
//
// Source: SAMA-LAND about seven cows for six months
func HeadForUse(use units.UnitDays, each units.AnimalUnits, days units.Days) (float64, error) {
	head := float64(use) / (float64(each) * float64(days))
	return units.Answer(&formulaHeadForUse, head, float64(use), float64(each), float64(days))
}

// DaysForUse returns how many days a rate of grazing lasts at a density: the same
// grazing is a short stay of many or a long one of few.
//
// Formula: use / density
//
// Where:
//   - use in AUD/ha: grazing taken from an area; >= 0
//   - density in AU/ha: animal units on the area meanwhile; > 0
//
// Source: LAURIAULT-2023 35 AUD/ha at three densities, the days our arithmetic
func DaysForUse(use units.UseRate, density units.UnitRate) (units.Days, error) {
	return units.Answer(&formulaDaysForUse, units.Days(float64(use)/float64(density)), float64(use), float64(density))
}

// UseLost returns the grazing lost over the years on land that weeds or brush
// hold.
//
// Formula: rate * area * years * lost
//
// Where:
//   - rate in AUM/ac: grazing that the land would give in a year; >= 0
//   - area in ac: the land that they hold; >= 0
//   - years: how long; >= 0
//   - lost in %: share of the grazing that is lost there; 0 to 100
//
// Note: the share is not the share of the canopy. On land under 25 % leafy spurge
// the source's cattle lost 384 of 400 AUM, 96 %: they leave the whole stand alone.
// That 96 % is our division of its answer; for 0.2 AUM/ac it prints 192 of 200.
//
// Source: ARS-SPURGE worked example
func UseLost(rate units.UseRate, area units.Area, years float64, lost units.Fraction) (units.UnitDays, error) {
	use := units.UnitDays(float64(rate) * float64(area) * years * float64(lost))
	return units.Answer(&formulaUseLost, use, float64(rate), float64(area), years, float64(lost))
}

// SlopeReduction returns the share by which range on a slope is reckoned down for
// cattle.
//
// Table: nothing up to 10 %, 30 % up to 30 %, 60 % up to 60 %, all of it beyond
//
// Where:
//   - slope in %: fall over run; >= 0
//
// Note: the steps are from memory, only the threshold of 10 % was read: check
// before you rely on them. Cattle with collars on seven ranches used about a tenth
// more ground than the guide gives [MILLWARD-2020]; without this and the reduction
// for water six ways of setting a rate came out much too heavy, with both a tenth
// too light [HOLECHEK-1992]. Sheep and goats climb where cattle do not.
//
// Source: HOLECHEK-1988
func SlopeReduction(slope units.Fraction) (units.Fraction, error) {
	return units.Answer(&formulaSlopeReduction, stepOf(slopeSteps[:], slope), float64(slope))
}

// WaterReduction returns the share by which range is reckoned down for cattle by
// the distance to water.
//
// Table: nothing up to 1 mile, 50 % up to 2 miles, all of it beyond
//
// Where:
//   - distance in mi: to the nearest water; >= 0
//
// Note: from memory, only the threshold of 1.6 km was read: check before you rely
// on it. Cattle in southern New Mexico used pasture out to 3.5 miles [HERBEL-1967].
// On small pastures the useful distance is hundreds of feet: WalkLimit.
//
// Source: HOLECHEK-1988
func WaterReduction(distance units.Length) (units.Fraction, error) {
	return units.Answer(&formulaWaterReduction, stepOf(waterSteps[:], distance), float64(distance))
}

// step is one stair of a printed table: the share that holds up to a bound.
type step[Q ~float64] struct {
	upTo  Q
	share units.Fraction
}

// stepOf reads a table of stairs; beyond its last nothing is left.
func stepOf[Q ~float64](steps []step[Q], v Q) units.Fraction {
	for _, s := range steps {
		if v <= s.upTo {
			return s.share
		}
	}
	return units.Whole
}

// GrazedArea returns the land that counts when some of it is taken off for slope
// and some for water, one after the other.
//
// Formula: area * (1 - slope) * (1 - water)
//
// Where:
//   - area in ac: the land; >= 0
//   - slope in %: share taken off for slope, as of SlopeReduction; 0 to 100
//   - water in %: share taken off for the distance to water, as of WaterReduction; 0 to 100
//
// Note: for land with several slopes add up the parts. That the two are
// multiplied and not added is our reading.
//
// Source: HOLECHEK-1988, from memory; ours: the two reductions multiplied
func GrazedArea(area units.Area, slope, water units.Fraction) (units.Area, error) {
	left := units.Area(float64(area) * (1 - float64(slope)) * (1 - float64(water)))
	return units.Answer(&formulaGrazedArea, left, float64(area), float64(slope), float64(water))
}

// LandInUse returns the land left to graze in a year in which a part is rested
// whole and a part is deferred, that is held back until its plants have set seed.
//
// Formula: area * (1 - resting - deferred * (1 - resting) * part)
//
// Where:
//   - area in ac: all the land; >= 0
//   - resting in %: share of it not grazed that year; 0 to 100
//   - deferred in %: share of the rest that is held back; 0 to 100
//   - part in %: share of the season for which it is held back; 0 to 100
//
// Note: the answer is area weighted by time. What is deferred is eaten later and
// is poorer feed by then.
//
// Source: definition: land not grazed, and land grazed for a part of the season, taken off
func LandInUse(area units.Area, resting, deferred, part units.Fraction) (units.Area, error) {
	land := units.Area(float64(area) * (1 - float64(resting) - float64(float64(deferred)*(1-float64(resting))*float64(part))))
	return units.Answer(&formulaLandInUse, land, float64(area), float64(resting), float64(deferred), float64(part))
}

// PlanningRow is a row of the table of PlanningLand: what advisers of a region
// reckon with before anything was measured.
type PlanningRow struct {
	// Region is the place, lower case with hyphens.
	Region string `json:"region"`
	// Stock is the animal in words, lower case with hyphens.
	Stock string `json:"stock"`
	// Land is the printed span of land for each head.
	Land units.Span[units.Area] `json:"land"`
	// Days is how long it is for; 0 where the source does not say.
	Days units.Days `json:"days"`
	// When says what the figure holds for.
	When string `json:"when"`
	// Source is a key of SOURCES.md with the place.
	Source string `json:"source"`
	// Mark is how the figure was come by.
	Mark string `json:"mark"`
}

// PlanningRows gives the table of PlanningLand, as a copy.
//
// Check: TestPlanningRows
//
// Source: ours: a collection, each figure with the source and mark on its row
func PlanningRows() []PlanningRow { return slices.Clone(planningRows) }

// PlanningLand gives the land that a region's advisers reckon for so many head,
// at an end of the printed span. Low is the least land, so the most stock.
//
// These are first guesses over whole regions, from half an acre of Arkansas to ten
// and more of West Texas for one sheep or goat. Measured grass beats them:
// CarryingCapacity and the plan. A farm stocked by a figure from elsewhere runs
// out of grass, and hungry stock come to harm. Ask a local adviser.
//
// Where:
//   - region: as in PlanningRows
//   - stock: as in PlanningRows
//   - head: so many animals; >= 0
//   - end: of the printed span
//
// Errors: a *units.ParseError that lists the regions, or the stock, that have a figure
//
// Source: KSTATE-STOCKING, MISSOURI-5292, SHEEP101-LAND, ARKANSAS-COFFEY,
// OREGON-ACRES, MINN-PASTURE, ALABAMA-STOCKPILE, SMALLHOLDING-LU,
// TEAGASC-GUIDE, as the row says
func PlanningLand(region, stock string, head float64, end units.End) (units.Area, error) {
	arguments := [...]float64{0, 0, head, float64(end)}
	var regions, kinds []string
	for _, row := range planningRows {
		switch {
		case row.Region == region && row.Stock == stock:
			return units.Answer(&formulaPlanningLand, row.Land.At(end)*units.Area(head), arguments[:]...)
		case row.Region == region:
			kinds = append(kinds, row.Stock)
		}
		if !slices.Contains(regions, row.Region) {
			regions = append(regions, row.Region)
		}
	}
	if kinds != nil {
		problem := fmt.Sprintf("no figure of it for %q", region)
		return units.Area(math.NaN()), formulaPlanningLand.NoRow("stock", stock, problem, kinds, arguments[:]...)
	}
	return units.Area(math.NaN()), formulaPlanningLand.NoRow("region", region, "no such region", regions, arguments[:]...)
}
