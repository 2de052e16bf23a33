package main

import (
	"fmt"
	"strings"
	"time"

	"example.org/soum/grazing/fit"
	"example.org/soum/units"
)

// tell writes the numbers behind an answer: the months, and the herd by hungry and
// by modest stock.
func tell(b *strings.Builder, question *fit.Question, answer *fit.Answer) {
	if answer.Found {
		months(b, question, answer)
	}
	fmt.Fprintf(b, "\n  The same with parts of animals, by what the stock eat within the printed spans:\n")
	for _, s := range answer.Spans {
		value := "nothing fits"
		if s.Fits {
			value = worth(question, answer, s.Value)
		}
		fmt.Fprintf(b, "  %-17s %s\n", appetites[s.End], value)
	}
}

// appetites tells the ends of the printed spans of appetite.
var appetites = map[units.End]string{units.Low: "hungry stock:", units.Middle: "half way between:", units.High: "modest eaters:"}

// months writes a line for each month, and what becomes of what is left.
func months(b *strings.Builder, question *fit.Question, answer *fit.Answer) {
	unit, mass := "kg", func(mass units.DryMatter) string { return units.Number(float64(mass / units.DryMatterKilogram)) }
	if question.Units == units.US {
		unit, mass = "lb", func(mass units.DryMatter) string { return units.Number(mass.Pounds()) }
	}
	fmt.Fprintf(b, "\n  %-16s  to be had  wanted    hay   left\n", unit+" of dry matter")
	for _, m := range answer.Months {
		supply := m.Grass.Supply + m.Forbs.Supply + m.Browse.Supply
		left := m.Grass.Left + m.Forbs.Left + m.Browse.Left // which of them is one way among several; the sum is not
		fmt.Fprintf(b, "  %-16s %10s %7s %6s %6s\n", time.Month(m.Month), mass(supply), mass(m.Wanted), mass(m.Hay), mass(left))
	}
	fmt.Fprintf(b, "  What is left in a month is not made into hay; `carry` in the file is the share of it that can still be eaten in the next, here %s.\n", question.Carry.In(question.Units))
}

// worth writes a value of the goal.
func worth(question *fit.Question, answer *fit.Answer, value float64) string {
	switch question.Goal {
	case fit.GoalLeastHay:
		return units.FreshFeed(value).In(question.Units) + " of hay"
	case fit.GoalMargin:
		return fmt.Sprintf("%.2f %s", value, answer.Relaxed.Margin.Currency)
	}
	return units.Number(value) + " animal units"
}
