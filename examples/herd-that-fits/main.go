// Command herd-that-fits answers one question: which numbers of cows, ewes, goats
// and hens fit this land?
package main

import (
	_ "embed"
	"fmt"
	"log"
	"time"

	"example.org/soum/grazing"
	"example.org/soum/units"
)

//go:embed farm.json
var farm []byte

// A meadow and a brambly hillside, hay for a winter, a barn with 30 places, and a
// family that wants milk. Three herds: the most animals, the best margin by the
// farm's own prices, and the least hay. Then one wish too many.
func main() {
	question, err := grazing.ReadFitting(farm)
	check(err)
	for _, goal := range []grazing.FitGoal{grazing.FitAnimalUnits, grazing.FitMargin, grazing.FitLeastHay} {
		question.Goal = goal
		answer, err := grazing.FitStock(question)
		check(err)
		fmt.Printf("For %s: %s\n", goal, answer.English)
		if goal == grazing.FitAnimalUnits {
			tell(&answer)
		}
		fmt.Println()
	}
	question.Stock[0].Least = 8
	answer, err := grazing.FitStock(question)
	check(err)
	fmt.Println("With 8 cows asked for:", answer.English)
}

// appetites tells the ends of the printed spans of appetite.
var appetites = map[units.End]string{units.Low: "for hungry stock", units.Middle: "half way between", units.High: "for modest eaters"}

// tell prints the numbers behind an answer: the months, and the herd by hungry and
// by modest stock.
func tell(answer *grazing.Fitted) {
	lb := func(mass units.DryMatter) string { return units.Number(mass.Pounds()) }
	fmt.Println("\n  lb of dry matter  to be had  wanted    hay   left")
	for _, m := range answer.Months {
		supply := m.Grass.Supply + m.Forbs.Supply + m.Browse.Supply
		left := m.Grass.Left + m.Forbs.Left + m.Browse.Left // which of them is one way among several; the sum is not
		fmt.Printf("  %-16s %10s %7s %6s %6s\n", time.Month(m.Month), lb(supply), lb(m.Wanted), lb(m.Hay), lb(left))
	}
	for _, s := range answer.Spans {
		fmt.Printf("  reckoned %s: %s animal units, with parts of animals\n", appetites[s.End], units.Number(s.Value))
	}
}

func check(err error) {
	if err != nil {
		log.Fatal(err)
	}
}
