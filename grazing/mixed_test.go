package grazing_test

import (
	"fmt"

	"example.org/soum/grazing"
	"example.org/soum/units"
)

// Half of a hundred cows go, five sheep come for each. How many sheep?
func ExampleReplacementHead() {
	sheep, _ := grazing.ReplacementHead(100, 50*units.Percent, 5)
	fmt.Println(sheep)
	// Output: 250
}

// Is the mixture heavier than either alone?
func ExampleRelativeLoad() {
	load, _ := grazing.RelativeLoad(2.11*units.HeadPerHectare, 4.44*units.HeadPerHectare, 8.1*units.HeadPerHectare, 15.2*units.HeadPerHectare)
	fmt.Printf("%.3f\n", load)
	// Output: 1.008
}
