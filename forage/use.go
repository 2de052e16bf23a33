package forage

import (
	"slices"

	"example.org/soum/units"
)

// UsableShare returns the share of the available forage that stock eat during
// one stay on a piece of land; the rest of what disappears is trampled or
// fouled.
//
// Table: 80 % for a stay of 1 day, 75 for 2 and 3, 70 for 4, 65 for 5, 60 for 6
// and 7; between two printed days a straight line, which is ours. Under 1 day
// the value of 1 day, over 7 days that of 7, each beside a range error.
//
// Where:
//   - stay in days: time from turn-in to turn-out; > 0; 1 to 7 [PSU-STAY]
//
// Note: others print 70 to 80 % for strips and frequent moves, 60 to 70 % for
// six to eight paddocks and 30 to 50 % where stock stay the season (UGA-EFFICIENCY,
// AHDB-ROTATION). Those are shares of a system, this is the share of one stay.
//
// Source: PSU-STAY table 1.8-9
func UsableShare(stay units.Days) (units.Fraction, error) {
	return units.Answer(&formulaUsableShare, usableShare(stay), float64(stay))
}

func usableShare(stay units.Days) units.Fraction {
	if stay <= stayRows[0].stay {
		return stayRows[0].share
	}
	for i := 1; i < len(stayRows); i++ {
		before, after := &stayRows[i-1], &stayRows[i]
		if stay <= after.stay {
			gone := float64((stay - before.stay) / (after.stay - before.stay))
			return before.share + units.Fraction(gone)*(after.share-before.share)
		}
	}
	return stayRows[len(stayRows)-1].share
}

// Usable returns the dry matter that may be taken from an area.
//
// Formula: yield * area * use
//
// Where:
//   - yield in lb/ac: dry matter per area; >= 0
//   - area in ac: the land; >= 0
//   - use in %: the share that may be taken; 0 to 100
//
// Source: TAMU-1646 forage times share; AHDB-ROTATION; FUTUREBEEF-PALATABLE
func Usable(yield units.Yield, area units.Area, use units.Fraction) (units.DryMatter, error) {
	mass := units.DryMatter(float64(yield) * float64(area) * float64(use))
	return units.Answer(&formulaUsable, mass, float64(yield), float64(area), float64(use))
}

// Allotment returns the forage to offer in a day so that stock can eat their
// intake of it.
//
// Formula: intake / efficiency
//
// Where:
//   - intake in lb/day: dry matter eaten; >= 0
//   - efficiency in share: eaten share of what is offered; > 0 and <= 1
//
// Note: a share so small that the answer overflows is refused.
//
// Source: UGA-EFFICIENCY worked example
func Allotment(intake units.Demand, efficiency units.Fraction) (units.Demand, error) {
	offered := units.Demand(float64(intake) / float64(efficiency))
	return units.Answer(&formulaAllotment, offered, float64(intake), float64(efficiency))
}

// LandPerUnitMonth returns the land that feeds one animal unit through a month
// of the season.
//
// Formula: demand * days / (annual * share * use)
//
// Where:
//   - demand in lb/day: dry matter that an animal unit eats; >= 0
//   - days in days: days of the month; >= 0
//   - annual in short ton/ac: dry matter grown in a year; > 0
//   - share in %: share of the year's growth that falls in the month; > 0 and <= 100
//   - use in %: share of the growth that is eaten; > 0 and <= 100
//
// Note: PSU-MONTHS prints acres for 25 lb/day and 70 % use; it does not print
// this formula or the shares, which were solved from its acres. Others reckon an
// animal unit at 26 or 30 lb/day. Two printed cells do not fit and are taken as
// misprints (see the source's entry).
//
// Source: PSU-MONTHS table 1.8-8; ours: the formula, solved from the printed acres
func LandPerUnitMonth(demand units.Demand, days units.Days, annual units.Yield, share, use units.Fraction) (units.Area, error) {
	land := units.Area(float64(demand) * float64(days) / (float64(annual) * float64(share) * float64(use)))
	return units.Answer(&formulaLandPerUnitMonth, land, float64(demand), float64(days), float64(annual), float64(share), float64(use))
}

// Trampled returns what is trampled, fouled or left lying of the forage that a
// stay takes off a stand.
//
// Formula: available * (1 - use)
//
// Where:
//   - available in lb/ac: dry matter above what is left, all of which goes; >= 0
//   - use in %: share of it that is eaten; 0 to 100
//
// Note: subdividing does not end trampling: 120 pastures at 225,000 kg of live weight
// a hectare trampled 40 to 55 %, about twice what 4 pastures at 5,000 to 7,000 did,
// with no gain in plants or steers over eight years (ANDRADE-2022).
//
// Source: UCONN-STEPS a quarter of 1,000 lb/ac wasted; PSU-STAY that the share not
// eaten is lost
func Trampled(available units.Yield, use units.Fraction) (units.Yield, error) {
	lost := units.Yield(float64(available) * (1 - float64(use)))
	return units.Answer(&formulaTrampled, lost, float64(available), float64(use))
}

// EatenShare returns the share of the year's growth that stock eat, from what is to
// stay and what insects, weather and feet take.
//
// Method: 1 - left - lost
//
// Where:
//   - left in %: share of the growth that is to stay; 0 to 100
//   - lost in %: share of the growth that nobody eats; 0 to 100
//
// Errors: a domain error of the result where the two are more than the whole
//
// Note: on range half stays and a quarter is lost, which leaves the 25 % that two
// Texas sources use (TAMU-5036, LULING-STICK). SDSU-IG-528 lets not more than 50 % go
// by weight in the growing season, 60 dormant, 65 of browse; the mulga lands of
// Queensland are safe at 15 to 25 % (MULGA-1996).
//
// Source: TAMU-5036
func EatenShare(left, lost units.Fraction) (units.Fraction, error) {
	eaten := 1 - left - lost
	if left+lost > 1 {
		eaten = notANumber[units.Fraction]()
	}
	return units.Answer(&formulaEatenShare, eaten, float64(left), float64(lost))
}

// PalatableAbove returns the dry matter that can be grazed of a stand of which a
// part lies dead and a part is not liked. Below nothing it is what is missing.
//
// Formula: standing*(1-detached)*(1-unpalatable) - leave
//
// Where:
//   - standing in kg/ha: dry matter of all that is there; >= 0
//   - detached in %: share of it that lies loose; 0 to 100
//   - unpalatable in %: share of the rest that stock will not eat; 0 to 100
//   - leave in kg/ha: dry matter to be left of what they would eat; >= 0
//
// Note: the source's text lists a further 10 % that its own answer does not take
// off.
//
// Source: MLA-BUDGET worked example; FUTUREBEEF-PALATABLE 80 % of 3,000 kg/ha
func PalatableAbove(standing units.Yield, detached, unpalatable units.Fraction, leave units.Yield) (units.Yield, error) {
	mass := units.Yield(float64(float64(standing)*(1-float64(detached))*(1-float64(unpalatable))) - float64(leave))
	return units.Answer(&formulaPalatableAbove, mass, float64(standing), float64(detached), float64(unpalatable), float64(leave))
}

// HeightRemoved returns the share of a stand's height that a grazing takes.
//
// Formula: (height - leave) / height
//
// Where:
//   - height in in: mean ruler height before; > 0
//   - leave in in: mean ruler height after; 0 to height
//
// Note: the share of the mass is another: the lower inches hold more (CurveMass).
//
// Source: CORNELL-INTENSIVE
func HeightRemoved(height, leave units.Height) (units.Fraction, error) {
	share := units.Fraction(float64(height-leave) / float64(height))
	return units.Answer(&formulaHeightRemoved, share, float64(height), float64(leave))
}

// RootTest is one of four clipping trials of roots.
type RootTest int

// The tests. The single column that is often handed on is the first alone.
const (
	RootTestFirst  RootTest = iota + 1 // the column that is often reprinted
	RootTestSecond                     // the second
	RootTestThird                      // the third, which stops soonest
	RootTestFourth                     // the fourth, which stops latest
)

// RootStop returns the share of the roots of a grass that have stopped growing three
// days after a part of its top was clipped off once.
//
// Table: straight lines between the printed tenths from 40 to 90 % of the top, which
// is ours; none up to 40 %; above 90 % all of them
//
// Where:
//   - removed in %: share of the top taken; 0 to 100; 0 to 90 [CRIDER-1955]
//   - test: which of the four
//
// Note: the tests differ: at half of the top 2, 8, 38 and 13 %. Reprints print 2 to
// 5 % there from the first test alone. Roots stayed stopped 6 to 18 days, 11 in the
// mean; an older sheet has 12 days after 80 % and 18 after 90 (COLORADO-ROOTS).
//
// Source: CRIDER-1955 as NOBLE-ROOTS reprints it
func RootStop(removed units.Fraction, test RootTest) (units.Fraction, error) {
	stopped := units.Fraction(0)
	if test >= RootTestFirst && test <= RootTestFourth && removed >= 0 {
		stopped = units.Fraction(line(topRemoved[:], rootsStopped[test-1][:], removed.Percent())) * units.Percent
	}
	return units.Answer(&formulaRootStop, stopped, float64(removed), float64(test))
}

// RangeGrass is a kind of range by the height of its grasses.
type RangeGrass int

// The kinds of range.
const (
	Shortgrass RangeGrass = iota + 1 // short grasses
	Midgrass                         // middling ones
	Tallgrass                        // tall ones
)

// MinimumResidue gives one end of the dry matter that is to be left on range, oven
// dry.
//
// Table: shortgrass 300 to 500 lb/ac, midgrass 750 to 1,000, tallgrass 1,200 to 1,500
//
// Where:
//   - grass: which kind of range
//   - end: of the printed span
//
// Note: cattle ate less where under 750 lb/ac stood in south Texas, 623 on the
// Rolling Plains (the same source): short grass hurts the stock as well.
//
// Source: TAMU-5036
func MinimumResidue(grass RangeGrass, end units.End) (units.Yield, error) {
	var residue units.Yield
	if grass >= Shortgrass && grass <= Tallgrass {
		residue = residues[grass-1].At(end)
	}
	return units.Answer(&formulaMinimumResidue, residue, float64(grass), float64(end))
}

// GrazingSystem is a way of using grass.
type GrazingSystem int

// The systems.
const (
	SystemContinuous   GrazingSystem = iota + 1 // stock stay the season
	SystemSlow                                  // a slow rotation, 3 or 4 paddocks
	SystemModerate                              // 6 to 8 paddocks, moves every few days
	SystemStrip                                 // strips or frequent moves, 24 paddocks and more
	SystemHay                                   // cut for hay
	SystemSilage                                // cut for silage
	SystemGreenChop                             // cut and carried fresh
	SystemRangeGrowing                          // range, in the growing season
	SystemRangeDormant                          // range, when it is dormant
	SystemBrowse                                // browse of shrubs
)

// UseSource is whose figure of the share used is meant.
type UseSource int

// The sources of shares used.
const (
	UseByGeorgia     UseSource = iota + 1 // Georgia and Texas AgriLife
	UseByBritain                          // AHDB, share of the grass grown
	UseByCornell                          // Cornell Small Farms
	UseByMississippi                      // Mississippi
	UseByMaine                            // Maine, the season's share
	UseByTexasRange                       // Texas range, the season's share
	UseByBryan                            // NRCS Bryan, Texas, improved grass
	UseByNoble                            // Noble Foundation, bermudagrass
	UseByAustralia                        // Meat & Livestock Australia
	UseByNorthDakota                      // a North Dakota site sheet
	UseBySouthDakota                      // NRCS South Dakota, the most
	UseByQueensland                       // Queensland mulga lands, safe use
)

// UseRow is a row of the table of shares used.
type UseRow struct {
	// System of use.
	System GrazingSystem `json:"system"`
	// By is whose figure it is.
	By UseSource `json:"by"`
	// Share is the printed span.
	Share units.Span[units.Fraction] `json:"share"`
	// Of tells what the share is of.
	Of string `json:"of"`
	units.Printed
	// Note tells what the figure is besides.
	Note string `json:"note,omitempty"`
}

// UseRows gives the table of shares used, as a copy.
//
// Check: TestUseRows
//
// Source: ours: a collection, each row with its source
func UseRows() []UseRow { return slices.Clone(useRows) }

// SystemUse gives one end of the share of the season's forage that a system of
// grazing or cutting uses.
//
// It is not the share of one stay, which is UsableShare: a paddock grazed seven times
// at 70 % of what stands above the residual, and one set-stocked at 35 % of all that
// grew, are told in different numbers. Never multiply the two. From the share to head
// on the land goes grazing.CarryingCapacity.
//
// Table: shares by system and source
//
// Where:
//   - system: which
//   - by: whose figure
//   - end: of the printed span
//
// Errors: a *units.ParseError that lists the sources of the system
//
// Note: sources disagree about continuous grazing most: 25 % on range, 30 to 40,
// 45 on improved grass, 50.
//
// Source: UGA-EFFICIENCY, AHDB-ROTATION, CORNELL-SMALL-FARMS, MISSISSIPPI-USE,
// UMAINE-LESSON-5, TAMU-5036, NRCS-BRYAN-528, NOBLE-DROUGHT, MLA-USE, ND-CURVE,
// SDSU-IG-528, MULGA-1996, as the row says
func SystemUse(system GrazingSystem, by UseSource, end units.End) (units.Fraction, error) {
	arguments := [...]float64{float64(system), float64(by), float64(end)}
	row := rowOf(useRows, func(r *UseRow) bool { return r.System == system && r.By == by })
	if row == nil {
		sources := known(useRows, func(r *UseRow) bool { return r.System == system }, func(r *UseRow) string { return r.By.String() })
		return noRow[units.Fraction](&formulaSystemUse, "by", by.String(), "has no figure of a system "+system.String(), sources, arguments[:]...)
	}
	return units.Answer(&formulaSystemUse, row.Share.At(end), arguments[:]...)
}
