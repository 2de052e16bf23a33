package farm

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Note is something the reader of a plan should know: a code and its values
// for a program, and the same in English.
type Note struct {
	Code    string `json:"code"`    // plain words, always the same for one kind of note
	Values  Values `json:"values"`  // what the English says, for a program
	English string `json:"english"` // in the reader's units
}

// Values are the figures that a note or a caution tells, each under its key: float64, int,
// bool, string (dates too), []string; nil for a bound that print does not have.
type Values map[string]any

// note writes a note.
func note(code string, values Values, format string, args ...any) Note {
	if values == nil {
		values = Values{} // as JSON it is an object, not null
	}
	var room [1024]byte
	return Note{Code: code, Values: values, English: capital(fmt.Appendf(room[:0], format, args...))}
}

// capital makes a sentence begin with a capital letter, whatever the id it begins with.
func capital(text []byte) string {
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

// list puts ids into a sentence, in order.
func list(ids []string) string {
	if !slices.IsSorted(ids) {
		ids = slices.Sorted(slices.Values(ids))
	}
	last := len(ids) - 1
	if last < 1 {
		return strings.Join(ids, "")
	}
	return strings.Join(ids[:last], ", ") + " and " + ids[last]
}

// onDays says the days from one date to another.
func onDays(from, to string) string {
	if from == to {
		return "on " + from
	}
	return "from " + from + " to " + to
}

// plural gives a word of which there are so many.
func plural(count int, word string) string {
	if count == 1 {
		return word
	}
	return word + "s"
}
