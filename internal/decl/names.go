package decl

import (
	"strings"
	"unicode"
)

// Prefix gives the words that all constants of a quantity begin with, as Height
// in HeightInch and HeightMetre.
func (q *Quantity) Prefix() string {
	var names []string
	for _, u := range q.Units {
		names = append(names, u.Name)
	}
	return prefix(names, "Per")
}

// Words gives the texts of an enumeration's constants: LateGestation is "late
// gestation", and words that all begin with are left out.
func (e *Enum) Words() []string {
	shared := prefix(e.Constants, "")
	var words []string
	for _, c := range e.Constants {
		words = append(words, strings.ToLower(strings.Join(parts(strings.TrimPrefix(c, shared)), " ")))
	}
	return words
}

// prefix gives the words that all of several names begin with, but never a
// whole name, nor all that stands before the word named: PoundPerAcre and
// PoundPerFoot both begin with a unit, no prefix.
func prefix(names []string, before string) string {
	if len(names) < 2 {
		return ""
	}
	found := ""
	for _, word := range parts(names[0]) {
		longer := found + word
		for _, name := range names {
			next := strings.TrimPrefix(name, longer)
			if next == name || next == "" || !unicode.IsUpper(rune(next[0])) {
				return found
			}
		}
		if before != "" && parts(strings.TrimPrefix(names[0], longer))[0] == before {
			return found
		}
		found = longer
	}
	return found
}

// parts parts a Go name into its words, each with its capital.
func parts(name string) []string {
	var all []string
	for i, r := range name {
		if unicode.IsUpper(r) || i == 0 {
			all = append(all, "")
		}
		all[len(all)-1] += string(r)
	}
	return all
}

// Snake writes a Go name as snake_case.
func Snake(name string) string {
	return strings.ToLower(strings.Join(parts(name), "_"))
}

// Camel writes a Go name as camelCase.
func Camel(name string) string {
	words := parts(name)
	return strings.ToLower(words[0]) + strings.Join(words[1:], "")
}
