package units_test

import (
	"errors"
	"fmt"
	"time"

	"github.com/shopspring/decimal"

	"example.org/soum/units"
)

// A lane is 90 feet wide and 300 feet long: how many acres is that?
func Example() {
	width, length := 90*units.Foot, 300*units.Foot
	area := units.Area(float64(width) * float64(length)) // metres times metres are square metres
	fmt.Println(area.In(units.US))
	fmt.Println(area.In(units.Metric))
	// Output:
	// 0.62 ac
	// 0.251 ha
}

// What a person types carries its unit, and a mistake is told with the mend.
func ExampleParseArea() {
	pasture, _ := units.ParseArea("3.5 ac")
	fmt.Println(pasture.In(units.Metric))

	_, err := units.ParseArea("3.5")
	fmt.Println(err)
	// Output:
	// 1.42 ha
	// "3.5": the unit is missing; area takes a number and one of: m2, ha, ft2, yd2, ac
}

// How much is a short ton of hay to the acre in the units of a metric handbook?
func ExampleYield_In() {
	fmt.Println((1 * units.ShortTonPerAcre).In(units.Metric))
	// Output: 2,242 kg/ha
}

func ExampleParseDensity() {
	density, _ := units.ParseDensity("250 lb/ac/in")
	fmt.Println(density.In(units.Metric))
	// Output: 110 kg/ha/cm
}

func ExampleFraction() {
	moisture, _ := units.ParseFraction("28 %")
	fmt.Println(moisture.Whole(), moisture)
	// Output: 0.28 0.28 share
}

// A ton is three masses, so it is asked which.
func ExampleParseMass() {
	_, err := units.ParseMass("3 tons")
	fmt.Println(err)
	// Output: "3 tons": "tons" may be the tonne or the short ton: write "t" or "short ton"; mass takes a number and one of: kg, g, t, lb, oz, short ton
}

// The ewes leave a paddock on 15 April and it wants 30 days of rest.
func ExampleDate() {
	left, _ := units.ParseDate("2000-04-15")
	back := left.Add(30)
	fmt.Println(back, back.Weekday(), back.Sub(left).In(units.US))
	// Output: 2000-05-15 Monday 30 days
}

func ExampleNewDate() {
	_, exists := units.NewDate(2001, time.February, 29)
	fmt.Println(exists)
	// Output: false
}

// Ten degrees warmer is not ten degrees.
func ExampleTemperature() {
	morning := units.Fahrenheit(50)
	noon := morning.Add(10 * units.FahrenheitDegree)
	fmt.Println(noon.In(units.US), "or", noon.In(units.Metric))
	// Output: 60 °F or 15.6 °C
}

func ExampleCelsius() {
	fmt.Println(units.Celsius(20).In(units.US))
	// Output: 68 °F
}

// Hay at 180 dollars a tonne: what do 400 lb cost?
func ExampleFeedPrice_Of() {
	price, _ := units.ParseFeedPrice("180 USD/t")
	fmt.Println(price.Of(400*units.FreshPound, 2))
	// Output: 32.66 USD
}

func ExampleMoney_Divide() {
	rent, _ := units.ParseMoney("1000 USD")
	month, _ := rent.Divide(decimal.NewFromInt(12), 2)
	fmt.Println(month)
	// Output: 83.33 USD
}

func ExampleMoney_Add() {
	hay, _ := units.ParseMoney("90 USD")
	wire, _ := units.ParseMoney("40 EUR")
	_, err := hay.Add(wire)
	fmt.Println(err)
	// Output: units.Money.Add: other is "40 EUR": 90 USD and 40 EUR are two currencies, change one into the other first; it takes one of: USD
}

// A printed span stays a span until somebody picks an end.
func ExampleSpan() {
	printed := units.Span[units.Density]{Low: 250 * units.PoundPerAcreInch, High: 300 * units.PoundPerAcreInch}
	for _, end := range []units.End{units.Low, units.Middle, units.High} {
		fmt.Println(end, printed.At(end).In(units.US))
	}
	// Output:
	// low 250 lb/ac/in
	// middle 275 lb/ac/in
	// high 300 lb/ac/in
}

func ExampleNumber() {
	fmt.Println(units.Number(1249.6), units.Number(1.0/7), units.Number(12.74))
	// Output: 1,250 0.143 12.7
}

// A value outside what a source covers comes with an error that says so, and
// the value; an impossible one comes without a value.
func ExampleImpossible() {
	for _, err := range []error{&units.RangeError{}, &units.DomainError{}, errors.New("the file is missing")} {
		fmt.Println(units.Impossible(err))
	}
	// Output:
	// false
	// true
	// false
}
