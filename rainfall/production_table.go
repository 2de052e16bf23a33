package rainfall

import "example.org/soum/units"

func poundsPerInch(low, high float64) units.Span[units.RainUse] {
	return units.Span[units.RainUse]{Low: units.RainUse(low) * units.UsePoundPerAcreInch, High: units.RainUse(high) * units.UsePoundPerAcreInch}
}

func kilogramsPerMillimetre(low, high float64) units.Span[units.RainUse] {
	return units.Span[units.RainUse]{Low: units.RainUse(low) * units.UseKilogramPerHectareMillimetre, High: units.RainUse(high) * units.UseKilogramPerHectareMillimetre}
}

// inchesPerTon turns inches for a short ton about: few inches are a high use.
func inchesPerTon(few, many float64) units.Span[units.RainUse] {
	return units.Span[units.RainUse]{Low: units.UseShortTonPerAcreInch / units.RainUse(many), High: units.UseShortTonPerAcreInch / units.RainUse(few)}
}

// waterUseRows is the table of WaterUse.
var waterUseRows = []WaterUseRow{
	{"range-texas", "rain of the year", poundsPerInch(74, 144), printed("NDMC-INCHES", "A")},
	{"range-colorado-kansas", "rain of the year", poundsPerInch(58, 153), printed("NDMC-INCHES", "A")},
	{"range-wyoming-dakota", "rain of the year", poundsPerInch(85, 124), printed("NDMC-INCHES", "A")},
	{"range-texas-map", "rain of the year", poundsPerInch(75, 144), printed("NDMC-INCHES", "A")},
	{"range-colorado-kansas-map", "rain of the year", poundsPerInch(51, 128), printed("NDMC-INCHES", "A")},
	{"range-wyoming-dakota-map", "rain of the year", poundsPerInch(83, 120), printed("NDMC-INCHES", "A")},
	{"warm-annual-grasses-nebraska", "ample moisture", inchesPerTon(2.5, 3.5), printed("NEBRASKA-G2012", "A")},
	{"oats-nebraska", "ample moisture", inchesPerTon(4.5, 5.5), printed("NEBRASKA-G2012", "A")},
	{"cool-grasses-nebraska", "ample moisture", inchesPerTon(5, 6), printed("NEBRASKA-G2012", "A")},
	{"alfalfa-nebraska", "ample moisture", inchesPerTon(6.5, 7.5), printed("NEBRASKA-G2012", "A")},
	{"alfalfa-montana", "water used", inchesPerTon(4, 5), printed("MONTANA-ALFALFA", "A")},
	{"bermudagrass-oklahoma-fertilised", "rain, 150 to 206 lb of nitrogen", inchesPerTon(9, 9), printed("NOBLE-2002-RAIN", "A")},
	{"bermudagrass-oklahoma-likely", "rain, the likely range", inchesPerTon(4, 12), printed("NOBLE-2002-RAIN", "A")},
	{"bermudagrass-oklahoma-none", "rain, no nitrogen, by another print", inchesPerTon(18, 20), printed("NOBLE-2000-RAIN", "B")},
	{"bermudagrass-oklahoma-best", "rain, with nitrogen, by another print", inchesPerTon(3.5, 3.5), printed("NOBLE-2000-RAIN", "B")},
	{"lucerne-canterbury", "water used, dryland", kilogramsPerMillimetre(21, 21), printed("TONMUKAYAKUL-2009", "A")},
	{"cocksfoot-white-clover-canterbury", "water used, dryland", kilogramsPerMillimetre(9, 9), printed("TONMUKAYAKUL-2009", "A")},
	{"annual-pasture-western-australia", "season's rain less 50 mm, the potential", kilogramsPerMillimetre(28, 28), printed("CALUKA-PASTURE", "B")},
	{"grass-kwazulu-natal", "evaporated", kilogramsPerMillimetre(7.02, 7.98), printed("PALMER-2010", "A")},
	{"arid-range-good", "rain", kilogramsPerMillimetre(3, 6), printed("RANGELANDS-WA", "A")},
	{"arid-range-run-down", "rain, less than", kilogramsPerMillimetre(0, 1), printed("RANGELANDS-WA", "A")},
}
