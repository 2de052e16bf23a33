package units

import (
	"math"
	"strconv"
	"strings"
)

// Term is a piece of a formula's expression: an argument, a number, or an
// operation on other terms. It is written by go generate from the doc comment.
type Term struct {
	Op       string  // "+", "-", "*", "/", "neg", "<", "<=", ">", ">=", "&&", or a function's name; "" for an argument or a number
	Argument int     // from 1; 0 for a number
	Number   float64 // the number
	Terms    []Term  // what the operation takes
}

// Line is a line of a formula: its value, and for a piecewise one when it holds.
type Line struct {
	Value Term  // what it gives
	When  *Term // nil: always
}

// Step is a formula with its numbers put in: how an answer came about.
type Step struct {
	Function string  `json:"function"` // as in "forage.Available"
	Result   string  `json:"result"`   // the name of what is computed
	Symbols  string  `json:"symbols"`  // the formula in names, or what it looks up
	Numbers  string  `json:"numbers"`  // the same with the numbers put in
	Factor   string  `json:"factor"`   // what turns the units of the numbers into those of the answer; "" where they cancel
	Answer   string  `json:"answer"`   // in the reader's units
	Value    float64 `json:"value"`    // in base units
	Source   string  `json:"source"`   // the doc comment's section Source
}

// Text gives the step in one line.
func (s Step) Text() string {
	parts := []string{s.Result}
	for _, part := range []string{s.Symbols, strings.TrimSpace(s.Numbers + " " + s.Factor), s.Answer} {
		if part != "" && part != parts[len(parts)-1] {
			parts = append(parts, part)
		}
	}
	return strings.Join(parts, " = ")
}

// Show gives the step of a formula that gave value for these arguments, in base
// units and in the order of the declaration. An empirical formula is shown in
// the units that its source takes, every other in the reader's.
func (f *Formula) Show(system System, value float64, arguments ...float64) Step {
	step := Step{Function: f.Name, Result: f.resultName(), Source: f.Source, Value: value, Answer: f.show(f.Quantity, f.Unit, value, system)}
	line := f.line(arguments)
	if line == nil {
		step.Symbols = f.Lookup
		step.Numbers = f.given(system, arguments)
		return step
	}
	names := func(i int) string { return spaced(f.Arguments[i].Name) }
	numbers := func(i int) string { return f.argument(system, i, arguments) }
	step.Symbols = line.Value.text(names, 0)
	step.Numbers = line.Value.text(numbers, 0)
	step.Factor = f.factor(line, system, value, arguments)
	return step
}

// line picks the line of the formula that holds, nil where it has none.
func (f *Formula) line(arguments []float64) *Line {
	units := make([]float64, len(f.Arguments))
	for i := range units {
		units[i] = arguments[i]
		if f.Empirical {
			units[i] /= f.Arguments[i].Factor
		}
	}
	for i := range f.Lines {
		if when := f.Lines[i].When; when == nil || when.value(units) != 0 {
			return &f.Lines[i]
		}
	}
	return nil
}

// resultName gives the name of what a formula returns, from its own.
func (f *Formula) resultName() string {
	return spaced(f.Name[strings.LastIndex(f.Name, ".")+1:])
}

// spaced turns a Go name into words: meanToPeak into "mean to peak".
func spaced(name string) string {
	return (&ParseError{Quantity: name}).What()
}

// argument prints an argument for people.
func (f *Formula) argument(system System, i int, arguments []float64) string {
	a := &f.Arguments[i]
	switch {
	case a.Words != nil:
		if n := int(arguments[i]); n >= 1 && n <= len(a.Words) {
			return a.Words[n-1]
		}
		return Number(arguments[i])
	case f.Empirical:
		return strings.TrimSpace(Number(arguments[i]/a.Factor) + " " + a.Unit)
	}
	return f.show(a.Quantity, a.Unit, arguments[i], system)
}

func (f *Formula) show(quantity, unit string, value float64, system System) string {
	k := kinds[quantity]
	switch {
	case k == nil && quantity == "Temperature":
		return Temperature(value).In(system)
	case k == nil:
		return Number(value)
	case f.Empirical && unit != "":
		return readable(value/k.find(unit).factor, unit)
	}
	return k.show(value, system)
}

// given lists the arguments of a look-up.
func (f *Formula) given(system System, arguments []float64) string {
	var all []string
	for i := range f.Arguments {
		all = append(all, spaced(f.Arguments[i].Name)+" "+f.argument(system, i, arguments))
	}
	return strings.Join(all, ", ")
}

// scale gives the base units in one of the unit that a quantity is shown in. A
// per cent sign is its own hundredth: 2.5 % of 80 kg needs no factor.
func scale(quantity string, system System) float64 {
	k := kinds[quantity]
	if k == nil || quantity == "Fraction" {
		return 1
	}
	if system == US {
		return k.units[k.us].factor
	}
	return k.units[k.metric].factor
}

// factors names the conversions that a reader knows.
var factors = []struct {
	value float64
	text  string
}{
	{43560, "43,560 ft²/ac"}, {10000, "10,000 m²/ha"}, {1000, "1,000"}, {2000, "2,000 lb/short ton"},
	{1.0 / 43560, "1 ac/43,560 ft²"}, {1.0 / 10000, "1 ha/10,000 m²"}, {30, "30 days/month"}, {1.0 / 30, "1 month/30 days"},
	{100, "100"}, {0.01, "0.01"},
}

// factor gives what turns the expression over the shown numbers into the shown
// answer, "" where their units cancel.
func (f *Formula) factor(line *Line, system System, value float64, arguments []float64) string {
	if f.Empirical {
		return ""
	}
	shown := make([]float64, len(arguments))
	for i := range arguments {
		shown[i] = arguments[i] / scale(f.Arguments[i].Quantity, system)
	}
	ratio := value / scale(f.Quantity, system) / line.Value.value(shown)
	if ratio-ratio != 0 || math.Abs(ratio-1) < 1e-9 || value == 0 {
		return ""
	}
	for _, known := range factors {
		if math.Abs(ratio/known.value-1) < 1e-9 {
			return "× " + known.text
		}
	}
	return "× " + Number(ratio)
}

// value evaluates a term.
func (t *Term) value(arguments []float64) float64 {
	truth := func(b bool) float64 {
		if b {
			return 1
		}
		return 0
	}
	if t.Op == "" {
		if t.Argument > 0 {
			return arguments[t.Argument-1]
		}
		return t.Number
	}
	x, y := t.Terms[0].value(arguments), math.NaN()
	if len(t.Terms) > 1 {
		y = t.Terms[1].value(arguments)
	}
	switch t.Op {
	case "+":
		return x + y
	case "-":
		return x - y
	case "*":
		return x * y
	case "/":
		return x / y
	case "neg":
		return -x
	case "sqrt":
		return math.Sqrt(x)
	case "exp":
		return math.Exp(x)
	case "log":
		return math.Log(x)
	case "abs":
		return math.Abs(x)
	case "pow":
		return math.Pow(x, y)
	case "min":
		return min(x, y)
	case "max":
		return max(x, y)
	case "<":
		return truth(x < y)
	case "<=":
		return truth(x <= y)
	case ">":
		return truth(x > y)
	case ">=":
		return truth(x >= y)
	case "&&":
		return truth(x != 0 && y != 0)
	}
	return math.NaN()
}

// signs are the operations as a reader writes them, with how tightly they bind.
var signs = map[string]struct {
	text  string
	binds int
}{"+": {" + ", 1}, "-": {" − ", 1}, "*": {" × ", 2}, "/": {" ÷ ", 2}}

// text writes a term as a reader would, its arguments by a function of theirs.
func (t *Term) text(argument func(int) string, outer int) string {
	switch sign, infix := signs[t.Op]; {
	case t.Op == "" && t.Argument > 0:
		return argument(t.Argument - 1)
	case t.Op == "":
		return plain(t.Number)
	case infix:
		right := sign.binds
		if t.Op == "-" || t.Op == "/" {
			right++ // a − (b − c) keeps its brackets
		}
		text := t.Terms[0].text(argument, sign.binds) + sign.text + t.Terms[1].text(argument, right)
		if sign.binds < outer {
			return "(" + text + ")"
		}
		return text
	case t.Op == "neg":
		return "−" + t.Terms[0].text(argument, 3)
	case t.Op == "pow":
		return t.Terms[0].text(argument, 3) + "^" + t.Terms[1].text(argument, 3)
	}
	name := t.Op
	if name == "log" {
		name = "ln"
	}
	var all []string
	for i := range t.Terms {
		all = append(all, t.Terms[i].text(argument, 0))
	}
	return name + "(" + strings.Join(all, ", ") + ")"
}

// plain prints a formula's own number with all its digits.
func plain(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }
