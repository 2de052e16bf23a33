package farm

import (
	"example.org/soum/internal/season"
	"example.org/soum/units"
)

// days gives every day of the plan.
func days(r *ready, result *season.Result) []PlanDay {
	all, n := make([]PlanDay, len(result.Days)), len(r.lands)
	lands := make([]units.DryMatter, len(result.Stood))
	for i, standing := range result.Stood {
		lands[i] = units.DryMatter(standing)
	}
	for i := range result.Days {
		d := &result.Days[i]
		all[i] = PlanDay{
			Date: r.date(i), Standing: units.DryMatter(d.End), Grown: units.DryMatter(d.Grown), Fed: units.DryMatter(d.Hay), Lands: lands[i*n : (i+1)*n : (i+1)*n],
		}
		for g := range r.input.Groups {
			all[i].Wanted += units.DryMatter(r.input.Groups[g].Demand[i])
		}
	}
	for i := range result.Fed {
		if f := &result.Fed[i]; r.counts(f) {
			all[f.Day].Counted += units.DryMatter(f.Hay)
		}
	}
	return all
}

// months adds the days up by month.
func months(r *ready, result *season.Result, days []PlanDay) []Month {
	all := make([]Month, len(r.months))
	for i, at := range r.months {
		m := Month{Year: at.year, Month: int(at.month), Days: at.to - at.from, Standing: days[at.to-1].Standing}
		for day := at.from; day < at.to; day++ {
			d := &result.Days[day]
			m.Grown += units.DryMatter(d.Grown)
			m.Wanted += days[day].Wanted
			m.Eaten += units.DryMatter(d.Eaten)
			m.Trampled += units.DryMatter(d.Trampled)
			m.Cut += units.DryMatter(d.Cut)
			m.Fed += units.DryMatter(d.Hay)
		}
		all[i] = m
	}
	return all
}
