package forage_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/integrate/quad"
	"pgregory.net/rapid"

	"example.org/soum/forage"
	"example.org/soum/units"
)

// Five readings of 8, 10, 12, 9 and 11 in: mean 10, squares of the distances 4 + 0
// + 4 + 1 + 1 = 10, over 4 is 2.5, its root 1.581139; over √5 0.707107; t of 95 % and
// 4 is 2.776445 (printed tables 2.776, from memory): 1.963243 either way.
func TestMeanHeightByHand(t *testing.T) {
	const in = units.HeightInch
	got, err := forage.MeanHeight([]units.Height{8 * in, 10 * in, 12 * in, units.Height(math.NaN()), 9 * in, 11 * in}, 95*units.Percent)
	require.NoError(t, err)
	assert.Equal(t, 5, got.Readings)
	assert.Equal(t, 1, got.Gaps)
	assert.InDelta(t, 10, got.Mean.Inches(), 1e-9)
	assert.InDelta(t, 1.581139, got.Deviation.Inches(), 1e-6)
	assert.InDelta(t, 0.707107, got.Error.Inches(), 1e-6)
	assert.InDelta(t, 10-1.963243, got.Low.Inches(), 1e-5)
	assert.InDelta(t, 10+1.963243, got.High.Inches(), 1e-5)
	assert.InDelta(t, 15.81139, got.Variation.Percent(), 1e-5)
}

// Two readings of 6 and 10 cm: mean 8, deviation √8, error 2; of one degree of
// freedom t is tan(π/2 × confidence): of 50 % it is 1.
func TestMeanPlateHeightByHand(t *testing.T) {
	const cm = units.PlateCentimetre
	got, err := forage.MeanPlateHeight([]units.PlateHeight{6 * cm, 10 * cm}, 50*units.Percent)
	require.NoError(t, err)
	assert.Equal(t, [2]int{2, 0}, [2]int{got.Readings, got.Gaps})
	assert.InDelta(t, 8, got.Mean.Centimetres(), 1e-9)
	assert.InDelta(t, math.Sqrt(8), got.Deviation.Centimetres(), 1e-9)
	assert.InDelta(t, 2, got.Error.Centimetres(), 1e-9)
	assert.InDelta(t, 6, got.Low.Centimetres(), 1e-9)
	assert.InDelta(t, 10, got.High.Centimetres(), 1e-9)
	assert.InDelta(t, math.Sqrt(8)/8, float64(got.Variation), 1e-9)
}

// Three samples of 2,000, 2,600 and 2,000 kg/ha: mean 2,200, squares 40,000 +
// 160,000 + 40,000 over 2 are 120,000, the root 346.4102, over √3 200; of two degrees
// of freedom t is c √2 ÷ √(1 - c²): of 60 % it is 1.06066.
func TestMeanYieldByHand(t *testing.T) {
	const kg = units.KilogramPerHectare
	got, err := forage.MeanYield([]units.Yield{2000 * kg, 2600 * kg, 2000 * kg}, 60*units.Percent)
	require.NoError(t, err)
	assert.Equal(t, [2]int{3, 0}, [2]int{got.Readings, got.Gaps})
	assert.InDelta(t, 2200, got.Mean.KilogramsPerHectare(), 1e-6)
	assert.InDelta(t, 346.4102, got.Deviation.KilogramsPerHectare(), 1e-4)
	assert.InDelta(t, 200, got.Error.KilogramsPerHectare(), 1e-6)
	assert.InDelta(t, 2200-212.132, got.Low.KilogramsPerHectare(), 1e-3)
	assert.InDelta(t, 2200+212.132, got.High.KilogramsPerHectare(), 1e-3)
	assert.InDelta(t, 0.157459, float64(got.Variation), 1e-6)
}

// The interval of n readings holds as much of Student's density as it says;
// gonum's quadrature of the density knows nothing of its quantiles.
func TestStudentAgreesWithQuadrature(t *testing.T) {
	for _, n := range []int{3, 8, 20, 31} {
		for _, confidence := range []float64{0.5, 0.9, 0.95, 0.99} {
			readings := make([]units.Height, n)
			for i := range readings {
				readings[i] = units.Height(0.1 + 0.01*float64(i))
			}
			got, err := forage.MeanHeight(readings, units.Fraction(confidence))
			require.NoError(t, err)
			nu := float64(n - 1)
			top, _ := math.Lgamma((nu + 1) / 2)
			under, _ := math.Lgamma(nu / 2)
			density := func(x float64) float64 {
				return math.Exp(top-under) / math.Sqrt(nu*math.Pi) * math.Pow(1+x*x/nu, -(nu+1)/2)
			}
			inside := 2 * quad.Fixed(density, 0, float64((got.High-got.Mean)/got.Error), 200, quad.Legendre{}, 0)
			assert.InDelta(t, confidence, inside, 1e-9)
		}
	}
}

func TestReadingsAlikeHaveNoError(t *testing.T) {
	got, err := forage.MeanHeight([]units.Height{0.25, 0.25, 0.25}, 0.95)
	require.NoError(t, err)
	assert.Equal(t, forage.HeightReadings{Readings: 3, Mean: 0.25, Low: 0.25, High: 0.25}, got)
	got, err = forage.MeanHeight([]units.Height{0, 0}, 0.95)
	require.NoError(t, err)
	assert.Equal(t, forage.HeightReadings{Readings: 2}, got)
}

func TestReadingsRefuse(t *testing.T) {
	nan, inf := units.Height(math.NaN()), units.Height(math.Inf(1))
	for _, c := range []struct {
		readings   []units.Height
		confidence units.Fraction
		says       string
	}{
		{nil, 0.95, "number of readings"},
		{[]units.Height{1, nan}, 0.95, "number of readings"},
		{[]units.Height{1, -1}, 0.95, "reading"},
		{[]units.Height{1, inf}, 0.95, "reading"},
		{[]units.Height{math.MaxFloat64, math.MaxFloat64}, 0.95, "result"},
		{[]units.Height{1, 2}, 0, "confidence"},
		{[]units.Height{1, 2}, 1, "confidence"},
		{[]units.Height{1, 2}, units.Fraction(math.NaN()), "confidence"},
		{[]units.Height{1, 2}, units.Fraction(math.Nextafter(1, 0)), "result"},
	} {
		got, err := forage.MeanHeight(c.readings, c.confidence)
		assert.True(t, units.Impossible(err), "%v", c)
		assert.ErrorContains(t, err, c.says)
		assert.True(t, math.IsNaN(float64(got.Mean)))
		var plates []units.PlateHeight
		var yields []units.Yield
		for _, r := range c.readings {
			plates, yields = append(plates, units.PlateHeight(r)), append(yields, units.Yield(r))
		}
		_, err = forage.MeanPlateHeight(plates, c.confidence)
		assert.ErrorContains(t, err, "MeanPlateHeight")
		_, err = forage.MeanYield(yields, c.confidence)
		assert.ErrorContains(t, err, "MeanYield")
	}
	_, err := forage.MeanHeight([]units.Height{1, -0.05}, 0.95)
	assert.ErrorContains(t, err, "-5 cm")
	_, err = forage.MeanYield([]units.Yield{1, -0.05}, 0.95)
	assert.ErrorContains(t, err, "-500 kg/ha")
	_, err = forage.MeanPlateHeight([]units.PlateHeight{1, -0.05}, 0.95)
	assert.ErrorContains(t, err, "-5 cm")
	_, err = forage.MeanHeight([]units.Height{1, 2}, 2)
	assert.ErrorContains(t, err, "200 %")
}

// So many readings keep the interval within what is wanted, one fewer does not:
// a walk of made-up readings with just that scatter shows it.
func TestReadingsNeededAreTheFewest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		variation := rapid.Float64Range(0.05, 0.8).Draw(t, "variation")
		wanted := rapid.Float64Range(0.05, 0.5).Draw(t, "wanted")
		confidence := units.Fraction(rapid.Float64Range(0.5, 0.99).Draw(t, "confidence"))
		n := int(value(forage.ReadingsNeeded(units.Fraction(variation), units.Fraction(wanted), confidence))(t))
		assert.LessOrEqual(t, margin(t, n, variation, confidence), wanted*(1+1e-9))
		if n > 2 {
			assert.Greater(t, margin(t, n-1, variation, confidence), wanted*(1-1e-9))
		}
	})
}

// margin is how far the interval of n readings of a mean of 1 reaches.
func margin(t require.TestingT, n int, variation float64, confidence units.Fraction) float64 {
	readings := make([]units.Height, n)
	for i := range readings {
		readings[i] = 1 + units.Height(variation*(float64(i)-float64(n-1)/2)/math.Sqrt(float64(n*(n+1))/12))
	}
	lift := units.Height(10) // keeps every reading above the soil; the scatter stays
	for i := range readings {
		readings[i] += lift
	}
	got, err := forage.MeanHeight(readings, confidence)
	require.NoError(t, err)
	assert.InEpsilon(t, variation, float64(got.Deviation), 1e-9)
	return float64(got.High - got.Mean)
}

// With very many readings t is the normal distribution, 1.959964 for 95 %: the
// two ways join.
func TestReadingsNeededOfFineErrors(t *testing.T) {
	n := value(forage.ReadingsNeeded(1, 0.001, 0.95))(t)
	assert.InDelta(t, 1959.964*1959.964, n, 3)
	n = value(forage.ReadingsNeeded(1, 0.002, 0.95))(t)
	assert.InDelta(t, 979.982*979.982, n, 4)
	_, err := forage.ReadingsNeeded(units.Fraction(math.MaxFloat64), 1e-300, 0.95)
	assert.True(t, units.Impossible(err))
	_, err = forage.ReadingsNeeded(0.2, 0.1, units.Fraction(math.Nextafter(1, 0)))
	assert.True(t, err == nil || units.Impossible(err))
}
