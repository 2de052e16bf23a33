package forage_test

import (
	"testing"

	"example.org/soum/forage"
	"example.org/soum/units"
)

var (
	sinkShare units.Fraction
	sinkDays  units.Days
)

func BenchmarkClippedYield(b *testing.B) {
	b.ReportAllocs()
	sample := 1 * units.FreshKilogram
	for b.Loop() {
		sink, _ = forage.ClippedYield(sample, 0.2, 0.25)
		sample += 1e-9
	}
}

func BenchmarkPlateCover(b *testing.B) {
	b.ReportAllocs()
	height := 8 * units.PlateCentimetre
	for b.Loop() {
		sink, _ = forage.PlateCover(height, 2.5, 0.03)
		height += 1e-9
	}
}

func BenchmarkCurveMass(b *testing.B) {
	b.ReportAllocs()
	height := 8 * units.HeightInch
	for b.Loop() {
		sink, _ = forage.CurveMass(height, forage.Thick)
		height += 1e-9
	}
}

func BenchmarkRootStop(b *testing.B) {
	b.ReportAllocs()
	removed := 55 * units.Percent
	for b.Loop() {
		sinkShare, _ = forage.RootStop(removed, forage.RootTestThird)
		removed += 1e-9
	}
}

func BenchmarkRestFromGrowth(b *testing.B) {
	b.ReportAllocs()
	leave := units.Yield(0.15)
	for b.Loop() {
		sinkDays, _ = forage.RestFromGrowth(leave, 0.28, 0.006)
		leave += 1e-9
	}
}

func BenchmarkTurnInCover(b *testing.B) {
	b.ReportAllocs()
	demand := units.Demand(80)
	for b.Loop() {
		sink, _ = forage.TurnInCover(demand, 40000, 20, 0.15)
		demand += 1e-9
	}
}
