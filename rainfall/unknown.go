package rainfall

import (
	"math"

	"example.org/soum/units"
)

// What depths are beside an error.
var (
	unknown12 = [12]units.RainDepth(unknown(12))
	unknown9  = [9]units.RainDepth(unknown(9))
)

func unknown(n int) []units.RainDepth {
	all := make([]units.RainDepth, n)
	for i := range all {
		all[i] = units.RainDepth(math.NaN())
	}
	return all
}
