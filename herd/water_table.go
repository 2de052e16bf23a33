package herd

import "example.org/soum/units"

// gallons is a printed span of US gallons a day.
func gallons(low, high float64) units.Span[units.WaterRate] {
	return units.Span[units.WaterRate]{Low: units.WaterRate(low) * units.GallonPerDay, High: units.WaterRate(high) * units.GallonPerDay}
}

// allYear is a row whose print tells no seasons apart, for so many head.
func allYear(rule WaterRule, head, low, high float64, source, mark string) WaterFigure {
	span := gallons(low, high)
	return WaterFigure{rule, head, 0, span, span, printed(source, mark)}
}

// waterFigures is the water table.
var waterFigures = []WaterFigure{
	{WaterCattle, 0, 100 * lb, gallons(1.5, 1.5), gallons(0.75, 0.75), printed("KSU-WATER", "A")},
	{WaterHorse, 0, 100 * lb, gallons(1, 1), gallons(1, 1), printed("KSU-WATER at least", "A")},
	allYear(WaterDairyCow, 1, 15, 30, "KSU-WATER", "A"),
	allYear(WaterSmallRuminant, 1, 0.75, 1.5, "NC-WATER", "A"),
	allYear(WaterLactatingEwe, 1, 3, 4, "OHIO-WATER", "B"),
	allYear(WaterLactatingGoat, 1, 2, 3, "OHIO-WATER", "B"),
	allYear(WaterLactatingSow, 1, 5, 5, "OHIO-WATER about", "B"),
	allYear(WaterPig, 1, 3, 5, "SDSU-C274 table 1", "A"),
	allYear(WaterChicken, 100, 8, 10, "SDSU-C274 table 1", "A"),
	allYear(WaterTurkey, 100, 10, 15, "SDSU-C274 table 1", "A"),
}

// waterFigure looks a rule up; one without a figure gives an empty row.
func waterFigure(rule WaterRule) WaterFigure {
	for _, row := range waterFigures {
		if row.Rule == rule {
			return row
		}
	}
	return WaterFigure{Head: 1}
}
