package document

import (
	"math"
	"reflect"
	"strconv"
)

// Argument is a place for one argument of a function.
type Argument struct {
	Name     string // as it stands in the text
	Into     any    // a pointer to what is filled
	Optional bool   // it may be left out
}

// Arguments reads a JSON object of a function's arguments. What is wrong comes as an
// *Error, the first in the order of the text.
//
// It reads as Decode does, but for numbers: a program hands on what it has computed, in
// base units, where a person writes a unit beside each figure. So
//
//   - a quantity is a number in base units, or text with a unit, and a plain number may
//     be text too;
//   - NaN and infinities, which JSON does not have, are text, and null is NaN, a gap in
//     a series;
//   - a whole number fits 32 bits.
//
// An argument that is a pointer to a struct is a document, such as a farm: a person wrote
// it, and it is read as Decode reads it, with paths that begin in the document.
func Arguments(data []byte, into []Argument) error {
	whole := map[string]bool{}
	for _, a := range into {
		whole[a.Name] = isDocument(reflect.TypeOf(a.Into).Elem())
	}
	tree, err := readTree(data, `a JSON object of arguments, such as {"height": 0.2}`, whole)
	if err != nil {
		return err
	}
	return Part{tree, nil}.Arguments(into)
}

func isDocument(t reflect.Type) bool {
	return t.Kind() == reflect.Pointer && t.Elem().Kind() == reflect.Struct
}

// Part is an argument that is kept as it stands until its type is known.
type Part struct {
	node *node
	at   *place
}

// Fill reads the part into what a pointer points to, by the rule of Arguments.
func (p Part) Fill(into any) error {
	return filler{shapes{}, true}.fill(reflect.ValueOf(into).Elem(), p.node, p.at, "")
}

// Arguments reads the part as an object of arguments.
func (p Part) Arguments(into []Argument) error {
	if p.node.kind != object {
		return p.at.problem(Error{Value: p.node.show(), Problem: p.node.what(), Allowed: "an object of arguments"})
	}
	names := &shape{word: "argument"}
	for i, a := range into {
		names.fields = append(names.fields, field{name: a.Name, index: []int{i}, required: !a.Optional})
	}
	return filler{shapes{}, true}.keys(names, p.node, p.at, func(k *field) reflect.Value {
		return reflect.ValueOf(into[k.index[0]].Into).Elem()
	})
}

// unusual gives a number that only arguments may write so: a gap, one that JSON does not
// have, a plain one as text.
func unusual(t reflect.Type, n *node) (value float64, found bool) {
	switch {
	case t.Kind() != reflect.Float64:
		return 0, false
	case n.kind == nothing:
		return math.NaN(), true
	case n.kind != text:
		return 0, false
	}
	value, err := strconv.ParseFloat(n.text, 64)
	return value, err == nil && (t == reflect.TypeFor[float64]() || value-value != 0)
}
