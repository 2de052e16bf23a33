package forage

import "example.org/soum/units"

// Thickness is how close a stand is, as the curved table judges it.
type Thickness int

// The thicknesses of a stand.
const (
	Thin    Thickness = iota + 1 // thinner than most
	Average                      // as most stands
	Thick                        // closer than most
)

// CurveMass returns the dry matter of a stand from its ruler height by a table in
// which each inch higher up holds less than the one below.
//
// Table: straight lines between the printed heights of 4, 6, 8, 10 and 12 in, and
// from the soil to the first, which are ours; above 12 in the last line runs on
//
// Where:
//   - height in in: mean ruler height; >= 0; 4 to 12 [HEIGHT-MASS-TABLE]
//   - thickness: of the stand
//
// Note: a weak source. The table is reprinted without telling where it is from;
// the way of measuring (mean of 15 to 30 ruler heights, thickness judged by eye)
// is WVU-MASS, whose own table was not seen. What stands above a stubble is the
// mass at the one height less that at the other.
//
// Source: HEIGHT-MASS-TABLE
func CurveMass(height units.Height, thickness Thickness) (units.Yield, error) {
	mass := units.Yield(0)
	if thickness >= Thin && thickness <= Thick {
		mass = units.Yield(line(curveInches[:], curveMasses[thickness-1][:], float64(height/units.HeightInch))) * kilogramPerAcre
	}
	return units.Answer(&formulaCurveMass, mass, float64(height), float64(thickness))
}

// kilogramPerAcre is the unit of the printed table.
const kilogramPerAcre = 1 / units.Yield(units.Acre)

// curveInches and curveMasses are HEIGHT-MASS-TABLE: inches, and kg of dry matter
// an acre by thickness; mark B, unverified. The first point is the bare soil, ours.
var (
	curveInches = [...]float64{0, 4, 6, 8, 10, 12}
	curveMasses = [...][6]float64{
		Thin - 1:    {0, 483, 681, 851, 992, 1104},
		Average - 1: {0, 607, 850, 1053, 1215, 1337},
		Thick - 1:   {0, 901, 1279, 1609, 1891, 2125},
	}
)

// line reads a straight line through printed points, in the order of at; beyond
// the last point its line runs on, before the first as well.
func line(at, value []float64, v float64) float64 {
	i := 1
	for i < len(at)-1 && v > at[i] {
		i++
	}
	return value[i-1] + (v-at[i-1])/(at[i]-at[i-1])*(value[i]-value[i-1])
}
