package door_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"maps"
	"math"
	"math/rand/v2"
	"os"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"
	"unicode"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/bindings/internal/door"
	"example.org/soum/internal/check"
	"example.org/soum/internal/decl"
	"example.org/soum/internal/document"
	"example.org/soum/internal/functions"
	"example.org/soum/units"
)

// TestOneGrammarOfErrors calls every exported function, and every exported method
// that returns an error, with good arguments and then with a bad one in each place in
// turn. Nothing panics, and every answer keeps the grammar:
//
//   - an impossible argument, a word that no table has, a wrong document or log: every
//     float of the answer is NaN and everything else its zero value;
//   - an argument outside what the source covers: the value, and limits in order;
//   - no error: a number that is one.
//
// An error is a line that names the place and the value.
func TestOneGrammarOfErrors(t *testing.T) {
	root, err := decl.Root()
	require.NoError(t, err)
	w := newWalk(t)
	for _, name := range decl.Packages() {
		p, err := decl.Read(root, name)
		require.NoError(t, err)
		w.learn(p)
	}
	w.addMethods()
	require.Greater(t, len(w.subjects), 700)
	for _, name := range w.packages() {
		t.Run(name, func(t *testing.T) {
			listed := map[string]bool{}
			for _, s := range w.subjects {
				if s.pkg == name && !listed[s.name] { // a method is tried on several values
					listed[s.name] = !s.try(t, w)
				}
			}
		})
	}
}

// walk is what the test knows of the library.
type walk struct {
	t        *testing.T
	calls    map[string]json.RawMessage
	subjects []*subject
	// values are good values by type, from arguments and answers: what methods are tried
	// on and given.
	values map[reflect.Type][]reflect.Value
	// rows are the types of which there are lists: an answer of one is a row of a table.
	rows map[reflect.Type]bool
}

// subject is a function, or a method of a value, with good arguments.
type subject struct {
	pkg, name  string
	parameters []string
	call       reflect.Value
	good       []reflect.Value
}

func newWalk(t *testing.T) *walk {
	w := &walk{t: t, values: map[reflect.Type][]reflect.Value{}, rows: map[reflect.Type]bool{}}
	data, err := os.ReadFile("../../calls.json")
	require.NoError(t, err)
	require.NoError(t, json.Unmarshal(data, &w.calls))
	return w
}

func (w *walk) packages() []string {
	var all []string
	for _, s := range w.subjects {
		if !slices.Contains(all, s.pkg) {
			all = append(all, s.pkg)
		}
	}
	return all
}

// learn takes up a package's functions, and what they answer to good arguments.
func (w *walk) learn(p *decl.Package) {
	for i := range p.Functions {
		declared := &p.Functions[i]
		f := functions.ByName(declared.Full())
		if declared.Receiver != "" || f == nil {
			continue
		}
		if of := reflect.TypeOf(f.Call); of.NumOut() == 1 && fails(of) {
			continue // the error that it returns is its answer
		}
		s := &subject{pkg: p.Name, name: f.Name, parameters: f.Parameters, call: reflect.ValueOf(f.Call), good: w.good(declared, f)}
		w.subjects = append(w.subjects, s)
		for _, v := range s.good {
			w.keep(v, 0)
		}
		for _, v := range s.call.Call(s.good) {
			w.keep(v, 0)
		}
	}
}

// good gives good arguments of a function: within the limits of its doc comment, or
// those of its call in calls.json as the door reads them.
func (w *walk) good(declared *decl.Function, f *functions.Function) []reflect.Value {
	of := reflect.TypeOf(f.Call)
	values := make([]reflect.Value, of.NumIn())
	for i := range values {
		values[i] = reflect.New(of.In(i)).Elem()
	}
	if raw, called := w.calls[f.Name]; called {
		real := f.Call
		defer func() { f.Call = real }()
		f.Call = reflect.MakeFunc(of, func(in []reflect.Value) []reflect.Value {
			copy(values, in)
			out := make([]reflect.Value, of.NumOut())
			for i := range out {
				out[i] = reflect.Zero(of.Out(i))
			}
			return out
		}).Interface()
		door.Call(f.Name, raw)
		return values
	}
	if declared.IsGuarded() {
		for i, v := range check.NewSampler(declared, rand.New(rand.NewPCG(3, 4))).Sample() {
			if values[i].Kind() == reflect.Float64 {
				values[i].SetFloat(v)
			} else {
				values[i].SetInt(int64(v))
			}
		}
	}
	return values
}

// enough is how many values of a type methods are tried on.
const enough = 2

// keep notes a value, and what it holds, by type.
func (w *walk) keep(v reflect.Value, deep int) {
	if deep > 4 {
		return
	}
	of := v.Type()
	if of.PkgPath() != "" && len(w.values[of]) < enough && !v.IsZero() {
		w.values[of] = append(w.values[of], v)
	}
	switch v.Kind() {
	case reflect.Pointer, reflect.Interface:
		if !v.IsNil() && of != reflect.TypeFor[error]() {
			w.keep(v.Elem(), deep+1)
		}
	case reflect.Struct:
		for i := range v.NumField() {
			if of.Field(i).IsExported() {
				w.keep(v.Field(i), deep+1)
			}
		}
	case reflect.Slice, reflect.Array:
		if v.Kind() == reflect.Slice {
			w.rows[of.Elem()] = true
		}
		for i := range min(v.Len(), enough) {
			w.keep(v.Index(i), deep+1)
		}
	}
}

// addMethods takes up the methods of the library's types of which there is a value.
func (w *walk) addMethods() {
	packages := w.packages()
	types := slices.SortedFunc(maps.Keys(w.values), func(a, b reflect.Type) int { return strings.Compare(a.String(), b.String()) })
	for _, of := range types {
		if pkg, _, _ := strings.Cut(of.String(), "."); slices.Contains(packages, pkg) {
			w.methods(pkg, of)
		}
	}
}

// methods takes up the exported methods of a type that return an error.
func (w *walk) methods(pkg string, of reflect.Type) {
	for _, value := range w.values[of] {
		at := reflect.New(of)
		at.Elem().Set(value)
		for i := range at.NumMethod() {
			method, call := at.Type().Method(i), at.Method(i)
			if !fails(call.Type()) || call.Type().IsVariadic() {
				continue
			}
			s := &subject{pkg: pkg, name: of.String() + "." + method.Name, call: call}
			for k := range call.Type().NumIn() {
				s.parameters = append(s.parameters, fmt.Sprintf("argument %d", k+1))
				s.good = append(s.good, w.any(call.Type().In(k)))
			}
			w.subjects = append(w.subjects, s)
		}
	}
}

// any gives a good value of a type: one that has been seen, or 1.
func (w *walk) any(of reflect.Type) reflect.Value {
	if seen := w.values[of]; seen != nil {
		return seen[0]
	}
	v := reflect.New(of).Elem()
	switch of.Kind() {
	case reflect.Float64:
		v.SetFloat(1)
	case reflect.Int, reflect.Int32:
		v.SetInt(1)
	}
	return v
}

// fails tells whether a function's last result is an error.
func fails(of reflect.Type) bool {
	n := of.NumOut()
	return n > 0 && of.Out(n-1) == reflect.TypeFor[error]()
}

// try puts a bad argument in each place in turn, lists what breaks the grammar, and
// tells whether nothing does.
func (s *subject) try(t *testing.T, w *walk) bool {
	var wrong []string
	for i := range s.good {
		for _, b := range bad(s.good[i]) {
			arguments := slices.Clone(s.good)
			arguments[i] = b.value
			for _, problem := range s.ask(w, arguments, b) {
				wrong = append(wrong, fmt.Sprintf("\n    %s is %s: %s", s.parameters[i]+b.place, b.name, problem))
			}
		}
	}
	if len(wrong) > 0 {
		const most = 12
		more := ""
		if len(wrong) > most {
			more = fmt.Sprintf("\n    and %d more", len(wrong)-most)
		}
		t.Errorf("%s: %d answers break the grammar%s%s", s.name, len(wrong), strings.Join(wrong[:min(most, len(wrong))], ""), more)
	}
	return len(wrong) == 0
}

// ask calls and holds the answer to the grammar.
func (s *subject) ask(w *walk, arguments []reflect.Value, b badValue) (wrong []string) {
	defer func() {
		if fault := recover(); fault != nil {
			wrong = append(wrong, fmt.Sprintf("it panics: %.200v", fault))
		}
	}()
	endless := time.AfterFunc(time.Minute, func() {
		panic(fmt.Sprintf("%s takes more than a minute where%s is %s", s.name, b.place, b.name))
	})
	defer endless.Stop()
	out := s.call.Call(arguments)
	if !fails(s.call.Type()) {
		return nil
	}
	err, _ := out[len(out)-1].Interface().(error)
	a := answer{walk: w, values: out[:len(out)-1], err: err, bad: b}
	a.hold()
	return a.wrong
}

// answer is what a function gave back for a bad argument.
type answer struct {
	walk   *walk
	values []reflect.Value
	err    error
	bad    badValue
	wrong  []string
}

func (a *answer) breaks(format string, parts ...any) {
	a.wrong = append(a.wrong, fmt.Sprintf(format, parts...))
}

func (a *answer) hold() {
	var domain *units.DomainError
	var ranged *units.RangeError
	var word *units.ParseError
	var wrong *document.Error
	shown := func(v float64) string { return fmt.Sprintf("%.6g", v) }
	switch {
	case a.err == nil:
		if a.bad.never {
			a.breaks("it is not refused, and gives %s", a.text())
		} else {
			a.isThere("no error")
		}
		return
	case errors.As(a.err, &domain):
		a.isBlank(false)
		a.names(domain.Function, domain.Argument, shown(domain.Value))
	case errors.As(a.err, &ranged):
		a.isThere("a range error")
		a.names(ranged.Function, ranged.Argument, shown(ranged.Value))
		if !(ranged.Low <= ranged.High) {
			a.breaks("its range error is from %v to %v", ranged.Low, ranged.High)
		}
		if a.bad.never || ranged.Value-ranged.Value != 0 {
			a.breaks("it comes with a range error: %v", a.err)
		}
	case errors.As(a.err, &word):
		a.isBlank(false)
		place := word.Function
		if place == "" {
			place = word.What()
		}
		a.names(place, word.Argument, strconv.Quote(word.Text))
		if len(word.Accepts) == 0 {
			a.breaks("its error does not tell what would be right: %v", a.err)
		}
	case errors.As(a.err, &wrong):
		a.isBlank(true)
		a.names(wrong.Path, wrong.Value, wrong.Problem)
	default:
		a.breaks("its error is a plain %T: %.200v", a.err, a.err)
	}
	if strings.ContainsFunc(a.err.Error(), unicode.IsControl) {
		a.breaks("its error is not one line of text: %.200q", a.err)
	}
}

// names holds the text of the error to the place and the value.
func (a *answer) names(parts ...string) {
	text := a.err.Error()
	for _, part := range parts {
		if !strings.Contains(text, part) && !strings.ContainsFunc(part, unicode.IsControl) { // which are written otherwise
			a.breaks("its error does not name %q: %.200v", part, text)
		}
	}
	if parts[0] == "" && !strings.HasPrefix(text, "document: ") {
		a.breaks("its error does not name a place: %.200v", text)
	}
}

// isThere holds an answer to its numbers: those of a list or a row may be unknown.
func (a *answer) isThere(beside string) {
	for _, v := range a.values {
		plain := v.Kind() == reflect.Float64 || v.Kind() == reflect.Struct && onlyFloats(v.Type())
		eachFloat(v, func(f float64) bool {
			if f-f != 0 && (plain || beside != "no error") {
				a.breaks("%v with %s, in %s", f, beside, a.text())
				return false
			}
			return true
		})
	}
}

// isBlank holds an answer to there being none. A wrong document or list may give an
// empty struct, and so may any struct that holds more than numbers.
func (a *answer) isBlank(document bool) {
	for _, v := range a.values {
		if blank(v, func(of reflect.Type) bool {
			return document || a.bad.list || of.Kind() == reflect.Struct && !onlyFloats(of) || of == reflect.TypeFor[units.Money]() || of == reflect.TypeFor[units.FeedPrice]()
		}) {
			continue
		}
		a.breaks("%s beside %.160v", a.text(), a.err)
		return
	}
}

// text prints an answer.
func (a *answer) text() string {
	var all []string
	for _, v := range a.values {
		all = append(all, fmt.Sprintf("%.80s", fmt.Sprintf("%+v", v)))
	}
	return strings.Join(all, ", ")
}

// blank tells whether a value is none: floats are NaN, all else is zero. Where empty
// says so of its type, a struct may be its zero value.
func blank(v reflect.Value, empty func(reflect.Type) bool) bool {
	switch v.Kind() {
	case reflect.Float64:
		return math.IsNaN(v.Float())
	case reflect.Slice, reflect.Map:
		return v.Len() == 0
	case reflect.Array:
		for i := range v.Len() {
			if !blank(v.Index(i), empty) {
				return false
			}
		}
		return true
	case reflect.Struct:
		if v.IsZero() && (empty(v.Type()) || !hasFloats(v.Type())) {
			return true
		}
		said := hasFloats(v.Type()) // a word may tell what the number would be in
		for i := range v.NumField() {
			if !blank(v.Field(i), empty) && !(said && isWord(v.Field(i).Type())) {
				return false
			}
		}
		return v.NumField() > 0
	}
	return v.IsZero()
}

// eachFloat visits the floats of a value until one is not to the liking.
func eachFloat(v reflect.Value, visit func(float64) bool) bool {
	switch v.Kind() {
	case reflect.Float64:
		return visit(v.Float())
	case reflect.Array:
		for i := range v.Len() {
			if !eachFloat(v.Index(i), visit) {
				return false
			}
		}
	case reflect.Struct:
		for i := range v.NumField() {
			if !eachFloat(v.Field(i), visit) {
				return false
			}
		}
	}
	return true
}

func hasFloats(of reflect.Type) bool {
	found := false
	eachFloat(reflect.Zero(of), func(float64) bool { found = true; return false })
	return found
}

// onlyFloats tells whether a struct holds numbers and nothing else, as a span does.
func onlyFloats(of reflect.Type) bool {
	if of.Kind() != reflect.Struct || of.NumField() == 0 {
		return false
	}
	for i := range of.NumField() {
		if kind := of.Field(i).Type.Kind(); kind != reflect.Float64 && !onlyFloats(of.Field(i).Type) {
			return false
		}
	}
	return true
}

// badValue is a bad argument.
type badValue struct {
	value reflect.Value
	name  string
	place string // the field or the item that is bad, "" for the whole
	list  bool   // it is, or lies in, a list or a document
	never bool   // it is never an argument: not a number, or a word that no table has
}

// bad makes the bad values of a good one's kind.
func bad(good reflect.Value) []badValue {
	of := good.Type()
	var all []badValue
	add := func(name string, never bool, set func(reflect.Value)) {
		v := reflect.New(of).Elem()
		set(v)
		all = append(all, badValue{value: v, name: name, never: never})
	}
	switch of.Kind() {
	case reflect.Float64:
		for _, f := range []float64{math.NaN(), math.Inf(1), math.Inf(-1), -1, 0, 1e300} {
			add(fmt.Sprint(f), f-f != 0, func(v reflect.Value) { v.SetFloat(f) })
		}
	case reflect.Int, reflect.Int32, reflect.Int64:
		for _, n := range badWhole(of) {
			add(strconv.FormatInt(n, 10), isWord(of), func(v reflect.Value) { v.SetInt(n) })
		}
	case reflect.String:
		for _, text := range []struct{ name, of string }{
			{"empty", ""}, {"nonsense", "nonsense"}, {"very long", strings.Repeat("long ", 20000)}, {"control characters", "a\x00b\nc\x1b[31m"},
		} {
			add(text.name, false, func(v reflect.Value) { v.SetString(text.of) })
		}
	case reflect.Slice:
		add("nil", false, func(reflect.Value) {})
		add("without items", false, func(v reflect.Value) { v.Set(reflect.MakeSlice(of, 0, 0)) })
		if of.Elem().Kind() == reflect.Uint8 {
			for _, text := range []string{"nonsense", "{}", "null", "\x00\n"} {
				add(strconv.Quote(text), false, func(v reflect.Value) { v.SetBytes([]byte(text)) })
			}
			break
		}
		all = append(all, badItems(good)...)
	case reflect.Array:
		all = badItems(good)
	case reflect.Pointer:
		add("nil", false, func(reflect.Value) {})
		add("an empty one", false, func(v reflect.Value) { v.Set(reflect.New(of.Elem())) })
	case reflect.Struct:
		add("an empty one", false, func(reflect.Value) {})
		all = append(all, badFields(good)...)
	}
	for i := range all {
		all[i].list = all[i].list || of.Kind() == reflect.Slice || of.Kind() == reflect.Pointer
	}
	return all
}

// badItems makes the last item of a list bad.
func badItems(good reflect.Value) []badValue {
	last := good.Len() - 1
	item := reflect.New(good.Type().Elem()).Elem()
	if last >= 0 {
		item = good.Index(last)
	}
	var all []badValue
	for _, b := range bad(item) {
		v := reflect.New(good.Type()).Elem()
		if v.Kind() == reflect.Slice {
			v.Set(reflect.MakeSlice(v.Type(), max(1, last+1), max(1, last+1)))
		}
		reflect.Copy(v, good)
		v.Index(max(0, last)).Set(b.value)
		all = append(all, badValue{value: v, name: b.name, place: fmt.Sprintf("[%d]%s", max(0, last), b.place), list: true})
	}
	return all
}

// badFields makes each exported field of a struct bad in turn.
func badFields(good reflect.Value) []badValue {
	var all []badValue
	for i := range good.NumField() {
		field := good.Type().Field(i)
		if !field.IsExported() {
			continue
		}
		for _, b := range bad(good.Field(i)) {
			v := reflect.New(good.Type()).Elem()
			v.Set(good)
			v.Field(i).Set(b.value)
			all = append(all, badValue{value: v, name: b.name, place: "." + field.Name + b.place, list: b.list})
		}
	}
	return all
}

// badWhole gives whole numbers that are bad: no words, far dates, or beyond any count.
func badWhole(of reflect.Type) []int64 {
	switch {
	case of == reflect.TypeFor[units.Date]():
		return []int64{math.MinInt32, math.MaxInt32}
	case of == reflect.TypeFor[units.System](): // its zero value is metric
		return []int64{-1, 99}
	case of.PkgPath() != "":
		return []int64{0, -1, 99}
	}
	return []int64{-1, 0, 99, math.MaxInt32, math.MinInt32}
}

// isWord tells whether a type is an enumeration, or the month of a year.
func isWord(of reflect.Type) bool { return of.Kind() == reflect.Int && of.PkgPath() != "" }

// TestGrammarIsHeld lets functions break the grammar, each in its way.
func TestGrammarIsHeld(t *testing.T) {
	nan := units.Length(math.NaN())
	domain := func(v float64) error { return &units.DomainError{Function: "f", Argument: "v", Index: 1, Value: v} }
	for _, c := range []struct {
		want string // "" where nothing breaks it
		call any
	}{
		{"", func(v float64) (units.Length, error) {
			if !(v >= 0 && v <= 1) {
				return nan, domain(v)
			}
			return 1, nil
		}},
		{"0 m beside f: v is NaN", func(v float64) (units.Length, error) { return 0, domain(v) }},
		{"High:0 m} beside f", func(v float64) (units.Span[units.Length], error) {
			return units.Span[units.Length]{Low: nan}, domain(v)
		}},
		{"[1] beside g: f", func(v float64) ([]int, error) { return []int{1}, fmt.Errorf("g: %w", domain(v)) }},
		{"0 m beside length: is bad", func(float64) (units.Length, error) { return 0, &document.Error{Path: "length", Problem: "is bad"} }},
		{"it is not refused, and gives 1 m", func(float64) (units.Length, error) { return 1, nil }},
		{"NaN with no error", func(v float64) (units.Length, error) {
			if v-v != 0 {
				return nan, domain(v)
			}
			return nan, nil
		}},
		{"NaN with a range error", func(float64) (units.Length, error) { return nan, &units.RangeError{Function: "f", High: 1} }},
		{"it comes with a range error", func(v float64) (units.Length, error) { return 1, &units.RangeError{Function: "f", Value: v} }},
		{"its range error is from 2 to 1", func(float64) (units.Length, error) { return 1, &units.RangeError{Function: "f", Low: 2, High: 1} }},
		{"its error is a plain *errors", func(float64) (units.Length, error) { return nan, errors.New("f: v is wrong") }},
		{"does not tell what would be right", func(float64) (units.Length, error) { return nan, &units.ParseError{Quantity: "Length"} }},
		{"does not name a place", func(float64) (units.Length, error) { return nan, &units.DomainError{Argument: "v"} }},
		{"is not one line", func(float64) (units.Length, error) { return nan, fmt.Errorf("g:\n%w", domain(2)) }},
		{"it panics: at nothing", func(float64) (units.Length, error) { panic("at nothing") }},
	} {
		s := &subject{name: "f", parameters: []string{"v"}, call: reflect.ValueOf(c.call)}
		var wrong []string
		for _, b := range bad(reflect.ValueOf(0.5)) {
			wrong = append(wrong, s.ask(&walk{}, []reflect.Value{b.value}, b)...)
		}
		if c.want == "" {
			assert.Empty(t, wrong)
		} else {
			assert.Contains(t, strings.Join(wrong, "; "), c.want)
		}
	}
}
