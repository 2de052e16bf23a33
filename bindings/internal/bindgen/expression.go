package main

import (
	"bytes"
	"fmt"
	"go/ast"
	"go/parser"
	"slices"
	"strconv"
	"strings"

	"example.org/soum/internal/decl"
)

// expression writes what a formula's doc comment says of its value.
func expression(b *bytes.Buffer, f *decl.Function, units *decl.Package) error {
	if q := quantity(f.Results[0], units); q != nil {
		fmt.Fprintf(b, "Quantity: %q, ", q.Name)
	}
	if unit := f.ResultUnit(); unit != "" {
		fmt.Fprintf(b, "Unit: %q, ", unit)
	}
	text, found := f.Section("Formula")
	if empirical, is := f.Section("Empirical"); is {
		text, found = empirical, true
		b.WriteString("Empirical: true, ")
	}
	if !found {
		for _, head := range []string{"Table", "Method"} {
			if words, is := f.Section(head); is {
				fmt.Fprintf(b, "Lookup: %q,\n", strings.Join(strings.Fields(words), " "))
				return nil
			}
		}
		return nil // a look-up that says it in its first words
	}
	b.WriteString("Lines: []units.Line{\n")
	for line := range strings.Lines(text) {
		if line = strings.TrimSpace(line); line == "" {
			continue
		}
		value, when, piecewise := strings.Cut(line, " when ")
		term, err := parsed(f, value)
		if err != nil {
			return err
		}
		fmt.Fprintf(b, "{Value: %s", term)
		if piecewise {
			if term, err = parsed(f, when); err != nil {
				return err
			}
			fmt.Fprintf(b, ", When: &%s", "units.Term"+strings.TrimPrefix(term, "units.Term"))
		}
		b.WriteString("},\n")
	}
	b.WriteString("},\n")
	return nil
}

// parsed writes an expression of a doc comment as a Go literal.
func parsed(f *decl.Function, text string) (string, error) {
	tree, err := parser.ParseExpr(text)
	if err != nil {
		return "", fmt.Errorf("%q: %w", text, err)
	}
	term, err := literal(f, tree)
	return "units.Term" + term, err
}

func literal(f *decl.Function, e ast.Expr) (string, error) {
	operation := func(op string, of ...ast.Expr) (string, error) {
		var terms []string
		for _, x := range of {
			term, err := literal(f, x)
			if err != nil {
				return "", err
			}
			terms = append(terms, term)
		}
		return fmt.Sprintf("{Op: %q, Terms: []units.Term{%s}}", op, strings.Join(terms, ", ")), nil
	}
	switch e := e.(type) {
	case *ast.ParenExpr:
		return literal(f, e.X)
	case *ast.BasicLit:
		if _, err := strconv.ParseFloat(e.Value, 64); err != nil {
			return "", err
		}
		return "{Number: " + e.Value + "}", nil
	case *ast.Ident:
		at := slices.IndexFunc(f.Arguments(), func(p decl.Parameter) bool { return p.Name == e.Name })
		if at < 0 {
			return "", fmt.Errorf("no parameter %q", e.Name)
		}
		return fmt.Sprintf("{Argument: %d}", at+1), nil
	case *ast.UnaryExpr:
		return operation("neg", e.X)
	case *ast.BinaryExpr:
		return operation(e.Op.String(), e.X, e.Y)
	case *ast.CallExpr:
		return operation(e.Fun.(*ast.Ident).Name, e.Args...)
	}
	return "", fmt.Errorf("a formula holds no %T", e)
}
