package herd

import (
	"math"

	"example.org/soum/units"
)

// TapeRule is the printed rule by which girth and length tell a weight.
type TapeRule int

// The rules.
const (
	TapeCattle       TapeRule = iota + 1 // in, lb: G² L / 300
	TapeSmall                            // sheep, wool pressed down, and goats: G² L / 300
	TapeHorse                            // in, lb: G² L / 330
	TapeHorseMetric                      // cm, kg: G² L / 11,900
	TapeDonkey                           // donkey, mule, small horse, in, lb: G² L / 300 + 50
	TapePig                              // in, lb: G² L / 400
	TapePigPlusSeven                     // the same, and 7 lb more under 150 lb
	TapePigPlusSix                       // the same, and 6 lb more under 150 lb
	TapePigMetric                        // m, kg: 69.3 G² L
)

// TapeWeight returns an estimate of the live weight of an animal from its girth
// and length.
//
// Method: girth * girth * length times the factor of the rule, and for some rules
// a few pounds added
//
// Where:
//   - girth in in: round the chest right behind the forelegs; > 0
//   - length in in: cattle, horses, sheep and goats from the point of the shoulder to the point of the rump, pigs from between the ears to the root of the tail; > 0
//   - rule: whose rule
//
// Note: the rules are for the animals they name, grown or nearly so; print tells
// no other limits than the pig's 150 lb and gives foals rules of their own: see
// GirthWeight. For a pig under 150 lb print adds nothing, 7 lb or 6 lb: three
// rules; the last two jump at 150 lb. The metric rules agree with those in inches
// within 1 %. A dose of medicine by a guessed weight can be useless or deadly:
// people guess a horse's weight more than a fifth wrong most of the time
// (HORSE-GUESS), and a tape is an estimate too. Ask a vet, and use a scale where
// it matters.
//
// Source: PEACE-CORPS-TAPE cattle and donkey; ARKANSAS-HORSE; GAUTENG-TAPE horse
// in cm; VIOVET-TAPE sheep, goat, pig in m; PIG-TAPE pig and 7 lb; STEALTH-PIG
func TapeWeight(girth, length units.Length, rule TapeRule) (units.LiveWeight, error) {
	weight := float64(girth) * float64(girth) * float64(length)
	row := tapeRow(rule)
	weight = float64(weight*row.factor) + row.added
	if weight < row.below {
		weight += row.young
	}
	return units.Answer(&formulaTapeWeight, units.LiveWeight(weight), float64(girth), float64(length), float64(rule))
}

// GirthRule is the printed rule by which girth alone tells a weight.
type GirthRule int

// The rules.
const (
	GirthGoat      GirthRule = iota + 1 // dairy goats of the standard breeds, a chart
	GirthFoal                           // foals, m, kg: 90 G³
	GirthYoungFoal                      // foals of 1 to 6 weeks, in, lb: (G - 25.1) / 0.07
)

// GirthWeight returns an estimate of the live weight of a dairy goat or a foal
// from its girth alone.
//
// Method: for goats a chart of 10¾, 20 and 32 in, between them a power of the
// girth through the two neighbours, which is ours; beyond its ends the value of
// the end, beside a range error. For foals 90 kg for each cubic metre of girth, or
// for the first weeks a straight line.
//
// Where:
//   - girth in in: round the chest right behind the forelegs; > 0
//   - rule: whose rule
//
// Errors: a *units.DomainError for a young foal's girth of up to 25.1 in, for
// which the rule gives nothing
//
// Note: the goat chart claims 5 % for standard breeds; meat and dwarf goats are
// built otherwise. The print of the young foal's rule names no units; inches and
// pounds are the reading that gives a foal's weight. The cautions of TapeWeight
// hold.
//
// Source: GOAT-GIRTH; GAUTENG-TAPE foal; FOAL-TAPE young foal
func GirthWeight(girth units.Length, rule GirthRule) (units.LiveWeight, error) {
	arguments := [...]float64{float64(girth), float64(rule)}
	metres := float64(girth)
	switch rule {
	case GirthFoal:
		return units.Answer(&formulaGirthWeight, units.LiveWeight(90*metres*metres*metres), arguments[:]...)
	case GirthYoungFoal:
		inches := float64(girth / units.Inch)
		weight := units.LiveWeight((inches-25.1)/0.07) * units.LivePound
		if !(weight > 0) {
			above := units.Limits{Low: float64(25.1 * units.Inch), LowOpen: true, LowOf: -1, High: math.Inf(1), HighOf: -1}
			return units.AnswerWithin(&formulaGirthWeight, 0, above, weight, arguments[:]...)
		}
		return units.Answer(&formulaGirthWeight, weight, arguments[:]...)
	}
	weight := units.LiveWeight(goatAt(metres))
	low, high := goatChart[0].at, goatChart[len(goatChart)-1].at
	if metres < low || metres > high {
		return units.AnswerWithin(&formulaGirthWeight, 0, units.Between(low, high, "GOAT-GIRTH"), weight, arguments[:]...)
	}
	return units.Answer(&formulaGirthWeight, weight, arguments[:]...)
}

// goatAt reads the goat chart.
func goatAt(girth float64) float64 {
	last := len(goatChart) - 1
	if !(girth > goatChart[0].at) {
		return goatChart[0].value
	}
	for i := 1; i <= last; i++ {
		before, after := goatChart[i-1], goatChart[i]
		if girth < after.at {
			power := math.Log(after.value/before.value) / math.Log(after.at/before.at)
			return before.value * math.Exp(power*math.Log(girth/before.at))
		}
		if girth == after.at {
			return after.value
		}
	}
	return goatChart[last].value
}
