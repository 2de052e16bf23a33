package forage_test

import (
	"testing"

	"example.org/soum/forage"
	"example.org/soum/internal/check"
	"example.org/soum/units"
)

func BenchmarkAvailable(b *testing.B) {
	check.Speed(b, 8*units.HeightInch, func(h units.Height) (units.Yield, error) {
		return forage.Available(h, 3*units.HeightInch, 250*units.PoundPerAcreInch)
	})
}

func BenchmarkHayToHaul(b *testing.B) {
	check.Speed(b, 0.5, func(x float64) (units.FreshFeed, error) {
		return forage.HayToHaul(100, units.Fraction(x), 0.1, forage.WasteOfHauled)
	})
}

func BenchmarkHayDays(b *testing.B) {
	check.Speed(b, 0.5, func(x float64) (units.Days, error) { return forage.HayDays(100, 0.1, units.Fraction(x), 0.1, 10) })
}

func BenchmarkBaleWeight(b *testing.B) {
	check.Speed(b, 0.5, func(x float64) (units.FreshFeed, error) { return forage.BaleWeight(units.Length(x), 1.5, 180) })
}

func BenchmarkAlfalfaFibre(b *testing.B) {
	check.Speed(b, 0.5, func(x float64) (units.Fraction, error) {
		return forage.AlfalfaFibre(units.Height(x), forage.AlfalfaVegetative)
	})
}

func BenchmarkTetanyRatio(b *testing.B) {
	check.Speed(b, 0.5, func(x float64) (float64, error) { return forage.TetanyRatio(units.Fraction(x), 0.4, 0.2) })
}

func BenchmarkNitrateAs(b *testing.B) {
	check.Speed(b, 0.5, func(x float64) (units.Concentration, error) {
		return forage.NitrateAs(units.Concentration(x), forage.NitrateIon, forage.NitrateNitrogen)
	})
}

func BenchmarkQualityAfter(b *testing.B) {
	check.Speed(b, 0.5, func(x float64) (units.Fraction, error) {
		return forage.QualityAfter(0.5, forage.DriftProtein, units.Days(x))
	})
}
