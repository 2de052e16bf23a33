package main

import (
	"fmt"
	"hash/fnv"
	"strings"
	"time"

	ics "github.com/arran4/golang-ical"

	"example.org/soum/grazing/farm"
	"example.org/soum/units"
)

// calendar gives the moves as an iCalendar (RFC 5545): an event of the whole day
// for each day and rotation. Its stamp is the farm's own today, so that the same
// farm gives the same file.
func calendar(holding *farm.Farm, plan *farm.Plan) ([]byte, error) {
	c := ics.NewCalendar()
	c.SetProductId("-//soum//season//EN")
	for i := range holding.Rotations {
		for _, moves := range byDay(plan.Moves, i) {
			addEvent(c, holding, plan, moves)
		}
	}
	return []byte(c.Serialize(ics.WithNewLineWindows)), nil
}

// byDay gives the moves of a rotation, those of a day together.
func byDay(all []farm.Move, rotation int) (days [][]*farm.Move) {
	for i := range all {
		m := &all[i]
		switch n := len(days); {
		case m.Rotation != rotation:
		case n > 0 && days[n-1][0].Date == m.Date:
			days[n-1] = append(days[n-1], m)
		default:
			days = append(days, []*farm.Move{m})
		}
	}
	return days
}

func addEvent(c *ics.Calendar, holding *farm.Farm, plan *farm.Plan, moves []*farm.Move) {
	date := moves[0].Date
	event := c.AddEvent(fmt.Sprintf("%s-%08x@soum.example.org", date, mark(holding.Rotations[moves[0].Rotation].Land)))
	event.SetDtStampTime(midnight(plan.Today))
	event.SetAllDayStartAt(midnight(date))
	event.SetAllDayEndAt(midnight(date.Add(1)))
	event.SetTimeTransparency(ics.TransparencyTransparent)
	var heads, texts []string
	for _, m := range moves {
		heads = append(heads, oneLine(headline(m, holding.Units)))
		texts = append(texts, describe(m, holding.Units))
	}
	event.SetSummary(strings.Join(heads, "; "))
	event.SetDescription(strings.Join(texts, "\n"))
}

// mark tells rotations apart by their land, from one plan to the next.
func mark(land []string) uint32 {
	h := fnv.New32a()
	fmt.Fprintf(h, "%q", land)
	return h.Sum32()
}

func midnight(d units.Date) time.Time {
	return time.Date(d.Year(), d.Month(), d.Day(), 0, 0, 0, 0, time.UTC)
}

// headline says in a few words what to do.
func headline(m *farm.Move, s units.System) string {
	if m.Length == 0 {
		return fmt.Sprintf("%s: open for %s", m.Land, m.Stay.In(s))
	}
	return fmt.Sprintf("%s: open %s to %s", m.Land, number(m.From, s), m.To.In(s))
}

// describe says of a move how high, how long, who and when again.
func describe(m *farm.Move, s units.System) string {
	lines := []string{headline(m, s), fmt.Sprintf("Height %s, leave %s.", m.Height.In(s), m.Leave.In(s))}
	if m.Paces != 0 {
		lines[1] += fmt.Sprintf(" Strip of %s, %s paces.", m.Length.In(s), paces(m))
	}
	for _, v := range m.Visits {
		lines = append(lines, fmt.Sprintf("%s: %s", v.Group, fromTo(v.From, v.To)))
	}
	if m.ReadyAgain != nil {
		lines = append(lines, "Can be grazed again from "+dayMonth(*m.ReadyAgain)+".")
	}
	for i := range lines {
		lines[i] = oneLine(lines[i])
	}
	return strings.Join(lines, "\n")
}
