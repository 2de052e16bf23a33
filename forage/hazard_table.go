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
	{"alfalfa", TendencyHigh, printed("ALBERTA-BLOAT", "A")},
	{"red-clover", TendencyHigh, printed("ALBERTA-BLOAT", "A")},
	{"white-clover", TendencyHigh, printed("ALBERTA-BLOAT", "A")},
	{"alsike-clover", TendencyHigh, printed("ALBERTA-BLOAT", "A")},
	{"kura-clover", TendencyHigh, printed("ALBERTA-BLOAT", "A")},
	{"persian-clover", TendencyModerate, printed("ALBERTA-BLOAT", "A")},
	{"berseem-clover", TendencyModerate, printed("ALBERTA-BLOAT", "A")},
	{"arrowleaf-clover", TendencyModerate, printed("ALBERTA-BLOAT", "A")},
	{"sweet-clover", TendencyPossible, printed("ALBERTA-BLOAT", "A")},
	{"crimson-clover", TendencyPossible, printed("ALBERTA-BLOAT", "A")},
	{"young-green-cereal", TendencyPossible, printed("ALBERTA-BLOAT", "A")},
	{"brassica", TendencyPossible, printed("ALBERTA-BLOAT", "A")},
	{"field-pea", TendencyPossible, printed("ALBERTA-BLOAT", "A")},
	{"bean", TendencyPossible, printed("ALBERTA-BLOAT", "A")},
	{"lentil", TendencyPossible, printed("ALBERTA-BLOAT", "A")},
	{"chickpea", TendencyPossible, printed("ALBERTA-BLOAT", "A")},
	{"birdsfoot-trefoil", TendencyNone, printed("ALBERTA-BLOAT", "A")},
	{"sainfoin", TendencyNone, printed("ALBERTA-BLOAT", "A")},
	{"cicer-milkvetch", TendencyNone, printed("ALBERTA-BLOAT", "A")},
	{"fenugreek", TendencyNone, printed("ALBERTA-BLOAT", "A")},
	{"hairy-vetch", TendencyNone, printed("ALBERTA-BLOAT", "A")},
	{"crown-vetch", TendencyNone, printed("ALBERTA-BLOAT", "A")},
	{"purple-prairie-clover", TendencyNone, printed("ALBERTA-BLOAT", "A")},
}
