package grazing

import (
	"fmt"
	"math"
	"slices"

	"example.org/soum/units"
)

// FenceLine is where a fence stands.
type FenceLine int

// The places of a fence.
const (
	LineBoundary FenceLine = iota + 1 // round the land
	LineInterior                      // between paddocks
)

// WireRow is a row of the table of Wires.
type WireRow struct {
	// Stock is the animal in words, lower case with hyphens.
	Stock string `json:"stock"`
	// Line is where the fence stands.
	Line FenceLine `json:"line"`
	// Wires is the printed span of wires, one above the other.
	Wires units.Span[float64] `json:"wires"`
	// When says what kind of wire it is and what goes with it.
	When string `json:"when"`
	// Source is a key of SOURCES.md with the place.
	Source string `json:"source"`
	// Mark is how the figure was come by.
	Mark string `json:"mark"`
}

// WireRows gives the table of Wires, as a copy.
//
// Check: TestWireRows
//
// Source: ours: a collection, each figure with the source and mark on its row
func WireRows() []WireRow { return slices.Clone(wireRows) }

// Wires gives the wires of a fence that holds a kind of stock, at an end of the
// printed span.
//
// Print speaks of permanent high-tensile fence. One moved wire in front of quiet
// cattle that know it is common practice and stands in no table here. A fence that
// does not hold lets stock onto roads: local law on boundary fences decides.
//
// Where:
//   - stock: as in WireRows
//   - line: where the fence stands
//   - end: of the printed span
//
// Errors: a *units.ParseError that lists what there is a row for
//
// Source: ARS-SPURGE-FENCE, SHEEP101-FENCE, NRCS-382-SPEC, as the row says
func Wires(stock string, line FenceLine, end units.End) (float64, error) {
	var has []string
	for _, row := range wireRows {
		if row.Stock == stock && row.Line == line {
			return units.Answer(&formulaWires, row.Wires.At(end), 0, float64(line), float64(end))
		}
		has = append(has, row.Stock+" ("+row.Line.String()+")")
	}
	problem := fmt.Sprintf("no wires of it where the fence is %q", line)
	return math.NaN(), formulaWires.NoRow("stock", stock, problem, has, 0, float64(line), float64(end))
}

// FencePosts returns the posts of a straight fence, one at each end and none
// further apart than the spacing. A fence that closes on itself needs one less.
//
// Method: fence / spacing, rounded up, and one more
//
// Where:
//   - fence in ft: length of the fence; > 0
//   - spacing in ft: from post to post at the most; > 0
//
// Source: POULTRY-NET-SELLER a roll of 164 ft with posts every 7.5 ft; ARS-SPURGE-FENCE posts each 30 ft; ours: counted
func FencePosts(fence, spacing units.Length) (float64, error) {
	posts := math.Ceil(float64(fence)/float64(spacing)-almost) + 1
	return units.Answer(&formulaFencePosts, posts, float64(fence), float64(spacing))
}

// NettingRolls returns the rolls of netting that a fence takes, whole ones.
//
// Method: fence / roll, rounded up
//
// Where:
//   - fence in ft: length of the fence, all round; >= 0
//   - roll in ft: length of a roll; > 0
//
// Note: sellers' rolls differ; one is 164 ft long [POULTRY-NET-SELLER]. Animals die
// in netting: never for horned sheep, horned goats or young kids [DEFRA-SHEEP,
// DEFRA-GOAT], and look at it often. Lambs were caught where its charge was too
// weak [ARS-420809].
//
// Source: definition: lengths; POULTRY-NET-SELLER the roll
func NettingRolls(fence, roll units.Length) (float64, error) {
	return units.Answer(&formulaNettingRolls, math.Ceil(float64(fence)/float64(roll)-almost), float64(fence), float64(roll))
}

// NettingSquare returns the land inside a square of so many rolls of netting:
// twice the rolls are four times the land.
//
// Formula: pow(rolls * roll / 4, 2)
//
// Where:
//   - rolls: rolls in use; >= 0
//   - roll in ft: length of a roll; >= 0
//
// Source: definition: a square; POULTRY-NET-SELLER the roll
func NettingSquare(rolls float64, roll units.Length) (units.Area, error) {
	side := rolls * float64(roll) / 4
	return units.Answer(&formulaNettingSquare, units.Area(side*side), rolls, float64(roll))
}

// FencedStock is the stock behind a moved fence, as far as the choice of the fence
// goes.
type FencedStock int

// The stock behind a moved fence.
const (
	FencedQuietCattle FencedStock = iota + 1 // cattle that know one wire
	FencedSmall                              // sheep, goats or pigs, or cattle with them; nobody horned, no young kids
	FencedBirds                              // poultry, alone or with others; nobody horned, no young kids
	FencedHorned                             // anybody horned, or young kids
)

// MovedFence is a kind of fence that is moved with the stock.
type MovedFence int

// The moved fences.
const (
	MovedOneWire MovedFence = iota + 1 // a single wire
	MovedNetting                       // electric netting
	MovedEither                        // netting or several single wires: count both
	MovedWires                         // several single wires, on reels
)

// NettingOrWire tells which moved fence suits stock on land of a size.
//
// One wire for quiet cattle; several wires for anybody horned or young kids,
// whatever the size; netting for birds; for other small stock netting up to 3
// acres, either up to 10, several wires beyond.
//
// All but the rule on horns and kids is common practice without a source: on a few
// acres with mixed stock netting pays, a quiet cow keeps to one wire, and netting
// becomes too much to carry on larger land. The 3 and 10 acres are ours, round
// figures in the middle of what people do: count NettingRolls against WireLength at
// your own prices.
//
// Where:
//   - stock: the stock behind it
//   - area in ac: the land that it goes over; > 0
//
// Source: DEFRA-SHEEP, DEFRA-GOAT horned stock and young kids; ours: the rest, common practice
func NettingOrWire(stock FencedStock, area units.Area) (MovedFence, error) {
	if _, err := units.Answer(&formulaNettingOrWire, area, float64(stock), float64(area)); err != nil {
		return 0, err
	}
	switch {
	case stock == FencedQuietCattle:
		return MovedOneWire, nil
	case stock == FencedHorned:
		return MovedWires, nil
	case stock == FencedBirds || area <= nettingSmall:
		return MovedNetting, nil
	case area <= nettingLarge:
		return MovedEither, nil
	}
	return MovedWires, nil
}

// The sizes of land at which NettingOrWire turns; practice, ours.
const (
	nettingSmall = 3 * units.Acre
	nettingLarge = 10 * units.Acre
)
