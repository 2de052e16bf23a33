package grazing_test

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/soum/grazing"
)

// exampleFarm reads the farm that the example runs.
func exampleFarm(t testing.TB) *grazing.Farm {
	t.Helper()
	data, err := os.ReadFile("../examples/season/data/farm.json")
	require.NoError(t, err)
	farm, err := grazing.ReadFarm(data)
	require.NoError(t, err)
	return farm
}

// BenchmarkPlanSeason plans a year of four groups, each behind the other, over
// fifty days' strips in five lanes.
func BenchmarkPlanSeason(b *testing.B) { benchmarkPlan(b, fiftyStrips(b)) }

// BenchmarkPlanExample plans the embedded farm of the season example.
func BenchmarkPlanExample(b *testing.B) { benchmarkPlan(b, exampleFarm(b)) }

func benchmarkPlan(b *testing.B, farm *grazing.Farm) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := grazing.PlanSeason(farm); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkLeaders asks how many head the embedded farm carries, which runs a
// season for every head tried.
func BenchmarkLeaders(b *testing.B) {
	farm := exampleFarm(b)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := grazing.Leaders(farm); err != nil {
			b.Fatal(err)
		}
	}
}

func fiftyStrips(b testing.TB) *grazing.Farm {
	var lanes, ids []string
	for i := range 5 {
		lanes = append(lanes, fmt.Sprintf(`{"id": "lane %d", "width": "20 m", "length": "380 m", "pasture": "orchardgrass-legume", "productivity": "high", "height": "22 cm"}`, i))
		ids = append(ids, fmt.Sprintf(`"lane %d"`, i))
	}
	farm, err := grazing.ReadFarm([]byte(`{"version": 1, "today": "2001-01-01", "season": {"from": "2001-01-01", "to": "2001-12-31"},
		"land": [` + strings.Join(lanes, ", ") + `],
		"groups": [{"id": "cows", "class": "suckler-cow", "head": 4}, {"id": "ewes", "class": "ewe", "head": 8}, {"id": "goats", "class": "dairy-goat", "head": 6}, {"id": "hens", "class": "laying-hen", "head": 40}],
		"rotations": [{"land": [` + strings.Join(ids, ", ") + `], "shortest_rest": "25 days",
			"groups": [{"group": "cows"}, {"group": "ewes", "behind": "1 day"}, {"group": "goats", "behind": "3 days"}, {"group": "hens", "behind": "5 days"}]}]}`))
	require.NoError(b, err)
	return farm
}
