package rainfall_test

import (
	"fmt"
	"math"
	"os"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// TestTriggers is a second reading of the prints: date, since, share, cut.
func TestTriggers(t *testing.T) {
	var got []string
	for _, r := range rainfall.Triggers() {
		got = append(got, fmt.Sprintf("%s %d/%d since %d under %s cut %s to %s %s", r.Source, r.Month, r.Day, r.Since, r.Below.In(units.US), r.Cut.Low.In(units.US), r.Cut.High.In(units.US), r.Mark))
		assert.NotEmpty(t, r.Act)
		assert.NotEmpty(t, r.Place)
	}
	assert.Equal(t, []string{
		"CHERRY-TRIGGER 4/15 since 1 under 75 % cut 10 % to 10 % A",
		"SDSU-MAY-RULE 5/21 since 4 under 50 % cut 0 % to 0 % B",
		"NDSU-SPRING 7/1 since 4 under 75 % cut 25 % to 25 % A",
		"NDSU-JULY-RULE 7/1 since 4 under 50 % cut 30 % to 30 % B",
	}, got)
	rainfall.Triggers()[0].Day = 1
	assert.Equal(t, 15, rainfall.Triggers()[0].Day)
}

// TestDroughtRules is a second reading of the prints.
func TestDroughtRules(t *testing.T) {
	cuts := map[string][2]float64{
		"after-severe-year": {20, 25}, "after-dry-year": {10, 10}, "drought-through-may": {10, 10}, "breeding-herd": {30, 50},
		"severe-year-forage": {25, 60}, "year-after-long-drought": {20, 50},
	}
	seen := map[string]bool{}
	for _, r := range rainfall.DroughtRules() {
		assert.False(t, seen[r.Name], r.Name)
		seen[r.Name] = true
		assert.InDelta(t, cuts[r.Name][0], r.Cut.Low.Percent(), 1e-9, r.Name)
		assert.InDelta(t, cuts[r.Name][1], r.Cut.High.Percent(), 1e-9, r.Name)
		assert.Regexp(t, `^[A-Z][A-Z0-9]*(-[A-Z0-9]+)+$`, r.Source)
		assert.Contains(t, []string{"A", "B"}, r.Mark)
		assert.NotEmpty(t, r.When)
		assert.NotEmpty(t, r.Act)
	}
	for name := range cuts {
		assert.True(t, seen[name], name)
	}
	for name, when := range map[string]string{"d0": "75 % of normal rain in 3", "d1": "70 % of normal rain in 3", "d2": "65 % of normal rain in 6", "d3": "60 % of normal rain in 6", "d4": "65 % of normal rain in 12"} {
		for _, r := range rainfall.DroughtRules() {
			if r.Name == "monitor-older-"+name {
				assert.Contains(t, r.When, when)
			}
		}
	}
	rainfall.DroughtRules()[0].Act = ""
	assert.NotEmpty(t, rainfall.DroughtRules()[0].Act)
}

// TestSellingOrder: of each print, ranks from 1 that never fall.
func TestSellingOrder(t *testing.T) {
	last := map[string]int{}
	for _, s := range rainfall.SellingOrder() {
		if last[s.By] == 0 {
			assert.Equal(t, 1, s.Rank)
		}
		assert.GreaterOrEqual(t, s.Rank, last[s.By])
		assert.LessOrEqual(t, s.Rank, last[s.By]+1)
		last[s.By] = s.Rank
		assert.NotEmpty(t, s.Stock)
		assert.Regexp(t, `^[A-Z][A-Z0-9]*(-[A-Z0-9]+)+$`, s.Source)
		assert.Contains(t, []string{"A", "B"}, s.Mark)
	}
	assert.Equal(t, map[string]int{"noble": 4, "placer": 2, "texas": 1}, last)
	rainfall.SellingOrder()[0].Rank = 9
	assert.Equal(t, 1, rainfall.SellingOrder()[0].Rank)
}

// twoYears has normals of 10, 20 … 120 mm: one year three times the other.
func twoYears() []rainfall.MonthlyRain {
	var record []rainfall.MonthlyRain
	for m := time.January; m <= time.December; m++ {
		record = append(record, rain(2000, m, 5*float64(m)), rain(2001, m, 15*float64(m)))
	}
	return record
}

func TestJudgeTriggers(t *testing.T) {
	record := twoYears()
	readings, err := rainfall.JudgeTriggers(2000, record)
	require.NoError(t, err)
	require.Len(t, readings, 4)
	for i, want := range []struct {
		date, through string
		rain, normal  float64
		met           bool
	}{
		{"2000-04-15", "2000-03-31", 5 + 10 + 15, 10 + 20 + 30, true},
		{"2000-05-21", "2000-04-30", 20, 40, false}, // half is not less than half
		{"2000-07-01", "2000-06-30", 20 + 25 + 30, 40 + 50 + 60, true},
		{"2000-07-01", "2000-06-30", 20 + 25 + 30, 40 + 50 + 60, false},
	} {
		got := readings[i]
		assert.Equal(t, rainfall.Triggers()[i].Name, got.Trigger)
		assert.Equal(t, day(t, want.date), got.Date)
		assert.Equal(t, day(t, want.through), got.Through)
		assert.InDelta(t, want.rain, got.Rain.Millimetres(), 1e-9)
		assert.InDelta(t, want.normal, got.Normal.Millimetres(), 1e-9)
		assert.InDelta(t, 0.5, got.Share.Whole(), 1e-12)
		assert.Equal(t, want.met, got.Met, got.Trigger)
	}
	// June is not known: the triggers of July are left out
	var short []rainfall.MonthlyRain
	for _, r := range record {
		if r.Year == 2001 || r.Month < time.June {
			short = append(short, r)
		}
	}
	readings, err = rainfall.JudgeTriggers(2000, short)
	require.NoError(t, err)
	assert.Len(t, readings, 2)
	readings, err = rainfall.JudgeTriggers(1999, record)
	require.NoError(t, err)
	assert.Empty(t, readings)
	for i := range record {
		if record[i].Month == time.April {
			record[i].Rain = 0
		}
	}
	readings, err = rainfall.JudgeTriggers(2000, record)
	require.NoError(t, err)
	assert.Len(t, readings, 3, "April is always dry, and a share of nothing is none")
}

// Springs of Fort Collins under 75 % of normal by the record of 1961 to 1990, as
// R 4.2.2 has them: 1966 51.5 %, 1974 73.2 %, 1983 170.6 %.
func TestJudgeTriggersOfFortCollins(t *testing.T) {
	record := fortCollins(t)
	for year, want := range map[int]float64{1966: 51.5, 1974: 73.2, 1983: 170.6} {
		readings, err := rainfall.JudgeTriggers(year, record)
		require.NoError(t, err)
		assert.InDelta(t, want, readings[2].Share.Percent(), 0.05)
		assert.Equal(t, want < 75, readings[2].Met)
	}
}

func TestDroughtPlan(t *testing.T) {
	plan, err := rainfall.DroughtPlan(2003, []int{4, 5, 6}, twoYears())
	require.NoError(t, err)
	require.Len(t, plan, 7)
	for i, want := range []struct {
		date, since   string
		normal, share float64
		cut           float64
		source        string
	}{
		{"2003-04-15", "2003-01-01", 60 + 40*14.0/30, 75, 10, "CHERRY-TRIGGER"},
		{"2003-05-01", "2003-04-01", 40, 75, 25, "NDMC-DATES, NDSU-SPRING"},
		{"2003-05-21", "2003-04-01", 40 + 50*20.0/31, 50, 0, "SDSU-MAY-RULE"},
		{"2003-06-01", "2003-04-01", 90, 75, 25, "NDMC-DATES, NDSU-SPRING"},
		{"2003-07-01", "2003-04-01", 150, 75, 25, "NDMC-DATES, NDSU-SPRING"},
		{"2003-07-01", "2003-04-01", 150, 75, 25, "NDSU-SPRING"},
		{"2003-07-01", "2003-04-01", 150, 50, 30, "NDSU-JULY-RULE"},
	} {
		got := plan[i]
		assert.Equal(t, day(t, want.date), got.Date)
		assert.Equal(t, day(t, want.since), got.Since)
		assert.InDelta(t, want.normal, got.Normal.Millimetres(), 1e-9)
		assert.InDelta(t, want.share, got.Below.Percent(), 1e-9)
		assert.InDelta(t, want.normal*want.share/100, got.Figure.Millimetres(), 1e-9)
		assert.InDelta(t, want.cut, got.Cut.Low.Percent(), 1e-9)
		assert.InDelta(t, want.cut, got.Cut.High.Percent(), 1e-9)
		assert.Equal(t, want.source, got.Source)
		assert.NotEmpty(t, got.Act)
	}
	// key months across the turn of the year
	plan, err = rainfall.DroughtPlan(2003, []int{11, 12, 1}, twoYears())
	require.NoError(t, err)
	last := plan[len(plan)-1]
	assert.Equal(t, day(t, "2004-02-01"), last.Date)
	assert.Equal(t, day(t, "2003-11-01"), last.Since)
	assert.InDelta(t, 110+120+10, last.Normal.Millimetres(), 1e-9)
}

// TestDroughtIsFinite: no figure of a plan or a reading is infinite or no number.
func TestDroughtIsFinite(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		depth := rapid.OneOf(rapid.Just(0.0), rapid.Float64Range(0, 300), rapid.Float64Range(0, 1e6))
		var record []rainfall.MonthlyRain
		for m := time.January; m <= time.December; m++ {
			record = append(record, rain(2000, m, depth.Draw(t, "rain")))
		}
		plan, err := rainfall.DroughtPlan(2001, []int{3, 4}, record)
		require.NoError(t, err)
		for i, s := range plan {
			assert.False(t, math.IsNaN(float64(s.Figure)) || math.IsInf(float64(s.Figure), 0))
			assert.True(t, i == 0 || plan[i-1].Date <= s.Date)
		}
		readings, err := rainfall.JudgeTriggers(2000, record)
		require.NoError(t, err)
		for _, r := range readings {
			assert.InDelta(t, 1, r.Share.Whole(), 1e-12, "one year is its own normal")
			assert.False(t, r.Met)
		}
	})
}

func TestDroughtRefuses(t *testing.T) {
	for wrong, bad := range refused() {
		_, err := rainfall.JudgeTriggers(2000, bad)
		refusedAt(t, err, wrong)
		_, err = rainfall.DroughtPlan(2000, []int{4}, bad)
		refusedAt(t, err, wrong)
	}
	for _, year := range []int{-10000, 10000, math.MaxInt} {
		_, err := rainfall.JudgeTriggers(year, twoYears())
		impossible(t, err, "must be from -9999 to 9999")
		_, err = rainfall.DroughtPlan(year, []int{4}, twoYears())
		impossible(t, err, "rainfall.DroughtPlan: year is")
	}
	for _, year := range []int{-9999, 9999} {
		_, err := rainfall.DroughtPlan(year, []int{11, 12, 1}, twoYears())
		require.NoError(t, err)
	}
	_, err := rainfall.DroughtPlan(2000, nil, twoYears())
	refusedAt(t, err, "keyMonths: is empty")
	_, err = rainfall.DroughtPlan(2000, []int{13}, twoYears())
	refusedAt(t, err, "keyMonths[0]: 13 is not a month; 1 to 12")
	_, err = rainfall.DroughtPlan(2000, []int{4}, nil)
	refusedAt(t, err, "record: has no January in any year")
}

// When do I look at the gauge this year, and at what figure do I act?
func ExampleDroughtPlan() {
	plan, err := rainfall.DroughtPlan(2002, []int{4, 5, 6}, years())
	for _, step := range plan[:2] {
		fmt.Println(step.Date, "under", step.Figure.In(units.Metric), "since", step.Since.String()+":", step.Act)
	}
	fmt.Println(err)
	// Output:
	// 2002-04-15 under 104 mm since 2002-01-01: cut the summer's stocking by 10 %
	// 2002-05-01 under 30 mm since 2002-04-01: expect a quarter less forage than usual: rent grass, buy feed or sell stock to match
	// <nil>
}

// Was it dry enough in 2011 to act? R 4.2.2 has 54.5, 58.5 and 72.0 %.
func ExampleJudgeTriggers() {
	text, _ := os.ReadFile("testdata/wichita_record.csv")
	record, _ := rainfall.ReadMonths(string(text))
	readings, _ := rainfall.JudgeTriggers(2011, record)
	for _, r := range readings {
		fmt.Println(r.Trigger, r.Share.In(units.US), r.Met)
	}
	// Output:
	// mid-april-year-to-date 54.5 % true
	// late-may-half 58.5 % false
	// july-three-quarters 72 % true
	// july-half 72 % false
}

// What do the prints tell to do in mid-April?
func ExampleTriggers() {
	t := rainfall.Triggers()[0]
	fmt.Println(t.Place+":", t.Act, "under", t.Below.In(units.US))
	// Output: Nebraska Sandhills: cut the summer's stocking by 10 % under 75 %
}

// What of the year after a drought?
func ExampleDroughtRules() {
	for _, r := range rainfall.DroughtRules() {
		if r.Name == "after-severe-year" {
			fmt.Println(r.Act, "by", r.Cut.Low.In(units.US), "to", r.Cut.High.In(units.US))
		}
	}
	// Output: begin the season with fewer stock by 20 % to 25 %
}

// Who goes first?
func ExampleSellingOrder() {
	fmt.Println(rainfall.SellingOrder()[0].Stock)
	// Output: spring and summer calvers without a calf, 5 to 15 % of many herds
}
