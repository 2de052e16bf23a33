package rainfall_test

import (
	"testing"

	"example.org/soum/internal/check"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

func BenchmarkHargreavesSamani(b *testing.B) {
	check.Speed(b, units.Temperature(25), func(high units.Temperature) (units.RainRate, error) { return rainfall.HargreavesSamani(high, 12, 40) })
}

func BenchmarkPenmanMonteith(b *testing.B) {
	check.Speed(b, units.Temperature(17), func(mean units.Temperature) (units.RainRate, error) {
		return rainfall.PenmanMonteith(0.122, 13.28, 0, 0.0666, mean, 170000, 2, 1.4)
	})
}

// Exponentials and angles by the dozen: it cannot be as short as a product.
func BenchmarkReferenceWater(b *testing.B) {
	check.Speed(b, units.Temperature(21.5), func(high units.Temperature) (units.RainRate, error) {
		return rainfall.ReferenceWater(100, 41, high, 12.3, 1.4, 170000, 22, 0)
	})
}

func BenchmarkExtraterrestrialRadiation(b *testing.B) {
	check.Speed(b, units.Angle(0.8), func(latitude units.Angle) (units.Radiation, error) {
		return rainfall.ExtraterrestrialRadiation(latitude, 187)
	})
}
