package units_test

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

// TestTheCompilerRefusesMixtures type-checks snippets that mix quantities: they
// must not compile, and their sound counterparts must.
func TestTheCompilerRefusesMixtures(t *testing.T) {
	imports := compiled(t)
	for _, c := range []struct{ code, refused string }{
		{"var d units.Density = 250 * units.PoundPerAcreInch; _ = d", ""},
		{"h := 8*units.HeightInch - 3*units.HeightInch; _ = h", ""},
		{"h := units.Height(8 * units.PlateInch); _ = h", ""}, // said out loud it may be
		{"t := units.Celsius(20).Add(5 * units.CelsiusDegree); _ = t", ""},

		{"h := 8*units.HeightInch - 3*units.PlateInch; _ = h", "mismatched types"},
		{"var d units.Density = 250 * units.PlatePoundPerAcreInch; _ = d", "cannot use"},
		{"var d units.PlateDensity = 250 * units.PoundPerAcreInch; _ = d", "cannot use"},
		{"var h units.Height = 8 * units.Inch; _ = h", "cannot use"},
		{"var r units.RainDepth = 8 * units.HeightInch; _ = r", "cannot use"},
		{"b := 8*units.HeightInch > 3*units.PlateInch; _ = b", "mismatched types"},
		{"var f units.FreshFeed = 5 * units.DryMatterKilogram; _ = f", "cannot use"},
		{"var w units.LiveWeight = 5 * units.Kilogram; _ = w", "cannot use"},
		{"var y units.Yield = 5 * units.StockKilogramPerHectare; _ = y", "cannot use"},
		{"var u units.UnitRate = 5 * units.HeadPerAcre; _ = u", "cannot use"},
		{"t := units.Celsius(20) + 5*units.CelsiusDegree; _ = t", "mismatched types"},
		{"var t units.Temperature = units.FahrenheitDegree; _ = t", "cannot use"},
		{"var d units.Date = 3 * units.Day; _ = d", "cannot use"},
		{"_ = units.Money{} + units.Money{}", "operator + not defined"},
		{"_ = units.Celsius(20).Sub(5 * units.CelsiusDegree)", "cannot use"},
	} {
		err := typeCheck(imports, c.code)
		if c.refused == "" && err != nil || c.refused != "" && (err == nil || !strings.Contains(err.Error(), c.refused)) {
			t.Errorf("%s\ngot %v, want %q", c.code, err, c.refused)
		}
	}
}

func typeCheck(imports types.Importer, code string) error {
	files := token.NewFileSet()
	file, err := parser.ParseFile(files, "snippet.go", "package snippet\n\nimport \"example.org/soum/units\"\n\nfunc _() {\n"+code+"\n}\n", 0)
	if err != nil {
		return fmt.Errorf("the snippet is no go: %w", err)
	}
	_, err = (&types.Config{Importer: imports}).Check("snippet", files, []*ast.File{file}, nil)
	return err
}

// compiled gives an importer of package units as the compiler left it.
func compiled(t *testing.T) types.Importer {
	out, err := exec.Command("go", "list", "-export", "-deps", "-json=ImportPath,Export", "example.org/soum/units").Output()
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
