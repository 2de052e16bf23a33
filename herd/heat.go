package herd

import (
	"math"
	"slices"

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
	units.Printed
}

// HeatSteps gives the scales of heat, as a copy.
//
// Check: TestHeatSteps
//
// Source: ours: a collection, each figure with the source and mark on its row
func HeatSteps() []HeatStep { return slices.Clone(heatSteps) }

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
// Where:
//   - index: THI; any
//   - scale: whose classes
//
// Source: CLEMSON-HEAT safety index; EXT-DAIRY-HEAT 72 and 68; EAGLE-HEAT three
// classes; SLOVENIA-HEAT
func HeatClass(index float64, scale HeatScale) (HeatLevel, error) {
	if _, err := units.Answer(&formulaHeatClass, index, index, float64(scale)); err != nil {
		return 0, err
	}
	level := HeatNone
	for _, step := range heatSteps {
		if step.Scale == scale && math.Round(index) >= step.From {
			level = step.Level
		}
	}
	return level, nil
}
