package units_test

import (
	"testing"

	"example.org/soum/internal/check"
)

// TestTheCompilerRefusesMixtures type-checks snippets that mix quantities: they
// must not compile, and their sound counterparts must.
func TestTheCompilerRefusesMixtures(t *testing.T) {
	check.Compile(t, []string{"units"}, [][2]string{
		{"var d units.Density = 250 * units.PoundPerAcreInch; _ = d", ""},
		{"h := 8*units.HeightInch - 3*units.HeightInch; _ = h", ""},
		{"h := units.Height(8 * units.PlateInch); _ = h", ""}, // said out loud it may be
		{"t := units.Celsius(20).Add(5 * units.CelsiusDegree); _ = t", ""},

		{"h := 8*units.HeightInch - 3*units.PlateInch; _ = h", "mismatched types"},
		{"var d units.Density = 250 * units.PlatePoundPerAcreInch; _ = d", "cannot use"},
		{"var d units.PlateDensity = 250 * units.PoundPerAcreInch; _ = d", "cannot use"},
		{"var h units.Height = 8 * units.Inch; _ = h", "cannot use"},
		{"var r units.RainDepth = 8 * units.HeightInch; _ = r", "cannot use"},
		{"b := 8*units.HeightInch > 3*units.PlateInch; _ = b", "mismatched types"},
		{"var f units.FreshFeed = 5 * units.DryMatterKilogram; _ = f", "cannot use"},
		{"var w units.LiveWeight = 5 * units.Kilogram; _ = w", "cannot use"},
		{"var y units.Yield = 5 * units.StockKilogramPerHectare; _ = y", "cannot use"},
		{"var u units.UnitRate = 5 * units.HeadPerAcre; _ = u", "cannot use"},
		{"t := units.Celsius(20) + 5*units.CelsiusDegree; _ = t", "mismatched types"},
		{"var t units.Temperature = units.FahrenheitDegree; _ = t", "cannot use"},
		{"var d units.Date = 3 * units.Day; _ = d", "cannot use"},
		{"_ = units.Money{} + units.Money{}", "operator + not defined"},
		{"_ = units.Celsius(20).Sub(5 * units.CelsiusDegree)", "cannot use"},
	})
}
