package forage

import (
	"slices"

	"example.org/soum/units"
)

// YieldRow is a row of the table of yields a year.
type YieldRow struct {
	// Crop is the crop, lower case with hyphens.
	Crop string `json:"crop"`
	// Low, Middle and High are the printed yields; where print has two, the middle is
	// half way between them.
	Low    units.Yield `json:"low"`
	Middle units.Yield `json:"middle"`
	High   units.Yield `json:"high"`
	units.Printed
}

// YieldRows gives the table of CropYield, as a copy.
//
// Check: TestYieldRows
//
// Source: PSU-MONTHS, KENTUCKY-FEEDS, NRCS-BRYAN-528, MISSOURI-NATIVE, as the row says
func YieldRows() []YieldRow { return slices.Clone(yieldRows) }

// CropYield gives what a crop grows in a year, also of crops that are no row of Pastures.
//
// Where:
//   - crop: as in YieldRows
//   - end: of the printed yields, the middle one where print has three
//
// Errors: a *units.ParseError that lists the crops
//
// Note: dry matter, but hay as it lies of Missouri and of NRCS-BRYAN-528.
//
// Source: PSU-MONTHS, KENTUCKY-FEEDS, NRCS-BRYAN-528, MISSOURI-NATIVE
func CropYield(crop string, end units.End) (units.Yield, error) {
	row := rowOf(yieldRows, func(r *YieldRow) bool { return r.Crop == crop })
	if row == nil {
		return noRow[units.Yield](&formulaCropYield, "crop", crop, "no such crop", namesOf(yieldRows, func(r *YieldRow) string { return r.Crop }), 0, float64(end))
	}
	yield := row.Middle
	switch end {
	case units.Low:
		yield = row.Low
	case units.High:
		yield = row.High
	}
	return units.Answer(&formulaCropYield, yield, 0, float64(end))
}
