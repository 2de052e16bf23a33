// Package linear finds the best answer of a linear program that is small and
// dense, with the price of every row, which way an unbounded one runs away, and
// what an infeasible one is short of.
//
// It stands beside gonum's simplex, with which the tests compare it, for three
// things that a farm's programs need and that one does not give: the prices; a
// way through programs in which most limits are nothing, where every first step
// is degenerate; and the same digits on every machine.
package linear

import (
	"errors"
	"math"
)

// Program asks for the numbers, none below 0, that make the sum of Objective
// times them the most while every row holds.
type Program struct {
	Objective []float64
	Rows      []Row
}

// Row says that the sum of the coefficients times the numbers is at most Most.
type Row struct {
	Coefficients []float64
	Most         float64
}

// Answer is the best that a program has.
type Answer struct {
	Value  float64   // of the objective
	X      []float64 // the numbers
	Prices []float64 // of each row: what one more of Most would add to Value, at the margin
	Slack  []float64 // of each row: what is left of Most
}

// Unbounded says that a program has no best answer. Ray holds the numbers that
// grow without end, and how fast beside one another.
type Unbounded struct{ Ray []float64 }

// Error tells that there is no most.
func (u *Unbounded) Error() string { return "linear: nothing bounds the objective" }

// What else can be wrong with a program.
var (
	ErrInfeasible = errors.New("linear: the rows contradict one another")
	ErrNumbers    = errors.New("linear: a number of the program is not finite, or its numbers lie too far apart to be reckoned with")
)

const (
	// tiny is what counts as nothing once the program is scaled to about one.
	tiny = 1e-9
	// dust is what a step leaves of two equal numbers by rounding.
	dust = 1e-12
	// speck is what solving a basis anew leaves of nothing by rounding.
	speck = 1e-14
	// broken is the share of a row's numbers by which it may be missed for want of
	// digits; what misses it by more is no answer.
	broken = 1e-7
	// nought is what a row, scaled to about one, may be missed by: the steps take
	// tiny for nothing, and some of them add up.
	nought = 10 * tiny
	// stalled is after how many steps without progress the choice of the next
	// one is made by the order of the columns alone, which cannot go in circles but
	// is ten times as slow and, dividing by whatever comes first, loses its digits.
	// Farms of many diets stall for hundreds of steps and then go on.
	stalled = 1000
	// mostSteps for each row and column ends what rounding has led astray.
	mostSteps = 50
)

// tableau is a program on its way: every row is solved for one column, its
// basis; the last row holds what each column would cost.
type tableau struct {
	cells   [][]float64 // rows, then the objective; the last cell of each is its right side
	basis   []int
	columns int // structural and slack columns, without the artificial ones
	// patience is after how many steps without progress the order of the columns
	// decides.
	patience int
	filled   []int // of the row of a step, the cells that are not nothing
}

// Solve gives the best answer. Where rounding leads it astray it goes again by the
// slow way that takes the columns in their order.
func (p *Program) Solve() (Answer, error) {
	s, ok := scale(p)
	if !ok {
		return Answer{}, ErrNumbers
	}
	answer, err := s.solve(p, stalled)
	if errors.Is(err, ErrNumbers) {
		return s.solve(p, 0)
	}
	return answer, err
}

func (s *scaled) solve(p *Program, patience int) (Answer, error) {
	t := s.tableau()
	t.patience = patience
	if err := t.feasible(); err != nil {
		return Answer{}, err
	}
	t.objective(s.objective)
	if entering, err := t.run(t.columns); err != nil {
		return Answer{}, err
	} else if entering >= 0 {
		ray := s.ray(t, entering)
		if !p.runsAlong(ray) {
			return Answer{}, ErrNumbers
		}
		return Answer{}, &Unbounded{Ray: ray}
	}
	return s.answer(p, t)
}

// mend gives the numbers of the last basis, solved anew, and the prices of the rows. The
// right sides have lost their last digits on the way; where numbers come out below
// nothing by it, it steps on: the column that leaves is the one furthest below, the one
// that enters is the one that costs the least, so that the basis stays the best there is.
// Where that leads nowhere it is taken as it was.
func (s *scaled) mend(t *tableau) (x, prices []float64, ok bool) {
	before := append([]int(nil), t.basis...)
	for range len(t.basis) {
		if x, prices, ok = s.solveBasis(t.basis); !ok {
			break
		}
		leaving := -1
		for i, v := range x {
			t.cells[i][t.right()] = v
			if v < -speck && (leaving < 0 || v < x[leaving]) {
				leaving = i
			}
		}
		if leaving < 0 {
			return x, prices, true
		}
		entering := t.cheapest(leaving)
		if entering < 0 {
			break
		}
		t.pivot(leaving, entering)
	}
	t.basis = before
	return s.solveBasis(t.basis)
}

// cheapest gives the column that raises a row's number at the least cost, -1 where none
// does.
func (t *tableau) cheapest(row int) int {
	best, least := -1, 0.0
	for j, v := range t.cells[row][:t.columns] {
		if v >= -tiny {
			continue
		}
		if ratio := max(0, t.last()[j]) / -v; best < 0 || ratio < least-dust || ratio <= least+dust && v < t.cells[row][best] {
			best, least = j, ratio
		}
	}
	return best
}

// scaled is a program brought near one by powers of two, which round nothing.
type scaled struct {
	objective    []float64
	rows         [][]float64
	most         []float64
	rowBy, colBy []float64
	mostBy       float64
}

func scale(p *Program) (*scaled, bool) {
	n := len(p.Objective)
	s := &scaled{objective: append([]float64(nil), p.Objective...), rowBy: ones(len(p.Rows)), colBy: ones(n), mostBy: 1}
	for i := range p.Rows {
		s.rows = append(s.rows, append([]float64(nil), p.Rows[i].Coefficients...))
		s.most = append(s.most, p.Rows[i].Most)
		if !finite(p.Rows[i].Most) || !finite(s.rows[i]...) || len(s.rows[i]) != n {
			return nil, false
		}
	}
	if !finite(p.Objective...) {
		return nil, false
	}
	for range 4 {
		for i, row := range s.rows {
			s.rowBy[i] *= centre(row, func(f float64) {
				for j := range row {
					row[j] *= f
				}
				s.most[i] *= f
			})
		}
		column := make([]float64, len(s.rows))
		for j := range n {
			for i := range s.rows {
				column[i] = s.rows[i][j]
			}
			s.colBy[j] *= centre(column, func(f float64) {
				for i := range s.rows {
					s.rows[i][j] *= f
				}
				s.objective[j] *= f
			})
		}
	}
	s.mostBy = toOne(s.most)
	for i := range s.most {
		s.most[i] *= s.mostBy
	}
	by := toOne(s.objective)
	for j := range s.objective {
		s.objective[j] *= by
	}
	for _, row := range s.rows {
		if !finite(row...) {
			return nil, false
		}
	}
	return s, finite(s.most...) && finite(s.objective...) && finite(s.rowBy...) && finite(s.colBy...)
}

func ones(n int) []float64 {
	all := make([]float64, n)
	for i := range all {
		all[i] = 1
	}
	return all
}

func finite(all ...float64) bool {
	for _, v := range all {
		if v-v != 0 {
			return false
		}
	}
	return true
}

// centre gives, and applies, the power of two that brings the middle of the
// numbers, between the least and the greatest, to about one.
func centre(of []float64, apply func(float64)) float64 {
	low, high := math.Inf(1), 0.0
	for _, v := range of {
		if v != 0 {
			low, high = min(low, math.Abs(v)), max(high, math.Abs(v))
		}
	}
	if high == 0 {
		return 1
	}
	_, a := math.Frexp(low)
	_, b := math.Frexp(high)
	f := math.Ldexp(1, -(a+b)/2)
	apply(f)
	return f
}

// toOne gives the power of two that brings the greatest of the numbers to about
// one.
func toOne(of []float64) float64 {
	high := 0.0
	for _, v := range of {
		high = max(high, math.Abs(v))
	}
	if high == 0 {
		return 1
	}
	_, exponent := math.Frexp(high)
	return math.Ldexp(1, -exponent)
}

// tableau gives every row a slack column, and one below nothing an artificial
// one too.
func (s *scaled) tableau() *tableau {
	m, n := len(s.rows), len(s.objective)
	below := 0
	for _, most := range s.most {
		if most < 0 {
			below++
		}
	}
	t := &tableau{columns: n + m, basis: make([]int, m)}
	width := n + m + below + 1
	artificial := n + m
	for i, row := range s.rows {
		cells := make([]float64, width)
		sign := 1.0
		if s.most[i] < 0 {
			sign = -1
		}
		for j, v := range row {
			cells[j] = sign * v
		}
		cells[n+i] = sign
		cells[width-1] = sign * s.most[i]
		t.basis[i] = n + i
		if sign < 0 {
			cells[artificial] = 1
			t.basis[i] = artificial
			artificial++
		}
		t.cells = append(t.cells, cells)
	}
	t.cells = append(t.cells, make([]float64, width))
	return t
}

func (t *tableau) last() []float64 { return t.cells[len(t.cells)-1] }
func (t *tableau) right() int      { return len(t.cells[0]) - 1 }

// feasible drives the artificial columns to nothing.
func (t *tableau) feasible() error {
	if len(t.basis) == 0 || t.right() == t.columns {
		return nil
	}
	costs := make([]float64, t.right())
	for j := t.columns; j < t.right(); j++ {
		costs[j] = -1
	}
	t.objective(costs)
	if _, err := t.run(t.right()); err != nil {
		return err
	}
	if t.last()[t.right()] < -tiny {
		return ErrInfeasible
	}
	for i, b := range t.basis { // what is left of them at nothing leaves the basis: a row's own slack can take its place
		if b < t.columns {
			continue
		}
		t.cells[i][t.right()] = 0
		best := 0
		for j := range t.columns {
			if math.Abs(t.cells[i][j]) > math.Abs(t.cells[i][best]) {
				best = j
			}
		}
		t.pivot(i, best)
	}
	for i := range t.cells { // and they never come back
		for j := t.columns; j < t.right(); j++ {
			t.cells[i][j] = 0
		}
	}
	return nil
}

// objective writes the last row for an objective, the basis priced out.
func (t *tableau) objective(costs []float64) {
	last := t.last()
	clear(last)
	for j, c := range costs {
		last[j] = -c
	}
	for i, b := range t.basis {
		if b < len(costs) && costs[b] != 0 {
			add(last, t.cells[i], costs[b])
		}
	}
}

// add adds a multiple of a row. The product is rounded by itself, so that no
// machine fuses the two.
func add(to, row []float64, times float64) {
	for j, v := range row {
		to[j] += float64(times * v)
	}
}

// run steps until nothing is to be won, among the first columns. It gives a
// column that grows without end, or -1.
func (t *tableau) run(columns int) (int, error) {
	idle := 0
	for range mostSteps * (t.right() + len(t.basis)) {
		entering := t.entering(columns, idle >= t.patience)
		if entering < 0 {
			return -1, nil
		}
		leaving := t.leaving(entering, idle >= t.patience)
		if leaving < 0 {
			return entering, nil
		}
		if t.cells[leaving][t.right()] > tiny {
			idle = 0
		} else {
			idle++
		}
		t.pivot(leaving, entering)
	}
	return -1, ErrNumbers
}

// entering gives the column with the most to win, or the first with anything.
func (t *tableau) entering(columns int, first bool) int {
	best := -1
	for j, v := range t.last()[:columns] {
		if v < -tiny && (best < 0 || v < t.last()[best]) {
			if best = j; first {
				return j
			}
		}
	}
	return best
}

// leaving gives the row that first comes to nothing as a column grows; of
// several the one with the largest number to divide by, or the one whose column
// comes first.
func (t *tableau) leaving(entering int, first bool) int {
	best, least := -1, 0.0
	for i, b := range t.basis {
		v := t.cells[i][entering]
		if v <= tiny {
			continue
		}
		ratio := max(0, t.cells[i][t.right()]) / v
		switch {
		case best < 0 || ratio < least-dust:
		case ratio > least+dust:
			continue
		case first && b > t.basis[best], !first && v <= t.cells[best][entering]:
			continue
		}
		best, least = i, ratio
	}
	return best
}

// pivot solves a row for a column. Most of a row is nothing, and what is added of
// nothing changes nothing.
func (t *tableau) pivot(row, column int) {
	from := t.cells[row]
	by := from[column]
	t.filled = t.filled[:0]
	for j, v := range from {
		if v != 0 {
			from[j] = v / by
			t.filled = append(t.filled, j)
		}
	}
	from[column] = 1
	for i, to := range t.cells {
		f := to[column]
		if i == row || f == 0 {
			continue
		}
		for _, j := range t.filled {
			v := to[j] - float64(f*from[j])
			if math.Abs(v) < dust {
				v = 0
			}
			to[j] = v
		}
		to[column] = 0
	}
	t.basis[row] = column
}

// ray gives the direction in which the entering column grows, as it was before
// scaling.
func (s *scaled) ray(t *tableau, entering int) []float64 {
	ray := make([]float64, len(s.objective))
	if entering < len(ray) {
		ray[entering] = s.colBy[entering]
	}
	for i, b := range t.basis {
		if b < len(ray) && t.cells[i][entering] < -tiny {
			ray[b] = -t.cells[i][entering] * s.colBy[b]
		}
	}
	return ray
}

// runsAlong tells whether no row holds a direction back, which rounding can make
// believe.
func (p *Program) runsAlong(ray []float64) bool {
	for i := range p.Rows {
		sum, size := 0.0, 0.0
		for j, v := range p.Rows[i].Coefficients {
			part := float64(v * ray[j])
			sum += part
			size += math.Abs(part)
		}
		if sum > broken*size {
			return false
		}
	}
	return true
}

// answer solves the last basis anew from the program's own numbers, which sheds
// the rounding of the steps that led to it.
func (s *scaled) answer(p *Program, t *tableau) (Answer, error) {
	m, n := len(p.Rows), len(p.Objective)
	x, prices, ok := s.mend(t)
	if !ok {
		return Answer{}, ErrNumbers
	}
	a := Answer{X: make([]float64, n), Prices: make([]float64, m), Slack: make([]float64, m)}
	for i, b := range t.basis {
		if b < n {
			a.X[b] = max(0, x[i]*s.colBy[b]/s.mostBy)
		}
	}
	priceBy := objectiveBy(p, s)
	for i := range m {
		a.Prices[i] = max(0, prices[i]*s.rowBy[i]/priceBy)
		a.Slack[i] = p.Rows[i].Most
		size := math.Abs(a.Slack[i])
		for j, v := range p.Rows[i].Coefficients {
			part := float64(v * a.X[j])
			a.Slack[i] -= part
			size += math.Abs(part)
		}
		if a.Slack[i] < -broken*(1+size) && a.Slack[i]*s.rowBy[i]*s.mostBy < -nought {
			return Answer{}, ErrNumbers
		}
	}
	for j, c := range p.Objective {
		a.Value += float64(c * a.X[j])
	}
	if !finite(a.Value) || !finite(a.X...) || !finite(a.Prices...) {
		return Answer{}, ErrNumbers
	}
	return a, nil
}

// objectiveBy gives what the whole objective was multiplied by.
func objectiveBy(p *Program, s *scaled) float64 {
	for j, c := range p.Objective {
		if c != 0 {
			return s.objective[j] / (c * s.colBy[j])
		}
	}
	return 1
}

// solveBasis gives the numbers of a basis and the prices of the rows.
func (s *scaled) solveBasis(basis []int) (x, prices []float64, ok bool) {
	m, n := len(s.rows), len(s.objective)
	a, transposed := make([][]float64, m), make([][]float64, m)
	for i := range m {
		a[i], transposed[i] = make([]float64, m+1), make([]float64, m+1)
	}
	for k, b := range basis {
		for i := range m {
			v := 0.0
			switch {
			case b < n:
				v = s.rows[i][b]
			case b == n+i:
				v = 1
			}
			a[i][k], transposed[k][i] = v, v
		}
		if b < n {
			transposed[k][m] = s.objective[b]
		}
	}
	for i := range m {
		a[i][m] = s.most[i]
	}
	if x, ok = eliminate(a); !ok {
		return nil, nil, false
	}
	prices, ok = eliminate(transposed)
	return x, prices, ok
}

// eliminate solves a square system, its right side in the last column, by
// elimination with row exchanges.
func eliminate(a [][]float64) ([]float64, bool) {
	m := len(a)
	for k := range m {
		best := k
		for i := k + 1; i < m; i++ {
			if math.Abs(a[i][k]) > math.Abs(a[best][k]) {
				best = i
			}
		}
		a[k], a[best] = a[best], a[k]
		if math.Abs(a[k][k]) < 1e-13 {
			return nil, false
		}
		for i := k + 1; i < m; i++ {
			if a[i][k] != 0 {
				add(a[i][k:], a[k][k:], -a[i][k]/a[k][k])
			}
		}
	}
	x := make([]float64, m)
	for k := m - 1; k >= 0; k-- {
		v := a[k][m]
		for j := k + 1; j < m; j++ {
			v -= float64(a[k][j] * x[j])
		}
		x[k] = v / a[k][k]
	}
	return x, true
}
