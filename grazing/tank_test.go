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
