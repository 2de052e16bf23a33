package farm_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/grazing"
	"example.org/soum/grazing/farm"
	"example.org/soum/units"
)

// TestVerdictTellsTheDays: one cow wants 10 kg a day, the lane of the first case holds
// three days of it and 6 kg of the fourth's, and nothing grows.
func TestVerdictTellsTheDays(t *testing.T) {
	v := plan(t, byHand(t, 1)).Verdict
	assert.False(t, v.Carries)
	assert.Equal(t, &farm.Dates{From: dateOf(t, "2026-04-13"), To: dateOf(t, "2026-04-14")}, v.Short)
	assert.Contains(t, v.English, "It is short from 2026-04-13 to 2026-04-14, first for cow.")

	// 4 kg are missing on 13 April and 10 kg on the 14th; hay is 80 % dry matter, none wasted.
	for hay, short := range map[float64]*farm.Dates{4.9: v.Short, 5.1: {From: dateOf(t, "2026-04-14"), To: dateOf(t, "2026-04-14")}, 17.6: nil} {
		holding := byHand(t, 1)
		holding.Feed.Hay, holding.Feed.DryMatter = units.FreshFeed(hay), 0.8
		v := plan(t, holding).Verdict
		assert.Equal(t, short, v.Short, "%v kg", hay)
		assert.Equal(t, short == nil, v.Carries)
	}
}

// TestHayCutTooLate: the lane is cut on the last day, for more hay than was fed before it.
func TestHayCutTooLate(t *testing.T) {
	holding := byHand(t, 1)
	holding.Cuts = []farm.Cut{{Land: holding.Land[0].ID, Date: dateOf(t, "2026-04-14"), Stubble: 1 * units.HeightCentimetre}}
	p := plan(t, holding)
	assert.False(t, p.Verdict.Carries)
	assert.Zero(t, p.Hay.Short)
	assert.Contains(t, p.Verdict.English, "Over the season there is hay enough, but it is cut too late.")
}

// TestWinterHayByHand: in June K/V - 1 is multiplied by 3^-0.1 a day, from 0.4/0.11 - 1 =
// 2.636364 to 0.4/0.175 - 1 = 1.285714 in 6.54 days, so that there is grass from 8 June on.
// The season ends on 20 June; up to 7 June of the next year are 352 days of 10 kg.
func TestWinterHayByHand(t *testing.T) {
	holding := byHand(t, 4)
	p := plan(t, holding)
	require.NotNil(t, p.Hay.Winter)
	assert.Equal(t, "2026-06-21", p.Hay.Winter.From.String())
	assert.Equal(t, "2027-06-07", p.Hay.Winter.To.String())
	assert.InDelta(t, 3520, float64(p.Hay.Winter.Eaten), 1e-9)
	assert.Contains(t, p.Verdict.English, "From 2026-06-21 until grass or the season begins again (2027-06-08 by this year's dates)")
	next, err := holding.Followed(dateOf(t, "2026-06-10")) // grass_from is in the document
	require.NoError(t, err)
	assert.Equal(t, p.Hay.Winter, plan(t, next).Hay.Winter)
	next.Rotations[0].GrassFrom = nil
	assert.Nil(t, plan(t, next).Hay.Winter, "bitten ground does not tell when grass began")
}

// TestOverIsTold: ground that nobody comes to passes the middle of aim and ceiling, 30 cm,
// from 20 cm. In June K/V - 1 is multiplied by 3^-0.1 a day: from 1 to 1/3 in 10 days.
func TestOverIsTold(t *testing.T) {
	holding := byHand(t, 4)
	holding.Land[0].Height = 20 * units.HeightCentimetre
	holding.Groups[0].Head = 0
	p := plan(t, holding)
	require.Len(t, p.Verdict.Over, 1)
	assert.Equal(t, "lane", p.Verdict.Over[0].Land)
	assert.InDelta(t, float64(dateOf(t, "2026-06-10")), float64(p.Verdict.Over[0].First), 1) // at 30 cm on the tenth evening, but for rounding
	assert.Contains(t, p.Verdict.English, "Grass gets ahead of the animals on lane")
	assert.InDelta(t, 0.30, float64(p.Verdict.Over[0].Height), 1e-12)
	holding.Land[0].MowAbove = 40 * units.HeightCentimetre // which growth never passes
	assert.Empty(t, plan(t, holding).Verdict.Over)
}

// TestWhoseGrowth: the rows of print by name, a row or a yield of the user's by the land.
func TestWhoseGrowth(t *testing.T) {
	assert.Equal(t, "Growth is your own figure; this year's rain did not set it.", plan(t, byHand(t, 4)).Verdict.Growth)
	small := readSmall(t, `"note": "ours"`, `"note": "ours"`)
	assert.Contains(t, plan(t, small).Verdict.Growth, "Growth is as printed for bluegrass-clover and mixed-pasture, not measured on this land; this year's rain did not set it")
	small.Land[0].Yield = 0.5 // kg/m²
	assert.Contains(t, plan(t, small).Verdict.Growth, "not measured on this land; on "+small.Land[0].ID+" it is your own figure;")
}

// TestRoomByPrint: of hens the land carries no more than print keeps on it: the
// room of one is that of the table of spaces, by the old rule of manure.
func TestRoomByPrint(t *testing.T) {
	holding := readSmall(t, `{"id": "dry ewes", "class": "ewe", "head": 5}`, `{"id": "dry ewes", "class": "laying-hen", "head": 300}`)
	each, err := grazing.Space("laying-hen", grazing.SpaceUsed, "old-rule", 1, units.Low)
	require.NoError(t, err)
	carried, err := holding.Carries("dry ewes")
	require.NoError(t, err)
	assert.Equal(t, [3]farm.Limit{farm.LimitRoom, farm.LimitRoom, farm.LimitRoom}, carried.Limits)
	room := int(10000 / each.SquareMetres()) // the two lanes are 20 m × 300 m and 20 m × 200 m
	assert.Equal(t, [3]int{room, room, room}, [3]int{carried.Low, carried.Middle, carried.High})
	assert.Contains(t, carried.English, "With one more, there are more on the ground than print keeps there. The printed figure is of PLAMONDON-HENS, EU-889-2008.")
}

// TestLandForWater: no land gives more water.
func TestLandForWater(t *testing.T) {
	need, err := readSmall(t, `"note": "ours"`, `"water": {"supply": "10 L/day"}`).LandFor()
	require.NoError(t, err)
	assert.Equal(t, farm.LandNeed{Limit: farm.LimitWater}, need)
}

// TestAtLeast: where the scan ends the text says so, and of a group without room too.
func TestAtLeast(t *testing.T) {
	carried, err := readSmall(t, `"hay": "1 t"`, `"hay": "1000 t"`).Carries("milkers")
	require.NoError(t, err)
	assert.Contains(t, carried.English, "room for at least 52 head of milkers (at least 52 to at least 52 over the printed spans") // 4 × 8 + 20
	carried, err = readSmall(t, `"note": "ours"`, `"water": {"supply": "10 L/day"}`).Carries("milkers")
	require.NoError(t, err)
	assert.Contains(t, carried.English, "the land has no room for milkers: with one, the water gives out. The plan begins with 8.")
}
