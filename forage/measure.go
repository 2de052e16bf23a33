package forage

import "example.org/soum/units"

// Available returns the dry matter that stands above the height to be left.
//
// Formula: (height - residual) * density
//
// Where:
//   - height in in: mean ruler height of the undisturbed stand; >= 0
//   - residual in in: height to be left standing; 0 to height
//   - density in lb/ac/in: dry matter per area and height of the stand; >= 0
//
// Source: UMAINE-STICK formula as printed beside the table
func Available(height, residual units.Height, density units.Density) (units.Yield, error) {
	yield := units.Yield(float64(height-residual) * float64(density))
	return units.Answer(&formulaAvailable, yield, float64(height), float64(residual), float64(density))
}
