package forage_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/forage"
	"example.org/soum/grazing"
	"example.org/soum/units"
)

func TestUseRows(t *testing.T) {
	type key struct {
		system forage.GrazingSystem
		by     forage.UseSource
	}
	seen := map[key]bool{}
	for _, r := range forage.UseRows() {
		assert.False(t, seen[key{r.System, r.By}])
		seen[key{r.System, r.By}] = true
		assert.True(t, 0 < r.Share.Low && r.Share.Low <= r.Share.High && r.Share.High <= 1)
		assert.Equal(t, r.Share.Low, value(forage.SystemUse(r.System, r.By, units.Low))(t))
		assert.Contains(t, []string{"A", "B"}, r.Mark)
		assert.NotEmpty(t, r.Source)
		assert.NotEmpty(t, r.Of)
	}
	forage.UseRows()[0].Share.Low = 77
	assert.Equal(t, 30*units.Percent, forage.UseRows()[0].Share.Low)
	got, err := forage.SystemUse(forage.SystemHay, forage.UseByCornell, units.Low)
	assert.True(t, math.IsNaN(float64(got)))
	assert.ErrorContains(t, err, "north dakota")
	for _, system := range []forage.GrazingSystem{0, 11} {
		_, err = forage.SystemUse(system, forage.UseByCornell, units.Low)
		assert.ErrorContains(t, err, "green chop")
	}
	for _, grass := range []forage.RangeGrass{0, 4} {
		_, err = forage.MinimumResidue(grass, units.Low)
		assert.ErrorContains(t, err, "tallgrass")
	}
}

func TestMoreTakenStopsMoreRoots(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		test := forage.RootTest(rapid.IntRange(1, 4).Draw(t, "test"))
		removed := units.Fraction(rapid.Float64Range(0, 1).Draw(t, "removed"))
		more := removed + units.Fraction(rapid.Float64Range(0, 1).Draw(t, "more"))*(1-removed)
		less, _ := forage.RootStop(removed, test)
		stopped, _ := forage.RootStop(more, test)
		assert.LessOrEqual(t, float64(less), float64(stopped)+1e-12)
		assert.True(t, less >= 0 && stopped <= 1+1e-12)
	})
}

// What is eaten and what is trampled are all that goes.
func TestTrampledAndUsedAreAll(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		available := units.Yield(rapid.Float64Range(0, 1).Draw(t, "available"))
		use := units.Fraction(rapid.Float64Range(0, 1).Draw(t, "use"))
		lost := value(forage.Trampled(available, use))(t)
		eaten := value(forage.Usable(available, 1, use))(t)
		assert.InDelta(t, float64(available), float64(lost)+float64(eaten), 1e-12)
	})
}

// Three paddocks of 1, 2 and 1 ha stand at 2,000, 2,600 and 1,600 kg/ha; 80 kg a day,
// 20 days, 1,500 left. Turn-in 80 ÷ 4 × 20 + 1,500 = 1,900. The line: the middle of the
// 2 ha lies a quarter of the way (1,500 + 400 × 3/4 = 1,800), that of the first ha at
// 2.5 of 4 (1,500 + 400 × 3/8 = 1,650), of the last at 3.5 of 4 (1,550). Mean (2,000 +
// 5,200 + 1,600) ÷ 4 = 2,200 against 1,700: 500 × 4 = 2,000 kg too much.
func TestLineOfCoversByHand(t *testing.T) {
	const ha, kg = units.Hectare, units.KilogramPerHectare
	walk := []forage.PaddockCover{{"a", 1 * ha, 2000 * kg}, {"b", 2 * ha, 2600 * kg}, {"c", 1 * ha, 1600 * kg}}
	line, err := forage.LineOfCovers(walk, 80*units.KilogramPerDay, 20*units.Day, 1500*kg)
	require.NoError(t, err)
	assert.InDelta(t, 2200, line.Mean.KilogramsPerHectare(), 1e-6)
	assert.InDelta(t, 1700, line.TargetMean.KilogramsPerHectare(), 1e-6)
	assert.InDelta(t, 1900, line.TurnIn.KilogramsPerHectare(), 1e-6)
	assert.InDelta(t, 1500, line.Residual.KilogramsPerHectare(), 1e-6)
	assert.InDelta(t, 4, line.Area.Hectares(), 1e-9)
	assert.InDelta(t, 2000, float64(line.Surplus), 1e-6)
	want := []struct {
		paddock                     string
		area, cover, target, beyond float64
	}{{"b", 2, 2600, 1800, 800}, {"a", 1, 2000, 1650, 350}, {"c", 1, 1600, 1550, 50}}
	require.Len(t, line.Places, 3)
	for i, w := range want {
		p := line.Places[i]
		assert.Equal(t, w.paddock, p.Paddock)
		assert.InDelta(t, w.area, p.Area.Hectares(), 1e-9)
		assert.InDelta(t, w.cover, p.Cover.KilogramsPerHectare(), 1e-6)
		assert.InDelta(t, w.target, p.Target.KilogramsPerHectare(), 1e-6)
		assert.InDelta(t, w.beyond, p.Surplus.KilogramsPerHectare(), 1e-6)
	}
	assert.Equal(t, "a", walk[0].Paddock, "the caller's walk stays as it was")
}

// However the land is cut up, the targets' mean by area is the printed mean cover
// of a rotation, and the surpluses add up to the whole.
func TestLineOfCoversKeepsTheMean(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var walk []forage.PaddockCover
		for range rapid.IntRange(1, 20).Draw(t, "paddocks") {
			walk = append(walk, forage.PaddockCover{Area: units.Area(rapid.Float64Range(100, 1e5).Draw(t, "area")), Cover: units.Yield(rapid.Float64Range(0, 0.5).Draw(t, "cover"))})
		}
		demand := units.Demand(rapid.Float64Range(0, 500).Draw(t, "demand"))
		line, err := forage.LineOfCovers(walk, demand, 25, 0.15)
		require.NoError(t, err)
		targets, surplus := 0.0, 0.0
		for i, p := range line.Places {
			targets += float64(p.Target) * float64(p.Area)
			surplus += float64(p.Surplus) * float64(p.Area)
			if i > 0 {
				assert.LessOrEqual(t, p.Cover, line.Places[i-1].Cover)
				assert.LessOrEqual(t, p.Target, line.Places[i-1].Target)
			}
		}
		printed, err := grazing.BalanceCover(units.HeadRate(1/float64(line.Area)), demand, 25, 0.15)
		require.NoError(t, err)
		assert.InEpsilon(t, float64(printed), targets/float64(line.Area), 1e-9)
		assert.InEpsilon(t, float64(printed), float64(line.TargetMean), 1e-9)
		assert.InDelta(t, float64(line.Surplus), surplus, 1e-6)
		assert.InDelta(t, surplus, (float64(line.Mean)-targets/float64(line.Area))*float64(line.Area), 1e-6)
	})
}

func TestLineOfCoversRefuses(t *testing.T) {
	good := forage.PaddockCover{Paddock: "top", Area: 1, Cover: 0.2}
	for _, c := range []struct {
		walk     []forage.PaddockCover
		demand   units.Demand
		rotation units.Days
		residual units.Yield
		says     string
	}{
		{nil, 1, 1, 0.1, "number of paddocks"},
		{[]forage.PaddockCover{good, {Area: 0, Cover: 1}}, 1, 1, 0.1, "area of paddock 2"},
		{[]forage.PaddockCover{good, {Paddock: "low", Area: 1, Cover: -0.1}}, 1, 1, 0.1, "cover of low is -1000 kg/ha"},
		{[]forage.PaddockCover{good, {Paddock: "low", Area: -10000, Cover: 0.1}}, 1, 1, 0.1, "area of low is -1 ha"},
		{[]forage.PaddockCover{good, {Paddock: "low", Area: 1, Cover: units.Yield(math.NaN())}}, 1, 1, 0.1, "cover of low"},
		{[]forage.PaddockCover{{Area: math.MaxFloat64, Cover: 10}}, 1, 1, 0.1, "LineOfCovers"},
		{[]forage.PaddockCover{good}, -1, 1, 0.1, "demand"},
		{[]forage.PaddockCover{good}, 1, -1, 0.1, "rotation"},
		{[]forage.PaddockCover{good}, 1, 1, -0.1, "residual"},
	} {
		line, err := forage.LineOfCovers(c.walk, c.demand, c.rotation, c.residual)
		assert.True(t, units.Impossible(err), c.says)
		assert.ErrorContains(t, err, c.says)
		assert.Empty(t, line.Places)
	}
}
