package rainfall

import (
	"math"
	"time"

	"gonum.org/v1/gonum/mathext"
	"gonum.org/v1/gonum/stat/distuv"

	"example.org/soum/units"
)

// Fit is a way of fitting a gamma distribution to rain.
type Fit int

// The fits.
const (
	FitThom       Fit = iota + 1 // by Thom's closed form of the likelihood
	FitLikelihood                // by the greatest likelihood itself
	FitMoments                   // by L-moments
)

// RainFit is a gamma distribution of rain, with the share of times without any.
type RainFit struct {
	Shape float64         `json:"shape"`   // alpha
	Scale units.RainDepth `json:"scale_m"` // beta
	Dry   units.Fraction  `json:"dry"`     // of the record without rain
}

// noFit is the fit of what cannot be fitted.
var noFit = RainFit{Shape: math.NaN(), Scale: units.RainDepth(math.NaN()), Dry: units.Fraction(math.NaN())}

// FitRain fits a gamma distribution to the rain of the same months of many years.
//
// Method: over the depths above 0, with A = ln(mean) - mean(ln x): by Thom
// alpha = (1 + √(1 + 4 A ÷ 3)) ÷ (4 A); by the likelihood the alpha at which
// ln(alpha) - digamma(alpha) = A; by L-moments Hosking's approximation from the
// unbiased ratio of the first two. Then beta = mean ÷ alpha. The share without
// rain is the plain count. A gap is left out.
//
// Note: the fits differ. For three months at Wichita the likelihood is within
// 0.0007 of Thom in the index, L-moments up to 0.20 away. Ten years say little of
// a drought of one in fifty, whatever the fit.
//
// Errors: a *document.Error with the place for fewer than two different depths above 0,
// or one below zero or above 1,000 m; a *units.ParseError that lists the fits
//
// Check: TestFitsOfWichita, TestFitRefuses, TestShapeOfRatio
//
// Source: EDWARDS-MCKEE eq. 3.6 to 3.8, after Thom; HOSKING-LMOM for L-moments
func FitRain(depths []units.RainDepth, fit Fit) (RainFit, error) {
	sorted, err := ranked(depths, 1)
	switch {
	case err != nil:
		return noFit, err
	case fit < FitThom || fit > FitMoments:
		return noFit, noWord("rainfall.FitRain", "fit", 2, "rainfall.Fit", fit, namesFit[1:])
	}
	dry := 0
	for dry < len(sorted) && sorted[dry] == 0 {
		dry++
	}
	wet := sorted[dry:]
	if len(wet) < 2 || wet[0] == wet[len(wet)-1] {
		return noFit, wrong("depths", "", "has no two different depths above 0 mm", "two or more")
	}
	shape, mean := shapeOf(wet, fit)
	scale := mean / units.RainDepth(shape)
	if !(shape > 0 && scale > 0) || math.IsInf(shape, 0) || math.IsInf(float64(scale), 0) {
		return noFit, wrong("depths", "", "has depths above 0 mm that are too much alike, or too far apart", "depths that a distribution can be fitted to")
	}
	return RainFit{shape, scale, units.Fraction(dry) / units.Fraction(len(sorted))}, nil
}

// shapeOf gives alpha and the mean of depths in their order.
func shapeOf(wet []units.RainDepth, fit Fit) (shape float64, mean units.RainDepth) {
	n := float64(len(wet))
	logs, rising := 0.0, 0.0
	for i, d := range wet {
		mean += d / units.RainDepth(n)
		rising += float64(i) / (n - 1) * float64(d) / n
	}
	for _, d := range wet { // of the mean, so that nothing is lost between them
		logs += math.Log(float64(d)/float64(mean)) / n
	}
	if fit == FitMoments {
		return shapeOfRatio((2*rising - float64(mean)) / float64(mean)), mean
	}
	spread := -logs
	shape = (1 + math.Sqrt(1+4*spread/3)) / (4 * spread)
	if fit == FitLikelihood && spread > 0 {
		shape = likeliest(shape, spread)
	}
	return shape, mean
}

// likeliest solves ln(a) - digamma(a) = spread from a first guess.
func likeliest(shape, spread float64) float64 {
	const steps = 50 // a handful is enough
	for range steps {
		miss := math.Log(shape) - mathext.Digamma(shape) - spread
		better := 1 / (1/shape + miss/(shape*shape*(1/shape-mathext.Zeta(2, shape))))
		if !(better > 0) || math.IsInf(better, 0) || better == shape {
			break
		}
		shape = better
	}
	return shape
}

// shapeOfRatio gives alpha from the second L-moment as a share of the first,
// within 0.005 %.
func shapeOfRatio(ratio float64) float64 {
	if ratio < 0.5 {
		z := math.Pi * ratio * ratio
		return (1 - 0.3080*z) / (z * (1 + z*(-0.05812+z*0.01765)))
	}
	z := 1 - ratio
	return z * (0.7213 - z*0.5947) / (1 + z*(-2.1817+z*1.2113))
}

// leastChance is the smallest step from one that a number can tell.
const leastChance = 1.0 / (1 << 53)

// indexOf gives the standard normal of a chance, and whether the chance is so
// near to 0 or 1 that the bound stands for it.
func indexOf(chance float64) (index float64, bounded bool) {
	within := max(leastChance, min(1-leastChance, chance))
	return distuv.UnitNormal.Quantile(within), within != chance
}

// chanceOf gives the chance of no more rain than a depth.
func chanceOf(rain units.RainDepth, fit *RainFit) float64 {
	if rain == 0 {
		return float64(fit.Dry)
	}
	share := 1.0
	if x := float64(rain) / float64(fit.Scale); !math.IsInf(x, 1) {
		share = mathext.GammaIncReg(fit.Shape, x)
	}
	return float64(fit.Dry) + (1-float64(fit.Dry))*share
}

// StandardIndex returns the standardized precipitation index, SPI, of a depth of
// rain by the gamma distribution fitted to its record.
//
// Method: H = dry + (1 - dry) × G(rain ÷ scale; shape), G the incomplete gamma
// function; the index is the standard normal value that H does not exceed. With no
// rain H = dry.
//
// Where:
//   - rain in mm: fallen in the months; >= 0
//   - shape: alpha of the gamma distribution; > 0
//   - scale in mm: beta of it; > 0
//   - dry in %: share of the record without rain; >= 0 and < 100
//
// Errors: a *units.RangeError beside the value where H is nearer to 0 or to 1 than
// a number can tell, as with no rain where the record knows none such: the index
// is then at its bound, -8.21 or 8.21, and never infinite
//
// Note: 0 is what half of the years exceed. RainClass has the words.
//
// Source: EDWARDS-MCKEE eq. 3.6 to 3.8; WMO-1090
func StandardIndex(rain units.RainDepth, shape float64, scale units.RainDepth, dry units.Fraction) (float64, error) {
	arguments := [...]float64{float64(rain), shape, float64(scale), float64(dry)}
	if _, err := units.Answer(&formulaStandardIndex, 0.0, arguments[:]...); err != nil {
		return math.NaN(), err
	}
	fit := RainFit{shape, scale, dry}
	index, bounded := indexOf(chanceOf(rain, &fit))
	if !bounded {
		return units.Answer(&formulaStandardIndex, index, arguments[:]...)
	}
	covered := units.Between(float64(rain), math.Inf(1), "the fit")
	if covered.LowOpen = true; index > 0 {
		covered = units.Between(0, float64(rain), "the fit")
		covered.HighOpen = true
	}
	return units.AnswerWithin(&formulaStandardIndex, 0, covered, index, arguments[:]...)
}

// ChanceOfIndex returns the chance of an index no higher than this one.
//
// Method: the standard normal distribution
//
// Where:
//   - index: standardized precipitation index; any
//
// Source: MESONET-SPI the chances beyond 1, 1.5 and 2; OMICS-SPI its table
func ChanceOfIndex(index float64) (units.Fraction, error) {
	return units.Answer(&formulaChanceOfIndex, units.Fraction(distuv.UnitNormal.CDF(index)), index)
}

// MonthlyIndex is the standardized precipitation index of the months that end
// with one.
type MonthlyIndex struct {
	Year  int             `json:"year"`   // of the last month
	Month int             `json:"month"`  // the last month
	Rain  units.RainDepth `json:"rain_m"` // of all the months
	Index float64         `json:"index"`  // the index
	// Bounded tells that the chance is nearer to 0 or 1 than a number can tell,
	// and that the index is at its bound.
	Bounded bool `json:"bounded"`
}

// RainIndex gives the standardized precipitation index, SPI, of so many months in
// a row for every month of the record with which such a run ends.
//
// Method: SumMonths; for each calendar month FitRain over the sums that end with
// it; StandardIndex of each. A calendar month that cannot be fitted, as one that
// is always dry, has no index: a gap.
//
// Note: a drought runs while the index stays below 0 and reaches -1, and is over
// when it is above 0 [NDMC-MONITORING]. One month tells of grass now, three of the
// season, twelve of ponds and wells.
//
// Errors: those of SumMonths; a *units.ParseError that lists the fits
//
// Check: TestIndexOfWichita, TestIndexOfDryMonths, TestIndexIsFinite,
// TestRainIndexRefuses
//
// Source: EDWARDS-MCKEE; HOSKING-LMOM; NDMC-MONITORING
func RainIndex(record []MonthlyRain, months int, fit Fit) ([]MonthlyIndex, error) {
	const function = "rainfall.RainIndex"
	if fit < FitThom || fit > FitMoments {
		return nil, noWord(function, "fit", 3, "rainfall.Fit", fit, namesFit[1:])
	}
	sums, err := sumMonths(function, record, months)
	if err != nil {
		return nil, err
	}
	var byMonth [12][]units.RainDepth
	for i := range sums {
		m := sums[i].Month - time.January
		byMonth[m] = append(byMonth[m], sums[i].Rain)
	}
	var fits [12]RainFit
	for m := range byMonth {
		fits[m], _ = FitRain(byMonth[m], fit) // no fit: its shape is not a number
	}
	indices := []MonthlyIndex{}
	for i := range sums {
		f := &fits[sums[i].Month-time.January]
		if math.IsNaN(f.Shape) {
			continue
		}
		index, bounded := indexOf(chanceOf(sums[i].Rain, f))
		indices = append(indices, MonthlyIndex{sums[i].Year, int(sums[i].Month), sums[i].Rain, index, bounded})
	}
	return indices, nil
}
