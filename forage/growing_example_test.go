package forage_test

import (
	"fmt"
	"time"

	"example.org/soum/forage"
	"example.org/soum/grazing"
	"example.org/soum/units"
)

// Sixty kilograms a hectare and day for three weeks.
func ExampleGrown() {
	mass, err := forage.Grown(60*units.KilogramPerHectareDay, 3*units.Week)
	fmt.Println(mass.In(units.Metric), err)
	// Output: 1,260 kg/ha <nil>
}

// The spring had three quarters of its rain; 60 kg a day are usual in May.
func ExampleGrowthByRain() {
	growth, err := forage.GrowthByRain(60*units.KilogramPerHectareDay, 75*units.Percent)
	fmt.Println(growth.In(units.Metric), err)
	// Output: 45 kg/ha/day <nil>
}

func ExampleGompertz() {
	mass, err := forage.Gompertz(250*units.KilogramPerHectare, 4000*units.KilogramPerHectare, 50*units.KilogramPerHectareDay, 20.4*units.Day)
	fmt.Println(mass.In(units.Metric), err)
	// Output: 1,000 kg/ha <nil>
}

func ExampleGompertzDays() {
	days, err := forage.GompertzDays(250*units.KilogramPerHectare, 1000*units.KilogramPerHectare, 4000*units.KilogramPerHectare, 50*units.KilogramPerHectareDay)
	fmt.Printf("%.1f days %v\n", float64(days), err)
	// Output: 20.4 days <nil>
}

// A meadow comes to grow 150 kg a day; its steady line starts at day 20.
func ExampleExpolinear() {
	mass, err := forage.Expolinear(150*units.KilogramPerHectareDay, 0.1, 50, 20)
	fmt.Println(mass.In(units.Metric), err)
	// Output: 4,573 kg/ha <nil>
}

// When does that meadow hold 3 t a hectare?
func ExampleExpolinearDays() {
	days, err := forage.ExpolinearDays(3*units.TonnePerHectare, 150*units.KilogramPerHectareDay, 0.1, 20)
	fmt.Printf("day %.0f %v\n", float64(days), err)
	// Output: day 39 <nil>
}

func ExampleGrowthCurves() {
	for _, c := range forage.GrowthCurves()[:2] {
		fmt.Printf("%s: %.0f %% in May\n", c.Name, c.Shares[time.May-1].Percent())
	}
	// Output:
	// north-dakota-cool-season: 40 % in May
	// colorado-warm-season: 20 % in May
}

// A range of 2,000 lb an acre and year in North Dakota: how much grows a day in June?
func ExampleCurveShare() {
	share, err := forage.CurveShare("north-dakota-cool-season", time.June)
	fmt.Println(share.In(units.US), err)
	growth, err := forage.MonthGrowth(2000*units.PoundPerAcre, share, 30)
	fmt.Println(growth.In(units.US), err)
	// Output:
	// 35 % <nil>
	// 23.3 lb/ac/day <nil>
}

func ExampleSeasonCurves() {
	for _, c := range forage.SeasonCurves()[:2] {
		fmt.Println(c.Place, c.Spring.In(units.Metric))
	}
	// Output:
	// gisborne-plains 35 %
	// wairarapa 46 %
}

func ExampleSeasonShare() {
	share, err := forage.SeasonShare("southland-plains", forage.Winter)
	fmt.Println(share.In(units.Metric), err)
	// Output: 6 % <nil>
}

func ExampleGrowthRows() {
	for _, r := range forage.GrowthRows()[:2] {
		fmt.Println(r.Place, r.When, r.Growth.In(units.US))
	}
	// Output:
	// ohio-2010 28-march 38.6 lb/ac/day
	// ohio-2010 4-april 34.4 lb/ac/day
}

func ExampleDailyGrowth() {
	growth, err := forage.DailyGrowth("ohio-five-years", "16-may")
	fmt.Println(growth.In(units.US), err)
	// Output: 100 lb/ac/day <nil>
}

// From 1,500 to 2,800 kg a hectare at 65 kg a day.
func ExampleRestFromGrowth() {
	rest, err := forage.RestFromGrowth(1500*units.KilogramPerHectare, 2800*units.KilogramPerHectare, 65*units.KilogramPerHectareDay)
	fmt.Println(rest.In(units.Metric), err)
	// Output: 20 days <nil>
}

func ExampleRestRows() {
	r := forage.RestRows()[0]
	fmt.Println(r.Situation, r.Rest.Low, r.Rest.High)
	// Output: alfalfa-grazing-type 15 days 30 days
}

func ExampleRestOf() {
	rest, err := forage.RestOf("british-pasture", forage.Autumn, units.High)
	fmt.Println(rest.In(units.Metric), err)
	// Output: 40 days <nil>
}

// Stays of three days on grass with clover in West Virginia: how many paddocks?
func ExampleLongestRest() {
	rest, err := forage.LongestRest("west-virginia-grass-clover")
	fmt.Println(rest.In(units.US), err)
	paddocks, err := grazing.Paddocks(rest, 3*units.Day, 1)
	fmt.Println(paddocks, err)
	// Output:
	// 42 days <nil>
	// 15 <nil>
}

// Three leaves of ryegrass in autumn: at least how long?
func ExampleLeafDays() {
	leaf, err := forage.LeafDays(forage.Autumn, units.Low)
	fmt.Println((3 * leaf).In(units.Metric), err)
	// Output: 24 days <nil>
}

func ExampleTrampled() {
	lost, err := forage.Trampled(1000*units.PoundPerAcre, 75*units.Percent)
	fmt.Println(lost.In(units.US), err)
	// Output: 250 lb/ac <nil>
}

// Half stays, a quarter is lost: what may stock eat?
func ExampleEatenShare() {
	share, err := forage.EatenShare(50*units.Percent, 25*units.Percent)
	fmt.Println(share.In(units.US), err)
	// Output: 25 % <nil>
}

func ExamplePalatableAbove() {
	mass, err := forage.PalatableAbove(3000*units.KilogramPerHectare, 15*units.Percent, 10*units.Percent, 1200*units.KilogramPerHectare)
	fmt.Println(mass.In(units.Metric), err)
	// Output: 1,095 kg/ha <nil>
}

func ExampleHeightRemoved() {
	share, err := forage.HeightRemoved(10*units.HeightInch, 2*units.HeightInch)
	fmt.Println(share.In(units.US), err)
	// Output: 80 % <nil>
}

// Sixty per cent of the top is bitten off. How much of the roots stops, by the two
// tests that differ most?
func ExampleRootStop() {
	for _, test := range []forage.RootTest{forage.RootTestSecond, forage.RootTestFourth} {
		stopped, err := forage.RootStop(60*units.Percent, test)
		fmt.Println(stopped.In(units.US), err)
	}
	// Output:
	// 80 % <nil>
	// 36 % <nil>
}

func ExampleMinimumResidue() {
	mass, err := forage.MinimumResidue(forage.Midgrass, units.Low)
	fmt.Println(mass.In(units.US), err)
	// Output: 750 lb/ac <nil>
}

func ExampleUseRows() {
	r := forage.UseRows()[0]
	fmt.Println(r.System, r.By, r.Share.Low.In(units.US), r.Share.High.In(units.US))
	// Output: continuous georgia 30 % 40 %
}

func ExampleSystemUse() {
	for _, by := range []forage.UseSource{forage.UseByGeorgia, forage.UseByBritain} {
		share, err := forage.SystemUse(forage.SystemModerate, by, units.High)
		fmt.Println(share.In(units.US), err)
	}
	// Output:
	// 70 % <nil>
	// 65 % <nil>
}

// 2.6 cows a hectare eat 16 kg each of the pasture, on a round of 25 days.
func ExampleTurnInCover() {
	cover, err := forage.TurnInCover(41.6*units.KilogramPerDay, 1*units.Hectare, 25*units.Day, 1600*units.KilogramPerHectare)
	fmt.Println(cover.In(units.Metric), err)
	// Output: 2,640 kg/ha <nil>
}

// A walk over three paddocks: which is ahead of the line?
func ExampleLineOfCovers() {
	const ha, kg = units.Hectare, units.KilogramPerHectare
	line, err := forage.LineOfCovers([]forage.PaddockCover{
		{Paddock: "hill", Area: 1 * ha, Cover: 2000 * kg},
		{Paddock: "brook", Area: 2 * ha, Cover: 2600 * kg},
		{Paddock: "yard", Area: 1 * ha, Cover: 1600 * kg},
	}, 80*units.KilogramPerDay, 20*units.Day, 1500*kg)
	fmt.Println(line.Mean.In(units.Metric), line.TargetMean.In(units.Metric), err)
	for _, p := range line.Places {
		fmt.Println(p.Paddock, p.Cover.In(units.Metric), p.Target.In(units.Metric))
	}
	// Output:
	// 2,200 kg/ha 1,700 kg/ha <nil>
	// brook 2,600 kg/ha 1,800 kg/ha
	// hill 2,000 kg/ha 1,650 kg/ha
	// yard 1,600 kg/ha 1,550 kg/ha
}

// The soil survey says four tons of hay. What does a paddock hold at each turn?
func ExampleForagePerTurn() {
	ready, err := forage.ForagePerTurn(4 * units.ShortTonPerAcre)
	fmt.Println(ready.In(units.US), err)
	// Output: 1,600 lb/ac <nil>
}
