package farm_test

import (
	"encoding/json"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/grazing/farm"
	"example.org/soum/units"
)

func plan(t testing.TB, holding *farm.Farm) *farm.Plan {
	t.Helper()
	p, err := holding.Plan()
	require.NoError(t, err)
	return p
}

// drawFarm draws a variation of the small farm.
func drawFarm(t *rapid.T) *farm.Farm {
	holding, err := farm.Read([]byte(smallFarm))
	require.NoError(t, err)
	holding.Season.To = holding.Season.From.Add(70)
	for i := range holding.Land {
		holding.Land[i].Height = units.Height(rapid.Float64Range(0.03, 0.3).Draw(t, "height"))
		if holding.Land[i].Area == 0 {
			holding.Land[i].Width = units.Length(rapid.Float64Range(5, 60).Draw(t, "width"))
		}
	}
	for i := range holding.Groups {
		holding.Groups[i].Head = float64(rapid.IntRange(1, 15).Draw(t, "head"))
	}
	holding.Rotations[0].MovesADay = rapid.IntRange(1, 3).Draw(t, "moves")
	holding.Rotations[0].ShortestRest = units.Days(rapid.IntRange(1, 40).Draw(t, "rest"))
	holding.Rotations[0].Groups[1].Behind = units.Days(rapid.IntRange(0, 6).Draw(t, "behind"))
	return holding
}

// TestPlanInvariants holds plans of drawn farms against what every plan keeps.
func TestPlanInvariants(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		holding := drawFarm(t)
		p, err := holding.Plan()
		require.NoError(t, err)
		var grown, eaten, fed, wanted, visited units.DryMatter
		days := 0
		for _, m := range p.Months {
			grown, eaten, fed, wanted, days = grown+m.Grown, eaten+m.Eaten, fed+m.Fed, wanted+m.Wanted, days+m.Days
		}
		require.Equal(t, int(p.To-p.Today)+1, days)
		require.Len(t, p.Days, days)
		const rounding = 1e-9 // of growth: season rules
		require.LessOrEqual(t, math.Abs(p.Balance.Kilograms()), rounding*grown.Kilograms())
		require.InEpsilon(t, wanted.Kilograms(), (eaten + fed).Kilograms(), 1e-9)
		for _, m := range p.Moves {
			for _, v := range m.Visits {
				visited += v.Eaten
				require.LessOrEqual(t, v.From, v.To)
			}
			if m.Left > 0 {
				require.GreaterOrEqual(t, m.Left.Metres(), m.Leave.Metres()*(1-1e-9))
			}
			if m.ReadyAgain != nil {
				require.GreaterOrEqual(t, m.ReadyAgain.Sub(m.Date), holding.Rotations[m.Rotation].ShortestRest)
			}
		}
		require.InDelta(t, eaten.Kilograms(), visited.Kilograms(), 1e-6)
		hay := units.DryMatter(0)
		for _, f := range p.Feeding {
			hay += f.Wanted
		}
		require.InDelta(t, fed.Kilograms(), hay.Kilograms(), 1e-6)
		_, err = json.Marshal(p) // NaN and infinities cannot be written
		require.NoError(t, err)
	})
}

// TestTwiceTheFarm doubles widths, areas, head and hay: every mass doubles,
// dates, lengths and heights stay.
func TestTwiceTheFarm(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		holding := drawFarm(t)
		once, err := holding.Plan()
		require.NoError(t, err)
		for i := range holding.Land {
			holding.Land[i].Width *= 2
			holding.Land[i].Area *= 2
		}
		for i := range holding.Groups {
			holding.Groups[i].Head *= 2
		}
		holding.Feed.Hay *= 2
		twice, err := holding.Plan()
		require.NoError(t, err)
		require.Len(t, twice.Moves, len(once.Moves))
		for i, m := range once.Moves {
			d := twice.Moves[i]
			require.Equal(t, [3]any{m.Date, m.Land, m.Stay}, [3]any{d.Date, d.Land, d.Stay})
			require.InDelta(t, m.To.Metres(), d.To.Metres(), 1e-9*300)
			require.InEpsilon(t, 2*m.Area.SquareMetres(), d.Area.SquareMetres(), 1e-9)
		}
		for i, m := range once.Months {
			d := twice.Months[i]
			require.InDelta(t, 2*m.Grown.Kilograms(), d.Grown.Kilograms(), 1e-6)
			require.InDelta(t, 2*m.Eaten.Kilograms(), d.Eaten.Kilograms(), 1e-6)
			require.InDelta(t, 2*m.Fed.Kilograms(), d.Fed.Kilograms(), 1e-6)
			require.InDelta(t, 2*m.Standing.Kilograms(), d.Standing.Kilograms(), 1e-6)
		}
		require.InDelta(t, 2*once.Hay.Carried.Kilograms(), twice.Hay.Carried.Kilograms(), 1e-6)
		require.Equal(t, once.Verdict.Carries, twice.Verdict.Carries)
	})
}

// TestPlanLeavesTheFarmAlone plans twice and finds farm and plan as they were.
func TestPlanLeavesTheFarmAlone(t *testing.T) {
	holding := exampleFarm(t)
	before, err := holding.JSON(units.Metric)
	require.NoError(t, err)
	first, err := holding.Plan()
	require.NoError(t, err)
	second, err := holding.Plan()
	require.NoError(t, err)
	after, err := holding.JSON(units.Metric)
	require.NoError(t, err)
	require.Equal(t, string(before), string(after))
	one, err := json.Marshal(first)
	require.NoError(t, err)
	two, err := json.Marshal(second)
	require.NoError(t, err)
	require.Equal(t, string(one), string(two), "the same farm gives the same plan to the last byte")
}

func notes(p *farm.Plan) []string {
	var codes []string
	for _, n := range p.Notes {
		codes = append(codes, n.Code)
	}
	return codes
}

// TestNotes changes one thing and expects its note, which the farm without the
// change does not have.
func TestNotes(t *testing.T) {
	plain := notes(plan(t, readSmall(t, `"note": "ours"`, `"note": "ours"`)))
	for _, c := range []struct{ code, old, replacement string }{
		{"own-factor", `"note": "ours"`, `"own_factor": {"growth": "110 %", "why": "mixed stock"}`},
		{"no-waste", `, "waste": "10 %"`, ``},
		{"no-harvest-loss", `"note": "ours"`, `"cuts": [{"land": "long", "date": "2001-06-20", "stubble": "8 cm"}]`},
		{"leaves-little", `"leave": "8 cm"`, `"leave": "7 cm"`},
		{"order", `{"group": "milkers"}, {"group": "dry ewes", "behind": "2 days"}`, `{"group": "dry ewes"}, {"group": "milkers", "behind": "2 days"}`},
	} {
		changed := plan(t, readSmall(t, c.old, c.replacement))
		assert.Contains(t, notes(changed), c.code)
		if c.code != "leaves-little" { // the plot of the small farm leaves 4 cm already
			assert.NotContains(t, plain, c.code)
		}
	}
	assert.Contains(t, plain, "rain-not-known")
	assert.Contains(t, plain, "ceiling-ours")
	assert.Contains(t, plain, "water-not-known")  // geese
	assert.Contains(t, plain, "manure-not-known") // sheep and geese
	assert.Contains(t, plain, "legume-not-told")
	assert.Contains(t, plain, "fed")
}

// TestFeedingIsToldOnce: a group's note adds its spells up and names every reason.
func TestFeedingIsToldOnce(t *testing.T) {
	p := plan(t, readSmall(t, `"shortest_rest": "21 days"`, `"shortest_rest": "45 days"`))
	for _, group := range []string{"milkers", "dry ewes", "ganders"} {
		days, wanted, reasons := 0, units.DryMatter(0), map[string]int{}
		for _, f := range p.Feeding {
			if f.Group == group {
				days += int(f.To-f.From) + 1
				wanted += f.Wanted
				reasons[f.Why.String()] += int(f.To-f.From) + 1
			}
		}
		found := 0
		for _, n := range p.Notes {
			if n.Code != "fed" || n.Values["group"] != group {
				continue
			}
			found++
			assert.Equal(t, days, n.Values["days"])
			assert.InDelta(t, wanted.Kilograms(), n.Values["wanted_kg"], 1e-9)
			assert.Len(t, n.Values["why"], len(reasons))
			for _, d := range reasons {
				if len(reasons) > 1 {
					assert.Contains(t, n.English, fmt.Sprintf("(%d day", d))
				}
			}
		}
		assert.Equal(t, min(days, 1), found, group)
	}
}

// TestOutsideSourceIsNotedOnce moves the small farm twice a day: the share
// eaten is printed from one day of stay, so the plan says so, once, with the
// first day and the number of days.
func TestOutsideSourceIsNotedOnce(t *testing.T) {
	p := plan(t, readSmall(t, `"shortest_rest": "21 days"`, `"shortest_rest": "21 days", "moves_a_day": 2`))
	var found []farm.Note
	for _, n := range p.Notes {
		if n.Code == "outside-source" && n.Values["formula"] == "forage.UsableShare" {
			found = append(found, n)
		}
	}
	require.Len(t, found, 1)
	assert.Equal(t, 0.5, found[0].Values["value"])
	assert.Equal(t, 1.0, found[0].Values["low"])
	assert.Equal(t, "2001-05-01", found[0].Values["first_day"])
	days := 0 // of the strips, and of the plot's stays over the printed seven days
	for _, m := range p.Moves {
		if m.Rotation == 0 || m.Stay > 7 {
			days += int(m.Stay)
		}
	}
	assert.Equal(t, days, found[0].Values["days"])
}

// TestLongStaysAreNoted puts two geese on the plot, which it feeds for longer than the
// seven days of the printed table, and counts the days of the stays beyond it.
func TestLongStaysAreNoted(t *testing.T) {
	const printed = 7 // PSU-STAY
	p := plan(t, readSmall(t, `"class": "goose", "head": 6`, `"class": "goose", "head": 2`))
	days, within := 0, 0
	for _, m := range p.Moves {
		if m.Stay > printed {
			days += int(m.Stay)
		} else {
			within++
		}
	}
	require.Positive(t, days)
	require.Positive(t, within)
	assert.Equal(t, days, noteOf(t, p, "outside-source").Values["days"])
	exact := readSmall(t, `"class": "goose", "head": 6`, `"class": "goose", "head": 2`)
	exact.Season.To = exact.Today.Add(printed - 1) // the longest stay that the season leaves room for
	p = plan(t, exact)
	require.Equal(t, units.Days(printed), p.Moves[len(p.Moves)-1].Stay+p.Moves[len(p.Moves)-1].Date.Sub(exact.Today))
	assert.NotContains(t, notes(p), "outside-source")
	exact.Season.To++
	assert.Equal(t, printed+1, noteOf(t, plan(t, exact), "outside-source").Values["days"])
}

// TestRainScalesGrowth gives the small farm a spring with 75 % of its normal
// rain, the one printed point: from July on the key months are past and the
// growth of a stand nobody grazes follows 75 % of the normal, on the curve.
func TestRainScalesGrowth(t *testing.T) {
	normal := strings.TrimSuffix(strings.Repeat(`"100 mm", `, 12), ", ")
	rain := func(depth string) string {
		return fmt.Sprintf(`"rain": {"normal": [%s], "months": {"2001-04": "%s", "2001-05": "%s", "2001-06": "%s"}}`, normal, depth, depth, depth)
	}
	wet, dry := plan(t, readSmall(t, `"note": "ours"`, rain("100 mm"))), plan(t, readSmall(t, `"note": "ours"`, rain("75 mm")))
	more := plan(t, readSmall(t, `"note": "ours"`, rain("200 mm")))
	assert.Equal(t, wet.Months[2].Grown, more.Months[2].Grown, "rain above normal adds nothing")
	assert.Less(t, dry.Months[2].Grown, wet.Months[2].Grown)
	assert.Contains(t, notes(dry), "rain-below-normal")
	assert.NotContains(t, notes(wet), "rain-below-normal")
}

// TestOwnFactorMultipliesGrowth states a factor of 2 on a paddock that nobody
// grazes: its growth is that of twice the yield.
func TestOwnFactorMultipliesGrowth(t *testing.T) {
	p := plan(t, readSmall(t, `"note": "ours"`, `"own_factor": {"growth": "200 %", "why": "hope"}`))
	doubled := readSmall(t, `"note": "ours"`, `"note": "ours"`)
	for i := range doubled.Land {
		row, err := farm.YieldOf(doubled, i)
		require.NoError(t, err)
		doubled.Land[i].Yield = 2 * row
	}
	q := plan(t, doubled)
	require.InEpsilon(t, q.Months[0].Grown.Kilograms(), p.Months[0].Grown.Kilograms(), 1e-9)
	assert.Equal(t, units.Fraction(2), p.Factor)
	assert.Equal(t, units.Fraction(1), q.Factor)
}

// TestPassesBesideTheRule holds the plan's passes against its moves, and the
// rule against print: 35 in give five passes [HFG-CYCLES].
func TestPassesBesideTheRule(t *testing.T) {
	p := plan(t, readSmall(t, `"note": "ours"`, `"rain": {"year": "35 in"}`))
	assert.InDelta(t, 5, p.Passes.Rule, 1e-9)
	area := units.Area(0)
	for _, m := range p.Moves {
		area += m.Area
	}
	all := 20.0*300 + 20*200 + 2000 // m², from the small farm
	assert.InEpsilon(t, area.SquareMetres()/all, p.Passes.Planned, 1e-9)
}

// TestFenceOfTheSmallFarm adds the fence by hand: two lanes of 20 m standing
// apart, 2 × (300 + 20) + 2 × (200 + 20) m, a paddock of 2,000 m² taken as a
// square of 44.72 m a side; cross wires for three strips in use (two days
// behind), four of 20 m, which take two rolls of 50 m.
func TestFenceOfTheSmallFarm(t *testing.T) {
	p := plan(t, readSmall(t, `"note": "ours"`, `"fence": {"roll": "50 m", "pace": "0.8 m"}`))
	assert.InDelta(t, 2*320+2*220+4*math.Sqrt(2000), p.Fence.Sides.Metres(), 1e-6)
	assert.InDelta(t, 80, p.Fence.Cross.Metres(), 1e-9)
	assert.Equal(t, 3, p.Fence.Strips)
	assert.Equal(t, 2, p.Fence.Rolls)
	assert.True(t, p.Fence.Assumed)
	first := p.Moves[0]
	assert.InDelta(t, first.Length.Metres()/0.8, first.Paces, 1e-9)
	assert.InDelta(t, 20.0/50, first.Rolls, 1e-12)
}

// TestHayOfAFarmWithoutGrass shuts the small farm's grass off (a turn-in height
// nothing reaches by May) and adds the hay by hand: 8 ewes in milk and 5 dry
// ewes of 150 lb at 4.5 % and 2.5 % [NCAT-MATH] for May to August, 123 days.
func TestHayOfAFarmWithoutGrass(t *testing.T) {
	holding := readSmall(t, `"shortest_rest": "21 days"`, `"shortest_rest": "500 days"`)
	holding.Land[0].Grazed, holding.Land[1].Grazed = &holding.Today, &holding.Today
	holding.Groups = holding.Groups[:2]
	holding.Rotations = holding.Rotations[:1]
	p := plan(t, holding)
	const pound = 0.45359237
	daily := 8*150*pound*0.045 + 5*150*pound*0.025
	require.InEpsilon(t, 123*daily, p.Hay.Eaten.Kilograms(), 1e-9)
	require.InEpsilon(t, 123*daily/0.88/0.9, p.Hay.Carried.Kilograms(), 1e-9) // 88 % dry matter, 10 % wasted
	require.InEpsilon(t, 123*daily/0.88/0.9-1000, p.Hay.Short.Kilograms(), 1e-9)
	assert.Equal(t, 123, p.Hay.Days)
	assert.False(t, p.Verdict.Carries)
	assert.Equal(t, farm.LimitRest, p.Verdict.Limit)
	assert.True(t, slices.ContainsFunc(p.Feeding, func(f farm.Feeding) bool { return f.Why == farm.FeedNoRest }))
}
