package forage

import "example.org/soum/units"

// stayRow is the share of the available forage eaten in a stay.
type stayRow struct {
	stay         units.Days
	share        units.Fraction
	source, mark string
}

var stayRows = [...]stayRow{
	{1 * units.Day, 80 * units.Percent, "PSU-STAY table 1.8-9", "A"},
	{2 * units.Day, 75 * units.Percent, "PSU-STAY table 1.8-9", "A"},
	{3 * units.Day, 75 * units.Percent, "PSU-STAY table 1.8-9", "A"},
	{4 * units.Day, 70 * units.Percent, "PSU-STAY table 1.8-9", "A"},
	{5 * units.Day, 65 * units.Percent, "PSU-STAY table 1.8-9", "A"},
	{6 * units.Day, 60 * units.Percent, "PSU-STAY table 1.8-9", "A"},
	{7 * units.Day, 60 * units.Percent, "PSU-STAY table 1.8-9", "A"},
}
