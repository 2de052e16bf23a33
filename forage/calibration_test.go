package forage_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/forage"
	"example.org/soum/units"
)

const (
	cmPlate = units.PlateCentimetre
	cmRuler = units.HeightCentimetre
	perHa   = units.KilogramPerHectare
)

// Five places at 4, 6, 8, 10 and 12 cm hold 1,400, 1,900, 2,600, 2,900 and 3,700
// kg/ha. Means 8 and 2,500; products of the distances (-4)(-1100) + (-2)(-600) + 0 +
// 2 × 400 + 4 × 1200 = 11,200, squares 40: slope 280, intercept 260. Left over: 20,
// -40, 100, -160, 80; squares 400 + 1600 + 10,000 + 25,600 + 6400 = 44,000; ÷ 3 is
// 14,666.7, root 121.106. Squares of the masses 1,210,000 + 360,000 + 10,000 + 160,000
// + 1,440,000 = 3,180,000: r² = 1 - 44,000 ÷ 3,180,000 = 0.986164.
//
// At 10 cm from one place: 3,060; error 121.106 √(1 + 1/5 + 4/40) = 121.106 × 1.140175
// = 138.082; t of 95 % and 3 is 3.182446: 439.438 either way. From twenty places:
// 121.106 √(0.05 + 0.2 + 0.1) = 71.647.
func TestCalibrationByHand(t *testing.T) {
	heights := []units.PlateHeight{4 * cmPlate, 6 * cmPlate, 8 * cmPlate, 10 * cmPlate, 12 * cmPlate}
	masses := []units.Yield{1400 * perHa, 1900 * perHa, 2600 * perHa, 2900 * perHa, 3700 * perHa}
	line, err := forage.CalibratePlate(heights, masses, false)
	require.NoError(t, err)
	assert.InDelta(t, 280, line.Slope.KilogramsPerHectareCentimetre(), 1e-9)
	assert.InDelta(t, 260, line.Intercept.KilogramsPerHectare(), 1e-8)
	assert.InDelta(t, 121.106, line.Deviation.KilogramsPerHectare(), 1e-3)
	assert.InDelta(t, 0.986164, line.Fit, 1e-6)
	assert.Equal(t, 5, line.Places)
	assert.False(t, line.ThroughZero)
	assert.InDelta(t, 8, line.Centre.Centimetres(), 1e-9)
	assert.InDelta(t, math.Sqrt(40), line.Breadth.Centimetres(), 1e-9)
	assert.Equal(t, [2]units.PlateHeight{4 * cmPlate, 12 * cmPlate}, [2]units.PlateHeight{line.Lowest, line.Highest})

	got, err := forage.PlateMass(line, 10*cmPlate, 1, 95*units.Percent)
	require.NoError(t, err)
	assert.InDelta(t, 3060, got.Mass.KilogramsPerHectare(), 1e-8)
	assert.InDelta(t, 138.082, got.Error.KilogramsPerHectare(), 1e-3)
	assert.InDelta(t, 3060-439.438, got.Low.KilogramsPerHectare(), 2e-3)
	assert.InDelta(t, 3060+439.438, got.High.KilogramsPerHectare(), 2e-3)
	got, err = forage.PlateMass(line, 10*cmPlate, 20, 95*units.Percent)
	require.NoError(t, err)
	assert.InDelta(t, 71.647, got.Error.KilogramsPerHectare(), 1e-3)
}

// The same places through zero: products 5600 + 11,400 + 20,800 + 29,000 + 44,400 =
// 111,200, squares 16 + 36 + 64 + 100 + 144 = 360: slope 308.8889. Left over 164.444,
// 46.667, 128.889, -188.889, -6.667; squares 80,053.1... over 4.
func TestCalibrationThroughZero(t *testing.T) {
	heights := []units.PlateHeight{4 * cmPlate, 6 * cmPlate, 8 * cmPlate, 10 * cmPlate, 12 * cmPlate}
	masses := []units.Yield{1400 * perHa, 1900 * perHa, 2600 * perHa, 2900 * perHa, 3700 * perHa}
	line, err := forage.CalibratePlate(heights, masses, true)
	require.NoError(t, err)
	assert.InDelta(t, 111200.0/360, line.Slope.KilogramsPerHectareCentimetre(), 1e-9)
	assert.Zero(t, line.Intercept)
	left := 0.0
	for i, mass := range []float64{1400, 1900, 2600, 2900, 3700} {
		d := mass - 111200.0/360*float64(4+2*i)
		left += d * d
	}
	deviation := math.Sqrt(left / 4)
	assert.InDelta(t, deviation, line.Deviation.KilogramsPerHectare(), 1e-8)
	assert.InDelta(t, 1-left/3180000, line.Fit, 1e-12)
	assert.True(t, line.ThroughZero)
	assert.Zero(t, line.Centre)
	assert.InDelta(t, math.Sqrt(360), line.Breadth.Centimetres(), 1e-9)
	// t of 95 % and 4 is 2.776445; the error at 9 cm of 4 readings.
	got, err := forage.PlateMass(line, 9*cmPlate, 4, 95*units.Percent)
	require.NoError(t, err)
	failure := deviation * math.Sqrt(0.25+81.0/360)
	assert.InDelta(t, failure, got.Error.KilogramsPerHectare(), 1e-8)
	assert.InDelta(t, 2.776445*failure, (got.High - got.Mass).KilogramsPerHectare(), 1e-3)

	one := []units.PlateHeight{8 * cmPlate, 8 * cmPlate, 8 * cmPlate}
	flat, err := forage.CalibratePlate(one, masses[:3], true) // a line through zero needs one height alone
	require.NoError(t, err)
	assert.InDelta(t, (1400.0+1900+2600)/3/8, flat.Slope.KilogramsPerHectareCentimetre(), 1e-9)
}

// Three places at 10, 20 and 30 cm hold 1,000, 2,300 and 3,000 kg/ha: slope 100,
// intercept 100, left over -100, 200, -100, of which 60,000 ÷ 1; r² 1 - 60,000 ÷
// 2,060,000. At 20 cm from four places: 2,100, error √60,000 × √(1/4 + 1/3); of one
// degree of freedom t of 50 % is 1.
func TestRulerCalibrationByHand(t *testing.T) {
	line, err := forage.CalibrateRuler([]units.Height{10 * cmRuler, 20 * cmRuler, 30 * cmRuler}, []units.Yield{1000 * perHa, 2300 * perHa, 3000 * perHa}, false)
	require.NoError(t, err)
	assert.InDelta(t, 100, line.Slope.KilogramsPerHectareCentimetre(), 1e-9)
	assert.InDelta(t, 100, line.Intercept.KilogramsPerHectare(), 1e-8)
	assert.InDelta(t, math.Sqrt(60000), line.Deviation.KilogramsPerHectare(), 1e-8)
	assert.InDelta(t, 1-60000.0/2060000, line.Fit, 1e-12)
	assert.Equal(t, 3, line.Places)
	assert.False(t, line.ThroughZero)
	assert.InDelta(t, 20, line.Centre.Centimetres(), 1e-9)
	assert.InDelta(t, math.Sqrt(200), line.Breadth.Centimetres(), 1e-9)
	assert.Equal(t, [2]units.Height{10 * cmRuler, 30 * cmRuler}, [2]units.Height{line.Lowest, line.Highest})
	got, err := forage.RulerMass(line, 20*cmRuler, 4, 50*units.Percent)
	require.NoError(t, err)
	failure := math.Sqrt(60000 * (1.0/4 + 1.0/3))
	assert.InDelta(t, 2100, got.Mass.KilogramsPerHectare(), 1e-8)
	assert.InDelta(t, failure, got.Error.KilogramsPerHectare(), 1e-8)
	assert.InDelta(t, 2100-failure, got.Low.KilogramsPerHectare(), 1e-6)
	assert.InDelta(t, 2100+failure, got.High.KilogramsPerHectare(), 1e-6)
}

func TestMassOutsideTheCalibration(t *testing.T) {
	line, err := forage.CalibratePlate([]units.PlateHeight{0.04, 0.06, 0.1}, []units.Yield{0.1, 0.2, 0.3}, false)
	require.NoError(t, err)
	for _, height := range []units.PlateHeight{0.039, 0.101} {
		got, err := forage.PlateMass(line, height, 10, 0.9)
		var ranged *units.RangeError
		require.ErrorAs(t, err, &ranged)
		assert.ErrorContains(t, err, "4 cm to 10 cm")
		assert.Positive(t, got.Mass)
	}
	for _, height := range []units.PlateHeight{0.04, 0.1} {
		_, err := forage.PlateMass(line, height, 10, 0.9)
		assert.NoError(t, err)
	}
	for _, c := range []struct {
		height   units.PlateHeight
		readings float64
		sure     units.Fraction
		change   func(*forage.PlateCalibration)
		says     string
	}{
		{-1, 10, 0.9, nil, "height"},
		{0.05, 0, 0.9, nil, "readings"},
		{0.05, 10, 1, nil, "confidence"},
		{0.05, 10, 0, nil, "confidence"},
		{0.05, 10, 0.9, func(c *forage.PlateCalibration) { c.Places = 2 }, "places"},
		{0.05, 10, 0.9, func(c *forage.PlateCalibration) { c.Deviation = -1 }, "deviation"},
		{0.05, 10, 0.9, func(c *forage.PlateCalibration) { c.Breadth = 0 }, "breadth"},
		{0.05, 10, 0.9, func(c *forage.PlateCalibration) { c.Slope = units.PlateDensity(math.NaN()) }, "result"},
	} {
		bad := line
		if c.change != nil {
			c.change(&bad)
		}
		got, err := forage.PlateMass(bad, c.height, c.readings, c.sure)
		assert.True(t, units.Impossible(err), c.says)
		assert.ErrorContains(t, err, c.says)
		assert.True(t, math.IsNaN(float64(got.Mass)))
	}
}

func TestCalibrationRefuses(t *testing.T) {
	for _, c := range []struct {
		heights []units.PlateHeight
		masses  []units.Yield
		says    string
	}{
		{nil, nil, "number of places"},
		{[]units.PlateHeight{1, 2}, []units.Yield{1, 2}, "number of places"},
		{[]units.PlateHeight{1, 2, 3}, []units.Yield{1, 2}, "without a mass"},
		{[]units.PlateHeight{1, 2, 3}, []units.Yield{1, 2, 3, 4}, "without a mass"},
		{[]units.PlateHeight{1, 1, 1}, []units.Yield{1, 2, 3}, "breadth"},
		{[]units.PlateHeight{1, -2, 3}, []units.Yield{1, 2, 3}, "height"},
		{[]units.PlateHeight{1, 2, 3}, []units.Yield{1, -2, 3}, "mass"},
		{[]units.PlateHeight{1, 2, 3}, []units.Yield{1, units.Yield(math.NaN()), 3}, "mass"},
		{[]units.PlateHeight{1, 2, 3}, []units.Yield{math.MaxFloat64, 0, math.MaxFloat64}, "result"},
	} {
		got, err := forage.CalibratePlate(c.heights, c.masses, false)
		assert.True(t, units.Impossible(err), c.says)
		assert.ErrorContains(t, err, c.says)
		assert.True(t, math.IsNaN(float64(got.Slope)))
		var rulers []units.Height
		for _, h := range c.heights {
			rulers = append(rulers, units.Height(h))
		}
		_, err = forage.CalibrateRuler(rulers, c.masses, false)
		assert.ErrorContains(t, err, "CalibrateRuler")
	}
	_, err := forage.CalibratePlate([]units.PlateHeight{1, 2, -0.05}, []units.Yield{1, 2, 3}, false)
	assert.ErrorContains(t, err, "-5 cm")
	_, err = forage.CalibratePlate([]units.PlateHeight{1, 2, 3}, []units.Yield{1, 2, -0.05}, false)
	assert.ErrorContains(t, err, "-500 kg/ha")
	_, err = forage.CalibrateRuler([]units.Height{1, 2, -0.05}, []units.Yield{1, 2, 3}, false)
	assert.ErrorContains(t, err, "-5 cm")
	flat, err := forage.CalibratePlate([]units.PlateHeight{1, 2, 3}, []units.Yield{1, 1, 1}, false)
	require.NoError(t, err)
	assert.Zero(t, flat.Fit)
}

// Points on a line give the line back, without error, whatever its slope.
func TestCalibrationFindsTheLine(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		slope, base := rapid.Float64Range(0.1, 50).Draw(t, "slope"), rapid.Float64Range(0, 0.3).Draw(t, "base")
		heights := rapid.SliceOfNDistinct(rapid.Float64Range(0.01, 0.5), 3, 30, func(h float64) int { return int(h * 100) }).Draw(t, "heights")
		var x []units.PlateHeight
		var y []units.Yield
		for _, h := range heights {
			x, y = append(x, units.PlateHeight(h)), append(y, units.Yield(base+slope*h))
		}
		line, err := forage.CalibratePlate(x, y, false)
		require.NoError(t, err)
		assert.InEpsilon(t, slope, float64(line.Slope), 1e-6)
		assert.InDelta(t, 1, line.Fit, 1e-9)
		got, err := forage.PlateMass(line, line.Centre, 1, 0.95)
		require.NoError(t, err)
		assert.InEpsilon(t, base+slope*float64(line.Centre), float64(got.Mass), 1e-9)
	})
}
