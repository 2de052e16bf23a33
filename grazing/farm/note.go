package farm

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"example.org/soum/units"
)

// Note is something the reader of a plan should know: a code and its values
// for a program, and the same in English.
type Note struct {
	Code    string `json:"code"`    // plain words, always the same for one kind of note
	Values  Values `json:"values"`  // what the English says, for a program
	English string `json:"english"` // in the reader's units
}

// notebook collects what a plan meets on the way: notes, cautions, the words of the
// verdict. All text and all values stand in one list each until the end, since a
// plan tells some two dozen things and would else be made of little but these. A nil
// notebook forgets.
type notebook struct {
	entries []entry
	values  []value
	text    []byte
	ranges  []rangeNote
}

// entry is a note, a caution or the verdict: where its text and its values end, those
// of the entry before being their begin.
type entry struct {
	kind         entryKind
	code, do     string // do: in place of what the advice says
	text, values int
}

type entryKind uint8

const (
	entryNote entryKind = iota
	entryCaution
	entryVerdict
)

// rangeNote is a RangeError met on one or more days.
type rangeNote struct {
	error *units.RangeError
	first units.Date
	days  int
}

// clear makes a notebook empty and keeps its memory.
func (n *notebook) clear() {
	clear(n.values) // they hold on to the farm
	clear(n.ranges)
	n.entries, n.values, n.text, n.ranges = n.entries[:0], n.values[:0], n.text[:0], n.ranges[:0]
}

// keep writes a range error down, once for each formula and argument, and
// gives back any other error.
func (n *notebook) keep(err error, date units.Date, days int) error {
	if err == nil {
		return nil // and nothing is put on the heap
	}
	return n.keepRange(err, date, days)
}

func (n *notebook) keepRange(err error, date units.Date, days int) error {
	var ranged *units.RangeError
	if !errors.As(err, &ranged) {
		return err
	}
	if n == nil {
		return nil
	}
	for i := range n.ranges {
		if r := &n.ranges[i]; r.error.Function == ranged.Function && r.error.Argument == ranged.Argument {
			r.days += days
			r.first = min(r.first, date)
			return nil
		}
	}
	n.ranges = append(n.ranges, rangeNote{error: ranged, first: date, days: days})
	return nil
}

// add writes a note: what is said, with its arguments in place of each %s.
func (n *notebook) add(code string, values []value, format string, arguments ...value) {
	if n != nil {
		n.say(format, arguments...)
		n.end(entry{code: code}, values...)
	}
}

// warn writes a caution, as add does a note.
func (n *notebook) warn(code string, values []value, format string, arguments ...value) {
	n.say(format, arguments...)
	n.end(entry{kind: entryCaution, code: code}, values...)
}

// say goes on with the text of what is written next.
func (n *notebook) say(format string, arguments ...value) {
	for {
		at := strings.IndexByte(format, '%')
		if at < 0 {
			n.text = append(n.text, format...)
			return
		}
		n.text = append(n.text, format[:at]...)
		if format[at+1] == 's' {
			n.text = arguments[0].append(n.text)
			arguments = arguments[1:]
		} else {
			n.text = append(n.text, '%') // a per cent sign stands twice
		}
		format = format[at+2:]
	}
}

// span says the days from one date to another.
func (n *notebook) span(from, to units.Date) {
	if from == to {
		n.say("on %s", day("", from))
		return
	}
	n.say("from %s to %s", day("", from), day("", to))
}

// end closes the text said so far.
func (n *notebook) end(e entry, values ...value) {
	from := 0
	if last := len(n.entries) - 1; last >= 0 {
		from = n.entries[last].text
	}
	if e.kind == entryNote {
		n.capital(from)
	}
	n.values = append(n.values, values...)
	e.text, e.values = len(n.text), len(n.values)
	n.entries = append(n.entries, e)
}

// capital makes a sentence begin with a capital letter, whatever the id it begins with.
func (n *notebook) capital(at int) {
	first, size := utf8.DecodeRune(n.text[at:])
	upper := unicode.ToUpper(first)
	if upper == first {
		return
	}
	if utf8.RuneLen(upper) == size {
		utf8.EncodeRune(n.text[at:], upper)
		return
	}
	n.text = slices.Replace(n.text, at, at+size, []byte(string(upper))...) // a letter whose capital is longer or shorter
}

// tell gives a plan what was written.
func (n *notebook) tell(plan *Plan) {
	for i := range n.ranges {
		n.ranges[i].tell(n)
	}
	counts := [entryVerdict + 1]int{}
	for _, e := range n.entries {
		counts[e.kind]++
	}
	plan.Notes, plan.Cautions = make([]Note, 0, counts[entryNote]), make([]Caution, 0, counts[entryCaution])
	text, values := string(n.text), slices.Clone(Values(n.values))
	var from entry
	for _, e := range n.entries {
		english, figures := text[from.text:e.text], values[from.values:e.values:e.values]
		switch e.kind {
		case entryNote:
			plan.Notes = append(plan.Notes, Note{Code: e.code, Values: figures, English: english})
		case entryCaution:
			plan.Cautions = append(plan.Cautions, e.caution(english, figures))
		case entryVerdict:
			plan.Verdict.English = english
		}
		from = e
	}
}

func (r *rangeNote) tell(n *notebook) {
	e := r.error
	values := []value{
		word("formula", e.Function), word("argument", e.Argument), number("value", e.Value), word("unit", e.Unit),
		bound("low", e.Low), bound("high", e.High), word("source", e.Source), day("first_day", r.first), whole("days", r.days),
	}
	if e.Gap {
		values = append(values, truth("gap"))
	}
	n.add("outside-source", values,
		"%s The value is used all the same (%s; first on %s, %s days in all).", said(e.Outside()), said(e.Function), day("", r.first), whole("", r.days))
}

// bound gives a limit for JSON, which knows no infinity.
func bound(key string, v float64) value {
	if v-v != 0 {
		return value{key: key}
	}
	return number(key, v)
}

// said makes an argument of a text.
func said(text string) value { return word("", text) }

// append puts an argument into a text.
func (v *value) append(b []byte) []byte {
	switch v.kind {
	case valueText:
		return append(b, v.text...)
	case valueTexts:
		return appendList(b, v.texts)
	case valueWhole:
		return strconv.AppendInt(b, int64(v.number), 10)
	case valueDate:
		b, _ = units.Date(v.number).AppendText(b)
	case valueDates:
		for i, d := range v.dates {
			b, _ = d.AppendText(append(b, joiner(i, len(v.dates))...))
		}
	}
	return b
}

// list puts ids into a sentence.
func list(ids []string) string {
	if len(ids) == 1 {
		return ids[0]
	}
	return string(appendList(nil, ids))
}

func appendList(b []byte, ids []string) []byte {
	if !slices.IsSorted(ids) {
		ids = slices.Sorted(slices.Values(ids))
	}
	for i, id := range ids {
		b = append(append(b, joiner(i, len(ids))...), id...)
	}
	return b
}

// joiner gives what stands before the next of so many in a sentence.
func joiner(i, of int) string {
	switch i {
	case 0:
		return ""
	case of - 1:
		return " and "
	}
	return ", "
}

// pathed puts the place in the document before an error.
func pathed(list string, i int, err error) error { return fmt.Errorf("%s[%d]: %w", list, i, err) }
