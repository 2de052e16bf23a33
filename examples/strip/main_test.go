package main

import (
	"os"
	"strings"
	"testing"
)

// Example runs the program; the sums: 10 × 150 lb × 4.5 % = 67.5 lb a day;
// (8 in − 4 in) × 250 lb/ac/in = 1,000 lb/ac; 67.5 ÷ (1,000 × 0.80) = 0.0844 ac;
// 0.0844 × 43,560 ft² ÷ 100 ft = 36.8 ft.
func Example() {
	main()
	// Output:
	// They want 67.5 lb/day; 1,000 lb/ac stand above what is left, of which 80 % are eaten in a day.
	// That is 0.0844 ac: a strip of 36.8 ft.
}

// TestReadmeShowsThisProgram keeps the README's worked question the programs
// that run: this one, and those that each binding's tests run and compare with
// the same two lines.
func TestReadmeShowsThisProgram(t *testing.T) {
	readme, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	program, err := os.ReadFile("main.go")
	if err != nil {
		t.Fatal(err)
	}
	_, body, _ := strings.Cut(string(program), "// Ten ewes")
	body, _, _ = strings.Cut("// Ten ewes"+body, "\nfunc check")
	wanted := []string{strings.TrimSpace(body)}
	for path, start := range map[string]string{
		"../../bindings/python/examples/strip.py": "from soum",
		"../../bindings/js/examples/strip.mjs":    "import {",
		"../../bindings/r/examples/strip.R":       "library(soum)",
		"../../bindings/c/examples/strip.c":       "#include",
	} {
		other, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		_, rest, _ := strings.Cut(string(other), start)
		wanted = append(wanted, strings.TrimSpace(start+rest))
	}
	for _, want := range append(wanted,
		"They want 67.5 lb/day; 1,000 lb/ac stand above what is left, of which 80 % are eaten in a day.\nThat is 0.0844 ac: a strip of 36.8 ft.",
	) {
		if !strings.Contains(string(readme), want) {
			t.Errorf("README.md does not show:\n%s", want)
		}
	}
}
