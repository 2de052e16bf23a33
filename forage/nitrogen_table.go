package forage

import "example.org/soum/units"

// responseRows is the table of NitrogenResponse. BRINK-CASLER prints 18 at 120 lb in a
// newsletter and 20 in a paper.
var responseRows = []ResponseRow{
	{ResponseIowaWet, units.Single(15.0), "SINGER-2003", "A"},
	{ResponseIowaDry, units.Single(19.0), "SINGER-2003", "A"},
	{ResponseWisconsinLess, units.Single(15.0), "BRINK-CASLER", "A"},
	{ResponseWisconsinMore, units.Span[float64]{Low: 18, High: 20}, "BRINK-CASLER", "A"},
	{ResponseKentucky, units.Single(27.0), "KENTUCKY-STOCKPILE", "D"},
	{ResponseOklahoma, units.Single(30.0), "NOBLE-PERMANENT", "B"},
}
