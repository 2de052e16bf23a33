package herd

import "example.org/soum/units"

// PairWeight returns the mean live weight of a cow with her calf from birth to
// weaning: the cow and half of what the calf weighs at the end.
//
// Formula: cow + weaned / 2
//
// Where:
//   - cow in lb: live weight of the cow; > 0
//   - weaned in lb: live weight of the calf at weaning; >= 0
//
// Source: IFAS-PAIR worked example
func PairWeight(cow, weaned units.LiveWeight) (units.LiveWeight, error) {
	return units.Answer(&formulaPairWeight, cow+weaned/2, float64(cow), float64(weaned))
}
