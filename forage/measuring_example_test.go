package forage_test

import (
	"fmt"

	"example.org/soum/forage"
	"example.org/soum/units"
)

// A square yard gave 2.07 lb of grass at 25 % dry matter. How much is an acre?
func ExampleClippedYield() {
	yield, err := forage.ClippedYield(2.07*units.FreshPound, 25*units.Percent, 1*units.SquareYard)
	fmt.Println(yield.In(units.US), err)
	// Output: 2,505 lb/ac <nil>
}

// How much ground lies inside a hoop of 3.545 m round?
func ExampleHoopArea() {
	area, err := forage.HoopArea(3.545 * units.Metre)
	fmt.Printf("%.2f m² %v\n", area.SquareMetres(), err)
	// Output: 1.00 m² <nil>
}

// Which factors do printed frames take for a gram?
func ExampleFrames() {
	for _, f := range forage.Frames()[:3] {
		fmt.Printf("%s: %.0f\n", f.Name, f.Factor.PoundsPerAcre())
	}
	// Output:
	// ten-plots-of-0.96-ft2: 10
	// ten-plots-of-2.4-ft2: 4
	// ten-plots-of-9.6-ft2: 1
}

// What ground do ten plots of 0.96 ft² clip?
func ExampleFrameArea() {
	area, err := forage.FrameArea("ten-plots-of-0.96-ft2")
	fmt.Printf("%.1f ft² %v\n", area.SquareFeet(), err)
	// Output: 9.6 ft² <nil>
}

// Crested wheatgrass in full bloom: what is left of its green weight when air-dry?
func ExampleAirDryShare() {
	share, err := forage.AirDryShare(forage.PlantCrestedWheatgrass, forage.StageFullBloom)
	fmt.Println(share.In(units.US), err)
	// Output: 60 % <nil>
}

// The plate reads 8 cm; the leaflet's line is 250 kg/ha/cm with nothing beside.
func ExamplePlateCover() {
	cover, err := forage.PlateCover(8*units.PlateCentimetre, 250*units.PlateKilogramPerHectareCentimetre, 0)
	fmt.Println(cover.In(units.Metric), err)
	// Output: 2,000 kg/ha <nil>
}

// The counter went from 5,700 to 6,300 in forty readings.
func ExampleCountedCover() {
	cover, err := forage.CountedCover(5700, 6300, 40, 158*units.KilogramPerHectare, 330*units.KilogramPerHectare)
	fmt.Println(cover.In(units.Metric), err)
	// Output: 2,700 kg/ha <nil>
}

// What slope did ryegrass and clover have in a first winter?
func ExamplePlateSlope() {
	slope, err := forage.PlateSlope("ryegrass-clover-first-winter")
	fmt.Println(slope.In(units.Metric), err)
	// Output: 312 kg/ha/cm <nil>
}

func ExamplePlateEquations() {
	for _, r := range forage.PlateEquations()[:2] {
		fmt.Println(r.Name, r.Slope.In(units.Metric))
	}
	// Output:
	// irish-ryegrass 250 kg/ha/cm
	// ryegrass-clover-first-winter 312 kg/ha/cm
}

// An average stand of 10 in grazed to 6: how much of it can be taken? The height
// is not what counts alone: the lower inches hold more.
func ExampleCurveMass() {
	before, err := forage.CurveMass(10*units.HeightInch, forage.Average)
	fmt.Println(before.In(units.US), err)
	after, err := forage.CurveMass(6*units.HeightInch, forage.Average)
	fmt.Println((before - after).In(units.US), err)
	// Output:
	// 2,679 lb/ac <nil>
	// 805 lb/ac <nil>
}

// Five readings, in inches: how high is the grass, and how sure is that?
func ExampleMeanHeight() {
	const in = units.HeightInch
	walk, err := forage.MeanHeight([]units.Height{8 * in, 10 * in, 12 * in, 9 * in, 11 * in}, 95*units.Percent)
	fmt.Printf("%.1f in, between %.1f and %.1f; %v\n", walk.Mean.Inches(), walk.Low.Inches(), walk.High.Inches(), err)
	// Output: 10.0 in, between 8.0 and 12.0; <nil>
}

func ExampleMeanPlateHeight() {
	const cm = units.PlateCentimetre
	walk, err := forage.MeanPlateHeight([]units.PlateHeight{6 * cm, 10 * cm}, 50*units.Percent)
	fmt.Printf("%.0f cm, between %.0f and %.0f; %v\n", walk.Mean.Centimetres(), walk.Low.Centimetres(), walk.High.Centimetres(), err)
	// Output: 8 cm, between 6 and 10; <nil>
}

func ExampleMeanYield() {
	const kg = units.KilogramPerHectare
	clips, err := forage.MeanYield([]units.Yield{2000 * kg, 2600 * kg, 2000 * kg}, 60*units.Percent)
	fmt.Printf("%.0f ± %.0f kg/ha; %v\n", clips.Mean.KilogramsPerHectare(), (clips.High - clips.Mean).KilogramsPerHectare(), err)
	// Output: 2200 ± 212 kg/ha; <nil>
}

// Readings scatter by a fifth of their mean. How many for a mean within a tenth,
// nineteen times in twenty?
func ExampleReadingsNeeded() {
	n, err := forage.ReadingsNeeded(21.3*units.Percent, 10*units.Percent, 95*units.Percent)
	fmt.Println(n, err)
	// Output: 20 <nil>
}

// Five places clipped make a line of one's own; the paddock then reads 10 cm.
func ExampleCalibratePlate() {
	const cm, kg = units.PlateCentimetre, units.KilogramPerHectare
	line, err := forage.CalibratePlate(
		[]units.PlateHeight{4 * cm, 6 * cm, 8 * cm, 10 * cm, 12 * cm},
		[]units.Yield{1400 * kg, 1900 * kg, 2600 * kg, 2900 * kg, 3700 * kg}, false)
	fmt.Printf("%.0f a cm and %.0f, give or take %.0f; %v\n", line.Slope.KilogramsPerHectareCentimetre(),
		line.Intercept.KilogramsPerHectare(), line.Deviation.KilogramsPerHectare(), err)
	// Output: 280 a cm and 260, give or take 121; <nil>
}

func ExamplePlateMass() {
	const cm, kg = units.PlateCentimetre, units.KilogramPerHectare
	line, _ := forage.CalibratePlate(
		[]units.PlateHeight{4 * cm, 6 * cm, 8 * cm, 10 * cm, 12 * cm},
		[]units.Yield{1400 * kg, 1900 * kg, 2600 * kg, 2900 * kg, 3700 * kg}, false)
	got, err := forage.PlateMass(line, 10*cm, 20, 95*units.Percent)
	fmt.Printf("%.0f kg/ha, error %.0f; %v\n", got.Mass.KilogramsPerHectare(), got.Error.KilogramsPerHectare(), err)
	// Output: 3060 kg/ha, error 72; <nil>
}

func ExampleCalibrateRuler() {
	const cm, kg = units.HeightCentimetre, units.KilogramPerHectare
	line, err := forage.CalibrateRuler([]units.Height{10 * cm, 20 * cm, 30 * cm}, []units.Yield{1000 * kg, 2300 * kg, 3000 * kg}, false)
	fmt.Printf("%.0f a cm and %.0f; %v\n", line.Slope.KilogramsPerHectareCentimetre(), line.Intercept.KilogramsPerHectare(), err)
	// Output: 100 a cm and 100; <nil>
}

func ExampleRulerMass() {
	const cm, kg = units.HeightCentimetre, units.KilogramPerHectare
	line, _ := forage.CalibrateRuler([]units.Height{10 * cm, 20 * cm, 30 * cm}, []units.Yield{1000 * kg, 2300 * kg, 3000 * kg}, false)
	got, err := forage.RulerMass(line, 20*cm, 4, 50*units.Percent)
	fmt.Printf("%.0f kg/ha, error %.0f; %v\n", got.Mass.KilogramsPerHectare(), got.Error.KilogramsPerHectare(), err)
	// Output: 2100 kg/ha, error 187; <nil>
}
