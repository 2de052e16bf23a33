package main

import (
	"bytes"
	_ "embed"
	"fmt"
	"slices"
	"strings"
	"text/template"
)

// pythonFiles writes the generated modules of the Python package and their
// stubs.
func pythonFiles(m *manifest) (map[string][]byte, error) {
	p := python{m: m}
	files := map[string][]byte{}
	put := func(name string, text string) { files["soum/"+name] = []byte(text) }
	for _, name := range subjects {
		put(name+".py", p.module(name))
		put(name+".pyi", p.stub(name))
	}
	put("_units.py", p.units())
	put("_units.pyi", p.unitsStub())
	put("_manifest.py", p.facts())
	put("_documents.py", p.documents())
	fast, err := p.fast()
	put("_fast.py", fast)
	return files, err
}

type python struct{ m *manifest }

var pythonWords = strings.Fields("False None True and as assert async await break class continue def del elif else except finally for from global if import in is lambda nonlocal not or pass raise return try while with yield")

// pythonName keeps clear of the language's own words.
func pythonName(snake string) string {
	if slices.Contains(pythonWords, snake) {
		return snake + "_"
	}
	return snake
}

func names(f *apiFunction) []string {
	var all []string
	for _, a := range f.Parameters {
		all = append(all, pythonName(a.Snake))
	}
	return all
}

// module writes a package's functions.
func (p *python) module(pkg string) string {
	var b bytes.Buffer
	b.WriteString(marked("# ") + `"""` + topics[pkg] + "\n\nArguments are numbers in base units (see soum.units), or text with a unit;\nformulas also take lists and NumPy arrays of them. Results are in base units.\n\"\"\"\n\nfrom . import _core\n\n__all__ = [\n")
	for _, f := range p.m.of(pkg) {
		fmt.Fprintf(&b, "    %q,\n", pythonName(f.Snake))
	}
	b.WriteString("]\n")
	for _, f := range p.m.of(pkg) {
		b.WriteString("\n")
		arguments := strings.Join(names(f), ", ")
		name := pythonName(f.Snake)
		if f.Kind == "formula" {
			fmt.Fprintf(&b, "\n_%s = _core.formula(%d, %q, (\n", f.Snake, f.Index, f.Name)
			for _, a := range f.Parameters {
				fmt.Fprintf(&b, "    (%q, %q, %q),\n", pythonName(a.Snake), a.Name, a.Type.Name)
			}
			b.WriteString("))\n")
		}
		fmt.Fprintf(&b, "\n\ndef %s(%s):\n%s", name, arguments, p.docstring(f))
		switch {
		case f.Kind == "formula":
			fmt.Fprintf(&b, "    return _%s(%s)\n", f.Snake, arguments)
		default:
			var pairs []string
			for _, a := range f.Parameters {
				pairs = append(pairs, fmt.Sprintf("%q: %s", a.Name, pythonName(a.Snake)))
			}
			call := fmt.Sprintf("_core.call(%q, {%s})", f.Name, strings.Join(pairs, ", "))
			if len(f.Results) > 1 {
				call = "tuple(" + call + ")"
			}
			fmt.Fprintf(&b, "    return %s\n", call)
		}
	}
	return b.String()
}

// docstring tells what, formula, arguments with units and limits, result,
// errors, notes, source.
func (p *python) docstring(f *apiFunction) string {
	var b strings.Builder
	say := func(indent int, text string) {
		for _, line := range wrap(text, 84-indent) {
			b.WriteString(strings.Repeat(" ", indent) + line + "\n")
		}
	}
	said := wrap(p.spoken(f.Package, decapitate(f)), 77)
	b.WriteString(`    """` + said[0] + "\n")
	for _, line := range said[1:] {
		b.WriteString("    " + line + "\n")
	}
	for _, s := range f.Sections {
		if slices.Contains([]string{"Formula", "Empirical", "Table", "Method", "Uses"}, s.Head) {
			b.WriteString("\n")
			say(4, s.Head+":")
			p.formulaText(f, s, say)
		}
	}
	if len(f.Parameters) > 0 {
		b.WriteString("\n    Arguments:\n")
		for _, a := range f.Parameters {
			text := pythonName(a.Snake) + ": "
			if a.Doc != "" {
				text += p.spoken(f.Package, a.Doc) + "; "
			}
			text += p.taken(f, &a)
			lines := wrap(text, 72)
			b.WriteString("        " + lines[0] + "\n")
			for _, line := range lines[1:] {
				b.WriteString("            " + line + "\n")
			}
		}
	}
	b.WriteString("\n    Returns:\n")
	var results []string
	for _, r := range f.Results {
		results = append(results, p.told(&r))
	}
	say(8, strings.Join(results, ", and ")+".")
	for _, s := range f.Sections {
		if slices.Contains([]string{"Errors", "Note", "Source"}, s.Head) {
			b.WriteString("\n")
			say(4, s.Head+":")
			say(8, p.spoken(f.Package, s.Text))
		}
	}
	b.WriteString("    \"\"\"\n")
	return strings.ReplaceAll(b.String(), `\`, `\\`)
}

// formulaText writes a formula as Python names it, one line of it a line.
func (p *python) formulaText(f *apiFunction, s apiSection, say func(int, string)) {
	if s.Head != "Formula" && s.Head != "Empirical" {
		say(8, p.spoken(f.Package, s.Text))
		return
	}
	for _, line := range strings.Split(renamed(f, s.Text, pythonName), "; ") {
		say(8, line)
	}
	if s.Head == "Empirical" {
		var units []string
		for _, a := range f.Parameters {
			if a.Unit != "" {
				units = append(units, pythonName(a.Snake)+" in "+a.Unit)
			}
		}
		text := "here " + strings.Join(units, ", ")
		if f.ResultUnit != "" {
			text += ", the result in " + f.ResultUnit
		}
		say(8, "("+text+")")
	}
}

// spoken writes the functions that a text names as Python names them.
func (p *python) spoken(pkg, text string) string {
	return p.m.spoken(pkg, text, func(f *apiFunction) string { return pythonName(f.Snake) })
}

// taken tells what an argument takes.
func (p *python) taken(f *apiFunction, a *apiParameter) string {
	limits := a.Range
	if a.Type.Kind == "word" {
		return strings.Replace(limits, "one of ", "one of the words ", 1)
	}
	limits = renamed(f, limits, pythonName)
	text := p.told(&a.Type)
	if a.Type.Kind == "quantity" {
		text += " or text with a unit"
	}
	if limits != "" {
		text += "; limits " + limits
		if a.Unit != "" {
			text += " (" + a.Unit + ")"
		}
	}
	return text
}

// told tells what a type is, in words.
func (p *python) told(t *apiType) string {
	switch t.Kind {
	case "quantity":
		return fmt.Sprintf("%s in %s", t.Name, p.m.quantity(t.Name).Base)
	case "number":
		return "a number"
	case "whole":
		return "a whole number"
	case "word":
		return "a word of " + t.Name
	case "text":
		return "text"
	case "truth":
		return "True or False"
	case "date":
		return `a date such as "2000-04-15", or a datetime.date`
	case "list":
		return "a list of: " + p.told(t.Of)
	case "map":
		return "a dict of text and: " + p.told(t.Of)
	case "span":
		return "a dict of low and high: " + p.told(t.Of)
	case "struct":
		return "a dict, see soum.documents." + structName(t.Name)
	}
	return "anything"
}

// units writes the constants and the table of quantities.
func (p *python) units() string {
	var b bytes.Buffer
	b.WriteString(marked("# ") + `"""What soum.units hands on."""` + "\n\n")
	for _, u := range p.m.Units {
		fmt.Fprintf(&b, "%s = %s  # %s: %s\n", pythonName(u.Name), u.factor(), u.Symbol, strings.Join(u.Quantities, ", "))
	}
	b.WriteString("\n# Every quantity with its base unit and the units it is written in.\nquantities = {\n")
	for _, q := range p.m.Quantities {
		fmt.Fprintf(&b, "    %q: (%q, (%s,)),\n", q.Name, q.Base, strings.Join(each(q.Units, quoted), ", "))
	}
	b.WriteString("}\n")
	return b.String()
}

func (p *python) unitsStub() string {
	var b bytes.Buffer
	b.WriteString(marked("# ") + "from typing import Final, Literal\n\n")
	for _, u := range p.m.Units {
		fmt.Fprintf(&b, "%s: Final[float]\n", pythonName(u.Name))
	}
	var known []string
	for _, q := range p.m.Quantities {
		known = append(known, q.Name)
	}
	known = append(known, "Date", "Money", "FeedPrice")
	b.WriteString("quantities: Final[dict[str, tuple[str, tuple[str, ...]]]]\n\nQuantityName = Literal[" + strings.Join(each(known, quoted), ", ") + "]\n")
	return b.String()
}

// facts writes what the core needs of the manifest.
func (p *python) facts() string {
	var b bytes.Buffer
	fmt.Fprintf(&b, marked("# ")+"\"\"\"Facts of the manifest that this package is made from.\"\"\"\n\nVERSION = %q\nABI = %d\nNUMBER = %d  # a library of another manifest is refused\n\n# The words of enumerations; inside the library the first is 1.\nWORDS = {\n", p.m.Version, p.m.ABI, p.m.Number)
	for _, e := range p.m.Enums {
		fmt.Fprintf(&b, "    %q: (%s,),\n", e.Name, strings.Join(each(e.Words, quoted), ", "))
	}
	b.WriteString("}\n")
	return b.String()
}

// quick is the quick way of a call, for each number of arguments.
//
//go:embed python/_fast.py.tmpl
var quick string

// fast writes the quick way, one for each number of arguments: unpacking a list of
// them would cost a tenth of the call.
func (p *python) fast() (string, error) {
	ways := map[int][]string{} // the arguments' names by their number
	for _, f := range p.m.formulas() {
		ways[len(f.Parameters)] = strings.Split("abcdefgh", "")[:len(f.Parameters)]
	}
	text, err := template.New("_fast.py").Funcs(template.FuncMap{"join": strings.Join}).Parse(quick)
	if err != nil {
		return "", err
	}
	var b strings.Builder
	err = text.Execute(&b, ways)
	return marked("# ") + b.String(), err
}
