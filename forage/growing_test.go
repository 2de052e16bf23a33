package forage_test

import (
	"math"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/diff/fd"
	"pgregory.net/rapid"

	"example.org/soum/forage"
	"example.org/soum/grazing"
	"example.org/soum/units"
)

func TestGompertzDaysTurnsGompertzRound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		start, target, ceiling := stand(t)
		peak := units.Growth(rapid.Float64Range(1, 150).Draw(t, "peak")) * units.KilogramPerHectareDay
		days := value(forage.GompertzDays(start, target, ceiling, peak))(t)
		back := value(forage.Gompertz(start, ceiling, peak, days))(t)
		assert.InEpsilon(t, float64(target), float64(back), 1e-9)
	})
}

func TestGompertzStepsAddUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		start, _, ceiling := stand(t)
		peak := units.Growth(rapid.Float64Range(1, 150).Draw(t, "peak")) * units.KilogramPerHectareDay
		first, second := units.Days(rapid.Float64Range(0, 40).Draw(t, "first")), units.Days(rapid.Float64Range(0, 40).Draw(t, "second"))
		half := value(forage.Gompertz(start, ceiling, peak, first))(t)
		assert.True(t, half >= start && half <= ceiling)
		assert.InEpsilon(t, float64(value(forage.Gompertz(start, ceiling, peak, first+second))(t)), float64(value(forage.Gompertz(half, ceiling, peak, second))(t)), 1e-9)
	})
}

// The fastest growth of each curve is what it was told, where the doc says it is:
// gonum's differences know no formula.
func TestFastestGrowthIsWhatItIsCalled(t *testing.T) {
	const ceiling, peak = 4000 * units.KilogramPerHectare, 50 * units.KilogramPerHectareDay
	slope := func(curve func(days units.Days) (units.Yield, error)) float64 {
		return fd.Derivative(func(d float64) float64 { return float64(value(curve(10 + units.Days(d)))(t)) }, 0, &fd.Settings{Formula: fd.Central})
	}
	start := ceiling / math.E // at day 10 the curve is there
	days := value(forage.GompertzDays(ceiling/100, start, ceiling, peak))(t)
	gompertz := slope(func(d units.Days) (units.Yield, error) {
		return forage.Gompertz(ceiling/100, ceiling, peak, days+d-10)
	})
	assert.InEpsilon(t, float64(peak), gompertz, 1e-6)
	logistic := value(forage.DaysToRegrow(ceiling/100, ceiling/2, ceiling, peak))(t)
	assert.InEpsilon(t, float64(peak), slope(func(d units.Days) (units.Yield, error) {
		return forage.Regrown(ceiling/100, ceiling, peak, logistic+d-10)
	}), 1e-6)
	assert.InEpsilon(t, float64(peak), slope(func(d units.Days) (units.Yield, error) {
		return forage.Expolinear(peak, 0.2, 200+d, 20)
	}), 1e-6)
	// before it is steady, growth is the stated share of the mass
	early := value(forage.Expolinear(peak, 0.2, 10, 60))(t)
	assert.InEpsilon(t, 0.2*float64(early), slope(func(d units.Days) (units.Yield, error) { return forage.Expolinear(peak, 0.2, d, 60) }), 1e-4)
}

func TestExpolinearDaysTurnsExpolinearRound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		fastest := units.Growth(rapid.Float64Range(10, 250).Draw(t, "fastest")) * units.KilogramPerHectareDay
		relative := rapid.Float64Range(0.02, 0.4).Draw(t, "relative")
		lost := units.Days(rapid.Float64Range(0, 60).Draw(t, "lost"))
		days := lost + units.Days(rapid.Float64Range(-10, 20).Draw(t, "steps")/relative)
		if days < 0 {
			days = -days
		}
		mass := value(forage.Expolinear(fastest, relative, days, lost))(t)
		if float64(mass)*relative/float64(fastest) < 1e-4 {
			t.Skip("nothing stands yet")
		}
		back := value(forage.ExpolinearDays(mass, fastest, relative, lost))(t)
		assert.InDelta(t, float64(days), float64(back), 1e-9*max(1, float64(days)))
		again := value(forage.Expolinear(fastest, relative, max(back, 0), lost))(t)
		assert.InEpsilon(t, float64(mass), float64(again), 1e-9)
	})
}

func TestGrowthCurves(t *testing.T) {
	for _, c := range forage.GrowthCurves() {
		sum := 0.0
		for month := time.January; month <= time.December; month++ {
			share := value(forage.CurveShare(c.Name, month))(t)
			assert.Equal(t, c.Shares[month-1], share)
			sum += share.Percent()
		}
		switch c.Name {
		case "alfalfa-grass":
			assert.InDelta(t, 97, sum, 1e-9) // each month is solved alone
		case "stockpiled-tall-fescue":
			assert.InDelta(t, 102.7, sum, 1e-9)
		default:
			assert.InDelta(t, 100, sum, 1e-9, c.Name)
		}
		assert.Contains(t, []string{"A", "B", "D"}, c.Mark)
		assert.NotEmpty(t, c.Source)
	}
	forage.GrowthCurves()[0].Shares[4] = 77
	assert.Equal(t, 40*units.Percent, forage.GrowthCurves()[0].Shares[4])
	_, err := forage.CurveShare("moon", time.May)
	assert.ErrorContains(t, err, "alfalfa-grass")
	for _, month := range []time.Month{0, 13} {
		got, err := forage.CurveShare("alfalfa-grass", month)
		assert.ErrorContains(t, err, "must be from 1 to 12")
		assert.True(t, math.IsNaN(float64(got)))
	}
}

func TestSeasonCurves(t *testing.T) {
	for _, c := range forage.SeasonCurves() {
		all := value(forage.SeasonShare(c.Place, forage.AllYear))(t)
		assert.InDelta(t, 100, all.Percent(), 1e-9, c.Place)
		if c.Place == "stratford" {
			assert.InDelta(t, 9940, c.Annual.KilogramsPerHectare(), 1e-9)
		} else {
			assert.Zero(t, c.Annual)
		}
	}
	// The month's growth of a place: Gisborne of 10,000 kg/ha grows 3,500 in its spring.
	share := value(forage.SeasonShare("gisborne-plains", forage.Spring))(t)
	spring := value(forage.MonthGrowth(10*units.TonnePerHectare, share, 91))(t)
	assert.InDelta(t, 3500, 91*spring.KilogramsPerHectareDay(), 1e-9)
	forage.SeasonCurves()[0].Spring = 77
	assert.Equal(t, 35*units.Percent, forage.SeasonCurves()[0].Spring)
	_, err := forage.SeasonShare("moon", forage.Spring)
	assert.ErrorContains(t, err, "motueka")
	for _, season := range []forage.Season{0, 6} {
		got, err := forage.SeasonShare("motueka", season)
		assert.True(t, math.IsNaN(float64(got)))
		refuses(t, err, "season")
	}
	for _, end := range []units.End{-1, 0, 4, 7} {
		got, err := forage.LeafDays(forage.Spring, end)
		assert.True(t, math.IsNaN(float64(got)))
		refuses(t, err, "end")
	}
	got, err := forage.LeafDays(forage.AllYear, units.Low)
	assert.True(t, math.IsNaN(float64(got)))
	assert.ErrorContains(t, err, "one of: spring, summer, autumn, winter")
	_, err = forage.RestOf("bahiagrass", 9, units.Low)
	refuses(t, err, "season")
}

// refuses wants a domain error of an argument.
func refuses(t *testing.T, err error, argument string) {
	t.Helper()
	var none *units.DomainError
	if assert.ErrorAs(t, err, &none) {
		assert.Equal(t, argument, none.Argument)
	}
}

func TestGrowthRows(t *testing.T) {
	seen := map[string]bool{}
	for _, r := range forage.GrowthRows() {
		key := r.Place + " " + r.When
		assert.False(t, seen[key], key)
		seen[key] = true
		assert.Equal(t, r.Growth, value(forage.DailyGrowth(r.Place, r.When))(t))
		assert.Contains(t, []string{"A", "B"}, r.Mark)
		assert.NotEmpty(t, r.Source)
		assert.Equal(t, strings.ToLower(key), key)
	}
	forage.GrowthRows()[0].Growth = 77
	assert.NotEqual(t, units.Growth(77), forage.GrowthRows()[0].Growth)
	_, err := forage.DailyGrowth("ohio-2010", "christmas")
	assert.ErrorContains(t, err, "20-june")
	_, err = forage.DailyGrowth("moon", "may")
	assert.ErrorContains(t, err, "ireland-2023")
}

func TestRestRows(t *testing.T) {
	for _, r := range forage.RestRows() {
		assert.True(t, 0 < r.Rest.Low && r.Rest.Low <= r.Rest.High, r.Situation)
		assert.Equal(t, r.Rest.High, value(forage.RestOf(r.Situation, r.Season, units.High))(t), r.Situation)
		assert.GreaterOrEqual(t, value(forage.LongestRest(r.Situation))(t), r.Rest.High)
		assert.Contains(t, []string{"A", "B"}, r.Mark)
		assert.NotEmpty(t, r.Source)
	}
	forage.RestRows()[0].Rest.High = 77
	assert.Equal(t, units.Days(30), forage.RestRows()[0].Rest.High)
	got, err := forage.RestOf("moss", forage.Spring, units.Low)
	assert.ErrorContains(t, err, "switchgrass")
	assert.True(t, math.IsNaN(float64(got)))
	_, err = forage.RestOf("british-pasture", forage.AllYear, units.Low)
	assert.ErrorContains(t, err, "spring, summer, autumn, winter")
	_, err = forage.LongestRest("moss")
	assert.ErrorContains(t, err, "switchgrass")
	for _, season := range []forage.Season{0, forage.AllYear} {
		_, err = forage.LeafDays(season, units.Low)
		assert.ErrorContains(t, err, "spring")
		assert.NotContains(t, err.Error(), "one of: all year")
	}
}

// Penn State: a rest of 35 days and stays of 3 are 13 paddocks; West Virginia's
// longest rest, 42 days of midsummer, wants 15.
func TestTheLongestRestSetsThePaddocks(t *testing.T) {
	rest := value(forage.LongestRest("west-virginia-grass-clover"))(t)
	paddocks, err := grazing.Paddocks(rest, 3*units.Day, 1)
	require.NoError(t, err)
	assert.Equal(t, 15.0, paddocks)
	paddocks, err = grazing.Paddocks(35*units.Day, 3*units.Day, 1)
	require.NoError(t, err)
	assert.InDelta(t, 12.67, paddocks, 0.005)
}

func TestRestFromGrowthGrowsTheMass(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		leave := units.Yield(rapid.Float64Range(0, 0.3).Draw(t, "leave"))
		turnIn := leave + units.Yield(rapid.Float64Range(0, 0.5).Draw(t, "more"))
		growth := units.Growth(rapid.Float64Range(0.0005, 0.02).Draw(t, "growth"))
		rest := value(forage.RestFromGrowth(leave, turnIn, growth))(t)
		assert.InDelta(t, float64(turnIn-leave), float64(value(forage.Grown(growth, rest))(t)), 1e-12)
		assert.GreaterOrEqual(t, rest, value(forage.RestFromGrowth(leave, turnIn, 2*growth))(t))
	})
}
