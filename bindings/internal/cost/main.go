// Command cost measures what the library costs from other languages, in one run
// on this machine, and prints it as ratios: a row of a formula from C against a C
// loop, from Python against NumPy, from Node against plain JavaScript; single
// calls; the start; the size of the browser build; the share of JSON in a plan.
// What cannot be measured for want of a tool is named.
//
//	go run ./bindings/internal/cost
//
// Nothing is asserted: times of a busy machine say little. The figures beside
// them are what the project aims at.
package main

import (
	"bytes"
	"compress/gzip"
	_ "embed"
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strconv"
	"strings"
	"time"

	"example.org/soum/bindings/internal/door"
	"example.org/soum/grazing/farm"
	"example.org/soum/internal/decl"
)

//go:embed bench/rows.c
var benchC []byte

//go:embed bench/rows.py
var benchPython []byte

//go:embed bench/rows.mjs
var benchNode []byte

func main() {
	if err := run(); err != nil {
		fmt.Fprintln(os.Stderr, "cost:", err)
		os.Exit(1)
	}
}

func run() error {
	root, err := decl.Root()
	if err != nil {
		return err
	}
	work, err := os.MkdirTemp("", "soum-cost")
	if err != nil {
		return err
	}
	defer os.RemoveAll(work)
	c := &costs{root: root, work: work, found: map[string]float64{}}
	fmt.Printf("cost: %s, %s/%s, %d processors; the best of several rounds of 1,000,000 rows\n\n", runtime.Version(), runtime.GOOS, runtime.GOARCH, runtime.NumCPU())
	for _, part := range []struct {
		name    string
		measure func() error
	}{{"C", c.c}, {"Python", c.python}, {"the browser build", c.wasm}, {"Node", c.node}, {"a plan", c.plan}} {
		var missing missingError
		switch err := part.measure(); {
		case errors.As(err, &missing):
			fmt.Printf("skipped: %s: %s\n", part.name, missing)
		case err != nil:
			return fmt.Errorf("%s: %w", part.name, err)
		}
	}
	c.print()
	return nil
}

// missingError says what a part wants and has not.
type missingError string

func (e missingError) Error() string { return string(e) }

// costs collects what is measured: nanoseconds, but for sizes and shares.
type costs struct {
	root, work string
	found      map[string]float64
}

// tool finds a program.
func tool(name string) (string, error) {
	path, err := exec.LookPath(name)
	if err != nil {
		return "", missingError(name + " is not installed")
	}
	return path, nil
}

// command runs a program in the root of the module.
func (c *costs) command(environment []string, name string, args ...string) ([]byte, error) {
	var out, told bytes.Buffer
	cmd := exec.Command(name, args...)
	cmd.Dir, cmd.Stdout, cmd.Stderr = c.root, &out, &told
	cmd.Env = append(os.Environ(), environment...)
	if err := cmd.Run(); err != nil {
		return nil, fmt.Errorf("%s: %w: %s", filepath.Base(name), err, told.String())
	}
	return out.Bytes(), nil
}

// take reads lines of a name and a number that a program prints.
func (c *costs) take(out []byte) error {
	for line := range strings.Lines(string(out)) {
		name, text, found := strings.Cut(strings.TrimSpace(line), ": ")
		value, err := strconv.ParseFloat(text, 64)
		if !found || err != nil {
			return fmt.Errorf("a line that is no name and number: %q", line)
		}
		c.found[name] = value
	}
	return nil
}

// write puts a program into the working folder.
func (c *costs) write(name string, text []byte) (string, error) {
	path := filepath.Join(c.work, name)
	return path, os.WriteFile(path, text, 0o644)
}

// c installs the C library to a folder of its own and runs a program on it.
func (c *costs) c() error {
	if _, err := tool("sh"); err != nil {
		return err
	}
	out, err := c.command(nil, "go", "env", "CC")
	if err != nil {
		return err
	}
	compiler := strings.Fields(string(out))
	if _, err := tool(compiler[0]); err != nil {
		return err
	}
	install := filepath.Join(c.root, "bindings", "c", "install")
	if _, err := os.Stat(install); err != nil {
		return missingError("bindings/c/install is not there")
	}
	prefix := filepath.Join(c.work, "prefix")
	if _, err := c.command(nil, install, prefix); err != nil {
		return err
	}
	source, err := c.write("rows.c", benchC)
	if err != nil {
		return err
	}
	program, lib := filepath.Join(c.work, "rows"), filepath.Join(prefix, "lib")
	args := append(compiler[1:], "-O2", "-std=c99", "-I"+filepath.Join(prefix, "include"), source, "-L"+lib, "-lsoum", "-lm", "-Wl,-rpath,"+lib, "-o", program)
	if _, err := c.command(nil, compiler[0], args...); err != nil {
		return err
	}
	if out, err = c.command(nil, program); err != nil {
		return err
	}
	return c.take(out)
}

// python runs on the package as it stands in the tree, with a library built
// for it.
func (c *costs) python() error {
	builder := filepath.Join(c.root, "bindings", "python", "build_backend", "soum_build.py")
	if _, err := os.Stat(builder); err != nil {
		return missingError("bindings/python is not there")
	}
	name, err := pythonWithNumPy()
	if err != nil {
		return err
	}
	library := filepath.Join(c.work, "python-library")
	environment := []string{"PYTHONPYCACHEPREFIX=" + filepath.Join(c.work, "pycache"), "PYTHONDONTWRITEBYTECODE="}
	if _, err := c.command(environment, name, builder, "library", library); err != nil {
		return err
	}
	script, err := c.write("rows.py", benchPython)
	if err != nil {
		return err
	}
	environment = append(environment, "SOUM_LIBRARY="+library, "PYTHONPATH="+filepath.Join(c.root, "bindings", "python"))
	out, err := c.command(environment, name, script)
	if err != nil {
		return err
	}
	return c.take(out)
}

// pythonWithNumPy finds a Python, best one with NumPy.
func pythonWithNumPy() (string, error) {
	found := ""
	for _, name := range []string{"python3", "/usr/bin/python3"} {
		if exec.Command(name, "-c", "import sys").Run() != nil {
			continue
		}
		if exec.Command(name, "-c", "import numpy").Run() == nil {
			return name, nil
		}
		if found == "" {
			found = name
		}
	}
	if found == "" {
		return "", missingError("python3 is not installed")
	}
	fmt.Println("skipped: Python's rows: NumPy is not installed")
	return found, nil
}

// wasm builds the library for JavaScript and takes its size.
func (c *costs) wasm() error {
	built := filepath.Join(c.work, "soum.wasm")
	if _, err := c.command([]string{"GOOS=wasip1", "GOARCH=wasm"}, "go", "build", "-buildmode=c-shared", "-trimpath", "-buildvcs=false", "-ldflags=-s -w", "-o", built, "./bindings/internal/door/wasm"); err != nil {
		return err
	}
	data, err := os.ReadFile(built)
	if err != nil {
		return err
	}
	c.found["wasm raw"] = float64(len(data))
	var small bytes.Buffer
	w, _ := gzip.NewWriterLevel(&small, gzip.BestCompression)
	if _, err := w.Write(data); err != nil {
		return err
	}
	if err := w.Close(); err != nil {
		return err
	}
	c.found["wasm gzip"] = float64(small.Len())
	node, err := tool("node")
	if err != nil {
		return missingError("brotli: " + err.Error())
	}
	out, err := c.command(nil, node, "-e", `console.log("wasm brotli: " + require("zlib").brotliCompressSync(require("fs").readFileSync(process.argv[1])).length)`, built)
	if err != nil {
		return err
	}
	return c.take(out)
}

// node runs on a copy of the JavaScript package with the build of wasm.
func (c *costs) node() error {
	node, err := tool("node")
	if err != nil {
		return err
	}
	from, to := filepath.Join(c.root, "bindings", "js"), filepath.Join(c.work, "js")
	if _, err := os.Stat(filepath.Join(from, "library.js")); err != nil {
		return missingError("bindings/js/library.js is not there")
	}
	if err := os.Mkdir(to, 0o755); err != nil {
		return err
	}
	paths, err := filepath.Glob(filepath.Join(from, "*.js*"))
	if err != nil {
		return err
	}
	for _, path := range append(paths, filepath.Join(c.work, "soum.wasm")) {
		data, err := os.ReadFile(path)
		if err == nil {
			err = os.WriteFile(filepath.Join(to, filepath.Base(path)), data, 0o644)
		}
		if err != nil {
			return err
		}
	}
	script, err := c.write("rows.mjs", benchNode)
	if err != nil {
		return err
	}
	out, err := c.command(nil, node, "--no-warnings", script, filepath.Join(to, "node.js"))
	if err != nil {
		return err
	}
	return c.take(out)
}

// plan takes the share of a plan through the door that JSON is.
func (c *costs) plan() error {
	data, err := os.ReadFile(filepath.Join(c.root, "examples", "season", "data", "farm.json"))
	if err != nil {
		return err
	}
	in := []byte(`{"farm":` + string(data) + `}`)
	var out []byte
	c.found["plan by call"] = best(func() {
		out, _ = door.Call("farm.Plan", in)
	})
	if !json.Valid(out) {
		return errors.New("the plan is no JSON")
	}
	c.found["plan size"] = float64(len(out))
	holding, err := farm.Read(data)
	if err != nil {
		return err
	}
	c.found["plan in Go"] = best(func() {
		_, err = holding.Plan()
	})
	return err
}

// best gives the shortest of several rounds, in nanoseconds.
func best(what func()) float64 {
	shortest := time.Hour
	for range 30 {
		begin := time.Now()
		what()
		shortest = min(shortest, time.Since(begin))
	}
	return float64(shortest.Nanoseconds())
}
