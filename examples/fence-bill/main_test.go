package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/units"
)

// TestAnswer holds the text of the invented farm. Its sums by hand: sides 5 × 660 + 8
// × 82.5 = 3,960 ft, four wires 15,840 ft are four rolls, 400; 131 posts (5 sides of
// 23, 8 ends of 2 between the corners), 655; four cross fences of a roll each, 640;
// 3,960 + 330 ft are 0.8125 mi and J, 3.9 ft of rod is one; 400 + 655 + 640 + 200 +
// 20 = 1,915. A year: wire 16 + 12 + 20 = 48, posts 85.15, netting 131.20, energizer
// 26, rod 1.60: 291.95.
func TestAnswer(t *testing.T) {
	text, err := answer(invented, units.US)
	require.NoError(t, err)
	for _, want := range []string{
		"4 lanes of 660 ft by 82.5 ft, 3,960 ft of fence that stays with 4 wires",
		"3 to 4 wires round the land",
		"netting, moved: 330 ft in all for 2 strips in use and 1 spare",
		"On 5 ac netting or several wires are both done",
		"Energizer: at least 0.81",
		"Ground rods: 2.44 ft by the trade press, 3.9 ft by a power company",
		"at least 2,000 V", "Better hold 4,000 V",
		"IEC 60335-2-76", "made to\nthe safety standard",
	} {
		assert.Contains(t, text, want)
	}
	lines := strings.Split(text, "\n")
	for _, want := range [][]string{
		{"wire", "4", "400.00", "USD", "48.00", "USD"},
		{"post", "131", "655.00", "USD", "85.15", "USD"},
		{"netting", "4", "640.00", "USD", "131.20", "USD"},
		{"energizer", "1", "200.00", "USD", "26.00", "USD"},
		{"rod", "1", "20.00", "USD", "1.60", "USD"},
		{"together", "1915.00", "USD", "291.95", "USD"},
	} {
		found := false
		for _, line := range lines {
			got := strings.Fields(line)
			found = found || assert.ObjectsAreEqual(want, got)
		}
		assert.True(t, found, "%v in\n%s", want, text)
	}
	metric, err := answer(invented, units.Metric)
	require.NoError(t, err)
	assert.Contains(t, metric, "1,207 m of fence")
}

// TestHornedBehindNetting is told in capitals.
func TestHornedBehindNetting(t *testing.T) {
	text, err := answer(bytes.Replace(invented, []byte(`"small"`), []byte(`"horned"`), 1), units.US)
	require.NoError(t, err)
	assert.Contains(t, text, "NOT netting")
}

func TestRun(t *testing.T) {
	var out, told bytes.Buffer
	assert.Zero(t, run(nil, &out, &told), told.String())
	assert.Contains(t, out.String(), "together")
	file := filepath.Join(t.TempDir(), "fence.json")
	for text, want := range map[string]string{
		`{"stok": "small"}`: `unknown field "stok"`,
		`{"land": "5"}`:     "5",
		strings.Replace(string(invented), `"lanes": 4`, `"lanes": 0`, 1):        "lanes",
		strings.Replace(string(invented), `"item": "post"`, `"item": "rod"`, 1): `no "post"`,
		strings.Replace(string(invented), `"sheep"`, `"dragon"`, 1):             "dragon",
	} {
		require.NoError(t, os.WriteFile(file, []byte(text), 0o600))
		told.Reset()
		assert.Equal(t, 2, run([]string{"-file", file}, &out, &told), text)
		assert.Contains(t, told.String(), want)
	}
	told.Reset()
	assert.Equal(t, 2, run([]string{"-file", filepath.Join(t.TempDir(), "none")}, &out, &told))
	assert.Equal(t, 2, run([]string{"extra"}, &out, &told))
	assert.Equal(t, 2, run([]string{"-units", "cubits"}, &out, &told))
	assert.Zero(t, run([]string{"-units", "metric"}, &out, &told))
}
