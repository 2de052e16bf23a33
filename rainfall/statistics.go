package rainfall

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"time"

	"gonum.org/v1/gonum/stat"

	"example.org/soum/units"
)

// QuantileRule is a rule of what stands between the ranked depths of a record.
// Hydrologists and statistics programs differ; over a hundred years the two move
// a decile by up to 7 mm.
type QuantileRule int

// The rules.
const (
	RuleWeibull QuantileRule = iota + 1 // by m ÷ (n + 1), type 6 of R
	RuleSpread                          // by (m - 1) ÷ (n - 1), type 7 of R and its default
)

// Quantile gives the depth of rain that a share of the years does not exceed.
//
// Method: the depths in their order, a straight line between neighbours: by
// RuleWeibull the place (n + 1) × share, below the first the first and above the
// last the last; by RuleSpread the place 1 + (n - 1) × share. A gap is left out.
//
// Errors: a *document.Error with the place where there is no depth at all, or one below
// zero or above 1,000 m; a *units.DomainError for a share outside 0 to 100 %; a
// *units.ParseError that lists the rules
//
// Check: TestDecilesOfFortCollins, TestQuantileProperties, TestStatisticsRefuse
//
// Source: RFOUNDATION-QUANTILE
func Quantile(depths []units.RainDepth, share units.Fraction, rule QuantileRule) (units.RainDepth, error) {
	const function = "rainfall.Quantile"
	nothing := units.RainDepth(math.NaN())
	sorted, err := ranked(depths, 1)
	switch {
	case err != nil:
		return nothing, err
	case !(share >= 0 && share <= 1):
		return nothing, units.OutOfDomain(function, 2, shareArgument(units.Between(0, 1, "")), float64(share))
	case rule < RuleWeibull || rule > RuleSpread:
		return nothing, noWord(function, "rule", 3, "rainfall.QuantileRule", rule, namesQuantileRule[1:])
	}
	return quantile(sorted, float64(share), rule), nil
}

func shareArgument(limits units.Limits) units.Argument {
	return units.Argument{Name: "share", Unit: "%", Factor: float64(units.Percent), Domain: limits}
}

func quantile(sorted []units.RainDepth, share float64, rule QuantileRule) units.RainDepth {
	n := len(sorted)
	place := float64(n+1)*share - 1 // of the first being 0
	if rule == RuleSpread {
		place = float64(n-1) * share
	}
	below := int(math.Floor(place))
	switch {
	case below < 0:
		return sorted[0]
	case below >= n-1:
		return sorted[n-1]
	}
	return sorted[below] + units.RainDepth(place-float64(below))*(sorted[below+1]-sorted[below])
}

// Deciles gives the nine depths that part a record into ten.
//
// Method: Quantile at 10, 20 … 90 %
//
// Errors: those of Quantile, without a share
//
// Check: TestDecilesOfFortCollins, TestStatisticsRefuse
//
// Source: GIBBS-DECILES deciles for drought; RFOUNDATION-QUANTILE the rules
func Deciles(depths []units.RainDepth, rule QuantileRule) ([9]units.RainDepth, error) {
	var deciles [9]units.RainDepth
	sorted, err := ranked(depths, 1)
	if err != nil {
		return unknown9, err
	}
	if rule < RuleWeibull || rule > RuleSpread {
		return unknown9, noWord("rainfall.Deciles", "rule", 2, "rainfall.QuantileRule", rule, namesQuantileRule[1:])
	}
	for i := range deciles {
		deciles[i] = quantile(sorted, float64(i+1)/10, rule)
	}
	return deciles, nil
}

// DecileOf gives the decile, 1 to 10, in which a depth of rain lies.
//
// Method: one more than the deciles that it exceeds, so that a depth on a
// boundary is of the drier part
//
// Errors: a *units.DomainError for a depth below zero or above 1,000 m; a
// *document.Error with the place for such a decile, or one that is below the one before
//
// Check: TestDecileOf
//
// Source: GIBBS-DECILES; ours: the boundary to the drier part
func DecileOf(depth units.RainDepth, deciles [9]units.RainDepth) (int, error) {
	if !finite(depth) {
		return 0, notRain("rainfall.DecileOf", "depth", 1, depth, someRain)
	}
	decile := 1
	for i, d := range deciles {
		path := func() string { return fmt.Sprintf("deciles[%d]", i) }
		if !finite(d) {
			return 0, wrongDepth(path(), d)
		}
		if i > 0 && d < deciles[i-1] {
			return 0, wrong(path(), millimetres(d), "is below the decile before it", "as much as that or more")
		}
		if depth > d {
			decile++
		}
	}
	return decile, nil
}

// Variation gives the coefficient of variation of a record: the standard
// deviation as a share of the mean.
//
// Method: the sample's deviation, by n - 1. A gap is left out.
//
// Note: above about 33 % herds are said to follow the rain and not the grass, and
// an average stocking rate then means little; most rangeland lies below
// (TYPOLOGY-VARIATION).
//
// Errors: a *document.Error with the place for fewer than two depths, no rain at all, a
// depth below zero or above 1,000 m
//
// Check: TestVariationOfFortCollins, TestStatisticsRefuse
//
// Source: definition: deviation over mean
func Variation(depths []units.RainDepth) (units.Fraction, error) {
	sorted, err := ranked(depths, 2)
	if err != nil {
		return units.Fraction(math.NaN()), err
	}
	most := sorted[len(sorted)-1]
	if most == 0 {
		return units.Fraction(math.NaN()), wrong("depths", "", "has no rain in any year, which nothing is a share of", "one depth or more above 0 mm")
	}
	parts := make([]float64, len(sorted)) // of the largest, so that no square is lost
	for i, d := range sorted {
		parts[i] = float64(d / most)
	}
	mean, deviation := stat.MeanStdDev(parts, nil)
	return units.Fraction(deviation / mean), nil
}

// ranked gives the depths in their order without the gaps, or tells why not.
func ranked(depths []units.RainDepth, least int) ([]units.RainDepth, error) {
	sorted := make([]units.RainDepth, 0, len(depths))
	for i, d := range depths {
		switch {
		case math.IsNaN(float64(d)):
		case !finite(d):
			return nil, wrongDepth(fmt.Sprintf("depths[%d]", i), d)
		default:
			sorted = append(sorted, d)
		}
	}
	if len(sorted) < least {
		return nil, wrong("depths", "a record of "+count(len(sorted), "known depth"), "is too short", strconv.Itoa(least)+" or more")
	}
	slices.Sort(sorted)
	return sorted, nil
}

// PlottingPosition is a rule for the chance of a rank in a record.
type PlottingPosition int

// The rules.
const (
	PositionWeibull    PlottingPosition = iota + 1 // m ÷ (n + 1)
	PositionHazen                                  // (2 m - 1) ÷ (2 n)
	PositionHarvesting                             // (m - 0.375) ÷ (n + 0.25), of water harvesting
	PositionCount                                  // m ÷ n, the plain count
)

// RankChance returns the chance that belongs to a rank in a record of so many
// years: of at least so much rain where the wettest year is first, of at most so
// much where the driest is.
//
// Method: m ÷ (n + 1) by Weibull, (2 m - 1) ÷ (2 n) by Hazen, (m - 0.375) ÷
// (n + 0.25) in water harvesting, m ÷ n by plain count
//
// Where:
//   - position: the rule
//   - rank: place in the order, from 1; 1 to years
//   - years: years of the record; >= 1
//
// Note: of 66 years the wettest has 1.5 % by Weibull, 0.76 % by Hazen. The plain
// count gives the last of the order 100 %, as if nothing beyond it could come.
//
// Source: WEIBULL-LAB Weibull; HAZEN-CLASS Hazen; MAKKONEN-DEBATE both;
// FAO-HARVESTING the rule of water harvesting, from memory; definition: the count
func RankChance(position PlottingPosition, rank, years float64) (units.Fraction, error) {
	return units.Answer(&formulaRankChance, units.Fraction(rankChance(position, rank, years)), float64(position), rank, years)
}

func rankChance(position PlottingPosition, rank, years float64) float64 {
	switch position {
	case PositionHazen:
		return (2*rank - 1) / (2 * years)
	case PositionHarvesting:
		return (rank - 0.375) / (years + 0.25)
	case PositionCount:
		return rank / years
	}
	return rank / (years + 1)
}

// ReturnPeriod returns after how many years, on average, something comes again
// that has a chance every year.
//
// Formula: 1 / chance
//
// Where:
//   - chance in %: in one year; > 0 and <= 100
//   - result: years
//
// Note: an average over a very long time. It says nothing of when: see
// AtLeastOnce.
//
// Source: HAZEN-CLASS a chance of 50 % is a return period of 2 years
func ReturnPeriod(chance units.Fraction) (float64, error) {
	return units.Answer(&formulaReturnPeriod, 1/float64(chance), float64(chance))
}

// AtLeastOnce returns the chance that something with a return period comes once
// or more in so many years.
//
// Formula: 1 - pow(1 - 1 / period, years)
//
// Where:
//   - period: return period in years; >= 1
//   - years: years looked at; >= 0
//
// Note: a drought of one year in ten has 65 % in ten years. Years are taken to
// know nothing of each other, which dry spells of several years deny.
//
// Source: definition: the years all without it have (1 - 1 ÷ period) to the power
// of their number
func AtLeastOnce(period, years float64) (units.Fraction, error) {
	return units.Answer(&formulaAtLeastOnce, units.Fraction(1-math.Pow(1-1/period, years)), period, years)
}

// ChanceAtLeast gives the chance that a year brings at least so much rain, by the
// years of a record.
//
// Method: RankChance of the number of years that had as much. Where none had, 0,
// and where all had by PositionCount, 1: the record then says only that it is
// rare, or usual. A gap is left out.
//
// Note: with depths of DayTotals it is the chance of so much by a date, with
// those of KeyTotals of so much in the key months.
//
// Errors: a *document.Error with the place where there is no depth at all, or one below
// zero or above 1,000 m; a *units.DomainError for such a depth to be asked about; a
// *units.ParseError that lists the rules
//
// Check: TestChanceAtLeast, TestStatisticsRefuse
//
// Source: WEIBULL-LAB; HAZEN-CLASS; definition: the count
func ChanceAtLeast(depths []units.RainDepth, depth units.RainDepth, position PlottingPosition) (units.Fraction, error) {
	const function = "rainfall.ChanceAtLeast"
	nothing := units.Fraction(math.NaN())
	sorted, err := ranked(depths, 1)
	switch {
	case err != nil:
		return nothing, err
	case !finite(depth):
		return nothing, notRain(function, "depth", 2, depth, someRain)
	case position < PositionWeibull || position > PositionCount:
		return nothing, noWord(function, "position", 3, "rainfall.PlottingPosition", position, namesPlottingPosition[1:])
	}
	below, _ := slices.BinarySearch(sorted, depth)
	had := len(sorted) - below
	if had == 0 {
		return 0, nil
	}
	return units.Fraction(rankChance(position, float64(had), float64(len(sorted)))), nil
}

// DryMonths is a run of months in which less than some share of normal fell.
type DryMonths struct {
	Year   int             `json:"year"`     // of its first month
	Month  int             `json:"month"`    // its first month
	Months int             `json:"months"`   // how many
	Rain   units.RainDepth `json:"rain_m"`   // fallen in the run
	Normal units.RainDepth `json:"normal_m"` // of the same months
}

// DryMonthRuns gives the runs of months that each had less than a share of their
// normal, in the order of time.
//
// Method: month by month; a missing month ends a run, and so does the last
//
// Note: a single wet month ends a run however deep the drought is: the index of
// several months, RainIndex, looks further back.
//
// Errors: a *units.DomainError for a share that is not above 0 or is not finite; those
// of KeyRainShare
//
// Check: TestDryMonthRuns, TestDryRunsRefuse
//
// Source: definition: months in a row
func DryMonthRuns(record []MonthlyRain, share units.Fraction, normals [12]units.RainDepth) ([]DryMonths, error) {
	if err := checkRecord(record); err != nil {
		return nil, err
	}
	if err := checkKeyMonths(nil, normals); err != nil {
		return nil, err
	}
	if !(share > 0) || math.IsInf(float64(share), 0) {
		return nil, units.OutOfDomain("rainfall.DryMonthRuns", 2, shareArgument(above(0)), float64(share))
	}
	runs := []DryMonths{}
	last := math.MinInt
	for _, r := range inTime(record) {
		normal := normals[r.Month-time.January]
		if !(r.Rain < normal*units.RainDepth(share)) {
			continue
		}
		if n := number(&r); len(runs) == 0 || n != last+1 {
			runs = append(runs, DryMonths{Year: r.Year, Month: int(r.Month)})
		}
		last = number(&r)
		run := &runs[len(runs)-1]
		run.Months++
		run.Rain += r.Rain
		run.Normal += normal
	}
	return runs, nil
}

// DryDays is a run of days with little or no rain.
type DryDays struct {
	First units.Date      `json:"first"`  // its first day
	Days  int             `json:"days"`   // how many
	Rain  units.RainDepth `json:"rain_m"` // fallen in the run
}

// DryDayRuns gives the runs of days that each had less rain than a depth, in the
// order of time.
//
// Method: day by day; a missing day ends a run, and so does the last
//
// Errors: a *units.DomainError for a depth that is not above 0, or above 1,000 m; those
// of MonthTotals
//
// Check: TestSeattleDryDays, TestDryRunsRefuse
//
// Source: definition: days in a row
func DryDayRuns(days []DailyRain, under units.RainDepth) ([]DryDays, error) {
	if err := checkDays(days); err != nil {
		return nil, err
	}
	if !finite(under) || under == 0 {
		limits := someRain
		limits.LowOpen = true
		return nil, notRain("rainfall.DryDayRuns", "under", 2, under, limits)
	}
	runs := []DryDays{}
	for i := range days {
		if days[i].Rain >= under {
			continue
		}
		if n := len(runs); n == 0 || int(days[i].Date)-int(runs[n-1].First) != runs[n-1].Days {
			runs = append(runs, DryDays{First: days[i].Date})
		}
		run := &runs[len(runs)-1]
		run.Days++
		run.Rain += days[i].Rain
	}
	return runs, nil
}
