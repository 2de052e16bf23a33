package speed

import (
	"context"
	"encoding/json"
	"os"
	"sync"
	"testing"
	"time"

	"example.org/soum/grazing/farm"
	"example.org/soum/grazing/study"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// What memory is shared is tested here, under the race detector: the packages' own tests
// hold so much beside the library that to build them for it takes minutes.

// TestPlansShareNothing plans unlike farms after one another and side by side: a plan is
// made in the memory of those before it, and must not change with those after it.
func TestPlansShareNothing(t *testing.T) {
	farms := []*farm.Farm{read(t, example), read(t, births), read(t, FiftyStrips)}
	var plans []*farm.Plan
	var texts []string
	for _, f := range farms {
		plan, text := planned(t, f)
		plans, texts = append(plans, plan), append(texts, text)
	}
	var all sync.WaitGroup
	for i := range 4 * len(farms) {
		all.Go(func() {
			for k := range 4 {
				at := (i + k) % len(farms)
				if _, text := planned(t, farms[at]); text != texts[at] {
					t.Errorf("farm %d planned beside others", at)
				}
			}
		})
	}
	all.Wait()
	for i, plan := range plans {
		if asJSON(t, plan) != texts[i] {
			t.Errorf("the plan of farm %d after other plans", i)
		}
	}
}

// TestStudiesShareNothing: the seasons of a study on one worker and on eight.
func TestStudiesShareNothing(t *testing.T) {
	var record []rainfall.MonthlyRain
	for i := range 12 * 10 {
		record = append(record, rainfall.MonthlyRain{Year: 1990 + i/12, Month: 1 + time.Month(i%12), Rain: units.RainDepth(20+i*37%90) * units.RainMillimetre})
	}
	s := study.Study{
		Version: 1, Farm: *read(t, example), Record: record, Draw: study.DrawGamma, Fit: rainfall.FitThom, Past: study.PastKnown,
		Seasons: 60, Seed: 1, Design: study.DesignHypercube, Points: 3,
		Inputs: []study.Sweep{{Input: study.InputGrowth, Span: &units.Span[float64]{Low: 0.7, High: 1.1}}},
	}
	var texts []string
	for _, workers := range []int{1, 8} {
		result, err := s.RunContext(context.Background(), workers, nil)
		if err != nil {
			t.Fatal(err)
		}
		texts = append(texts, asJSON(t, result))
	}
	if texts[0] != texts[1] {
		t.Error("eight workers give another answer than one")
	}
}

func planned(t *testing.T, f *farm.Farm) (*farm.Plan, string) {
	plan, err := f.Plan()
	if err != nil {
		t.Error(err)
	}
	return plan, asJSON(t, plan)
}

func asJSON(t *testing.T, v any) string {
	text, err := json.Marshal(v)
	if err != nil {
		t.Error(err)
	}
	return string(text)
}

func births() (*farm.Farm, error) {
	data, err := os.ReadFile("../../examples/season/data/births.json")
	if err != nil {
		return nil, err
	}
	return farm.Read(data)
}
