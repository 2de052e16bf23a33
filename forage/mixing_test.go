package forage_test

import (
	"testing"

	"example.org/soum/internal/check"
)

// TestTheCompilerKeepsHeightsApart type-checks snippets: heights against a ruler
// and under a plate, their densities and their calibrations cannot take each
// other's place.
func TestTheCompilerKeepsHeightsApart(t *testing.T) {
	const ruler, plate = "8*units.HeightInch, 4*units.HeightInch", "8*units.PlateInch, 4*units.PlateInch"
	check.Compile(t, []string{"forage", "units"}, [][2]string{
		{"_, _ = forage.Available(" + ruler + ", 250*units.PoundPerAcreInch)", ""},
		{"_, _ = forage.PlateAvailable(" + plate + ", 567*units.PlatePoundPerAcreInch)", ""},
		{"_, _ = forage.MeanHeight([]units.Height{units.HeightInch}, 0.95)", ""},
		{"_, _ = forage.RulerMass(forage.RulerCalibration{}, units.HeightInch, 20, 0.95)", ""},
		{"_, _ = forage.PlateMass(forage.PlateCalibration{}, units.PlateInch, 20, 0.95)", ""},

		{"_, _ = forage.Available(" + plate + ", 250*units.PoundPerAcreInch)", "cannot use"},
		{"_, _ = forage.Available(" + ruler + ", 567*units.PlatePoundPerAcreInch)", "cannot use"},
		{"_, _ = forage.Available(8*units.HeightInch, 4*units.PlateInch, 250*units.PoundPerAcreInch)", "cannot use"},
		{"_, _ = forage.PlateAvailable(" + ruler + ", 567*units.PlatePoundPerAcreInch)", "cannot use"},
		{"_, _ = forage.PlateAvailable(" + plate + ", 250*units.PoundPerAcreInch)", "cannot use"},
		{"_, _ = forage.PlateCover(8*units.HeightInch, 567*units.PlatePoundPerAcreInch, 0*units.PoundPerAcre)", "cannot use"},
		{"_, _ = forage.CurveMass(8*units.PlateInch, forage.Thick)", "cannot use"},
		{"_, _ = forage.MeanHeight([]units.Height{units.PlateInch}, 0.95)", "cannot use"},
		{"_, _ = forage.MeanPlateHeight([]units.Height{units.HeightInch}, 0.95)", "cannot use"},
		{"_, _ = forage.CalibratePlate([]units.Height{}, []units.Yield{}, false)", "cannot use"},
		{"_, _ = forage.RulerMass(forage.PlateCalibration{}, units.HeightInch, 20, 0.95)", "cannot use"},
		{"_, _ = forage.PlateMass(forage.PlateCalibration{}, units.HeightInch, 20, 0.95)", "cannot use"},
		{"_ = forage.RulerCalibration{Slope: 452 * units.PlateKilogramPerHectareCentimetre}", "cannot use"},
	})
}
