package check_test

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/internal/check"
)

// TestMoneyTables: a table of money holds the last printed digit, the currency, and
// the field that it names.
func TestMoneyTables(t *testing.T) {
	const rent = "# ours\ncheck: grazing.RentPerHead\nrent:USD,per:ac,land:ac,mark,error,result:USD\n"
	const waste = "# ours\ncheck: forage.WasteCost\nbale:lb,waste:%,price:USD,bales,mark,result."
	for _, c := range []struct{ name, text, problem string }{
		{"right", rent + "8.76,1,4.4,A,,38.54\n", ""},
		{"rounded in print", rent + "8.76,1,4.4,A,,39\n", ""},
		{"a cent off", rent + "8.76,1,4.4,A,,38.55\n", "got 38.54 USD, printed 38.55 USD"},
		{"another currency", "# ours\ncheck: grazing.RentPerHead\nrent:USD,per:ac,land:ac,mark,result:EUR\n8.76,1,4.4,A,38.54\n", "printed 38.54 EUR"},
		{"refused", rent + "8.76,1,-1,A,domain land,NaN\n", ""},
		{"not refused", rent + "8.76,1,1,A,,NaN\n", "want no money"},
		{"no number", rent + "8.76,1,1,A,,many\n", "many"},
		{"a field of money", waste + "Cost:USD\n1200,5.3,70,180,A,3.71\n", ""},
		{"a field of hay", waste + "Each:lb\n1200,5.3,70,180,A,63.6\n", ""},
		{"a field that is off", waste + "Each:lb\n1200,5.3,70,180,A,63.8\n", "63.8"},
		{"no such field", waste + "Colour:USD\n1200,5.3,70,180,A,1\n", "no field Colour"},
	} {
		path := filepath.Join(t.TempDir(), "table.csv")
		require.NoError(t, os.WriteFile(path, []byte(c.text), 0o600))
		table, err := check.ReadTable(path)
		require.NoError(t, err, c.name)
		assert.False(t, table.Crosses(), c.name)
		err = table.Row(0)
		if c.problem == "" {
			assert.NoError(t, err, c.name)
		} else {
			assert.ErrorContains(t, err, c.problem, c.name)
		}
	}
}
