package farm_test

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/grazing/farm"
	"example.org/soum/herd"
	"example.org/soum/units"
)

// birthsFarm is the invented holding of the second example: calving, lambing,
// farrowing, and lambs that go into a group of their own.
func birthsFarm(t testing.TB) *farm.Farm {
	t.Helper()
	data, err := os.ReadFile("../../examples/season/data/births.json")
	require.NoError(t, err)
	holding, err := farm.Read(data)
	require.NoError(t, err)
	return holding
}

// TestDemandFollowsTheBirths holds every change of the season against sums done
// here: head × weight × share of weight × share from pasture, with the shares of
// the class rows at the middle of their spans.
func TestDemandFollowsTheBirths(t *testing.T) {
	p := plan(t, birthsFarm(t))
	ewe := 8 * 68.0
	cow := 2 * 550.0
	sow := 2 * 170.0 / (375 * 0.45359237) // their figures are for 375 lb
	for i, want := range []struct {
		date, group   string
		before, after float64
	}{
		{"2026-04-20", "ewes", ewe * 0.025, ewe * 4.0 / 150},                      // 42 days before 1 June; 4.0 lb for 150 lb
		{"2026-05-15", "cows", cow * 0.0215, cow * 0.0245},                        // 279 days from 9 August 2025
		{"2026-06-01", "ewes", ewe * 4.0 / 150, ewe * 0.045},                      // 147 days from 5 January
		{"2026-06-10", "sows", sow * (0.42 + 2.4) / 2, sow * (0.472 + 0.574) / 2}, // less grass: a sow in milk is fed more at the trough
		{"2026-07-22", "sows", sow * (0.472 + 0.574) / 2, sow * (0.42 + 2.4) / 2},
		{"2026-08-24", "ewes", ewe * 0.045, ewe * 0.025},
		{"2026-08-24", "lambs", 0, 12 * 27 * 2.5 / 85}, // 2.5 lb for 85 lb
		{"2026-09-20", "cows", cow * 0.0245, cow * 0.0215},
	} {
		require.Less(t, i, len(p.Changes))
		got := p.Changes[i]
		assert.Equal(t, want.date+" "+want.group, got.Date.String()+" "+got.Group)
		assert.InDelta(t, want.before, float64(got.Before), 1e-9, want.date)
		assert.InDelta(t, want.after, float64(got.After), 1e-9, want.date)
	}
	require.Len(t, p.Changes, 8)

	// The first and last 12 lambs: 27 kg on 24 August, 37 days of 0.2 kg later.
	last := p.Days[len(p.Days)-1]
	all := cow*0.0215 + ewe*0.025 + sow*1.41 + 12*(27+37*0.2)*2.5/85
	assert.Equal(t, "2026-09-30", last.Date.String())
	assert.InDelta(t, all, float64(last.Wanted), 1e-9)
}

// TestBirthsAreToldWithTheirRange: cows go 270 to 289 days, ewes 145 to 150
// (VT-REPRODUCTION); a birth of which the day is given has no range.
func TestBirthsAreToldWithTheirRange(t *testing.T) {
	var told []string
	for _, b := range plan(t, birthsFarm(t)).Births {
		told = append(told, fmt.Sprint(b.Group, " ", b.Early, " ", b.Likely, " ", b.Late, " ", b.Weaned))
	}
	assert.Equal(t, []string{
		"cows 2026-05-06 2026-05-15 2026-05-25 2026-09-20",
		"ewes 2026-05-30 2026-06-01 2026-06-04 2026-08-24",
		"sows 2026-06-10 2026-06-10 2026-06-10 2026-07-22",
	}, told)
}

// TestBirthsCautions: the cautions that apply to that farm, and no others.
func TestBirthsCautions(t *testing.T) {
	assert.Equal(t, []string{"copper and sheep", "sheep beside deer or cattle", "bulls and cows with calves", "electric fence and people"}, cautions(plan(t, birthsFarm(t))))
	dry := birthsFarm(t)
	dry.Groups[0].Births = nil
	dry.Groups[0].Stage = herd.StageDry
	assert.NotContains(t, cautions(plan(t, dry)), "bulls and cows with calves")
}

// TestEventsBesideBirths: on one day the document's own word wins, and young come
// on top of the head that are there.
func TestEventsBesideBirths(t *testing.T) {
	holding := birthsFarm(t)
	weaned, head, stage := *holding.Groups[1].Births[0].Weaned, 5.0, herd.StageLactating
	holding.Groups[1].Events = []farm.Event{{Date: weaned, Stage: &stage}}
	holding.Groups[2].Head = 3
	holding.Groups[2].Events = []farm.Event{{Date: weaned.Add(-3), Head: &head}}
	p := plan(t, holding)
	var lambs []string
	for _, c := range p.Changes {
		assert.NotEqual(t, weaned.String()+" ewes", c.Date.String()+" "+c.Group)
		if c.Group == "lambs" {
			lambs = append(lambs, fmt.Sprint(c.Date, " ", c.Head))
		}
	}
	assert.Equal(t, []string{"2026-08-21 5", "2026-08-24 17"}, lambs)
}

// TestOwnHeadOnAWeaningDay: where the document gives the head of the day on which young
// are weaned, it is that number, however many come.
func TestOwnHeadOnAWeaningDay(t *testing.T) {
	holding := birthsFarm(t)
	head := 20.0
	holding.Groups[2].Events = []farm.Event{{Date: *holding.Groups[1].Births[0].Weaned, Head: &head}}
	for _, c := range plan(t, holding).Changes {
		if c.Group == "lambs" {
			assert.Equal(t, head, c.Head)
		}
	}
}

// TestStageBeforeABirth: a cow whose stage the document does not tell is in milk, as her
// class's first stage is, whatever births are to come; to take her for dry would
// understate her by 28 % (3.0 and 2.15 % of her weight).
func TestStageBeforeABirth(t *testing.T) {
	holding := birthsFarm(t)
	holding.Groups, holding.Rotations = holding.Groups[:1], holding.Rotations[:1]
	holding.Rotations[0].Groups = []farm.Member{{Group: holding.Groups[0].ID}}
	holding.Groups[0] = farm.Group{ID: holding.Groups[0].ID, Class: herd.ClassRow{Name: "dairy-cow"}, Head: 1}
	before := plan(t, holding).Days[0].Wanted
	born := holding.Season.To
	holding.Groups[0].Births = []farm.Birth{{Date: &born}}
	assert.Equal(t, before, plan(t, holding).Days[0].Wanted)
	assert.InEpsilon(t, 1400*0.45359237*0.030, float64(before), 1e-9)
}

// TestYoungWeanedBehindAnotherKind: lambs that follow cows onto ground where no sheep
// have been find no worms of their like there, and the plan is made (it was not).
func TestYoungWeanedBehindAnotherKind(t *testing.T) {
	data, err := os.ReadFile("testdata/weaned-behind-cows.json")
	require.NoError(t, err)
	holding, err := farm.Read(data)
	require.NoError(t, err)
	came := 0
	for _, m := range plan(t, holding).Moves {
		for _, v := range m.Visits {
			if v.Group == "lambs" && came == 0 {
				assert.Equal(t, herd.ReturnOtherHost, v.Worms)
				came++
			}
		}
	}
	assert.Positive(t, came)
}

// TestGrowthEnds: from today's 27 kg the lambs reach 45 kg after 90 days of 200 g.
func TestGrowthEnds(t *testing.T) {
	holding := birthsFarm(t)
	holding.Groups[1].Births = nil
	holding.Groups[2].Head = 12
	holding.Rotations[0].Groups = holding.Rotations[0].Groups[:1]
	holding.Rotations, holding.Groups = holding.Rotations[:1], holding.Groups[2:3]
	p := plan(t, holding)
	for day, weight := range map[int]float64{0: 27, 1: 27.2, 89: 44.8, 90: 45, 150: 45} {
		assert.InDelta(t, 12*weight*2.5/85, float64(p.Days[day].Wanted), 1e-9, day)
	}
	at := holding.Today.Add(10)
	weighed := 30 * units.LiveKilogram
	holding.Groups[0].Events = []farm.Event{{Date: at, Weight: &weighed}}
	p = plan(t, holding)
	assert.InDelta(t, 12*31*2.5/85, float64(p.Days[15].Wanted), 1e-9) // growth goes on from the weight in the document
	require.Len(t, p.Changes, 1)
	assert.InDelta(t, 30, p.Changes[0].Weight.Kilograms(), 1e-9)
}

// TestGroupsThatBeginEmpty lead nobody's verdict and carry no count of head.
func TestGroupsThatBeginEmpty(t *testing.T) {
	holding := birthsFarm(t)
	leaders, err := holding.Leaders()
	require.NoError(t, err)
	require.Len(t, leaders, 2)
	assert.Equal(t, "cows", leaders[0].Group)
	_, err = holding.Carries("lambs")
	assert.ErrorContains(t, err, "begins without animals")
}

// TestBadBirths puts one thing wrong at a time.
func TestBadBirths(t *testing.T) {
	data, err := os.ReadFile("../../examples/season/data/births.json")
	require.NoError(t, err)
	for _, c := range []struct{ old, bad, path, says string }{
		{`"date": "2026-06-10", `, ``, "groups[3].births[0]", "one of them"},
		{`"date": "2026-06-10"`, `"date": "2026-06-10", "service": "2026-02-16", "by": "frandson"`, "groups[3].births[0]", "both"},
		{`"date": "2026-06-10"`, `"date": "2026-06-10", "by": "frandson"`, "groups[3].births[0]", "without service"},
		{`"2026-01-05", "by": "virginia"`, `"2026-01-05"`, "groups[1].births[0].by", "virginia, 147 days"},
		{`"2026-01-05", "by": "virginia"`, `"2026-01-05", "by": "merck"`, "groups[1].births[0].by", "lists, 150 days"},
		{`"2026-01-05", "by": "virginia"`, `"2026-01-05", "by": "lists", "animal": "yew"`, "groups[1].births[0].animal", "ewe-twins"},
		{`"2026-07-22"`, `"2026-06-10"`, "groups[3].births[0].weaned", "after 2026-06-10"},
		{`"date": "2026-06-10"`, `"date": "2026-06-10", "late": "1.5 days"`, "groups[3].births[0].late", "whole days"},
		{`, "young": 12`, ``, "groups[1].births[0]", "together"},
		{`"young": 12`, `"young": -12`, "groups[1].births[0].young", "above 0"},
		{`"into": "lambs"`, `"into": "ewes"`, "groups[1].births[0].into", "another group"},
		{`"into": "lambs"`, `"into": "lamps"`, "groups[1].births[0].into", "another group"},
		{`"gain": "0.2 kg/day"`, `"gain": "-0.2 kg/day"`, "groups[2].gain", "above 0"},
		{`"gain": "0.2 kg/day", `, ``, "groups[2].grown", "gain beside it"},
		{`"grown": "45 kg"`, `"grown": "25 kg"`, "groups[2].grown", "above the weight"},
		{`"class": "sow"`, `"class": "growing-pig"`, "groups[3].births[0]", "no figures for stock in milk"},
	} {
		require.Equal(t, 1, strings.Count(string(data), c.old), c.old)
		_, err := farm.Read([]byte(strings.Replace(string(data), c.old, c.bad, 1)))
		require.Error(t, err, c.bad)
		assert.ErrorContains(t, err, c.path+":", c.bad)
		assert.ErrorContains(t, err, c.says, c.bad)
	}
}

// TestWormsAreMarked brings ewes round a single short lane: back after their
// shortest rest of 30 days is at the peak of the larvae in a temperate climate
// (28 to 35 days, EXT-GOAT-WORMS), rested in the tropics (30 days).
func TestWormsAreMarked(t *testing.T) {
	holding := readSmall(t, `"class": "ewe", "head": 5`, `"class": "suckler-cow", "head": 1`)
	holding.Rotations[0].ShortestRest = 30
	holding.Rotations[0].Land = []string{"short"}
	p := plan(t, holding)
	worms := map[string]int{}
	for _, m := range p.Moves {
		for _, v := range m.Visits {
			worms[v.Group+" "+v.Worms.String()]++
			if m.Pass == 1 && v.Group == "milkers" {
				assert.Equal(t, herd.ReturnOtherHost, v.Worms, m.Date)
			}
		}
	}
	assert.Positive(t, worms["milkers peak"])
	assert.Positive(t, worms["dry ewes "], "print has no days of the worms of cattle") // the group is of cows here
	note := noteOf(t, p, "worms")
	assert.Equal(t, "temperate", note.Values["rule"])
	assert.Equal(t, worms["milkers peak"], note.Values["peak"])
	assert.Equal(t, worms["milkers peak"]+worms["milkers infective"], note.Values["infective"])

	holding.WormRest = herd.RestTropics
	for _, m := range plan(t, holding).Moves {
		for _, v := range m.Visits {
			if v.Group == "milkers" {
				assert.LessOrEqual(t, v.Worms, herd.ReturnRested, m.Date)
			}
		}
	}
}

// TestFollowersOfTheSameWorms: ewes two days behind other ewes meet larvae that are
// not infective yet; four days behind they do (WVU-WORMS).
func TestFollowersOfTheSameWorms(t *testing.T) {
	for behind, want := range map[units.Days]herd.WormReturn{2: herd.ReturnNotInfective, 4: herd.ReturnInfective} {
		holding := readSmall(t, `"note": "ours"`, `"note": "ours"`)
		holding.Rotations[0].Groups[1].Behind = behind
		for _, v := range plan(t, holding).Moves[0].Visits {
			if v.Group == "dry ewes" {
				assert.Equal(t, want, v.Worms)
			}
		}
	}
}

// TestMixedDietsAreTold: the middles of UGA-DIETS are cattle 70 : 25 : 7.5 and
// sheep 50 : 35 : 15, each made to add up to a whole.
func TestMixedDietsAreTold(t *testing.T) {
	holding := readSmall(t, `"class": "ewe", "head": 5`, `"class": "suckler-cow", "head": 1`)
	note := noteOf(t, plan(t, holding), "mixed-diets")
	overlap := 50.0/100 + 25/102.5 + 7.5/102.5
	assert.InDelta(t, overlap, note.Values["overlap"], 1e-12)
	assert.InDelta(t, 1-overlap+overlap/2, note.Values["of_each"], 1e-12)
	for _, n := range plan(t, readSmall(t, `"note": "ours"`, `"note": "ours"`)).Notes {
		assert.NotEqual(t, "mixed-diets", n.Code, "all are sheep")
	}
}

// TestManureOfOtherTables: a sheep goes by the lamb of the handbook, N 0.45, P
// 0.07 and K 0.30 lb for 1,000 lb a day with 40 lb of manure (AWMFH-2008); of
// goats England prints no potash.
func TestManureOfOtherTables(t *testing.T) {
	holding := birthsFarm(t)
	holding.Groups[0].Class.Name, holding.Groups[0].Births = "meat-goat", nil
	p := plan(t, holding)
	days := 169.0 // 15 April to 30 September
	thousands := 8 * 68 / (1000 * 0.45359237)
	ewes := p.Manure[1]
	assert.Equal(t, "lamb, handbook", ewes.Row)
	assert.InEpsilon(t, 40*0.45359237*thousands*days, float64(ewes.Mass), 1e-9)
	assert.InEpsilon(t, 0.45*0.45359237*thousands*days, float64(ewes.Nitrogen), 1e-9)
	assert.InEpsilon(t, 0.07*2.29*0.45359237*thousands*days, float64(ewes.Phosphate), 2e-3)
	assert.InEpsilon(t, 0.30*1.20*0.45359237*thousands*days, float64(ewes.Potash), 5e-3)
	goats := p.Manure[0]
	assert.InEpsilon(t, 0.041*2*days, float64(goats.Nitrogen), 1e-9) // 41 g a day (NVZ-2015)
	assert.Equal(t, []herd.Excreta{herd.ExcretaManure, herd.ExcretaPotash}, goats.Missing)
	assert.True(t, goats.Known)
	noteOf(t, p, "manure-known-in-part")
}

func noteOf(t testing.TB, p *farm.Plan, code string) farm.Note {
	t.Helper()
	for _, n := range p.Notes {
		if n.Code == code {
			return n
		}
	}
	require.Failf(t, "no such note", "%s", code)
	return farm.Note{}
}
