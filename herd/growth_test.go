package herd_test

import (
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/herd"
	"example.org/soum/units"
)

// TestGrowthFiguresAgainstPrint compares every figure with a second reading, and
// the days and the feed of the rows with what follows from them.
func TestGrowthFiguresAgainstPrint(t *testing.T) {
	printed := printedRows(t, "testdata/growth_figures.csv")[1:]
	figures := herd.GrowthFigures()
	require.Len(t, figures, len(printed))
	for i, row := range printed {
		figure := figures[i]
		assert.Equal(t, row[0], figure.Name)
		assert.Equal(t, row[1], figure.Kind.String())
		for j, got := range []float64{
			figure.Gain.Low.PoundsPerDay(), figure.Gain.High.PoundsPerDay(), figure.Usual.PoundsPerDay(),
			figure.From.Pounds(), figure.Market.Pounds(), figure.Conversion,
		} {
			want := 0.0
			if row[2+j] != "" {
				want = numberOf(t, row[2+j])
			}
			assert.InDelta(t, want, got, 1e-11, "%s, column %d", row[0], 2+j)
		}
		assert.Equal(t, row[8], figure.Mark)
		assert.NotEmpty(t, figure.Source)
	}
	figures[0].Name = "mine"
	assert.Equal(t, "pig", herd.GrowthFigures()[0].Name)
}

// TestGrownForTheDaysToMarket: who grows for the days to market weighs what the
// market wants.
func TestGrownForTheDaysToMarket(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		weight := units.LiveWeight(rapid.Float64Range(1, 500).Draw(t, "weight"))
		market := weight + units.LiveWeight(rapid.Float64Range(0, 500).Draw(t, "more"))
		gain := units.LiveGain(rapid.Float64Range(0.01, 2).Draw(t, "gain"))
		days, err := herd.DaysToMarket(weight, market, gain)
		if err != nil {
			t.Fatal(err)
		}
		grown, err := herd.WeightAfter(weight, gain, days)
		if err != nil || !near(float64(grown), float64(market)) {
			t.Fatalf("%v, wanted %v (%v)", grown, market, err)
		}
	})
}

// A calf of 500 lb gains 2 lb a day from 1 May to 1 October: what does it weigh?
func ExampleWeightAfter() {
	from, _ := units.NewDate(2026, time.May, 1)
	to, _ := units.NewDate(2026, time.October, 1)
	weight, err := herd.WeightAfter(500*units.LivePound, 2*units.GainPoundPerDay, to.Sub(from))
	fmt.Println(weight.In(units.US), err)
	// Output:
	// 806 lb <nil>
}

// When is a lamb of 50 lb ready at 120 lb?
func ExampleDaysToMarket() {
	days, err := herd.DaysToMarket(50*units.LivePound, 120*units.LivePound, 0.5*units.GainPoundPerDay)
	fmt.Println(days, err)
	// Output:
	// 140 days <nil>
}

// And what feed does it eat until then?
func ExampleFeedToMarket() {
	feed, err := herd.FeedToMarket(50*units.LivePound, 120*units.LivePound, 5)
	fmt.Println(feed.In(units.US), err)
	// Output:
	// 350 lb <nil>
}

// How fast do meat animals grow?
func ExampleGrowthFigures() {
	for _, row := range herd.GrowthFigures()[:3] {
		fmt.Println(row.Name, row.Gain.Low.In(units.US), "to", row.Gain.High.In(units.US), row.Source)
	}
	// Output:
	// pig 1.2 lb/day to 2.5 lb/day PSU-GROWTH
	// lamb 0.5 lb/day to 0.5 lb/day PSU-GROWTH
	// cattle 1.5 lb/day to 4.5 lb/day PSU-GROWTH
}
