package herd

import (
	"slices"
	"strconv"

	"example.org/soum/units"
)

// WaterScale is what is measured in stock water and whose limits are used. All are
// in ppm, which in water is mg/L.
type WaterScale int

// The scales of stock water.
const (
	MontanaSolids              WaterScale = iota + 1 // total dissolved solids, Montana State
	DakotaSolids                                     // total dissolved solids, North Dakota State
	SaskatchewanSolids                               // total dissolved solids, Saskatchewan
	LaboratorySolids                                 // total dissolved solids, a US laboratory
	DakotaSulfate                                    // sulfate, North Dakota State
	DakotaSulfateEarlier                             // sulfate, North Dakota State 2008
	SouthDakotaSulfate                               // sulfate, South Dakota State 2012
	CanadianSulfate                                  // sulfate, western Canada 2017
	SaskatchewanSulfate                              // sulfate, Saskatchewan
	LaboratorySulfate                                // sulfate, a US laboratory
	SouthDakotaNitrateNitrogen                       // nitrate as nitrogen, NO3-N, South Dakota State
	SouthDakotaNitrate                               // nitrate as NO3, South Dakota State
	MinnesotaNitrateNitrogen                         // nitrate as nitrogen, NO3-N, Minnesota
)

// Drinkers is the sort of stock that is to drink the water.
type Drinkers int

// The sorts of drinkers.
const (
	DrinkersGrown    Drinkers = iota + 1 // grown cattle, sheep, pigs and horses, neither pregnant nor in milk
	DrinkersBreeding                     // such stock pregnant or in milk
	DrinkersYoung                        // calves
	DrinkersPoultry                      // chickens, turkeys, geese, ducks
)

// WaterGrade is a class of stock water.
type WaterGrade int

// The classes of stock water, the better first.
const (
	GradeGood         WaterGrade = iota + 1 // below every limit
	GradeAnalyse                            // have it analysed
	GradeLoosens                            // may loosen the dung
	GradeSatisfactory                       // satisfactory
	GradeReasonable                         // reasonable
	GradePoor                               // poor
	GradeRisk                               // considerable risk, or poorer gain: avoid
	GradeUnfit                              // over the limit: do not use
)

// WaterLimit is a row of the limits of stock water.
type WaterLimit struct {
	// Scale is what is measured and whose limit it is.
	Scale WaterScale `json:"scale"`
	// For is the sort of stock.
	For Drinkers `json:"for"`
	// From is where the class begins, in ppm.
	From float64 `json:"from"`
	// Over tells that the figure itself does not yet belong to the class.
	Over bool `json:"over"`
	// Grade is the class.
	Grade WaterGrade `json:"grade"`
	units.Printed
}

// WaterLimits gives the limits of stock water, as a copy.
//
// Check: TestWaterLimits
//
// Source: ours: a collection, each figure with the source and mark on its row
func WaterLimits() []WaterLimit { return slices.Clone(waterLimits) }

// WaterQuality gives the class of stock water by one scale for one sort of stock.
//
// It is a sieve, not an analysis: salts, sulfate, nitrate and algae come together
// or alone, and the feed adds to them. Have water analysed before stock depend on
// it, at any doubt, and where a meter shows 2,500 to 3,000 ppm or more
// (MONTANA-SOLIDS); sulfate counts together with the sulfur of the feed
// (DietSulfur). Sick or dying stock, or water with a bloom on it: off the water at
// once, and call a vet. The sources differ: sulfate is over the limit from 1,000,
// 1,500, over 2,000 or over 3,000 ppm on; solids from 3,000 or 5,000. Where a source
// is for grown stock alone, none is given for other sorts.
//
// Where:
//   - amount: in ppm; >= 0
//   - scale: what is measured, and whose limits
//   - stock: which sort is to drink it
//
// Errors: a *units.ParseError that lists the sorts of stock that the scale has
// limits for
//
// Source: MONTANA-SOLIDS; NDSU-STOCK-WATER; NDSU-SULFATE-2008; SRC-STOCK-WATER;
// SPECTRUM-WATER; SDSU-SULFATE-2012; CANADA-SULFATE-2017; SDSU-NITRATE-WATER;
// UMN-NITRATE-WATER
func WaterQuality(amount float64, scale WaterScale, stock Drinkers) (WaterGrade, error) {
	if _, err := units.Answer(&formulaWaterQuality, amount, amount, float64(scale), float64(stock)); err != nil {
		return 0, err
	}
	grade, has := WaterGrade(0), []string(nil)
	for _, limit := range waterLimits {
		switch {
		case limit.Scale != scale:
			continue
		case limit.For != stock:
			has = append(has, limit.For.String())
			continue
		case grade == 0:
			grade = GradeGood
		}
		if amount > limit.From || amount == limit.From && !limit.Over {
			grade = limit.Grade
		}
	}
	if grade == 0 {
		problem := "the scale " + strconv.Quote(scale.String()) + " has no limits for this sort"
		return 0, formulaWaterQuality.NoRow("stock", stock.String(), problem, slices.Compact(has), amount, float64(scale), float64(stock))
	}
	return grade, nil
}

// DissolvedSolids returns the total dissolved solids of water in ppm from what a
// conductivity meter shows.
//
// Formula: conductivity * 640
//
// Where:
//   - conductivity: in mmho/cm, which is mS/cm or dS/m; >= 0
//
// Note: about: the factor goes with the salts. MONTANA-SOLIDS prints 1,000 ppm
// beside 1.5 mmho/cm and 10,000 beside 16, where this gives 960 and 10,240. Where
// the class hangs on it, have the water analysed.
//
// Source: SERVITECH-WATER 0.64 of the conductivity in µmho/cm
func DissolvedSolids(conductivity float64) (float64, error) {
	return units.Answer(&formulaDissolvedSolids, conductivity*solidsOfConductivity, conductivity)
}

// solidsOfConductivity is 0.64 for µmho/cm, a thousand times that for mmho/cm.
const solidsOfConductivity = 640

// sulfurOfSulfate is S over SO4, 32.06 over 96.06.
const sulfurOfSulfate = 0.334

// DietSulfur returns the sulfur of feed and water together as a share of the dry
// matter eaten.
//
// Formula: (sulfate / 1000 * water * 0.334 + feed * sulfur) / feed
//
// Where:
//   - sulfate: sulfate of the water in ppm; >= 0
//   - water in gal/day: water drunk; >= 0
//   - feed in lb/day: dry matter eaten; > 0
//   - sulfur in %: sulfur of the feed's dry matter; 0 to 100
//
// Note: cattle on forage should not get more than 0.5 % [NDSU-SULFATE-2008]; more
// can cost them their eyesight and their lives. They drink most in the heat: reckon
// with PeakWater, and ask a vet or an adviser.
//
// Source: NDSU-SULFATE-2008 that both count; the sum is ours: a ppm is a gram in a
// cubic metre, and SO4 holds 0.334 of S by the atomic weights
func DietSulfur(sulfate float64, water units.WaterRate, feed units.Demand, sulfur units.Fraction) (units.Fraction, error) {
	drunk := sulfate / 1000 * float64(water) * sulfurOfSulfate
	share := (drunk + float64(feed)*float64(sulfur)) / float64(feed)
	return units.Answer(&formulaDietSulfur, units.Fraction(share), sulfate, float64(water), float64(feed), float64(sulfur))
}
