package rainfall_test

import (
	"testing"

	"example.org/soum/rainfall"
	"example.org/soum/units"
)

var (
	sinkRate units.RainRate
	sinkSun  units.Radiation
)

func BenchmarkHargreavesSamani(b *testing.B) {
	b.ReportAllocs()
	high := units.Temperature(25)
	for b.Loop() {
		sinkRate, _ = rainfall.HargreavesSamani(high, 12, 40)
		high += 1e-9
	}
}

func BenchmarkPenmanMonteith(b *testing.B) {
	b.ReportAllocs()
	mean := units.Temperature(17)
	for b.Loop() {
		sinkRate, _ = rainfall.PenmanMonteith(0.122, 13.28, 0, 0.0666, mean, 170000, 2, 1.4)
		mean += 1e-9
	}
}

// Exponentials and angles by the dozen: it cannot be as short as a product.
func BenchmarkReferenceWater(b *testing.B) {
	b.ReportAllocs()
	high := units.Temperature(21.5)
	for b.Loop() {
		sinkRate, _ = rainfall.ReferenceWater(100, 41, high, 12.3, 1.4, 170000, 22, 0)
		high += 1e-9
	}
}

func BenchmarkExtraterrestrialRadiation(b *testing.B) {
	b.ReportAllocs()
	latitude := units.Angle(0.8)
	for b.Loop() {
		sinkSun, _ = rainfall.ExtraterrestrialRadiation(latitude, 187)
		latitude += 1e-12
	}
}
