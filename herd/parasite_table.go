package herd

import "example.org/soum/units"

// The printed anchors of hatching, EXT-GOAT-WORMS phase 3, mark A: the ends of the
// spans of temperature in °F, and the days at each.
var (
	hatchDegrees = [...]float64{50, 52, 77, 79}
	hatchLow     = [...]float64{15, 15, 3, 3}
	hatchHigh    = [...]float64{30, 30, 5, 5}
)

// worms is a row in days.
func worms(stage WormStage, by WormSource, low, high units.Days, source, mark string) WormRow {
	return WormRow{stage, by, units.Span[units.Days]{Low: low, High: high}, printed(source, mark)}
}

// wormMonth is a month as a twelfth of a year, which is ours.
const wormMonth = yearMonth

// wormRows is the table of WormDays.
var wormRows = []WormRow{
	worms(EggToInfective, WormsWestVirginia, 4, 10, "WVU-WORMS much slower under 10 °C, over 35 °C or dry", "A"),
	worms(EggToInfective, WormsOhio, 6, 6, "OHIO-WORMS as little as", "A"),
	worms(InfectiveToLaying, WormsWestVirginia, 18, 18, "WVU-WORMS at least", "A"),
	worms(LarvaePeak, WormsTropics, 14, 14, "EXT-GOAT-WORMS phase 4", "A"),
	worms(LarvaePeak, WormsTemperate, 28, 35, "EXT-GOAT-WORMS phase 4", "A"),
	worms(LarvaeDown, WormsTropics, 30, 30, "EXT-GOAT-WORMS phase 4", "A"),
	worms(LarvaeDown, WormsTemperate, 60, 60, "EXT-GOAT-WORMS phase 4, not before about", "A"),
	worms(LarvaeDown, WormsNcat, 40, 40, "NCAT-WORMS at least, on infected pasture", "A"),
	worms(LarvaeDead, WormsWestVirginia, 3*wormMonth, 6*wormMonth, "WVU-WORMS most, summer to winter; some over a year", "A"),
	worms(LarvaeDead, WormsOhio, 120, 120, "OHIO-WORMS up to, in cool wet weather", "A"),
	worms(LarvaeDead, WormsTrade, 3*wormMonth, 7*wormMonth, "PARKES-WORMS", "B"),
	worms(MoveOut, WormsNcat, 4, 4, "NCAT-WORMS out by the day", "A"),
	worms(MoveOut, WormsOhio, 4, 6, "OHIO-WORMS paddocks of", "A"),
}

// larvalClimbs is how high larvae climb, inches.
var larvalClimbs = [...]units.Span[units.Height]{
	ClimbNcatUsual - 1:   {Low: 1 * units.HeightInch, High: 3 * units.HeightInch},
	ClimbNcatMost - 1:    {Low: 4 * units.HeightInch, High: 4 * units.HeightInch},
	ClimbSouthDakota - 1: {Low: 2 * units.HeightInch, High: 3 * units.HeightInch},
}

// wormStubbles is what to leave standing, inches.
var wormStubbles = [...]units.Height{
	StubbleSouthDakota - 1: 4 * units.HeightInch,
	StubbleNcat - 1:        6 * units.HeightInch,
}

// flyDays is the time from egg to adult.
var flyDays = [...]units.Span[units.Days]{
	HornFly - 1:   {Low: 10, High: 14},
	HouseFly - 1:  {Low: 10, High: 10},
	StableFly - 1: {Low: 21, High: 21},
	FaceFly - 1:   {Low: 12, High: 20},
}

// birdsFollowDays is custom, from memory.
var birdsFollowDays = units.Span[units.Days]{Low: 3, High: 4}
