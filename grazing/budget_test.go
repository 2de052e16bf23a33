package grazing_test

import (
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
