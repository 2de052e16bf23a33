package rainfall_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// TestCurveRows: no row twice, a wetter soil group runs off more and so does worse
// cover, every source named; the table is a copy.
func TestCurveRows(t *testing.T) {
	seen := map[string]bool{}
	for _, row := range rainfall.CurveRows() {
		key := fmt.Sprint(row.Cover, row.Condition)
		assert.False(t, seen[key], key)
		seen[key] = true
		assert.True(t, row.A < row.B && row.B < row.C && row.C < row.D && row.D < 100, key)
		assert.Contains(t, row.Source, "TR-55", key)
		assert.Equal(t, "B", row.Mark, key)
	}
	rainfall.CurveRows()[0].B = 1
	assert.NotEqual(t, 1.0, rainfall.CurveRows()[0].B)
}

// TestCurveNumberRefuses: what there is no number for comes with what there is.
func TestCurveNumberRefuses(t *testing.T) {
	for _, c := range []struct {
		cover     string
		condition rainfall.CoverCondition
		soil      rainfall.SoilGroup
		want      string
	}{
		{"swamp", rainfall.CoverGood, rainfall.SoilGroupA, "one of: pasture, brush"},
		{"farmstead", rainfall.CoverPoor, rainfall.SoilGroupA, `condition is "poor": no curve number of "farmstead"; it takes one of: good`},
		{"arid-herbs", rainfall.CoverPoor, rainfall.SoilGroupA, `soil is "a": no curve number of "arid-herbs"; it takes one of: b, c, d`},
		{"pasture", rainfall.CoverPoor, 9, `soil is "9": no curve number of "pasture"; it takes one of: a, b, c, d`},
	} {
		got, err := rainfall.CurveNumber(c.cover, c.condition, c.soil)
		assert.True(t, math.IsNaN(got))
		unknown(t, err, c.want)
	}
}

// TestWeightedCurveNumber: the example watershed of 250 ac, seven tenths on group C
// and three on group B, pasture in good condition: 0.7 × 74 + 0.3 × 61 = 70.1, and
// 2.81 in of the storm of 6 in at the rounded number.
func TestWeightedCurveNumber(t *testing.T) {
	loring := sure[float64](t)(rainfall.CurveNumber("pasture", rainfall.CoverGood, rainfall.SoilGroupC))
	memphis := sure[float64](t)(rainfall.CurveNumber("pasture", rainfall.CoverGood, rainfall.SoilGroupB))
	number := sure[float64](t)(rainfall.WeightedCurveNumber([]units.Area{175 * units.Acre, 75 * units.Acre}, []float64{loring, memphis}))
	assert.InDelta(t, 70.1, number, 1e-9)
	depth := sure[units.RainDepth](t)(rainfall.Runoff(6*units.RainInch, math.Round(number)))
	assert.InDelta(t, 2.81, depth.Inches(), 0.005)

	for _, bad := range []struct {
		areas   []units.Area
		numbers []float64
		want    string
	}{
		{nil, nil, "areas: is empty"},
		{[]units.Area{1}, nil, "numbers: 0 values beside 1 value of areas"},
		{[]units.Area{1, 2}, []float64{70}, "numbers: 1 value beside 2 values of areas"},
		{[]units.Area{0}, []float64{70}, "areas[0]: 0 m2 is not the area of a part; above 0"},
		{[]units.Area{1, units.Area(math.NaN())}, []float64{70, 70}, "areas[1]: NaN m2"},
		{[]units.Area{1}, []float64{0}, "numbers[0]: 0 is not a curve number; above 0 and at most 100"},
		{[]units.Area{1}, []float64{100.5}, "numbers[0]: 100.5"},
		{[]units.Area{1}, []float64{math.NaN()}, "numbers[0]: NaN"},
	} {
		got, err := rainfall.WeightedCurveNumber(bad.areas, bad.numbers)
		refusedAt(t, err, bad.want)
		assert.True(t, math.IsNaN(got))
	}
	for _, areas := range [][]units.Area{{units.Area(math.Inf(1)), 1}, {1e308, 1e308}} {
		got, err := rainfall.WeightedCurveNumber(areas, []float64{70, 70})
		var domain *units.DomainError
		require.ErrorAs(t, err, &domain, areas)
		assert.Equal(t, "result", domain.Argument)
		assert.True(t, math.IsNaN(got))
	}
	number = sure[float64](t)(rainfall.WeightedCurveNumber([]units.Area{1}, []float64{100}))
	assert.Equal(t, 100.0, number)
}

// TestRetentionIsFiveTimesWhatFallsBefore: the printed fifth.
func TestRetentionIsFiveTimesWhatFallsBefore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		number := rapid.Float64Range(30, 98).Draw(t, "number")
		holds := sure[units.RainDepth](t)(rainfall.Retention(number))
		first := sure[units.RainDepth](t)(rainfall.InitialAbstraction(number))
		assert.InEpsilon(t, float64(holds), 5*float64(first), 1e-12)
		none := sure[units.RainDepth](t)(rainfall.Runoff(first, number))
		assert.InDelta(t, 0, float64(none), 1e-12)
		rain := units.RainDepth(rapid.Float64Range(0, 1).Draw(t, "rain"))
		more := rain + units.RainDepth(rapid.Float64Range(0, 0.1).Draw(t, "more"))
		less, greater := sure[units.RainDepth](t)(rainfall.Runoff(rain, number)), sure[units.RainDepth](t)(rainfall.Runoff(more, number))
		assert.True(t, less >= 0 && less <= rain && greater >= less-1e-15 && greater-less <= more-rain+1e-15, "never more than falls")
	})
}

// TestAntecedentRefuses what is none.
func TestAntecedentRefuses(t *testing.T) {
	for _, rain := range []float64{-1, math.NaN(), math.Inf(1)} {
		_, err := rainfall.Antecedent(units.RainDepth(rain), rainfall.RunoffGrowing)
		assert.True(t, units.Impossible(err), rain)
	}
	for _, season := range []rainfall.RunoffSeason{-1, 0, 3} {
		class, err := rainfall.Antecedent(0, season)
		assert.True(t, units.Impossible(err), season)
		assert.Zero(t, class)
	}
	_, err := rainfall.RoofCatch(4, 1, 1)
	assert.True(t, units.Impossible(err))
}

// What share of a storm runs off pasture in good condition on soil of group C?
func ExampleCurveNumber() {
	number, err := rainfall.CurveNumber("pasture", rainfall.CoverGood, rainfall.SoilGroupC)
	fmt.Println(number, err)
	depth, err := rainfall.Runoff(4*units.RainInch, number)
	fmt.Println(depth.In(units.US), err)
	// Output:
	// 74 <nil>
	// 1.6 in <nil>
}

// What does hard grazing do to the runoff?
func ExampleCurveRows() {
	for _, row := range rainfall.CurveRows() {
		if row.Cover == "pasture" {
			fmt.Println(row.Condition, row.B)
		}
	}
	// Output:
	// poor 79
	// fair 69
	// good 61
}

// Of my 250 acres 175 lie on group C and 75 on group B.
func ExampleWeightedCurveNumber() {
	number, err := rainfall.WeightedCurveNumber([]units.Area{175 * units.Acre, 75 * units.Acre}, []float64{74, 61})
	fmt.Println(units.Number(number), err)
	// Output: 70.1 <nil>
}

// How much can such land take up?
func ExampleRetention() {
	holds, err := rainfall.Retention(70)
	fmt.Println(holds.In(units.US), err)
	// Output: 4.29 in <nil>
}

// How much falls before any runs off?
func ExampleInitialAbstraction() {
	first, err := rainfall.InitialAbstraction(70)
	fmt.Println(first.In(units.US), err)
	// Output: 0.857 in <nil>
}

// A storm of 6 in on land of 70: how much runs into the pond?
func ExampleRunoff() {
	depth, err := rainfall.Runoff(6*units.RainInch, 70)
	fmt.Println(depth.In(units.US), err)
	// Output: 2.81 in <nil>
}

// Three inches fell in the five days before.
func ExampleAntecedent() {
	wetness, err := rainfall.Antecedent(3*units.RainInch, rainfall.RunoffGrowing)
	fmt.Println(wetness, err)
	// Output: wet <nil>
}

// How much is 0.3 in on an acre?
func ExampleCaught() {
	water, err := rainfall.Caught(units.Acre, 0.3*units.RainInch, units.Whole)
	fmt.Println(water.In(units.US), err)
	// Output: 8,146 gal <nil>
}

// A barn of 2,000 ft² where 25 in fall in the year, a tenth lost.
func ExampleRoofCatch() {
	water, err := rainfall.RoofCatch(rainfall.CatchTenthLost, 2000*units.SquareFoot, 25*units.RainInch)
	fmt.Println(water.In(units.US), err)
	// Output: 28,000 gal <nil>
}

// What must I hold back from a lot of 4.36 ac when 2.2 in fall?
func ExampleFeedlotRunoff() {
	water, err := rainfall.FeedlotRunoff(2.2*units.RainInch, 4.36*units.Acre)
	fmt.Println(units.Number(water.AcreFeet()), "ac-ft", err)
	// Output: 0.618 ac-ft <nil>
}

// The pan lost 50 in. What does my pond lose?
func ExampleOpenWaterLoss() {
	loss, err := rainfall.OpenWaterLoss(50 * units.RainInch)
	fmt.Println(loss.In(units.US), err)
	// Output: 35 in <nil>
}
