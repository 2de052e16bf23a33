package grazing

import (
	"math"

	"example.org/soum/units"
)

// PatchNext returns what stands on one patch of grazed grass a step later: it grows the
// less the more stands, and of a thin stand the animals find little.
//
// Formula: stand*exp(growth-crowding*stand) - most*stand*stand/(stand*stand+half*half)
//
// Where:
//   - stand: what stands now, in units of one's own; >= 0
//   - growth: what a thin stand grows by in a step, as a logarithm: 0.75 is to 2.1 times as much; 0 to 10
//   - crowding: how much less, for each unit that stands; > 0
//   - most: the most that the animals take in a step; >= 0
//   - half: the stand of which they take half of that; > 0
//
// Note: it shows the shape, not a stocking rate: no unit is printed, and a step is no
// printed time. Without animals the stand goes to growth ÷ crowding. A result below 0
// says that more would be eaten than stands.
//
// Source: ONE-PATCH-CODE after NOY-MEIR-1975; growth 0.75, crowding 0.1, half 0.75 there
func PatchNext(stand, growth, crowding, most, half float64) (float64, error) {
	next := stand*math.Exp(growth-crowding*stand) - most*stand*stand/(stand*stand+half*half)
	return units.Answer(&formulaPatchNext, next, stand, growth, crowding, most, half)
}

// PatchGain returns how fast one patch of grazed grass gains, below 0 where it loses:
// PatchNext without steps, logistic, with stands counted in those of which the animals
// take half of the most that they take.
//
// Formula: stand * (growth*(1-stand/ceiling) - most*stand/(1+stand*stand))
//
// Where:
//   - stand: what stands now, 1 where the animals take half of the most; >= 0
//   - growth: what a thin stand gains for each unit of it, in a unit of time; >= 0
//   - ceiling: the stand at which growth ends; > 0
//   - most: the most that the animals take in a unit of time; >= 0
//
// Note: it shows the shape, not a stocking rate.
//
// Source: ONE-PATCH-CODE after NOY-MEIR-1975; growth 1.25, ceiling 10, most 2 there
func PatchGain(stand, growth, ceiling, most float64) (float64, error) {
	gain := stand * (growth*(1-stand/ceiling) - most*stand/(1+stand*stand))
	return units.Answer(&formulaPatchGain, gain, stand, growth, ceiling, most)
}

// PatchStands are the stands above 0 at which a grazed patch stays, growth and grazing
// being even. Where there are two that it comes back to, a stand between them is the
// edge: from below it the patch goes to the lower, from above to the higher, and once
// grazed down it does not come back by itself.
type PatchStands struct {
	Low  float64 `json:"low"`  // the lowest, 0 where it stays at none
	Edge float64 `json:"edge"` // between the two, 0 where there is one alone
	High float64 `json:"high"` // the highest, as Low where there is one alone
}

// PatchNextStands returns the stands that a step of PatchNext leaves as they are.
//
// Method: exp(growth - crowding × stand) - 1 = most × stand ÷ (stand² + half²), sought in
// 20,000 equal parts up to growth ÷ crowding, above which nothing can stay, and there by
// halving; two stands in one part are not told from none
//
// Where:
//   - growth: as in PatchNext; 0 to 10
//   - crowding: as in PatchNext; > 0
//   - most: as in PatchNext; >= 0
//   - half: as in PatchNext; > 0
//
// Note: in steps of a growth above 2 a stand may swing about the highest instead.
//
// Check: TestPatchStands
//
// Source: ONE-PATCH-CODE the model; ours: the search
func PatchNextStands(growth, crowding, most, half float64) (PatchStands, error) {
	end, err := units.Answer(&formulaPatchNextStands, growth/crowding, growth, crowding, most, half)
	if err != nil {
		return noStands, err
	}
	return standsWhere(end, func(stand float64) float64 {
		return math.Exp(growth-crowding*stand) - 1 - most*stand/(stand*stand+half*half)
	}), nil
}

// PatchGainStands returns the stands at which PatchGain is 0.
//
// Method: growth × (1 - stand ÷ ceiling) = most × stand ÷ (1 + stand²), sought as in
// PatchNextStands, up to the ceiling
//
// Where:
//   - growth: as in PatchGain; >= 0
//   - ceiling: as in PatchGain; > 0
//   - most: as in PatchGain; >= 0
//
// Check: TestPatchStands
//
// Source: ONE-PATCH-CODE the model; ours: the search
func PatchGainStands(growth, ceiling, most float64) (PatchStands, error) {
	if _, err := units.Answer(&formulaPatchGainStands, 2*ceiling, growth, ceiling, most); err != nil {
		return noStands, err
	}
	return standsWhere(ceiling, func(stand float64) float64 {
		return growth*(1-stand/ceiling) - most*stand/(1+stand*stand)
	}), nil
}

// noStands is beside an error: a stand of 0 would be an answer.
var noStands = PatchStands{Low: math.NaN(), Edge: math.NaN(), High: math.NaN()}

// patchParts is in how many parts the span of stands is searched.
const patchParts = 20000

// standsWhere gives the stands from 0 to the end at which a gain comes to nothing.
func standsWhere(end float64, gain func(stand float64) float64) PatchStands {
	var all []float64
	end += end / patchParts // what stays at the end itself lies inside
	low := 0.0
	for i := 1; i <= patchParts; i++ {
		high := end * float64(i) / patchParts
		if (gain(low) > 0) != (gain(high) > 0) {
			all = append(all, halved(low, high, gain))
		}
		low = high
	}
	switch len(all) {
	case 0:
		return PatchStands{}
	case 1:
		return PatchStands{Low: all[0], High: all[0]}
	}
	return PatchStands{Low: all[0], Edge: all[1], High: all[len(all)-1]}
}

// halved gives the place between two at which a gain changes its sign.
func halved(low, high float64, gain func(float64) float64) float64 {
	above := gain(low) > 0
	for range 60 {
		if middle := (low + high) / 2; (gain(middle) > 0) == above {
			low = middle
		} else {
			high = middle
		}
	}
	return (low + high) / 2
}
