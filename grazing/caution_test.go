package grazing_test

import (
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/grazing"
)

func cautions(p *grazing.Plan) []string {
	var codes []string
	for _, c := range p.Cautions {
		codes = append(codes, c.Code)
	}
	return codes
}

// TestCautions changes the small farm so that each caution holds, or holds no
// more, and expects that and no other.
func TestCautions(t *testing.T) {
	// The small farm is fenced with electric wire, keeps sheep beside geese, and
	// its geese stay on their paddock for longer than regrowth takes.
	plain := []string{"copper and sheep", "electric fence and people", "regrowth bitten"}
	assert.ElementsMatch(t, plain, cautions(plan(t, readSmall(t, `"note": "ours"`, `"note": "ours"`))))
	for _, c := range []struct {
		old, replacement string
		more             []string
		less             string
	}{
		{`"head": 8`, `"head": 8, "horned": true`, nil, ""}, // no netting, no caution
		{`"note": "ours"`, `"fence": {"netting": true}`, nil, ""},
		{`"note": "ours"`, `"fence": {"dead": true}`, nil, "electric fence and people"},
		{`"waste": "10 %"`, `"waste": "10 %", "scraps": true`, []string{"food scraps"}, ""},
		{`"height": "20 cm"`, `"height": "20 cm", "legume": "55 %"`, []string{"bloat"}, ""},
		{`"height": "20 cm"`, `"height": "20 cm", "legume": "45 %"`, nil, ""},
		{`"height": "15 cm"`, `"height": "15 cm", "legume": "55 %"`, []string{"bloat"}, ""},
		{`"behind": "2 days"`, `"behind": "5 days"`, []string{"regrowth bitten"}, ""},
	} {
		got := cautions(plan(t, readSmall(t, c.old, c.replacement)))
		want := append(append([]string(nil), plain...), c.more...)
		want = slices.DeleteFunc(want, func(code string) bool { return code == c.less })
		assert.ElementsMatch(t, want, got, c.replacement)
	}
}

// TestNettingCautions puts horned stock, and young, behind netting.
func TestNettingCautions(t *testing.T) {
	farm := readSmall(t, `"note": "ours"`, `"fence": {"netting": true}`)
	assert.NotContains(t, cautions(plan(t, farm)), "horned stock and netting")
	farm.Groups[0].Horned = true
	assert.Contains(t, cautions(plan(t, farm)), "horned stock and netting")
	farm.Groups[0].Horned, farm.Groups[1].Young = false, true
	assert.Contains(t, cautions(plan(t, farm)), "horned stock and netting")
}

// TestWaterBirdCaution puts hens beside the geese, and takes the geese away.
func TestWaterBirdCaution(t *testing.T) {
	farm := readSmall(t, `"class": "ewe", "head": 5`, `"class": "laying-hen", "head": 5`)
	assert.Contains(t, cautions(plan(t, farm)), "water birds")
	farm.Groups[2].Class.Name = "laying-hen"
	assert.NotContains(t, cautions(plan(t, farm)), "water birds")
}

// TestCopperCaution keeps sheep alone: without other stock and without feed
// made for others there is no caution, with such feed there is.
func TestCopperCaution(t *testing.T) {
	farm := readSmall(t, `"note": "ours"`, `"note": "ours"`)
	farm.Groups = farm.Groups[:2]
	farm.Rotations = farm.Rotations[:1]
	assert.NotContains(t, cautions(plan(t, farm)), "copper and sheep")
	farm.Feed.Minerals = true
	assert.Contains(t, cautions(plan(t, farm)), "copper and sheep")
}

// TestEveryCautionTeaches: why, what to do, whose advice, who decides; and the
// sources stand in SOURCES.md.
func TestEveryCautionTeaches(t *testing.T) {
	sources, err := os.ReadFile("../SOURCES.md")
	require.NoError(t, err)
	for _, c := range plan(t, exampleFarm(t)).Cautions {
		assert.NotEmpty(t, c.Why)
		assert.NotEmpty(t, c.Do)
		assert.NotEmpty(t, c.Defer)
		for key := range strings.FieldsFuncSeq(c.Source, func(r rune) bool { return strings.ContainsRune(",; ", r) }) {
			if strings.Contains(key, "-") {
				assert.True(t, strings.Contains(string(sources), "### "+key+"\n"), "%s is not in SOURCES.md", key)
			}
		}
	}
}
