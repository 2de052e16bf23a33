package forage

import "example.org/soum/units"

// alfalfaLine is a line of fibre in per cent by inches, and the heights it was seen at.
type alfalfaLine struct {
	start, each     float64
	lowest, highest units.Height
}

// alfalfaLines are laid through the pairs of OHIO-FORAGE-2024, mark D: before buds, in
// bud. Together the pairs allow nothing but 0.69 an inch to two places.
var alfalfaLines = [...]alfalfaLine{
	{17.48, 0.69, 18, 32},
	{18.70, 0.69, 26, 32},
}

// qualityDrifts are changes in a day: OMAFRA-NDF; OHIO-PEAQ; IDAHO-BUL-1018 twice;
// PRITCHARD-GRASS; all mark A.
var qualityDrifts = [...]float64{
	DriftNeutralFibreWarm - 1:   0.7 / 100,
	DriftNeutralFibreSpring - 1: 5.0 / 100 / 7,
	DriftProtein - 1:            -2.0 / 100 / 7,
	DriftAcidFibre - 1:          3.8 / 100 / 7,
	DriftDigestible - 1:         -0.5 / 100,
}

// qualityRows is the table of Quality.
var qualityRows = []ForageRow{
	{"grass-leafy-to-boot", QualityProtein, percents(18, 18), BoundOver, printed("OREGON-GRASS", "A")},
	{"grass-leafy-to-boot", QualityAcidFibre, percents(33, 33), BoundUnder, printed("OREGON-GRASS", "A")},
	{"grass-leafy-to-boot", QualityNeutralFibre, percents(55, 55), BoundUnder, printed("OREGON-GRASS", "A")},
	{"grass-leafy-to-boot", QualityNutrients, percents(63, 63), BoundOver, printed("OREGON-GRASS", "A")},
	{"grass-boot-to-early-head", QualityProtein, percents(13, 18), BoundWithin, printed("OREGON-GRASS", "A")},
	{"grass-boot-to-early-head", QualityAcidFibre, percents(34, 38), BoundWithin, printed("OREGON-GRASS", "A")},
	{"grass-boot-to-early-head", QualityNeutralFibre, percents(55, 60), BoundWithin, printed("OREGON-GRASS", "A")},
	{"grass-boot-to-early-head", QualityNutrients, percents(59, 62), BoundWithin, printed("OREGON-GRASS", "A")},
	{"grass-head-to-milk", QualityProtein, percents(8, 12), BoundWithin, printed("OREGON-GRASS", "A")},
	{"grass-head-to-milk", QualityAcidFibre, percents(39, 41), BoundWithin, printed("OREGON-GRASS", "A")},
	{"grass-head-to-milk", QualityNeutralFibre, percents(61, 65), BoundWithin, printed("OREGON-GRASS", "A")},
	{"grass-head-to-milk", QualityNutrients, percents(57, 58), BoundWithin, printed("OREGON-GRASS", "A")},
	{"grass-dough", QualityProtein, percents(8, 8), BoundUnder, printed("OREGON-GRASS", "A")},
	{"grass-dough", QualityAcidFibre, percents(41, 41), BoundOver, printed("OREGON-GRASS", "A")},
	{"grass-dough", QualityNeutralFibre, percents(65, 65), BoundOver, printed("OREGON-GRASS", "A")},
	{"grass-dough", QualityNutrients, percents(56, 56), BoundUnder, printed("OREGON-GRASS", "A")},

	{"alfalfa-early-bud", QualityProtein, percents(20.2, 20.2), BoundWithin, printed("ALBERTA-STAGE", "A")},
	{"alfalfa-early-bud", QualityNeutralFibre, percents(49.3, 49.3), BoundWithin, printed("ALBERTA-STAGE", "A")},
	{"alfalfa-early-bud", QualityAcidFibre, percents(32.0, 32.0), BoundWithin, printed("ALBERTA-STAGE", "A")},
	{"alfalfa-late-bud", QualityProtein, percents(19.0, 19.0), BoundWithin, printed("ALBERTA-STAGE", "A")},
	{"alfalfa-late-bud", QualityNeutralFibre, percents(47.0, 47.0), BoundWithin, printed("ALBERTA-STAGE", "A")},
	{"alfalfa-late-bud", QualityAcidFibre, percents(29.4, 29.4), BoundWithin, printed("ALBERTA-STAGE", "A")},
	{"alfalfa-early-bloom", QualityProtein, percents(17.6, 17.6), BoundWithin, printed("ALBERTA-STAGE", "A")},
	{"alfalfa-early-bloom", QualityNeutralFibre, percents(52.0, 52.0), BoundWithin, printed("ALBERTA-STAGE", "A")},
	{"alfalfa-early-bloom", QualityAcidFibre, percents(31.5, 31.5), BoundWithin, printed("ALBERTA-STAGE", "A")},
	{"timothy-jointing", QualityProtein, percents(11.1, 11.1), BoundWithin, printed("ALBERTA-STAGE", "A")},
	{"timothy-jointing", QualityNeutralFibre, percents(68.7, 68.7), BoundWithin, printed("ALBERTA-STAGE", "A")},
	{"timothy-jointing", QualityAcidFibre, percents(38.0, 38.0), BoundWithin, printed("ALBERTA-STAGE", "A")},
	{"timothy-before-head-opens", QualityProtein, percents(10.2, 10.2), BoundWithin, printed("ALBERTA-STAGE", "A")},
	{"timothy-before-head-opens", QualityNeutralFibre, percents(70.6, 70.6), BoundWithin, printed("ALBERTA-STAGE", "A")},
	{"timothy-before-head-opens", QualityAcidFibre, percents(40.4, 40.4), BoundWithin, printed("ALBERTA-STAGE", "A")},
	{"timothy-full-head", QualityProtein, percents(7.9, 7.9), BoundWithin, printed("ALBERTA-STAGE", "A")},
	{"timothy-full-head", QualityNeutralFibre, percents(72.8, 72.8), BoundWithin, printed("ALBERTA-STAGE", "A")},
	{"timothy-full-head", QualityAcidFibre, percents(40.7, 40.7), BoundWithin, printed("ALBERTA-STAGE", "A")},

	{"legume-good", QualityProtein, percents(20, 23), BoundWithin, printed("PSU-QUALITY", "A")},
	{"legume-good", QualityAcidFibre, percents(26, 30), BoundWithin, printed("PSU-QUALITY", "A")},
	{"legume-good", QualityNeutralFibre, percents(38, 42), BoundWithin, printed("PSU-QUALITY", "A")},
	{"tall-fescue", QualityProtein, percents(10, 15), BoundWithin, printed("KENTUCKY-FEEDS", "A")},
	{"tall-fescue", QualityNutrients, percents(45, 60), BoundWithin, printed("KENTUCKY-FEEDS", "A")},
	{"orchardgrass", QualityProtein, percents(8, 12), BoundWithin, printed("KENTUCKY-FEEDS", "A")},
	{"orchardgrass", QualityNutrients, percents(55, 70), BoundWithin, printed("KENTUCKY-FEEDS", "A")},
	{"alfalfa-target-at-cutting", QualityNeutralFibre, percents(38, 38), BoundWithin, printed("CORNELL-NDF", "A")},
	{"grass-target-at-cutting", QualityNeutralFibre, percents(50, 50), BoundWithin, printed("CORNELL-NDF", "A")},
}

// gradeSteps are the grades, the best first in each figure.
var gradeSteps = []GradeStep{
	{GradeByFeedValue, 185, GradeSupreme, printed("USDA-HAY-MISSOURI", "A")},
	{GradeByFeedValue, 170, GradePremium, printed("USDA-HAY-MISSOURI", "A")},
	{GradeByFeedValue, 150, GradeGood, printed("USDA-HAY-MISSOURI", "A")},
	{GradeByFeedValue, 130, GradeFair, printed("USDA-HAY-MISSOURI", "A")},
	{GradeByFeedValue, 0, GradeUtility, printed("USDA-HAY-MISSOURI", "A")},
	{GradeByAcidFibre, 27, GradeSupreme, printed("USDA-HAY-MISSOURI", "A")},
	{GradeByAcidFibre, 29, GradePremium, printed("USDA-HAY-MISSOURI", "A")},
	{GradeByAcidFibre, 32, GradeGood, printed("USDA-HAY-MISSOURI", "A")},
	{GradeByAcidFibre, 35, GradeFair, printed("USDA-HAY-MISSOURI", "A")},
	{GradeByAcidFibre, 100, GradeUtility, printed("USDA-HAY-MISSOURI", "A")},
	{GradeByNeutralFibre, 34, GradeSupreme, printed("USDA-HAY-COPY", "B")},
	{GradeByNeutralFibre, 36, GradePremium, printed("USDA-HAY-COPY", "B")},
	{GradeByNeutralFibre, 40, GradeGood, printed("USDA-HAY-COPY", "B")},
	{GradeByNutrients, 62, GradeSupreme, printed("USDA-HAY-COPY", "B")},
	{GradeByNutrients, 60.5, GradePremium, printed("USDA-HAY-COPY", "B")},
	{GradeByNutrients, 58, GradeGood, printed("USDA-HAY-COPY", "B")},
	{GradeByProtein, 22, GradeSupreme, printed("USDA-HAY-COPY", "B")},
	{GradeByProtein, 20, GradePremium, printed("USDA-HAY-COPY", "B")},
	{GradeByProtein, 18, GradeGood, printed("USDA-HAY-COPY", "B")},
	{GradeByGrassProtein, 13, GradePremium, printed("USDA-HAY-MISSOURI", "A")},
	{GradeByGrassProtein, 9, GradeGood, printed("USDA-HAY-MISSOURI", "A")},
	{GradeByGrassProtein, 5, GradeFair, printed("USDA-HAY-MISSOURI", "A")},
	{GradeByGrassProtein, 0, GradeLow, printed("USDA-HAY-MISSOURI", "A")},
}

// pastureGrades are the classes of PastureGrades.
var pastureGrades = []PastureGrade{
	{"very-high", 75 * units.Percent, 45 * units.Percent, 60 * units.Percent, 10 * units.Percent, printed("VIC-PASTURE", "A")},
	{"high", 75 * units.Percent, 45 * units.Percent, 30 * units.Percent, 10 * units.Percent, printed("VIC-PASTURE", "A")},
	{"medium", 70 * units.Percent, 45 * units.Percent, 15 * units.Percent, 20 * units.Percent, printed("VIC-PASTURE", "A")},
	{"low", 65 * units.Percent, 45 * units.Percent, 5 * units.Percent, 50 * units.Percent, printed("VIC-PASTURE", "A")},
}
