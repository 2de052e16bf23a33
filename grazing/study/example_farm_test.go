package study_test

import (
	"os"
	"testing"

	"example.org/soum/grazing/farm"
	"github.com/stretchr/testify/require"
)

// exampleFarm reads the farm that the example runs.
func exampleFarm(t testing.TB) *farm.Farm {
	t.Helper()
	data, err := os.ReadFile("../../examples/season/data/farm.json")
	require.NoError(t, err)
	holding, err := farm.Read(data)
	require.NoError(t, err)
	return holding
}
