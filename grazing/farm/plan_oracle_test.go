package farm_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/forage"
	"example.org/soum/grazing/farm"
	"example.org/soum/herd"
	"example.org/soum/units"
)

// TestWormsAgainstAllVisits holds the worms of every visit against what a walk through
// all visits before it gives, by herd.WormRisk of each dung's first and last day, and the
// note against a count.
func TestWormsAgainstAllVisits(t *testing.T) {
	classes := []string{"ewe", "dairy-ewe", "dairy-goat", "suckler-cow", "alpaca", "goose", "growing-lamb"}
	seen := map[herd.WormReturn]int{}
	rapid.Check(t, func(t *rapid.T) {
		holding := drawFarm(t)
		holding.Season.To = holding.Season.From.Add(rapid.IntRange(70, 400).Draw(t, "days"))
		holding.WormRest = herd.RestRule(rapid.IntRange(1, 3).Draw(t, "rule"))
		kinds := map[string]herd.Kind{}
		for i := range holding.Groups {
			name := rapid.SampledFrom(classes).Draw(t, "class")
			class, err := herd.ClassByName(name)
			require.NoError(t, err)
			holding.Groups[i].Class.Name, holding.Groups[i].Stage = name, 0
			kinds[holding.Groups[i].ID] = class.Kind
		}
		p, err := holding.Plan()
		require.NoError(t, err)
		visits, infective := map[string]int{}, map[string]int{}
		for i := range p.Moves {
			for _, v := range p.Moves[i].Visits {
				want := wormsLeft(t, p.Moves[:i+1], v, kinds, holding.WormRest)
				require.Equal(t, want, v.Worms, "%s on %s", v.Group, v.From)
				seen[want]++
				if want > 0 {
					visits[v.Group]++
				}
				if want >= herd.ReturnInfective {
					infective[v.Group]++
				}
			}
		}
		for _, n := range p.Notes {
			if group, _ := n.Values["group"].(string); n.Code == "worms" {
				require.Equal(t, []any{visits[group], infective[group]}, []any{n.Values["visits"], n.Values["infective"]})
				delete(infective, group)
			}
		}
		require.Empty(t, infective, "no note of these")
	})
	for worms := herd.WormReturn(0); worms <= herd.ReturnPeak; worms++ {
		assert.Positive(t, seen[worms], "no visit drawn of class %d", worms)
	}
}

// wormsLeft is the worst that visits of moves, the last of them its own, left for a visit.
func wormsLeft(t require.TestingT, moves []farm.Move, visit farm.Visit, kinds map[string]herd.Kind, rule herd.RestRule) herd.WormReturn {
	kind, own := kinds[visit.Group], &moves[len(moves)-1]
	if kind != herd.Sheep && kind != herd.Goats {
		return 0
	}
	worst := herd.ReturnOtherHost
	for i := range moves {
		m := &moves[i]
		if m.Land != own.Land || (own.Length > 0 && (m.To <= own.From || m.From >= own.To)) {
			continue
		}
		for _, was := range m.Visits {
			if was.To >= visit.From {
				continue
			}
			for _, dung := range []units.Date{was.From, was.To} {
				risk, err := herd.WormRisk(kinds[was.Group], kind, visit.From.Sub(dung), rule)
				require.NoError(t, err)
				worst = max(worst, risk)
			}
		}
	}
	return worst
}

// TestTwoLandsAgainstVisits holds the days on which leaders are on two lands against its
// visits.
func TestTwoLandsAgainstVisits(t *testing.T) {
	told := 0
	rapid.Check(t, func(t *rapid.T) {
		holding := drawFarm(t)
		third := holding.Land[1]
		third.ID = "third"
		holding.Land = append(holding.Land, third)
		holding.Rotations[0].Land = append(holding.Rotations[0].Land, "third")
		for i, length := range []units.Length{0: 30, 1: 6, 3: 6} { // so that lanes end often
			if length > 0 {
				holding.Land[i].Length = length
			}
		}
		p, err := holding.Plan()
		require.NoError(t, err)
		for _, rotation := range holding.Rotations {
			leader := rotation.Groups[0].Group
			var want []string
			for day := p.From; day <= p.To; day++ {
				var lands []string
				for i := range p.Moves {
					m := &p.Moves[i]
					here := func(v farm.Visit) bool { return v.Group == leader && v.From <= day && day <= v.To }
					if slices.ContainsFunc(m.Visits, here) && !slices.Contains(lands, m.Land) {
						lands = append(lands, m.Land)
					}
				}
				if len(lands) > 1 {
					want = append(want, day.String())
				}
			}
			var got farm.Values
			for _, n := range p.Notes {
				if n.Code == "two-lands" && n.Values["group"] == leader {
					got = n.Values
				}
			}
			if len(want) == 0 {
				require.Nil(t, got, leader)
				continue
			}
			require.Equal(t, len(want), got["days"], leader)
			require.Equal(t, want[0], got["first"], leader)
			told += len(want)
		}
	})
	assert.Positive(t, told)
}

// TestEveryLandGrowsByItself plans two lands in rotations of their own, unlike in one
// figure, and finds each as it stands on a farm without the other.
func TestEveryLandGrowsByItself(t *testing.T) {
	twins := func() *farm.Farm {
		holding := readSmall(t, `"pasture": "bluegrass-clover"`, `"pasture": "mixed-pasture"`)
		holding.Land = []farm.Land{holding.Land[0], holding.Land[1]}
		holding.Land[0].Length, holding.Land[0].Height, holding.Land[1].Grazed = holding.Land[1].Length, holding.Land[1].Height, nil
		holding.Groups[2] = holding.Groups[1]
		holding.Groups[2].ID = "ganders"
		holding.Rotations[0].Land, holding.Rotations[0].Groups = []string{"long"}, []farm.Member{{Group: "dry ewes"}}
		holding.Rotations[1] = holding.Rotations[0]
		holding.Rotations[1].Land, holding.Rotations[1].Groups = []string{"short"}, []farm.Member{{Group: "ganders"}}
		return holding
	}
	for name, change := range map[string]func(*farm.Farm){
		"nothing":      func(*farm.Farm) {},
		"yield":        func(f *farm.Farm) { f.Land[1].Yield = 0.4 },
		"ceiling":      func(f *farm.Farm) { f.Land[1].Ceiling = 0.9 },
		"turn-in":      func(f *farm.Farm) { f.Rotations[1].TurnIn = 0.17 },
		"what is left": func(f *farm.Farm) { f.Rotations[1].Leave = 0.06 },
		"density":      func(f *farm.Farm) { f.Land[1].Density = 1.2 },
		"pasture": func(f *farm.Farm) { // of the same figures but the months
			row, err := forage.PastureByName("mixed-pasture")
			require.NoError(t, err)
			row.Shares[5], row.Shares[6] = row.Shares[6], row.Shares[5]
			f.Land[1].Pasture.Row = &row
		},
	} {
		both := twins()
		change(both)
		together := plan(t, both)
		for i := range both.Land {
			alone := twins()
			change(alone)
			alone.Land = alone.Land[i : i+1]
			alone.Rotations = alone.Rotations[i : i+1]
			single := plan(t, alone)
			for day := range single.Days {
				require.Equal(t, single.Days[day].Lands[0], together.Days[day].Lands[i], "%s, land %d, day %d", name, i, day)
			}
		}
		last := together.Days[len(together.Days)-1].Lands
		assert.Equal(t, name == "nothing", last[0] == last[1], name)
	}
}
