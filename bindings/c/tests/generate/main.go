// Command generate writes a C program that calls every function of the library
// through the installed header and compares it with the check lines.
//
//	go run ./bindings/c/tests/generate checks.jsonl checks.c
package main

import (
	"bufio"
	"bytes"
	"encoding/json"
	"fmt"
	"log"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
)

type function struct {
	Name, Kind, Package, Snake string
	Parameters                 []struct {
		Name string
		Type struct{ Kind, Name string }
	}
}

type check struct {
	Function         string
	Arguments        map[string]any
	Value, Exact     any
	Tolerance        float64
	Error            string
	Origin, Note     string
	Table, Source    string // of the line before a table's lines, which says them for all
	argumentsAsWrote json.RawMessage
}

func main() {
	log.SetFlags(0)
	if len(os.Args) != 3 {
		log.Fatal("usage: generate CHECKS.jsonl FILE.c, from the module's root")
	}
	text, err := write(os.Args[1])
	if err != nil {
		log.Fatal(err)
	}
	if err := os.WriteFile(os.Args[2], text, 0o644); err != nil {
		log.Fatal(err)
	}
}

func write(lines string) ([]byte, error) {
	var manifest struct {
		Functions []function
		Enums     []struct {
			Name  string
			Words []string
		}
		Units []struct {
			Name   string
			Factor float64
		}
	}
	data, err := os.ReadFile(filepath.Join("bindings", "api.json"))
	if err != nil {
		return nil, err
	}
	if err := json.Unmarshal(data, &manifest); err != nil {
		return nil, err
	}
	words := map[string][]string{}
	for _, e := range manifest.Enums {
		words[e.Name] = e.Words
	}
	checks, err := read(lines)
	if err != nil {
		return nil, err
	}
	var b bytes.Buffer
	b.WriteString("#include \"support.h\"\n\nvoid generated(void)\n{\n\tint32_t status;\n\tdouble got;\n\n")
	called := map[string]bool{}
	for _, c := range checks {
		at := slices.IndexFunc(manifest.Functions, func(f function) bool { return f.Name == c.Function })
		if at < 0 || manifest.Functions[at].Kind != "formula" {
			b.WriteString(asked(&c))
			called[c.Function] = true
			continue
		}
		f := &manifest.Functions[at]
		line, err := row(f, &c, words)
		if err != nil {
			return nil, err
		}
		b.WriteString(line)
		if c.Error == "" {
			called[c.Function] = true
		}
	}
	data, err = os.ReadFile(filepath.Join("bindings", "calls.json"))
	if err != nil {
		return nil, err
	}
	var calls map[string]json.RawMessage
	if err := json.Unmarshal(data, &calls); err != nil {
		return nil, err
	}
	for _, name := range slices.Sorted(maps.Keys(calls)) {
		fmt.Fprintf(&b, "\tanswered(%s, %s);\n", quote(name), quote(string(calls[name])))
		called[name] = true
	}
	for _, f := range manifest.Functions {
		if !called[f.Name] {
			return nil, fmt.Errorf("nothing calls %s", f.Name)
		}
	}
	for _, u := range manifest.Units {
		fmt.Fprintf(&b, "\tcheck(SOUM_%s, 0, %s, 0, %[2]s, 0, %s);\n", strings.ToUpper(u.Name), number(u.Factor), quote(u.Name))
	}
	b.WriteString("}\n")
	return b.Bytes(), nil
}

func read(path string) ([]check, error) {
	file, err := os.Open(path)
	if err != nil {
		return nil, err
	}
	defer file.Close()
	var all []check
	var table check
	lines := bufio.NewScanner(file)
	lines.Buffer(nil, 1<<20)
	for lines.Scan() {
		var c check
		if err := json.Unmarshal(lines.Bytes(), &c); err != nil {
			return nil, err
		}
		if c.Table != "" {
			table = c
			continue
		}
		c.Table, c.Source = table.Table, table.Source
		var raw struct{ Arguments json.RawMessage }
		if err := json.Unmarshal(lines.Bytes(), &raw); err != nil {
			return nil, err
		}
		c.argumentsAsWrote = raw.Arguments
		all = append(all, c)
	}
	return all, lines.Err()
}

// row calls a formula's inline function.
func row(f *function, c *check, words map[string][]string) (string, error) {
	var arguments []string
	status := 0
	kind, which, _ := strings.Cut(c.Error, " ")
	for i, p := range f.Parameters {
		v, given := c.Arguments[p.Name]
		if !given {
			return "", fmt.Errorf("%s: a check has no %s", f.Name, p.Name)
		}
		if word, ok := v.(string); ok && p.Type.Kind == "word" {
			pkg, short, _ := strings.Cut(p.Type.Name, ".")
			arguments = append(arguments, fmt.Sprintf("(enum soum_%s_%s)%d", pkg, snake(short), slices.Index(words[p.Type.Name], word)+1))
		} else {
			arguments = append(arguments, number(v))
		}
		if p.Name == which {
			status = i + 1
		}
	}
	if which == "result" {
		status = 100
	}
	if kind == "domain" {
		status = -status
	}
	return fmt.Sprintf("\tgot = soum_%s_%s(%s, &status);\n\tcheck(got, status, %s, %s, %s, %d, %s);\n",
		f.Package, f.Snake, strings.Join(arguments, ", "), number(c.Value), number(c.Tolerance), number(c.Exact), status, quote(f.Name+" "+told(c))), nil
}

// told tells where a check comes from.
func told(c *check) string {
	text := c.Origin + ", " + c.Table + ": " + c.Source
	if c.Note != "" {
		text += " (" + c.Note + ")"
	}
	return text
}

// asked calls any function through soum_ask.
func asked(c *check) string {
	status := map[string]int{"": 0, "range": 1, "domain": -1}[strings.SplitN(c.Error, " ", 2)[0]]
	if word, ok := c.Value.(string); ok {
		return fmt.Sprintf("\tworded(%s, %s, %s, %d);\n", quote(c.Function), quote(string(c.argumentsAsWrote)), quote(word), status)
	}
	return fmt.Sprintf("\tgot = asked(%s,\n\t\t%s, &status);\n\tcheck(got, status, %s, %s, %s, %d, %s);\n",
		quote(c.Function), quote(string(c.argumentsAsWrote)), number(c.Value), number(c.Tolerance), number(c.Exact), status, quote(c.Function+" "+told(c)))
}

// number writes a number as C does.
func number(v any) string {
	switch v := v.(type) {
	case float64:
		text := strconv.FormatFloat(v, 'g', -1, 64)
		if !strings.ContainsAny(text, ".e") {
			text += ".0"
		}
		return text
	case string:
		switch strings.TrimLeft(strings.ToLower(v), "+") {
		case "inf", "infinity":
			return "INFINITY"
		case "-inf", "-infinity":
			return "-INFINITY"
		}
	}
	return "NAN"
}

// quote writes a string as C does; no byte is left to guess.
func quote(text string) string {
	var b strings.Builder
	b.WriteByte('"')
	for _, c := range []byte(text) {
		switch {
		case c == '"' || c == '\\':
			b.WriteByte('\\')
			b.WriteByte(c)
		case c < 32 || c > 126 || c == '?':
			fmt.Fprintf(&b, "\\%03o", c)
		default:
			b.WriteByte(c)
		}
	}
	b.WriteByte('"')
	return b.String()
}

func snake(camel string) string {
	var b strings.Builder
	for i, r := range camel {
		if r >= 'A' && r <= 'Z' && i > 0 {
			b.WriteByte('_')
		}
		b.WriteString(strings.ToLower(string(r)))
	}
	return b.String()
}
