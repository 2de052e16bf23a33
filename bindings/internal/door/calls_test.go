package door_test

import (
	"encoding/json"
	"os"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/soum/bindings/internal/door"
)

// TestEveryCallAnswers makes the calls of bindings/calls.json, one for every
// look-up and work, which each language's own tests make again.
func TestEveryCallAnswers(t *testing.T) {
	var api struct {
		Functions []struct{ Name, Kind string }
	}
	var calls map[string]json.RawMessage
	for path, into := range map[string]any{"../../api.json": &api, "../../calls.json": &calls} {
		data, err := os.ReadFile(path)
		require.NoError(t, err)
		require.NoError(t, json.Unmarshal(data, into))
	}
	for _, f := range api.Functions {
		arguments, called := calls[f.Name]
		require.Equal(t, f.Kind != "formula", called, f.Name)
		if !called {
			continue
		}
		out, status := door.Call(f.Name, arguments)
		require.Equal(t, int32(door.Good), status, "%s: %s", f.Name, out)
		var got struct{ Value any }
		require.NoError(t, json.Unmarshal(out, &got))
		require.NotNil(t, got.Value, f.Name)
		delete(calls, f.Name)
	}
	require.Empty(t, calls, "calls of what is not there")
}
