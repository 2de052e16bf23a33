package study

import (
	"math/rand/v2"
	"slices"

	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// Rain gives the rain that a study draws for its first seasons, for the tests.
func Rain(s *Study, n int) ([][]rainfall.MonthlyRain, error) {
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

// Growth gives the potential growth that comes of some rain, by land and day.
func Growth(s *Study, record []rainfall.MonthlyRain) ([][]units.Growth, error) {
	w, err := studyWorkerOf(s)
	if err != nil {
		return nil, err
	}
	if err := w.seasons.Rain(record); err != nil {
		return nil, err
	}
	var all [][]units.Growth
	for i := range s.Farm.Land {
		all = append(all, w.seasons.Potential(i))
	}
	return all, nil
}

// Quantile gives a percentile of a study.
func Quantile(share float64, sorted []float64) float64 { return sorted[rank(share, len(sorted))] }

// SpreadOf sums up values as a study does.
func SpreadOf(values []float64) Spread {
	r := &running{sorted: make([]float64, len(values))}
	return r.spread(values)
}

// Fits gives the distributions of a study.
func Fits(s *Study) ([12]rainfall.RainFit, error) {
	p, err := s.ready()
	if err != nil {
		return [12]rainfall.RainFit{}, err
	}
	return p.fits, nil
}

func studyWorkerOf(s *Study) (*worker, error) {
	p, err := s.ready()
	if err != nil {
		return nil, err
	}
	r := &running{ready: p}
	r.begin()
	w := &worker{running: r, rain: make([]rainfall.MonthlyRain, 12*p.drawn)}
	w.random = rand.New(&w.pcg)
	return w, w.settle(0)
}
