// Package functions is the table of what the module exports, by name: the printed
// tables are run through it, and other languages call through it.
package functions

import (
	"reflect"

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

// ByName gives the function of a name, nil where there is none.
func ByName(name string) *Function {
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

// Quantities names the types of units that read themselves from text.
func Quantities() []string { return quantityNames }

// Quantity gives the type of a quantity by its name, nil where there is none.
func Quantity(name string) reflect.Type { return quantityTypes[name] }
