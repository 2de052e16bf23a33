package herd

import "example.org/soum/units"

// Demand returns the dry matter that a group wants from pasture in a day.
//
// Formula: head * weight * intake * pasture
//
// Where:
//   - head: number of animals; >= 0
//   - weight in lb: live weight of one; > 0
//   - intake in %: dry matter of a day as a share of live weight; 0 to 100
//   - pasture in %: share of that taken from pasture; 0 to 100
//
// Note: most printed shares of grazing stock lie between 1.5 and 5 % of live
// weight, and sources differ for the same animal; Classes holds them with their
// sources. An animal that loses condition is eating too little, whatever the
// sum says: a vet or an adviser decides.
//
// Source: UMAINE-DEMAND table 2, the pasture share added: ours: 1 where the
// animals eat nothing else
func Demand(head float64, weight units.LiveWeight, intake, pasture units.Fraction) (units.Demand, error) {
	demand := units.Demand(head * float64(weight) * float64(intake) * float64(pasture))
	return units.Answer(&formulaDemand, demand, head, float64(weight), float64(intake), float64(pasture))
}

// Feed returns the dry matter that a demand comes to over a time.
//
// Formula: demand * days
//
// Where:
//   - demand in lb/day: dry matter wanted in a day; >= 0
//   - days in days: how long; >= 0
//
// Note: waste at feeding and the water in the feed come on top: forage.HayToHaul.
//
// Source: ISU-HAY worked examples; OHIO-HAY-2010; VCE-COWGRAZE; WEIGHT-SHARE-AUM
func Feed(demand units.Demand, days units.Days) (units.DryMatter, error) {
	return units.Answer(&formulaFeed, units.DryMatter(float64(demand)*float64(days)), float64(demand), float64(days))
}
