package main

import (
	"bytes"
	"fmt"
	"go/ast"
	"go/parser"
	"math"
	"path"
	"slices"
	"strconv"
	"strings"

	"example.org/soum/internal/decl"
)

// subjects are the packages that other languages have as modules, in the order of the
// formulas' numbers.
var subjects = subjectNames()

func subjectNames() (names []string) {
	for _, p := range decl.Packages()[1:] {
		names = append(names, path.Base(p))
	}
	return names
}

// rowLoops writes, for every formula, the loop that computes many rows. The
// quick way through it is the doc comment's expression and limits, written out;
// a row outside them, or a formula without an expression, goes to the function.
func rowLoops(module decl.Module) ([]byte, error) {
	var b, table bytes.Buffer
	imports := []string{"units"}
	table.WriteString("\n// table holds the formulas by number.\nvar table = []struct {\nname string\narguments int\nrows rows\n}{\n")
	for _, p := range module[1:] {
		for i := range p.Functions {
			f := &p.Functions[i]
			if !f.IsFormula() {
				continue
			}
			if !slices.Contains(imports, p.Path) {
				imports = append(imports, p.Path)
			}
			fmt.Fprintf(&table, "{%q, %d, rows%s%s},\n", f.Full(), len(f.Arguments()), title(p.Name), f.Name)
			if err := rowLoop(&b, f, p, module.Package("units")); err != nil {
				return nil, fmt.Errorf("%s: %w", f.Full(), err)
			}
		}
	}
	table.WriteString("}\n")
	b.Write(table.Bytes())
	b.WriteString("\nvar _ = math.Sqrt\n")
	slices.Sort(imports)
	head := heading + "package door\n\nimport (\n\"math\"\n\n"
	for _, at := range imports {
		head += fmt.Sprintf("%q\n", "example.org/soum/"+at)
	}
	return append([]byte(head+")\n"), b.Bytes()...), nil
}

func rowLoop(b *bytes.Buffer, f *decl.Function, p, units *decl.Package) error {
	arguments := f.Arguments()
	fmt.Fprintf(b, "\nfunc rows%s%s(columns [most][]float64, strides [most]int, out []float64, status []int32) {\n", title(f.Package), f.Name)
	for k := range arguments {
		fmt.Fprintf(b, "c%d, s%d := columns[%d], strides[%d]\n", k, k, k, k)
	}
	b.WriteString("status = status[:len(out)]\nfor i := range out {\n")
	for k, a := range arguments {
		fmt.Fprintf(b, "%s := c%d[i*s%d]\n", a.Name, k, k)
	}
	quick, err := quickWay(f, units)
	if err != nil {
		return err
	}
	b.WriteString(quick)
	var call []string
	for _, a := range arguments {
		switch {
		case a.Type == "float64":
			call = append(call, a.Name)
		case quantity(a.Type, units) != nil || a.Type == "units.Temperature":
			call = append(call, a.Type+"("+a.Name+")")
		default:
			of := a.Type
			if !strings.Contains(of, ".") {
				of = f.Package + "." + of
			}
			call = append(call, of+"(whole("+a.Name+"))")
		}
	}
	fmt.Fprintf(b, "v, err := %s.%s(%s)\nout[i], status[i] = float64(v), code(err)\n}\n}\n", f.Package, f.Name, strings.Join(call, ", "))
	return nil
}

// quickWay writes the quick way of a formula with one line in coherent units
// and plain numbers, nothing for any other.
func quickWay(f *decl.Function, units *decl.Package) (string, error) {
	text, found := f.Section("Formula")
	if !found || strings.Contains(text, " when ") {
		return "", nil
	}
	var tests []string
	for _, a := range f.Arguments() {
		factor := ""
		if q := quantity(a.Type, units); q != nil {
			constant, err := unitConstant(q, a.Where.Unit)
			if err != nil {
				return "", err
			}
			factor = "*" + constant
		} else if a.Type != "float64" {
			return "", nil
		}
		if a.Where.Range != nil {
			tests = append(tests, test(a.Name, a.Where.Range, factor))
		}
		domain := a.Where.Domain
		if domain == nil {
			domain = &decl.Interval{Low: math.Inf(-1), High: math.Inf(1)}
		}
		tests = append(tests, test(a.Name, domain, factor))
	}
	tree, err := parser.ParseExpr(text)
	if err != nil {
		return "", err
	}
	value, err := goText(tree)
	if err != nil {
		return "", err
	}
	return fmt.Sprintf("if %s {\nif v := %s; v-v == 0 {\nout[i], status[i] = v, Good\ncontinue\n}\n}\n", strings.Join(tests, " && "), value), nil
}

// test writes the condition that an argument lies within limits and is finite.
func test(name string, i *decl.Interval, factor string) string {
	low, high := ">= -math.MaxFloat64", "<= math.MaxFloat64"
	bound := func(v float64) string {
		text := strconv.FormatFloat(v, 'g', -1, 64)
		if v == 0 {
			return text
		}
		return text + factor
	}
	sign := func(open bool, strict, loose string) string {
		if open {
			return strict
		}
		return loose
	}
	switch {
	case i.LowOf != "":
		low = sign(i.LowOpen, "> ", ">= ") + i.LowOf
	case !math.IsInf(i.Low, -1):
		low = sign(i.LowOpen, "> ", ">= ") + bound(i.Low)
	}
	switch {
	case i.HighOf != "":
		high = sign(i.HighOpen, "< ", "<= ") + i.HighOf
	case !math.IsInf(i.High, 1):
		high = sign(i.HighOpen, "< ", "<= ") + bound(i.High)
	}
	return name + " " + low + " && " + name + " " + high
}

// goText writes a doc comment's expression as Go.
func goText(e ast.Expr) (string, error) {
	switch e := e.(type) {
	case *ast.ParenExpr:
		inner, err := goText(e.X)
		return "(" + inner + ")", err
	case *ast.BasicLit:
		v, err := strconv.ParseFloat(e.Value, 64)
		text := strconv.FormatFloat(v, 'f', -1, 64)
		if !strings.Contains(text, ".") {
			text += ".0"
		}
		return text, err
	case *ast.Ident:
		return e.Name, nil
	case *ast.UnaryExpr:
		inner, err := goText(e.X)
		return "-" + inner, err
	case *ast.BinaryExpr:
		x, err := goText(e.X)
		if err != nil {
			return "", err
		}
		y, err := goText(e.Y)
		return x + " " + e.Op.String() + " " + y, err
	case *ast.CallExpr:
		var all []string
		for _, a := range e.Args {
			text, err := goText(a)
			if err != nil {
				return "", err
			}
			all = append(all, text)
		}
		name := e.Fun.(*ast.Ident).Name
		switch name {
		case "min", "max":
		default:
			name = "math." + title(name)
		}
		return name + "(" + strings.Join(all, ", ") + ")", nil
	}
	return "", fmt.Errorf("a formula holds no %T", e)
}
