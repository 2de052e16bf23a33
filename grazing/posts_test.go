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

func TestVoltageRows(t *testing.T) {
	least := map[string]units.Voltage{}
	for _, row := range grazing.VoltageRows() {
		key := row.Stock + " " + row.Aim.String()
		assert.True(t, 0 < row.Voltage.Low && row.Voltage.Low <= row.Voltage.High, key)
		rowIs(t, key, row.Source, row.Mark)
		got, err := grazing.FenceVoltage(row.Stock, row.Aim, units.High)
		require.NoError(t, err)
		assert.Equal(t, row.Voltage.High, got, key)
		switch row.Aim {
		case grazing.VoltageLeast:
			least[row.Stock] = row.Voltage.High
		case grazing.VoltageWorking: // what to hold is more than the least that acts
			assert.Greater(t, row.Voltage.High, least[row.Stock], key)
		}
	}
	grazing.VoltageRows()[0].Stock = "changed"
	assert.NotEqual(t, "changed", grazing.VoltageRows()[0].Stock)
	got, err := grazing.FenceVoltage("goose", grazing.VoltageLeast, units.Low)
	assert.True(t, math.IsNaN(float64(got)))
	assert.ErrorContains(t, err, "sheep (working)")
}

func TestWalkRows(t *testing.T) {
	for _, row := range grazing.WalkRows() {
		assert.True(t, 0 < row.Distance.Low && row.Distance.Low <= row.Distance.High, row.By)
		assert.NotEmpty(t, row.When)
		rowIs(t, row.By.String(), row.Source, row.Mark)
		got, err := grazing.WalkLimit(row.By, units.Whole)
		require.NoError(t, err)
		assert.Equal(t, row.Distance.High, got)
	}
	grazing.WalkRows()[0].When = "changed"
	assert.NotEqual(t, "changed", grazing.WalkRows()[0].When)
}

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

// TestUtilityAsksForMoreRod, in the proportion of 24 ft for 5 J to 18 ft for 6 J.
func TestUtilityAsksForMoreRod(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		fence := drawn(t, "fence", 0.1, 30, units.Mile)
		output, err := grazing.EnergizerOutput(fence)
		require.NoError(t, err)
		press, err := grazing.GroundRod(output, grazing.RodTradePress)
		require.NoError(t, err)
		utility, err := grazing.GroundRod(output, grazing.RodUtility)
		require.NoError(t, err)
		require.InDelta(t, (24.0/5)/(18.0/6), float64(utility/press), 1e-9)
		rods, err := grazing.GroundRods(utility, 8*units.Foot)
		require.NoError(t, err)
		require.GreaterOrEqual(t, rods*8, utility.Feet()-1e-6)
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

func TestVisitOfRefuses(t *testing.T) {
	for _, distance := range []units.Length{-1, units.Length(math.NaN()), units.Length(math.Inf(1))} {
		got, err := grazing.VisitOf(distance)
		assert.Zero(t, got)
		assert.True(t, units.Impossible(err), distance)
	}
}

// TestTankRefills: a tank filled at FillRate within a time holds that much again.
func TestTankRefills(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		head := float64(rapid.IntRange(1, 500).Draw(t, "head"))
		each := drawn(t, "each", 0.5, 30, units.GallonPerDay)
		rule := grazing.TankRule(rapid.IntRange(1, 6).Draw(t, "rule"))
		volume, err := grazing.TankVolume(rule, head, each)
		require.NoError(t, err)
		time := drawn(t, "time", 0.5, 24, units.Hour)
		rate, err := grazing.FillRate(volume, time)
		require.NoError(t, err)
		nearly(t, float64(volume), float64(rate)*float64(time))
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

// What should my meter show for sheep?
func ExampleFenceVoltage() {
	least, _ := grazing.FenceVoltage("sheep", grazing.VoltageLeast, units.Low)
	hold, _ := grazing.FenceVoltage("sheep", grazing.VoltageWorking, units.Low)
	fmt.Println("at least", least.In(units.US)+", better", hold.In(units.US))
	// Output: at least 2,000 V, better 4,000 V
}

// What is the most that is printed for anything?
func ExampleVoltageRows() {
	for _, row := range grazing.VoltageRows() {
		if row.Aim == grazing.VoltageMost {
			fmt.Println(row.Stock, row.Voltage.High.In(units.US))
		}
	}
	// Output: cow-trainer-or-crowd-gate 2,500 V
}

// Six miles of fence: how strong an energizer?
func ExampleEnergizerOutput() {
	output, _ := grazing.EnergizerOutput(6 * units.Mile)
	fmt.Println(output.In(units.US))
	// Output: 6 J
}

// And how much ground rod, by each rule?
func ExampleGroundRod() {
	press, _ := grazing.GroundRod(6*units.Joule, grazing.RodTradePress)
	utility, _ := grazing.GroundRod(6*units.Joule, grazing.RodUtility)
	fmt.Println(press.In(units.US), "or", utility.In(units.US))
	// Output: 18 ft or 28.8 ft
}

// How many rods of 6 ft are 18 ft?
func ExampleGroundRods() {
	rods, _ := grazing.GroundRods(18*units.Foot, 6*units.Foot)
	fmt.Println(rods)
	// Output: 3
}

// How far may my dairy cows walk to drink?
func ExampleWalkLimit() {
	limit, _ := grazing.WalkLimit(grazing.WalkDairy, 0)
	fmt.Println(limit.In(units.US))
	// Output: 300 ft
}

// Who says what of the walk to water?
func ExampleWalkRows() {
	for _, row := range grazing.WalkRows()[:3] {
		fmt.Println(row.By, row.Distance.High.In(units.US), row.When)
	}
	// Output:
	// kentucky 800 ft walk no more than this
	// even 800 ft use is very high nearer and even between
	// missouri 900 ft walk no more than this
}

// The far corner is 1,300 ft from the trough. How will they come?
func ExampleVisitOf() {
	visit, _ := grazing.VisitOf(1300 * units.Foot)
	fmt.Println(visit)
	// Output: herd
}

// Fifty cows that drink 20 gal a day come all at once: what must the tank hold?
func ExampleTankVolume() {
	volume, _ := grazing.TankVolume(grazing.TankHerdOhio, 50, 20*units.GallonPerDay)
	fmt.Println(volume.In(units.US))
	// Output: 250 gal
}

// It is to be full again within the hour. How many gallons a minute?
func ExampleFillRate() {
	rate, _ := grazing.FillRate(250*units.Gallon, units.Hour)
	fmt.Printf("%.1f gal a minute\n", rate.GallonsPerDay()/1440)
	// Output: 4.2 gal a minute
}

// How much edge do ten of a hundred cows want at 2 ft each?
func ExampleTankEdge() {
	edge, _ := grazing.TankEdge(100, 10*units.Percent, 2*units.Foot)
	fmt.Println(edge.In(units.US))
	// Output: 20 ft
}

// A tank is 6 ft wide and the water 2 ft deep. How much is in it?
func ExampleRoundTank() {
	volume, _ := grazing.RoundTank(3*units.Foot, 2*units.Foot)
	fmt.Println(volume.In(units.US))
	// Output: 423 gal
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
