package rainfall

import (
	"math"
	"slices"

	"example.org/soum/units"
)

// IrrigationDepth returns the water to be given when the allowed share of the root
// zone's store is used up.
//
// Formula: root * holds * allowed
//
// Where:
//   - root in ft: depth of the roots; >= 0
//   - holds in in/ft: water that the soil holds (SoilWater); >= 0
//   - allowed in %: share of it that may be used up; 0 to 100
//
// Note: UTAH-IRRIGATION gives loam an inch to a foot of roots.
//
// Source: FAWN-INTERVALS
func IrrigationDepth(root units.Length, holds units.WaterHolding, allowed units.Fraction) (units.RainDepth, error) {
	depth := units.RainDepth(float64(root) * float64(holds) * float64(allowed))
	return units.Answer(&formulaIrrigationDepth, depth, float64(root), float64(holds), float64(allowed))
}

// GrossIrrigation returns the water to be pumped so that enough reaches the roots.
//
// Formula: net / efficiency
//
// Where:
//   - net in in: to reach the roots; >= 0
//   - efficiency in %: share of the pumped water that reaches them; > 0 and <= 100
//
// Source: FAWN-INTERVALS
func GrossIrrigation(net units.RainDepth, efficiency units.Fraction) (units.RainDepth, error) {
	return units.Answer(&formulaGrossIrrigation, units.RainDepth(float64(net)/float64(efficiency)), float64(net), float64(efficiency))
}

// IrrigationInterval returns the days from one watering to the next without rain.
//
// Formula: net / use
//
// Where:
//   - net in in: water given to the roots; >= 0
//   - use in in/day: by the plants (CropWater, CropUse); > 0
//
// Note: print rounds down, to what is handy.
//
// Source: FAWN-INTERVALS
func IrrigationInterval(net units.RainDepth, use units.RainRate) (units.Days, error) {
	return units.Answer(&formulaIrrigationInterval, units.Days(float64(net)/float64(use)), float64(net), float64(use))
}

// IrrigationTime returns how long the water must run.
//
// Formula: depth / rate
//
// Where:
//   - depth in in: to be given; >= 0
//   - rate in in/h: that the sprinkler gives, or flooded soil takes in; > 0
//
// Source: UTAH-IRRIGATION
func IrrigationTime(depth units.RainDepth, rate units.RainRate) (units.Days, error) {
	return units.Answer(&formulaIrrigationTime, units.Days(float64(depth)/float64(rate)), float64(depth), float64(rate))
}

// CropUseRow is a row of the table of water that crops use in the season.
type CropUseRow struct {
	// Crop is the crop and the place, lower case with hyphens.
	Crop string `json:"crop"`
	// Use is the printed span.
	Use units.Span[units.RainRate] `json:"use_m_day"`
	// Root is the depth of the roots, 0 where none is printed.
	Root units.Length `json:"root_m"`
	units.Printed
}

// CropUseRows gives the table of water that crops use, as a copy.
//
// Check: TestCropUseRows
//
// Source: ours: a collection, each figure with the source and mark on its row
func CropUseRows() []CropUseRow { return slices.Clone(useRows) }

// CropUse gives the water that a crop uses in the growing season by printed
// figures, for places without weather to reckon from. In Utah they are of May to
// September; a whole season of pasture and hay wants 24 to 36 in (HORSE-ACREAGE).
//
// Errors: a *units.ParseError that lists the crops that have a figure, or the ends
//
// Source: UTAH-IRRIGATION, HOPEWELL-1957, ONPASTURE-IRRIGATION, as the row says
func CropUse(crop string, end units.End) (units.RainRate, error) {
	const function = "rainfall.CropUse"
	if err := checkEnd(function, 2, end); err != nil {
		return units.RainRate(math.NaN()), err
	}
	var crops []string
	for i := range useRows {
		if useRows[i].Crop == crop {
			return useRows[i].Use.At(end), nil
		}
		crops = append(crops, useRows[i].Crop)
	}
	return units.RainRate(math.NaN()), noRow(function, "crop", 1, "rainfall.CropUseRow", crop, "no figure of what this crop uses", crops)
}
