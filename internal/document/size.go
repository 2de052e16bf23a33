package document

import (
	"math"
	"reflect"

	"example.org/soum/units"
)

// A document's numbers lie within these, or are 0. No farm has others (the Earth weighs
// 6e24 kg), and products and ratios of several of them stay finite.
const (
	smallest = 1e-30
	largest  = 1e30
)

// size tells what is wrong with the size of a document's number, "" for nothing.
func size(v float64) string {
	switch magnitude := math.Abs(v); {
	case math.IsNaN(v) || math.IsInf(v, 0):
		return "is not a finite number"
	case magnitude > largest:
		return "is too large a number"
	case magnitude < smallest && magnitude > 0:
		return "is too small a number"
	}
	return ""
}

// unfit tells what is wrong with what was read from text, "" for nothing: an argument may
// have any size, but no date has a year of five digits, as in the documents' schemas.
func (f filler) unfit(v reflect.Value) string {
	if date, isDate := v.Interface().(units.Date); isDate && (date.Year() < 0 || date.Year() > 9999) {
		return "is outside the years 0000 to 9999"
	}
	if f.arguments || v.Kind() != reflect.Float64 {
		return ""
	}
	return size(v.Float())
}
