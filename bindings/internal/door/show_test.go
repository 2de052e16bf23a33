package door_test

import (
	"encoding/json"
	"math"
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/bindings/internal/door"
	"example.org/soum/internal/check"
	"example.org/soum/internal/decl"
	"example.org/soum/internal/functions"
	"example.org/soum/units"
)

// formulas gives every formula beside its declaration.
func formulas(t *testing.T) map[*decl.Function]units.Formula {
	t.Helper()
	root, err := decl.Root()
	require.NoError(t, err)
	byName := map[string]units.Formula{}
	for _, f := range functions.Formulas() {
		byName[f.Name] = f
	}
	all := map[*decl.Function]units.Formula{}
	for _, name := range decl.Packages()[1:] {
		p, err := decl.Read(root, name)
		require.NoError(t, err)
		for i := range p.Functions {
			if f := &p.Functions[i]; f.IsFormula() {
				formula, known := byName[f.Full()]
				require.True(t, known, f.Full())
				all[f] = formula
			}
		}
	}
	require.Len(t, all, len(byName))
	return all
}

// in prints a quantity as package units does, through the door.
func in(t *testing.T, quantity string, value float64, system string) string {
	t.Helper()
	if quantity == "" {
		return units.Number(value)
	}
	out, status := door.Call("units.show", call(t, map[string]any{"quantity": quantity, "value": value, "system": system}))
	require.Equal(t, int32(door.Good), status, string(out))
	return valueOf[string](t, out)
}

func call(t *testing.T, arguments map[string]any) []byte {
	t.Helper()
	data, err := json.Marshal(arguments)
	require.NoError(t, err)
	return data
}

func valueOf[T any](t *testing.T, out []byte) T {
	t.Helper()
	var got struct{ Value T }
	require.NoError(t, json.Unmarshal(out, &got), string(out))
	return got.Value
}

// one gives the base units in the unit of a text such as "8 in". The per cent
// sign counts as 1: it is written beside its number, a hundredth by itself.
func one(t *testing.T, quantity, text string) float64 {
	t.Helper()
	_, unit, _ := strings.Cut(text, " ")
	if quantity == "" || unit == "%" {
		return 1
	}
	out, status := door.Call("units.parse", call(t, map[string]any{"quantity": quantity, "text": "1 " + unit}))
	require.Equal(t, int32(door.Good), status, string(out))
	return valueOf[float64](t, out)
}

// TestStepsHold puts random arguments into every formula, in both systems, and
// works the step out again from the units that it is printed in, by the doc
// comment's expression and the printed factor. Every argument stands in the
// step, and the source beside it.
func TestStepsHold(t *testing.T) {
	random := rand.New(rand.NewPCG(8, 9))
	for declared, formula := range formulas(t) {
		sampler := check.NewSampler(declared, random)
		for round := range 60 {
			system := []units.System{units.US, units.Metric}[round%2]
			arguments := sampler.Sample()
			value, err := sampler.Call(arguments)
			if units.Impossible(err) {
				continue
			}
			step := formula.Show(system, value, arguments...)
			require.Equal(t, formula.Name, step.Function)
			require.NotEmpty(t, step.Source, formula.Name)
			require.Contains(t, step.Text, step.Result)
			require.Contains(t, step.Text, step.Answer)
			require.Contains(t, step.Text, step.Numbers)
			require.NotContains(t, step.Text, "NaN", formula.Name)
			s := shown{t: t, formula: &formula, system: system, step: step}
			s.base, s.metric = inUnits(step)
			numbers := map[string]float64{}
			for i := range formula.Arguments {
				numbers[formula.Arguments[i].Name] = s.argument(i, arguments[i])
			}
			if formula.Lines == nil {
				require.Equal(t, "", step.Factor)
				require.Contains(t, step.Text, step.Symbols)
				require.NotEmpty(t, step.Symbols, "%s shows no table", formula.Name)
				continue
			}
			s.holds(declared, numbers, value)
		}
	}
}

// shown is a step under test.
type shown struct {
	t            *testing.T
	formula      *units.Formula
	system       units.System
	step         units.Step
	base, metric bool // the numbers are not in the reader's units but in these
}

// inUnits tells whether the numbers are in other units than the reader's.
func inUnits(step units.Step) (base, metric bool) {
	other := strings.HasPrefix(step.Factor, "= ")
	return other || strings.Contains(step.Numbers, " m2") || strings.Contains(step.Numbers, " m3") || strings.Contains(step.Numbers, " kg/m2") || strings.Contains(step.Numbers, " kg/kg"), other || strings.Contains(step.Numbers, " kg")
}

// argument finds an argument in the step, and gives its number in the unit that
// it is printed in.
func (s *shown) argument(i int, value float64) float64 {
	a := &s.formula.Arguments[i]
	if a.Words != nil {
		require.Contains(s.t, s.step.Numbers, a.Words[int(value)-1])
		return value
	}
	if s.formula.Empirical {
		require.Contains(s.t, s.step.Numbers, strings.TrimSpace(units.Number(value/a.Factor)+" "+a.Unit))
		return value / a.Factor
	}
	texts := []string{in(s.t, a.Quantity, value, s.system.String())}
	if s.metric && a.Quantity != "" {
		texts = append(texts, in(s.t, a.Quantity, value, "metric"))
	}
	if s.base && a.Quantity != "" {
		_, unit, _ := strings.Cut(baseText(s.t, a.Quantity), " ")
		texts = append(texts, units.Number(value)+" "+unit)
	}
	for _, text := range texts {
		if strings.Contains(s.step.Numbers, text) {
			return value / one(s.t, a.Quantity, text)
		}
	}
	require.Failf(s.t, "an argument is missing", "%s: %s stands as none of %q in %q", s.formula.Name, a.Name, texts, s.step.Numbers)
	return 0
}

// baseText prints nothing of a quantity, in its base unit.
func baseText(t *testing.T, quantity string) string {
	t.Helper()
	out, status := door.Call("units.show", call(t, map[string]any{"quantity": quantity, "value": 0}))
	require.Equal(t, int32(door.Good), status, string(out))
	return valueOf[string](t, out)
}

// holds works the expression out over the printed numbers and compares.
func (s *shown) holds(declared *decl.Function, numbers map[string]float64, value float64) {
	text, found := declared.Section("Formula")
	if s.formula.Empirical {
		text, found = declared.Section("Empirical")
	}
	require.True(s.t, found)
	got, err := check.Evaluate(text, numbers)
	require.NoError(s.t, err)
	printed := s.step.Answer
	switch factor, _ := strings.CutPrefix(s.step.Factor, "= "); {
	case s.step.Factor == "":
	case factor != s.step.Factor:
		printed = factor // the answer in the units of the numbers, then in the reader's
	default:
		sign, rest, _ := strings.Cut(s.step.Factor, " ")
		digits, _, _ := strings.Cut(rest, " ")
		by, err := strconv.ParseFloat(strings.ReplaceAll(digits, ",", ""), 64)
		require.NoError(s.t, err)
		if sign == "÷" {
			by = 1 / by
		}
		got *= by
	}
	want := value / one(s.t, s.formula.Quantity, printed)
	if s.formula.Quantity == "" {
		want = value
	}
	size := math.Abs(want)
	for _, v := range numbers { // a difference of like numbers keeps their rounding
		size = max(size, 1e-3*math.Abs(v))
	}
	assert.LessOrEqual(s.t, math.Abs(got-want), 1e-9*size, "%s: %s", s.formula.Name, s.step.Text)
	number, _, _ := strings.Cut(printed, " ")
	if unit := printed[len(number):]; unit == " %" {
		want *= 100
	}
	assert.Equal(s.t, units.Number(want), number, "%s: %s", s.formula.Name, s.step.Text)
}

// TestStepsReadAloud holds whole steps to what a reader should see.
func TestStepsReadAloud(t *testing.T) {
	for _, c := range []struct{ function, system, arguments, want string }{
		{"forage.Available", "US", `{"height": "8 in", "residual": "3 in", "density": "250 lb/ac/in"}`,
			"available = (height − residual) × density = (8 in − 3 in) × 250 lb/ac/in = 1,250 lb/ac"},
		{"grazing.StripLength", "US", `{"area": "0.12 ac", "width": "64 ft"}`,
			"strip length = area ÷ width = 0.12 ac ÷ 64 ft × 43,560 ft²/ac = 81.7 ft"},
		{"grazing.StripLength", "metric", `{"area": "0.05 ha", "width": "20 m"}`,
			"strip length = area ÷ width = 0.05 ha ÷ 20 m × 10,000 m²/ha = 25 m"},
		{"grazing.StripArea", "US", `{"length": "363 ft", "width": "60 ft"}`,
			"strip area = length × width = 363 ft × 60 ft ÷ 43,560 ft²/ac = 0.5 ac"},
		{"herd.Demand", "US", `{"head": 10, "weight": "150 lb", "intake": "4.5 %", "pasture": "100 %"}`,
			"demand = head × weight × intake × pasture = 10 × 150 lb × 4.5 % × 100 % = 67.5 lb/day"},
		{"herd.AnimalUnits", "metric", `{"weight": "1200 lb"}`,
			"animal units = weight ÷ 1000 = 1,200 lb ÷ 1000 = 1.2 AU"},
		{"grazing.LandPerUse", "US", `{"area": "200 ac", "animals": "50 AU", "days": "360 days"}`,
			"land per use = area ÷ (animals × days) = 200 ac ÷ (50 AU × 360 days) × 30 days/month = 0.333 ac/AUM"},
		{"grazing.SquareSide", "US", `{"area": "40 ac"}`, // a square mile has 640
			"square side = sqrt(area) = sqrt(161,874 m2) = 402 m = 1,320 ft"},
		{"forage.HeightOf", "US", `{"yield": "2400 lb/ac", "density": "300 lb/ac/in"}`,
			"height = yield ÷ density = 2,400 lb/ac ÷ 300 lb/ac/in = 8 in"},
		{"herd.NutrientShare", "US", `{"kind": "hen", "nutrient": "nitrogen", "fate": "after losses"}`, // 18.46 lb in 2,000
			"nutrient share for kind hen, nutrient nitrogen, fate after losses = 0.923 % (pounds in a short ton, as excreted and after losses)"},
		{"rainfall.Passes", "metric", `{"rain": "20 in"}`,
			"passes = rain ÷ 10 = 20 in ÷ 10 = 2"},
		{"grazing.CoverAfter", "metric", `{"cover": "2000 kg/ha", "growth": "-5 kg/ha/day", "demand": "480 kg/day", "area": "12 ha", "days": "10 days"}`,
			"cover after = cover + (growth − demand ÷ area) × days = 2,000 kg/ha + ((-5 kg/ha/day) − 480 kg/day ÷ 12 ha) × 10 days = 1,550 kg/ha"},
	} {
		out, status := door.Call("formula.show", []byte(`{"function": "`+c.function+`", "system": "`+c.system+`", "arguments": `+c.arguments+`}`))
		require.Equal(t, int32(door.Good), status, string(out))
		step := valueOf[units.Step](t, out)
		assert.Equal(t, c.want, step.Text)
	}
}
