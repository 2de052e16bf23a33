package rainfall_test

import (
	"errors"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/rainfall"
	"example.org/soum/units"
)

func TestPassesSaysWhereNothingIsStated(t *testing.T) {
	_, err := rainfall.Passes(27 * units.RainInch)
	var ranged *units.RangeError
	require.True(t, errors.As(err, &ranged))
	assert.InDelta(t, 27, ranged.Value, 1e-9)
	assert.True(t, ranged.Gap)
	assert.InDelta(t, 25, ranged.Low, 1e-9, "covered up to here")
	assert.InDelta(t, 30, ranged.High, 1e-9, "and again from here")
	assert.ErrorContains(t, err, "at most 25 in or at least 30 in")

	_, err = rainfall.Passes(8 * units.RainInch)
	assert.ErrorContains(t, err, "common practice covers (at least 10 in)")
	for _, rain := range []units.RainDepth{25, 30} {
		_, err = rainfall.Passes(rain * units.RainInch)
		assert.NoError(t, err)
	}
}

// More rain never means fewer passes, and the three lines join.
func TestPassesNeverFall(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rain := units.RainDepth(rapid.Float64Range(0, 70).Draw(t, "rain")) * units.RainInch
		more := rain + units.RainDepth(rapid.Float64Range(0, 5).Draw(t, "more"))*units.RainInch
		few, err := rainfall.Passes(rain)
		assert.False(t, units.Impossible(err))
		many, _ := rainfall.Passes(more)
		assert.GreaterOrEqual(t, many, few-1e-12)
		// nowhere steeper than the line across the gap: 0.357 passes an inch
		assert.LessOrEqual(t, many-few, 0.3572*(more-rain).Inches()+1e-12)
	})
}

func TestPassesBySeasonOfARotation(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		leaf := units.Days(rapid.Float64Range(5, 30).Draw(t, "leaf"))
		leaves := rapid.Float64Range(2, 3).Draw(t, "leaves")
		rotation, err := rainfall.RotationDays(leaf, leaves)
		require.NoError(t, err)
		passes, err := rainfall.PassesBySeason(4*rotation, rotation)
		require.NoError(t, err)
		assert.InDelta(t, 4, passes, 1e-12)
	})
}

func TestForageShareFollowsRainUpToNormal(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		share := units.Fraction(rapid.Float64Range(0, 3).Draw(t, "share"))
		got, err := rainfall.ForageShare(share)
		require.NoError(t, err)
		if share <= 1 {
			assert.Equal(t, share, got)
		} else {
			assert.Equal(t, units.Whole, got)
		}
	})
}
