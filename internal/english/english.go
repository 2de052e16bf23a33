// Package english puts figures and names into sentences.
package english

import (
	"strings"

	"example.org/soum/units"
)

// Plural counts something whose plural ends in an s.
func Plural(v float64, one string) string {
	text := units.Number(v) + " " + one
	if text == "1 "+one {
		return text
	}
	return text + "s"
}

// List joins texts by commas and a last "and".
func List(all []string) string {
	if len(all) < 2 {
		return strings.Join(all, "")
	}
	return strings.Join(all[:len(all)-1], ", ") + " and " + all[len(all)-1]
}
