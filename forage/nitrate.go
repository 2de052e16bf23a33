package forage

import (
	"fmt"
	"slices"

	"example.org/soum/units"
)

// NitrateForm is what a laboratory counts when it tells nitrate.
type NitrateForm int

// The forms in which nitrate is told.
const (
	NitrateNitrogen  NitrateForm = iota + 1 // the nitrogen in nitrate, NO3-N
	NitrateIon                              // nitrate itself, NO3
	NitratePotassium                        // potassium nitrate, KNO3
)

// NitrateAs returns an amount of nitrate told in another form.
//
// Method: 1 part of nitrogen is 4.43 parts of nitrate and 7.2162 of potassium
// nitrate
//
// Where:
//   - amount in ppm: as the laboratory tells it; >= 0
//   - from: the form in which it is told
//   - to: the form wanted
//
// Note: the same feed is 1,000 ppm in one form and 4,430 in the other, and a wrong
// reading can kill: look for the form on the laboratory's sheet.
//
// Source: NEBRASKA-NITRATE 4.43, and 0.226 the other way; VCE-CONVERSIONS 7.2162;
// SDSU-NITRATE-WATER the limits of water in two forms
func NitrateAs(amount units.Concentration, from, to NitrateForm) (units.Concentration, error) {
	value := amount
	if from >= NitrateNitrogen && from <= NitratePotassium && to >= NitrateNitrogen && to <= NitratePotassium {
		value = amount * units.Concentration(nitrateParts[to-1]/nitrateParts[from-1])
	}
	return units.Answer(&formulaNitrateAs, value, float64(amount), float64(from), float64(to))
}

// NitrateScale is whose classes of nitrate in feed are used.
type NitrateScale int

// The scales of nitrate in feed, all for dry matter.
const (
	NitrateByClemson   NitrateScale = iota + 1 // Clemson University
	NitrateByDairyland                         // a laboratory, after five universities
	NitrateByServitech                         // a stricter laboratory
	NitrateByOklahoma                          // Oklahoma State, its two lowest classes
	NitrateByManitoba                          // Manitoba Agriculture, told as nitrate
)

// NitrateLevel is a class of nitrate in feed, by the words of the scales.
type NitrateLevel int

// The classes of nitrate.
const (
	LevelSafe            NitrateLevel = iota + 1 // safe by the scale
	LevelPregnantLimited                         // to be limited for pregnant stock
	LevelLimited                                 // to be limited for all stock
	LevelPregnantNone                            // to be limited, and not for pregnant stock at all
	LevelToxic                                   // potentially toxic
	LevelNormal                                  // normal
	LevelAboveNormal                             // the class above normal
	LevelVeryLow                                 // very low hazard
	LevelLow                                     // low hazard
	LevelMedium                                  // medium hazard
	LevelHigh                                    // high hazard
	LevelVeryHigh                                // very high hazard
	LevelExtreme                                 // extremely high hazard
	LevelModeratelySafe                          // moderately safe
	LevelDangerous                               // dangerous, often deadly
)

// NitrateStep is a row of the scales of nitrate in feed.
type NitrateStep struct {
	// Scale is the scale that the row is of.
	Scale NitrateScale `json:"scale"`
	// Form is the form in which the scale tells nitrate.
	Form NitrateForm `json:"form"`
	// From is the lowest amount of the class, in that form.
	From units.Concentration `json:"from"`
	// Level is the class.
	Level NitrateLevel `json:"level"`
	// Told says whether the scale tells the shares of the ration that follow; where
	// it does not, they are 0 and mean nothing.
	Told bool `json:"told"`
	// Pregnant is the largest share of the ration's dry matter for pregnant stock.
	Pregnant units.Span[units.Fraction] `json:"pregnant"`
	// Others is the largest share for stock that is not pregnant.
	Others units.Span[units.Fraction] `json:"others"`
	units.Printed
}

// NitrateSteps gives the scales of nitrate in feed, as a copy.
//
// Check: TestNitrateSteps
//
// Source: CLEMSON-NITRATE, DAIRYLAND-NITRATE, SERVITECH-NITRATE, OKLAHOMA-NITRATE,
// MANITOBA-NITRATE, as the row says
func NitrateSteps() []NitrateStep { return slices.Clone(nitrateSteps) }

// nitrateStep finds the class of an amount, where all three are sound. A scale printed
// in several forms is read in the form of the amount, any other after a change of form.
func nitrateStep(amount units.Concentration, form NitrateForm, scale NitrateScale) *NitrateStep {
	printed := slices.ContainsFunc(nitrateSteps, func(s NitrateStep) bool { return s.Scale == scale && s.Form == form })
	var found *NitrateStep
	for i := range nitrateSteps {
		step := &nitrateSteps[i]
		if step.Scale != scale || printed && step.Form != form {
			continue
		}
		// Nothing can fail: amount, form and scale are sound.
		if told, _ := NitrateAs(amount, form, step.Form); told >= step.From*(1-1e-12) {
			found = step
		}
	}
	return found
}

// NitrateClass gives the class of nitrate in the dry matter of a feed by one scale.
//
// Nitrate kills within hours and makes pregnant stock cast their young. The scales
// differ: half of the ration for pregnant stock begins at 700 ppm of nitrogen by
// one laboratory and at 1,000 by another; brassicas, small grains, sorghums,
// millets and weeds after drought, frost or much nitrogen are the common cases
// (in one survey 48 % of fresh brassicas were over the line, SARE-NITRATE). Send a
// sample to a laboratory before such a crop is grazed, never turn hungry stock
// onto it, reckon with the nitrate of the water too (see herd.WaterQuality), and
// let a vet or an adviser decide. The scales are for cattle that are well; lower
// limits hold for those that are weak, small, stressed or hungry.
//
// Note: an amount on a limit is taken into the stricter class: ours. Oklahoma's
// limits in the three forms do not convert into each other, so that its limit in
// the form of the amount is used.
//
// Where:
//   - amount in ppm: of the dry matter; >= 0
//   - form: in which it is told
//   - scale: whose classes
//
// Source: CLEMSON-NITRATE, DAIRYLAND-NITRATE, SERVITECH-NITRATE, OKLAHOMA-NITRATE,
// MANITOBA-NITRATE, as the scale says
func NitrateClass(amount units.Concentration, form NitrateForm, scale NitrateScale) (NitrateLevel, error) {
	if _, err := units.Answer(&formulaNitrateClass, amount, float64(amount), float64(form), float64(scale)); err != nil {
		return 0, err
	}
	return nitrateStep(amount, form, scale).Level, nil
}

// Carrying is whether an animal is with young.
type Carrying int

// Pregnant or not.
const (
	CarryingNone  Carrying = iota + 1 // not pregnant
	CarryingYoung                     // pregnant
)

// NitrateRation gives the largest share of a ration's dry matter that a feed with
// so much nitrate may be, by one scale.
//
// It is an upper bound from print and no promise: the cautions of NitrateClass
// hold. Mix the feed through, so that no animal picks its own share, and let stock
// get used to it over a week or two.
//
// Where:
//   - amount in ppm: of the dry matter; >= 0
//   - form: in which it is told
//   - scale: whose shares
//   - stock: with young or not
//   - end: of the printed span
//
// Errors: a *units.ParseError that lists the scales with a share, where this one tells
// none for the class, as Oklahoma and Manitoba for any and Servitech from 2,100 ppm on
//
// Source: CLEMSON-NITRATE, DAIRYLAND-NITRATE (its "less than half" is given as half),
// SERVITECH-NITRATE; MANITOBA-NITRATE for getting used to it
func NitrateRation(amount units.Concentration, form NitrateForm, scale NitrateScale, stock Carrying, end units.End) (units.Fraction, error) {
	arguments := [...]float64{float64(amount), float64(form), float64(scale), float64(stock), float64(end)}
	if got, err := units.Answer(&formulaNitrateRation, units.Fraction(0), arguments[:]...); err != nil {
		return got, err
	}
	step := nitrateStep(amount, form, scale)
	if !step.Told {
		problem := fmt.Sprintf("tells no share of the ration for the class %q: do not feed it before an adviser has seen the figures", step.Level)
		return noRow[units.Fraction](&formulaNitrateRation, "scale", scale.String(), problem, nitrateTold(amount, form), arguments[:]...)
	}
	if stock == CarryingYoung {
		return step.Pregnant.At(end), nil
	}
	return step.Others.At(end), nil
}

// nitrateTold lists the scales that tell a share of the ration for so much nitrate.
func nitrateTold(amount units.Concentration, form NitrateForm) []string {
	var told []string
	for scale := NitrateByClemson; scale <= NitrateByManitoba; scale++ {
		if nitrateStep(amount, form, scale).Told {
			told = append(told, scale.String())
		}
	}
	return told
}

// NitrateDilution returns the share of a mixture that a feed high in nitrate may
// be, so that the mixture holds no more than wanted.
//
// Formula: (wanted - low) / (high - low)
//
// Where:
//   - high in ppm: of the feed high in nitrate; > low
//   - low in ppm: of the feed it is mixed with, in the same form; >= 0
//   - wanted in ppm: of the mixture; low to high
//
// Note: the laboratory that prints the sum mixes down to 1,500 ppm of nitrogen for
// cattle. It is true of what is mixed through, not of two bales side by side. The
// cautions of NitrateClass hold.
//
// Source: AMAG-NITRATE
func NitrateDilution(high, low, wanted units.Concentration) (units.Fraction, error) {
	return units.Answer(&formulaNitrateDilution, units.Fraction((wanted-low)/(high-low)), float64(high), float64(low), float64(wanted))
}

// NitrateFeed returns how much dry matter of a feed brings an animal the load of
// nitrate that one laboratory calls safe, 1 g of nitrogen in it for 100 lb of weight
// and day.
//
// Empirical: weight / 100 / (nitrogen / 1000)
//
// Where:
//   - nitrogen in ppm: nitrate of the dry matter, told as nitrogen; > 0
//   - weight in lb: live weight of one animal; > 0
//   - result in kg/day: dry matter
//
// Note: water can bring as much again. The cautions of NitrateClass hold.
//
// Source: DAIRYLAND-NITRATE
func NitrateFeed(nitrogen units.Concentration, weight units.LiveWeight) (units.Demand, error) {
	grams := float64(weight/units.LivePound) / safeNitrateWeight
	feed := units.Demand(grams / (float64(nitrogen/units.PartPerMillion) / 1000))
	return units.Answer(&formulaNitrateFeed, feed, float64(nitrogen), float64(weight))
}
