// Command bindgen writes what follows from the module's declarations. What is
// committed: units/quantities_gen.go from the constants of package units; in each
// other package enums_gen.go, the texts of its enumerations, and formulas_gen.go, the
// guards of its formulas from their doc comments; the registry of functions that
// printed tables are run by; the manifest bindings/api.json and the C header. What is
// made when a package is built: the wrappers of the other languages, from the manifest.
//
//	go run ./bindings/internal/bindgen                         writes what is committed, removes what is of something gone
//	go run ./bindings/internal/bindgen -check                  fails, naming the files that differ
//	go run ./bindings/internal/bindgen -language r -out DIR    writes the wrappers of a language: js, python or r
package main

import (
	"bytes"
	"flag"
	"fmt"
	"go/format"
	"os"
	"path"
	"path/filepath"
	"strconv"
	"strings"

	"example.org/soum/internal/decl"
)

func main() {
	check := flag.Bool("check", false, "change nothing; fail where a committed file differs from what would be written")
	language := flag.String("language", "", "write the wrappers of this `language` alone: js, python or r")
	out := flag.String("out", "", "the `directory` that the wrappers are written to")
	flag.Parse()
	root, err := decl.Root()
	switch {
	case err != nil:
	case *language != "":
		err = writeWrappers(root, *language, *out)
	default:
		err = run(root, *check)
	}
	if err != nil {
		fmt.Fprintln(os.Stderr, "bindgen:", err)
		os.Exit(1)
	}
}

// wrappers write what the packages of other languages are given, each from the manifest,
// by path below the directory that the package is built in.
var wrappers = map[string]func(*manifest) (map[string][]byte, error){
	"js":     jsFiles,
	"python": pythonFiles,
	"r":      rFiles,
}

// writeWrappers writes the wrappers of a language.
func writeWrappers(root, language, out string) error {
	wrapper := wrappers[language]
	if wrapper == nil || out == "" {
		return fmt.Errorf("say -language js, python or r, and -out with a directory")
	}
	module, err := decl.ReadModule(root)
	if err != nil {
		return err
	}
	m, _, err := api(root, module)
	if err != nil {
		return err
	}
	files, err := wrapper(m)
	if err != nil {
		return err
	}
	for name, text := range files {
		if err := settle(out, name, text, false); err != nil {
			return err
		}
	}
	return sweep(out, files, false)
}

func run(root string, check bool) error {
	module, err := decl.ReadModule(root)
	if err != nil {
		return err
	}
	units := module.Package("units")
	text, err := quantities(units)
	if err != nil {
		return err
	}
	files := map[string][]byte{"units/quantities_gen.go": text}
	for _, p := range module[1:] {
		if text, err = formulas(p, units); err != nil {
			return err
		}
		if text != nil {
			files[p.Path+"/formulas_gen.go"] = text
		}
		if text, err = enums(p); err != nil {
			return err
		}
		if text != nil {
			files[p.Path+"/enums_gen.go"] = text
		}
	}
	files["internal/functions/functions_gen.go"] = registry(module)
	if text, err = rowLoops(module); err != nil {
		return err
	}
	files["bindings/internal/door/rows_gen.go"] = text
	m, text, err := api(root, module)
	if err != nil {
		return err
	}
	files["bindings/api.json"] = text
	files["bindings/internal/door/manifest_gen.go"] = []byte(heading + "package door\n\n// Manifest is the number of bindings/api.json, from which every wrapper is made.\nconst Manifest = " + strconv.Itoa(int(m.Number)) + "\n")
	if files["bindings/c/soum.h"], err = cHeader(m); err != nil {
		return err
	}
	for name, text := range files {
		if err := settle(root, name, text, check); err != nil {
			return err
		}
	}
	return sweep(root, files, check)
}

// sweep removes, beside the files that are written, those of earlier runs whose
// function or package is gone, or says that there is one.
func sweep(root string, files map[string][]byte, check bool) error {
	folders := map[string]bool{}
	for name := range files {
		folders[path.Dir(name)] = true
	}
	for folder := range folders {
		entries, err := os.ReadDir(filepath.Join(root, filepath.FromSlash(folder)))
		if err != nil {
			return err
		}
		for _, entry := range entries {
			name := path.Join(folder, entry.Name())
			if _, written := files[name]; written || entry.IsDir() || !ours(filepath.Join(root, filepath.FromSlash(name))) {
				continue
			}
			if check {
				return fmt.Errorf("%s is of something that the declarations no longer have: run go generate ./... and commit it", name)
			}
			if err := os.Remove(filepath.Join(root, filepath.FromSlash(name))); err != nil {
				return err
			}
		}
	}
	return nil
}

// ours tells whether a file's first line says that this program wrote it.
func ours(file string) bool {
	data, err := os.ReadFile(file)
	first, _, _ := bytes.Cut(data, []byte("\n"))
	return err == nil && bytes.Contains(first, []byte(strings.TrimSpace(strings.TrimPrefix(heading, "// "))))
}

// settle writes a file, or says that it differs.
func settle(root, name string, text []byte, check bool) error {
	formatted := text
	if strings.HasSuffix(name, ".go") {
		var err error
		if formatted, err = format.Source(text); err != nil {
			return fmt.Errorf("%s: %w\n%s", name, err, text)
		}
	}
	file := filepath.Join(root, filepath.FromSlash(name))
	old, _ := os.ReadFile(file)
	if bytes.Equal(old, formatted) {
		return nil
	}
	if check {
		return fmt.Errorf("%s is not what the declarations say: run go generate ./... and commit it", name)
	}
	if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
		return err
	}
	return os.WriteFile(file, formatted, 0o644)
}
