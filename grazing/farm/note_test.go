package farm

import (
	"encoding/json"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestCapital begins a sentence with a capital, of another length where it has one.
func TestCapital(t *testing.T) {
	for small, capital := range map[string]string{
		"cows": "Cows", "Cows": "Cows", "älf": "Älf", "ⱥx": "Ⱥx", "ßo": "ßo", "3 ewes": "3 ewes", "": "", "\xff": "\xff", "日": "日",
	} {
		assert.Equal(t, capital+" go.", note("code", nil, "%s go.", small).English)
		assert.Equal(t, small+" go.", caution("code", nil, "%s go.", small).Why) // stands behind a colon
	}
}

// TestNothingToTellIsAnObject: readers of JSON walk through the figures of a note.
func TestNothingToTellIsAnObject(t *testing.T) {
	for _, values := range []Values{note("code", nil, "Text.").Values, caution("code", nil, "text").Values} {
		text, err := json.Marshal(values)
		require.NoError(t, err)
		assert.Equal(t, "{}", string(text))
	}
}
