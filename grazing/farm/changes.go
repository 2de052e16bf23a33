package farm

import (
	"cmp"
	"slices"

	"example.org/soum/herd"
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

// changes lists the changes of all groups in the season, by date.
func changes(r *ready) (all []Change) {
	for g := range r.herd {
		spells, demand := r.spells[g], r.input.Groups[g].Demand
		for i := 1; i < len(spells); i++ {
			was, is, day := spells[i-1].state, spells[i].state, spells[i].from
			date := r.date(day)
			weighed := slices.ContainsFunc(r.herd[g].Events, func(e herd.Event) bool { return e.Date == date && e.Weight != nil })
			if day <= r.first || (was.Head == is.Head && was.Stage == is.Stage && !weighed) {
				continue
			}
			all = append(all, Change{
				Date: date, Group: r.farm.Groups[g].ID, Head: is.Head, Weight: is.Weight, Stage: is.Stage,
				Before: units.Demand(demand[day-1]), After: units.Demand(demand[day]),
			})
		}
	}
	slices.SortStableFunc(all, func(a, b Change) int { return cmp.Compare(a.Date, b.Date) })
	return all
}

// births lists the births of the document.
func births(r *ready, met *problems) (all []ExpectedBirth) {
	for i := range r.farm.Groups {
		g := &r.farm.Groups[i]
		for j := range g.Births {
			due, err := g.Births[j].expected(r.herd[i].Class.Kind)
			met.keep(err, r.start, 1)
			birth := ExpectedBirth{Group: g.ID, Early: due.Early, Likely: due.Likely, Late: due.Late}
			if g.Births[j].Weaned != nil {
				birth.Weaned = *g.Births[j].Weaned
			}
			all = append(all, birth)
		}
	}
	return all
}
