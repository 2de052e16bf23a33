package farm

import (
	"fmt"

	"example.org/soum/forage"
	"example.org/soum/grazing"
	"example.org/soum/herd"
	"example.org/soum/internal/season"
	"example.org/soum/units"
)

// Verdict is what the plan comes to.
type Verdict struct {
	Carries  bool              `json:"carries"`               // no feed beyond what the farm allows
	Limit    Limit             `json:"limit"`                 // what bound where it does not
	Herd     units.AnimalUnits `json:"herd_animal_units"`     // by weight ÷ 1,000 lb, on the season's first day
	Textbook units.AnimalUnits `json:"textbook_animal_units"` // annual yield × use ÷ demand; the verdict follows the season
	English  string            `json:"english"`               // the same in one paragraph
}

// verdict compares the season with what the farm allows.
func verdict(r *ready, result *season.Result, hay *HayNeed, met *problems) (v Verdict) {
	v.Limit = r.needs(result, -1)
	v.Carries = v.Limit == LimitNone && r.waterHolds(r.drinks(), -1, 1)
	if v.Limit == LimitNone && !v.Carries {
		v.Limit = LimitWater
	}
	for g := range r.herd {
		state := r.state(g, r.first)
		each, err := herd.AnimalUnits(state.Weight)
		met.keep(err, r.start, 1)
		v.Herd += units.AnimalUnits(state.Head) * each
	}
	v.Textbook = textbook(r, met)
	v.English = r.verdictText(&v, hay)
	return v
}

// textbook gives the carrying capacity of the handbook: what the land in
// rotation grows in a normal year, times the share eaten in a day's stay, over
// the demand of an animal unit (26 lb a day) for the season's days.
func textbook(r *ready, met *problems) (total units.AnimalUnits) {
	use, err := forage.UsableShare(units.Day)
	met.keep(err, r.start, 1)
	demand, err := herd.UnitDemand(herd.UnitTwentySixPounds)
	met.keep(err, r.start, 1)
	days := units.Days(r.input.Days - r.first)
	for i := range r.farm.Land {
		if r.farm.rotationOf(r.farm.Land[i].ID) == nil {
			continue
		}
		grown := r.lands[i].annual * units.Yield(sumShares(r.lands[i].pasture.Shares))
		rate, err := grazing.CarryingCapacity(grown, use, demand, days)
		met.keep(err, r.start, 1)
		total += units.AnimalUnits(float64(rate) * float64(r.farm.Land[i].area()))
	}
	return total
}

// verdictText writes the verdict in one paragraph.
func (r *ready) verdictText(v *Verdict, hay *HayNeed) string {
	short := hay.Eaten - hay.Opening
	if short < 1e-9*hay.Eaten { // rounding
		short = 0
	}
	text := fmt.Appendf(nil, "From %s to %s ", r.date(r.first), r.farm.Season.To)
	switch {
	case v.Carries && short == 0:
		text = fmt.Appendf(text, "the land carries this herd (%s) on grass alone.", r.text(v.Herd))
	case v.Carries:
		text = fmt.Appendf(text, "the land carries this herd (%s) with %s of dry matter out of the hay it has.", r.text(v.Herd), r.text(short))
	case v.Limit == LimitWater:
		text = fmt.Appendf(text, "this herd (%s) drinks more than the water source gives.", r.text(v.Herd))
	default:
		text = fmt.Appendf(text, "the land does not carry this herd (%s) as planned: %s, and feed for %s of dry matter is wanted.", r.text(v.Herd), limitWords[v.Limit], r.text(short))
		if hay.Short > 0 {
			text = fmt.Appendf(text, " Hay of %s is to be found beyond the %s in store and the %s of the cuts.", r.text(hay.Short), r.text(hay.Store), r.text(hay.Made))
		}
	}
	if hay.Opening > 0 {
		text = fmt.Appendf(text, " Before there is grass for them, and of groups in no rotation, %s of feed is wanted; it does not count against the land.", r.text(hay.Opening))
	}
	return string(fmt.Appendf(text, " The textbook sum (yield × use ÷ demand) gives %s; the season, which counts rest and the months, decides.", r.text(v.Textbook)))
}
