package fit_test

import (
	"context"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/grazing/fit"
	"example.org/soum/herd"
	"example.org/soum/internal/document"
	"example.org/soum/units"
)

// smallFitting is a whole question in few words, which the tests change: a
// hectare of grass that grows 3,000 kg to be eaten in May and as much in June,
// and stock of 100 kg that eats 3 kg a day.
const smallFitting = `{
  "version": 1, "goal": "animal units",
  "land": [{"id": "meadow", "area": "1 ha", "yield": "10000 kg/ha", "months": ["0 %", "0 %", "0 %", "0 %", "50 %", "50 %", "0 %", "0 %", "0 %", "0 %", "0 %", "0 %"], "use": "60 %"}],
  "stock": [{"id": "wethers", "class": {"name": "wether", "kind": "sheep", "weight": "100 kg", "intake": [{"stage": "dry", "share": {"low": "2 %", "high": "4 %"}}], "pasture": {"low": "100 %", "high": "100 %"}}, "months": [5, 6], "eats": "anything"}],
  "note": "ours", "x-colour": 1
}`

// wether is the class of the small question.
const wether = `{"name": "wether", "kind": "sheep", "weight": "100 kg", "intake": [{"stage": "dry", "share": {"low": "2 %", "high": "4 %"}}], "pasture": {"low": "100 %", "high": "100 %"}}`

// changedFitting gives the small question with texts put in place of others.
func changedFitting(t testing.TB, pairs ...string) string {
	t.Helper()
	text := smallFitting
	for i := 0; i < len(pairs); i += 2 {
		require.Equal(t, 1, strings.Count(text, pairs[i]), "%q must stand once", pairs[i])
		text = strings.Replace(text, pairs[i], pairs[i+1], 1)
	}
	return text
}

func readFitting(t testing.TB, text string) *fit.Question {
	t.Helper()
	f, err := fit.Read([]byte(text))
	require.NoError(t, err)
	return f
}

func fitStock(t testing.TB, f *fit.Question) fit.Answer {
	t.Helper()
	a, err := f.Answer()
	require.NoError(t, err)
	return a
}

// auOf100 is the animal units of 100 kg: 100 ÷ 453.59237.
const auOf100 = 100 / 453.59237

// TestFitStockByHand: a wether eats 93 kg in May and 90 in June; 3,000 ÷ 93 =
// 32.26 and 3,000 ÷ 90 = 33.33, so May holds: 32 whole ones. A kilogram more of May
// grass carries 1/93 of one. A tonne more lets June hold in its place: 33.33, which
// is 1.075 more. A hectare more doubles both: 32.26 more.
func TestFitStockByHand(t *testing.T) {
	a := fitStock(t, readFitting(t, smallFitting))
	require.True(t, a.Fits && a.Found && a.Proved)
	assert.InDelta(t, 3000.0/93, a.Relaxed.Head[0].Head, 1e-9)
	assert.InDelta(t, 3000.0/93*auOf100, a.Relaxed.Value, 1e-9)
	assert.Equal(t, []fit.Head{{ID: "wethers", Head: 32}}, a.Whole.Head)
	assert.InDelta(t, 32*auOf100, float64(a.Whole.Units), 1e-9)
	assert.InDelta(t, 32*auOf100, a.Whole.Value, 1e-9)

	require.Len(t, a.Binds, 3)
	land, hay, may := a.Binds[0], a.Binds[1], a.Binds[2]
	// A tonne of hay, 900 kg of dry matter, lets both months hold: (93 + 90) × 37.70 =
	// 6,900.
	assert.InDelta(t, 0.9/93*auOf100, hay.Price, 1e-12)
	assert.InDelta(t, 6900.0/183-3000.0/93, hay.Changes[0].Head, 1e-6)
	assert.Equal(t, fit.Rule{Kind: fit.RuleLand, ID: "meadow", Months: []int{}, English: "the land of meadow"}, land.Rule)
	assert.InDelta(t, 3000.0/93*auOf100/10000, land.Price, 1e-12)
	assert.InDelta(t, 10000, land.More, 1e-9)
	assert.InDelta(t, 3000.0/93, land.Changes[0].Head, 1e-6)
	assert.Equal(t, fit.Rule{Kind: fit.RuleGrowth, ID: "grass", Months: []int{5}, English: "grass in May"}, may.Rule)
	assert.InDelta(t, auOf100/93, may.Price, 1e-12)
	assert.InDelta(t, 1000, may.More, 1e-9)
	assert.InDelta(t, (3000.0/90-3000.0/93)*auOf100, may.Gain, 1e-9)
	assert.Equal(t, "1 t more of May grass would carry 1.08 more wethers (0.237 animal units more).", may.English)

	require.Len(t, a.Months, 12)
	want := fit.Month{Month: 5, Grass: fit.Feed{Supply: 3000, Eaten: 32 * 93, Left: 24}, Wanted: 32 * 93}
	assert.Empty(t, cmp.Diff(want, a.Months[4], within))
	want = fit.Month{Month: 6, Grass: fit.Feed{Supply: 3000, Eaten: 32 * 90, Left: 120}, Wanted: 32 * 90}
	assert.Empty(t, cmp.Diff(want, a.Months[5], within))
	assert.Zero(t, a.Months[0].Wanted)

	// Hungry stock eat 4 %: 124 kg in May; modest stock 2 %: 62.
	require.Len(t, a.Spans, 3)
	for i, eats := range []float64{124, 93, 62} {
		assert.True(t, a.Spans[i].Fits)
		assert.InDelta(t, 3000/eats, a.Spans[i].Head[0].Head, 1e-9)
	}
	low := fitStock(t, readFitting(t, changedFitting(t, `"goal": "animal units"`, `"goal": "animal units", "end": "low"`)))
	assert.InDelta(t, 3000.0/124, low.Relaxed.Head[0].Head, 1e-9)
	assert.Equal(t, "32 wethers: 7.05 animal units. With parts of animals allowed it would be 7.11 animal units. No herd of whole animals is better. It is fed no hay. 1 ha more of meadow would carry 32.3 more wethers (7.11 animal units more). 1 t more of hay in store would carry 5.45 more wethers (1.2 animal units more). 1 t more of May grass would carry 1.08 more wethers (0.237 animal units more).", a.English)
}

var within = cmp.Comparer(func(a, b units.DryMatter) bool { return math.Abs(float64(a-b)) < 1e-6 })

// TestFitStockMonths: the need of every month is the days of a common year times
// 3 kg, here in 12 months with hay enough: 1 wether, 1,095 kg in the year.
func TestFitStockMonths(t *testing.T) {
	f := readFitting(t, changedFitting(t, `"months": [5, 6]`, `"most": 1`, `"note": "ours"`, `"hay": {"store": "2 t", "dry_matter": "80 %", "waste": "20 %"}`))
	a := fitStock(t, f)
	for i, days := range []float64{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31} {
		assert.InDelta(t, 3*days, float64(a.Months[i].Wanted), 1e-9, "month %d", i+1)
	}
	// 365 − 31 − 30 = 304 days of hay: 912 kg of dry matter ÷ 0.8 ÷ 0.8 = 1,425 kg.
	assert.InDelta(t, 912/0.8/0.8, float64(a.Whole.Hay), 1e-6)
	assert.Zero(t, a.Whole.Bought)
	f.Hay.DryMatter = 0 // 90 % where it is left out
	assert.InDelta(t, 912/0.9/0.8, float64(fitStock(t, f).Whole.Hay), 1e-6)

	// What May leaves can be eaten in June by half, that in July by half, and so on
	// round the year: one wether wants 93 of May's 3,000.
	f.Hay.Store, f.Carry = 0, 50*units.Percent
	f.Stock[0].Most = nil
	a = fitStock(t, f)
	left, head := 0.0, a.Relaxed.Head[0].Head
	for range 100 { // a hundred years of it
		for i, days := range []float64{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31} {
			grown := 0.0
			if i == 4 || i == 5 {
				grown = 3000
			}
			left = left*0.5 + grown - 3*days*head
		}
	}
	// April ends the winter with nothing left: the year is held by it.
	for _, days := range []float64{31, 28, 31, 30} {
		left = left*0.5 - 3*days*head
	}
	assert.InDelta(t, 0, left, 1e-6)
	for i, m := range a.Months {
		before := a.Months[(i+11)%12].Grass.Left
		grown := units.DryMatter(0)
		if i == 4 || i == 5 {
			grown = 3000
		}
		assert.InDelta(t, float64(grown+before/2), float64(m.Grass.Supply), 1e-6)
		assert.InDelta(t, float64(m.Grass.Supply-m.Grass.Eaten), float64(m.Grass.Left), 1e-6)
	}
}

// TestFitStockStages: a ewe of 68.04 kg (150 lb) that lambs in March and weans
// in June eats 4.5 % in milk from March to May, in February 4 lb (late gestation,
// 1.814 kg), else 2.5 %.
func TestFitStockStages(t *testing.T) {
	f := readFitting(t, changedFitting(t, wether, `"ewe"`, `"months": [5, 6]`, `"most": 1, "birth": 3, "weaned": 6`, `"note": "ours"`, `"hay": {"store": "20 t"}`))
	weight := 150 * 0.45359237
	want := func(month int, days, day float64) {
		assert.InDelta(t, days*day, float64(fitStock(t, f).Months[month-1].Wanted), 1e-6, "month %d", month)
	}
	want(1, 31, weight*0.025)
	want(2, 28, 4*0.45359237)
	want(3, 31, weight*0.045)
	want(5, 31, weight*0.045)
	want(6, 30, weight*0.025)
	want(12, 31, weight*0.025)
	f.Stock[0].Birth, f.Stock[0].Weaned = 11, 2 // over the turn of the year
	want(1, 31, weight*0.045)
	want(2, 28, weight*0.025)
	want(10, 31, 4*0.45359237)
	want(11, 30, weight*0.045)
	f.Stock[0].Birth, f.Stock[0].Weaned, f.Stock[0].Stage = 0, 0, herd.StageLactating
	want(7, 31, weight*0.045)
	f.Stock[0].Weight = 50
	want(7, 31, 50*0.045)
	// Hens are fed a ration where nothing grows: 4 lb × 4.55 % × 7.5 % in May alone.
	f.Stock[0].Class.Name, f.Stock[0].Stage, f.Stock[0].Weight = "laying-hen", 0, 0
	want(1, 31, 0)
	want(5, 31, 4*0.45359237*0.0455*0.075)
}

// TestFitStockDiets: goats that eat browse alone beside the wethers that eat
// grass alone: what each carries alone, both carry together. Where both eat
// anything the sum is shared.
func TestFitStockDiets(t *testing.T) {
	goats := `, {"id": "goats", "class": {"name": "goat", "kind": "goats", "weight": "50 kg", "intake": [{"stage": "dry", "share": {"low": "4 %", "high": "4 %"}}], "pasture": {"low": "100 %", "high": "100 %"}}, "months": [5, 6], "eats": "own", "diet": {"grass": {"low": "0 %", "high": "0 %"}, "forbs": {"low": "0 %", "high": "0 %"}, "browse": {"low": "100 %", "high": "100 %"}}}],
  "note"`
	f := readFitting(t, changedFitting(t, `"use": "60 %"`, `"use": "60 %", "browse": "20 %"`, "],\n  \"note\"", goats,
		`"eats": "anything"`, `"eats": "own", "diet": {"grass": {"low": "100 %", "high": "100 %"}, "forbs": {"low": "0 %", "high": "0 %"}, "browse": {"low": "0 %", "high": "0 %"}}`))
	a := fitStock(t, f)
	// Of 3,000 kg 2,400 are grass, at 93 kg a wether; 600 browse, at 31 × 2 = 62 a goat.
	assert.InDelta(t, 2400.0/93, a.Relaxed.Head[0].Head, 1e-9)
	assert.InDelta(t, 600.0/62, a.Relaxed.Head[1].Head, 1e-9)

	// Wethers with a tenth of browse, no more and no less: what the goats have left
	// of the browse, and the grass, hold them: 0.9 × 93 w = 2,400 and 0.1 × 93 w + 62 g
	// = 600.
	tenth := func(low, high units.Fraction) units.Span[units.Fraction] {
		return units.Span[units.Fraction]{Low: low, High: high}
	}
	f.Stock[0].Diet.Grass, f.Stock[0].Diet.Browse = tenth(0.9, 0.9), tenth(0.1, 0.1)
	wethers := 2400 / 0.9 / 93
	a = fitStock(t, f)
	assert.InDelta(t, wethers, a.Relaxed.Head[0].Head, 1e-9)
	assert.InDelta(t, (600-0.1*93*wethers)/62, a.Relaxed.Head[1].Head, 1e-9)

	// Both eat anything: per kilogram eaten a wether is worth more, for it eats 3 %
	// of its weight and a goat 4 %.
	f.Stock[0].Eats, f.Stock[0].Diet, f.Stock[1].Eats, f.Stock[1].Diet = fit.DietAnything, nil, fit.DietAnything, nil
	a = fitStock(t, f)
	assert.InDelta(t, 3000.0/93, a.Relaxed.Head[0].Head, 1e-9)
	assert.Zero(t, a.Relaxed.Head[1].Head)

	// Printed sheep: at most 55 % grass, 40 % forbs, 20 % browse; with forbs wanting,
	// at least 30 % of them. Land of 50 % grass, 30 % forbs, 20 % browse is their diet.
	f.Stock = f.Stock[:1]
	f.Stock[0].Eats, f.Land[0].Forbs, f.Land[0].Browse = fit.DietPrinted, 0.3, 0.2
	assert.InDelta(t, 3000.0/93, fitStock(t, f).Relaxed.Head[0].Head, 1e-9)
	f.Land[0].Forbs, f.Land[0].Browse = 0.15, 0.2 // 450 kg of forbs are 30 % of 1,500
	assert.InDelta(t, 1500.0/93, fitStock(t, f).Relaxed.Head[0].Head, 1e-9)
	f.Land[0].Forbs, f.Land[0].Browse = 0.3, 0.5 // 600 kg of grass, 900 of forbs, browse up to 20 %: 1,500 ÷ 0.8
	f.Stock[0].Eats = fit.DietUpToPrinted
	assert.InDelta(t, 600/0.4/93, fitStock(t, f).Relaxed.Head[0].Head, 1e-9) // forbs 40 %, browse 20 %, so grass 40 % at least
	f.Land[0].Forbs, f.Land[0].Browse = 0, 0
	assert.InDelta(t, 3000.0/93, fitStock(t, f).Relaxed.Head[0].Head, 1e-9)
	f.Stock[0].Eats = fit.DietPrinted
	assert.Zero(t, fitStock(t, f).Relaxed.Head[0].Head)
}

// TestFitStockRules holds the herd by each rule in turn; 32.26 wethers is what
// grass carries.
func TestFitStockRules(t *testing.T) {
	for _, c := range []struct {
		name, with string
		head       float64
		kind       fit.RuleKind
		price      float64 // of the head
		more       float64
		says       string
	}{
		{"housing", `"housing": [{"id": "barn", "room": 40, "takes": {"wethers": 2}, "unit": "places"}]`, 20, fit.RuleHousing, 0.5, 1, "1 more in the room of barn (40 places) would carry 0.5 more wethers"},
		{"water", `"water": {"supply": "100 L/day"}`, 10, fit.RuleWater, 100, 0.1, "100 L/day more of water from May to June would carry 10 more wethers"},
	} {
		text := changedFitting(t, `"note": "ours"`, c.with, `"eats": "anything"`, `"eats": "anything", "drinks": "10 L/day"`)
		a := fitStock(t, readFitting(t, text))
		assert.InDelta(t, c.head, a.Relaxed.Head[0].Head, 1e-9, c.name)
		require.Len(t, a.Binds, 1, c.name)
		assert.Equal(t, c.kind, a.Binds[0].Rule.Kind)
		assert.InDelta(t, c.price*auOf100, a.Binds[0].Price, 1e-9, c.name)
		assert.InDelta(t, c.more, a.Binds[0].More, 1e-9, c.name)
		assert.Contains(t, a.Binds[0].English, c.says)
	}
	f := readFitting(t, changedFitting(t, `"months": [5, 6]`, `"most": 7.5, "months": [5, 6]`))
	a := fitStock(t, f)
	assert.InDelta(t, 7.5, a.Relaxed.Head[0].Head, 1e-9)
	assert.InDelta(t, 7, a.Whole.Head[0].Head, 0)
	assert.Equal(t, fit.RuleMost, a.Binds[0].Rule.Kind)
	f.Stock[0].Least = 7.25
	a = fitStock(t, f)
	assert.False(t, a.Found, "no whole number lies between 7.25 and 7.5")
	assert.True(t, a.Proved)
	assert.Contains(t, a.English, "No herd of whole animals fits")
	assert.NotNil(t, a.Months)
	// The printed water of a dry sheep in summer, the high figure: 2 gal/day each.
	f = readFitting(t, changedFitting(t, wether, `"ewe"`, `"note": "ours"`, `"water": {"supply": "20 gal/day"}`))
	drinks, err := herd.Water(1, 1, herd.WaterSmallRuminant, herd.Summer, units.Whole)
	require.NoError(t, err)
	assert.InDelta(t, float64(20*units.GallonPerDay/drinks), fitStock(t, f).Relaxed.Head[0].Head, 1e-9)
}

// barnOf30 is the small question with grass enough, ewes and rams of 100 kg, and a
// barn of 30 places.
func barnOf30(t *testing.T, ewes, rams float64) *fit.Question {
	f := readFitting(t, changedFitting(t, `"area": "1 ha"`, `"area": "100 ha"`, `"id": "wethers"`, `"id": "ewes"`))
	f.Stock = append(f.Stock, f.Stock[0])
	f.Stock[1].ID = "rams"
	f.Housing = []fit.Housing{{ID: "barn", Room: 30, Takes: map[string]float64{"ewes": ewes, "rams": rams}}}
	return f
}

func number(v float64) *float64 { return &v }

// bound gives what binds by a rule.
func bound(t *testing.T, a *fit.Answer, kind fit.RuleKind) fit.Bind {
	t.Helper()
	at := slices.IndexFunc(a.Binds, func(b fit.Bind) bool { return b.Rule.Kind == kind })
	require.GreaterOrEqual(t, at, 0, "%s binds not: %v", kind, a.Binds)
	return a.Binds[at]
}

// TestFitStockRatios: a ram takes three places of 30 and a ewe one, with a ram at
// least for 10 ewes. With parts of animals 10 r + 3 r = 30: 30/13 rams and 300/13 ewes.
// With a ram less asked for, r = e/10 − 1: 10 r + 10 + 3 r = 30, so 20/13 rams and
// 330/13 ewes, which is 20/13 head more. Whole: 2 rams allow 20 ewes, 3 rams have room
// for 21, 4 for 18: 24 head at the most.
func TestFitStockRatios(t *testing.T) {
	f := barnOf30(t, 1, 3)
	f.Ratios = []fit.Ratio{{Of: "rams", To: []string{"ewes"}, Least: number(1), Each: number(10)}}
	a := fitStock(t, f)
	assert.InDelta(t, 300.0/13, a.Relaxed.Head[0].Head, 1e-9)
	assert.InDelta(t, 30.0/13, a.Relaxed.Head[1].Head, 1e-9)
	assert.True(t, a.Found && a.Proved)
	assert.Equal(t, []fit.Head{{ID: "ewes", Head: 21}, {ID: "rams", Head: 3}}, a.Whole.Head)
	least := bound(t, &a, fit.RuleRatioLeast)
	assert.Equal(t, fit.Rule{Kind: fit.RuleRatioLeast, ID: "rams", Months: []int{}, English: "the ratio of rams to ewes (at least 1 to 10)"}, least.Rule)
	assert.InDelta(t, 20.0/13*auOf100, least.Price, 1e-9)
	assert.InDelta(t, 20.0/13*auOf100, least.Gain, 1e-9)
	assert.Equal(t, 1.0, least.More)
	assert.Equal(t, "Asking for 1 head of rams less than the ratio of rams to ewes (at least 1 to 10) would carry 2.31 more ewes and 0.769 fewer rams (0.339 animal units more).", least.English)

	// Now a ewe takes the three places, and there is at most a ram for 10 ewes: 3 × 10 r
	// + r = 30, 30/31 rams and 300/31 ewes. With one ram beyond it r = e/10 + 1: 60/31
	// rams and 290/31 ewes, 20/31 head more. Whole: 10 ewes, and no place for a ram.
	f = barnOf30(t, 3, 1)
	f.Ratios = []fit.Ratio{{Of: "rams", To: []string{"ewes"}, Most: number(1), Each: number(10)}}
	a = fitStock(t, f)
	assert.InDelta(t, 30.0/31, a.Relaxed.Head[1].Head, 1e-9)
	assert.Equal(t, []fit.Head{{ID: "ewes", Head: 10}, {ID: "rams", Head: 0}}, a.Whole.Head)
	most := bound(t, &a, fit.RuleRatioMost)
	assert.InDelta(t, 20.0/31*auOf100, most.Gain, 1e-9)
	assert.Contains(t, most.English, "Allowing 1 head of rams beyond the ratio of rams to ewes (at most 1 to 10) would carry")

	// Several count together, and one is for one where nothing else is said: 6 ewes, 4
	// hoggets and 2 rams for each of them are 20 rams.
	f = barnOf30(t, 1, 1)
	f.Stock = append(f.Stock, f.Stock[0])
	f.Stock[2].ID = "hoggets"
	f.Stock[0].Least, f.Stock[0].Most, f.Stock[2].Least, f.Stock[2].Most = 6, number(6), 4, number(4)
	f.Ratios = []fit.Ratio{{Of: "rams", To: []string{"ewes", "hoggets"}, Least: number(1.5), Most: number(2)}}
	a = fitStock(t, f)
	assert.Equal(t, "6 ewes, 20 rams and 4 hoggets", a.English[:29])
	assert.Equal(t, "the ratio of rams to ewes and hoggets together (at most 2 to 1)", bound(t, &a, fit.RuleRatioMost).Rule.English)

	f.Stock[1].Most = number(14)
	a = fitStock(t, f)
	assert.Equal(t, "Nothing fits: the ratio of rams to ewes and hoggets together (at least 1.5 to 1), at least 6 ewes, at most 14 rams and at least 4 hoggets do not go together; leave out any one of them and the rest do.", a.English)
	assert.Equal(t, fit.RuleRatioLeast, a.Clash[0].Kind)
}

// TestFitStockPrintedRatios asks for the fewest males that print's ratios want for so
// many females. OKSTATE-BULLS: a bull of two years and more has 25 to 35 cows. WYLR-RAMS:
// two rams 100 ewes, three 250; a ram lamb 30 at the most. KYSU-BUCKS: a mature buck 20 to
// 40 does. PROAGRI-BOARS: a boar 15 to 20 sows.
func TestFitStockPrintedRatios(t *testing.T) {
	for _, c := range []struct{ males, each, females, want float64 }{
		{1, 35, 35, 1}, {1, 35, 36, 2}, {1, 25, 100, 4},
		{2, 100, 100, 2}, {2, 100, 101, 3}, {3, 250, 250, 3}, {1, 30, 31, 2},
		{1, 20, 20, 1}, {1, 40, 41, 2}, {1, 15, 46, 4},
	} {
		f := barnOf30(t, 1, 1)
		f.Goal, f.Housing = fit.GoalLeastHay, nil // equally good herds: the smaller one
		f.Stock[0].Least = c.females
		f.Ratios = []fit.Ratio{{Of: "rams", To: []string{"ewes"}, Least: number(c.males), Each: number(c.each)}}
		a := fitStock(t, f)
		assert.Equal(t, []fit.Head{{ID: "ewes", Head: c.females}, {ID: "rams", Head: c.want}}, a.Whole.Head, "%v", c)
	}
}

// TestFitStockMoney: cows of 100 USD and a ewe of 40 share 3,000 kg in May; hay
// stands in for what is wanting at 0.20 USD a kilogram of hay of 90 %.
func TestFitStockMoney(t *testing.T) {
	f := readFitting(t, changedFitting(t, `"goal": "animal units"`, `"goal": "margin"`, `"eats": "anything"`, `"eats": "anything", "margin": "30.25 USD", "most": 50`,
		`"note": "ours"`, `"hay": {"store": "100 kg", "buy": "1 t", "price": "200 USD/t"}`))
	a := fitStock(t, f)
	// A wether wants 93 kg of dry matter in May, 103.3 of hay, 20.67 USD: less than
	// it brings, until June's grass is gone too: then 203.3 kg, 40.67 USD, more than
	// it brings. 33.33 of them: (33.33 × 93 − 3,000) ÷ 0.9 = 111.1 kg, of which 11.1
	// are bought for 2.22.
	assert.InDelta(t, 3000.0/90, a.Relaxed.Head[0].Head, 1e-9)
	assert.InDelta(t, 100/0.9, float64(a.Relaxed.Hay), 1e-6)
	assert.InDelta(t, 100/0.9-100, float64(a.Relaxed.Bought), 1e-6)
	assert.Equal(t, "2.22 USD", a.Relaxed.Cost.String())
	assert.InDelta(t, 3000.0/90*30.25-(100/0.9-100)*0.2, a.Relaxed.Value, 1e-9)
	assert.Equal(t, "1006.11 USD", a.Relaxed.Margin.String())
	// 34 whole: (34 × 183 − 6,000) ÷ 0.9 = 246.67 kg, of which 146.67 are bought for
	// 29.33: 999.17 USD, where 33 of them bring 998.25 with hay from the store alone.
	assert.Equal(t, "999.17 USD", a.Whole.Margin.String())
	assert.Equal(t, "29.33 USD", a.Whole.Cost.String())
	assert.Contains(t, a.English, "34 wethers: 999.17 USD. With parts of animals allowed it would be 1006.11 USD.")
	assert.Contains(t, a.English, "It is fed 0.247 t of hay, 0.147 t of it bought for 29.33 USD.")
}

// TestFitStockLeastHay: 10 wethers are asked for and one extra grows nothing:
// 304 days at 3 kg, 10 of them.
func TestFitStockLeastHay(t *testing.T) {
	f := readFitting(t, changedFitting(t, `"goal": "animal units"`, `"goal": "least hay"`, `"months": [5, 6]`, `"least": 3`,
		`"note": "ours"`, `"hay": {"buy": "100 t"}, "needs": [{"id": "wool", "least": 30, "gives": {"wethers": 3}, "unit": "kg"}]`))
	a := fitStock(t, f)
	assert.InDelta(t, 10, a.Relaxed.Head[0].Head, 1e-9)
	assert.InDelta(t, 304*3*10/0.9, a.Relaxed.Value, 1e-6)
	require.NotEmpty(t, a.Binds)
	need := a.Binds[slices.IndexFunc(a.Binds, func(b fit.Bind) bool { return b.Rule.Kind == fit.RuleNeed })]
	assert.InDelta(t, 304*3/0.9/3, need.Price, 1e-6)
	assert.Equal(t, "Asking for 1 kg less in the need of wool would save 0.338 t of hay.", need.English)
	// 304 × 3 × 10 ÷ 0.9 is 10.1 t; the figure stands once where it is the same
	assert.Contains(t, a.English, "10 wethers: 10.1 t of hay. No herd of whole animals is better. 10.1 t of it must be bought. Asking")
	f.Hay.Store, f.Needs[0].Unit = 20*units.FreshTonne, ""
	a = fitStock(t, f)
	assert.Contains(t, a.English, "10 wethers: 10.1 t of hay. No herd of whole animals is better. All of it is from the store. Asking for 1 less in the need of wool would save")
	// 31 kg want 31/3 wethers, 10.5 t, and 11 whole ones 11.1 t
	f.Needs[0].Least = 31
	a = fitStock(t, f)
	assert.Contains(t, a.English, "11 wethers: 11.1 t of hay. With parts of animals allowed it would be 10.5 t of hay. No herd of whole animals is better. All of it is from the store.")
	f.Needs[0].Least = 6 // two would do; three are asked for
	a = fitStock(t, f)
	assert.InDelta(t, 3, a.Relaxed.Head[0].Head, 1e-9)
	least := a.Binds[slices.IndexFunc(a.Binds, func(b fit.Bind) bool { return b.Rule.Kind == fit.RuleLeast })]
	assert.Equal(t, "Asking for 1 fewer head of wethers would save 1.01 t of hay.", least.English)
}

// TestFitStockClash: every rule of a clash is needed for it. 50 wethers want 4,650
// kg in May; the barn has room for 20 of them; hay for May's 1,650 kg would do.
func TestFitStockClash(t *testing.T) {
	f := readFitting(t, changedFitting(t, `"months": [5, 6]`, `"months": [5, 6], "least": 50`))
	a := fitStock(t, f)
	require.False(t, a.Fits)
	assert.Equal(t, "Nothing fits: what grows of grass in June, the hay in store and at least 50 wethers do not go together; leave out any one of them and the rest do.", a.English)
	assert.Empty(t, a.Whole.Head)
	assert.NotNil(t, a.Binds)

	f.Housing = []fit.Housing{{ID: "barn", Room: 20, Takes: map[string]float64{"wethers": 1}}}
	a = fitStock(t, f)
	require.Len(t, a.Clash, 2)
	assert.Equal(t, fit.RuleHousing, a.Clash[0].Kind)
	assert.Equal(t, fit.Rule{Kind: fit.RuleLeast, ID: "wethers", Months: []int{}, English: "at least 50 wethers"}, a.Clash[1])
	f.Housing = nil
	f.Hay.Buy = 10000 // now there is hay for both months
	assert.True(t, fitStock(t, f).Fits)

	f.Hay.Buy, f.Stock[0].Eats = 0, fit.DietPrinted // and browse there is none
	a = fitStock(t, f)
	require.False(t, a.Fits)
	for _, s := range a.Spans {
		assert.False(t, s.Fits)
	}
}

// fitCase is a small question of two stocks with fixed diets, drawn by rapid.
func fitCase(r *rapid.T) *fit.Question {
	text := smallFitting
	f, err := fit.Read([]byte(text))
	if err != nil {
		r.Fatal(err)
	}
	f.Stock[0].ID = "a"
	other := f.Stock[0]
	other.ID = "b"
	row := *other.Class.Row
	row.Weight = units.LiveWeight(rapid.IntRange(20, 400).Draw(r, "weight"))
	other.Class.Row = &row
	f.Stock = append(f.Stock, other)
	f.Land[0].Forbs = units.Fraction(rapid.IntRange(0, 4).Draw(r, "forbs")) / 10
	f.Land[0].Browse = units.Fraction(rapid.IntRange(0, 4).Draw(r, "browse")) / 10
	f.Land[0].Area = units.Area(rapid.IntRange(500, 4000).Draw(r, "area"))
	for i := range f.Stock {
		s := &f.Stock[i]
		grass := rapid.IntRange(0, 10).Draw(r, "grass")
		forbs := rapid.IntRange(0, 10-grass).Draw(r, "forbs")
		one := func(tenths int) units.Span[units.Fraction] { return units.Single(units.Fraction(tenths) / 10) }
		s.Eats, s.Diet = fit.DietOwn, &fit.OwnDiet{Grass: one(grass), Forbs: one(forbs), Browse: one(10 - grass - forbs)}
		s.Months = []int{5, 6, 7}[rapid.IntRange(0, 1).Draw(r, "from"):rapid.IntRange(2, 3).Draw(r, "to")]
		most := float64(rapid.IntRange(0, 12).Draw(r, "most"))
		s.Most = &most
		s.Least = float64(max(0, rapid.IntRange(-6, 3).Draw(r, "least")))
	}
	f.Hay.Store = units.FreshFeed(rapid.IntRange(0, 300).Draw(r, "store"))
	f.Hay.Buy = units.FreshFeed(rapid.IntRange(0, 300).Draw(r, "buy"))
	f.Hay.Waste = units.Fraction(rapid.IntRange(0, 3).Draw(r, "waste")) / 10
	if rapid.Bool().Draw(r, "barn") {
		f.Housing = []fit.Housing{{ID: "barn", Room: float64(rapid.IntRange(5, 40).Draw(r, "room")), Takes: map[string]float64{"a": 1, "b": 3}}}
	}
	if rapid.Bool().Draw(r, "need") {
		f.Needs = []fit.Need{{ID: "wool", Least: float64(rapid.IntRange(1, 15).Draw(r, "wool")), Gives: map[string]float64{"a": 2, "b": 1}}}
	}
	for _, ids := range rapid.SampledFrom([][][2]string{nil, {{"a", "b"}}, {{"b", "a"}}, {{"a", "b"}, {"b", "a"}}}).Draw(r, "ratios") {
		f.Ratios = append(f.Ratios, ratioCase(r, ids[0], ids[1]))
	}
	return f
}

// ratioCase draws a ratio of one stock to another.
func ratioCase(r *rapid.T, of, to string) fit.Ratio {
	number := func(low, high int, what string) *float64 {
		v := float64(rapid.IntRange(low, high).Draw(r, what))
		return &v
	}
	ratio := fit.Ratio{Of: of, To: []string{to}, Each: number(1, 5, "each")}
	sides := rapid.IntRange(1, 3).Draw(r, "sides")
	if sides != 2 {
		ratio.Least = number(1, 2, "at least")
	}
	if sides != 1 {
		ratio.Most = number(2, 6, "at most")
	}
	return ratio
}

// keepsRatios tells whether a herd of a and b keeps every ratio, multiplied out.
func keepsRatios(f *fit.Question, a, b float64) bool {
	for _, r := range f.Ratios {
		of, to := a, b
		if r.Of == "b" {
			of, to = b, a
		}
		if r.Least != nil && of**r.Each < *r.Least*to || r.Most != nil && of**r.Each > *r.Most*to {
			return false
		}
	}
	return true
}

// grazedMost is the most that two stocks of fixed diets can graze together, of
// what each wants, from what there is of each class of plants: tried at every
// point where two of the lines meet.
func grazedMost(want [2]float64, diet [2][3]float64, supply [3]float64) float64 {
	type line struct{ x, y, most float64 }
	lines := []line{{1, 0, want[0]}, {0, 1, want[1]}, {-1, 0, 0}, {0, -1, 0}}
	for k := range supply {
		lines = append(lines, line{diet[0][k], diet[1][k], supply[k]})
	}
	best := 0.0
	for i, one := range lines {
		for _, two := range lines[i+1:] {
			d := one.x*two.y - one.y*two.x
			if math.Abs(d) < 1e-12 {
				continue
			}
			x, y := (one.most*two.y-one.y*two.most)/d, (one.x*two.most-one.most*two.x)/d
			if !slices.ContainsFunc(lines, func(l line) bool { return l.x*x+l.y*y > l.most+1e-7 }) {
				best = max(best, x+y)
			}
		}
	}
	return best
}

// goalCase is fitCase with any of the three goals, and in some cases a limit of water
// or with what a month leaves carried over. Where it is carried each stock eats one
// class of plants only, so that no more than a sum over the months tells what it grazes.
func goalCase(r *rapid.T) *fit.Question {
	f := fitCase(r)
	f.Goal = rapid.SampledFrom([]fit.Goal{fit.GoalAnimalUnits, fit.GoalLeastHay, fit.GoalMargin}).Draw(r, "goal")
	if f.Goal == fit.GoalLeastHay { // else no animals is the answer
		f.Stock[0].Least, *f.Stock[0].Most = f.Stock[0].Least+1, *f.Stock[0].Most+4
	}
	f.Hay.Buy = units.FreshFeed(rapid.IntRange(0, 3000).Draw(r, "buy more"))
	f.Hay.Price = new(units.FeedPrice)
	read := func(v interface{ UnmarshalText([]byte) error }, text string, args ...any) {
		if err := v.UnmarshalText(fmt.Appendf(nil, text, args...)); err != nil {
			r.Fatal(err)
		}
	}
	read(f.Hay.Price, "%d USD/t", rapid.IntRange(0, 400).Draw(r, "price"))
	water, carry := rapid.Bool().Draw(r, "water"), rapid.Bool().Draw(r, "carries")
	if water {
		f.Water.Supply = units.WaterRate(rapid.IntRange(30, 200).Draw(r, "supply")) * units.LitrePerDay
	}
	if carry {
		f.Carry = units.Fraction(rapid.IntRange(1, 9).Draw(r, "carry")) / 10
	}
	for i := range f.Stock {
		s := &f.Stock[i]
		s.Margin = new(units.Money)
		read(s.Margin, "%d USD", rapid.IntRange(-10, 60).Draw(r, "margin"))
		s.Drinks = units.WaterRate(rapid.IntRange(1, 20).Draw(r, "drinks")) * units.LitrePerDay
		if carry {
			var only [3]units.Span[units.Fraction]
			only[rapid.IntRange(0, 2).Draw(r, "eats only")] = units.Single(units.Whole)
			s.Diet = &fit.OwnDiet{Grass: only[0], Forbs: only[1], Browse: only[2]}
		}
	}
	return f
}

// smallYear is what a drawn question comes to, by hand: two stocks, May to July.
type smallYear struct {
	diet   [2][3]float64
	weight [2]float64
	grown  [12][3]float64 // by month and class of plants
}

var monthDays = [12]float64{4: 31, 5: 30, 6: 31} // those on which there may be stock

func smallYearOf(f *fit.Question) (y smallYear) {
	for i, s := range f.Stock {
		y.diet[i] = [3]float64{float64(s.Diet.Grass.Low), float64(s.Diet.Forbs.Low), float64(s.Diet.Browse.Low)}
		y.weight[i] = float64(s.Class.Row.Weight)
	}
	l := f.Land[0]
	half := float64(l.Yield) * float64(l.Area) * float64(l.Use) / 2 // in May, and as much in June
	for _, month := range []int{4, 5} {
		y.grown[month] = [3]float64{half * float64(1-l.Forbs-l.Browse), half * float64(l.Forbs), half * float64(l.Browse)}
	}
	return y
}

// wants is what so many of each want in a month.
func (y *smallYear) wants(f *fit.Question, month int, head [2]float64) (want [2]float64) {
	for i := range head {
		if slices.Contains(f.Stock[i].Months, month+1) {
			want[i] = head[i] * y.weight[i] * 0.03 * monthDays[month]
		}
	}
	return want
}

// fed is the dry matter of hay that a herd must be fed in a year where nothing is
// carried over.
func (y *smallYear) fed(f *fit.Question, head [2]float64) (fed float64) {
	for month := range monthDays {
		want := y.wants(f, month, head)
		fed += want[0] + want[1] - grazedMost(want, y.diet, y.grown[month])
	}
	return fed
}

// fedCarried is fed where a share of what is left stands for the next month, and every
// stock eats one class of plants. What is eaten now and not kept saves as much hay and
// loses nothing, so the herd eats what there is; a hundred years of 90 % a month forget
// the first January but for 0.9^1200.
func (y *smallYear) fedCarried(f *fit.Question, head [2]float64) (fed float64) {
	left := [3]float64{}
	for range 100 {
		fed = 0
		for month := range monthDays {
			want := y.wants(f, month, head)
			for k := range left {
				wanted := want[0]*y.diet[0][k] + want[1]*y.diet[1][k]
				there := y.grown[month][k] + left[k]*float64(f.Carry)
				fed += max(0, wanted-there)
				left[k] = max(0, there-wanted)
			}
		}
	}
	return fed
}

// keepsRules tells whether a herd keeps to room, need, ratios and water.
func keepsRules(f *fit.Question, head [2]float64) bool {
	a, b := head[0], head[1]
	if len(f.Housing) > 0 && a+3*b > f.Housing[0].Room || len(f.Needs) > 0 && 2*a+b < f.Needs[0].Least || !keepsRatios(f, a, b) {
		return false
	}
	for month := range monthDays {
		drunk := 0.0
		for i := range head {
			if slices.Contains(f.Stock[i].Months, month+1) {
				drunk += head[i] * f.Stock[i].Drinks.LitresPerDay()
			}
		}
		if f.Water.Supply > 0 && drunk > f.Water.Supply.LitresPerDay()+1e-6 {
			return false
		}
	}
	return true
}

// everyHerd tries every herd of two stocks of whole animals and gives the best value by
// the goal, and whether any herd fits.
func everyHerd(f *fit.Question) (best float64, any bool) {
	y := smallYearOf(f)
	for a := f.Stock[0].Least; a <= *f.Stock[0].Most; a++ {
		for b := f.Stock[1].Least; b <= *f.Stock[1].Most; b++ {
			head := [2]float64{a, b}
			if !keepsRules(f, head) {
				continue
			}
			fed := 0.0
			if f.Carry > 0 {
				fed = y.fedCarried(f, head)
			} else {
				fed = y.fed(f, head)
			}
			hay := fed / 0.9 / float64(1-f.Hay.Waste)
			if hay > float64(f.Hay.Store+f.Hay.Buy)+1e-6 {
				continue
			}
			value := 0.0
			switch f.Goal {
			case fit.GoalAnimalUnits:
				value = (a*y.weight[0] + b*y.weight[1]) / 453.59237
			case fit.GoalLeastHay:
				value = -hay
			case fit.GoalMargin:
				price := f.Hay.Price.Of(units.FreshTonne, 0).Amount.InexactFloat64() / 1000 // of a kilogram
				value = a*f.Stock[0].Margin.Amount.InexactFloat64() + b*f.Stock[1].Margin.Amount.InexactFloat64() - price*max(0, hay-float64(f.Hay.Store))
			}
			if !any || value > best {
				any, best = true, value
			}
		}
	}
	return best, any
}

// TestFitStockAgainstEveryHerd compares the herd of whole animals with the best
// of every herd there is, by all three goals; the relaxed herd is no worse.
func TestFitStockAgainstEveryHerd(t *testing.T) {
	found := map[fit.Goal]int{}
	rapid.Check(t, func(r *rapid.T) {
		f := goalCase(r)
		a, err := f.Answer()
		if err != nil {
			r.Fatal(err)
		}
		best, any := everyHerd(f)
		relaxed, whole := a.Relaxed.Value, a.Whole.Value
		if f.Goal == fit.GoalLeastHay {
			relaxed, whole = -relaxed, -whole
		}
		switch {
		case !a.Fits && any:
			r.Fatalf("a herd of %v fits, but: %s", best, a.English)
		case a.Fits && !a.Proved:
			r.Fatal("so small a search must end")
		case a.Found != any:
			r.Fatalf("found %v, every herd %v", a.Found, any)
		case a.Found && math.Abs(whole-best) > 1e-6:
			r.Fatalf("%v, the best of every herd is %v", whole, best)
		case a.Found && relaxed < whole-1e-9*(1+math.Abs(whole)):
			r.Fatalf("relaxed %v, whole %v", relaxed, whole)
		}
		if a.Found {
			found[f.Goal]++
		}
		again, err := f.Answer()
		if err != nil || !cmp.Equal(a, again, cmp.Comparer(func(x, y units.Money) bool { return x.String() == y.String() })) {
			r.Fatal("the same question has two answers")
		}
	})
	for _, goal := range []fit.Goal{fit.GoalAnimalUnits, fit.GoalLeastHay, fit.GoalMargin} {
		assert.Positive(t, found[goal], "%s was compared", goal)
	}
}

// TestFitStockScales: twice the land, hay, room, needs and limits is twice the
// relaxed herd.
func TestFitStockScales(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		f := fitCase(r)
		one, err := f.Answer()
		if err != nil {
			r.Fatal(err)
		}
		f.Land[0].Area *= 2
		f.Hay.Store *= 2
		f.Hay.Buy *= 2
		for i := range f.Stock {
			*f.Stock[i].Most *= 2
			f.Stock[i].Least *= 2
		}
		if len(f.Housing) > 0 {
			f.Housing[0].Room *= 2
		}
		if len(f.Needs) > 0 {
			f.Needs[0].Least *= 2
		}
		two, err := f.Answer()
		if err != nil {
			r.Fatal(err)
		}
		if one.Fits != two.Fits || math.Abs(two.Relaxed.Value-2*one.Relaxed.Value) > 1e-7*(1+two.Relaxed.Value) {
			r.Fatalf("%v and, doubled, %v", one.Relaxed.Value, two.Relaxed.Value)
		}
	})
}

// TestFitStockPrices asks again with a little more hay and with more land: no
// gain is above the price, and more of anything is never worse.
func TestFitStockPrices(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		f := fitCase(r)
		a, err := f.Answer()
		if err != nil {
			r.Fatal(err)
		}
		for _, b := range a.Binds {
			if b.Gain < 0 || b.Gain > b.Price*b.More+1e-7 {
				r.Fatalf("%s: price %v × %v, gain %v", b.English, b.Price, b.More, b.Gain)
			}
			switch b.Rule.Kind {
			case fit.RuleHay:
				f.Hay.Store += units.FreshFeed(b.More)
			case fit.RuleLand:
				f.Land[0].Area += units.Area(b.More)
			default:
				continue
			}
			with, err := f.Answer()
			if err != nil {
				r.Fatal(err)
			}
			if math.Abs(with.Relaxed.Value-a.Relaxed.Value-b.Gain) > 1e-7 {
				r.Fatalf("%s: asked anew it gains %v", b.English, with.Relaxed.Value-a.Relaxed.Value)
			}
			if b.Rule.Kind == fit.RuleHay {
				f.Hay.Store -= units.FreshFeed(b.More)
			} else {
				f.Land[0].Area -= units.Area(b.More)
			}
		}
	})
}

// TestBadFittings puts one thing wrong at a time.
func TestBadFittings(t *testing.T) {
	for _, c := range []struct{ old, bad, path, says string }{
		{`"version": 1`, `"version": 2`, "version", "no known version"},
		{`"goal": "animal units"`, `"goal": "most"`, "goal", "animal units, least hay, margin"},
		{`"goal": "animal units"`, `"goal": "least hay"`, "goal", "no animals at all"},
		{`"goal": "animal units"`, `"goal": "margin"`, "stock[0].margin", "is missing"},
		{`"goal": "animal units"`, `"goal": "animal units", "end": "top"`, "end", "low, middle, high"},
		{`"goal": "animal units"`, `"goal": "animal units", "carry": "100 %"`, "carry", "below 100 %"},
		{`"note": "ours"`, `"hay": {"store": "-1 t"}`, "hay.store", "negative"},
		{`"note": "ours"`, `"hay": {"buy": "-1 t"}`, "hay.buy", "negative"},
		{`"note": "ours"`, `"hay": {"waste": "100 %"}`, "hay.waste", "0 % to 99 %"},
		{`"note": "ours"`, `"hay": {"dry_matter": "101 %"}`, "hay.dry_matter", "1 % to 100 %"},
		{`"note": "ours"`, `"hay": {"price": "-3 USD/t"}`, "hay.price", "no price"},
		{`"note": "ours"`, `"water": {"supply": "-1 L/day"}`, "water.supply", "negative"},
		{`"id": "meadow"`, `"id": ""`, "land[0].id", "empty"},
		{`"area": "1 ha"`, `"area": "0 ha"`, "land[0].area", "above 0"},
		{`"area": "1 ha"`, `"area": "2000000 ha"`, "land[0].area", "larger than any farm"},
		{`"area": "1 ha"`, `"area": 1`, "land[0].area", "unit"},
		{`"use": "60 %"`, `"use": "0 %"`, "land[0].use", "above 0 %"},
		{`"use": "60 %"`, `"use": "60 %", "forbs": "-1 %"`, "land[0].forbs", "no share"},
		{`"use": "60 %"`, `"use": "60 %", "browse": "101 %"`, "land[0].browse", "no share"},
		{`"use": "60 %"`, `"use": "60 %", "forbs": "60 %", "browse": "41 %"`, "land[0].browse", "more than all"},
		{`"yield": "10000 kg/ha"`, `"note": "unmeasured"`, "land[0].yield", "or a pasture row"},
		{`"yield": "10000 kg/ha"`, `"yield": "2000 t/ha"`, "land[0].yield", "is more than any land grows; dry matter a year, up to 1,000 t/ha"},
		{`"yield": "10000 kg/ha"`, `"pasture": "grass"`, "land[0].pasture", "mixed-pasture"},
		{`["0 %", "0 %", "0 %", "0 %", "50 %",`, `["50 %",`, "land[0].months", "twelve shares"},
		{`["0 %", "0 %", "0 %", "0 %", "50 %",`, `["50 %", "0 %", "0 %", "0 %", "50 %",`, "land[0].months", "90 % to 110 %"},
		{`["0 %", "0 %", "0 %", "0 %", "50 %",`, `["-1 %", "0 %", "0 %", "0 %", "51 %",`, "land[0].months[0]", "no share"},
		{`"weight": "100 kg"`, `"weight": "101 t"`, "stock[0].weight", "up to 100 t"},
		{`"weight": "100 kg"`, `"weight": "0 kg"`, "stock[0].class.weight", "live weight"},
		{`"months": [5, 6]`, `"months": [5, 13]`, "stock[0].months[1]", "no month"},
		{`"months": [5, 6]`, `"months": [5, 5]`, "stock[0].months[1]", "stands twice"},
		{`"months": [5, 6]`, `"weight": "-1 kg"`, "stock[0].weight", "negative"},
		{`"months": [5, 6]`, `"least": -1`, "stock[0].least", "negative"},
		{`"months": [5, 6]`, `"most": -1`, "stock[0].most", "negative"},
		{`"months": [5, 6]`, `"birth": 13`, "stock[0].birth", "no month"},
		{`"months": [5, 6]`, `"weaned": 3`, "stock[0].weaned", "without birth"},
		{`"months": [5, 6]`, `"birth": 3`, "stock[0].weaned", "milk ends"},
		{`"months": [5, 6]`, `"birth": 3, "weaned": 3`, "stock[0].weaned", "milk ends"},
		{`"months": [5, 6]`, `"birth": 3, "weaned": 6`, "stock[0].birth", "no intake for"},
		{`"months": [5, 6]`, `"birth": 3, "weaned": 6, "stage": "dry"`, "stock[0].stage", "beside birth"},
		{`"months": [5, 6]`, `"stage": "laying"`, "stock[0].stage", "no intake for"},
		{`"months": [5, 6]`, `"drinks": "-1 L/day"`, "stock[0].drinks", "negative"},
		{`"eats": "anything"`, `"eats": "all"`, "stock[0].eats", "printed, up to printed, own, anything"},
		{`"eats": "anything"`, `"eats": "own"`, "stock[0].diet", "is missing"},
		{`"eats": "anything"`, `"eats": "anything", "diet": {"grass": {"low": "0 %", "high": "1 %"}, "forbs": {"low": "0 %", "high": "1 %"}, "browse": {"low": "0 %", "high": "1 %"}}`, "stock[0].diet", "stands beside"},
		{`"eats": "anything"`, `"eats": "own", "diet": {"grass": {"low": "0 %", "high": "1 %"}, "forbs": {"low": "0 %", "high": "1 %"}, "browse": {"low": "0 %", "high": "1 %"}}`, "stock[0].diet", "add up to 100 %"},
		{`"eats": "anything"`, `"eats": "own", "diet": {"grass": {"low": "9 %", "high": "1 %"}, "forbs": {"low": "0 %", "high": "1 %"}, "browse": {"low": "0 %", "high": "1 %"}}`, "stock[0].diet.grass", "9 % to 1 % is no span of shares"},
		{`"kind": "sheep"`, `"kind": "pigs"`, "", ""},
		{`"note": "ours"`, `"housing": [{"id": "barn", "room": -1, "takes": {"wethers": 1}}]`, "housing[0].room", "negative"},
		{`"note": "ours"`, `"housing": [{"id": "barn", "room": 1, "takes": {}}]`, "housing[0].takes", "names no stock"},
		{`"note": "ours"`, `"housing": [{"id": "barn", "room": 1, "takes": {"cows": 1}}]`, "housing[0].takes.cows", "the id of no stock"},
		{`"note": "ours"`, `"housing": [{"id": "barn", "room": 1, "takes": {"wethers": 0}}]`, "housing[0].takes.wethers", "above 0"},
		{`"note": "ours"`, `"needs": [{"id": "milk", "least": 0, "gives": {"wethers": 1}}]`, "needs[0].least", "above 0"},
		{`"note": "ours"`, `"needs": [{"id": "milk", "least": 1, "gives": {"wethers": -1}}]`, "needs[0].gives.wethers", "above 0"},
		{`"note": "ours"`, `"ratios": [{"of": "rams", "to": ["wethers"], "least": 1}]`, "ratios[0].of", "the id of no stock; one of: wethers"},
		{`"note": "ours"`, `"ratios": [{"of": "wethers", "to": ["ewes"], "least": 1}]`, "ratios[0].to[0]", "the id of no stock; one of: wethers"},
		{`"note": "ours"`, `"ratios": [{"of": "wethers", "to": ["wethers"], "least": 1}]`, "ratios[0].to[0]", "against itself"},
		{`"note": "ours"`, `"ratios": [{"of": "wethers", "to": [], "least": 1}]`, "ratios[0].to", "names no stock"},
		{`"note": "ours"`, `"nots": "ours"`, "nots", "note"},
	} {
		f, err := fit.Read([]byte(changedFitting(t, c.old, c.bad)))
		if c.path == "" { // pigs have no printed diet, which only printed ones want
			require.NoError(t, err)
			f.Stock[0].Eats = fit.DietPrinted
			_, err = f.Answer()
			c.path, c.says = "stock[0].eats", "no printed diet of pigs"
		}
		var wrong *document.Error
		if assert.ErrorAs(t, err, &wrong, "%s", c.bad) {
			assert.Equal(t, c.path, wrong.Path, "%s", c.bad)
			assert.Contains(t, err.Error(), c.says, "%s", c.bad)
			assert.NotContains(t, err.Error(), "\n")
		}
	}
	for with, says := range map[string]string{
		`"to": ["ewes"]`:                                     "ratios[0].least: is missing, and so is most",
		`"to": ["ewes"], "least": 0`:                         "ratios[0].least: 0 is no ratio above 0; a number above 0",
		`"to": ["ewes"], "most": -2`:                         "ratios[0].most: -2 is no ratio above 0",
		`"to": ["ewes"], "most": 2, "each": 0`:               "ratios[0].each: 0 is no ratio above 0",
		`"to": ["ewes"], "most": 2000000`:                    "ratios[0].most: 2e+06 is no number to count animals with",
		`"to": ["ewes"], "most": 1000, "each": 0.000001`:     "ratios[0].most: 1000 for each 0.000001 is no ratio of animals",
		`"to": ["ewes"], "least": 2, "most": 1.5, "each": 4`: "ratios[0].most: 1.5 is below the fewest, 2; a number not below the fewest",
		`"to": ["ewes", "ewes"], "least": 1`:                 `ratios[0].to[1]: "ewes" stands twice; each stock once`,
		`"to": ["ewes", "rams"], "least": 1`:                 `ratios[0].to[1]: "rams" stands against itself`,
	} {
		text := strings.Replace(changedFitting(t, `"note": "ours"`, `"ratios": [{"of": "rams", `+with+`}]`), `"id": "wethers"`, `"id": "rams"`, 1)
		text = strings.Replace(text, "}],\n  \"ratios", `}, {"id": "ewes", "class": "ewe", "eats": "anything"}],`+"\n  \"ratios", 1)
		_, err := fit.Read([]byte(text))
		assert.ErrorContains(t, err, says, with)
	}
	for _, rules := range []func(*fit.Question){
		func(f *fit.Question) { f.Housing = make([]fit.Housing, 51) },
		func(f *fit.Question) { f.Needs = make([]fit.Need, 51) },
		func(f *fit.Question) { f.Ratios = make([]fit.Ratio, 51) },
	} {
		f := readFitting(t, smallFitting)
		rules(f)
		_, err := f.Answer()
		assert.ErrorContains(t, err, ": 51 rules are too many; up to 50")
	}
	many := readFitting(t, smallFitting)
	for i := range 12 {
		s := many.Stock[0]
		s.ID = fmt.Sprint(i)
		many.Stock = append(many.Stock, s)
	}
	_, err := many.Answer()
	assert.ErrorContains(t, err, "stock: 13")
}

// TestFittingLimits: what a question may hold at the most, and half a hundredth more.
func TestFittingLimits(t *testing.T) {
	money := func(text string) *units.Money {
		m, err := units.ParseMoney(text)
		require.NoError(t, err)
		return &m
	}
	for name, put := range map[string]func(f *fit.Question, beyond float64){
		"land[0].area: ":    func(f *fit.Question, by float64) { f.Land[0].Area = units.Area(1e10 * by) },
		"land[0].yield: ":   func(f *fit.Question, by float64) { f.Land[0].Yield = units.Yield(100 * by) },
		"hay.store: ":       func(f *fit.Question, by float64) { f.Hay.Store = units.FreshFeed(0.9999e9 * by) },
		"hay.buy: ":         func(f *fit.Question, by float64) { f.Hay.Buy = units.FreshFeed(0.9999e9 * by) },
		"stock[0].weight: ": func(f *fit.Question, by float64) { f.Stock[0].Weight = units.LiveWeight(1e5 * by) },
		"stock[0].least: ":  func(f *fit.Question, by float64) { f.Stock[0].Least = 1e6 * by },
		"stock[0].margin: ": func(f *fit.Question, by float64) {
			f.Stock[0].Margin = money(fmt.Sprintf("%.0f USD", 1e9*by))
		},
		"ratios[0].most: ": func(f *fit.Question, by float64) {
			f.Stock = append(f.Stock, f.Stock[0])
			f.Stock[1].ID = "others"
			f.Ratios = []fit.Ratio{{Of: "others", To: []string{"wethers"}, Most: number(1e6 * by)}}
		},
		"ratios[0].least: ": func(f *fit.Question, by float64) {
			f.Stock = append(f.Stock, f.Stock[0])
			f.Stock[1].ID = "others"
			f.Ratios = []fit.Ratio{{Of: "others", To: []string{"wethers"}, Least: number(1e-6 / by)}}
		},
		"land: 201": func(f *fit.Question, by float64) {
			for i := 1; i < int(math.Round(200*by)); i++ {
				f.Land = append(f.Land, f.Land[0])
				f.Land[i].ID = fmt.Sprint(i)
			}
		},
	} {
		for _, by := range []float64{1, 1.005} {
			f := readFitting(t, smallFitting)
			put(f, by)
			data, err := f.JSON(units.Metric)
			require.NoError(t, err)
			if _, err = fit.Read(data); by == 1 {
				assert.NoError(t, err, name)
			} else {
				assert.ErrorContains(t, err, name)
			}
		}
	}
}

// TestFittingOfTwoCurrencies, and hay that may be bought without a price.
func TestFittingMoneyRefuses(t *testing.T) {
	text := changedFitting(t, `"goal": "animal units"`, `"goal": "margin"`, `"eats": "anything"`, `"eats": "anything", "margin": "30 USD"`, `"note": "ours"`, `"hay": {"buy": "1 t", "price": "200 EUR/t"}`)
	_, err := fit.Read([]byte(text))
	assert.ErrorContains(t, err, "hay.price: 200 EUR is another currency than USD")
	_, err = fit.Read([]byte(strings.Replace(text, `, "price": "200 EUR/t"`, "", 1)))
	assert.ErrorContains(t, err, "hay.price: is missing")
}

// TestFitStockWithoutLimit: wethers on the farm only where nothing grows and
// which need nothing there would be kept without end: pigs in winter are such.
func TestFitStockWithoutLimit(t *testing.T) {
	f := readFitting(t, changedFitting(t, `"kind": "sheep"`, `"kind": "pigs"`, `"months": [5, 6]`, `"months": [1]`))
	_, err := f.Answer()
	var wrong *document.Error
	require.ErrorAs(t, err, &wrong)
	assert.ErrorContains(t, wrong, "stock[0]: wethers could be kept without end")
	f.Water.Supply = 1
	_, err = f.Answer()
	assert.ErrorContains(t, err, "stock[0].drinks: is missing")
	f.Stock[0].Drinks = 0.5
	assert.InDelta(t, 2, fitStock(t, f).Whole.Head[0].Head, 0)
}

// TestFitStockCanBeStopped, with an answer and with a clash on the way.
func TestFitStockCanBeStopped(t *testing.T) {
	ended, stop := context.WithCancel(context.Background())
	stop()
	f := readFitting(t, smallFitting)
	_, err := f.AnswerContext(ended)
	assert.ErrorIs(t, err, context.Canceled)
	f.Stock[0].Least = 50
	_, err = f.AnswerContext(ended)
	assert.ErrorIs(t, err, context.Canceled)
	large := readFitting(t, wholeFitting)
	for after := range 20 { // wherever it is by then
		soon, end := context.WithTimeout(context.Background(), time.Duration(after)*time.Millisecond)
		if a, err := large.AnswerContext(soon); err != nil {
			assert.ErrorIs(t, err, context.DeadlineExceeded)
			assert.Empty(t, a.English)
		}
		end()
	}
	var none context.Context
	a, err := f.AnswerContext(none)
	assert.NoError(t, err)
	assert.NotEmpty(t, a.English)
}

// TestFittingComesBackAsItWas writes the question and reads it back.
func TestFittingComesBackAsItWas(t *testing.T) {
	f := readFitting(t, smallFitting)
	assert.Equal(t, "ours", f.Note)
	for system := range 2 {
		text, err := f.JSON(units.System(system))
		require.NoError(t, err)
		back := readFitting(t, string(text))
		a, b := fitStock(t, f), fitStock(t, back)
		assert.InDelta(t, a.Relaxed.Value, b.Relaxed.Value, 1e-6)
		assert.Equal(t, f.Extra, back.Extra)
	}
}

// FuzzRead: no text breaks the reader, and what it reads has an answer of
// finite numbers or an error.
func FuzzRead(f *testing.F) {
	f.Add([]byte(smallFitting))
	f.Add([]byte(wholeFitting))
	f.Add([]byte(strings.ReplaceAll(wholeFitting, `"animal units"`, `"margin"`)))
	f.Add([]byte(strings.ReplaceAll(wholeFitting, `"least": 10`, `"least": 1000`)))
	f.Fuzz(func(t *testing.T, data []byte) {
		fitting, err := fit.Read(data)
		if err != nil {
			return
		}
		a, err := fitting.Answer()
		if err != nil {
			return
		}
		for _, v := range []float64{a.Relaxed.Value, a.Whole.Value, float64(a.Relaxed.Hay), float64(a.Whole.Units)} {
			if v-v != 0 {
				t.Errorf("%v is not finite", v)
			}
		}
		for _, h := range a.Whole.Head {
			if h.Head != math.Round(h.Head) || h.Head < 0 {
				t.Errorf("%v of %s is no whole number of animals", h.Head, h.ID)
			}
		}
	})
}

// wholeFitting uses every part of the form.
const wholeFitting = `{
  "version": 1, "units": "US", "goal": "animal units", "carry": "20 %",
  "land": [
    {"id": "meadow", "area": "9 ac", "pasture": "mixed-pasture", "use": "60 %", "forbs": "30 %"},
    {"id": "hillside", "area": "5 ac", "yield": "2500 lb/ac", "months": ["0 %", "0 %", "0 %", "5 %", "25 %", "25 %", "15 %", "10 %", "12 %", "8 %", "0 %", "0 %"], "use": "40 %", "forbs": "20 %", "browse": "50 %"}
  ],
  "stock": [
    {"id": "cows", "class": "suckler-cow", "birth": 4, "weaned": 11, "eats": "up to printed", "margin": "500 USD"},
    {"id": "ewes", "class": "ewe", "birth": 4, "weaned": 8, "eats": "up to printed", "margin": "70 USD"},
    {"id": "goats", "class": "dairy-goat", "birth": 3, "weaned": 12, "eats": "printed", "margin": "150 USD"},
    {"id": "hens", "class": "laying-hen", "eats": "anything", "most": 60, "margin": "8 USD"}
  ],
  "hay": {"store": "10 short ton", "buy": "4 short ton", "price": "180 USD/short ton", "waste": "10 %"},
  "water": {"supply": "400 gal/day"},
  "housing": [{"id": "barn", "room": 30, "takes": {"cows": 5, "ewes": 1, "goats": 1}, "unit": "places"}],
  "needs": [{"id": "milk", "least": 10, "gives": {"goats": 5}, "unit": "lb of milk a day"}],
  "ratios": [{"of": "goats", "to": ["ewes"], "least": 1, "most": 3, "each": 4, "note": "ours"}]
}`

// Which numbers of sheep of 100 kg fit a hectare that grows 6 t to be eaten, half
// of it in May? 32, each eating 93 kg of May's 3,000; the barn holds 20 of them.
func ExampleQuestion_Answer() {
	question, err := fit.Read([]byte(smallFitting))
	if err != nil {
		fmt.Println(err)
		return
	}
	question.Housing = []fit.Housing{{ID: "barn", Room: 20, Takes: map[string]float64{"wethers": 1}, Unit: "places"}}
	answer, err := question.Answer()
	fmt.Println(answer.English, err)
	// Output:
	// 20 wethers: 4.41 animal units. No herd of whole animals is better. It is fed no hay. 1 more in the room of barn (20 places) would carry 1 more head of wethers (0.22 animal units more). <nil>
}

// A question with a slip in it: the error names the place and what would be right.
func ExampleRead() {
	_, err := fit.Read([]byte(`{"version": 1, "goal": "animal units",
		"land": [{"id": "meadow", "area": "9 ac", "pasture": "mixed-pasture", "use": "160 %"}],
		"stock": [{"class": "ewe", "eats": "anything"}]}`))
	fmt.Println(err)
	// Output:
	// land[0].use: 160 % is no share that is eaten; above 0 % and up to 100 %
}
