package herd

import (
	"fmt"
	"maps"
	"math"
	"slices"

	"example.org/soum/units"
)

// BreedingFigure is what a figure of breeding counts.
type BreedingFigure int

// The figures of breeding.
const (
	Gestation  BreedingFigure = iota + 1 // from service to birth
	Cycle                                // from one heat to the next
	HeatLength                           // how long a heat lasts
	FirstHeat                            // from birth, in sows from weaning, to the first heat
	Incubation                           // from setting the eggs to hatching
)

// BreedingSource is whose figures of breeding are used.
type BreedingSource int

// The sources of breeding figures.
const (
	ByFrandson    BreedingSource = iota + 1 // a textbook of anatomy, means without a span
	ByLists                                 // lists that pass from hand to hand
	ByOtherLists                            // where such lists differ, the other figure
	ByVirginia                              // Virginia Tech: mean and range
	ByMissouri                              // Missouri: what a breeder counts with
	ByHairSheep                             // 1,291 gestations of hair sheep, by litter
	ByAlpacaFarm                            // 69 births on an alpaca farm
	ByMerck                                 // a veterinary manual: cycles and heats
	ByMississippi                           // Mississippi State: incubation
)

// BreedingRow is a row of the table of breeding.
type BreedingRow struct {
	// Animal is the animal, lower case with hyphens.
	Animal string `json:"animal"`
	// Figure is what is counted.
	Figure BreedingFigure `json:"figure"`
	// By is whose figure it is.
	By BreedingSource `json:"by"`
	// Mean is the printed mean; where print gives a span alone, its middle.
	Mean units.Days `json:"mean"`
	// Span is the printed range, the mean at both ends where print gives none.
	Span units.Span[units.Days] `json:"span"`
	// Source is a key of SOURCES.md with the place.
	Source string `json:"source"`
	// Mark is how the figure was come by.
	Mark string `json:"mark"`
}

// BreedingRows gives the table of breeding, as a copy.
//
// Check: TestBreedingRows
//
// Source: ours: a collection, each figure with the source and mark on its row
func BreedingRows() []BreedingRow { return slices.Clone(breedingRows) }

// BreedingDays gives a figure of breeding: the low end of the printed range, its
// high end, or at units.Middle the printed mean, which need not lie half way.
//
// The sources differ, and so the source is an argument: a cow goes 279 to 284
// days, a mare 335 to 341, a ewe 147 to 150, a goose egg 28 to 35. A row of
// another source for the same animal is the next to try.
//
// Errors: a *units.ParseError that lists the animals, or the sources, that have
// such a figure
//
// Source: FRANDSON-8, BREEDING-LISTS, VT-REPRODUCTION, MISSOURI-BREEDING,
// HAIR-SHEEP-LITTERS, BLACKLANDS-ALPACAS gestation; MERCK-CYCLES cycles and heats;
// MSU-INCUBATION, INCUBATION-LISTS incubation
func BreedingDays(animal string, figure BreedingFigure, by BreedingSource, end units.End) (units.Days, error) {
	row, err := breedingRow(animal, figure, by)
	if err != nil {
		return units.Days(math.NaN()), err
	}
	if end == units.Middle {
		return row.Mean, nil
	}
	return row.Span.At(end), nil
}

// breedingRow looks a row up, or tells what would have been there.
func breedingRow(animal string, figure BreedingFigure, by BreedingSource) (BreedingRow, error) {
	var sources, animals []string
	for _, row := range breedingRows {
		switch {
		case row.Figure != figure:
			continue
		case row.Animal == animal && row.By == by:
			return row, nil
		case row.Animal == animal:
			sources = append(sources, row.By.String())
		}
		if !slices.Contains(animals, row.Animal) {
			animals = append(animals, row.Animal)
		}
	}
	if sources != nil {
		return BreedingRow{}, noRow("herd.BreedingSource", by.String(), fmt.Sprintf("has no %s of %q", figure, animal), sources)
	}
	return BreedingRow{}, noRow("herd.BreedingRow", animal, fmt.Sprintf("no figure of %s for this animal", figure), animals)
}

// noRow says that a table has no such row, and which it has.
func noRow(quantity, text, problem string, has []string) error {
	return &units.ParseError{Quantity: quantity, Text: text, Problem: problem, Accepts: has, Word: true}
}

// ExpectedDates is a day to be expected, with the days that print allows around
// it: the same day three times where print gives no range.
type ExpectedDates struct {
	// Early is the first day of the printed range.
	Early units.Date `json:"early"`
	// Likely is the day by the printed mean.
	Likely units.Date `json:"likely"`
	// Late is the last day of the printed range.
	Late units.Date `json:"late"`
}

// after counts a row's days on from a day, a part of a day up to the nearest
// whole one.
func (row BreedingRow) after(from units.Date) ExpectedDates {
	on := func(d units.Days) units.Date { return from.Add(int(math.Round(float64(d)))) }
	return ExpectedDates{on(row.Span.Low), on(row.Mean), on(row.Span.High)}
}

// DueDate gives the day on which an animal served on a day should give birth.
//
// The range is where most births fall, not a limit. Watch from the early day on.
// A mare that foals before day 320 foals too soon [VT-REPRODUCTION]. A birth that
// does not get on, or one well past the late day, is a case for the vet.
//
// Errors: a *units.ParseError that lists the animals, or the sources, that have
// a gestation
//
// Check: TestDueDate, TestDatesRunBothWays
//
// Source: the rows of BreedingDays; the counting is ours: the day of service is
// day 0, and parts of days are rounded
func DueDate(service units.Date, animal string, by BreedingSource) (ExpectedDates, error) {
	row, err := breedingRow(animal, Gestation, by)
	if err != nil {
		return ExpectedDates{}, err
	}
	return row.after(service), nil
}

// ServiceDate gives the day on which to serve an animal that should give birth
// on a day. Served on the early day, one that goes the longest gives birth on
// the day; served on the late day, one that goes the shortest. Breeders count
// five months back for sheep and goats [MISSOURI-BREEDING].
//
// Errors: a *units.ParseError that lists the animals, or the sources, that have
// a gestation
//
// Check: TestDueDate, TestDatesRunBothWays
//
// Source: the rows of BreedingDays; the counting is ours: the day of service is
// day 0, and parts of days are rounded
func ServiceDate(birth units.Date, animal string, by BreedingSource) (ExpectedDates, error) {
	row, err := breedingRow(animal, Gestation, by)
	if err != nil {
		return ExpectedDates{}, err
	}
	row.Mean, row.Span = -row.Mean, units.Span[units.Days]{Low: -row.Span.High, High: -row.Span.Low}
	return row.after(birth), nil
}

// NextHeat gives the day on which an animal that was in heat on a day, and did
// not hold, comes back.
//
// Errors: a *units.ParseError that lists the animals that have a cycle
//
// Check: TestNextHeat
//
// Source: MERCK-CYCLES
func NextHeat(heat units.Date, animal string) (ExpectedDates, error) {
	row, err := breedingRow(animal, Cycle, ByMerck)
	if err != nil {
		return ExpectedDates{}, err
	}
	return row.after(heat), nil
}

// HatchDate gives the day on which eggs set on a day should hatch.
//
// Errors: a *units.ParseError that lists the birds, or the sources, that have an
// incubation
//
// Check: TestHatchDate
//
// Source: MSU-INCUBATION; INCUBATION-LISTS
func HatchDate(set units.Date, bird string, by BreedingSource) (ExpectedDates, error) {
	row, err := breedingRow(bird, Incubation, by)
	if err != nil {
		return ExpectedDates{}, err
	}
	return row.after(set), nil
}

// PubertyMonths gives the age in months at which a young female first comes in
// heat. It is not the age to breed at: heifers are bred at 14 to 15 months
// [MERCK-CYCLES], and one bred too young may not come through the birth. Keep
// young males apart from about the low end on; ask a vet or an adviser.
//
// Errors: a *units.ParseError that lists the animals that have a figure
//
// Source: MERCK-CYCLES
func PubertyMonths(animal string, end units.End) (float64, error) {
	span, found := pubertyMonths[animal]
	if !found {
		return math.NaN(), noRow("herd.PubertyMonths", animal, "no age at puberty for this animal", slices.Sorted(maps.Keys(pubertyMonths)))
	}
	return span.At(end), nil
}
