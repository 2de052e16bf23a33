package farm_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/forage"
	"example.org/soum/grazing/farm"
)

// TestHazardCautions changes what the document tells of the ewes' lane, on each
// side of the printed limit (Clemson: safe up to 1,000 ppm; tetany above a ratio of
// 2.2, and where magnesium is not above 0.2 %).
func TestHazardCautions(t *testing.T) {
	codes := []string{"nitrate", "prussic acid", "grass tetany", "fescue endophyte"}
	for _, c := range []struct {
		told string
		want []string
	}{
		{`"nitrate": "900 ppm"`, nil},
		{`"nitrate": "1100 ppm"`, []string{"nitrate"}},
		// 4 % K, 0.5 % Ca, 0.3 % Mg: 1,022.96 ÷ (249.5 + 246.79) = 2.06
		{`"potassium": "4 %", "calcium": "0.5 %", "magnesium": "0.3 %"`, nil},
		// 4 % K, 0.4 % Ca, 0.25 % Mg: 1,022.96 ÷ (199.6 + 205.66) = 2.52
		{`"potassium": "4 %", "calcium": "0.4 %", "magnesium": "0.25 %"`, []string{"grass tetany"}},
		{`"potassium": "2 %", "calcium": "0.8 %", "magnesium": "0.19 %"`, []string{"grass tetany"}},
		{`"infected": "0 %"`, nil},
		{`"infected": "60 %"`, []string{"fescue endophyte"}},
	} {
		holding := readSmall(t, `"height": "20 cm"`, `"height": "20 cm", `+c.told)
		var got []string
		for _, code := range cautions(plan(t, holding)) {
			if slices.Contains(codes, code) {
				got = append(got, code)
			}
		}
		assert.Equal(t, c.want, got, c.told)
		for _, raised := range plan(t, holding).Cautions { // the limits of print stand beside the number
			switch raised.Code {
			case "nitrate":
				assert.InDelta(t, 1000e-6, raised.Values["limit"], 1e-12)
			case "grass tetany":
				assert.Equal(t, []any{2.2, 0.002}, []any{raised.Values["limit"], raised.Values["needed"]})
			}
		}
	}
}

// TestPrussicCaution: a crop that makes prussic acid, entered under 30 in; taller,
// within 14 days of a frost, and later.
func TestPrussicCaution(t *testing.T) {
	holding := readSmall(t, `"note": "ours"`, `"note": "ours"`)
	row, err := forage.PastureByName(holding.Land[0].Pasture.Name)
	require.NoError(t, err)
	row.Name, row.PrussicAcid = "sudangrass of our own", true
	holding.Land[0].Pasture.Name, holding.Land[0].Pasture.Row = "", &row
	for _, c := range plan(t, holding).Cautions {
		if c.Code == "prussic acid" {
			assert.InDelta(t, 30*0.0254, c.Values["limit_m"], 1e-12) // the highest in print
			assert.Equal(t, "short", c.Values["class"])
		}
	}
	assert.Contains(t, cautions(plan(t, holding)), "prussic acid")

	factor := 76.3 / holding.Land[0].Height.Centimetres() // today's stand just above 30 in (76.2 cm)
	for _, h := range []*float64{(*float64)(&holding.Land[0].Height), (*float64)(&row.Ceiling)} {
		*h *= factor * 1.2
	}
	for i := range holding.Rotations {
		if slices.Contains(holding.Rotations[i].Land, holding.Land[0].ID) {
			holding.Rotations[i].TurnIn = holding.Land[0].Height
			holding.Rotations[i].Land = []string{holding.Land[0].ID}
		}
	}
	tall := plan(t, holding)
	require.NotEmpty(t, tall.Moves)
	assert.NotContains(t, cautions(tall), "prussic acid")
	frost := holding.Today.Add(-1)
	holding.Land[0].Frosted = &frost
	assert.Contains(t, cautions(plan(t, holding)), "prussic acid")
	long := holding.Today.Add(-200)
	holding.Land[0].Frosted = &long
	assert.NotContains(t, cautions(plan(t, holding)), "prussic acid")
}

// TestBadStandTests puts one thing wrong at a time.
func TestBadStandTests(t *testing.T) {
	for told, path := range map[string]string{
		`"nitrate": "-5 ppm"`:     "land[0].nitrate",
		`"potassium": "3 %"`:      "land[0]",
		`"potassium": "130 %"`:    "land[0].potassium",
		`"infected": "120 %"`:     "land[0].infected",
		`"frosted": "2099-01-01"`: "land[0].frosted",
	} {
		_, err := farm.Read([]byte(changed(t, `"height": "20 cm"`, `"height": "20 cm", `+told)))
		assert.ErrorContains(t, err, path+":", told)
	}
}
