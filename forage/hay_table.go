package forage

import "example.org/soum/units"

// percents is a printed span in per cent.
func percents(low, high units.Fraction) units.Span[units.Fraction] {
	return units.Span[units.Fraction]{Low: low * units.Percent, High: high * units.Percent}
}

// storageRows is the table of StorageLoss. Purdue prints what is kept, 92, 85 and 76 %
// of the weight, and tells neither cover nor time of the last two.
var storageRows = []StorageRow{
	{StoredInsideOnRock, StorageByKentucky, percents(3, 5), false, printed("KENTUCKY-HAY", "A")},
	{StoredInsideOnGround, StorageByKentucky, percents(5, 7), false, printed("KENTUCKY-HAY", "A")},
	{StoredCoveredOnPad, StorageByKentucky, percents(10, 17), false, printed("KENTUCKY-HAY", "A")},
	{StoredCoveredOnGround, StorageByKentucky, percents(15, 35), false, printed("KENTUCKY-HAY", "A")},
	{StoredUncoveredOnPad, StorageByKentucky, percents(13, 20), false, printed("KENTUCKY-HAY", "A")},
	{StoredUncoveredOnGround, StorageByKentucky, percents(20, 20), true, printed("KENTUCKY-HAY", "A")},
	{StoredInside, StorageByIowa, percents(5, 5), false, printed("ISU-STORAGE", "B")},
	{StoredCoveredOnPad, StorageByIowa, percents(10, 10), false, printed("ISU-STORAGE", "B")},
	{StoredUncoveredOnPad, StorageByIowa, percents(20, 20), false, printed("ISU-STORAGE", "B")},
	{StoredUncoveredOnGround, StorageByIowa, percents(25, 35), false, printed("ISU-STORAGE", "B")},
	{StoredWrapped, StorageByIowa, percents(7, 7), false, printed("ISU-STORAGE", "B")},
	{StoredInside, StorageByWisconsin, percents(1, 5), false, printed("WISC-STORAGE", "A")},
	{StoredCoveredOnGround, StorageByWisconsin, percents(5, 10), false, printed("WISC-STORAGE", "A")},
	{StoredUncoveredOnGround, StorageByWisconsin, percents(5, 20), false, printed("WISC-STORAGE", "A")},
	{StoredCoveredOnGround, StorageByWisconsinLong, percents(10, 15), false, printed("WISC-STORAGE", "A")},
	{StoredUncoveredOnGround, StorageByWisconsinLong, percents(15, 50), false, printed("WISC-STORAGE", "A")},
	{StoredInside, StorageByPurdue, percents(8, 8), false, printed("PURDUE-STORAGE", "A")},
	{StoredUncoveredOnPad, StorageByPurdue, percents(15, 15), false, printed("PURDUE-STORAGE", "A")},
	{StoredUncoveredOnGround, StorageByPurdue, percents(24, 24), false, printed("PURDUE-STORAGE", "A")},
}

// feederRows is the table of FeederWaste.
var feederRows = []FeederRow{
	{FeederCone, FeederByBuskirk, 3.5 * units.Percent, printed("ILL-FEEDERS Buskirk et al. 2003", "A")},
	{FeederRing, FeederByBuskirk, 6.1 * units.Percent, printed("ILL-FEEDERS Buskirk et al. 2003", "A")},
	{FeederTrailer, FeederByBuskirk, 11.4 * units.Percent, printed("ILL-FEEDERS Buskirk et al. 2003", "A")},
	{FeederCradle, FeederByBuskirk, 14.6 * units.Percent, printed("ILL-FEEDERS Buskirk et al. 2003", "A")},
	{FeederCone, FeederByOklahoma, 5.3 * units.Percent, printed("ILL-FEEDERS Oklahoma State", "A")},
	{FeederSheeted, FeederByOklahoma, 13.0 * units.Percent, printed("ILL-FEEDERS Oklahoma State", "A")},
	{FeederRing, FeederByOklahoma, 20.5 * units.Percent, printed("ILL-FEEDERS Oklahoma State", "A")},
	{FeederPoly, FeederByOklahoma, 21.0 * units.Percent, printed("ILL-FEEDERS Oklahoma State", "A")},
	{FeederNone, FeederByBell, 45 * units.Percent, printed("ILL-FEEDERS Bell and Martz 1973", "A")},
}

// rainCurve is a loss in g/kg by rain in mm.
type rainCurve struct{ square, slope, start float64 }

// rainLosses is AGRONJ-97-604 figure 1, mark A, its units ours.
var rainLosses = [...]rainCurve{
	RainedBermudagrass - 1: {-0.0081, 0.83, 0.49},
	RainedOrchardgrass - 1: {-0.018, 2.39, 10.29},
}
