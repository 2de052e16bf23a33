package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"math/rand/v2"
	"path/filepath"
	"reflect"
	"strings"

	"example.org/soum/bindings/internal/door"
	"example.org/soum/internal/check"
	"example.org/soum/internal/decl"
	"example.org/soum/internal/functions"
	"example.org/soum/units"
)

// table is what checks.jsonl says once, in a line before those that follow from it.
type table struct {
	Table  string `json:"table"`  // its file in the module, or what it is
	Source string `json:"source"` // where its values are printed
	lines  []line
}

// line is one line of checks.jsonl: a call and what it must give.
type line struct {
	Function  string          `json:"function"`       // as in "forage.Available"; "units.parse" reads text
	Arguments json.RawMessage `json:"arguments"`      // by name, in base units; words as text
	Value     any             `json:"value"`          // as printed, in base units; a word; null for none
	Tolerance float64         `json:"tolerance"`      // of value, absolute
	Exact     any             `json:"exact"`          // the Go library's own result, for comparing languages
	Error     string          `json:"error"`          // "", "range …" or "domain …" with the argument's name
	Origin    string          `json:"origin"`         // how the value was come by, see origins
	Note      string          `json:"note,omitempty"` // what the table says of the row
}

// origins tells for each mark of a printed table what a value is worth.
var origins = map[string]string{
	"A": "printed", "B": "printed", "C": "independent", "D": "arithmetic",
	"M": "memory", "arithmetic": "arithmetic", "practice": "practice",
}

// agreement is how near the languages must come to one another, relative.
const agreement = 1e-12

// allLines writes checks.jsonl: the printed tables, then for every formula
// points of our own in range and beyond each limit, then calls with lists.
func allLines(root string) ([]byte, error) {
	var all []table
	for _, name := range decl.Packages() {
		paths, err := filepath.Glob(filepath.Join(root, name, "testdata", "*.csv"))
		if err != nil {
			return nil, err
		}
		for _, path := range paths {
			printed, err := readTable(root, path)
			if err != nil {
				return nil, err
			}
			all = append(all, printed)
		}
	}
	own := table{Table: "points of our own", Source: "the Go library, to hold the languages together"}
	for _, name := range decl.Packages()[1:] {
		p, err := decl.Read(root, name)
		if err != nil {
			return nil, err
		}
		for i := range p.Functions {
			if f := &p.Functions[i]; f.IsFormula() {
				lines, err := ownLines(f)
				if err != nil {
					return nil, err
				}
				own.lines = append(own.lines, lines...)
			}
		}
	}
	lists, err := listLines()
	if err != nil {
		return nil, err
	}
	return encoded(append(all, own, table{Table: "calls with lists", Source: "the sum in the note", lines: lists}))
}

// encoded writes tables, each with a line of its own before its lines.
func encoded(all []table) ([]byte, error) {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	for _, t := range all {
		if len(t.lines) == 0 {
			continue
		}
		if err := e.Encode(t); err != nil {
			return nil, fmt.Errorf("%s: %w", t.Table, err)
		}
		for _, l := range t.lines {
			if err := e.Encode(l); err != nil {
				return nil, fmt.Errorf("%s: %s: %w", t.Table, l.Function, err)
			}
		}
	}
	return b.Bytes(), nil
}

// readTable reads a printed table; one without lines for a file that is none.
func readTable(root, path string) (table, error) {
	printed, err := check.ReadTable(path)
	if err != nil || printed == nil || !printed.Crosses() {
		return table{}, err
	}
	name, err := filepath.Rel(root, path)
	if err != nil {
		return table{}, err
	}
	t := table{Table: filepath.ToSlash(name), Source: printed.Source}
	for i := range printed.Len() {
		l, err := tableLine(printed, i)
		if err != nil {
			return table{}, fmt.Errorf("%s, row %d: %w", path, i+1, err)
		}
		t.lines = append(t.lines, l)
	}
	return t, nil
}

func tableLine(table *check.Table, i int) (line, error) {
	values, err := table.Arguments(i)
	if err != nil {
		return line{}, err
	}
	want, err := table.Want(i)
	if err != nil {
		return line{}, err
	}
	function := functions.ByName(table.Function)
	l := line{Function: function.Name, Error: table.Error(i), Origin: origins[table.Mark(i)], Note: table.Note(i)}
	l.Exact = number(reflect.ValueOf(function.Call).Call(values)[0])
	switch {
	case want.Word:
		l.Value = want.Printed
	default:
		l.Value = finite(want.Value * want.Factor)
		if l.Value != nil {
			l.Tolerance = want.Tolerance * want.Factor
		}
	}
	l.Arguments, err = reading(function, values)
	if err != nil || l.Arguments != nil {
		l.Function = "units.parse"
		return l, err
	}
	l.Arguments, err = named(function.Parameters, values)
	return l, err
}

// reading gives the arguments of units.parse for a table of package units, all
// of which read a quantity from text or from a number of degrees.
func reading(function *functions.Function, values []reflect.Value) (json.RawMessage, error) {
	quantity, parses := strings.CutPrefix(function.Name, "units.Parse")
	switch {
	case parses:
	case function.Name == "units.Celsius" || function.Name == "units.Fahrenheit":
		quantity = "Temperature"
		degree := strings.TrimPrefix(function.Name, "units.")[:1]
		values = []reflect.Value{reflect.ValueOf(fmt.Sprintf("%v °%s", values[0].Float(), degree))}
	case strings.HasPrefix(function.Name, "units."):
		return nil, fmt.Errorf("no binding calls %s", function.Name)
	default:
		return nil, nil
	}
	return named([]string{"quantity", "text"}, []reflect.Value{reflect.ValueOf(quantity), values[0]})
}

// named writes arguments as an object, in the order of the parameters.
func named(names []string, values []reflect.Value) (json.RawMessage, error) {
	var b bytes.Buffer
	for i, name := range names {
		text, err := json.Marshal(values[i].Interface())
		if err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		fmt.Fprintf(&b, ",%q:%s", name, text)
	}
	return json.RawMessage("{" + strings.TrimPrefix(b.String(), ",") + "}"), nil
}

// number gives a result for JSON: a word as text, null for NaN.
func number(v reflect.Value) any {
	if v.Kind() == reflect.Float64 {
		return finite(v.Float())
	}
	return fmt.Sprint(v.Interface())
}

func finite(v float64) any {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return nil
	}
	return v
}

// ownLines gives points of a formula that no print has, to hold the languages
// together: two within all limits, and one beyond each limit of each argument.
func ownLines(f *decl.Function) ([]line, error) {
	sampler := check.NewSampler(f, rand.New(rand.NewPCG(3, uint64(len(f.Full())))))
	var formula units.Formula
	for _, one := range functions.Formulas() {
		if one.Name == f.Full() {
			formula = one
		}
	}
	var points [][]float64
	for range 2 {
		points = append(points, sampler.Sample())
	}
	for i := range formula.Arguments {
		for _, v := range beyond(&formula.Arguments[i]) {
			point := sampler.Sample()
			point[i] = v
			points = append(points, point)
		}
	}
	var all []line
	for _, point := range points {
		l, err := ownLine(&formula, sampler, point)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", f.Full(), err)
		}
		all = append(all, l)
	}
	return all, nil
}

// beyond gives values of an argument outside each of its limits.
func beyond(a *units.Argument) []float64 {
	if a.Words != nil {
		return nil // a word that is none is refused before it reaches the formula
	}
	var all []float64
	for _, limits := range []*units.Limits{&a.Domain, &a.Range} {
		if limits == &a.Range && limits.Source == "" {
			continue
		}
		if !math.IsInf(limits.Low, 0) && limits.LowOf < 0 {
			all = append(all, limits.Low-a.Factor*(1+math.Abs(limits.Low/a.Factor))/8)
		}
		if !math.IsInf(limits.High, 0) && limits.HighOf < 0 {
			all = append(all, limits.High+a.Factor*(1+math.Abs(limits.High/a.Factor))/8)
		}
	}
	return all
}

// ownLine calls the formula at a point.
func ownLine(formula *units.Formula, sampler *check.Sampler, point []float64) (line, error) {
	value, err := sampler.Call(point)
	l := line{Function: formula.Name, Error: check.ErrorName(err), Origin: "self"}
	l.Value, l.Exact = finite(value), finite(value)
	if l.Value != nil {
		l.Tolerance = agreement * math.Abs(value)
	}
	var values []reflect.Value
	var names []string
	for i := range formula.Arguments {
		a := &formula.Arguments[i]
		names = append(names, a.Name)
		if a.Words != nil {
			values = append(values, reflect.ValueOf(a.Words[int(point[i])-1]))
		} else {
			values = append(values, reflect.ValueOf(point[i]))
		}
	}
	l.Arguments, err = named(names, values)
	return l, err
}

// listLines gives calls whose arguments are lists and dates, with sums of ours.
func listLines() ([]line, error) {
	const record = `[{"year":2001,"month":4,"rain":0.0361},{"year":2001,"month":5,"rain":0.0793},{"year":2001,"month":6,"rain":0.1096}]`
	const normals = `[0.0216,0.0298,0.068,0.0638,0.1128,0.1286,0.0805,0.0942,0.076,0.0687,0.0355,0.0313]`
	var all []line
	for _, c := range []struct {
		function, arguments, sum string
		value, tolerance         float64
	}{
		{"rainfall.KeyRainShare", `{"date":"2001-06-01","keyMonths":[4,5],"record":` + record + `,"normals":` + normals + `}`, "(36.1 + 79.3) ÷ (63.8 + 112.8)", 115.4 / 176.6, 1e-12},
		{"rainfall.KeyRainShare", `{"date":"2001-07-01","keyMonths":[4,5,6],"record":` + record + `,"normals":` + normals + `}`, "(36.1 + 79.3 + 109.6) ÷ (63.8 + 112.8 + 128.6)", 225.0 / 305.2, 1e-12},
		{"herd.TotalUnits", `{"head":[3,4,5],"each":[1,0.5,0.2]}`, "3 × 1 + 4 × 0.5 + 5 × 0.2", 6, 1e-12},
		{"rainfall.YearTotal", `{"record":` + wholeYear() + `,"year":2001}`, "1 + 2 + … + 12 = 78 mm", 0.078, 1e-15},
	} {
		out, status := door.Call(c.function, []byte(c.arguments))
		var got struct {
			Value any `json:"value"`
		}
		if err := json.Unmarshal(out, &got); err != nil || status != door.Good {
			return nil, fmt.Errorf("%s: %s", c.function, out)
		}
		all = append(all, line{Function: c.function, Arguments: json.RawMessage(c.arguments), Value: c.value, Tolerance: c.tolerance, Exact: got.Value, Origin: "arithmetic", Note: c.sum})
	}
	return all, nil
}

// wholeYear is a record of 1 mm in January, 2 mm in February and so on.
func wholeYear() string {
	var all []string
	for month := range 12 {
		all = append(all, fmt.Sprintf(`{"year":2001,"month":%d,"rain":%g}`, month+1, float64(month+1)/1000))
	}
	return "[" + strings.Join(all, ",") + "]"
}
