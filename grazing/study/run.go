package study

import (
	"context"
	"math"
	"math/rand/v2"
	"runtime"
	"slices"
	"sync"
	"time"

	"gonum.org/v1/gonum/stat/distuv"

	"example.org/soum/grazing/farm"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// batchSize is how many seasons a worker takes at a time.
const batchSize = 32

// noShortage stands for a first short day where there is none.
const noShortage = math.MaxInt

// shortfall is the dry matter in kg from which feed counts as missing, as in Carries:
// less is rounding.
const shortfall = 1e-9

// tallies keeps a few floats of every season of a point, by season, so that the
// order in which they ran does not matter.
type tallies struct {
	fed, short []float64
	first      []int       // day
	left       [][]float64 // by month of the plan and season
	missed     [][]bool    // by month of the plan and season
}

// running is a study under way.
type running struct {
	*ready
	ctx      context.Context
	workers  []*worker
	progress func(done, all int)
	tally    tallies
	months   []Month // empty, in order
	monthOf  []int   // by day
	sorted   []float64
	ordered  []int // of tally.first

	mutex   sync.Mutex
	next    int // the first season of the point that nobody has taken
	done    int
	wrong   error
	wrongAt int // its season
}

// worker runs seasons one after the other in memory of its own.
type worker struct {
	*running
	seasons    *farm.Seasons
	pcg        rand.PCG
	random     *rand.Rand
	rain       []rainfall.MonthlyRain
	rainFactor rain // on the rain that is drawn
}

func (p *ready) run(ctx context.Context, workers int, progress func(done, all int)) (Result, error) {
	if workers <= 0 {
		workers = runtime.GOMAXPROCS(0)
	}
	r := &running{ready: p, ctx: ctx, progress: progress}
	r.begin()
	for range min(workers, (p.studied.Seasons+batchSize-1)/batchSize) {
		w := &worker{running: r, rain: make([]rainfall.MonthlyRain, 12*p.drawn)}
		w.random = rand.New(&w.pcg)
		r.workers = append(r.workers, w)
	}
	result := Result{Seasons: p.studied.Seasons, Years: p.years, Seed: p.studied.Seed}
	for point := range p.points {
		if err := r.point(point); err != nil {
			return Result{}, err
		}
		result.Points = append(result.Points, r.sum(point))
	}
	return result, nil
}

// begin makes room for the seasons of a point; every point uses it again.
func (r *running) begin() {
	n := r.studied.Seasons
	for day := r.farm.Today; day <= r.farm.Season.To; day++ {
		if len(r.months) == 0 || day.Day() == 1 {
			r.months = append(r.months, Month{Year: day.Year(), Month: int(day.Month())})
		}
		r.monthOf = append(r.monthOf, len(r.months)-1)
	}
	t := &r.tally
	t.fed, t.short, t.first, r.sorted, r.ordered = make([]float64, n), make([]float64, n), make([]int, n), make([]float64, n), make([]int, n)
	t.left, t.missed = make([][]float64, len(r.months)), make([][]bool, len(r.months))
	for m := range r.months {
		t.left[m], t.missed[m] = make([]float64, n), make([]bool, n)
	}
}

// point runs the seasons of a point on all workers.
func (r *running) point(point int) error {
	r.next, r.wrong = 0, nil
	var all sync.WaitGroup
	for _, w := range r.workers {
		all.Go(func() {
			if err := w.settle(point); err != nil {
				r.fail(-1, err)
				return
			}
			for w.batch() {
			}
		})
	}
	all.Wait()
	if err := r.ctx.Err(); err != nil {
		return err
	}
	return r.wrong
}

// fail keeps the fault of the earliest season.
func (r *running) fail(at int, err error) {
	r.mutex.Lock()
	defer r.mutex.Unlock()
	if r.wrong == nil || at < r.wrongAt {
		r.wrong, r.wrongAt = err, at
	}
}

// batch runs the next seasons that nobody has taken, and tells whether there were any.
func (w *worker) batch() bool {
	w.mutex.Lock()
	first, stop := w.next, w.wrong != nil
	last := min(first+batchSize, w.studied.Seasons)
	w.next = last
	w.mutex.Unlock()
	if first == last || stop {
		return false
	}
	for i := first; i < last; i++ {
		if w.ctx.Err() != nil {
			return false
		}
		if err := w.season(i); err != nil {
			w.fail(i, err)
			return false
		}
	}
	w.mutex.Lock()
	defer w.mutex.Unlock()
	w.done += last - first
	if w.progress != nil {
		w.progress(w.done, len(w.points)*w.studied.Seasons)
	}
	return true
}

// settle makes the farm of a point ready. Only its growth changes from season to
// season.
func (w *worker) settle(point int) (err error) {
	end := w.studied.End
	if end == 0 {
		end = units.Middle
	}
	at := w.at(point)
	if w.seasons, err = at.Seasons(end); err != nil {
		return err
	}
	w.rainFactor = 1
	for k, value := range w.points[point] {
		sweep := &w.studied.Inputs[k]
		switch sweep.Input { // those that are no figure of the farm document
		case InputRainFactor:
			w.rainFactor = rain(value)
		case InputHead:
			w.seasons.Multiply(sweep.Group, value/at.Groups[groupIndex(at, sweep.Group)].Head)
		case InputHeadFactor, InputIntakeFactor:
			w.seasons.Multiply(sweep.Group, value)
		}
	}
	return nil
}

// season runs one season and writes down what counts.
func (w *worker) season(i int) error {
	w.draw(i)
	if err := w.seasons.Rain(w.rain); err != nil {
		return err
	}
	t := &w.tally
	for m := range t.missed {
		t.missed[m][i] = false
	}
	first, fed, short, left := noShortage, 0.0, 0.0, float64(w.seasons.Store())
	for day, feed := range w.seasons.Run() {
		left += float64(feed.Made)
		for _, wanted := range feed.Fed {
			fed += float64(wanted)
			left -= float64(wanted)
		}
		if -left > short+shortfall {
			short = -left
			first = min(first, day)
			t.missed[w.monthOf[day]][i] = true
		}
		t.left[w.monthOf[day]][i] = left
	}
	t.fed[i], t.short[i], t.first[i] = fed, short, first
	return nil
}

// draw draws the rain of a season. But for the factor it depends on the seed and the
// season's number alone.
func (w *worker) draw(i int) {
	w.pcg.Seed(uint64(w.studied.Seed), uint64(i))
	for y := range w.drawn {
		var year [12]rain
		if w.studied.Draw == DrawYears {
			year = w.ready.rain[w.random.IntN(len(w.ready.rain))]
		} else {
			for month := range year {
				year[month] = w.drawMonth(&w.fits[month])
			}
		}
		for month, depth := range year {
			w.rain[12*y+month] = rainfall.MonthlyRain{Year: w.first + y, Month: time.Month(month + 1), Rain: depth * w.rainFactor}
		}
	}
	for _, k := range w.known {
		w.rain[12*(k.Year-w.first)+int(k.Month-time.January)] = k
	}
}

// drawMonth draws the rain of a month from its distribution.
func (w *worker) drawMonth(fit *rainfall.RainFit) rain {
	if w.random.Float64() < float64(fit.Dry) {
		return 0
	}
	gamma := distuv.Gamma{Alpha: fit.Shape, Beta: 1, Src: &w.pcg}
	return rain(gamma.Rand()) * fit.Scale
}

// shares are the percentiles told.
var shares = [...]float64{0.05, 0.25, 0.50, 0.75, 0.95}

// rank gives the place, from 0, of a percentile in so many values in their order: of
// the smallest value that so many of them do not exceed.
func rank(share float64, of int) int {
	return max(0, int(math.Ceil(share*float64(of)-1e-9))-1)
}

// spread sums up a figure of all seasons, in their order.
func (r *running) spread(values []float64) Spread {
	copy(r.sorted, values)
	slices.Sort(r.sorted)
	var at [len(shares)]units.DryMatter
	for k, share := range shares {
		at[k] = units.DryMatter(r.sorted[rank(share, len(values))])
	}
	sum := 0.0
	for _, v := range values {
		sum += v
	}
	return Spread{at[0], at[1], at[2], at[3], at[4], units.DryMatter(sum / float64(len(values)))}
}

// sum sums up a point.
func (r *running) sum(point int) Point {
	t := &r.tally
	p := Point{Values: r.points[point], Fed: r.spread(t.fed), Short: r.spread(t.short), First: []units.Date{}, Months: slices.Clone(r.months)}
	first := r.ordered
	copy(first, t.first)
	slices.Sort(first)
	short, _ := slices.BinarySearch(first, noShortage)
	p.Odds = units.Fraction(short) / units.Fraction(len(first))
	if short > 0 {
		for _, share := range shares {
			p.First = append(p.First, r.farm.Today.Add(first[rank(share, short)]))
		}
	}
	for m := range p.Months {
		missed := 0
		for _, one := range t.missed[m] {
			if one {
				missed++
			}
		}
		p.Months[m].Odds = units.Fraction(missed) / units.Fraction(len(first))
		p.Months[m].Left = r.spread(t.left[m])
	}
	return p
}
