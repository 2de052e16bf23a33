package door

import (
	"encoding/json"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
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
		{"grazing.PlanSeason", `{"farm": {"version": 1}}`, BadDocument, `"path":"today"`},
		{"grazing.PlanSeason", `{"farm": 3}`, BadDocument, `a JSON object`},
		{"grazing.PlanSeason", strings.Repeat(`{"farm":`, 10000) + `1` + strings.Repeat(`}`, 10000), BadDocument, `nested`},
		{"forage.Available", `[1]`, BadDocument, `object of arguments`},
		{"forage.Available", ``, BadDocument, `object of arguments`},
	} {
		out, status := Call(c.name, []byte(c.in))
		require.Equal(t, c.status, status, "%s %.80s: %.300s", c.name, c.in, out)
		require.Contains(t, string(out), c.holds, c.name)
		require.True(t, json.Valid(out))
	}
}

// TestCallPlansAFarm plans the example's farm through the door.
func TestCallPlansAFarm(t *testing.T) {
	farm, err := os.ReadFile("../../../examples/season/data/farm.json")
	require.NoError(t, err)
	got, status := call(t, "grazing.PlanSeason", `{"farm": `+string(farm)+`}`)
	require.Equal(t, int32(Good), status)
	plan := got["value"].(map[string]any)
	require.NotEmpty(t, plan["moves"])
	require.Contains(t, plan["verdict"].(map[string]any)["english"], "From 2001-04-20 to 2001-10-31")
}

// TestEmptyPartsOfAPlanAreLists plans three days in which nobody is fed and
// nothing outgrows: a reader of the JSON finds lists of nothing, not null.
func TestEmptyPartsOfAPlanAreLists(t *testing.T) {
	got, status := call(t, "grazing.PlanSeason", `{"farm": {"version": 1, "today": "2001-05-01",
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
			in, err := json.Marshal(map[string]any{"farm": farm})
			require.NoError(t, err)
			got, status := call(t, "grazing.LandFor", string(in))
			require.Equal(t, int32(Good), status, "%v", got["error"])
		}
	}
	first, status := call(t, "grazing.FirstFarm", `{"a": {"today": "2026-05-01", "units": "US", "area_m2": "8 ac", "pasture": "mixed-pasture", "rain_m": "30 in", "stock": [{"class": "ewe", "head": 9}]}}`)
	require.Equal(t, int32(Good), status, "%v", first["error"])
	in, err := json.Marshal(map[string]any{"farm": first["value"]})
	require.NoError(t, err)
	_, status = call(t, "grazing.PlanSeason", string(in))
	require.Equal(t, int32(Good), status)
}

// FuzzCall calls with any JSON at all: an answer that is JSON, never a fault.
func FuzzCall(f *testing.F) {
	f.Add("forage.Available", `{"height": "8 in", "residual": 3, "density": null}`)
	f.Add("grazing.SetStocked", `{"s": {"ceiling_kg_m2": 0.4}}`)
	f.Fuzz(func(t *testing.T, name, in string) {
		out, status := Call(name, []byte(in))
		require.True(t, json.Valid(out), string(out))
		require.NotEqual(t, int32(Broken), status, string(out))
	})
}
