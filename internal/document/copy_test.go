package document

import (
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/soum/units"
)

// TestCopySharesNothing changes every kind of part of a copy: the document stays.
func TestCopySharesNothing(t *testing.T) {
	type part struct {
		Name string
		Day  *units.Date
	}
	type whole struct {
		Parts  []part
		By     map[string][]float64
		Extra  map[string]any
		Row    units.RowOr[part]
		None   *part
		Empty  []part
		Months [2]float64
	}
	make := func() *whole {
		day := units.Date(7)
		return &whole{
			Parts: []part{{"a", &day}}, By: map[string][]float64{"x": {1, 2}}, Extra: map[string]any{"x-list": []any{"one", nil}},
			Row: units.RowOr[part]{Row: &part{Name: "own"}}, Months: [2]float64{1, 2},
		}
	}
	given := make()
	c := Copy(given)
	require.Equal(t, given, c)
	*c.Parts[0].Day = 8
	c.Parts[0].Name, c.By["x"][0], c.Row.Row.Name, c.Months[0] = "b", 9, "other", 9
	c.Extra["x-list"].([]any)[0] = "two"
	c.By["y"] = nil
	require.Equal(t, make(), given)
	require.Nil(t, c.None)
	require.Nil(t, c.Empty)
	require.Nil(t, Copy[whole](nil))
}
