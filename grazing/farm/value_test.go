package farm_test

import (
	"encoding/json"
	"fmt"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/grazing/farm"
	"example.org/soum/internal/speed"
)

// TestValues: what the figures of notes are made of, and that they come back from JSON.
// Their English and sums are checked in TestFeedingIsToldOnce.
func TestValues(t *testing.T) {
	holding, err := speed.FiftyStrips()
	require.NoError(t, err)
	plan, err := holding.Plan()
	require.NoError(t, err)
	at := slices.IndexFunc(plan.Notes, func(n farm.Note) bool { return n.Code == "two-lands" })
	values := plan.Notes[at].Values
	assert.Equal(t, "cows", values["group"])
	days, ok := values["days"].(int)
	require.True(t, ok)
	require.Greater(t, days, 1)
	assert.Contains(t, plan.Notes[at].English, fmt.Sprintf("Cows go from one land to the next within the day on %d days, the first %s.", days, values["first"]))
	for _, n := range plan.Notes {
		for key, value := range n.Values {
			switch value.(type) {
			case nil, float64, int, bool, string, []string:
			default:
				assert.Fail(t, "figure of another kind", "%s %s: %T", n.Code, key, value)
			}
		}
		_, err := json.Marshal(n.Values)
		require.NoError(t, err)
	}
}
