package forage

import (
	"slices"

	"example.org/soum/units"
)

// PlateCover returns the dry matter of a stand by the line of a plate meter.
//
// Formula: height * slope + intercept
//
// Where:
//   - height in cm: mean compressed height; >= 0
//   - slope in kg/ha/cm: dry matter for each unit of compressed height; >= 0
//   - intercept in kg/ha: dry matter of the line at no height; any
//
// Note: lines belong to a meter, a pasture and a season: printed slopes run from
// 250 to 800 kg/ha/cm (PlateEquations), in one place by two to three times between
// winter and summer, where the relation bends as well (MICHELL-1982). Forcing a
// line through zero makes its fit look better than it is (DILLARD-2016). A line of
// your own is CalibratePlate.
//
// Source: DARD-PLATE for the form
func PlateCover(height units.PlateHeight, slope units.PlateDensity, intercept units.Yield) (units.Yield, error) {
	cover := units.Yield(float64(float64(height)*float64(slope)) + float64(intercept))
	return units.Answer(&formulaPlateCover, cover, float64(height), float64(slope), float64(intercept))
}

// CountedCover returns the dry matter of a stand from the counter of a plate meter
// that adds up its readings.
//
// Formula: (closing - opening) / readings * perCount + offset
//
// Where:
//   - opening: the counter before the walk; >= 0
//   - closing: the counter after it; >= opening
//   - readings: how often the plate was set down; >= 1
//   - perCount in kg/ha: dry matter for each count of the mean; >= 0
//   - offset in kg/ha: dry matter where the mean is nothing; any
//
// Note: DARD-PLATE prints 158 a count and 330 beside it, up to 40 readings in a W.
// Some meters count half centimetres, so 158 a count is not 158 a centimetre: take
// the pair that belongs to the meter.
//
// Source: DARD-PLATE
func CountedCover(opening, closing, readings float64, perCount, offset units.Yield) (units.Yield, error) {
	cover := units.Yield(float64((closing-opening)/readings*float64(perCount)) + float64(offset))
	return units.Answer(&formulaCountedCover, cover, opening, closing, readings, float64(perCount), float64(offset))
}

// PlateEquation is a row of the table of published plate-meter slopes.
type PlateEquation struct {
	// Name of the row, lower case with hyphens.
	Name string `json:"name"`
	// Slope is dry matter for each unit of compressed height.
	Slope units.PlateDensity `json:"slope"`
	// Above is the height from which the slope counts, where the source says so.
	Above units.PlateHeight `json:"above,omitempty"`
	// Deviation is the residual standard deviation of single places, 0 where it is
	// not printed.
	Deviation units.Yield `json:"deviation,omitempty"`
	// Fit is the printed r², 0 where it is not.
	Fit float64 `json:"fit,omitempty"`
	// Where and when it was measured.
	Where string `json:"where"`
	units.Printed
}

// PlateEquations gives the table of published slopes, as a copy. No intercept is
// printed with any of them.
//
// Check: TestPlateEquations
//
// Source: ours: a collection, each slope with its source on its row
func PlateEquations() []PlateEquation { return slices.Clone(plateRows) }

// PlateSlope gives a published slope of plate meters.
//
// Table: dry matter for each unit of compressed height, by row
//
// Where:
//   - equation: as in PlateEquations
//
// Errors: a *units.ParseError that lists the rows
//
// Note: single places strayed from one line by 753 kg/ha, means of twenty by 155
// (RAYBURN-1998). Calibration shifts with the week and the place, by species of
// cool-season grass it did not in one test (FERRARO-2012). On bunchgrass r² was
// 0.21 to 0.51 (BUNCHGRASS-2009).
//
// Source: TEAGASC-PLATE, MICHELL-1982, RAYBURN-1998
func PlateSlope(equation string) (units.PlateDensity, error) {
	row := rowOf(plateRows, func(r *PlateEquation) bool { return r.Name == equation })
	if row == nil {
		return noRow[units.PlateDensity](&formulaPlateSlope, "equation", equation, "no such row", namesOf(plateRows, func(r *PlateEquation) string { return r.Name }), 0)
	}
	return row.Slope, nil
}
