package check

import (
	"encoding"
	"errors"
	"math"
	"math/rand/v2"
	"reflect"
	"testing"

	"example.org/soum/internal/decl"
	"example.org/soum/internal/functions"
	"example.org/soum/units"
)

// points gives the number of places at which a doc comment's formula is compared
// with its function.
func points() int {
	if Long() {
		return 10_000
	}
	return 1000
}

// Formulas compares every formula of a package with its doc comment: the
// expression at 1,000 points, every guard at its bounds and every word that is none,
// and any floats at all for panics and for values that are not finite without an
// error. Of a look-up that has limits it tries the guards and any floats; where it
// takes a text that is one that no table has.
func Formulas(t *testing.T, name string) {
	t.Helper()
	root, err := decl.Root()
	if err != nil {
		t.Fatal(err)
	}
	p, err := decl.Read(root, name)
	if err != nil {
		t.Fatal(err)
	}
	for i := range p.Functions {
		f := &p.Functions[i]
		if !f.IsGuarded() {
			continue
		}
		t.Run(f.Name, func(t *testing.T) {
			s := &subject{Sampler: NewSampler(f, rand.New(rand.NewPCG(1, uint64(i)))), t: t}
			s.expression()
			s.guards()
			s.anything()
		})
	}
}

// subject is a formula under test.
type subject struct {
	*Sampler
	t *testing.T
}

// Sampler draws arguments of a formula within its limits.
type Sampler struct {
	f        *decl.Function
	function reflect.Value
	random   *rand.Rand
}

// NewSampler makes a sampler of a formula.
func NewSampler(f *decl.Function, random *rand.Rand) *Sampler {
	return &Sampler{f: f, function: reflect.ValueOf(functions.ByName(f.Full()).Call), random: random}
}

// Sample draws arguments, in base units; a word of an enumeration is its number.
func (s *Sampler) Sample() []float64 {
	values := s.sample()
	for i := range values {
		if s.function.Type().In(i).Kind() != reflect.Int {
			values[i] *= s.factor(i)
		}
	}
	return values
}

// Call calls the formula with arguments in base units, or a look-up, with nothing for
// what has no limits. A word is its number, any other answer 1; what gives nothing is
// NaN. A word is nothing where it is 0, any other answer where an error says so.
func (s *Sampler) Call(values []float64) (float64, error) {
	in := make([]reflect.Value, len(values))
	for i, v := range values {
		of := s.function.Type().In(i)
		switch {
		case s.arguments()[i].Unlimited():
			in[i] = reflect.Zero(of)
		case of.Kind() == reflect.Int:
			in[i] = reflect.ValueOf(int(v)).Convert(of)
		default:
			in[i] = reflect.ValueOf(v).Convert(of)
		}
	}
	out := s.function.Call(in)
	err, _ := out[1].Interface().(error)
	return figure(out[0], err), err
}

func figure(answer reflect.Value, err error) float64 {
	word := answer.Kind() == reflect.Int
	switch {
	case answer.Kind() == reflect.Float64:
		return answer.Float()
	case isNothing(answer) && (word || err != nil):
		return math.NaN()
	case word:
		return float64(answer.Int())
	}
	return 1
}

// isNothing reports whether an answer is its zero value, or a struct in which every
// number is NaN or 0.
func isNothing(answer reflect.Value) bool {
	switch answer.Kind() {
	case reflect.Float64:
		return answer.Float() == 0 || math.IsNaN(answer.Float())
	case reflect.Struct:
		for i := range answer.NumField() {
			if !isNothing(answer.Field(i)) {
				return false
			}
		}
		return true
	}
	return answer.IsZero()
}

func (s *Sampler) arguments() []decl.Parameter { return s.f.Arguments() }

// factor gives the base units in one of the unit that Where names.
func (s *Sampler) factor(i int) float64 {
	of := s.function.Type().In(i)
	if unit := s.arguments()[i].Where.Unit; unit != "" && of.Name() != "Temperature" {
		one, err := read(of, "1", unit)
		if err != nil {
			panic(err) // the generator has refused such a unit
		}
		return one.Float()
	}
	return 1
}

// call calls the function with values in the units of Where.
func (s *subject) call(values []float64) (float64, error) {
	base := append([]float64(nil), values...)
	for i := range base {
		base[i] *= s.factor(i)
	}
	return s.Call(base)
}

// sample draws values in range, in the units of Where: those whose bounds name
// other arguments after these.
func (s *Sampler) sample() []float64 {
	all := s.arguments()
	values := make([]float64, len(all))
	done := map[string]float64{}
	draw := func(i int) {
		low, high := s.bounds(i, done)
		values[i] = s.between(i, low, high)
		done[all[i].Name] = values[i]
	}
	for drawn := -1; drawn < len(done); {
		drawn = len(done)
		for i, a := range all {
			if _, known := done[a.Name]; !known && ready(a.Where, done) {
				draw(i)
			}
		}
	}
	for i, a := range all { // bounds that name one another
		if _, known := done[a.Name]; !known {
			draw(i)
		}
	}
	return values
}

// ready tells whether the arguments that bound another are drawn.
func ready(w *decl.Where, done map[string]float64) bool {
	for _, limit := range []*decl.Interval{w.Domain, w.Range} {
		if limit == nil {
			continue
		}
		for _, name := range []string{limit.LowOf, limit.HighOf} {
			if _, known := done[name]; name != "" && !known {
				return false
			}
		}
	}
	return true
}

// bounds gives the limits of argument i, those of its range inside those of
// its domain.
func (s *Sampler) bounds(i int, done map[string]float64) (low, high float64) {
	low, high = math.Inf(-1), math.Inf(1)
	if s.isWord(i) {
		return 1, float64(members(s.function.Type().In(i)))
	}
	for _, limit := range []*decl.Interval{s.arguments()[i].Where.Domain, s.arguments()[i].Where.Range} {
		if limit == nil {
			continue
		}
		l, h := limit.Low, limit.High
		if limit.LowOf != "" {
			l = s.convert(limit.LowOf, i, done)
		}
		if limit.HighOf != "" {
			h = s.convert(limit.HighOf, i, done)
		}
		low, high = max(low, l), min(high, h)
	}
	return low, high
}

// isWord reports whether argument i is a word of an enumeration.
func (s *Sampler) isWord(i int) bool {
	of := s.function.Type().In(i)
	return of.Kind() == reflect.Int && of.Name() != "int" && of.PkgPath() != "time" && !s.arguments()[i].Unlimited()
}

// convert gives another parameter's value in the unit of parameter i.
func (s *Sampler) convert(name string, i int, done map[string]float64) float64 {
	for j, a := range s.arguments() {
		if a.Name == name {
			if v, known := done[name]; known {
				return v * s.factor(j) / s.factor(i)
			}
		}
	}
	return 1
}

// members counts the members of an enumeration: the numbers whose text reads back.
func members(of reflect.Type) int {
	for n := 1; ; n++ {
		v := reflect.New(of)
		v.Elem().SetInt(int64(n))
		text := v.MethodByName("String").Call(nil)[0].String()
		if v.Interface().(encoding.TextUnmarshaler).UnmarshalText([]byte(text)) != nil {
			return n - 1
		}
	}
}

func (s *Sampler) between(i int, low, high float64) float64 {
	if s.arguments()[i].Unlimited() {
		return 0
	}
	if s.function.Type().In(i).Kind() == reflect.Int {
		return math.Floor(low + s.random.Float64()*(min(high, low+60)+1-low)*0.999999)
	}
	switch {
	case math.IsInf(low, -1) && math.IsInf(high, 1):
		return s.random.NormFloat64() * 100
	case math.IsInf(high, 1):
		return low + math.Pow(10, s.random.Float64()*6-2)
	case math.IsInf(low, -1):
		return high - math.Pow(10, s.random.Float64()*6-2)
	}
	return low + (high-low)*(0.001+0.998*s.random.Float64())
}

// expression compares the doc comment with the function.
func (s *subject) expression() {
	text, empirical := s.f.Section("Empirical")
	if !empirical {
		var found bool
		if text, found = s.f.Section("Formula"); !found {
			return
		}
	}
	out := 1.0
	if empirical {
		unit := s.f.ResultUnit()
		if unit == "" && s.function.Type().Out(0).Name() != "float64" {
			s.t.Fatal("an empirical formula needs \"- result in unit: …\" under Where")
		}
		if unit != "" {
			one, err := read(s.function.Type().Out(0), "1", unit)
			if err != nil {
				s.t.Fatal(err)
			}
			out = one.Float()
		}
	}
	for range points() {
		values := s.sample()
		named := map[string]float64{}
		for i, a := range s.arguments() {
			named[a.Name] = values[i]
			if !empirical {
				named[a.Name] *= s.factor(i)
			}
		}
		want, err := Evaluate(text, named)
		if err != nil {
			s.t.Fatal(err)
		}
		got, err := s.call(values)
		if units.Impossible(err) && math.IsNaN(want) {
			continue
		}
		var ranged *units.RangeError
		if err != nil && (!errors.As(err, &ranged) || math.IsNaN(got)) { // a gap inside the range still has its value
			s.t.Fatalf("at %v: %v", values, err)
		}
		got /= out
		scale := math.Abs(want)
		for _, v := range named { // a difference of like numbers keeps their rounding, not its own
			scale = max(scale, math.Abs(want)+1e-3*min(math.Abs(v), math.Abs(want)*1e3))
		}
		if math.Abs(got-want) > 1e-12*scale {
			s.t.Fatalf("at %v: the function gives %v, its doc comment %v", values, got, want)
		}
	}
}

// guards puts every argument outside its limits and expects the error that
// names it.
func (s *subject) guards() {
	for i, a := range s.arguments() {
		if a.Unlimited() {
			continue
		}
		values := s.sample()
		if s.isWord(i) {
			for _, none := range []int{-1, 0, members(s.function.Type().In(i)) + 1} {
				values[i] = float64(none)
				s.impossible(values, i)
			}
			continue
		}
		if s.function.Type().In(i).Kind() == reflect.Float64 {
			values[i] = math.NaN()
			s.impossible(values, i)
			values = s.sample()
		}
		done := map[string]float64{}
		for j, b := range s.arguments() {
			done[b.Name] = values[j]
		}
		for _, limit := range []*decl.Interval{a.Where.Domain, a.Where.Range} {
			if limit == nil {
				continue
			}
			low, high := limit.Low, limit.High
			if limit.LowOf != "" {
				low = s.convert(limit.LowOf, i, done)
			}
			if limit.HighOf != "" {
				high = s.convert(limit.HighOf, i, done)
			}
			for _, v := range []float64{low - 1e-3*(1+math.Abs(low)), high + 1e-3*(1+math.Abs(high))} {
				if math.IsInf(v, 0) {
					continue
				}
				switch {
				case s.function.Type().In(i).Kind() != reflect.Int:
				case v < low:
					v = math.Floor(v)
				default:
					v = math.Ceil(v)
				}
				beyond := append([]float64(nil), values...)
				beyond[i] = v
				if limit == a.Where.Domain {
					s.impossible(beyond, i)
				} else {
					s.outside(beyond, i)
				}
			}
		}
	}
}

func (s *subject) impossible(values []float64, i int) {
	got, err := s.call(values)
	var domain *units.DomainError
	if !errors.As(err, &domain) || !math.IsNaN(got) {
		s.t.Errorf("at %v: %v and %v, want NaN and a domain error", values, got, err)
		return
	}
	if domain.Argument != s.arguments()[i].Name {
		// another argument's limits may name this one and come first
		for _, a := range s.arguments() {
			if d := a.Where.Domain; a.Name == domain.Argument && d != nil && (d.HighOf != "" || d.LowOf != "") {
				return
			}
		}
		s.t.Errorf("at %v: the error names %s, not %s", values, domain.Argument, s.arguments()[i].Name)
	}
}

func (s *subject) outside(values []float64, i int) {
	got, err := s.call(values)
	if units.Impossible(err) {
		return // the domain's bound is nearer than the range's
	}
	var ranged *units.RangeError
	if !errors.As(err, &ranged) || math.IsNaN(got) || ranged.Argument != s.arguments()[i].Name {
		s.t.Errorf("at %v: %v and %v, want a value and a range error of %s", values, got, err, s.arguments()[i].Name)
	}
}

// anything calls the function with any floats: it must not panic, and what
// comes without a domain error is finite.
func (s *subject) anything() {
	special := []float64{0, math.Copysign(0, -1), 1, -1, math.MaxFloat64, -math.MaxFloat64, math.SmallestNonzeroFloat64, math.Inf(1), math.Inf(-1), math.NaN(), 1e-300, 1e300}
	for range points() {
		values := make([]float64, len(s.arguments()))
		for i := range values {
			values[i] = special[s.random.IntN(len(special))]
			if s.random.IntN(3) == 0 {
				values[i] = math.Float64frombits(s.random.Uint64())
			}
		}
		got, err := s.call(values)
		if !units.Impossible(err) && (math.IsNaN(got) || math.IsInf(got, 0)) {
			s.t.Fatalf("at %v: %v without a domain error (%v)", values, got, err)
		}
	}
}
