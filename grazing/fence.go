package grazing

import (
	"math"

	"example.org/soum/units"
)

// FenceLength returns the fence round a rectangle of an area and a shape.
//
// Formula: 2 * (ratio + 1) * sqrt(area / ratio)
//
// Where:
//   - area in ac: land inside the fence; >= 0
//   - ratio: long side over short side, 1 for a square; > 0
//
// Note: a square takes the least fence, 2 by 1 takes 6.1 % more and 4 by 1
// takes 25 % more; slopes, soils and water come first all the same [PSU-PADDOCK-DESIGN].
// Fence for the land inside grows as the field shrinks: a square of 40 acres takes
// 132 ft an acre, one of 10 acres 264, an acre alone 835.
//
// Source: definition: a rectangle; LSP-FENCE prints the square of 40 acres
func FenceLength(area units.Area, ratio float64) (units.Length, error) {
	fence := units.Length(2 * (ratio + 1) * math.Sqrt(float64(area)/ratio))
	return units.Answer(&formulaFenceLength, fence, float64(area), ratio)
}

// SquareSide returns the side of a square of an area.
//
// Formula: sqrt(area)
//
// Where:
//   - area in ac: land in the square; >= 0
//
// Source: definition: a square; LSP-FENCE prints that of 40 acres
func SquareSide(area units.Area) (units.Length, error) {
	side := units.Length(math.Sqrt(float64(area)))
	return units.Answer(&formulaSquareSide, side, float64(area))
}

// LaneSides returns the fence that stands round and between equal lanes lying
// side by side: neighbours share a side, and each lane has its two ends.
//
// Formula: (lanes + 1) * length + 2 * lanes * width
//
// Where:
//   - length in ft: of a lane; >= 0
//   - width in ft: of a lane; >= 0
//   - lanes: lanes side by side; >= 1
//
// Source: ours: counted on a sketch, one side more than there are lanes and two ends a lane; LSP-FENCE prints the one-lane case of a square
func LaneSides(length, width units.Length, lanes float64) (units.Length, error) {
	sides := units.Length((lanes+1)*float64(length) + 2*lanes*float64(width))
	return units.Answer(&formulaLaneSides, sides, float64(length), float64(width), lanes)
}

// CrossWires returns the moved fence across a lane: one wire more than the
// strips in use, each as long as the lane is wide.
//
// Formula: (strips + 1) * width
//
// Where:
//   - width in ft: of the lane; >= 0
//   - strips: strips next to each other that hold animals at one time; >= 1
//
// Note: the front wire and the back wire of one strip, and a wire for each
// strip more; the set ready for tomorrow's front is one more again. Mesh is
// another thing than single wires: animals die in it, and the English welfare
// codes rule electric mesh out for horned sheep, horned goats and young kids
// [DEFRA-SHEEP, DEFRA-GOAT]. Codes differ by country: follow the local one, and
// ask a vet or an adviser.
//
// Source: ours: counted on a sketch, front and back of every strip, shared between neighbours
func CrossWires(width units.Length, strips float64) (units.Length, error) {
	wires := units.Length((strips + 1) * float64(width))
	return units.Answer(&formulaCrossWires, wires, float64(width), strips)
}

// WireLength returns the wire in a fence of several strands.
//
// Formula: fence * wires
//
// Where:
//   - fence in mi: length of the fence on the ground; >= 0
//   - wires: strands, one above the other; >= 0
//
// Note: add for knots, corners and ends. An electric fence can hurt people and
// animals: the international standard for energizers (IEC 60335-2-76, read in a
// maker's reprint) forbids barbed or razor wire in it, wants one energizer a
// fence and 2.5 m between the fences of two, and signs along public paths
// [IEC-FENCE]. Local rules decide.
//
// Source: UMAINE-FENCE-DESIGN four strands round one mile
func WireLength(fence units.Length, wires float64) (units.Length, error) {
	length := units.Length(float64(fence) * wires)
	return units.Answer(&formulaWireLength, length, float64(fence), wires)
}
