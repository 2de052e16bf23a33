package herd_test

import (
	"testing"

	"example.org/soum/herd"
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
	b.ReportAllocs()
	w := 400 * units.LiveKilogram
	for b.Loop() {
		equivalentSink, _ = herd.TropicalUnits(w)
		w += 1e-9
	}
}

func BenchmarkNewZealandUnits(b *testing.B) {
	b.ReportAllocs()
	w := 60 * units.LiveKilogram
	for b.Loop() {
		equivalentSink, _ = herd.NewZealandUnits(w, 1.4)
		w += 1e-9
	}
}

func BenchmarkMerinoDrySheep(b *testing.B) {
	b.ReportAllocs()
	w := 52 * units.LiveKilogram
	for b.Loop() {
		equivalentSink, _ = herd.MerinoDrySheep(w, herd.MerinoLactatingTwin)
		w += 1e-9
	}
}

func BenchmarkConversion(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		equivalentSink, _ = herd.Conversion(herd.ReckoningAdultEquivalent, herd.ReckoningDrySheepMla)
	}
}

func BenchmarkAnimalUnits(b *testing.B) {
	b.ReportAllocs()
	w := 400 * units.LiveKilogram
	for b.Loop() {
		au, _ := herd.AnimalUnits(w)
		equivalentSink = float64(au)
		w += 1e-9
	}
}
