package farm_test

import (
	"fmt"
	"slices"
	"testing"

	"example.org/soum/grazing/farm"
	"example.org/soum/units"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestRoomOfPlan keeps one head fewer and one more on the plot of 0.2 ha, which is
// 0.4942 ac, than print puts on an acre: hens 50, geese 40, sows 8, pigs over 100 lb 20.
func TestRoomOfPlan(t *testing.T) {
	const acres = 0.2 * 2.47105
	for _, c := range []struct {
		class string
		acre  float64
		says  string
	}{
		{"laying-hen", 50, "PLAMONDON-HENS"}, {"goose", 40, "MISSOURI-GOSLING"}, {"sow", 8, "UMN-SOW"}, {"growing-pig", 20, "UMN-SOW"},
	} {
		most := int(c.acre * acres)
		for head, told := range map[int]bool{most: false, most + 1: true} {
			holding := readSmall(t, `"class": "goose", "head": 6`, fmt.Sprintf(`"class": %q, "head": %d`, c.class, head))
			p := plan(t, holding)
			if !told {
				assert.NotContains(t, notes(p), "room", c.class)
				continue
			}
			n := noteOf(t, p, "room")
			assert.Contains(t, n.English, c.says)
			assert.InDelta(t, c.acre/4046.8564224, n.Values["printed_per_m2"], 1e-12)
			assert.InDelta(t, float64(head)/2000, n.Values["head_per_m2"], 1e-12)
		}
	}
}

// TestGeeseWantShortGrass lets geese onto a plot that grows from under 4 in, which is
// 10.16 cm, past it.
func TestGeeseWantShortGrass(t *testing.T) {
	holding := readSmall(t, `"height": "15 cm"`, `"height": "12 cm"`)
	p := plan(t, holding)
	above, tallest := 0, 0.0
	for _, m := range p.Moves {
		if m.Land == "plot" && m.Height.Metres() > 0.1016 {
			above, tallest = above+1, max(tallest, m.Height.Metres())
		}
	}
	require.Positive(t, above)
	n := noteOf(t, p, "tall-for-geese")
	assert.Equal(t, above, n.Values["times"])
	assert.Equal(t, tallest, n.Values["tallest_m"])
	assert.InDelta(t, 0.1016, n.Values["limit_m"], 1e-12)

	holding.Land[2].Height = 10.1 * units.HeightCentimetre
	holding.Season.To = holding.Today.Add(5) // and once, in the first days, on less than that
	p = plan(t, holding)
	require.Equal(t, "plot", p.Moves[slices.IndexFunc(p.Moves, func(m farm.Move) bool { return m.Rotation == 1 })].Land)
	for _, m := range p.Moves {
		if m.Land == "plot" {
			require.Less(t, m.Height.Metres(), 0.1016)
		}
	}
	assert.NotContains(t, notes(p), "tall-for-geese")

	holding = readSmall(t, `"class": "goose"`, `"class": "ewe"`)
	assert.NotContains(t, notes(plan(t, holding)), "tall-for-geese")
}

// TestBirdIntervalIsCustom puts hens two days behind ewes, beside them, and ewes
// behind ewes.
func TestBirdIntervalIsCustom(t *testing.T) {
	hens := readSmall(t, `"class": "ewe", "head": 5`, `"class": "laying-hen", "head": 5`)
	n := noteOf(t, plan(t, hens), "bird-interval")
	assert.Equal(t, 2.0, n.Values["days"])
	assert.Contains(t, n.English, "PHILLIPS-BROILERS")
	hens.Rotations[0].Groups[1].Behind = 0
	assert.NotContains(t, notes(plan(t, hens)), "bird-interval")
	assert.NotContains(t, notes(plan(t, readSmall(t, `"note": "ours"`, `"note": "ours"`))), "bird-interval")
}

// TestFenceOfPlanWantsCurrent: one joule a mile of 1,609.344 m, and 4.8 ft of rod of
// 0.3048 m for each joule; a dead fence wants neither.
func TestFenceOfPlanWantsCurrent(t *testing.T) {
	holding := readSmall(t, `"note": "ours"`, `"note": "ours"`)
	f := plan(t, holding).Fence
	joules := (f.Sides + f.Cross).Metres() / 1609.344
	assert.InDelta(t, joules, float64(f.Energizer), 1e-9)
	assert.InDelta(t, joules*4.8*0.3048, f.Rods.Metres(), 1e-9)
	holding.Fence.Dead = true
	f = plan(t, holding).Fence
	assert.Zero(t, f.Energizer)
	assert.Zero(t, f.Rods)
}

// TestRegrowthAdvice: a group alone stays too long; a last group comes too late.
func TestRegrowthAdvice(t *testing.T) {
	p := plan(t, readSmall(t, `"behind": "2 days"`, `"behind": "5 days"`))
	advice := map[any]string{}
	for _, c := range p.Cautions {
		if c.Code == "regrowth bitten" {
			advice[c.Values["group"]] = c.Do
		}
	}
	assert.Contains(t, advice["ganders"], "Shorten the stay")
	assert.Contains(t, advice["dry ewes"], "between the first and the last group")
}
