package forage

import (
	"example.org/soum/units"
)

// StockpileTrial is a trial of tall fescue kept for winter, by its year.
type StockpileTrial int

// The trials of stockpiled tall fescue in Iowa.
const (
	StockpileWet StockpileTrial = iota + 1 // 1999, a wet year
	StockpileDry                           // 2000, a dry year
)

// Stockpile returns the dry matter that tall fescue grows from late summer on for
// winter, by the nitrogen given.
//
// Method: 1747 + 15 N in a wet year, 672 + 19 N in a dry one, in lb/ac
//
// Where:
//   - nitrogen in lb/ac: nitrogen given as growth begins to be kept; >= 0; 0 to 100 [SINGER-2003]
//   - trial: which year
//
// Note: the equations miss single plots by 235 and 202 lb/ac. Other print: up to 2,800
// lb/ac by mid-November in the Midwest, 30 % more with nitrogen early in August than
// late, the first 40 lb of it earning most, more than twice what the next do; in
// Virginia 3,920 kg/ha kept from June on and 840 from September, with 9.4 and 11.3 %
// protein (RAYBURN-1979). Frozen or wet stockpile on steep ground is no place for
// heavy stock, and fescue may carry the fungus of EndophyteLoss.
//
// Source: SINGER-2003
func Stockpile(nitrogen units.Dressing, trial StockpileTrial) (units.Yield, error) {
	line := stockpileWet
	if trial == StockpileDry {
		line = stockpileDry
	}
	yield := units.Yield(line.bare)*units.PoundPerAcre + units.Yield(float64(line.each*float64(nitrogen)))
	return units.Answer(&formulaStockpile, yield, float64(nitrogen), float64(trial))
}
