package main

import (
	"regexp"
	"strconv"
	"strings"
)

// What the wrappers of several languages are written with.

// topics tell what the packages are about, for wrappers whose modules need a first
// line.
var topics = map[string]string{
	"herd":     "Animals: classes, intake, animal units, water, manure.",
	"forage":   "Grass: pasture rows, measuring, use, growth, hazards.",
	"rainfall": "Rain: passes, production, records.",
	"grazing":  "The rotation: stocking, paddocks, strips, fence, water, money.",
	"farm":     "The farm as a document: its season's plan, what it carries, the log of its moves.",
	"study":    "Many seasons of a farm under rain drawn from a record.",
	"fit":      "Which numbers of which stock fit a farm's land.",
}

// marked is the first line of a file that is written, as a comment of its language.
func marked(comment string) string {
	return comment + strings.TrimPrefix(strings.TrimSpace(heading), "// ") + "\n"
}

// of gives the functions of a package.
func (m *manifest) of(pkg string) []*apiFunction {
	return m.some(func(f *apiFunction) bool { return f.Package == pkg })
}

// formulas gives the formulas, in the order of their numbers.
func (m *manifest) formulas() []*apiFunction {
	return m.some(func(f *apiFunction) bool { return f.Kind == "formula" })
}

func (m *manifest) some(wanted func(*apiFunction) bool) []*apiFunction {
	var all []*apiFunction
	for i := range m.Functions {
		if f := &m.Functions[i]; wanted(f) {
			all = append(all, f)
		}
	}
	return all
}

// quantity gives a quantity by its name.
func (m *manifest) quantity(name string) *apiQuantity {
	for i := range m.Quantities {
		if m.Quantities[i].Name == name {
			return &m.Quantities[i]
		}
	}
	return &apiQuantity{Name: name}
}

// words gives the words of an enumeration, each in quotes; nil where there is none.
func (m *manifest) words(name string) []string {
	for _, e := range m.Enums {
		if e.Name == name {
			return each(e.Words, quoted)
		}
	}
	return nil
}

// quoted writes a string as Go does, and also C, Python, R and JavaScript for what
// occurs.
func quoted(text string) string { return strconv.Quote(text) }

func each(texts []string, as func(string) string) []string {
	var all []string
	for _, text := range texts {
		all = append(all, as(text))
	}
	return all
}

// factor writes what a unit is in base units.
func (u apiUnit) factor() string { return strconv.FormatFloat(u.Factor, 'g', -1, 64) }

// short is a function's name in Go without its package.
func (f *apiFunction) short() string { return f.Name[strings.Index(f.Name, ".")+1:] }

// decapitate turns "Available returns the …" into "Returns the …".
func decapitate(f *apiFunction) string {
	rest, found := strings.CutPrefix(f.Summary, f.short()+" ")
	if !found {
		return f.Summary
	}
	return title(rest)
}

// title writes a first letter large.
func title(text string) string { return strings.ToUpper(text[:1]) + text[1:] }

// structName joins package and name: two packages may have one name.
func structName(full string) string {
	pkg, name, _ := strings.Cut(full, ".")
	if title(pkg) == name {
		return name // farm.Farm is a Farm
	}
	return title(pkg) + name
}

// renamed writes the arguments that a text names as another language does.
func renamed(f *apiFunction, text string, name func(snake string) string) string {
	for _, a := range f.Parameters {
		if other := name(a.Snake); other != a.Name {
			text = regexp.MustCompile(`\b`+a.Name+`\b`).ReplaceAllString(text, other)
		}
	}
	return text
}

// goErrors turns the names of Go's errors, and of the words that stand for what is not
// known, into those of Python and JavaScript.
var goErrors = strings.NewReplacer("*units.DomainError", "DomainError", "*units.RangeError", "RangeWarning", "*units.ParseError", "DocumentError", "ManureUnknown", `the word "unknown"`, "WaterUnknown", `the word "unknown"`, "*document error", "DocumentError", "*document.Error", "DocumentError", "a range error", "a RangeWarning", "a domain error", "a DomainError")

// compound is what may be a function's name in Go: with its package, or of two words.
var compound = regexp.MustCompile(`\b(?:(?:` + strings.Join(subjects, "|") + `)\.)?[A-Z][a-z]+(?:[A-Z][a-z]+)*\b`)

// spoken writes the functions and errors that a text of a package names as another
// language names them: those with their package, and those of two words.
func (m *manifest) spoken(pkg, text string, name func(*apiFunction) string) string {
	return compound.ReplaceAllStringFunc(goErrors.Replace(text), func(word string) string {
		for i := range m.Functions {
			switch f := &m.Functions[i]; {
			case f.Name == word:
				return f.Package + "." + name(f)
			case f.Name == pkg+"."+word && strings.Contains(f.Snake, "_"):
				return name(f)
			}
		}
		return word
	})
}

// broken breaks a text into lines of about so many characters.
func broken(text string, width int) string { return strings.Join(wrap(text, width), "\n") }

// wrap breaks a text into lines of about so many characters.
func wrap(text string, width int) []string {
	lines, line := []string{}, ""
	for _, word := range strings.Fields(text) {
		switch {
		case line == "":
			line = word
		case len([]rune(line))+1+len([]rune(word)) > width:
			lines, line = append(lines, line), word
		default:
			line += " " + word
		}
	}
	return append(lines, line)
}
