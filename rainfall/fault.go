package rainfall

import (
	"fmt"
	"math"
	"strconv"

	"example.org/soum/internal/document"
	"example.org/soum/units"
)

// wrong says of a list or a record where something is wrong with it, what stands there
// ("" for nothing), and what would be right.
func wrong(path, value, problem, allowed string) error {
	return &document.Error{Path: path, Value: value, Problem: problem, Allowed: allowed}
}

// wrongDepth says that what stands somewhere is not a depth of rain.
func wrongDepth(path string, depth units.RainDepth) error {
	return wrong(path, millimetres(depth), "is not a depth of rain", "0 mm to 1000 m")
}

// sameLength refuses lists that do not go together, and empty ones.
func sameLength(first string, has int, second string, had int) error {
	switch {
	case has == 0:
		return wrong(first, "", "is empty", "one value or more")
	case has != had:
		return wrong(second, count(had, "value"), "beside "+count(has, "value")+" of "+first, "as many of one as of the other")
	}
	return nil
}

// count writes a number of things.
func count(n int, thing string) string {
	if n != 1 {
		thing += "s"
	}
	return strconv.Itoa(n) + " " + thing
}

// noRow says that a table has no row of a name, and which it has.
func noRow(function, argument string, index int, quantity, text, problem string, has []string) error {
	return &units.ParseError{
		Quantity: quantity, Text: text, Problem: problem, Accepts: has, Word: true,
		Function: function, Argument: argument, Index: index,
	}
}

// noWord is noRow for an argument that is not a word of its enumeration.
func noWord[E interface {
	~int
	fmt.Stringer
}](function, argument string, index int, quantity string, word E, has []string) error {
	return noRow(function, argument, index, quantity, wordOf(word), "no such word", has)
}

// wordOf writes a word of an enumeration, or the number of one that it does not have.
func wordOf[E interface {
	~int
	fmt.Stringer
}](word E) string {
	if text := word.String(); text != "" {
		return text
	}
	return strconv.Itoa(int(word))
}

// checkEnd refuses an end that a span does not have.
func checkEnd(function string, index int, end units.End) error {
	if end >= units.Low && end <= units.High {
		return nil
	}
	return noRow(function, "end", index, "End", strconv.Itoa(int(end)), "no such end", []string{"low", "middle", "high"})
}

// notRain says that an argument is not a depth of rain.
func notRain(function, argument string, index int, depth units.RainDepth, limits units.Limits) error {
	return units.OutOfDomain(function, index, units.Argument{Name: argument, Unit: "mm", Factor: float64(units.RainMillimetre), Domain: limits}, float64(depth))
}

// someRain is the limits of what can fall.
var someRain = units.Between(0, float64(mostRain), "")

// above is the limits of a finite number above another.
func above(low float64) units.Limits {
	limits := units.Between(low, math.Inf(1), "")
	limits.LowOpen = true
	return limits
}

// overflows says that a sum of finite numbers is not one.
func overflows(function string, sum float64) error {
	return &units.DomainError{Function: function, Argument: "result", Value: sum}
}
