package forage_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/forage"
	"example.org/soum/units"
)

// TestHeightRows: no row twice, stock come out lower than they go in, each row what
// GrazingHeight gives, the table a copy.
func TestHeightRows(t *testing.T) {
	seen := map[string]bool{}
	for _, row := range forage.HeightRows() {
		key := fmt.Sprint(row.Crop, row.By)
		assert.False(t, seen[key], key)
		seen[key] = true
		assert.True(t, 0 < row.End.Low && row.End.Low <= row.End.High && row.End.High < row.Begin.Low && row.Begin.Low <= row.Begin.High, key)
		assert.Regexp(t, keyOfSource, row.Source, key)
		assert.Contains(t, []string{"A", "B"}, row.Mark, key)
		got, err := forage.GrazingHeight(row.Crop, row.By, forage.MomentEnd, units.High)
		require.NoError(t, err)
		assert.Equal(t, row.End.High, got, key)
	}
	forage.HeightRows()[0].Begin.Low = 0
	assert.NotZero(t, forage.HeightRows()[0].Begin.Low)
	height, err := forage.GrazingHeight("moss", forage.HeightsByMaine, forage.MomentBegin, units.Low)
	assert.True(t, math.IsNaN(float64(height)))
	assert.ErrorContains(t, err, "low-species")
	_, err = forage.GrazingHeight("alfalfa", forage.HeightsByGeorgia, 0, units.Low)
	refuses(t, err, "moment")
}

// What does Scotland print for rotations?
func ExampleHeightRows() {
	for _, row := range forage.HeightRows() {
		if row.By == forage.HeightsByScotland {
			fmt.Println(row.Crop, row.Begin.Low.In(units.Metric), row.End.Low.In(units.Metric))
		}
	}
	// Output:
	// rotation-cattle 10 cm 5 cm
	// rotation-ewes-with-singles 8 cm 4 cm
	// rotation-ewes-with-twins 8 cm 5 cm
	// rotation-cows-with-calves 8 cm 5 cm
}

// When may I turn into switchgrass, and who says so?
func ExampleGrazingHeight() {
	for _, by := range []forage.HeightSource{forage.HeightsByGeorgia, forage.HeightsByLuling} {
		begin, _ := forage.GrazingHeight("switchgrass", by, forage.MomentBegin, units.Low)
		end, _ := forage.GrazingHeight("switchgrass", by, forage.MomentEnd, units.High)
		fmt.Println(by, begin.In(units.US), "down to", end.In(units.US))
	}
	// Output:
	// georgia 18 in down to 12 in
	// luling 12 in down to 8 in
}
