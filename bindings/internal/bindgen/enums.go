package main

import (
	"bytes"
	"fmt"

	"example.org/soum/internal/decl"
)

// enums writes the texts of a package's enumerations, nil where it has none.
func enums(p *decl.Package) ([]byte, error) {
	var b bytes.Buffer
	b.WriteString(heading + "package " + p.Name + "\n\nimport \"example.org/soum/internal/enum\"\n")
	found := false
	for _, e := range p.Enums {
		if len(e.Constants) == 0 {
			return nil, fmt.Errorf("%s.%s has no constants", p.Name, e.Name)
		}
		found = true
		fmt.Fprintf(&b, `
var names%[1]s = %#[2]v

func (e %[1]s) String() string { return enum.Word(names%[1]s, e) }
func (e %[1]s) MarshalText() ([]byte, error) { return []byte(e.String()), nil }
func (e *%[1]s) UnmarshalText(text []byte) error { return enum.Read(names%[1]s, text, e) }
`, e.Name, append([]string{""}, e.Words()...))
	}
	if !found {
		return nil, nil
	}
	return b.Bytes(), nil
}
