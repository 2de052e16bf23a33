package main

import (
	"encoding/json"
	"regexp"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/forage"
	"example.org/soum/herd"
	"example.org/soum/internal/decl"
)

// TestEmbeddedFieldsStandInTheirPlace: the manifest lists the keys of a row that embeds
// another as JSON writes them.
func TestEmbeddedFieldsStandInTheirPlace(t *testing.T) {
	root, err := decl.Root()
	require.NoError(t, err)
	module, err := decl.ReadModule(root)
	require.NoError(t, err)
	m, _, err := api(root, module)
	require.NoError(t, err)
	key := regexp.MustCompile(`"(\w+)":`)
	for name, row := range map[string]any{
		"herd.HeatStep": herd.HeatStep{}, "forage.BloatPlant": forage.BloatPlant{},
		"herd.ReckoningDefinition": herd.ReckoningDefinition{}, "forage.FeederRow": forage.FeederRow{},
	} {
		at := slices.IndexFunc(m.Structs, func(s apiStruct) bool { return s.Name == name })
		require.GreaterOrEqual(t, at, 0, name)
		var listed, written []string
		for _, f := range m.Structs[at].Fields {
			listed = append(listed, f.Name)
			assert.NotEmpty(t, f.Doc, name+" "+f.Name)
		}
		text, err := json.Marshal(row)
		require.NoError(t, err)
		for _, match := range key.FindAllStringSubmatch(string(text), -1) {
			written = append(written, match[1])
		}
		assert.Equal(t, written, listed, name)
		assert.Contains(t, listed, "mark")
	}
}
