package main

import (
	"bytes"
	"fmt"
	"regexp"
	"slices"
	"strings"
)

// jsFiles writes the JavaScript package's wrappers and types.
func jsFiles(m *manifest) (map[string][]byte, error) {
	j := javascript{m: m}
	files := map[string][]byte{}
	put := func(name, text string) { files[name] = []byte(text) }
	for _, name := range subjects {
		put(name+".js", j.module(name))
		put(name+".d.ts", j.types(name))
	}
	put("constants.js", j.constants())
	put("constants.d.ts", j.constantTypes())
	put("documents.d.ts", j.documents())
	put("manifest.js", j.facts())
	put("library.js", j.library())
	put("index.d.ts", j.libraryTypes())
	return files, nil
}

type javascript struct{ m *manifest }

// kindName names what an argument is for core.js: a quantity, an enumeration,
// or a plain number.
func kindName(t apiType) string {
	switch t.Kind {
	case "quantity", "word":
		return t.Name
	}
	return "number"
}

// module writes a package's functions.
func (j *javascript) module(pkg string) string {
	var b bytes.Buffer
	b.WriteString(heading + "import { call, evaluate, formula, numberOf, numbersOf } from \"./core.js\";\n")
	for _, f := range j.m.of(pkg) {
		b.WriteString("\n" + j.comment(f))
		if f.Kind == "formula" {
			var kinds, values []string
			for _, a := range f.Parameters {
				kinds = append(kinds, fmt.Sprintf("%s: %q", a.Name, kindName(a.Type)))
				values = append(values, "given?."+a.Name)
			}
			fmt.Fprintf(&b, "export function %s(given) {\n  return evaluate(%sFormula, given, %s);\n}\n", f.Camel, f.Camel, strings.Join(values, ", "))
			fmt.Fprintf(&b, "const %sFormula = formula(%d, %q, { %s });\n", f.Camel, f.Index, f.Name, strings.Join(kinds, ", "))
			continue
		}
		fmt.Fprintf(&b, "export function %s(given = {}) {\n  return %s;\n}\n", f.Camel, converted(f.Results, fmt.Sprintf("call(%q, given)", f.Name)))
	}
	text := b.String()
	for _, name := range []string{"numberOf", "numbersOf"} { // import what is used
		if strings.Count(text, name+"(") == 0 {
			text = strings.Replace(text, ", "+name, "", 1)
		}
	}
	return text
}

// converted turns an answer into numbers where it is one or a list of them.
func converted(results []apiType, text string) string {
	number := func(t apiType) bool { return t.Kind == "quantity" || t.Kind == "number" }
	switch {
	case len(results) == 1 && number(results[0]):
		return "numberOf(" + text + ")"
	case len(results) == 1 && results[0].Kind == "list" && number(*results[0].Of):
		return "numbersOf(" + text + ")"
	case len(results) > 1 && !slices.ContainsFunc(results, func(t apiType) bool { return !number(t) }):
		return "Array.from(numbersOf(" + text + "))"
	}
	return text
}

// comment writes a function's documentation.
func (j *javascript) comment(f *apiFunction) string {
	var lines []string
	say := func(text string) {
		lines = append(lines, strings.TrimRight(" * "+strings.ReplaceAll(text, "*/", "* /"), " "))
	}
	spoken := func(text string) string {
		return j.m.spoken(f.Package, text, func(f *apiFunction) string { return f.Camel })
	}
	say(strings.Replace(spoken(f.Summary), f.short()+" ", f.Camel+" ", 1))
	for _, s := range f.Sections {
		say("")
		say(s.Head + ": " + spoken(s.Text))
	}
	if len(f.Parameters) > 0 {
		say("")
	}
	for _, a := range f.Parameters {
		text := "@param given." + a.Name + " " + spoken(a.Doc)
		if a.Unit != "" {
			text += ", the source takes " + a.Unit
		}
		if a.Range != "" {
			text += "; " + a.Range
		}
		say(text)
	}
	say("@returns " + jsReturned(f))
	if f.Kind == "formula" {
		say("@throws {DomainError} where an argument is impossible; in lists such rows are NaN, with one warning")
	}
	return "/**\n" + strings.Join(lines, "\n") + "\n */\n"
}

func jsReturned(f *apiFunction) string {
	var all []string
	for _, r := range f.Results {
		all = append(all, jsWords(r))
	}
	text := strings.Join(all, " and ")
	if f.ResultUnit != "" {
		text += " (the source gives " + f.ResultUnit + ")"
	}
	return text
}

func jsWords(t apiType) string {
	switch t.Kind {
	case "quantity":
		return t.Name + " in base units"
	case "list":
		return "a list of " + jsWords(*t.Of)
	case "struct":
		return structName(t.Name)
	case "word":
		return "a word: " + t.Name
	}
	return "a " + t.Kind
}

// tsType writes what comes out, or stands in a document of its own kind.
func (j *javascript) tsType(t apiType, document bool) string {
	switch t.Kind {
	case "quantity":
		if document {
			return "string"
		}
		return "number"
	case "number", "whole":
		return "number"
	case "truth":
		return "boolean"
	case "word":
		return j.wordType(t.Name)
	case "list":
		return "Array<" + j.tsType(*t.Of, document) + ">"
	case "map":
		return "Record<string, " + j.tsType(*t.Of, document) + ">"
	case "span":
		of := j.tsType(*t.Of, document)
		return "{ low: " + of + "; high: " + of + " }"
	case "struct":
		if t.Name == "units.Step" {
			return "Step"
		}
		return structName(t.Name)
	case "any":
		return "unknown"
	}
	return "string"
}

func (j *javascript) wordType(name string) string {
	if words := j.m.words(name); words != nil {
		return strings.Join(words, " | ")
	}
	return "string"
}

// given writes what a look-up or a work takes.
func (j *javascript) given(t apiType) string {
	switch t.Kind {
	case "quantity":
		return "Scalar"
	case "list":
		if of := t.Of.Kind; of == "quantity" || of == "number" {
			return "Column"
		}
		return "ReadonlyArray<" + j.given(*t.Of) + ">"
	}
	return j.tsType(t, false)
}

// types writes the types of a package's functions.
func (j *javascript) types(pkg string) string {
	var b bytes.Buffer
	b.WriteString(heading + "import type { Column, Scalar, Step, Values, Words } from \"./core.js\";\nimport type * as documents from \"./documents.js\";\n")
	for _, f := range j.m.of(pkg) {
		comment := "\n" + j.comment(f)
		if f.Kind == "formula" {
			var one, many []string
			for _, a := range f.Parameters {
				scalar, values := "Scalar", "Values"
				switch a.Type.Kind {
				case "word":
					scalar = j.wordType(a.Type.Name)
					values = "Words<" + scalar + ">"
				case "number", "whole":
					scalar, values = "number", "number | Column"
				}
				one = append(one, a.Name+": "+scalar)
				many = append(many, a.Name+": "+values)
			}
			fmt.Fprintf(&b, "%sexport function %s(given: { %s }): number;\n", comment, f.Camel, strings.Join(one, "; "))
			fmt.Fprintf(&b, "export function %s(given: { %s }): number | Float64Array;\n", f.Camel, strings.Join(many, "; "))
			continue
		}
		var takes []string
		for _, a := range f.Parameters {
			takes = append(takes, a.Name+": "+qualified(j.given(a.Type)))
		}
		argument := "given: { " + strings.Join(takes, "; ") + " }"
		if takes == nil {
			argument = ""
		}
		fmt.Fprintf(&b, "%sexport function %s(%s): %s;\n", comment, f.Camel, argument, qualified(j.returned(f)))
	}
	return b.String()
}

// qualified finds structs in the module of documents.
func qualified(text string) string {
	return structNames.ReplaceAllString(text, "documents.$1")
}

var structNames = regexp.MustCompile(`\b((?:` + strings.Join(each(subjects, title), "|") + `)(?:[A-Z]\w*)?)\b`)

func (j *javascript) returned(f *apiFunction) string {
	if len(f.Results) > 1 {
		var all []string
		for _, r := range f.Results {
			all = append(all, j.tsType(r, false))
		}
		return "[" + strings.Join(all, ", ") + "]"
	}
	r := f.Results[0]
	if r.Kind == "list" && (r.Of.Kind == "quantity" || r.Of.Kind == "number") {
		return "Float64Array"
	}
	return j.tsType(r, false)
}

// documents writes the structs that go in and come out.
func (j *javascript) documents() string {
	var b bytes.Buffer
	b.WriteString(heading + "// Quantities of a farm and of its rows are text with a unit; those of a plan are\n// numbers in the base unit that their key ends in.\n\nimport type { Scalar, Step } from \"./core.js\";\n")
	for _, s := range j.m.Structs {
		document := j.m.inDocument(s.Name)
		fmt.Fprintf(&b, "\n/** %s */\nexport interface %s {\n", s.Doc, structName(s.Name))
		for _, f := range s.Fields {
			optional := ""
			if f.Optional {
				optional = "?"
			}
			t := j.tsType(f.Type, document)
			if takesScalars(s.Name) && f.Type.Kind == "quantity" {
				t = "Scalar"
			}
			if document && f.Type.Kind == "struct" && (f.Name == "class" || f.Name == "pasture") {
				t = "string | " + t
			}
			if f.Null {
				t += " | null"
			}
			if f.Doc != "" {
				fmt.Fprintf(&b, "  /** %s */\n", f.Doc)
			}
			fmt.Fprintf(&b, "  %s%s: %s;\n", f.Name, optional, t)
		}
		if document {
			b.WriteString("  /** Keys of your own. */\n  [own: `x-${string}`]: unknown;\n")
		}
		b.WriteString("}\n")
	}
	return b.String()
}

// takesScalars tells whether a struct goes in whose quantities are numbers or
// text.
func takesScalars(name string) bool {
	return slices.Contains([]string{"grazing.SetStocking", "rainfall.MonthlyRain", "farm.Answers"}, name)
}

// constants writes the units as constants.
func (j *javascript) constants() string {
	var b bytes.Buffer
	b.WriteString(heading)
	for _, u := range j.m.Units {
		fmt.Fprintf(&b, "/** %s: %s. */\nexport const %s = %s;\n", u.Symbol, strings.Join(u.Quantities, ", "), u.Camel, u.factor())
	}
	return b.String()
}

func (j *javascript) constantTypes() string {
	var b bytes.Buffer
	var names []string
	for _, q := range j.m.Quantities {
		names = append(names, q.Name)
	}
	b.WriteString(heading + "/** The quantities. */\nexport type Quantity = " + strings.Join(each(names, quoted), " | ") + ";\n\n")
	for _, u := range j.m.Units {
		fmt.Fprintf(&b, "/** %s: %s. */\nexport const %s: number;\n", u.Symbol, strings.Join(u.Quantities, ", "), u.Camel)
	}
	return b.String()
}

// facts writes what core.js knows of the manifest.
func (j *javascript) facts() string {
	var b bytes.Buffer
	fmt.Fprintf(&b, "%sexport const version = %q;\nexport const abi = %d;\nexport const manifest = %d;\n\n// The base unit of each quantity.\nexport const bases = {\n", heading, j.m.Version, j.m.ABI, j.m.Number)
	for _, q := range j.m.Quantities {
		fmt.Fprintf(&b, "  %s: %q,\n", q.Name, q.Base)
	}
	b.WriteString("};\n\n// The words of each enumeration, the first being 1.\nexport const words = {\n")
	for _, e := range j.m.Enums {
		fmt.Fprintf(&b, "  %q: [%s],\n", e.Name, strings.Join(each(e.Words, quoted), ", "))
	}
	b.WriteString("};\n")
	return b.String()
}

// jsModules is the head of a file that hands on every module.
func jsModules() string {
	text := heading
	for _, name := range append(slices.Clone(subjects), "units") {
		text += fmt.Sprintf("export * as %s from \"./%s.js\";\n", name, name)
	}
	return text
}

func (j *javascript) library() string {
	return jsModules() + "export { call, memorySize, onRangeWarning, showWork } from \"./core.js\";\nexport { DocumentError, DomainError, DomainWarning, RangeWarning } from \"./errors.js\";\nexport { version } from \"./manifest.js\";\n"
}

func (j *javascript) libraryTypes() string {
	return jsModules() + "export type * as documents from \"./documents.js\";\nexport * from \"./core.js\";\n\n/** The library's version. */\nexport const version: string;\n"
}
