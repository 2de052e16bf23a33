package farm_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestExplainEndsInThePlan explains a day and finds the plan's own figures at
// the end of the steps: the length of the strip, the wants summed.
func TestExplainEndsInThePlan(t *testing.T) {
	holding := exampleFarm(t)
	p := plan(t, holding)
	for _, move := range []int{0, 5, 40, 90} {
		m := p.Moves[move]
		if m.Length == 0 {
			continue
		}
		all, err := holding.Explain(m.Date)
		require.NoError(t, err)
		found := false
		for _, e := range all {
			last := e.Steps[len(e.Steps)-1]
			if last.Function != "grazing.StripLength" || e.Note != "" {
				continue
			}
			found = found || near(last.Value, m.Length.Metres(), 1e-6)
			for _, s := range e.Steps {
				assert.NotEmpty(t, s.Source)
				assert.NotEmpty(t, s.Text)
			}
		}
		assert.True(t, found, "no explanation of %v ends in %v", m.Date, m.Length)
	}
	_, err := holding.Explain(holding.Season.To.Add(1))
	require.ErrorContains(t, err, "outside the plan")
}
