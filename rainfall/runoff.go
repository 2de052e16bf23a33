package rainfall

import (
	"fmt"
	"math"
	"slices"

	"example.org/soum/units"
)

// CoverCondition is how well land is covered, in the table of curve numbers.
type CoverCondition int

// The conditions of cover.
const (
	CoverPoor CoverCondition = iota + 1 // under 50 % cover, or heavily grazed
	CoverFair                           // 50 to 75 % cover, not heavily grazed
	CoverGood                           // over 75 % cover, lightly grazed; also for covers printed without a condition
)

// SoilGroup is how fast a soil takes in water when it is thoroughly wet.
type SoilGroup int

// The hydrologic soil groups.
const (
	SoilGroupA SoilGroup = iota + 1 // takes in most
	SoilGroupB                      // more than the middle
	SoilGroupC                      // less than the middle
	SoilGroupD                      // takes in least
)

// CurveRow is a row of the table of curve numbers.
type CurveRow struct {
	// Cover is the cover of the land, lower case with hyphens.
	Cover string `json:"cover"`
	// Condition is how well the land is covered.
	Condition CoverCondition `json:"condition"`
	// A is the number on soil of group A, 0 where none is printed.
	A float64 `json:"a"`
	// B is the number on soil of group B.
	B float64 `json:"b"`
	// C is the number on soil of group C.
	C float64 `json:"c"`
	// D is the number on soil of group D.
	D float64 `json:"d"`
	units.Printed
}

// CurveRows gives the table of curve numbers, as a copy.
//
// Check: TestCurveRows
//
// Source: ours: a collection, each figure with the source and mark on its row
func CurveRows() []CurveRow { return slices.Clone(curveRows) }

// CurveNumber gives the runoff curve number of land by its cover and soil, for
// ground of average wetness (Antecedent).
//
// Errors: a *units.ParseError that lists the covers, the conditions of the cover, or
// the soil groups that have a number
//
// Source: TR-55 table 2-2
func CurveNumber(cover string, condition CoverCondition, soil SoilGroup) (float64, error) {
	const function = "rainfall.CurveNumber"
	var covers, conditions []string
	for i := range curveRows {
		row := &curveRows[i]
		if row.Cover == cover && row.Condition == condition {
			return row.number(soil)
		}
		if row.Cover == cover {
			conditions = append(conditions, row.Condition.String())
		}
		if !slices.Contains(covers, row.Cover) {
			covers = append(covers, row.Cover)
		}
	}
	if conditions != nil {
		return math.NaN(), noRow(function, "condition", 2, "rainfall.CoverCondition", wordOf(condition), fmt.Sprintf("no curve number of %q", cover), conditions)
	}
	return math.NaN(), noRow(function, "cover", 1, "rainfall.CurveRow", cover, "no curve number of this cover", covers)
}

func (r *CurveRow) number(soil SoilGroup) (float64, error) {
	numbers := [...]float64{r.A, r.B, r.C, r.D}
	if soil >= SoilGroupA && soil <= SoilGroupD && numbers[soil-1] > 0 {
		return numbers[soil-1], nil
	}
	has := namesSoilGroup[1:]
	if r.A == 0 {
		has = namesSoilGroup[2:]
	}
	return math.NaN(), noRow("rainfall.CurveNumber", "soil", 3, "rainfall.SoilGroup", wordOf(soil), fmt.Sprintf("no curve number of %q", r.Cover), has)
}

// WeightedCurveNumber gives the curve number of land in parts: the mean of the
// numbers by their areas.
//
// Errors: a *document.Error with the place for lists of different lengths or empty, an
// area that is not above 0, a number that is not above 0 and at most 100; a
// *units.DomainError where the areas overflow
//
// Check: TestWeightedCurveNumber
//
// Source: TR-55 worksheet 2
func WeightedCurveNumber(areas []units.Area, numbers []float64) (float64, error) {
	if err := sameLength("areas", len(areas), "numbers", len(numbers)); err != nil {
		return math.NaN(), err
	}
	sum, whole := 0.0, 0.0
	for i, area := range areas {
		if !(area > 0) {
			return math.NaN(), wrong(fmt.Sprintf("areas[%d]", i), area.String(), "is not the area of a part", "above 0")
		}
		if !(numbers[i] > 0 && numbers[i] <= 100) {
			return math.NaN(), wrong(fmt.Sprintf("numbers[%d]", i), fmt.Sprint(numbers[i]), "is not a curve number", "above 0 and at most 100")
		}
		sum, whole = sum+float64(area)*numbers[i], whole+float64(area)
	}
	if sum-sum != 0 {
		return math.NaN(), overflows("rainfall.WeightedCurveNumber", sum)
	}
	return sum / whole, nil
}

// Retention returns how much rain the land can take up after runoff has begun.
//
// Empirical: 1000/number - 10
//
// Where:
//   - number: curve number; > 0 and < 100; 30 to 98 [TR-55]
//   - result in in: potential maximum retention
//
// Source: TR-55 eq. 2-4
func Retention(number float64) (units.RainDepth, error) {
	return units.Answer(&formulaRetention, units.RainDepth(retention(number))*units.RainInch, number)
}

func retention(number float64) float64 { return 1000/number - 10 }

// InitialAbstraction returns how much rain falls before any runs off.
//
// Empirical: 0.2 * (1000/number - 10)
//
// Where:
//   - number: curve number; > 0 and < 100; 30 to 98 [TR-55]
//   - result in in: rain before runoff
//
// Source: TR-55 eq. 2-2 and table of initial abstraction
func InitialAbstraction(number float64) (units.RainDepth, error) {
	return units.Answer(&formulaInitialAbstraction, units.RainDepth(0.2*retention(number))*units.RainInch, number)
}

// Runoff returns the depth of water that runs off in a storm.
//
// Empirical: pow(max(rain - 0.2*(1000/number - 10), 0), 2) / (rain + 0.8*(1000/number - 10))
//
// Where:
//   - rain in in: of the storm; >= 0
//   - number: curve number of the land (CurveNumber); > 0 and < 100; 30 to 98 [TR-55]
//   - result in in: depth over the land
//
// Note: of whole storms on ground of average wetness, not of snow or frozen ground,
// and poor under half an inch of runoff. Where the reckoned number of land is under
// 30, print wants 30 used.
//
// Source: TR-55 eq. 2-1 to 2-4
func Runoff(rain units.RainDepth, number float64) (units.RainDepth, error) {
	inches, takes := float64(rain/units.RainInch), retention(number)
	over := max(inches-0.2*takes, 0)
	depth := over * over / (inches + 0.8*takes)
	return units.Answer(&formulaRunoff, units.RainDepth(depth)*units.RainInch, float64(rain), number)
}

// RunoffSeason is the season in the classes of wetness before a storm.
type RunoffSeason int

// The seasons.
const (
	RunoffGrowing RunoffSeason = iota + 1 // plants grow
	RunoffDormant                         // plants rest
)

// Wetness is a class of the ground before a storm.
type Wetness int

// The classes.
const (
	WetnessDry     Wetness = iota + 1 // less runs off than by the table's numbers
	WetnessAverage                    // as the table's numbers have it
	WetnessWet                        // more runs off
)

// Antecedent gives the class of the ground's wetness by the rain of the five days
// before a storm.
//
// Table: in the growing season dry under 1.4 in, wet over 2.1 in; in the dormant season
// dry under 0.5 in, wet over 1.1 in; average between
//
// Where:
//   - rain in in: of the five days before; >= 0
//   - season: whether plants grow
//
// Source: SWB-ANTECEDENT
func Antecedent(rain units.RainDepth, season RunoffSeason) (Wetness, error) {
	if _, err := units.Answer(&formulaAntecedent, 0.0, float64(rain), float64(season)); err != nil {
		return 0, err
	}
	switch limits := antecedentLimits[season]; {
	case rain < limits[0]:
		return WetnessDry, nil
	case rain > limits[1]:
		return WetnessWet, nil
	}
	return WetnessAverage, nil
}

// Caught returns the water that a roof or a piece of ground yields.
//
// Formula: area * rain * caught
//
// Where:
//   - area in ft2: as seen from above; >= 0
//   - rain in in: that falls on it; >= 0
//   - caught in %: share that reaches the tank; 0 to 100
//
// Note: a millimetre on a square metre is a litre; an inch on an acre 27,154 gal.
// Printed shortcuts round: RoofCatch.
//
// Source: definition: area times depth; AGPROUD-ALFALFA prints one such volume
func Caught(area units.Area, rain units.RainDepth, caught units.Fraction) (units.Volume, error) {
	water := units.Volume(float64(area) * float64(rain) * float64(caught))
	return units.Answer(&formulaCaught, water, float64(area), float64(rain), float64(caught))
}

// CatchFactor is a printed shortcut from square feet and inches to gallons.
type CatchFactor int

// The shortcuts, in gallons to a square foot and an inch.
const (
	CatchWhole     CatchFactor = iota + 1 // 0.623: all of it
	CatchRounded                          // 0.6
	CatchTenthLost                        // 0.56: nine tenths of it
)

// RoofCatch returns the water that a roof yields by a printed shortcut.
//
// Table: gallons to a square foot of roof and an inch of rain: whole 0.623, rounded
// 0.6, tenth lost 0.56
//
// Where:
//   - by: the shortcut
//   - area in ft2: of the roof as seen from above; >= 0
//   - rain in in: that falls on it; >= 0
//
// Note: Caught reckons it out with the share stated. Water off a roof carries what
// lies on it: local rules say whether people may drink it.
//
// Source: OSE-RAINWATER 0.623; STUDYLIB-RAINWATER 0.6; GREYWATER-ROOF 0.56
func RoofCatch(by CatchFactor, area units.Area, rain units.RainDepth) (units.Volume, error) {
	factor := 0.0
	if by >= CatchWhole && by <= CatchTenthLost {
		factor = catchFactors[by]
	}
	gallons := factor * float64(area/units.SquareFoot) * float64(rain/units.RainInch)
	return units.Answer(&formulaRoofCatch, units.Volume(gallons)*units.Gallon, float64(by), float64(area), float64(rain))
}

// FeedlotRunoff returns the water that runs off an open lot in a storm.
//
// Empirical: max(rain - 0.5, 0) / 12 * area
//
// Where:
//   - rain in in: of the storm; >= 0
//   - area in ac: of the lot; >= 0
//   - result in ac-ft: to be held back
//
// Note: it carries dung. How much must be held, and where it may go, is law: ask the
// authority.
//
// Source: MONTANA-FEEDLOT
func FeedlotRunoff(rain units.RainDepth, area units.Area) (units.Volume, error) {
	feet := max(float64(rain/units.RainInch)-0.5, 0) / 12
	return units.Answer(&formulaFeedlotRunoff, units.Volume(feet*float64(area/units.Acre))*units.AcreFoot, float64(rain), float64(area))
}

// OpenWaterLoss returns what a pond loses to the air by what a pan of class A loses.
//
// Formula: 0.70 * pan
//
// Where:
//   - pan in in: evaporation of the pan; >= 0
//
// Note: about. What seeps away comes on top, and both are mostly more than stock
// drink.
//
// Source: EPA-POND
func OpenWaterLoss(pan units.RainDepth) (units.RainDepth, error) {
	return units.Answer(&formulaOpenWaterLoss, units.RainDepth(0.70*float64(pan)), float64(pan))
}
