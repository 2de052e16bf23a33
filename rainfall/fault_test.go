package rainfall_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/internal/document"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// The helpers below hold an error to the grammar: its type, and that it tells all that
// its kind tells.

// refusedAt: something in a list, a record or a text is wrong. The error begins with the
// place and says what is wrong and what would be right.
func refusedAt(t testing.TB, err error, want string) {
	t.Helper()
	var wrong *document.Error
	require.ErrorAs(t, err, &wrong, want)
	assert.ErrorContains(t, err, want)
	assert.NotEmpty(t, wrong.Path, want)
	assert.NotEmpty(t, wrong.Problem, want)
	assert.NotEmpty(t, wrong.Allowed, want)
}

// impossible: an argument lies outside what is possible. It is named with its place.
func impossible(t testing.TB, err error, want string) {
	t.Helper()
	var domain *units.DomainError
	require.ErrorAs(t, err, &domain, want)
	assert.ErrorContains(t, err, want)
	assert.Regexp(t, `^rainfall\.[A-Z]`, domain.Function, want)
	assert.LessOrEqual(t, domain.Low, domain.High, want)
	assert.Positive(t, domain.Index, want)
}

// unknown: no table has the word. The argument is named, and what it takes.
func unknown(t testing.TB, err error, want string) {
	t.Helper()
	var word *units.ParseError
	require.ErrorAs(t, err, &word, want)
	assert.ErrorContains(t, err, want)
	assert.Regexp(t, `^rainfall\.[A-Z]`, word.Function, want)
	assert.NotEmpty(t, word.Argument, want)
	assert.Positive(t, word.Index, want)
	assert.NotEmpty(t, word.Accepts, want)
	assert.NotEmpty(t, word.Text, want)
}

// TestNothingComesWithAnError: what cannot be computed is NaN, never 0; where that cannot
// be, it is the zero value.
func TestNothingComesWithAnError(t *testing.T) {
	bad := []rainfall.MonthlyRain{rain(2000, 13, 10)}
	none := [12]units.RainDepth{}
	value := func(q float64) { t.Helper(); assert.True(t, math.IsNaN(q), q) }
	year, err := rainfall.YearTotal(bad, 2000)
	refusedAt(t, err, "record[0].month")
	value(float64(year))
	share, err := rainfall.KeyRainShare(0, nil, bad, none)
	refusedAt(t, err, "record[0].month")
	value(float64(share))
	share, err = rainfall.GrownShare("nowhere", 5, units.Low)
	unknown(t, err, `rainfall.GrownShare: place is "nowhere": no figure of this place; it takes one of: northern-great-plains`)
	value(float64(share))
	for _, end := range []units.End{-1, 0, 4} {
		values := map[string]func() (float64, error){
			"CropCoefficient": func() (float64, error) {
				return rainfall.CropCoefficient("pasture-rotated", rainfall.StageMid, end)
			},
			"CropUse": func() (float64, error) {
				v, err := rainfall.CropUse("alfalfa-utah", end)
				return float64(v), err
			},
			"DegreeDayTarget": func() (float64, error) {
				v, err := rainfall.DegreeDayTarget("first-nitrogen-netherlands", end)
				return float64(v), err
			},
			"GrownShare": func() (float64, error) {
				v, err := rainfall.GrownShare("miles-city", 7, end)
				return float64(v), err
			},
			"PuggingLoss": func() (float64, error) { v, err := rainfall.PuggingLoss(end); return float64(v), err },
			"SoilWater": func() (float64, error) {
				v, err := rainfall.SoilWater("loam", rainfall.SoilByCalifornia, end)
				return float64(v), err
			},
			"WaterUse": func() (float64, error) {
				v, err := rainfall.WaterUse("alfalfa-montana", end)
				return float64(v), err
			},
		}
		for name, of := range values {
			v, err := of()
			unknown(t, err, "rainfall."+name+": end is ")
			value(v)
		}
	}
}
