package rainfall

import (
	"math"

	"example.org/soum/units"
)

// Ground is a class of the ground's firmness under hooves.
type Ground int

// The classes.
const (
	GroundSoft Ground = iota + 1 // wetter than the threshold: hooves pug it
	GroundFirm                   // at the threshold or drier
)

// GroundFor gives whether the ground bears stock, by the water that it is short of
// field capacity (BalanceStep); below 0 it is wetter than that.
//
// Damage began at a deficit under 3 mm on two soils of Otago, and it began while the
// soil was drier than field capacity: the plastic limit was a poor guide. Other
// soils, heavy stock and sloping or much trodden ground give way sooner. Saturated
// ground is pugged, ground about field capacity is pressed together
// (LANDSCAPE-PUGGING): take stock off early in a wet spell (CSU-WET-GRAZING), to a
// lot or the driest paddock, and go out and look: the figure is no promise. Stock
// that must stand in mud get foot and udder trouble; ask an adviser or a vet.
//
// Table: soft under FirmDeficit, firm from it on
//
// Where:
//   - deficit in mm: water that the soil is short of field capacity; any
//
// Source: LAURENSON-2016
func GroundFor(deficit units.RainDepth) (Ground, error) {
	if _, err := units.Answer(&formulaGroundFor, float64(deficit), float64(deficit)); err != nil {
		return 0, err
	}
	if deficit < FirmDeficit() {
		return GroundSoft, nil
	}
	return GroundFirm, nil
}

// FirmDeficit gives the least deficit of water at which GroundFor calls ground firm.
//
// Check: TestFirmDeficit
//
// Source: LAURENSON-2016
func FirmDeficit() units.RainDepth { return 3 * units.RainMillimetre }

// PuggingLoss gives the yield of the next twelve months that is lost where a pasture
// was pugged, at an end of the printed span of 16 to 80 %.
//
// Errors: a *units.ParseError that lists the ends
//
// Source: ONTARIO-PUGGING
func PuggingLoss(end units.End) (units.Fraction, error) {
	if err := checkEnd("rainfall.PuggingLoss", 1, end); err != nil {
		return units.Fraction(math.NaN()), err
	}
	return units.Span[units.Fraction]{Low: 16 * units.Percent, High: 80 * units.Percent}.At(end), nil
}
