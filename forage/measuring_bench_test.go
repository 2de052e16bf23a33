package forage_test

import (
	"testing"

	"example.org/soum/forage"
	"example.org/soum/internal/check"
	"example.org/soum/units"
)

func BenchmarkClippedYield(b *testing.B) {
	check.Speed(b, 1*units.FreshKilogram, func(sample units.FreshFeed) (units.Yield, error) { return forage.ClippedYield(sample, 0.2, 0.25) })
}

func BenchmarkPlateCover(b *testing.B) {
	check.Speed(b, 8*units.PlateCentimetre, func(height units.PlateHeight) (units.Yield, error) { return forage.PlateCover(height, 2.5, 0.03) })
}

func BenchmarkCurveMass(b *testing.B) {
	check.Speed(b, 8*units.HeightInch, func(height units.Height) (units.Yield, error) { return forage.CurveMass(height, forage.Thick) })
}

func BenchmarkRootStop(b *testing.B) {
	check.Speed(b, 55*units.Percent, func(removed units.Fraction) (units.Fraction, error) {
		return forage.RootStop(removed, forage.RootTestThird)
	})
}

func BenchmarkRestFromGrowth(b *testing.B) {
	check.Speed(b, units.Yield(0.15), func(leave units.Yield) (units.Days, error) { return forage.RestFromGrowth(leave, 0.28, 0.006) })
}

func BenchmarkTurnInCover(b *testing.B) {
	check.Speed(b, units.Demand(80), func(demand units.Demand) (units.Yield, error) { return forage.TurnInCover(demand, 40000, 20, 0.15) })
}
