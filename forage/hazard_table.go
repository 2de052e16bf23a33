package forage

import (
	"math"

	"example.org/soum/units"
)

var infinity = math.Inf(1)

// Milliequivalents in a kilogram of dry matter for 1 % of the element,
// MANITOBA-TETANY, mark B.
const (
	potassiumEquivalents = 255.74
	calciumEquivalents   = 499.00
	magnesiumEquivalents = 822.64
)

// hazardLimits are UKY-BLOAT, RAHMAN-2022 and OHIO-TETANY, mark A.
var hazardLimits = StandLimits{Legume: 50 * units.Percent, Potassium: 2.2, Magnesium: 0.2 * units.Percent}

// endophyteLoss is OSU-ENDOPHYTE, kilograms a day for each tenth infected, mark A.
const endophyteLoss = 0.045

// bloatPlants is the table of BloatOf.
var bloatPlants = []BloatPlant{
	{"alfalfa", TendencyHigh, "ALBERTA-BLOAT", "A"},
	{"red-clover", TendencyHigh, "ALBERTA-BLOAT", "A"},
	{"white-clover", TendencyHigh, "ALBERTA-BLOAT", "A"},
	{"alsike-clover", TendencyHigh, "ALBERTA-BLOAT", "A"},
	{"kura-clover", TendencyHigh, "ALBERTA-BLOAT", "A"},
	{"persian-clover", TendencyModerate, "ALBERTA-BLOAT", "A"},
	{"berseem-clover", TendencyModerate, "ALBERTA-BLOAT", "A"},
	{"arrowleaf-clover", TendencyModerate, "ALBERTA-BLOAT", "A"},
	{"sweet-clover", TendencyPossible, "ALBERTA-BLOAT", "A"},
	{"crimson-clover", TendencyPossible, "ALBERTA-BLOAT", "A"},
	{"young-green-cereal", TendencyPossible, "ALBERTA-BLOAT", "A"},
	{"brassica", TendencyPossible, "ALBERTA-BLOAT", "A"},
	{"field-pea", TendencyPossible, "ALBERTA-BLOAT", "A"},
	{"bean", TendencyPossible, "ALBERTA-BLOAT", "A"},
	{"lentil", TendencyPossible, "ALBERTA-BLOAT", "A"},
	{"chickpea", TendencyPossible, "ALBERTA-BLOAT", "A"},
	{"birdsfoot-trefoil", TendencyNone, "ALBERTA-BLOAT", "A"},
	{"sainfoin", TendencyNone, "ALBERTA-BLOAT", "A"},
	{"cicer-milkvetch", TendencyNone, "ALBERTA-BLOAT", "A"},
	{"fenugreek", TendencyNone, "ALBERTA-BLOAT", "A"},
	{"hairy-vetch", TendencyNone, "ALBERTA-BLOAT", "A"},
	{"crown-vetch", TendencyNone, "ALBERTA-BLOAT", "A"},
	{"purple-prairie-clover", TendencyNone, "ALBERTA-BLOAT", "A"},
}
