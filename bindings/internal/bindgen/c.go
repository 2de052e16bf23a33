package main

import (
	_ "embed"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode"
)

// cText is the C header without what follows from the manifest.
//
//go:embed c/soum.h
var cText string

// cHeader writes the C header.
func cHeader(m *manifest) ([]byte, error) {
	h := header{m: m, seen: map[string]bool{}}
	text, err := splice(cText, map[string]string{
		"version":  h.part(h.version),
		"units":    h.part(h.units),
		"words":    h.part(h.words),
		"numbers":  h.part(h.numbers),
		"limits":   h.part(h.limits),
		"formulas": h.part(h.functions),
		"calls":    h.part(h.calls),
	})
	if err == nil {
		err = h.err
	}
	return append([]byte("/* "+strings.TrimSpace(marked(""))+" */\n"), text...), err
}

type header struct {
	m    *manifest
	b    strings.Builder
	seen map[string]bool
	err  error
}

// part gives what a part writes.
func (h *header) part(write func()) string {
	h.b.Reset()
	write()
	return h.b.String()
}

func (h *header) say(format string, values ...any) { fmt.Fprintf(&h.b, format, values...) }

// name registers a constant's name: no two may meet.
func (h *header) name(parts ...string) string {
	text := "SOUM"
	for _, part := range parts {
		text += "_" + part
	}
	text = strings.Map(func(r rune) rune {
		if r == ' ' || r == '-' || r == '.' {
			return '_'
		}
		return unicode.ToUpper(r)
	}, text)
	if h.seen[text] {
		h.err = fmt.Errorf("the header has two constants %s", text)
	}
	h.seen[text] = true
	return text
}

// comment writes lines within a comment.
func (h *header) comment(text string) {
	for line := range strings.Lines(text) {
		line = strings.ReplaceAll(strings.ReplaceAll(line, "*/", "* /"), "/*", "/ *")
		h.say("%s\n", strings.TrimRight(" * "+line, " \n"))
	}
}

func (h *header) version() {
	h.say("#define SOUM_VERSION %q\n#define SOUM_ABI %d\n", h.m.Version, h.m.ABI)
	h.say("#define SOUM_NUMBER %d /* of the manifest that this header is made from */\n", h.m.Number)
}

func (h *header) units() {
	for _, u := range h.m.Units {
		number := strconv.FormatFloat(u.Factor, 'g', -1, 64)
		if !strings.ContainsAny(number, ".e") {
			number += ".0"
		}
		h.say("#define %-34s %-22s /* %s: %s */\n", h.name(u.Name), number, u.Symbol, strings.Join(u.Quantities, ", "))
	}
}

// symbol turns "ManureKind" into "manure_kind".
func symbol(camel string) string {
	var b strings.Builder
	for i, r := range camel {
		if unicode.IsUpper(r) && i > 0 {
			b.WriteByte('_')
		}
		b.WriteRune(unicode.ToLower(r))
	}
	return b.String()
}

// enumTag is the tag of an enumeration: "herd.ManureKind" is
// soum_herd_manure_kind.
func enumTag(name string) string {
	pkg, short, _ := strings.Cut(name, ".")
	return "soum_" + pkg + "_" + symbol(short)
}

// words writes the enumerations; no comma follows the last word.
func (h *header) words() {
	for _, e := range h.m.Enums {
		tag := enumTag(e.Name)
		h.say("enum %s {\n", tag)
		for i, word := range e.Words {
			comma := ","
			if i == len(e.Words)-1 {
				comma = ""
			}
			h.say("\t%s = %d%s /* \"%s\" */\n", h.name(strings.TrimPrefix(tag, "soum_"), word), i+1, comma, word)
		}
		h.say("};\n")
	}
}

func formulaNumber(f *apiFunction) string {
	return "SOUM_" + strings.ToUpper(f.Package+"_"+f.Snake)
}

func (h *header) numbers() {
	formulas := h.m.formulas()
	for i, f := range formulas {
		comma := ","
		if i == len(formulas)-1 {
			comma = ""
		}
		h.say("\t%s = %d%s /* %d */\n", h.name(f.Package, f.Snake), f.Index, comma, len(f.Parameters))
	}
}

// limitsText tells what an argument may be.
func limitsText(a *apiParameter) string {
	text := a.Range
	if text == "" {
		text = "any finite number"
	}
	if a.Unit != "" {
		text += " (" + a.Unit + ")"
	}
	return text
}

// limits writes what soum_reason tells of each formula's arguments.
func (h *header) limits() {
	for _, f := range h.m.formulas() {
		var rows []string
		for _, a := range f.Parameters {
			rows = append(rows, strconv.Quote(f.Name+": limits of "+a.Snake+": "+limitsText(&a)))
		}
		h.say("\t\t{ %s },\n", strings.Join(rows, ",\n\t\t  "))
	}
}

// functions writes an inline function for each formula, under its package's heading.
func (h *header) functions() {
	pkg := ""
	for _, f := range h.m.formulas() {
		if f.Package != pkg {
			pkg = f.Package
			title := pkg + ": " + strings.ToLower(topics[pkg][:1]) + strings.TrimSuffix(topics[pkg][1:], ".")
			h.say("\n\n/* %s %s */\n", title, strings.Repeat("-", max(3, 74-len([]rune(title)))))
		}
		h.say("\n/*\n")
		h.comment(h.told(f))
		h.say(" */\n")
		h.function(f)
	}
}

var cWords = strings.Fields("auto break case char const continue default do double else enum extern float for goto if inline int long register restrict return short signed sizeof static struct switch typedef union unsigned void volatile while class delete export friend namespace new operator private protected public template this throw try typename using virtual bool true false and or not status")

// cName keeps clear of the words of C and C++.
func cName(snake string) string {
	if slices.Contains(cWords, snake) {
		return snake + "_"
	}
	return snake
}

func (h *header) function(f *apiFunction) {
	var parameters, given []string
	for _, a := range f.Parameters {
		name := cName(a.Snake)
		if a.Type.Kind == "word" {
			parameters = append(parameters, "enum "+enumTag(a.Type.Name)+" "+name)
			given = append(given, "(double)"+name)
		} else {
			parameters = append(parameters, "double "+name)
			given = append(given, name)
		}
	}
	head := "static inline double soum_" + f.Package + "_" + f.Snake + "("
	rest := strings.Join(append(parameters, "int32_t *status"), ", ") + ")"
	if len(head+rest) > 96 {
		head += "\n\t"
	}
	h.say("%s\n{\n\tconst double given[] = { %s };\n\n\treturn soum_one(%s, given, status);\n}\n", head+rest, strings.Join(given, ", "), formulaNumber(f))
}

// told tells of a formula: what it returns, how, from what, in which unit, by whom.
func (h *header) told(f *apiFunction) string {
	paragraphs := []string{broken(decapitate(f), 76)}
	result := "Result: a number."
	if r := f.Results[0]; r.Kind == "quantity" {
		result = "Result: " + r.Name + " in " + h.m.quantity(r.Name).Base + "."
	}
	for _, s := range f.Sections {
		switch s.Head {
		case "Formula":
			paragraphs = append(paragraphs, "    "+strings.ReplaceAll(s.Text, "; ", "\n    "))
		case "Empirical":
			paragraphs = append(paragraphs, "    "+strings.ReplaceAll(s.Text, "; ", "\n    ")+"\nover the numbers in the units of the limits")
		case "Table", "Method":
			paragraphs = append(paragraphs, broken(s.Head+": "+s.Text, 76))
		case "Note", "Source":
			result += "\n" + broken(s.Head+": "+s.Text, 76)
		}
	}
	return strings.Join(append(paragraphs, h.arguments(f), result), "\n\n") + "\n"
}

// arguments tells of a formula's arguments, what each is beside its name.
func (h *header) arguments(f *apiFunction) string {
	width := 0
	for _, a := range f.Parameters {
		width = max(width, len(a.Name))
	}
	var lines []string
	for _, a := range f.Parameters {
		text := a.Doc
		switch a.Type.Kind {
		case "word":
			text += "; enum " + enumTag(a.Type.Name)
		case "quantity":
			text += "; " + h.m.quantity(a.Type.Name).Base + "; limits " + limitsText(&a)
		default:
			text += "; limits " + limitsText(&a)
		}
		head := a.Name
		for _, line := range wrap(text, 74-width) {
			lines = append(lines, fmt.Sprintf("%-*s  %s", width, head, line))
			head = ""
		}
	}
	return strings.Join(lines, "\n")
}

// calls lists, within a comment, what goes through soum_call.
func (h *header) calls() {
	for i := range h.m.Functions {
		f := &h.m.Functions[i]
		if f.Kind == "formula" {
			continue
		}
		var names []string
		for _, a := range f.Parameters {
			names = append(names, a.Name)
		}
		h.comment(fmt.Sprintf("  %-27s %s", f.Name, strings.Join(names, ", ")))
		h.comment("      " + strings.ReplaceAll(broken(decapitate(f), 70), "\n", "\n      "))
	}
}
