package grazing_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/floats/scalar"
	"gonum.org/v1/gonum/mat"
	"pgregory.net/rapid"

	"example.org/soum/grazing"
	"example.org/soum/units"
)

// TestPatchStands: of growth 1, ceiling 10 and most 2 the even stands are the roots of
// x³ - 10x² + 21x - 10 = (x - 2)(x² - 8x + 5): 2, and 4 ± √11. A stand of 0.05 grows up
// to the lowest and one of 7.5 comes down to the highest, step by step; where the two
// differ, a hundredth under the edge goes down and a hundredth over it goes up.
func TestPatchStands(t *testing.T) {
	got, err := grazing.PatchGainStands(1, 10, 2)
	require.NoError(t, err)
	assert.InDelta(t, 4-math.Sqrt(11), got.Low, 1e-12)
	assert.InDelta(t, 2, got.Edge, 1e-12)
	assert.InDelta(t, 4+math.Sqrt(11), got.High, 1e-12)

	walk := func(stand, most float64) float64 {
		for range 20000 {
			var err error
			stand, err = grazing.PatchNext(stand, 0.75, 0.1, most, 0.75)
			require.NoError(t, err)
		}
		return stand
	}
	edges := 0
	for _, most := range []float64{0, 0.5, 1, 1.25, 1.5, 1.75, 1.8, 1.9, 2} {
		at, err := grazing.PatchNextStands(0.75, 0.1, most, 0.75)
		require.NoError(t, err)
		assert.InDelta(t, walk(0.05, most), at.Low, 1e-9, "%v", most)
		assert.InDelta(t, walk(7.5, most), at.High, 1e-9, "%v", most)
		if at.Edge > 0 {
			edges++
			assert.InDelta(t, at.Low, walk(at.Edge-0.01, most), 1e-9)
			assert.InDelta(t, at.High, walk(at.Edge+0.01, most), 1e-9)
		}
	}
	assert.Equal(t, 3, edges, "of 1.5, 1.75 and 1.8")

	none, err := grazing.PatchGainStands(0, 10, 2)
	require.NoError(t, err)
	assert.Zero(t, none, "what does not grow stays at nothing")
	for _, bad := range [][3]float64{{-1, 10, 2}, {1, 0, 2}, {1, 10, -2}, {math.NaN(), 10, 2}} {
		at, err := grazing.PatchGainStands(bad[0], bad[1], bad[2])
		assert.True(t, units.Impossible(err), "%v", bad)
		noStands(t, at)
		at, err = grazing.PatchNextStands(bad[0], bad[1], bad[2], 1)
		assert.True(t, units.Impossible(err), "%v", bad)
		noStands(t, at)
	}
	_, err = grazing.PatchNextStands(1, 0.1, 1, 0)
	assert.ErrorContains(t, err, "grazing.PatchNextStands: half")
	at, err := grazing.PatchNextStands(1, 5e-324, 1, 1)
	assert.EqualError(t, err, "grazing.PatchNextStands: the result overflows (+Inf)")
	noStands(t, at)
}

// noStands: beside an error every stand is NaN, since 0 would be an answer.
func noStands(t *testing.T, at grazing.PatchStands) {
	t.Helper()
	assert.True(t, math.IsNaN(at.Low) && math.IsNaN(at.Edge) && math.IsNaN(at.High), "%v", at)
}

// TestPatchGainStandsAreRoots compares with the roots of the cubic
// growth × (ceiling - x)(1 + x²) - most × ceiling × x, as the eigenvalues of its
// companion matrix by another library give them.
func TestPatchGainStandsAreRoots(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		growth, ceiling, most := rapid.Float64Range(0.1, 3).Draw(r, "growth"), rapid.Float64Range(1, 30).Draw(r, "ceiling"), rapid.Float64Range(0, 5).Draw(r, "most")
		at, err := grazing.PatchGainStands(growth, ceiling, most)
		if err != nil {
			r.Fatal(err)
		}
		// x³ - c x² + (1 + most c ÷ growth) x - c = 0
		var eigen mat.Eigen
		if !eigen.Factorize(mat.NewDense(3, 3, []float64{0, 0, ceiling, 1, 0, -(1 + most*ceiling/growth), 0, 1, ceiling}), mat.EigenNone) {
			r.Fatal("no eigenvalues")
		}
		for _, got := range []float64{at.Low, at.Edge, at.High} {
			near := got == 0 && got == at.Edge
			for _, root := range eigen.Values(nil) {
				near = near || math.Abs(imag(root)) < 1e-4 && scalar.EqualWithinAbsOrRel(real(root), got, 1e-4, 1e-4)
			}
			if !near {
				r.Fatalf("%v is none of %v", got, eigen.Values(nil))
			}
		}
	})
}
