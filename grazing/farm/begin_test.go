package farm_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/grazing/farm"
	"example.org/soum/units"
)

func answers(t *testing.T) farm.Answers {
	t.Helper()
	today, err := units.ParseDate("2026-05-01")
	require.NoError(t, err)
	return farm.Answers{
		Today: today, Units: units.US, Area: 4 * units.Acre, Pasture: "orchardgrass-legume", Rain: 34 * units.RainInch,
		Stock: []farm.StockAnswer{{Class: "laying-hen", Head: 30}, {Class: "dairy-goat", Head: 6}, {Class: "suckler-cow", Head: 1}},
	}
}

// TestFirstFarm begins a farm from a few answers: it is sound, it plans, it can
// be written and read, those with the highest need lead, and every object that
// was filled in says so.
func TestFirstFarm(t *testing.T) {
	holding, err := farm.First(answers(t))
	require.NoError(t, err)
	plan(t, holding)
	written, err := holding.JSON(units.US)
	require.NoError(t, err)
	_, err = farm.Read(written)
	require.NoError(t, err)

	area := 0.0
	for _, l := range holding.Land {
		area += l.Width.Metres() * l.Length.Metres()
		assert.NotEmpty(t, l.Note)
	}
	assert.InEpsilon(t, (4 * units.Acre).SquareMetres(), area, 1e-12)
	assert.Equal(t, "dairy-goat", holding.Rotations[0].Groups[0].Group)
	assert.Equal(t, "laying-hen", holding.Rotations[0].Groups[2].Group)
	assert.Equal(t, 2*units.Day, holding.Rotations[0].Groups[2].Behind)
	// orchardgrass begins at 8 to 12 in and ends at 3 to 6 [UGA-HEIGHTS]
	assert.InDelta(t, 8, holding.Rotations[0].TurnIn.Inches(), 1e-9)
	assert.InDelta(t, 3, holding.Rotations[0].Leave.Inches(), 1e-9)
	assert.Equal(t, "2026-10-31", holding.Season.To.String()) // its last month with a share
	for _, g := range holding.Groups {
		assert.NotEmpty(t, g.Note)
	}
	assert.NotEmpty(t, holding.Rotations[0].Note)
	assert.NotEmpty(t, holding.Rain.Note)
	assert.NotEmpty(t, holding.Feed.Note)
}

// TestFirstFarmKeepsBirdsOffPigs: the pigs get lanes of their own, and land by what they
// eat of all; the caution about birds after pigs then has no cause.
func TestFirstFarmKeepsBirdsOffPigs(t *testing.T) {
	a := answers(t)
	a.Stock = append(a.Stock, farm.StockAnswer{Class: "sow", Head: 2})
	holding, err := farm.First(a)
	require.NoError(t, err)
	require.Len(t, holding.Rotations, 2)
	assert.Equal(t, []farm.Member{{Group: "sow"}}, holding.Rotations[1].Groups)
	assert.Equal(t, []string{"pig lane 1", "pig lane 2", "pig lane 3", "pig lane 4"}, holding.Rotations[1].Land)
	p := plan(t, holding)
	assert.NotContains(t, cautions(p), "birds after pigs")
	wanted, pigs, area := 0.0, 0.0, 0.0
	for i := range holding.Groups {
		one := *holding
		one.Groups = []farm.Group{holding.Groups[i]}
		one.Rotations = []farm.Rotation{holding.Rotations[0]}
		one.Rotations[0].Groups = []farm.Member{{Group: one.Groups[0].ID}}
		want := float64(plan(t, &one).Days[0].Wanted)
		if wanted += want; one.Groups[0].ID == "sow" {
			pigs = want
		}
	}
	for _, l := range holding.Land[4:] {
		area += l.Width.Metres() * l.Length.Metres()
	}
	assert.InEpsilon(t, (4*units.Acre).SquareMetres()*pigs/wanted, area, 1e-9)
	a.Stock = []farm.StockAnswer{{Class: "sow", Head: 2}, {Class: "ewe", Head: 4}}
	holding, err = farm.First(a)
	require.NoError(t, err)
	assert.Len(t, holding.Rotations, 1, "no birds")
}

// TestFirstFarmOfEveryRow begins and plans a farm on every pasture row that has
// a density in good condition, with every class of stock.
func TestFirstFarmOfEveryRow(t *testing.T) {
	for _, pasture := range []string{"bluegrass-clover", "orchardgrass-legume", "timothy-legume", "tall-fescue", "mixed-pasture", "warm-season-grass"} {
		a := answers(t)
		a.Pasture, a.Units = pasture, units.Metric
		holding, err := farm.First(a)
		require.NoError(t, err, pasture)
		p := plan(t, holding)
		assert.False(t, math.IsNaN(p.Hay.Eaten.Kilograms()), pasture)
	}
}

// TestFirstFarmRefuses names the answer that is wrong.
func TestFirstFarmRefuses(t *testing.T) {
	for _, c := range []struct {
		spoil func(*farm.Answers)
		says  string
	}{
		{func(a *farm.Answers) { a.Area = 0 }, "land:"},
		{func(a *farm.Answers) { a.Area = units.Area(math.NaN()) }, "land:"},
		{func(a *farm.Answers) { a.Pasture = "lawn" }, "pasture:"},
		{func(a *farm.Answers) { a.Rain = -1 }, "rain:"},
		{func(a *farm.Answers) { a.Stock = nil }, "stock:"},
		{func(a *farm.Answers) { a.Stock[0].Class = "dragon" }, "stock[0]:"},
		{func(a *farm.Answers) { a.Stock[1].Head = -3 }, "stock[1]:"},
		{func(a *farm.Answers) { a.Stock[1] = a.Stock[0] }, "stock[1]:"},
		{func(a *farm.Answers) { a.Height = 9 }, "ceiling"},
	} {
		a := answers(t)
		c.spoil(&a)
		_, err := farm.First(a)
		require.ErrorContains(t, err, c.says)
	}
}

// TestFirstFarmWaitsForGrass begins with grass an inch short of its turn-in
// height: the season begins when it is there, and the first move is that day.
func TestFirstFarmWaitsForGrass(t *testing.T) {
	a := answers(t)
	a.Height = 7 * units.HeightInch
	holding, err := farm.First(a)
	require.NoError(t, err)
	assert.Greater(t, holding.Season.From, a.Today)
	p := plan(t, holding)
	assert.Equal(t, holding.Season.From, p.Moves[0].Date)
	assert.GreaterOrEqual(t, p.Moves[0].Height.Inches(), 8.0)
	assert.Less(t, p.Moves[0].Height.Inches(), 8.5)
}
