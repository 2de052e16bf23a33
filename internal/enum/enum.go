// Package enum holds what all enumerations share: their texts. Each has a list of
// its words, in which the word of a constant stands at its number, and "" at 0.
package enum

import (
	"reflect"

	"example.org/soum/units"
)

// Word returns the word of a constant, "" for a value that is none of them.
func Word[E ~int](list []string, constant E) string {
	if constant < 1 || int(constant) >= len(list) {
		return ""
	}
	return list[constant]
}

// Read finds the constant of a word. The error of a word that is not in the list
// names the enumeration and its words.
func Read[E ~int](list []string, text []byte, into *E) error {
	for i, word := range list[1:] {
		if word == string(text) {
			*into = E(i + 1)
			return nil
		}
	}
	return &units.ParseError{Quantity: reflect.TypeFor[E]().String(), Text: string(text), Problem: "no such word", Accepts: list[1:], Word: true}
}
