package farm_test

import (
	"strings"
	"testing"

	"example.org/soum/grazing/farm"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// dryNormals are the normals of an invented place; in April to June 240 mm fall.
const dryNormals = `"normal": ["20 mm", "20 mm", "30 mm", "60 mm", "93 mm", "87 mm", "50 mm", "50 mm", "50 mm", "50 mm", "30 mm", "20 mm"]`

// keyed is the small farm with the plot on a pasture of the user's own, whose key
// months are April and May, and with rain.
func keyed(t *testing.T, months string) *farm.Farm {
	t.Helper()
	text := changed(t, `"note": "ours"`, `"rain": {`+dryNormals+`, "months": {`+months+`}}`)
	text = strings.Replace(text, `"pasture": "bluegrass-clover"`, `"pasture": `+handPasture, 1)
	holding, err := farm.Read([]byte(text))
	require.NoError(t, err)
	return holding
}

// droughtDate finds the date of a source on a day, and of land.
func droughtDate(t *testing.T, p *farm.Plan, day, source, land string) *farm.DroughtDate {
	t.Helper()
	for i := range p.Drought {
		d := &p.Drought[i]
		if d.Date.String() == day && d.Source == source && strings.Join(d.Land, ",") == land {
			return d
		}
	}
	t.Fatalf("no date %s of %s for %q in %v", day, source, land, p.Drought)
	return nil
}

// TestDroughtDatesByHand. Normal by 15 April: 20 + 20 + 30 + 60 × 14 ÷ 30 = 98 mm,
// three quarters 73.5. From April to 20 May: 60 + 93 × 20 ÷ 31 = 120, half 60. April
// to June: 240, three quarters 180, half 120. The plot's April: 60, three quarters
// 45; April and May: 153, three quarters 114.75.
func TestDroughtDatesByHand(t *testing.T) {
	const keys = "NDMC-DATES, NDSU-SPRING"
	p := plan(t, keyed(t, `"2001-04": "40 mm", "2001-05": "19 mm"`))
	for _, c := range []struct {
		day, since, source, land string
		normal, figure, rain     float64
		below, cut               float64
		soFar                    farm.RainSoFar
	}{
		{"2001-04-15", "2001-01-01", "CHERRY-TRIGGER", "", 98, 73.5, 0, 0.75, 0.10, farm.SoFarUnknown},
		{"2001-05-21", "2001-04-01", "SDSU-MAY-RULE", "", 120, 60, 40, 0.50, 0, farm.SoFarShort}, // 40, and all of May with it 59
		{"2001-07-01", "2001-04-01", "NDSU-SPRING", "", 240, 180, 59, 0.75, 0.25, farm.SoFarUnknown},
		{"2001-07-01", "2001-04-01", "NDSU-JULY-RULE", "", 240, 120, 59, 0.50, 0.30, farm.SoFarUnknown},
		{"2001-05-01", "2001-04-01", keys, "plot", 60, 45, 40, 0.75, 0.25, farm.SoFarShort},
		{"2001-06-01", "2001-04-01", keys, "plot", 153, 114.75, 59, 0.75, 0.25, farm.SoFarShort},
	} {
		d := droughtDate(t, p, c.day, c.source, c.land)
		assert.Equal(t, c.since, d.Since.String(), c.source)
		assert.InDelta(t, c.normal, millimetres(d.Normal), 1e-9, c.source)
		assert.InDelta(t, c.figure, millimetres(d.Figure), 1e-9, c.source)
		assert.InDelta(t, c.rain, millimetres(d.Rain), 1e-9, c.source)
		assert.InDelta(t, c.below, float64(d.Below), 1e-12, c.source)
		assert.InDelta(t, c.cut, float64(d.CutLow), 1e-12, c.source)
		assert.InDelta(t, c.cut, float64(d.CutHigh), 1e-12, c.source)
		assert.Equal(t, c.soFar, d.SoFar, "%s %s", c.day, c.source)
		assert.NotEmpty(t, d.Act)
		assert.Equal(t, c.land == "", d.Place != "", c.source)
	}
	for i := range p.Drought {
		d := &p.Drought[i]
		assert.Equal(t, 2001, d.Date.Year())
		assert.LessOrEqual(t, d.Date, p.To)
		assert.True(t, i == 0 || p.Drought[i-1].Date <= d.Date)
	}
	printed := 0
	for i := range p.Drought {
		if p.Drought[i].Place != "" {
			printed++
		}
	}
	assert.Equal(t, 4, printed) // once each, whatever the land
}

// TestRainSoFar: the months known decide, where they can.
func TestRainSoFar(t *testing.T) {
	for _, c := range []struct {
		months, day, source, land string
		want                      farm.RainSoFar
	}{
		{`"2001-04": "60 mm"`, "2001-05-21", "SDSU-MAY-RULE", "", farm.SoFarEnough},                      // 60, whatever May brings
		{`"2001-04": "59 mm"`, "2001-05-21", "SDSU-MAY-RULE", "", farm.SoFarUnknown},                     // May is not known
		{`"2001-04": "40 mm", "2001-05": "20 mm"`, "2001-05-21", "SDSU-MAY-RULE", "", farm.SoFarUnknown}, // 40 to 60: the day decides
		{`"2001-05": "300 mm"`, "2001-05-21", "SDSU-MAY-RULE", "", farm.SoFarUnknown},                    // it may have fallen after the 20th
		{`"2001-04": "45 mm"`, "2001-05-01", "NDMC-DATES, NDSU-SPRING", "plot", farm.SoFarEnough},
		{`"2001-04": "44 mm"`, "2001-05-01", "NDMC-DATES, NDSU-SPRING", "plot", farm.SoFarShort},
		{`"2000-04": "44 mm"`, "2001-05-01", "NDMC-DATES, NDSU-SPRING", "plot", farm.SoFarUnknown},
	} {
		d := droughtDate(t, plan(t, keyed(t, c.months)), c.day, c.source, c.land)
		assert.Equal(t, c.want, d.SoFar, "%s on %s", c.months, c.day)
	}
}

// TestDroughtDatesOverTheTurnOfTheYear: key months November and January end their
// run in the plan's year, and the run of that year is beyond the season.
func TestDroughtDatesOverTheTurnOfTheYear(t *testing.T) {
	text := changed(t, `"note": "ours"`, `"rain": {`+dryNormals+`, "months": {"2000-11": "10 mm", "2000-12": "99 mm", "2001-01": "10 mm"}}`)
	text = strings.Replace(text, `"pasture": "bluegrass-clover"`, `"pasture": `+strings.Replace(handPasture, `"key_months": [4, 5]`, `"key_months": [11, 1]`, 1), 1)
	holding, err := farm.Read([]byte(text))
	require.NoError(t, err)
	p := plan(t, holding)
	d := droughtDate(t, p, "2001-02-01", "NDMC-DATES, NDSU-SPRING", "plot")
	assert.Equal(t, "2000-11-01", d.Since.String())
	assert.InDelta(t, 50, millimetres(d.Normal), 1e-9) // 30 + 20: December counts not,
	assert.InDelta(t, 20, millimetres(d.Rain), 1e-9)
	assert.Equal(t, farm.SoFarShort, d.SoFar)
}

// TestNoNormalsNoDroughtPlan: without twelve normals there is no figure.
func TestNoNormalsNoDroughtPlan(t *testing.T) {
	assert.Empty(t, plan(t, readSmall(t, `"note": "ours"`, `"rain": {"year": "600 mm"}`)).Drought)
}

// TestDroughtDatesAtTheEndsOfTheCalendar: the years before the first and after the
// last are none, and nothing of them gets into a plan.
func TestDroughtDatesAtTheEndsOfTheCalendar(t *testing.T) {
	for _, year := range []string{"0001", "9999"} {
		text := strings.ReplaceAll(changed(t, `"note": "ours"`, `"rain": {`+dryNormals+`}`), "2001-", year+"-")
		text = strings.Replace(text, `, "grazed": "`+year+`-03-01"`, "", 1)
		holding, err := farm.Read([]byte(text))
		require.NoError(t, err)
		require.NotEmpty(t, plan(t, holding).Drought)
		for _, d := range plan(t, holding).Drought {
			assert.Equal(t, year, d.Date.String()[:4])
			assert.Equal(t, year, d.Since.String()[:4])
		}
	}
	text := changed(t, `"note": "ours"`, `"rain": {`+dryNormals+`, "months": {"2001-04": "1000 m"}}`)
	holding, err := farm.Read([]byte(text))
	require.NoError(t, err)
	assert.NotEmpty(t, plan(t, holding).Drought)
}

// TestMoreRainThanFalls refuses with its path what package rainfall would refuse
// without one.
func TestMoreRainThanFalls(t *testing.T) {
	for path, rain := range map[string]string{
		"rain.normal[0]":      `"normal": ` + strings.Replace(twelve("1 mm"), "1 mm", "1001 m", 1),
		"rain.months.2001-12": `"months": {"2001-12": "1001 m"}`,
	} {
		_, err := farm.Read([]byte(changed(t, `"note": "ours"`, `"rain": {`+rain+`}`)))
		require.ErrorContains(t, err, path+": ")
		require.ErrorContains(t, err, "at most 1,000,000 mm")
	}
}
