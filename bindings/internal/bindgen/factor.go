package main

import (
	"fmt"
	"go/ast"
	"go/constant"
	"go/parser"
	"go/token"
	"go/types"
	"path/filepath"
	"reflect"
	"strconv"
)

// constants gives the values of the constants that units/quantities.go
// declares. The file needs no import, so it is checked alone: the generator runs
// while what it generates is out of date.
func constants(root string) (map[string]float64, error) {
	set := token.NewFileSet()
	file, err := parser.ParseFile(set, filepath.Join(root, "units", "quantities.go"), nil, 0)
	if err != nil {
		return nil, err
	}
	checked, err := new(types.Config).Check("units", set, []*ast.File{file}, nil)
	if err != nil {
		return nil, err
	}
	values := map[string]float64{}
	for _, name := range checked.Scope().Names() {
		if c, ok := checked.Scope().Lookup(name).(*types.Const); ok {
			values[name], _ = constant.Float64Val(constant.ToFloat(c.Val()))
		}
	}
	if len(values) == 0 {
		return nil, fmt.Errorf("%s declares no constants", "units/quantities.go")
	}
	return values, nil
}

// structTag reads a struct tag as the source writes it.
func structTag(source string) reflect.StructTag {
	text, err := strconv.Unquote(source)
	if err != nil {
		return ""
	}
	return reflect.StructTag(text)
}
