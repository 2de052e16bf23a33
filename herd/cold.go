package herd

import (
	"math"

	"example.org/soum/units"
)

// Coat is the coat of a beef cow, by the table that is meant. The short form
// tells flesh not apart.
type Coat int

// The coats.
const (
	CoatHeavyWinter      Coat = iota + 1 // dry, over 1.0 in
	CoatWinter                           // dry, over 0.7 to 1.0 in
	CoatSummer                           // dry, under 0.2 in
	CoatWetHeavyWinter                   // wet, over 1.0 in
	CoatWetWinter                        // wet, over 0.7 to 1.0 in
	CoatWetSummer                        // wet, under 0.2 in
	CoatShortHeavyWinter                 // short form: dry, heavy winter
	CoatShortWinter                      // short form: dry, winter
	CoatShortAutumn                      // short form: dry, autumn
	CoatShortWetOrSummer                 // short form: wet, or summer
)

// Flesh is how much flesh a cow carries.
type Flesh int

// The classes of flesh.
const (
	FleshThin    Flesh = iota + 1 // thin
	FleshAverage                  // average
	FleshFleshy                   // fat
)

// CriticalTemperature returns the temperature, or wind chill, below which a beef
// cow must burn feed to keep warm.
//
// Table: °F by coat and flesh; the short form by coat alone
//
// Where:
//   - coat: the coat, dry or wet, and by which table
//   - flesh: thin, average or fleshy, which the short form does not use
//
// Note: the tables disagree by a degree or so where they meet: a cow of average
// flesh in a heavy dry winter coat is critical at 19 °F (NEB-COLD) or 18 (SDSU-COLD).
// Rain takes the coat away: the wet cow is cold at 53. Calves, thin old cows and
// sheep off the shears stand far less. Windbreak, dry bedding and more hay before
// the storm help most; a beast that shivers or lies and does not rise needs a vet.
//
// Check: TestCriticalTemperatureAsPrinted
//
// Source: NEB-COLD; SDSU-COLD and KSU-COLD the short form
func CriticalTemperature(coat Coat, flesh Flesh) (units.Temperature, error) {
	return units.Answer(&formulaCriticalTemperature, units.Fahrenheit(criticalAt(coat, flesh)), float64(coat), float64(flesh))
}

// ChillRule is how wind is told as cold.
type ChillRule int

// The rules.
const (
	ChillTable ChillRule = iota + 1 // the printed table
	ChillRough                      // a degree Fahrenheit for each mile an hour
)

// WindChill returns the temperature that cattle feel in wind.
//
// Method: by the table, straight lines between printed cells along temperature
// and wind, which is ours; beyond its ends the value of the end, beside a range
// error. By the rough rule, the temperature in °F less the wind in mph.
//
// Where:
//   - temperature in °C: of the still air; any
//   - wind in mph: speed of the wind; >= 0
//   - rule: the table or the rough rule
//
// Errors: a *units.RangeError beside the value of the table outside -10 to 40 °F
// or 10 to 30 mph
//
// Note: the rules disagree: 5 °F and 10 mph are -6 °F by the table and -5 by the
// rough rule, 0 °F and 30 mph are -36 and -30. Another print has 25 mph count as a
// drop of 27 °F (DROVERS-WIND), where the table gives 28 from 0 °F. A print of
// the table that has lost minus signs is about.
//
// Check: TestWindChillAsPrinted, TestWindChillBetweenCells, TestWindChillEnds
//
// Source: NEB-COLD the table; METEER-COLD the rough rule
func WindChill(temperature units.Temperature, wind units.Speed, rule ChillRule) (units.Temperature, error) {
	degrees, mph := temperature.Fahrenheit(), float64(wind/units.MilePerHour)
	arguments := [...]float64{float64(temperature), float64(wind), float64(rule)}
	if rule == ChillRough {
		return units.Answer(&formulaWindChill, units.Fahrenheit(degrees-mph), arguments[:]...)
	}
	felt := units.Fahrenheit(chillAt(degrees, mph))
	if temperature < chillColdest || temperature > chillWarmest {
		return units.AnswerWithin(&formulaWindChill, 0, units.Between(float64(chillColdest), float64(chillWarmest), "NEB-COLD"), felt, arguments[:]...)
	}
	if wind < chillCalmest || wind > chillWildest {
		return units.AnswerWithin(&formulaWindChill, 1, units.Between(float64(chillCalmest), float64(chillWildest), "NEB-COLD"), felt, arguments[:]...)
	}
	return units.Answer(&formulaWindChill, felt, arguments[:]...)
}

// The ends of the wind-chill table, reckoned as a user's own figures are, so that
// the printed ends lie within.
var (
	chillColdest = units.Fahrenheit(chillDegrees[0])
	chillWarmest = units.Fahrenheit(chillDegrees[len(chillDegrees)-1])
	chillCalmest = units.Speed(chillWinds[0]) * units.MilePerHour
	chillWildest = units.Speed(chillWinds[len(chillWinds)-1]) * units.MilePerHour
)

// chillAt reads the wind-chill table, the nearest cell beyond its ends.
func chillAt(degrees, mph float64) float64 {
	column, along := stepOf(chillDegrees[:], degrees)
	row, part := stepOf(chillWinds[:], mph)
	calm := chillRows[row][column] + along*(chillRows[row][column+1]-chillRows[row][column])
	wild := chillRows[row+1][column] + along*(chillRows[row+1][column+1]-chillRows[row+1][column])
	return calm + part*(wild-calm)
}

// ColdRule is how much more energy a degree of cold takes.
type ColdRule int

// The rules, by °F below the critical temperature.
const (
	ColdOnePercent ColdRule = iota + 1 // 1 %: a dry coat by most, and a wet one by SDSU
	ColdTwoPercent                     // 2 %: a wet coat by Oklahoma State
	ColdIowa                           // 0.7 %
	ColdPurdue                         // 13 % for 10 °F, below 30 °F
)

// ColdNeed returns the energy that cold adds to what an animal needs in a day, 0
// where it is not cold.
//
// Method: need times 1, 2, 0.7 or 1.3 % for each °F that the wind chill lies below
// the critical temperature
//
// Where:
//   - need in lb/day: total digestible nutrients needed in mild weather; >= 0
//   - critical in °C: the critical temperature, see CriticalTemperature; any
//   - chill in °C: the temperature felt, see WindChill; any
//   - rule: how much for a degree
//
// Note: the sources disagree, so the rule is an argument. Dry coat: 1 % (SDSU-COLD,
// KSU-COLD, NDSU-COLD), 0.7 (IOWA-COLD), 1.3 reckoned from 30 °F (PURDUE-COLD).
// Wet coat: 1 % below 59 °F (SDSU-COLD) or 2 % (OSU-COLD). It is energy that is
// wanted, not protein. Below freezing cattle graze less just when they need more,
// and a cow cannot eat her way out of any cold: the sum says what to offer, the
// cow's flesh says whether it was enough.
//
// Source: NDSU-COLD worked example; NEB-COLD-NEWS spans
func ColdNeed(need units.NutrientRate, critical, chill units.Temperature, rule ColdRule) (units.NutrientRate, error) {
	degrees := max(float64(critical.Sub(chill)/units.FahrenheitDegree), 0)
	more := units.NutrientRate(float64(need) * degrees * float64(coldShare(rule)))
	return units.Answer(&formulaColdNeed, more, float64(need), float64(critical), float64(chill), float64(rule))
}

// ExtraForage returns the dry matter of a forage that holds so much of digestible
// nutrients.
//
// Formula: need / tdn
//
// Where:
//   - need in lb/day: total digestible nutrients wanted; >= 0
//   - tdn in %: total digestible nutrients of the forage's dry matter; > 0 and <= 100
//
// Source: NDSU-COLD
func ExtraForage(need units.NutrientRate, tdn units.Fraction) (units.Demand, error) {
	return units.Answer(&formulaExtraForage, units.Demand(float64(need)/float64(tdn)), float64(need), float64(tdn))
}

// criticalAt reads the table of critical temperatures, in °F.
func criticalAt(coat Coat, flesh Flesh) float64 {
	if coat < CoatHeavyWinter || int(coat) > len(criticalRows) || flesh < FleshThin || flesh > FleshFleshy {
		return math.NaN() // the guard refuses what is no coat or no flesh
	}
	return criticalRows[coat-CoatHeavyWinter][flesh-FleshThin]
}
