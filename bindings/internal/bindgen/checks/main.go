// Command checks writes what every binding is tested and fed with: the JSON Schema of
// each document that users write, from the struct that it is read into
// (bindings/*.schema.json, committed); and, when asked, one line for each value that
// the bindings must reproduce, from the printed tables in testdata.
//
//	go run ./bindings/internal/bindgen/checks                writes the schemas
//	go run ./bindings/internal/bindgen/checks -check         fails, naming the schemas that differ
//	go run ./bindings/internal/bindgen/checks -lines FILE    writes the lines
package main

import (
	"bytes"
	"flag"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"

	"example.org/soum/internal/decl"
)

func main() {
	check := flag.Bool("check", false, "change nothing; fail where a file differs from what would be written")
	lines := flag.String("lines", "", "write the values that the bindings must reproduce to this `file`, and nothing else")
	flag.Parse()
	root, err := decl.Root()
	switch {
	case err != nil:
	case *lines != "":
		err = writeLines(root, *lines)
	default:
		err = run(root, *check)
	}
	if err != nil {
		fmt.Fprintln(os.Stderr, "checks:", err)
		os.Exit(1)
	}
}

// writeLines writes the lines to a file.
func writeLines(root, path string) error {
	lines, err := allLines(root)
	if err != nil {
		return err
	}
	return os.WriteFile(path, lines, 0o644)
}

func run(root string, check bool) error {
	files, err := schemas(root)
	if err != nil {
		return err
	}
	for _, name := range slices.Sorted(maps.Keys(files)) {
		path := filepath.Join(root, "bindings", name)
		old, _ := os.ReadFile(path)
		switch {
		case bytes.Equal(old, files[name]):
		case check:
			return fmt.Errorf("bindings/%s is not what the tables and declarations say: run go generate ./... and commit it", name)
		default:
			if err := os.WriteFile(path, files[name], 0o644); err != nil {
				return err
			}
		}
	}
	return nil
}
