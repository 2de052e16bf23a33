package herd

import "example.org/soum/units"

// ManureKind is a row of the manure table.
type ManureKind int

// The rows of the manure table.
const (
	ManureUnknown      ManureKind = iota + 1 // no row: sheep, goats, horses, geese
	ManureBeefCow                            // beef cow
	ManureDairyCow                           // dairy cow
	ManureHeifer                             // dairy heifer or calf
	ManureBreedingPig                        // pig for breeding
	ManureSlaughterPig                       // pig for slaughter
	ManureHen                                // hen or pullet
	ManureTurkey                             // turkey for slaughter
	ManureSteer                              // steer, calf or bull
	ManureTurkeyHen                          // turkey hen for breeding
)

// Nutrient is what a crop gets from manure.
type Nutrient int

// The nutrients.
const (
	Nitrogen  Nutrient = iota + 1 // N
	Phosphate                     // P2O5
	Potash                        // K2O
)

// Fate is how far on its way a nutrient is counted.
type Fate int

// The fates.
const (
	Excreted    Fate = iota + 1 // as it leaves the animal
	AfterLosses                 // after the losses of keeping and handling the manure
)

// ManurePerUnitYear returns the manure of 1,000 lb of live weight in a year.
//
// Table: short tons for each animal unit of 1,000 lb and year
//
// Where:
//   - kind: the row
//
// Errors: a *units.ParseError for ManureUnknown, since there is no printed figure
//
// Source: NRCS-MANURE column of tons per animal unit and year
func ManurePerUnitYear(kind ManureKind) (units.Mass, error) {
	mass := manureRow(kind).tons * units.ShortTon
	if kind == ManureUnknown {
		return noManure[units.Mass](&formulaManurePerUnitYear, float64(kind))
	}
	return units.Answer(&formulaManurePerUnitYear, mass, float64(kind))
}

// NutrientShare returns the share of a nutrient in manure.
//
// Table: pounds in a short ton, as excreted and after losses
//
// Where:
//   - kind: the row
//   - nutrient: which
//   - fate: as excreted or after losses
//
// Errors: a *units.ParseError for ManureUnknown, since there is no printed figure
//
// Note: the print heads its columns as phosphate and potassium; they are read
// here as P2O5 and K2O, as the rest of the trade's tables are. The losses are
// those of manure that is kept and spread, not of droppings on pasture. A single
// farm may lie several times off: have a sample analysed before you rely on it,
// and keep to the local rules on manure and water.
//
// Source: NRCS-MANURE columns of pounds per ton
func NutrientShare(kind ManureKind, nutrient Nutrient, fate Fate) (units.Fraction, error) {
	share := manureRow(kind).share(nutrient, fate)
	arguments := [...]float64{float64(kind), float64(nutrient), float64(fate)}
	if kind == ManureUnknown {
		return noManure[units.Fraction](&formulaNutrientShare, arguments[:]...)
	}
	return units.Answer(&formulaNutrientShare, share, arguments[:]...)
}

// ManureMass returns the manure of a live weight over a time.
//
// Method: weight / 1,000 lb * ManurePerUnitYear(kind) * days / 365 days
//
// Uses: ManurePerUnitYear
//
// Where:
//   - kind: the row
//   - weight in lb: live weight of all animals together; >= 0
//   - days in days: how long; >= 0
//
// Errors: a *units.ParseError for ManureUnknown, since there is no printed figure
//
// Source: NRCS-MANURE tons per animal unit and year; the day is ours: a year of 365
func ManureMass(kind ManureKind, weight units.LiveWeight, days units.Days) (units.Mass, error) {
	mass := manureMass(kind, weight, days)
	arguments := [...]float64{float64(kind), float64(weight), float64(days)}
	if kind == ManureUnknown {
		return noManure[units.Mass](&formulaManureMass, arguments[:]...)
	}
	return units.Answer(&formulaManureMass, mass, arguments[:]...)
}

// daysOfYear is the year of the manure tables.
const daysOfYear = 365

func manureMass(kind ManureKind, weight units.LiveWeight, days units.Days) units.Mass {
	year := manureRow(kind).tons * units.ShortTon
	return units.Mass(float64(weight) / thousandPounds * float64(year) * (float64(days) / daysOfYear))
}

// NutrientMass returns a nutrient in the manure of a live weight over a time.
//
// Method: ManureMass(kind, weight, days) * NutrientShare(kind, nutrient, fate)
//
// Uses: ManureMass, NutrientShare
//
// Where:
//   - kind: the row
//   - nutrient: which
//   - fate: as excreted or after losses
//   - weight in lb: live weight of all animals together; >= 0
//   - days in days: how long; >= 0
//
// Errors: a *units.ParseError for ManureUnknown, since there is no printed figure
//
// Note: the cautions of NutrientShare hold.
//
// Source: NRCS-MANURE tons per animal unit and year times pounds per ton
func NutrientMass(kind ManureKind, nutrient Nutrient, fate Fate, weight units.LiveWeight, days units.Days) (units.Mass, error) {
	mass := units.Mass(float64(manureMass(kind, weight, days)) * float64(manureRow(kind).share(nutrient, fate)))
	arguments := [...]float64{float64(kind), float64(nutrient), float64(fate), float64(weight), float64(days)}
	if kind == ManureUnknown {
		return noManure[units.Mass](&formulaNutrientMass, arguments[:]...)
	}
	return units.Answer(&formulaNutrientMass, mass, arguments[:]...)
}

// noManure refuses the kind that has no row.
func noManure[Q ~float64](formula *units.Formula, arguments ...float64) (Q, error) {
	return units.NoFigure[Q](formula, 0, "no figure is printed for this kind of stock", namesManureKind[ManureBeefCow:], arguments...)
}

// YearlyManure returns the manure of a year from that of a day.
//
// Formula: daily * 365
//
// Where:
//   - daily in lb: manure of one day; >= 0
//
// Source: WISC-A3601 its column of tons a year
func YearlyManure(daily units.Mass) (units.Mass, error) {
	return units.Answer(&formulaYearlyManure, daily*daysOfYear, float64(daily))
}
