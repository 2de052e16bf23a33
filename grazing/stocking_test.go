package grazing_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/forage"
	"example.org/soum/grazing"
	"example.org/soum/internal/check"
	"example.org/soum/units"
)

func TestPrintedTables(t *testing.T) { check.Tables(t) }

func TestFormulasAreAsDocumented(t *testing.T) { check.Formulas(t, "grazing") }

// drawn gives a quantity of some units between two bounds.
func drawn[Q ~float64](t *rapid.T, name string, low, high float64, unit Q) Q {
	return Q(rapid.Float64Range(low, high).Draw(t, name)) * unit
}

// nearly holds two quantities to a relative 1e-9.
func nearly[Q ~float64](t require.TestingT, want, got Q) {
	require.InDelta(t, 0, float64(got-want), 1e-9*math.Max(math.Abs(float64(want)), math.Abs(float64(got))))
}

// stayDrawn is one stay at random.
type stayDrawn struct {
	demand    units.Demand
	days      units.Days
	available units.Yield
	use       units.Fraction
}

func drawStay(t *rapid.T) stayDrawn {
	return stayDrawn{
		demand:    drawn(t, "demand", 1, 5000, units.PoundPerDay),
		days:      drawn(t, "days", 0.25, 60, units.Day),
		available: drawn(t, "available", 100, 5000, units.PoundPerAcre),
		use:       drawn(t, "use", 5, 100, units.Percent),
	}
}

func TestStayAreaAndStayDaysAreInverse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawStay(t)
		area, err := grazing.StayArea(s.demand, s.days, s.available, s.use)
		require.NoError(t, err)
		days, err := grazing.StayDays(area, s.available, s.use, s.demand)
		require.NoError(t, err)
		nearly(t, s.days, days)
	})
}

func TestStayAreaGrowsWithDemandAndResidual(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawStay(t)
		more := s.demand * units.Demand(rapid.Float64Range(1.001, 3).Draw(t, "more"))
		area, err := grazing.StayArea(s.demand, s.days, s.available, s.use)
		require.NoError(t, err)
		larger, err := grazing.StayArea(more, s.days, s.available, s.use)
		require.NoError(t, err)
		assert.Greater(t, larger, area)

		residual := drawn(t, "residual", 1, 5, units.HeightInch)
		closer, err := forage.Available(8*units.HeightInch, residual, 250*units.PoundPerAcreInch)
		require.NoError(t, err)
		laxer, err := forage.Available(8*units.HeightInch, residual+units.HeightInch, 250*units.PoundPerAcreInch)
		require.NoError(t, err)
		short, err := grazing.StayArea(s.demand, s.days, closer, s.use)
		require.NoError(t, err)
		long, err := grazing.StayArea(s.demand, s.days, laxer, s.use)
		require.NoError(t, err)
		assert.Greater(t, long, short)
	})
}

func TestDoublingTheHerdDoublesItsLand(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawStay(t)
		one, err := grazing.StayArea(s.demand, s.days, s.available, s.use)
		require.NoError(t, err)
		two, err := grazing.StayArea(2*s.demand, s.days, s.available, s.use)
		require.NoError(t, err)
		assert.Equal(t, 2*one, two) // a factor of two costs no rounding
	})
}

func TestStayHeadEatsWhatStayAreaGives(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawStay(t)
		weight := drawn(t, "weight", 50, 1800, units.LivePound)
		intake := drawn(t, "intake", 1, 5, units.Percent)
		head := rapid.Float64Range(1, 400).Draw(t, "head")
		demand := units.Demand(head * float64(weight) * float64(intake))
		area, err := grazing.StayArea(demand, s.days, s.available, s.use)
		require.NoError(t, err)
		got, err := grazing.StayHead(area, s.available, s.use, weight, intake, s.days)
		require.NoError(t, err)
		nearly(t, head, got)
	})
}

func TestLandPerUseAndUsePerLandAreInverse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		area := drawn(t, "area", 0.1, 1000, units.Acre)
		animals := drawn(t, "animals", 0.1, 500, units.AnimalUnit)
		days := drawn(t, "days", 1, 360, units.Day)
		land, err := grazing.LandPerUse(area, animals, days)
		require.NoError(t, err)
		rate, err := grazing.UsePerLand(area, animals, days)
		require.NoError(t, err)
		nearly(t, 1, float64(land)*float64(rate))
		use, err := grazing.Use(rate, area)
		require.NoError(t, err)
		nearly(t, float64(animals)*float64(days), float64(use))
		back, err := grazing.DayArea(animals, days, rate)
		require.NoError(t, err)
		nearly(t, area, back)
	})
}

// A cow-day is what its intake makes it: height to cow-days and height to dry
// matter to days are one road.
func TestCowDaysFollowFromTheGrassAvailable(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		height := drawn(t, "height", 6, 12, units.HeightInch)
		density := drawn(t, "density", 100, 400, units.PoundPerAcreInch)
		intake := drawn(t, "intake", 20, 35, units.PoundPerDay)
		perHeight, err := grazing.DaysPerHeight(density, intake)
		require.NoError(t, err)
		cowDays, err := grazing.DaysPerLand(height, 3*units.HeightInch, perHeight)
		require.NoError(t, err)
		available, err := forage.Available(height, 3*units.HeightInch, density)
		require.NoError(t, err)
		days, err := grazing.StayDays(units.Acre, available, units.Whole, intake)
		require.NoError(t, err)
		nearly(t, days.Days(), float64(cowDays/units.AnimalUnitDayPerAcre))
	})
}

func TestLandForHeadTurnsCarryingCapacityRound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawStay(t)
		intake := drawn(t, "intake", 2, 40, units.PoundPerDay)
		head := rapid.Float64Range(1, 400).Draw(t, "head")
		rate, err := grazing.CarryingCapacity(s.available, s.use, intake, s.days)
		require.NoError(t, err)
		land, err := grazing.LandForHead(head, rate)
		require.NoError(t, err)
		area, err := grazing.StayArea(units.Demand(head)*intake, s.days, s.available, s.use)
		require.NoError(t, err)
		nearly(t, area, land)
	})
}

// Six head a hectare on 21 ha that can be used: how many?
func ExampleHeadOnLand() {
	head, _ := grazing.HeadOnLand(21*units.Hectare, 6*units.HeadPerHectare)
	fmt.Printf("%.0f\n", head)
	// Output: 126
}
