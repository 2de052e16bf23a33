package main

import (
	"io"
	"strings"

	"example.org/soum/grazing/farm"
	"example.org/soum/units"
)

// explainDay prints the work behind a day of the plan: for each strip opened
// and each land's growth the formulas with their numbers, and where they are
// from.
func explainDay(holding *farm.Farm, date units.Date, out io.Writer) error {
	all, err := holding.Explain(date)
	if err != nil {
		return inputError{err}
	}
	r := &report{farm: holding}
	r.paragraph("The work behind %s.", long(date))
	for _, e := range together(all) {
		r.heading("%s", capital(oneLine(e.About)))
		for _, step := range e.Steps {
			r.step(step)
		}
		if e.Note != "" {
			r.paragraph("%s", e.Note)
		}
	}
	r.WriteByte('\n')
	r.paragraph("Names in capitals are the sources: SOURCES.md tells where each is read.")
	_, err = io.WriteString(out, r.String())
	return err
}

// step prints a step, a line for each way that it is told, and its source.
func (r *report) step(step units.Step) {
	told := strings.Split(step.Text, " = ")
	r.WriteString(wrap(told[0]+" = "+told[1], "- ", "    "))
	for _, next := range told[2:] {
		r.WriteString(wrap("= "+next, "  ", "    "))
	}
	r.WriteString(wrap("Source: "+step.Source, "  ", "  "))
}

// growthOn begins what an explanation of growth is about.
const growthOn = "growth on "

// together makes one explanation of those of lands that grow alike.
func together(all []farm.Explanation) (fewer []farm.Explanation) {
	at := map[string]int{}
	for _, e := range all {
		var steps []string
		for _, step := range e.Steps {
			steps = append(steps, step.Text)
		}
		land, growth := strings.CutPrefix(e.About, growthOn)
		key := strings.Join(append(steps, e.Note), "\n")
		if same, seen := at[key]; growth && seen {
			fewer[same].About += ", " + land
			continue
		}
		if growth {
			at[key] = len(fewer)
		}
		fewer = append(fewer, e)
	}
	return fewer
}
