package forage_test

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

// TestTheCompilerKeepsHeightsApart type-checks snippets: heights against a ruler
// and under a plate, their densities and their calibrations cannot take each
// other's place.
func TestTheCompilerKeepsHeightsApart(t *testing.T) {
	imports := compiledForage(t)
	const ruler, plate = "8*units.HeightInch, 4*units.HeightInch", "8*units.PlateInch, 4*units.PlateInch"
	for _, c := range []struct{ code, refused string }{
		{"_, _ = forage.Available(" + ruler + ", 250*units.PoundPerAcreInch)", ""},
		{"_, _ = forage.PlateAvailable(" + plate + ", 567*units.PlatePoundPerAcreInch)", ""},
		{"_, _ = forage.MeanHeight([]units.Height{units.HeightInch}, 0.95)", ""},
		{"_, _ = forage.RulerMass(forage.RulerCalibration{}, units.HeightInch, 20, 0.95)", ""},
		{"_, _ = forage.PlateMass(forage.PlateCalibration{}, units.PlateInch, 20, 0.95)", ""},

		{"_, _ = forage.Available(" + plate + ", 250*units.PoundPerAcreInch)", "cannot use"},
		{"_, _ = forage.Available(" + ruler + ", 567*units.PlatePoundPerAcreInch)", "cannot use"},
		{"_, _ = forage.Available(8*units.HeightInch, 4*units.PlateInch, 250*units.PoundPerAcreInch)", "cannot use"},
		{"_, _ = forage.PlateAvailable(" + ruler + ", 567*units.PlatePoundPerAcreInch)", "cannot use"},
		{"_, _ = forage.PlateAvailable(" + plate + ", 250*units.PoundPerAcreInch)", "cannot use"},
		{"_, _ = forage.PlateCover(8*units.HeightInch, 567*units.PlatePoundPerAcreInch, 0*units.PoundPerAcre)", "cannot use"},
		{"_, _ = forage.CurveMass(8*units.PlateInch, forage.Thick)", "cannot use"},
		{"_, _ = forage.MeanHeight([]units.Height{units.PlateInch}, 0.95)", "cannot use"},
		{"_, _ = forage.MeanPlateHeight([]units.Height{units.HeightInch}, 0.95)", "cannot use"},
		{"_, _ = forage.CalibratePlate([]units.Height{}, []units.Yield{}, false)", "cannot use"},
		{"_, _ = forage.RulerMass(forage.PlateCalibration{}, units.HeightInch, 20, 0.95)", "cannot use"},
		{"_, _ = forage.PlateMass(forage.PlateCalibration{}, units.HeightInch, 20, 0.95)", "cannot use"},
		{"_ = forage.RulerCalibration{Slope: 452 * units.PlateKilogramPerHectareCentimetre}", "cannot use"},
	} {
		err := typeCheckForage(imports, c.code)
		if c.refused == "" && err != nil || c.refused != "" && (err == nil || !strings.Contains(err.Error(), c.refused)) {
			t.Errorf("%s\ngot %v, want %q", c.code, err, c.refused)
		}
	}
}

func typeCheckForage(imports types.Importer, code string) error {
	files := token.NewFileSet()
	source := "package snippet\n\nimport (\n\"example.org/soum/forage\"\n\"example.org/soum/units\"\n)\n\nvar _ units.Area\nvar _ forage.Pasture\n\nfunc _() {\n" + code + "\n}\n"
	file, err := parser.ParseFile(files, "snippet.go", source, 0)
	if err != nil {
		return fmt.Errorf("the snippet is no go: %w", err)
	}
	_, err = (&types.Config{Importer: imports}).Check("snippet", files, []*ast.File{file}, nil)
	return err
}

// compiledForage gives an importer of package forage and what it imports as the
// compiler left them.
func compiledForage(t *testing.T) types.Importer {
	out, err := exec.Command("go", "list", "-export", "-deps", "-json=ImportPath,Export", "example.org/soum/forage").Output()
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
