// Package check runs printed tables as tests, compares the formulas of doc
// comments with the functions they describe, and walks what the module exports
// for sources and checks.
//
// A printed table stands in testdata/<table>.csv of its package:
//
//	# source, edition, page
//	check: forage.Available
//	height:in,residual:in,density:lb/ac/in,mark,result:lb/ac
//	7,3,300,A,"1,200"
//
// Columns are the function's parameters with the unit of the digits; the
// result is last. Other columns: mark (how the figure was come by, see marks),
// error (range or domain, with the argument's name, where one is expected),
// slack (a wider tolerance, in units of the last printed place) and why (its
// reason). "transcribed:" in place of "check:" marks a table whose rows the
// function only looks up: a second reading of the print, counted apart.
//
// A function that answers in money has the currency as the result's unit
// (result:USD); one that answers with several figures has a table for each,
// whose last column names the field (result.Total:USD).
//
// The tolerance is half of the last printed place, read from the digits.
package check

import (
	"encoding"
	"encoding/csv"
	"errors"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/shopspring/decimal"

	"example.org/soum/internal/functions"
	"example.org/soum/units"
)

// marks are the ways a figure can have been come by, and whether a row counts
// as a printed value.
var marks = map[string]bool{
	"A":          true,  // printed, read in the publication
	"B":          true,  // printed, read in a reprint or press report
	"C":          true,  // from an independent general-purpose library, named in line 1
	"D":          false, // derived by arithmetic from cited figures
	"M":          false, // from memory
	"arithmetic": false, // ours, to vary an argument; the sum is plain
	"practice":   false, // common practice without a source
}

// Table is a printed table.
type Table struct {
	Path, Source, Function string
	Transcribed            bool
	columns                []column
	rows                   [][]string
	lines                  []int
}

type column struct{ name, unit string }

// Tables runs every printed table in testdata of the package under test.
func Tables(t *testing.T) {
	t.Helper()
	paths, err := filepath.Glob("testdata/*.csv")
	if err != nil || len(paths) == 0 {
		t.Fatalf("no printed tables in testdata (%v)", err)
	}
	for _, path := range paths {
		table, err := ReadTable(path)
		if err != nil {
			t.Error(err)
			continue
		}
		if table == nil {
			continue
		}
		t.Run(filepath.Base(path), func(t *testing.T) {
			for i := range table.rows {
				if err := table.Row(i); err != nil {
					t.Error(err)
				}
			}
		})
	}
}

// ReadTable reads a file of testdata, nil where it is none of ours.
func ReadTable(path string) (*Table, error) {
	data, err := os.ReadFile(path)
	if err != nil {
		return nil, err
	}
	lines := strings.SplitN(string(data), "\n", 3)
	if len(lines) < 3 || !strings.HasPrefix(lines[0], "#") {
		return nil, nil
	}
	table := &Table{Path: path, Source: strings.TrimSpace(lines[0][1:])}
	switch name, what, _ := strings.Cut(lines[1], ": "); name {
	case "check":
		table.Function = strings.TrimSpace(what)
	case "transcribed":
		table.Function, table.Transcribed = strings.TrimSpace(what), true
	default:
		return nil, nil
	}
	return table, table.read(lines[2])
}

func (t *Table) read(text string) error {
	r := csv.NewReader(strings.NewReader(text))
	r.Comment = '#'
	head, err := r.Read()
	if err != nil {
		return fmt.Errorf("%s: %w", t.Path, err)
	}
	for _, cell := range head {
		name, unit, _ := strings.Cut(cell, ":")
		t.columns = append(t.columns, column{name, unit})
	}
	for {
		row, err := r.Read()
		if row == nil {
			break
		}
		if err != nil {
			return fmt.Errorf("%s: %w", t.Path, err)
		}
		line, _ := r.FieldPos(0)
		t.rows = append(t.rows, row)
		t.lines = append(t.lines, line+2)
	}
	if len(t.rows) == 0 {
		return fmt.Errorf("%s: no rows", t.Path)
	}
	return nil
}

// Len gives the number of rows.
func (t *Table) Len() int { return len(t.rows) }

// Printed tells whether a row counts as a printed value.
func (t *Table) Printed(i int) bool { return marks[t.cell(i, "mark")] }

func (t *Table) cell(i int, name string) string {
	for c, col := range t.columns {
		if col.name == name {
			return strings.TrimSpace(t.rows[i][c])
		}
	}
	return ""
}

// Row runs one row.
func (t *Table) Row(i int) error {
	fail := func(format string, args ...any) error {
		return fmt.Errorf("%s:%d: %s: %s", t.Path, t.lines[i], t.Function, fmt.Sprintf(format, args...))
	}
	if _, known := marks[t.cell(i, "mark")]; !known {
		return fail("mark %q is none of A, B, C, D, M, arithmetic, practice", t.cell(i, "mark"))
	}
	if t.cell(i, "slack") != "" && t.cell(i, "why") == "" {
		return fail("slack without a reason")
	}
	function := functions.ByName(t.Function)
	if function == nil {
		return fail("no such function")
	}
	arguments, err := t.Arguments(i)
	if err != nil {
		return fail("%v", err)
	}
	results := reflect.ValueOf(function.Call).Call(arguments)
	if len(results) == 2 {
		got, _ := results[1].Interface().(error)
		if err := expected(t.Error(i), got); err != nil {
			return fail("%v", err)
		}
	}
	result, err := t.field(results[0])
	if err == nil {
		err = t.compare(i, result)
	}
	if err != nil {
		return fail("%v", err)
	}
	return nil
}

// moneyType is compared as an exact decimal with its currency.
var moneyType = reflect.TypeFor[units.Money]()

// Crosses tells whether the rows go to the other languages as they stand: an
// answer in money or one field of several does not.
func (t *Table) Crosses() bool {
	result := reflect.TypeOf(functions.ByName(t.Function).Call).Out(0)
	return result.Kind() != reflect.Struct
}

// field gives the part of an answer that the last column names.
func (t *Table) field(result reflect.Value) (reflect.Value, error) {
	_, name, found := strings.Cut(t.columns[len(t.columns)-1].name, ".")
	if !found {
		return result, nil
	}
	if result.Kind() == reflect.Struct {
		if field := result.FieldByName(name); field.IsValid() {
			return field, nil
		}
	}
	return result, fmt.Errorf("no field %s in a %v", name, result.Type())
}

// Mark tells how the figure of a row was come by: a key of marks.
func (t *Table) Mark(i int) string { return t.cell(i, "mark") }

// Error gives the error that a row expects: "", or range or domain with the
// argument's name.
func (t *Table) Error(i int) string { return t.cell(i, "error") }

// Note gives what a row says of itself, "" for nothing.
func (t *Table) Note(i int) string { return t.cell(i, "note") }

// Arguments reads a row's cells in the order of the function's parameters.
func (t *Table) Arguments(i int) ([]reflect.Value, error) {
	function := reflect.TypeOf(functions.ByName(t.Function).Call)
	var values []reflect.Value
	parameters := function.NumIn()
	at := 0
	for c, col := range t.columns[:len(t.columns)-1] {
		if slices.Contains([]string{"mark", "slack", "why", "error", "note"}, col.name) {
			continue
		}
		if at >= parameters {
			return nil, fmt.Errorf("column %q is one too many: the function takes %d", col.name, parameters)
		}
		v, err := read(function.In(at), t.rows[i][c], col.unit)
		if err != nil {
			return nil, fmt.Errorf("column %q: %w", col.name, err)
		}
		values = append(values, v)
		at++
	}
	if at != parameters {
		return nil, fmt.Errorf("%d columns for %d parameters", at, parameters)
	}
	return values, nil
}

// read turns a cell into a value of a type; a slice has semicolons.
func read(of reflect.Type, cell, unit string) (reflect.Value, error) {
	cell = strings.TrimSpace(cell)
	v := reflect.New(of)
	if of.Kind() == reflect.Slice {
		all := reflect.MakeSlice(of, 0, 4)
		for part := range strings.SplitSeq(cell, ";") {
			one, err := read(of.Elem(), part, unit)
			if err != nil {
				return v, err
			}
			all = reflect.Append(all, one)
		}
		return all, nil
	}
	if u, ok := v.Interface().(encoding.TextUnmarshaler); ok {
		text := strings.ReplaceAll(cell, ",", "")
		if unit != "" {
			text += " " + unit
		}
		return v.Elem(), u.UnmarshalText([]byte(text))
	}
	switch of.Kind() {
	case reflect.String:
		v.Elem().SetString(cell)
		return v.Elem(), nil
	case reflect.Bool:
		b, err := strconv.ParseBool(cell)
		v.Elem().SetBool(b)
		return v.Elem(), err
	case reflect.Int:
		n, err := strconv.Atoi(cell)
		v.Elem().SetInt(int64(n))
		return v.Elem(), err
	case reflect.Float64:
		f, err := strconv.ParseFloat(strings.ReplaceAll(cell, ",", ""), 64)
		v.Elem().SetFloat(f)
		return v.Elem(), err
	}
	return v, fmt.Errorf("no cell holds a %v", of)
}

// ErrorName gives an error of a formula as a table names it: "", or range or
// domain with the argument's name.
func ErrorName(err error) string {
	var domain *units.DomainError
	var ranged *units.RangeError
	var word *units.ParseError
	switch {
	case errors.As(err, &domain):
		return "domain " + domain.Argument
	case errors.As(err, &word) && word.Function != "":
		return "domain " + word.Argument // other languages tell a word from a number by its argument
	case errors.As(err, &ranged):
		return "range " + ranged.Argument
	case err != nil:
		return err.Error()
	}
	return ""
}

// expected compares the error that came with the one the row names.
func expected(want string, got error) error {
	if name := ErrorName(got); name != want {
		return fmt.Errorf("error %q, want %q (%v)", name, want, got)
	}
	return nil
}

// Want is what a row prints: a word, or a number with its tolerance, both in
// the printed unit, of which Factor base units make one.
type Want struct {
	Printed                  string // the digits, without commas
	Word                     bool   // not a number
	Value, Tolerance, Factor float64
}

// Want reads the printed result of a row.
func (t *Table) Want(i int) (Want, error) {
	last := len(t.columns) - 1
	zero, err := t.field(reflect.New(reflect.TypeOf(functions.ByName(t.Function).Call).Out(0)).Elem())
	if err != nil {
		return Want{}, err
	}
	result := zero.Type()
	w := Want{Printed: strings.ReplaceAll(strings.TrimSpace(t.rows[i][last]), ",", ""), Factor: 1}
	if result.Kind() == reflect.String || result.Kind() == reflect.Int {
		w.Word = true
		return w, nil
	}
	if result.Kind() != reflect.Float64 {
		return w, fmt.Errorf("cannot compare a %v with digits", result)
	}
	if unit := t.columns[last].unit; unit != "" {
		one, err := read(result, "1", unit)
		if err != nil {
			return w, err
		}
		w.Factor = one.Float()
	}
	if w.Printed == "NaN" {
		w.Value = math.NaN()
		return w, nil
	}
	digits, err := decimal.NewFromString(w.Printed)
	if err != nil {
		return w, fmt.Errorf("result %q: %w", w.Printed, err)
	}
	slack, err := t.slack(i)
	if err != nil {
		return w, err
	}
	w.Value = digits.InexactFloat64()
	w.Tolerance = slack*math.Pow(10, float64(digits.Exponent())) + 1e-9*math.Abs(w.Value)
	return w, nil
}

// slack gives the tolerance of a row in units of its last printed place.
func (t *Table) slack(i int) (float64, error) {
	text := t.cell(i, "slack")
	if text == "" {
		return 0.5, nil
	}
	return strconv.ParseFloat(text, 64)
}

// compareMoney holds an amount against the printed digits; none at all is
// printed NaN, beside the error that the row names.
func (t *Table) compareMoney(i int, got units.Money) error {
	last := len(t.columns) - 1
	printed := strings.ReplaceAll(strings.TrimSpace(t.rows[i][last]), ",", "")
	if printed == "NaN" {
		if got != (units.Money{}) {
			return fmt.Errorf("got %s, want no money", got)
		}
		return nil
	}
	want, err := units.ParseMoney(printed + " " + t.columns[last].unit)
	if err != nil {
		return err
	}
	slack, err := t.slack(i)
	if err != nil {
		return err
	}
	tolerance := decimal.NewFromFloat(slack).Shift(want.Amount.Exponent())
	if got.Currency != want.Currency || got.Amount.Sub(want.Amount).Abs().GreaterThan(tolerance) {
		return fmt.Errorf("got %s, printed %s", got, want)
	}
	return nil
}

// compare holds the result against the printed digits.
func (t *Table) compare(i int, result reflect.Value) error {
	if result.Type() == moneyType {
		return t.compareMoney(i, result.Interface().(units.Money))
	}
	want, err := t.Want(i)
	if err != nil {
		return err
	}
	if want.Word {
		if got := fmt.Sprint(result.Interface()); got != want.Printed {
			return fmt.Errorf("got %s, printed %s", got, want.Printed)
		}
		return nil
	}
	got := result.Float() / want.Factor
	if math.IsNaN(want.Value) {
		if !math.IsNaN(got) {
			return fmt.Errorf("got %v, want NaN", got)
		}
		return nil
	}
	if !(math.Abs(got-want.Value) <= want.Tolerance) {
		return fmt.Errorf("got %.8g, printed %s %s", got, want.Printed, t.columns[len(t.columns)-1].unit)
	}
	return nil
}
