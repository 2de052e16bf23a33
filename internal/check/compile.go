package check

import (
	"encoding/json"
	"errors"
	"fmt"
	"go/ast"
	"go/importer"
	"go/parser"
	"go/token"
	"go/types"
	"io"
	"os"
	"os/exec"
	"strings"
	"testing"
)

// Compile type-checks snippets that use the packages of the module named: what
// must not be mixed must not compile, and its sound counterpart must. A snippet is
// the body of a function and a part of what the compiler says of it, "" where it is
// to compile.
func Compile(t *testing.T, packages []string, snippets [][2]string) {
	t.Helper()
	imports := compiled(t, packages)
	for _, s := range snippets {
		code, refused := s[0], s[1]
		err := typeCheck(imports, packages, code)
		if refused == "" && err != nil || refused != "" && (err == nil || !strings.Contains(err.Error(), refused)) {
			t.Errorf("%s\ngot %v, want %q", code, err, refused)
		}
	}
}

func typeCheck(imports types.Importer, packages []string, code string) error {
	files := token.NewFileSet()
	source := "package snippet\n\n"
	for _, name := range packages {
		source += fmt.Sprintf("import %q\n", "example.org/soum/"+name)
	}
	file, err := parser.ParseFile(files, "snippet.go", source+"\nfunc _() {\n"+code+"\n}\n", 0)
	if err != nil {
		return fmt.Errorf("the snippet is no go: %w", err)
	}
	var first error // but for an import that a snippet has no use for
	config := types.Config{Importer: imports, Error: func(err error) {
		if first == nil && !strings.Contains(err.Error(), "imported and not used") {
			first = err
		}
	}}
	_, _ = config.Check("snippet", files, []*ast.File{file}, nil) // told to Error
	return first
}

// compiled gives an importer of packages, and of what they import, as the compiler
// left them.
func compiled(t *testing.T, packages []string) types.Importer {
	t.Helper()
	arguments := []string{"list", "-export", "-deps", "-json=ImportPath,Export"}
	for _, name := range packages {
		arguments = append(arguments, "example.org/soum/"+name)
	}
	out, err := exec.Command("go", arguments...).Output()
	if err != nil {
		var exit *exec.ExitError
		if errors.As(err, &exit) {
			t.Fatalf("go list: %v: %s", err, exit.Stderr)
		}
		t.Fatal(err)
	}
	exports := map[string]string{}
	for d := json.NewDecoder(strings.NewReader(string(out))); ; {
		var p struct{ ImportPath, Export string }
		if err := d.Decode(&p); errors.Is(err, io.EOF) {
			break
		} else if err != nil {
			t.Fatal(err)
		}
		exports[p.ImportPath] = p.Export
	}
	return importer.ForCompiler(token.NewFileSet(), "gc", func(path string) (io.ReadCloser, error) { return os.Open(exports[path]) })
}
