package herd

// Limits of stock water in ppm. An "over" is printed as over the figure; where it
// is not, the figure itself belongs to the class.
var waterLimits = []WaterLimit{
	{MontanaSolids, DrinkersGrown, 1000, false, GradeLoosens, printed("MONTANA-SOLIDS", "A")},
	{MontanaSolids, DrinkersGrown, 3000, false, GradeSatisfactory, printed("MONTANA-SOLIDS", "A")},
	{MontanaSolids, DrinkersGrown, 5000, false, GradeReasonable, printed("MONTANA-SOLIDS", "A")},
	{MontanaSolids, DrinkersGrown, 7000, false, GradeRisk, printed("MONTANA-SOLIDS", "A")},
	{MontanaSolids, DrinkersGrown, 10000, true, GradeUnfit, printed("MONTANA-SOLIDS", "A")},
	{MontanaSolids, DrinkersBreeding, 1000, false, GradeLoosens, printed("MONTANA-SOLIDS", "A")},
	{MontanaSolids, DrinkersBreeding, 3000, false, GradeSatisfactory, printed("MONTANA-SOLIDS", "A")},
	{MontanaSolids, DrinkersBreeding, 5000, false, GradeUnfit, printed("MONTANA-SOLIDS", "A")},
	{MontanaSolids, DrinkersPoultry, 1000, false, GradeLoosens, printed("MONTANA-SOLIDS", "A")},
	{MontanaSolids, DrinkersPoultry, 3000, false, GradePoor, printed("MONTANA-SOLIDS", "A")},
	{MontanaSolids, DrinkersPoultry, 5000, false, GradeUnfit, printed("MONTANA-SOLIDS", "A")},

	{DakotaSolids, DrinkersGrown, 4500, true, GradeAnalyse, printed("NDSU-STOCK-WATER", "B")},
	{DakotaSolids, DrinkersGrown, 5000, false, GradeUnfit, printed("NDSU-STOCK-WATER", "B")},
	{SaskatchewanSolids, DrinkersGrown, 3000, true, GradeUnfit, printed("SRC-STOCK-WATER", "A")},
	{LaboratorySolids, DrinkersGrown, 2500, false, GradeAnalyse, printed("SPECTRUM-WATER watch", "A")},
	{LaboratorySolids, DrinkersGrown, 5000, false, GradeUnfit, printed("SPECTRUM-WATER limit", "A")},

	{DakotaSulfate, DrinkersGrown, 800, true, GradeAnalyse, printed("NDSU-STOCK-WATER", "B")},
	{DakotaSulfate, DrinkersGrown, 1000, false, GradeUnfit, printed("NDSU-STOCK-WATER", "B")},
	{DakotaSulfate, DrinkersYoung, 500, false, GradeUnfit, printed("NDSU-STOCK-WATER calves", "B")},
	{DakotaSulfateEarlier, DrinkersGrown, 1000, false, GradeLoosens, printed("NDSU-SULFATE-2008 scours", "A")},
	{DakotaSulfateEarlier, DrinkersGrown, 1500, false, GradeUnfit, printed("NDSU-SULFATE-2008", "A")},
	{SouthDakotaSulfate, DrinkersGrown, 1500, false, GradeLoosens, printed("SDSU-SULFATE-2012 passing scours", "B")},
	{SouthDakotaSulfate, DrinkersGrown, 2000, false, GradeRisk, printed("SDSU-SULFATE-2012 poorer gain", "B")},
	{SouthDakotaSulfate, DrinkersGrown, 3000, true, GradeUnfit, printed("SDSU-SULFATE-2012 can kill quickly", "B")},
	{CanadianSulfate, DrinkersGrown, 1000, false, GradeRisk, printed("CANADA-SULFATE-2017 slower growth", "B")},
	{CanadianSulfate, DrinkersGrown, 2000, true, GradeUnfit, printed("CANADA-SULFATE-2017 nervous signs", "B")},
	{SaskatchewanSulfate, DrinkersGrown, 1000, true, GradeUnfit, printed("SRC-STOCK-WATER", "A")},
	{LaboratorySulfate, DrinkersGrown, 500, false, GradeAnalyse, printed("SPECTRUM-WATER watch", "A")},
	{LaboratorySulfate, DrinkersGrown, 1000, false, GradeUnfit, printed("SPECTRUM-WATER limit", "A")},

	{SouthDakotaNitrateNitrogen, DrinkersGrown, 100, true, GradeRisk, printed("SDSU-NITRATE-WATER caution", "B")},
	{SouthDakotaNitrateNitrogen, DrinkersGrown, 300, true, GradeUnfit, printed("SDSU-NITRATE-WATER may be toxic", "B")},
	{SouthDakotaNitrate, DrinkersGrown, 440, true, GradeRisk, printed("SDSU-NITRATE-WATER caution", "B")},
	{SouthDakotaNitrate, DrinkersGrown, 1300, true, GradeUnfit, printed("SDSU-NITRATE-WATER may be toxic", "B")},
	{MinnesotaNitrateNitrogen, DrinkersGrown, 100, true, GradeRisk, printed("UMN-NITRATE-WATER over the safe value", "A")},
}
