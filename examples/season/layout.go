package main

import (
	"fmt"
	"math"
	"strings"
	"text/tabwriter"
	"unicode"
	"unicode/utf8"

	"example.org/soum/units"
)

// lineWidth is where paragraphs are wrapped.
const lineWidth = 80

// wrap puts words into lines, the first behind one indent and the others behind
// another.
func wrap(text, first, rest string) string {
	var b strings.Builder
	line := first
	empty := true
	for _, word := range strings.Fields(text) {
		if !empty && utf8.RuneCountInString(line)+1+utf8.RuneCountInString(word) > lineWidth {
			b.WriteString(line + "\n")
			line, empty = rest, true
		}
		if !empty {
			line += " "
		}
		line += word
		empty = false
	}
	return b.String() + strings.TrimRight(line, " ") + "\n"
}

// gap is the blanks between two columns.
const gap = 2

// column is one column of a table: two lines of heading, and cells.
type column struct {
	head, unit string
	words      bool // aligned left, as words are; numbers are aligned right
	cells      []string
}

// tabulate writes columns side by side and leaves out those without any cell.
func tabulate(columns []column) string {
	var b strings.Builder
	writer := tabwriter.NewWriter(&b, 0, 0, gap, ' ', tabwriter.AlignRight)
	var kept [][]string
	units := ""
	for _, c := range columns {
		if strings.Join(c.cells, "") != "" {
			kept = append(kept, c.lines())
			units += c.unit
		}
	}
	for line := range kept[0] {
		if line == 1 && units == "" {
			continue
		}
		for _, cells := range kept {
			fmt.Fprint(writer, cells[line], "\t")
		}
		fmt.Fprintln(writer)
	}
	writer.Flush() // a strings.Builder takes all
	return trimmed(b.String())
}

// trimmed takes the gap before the first column off each line of a table, and
// blanks behind the last.
func trimmed(table string) string {
	var b strings.Builder
	for line := range strings.Lines(table) {
		b.WriteString(strings.TrimRight(line[gap:], " \n") + "\n")
	}
	return b.String()
}

// lines gives heading and cells, padded where they are words.
func (c *column) lines() []string {
	lines := append([]string{c.head, c.unit}, c.cells...)
	width := 0
	for i := range lines {
		lines[i] = oneLine(lines[i])
		width = max(width, utf8.RuneCountInString(lines[i]))
	}
	if c.words {
		for i, text := range lines {
			lines[i] = text + strings.Repeat(" ", width-utf8.RuneCountInString(text))
		}
	}
	return lines
}

// oneLine puts a blank in place of what would break a line or a table.
func oneLine(text string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsControl(r) {
			return ' '
		}
		return r
	}, text)
}

// shown is a quantity that prints for people.
type shown interface{ In(units.System) string }

// number prints a quantity without its unit.
func number(q shown, s units.System) string {
	text, _, _ := strings.Cut(q.In(s), " ")
	return text
}

// unitOf gives the unit that a quantity is printed in.
func unitOf(q shown, s units.System) string {
	_, unit, _ := strings.Cut(q.In(s), " ")
	return unit
}

// whole prints a mass of dry matter to the nearest lb or kg.
func whole(q units.DryMatter, s units.System) string { return units.Number(math.Round(inUnit(q, s))) }

// inUnit gives a mass of dry matter in lb or kg.
func inUnit(q units.DryMatter, s units.System) float64 {
	if s == units.US {
		return q.Pounds()
	}
	return q.Kilograms()
}

// dayMonth prints a date as "20 Apr".
func dayMonth(d units.Date) string {
	return fmt.Sprintf("%d %s", d.Day(), d.Month().String()[:3])
}

// weekday prints a date as "Fri 20 Apr".
func weekday(d units.Date) string {
	return fmt.Sprintf("%s %2d %s", d.Weekday().String()[:3], d.Day(), d.Month().String()[:3])
}

// long prints a date as "Friday 20 April 2001".
func long(d units.Date) string {
	return fmt.Sprintf("%s %d %s %d", d.Weekday(), d.Day(), d.Month(), d.Year())
}

// fromTo prints the days of a stay, as in "20–30 Apr".
func fromTo(from, to units.Date) string {
	switch {
	case from == to:
		return dayMonth(from)
	case from.Month() == to.Month() && from.Year() == to.Year():
		return fmt.Sprintf("%d–%s", from.Day(), dayMonth(to))
	}
	return dayMonth(from) + "–" + dayMonth(to)
}
