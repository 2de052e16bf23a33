package farm

import (
	"errors"

	"example.org/soum/units"
)

// problems collects what formulas object to while a plan is made, so that its sections
// need not: figures outside their sources, which become notes, and the first impossible
// one, which ends the plan.
type problems struct {
	ranges []rangeNote
	err    error
}

// rangeNote is a RangeError met on one or more days.
type rangeNote struct {
	error *units.RangeError
	first units.Date
	days  int
}

// keep writes an error down, a range error once for each formula and argument.
func (p *problems) keep(err error, date units.Date, days int) {
	if err == nil {
		return
	}
	var ranged *units.RangeError
	if !errors.As(err, &ranged) {
		if p.err == nil {
			p.err = err
		}
		return
	}
	for i := range p.ranges {
		if n := &p.ranges[i]; n.error.Function == ranged.Function && n.error.Argument == ranged.Argument {
			n.days += days
			n.first = min(n.first, date)
			return
		}
	}
	p.ranges = append(p.ranges, rangeNote{error: ranged, first: date, days: days})
}

// notes tells of the figures outside their sources.
func (p *problems) notes() (all []Note) {
	for _, n := range p.ranges {
		e := n.error
		values := Values{
			"formula": e.Function, "argument": e.Argument, "value": e.Value, "unit": e.Unit, "low": bound(e.Low), "high": bound(e.High),
			"source": e.Source, "first_day": n.first.String(), "days": n.days,
		}
		if e.Gap {
			values["gap"] = true
		}
		all = append(all, note("outside-source", values,
			"%s The value is used all the same (%s; first on %s, %d days in all).", e.Outside(), e.Function, n.first, n.days))
	}
	return all
}

// bound gives a limit for JSON, which knows no infinity.
func bound(v float64) any {
	if v-v != 0 {
		return nil
	}
	return v
}
