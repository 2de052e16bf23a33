package forage

import "example.org/soum/units"

// responseRows is the table of NitrogenResponse. BRINK-CASLER prints 18 at 120 lb in a
// newsletter and 20 in a paper.
var responseRows = []ResponseRow{
	{ResponseIowaWet, units.Single(15.0), printed("SINGER-2003", "A")},
	{ResponseIowaDry, units.Single(19.0), printed("SINGER-2003", "A")},
	{ResponseWisconsinLess, units.Single(15.0), printed("BRINK-CASLER", "A")},
	{ResponseWisconsinMore, units.Span[float64]{Low: 18, High: 20}, printed("BRINK-CASLER", "A")},
	{ResponseKentucky, units.Single(27.0), printed("KENTUCKY-STOCKPILE", "D")},
	{ResponseOklahoma, units.Single(30.0), printed("NOBLE-PERMANENT", "B")},
}
