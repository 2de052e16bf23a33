package forage

import (
	"math"
	"slices"

	"example.org/soum/units"
)

func notANumber[Q ~float64]() Q { return Q(math.NaN()) }

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

// rowOf looks a row up, nil where there is none.
func rowOf[R any](rows []R, is func(*R) bool) *R {
	for i := range rows {
		if is(&rows[i]) {
			return &rows[i]
		}
	}
	return nil
}

// known lists what rows that fit have, each once.
func known[R any](rows []R, fits func(*R) bool, what func(*R) string) []string {
	var all []string
	for i := range rows {
		if row := &rows[i]; fits(row) && !slices.Contains(all, what(row)) {
			all = append(all, what(row))
		}
	}
	return all
}

// noRow is NaN and the error of a text or a word that a look-up has no row of.
func noRow[Q ~float64](formula *units.Formula, argument, text, problem string, accepts []string, arguments ...float64) (Q, error) {
	return notANumber[Q](), formula.NoRow(argument, text, problem, accepts, arguments...)
}

// printed tells where a row stands in print, and how it was come by.
func printed(source, mark string) units.Printed { return units.Printed{Source: source, Mark: mark} }
