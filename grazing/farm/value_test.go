package farm_test

import (
	"encoding/json"
	"maps"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/grazing/farm"
	"example.org/soum/internal/speed"
)

// TestValues reads the figures of a note whose English and sums are checked in
// TestFeedingIsToldOnce: by key, all of them, and as JSON.
func TestValues(t *testing.T) {
	holding, err := speed.FiftyStrips()
	require.NoError(t, err)
	plan, err := holding.Plan()
	require.NoError(t, err)
	at := slices.IndexFunc(plan.Notes, func(n farm.Note) bool { return n.Code == "two-lands" })
	values := plan.Notes[at].Values
	assert.Equal(t, "cows", values.Get("group"))
	dates, ok := values.Get("dates").([]string)
	require.True(t, ok)
	require.NotEmpty(t, dates)
	assert.Contains(t, plan.Notes[at].English, "Cows go from one land to the next within the day on "+dates[0])
	assert.Nil(t, values.Get("no such key"))
	assert.Equal(t, map[string]any{"group": "cows", "dates": dates}, maps.Collect(values.All()))
	for key, value := range values.All() { // and stops when asked to
		assert.Equal(t, []any{"group", "cows"}, []any{key, value})
		break
	}
	fed := plan.Notes[slices.IndexFunc(plan.Notes, func(n farm.Note) bool { return n.Code == "fed" })]
	assert.IsType(t, 0, fed.Values.Get("days"))
	assert.IsType(t, 0.0, fed.Values.Get("wanted_kg"))
	for _, n := range plan.Notes { // as JSON an object of the same figures, its keys in order
		text, err := json.Marshal(n.Values)
		require.NoError(t, err)
		same, err := json.Marshal(maps.Collect(n.Values.All()))
		require.NoError(t, err)
		assert.Equal(t, string(same), string(text))
	}
	none, err := json.Marshal(farm.Values(nil))
	require.NoError(t, err)
	assert.Equal(t, "{}", string(none))
}
