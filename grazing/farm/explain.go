package farm

import (
	"fmt"
	"slices"
	"strings"

	"example.org/soum/forage"
	"example.org/soum/grazing"
	"example.org/soum/herd"
	"example.org/soum/internal/document"
	"example.org/soum/internal/season"
	"example.org/soum/units"
)

// Explanation is a figure of a plan with the steps it came of.
type Explanation struct {
	About string       `json:"about"` // what is explained, in words
	Steps []units.Step `json:"steps"` // in order, each with its numbers and its source
	Note  string       `json:"note"`  // where the steps do not tell all; "" where they do
}

// explainer collects the steps of one explanation.
type explainer struct {
	system units.System
	steps  []units.Step
}

// take writes the step of a formula down and passes its value on.
func take[Q ~float64](e *explainer, all []units.Formula, name string, value Q, arguments ...float64) Q {
	if at := slices.IndexFunc(all, func(f units.Formula) bool { return f.Name == name }); at >= 0 {
		e.steps = append(e.steps, all[at].Show(e.system, float64(value), arguments...))
	}
	return value
}

// Explain shows the work behind a day of a plan: for every piece of ground
// opened that day what the groups want, what stands there, and the size of the
// strip that follows; for every land how it grows.
//
// Method: the season runs once more; the day's figures are put through the
// formulas they come of, and each gives its step
//
// Errors: those of Plan, and one for a date outside the plan
//
// Check: TestExplainEndsInThePlan
//
// Source: ours: the steps carry the sources
func (f *Farm) Explain(date units.Date) ([]Explanation, error) {
	if err := f.Check(); err != nil {
		return nil, err
	}
	if date < f.Today || date > f.Season.To {
		return nil, document.Wrong("date", date, "is outside the plan", "a date from "+f.Today.String()+" to "+f.Season.To.String())
	}
	r, err := settle(f, units.Middle)
	if err != nil {
		return nil, err
	}
	day := int(date) - int(f.Today)
	result := season.Run(&r.input)
	var all []Explanation
	for i := range result.Moves {
		if m := &result.Moves[i]; m.Day == day {
			all = append(all, r.explainMove(m))
		}
	}
	for i := range r.lands {
		all = append(all, r.explainGrowth(i, date))
	}
	return all, nil
}

// explainMove shows how a strip, or a stay in a paddock, came to its size.
func (r *ready) explainMove(m *season.Move) Explanation {
	e := &explainer{system: r.farm.Units}
	land, at := &r.farm.Land[m.Land], &r.lands[m.Land]
	rotation := &r.farm.Rotations[m.Rotation]
	for _, member := range rotation.Groups {
		r.explainDemand(e, &member, m)
	}
	height, _ := forage.HeightOf(units.Yield(m.Before), at.density)
	available, _ := forage.Available(height, at.leaveHeight, at.density)
	take(e, forage.Formulas(), "forage.Available", available, float64(height), float64(at.leaveHeight), float64(at.density))
	stay := units.Days(m.Stay)
	use, _ := forage.UsableShare(stay)
	take(e, forage.Formulas(), "forage.UsableShare", use, float64(stay))
	out := Explanation{About: fmt.Sprintf("%s on %s", land.ID, r.date(m.Day))}
	want := units.Demand(m.Want / float64(m.Stay))
	if land.isPaddock() {
		days, _ := grazing.StayDays(land.Area, available, use, want)
		take(e, grazing.Formulas(), "grazing.StayDays", days, float64(land.Area), float64(available), float64(use), float64(want))
		out.Note = "The stay is the whole days of the last step, or less where the wants of the days differ."
		out.Steps = e.steps
		return out
	}
	area, _ := grazing.StayArea(want, stay, available, use)
	take(e, grazing.Formulas(), "grazing.StayArea", area, float64(want), float64(stay), float64(available), float64(use))
	length, _ := grazing.StripLength(area, land.Width)
	take(e, grazing.Formulas(), "grazing.StripLength", length, float64(area), float64(land.Width))
	if opened := units.Length(m.To - m.From); opened > length*(1+1e-9) {
		out.Note = fmt.Sprintf("The strip is %s long: it took in a remainder shorter than the shortest strip, and more is left standing.", r.text(opened))
	}
	out.Steps = e.steps
	return out
}

// explainDemand shows what a group will want on the day it stands there.
func (r *ready) explainDemand(e *explainer, member *Member, m *season.Move) {
	group := r.farm.groupIndex(member.Group)
	date := r.date(m.Day).Add(int(member.Behind))
	if date > r.farm.Season.To {
		return // visits after the season's end are not booked
	}
	g := r.herd[group]
	state := g.On(date)
	row, err := g.Class.IntakeAt(state.Stage)
	if err != nil {
		return
	}
	intake, pasture := row.Share.At(r.end.Other()), g.Class.Pasture.At(r.end.Other())
	demand, _ := herd.Demand(state.Head, state.Weight, intake, pasture)
	take(e, herd.Formulas(), "herd.Demand", demand, state.Head, float64(state.Weight), float64(intake), float64(pasture))
	of := &e.steps[len(e.steps)-1]
	of.Text = strings.Replace(of.Text, of.Result, of.Result+" of "+member.Group, 1)
	of.Result += " of " + member.Group
}

// explainGrowth shows the potential growth of a land in a date's month.
func (r *ready) explainGrowth(i int, date units.Date) Explanation {
	e := &explainer{system: r.farm.Units}
	at := &r.lands[i]
	scale := r.rainScale(at, date, new(problems))
	share := at.pasture.Shares[date.Month()-1] * scale
	days := units.Days(date.DaysInMonth())
	mean, _ := forage.MonthGrowth(at.annual, share, days)
	take(e, forage.Formulas(), "forage.MonthGrowth", mean, float64(at.annual), float64(share), float64(days))
	ratio, _ := forage.MeanToPeak(at.leave, at.turnIn, at.ceiling)
	take(e, forage.Formulas(), "forage.MeanToPeak", ratio, float64(at.leave), float64(at.turnIn), float64(at.ceiling))
	peak, _ := forage.PeakGrowth(mean, ratio)
	take(e, forage.Formulas(), "forage.PeakGrowth", peak, float64(mean), ratio)
	out := Explanation{About: "growth on " + r.farm.Land[i].ID, Steps: e.steps}
	if scale < 1 {
		by := "forage by the rain of the key months so far"
		if r.soil != nil {
			by = "the share of the wanted water that the soil and the rain of the month give"
		}
		out.Note = fmt.Sprintf("The month's share of the year is multiplied by %s, %s.", r.text(scale), by)
	}
	return out
}
