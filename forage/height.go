package forage

import (
	"fmt"
	"math"
	"slices"

	"example.org/soum/units"
)

// HeightSource is whose heights of turning in and out are used.
type HeightSource int

// The sources of heights.
const (
	HeightsByGeorgia    HeightSource = iota + 1 // University of Georgia, after a pocket guide of 1999
	HeightsByLuling                             // a range and pasture stick of Texas
	HeightsByMaine                              // University of Maine
	HeightsByTennessee                          // University of Tennessee, native grass
	HeightsByWashington                         // Washington State University
	HeightsByScotland                           // SRUC, by stock
	HeightsByMiddlePark                         // a conservation district in Colorado
	HeightsByCornell                            // Cornell University, tall grass and legume
)

// Moment is when a height is told.
type Moment int

// The moments.
const (
	MomentBegin Moment = iota + 1 // stock go in
	MomentEnd                     // stock come out
)

// HeightRow is a row of the table of heights, mean ruler height of the stand.
type HeightRow struct {
	// Crop is what is grazed, for Scotland by which stock, lower case with hyphens.
	Crop string `json:"crop"`
	// By is whose figure it is.
	By HeightSource `json:"by"`
	// Begin is the height at which stock go in.
	Begin units.Span[units.Height] `json:"begin"`
	// End is the height at which they come out.
	End units.Span[units.Height] `json:"end"`
	// Source is a key of SOURCES.md.
	Source string `json:"source"`
	// Mark is how the figure was come by.
	Mark string `json:"mark"`
}

// HeightRows gives the table of GrazingHeight, as a copy.
//
// Check: TestHeightRows
//
// Source: UGA-HEIGHTS, LULING-STICK, UMAINE-STICK, TENNESSEE-NATIVE, WSU-HEIGHTS,
// SRUC-SHEEPNET, MIDDLE-PARK, CORNELL-INTENSIVE, as the row says
func HeightRows() []HeightRow { return slices.Clone(heightRows) }

// GrazingHeight gives one end of a printed height at which stock go onto a crop or come
// off it.
//
// The sources differ: bermudagrass is left at 1 to 2 in by Georgia and at 3 in by the
// Texas stick, switchgrass is begun at 18 to 22 in by the one and 12 in by the other.
// Common practice, without a source that we could find, leaves no less than 3 in and
// rather 4 to 6. Sorghum and sudangrass have heights below which they kill: PrussicRisk
// goes before these.
//
// Errors: a *units.ParseError that lists the crops of the source
//
// Source: UGA-HEIGHTS, LULING-STICK, UMAINE-STICK, TENNESSEE-NATIVE, WSU-HEIGHTS,
// SRUC-SHEEPNET, MIDDLE-PARK, CORNELL-INTENSIVE
func GrazingHeight(crop string, by HeightSource, moment Moment, end units.End) (units.Height, error) {
	var has []string
	for i := range heightRows {
		row := &heightRows[i]
		switch {
		case row.By != by:
			continue
		case row.Crop != crop:
			has = append(has, row.Crop)
		case moment == MomentBegin:
			return row.Begin.At(end), nil
		case moment == MomentEnd:
			return row.End.At(end), nil
		default:
			return units.Height(math.NaN()), unknownRow("Moment", fmt.Sprint(int(moment)), "no such moment", namesMoment[1:])
		}
	}
	return units.Height(math.NaN()), unknownRow("HeightRow", crop, fmt.Sprintf("has no height by %q", by), has)
}

// YieldRow is a row of the table of yields a year.
type YieldRow struct {
	// Crop is the crop, lower case with hyphens.
	Crop string `json:"crop"`
	// Low, Middle and High are the printed yields; where print has two, the middle is
	// half way between them.
	Low    units.Yield `json:"low"`
	Middle units.Yield `json:"middle"`
	High   units.Yield `json:"high"`
	// Source is a key of SOURCES.md.
	Source string `json:"source"`
	// Mark is how the figure was come by.
	Mark string `json:"mark"`
}

// YieldRows gives the table of CropYield, as a copy.
//
// Check: TestYieldRows
//
// Source: PSU-MONTHS, KENTUCKY-FEEDS, NRCS-BRYAN-528, MISSOURI-NATIVE, as the row says
func YieldRows() []YieldRow { return slices.Clone(yieldRows) }

// CropYield gives what a crop grows in a year, also of crops that are no row of Pastures.
//
// Errors: a *units.ParseError that lists the crops
//
// Note: dry matter, but hay as it lies of Missouri and of NRCS-BRYAN-528.
//
// Source: PSU-MONTHS, KENTUCKY-FEEDS, NRCS-BRYAN-528, MISSOURI-NATIVE
func CropYield(crop string, end units.End) (units.Yield, error) {
	var has []string
	for i := range yieldRows {
		row := &yieldRows[i]
		if row.Crop == crop {
			switch end {
			case units.Low:
				return row.Low, nil
			case units.High:
				return row.High, nil
			}
			return row.Middle, nil
		}
		has = append(has, row.Crop)
	}
	return units.Yield(math.NaN()), unknownRow("YieldRow", crop, "no such crop", has)
}
