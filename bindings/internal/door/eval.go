package door

import (
	"errors"
	"math"

	"example.org/soum/units"
)

// The statuses of Eval, by row.
const (
	Good       = 0    // the value
	ResultCode = 100  // −100: the result overflows
	NoFormula  = -999 // there is no formula of this number
	Broken     = -998 // a fault of the library itself
)

// rows computes a formula for many rows. Columns and strides go by value: behind
// a pointer, through the table, they would be taken from the heap at each call.
type rows func(columns [most][]float64, strides [most]int, out []float64, status []int32)

// most is the most arguments a formula has.
const most = 8

// Eval computes formula fn for the rows of out. Column k of arguments begins
// where the one before it ended; strides[k] is 0 where it holds one value for
// all rows and 1 where it holds one for each. status[i] is 0 where all is well;
// −k where argument k is impossible, and then out[i] is NaN; k where argument k
// lies outside what the source covers, and then out[i] is the value; −100 where
// the result overflows.
func Eval(fn int, arguments []float64, strides []int32, out []float64, status []int32) {
	defer func() {
		if recover() != nil {
			fail(out, status, Broken)
		}
	}()
	if fn < 0 || fn >= len(table) || len(strides) != table[fn].arguments {
		fail(out, status, NoFormula)
		return
	}
	var columns [most][]float64
	var steps [most]int
	for k, stride := range strides {
		n := 1
		if stride != 0 {
			n, steps[k] = len(out), 1
		}
		columns[k], arguments = arguments[:n:n], arguments[n:]
	}
	table[fn].rows(columns, steps, out, status)
}

// Columns gives the number of values that Eval reads for so many rows.
func Columns(strides []int32, n int) int {
	all := 0
	for _, stride := range strides {
		if stride != 0 {
			all += n
		} else {
			all++
		}
	}
	return all
}

func fail(out []float64, status []int32, code int32) {
	for i := range out {
		out[i], status[i] = math.NaN(), code
	}
}

// code turns an error of a formula into its status. No text is built.
func code(err error) int32 {
	var domain *units.DomainError
	var ranged *units.RangeError
	var word *units.ParseError
	switch {
	case err == nil:
		return Good
	case errors.As(err, &domain):
		if domain.Index == 0 {
			return -ResultCode
		}
		return int32(-domain.Index)
	case errors.As(err, &ranged):
		return int32(ranged.Index)
	case errors.As(err, &word) && word.Function != "":
		return int32(-word.Index)
	}
	return Broken
}

// whole turns a number into an enumeration's constant; what is no whole number
// is none of them.
func whole(v float64) int {
	if v != math.Trunc(v) || v < 0 || v > 1e6 {
		return -1
	}
	return int(v)
}

// ABI is the version of the interface that the native and the browser build
// share.
const ABI = 1

// Arguments gives the number of arguments of a formula, 0 where there is no
// such formula.
func Arguments(fn int) int {
	if fn < 0 || fn >= len(table) {
		return 0
	}
	return table[fn].arguments
}
