package forage

import (
	"math"

	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/distuv"

	"example.org/soum/units"
)

// HeightReadings is what a walk with a ruler tells: the mean of its readings and
// how far the true mean may be from it.
type HeightReadings struct {
	Readings int `json:"readings"` // readings counted
	Gaps     int `json:"gaps"`     // readings left out for want of a number
	// Mean of the readings.
	Mean units.Height `json:"mean_m"`
	// Deviation is the standard deviation of single readings.
	Deviation units.Height `json:"deviation_m"`
	// Error is the standard error of the mean.
	Error units.Height `json:"error_m"`
	// Low and High are the ends of the confidence interval of the mean. Low may be
	// below nothing where readings are few and far apart: take more.
	Low  units.Height `json:"low_m"`
	High units.Height `json:"high_m"`
	// Variation is the standard deviation as a share of the mean, for
	// ReadingsNeeded; 0 where all readings are alike.
	Variation units.Fraction `json:"variation"`
}

// PlateReadings is HeightReadings for heights under a plate.
type PlateReadings struct {
	Readings int `json:"readings"` // readings counted
	Gaps     int `json:"gaps"`     // readings left out for want of a number
	// Mean of the readings.
	Mean units.PlateHeight `json:"mean_m"`
	// Deviation is the standard deviation of single readings.
	Deviation units.PlateHeight `json:"deviation_m"`
	// Error is the standard error of the mean.
	Error units.PlateHeight `json:"error_m"`
	// Low and High are the ends of the confidence interval of the mean.
	Low  units.PlateHeight `json:"low_m"`
	High units.PlateHeight `json:"high_m"`
	// Variation is the standard deviation as a share of the mean, for
	// ReadingsNeeded; 0 where all readings are alike.
	Variation units.Fraction `json:"variation"`
}

// YieldReadings is HeightReadings for clipped samples.
type YieldReadings struct {
	Readings int `json:"readings"` // samples counted
	Gaps     int `json:"gaps"`     // samples left out for want of a number
	// Mean of the samples.
	Mean units.Yield `json:"mean_kg_m2"`
	// Deviation is the standard deviation of single samples.
	Deviation units.Yield `json:"deviation_kg_m2"`
	// Error is the standard error of the mean.
	Error units.Yield `json:"error_kg_m2"`
	// Low and High are the ends of the confidence interval of the mean.
	Low  units.Yield `json:"low_kg_m2"`
	High units.Yield `json:"high_kg_m2"`
	// Variation is the standard deviation as a share of the mean, for
	// ReadingsNeeded; 0 where all readings are alike.
	Variation units.Fraction `json:"variation"`
}

// MeanHeight gives the mean of ruler heights with its confidence interval by
// Student's t. A reading that is not a number is a gap: it is left out and counted.
//
// Walk a W or a zigzag, read every so many steps wherever the foot falls, bare and
// dense places alike; the ruler stands on the soil, the hand rests on the leaves
// without pressing them (PSU-YIELD, UGA-STICK: 15 to 20 places; RAYBURN-1998: 15
// to 30 keep the mean within about a tenth). The interval knows the scatter of the
// readings alone, neither a path that keeps to the good grass nor a wrong density.
//
// Method: mean, sample standard deviation, deviation ÷ √n as the error, and that ×
// Student's t of n - 1 on both sides
//
// Errors: a *units.DomainError for fewer than two readings, for one below 0 or
// infinite, for a confidence outside 0 to 100 %
//
// Check: TestMeanHeightByHand, TestReadingsRefuse, TestStudentAgreesWithQuadrature
//
// Source: definition: the mean of a sample and Student's interval
func MeanHeight(heights []units.Height, confidence units.Fraction) (HeightReadings, error) {
	s, err := sampled(&heightsGuard, heights, confidence)
	return HeightReadings{
		s.readings, s.gaps, units.Height(s.mean), units.Height(s.deviation), units.Height(s.failure),
		units.Height(s.mean - s.margin), units.Height(s.mean + s.margin), units.Fraction(s.variation),
	}, err
}

// MeanPlateHeight gives the mean of heights under a plate with its confidence
// interval, as MeanHeight does of ruler heights.
//
// Errors: as MeanHeight
//
// Check: TestMeanPlateHeightByHand, TestReadingsRefuse
//
// Source: definition: the mean of a sample and Student's interval
func MeanPlateHeight(heights []units.PlateHeight, confidence units.Fraction) (PlateReadings, error) {
	s, err := sampled(&platesGuard, heights, confidence)
	return PlateReadings{
		s.readings, s.gaps, units.PlateHeight(s.mean), units.PlateHeight(s.deviation), units.PlateHeight(s.failure),
		units.PlateHeight(s.mean - s.margin), units.PlateHeight(s.mean + s.margin), units.Fraction(s.variation),
	}, err
}

// MeanYield gives the mean of clipped samples with its confidence interval, as
// MeanHeight does of ruler heights.
//
// Errors: as MeanHeight
//
// Check: TestMeanYieldByHand, TestReadingsRefuse
//
// Source: definition: the mean of a sample and Student's interval
func MeanYield(yields []units.Yield, confidence units.Fraction) (YieldReadings, error) {
	s, err := sampled(&yieldsGuard, yields, confidence)
	return YieldReadings{
		s.readings, s.gaps, units.Yield(s.mean), units.Yield(s.deviation), units.Yield(s.failure),
		units.Yield(s.mean - s.margin), units.Yield(s.mean + s.margin), units.Fraction(s.variation),
	}, err
}

// ReadingsNeeded returns how many readings bring the mean within a wanted error,
// from the scatter of the readings so far.
//
// Method: the smallest whole n of at least 2 with t(n - 1) × variation ÷ √n no
// greater than the wanted error, t being Student's for the confidence; above a
// million readings the normal distribution in t's place
//
// Where:
//   - variation in %: standard deviation as a share of the mean, of a first dozen readings; > 0
//   - wanted in %: greatest distance of the mean from the true one, as a share of it; > 0
//   - confidence in %: how often that is to hold; > 0 and < 100
//
// Note: the scatter is itself an estimate, poor from a few readings.
//
// Check: TestReadingsNeededAreTheFewest
//
// Source: definition: Student's interval turned round
func ReadingsNeeded(variation, wanted, confidence units.Fraction) (float64, error) {
	readings := math.NaN()
	if c := float64(confidence); c > 0 && c < 1 && variation > 0 && wanted > 0 {
		readings = readingsNeeded(float64(variation)/float64(wanted), c)
	}
	return units.Answer(&formulaReadingsNeeded, readings, float64(variation), float64(wanted), float64(confidence))
}

// manyReadings is where t is the normal distribution to six digits.
const manyReadings = 1e6

func readingsNeeded(ratio, confidence float64) float64 {
	enough := func(n float64) bool { return student(confidence, n-1)*ratio <= math.Sqrt(n) }
	z := distuv.UnitNormal.Quantile(0.5 + confidence/2)
	if n := math.Ceil(z * z * ratio * ratio); !(n < manyReadings) {
		return n
	}
	low, high := 1.0, 2.0
	for !enough(high) {
		low, high = high, 2*high
	}
	for high-low > 1 {
		if middle := math.Floor((low + high) / 2); enough(middle) {
			high = middle
		} else {
			low = middle
		}
	}
	return high
}

// student gives the t that a two-sided confidence leaves inside.
func student(confidence, freedom float64) float64 {
	if !(0.5+confidence/2 < 1) { // a confidence that rounds to certainty
		return math.Inf(1)
	}
	return distuv.StudentsT{Mu: 0, Sigma: 1, Nu: freedom}.Quantile(0.5 + confidence/2)
}

// sampling is what a series of readings tells, in base units.
type sampling struct {
	readings, gaps                   int
	mean, deviation, failure, margin float64
	variation                        float64
}

// sampleGuard holds the limits of the readings, which the generator of limits does
// not see: one reading, how many there are, the confidence.
func sampleGuard(name, unit string, factor float64) units.Formula {
	return units.Formula{Name: name, Source: "definition", Arguments: []units.Argument{
		{Name: "reading", Unit: unit, Factor: factor, Domain: units.Limits{Low: 0, High: math.Inf(1), LowOf: -1, HighOf: -1}},
		{Name: "number of readings", Factor: 1, Domain: units.Limits{Low: 2, High: math.Inf(1), LowOf: -1, HighOf: -1}},
		{Name: "confidence", Unit: "%", Factor: float64(units.Percent), Domain: units.Limits{Low: 0, High: 1, LowOpen: true, HighOpen: true, LowOf: -1, HighOf: -1}},
	}}
}

var (
	heightsGuard = sampleGuard("forage.MeanHeight", "cm", float64(units.HeightCentimetre))
	platesGuard  = sampleGuard("forage.MeanPlateHeight", "cm", float64(units.PlateCentimetre))
	yieldsGuard  = sampleGuard("forage.MeanYield", "kg/ha", float64(units.KilogramPerHectare))
)

func sampled[Q ~float64](guard *units.Formula, readings []Q, confidence units.Fraction) (sampling, error) {
	values := make([]float64, 0, len(readings))
	for _, r := range readings {
		if v := float64(r); !math.IsNaN(v) {
			if _, err := units.Answer(guard, v, v, 2, 0.5); err != nil {
				return unknown, err
			}
			values = append(values, v)
		}
	}
	n := float64(len(values))
	if _, err := units.Answer(guard, n, 0, n, float64(confidence)); err != nil {
		return unknown, err
	}
	s := sampling{readings: len(values), gaps: len(readings) - len(values)}
	s.mean, s.deviation = stat.MeanStdDev(values, nil)
	s.failure = stat.StdErr(s.deviation, n)
	s.margin = s.failure
	if s.failure > 0 {
		s.margin *= student(float64(confidence), n-1)
	}
	if s.deviation > 0 {
		s.variation = s.deviation / s.mean
	}
	if _, err := units.Answer(guard, s.mean+s.margin, 0, n, float64(confidence)); err != nil {
		return unknown, err
	}
	return s, nil
}

// unknown is a sampling of nothing.
var unknown = sampling{mean: math.NaN(), deviation: math.NaN(), failure: math.NaN(), margin: math.NaN(), variation: math.NaN()}
