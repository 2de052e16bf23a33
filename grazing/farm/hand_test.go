package farm_test

import (
	"encoding/csv"
	"errors"
	"io"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/soum/grazing/farm"
	"example.org/soum/internal/check"
)

// handFarm is the farm document of the season done by hand (its sums stand in
// internal/season/testdata/by_hand.txt): the same land, stock, rain and rules,
// told the way a user would.
const handFarm = `{
  "version": 1,
  "today": "2001-05-25",
  "season": {"from": "2001-05-25", "to": "2001-06-13"},
  "land": [
    {"id": "A", "width": "30 m", "length": "60 m", "pasture": PASTURE, "stretches": [
      {"to": "35 m", "height": "0.220 m"},
      {"to": "60 m", "height": "20.5 cm", "grazed": "2001-05-06"}]},
    {"id": "B", "width": "40 m", "length": "52 m", "pasture": PASTURE, "height": "0.185 m", "grazed": "2001-04-25"},
    {"id": "C", "width": "25 m", "length": "40 m", "pasture": PASTURE, "height": "0.240 m", "grazed": "2001-05-01"}
  ],
  "groups": [
    {"id": "leader", "head": 15, "class": {"name": "leader", "kind": "sheep", "weight": "60 kg",
      "intake": [{"stage": "dry", "share": {"low": "2.5 %", "high": "2.5 %"}}], "pasture": {"low": "100 %", "high": "100 %"}},
      "events": [{"date": "2001-06-10", "head": 21}, {"date": "2001-06-06", "head": 12}]},
    {"id": "follower", "head": 11, "class": {"name": "follower", "kind": "sheep", "weight": "40 kg",
      "intake": [{"stage": "dry", "share": {"low": "3 %", "high": "3 %"}}], "pasture": {"low": "90 %", "high": "90 %"}},
      "events": [{"date": "2001-06-03", "head": 13}]}
  ],
  "rotations": [{"land": ["A", "B", "C"], "groups": [{"group": "leader"}, {"group": "follower", "behind": "2 days"}],
    "turn_in": "20 cm", "leave": "12 cm", "least_turn_in": "20 cm", "shortest_rest": "11 days", "shortest_strip": "1 m", "longest_stay": "1 day"}],
  "rain": {"normal": ["0 mm", "0 mm", "0 mm", "60 mm", "60 mm", "0 mm", "0 mm", "0 mm", "0 mm", "0 mm", "0 mm", "0 mm"],
    "months": {"2001-04": "66 mm", "2001-05": "36 mm"}},
  "cuts": [{"land": "C", "date": "2001-05-30", "stubble": "12.5 cm"}]
}`

const handPasture = `{"name": "by hand", "density_good": {"low": "1.1 kg/m2/m", "high": "1.1 kg/m2/m"},
  "turn_in": {"low": "20 cm", "high": "20 cm"}, "leave": {"low": "12 cm", "high": "12 cm"}, "ceiling": "40 cm",
  "yield_low": "1.15 kg/m2", "yield_medium": "1.15 kg/m2", "yield_high": "1.15 kg/m2",
  "shares": ["0 %", "0 %", "2 %", "12 %", "24 %", "24 %", "15 %", "10 %", "8 %", "4 %", "1 %", "0 %"], "key_months": [4, 5]}`

// TestPlanOfHandSeason plans the farm of the season done by hand from its
// document and holds the plan against the sums: growth by month, rain and
// curve, demand with its changes, moves and hay, to the gram.
func TestPlanOfHandSeason(t *testing.T) {
	holding, err := farm.Read([]byte(strings.ReplaceAll(handFarm, "PASTURE", handPasture)))
	require.NoError(t, err)
	plan, err := holding.Plan()
	require.NoError(t, err)
	sums, err := check.WorkSums("../../internal/season/testdata/by_hand.txt")
	require.NoError(t, err)

	file, err := os.Open("../../internal/season/testdata/by_hand_expected.csv")
	require.NoError(t, err)
	defer file.Close()
	rows := csv.NewReader(file)
	rows.Comment = '#'
	compared := 0
	for {
		row, err := rows.Read()
		if errors.Is(err, io.EOF) {
			break
		}
		require.NoError(t, err)
		if row[0] != "move" {
			continue
		}
		want, from, to := sums[row[6]], sums[row[3]], sums[row[4]]
		require.Condition(t, func() bool {
			for _, m := range plan.Moves {
				for _, v := range m.Visits {
					if m.Land == row[2] && v.Group == row[5] && near(m.From.Metres(), from, 1e-6) && near(m.To.Metres(), to, 1e-6) && near(v.Eaten.Kilograms(), want, 0.001) {
						return true
					}
				}
			}
			return false
		}, "no visit as %v: %v kg from %v to %v m", row, want, from, to)
		compared++
	}
	require.Equal(t, 40, compared)

	var grown, eaten, trampled, cut, fed float64
	for _, m := range plan.Months {
		grown += m.Grown.Kilograms()
		eaten += m.Eaten.Kilograms()
		trampled += m.Trampled.Kilograms()
		cut += m.Cut.Kilograms()
		fed += m.Fed.Kilograms()
	}
	const gram = 0.001
	require.InDelta(t, sums["growth"], grown, gram)
	require.InDelta(t, sums["eaten"], eaten, gram)
	require.InDelta(t, sums["trampled"], trampled, gram)
	require.InDelta(t, sums["hay_leader"]+sums["hay_follower"], fed, gram)
	require.InDelta(t, sums["left"], plan.Months[1].Standing.Kilograms(), gram)
	require.InDelta(t, sums["start"]+sums["growth"]-sums["eaten"]-sums["trampled"]-sums["left"], cut, gram)
}

func near(a, b, by float64) bool { return a-b <= by && b-a <= by }
