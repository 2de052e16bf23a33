package forage

import (
	"slices"

	"example.org/soum/units"
)

// RestFromGrowth returns the rest in which a stand comes from the mass left to the
// mass wanted at a steady growth. Slow growth makes long rest.
//
// Formula: (turnIn - leave) / growth
//
// Where:
//   - leave in kg/ha: dry matter left by the grazing before; >= 0
//   - turnIn in kg/ha: dry matter at which grazing is to begin; >= leave
//   - growth in kg/ha/day: mean daily growth between the two; > 0
//
// Note: where the curve of regrowth is known, DaysToRegrow is nearer the truth. If
// paddocks will not be ready, add paddocks or feed; if they run ahead, shut some up
// for hay (MLA-REST). Irrigated ryegrass grazed at its right stage rested 23, 39, 39
// and 48 days while it grew 94, 73, 56 and 43 kg/ha a day (PRETORIA-REST).
//
// Source: MLA-REST that rest follows growth; PRETORIA-REST rests and growth
// together; definition: mass over growth
func RestFromGrowth(leave, turnIn units.Yield, growth units.Growth) (units.Days, error) {
	rest := units.Days((float64(turnIn) - float64(leave)) / float64(growth))
	return units.Answer(&formulaRestFromGrowth, rest, float64(leave), float64(turnIn), float64(growth))
}

// RestRow is a row of the table of printed rests.
type RestRow struct {
	// Situation is the plant or the place, lower case with hyphens.
	Situation string `json:"situation"`
	// Season that the figure is for.
	Season Season `json:"season"`
	// Rest is the printed span.
	Rest units.Span[units.Days] `json:"rest"`
	units.Printed
	// Note tells what the figure is, where it is not a span of rest plainly.
	Note string `json:"note,omitempty"`
}

// RestRows gives the table of printed rests, as a copy.
//
// Check: TestRestRows
//
// Source: ours: a collection, each row with its source
func RestRows() []RestRow { return slices.Clone(restRows) }

// RestOf gives one end of a printed rest.
//
// Table: rest by situation and season
//
// Where:
//   - situation: as in RestRows
//   - season: of the figure
//   - end: of the printed span
//
// Errors: a *units.ParseError that lists the situations, or the seasons that a
// situation has
//
// Note: sources disagree. Bahiagrass 10 to 20 days (UGA-HEIGHTS) or 28 (IFAS-REST);
// spring 15 to 21 days in Britain, 15 in New York, 14 in Indiana, 21 in West
// Virginia; ryegrass at least 20 even in spring in southern Australia. Regrowth can
// be bitten after 4 to 5 days, so a stay should end before (PROG-LANE); leaves of
// ryegrass live about 22 days, and rest much beyond it loses leaf to death
// (WOODWARD-1994).
//
// Source: UGA-HEIGHTS, FAS-ROTATION, CORNELL-PLAN, INDIANA-REST, WVU-PADDOCKS,
// PENNSYLVANIA-GUIDE, OZARKS-DAIRY, MLA-REST, FARMERS-JOURNAL-ROTATION, IFAS-REST,
// SRUC-SHEEPNET, SRUC-EWES, PRETORIA-REST, as the row says
func RestOf(situation string, season Season, end units.End) (units.Days, error) {
	arguments := [...]float64{0, float64(season), float64(end)}
	if row := rowOf(restRows, func(r *RestRow) bool { return r.Situation == situation && r.Season == season }); row != nil {
		return units.Answer(&formulaRestOf, row.Rest.At(end), arguments[:]...)
	}
	seasons := known(restRows, func(r *RestRow) bool { return r.Situation == situation }, func(r *RestRow) string { return r.Season.String() })
	if seasons != nil {
		return noRow[units.Days](&formulaRestOf, "season", season.String(), "no rest of "+situation+" is printed for it", seasons, arguments[:]...)
	}
	return noRow[units.Days](&formulaRestOf, "situation", situation, "no such situation", namesOf(restRows, situationOf), arguments[:]...)
}

// LongestRest gives the longest rest that is printed for a situation over all its
// seasons: the one that the number of paddocks is planned on.
//
// Table: the upper ends of RestRows
//
// Where:
//   - situation: as in RestRows
//
// Errors: a *units.ParseError that lists the situations
//
// Note: rest ÷ stay + 1 paddocks for one group (grazing.Paddocks); round up to keep
// the rest. A winter's rest is not planned on where stock are off the land then.
//
// Source: WVU-PADDOCKS plan on the longest rest of the season; each rest as its row
// says
func LongestRest(situation string) (units.Days, error) {
	longest := units.Days(0)
	for i := range restRows {
		if r := &restRows[i]; r.Situation == situation {
			longest = max(longest, r.Rest.High)
		}
	}
	if longest == 0 {
		return noRow[units.Days](&formulaLongestRest, "situation", situation, "no such situation", namesOf(restRows, situationOf), 0)
	}
	return longest, nil
}

func situationOf(r *RestRow) string { return r.Situation }

// LeafDays gives one end of the days in which perennial ryegrass puts out a leaf.
//
// Table: 9 to 11 days in spring (mean 13 to 16 °C), 8 to 10 in summer (18 to 20),
// 8 to 12 in autumn (14 to 20), 11 to 15 in winter (10 to 13), Northland, New Zealand
//
// Where:
//   - season: a quarter of the year
//   - end: of the printed span
//
// Errors: a *units.ParseError that lists the seasons, for all the year
//
// Note: a rotation is these days times the leaves wanted (rainfall.RotationDays):
// graze at two to three leaves, since the fourth is the death of the first. Third-
// leaf grazing grew 1.1 t/ha a year more than second-leaf in irrigated Canterbury.
// Tall fescue and ryegrass keep three live leaves (MISSOURI-M185).
//
// Source: DAIRYNZ-LEAF
func LeafDays(season Season, end units.End) (units.Days, error) {
	if season < Spring || season > Winter {
		return noRow[units.Days](&formulaLeafDays, "season", season.String(), "no days of a leaf are printed for it", namesSeason[Spring:AllYear], float64(season), float64(end))
	}
	return units.Answer(&formulaLeafDays, leafDays[season-1].At(end), float64(season), float64(end))
}
