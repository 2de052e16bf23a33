package herd

import (
	"math"

	"example.org/soum/units"
)

// Event is a change in a group: what is left out stays as it was.
type Event struct {
	// Date is the first day that the change holds.
	Date units.Date `json:"date"`
	// Head is the number of animals from then on.
	Head *float64 `json:"head"`
	// Weight is the live weight of one animal from then on.
	Weight *units.LiveWeight `json:"weight"`
	// Stage is the stage from then on.
	Stage *Stage `json:"stage"`
}

// Group is animals of one class kept together.
type Group struct {
	// Class is the class of stock.
	Class Class `json:"class"`
	// Head is the number of animals before any event.
	Head float64 `json:"head"`
	// Weight is the live weight of one animal before any event; 0: the class's.
	Weight units.LiveWeight `json:"weight"`
	// Stage is the stage before any event; 0: the class's first.
	Stage Stage `json:"stage"`
	// Events are the changes, in any order; of two on one day the later in the
	// list wins.
	Events []Event `json:"events"`
	// Gain is what one animal gains in a day, 0 or more. It counts from Since, or
	// from the last event that gives a weight.
	Gain units.LiveGain `json:"gain"`
	// Since is the day on which Weight was so; before it nothing is gained.
	Since units.Date `json:"since"`
	// Grown is the weight at which growth ends; 0: it does not end.
	Grown units.LiveWeight `json:"grown"`
}

// Birth is a birth that a group comes to.
type Birth struct {
	// Date is the day of birth.
	Date units.Date `json:"date"`
	// Late is the time before it in which the mothers eat as in late gestation.
	Late units.Days `json:"late"`
	// Weaned is the day on which the young are weaned, or the milk is ended; 0:
	// not in sight.
	Weaned units.Date `json:"weaned"`
}

// LateGestation is how long before a birth a ewe eats as in late gestation: the
// feeding tables end its first part after fifteen weeks [NRC-1985-SHEEP], and she
// goes 147 days [VT-REPRODUCTION].
const LateGestation = 147*units.Day - 15*units.Week

// Events gives the stages that a birth brings about in a class, those alone that
// the class has figures for: late gestation, then in milk from the birth on, then
// dry.
func (b Birth) Events(class Class) []Event {
	var events []Event
	for _, e := range []struct {
		date  units.Date
		stage Stage
	}{{b.Date.Add(-int(b.Late)), StageLateGestation}, {b.Date, StageLactating}, {b.Weaned, StageDry}} {
		if _, err := class.IntakeAt(e.stage); err == nil && e.date != 0 {
			events = append(events, Event{Date: e.date, Stage: &e.stage})
		}
	}
	return events
}

// State is a group as it stands on a day.
type State struct {
	// Head is the number of animals.
	Head float64 `json:"head"`
	// Weight is the live weight of one animal.
	Weight units.LiveWeight `json:"weight"`
	// Stage is the stage of them all.
	Stage Stage `json:"stage"`
}

// On gives the group as it stands on a day: the events dated on or before it
// have happened.
func (g Group) On(date units.Date) State {
	s := State{Head: g.Head, Weight: g.Weight, Stage: g.Stage}
	if s.Weight == 0 {
		s.Weight = g.Class.Weight
	}
	if s.Stage == 0 && len(g.Class.Intake) > 0 {
		s.Stage = g.Class.Intake[0].Stage
	}
	// One pass without sorting, since a season asks every day: each field takes
	// the latest event that names it.
	var head, weight, stage *Event
	for i := range g.Events {
		e := &g.Events[i]
		if e.Date > date {
			continue
		}
		if e.Head != nil && (head == nil || e.Date >= head.Date) {
			head, s.Head = e, *e.Head
		}
		if e.Weight != nil && (weight == nil || e.Date >= weight.Date) {
			weight, s.Weight = e, *e.Weight
		}
		if e.Stage != nil && (stage == nil || e.Date >= stage.Date) {
			stage, s.Stage = e, *e.Stage
		}
	}
	since := g.Since
	if weight != nil {
		since = weight.Date
	}
	s.Weight = g.grown(s.Weight, date.Sub(since))
	return s
}

// grown gives the weight after so many days of growth.
func (g *Group) grown(weight units.LiveWeight, days units.Days) units.LiveWeight {
	if g.Gain <= 0 || days <= 0 || (g.Grown > 0 && weight >= g.Grown) {
		return weight
	}
	after, _ := WeightAfter(weight, g.Gain, days)
	if g.Grown > 0 {
		return min(after, g.Grown)
	}
	return after
}

// DemandOn gives the dry matter that the group wants from pasture on a day, at
// one end of the class's printed spans.
//
// Errors: a *units.DomainError for an end that is none; a *units.ParseError for a
// stage that the class has no intake for
func (g Group) DemandOn(date units.Date, end units.End) (units.Demand, error) {
	if end < units.Low || end > units.High {
		return units.Demand(math.NaN()), noEnd("herd.Group.DemandOn", 2, end)
	}
	s := g.On(date)
	intake, err := g.Class.IntakeAt(s.Stage)
	if err != nil {
		return units.Demand(math.NaN()), err
	}
	return Demand(s.Head, s.Weight, intake.Share.At(end), g.Class.Pasture.At(end))
}

// WaterOn gives the water that the group drinks on a day in a season, at one
// end of the printed span. The cautions of Water hold.
//
// Errors: those of Water, and a *units.DomainError for an end that is none
func (g Group) WaterOn(date units.Date, season Season, end units.End) (units.WaterRate, error) {
	if end < units.Low || end > units.High {
		return units.WaterRate(math.NaN()), noEnd("herd.Group.WaterOn", 3, end)
	}
	s := g.On(date)
	place := units.Span[units.Fraction]{Low: 0, High: units.Whole}.At(end)
	return Water(s.Head, s.Weight, g.Class.WaterAt(s.Stage), season, place)
}
