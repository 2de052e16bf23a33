package grazing_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/grazing"
	"example.org/soum/units"
)

func TestWireRows(t *testing.T) {
	for _, row := range grazing.WireRows() {
		key := row.Stock + " " + row.Line.String()
		assert.True(t, 0 < row.Wires.Low && row.Wires.Low <= row.Wires.High, key)
		assert.NotEmpty(t, row.When, key)
		rowIs(t, key, row.Source, row.Mark)
		got, err := grazing.Wires(row.Stock, row.Line, units.High)
		require.NoError(t, err)
		assert.Equal(t, row.Wires.High, got, key)
	}
	grazing.WireRows()[0].Stock = "changed"
	assert.NotEqual(t, "changed", grazing.WireRows()[0].Stock)
	got, err := grazing.Wires("goose", grazing.LineBoundary, units.Low)
	assert.True(t, math.IsNaN(got))
	assert.ErrorContains(t, err, "goat (interior)")
}

// TestRollsHoldTheSquareTheyMake: the square of some rolls takes those rolls, and
// twice the rolls are four times the land.
func TestRollsHoldTheSquareTheyMake(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rolls := float64(rapid.IntRange(1, 40).Draw(t, "rolls"))
		roll := drawn(t, "roll", 50, 200, units.Foot)
		area, err := grazing.NettingSquare(rolls, roll)
		require.NoError(t, err)
		round, err := grazing.FenceLength(area, 1)
		require.NoError(t, err)
		back, err := grazing.NettingRolls(round, roll)
		require.NoError(t, err)
		require.Equal(t, rolls, back)
		twice, err := grazing.NettingSquare(2*rolls, roll)
		require.NoError(t, err)
		nearly(t, 4*area, twice)
	})
}

// TestPostsStandCloseEnough: no gap is wider than the spacing, and one post fewer
// would leave one that is.
func TestPostsStandCloseEnough(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		fence, spacing := drawn(t, "fence", 1, 20000, units.Foot), drawn(t, "spacing", 5, 80, units.Foot)
		posts, err := grazing.FencePosts(fence, spacing)
		require.NoError(t, err)
		require.LessOrEqual(t, float64(fence)/(posts-1), float64(spacing)*(1+1e-8))
		if posts > 2 {
			require.Greater(t, float64(fence)/(posts-2), float64(spacing))
		}
	})
}

func TestNettingOrWireRefuses(t *testing.T) {
	got, err := grazing.NettingOrWire(0, units.Acre)
	assert.Zero(t, got)
	assert.ErrorContains(t, err, "quiet cattle")
	for _, area := range []units.Area{0, -1, units.Area(math.NaN()), units.Area(math.Inf(1))} {
		got, err = grazing.NettingOrWire(grazing.FencedSmall, area)
		assert.Zero(t, got)
		assert.True(t, units.Impossible(err), area)
	}
}

// TestHornsNeverBehindNetting, whatever the land.
func TestHornsNeverBehindNetting(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		got, err := grazing.NettingOrWire(grazing.FencedHorned, drawn(t, "area", 0.01, 500, units.Acre))
		require.NoError(t, err)
		require.Equal(t, grazing.MovedWires, got)
	})
}

// Rolls of 164 ft with posts every 7.5 ft: how many posts stand in one?
func ExampleFencePosts() {
	posts, _ := grazing.FencePosts(164*units.Foot, 7.5*units.Foot)
	fmt.Println(posts)
	// Output: 23
}

// How many wires go round goats?
func ExampleWires() {
	least, _ := grazing.Wires("goat", grazing.LineBoundary, units.Low)
	most, _ := grazing.Wires("goat", grazing.LineBoundary, units.High)
	fmt.Println(least, "to", most)
	// Output: 4 to 5
}

// What is printed for wires between paddocks?
func ExampleWireRows() {
	for _, row := range grazing.WireRows() {
		if row.Line == grazing.LineInterior {
			fmt.Println(row.Stock, row.Wires.Low, "to", row.Wires.High)
		}
	}
	// Output:
	// cattle 1 to 2
	// sheep 2 to 3
	// goat 2 to 3
}

// How many rolls close 400 ft?
func ExampleNettingRolls() {
	rolls, _ := grazing.NettingRolls(400*units.Foot, 164*units.Foot)
	fmt.Println(rolls)
	// Output: 3
}

// Two rolls set as a square: how much ground?
func ExampleNettingSquare() {
	area, _ := grazing.NettingSquare(2, 164*units.Foot)
	fmt.Printf("%.0f square feet\n", area.SquareFeet())
	// Output: 6724 square feet
}

// Ewes without horns on two acres: netting or wires?
func ExampleNettingOrWire() {
	fence, _ := grazing.NettingOrWire(grazing.FencedSmall, 2*units.Acre)
	fmt.Println(fence)
	fence, _ = grazing.NettingOrWire(grazing.FencedHorned, 2*units.Acre)
	fmt.Println("and with horns:", fence)
	// Output:
	// netting
	// and with horns: wires
}
