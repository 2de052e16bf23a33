package door

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"reflect"
	"runtime/debug"
	"slices"
	"strconv"
	"strings"

	"example.org/soum/forage"
	"example.org/soum/grazing/farm"
	"example.org/soum/herd"
	"example.org/soum/internal/document"
	"example.org/soum/internal/functions"
	"example.org/soum/units"
)

// The statuses of Call.
const (
	Warned      = 1  // the value, with a range warning beside it
	Impossible  = -1 // a domain error: there is no value
	BadDocument = -2 // a document or an argument is wrong: the path says where
	NoSuchName  = -3 // there is no function of this name
)

// answer is what Call gives back.
type answer struct {
	Value   any     `json:"value"`
	Warning *report `json:"warning,omitempty"`
	Error   *report `json:"error,omitempty"`
}

// report is an error for another language.
type report struct {
	Kind     string `json:"kind"` // domain, range, document, name or broken
	Message  string `json:"message"`
	Function string `json:"function,omitempty"`
	Argument string `json:"argument,omitempty"`
	Index    int    `json:"index,omitempty"`
	Value    any    `json:"value,omitempty"`
	Low      any    `json:"low,omitempty"`
	High     any    `json:"high,omitempty"`
	Gap      bool   `json:"gap,omitempty"` // the source covers what is up to low and from high on
	Unit     string `json:"unit,omitempty"`
	Source   string `json:"source,omitempty"`
	Path     string `json:"path,omitempty"`
	Problem  string `json:"problem,omitempty"`
	Allowed  string `json:"allowed,omitempty"`
}

// Call calls a function by name with a JSON object of its arguments, and gives
// a JSON object with "value", and "warning" or "error" where there is one.
// Quantities are numbers in base units, or text with a unit; words, dates and
// money are text; a farm is an object. document.Arguments has the whole rule.
func Call(name string, in []byte) (out []byte, status int32) {
	defer func() {
		if fault := recover(); fault != nil {
			out, status = write(answer{Error: &report{Kind: "broken", Message: fmt.Sprintf("a fault of the library in %s: %v", name, fault), Problem: firstLines(debug.Stack())}}), Broken
		}
	}()
	if special, known := specials[name]; known {
		value, err := special(in)
		return reply(value, err)
	}
	f := functions.ByName(name)
	if f == nil {
		return write(answer{Error: &report{Kind: "name", Message: "there is no function " + strconv.Quote(name)}}), NoSuchName
	}
	into, values := places(f)
	if err := document.Arguments(in, into); err != nil {
		return reply(nil, err)
	}
	return invoke(f, values)
}

// places makes room for the arguments of a function.
func places(f *functions.Function) (into []document.Argument, values []reflect.Value) {
	of := reflect.TypeOf(f.Call)
	for i, name := range f.Parameters {
		at := reflect.New(of.In(i))
		into = append(into, document.Argument{Name: name, Into: at.Interface()})
		values = append(values, at.Elem())
	}
	return into, values
}

// firstLines keeps the head of a stack trace.
func firstLines(stack []byte) string {
	lines := strings.SplitN(string(stack), "\n", 12)
	return strings.Join(lines[:min(11, len(lines))], "\n")
}

func write(a answer) []byte {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	if err := e.Encode(a); err != nil {
		panic(err) // an answer that is not finite is a fault of the library: Call says so
	}
	return bytes.TrimRight(b.Bytes(), "\n")
}

// reply writes a value and what came with it.
func reply(value any, err error) ([]byte, int32) {
	var domain *units.DomainError
	var ranged *units.RangeError
	switch {
	case err == nil:
		return write(answer{Value: value}), Good
	case errors.As(err, &domain):
		return write(answer{Error: &report{
			Kind: "domain", Message: err.Error(), Function: domain.Function, Argument: domain.Argument, Index: domain.Index,
			Value: finite(domain.Value), Low: finite(domain.Low), High: finite(domain.High), Unit: domain.Unit, Source: domain.Source,
		}}), Impossible
	case errors.As(err, &ranged):
		return write(answer{Value: value, Warning: &report{
			Kind: "range", Message: err.Error(), Function: ranged.Function, Argument: ranged.Argument, Index: ranged.Index,
			Value: finite(ranged.Value), Low: finite(ranged.Low), High: finite(ranged.High), Gap: ranged.Gap, Unit: ranged.Unit, Source: ranged.Source,
		}}), Warned
	}
	r := &report{Kind: "document", Message: err.Error()}
	var wrong *document.Error
	var word *units.ParseError
	switch {
	case errors.As(err, &wrong):
		r.Path, r.Value, r.Problem, r.Allowed = wrong.Path, wrong.Value, wrong.Problem, wrong.Allowed
	case errors.As(err, &word):
		r.Function, r.Argument, r.Index = word.Function, word.Argument, word.Index
		r.Path, r.Value, r.Problem, r.Allowed = word.Argument, strconv.Quote(word.Text), word.Problem, document.Accepted(word)
		if isFormula(word.Function) { // a formula has one status for what is impossible, a number or a word
			r.Kind, r.Value = "domain", word.Text
			return write(answer{Error: r}), Impossible
		}
	}
	return write(answer{Error: r}), BadDocument
}

func isFormula(name string) bool {
	return slices.ContainsFunc(functions.Formulas(), func(f units.Formula) bool { return f.Name == name })
}

// finite gives a number for JSON, which knows neither NaN nor infinities.
func finite(v float64) any {
	if v-v != 0 {
		return strconv.FormatFloat(v, 'g', -1, 64)
	}
	return v
}

// invoke calls the function and writes what it gives.
func invoke(f *functions.Function, values []reflect.Value) ([]byte, int32) {
	results := reflect.ValueOf(f.Call).Call(values)
	var err error
	if last := len(results) - 1; results[last].Type() == reflect.TypeFor[error]() {
		err, _ = results[last].Interface().(error)
		results = results[:last]
	}
	all := make([]any, len(results))
	for i, result := range results {
		value, unwritable := plain(result)
		if unwritable != nil {
			return reply(nil, unwritable)
		}
		all[i] = value
	}
	if len(all) == 1 {
		return reply(all[0], err)
	}
	return reply(all, err)
}

// plain gives a result for JSON: a number that is none becomes null, and what
// belongs in a farm document (a farm, a row) is written as one, its quantities
// as text with a unit, so that it can be put back. A first farm made of figures
// that no document takes is not written.
func plain(v reflect.Value) (any, error) {
	switch r := v.Interface().(type) {
	case *farm.Farm:
		if r == nil {
			return nil, nil
		}
		return encoded(r, r.Units)
	case forage.Pasture, herd.Class:
		if v.IsZero() {
			return nil, nil
		}
		return encoded(r, units.Metric)
	case []forage.Pasture, []herd.Class:
		var all []any
		for i := range v.Len() {
			row, err := plain(v.Index(i))
			if err != nil {
				return nil, err
			}
			all = append(all, row)
		}
		return all, nil
	}
	if v.Kind() == reflect.Float64 {
		if f := v.Float(); f-f == 0 {
			return f, nil
		}
		return nil, nil
	}
	return v.Interface(), nil
}

// encoded writes a document.
func encoded(v any, system units.System) (any, error) {
	text, err := document.Encode(v, system)
	return json.RawMessage(text), err
}
