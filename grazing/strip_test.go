package grazing_test

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/grazing"
	"example.org/soum/units"
)

func TestStripLengthAndStripAreaAreInverse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		area := drawn(t, "area", 0.001, 20, units.Acre)
		width := drawn(t, "width", 5, 1000, units.Foot)
		length, err := grazing.StripLength(area, width)
		require.NoError(t, err)
		back, err := grazing.StripArea(length, width)
		require.NoError(t, err)
		nearly(t, area, back)

		// half the width takes twice the length
		twice, err := grazing.StripLength(area, width/2)
		require.NoError(t, err)
		require.Equal(t, 2*length, twice)
	})
}
