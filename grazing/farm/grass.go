package farm

import (
	"math"
	"slices"
	"time"

	"example.org/soum/internal/season"
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
func (r *ready) settleGrass() {
	for i := range r.grass {
		of := &r.input.Rotations[i]
		if given := r.farm.Rotations[i].GrassFrom; given == nil {
			r.grass[i] = r.grassFrom(of)
		} else {
			r.grass[i] = int(given.Sub(r.start))
		}
		of.Grass = max(r.first, r.grass[i])
	}
}

func (r *ready) grassFrom(of *season.Rotation) int {
	if r.bitten(of, r.grazedInGrowth) {
		return r.first
	}
	first := never
	for _, at := range of.Lands {
		l := &r.input.Lands[at]
		for _, piece := range l.Stretches {
			if day := season.StandsAt(l, piece, of.ShortestRest, r.first); day >= 0 && (first == never || day < first) {
				first = day
			}
		}
	}
	return first
}

// bitten tells whether a last bite on ground of a rotation is one for which a test holds.
func (r *ready) bitten(of *season.Rotation, is func(land, bitten int) bool) bool {
	return slices.ContainsFunc(of.Lands, func(at int) bool {
		return slices.ContainsFunc(r.input.Lands[at].Stretches, func(piece season.Stretch) bool { return is(at, piece.Bitten) })
	})
}

// grazedInGrowth tells whether a bite tells that there is grass already: one of this
// season, or shortly before it in a month that grows.
func (r *ready) grazedInGrowth(land, bitten int) bool {
	switch {
	case bitten == season.Never || bitten < r.input.From-lookBack:
		return false
	case bitten >= r.input.From:
		return true
	}
	month := r.date(bitten).Month()
	return r.lands[land].pasture.Shares[month-time.January]*growingOne >= 1
}

// counts tells whether feed counts against the land: that of grazers in a rotation, from
// the day on which there is grass for them on, or so long before it that it is winter's.
func (r *ready) counts(f *season.Fed) bool {
	if !r.grazer(f.Group) {
		return false
	}
	for i := range r.input.Rotations {
		for _, m := range r.input.Rotations[i].Members {
			if m.Group == f.Group {
				from := r.grass[i] + m.Lag
				return r.grass[i] == never || f.Day >= from || f.Day < from-mostOpening
			}
		}
	}
	return false // in no rotation
}
