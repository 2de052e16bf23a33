package units

import (
	"bytes"
	"math"
	"slices"
	"strconv"
	"strings"
)

// System is a reader's set of units: text for people is printed in one or the
// other. The zero value is Metric.
type System int

// The systems of units.
const (
	Metric System = iota // kg, ha, mm
	US                   // lb, ac, in
)

// String names the system.
func (s System) String() string {
	switch s {
	case Metric:
		return "metric"
	case US:
		return "US"
	}
	return "unknown system"
}

// MarshalText returns the system's name, and an error for a value that is neither of
// the two, since UnmarshalText would not read it back.
func (s System) MarshalText() ([]byte, error) {
	if s != Metric && s != US {
		return nil, noSystem(strconv.Itoa(int(s)))
	}
	return []byte(s.String()), nil
}

// UnmarshalText reads "metric" or "US".
func (s *System) UnmarshalText(text []byte) error {
	for _, system := range []System{Metric, US} {
		if system.String() == string(text) {
			*s = system
			return nil
		}
	}
	return noSystem(string(text))
}

func noSystem(text string) error {
	return &ParseError{Quantity: "System", Text: text, Problem: "no such system", Accepts: []string{Metric.String(), US.String()}, Word: true}
}

// unit is a row of the parser's table.
type unit struct {
	name   string // the spelling that is printed
	factor float64
	also   []string
}

// kind is the parser's table of one quantity: its first unit is the base.
type kind struct {
	name   string
	units  []unit
	metric int // the unit shown in Metric
	us     int // the unit shown in US
}

// parse reads a number and a unit of this kind.
func (k *kind) parse(text string) (float64, error) {
	value, name, problem := split(text)
	if problem == "" {
		u := k.find(name)
		switch {
		case u == nil:
			problem = unknown(name)
		case math.IsInf(value*u.factor, 0) && !math.IsInf(value, 0):
			problem = "the number is too large"
		default:
			return value * u.factor, nil
		}
	}
	accepts := make([]string, len(k.units))
	for i := range k.units {
		accepts[i] = k.units[i].name
	}
	return math.NaN(), &ParseError{Quantity: k.name, Text: text, Problem: problem, Accepts: accepts}
}

func (k *kind) find(name string) *unit {
	for i := range k.units {
		u := &k.units[i]
		if u.name == name {
			return u
		}
		for _, other := range u.also {
			if other == name {
				return u
			}
		}
	}
	return nil
}

// show prints a value of this kind in the unit people of a system use.
func (k *kind) show(v float64, s System) string {
	u := &k.units[k.metric]
	if s == US {
		u = &k.units[k.us]
	}
	return readable(v/u.factor, u.name)
}

// unknown says that a unit is not one of those taken; "ton" earns a hint,
// since it is three different masses.
func unknown(name string) string {
	if strings.HasPrefix(name, "ton") && !strings.HasPrefix(name, "tonne") {
		return strconv.Quote(name) + ` may be the tonne or the short ton: write "t" or "short ton"`
	}
	return "no unit " + strconv.Quote(name)
}

// split parts a text into its number and its unit. The number is as String
// prints it or as people write it: decimal point, no thousands marks.
func split(text string) (value float64, unit, problem string) {
	trimmed := strings.TrimSpace(text)
	end := numberEnd(trimmed)
	if end == 0 {
		return 0, "", "no number in front"
	}
	value, err := strconv.ParseFloat(trimmed[:end], 64)
	if err != nil {
		return 0, "", "the number is too large"
	}
	unit = strings.TrimSpace(trimmed[end:])
	switch {
	case unit == "":
		return 0, "", "the unit is missing"
	case unit[0] == ',':
		return 0, "", "write the number without commas, with a decimal point"
	case unit[0] >= '0' && unit[0] <= '9' || unit[0] == '.':
		return 0, "", "the number is not one number"
	}
	return value, unit, ""
}

// numberEnd finds where the number at the front of a text ends: [sign] digits
// [. digits] [e [sign] digits], or NaN or Inf as String prints them.
func numberEnd(text string) int {
	i := 0
	if i < len(text) && (text[i] == '+' || text[i] == '-') {
		i++
	}
	for _, word := range []string{"NaN", "Inf"} {
		if strings.HasPrefix(text[i:], word) {
			return i + len(word)
		}
	}
	start := i
	digits := func() {
		for i < len(text) && text[i] >= '0' && text[i] <= '9' {
			i++
		}
	}
	digits()
	whole := i - start
	if i < len(text) && text[i] == '.' {
		i++
		before := i
		digits()
		if whole == 0 && i == before {
			return 0
		}
	} else if whole == 0 {
		return 0
	}
	if i < len(text) && (text[i] == 'e' || text[i] == 'E') {
		at := i
		i++
		if i < len(text) && (text[i] == '+' || text[i] == '-') {
			i++
		}
		before := i
		digits()
		if i == before {
			return at // an "e" that is no exponent belongs to the unit
		}
	}
	return i
}

// exact prints a value so that it parses back to the same value.
func exact(v float64, unit string) string {
	return strconv.FormatFloat(v, 'g', -1, 64) + " " + unit
}

// readable prints a value for people: three digits or a little more, and
// commas between thousands.
func readable(v float64, unit string) string {
	text := appendNumber(make([]byte, 0, longText), v)
	if unit == "days" && string(text) == "1" {
		unit = "day"
	}
	return string(append(append(text, ' '), unit...))
}

// longText is longer than most numbers with their unit.
const longText = 48

// Number prints a plain number for people: at least three significant digits,
// no trailing zeros after the point, commas between thousands.
func Number(v float64) string { return string(appendNumber(make([]byte, 0, longText), v)) }

func appendNumber(text []byte, v float64) []byte {
	size := math.Abs(v)
	switch {
	case math.IsNaN(v) || math.IsInf(v, 0):
		return strconv.AppendFloat(text, v, 'g', -1, 64)
	case size >= 1e15 || (size != 0 && size < 1e-6):
		return strconv.AppendFloat(text, v, 'g', 3, 64)
	}
	decimals := 0
	if size < 99.95 && size > 0 {
		decimals = 2 - int(math.Floor(math.Log10(size)))
	}
	text = strconv.AppendFloat(text, v, 'f', decimals, 64)
	if decimals > 0 {
		text = bytes.TrimSuffix(bytes.TrimRight(text, "0"), []byte("."))
	}
	return thousands(text)
}

// thousands puts commas into a decimal number that begins a text.
func thousands(text []byte) []byte {
	first := 0
	if text[0] == '-' {
		first = 1
	}
	if string(text[first:]) == "0" {
		return text[first:] // no negative nothing
	}
	end := len(text)
	if point := bytes.IndexByte(text, '.'); point >= 0 {
		end = point
	}
	for at := end - 3; at > first; at -= 3 {
		text = slices.Insert(text, at, ',')
	}
	return text
}
