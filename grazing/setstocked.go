package grazing

import (
	"math"

	"example.org/soum/units"
)

// SetStocking is one paddock with the same animals on it all the time. Grass
// of mass V grows by RelativeGrowth × V × (1 - V / Ceiling) a day and is eaten
// at FullIntake × V / (V + HalfIntake).
type SetStocking struct {
	Ceiling        units.Yield  `json:"ceiling"`         // K: the mass at which the stand grows no more
	RelativeGrowth float64      `json:"relative_growth"` // g: growth a day as a share of the mass, where the stand is thin; at most 1
	HalfIntake     units.Yield  `json:"half_intake"`     // V0: the mass at which the animals get half of what they would eat
	FullIntake     units.Growth `json:"full_intake"`     // cH: what the animals would eat a day on plenty, per area; at most 100 HalfIntake a day
	Start          units.Yield  `json:"start"`           // the mass on day 0, at most Ceiling
	Days           int          `json:"days"`            // how many days to go, at most 3,653 (ten years)
}

// setStockedGuard holds the limits of SetStocking's fields, which the generator
// of limits does not see. Those of FullIntake and Days bound the work.
var setStockedGuard = units.Formula{
	Source: "NOY-MEIR-1975",
	Arguments: []units.Argument{
		{Name: "Ceiling", Unit: "kg/ha", Factor: float64(units.KilogramPerHectare), Domain: units.Above(0, inf)},
		{Name: "RelativeGrowth", Factor: 1, Domain: units.Above(0, 1)},
		{Name: "HalfIntake", Unit: "kg/ha", Factor: float64(units.KilogramPerHectare), Domain: units.Above(0, inf)},
		{Name: "FullIntake", Unit: "kg/ha/day", Factor: float64(units.KilogramPerHectareDay), Domain: units.AtLeast(0)},
		{Name: "FullIntake / HalfIntake", Factor: 1, Domain: units.Between(0, 100, "")},
		{Name: "Start", Unit: "kg/ha", Factor: float64(units.KilogramPerHectare), Domain: units.Limits{Low: 0, LowOf: -1, HighOf: 0}},
		{Name: "Days", Factor: 1, Domain: units.Between(0, 3653, "")},
	},
}

// possible gives the error of the first field that is impossible, or of an answer that
// overflows.
func (s *SetStocking) possible(function string, answer float64) error {
	guard := setStockedGuard
	guard.Name = function
	_, err := units.Answer(&guard, answer, float64(s.Ceiling), s.RelativeGrowth, float64(s.HalfIntake),
		float64(s.FullIntake), float64(s.FullIntake/units.Growth(s.HalfIntake)), float64(s.Start), float64(s.Days))
	return err
}

// relativeChange gives the change of the mass in a day as a share of the mass.
func (s *SetStocking) relativeChange(mass float64) float64 {
	return s.RelativeGrowth*(1-mass/float64(s.Ceiling)) - float64(s.FullIntake)/(mass+float64(s.HalfIntake))
}

// SetStocked returns the mass of a paddock under set stocking, day by day from
// day 0. It is another model than the season: one mass, growth that never
// changes, no moves.
//
// It shows why set stocking can tip: the same animals hold a thick stand at a
// high mass and eat a thin one down to nothing (SetStockedBalances gives the
// mass between). Its four constants are not measured on your land: use it to
// understand, not to decide how long animals stay on failing grass.
//
// Method: fourth-order Runge–Kutta on the logarithm of the mass, in steps of
// one day, or of equal parts of a day where the grass can change by more than
// a quarter in one.
//
// Errors: *units.DomainError names the first field that is impossible.
//
// Check: TestSetStockedReachesTheUpperBalance, TestSetStockedFallsFromBelow, TestSetStockedWithoutStockIsLogistic, TestSetStockedAgainstItsIntegral, TestSetStockedRefuses
//
// Source: NOY-MEIR-1975 the forms of growth and intake are from memory, not seen; that one mass, intake that levels off and a fixed number of stock make two outcomes is in GRAZING-REVIEW
func SetStocked(s SetStocking) ([]units.Yield, error) {
	if err := s.possible("grazing.SetStocked", 0); err != nil {
		return nil, err
	}
	parts := int(math.Ceil(4 * (s.RelativeGrowth + float64(s.FullIntake/units.Growth(s.HalfIntake)))))
	step := 1 / float64(parts)
	// The logarithm keeps the mass from ever falling below nothing, without a
	// clamp; ln 0 is -Inf and stays there, as bare ground should.
	log := math.Log(float64(s.Start))
	change := func(log float64) float64 { return s.relativeChange(math.Exp(log)) }
	masses := make([]units.Yield, 0, s.Days+1)
	masses = append(masses, s.Start)
	for range s.Days {
		for range parts {
			k1 := change(log)
			k2 := change(log + step/2*k1)
			k3 := change(log + step/2*k2)
			k4 := change(log + step*k3)
			log += step / 6 * (k1 + 2*k2 + 2*k3 + k4)
		}
		masses = append(masses, units.Yield(math.Exp(log)))
	}
	return masses, nil
}

// SetStockedBalances returns the two masses at which set stocking stands
// still. A stand above low settles at high; one below low is eaten to nothing.
// A low of 0 means that every stand recovers; both 0, that none lasts. Start
// and Days are looked at for being possible, nothing else.
//
// With demand cH, g, K and V0 as in SetStocking the masses are
// ((K - V0) ± √((K + V0)² - 4 cH K / g)) / 2, where they are above nothing.
//
// Errors: *units.DomainError names the first field that is impossible.
//
// Check: TestSetStockedBalancesByHand, TestSetStockedRefuses
//
// Source: NOY-MEIR-1975 growth set equal to intake and solved for the mass; the solution is ours
func SetStockedBalances(s SetStocking) (low, high units.Yield, err error) {
	k, v0 := float64(s.Ceiling), float64(s.HalfIntake)
	square := (k+v0)*(k+v0) - 4*float64(s.FullIntake)*k/s.RelativeGrowth
	if err := s.possible("grazing.SetStockedBalances", square); err != nil {
		nan := units.Yield(math.NaN())
		return nan, nan, err
	}
	if square < 0 {
		return 0, 0, nil
	}
	root := math.Sqrt(square)
	// A root at or below nothing is no stand of grass; bare ground, 0, is the
	// balance in its place.
	return units.Yield(max(0, (k-v0-root)/2)), units.Yield(max(0, (k-v0+root)/2)), nil
}
