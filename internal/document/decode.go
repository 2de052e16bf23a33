package document

import (
	"encoding"
	"errors"
	"fmt"
	"math"
	"reflect"
	"strconv"
	"strings"

	"example.org/soum/units"
)

// Decode reads one JSON document into the struct that into points to. What is
// wrong with the document comes as an *Error, the first in its order; the
// struct is then as it was. Where all is well the struct is replaced whole.
func Decode(data []byte, into any) error {
	target := reflect.ValueOf(into)
	if target.Kind() != reflect.Pointer || target.IsNil() || target.Elem().Kind() != reflect.Struct {
		return fmt.Errorf("document.Decode: into is a %T, must be a pointer to a struct", into)
	}
	tree, err := readTree(data, "a JSON object", nil)
	if err != nil {
		return err
	}
	fresh := reflect.New(target.Type().Elem()).Elem()
	f := filler{shapes{}, false}
	if err := f.fill(fresh, tree, nil, ""); err != nil {
		return err
	}
	target.Elem().Set(fresh)
	return nil
}

// filler puts the nodes of a tree into Go values.
type filler struct {
	shapes    shapes
	arguments bool // numbers by the rule of Arguments, not that of Decode
}

// fill puts n into v; allowed is what the field's tag says would be right.
func (f filler) fill(v reflect.Value, n *node, at *place, allowed string) error {
	if part, kept := v.Addr().Interface().(*Part); kept {
		*part = Part{n, at}
		return nil
	}
	if value, found := unusual(v.Type(), n); f.arguments && found {
		v.SetFloat(value)
		return nil
	}
	if n.kind == nothing && v.Type() != reflect.TypeFor[any]() {
		return at.problem(Error{Value: n.show(), Problem: n.what(), Allowed: f.inPlaceOfNull(allowed, v.Type())})
	}
	if v.Kind() == reflect.Pointer && v.Type().Elem().Kind() != reflect.Pointer {
		if isDocument(v.Type()) && f.arguments && n.kind == object {
			f.arguments, at = false, nil
		}
		v.Set(reflect.New(v.Type().Elem()))
		return f.fill(v.Elem(), n, at, allowed)
	}
	if IsRowOr(v.Type()) {
		return f.rowOr(v, n, at, allowed)
	}
	if special, ok := v.Addr().Interface().(encoding.TextUnmarshaler); ok {
		if f.arguments && n.kind == number && v.Kind() == reflect.Float64 {
			return f.number(v, n, at, allowed)
		}
		return f.text(v, special, n, at, allowed)
	}
	return f.plain(v, n, at, allowed)
}

// kinds are the nodes that Go values are filled from.
var kinds = [reflect.UnsafePointer + 1]kind{
	reflect.String: text, reflect.Bool: truth, reflect.Float64: number, reflect.Int: number, reflect.Int64: number,
	reflect.Slice: list, reflect.Array: list, reflect.Map: object, reflect.Struct: object,
}

// plain fills what does not read itself.
func (f filler) plain(v reflect.Value, n *node, at *place, allowed string) error {
	if wanted := kinds[v.Kind()]; wanted != 0 && n.kind != wanted {
		return at.problem(Error{Value: n.show(), Problem: n.what(), Allowed: f.either(allowed, v.Type())})
	}
	switch v.Kind() {
	case reflect.String:
		v.SetString(n.text)
		return nil
	case reflect.Bool:
		v.SetBool(n.text == "true")
		return nil
	case reflect.Float64, reflect.Int, reflect.Int64:
		return f.number(v, n, at, allowed)
	case reflect.Slice, reflect.Array:
		return f.list(v, n, at, allowed)
	case reflect.Map:
		return f.mapping(v, n, at, allowed)
	case reflect.Struct:
		return f.object(v, n, at)
	}
	return f.anything(v, n, at)
}

func (f filler) anything(v reflect.Value, n *node, at *place) error {
	if v.Type() != reflect.TypeFor[any]() {
		return at.problem(Error{Problem: "no document holds a Go " + v.Type().String()})
	}
	if plain := n.plain(); plain != nil {
		v.Set(reflect.ValueOf(plain))
	}
	return nil
}

func (f filler) number(v reflect.Value, n *node, at *place, allowed string) error {
	value, err := strconv.ParseFloat(n.text, 64)
	problem := ""
	switch {
	case err != nil:
		problem = "is too large a number"
	case v.Kind() == reflect.Float64:
		v.SetFloat(value)
		problem = f.unfit(v)
	case value != math.Trunc(value):
		problem = "is not a whole number"
	case math.Abs(value) > 1<<53 || v.OverflowInt(int64(value)), f.arguments && math.Abs(value) > math.MaxInt32:
		problem = "is too large a number"
	default:
		v.SetInt(int64(value))
	}
	if problem != "" {
		return at.problem(Error{Value: n.show(), Problem: problem, Allowed: f.either(allowed, v.Type())})
	}
	return nil
}

func (f filler) list(v reflect.Value, n *node, at *place, allowed string) error {
	if v.Kind() == reflect.Array && len(n.items) != v.Len() {
		return at.problem(Error{Value: n.show(), Problem: "has " + strconv.Itoa(len(n.items)) + " items", Allowed: f.either(allowed, v.Type())})
	}
	if v.Kind() == reflect.Slice {
		v.Set(reflect.MakeSlice(v.Type(), len(n.items), len(n.items)))
	}
	for i := range n.items {
		if err := f.fill(v.Index(i), &n.items[i], at.item(i), allowedOfItem(allowed, v.Type())); err != nil {
			return err
		}
	}
	return nil
}

// allowedOfItem leaves out a tag's words where they speak of the list and its
// items are objects.
func allowedOfItem(allowed string, of reflect.Type) string {
	if of.Elem().Kind() == reflect.Struct {
		return ""
	}
	return allowed
}

func (f filler) mapping(v reflect.Value, n *node, at *place, allowed string) error {
	of := v.Type()
	if of.Key().Kind() != reflect.String {
		return at.problem(Error{Problem: "no document holds a Go " + of.String()})
	}
	v.Set(reflect.MakeMapWithSize(of, len(n.items)))
	for i := range n.items {
		item := reflect.New(of.Elem()).Elem()
		if err := f.fill(item, &n.items[i], at.of(n.names[i]), allowedOfItem(allowed, of)); err != nil {
			return err
		}
		v.SetMapIndex(reflect.ValueOf(n.names[i]).Convert(of.Key()), item)
	}
	return nil
}

func (f filler) object(v reflect.Value, n *node, at *place) error {
	return f.keys(f.shapes.of(v.Type()), n, at, func(k *field) reflect.Value { return v.FieldByIndex(k.index) })
}

// keys fills what an object's keys stand for.
func (f filler) keys(shape *shape, n *node, at *place, into func(*field) reflect.Value) error {
	given := make(map[string]bool, len(n.items))
	for i, name := range n.names {
		given[name] = true
		if known := shape.find(name); known != nil {
			if err := f.fill(into(known), &n.items[i], at.of(name), known.allowed); err != nil {
				return err
			}
			continue
		}
		if shape.extra == nil || !ownKey(name) {
			return unknownKey(shape, name, at)
		}
		extra := into(shape.extra)
		if extra.IsNil() {
			extra.Set(reflect.ValueOf(map[string]any{}))
		}
		extra.Interface().(map[string]any)[name] = n.items[i].plain()
	}
	for i := range shape.fields {
		if known := &shape.fields[i]; known.required && !given[known.name] {
			return at.of(known.name).problem(Error{Problem: "missing", Allowed: f.either(known.allowed, into(known).Type())})
		}
	}
	return nil
}

func unknownKey(shape *shape, name string, at *place) error {
	problem := "unknown " + shape.word
	if near := shape.nearest(name); near != "" {
		problem += ", perhaps " + strconv.Quote(near) + " is meant"
	}
	if ownKey(name) {
		problem = "this object keeps no keys of your own"
	}
	allowed := "the " + shape.word + "s here are " + shape.names()
	if shape.extra != nil {
		allowed += ", and any that begin with x-"
	}
	return at.of(name).problem(Error{Problem: problem, Allowed: allowed})
}

func (f filler) rowOr(v reflect.Value, n *node, at *place, allowed string) error {
	name, row := rowOr(v)
	switch {
	case n.kind == text && n.text != "":
		name.SetString(n.text)
		return nil
	case n.kind == object:
		return f.fill(row, n, at, "")
	}
	problem := n.what()
	if n.kind == text {
		problem = "is no name"
	}
	return at.problem(Error{Value: n.show(), Problem: problem, Allowed: either(allowed, v.Type())})
}

// text fills what reads itself from text: quantities, dates, money, words.
func (f filler) text(v reflect.Value, u encoding.TextUnmarshaler, n *node, at *place, allowed string) error {
	if n.kind != text {
		e := Error{Value: n.show(), Problem: n.what(), Allowed: f.either(allowed, v.Type())}
		if example := withUnit(v, n); example != "" && n.kind == number {
			e.Allowed = "text with a unit, such as " + example
			if allowed != "" {
				e.Allowed += " (" + allowed + ")"
			}
		}
		return at.problem(e)
	}
	if err := u.UnmarshalText([]byte(n.text)); err != nil {
		e := Error{Value: n.show(), Problem: "is refused: " + err.Error(), Allowed: allowed}
		var parse *units.ParseError
		if errors.As(err, &parse) {
			e.Problem = "is no " + parse.What() + ": " + parse.Problem
			e.Allowed = join(allowed, Accepted(parse))
		}
		return at.problem(e)
	}
	if problem := f.unfit(v); problem != "" {
		return at.problem(Error{Value: n.show(), Problem: problem, Allowed: f.either(allowed, v.Type())})
	}
	return nil
}

// inSystem is what quantities have beside their text: the text for people.
type inSystem interface{ In(units.System) string }

// withUnit mends a bare number with the unit that its quantity is shown in.
func withUnit(v reflect.Value, n *node) string {
	q, ok := v.Interface().(inSystem)
	if !ok || len(n.text) > longest {
		return ""
	}
	_, unit, _ := strings.Cut(q.In(units.US), " ")
	return strconv.Quote(n.text + " " + unit)
}

// Accepted says what a text may be.
func Accepted(p *units.ParseError) string {
	if p.Word {
		return "one of: " + strings.Join(p.Accepts, ", ")
	}
	return "a number and one of: " + strings.Join(p.Accepts, ", ")
}

func join(first, second string) string {
	if first == "" {
		return second
	}
	return first + " (" + second + ")"
}

// inPlaceOfNull tells what to write where null stands: an argument is not left out.
func (f filler) inPlaceOfNull(allowed string, t reflect.Type) string {
	if f.arguments {
		return f.either(allowed, t)
	}
	return "leave the key out, or give " + f.either(allowed, t)
}

// either gives the words of a field's tag, or else what its type takes here.
func (f filler) either(allowed string, t reflect.Type) string {
	words := either(allowed, t)
	if f.arguments && allowed == "" && t.Kind() == reflect.Float64 && t != reflect.TypeFor[float64]() {
		return "a number in base units, or " + words
	}
	return words
}

// either gives the words of a field's tag, or else what its type takes.
func either(allowed string, t reflect.Type) string {
	if allowed != "" {
		return allowed
	}
	if t.Kind() == reflect.Pointer {
		t = t.Elem()
	}
	if IsRowOr(t) {
		return "the name of a row, or an object with a row of your own"
	}
	if special, ok := reflect.New(t).Interface().(encoding.TextUnmarshaler); ok {
		var parse *units.ParseError
		if errors.As(special.UnmarshalText(nil), &parse) {
			return "text: " + Accepted(parse)
		}
		return "text"
	}
	switch t.Kind() {
	case reflect.String:
		return "text"
	case reflect.Bool:
		return "true or false"
	case reflect.Float64:
		return "a number"
	case reflect.Int, reflect.Int64:
		return "a whole number"
	case reflect.Slice:
		return "a list"
	case reflect.Array:
		return "a list of " + strconv.Itoa(t.Len()) + " items"
	}
	return "an object"
}
