package rainfall

import (
	"errors"
	"fmt"

	"example.org/soum/units"
)

var errNoWarmMonth = errors.New("rainfall.ThornthwaiteIndex: no month is above 0 °C, such a year has no heat index")

// wrongLength says that a list has not as many values as it must.
func wrongLength(function, list string, has, wants int) error {
	return fmt.Errorf("%s: %s has %d values, must have %d", function, list, has, wants)
}

// noTableRow says that a table has no such row, and which it has.
func noTableRow(quantity, text, problem string, has []string) error {
	return &units.ParseError{Quantity: quantity, Text: text, Problem: problem, Accepts: has, Word: true}
}
