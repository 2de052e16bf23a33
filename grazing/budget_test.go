package grazing_test

import (
	"fmt"
	"math"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/grazing"
	"example.org/soum/units"
)

func TestCoverAfterIsGrazeableMassWithoutStock(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mass := drawn(t, "mass", 500, 4000, units.KilogramPerHectare)
		leave := drawn(t, "leave", 0, 2000, units.KilogramPerHectare)
		growth := drawn(t, "growth", -20, 100, units.KilogramPerHectareDay)
		days := drawn(t, "days", 0, 60, units.Day)
		grazeable, err := grazing.GrazeableMass(mass, leave, growth, days)
		require.NoError(t, err)
		cover, err := grazing.CoverAfter(mass, growth, 0, units.Hectare, days)
		require.NoError(t, err)
		require.InDelta(t, float64(cover-leave), float64(grazeable), 1e-12)
	})
}

func TestCoverAfterTwoSpellsIsCoverAfterBoth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		cover := drawn(t, "cover", 3000, 5000, units.KilogramPerHectare)
		growth := drawn(t, "growth", 0, 100, units.KilogramPerHectareDay)
		demand := drawn(t, "demand", 0, 500, units.KilogramPerDay)
		area := drawn(t, "area", 10, 50, units.Hectare)
		days := drawn(t, "days", 0, 30, units.Day)
		half, err := grazing.CoverAfter(cover, growth, demand, area, days)
		require.NoError(t, err)
		twice, err := grazing.CoverAfter(half, growth, demand, area, days)
		require.NoError(t, err)
		once, err := grazing.CoverAfter(cover, growth, demand, area, 2*days)
		require.NoError(t, err)
		require.InDelta(t, float64(once), float64(twice), 1e-12)

		// the change is the surplus of a day times the days
		surplus, err := grazing.GrowthLessNeed(growth, demand, area)
		require.NoError(t, err)
		require.InDelta(t, float64(half-cover), float64(surplus)*float64(days), 1e-12)
	})
}

// So many head per area eat exactly what can be grazed.
func TestHeadPerLandEatsTheGrazeableMass(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		grazeable := drawn(t, "grazeable", 100, 4000, units.KilogramPerHectare)
		intake := drawn(t, "intake", 0.5, 20, units.KilogramPerDay)
		days := drawn(t, "days", 1, 100, units.Day)
		spoilage := drawn(t, "spoilage", 0, 50, units.Percent)
		need, err := grazing.HeadNeed(intake, days, spoilage)
		require.NoError(t, err)
		rate, err := grazing.HeadPerLand(grazeable, need)
		require.NoError(t, err)
		nearly(t, float64(grazeable), float64(rate)*float64(intake)*float64(days)*(1+float64(spoilage)))
	})
}

// springShares add up to one: 0.05 + 0.10 + 0.25 + 0.20 + 0.10 + 0.10 + 0.10 +
// 0.06 + 0.04.
var springShares = [12]units.Fraction{0, 0, 0.05, 0.10, 0.25, 0.20, 0.10, 0.10, 0.10, 0.06, 0.04, 0}

var variedDemand = [12]units.Demand{20, 21, 22, 23, 24, 25, 26, 27, 28, 29, 30, 31}

// 6,000 kg/ha × 2 ha × 50 % is 6,000 kg to eat in the year. The year 2000 has
// a February of 29 days.
func TestMonthBalanceByHand(t *testing.T) {
	months, err := grazing.MonthBalance(6000*units.KilogramPerHectare, springShares, 2*units.Hectare, 50*units.Percent, variedDemand, 2000)
	require.NoError(t, err)
	want := []struct{ supply, need, difference float64 }{
		{0, 31 * 20, -620},
		{0, 29 * 21, -609},
		{300, 31 * 22, 300 - 682},
		{600, 30 * 23, 600 - 690},
		{1500, 31 * 24, 1500 - 744},
		{1200, 30 * 25, 1200 - 750},
		{600, 31 * 26, 600 - 806},
		{600, 31 * 27, 600 - 837},
		{600, 30 * 28, 600 - 840},
		{360, 31 * 29, 360 - 899},
		{240, 30 * 30, 240 - 900},
		{0, 31 * 31, -961},
	}
	require.Len(t, months, len(want))
	for i, w := range want {
		assert.Equal(t, time.Month(i+1), months[i].Month)
		assert.InDelta(t, w.supply, float64(months[i].Supply), 1e-9, "supply of %s", months[i].Month)
		assert.InDelta(t, w.need, float64(months[i].Need), 1e-9, "need of %s", months[i].Month)
		assert.InDelta(t, w.difference, float64(months[i].Difference), 1e-9, "difference of %s", months[i].Month)
	}
	common, err := grazing.MonthBalance(6000*units.KilogramPerHectare, springShares, 2*units.Hectare, 50*units.Percent, variedDemand, 2001)
	require.NoError(t, err)
	assert.InDelta(t, 28*21, float64(common[time.February-1].Need), 1e-9)
}

func TestMonthBalanceRefuses(t *testing.T) {
	nine := springShares
	nine[4] -= 0.095 // 90.5 %: within what printed rows stray by
	more := springShares
	more[4] += 0.095 // 109.5 %
	over := springShares
	over[4] += 0.105 // 110.5 %
	under := springShares
	under[4] -= 0.105 // 89.5 %
	percents := springShares
	percents[4] = 25
	hungry := variedDemand
	hungry[11] = -1
	endless := variedDemand
	endless[11] = 1e308
	for _, c := range []struct {
		name     string
		annual   units.Yield
		shares   [12]units.Fraction
		area     units.Area
		use      units.Fraction
		demand   [12]units.Demand
		year     int
		argument string
	}{
		{"all well", 0.6, springShares, 1, 0.5, variedDemand, 2000, ""},
		{"shares a little short", 0.6, nine, 1, 0.5, variedDemand, 2000, ""},
		{"shares a little over", 0.6, more, 1, 0.5, variedDemand, 2000, ""},
		{"last year", 0.6, springShares, 1, 0.5, variedDemand, 9999, ""},
		{"shares too many", 0.6, over, 1, 0.5, variedDemand, 2000, "sum of shares"},
		{"shares too few", 0.6, under, 1, 0.5, variedDemand, 2000, "sum of shares"},
		{"a percentage for a share", 0.6, percents, 1, 0.5, variedDemand, 2000, "shares"},
		{"negative demand", 0.6, springShares, 1, 0.5, hungry, 2000, "demand"},
		{"demand beyond floats", 0.6, springShares, 1, 0.5, endless, 2000, "result"},
		{"negative yield", -0.1, springShares, 1, 0.5, variedDemand, 2000, "annual"},
		{"negative area", 0.6, springShares, -1, 0.5, variedDemand, 2000, "area"},
		{"use above one", 0.6, springShares, 1, 1.005, variedDemand, 2000, "use"},
		{"no such year", 0.6, springShares, 1, 0.5, variedDemand, 0, "year"},
		{"year too late", 0.6, springShares, 1, 0.5, variedDemand, 10000, "year"},
	} {
		months, err := grazing.MonthBalance(c.annual, c.shares, c.area, c.use, c.demand, c.year)
		if c.argument == "" {
			assert.NoError(t, err, c.name)
			assert.Len(t, months, 12, c.name)
			continue
		}
		var domain *units.DomainError
		if assert.ErrorAs(t, err, &domain, c.name) {
			assert.Equal(t, c.argument, domain.Argument, c.name)
			assert.Equal(t, "grazing.MonthBalance", domain.Function, c.name)
		}
		assert.Nil(t, months, c.name)
	}
}

func TestMonthBalanceAddsUpToTheYear(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		annual := drawn(t, "annual", 500, 12000, units.KilogramPerHectare)
		area := drawn(t, "area", 0.1, 100, units.Hectare)
		use := drawn(t, "use", 10, 90, units.Percent)
		months, err := grazing.MonthBalance(annual, springShares, area, use, variedDemand, 2001)
		require.NoError(t, err)
		supply, need, difference := 0.0, 0.0, 0.0
		for _, m := range months {
			supply += float64(m.Supply)
			need += float64(m.Need)
			difference += float64(m.Difference)
		}
		nearly(t, float64(annual)*float64(area)*float64(use), supply)
		require.InDelta(t, supply-need, difference, 1e-9*supply+1e-6)
	})
}

// TestShortOfFeedByHand. 2,000 kg/ha, 1,200 to be left, 25 eaten and 5 grown: 800 ÷
// 20 = 40 days. For 60 days 400 kg/ha are missing; with three weeks to decide, day
// 19 is the last. For 30 days 200 are to spare, 27 % of the 750 eaten: long. For 35
// days 100 of 875: enough.
func TestShortOfFeedByHand(t *testing.T) {
	today, err := units.ParseDate("2026-06-01")
	require.NoError(t, err)
	grass := grazing.GrassToday{
		Today: today, End: today + 60, Mass: 2000 * units.KilogramPerHectare, Leave: 1200 * units.KilogramPerHectare,
		Growth: 5 * units.KilogramPerHectareDay, Eaten: 25 * units.KilogramPerHectareDay, Lead: 21,
	}
	got, err := grazing.ShortOfFeed(grass)
	require.NoError(t, err)
	assert.Equal(t, grazing.FeedWatch, got.Action)
	assert.Equal(t, today+40, got.Out)
	assert.Equal(t, today+19, got.Decide)
	assert.Equal(t, units.Days(20), got.Short)
	assert.InDelta(t, 400, got.Missing.KilogramsPerHectare(), 1e-9)
	assert.Zero(t, got.Spare)

	grass.Lead = 40
	got, err = grazing.ShortOfFeed(grass)
	require.NoError(t, err)
	assert.Equal(t, grazing.FeedDecide, got.Action)
	grass.Lead = 39.5 // a part of a day counts as a day
	got, err = grazing.ShortOfFeed(grass)
	require.NoError(t, err)
	assert.Equal(t, grazing.FeedDecide, got.Action)
	grass.Lead = 39
	got, err = grazing.ShortOfFeed(grass)
	require.NoError(t, err)
	assert.Equal(t, grazing.FeedWatch, got.Action)

	grass.End = today + 30
	got, err = grazing.ShortOfFeed(grass)
	require.NoError(t, err)
	assert.Equal(t, grazing.FeedLong, got.Action)
	assert.InDelta(t, 200, got.Spare.KilogramsPerHectare(), 1e-9)
	assert.Equal(t, grass.End, got.Out)
	grass.End = today + 35
	got, err = grazing.ShortOfFeed(grass)
	require.NoError(t, err)
	assert.Equal(t, grazing.FeedEnough, got.Action)
	assert.InDelta(t, 100, got.Spare.KilogramsPerHectare(), 1e-9)

	// the quarter: 200 to spare; 30 days of 26.6 are 798, a quarter 199.5; of 26.8
	// they are 804, a quarter 201
	for eaten, want := range map[float64]grazing.FeedAction{26.6: grazing.FeedLong, 26.8: grazing.FeedEnough} {
		edge := grass
		edge.End = today + 30
		edge.Eaten = units.Growth(eaten) * units.KilogramPerHectareDay
		edge.Growth = edge.Eaten - 20*units.KilogramPerHectareDay
		got, err = grazing.ShortOfFeed(edge)
		require.NoError(t, err)
		assert.Equal(t, want, got.Action, eaten)
	}

	// thin today and grown out of it: 100 below, 20 a day more grows than is eaten
	grass = grazing.GrassToday{
		Today: today, End: today + 30, Mass: 1100 * units.KilogramPerHectare, Leave: 1200 * units.KilogramPerHectare,
		Growth: 30 * units.KilogramPerHectareDay, Eaten: 10 * units.KilogramPerHectareDay, Lead: 7,
	}
	got, err = grazing.ShortOfFeed(grass)
	require.NoError(t, err)
	assert.Equal(t, grazing.FeedDecide, got.Action)
	assert.Equal(t, today, got.Out)
	assert.InDelta(t, 5, float64(got.Short), 1e-9)
	assert.InDelta(t, 100, got.Missing.KilogramsPerHectare(), 1e-9)

	// thin today and never grown out of it
	grass.Growth = 0
	got, err = grazing.ShortOfFeed(grass)
	require.NoError(t, err)
	assert.Equal(t, today, got.Out)
	assert.Equal(t, units.Days(30), got.Short)
	assert.InDelta(t, 400, got.Missing.KilogramsPerHectare(), 1e-9)
}

func TestShortOfFeedRefuses(t *testing.T) {
	good := grazing.GrassToday{Today: 20000, End: 20030, Mass: 0.2, Leave: 0.1, Growth: 0.001, Eaten: 0.002, Lead: 7}
	_, err := grazing.ShortOfFeed(good)
	require.NoError(t, err)
	for name, spoil := range map[string]func(*grazing.GrassToday){
		"mass":   func(g *grazing.GrassToday) { g.Mass = -1 },
		"leave":  func(g *grazing.GrassToday) { g.Leave = units.Yield(math.NaN()) },
		"growth": func(g *grazing.GrassToday) { g.Growth = units.Growth(math.Inf(1)) },
		"eaten":  func(g *grazing.GrassToday) { g.Eaten = -0.001 },
		"lead":   func(g *grazing.GrassToday) { g.Lead = 367 },
		"end":    func(g *grazing.GrassToday) { g.End = g.Today - 1 },
	} {
		bad := good
		spoil(&bad)
		_, err := grazing.ShortOfFeed(bad)
		assert.True(t, units.Impossible(err), name)
		assert.ErrorContains(t, err, name)
	}
	beyond := good
	beyond.Eaten = 1e308
	none, err := grazing.ShortOfFeed(beyond)
	assert.EqualError(t, err, "grazing.ShortOfFeed: the result overflows (-Inf)")
	assert.Zero(t, none)
	good.End = good.Today + 366
	_, err = grazing.ShortOfFeed(good)
	require.NoError(t, err)
	good.End++
	_, err = grazing.ShortOfFeed(good)
	assert.ErrorContains(t, err, "end")
}

// TestShortOfFeedAgreesWithCover: on the day it names the cover is what is to be
// left, within a day's change, and a day in between agrees with CoverAfter.
func TestShortOfFeedAgreesWithCover(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		today := units.Date(rapid.IntRange(10000, 30000).Draw(t, "today"))
		g := grazing.GrassToday{
			Today: today, End: today + units.Date(rapid.IntRange(0, 366).Draw(t, "season")),
			Mass: drawn(t, "mass", 1300, 4000, units.KilogramPerHectare), Leave: 1200 * units.KilogramPerHectare,
			Growth: drawn(t, "growth", -10, 60, units.KilogramPerHectareDay),
			Eaten:  drawn(t, "eaten", 0, 80, units.KilogramPerHectareDay), Lead: drawn(t, "lead", 0, 60, units.Day),
		}
		got, err := grazing.ShortOfFeed(g)
		require.NoError(t, err)
		require.True(t, g.Today <= got.Out && got.Out <= g.End)
		cover, err := grazing.CoverAfter(g.Mass, g.Growth, units.Demand(g.Eaten), units.SquareMetre, units.Days(got.Out-g.Today))
		if !units.Impossible(err) {
			require.GreaterOrEqual(t, float64(cover), float64(g.Leave)-1e-9)
		}
		if got.Missing > 0 {
			require.Less(t, float64(cover)-float64(g.Eaten-g.Growth), float64(g.Leave)+1e-9)
			days, err := grazing.GrazingDays(g.Mass, g.Leave, g.Eaten, g.Growth)
			require.NoError(t, err)
			require.InDelta(t, float64(days), float64(got.Out-g.Today), 1)
		}
		require.False(t, got.Missing > 0 && got.Spare > 0)
	})
}

// How long does the grass last, with 25 kg/ha eaten and 5 grown a day?
func ExampleGrazingDays() {
	days, _ := grazing.GrazingDays(2000*units.KilogramPerHectare, 1200*units.KilogramPerHectare, 25*units.KilogramPerHectareDay, 5*units.KilogramPerHectareDay)
	fmt.Println(days.In(units.Metric))
	// Output: 40 days
}

// Twenty cows eat 720 lb a day. What do they eat of hay in half a year?
func ExampleWinterFeed() {
	feed, _ := grazing.WinterFeed(720*units.PoundPerDay, 180*units.Day, 0, 0)
	fmt.Printf("%.1f short tons\n", feed.ShortTons())
	// Output: 64.8 short tons
}

// 8 t of feed for a herd that eats 10 t until spring: how much of it must go?
func ExampleHeadToSell() {
	part, _ := grazing.HeadToSell(8*units.DryMatterTonne, 10*units.DryMatterTonne)
	fmt.Println(part.In(units.Metric))
	// Output: 20 %
}

// Does the grass last until the end of July, and if not, when must I act?
func ExampleShortOfFeed() {
	today, _ := units.ParseDate("2026-06-01")
	end, _ := units.ParseDate("2026-07-31")
	short, _ := grazing.ShortOfFeed(grazing.GrassToday{
		Today: today, End: end, Mass: 2000 * units.KilogramPerHectare, Leave: 1200 * units.KilogramPerHectare,
		Growth: 5 * units.KilogramPerHectareDay, Eaten: 25 * units.KilogramPerHectareDay, Lead: 21 * units.Day,
	})
	fmt.Printf("%s: out on %s, decide by %s\n", short.Action, short.Out, short.Decide)
	// Output: watch: out on 2026-07-11, decide by 2026-06-20
}
