package forage

import (
	"slices"
	"time"

	"example.org/soum/units"
)

// Season is a quarter of the grazing year, by what grows and not by the calendar:
// in the south spring begins in September.
type Season int

// The seasons.
const (
	Spring  Season = iota + 1 // fast growth
	Summer                    // slower, in the heat
	Autumn                    // the second growth, and its end
	Winter                    // hardly any
	AllYear                   // a figure printed without a season
)

// GrowthCurve is a row of shares of the year's growth by month.
type GrowthCurve struct {
	// Name of the row, lower case with hyphens.
	Name string `json:"name"`
	// Shares of the year's growth, January first, as printed.
	Shares [12]units.Fraction `json:"shares"`
	units.Printed
	// Note tells what the row does not say of itself.
	Note string `json:"note,omitempty"`
}

// GrowthCurves gives the rows of growth by month beyond those of Pastures, as a
// copy.
//
// Check: TestGrowthCurves
//
// Source: ours: a collection, each row with its source
func GrowthCurves() []GrowthCurve { return slices.Clone(growthCurves) }

// CurveShare gives the share of the year's growth that a row of GrowthCurves has in
// a month.
//
// Table: shares by row and month
//
// Where:
//   - curve: as in GrowthCurves
//   - month: January is 1; 1 to 12
//
// Errors: a *units.ParseError that lists the rows
//
// Note: print differs by place: half of the season's yield in the first two of six
// months in New York (CORNELL-SEASON), over three quarters before June in Nebraska
// (UNL-G1908), four fifths by July in North Dakota (NDSU-SPRING), three fifths by
// June in Ohio (OHIO-PASTURE).
//
// Source: ND-CURVE, COLORADO-CURVES, PSU-MONTHS, as the row says
func CurveShare(curve string, month time.Month) (units.Fraction, error) {
	row := rowOf(growthCurves, func(c *GrowthCurve) bool { return c.Name == curve })
	if row == nil {
		return noRow[units.Fraction](&formulaCurveShare, "curve", curve, "no such row", namesOf(growthCurves, func(c *GrowthCurve) string { return c.Name }), 0, float64(month))
	}
	return units.Answer(&formulaCurveShare, ofMonth(&row.Shares, month), 0, float64(month))
}

// ofMonth gives the share of a month, 0 of what is no month, for the guard to refuse.
func ofMonth(shares *[12]units.Fraction, month time.Month) units.Fraction {
	if month < time.January || month > time.December {
		return 0
	}
	return shares[month-time.January]
}

// SeasonCurve is a row of shares of the year's growth by season.
type SeasonCurve struct {
	// Place where it was measured, lower case with hyphens.
	Place string `json:"place"`
	// Winter, Spring, Summer and Autumn are shares of the year's growth.
	Winter units.Fraction `json:"winter"`
	Spring units.Fraction `json:"spring"`
	Summer units.Fraction `json:"summer"`
	Autumn units.Fraction `json:"autumn"`
	// Annual is the year's growth, 0 where it is not printed with the shares.
	Annual units.Yield `json:"annual,omitempty"`
	units.Printed
}

// SeasonCurves gives the rows of growth by season, of New Zealand, as a copy.
//
// Check: TestSeasonCurves
//
// Source: NZ-SEASONS
func SeasonCurves() []SeasonCurve { return slices.Clone(seasonCurves) }

// SeasonShare gives the share of the year's growth that a place of SeasonCurves has
// in a season.
//
// Table: shares by place and season; the whole for AllYear
//
// Where:
//   - place: as in SeasonCurves
//   - season: a quarter, or all the year
//
// Errors: a *units.ParseError that lists the places
//
// Note: how it is cut counts as much as where: in South Taranaki spring had 36 % cut
// every two weeks, 46 % cut every four (BAARS-1982).
//
// Source: NZ-SEASONS
func SeasonShare(place string, season Season) (units.Fraction, error) {
	row := rowOf(seasonCurves, func(c *SeasonCurve) bool { return c.Place == place })
	if row == nil {
		return noRow[units.Fraction](&formulaSeasonShare, "place", place, "no such place", namesOf(seasonCurves, func(c *SeasonCurve) string { return c.Place }), 0, float64(season))
	}
	return units.Answer(&formulaSeasonShare, row.share(season), 0, float64(season))
}

// share is 0 for what is no season, for the guard to refuse.
func (c *SeasonCurve) share(season Season) units.Fraction {
	switch season {
	case Spring:
		return c.Spring
	case Summer:
		return c.Summer
	case Autumn:
		return c.Autumn
	case Winter:
		return c.Winter
	case AllYear:
		return c.Winter + c.Spring + c.Summer + c.Autumn
	}
	return 0
}

// GrowthRow is a row of measured daily growth.
type GrowthRow struct {
	// Place and year, lower case with hyphens.
	Place string `json:"place"`
	// When, in words, lower case with hyphens.
	When string `json:"when"`
	// Growth is the mean daily growth.
	Growth units.Growth `json:"growth"`
	units.Printed
}

// GrowthRows gives the table of measured daily growth, as a copy.
//
// Check: TestGrowthRows
//
// Source: ours: a collection, each figure with its source on its row
func GrowthRows() []GrowthRow { return slices.Clone(growthRows) }

// DailyGrowth gives a measured daily growth.
//
// Table: growth by place and time
//
// Where:
//   - place: as in GrowthRows
//   - when: as there
//
// Errors: a *units.ParseError that lists the places, or the times of the place
//
// Note: of Ohio's weekly figures some ran together in the archived text; where they
// part is ours. Growth of one week differs by half from the mean of five years: a
// table is a guide, MeanGrowth of your own two covers is the answer.
//
// Source: OSU-PLATE, IRELAND-GROWTH, SIDDC-COVER, BROUGHAM-1955, NI-GROWTH,
// FAS-ROTATION, as the row says
func DailyGrowth(place, when string) (units.Growth, error) {
	if row := rowOf(growthRows, func(r *GrowthRow) bool { return r.Place == place && r.When == when }); row != nil {
		return row.Growth, nil
	}
	times := known(growthRows, func(r *GrowthRow) bool { return r.Place == place }, func(r *GrowthRow) string { return r.When })
	if times != nil {
		return noRow[units.Growth](&formulaDailyGrowth, "when", when, "no figure of "+place+" for this time", times, 0, 0)
	}
	return noRow[units.Growth](&formulaDailyGrowth, "place", place, "no such place", namesOf(growthRows, func(r *GrowthRow) string { return r.Place }), 0, 0)
}
