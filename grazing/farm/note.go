package farm

import (
	"fmt"

	"example.org/soum/internal/english"
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
	return Note{Code: code, Values: values, English: english.Capital(fmt.Appendf(room[:0], format, args...))}
}
