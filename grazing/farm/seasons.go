package farm

import (
	"slices"

	"example.org/soum/forage"
	"example.org/soum/internal/document"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// Seasons is a farm made ready once, whose season is run again and again: under other
// rain, with other head, with other appetites. It answers one thing, the feed of each
// day, in memory that it uses again; a plan tells all else. It serves one goroutine.
type Seasons struct {
	ready      *setting
	meanToPeak []float64          // by land
	alike      []int              // by land, the first that goes by the same key months
	scales     [][]units.Fraction // by such a land and month of the plan, forage as a share of normal
	days       []FeedDay
	fed        []units.DryMatter // of which the days have parts
}

// FeedDay is the feed of a day of a season, as far as hay goes: pigs and poultry other
// than geese have a ration instead.
type FeedDay struct {
	Made units.DryMatter   `json:"made_kg"` // that animals can eat of what is cut that day
	Fed  []units.DryMatter `json:"fed_kg"`  // wanted in place of grass, once for each time that a group found too little; opening days before there is any grass do not count
}

// Seasons makes the farm ready at an end of the published spans: the low end is thin
// grass and hungry stock. The rain is the document's until Rain gives other.
//
// Method: as for a plan
//
// Errors: those of Plan
//
// Check: TestSeasonsAreThePlan
//
// Source: ours: the rules in DEVELOPERS.md
func (f *Farm) Seasons(end units.End) (*Seasons, error) {
	if err := f.Check(); err != nil {
		return nil, err
	}
	if end < units.Low || end > units.High {
		return nil, document.Wrong("end", int(end), "is not an end of a span", `"low", "middle" or "high"`)
	}
	ready, err := settle(f, end)
	if err != nil {
		return nil, err
	}
	s := &Seasons{ready: ready}
	for i := range ready.lands {
		at := &ready.lands[i]
		share, err := forage.MeanToPeak(at.leave, at.turnIn, at.ceiling)
		if units.Impossible(err) {
			return nil, err
		}
		s.meanToPeak = append(s.meanToPeak, share)
		s.alike = append(s.alike, slices.IndexFunc(ready.lands, func(o site) bool { return slices.Equal(o.pasture.KeyMonths, at.pasture.KeyMonths) }))
		s.scales = append(s.scales, make([]units.Fraction, len(ready.months)))
	}
	return s, nil
}

// Multiply multiplies what a group wants on every day, by a factor on its head or on
// its appetite; of all groups where none is named, of none that the farm has not.
func (s *Seasons) Multiply(group string, factor float64) {
	for i := range s.ready.farm.Groups {
		if group == "" || s.ready.farm.Groups[i].ID == group {
			s.ready.multiply(i, factor)
		}
	}
}

// Rain sets the rain of the season, month by month, and with it the growth of every
// land, by the rules of the plan. Land of the same key months has the same rain: it is
// asked for once.
func (s *Seasons) Rain(record []rainfall.MonthlyRain) error {
	ready := s.ready
	ready.record = record
	if ready.soil != nil { // the account of the soil's water goes by this rain
		if err := ready.settleSoil(); err != nil {
			return err
		}
	}
	for i := range ready.lands {
		if s.alike[i] == i {
			if err := s.scale(i); err != nil {
				return err
			}
		}
		peaks := ready.input.Lands[i].Peak
		for k, m := range ready.months {
			peak, err := ready.peakBy(s.scales[s.alike[i]][k], &ready.lands[i], m, s.meanToPeak[i])
			if err != nil {
				return err
			}
			for day := m.from; day < m.to; day++ {
				peaks[day] = float64(peak)
			}
		}
	}
	ready.settleGrass()
	return nil
}

// scale writes forage as a share of normal in the months of the plan.
func (s *Seasons) scale(land int) (err error) {
	for k, m := range s.ready.months {
		if s.scales[land][k], err = s.ready.rainScale(&s.ready.lands[land], s.ready.date(m.from)); err != nil {
			return err
		}
	}
	return nil
}

// Potential returns the potential growth of a land, by its place in the document, on
// each day of the season; nothing where there is no such land.
func (s *Seasons) Potential(land int) []units.Growth {
	if land < 0 || land >= len(s.ready.input.Lands) {
		return nil
	}
	var all []units.Growth
	for _, peak := range s.ready.input.Lands[land].Peak {
		all = append(all, units.Growth(peak))
	}
	return all
}

// Store returns the dry matter of the hay in store that animals can eat.
func (s *Seasons) Store() units.DryMatter { return s.ready.farm.hayAllowed() }

// Run runs the season and returns the feed of its days, from the document's today on.
// The list is overwritten by the next run.
func (s *Seasons) Run() []FeedDay {
	ready := s.ready
	result := ready.runner.Brief(&ready.input)
	s.days, s.fed = slices.Grow(s.days[:0], len(result.Days)), slices.Grow(s.fed[:0], len(result.Fed))
	f := 0
	for day := range result.Days {
		from := len(s.fed)
		for ; f < len(result.Fed) && result.Fed[f].Day == day; f++ {
			if ready.counts(&result.Fed[f]) {
				s.fed = append(s.fed, units.DryMatter(result.Fed[f].Hay))
			}
		}
		s.days = append(s.days, FeedDay{Made: ready.farm.madeAllowed(units.DryMatter(result.Days[day].Cut)), Fed: s.fed[from:len(s.fed):len(s.fed)]})
	}
	return s.days
}
