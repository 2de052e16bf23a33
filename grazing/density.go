package grazing

import "example.org/soum/units"

// HeadDensity returns the animals on each unit of the land that is grazed now.
//
// Formula: head / area
//
// Where:
//   - head: animals on it; >= 0
//   - area in ac: the land they stand on; > 0
//
// Note: with the whole farm for the area the same sum is the stocking rate in
// head: say which area is meant. StockDensity is the same by live weight.
//
// Source: definition: animals over land; ARKANSAS-COFFEY and SHEEP101-LAND print rates so
func HeadDensity(head float64, area units.Area) (units.HeadRate, error) {
	return units.Answer(&formulaHeadDensity, units.HeadRate(head/float64(area)), head, float64(area))
}

// StockDensity returns the live weight on each unit of the land that is grazed
// now. Over the whole farm and season the same sum is the stocking rate: say
// which area is meant.
//
// Formula: weight / area
//
// Where:
//   - weight in lb: live weight of all the animals together; >= 0
//   - area in ac: the land they stand on; > 0
//
// Source: FARM-PROGRESS-2012; CRADLE-COAST-DSE worked example
func StockDensity(weight units.LiveWeight, area units.Area) (units.StockDensity, error) {
	density := units.StockDensity(float64(weight) / float64(area))
	return units.Answer(&formulaStockDensity, density, float64(weight), float64(area))
}
