package forage

import "example.org/soum/units"

// Bloat is a class of the risk of bloat on a stand.
type Bloat int

// The classes of bloat risk. BloatLow does not mean none.
const (
	BloatLow    Bloat = iota + 1 // not more than half of the stand is legume
	BloatRaised                  // more than half of the stand is legume
)

// bloatLegume is the share of legume above which the risk of bloat rises.
const bloatLegume = 50 * units.Percent

var bloatGuard = units.Formula{
	Name: "forage.BloatRisk", Source: "UKY-BLOAT",
	Arguments: []units.Argument{
		{Name: "legume", Unit: "%", Factor: float64(units.Percent), Domain: units.Limits{Low: 0, LowOf: -1, High: 1, HighOf: -1}},
	},
}

// BloatRisk tells whether the share of legume in a stand raises the risk of
// bloat for cattle, sheep and goats on it.
//
// Bloat kills within hours. A low class is not a safe stand: hungry stock, young
// or wet legume and a sudden change of feed bring bloat on less, and the printed
// threshold is one body's rule. Fill stock with hay before a first turn-in onto
// legume, look at them often, and ask a vet about prevention beforehand; a
// swollen left flank is a case for the vet at once. The kind of legume counts as
// well: trefoil and sainfoin hold tannins and are said not to bloat, alfalfa and
// clovers do (FORAGEBEEF-BLOAT).
//
// Table: raised where more than 50 % of the stand is legume (the source does not
// say whether by mass or by cover), else low
//
// Errors: a domain error where the share is below 0, above 1 or not a number
//
// Note: what brings bloat on and what to do about it, beyond the threshold and
// the kinds of legume, is common practice from memory, without a source read.
//
// Source: UKY-BLOAT for the threshold; FORAGEBEEF-BLOAT for the kinds of legume
func BloatRisk(legume units.Fraction) (Bloat, error) {
	if _, err := units.Answer(&bloatGuard, legume, float64(legume)); err != nil {
		return 0, err
	}
	if legume > bloatLegume {
		return BloatRaised, nil
	}
	return BloatLow, nil
}
