package grazing

import "example.org/soum/units"

// ReplacementHead returns the animals of one kind that come in place of a share of
// another.
//
// Formula: head * share * ratio
//
// Where:
//   - head: animals of the kind that gives way; >= 0
//   - share in %: share of them taken off; 0 to 100
//   - ratio: animals that come for each one taken off; >= 0
//
// Note: to replace is not to add. Trials took half the cows off and put five sheep
// on for each; the rule of one ewe more for each cow takes none off (herd.AddOn).
// The first is a matter of how much is eaten, the second of what is eaten.
//
// Source: SHEEPUSA-2013 100 cows become 50 cows and 250 sheep
func ReplacementHead(head float64, share units.Fraction, ratio float64) (float64, error) {
	return units.Answer(&formulaReplacementHead, head*float64(share)*ratio, head, float64(share), ratio)
}

// RelativeLoad returns the load of two kinds grazed together as a share of what
// each alone would be stocked at: 1 is as full as either alone.
//
// Formula: one / oneAlone + other / otherAlone
//
// Where:
//   - one in head/ha: of the first kind, together; >= 0
//   - oneAlone in head/ha: of the first kind where it grazes alone; > 0
//   - other in head/ha: of the second kind, together; >= 0
//   - otherAlone in head/ha: of the second kind where it grazes alone; > 0
//
// Note: the trial behind the check, 2.11 steers and 8.1 ewes against 4.44 or 15.2
// alone, gave 714 kg of live weight a hectare together, 663 and 690 alone, and
// lambs and steers that grew faster. Others found less: lambs gained on grass of 8
// to 10 cm and not on 4 to 5, steers never [WRIGHT-2006]; on annual pasture
// separate stock needed 0.96 to 1.32 times the land, and little was saved in a
// drought [HAMILTON-1976]; an adviser gives 10 to 25 % more output [MORRICAL-DTN].
// No gain is built in.
//
// Source: NOLAN-CONNOLLY-1989 mean stocking, the load our arithmetic
func RelativeLoad(one, oneAlone, other, otherAlone units.HeadRate) (float64, error) {
	load := float64(one)/float64(oneAlone) + float64(other)/float64(otherAlone)
	return units.Answer(&formulaRelativeLoad, load, float64(one), float64(oneAlone), float64(other), float64(otherAlone))
}
