package rainfall

import (
	"math"

	"example.org/soum/units"
)

// EffectiveRule is a rule for how much of a month's rain the plants can use.
type EffectiveRule int

// The rules.
const (
	EffectiveShort      EffectiveRule = iota + 1 // P (125 - 0.2 P) / 125 up to 250 mm, 125 + 0.1 P above
	EffectiveManual                              // 0.6 P - 10 up to 75 mm, 0.8 P - 25 above, never below 0
	EffectiveDependable                          // 0.6 P - 10 up to 70 mm, 0.8 P - 24 above, never below 0
	EffectiveSeventy                             // 70 % of it
	EffectiveLessFive                            // 75 % of what is over 5 mm
)

// EffectiveRain returns how much of a month's rain the plants can use, by one of
// the plain rules.
//
// Table: short P (125 - 0.2 P) / 125 up to 250 mm and 125 + 0.1 P above; manual 0.6 P
// - 10 up to 75 mm and 0.8 P - 25 above; dependable 0.6 P - 10 up to 70 mm and 0.8 P
// - 24 above; seventy 0.7 P; less five 0.75 (P - 5); never below 0
//
// Where:
//   - by: the rule
//   - rain in mm: of the month; >= 0
//
// Note: the rules disagree, widely in dry months: of 60 mm they leave 54, 26, 26, 42
// and 41. The pair of lines with 25 is about with breaks at 75, 100 and 250 mm: at 75
// alone the lines meet (35 and 35 mm), and that one is used; the pair with 24 meets
// at 70 (32 and 32). The short form is said to be for dry places of about 250 mm a
// year. Where the plants' use is known: EffectiveByUse. For a single rain:
// EffectiveOfStorm.
//
// Source: FAO56-PACKAGE the short form; FAO-MANUAL-3 the pair with 25; FAO-DEPENDABLE
// the pair with 24; EFFECTIVE-PLAIN the last two
func EffectiveRain(by EffectiveRule, rain units.RainDepth) (units.RainDepth, error) {
	depth := units.RainDepth(effectiveMillimetres(by, float64(rain/units.RainMillimetre))) * units.RainMillimetre
	return units.Answer(&formulaEffectiveRain, depth, float64(by), float64(rain))
}

func effectiveMillimetres(by EffectiveRule, rain float64) float64 {
	switch {
	case by == EffectiveShort && rain <= 250:
		return rain * (125 - 0.2*rain) / 125
	case by == EffectiveShort:
		return 125 + 0.1*rain
	case by == EffectiveManual && rain > 75:
		return 0.8*rain - 25
	case by == EffectiveDependable && rain > 70:
		return 0.8*rain - 24
	case by == EffectiveManual || by == EffectiveDependable:
		return max(0, 0.6*rain-10)
	case by == EffectiveSeventy:
		return 0.7 * rain
	}
	return max(0, 0.75*(rain-5))
}

// EffectiveByUse returns how much of a month's rain the plants can use, by what they
// use and what the root zone stores: never more than the rain, nor than the use.
//
// Empirical: max(min(min((0.531747 + 0.295164*storage - 0.057697*pow(storage, 2) + 0.003804*pow(storage, 3)) * (0.70917*pow(rain, 0.82416) - 0.11556) * pow(10, 0.02426*use), rain), use), 0)
//
// Where:
//   - rain in in: of the month; >= 0
//   - use in in: by the plants in the month (CropWater); >= 0
//   - storage in in: half of the available water of the root zone; >= 0
//   - result in in: effective rain
//
// Note: agrees with an account of soil water on soil that drains well, not on soil
// that drains badly, nor in wet years (PATWARDHAN-1990).
//
// Source: SCS-NEH-623 eq. 2-84 and 2-85
func EffectiveByUse(rain, use, storage units.RainDepth) (units.RainDepth, error) {
	inches, used, held := float64(rain/units.RainInch), float64(use/units.RainInch), float64(storage/units.RainInch)
	factor := 0.531747 + 0.295164*held - 0.057697*held*held + 0.003804*held*held*held
	depth := factor * (0.70917*math.Pow(inches, 0.82416) - 0.11556) * math.Pow(10, 0.02426*used)
	depth = max(min(min(depth, inches), used), 0)
	return units.Answer(&formulaEffectiveByUse, units.RainDepth(depth)*units.RainInch, float64(rain), float64(use), float64(storage))
}

// EffectiveOfStorm returns how much of a single rain the plants can use: nothing of
// the first tenth of an inch, all to one inch, two thirds to two inches, and
// nothing of what is over.
//
// Empirical: max(min(rain, 1) - 0.1, 0) + max(min(rain, 2) - 1, 0)*2/3
//
// Where:
//   - rain in in: of one rain; >= 0
//   - result in in: effective rain
//
// Note: a rule of irrigation practice; no more than 1.567 in of any rain count.
//
// Source: TAMU-RAIN
func EffectiveOfStorm(rain units.RainDepth) (units.RainDepth, error) {
	inches := float64(rain / units.RainInch)
	depth := max(min(inches, 1)-0.1, 0) + max(min(inches, 2)-1, 0)*2/3
	return units.Answer(&formulaEffectiveOfStorm, units.RainDepth(depth)*units.RainInch, float64(rain))
}
