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
