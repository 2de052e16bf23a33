package door

import (
	"math"
	"math/rand/v2"
	"reflect"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/soum/internal/functions"
)

// number gives the number of a formula.
func number(t testing.TB, name string) int {
	t.Helper()
	for i := range table {
		if table[i].name == name {
			return i
		}
	}
	t.Fatalf("no formula %s", name)
	return 0
}

// TestRowsAreTheFunctions computes rows of any numbers by Eval and one by one
// by the function: the same status, and the same value to 1e-12.
func TestRowsAreTheFunctions(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 2))
	special := []float64{0, 1, -1, 0.5, 100, 1e-3, 1e6, math.NaN(), math.Inf(1), math.Inf(-1), math.MaxFloat64, math.SmallestNonzeroFloat64}
	for fn := range table {
		function := reflect.ValueOf(functions.ByName(table[fn].name).Call)
		const n = 400
		count := table[fn].arguments
		arguments := make([]float64, count*n)
		for i := range arguments {
			arguments[i] = special[random.IntN(len(special))]
			if random.IntN(2) == 0 {
				arguments[i] = math.Exp(random.NormFloat64() * 4)
			}
			if function.Type().In(i/n).Kind() == reflect.Int {
				arguments[i] = float64(random.IntN(5))
			}
		}
		strides := make([]int32, count)
		for k := range strides {
			strides[k] = 1
		}
		out, status := make([]float64, n), make([]int32, n)
		Eval(fn, arguments, strides, out, status)
		for i := range n {
			in := make([]reflect.Value, count)
			for k := range in {
				of := function.Type().In(k)
				if of.Kind() == reflect.Int {
					in[k] = reflect.ValueOf(int(arguments[k*n+i])).Convert(of)
				} else {
					in[k] = reflect.ValueOf(arguments[k*n+i]).Convert(of)
				}
			}
			result := function.Call(in)
			err, _ := result[1].Interface().(error)
			want := result[0].Float()
			require.Equal(t, code(err), status[i], "%s%v: %v", table[fn].name, in, err)
			if math.IsNaN(want) {
				require.True(t, math.IsNaN(out[i]))
				continue
			}
			require.LessOrEqual(t, math.Abs(out[i]-want), 1e-12*math.Abs(want), "%s%v", table[fn].name, in)
		}
	}
}

// TestEvalStrides gives one value for all rows and one for each.
func TestEvalStrides(t *testing.T) {
	out, status := make([]float64, 3), make([]int32, 3)
	Eval(number(t, "forage.Available"), []float64{0.2, 0.3, 0.1, 0.15, 0.1}, []int32{1, 0, 0}, out[:3], status)
	// height 0.2, 0.3, 0.1 m; residual 0.15 m; density 0.1
	require.InDelta(t, 0.005, out[0], 1e-15)
	require.InDelta(t, 0.015, out[1], 1e-15)
	require.Equal(t, []int32{0, 0, -2}, status) // 0.15 m is above the third height
	require.True(t, math.IsNaN(out[2]))
	Eval(-1, nil, nil, out, status)
	require.Equal(t, []int32{NoFormula, NoFormula, NoFormula}, status)
	Eval(number(t, "forage.Available"), nil, []int32{1, 1, 1}, nil, nil) // no rows: nothing to do
	Eval(number(t, "forage.Available"), []float64{1}, []int32{1, 1, 1}, out, status)
	require.Equal(t, int32(Broken), status[0], "too few numbers")
}

func BenchmarkEvalProduct(b *testing.B)  { benchmark(b, "forage.Standing", 0.2, 0.11) }
func BenchmarkEvalLogistic(b *testing.B) { benchmark(b, "forage.Regrown", 0.2, 0.4, 0.005, 20) }

// benchmark computes 4,096 rows a round.
func benchmark(b *testing.B, name string, values ...float64) {
	const n = 4096
	var arguments []float64
	strides := make([]int32, len(values))
	for k, v := range values {
		strides[k] = 1
		for range n {
			arguments = append(arguments, v)
		}
	}
	out, status := make([]float64, n), make([]int32, n)
	fn := number(b, name)
	b.ReportAllocs()
	for b.Loop() {
		Eval(fn, arguments, strides, out, status)
	}
	b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N)/n, "ns/row")
}
