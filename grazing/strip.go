package grazing

import (
	"math"

	"example.org/soum/units"
)

// StripLength returns how far to move the front along a lane to open an area.
//
// Formula: area / width
//
// Where:
//   - area in ac: the strip wanted, as of StayArea; >= 0
//   - width in ft: width of the lane, the length of the cross wire; > 0
//
// Note: put the next cross wire up before the old one comes down
// [KENTUCKY-STRIP], and move animals that know the fence.
//
// Source: definition: a rectangle; UCONN-STEPS prints one
func StripLength(area units.Area, width units.Length) (units.Length, error) {
	length := units.Length(float64(area) / float64(width))
	return units.Answer(&formulaStripLength, length, float64(area), float64(width))
}

// StripArea returns the land in a strip across a lane, or in any rectangle.
//
// Formula: length * width
//
// Where:
//   - length in ft: along the lane; >= 0
//   - width in ft: across it; >= 0
//
// Source: definition: a rectangle; UCONN-STEPS prints one
func StripArea(length, width units.Length) (units.Area, error) {
	area := units.Area(float64(length) * float64(width))
	return units.Answer(&formulaStripArea, area, float64(length), float64(width))
}

// StripsPerLane returns the strips that a lane holds, exact and not rounded: what
// is over after the last whole one is short feed for a move.
//
// Formula: lane / strip
//
// Where:
//   - lane in ft: length of the lane; >= 0
//   - strip in ft: length of a strip, as of StripLength; > 0
//
// Source: definition: a length parted into equal pieces
func StripsPerLane(lane, strip units.Length) (float64, error) {
	return units.Answer(&formulaStripsPerLane, float64(lane)/float64(strip), float64(lane), float64(strip))
}

// PartOfDayDemand returns what a herd takes from a strip in a part of the day.
//
// Formula: demand * share * part
//
// Where:
//   - demand in lb/day: what the herd eats in a day, from everything; >= 0
//   - share in %: share of it that the pasture is to give; 0 to 100
//   - part in %: part of the day's grazing done on the strip; 0 to 100
//
// Note: the part of the grazing is not the part of the clock, since stock graze
// most after dawn and before dusk; half for twelve hours is common practice and
// close. In a farm document the same is a class row of your own whose share from
// pasture is share × part; what is fed in the other hours is then outside the plan. The
// strip itself is StayArea with this demand for one day. A printed case
// (42 smaller cows, 70 % of their feed, 12 hours, 2,000 lb/ac, under a third of an
// acre) agrees with its neighbour's 41.6 lb a cow: 0.31 acre.
//
// Source: NODPA-KARREMAN part-day strips
func PartOfDayDemand(demand units.Demand, share, part units.Fraction) (units.Demand, error) {
	return units.Answer(&formulaPartOfDayDemand, units.Demand(float64(demand)*float64(share)*float64(part)), float64(demand), float64(share), float64(part))
}

// StripOpen returns how long the first strip of a run lies open to the animals
// when no back wire follows them.
//
// Formula: stay * strips
//
// Where:
//   - stay in days: how long each strip feeds them; >= 0
//   - strips: strips given before the ground behind is shut; >= 1
//
// Note: with a back wire every strip is open for one stay. Without one the first
// is bitten again as it grows: see RegrowthBitten. No back wire is needed while
// nothing grows, as on stockpiled grass in winter [KENTUCKY-STRIP].
//
// Source: definition: one stay for each strip given
func StripOpen(stay units.Days, strips float64) (units.Days, error) {
	return units.Answer(&formulaStripOpen, units.Days(float64(stay)*strips), float64(stay), strips)
}

// RegrowthBitten returns for how many days new growth lies open to be bitten
// before the animals leave or a back wire shuts them out.
//
// Empirical: max(0, open - (5 - place / 100))
//
// Where:
//   - open in days: how long the ground lies open, as of StripOpen; >= 0
//   - place in %: where in the printed span, 0 for regrowth in 5 days and 100 for 4, the stricter; 0 to 100
//   - result in days: of regrowth that can be bitten
//
// Note: for improved pasture that grows. Grass bitten again so soon lives off its
// reserves and thins. Nothing is bitten again where nothing grows.
//
// Source: PROG-LANE
func RegrowthBitten(open units.Days, place units.Fraction) (units.Days, error) {
	bitten := units.Days(math.Max(0, float64(open)-(5-float64(place))))
	return units.Answer(&formulaRegrowthBitten, bitten, float64(open), float64(place))
}
