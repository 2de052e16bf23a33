package herd

import (
	"slices"

	"example.org/soum/units"
)

// WeightAfter returns what an animal weighs after so many days of growth.
//
// Formula: weight + gain * days
//
// Where:
//   - weight in lb: live weight at the start; > 0
//   - gain in lb/day: growth; >= 0
//   - days in days: how long, as one date less another; >= 0
//
// Note: no animal grows in a straight line to the end; the sum holds for the
// stretch that the gain was seen on.
//
// Source: definition: a mean gain times the days
func WeightAfter(weight units.LiveWeight, gain units.LiveGain, days units.Days) (units.LiveWeight, error) {
	after := units.LiveWeight(float64(weight) + float64(float64(gain)*float64(days)))
	return units.Answer(&formulaWeightAfter, after, float64(weight), float64(gain), float64(days))
}

// DaysToMarket returns how long an animal grows from one weight to another.
//
// Formula: (market - weight) / gain
//
// Where:
//   - weight in lb: live weight now; >= 0
//   - market in lb: live weight wanted; >= weight
//   - gain in lb/day: mean growth; > 0
//
// Source: PSU-GROWTH
func DaysToMarket(weight, market units.LiveWeight, gain units.LiveGain) (units.Days, error) {
	days := units.Days(float64(market-weight) / float64(gain))
	return units.Answer(&formulaDaysToMarket, days, float64(weight), float64(market), float64(gain))
}

// FeedToMarket returns the feed, as it lies, that an animal eats while it grows
// from one weight to another.
//
// Formula: (market - weight) * conversion
//
// Where:
//   - weight in lb: live weight now; >= 0
//   - market in lb: live weight wanted; >= weight
//   - conversion: feed for each unit of gain, lb a lb or kg a kg; > 0
//
// Note: print reckons complete feed. It words feed conversion upside down and
// reckons it as here.
//
// Source: PSU-GROWTH
func FeedToMarket(weight, market units.LiveWeight, conversion float64) (units.FreshFeed, error) {
	feed := units.FreshFeed(float64(market-weight) * conversion)
	return units.Answer(&formulaFeedToMarket, feed, float64(weight), float64(market), conversion)
}

// GrowthFigure is a printed figure of growth on complete feed.
type GrowthFigure struct {
	// Name is the row's name, lower case with hyphens.
	Name string `json:"name"`
	// Kind is the sort of animal.
	Kind Kind `json:"kind"`
	// Gain is the printed span of growth.
	Gain units.Span[units.LiveGain] `json:"gain"`
	// Usual is the growth that print reckons with, 0 where it gives a span only.
	Usual units.LiveGain `json:"usual"`
	// From is the weight at the start, 0 where print gives none.
	From units.LiveWeight `json:"from"`
	// Market is the weight at the end, 0 where print gives none.
	Market units.LiveWeight `json:"market"`
	// Conversion is the feed for each unit of gain, 0 where print gives none.
	Conversion float64 `json:"conversion"`
	units.Printed
	// Note says what a reader of the row should know.
	Note string `json:"note,omitempty"`
}

// GrowthFigures gives the printed figures of growth, as a copy.
//
// Check: TestGrowthFiguresAgainstPrint
//
// Source: ours: a collection, each figure with the source and mark on its row
func GrowthFigures() []GrowthFigure { return slices.Clone(growthFigures) }
