package main

import (
	"bytes"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/stretchr/testify/require"

	"example.org/soum/forage"
	"example.org/soum/grazing"
	"example.org/soum/herd"
	"example.org/soum/internal/decl"
	"example.org/soum/internal/document"
	"example.org/soum/units"
)

// compiled reads the committed schema. The compiler holds it against the
// meta-schema of draft 2020-12 as it does so.
func compiled(t *testing.T) (root string, schema *jsonschema.Schema) {
	t.Helper()
	root, err := decl.Root()
	require.NoError(t, err)
	data, err := os.ReadFile(filepath.Join(root, "bindings", "farm.schema.json"))
	require.NoError(t, err)
	document, err := jsonschema.UnmarshalJSON(bytes.NewReader(data))
	require.NoError(t, err)
	c := jsonschema.NewCompiler()
	c.DefaultDraft(jsonschema.Draft2020)
	c.AssertFormat()
	require.NoError(t, c.AddResource("farm.schema.json", document))
	schema, err = c.Compile("farm.schema.json")
	require.NoError(t, err)
	return root, schema
}

// TestSchemaIsASchema holds the file against the meta-schema by itself.
func TestSchemaIsASchema(t *testing.T) {
	root, _ := compiled(t)
	data, err := os.ReadFile(filepath.Join(root, "bindings", "farm.schema.json"))
	require.NoError(t, err)
	document, err := jsonschema.UnmarshalJSON(bytes.NewReader(data))
	require.NoError(t, err)
	meta, err := jsonschema.NewCompiler().Compile("https://json-schema.org/draft/2020-12/schema")
	require.NoError(t, err)
	require.NoError(t, meta.Validate(document))
	require.Error(t, meta.Validate(map[string]any{"type": "farm"})) // the meta-schema does refuse
}

// says gives what the schema says of a document, nil for nothing.
func says(schema *jsonschema.Schema, text []byte) error {
	document, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	if err != nil {
		return err
	}
	return schema.Validate(document)
}

// TestSchemaAcceptsGoodFarms takes every farm that the library takes: the
// examples', those of the tests, a first farm, and farms with every row of the
// tables by name and written out, in both systems of units.
func TestSchemaAcceptsGoodFarms(t *testing.T) {
	root, schema := compiled(t)
	good := map[string][]byte{}
	for _, name := range []string{"examples/season/data/farm.json", "examples/season/testdata/small.json"} {
		data, err := os.ReadFile(filepath.Join(root, filepath.FromSlash(name)))
		require.NoError(t, err)
		good[name] = data
	}
	inTests := 0
	for _, text := range testTexts(t, root) {
		if _, err := grazing.ReadFarm([]byte(text)); err == nil {
			inTests++
			good[fmt.Sprintf("grazing tests %d", inTests)] = []byte(text)
		}
	}
	require.NotZero(t, inTests)
	today, _ := units.NewDate(2026, 5, 1)
	for _, p := range forage.Pastures() {
		for _, system := range []units.System{units.Metric, units.US} {
			farm, err := grazing.FirstFarm(grazing.Answers{Today: today, Units: system, Area: 8 * units.Acre, Pasture: p.Name, Rain: 30 * units.RainInch,
				Stock: []grazing.StockAnswer{{Class: "ewe", Head: 9}, {Class: "laying-hen", Head: 30}}})
			if err != nil {
				continue // a row that grows nothing then
			}
			data, err := farm.JSON(system)
			require.NoError(t, err)
			good["first farm on "+p.Name+" "+system.String()] = data
			for i := range farm.Land {
				farm.Land[i].Pasture = document.RowOr[forage.Pasture]{Row: &p}
			}
			for i := range farm.Groups {
				class, err := herd.ClassByName(farm.Groups[i].Class.Name)
				require.NoError(t, err)
				farm.Groups[i].Class = document.RowOr[herd.Class]{Row: &class}
			}
			data, err = farm.JSON(system)
			require.NoError(t, err)
			good["own rows of "+p.Name+" "+system.String()] = data
		}
	}
	for name, data := range good {
		_, err := grazing.ReadFarm(data)
		require.NoError(t, err, name)
		require.NoError(t, says(schema, data), name)
	}
	require.Greater(t, len(good), 10)
}

// beyondSchema are the bad farms that no schema of this kind can refuse, by the
// name of the file or the text put in, with the reason.
var beyondSchema = map[string]string{
	"duplicate-key":                        twice,
	`"version": 1, "version": 1`:           twice,
	"too-deep":                             "how deep a key of the user's own is nested is not counted",
	"one-id-twice":                         crossed,
	"unknown-land":                         crossed,
	"group-twice":                          crossed,
	`"id": "long"`:                         crossed,
	`"land": ["long", "shrot"]`:            crossed,
	`"land": ["plot", "long"]`:             crossed,
	`"group": "milkers"`:                   crossed,
	"season-backwards":                     compared,
	"height-above-ceiling":                 compared,
	"residual-above-turn-in":               compared,
	"turn-in-above-ceiling":                compared,
	"stretches-end-early":                  compared,
	`"to": "2001-04-01"`:                   compared,
	`"to": "2011-08-31"`:                   compared,
	`"today": "2001-09-30"`:                compared,
	`"grazed": "2001-06-01"`:               compared,
	`"height": "2 m"`:                      compared,
	`"leave": "16 cm"`:                     compared,
	`"turn_in": "5 m"`:                     compared,
	`"width": "200 km", "length": "300 m"`: compared,
	`"stretches": [{"to": "299 m", "height": "20 cm"}]`:                                                compared,
	`"stretches": [{"to": "300 m", "height": "20 cm"}, {"to": "300 m", "height": "20 cm"}]`:            compared,
	`"cuts": [{"land": "long", "date": "2002-05-01", "stubble": "5 cm"}]`:                              compared,
	`"cuts": [{"land": "long", "date": "2001-06-01", "stubble": "5 cm", "from": "10 m", "to": "5 m"}]`: compared,
}

// The reasons why a schema cannot tell.
const (
	twice    = "a JSON parser keeps one of two like keys before a schema sees them"
	crossed  = "an id is compared with ids in other places"
	compared = "two dates, or two quantities in whatever units, are compared"
)

// TestSchemaRefusesBadFarms takes the bad farms of the season example and those
// of the farm's own tests. All are refused but those of beyondSchema.
func TestSchemaRefusesBadFarms(t *testing.T) {
	root, schema := compiled(t)
	bad := map[string][]byte{}
	paths, err := filepath.Glob(filepath.Join(root, "examples/season/testdata/bad/*.json"))
	require.NoError(t, err)
	for _, path := range paths {
		data, err := os.ReadFile(path)
		require.NoError(t, err)
		bad[strings.TrimSuffix(filepath.Base(path), ".json")] = data
	}
	small, changes := badChanges(t, root)
	for _, c := range changes {
		require.Equal(t, 1, strings.Count(small, c[0]), c[0])
		bad[c[1]] = []byte(strings.Replace(small, c[0], c[1], 1))
	}
	require.Greater(t, len(bad), 80)
	seen := map[string]bool{}
	for name, data := range bad {
		_, err := grazing.ReadFarm(data)
		require.Error(t, err, name)
		reason, beyond := beyondSchema[name]
		seen[name] = true
		switch refused := says(schema, data); {
		case refused == nil && !beyond:
			t.Errorf("%s: the schema accepts what the library refuses: %v", name, err)
		case refused != nil && beyond:
			t.Errorf("%s: the schema refuses it after all, which was thought to be beyond it: %s", name, reason)
		}
	}
	for name := range beyondSchema {
		require.True(t, seen[name], "%s is no bad farm", name)
	}
	t.Logf("%d bad farms: %d refused by the schema, %d by the library alone", len(bad), len(bad)-len(beyondSchema), len(beyondSchema))
}

// testTexts gives the texts of grazing's tests that may be farms.
func testTexts(t *testing.T, root string) (all []string) {
	t.Helper()
	paths, err := filepath.Glob(filepath.Join(root, "grazing", "*_test.go"))
	require.NoError(t, err)
	for _, path := range paths {
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.SkipObjectResolution)
		require.NoError(t, err)
		ast.Inspect(file, func(n ast.Node) bool {
			if lit, ok := n.(*ast.BasicLit); ok && lit.Kind == token.STRING && strings.HasPrefix(lit.Value, "`{") {
				text, err := strconv.Unquote(lit.Value)
				require.NoError(t, err)
				all = append(all, text)
			}
			return true
		})
	}
	return all
}

// badChanges gives the small farm of grazing's tests and the changes that make
// it bad, as its TestBadFarms lists them.
func badChanges(t *testing.T, root string) (small string, changes [][2]string) {
	t.Helper()
	file, err := parser.ParseFile(token.NewFileSet(), filepath.Join(root, "grazing", "farm_test.go"), nil, parser.SkipObjectResolution)
	require.NoError(t, err)
	for _, d := range file.Decls {
		switch d := d.(type) {
		case *ast.GenDecl:
			for _, s := range d.Specs {
				if v, ok := s.(*ast.ValueSpec); ok && v.Names[0].Name == "smallFarm" {
					small, err = strconv.Unquote(v.Values[0].(*ast.BasicLit).Value)
					require.NoError(t, err)
				}
			}
		case *ast.FuncDecl:
			if d.Name.Name != "TestBadFarms" {
				continue
			}
			ast.Inspect(d.Body, func(n ast.Node) bool {
				row, ok := n.(*ast.CompositeLit)
				if !ok || row.Type != nil || len(row.Elts) < 2 {
					return true
				}
				var texts [2]string
				for i := range texts {
					texts[i], err = strconv.Unquote(row.Elts[i].(*ast.BasicLit).Value)
					require.NoError(t, err)
				}
				changes = append(changes, texts)
				return false
			})
		}
	}
	return small, changes
}

// TestSchemaOfTheSoilsAccount takes sound accounts of the soil's water and refuses
// those that want what is theirs.
func TestSchemaOfTheSoilsAccount(t *testing.T) {
	root, schema := compiled(t)
	small, _ := badChanges(t, root)
	months := "[" + strings.TrimSuffix(strings.Repeat(`"40 mm", `, 12), ", ") + "]"
	account := `"rain": {"normal": ` + months + `, "balance": {"reference": ` + months + `, "coefficient": 1, "store": "80 mm", "start": "0 %", "irrigation": {"2001-05": "1 mm"}}}`
	for _, c := range []struct {
		old, replacement string
		sound            bool
	}{
		{`"coefficient": 1`, `"coefficient": 1`, true},
		{`"coefficient": 1`, `"crop": "turf-cool", "rule": "exponential"`, true},
		{`"store": "80 mm"`, `"soil": "loam", "by": "california", "roots": "2 ft"`, true},
		{`"normal": ` + months + `, `, ``, false},
		{`"reference": ` + months, `"reference": ["1 mm"]`, false},
		{`"reference": ` + months + `, `, ``, false},
		{`"coefficient": 1, `, ``, false},
		{`"coefficient": 1`, `"coefficient": 2.5`, false},
		{`"coefficient": 1`, `"coefficient": 1, "crop": "turf-cool"`, false},
		{`"coefficient": 1`, `"coefficient": 1, "rule": "stress"`, false},
		{`"store": "80 mm"`, `"soil": "loam", "roots": "2 ft"`, false},
		{`"store": "80 mm"`, `"store": "80 mm", "roots": "2 ft"`, false},
		{`"store": "80 mm", `, ``, false},
		{`"start": "0 %"`, `"start": "120 %"`, false},
		{`"2001-05": "1 mm"`, `"2001-13": "1 mm"`, false},
	} {
		require.Equal(t, 1, strings.Count(account, c.old), c.old)
		data := []byte(strings.Replace(small, `"note": "ours"`, strings.Replace(account, c.old, c.replacement, 1), 1))
		_, err := grazing.ReadFarm(data)
		require.Equal(t, c.sound, err == nil, "%s: %v", c.replacement, err)
		refused := says(schema, data)
		require.Equal(t, c.sound, refused == nil, "%s: %v", c.replacement, refused)
	}
}
