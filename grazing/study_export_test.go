package grazing

import (
	"math/rand/v2"
	"slices"

	"example.org/soum/rainfall"
)

// StudyRain gives the rain that a study draws for its first seasons, for the tests.
func StudyRain(s *Studied, n int) ([][]rainfall.MonthlyRain, error) {
	w, err := studyWorkerOf(s)
	if err != nil {
		return nil, err
	}
	var all [][]rainfall.MonthlyRain
	for i := range n {
		w.draw(i)
		all = append(all, slices.Clone(w.rain))
	}
	return all, nil
}

// StudyGrowth gives the potential growth that comes of some rain, by land and day.
func StudyGrowth(s *Studied, record []rainfall.MonthlyRain) ([][]float64, error) {
	w, err := studyWorkerOf(s)
	if err != nil {
		return nil, err
	}
	w.setting.record = record
	err = w.grow()
	var all [][]float64
	for i := range w.setting.input.Lands {
		all = append(all, w.setting.input.Lands[i].Peak)
	}
	return all, err
}

// StudyQuantile gives a percentile of a study.
func StudyQuantile(share float64, sorted []float64) float64 { return sorted[rank(share, len(sorted))] }

// StudySpreadOf sums up values as a study does.
func StudySpreadOf(values []float64) StudySpread {
	r := &studyRun{sorted: make([]float64, len(values))}
	return r.spread(values)
}

// StudyFits gives the distributions of a study.
func StudyFits(s *Studied) ([12]rainfall.RainFit, error) {
	p, err := s.plan()
	if err != nil {
		return [12]rainfall.RainFit{}, err
	}
	return p.fits, nil
}

func studyWorkerOf(s *Studied) (*studyWorker, error) {
	p, err := s.plan()
	if err != nil {
		return nil, err
	}
	r := &studyRun{studyPlan: p}
	r.begin()
	w := &studyWorker{studyRun: r, rain: make([]rainfall.MonthlyRain, 12*p.drawn)}
	w.random = rand.New(&w.pcg)
	return w, w.settle(0)
}
