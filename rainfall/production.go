package rainfall

import (
	"math"
	"slices"

	"example.org/soum/units"
)

// ForageShare returns the forage of a year as a share of the usual, from the
// rain of the key months as a share of their normal.
//
// Formula: min(rainShare, 1)
//
// Where:
//   - rainShare in %: rain of the key months as a share of their normal; >= 0
//
// Note: one point is all that is printed: 75 % of the normal April to June rain,
// 25 % less forage (NDSU-SPRING). The straight line through it and the normal is
// taken down to no rain at all. Above normal there is no gain: mixed-grass range
// is best told by a line below the mean and a level above it (WILES-2011). Both
// are of northern range; on other land the share is a guess at best.
//
// Source: NDSU-SPRING the point; WILES-2011 the level above the mean
func ForageShare(rainShare units.Fraction) (units.Fraction, error) {
	return units.Answer(&formulaForageShare, min(rainShare, 1), float64(rainShare))
}

// RainLine is a published straight line of yield by rain.
type RainLine int

// The lines, each of its own region and its own months.
const (
	LineShortGrass RainLine = iota + 1 // short-grass range of the northern plains, rain of May and June
	LineGrassland                      // grassland of the central US, mean rain of the year
)

// YieldByRain returns the yield of range by its rain.
//
// Method: on short-grass range of the northern plains 27.17 + 78.48 X lb/ac, X the
// inches of May and June; over the grasslands of the central US -34 + 0.6 X g/m², X
// the millimetres of a mean year
//
// Where:
//   - line: region and months
//   - rain in mm: of the months that the line takes; >= 0
//
// Errors: a *units.RangeError beside the value where the grassland line is below
// zero, under 56.7 mm
//
// Note: the first is usable by 1 July. The second compares places, not years: from
// year to year one place follows a flatter line. Below 370 mm sandy soils yield more
// there, above it loams (SALA-1988).
//
// Source: SMOLIAK-1956 the first, in a copy with a wrong title; SALA-1988 the
// second, whose equation is from memory
func YieldByRain(line RainLine, rain units.RainDepth) (units.Yield, error) {
	arguments := [...]float64{float64(line), float64(rain)}
	if line == LineShortGrass {
		yield := units.Yield(shortGrassAtNone+shortGrassPerInch*rain.Inches()) * units.PoundPerAcre
		return units.Answer(&formulaYieldByRain, yield, arguments[:]...)
	}
	yield := units.Yield(grasslandAtNone+grasslandPerMillimetre*rain.Millimetres()) * units.KilogramPerSquareMetre / 1000
	if yield < 0 {
		covered := units.Between(-grasslandAtNone/grasslandPerMillimetre*float64(units.RainMillimetre), math.Inf(1), "SALA-1988")
		return units.AnswerWithin(&formulaYieldByRain, 1, covered, yield, arguments[:]...)
	}
	return units.Answer(&formulaYieldByRain, yield, arguments[:]...)
}

const (
	shortGrassAtNone       = 27.17
	shortGrassPerInch      = 78.48
	grasslandAtNone        = -34
	grasslandPerMillimetre = 0.6
)

// AlfalfaYield returns the yield of alfalfa by the water that it used.
//
// Empirical: 0.14 + 0.12 * water
//
// Where:
//   - water in cm: evapotranspiration of the season; >= 0
//   - result in t/ha: hay
//
// Note: of New Mexico, r² 0.78. 0.12 t/ha a centimetre is about 7.4 in a short ton,
// where Montana has 4 to 5 in and Nebraska 6.5 to 7.5 (WaterUseRows).
//
// Source: SAMMIS-1981
func AlfalfaYield(water units.RainDepth) (units.Yield, error) {
	yield := units.Yield(0.14+0.12*float64(water/units.RainCentimetre)) * units.TonnePerHectare
	return units.Answer(&formulaAlfalfaYield, yield, float64(water))
}

// YieldOfWater returns the yield that so much water makes.
//
// Formula: water * use
//
// Where:
//   - water in mm: rain, or water used, as the figure of use means it; >= 0
//   - use in kg/ha/mm: dry matter for each depth of water; >= 0
//
// Note: WaterUse has the figures. They hold about the rain that they were measured
// in, for water that is the only thing wanting.
//
// Source: definition: water times yield for water; NDMC-INCHES
func YieldOfWater(water units.RainDepth, use units.RainUse) (units.Yield, error) {
	return units.Answer(&formulaYieldOfWater, units.Yield(float64(water)*float64(use)), float64(water), float64(use))
}

// UseOfWater returns the dry matter grown for each depth of water.
//
// Formula: yield / water
//
// Where:
//   - yield in kg/ha: grown; >= 0
//   - water in mm: rain, or water used; > 0
//
// Source: TONMUKAYAKUL-2009
func UseOfWater(yield units.Yield, water units.RainDepth) (units.RainUse, error) {
	return units.Answer(&formulaUseOfWater, units.RainUse(float64(yield)/float64(water)), float64(yield), float64(water))
}

// WaterUseRow is a row of the table of WaterUse.
type WaterUseRow struct {
	// Name is crop and place, lower case with hyphens.
	Name string `json:"name"`
	// Water is which water is counted.
	Water string `json:"water"`
	// Use is the printed span.
	Use units.Span[units.RainUse] `json:"use_kg_m2_m"`
	units.Printed
}

// WaterUseRows gives the table of WaterUse, as a copy.
//
// Check: TestWaterUseRows
//
// Source: ours: a collection, each row with its source and mark
func WaterUseRows() []WaterUseRow { return slices.Clone(waterUseRows) }

// WaterUse gives the dry matter that a crop grows for each depth of water: at the
// low end of the printed span, half way, or at its high end.
//
// Table: WaterUseRows. What is printed as inches for a ton is turned about.
//
// Prints differ: alfalfa wants 4 to 5 in a ton by Montana, 6.5 to 7.5 by Nebraska;
// bermudagrass 3.5 to more than 20 by its nitrogen. Text and maps of one source have
// 58 to 153 and 51 to 128 lb/ac for each inch of one region. Sown forages want about
// 18 to 25 in in the year (OREGON-FORAGES); with less, wheatgrasses.
//
// Errors: a *units.ParseError that lists the names, or the ends
//
// Source: NDMC-INCHES, NEBRASKA-G2012, MONTANA-ALFALFA, NOBLE-2002-RAIN,
// NOBLE-2000-RAIN, TONMUKAYAKUL-2009, CALUKA-PASTURE, PALMER-2010, RANGELANDS-WA, as
// the row says
func WaterUse(name string, end units.End) (units.RainUse, error) {
	const function = "rainfall.WaterUse"
	if err := checkEnd(function, 2, end); err != nil {
		return units.RainUse(math.NaN()), err
	}
	var names []string
	for i := range waterUseRows {
		if waterUseRows[i].Name == name {
			return waterUseRows[i].Use.At(end), nil
		}
		names = append(names, waterUseRows[i].Name)
	}
	return units.RainUse(math.NaN()), noRow(function, "name", 1, "rainfall.WaterUseRow", name, "no figure of this crop", names)
}
