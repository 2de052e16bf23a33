package main

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/soum/internal/decl"
)

// TestNothingIsForgotten walks what the subject packages export: every function
// and struct is in the manifest, or is left out there with a reason, and the
// manifest names nothing that is not there. It prints what is left out.
func TestNothingIsForgotten(t *testing.T) {
	root, err := decl.Root()
	require.NoError(t, err)
	data, err := os.ReadFile(filepath.Join(root, "bindings", "api.json"))
	require.NoError(t, err)
	var manifest struct {
		Functions, Structs []struct{ Name string }
		LeftOut            []struct{ Name, Reason string } `json:"left_out"`
	}
	require.NoError(t, json.Unmarshal(data, &manifest))
	reached, left := map[string]bool{}, map[string]bool{}
	for _, f := range append(manifest.Functions, manifest.Structs...) {
		reached[f.Name] = true
	}
	for _, l := range manifest.LeftOut {
		require.NotEmpty(t, l.Reason, l.Name)
		require.False(t, reached[l.Name], "%s is both reached and left out", l.Name)
		left[l.Name] = true
		fmt.Printf("left out: %s: %s\n", l.Name, l.Reason)
	}
	there := map[string]bool{}
	for _, name := range decl.Packages()[1:] {
		p, err := decl.Read(root, name)
		require.NoError(t, err)
		var all []string
		for i := range p.Functions {
			f := &p.Functions[i]
			if f.Receiver != "" && slices.Contains([]string{"String", "MarshalText", "UnmarshalText"}, f.Name) {
				continue // how a word or a quantity reads: the manifest lists words and spellings
			}
			all = append(all, f.Full())
		}
		for _, s := range p.Structs {
			all = append(all, p.Name+"."+s)
		}
		for _, full := range all {
			there[full] = true
			if !reached[full] && !left[full] {
				t.Errorf("%s is neither in the manifest nor left out with a reason", full)
			}
		}
	}
	for name := range left {
		if !there[name] && !strings.HasPrefix(name, "units.") {
			t.Errorf("%s is left out but does not exist", name)
		}
	}
	methods := 0
	for name := range left {
		if strings.Count(name, ".") == 2 {
			methods++
		}
	}
	fmt.Printf("left out: %d, of which %d are methods; reached: %d functions and structs\n", len(left), methods, len(reached))
}
