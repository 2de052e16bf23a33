// Command checks writes what every binding is tested and fed with:
// bindings/checks.jsonl, one line for each value that the bindings must
// reproduce, from the printed tables in testdata; and bindings/*.schema.json, the
// JSON Schema of each document that users write, from the struct that it is read into.
//
//	go run ./bindings/internal/bindgen/checks          writes the files
//	go run ./bindings/internal/bindgen/checks -check   fails, naming the files that differ
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
	flag.Parse()
	if err := run(*check); err != nil {
		fmt.Fprintln(os.Stderr, "checks:", err)
		os.Exit(1)
	}
}

func run(check bool) error {
	root, err := decl.Root()
	if err != nil {
		return err
	}
	lines, err := allLines(root)
	if err != nil {
		return err
	}
	files, err := schemas(root)
	if err != nil {
		return err
	}
	files["checks.jsonl"] = lines
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
