package door

import (
	"encoding/json"
	"math"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/soum/units"
)

// call calls and reads the answer.
func call(t testing.TB, name, in string) (map[string]any, int32) {
	t.Helper()
	out, status := Call(name, []byte(in))
	var got map[string]any
	require.NoError(t, json.Unmarshal(out, &got), string(out))
	return got, status
}

// TestCall reaches every kind of answer.
func TestCall(t *testing.T) {
	for _, c := range []struct {
		name, in string
		status   int32
		holds    string // a piece of the answer
	}{
		{"forage.Available", `{"height": "8 in", "residual": "3 in", "density": "250 lb/ac/in"}`, Good, `"value":0.1401`}, // 1,250 lb/ac
		{"forage.Available", `{"height": 0.1, "residual": 0.2, "density": 1}`, Impossible, `"kind":"domain"`},
		{"forage.Available", `{"height": "8 lb", "residual": 0.2, "density": 1}`, BadDocument, `"path":"height"`},
		{"forage.Available", `{"height": 0.1, "density": 1}`, BadDocument, `"path":"residual"`},
		{"forage.Available", `{"height": 0.1, "residual": 0.2, "density": 1, "colour": 3}`, BadDocument, `"path":"colour"`},
		{"forage.Available", `{"height": "NaN", "residual": 0.2, "density": 1}`, Impossible, `"argument":"height"`},
		{"forage.Available", `{"height": 0.1, "residual": 0.1, "density": "Infinity"}`, Impossible, `"value":"+Inf"`},
		{"forage.UsableShare", `{"stay": 9}`, Warned, `"kind":"range"`},
		{"rainfall.Passes", `{"rain": "27 in"}`, Warned, `"low":25,"high":30,"gap":true`}, // 25 and 30 are printed, nothing between
		{"forage.PastureByName", `{"name": "mixed-pasture"}`, Good, `"name":"mixed-pasture"`},
		{"forage.PastureByName", `{"name": "lawn"}`, BadDocument, `mixed-pasture`},
		{"forage.Nothing", `{}`, NoSuchName, `"kind":"name"`},
		{"herd.TotalUnits", `{"head": [30, 1], "each": [1.6, 1.7]}`, Good, `"value":49.7`}, // E6 of Penn State's steps
		{"herd.TotalUnits", `{"head": [30, null], "each": [1.6, 1.7]}`, Impossible, `domain`},
		{"herd.UnitDemand", `{"definition": "twenty six pounds"}`, Good, `"value":11.79`}, // 26 lb a day
		{"herd.UnitDemand", `{"definition": "a lot"}`, BadDocument, `no such word`},
		{"units.parse", `{"quantity": "Area", "text": "1 ac"}`, Good, `4046.8564224`},
		{"units.parse", `{"quantity": "Area", "text": "1 lb"}`, BadDocument, `m2, ha`},
		{"units.parse", `{"quantity": "Colour", "text": "1 lb"}`, BadDocument, `is no quantity`},
		{"units.show", `{"quantity": "Area", "value": 4046.8564224, "system": "US"}`, Good, `"1 ac"`},
		{"units.show", `{"quantity": "Area", "value": 4046.8564224}`, Good, `"4046.8564224 m2"`},
		{"formula.show", `{"function": "forage.Available", "system": "US", "arguments": {"height": "8 in", "residual": "3 in", "density": "250 lb/ac/in"}}`, Good,
			`available = (height − residual) × density = (8 in − 3 in) × 250 lb/ac/in = 1,250 lb/ac`},
		{"formula.show", `{"function": "grazing.StripLength", "system": "US", "arguments": {"area": "0.12 ac", "width": "64 ft"}}`, Good,
			`strip length = area ÷ width = 0.12 ac ÷ 64 ft × 43,560 ft²/ac = 81.7 ft`},
		{"farm.Plan", `{"document": {"version": 1}}`, BadDocument, `"path":"today"`},
		{"farm.Plan", `{"document": 3}`, BadDocument, `"path":"document"`},
		{"farm.Plan", strings.Repeat(`{"document":`, 10000) + `1` + strings.Repeat(`}`, 10000), BadDocument, `nested`},
		{"forage.Available", `{"height": 1, "height": 2, "residual": 0.2, "density": 1}`, BadDocument, `"message":"height: this key stands twice`},
		{"forage.Available", `{"heigth": 0.1, "colour": 3}`, BadDocument, `"path":"heigth","problem":"unknown argument, perhaps \"height\" is meant","allowed":"the arguments here are height, residual, density"`},
		{"forage.Available", `{"colour": 3, "heigth": 0.1}`, BadDocument, `"path":"colour"`},
		{"forage.Available", `{"height": 1e999, "residual": 0.2, "density": 1}`, BadDocument, `"value":"1e999","path":"height","problem":"is too large a number"`},
		{"forage.Available", `{"height": "8 lb", "residual": 0.2, "density": 1}`, BadDocument, `"value":"\"8 lb\"","path":"height","problem":"is no height: no unit \"lb\"","allowed":"a number and one of: m, mm, cm, ft, in"`},
		{"formula.show", `{"function": "forage.Available", "system": "US", "arguments": {"height": 1e999}}`, BadDocument, `"path":"arguments.height"`},
		{"formula.show", `{"function": "forage.Available", "system": "US", "arguments": {}}`, BadDocument, `"path":"arguments.height"`},
		{"formula.show", `{"function": "forage.Available", "system": "US", "arguments": 3}`, BadDocument, `"path":"arguments"`},
		{"formula.show", `{"function": "forage.Available", "system": "US"}`, BadDocument, `"path":"arguments"`},
		{"formula.show", `{"function": "forage.Available", "system": "imperial", "arguments": {}}`, BadDocument, `"path":"system","problem":"is no system: no such system","allowed":"one of: metric, US"`},
		{"units.show", `{"quantity": "Area", "value": "1 ac", "sytem": "US"}`, BadDocument, `perhaps \"system\" is meant`},
		{"units.show", `{"quantity": "Area", "value": null, "system": "US"}`, Good, `"NaN`},
		{"units.show", `{"quantity": "Area"}`, BadDocument, `"path":"value"`},
		{"units.parse", `{"quantity": "Area", "text": 1}`, BadDocument, `"path":"text"`},
		{"forage.PastureByName", `{"name": "lawn"}`, BadDocument, `"value":"\"lawn\"","problem":"no such row","allowed":"one of: `},
		{"herd.DueDate", `{"service": 20454, "animal": "cow", "by": "frandson"}`, BadDocument, `"path":"service"`},
		{"herd.DueDate", `{"service": "2026-01-01", "animal": "cow", "by": 1}`, BadDocument, `"path":"by"`},
		{"farm.Plan", `{"document": {"version": 1, "today": "2001-05-01", "land": [{"id": "a", "area": "Inf ac"}]}}`, BadDocument, `"path":"land[0].area","problem":"is not a finite number"`},
		{"farm.Plan", `{"document": {"version": 1, "today": "2001-05-01", "land": [{"id": "a", "area": 3}]}}`, BadDocument, `"path":"land[0].area","problem":"is a bare number"`},
		{"farm.Plan", `{"document": {"version": 1, "today": "2001-05-01", "today": "2001-05-01"}}`, BadDocument, `"path":"today"`},
		{"forage.Available", `[1]`, BadDocument, `object of arguments`},
		{"forage.Available", ``, BadDocument, `object of arguments`},
	} {
		out, status := Call(c.name, []byte(c.in))
		require.Equal(t, c.status, status, "%s %.80s: %.300s", c.name, c.in, out)
		require.Contains(t, string(out), c.holds, c.name)
		require.True(t, json.Valid(out))
	}
}

// TestFiguresNoFarmHas refuses what would overflow in a plan or a study, or has no end,
// and names its place.
func TestFiguresNoFarmHas(t *testing.T) {
	const farm = `{"version": 1, "today": "2002-06-01", "season": {"from": "2002-06-01", "to": "2002-07-15"},
		"land": [{"id": "lane", "width": "12 m", "length": "200 m", "pasture": "mixed-pasture", "height": "18 cm", "yield": "5000 kg/ha"}],
		"groups": [{"id": "goats", "class": "dairy-goat", "head": 6}],
		"rotations": [{"land": ["lane"], "groups": [{"group": "goats"}], "shortest_rest": "24 days"}]}`
	_, status := call(t, "farm.Plan", `{"document": `+farm+`}`)
	require.Equal(t, int32(Good), status)
	for _, c := range []struct{ old, new, path, problem string }{
		{"5000 kg/ha", "1e308 kg/m2", "land[0].yield", "is too large a number"},
		{"12 m", "4e-320 m", "land[0].width", "is too small a number"},
		{"12 m", "Inf m", "land[0].width", "is not a finite number"},
		{"200 m", "1e309 m", "land[0].length", "is no length: the number is too large"},
		{`: 6`, `: 1e999`, "groups[0].head", "is too large a number"},
		{"2002-06-01", "+5881580-06-30", "today", "is outside the years 0000 to 9999"},
		{"2002-07-15", "+10000-01-01", "season.to", "is outside the years 0000 to 9999"},
	} {
		spoilt := strings.ReplaceAll(farm, c.old, c.new)
		for name, in := range map[string]string{"farm.Plan": `{"document": ` + spoilt + `}`, "study.Run": `{"document": {"version": 1, "draw": "years", "past": "drawn", "seasons": 20, "farm": ` + spoilt + `}}`} {
			got, status := call(t, name, in)
			require.Equal(t, int32(BadDocument), status, "%v", got)
			wrong := got["error"].(map[string]any)
			require.Equal(t, c.path, strings.TrimPrefix(wrong["path"].(string), "farm."))
			require.Equal(t, c.problem, wrong["problem"])
		}
	}
	got, status := call(t, "farm.First", `{"a": {"today": "+5881580-05-01", "units": "metric", "area_m2": "2 ha", "pasture": "mixed-pasture", "rain_m": "700 mm", "stock": [{"class": "ewe", "head": 5}]}}`)
	require.Equal(t, int32(BadDocument), status)
	require.Equal(t, "a.today", got["error"].(map[string]any)["path"])
	got, status = call(t, "farm.First", `{"a": {"today": "2002-06-01", "units": "metric", "area_m2": "2 ha", "pasture": "mixed-pasture", "rain_m": 1e80, "stock": [{"class": "ewe", "head": 5}]}}`)
	require.Equal(t, int32(BadDocument), status, "a farm that no document holds: %v", got["error"])
	require.Equal(t, "rain.year", got["error"].(map[string]any)["path"], "%v", got)
}

// TestAnswersThatAreNotFinite are faults of the library: JSON has no word for them.
func TestAnswersThatAreNotFinite(t *testing.T) {
	specials["test.endless"] = func([]byte) (any, error) { return []float64{math.Inf(1)}, nil }
	defer delete(specials, "test.endless")
	got, status := call(t, "test.endless", `{}`)
	require.Equal(t, int32(Broken), status)
	require.Nil(t, got["value"])
	require.Equal(t, "broken", got["error"].(map[string]any)["kind"])
}

// TestWordsOfAFunction are refused by the function itself: the report names the argument
// and what it takes.
func TestWordsOfAFunction(t *testing.T) {
	out, status := reply(nil, &units.ParseError{
		Quantity: "herd.Kind", Text: "owl", Problem: "no figure is printed for it", Accepts: []string{"hen", "goose"}, Word: true,
		Function: "herd.Room", Argument: "kind", Index: 2,
	})
	require.Equal(t, int32(BadDocument), status)
	require.JSONEq(t, `{"value": null, "error": {"kind": "document", "function": "herd.Room", "argument": "kind", "index": 2,
		"message": "herd.Room: kind is \"owl\": no figure is printed for it; it takes one of: hen, goose",
		"path": "kind", "value": "\"owl\"", "problem": "no figure is printed for it", "allowed": "one of: hen, goose"}}`, string(out))
}

// TestCallPlansAFarm plans the example's farm through the door.
func TestCallPlansAFarm(t *testing.T) {
	farm, err := os.ReadFile("../../../examples/season/data/farm.json")
	require.NoError(t, err)
	got, status := call(t, "farm.Plan", `{"document": `+string(farm)+`}`)
	require.Equal(t, int32(Good), status)
	plan := got["value"].(map[string]any)
	require.NotEmpty(t, plan["moves"])
	require.Contains(t, plan["verdict"].(map[string]any)["english"], "From 2001-04-20 to 2001-10-31")
}

// TestEmptyPartsOfAPlanAreLists plans three days in which nobody is fed and
// nothing outgrows: a reader of the JSON finds lists of nothing, not null.
func TestEmptyPartsOfAPlanAreLists(t *testing.T) {
	got, status := call(t, "farm.Plan", `{"document": {"version": 1, "today": "2001-05-01",
		"season": {"from": "2001-05-01", "to": "2001-05-03"},
		"land": [{"id": "lane", "width": "20 m", "length": "3000 m", "pasture": "mixed-pasture", "height": "20 cm"}],
		"groups": [{"id": "ewes", "class": "ewe", "head": 8}],
		"rotations": [{"land": ["lane"], "groups": [{"group": "ewes"}], "shortest_rest": "21 days"}]}}`)
	require.Equal(t, int32(Good), status)
	plan := got["value"].(map[string]any)
	for key, value := range plan {
		require.NotNil(t, value, key)
	}
	require.Equal(t, []any{}, plan["feeding"])
	require.Equal(t, []any{}, plan["surplus"])
	for _, note := range plan["notes"].([]any) {
		require.NotNil(t, note.(map[string]any)["values"])
	}
}

// TestRowsCrossAsDocuments puts every pasture row and every stock class, as the
// door gives them, into a farm document, and plans the farm that FirstFarm gives.
func TestRowsCrossAsDocuments(t *testing.T) {
	classes, status := call(t, "herd.Classes", `{}`)
	require.Equal(t, int32(Good), status)
	pastures, status := call(t, "forage.Pastures", `{}`)
	require.Equal(t, int32(Good), status)
	for _, p := range pastures["value"].([]any) {
		for _, c := range classes["value"].([]any) {
			farm := map[string]any{
				"version": 1, "today": "2001-05-01", "season": map[string]any{"from": "2001-05-01", "to": "2001-05-20"},
				"land":      []any{map[string]any{"id": "a", "width": "30 m", "length": "100 m", "height": "12 cm", "pasture": p}},
				"groups":    []any{map[string]any{"id": "g", "head": 3, "class": c}},
				"rotations": []any{map[string]any{"land": []string{"a"}, "groups": []any{map[string]any{"group": "g"}}, "shortest_rest": "20 days"}},
			}
			in, err := json.Marshal(map[string]any{"document": farm})
			require.NoError(t, err)
			got, status := call(t, "farm.LandFor", string(in))
			require.Equal(t, int32(Good), status, "%v", got["error"])
		}
	}
	first, status := call(t, "farm.First", `{"a": {"today": "2026-05-01", "units": "US", "area_m2": "8 ac", "pasture": "mixed-pasture", "rain_m": "30 in", "stock": [{"class": "ewe", "head": 9}]}}`)
	require.Equal(t, int32(Good), status, "%v", first["error"])
	in, err := json.Marshal(map[string]any{"document": first["value"]})
	require.NoError(t, err)
	_, status = call(t, "farm.Plan", string(in))
	require.Equal(t, int32(Good), status)
}

// FuzzCall calls with any JSON at all: an answer that is JSON, never a fault.
func FuzzCall(f *testing.F) {
	f.Add("forage.Available", `{"height": "8 in", "residual": 3, "density": null}`)
	f.Add("grazing.SetStocked", `{"s": {"ceiling_kg_m2": 0.4}}`)
	f.Add("units.show", `{"quantity": "Area", "value": "Inf", "system": "US"}`)
	f.Add("formula.show", `{"function": "forage.Standing", "system": "metric", "arguments": {"height": 1, "density": "1 kg/m3"}}`)
	f.Add("rainfall.WaterBalance", `{"rain": [0.03, null], "demand": ["60 mm", 1e999], "bucket": {"holds": 0.1, "rule": "plain"}}`)
	f.Add("farm.LandFor", `{"document": {"version": 1, "today": "2001-05-01", "land": [{"id": "a", "width": "1e-30 m"}]}}`)
	f.Fuzz(func(t *testing.T, name, in string) {
		out, status := Call(name, []byte(in))
		require.True(t, json.Valid(out) && out[0] == '{', string(out))
		require.NotEqual(t, int32(Broken), status, string(out))
	})
}
