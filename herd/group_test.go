package herd_test

import (
	"fmt"
	"math"
	"slices"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/herd"
	"example.org/soum/units"
)

func date(t interface{ Fatalf(string, ...any) }, text string) units.Date {
	d, err := units.ParseDate(text)
	if err != nil {
		t.Fatalf("%v", err)
	}
	return d
}

func ptr[T any](v T) *T { return &v }

// TestGroupThroughItsYear: three ewes lamb, one is sold, they are weaned.
func TestGroupThroughItsYear(t *testing.T) {
	ewe, err := herd.ClassByName("ewe")
	require.NoError(t, err)
	lambing, sale, weaning := date(t, "2021-04-10"), date(t, "2021-06-01"), date(t, "2021-07-20")
	g := herd.Group{Class: ewe, Head: 3, Events: []herd.Event{
		{Date: weaning, Stage: ptr(herd.StageDry), Weight: ptr(140 * units.LivePound)},
		{Date: sale, Head: ptr(2.0)},
		{Date: lambing, Stage: ptr(herd.StageLactating)},
	}}
	before := slices.Clone(g.Events)
	for _, day := range []struct {
		on   units.Date
		want herd.State
		lb   float64
	}{
		{lambing.Add(-1), herd.State{Head: 3, Weight: 150 * units.LivePound, Stage: herd.StageDry}, 11.25},      // 3 * 150 * 2.5 %
		{lambing, herd.State{Head: 3, Weight: 150 * units.LivePound, Stage: herd.StageLactating}, 20.25},        // 3 * 150 * 4.5 %
		{sale, herd.State{Head: 2, Weight: 150 * units.LivePound, Stage: herd.StageLactating}, 13.5},            // 2 * 150 * 4.5 %
		{weaning.Add(90), herd.State{Head: 2, Weight: 140 * units.LivePound, Stage: herd.StageDry}, 7},          // 2 * 140 * 2.5 %
		{weaning.Add(-1), herd.State{Head: 2, Weight: 150 * units.LivePound, Stage: herd.StageLactating}, 13.5}, // as from the sale
	} {
		assert.Equal(t, day.want, g.On(day.on), day.on)
		demand, err := g.DemandOn(day.on, units.Middle)
		require.NoError(t, err)
		assert.InDelta(t, day.lb, demand.PoundsPerDay(), 1e-9)
	}
	assert.Equal(t, before, g.Events, "the caller's list stays as it was")
}

func TestTwoEventsOnOneDay(t *testing.T) {
	g := herd.Group{Head: 5, Weight: 1, Stage: herd.StageDry, Events: []herd.Event{
		{Date: 100, Head: ptr(7.0)}, {Date: 100, Head: ptr(9.0)}, {Date: 99, Head: ptr(1.0)},
	}}
	assert.Equal(t, 5.0, g.On(98).Head)
	assert.Equal(t, 1.0, g.On(99).Head)
	assert.Equal(t, 9.0, g.On(100).Head, "the later in the list wins")
}

func TestGroupErrors(t *testing.T) {
	goose, err := herd.ClassByName("goose")
	require.NoError(t, err)
	_, err = herd.Group{Class: goose, Head: 12, Stage: herd.StageLaying}.DemandOn(0, units.Low)
	assert.ErrorContains(t, err, "goose takes one of: dry")
	_, err = herd.Group{Class: goose, Head: -12}.DemandOn(0, units.Low)
	assert.True(t, units.Impossible(err))
	_, err = herd.Group{Class: goose, Head: 12}.WaterOn(0, herd.Summer, units.High)
	assert.True(t, units.Impossible(err))
	assert.ErrorContains(t, err, "no figure is printed")
	none, err := herd.Group{}.DemandOn(0, units.Low)
	assert.True(t, units.Impossible(err) && math.IsNaN(float64(none)))
	ewe, err := herd.ClassByName("ewe")
	require.NoError(t, err)
	for _, end := range []units.End{-1, 0, 4, 7} {
		none, err = herd.Group{Class: ewe, Head: 12}.DemandOn(0, end)
		assert.True(t, math.IsNaN(float64(none)))
		assert.ErrorContains(t, err, "herd.Group.DemandOn: end is")
		drunk, err := herd.Group{Class: ewe, Head: 12}.WaterOn(0, herd.Summer, end)
		assert.True(t, math.IsNaN(float64(drunk)))
		assert.ErrorContains(t, err, "must be from 1 to 3: low, middle, high")
	}
}

// TestGroupWater: a ewe in milk has a rule of her own.
func TestGroupWater(t *testing.T) {
	ewe, err := herd.ClassByName("ewe")
	require.NoError(t, err)
	g := herd.Group{Class: ewe, Head: 10, Events: []herd.Event{{Date: 50, Stage: ptr(herd.StageLactating)}}}
	for _, c := range []struct {
		on      units.Date
		end     units.End
		gallons float64
	}{{0, units.Low, 7.5}, {0, units.Middle, 11.25}, {0, units.High, 15}, {50, units.Low, 30}, {50, units.High, 40}} {
		water, err := g.WaterOn(c.on, herd.Summer, c.end)
		require.NoError(t, err)
		assert.InDelta(t, c.gallons, water.GallonsPerDay(), 1e-9)
	}
}

// TestOrderOfEventsDoesNotMatter: the same changes in any order give the same
// group, day by day, as going through them by date.
func TestOrderOfEventsDoesNotMatter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var events []herd.Event
		days := rapid.SliceOfNDistinct(rapid.Int32Range(0, 60), 0, 8, rapid.ID[int32]).Draw(t, "days")
		for _, day := range days {
			e := herd.Event{Date: units.Date(day)}
			if rapid.Bool().Draw(t, "head?") {
				e.Head = ptr(float64(rapid.IntRange(0, 50).Draw(t, "head")))
			}
			if rapid.Bool().Draw(t, "weight?") {
				e.Weight = ptr(units.LiveWeight(rapid.Float64Range(1, 900).Draw(t, "weight")))
			}
			if rapid.Bool().Draw(t, "stage?") {
				e.Stage = ptr(herd.Stage(rapid.IntRange(1, 5).Draw(t, "stage")))
			}
			events = append(events, e)
		}
		g := herd.Group{Head: 4, Weight: 500, Stage: herd.StageDry, Events: events}
		sorted := slices.Clone(events)
		slices.SortFunc(sorted, func(a, b herd.Event) int { return int(a.Date - b.Date) })
		want := herd.State{Head: 4, Weight: 500, Stage: herd.StageDry}
		for day := units.Date(0); day <= 60; day++ {
			for _, e := range sorted {
				if e.Date != day {
					continue
				}
				if e.Head != nil {
					want.Head = *e.Head
				}
				if e.Weight != nil {
					want.Weight = *e.Weight
				}
				if e.Stage != nil {
					want.Stage = *e.Stage
				}
			}
			if got := g.On(day); got != want {
				t.Fatalf("day %v: %+v, want %+v", day, got, want)
			}
		}
	})
}

func BenchmarkDemandOn(b *testing.B) {
	b.ReportAllocs()
	cow, _ := herd.ClassByName("suckler-cow")
	g := herd.Group{Class: cow, Head: 2, Events: []herd.Event{{Date: 50, Stage: ptr(herd.StageDry)}}}
	for b.Loop() {
		sink, _ = g.DemandOn(60, units.High)
	}
}

var sink units.Demand

// What do two suckler cows want before and after their calves are weaned?
func ExampleGroup_DemandOn() {
	cow, _ := herd.ClassByName("suckler-cow")
	weaning, _ := units.NewDate(2021, time.October, 1)
	dry := herd.StageDry
	pair := herd.Group{Class: cow, Head: 2, Events: []herd.Event{{Date: weaning, Stage: &dry}}}
	before, _ := pair.DemandOn(weaning.Add(-1), units.High)
	after, err := pair.DemandOn(weaning, units.High)
	fmt.Println(before.In(units.US), after.In(units.US), err)
	// Output:
	// 70.2 lb/day 65 lb/day <nil>
}

// How much water do ten ewes in milk need in a day?
func ExampleGroup_WaterOn() {
	ewe, _ := herd.ClassByName("ewe")
	today, _ := units.NewDate(2021, time.May, 1)
	ewes := herd.Group{Class: ewe, Head: 10, Stage: herd.StageLactating}
	water, err := ewes.WaterOn(today, herd.Summer, units.High)
	fmt.Println(water.In(units.US), err)
	// Output:
	// 40 gal/day <nil>
}

// TestDemandOnTakesNoMemory: a season asks it every day of every group.
func TestDemandOnTakesNoMemory(t *testing.T) {
	cow, err := herd.ClassByName("suckler-cow")
	require.NoError(t, err)
	g := herd.Group{Class: cow, Head: 2, Events: []herd.Event{{Date: 50, Stage: ptr(herd.StageDry)}}}
	assert.Zero(t, testing.AllocsPerRun(100, func() {
		sink, _ = g.DemandOn(60, units.High)
		waterSink, _ = g.WaterOn(60, herd.Summer, units.High)
	}))
}

var waterSink units.WaterRate

// TestBirthEvents: a ewe's class has all three stages, a suckler cow's none of late
// gestation, and a milk that does not end brings no third.
func TestBirthEvents(t *testing.T) {
	birth := herd.Birth{Date: date(t, "2026-06-01"), Late: herd.LateGestation, Weaned: date(t, "2026-08-24")}
	ewe, err := herd.ClassByName("ewe")
	require.NoError(t, err)
	var told []string
	for _, e := range birth.Events(ewe) {
		told = append(told, fmt.Sprint(e.Date, " ", *e.Stage))
	}
	assert.Equal(t, []string{"2026-04-20 late gestation", "2026-06-01 lactating", "2026-08-24 dry"}, told) // 42 days = 147 − 7 × 15

	cow, err := herd.ClassByName("suckler-cow")
	require.NoError(t, err)
	birth.Weaned = 0
	events := birth.Events(cow)
	require.Len(t, events, 1)
	assert.Equal(t, herd.StageLactating, *events[0].Stage)
}

// TestWeightGrows: 2 lb a day from the day the weight was so, or was given anew,
// until the animal is grown.
func TestWeightGrows(t *testing.T) {
	start := date(t, "2026-05-01")
	g := herd.Group{Head: 1, Weight: 500 * units.LivePound, Stage: herd.StageGrowing, Gain: 2 * units.GainPoundPerDay, Since: start, Grown: 600 * units.LivePound,
		Events: []herd.Event{{Date: start.Add(20), Weight: ptr(530 * units.LivePound)}}}
	for after, want := range map[int]float64{-5: 500, 0: 500, 1: 502, 19: 538, 20: 530, 30: 550, 55: 600, 100: 600} {
		assert.InDelta(t, want, g.On(start.Add(after)).Weight.Pounds(), 1e-9, after)
	}
	g.Grown = 0
	assert.InDelta(t, 690, g.On(start.Add(100)).Weight.Pounds(), 1e-9)
	g.Grown = 510 * units.LivePound // heavier than grown from the start: it stays so
	assert.InDelta(t, 530, g.On(start.Add(60)).Weight.Pounds(), 1e-9)
}
