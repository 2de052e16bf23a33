package speed

import (
	"os"
	"testing"

	"example.org/soum/grazing/farm"
)

// BenchmarkPlanSeason plans a year of four groups, each behind the other, over
// fifty days' strips in five lanes.
func BenchmarkPlanSeason(b *testing.B) { benchmarkPlan(b, read(b, FiftyStrips)) }

// BenchmarkPlanExample plans the embedded farm of the season example.
func BenchmarkPlanExample(b *testing.B) { benchmarkPlan(b, read(b, example)) }

func benchmarkPlan(b *testing.B, f *farm.Farm) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := f.Plan(); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkLeaders asks how many head the embedded farm carries, which runs a
// season for every head tried.
func BenchmarkLeaders(b *testing.B) {
	f := read(b, example)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := f.Leaders(); err != nil {
			b.Fatal(err)
		}
	}
}

// TestPlanTakesFewPieces keeps a plan from being made of crumbs again: 400 pieces of
// memory are what is allowed for a year of fifty strips and four groups.
func TestPlanTakesFewPieces(t *testing.T) {
	f := read(t, FiftyStrips)
	pieces := testing.AllocsPerRun(20, func() {
		if _, err := f.Plan(); err != nil {
			t.Error(err)
		}
	})
	if pieces > 400 {
		t.Errorf("a plan takes %.0f pieces of memory", pieces)
	}
}

func read(t testing.TB, of func() (*farm.Farm, error)) *farm.Farm {
	t.Helper()
	f, err := of()
	if err != nil {
		t.Fatal(err)
	}
	return f
}

func example() (*farm.Farm, error) {
	data, err := os.ReadFile("../../examples/season/data/farm.json")
	if err != nil {
		return nil, err
	}
	return farm.Read(data)
}
