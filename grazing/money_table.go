package grazing

import "example.org/soum/units"

// fenceLives is the table of FenceLives.
var fenceLives = []FenceLifeRow{
	{"woven", 20, 8 * units.Percent, "1,320 ft a year: depreciation 99, interest 79, maintenance 159, printed sum 338 USD, about 1999; about 2 USD a foot new in 2012", "IOWA-FENCE-COSTS table 6; IOWA-FENCE-2012", "A"},
	{"barbed", 20, 8 * units.Percent, "", "IOWA-FENCE-COSTS", "A"},
	{"high-tensile-8-wire", 25, 5 * units.Percent, "", "IOWA-FENCE-COSTS", "A"},
	{"high-tensile-electric-5-wire", 25, 5 * units.Percent, "1,320 ft a year: 37, 37 and 46, printed sum 121 USD, about 1999; upkeep 0.12 USD a foot and year, undated", "IOWA-FENCE-COSTS table 6; LSP-FENCE", "A"},
	{"temporary-divider", 4, 0, "0.20 USD a foot, half a mile 528 USD, undated; three portable wires 0.16 to 0.18 USD a foot in 2001; a grant's ceiling of 2.77 EUR a metre, Ireland about 2023", "LSP-FENCE; ARS-SPURGE-FENCE; TEAGASC-FENCE", "A"},
	{"pipe-and-tank", 10, 0, "a mile of pipe and a tank of 100 gal 3,000 USD, undated", "LSP-FENCE", "A"},
}
