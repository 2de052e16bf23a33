package door

import (
	"bytes"
	"encoding"
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"reflect"
	"runtime/debug"
	"strconv"
	"strings"

	"example.org/soum/forage"
	"example.org/soum/grazing"
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

// deepest is how far objects and lists may be nested.
const deepest = 64

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
// money are text; a farm is an object.
func Call(name string, in []byte) (out []byte, status int32) {
	defer func() {
		if fault := recover(); fault != nil {
			out, status = write(answer{Error: &report{Kind: "broken", Message: fmt.Sprintf("a fault of the library in %s: %v", name, fault), Problem: firstLines(debug.Stack())}}), Broken
		}
	}()
	if err := shallow(in); err != nil {
		return refuse(err)
	}
	arguments := map[string]json.RawMessage{}
	if err := json.Unmarshal(in, &arguments); err != nil {
		return refuse(&document.Error{Problem: "is not a JSON object of arguments: " + err.Error(), Allowed: `an object such as {"height": 0.2}`})
	}
	if special, known := specials[name]; known {
		value, err := special(arguments)
		return reply(value, err)
	}
	f := functions.ByName(name)
	if f == nil {
		return write(answer{Error: &report{Kind: "name", Message: "there is no function " + strconv.Quote(name)}}), NoSuchName
	}
	values, err := read(f, arguments)
	if err != nil {
		return refuse(err)
	}
	return invoke(f, values)
}

// firstLines keeps the head of a stack trace.
func firstLines(stack []byte) string {
	lines := strings.SplitN(string(stack), "\n", 12)
	return strings.Join(lines[:min(11, len(lines))], "\n")
}

// shallow refuses what is nested too deep before anything reads it.
func shallow(in []byte) error {
	depth, quoted, escaped := 0, false, false
	for _, c := range in {
		switch {
		case escaped:
			escaped = false
		case quoted && c == '\\':
			escaped = true
		case c == '"':
			quoted = !quoted
		case quoted:
		case c == '{' || c == '[':
			if depth++; depth > deepest {
				return &document.Error{Problem: fmt.Sprintf("is nested more than %d deep", deepest), Allowed: "a flatter document"}
			}
		case c == '}' || c == ']':
			depth--
		}
	}
	return nil
}

func write(a answer) []byte {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	if err := e.Encode(a); err != nil {
		return []byte(`{"value":null,"error":{"kind":"broken","message":` + strconv.Quote(err.Error()) + `}}`)
	}
	return bytes.TrimRight(b.Bytes(), "\n")
}

func refuse(err error) ([]byte, int32) { return reply(nil, err) }

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
	if errors.As(err, &wrong) {
		r.Path, r.Value, r.Problem, r.Allowed = wrong.Path, wrong.Value, wrong.Problem, wrong.Allowed
	}
	return write(answer{Error: r}), BadDocument
}

// finite gives a number for JSON, which knows neither NaN nor infinities.
func finite(v float64) any {
	if v-v != 0 {
		return strconv.FormatFloat(v, 'g', -1, 64)
	}
	return v
}

// read turns the arguments into the values that the function takes.
func read(f *functions.Function, arguments map[string]json.RawMessage) ([]reflect.Value, error) {
	of := reflect.TypeOf(f.Call)
	var values []reflect.Value
	for i, name := range f.Parameters {
		raw, given := arguments[name]
		if !given {
			return nil, &document.Error{Path: name, Problem: "is missing", Allowed: "the arguments of " + f.Name + " are " + strings.Join(f.Parameters, ", ")}
		}
		v := reflect.New(of.In(i)).Elem()
		if err := fill(v, raw, name); err != nil {
			return nil, err
		}
		values = append(values, v)
		delete(arguments, name)
	}
	for name := range arguments {
		return nil, &document.Error{Path: name, Problem: "is no argument of " + f.Name, Allowed: strings.Join(f.Parameters, ", ")}
	}
	return values, nil
}

// fill reads one JSON value into a Go value.
func fill(v reflect.Value, raw json.RawMessage, path string) error {
	wrong := func(problem, allowed string) error {
		return &document.Error{Path: path, Value: short(raw), Problem: problem, Allowed: allowed}
	}
	if v.Kind() == reflect.Pointer && v.Type().Elem().Kind() == reflect.Struct { // a document
		v.Set(reflect.New(v.Type().Elem()))
		return document.Decode(raw, v.Interface())
	}
	raw = bytes.TrimSpace(raw)
	null, text := bytes.Equal(raw, []byte("null")), ""
	isText := len(raw) > 0 && raw[0] == '"' && json.Unmarshal(raw, &text) == nil
	if isText && v.Kind() == reflect.Float64 { // NaN and infinities have no other way through JSON
		if number, err := strconv.ParseFloat(text, 64); err == nil && number-number != 0 {
			v.SetFloat(number)
			return nil
		}
	}
	if u, ok := v.Addr().Interface().(encoding.TextUnmarshaler); ok && isText {
		if err := u.UnmarshalText([]byte(text)); err != nil {
			return wrong("is refused: "+err.Error(), "")
		}
		return nil
	}
	switch v.Kind() {
	case reflect.Float64:
		if null {
			v.SetFloat(math.NaN())
			return nil
		}
		if isText && v.Type() == reflect.TypeFor[float64]() { // a plain number may come as text, as quantities do
			if number, err := strconv.ParseFloat(text, 64); err == nil {
				v.SetFloat(number)
				return nil
			}
		}
		number, err := strconv.ParseFloat(string(raw), 64)
		if err != nil {
			return wrong("is no number", "a number in base units, or text with a unit")
		}
		v.SetFloat(number)
		return nil
	case reflect.Int, reflect.Int32:
		number, err := strconv.ParseInt(string(raw), 10, 32)
		if err != nil {
			return wrong("is no whole number", "a whole number, or a word of the enumeration")
		}
		v.SetInt(number)
		return nil
	case reflect.String:
		if !isText {
			return wrong("is no text", "text")
		}
		v.SetString(text)
		return nil
	case reflect.Bool:
		if json.Unmarshal(raw, v.Addr().Interface()) != nil {
			return wrong("is neither true nor false", "true or false")
		}
		return nil
	case reflect.Slice, reflect.Array:
		return fillList(v, raw, path)
	case reflect.Struct:
		return fillStruct(v, raw, path)
	}
	return wrong("cannot be given to a "+v.Type().String(), "")
}

func short(raw []byte) string {
	const most = 60
	if len(raw) > most {
		return strings.ToValidUTF8(string(raw[:most]), "") + "…"
	}
	return string(raw)
}

func fillList(v reflect.Value, raw json.RawMessage, path string) error {
	var items []json.RawMessage
	if json.Unmarshal(raw, &items) != nil {
		return &document.Error{Path: path, Value: short(raw), Problem: "is no list", Allowed: "a list"}
	}
	if v.Kind() == reflect.Array && len(items) != v.Len() {
		return &document.Error{Path: path, Problem: fmt.Sprintf("has %d items", len(items)), Allowed: fmt.Sprintf("%d", v.Len())}
	}
	if v.Kind() == reflect.Slice {
		v.Set(reflect.MakeSlice(v.Type(), len(items), len(items)))
	}
	for i, item := range items {
		if err := fill(v.Index(i), item, fmt.Sprintf("%s[%d]", path, i)); err != nil {
			return err
		}
	}
	return nil
}

// fillStruct reads an object by its json tags; keys left out keep the zero
// value, keys nobody knows are refused.
func fillStruct(v reflect.Value, raw json.RawMessage, path string) error {
	object := map[string]json.RawMessage{}
	if json.Unmarshal(raw, &object) != nil {
		return &document.Error{Path: path, Value: short(raw), Problem: "is no object", Allowed: "an object"}
	}
	var known []string
	for i := range v.NumField() {
		name, _, _ := strings.Cut(v.Type().Field(i).Tag.Get("json"), ",")
		known = append(known, name)
		item, given := object[name]
		if !given {
			continue
		}
		delete(object, name)
		if err := fill(v.Field(i), item, path+"."+name); err != nil {
			return err
		}
	}
	for name := range object {
		return &document.Error{Path: path + "." + name, Problem: "is an unknown key", Allowed: strings.Join(known, ", ")}
	}
	return nil
}

// invoke calls the function and writes what it gives.
func invoke(f *functions.Function, values []reflect.Value) ([]byte, int32) {
	results := reflect.ValueOf(f.Call).Call(values)
	var err error
	if last := len(results) - 1; results[last].Type() == reflect.TypeFor[error]() {
		err, _ = results[last].Interface().(error)
		results = results[:last]
	}
	if len(results) == 1 {
		return reply(plain(results[0]), err)
	}
	var all []any
	for _, r := range results {
		all = append(all, plain(r))
	}
	return reply(all, err)
}

// plain gives a result for JSON: a number that is none becomes null, and what
// belongs in a farm document (a farm, a row) is written as one, its quantities
// as text with a unit, so that it can be put back.
func plain(v reflect.Value) any {
	switch r := v.Interface().(type) {
	case *grazing.Farm:
		if r == nil {
			return nil
		}
		return encoded(r, r.Units)
	case forage.Pasture, herd.Class:
		if v.IsZero() {
			return nil
		}
		return encoded(r, units.Metric)
	case []forage.Pasture, []herd.Class:
		var all []any
		for i := range v.Len() {
			all = append(all, plain(v.Index(i)))
		}
		return all
	}
	if v.Kind() == reflect.Float64 {
		if f := v.Float(); f-f == 0 {
			return f
		}
		return nil
	}
	return v.Interface()
}

// encoded writes a document.
func encoded(v any, system units.System) any {
	text, err := document.Encode(v, system)
	if err != nil {
		panic(err) // every row of the tables can be written: TestRowsCrossAsDocuments
	}
	return json.RawMessage(text)
}
