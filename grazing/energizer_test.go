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
