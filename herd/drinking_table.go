package herd

import "example.org/soum/units"

// beefWaterDegrees are the columns of beefWater, °F.
var beefWaterDegrees = [...]float64{70, 80, 90}

// beefWater is WINCHESTER-1956, gallons a day, one row a drinker; mark B.
var beefWater = [...][3]float64{
	DrinkerCalf - 1:      {6.5, 7.4, 10.6},
	DrinkerGrowing - 1:   {9.3, 10.6, 14},
	DrinkerFinishing - 1: {10.8, 12.3, 16.5},
	DrinkerDryCow - 1:    {10.8, 12.4, 17.6},
	DrinkerBull - 1:      {12.7, 14.6, 19.5},
}

// The axes of cowWater: pounds of cow, pounds of milk a day, °F.
var (
	cowWaterPounds  = [...]float64{1100, 1500}
	cowWaterMilk    = [...]float64{0, 10, 25}
	cowWaterDegrees = [...]float64{40, 90}
)

// cowWater is KSU-COW-WATER, gallons a day by weight, milk and temperature; mark
// A. Its column of 65 °F lies on the line between these and is computed.
var cowWater = [2][3][2]float64{
	{{8.2, 13.4}, {10.5, 15.7}, {12.8, 17.9}},
	{{10.2, 15.3}, {14.0, 19.1}, {16.3, 21.4}},
}

// Dairy cows at 80 °F, NDSU-WATER-2008: pounds of milk, gallons a day; mark A. The
// printed cell of 60 lb (24.7) is left out: it does not fit its neighbours.
var (
	dairyWaterMilk    = [...]float64{20, 80, 100}
	dairyWaterGallons = [...]float64{17.9, 38.7, 45.7}
)

// waterCurve is a printed row of water by live weight.
type waterCurve struct {
	pounds, gallons []float64
	source          string
}

// waterCurves are the rows of WaterByWeight: NDSU-AS1763-COPY mark B,
// NDSU-WATER-2008 mark A.
var waterCurves = [...]waterCurve{
	CurveGrowingCool - 1:   {[]float64{400, 600, 800}, []float64{4.0, 5.3, 6.3}, "NDSU-AS1763-COPY"},
	CurveFinishingCool - 1: {[]float64{400, 600, 800}, []float64{6.0, 7.3, 8.7}, "NDSU-AS1763-COPY"},
	CurveGrowingHot - 1:    {[]float64{400, 600, 800}, []float64{9, 12, 14}, "NDSU-WATER-2008"},
	CurveFinishingHot - 1:  {[]float64{600, 800, 1000, 1200}, []float64{14, 17, 20, 22.5}, "NDSU-WATER-2008"},
	CurveDairyHeifer - 1:   {[]float64{200, 800, 1200}, []float64{3.3, 10.6, 14.5}, "NDSU-WATER-2008"},
}

// drunk is a row of so many gallons for so many head in a day.
func drunk(animal string, by DrinkingSource, head, low, high float64, source, mark string) DrinkingRow {
	return DrinkingRow{animal, by, head, 1, gallons(low, high), printed(source, mark)}
}

// drunkLitres is a row of litres a head and day.
func drunkLitres(animal string, by DrinkingSource, litres float64, source, mark string) DrinkingRow {
	each := units.WaterRate(litres) * units.LitrePerDay
	return DrinkingRow{animal, by, 1, 1, units.Single(each), printed(source, mark)}
}

// drunkWeekly is a row of gallons for a hundred birds in a week.
func drunkWeekly(animal string, low, high float64) DrinkingRow {
	return DrinkingRow{animal, DrinkByCompilation, 100, units.Week, gallons(low, high), printed("HENS-WATER", "B")}
}

// drunkPounds is a row of pounds of water a head and day.
func drunkPounds(animal string, low, high float64) DrinkingRow {
	span := units.Span[units.WaterRate]{Low: units.WaterRate(low) * waterPound, High: units.WaterRate(high) * waterPound}
	return DrinkingRow{animal, DrinkByCompilation, 1, 1, span, printed("HENS-WATER", "B")}
}

// waterPound is a pound of water a day as a volume, a litre to the kilogram.
const waterPound = units.WaterRate(units.Pound/units.Kilogram) * units.LitrePerDay

// drinkingRows is the table of Drinking.
var drinkingRows = []DrinkingRow{
	drunk("cow-dry-bred", DrinkByKansas, 1, 6, 15, "KSU-WATER", "A"),
	drunk("cow-nursing", DrinkByKansas, 1, 11, 18, "KSU-WATER", "A"),
	drunk("cow-dairy", DrinkByKansas, 1, 15, 30, "KSU-WATER", "A"),
	drunk("cow-wintering-pregnant-at-40f", DrinkByKansas, 1, 6.0, 6.0, "KSU-WATER", "A"),
	drunk("cow-wintering-pregnant-at-60f", DrinkByKansas, 1, 7.4, 7.4, "KSU-WATER", "A"),
	drunk("cow-nursing-at-40f", DrinkByKansas, 1, 11.4, 11.4, "KSU-WATER", "A"),
	drunk("cow-nursing-at-60f", DrinkByKansas, 1, 14.5, 14.5, "KSU-WATER", "A"),
	drunk("cow-nursing-at-80f", DrinkByKansas, 1, 17.9, 17.9, "KSU-WATER", "A"),

	drunk("cow-dairy", DrinkByOhio, 1, 25, 25, "OHIO-WATER in milk", "B"),
	drunk("cow-nursing", DrinkByOhio, 1, 14, 15, "OHIO-WATER", "B"),
	drunk("ewe-in-milk", DrinkByOhio, 1, 3, 4, "OHIO-WATER", "B"),
	drunk("goat-in-milk", DrinkByOhio, 1, 2, 3, "OHIO-WATER", "B"),
	drunk("sow-in-milk", DrinkByOhio, 1, 5, 5, "OHIO-WATER about", "B"),

	drunk("ewe-150lb", DrinkByLincoln, 1, 0.75, 1.5, "LINCOLN-WATER", "B"),
	drunk("sheep-or-goat", DrinkByCarolina, 1, 0.75, 1.5, "NC-WATER", "A"),

	drunkLitres("wether-angora-on-dry-summer-pasture", DrinkByAustralia, 1.87, "MCGREGOR-1986", "A"),
	drunkLitres("wether-merino-on-dry-summer-pasture", DrinkByAustralia, 1.37, "MCGREGOR-1986", "A"),
	drunkLitres("wether-on-green-winter-pasture", DrinkByAustralia, 0.1, "MCGREGOR-1986", "A"),

	drunk("cow-nursing-at-88f", DrinkByDakota, 1, 16.5, 16.5, "NDSU-WATER-2008", "A"),
	drunk("cow-dry-bred-at-88f", DrinkByDakota, 1, 14, 14, "NDSU-WATER-2008 or a heifer", "A"),
	drunk("bull-at-88f", DrinkByDakota, 1, 18, 18, "NDSU-WATER-2008", "A"),
	drunk("cow-dairy-dry-1400lb-at-80f", DrinkByDakota, 1, 16.2, 16.2, "NDSU-WATER-2008", "A"),

	drunk("cow-pregnant-900lb-at-40f", DrinkByDakotaTable, 1, 6.7, 6.7, "NDSU-AS1763-COPY table 1", "B"),
	drunk("cow-pregnant-1100lb-at-40f", DrinkByDakotaTable, 1, 6.0, 6.0, "NDSU-AS1763-COPY table 1", "B"),
	drunk("cow-nursing-900lb-at-40f", DrinkByDakotaTable, 1, 11.4, 11.4, "NDSU-AS1763-COPY table 1", "B"),

	drunk("hen-not-laying", DrinkByCompilation, 100, 5.0, 5.0, "HENS-WATER", "B"),
	drunk("hen-laying", DrinkByCompilation, 100, 5.0, 7.5, "HENS-WATER", "B"),
	drunk("hen-at-90f", DrinkByCompilation, 100, 9.0, 9.0, "HENS-WATER", "B"),
	drunkWeekly("turkey-1-to-3-weeks", 8, 18),
	drunkWeekly("turkey-9-to-13-weeks", 62, 100),
	drunkWeekly("turkey-15-to-19-weeks", 117, 118),
	drunkPounds("sheep-on-dry-range", 5, 13),
	drunkPounds("sheep-on-hay-and-grain", 0.3, 6),
	drunkPounds("pig-60-to-80lb", 7, 7),
	drunkPounds("pig-75-to-125lb", 16, 16),
	drunkPounds("sow-in-milk", 40, 50),

	drunk("cattle-beef", DrinkBySouthDakota, 1, 7, 12, "SDSU-C274 table 1", "A"),
	drunk("cow-dairy", DrinkBySouthDakota, 1, 10, 16, "SDSU-C274 table 1", "A"),
	drunk("horse", DrinkBySouthDakota, 1, 8, 12, "SDSU-C274 table 1", "A"),
	drunk("pig", DrinkBySouthDakota, 1, 3, 5, "SDSU-C274 table 1", "A"),
	drunk("sheep-or-goat", DrinkBySouthDakota, 1, 1, 4, "SDSU-C274 table 1", "A"),
	drunk("chicken", DrinkBySouthDakota, 100, 8, 10, "SDSU-C274 table 1", "A"),
	drunk("turkey", DrinkBySouthDakota, 100, 10, 15, "SDSU-C274 table 1", "A"),
}

// Water by the feed eaten: OREGON-SHEEP-WATER, a gallon with four pounds of feed
// of 90 % dry matter, mark A; NDSU-AS1763-COPY, pounds of water to a pound of dry
// matter, mark B, a litre of water to the kilogram.
const (
	sheepFeedOfGallon = 4 * 0.90 * units.PoundPerDay
	cowWaterLow       = 3
	cowWaterHigh      = 5
)
