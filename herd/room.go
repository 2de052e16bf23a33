package herd

import (
	"slices"

	"example.org/soum/units"
)

// Room is a row of the table of outdoor room: how many head of a class print
// puts on an area of pasture. It is room to walk and rest, not feed: what the
// grass carries is another sum.
type Room struct {
	// Class is the stock in words, lower case with hyphens.
	Class string `json:"class"`
	// Rate is the printed span of head on an area.
	Rate units.Span[units.HeadRate] `json:"rate"`
	// When says what the figure holds for.
	When string `json:"when"`
	units.Printed
}

// Rooms gives the table of outdoor room, as a copy.
//
// Note: sources differ. Eight sows to the acre for a season [UMN-SOW] are about
// twice the newer 10 to 15 a hectare [SOW-GROUND-COVER]; hens run from 500 an
// acre to 2,000 a hectare [HENS-500, EGG-ORGANIC]. A rate that was tested is no
// advice. Bare ground loses soil and breeds parasites: where cover falls, take
// stock off, and keep to the local rules on outdoor stock.
//
// Check: TestRoomsAgainstPrint
//
// Source: ours: a collection, each figure with the source and mark on its row
func Rooms() []Room { return slices.Clone(rooms) }

// HeadPerArea returns how many animals an area holds by the room of each.
//
// Formula: 1 / room
//
// Where:
//   - room in ft2: ground for one animal; > 0
//
// Source: HENS-500 87.12 ft² each; definition: its inverse
func HeadPerArea(room units.Area) (units.HeadRate, error) {
	return units.Answer(&formulaHeadPerArea, units.HeadRate(1/float64(room)), float64(room))
}
