package farm

import (
	"cmp"
	"slices"

	"example.org/soum/herd"
	"example.org/soum/internal/season"
	"example.org/soum/units"
)

// Change is a day on which a group's head or stage changes, or the document gives
// its weight, and what it then wants of pasture.
type Change struct {
	Date   units.Date       `json:"date"`          // the first day of it
	Group  string           `json:"group"`         // the group's id
	Head   float64          `json:"head"`          // from that day on
	Weight units.LiveWeight `json:"weight_kg"`     // of one animal, that day
	Stage  herd.Stage       `json:"stage"`         // from that day on
	Before units.Demand     `json:"before_kg_day"` // what the group wanted the day before
	After  units.Demand     `json:"after_kg_day"`  // what it wants that day
}

// ExpectedBirth is a birth in the document: the days of it, and what the plan
// reckons with.
type ExpectedBirth struct {
	Group  string     `json:"group"`  // the group's id
	Early  units.Date `json:"early"`  // by the printed range of gestation; the same day thrice where there is none
	Likely units.Date `json:"likely"` // the day that the plan reckons with
	Late   units.Date `json:"late"`   // by the printed range of gestation
	Weaned units.Date `json:"weaned"` // zero where the document tells no day
}

// fillChanges lists the changes of all groups in the season, by date.
func (s *setting) fillChanges(plan *Plan, _ *season.Result) error {
	for g := range s.herd {
		spells, demand := s.spells[g], s.input.Groups[g].Demand
		for i := 1; i < len(spells); i++ {
			was, is, day := spells[i-1].state, spells[i].state, spells[i].from
			date := s.date(day)
			weighed := slices.ContainsFunc(s.herd[g].Events, func(e herd.Event) bool { return e.Date == date && e.Weight != nil })
			if day <= s.first || (was.Head == is.Head && was.Stage == is.Stage && !weighed) {
				continue
			}
			plan.Changes = append(plan.Changes, Change{
				Date: date, Group: s.farm.Groups[g].ID, Head: is.Head, Weight: is.Weight, Stage: is.Stage,
				Before: units.Demand(demand[day-1]), After: units.Demand(demand[day]),
			})
		}
	}
	slices.SortStableFunc(plan.Changes, func(a, b Change) int { return cmp.Compare(a.Date, b.Date) })
	return nil
}

// fillBirths lists the births of the document.
func (s *setting) fillBirths(plan *Plan, _ *season.Result) error {
	for i := range s.farm.Groups {
		g := &s.farm.Groups[i]
		for j := range g.Births {
			due, err := g.Births[j].expected(s.herd[i].Class.Kind)
			if err != nil {
				return err
			}
			birth := ExpectedBirth{Group: g.ID, Early: due.Early, Likely: due.Likely, Late: due.Late}
			if g.Births[j].Weaned != nil {
				birth.Weaned = *g.Births[j].Weaned
			}
			plan.Births = append(plan.Births, birth)
		}
	}
	return nil
}
