package farm

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/soum/internal/season"
	"example.org/soum/units"
)

// moment is the farm when the leaders of a rotation are fed on a day: after all have eaten,
// before the day's growth.
type moment struct {
	*ready
	rotation *season.Rotation
	day      int
	evening  *season.State
}

// before gives what stood on a piece before the day's growth: the curve taken back.
func (m *moment) before(land int, piece season.Stretch) float64 {
	l := &m.input.Lands[land]
	return l.Ceiling / (1 + (l.Ceiling/piece.Mass-1)*math.Exp(4*l.Peak[m.day]/l.Ceiling))
}

// want is what all groups of the rotation want of ground opened that day.
func (m *moment) want() (all float64) {
	for _, member := range m.rotation.Members {
		if on := m.day + member.Lag; on < m.input.Days {
			all += m.input.Groups[member.Group].Demand[on]
		}
	}
	return all
}

// early gives the early mark of a land by the rule, from what stands when everybody has
// eaten: that is no lower than the mark was.
func (m *moment) early(land int) float64 {
	spare := 0.0
	for _, at := range m.rotation.Lands {
		l, from := &m.input.Lands[at], 0.0
		for _, piece := range m.evening.Lands[at] {
			spare += (piece.To - from) * l.Width * max(0, m.before(at, piece)-l.Leave)
			from = piece.To
		}
	}
	ahead := min(60, m.input.Days-1-m.day)
	if want := m.want(); want > 0 {
		ahead = min(ahead, int(spare*m.rotation.Use[0]/want))
	}
	l, sum := &m.input.Lands[land], 0.0
	for day := m.day; day < m.day+ahead; day++ {
		sum += 4 * l.Peak[day] / l.Ceiling
	}
	outgrown := l.MowAbove // half way from aim to ceiling where the document has none
	least := max(0.5*l.Aim, l.Leave+(l.Aim-l.Leave)/4)
	return min(l.Least, max(least, l.Ceiling/(1+(l.Ceiling/outgrown-1)*math.Exp(sum))))
}

// stands tells whether a piece that nobody came to today could have been grazed.
func (m *moment) stands(land int, piece season.Stretch) bool {
	if piece.Bitten == m.day || len(piece.Due) > 0 || m.day-piece.Bitten < m.rotation.ShortestRest {
		return false
	}
	mark := m.input.Lands[land].Least
	if piece.Bitten < m.input.From {
		mark = m.early(land)
	}
	return m.before(land, piece) >= mark*(1+1e-9)
}

// left gives a land on which there was a run, or a paddock that held the day; -1: none.
func (m *moment) left() int {
	for _, at := range m.rotation.Lands {
		if m.evening.Stays[at].Days > 0 {
			continue
		}
		l, long, from, holds := &m.input.Lands[at], 0.0, 0.0, 0.0
		for _, piece := range m.evening.Lands[at] {
			length := piece.To - from
			from = piece.To
			if !m.stands(at, piece) {
				long = 0
				if l.Paddock {
					break
				}
				continue
			}
			long += length
			holds += length * l.Width * max(0, m.before(at, piece)-l.Leave)
			if !l.Paddock && long >= min(m.rotation.ShortestStrip, l.Length)+1e-6 {
				return at
			}
		}
		if l.Paddock && long == l.Length && holds*m.rotation.Use[0] >= m.want()*(1+1e-9) {
			return at
		}
	}
	return -1
}

// fedLeaders tells whether the leaders of a rotation were fed on a day.
func fedLeaders(rotation *season.Rotation, result *season.Result, day int) bool {
	for _, member := range rotation.Members {
		if member.Lag == 0 && result.Hay[member.Group][day] > 0 {
			return true
		}
	}
	return false
}

// TestNobodyIsFedBesideReadyGrass: on the drawn farms, whenever leaders are fed, nothing of
// their rotation is ripe or grazeable, by marks, runs and stays worked out here from what
// stands that evening.
func TestNobodyIsFedBesideReadyGrass(t *testing.T) {
	fed := 0
	for seed := 1; seed <= DrawnFarms; seed++ {
		r, err := settle(Drawn(t, seed), units.Middle)
		require.NoError(t, err)
		var evenings []season.State
		result := season.Watch(&r.input, func(s season.State) { evenings = append(evenings, s) })
		for i := range r.input.Rotations {
			for day := range evenings {
				if !fedLeaders(&r.input.Rotations[i], result, day) {
					continue
				}
				fed++
				m := moment{r, &r.input.Rotations[i], day, &evenings[day]}
				if at := m.left(); at >= 0 {
					require.Fail(t, "fed beside ready grass", "seed %d, %s, rotation %d, %s", seed, r.date(day), i, r.farm.Land[at].ID)
				}
			}
		}
	}
	require.Greater(t, fed, 1000)
}
