package decl_test

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/internal/decl"
)

// TestWords: what all constants begin with is left out, whatever word comes next.
func TestWords(t *testing.T) {
	for _, c := range []struct {
		constants, words []string
	}{
		{[]string{"StageDry", "StageLateGestation"}, []string{"dry", "late gestation"}},
		{[]string{"BasisPerHead", "BasisPerDay"}, []string{"head", "day"}},
		{[]string{"RowPerennial", "RowPercent", "RowAnnual"}, []string{"perennial", "percent", "annual"}},
		{[]string{"Standing"}, []string{"standing"}},
		{[]string{"Stage", "StageDry"}, []string{"stage", "stage dry"}}, // never a whole name
	} {
		e := decl.Enum{Constants: c.constants}
		assert.Equal(t, c.words, e.Words())
	}
}

// TestPrefix: the first unit of a quotient is no prefix, a quantity's name is.
func TestPrefix(t *testing.T) {
	for want, names := range map[string][]string{
		"Height": {"HeightMetre", "HeightInch"},
		"":       {"PoundPerAcre", "PoundPerFoot"},
		"Live":   {"LivePercent", "LivePerennial"}, // "Per" is a word, not a beginning
	} {
		var q decl.Quantity
		for _, name := range names {
			q.Units = append(q.Units, decl.Unit{Name: name})
		}
		assert.Equal(t, want, q.Prefix())
	}
}

// TestWordsHaveLimits: a look-up whose answer is a word may have Where; it is
// guarded as a formula is, and is none.
func TestWordsHaveLimits(t *testing.T) {
	const source = `// Package stand is a test.
package stand

// Firm is a class.
type Firm int

// The classes.
const (
	FirmNot Firm = iota + 1
	FirmQuite
)

// FirmAt gives a class.
//
// Where:
//   - depth in mm: how deep; >= 0
func FirmAt(depth float64) (Firm, error) { return FirmNot, nil }

// DepthAt gives a number.
//
// Method: the depth
//
// Where:
//   - depth in mm: how deep; >= 0
func DepthAt(depth float64) (float64, error) { return depth, nil }

// NamedDepth gives a number of a row.
//
// Table: depths by name
//
// Where:
//   - name: which row
func NamedDepth(name string) (float64, error) { return 0, nil }

// EndOf gives a number of a printed span.
//
// Table: one span
//
// Where:
//   - end: which end
func EndOf(end units.End) (float64, error) { return 0, nil }

// Price gives money.
//
// Method: the depth, at one a millimetre
//
// Where:
//   - depth in mm: how deep; >= 0
func Price(depth float64) (units.Money, error) { return units.Money{}, nil }

// Paid gives a number for money.
//
// Method: the amount
//
// Where:
//   - money: how much
func Paid(money units.Money) (float64, error) { return 0, nil }

// Pair gives a row.
//
// Method: the depth twice
//
// Where:
//   - depth in mm: how deep; >= 0
func Pair(depth float64) (Two, error) { return Two{}, nil }

// Plain gives a number, and does not tell how.
//
// Where:
//   - depth in mm: how deep; >= 0
func Plain(depth float64) (float64, error) { return depth, nil }

// Open gives a class without limits.
func Open(depth float64) (Firm, error) { return FirmNot, nil }
`
	root := t.TempDir()
	require.NoError(t, os.Mkdir(filepath.Join(root, "stand"), 0o755))
	require.NoError(t, os.WriteFile(filepath.Join(root, "stand", "stand.go"), []byte(source), 0o600))
	p, err := decl.Read(root, "stand")
	require.NoError(t, err)
	got := map[string][2]bool{}
	for i := range p.Functions {
		f := &p.Functions[i]
		got[f.Name] = [2]bool{f.IsGuarded(), f.IsFormula()}
	}
	assert.Equal(t, map[string][2]bool{"FirmAt": {true, false}, "DepthAt": {true, true}, "NamedDepth": {true, false}, "EndOf": {true, false}, "Price": {true, false}, "Paid": {true, false}, "Pair": {true, false}, "Plain": {true, false}, "Open": {false, false}}, got)
}
