package check_test

import (
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"example.org/soum/internal/check"
	"example.org/soum/internal/decl"
)

// keyPattern matches a source's key as SOURCES.md lists it.
var keyPattern = regexp.MustCompile(`\b[A-Z][A-Z0-9]*(-[A-Z0-9]+)+\b`)

// testPattern matches the names of tests in a section Check.
var testPattern = regexp.MustCompile(`\bTest[A-Za-z0-9]+\b`)

// TestEveryFunctionHasSourceAndCheck walks what the subject packages export.
func TestEveryFunctionHasSourceAndCheck(t *testing.T) {
	root, err := decl.Root()
	if err != nil {
		t.Fatal(err)
	}
	keys := sourceKeys(t, root)
	for _, name := range decl.Packages()[1:] {
		p, err := decl.Read(root, name)
		if err != nil {
			t.Fatal(err)
		}
		checked, tests := checkedBy(t, filepath.Join(root, name))
		for i := range p.Functions {
			f := &p.Functions[i]
			source, has := f.Section("Source")
			if f.Receiver != "" && !has {
				continue // a method on a row is plumbing unless it says otherwise
			}
			for _, key := range keyPattern.FindAllString(source, -1) {
				if !keys[key] {
					t.Errorf("%s: source %s is not in SOURCES.md", f.Full(), key)
				}
			}
			if !has {
				t.Errorf("%s: no section Source (a key of SOURCES.md, or \"definition\", or \"ours\" with the reason)", f.Full())
			}
			by, _ := f.Section("Check")
			proven := checked[f.Full()]
			for _, test := range testPattern.FindAllString(by, -1) {
				if !tests[test] {
					t.Errorf("%s: its check %s does not exist", f.Full(), test)
				}
				proven = true
			}
			if !proven {
				t.Errorf("%s: no printed table in testdata and no section Check", f.Full())
			}
		}
	}
}

// TestEverySourceIsUsed: a source that no doc comment, row or table names is
// either stale or not told of where its figure stands.
func TestEverySourceIsUsed(t *testing.T) {
	root, err := decl.Root()
	if err != nil {
		t.Fatal(err)
	}
	unused := sourceKeys(t, root)
	for _, pattern := range []string{"*/*.go", "*/*/*.go", "*/testdata/*.csv", "examples/*/*/*.csv"} {
		paths, _ := filepath.Glob(filepath.Join(root, pattern))
		for _, path := range paths {
			data, err := os.ReadFile(path)
			if err != nil {
				t.Fatal(err)
			}
			for _, key := range keyPattern.FindAllString(string(data), -1) {
				delete(unused, key)
			}
		}
	}
	for key := range unused {
		t.Errorf("SOURCES.md has %s, which nothing names", key)
	}
}

func sourceKeys(t *testing.T, root string) map[string]bool {
	data, err := os.ReadFile(filepath.Join(root, "SOURCES.md"))
	if err != nil {
		t.Fatal(err)
	}
	keys := map[string]bool{}
	for line := range strings.Lines(string(data)) {
		if key, found := strings.CutPrefix(line, "### "); found {
			keys[strings.TrimSpace(key)] = true
		}
	}
	return keys
}

// checkedBy gives the functions that a package's tables run, and the names of
// its tests.
func checkedBy(t *testing.T, dir string) (checked, tests map[string]bool) {
	checked, tests = map[string]bool{}, map[string]bool{}
	paths, _ := filepath.Glob(filepath.Join(dir, "testdata", "*.csv"))
	for _, path := range paths {
		table, err := check.ReadTable(path)
		if err != nil {
			t.Error(err)
		}
		if table != nil {
			checked[table.Function] = true
		}
	}
	paths, _ = filepath.Glob(filepath.Join(dir, "*_test.go"))
	for _, path := range paths {
		data, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		for _, m := range regexp.MustCompile(`(?m)^func (Test\w+)\(`).FindAllStringSubmatch(string(data), -1) {
			tests[m[1]] = true
		}
	}
	return checked, tests
}

// TestTotals runs every printed table of the module and prints how many values
// exported formulas reproduce, and how many rows are transcribed.
func TestTotals(t *testing.T) {
	root, err := decl.Root()
	if err != nil {
		t.Fatal(err)
	}
	printed, library, arithmetic, transcribed := 0, 0, 0, 0
	perPackage := map[string]int{}
	for _, name := range decl.Packages() {
		paths, _ := filepath.Glob(filepath.Join(root, name, "testdata", "*.csv"))
		for _, path := range paths {
			table, err := check.ReadTable(path)
			if err != nil {
				t.Fatal(err)
			}
			if table == nil {
				continue
			}
			for i := range table.Len() {
				if err := table.Row(i); err != nil {
					t.Error(err)
				}
				switch {
				case table.Transcribed:
					transcribed++
				case table.Printed(i):
					printed++
					perPackage[name]++
					if table.Mark(i) == "C" {
						library++
					}
				default:
					arithmetic++
				}
			}
		}
	}
	fmt.Printf("checks: %d values computed by exported formulas match print, %d of them an independent library", printed, library)
	for _, name := range decl.Packages() {
		if perPackage[name] > 0 { // a package of documents has none
			fmt.Printf(", %s %d", name, perPackage[name])
		}
	}
	fmt.Printf("; %d more match arithmetic shown beside them; %d transcribed rows match a second reading\n", arithmetic, transcribed)
	if printed < 60 {
		t.Errorf("%d printed values, at least 60 are wanted", printed)
	}
}

// TestEverythingExportedIsDocumented fails for an exported name without a doc
// comment.
func TestEverythingExportedIsDocumented(t *testing.T) {
	root, err := decl.Root()
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range decl.Packages() {
		p, err := decl.Read(root, name)
		if err != nil {
			t.Fatal(err)
		}
		for _, n := range p.Undocumented {
			t.Errorf("%s.%s has no doc comment", name, n)
		}
		if strings.TrimSpace(p.Doc) == "" {
			t.Errorf("package %s has no doc comment", name)
		}
	}
}
