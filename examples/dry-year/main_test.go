package main

import (
	"bytes"
	"context"
	"fmt"
	"image/color"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/examples/internal/painted"
	"example.org/soum/examples/internal/wichita"
	"example.org/soum/grazing"
	"example.org/soum/grazing/farm"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

func told(t *testing.T, args ...string) string {
	t.Helper()
	var out bytes.Buffer
	require.NoError(t, run(context.Background(), args, &out))
	return out.String()
}

// figure gives the number at the place of a pattern's group.
func figure(t *testing.T, text, pattern string) float64 {
	t.Helper()
	found := regexp.MustCompile(pattern).FindStringSubmatch(text)
	require.Len(t, found, 2, "%s in\n%s", pattern, text)
	v, err := strconv.ParseFloat(found[1], 64)
	require.NoError(t, err)
	return v
}

// TestOddsAreThoseOfTheYears plans each year of the record by itself, the first three
// months as the farm's gauge has them, and counts those whose feed is more than the
// hay: 12 t at 88 % dry matter less 15 % waste. 2,000 draws lie within four standard
// errors of that share.
func TestOddsAreThoseOfTheYears(t *testing.T) {
	text := told(t)
	record, err := rainfall.ReadMonths(wichita.Record())
	require.NoError(t, err)
	normals, err := rainfall.MonthNormals(record)
	require.NoError(t, err)
	allowed := 12000 * 0.88 * (1 - 0.15)
	for _, c := range []struct {
		head    float64
		pattern string
	}{{30, `does not reach in ([\d.]+) %`}, {33, `With 33 cows: short in ([\d.]+) %`}, {36, `With 36 cows: short in ([\d.]+) %`}} {
		short := 0.0
		for year := 1980; year <= 2010; year++ {
			holding, err := farm.Read(ownFarm)
			require.NoError(t, err)
			holding.Groups[0].Head = c.head
			holding.Rain.Normal = normals[:]
			for _, r := range record {
				if r.Year == year && r.Month > 3 {
					holding.Rain.Months[fmt.Sprintf("2012-%02d", r.Month)] = r.Rain
				}
			}
			plan, err := holding.Plan()
			require.NoError(t, err)
			if float64(plan.Hay.Eaten-plan.Hay.Opening) > allowed {
				short += 1.0 / 31
			}
		}
		require.Positive(t, short)
		assert.InDelta(t, 100*short, figure(t, text, c.pattern), 400*math.Sqrt(short*(1-short)/2000), "%v head", c.head)
	}
}

// TestTellsDates: the farm's gauge has 9 + 31 + 44 mm. The record's means of January
// to April are 21.5938, 29.8406, 67.95 and 63.7562 mm (R 4.2.2), so that on 15 April
// 0.75 × (119.3844 + 63.7562 × 14/30) = 111.85 mm are asked for, 27.85 more than fell.
func TestTellsDates(t *testing.T) {
	text := told(t, "-seasons", "50")
	for _, line := range []string{
		"31 whole years, 1980 to 2010",
		"2012-04-15  under 112 mm since 2012-01-01, 75 % of normal (printed for Nebraska Sandhills)",
		"[CHERRY-TRIGGER]. So far 84 mm in the whole months on record; with 27.9 mm more by the gauge it is enough\n",
		"2012-07-01  under 153 mm since 2012-04-01, 50 % of normal (printed for North Dakota): without rain by now, expect 30 % less forage or worse [NDSU-JULY-RULE]\n",
		"(after a key month of all land)", "the means of the record",
		"First to go: spring and summer calvers",
		"November ",
	} {
		assert.Contains(t, text, line)
	}
	assert.Contains(t, told(t, "-seasons", "50", "-draw", "gamma"), "each month's rain drawn")
	assert.Equal(t, text, told(t, "-seasons", "50"), "the same seed, the same answer")
	assert.NotEqual(t, text, told(t, "-seasons", "50", "-seed", "2"))
	assert.Contains(t, told(t, "-seasons", "1"), "1 season from")
}

// changed gives the path of the farm within after some changes.
func changed(t *testing.T, fromTo ...string) string {
	t.Helper()
	data := string(ownFarm)
	for i := 0; i < len(fromTo); i += 2 {
		require.Contains(t, data, fromTo[i])
	}
	path := filepath.Join(t.TempDir(), "farm.json")
	require.NoError(t, os.WriteFile(path, []byte(strings.NewReplacer(fromTo...).Replace(data)), 0o600))
	return path
}

// TestNoTriggerStandsTwice: a date may come more than once, a trigger of it not.
func TestNoTriggerStandsTwice(t *testing.T) {
	seen := map[string]bool{}
	for _, line := range regexp.MustCompile(`(?m)^  \d{4}-\d\d-\d\d .*$`).FindAllString(told(t, "-seasons", "50"), -1) {
		trigger := regexp.MustCompile(`\d+ % of normal \(.*?\)`).FindString(line)
		require.NotEmpty(t, trigger, line)
		assert.False(t, seen[line[:12]+trigger], line)
		seen[line[:12]+trigger] = true
	}
	assert.Len(t, seen, 7)
}

// TestGoesByTheFarmsOwnGauge: the record has 2001 too, with other rain. In a July the
// farm's gauge decides what is past: 84 mm and at most April's 20 are under 111.85;
// 20 + 30 + 40 are under the 153 of July. Where more fell that is said; what is to
// come is not judged.
func TestGoesByTheFarmsOwnGauge(t *testing.T) {
	assert.Contains(t, told(t, "-seasons", "50", "-farm", changed(t, "2012", "2001")), "2001-04-15  under 112 mm since 2001-01-01, 75 % of normal (printed for Nebraska Sandhills): cut the summer's stocking by 10 % [CHERRY-TRIGGER]. So far 84 mm")
	july := []string{`"today": "2012-04-15"`, `"today": "2012-07-05"`, `"from": "2012-04-20"`, `"from": "2012-07-06"`}
	dry := told(t, "-seasons", "50", "-farm", changed(t, append(july, `"2012-03": "44 mm"`, `"2012-03": "44 mm", "2012-04": "20 mm", "2012-05": "30 mm", "2012-06": "40 mm"`)...))
	assert.Contains(t, dry, "[CHERRY-TRIGGER]. Less has fallen, 84 mm in whole months: act\n")
	assert.Contains(t, dry, "[NDSU-JULY-RULE]. Less has fallen, 90 mm in whole months: act\n")
	wet := told(t, "-seasons", "50", "-farm", changed(t, append(july, `"2012-03": "44 mm"`, `"2012-03": "144 mm", "2012-04": "160 mm"`)...))
	assert.Contains(t, wet, "[CHERRY-TRIGGER]. Enough has fallen, 184 mm\n")
	assert.Contains(t, wet, "[NDSU-JULY-RULE]. Enough has fallen, 160 mm\n")
	early := told(t, "-seasons", "50", "-farm", changed(t, `"2012-03": "44 mm"`, `"2012-03": "44 mm", "2012-04": "160 mm"`))
	assert.Contains(t, early, "[NDSU-JULY-RULE]\n", "July has not come")
	none := told(t, "-seasons", "50", "-farm", changed(t, `"months": {"2012-01": "9 mm", "2012-02": "31 mm", "2012-03": "44 mm"}`, `"months": {}`))
	assert.Contains(t, none, "[CHERRY-TRIGGER]. Read your gauge: the farm's rain.months has none of these months\n")
	own := told(t, "-seasons", "50", "-farm", changed(t, `"rain": {`, `"rain": {"normal": ["10 mm", "10 mm", "10 mm", "30 mm", "10 mm", "10 mm", "10 mm", "10 mm", "10 mm", "10 mm", "10 mm", "10 mm"], `))
	assert.Contains(t, own, "normals: the farm's own")
	assert.Contains(t, own, "2012-04-15  under 33 mm since 2012-01-01", "0.75 × (30 + 30 × 14/30)")
	two := told(t, "-seasons", "50", "-farm", changed(t, `"id": "8", "area": "3 ha", "pasture": "mixed-pasture"`, `"id": "8", "area": "3 ha", "pasture": "warm-season-grass"`))
	assert.Contains(t, two, "(after a key month of land 8)")
}

func TestNoDatesWithoutKeyMonths(t *testing.T) {
	var out bytes.Buffer
	say := teller{out: &out, plan: &farm.Plan{}}
	say.dates()
	assert.Contains(t, out.String(), "no land of this farm has key months")
}

// TestDecides: the days are those without feed less the lead.
func TestDecides(t *testing.T) {
	text := told(t, "-seasons", "300", "-lead", "3 weeks")
	for first, decide := range map[string]string{`by (\S+) in one of twenty`: `one in twenty wants you to decide by (\S+)\.`, `it does so on (\S+)`: `half of them want you to decide by (\S+)\.`} {
		var days [2]units.Date
		for i, pattern := range []string{first, decide} {
			found := regexp.MustCompile(pattern).FindStringSubmatch(text)
			require.Len(t, found, 2, text)
			require.NoError(t, days[i].UnmarshalText([]byte(found[1])))
		}
		assert.Equal(t, 21*units.Day, days[0].Sub(days[1]))
	}
	assert.Contains(t, text, "takes 21 days (your -lead)")
	assert.Contains(t, told(t, "-seasons", "300"), "takes 30 days (a figure of ours")
	assert.Contains(t, told(t, "-seasons", "300", "-lead", "300 days"), ": today, or sooner.")
	today, ok := units.NewDate(2012, 4, 15)
	require.True(t, ok)
	for _, c := range []struct {
		first, lead, decide int
		action              grazing.FeedAction
	}{{100, 30, 70, grazing.FeedWatch}, {100, 100, 0, grazing.FeedDecide}, {0, 30, -30, grazing.FeedDecide}, {800, 30, 770, grazing.FeedWatch}} {
		short, err := decideBefore(today, today.Add(c.first), units.Days(c.lead)*units.Day)
		require.NoError(t, err)
		assert.Equal(t, today.Add(c.decide), short.Decide, c)
		assert.Equal(t, c.action, short.Action, c)
	}
}

// TestOtherStock: one animal reads as one, and no calver goes first among goats.
func TestOtherStock(t *testing.T) {
	text := told(t, "-seasons", "50", "-farm", changed(t, "suckler-cow", "dairy-goat", `"cows"`, `"goats"`, `"head": 30`, `"head": 2`))
	assert.Contains(t, text, "With 1 head of goats: short")
	assert.Contains(t, text, "With 2 goats: short")
	assert.Contains(t, text, "the printed orders are of cattle")
	assert.NotContains(t, text, "calvers")
}

func TestDrawsTheFan(t *testing.T) {
	path := filepath.Join(t.TempDir(), "fan.png")
	told(t, "-seasons", "300", "-picture", path)
	colours, err := painted.Colours(path)
	require.NoError(t, err)
	for _, c := range []color.RGBA{{0xc6, 0xdb, 0xef, 0xff}, {0x6b, 0xae, 0xd6, 0xff}, {0x08, 0x45, 0x94, 0xff}, {0xd5, 0x5e, 0x00, 0xff}} {
		assert.True(t, colours[c], "%v", c)
	}
	for _, span := range [][2]float64{{-21, 9}, {0, 3}, {-300, 80}, {0, 0.5}} {
		ticks := byFives(span[0], span[1])
		assert.LessOrEqual(t, len(ticks), 11)
		assert.NotEmpty(t, ticks)
	}
}

func TestRefuses(t *testing.T) {
	for says, args := range map[string][]string{
		`no group "sheep" with animals; its groups are cows`:                            {"-group", "sheep"},
		`"farm.json" is no flag: -farm takes`:                                           {"farm.json"},
		"-lead: grazing.ShortOfFeed: lead is 400 days, must be from 0 days to 366 days": {"-lead", "400 days"},
		"the unit is missing": {"-lead", "5"},
		"seasons: 0":          {"-seasons", "0"},
		"no such file":        {"-record", "none.csv"},
		"no such word":        {"-draw", "days"},
	} {
		assert.ErrorContains(t, run(context.Background(), args, new(bytes.Buffer)), says)
	}
	assert.Contains(t, told(t, "-help"), "-lead")
	stopped, stop := context.WithCancel(context.Background())
	stop()
	assert.ErrorIs(t, run(stopped, nil, new(bytes.Buffer)), context.Canceled)
	holding, err := farm.Read(ownFarm)
	require.NoError(t, err)
	// 12 t at 88 % dry matter less 15 % waste
	assert.InDelta(t, 8976, float64(dryMatter(holding)/units.DryMatter(1)), 1e-6)
}

// TestTriesWholeHerds counts the herds tried round small ones: never under one head,
// and the farm's own among them, where the answers stand.
func TestTriesWholeHerds(t *testing.T) {
	holding, err := farm.Read(ownFarm)
	require.NoError(t, err)
	for _, c := range []struct {
		head, low, high float64
		own             int
	}{
		{1, 1, 3, 0}, {2, 1, 4, 1}, {3, 1, 5, 2}, {4, 1, 6, 3}, {30, 21, 36, 3},
	} {
		holding.Groups[0].Head = c.head
		sweep, own, err := headsRound(holding, holding.Groups[0].ID)
		require.NoError(t, err)
		assert.Equal(t, units.Span[float64]{Low: c.low, High: c.high}, *sweep.Span)
		assert.Equal(t, c.own, own)
		assert.Equal(t, own+more+1, sweep.Steps)
	}
	holding.Groups = append(holding.Groups, holding.Groups[0])
	holding.Groups[0].Head, holding.Groups[1].ID, holding.Groups[1].Head = 0, "heifers", 5
	_, _, err = headsRound(holding, holding.Groups[0].ID)
	assert.ErrorContains(t, err, "begins without animals")
	sweep, _, err := headsRound(holding, "")
	require.NoError(t, err)
	assert.Equal(t, "heifers", sweep.Group, "the first that has animals")
}
