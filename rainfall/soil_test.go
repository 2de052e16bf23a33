package rainfall_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// TestSoilRows: no row twice, every span the right way round; the table is a copy.
func TestSoilRows(t *testing.T) {
	seen := map[string]bool{}
	for _, row := range rainfall.SoilRows() {
		key := fmt.Sprint(row.Texture, row.By)
		assert.False(t, seen[key], key)
		seen[key] = true
		assert.True(t, 0 < row.Holds.Low && row.Holds.Low <= row.Holds.High && row.Holds.High < 0.25, key)
		assert.NotEmpty(t, row.Source)
		assert.Equal(t, "A", row.Mark, key)
	}
	rainfall.SoilRows()[0].Texture = "x"
	assert.Equal(t, "very-coarse-sand", rainfall.SoilRows()[0].Texture)

	_, err := rainfall.SoilWater("peat", rainfall.SoilByWyoming, units.Low)
	unknown(t, err, "very-coarse-sand, coarse-sand")
	got, err := rainfall.SoilWater("clay", rainfall.SoilByNebraska, units.Low)
	unknown(t, err, `rainfall.SoilWater: by is "nebraska": has no figure of "clay"; it takes one of: california`)
	assert.True(t, math.IsNaN(float64(got)))
}

// TestProfileWater: the printed example of three layers, 30 cm of 0.05, 100 of 0.15
// and 20 of 0.20, holds 20.5 cm and is moderate.
func TestProfileWater(t *testing.T) {
	depths := []units.Length{30 * units.Centimetre, 100 * units.Centimetre, 20 * units.Centimetre}
	water := sure[units.RainDepth](t)(rainfall.ProfileWater(depths, []units.WaterHolding{0.05, 0.15, 0.20}))
	assert.InDelta(t, 20.5, water.Centimetres(), 1e-9)
	class, err := rainfall.ClassOfProfile(water)
	require.NoError(t, err)
	assert.Equal(t, rainfall.ProfileModerate, class)

	for _, bad := range []struct {
		depths []units.Length
		holds  []units.WaterHolding
		want   string
	}{
		{nil, nil, "depths: is empty; one value or more"},
		{depths, nil, "holds: 0 values beside 3 values of depths"},
		{[]units.Length{-1}, []units.WaterHolding{0.1}, "depths[0]: -1 m is not the depth of a layer; 0 m or more"},
		{[]units.Length{1}, []units.WaterHolding{-0.1}, "holds[0]: -0.1 m/m is not water that a soil holds; 0 m/m or more"},
		{[]units.Length{1, units.Length(math.NaN())}, []units.WaterHolding{0.1, 0.1}, "depths[1]: NaN m"},
		{[]units.Length{1}, []units.WaterHolding{units.WaterHolding(math.Inf(1))}, "holds[0]: +Inf m/m"},
	} {
		got, err := rainfall.ProfileWater(bad.depths, bad.holds)
		refusedAt(t, err, bad.want)
		assert.True(t, math.IsNaN(float64(got)))
	}
	water, err = rainfall.ProfileWater([]units.Length{1e308, 1e308}, []units.WaterHolding{1, 1})
	var domain *units.DomainError
	require.ErrorAs(t, err, &domain)
	assert.Equal(t, "result", domain.Argument)
	assert.True(t, math.IsNaN(float64(water)))
	water, err = rainfall.ProfileWater([]units.Length{0}, []units.WaterHolding{0})
	require.NoError(t, err)
	assert.Zero(t, water)
	for _, bad := range []float64{-1, math.NaN(), math.Inf(1)} {
		_, err = rainfall.ClassOfProfile(units.RainDepth(bad))
		assert.True(t, units.Impossible(err))
		_, err = rainfall.GroundFor(units.RainDepth(bad * 0))
		assert.Equal(t, bad != -1, units.Impossible(err))
	}
}

// What does a foot of loam hold?
func ExampleSoilWater() {
	low, _ := rainfall.SoilWater("loam", rainfall.SoilByCalifornia, units.Low)
	high, err := rainfall.SoilWater("loam", rainfall.SoilByCalifornia, units.High)
	fmt.Println(low.In(units.US), high.In(units.US), err)
	// Output: 1.5 in/ft 2.3 in/ft <nil>
}

// Who says what of silt loam?
func ExampleSoilRows() {
	for _, row := range rainfall.SoilRows() {
		if row.Texture == "silt-loam" {
			fmt.Println(row.By, row.Holds.Low.In(units.US), row.Holds.High.In(units.US))
		}
	}
	// Output:
	// california 1.5 in/ft 2.3 in/ft
	// wyoming 1.5 in/ft 2.1 in/ft
	// nebraska 2 in/ft 2 in/ft
}

// Roots of 2 ft in loam of an inch to the foot.
func ExampleRootZoneWater() {
	water, err := rainfall.RootZoneWater(2*units.Foot, units.HoldingInchPerFoot)
	fmt.Println(water.In(units.US), err)
	// Output: 2 in <nil>
}

// When half of 4 in is used I water. What is left then?
func ExampleRefillPoint() {
	left, err := rainfall.RefillPoint(4*units.RainInch, 50*units.Percent)
	fmt.Println(left.In(units.US), err)
	// Output: 2 in <nil>
}

// My soil has three layers.
func ExampleProfileWater() {
	water, _ := rainfall.ProfileWater([]units.Length{0.3, 1, 0.2}, []units.WaterHolding{0.05, 0.15, 0.2})
	class, err := rainfall.ClassOfProfile(water)
	fmt.Println(water.In(units.Metric), class, err)
	// Output: 205 mm moderate <nil>
}

// How is a soil called that holds 10 in?
func ExampleClassOfProfile() {
	class, err := rainfall.ClassOfProfile(10 * units.RainInch)
	fmt.Println(class, err)
	// Output: high <nil>
}
