package herd_test

import (
	"testing"

	"example.org/soum/herd"
	"example.org/soum/internal/check"
	"example.org/soum/units"
)

var equivalentSink float64

// TestEquivalentFormulasTakeNoMemory: where all is well.
func TestEquivalentFormulasTakeNoMemory(t *testing.T) {
	w := 52 * units.LiveKilogram
	if n := testing.AllocsPerRun(100, func() {
		equivalentSink, _ = herd.TropicalUnits(w)
		equivalentSink, _ = herd.NewZealandUnits(w, 1.2)
		equivalentSink, _ = herd.MerinoDrySheep(w, herd.MerinoLactatingTwin)
		equivalentSink, _ = herd.Conversion(herd.ReckoningAdultEquivalent, herd.ReckoningDrySheepMla)
		rate, _ := herd.HeadPerArea(units.SquareMetre)
		equivalentSink = float64(rate)
	}); n != 0 {
		t.Errorf("%v allocations", n)
	}
}

func BenchmarkTropicalUnits(b *testing.B) {
	check.Speed(b, 400*units.LiveKilogram, func(w units.LiveWeight) (float64, error) { return herd.TropicalUnits(w) })
}

func BenchmarkNewZealandUnits(b *testing.B) {
	check.Speed(b, 60*units.LiveKilogram, func(w units.LiveWeight) (float64, error) { return herd.NewZealandUnits(w, 1.4) })
}

func BenchmarkMerinoDrySheep(b *testing.B) {
	check.Speed(b, 52*units.LiveKilogram, func(w units.LiveWeight) (float64, error) { return herd.MerinoDrySheep(w, herd.MerinoLactatingTwin) })
}

func BenchmarkConversion(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		equivalentSink, _ = herd.Conversion(herd.ReckoningAdultEquivalent, herd.ReckoningDrySheepMla)
	}
}

func BenchmarkAnimalUnits(b *testing.B) {
	check.Speed(b, 400*units.LiveKilogram, func(w units.LiveWeight) (units.AnimalUnits, error) { return herd.AnimalUnits(w) })
}
