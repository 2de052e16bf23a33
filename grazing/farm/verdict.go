package farm

import (
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

// fillVerdict compares the season with what the farm allows.
func (s *setting) fillVerdict(plan *Plan, r *season.Result) error {
	v := &plan.Verdict
	v.Limit = s.neededIn(r, -1)
	v.Carries = v.Limit == LimitNone && s.waterHolds(s.drinks(), -1, 1)
	if v.Limit == LimitNone && !v.Carries {
		v.Limit = LimitWater
	}
	for g := range s.herd {
		state := s.state(g, s.first)
		each, err := herd.AnimalUnits(state.Weight)
		if err = s.notes.keep(err, s.start, 1); err != nil {
			return err
		}
		v.Herd += units.AnimalUnits(state.Head) * each
	}
	var err error
	v.Textbook, err = s.textbook()
	return err
}

// textbook gives the carrying capacity of the handbook: what the land in
// rotation grows in a normal year, times the share eaten in a day's stay, over
// the demand of an animal unit (26 lb a day) for the season's days.
func (s *setting) textbook() (units.AnimalUnits, error) {
	use, err := forage.UsableShare(units.Day)
	if err != nil {
		return 0, err
	}
	demand, err := herd.UnitDemand(herd.UnitTwentySixPounds)
	if err != nil {
		return 0, err
	}
	total := units.AnimalUnits(0)
	days := units.Days(s.input.Days - s.first)
	for i := range s.farm.Land {
		if s.farm.rotationOf(s.farm.Land[i].ID) == nil {
			continue
		}
		at := &s.lands[i]
		grown := at.annual * units.Yield(sumShares(at.pasture.Shares))
		rate, err := grazing.CarryingCapacity(grown, use, demand, days)
		if err = s.notes.keep(err, s.start, 1); err != nil {
			return 0, err
		}
		total += units.AnimalUnits(float64(rate) * float64(s.farm.Land[i].area()))
	}
	return total, nil
}

// tellVerdict writes the verdict in one paragraph.
func (s *setting) tellVerdict(plan *Plan) {
	v, n := &plan.Verdict, s.notes
	waiting := plan.Hay.Opening
	short := plan.Hay.Eaten - waiting
	if short < 1e-9*plan.Hay.Eaten { // rounding
		short = 0
	}
	n.say("From %s to %s ", day("", plan.From), day("", plan.To))
	switch {
	case v.Carries && short == 0:
		n.say("the land carries this herd (%s) on grass alone.", s.said(v.Herd))
	case v.Carries:
		n.say("the land carries this herd (%s) with %s of dry matter out of the hay it has.", s.said(v.Herd), s.said(short))
	case v.Limit == LimitWater:
		n.say("this herd (%s) drinks more than the water source gives.", s.said(v.Herd))
	default:
		n.say("the land does not carry this herd (%s) as planned: %s, and feed for %s of dry matter is wanted.",
			s.said(v.Herd), said(limitWords[v.Limit]), s.said(short))
		if plan.Hay.Short > 0 {
			n.say(" Hay of %s is to be found beyond the %s in store and the %s of the cuts.", s.said(plan.Hay.Short), s.said(plan.Hay.Store), s.said(plan.Hay.Made))
		}
	}
	if waiting > 0 {
		n.say(" Before there is grass for them, and of groups in no rotation, %s of feed is wanted; it does not count against the land.", s.said(waiting))
	}
	n.say(" The textbook sum (yield × use ÷ demand) gives %s; the season, which counts rest and the months, decides.", s.said(v.Textbook))
	n.end(entry{kind: entryVerdict})
}
