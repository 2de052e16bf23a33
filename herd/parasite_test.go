package herd_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/herd"
	"example.org/soum/units"
)

// TestWormRows: no row twice, every span the right way round, every source named;
// the table is a copy, and what is not in it comes with what is.
func TestWormRows(t *testing.T) {
	seen := map[string]bool{}
	for _, row := range herd.WormRows() {
		key := fmt.Sprint(row.Stage, row.By)
		assert.False(t, seen[key], key)
		seen[key] = true
		assert.True(t, 0 < row.Days.Low && row.Days.Low <= row.Days.High, key)
		assert.Regexp(t, sourceKey, row.Source, key)
		assert.Contains(t, []string{"A", "B"}, row.Mark, key)
	}
	herd.WormRows()[0].By = 0
	assert.NotZero(t, herd.WormRows()[0].By)
	got, err := herd.WormDays(herd.LarvaePeak, herd.WormsNcat, units.Low)
	assert.True(t, math.IsNaN(float64(got)))
	assert.ErrorContains(t, err, "one of: tropics, temperate")
	for argument, err := range map[string]error{
		"stage": failure(herd.WormDays(99, 99, 99)),
		"by":    failure(herd.WormDays(herd.LarvaePeak, 99, 99)),
		"end":   failure(herd.WormDays(herd.LarvaePeak, herd.WormsTropics, 7)),
	} {
		var none *units.DomainError
		require.ErrorAs(t, err, &none)
		assert.Equal(t, argument, none.Argument)
	}
}

func failure(_ units.Days, err error) error { return err }

// TestSharesWorms: as the doc says, both ways round, and unknown is shared.
func TestSharesWorms(t *testing.T) {
	var all []herd.Kind
	for kind := herd.Kind(1); kind.String() != ""; kind++ {
		all = append(all, kind)
	}
	shared := map[[2]herd.Kind]bool{
		{herd.Sheep, herd.Goats}: true, {herd.Horses, herd.Donkeys}: true,
		{herd.Camelids, herd.Sheep}: true, {herd.Camelids, herd.Goats}: true, {herd.Camelids, herd.Cattle}: true,
		{herd.Deer, herd.Sheep}: true, {herd.Deer, herd.Goats}: true, {herd.Deer, herd.Cattle}: true, {herd.Camelids, herd.Deer}: true,
	}
	for _, a := range all {
		for _, b := range all {
			want := a == b || shared[[2]herd.Kind{a, b}] || shared[[2]herd.Kind{b, a}]
			assert.Equal(t, want, herd.SharesWorms(a, b), "%v and %v", a, b)
		}
		assert.True(t, herd.SharesWorms(a, 0) && herd.SharesWorms(99, a))
	}
}

// TestWormRiskRefuses what is no rest and no rule.
func TestWormRiskRefuses(t *testing.T) {
	for _, rest := range []units.Days{-1, units.Days(math.NaN()), units.Days(math.Inf(1))} {
		_, err := herd.WormRisk(herd.Sheep, herd.Sheep, rest, herd.RestNcat)
		assert.True(t, units.Impossible(err), rest)
	}
	for _, rule := range []herd.RestRule{-1, 0, 4, 99} {
		_, err := herd.WormRisk(herd.Sheep, herd.Sheep, 30, rule)
		assert.ErrorContains(t, err, "ncat", rule)
	}
}

// TestRestForGrassMeetsTheLarvae: 21 to 35 days' rest for grass is never rested
// for worms in a temperate climate, and its end is the peak.
func TestRestForGrassMeetsTheLarvae(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rest := units.Days(rapid.Float64Range(21, 35).Draw(t, "rest"))
		risk, err := herd.WormRisk(herd.Goats, herd.Sheep, rest, herd.RestTemperate)
		if err != nil || risk < herd.ReturnInfective || (rest >= 28) != (risk == herd.ReturnPeak) {
			t.Fatalf("%v: %v %v", rest, risk, err)
		}
		warm := units.Celsius(rapid.Float64Range(-5, 40).Draw(t, "warm"))
		more := units.Temperature(rapid.Float64Range(0, 20).Draw(t, "more"))
		if a, b := first(herd.HatchDays(warm, 0)), first(herd.HatchDays(warm+more, 0)); b > a*(1+1e-12) || b < 3-1e-9 {
			t.Fatalf("%v at %v, %v at %v", a, warm, b, warm+more)
		}
	})
}

// TestBirdsFollowWithinTheLarvae: three to four days are less than any fly takes.
func TestBirdsFollowWithinTheLarvae(t *testing.T) {
	late, err := herd.BirdsFollow(units.Whole)
	require.NoError(t, err)
	for fly := herd.HornFly; fly <= herd.FaceFly; fly++ {
		adult, err := herd.FlyDays(fly, 0)
		require.NoError(t, err)
		assert.Less(t, late, adult)
	}
}

// How long do eggs take to hatch at 60 °F?
func ExampleHatchDays() {
	soon, _ := herd.HatchDays(units.Fahrenheit(60), 0)
	late, err := herd.HatchDays(units.Fahrenheit(60), units.Whole)
	fmt.Printf("%.0f to %.0f days %v\n", float64(soon), float64(late), err)
	// Output:
	// 11 to 22 days <nil>
}

// How many days must a paddock rest against worms?
func ExampleWormDays() {
	for _, by := range []herd.WormSource{herd.WormsNcat, herd.WormsTemperate, herd.WormsTropics} {
		days, err := herd.WormDays(herd.LarvaeDown, by, units.Low)
		fmt.Println(by, days, err)
	}
	// Output:
	// ncat 40 days <nil>
	// temperate 60 days <nil>
	// tropics 30 days <nil>
}

// Who prints how soon stock must move on?
func ExampleWormRows() {
	for _, row := range herd.WormRows() {
		if row.Stage == herd.MoveOut {
			fmt.Println(row.By, row.Days.Low, "to", row.Days.High)
		}
	}
	// Output:
	// ncat 4 days to 4 days
	// ohio 4 days to 6 days
}

// May goats follow sheep, or had cattle better come between?
func ExampleSharesWorms() {
	fmt.Println(herd.SharesWorms(herd.Sheep, herd.Goats), herd.SharesWorms(herd.Sheep, herd.Cattle))
	// Output:
	// true false
}

// The ewes were here thirty days ago: what does it mean if the goats come now, or
// the cattle?
func ExampleWormRisk() {
	goats, _ := herd.WormRisk(herd.Sheep, herd.Goats, 30, herd.RestTemperate)
	cattle, err := herd.WormRisk(herd.Sheep, herd.Cattle, 30, herd.RestTemperate)
	fmt.Println(goats, cattle, err)
	// Output:
	// peak other host <nil>
}

// How high do larvae climb?
func ExampleLarvalClimb() {
	height, err := herd.LarvalClimb(herd.ClimbSouthDakota, units.Whole)
	fmt.Println(height.In(units.US), err)
	// Output:
	// 3 in <nil>
}

// How short may the goats graze?
func ExampleWormStubble() {
	height, err := herd.WormStubble(herd.StubbleSouthDakota)
	fmt.Println(height.In(units.US), err)
	// Output:
	// 4 in <nil>
}

// How soon are there new face flies?
func ExampleFlyDays() {
	days, err := herd.FlyDays(herd.FaceFly, 0)
	fmt.Println(days, err)
	// Output:
	// 12 days <nil>
}

// When does custom bring the hens on behind the cows?
func ExampleBirdsFollow() {
	days, err := herd.BirdsFollow(0)
	fmt.Println(days, err)
	// Output:
	// 3 days <nil>
}
