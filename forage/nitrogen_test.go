package forage_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"

	"example.org/soum/forage"
	"example.org/soum/units"
)

// TestResponseRows: every source once, spans the right way round, the table a copy.
func TestResponseRows(t *testing.T) {
	seen := map[forage.ResponseSource]bool{}
	for _, row := range forage.ResponseRows() {
		assert.False(t, seen[row.By], row.By)
		seen[row.By] = true
		assert.True(t, 0 < row.Response.Low && row.Response.Low <= row.Response.High)
		assert.Regexp(t, keyOfSource, row.Source)
		assert.Contains(t, []string{"A", "B", "D"}, row.Mark)
	}
	assert.Len(t, seen, 6)
	forage.ResponseRows()[0].Response.Low = 99
	assert.Less(t, forage.ResponseRows()[0].Response.Low, 99.0)
	_, err := forage.NitrogenResponse(1, 0, units.Low)
	assert.ErrorContains(t, err, "oklahoma")
	_, err = forage.Stockpile(1, 0)
	assert.True(t, units.Impossible(err))
}

// What do 50 lb of nitrogen bring on bermudagrass?
func ExampleNitrogenResponse() {
	extra, err := forage.NitrogenResponse(50*units.DressingPoundPerAcre, forage.ResponseOklahoma, units.Low)
	fmt.Println(extra.In(units.US), err)
	// Output: 1,500 lb/ac <nil>
}

// Who prints what a pound of nitrogen brings?
func ExampleResponseRows() {
	for _, row := range forage.ResponseRows() {
		fmt.Println(row.By, row.Response.Low, row.Response.High, row.Mark)
	}
	// Output:
	// iowa wet 15 15 A
	// iowa dry 19 19 A
	// wisconsin less 15 15 A
	// wisconsin more 18 20 A
	// kentucky 27 27 D
	// oklahoma 30 30 B
}

// How much urea is that?
func ExampleFertilizer() {
	urea, err := forage.Fertilizer(50*units.DressingPoundPerAcre, 46*units.Percent)
	fmt.Printf("%.0f lb/ac %v\n", urea.PoundsPerAcre(), err)
	// Output: 109 lb/ac <nil>
}
