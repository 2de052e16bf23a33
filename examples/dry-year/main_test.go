package main

import (
	"bytes"
	"context"
	"fmt"
	"image/color"
	"math"
	"path/filepath"
	"regexp"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/examples/internal/painted"
	"example.org/soum/examples/internal/wichita"
	"example.org/soum/grazing"
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
	}{{30, `does not reach in ([\d.]+) %`}, {33, `With 33 cows: short in ([\d.]+) %`}, {24, `With 24 cows: short in ([\d.]+) %`}} {
		short := 0.0
		for year := 1980; year <= 2010; year++ {
			farm, err := grazing.ReadFarm(ownFarm)
			require.NoError(t, err)
			farm.Groups[0].Head = c.head
			farm.Rain.Normal = normals[:]
			for _, r := range record {
				if r.Year == year && r.Month > 3 {
					farm.Rain.Months[fmt.Sprintf("2012-%02d", r.Month)] = r.Rain
				}
			}
			plan, err := grazing.PlanSeason(farm)
			require.NoError(t, err)
			if float64(plan.Hay.Eaten) > allowed {
				short += 1.0 / 31
			}
		}
		require.Positive(t, short)
		assert.InDelta(t, 100*short, figure(t, text, c.pattern), 400*math.Sqrt(short*(1-short)/2000), "%v head", c.head)
	}
}

// TestTellsDates: the farm's gauge has 9 + 31 + 44 mm; the means of the record are
// those of R 4.2.2, 118 mm for the same months.
func TestTellsDates(t *testing.T) {
	text := told(t, "-seasons", "50")
	for _, line := range []string{
		"31 whole years, 1980 to 2010",
		"2012-04-15  84 mm of 118 mm, 71 % of normal: act",
		"2012-07-01  if under 153 mm since 2012-04-01: without rain by now",
		"First to go:",
		"November ",
	} {
		assert.Contains(t, text, line)
	}
	assert.Contains(t, told(t, "-seasons", "50", "-draw", "gamma"), "each month's rain drawn")
	assert.Equal(t, text, told(t, "-seasons", "50"), "the same seed, the same answer")
	assert.NotEqual(t, text, told(t, "-seasons", "50", "-seed", "2"))
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
		`no group "sheep"`: {"-group", "sheep"},
		"seasons: 0":       {"-seasons", "0"},
		"no such file":     {"-record", "none.csv"},
		"no such word":     {"-draw", "days"},
	} {
		assert.ErrorContains(t, run(context.Background(), args, new(bytes.Buffer)), says)
	}
	stopped, stop := context.WithCancel(context.Background())
	stop()
	assert.ErrorIs(t, run(stopped, nil, new(bytes.Buffer)), context.Canceled)
	farm, err := grazing.ReadFarm(ownFarm)
	require.NoError(t, err)
	// 12 t at 88 % dry matter less 15 % waste
	assert.InDelta(t, 8976, float64(dryMatter(farm)/units.DryMatter(1)), 1e-6)
}

// TestTriesWholeHerds counts the herds tried round small ones: never under one head,
// and the farm's own among them, where the answers stand.
func TestTriesWholeHerds(t *testing.T) {
	farm, err := grazing.ReadFarm(ownFarm)
	require.NoError(t, err)
	for _, c := range []struct {
		head, low, high float64
		own             int
	}{
		{1, 1, 3, 0}, {2, 1, 4, 1}, {3, 1, 5, 2}, {4, 1, 6, 3}, {30, 21, 36, 3},
	} {
		farm.Groups[0].Head = c.head
		sweep, own, err := headsRound(farm, farm.Groups[0].ID)
		require.NoError(t, err)
		assert.Equal(t, units.Span[float64]{Low: c.low, High: c.high}, *sweep.Span)
		assert.Equal(t, c.own, own)
		assert.Equal(t, own+more+1, sweep.Steps)
	}
	farm.Groups[0].Head = 0
	_, _, err = headsRound(farm, farm.Groups[0].ID)
	assert.ErrorContains(t, err, "begins without animals")
}
