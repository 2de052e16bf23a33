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
	units.Printed
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
// Where:
//   - animal: as in BreedingRows
//   - figure: what is counted
//   - by: whose figure
//   - end: of the printed range, its middle being the printed mean
//
// Errors: a *units.ParseError that lists the animals, or the sources, that have
// such a figure
//
// Source: FRANDSON-8, BREEDING-LISTS, VT-REPRODUCTION, MISSOURI-BREEDING,
// HAIR-SHEEP-LITTERS, BLACKLANDS-ALPACAS gestation; MERCK-CYCLES cycles and heats;
// MSU-INCUBATION, INCUBATION-LISTS incubation
func BreedingDays(animal string, figure BreedingFigure, by BreedingSource, end units.End) (units.Days, error) {
	arguments := [...]float64{0, float64(figure), float64(by), float64(end)}
	row, err := breedingRow(&formulaBreedingDays, "animal", animal, figure, by, arguments[:]...)
	if err != nil {
		return units.Days(math.NaN()), err
	}
	days := row.Mean
	if end != units.Middle {
		days = row.Span.At(end)
	}
	return units.Answer(&formulaBreedingDays, days, arguments[:]...)
}

// breedingRow looks a row up for a look-up, or tells what it would have had: argument
// is the one that names the animal.
func breedingRow(formula *units.Formula, argument, animal string, figure BreedingFigure, by BreedingSource, arguments ...float64) (*BreedingRow, error) {
	for i := range breedingRows {
		if row := &breedingRows[i]; row.Animal == animal && row.Figure == figure && row.By == by {
			return row, nil
		}
	}
	var sources, animals []string
	for _, row := range breedingRows {
		if row.Figure != figure {
			continue
		}
		if row.Animal == animal {
			sources = append(sources, row.By.String())
		}
		if !slices.Contains(animals, row.Animal) {
			animals = append(animals, row.Animal)
		}
	}
	if sources != nil {
		return nil, formula.NoRow("by", by.String(), fmt.Sprintf("has no %s of %q", figure, animal), sources, arguments...)
	}
	return nil, formula.NoRow(argument, animal, fmt.Sprintf("no figure of %s for this animal", figure), animals, arguments...)
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
func (row *BreedingRow) after(from units.Date) ExpectedDates {
	on := func(d units.Days) units.Date { return from.Add(int(math.Round(float64(d)))) }
	return ExpectedDates{on(row.Span.Low), on(row.Mean), on(row.Span.High)}
}

// DueDate gives the day on which an animal served on a day should give birth.
//
// The range is where most births fall, not a limit. Watch from the early day on.
// A mare that foals before day 320 foals too soon [VT-REPRODUCTION]. A birth that
// does not get on, or one well past the late day, is a case for the vet.
//
// Where:
//   - service: the day of service
//   - animal: as in BreedingRows
//   - by: whose figure
//
// Errors: a *units.ParseError that lists the animals, or the sources, that have
// a gestation
//
// Check: TestDueDate, TestDatesRunBothWays
//
// Source: the rows of BreedingDays; the counting is ours: the day of service is
// day 0, and parts of days are rounded
func DueDate(service units.Date, animal string, by BreedingSource) (ExpectedDates, error) {
	row, err := breedingRow(&formulaDueDate, "animal", animal, Gestation, by, 0, 0, float64(by))
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
// Where:
//   - birth: the day on which it should give birth
//   - animal: as in BreedingRows
//   - by: whose figure
//
// Errors: a *units.ParseError that lists the animals, or the sources, that have
// a gestation
//
// Check: TestDueDate, TestDatesRunBothWays
//
// Source: the rows of BreedingDays; the counting is ours: the day of service is
// day 0, and parts of days are rounded
func ServiceDate(birth units.Date, animal string, by BreedingSource) (ExpectedDates, error) {
	row, err := breedingRow(&formulaServiceDate, "animal", animal, Gestation, by, 0, 0, float64(by))
	if err != nil {
		return ExpectedDates{}, err
	}
	back := BreedingRow{Mean: -row.Mean, Span: units.Span[units.Days]{Low: -row.Span.High, High: -row.Span.Low}}
	return back.after(birth), nil
}

// NextHeat gives the day on which an animal that was in heat on a day, and did
// not hold, comes back.
//
// Where:
//   - heat: a day of the heat
//   - animal: as in BreedingRows
//
// Errors: a *units.ParseError that lists the animals that have a cycle
//
// Check: TestNextHeat
//
// Source: MERCK-CYCLES
func NextHeat(heat units.Date, animal string) (ExpectedDates, error) {
	row, err := breedingRow(&formulaNextHeat, "animal", animal, Cycle, ByMerck, 0, 0)
	if err != nil {
		return ExpectedDates{}, err
	}
	return row.after(heat), nil
}

// HatchDate gives the day on which eggs set on a day should hatch.
//
// Where:
//   - set: the day on which they are set
//   - bird: as in BreedingRows
//   - by: whose figure
//
// Errors: a *units.ParseError that lists the birds, or the sources, that have an
// incubation
//
// Check: TestHatchDate
//
// Source: MSU-INCUBATION; INCUBATION-LISTS
func HatchDate(set units.Date, bird string, by BreedingSource) (ExpectedDates, error) {
	row, err := breedingRow(&formulaHatchDate, "bird", bird, Incubation, by, 0, 0, float64(by))
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
// Where:
//   - animal: cow, ewe, doe, sow or mare
//   - end: of the printed span
//
// Errors: a *units.ParseError that lists the animals that have a figure
//
// Source: MERCK-CYCLES
func PubertyMonths(animal string, end units.End) (float64, error) {
	span, found := pubertyMonths[animal]
	if !found {
		return math.NaN(), formulaPubertyMonths.NoRow("animal", animal, "no age at puberty for this animal", slices.Sorted(maps.Keys(pubertyMonths)), 0, float64(end))
	}
	return units.Answer(&formulaPubertyMonths, span.At(end), 0, float64(end))
}
