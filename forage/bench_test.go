package forage_test

import (
	"testing"

	"example.org/soum/forage"
	"example.org/soum/units"
)

var sink units.Yield

func BenchmarkAvailable(b *testing.B) {
	b.ReportAllocs()
	h := 8 * units.HeightInch
	for b.Loop() {
		sink, _ = forage.Available(h, 3*units.HeightInch, 250*units.PoundPerAcreInch)
		h += 1e-9
	}
}

func benchmark(b *testing.B, of func(x float64) float64) {
	b.ReportAllocs()
	x, sum := 0.5, 0.0
	for b.Loop() {
		sum += of(x)
		x += 1e-9
	}
	sink = units.Yield(sum)
}

func BenchmarkHayToHaul(b *testing.B) {
	benchmark(b, func(x float64) float64 {
		v, _ := forage.HayToHaul(100, units.Fraction(x), 0.1, forage.WasteOfHauled)
		return float64(v)
	})
}

func BenchmarkHayDays(b *testing.B) {
	benchmark(b, func(x float64) float64 {
		v, _ := forage.HayDays(100, 0.1, units.Fraction(x), 0.1, 10)
		return float64(v)
	})
}

func BenchmarkBaleWeight(b *testing.B) {
	benchmark(b, func(x float64) float64 {
		v, _ := forage.BaleWeight(units.Length(x), 1.5, 180)
		return float64(v)
	})
}

func BenchmarkAlfalfaFibre(b *testing.B) {
	benchmark(b, func(x float64) float64 {
		v, _ := forage.AlfalfaFibre(units.Height(x), forage.AlfalfaVegetative)
		return float64(v)
	})
}

func BenchmarkTetanyRatio(b *testing.B) {
	benchmark(b, func(x float64) float64 {
		v, _ := forage.TetanyRatio(units.Fraction(x), 0.4, 0.2)
		return v
	})
}

func BenchmarkNitrateAs(b *testing.B) {
	benchmark(b, func(x float64) float64 {
		v, _ := forage.NitrateAs(units.Concentration(x), forage.NitrateIon, forage.NitrateNitrogen)
		return float64(v)
	})
}

func BenchmarkQualityAfter(b *testing.B) {
	benchmark(b, func(x float64) float64 {
		v, _ := forage.QualityAfter(0.5, forage.DriftProtein, units.Days(x))
		return float64(v)
	})
}
