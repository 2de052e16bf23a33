package forage

import (
	"cmp"
	"math"
	"slices"
	"strconv"

	"example.org/soum/units"
)

// TurnInCover returns the cover that the paddock grazed next must have, so that a
// rotation of so many days meets the demand from what stands above the residual.
//
// Formula: demand/area*rotation + residual
//
// Where:
//   - demand in kg/day: dry matter that the stock eat of the pasture; >= 0
//   - area in ha: all the land of the rotation; > 0
//   - rotation in days: from one grazing of a paddock to the next; >= 0
//   - residual in kg/ha: cover left by grazing; >= 0
//
// Note: half of what stands above the residual is what the mean of all paddocks
// then holds above it (grazing.BalanceCover), which is the print that this follows
// from: 2.6 cows a hectare × 16 kg × 25 days × 0.5 + 1,600.
//
// Source: SIDDC-COVER the mean; ours: the paddock grazed next, as the upper end of a
// straight line of which that is the middle
func TurnInCover(demand units.Demand, area units.Area, rotation units.Days, residual units.Yield) (units.Yield, error) {
	cover := units.Yield(float64(float64(demand)/float64(area)*float64(rotation)) + float64(residual))
	return units.Answer(&formulaTurnInCover, cover, float64(demand), float64(area), float64(rotation), float64(residual))
}

// PaddockCover is one paddock of a walk.
type PaddockCover struct {
	Paddock string      `json:"paddock"` // its name
	Area    units.Area  `json:"area"`    // its land
	Cover   units.Yield `json:"cover"`   // dry matter standing, from the soil up
}

// CoverPlace is a paddock in the line of covers.
type CoverPlace struct {
	Paddock string      `json:"paddock"`     // its name
	Area    units.Area  `json:"area_m2"`     // its land
	Cover   units.Yield `json:"cover_kg_m2"` // dry matter standing
	// Target is the cover wanted at this place of the line.
	Target units.Yield `json:"target_kg_m2"`
	// Surplus is cover less target, below nothing where it is short.
	Surplus units.Yield `json:"surplus_kg_m2"`
}

// CoverLine is the paddocks of a farm from the most grown to the least, beside the
// line on which a steady rotation would have them.
type CoverLine struct {
	// Mean is the mean cover by area.
	Mean units.Yield `json:"mean_kg_m2"`
	// TargetMean is the mean cover that the rotation wants.
	TargetMean units.Yield `json:"target_mean_kg_m2"`
	// TurnIn is the cover at which the line begins, Residual where it ends.
	TurnIn   units.Yield `json:"turn_in_kg_m2"`
	Residual units.Yield `json:"residual_kg_m2"`
	// Area is the land of all paddocks.
	Area units.Area `json:"area_m2"`
	// Surplus is what all paddocks hold beyond the line, below nothing what is short.
	Surplus units.DryMatter `json:"surplus_kg"`
	// Places are the paddocks, the most grown first.
	Places []CoverPlace `json:"places"`
}

// LineOfCovers puts paddocks in order from the most grown to the least and sets
// beside each the cover that a steady rotation would have there.
//
// The target falls in a straight line over the land, from TurnInCover where grazing
// goes next to the residual where it has just been; a paddock's target is that of
// its middle. Places above the line at the front are hay to be, a dip in the middle
// is a shortage so many days ahead: longer rotation, fewer mouths or feed. Paddocks of
// one cover keep the order they came in. The residual keeps the plants and the stock
// fed: stock that find no more than it eat too little.
//
// Method: sort by cover; target = residual + (turn-in - residual) × (1 - share of the
// land before the paddock's middle)
//
// Errors: a *units.DomainError that names the paddock for an area not above 0, a cover
// below 0 or not finite; for no paddock at all; for a demand, rotation or residual
// that TurnInCover refuses
//
// Check: TestLineOfCoversByHand, TestLineOfCoversKeepsTheMean, TestLineOfCoversRefuses
//
// Source: SIDDC-COVER the mean that the line keeps; ours: the places by area
func LineOfCovers(paddocks []PaddockCover, demand units.Demand, rotation units.Days, residual units.Yield) (CoverLine, error) {
	line := CoverLine{Residual: residual}
	mass := 0.0
	for i, p := range paddocks {
		if err := goodPaddock(i, p); err != nil {
			return CoverLine{}, err
		}
		line.Area += p.Area
		mass += float64(p.Area) * float64(p.Cover)
	}
	if _, err := units.Answer(&noPaddocksGuard, mass, float64(len(paddocks))); err != nil {
		return CoverLine{}, err
	}
	var err error
	if line.TurnIn, err = TurnInCover(demand, line.Area, rotation, residual); err != nil {
		return CoverLine{}, err
	}
	line.Mean = units.Yield(mass / float64(line.Area))
	line.TargetMean = residual + (line.TurnIn-residual)/2
	line.Surplus = units.DryMatter(mass - float64(line.TargetMean)*float64(line.Area))

	order := slices.Clone(paddocks)
	slices.SortStableFunc(order, func(a, b PaddockCover) int { return cmp.Compare(b.Cover, a.Cover) })
	before := units.Area(0)
	for _, p := range order {
		gone := float64((before + p.Area/2) / line.Area)
		target := residual + (line.TurnIn-residual)*units.Yield(1-gone)
		line.Places = append(line.Places, CoverPlace{p.Paddock, p.Area, p.Cover, target, p.Cover - target})
		before += p.Area
	}
	return line, nil
}

// noPaddocksGuard holds how many paddocks there are; its result is the mass of all.
var noPaddocksGuard = units.Formula{Name: "forage.LineOfCovers", Source: "SIDDC-COVER", Arguments: []units.Argument{
	{Name: "number of paddocks", Factor: 1, Domain: units.Limits{Low: 1, High: math.Inf(1), LowOf: -1, HighOf: -1}},
}}

func goodPaddock(i int, p PaddockCover) error {
	guard := units.Formula{Name: "forage.LineOfCovers", Source: "SIDDC-COVER", Arguments: []units.Argument{
		{Name: "area of " + named(i, p), Unit: "ha", Factor: float64(units.Hectare), Domain: units.Limits{High: math.Inf(1), LowOpen: true, LowOf: -1, HighOf: -1}},
		{Name: "cover of " + named(i, p), Unit: "kg/ha", Factor: float64(units.KilogramPerHectare), Domain: units.Limits{High: math.Inf(1), LowOf: -1, HighOf: -1}},
	}}
	_, err := units.Answer(&guard, 0.0, float64(p.Area), float64(p.Cover))
	return err
}

// named tells which paddock is meant.
func named(i int, p PaddockCover) string {
	if p.Paddock == "" {
		return "paddock " + strconv.Itoa(i+1)
	}
	return p.Paddock
}
