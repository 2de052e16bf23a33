package herd_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/herd"
	"example.org/soum/units"
)

// TestEnergyChainsAgreeNearly: the chains are of one thing, so they lie within
// half a per cent of each other, and what is lost on the way down is lost.
func TestEnergyChainsAgreeNearly(t *testing.T) {
	goat, err := herd.EnergyOfNutrients(1, herd.ChainGoat, herd.EnergyDigestible)
	require.NoError(t, err)
	for _, chain := range []herd.EnergyChain{herd.ChainRuminant, herd.ChainPound} {
		other, err := herd.EnergyOfNutrients(1, chain, herd.EnergyDigestible)
		require.NoError(t, err)
		assert.InEpsilon(t, float64(goat), float64(other), 0.005)
		assert.NotEqual(t, goat, other)
	}
	metabolizable, _ := herd.EnergyOfNutrients(1, herd.ChainGoat, herd.EnergyMetabolizable)
	net, _ := herd.EnergyOfNutrients(1, herd.ChainGoat, herd.EnergyNet)
	assert.InDelta(t, 62.0/76, float64(metabolizable/goat), 1e-12)
	assert.InDelta(t, 35.0/76, float64(net/goat), 1e-12)
	assert.InDelta(t, 0.82, float64(metabolizable/goat), 0.005) // as the other chain has it
}

// TestGoatEnergyAdds: upkeep, growth and milk are needed side by side.
func TestGoatEnergyAdds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		weight := units.LiveWeight(rapid.Float64Range(5, 120).Draw(t, "weight"))
		gain := units.LiveGain(rapid.Float64Range(0, 0.4).Draw(t, "gain"))
		milk := units.Milk(rapid.Float64Range(0, 8).Draw(t, "milk"))
		all, err := herd.GoatEnergy(weight, gain, milk)
		if err != nil {
			t.Fatal(err)
		}
		upkeep, _ := herd.GoatEnergy(weight, 0, 0)
		growth, _ := herd.GoatEnergy(weight, gain, 0)
		giving, _ := herd.GoatEnergy(weight, 0, milk)
		if !near(float64(all), float64(growth+giving-upkeep)) {
			t.Fatalf("%v, in parts %v", all, growth+giving-upkeep)
		}
	})
}

// TestMilkOfFourPerCentIsItself whatever its amount.
func TestMilkOfFourPerCentIsItself(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		milk := units.Milk(rapid.Float64Range(0, 80).Draw(t, "milk"))
		got, err := herd.FatCorrectedMilk(milk, 4*units.Percent)
		if err != nil || !near(float64(got), float64(milk)) {
			t.Fatalf("%v is %v (%v)", milk, got, err)
		}
	})
}

// How much is 35 kg of milk at 3.5 % fat, told at 4 %?
func ExampleFatCorrectedMilk() {
	milk, err := herd.FatCorrectedMilk(35*units.MilkKilogramPerDay, 3.5*units.Percent)
	fmt.Printf("%.1f kg %v\n", milk.KilogramsPerDay(), err)
	// Output:
	// 32.4 kg <nil>
}

// What does a doe of 50 kg need that gives 2 kg of milk?
func ExampleGoatEnergy() {
	energy, err := herd.GoatEnergy(50*units.LiveKilogram, 0, 2*units.MilkKilogramPerDay)
	fmt.Printf("%.0f kcal %v\n", energy.KilocaloriesPerDay(), err)
	// Output:
	// 4398 kcal <nil>
}

// How much protein goes with 3.5 Mcal of digestible energy?
func ExampleGoatProtein() {
	protein, err := herd.GoatProtein(3.5*units.MegacaloriePerDay, herd.ProteinTotal)
	fmt.Printf("%.0f g %v\n", protein.GramsPerDay(), err)
	// Output:
	// 112 g <nil>
}

// What net energy holds a steer of 715 lb?
func ExampleMaintenanceEnergy() {
	energy, err := herd.MaintenanceEnergy(715 * units.LivePound)
	fmt.Printf("%.2f Mcal %v\n", energy.MegacaloriesPerDay(), err)
	// Output:
	// 5.88 Mcal <nil>
}

// What is left for gain from 8 kg of a feed of 1.5 and 0.9 Mcal when 6 Mcal hold
// the steer's weight?
func ExampleEnergyForGain() {
	energy, err := herd.EnergyForGain(8*units.KilogramPerDay, 6*units.MegacaloriePerDay, 1.5*units.MegacaloriePerKilogram, 0.9*units.MegacaloriePerKilogram)
	fmt.Printf("%.1f Mcal %v\n", energy.MegacaloriesPerDay(), err)
	// Output:
	// 3.6 Mcal <nil>
}

// What digestible energy is in 12.7 lb of digestible nutrients?
func ExampleEnergyOfNutrients() {
	energy, err := herd.EnergyOfNutrients(12.7*units.NutrientPoundPerDay, herd.ChainPound, herd.EnergyDigestible)
	fmt.Printf("%.1f Mcal %v\n", energy.MegacaloriesPerDay(), err)
	_, err = herd.EnergyOfNutrients(12.7*units.NutrientPoundPerDay, herd.ChainPound, herd.EnergyNet)
	fmt.Println(err)
	// Output:
	// 25.4 Mcal <nil>
	// herd.EnergyOfNutrients: level is "net": the source prints no factor for this energy; it takes one of: digestible
}

// How much protein holds a ewe of 70 kg?
func ExampleUpkeepNutrient() {
	protein, err := herd.UpkeepNutrient(herd.UpkeepEweProtein, 70*units.LiveKilogram)
	fmt.Printf("%.0f g %v\n", protein.GramsPerDay(), err)
	// Output:
	// 113 g <nil>
}

// And how much energy?
func ExampleEweEnergy() {
	energy, err := herd.EweEnergy(70 * units.LiveKilogram)
	fmt.Printf("%.1f Mcal %v\n", energy.MegacaloriesPerDay(), err)
	// Output:
	// 2.4 Mcal <nil>
}

// What does a beef cow need after calving?
func ExampleFeedNeed() {
	for _, value := range []herd.FeedValue{herd.FeedDigestible, herd.FeedProtein} {
		need, err := herd.FeedNeed(herd.NeedCowAfterCalving, value)
		fmt.Println(value, need.In(units.US), err)
	}
	// Output:
	// digestible 16 lb/day <nil>
	// protein 2.7 lb/day <nil>
}
