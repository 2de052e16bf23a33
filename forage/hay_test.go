package forage_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/forage"
	"example.org/soum/units"
)

// TestStorageRows: no row twice, spans the right way round, each row what StorageLoss
// gives, the table a copy.
func TestStorageRows(t *testing.T) {
	seen := map[string]bool{}
	for _, row := range forage.StorageRows() {
		key := fmt.Sprint(row.Kept, row.By)
		assert.False(t, seen[key], key)
		seen[key] = true
		assert.True(t, 0 < row.Loss.Low && row.Loss.Low <= row.Loss.High && row.Loss.High <= 1, key)
		assert.Regexp(t, keyOfSource, row.Source, key)
		assert.Contains(t, []string{"A", "B"}, row.Mark, key)
		assert.Equal(t, row.By == forage.StorageByKentucky && row.Kept == forage.StoredUncoveredOnGround, row.AndMore, key)
		got, err := forage.StorageLoss(row.Kept, row.By, units.High)
		require.NoError(t, err)
		assert.Equal(t, row.Loss.High, got, key)
	}
	forage.StorageRows()[0].Loss.Low = 1
	assert.Less(t, forage.StorageRows()[0].Loss.Low, units.Whole)
	loss, err := forage.StorageLoss(forage.StoredWrapped, forage.StorageByKentucky, units.Low)
	assert.True(t, math.IsNaN(float64(loss)))
	assert.ErrorContains(t, err, "one of: iowa")
}

// TestFeederRows: no row twice, each row what FeederWaste gives, the table a copy.
func TestFeederRows(t *testing.T) {
	seen := map[string]bool{}
	for _, row := range forage.FeederRows() {
		key := fmt.Sprint(row.Feeder, row.By)
		assert.False(t, seen[key], key)
		seen[key] = true
		assert.Regexp(t, keyOfSource, row.Source, key)
		assert.Equal(t, "A", row.Mark, key)
		got, err := forage.FeederWaste(row.Feeder, row.By)
		require.NoError(t, err)
		assert.Equal(t, row.Waste, got, key)
	}
	forage.FeederRows()[0].Waste = 1
	assert.Less(t, forage.FeederRows()[0].Waste, units.Whole)
	waste, err := forage.FeederWaste(forage.FeederPoly, forage.FeederByBuskirk)
	assert.True(t, math.IsNaN(float64(waste)))
	assert.ErrorContains(t, err, "one of: oklahoma")
}

// TestHayIsConserved: what is hauled for a demand lasts as long as was asked, and a
// bale's weight is its volume times its density.
func TestHayIsConserved(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string, low, high float64) float64 { return rapid.Float64Range(low, high).Draw(t, name) }
		eaten, days := units.DryMatter(draw("eaten", 1, 2e6)), units.Days(draw("days", 1, 200))
		content, waste := units.Fraction(draw("content", 0.2, 1)), units.Fraction(draw("waste", 0, 0.6))
		hauled, err := forage.HayToHaul(eaten, content, waste, forage.WasteOfHauled)
		require.NoError(t, err)
		lasts, err := forage.HayDays(hauled, 0, content, waste, units.Demand(float64(eaten)/float64(days)))
		require.NoError(t, err)
		assert.InEpsilon(t, float64(days), float64(lasts), 1e-9)
		onTop, err := forage.HayToHaul(eaten, content, waste, forage.WasteOnTop)
		require.NoError(t, err)
		assert.LessOrEqual(t, float64(onTop), float64(hauled)*(1+1e-12))

		diameter, width, density := units.Length(draw("diameter", 0.5, 2)), units.Length(draw("width", 0.5, 2)), units.FeedDensity(draw("density", 50, 300))
		volume, err := forage.BaleVolume(diameter, width)
		require.NoError(t, err)
		bale, err := forage.BaleWeight(diameter, width, density)
		require.NoError(t, err)
		assert.InEpsilon(t, float64(volume)*float64(density), float64(bale), 1e-12)
		bales, err := forage.Bales(hauled, bale)
		require.NoError(t, err)
		assert.InEpsilon(t, float64(hauled), bales*float64(bale), 1e-12)

		layer := units.Length(draw("layer", 0, 0.2))
		thin, err := forage.OuterShare(diameter, layer)
		require.NoError(t, err)
		thick, err := forage.OuterShare(diameter, layer*1.1)
		require.NoError(t, err)
		assert.LessOrEqual(t, thin, thick)
	})
}

// TestRainLossRises: up to the top of the curve more rain is more loss.
func TestRainLossRises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		grass := forage.RainedGrass(rapid.IntRange(1, 2).Draw(t, "grass"))
		rain := units.RainDepth(rapid.Float64Range(0, 0.046).Draw(t, "rain"))
		less, err := forage.RainLoss(rain, grass)
		require.NoError(t, err)
		more, err := forage.RainLoss(rain*1.1, grass)
		require.NoError(t, err)
		assert.LessOrEqual(t, less, more)
	})
	_, err := forage.RainLoss(0.01, 0)
	assert.True(t, units.Impossible(err))
}

// My cows eat 129,600 lb by spring. What must I haul, hay of 88 % dry matter with
// 20.5 % wasted in a ring?
func ExampleHayToHaul() {
	hay, err := forage.HayToHaul(129600*units.DryMatterPound, 88*units.Percent, 20.5*units.Percent, forage.WasteOfHauled)
	bales, _ := forage.Bales(hay, 1000*units.FreshPound)
	fmt.Println(hay.In(units.US), err)
	fmt.Println(math.Ceil(bales), "bales")
	// Output:
	// 185,249 lb <nil>
	// 186 bales
}

// I have 10,000 lb: a tenth spoils, a fifth is wasted, and the ewes eat 99 lb a day.
func ExampleHayDays() {
	days, err := forage.HayDays(10000*units.FreshPound, 10*units.Percent, 88*units.Percent, 20*units.Percent, 99*units.PoundPerDay)
	fmt.Println(days.In(units.US), err)
	// Output: 64 days <nil>
}

// How many bales of 1,200 lb are 4,500 lb?
func ExampleBales() {
	bales, err := forage.Bales(4500*units.FreshPound, 1200*units.FreshPound)
	fmt.Println(bales, err)
	// Output: 3.75 <nil>
}

// What is a bale of 5 by 5 ft?
func ExampleBaleVolume() {
	volume, err := forage.BaleVolume(5*units.Foot, 5*units.Foot)
	fmt.Printf("%.0f ft³ %v\n", volume.CubicFeet(), err)
	// Output: 98 ft³ <nil>
}

// And what does one of 6 ft weigh, as tight as that?
func ExampleBaleWeight() {
	weight, err := forage.BaleWeight(6*units.Foot, 5*units.Foot, 11.21*units.FeedPoundPerCubicFoot)
	fmt.Printf("%.0f lb %v\n", weight.Pounds(), err)
	// Output: 1585 lb <nil>
}

// How much of my bale lies in its outer 4 in?
func ExampleOuterShare() {
	share, err := forage.OuterShare(5*units.Foot, 4*units.Inch)
	fmt.Println(share.In(units.US), err)
	// Output: 24.9 % <nil>
}

// What do I lose if bales lie on the ground without a cover?
func ExampleStorageLoss() {
	for _, by := range []forage.StorageSource{forage.StorageByWisconsin, forage.StorageByIowa} {
		low, _ := forage.StorageLoss(forage.StoredUncoveredOnGround, by, units.Low)
		high, _ := forage.StorageLoss(forage.StoredUncoveredOnGround, by, units.High)
		fmt.Println(by, low.In(units.US), "to", high.In(units.US))
	}
	// Output:
	// wisconsin 5 % to 20 %
	// iowa 25 % to 35 %
}

// Where is no upper end printed?
func ExampleStorageRows() {
	for _, row := range forage.StorageRows() {
		if row.AndMore {
			fmt.Println(row.Kept, row.By, row.Loss.Low.In(units.US), "and more")
		}
	}
	// Output: uncovered on ground kentucky 20 % and more
}

// What do cattle waste at a ring?
func ExampleFeederWaste() {
	one, _ := forage.FeederWaste(forage.FeederRing, forage.FeederByBuskirk)
	other, _ := forage.FeederWaste(forage.FeederRing, forage.FeederByOklahoma)
	fmt.Println(one.In(units.US), "or", other.In(units.US))
	// Output: 6.1 % or 20.5 %
}

// Which feeders did Oklahoma State try?
func ExampleFeederRows() {
	for _, row := range forage.FeederRows() {
		if row.By == forage.FeederByOklahoma {
			fmt.Println(row.Feeder, row.Waste.In(units.US))
		}
	}
	// Output:
	// cone 5.3 %
	// sheeted 13 %
	// ring 20.5 %
	// poly 21 %
}

// Each cow wastes 3 lb of the 24 lb that disappear.
func ExampleWasteShare() {
	share, err := forage.WasteShare(3*units.PoundPerDay, 24*units.PoundPerDay)
	fmt.Println(share.In(units.US), err)
	// Output: 12.5 % <nil>
}

// An inch of rain fell on orchardgrass that was nearly dry: what is lost?
func ExampleRainLoss() {
	loss, err := forage.RainLoss(1*units.RainInch, forage.RainedOrchardgrass)
	fmt.Println(loss.In(units.US), err)
	// Output: 5.94 % <nil>
}
