package door

import (
	"encoding/json"
	"maps"
	"math"
	"math/rand/v2"
	"os"
	"regexp"
	"runtime"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"
)

// spoilt gives a farm document with a few bytes changed, cut off or put in twice.
func spoilt(random *rand.Rand, farm string) string {
	b := []byte(farm)
	const pieces = `{}[]",:0123456789-+.eE \nulltrfas`
	for range 1 + random.IntN(4) {
		at := random.IntN(len(b))
		switch random.IntN(4) {
		case 0:
			b[at] = byte(random.IntN(256))
		case 1:
			b[at] = pieces[random.IntN(len(pieces))]
		case 2:
			b = b[:at+1]
		case 3:
			end := min(len(b), at+random.IntN(40))
			b = append(b[:end:end], b[at:]...)
		}
	}
	return string(b)
}

// TestBadDocumentsLeaveNothingBehind calls with 10,000 spoilt farms from eight
// goroutines: always an answer that is JSON, never a fault, and at the end no
// more memory in use than before.
func TestBadDocumentsLeaveNothingBehind(t *testing.T) {
	data, err := os.ReadFile("../../../examples/season/testdata/small.json")
	require.NoError(t, err)
	farm := string(data)
	names := []string{"farm.LandFor", "farm.Explain", "herd.ClassByName", "formula.show", "units.parse", "forage.Available", "rainfall.KeyRainShare"}
	round := func(calls int) (refused int) {
		var all sync.WaitGroup
		var lock sync.Mutex
		for worker := range 8 {
			all.Go(func() {
				random := rand.New(rand.NewPCG(5, uint64(worker)))
				for range calls / 8 {
					in := `{"document":` + spoilt(random, farm) + `,"date":"2001-05-01"}`
					out, status := Call(names[random.IntN(len(names))], []byte(in))
					lock.Lock()
					if !json.Valid(out) || status == Broken {
						t.Errorf("status %d, %.300s for %.300s", status, out, in)
					}
					if status == BadDocument {
						refused++
					}
					lock.Unlock()
				}
			})
		}
		all.Wait()
		return refused
	}
	inUse := func() uint64 {
		var m runtime.MemStats
		runtime.GC()
		runtime.GC() // what the first one finalises, the second takes
		runtime.ReadMemStats(&m)
		return m.HeapAlloc
	}
	round(800)
	before := inUse()
	require.Greater(t, round(10000), 8000)
	after := inUse()
	require.Less(t, after, before+before/4+1<<20, "%d bytes in use before, %d after", before, after)
}

// TestSpoiltCalls makes every call of bindings/calls.json with a few bytes changed:
// always an answer that is a JSON object, never a fault.
func TestSpoiltCalls(t *testing.T) {
	data, err := os.ReadFile("../../calls.json")
	require.NoError(t, err)
	var calls map[string]json.RawMessage
	require.NoError(t, json.Unmarshal(data, &calls))
	refused := 0
	for _, name := range slices.Sorted(maps.Keys(calls)) {
		random := rand.New(rand.NewPCG(9, 10))
		for range 20 {
			in := spoilt(random, string(calls[name]))
			out, status := Call(name, []byte(in))
			require.True(t, json.Valid(out) && out[0] == '{', "%s %.300s: %.300s", name, in, out)
			require.NotEqual(t, int32(Broken), status, "%s %.300s: %.300s", name, in, out)
			if status == BadDocument {
				refused++
			}
		}
	}
	require.Greater(t, refused, 10*len(calls))
}

// TestFarmsOfAnySize puts the largest and the smallest figures that a document takes,
// and those beside them, in the place of each figure of a farm: a plan, or what is wrong.
func TestFarmsOfAnySize(t *testing.T) {
	data, err := os.ReadFile("../../../examples/season/testdata/small.json")
	require.NoError(t, err)
	farm := string(data)
	places := regexp.MustCompile(`[0-9][0-9.]* (m|ft|ac|ha|in|cm|mm|lb|kg|t|%|gal|days|day)\b|: [0-9.]+`).FindAllStringIndex(farm, -1)
	require.Greater(t, len(places), 10)
	planned := 0
	for _, place := range places {
		figure := regexp.MustCompile(`[0-9][0-9.]*`).FindStringIndex(farm[place[0]:place[1]])
		from, to := place[0]+figure[0], place[0]+figure[1]
		for _, number := range []string{"1e30", "9e29", "1e-30", "1.1e-30", "0", "-1", "2e30", "9e-31", "1e308", "5e-324", "1e999"} {
			out, status := Call("farm.Plan", []byte(`{"document":`+farm[:from]+number+farm[to:]+`}`))
			require.True(t, json.Valid(out))
			require.NotEqual(t, int32(Broken), status, "%s for %s: %.300s", number, farm[place[0]:place[1]], out)
			if status >= Good {
				planned++
			}
		}
	}
	require.Positive(t, planned)
}

// TestDeepDocuments nests 10,000 deep, in every shape: refused before anything
// reads them.
func TestDeepDocuments(t *testing.T) {
	const deep = 10000
	for _, in := range []string{
		`{"document":` + strings.Repeat("[", deep) + strings.Repeat("]", deep) + `}`,
		strings.Repeat(`{"document":`, deep) + `1` + strings.Repeat("}", deep),
		strings.Repeat(`[{"x":`, deep),
		`{"document": {"x-a": ` + strings.Repeat("[", deep) + strings.Repeat("]", deep) + `}}`,
	} {
		out, status := Call("farm.Plan", []byte(in))
		require.Equal(t, int32(BadDocument), status)
		require.Contains(t, string(out), "nested")
	}
	out, status := Call("forage.Available", []byte(`{"x": "`+strings.Repeat("[", deep)+`"}`)) // brackets in text are text
	require.Equal(t, int32(BadDocument), status)
	require.NotContains(t, string(out), "nested")
}

// TestEvalTakesAnyNumbers puts NaN, infinities and the largest numbers into
// every argument of every formula, and no rows at all: a value is finite, or
// NaN with a status that says whose fault it is.
func TestEvalTakesAnyNumbers(t *testing.T) {
	special := []float64{math.NaN(), math.Inf(1), math.Inf(-1), 0, math.Copysign(0, -1), math.MaxFloat64, -math.MaxFloat64, math.SmallestNonzeroFloat64, 1, 0.5}
	random := rand.New(rand.NewPCG(6, 7))
	for fn := range table {
		count, n := table[fn].arguments, 300
		strides := make([]int32, count)
		arguments := make([]float64, count*n)
		for k := range strides {
			strides[k] = 1
		}
		for i := range arguments {
			arguments[i] = special[random.IntN(len(special))]
		}
		out, status := make([]float64, n), make([]int32, n)
		Eval(fn, arguments, strides, out, status)
		for i := range out {
			switch {
			case status[i] == -ResultCode || status[i] < 0 && int(-status[i]) <= count:
				require.True(t, math.IsNaN(out[i]), "%s row %d", table[fn].name, i)
			case status[i] >= 0 && int(status[i]) <= count:
				require.False(t, math.IsNaN(out[i]) || math.IsInf(out[i], 0), "%s row %d: %v", table[fn].name, i, out[i])
			default:
				t.Fatalf("%s row %d: status %d", table[fn].name, i, status[i])
			}
		}
		Eval(fn, nil, strides, nil, nil) // no rows: nothing is read, nothing is written
		Eval(fn, arguments, strides[:count-1], out[:1], status[:1])
		require.Equal(t, int32(NoFormula), status[0], "too few strides")
	}
}
