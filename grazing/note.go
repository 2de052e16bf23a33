package grazing

import (
	"errors"
	"fmt"
	"unicode"
	"unicode/utf8"

	"example.org/soum/units"
)

// Note is something the reader of a plan should know: a code and its values
// for a program, and the same in English.
type Note struct {
	Code    string         `json:"code"`    // plain words, always the same for one kind of note
	Values  map[string]any `json:"values"`  // what the English says, for a program
	English string         `json:"english"` // in the reader's units
}

// notebook collects what a plan meets on the way. A nil notebook forgets.
type notebook struct {
	notes  []Note
	ranges []*rangeNote
	text   []byte // to write in
}

// rangeNote is a RangeError met on one or more days.
type rangeNote struct {
	error *units.RangeError
	first units.Date
	days  int
}

// keep writes a range error down, once for each formula and argument, and
// gives back any other error.
func (n *notebook) keep(err error, date units.Date, days int) error {
	if err == nil {
		return nil // and nothing is put on the heap
	}
	var ranged *units.RangeError
	if !errors.As(err, &ranged) {
		return err
	}
	if n == nil {
		return nil
	}
	for _, r := range n.ranges {
		if r.error.Function == ranged.Function && r.error.Argument == ranged.Argument {
			r.days += days
			r.first = min(r.first, date)
			return nil
		}
	}
	n.ranges = append(n.ranges, &rangeNote{error: ranged, first: date, days: days})
	return nil
}

// add writes a note.
func (n *notebook) add(code string, values map[string]any, format string, args ...any) {
	if n != nil {
		n.text = fmt.Appendf(n.text[:0], format, args...)
		n.notes = append(n.notes, Note{Code: code, Values: values, English: sentence(n.text)})
	}
}

// all gives the notes, those of ranges last.
func (n *notebook) all() []Note {
	notes := n.notes
	for _, r := range n.ranges {
		e := r.error
		notes = append(notes, Note{
			Code: "outside-source",
			Values: map[string]any{
				"formula": e.Function, "argument": e.Argument, "value": e.Value, "unit": e.Unit,
				"low": bound(e.Low), "high": bound(e.High), "source": e.Source, "first_day": r.first.String(), "days": r.days,
			},
			English: sentence(fmt.Appendf(nil, "%s The value is used all the same (%s; first on %s, %d days in all).", e.Outside(), e.Function, r.first, r.days)),
		})
	}
	return notes
}

// sentence begins with a capital letter, whatever the id it begins with.
func sentence(text []byte) string {
	first, size := utf8.DecodeRune(text)
	upper := unicode.ToUpper(first)
	if utf8.RuneLen(upper) != size { // a letter whose capital is longer or shorter
		return string(upper) + string(text[size:])
	}
	utf8.EncodeRune(text, upper)
	return string(text)
}

// bound gives a limit for JSON, which knows no infinity.
func bound(v float64) any {
	if !finite(v) {
		return nil
	}
	return v
}

// pathed puts the place in the document before an error.
func pathed(list string, i int, err error) error { return fmt.Errorf("%s[%d]: %w", list, i, err) }
