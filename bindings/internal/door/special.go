package door

import (
	"encoding"
	"fmt"
	"reflect"
	"strconv"
	"strings"

	"example.org/soum/internal/document"
	"example.org/soum/internal/functions"
	"example.org/soum/units"
)

// specials are what other languages need beside the exported functions: text in
// and out of quantities, and a formula's step with its numbers.
var specials = map[string]func([]byte) (any, error){
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
func parse(in []byte) (any, error) {
	var name, text string
	if err := document.Arguments(in, []document.Argument{{Name: "quantity", Into: &name}, {Name: "text", Into: &text}}); err != nil {
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
func show(in []byte) (any, error) {
	var name, system string
	var value document.Part
	arguments := []document.Argument{{Name: "quantity", Into: &name}, {Name: "value", Into: &value}, {Name: "system", Into: &system, Optional: true}}
	if err := document.Arguments(in, arguments); err != nil {
		return nil, err
	}
	of, err := quantity(name)
	if err != nil {
		return nil, err
	}
	v := reflect.New(of)
	if err := value.Fill(v.Interface()); err != nil {
		return nil, err
	}
	if system == "" {
		return fmt.Sprint(v.Elem()), nil
	}
	var reader units.System
	if err := reader.UnmarshalText([]byte(system)); err != nil {
		return nil, err
	}
	if q, ok := v.Elem().Interface().(interface{ In(units.System) string }); ok {
		return q.In(reader), nil
	}
	return fmt.Sprint(v.Elem()), nil
}

// step shows a formula with its numbers: {"function": "forage.Available",
// "system": "US", "arguments": {"height": 0.2, …}}.
func step(in []byte) (any, error) {
	var name string
	var system units.System
	var given document.Part
	arguments := []document.Argument{{Name: "function", Into: &name}, {Name: "system", Into: &system}, {Name: "arguments", Into: &given}}
	if err := document.Arguments(in, arguments); err != nil {
		return nil, err
	}
	for _, formula := range functions.Formulas() {
		if formula.Name != name {
			continue
		}
		f := functions.ByName(name)
		into, values := places(f)
		if err := given.Arguments(into); err != nil {
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
		return formula.Show(system, results[0].Float(), numbers...), nil
	}
	return nil, &document.Error{Path: "function", Value: strconv.Quote(name), Problem: "is no formula", Allowed: "the name of a formula, such as \"forage.Available\""}
}
