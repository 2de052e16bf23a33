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
	"time"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/stretchr/testify/require"

	"example.org/soum/forage"
	"example.org/soum/grazing/farm"
	"example.org/soum/grazing/fit"
	"example.org/soum/grazing/study"
	"example.org/soum/herd"
	"example.org/soum/internal/decl"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// written is a form as the tests take it.
type written struct {
	file   string
	read   func([]byte) error
	test   string                    // of grazing, with the bad ones
	small  string                    // the constant there that the bad ones change
	bad    string                    // the function there that lists the changes
	fill   func(string) string       // what the tests put into the constant
	good   func(*testing.T) [][]byte // by their own making
	paths  []string                  // good ones among the files
	beyond map[string]string         // bad ones that no schema can refuse, with the reason
}

func asItIs(text string) string { return text }

var allWritten = []written{
	{
		file: "farm.schema.json", test: "farm/farm_test.go", small: "smallFarm", bad: "TestBadFarms", fill: asItIs, beyond: beyondFarms,
		read:  func(data []byte) error { _, err := farm.Read(data); return err },
		good:  firstFarms,
		paths: []string{"examples/season/data/farm.json", "examples/season/testdata/small.json", "examples/dry-year/data/farm.json"},
	},
	{
		file: "fit.schema.json", test: "fit/fit_test.go", small: "smallFitting", bad: "TestBadFittings", fill: asItIs, beyond: beyondFittings,
		read:  func(data []byte) error { _, err := fit.Read(data); return err },
		good:  fittings,
		paths: []string{"examples/herd-that-fits/farm.json"},
	},
	{
		file: "study.schema.json", test: "study/study_test.go", small: "smallStudy", bad: "TestBadStudies", fill: withRecord, beyond: beyondStudies,
		read: func(data []byte) error { _, err := study.Read(data); return err },
		good: studies,
	},
}

// withRecord puts two years of rain into a study.
func withRecord(text string) string {
	var months []string
	for year := 1999; year <= 2000; year++ {
		for month := 1; month <= 12; month++ {
			months = append(months, fmt.Sprintf(`{"year": %d, "month": %d, "rain": "%d mm"}`, year, month, 10+month))
		}
	}
	return strings.Replace(text, "RECORD", "["+strings.Join(months, ", ")+"]", 1)
}

// compiled reads a committed schema. The compiler holds it against the meta-schema of
// draft 2020-12 as it does so.
func compiled(t *testing.T, file string) (root string, schema *jsonschema.Schema) {
	t.Helper()
	root, document := committed(t, file)
	c := jsonschema.NewCompiler()
	c.DefaultDraft(jsonschema.Draft2020)
	c.AssertFormat()
	require.NoError(t, c.AddResource(file, document))
	schema, err := c.Compile(file)
	require.NoError(t, err)
	return root, schema
}

func committed(t *testing.T, file string) (root string, document any) {
	t.Helper()
	root, err := decl.Root()
	require.NoError(t, err)
	data, err := os.ReadFile(filepath.Join(root, "bindings", file))
	require.NoError(t, err)
	document, err = jsonschema.UnmarshalJSON(bytes.NewReader(data))
	require.NoError(t, err)
	return root, document
}

// TestSchemasAreSchemas holds the files against the meta-schema by itself, and the
// tests against the forms that there are.
func TestSchemasAreSchemas(t *testing.T) {
	meta, err := jsonschema.NewCompiler().Compile("https://json-schema.org/draft/2020-12/schema")
	require.NoError(t, err)
	require.Len(t, allWritten, len(forms))
	for i, f := range forms {
		require.Equal(t, f.file, allWritten[i].file)
		_, document := committed(t, f.file)
		require.NoError(t, meta.Validate(document))
	}
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

// TestSchemasAcceptGoodDocuments takes every document that the library takes: the
// examples', those of the tests, and those that are made here.
func TestSchemasAcceptGoodDocuments(t *testing.T) {
	for _, w := range allWritten {
		root, schema := compiled(t, w.file)
		good := map[string][]byte{}
		for _, name := range w.paths {
			data, err := os.ReadFile(filepath.Join(root, filepath.FromSlash(name)))
			require.NoError(t, err)
			good[name] = data
		}
		inTests := 0
		for _, text := range testTexts(t, root) {
			if text = w.fill(text); w.read([]byte(text)) == nil {
				inTests++
				good[fmt.Sprintf("grazing tests %d", inTests)] = []byte(text)
			}
		}
		require.NotZero(t, inTests)
		for i, data := range w.good(t) {
			good[fmt.Sprintf("made %d", i)] = data
		}
		for name, data := range good {
			require.NoError(t, w.read(data), "%s %s", w.file, name)
			require.NoError(t, says(schema, data), "%s %s", w.file, name)
		}
		require.Greater(t, len(good), 4)
		t.Logf("%s: %d good documents", w.file, len(good))
	}
}

// firstFarms are first farms, and farms with every row of the tables by name and
// written out, in both systems of units.
func firstFarms(t *testing.T) (all [][]byte) {
	today, _ := units.NewDate(2026, 5, 1)
	for _, p := range forage.Pastures() {
		for _, system := range []units.System{units.Metric, units.US} {
			holding, err := farm.First(farm.Answers{Today: today, Units: system, Area: 8 * units.Acre, Pasture: p.Name, Rain: 30 * units.RainInch,
				Stock: []farm.StockAnswer{{Class: "ewe", Head: 9}, {Class: "laying-hen", Head: 30}}})
			if err != nil {
				continue // a row that grows nothing then
			}
			data, err := holding.JSON(system)
			require.NoError(t, err)
			all = append(all, data)
			for i := range holding.Land {
				holding.Land[i].Pasture = forage.PastureRow{Row: &p}
			}
			for i := range holding.Groups {
				class, err := herd.ClassByName(holding.Groups[i].Class.Name)
				require.NoError(t, err)
				holding.Groups[i].Class = herd.ClassRow{Row: &class}
			}
			data, err = holding.JSON(system)
			require.NoError(t, err)
			all = append(all, data)
		}
	}
	return all
}

// bothWays writes a document in both systems of units.
func bothWays(t *testing.T, document interface {
	JSON(units.System) ([]byte, error)
}) (all [][]byte) {
	t.Helper()
	for _, system := range []units.System{units.Metric, units.US} {
		data, err := document.JSON(system)
		require.NoError(t, err)
		all = append(all, data)
	}
	return all
}

// fittings ask of every pasture and every class, by name and written out.
func fittings(t *testing.T) (all [][]byte) {
	margin, price := units.Money{}, units.FeedPrice{}
	require.NoError(t, margin.UnmarshalText([]byte("-8.50 USD")))
	require.NoError(t, price.UnmarshalText([]byte("180 USD/t")))
	for _, p := range forage.Pastures() {
		for _, c := range herd.Classes() {
			few, many := 0.5, 40.0
			f := fit.Question{
				Version: 1, Goal: fit.GoalMargin, Carry: 0.2,
				Land:   []fit.Land{{ID: "meadow", Area: 5 * units.Hectare, Pasture: forage.PastureRow{Name: p.Name}, Use: 1, Forbs: 0.25}},
				Stock:  []fit.Stock{{Class: herd.ClassRow{Name: c.Name}, Stage: c.Intake[0].Stage, Eats: fit.DietAnything, Least: 2, Most: &many, Margin: &margin, Months: []int{1, 12}}, {ID: "others", Class: herd.ClassRow{Row: &c}, Eats: fit.DietAnything, Most: &many, Margin: &margin}},
				Hay:    fit.Hay{Store: 500, Buy: 1000, Price: &price, Waste: 0.1},
				Ratios: []fit.Ratio{{Of: c.Name, To: []string{"others"}, Least: &few, Most: &many}},
				Needs:  []fit.Need{{ID: "wool", Least: 1, Gives: map[string]float64{"others": 0.5}}},
			}
			if _, err := herd.DietShare(c.Kind, herd.PlantsGrass, units.Whole); err == nil {
				f.Stock[0].Eats = fit.DietPrinted
			}
			all = append(all, bothWays(t, &f)...)
		}
	}
	return all
}

// studies sweep every input over a grid and over a hypercube.
func studies(t *testing.T) (all [][]byte) {
	s := study.Study{Version: 1, Draw: study.DrawGamma, Fit: rainfall.FitThom, Past: study.PastDrawn, Seasons: 10000, Seed: 1 << 40}
	today, _ := units.NewDate(2026, 5, 1)
	holding, err := farm.First(farm.Answers{Today: today, Area: 8 * units.Acre, Pasture: "mixed-pasture", Rain: 30 * units.RainInch, Stock: []farm.StockAnswer{{Class: "ewe", Head: 9}}})
	require.NoError(t, err)
	s.Farm = *holding
	for year := 1990; year < 1995; year++ {
		for month := time.January; month <= time.December; month++ {
			s.Record = append(s.Record, rainfall.MonthlyRain{Year: year, Month: month, Rain: units.RainDepth(int(month)+year-1980) * units.RainMillimetre})
		}
	}
	all = bothWays(t, &s)
	r := holding.Rotations[0]
	for _, input := range []study.Sweep{
		{Input: study.InputGrowth, Span: &units.Span[float64]{Low: 0.8, High: 1.2}},
		{Input: study.InputHead, Group: holding.Groups[0].ID, Span: &units.Span[float64]{Low: 1, High: 9}},
		{Input: study.InputHeadFactor, Group: holding.Groups[0].ID, Span: &units.Span[float64]{Low: 0.5, High: 1}},
		{Input: study.InputRest, Span: &units.Span[float64]{Low: 14, High: 40}},
		{Input: study.InputMoves, Span: &units.Span[float64]{Low: 1, High: 2}},
		{Input: study.InputRainFactor, Span: &units.Span[float64]{Low: 0, High: 10}},
		{Input: study.InputHay, Hay: &units.Span[units.FreshFeed]{Low: 0, High: 4 * units.FreshTonne}},
		{Input: study.InputLandFactor, Span: &units.Span[float64]{Low: 0.5, High: 10}},
		{Input: study.InputLandFactor, Land: holding.Land[0].ID, Span: &units.Span[float64]{Low: 0.5, High: 1.5}},
		{Input: study.InputIntakeFactor, Span: &units.Span[float64]{Low: 0.8, High: 1.2}},
		{Input: study.InputIntakeFactor, Group: holding.Groups[0].ID, Span: &units.Span[float64]{Low: 0.8, High: 10}},
		{Input: study.InputLeave, Heights: &units.Span[units.Height]{Low: 2 * units.HeightInch, High: 2.5 * units.HeightInch}},
		{Input: study.InputTurnIn, Heights: &units.Span[units.Height]{Low: r.TurnIn, High: r.TurnIn}},
	} {
		if input.Heights != nil && input.Heights.Low == 0 {
			input.Heights = &units.Span[units.Height]{Low: 9 * units.HeightInch, High: 9 * units.HeightInch}
		}
		for _, design := range []study.Design{study.DesignGrid, study.DesignHypercube} {
			s.Design, s.Points, input.Steps = design, 0, 2
			if design == study.DesignHypercube {
				s.Points, input.Steps = 3, 0
			}
			s.Inputs = []study.Sweep{input}
			all = append(all, bothWays(t, &s)...)
		}
	}
	return all
}

// beyondFarms are the bad farms that no schema of this kind can refuse, by the
// name of the file or the text put in, with the reason.
var beyondFarms = map[string]string{
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

// beyondFittings are the bad questions of FitStock that no schema can refuse.
var beyondFittings = map[string]string{
	`"use": "60 %", "forbs": "60 %", "browse": "41 %"`: summed,
	`["50 %", "0 %", "0 %", "0 %", "50 %",`:            summed,
	`"eats": "own", "diet": {"grass": {"low": "0 %", "high": "1 %"}, "forbs": {"low": "0 %", "high": "1 %"}, "browse": {"low": "0 %", "high": "1 %"}}`: summed,
	`"eats": "own", "diet": {"grass": {"low": "9 %", "high": "1 %"}, "forbs": {"low": "0 %", "high": "1 %"}, "browse": {"low": "0 %", "high": "1 %"}}`: compared,
	`"area": "2000000 ha"`: compared,
	`"yield": "2000 t/ha"`: compared,
	`"weight": "101 t"`:    compared,
	`"housing": [{"id": "barn", "room": 1, "takes": {"cows": 1}}]`: crossed,
	`"ratios": [{"of": "rams", "to": ["wethers"], "least": 1}]`:    crossed,
	`"ratios": [{"of": "wethers", "to": ["ewes"], "least": 1}]`:    crossed,
	`"ratios": [{"of": "wethers", "to": ["wethers"], "least": 1}]`: crossed,
}

// beyondStudies are the bad studies that no schema can refuse.
var beyondStudies = map[string]string{
	`"design": "grid", "inputs": [{"input": "rest", "span": {"low": 20, "high": 22}, "steps": 4}]`:                                                                                                      compared,
	`"design": "grid", "inputs": [{"input": "leave", "heights": {"low": "2 in", "high": "40 in"}, "steps": 2}]`:                                                                                         compared,
	`"design": "grid", "inputs": [{"input": "leave", "heights": {"low": "2 in", "high": "100.5 m"}, "steps": 2}]`:                                                                                       compared,
	`"design": "grid", "inputs": [{"input": "growth", "span": {"low": 2, "high": 1}, "steps": 2}]`:                                                                                                      compared,
	`"design": "grid", "inputs": [{"input": "growth", "span": {"low": 1, "high": 3.1}, "steps": 2}]`:                                                                                                    reckoned,
	`"design": "grid", "inputs": [{"input": "growth", "span": {"low": 1, "high": 2}, "steps": 40}, {"input": "rest", "span": {"low": 1, "high": 40}, "steps": 26}]`:                                     reckoned,
	`"design": "grid", "inputs": [{"input": "rest", "rotation": 1, "span": {"low": 1, "high": 2}, "steps": 2}]`:                                                                                         crossed,
	`"design": "grid", "inputs": [{"input": "head", "group": "cows", "span": {"low": 1, "high": 2}, "steps": 2}]`:                                                                                       crossed,
	`"design": "grid", "inputs": [{"input": "head", "group": "ewes", "span": {"low": 1, "high": 2}, "steps": 2}, {"input": "head factor", "group": "ewes", "span": {"low": 1, "high": 2}, "steps": 2}]`: crossed,
	`"design": "grid", "inputs": [{"input": "land factor", "land": "b", "span": {"low": 1, "high": 2}, "steps": 2}]`:                                                                                    crossed,
	`"design": "grid", "inputs": [{"input": "land factor", "span": {"low": 1, "high": 2}, "steps": 2}, {"input": "land factor", "land": "a", "span": {"low": 1, "high": 2}, "steps": 2}]`:               crossed,
	`"design": "grid", "inputs": [{"input": "hay", "hay": {"low": "3 t", "high": "2 t"}, "steps": 2}]`:                                                                                                  compared,
	`"design": "grid", "inputs": [{"input": "intake factor", "group": "cows", "span": {"low": 1, "high": 2}, "steps": 2}]`:                                                                              crossed,
	`"design": "grid", "inputs": [{"input": "intake factor", "group": "ewes", "span": {"low": 1, "high": 2}, "steps": 2}, {"input": "intake factor", "span": {"low": 1, "high": 2}, "steps": 2}]`:       crossed,
}

// The reasons why a schema cannot tell.
const (
	twice    = "a JSON parser keeps one of two like keys before a schema sees them"
	crossed  = "an id is compared with ids in other places"
	compared = "two dates, two numbers, or two quantities in whatever units, are compared"
	summed   = "shares are added up"
	reckoned = "it comes of the points that are laid over the inputs"
)

// TestSchemasRefuseBadDocuments takes the bad ones of the library's own tests, and the
// bad farms of the season example. All are refused but those that are beyond a schema.
func TestSchemasRefuseBadDocuments(t *testing.T) {
	for _, w := range allWritten {
		root, schema := compiled(t, w.file)
		bad := map[string][]byte{}
		if w.file == "farm.schema.json" {
			bad = badExamples(t, root)
		}
		small, changes := badChanges(t, root, w)
		for _, c := range changes {
			require.Equal(t, 1, strings.Count(small, c[0]), c[0])
			bad[c[1]] = []byte(w.fill(strings.Replace(small, c[0], c[1], 1)))
		}
		require.Greater(t, len(bad), 30)
		for name, data := range bad {
			err := w.read(data)
			require.Error(t, err, name)
			reason, beyond := w.beyond[name]
			switch refused := says(schema, data); {
			case refused == nil && !beyond:
				t.Errorf("%s: %s: the schema accepts what the library refuses: %v", w.file, name, err)
			case refused != nil && beyond:
				t.Errorf("%s: %s: the schema refuses it after all, which was thought to be beyond it: %s", w.file, name, reason)
			}
		}
		for name := range w.beyond {
			require.Contains(t, bad, name, "%s is not bad", name)
		}
		t.Logf("%s: %d bad documents: %d refused by the schema, %d by the library alone", w.file, len(bad), len(bad)-len(w.beyond), len(w.beyond))
	}
}

// badExamples are the bad farms of the season example.
func badExamples(t *testing.T, root string) map[string][]byte {
	t.Helper()
	paths, err := filepath.Glob(filepath.Join(root, "examples/season/testdata/bad/*.json"))
	require.NoError(t, err)
	bad := map[string][]byte{}
	for _, path := range paths {
		data, err := os.ReadFile(path)
		require.NoError(t, err)
		bad[strings.TrimSuffix(filepath.Base(path), ".json")] = data
	}
	require.Greater(t, len(bad), 20)
	return bad
}

// testTexts gives the texts of grazing's tests that may be farms.
func testTexts(t *testing.T, root string) (all []string) {
	t.Helper()
	paths, err := filepath.Glob(filepath.Join(root, "grazing", "*", "*_test.go"))
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

// badChanges gives the small document of grazing's tests and the changes that make
// it bad, as its test of bad ones lists them. What stands there without a path is
// made bad otherwise.
func badChanges(t *testing.T, root string, w written) (small string, changes [][2]string) {
	t.Helper()
	file, err := parser.ParseFile(token.NewFileSet(), filepath.Join(root, "grazing", filepath.FromSlash(w.test)), nil, parser.SkipObjectResolution)
	require.NoError(t, err)
	for _, d := range file.Decls {
		switch d := d.(type) {
		case *ast.GenDecl:
			for _, s := range d.Specs {
				if v, ok := s.(*ast.ValueSpec); ok && v.Names[0].Name == w.small {
					small = textOf(t, v.Values[0], nil)
				}
			}
		case *ast.FuncDecl:
			if d.Name.Name == w.bad {
				changes = rowsOf(t, d.Body)
			}
		}
	}
	return small, changes
}

// rowsOf gives the first two texts of the rows of a test's table.
func rowsOf(t *testing.T, body *ast.BlockStmt) (rows [][2]string) {
	t.Helper()
	helpers := map[string]*ast.FuncLit{}
	ast.Inspect(body, func(n ast.Node) bool {
		if set, ok := n.(*ast.AssignStmt); ok {
			if helper, ok := set.Rhs[0].(*ast.FuncLit); ok {
				helpers[set.Lhs[0].(*ast.Ident).Name] = helper
			}
		}
		row, ok := n.(*ast.CompositeLit)
		if !ok || row.Type != nil || len(row.Elts) != 4 {
			return true
		}
		if textOf(t, row.Elts[2], helpers) != "" {
			rows = append(rows, [2]string{textOf(t, row.Elts[0], helpers), textOf(t, row.Elts[1], helpers)})
		}
		return false
	})
	return rows
}

// textOf reckons a text of a test: written out, joined, or given to a helper that
// joins it to others.
func textOf(t *testing.T, e ast.Expr, helpers map[string]*ast.FuncLit) string {
	t.Helper()
	switch e := e.(type) {
	case *ast.BasicLit:
		text, err := strconv.Unquote(e.Value)
		require.NoError(t, err)
		return text
	case *ast.BinaryExpr:
		return textOf(t, e.X, helpers) + textOf(t, e.Y, helpers)
	case *ast.CallExpr:
		helper := helpers[e.Fun.(*ast.Ident).Name]
		joined := helper.Body.List[0].(*ast.ReturnStmt).Results[0].(*ast.BinaryExpr)
		before := joined.X.(*ast.BinaryExpr) // text in the middle, as in `a` + text + `b`
		return textOf(t, before.X, nil) + textOf(t, e.Args[0], helpers) + textOf(t, joined.Y, nil)
	}
	t.Fatalf("no text: %T", e)
	return ""
}

// TestSchemaOfTheSoilsAccount takes sound accounts of the soil's water and refuses
// those that want what is theirs.
func TestSchemaOfTheSoilsAccount(t *testing.T) {
	root, schema := compiled(t, "farm.schema.json")
	small, _ := badChanges(t, root, allWritten[0])
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
		_, err := farm.Read(data)
		require.Equal(t, c.sound, err == nil, "%s: %v", c.replacement, err)
		refused := says(schema, data)
		require.Equal(t, c.sound, refused == nil, "%s: %v", c.replacement, refused)
	}
}
