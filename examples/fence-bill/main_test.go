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
// 26, rod 1.60: 291.95, over 35 AUM 8.34. Upkeep 20 + 32.75 + 32 = 84.75: 500 less
// that are 415.25, and 1,915 ÷ 415.25 = 4.61.
func TestAnswer(t *testing.T) {
	text, err := answer(invented, units.US)
	require.NoError(t, err)
	for _, want := range []string{
		"4 lanes of 660 ft by 82.5 ft, 3,960 ft of fence that stays with 4 wires",
		"For sheep print has 3 to 4 wires round the land, high-tensile [ARS-SPURGE-FENCE].",
		"netting, moved: 330 ft in all for 2 strips in use and 1 spare",
		"On 5 ac netting or several wires are both done",
		"Energizer: at least 0.81",
		"Ground rods: 2.44 ft by the trade press [BEEF-FENCE-MISTAKES], 3.9 ft by a power company [CLOVERLAND-FENCE]",
		"at least 2,000 V", "Better hold 4,000 V",
		"Over 35 AUM grazed behind it in a year that is 8.34 USD for each animal-unit month.",
		"It saves 500.00 USD a year, less 84.75 USD of upkeep: paid for after 4.61 years.",
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

// with gives the answer for the invented farm with a change.
func with(t *testing.T, from, to string) (string, error) {
	t.Helper()
	require.Contains(t, string(invented), from)
	return answer([]byte(strings.Replace(string(invented), from, to, 1)), units.US)
}

// TestRowsTellTheirSource: figures and keys are those of the printed rows.
func TestRowsTellTheirSource(t *testing.T) {
	for animal, wants := range map[string][]string{
		"cattle":        {"For cattle print has 3 wires round the land", "[ARS-SPURGE-FENCE]", "at least 1,000 V at the far end [IOWA-382]"},
		"goat":          {"4 to 5 wires", "at least 2,500 V to 3,000 V"},
		"sheep-or-goat": {"4 to 6 wires round the land, 12.5-gauge", "[SHEEP101-FENCE]", "No voltage is printed here for sheep-or-goat"},
		"horse":         {"For horse no wires are printed here, as they are for cattle, sheep, goat, sheep-or-goat: ask an adviser", "Voltage for horse: at least 1,000 V"},
	} {
		text, err := with(t, `"sheep"`, `"`+animal+`"`)
		require.NoError(t, err)
		for _, want := range wants {
			assert.Contains(t, text, want)
		}
	}
	few, err := with(t, `"wires": 4`, `"wires": 1`)
	require.NoError(t, err)
	assert.Contains(t, few, "stays with 1 wire.\n")
	assert.Contains(t, few, "Yours has fewer")
}

func TestWithoutWorth(t *testing.T) {
	text, err := with(t, "\"grazed\": \"35 AUM\",\n  \"saves\": \"500 USD\",\n", "")
	require.NoError(t, err)
	assert.NotContains(t, text, "AUM")
	assert.NotContains(t, text, "paid for")
}

// TestTeaches: every error tells the place, the value and what would be right.
func TestTeaches(t *testing.T) {
	for _, c := range []struct{ from, to, want string }{
		{`"5 ac"`, `"-5 ac"`, `land: "-5 ac" is not above 0; an area above 0`},
		{`"5 ac"`, `5`, `land: 5 is not text; the land that the moved fence goes over, text with a unit, such as "5 ac"`},
		{`"width": "82.5 ft",`, ``, "job.width: missing; the width of a lane"},
		{`"lanes": 4`, `"lanes": 0`, "job.lanes: 0 is too few, or was left out; a whole number from 1 on"},
		{`"spare": 1`, `"spare": -1`, "job.spare: -1 is too few"},
		{`"lanes": 4`, `"lanes": 4.5`, "job.lanes: 4.5 is not a whole number"},
		{`"moved": "netting",`, ``, `job.moved: missing; "one wire", "netting" or "wires"`},
		{`"rod_rule": "utility",`, ``, `job.rod_rule: missing; "trade press" or "utility"`},
		{`"sheep"`, `"dragon"`, `wired_as: "dragon" is not an animal that an electric fence is printed for; one of: cattle, sheep, goat, sheep-or-goat, horse, deer, dog-or-coyote`},
		{`"sheep"`, `"any-behind-barbed-wire"`, `wired_as: "any-behind-barbed-wire" is a fence that nobody may electrify`},
		{`"item": "post", `, ``, "job.prices[1].item: missing"},
		{`"item": "post"`, `"item": "energizer"`, `job.prices[3].item: "energizer" stands twice; each item once`},
		{`      {"item": "post", "price": "5 USD", "years": 20, "upkeep": "5 %"},`, ``, `job.prices: no "post", which this fence needs`},
		{`"5 USD"`, `"-5 USD"`, "job.prices[1].price: -5 USD is negative; money of 0 or more"},
		{`"5 USD"`, `"5 EUR"`, "job.prices[1].price: 5 EUR is another currency than USD"},
		{`"price": "5 USD", `, ``, "job.prices[1].price: missing"},
		{`"years": 20`, `"years": 0`, "job.prices[1].years: 0 is not above 0"},
		{`"500 USD"`, `"500 EUR"`, `saves: "500 EUR" is another currency than USD; one currency in a file`},
		{`"500 USD"`, `"80 USD"`, "saves: 80 USD is no more than the upkeep of a year, 84.75 USD: such a fence never pays"},
		{`"35 AUM"`, `"0 AUM"`, `grazed: "0 AUM" is less than one animal unit grazes in a day; 1 AUD or more`},
		{`"stock"`, `"stok"`, "stok: unknown key; the keys here are stock, wired_as, land, job, saves, grazed, note, and any that begin with x-"},
		{`"lanes"`, `"lains"`, `job.lains: unknown key, perhaps "lanes" is meant`},
		{`"land": "5 ac",`, `"land": "5 ac", "land": "6 ac",`, "land: stands twice; each key once"},
		{`"lanes": 4,`, `"lanes": 4, "lanes": 5,`, "job.lanes: "},
		{`"5 ac"`, `"5 hectars"`, `land: "5 hectars": no unit "hectars"; area takes a number and one of: m2`},
		{`"small"`, `"wild"`, `stock: "wild" is not stock that a moved fence holds; "quiet cattle", "small", "birds" or "horned"`},
		{`"500 USD"`, `"500"`, `saves: "500": the currency is missing`},
		{`"35 AUM"`, `null`, `grazed: null is not text; what is grazed behind the fence in a year, such as "35 AUM"`},
	} {
		_, err := with(t, c.from, c.to)
		assert.ErrorContains(t, err, c.want)
	}
	for text, want := range map[string]string{
		`{"stock":`:             "stock: not JSON: the text ends before the object does",
		`{"note": "a"`:          "document: not JSON: the text ends before the object does",
		`[]`:                    "document: not a JSON object; an object with the keys stock, wired_as",
		"":                      "document: not a JSON object",
		"{\"note\": \"\xff\"}":  "document: not UTF-8 text",
		string(invented) + "{}": "document: something stands behind the end of the object",
		`{"stock": "small", "wired_as": "sheep", "land": "5 ac", "job": 5}`: "job: 5 is not an object; an object: the fence and the prices",
		`{"stock": "small", "wired_as": "sheep", "land": "5 ac"}`:           "job: missing",
	} {
		_, err := answer([]byte(text), units.US)
		assert.ErrorContains(t, err, want)
	}
	_, err := answer(append([]byte("\ufeff"), invented...), units.US)
	assert.NoError(t, err)
}

func TestRun(t *testing.T) {
	var out, told bytes.Buffer
	assert.Zero(t, run(nil, &out, &told), told.String())
	assert.Contains(t, out.String(), "together")
	file := filepath.Join(t.TempDir(), "fence.json")
	require.NoError(t, os.WriteFile(file, []byte(`{}`), 0o600))
	assert.Equal(t, 2, run([]string{"-file", file}, &out, &told))
	assert.Equal(t, "fence-bill: stock: missing; \"quiet cattle\", \"small\", \"birds\" or \"horned\"\n", told.String())
	told.Reset()
	assert.Equal(t, 2, run([]string{"-file", filepath.Join(t.TempDir(), "none")}, &out, &told))
	assert.Equal(t, 2, run([]string{"extra"}, &out, &told))
	assert.Equal(t, 2, run([]string{"-units", "cubits"}, &out, &told))
	assert.Zero(t, run([]string{"-units", "metric"}, &out, &told))
}
