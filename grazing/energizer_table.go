package grazing

import "example.org/soum/units"

func volts(low, high units.Voltage) units.Span[units.Voltage] {
	return units.Span[units.Voltage]{Low: low, High: high}
}

// voltageRows is the table of FenceVoltage, V.
var voltageRows = []VoltageRow{
	{"cattle", VoltageLeast, volts(1000, 1000), "IOWA-382", "A"},
	{"horse", VoltageLeast, volts(1000, 1000), "IOWA-382", "A"},
	{"sheep", VoltageLeast, volts(2000, 2000), "IOWA-382", "A"},
	{"goat", VoltageLeast, volts(2500, 3000), "IOWA-382", "A"},
	{"deer", VoltageLeast, volts(2500, 3000), "IOWA-382", "A"},
	{"dog-or-coyote", VoltageLeast, volts(2500, 3000), "IOWA-382", "A"},
	{"sheep", VoltageWorking, volts(4000, 4000), "SHEEP101-FENCE", "A"},
	{"goat", VoltageWorking, volts(4000, 4000), "SHEEP101-FENCE", "A"},
	{"farm-fence", VoltageWorking, volts(2000, 6000), "WPS-FENCE", "B"},
	{"cow-trainer-or-crowd-gate", VoltageMost, volts(2500, 2500), "WPS-FENCE", "B"},
}
