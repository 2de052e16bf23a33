package main

import (
	"bytes"
	"embed"
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"example.org/soum/internal/decl"
)

const rPackage = "soum/"

// rTexts are files of the package without what follows from the manifest.
//
//go:embed r
var rTexts embed.FS

// rFiles writes the R package's wrappers, their pages and its list of exports.
func rFiles(m *manifest) (map[string][]byte, error) {
	files := map[string][]byte{rPackage + "R/manifest.R": rManifest(m)}
	for name, parts := range map[string]map[string]string{
		"NAMESPACE":        {"functions": rExports(m)},
		"man/u.Rd":         {"units": rUnits(m), "quantities": rQuantities(m)},
		"man/documents.Rd": {"structs": rStructs(m)},
	} {
		text, err := rTexts.ReadFile("r/" + name)
		if err != nil {
			return nil, err
		}
		if text, err = splice(string(text), parts); err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		comment := "# "
		if strings.HasSuffix(name, ".Rd") {
			comment = "% "
		}
		files[rPackage+name] = append([]byte(marked(comment)), text...)
	}
	for _, subject := range subjects {
		var b bytes.Buffer
		b.WriteString(marked("# "))
		for _, f := range m.of(subject) {
			rWrapper(&b, f)
			page, err := rPage(m, f)
			if err != nil {
				return nil, fmt.Errorf("%s: %w", f.Name, err)
			}
			files[rPackage+"man/"+rName(f)+".Rd"] = page
		}
		files[rPackage+"R/"+subject+".R"] = b.Bytes()
	}
	return files, nil
}

// rName is a function's name in R, which has no packages within packages.
func rName(f *apiFunction) string { return f.Package + "_" + f.Snake }

// rType writes a type as text: "list:struct:herd.Class".
func rType(t *apiType) string {
	text := t.Kind
	if t.Name != "" {
		text += ":" + t.Name
	}
	if t.Of != nil {
		text += ":" + rType(t.Of)
	}
	return text
}

// rNamed writes name = value pairs of a vector or a list, one a line.
func rNamed(b *bytes.Buffer, name, constructor string, entries []string) {
	fmt.Fprintf(b, "%s <- %s(\n    %s)\n\n", name, constructor, strings.Join(entries, ",\n    "))
}

// rKey writes the name of an entry.
func rKey(name string) string {
	if regexp.MustCompile(`^[A-Za-z][A-Za-z0-9_]*$`).MatchString(name) && !slices.Contains([]string{"if", "else", "repeat", "while", "function", "for", "next", "break", "in"}, name) {
		return name
	}
	return "`" + name + "`"
}

// rManifest writes what the hand-written R reads: which library it was made
// for, the units, and the functions with the types of their arguments.
func rManifest(m *manifest) []byte {
	var b bytes.Buffer
	b.WriteString(marked("# "))
	fmt.Fprintf(&b, "made_for <- c(%d, %d)\n\n", m.ABI, m.Number)
	var units, words, shapes, functions []string
	for _, unit := range m.Units {
		units = append(units, fmt.Sprintf("%s = %s", rKey(unit.Name), unit.factor()))
	}
	rNamed(&b, "u", "list", units)
	for _, e := range m.Enums {
		words = append(words, fmt.Sprintf("%s = c(%s)", rKey(e.Name), strings.Join(each(e.Words, quoted), ", ")))
	}
	rNamed(&b, "words", "list", words)
	for _, s := range m.Structs {
		var fields []string
		for _, f := range s.Fields {
			fields = append(fields, fmt.Sprintf("%s = %q", rKey(f.Name), rType(&f.Type)))
		}
		shapes = append(shapes, fmt.Sprintf("%s = c(%s)", rKey(s.Name), strings.Join(fields, ", ")))
	}
	rNamed(&b, "shapes", "list", shapes)
	for i := range m.Functions {
		f := &m.Functions[i]
		var keys, types, results []string
		for _, p := range f.Parameters {
			keys = append(keys, fmt.Sprintf("%s = %q", rKey(p.Snake), p.Name))
			types = append(types, strconv.Quote(rType(&p.Type)))
		}
		for _, r := range f.Results {
			results = append(results, strconv.Quote(rType(&r)))
		}
		functions = append(functions, fmt.Sprintf("%s = list(name = %q, kind = %q, index = %dL,\n        keys = c(%s),\n        types = c(%s), results = c(%s))",
			rName(f), f.Name, f.Kind, f.Index, strings.Join(keys, ", "), strings.Join(types, ", "), strings.Join(results, ", ")))
	}
	rNamed(&b, "functions", "list", functions)
	return bytes.TrimSuffix(b.Bytes(), []byte("\n"))
}

func rExports(m *manifest) string {
	var b strings.Builder
	for i := range m.Functions {
		fmt.Fprintf(&b, "export(%s)\n", rName(&m.Functions[i]))
	}
	return b.String()
}

func rWrapper(b *bytes.Buffer, f *apiFunction) {
	var names, given []string
	for _, p := range f.Parameters {
		names = append(names, p.Snake)
		given = append(given, p.Snake+" = "+p.Snake)
	}
	door := "call_function"
	if f.Kind == "formula" {
		door = "eval_formula"
	}
	fmt.Fprintf(b, "%s <- function(%s)\n    %s(%q, list(%s))\n\n", rName(f), strings.Join(names, ", "), door, rName(f), strings.Join(given, ", "))
}

var rdEscapes = strings.NewReplacer(`\`, `\\`, `%`, `\%`, `{`, `\{`, `}`, `\}`)

// rdText writes plain text in a page.
func rdText(text string) string { return rdEscapes.Replace(text) }

// rNames are the names in R of functions whose name in Go is more than one word,
// and of the errors, by their names in Go.
type rNames map[string]string

var rGoName = regexp.MustCompile(`\*?\b(units\.)?[A-Z][a-z]+([A-Z][a-z]+)+\b`)

func newRNames(m *manifest) rNames {
	names := rNames{"*units.DomainError": "soum_domain_error", "*units.RangeError": "soum_range_warning", "*units.ParseError": "soum_document_error"}
	for i := range m.Functions {
		_, short, _ := strings.Cut(m.Functions[i].Name, ".")
		names[short] = rName(&m.Functions[i])
	}
	return names
}

// documentErrors names the error of a document, which is of no public package in Go.
var documentErrors = strings.NewReplacer("*document.Error", "soum_document_error", "*document error", "soum_document_error")

// spoken puts R's names in the place of Go's.
func (names rNames) spoken(f *apiFunction, text string) string {
	text = documentErrors.Replace(text)
	text = rGoName.ReplaceAllStringFunc(text, func(name string) string {
		if known, found := names[name]; found {
			return known
		}
		return name
	})
	return renamed(f, text, func(snake string) string { return snake })
}

// rTitle makes a heading of a summary: "Available returns the dry matter that
// stands." gives "The dry matter that stands".
func rTitle(summary string) string {
	_, rest, _ := strings.Cut(summary, " ")
	for _, verb := range []string{"returns ", "gives "} {
		rest = strings.TrimPrefix(rest, verb)
	}
	if at := strings.IndexAny(rest, ".:;"); at > 0 && (at+1 == len(rest) || rest[at+1] == ' ') {
		rest = rest[:at]
	}
	return title(rest)
}

// rPage writes the page of a function.
func rPage(m *manifest, f *apiFunction) ([]byte, error) {
	var b bytes.Buffer
	name, names := rName(f), newRNames(m)
	_, summary, found := strings.Cut(f.Summary, " ")
	if !found || len(f.Results) == 0 {
		return nil, fmt.Errorf("no summary or no result to document")
	}
	b.WriteString(marked("% "))
	fmt.Fprintf(&b, "\\encoding{UTF-8}\n\\name{%[1]s}\n\\alias{%[1]s}\n\\title{%[2]s}\n", name, rdText(rTitle(f.Summary)))
	fmt.Fprintf(&b, "\\description{\n\\code{%s} %s\n}\n", name, rdText(names.spoken(f, summary)))
	var parameters []string
	for _, p := range f.Parameters {
		parameters = append(parameters, p.Snake)
	}
	fmt.Fprintf(&b, "\\usage{\n%s(%s)\n}\n", name, strings.Join(parameters, ", "))
	if len(f.Parameters) > 0 {
		b.WriteString("\\arguments{\n")
		for _, p := range f.Parameters {
			fmt.Fprintf(&b, "\\item{%s}{%s}\n", p.Snake, rArgument(m, f, &p, names))
		}
		b.WriteString("}\n")
	}
	fmt.Fprintf(&b, "\\value{\n%s\n}\n", rValue(m, f))
	var source, details string
	for _, s := range f.Sections {
		text := rdText(names.spoken(f, s.Text))
		switch s.Head {
		case "Source":
			source = text
		case "Errors":
		default:
			details += fmt.Sprintf("%s: %s\n\n", s.Head, text)
		}
	}
	if f.ResultUnit != "" {
		details += "The source gives the result in " + rdText(f.ResultUnit) + ".\n\n"
	}
	if details != "" {
		fmt.Fprintf(&b, "\\details{\n%s}\n", strings.TrimSuffix(details, "\n"))
	}
	fmt.Fprintf(&b, "\\section{Errors}{\n%s\n}\n", rErrors(f, names))
	if source != "" {
		fmt.Fprintf(&b, "\\source{\n%s\n}\n", source)
	}
	b.WriteString("\\seealso{\n\\code{\\link{u}} for the units, \\code{\\link{soum-package}} for how answers are read.\n}\n")
	return b.Bytes(), nil
}

// rKindText says in words what a type is.
func rKindText(m *manifest, t *apiType) string {
	switch t.Kind {
	case "quantity":
		return fmt.Sprintf("%s, in %s", t.Name, rdText(m.quantity(t.Name).Base))
	case "number":
		return "a plain number"
	case "whole":
		return "a whole number"
	case "word":
		if words := m.words(t.Name); words != nil {
			return `one of \code{` + strings.Join(words, `}, \code{`) + "}"
		}
		return "a word"
	case "text":
		return "text"
	case "truth":
		return "\\code{TRUE} or \\code{FALSE}"
	case "date":
		return "a date"
	case "list":
		if t.Of.Kind == "struct" {
			return fmt.Sprintf("a data frame (or a list) with a row for each %s", rShape(m, t.Of.Name))
		}
		return "a vector: " + rKindText(m, t.Of)
	case "map":
		return "a named list: " + rKindText(m, t.Of)
	case "span":
		return "a list with \\code{low} and \\code{high}: " + rKindText(m, t.Of)
	case "struct":
		return "a list: a " + rShape(m, t.Name)
	}
	return "any value"
}

// rShape names a struct and leads to its fields.
func rShape(m *manifest, name string) string {
	if slices.ContainsFunc(m.Structs, func(s apiStruct) bool { return s.Name == name }) {
		return "\\link[=documents]{" + name + "}"
	}
	return name
}

func rArgument(m *manifest, f *apiFunction, p *apiParameter, names rNames) string {
	var parts []string
	if p.Doc != "" {
		parts = append(parts, rdText(names.spoken(f, p.Doc)))
	}
	switch {
	case p.Type.Kind == "quantity":
		parts = append(parts, rKindText(m, &p.Type)+", or text with a unit")
	case p.Name == decl.Document:
		parts = append(parts, "a \\link[=documents]{"+p.Type.Name+"}: a list, JSON text, or the path of a file that holds it")
	default:
		parts = append(parts, rKindText(m, &p.Type))
	}
	if p.Range != "" && p.Type.Kind != "word" {
		limits := names.spoken(f, p.Range)
		if p.Unit != "" {
			limits += " (unit: " + p.Unit + ")"
		}
		parts = append(parts, "limits: "+rdText(limits))
	}
	return strings.Join(parts, "; ") + "."
}

func rValue(m *manifest, f *apiFunction) string {
	var all []string
	for i := range f.Results {
		t := &f.Results[i]
		text := rKindText(m, t)
		if t.Kind == "quantity" {
			text += " (" + rdText(m.quantity(t.Name).Doc) + ")"
		}
		all = append(all, text)
	}
	text := strings.Join(all, "; then ")
	text = title(text)
	if strings.HasPrefix(text, "\\") { // a macro keeps its letters
		text = strings.Join(all, "; then ")
	}
	if f.Kind == "formula" {
		text += ". A vector as long as the longest argument"
	}
	return text + "."
}

// rErrors says what can be raised.
func rErrors(f *apiFunction, names rNames) string {
	var parts []string
	for _, s := range f.Sections {
		if s.Head == "Errors" {
			text := strings.TrimSuffix(rdText(names.spoken(f, s.Text)), ".")
			parts = append(parts, title(text)+".")
		}
	}
	if f.Kind == "formula" {
		parts = append(parts, "An argument outside its limits is an error of class \\code{soum_domain_error}; in vectors such a row is \\code{NaN} and one warning counts them.")
	} else {
		parts = append(parts, "Impossible figures are an error of class \\code{soum_domain_error}; an argument of a wrong form one of class \\code{soum_document_error}, with its path.")
	}
	if slices.ContainsFunc(f.Parameters, func(p apiParameter) bool { return strings.Contains(p.Range, "[") }) {
		parts = append(parts, "An argument outside what its source covers gives the value and a warning of class \\code{soum_range_warning}.")
	}
	return strings.Join(parts, " ")
}

// rUnits lists the units for their page.
func rUnits(m *manifest) string {
	var b strings.Builder
	for _, unit := range m.Units {
		fmt.Fprintf(&b, "\\item{\\code{%s}}{%s: %s}\n", rdText(unit.Name), rdText(unit.Symbol), rdText(strings.Join(unit.Quantities, ", ")))
	}
	return b.String()
}

// rQuantities lists the quantities for the page of the units.
func rQuantities(m *manifest) string {
	var b strings.Builder
	for _, q := range m.Quantities {
		fmt.Fprintf(&b, "\\item{\\code{%s}}{%s Base unit %s; in text: %s.}\n", q.Name, rdText(q.Doc), rdText(q.Base), rdText(strings.Join(q.Units, ", ")))
	}
	return b.String()
}

// rStructs writes the documents, rows and answers for their page.
func rStructs(m *manifest) string {
	var b strings.Builder
	for _, s := range m.Structs {
		fmt.Fprintf(&b, "\\section{%s}{\n%s\n\\describe{\n", s.Name, rdText(s.Doc))
		for _, f := range s.Fields {
			text := rKindText(m, &f.Type)
			if f.Doc != "" {
				text = rdText(f.Doc) + " (" + text + ")"
			}
			fmt.Fprintf(&b, "\\item{\\code{%s}}{%s}\n", f.Name, text)
		}
		b.WriteString("}\n}\n")
	}
	return b.String()
}
