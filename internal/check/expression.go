package check

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"math"
	"os"
	"strconv"
	"strings"
)

// Evaluate gives the value of a formula as a doc comment writes it: a Go
// expression over names, numbers and sqrt exp log pow min max abs; where it is
// piecewise, lines ending in "when <comparison>", of which the first that
// holds counts.
func Evaluate(formula string, values map[string]float64) (float64, error) {
	for line := range strings.Lines(formula) {
		line = strings.TrimSpace(line)
		if line == "" {
			continue
		}
		expression, condition, piecewise := strings.Cut(line, " when ")
		if piecewise {
			holds, err := evaluate(condition, values)
			if err != nil {
				return 0, err
			}
			if holds == 0 {
				continue
			}
		}
		return evaluate(expression, values)
	}
	return 0, fmt.Errorf("no line of the formula holds: %s", formula)
}

// WorkSums works the lines "name = expression" of a file of sums done by hand,
// each over the names above it; lines that begin with # are comments.
func WorkSums(path string) (map[string]float64, error) {
	data, err := os.ReadFile(path)
	if err != nil {
		return nil, err
	}
	sums := map[string]float64{}
	for line := range strings.Lines(string(data)) {
		name, expression, found := strings.Cut(strings.TrimSpace(line), " = ")
		if !found || strings.HasPrefix(name, "#") {
			continue
		}
		if _, twice := sums[name]; twice {
			return nil, fmt.Errorf("%s: %s is worked twice", path, name)
		}
		if sums[name], err = Evaluate(expression, sums); err != nil {
			return nil, fmt.Errorf("%s: %s: %w", path, name, err)
		}
	}
	return sums, nil
}

func evaluate(text string, values map[string]float64) (float64, error) {
	tree, err := parser.ParseExpr(text)
	if err != nil {
		return 0, fmt.Errorf("%q: %w", text, err)
	}
	return value(tree, values)
}

func value(e ast.Expr, values map[string]float64) (float64, error) {
	switch e := e.(type) {
	case *ast.ParenExpr:
		return value(e.X, values)
	case *ast.BasicLit:
		return strconv.ParseFloat(e.Value, 64)
	case *ast.Ident:
		v, known := values[e.Name]
		if !known {
			return 0, fmt.Errorf("no value for %q", e.Name)
		}
		return v, nil
	case *ast.UnaryExpr:
		v, err := value(e.X, values)
		if e.Op != token.SUB {
			err = fmt.Errorf("operator %s", e.Op)
		}
		return -v, err
	case *ast.BinaryExpr:
		return binary(e, values)
	case *ast.CallExpr:
		return call(e, values)
	}
	return 0, fmt.Errorf("a formula holds no %T", e)
}

func binary(e *ast.BinaryExpr, values map[string]float64) (float64, error) {
	x, err := value(e.X, values)
	if err != nil {
		return 0, err
	}
	y, err := value(e.Y, values)
	if err != nil {
		return 0, err
	}
	truth := func(b bool) (float64, error) {
		if b {
			return 1, nil
		}
		return 0, nil
	}
	switch e.Op {
	case token.ADD:
		return x + y, nil
	case token.SUB:
		return x - y, nil
	case token.MUL:
		return x * y, nil
	case token.QUO:
		return x / y, nil
	case token.LSS:
		return truth(x < y)
	case token.LEQ:
		return truth(x <= y)
	case token.GTR:
		return truth(x > y)
	case token.GEQ:
		return truth(x >= y)
	case token.EQL:
		return truth(x == y)
	case token.LAND:
		return truth(x != 0 && y != 0)
	}
	return 0, fmt.Errorf("operator %s", e.Op)
}

func call(e *ast.CallExpr, values map[string]float64) (float64, error) {
	name, _ := e.Fun.(*ast.Ident)
	var args []float64
	for _, a := range e.Args {
		v, err := value(a, values)
		if err != nil {
			return 0, err
		}
		args = append(args, v)
	}
	if name != nil {
		switch {
		case name.Name == "sqrt" && len(args) == 1:
			return math.Sqrt(args[0]), nil
		case name.Name == "exp" && len(args) == 1:
			return math.Exp(args[0]), nil
		case name.Name == "log" && len(args) == 1:
			return math.Log(args[0]), nil
		case name.Name == "abs" && len(args) == 1:
			return math.Abs(args[0]), nil
		case name.Name == "pow" && len(args) == 2:
			return math.Pow(args[0], args[1]), nil
		case name.Name == "min" && len(args) == 2:
			return min(args[0], args[1]), nil
		case name.Name == "max" && len(args) == 2:
			return max(args[0], args[1]), nil
		}
	}
	return 0, fmt.Errorf("a formula calls sqrt, exp, log, abs, pow, min, max only")
}
