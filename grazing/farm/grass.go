package farm

import (
	"math"
	"time"

	"example.org/soum/internal/season"
	"example.org/soum/units"
)

// What opening days are told by; all three are ours.
const (
	lookBack    = 60 // days before the season in which ground that was bitten tells of grass
	growingOne  = 24 // a month with a share of at least one part in so many grows
	mostOpening = 42 // days before the first grass whose feed does not count; earlier is winter
)

// never is the grass-from of a rotation whose ground is not ready in all of the season.
const never = math.MinInt32

// settleGrass finds for each rotation the first day on which there would be ground to
// graze, if nobody grazed or cut; head and land cannot change it.
func (s *setting) settleGrass() {
	s.grass = s.grass[:0]
	for i := range s.input.Rotations {
		r := &s.input.Rotations[i]
		grass := never
		if given := s.farm.Rotations[i].GrassFrom; given == nil {
			grass = s.grassFrom(r)
		} else {
			grass = int(given.Sub(s.start))
		}
		s.grass = append(s.grass, grass)
		r.Grass = max(s.first, grass)
	}
}

func (s *setting) grassFrom(r *season.Rotation) int {
	for _, at := range r.Lands {
		for _, piece := range s.input.Lands[at].Stretches {
			if s.grazedInGrowth(at, piece.Bitten) {
				return s.first
			}
		}
	}
	first := never
	for _, at := range r.Lands {
		l := &s.input.Lands[at]
		for _, piece := range l.Stretches {
			if day := season.StandsAt(l, piece, r.ShortestRest, s.first); day >= 0 && (first == never || day < first) {
				first = day
			}
		}
	}
	return first
}

// grazedInGrowth tells whether a bite tells that there is grass already: one of this
// season, or shortly before it in a month that grows.
func (s *setting) grazedInGrowth(land, bitten int) bool {
	switch {
	case bitten == season.Never || bitten < s.input.From-lookBack:
		return false
	case bitten >= s.input.From:
		return true
	}
	month := s.date(bitten).Month()
	return s.lands[land].pasture.Shares[month-time.January]*growingOne >= 1
}

// counts tells whether feed counts against the land: that of grazers in a rotation, from
// the day on which there is grass for them on, or so long before it that it is winter's.
func (s *setting) counts(f *season.Fed) bool {
	if f.Reason == season.NoLand || !s.grazer(f.Group) {
		return false
	}
	for i := range s.input.Rotations {
		for _, m := range s.input.Rotations[i].Members {
			if m.Group == f.Group {
				from := s.grass[i] + m.Lag
				return s.grass[i] == never || f.Day >= from || f.Day < from-mostOpening
			}
		}
	}
	return false
}

// opening gives the hay of days that do not count, and of groups in no rotation.
func (s *setting) opening(r *season.Result) (hay units.DryMatter) {
	for i := range r.Fed {
		if f := &r.Fed[i]; s.grazer(f.Group) && !s.counts(f) {
			hay += units.DryMatter(f.Hay)
		}
	}
	return hay
}
