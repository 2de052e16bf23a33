package rainfall

import (
	"math"

	"example.org/soum/units"
)

// StockingRule is a rule of what land can carry by its rain.
type StockingRule int

// The rules.
const (
	StockingFrench           StockingRule = iota + 1 // southern Australia, rain of the year
	StockingWesternAustralia                         // Western Australia, rain of the growing season
)

// PotentialStocking returns the stock in dry sheep (DSE) that the rain lets land
// carry at best.
//
// Method: by French 1.3 × (rain of the year - 250 mm) ÷ 25 mm; in Western Australia
// ((rain of the growing season - 50 mm) × 28 kg/ha/mm - 500 kg/ha) ÷ 365 kg a head
// and year, each per ha
//
// Where:
//   - rule: which, and of which months it takes the rain
//   - rain in mm: of the year, or of the growing season; >= 0
//
// Errors: a *units.RangeError beside the value, which is below zero, under 250 mm by
// French and under 67.9 mm in Western Australia
//
// Note: a potential. Where it is 21 the farms ran about half; poor native pasture
// carries about 1, improved perennials 7.5 to 10 (MURRUMBIDGEE-DSE). The rules
// differ: 650 mm in the year is 20.8, 450 mm of growing season in the same place
// 29.3.
//
// Source: FRENCH-1987, from memory, 650 mm giving 21 as printed; CALUKA-PASTURE
func PotentialStocking(rule StockingRule, rain units.RainDepth) (units.HeadRate, error) {
	depth := rain.Millimetres()
	head, least := frenchHead*(depth-frenchLoss)/frenchStep, float64(frenchLoss)
	source := "FRENCH-1987"
	if rule == StockingWesternAustralia {
		head = ((depth-seasonLoss)*seasonUse - seasonWaste) / yearlyNeed
		least, source = seasonLoss+float64(seasonWaste)/seasonUse, "CALUKA-PASTURE"
	}
	rate := units.HeadRate(head) * units.HeadPerHectare
	if head < 0 {
		covered := units.Between(least*float64(units.RainMillimetre), math.Inf(1), source)
		return units.AnswerWithin(&formulaPotentialStocking, 1, covered, rate, float64(rule), float64(rain))
	}
	return units.Answer(&formulaPotentialStocking, rate, float64(rule), float64(rain))
}

const (
	frenchHead  = 1.3
	frenchLoss  = 250
	frenchStep  = 25
	seasonLoss  = 50
	seasonUse   = 28
	seasonWaste = 500
	yearlyNeed  = 365
)
