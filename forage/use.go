package forage

import "example.org/soum/units"

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
