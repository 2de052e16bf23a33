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
	Factor   string  `json:"factor"`   // what turns the units of the numbers into those of the answer, or the answer in the units of the numbers; "" where they cancel
	Answer   string  `json:"answer"`   // in the reader's units
	Value    float64 `json:"value"`    // in base units
	Source   string  `json:"source"`   // the doc comment's section Source
	Text     string  `json:"text"`     // the step in one line
}

// Show gives the step of a formula that gave value for these arguments, in base
// units and in the order of the declaration. An empirical formula is shown in
// the units that its source takes, every other in the reader's; where those
// neither cancel nor differ by a factor that a reader knows, in metric or in base
// units.
func (f *Formula) Show(system System, value float64, arguments ...float64) Step {
	step := Step{Function: f.Name, Result: f.resultName(), Source: f.Source, Value: value, Answer: f.show(f.Quantity, f.Unit, value, shownIn{system: system})}
	line := f.line(arguments)
	if line == nil {
		step.Symbols = spokenSigns.Replace(strings.TrimSuffix(f.Lookup, "."))
		step.Numbers = f.given(system, arguments)
		step.Text = step.Result + " for " + step.Numbers + " = " + step.Answer + " (" + step.Symbols + ")"
		return step
	}
	in := shownIn{system: system}
	if !f.Empirical {
		in, step.Factor = f.factor(line, system, value, arguments)
	}
	outer := 0
	if step.Factor != "" && !strings.HasPrefix(step.Factor, "=") {
		outer = signs["*"].binds
	}
	step.Symbols = line.Value.text(func(i int) string { return spaced(f.Arguments[i].Name) }, 0)
	step.Numbers = line.Value.text(func(i int) string { return f.argument(in, i, arguments) }, outer)
	step.Text = step.Result
	for _, part := range []string{step.Symbols, strings.TrimSpace(step.Numbers + " " + step.Factor), step.Answer} {
		if !strings.HasSuffix(step.Text, "= "+part) && part != step.Text {
			step.Text += " = " + part
		}
	}
	return step
}

// spokenSigns writes the signs of a method's words as a reader does.
var spokenSigns = strings.NewReplacer(" * ", " × ", " / ", " ÷ ")

// shownIn is the units that numbers are shown in: a system's, or the base units,
// in which all formulas are coherent.
type shownIn struct {
	system System
	base   bool
}

func (in shownIn) unit(k *kind) *unit {
	switch {
	case in.base && k != &kindFraction: // 2.5 % reads better than a share of 0.025
		return &k.units[0]
	case in.system == US:
		return &k.units[k.us]
	}
	return &k.units[k.metric]
}

// scale gives the base units in one of the unit that a quantity is shown in. A
// per cent sign is its own hundredth: 2.5 % of 80 kg needs no factor.
func (in shownIn) scale(quantity string) float64 {
	k := kinds[quantity]
	if k == nil || k == &kindFraction {
		return 1
	}
	return in.unit(k).factor
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

// resultName gives the name of what a formula returns, from its own: that of
// HeightOf is "height".
func (f *Formula) resultName() string {
	return strings.TrimSuffix(spaced(f.Name[strings.LastIndex(f.Name, ".")+1:]), " of")
}

// spaced turns a Go name into words: meanToPeak into "mean to peak".
func spaced(name string) string {
	return (&ParseError{Quantity: name}).What()
}

// argument prints an argument for people, a negative one in brackets.
func (f *Formula) argument(in shownIn, i int, arguments []float64) string {
	a := &f.Arguments[i]
	text := ""
	switch {
	case a.Words != nil && arguments[i] >= 1 && int(arguments[i]) <= len(a.Words):
		return a.Words[int(arguments[i])-1]
	case f.Empirical:
		text = strings.TrimSpace(Number(arguments[i]/a.Factor) + " " + a.Unit)
	default:
		text = f.show(a.Quantity, a.Unit, arguments[i], in)
	}
	if strings.HasPrefix(text, "-") {
		text = "(" + text + ")"
	}
	return text
}

func (f *Formula) show(quantity, unit string, value float64, in shownIn) string {
	k := kinds[quantity]
	switch {
	case k == nil && quantity == "Temperature":
		return Temperature(value).In(in.system)
	case k == nil:
		return Number(value)
	case f.Empirical && unit != "":
		return readable(value/k.find(unit).factor, unit)
	}
	u := in.unit(k)
	return readable(value/u.factor, u.name)
}

// given lists the arguments of a look-up: "kind hen, 10.2 days".
func (f *Formula) given(system System, arguments []float64) string {
	var all []string
	for i := range f.Arguments {
		text := f.argument(shownIn{system: system}, i, arguments)
		if name := spaced(f.Arguments[i].Name); !strings.HasSuffix(text, " "+name) {
			text = name + " " + text
		}
		all = append(all, text)
	}
	return strings.Join(all, ", ")
}

// factors names the conversions that a reader knows.
var factors = []struct {
	value float64
	text  string
}{
	{43560, "× 43,560 ft²/ac"}, {10000, "× 10,000 m²/ha"}, {1.0 / 43560, "÷ 43,560 ft²/ac"}, {1.0 / 10000, "÷ 10,000 m²/ha"},
	{30, "× 30 days/month"}, {1.0 / 30, "÷ 30 days/month"},
}

// factor gives the units to show the numbers in, and what turns the expression
// over them into the answer: nothing where units cancel, else a conversion that a
// reader knows, else the answer in the units of the numbers.
func (f *Formula) factor(line *Line, system System, value float64, arguments []float64) (in shownIn, text string) {
	reader := shownIn{system: system}
	ratio := f.ratio(line, value, arguments, reader)
	if math.Abs(ratio-1) < 1e-9 || ratio-ratio != 0 || value == 0 {
		return reader, ""
	}
	for _, known := range factors {
		if math.Abs(ratio/known.value-1) < 1e-9 {
			return reader, known.text
		}
	}
	in = shownIn{system: Metric}
	if math.Abs(f.ratio(line, value, arguments, in)-1) > 1e-9 {
		in = shownIn{system: Metric, base: true}
	}
	text = f.show(f.Quantity, f.Unit, value, in)
	if text == f.show(f.Quantity, f.Unit, value, reader) {
		return in, ""
	}
	return in, "= " + text
}

// ratio gives the answer over the expression of the numbers, as they are shown.
func (f *Formula) ratio(line *Line, value float64, arguments []float64, in shownIn) float64 {
	numbers := make([]float64, len(arguments))
	for i := range arguments {
		numbers[i] = arguments[i] / in.scale(f.Arguments[i].Quantity)
	}
	return value / in.scale(f.Quantity) / line.Value.value(numbers)
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
