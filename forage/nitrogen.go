package forage

import (
	"slices"

	"example.org/soum/units"
)

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
	units.Printed
}

// ResponseRows gives the table of NitrogenResponse, as a copy.
//
// Check: TestResponseRows
//
// Source: SINGER-2003, BRINK-CASLER, KENTUCKY-STOCKPILE, NOBLE-PERMANENT, as the row says
func ResponseRows() []ResponseRow { return slices.Clone(responseRows) }

// NitrogenResponse gives the extra dry matter that nitrogen brings, by one source.
//
// The sources run from 15 to 30 times the mass of the nitrogen, each for the amounts it
// tried; above them it is less. Rules on nitrogen near water, and a soil test, come
// first. Much nitrogen before drought or frost can bring nitrate: see NitrateClass.
//
// Where:
//   - nitrogen in lb/ac: what is given; >= 0
//   - by: whose response
//   - end: of the printed span
//
// Source: SINGER-2003, BRINK-CASLER, KENTUCKY-STOCKPILE, NOBLE-PERMANENT
func NitrogenResponse(nitrogen units.Dressing, by ResponseSource, end units.End) (units.Yield, error) {
	var extra units.Yield
	for i := range responseRows {
		if responseRows[i].By == by {
			extra = units.Yield(responseRows[i].Response.At(end) * float64(nitrogen))
		}
	}
	return units.Answer(&formulaNitrogenResponse, extra, float64(nitrogen), float64(by), float64(end))
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
