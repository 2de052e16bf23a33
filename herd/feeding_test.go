package herd_test

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/herd"
	"example.org/soum/units"
)

// TestIntakeFiguresAreThoseOfMeasuredIntake: each row is found by its name, has a
// source and a mark, and the list is a copy.
func TestIntakeFiguresAreThoseOfMeasuredIntake(t *testing.T) {
	weights := map[string]string{ // a second reading of the sources that tell a weight
		"ewe-upkeep": "150 lb", "ewe-late-gestation": "150 lb", "ewe-lactating": "150 lb", "boer-cross-buck": "200 lb",
		"nz-ewe-45-flushing": "45 kg", "nz-ewe-45-three-months": "45 kg", "nz-ewe-45-two-months": "45 kg",
		"nz-ewe-55-flushing": "55 kg", "nz-ewe-55-three-months": "55 kg", "nz-ewe-55-two-months": "55 kg",
		"nz-ewe-65-three-months": "65 kg", "nz-ewe-65-two-months": "65 kg",
		"dairy-cow-40-kg-milk": "650 kg", "beef-1-kg-gain": "400 kg", "beef-maize-silage": "300 kg", "beef-straw": "300 kg",
		"beef-cereals": "400 kg", "ewe-twins": "80 kg", "goat-6-kg-milk": "60 kg", "goat-fattening": "40 kg", "horse-moderate-work": "450 kg",
	}
	seen := map[string]bool{}
	for _, row := range herd.IntakeFigures() {
		assert.False(t, seen[row.Name], row.Name)
		seen[row.Name] = true
		for end, want := range map[units.End]units.Demand{units.Low: row.Intake.Low, units.High: row.Intake.High} {
			got, err := herd.MeasuredIntake(row.Name, end)
			require.NoError(t, err)
			assert.Equal(t, want, got, row.Name)
		}
		assert.True(t, row.Intake.Low > 0 && row.Intake.High >= row.Intake.Low, row.Name)
		assert.NotEmpty(t, row.Source, row.Name)
		assert.Contains(t, []string{"A", "B"}, row.Mark, row.Name)
		assert.NotEmpty(t, row.Kind.String(), row.Name)
		var weight units.LiveWeight
		if text := weights[row.Name]; text != "" {
			require.NoError(t, weight.UnmarshalText([]byte(text)))
		}
		assert.Equal(t, weight, row.Weight, row.Name)
		assert.Equal(t, row.Weight == 0 && row.Kind != herd.Sheep, row.Pasture, row.Name)
	}
	assert.Len(t, seen, 33)
	herd.IntakeFigures()[0].Name = "mine"
	assert.NotEqual(t, "mine", herd.IntakeFigures()[0].Name)
}

// TestIntakeByNameRefuses: an unknown name lists the known ones.
func TestIntakeByNameRefuses(t *testing.T) {
	got, err := herd.MeasuredIntake("unicorn", units.Low)
	assert.True(t, math.IsNaN(float64(got)))
	assert.ErrorContains(t, err, "domestic-goose")
	share, err := herd.HorseIntake("unicorn", herd.HorseTotal, units.Low)
	assert.True(t, math.IsNaN(float64(share)))
	assert.ErrorContains(t, err, "early-lactation")
	for _, feed := range []herd.HorseFeed{-1, 0, 4} {
		share, err = herd.HorseIntake("weanling", feed, units.Low)
		assert.True(t, math.IsNaN(float64(share)))
		assert.ErrorContains(t, err, "concentrate")
	}
}

// TestAppetite: the printed bounds, in the printed degrees.
func TestAppetite(t *testing.T) {
	for fahrenheit, want := range map[float64]herd.DairyAppetite{
		-40: herd.AppetiteWhole, 74.9: herd.AppetiteWhole, 75.1: herd.AppetiteLess, 75.5: herd.AppetiteLess,
		85.9: herd.AppetiteLess, 86.1: herd.AppetiteMuchLess, 86.5: herd.AppetiteMuchLess, 110: herd.AppetiteMuchLess,
	} {
		got, err := herd.Appetite(units.Fahrenheit(fahrenheit))
		require.NoError(t, err)
		assert.Equal(t, want, got, fahrenheit)
	}
	for _, odd := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		got, err := herd.Appetite(units.Temperature(odd))
		assert.Zero(t, got)
		assert.True(t, units.Impossible(err))
	}
}

// TestTablesOfNeedRise: a heavier ewe, goat or steer is never told to eat less,
// and a faster gain never asks for less.
func TestTablesOfNeedRise(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		weights := []float64{rapid.Float64Range(20, 600).Draw(t, "one"), rapid.Float64Range(20, 600).Draw(t, "other")}
		gains := []float64{rapid.Float64Range(0, 1.2).Draw(t, "gain"), rapid.Float64Range(0, 1.2).Draw(t, "other gain")}
		slices.Sort(weights)
		slices.Sort(gains)
		light, heavy := units.LiveWeight(weights[0]), units.LiveWeight(weights[1])
		slow, fast := units.LiveGain(gains[0]), units.LiveGain(gains[1])
		state := herd.EweState(rapid.IntRange(1, 3).Draw(t, "ewe"))
		goat := herd.GoatState(rapid.IntRange(1, 2).Draw(t, "goat"))
		rises(t, "ewe", first(herd.EweIntake(light, state)), first(herd.EweIntake(heavy, state)))
		rises(t, "goat", first(herd.GoatIntake(light, goat, slow)), first(herd.GoatIntake(heavy, goat, fast)))
		rises(t, "steer", first(herd.GrowingIntake(light, slow)), first(herd.GrowingIntake(heavy, fast)))
		rises(t, "bird", first(herd.BirdIntake(light)), first(herd.BirdIntake(heavy)))
		rises(t, "ewe's energy", first(herd.EweEnergy(light)), first(herd.EweEnergy(heavy)))
		table := herd.UpkeepTable(rapid.IntRange(1, 3).Draw(t, "table"))
		rises(t, "upkeep", first(herd.UpkeepNutrient(table, light)), first(herd.UpkeepNutrient(table, heavy)))
	})
}

// first drops a range error: the value beside it is what is asked for.
func first[Q ~float64](q Q, _ error) float64 { return float64(q) }

func rises(t *rapid.T, what string, less, more float64) {
	if !(more >= less*(1-1e-12)) {
		t.Fatalf("%s: %v then %v", what, less, more)
	}
}

// TestGoatTableFollowsEnergy: the dry matter of the goat table is near the
// maintenance energy of the same source in forage of 2.0 Mcal a kg, within 3 %.
func TestGoatTableFollowsEnergy(t *testing.T) {
	for _, pounds := range []float64{22, 45, 67, 112, 134, 179, 224} {
		weight := units.LiveWeight(pounds) * units.LivePound
		intake, err := herd.GoatIntake(weight, herd.GoatUpkeep, 0)
		require.NoError(t, err)
		energy, err := herd.GoatEnergy(weight, 0, 0)
		require.NoError(t, err)
		assert.InEpsilon(t, energy.MegacaloriesPerDay()/2, intake.KilogramsPerDay(), 0.03, pounds)
	}
}

// TestSourcesOfIntakeDisagree holds the disagreements that the docs tell.
func TestSourcesOfIntakeDisagree(t *testing.T) {
	older, err := herd.BeefIntake(55*units.Percent, herd.StageDry, herd.BeefHibberdThrift)
	require.NoError(t, err)
	newer, err := herd.BeefIntake(55*units.Percent, herd.StageDry, herd.BeefNebraska)
	require.NoError(t, err)
	assert.Greater(t, older, newer)
	table, err := herd.GrowingIntake(300, 0.5)
	require.NoError(t, err)
	equation, err := herd.CattleIntake(300, 0.5, 0, 1)
	require.NoError(t, err)
	assert.InDelta(t, 7.0, float64(table), 0.05)
	assert.InDelta(t, 6.1, float64(equation), 0.05)
	// the ewe's energy is 2.0 Mcal for each kg that she eats
	for _, weight := range []units.LiveWeight{50, 60, 70, 90} {
		eaten, err := herd.EweIntake(weight, herd.EweUpkeep)
		require.NoError(t, err)
		energy, err := herd.EweEnergy(weight)
		require.NoError(t, err)
		assert.InDelta(t, 2.0, energy.MegacaloriesPerDay()/eaten.KilogramsPerDay(), 1e-12)
	}
}

// A cow of 1,200 lb in milk eats hay of 55 % digestible nutrients: what do two
// guidelines say?
func ExampleBeefIntake() {
	for _, source := range []herd.BeefSource{herd.BeefHibberdThrift, herd.BeefNebraska} {
		share, err := herd.BeefIntake(55*units.Percent, herd.StageLactating, source)
		fmt.Println(source, share.In(units.US), err)
	}
	// Output:
	// hibberd thrift 2.5 % <nil>
	// nebraska 2.3 % <nil>
}

// How much of a hay with 60 % fibre can a beast eat?
func ExampleIntakeByFibre() {
	share, err := herd.IntakeByFibre(60*units.Percent, 1.2*units.Percent)
	fmt.Println(share.In(units.US), err)
	// Output:
	// 2 % <nil>
}

// How much of an alfalfa hay with 30 % acid detergent fibre is digested?
func ExampleDigestibleDryMatter() {
	share, err := herd.DigestibleDryMatter(30 * units.Percent)
	fmt.Printf("%.1f %% %v\n", share.Percent(), err)
	// Output:
	// 65.5 % <nil>
}

// And how does that hay rank?
func ExampleForageValue() {
	value, err := herd.ForageValue(65.5*units.Percent, 3*units.Percent, herd.IndexFeedValue)
	fmt.Printf("%.0f %v\n", value, err)
	// Output:
	// 152 <nil>
}

// What does a cow of 680 kg with 35 kg of milk at 3.5 % fat eat in the twelfth
// week?
func ExampleDairyIntakeByWeek() {
	milk, _ := herd.FatCorrectedMilk(35*units.MilkKilogramPerDay, 3.5*units.Percent)
	intake, err := herd.DairyIntakeByWeek(milk, 680*units.LiveKilogram, 12)
	fmt.Printf("%.1f kg %v\n", intake.KilogramsPerDay(), err)
	// Output:
	// 23.7 kg <nil>
}

// And the same cow by the fibre of her ration?
func ExampleDairyIntakeByFibre() {
	milk, _ := herd.FatCorrectedMilk(35*units.MilkKilogramPerDay, 3.5*units.Percent)
	intake, err := herd.DairyIntakeByFibre(680*units.LiveKilogram, milk, 35*units.Percent)
	fmt.Printf("%.1f kg %v\n", intake.KilogramsPerDay(), err)
	// Output:
	// 24.0 kg <nil>
}

// What does a ewe of 80 kg eat when she holds her weight, and one of 100 kg?
func ExampleEweIntake() {
	intake, err := herd.EweIntake(80*units.LiveKilogram, herd.EweUpkeep)
	fmt.Println(intake.In(units.Metric), err)
	intake, err = herd.EweIntake(100*units.LiveKilogram, herd.EweUpkeep)
	fmt.Println(intake.In(units.Metric), err)
	// Output:
	// 1.3 kg/day <nil>
	// 1.4 kg/day herd.EweIntake: weight is 100 kg, outside what NRC-1985-SHEEP covers (from 50 kg to 90 kg); the value is still given
}

// What does a doe of 112 lb eat before she kids?
func ExampleGoatIntake() {
	intake, err := herd.GoatIntake(112*units.LivePound, herd.GoatLatePregnancy, 0)
	fmt.Println(intake.In(units.US), err)
	// Output:
	// 3.69 lb/day <nil>
}

// What does a steer of 300 kg eat that gains three quarters of a kilogram?
func ExampleGrowingIntake() {
	intake, err := herd.GrowingIntake(300*units.LiveKilogram, 0.75*units.GainKilogramPerDay)
	fmt.Println(intake.In(units.Metric), err)
	// Output:
	// 7.4 kg/day <nil>
}

// What do cows of 600 kg eat on average when six in ten are in milk and eat a
// tenth more?
func ExampleCattleIntake() {
	intake, err := herd.CattleIntake(600*units.LiveKilogram, 0, 60*units.Percent, 1.1)
	fmt.Printf("%.2f kg %v\n", intake.KilogramsPerDay(), err)
	// Output:
	// 9.37 kg <nil>
}

// What does a hen of two kilograms eat?
func ExampleBirdIntake() {
	intake, err := herd.BirdIntake(2 * units.LiveKilogram)
	fmt.Printf("%.0f g %v\n", intake.GramsPerDay(), err)
	// Output:
	// 91 g <nil>
}

// What did a goose eat that left 160 droppings of 0.66 g?
func ExampleIntakeFromDroppings() {
	intake, err := herd.IntakeFromDroppings(160, 0.66*units.DryMatterGram, 21.7*units.Percent)
	fmt.Printf("%.0f g %v\n", intake.GramsPerDay(), err)
	// Output:
	// 135 g <nil>
}

// How much hay of 88 % dry matter holds 28 lb of dry matter?
func ExampleAsFed() {
	hay, err := herd.AsFed(28*units.DryMatterPound, 88*units.Percent)
	fmt.Printf("%.0f lb %v\n", hay.Pounds(), err)
	// Output:
	// 32 lb <nil>
}

// How much forage is a mare expected to eat early in lactation?
func ExampleHorseIntake() {
	for _, end := range []units.End{units.Low, units.High} {
		share, err := herd.HorseIntake("early-lactation", herd.HorseForage, end)
		fmt.Println(end, share.In(units.US), err)
	}
	// Output:
	// low 1 % <nil>
	// high 2 % <nil>
}

// What did geese and pregnant sows take from pasture where it was measured?
func ExampleMeasuredIntake() {
	for _, name := range []string{"domestic-goose", "sow-pregnant", "organic-sow-pregnant"} {
		low, _ := herd.MeasuredIntake(name, units.Low)
		high, err := herd.MeasuredIntake(name, units.High)
		fmt.Printf("%s %.0f to %.0f g %v\n", name, low.GramsPerDay(), high.GramsPerDay(), err)
	}
	// Output:
	// domestic-goose 240 to 420 g <nil>
	// sow-pregnant 2400 to 2400 g <nil>
	// organic-sow-pregnant 420 to 420 g <nil>
}

// Which figures were measured on pasture, and whose are they?
func ExampleIntakeFigures() {
	for _, row := range herd.IntakeFigures() {
		if row.Pasture && row.Kind.Bird() {
			fmt.Println(row.Name, row.Intake.High.In(units.Metric), row.Source, row.Mark)
		}
	}
	// Output:
	// broiler-on-pasture 0.0107 kg/day RIVERA-2007 A
	// barnacle-goose-wild 0.135 kg/day WILDFOWL-EBBINGE A
	// domestic-goose 0.42 kg/day GEESE-SPAIN B
}

// Do dairy cows eat less at 80 °F?
func ExampleAppetite() {
	appetite, err := herd.Appetite(units.Fahrenheit(80))
	fmt.Println(appetite, err)
	// Output:
	// less <nil>
}
