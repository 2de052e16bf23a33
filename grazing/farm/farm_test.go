package farm_test

import (
	"reflect"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/grazing/farm"
	"example.org/soum/units"
)

// smallFarm is a whole farm in few words, which the tests change.
const smallFarm = `{
  "version": 1, "today": "2001-05-01", "season": {"from": "2001-05-01", "to": "2001-08-31"},
  "land": [
    {"id": "long", "width": "20 m", "length": "300 m", "pasture": "mixed-pasture", "height": "20 cm"},
    {"id": "short", "width": "20 m", "length": "200 m", "pasture": "mixed-pasture", "height": "18 cm", "grazed": "2001-03-01"},
    {"id": "plot", "area": "0.2 ha", "pasture": "bluegrass-clover", "height": "15 cm"}
  ],
  "groups": [
    {"id": "milkers", "class": "dairy-ewe", "head": 8, "stage": "lactating"},
    {"id": "dry ewes", "class": "ewe", "head": 5},
    {"id": "ganders", "class": "goose", "head": 6}
  ],
  "rotations": [
    {"land": ["long", "short"], "groups": [{"group": "milkers"}, {"group": "dry ewes", "behind": "2 days"}], "leave": "8 cm", "turn_in": "15 cm", "shortest_rest": "21 days"},
    {"land": ["plot"], "groups": [{"group": "ganders"}], "leave": "4 cm", "turn_in": "10 cm", "shortest_rest": "14 days"}
  ],
  "feed": {"hay": "1 t", "dry_matter": "88 %", "waste": "10 %"},
  "note": "ours", "x-colour": {"any": ["thing", 1]}
}`

// changed gives the small farm with one text put in place of another.
func changed(t testing.TB, old, replacement string) string {
	t.Helper()
	require.Equal(t, 1, strings.Count(smallFarm, old), "%q must stand once in the small farm", old)
	return strings.Replace(smallFarm, old, replacement, 1)
}

// readSmall reads the small farm, changed.
func readSmall(t testing.TB, old, replacement string) *farm.Farm {
	t.Helper()
	holding, err := farm.Read([]byte(changed(t, old, replacement)))
	require.NoError(t, err)
	return holding
}

// TestBadFarms puts one thing wrong at a time: the error is one line and names
// the path, the value and what would be right.
func TestBadFarms(t *testing.T) {
	for _, c := range []struct{ old, bad, path, says string }{
		{`"version": 1, "today"`, `"today"`, "version", "missing"},
		{`"version": 1`, `"version": 2`, "version", "no known version"},
		{`"version": 1`, `"version": 1, "version": 1`, "version", "twice"},
		{`"today": "2001-05-01"`, `"today": "2001-02-30"`, "today", "no such day"},
		{`"to": "2001-08-31"`, `"to": "2001-04-01"`, "season.to", "before season.from"},
		{`"to": "2001-08-31"`, `"to": "2011-08-31"`, "season.to", "too far off"},
		{`"today": "2001-05-01"`, `"today": "2001-09-30"`, "season.to", "before today"},
		{`"id": "short"`, `"id": "long"`, "land[1].id", "twice"},
		{`"id": "short"`, `"id": ""`, "land[1].id", "empty"},
		{`"width": "20 m", "length": "300 m"`, `"width": "20 m"`, "land[0].length", "a length above 0"},
		{`"width": "20 m", "length": "300 m"`, `"length": "300 m"`, "land[0].width", "a length above 0"},
		{`"width": "20 m", "length": "300 m"`, `"width": 20, "length": "300 m"`, "land[0].width", "unit"},
		{`"width": "20 m", "length": "300 m"`, `"width": "20 lb", "length": "300 m"`, "land[0].width", "m, mm, cm, km"},
		{`"width": "20 m", "length": "300 m"`, `"width": "200 km", "length": "300 m"`, "land[0]", "larger than any farm"},
		{`"area": "0.2 ha"`, `"area": "0 ha"`, "land[2].area", "an area above 0"},
		{`"area": "0.2 ha"`, `"area": "0.2 ha", "width": "3 m", "length": "4 m"`, "land[2].area", "one or the other"},
		{`"area": "0.2 ha"`, `"aera": "0.2 ha"`, "land[2].aera", "area"},
		{`"height": "20 cm"`, `"height": "-2 cm"`, "land[0].height", "above 0"},
		{`"height": "20 cm"`, `"height": "2 m"`, "land[0].height", "ceiling"},
		{`"height": "20 cm"`, `"note": "unmeasured"`, "land[0].height", "today's height"},
		{`"height": "20 cm"`, `"stretches": [{"to": "299 m", "height": "20 cm"}]`, "land[0].stretches[0].to", "does not end"},
		{`"height": "20 cm"`, `"stretches": [{"to": "300 m", "height": "20 cm"}, {"to": "300 m", "height": "20 cm"}]`, "land[0].stretches[1].to", "beyond"},
		{`"height": "20 cm"`, `"height": "20 cm", "stretches": [{"to": "300 m", "height": "20 cm"}]`, "land[0].height", "stands beside"},
		{`"height": "15 cm"`, `"stretches": [{"to": "1 m", "height": "20 cm"}]`, "land[2].stretches", "whole"},
		{`"height": "20 cm"`, `"height": "20 cm", "legume": "120 %"`, "land[0].legume", "0 % to 100 %"},
		{`"height": "20 cm"`, `"height": "20 cm", "condition": "lush"`, "land[0].condition", "fair, good, excellent"},
		{`"pasture": "bluegrass-clover"`, `"pasture": "bluegras"`, "land[2].pasture", "bluegrass-clover"},
		{`"grazed": "2001-03-01"`, `"grazed": "2001-06-01"`, "land[1].grazed", "after today"},
		{`"head": 8`, `"head": -8`, "groups[0].head", "0 or more"},
		{`"head": 8`, `"head": "8"`, "groups[0].head", "number"},
		{`"head": 8`, `"head": null`, "groups[0].head", "null"},
		{`"head": 8, "stage": "lactating"`, `"head": 8, "stage": "laying"`, "groups[0].stage", "stage"},
		{`"class": "goose"`, `"class": "gosse"`, "groups[2].class", "goose"},
		{`"head": 5`, `"head": 5, "events": [{"date": "2001-06-01"}]`, "groups[1].events[0]", "changes nothing"},
		{`"head": 5`, `"head": 5, "events": [{"date": "2001-06-01", "head": -1}]`, "groups[1].events[0].head", "0 or more"},
		{`"leave": "8 cm"`, `"leave": "16 cm"`, "rotations[0].leave", "not below the turn-in"},
		{`"turn_in": "15 cm"`, `"turn_in": "5 m"`, "rotations[0].turn_in", "ceiling"},
		{`"land": ["long", "short"]`, `"land": ["long", "shrot"]`, "rotations[0].land[1]", "the id of no land"},
		{`"land": ["plot"]`, `"land": ["plot", "long"]`, "rotations[1].land[1]", "already"},
		{`"land": ["long", "short"]`, `"land": ["long", "short", "long"]`, "rotations[0].land[2]", "rotations[0].land[0] already"},
		{`"behind": "2 days"`, `"behind": "1.5 days"`, "rotations[0].groups[1].behind", "whole days"},
		{`{"group": "milkers"}`, `{"group": "milkers", "behind": "1 day"}`, "rotations[0].groups[0].behind", "leads"},
		{`"group": "ganders"`, `"group": "milkers"`, "rotations[1].groups[0].group", "already"},
		{`"shortest_rest": "21 days"`, `"shortest_rest": "0 days"`, "rotations[0].shortest_rest", "1 day or more"},
		{`"shortest_rest": "21 days"`, `"shortest_rest": "21 days", "moves_a_day": 100`, "rotations[0].moves_a_day", "1 to 24"},
		{`"waste": "10 %"`, `"waste": "100 %"`, "feed.waste", "below 100 %"},
		{`"waste": "10 %"`, `"waste": 0.1`, "feed.waste", "unit"},
		{`"hay": "1 t"`, `"hay": "1 ton"`, "feed.hay", "short ton"},
		{`"hay": "1 t"`, `"hay": "1,000 kg"`, "feed.hay", "without commas"},
		{`"note": "ours"`, `"rain": {"normal": ["1 mm"]}`, "rain.normal", "twelve"},
		{`"note": "ours"`, `"rain": {"months": {"2001-13": "1 mm"}}`, "rain.months.2001-13", "no month"},
		{`"note": "ours"`, `"cuts": [{"land": "long", "date": "2002-05-01", "stubble": "5 cm"}]`, "cuts[0].date", "outside the plan"},
		{`"note": "ours"`, `"cuts": [{"land": "long", "date": "2001-06-01", "stubble": "5 cm", "from": "10 m", "to": "5 m"}]`, "cuts[0].to", "no piece"},
		{`"note": "ours"`, `"own_factor": {"growth": "0 %", "why": "hope"}`, "own_factor.growth", "above 0 %"},
		{`"note": "ours"`, `"prices": {"hay": "180 dollars/t"}`, "prices.hay", "currency"},
		{`"note": "ours"`, `"water": {"supply": "-1 L/day"}`, "water.supply", "negative"},
		{`"note": "ours"`, `"fence": {"roll": "-1 m"}`, "fence.roll", "negative"},
	} {
		_, err := farm.Read([]byte(changed(t, c.old, c.bad)))
		if !assert.Error(t, err, "%s", c.bad) {
			continue
		}
		assert.Contains(t, err.Error(), c.path+":", "%s", c.bad)
		assert.Contains(t, err.Error(), c.says, "%s", c.bad)
		assert.NotContains(t, err.Error(), "\n", "%s", c.bad)
	}
}

// TestBadRows refuses rows of the user's own that cannot make a season.
func TestBadRows(t *testing.T) {
	pasture := strings.ReplaceAll(handPasture, "\n", " ")
	for _, c := range []struct{ old, bad, says string }{
		{`"24 %", "24 %"`, `"24 %", "50 %"`, "90 % to 110 %"},
		{`["0 %", "0 %"`, `["0 %"`, "12"},
		{`"leave": {"low": "12 cm", "high": "12 cm"}`, `"leave": {"low": "12 cm", "high": "10 cm"}`, "low above 0"},
		{`"ceiling": "40 cm", `, ``, "ceiling"},
		{`"key_months": [4, 5]`, `"key_months": [4, 13]`, "1 to 12"},
		{`"key_months": [4, 5]`, `"key_months": [4, 5, 4]`, "each month once"},
		{`"key_months": [4, 5]`, `"key_months": [11, 1, 12]`, "goes round the year more than once"},
		{`"yield_high": "1.15 kg/m2"`, `"yield_high": "-1 kg/m2"`, "yields above 0"},
	} {
		require.Equal(t, 1, strings.Count(pasture, c.old), c.old)
		_, err := farm.Read([]byte(changed(t, `"pasture": "bluegrass-clover"`, `"pasture": `+strings.Replace(pasture, c.old, c.bad, 1))))
		if assert.Error(t, err, c.bad) {
			assert.Contains(t, err.Error(), c.says, c.bad)
			assert.Contains(t, err.Error(), "land[2]", c.bad)
		}
	}
	for _, c := range []struct{ class, says string }{
		{`{"name": "x", "kind": "sheep", "weight": "50 kg", "intake": [], "pasture": {"low": "0 %", "high": "1 %"}}`, "intake"},
		{`{"name": "x", "weight": "50 kg", "intake": [{"stage": "dry", "share": {"low": "1 %", "high": "2 %"}}], "pasture": {"low": "0 %", "high": "1 %"}}`, "kind"},
		{`{"name": "x", "kind": "sheep", "intake": [{"stage": "dry", "share": {"low": "1 %", "high": "2 %"}}], "pasture": {"low": "0 %", "high": "1 %"}}`, "weight"},
		{`{"name": "x", "kind": "sheep", "weight": "50 kg", "intake": [{"stage": "dry", "share": {"low": "3 %", "high": "2 %"}}], "pasture": {"low": "0 %", "high": "1 %"}}`, "share"},
	} {
		_, err := farm.Read([]byte(changed(t, `"class": "goose"`, `"class": `+c.class)))
		if assert.Error(t, err, c.class) {
			assert.Contains(t, err.Error(), "groups[2].class", c.class)
			assert.Contains(t, err.Error(), c.says, c.class)
		}
	}
}

// TestFarmComesBackAsItWas writes a farm in both systems and reads it back: the
// same farm to a thousand-millionth, notes and keys of the user's own included.
func TestFarmComesBackAsItWas(t *testing.T) {
	for _, document := range []string{smallFarm, strings.ReplaceAll(handFarm, "PASTURE", handPasture), strings.Replace(smallFarm, `"note": "ours"`, account, 1)} {
		holding, err := farm.Read([]byte(document))
		require.NoError(t, err)
		for _, system := range []units.System{units.Metric, units.US} {
			written, err := holding.JSON(system)
			require.NoError(t, err)
			again, err := farm.Read(written)
			require.NoError(t, err, string(written))
			isFloat := func(a, b any) bool {
				return a != nil && b != nil && reflect.TypeOf(a).Kind() == reflect.Float64 && reflect.TypeOf(b).Kind() == reflect.Float64
			}
			equal := cmp.FilterValues(isFloat, cmp.Comparer(func(a, b any) bool {
				x, y := reflect.ValueOf(a).Float(), reflect.ValueOf(b).Float()
				return near(x, y, 2e-9*(x+y))
			}))
			require.Empty(t, cmp.Diff(holding, again, equal, cmp.Exporter(func(reflect.Type) bool { return true })), string(written))
		}
	}
}

// FuzzRead reads any bytes at all: an error or a farm that plans.
func FuzzRead(f *testing.F) {
	f.Add([]byte(smallFarm))
	f.Add([]byte(strings.ReplaceAll(handFarm, "PASTURE", handPasture)))
	f.Add([]byte(`{"version": 1e999}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		holding, err := farm.Read(data)
		if err != nil {
			require.NotContains(t, err.Error(), "\n")
			return
		}
		if holding.Season.To.Sub(holding.Today) > 400 {
			return // sound, only long to plan
		}
		_, _ = holding.Plan()
	})
}
