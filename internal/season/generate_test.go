package season_test

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/internal/season"
)

// number draws a number between two others. Ready-made draws favour round and
// small values; round values make ties (a strip that ends within a rounding
// error of a boundary) that no farm has, small ones bare land. Multiples of the
// golden ratio, without their whole part, spread over the span and are not round.
func number(t *rapid.T, name string, low, high float64) float64 {
	_, share := math.Modf((float64(rapid.IntRange(0, 1<<20).Draw(t, name)) + 0.5) * math.Phi)
	return low + (high-low)*share
}

// seldom draws true once in so many times.
func seldom(t *rapid.T, name string, times int) bool {
	return rapid.IntRange(1, times).Draw(t, name) == times
}

// byDay draws a figure for every day that holds for some days and then
// changes; in places it is 0.
func byDay(t *rapid.T, name string, days int, low, high float64) []float64 {
	all := make([]float64, days)
	for day, piece := 0, 0; day < days; piece++ {
		value := number(t, fmt.Sprintf("%s %d", name, piece), low, high)
		if seldom(t, fmt.Sprintf("no %s %d", name, piece), 5) {
			value = 0
		}
		until := min(days, day+rapid.IntRange(1, 120).Draw(t, fmt.Sprintf("days of %s %d", name, piece)))
		for ; day < until; day++ {
			all[day] = value
		}
	}
	return all
}

// places draws points along a length, in order and apart.
func places(t *rapid.T, name string, count int, length float64) []float64 {
	weights := make([]float64, count+1)
	sum := 0.0
	for i := range weights {
		weights[i] = number(t, fmt.Sprintf("%s %d", name, i), 1, 10)
		sum += weights[i]
	}
	at := make([]float64, count)
	along := 0.0
	for i := range at {
		along += weights[i]
		at[i] = length * along / sum
	}
	return at
}

// seasons generates sound seasons of small farms: lanes of 100 m² to 2 ha and
// paddocks, masses of 100 to 10,000 kg/ha, growth of up to 200 kg/ha and day,
// groups that want up to 150 kg a day.
func seasons() *rapid.Generator[*season.Input] {
	return rapid.Custom(func(t *rapid.T) *season.Input {
		in := &season.Input{From: rapid.IntRange(-40, 0).Draw(t, "begun"), Days: rapid.OneOf(rapid.IntRange(1, 250), rapid.IntRange(100, 250), rapid.SampledFrom([]int{1, 30, 100, 250})).Draw(t, "days")}
		for i := range rapid.IntRange(1, 5).Draw(t, "lands") {
			in.Lands = append(in.Lands, landOf(t, fmt.Sprintf("land %d: ", i), in.Days))
		}
		most := rapid.SampledFrom([]float64{10, 50, 150}).Draw(t, "most demand")
		for i := range rapid.IntRange(1, 4).Draw(t, "groups") {
			in.Groups = append(in.Groups, season.Group{Demand: byDay(t, fmt.Sprintf("demand of group %d", i), in.Days, 1, most)})
		}
		if seldom(t, "no growth", 12) {
			for i := range in.Lands {
				in.Lands[i].Peak = make([]float64, in.Days)
			}
		}
		rotationsOf(t, in)
		for i := range rapid.IntRange(0, 4).Draw(t, "cuts") {
			in.Cuts = append(in.Cuts, cutOf(t, fmt.Sprintf("cut %d: ", i), in))
		}
		return in
	})
}

func landOf(t *rapid.T, name string, days int) season.Land {
	l := season.Land{
		Width:   number(t, name+"width", 5, 50),
		Length:  number(t, name+"length", 20, 400),
		Paddock: seldom(t, name+"paddock", 3),
		Leave:   number(t, name+"leave", 0.03, 0.15),
		Peak:    byDay(t, name+"peak", days, 0.0005, 0.02),
	}
	l.Aim = l.Leave + number(t, name+"aim above leave", 0.03, 0.2)
	l.Least = l.Leave + (l.Aim-l.Leave)*number(t, name+"least", 0.25, 1)
	l.Ceiling = l.Aim + number(t, name+"ceiling above aim", 0.05, 0.6)
	if seldom(t, name+"mown", 3) {
		l.MowAbove = number(t, name+"mow above", l.Leave, l.Ceiling)
	}
	for i, to := range append(places(t, name+"stretch", rapid.IntRange(0, 3).Draw(t, name+"stretches"), l.Length), l.Length) {
		of := fmt.Sprintf("%sstretch %d: ", name, i)
		s := season.Stretch{To: to, Mass: number(t, of+"mass", 0.3*l.Leave, 0.98*l.Ceiling), Bitten: season.Never}
		if seldom(t, of+"at the ceiling", 10) {
			s.Mass = l.Ceiling
		}
		if !seldom(t, of+"never grazed", 3) {
			s.Bitten = rapid.IntRange(-60, -1).Draw(t, of+"bitten")
		}
		l.Stretches = append(l.Stretches, s)
	}
	return l
}

// rotationsOf gives land and groups to one or two rotations; now and then to
// none, though never all of them.
func rotationsOf(t *rapid.T, in *season.Input) {
	rotations := make([]season.Rotation, rapid.IntRange(1, 2).Draw(t, "rotations"))
	which := func(name string, i int) int {
		if i == 0 {
			return 0
		}
		if seldom(t, fmt.Sprintf("no rotation for %s %d", name, i), 8) {
			return -1
		}
		return rapid.IntRange(0, len(rotations)-1).Draw(t, fmt.Sprintf("rotation of %s %d", name, i))
	}
	for i := range in.Lands {
		if at := which("land", i); at >= 0 {
			rotations[at].Lands = append(rotations[at].Lands, i)
		}
	}
	for i := range in.Groups {
		if at := which("group", i); at >= 0 {
			member := season.Member{Group: i}
			if len(rotations[at].Members) > 0 {
				before := rotations[at].Members[len(rotations[at].Members)-1].Lag
				member.Lag = min(6, before+rapid.IntRange(0, 3).Draw(t, fmt.Sprintf("lag of group %d", i)))
			}
			rotations[at].Members = append(rotations[at].Members, member)
		}
	}
	for i := range rotations {
		r, name := &rotations[i], fmt.Sprintf("rotation %d: ", i)
		r.ShortestRest = rapid.IntRange(1, 40).Draw(t, name+"shortest rest")
		r.LongestStay = rapid.IntRange(1, 8).Draw(t, name+"longest stay")
		r.Moves = rapid.SampledFrom([]int{1, 1, 2, 4}).Draw(t, name+"moves")
		r.ShortestStrip = number(t, name+"shortest strip", 0.3, 12)
		use := number(t, name+"use", 0.5, 0.8)
		for stay := range rapid.IntRange(1, 7).Draw(t, name+"stays") {
			r.Use = append(r.Use, use-0.05*float64(stay))
		}
		if len(r.Lands) > 0 && len(r.Members) > 0 {
			in.Rotations = append(in.Rotations, *r)
		}
	}
}

func cutOf(t *rapid.T, name string, in *season.Input) season.Cut {
	c := season.Cut{
		Day:  rapid.IntRange(0, in.Days-1).Draw(t, name+"day"),
		Land: rapid.IntRange(0, len(in.Lands)-1).Draw(t, name+"land"),
	}
	l := &in.Lands[c.Land]
	c.Stubble = number(t, name+"stubble", 0.5*l.Leave, l.Aim)
	c.To = l.Length
	if seldom(t, name+"part", 2) {
		piece := places(t, name+"piece", 2, l.Length)
		c.From, c.To = piece[0], piece[1]
	}
	return c
}

// copyOf copies a season to the last slice.
func copyOf(in *season.Input) *season.Input {
	out := *in
	out.Lands, out.Groups = slices.Clone(in.Lands), slices.Clone(in.Groups)
	out.Rotations, out.Cuts = slices.Clone(in.Rotations), slices.Clone(in.Cuts)
	for i := range out.Lands {
		out.Lands[i].Peak = slices.Clone(in.Lands[i].Peak)
		out.Lands[i].Stretches = slices.Clone(in.Lands[i].Stretches)
	}
	for i := range out.Groups {
		out.Groups[i].Demand = slices.Clone(in.Groups[i].Demand)
	}
	for i := range out.Rotations {
		r := &out.Rotations[i]
		r.Lands, r.Members, r.Use = slices.Clone(r.Lands), slices.Clone(r.Members), slices.Clone(r.Use)
	}
	return &out
}

// TestGeneratedSeasonsReachEverything: properties over seasons in which
// nothing happens would hold for nothing. In 300 generated seasons each thing
// that a season can do must happen in at least 15.
func TestGeneratedSeasonsReachEverything(t *testing.T) {
	const drawn, enough = 300, 15
	seen := map[string]int{}
	generator := seasons()
	for seed := range drawn {
		for what := range happenings(generator.Example(seed)) {
			seen[what]++
		}
	}
	for _, what := range []string{
		"strip", "stay of days", "strip of days", "stayed on", "below the aim", "later pass", "two pieces of a move", "follower", "two lands a day", "cut", "cut of a part of a paddock grazed later",
		"ready again", "surplus", "no growth at all", "one day", "two rotations", "no hay",
		reason(season.LeadIn), reason(season.NoGrass), reason(season.NoRest), reason(season.NoGrowth), reason(season.CutBefore), reason(season.NoLand), reason(season.NoStrip),
	} {
		require.GreaterOrEqual(t, seen[what], enough, "%s: %v", what, seen)
	}
	require.Zero(t, seen[reason(season.NoReason)])
}

func reason(r season.Reason) string { return fmt.Sprintf("fed for reason %d", r) }

// happenings names what happens in a season.
func happenings(in *season.Input) map[string]bool {
	r := season.Run(in)
	grown, cut := 0.0, 0.0
	for _, d := range r.Days {
		grown, cut = grown+d.Grown, cut+d.Cut
	}
	seen := map[string]bool{
		"surplus": len(r.Surplus) > 0, "no growth at all": grown == 0, "one day": in.Days == 1,
		"cut": cut > 0, "two rotations": len(in.Rotations) == 2, "no hay": len(r.Fed) == 0,
	}
	for _, f := range r.Fed {
		seen[reason(f.Reason)] = true
	}
	for i, m := range r.Moves {
		paddock := in.Lands[m.Land].Paddock
		seen["strip"] = seen["strip"] || !paddock
		seen["stay of days"] = seen["stay of days"] || (paddock && m.Stay > 1)
		seen["strip of days"] = seen["strip of days"] || (!paddock && m.Stay > 1)
		seen["stayed on"] = seen["stayed on"] || m.Stay > m.Planned
		seen["below the aim"] = seen["below the aim"] || m.Below
		seen["later pass"] = seen["later pass"] || m.Pass > 1
		seen["ready again"] = seen["ready again"] || m.Ready >= 0
		if i > 0 {
			before := r.Moves[i-1]
			seen["two pieces of a move"] = seen["two pieces of a move"] ||
				(before.Day == m.Day && before.Part == m.Part && before.Rotation == m.Rotation)
		}
		for _, c := range in.Cuts {
			if paddock && c.Land == m.Land && c.Day < m.Day && c.To-c.From < in.Lands[m.Land].Length {
				seen["cut of a part of a paddock grazed later"] = true
			}
		}
	}
	lands := map[[2]int]int{}
	for _, v := range r.Visits {
		m := r.Moves[v.Move]
		seen["follower"] = seen["follower"] || v.Day >= m.Day+m.Stay
		at := [2]int{v.Day, v.Group}
		if land, known := lands[at]; known && land != m.Land {
			seen["two lands a day"] = true
		}
		lands[at] = m.Land
	}
	for what, happens := range seen {
		if !happens {
			delete(seen, what)
		}
	}
	return seen
}
