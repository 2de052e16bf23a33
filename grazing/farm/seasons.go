package farm

import (
	"slices"

	"example.org/soum/internal/document"
	"example.org/soum/internal/season"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// Seasons is a farm made ready once, whose season is run again and again: under other
// rain, with other head, with other appetites. It answers one thing, the feed of each
// day, in memory that it uses again; a plan tells all else. It serves one goroutine.
type Seasons struct {
	ready  *ready
	input  season.Input // of the farm as it is varied
	met    problems
	runner season.Runner
	days   []FeedDay
	fed    []units.DryMatter // of which the days have parts
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
	return &Seasons{ready: ready, input: ready.input}, nil
}

// Multiply multiplies what a group wants on every day, by a factor on its head or on
// its appetite; of all groups where none is named, of none that the farm has not.
func (s *Seasons) Multiply(group string, factor float64) {
	for i := range s.ready.farm.Groups {
		if group == "" || s.ready.farm.Groups[i].ID == group {
			s.input = multiplied(s.input, i, factor)
		}
	}
}

// Rain sets the rain of the season, month by month, and with it the growth of every
// land, by the rules of the plan.
func (s *Seasons) Rain(record []rainfall.MonthlyRain) error {
	s.ready.record = record // its own, and so is the growth that this sets in place
	s.met = problems{}
	return s.ready.rainOn(&s.met)
}

// Potential returns the potential growth of a land, by its place in the document, on
// each day of the season; nothing where there is no such land.
func (s *Seasons) Potential(land int) []units.Growth {
	if land < 0 || land >= len(s.input.Lands) {
		return nil
	}
	var all []units.Growth
	for _, peak := range s.input.Lands[land].Peak {
		all = append(all, units.Growth(peak))
	}
	return all
}

// Store returns the dry matter of the hay in store that animals can eat.
func (s *Seasons) Store() units.DryMatter { return s.ready.farm.hayAllowed() }

// Run runs the season and returns the feed of its days, from the document's today on.
// The list is overwritten by the next run.
func (s *Seasons) Run() []FeedDay {
	ready, result := s.ready, s.runner.Brief(&s.input)
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
