package forage

import "example.org/soum/units"

// Available returns the dry matter that stands above the height to be left.
//
// Formula: (height - residual) * density
//
// Where:
//   - height in in: mean ruler height of the undisturbed stand; >= 0
//   - residual in in: height to be left standing; 0 to height
//   - density in lb/ac/in: dry matter per area and height above the residual; >= 0
//
// Note: printed densities run from 100 to 400 lb/ac/in by condition of the
// stand (UMAINE-STICK) beside single figures of 300 (PSU-YIELD), 250
// (UCONN-STEPS) and 200 to 250 (NOBLE-DROUGHT, NOBLE-PICTURE). Which one holds
// is the user's to say; a clipped and dried sample says it best.
//
// Source: UMAINE-STICK formula as printed beside the table; UCONN-STEPS the same
func Available(height, residual units.Height, density units.Density) (units.Yield, error) {
	yield := units.Yield(float64(height-residual) * float64(density))
	return units.Answer(&formulaAvailable, yield, float64(height), float64(residual), float64(density))
}

// Standing returns the dry matter of a whole stand, from the soil up.
//
// Formula: height * density
//
// Where:
//   - height in in: mean ruler height of the undisturbed stand; >= 0
//   - density in lb/ac/in: dry matter per area and height, from the soil up; >= 0
//
// Note: PSU-YIELD multiplies its 300 lb/ac/in by the whole height. The pasture
// stick (UMAINE-STICK) puts its factors on the height above the stubble alone,
// so a stand told from them with this formula is an estimate of another kind.
//
// Source: PSU-YIELD mean height times pounds an inch
func Standing(height units.Height, density units.Density) (units.Yield, error) {
	yield := units.Yield(float64(height) * float64(density))
	return units.Answer(&formulaStanding, yield, float64(height), float64(density))
}

// HeightOf returns the height at which a stand of a density holds so much dry
// matter: Standing turned round.
//
// Formula: yield / density
//
// Where:
//   - yield in lb/ac: dry matter standing, from the soil up; >= 0
//   - density in lb/ac/in: dry matter per area and height, from the soil up; > 0
//
// Source: definition: the inverse of Standing
func HeightOf(yield units.Yield, density units.Density) (units.Height, error) {
	height := units.Height(float64(yield) / float64(density))
	return units.Answer(&formulaHeightOf, height, float64(yield), float64(density))
}

// PlateAvailable returns the dry matter above the compressed height to be left.
//
// Formula: (height - residual) * density
//
// Where:
//   - height in cm: mean height under a plate meter; >= 0
//   - residual in cm: compressed height to be left; 0 to height
//   - density in kg/ha/cm: dry matter per area and compressed height; >= 0
//
// Note: TEAGASC-PLATE prints 250 kg/ha/cm above 4 cm for Irish ryegrass. Other
// print runs from 158 to 800 kg/ha for each unit by place and season, and some
// meters count half centimetres: take the figure that belongs to the meter.
//
// Source: TEAGASC-PLATE
func PlateAvailable(height, residual units.PlateHeight, density units.PlateDensity) (units.Yield, error) {
	yield := units.Yield(float64(height-residual) * float64(density))
	return units.Answer(&formulaPlateAvailable, yield, float64(height), float64(residual), float64(density))
}

// DryMatterContent returns the dry matter of a sample as a share of it fresh.
//
// Formula: (dry - plate) / (fresh - plate)
//
// Where:
//   - fresh in oz: plate and sample before drying; > plate
//   - dry in oz: plate and sample dried to a constant weight; plate to fresh
//   - plate in oz: the empty plate; >= 0
//
// Note: dry until the weight stands still. An oven: 140 °F for a day at least
// (TAMU-1646), or 80 °C for 12 hours and then by 2 hours (MLA-CUTS). A microwave
// oven: half a pound with a cup of water beside it, 3 minutes and then by 1
// (UMAINE-DRYING), or 5 and then by 3 with 100 ml (NSW-PASTURE). Never leave the
// water out or the oven alone, stop at the first smell of scorching: a sample that
// is dry already can char and burn. That last is common practice, without a source
// read.
//
// Source: UMAINE-DRYING formula as printed beside the example
func DryMatterContent(fresh, dry, plate units.Mass) (units.Fraction, error) {
	share := units.Fraction(float64(dry-plate) / float64(fresh-plate))
	return units.Answer(&formulaDryMatterContent, share, float64(fresh), float64(dry), float64(plate))
}
