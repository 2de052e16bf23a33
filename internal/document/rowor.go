package document

import (
	"reflect"
	"strings"

	"example.org/soum/units"
)

// rowOrPackage is where RowOr is declared.
var rowOrPackage = reflect.TypeFor[units.RowOr[int]]().PkgPath()

// IsRowOr reports whether a type is a units.RowOr, of whatever rows.
func IsRowOr(t reflect.Type) bool {
	return t.Kind() == reflect.Struct && t.PkgPath() == rowOrPackage && strings.HasPrefix(t.Name(), "RowOr[")
}

// rowOr gives the two parts of a units.RowOr.
func rowOr(v reflect.Value) (name, row reflect.Value) { return v.Field(0), v.Field(1) }
