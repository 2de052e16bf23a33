package rainfall_test

import (
	"fmt"

	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// It has rained and the soil is 2 mm short of full. May the cows go in?
func ExampleGroundFor() {
	ground, err := rainfall.GroundFor(2 * units.RainMillimetre)
	fmt.Println(ground, err)
	// Output: soft <nil>
}

// What will it cost me if they do?
func ExamplePuggingLoss() {
	fmt.Println(rainfall.PuggingLoss(units.Low).In(units.US), "to", rainfall.PuggingLoss(units.High).In(units.US), "of a year's grass")
	// Output: 16 % to 80 % of a year's grass
}
