package door

import (
	"encoding"
	"encoding/json"
	"reflect"
	"strconv"
	"strings"

	"example.org/soum/internal/document"
	"example.org/soum/internal/functions"
	"example.org/soum/units"
)

// specials are what other languages need beside the exported functions: text in
// and out of quantities, and a formula's step with its numbers.
var specials = map[string]func(map[string]json.RawMessage) (any, error){
	"units.parse":  parse,
	"units.show":   show,
	"formula.show": step,
}

func quantity(name string) (reflect.Type, error) {
	of := functions.Quantity(name)
	if of == nil {
		return nil, &document.Error{Path: "quantity", Value: strconv.Quote(name), Problem: "is no quantity", Allowed: strings.Join(functions.Quantities(), ", ")}
	}
	return of, nil
}

// parse reads text as a quantity: {"quantity": "Area", "text": "3.5 ac"} gives
// the number in base units.
func parse(arguments map[string]json.RawMessage) (any, error) {
	var name, text string
	if err := texts(arguments, map[string]*string{"quantity": &name, "text": &text}); err != nil {
		return nil, err
	}
	of, err := quantity(name)
	if err != nil {
		return nil, err
	}
	v := reflect.New(of)
	if err := v.Interface().(encoding.TextUnmarshaler).UnmarshalText([]byte(text)); err != nil {
		return nil, err
	}
	if of.Kind() == reflect.Float64 {
		return finite(v.Elem().Float()), nil
	}
	return v.Elem().Interface(), nil
}

// show prints a quantity: {"quantity": "Area", "value": 4046.8564224, "system":
// "US"} gives text for people, without a system all digits in the base unit.
func show(arguments map[string]json.RawMessage) (any, error) {
	var name, system string
	value, given := arguments["value"]
	if !given {
		return nil, &document.Error{Path: "value", Problem: "is missing", Allowed: "a number in base units"}
	}
	if _, given := arguments["system"]; !given {
		arguments["system"] = json.RawMessage(`""`)
	}
	if err := texts(arguments, map[string]*string{"quantity": &name, "system": &system}); err != nil {
		return nil, err
	}
	of, err := quantity(name)
	if err != nil {
		return nil, err
	}
	v := reflect.New(of)
	if err := fill(v.Elem(), value, "value"); err != nil {
		return nil, err
	}
	if system == "" {
		return v.Elem().Interface().(interface{ String() string }).String(), nil
	}
	var in units.System
	if err := in.UnmarshalText([]byte(system)); err != nil {
		return nil, err
	}
	q, ok := v.Elem().Interface().(interface{ In(units.System) string })
	if !ok {
		return v.Elem().Interface().(interface{ String() string }).String(), nil
	}
	return q.In(in), nil
}

// texts reads arguments that are text.
func texts(arguments map[string]json.RawMessage, into map[string]*string) error {
	for name, text := range into {
		raw, given := arguments[name]
		if !given {
			return &document.Error{Path: name, Problem: "is missing", Allowed: "text"}
		}
		if json.Unmarshal(raw, text) != nil {
			return &document.Error{Path: name, Value: short(raw), Problem: "is no text", Allowed: "text"}
		}
	}
	return nil
}

// step shows a formula with its numbers: {"function": "forage.Available",
// "system": "US", "arguments": {"height": 0.2, …}}.
func step(arguments map[string]json.RawMessage) (any, error) {
	var name, system string
	if err := texts(arguments, map[string]*string{"function": &name, "system": &system}); err != nil {
		return nil, err
	}
	var in units.System
	if err := in.UnmarshalText([]byte(system)); err != nil {
		return nil, err
	}
	given := map[string]json.RawMessage{}
	if raw := arguments["arguments"]; json.Unmarshal(raw, &given) != nil {
		return nil, &document.Error{Path: "arguments", Value: short(raw), Problem: "is no object", Allowed: "an object of the formula's arguments"}
	}
	for _, formula := range functions.Formulas() {
		if formula.Name != name {
			continue
		}
		f := functions.ByName(name)
		values, err := read(f, given)
		if err != nil {
			return nil, err
		}
		results := reflect.ValueOf(f.Call).Call(values)
		if err, _ := results[1].Interface().(error); units.Impossible(err) {
			return nil, err
		}
		numbers := make([]float64, len(values))
		for i, v := range values {
			if v.Kind() == reflect.Int {
				numbers[i] = float64(v.Int())
			} else {
				numbers[i] = v.Float()
			}
		}
		return formula.Show(in, results[0].Float(), numbers...), nil
	}
	return nil, &document.Error{Path: "function", Value: strconv.Quote(name), Problem: "is no formula", Allowed: "the name of a formula, such as \"forage.Available\""}
}
