package forage

import (
	"fmt"
	"slices"

	"example.org/soum/units"
)

// AlfalfaStage is the most mature stem of a stand of alfalfa.
type AlfalfaStage int

// The stages of alfalfa. The printed pairs end before flowering.
const (
	AlfalfaVegetative AlfalfaStage = iota + 1 // no buds yet
	AlfalfaBud                                // buds, no flowers
)

// AlfalfaFibre returns the neutral detergent fibre, NDF, of pure alfalfa as it
// stands, from the tallest stem and the most mature one.
//
// Method: 17.48 + 0.69 H in per cent before buds, 18.70 + 0.69 H in bud, with H the
// tallest stem in inches
//
// Where:
//   - height in in: the tallest stem of the sample; > 0
//   - stage: the most mature stem
//
// Errors: a *units.RangeError beside the value where the height is outside that of
// the printed pairs: 18 to 32 in before buds, 26 to 32 in bud
//
// Note: the two lines are laid through the printed pairs and give all of them to the
// digit. Not for alfalfa with grass in it. What is made of the crop has more: about 2
// points in silage, more in hay (OHIO-PEAQ). It says when to cut, not what is in the
// barn: a laboratory does.
//
// Source: OHIO-FORAGE-2024
func AlfalfaFibre(height units.Height, stage AlfalfaStage) (units.Fraction, error) {
	arguments := [...]float64{float64(height), float64(stage)}
	line := &alfalfaLines[0]
	if stage == AlfalfaBud {
		line = &alfalfaLines[1]
	}
	share := units.Fraction(line.start+float64(line.each*float64(height/units.HeightInch))) * units.Percent
	if lowest, highest := line.lowest*units.HeightInch, line.highest*units.HeightInch; height < lowest || height > highest {
		return units.AnswerWithin(&formulaAlfalfaFibre, 0, units.Between(float64(lowest), float64(highest), "OHIO-FORAGE-2024"), share, arguments[:]...)
	}
	return units.Answer(&formulaAlfalfaFibre, share, arguments[:]...)
}

// QualityFigure is a figure of the quality of a forage, a share of its dry matter.
type QualityFigure int

// The figures of quality.
const (
	QualityProtein      QualityFigure = iota + 1 // crude protein
	QualityNeutralFibre                          // neutral detergent fibre
	QualityAcidFibre                             // acid detergent fibre
	QualityNutrients                             // total digestible nutrients, TDN
	QualityDigestible                            // digestibility
)

// Bound is how a printed span is meant.
type Bound int

// The bounds.
const (
	BoundWithin Bound = iota + 1 // between the two, or the one figure
	BoundOver                    // more than the figure
	BoundUnder                   // less than the figure
)

// ForageRow is a row of the table of quality by forage and stage.
type ForageRow struct {
	// Forage is the forage with its stage, lower case with hyphens.
	Forage string `json:"forage"`
	// Figure is what is told of it.
	Figure QualityFigure `json:"figure"`
	// Share is the printed span; both ends are the limit where print says over or under.
	Share units.Span[units.Fraction] `json:"share"`
	// Bound is how the span is meant.
	Bound Bound `json:"bound"`
	units.Printed
}

// QualityRows gives the table of Quality, as a copy.
//
// Check: TestQualityRows
//
// Source: OREGON-GRASS, ALBERTA-STAGE, PSU-QUALITY, KENTUCKY-FEEDS, CORNELL-NDF, as the
// row says
func QualityRows() []ForageRow { return slices.Clone(qualityRows) }

// Quality gives one end of a printed figure of quality of a forage at a stage.
//
// Where print says over or under, both ends are that limit, and QualityRows tells it.
// Two stages of one print can stand the wrong way round: alfalfa in late bud with less
// fibre than in early bud (ALBERTA-STAGE, other samples). Hay that matters is worth a
// test in a laboratory.
//
// Where:
//   - forage: as in QualityRows
//   - figure: what is told of it
//   - end: of the printed span
//
// Errors: a *units.ParseError that lists the forages with the figure
//
// Source: OREGON-GRASS, ALBERTA-STAGE, PSU-QUALITY, KENTUCKY-FEEDS, CORNELL-NDF
func Quality(forage string, figure QualityFigure, end units.End) (units.Fraction, error) {
	arguments := [...]float64{0, float64(figure), float64(end)}
	row := rowOf(qualityRows, func(r *ForageRow) bool { return r.Figure == figure && r.Forage == forage })
	if row == nil {
		forages := known(qualityRows, func(r *ForageRow) bool { return r.Figure == figure }, func(r *ForageRow) string { return r.Forage })
		if forages == nil {
			figures := namesOf(qualityRows, func(r *ForageRow) string { return r.Figure.String() })
			return noRow[units.Fraction](&formulaQuality, "figure", figure.String(), "is printed of no forage here", figures, arguments[:]...)
		}
		return noRow[units.Fraction](&formulaQuality, "forage", forage, fmt.Sprintf("has no figure of %q", figure), forages, arguments[:]...)
	}
	return units.Answer(&formulaQuality, row.Share.At(end), arguments[:]...)
}

// QualityDrift is how quickly a figure of quality changes in a growing crop.
type QualityDrift int

// The printed changes.
const (
	DriftNeutralFibreWarm   QualityDrift = iota + 1 // fibre NDF of first-cut alfalfa in warm weather, at most
	DriftNeutralFibreSpring                         // fibre NDF of alfalfa in spring
	DriftProtein                                    // crude protein of first-cut alfalfa
	DriftAcidFibre                                  // fibre ADF of first-cut alfalfa
	DriftDigestible                                 // digestibility of five grasses
)

// QualityAfter returns a figure of quality of a growing crop after some days.
//
// Method: up 0.7 points a day, up 5 a week, down 2.0 a week, up 3.8 a week, down 0.5 a
// day, in the order of the words
//
// Where:
//   - now in %: the figure today; 0 to 100
//   - drift: what changes, and whose figure it is
//   - days in days: how long the crop grows on; >= 0
//
// Errors: a domain error where the figure would be below 0 or above 100 %
//
// Note: straight lines for a few weeks before the first cut, no more. The relative feed
// value of alfalfa falls by 3 to 5 a day, and by 15 in making haylage or 25 in making
// hay, with 10 to 20 % of the dry matter (ISU-HARVEST).
//
// Source: OMAFRA-NDF 0.7; OHIO-PEAQ 5; IDAHO-BUL-1018 protein and ADF; PRITCHARD-GRASS
// digestibility
func QualityAfter(now units.Fraction, drift QualityDrift, days units.Days) (units.Fraction, error) {
	arguments := [...]float64{float64(now), float64(drift), float64(days)}
	if drift.String() == "" {
		return units.Answer(&formulaQualityAfter, units.Fraction(0), arguments[:]...)
	}
	after := now + units.Fraction(qualityDrifts[drift-1]*float64(days))
	if after < 0 || after > 1 {
		last := float64(now) / -qualityDrifts[drift-1]
		if after > 1 {
			last = float64(1-now) / qualityDrifts[drift-1]
		}
		return units.AnswerWithin(&formulaQualityAfter, 2, units.Between(0, last, ""), after, arguments[:]...)
	}
	return units.Answer(&formulaQualityAfter, after, arguments[:]...)
}

// DaysToFibre returns the days until the fibre of standing alfalfa comes to a target.
//
// Formula: (target - now) / rate
//
// Where:
//   - now in %: NDF today, as from AlfalfaFibre; 0 to target
//   - target in %: NDF wanted at cutting; 0 to 100
//   - rate in %: rise of the NDF in a day; > 0 and <= 100
//
// Note: 38 % is the target of pure alfalfa and 50 % of pure grass by CORNELL-NDF, with 10
// to 15 % of quality lost on the way to the rack; 0.7 points a day is the most in warm
// weather (OMAFRA-NDF), 5 a week (OHIO-PEAQ) about the same. Begin before the day: all
// of the crop has to be cut.
//
// Source: definition: the way left over the rate; CORNELL-NDF, OMAFRA-NDF, OHIO-PEAQ for the
// figures that go in
func DaysToFibre(now, target, rate units.Fraction) (units.Days, error) {
	return units.Answer(&formulaDaysToFibre, units.Days((target-now)/rate), float64(now), float64(target), float64(rate))
}

// HayGrade is a class of the hay trade, the best first.
type HayGrade int

// The grades of hay.
const (
	GradeSupreme HayGrade = iota + 1 // alfalfa only
	GradePremium                     // premium
	GradeGood                        // good
	GradeFair                        // fair
	GradeUtility                     // alfalfa only
	GradeLow                         // grass only
)

// GradeFigure is the figure that a grade is read from.
type GradeFigure int

// The figures of grades. The relative feed value is a plain number, the others shares of
// the dry matter.
const (
	GradeByFeedValue    GradeFigure = iota + 1 // relative feed value of alfalfa
	GradeByAcidFibre                           // acid detergent fibre of alfalfa, %
	GradeByNeutralFibre                        // neutral detergent fibre of alfalfa, %
	GradeByNutrients                           // total digestible nutrients of alfalfa, %
	GradeByProtein                             // crude protein of alfalfa, %
	GradeByGrassProtein                        // crude protein of grass hay, %
)

// GradeStep is a row of the grades of hay.
type GradeStep struct {
	// Figure is the figure that the grade is read from.
	Figure GradeFigure `json:"figure"`
	// Limit is the worst value of the grade: the lowest, or for fibre the highest.
	Limit float64 `json:"limit"`
	// Grade is the grade.
	Grade HayGrade `json:"grade"`
	units.Printed
}

// GradeSteps gives the grades of hay, as a copy.
//
// Check: TestGradeSteps
//
// Source: USDA-HAY-MISSOURI, USDA-HAY-COPY, as the row says
func GradeSteps() []GradeStep { return slices.Clone(gradeSteps) }

// GradeOf gives the grade of hay in the US trade by one figure: the relative feed value
// as a number (see herd.ForageValue), the others in per cent of the dry matter.
//
// Print calls the figures approximate and grades by looks as well; a lot can have two
// grades by two figures. A value on a limit goes into the better grade: ours.
//
// Where:
//   - value: the feed value, or a share in per cent; >= 0
//   - by: which figure it is
//
// Errors: a *units.DomainError where a share is above 100 %, and where no grade is
// printed: fibre NDF over 40, nutrients under 58, protein of alfalfa under 18
//
// Source: USDA-HAY-MISSOURI feed value, ADF, protein of grass; USDA-HAY-COPY NDF,
// nutrients, protein of alfalfa
func GradeOf(value float64, by GradeFigure) (HayGrade, error) {
	if _, err := units.Answer(&formulaGradeOf, value, value, float64(by)); err != nil {
		return 0, err
	}
	graded := units.Between(0, 100, "")
	if by == GradeByFeedValue {
		graded.High = infinity
	}
	fibre := by == GradeByAcidFibre || by == GradeByNeutralFibre
	for i := range gradeSteps {
		step := &gradeSteps[i]
		switch {
		case step.Figure != by:
		case fibre && value <= step.Limit, !fibre && value >= step.Limit && value <= graded.High:
			return step.Grade, nil
		case fibre:
			graded.High = step.Limit
		default:
			graded.Low = step.Limit
		}
	}
	_, err := units.AnswerWithin(&formulaGradeOf, 0, graded, value, value, float64(by))
	return 0, err
}

// CrudeProtein returns the crude protein in a mass of feed.
//
// Formula: feed * protein
//
// Where:
//   - feed in lb: dry matter; >= 0
//   - protein in %: crude protein of the dry matter; 0 to 100
//
// Note: put in the feed of a day for the protein of a day. Whether it is enough depends
// on class and stage: herd.FeedNeed, and an adviser.
//
// Source: NDSU-NEWS-15
func CrudeProtein(feed units.DryMatter, protein units.Fraction) (units.Mass, error) {
	return units.Answer(&formulaCrudeProtein, units.Mass(float64(feed)*float64(protein)), float64(feed), float64(protein))
}

// MixedDigestibility returns the digestibility of a pasture of green and dead herbage.
//
// Formula: share*dead + (1-share)*green
//
// Where:
//   - green in %: digestibility of what is green; 0 to 100
//   - dead in %: digestibility of what is dead; 0 to 100
//   - share in %: share of dead herbage; 0 to 100
//
// Note: stock pick the green first and eat better than this mean while they can.
//
// Source: definition: the mean by share; VIC-PASTURE for its figures
func MixedDigestibility(green, dead, share units.Fraction) (units.Fraction, error) {
	mixed := units.Fraction(float64(share*dead)) + units.Fraction(float64((1-share)*green))
	return units.Answer(&formulaMixedDigestibility, mixed, float64(green), float64(dead), float64(share))
}

// PastureGrade is a row of classes of pasture by digestibility.
type PastureGrade struct {
	// Name is the class.
	Name string `json:"name"`
	// Green is the digestibility of what is green.
	Green units.Fraction `json:"green"`
	// Dead is the digestibility of what is dead.
	Dead units.Fraction `json:"dead"`
	// Legume is the share of legume; for low at most that.
	Legume units.Fraction `json:"legume"`
	// Share is the share of dead herbage; for low up to that.
	Share units.Fraction `json:"share"`
	units.Printed
}

// PastureGrades gives four classes of pasture, as a copy: what to put into
// MixedDigestibility where nothing was measured.
//
// Check: TestPastureGrades
//
// Source: VIC-PASTURE
func PastureGrades() []PastureGrade { return slices.Clone(pastureGrades) }
