package forage_test

import (
	"encoding/json"
	"math"
	"slices"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/forage"
	"example.org/soum/units"
)

func TestPasturesHoldWhatTheyPromise(t *testing.T) {
	assert.NotEmpty(t, forage.Pastures())
	for _, p := range forage.Pastures() {
		t.Run(p.Name, func(t *testing.T) {
			sum := 0.0
			for _, share := range p.Shares {
				sum += share.Percent()
			}
			// The printed rows are solved month by month and sum to 97 to 102.7.
			assert.GreaterOrEqual(t, sum, 97-1e-9)
			assert.LessOrEqual(t, sum, 102.7+1e-9)

			assert.Less(t, p.YieldLow, p.YieldMedium)
			assert.Less(t, p.YieldMedium, p.YieldHigh)

			assert.Greater(t, p.Leave.Low, units.Height(0))
			assert.LessOrEqual(t, p.Leave.Low, p.Leave.High)
			assert.LessOrEqual(t, p.Leave.High, p.TurnIn.Low)
			assert.LessOrEqual(t, p.TurnIn.Low, p.TurnIn.High)
			assert.InDelta(t, 2*p.TurnIn.High.Inches(), p.Ceiling.Inches(), 1e-9, "the ceiling is twice the upper turn-in height: ours")

			_, err := p.Density(forage.Good)
			assert.NoError(t, err)
			assert.Zero(t, p.Legume, "no source says the share of legume")
			for _, mark := range []string{p.DensityMark, p.HeightMark, p.GrowthMark, p.KeyMonthsMark} {
				assert.Contains(t, []string{"A", "B", "D"}, mark)
			}
			for _, source := range []string{p.DensitySource, p.HeightSource, p.GrowthSource, p.KeyMonthsSource} {
				assert.NotEmpty(t, source)
			}
			assert.NotEmpty(t, p.Note)

			assert.Equal(t, p.HoldsLegume, p.MayBloat)
			assert.Equal(t, p.Name == "tall-fescue", p.Endophyte)
			assert.False(t, p.PrussicAcid, "none of the rows is a sorghum")
			assert.Equal(t, p.MayBloat || p.Endophyte, p.DangerSource != "")
		})
	}
}

// Print: April to June decide cool-season grass (North Dakota State, 2020), May
// to July warm-season grass (the same author in another article).
func TestKeyMonths(t *testing.T) {
	for _, p := range forage.Pastures() {
		want := []int{4, 5, 6}
		if p.Name == "warm-season-grass" {
			want = []int{5, 6, 7}
		}
		assert.Equal(t, want, p.KeyMonths, p.Name)
	}
}

func TestPasturesAreCopies(t *testing.T) {
	first := forage.Pastures()
	first[0].KeyMonths[0], first[0].Shares[4] = 11, 0
	again, err := forage.PastureByName(first[0].Name)
	require.NoError(t, err)
	assert.Equal(t, 4, again.KeyMonths[0])
	assert.Equal(t, 45*units.Percent, again.Shares[4])
}

func TestPastureByName(t *testing.T) {
	p, err := forage.PastureByName("tall-fescue")
	require.NoError(t, err)
	assert.Equal(t, "tall-fescue", p.Name)

	_, err = forage.PastureByName("moss")
	for _, row := range []string{"bluegrass-clover", "orchardgrass-legume", "timothy-legume", "ryegrass-clover", "tall-fescue", "mixed-pasture", "warm-season-grass"} {
		assert.ErrorContains(t, err, row)
	}
	for _, look := range []func() error{
		func() error { _, err := forage.DensityOf("moss", forage.Good, units.Low); return err },
		func() error { _, err := forage.TurnInOf("moss", units.Low); return err },
		func() error { _, err := forage.LeaveOf("moss", units.Low); return err },
		func() error { _, err := forage.YieldOf("moss", forage.ProductivityLow); return err },
		func() error { _, err := forage.ShareOf("moss", time.May); return err },
	} {
		assert.ErrorContains(t, look(), "no such row")
	}
}

// TestNoRowIsNoNumber: what is refused is not nought, and an end that is none is not
// the middle.
func TestNoRowIsNoNumber(t *testing.T) {
	for _, look := range []func(string, units.End) (float64, error){
		func(name string, end units.End) (float64, error) {
			v, err := forage.DensityOf(name, forage.Good, end)
			return float64(v), err
		},
		func(name string, end units.End) (float64, error) {
			v, err := forage.TurnInOf(name, end)
			return float64(v), err
		},
		func(name string, end units.End) (float64, error) {
			v, err := forage.LeaveOf(name, end)
			return float64(v), err
		},
		func(name string, end units.End) (float64, error) {
			v, err := forage.CropYield(name, end)
			return float64(v), err
		},
	} {
		got, err := look("moss", units.Low)
		var wrong *units.ParseError
		require.ErrorAs(t, err, &wrong)
		assert.True(t, math.IsNaN(got))
		assert.Equal(t, 1, wrong.Index)
		for _, end := range []units.End{-1, 0, 4, 7} {
			got, err = look("tall-fescue", end)
			refuses(t, err, "end")
			assert.True(t, math.IsNaN(got))
		}
	}
	share, err := forage.ShareOf("moss", time.May)
	assert.True(t, units.Impossible(err) && math.IsNaN(float64(share)))
	yield, err := forage.Pasture{}.Yield(0)
	assert.True(t, units.Impossible(err) && math.IsNaN(float64(yield)))
	span, err := forage.Pasture{}.Density(7)
	assert.True(t, units.Impossible(err) && math.IsNaN(float64(span.Low)) && math.IsNaN(float64(span.High)))
	span, err = forage.Pasture{}.Density(forage.Good)
	assert.True(t, units.Impossible(err) && math.IsNaN(float64(span.Low)) && math.IsNaN(float64(span.High)))
}

func TestUnpublishedDensityIsSaid(t *testing.T) {
	for _, c := range []forage.Condition{forage.Fair, forage.Excellent} {
		_, err := forage.DensityOf("warm-season-grass", c, units.Middle)
		assert.ErrorContains(t, err, "no density for a "+c.String()+" stand")
	}
	_, err := forage.DensityOf("tall-fescue", 0, units.Middle)
	assert.ErrorContains(t, err, "fair, good, excellent")
	_, err = forage.Pasture{Name: "x", Good: units.Span[units.Density]{Low: 2, High: units.Density(math.NaN())}}.Density(forage.Good)
	assert.Error(t, err)
	_, err = forage.YieldOf("tall-fescue", 4)
	assert.ErrorContains(t, err, "low, medium, high")
	for _, month := range []time.Month{0, 13} {
		_, err = forage.ShareOf("tall-fescue", month)
		assert.ErrorContains(t, err, "must be from 1 to 12")
	}
}

func TestPastureReadsFromText(t *testing.T) {
	var p forage.Pasture
	require.NoError(t, json.Unmarshal([]byte(`{
		"name": "home-meadow", "density_good": {"low": "200 lb/ac/in", "high": "260 lb/ac/in"},
		"turn_in": {"low": "8 in", "high": "10 in"}, "leave": {"low": "4 in", "high": "4 in"}, "ceiling": "20 in",
		"yield_medium": "3 short ton/ac", "shares": ["0 %", "0 %", "0 %", "10 %", "30 %"], "key_months": [4, 5]}`), &p))
	span, err := p.Density(forage.Good)
	require.NoError(t, err)
	assert.InDelta(t, 230, span.At(units.Middle).PoundsPerAcreInch(), 1e-9)
	assert.InDelta(t, 30, p.Shares[4].Percent(), 1e-9)
	assert.True(t, slices.Equal([]int{4, 5}, p.KeyMonths))
}
