// Package english puts figures and names into sentences.
package english

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

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

// Listed is List of ids, put in order.
func Listed(ids []string) string {
	if !slices.IsSorted(ids) {
		ids = slices.Sorted(slices.Values(ids))
	}
	return List(ids)
}

// Word gives a word of which there are so many.
func Word(count int, one string) string {
	if count == 1 {
		return one
	}
	return one + "s"
}

// Often tells a number of times.
func Often(times int) string {
	if times == 1 {
		return "once"
	}
	return fmt.Sprintf("%d times", times)
}

// OnDays says the days from one date to another.
func OnDays(from, to string) string {
	if from == to {
		return "on " + from
	}
	return "from " + from + " to " + to
}

// Capital makes a sentence begin with a capital letter, whatever the id it begins with. It
// writes over the text.
func Capital(text []byte) string {
	first, size := utf8.DecodeRune(text)
	upper := unicode.ToUpper(first)
	switch {
	case upper == first:
		return string(text)
	case utf8.RuneLen(upper) == size:
		utf8.EncodeRune(text, upper)
		return string(text)
	}
	return string(upper) + string(text[size:])
}
