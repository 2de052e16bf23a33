package grazing_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/grazing"
	"example.org/soum/units"
)

func TestSpaceRows(t *testing.T) {
	seen := map[string]bool{}
	for _, row := range grazing.SpaceRows() {
		key := fmt.Sprint(row.Stock, row.Rule, row.By)
		assert.False(t, seen[key], key)
		seen[key] = true
		assert.True(t, 0 < row.Land.Low && row.Land.Low <= row.Land.High, key)
		assert.True(t, 0 < row.Head.Low && row.Head.Low <= row.Head.High, key)
		rowIs(t, key, row.Source, row.Mark)
		low, err := grazing.Space(row.Stock, row.Rule, row.By, 3, units.Low)
		require.NoError(t, err)
		high, err := grazing.Space(row.Stock, row.Rule, row.By, 3, units.High)
		require.NoError(t, err)
		assert.LessOrEqual(t, low, high, key)
	}
	grazing.SpaceRows()[0].Stock = "changed"
	assert.NotEqual(t, "changed", grazing.SpaceRows()[0].Stock)
	got, err := grazing.Space("goose", grazing.SpaceLot, "iowa", 1, units.Low)
	assert.True(t, math.IsNaN(float64(got)))
	assert.ErrorContains(t, err, "goose (used, missouri)")
}

// How much ground do 25 hens want by the organic rule of the European Union?
func ExampleSpace() {
	area, _ := grazing.Space("laying-hen", grazing.SpaceRange, "eu-organic", 25, units.Low)
	fmt.Println(area.SquareMetres(), "square metres")
	// Output: 100 square metres
}

// Who says what of a lot for a horse?
func ExampleSpaceRows() {
	for _, row := range grazing.SpaceRows() {
		if row.Stock == "horse" && row.Rule == grazing.SpaceLot {
			fmt.Printf("%s: %.0f to %.0f square feet\n", row.By, row.Land.Low.SquareFeet(), row.Land.High.SquareFeet())
		}
	}
	// Output:
	// washington: 750 to 1000 square feet
	// north-carolina: 400 to 400 square feet
	// iowa: 1000 to 1000 square feet
	// conservation-group: 600 to 600 square feet
	// farm-press: 256 to 256 square feet
}
