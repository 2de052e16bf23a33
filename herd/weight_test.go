package herd_test

import (
	"fmt"

	"example.org/soum/herd"
	"example.org/soum/units"
)

// What do a cow of 1,100 lb and a calf to be weaned at 500 lb weigh on average?
func ExamplePairWeight() {
	pair, err := herd.PairWeight(1100*units.LivePound, 500*units.LivePound)
	fmt.Println(pair.In(units.US), err)
	// Output:
	// 1,350 lb <nil>
}
