package rainfall

import (
	"fmt"
	"math"
	"slices"

	"example.org/soum/units"
)

// CropStage is a part of a crop's season.
type CropStage int

// The stages.
const (
	StageInitial CropStage = iota + 1 // from sowing or spring growth until a tenth of the ground is covered
	StageMid                          // full cover
	StageLate                         // at the end of the season
)

// CropRow is a row of the table of crop coefficients.
type CropRow struct {
	// Crop is the crop and how it is used, lower case with hyphens.
	Crop string `json:"crop"`
	// Initial is the coefficient of the initial stage, 0 where none is printed.
	Initial float64 `json:"initial"`
	// MidLow is the lower printed coefficient of full cover.
	MidLow float64 `json:"mid_low"`
	// MidHigh is the higher printed coefficient of full cover.
	MidHigh float64 `json:"mid_high"`
	// Late is the coefficient of the end of the season, 0 where none is printed.
	Late float64 `json:"late"`
	units.Printed
}

// CropRows gives the table of crop coefficients, as a copy.
//
// Check: TestCropRows
//
// Source: ours: a collection, each figure with the source and mark on its row
func CropRows() []CropRow { return slices.Clone(cropRows) }

// CropCoefficient gives what a crop uses as a share of what reference grass uses, by
// its stage. Rotated pasture has a span at full cover; the end says where in it.
//
// The figures are for a climate that is neither humid nor windy; print folds bands
// of height and of days between cuts into them.
//
// Errors: a *units.ParseError that lists the crops, or the stages, that have a figure,
// or the ends
//
// Source: FAO-56 table 12
func CropCoefficient(crop string, stage CropStage, end units.End) (float64, error) {
	const function = "rainfall.CropCoefficient"
	if err := checkEnd(function, 3, end); err != nil {
		return math.NaN(), err
	}
	var crops []string
	for i := range cropRows {
		row := &cropRows[i]
		if row.Crop != crop {
			crops = append(crops, row.Crop)
			continue
		}
		mid := units.Span[float64]{Low: row.MidLow, High: row.MidHigh}
		if of := [...]float64{0, row.Initial, mid.At(end), row.Late}; stage >= StageInitial && stage <= StageLate && of[stage] > 0 {
			return of[stage], nil
		}
		has := namesCropStage[1:]
		if row.Initial == 0 {
			has = namesCropStage[StageMid : StageMid+1]
		}
		return math.NaN(), noRow(function, "stage", 2, "rainfall.CropStage", wordOf(stage), fmt.Sprintf("no coefficient of %q", crop), has)
	}
	return math.NaN(), noRow(function, "crop", 1, "rainfall.CropRow", crop, "no coefficient of this crop", crops)
}

// CropWater returns the water that a crop uses where it is never short of it.
//
// Formula: coefficient * reference
//
// Where:
//   - reference in mm/day: reference evapotranspiration; >= 0
//   - coefficient: of the crop (CropCoefficient); >= 0
//
// Source: FAO-56 eq. 58
func CropWater(reference units.RainRate, coefficient float64) (units.RainRate, error) {
	return units.Answer(&formulaCropWater, units.RainRate(coefficient*float64(reference)), float64(reference), coefficient)
}
