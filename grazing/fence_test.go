package grazing_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/grazing"
	"example.org/soum/units"
)

func TestFenceOfASquareIsTheLeast(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		area := drawn(t, "area", 0.01, 500, units.Acre)
		ratio := rapid.Float64Range(1.01, 10).Draw(t, "ratio")
		square, err := grazing.FenceLength(area, 1)
		require.NoError(t, err)
		side, err := grazing.SquareSide(area)
		require.NoError(t, err)
		nearly(t, 4*side, square)
		long, err := grazing.FenceLength(area, ratio)
		require.NoError(t, err)
		assert.Greater(t, long, square)
		across, err := grazing.FenceLength(area, 1/ratio)
		require.NoError(t, err)
		nearly(t, long, across)
	})
}

// 2 (4 + 1) √(A / 4) ÷ 4 √A = 5 / 4, and 2 (2 + 1) √(A / 2) ÷ 4 √A = 3 / (2 √2)
// = 1.0607: the 25 % and 6.1 % of the doc.
func TestFenceOfLongerShapes(t *testing.T) {
	square, err := grazing.FenceLength(units.Hectare, 1)
	require.NoError(t, err)
	four, err := grazing.FenceLength(units.Hectare, 4)
	require.NoError(t, err)
	two, err := grazing.FenceLength(units.Hectare, 2)
	require.NoError(t, err)
	assert.InDelta(t, 1.25, float64(four/square), 1e-12)
	assert.InDelta(t, 3/(2*math.Sqrt2), float64(two/square), 1e-12)
	assert.InDelta(t, 1.061, float64(two/square), 0.0005)
}

// TestFencePerAcre: 5,280 ft ÷ 40, 2,640 ft ÷ 10 and 835 ft ÷ 1, each acre of the
// smaller field taking more.
func TestFencePerAcre(t *testing.T) {
	for acres, feet := range map[float64]float64{40: 132, 10: 264, 1: 835} {
		fence, err := grazing.FenceLength(units.Area(acres)*units.Acre, 1)
		require.NoError(t, err)
		assert.InDelta(t, feet, fence.Feet()/acres, 0.5)
	}
}

func TestOneLaneIsAFencedRectangle(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		length := drawn(t, "length", 10, 2000, units.Foot)
		width := drawn(t, "width", 10, 500, units.Foot)
		lane, err := grazing.LaneSides(length, width, 1)
		require.NoError(t, err)
		area, err := grazing.StripArea(length, width)
		require.NoError(t, err)
		round, err := grazing.FenceLength(area, float64(length/width))
		require.NoError(t, err)
		nearly(t, round, lane)

		// a lane more adds one side and two ends
		lanes := float64(rapid.IntRange(1, 20).Draw(t, "lanes"))
		fewer, err := grazing.LaneSides(length, width, lanes)
		require.NoError(t, err)
		more, err := grazing.LaneSides(length, width, lanes+1)
		require.NoError(t, err)
		nearly(t, fewer+length+2*width, more)
	})
}

func TestWireOfCrossWiresInUse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		width := drawn(t, "width", 10, 500, units.Foot)
		strips := float64(rapid.IntRange(1, 10).Draw(t, "strips"))
		fewer, err := grazing.CrossWires(width, strips)
		require.NoError(t, err)
		more, err := grazing.CrossWires(width, strips+1)
		require.NoError(t, err)
		nearly(t, fewer+width, more)
		one, err := grazing.WireLength(fewer, 1)
		require.NoError(t, err)
		assert.Equal(t, fewer, one)
	})
}
