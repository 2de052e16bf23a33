package herd

import (
	"slices"

	"example.org/soum/units"
)

// Season is the half of the year that a figure is of.
type Season int

// The seasons.
const (
	Summer Season = iota + 1 // the warm half of the year
	Winter                   // the cold half of the year
)

// WaterRule is the printed rule of what an animal drinks.
type WaterRule int

// The rules.
const (
	WaterUnknown       WaterRule = iota + 1 // no printed figure
	WaterCattle                             // cattle, by weight and season
	WaterHorse                              // horses, by weight
	WaterDairyCow                           // a dairy cow, by head
	WaterSmallRuminant                      // a sheep or goat, by head
	WaterLactatingEwe                       // a ewe in milk, by head
	WaterLactatingGoat                      // a doe in milk, by head
	WaterLactatingSow                       // a sow in milk, by head
	WaterPig                                // other pigs, by head
	WaterChicken                            // chickens, by hundreds of head
	WaterTurkey                             // turkeys, by hundreds of head
)

// WaterFigure is a row of the water table: what is drunk in a day by so many
// head, or by so much live weight.
type WaterFigure struct {
	// Rule is the rule that the row is of.
	Rule WaterRule `json:"rule"`
	// Head is the number of animals that the figure is for; 0 where it goes by
	// weight.
	Head float64 `json:"head"`
	// Weight is the live weight that the figure is for; 0 where it goes by head.
	Weight units.LiveWeight `json:"weight"`
	// Summer is the printed span for summer.
	Summer units.Span[units.WaterRate] `json:"summer"`
	// Winter is the printed span for winter, the same where print gives one.
	Winter units.Span[units.WaterRate] `json:"winter"`
	units.Printed
}

// WaterFigures gives the water table, as a copy.
//
// Check: TestWaterFiguresAreTheTableOfWater
//
// Source: ours: a collection, each figure with the source and mark on its row
func WaterFigures() []WaterFigure { return slices.Clone(waterFigures) }

// Water returns what a group drinks in a day.
//
// Table: the figure of the rule and season, per head or per live weight, times
// the head or the live weight of the group
//
// Where:
//   - head: number of animals; >= 0
//   - weight in lb: live weight of one, which rules by head do not use; > 0
//   - rule: whose figure
//   - season: summer or winter
//   - place in %: where in the printed span, 0 its low end and 100 its high; 0 to 100
//
// Errors: a *units.ParseError for WaterUnknown, since there is no printed figure
//
// Note: plan on the high end, and on more. On days over 25 °C stock may drink up
// to twice their average [ALBERTA-WATER], from 50 to 90 °F the need of cattle
// rises two and a half times [MSU-P2490], horses at hot work drink two to four
// times the figure [KSU-WATER]. Stock without water die: a loss of a tenth of
// the body's water kills most [NDSU-AS1763]. Water must be there at all times
// and be fit to drink; a vet, an adviser and the local rules decide. Sources
// differ: a hundred laying hens 8 to 10 gal [SDSU-C274] or 5.0 to 7.5
// [HENS-WATER], a dairy cow 15 to 30 [KSU-WATER] or 10 to 16 [SDSU-C274].
//
// Source: KSU-WATER cattle, horses and dairy cows; NC-WATER sheep and goats;
// OHIO-WATER stock in milk; SDSU-C274 pigs, chickens and turkeys
func Water(head float64, weight units.LiveWeight, rule WaterRule, season Season, place units.Fraction) (units.WaterRate, error) {
	figure := waterFigure(rule)
	span := figure.Summer
	if season == Winter {
		span = figure.Winter
	}
	water := float64(span.Low) + float64(span.High-span.Low)*float64(place)
	if figure.Weight > 0 {
		water *= head * float64(weight/figure.Weight)
	} else {
		water *= head / figure.Head
	}
	arguments := [...]float64{head, float64(weight), float64(rule), float64(season), float64(place)}
	if rule == WaterUnknown {
		return units.NoFigure[units.WaterRate](&formulaWater, 2, "no figure is printed for this kind of stock", namesWaterRule[WaterCattle:], arguments[:]...)
	}
	return units.Answer(&formulaWater, units.WaterRate(water), arguments[:]...)
}
