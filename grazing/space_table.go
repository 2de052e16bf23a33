package grazing

import "example.org/soum/units"

func square(low, high, unit units.Area) units.Span[units.Area] {
	return units.Span[units.Area]{Low: low * unit, High: high * unit}
}

var (
	one       = units.Single(1.0)
	aHectare  = units.Single(units.Hectare)
	anAcre    = units.Single(units.Acre)
	rotated   = "where the range is rotated"
	nitrogen  = "170 kg of nitrogen a hectare and year"
	notGrazed = "a yard outdoors, beside the house"
)

// spaceRows is the table of Space.
var spaceRows = []SpaceRow{
	{"laying-hen", SpaceNitrogen, "eu-organic", units.Single(230.0), aHectare, nitrogen, "EU-889-2008; SERBIA-ORGANIC", "A"},
	{"laying-hen", SpaceRange, "eu-organic", one, square(4, 4, units.SquareMetre), rotated, "EU-889-2008 annex III", "A"},
	{"laying-hen", SpaceRange, "eu-free-range", units.Single(2500.0), aHectare, "eggs sold as free range", "FREE-RANGE-HENS", "B"},
	{"laying-hen", SpaceOpen, "eu-free-range", one, square(2.5, 2.5, units.SquareMetre), "at least, at any time", "FREE-RANGE-HENS", "B"},
	{"laying-hen", SpaceUsed, "old-rule", units.Single(50.0), anAcre, "2.5 short tons of manure, 106 lb of nitrogen an acre and year", "PLAMONDON-HENS", "B"},
	{"duck", SpaceRange, "eu-organic", one, square(4.5, 4.5, units.SquareMetre), rotated, "EU-889-2008 annex III", "A"},
	{"goose", SpaceRange, "eu-organic", one, square(15, 15, units.SquareMetre), rotated, "EU-889-2008 annex III", "A"},
	{"goose", SpaceUsed, "missouri", wires(20, 40), anAcre, "good pasture; a fence of 18 to 24 in", "MISSOURI-GOSLING", "B"},
	{"dairy-cow", SpaceNitrogen, "eu-organic", units.Single(2.0), aHectare, nitrogen, "SERBIA-ORGANIC", "A"},
	{"suckler-cow", SpaceNitrogen, "eu-organic", units.Single(2.5), aHectare, nitrogen, "SERBIA-ORGANIC", "A"},
	{"bull", SpaceNitrogen, "eu-organic", units.Single(2.0), aHectare, nitrogen + "; over two years old", "SERBIA-ORGANIC", "A"},
	{"ewe", SpaceNitrogen, "eu-organic", units.Single(13.3), aHectare, nitrogen, "SERBIA-ORGANIC", "A"},
	{"fattening-pig", SpaceNitrogen, "eu-organic", units.Single(14.0), aHectare, nitrogen, "SERBIA-ORGANIC", "A"},
	{"horse", SpaceNitrogen, "eu-organic", units.Single(2.0), aHectare, nitrogen, "SERBIA-ORGANIC", "A"},
	{"sheep-or-goat", SpaceYard, "eu-organic", one, square(2.5, 2.5, units.SquareMetre), notGrazed, "EU-889-2008 annex III", "A"},
	{"lamb", SpaceYard, "eu-organic", one, square(0.5, 0.5, units.SquareMetre), notGrazed, "EU-889-2008 annex III", "A"},
	{"dairy-cow", SpaceYard, "eu-organic", one, square(4.5, 4.5, units.SquareMetre), notGrazed, "EU-889-2008 annex III", "A"},
	{"cattle-over-350-kg", SpaceYard, "eu-organic", one, square(3.7, 3.7, units.SquareMetre), notGrazed + "; and at least 0.75 m² for each 100 kg", "EU-889-2008 annex III", "A"},
	{"fattening-pig", SpaceYard, "eu-organic", one, square(1, 1, units.SquareMetre), notGrazed + "; up to 110 kg", "EU-889-2008 annex III", "A"},
	{"sow-with-litter", SpaceYard, "eu-organic", one, square(2.5, 2.5, units.SquareMetre), notGrazed, "EU-889-2008 annex III", "A"},
	{"any", SpaceLot, "washington", one, square(400, 400, units.SquareFoot), "at least", "WASHINGTON-LOTS", "A"},
	{"horse", SpaceLot, "washington", one, square(750, 1000, units.SquareFoot), "", "WASHINGTON-LOTS", "A"},
	{"horse-that-runs", SpaceLot, "washington", one, square(20*100, 20*100, units.SquareFoot), "20 by 100 ft", "WASHINGTON-LOTS", "A"},
	{"horse", SpaceLot, "north-carolina", one, square(400, 400, units.SquareFoot), "at least, 20 by 20 ft", "NC-DRY-LOT", "A"},
	{"horse", SpaceLot, "iowa", one, square(1000, 1000, units.SquareFoot), "most lots are so large or larger", "IOWA-SACRIFICE", "A"},
	{"horse", SpaceLot, "conservation-group", one, square(600, 600, units.SquareFoot), "25 by 25 ft as printed, which is 625; not over an acre", "ELCR-LOTS", "A"},
	{"horse", SpaceLot, "farm-press", one, square(16*16, 16*16, units.SquareFoot), "from 16 by 16 ft", "THEHORSE-PADDOCK", "B"},
	{"horse-that-runs", SpaceLot, "farm-press", one, square(20*100, 30*100, units.SquareFoot), "20 to 30 by 100 ft", "THEHORSE-PADDOCK", "B"},
}
