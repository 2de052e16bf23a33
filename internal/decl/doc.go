package decl

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// heads are the sections a doc comment may have. What they hold is told in
// DEVELOPERS.md, "Add a formula".
var heads = []string{"Formula", "Empirical", "Table", "Method", "Uses", "Where", "Errors", "Check", "Note", "Source"}

// Where is what a doc comment says of one parameter.
type Where struct {
	Unit   string // the unit the source takes, "" for a plain number
	Text   string
	Limits string    // the limits as written
	Domain *Interval // what is possible; nil: any finite number
	Range  *Interval // what the source covers; nil: not said
}

// Interval is a condition on a parameter. A bound is a number in the
// parameter's unit or the name of another parameter.
type Interval struct {
	Low, High         float64
	LowOf, HighOf     string
	LowOpen, HighOpen bool
	Source            string // the key in brackets, for a range
}

// readDoc parts a doc comment into its sections and reads Where.
func (f *Function) readDoc() error {
	var open *Section
	for line := range strings.Lines(f.Doc) {
		line = strings.TrimRight(line, "\n")
		if head, rest, found := strings.Cut(line, ":"); found && slices.Contains(heads, head) {
			f.Sections = append(f.Sections, Section{Head: head, Text: strings.TrimSpace(rest)})
			open = &f.Sections[len(f.Sections)-1]
			continue
		}
		if oneWord.MatchString(line) {
			return fmt.Errorf("unknown section %q: the sections are %s", line, strings.Join(heads, ", "))
		}
		if open != nil {
			open.Text = strings.TrimSpace(open.Text + "\n" + line)
		}
	}
	text, found := f.Section("Where")
	if !found {
		return nil
	}
	return f.readWhere(text)
}

var oneWord = regexp.MustCompile(`^[A-Z][a-z]+:( |$)`)

var bullet = regexp.MustCompile(`^- ([A-Za-z]+)(?: in ([^:]+))?: (.*)$`)

func (f *Function) readWhere(text string) error {
	var items []string
	for line := range strings.Lines(text) {
		line = strings.TrimSpace(line)
		switch {
		case strings.HasPrefix(line, "- "):
			items = append(items, line)
		case line != "" && len(items) > 0:
			items[len(items)-1] += " " + line
		}
	}
	for _, item := range items {
		m := bullet.FindStringSubmatch(item)
		if m == nil {
			return fmt.Errorf("%q is not \"- name in unit: text; limits\"", item)
		}
		w, err := f.readItem(m[2], m[3])
		if err != nil {
			return fmt.Errorf("%q: %w", item, err)
		}
		if m[1] == "result" {
			f.Parameters = append(f.Parameters, Parameter{Name: "result", Where: w})
			continue
		}
		at := slices.IndexFunc(f.Parameters, func(p Parameter) bool { return p.Name == m[1] })
		if at < 0 {
			return fmt.Errorf("no parameter %q", m[1])
		}
		f.Parameters[at].Where = w
	}
	for i := range f.Parameters {
		if f.Parameters[i].Where == nil {
			return fmt.Errorf("Where does not tell of %q", f.Parameters[i].Name)
		}
	}
	return nil
}

// Arguments gives the parameters without the entry for the result.
func (f *Function) Arguments() []Parameter {
	return slices.DeleteFunc(slices.Clone(f.Parameters), func(p Parameter) bool { return p.Name == "result" })
}

// ResultUnit gives the unit that Where names for the result.
func (f *Function) ResultUnit() string {
	for _, p := range f.Parameters {
		if p.Name == "result" {
			return p.Where.Unit
		}
	}
	return ""
}

// readItem reads the text of a bullet: what it is, then limits after
// semicolons, a range marked by its source in brackets.
func (f *Function) readItem(unit, text string) (*Where, error) {
	parts := strings.Split(text, ";")
	w := &Where{Unit: strings.TrimSpace(unit), Text: strings.TrimSpace(parts[0])}
	w.Limits = strings.TrimSpace(strings.Join(parts[1:], ";"))
	for _, part := range parts[1:] {
		interval, err := f.readInterval(strings.TrimSpace(part))
		if err != nil {
			return nil, err
		}
		if interval.Source != "" {
			w.Range = interval
		} else {
			w.Domain = interval
		}
	}
	return w, nil
}

func (f *Function) readInterval(text string) (*Interval, error) {
	i := &Interval{Low: math.Inf(-1), High: math.Inf(1)}
	if body, source, found := strings.Cut(text, "["); found {
		i.Source = strings.TrimSuffix(source, "]")
		text = strings.TrimSpace(body)
	}
	var err error
	bound := func(word string) (float64, string) {
		v, e := strconv.ParseFloat(word, 64)
		if e == nil {
			return v, ""
		}
		if !slices.ContainsFunc(f.Parameters, func(p Parameter) bool { return p.Name == word }) {
			err = fmt.Errorf("%q is neither a number nor a parameter", word)
		}
		return 0, word
	}
	words := strings.Fields(text)
	switch {
	case len(words) == 1 && words[0] == "any":
	case len(words) == 2 && (words[0] == ">" || words[0] == ">="):
		i.Low, i.LowOf = bound(words[1])
		i.LowOpen = words[0] == ">"
	case len(words) == 2 && (words[0] == "<" || words[0] == "<="):
		i.High, i.HighOf = bound(words[1])
		i.HighOpen = words[0] == "<"
	case len(words) == 3 && words[1] == "to":
		i.Low, i.LowOf = bound(words[0])
		i.High, i.HighOf = bound(words[2])
	case len(words) == 5 && words[2] == "and" && (words[0] == ">" || words[0] == ">=") && (words[3] == "<" || words[3] == "<="):
		i.Low, i.LowOf = bound(words[1])
		i.High, i.HighOf = bound(words[4])
		i.LowOpen, i.HighOpen = words[0] == ">", words[3] == "<"
	default:
		err = fmt.Errorf("limits %q: write \"> 0\", \">= 0\", \"0 to 1\", \"> 0 and <= 1\", \"any\", and [KEY] behind what a source covers", text)
	}
	return i, err
}

// Summary gives what stands before the first section.
func (f *Function) Summary() string {
	var lines []string
	for line := range strings.Lines(f.Doc) {
		if head, _, found := strings.Cut(line, ":"); found && slices.Contains(heads, head) {
			break
		}
		lines = append(lines, strings.TrimSpace(line))
	}
	return strings.Join(strings.Fields(strings.Join(lines, " ")), " ")
}
