package forage_test

import (
	"fmt"
	"math"
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/forage"
	"example.org/soum/units"
)

var keyOfSource = regexp.MustCompile(`^[A-Z][A-Z0-9]*(-[A-Z0-9]+)+`)

// TestBloatPlants: no plant twice, each row what BloatOf gives, the table a copy.
func TestBloatPlants(t *testing.T) {
	seen := map[string]bool{}
	for _, row := range forage.BloatPlants() {
		assert.False(t, seen[row.Plant], row.Plant)
		seen[row.Plant] = true
		assert.Regexp(t, keyOfSource, row.Source)
		assert.Contains(t, []string{"A", "B"}, row.Mark)
		got, err := forage.BloatOf(row.Plant)
		require.NoError(t, err)
		assert.Equal(t, row.Tendency, got)
	}
	forage.BloatPlants()[0].Tendency = forage.TendencyNone
	assert.Equal(t, forage.TendencyHigh, forage.BloatPlants()[0].Tendency)
	_, err := forage.BloatOf("moss")
	assert.ErrorContains(t, err, "sainfoin")
}

// TestMorePotassiumMoreTetany: the risk never falls with potassium nor rises with
// calcium and magnesium, and equal shares of all three scale out of the ratio.
func TestMorePotassiumMoreTetany(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		share := func(name string) units.Fraction {
			return units.Fraction(rapid.Float64Range(0.0005, 0.04).Draw(t, name))
		}
		k, ca, mg, more := share("K"), share("Ca"), share("Mg"), units.Fraction(rapid.Float64Range(1, 5).Draw(t, "more"))
		base, err := forage.TetanyRatio(k, ca, mg)
		require.NoError(t, err)
		for _, higher := range [][3]units.Fraction{{k * more, ca, mg}, {k, ca / more, mg}, {k, ca, mg / more}} {
			got, err := forage.TetanyRatio(higher[0], higher[1], higher[2])
			require.NoError(t, err)
			assert.GreaterOrEqual(t, got, base*(1-1e-12))
		}
		scaled, err := forage.TetanyRatio(k*more, ca*more, mg*more)
		require.NoError(t, err)
		assert.InEpsilon(t, base, scaled, 1e-12)
	})
}

// How ready is white clover to bloat my cattle?
func ExampleBloatOf() {
	clover, _ := forage.BloatOf("white-clover")
	trefoil, _ := forage.BloatOf("birdsfoot-trefoil")
	fmt.Println(clover, trefoil)
	// Output: high none
}

// Which plants are said not to bloat?
func ExampleBloatPlants() {
	for _, row := range forage.BloatPlants() {
		if row.Tendency == forage.TendencyNone {
			fmt.Println(row.Plant)
		}
	}
	// Output:
	// birdsfoot-trefoil
	// sainfoin
	// cicer-milkvetch
	// fenugreek
	// hairy-vetch
	// crown-vetch
	// purple-prairie-clover
}

// The laboratory found 3 % potassium, 0.35 % calcium, 0.12 % magnesium.
func ExampleTetanyRatio() {
	ratio, err := forage.TetanyRatio(3*units.Percent, 0.35*units.Percent, 0.12*units.Percent)
	fmt.Printf("%.1f %v\n", ratio, err)
	// Output: 2.8 <nil>
}

// Is that a risk of grass tetany?
func ExampleTetanyRisk() {
	risk, err := forage.TetanyRisk(3*units.Percent, 0.35*units.Percent, 0.12*units.Percent)
	fmt.Println(risk, err)
	// Output: raised <nil>
}

// Sixty in a hundred of my fescue plants carry the fungus: what do steers lose?
func ExampleEndophyteLoss() {
	loss, err := forage.EndophyteLoss(60 * units.Percent)
	fmt.Println(loss.In(units.Metric), err)
	// Output: 0.27 kg/day <nil>
}

// TestNitrateSteps: every scale begins at nothing in each of its forms and climbs;
// shares fall or stay; the table is a copy.
func TestNitrateSteps(t *testing.T) {
	steps := forage.NitrateSteps()
	for i, step := range steps {
		key := fmt.Sprint(step.Scale, step.Form, step.From)
		assert.Regexp(t, keyOfSource, step.Source, key)
		assert.Contains(t, []string{"A", "B"}, step.Mark, key)
		assert.LessOrEqual(t, step.Others.Low, step.Others.High, key)
		assert.LessOrEqual(t, step.Pregnant.High, step.Others.High, key)
		if i == 0 || steps[i-1].Scale != step.Scale || steps[i-1].Form != step.Form {
			assert.Zero(t, step.From, key)
			continue
		}
		assert.Greater(t, step.From, steps[i-1].From, key)
		if step.Told {
			assert.LessOrEqual(t, step.Others.High, steps[i-1].Others.High, key)
			assert.LessOrEqual(t, step.Pregnant.High, steps[i-1].Pregnant.High, key)
		}
	}
	steps[0].Level = forage.LevelDangerous
	assert.Equal(t, forage.LevelSafe, forage.NitrateSteps()[0].Level)
}

// TestNitrateRefuses: what is not told is said, and words that are none are refused.
func TestNitrateRefuses(t *testing.T) {
	feed := 3000 * units.PartPerMillion
	for _, scale := range []forage.NitrateScale{forage.NitrateByServitech, forage.NitrateByOklahoma, forage.NitrateByManitoba} {
		share, err := forage.NitrateRation(feed, forage.NitrateNitrogen, scale, forage.CarryingNone, units.High)
		assert.True(t, math.IsNaN(float64(share)))
		assert.ErrorContains(t, err, "tells no share of the ration")
		assert.ErrorContains(t, err, "one of: clemson, dairyland")
	}
	_, err := forage.NitrateClass(feed, 0, forage.NitrateByClemson)
	refuses(t, err, "form")
	assert.ErrorContains(t, err, "nitrogen, ion, potassium")
	_, err = forage.NitrateClass(feed, forage.NitrateIon, 99)
	refuses(t, err, "scale")
	_, err = forage.NitrateRation(feed, forage.NitrateIon, forage.NitrateByClemson, 0, units.High)
	refuses(t, err, "stock")
	_, err = forage.NitrateAs(feed, 0, forage.NitrateIon)
	assert.True(t, units.Impossible(err))
	_, err = forage.NitrateClass(units.Concentration(math.NaN()), forage.NitrateIon, forage.NitrateByClemson)
	assert.True(t, units.Impossible(err))
}

// TestNitrateThereAndBack: a change of form and back is the same amount, and more
// nitrate is never a larger share of the ration.
func TestNitrateThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		amount := units.Concentration(rapid.Float64Range(0, 0.05).Draw(t, "amount"))
		from := forage.NitrateForm(rapid.IntRange(1, 3).Draw(t, "from"))
		to := forage.NitrateForm(rapid.IntRange(1, 3).Draw(t, "to"))
		there, err := forage.NitrateAs(amount, from, to)
		require.NoError(t, err)
		back, err := forage.NitrateAs(there, to, from)
		require.NoError(t, err)
		assert.InDelta(t, float64(amount), float64(back), 1e-12*float64(amount))

		stock := forage.Carrying(rapid.IntRange(1, 2).Draw(t, "stock"))
		less, err := forage.NitrateRation(amount, from, forage.NitrateByClemson, stock, units.High)
		require.NoError(t, err)
		more, err := forage.NitrateRation(amount*1.1, from, forage.NitrateByClemson, stock, units.High)
		require.NoError(t, err)
		assert.LessOrEqual(t, more, less)

		low := units.Concentration(rapid.Float64Range(0, 0.001).Draw(t, "low"))
		high := low + units.Concentration(rapid.Float64Range(1e-5, 0.01).Draw(t, "over"))
		wanted := low + (high-low)*units.Concentration(rapid.Float64Range(0, 1).Draw(t, "wanted"))
		share, err := forage.NitrateDilution(high, low, wanted)
		require.NoError(t, err)
		assert.InEpsilon(t, 1+float64(wanted), 1+float64(high)*float64(share)+float64(low)*(1-float64(share)), 1e-12)
	})
}

// The sheet says 6,200 ppm of nitrate. What is that as nitrate nitrogen?
func ExampleNitrateAs() {
	nitrogen, err := forage.NitrateAs(6200*units.PartPerMillion, forage.NitrateIon, forage.NitrateNitrogen)
	fmt.Printf("%.0f ppm %v\n", nitrogen.PartsPerMillion(), err)
	// Output: 1400 ppm <nil>
}

// May cows in calf eat oat hay with 1,800 ppm of nitrate nitrogen?
func ExampleNitrateClass() {
	for _, scale := range []forage.NitrateScale{forage.NitrateByClemson, forage.NitrateByDairyland, forage.NitrateByServitech} {
		level, _ := forage.NitrateClass(1800*units.PartPerMillion, forage.NitrateNitrogen, scale)
		share, _ := forage.NitrateRation(1800*units.PartPerMillion, forage.NitrateNitrogen, scale, forage.CarryingYoung, units.High)
		fmt.Println(scale, level, share.In(units.Metric))
	}
	// Output:
	// clemson limited 50 %
	// dairyland pregnant limited 50 %
	// servitech medium 25 %
}

// How much of the ration may it be for steers?
func ExampleNitrateRation() {
	share, err := forage.NitrateRation(2500*units.PartPerMillion, forage.NitrateNitrogen, forage.NitrateByClemson, forage.CarryingNone, units.Low)
	fmt.Println(share.In(units.US), err)
	// Output: 35 % <nil>
}

// Who counts what as safe?
func ExampleNitrateSteps() {
	for _, step := range forage.NitrateSteps() {
		if step.Form == forage.NitrateNitrogen && step.From > 0 && step.Level <= forage.LevelPregnantLimited {
			fmt.Println(step.Scale, step.From.In(units.US), step.Level)
		}
	}
	// Output:
	// clemson 1,000 ppm pregnant limited
	// dairyland 1,000 ppm pregnant limited
}

// How much of a mixture may hay with 4,000 ppm be, with hay of 500, for 1,500?
func ExampleNitrateDilution() {
	share, err := forage.NitrateDilution(4000*units.PartPerMillion, 500*units.PartPerMillion, 1500*units.PartPerMillion)
	fmt.Println(share.In(units.US), err)
	// Output: 28.6 % <nil>
}

// How much hay with 2,000 ppm keeps a cow of 1,200 lb under the safe load?
func ExampleNitrateFeed() {
	feed, err := forage.NitrateFeed(2000*units.PartPerMillion, 1200*units.LivePound)
	fmt.Println(feed.In(units.Metric), err)
	// Output: 6 kg/day <nil>
}

// TestPrussicRows: no row twice, spans the right way round, copies; the strictest
// rules are the highest of the rows.
func TestPrussicRows(t *testing.T) {
	seen := map[string]bool{}
	for _, row := range forage.PrussicHeights() {
		key := fmt.Sprint(row.Crop, row.By)
		assert.False(t, seen[key], key)
		seen[key] = true
		assert.True(t, 0 < row.Height.Low && row.Height.Low <= row.Height.High, key)
		assert.Regexp(t, keyOfSource, row.Source, key)
		assert.Contains(t, []string{"A", "B"}, row.Mark, key)
		risk, err := forage.PrussicRisk(row.Crop, row.Height.High*0.999, 99)
		require.NoError(t, err)
		assert.Equal(t, forage.PrussicShort, risk, key)
	}
	longest := units.Days(0)
	for _, row := range forage.PrussicWaits() {
		key := fmt.Sprint(row.Frost, row.By)
		assert.False(t, seen[key], key)
		seen[key] = true
		assert.True(t, 0 < row.Wait.Low && row.Wait.Low <= row.Wait.High, key)
		assert.Regexp(t, keyOfSource, row.Source, key)
		assert.Contains(t, []string{"A", "B"}, row.Mark, key)
		longest = max(longest, row.Wait.High)
	}
	left, err := forage.PrussicDaysLeft(0)
	require.NoError(t, err)
	assert.Equal(t, longest, left)
	forage.PrussicHeights()[0].Height.Low, forage.PrussicWaits()[0].Wait.Low = 0, 0
	assert.NotZero(t, forage.PrussicHeights()[0].Height.Low)
	assert.NotZero(t, forage.PrussicWaits()[0].Wait.Low)
}

// TestPrussicRefuses: a source without the figure is told which have it.
func TestPrussicRefuses(t *testing.T) {
	height, err := forage.PrussicHeight(forage.PrussicSorghum, forage.PrussicByIllinois, units.Low)
	assert.True(t, math.IsNaN(float64(height)))
	assert.ErrorContains(t, err, "nebraska")
	days, err := forage.PrussicWait(forage.FrostLight, forage.PrussicByDairy, units.Low)
	assert.True(t, math.IsNaN(float64(days)))
	assert.ErrorContains(t, err, "illinois")
	_, err = forage.PrussicRisk(0, 1, 20)
	refuses(t, err, "crop")
	_, err = forage.CyanideClass(1, 0)
	refuses(t, err, "basis")
}

// TestPrussicIsMonotone: taller or later is never a worse class.
func TestPrussicIsMonotone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		crop := forage.PrussicCrop(rapid.IntRange(1, 3).Draw(t, "crop"))
		height := units.Height(rapid.Float64Range(0, 2).Draw(t, "height"))
		since := units.Days(rapid.Float64Range(0, 40).Draw(t, "since"))
		more := rapid.Float64Range(0, 20).Draw(t, "more")
		base, err := forage.PrussicRisk(crop, height, since)
		require.NoError(t, err)
		taller, _ := forage.PrussicRisk(crop, height+units.Height(more), since)
		later, _ := forage.PrussicRisk(crop, height, since+units.Days(more))
		assert.LessOrEqual(t, taller, base)
		assert.LessOrEqual(t, later, base)
	})
}

// How high must sudangrass stand before cows go in?
func ExamplePrussicHeight() {
	height, err := forage.PrussicHeight(forage.PrussicSudangrass, forage.PrussicByNebraska, units.High)
	fmt.Println(height.In(units.US), err)
	// Output: 18 in <nil>
}

// How long after a killing frost, and who says so?
func ExamplePrussicWait() {
	for _, by := range []forage.PrussicSource{forage.PrussicByNebraska, forage.PrussicByIllinois, forage.PrussicByDrovers} {
		days, _ := forage.PrussicWait(forage.FrostKilling, by, units.High)
		fmt.Println(by, days.In(units.US))
	}
	// Output:
	// nebraska 7 days
	// illinois 10 days
	// drovers 14 days
}

// Who prints which height for a cross of sorghum and sudangrass?
func ExamplePrussicHeights() {
	for _, row := range forage.PrussicHeights() {
		if row.Crop == forage.PrussicSorghumSudangrass {
			fmt.Println(row.By, row.Height.Low.In(units.US), row.Mark)
		}
	}
	// Output:
	// nebraska 24 in A
	// illinois 24 in A
	// press 30 in B
	// drovers 15 in B
}

// Which waits are printed after a light frost?
func ExamplePrussicWaits() {
	for _, row := range forage.PrussicWaits() {
		if row.Frost == forage.FrostLight {
			fmt.Println(row.By, row.Wait.Low.In(units.US), "to", row.Wait.High.In(units.US))
		}
	}
	// Output:
	// nebraska 7 days to 7 days
	// illinois 4 days to 5 days
	// drovers 14 days to 14 days
}

// It froze five days ago: how many more days do I wait?
func ExamplePrussicDaysLeft() {
	left, err := forage.PrussicDaysLeft(5)
	fmt.Println(left.In(units.US), err)
	// Output: 9 days <nil>
}

// May sheep go into sudangrass of 30 in, five days after the frost?
func ExamplePrussicRisk() {
	risk, err := forage.PrussicRisk(forage.PrussicSudangrass, 30*units.HeightInch, 5)
	fmt.Println(risk, err)
	// Output: frosted <nil>
}

// The laboratory found 600 ppm of prussic acid in the dry matter.
func ExampleCyanideClass() {
	class, err := forage.CyanideClass(600*units.PartPerMillion, forage.BasisDry)
	fmt.Println(class, err)
	// Output: toxic <nil>
}

// A cherry limb is down: how few leaves can kill a ewe of 150 lb?
func ExampleCherryDose() {
	dose, err := forage.CherryDose(150*units.LivePound, 0)
	fmt.Printf("%.1f oz %v\n", dose.Ounces(), err)
	// Output: 2.4 oz <nil>
}

// TestHazardLimits: the printed limits, and each class on either side of its own.
func TestHazardLimits(t *testing.T) {
	limits := forage.HazardLimits()
	assert.Equal(t, forage.StandLimits{Legume: 50 * units.Percent, Potassium: 2.2, Magnesium: 0.2 * units.Percent}, limits)
	for legume, want := range map[units.Fraction]forage.Bloat{limits.Legume: forage.BloatLow, limits.Legume + 1e-9: forage.BloatRaised} {
		got, err := forage.BloatRisk(legume)
		require.NoError(t, err)
		assert.Equal(t, want, got)
	}
	for magnesium, want := range map[units.Fraction]forage.Tetany{limits.Magnesium: forage.TetanyRaised, limits.Magnesium + 1e-9: forage.TetanyLow} {
		got, err := forage.TetanyRisk(1*units.Percent, 0.5*units.Percent, magnesium)
		require.NoError(t, err)
		assert.Equal(t, want, got)
	}
	// 1 % calcium and as much magnesium are 1321.64 mEq/kg: 2.2 times that of potassium is on the limit
	potassium := units.Fraction(2.2 * 1321.64 / 255.74 / 100)
	for p, want := range map[units.Fraction]forage.Tetany{potassium - 1e-9: forage.TetanyLow, potassium + 1e-9: forage.TetanyRaised} {
		got, err := forage.TetanyRisk(p, 1*units.Percent, 1*units.Percent)
		require.NoError(t, err)
		assert.Equal(t, want, got)
	}
}

// Above what share of clover do I have to think of bloat?
func ExampleHazardLimits() {
	fmt.Println(forage.HazardLimits().Legume.In(units.Metric))
	// Output: 50 %
}
