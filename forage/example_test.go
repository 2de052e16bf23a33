package forage_test

import (
	"fmt"
	"time"

	"example.org/soum/forage"
	"example.org/soum/units"
)

// How much can be eaten of an 8-inch stand if I leave 3 in?
func ExampleAvailable() {
	yield, err := forage.Available(8*units.HeightInch, 3*units.HeightInch, 250*units.PoundPerAcreInch)
	fmt.Println(yield.In(units.US), err)
	// Output: 1,250 lb/ac <nil>
}

// The stand is shorter than what I mean to leave.
func ExampleAvailable_impossible() {
	_, err := forage.Available(2*units.HeightInch, 3*units.HeightInch, 250*units.PoundPerAcreInch)
	fmt.Println(err)
	// Output: forage.Available: residual is 3 in, must be from 0 in to height (2 in)
}

// What stands on the meadow in all, at 6 in?
func ExampleStanding() {
	yield, _ := forage.Standing(6*units.HeightInch, 300*units.PoundPerAcreInch)
	fmt.Println(yield.In(units.US))
	// Output: 1,800 lb/ac
}

// How tall is a stand of 1,500 lb/ac?
func ExampleHeightOf() {
	height, _ := forage.HeightOf(1500*units.PoundPerAcre, 300*units.PoundPerAcreInch)
	fmt.Println(height.In(units.US))
	// Output: 5 in
}

// The plate meter reads 10 cm. What is there above 4 cm?
func ExamplePlateAvailable() {
	yield, _ := forage.PlateAvailable(10*units.PlateCentimetre, 4*units.PlateCentimetre, 250*units.PlateKilogramPerHectareCentimetre)
	fmt.Println(yield.In(units.Metric))
	// Output: 1,500 kg/ha
}

// What share of the grass do sheep eat if they stay three days, and what if
// they move twice a day?
func ExampleUsableShare() {
	three, _ := forage.UsableShare(3 * units.Day)
	half, err := forage.UsableShare(12 * units.Hour)
	fmt.Println(three.In(units.US))
	fmt.Println(half.In(units.US))
	fmt.Println(err)
	// Output:
	// 75 %
	// 80 %
	// forage.UsableShare: stay is 0.5 days, outside what PSU-STAY covers (from 1 day to 7 days); the value is still given
}

// What can my ewes take from 3 acres with 1,000 lb/ac to spare?
func ExampleUsable() {
	mass, _ := forage.Usable(1000*units.PoundPerAcre, 3*units.Acre, 75*units.Percent)
	fmt.Println(mass.In(units.US))
	// Output: 2,250 lb
}

// A steer eats 19.2 lb a day but wastes most of what it walks on. What must I
// offer?
func ExampleAllotment() {
	offered, _ := forage.Allotment(19.2*units.PoundPerDay, 30*units.Percent)
	fmt.Println(offered.In(units.US))
	// Output: 64 lb/day
}

// How much land does one animal unit need in May, and how much in October?
func ExampleLandPerUnitMonth() {
	may, _ := forage.LandPerUnitMonth(25*units.PoundPerDay, 31, 3*units.ShortTonPerAcre, 31*units.Percent, 70*units.Percent)
	october, _ := forage.LandPerUnitMonth(25*units.PoundPerDay, 31, 3*units.ShortTonPerAcre, 6*units.Percent, 70*units.Percent)
	fmt.Println(may.In(units.US), october.In(units.US))
	// Output: 0.595 ac 3.08 ac
}

// How fast does a three-ton pasture grow in June?
func ExampleMonthGrowth() {
	growth, _ := forage.MonthGrowth(3*units.ShortTonPerAcre, 20*units.Percent, 30)
	fmt.Println(growth.In(units.US))
	// Output: 40 lb/ac/day
}

// I measured 1,700 kg/ha six weeks ago and 3,380 today.
func ExampleMeanGrowth() {
	growth, _ := forage.MeanGrowth(3380*units.KilogramPerHectare, 1700*units.KilogramPerHectare, 6*units.Week)
	fmt.Println(growth.In(units.Metric))
	// Output: 40 kg/ha/day
}

// What will stand on the lane three weeks after the cows left it?
func ExampleRegrown() {
	mass, _ := forage.Regrown(1200*units.KilogramPerHectare, 4000*units.KilogramPerHectare, 50*units.KilogramPerHectareDay, 3*units.Week)
	fmt.Println(mass.In(units.Metric))
	// Output: 2,202 kg/ha
}

// When may they come back?
func ExampleDaysToRegrow() {
	days, _ := forage.DaysToRegrow(1000*units.KilogramPerHectare, 3000*units.KilogramPerHectare, 4000*units.KilogramPerHectare, 50*units.KilogramPerHectareDay)
	fmt.Println(days.In(units.Metric))
	// Output: 43.9 days
}

// My pasture grew 45 kg/ha/day while I grazed it between 1,000 and 3,000. How
// fast does it grow at its best?
func ExamplePeakGrowth() {
	share, _ := forage.MeanToPeak(1000*units.KilogramPerHectare, 3000*units.KilogramPerHectare, 4000*units.KilogramPerHectare)
	peak, _ := forage.PeakGrowth(45*units.KilogramPerHectareDay, share)
	fmt.Println(peak.In(units.Metric))
	// Output: 49.4 kg/ha/day
}

// By how much does the mean growth stay under the fastest?
func ExampleMeanToPeak() {
	share, _ := forage.MeanToPeak(1000*units.KilogramPerHectare, 3000*units.KilogramPerHectare, 4000*units.KilogramPerHectare)
	fmt.Printf("%.2f\n", share)
	// Output: 0.91
}

// Two thirds of the stand is clover.
func ExampleBloatRisk() {
	risk, _ := forage.BloatRisk(67 * units.Percent)
	fmt.Println(risk)
	// Output: raised
}

// Which pastures are there to begin from?
func ExamplePastures() {
	for _, p := range forage.Pastures() {
		fmt.Println(p.Name, p.TurnIn.High.In(units.US))
	}
	// Output:
	// bluegrass-clover 6 in
	// orchardgrass-legume 12 in
	// timothy-legume 8 in
	// ryegrass-clover 3.94 in
	// tall-fescue 8 in
	// mixed-pasture 6 in
	// warm-season-grass 6 in
}

// What does a good stand of orchardgrass hold to the inch?
func ExamplePastureByName() {
	p, _ := forage.PastureByName("orchardgrass-legume")
	density, _ := p.Density(forage.Good)
	fmt.Println(density.Low.In(units.US), "to", density.High.In(units.US))
	// Output: 250 lb/ac/in to 300 lb/ac/in
}

// The same figures one at a time.
func ExampleDensityOf() {
	density, _ := forage.DensityOf("tall-fescue", forage.Fair, units.High)
	turnIn, _ := forage.TurnInOf("tall-fescue", units.Low)
	leave, _ := forage.LeaveOf("tall-fescue", units.High)
	yield, _ := forage.YieldOf("tall-fescue", forage.ProductivityMedium)
	may, _ := forage.ShareOf("tall-fescue", time.May)
	fmt.Println(density.In(units.US))
	fmt.Println(turnIn.In(units.US), leave.In(units.US))
	fmt.Println(yield.ShortTonsPerAcre(), may.In(units.US))
	// Output:
	// 150 lb/ac/in
	// 4 in 3 in
	// 3 35 %
}

// A plate of 1 oz holds fresh grass to 9 oz, and weighs 3 oz when it is dry.
func ExampleDryMatterContent() {
	share, err := forage.DryMatterContent(9*units.Ounce, 3*units.Ounce, 1*units.Ounce)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(share.In(units.US))
	// Output: 25 %
}

// How tall should bluegrass and clover stand before I turn in, and what do I leave?
func ExampleTurnInOf() {
	height, err := forage.TurnInOf("bluegrass-clover", units.Low)
	fmt.Println(height.In(units.US), err)
	// Output: 4 in <nil>
}

func ExampleLeaveOf() {
	height, err := forage.LeaveOf("bluegrass-clover", units.Low)
	fmt.Println(height.In(units.US), err)
	// Output: 1 in <nil>
}

// What does such a stand grow in a year on middling land?
func ExampleYieldOf() {
	yield, err := forage.YieldOf("bluegrass-clover", forage.ProductivityMedium)
	fmt.Println(yield.In(units.US), err)
	// Output: 4,000 lb/ac <nil>
}

// How much of that comes in July?
func ExampleShareOf() {
	share, err := forage.ShareOf("bluegrass-clover", time.July)
	fmt.Println(share.In(units.US), err)
	// Output: 5 % <nil>
}
