package forage

import "example.org/soum/units"

const (
	poundOfGram    = units.PoundPerAcre       // a factor in lb/ac for one gram
	kilogramOfGram = units.KilogramPerHectare // a factor in kg/ha for one gram
)

var frameRows = []Frame{
	{"ten-plots-of-0.96-ft2", 9.60 * units.SquareFoot, 10 * poundOfGram, printed("VEGETATION-ATTRIBUTES table 6", "A"), ""},
	{"ten-plots-of-2.4-ft2", 24.0 * units.SquareFoot, 4 * poundOfGram, printed("VEGETATION-ATTRIBUTES table 6", "A"), ""},
	{"ten-plots-of-9.6-ft2", 96.0 * units.SquareFoot, 1 * poundOfGram, printed("VEGETATION-ATTRIBUTES table 6", "A"), ""},
	{"plot-of-1.92-ft2", 1.92 * units.SquareFoot, 50 * poundOfGram, printed("CATTLEMAN-2014", "B"), "The text calls it 11.5 by 22 in, which is 1.757 ft²."},
	{"square-yard", 1 * units.SquareYard, 10.7 * poundOfGram, printed("CATTLEMAN-2014, LULING-STICK", "A"), "10.67 exactly."},
	{"square-of-0.4-m", 0.16 * units.SquareMetre, 62.5 * kilogramOfGram, printed("VEGETATION-ATTRIBUTES page 120", "A"), "The text calls the 62,500 frames per acre; they are per hectare."},
	{"square-of-0.5-m", 0.25 * units.SquareMetre, 40 * kilogramOfGram, printed("TEAGASC-CUT", "A"), "Printed as kilograms × 40,000."},
	{"square-of-37.1875-in", 37.1875 * 37.1875 / 144 * units.SquareFoot, 0, printed("NDMC-CLIP", "A"), "37 3/16 in a side within; the area is ours by multiplication, and makes 10 lb an acre for a gram."},
	{"hoop-of-3.545-m", 3.545 * 3.545 / (4 * pi) * units.SquareMetre, 0, printed("IDAHO-RANGE", "A"), "Round the rim; the area is ours by arithmetic, a square metre."},
	{"plot-of-1-m2", 1.00 * units.SquareMetre, 8.92 * poundOfGram, printed("TAMU-1646 page 2", "A"), "Printed as 39.4 in a side, for under 15 in of rain."},
	{"plot-of-0.5-m2", 0.50 * units.SquareMetre, 17.84 * poundOfGram, printed("TAMU-1646 page 2", "A"), "Printed as 27.8 in a side, for 16 to 30 in of rain."},
	{"plot-of-0.25-m2", 0.25 * units.SquareMetre, 35.64 * poundOfGram, printed("TAMU-1646 page 2", "A"), "Printed as 19.7 in a side, for 31 in of rain and over; the factor is printed 0.05 below four times that of a square metre."},
}

// airDryShares is UTAH-AIR-DRY in per cent, ready to flower, full bloom, seed
// shed; mark A.
var airDryShares = [...][3]units.Fraction{
	PlantAlkaliSacaton - 1:     {35, 60, 80},
	PlantBeardedWheatgrass - 1: {30, 40, 80},
	PlantBluebunch - 1:         {30, 60, 85},
	PlantBlueWildrye - 1:       {25, 35, 75},
	PlantCheatgrass - 1:        {20, 50, 100},
	PlantColumbiaNeedle - 1:    {25, 40, 75},
	PlantCrestedWheatgrass - 1: {30, 60, 85},
	PlantDrylandSedge - 1:      {30, 45, 85},
}
