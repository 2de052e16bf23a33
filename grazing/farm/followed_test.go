package farm_test

import (
	"fmt"
	"os"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/grazing/farm"
	"example.org/soum/units"
)

// TestFollowedPlanGoesOn: a plan made from the document of a later day, written and read,
// has the moves and the masses of the plan that was followed up to then.
func TestFollowedPlanGoesOn(t *testing.T) {
	compared, underWay := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		holding := drawFarm(t)
		holding.Rotations[0].Groups[1].Behind = units.Days(rapid.IntRange(0, 6).Draw(t, "lag"))
		holding.Rotations[0].ShortestStrip = units.Length(rapid.SampledFrom([]float64{0, 1, 12}).Draw(t, "shortest strip"))
		if rapid.Bool().Draw(t, "paddocks") {
			holding.Rotations[0].Land, holding.Rotations[1].Land = []string{"plot", "long"}, []string{"short"}
			holding.Rotations[0].TurnIn, holding.Rotations[0].Leave = holding.Rotations[1].TurnIn, holding.Rotations[1].Leave
		}
		once, err := holding.Plan()
		require.NoError(t, err)
		days := rapid.IntRange(1, min(80, len(once.Days)-1)).Draw(t, "days")
		today := holding.Today.Add(days)
		next, err := holding.Followed(today)
		require.NoError(t, err)
		written, err := next.JSON(units.Metric)
		require.NoError(t, err)
		read, err := farm.Read(written)
		require.NoError(t, err)
		again, err := read.Plan()
		require.NoError(t, err)
		var want []farm.Move
		for _, m := range once.Moves {
			if m.Date >= today {
				want = append(want, m)
			}
		}
		require.Len(t, again.Moves, len(want))
		for i, w := range want {
			g := again.Moves[i]
			require.Equal(t, fmt.Sprint(w.Date, w.Land, w.Stay, w.Below), fmt.Sprint(g.Date, g.Land, g.Stay, g.Below))
			require.InDelta(t, w.From.Metres(), g.From.Metres(), 0.05)
			require.InDelta(t, w.To.Metres(), g.To.Metres(), 0.05)
		}
		for i, d := range again.Days {
			was := once.Days[days+i]
			require.InEpsilon(t, float64(was.Standing), float64(d.Standing), 1e-6, "day %d", i)
			require.InDelta(t, float64(was.Fed), float64(d.Fed), 1e-6*(1+float64(was.Wanted)), "day %d", i)
			require.InDelta(t, float64(was.Counted), float64(d.Counted), 1e-6*(1+float64(was.Wanted)), "day %d", i)
		}
		require.Equal(t, whoIsWhere(once, today), whoIsWhere(again, today))
		for _, m := range again.UnderWay {
			require.Less(t, m.Date, today)
			require.NotEmpty(t, m.Visits)
			underWay++
		}
		compared += len(want)
	})
	assert.Greater(t, compared, 1000)
	assert.Greater(t, underWay, 100)
}

// whoIsWhere lists group, land and day of every visit from a day on.
func whoIsWhere(p *farm.Plan, from units.Date) map[string]bool {
	all := map[string]bool{}
	for _, m := range slices.Concat(p.UnderWay, p.Moves) {
		for _, v := range m.Visits {
			for day := max(v.From, from); day <= v.To; day++ {
				all[fmt.Sprintln(v.Group, m.Land, day)] = true
			}
		}
	}
	return all
}

func byHand(t *testing.T, number int) *farm.Farm {
	t.Helper()
	data, err := os.ReadFile(fmt.Sprintf("testdata/by_hand/%d.json", number))
	require.NoError(t, err)
	holding, err := farm.Read(data)
	require.NoError(t, err)
	return holding
}

// TestHandCasesThroughDocuments plans the eight cases of internal/season/hand_test.go from
// their documents: what stands in the evenings, to the last digit of the sums, kg.
func TestHandCasesThroughDocuments(t *testing.T) {
	for number, evenings := range map[int]map[int]float64{
		1: {0: 172.5, 1: 160, 2: 147.5, 3: 140, 4: 140},
		2: {3: 21.6 + 30 + 12.5 + 85},
		5: {2: 355, 3: 335, 4: 315, 5: 295, 6: 275},
		6: {0: 108.743918, 30: 367.244202, 31: 369.792059, 60: 397.461732},
		7: {0: 736.666667, 1: 723.333333, 2: 710, 3: 696.666667, 4: 684.166667},
		8: {0: 346.666667, 1: 325.333333, 2: 275, 3: 259.5, 4: 239.5, 5: 219.5},
	} {
		p := plan(t, byHand(t, number))
		for day, want := range evenings {
			assert.InDelta(t, want, float64(p.Days[day].Standing), 1e-6, "case %d, day %d", number, day)
		}
	}
	stay := plan(t, byHand(t, 3))
	for day, want := range []float64{92.096381, 81.339146, 70.261046, 57.712720, 59.335737, 64.020407} {
		assert.InDelta(t, want, float64(stay.Days[day].Lands[0]), 1e-6, "day %d", day)
	}
	turnOut := plan(t, byHand(t, 4))
	assert.Equal(t, "2026-06-06", turnOut.Moves[0].Date.String())
	assert.InDelta(t, 21.331909, float64(turnOut.Moves[0].To), 1e-6)
	assert.InDelta(t, 39.389457, float64(turnOut.Moves[1].To), 1e-6)
	assert.InDelta(t, 50, float64(turnOut.Hay.Opening), 1e-6) // the cow's 10 kg of 1 to 5 June
	assert.InDelta(t, 50, float64(turnOut.Hay.Eaten), 1e-6)
	assert.True(t, turnOut.Verdict.Carries)
}

// TestFollowedByHand: the documents that the cases 3, 5 and 8 give.
func TestFollowedByHand(t *testing.T) {
	next, err := byHand(t, 3).Followed(dateOf(t, "2026-06-05"))
	require.NoError(t, err)
	require.NotNil(t, next.Land[0].Stay)
	stay := next.Land[0].Stay
	assert.Equal(t, "2026-06-01 3 days 4 days", fmt.Sprint(stay.From, " ", stay.Planned, " ", stay.Days))
	assert.Nil(t, next.Land[1].Stay)

	next, err = byHand(t, 5).Followed(dateOf(t, "2026-04-12"))
	require.NoError(t, err)
	lane := next.Land[0].Stretches
	require.Len(t, lane, 3)
	for i, want := range []struct {
		to, height float64
		grazed     string
		due        string
	}{{20, 0.1375, "2026-04-10", "2026-04-12"}, {40, 0.1375, "2026-04-11", "2026-04-13"}, {200, 0.2, "", ""}} {
		assert.InDelta(t, want.to, lane[i].To.Metres(), 1e-9)
		assert.InDelta(t, want.height, lane[i].Height.Metres(), 1e-9)
		if want.due == "" {
			assert.Nil(t, lane[i].Grazed)
			assert.Empty(t, lane[i].Due)
			continue
		}
		assert.Equal(t, want.grazed, lane[i].Grazed.String())
		require.Len(t, lane[i].Due, 1)
		assert.Equal(t, "ewe "+want.due, fmt.Sprint(lane[i].Due[0].Group, " ", lane[i].Due[0].Date))
		assert.InDelta(t, 6, float64(lane[i].Due[0].Eat), 1e-9)
		assert.InDelta(t, 0.8, float64(lane[i].Due[0].Use), 1e-9)
	}
	assert.Equal(t, "lane", next.Rotations[0].Front.Land)
	assert.InDelta(t, 40, next.Rotations[0].Front.At.Metres(), 1e-9)
	assert.Equal(t, "2026-04-10", next.Rotations[0].GrassFrom.String())
	assert.Equal(t, "2026-04-10", next.Season.From.String())

	next, err = byHand(t, 8).Followed(dateOf(t, "2026-04-13"))
	require.NoError(t, err)
	assert.Nil(t, next.Land[0].Stay)
	require.Len(t, next.Land[1].Stretches, 2)
	first := next.Land[1].Stretches[0]
	assert.InDelta(t, 8, first.To.Metres(), 1e-9)
	assert.InDelta(t, 0.1375, first.Height.Metres(), 1e-9)
	require.Len(t, first.Due, 1)
	assert.InDelta(t, 2.4, float64(first.Due[0].Eat), 1e-9)
	assert.InDelta(t, 8, next.Rotations[0].Front.At.Metres(), 1e-9)
	assert.Empty(t, next.Cuts)
}

// TestFollowedHerds does the same for farms with births, weaning, sales, weights that grow
// and an account of the soil's water.
func TestFollowedHerds(t *testing.T) {
	for _, path := range []string{"../../examples/season/data/farm.json", "../../examples/season/data/births.json", "testdata/weaned-behind-cows.json"} {
		data, err := os.ReadFile(path)
		require.NoError(t, err)
		holding, err := farm.Read(data)
		require.NoError(t, err)
		once := plan(t, holding)
		for days := 1; days < len(once.Days)-1; days += 7 {
			next, err := holding.Followed(holding.Today.Add(days))
			require.NoError(t, err, "%s, day %d", path, days)
			again := plan(t, next)
			for i, d := range again.Days {
				was := once.Days[days+i]
				require.InEpsilon(t, float64(was.Standing), float64(d.Standing), 1e-6, "%s, %d days on, day %d", path, days, i)
				require.InDelta(t, float64(was.Fed), float64(d.Fed), 1e-6*(1+float64(was.Wanted)), "%s, %d days on, day %d", path, days, i)
			}
		}
	}
}

// TestFollowedHay: the hay that a plan has left on a day, what it had in store, with what its
// cuts gave up to then and less what it fed, is what the document of that day has in store, down to
// nothing, and a plan from there has as much left at the end.
func TestFollowedHay(t *testing.T) {
	loss := 20 * units.Percent
	for _, store := range []units.FreshFeed{0, 2000, 100000} {
		holding := grownFarm(t)
		holding.Groups[0].Head, holding.Rotations[0].Land = 60, []string{"A"} // B is a meadow
		holding.Feed = farm.Feed{Hay: store, Loss: &loss, Waste: 10 * units.Percent, Note: "in the barn"}
		holding.Cuts = []farm.Cut{{Land: "B", Date: dateOf(t, "2001-05-10"), Stubble: 0.06}, {Land: "B", Date: dateOf(t, "2001-08-20"), Stubble: 0.06, To: 10}}
		once := plan(t, holding)
		for _, days := range []int{0, 5, 9, 10, 40, 111} {
			next, err := holding.Followed(holding.Today.Add(days))
			require.NoError(t, err)
			fed, made := units.DryMatter(0), units.FreshFeed(0)
			for _, d := range once.Days[:days] {
				fed += d.Fed
			}
			if days > 9 { // 2,080 m2 at 18 cm, grown on for 9 of 31 days of May, of 1.1 kg/m2 in a metre
				made = units.FreshFeed((afterMonths(0.18, 9.0/31) - 0.06) * 1.1 * 2080 * 0.8 / 0.9)
			}
			want := max(0, store+made-units.FreshFeed(float64(fed)/0.9/0.9))
			require.InDelta(t, float64(want), float64(next.Feed.Hay), 1e-6*(1+float64(want)), "%v kg, %d days", float64(store), days)
			again := plan(t, next)
			if want > 0 {
				require.InDelta(t, float64(once.Hay.Store+once.Hay.Made-once.Hay.Carried), float64(again.Hay.Store+again.Hay.Made-again.Hay.Carried), 1e-6*float64(store+10000))
			}
			require.Equal(t, "in the barn", next.Feed.Note)
		}
	}
}
