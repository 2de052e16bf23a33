package grazing

import (
	"context"
	"math"
	"math/rand/v2"
	"runtime"
	"slices"
	"sync"
	"time"

	"gonum.org/v1/gonum/stat/distuv"

	"example.org/soum/forage"
	"example.org/soum/internal/season"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// studyBatch is how many seasons a worker takes at a time.
const studyBatch = 32

// noShortage stands for a first short day where there is none.
const noShortage = math.MaxInt

// shortfall is the dry matter in kg from which feed counts as missing, as in Carries:
// less is rounding.
const shortfall = 1e-9

// studyTally keeps a few floats of every season of a point, by season, so that the
// order in which they ran does not matter.
type studyTally struct {
	fed, short []float64
	first      []int       // day
	left       [][]float64 // by month of the plan and season
	missed     [][]bool    // by month of the plan and season
}

// studyRun is a study under way.
type studyRun struct {
	*studyPlan
	ctx      context.Context
	workers  []*studyWorker
	progress func(done, all int)
	tally    studyTally
	months   []StudyOddsMonth // empty, in order
	monthOf  []int            // by day
	sorted   []float64
	ordered  []int // of tally.first

	mutex   sync.Mutex
	next    int // the first season of the point that nobody has taken
	done    int
	wrong   error
	wrongAt int // its season
}

// studyWorker runs seasons one after the other in memory of its own.
type studyWorker struct {
	*studyRun
	setting    *setting
	runner     season.Runner
	pcg        rand.PCG
	random     *rand.Rand
	rain       []rainfall.MonthlyRain
	rainFactor rain               // on the rain that is drawn
	meanToPeak []float64          // by land
	alike      []int              // by land, the first that goes by the same key months
	scales     [][]units.Fraction // by such a land and month of the plan, forage as a share of normal
}

func (p *studyPlan) run(ctx context.Context, workers int, progress func(done, all int)) (StudyResult, error) {
	if workers <= 0 {
		workers = runtime.GOMAXPROCS(0)
	}
	r := &studyRun{studyPlan: p, ctx: ctx, progress: progress}
	r.begin()
	for range min(workers, (p.studied.Seasons+studyBatch-1)/studyBatch) {
		w := &studyWorker{studyRun: r, rain: make([]rainfall.MonthlyRain, 12*p.drawn)}
		w.random = rand.New(&w.pcg)
		r.workers = append(r.workers, w)
	}
	result := StudyResult{Seasons: p.studied.Seasons, Years: p.years, Seed: p.studied.Seed}
	for point := range p.points {
		if err := r.point(point); err != nil {
			return StudyResult{}, err
		}
		result.Points = append(result.Points, r.sum(point))
	}
	return result, nil
}

// begin makes room for the seasons of a point; every point uses it again.
func (r *studyRun) begin() {
	n := r.studied.Seasons
	days := int(r.farm.Season.To.Sub(r.farm.Today)) + 1
	for i, m := range monthsOf(nil, r.farm.Today, days) {
		r.months = append(r.months, StudyOddsMonth{Year: m.year, Month: int(m.month)})
		for range m.to - m.from {
			r.monthOf = append(r.monthOf, i)
		}
	}
	t := &r.tally
	t.fed, t.short, t.first, r.sorted, r.ordered = make([]float64, n), make([]float64, n), make([]int, n), make([]float64, n), make([]int, n)
	t.left, t.missed = make([][]float64, len(r.months)), make([][]bool, len(r.months))
	for m := range r.months {
		t.left[m], t.missed[m] = make([]float64, n), make([]bool, n)
	}
}

// point runs the seasons of a point on all workers.
func (r *studyRun) point(point int) error {
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
func (r *studyRun) fail(at int, err error) {
	r.mutex.Lock()
	defer r.mutex.Unlock()
	if r.wrong == nil || at < r.wrongAt {
		r.wrong, r.wrongAt = err, at
	}
}

// batch runs the next seasons that nobody has taken, and tells whether there were any.
func (w *studyWorker) batch() bool {
	w.mutex.Lock()
	first, stop := w.next, w.wrong != nil
	last := min(first+studyBatch, w.studied.Seasons)
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
func (w *studyWorker) settle(point int) error {
	end := w.studied.End
	if end == 0 {
		end = units.Middle
	}
	farm := w.at(point)
	s, err := settle(farm, end)
	if err != nil {
		return err
	}
	w.rainFactor = 1
	for k, value := range w.points[point] {
		w.apply(s, &w.studied.Inputs[k], value)
	}
	w.setting, w.meanToPeak = s, w.meanToPeak[:0]
	for i := range s.lands {
		at := &s.lands[i]
		share, err := forage.MeanToPeak(at.leave, at.turnIn, at.ceiling)
		if units.Impossible(err) {
			return err
		}
		w.meanToPeak = append(w.meanToPeak, share)
	}
	w.alike, w.scales = w.alike[:0], w.scales[:0]
	for i := range s.lands {
		w.alike = append(w.alike, slices.IndexFunc(s.lands, func(o site) bool { return slices.Equal(o.pasture.KeyMonths, s.lands[i].pasture.KeyMonths) }))
		w.scales = append(w.scales, make([]units.Fraction, len(s.months)))
	}
	return nil
}

// apply sets an input that is no figure of the farm document.
func (w *studyWorker) apply(s *setting, sweep *StudySweep, value float64) {
	group := s.farm.groupIndex(sweep.Group)
	switch sweep.Input {
	case InputRainFactor:
		w.rainFactor = rain(value)
	case InputHead:
		s.multiply(group, value/s.farm.Groups[group].Head)
	case InputHeadFactor:
		s.multiply(group, value)
	case InputIntakeFactor:
		for i := range s.herd {
			if group < 0 || i == group {
				s.multiply(i, value)
			}
		}
	}
}

// season runs one season and writes down what counts.
func (w *studyWorker) season(i int) error {
	w.draw(i)
	w.setting.record = w.rain
	if w.setting.soil != nil { // the account of the soil's water goes by the rain that was drawn
		if err := w.setting.settleSoil(); err != nil {
			return err
		}
	}
	if err := w.grow(); err != nil {
		return err
	}
	s, t := w.setting, &w.tally
	result := w.runner.Brief(&s.input)
	for m := range t.missed {
		t.missed[m][i] = false
	}
	first, fed, short, left, f := noShortage, 0.0, 0.0, float64(s.farm.hayAllowed()), 0
	for day := range result.Days {
		left += float64(s.farm.madeAllowed(units.DryMatter(result.Days[day].Cut)))
		for ; f < len(result.Fed) && result.Fed[f].Day == day; f++ {
			if s.grazer(result.Fed[f].Group) {
				fed += result.Fed[f].Hay
				left -= result.Fed[f].Hay
			}
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
func (w *studyWorker) draw(i int) {
	w.pcg.Seed(uint64(w.studied.Seed), uint64(i))
	for y := range w.drawn {
		var year [12]rain
		if w.studied.Draw == DrawYears {
			year = w.studyPlan.rain[w.random.IntN(len(w.studyPlan.rain))]
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
func (w *studyWorker) drawMonth(fit *rainfall.RainFit) rain {
	if w.random.Float64() < float64(fit.Dry) {
		return 0
	}
	gamma := distuv.Gamma{Alpha: fit.Shape, Beta: 1, Src: &w.pcg}
	return rain(gamma.Rand()) * fit.Scale
}

// grow writes the potential growth of every land by the drawn rain. Land of the same key
// months has the same rain: it is asked for once.
func (w *studyWorker) grow() error {
	s := w.setting
	for i := range s.lands {
		if w.alike[i] == i {
			if err := w.scale(i); err != nil {
				return err
			}
		}
		peaks := s.input.Lands[i].Peak
		for k, m := range s.months {
			peak, err := s.peakBy(w.scales[w.alike[i]][k], &s.lands[i], m, w.meanToPeak[i])
			if err != nil {
				return err
			}
			for day := m.from; day < m.to; day++ {
				peaks[day] = float64(peak)
			}
		}
	}
	return nil
}

// scale writes forage as a share of normal in the months of the plan.
func (w *studyWorker) scale(land int) (err error) {
	for k, m := range w.setting.months {
		if w.scales[land][k], err = w.setting.rainScale(&w.setting.lands[land], w.setting.date(m.from)); err != nil {
			return err
		}
	}
	return nil
}

// studyShares are the percentiles told.
var studyShares = [...]float64{0.05, 0.25, 0.50, 0.75, 0.95}

// rank gives the place, from 0, of a percentile in so many values in their order: of
// the smallest value that so many of them do not exceed.
func rank(share float64, of int) int {
	return max(0, int(math.Ceil(share*float64(of)-1e-9))-1)
}

// spread sums up a figure of all seasons, in their order.
func (r *studyRun) spread(values []float64) StudySpread {
	copy(r.sorted, values)
	slices.Sort(r.sorted)
	var at [len(studyShares)]units.DryMatter
	for k, share := range studyShares {
		at[k] = units.DryMatter(r.sorted[rank(share, len(values))])
	}
	sum := 0.0
	for _, v := range values {
		sum += v
	}
	return StudySpread{at[0], at[1], at[2], at[3], at[4], units.DryMatter(sum / float64(len(values)))}
}

// sum sums up a point.
func (r *studyRun) sum(point int) StudyPoint {
	t := &r.tally
	p := StudyPoint{Values: r.points[point], Fed: r.spread(t.fed), Short: r.spread(t.short), First: []units.Date{}, Months: slices.Clone(r.months)}
	first := r.ordered
	copy(first, t.first)
	slices.Sort(first)
	short, _ := slices.BinarySearch(first, noShortage)
	p.Odds = units.Fraction(short) / units.Fraction(len(first))
	if short > 0 {
		for _, share := range studyShares {
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
