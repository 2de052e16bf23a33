package rainfall_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// TestClassBounds is a second reading of the bounds as they are printed, driest
// first; * is an open end.
func TestClassBounds(t *testing.T) {
	want := map[rainfall.ClassScheme]string{
		rainfall.SchemeIndex:         "*..-2 -1.99..-1.5 -1.49..-1 -0.99..0.99 1..1.49 1.5..1.99 2..*",
		rainfall.SchemeIndexOlder:    "*..-2 -1.99..-1.5 -1.49..-1 -0.99..0 0..*",
		rainfall.SchemeMonitorIndex:  "*..-2 -1.9..-1.6 -1.5..-1.3 -1.2..-0.8 -0.7..-0.5 -0.4..*",
		rainfall.SchemeMonitorPalmer: "*..-5 -4.9..-4 -3.9..-3 -2.9..-2 -1.9..-1 -0.9..*",
		rainfall.SchemeMonitorWhole:  "0..2 3..5 6..10 11..20 21..30 31..100",
		rainfall.SchemeMonitorBounds: "0..2 2..5 5..10 10..20 20..30 98..100 95..98 90..95 80..90 70..80 30..70",
		rainfall.SchemeDecilePairs:   "1..2 3..4 5..6 7..8 9..10",
		rainfall.SchemeDecileSplit:   "1..1 2..3 4..7 8..9 10..10",
		rainfall.SchemePercentOfYear: "75..* 0..75",
	}
	got := map[rainfall.ClassScheme][]string{}
	for _, r := range rainfall.ClassRows() {
		low, high := fmt.Sprint(r.Low), fmt.Sprint(r.High)
		if r.LowOpen {
			low = "*"
		}
		if r.HighOpen {
			high = "*"
		}
		got[r.Scheme] = append(got[r.Scheme], low+".."+high)
	}
	for scheme, bounds := range want {
		assert.Equal(t, bounds, strings.Join(got[scheme], " "), scheme)
	}
}

// TestWholeFigures: figures printed without decimals are held to the digit.
func TestWholeFigures(t *testing.T) {
	want := map[string][2]float64{
		"lucerne-canterbury": {21, 21}, "cocksfoot-white-clover-canterbury": {9, 9}, "annual-pasture-western-australia": {28, 28},
		"grass-kwazulu-natal": {7.02, 7.98}, // 7.5 ± 0.48
		"arid-range-good":     {3, 6}, "arid-range-run-down": {0, 1},
	}
	for _, r := range rainfall.WaterUseRows() {
		if w, is := want[r.Name]; is {
			assert.InDelta(t, w[0], float64(r.Use.Low/units.UseKilogramPerHectareMillimetre), 1e-9, r.Name)
			assert.InDelta(t, w[1], float64(r.Use.High/units.UseKilogramPerHectareMillimetre), 1e-9, r.Name)
			delete(want, r.Name)
		}
	}
	assert.Empty(t, want)
	grown := ""
	for _, r := range rainfall.ForageByDateRows() {
		grown += fmt.Sprintf("%d %.2f-%.2f %s; ", r.Month, r.Grown.Low.Percent(), r.Grown.High.Percent(), r.Source)
	}
	assert.Equal(t, "5 35.00-35.00 HEITSCHMIDT-2004; 6 69.00-69.00 HEITSCHMIDT-2004; 7 91.00-91.00 HEITSCHMIDT-2004; "+
		"7 90.00-90.00 MILES-CITY-FORAGE; 7 80.00-80.00 NDSU-SPRING; 8 80.00-80.00 NDSU-SPRING; "+
		"7 90.00-90.00 NDSU-BALANCING; 9 90.00-90.00 NDSU-BALANCING; 7 75.00-90.00 SDSU-MAY-RULE; ", grown)
}
