package herd_test

import (
	"encoding/csv"
	"errors"
	"fmt"
	"math"
	"os"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/herd"
	"example.org/soum/units"
)

// printedRows reads a file of testdata that a test of its own runs.
func printedRows(t *testing.T, path string) [][]string {
	t.Helper()
	f, err := os.Open(path)
	require.NoError(t, err)
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	rows, err := r.ReadAll()
	require.NoError(t, err)
	return rows
}

func numberOf(t *testing.T, cell string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(cell, 64)
	require.NoError(t, err)
	return v
}

// TestCriticalTemperatureAsPrinted compares all cells with a second reading.
func TestCriticalTemperatureAsPrinted(t *testing.T) {
	rows := printedRows(t, "testdata/critical_temperature.csv")
	require.Len(t, rows, 11)
	for _, row := range rows[1:] {
		var coat herd.Coat
		require.NoError(t, coat.UnmarshalText([]byte(row[0])))
		for i, flesh := range []herd.Flesh{herd.FleshThin, herd.FleshAverage, herd.FleshFleshy} {
			got, err := herd.CriticalTemperature(coat, flesh)
			require.NoError(t, err)
			assert.InDelta(t, numberOf(t, row[1+i]), got.Fahrenheit(), 1e-9, row[0])
		}
	}
}

// TestWindChillAsPrinted compares all cells with a second reading.
func TestWindChillAsPrinted(t *testing.T) {
	rows := printedRows(t, "testdata/wind_chill.csv")
	require.Len(t, rows, 4)
	cells := 0
	for _, row := range rows[1:] {
		for i := 1; i < len(row); i++ {
			got, err := herd.WindChill(units.Fahrenheit(numberOf(t, rows[0][i])), units.Speed(numberOf(t, row[0]))*units.MilePerHour, herd.ChillTable)
			require.NoError(t, err)
			assert.InDelta(t, numberOf(t, row[i]), got.Fahrenheit(), 1e-9, "%s mph, %s °F", row[0], rows[0][i])
			cells++
		}
	}
	assert.Equal(t, 24, cells)
}

// TestWindChillBetweenCells: the middle of four cells is their mean, and the
// rough rule is one degree a mile.
func TestWindChillBetweenCells(t *testing.T) {
	for _, c := range []struct {
		degrees, mph float64
		rule         herd.ChillRule
		want, within float64
		why          string
	}{
		{15, 25, herd.ChillTable, (-10 + 0 - 26 - 16) / 4., 1e-9, "mean of 10 and 20 °F, 20 and 30 mph"},
		{-7.5, 10, herd.ChillTable, (-21 - 16) / 2., 1e-9, "mean of -10 and -5 °F"},
		{40, 15, herd.ChillTable, (28 + 19) / 2., 1e-9, "mean of 10 and 20 mph"},
		{25, 20, herd.ChillTable, 4, 0.5, "NDSU-COLD prints 4 °F for 25 °F and 20 mph, a table of its own; the line from 0 to 9 gives 4.5"},
		{5, 10, herd.ChillRough, -5, 1e-9, "METEER-COLD prints -5 °F"},
		{30, 40, herd.ChillRough, -10, 1e-9, "30 less 40"},
	} {
		got, err := herd.WindChill(units.Fahrenheit(c.degrees), units.Speed(c.mph)*units.MilePerHour, c.rule)
		require.NoError(t, err, c.why)
		assert.InDelta(t, c.want, got.Fahrenheit(), c.within+1e-9, c.why)
	}
}

// TestWindChillEnds: beyond the table its end, beside an error that names what
// lies outside.
func TestWindChillEnds(t *testing.T) {
	for _, c := range []struct {
		degrees, mph, want float64
		argument           string
	}{
		{-11, 10, -21, "temperature"}, {41, 30, 3, "temperature"}, {20, 9, 8, "wind"}, {20, 31, -16, "wind"}, {20, 0, 8, "wind"}, {50, 40, 3, "temperature"},
	} {
		got, err := herd.WindChill(units.Fahrenheit(c.degrees), units.Speed(c.mph)*units.MilePerHour, herd.ChillTable)
		var ranged *units.RangeError
		require.True(t, errors.As(err, &ranged), c)
		assert.Equal(t, c.argument, ranged.Argument)
		assert.Equal(t, "NEB-COLD", ranged.Source)
		assert.InDelta(t, c.want, got.Fahrenheit(), 1e-9)
	}
}

// TestWindChillFalls with more wind and with less warmth.
func TestWindChillFalls(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		degrees := rapid.Float64Range(-10, 40).Draw(t, "degrees")
		mph := rapid.Float64Range(10, 30).Draw(t, "mph")
		colder := rapid.Float64Range(0, 20).Draw(t, "colder")
		windier := rapid.Float64Range(0, 20).Draw(t, "windier")
		mild, _ := herd.WindChill(units.Fahrenheit(degrees), units.Speed(mph)*units.MilePerHour, herd.ChillTable)
		raw, _ := herd.WindChill(units.Fahrenheit(degrees-colder), units.Speed(mph+windier)*units.MilePerHour, herd.ChillTable)
		if raw > mild+1e-9 {
			t.Fatalf("%v then %v", mild, raw)
		}
	})
}

// TestColdExample works the printed example through: 14 °F of cold, 12.7 × 1.14 =
// 14.48 lb, 1.78 lb more, 3.2 lb of forage of 56 %.
func TestColdExample(t *testing.T) {
	critical, err := herd.CriticalTemperature(herd.CoatShortHeavyWinter, herd.FleshAverage)
	require.NoError(t, err)
	chill := units.Fahrenheit(4)
	assert.InDelta(t, 14, float64(critical.Sub(chill)/units.FahrenheitDegree), 1e-9)
	need, err := herd.FeedNeed(herd.NeedCowLateGestation, herd.FeedDigestible)
	require.NoError(t, err)
	more, err := herd.ColdNeed(need, critical, chill, herd.ColdOnePercent)
	require.NoError(t, err)
	assert.InDelta(t, 14.48, (need + more).PoundsPerDay(), 0.005)
	forage, err := herd.ExtraForage(more, 56*units.Percent)
	require.NoError(t, err)
	assert.InDelta(t, 3.2, forage.PoundsPerDay(), 0.05)
}

// TestColdRulesDisagree: a wet coat costs the same or twice as much, by the source.
func TestColdRulesDisagree(t *testing.T) {
	need := func(rule herd.ColdRule) float64 {
		more, err := herd.ColdNeed(units.NutrientPoundPerDay, units.Fahrenheit(59), units.Fahrenheit(49), rule)
		require.NoError(t, err)
		return more.PoundsPerDay()
	}
	for rule, want := range map[herd.ColdRule]float64{herd.ColdOnePercent: 0.1, herd.ColdTwoPercent: 0.2, herd.ColdIowa: 0.07, herd.ColdPurdue: 0.13} {
		assert.InDelta(t, want, need(rule), 1e-12, rule)
	}
	warm, err := herd.ColdNeed(units.NutrientPoundPerDay, units.Fahrenheit(59), units.Fahrenheit(80), herd.ColdTwoPercent)
	require.NoError(t, err)
	assert.False(t, math.Signbit(float64(warm)))
	assert.Zero(t, warm)
}

// At what wind chill does a thin cow in a wet winter coat feel the cold?
func ExampleCriticalTemperature() {
	critical, err := herd.CriticalTemperature(herd.CoatWetWinter, herd.FleshThin)
	fmt.Printf("%.0f °F %v\n", critical.Fahrenheit(), err)
	// Output:
	// 63 °F <nil>
}

// How cold is 20 °F in a wind of 30 miles an hour?
func ExampleWindChill() {
	for _, rule := range []herd.ChillRule{herd.ChillTable, herd.ChillRough} {
		felt, err := herd.WindChill(units.Fahrenheit(20), 30*units.MilePerHour, rule)
		fmt.Printf("%v %.0f °F %v\n", rule, felt.Fahrenheit(), err)
	}
	// Output:
	// table -16 °F <nil>
	// rough -10 °F <nil>
}

// A cow that needs 12.7 lb of digestible nutrients is critical at 18 °F and feels
// 4 °F: how much more does she need?
func ExampleColdNeed() {
	more, err := herd.ColdNeed(12.7*units.NutrientPoundPerDay, units.Fahrenheit(18), units.Fahrenheit(4), herd.ColdOnePercent)
	fmt.Printf("%.2f lb %v\n", more.PoundsPerDay(), err)
	// Output:
	// 1.78 lb <nil>
}

// And how much hay of 56 % is that?
func ExampleExtraForage() {
	hay, err := herd.ExtraForage(1.78*units.NutrientPoundPerDay, 56*units.Percent)
	fmt.Printf("%.1f lb of dry matter %v\n", hay.PoundsPerDay(), err)
	// Output:
	// 3.2 lb of dry matter <nil>
}
