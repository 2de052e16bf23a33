package forage

import (
	"slices"

	"example.org/soum/units"
)

// StandLimits are the limits of the classes of risk on a stand.
type StandLimits struct {
	// Legume is the share of legume above which BloatRisk is raised.
	Legume units.Fraction `json:"legume"`
	// Potassium is the TetanyRatio above which TetanyRisk is raised.
	Potassium float64 `json:"potassium"`
	// Magnesium is the share of the dry matter at or under which TetanyRisk is raised.
	Magnesium units.Fraction `json:"magnesium"`
}

// HazardLimits gives the limits that BloatRisk and TetanyRisk go by, so that a
// figure can be shown beside its limit. Those of nitrate are in NitrateSteps, those
// of prussic acid in PrussicHeights and PrussicWaits.
//
// Check: TestHazardLimits
//
// Source: UKY-BLOAT legume; RAHMAN-2022 and MANITOBA-TETANY potassium; OHIO-TETANY
// magnesium
func HazardLimits() StandLimits { return hazardLimits }

// Bloat is a class of the risk of bloat on a stand.
type Bloat int

// The classes of bloat risk. BloatLow does not mean none.
const (
	BloatLow    Bloat = iota + 1 // not more than half of the stand is legume
	BloatRaised                  // more than half of the stand is legume
)

// BloatRisk tells whether the share of legume in a stand raises the risk of
// bloat for cattle, sheep and goats on it.
//
// Bloat kills within hours. A low class is not a safe stand: hungry stock, young
// or wet legume and a sudden change of feed bring bloat on less, and the printed
// threshold is one body's rule. Fill stock with hay before a first turn-in onto
// legume, look at them often, and ask a vet about prevention beforehand; a
// swollen left flank is a case for the vet at once. The kind of legume counts as
// well: trefoil and sainfoin hold tannins and are said not to bloat, alfalfa and
// clovers do: see BloatOf. For one or two days after a hard frost legumes bloat
// more (BEEF-FROST).
//
// Table: raised where more than 50 % of the stand is legume (the source does not
// say whether by mass or by cover), else low
//
// Where:
//   - legume in %: share of the stand; 0 to 100
//
// Note: what brings bloat on and what to do about it, beyond the threshold and
// the kinds of legume, is common practice from memory, without a source read.
//
// Source: UKY-BLOAT for the threshold; FORAGEBEEF-BLOAT for the kinds of legume;
// BEEF-FROST for the frost
func BloatRisk(legume units.Fraction) (Bloat, error) {
	if _, err := units.Answer(&formulaBloatRisk, legume, float64(legume)); err != nil {
		return 0, err
	}
	if legume > hazardLimits.Legume {
		return BloatRaised, nil
	}
	return BloatLow, nil
}

// BloatTendency is how ready a plant is to bloat stock.
type BloatTendency int

// The tendencies. TendencyNone is what the source says; a stand is never without
// other plants.
const (
	TendencyNone     BloatTendency = iota + 1 // said not to bloat
	TendencyPossible                          // can bloat, not graded
	TendencyModerate                          // moderate
	TendencyHigh                              // high
)

// BloatPlant is a row of the table of plants that bloat and that do not.
type BloatPlant struct {
	// Plant is the plant, lower case with hyphens.
	Plant string `json:"plant"`
	// Tendency is how ready it is to bloat stock.
	Tendency BloatTendency `json:"tendency"`
	units.Printed
}

// BloatPlants gives the table of BloatOf, as a copy.
//
// Check: TestBloatPlants
//
// Source: ALBERTA-BLOAT
func BloatPlants() []BloatPlant { return slices.Clone(bloatPlants) }

// BloatOf gives how ready a plant is to bloat cattle, sheep and goats.
//
// The risk is highest before bud and falls as a plant grows old; it falls much
// from 15 to 20 % of bloom on (ALBERTA-BLOAT). Young green cereals, brassicas and
// pulses can bloat as well as legumes of pasture. What BloatRisk says of hungry
// stock, hay beforehand and the vet holds.
//
// Where:
//   - plant: as in BloatPlants
//
// Errors: a *units.ParseError that lists the plants
//
// Source: ALBERTA-BLOAT; FORAGEBEEF-BLOAT gives the same of trefoil, sainfoin and
// cicer milkvetch
func BloatOf(plant string) (BloatTendency, error) {
	row := rowOf(bloatPlants, func(r *BloatPlant) bool { return r.Plant == plant })
	if row == nil {
		return 0, formulaBloatOf.NoRow("plant", plant, "no such plant", namesOf(bloatPlants, func(r *BloatPlant) string { return r.Plant }), 0)
	}
	return row.Tendency, nil
}

// TetanyRatio returns potassium over calcium and magnesium together, in
// equivalents, of a feed.
//
// Empirical: potassium * 255.74 / (calcium*499.00 + magnesium*822.64)
//
// Where:
//   - potassium in %: of the dry matter; 0 to 100
//   - calcium in %: of the dry matter; > 0 and <= 100
//   - magnesium in %: of the dry matter; > 0 and <= 100
//
// Note: what the ratio means for stock is told by TetanyRisk.
//
// Source: MANITOBA-TETANY for the equivalents in a kilogram of 1 %; RAHMAN-2022
// for the ratio
func TetanyRatio(potassium, calcium, magnesium units.Fraction) (float64, error) {
	return units.Answer(&formulaTetanyRatio, tetanyRatio(potassium, calcium, magnesium), float64(potassium), float64(calcium), float64(magnesium))
}

func tetanyRatio(potassium, calcium, magnesium units.Fraction) float64 {
	return float64(potassium) * potassiumEquivalents / (float64(float64(calcium)*calciumEquivalents) + float64(float64(magnesium)*magnesiumEquivalents))
}

// Tetany is a class of the risk of grass tetany.
type Tetany int

// The classes of the risk of grass tetany. TetanyLow does not mean none.
const (
	TetanyLow    Tetany = iota + 1 // neither limit is passed
	TetanyRaised                   // the ratio or the magnesium is on the wrong side
)

// TetanyRisk tells whether a feed raises the risk of grass tetany.
//
// Grass tetany kills quickly, mostly older cows in early milk on lush spring
// grass. A low class is no promise: of 4,658 animals on feed under the ratio of
// 2.2 some 0.77 % had it, of 1,908 above it 6.66 %. Where the class is raised, ask
// a vet or an adviser before turn-in about magnesium in the mineral, which has to
// be eaten every day to help; an animal that staggers, twitches or lies kicking is
// a case for the vet at once. The figures of a stand come from a laboratory.
//
// Table: raised where TetanyRatio is above 2.2, or magnesium not above 0.2 % of
// the dry matter
//
// Where:
//   - potassium in %: of the dry matter; 0 to 100
//   - calcium in %: of the dry matter; > 0 and <= 100
//   - magnesium in %: of the dry matter; > 0 and <= 100
//
// Note: which stock and which season suffer, and what an animal looks like, is
// common practice from memory, without a source read.
//
// Source: RAHMAN-2022 and MANITOBA-TETANY the ratio; OHIO-TETANY magnesium
func TetanyRisk(potassium, calcium, magnesium units.Fraction) (Tetany, error) {
	ratio, err := units.Answer(&formulaTetanyRisk, tetanyRatio(potassium, calcium, magnesium), float64(potassium), float64(calcium), float64(magnesium))
	switch {
	case err != nil:
		return 0, err
	case ratio > hazardLimits.Potassium || magnesium <= hazardLimits.Magnesium:
		return TetanyRaised, nil
	}
	return TetanyLow, nil
}

// EndophyteLoss returns what steers on tall fescue gain less in a day for the
// share of its plants that carry the toxic fungus.
//
// Formula: 0.045 * infected / 0.1
//
// Where:
//   - infected in %: plants that carry the fungus; 0 to 100
//
// Note: a straight line through many trials; in eleven others gains were 30 to
// 100 % lower, and clover at 25 to 30 % of the stand changes the slope
// (OSU-ENDOPHYTE). In winter the same fungus can cost feet, ears and tails, and
// pregnant mares must be kept off: ask a vet. A laboratory counts infected
// tillers.
//
// Source: OSU-ENDOPHYTE 45 g a day for each 10 %; the harm in winter and to mares
// is from memory
func EndophyteLoss(infected units.Fraction) (units.LiveGain, error) {
	return units.Answer(&formulaEndophyteLoss, units.LiveGain(endophyteLoss*float64(infected)/0.1), float64(infected))
}
