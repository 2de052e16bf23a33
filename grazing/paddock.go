package grazing

import (
	"math"

	"example.org/soum/units"
)

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

// PaddocksToBuild returns the number of paddocks that keeps the rest: Paddocks
// rounded up.
//
// Method: rest / stay + groups, rounded up to a whole number; what is above a whole
// number by less than a thousand-millionth counts as that number
//
// Where:
//   - rest in days: rest between the last bite and the next, the longest of the season; >= 0
//   - stay in days: how long a group stands in a paddock; > 0
//   - groups: groups that graze one after the other, 1 for a single herd; >= 1
//
// Note: the two printed numbers that fall short of the rest they promise (7 for 21
// days and stays of 3, 15 for 31 and 2) are told with Paddocks. What more paddocks
// bring falls off as their number grows [WVU-PADDOCKS]; a trial saw no more even
// grazing with 32 or 64 than with 16, and less evenness only with 2
// [BARNES-2008]; 120 paddocks trampled twice as much as 4, with no gain for plants
// and less for the steers [ANDRADE-2022].
//
// Source: PSU-FOUR-STEPS step 3; ours: rounded up, where the source takes the nearest
func PaddocksToBuild(rest, stay units.Days, groups float64) (float64, error) {
	paddocks := math.Ceil(float64(rest)/float64(stay) + groups - almost)
	return units.Answer(&formulaPaddocksToBuild, paddocks, float64(rest), float64(stay), groups)
}

// almost is how far above a whole number a sum counts as that number: the dust of
// floating point, far below anything that can be measured on a farm.
const almost = 1e-9

// StayOfRest returns how long a group stands in each paddock where their number
// and the rest are given. It is Paddocks solved for the stay.
//
// Formula: rest / (paddocks - groups)
//
// Where:
//   - rest in days: rest between the last bite and the next; >= 0
//   - paddocks: paddocks in the round; > groups
//   - groups: groups that graze one after the other, 1 for a single herd; >= 1
//
// Source: PSU-FOUR-STEPS step 3, solved for the stay
func StayOfRest(rest units.Days, paddocks, groups float64) (units.Days, error) {
	stay := units.Days(float64(rest) / (paddocks - groups))
	return units.Answer(&formulaStayOfRest, stay, float64(rest), paddocks, groups)
}

// RestingShare returns the share of the land that rests at any time in a round.
//
// Formula: 1 - groups / paddocks
//
// Where:
//   - paddocks: equal paddocks in the round; >= 1
//   - groups: groups that graze one after the other, 1 for a single herd; 0 to paddocks
//
// Source: definition: a group stands in one paddock, the others rest
func RestingShare(paddocks, groups float64) (units.Fraction, error) {
	return units.Answer(&formulaRestingShare, units.Fraction(1-groups/paddocks), paddocks, groups)
}
