package farm

import (
	"example.org/soum/internal/season"
	"example.org/soum/units"
)

// shortage is what bound where a season needed more feed than was there, and when.
type shortage struct {
	limit    Limit // LimitNone where it did not
	from, to int   // the first day on which feed was short, and the last that was fed
	group    int   // that was fed on the first
}

// needs tells what was short where a rotation, or with -1 the whole farm, needed more feed
// in a season than was in store and cut by then. What other rotations need of the store
// comes first: they share no land with it, so no head of its can change that.
func (r *ready) needs(result *season.Result, rotation int) (short shortage) {
	allowed, day, own, others := float64(r.farm.hayAllowed()), 0, 0.0, 0.0
	short.limit = LimitNone
	for i := range result.Fed {
		f := &result.Fed[i]
		for ; day <= f.Day; day++ {
			allowed += float64(r.farm.madeAllowed(units.DryMatter(result.Days[day].Cut)))
		}
		switch {
		case !r.counts(f): // it depends on neither land nor head
		case rotation >= 0 && !r.input.Rotations[rotation].Has(f.Group):
			others += f.Hay
		default:
			if own += f.Hay; own > max(0, allowed-others)+1e-9 {
				return r.lasts(result, shortage{limit: limits[f.Reason], from: f.Day, group: f.Group})
			}
		}
	}
	return short
}

// lasts adds the last day of a shortage.
func (r *ready) lasts(result *season.Result, short shortage) shortage {
	for i := len(result.Fed) - 1; short.to == 0 && i >= 0; i-- {
		if f := &result.Fed[i]; r.counts(f) {
			short.to = f.Day
		}
	}
	return short
}

var limits = map[season.Reason]Limit{
	season.NoGrass: LimitGrass, season.NoRest: LimitRest, season.NoGrowth: LimitWinter,
	season.CutBefore: LimitGrass, season.LeadIn: LimitGrass, season.NoStrip: LimitGrass,
}

// drinks gives what each group drinks at the most, by day; nothing where print
// has no figure.
func (r *ready) drinks() [][]units.WaterRate {
	if r.farm.Water.Supply == 0 {
		return nil
	}
	all := make([][]units.WaterRate, len(r.herd))
	for g := range r.herd {
		all[g] = make([]units.WaterRate, r.input.Days)
		r.drink(g, units.High, func(from, to int, drink units.WaterRate) {
			for day := from; day < to; day++ {
				all[g][day] = drink
			}
		})
	}
	return all
}

// waterHolds tells whether the source gives what all groups drink, one group's
// head multiplied by a factor.
func (r *ready) waterHolds(drinks [][]units.WaterRate, group int, factor float64) bool {
	if r.farm.Water.Supply == 0 {
		return true
	}
	for day := range r.input.Days {
		total := units.WaterRate(0)
		for g := range drinks {
			drink := drinks[g][day]
			if g == group {
				drink *= units.WaterRate(factor)
			}
			total += drink
		}
		if total > r.farm.Water.Supply {
			return false
		}
	}
	return true
}
