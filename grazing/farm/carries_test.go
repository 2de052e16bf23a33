package farm_test

import (
	"fmt"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/grazing/farm"
	"example.org/soum/units"
)

// needsMore tells whether a farm with so many of its first group wants more
// feed than it has, read off the plan: hay by day against what is in store,
// nothing being cut.
func needsMore(t *testing.T, holding *farm.Farm, head int) bool {
	t.Helper()
	holding.Groups[0].Head = float64(head)
	own, others := 0.0, 0.0
	for _, f := range plan(t, holding).Feeding {
		switch {
		case f.Why == farm.FeedLeadIn:
		case f.Group == "ganders": // another rotation, on land of its own
			others += f.Wanted.Kilograms()
		default:
			own += f.Wanted.Kilograms()
		}
	}
	store := holding.Feed.Hay.Kilograms() * 0.88 * 0.9 // the small farm's hay: 88 % dry matter, 10 % wasted
	return own > max(0, store-others)+1e-9
}

// TestCarriesIsTheLargest runs the plan for every number up to one more than
// what is carried: all up to it need no more feed than there is, the next does.
func TestCarriesIsTheLargest(t *testing.T) {
	holding := readSmall(t, `"hay": "1 t"`, `"hay": "200 kg"`)
	carried, err := holding.Carries("milkers")
	require.NoError(t, err)
	require.Greater(t, carried.Middle, 2)
	for head := 1; head <= carried.Middle; head++ {
		require.False(t, needsMore(t, holding, head), "%d head", head)
	}
	require.True(t, needsMore(t, holding, carried.Middle+1))
	assert.LessOrEqual(t, carried.Low, carried.Middle)
	assert.LessOrEqual(t, carried.Middle, carried.High)
	// 150-lb ewes: 0.15 of a 1,000-lb animal unit each
	assert.InDelta(t, 0.15*float64(carried.Middle), carried.Units.AnimalUnits(), 1e-9)
}

// TestLeadersAreCarries asks for every leader by itself.
func TestLeadersAreCarries(t *testing.T) {
	holding := birthsFarm(t)
	leaders, err := holding.Leaders()
	require.NoError(t, err)
	require.NotEmpty(t, leaders)
	for _, leader := range leaders {
		alone, err := holding.Carries(leader.Group)
		require.NoError(t, err)
		assert.Equal(t, alone, leader)
		head := holding.Groups[slices.IndexFunc(holding.Groups, func(g farm.Group) bool { return g.ID == leader.Group })].Head
		assert.Contains(t, leader.English, fmt.Sprintf("room for %d head of %s (%d to %d over the printed spans of grass and appetite); the plan begins with %v.",
			leader.Middle, leader.Group, leader.Low, leader.High, head))
	}
	each, err := holding.CarriesEach()
	require.NoError(t, err)
	var groups []string
	for _, c := range each {
		alone, err := holding.Carries(c.Group)
		require.NoError(t, err)
		assert.Equal(t, alone, c)
		assert.True(t, c.Low <= c.Middle && c.Middle <= c.High, "%+v", c)
		groups = append(groups, c.Group)
	}
	assert.Equal(t, []string{"cows", "ewes", "sows"}, groups, "lambs begin without animals")
	holding.Version = 2
	_, err = holding.Leaders()
	assert.ErrorContains(t, err, "version")
}

// TestCarriesNamesTheLimit changes the small farm so that one thing binds.
func TestCarriesNamesTheLimit(t *testing.T) {
	for _, c := range []struct {
		limit            farm.Limit
		old, replacement string
	}{
		{farm.LimitGrass, `"hay": "1 t"`, `"hay": "0 t"`},
		{farm.LimitRest, `"shortest_rest": "21 days"`, `"shortest_rest": "120 days"`},
		{farm.LimitWinter, `"to": "2001-08-31"`, `"to": "2002-03-31"`},
		{farm.LimitWater, `"note": "ours"`, `"water": {"supply": "60 L/day"}`},
		{farm.LimitNone, `"hay": "1 t"`, `"hay": "1000 t"`},
	} {
		carried, err := readSmall(t, c.old, c.replacement).Carries("milkers")
		require.NoError(t, err)
		assert.Equal(t, c.limit, carried.Limits[1], "%s: %+v", c.replacement, carried)
	}
	_, err := readSmall(t, `"note": "ours"`, `"note": "ours"`).Carries("nobody")
	require.ErrorContains(t, err, `"nobody"`)
}

// TestCarriesScalesChanges halves the group in June: what is carried is the
// number before, the change in proportion, so more than without it.
func TestCarriesScalesChanges(t *testing.T) {
	without, err := readSmall(t, `"hay": "1 t"`, `"hay": "0 t"`).Carries("milkers")
	require.NoError(t, err)
	holding := readSmall(t, `"hay": "1 t"`, `"hay": "0 t"`)
	half := holding.Groups[0].Head / 2
	holding.Groups[0].Events = []farm.Event{{Date: holding.Today.Add(40), Head: &half}}
	with, err := holding.Carries("milkers")
	require.NoError(t, err)
	assert.Greater(t, with.Middle, without.Middle)
}

// TestLandForCarries widens the small farm by the factor found, and by one step
// less: the first carries, the second does not.
func TestLandForCarries(t *testing.T) {
	widened := func(factor float64) *farm.Farm {
		holding := readSmall(t, `"hay": "1 t"`, `"hay": "50 kg"`)
		for i := range holding.Land {
			holding.Land[i].Width *= units.Length(factor)
			holding.Land[i].Area *= units.Area(factor)
		}
		return holding
	}
	need, err := widened(1).LandFor()
	require.NoError(t, err)
	require.True(t, need.Found)
	// 20 m × 300 m, 20 m × 200 m and 0.2 ha are 12,000 m²
	assert.InEpsilon(t, 12000*need.Factor, need.Area.SquareMetres(), 1e-9)
	assert.True(t, plan(t, widened(need.Factor)).Verdict.Carries)
	assert.False(t, plan(t, widened(need.Factor/1.01)).Verdict.Carries)

	// Nothing grows in winter, so no width brings short grass to its turn-in height.
	winter := readSmall(t, `"today": "2001-05-01", "season": {"from": "2001-05-01", "to": "2001-08-31"}`, `"today": "2001-12-01", "season": {"from": "2001-12-01", "to": "2002-03-31"}`)
	for i := range winter.Land {
		winter.Land[i].Height = 9 * units.HeightCentimetre // turn-in is 15 and 10 cm
	}
	none, err := winter.LandFor()
	require.NoError(t, err)
	assert.False(t, none.Found)
}

// TestTextbookCapacity works the handbook's sum for the small farm: what is
// grown in a normal year on the two lanes (mixed pasture, 3 short tons an acre
// times its shares, 99 %) and the plot (bluegrass, 2 short tons, 100 %), times
// 80 %, over 26 lb a day for 123 days.
func TestTextbookCapacity(t *testing.T) {
	p := plan(t, readSmall(t, `"note": "ours"`, `"note": "ours"`))
	const acre = 4046.8564224
	grownLanes := 3 * 2000 * 0.99 * (10000 / acre) // lb
	grownPlot := 2 * 2000 * 1.00 * (2000 / acre)
	assert.InEpsilon(t, (grownLanes+grownPlot)*0.80/(26*123), p.Verdict.Textbook.AnimalUnits(), 1e-9)
}
