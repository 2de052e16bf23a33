package grazing_test

import (
	"fmt"

	"example.org/soum/forage"
	"example.org/soum/grazing"
	"example.org/soum/units"
)

// Fifty animal units live off 200 acres all year. How is that written?
func ExampleLandPerUse() {
	land, err := grazing.LandPerUse(200*units.Acre, 50*units.AnimalUnit, units.Days(360))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f acres per AUM, %.0f acres per AU and year\n", land.AcresPerAnimalUnitMonth(), land.AcresPerAnimalUnitYear())
	// Output: 0.33 acres per AUM, 4 acres per AU and year
}

// Twelve animal units grazed 3 acres for 8 days. What goes into the record?
func ExampleUsePerLand() {
	rate, _ := grazing.UsePerLand(3*units.Acre, 12*units.AnimalUnit, 8*units.Day)
	fmt.Println(rate.In(units.US))
	// Output: 1.07 AUM/ac
}

// The survey gives the quarter section 0.25 AUM an acre. What does it carry?
func ExampleUse() {
	use, _ := grazing.Use(0.25*units.AnimalUnitMonthPerAcre, 160*units.Acre)
	fmt.Println(use.In(units.US))
	// Output: 40 AUM
}

// Three groups of sheep eat 10 lb a day each. Above the residual stand 1,000
// lb/ac, of which a quarter is wasted. How much for three days?
func ExampleStayArea() {
	area, err := grazing.StayArea(30*units.PoundPerDay, 3*units.Day, 1000*units.PoundPerAcre, 75*units.Percent)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(area.In(units.US))
	// Output: 0.12 ac
}

// How long does half a hectare last four ewes that eat 10 kg a day together?
func ExampleStayDays() {
	days, _ := grazing.StayDays(0.5*units.Hectare, 800*units.KilogramPerHectare, 75*units.Percent, 10*units.KilogramPerDay)
	fmt.Println(days.In(units.Metric))
	// Output: 30 days
}

// How many steers of 600 lb, eating 3 % of their weight, does the back pasture
// keep for 30 days?
func ExampleStayHead() {
	head, _ := grazing.StayHead(10*units.Acre, 1200*units.PoundPerAcre, 60*units.Percent, 600*units.LivePound, 3*units.Percent, 30*units.Day)
	fmt.Printf("%.1f, so 13\n", head)
	// Output: 13.3, so 13
}

// A stand of 270 lb to the inch, a cow that eats 30 lb: how many cow-days?
func ExampleDaysPerHeight() {
	days, _ := grazing.DaysPerHeight(270*units.PoundPerAcreInch, 30*units.PoundPerDay)
	fmt.Printf("%.0f cow-days to the acre-inch\n", days.DaysPerAcreInch())
	// Output: 9 cow-days to the acre-inch
}

// Good pasture, from 8 in down to 3 in: how many cow-days on an acre?
func ExampleDaysPerLand() {
	use, _ := grazing.DaysPerLand(8*units.HeightInch, 3*units.HeightInch, 9*units.AnimalUnitDayPerAcreInch)
	fmt.Printf("%.0f cow-days\n", float64(use/units.AnimalUnitDayPerAcre))
	// Output: 45 cow-days
}

// And a hundred cows: how many acres a day?
func ExampleDayArea() {
	area, _ := grazing.DayArea(100*units.AnimalUnit, units.Day, 45*units.AnimalUnitDayPerAcre)
	fmt.Println(area.In(units.US))
	// Output: 2.22 ac
}

// The meadow grows 6 t a year, of which 60 % is eaten. A goat eats 2 kg a day,
// for 180 days. How many goats to the hectare?
func ExampleCarryingCapacity() {
	rate, _ := grazing.CarryingCapacity(6*units.TonnePerHectare, 60*units.Percent, 2*units.KilogramPerDay, 180*units.Day)
	fmt.Println(rate.In(units.Metric))
	// Output: 10 head/ha
}

// Twenty acres grow 3,000 lb an acre in a season of 150 days, and a dry cow eats 25 lb
// a day. How many head where the stock stay in one place, and how many where they move
// every third day?
func ExampleCarryingCapacity_bySystem() {
	for _, system := range []forage.GrazingSystem{forage.SystemContinuous, forage.SystemModerate} {
		use, err := forage.SystemUse(system, forage.UseByMaine, units.Low)
		if err != nil {
			fmt.Println(err)
			return
		}
		rate, _ := grazing.CarryingCapacity(3000*units.PoundPerAcre, use, 25*units.PoundPerDay, 150*units.Day)
		head, _ := grazing.HeadOnLand(20*units.Acre, rate)
		fmt.Printf("%s: %s used, %.2f head an acre, %.1f head\n", system, use.In(units.US), rate.HeadPerAcre(), head)
	}
	// 3,000 × 30 % ÷ (25 × 150) = 900 ÷ 3,750 = 0.24 head an acre, × 20 = 4.8;
	// 3,000 × 70 % ÷ 3,750 = 2,100 ÷ 3,750 = 0.56, × 20 = 11.2. Round down.

	// Output:
	// continuous: 30 % used, 0.24 head an acre, 4.8 head
	// moderate: 70 % used, 0.56 head an acre, 11.2 head
}

// Ewes go 13 to the hectare. What do 350 take?
func ExampleLandForHead() {
	area, _ := grazing.LandForHead(350, 13*units.HeadPerHectare)
	fmt.Println(area.In(units.Metric))
	// Output: 26.9 ha
}

// Five weeks of rest, moves every third day: how many paddocks, and how many
// where the goats follow the cow?
func ExamplePaddocks() {
	one, _ := grazing.Paddocks(5*units.Week, 3*units.Day, 1)
	two, _ := grazing.Paddocks(5*units.Week, 3*units.Day, 2)
	fmt.Printf("%.2f, so 13; with a follower %.2f, so 14\n", one, two)
	// Output: 12.67, so 13; with a follower 13.67, so 14
}

// I have eight paddocks and move every third day. How long do they rest?
func ExampleRest() {
	rest, _ := grazing.Rest(3*units.Day, 8, 1)
	fmt.Println(rest.In(units.US))
	// Output: 21 days
}

// When is the herd back in the first of twelve?
func ExampleCycle() {
	cycle, _ := grazing.Cycle(3*units.Day, 12)
	fmt.Println(cycle.In(units.US))
	// Output: 36 days
}

// Sixty acres in thirteen paddocks: how big is one?
func ExamplePaddockArea() {
	paddock, _ := grazing.PaddockArea(60*units.Acre, 13)
	fmt.Println(paddock.In(units.US))
	// Output: 4.62 ac
}

// Twenty-three one-day paddocks of 0.07 ha: how much land?
func ExampleLandForPaddocks() {
	area, _ := grazing.LandForPaddocks(0.07*units.Hectare, 23)
	fmt.Println(area.In(units.Metric))
	// Output: 1.61 ha
}

// Fifty hectares must last 25 days. How much a day?
func ExampleDailyArea() {
	daily, _ := grazing.DailyArea(50*units.Hectare, 25*units.Day)
	fmt.Println(daily.In(units.Metric))
	// Output: 2 ha
}

// The sheep need 0.12 acres and the lane is 64 ft wide. How far does the wire
// go?
func ExampleStripLength() {
	length, _ := grazing.StripLength(0.12*units.Acre, 64*units.Foot)
	fmt.Println(length.In(units.US))
	// Output: 81.7 ft
}

// I paced a strip of 82 by 64 ft. How much land is that?
func ExampleStripArea() {
	area, _ := grazing.StripArea(82*units.Foot, 64*units.Foot)
	fmt.Println(area.In(units.US))
	// Output: 0.12 ac
}

// 1,700 kg/ha stand, 1,500 shall be left, 40 a day grow for six weeks. How
// many ewes of 2.9 kg a day, with 15 % spoilt, does a hectare feed?
func ExampleHeadPerLand() {
	grazeable, _ := grazing.GrazeableMass(1700*units.KilogramPerHectare, 1500*units.KilogramPerHectare, 40*units.KilogramPerHectareDay, 42*units.Day)
	need, _ := grazing.HeadNeed(2.9*units.KilogramPerDay, 42*units.Day, 15*units.Percent)
	rate, _ := grazing.HeadPerLand(grazeable, need)
	fmt.Println(grazeable.In(units.Metric), "|", need.In(units.Metric), "|", rate.In(units.Metric))
	// Output: 1,880 kg/ha | 140 kg | 13.4 head/ha
}

// What can be grazed in ten days of slow growth?
func ExampleGrazeableMass() {
	grazeable, _ := grazing.GrazeableMass(1900*units.KilogramPerHectare, 1500*units.KilogramPerHectare, 12*units.KilogramPerHectareDay, 10*units.Day)
	fmt.Println(grazeable.In(units.Metric))
	// Output: 520 kg/ha
}

// What is an animal-unit month of 26 lb a day?
func ExampleHeadNeed() {
	need, _ := grazing.HeadNeed(26*units.PoundPerDay, 30*units.Day, 0)
	fmt.Println(need.In(units.US))
	// Output: 780 lb
}

// One cow eats 42 lb a day from one acre that grows 45. Does it hold?
func ExampleGrowthLessNeed() {
	surplus, _ := grazing.GrowthLessNeed(45*units.PoundPerAcreDay, 42*units.PoundPerDay, units.Acre)
	fmt.Println(surplus.In(units.US))
	// Output: 3 lb/ac/day
}

// Autumn: 2,000 kg/ha over 12 ha, growing 30 a day, and a herd that eats 480
// kg. Where are we in ten days?
func ExampleCoverAfter() {
	cover, _ := grazing.CoverAfter(2000*units.KilogramPerHectare, 30*units.KilogramPerHectareDay, 480*units.KilogramPerDay, 12*units.Hectare, 10*units.Day)
	fmt.Println(cover.In(units.Metric))
	// Output: 1,900 kg/ha
}

// What cover do 2.6 cows a hectare want on the day growth catches up?
func ExampleBalanceCover() {
	cover, _ := grazing.BalanceCover(2.6*units.HeadPerHectare, 16*units.KilogramPerDay, 25*units.Day, 1600*units.KilogramPerHectare)
	fmt.Println(cover.In(units.Metric))
	// Output: 2,120 kg/ha
}

// Two hectares of 6 t, half of it eaten, and 20 kg a day all year: which
// months are short?
func ExampleMonthBalance() {
	shares := [12]units.Fraction{0, 0, 0.05, 0.10, 0.25, 0.20, 0.10, 0.10, 0.10, 0.06, 0.04, 0}
	var demand [12]units.Demand
	for i := range demand {
		demand[i] = 20 * units.KilogramPerDay
	}
	months, err := grazing.MonthBalance(6*units.TonnePerHectare, shares, 2*units.Hectare, 50*units.Percent, demand, 2001)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, m := range months[2:6] {
		fmt.Printf("%-6s %5.0f - %3.0f = %5.0f kg\n", m.Month, float64(m.Supply), float64(m.Need), float64(m.Difference))
	}
	// Output:
	// March    300 - 620 =  -320 kg
	// April    600 - 600 =     0 kg
	// May     1500 - 620 =   880 kg
	// June    1200 - 600 =   600 kg
}

// How much fence goes round ten acres, as a square and four times as long as
// wide?
func ExampleFenceLength() {
	square, _ := grazing.FenceLength(10*units.Acre, 1)
	long, _ := grazing.FenceLength(10*units.Acre, 4)
	fmt.Println(square.In(units.US), "or", long.In(units.US))
	// Output: 2,640 ft or 3,300 ft
}

// How long is the side of a square acre?
func ExampleSquareSide() {
	side, _ := grazing.SquareSide(units.Acre)
	fmt.Println(side.In(units.US))
	// Output: 209 ft
}

// Three lanes, each 600 by 60 ft, side by side: how much standing fence?
func ExampleLaneSides() {
	fence, _ := grazing.LaneSides(600*units.Foot, 60*units.Foot, 3)
	fmt.Println(fence.In(units.US))
	// Output: 2,760 ft
}

// A leader and a follower on neighbouring strips of a 60-ft lane: how much
// movable wire?
func ExampleCrossWires() {
	wires, _ := grazing.CrossWires(60*units.Foot, 2)
	fmt.Println(wires.In(units.US))
	// Output: 180 ft
}

// Four strands round one mile: how much wire?
func ExampleWireLength() {
	wire, _ := grazing.WireLength(units.Mile, 4)
	fmt.Printf("%.0f miles\n", wire.Miles())
	// Output: 4 miles
}

// The same animals on the same meadow, from a thick start and from a thin one:
// where does it end?
func ExampleSetStocked() {
	s := grazing.SetStocking{
		Ceiling:        4000 * units.KilogramPerHectare,
		RelativeGrowth: 0.05,
		HalfIntake:     500 * units.KilogramPerHectare,
		FullIntake:     50 * units.KilogramPerHectareDay,
		Start:          1000 * units.KilogramPerHectare,
		Days:           1000,
	}
	thick, err := grazing.SetStocked(s)
	if err != nil {
		fmt.Println(err)
		return
	}
	s.Start = 600 * units.KilogramPerHectare
	thin, _ := grazing.SetStocked(s)
	fmt.Printf("from 1,000: %.0f kg/ha; from 600: %.0f kg/ha\n", thick[1000].KilogramsPerHectare(), thin[1000].KilogramsPerHectare())
	// Output: from 1,000: 2781 kg/ha; from 600: 0 kg/ha
}

// How thin may that meadow get before it tips?
func ExampleSetStockedBalances() {
	low, high, _ := grazing.SetStockedBalances(grazing.SetStocking{
		Ceiling:        4000 * units.KilogramPerHectare,
		RelativeGrowth: 0.05,
		HalfIntake:     500 * units.KilogramPerHectare,
		FullIntake:     50 * units.KilogramPerHectareDay,
	})
	fmt.Printf("above %.0f kg/ha it comes back to %.0f\n", low.KilogramsPerHectare(), high.KilogramsPerHectare())
	// Output: above 719 kg/ha it comes back to 2781
}
