package farm_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/grazing/farm"
	"example.org/soum/units"
)

// TestGrassFromByBites: ground that was bitten 60 days before the season, in a month with a
// share of 1/24 (4.17 %), tells that there is grass: no feed is of opening days.
func TestGrassFromByBites(t *testing.T) {
	opening := func(from, to, grazed string, april float64) units.DryMatter {
		holding := byHand(t, 4)
		holding.Today, holding.Season.From, holding.Season.To = dateOf(t, from), dateOf(t, from), dateOf(t, to)
		bitten := dateOf(t, grazed)
		holding.Land[0].Grazed = &bitten
		holding.Land[0].Pasture.Row.Shares[3] = units.Fraction(april)
		return plan(t, holding).Hay.Opening
	}
	assert.Zero(t, opening("2026-07-10", "2026-07-29", "2026-05-11", 0))
	assert.Positive(t, opening("2026-07-10", "2026-07-29", "2026-05-10", 0), "61 days")
	assert.Zero(t, opening("2026-06-01", "2026-06-20", "2026-04-20", 0.042))
	assert.Positive(t, opening("2026-06-01", "2026-06-20", "2026-04-20", 0.041))
}

// TestWinterCounts: nothing grows before May. A day of May multiplies K/V - 1 by
// 3^(-0.1 x 30/31); from 0.4/0.11 - 1 = 2.636364 to 0.4/0.175 - 1 = 1.285714 are 6.75 days,
// so there is grass from 8 May on. What is fed more than 42 days before it, 15 to 26 March,
// is winter's and counts: 12 x 10 kg.
func TestWinterCounts(t *testing.T) {
	holding := byHand(t, 4)
	holding.Today, holding.Season.From = dateOf(t, "2026-03-15"), dateOf(t, "2026-03-15")
	counted := units.DryMatter(0)
	for _, d := range plan(t, holding).Days {
		if d.Date < dateOf(t, "2026-05-08") {
			counted += d.Counted
		}
	}
	assert.InDelta(t, 120, float64(counted), 1e-9)
}

// TestNewKeysAreChecked puts one thing wrong at a time.
func TestNewKeysAreChecked(t *testing.T) {
	for _, c := range []struct {
		change func(*farm.Farm)
		says   string
	}{
		{func(f *farm.Farm) { f.Rotations[0].LeastTurnIn = 25 * units.HeightCentimetre }, "rotations[0].least_turn_in: 25 cm"},
		{func(f *farm.Farm) { f.Rotations[0].LeastTurnIn = 9 * units.HeightCentimetre }, "is not between leave and turn-in"},
		{func(f *farm.Farm) { f.Rotations[0].LongestStay = 1.5 }, "rotations[0].longest_stay: 1.5 days is not a whole number of days"},
		{func(f *farm.Farm) { f.Land[0].Stretches[0].Due[0].Group = "goat" }, `land[0].stretches[0].due[0].group: "goat" is not a group of the land's rotation`},
		{func(f *farm.Farm) { f.Land[0].Stretches[0].Due[0].Date-- }, "land[0].stretches[0].due[0].date: 2026-04-11 is before today"},
		{func(f *farm.Farm) { f.Land[0].Stretches[0].Due[0].Eat = -1 }, "due[0].eat: "},
		{func(f *farm.Farm) { f.Land[0].Stretches[0].Due[0].Use = 0 }, "due[0].use: 0 % is not a share"},
		{func(f *farm.Farm) { f.Land[0].Stay = &farm.Stay{From: f.Today - 1, Planned: 2} }, "land[0].stay: \"lane\" is a lane"},
	} {
		holding, err := byHand(t, 5).Followed(dateOf(t, "2026-04-12"))
		require.NoError(t, err)
		c.change(holding)
		assert.ErrorContains(t, holding.Check(), c.says)
	}
	for says, stay := range map[string]farm.Stay{
		"land[0].stay.from: 2026-06-05 is not before today": {From: dateOf(t, "2026-06-05"), Planned: 3},
		"land[0].stay.planned: 0 days":                      {From: dateOf(t, "2026-06-01")},
		"land[0].stay.days: 1.5 days":                       {From: dateOf(t, "2026-06-01"), Planned: 3, Days: 1.5},
	} {
		holding, err := byHand(t, 3).Followed(dateOf(t, "2026-06-05"))
		require.NoError(t, err)
		holding.Land[0].Stay = &stay
		assert.ErrorContains(t, holding.Check(), says)
	}
}

// TestTurnOutIsTold once, in the spring: a plan made in mid-season has turned out before.
func TestTurnOutIsTold(t *testing.T) {
	v := plan(t, byHand(t, 4)).Verdict
	assert.Equal(t, []farm.TurnOut{{Group: "cow", Date: dateOf(t, "2026-06-06")}}, v.TurnOut)
	assert.Contains(t, v.English, "Cow turn out on 2026-06-06, the first day")
	for day, told := range map[string]int{"2026-06-03": 1, "2026-06-10": 0} {
		next, err := byHand(t, 4).Followed(dateOf(t, day))
		require.NoError(t, err)
		assert.Len(t, plan(t, next).Verdict.TurnOut, told, day)
	}
}
