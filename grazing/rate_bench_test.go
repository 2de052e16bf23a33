package grazing_test

import (
	"testing"

	"example.org/soum/grazing"
	"example.org/soum/internal/check"
	"example.org/soum/units"
)

func BenchmarkUseOfYield(b *testing.B) {
	check.Speed(b, units.Yield(0.2), func(yield units.Yield) (units.UseRate, error) { return grazing.UseOfYield(yield, 0.25, 12) })
}

func BenchmarkGrazedArea(b *testing.B) {
	check.Speed(b, units.Area(1e5), func(area units.Area) (units.Area, error) { return grazing.GrazedArea(area, 0.3, 0.5) })
}

func BenchmarkGrazingDays(b *testing.B) {
	check.Speed(b, units.Yield(0.2), func(mass units.Yield) (units.Days, error) { return grazing.GrazingDays(mass, 0.12, 0.0025, 0.0005) })
}
