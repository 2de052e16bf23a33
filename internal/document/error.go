package document

import (
	"strconv"
	"strings"
	"unicode"
)

// Error is one thing wrong with a document.
type Error struct {
	Path    string // as in land[2].stretches[0].height; "" for the document itself
	Value   string // what stands there, as JSON, cut where it is long; "" for nothing
	Problem string // what is wrong, reading on from Value where there is one
	Allowed string // what would be right
}

// Error tells path, value, problem and what would be right, in one line.
func (e *Error) Error() string {
	text := e.Path
	if text == "" {
		text = "document"
	}
	text += ": "
	if e.Value != "" {
		text += e.Value + " "
	}
	text += e.Problem
	if e.Allowed != "" {
		text += "; " + e.Allowed
	}
	return oneLine(text)
}

// oneLine writes control characters as Go would, so that an error stays a line.
func oneLine(text string) string {
	if strings.IndexFunc(text, unicode.IsControl) < 0 {
		return text
	}
	var b strings.Builder
	for _, r := range text {
		if unicode.IsControl(r) {
			b.WriteString(strings.Trim(strconv.QuoteRune(r), "'"))
		} else {
			b.WriteRune(r)
		}
	}
	return b.String()
}

// place is where in a document something stands: a key or an index inside a
// parent. Its text is made only for an error.
type place struct {
	up    *place
	key   string
	index int // -1 for a key
}

func (p *place) of(key string) *place   { return &place{up: p, key: key, index: -1} }
func (p *place) item(index int) *place  { return &place{up: p, index: index} }
func (p *place) problem(e Error) *Error { e.Path = p.String(); return &e }

// String writes the place as land[2].stretches[0].height. A key that would not
// read well with a dot stands in brackets and quotes.
func (p *place) String() string {
	var steps []string
	for ; p != nil; p = p.up {
		switch {
		case p.index >= 0:
			steps = append(steps, "["+strconv.Itoa(p.index)+"]")
		case plainKey(p.key):
			steps = append(steps, "."+p.key)
		default:
			steps = append(steps, "["+quoted(p.key)+"]")
		}
	}
	var b strings.Builder
	for i := len(steps) - 1; i >= 0; i-- {
		b.WriteString(steps[i])
	}
	return strings.TrimPrefix(b.String(), ".")
}

// longest is how much of a key or a value an error shows.
const longest = 60

func plainKey(key string) bool {
	odd := func(r rune) bool {
		return !unicode.IsLetter(r) && !unicode.IsDigit(r) && r != '-' && r != '_'
	}
	return key != "" && len(key) <= longest && strings.IndexFunc(key, odd) < 0
}

// quoted writes a text in quotes, cut where it is long.
func quoted(text string) string {
	n := 0
	for at := range text {
		if n++; n > longest {
			return strconv.Quote(text[:at] + "…")
		}
	}
	return strconv.Quote(text)
}
