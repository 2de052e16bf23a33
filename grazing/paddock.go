package grazing

import "example.org/soum/units"

// Paddocks returns the number of paddocks that lets each one rest, exact and
// not rounded.
//
// Formula: rest / stay + groups
//
// Where:
//   - rest in days: rest between the last bite and the next; >= 0
//   - stay in days: how long a group stands in a paddock; > 0
//   - groups: groups that graze one after the other, 1 for a single herd; >= 1
//
// Note: round up to keep the rest. Sources round otherwise: Penn State takes
// the nearest whole number (12.67 becomes 13), Teagasc prints 7 for 21 days of
// rest and stays of 3 (exactly 8) [TEAGASC-PADDOCKS], NCAT prints 15 for 31 days
// and stays of 2 (exactly 16.5) [NCAT-PADDOCKS]. With too few paddocks the rest
// is shorter than was wanted; Rest tells by how much. Plan on the longest rest
// of the season, which most often is late summer [WVU-PADDOCKS]. That a
// following group occupies one more paddock is our reckoning.
//
// Source: PSU-FOUR-STEPS step 3; FAS-ROTATION; ours: one paddock more for each following group
func Paddocks(rest, stay units.Days, groups float64) (float64, error) {
	paddocks := float64(rest)/float64(stay) + groups
	return units.Answer(&formulaPaddocks, paddocks, float64(rest), float64(stay), groups)
}

// Rest returns the rest that a number of paddocks gives each of them. It is
// Paddocks solved for the rest.
//
// Formula: stay * (paddocks - groups)
//
// Where:
//   - stay in days: how long a group stands in a paddock; >= 0
//   - paddocks: paddocks in the round; >= 1
//   - groups: groups that graze one after the other, 1 for a single herd; 1 to paddocks
//
// Source: PSU-FOUR-STEPS step 3, solved for the rest
func Rest(stay units.Days, paddocks, groups float64) (units.Days, error) {
	rest := units.Days(float64(stay) * (paddocks - groups))
	return units.Answer(&formulaRest, rest, float64(stay), paddocks, groups)
}

// Cycle returns the days until a group stands in the same paddock again.
//
// Formula: stay * paddocks
//
// Where:
//   - stay in days: how long a group stands in a paddock; >= 0
//   - paddocks: paddocks in the round; >= 1
//
// Source: definition: the stays of one round, one after the other
func Cycle(stay units.Days, paddocks float64) (units.Days, error) {
	cycle := units.Days(float64(stay) * paddocks)
	return units.Answer(&formulaCycle, cycle, float64(stay), paddocks)
}

// PaddockArea returns the size of a paddock where land is cut into equal ones.
//
// Formula: area / paddocks
//
// Where:
//   - area in ac: the land in the round; >= 0
//   - paddocks: paddocks it is cut into; >= 1
//
// Source: PSU-FOUR-STEPS step 4; SRUC-SHEEPNET group and paddock areas
func PaddockArea(area units.Area, paddocks float64) (units.Area, error) {
	paddock := units.Area(float64(area) / paddocks)
	return units.Answer(&formulaPaddockArea, paddock, float64(area), paddocks)
}

// LandForPaddocks returns the land that so many equal paddocks take.
//
// Formula: paddock * paddocks
//
// Where:
//   - paddock in ha: size of one of them; >= 0
//   - paddocks: how many there are; >= 0
//
// Source: JSTAGE-ONE-DAY 23 one-day paddocks
func LandForPaddocks(paddock units.Area, paddocks float64) (units.Area, error) {
	area := units.Area(float64(paddock) * paddocks)
	return units.Answer(&formulaLandForPaddocks, area, float64(paddock), paddocks)
}

// DailyArea returns the land to offer each day so that the whole lasts one
// round.
//
// Formula: area / rotation
//
// Where:
//   - area in ha: the land in the round; >= 0
//   - rotation in days: days until the herd is back where it began; > 0
//
// Source: FARMERS-JOURNAL-ROTATION
func DailyArea(area units.Area, rotation units.Days) (units.Area, error) {
	daily := units.Area(float64(area) / float64(rotation))
	return units.Answer(&formulaDailyArea, daily, float64(area), float64(rotation))
}
