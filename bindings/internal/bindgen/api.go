package main

import (
	"crypto/sha256"
	"encoding/binary"
	"encoding/json"
	"fmt"
	"go/ast"
	"go/token"
	"slices"
	"strings"

	"example.org/soum/internal/decl"
)

// version is the library's, for the packages made from the manifest.
const version = "0.1.0"

// manifest is bindings/api.json: all that another language's wrapper is made
// from.
type manifest struct {
	Library    string          `json:"library"`
	Version    string          `json:"version"`
	ABI        int             `json:"abi"`
	Number     int32           `json:"number"` // of this manifest: a wrapper refuses a library with another
	Units      []apiUnit       `json:"units"`
	Quantities []apiQuantity   `json:"quantities"`
	Enums      []apiEnum       `json:"enums"`
	Structs    []apiStruct     `json:"structs"`
	Functions  []apiFunction   `json:"functions"`
	LeftOut    []leftOut       `json:"left_out"`
	parts      map[string]bool // see inDocument
}

// documents are the structs that users write as documents.
func (m *manifest) documents() (names []string) {
	for i := range m.Functions {
		f := &m.Functions[i]
		if len(f.Parameters) > 0 && f.Parameters[0].Name == decl.Document && !slices.Contains(names, f.Parameters[0].Type.Name) {
			names = append(names, f.Parameters[0].Type.Name)
		}
	}
	return names
}

// inDocument reports whether a struct is a document, or a part of one, whose
// quantities are text with a unit.
func (m *manifest) inDocument(name string) bool {
	if m.parts == nil {
		m.parts = map[string]bool{}
		for _, document := range m.documents() {
			m.addParts(document)
		}
	}
	return m.parts[name]
}

// addParts adds a struct and those within it. What other languages give as numbers or
// text elsewhere, too, is no part.
func (m *manifest) addParts(name string) {
	at := slices.IndexFunc(m.Structs, func(s apiStruct) bool { return s.Name == name })
	if at < 0 || m.parts[name] || takesScalars(name) {
		return
	}
	m.parts[name] = true
	for i := range m.Structs[at].Fields {
		for t := &m.Structs[at].Fields[i].Type; t != nil; t = t.Of {
			if t.Kind == "struct" {
				m.addParts(t.Name)
			}
		}
	}
}

// apiUnit is a unit constant: multiply on the way in, divide on the way out.
type apiUnit struct {
	Name       string   `json:"name"`  // snake_case
	Camel      string   `json:"camel"` // camelCase
	Symbol     string   `json:"symbol"`
	Factor     float64  `json:"factor"`     // base units in one
	Quantities []string `json:"quantities"` // that it measures
}

type apiQuantity struct {
	Name   string   `json:"name"`
	Doc    string   `json:"doc"`
	Base   string   `json:"base"` // the base unit's symbol
	Metric string   `json:"metric"`
	US     string   `json:"us"`
	Units  []string `json:"units"` // symbols
}

type apiEnum struct {
	Name  string   `json:"name"` // as in "forage.Condition"
	Words []string `json:"words"`
}

type apiStruct struct {
	Name   string     `json:"name"`
	Doc    string     `json:"doc"`
	Fields []apiField `json:"fields"`
}

type apiField struct {
	Name     string  `json:"name"` // the key in JSON
	Type     apiType `json:"type"`
	Doc      string  `json:"doc"`
	Optional bool    `json:"optional,omitempty"` // the key may be left out
	Null     bool    `json:"null,omitempty"`     // null where there is nothing to tell
}

// apiType is what a parameter, a field or a result is.
type apiType struct {
	Kind string   `json:"kind"`           // quantity, number, whole, word, text, truth, date, list, map, struct, span, any
	Name string   `json:"name,omitempty"` // of a quantity, an enumeration or a struct
	Of   *apiType `json:"of,omitempty"`   // of a list, a map or a span
}

type apiFunction struct {
	Name       string         `json:"name"` // as in "forage.Available"
	Package    string         `json:"package"`
	Snake      string         `json:"snake"`
	Camel      string         `json:"camel"`
	Kind       string         `json:"kind"`  // formula (eval), lookup or work (call)
	Index      int            `json:"index"` // of a formula, for eval; else -1
	Summary    string         `json:"summary"`
	Sections   []apiSection   `json:"sections"` // Formula, Empirical, Table, Method, Uses, Errors, Note, Source
	Parameters []apiParameter `json:"parameters"`
	Results    []apiType      `json:"results"`
	ResultUnit string         `json:"result_unit,omitempty"` // symbol that print takes
}

type apiSection struct {
	Head string `json:"head"`
	Text string `json:"text"`
}

type apiParameter struct {
	Name  string  `json:"name"` // in JSON, as in Go
	Snake string  `json:"snake"`
	Type  apiType `json:"type"`
	Unit  string  `json:"unit,omitempty"` // symbol that the source takes
	Doc   string  `json:"doc"`
	Range string  `json:"limits,omitempty"` // in words
}

type leftOut struct {
	Name   string `json:"name"`
	Reason string `json:"reason"`
}

// api makes the manifest, and writes it.
func api(root string, module decl.Module) (m *manifest, text []byte, err error) {
	m = &manifest{Library: "soum", Version: version, ABI: 1}
	units := module.Package("units")
	values, err := constants(root)
	if err != nil {
		return nil, nil, err
	}
	m.addUnits(units, values)
	index := 0
	for _, p := range module[1:] {
		if err := m.addPackage(p, units, &index); err != nil {
			return nil, nil, err
		}
	}
	m.addEnums(units, []string{"End", "System"})
	m.leaveOut("units.Parse…", "one function, units.parse, takes the quantity's name")
	unnumbered, err := json.Marshal(m)
	if err != nil {
		return nil, nil, err
	}
	if err := m.checkNames(); err != nil {
		return nil, nil, err
	}
	sum := sha256.Sum256(unnumbered)
	m.Number = int32(binary.BigEndian.Uint32(sum[:4]) & 0x7fffffff)
	text, err = json.MarshalIndent(m, "", " ")
	return m, append(text, '\n'), err
}

// mostArguments is how many a formula can take through the doors (eval1 of the
// wasm door, the arrays of the C header).
const mostArguments = 8

// reserved are words that some language keeps for itself, and functions of ours
// could be called.
var reserved = []string{
	"break", "case", "catch", "class", "const", "continue", "def", "default", "delete", "else", "export", "finally", "for", "from",
	"function", "if", "import", "in", "new", "next", "pass", "raise", "repeat", "return", "switch", "throw", "try", "typeof", "var", "while", "with", "yield",
}

// checkNames refuses what no wrapper could be written for.
func (m *manifest) checkNames() error {
	for _, f := range m.Functions {
		if f.Kind == "formula" && len(f.Parameters) > mostArguments {
			return fmt.Errorf("%s: takes %d arguments, and the doors pass %d", f.Name, len(f.Parameters), mostArguments)
		}
		_, name, _ := strings.Cut(f.Name, ".")
		if slices.Contains(reserved, strings.ToLower(name)) {
			return fmt.Errorf("%s: the name is a reserved word of a language; choose another", f.Name)
		}
	}
	for _, u := range m.Units {
		for _, r := range u.Name {
			if !(r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' || r >= '0' && r <= '9' || r == '_') {
				return fmt.Errorf("the unit %q is called %q in other languages, which is no name: give its symbol a word in unitWords", u.Symbol, u.Name)
			}
		}
	}
	return nil
}

func (m *manifest) leaveOut(name, reason string) {
	m.LeftOut = append(m.LeftOut, leftOut{name, reason})
}

// unitWords are the words that symbols are spoken as in constants' names.
var unitWords = map[string]string{
	"m": "metre", "mm": "millimetre", "cm": "centimetre", "km": "kilometre", "yd": "yard", "ft": "foot", "in": "inch", "mi": "mile",
	"m2": "square_metre", "ha": "hectare", "ft2": "square_foot", "yd2": "square_yard", "ac": "acre",
	"m3": "cubic_metre", "L": "litre", "ft3": "cubic_foot", "in3": "cubic_inch", "gal": "gallon",
	"g": "gram", "kg": "kg", "t": "tonne", "oz": "ounce", "lb": "lb", "short ton": "short_ton",
	"days": "day", "weeks": "week", "h": "hour", "%": "percent", "°C": "celsius_degree", "°F": "fahrenheit_degree",
	"ac-ft": "acre_foot", "°": "degree", "°C day": "celsius_degree_day", "°F day": "fahrenheit_degree_day",
}

// unitName speaks a symbol: "lb/ac/in" is lb_per_acre_inch.
func unitName(symbol string) string {
	var words []string
	for _, part := range strings.Split(symbol, "/") {
		word, known := unitWords[part]
		if !known {
			word = strings.ToLower(strings.ReplaceAll(part, " ", "_"))
		}
		words = append(words, word)
	}
	if len(words) == 1 {
		return words[0]
	}
	return words[0] + "_per_" + strings.Join(words[1:], "_")
}

func (m *manifest) addUnits(p *decl.Package, values map[string]float64) {
	for _, q := range p.Quantities {
		var symbols []string
		for _, u := range q.Units {
			symbol := u.Spellings[0]
			symbols = append(symbols, symbol)
			name := unitName(symbol)
			at := slices.IndexFunc(m.Units, func(have apiUnit) bool { return have.Name == name })
			if at < 0 {
				m.Units = append(m.Units, apiUnit{Name: name, Camel: camel(name), Symbol: symbol, Factor: values[u.Name]})
				at = len(m.Units) - 1
			}
			m.Units[at].Quantities = append(m.Units[at].Quantities, q.Name)
		}
		base := "°C"
		if symbols != nil {
			base = symbols[0]
		}
		metric, us := q.Metric, q.US
		if symbols == nil {
			symbols, metric, us = []string{"°C", "°F"}, "°C", "°F"
		}
		m.Quantities = append(m.Quantities, apiQuantity{Name: q.Name, Doc: q.Doc, Base: base, Metric: metric, US: us, Units: symbols})
	}
}

func camel(snake string) string {
	words := strings.Split(snake, "_")
	for i := 1; i < len(words); i++ {
		if words[i] != "" {
			words[i] = title(words[i])
		}
	}
	return strings.Join(words, "")
}

func (m *manifest) addEnums(p *decl.Package, only []string) {
	for _, e := range p.Enums {
		if only != nil && !slices.Contains(only, e.Name) {
			continue
		}
		words := e.Words()
		if e.Name == "System" {
			words = []string{"metric", "US"}
		}
		m.Enums = append(m.Enums, apiEnum{Name: p.Name + "." + e.Name, Words: words})
	}
}

func (m *manifest) addPackage(p, units *decl.Package, index *int) error {
	m.addEnums(p, nil)
	if err := m.addStructs(p, units); err != nil {
		return err
	}
	for i := range p.Functions {
		f := &p.Functions[i]
		switch {
		case f.Receiver != "" && slices.Contains([]string{"String", "MarshalText", "UnmarshalText"}, f.Name):
			continue // the words of enumerations are in the manifest
		case f.Receiver != "" && !f.OfDocument():
			m.leaveOut(f.Full(), goOnly(f.Name))
			continue
		case f.Name == "Formulas":
			m.leaveOut(f.Full(), "its content is this manifest")
			continue
		case f.Name == "Read" || f.Name == "ReadFenceJob":
			m.leaveOut(f.Full(), "it is given as a document, and is read and checked, where it is planned or answered")
			continue
		}
		a := apiFunction{Name: f.Full(), Package: p.Name, Snake: decl.Snake(f.Name), Camel: decl.Camel(f.Name), Kind: "work", Index: -1, Summary: f.Summary(), ResultUnit: f.ResultUnit()}
		if f.IsFormula() {
			a.Kind, a.Index = "formula", *index
			*index++
		}
		for _, s := range f.Sections {
			if s.Head != "Where" && s.Head != "Check" {
				a.Sections = append(a.Sections, apiSection{s.Head, sectionText(s.Head, s.Text)})
			}
		}
		if err := a.addParameters(f, p, units); err != nil {
			return fmt.Errorf("%s: %w", f.Full(), err)
		}
		if a.Kind == "work" && !slices.ContainsFunc(a.Parameters, func(p apiParameter) bool {
			return p.Type.Kind != "word" && p.Type.Kind != "text" && p.Type.Kind != "whole"
		}) {
			a.Kind = "lookup"
		}
		for _, r := range f.Results {
			if r == "error" {
				continue
			}
			t, err := typeOf(r, p, units)
			if err != nil {
				return fmt.Errorf("%s: %w", f.Full(), err)
			}
			a.Results = append(a.Results, t)
		}
		m.Functions = append(m.Functions, a)
	}
	return nil
}

// goOnly tells why a method crosses to no other language.
func goOnly(method string) string {
	switch method {
	case "RunContext", "AnswerContext":
		return "it is stopped by a context of Go; the function without one crosses"
	case "Check", "JSON", "Clone":
		return "a document of another language is its own, and is checked where it is asked"
	}
	return "a method on a row or a document, Go only: its fields cross as JSON"
}

// sectionText puts a section on one line; the lines of a piecewise formula stay
// apart by semicolons.
func sectionText(head, text string) string {
	if head != "Formula" && head != "Empirical" {
		return oneLine(text)
	}
	var lines []string
	for line := range strings.Lines(text) {
		if line = oneLine(line); line != "" {
			lines = append(lines, line)
		}
	}
	return strings.Join(lines, "; ")
}

func (a *apiFunction) addParameters(f *decl.Function, p, units *decl.Package) error {
	if f.OfDocument() {
		a.Parameters = append(a.Parameters, apiParameter{Name: decl.Document, Snake: decl.Document, Type: apiType{Kind: "struct", Name: p.Name + "." + f.Receiver}})
	}
	for _, parameter := range f.Arguments() {
		t, err := typeOf(parameter.Type, p, units)
		if err != nil {
			return fmt.Errorf("%s: %w", parameter.Name, err)
		}
		out := apiParameter{Name: parameter.Name, Snake: decl.Snake(parameter.Name), Type: t}
		if w := parameter.Where; w != nil {
			out.Unit, out.Doc, out.Range = w.Unit, w.Text, w.Limits
		}
		if t.Kind == "word" {
			out.Range = "one of " + strings.Join(wordsOf(t.Name, p, units), ", ")
		}
		a.Parameters = append(a.Parameters, out)
	}
	return nil
}

func wordsOf(name string, p, units *decl.Package) []string {
	short := name[strings.Index(name, ".")+1:]
	if strings.HasPrefix(name, "units.") {
		if short == "System" {
			return []string{"metric", "US"}
		}
		p = units
	}
	for _, e := range p.Enums {
		if e.Name == short {
			return e.Words()
		}
	}
	return nil
}

// typeOf tells what a Go type is to another language.
func typeOf(name string, p, units *decl.Package) (apiType, error) {
	list := func(of string) (apiType, error) {
		t, err := typeOf(of, p, units)
		return apiType{Kind: "list", Of: &t}, err
	}
	switch {
	case strings.HasPrefix(name, "*"):
		return typeOf(name[1:], p, units)
	case strings.HasPrefix(name, "[]"):
		return list(name[2:])
	case strings.HasPrefix(name, "["):
		return list(name[strings.Index(name, "]")+1:])
	case strings.HasPrefix(name, "map[string]"):
		t, err := typeOf(strings.TrimPrefix(name, "map[string]"), p, units)
		return apiType{Kind: "map", Of: &t}, err
	case strings.HasPrefix(name, "units.Span["):
		t, err := typeOf(strings.TrimSuffix(strings.TrimPrefix(name, "units.Span["), "]"), p, units)
		return apiType{Kind: "span", Of: &t}, err
	case quantity(name, units) != nil || name == "units.Temperature":
		return apiType{Kind: "quantity", Name: strings.TrimPrefix(name, "units.")}, nil
	}
	switch name {
	case "forage.PastureRow", "herd.ClassRow": // by name, or written out
		return apiType{Kind: "struct", Name: strings.TrimSuffix(name, "Row")}, nil
	case "float64":
		return apiType{Kind: "number"}, nil
	case "int", "time.Month":
		return apiType{Kind: "whole"}, nil
	case "string", "units.Money", "units.FeedPrice":
		return apiType{Kind: "text"}, nil
	case "bool":
		return apiType{Kind: "truth"}, nil
	case "units.Date":
		return apiType{Kind: "date"}, nil
	case "any":
		return apiType{Kind: "any"}, nil
	case "Values": // of a note: an object of plain figures
		return apiType{Kind: "map", Of: &apiType{Kind: "any"}}, nil
	case "units.End", "units.System":
		return apiType{Kind: "word", Name: name}, nil
	case "units.Step":
		return apiType{Kind: "struct", Name: name}, nil
	}
	if enum(name, p) != nil {
		if !strings.Contains(name, ".") {
			name = p.Name + "." + name
		}
		return apiType{Kind: "word", Name: name}, nil
	}
	if ast.IsExported(name[strings.Index(name, ".")+1:]) {
		if !strings.Contains(name, ".") {
			name = p.Name + "." + name
		}
		return apiType{Kind: "struct", Name: name}, nil
	}
	return apiType{}, fmt.Errorf("no other language knows a %s", name)
}

// addStructs lists the exported structs with their JSON keys.
func (m *manifest) addStructs(p, units *decl.Package) error {
	for _, file := range p.Files {
		for _, d := range file.Decls {
			g, ok := d.(*ast.GenDecl)
			if !ok || g.Tok != token.TYPE {
				continue
			}
			for _, s := range g.Specs {
				spec := s.(*ast.TypeSpec)
				fields, ok := spec.Type.(*ast.StructType)
				if !ok || !spec.Name.IsExported() || spec.TypeParams != nil {
					continue
				}
				if !hasExported(fields) {
					m.leaveOut(p.Name+"."+spec.Name.Name, "it holds what Go alone can ask again and again, and no figures")
					continue
				}
				out := apiStruct{Name: p.Name + "." + spec.Name.Name, Doc: oneLine(g.Doc.Text())}
				if err := out.addFields(fields, p, units); err != nil {
					return fmt.Errorf("%s: %w", out.Name, err)
				}
				m.Structs = append(m.Structs, out)
			}
		}
	}
	return nil
}

// hasExported reports whether a struct has a field that crosses.
func hasExported(fields *ast.StructType) bool {
	return slices.ContainsFunc(fields.Fields.List, func(f *ast.Field) bool { return len(f.Names) > 0 && f.Names[0].IsExported() })
}

func oneLine(text string) string { return strings.Join(strings.Fields(text), " ") }

// addFields lists the fields of a struct, and in their place those of what it embeds
// of package units, as JSON has them.
func (s *apiStruct) addFields(fields *ast.StructType, p, units *decl.Package) error {
	for _, f := range fields.Fields.List {
		if len(f.Names) == 0 {
			if embedded := units.Fields[strings.TrimPrefix(decl.TypeText(f.Type), "units.")]; embedded != nil {
				if err := s.addFields(embedded, units, units); err != nil {
					return err
				}
			}
			continue
		}
		if !f.Names[0].IsExported() {
			continue
		}
		key, doc, left := "", oneLine(f.Doc.Text()+f.Comment.Text()), ""
		if f.Tag != nil {
			tag := structTag(f.Tag.Value)
			key, left, _ = strings.Cut(tag.Get("json"), ",")
			if doc == "" {
				doc = tag.Get("allowed")
			}
			if key == "-" {
				continue
			}
		}
		if key == "" {
			return fmt.Errorf("%s has no json key", f.Names[0].Name)
		}
		t, err := typeOf(decl.TypeText(f.Type), p, units)
		if err != nil {
			return fmt.Errorf("%s: %w", f.Names[0].Name, err)
		}
		optional := strings.HasPrefix(left, "omit")
		_, pointer := f.Type.(*ast.StarExpr)
		s.Fields = append(s.Fields, apiField{Name: key, Type: t, Doc: doc, Optional: optional, Null: pointer && !optional})
	}
	return nil
}
