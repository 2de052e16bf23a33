package forage

import (
	"fmt"
	"math"
	"slices"

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

// ResponseSource is whose response of grass to nitrogen is used.
type ResponseSource int

// The sources of responses.
const (
	ResponseIowaWet       ResponseSource = iota + 1 // stockpiled tall fescue, Iowa 1999
	ResponseIowaDry                                 // stockpiled tall fescue, Iowa 2000
	ResponseWisconsinLess                           // fescues and orchardgrass at 60 lb/ac, Wisconsin
	ResponseWisconsinMore                           // the same at 120 lb/ac
	ResponseKentucky                                // stockpiled fescue on five farms at 46 lb/ac
	ResponseOklahoma                                // bermudagrass that had no nitrogen before
)

// ResponseRow is a row of the table of responses to nitrogen.
type ResponseRow struct {
	// By is whose figure it is.
	By ResponseSource `json:"by"`
	// Response is dry matter for each equal mass of nitrogen.
	Response units.Span[float64] `json:"response"`
	// Source is a key of SOURCES.md.
	Source string `json:"source"`
	// Mark is how the figure was come by.
	Mark string `json:"mark"`
}

// ResponseRows gives the table of NitrogenResponse, as a copy.
//
// Check: TestResponseRows
//
// Source: SINGER-2003, BRINK-CASLER, KENTUCKY-STOCKPILE, NOBLE-PERMANENT, as the row says
func ResponseRows() []ResponseRow { return slices.Clone(responseRows) }

var responseGuard = guard("NitrogenResponse", "the source of the row", units.Argument{Name: "nitrogen", Unit: "lb/ac", Factor: float64(units.DressingPoundPerAcre), Domain: anyAmount})

// NitrogenResponse gives the extra dry matter that nitrogen brings, by one source.
//
// The sources run from 15 to 30 times the mass of the nitrogen, each for the amounts it
// tried; above them it is less. Rules on nitrogen near water, and a soil test, come
// first. Much nitrogen before drought or frost can bring nitrate: see NitrateClass.
//
// Errors: a domain error where the nitrogen is below 0 or not a number; a
// *units.ParseError for a source that is none
//
// Source: SINGER-2003, BRINK-CASLER, KENTUCKY-STOCKPILE, NOBLE-PERMANENT
func NitrogenResponse(nitrogen units.Dressing, by ResponseSource, end units.End) (units.Yield, error) {
	if by.String() == "" {
		return units.Yield(math.NaN()), unknownRow("ResponseSource", fmt.Sprint(int(by)), "no such source", namesResponseSource[1:])
	}
	var extra units.Yield
	for i := range responseRows {
		if responseRows[i].By == by {
			extra = units.Yield(responseRows[i].Response.At(end) * float64(nitrogen))
		}
	}
	return units.Answer(&responseGuard, extra, float64(nitrogen))
}

// Fertilizer returns the fertiliser that holds so much of a nutrient.
//
// Formula: nutrient / content
//
// Where:
//   - nutrient in lb/ac: nutrient wanted; >= 0
//   - content in %: share of the nutrient in the fertiliser, 46 for nitrogen in urea; > 0 and <= 100
//
// Source: NOBLE-PERMANENT
func Fertilizer(nutrient units.Dressing, content units.Fraction) (units.Dressing, error) {
	return units.Answer(&formulaFertilizer, units.Dressing(float64(nutrient)/float64(content)), float64(nutrient), float64(content))
}
