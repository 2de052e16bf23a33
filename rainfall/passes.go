package rainfall

import (
	"slices"

	"example.org/soum/units"
)

// The two rules of Passes and the gap between them, which no source covers.
const (
	dryRuleEnds    = 25 * units.RainInch
	wetRuleBegins  = 30 * units.RainInch
	dryRainPerPass = 10 * units.RainInch
	wetRainPerPass = 7 * units.RainInch
)

// Passes returns how often in a year a pasture in average or good condition can
// be grazed, by the rain of the year.
//
// Common practice, with no agreed source: under 10 in hardly any grazing without
// added water, from 10 to 25 in one pass for 10 in, from about 30 in one pass for
// 7 in. A fraction is a share of the land grazed once more. From 25 to 30 in
// nothing is said: the straight line between the two ends stands there, beside a
// range error; so does one pass for 10 in below 10 in.
//
// Empirical:
//
//	rain / 10 when rain <= 25
//	2.5 + (rain - 25) * (30/7 - 2.5) / 5 when rain <= 30
//	rain / 7
//
// Where:
//   - rain in in: rain of the year, with the water given; >= 0; >= 10 [common practice]
//   - result: passes in the year
//
// Note: a first rough number only. Print knows 14 in for the one cut of alfalfa
// on cold dryland (IDAHO-DRYLAND) and 4 in for each of five cuts of irrigated
// bermudagrass (CLOVIS-2006): warmth and length of season limit as much as rain,
// see PassesBySeason. The rule needs many paddocks and says nothing of three or
// four (HFG-CYCLES).
//
// Source: HFG-CYCLES for 10 and 7 in and their limits 25 and 30; common practice
// for the limit of 10 in; ours: the line across the gap
func Passes(rain units.RainDepth) (float64, error) {
	passes, err := units.Answer(&formulaPasses, passes(rain), float64(rain))
	if rain > dryRuleEnds && rain < wetRuleBegins {
		err = formulaPasses.Gap(0, float64(rain), float64(dryRuleEnds), float64(wetRuleBegins), "HFG-CYCLES")
	}
	return passes, err
}

func passes(rain units.RainDepth) float64 {
	if rain <= dryRuleEnds {
		return float64(rain / dryRainPerPass)
	}
	if rain >= wetRuleBegins {
		return float64(rain / wetRainPerPass)
	}
	from := float64(dryRuleEnds / dryRainPerPass)
	to := float64(wetRuleBegins / wetRainPerPass)
	return from + (to-from)*float64((rain-dryRuleEnds)/(wetRuleBegins-dryRuleEnds))
}

// RotationDays returns the length of a rotation that lets the grass form so many
// leaves between two grazings.
//
// Formula: leaf * leaves
//
// Where:
//   - leaf in days: time in which one leaf appears; > 0
//   - leaves: leaves to be formed before the next grazing; > 0; 2 to 3 [DAIRYNZ-LEAF]
//
// Note: for ryegrass, whose fourth leaf begins the death of the first. One day of
// the rotation grazes 1 ÷ rotation of the land.
//
// Source: AGVIC-LEAF; DAIRYNZ-LEAF
func RotationDays(leaf units.Days, leaves float64) (units.Days, error) {
	rotation := units.Days(float64(leaf) * leaves)
	return units.Answer(&formulaRotationDays, rotation, float64(leaf), leaves)
}

// PassesBySeason returns how often the length of the season lets the land be
// grazed.
//
// Formula: season / rotation
//
// Where:
//   - season in days: days in which the pasture grows; >= 0
//   - rotation in days: days from one grazing of a place to the next; > 0
//
// Note: warmth and day length are in the two lengths, rain is not: see Passes.
//
// Source: definition: the rotations that fit into the season
func PassesBySeason(season, rotation units.Days) (float64, error) {
	passes := float64(season) / float64(rotation)
	return units.Answer(&formulaPassesBySeason, passes, float64(season), float64(rotation))
}

// RainForPasses returns the rain of a year that Passes wants for so many passes.
//
// Empirical:
//
//	passes * 10 when passes <= 2.5
//	25 + (passes - 2.5) * 5 / (30/7 - 2.5) when passes <= 30/7
//	passes * 7
//
// Where:
//   - passes: passes in the year; >= 0; >= 1 [common practice]
//   - result in in: rain of the year, with the water given
//
// Errors: a *units.RangeError beside the value between 2.5 and 4.29 passes, where
// no rule is stated
//
// Note: the inverse of Passes, with all its doubts. ChanceAtLeast of this depth is
// the chance of enough passes.
//
// Source: HFG-CYCLES; common practice for the limit of one pass; ours: the line
// across the gap
func RainForPasses(passes float64) (units.RainDepth, error) {
	few, many := float64(dryRuleEnds/dryRainPerPass), float64(wetRuleBegins/wetRainPerPass)
	rain := units.RainDepth(passes) * wetRainPerPass
	switch {
	case passes <= few:
		rain = units.RainDepth(passes) * dryRainPerPass
	case passes < many:
		rain = dryRuleEnds + units.RainDepth((passes-few)/(many-few))*(wetRuleBegins-dryRuleEnds)
	}
	got, err := units.Answer(&formulaRainForPasses, rain, passes)
	if passes > few && passes < many {
		err = formulaRainForPasses.Gap(0, passes, few, many, "HFG-CYCLES")
	}
	return got, err
}

// RainPerPass returns the water of a season for each pass or cut.
//
// Formula: water / passes
//
// Where:
//   - water in in: rain and irrigation of the season; >= 0
//   - passes: grazings or cuts; > 0
//
// Note: measured figures run from 4 in (PassRows) where warmth and water are there
// to 14 in where neither is, the rule of Passes has 7 and 10.
//
// Source: definition: water over passes
func RainPerPass(water units.RainDepth, passes float64) (units.RainDepth, error) {
	return units.Answer(&formulaRainPerPass, water/units.RainDepth(passes), float64(water), passes)
}

// PassesAdded returns how many passes irrigation adds by the rule of Passes.
//
// Uses: Passes
//
// Method: Passes of rain and irrigation less Passes of rain
//
// Where:
//   - rain in in: rain of the year; >= 0; >= 10 [common practice]
//   - irrigation in in: water given in the year; >= 0
//
// Errors: a *units.RangeError beside the value where the rain, or the rain with the
// water given, is between 25 and 30 in
//
// Note: the dry rule gives a pass for 10 in. Water given when it is warm goes
// further: PassRows has five cuts for 20 in.
//
// Source: HFG-CYCLES; common practice; ours: the difference
func PassesAdded(rain, irrigation units.RainDepth) (float64, error) {
	added, err := units.Answer(&formulaPassesAdded, passes(rain+irrigation)-passes(rain), float64(rain), float64(irrigation))
	if units.Impossible(err) {
		return added, err
	}
	for _, water := range [...]units.RainDepth{rain, rain + irrigation} {
		if water > dryRuleEnds && water < wetRuleBegins {
			return added, formulaPassesAdded.Gap(0, float64(water), float64(dryRuleEnds), float64(wetRuleBegins), "HFG-CYCLES")
		}
	}
	return added, err
}

// PassRow is what was seen somewhere of water and grazings or cuts.
type PassRow struct {
	// Name is lower case with hyphens.
	Name string `json:"name"`
	// Water is rain and irrigation, as a printed span; 0 where it is not printed.
	Water units.Span[units.RainDepth] `json:"water_m"`
	// Passes is the grazings or cuts in the year.
	Passes units.Span[float64] `json:"passes"`
	// Text is the circumstances.
	Text string `json:"text"`
	units.Printed
}

// PassRows gives what contradicts the rule of Passes, or bears it out, as a copy.
//
// Check: TestPassRows
//
// Source: ours: a collection, each row with its source and mark
func PassRows() []PassRow { return slices.Clone(passRows) }
