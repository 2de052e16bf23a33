package farm

import (
	"bytes"
	"cmp"
	"encoding/json"
	"iter"
	"slices"
	"strconv"

	"example.org/soum/units"
)

// Values are the figures that a note or a caution tells, each under its key. As
// JSON they are one object.
type Values []value

// value is one figure, or one argument of a text, where it has no key.
type value struct {
	key    string
	kind   valueKind
	number float64 // of numbers, whole numbers and dates
	text   string
	texts  []string
	dates  []units.Date
}

type valueKind uint8

const (
	valueNothing valueKind = iota
	valueNumber
	valueWhole
	valueText
	valueTexts
	valueDate
	valueDates
	valueTruth
)

func number[N ~float64](key string, v N) value {
	return value{key: key, kind: valueNumber, number: float64(v)}
}
func whole(key string, v int) value { return value{key: key, kind: valueWhole, number: float64(v)} }
func truth(key string) value        { return value{key: key, kind: valueTruth} }
func word(key, v string) value      { return value{key: key, kind: valueText, text: v} }
func words(key string, v []string) value {
	return value{key: key, kind: valueTexts, texts: v}
}
func day(key string, v units.Date) value {
	return value{key: key, kind: valueDate, number: float64(v)}
}
func days(key string, v []units.Date) value {
	return value{key: key, kind: valueDates, dates: v}
}

// Get returns the figure under a key: a float64, an int, a bool, a string (dates too),
// a list of strings; nil where there is none, or where it is a bound that print does not have.
//
// Check: TestValues
//
// Source: definition: a look-up by key
func (v Values) Get(key string) any {
	for i := range v {
		if v[i].key == key {
			return v[i].plain()
		}
	}
	return nil
}

// All returns all figures with their keys.
//
// Check: TestValues
//
// Source: definition: the list itself
func (v Values) All() iter.Seq2[string, any] {
	return func(yield func(string, any) bool) {
		for i := range v {
			if !yield(v[i].key, v[i].plain()) {
				return
			}
		}
	}
}

// MarshalJSON writes the figures as an object, its keys in the order of the
// alphabet.
func (v Values) MarshalJSON() ([]byte, error) {
	sorted := slices.SortedFunc(slices.Values(v), func(a, b value) int { return cmp.Compare(a.key, b.key) })
	var b bytes.Buffer
	b.WriteByte('{')
	for i := range sorted {
		if i > 0 {
			b.WriteByte(',')
		}
		b.WriteString(strconv.Quote(sorted[i].key) + ":") // keys are plain words of ours
		text, err := json.Marshal(sorted[i].plain())
		if err != nil {
			return nil, err
		}
		b.Write(text)
	}
	b.WriteByte('}')
	return b.Bytes(), nil
}

// plain gives the figure as a Go value.
func (v *value) plain() any {
	switch v.kind {
	case valueNumber:
		return v.number
	case valueWhole:
		return int(v.number)
	case valueText:
		return v.text
	case valueTexts:
		return v.texts
	case valueDate:
		return units.Date(v.number).String()
	case valueTruth:
		return true
	case valueDates:
		texts := make([]string, len(v.dates))
		for i, d := range v.dates {
			texts[i] = d.String()
		}
		return texts
	}
	return nil
}
