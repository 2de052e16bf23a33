package grazing_test

import (
	"os"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/soum/grazing"
)

// exampleFarm reads the farm that the example runs.
func exampleFarm(t testing.TB) *grazing.Farm {
	t.Helper()
	data, err := os.ReadFile("../examples/season/data/farm.json")
	require.NoError(t, err)
	farm, err := grazing.ReadFarm(data)
	require.NoError(t, err)
	return farm
}
