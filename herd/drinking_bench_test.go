package herd_test

import (
	"testing"

	"example.org/soum/herd"
	"example.org/soum/internal/check"
	"example.org/soum/units"
)

// The benchmarks are to be read against the guard of as many arguments alone:
// BenchmarkAnswerOfThree.

func BenchmarkBeefWater(b *testing.B) {
	check.Speed(b, units.Celsius(25), func(warm units.Temperature) (units.WaterRate, error) { return herd.BeefWater(herd.DrinkerDryCow, warm) })
}

func BenchmarkCowWater(b *testing.B) {
	check.Speed(b, units.LiveWeight(600), func(weight units.LiveWeight) (units.WaterRate, error) { return herd.CowWater(weight, 5, 25) })
}

func BenchmarkHeatIndex(b *testing.B) {
	check.Speed(b, units.Celsius(30), func(warm units.Temperature) (float64, error) { return herd.HeatIndex(herd.HeatFahrenheit, warm, 0.5) })
}

func BenchmarkCoGrazing(b *testing.B) {
	check.Speed(b, 100.0, func(head float64) (float64, error) { return herd.CoGrazing(head, 0.6) })
}

func BenchmarkDietSulfur(b *testing.B) {
	check.Speed(b, 2000.0, func(ppm float64) (units.Fraction, error) { return herd.DietSulfur(ppm, 0.05, 12, 0.002) })
}

func BenchmarkHatchDays(b *testing.B) {
	check.Speed(b, units.Celsius(15), func(warm units.Temperature) (units.Days, error) { return herd.HatchDays(warm, 0.5) })
}

func BenchmarkNutrientReturned(b *testing.B) {
	check.Speed(b, units.Mass(1), func(mass units.Mass) (units.Mass, error) { return herd.NutrientReturned(mass, 0.25) })
}
