package season_test

import (
	"testing"

	"example.org/soum/internal/season"
)

// BenchmarkRun steps a year of four groups, each behind the other, over fifty
// days' strips in five lanes.
func BenchmarkRun(b *testing.B) {
	in := benchmarkSeason()
	result := season.Run(in)
	if len(result.Moves) < 200 { // or it would measure a farm that mostly feeds hay
		b.Fatalf("only %d moves", len(result.Moves))
	}
	b.ReportAllocs()
	for b.Loop() {
		season.Run(in)
	}
}

// BenchmarkRunner steps the same year again and again in the same memory.
func BenchmarkRunner(b *testing.B) {
	in := benchmarkSeason()
	var r season.Runner
	b.ReportAllocs()
	for b.Loop() {
		r.Run(in)
	}
}

// BenchmarkBrief keeps only what was eaten, cut and fed.
func BenchmarkBrief(b *testing.B) {
	in := benchmarkSeason()
	var r season.Runner
	b.ReportAllocs()
	for b.Loop() {
		r.Brief(in)
	}
}

// benchmarkSeason is a farm whose ten strips a lane come round every fifty
// days or so: 20 m wide, a day's want of 60 kg from 0.13 kg/m² above the
// residual at a use of 0.6 takes some 38 m.
func benchmarkSeason() *season.Input {
	const days, lanes = 365, 5
	in := &season.Input{Days: days}
	peak := make([]float64, days)
	for d := range peak {
		peak[d] = 0.004 // 40 kg/ha and day
	}
	rotation := season.Rotation{ShortestRest: 25, LongestStay: 5, Moves: 1, ShortestStrip: 5, Use: []float64{0.6}}
	for l := range lanes {
		in.Lands = append(in.Lands, season.Land{
			Width: 20, Length: 380, Aim: 0.2, Least: 0.175, Leave: 0.1, Ceiling: 0.5, Peak: peak,
			Stretches: []season.Stretch{{To: 380, Mass: 0.23, Bitten: season.Never}},
		})
		rotation.Lands = append(rotation.Lands, l)
	}
	for _, lag := range []int{0, 1, 3, 5} {
		demand := make([]float64, days)
		for d := range demand {
			demand[d] = 15
		}
		rotation.Members = append(rotation.Members, season.Member{Group: len(in.Groups), Lag: lag})
		in.Groups = append(in.Groups, season.Group{Demand: demand})
	}
	in.Rotations = []season.Rotation{rotation}
	return in
}
