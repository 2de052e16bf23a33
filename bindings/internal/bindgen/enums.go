package main

import (
	"bytes"
	"fmt"

	"example.org/soum/internal/decl"
)

// enums writes the texts of a package's enumerations, nil where it has none.
func enums(p *decl.Package) ([]byte, error) {
	var b bytes.Buffer
	b.WriteString(heading + "package " + p.Name + "\n\nimport \"example.org/soum/units\"\n")
	found := false
	for _, e := range p.Enums {
		if len(e.Constants) == 0 {
			return nil, fmt.Errorf("%s.%s has no constants", p.Name, e.Name)
		}
		found = true
		fmt.Fprintf(&b, "\nvar names%s = []string{%q", e.Name, "")
		for _, word := range e.Words() {
			fmt.Fprintf(&b, ", %q", word)
		}
		fmt.Fprintf(&b, "}\n"+`
// String gives the text of the constant, "" for a value that is none of them.
func (e %[1]s) String() string {
	if e < 1 || int(e) >= len(names%[1]s) {
		return ""
	}
	return names%[1]s[e]
}

// MarshalText gives the text of the constant.
func (e %[1]s) MarshalText() ([]byte, error) { return []byte(e.String()), nil }

// UnmarshalText reads the text of a constant.
func (e *%[1]s) UnmarshalText(text []byte) error {
	for i, name := range names%[1]s[1:] {
		if name == string(text) {
			*e = %[1]s(i + 1)
			return nil
		}
	}
	return &units.ParseError{Quantity: %[2]q, Text: string(text), Problem: "no such word", Accepts: names%[1]s[1:], Word: true}
}
`, e.Name, p.Name+"."+e.Name)
	}
	if !found {
		return nil, nil
	}
	return b.Bytes(), nil
}
