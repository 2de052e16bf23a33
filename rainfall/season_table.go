package rainfall

import "example.org/soum/units"

var targetRows = []TargetRow{
	{"first-nitrogen-netherlands", 0, units.Span[units.DegreeDays]{Low: 180, High: 250}, "1 January", printed("EUROFINS-TSUM", "A")},
	{"early-grazing-netherlands", 0, units.Span[units.DegreeDays]{Low: 200, High: 250}, "1 January", printed("EUROFINS-TSUM", "A")},
	{"early-grazing-sparing-nitrogen-netherlands", 0, units.Span[units.DegreeDays]{Low: 250, High: 300}, "1 January", printed("EUROFINS-TSUM", "A")},
	{"cut-of-3000kg-netherlands", 0, units.Span[units.DegreeDays]{Low: 250, High: 300}, "1 January", printed("EUROFINS-TSUM", "A")},
	{"cut-of-3000kg-sparing-nitrogen-netherlands", 0, units.Span[units.DegreeDays]{Low: 300, High: 400}, "1 January", printed("EUROFINS-TSUM", "A")},
	{"first-nitrogen-britain", 0, units.Single[units.DegreeDays](200), "1 January", printed("BRITAIN-T200", "A")},
	{"first-nitrogen-oregon-grass-seed", 0, units.Single[units.DegreeDays](200), "1 January", printed("OREGON-T200", "A")},
	{"graze-crested-wheatgrass-north-dakota", 0, units.Single(443 * units.FahrenheitDay), "first day after 15 March with five days' mean over 32 °F", printed("NDSU-READINESS", "A")},
	{"graze-most-natives-north-dakota", 0, units.Single(1000 * units.FahrenheitDay), "first day after 15 March with five days' mean over 32 °F; more than this", printed("NDSU-READINESS", "A")},
}

// coldSteps are the words for cold nights: NWS-FROST, mark A.
var coldSteps = [...]struct {
	from units.Temperature
	cold Cold
}{
	{units.Fahrenheit(36), ColdFrost},
	{units.Fahrenheit(32), ColdFreeze},
	{units.Fahrenheit(28), ColdHardFreeze},
}
