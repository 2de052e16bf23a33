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

// TestBreedingRows: no row twice, every mean inside its range, every source
// named; the table is a copy and each row is what BreedingDays gives.
func TestBreedingRows(t *testing.T) {
	seen := map[string]bool{}
	for _, row := range herd.BreedingRows() {
		key := fmt.Sprint(row.Animal, row.Figure, row.By)
		assert.False(t, seen[key], key)
		seen[key] = true
		assert.True(t, 0 < row.Span.Low && row.Span.Low <= row.Mean && row.Mean <= row.Span.High, key)
		assert.Regexp(t, sourceKey, row.Source, key)
		assert.Contains(t, []string{"A", "B"}, row.Mark, key)
		mean, err := herd.BreedingDays(row.Animal, row.Figure, row.By, units.Middle)
		require.NoError(t, err)
		assert.Equal(t, row.Mean, mean, key)
	}
	herd.BreedingRows()[0].Mean = 1
	assert.NotEqual(t, units.Days(1), herd.BreedingRows()[0].Mean)
}

// TestBreedingDaysRefuses: what there is no row for comes with what there is.
func TestBreedingDaysRefuses(t *testing.T) {
	got, err := herd.BreedingDays("unicorn", herd.Gestation, herd.ByLists, units.Middle)
	assert.True(t, math.IsNaN(float64(got)))
	assert.ErrorContains(t, err, "donkey")
	assert.NotContains(t, err.Error(), "goose")
	_, err = herd.BreedingDays("donkey", herd.Gestation, herd.ByMerck, units.Middle)
	assert.ErrorContains(t, err, `merck": has no gestation of "donkey"`)
	assert.ErrorContains(t, err, "one of: lists")
	months, err := herd.PubertyMonths("cock", units.Low)
	assert.True(t, math.IsNaN(months))
	assert.ErrorContains(t, err, "cow, doe, ewe, mare, sow")
	for _, err := range []error{
		second(herd.DueDate(0, "hen", herd.ByLists)), second(herd.ServiceDate(0, "hen", herd.ByLists)),
		second(herd.NextHeat(0, "hen")), second(herd.HatchDate(0, "cow", herd.ByLists)),
	} {
		var problem *units.ParseError
		assert.ErrorAs(t, err, &problem)
	}
}

func second[T any](_ T, err error) error { return err }

// TestDueDate: counted on the calendar. 1 January + 282 days: day 283 of 2026, of
// which day 273 is 30 September: 10 October. 1 December 2027 + 147: December has
// 30 days left, January 31, February 29 (2028 is a leap year), March 31: 121; 26
// more are 26 April.
func TestDueDate(t *testing.T) {
	cow, err := herd.DueDate(date(t, "2026-01-01"), "cow", herd.ByFrandson)
	require.NoError(t, err)
	assert.Equal(t, herd.ExpectedDates{Early: date(t, "2026-10-10"), Likely: date(t, "2026-10-10"), Late: date(t, "2026-10-10")}, cow)
	ewe, err := herd.DueDate(date(t, "2027-12-01"), "ewe", herd.ByVirginia)
	require.NoError(t, err)
	assert.Equal(t, herd.ExpectedDates{Early: date(t, "2028-04-24"), Likely: date(t, "2028-04-26"), Late: date(t, "2028-04-29")}, ewe)
	back, err := herd.ServiceDate(date(t, "2028-04-26"), "ewe", herd.ByVirginia)
	require.NoError(t, err)
	assert.Equal(t, herd.ExpectedDates{Early: date(t, "2027-11-28"), Likely: date(t, "2027-12-01"), Late: date(t, "2027-12-03")}, back)
	// 149.8 and 147.4 days are three days apart on the calendar: 150 and 147.
	single, _ := herd.DueDate(0, "ewe-single", herd.ByHairSheep)
	twins, _ := herd.DueDate(0, "ewe-twins", herd.ByHairSheep)
	assert.Equal(t, units.Days(3), single.Likely.Sub(twins.Likely))
	// Forward seven months from 10 October is 10 May of the next year: 212 days.
	// Five months back from there is 10 December, 151 days before: the doe's 150.
	doe, _ := herd.ServiceDate(date(t, "2027-05-10"), "doe", herd.ByLists)
	assert.Equal(t, date(t, "2026-12-11"), doe.Likely)
}

// TestNextHeat: 17 days, 14 to 20, from 25 October.
func TestNextHeat(t *testing.T) {
	next, err := herd.NextHeat(date(t, "2026-10-25"), "ewe")
	require.NoError(t, err)
	assert.Equal(t, herd.ExpectedDates{Early: date(t, "2026-11-08"), Likely: date(t, "2026-11-11"), Late: date(t, "2026-11-14")}, next)
}

// TestHatchDate: 21 days from 1 April; a goose 28 to 33.
func TestHatchDate(t *testing.T) {
	hen, err := herd.HatchDate(date(t, "2026-04-01"), "chicken", herd.ByMississippi)
	require.NoError(t, err)
	assert.Equal(t, date(t, "2026-04-22"), hen.Likely)
	goose, err := herd.HatchDate(date(t, "2026-04-01"), "goose", herd.ByLists)
	require.NoError(t, err)
	assert.Equal(t, date(t, "2026-04-29"), goose.Early)
	assert.Equal(t, date(t, "2026-05-04"), goose.Late)
}

// TestDatesRunBothWays: served on the likely day, the likely birth is the day
// wanted; the ends of the range mirror each other.
func TestDatesRunBothWays(t *testing.T) {
	var animals []herd.BreedingRow
	for _, row := range herd.BreedingRows() {
		if row.Figure == herd.Gestation {
			animals = append(animals, row)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		row := rapid.SampledFrom(animals).Draw(t, "row")
		birth := units.Date(rapid.IntRange(0, 40000).Draw(t, "birth"))
		service, err := herd.ServiceDate(birth, row.Animal, row.By)
		if err != nil {
			t.Fatal(err)
		}
		due, _ := herd.DueDate(service.Likely, row.Animal, row.By)
		early, _ := herd.DueDate(service.Early, row.Animal, row.By)
		late, _ := herd.DueDate(service.Late, row.Animal, row.By)
		if due.Likely != birth || early.Late != birth || late.Early != birth {
			t.Fatalf("%s %v: %v to %v", row.Animal, row.By, service, due)
		}
	})
}

// How long does a ewe carry, by the range that Virginia Tech prints?
func ExampleBreedingDays() {
	short, _ := herd.BreedingDays("ewe", herd.Gestation, herd.ByVirginia, units.Low)
	long, err := herd.BreedingDays("ewe", herd.Gestation, herd.ByVirginia, units.High)
	fmt.Println(short, "to", long, err)
	// Output:
	// 145 days to 150 days <nil>
}

// Who prints how long a mare carries?
func ExampleBreedingRows() {
	for _, row := range herd.BreedingRows() {
		if row.Animal == "mare" && row.Figure == herd.Gestation {
			fmt.Println(row.By, row.Mean, row.Source)
		}
	}
	// Output:
	// frandson 336 days FRANDSON-8 table 27-1
	// lists 336 days BREEDING-LISTS
	// other lists 340 days BREEDING-LISTS another of them
	// virginia 335 days VT-REPRODUCTION under 320 is premature
	// missouri 341 days MISSOURI-BREEDING
}

// The ram went in on 25 October: when do the first lambs come?
func ExampleDueDate() {
	service, _ := units.ParseDate("2026-10-25")
	due, err := herd.DueDate(service, "ewe", herd.ByVirginia)
	fmt.Println(due.Early, due.Likely, due.Late, err)
	// Output:
	// 2027-03-19 2027-03-21 2027-03-24 <nil>
}

// The sows should farrow around 1 May: when does the boar go in?
func ExampleServiceDate() {
	birth, _ := units.ParseDate("2027-05-01")
	service, err := herd.ServiceDate(birth, "sow", herd.ByFrandson)
	fmt.Println(service.Likely, err)
	// Output:
	// 2027-01-07 <nil>
}

// A cow stood to be mounted today: when do I look again?
func ExampleNextHeat() {
	today, _ := units.ParseDate("2026-06-01")
	next, err := herd.NextHeat(today, "cow")
	fmt.Println(next.Early, "to", next.Late, err)
	// Output:
	// 2026-06-19 to 2026-06-25 <nil>
}

// Duck eggs set today hatch when?
func ExampleHatchDate() {
	today, _ := units.ParseDate("2026-04-10")
	hatch, err := herd.HatchDate(today, "duck", herd.ByMississippi)
	fmt.Println(hatch.Likely, err)
	// Output:
	// 2026-05-08 <nil>
}

// From what age must ram lambs be kept from their sisters?
func ExamplePubertyMonths() {
	from, err := herd.PubertyMonths("ewe", units.Low)
	fmt.Println(from, "months", err)
	// Output:
	// 6 months <nil>
}
