// Package door is the way into the library from other languages: functions by
// name or number, plain numbers and JSON in and out. The native and the browser
// build are thin mains around it.
package door

import (
	"example.org/soum/forage"
	"example.org/soum/grazing"
	"example.org/soum/herd"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// Function is an exported function of the library.
type Function struct {
	Name       string // as in "forage.Available"
	Parameters []string
	Call       any // the function itself
}

// Lookup gives the function of a name, nil where there is none.
func Lookup(name string) *Function {
	for i := range functions {
		if functions[i].Name == name {
			return &functions[i]
		}
	}
	return nil
}

// Formulas gives the formulas of all packages, in the order of their numbers.
func Formulas() []units.Formula {
	var all []units.Formula
	all = append(all, herd.Formulas()...)
	all = append(all, forage.Formulas()...)
	all = append(all, rainfall.Formulas()...)
	return append(all, grazing.Formulas()...)
}
