// Command strip answers one question: how long a strip for tomorrow?
package main

import (
	"fmt"
	"log"

	"example.org/soum/forage"
	"example.org/soum/grazing"
	"example.org/soum/herd"
	"example.org/soum/units"
)

// Ten ewes of 150 lb, in milk, eat 4.5 % of their weight a day, all from
// pasture. The grass stands 8 in high at 250 lb an acre and inch; 4 in are to be
// left. The lane is 100 ft wide. How long is tomorrow's strip?
func main() {
	demand, err := herd.Demand(10, 150*units.LivePound, 4.5*units.Percent, 100*units.Percent)
	check(err)
	available, err := forage.Available(8*units.HeightInch, 4*units.HeightInch, 250*units.PoundPerAcreInch)
	check(err)
	use, err := forage.UsableShare(1 * units.Day)
	check(err)
	area, err := grazing.StayArea(demand, 1*units.Day, available, use)
	check(err)
	length, err := grazing.StripLength(area, 100*units.Foot)
	check(err)

	fmt.Printf("They want %s; %s stand above what is left, of which %s are eaten in a day.\n",
		demand.In(units.US), available.In(units.US), use.In(units.US))
	fmt.Printf("That is %s: a strip of %s.\n", area.In(units.US), length.In(units.US))
}

func check(err error) {
	if err != nil {
		log.Fatal(err)
	}
}
