package forage_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/forage"
	"example.org/soum/units"
)

// TestStockpileRises: nitrogen never lowers the yield, and the wet year's line is the
// dry year's but for the printed figures' own crossing, far beyond 100 lb.
func TestStockpileRises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		nitrogen := units.Dressing(rapid.Float64Range(0, 100).Draw(t, "lb")) * units.DressingPoundPerAcre
		wet, err := forage.Stockpile(nitrogen*0.99, forage.StockpileWet)
		require.NoError(t, err)
		more, err := forage.Stockpile(nitrogen*0.999, forage.StockpileWet)
		require.NoError(t, err)
		dry, err := forage.Stockpile(nitrogen*0.99, forage.StockpileDry)
		require.NoError(t, err)
		assert.LessOrEqual(t, wet, more)
		assert.Less(t, dry, wet)
		extra, err := forage.NitrogenResponse(nitrogen*0.99, forage.ResponseIowaWet, units.Low)
		require.NoError(t, err)
		bare, err := forage.Stockpile(0, forage.StockpileWet)
		require.NoError(t, err)
		assert.InEpsilon(t, float64(wet), float64(bare+extra), 1e-12)
	})
}

// What does 60 lb of nitrogen make of stockpiled fescue in a dry year?
func ExampleStockpile() {
	yield, err := forage.Stockpile(60*units.DressingPoundPerAcre, forage.StockpileDry)
	fmt.Println(yield.In(units.US), err)
	// Output: 1,812 lb/ac <nil>
}
