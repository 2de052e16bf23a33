package grazing

import (
	"fmt"
	"math"
	"slices"

	"example.org/soum/units"
)

// SpaceRule is what a figure of room for each animal is meant for.
type SpaceRule int

// The rules of room.
const (
	SpaceNitrogen SpaceRule = iota + 1 // pasture, by the nitrogen of 170 kg a hectare and year
	SpaceRange                         // pasture that rules ask for each animal
	SpaceOpen                          // the part of a rotated range that is open at any time
	SpaceUsed                          // pasture that keepers use, for feed and cover
	SpaceYard                          // an outdoor yard, no pasture
	SpaceLot                           // a lot for mud, frost, drought and rest
)

// SpaceRow is a row of the table of Space.
type SpaceRow struct {
	// Stock is the animal in words, lower case with hyphens.
	Stock string `json:"stock"`
	// Rule is what the figure is meant for.
	Rule SpaceRule `json:"rule"`
	// By is a word for the source, since several have a figure.
	By string `json:"by"`
	// Head is the number of animals of the printed figure.
	Head units.Span[float64] `json:"head"`
	// Land is the land of the printed figure.
	Land units.Span[units.Area] `json:"land"`
	// When says what it holds for.
	When string `json:"when"`
	// Source is a key of SOURCES.md with the place.
	Source string `json:"source"`
	// Mark is how the figure was come by.
	Mark string `json:"mark"`
}

// at gives the land for each animal at an end: the least land is that of the most
// animals.
func (r *SpaceRow) at(end units.End) units.Area {
	low, high := r.Land.Low/units.Area(r.Head.High), r.Land.High/units.Area(r.Head.Low)
	return units.Span[units.Area]{Low: low, High: high}.At(end)
}

// SpaceRows gives the table of Space, as a copy.
//
// Check: TestSpaceRows
//
// Source: ours: a collection, each figure with the source and mark on its row
func SpaceRows() []SpaceRow { return slices.Clone(spaceRows) }

// Space gives the land for so many animals by a rule and its source, at an end of
// the printed span: low is the least land. The figures that herd.Rooms holds (pens
// moved daily, pigs, hens running free, alpacas, horses by sod) are not repeated.
//
// Room is not feed. 270 geese an acre is what the organic rule allows, 20 to 40 what
// grass feeds. Geese want short grass, under 4 in [CELTIC-GEESE], bluegrass,
// orchardgrass, timothy, brome or white clover, not alfalfa or sweet clover
// [MISSOURI-GOSLING]. Hens: 50 to the acre by an old rule of manure, 93 by the
// nitrogen limit, 1,012 by free range. Broilers in pens moved daily ate 45 % of the
// forage they stood on [MAINE-BROILERS]. Pigs: keep over 75 % of the ground covered
// [SOW-GROUND-COVER]. A lot for bad days is from 400 ft² to over 1,000 a horse, all
// from advisers; it stands high, away from water and wells [RUTGERS-FS1190], and
// stock go in when the grass is down to 3 in [WASHINGTON-LOTS].
//
// These are laws and labels of their places, in part superseded: the local rule of
// today decides, and the animals' welfare with it.
//
// Where:
//   - stock: as in SpaceRows
//   - rule: what the figure is meant for
//   - by: a word for the source, as in SpaceRows
//   - head: so many animals; >= 0
//   - end: of the printed span
//
// Errors: a *units.ParseError that lists what there is a row for
//
// Source: EU-889-2008, SERBIA-ORGANIC, FREE-RANGE-HENS, PLAMONDON-HENS,
// MISSOURI-GOSLING, WASHINGTON-LOTS, NC-DRY-LOT, IOWA-SACRIFICE, ELCR-LOTS,
// THEHORSE-PADDOCK, as the row says
func Space(stock string, rule SpaceRule, by string, head float64, end units.End) (units.Area, error) {
	arguments := [...]float64{0, float64(rule), 0, head, float64(end)}
	var has []string
	for i := range spaceRows {
		row := &spaceRows[i]
		if row.Stock == stock && row.Rule == rule && row.By == by {
			return units.Answer(&formulaSpace, row.at(end)*units.Area(head), arguments[:]...)
		}
		has = append(has, fmt.Sprintf("%s (%s, %s)", row.Stock, row.Rule, row.By))
	}
	problem := fmt.Sprintf("no room of it by %q, %q", rule, by)
	return units.Area(math.NaN()), formulaSpace.NoRow("stock", stock, problem, has, arguments[:]...)
}
