package season_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"example.org/soum/internal/season"
)

// TestEarlyMark has next to no stock on a lane that nobody has bitten, so that the early
// mark is as low as it goes: opened on the first day just above it, not just below.
//   - half the aim of 0.3 where R + 1/4 (T - R) is 0.1125;
//   - R + 1/4 (T - R) = 0.225 where half the aim is 0.15;
//   - what in 60 days, and no more, grows to the middle of aim and ceiling, 0.45: K/V - 1
//     there is 1/3, and with 4P/K = ln 6 / 60 it was 6 times that, at V = 0.2.
func TestEarlyMark(t *testing.T) {
	for _, c := range []struct{ leave, peak, mark float64 }{{0.05, 0.1, 0.15}, {0.2, 0.1, 0.225}, {0.1, 0.6 * math.Log(6) / 240, 0.2}} {
		for _, above := range []bool{true, false} {
			l := season.Land{
				Width: 10, Length: 1000, Aim: 0.3, Least: 0.29, Leave: c.leave, Ceiling: 0.6,
				Stretches: []season.Stretch{{To: 1000, Mass: c.mark * 0.999, Bitten: season.Never}},
			}
			if above {
				l.Stretches[0].Mass = c.mark * 1.001
			}
			in := &season.Input{Days: 200}
			var demand []float64
			for range in.Days {
				l.Peak, demand = append(l.Peak, c.peak), append(demand, 0.01)
			}
			in.Lands, in.Groups = []season.Land{l}, []season.Group{{Demand: demand}}
			in.Rotations = []season.Rotation{{Lands: []int{0}, Members: []season.Member{{}}, ShortestRest: 1, LongestStay: 1, Moves: 1, ShortestStrip: 1, Use: []float64{0.8}}}
			assert.Equal(t, above, season.Run(in).Moves[0].Day == 0, "%+v", c)
		}
	}
}
