package main

import (
	"bytes"
	"fmt"
	"regexp"
	"strings"

	"example.org/soum/internal/decl"
)

// registry writes the table by which functions are called by name.
func registry(module decl.Module) []byte {
	var b, imports bytes.Buffer
	for _, p := range module {
		lines := 0
		for i := range p.Functions {
			f := &p.Functions[i]
			if !called(f) {
				continue
			}
			var parameters []string
			call := p.Name + "." + f.Name
			if f.OfDocument() {
				parameters = append(parameters, decl.Document)
				call = "(*" + p.Name + "." + f.Receiver + ")." + f.Name
			}
			for _, a := range f.Arguments() {
				parameters = append(parameters, a.Name)
			}
			fmt.Fprintf(&b, "{Name: %q, Parameters: %#v, Call: %s},\n", f.Full(), parameters, call)
			lines++
		}
		if lines > 0 {
			fmt.Fprintf(&imports, "\"example.org/soum/%s\"\n", p.Path)
		}
	}
	var names, types bytes.Buffer
	for _, q := range textual(module.Package("units")) {
		fmt.Fprintf(&names, "%q,\n", q)
		fmt.Fprintf(&types, "%q: reflect.TypeFor[units.%s](),\n", q, q)
	}
	b.WriteString("}\n\n// quantityNames are the quantities that read themselves from text.\nvar quantityNames = []string{\n" + names.String() + "}\n\nvar quantityTypes = map[string]reflect.Type{\n" + types.String())
	return []byte(heading + "package functions\n\nimport (\n\"reflect\"\n\n" + imports.String() + ")\n\n// functions are the module's exported functions.\nvar functions = []Function{\n" + b.String() + "}\n")
}

// called reports whether a function can be called by name: a function, or a method of
// a document, none of whose types is a parameter.
func called(f *decl.Function) bool {
	return (f.Receiver == "" || f.OfDocument()) && len(f.Results) > 0 && f.Name != "Formulas" && !typeParameter.MatchString(strings.Join(f.Results, " "))
}

// typeParameter is the Q of a generic function, and no letter of a type's name.
var typeParameter = regexp.MustCompile(`\bQ\b`)

// textual lists the types of units that read themselves from text.
func textual(units *decl.Package) []string {
	var all []string
	for _, q := range units.Quantities {
		all = append(all, q.Name)
	}
	return append(all, "Date", "Money", "FeedPrice")
}
