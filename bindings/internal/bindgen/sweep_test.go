package main

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestSweep: a page of a function that is gone is named by a check and removed by
// a run; what is written, what a hand wrote, and other folders stay.
func TestSweep(t *testing.T) {
	root := t.TempDir()
	written := map[string][]byte{"man/kept.Rd": nil}
	for name, text := range map[string]string{
		"man/kept.Rd":     marked("% "),
		"man/gone.Rd":     marked("% ") + "\\name{gone}\n",
		"man/by-hand.Rd":  "\\name{hand}\n% " + heading,
		"other/by_gen.go": heading,
	} {
		file := filepath.Join(root, filepath.FromSlash(name))
		require.NoError(t, os.MkdirAll(filepath.Dir(file), 0o755))
		require.NoError(t, os.WriteFile(file, []byte(text), 0o600))
	}
	there := func() (names []string) {
		for _, pattern := range []string{"man/*", "other/*"} {
			files, _ := filepath.Glob(filepath.Join(root, pattern))
			for _, file := range files {
				names = append(names, filepath.Base(file))
			}
		}
		return names
	}
	require.ErrorContains(t, sweep(root, written, true), "man/gone.Rd")
	require.Len(t, there(), 4, "a check changes nothing")
	require.NoError(t, sweep(root, written, false))
	assert.Equal(t, []string{"by-hand.Rd", "kept.Rd", "by_gen.go"}, there())
	assert.NoError(t, sweep(root, written, true))
}
