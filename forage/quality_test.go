package forage_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/forage"
	"example.org/soum/units"
)

// TestQualityRows: no figure twice, spans the right way round, limits where print says
// over or under, each row what Quality gives, the table a copy.
func TestQualityRows(t *testing.T) {
	seen := map[string]bool{}
	bounds := map[forage.Bound]int{}
	for _, row := range forage.QualityRows() {
		key := fmt.Sprint(row.Forage, row.Figure)
		assert.False(t, seen[key], key)
		seen[key] = true
		bounds[row.Bound]++
		assert.True(t, 0 < row.Share.Low && row.Share.Low <= row.Share.High && row.Share.High < 1, key)
		if row.Bound != forage.BoundWithin {
			assert.Equal(t, row.Share.Low, row.Share.High, key)
		}
		assert.Regexp(t, keyOfSource, row.Source, key)
		assert.Equal(t, "A", row.Mark, key)
		got, err := forage.Quality(row.Forage, row.Figure, units.Low)
		require.NoError(t, err)
		assert.Equal(t, row.Share.Low, got, key)
	}
	// Over: leafy protein and nutrients, dough both fibres. Under: the other four.
	assert.Equal(t, 4, bounds[forage.BoundOver])
	assert.Equal(t, 4, bounds[forage.BoundUnder])
	forage.QualityRows()[0].Share.Low = 0
	assert.NotZero(t, forage.QualityRows()[0].Share.Low)
	share, err := forage.Quality("straw", forage.QualityNutrients, units.Low)
	assert.True(t, math.IsNaN(float64(share)))
	assert.ErrorContains(t, err, "orchardgrass")
}

// TestGradeSteps is a second reading of the limits, the best grade first.
func TestGradeSteps(t *testing.T) {
	limits := map[forage.GradeFigure][]float64{}
	grades := map[forage.GradeFigure][]forage.HayGrade{}
	for _, step := range forage.GradeSteps() {
		limits[step.Figure] = append(limits[step.Figure], step.Limit)
		grades[step.Figure] = append(grades[step.Figure], step.Grade)
		assert.Regexp(t, keyOfSource, step.Source)
		assert.Contains(t, []string{"A", "B"}, step.Mark)
	}
	assert.Equal(t, map[forage.GradeFigure][]float64{
		forage.GradeByFeedValue:    {185, 170, 150, 130, 0},
		forage.GradeByAcidFibre:    {27, 29, 32, 35, 100},
		forage.GradeByNeutralFibre: {34, 36, 40},
		forage.GradeByNutrients:    {62, 60.5, 58},
		forage.GradeByProtein:      {22, 20, 18},
		forage.GradeByGrassProtein: {13, 9, 5, 0},
	}, limits)
	for figure, of := range grades {
		assert.IsIncreasing(t, of, figure)
	}
	_, err := forage.Quality("alfalfa", forage.QualityDigestible, units.Low)
	assert.ErrorContains(t, err, `figure is "digestible": is printed of no forage here; it takes one of: protein`)
	forage.GradeSteps()[0].Limit = 1
	assert.NotEqual(t, 1.0, forage.GradeSteps()[0].Limit)
	for _, c := range []struct {
		value  float64
		by     forage.GradeFigure
		limits string
	}{
		{41, forage.GradeByNeutralFibre, "from 0 to 40"}, {57, forage.GradeByNutrients, "from 58 to 100"}, {17, forage.GradeByProtein, "from 18 to 100"},
		{101, forage.GradeByGrassProtein, "from 0 to 100"}, {101, forage.GradeByAcidFibre, "from 0 to 100"}, {-1, forage.GradeByFeedValue, "at least 0"},
		{math.Inf(1), forage.GradeByFeedValue, "at least 0"}, {math.NaN(), forage.GradeByProtein, "at least 0"},
	} {
		grade, err := forage.GradeOf(c.value, c.by)
		assert.Zero(t, grade)
		refuses(t, err, "value")
		assert.ErrorContains(t, err, c.limits)
	}
	_, err = forage.GradeOf(1, 0)
	refuses(t, err, "by")
}

// TestPastureGrades is a second reading of the four classes; the rows are a copy.
func TestPastureGrades(t *testing.T) {
	for i, want := range []forage.PastureGrade{
		{Name: "very-high", Green: 0.75, Dead: 0.45, Legume: 0.6, Share: 0.1},
		{Name: "high", Green: 0.75, Dead: 0.45, Legume: 0.3, Share: 0.1},
		{Name: "medium", Green: 0.7, Dead: 0.45, Legume: 0.15, Share: 0.2},
		{Name: "low", Green: 0.65, Dead: 0.45, Legume: 0.05, Share: 0.5},
	} {
		got := forage.PastureGrades()[i]
		assert.Equal(t, want.Name, got.Name)
		assert.InDelta(t, want.Green.Percent(), got.Green.Percent(), 1e-9, want.Name)
		assert.InDelta(t, want.Dead.Percent(), got.Dead.Percent(), 1e-9, want.Name)
		assert.InDelta(t, want.Legume.Percent(), got.Legume.Percent(), 1e-9, want.Name)
		assert.InDelta(t, want.Share.Percent(), got.Share.Percent(), 1e-9, want.Name)
		assert.Equal(t, "VIC-PASTURE A", got.Source+" "+got.Mark)
	}
	forage.PastureGrades()[0].Green = 0
	assert.NotZero(t, forage.PastureGrades()[0].Green)
	assert.Len(t, forage.PastureGrades(), 4)
}

// TestFibreRises: taller alfalfa, and later, has more fibre; the days to a fibre end at
// it.
func TestFibreRises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		stage := forage.AlfalfaStage(rapid.IntRange(1, 2).Draw(t, "stage"))
		height := units.Height(rapid.Float64Range(26, 31).Draw(t, "height")) * units.HeightInch
		now, err := forage.AlfalfaFibre(height, stage)
		require.NoError(t, err)
		taller, err := forage.AlfalfaFibre(height*1.01, stage)
		require.NoError(t, err)
		assert.Less(t, now, taller)
		days, err := forage.DaysToFibre(now, 50*units.Percent, 0.7*units.Percent)
		require.NoError(t, err)
		after, err := forage.QualityAfter(now, forage.DriftNeutralFibreWarm, days)
		require.NoError(t, err)
		assert.InEpsilon(t, 50, after.Percent(), 1e-9)

		green, dead := units.Fraction(rapid.Float64Range(0.5, 0.9).Draw(t, "green")), units.Fraction(rapid.Float64Range(0.2, 0.5).Draw(t, "dead"))
		share := units.Fraction(rapid.Float64Range(0, 1).Draw(t, "share"))
		mixed, err := forage.MixedDigestibility(green, dead, share)
		require.NoError(t, err)
		assert.True(t, mixed >= dead*(1-1e-12) && mixed <= green*(1+1e-12))
	})
	_, err := forage.AlfalfaFibre(0.6, 0)
	assert.True(t, units.Impossible(err))
	_, err = forage.QualityAfter(0.3, 0, 1)
	assert.True(t, units.Impossible(err))
}

// My tallest alfalfa stem is 25 in, without buds: what is its fibre?
func ExampleAlfalfaFibre() {
	fibre, err := forage.AlfalfaFibre(25*units.HeightInch, forage.AlfalfaVegetative)
	fmt.Println(fibre.In(units.US), err)
	// Output: 34.7 % <nil>
}

// When does it come to 38 %, at 0.7 points a day?
func ExampleDaysToFibre() {
	days, err := forage.DaysToFibre(34.7*units.Percent, 38*units.Percent, 0.7*units.Percent)
	fmt.Printf("%.1f days %v\n", float64(days), err)
	// Output: 4.7 days <nil>
}

// And its protein, 21 % today, in ten days?
func ExampleQualityAfter() {
	protein, err := forage.QualityAfter(21*units.Percent, forage.DriftProtein, 10)
	fmt.Println(protein.In(units.US), err)
	// Output: 18.1 % <nil>
}

// What protein has grass between boot and early head?
func ExampleQuality() {
	low, _ := forage.Quality("grass-boot-to-early-head", forage.QualityProtein, units.Low)
	high, _ := forage.Quality("grass-boot-to-early-head", forage.QualityProtein, units.High)
	fmt.Println(low.In(units.US), "to", high.In(units.US))
	// Output: 13 % to 18 %
}

// How does protein fall from stage to stage?
func ExampleQualityRows() {
	for _, row := range forage.QualityRows() {
		if row.Source == "OREGON-GRASS" && row.Figure == forage.QualityProtein {
			fmt.Println(row.Forage, row.Bound, row.Share.Low.In(units.US), row.Share.High.In(units.US))
		}
	}
	// Output:
	// grass-leafy-to-boot over 18 % 18 %
	// grass-boot-to-early-head within 13 % 18 %
	// grass-head-to-milk within 8 % 12 %
	// grass-dough under 8 % 8 %
}

// What grade is alfalfa hay with a relative feed value of 152?
func ExampleGradeOf() {
	grade, err := forage.GradeOf(152, forage.GradeByFeedValue)
	fmt.Println(grade, err)
	// Output: good <nil>
}

// What protein makes which grade of grass hay?
func ExampleGradeSteps() {
	for _, step := range forage.GradeSteps() {
		if step.Figure == forage.GradeByGrassProtein {
			fmt.Println(step.Grade, "from", step.Limit)
		}
	}
	// Output:
	// premium from 13
	// good from 9
	// fair from 5
	// low from 0
}

// What protein is in 27 lb of dry matter at 10.1 %?
func ExampleCrudeProtein() {
	protein, err := forage.CrudeProtein(27*units.DryMatterPound, 10.1*units.Percent)
	fmt.Printf("%.2f lb %v\n", protein.Pounds(), err)
	// Output: 2.73 lb <nil>
}

// A fifth of the pasture is dead: what is its digestibility?
func ExampleMixedDigestibility() {
	mixed, err := forage.MixedDigestibility(70*units.Percent, 45*units.Percent, 20*units.Percent)
	fmt.Println(mixed.In(units.Metric), err)
	// Output: 65 % <nil>
}

// What do I put in where nothing was measured?
func ExamplePastureGrades() {
	for _, row := range forage.PastureGrades() {
		mixed, _ := forage.MixedDigestibility(row.Green, row.Dead, row.Share)
		fmt.Println(row.Name, mixed.In(units.Metric))
	}
	// Output:
	// very-high 72 %
	// high 72 %
	// medium 65 %
	// low 55 %
}
