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

// Each printed factor is the formula for one gram, within what print rounds; the
// quarter of a square metre is printed a little low.
func TestPrintedFactorsFollowFromTheFrame(t *testing.T) {
	seen := map[string]bool{}
	for _, f := range forage.Frames() {
		assert.False(t, seen[f.Name], f.Name)
		seen[f.Name] = true
		assert.Contains(t, []string{"A", "B"}, f.Mark)
		assert.NotEmpty(t, f.Source)
		factor := value(forage.ClippedYield(units.FreshGram, 100*units.Percent, f.Area))(t)
		if f.Factor > 0 {
			assert.InEpsilon(t, float64(factor), float64(f.Factor), 0.0035, f.Name)
		} else {
			assert.NotEmpty(t, f.Note, f.Name)
		}
	}
	forage.Frames()[0].Area = 77
	assert.NotEqual(t, units.Area(77), forage.Frames()[0].Area)
	got, err := forage.FrameArea("bucket")
	assert.True(t, math.IsNaN(float64(got)))
	assert.ErrorContains(t, err, "square-yard")
}

func TestClippedYieldScales(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		sample := units.FreshFeed(rapid.Float64Range(0.01, 5).Draw(t, "sample"))
		dry := units.Fraction(rapid.Float64Range(0.1, 1).Draw(t, "dry"))
		frame := units.Area(rapid.Float64Range(0.05, 2).Draw(t, "frame"))
		one := value(forage.ClippedYield(sample, dry, frame))(t)
		assert.InEpsilon(t, float64(one), float64(value(forage.ClippedYield(3*sample, dry, 3*frame))(t)), 1e-12)
		// the same dried first
		dried := value(forage.ClippedYield(sample*units.FreshFeed(dry), 1, frame))(t)
		assert.InEpsilon(t, float64(one), float64(dried), 1e-12)
	})
}

func TestPlateEquations(t *testing.T) {
	rows := forage.PlateEquations()
	for _, r := range rows {
		assert.Equal(t, r.Slope, value(forage.PlateSlope(r.Name))(t))
		assert.Equal(t, "A", r.Mark)
		assert.NotEmpty(t, r.Where)
	}
	assert.InDelta(t, 4, rows[0].Above.Centimetres(), 1e-9)            // Teagasc counts above 4 cm
	last := rows[len(rows)-1]                                          // Rayburn & Rayburn 1998:
	assert.InDelta(t, 753, last.Deviation.KilogramsPerHectare(), 1e-9) // residual deviation
	assert.InDelta(t, 0.52, last.Fit, 1e-12)                           // r²
	assert.InDelta(t, 1024, last.Slope.PoundsPerAcreInch(), 0.5)       // 452 kg/ha/cm in lb/ac/in
	assert.InDelta(t, 567, rows[0].Slope.PoundsPerAcreInch(), 0.5)     // 250 kg/ha/cm
	assert.Greater(t, last.Slope.PoundsPerAcreInch(), 2*400.0)         // twice the highest ruler density
	rows[0].Slope = 77
	assert.NotEqual(t, units.PlateDensity(77), forage.PlateEquations()[0].Slope)
	_, err := forage.PlateSlope("moon")
	require.ErrorContains(t, err, "irish-ryegrass")
}

// Higher up an inch holds less: print says so of each thickness.
func TestCurveMassBends(t *testing.T) {
	for _, thickness := range []forage.Thickness{forage.Thin, forage.Average, forage.Thick} {
		before := math.Inf(1)
		for inch := 4; inch < 12; inch += 2 {
			low := value(forage.CurveMass(units.Height(inch)*units.HeightInch, thickness))(t)
			high := value(forage.CurveMass(units.Height(inch+2)*units.HeightInch, thickness))(t)
			assert.Less(t, float64(high-low), before)
			before = float64(high - low)
		}
	}
	// 6 to 10 in: 201 lb an inch of an average stand, 337 of a thick one.
	for thickness, want := range map[forage.Thickness]float64{forage.Average: 201, forage.Thick: 337} {
		low := value(forage.CurveMass(6*units.HeightInch, thickness))(t)
		high := value(forage.CurveMass(10*units.HeightInch, thickness))(t)
		assert.InDelta(t, want, (high-low).PoundsPerAcre()/4, 0.5)
	}
}
