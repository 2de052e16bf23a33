package main

import (
	"bytes"
	"image/color"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/examples/internal/painted"
)

// The figures of the answers as R 4.2.2 computes them from the same public record:
// years, odds, variation, the longest run, the index, shares of normal, and the
// figures of the plan.
func TestRainOfWichita(t *testing.T) {
	var out bytes.Buffer
	require.NoError(t, run([]string{"-passes", "5"}, &out))
	for _, line := range []string{
		"5 passes want 889 mm of rain by the rule; of 31 years 31.2 % bring as much.",
		"The rain of the years varies by 22.9 %.",
		"under 75 % of normal: 8 from May 1988, with 230 mm where 628 mm is normal.",
		"The driest twelve months ended in April 1989: 326 mm, index -2.62, extremely dry.",
		"2011-04-15  65.1 mm of 119 mm, 54.5 %: act (mid-april-year-to-date)",
		"2011-05-21  37.3 mm of 63.8 mm, 58.5 %: no need to act (late-may-half)",
		"2011-07-01  220 mm of 305 mm, 72 %: act (july-three-quarters)",
		"2012-04-15  under 112 mm since 2012-01-01: cut the summer's stocking by 10 % [CHERRY-TRIGGER]",
		"2012-07-01  under 153 mm since 2012-04-01: without rain by now",
	} {
		assert.Contains(t, out.String(), line)
	}
	out.Reset()
	require.NoError(t, run([]string{"-passes", "3", "-units", "US"}, &out))
	assert.Contains(t, out.String(), "3 passes want 26.4 in of rain by the rule; of 31 years 81.2 % bring as much.")
	assert.Contains(t, out.String(), "outside what HFG-CYCLES covers")
}

func TestRainDraws(t *testing.T) {
	path := filepath.Join(t.TempDir(), "rain.png")
	require.NoError(t, run([]string{"-picture", path}, new(bytes.Buffer)))
	colours, err := painted.Colours(path)
	require.NoError(t, err)
	assert.True(t, colours[color.RGBA{0x00, 0x72, 0xb2, 0xff}], "wet years")
	assert.True(t, colours[color.RGBA{0xd5, 0x5e, 0x00, 0xff}], "dry years")
}

func TestRainRefuses(t *testing.T) {
	path := filepath.Join(t.TempDir(), "gauge.csv")
	for text, wrong := range map[string]string{
		"year,month,rain\n":                  "no unit",
		"year,month,rain mm\n":               "holds no month",
		"year,month,rain mm\n2000,1,5\n":     "has no February in any year",
		"year,month,rain mm\n2000,1,trace\n": "line 2, column 3",
	} {
		require.NoError(t, os.WriteFile(path, []byte(text), 0o600))
		assert.ErrorContains(t, run([]string{"-record", path}, new(bytes.Buffer)), wrong)
	}
	assert.Error(t, run([]string{"-record", path + "x"}, new(bytes.Buffer)))
	assert.Error(t, run([]string{"-passes", "-1"}, new(bytes.Buffer)))
}
