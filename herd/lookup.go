package herd

import (
	"slices"

	"example.org/soum/units"
)

// namesOf lists the names of rows, each once.
func namesOf[R any](rows []R, name func(*R) string) []string {
	var names []string
	for i := range rows {
		if n := name(&rows[i]); !slices.Contains(names, n) {
			names = append(names, n)
		}
	}
	return names
}

// noEnd refuses what is no end of a span.
func noEnd(function string, index int, end units.End) error {
	return units.OutOfDomain(function, index, formulaEquivalentHead.Arguments[4], float64(end))
}

// printed tells where a row stands in print, and how it was come by.
func printed(source, mark string) units.Printed { return units.Printed{Source: source, Mark: mark} }
