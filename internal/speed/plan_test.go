package speed

import (
	"os"
	"testing"

	"example.org/soum/grazing"
)

// BenchmarkPlanSeason plans a year of four groups, each behind the other, over
// fifty days' strips in five lanes.
func BenchmarkPlanSeason(b *testing.B) { benchmarkPlan(b, farm(b, FiftyStrips)) }

// BenchmarkPlanExample plans the embedded farm of the season example.
func BenchmarkPlanExample(b *testing.B) { benchmarkPlan(b, farm(b, example)) }

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
	farm := farm(b, example)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := grazing.Leaders(farm); err != nil {
			b.Fatal(err)
		}
	}
}

// TestPlanTakesFewPieces keeps a plan from being made of crumbs again: 200 pieces of
// memory are what is allowed for a year of fifty strips and four groups.
func TestPlanTakesFewPieces(t *testing.T) {
	farm := farm(t, FiftyStrips)
	pieces := testing.AllocsPerRun(20, func() {
		if _, err := grazing.PlanSeason(farm); err != nil {
			t.Error(err)
		}
	})
	if pieces > 200 {
		t.Errorf("a plan takes %.0f pieces of memory", pieces)
	}
}

func farm(t testing.TB, read func() (*grazing.Farm, error)) *grazing.Farm {
	t.Helper()
	farm, err := read()
	if err != nil {
		t.Fatal(err)
	}
	return farm
}

func example() (*grazing.Farm, error) {
	data, err := os.ReadFile("../../examples/season/data/farm.json")
	if err != nil {
		return nil, err
	}
	return grazing.ReadFarm(data)
}
