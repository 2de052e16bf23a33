package herd

import "example.org/soum/units"

// gainPounds is a printed span of pounds a day.
func gainPounds(low, high float64) units.Span[units.LiveGain] {
	return units.Span[units.LiveGain]{Low: units.LiveGain(low) * units.GainPoundPerDay, High: units.LiveGain(high) * units.GainPoundPerDay}
}

// growthFigures is the table of growth.
var growthFigures = []GrowthFigure{
	{"pig", Pigs, gainPounds(1.2, 2.5), 1.7 * units.GainPoundPerDay, 60 * lb, 260 * lb, 3, printed("PSU-GROWTH", "B"), ""},
	{"lamb", Sheep, gainPounds(0.5, 0.5), 0.5 * units.GainPoundPerDay, 50 * lb, 120 * lb, 5, printed("PSU-GROWTH", "B"), ""},
	{"cattle", Cattle, gainPounds(1.5, 4.5), 2.0 * units.GainPoundPerDay, 500 * lb, 1300 * lb, 5.5, printed("PSU-GROWTH", "B"), ""},
	{"kid", Goats, gainPounds(1./3., 1./2.), 0, 0, 30 * lb, 0, printed("CORNELL-KIDS", "A"), "Milk-fed, to 3 months; the weight is that at which they may be weaned, at 10 weeks to 3 months."},
	{"broiler", Chickens, units.Span[units.LiveGain]{}, 0, 0, 5 * lb, 3, printed("SFA-POULTRY", "A"), "Ready at 6 to 8 weeks, slow kinds at 10 to 12; 15 lb of feed to a bird of 5 lb. Print gives no daily gain."},
}
