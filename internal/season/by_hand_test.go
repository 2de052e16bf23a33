package season_test

import (
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/soum/internal/check"
	"example.org/soum/internal/season"
)

// gram is how near the engine must come to the season done by hand.
const gram = 0.001

// TestSeasonByHand holds the engine against a season of three lanes, two
// groups and twenty days in which every sum was written out by somebody who
// had the rules and not the code: testdata/by_hand.txt. The test works the
// written sums anew and compares each figure listed in by_hand_expected.csv.
func TestSeasonByHand(t *testing.T) {
	sums := workSums(t, "testdata/by_hand.txt")
	days := make([][][]season.Stretch, 0, 20)
	result := season.Watch(seasonByHand(sums), func(s season.State) { days = append(days, s.Lands) })

	file, err := os.Open("testdata/by_hand_expected.csv")
	require.NoError(t, err)
	defer file.Close()
	rows := csv.NewReader(file)
	rows.Comment = '#'
	_, err = rows.Read()
	require.NoError(t, err)
	compared := 0
	for {
		row, err := rows.Read()
		if errors.Is(err, io.EOF) {
			break
		}
		require.NoError(t, err)
		h := handRow{kind: row[0], land: strings.Index("ABC", row[2]), who: map[string]int{"leader": 0, "follower": 1}[row[5]], want: sums[row[6]]}
		if row[1] != "" {
			day, err := strconv.Atoi(row[1])
			require.NoError(t, err)
			h.day = day - 1
		}
		h.from, h.to = sums[row[3]], sums[row[4]]
		got, err := h.find(result, days, row[6])
		require.NoError(t, err, "%v", row)
		require.InDelta(t, h.want, got, gram, "%v", row)
		compared++
	}
	require.Greater(t, compared, 400)
}

// workSums works the sums of the season. Names that end in _over or _short are
// its decisions: a limit met, a limit missed.
func workSums(t *testing.T, path string) map[string]float64 {
	sums, err := check.WorkSums(path)
	require.NoError(t, err)
	for name, value := range sums {
		if strings.HasSuffix(name, "_over") {
			require.GreaterOrEqual(t, value, 0.0, name)
		}
		if strings.HasSuffix(name, "_short") {
			require.Positive(t, value, name)
		}
	}
	return sums
}

// seasonByHand builds the worked season's input from its own input lines.
func seasonByHand(sums map[string]float64) *season.Input {
	in := &season.Input{Days: 20, From: season.Never, Groups: make([]season.Group, 2)}
	var peaks []float64
	for day := 1; day <= in.Days; day++ {
		peak := sums["P_june"]
		if day <= 7 { // 25 to 31 May
			peak = sums["P_may"]
		}
		peaks = append(peaks, peak)
		for g, who := range []string{"leader", "follower"} {
			in.Groups[g].Demand = append(in.Groups[g].Demand, sums[fmt.Sprintf("d%02d_%s_demand", day, who)])
		}
	}
	lane := func(width string, stretches ...season.Stretch) season.Land {
		return season.Land{
			Width: sums[width], Length: stretches[len(stretches)-1].To,
			Aim: sums["T"], Least: sums["T"], Leave: sums["R"], Ceiling: sums["K"], Peak: peaks, Stretches: stretches,
		}
	}
	before := func(bite string) int { return int(sums[bite]) - 1 } // their day 1 is day 0 here
	in.Lands = []season.Land{
		lane("wA", season.Stretch{To: sums["A_x35"], Mass: sums["d00_A1"], Bitten: season.Never},
			season.Stretch{To: sums["A_end"], Mass: sums["d00_A2"], Bitten: before("A2_bite")}),
		lane("wB", season.Stretch{To: sums["B_end"], Mass: sums["d00_B1"], Bitten: before("B1_bite")}),
		lane("wC", season.Stretch{To: sums["C_end"], Mass: sums["d00_C1"], Bitten: before("C1_bite")}),
	}
	in.Rotations = []season.Rotation{{
		Lands: []int{0, 1, 2}, Members: []season.Member{{Group: 0}, {Group: 1, Lag: 2}},
		ShortestRest: int(sums["rest"]), LongestStay: 1, Moves: 1, ShortestStrip: sums["shortest"], Use: []float64{sums["e"]},
	}}
	in.Cuts = []season.Cut{{Day: 5, Land: 2, Stubble: 0.125 * sums["density"], To: sums["C_end"]}}
	return in
}

// handRow is a figure of the worked season.
type handRow struct {
	kind           string
	day, land, who int
	from, to, want float64
}

// find gives the engine's figure of the same kind, day, place and group.
func (h handRow) find(r *season.Result, days [][][]season.Stretch, name string) (float64, error) {
	switch h.kind {
	case "eaten":
		return r.Eaten[h.who][h.day], nil
	case "hay":
		return r.Hay[h.who][h.day], nil
	case "cut":
		return r.Days[h.day].Cut, nil
	case "mass":
		from := 0.0
		for _, s := range days[h.day][h.land] {
			if s.To >= h.to-1e-6 && from <= h.from+1e-6 {
				return s.Mass, nil
			}
			from = s.To
		}
	case "move", "piece":
		return h.visit(r)
	case "total":
		return total(r, name)
	}
	return math.NaN(), errors.New("the engine has no such figure")
}

// visit gives what a group ate on a move; of a piece, where a move holds
// several, only that it lies inside one is compared, its masses being compared
// already.
func (h handRow) visit(r *season.Result) (float64, error) {
	for _, v := range r.Visits {
		m := r.Moves[v.Move]
		if v.Day != h.day || v.Group != h.who || m.Land != h.land {
			continue
		}
		same := math.Abs(m.From-h.from) < 1e-6 && math.Abs(m.To-h.to) < 1e-6
		if same {
			return v.Eaten, nil
		}
		if h.kind == "piece" && h.from >= m.From-1e-6 && h.to <= m.To+1e-6 {
			return h.want, nil
		}
	}
	return math.NaN(), errors.New("the engine has no such visit")
}

func total(r *season.Result, name string) (float64, error) {
	var grown, eaten, trampled, cut float64
	for _, d := range r.Days {
		grown, eaten, trampled, cut = grown+d.Grown, eaten+d.Eaten, trampled+d.Trampled, cut+d.Cut
	}
	sum := func(all []float64) (s float64) {
		for _, v := range all {
			s += v
		}
		return s
	}
	switch name {
	case "start":
		return r.Days[0].Start, nil
	case "growth":
		return grown, nil
	case "eaten":
		return eaten, nil
	case "trampled":
		return trampled, nil
	case "cut":
		return cut, nil
	case "left":
		return r.Days[len(r.Days)-1].End, nil
	case "eaten_leader":
		return sum(r.Eaten[0]), nil
	case "eaten_follower":
		return sum(r.Eaten[1]), nil
	case "hay_leader":
		return sum(r.Hay[0]), nil
	case "hay_follower":
		return sum(r.Hay[1]), nil
	}
	return math.NaN(), errors.New("no such total: " + name)
}
