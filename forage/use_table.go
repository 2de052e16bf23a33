package forage

import "example.org/soum/units"

// stayRow is the share of the available forage eaten in a stay.
type stayRow struct {
	stay         units.Days
	share        units.Fraction
	source, mark string
}

var stayRows = [...]stayRow{
	{1 * units.Day, 80 * units.Percent, "PSU-STAY table 1.8-9", "A"},
	{2 * units.Day, 75 * units.Percent, "PSU-STAY table 1.8-9", "A"},
	{3 * units.Day, 75 * units.Percent, "PSU-STAY table 1.8-9", "A"},
	{4 * units.Day, 70 * units.Percent, "PSU-STAY table 1.8-9", "A"},
	{5 * units.Day, 65 * units.Percent, "PSU-STAY table 1.8-9", "A"},
	{6 * units.Day, 60 * units.Percent, "PSU-STAY table 1.8-9", "A"},
	{7 * units.Day, 60 * units.Percent, "PSU-STAY table 1.8-9", "A"},
}

// topRemoved and rootsStopped are CRIDER-1955 by NOBLE-ROOTS in per cent, one row a
// test; mark B. Nothing stopped from 0 to 40, and above 90 none is left to stop.
var (
	topRemoved   = [...]float64{0, 40, 50, 60, 70, 80, 90, 100}
	rootsStopped = [...][8]float64{
		RootTestFirst - 1:  {0, 0, 2, 50, 78, 100, 100, 100},
		RootTestSecond - 1: {0, 0, 8, 80, 97, 100, 100, 100},
		RootTestThird - 1:  {0, 0, 38, 54, 77, 91, 100, 100},
		RootTestFourth - 1: {0, 0, 13, 36, 76, 81, 100, 100},
	}
)

// residues is TAMU-5036, oven dry; mark A.
var residues = [...]units.Span[units.Yield]{
	Shortgrass - 1: {Low: 300 * units.PoundPerAcre, High: 500 * units.PoundPerAcre},
	Midgrass - 1:   {Low: 750 * units.PoundPerAcre, High: 1000 * units.PoundPerAcre},
	Tallgrass - 1:  {Low: 1200 * units.PoundPerAcre, High: 1500 * units.PoundPerAcre},
}

// used makes a row of shares used, in per cent.
func used(system GrazingSystem, by UseSource, low, high units.Fraction, of, source, mark, note string) UseRow {
	return UseRow{system, by, units.Span[units.Fraction]{Low: low * units.Percent, High: high * units.Percent}, of, printed(source, mark), note}
}

const (
	ofForage = "forage of the season"
	ofGrown  = "grass grown"
)

var useRows = []UseRow{
	used(SystemContinuous, UseByGeorgia, 30, 40, ofForage, "UGA-EFFICIENCY, AGRILIFE-EFFICIENCY", "B", ""),
	used(SystemSlow, UseByGeorgia, 50, 60, ofForage, "UGA-EFFICIENCY, AGRILIFE-EFFICIENCY", "B", "3 to 4 paddocks."),
	used(SystemModerate, UseByGeorgia, 60, 70, ofForage, "UGA-EFFICIENCY, AGRILIFE-EFFICIENCY", "B", "6 to 8 paddocks."),
	used(SystemStrip, UseByGeorgia, 70, 80, ofForage, "UGA-EFFICIENCY, AGRILIFE-EFFICIENCY", "B", "Strips or frequent moves."),
	used(SystemHay, UseByGeorgia, 30, 70, ofForage, "AGRILIFE-EFFICIENCY", "B", "Harvest loses 2.5 to 25 %, storing and feeding 5 to 50 % more."),
	used(SystemSilage, UseByGeorgia, 60, 85, ofForage, "AGRILIFE-EFFICIENCY", "B", ""),
	used(SystemGreenChop, UseByGeorgia, 70, 95, ofForage, "AGRILIFE-EFFICIENCY", "B", ""),
	used(SystemContinuous, UseByBritain, 50, 50, ofGrown, "AHDB-ROTATION", "B", "50 % or less."),
	used(SystemSlow, UseByBritain, 60, 60, ofGrown, "AHDB-ROTATION", "B", "A relaxed rotation."),
	used(SystemModerate, UseByBritain, 65, 65, ofGrown, "AHDB-ROTATION", "B", "Rotational."),
	used(SystemStrip, UseByBritain, 80, 80, ofGrown, "AHDB-ROTATION", "B", "Paddock grazing."),
	used(SystemContinuous, UseByCornell, 30, 30, ofForage, "CORNELL-SMALL-FARMS", "A", ""),
	used(SystemStrip, UseByCornell, 75, 75, ofForage, "CORNELL-SMALL-FARMS", "A", "24 paddocks and more."),
	used(SystemContinuous, UseByMississippi, 30, 35, ofForage, "MISSISSIPPI-USE", "B", "Conventional."),
	used(SystemModerate, UseByMississippi, 50, 60, ofForage, "MISSISSIPPI-USE", "B", "Moves every 3 to 4 days."),
	used(SystemStrip, UseByMississippi, 75, 75, ofForage, "MISSISSIPPI-USE", "B", "About so much, moved daily."),
	used(SystemContinuous, UseByMaine, 30, 35, ofForage, "UMAINE-LESSON-5", "A", "A low stocking rate."),
	used(SystemModerate, UseByMaine, 70, 70, ofForage, "UMAINE-LESSON-5", "A", "Moves every 3 days."),
	used(SystemContinuous, UseByTexasRange, 25, 25, ofForage, "TAMU-5036, LULING-STICK", "A", "Half stays, a quarter is lost."),
	used(SystemContinuous, UseByBryan, 45, 45, ofForage, "NRCS-BRYAN-528", "A", "Improved grass."),
	used(SystemContinuous, UseByNoble, 50, 50, ofForage, "NOBLE-DROUGHT", "A", "Bermudagrass."),
	used(SystemContinuous, UseByAustralia, 30, 40, ofGrown, "MLA-USE", "A", "What the industry reaches; up to 60 of green pasture where the dry season is short, 40 to 48 where over 150 days are dry."),
	used(SystemContinuous, UseByNorthDakota, 25, 50, ofForage, "ND-CURVE", "A", "Pasture, by system."),
	used(SystemHay, UseByNorthDakota, 70, 70, ofForage, "ND-CURVE", "A", ""),
	used(SystemRangeGrowing, UseBySouthDakota, 50, 50, "weight of the year's growth", "SDSU-IG-528", "A", "Not more."),
	used(SystemRangeDormant, UseBySouthDakota, 60, 60, "weight of the year's growth", "SDSU-IG-528", "A", "Not more."),
	used(SystemBrowse, UseBySouthDakota, 65, 65, "weight of the year's growth", "SDSU-IG-528", "A", "Not more."),
	used(SystemRangeGrowing, UseByQueensland, 15, 25, ofGrown, "MULGA-1996", "A", "Safe use; farms' practice ran from 5 to 95 %."),
}
