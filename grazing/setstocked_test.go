package grazing_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/integrate/quad"
	"pgregory.net/rapid"

	"example.org/soum/grazing"
	"example.org/soum/units"
)

// meadow is set stocking with the constants of the tables below: our choice,
// of no source.
func meadow(full, start float64, days int) grazing.SetStocking {
	return grazing.SetStocking{
		Ceiling:        4000 * units.KilogramPerHectare,
		RelativeGrowth: 0.05,
		HalfIntake:     500 * units.KilogramPerHectare,
		FullIntake:     units.Growth(full) * units.KilogramPerHectareDay,
		Start:          units.Yield(start) * units.KilogramPerHectare,
		Days:           days,
	}
}

// stockedBalances are the masses ((K - V0) ± √((K + V0)² - 4 cH K / g)) / 2
// with K = 4000, V0 = 500, g = 0.05, our arithmetic [D]. For cH = 20 the root is
// √(4500² - 6,400,000) = 3721.6, so the balances are (3500 ± 3721.6) / 2 =
// 3610.8 and none; for 30, √(20,250,000 - 9,600,000) = 3263.4: 118.3, 3381.7;
// for 40, √7,450,000 = 2729.5; for 50, √4,250,000 = 2061.6; for 60, √1,050,000 =
// 1024.7.
var stockedBalances = []struct{ full, low, high float64 }{
	{20, 0, 3610.8},
	{30, 118.3, 3381.7},
	{40, 385.3, 3114.7},
	{50, 719.2, 2780.8},
	{60, 1237.7, 2262.3},
}

func TestSetStockedBalancesByHand(t *testing.T) {
	for _, b := range stockedBalances {
		low, high, err := grazing.SetStockedBalances(meadow(b.full, 0, 0))
		require.NoError(t, err)
		assert.InDelta(t, b.low, low.KilogramsPerHectare(), 0.05+1e-6, "low of %v", b.full)
		assert.InDelta(t, b.high, high.KilogramsPerHectare(), 0.05+1e-6, "high of %v", b.full)
	}
	// The most that can be taken is g (K + V0)² / (4 K) = 0.05 × 20,250,000 /
	// 16,000 = 63.28125; there both masses are (K - V0) / 2 = 1,750. A millionth
	// below, they part by √(4 × 0.000001 × 4000 / 0.05) = 0.57.
	low, high, err := grazing.SetStockedBalances(meadow(63.281249, 0, 0))
	require.NoError(t, err)
	assert.InDelta(t, 1750-0.283, low.KilogramsPerHectare(), 0.001)
	assert.InDelta(t, 1750+0.283, high.KilogramsPerHectare(), 0.001)
	low, high, err = grazing.SetStockedBalances(meadow(63.2813, 0, 0))
	require.NoError(t, err)
	assert.Zero(t, low)
	assert.Zero(t, high)
	// without stock the stand fills up
	low, high, err = grazing.SetStockedBalances(meadow(0, 0, 0))
	require.NoError(t, err)
	assert.Zero(t, low)
	assert.InDelta(t, 4000, high.KilogramsPerHectare(), 1e-9)
	// Where intake fills up late (V0 above K) there is one stand or none. With
	// V0 = 4100, g V0 is 205. For cH = 201, 8100² - 4 × 201 × 4000 / 0.05 =
	// 65,610,000 - 64,320,000 = 1,290,000 and (-100 + 1135.8) / 2 = 517.9. For
	// 205.01, 65,610,000 - 65,603,200 = 6,800 and -100 + 82.5 is below nothing.
	s := meadow(201, 0, 0)
	s.HalfIntake = 4100 * units.KilogramPerHectare
	low, high, err = grazing.SetStockedBalances(s)
	require.NoError(t, err)
	assert.Zero(t, low)
	assert.InDelta(t, 517.9, high.KilogramsPerHectare(), 0.05)
	s.FullIntake = 205.01 * units.KilogramPerHectareDay
	low, high, err = grazing.SetStockedBalances(s)
	require.NoError(t, err)
	assert.Zero(t, low)
	assert.Zero(t, high)
}

func TestSetStockedReachesTheUpperBalance(t *testing.T) {
	for _, b := range stockedBalances {
		for _, start := range []float64{b.low + 1, (b.low + b.high) / 2, 4000} {
			masses, err := grazing.SetStocked(meadow(b.full, start, 3000))
			require.NoError(t, err)
			require.Len(t, masses, 3001)
			assert.InDelta(t, start, masses[0].KilogramsPerHectare(), 1e-9)
			assert.InDelta(t, b.high, masses[3000].KilogramsPerHectare(), 0.1, "%v from %v", b.full, start)
		}
	}
}

func TestSetStockedFallsFromBelow(t *testing.T) {
	for _, b := range stockedBalances {
		if b.low == 0 {
			continue
		}
		masses, err := grazing.SetStocked(meadow(b.full, b.low-1, 3000))
		require.NoError(t, err)
		for i := 1; i < len(masses); i++ {
			require.Less(t, masses[i], masses[i-1], "%v on day %d", b.full, i)
		}
		assert.Less(t, masses[3000].KilogramsPerHectare(), 0.1)
		assert.GreaterOrEqual(t, float64(masses[3000]), 0.0)
	}
	// with cH = 65 no stand lasts, however thick: 65 > 63.28
	masses, err := grazing.SetStocked(meadow(65, 4000, 3000))
	require.NoError(t, err)
	assert.Less(t, masses[3000].KilogramsPerHectare(), 0.1)
	// bare ground stays bare
	masses, err = grazing.SetStocked(meadow(20, 0, 10))
	require.NoError(t, err)
	assert.Zero(t, masses[10])
}

// K / (1 + ((K - V) / V) e^(-g t)), our arithmetic [D], to the last digit.
func TestSetStockedWithoutStockIsLogistic(t *testing.T) {
	days := []int{7, 14, 21, 28, 35, 42}
	for start, want := range map[float64][]float64{
		500:  {674, 894, 1160, 1467, 1805, 2154},
		1200: {1513, 1853, 2202, 2539, 2846, 3111},
		1500: {1840, 2189, 2526, 2835, 3102, 3322},
		2000: {2346, 2673, 2963, 3209, 3408, 3564},
	} {
		masses, err := grazing.SetStocked(meadow(0, start, 42))
		require.NoError(t, err)
		for i, day := range days {
			assert.InDelta(t, want[i], masses[day].KilogramsPerHectare(), 0.5, "%v after %d days", start, day)
			curve := 4000 / (1 + (4000-start)/start*math.Exp(-0.05*float64(day)))
			assert.InDelta(t, curve, masses[day].KilogramsPerHectare(), 0.001, "%v after %d days", start, day)
		}
	}
}

// The time from one mass to another is the integral of dV / (growth - intake),
// taken here by gonum's Gauss-Legendre quadrature.
func TestSetStockedAgainstItsIntegral(t *testing.T) {
	for _, c := range []struct {
		full, half, start float64
		days              int
	}{
		{40, 500, 2000, 60},  // up to the high balance
		{40, 500, 4000, 40},  // down to it
		{60, 500, 1100, 30},  // down from below the low one
		{65, 500, 4000, 100}, // no balance
		{90, 30, 2000, 15},   // 3 = cH / V0: parts of a day
	} {
		s := meadow(c.full, c.start, c.days)
		s.HalfIntake = units.Yield(c.half) * units.KilogramPerHectare
		masses, err := grazing.SetStocked(s)
		require.NoError(t, err)
		end := masses[c.days].KilogramsPerHectare()
		perMass := func(v float64) float64 {
			return 1 / math.Abs(0.05*v*(1-v/4000)-c.full*v/(v+c.half))
		}
		days := quad.Fixed(perMass, min(c.start, end), max(c.start, end), 400, quad.Legendre{}, 0)
		assert.InDelta(t, float64(c.days), days, 1e-6, "%+v ends at %v", c, end)
	}
	// Without growth to speak of, V + V0 ln V falls by cH a day, here to a
	// thousandth of the first mass and far below: 51 = cH / V0.
	s := meadow(510, 1000, 3)
	s.RelativeGrowth = 1e-12
	s.HalfIntake = 10 * units.KilogramPerHectare
	masses, err := grazing.SetStocked(s)
	require.NoError(t, err)
	held := func(m units.Yield) float64 {
		v := m.KilogramsPerHectare()
		return v + 10*math.Log(v)
	}
	for day, m := range masses {
		assert.InDelta(t, held(masses[0])-510*float64(day), held(m), 2e-5, "day %d", day)
	}
}

func TestSetStockedRefuses(t *testing.T) {
	for _, c := range []struct {
		argument string
		change   func(*grazing.SetStocking)
	}{
		{"", func(*grazing.SetStocking) {}},
		{"", func(s *grazing.SetStocking) { s.Days = 3653 }},
		{"", func(s *grazing.SetStocking) { s.RelativeGrowth = 1 }},
		{"", func(s *grazing.SetStocking) { s.Start = s.Ceiling }},
		{"", func(s *grazing.SetStocking) { s.FullIntake = units.Growth(99.5 * float64(s.HalfIntake)) }},
		{"Ceiling", func(s *grazing.SetStocking) { s.Ceiling = 0 }},
		{"Ceiling", func(s *grazing.SetStocking) { s.Ceiling = units.Yield(math.Inf(1)) }},
		{"RelativeGrowth", func(s *grazing.SetStocking) { s.RelativeGrowth = 0 }},
		{"RelativeGrowth", func(s *grazing.SetStocking) { s.RelativeGrowth = 1.005 }},
		{"RelativeGrowth", func(s *grazing.SetStocking) { s.RelativeGrowth = math.NaN() }},
		{"HalfIntake", func(s *grazing.SetStocking) { s.HalfIntake = 0 }},
		{"FullIntake", func(s *grazing.SetStocking) { s.FullIntake = -1 }},
		{"FullIntake / HalfIntake", func(s *grazing.SetStocking) { s.FullIntake = units.Growth(100.5 * float64(s.HalfIntake)) }},
		{"Start", func(s *grazing.SetStocking) { s.Start = -0.001 }},
		{"Start", func(s *grazing.SetStocking) { s.Start = 1.001 * s.Ceiling }},
		{"Days", func(s *grazing.SetStocking) { s.Days = -1 }},
		{"Days", func(s *grazing.SetStocking) { s.Days = 3654 }},
	} {
		s := meadow(40, 2000, 10)
		c.change(&s)
		masses, err := grazing.SetStocked(s)
		low, high, also := grazing.SetStockedBalances(s)
		if c.argument == "" {
			assert.NoError(t, err)
			assert.NoError(t, also)
			assert.Len(t, masses, s.Days+1)
			continue
		}
		var domain *units.DomainError
		require.ErrorAs(t, err, &domain, c.argument)
		assert.Equal(t, c.argument, domain.Argument)
		assert.Equal(t, "grazing.SetStocked", domain.Function)
		assert.Nil(t, masses)
		require.ErrorAs(t, also, &domain, c.argument)
		assert.Equal(t, c.argument, domain.Argument)
		assert.Equal(t, "grazing.SetStockedBalances", domain.Function)
		assert.True(t, math.IsNaN(float64(low)) && math.IsNaN(float64(high)))
	}
}

// TestSetStockedBalancesOverflow: masses whose squares are beyond all floats.
func TestSetStockedBalancesOverflow(t *testing.T) {
	s := meadow(40, 2000, 10)
	s.Ceiling = 1e200
	low, high, err := grazing.SetStockedBalances(s)
	assert.EqualError(t, err, "grazing.SetStockedBalances: the result overflows (+Inf)")
	assert.True(t, math.IsNaN(float64(low)) && math.IsNaN(float64(high)))
}

func TestSetStockedMoreStockNeverMoreMass(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		full := rapid.Float64Range(0, 2000).Draw(t, "full")
		more := full * rapid.Float64Range(1, 3).Draw(t, "more")
		start := rapid.Float64Range(0, 4000).Draw(t, "start")
		fewer, err := grazing.SetStocked(meadow(full, start, 200))
		require.NoError(t, err)
		heavier, err := grazing.SetStocked(meadow(more, start, 200))
		require.NoError(t, err)
		for i := range fewer {
			require.GreaterOrEqual(t, float64(heavier[i]), 0.0, "day %d", i)
			require.LessOrEqual(t, float64(heavier[i]), float64(fewer[i])*(1+1e-6)+1e-12, "day %d", i)
			require.LessOrEqual(t, float64(fewer[i]), 0.4*(1+1e-9), "day %d", i)
		}
	})
}

// At a balance what grows is what is eaten: g V (1 - V / K) = cH V / (V + V0).
func TestSetStockedBalancesBalance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := meadow(rapid.Float64Range(0, 60).Draw(t, "full"), 0, 0)
		s.Ceiling = drawn(t, "ceiling", 2000, 8000, units.KilogramPerHectare)
		s.HalfIntake = drawn(t, "half", 50, 1500, units.KilogramPerHectare)
		low, high, err := grazing.SetStockedBalances(s)
		require.NoError(t, err)
		require.LessOrEqual(t, low, high)
		for _, v := range []units.Yield{low, high} {
			grown := s.RelativeGrowth * float64(v) * (1 - float64(v/s.Ceiling))
			eaten := float64(s.FullIntake) * float64(v/(v+s.HalfIntake))
			require.InDelta(t, grown, eaten, 1e-9, fmt.Sprint(v))
		}
	})
}
