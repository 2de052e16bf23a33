package grazing

import "example.org/soum/units"

func wires(low, high float64) units.Span[float64] { return units.Span[float64]{Low: low, High: high} }

// wireRows is the table of Wires.
var wireRows = []WireRow{
	{"cattle", LineBoundary, wires(3, 3), "high-tensile", "ARS-SPURGE-FENCE", "A"},
	{"cattle", LineInterior, wires(1, 2), "high-tensile", "ARS-SPURGE-FENCE", "A"},
	{"sheep", LineBoundary, wires(3, 4), "high-tensile", "ARS-SPURGE-FENCE", "A"},
	{"sheep", LineInterior, wires(2, 3), "high-tensile", "ARS-SPURGE-FENCE", "A"},
	{"goat", LineBoundary, wires(4, 5), "high-tensile", "ARS-SPURGE-FENCE", "A"},
	{"goat", LineInterior, wires(2, 3), "high-tensile", "ARS-SPURGE-FENCE", "A"},
	{"sheep-or-goat", LineBoundary, wires(4, 6), "12.5-gauge, the bottom wires closer; openings of woven wire under 4 in", "SHEEP101-FENCE", "A"},
	{"any-behind-barbed-wire", LineBoundary, wires(3, 4), "barbed and never electrified; top wire at 40 to 48 in, bottom wire at 14 to 18 in", "NRCS-382-SPEC", "A"},
}
