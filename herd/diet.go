package herd

import (
	"math"
	"slices"

	"example.org/soum/units"
)

// Plants is a class of plants in a diet.
type Plants int

// The classes of plants.
const (
	PlantsGrass  Plants = iota + 1 // grasses
	PlantsForbs                    // legumes and other herbs
	PlantsBrowse                   // leaves and twigs of shrubs and trees
)

// DietShare returns the share of a class of plants in the diet of an animal that
// is free to choose.
//
// Table: the printed spans of cattle, sheep, goats and horses
//
// Where:
//   - kind: cattle, sheep, goats or horses
//   - plants: the class
//   - place in %: where in the printed span, 0 its low end and 100 its high; 0 to 100
//
// Errors: a *units.ParseError for other kinds, since there is no printed diet
//
// Note: the spans are of each class by itself: those of goats add up to 60 to
// 110 %, so all at the low end are no diet. What stands there decides: goats in a
// desert ate 45 to 62 % shrubs (MELLADO-2005), and Texas has them eat about as much
// grass as browse (AGRILIFE-6037).
//
// Source: UGA-DIETS
func DietShare(kind Kind, plants Plants, place units.Fraction) (units.Fraction, error) {
	arguments := [...]float64{float64(kind), float64(plants), float64(place)}
	if kind > Horses {
		return units.NoFigure[units.Fraction](&formulaDietShare, 0, "no diet of this kind is printed", namesKind[Cattle:Horses+1], arguments[:]...)
	}
	var span units.Span[units.Fraction]
	if kind >= Cattle && plants >= PlantsGrass && plants <= PlantsBrowse {
		span = dietShares[kind-1][plants-1]
	}
	return units.Answer(&formulaDietShare, span.Low+(span.High-span.Low)*place, arguments[:]...)
}

// OverlapRow is a printed overlap of two diets.
type OverlapRow struct {
	// Name is the pair with its season and place, lower case with hyphens.
	Name string `json:"name"`
	// Share is the share of the diets in common.
	Share units.Span[units.Fraction] `json:"share"`
	units.Printed
}

// OverlapRows gives the table of PrintedOverlap, as a copy.
//
// Check: TestOverlapRows
//
// Source: ours: a collection, each figure with the source and mark on its row
func OverlapRows() []OverlapRow { return slices.Clone(overlapRows) }

// PrintedOverlap gives the share that two kinds of stock or game have in common in
// their diets, at an end of the printed span. No figure of cattle with goats was
// found. Overlap rises where the good feed is gone.
//
// Where:
//   - name: as in OverlapRows
//   - end: of the printed span
//
// Errors: a *units.ParseError that lists the rows, where none has the name
//
// Source: MYSTERUD-2000, MACCRACKEN-1981, KRYSL-1984, MCINNIS-1987, HUBBARD-1976,
// HANSEN-1975, EKBLAD-1993, as the row says
func PrintedOverlap(name string, end units.End) (units.Fraction, error) {
	for i := range overlapRows {
		if row := &overlapRows[i]; row.Name == name {
			return units.Answer(&formulaPrintedOverlap, row.Share.At(end), 0, float64(end))
		}
	}
	names := namesOf(overlapRows, func(row *OverlapRow) string { return row.Name })
	return units.Fraction(math.NaN()), formulaPrintedOverlap.NoRow("name", name, "no printed overlap of this name", names, 0, float64(end))
}

var dietGuard = units.Formula{
	Name: "herd.DietOverlap", Source: "definition",
	Arguments: []units.Argument{
		{Name: "one", Unit: "%", Factor: float64(units.Percent), Domain: units.Limits{Low: 0, High: 1, LowOf: -1, HighOf: -1}},
		{Name: "other", Unit: "%", Factor: float64(units.Percent), Domain: units.Limits{Low: 0, High: 1, LowOf: -1, HighOf: -1}},
	},
}

// DietOverlap gives the share that two diets have in common: of each class of
// plants the smaller of the two shares, added up. Both lists are in the same
// order.
//
// Errors: a domain error where a share is below 0 or above 1, where a diet adds up
// to more than 1, or where the lists are of different lengths
//
// Source: definition: the sum of the smaller shares; CASTRO-2016 the diets of its
// check
func DietOverlap(one, other []units.Fraction) (units.Fraction, error) {
	lists := units.Formula{Name: "herd.DietOverlap", Arguments: []units.Argument{
		{Name: "len(other)", Factor: 1, Domain: units.Limits{Low: float64(len(one)), High: float64(len(one)), LowOf: -1, HighOf: -1}},
	}}
	if got, err := units.Answer(&lists, units.Fraction(0), float64(len(other))); err != nil {
		return got, err
	}
	var common, sumOne, sumOther units.Fraction
	for i := range one {
		if got, err := units.Answer(&dietGuard, one[i], float64(one[i]), float64(other[i])); err != nil {
			return got, err
		}
		common += min(one[i], other[i])
		sumOne += one[i]
		sumOther += other[i]
	}
	return units.Answer(&dietGuard, common, float64(whole(sumOne)), float64(whole(sumOther)))
}

// roundingOfShares is what the sum of rounded floats may lie above one.
const roundingOfShares = 1e-9

// whole takes a sum that is one but for its rounding as one.
func whole(sum units.Fraction) units.Fraction {
	if sum > units.Whole && sum < units.Whole+roundingOfShares {
		return units.Whole
	}
	return sum
}

// CoGrazing returns how many head of a kind go onto land together with another
// kind, from what the land would carry of the one alone.
//
// Formula: alone * (1 - overlap) + alone * overlap * 0.5
//
// Where:
//   - alone: head of this kind that the land carries alone; >= 0
//   - overlap in %: share of the two diets in common; 0 to 100
//
// Note: each kind is reckoned so, then the two are added: without overlap the land
// carries both in full, with full overlap half of each. It is the authors' starting
// point, not a measured law: watch the plants. Trials differ: gain from mixing was
// found in Ireland, New South Wales and Scotland, none per hectare in Wales at a
// fixed height of sward (WRIGHT-2006).
//
// Source: ANIMUT-2008
func CoGrazing(alone float64, overlap units.Fraction) (float64, error) {
	head := alone*float64(1-overlap) + alone*float64(overlap)*sharedHalf
	return units.Answer(&formulaCoGrazing, head, alone, float64(overlap))
}

// sharedHalf is the part that each kind takes of what both eat.
const sharedHalf = 0.5

// AddOnSource is whose figure of stock added to cows is used.
type AddOnSource int

// The sources of stock added to cows.
const (
	AddGoatsGeorgia   AddOnSource = iota + 1 // goats on excellent grassy pasture
	AddGoatsArkansas                         // goats on established pasture, cows unchanged
	AddEitherMissouri                        // a sheep or a goat
	AddSheepArkansas                         // sheep, cows unchanged
	AddEweSouthDakota                        // a ewe
)

// AddOn returns how many sheep or goats may be added to cows without taking cows
// off.
//
// Table: head for each cow, times the cows
//
// Where:
//   - by: whose figure, and of which kind
//   - cows: number of cows; >= 0
//   - place in %: where in the printed span, 0 its low end and 100 its high; 0 to 100
//
// Note: the sources differ: one ewe (South Dakota) or two sheep (Arkansas), one,
// two or three goats. More goats where brush and weeds stand; uniform grass gains
// least (NEVADA-MIXED). Goats of horned breeds and netting do not go together, and
// copper in cattle minerals poisons sheep.
//
// Source: UGA-DIETS Georgia; ARKANSAS-BOLES goats, Arkansas; LINCOLN-MIXED
// Missouri; ARKANSAS-FERNANDEZ sheep, Arkansas; SDSU-OLLILA South Dakota
func AddOn(by AddOnSource, cows float64, place units.Fraction) (float64, error) {
	var span units.Span[float64]
	if by >= AddGoatsGeorgia && int(by) <= len(addOns) {
		span = addOns[by-1]
	}
	head := cows * (span.Low + (span.High-span.Low)*float64(place))
	return units.Answer(&formulaAddOn, head, float64(by), cows, float64(place))
}
