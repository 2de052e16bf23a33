package farm_test

import (
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/grazing/farm"
)

func cautions(p *farm.Plan) []string {
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
	holding := readSmall(t, `"note": "ours"`, `"fence": {"netting": true}`)
	assert.NotContains(t, cautions(plan(t, holding)), "horned stock and netting")
	holding.Groups[0].Horned = true
	assert.Contains(t, cautions(plan(t, holding)), "horned stock and netting")
	holding.Groups[0].Horned, holding.Groups[1].Young = false, true
	assert.Contains(t, cautions(plan(t, holding)), "horned stock and netting")
}

// TestWaterBirdCaution puts hens beside the geese, and takes the geese away.
func TestWaterBirdCaution(t *testing.T) {
	holding := readSmall(t, `"class": "ewe", "head": 5`, `"class": "laying-hen", "head": 5`)
	assert.Contains(t, cautions(plan(t, holding)), "water birds")
	holding.Groups[2].Class.Name = "laying-hen"
	assert.NotContains(t, cautions(plan(t, holding)), "water birds")
}

// TestCopperCaution keeps sheep alone: without other stock and without feed
// made for others there is no caution, with such feed there is.
func TestCopperCaution(t *testing.T) {
	holding := readSmall(t, `"note": "ours"`, `"note": "ours"`)
	holding.Groups = holding.Groups[:2]
	holding.Rotations = holding.Rotations[:1]
	assert.NotContains(t, cautions(plan(t, holding)), "copper and sheep")
	holding.Feed.Minerals = true
	assert.Contains(t, cautions(plan(t, holding)), "copper and sheep")
}

// TestEveryCautionTeaches: why, what to do, whose advice, who decides; and the
// sources stand in SOURCES.md.
func TestEveryCautionTeaches(t *testing.T) {
	sources, err := os.ReadFile("../../SOURCES.md")
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

// TestCautionsBetweenKinds puts the kinds of stock together, or apart, of which
// print says that they harm each other.
func TestCautionsBetweenKinds(t *testing.T) {
	codes := []string{"ionophores", "sheep beside deer or cattle", "chickens and turkeys", "birds after pigs", "bulls and cows with calves"}
	for _, c := range []struct {
		leader, follower, apart string
		want                    []string
	}{
		{"dairy-goat", "meat-goat", "horse", nil}, // a horse, but no feed with an ionophore
		{"laying-hen", "turkey", "goose", []string{"chickens and turkeys"}},
		{"laying-hen", "broiler", "turkey", nil}, // on ground of their own
		{"sow", "turkey", "dairy-goat", []string{"birds after pigs"}},
		{"growing-pig", "laying-hen", "dairy-goat", []string{"birds after pigs"}},
		{"ewe", "turkey", "dairy-goat", []string{"birds after pigs"}}, // sheep carry it too
		{"sow", "dairy-goat", "laying-hen", nil},
		{"ewe", "dairy-goat", "white-tailed-deer", []string{"sheep beside deer or cattle"}},
		{"ewe", "growing-cattle", "dairy-goat", []string{"sheep beside deer or cattle"}},
		{"suckler-cow", "dairy-goat", "dairy-goat", []string{"bulls and cows with calves"}}, // her first stage is in milk
		{"bull", "dairy-goat", "dairy-goat", []string{"bulls and cows with calves"}},
		{"growing-cattle", "dairy-goat", "dairy-goat", nil},
	} {
		holding := readSmall(t, `"stage": "lactating"`, `"note": ""`)
		for i, class := range []string{c.leader, c.follower, c.apart} {
			holding.Groups[i].Class.Name = class
		}
		var got []string
		for _, code := range cautions(plan(t, holding)) {
			if slices.Contains(codes, code) {
				got = append(got, code)
			}
		}
		assert.Equal(t, c.want, got, "%v", c)
	}
}

// TestIonophoreCaution: horses, donkeys and turkeys, where the document says that
// feed holds one.
func TestIonophoreCaution(t *testing.T) {
	for class, want := range map[string]bool{"horse": true, "donkey": true, "turkey": true, "laying-hen": false, "ewe": false} {
		holding := readSmall(t, `"class": "goose"`, `"class": "`+class+`"`)
		holding.Feed.Ionophores = true
		assert.Equal(t, want, slices.Contains(cautions(plan(t, holding)), "ionophores"), class)
	}
}

// TestEveryKeyOfACautionIsASource looks at all cautions, raised or not.
func TestEveryKeyOfACautionIsASource(t *testing.T) {
	sources, err := os.ReadFile("../../SOURCES.md")
	require.NoError(t, err)
	for code, source := range farm.CautionSources() {
		for key := range strings.FieldsFuncSeq(source, func(r rune) bool { return strings.ContainsRune(",; ", r) }) {
			if strings.Contains(key, "-") {
				assert.True(t, strings.Contains(string(sources), "### "+key+"\n"), "%s of %q is not in SOURCES.md", key, code)
			}
		}
	}
}
