package main

import (
	"bytes"
	"fmt"
	"strings"
)

// stub writes the types of a package's functions.
func (p *python) stub(pkg string) string {
	var b bytes.Buffer
	b.WriteString(marked("# ") + "import datetime\nfrom typing import Any, Literal, Sequence, overload\n\nfrom . import documents\nfrom ._types import Array, Scalar, Values, Words\n")
	for _, f := range p.m.of(pkg) {
		name := pythonName(f.Snake)
		var one, many, mixed []string
		for _, a := range f.Parameters {
			argument := pythonName(a.Snake)
			one = append(one, argument+": "+p.hint(&a.Type, true))
			many = append(many, argument+": "+values(&a.Type, p.hint(&a.Type, true)))
			mixed = append(mixed, argument+": "+values(&a.Type, p.hint(&a.Type, true))+" | Array")
		}
		var results []string
		for _, r := range f.Results {
			results = append(results, p.hint(&r, false))
		}
		result := strings.Join(results, ", ")
		if len(results) > 1 {
			result = "tuple[" + result + "]"
		}
		if f.Kind != "formula" {
			fmt.Fprintf(&b, "\ndef %s(%s) -> %s: ...\n", name, strings.Join(one, ", "), result)
			continue
		}
		fmt.Fprintf(&b, "\n@overload\ndef %s(%s) -> float: ...\n", name, strings.Join(one, ", "))
		fmt.Fprintf(&b, "@overload\ndef %s(%s) -> list[float]: ...\n", name, strings.Join(many, ", "))
		fmt.Fprintf(&b, "@overload\ndef %s(%s) -> Any: ...\n", name, strings.Join(mixed, ", "))
	}
	return b.String()
}

// values is the type of an argument that may be a list.
func values(t *apiType, one string) string {
	if t.Kind == "word" {
		return one + " | Words"
	}
	return "Values"
}

// hint writes a type; given tells that it is an argument's.
func (p *python) hint(t *apiType, given bool) string {
	switch t.Kind {
	case "quantity":
		if given {
			return "Scalar"
		}
		return "float"
	case "number":
		if given {
			return "Scalar"
		}
		return "float"
	case "whole":
		return "int"
	case "word":
		return p.literal(t.Name)
	case "text":
		return "str"
	case "truth":
		return "bool"
	case "date":
		if given {
			return "str | datetime.date"
		}
		return "str"
	case "list":
		if given {
			return "Sequence[" + p.hint(t.Of, true) + "]"
		}
		return "list[" + p.hint(t.Of, false) + "]"
	case "map":
		return "dict[str, " + p.hint(t.Of, given) + "]"
	case "span":
		return "Any"
	case "struct":
		return "documents." + structName(t.Name)
	}
	return "Any"
}

func (p *python) literal(name string) string {
	if words := p.m.words(name); words != nil {
		return "Literal[" + strings.Join(words, ", ") + "]"
	}
	return "str"
}

// documents writes the structs as types of dicts.
func (p *python) documents() string {
	var b bytes.Buffer
	b.WriteString(marked("# ") + `"""What soum.documents hands on."""

from __future__ import annotations

from typing import Any, Dict, List, Literal, TypedDict, Union

from ._types import Quantity, Span, UnitsStep
`)
	for _, s := range p.m.Structs {
		if s.Name == "units.Step" {
			continue
		}
		name := structName(s.Name)
		fmt.Fprintf(&b, "\n%s = TypedDict(%q, {\n", name, name)
		for _, f := range s.Fields {
			fmt.Fprintf(&b, "    %q: %s,", f.Name, quoted(p.field(&f)))
			if f.Doc != "" {
				b.WriteString("  # " + f.Doc)
			}
			b.WriteString("\n")
		}
		fmt.Fprintf(&b, "}, total=False)\n%s.__doc__ = %s\n", name, quoted(s.Doc))
	}
	return b.String()
}

func (p *python) field(f *apiField) string {
	text := p.fieldType(&f.Type)
	if f.Null {
		return "Union[" + text + ", None]"
	}
	return text
}

// fieldType writes the type of a field, which may be text with a unit.
func (p *python) fieldType(t *apiType) string {
	switch t.Kind {
	case "quantity":
		return "Quantity"
	case "number":
		return "float"
	case "list":
		return "List[" + p.fieldType(t.Of) + "]"
	case "map":
		return "Dict[str, " + p.fieldType(t.Of) + "]"
	case "span":
		return "Span"
	case "struct":
		name := structName(t.Name)
		if t.Name == "forage.Pasture" || t.Name == "herd.Class" { // a row, or the name of one
			return "Union[str, " + name + "]"
		}
		return name
	}
	return p.hint(t, false)
}
