package rainfall

import "example.org/soum/units"

var curveRows = []CurveRow{
	{"pasture", CoverPoor, 68, 79, 86, 89, printed("TR-55 table 2-2c", "B")},
	{"pasture", CoverFair, 49, 69, 79, 84, printed("TR-55 table 2-2c", "B")},
	{"pasture", CoverGood, 39, 61, 74, 80, printed("TR-55 table 2-2c", "B")},
	{"brush", CoverPoor, 48, 67, 77, 83, printed("TR-55 table 2-2c", "B")},
	{"brush", CoverFair, 35, 56, 70, 77, printed("TR-55 table 2-2c", "B")},
	{"brush", CoverGood, 30, 48, 65, 73, printed("TR-55 table 2-2c", "B")},
	{"woods-and-grass", CoverPoor, 57, 73, 82, 86, printed("TR-55 table 2-2c", "B")},
	{"woods-and-grass", CoverFair, 43, 65, 76, 82, printed("TR-55 table 2-2c", "B")},
	{"woods-and-grass", CoverGood, 32, 58, 72, 79, printed("TR-55 table 2-2c", "B")},
	{"woods", CoverPoor, 45, 66, 77, 83, printed("TR-55 table 2-2c", "B")},
	{"woods", CoverFair, 36, 60, 73, 79, printed("TR-55 table 2-2c", "B")},
	{"woods", CoverGood, 30, 55, 70, 77, printed("TR-55 table 2-2c", "B")},
	{"meadow-not-grazed", CoverGood, 30, 58, 71, 78, printed("TR-55 table 2-2c", "B")},
	{"farmstead", CoverGood, 59, 74, 82, 86, printed("TR-55 table 2-2c", "B")},
	{"arid-herbs", CoverPoor, 0, 80, 87, 93, printed("TR-55 table 2-2d", "B")},
	{"arid-herbs", CoverFair, 0, 71, 81, 89, printed("TR-55 table 2-2d", "B")},
	{"arid-herbs", CoverGood, 0, 62, 74, 85, printed("TR-55 table 2-2d", "B")},
	{"sagebrush-and-grass", CoverPoor, 0, 67, 80, 85, printed("TR-55 table 2-2d", "B")},
	{"sagebrush-and-grass", CoverFair, 0, 51, 63, 70, printed("TR-55 table 2-2d", "B")},
	{"sagebrush-and-grass", CoverGood, 0, 35, 47, 55, printed("TR-55 table 2-2d", "B")},
}

// antecedentLimits are the ends of the class average: SWB-ANTECEDENT, mark B.
var antecedentLimits = [...][2]units.RainDepth{
	RunoffGrowing: {1.4 * units.RainInch, 2.1 * units.RainInch},
	RunoffDormant: {0.5 * units.RainInch, 1.1 * units.RainInch},
}

// catchFactors are gallons to a square foot and an inch.
var catchFactors = [...]float64{
	CatchWhole:     0.623, // OSE-RAINWATER, mark A
	CatchRounded:   0.6,   // STUDYLIB-RAINWATER, mark A
	CatchTenthLost: 0.56,  // GREYWATER-ROOF, mark A
}
