package forage_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/integrate/quad"
	"pgregory.net/rapid"

	"example.org/soum/forage"
	"example.org/soum/units"
)

// stand draws leave < turn-in < ceiling of a pasture, in kg/m².
func stand(t *rapid.T) (leave, turnIn, ceiling units.Yield) {
	ceiling = units.Yield(rapid.Float64Range(0.1, 1.5).Draw(t, "ceiling"))
	low := rapid.Float64Range(0.02, 0.9).Draw(t, "leave/ceiling")
	high := low + (0.97-low)*rapid.Float64Range(0.05, 1).Draw(t, "turn-in")
	return units.Yield(low) * ceiling, units.Yield(high) * ceiling, ceiling
}

func value[Q ~float64](q Q, err error) func(t require.TestingT) Q {
	return func(t require.TestingT) Q {
		require.NoError(t, err)
		return q
	}
}

func TestDaysToRegrowTurnsRegrownRound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		start, target, ceiling := stand(t)
		peak := units.Growth(rapid.Float64Range(1, 150).Draw(t, "peak")) * units.KilogramPerHectareDay
		days := value(forage.DaysToRegrow(start, target, ceiling, peak))(t)
		back := value(forage.Regrown(start, ceiling, peak, days))(t)
		assert.InEpsilon(t, float64(target), float64(back), 1e-9)
	})
}

func TestRegrownStepsAddUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		start, _, ceiling := stand(t)
		peak := units.Growth(rapid.Float64Range(0, 150).Draw(t, "peak")) * units.KilogramPerHectareDay
		days := rapid.IntRange(1, 60).Draw(t, "days")
		mass, before := start, start
		for range days {
			mass = value(forage.Regrown(mass, ceiling, peak, 1))(t)
			assert.GreaterOrEqual(t, float64(mass), float64(before)*(1-1e-12))
			assert.LessOrEqual(t, float64(mass), float64(ceiling))
			before = mass
		}
		assert.InEpsilon(t, float64(value(forage.Regrown(start, ceiling, peak, units.Days(days)))(t)), float64(mass), 1e-9)
	})
}

// Grazed from the turn-in mass down to the mass left, a stand that grows with
// PeakGrowth grows the mean that was given: the identity that MeanToPeak is for.
func TestMeanGrowthIsKept(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		leave, turnIn, ceiling := stand(t)
		mean := units.Growth(rapid.Float64Range(1, 120).Draw(t, "mean")) * units.KilogramPerHectareDay
		share := value(forage.MeanToPeak(leave, turnIn, ceiling))(t)
		peak := value(forage.PeakGrowth(mean, share))(t)
		days := value(forage.DaysToRegrow(leave, turnIn, ceiling, peak))(t)
		assert.InEpsilon(t, float64(turnIn-leave)/float64(mean), float64(days), 1e-9)
		assert.InEpsilon(t, float64(mean), float64(value(forage.MeanGrowth(turnIn, leave, days))(t)), 1e-9)
	})
}

// The mean over time is the mass gained over the time it takes, which is the
// integral of 1 ÷ growth over the mass; gonum's quadrature knows nothing of the
// logarithms.
func TestMeanToPeakAgreesWithQuadrature(t *testing.T) {
	for _, c := range [][3]float64{{1200, 2800, 4000}, {200, 600, 4000}, {500, 3500, 4000}, {900, 1000, 6000}} {
		leave, turnIn, ceiling := c[0], c[1], c[2]
		slow := func(v float64) float64 { return 1 / (4 * v / ceiling * (1 - v/ceiling)) } // fastest growth 1
		days := quad.Fixed(slow, leave, turnIn, 200, quad.Legendre{}, 0)
		share := value(forage.MeanToPeak(units.Yield(leave), units.Yield(turnIn), units.Yield(ceiling)))(t)
		assert.InEpsilon(t, (turnIn-leave)/days, share, 1e-9)
	}
}

func TestMeanToPeakIsAShare(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		leave, turnIn, ceiling := stand(t)
		share := value(forage.MeanToPeak(leave, turnIn, ceiling))(t)
		assert.True(t, share > 0 && share <= 1+1e-9, "%v", share)
		scaled := value(forage.MeanToPeak(3*leave, 3*turnIn, 3*ceiling))(t)
		assert.InEpsilon(t, share, scaled, 1e-9)
	})
}

// Two lengths of 31 and 28 days grow the same month, 2.8 ÷ 3.1 as fast.
func TestMonthGrowthFillsTheMonth(t *testing.T) {
	long := value(forage.MonthGrowth(2*units.ShortTonPerAcre, 45*units.Percent, 31))(t)
	assert.InEpsilon(t, 0.45*4000, 31*long.PoundsPerAcreDay(), 1e-12)
	short := value(forage.MonthGrowth(2*units.ShortTonPerAcre, 45*units.Percent, 28))(t)
	assert.InEpsilon(t, float64(long)*31/28, float64(short), 1e-12)
}

func TestHeightOfTurnsStandingRound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		height := units.Height(rapid.Float64Range(0.001, 2).Draw(t, "height"))
		density := units.Density(rapid.Float64Range(0.1, 20).Draw(t, "density"))
		yield := value(forage.Standing(height, density))(t)
		assert.InEpsilon(t, float64(height), float64(value(forage.HeightOf(yield, density))(t)), 1e-12)
		all := value(forage.Available(height, 0, density))(t)
		assert.Equal(t, yield, all)
	})
}

func TestUsableShareNeverRises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		stay := units.Days(rapid.Float64Range(0.01, 20).Draw(t, "stay"))
		longer := stay + units.Days(rapid.Float64Range(0, 10).Draw(t, "more"))
		short, err := forage.UsableShare(stay)
		assert.False(t, units.Impossible(err))
		long, _ := forage.UsableShare(longer)
		assert.LessOrEqual(t, long, short)
	})
}

func TestUsableScalesWithLand(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		yield := units.Yield(rapid.Float64Range(0, 2).Draw(t, "yield"))
		area := units.Area(rapid.Float64Range(0, 1e6).Draw(t, "area"))
		use := units.Fraction(rapid.Float64Range(0, 1).Draw(t, "use"))
		one, two := value(forage.Usable(yield, area, use))(t), value(forage.Usable(yield, 2*area, use))(t)
		assert.InDelta(t, 2*float64(one), float64(two), 1e-12*math.Abs(float64(two))+1e-300)
	})
}
