package linear_test

import (
	"errors"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/optimize/convex/lp"
	"pgregory.net/rapid"

	"example.org/soum/internal/linear"
)

// TestByHand: x + y at most 4, x + 3y at most 6, x at most 3; the most of
// 3x + 5y lies where the first two meet: x = 3, y = 1, 14. The prices solve
// a + b = 3 and a + 3b = 5: a = 2, b = 1. The third row holds with nothing to
// spare and nothing to win.
func TestByHand(t *testing.T) {
	p := linear.Program{
		Objective: []float64{3, 5},
		Rows:      []linear.Row{{[]float64{1, 1}, 4}, {[]float64{1, 3}, 6}, {[]float64{1, 0}, 30}},
	}
	a, err := p.Solve()
	require.NoError(t, err)
	assert.InDelta(t, 14, a.Value, 1e-12)
	assert.InDeltaSlice(t, []float64{3, 1}, a.X, 1e-12)
	assert.InDeltaSlice(t, []float64{2, 1, 0}, a.Prices, 1e-12)
	assert.InDeltaSlice(t, []float64{0, 0, 27}, a.Slack, 1e-12)
}

// TestNone: two rows that contradict each other, and a program without an end.
func TestNone(t *testing.T) {
	p := linear.Program{Objective: []float64{1}, Rows: []linear.Row{{[]float64{1}, 2}, {[]float64{-1}, -3}}}
	_, err := p.Solve()
	assert.ErrorIs(t, err, linear.ErrInfeasible)

	// y is held, x and z grow together, z half as fast.
	p = linear.Program{Objective: []float64{1, 1, 0}, Rows: []linear.Row{{[]float64{0, 1, 0}, 2}, {[]float64{1, 0, -2}, 0}}}
	_, err = p.Solve()
	var unbounded *linear.Unbounded
	require.True(t, errors.As(err, &unbounded), "%v", err)
	assert.Zero(t, unbounded.Ray[1])
	assert.InDelta(t, 2, unbounded.Ray[0]/unbounded.Ray[2], 1e-12)

	p = linear.Program{Objective: []float64{math.NaN()}, Rows: []linear.Row{{[]float64{1}, 2}}}
	_, err = p.Solve()
	assert.ErrorIs(t, err, linear.ErrNumbers)

	p = linear.Program{Objective: []float64{-1}}
	a, err := p.Solve()
	require.NoError(t, err)
	assert.Equal(t, []float64{0}, a.X)
}

// TestCircling is the textbook case in which choosing the steepest column goes
// in circles for ever: the most is 1/20, at x1 = 1/25, x3 = 1.
func TestCircling(t *testing.T) {
	p := linear.Program{
		Objective: []float64{0.75, -150, 0.02, -6},
		Rows: []linear.Row{
			{[]float64{0.25, -60, -0.04, 9}, 0},
			{[]float64{0.5, -90, -0.02, 3}, 0},
			{[]float64{0, 0, 1, 0}, 1},
		},
	}
	a, err := p.Solve()
	require.NoError(t, err)
	assert.InDelta(t, 0.05, a.Value, 1e-12)
	assert.InDeltaSlice(t, []float64{0.04, 0, 1, 0}, a.X, 1e-12)
}

// drawn makes a small program of whole numbers, many of them 0, as a farm's are.
func drawn(r *rapid.T) linear.Program {
	n, m := rapid.IntRange(1, 4).Draw(r, "n"), rapid.IntRange(1, 5).Draw(r, "m")
	number := rapid.OneOf(rapid.Just(0), rapid.IntRange(-3, 6))
	var p linear.Program
	for range n {
		p.Objective = append(p.Objective, float64(rapid.IntRange(-2, 5).Draw(r, "c")))
	}
	for range m {
		var row linear.Row
		for range n {
			row.Coefficients = append(row.Coefficients, float64(number.Draw(r, "a")))
		}
		row.Most = float64(rapid.IntRange(-4, 12).Draw(r, "b"))
		p.Rows = append(p.Rows, row)
	}
	return p
}

// corners tries every choice of as many rows and axes as there are numbers:
// where they meet, and all holds, is a corner. It gives the best of them, and
// whether there is any.
func corners(p linear.Program) (best float64, any bool) {
	n := len(p.Objective)
	rows := append([]linear.Row(nil), p.Rows...)
	for j := range n {
		axis := make([]float64, n)
		axis[j] = -1
		rows = append(rows, linear.Row{Coefficients: axis})
	}
	best = math.Inf(-1)
	var choose func(from int, chosen []int)
	choose = func(from int, chosen []int) {
		if len(chosen) == n {
			a, b := mat.NewDense(n, n, nil), mat.NewVecDense(n, nil)
			for i, c := range chosen {
				a.SetRow(i, rows[c].Coefficients)
				b.SetVec(i, rows[c].Most)
			}
			if math.Abs(mat.Det(a)) < 1e-9 {
				return
			}
			var x mat.VecDense
			if x.SolveVec(a, b) != nil {
				return
			}
			for _, row := range rows {
				if dot(row.Coefficients, x.RawVector().Data) > row.Most+1e-7 {
					return
				}
			}
			any, best = true, max(best, dot(p.Objective, x.RawVector().Data))
			return
		}
		for i := from; i < len(rows); i++ {
			choose(i+1, append(chosen[:len(chosen):len(chosen)], i))
		}
	}
	choose(0, nil)
	return best, any
}

func dot(a, b []float64) float64 {
	sum := 0.0
	for i := range a {
		sum += a[i] * b[i]
	}
	return sum
}

// TestAgainstCorners compares with every corner, and holds the answer against
// its own prices: they are no less than 0, price every number at no less than it
// brings, and come to the same sum, which no answer can exceed.
func TestAgainstCorners(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		p := drawn(r)
		a, err := p.Solve()
		best, any := corners(p)
		var unbounded *linear.Unbounded
		switch {
		case errors.Is(err, linear.ErrInfeasible):
			if any {
				r.Fatalf("infeasible, but a corner gives %v", best)
			}
			return
		case errors.As(err, &unbounded):
			if !any {
				r.Fatalf("unbounded, but there is no corner")
			}
			if dot(p.Objective, unbounded.Ray) <= 0 {
				r.Fatalf("the ray wins nothing")
			}
			for _, row := range p.Rows {
				if dot(row.Coefficients, unbounded.Ray) > 1e-7 {
					r.Fatalf("the ray leaves the rows")
				}
			}
			return
		case err != nil:
			r.Fatal(err)
		}
		if math.Abs(a.Value-best) > 1e-7 {
			r.Fatalf("%v, but the best corner gives %v", a.Value, best)
		}
		bound := 0.0
		for i, row := range p.Rows {
			if a.Prices[i] < 0 || a.Slack[i] < -1e-7 {
				r.Fatalf("row %d: price %v, slack %v", i, a.Prices[i], a.Slack[i])
			}
			bound += a.Prices[i] * row.Most
		}
		if math.Abs(bound-a.Value) > 1e-9*(1+math.Abs(a.Value)) {
			r.Fatalf("the prices come to %v, the answer to %v", bound, a.Value)
		}
		for j, c := range p.Objective {
			cost := 0.0
			for i, row := range p.Rows {
				cost += a.Prices[i] * row.Coefficients[j]
			}
			if cost < c-1e-9 {
				r.Fatalf("number %d brings %v and costs %v", j, c, cost)
			}
		}
	})
}

// TestAgainstGonum compares with the simplex of an independent library, where
// it finds its way.
func TestAgainstGonum(t *testing.T) {
	compared := 0
	rapid.Check(t, func(r *rapid.T) {
		p := drawn(r)
		n, m := len(p.Objective), len(p.Rows)
		c, a, b := make([]float64, n+m), mat.NewDense(m, n+m, nil), make([]float64, m)
		for j, v := range p.Objective {
			c[j] = -v
		}
		for i, row := range p.Rows {
			for j, v := range row.Coefficients {
				a.Set(i, j, v)
			}
			a.Set(i, n+i, 1)
			b[i] = row.Most
		}
		value, _, theirs := lp.Simplex(c, a, b, 0, nil)
		ours, err := p.Solve()
		if theirs == nil && err == nil {
			compared++
			if math.Abs(ours.Value+value) > 1e-9*(1+math.Abs(value)) {
				r.Fatalf("%v, gonum has %v", ours.Value, -value)
			}
		}
		if theirs == nil && errors.Is(err, linear.ErrInfeasible) {
			r.Fatalf("infeasible, but gonum finds %v", -value)
		}
	})
	assert.Positive(t, compared)
}
