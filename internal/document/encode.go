package document

import (
	"bytes"
	"encoding"
	"encoding/json"
	"fmt"
	"math"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"example.org/soum/units"
)

// Encode writes a struct as an indented JSON document that Decode reads back:
// fields in their order, quantities as text in the units of a system (the
// shortest text within a thousand-millionth of the value), dates, money and
// words as their text, the user's own keys last. Nil pointers, and zero values
// tagged omitempty, are left out. What a document cannot hold is an *Error.
func Encode(v any, system units.System) ([]byte, error) {
	value := reflect.ValueOf(v)
	if value.Kind() == reflect.Pointer {
		value = value.Elem()
	}
	if value.Kind() != reflect.Struct {
		return nil, fmt.Errorf("document.Encode: %T is neither a struct nor a pointer to one", v)
	}
	if _, err := system.MarshalText(); err != nil {
		return nil, err
	}
	addressable := reflect.New(value.Type()).Elem()
	addressable.Set(value)
	w := &writer{shapes: shapes{}, system: system}
	if err := w.value(addressable, nil, 1); err != nil {
		return nil, err
	}
	var b bytes.Buffer
	if err := json.Indent(&b, w.b.Bytes(), "", "  "); err != nil {
		return nil, fmt.Errorf("document.Encode: %w", err)
	}
	b.WriteByte('\n')
	return b.Bytes(), nil
}

// writer writes Go values as compact JSON.
type writer struct {
	b      bytes.Buffer
	shapes shapes
	system units.System
}

func (w *writer) value(v reflect.Value, at *place, depth int) error {
	if v.Kind() == reflect.Pointer {
		if v.IsNil() {
			return at.problem(Error{Problem: "nothing set", Allowed: either("", v.Type())})
		}
		if v = v.Elem(); v.Kind() == reflect.Pointer || v.Kind() == reflect.Interface { // these could turn in a ring
			return w.simple(v, at)
		}
	}
	if !v.CanAddr() { // the values of a map
		addressable := reflect.New(v.Type()).Elem()
		addressable.Set(v)
		v = addressable
	}
	if IsRowOr(v.Type()) {
		return w.rowOr(v, at, depth)
	}
	if _, ok := v.Addr().Interface().(encoding.TextUnmarshaler); ok {
		return w.selfText(v, at)
	}
	if depth > deepest && slices.Contains([]reflect.Kind{reflect.Struct, reflect.Map, reflect.Slice, reflect.Array}, v.Kind()) {
		return at.problem(Error{Problem: fmt.Sprintf("is nested more than %d deep", deepest)})
	}
	switch v.Kind() {
	case reflect.Struct:
		return w.object(v, at, depth)
	case reflect.Map:
		return w.mapping(v, at, depth)
	case reflect.Slice, reflect.Array:
		return w.list(v, at, depth)
	case reflect.Interface:
		return w.anything(v, at, depth)
	}
	return w.simple(v, at)
}

// simple writes text, numbers, true and false.
func (w *writer) simple(v reflect.Value, at *place) error {
	switch v.Kind() {
	case reflect.String:
		if n, isNumber := v.Interface().(json.Number); isNumber {
			return w.digits(n, at)
		}
		return w.text(v.String(), at)
	case reflect.Bool:
		w.b.WriteString(strconv.FormatBool(v.Bool()))
	case reflect.Int, reflect.Int64:
		if n := v.Int(); n > 1<<53 || n < -(1<<53) {
			return at.problem(Error{Value: strconv.FormatInt(n, 10), Problem: "is too large a number"})
		}
		w.b.WriteString(strconv.FormatInt(v.Int(), 10))
	case reflect.Float64:
		if problem := size(v.Float()); problem != "" {
			return at.problem(Error{Value: strconv.FormatFloat(v.Float(), 'g', -1, 64), Problem: problem})
		}
		w.b.WriteString(digits(v.Float()))
	default:
		return at.problem(Error{Problem: "no document holds a Go " + v.Type().String()})
	}
	return nil
}

// digits writes a number in full, with a power of ten only where that would be
// long.
func digits(v float64) string {
	if size := math.Abs(v); size != 0 && (size < 1e-6 || size >= 1e15) {
		return strconv.FormatFloat(v, 'e', -1, 64)
	}
	return strconv.FormatFloat(v, 'f', -1, 64)
}

func (w *writer) digits(n json.Number, at *place) error {
	if !json.Valid([]byte(n)) || strings.ContainsAny(string(n), `"tfn[{`) {
		return at.problem(Error{Value: quoted(string(n)), Problem: "is not a number"})
	}
	w.b.WriteString(string(n))
	return nil
}

func (w *writer) text(s string, at *place) error {
	if !utf8.ValidString(s) {
		return at.problem(Error{Value: quoted(s), Problem: "is not UTF-8 text"})
	}
	e := json.NewEncoder(&w.b)
	e.SetEscapeHTML(false)
	return e.Encode(s) // ends the line; json.Indent takes that away
}

func (w *writer) key(name string, at *place, first bool) error {
	if !first {
		w.b.WriteByte(',')
	}
	if err := w.text(name, at); err != nil {
		return err
	}
	w.b.WriteByte(':')
	return nil
}

func (w *writer) object(v reflect.Value, at *place, depth int) error {
	shape := w.shapes.of(v.Type())
	w.b.WriteByte('{')
	first := true
	for _, known := range shape.fields {
		f := v.FieldByIndex(known.index)
		if absent(f) || known.omitEmpty && empty(f) {
			continue
		}
		if err := w.key(known.name, at, first); err != nil {
			return err
		}
		first = false
		if err := w.value(f, at.of(known.name), depth+1); err != nil {
			return err
		}
	}
	if err := w.extra(v, shape, at, first, depth); err != nil {
		return err
	}
	w.b.WriteByte('}')
	return nil
}

// extra writes the user's own keys.
func (w *writer) extra(v reflect.Value, shape *shape, at *place, first bool, depth int) error {
	if shape.extra == nil {
		return nil
	}
	all := v.FieldByIndex(shape.extra.index).Interface().(map[string]any)
	for _, name := range sortedKeys(all) {
		if !ownKey(name) || shape.find(name) != nil {
			return at.of(name).problem(Error{Problem: "no key of the user's own", Allowed: "keys that begin with x-"})
		}
		if err := w.key(name, at, first); err != nil {
			return err
		}
		first = false
		item := all[name]
		if err := w.anything(reflect.ValueOf(&item).Elem(), at.of(name), depth+1); err != nil {
			return err
		}
	}
	return nil
}

func sortedKeys(all map[string]any) []string {
	names := make([]string, 0, len(all))
	for name := range all {
		names = append(names, name)
	}
	slices.Sort(names)
	return names
}

// absent tells whether there is nothing to write: null is never written.
func absent(v reflect.Value) bool { return v.Kind() == reflect.Pointer && v.IsNil() }

func empty(v reflect.Value) bool {
	switch v.Kind() {
	case reflect.Slice, reflect.Map:
		return v.Len() == 0
	}
	return v.IsZero()
}

func (w *writer) mapping(v reflect.Value, at *place, depth int) error {
	if v.Type().Key().Kind() != reflect.String {
		return at.problem(Error{Problem: "no document holds a Go " + v.Type().String()})
	}
	keys := v.MapKeys()
	slices.SortFunc(keys, func(a, b reflect.Value) int { return strings.Compare(a.String(), b.String()) })
	w.b.WriteByte('{')
	for i, key := range keys {
		if err := w.key(key.String(), at, i == 0); err != nil {
			return err
		}
		if err := w.value(v.MapIndex(key), at.of(key.String()), depth+1); err != nil {
			return err
		}
	}
	w.b.WriteByte('}')
	return nil
}

func (w *writer) list(v reflect.Value, at *place, depth int) error {
	w.b.WriteByte('[')
	for i := range v.Len() {
		if i > 0 {
			w.b.WriteByte(',')
		}
		if err := w.value(v.Index(i), at.item(i), depth+1); err != nil {
			return err
		}
	}
	w.b.WriteByte(']')
	return nil
}

// anything writes what passes through; null may stand in it.
func (w *writer) anything(v reflect.Value, at *place, depth int) error {
	if v.IsNil() {
		w.b.WriteString("null")
		return nil
	}
	return w.value(v.Elem(), at, depth)
}

func (w *writer) rowOr(v reflect.Value, at *place, depth int) error {
	name, row := rowOr(v)
	switch {
	case name.String() != "" && !row.IsNil():
		return at.problem(Error{Value: quoted(name.String()), Problem: "and a row are both set", Allowed: "one of the two"})
	case !row.IsNil():
		return w.value(row, at, depth)
	case name.String() != "":
		return w.text(name.String(), at)
	}
	return at.problem(Error{Problem: "nothing set", Allowed: "a name or a row"})
}

// selfText writes what is text in a document, and makes sure that it reads
// back.
func (w *writer) selfText(v reflect.Value, at *place) error {
	var written string
	switch special := v.Interface().(type) {
	case inSystem:
		if v.Kind() == reflect.Float64 {
			written = shortest(v, special, w.system)
		}
	case encoding.TextMarshaler:
		text, err := special.MarshalText()
		if err != nil {
			return at.problem(Error{Problem: "cannot be written: " + err.Error()})
		}
		written = string(text)
	}
	back := reflect.New(v.Type())
	err := back.Interface().(encoding.TextUnmarshaler).UnmarshalText([]byte(written))
	if err != nil || (filler{}).unfit(v) != "" {
		return at.problem(Error{Value: quoted(written), Problem: "could not be read back", Allowed: either("", v.Type())})
	}
	return w.text(written, at)
}

// closeEnough is how near a quantity's text is to it, as a share.
const closeEnough = 1e-9

// shortest writes a quantity in its unit of a system, with no more digits than
// it takes to come close; where no digits do, in full in its base unit.
func shortest(v reflect.Value, q inSystem, system units.System) string {
	_, unit, _ := strings.Cut(q.In(system), " ")
	read := func(text string) float64 {
		back := reflect.New(v.Type())
		if err := back.Interface().(encoding.TextUnmarshaler).UnmarshalText([]byte(text + " " + unit)); err != nil {
			return math.NaN()
		}
		return back.Elem().Float()
	}
	want := v.Float()
	zero := read("0") // not 0 for °F
	inUnit := (want - zero) / (read("1") - zero)
	for places := 1; places <= 17; places++ {
		rounded, err := strconv.ParseFloat(strconv.FormatFloat(inUnit, 'e', places-1, 64), 64)
		if err != nil {
			break
		}
		text := digits(rounded)
		if back := read(text); math.Abs(back-want) <= closeEnough*math.Abs(want) && size(back) == "" {
			return text + " " + unit
		}
	}
	return fmt.Sprint(q)
}
