package rainfall

import "example.org/soum/units"

// usedWeekly makes a row of a span in inches a week and of roots in feet.
func usedWeekly(crop string, low, high, root float64, source, mark string) CropUseRow {
	return CropUseRow{crop, units.Span[units.RainRate]{Low: units.RainRate(low) * units.RainInchPerWeek, High: units.RainRate(high) * units.RainInchPerWeek}, units.Length(root) * units.Foot, printed(source, mark)}
}

// usedDaily makes a row of a span in inches a day.
func usedDaily(crop string, low, high float64, source, mark string) CropUseRow {
	return CropUseRow{crop, units.Span[units.RainRate]{Low: units.RainRate(low) * units.RainInchPerDay, High: units.RainRate(high) * units.RainInchPerDay}, 0, printed(source, mark)}
}

var useRows = []CropUseRow{
	usedWeekly("alfalfa-utah", 1, 2, 4, "UTAH-IRRIGATION", "A"),
	usedWeekly("small-grains-utah", 1, 2, 3, "UTAH-IRRIGATION", "A"),
	usedWeekly("pasture-grass-utah", 1, 1.5, 2, "UTAH-IRRIGATION", "A"),
	usedWeekly("corn-utah", 0.75, 1.75, 3.5, "UTAH-IRRIGATION", "A"),
	usedWeekly("turf-utah", 0.75, 1.25, 1, "UTAH-IRRIGATION roots a foot or less", "A"),
	usedDaily("ryegrass-new-zealand", 0.1, 0.2, "HOPEWELL-1957", "A"),
	usedDaily("short-grass-southern-plains-late-spring", 0.25, 0.30, "ONPASTURE-IRRIGATION", "B"),
	usedDaily("short-grass-southern-plains-midsummer", 0.5, 0.5, "ONPASTURE-IRRIGATION", "B"),
}
