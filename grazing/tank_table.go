package grazing

import "example.org/soum/units"

func feet(low, high units.Length) units.Span[units.Length] {
	return units.Span[units.Length]{Low: low * units.Foot, High: high * units.Foot}
}

// walkRows is the table of WalkLimit.
var walkRows = []WalkRow{
	{WalkKentucky, feet(800, 800), "walk no more than this", "KENTUCKY-WATER", "A"},
	{WalkEven, feet(200, 800), "use is very high nearer and even between", "KENTUCKY-WATER", "A"},
	{WalkMissouri, feet(900, 900), "walk no more than this", "MISSOURI-WATER-PRESS", "B"},
	{WalkFarmPress, feet(400, 600), "walk no more than this", "HFG-WATER", "B"},
	{WalkDairy, feet(300, 300), "dairy cows in milk", "NRCS-PLAN-WATER", "B"},
	{WalkOther, feet(1000, 1000), "other stock", "NRCS-PLAN-WATER", "B"},
	{WalkUnused, feet(1100, 1100), "under 20 % used beyond, on long pastures of 10 acres", "FSRC-WATER", "A"},
	{WalkRangeFlat, feet(2*5280, 2*5280), "level range, two miles", "FSRC-WATER", "A"},
	{WalkRangeRough, feet(5280, 5280), "rough range, one mile", "FSRC-WATER", "A"},
}

// tankHourEach is USDA-TANK-SHEET, mark B.
const tankHourEach = 2 * units.Gallon

// tankDays is the store of each rule of tanks in days of need; the first goes by
// head. USDA-TANK-SHEET, mark B; SD2006-1 and OHIO-ANR-12, mark A.
var tankDays = [...]float64{
	TankHour - 1:     0,
	TankHours - 1:    0.25,
	TankSlow - 1:     1,
	TankSun - 1:      2,
	TankUnsure - 1:   3,
	TankHerdOhio - 1: 0.25,
}
