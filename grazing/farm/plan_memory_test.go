package farm_test

import (
	"encoding/json"
	"os"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/grazing/farm"
	"example.org/soum/internal/speed"
)

// TestPlansShareNothing plans unlike farms after one another and side by side: a plan is
// made in the memory of those before it, and must not change with those after it.
func TestPlansShareNothing(t *testing.T) {
	farms := []*farm.Farm{exampleFarm(t)}
	data, err := os.ReadFile("../../examples/season/data/births.json")
	require.NoError(t, err)
	births, err := farm.Read(data)
	require.NoError(t, err)
	strips, err := speed.FiftyStrips()
	require.NoError(t, err)
	farms = append(farms, births, strips)
	var plans []*farm.Plan
	var texts []string
	for _, holding := range farms {
		plan, err := holding.Plan()
		require.NoError(t, err)
		text, err := json.Marshal(plan)
		require.NoError(t, err)
		plans, texts = append(plans, plan), append(texts, string(text))
	}
	var all sync.WaitGroup
	for i := range 4 * len(farms) {
		all.Add(1)
		go func() {
			defer all.Done()
			for k := range 4 {
				at := (i + k) % len(farms)
				plan, err := farms[at].Plan()
				assert.NoError(t, err)
				text, err := json.Marshal(plan)
				assert.NoError(t, err)
				assert.True(t, texts[at] == string(text), "farm %d planned beside others", at)
			}
		}()
	}
	all.Wait()
	for i, plan := range plans {
		text, err := json.Marshal(plan)
		require.NoError(t, err)
		require.True(t, texts[i] == string(text), "the plan of farm %d after other plans", i)
	}
}
