package rainfall

import "example.org/soum/units"

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
