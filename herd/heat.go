package herd

import (
	"math"
	"slices"
	"strconv"

	"example.org/soum/units"
)

// HeatForm is the formula of the temperature-humidity index.
type HeatForm int

// The forms of the index.
const (
	HeatFahrenheit HeatForm = iota + 1 // T - (0.55 - 0.55 RH)(T - 58), T in °F
	HeatCelsius                        // 0.8 T + RH (T - 14.4) + 46.4, T in °C
)

// HeatIndex returns the temperature-humidity index of stock, THI.
//
// Method: by the form in °F, T - (0.55 - 0.55 H) (T - 58); by the form in °C,
// 0.8 T + H (T - 14.4) + 46.4, with H the humidity as a share
//
// Where:
//   - form: of the two in use
//   - temperature in °C: of the air in the shade; any
//   - humidity in %: relative humidity; 0 to 100
//
// Note: the two forms agree within 0.2 where stock suffer. A print of the °C form
// under °F words is about. The index knows neither sun nor wind: HeatAdjusted.
//
// Source: CLEMSON-HEAT for the form in °F, itself from memory: it gives all but a
// few cells of that print's chart; VETHANDBOOK-HEAT the form in °C
func HeatIndex(form HeatForm, temperature units.Temperature, humidity units.Fraction) (float64, error) {
	degrees, damp := float64(temperature), float64(humidity)
	index := 0.8*degrees + damp*(degrees-14.4) + 46.4
	if form == HeatFahrenheit {
		warmth := temperature.Fahrenheit()
		index = warmth - (0.55-0.55*damp)*(warmth-58)
	}
	return units.Answer(&formulaHeatIndex, index, float64(form), degrees, damp)
}

// DewPointHeatIndex returns the temperature-humidity index from the dew point.
//
// Empirical: temperature + 0.36 * dew + 41.2
//
// Where:
//   - temperature in °C: of the air in the shade; any
//   - dew in °C: dew point; any
//
// Note: print has 78 at 31 °C and 40 % and at 27 °C and 80 %; by this form the
// second is 76.6, by both forms of HeatIndex it is 78.
//
// Source: DAIRY-AUSTRALIA-HEAT
func DewPointHeatIndex(temperature, dew units.Temperature) (float64, error) {
	return units.Answer(&formulaDewPointHeatIndex, float64(temperature)+0.36*float64(dew)+41.2, float64(temperature), float64(dew))
}

// HeatAdjusted returns the temperature-humidity index with wind and sun reckoned
// in.
//
// Empirical: 4.51 + index - 1.992 * wind + 0.0068 * sun
//
// Where:
//   - index: THI; any
//   - wind in m/s: speed of the wind; >= 0
//   - sun: radiation of the sun in W/m²; >= 0
//
// Note: fitted on feedlot cattle in the hours from 14 to 17.
//
// Source: MADER-2006
func HeatAdjusted(index float64, wind units.Speed, sun float64) (float64, error) {
	adjusted := 4.51 + index - 1.992*float64(wind/units.MetrePerSecond) + 0.0068*sun
	return units.Answer(&formulaHeatAdjusted, adjusted, index, float64(wind), sun)
}

// HeatScale is whose classes of the index are used.
type HeatScale int

// The scales.
const (
	SafetyIndex      HeatScale = iota + 1 // livestock safety index
	DairyIndex                            // dairy cows, stress from 72 on
	HighYieldIndex                        // dairy cows of high yield, stress from 68 on
	DairyClasses                          // dairy cows, three classes
	SlovenianClasses                      // an agrometeorological sheet
)

// HeatLevel is a class of heat.
type HeatLevel int

// The classes of heat, by the words of the scales.
const (
	HeatNone       HeatLevel = iota + 1 // below the lowest class
	HeatMild                            // mild
	HeatModerate                        // moderate
	HeatStressed                        // stress, without a class
	HeatSevere                          // severe
	HeatVerySevere                      // very severe
	HeatAlert                           // alert
	HeatDanger                          // danger
	HeatEmergency                       // emergency: do not work or ship stock
)

// HeatStep is a row of the scales of heat.
type HeatStep struct {
	// Scale is the scale that the row is of.
	Scale HeatScale `json:"scale"`
	// From is the lowest index of the class.
	From float64 `json:"from"`
	// Level is the class.
	Level HeatLevel `json:"level"`
	// Source is a key of SOURCES.md with the place.
	Source string `json:"source"`
	// Mark is how the figure was come by.
	Mark string `json:"mark"`
}

// HeatSteps gives the scales of heat, as a copy.
//
// Check: TestHeatSteps
//
// Source: ours: a collection, each figure with the source and mark on its row
func HeatSteps() []HeatStep { return slices.Clone(heatSteps) }

var (
	heatGuard = units.Formula{
		Name: "herd.HeatClass", Source: "CLEMSON-HEAT",
		Arguments: []units.Argument{{Name: "index", Factor: 1, Domain: units.Limits{Low: math.Inf(-1), High: math.Inf(1), LowOf: -1, HighOf: -1}}},
	}
	waterGuard = units.Formula{
		Name: "herd.WaterQuality", Source: "the source of the scale",
		Arguments: []units.Argument{{Name: "amount", Factor: 1, Domain: anyNumber}},
	}
)

// HeatClass gives the class of heat of an index, THI, by one scale. The index is
// rounded to a whole number first, as the scales are printed.
//
// Heat kills, and a low class is no promise: fat, black, old, sick and heavily
// milking stock suffer first, and nights without cooling add up. Give shade and
// water (PeakWater), handle stock early in the morning or not at all; an animal
// that pants with its mouth open is a case for the vet. In an emergency do not
// work or ship stock. The scales are of cattle, and differ: dairy cows are
// stressed from 72 on, those of high yield from 68; the three classes of dairy cows
// end at 89 in print, above which the highest is given all the same.
//
// Errors: a domain error where the index is not a number; a *units.ParseError for
// a scale that is none
//
// Source: CLEMSON-HEAT safety index; EXT-DAIRY-HEAT 72 and 68; EAGLE-HEAT three
// classes; SLOVENIA-HEAT
func HeatClass(index float64, scale HeatScale) (HeatLevel, error) {
	if _, err := units.Answer(&heatGuard, index, index); err != nil {
		return 0, err
	}
	if scale.String() == "" {
		return 0, noRow("herd.HeatScale", "scale "+strconv.Itoa(int(scale)), "no such scale of heat", namesHeatScale[1:])
	}
	level := HeatNone
	for _, step := range heatSteps {
		if step.Scale == scale && math.Round(index) >= step.From {
			level = step.Level
		}
	}
	return level, nil
}

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
	// Source is a key of SOURCES.md with the place.
	Source string `json:"source"`
	// Mark is how the figure was come by.
	Mark string `json:"mark"`
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
// Errors: a domain error where the amount is below 0 or not a number; a
// *units.ParseError that lists the sorts of stock that the scale has limits for
//
// Source: MONTANA-SOLIDS; NDSU-STOCK-WATER; NDSU-SULFATE-2008; SRC-STOCK-WATER;
// SPECTRUM-WATER; SDSU-SULFATE-2012; CANADA-SULFATE-2017; SDSU-NITRATE-WATER;
// UMN-NITRATE-WATER
func WaterQuality(amount float64, scale WaterScale, stock Drinkers) (WaterGrade, error) {
	if _, err := units.Answer(&waterGuard, amount, amount); err != nil {
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
		return 0, noRow("herd.Drinkers", stock.String(), "the scale "+strconv.Quote(scale.String())+" has no limits for this sort", slices.Compact(has))
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
