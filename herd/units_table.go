package herd

import "example.org/soum/units"

// unitDemands is the daily feed of one animal unit by definition.
var unitDemands = [...]units.Demand{
	UnitTwentyFivePounds: 25 * units.PoundPerDay, // PSU-STAY table 1.8-9, A
	UnitTwentySixPounds:  26 * units.PoundPerDay, // OSU-PSS-2871, NDMC-AU, A
	UnitThirtyPounds:     30 * units.PoundPerDay, // UMAINE-LESSON-5, NDMC-AU (air dry), A
}

// unitDemand looks a definition up; what is none gives 0, for the guard to
// refuse.
func unitDemand(definition UnitDefinition) units.Demand {
	if definition < 1 || int(definition) >= len(unitDemands) {
		return 0
	}
	return unitDemands[definition]
}
