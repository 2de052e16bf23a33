package herd

import "example.org/soum/units"

const (
	gram = units.Gram
	// yearMonth is a month as a twelfth of a year, which is ours.
	yearMonth = units.Days(daysOfYear) / 12
	// oxideOfPhosphorus and oxideOfPotassium are P2O5 over P and K2O over K, by the
	// atomic weights.
	oxideOfPhosphorus = 2.29
	oxideOfPotassium  = 1.20
)

// daily2015 is a row of NVZ-2015: litres of manure, grams of N and P2O5 a head and
// day.
func daily2015(animal string, litres units.Volume, n, p2o5 units.Mass) ExcretionRow {
	return ExcretionRow{Animal: animal, By: ExcretedEngland, Head: 1, Days: 1, Volume: litres * units.Litre, Nitrogen: n * gram, Phosphate: p2o5 * gram, Printed: printed("NVZ-2015 schedule 1", "A")}
}

// daily2008 is a row of NVZ-2008: litres of manure and grams of N a head and day.
func daily2008(animal string, litres units.Volume, n units.Mass) ExcretionRow {
	return ExcretionRow{Animal: animal, By: ExcretedEnglandEarlier, Head: 1, Days: 1, Volume: litres * units.Litre, Nitrogen: n * gram, Printed: printed("NVZ-2008 pigs", "A")}
}

// thousandBirds is a row of NI-2018: kg of N and P of 1,000 birds, in so many
// days or, where that is 0, in their life.
func thousandBirds(animal string, days units.Days, n, p units.Mass) ExcretionRow {
	return ExcretionRow{Animal: animal, By: ExcretedUlster, Head: 1000, Days: days, Nitrogen: n, Phosphorus: p, Printed: printed("NI-2018 draft", "A")}
}

// wisconsin is a row of WISC-A3601, pounds of manure a head and day.
func wisconsin(animal string, manure units.Mass) ExcretionRow {
	return ExcretionRow{Animal: animal, By: ExcretedWisconsin, Head: 1, Days: 1, Manure: manure * units.Pound, Printed: printed("WISC-A3601", "B")}
}

// firstCrop is a row of WISC-A3601: pounds of N, P2O5, K2O and S of a head and
// year that a crop can use in the first year.
func firstCrop(animal string, n, p2o5, k2o, s units.Mass) ExcretionRow {
	return ExcretionRow{Animal: animal, By: ExcretedForFirstCrop, Head: 1, Days: daysOfYear, Nitrogen: n * units.Pound, Phosphate: p2o5 * units.Pound, Potash: k2o * units.Pound, Sulfur: s * units.Pound, Printed: printed("WISC-A3601", "B")}
}

// irish is a row of IRELAND-N, kg of N a cow and year.
func irish(animal string, n units.Mass) ExcretionRow {
	return ExcretionRow{Animal: animal, By: ExcretedIreland, Head: 1, Days: daysOfYear, Nitrogen: n, Printed: printed("IRELAND-N", "B")}
}

// scottish is a row of SCOTLAND-SLURRY, m³ a head and month.
func scottish(animal string, slurry units.Volume) ExcretionRow {
	return ExcretionRow{Animal: animal, By: ExcretedScotland, Head: 1, Days: yearMonth, Volume: slurry, Printed: printed("SCOTLAND-SLURRY", "A")}
}

// awmfh is a row of AWMFH-2008: pounds of manure, N, P and K a day for 1,000 lb.
func awmfh(animal string, manure, n, p, k units.Mass) ExcretionRow {
	return ExcretionRow{Animal: animal, By: ExcretedHandbook, Weight: 1000 * units.LivePound, Days: 1, Manure: manure * units.Pound, Nitrogen: n * units.Pound, Phosphorus: p * units.Pound, Potassium: k * units.Pound, Printed: printed("AWMFH-2008", "B")}
}

// watershed is a row of WATERSHED-MODEL: kg of N and P a day for 1,000 kg.
func watershed(animal string, n, p units.Mass) ExcretionRow {
	return ExcretionRow{Animal: animal, By: ExcretedWatershed, Weight: units.LiveTonne, Days: 1, Nitrogen: n, Phosphorus: p, Printed: printed("WATERSHED-MODEL", "B")}
}

// place gives the rows of ESEU-2021: kg of N an animal place and year by a
// guideline, by a chamber of agriculture, and the mean that the paper takes.
func place(animal string, guideline, chamber units.Mass) [3]ExcretionRow {
	row := func(by ExcretionSource, n units.Mass) ExcretionRow {
		return ExcretionRow{Animal: animal, By: by, Head: 1, Days: daysOfYear, Nitrogen: n, Printed: printed("ESEU-2021 table 3, an animal place", "A")}
	}
	return [3]ExcretionRow{row(ExcretedGuideline, guideline), row(ExcretedChamber, chamber), row(ExcretedPaper, (guideline+chamber)/2)}
}

// placeByChamber is a place of which the guideline has none.
func placeByChamber(animal string, chamber units.Mass) []ExcretionRow {
	rows := place(animal, chamber, chamber)
	return rows[1:]
}

// excretionRows is the table of Excretion without the rows of excretionPlaces.
var excretionRows = []ExcretionRow{
	daily2015("calf-under-2-months", 7, 23, 12.7),
	daily2015("dairy-heifer-2-to-12-months", 20, 95, 34),
	daily2015("dairy-heifer-12-months-to-calving", 40, 167, 69),
	daily2015("dairy-cow-over-9000-litres", 64, 315, 142),
	daily2015("dairy-cow-6000-to-9000-litres", 53, 276, 121),
	daily2015("dairy-cow-under-6000-litres", 42, 211, 93),
	daily2015("beef-2-to-12-months", 20, 91, 33),
	daily2015("beef-12-to-24-months", 26, 137, 43),
	daily2015("beef-over-24-months", 32, 137, 60),
	daily2015("suckler-cow-to-500kg", 32, 167, 65),
	daily2015("suckler-cow-over-500kg", 45, 227, 86),
	daily2015("bull", 26, 132, 60),
	daily2015("sheep-6-to-9-months", 1.8, 5.5, 0.76),
	daily2015("sheep-9-months-to-lambing", 1.8, 3.9, 2.1),
	daily2015("ewe-under-60kg", 3.3, 21, 8.8),
	daily2015("ewe-60kg-and-over", 5, 33, 10),
	daily2015("goat", 3.5, 41, 18.8),
	daily2015("deer-breeding", 5, 42, 17.6),
	daily2015("deer-other", 3.5, 33, 11.7),
	daily2015("horse", 24, 58, 56),

	daily2008("pig-7-to-13kg", 1.3, 4.1),
	daily2008("pig-13-to-31kg", 2, 14.2),
	daily2008("pig-31-to-66kg", 3.7, 24),
	daily2008("pig-66kg-to-slaughter", 5.1, 33),
	daily2008("gilt", 5.6, 38),
	daily2008("sow-with-litter", 10.9, 49),
	daily2008("sow-with-litter-on-amino-acids", 10.9, 44),
	daily2008("boar", 8.7, 48),

	thousandBirds("hen-free-range", units.Week, 5.4, 2.2),
	thousandBirds("pullet", units.Week, 4.7, 1.7),
	thousandBirds("broiler-free-range", 0, 44.9, 11.4),
	thousandBirds("turkey", 0, 534, 129),
	thousandBirds("duck", 0, 139, 65),

	wisconsin("dairy-500lb", 43),
	wisconsin("dairy-1400lb", 120),
	wisconsin("beef-750lb", 45),
	wisconsin("pig-150lb", 9.8),
	wisconsin("sow-with-litter", 22.5),
	wisconsin("layer-4lb", 0.21),
	wisconsin("broiler-2lb", 0.14),

	firstCrop("dairy-500lb", 25, 25, 60, 5),
	firstCrop("dairy-1400lb", 65, 65, 175, 20),
	firstCrop("beef-750lb", 35, 40, 65, 5),
	firstCrop("pig-150lb", 5, 5, 15, 5),
	firstCrop("sow-with-litter", 15, 10, 30, 5),
	firstCrop("layer-4lb", 0.50, 0.50, 0.35, 0.05),
	firstCrop("broiler-2lb", 0.35, 0.35, 0.25, 0.05),

	irish("dairy-cow", 89),
	irish("dairy-cow-earlier", 85),
	irish("dairy-cow-under-4500kg-milk", 80),
	irish("dairy-cow-to-6500kg-milk", 92),
	irish("dairy-cow-over-6500kg-milk", 106),

	scottish("dairy-cow-650kg", 1.93),
	scottish("dairy-cow-550kg", 1.61),
	scottish("dairy-cow-450kg", 1.28),
	scottish("suckler-cow", 0.98),
	scottish("bullock-440kg", 0.79),
	scottish("calf", 0.21),
	scottish("sow-with-litter", 0.33),

	awmfh("dairy-cow-in-milk", 108, 0.71, 0.12, 0.33),
	awmfh("beef-cow", 104, 0.35, 0.08, 0.25),
	awmfh("beef-calf-450-to-750lb", 77, 0.45, 0.08, 0.29),
	awmfh("sow-gestating", 25, 0.16, 0.05, 0.11),
	awmfh("sow-in-milk", 59, 0.45, 0.13, 0.28),
	awmfh("layer", 57, 1.1, 0.33, 0.39),
	awmfh("broiler", 88, 0.96, 0.28, 0.54),
	awmfh("duck", 102, 1, 0.35, 0.50),
	awmfh("lamb", 40, 0.45, 0.07, 0.30),
	awmfh("horse-idle", 51, 0.18, 0.026, 0.05),
	awmfh("horse-worked", 52, 0.31, 0.066, 0.19),
	{Animal: "dairy-cow-dry-1660lb", By: ExcretedHandbook, Head: 1, Days: 1, Nitrogen: 0.50 * units.Pound, Printed: printed("AWMFH-2008", "B")},

	watershed("dairy-cow", 0.44, 0.07),
	watershed("beef", 0.31, 0.09),
	watershed("pig", 0.48, 0.15),
	watershed("sheep", 0.37, 0.10),
	watershed("horse", 0.28, 0.06),
	watershed("layer", 0.85, 0.29),
	watershed("broiler", 1.07, 0.30),
	watershed("turkey", 0.59, 0.20),

	{Animal: "horse-1000lb", By: ExcretedElsewhere, Head: 1, Days: 1, Manure: 50 * units.Pound, Printed: printed("LPELC-HORSE about", "A")},
	{Animal: "lamb-100lb", By: ExcretedElsewhere, Head: 1, Days: 1, Manure: 4 * units.Pound, Printed: printed("SHEEP101-MANURE about", "A")},
	{Animal: "sheep", By: ExcretedElsewhere, Weight: 1000 * units.LivePound, Days: 1, Manure: 40 * units.Pound, Printed: printed("SHEEP101-MANURE", "A")},
	{Animal: "duck-3lb", By: ExcretedElsewhere, Head: 1, Days: 1, Manure: 0.17 * units.Pound, Printed: printed("BARKER-DUCK table 81, litter", "A")},
	{Animal: "duck", By: ExcretedElsewhere, Weight: 1000 * units.LivePound, Days: 1, Manure: 58 * units.Pound, Nitrogen: 0.49 * units.Pound, Phosphate: 0.62 * units.Pound, Potash: 0.37 * units.Pound, Printed: printed("BARKER-DUCK table 81, litter", "A")},
	{Animal: "dairy-cow-635kg", By: ExcretedElsewhere, Head: 1, Days: 1, Nitrogen: (150 + 175) * gram, Printed: printed("TOMLINSON-1996 urine and faeces", "A")},
	{Animal: "cow-grazing", By: ExcretedElsewhere, Head: 1, Days: 1, Nitrogen: 0.6 * units.Pound, Phosphorus: 0.1 * units.Pound, Potassium: 0.4 * units.Pound, Printed: printed("HFG-PATS", "B")},
	{Animal: "dairy-cow-holstein", By: ExcretedElsewhere, Head: 1, Days: 1, Nitrogen: 0.9 * units.Pound, Printed: printed("EXT-DAIRY-N about, 0.67 to 1.3", "A")},
}

// excretionTables holds all rows of Excretion.
var excretionTables = append([][]ExcretionRow{excretionRows}, excretionPlaces...)

// excretionPlaces are the rows of ESEU-2021.
var excretionPlaces = [][]ExcretionRow{
	rowsOf(place("calf-to-6-months", 10, 22)),
	rowsOf(place("dairy-cow", 60, 91)),
	rowsOf(place("cattle-over-6-months", 28, 70)),
	rowsOf(place("pig-weaner", 2.25, 3.8)),
	rowsOf(place("pig-fattening", 7.5, 12.2)),
	rowsOf(place("sow-with-litter", 26, 27.3)),
	rowsOf(place("broiler", 0.23, 0.39)),
	rowsOf(place("layer", 0.35, 0.76)),
	rowsOf(place("pullet", 0.24, 0.27)),
	rowsOf(place("turkey", 0.9, 1.34)),
	rowsOf(place("duck", 0.41, 0.61)),
	rowsOf(place("horse", 35, 53.6)),
	placeByChamber("goat-dairy", 15.2),
	placeByChamber("sheep-dairy", 20.1),
	rowsOf(place("rabbit", 0.352, 0.7)),
}

func rowsOf(rows [3]ExcretionRow) []ExcretionRow { return rows[:] }

// keptShares is the share of what is eaten that the animal, its milk or its young
// keep, one span a source.
var keptShares = [...]units.Span[units.Fraction]{
	KeptFlorida - 1:          percent(10, 20),
	KeptNebraska - 1:         percent(10, 30),
	KeptPrairieHeavy - 1:     percent(17.4, 17.4),
	KeptPrairieLight - 1:     percent(21.3, 21.3),
	KeptFattening - 1:        percent(0, 5),
	KeptPig - 1:              percent(15, 15),
	KeptMilkingCow - 1:       percent(25, 25),
	KeptPurdueNitrogen - 1:   percent(20, 30),
	KeptPurduePhosphorus - 1: percent(15, 40),
	KeptPurduePotassium - 1:  percent(10, 20),
	KeptHolsteinMilk - 1:     percent(25, 30),
}

// collectedShares is WISC-A3601, mark B.
var collectedShares = [...]units.Fraction{
	HousingWinter - 1:        83 * units.Percent,
	HousingSummerMilking - 1: 66 * units.Percent,
}

// rawManureDays is CFR-205, mark A.
var rawManureDays = [...]units.Days{
	EdibleTouchesSoil - 1:  120,
	EdibleAboveSoil - 1:    90,
	EdibleNotForPeople - 1: 0,
}
