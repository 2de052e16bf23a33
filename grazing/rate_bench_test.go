package grazing_test

import (
	"testing"

	"example.org/soum/grazing"
	"example.org/soum/units"
)

var (
	sinkArea units.Area
	sinkDays units.Days
	sinkUse  units.UseRate
)

func BenchmarkUseOfYield(b *testing.B) {
	b.ReportAllocs()
	yield := units.Yield(0.2)
	for b.Loop() {
		sinkUse, _ = grazing.UseOfYield(yield, 0.25, 12)
		yield += 1e-12
	}
}

func BenchmarkGrazedArea(b *testing.B) {
	b.ReportAllocs()
	area := units.Area(1e5)
	for b.Loop() {
		sinkArea, _ = grazing.GrazedArea(area, 0.3, 0.5)
		area += 1e-9
	}
}

func BenchmarkGrazingDays(b *testing.B) {
	b.ReportAllocs()
	mass := units.Yield(0.2)
	for b.Loop() {
		sinkDays, _ = grazing.GrazingDays(mass, 0.12, 0.0025, 0.0005)
		mass += 1e-12
	}
}
