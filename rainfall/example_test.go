package rainfall_test

import (
	"fmt"
	"time"

	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// We get 35 in a year. How often can I graze a pasture?
func ExamplePasses() {
	passes, err := rainfall.Passes(35 * units.RainInch)
	fmt.Println(units.Number(passes), err)
	// Output: 5 <nil>
}

// And with 27.5 in?
func ExamplePasses_between() {
	passes, err := rainfall.Passes(27.5 * units.RainInch)
	fmt.Println(units.Number(passes))
	fmt.Println(err)
	// Output:
	// 3.39
	// rainfall.Passes: rain is 27.5 in, outside what HFG-CYCLES covers (at most 25 in or at least 30 in); the value is still given
}

// Ryegrass shows a leaf every 15 days and I graze at three leaves.
func ExampleRotationDays() {
	rotation, _ := rainfall.RotationDays(15, 3)
	fmt.Println(rotation.In(units.US))
	// Output: 45 days
}

// How often does that fit into a season of 180 days?
func ExamplePassesBySeason() {
	passes, _ := rainfall.PassesBySeason(180, 45)
	fmt.Println(passes)
	// Output: 4
}

// April to June brought 118 mm, 161.2 are normal.
func ExampleShareOfNormal() {
	share, _ := rainfall.ShareOfNormal(118*units.RainMillimetre, 161.2*units.RainMillimetre)
	fmt.Println(share.In(units.Metric))
	// Output: 73.2 %
}

// The spring rain was three quarters of normal. What grass shall I count on?
func ExampleForageShare() {
	share, _ := rainfall.ForageShare(75 * units.Percent)
	fmt.Println(share.In(units.US), "of the usual")
	// Output: 75 % of the usual
}

func years() []rainfall.MonthlyRain {
	var record []rainfall.MonthlyRain
	for m := time.January; m <= time.December; m++ {
		record = append(record,
			rainfall.MonthlyRain{Year: 2000, Month: m, Rain: 30 * units.RainMillimetre},
			rainfall.MonthlyRain{Year: 2001, Month: m, Rain: 50 * units.RainMillimetre})
	}
	return record
}

// What is normal here for May?
func ExampleMonthNormals() {
	normals, _ := rainfall.MonthNormals(years())
	fmt.Println(normals[time.May-time.January].In(units.Metric))
	// Output: 40 mm
}

// How much fell in 2001?
func ExampleYearTotal() {
	total, _ := rainfall.YearTotal(years(), 2001)
	fmt.Println(total.In(units.Metric))
	// Output: 600 mm
}

// It is the middle of June 2000. How dry is the spring so far?
func ExampleKeyRainShare() {
	normals, _ := rainfall.MonthNormals(years())
	today, _ := units.NewDate(2000, time.June, 15)
	share, _ := rainfall.KeyRainShare(today, []int{4, 5, 6}, years(), normals)
	fmt.Println(share.In(units.Metric), "of the normal rain of April to June, June to come")
	// Output: 83.3 % of the normal rain of April to June, June to come
}
