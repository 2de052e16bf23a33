package rainfall

import (
	"fmt"
	"math"

	"example.org/soum/units"
)

// BucketRule is how plants draw on the water of the soil as it dries.
type BucketRule int

// The rules.
const (
	BucketPlain       BucketRule = iota + 1 // all they want until it is empty
	BucketStress                            // all they want while it is easy, then less in proportion: for days
	BucketExponential                       // the store falls as a discharge does, ever slower: for months
)

// Bucket is the water store of the root zone.
type Bucket struct {
	// Holds is what it holds when full (RootZoneWater).
	Holds units.RainDepth `json:"holds"`
	// Start is what is in it before the first step.
	Start units.RainDepth `json:"start"`
	// Rule is how plants draw on it.
	Rule BucketRule `json:"rule"`
	// Easy is the share of it that plants take up without shortage; for the rule of
	// stress alone, and 0 otherwise.
	Easy units.Fraction `json:"easy"`
}

// BalanceStep is a day or a month of a water balance.
type BalanceStep struct {
	// Rain is what fell, with water given.
	Rain units.RainDepth `json:"rain_m"`
	// Demand is what the plants would have used with water enough.
	Demand units.RainDepth `json:"demand_m"`
	// Actual is what they used.
	Actual units.RainDepth `json:"actual_m"`
	// Short is what they lacked: demand less actual.
	Short units.RainDepth `json:"short_m"`
	// Drained is what the soil could not hold: it ran off or sank away.
	Drained units.RainDepth `json:"drained_m"`
	// Store is what is in the soil at the end.
	Store units.RainDepth `json:"store_m"`
	// Deficit is what the soil is short of full at the end (GroundFor).
	Deficit units.RainDepth `json:"deficit_m"`
}

// StressCoefficient returns what plants use of what they want as the soil dries.
//
// Formula: min((1 - depletion/holds) / (1 - easy), 1)
//
// Where:
//   - depletion in mm: water that the root zone is short of full; 0 to holds
//   - holds in mm: what the root zone holds when full (RootZoneWater); > 0
//   - easy in %: share of it that plants take up without shortage; >= 0 and < 100
//
// Note: from memory, not seen in a source; the examples are sums by it.
//
// Source: FAO-56 eq. 84
func StressCoefficient(depletion, holds units.RainDepth, easy units.Fraction) (float64, error) {
	share := stress(float64(depletion), float64(holds), float64(easy))
	return units.Answer(&formulaStressCoefficient, share, float64(depletion), float64(holds), float64(easy))
}

func stress(depletion, holds, easy float64) float64 {
	return min((1-depletion/holds)/(1-easy), 1)
}

// GrowthShare returns growth as a share of what it would be with water enough: the
// share of the wanted water that the plants got.
//
// Formula: actual / potential
//
// Where:
//   - actual in mm: water used (BalanceStep); 0 to potential
//   - potential in mm: water wanted; > 0
//
// Note: a straight line through nothing and all. Water is not all that growth wants:
// in the cold both are small and the share says nothing.
//
// Source: ours: dry matter goes with the water used where the air's thirst is the
// same, as the figures of kilograms to the millimetre have it
func GrowthShare(actual, potential units.RainDepth) (units.Fraction, error) {
	return units.Answer(&formulaGrowthShare, units.Fraction(float64(actual)/float64(potential)), float64(actual), float64(potential))
}

// WaterBalance gives the account of the root zone's water, step by step: days or
// months, rain and demand in the same steps. Demand is of the crop (CropWater over
// the days of the step), rain what is not run off.
//
// By the plain rule rain first fills the need, the rest fills the store, what is over drains;
// what rain lacks comes from the store until it is empty. By the exponential rule it is the same,
// but of a lack l the store s gives s (1 - exp(-l/holds)), as Thornthwaite and
// Mather have it; for months. By the rule of stress rain fills the store and what is
// over drains, then the plants use StressCoefficient of the need; for days, since
// drainage comes before use.
//
// Errors: a *document.Error with the place for lists of different lengths or empty, a
// gap or a depth below 0 in either (an account cannot go on over a day that nobody
// knows, so fill the gap or end before it), a bucket that holds nothing or starts with
// more than it holds, a share of easy water outside 0 to under 1 or beside a rule that
// has none; a *units.ParseError that lists the rules
//
// Check: TestWaterBalanceByHand, TestWaterBalanceKeepsWater, TestWaterBalanceRefuses
//
// Source: definition: what comes in less what goes out is what stays; FAO-56 eq. 84
// and 85 for stress; THORNTHWAITE-MATHER for exponential
func WaterBalance(bucket Bucket, rain, demand []units.RainDepth) ([]BalanceStep, error) {
	if err := bucket.check(); err != nil {
		return nil, err
	}
	if err := sameLength("rain", len(rain), "demand", len(demand)); err != nil {
		return nil, err
	}
	steps, store := make([]BalanceStep, len(rain)), bucket.Start
	for i := range rain {
		if !finite(rain[i]) {
			return nil, wrongDepth(fmt.Sprintf("rain[%d]", i), rain[i])
		}
		if !finite(demand[i]) {
			return nil, wrongDepth(fmt.Sprintf("demand[%d]", i), demand[i])
		}
		steps[i] = bucket.step(store, rain[i], demand[i])
		store = steps[i].Store
	}
	return steps, nil
}

func (b *Bucket) check() error {
	switch {
	case !finite(b.Holds) || b.Holds == 0:
		return wrong("bucket.holds", millimetres(b.Holds), "is not what a bucket can hold", "above 0 mm, at most 1000 m")
	case !finite(b.Start) || b.Start > b.Holds:
		return wrong("bucket.start", millimetres(b.Start), "cannot be in a bucket that holds "+millimetres(b.Holds), "0 mm to what it holds")
	case b.Rule < BucketPlain || b.Rule > BucketExponential:
		return noWord("rainfall.WaterBalance", "bucket.rule", 1, "rainfall.BucketRule", b.Rule, namesBucketRule[1:])
	case !(b.Easy >= 0 && b.Easy < 1):
		return wrong("bucket.easy", fmt.Sprint(b.Easy), "is not a share that plants take up without shortage", "0 % to under 100 %")
	case b.Easy > 0 && b.Rule != BucketStress:
		return wrong("bucket.easy", fmt.Sprint(b.Easy), "does not go with the rule "+b.Rule.String(), "0 %, or the rule stress")
	}
	return nil
}

// step is one day or month.
func (b *Bucket) step(store, rain, demand units.RainDepth) BalanceStep {
	s := BalanceStep{Rain: rain, Demand: demand}
	if b.Rule == BucketStress {
		full := store + rain
		s.Drained = max(0, full-b.Holds)
		full = min(full, b.Holds)
		share := stress(float64(b.Holds-full), float64(b.Holds), float64(b.Easy))
		s.Actual = min(demand*units.RainDepth(share), full)
		s.Store = full - s.Actual
	} else {
		lack := max(0, demand-rain)
		drawn := min(lack, store)
		if b.Rule == BucketExponential {
			drawn = min(drawn, store*units.RainDepth(-math.Expm1(-float64(lack/b.Holds))))
		}
		left := store - drawn + max(0, rain-demand)
		s.Actual = min(rain, demand) + drawn
		s.Drained = max(0, left-b.Holds)
		s.Store = min(left, b.Holds)
	}
	s.Short = max(0, demand-s.Actual)
	s.Deficit = b.Holds - s.Store
	return s
}
