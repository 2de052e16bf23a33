package study_test

import (
	"context"
	"fmt"
	"math"
	"os"
	"runtime"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/stat"
	"pgregory.net/rapid"

	"example.org/soum/grazing/farm"
	"example.org/soum/grazing/study"
	"example.org/soum/herd"
	"example.org/soum/internal/document"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// wichita is a public record of 31 whole years and ten months.
func wichita(t testing.TB) []rainfall.MonthlyRain {
	t.Helper()
	text, err := os.ReadFile("../../examples/internal/wichita/record.csv")
	require.NoError(t, err)
	record, err := rainfall.ReadMonths(string(text))
	require.NoError(t, err)
	return record
}

// ofYear gives the months of a year as another year's.
func ofYear(record []rainfall.MonthlyRain, year, as int) []rainfall.MonthlyRain {
	var months []rainfall.MonthlyRain
	for _, r := range record {
		if r.Year == year {
			r.Year = as
			months = append(months, r)
		}
	}
	return months
}

// exampleStudy is a study of the season example's farm under the rain of Wichita.
func exampleStudy(t testing.TB, seasons int) *study.Study {
	return &study.Study{
		Version: 1, Farm: *exampleFarm(t), Record: wichita(t),
		Draw: study.DrawYears, Past: study.PastDrawn, Seasons: seasons, Seed: 7,
	}
}

func answered(t testing.TB, s *study.Study) study.Result {
	t.Helper()
	result, err := s.Run()
	require.NoError(t, err)
	return result
}

// TestStudyOfItsOwnYearIsThePlan: where one year is all that can be drawn, every
// season is the plan, to the last bit.
func TestStudyOfItsOwnYearIsThePlan(t *testing.T) {
	s := exampleStudy(t, 40)
	s.Record = nil // the months of the farm's rain
	plan, err := s.Farm.Plan()
	require.NoError(t, err)
	result := answered(t, s)
	assert.Equal(t, []int{2001}, result.Years)
	require.Len(t, result.Points, 1)
	fed := result.Points[0].Fed
	for _, got := range []units.DryMatter{fed.Low, fed.Lower, fed.Middle, fed.Upper, fed.High} {
		assert.InDelta(t, float64(plan.Hay.Eaten-plan.Hay.Opening), float64(got), 1e-9)
	}
	assert.InDelta(t, float64(plan.Hay.Eaten-plan.Hay.Opening), float64(fed.Mean), 1e-9)
	require.Len(t, result.Points[0].Months, len(plan.Months))
	for i, m := range result.Points[0].Months {
		assert.Equal(t, plan.Months[i].Month, m.Month)
		assert.Equal(t, plan.Months[i].Year, m.Year)
	}
	// By the season's end: the store of one short ton at 90 % dry matter less 13 %
	// waste, and what was made of the cut less the same waste.
	allowed := (float64(plan.Hay.Store) + float64(plan.Hay.Made)) * 0.90 * (1 - 0.13)
	last := result.Points[0].Months[len(plan.Months)-1]
	assert.InDelta(t, allowed-float64(plan.Hay.Eaten-plan.Hay.Opening), float64(last.Left.Middle), 1e-6)
}

// grazersOnly is the study without hens, which are fed a ration, and without cuts: all
// that a plan feeds is hay of the store then.
func grazersOnly(t testing.TB, seasons int) *study.Study {
	s := exampleStudy(t, seasons)
	s.Farm.Groups = slices.DeleteFunc(slices.Clone(s.Farm.Groups), func(g farm.Group) bool { return g.ID == "hens" })
	s.Farm.Rotations = slices.Clone(s.Farm.Rotations)
	s.Farm.Rotations[0].Groups = s.Farm.Rotations[0].Groups[:2]
	s.Farm.Cuts = nil
	return s
}

// ran is what a plan says of a season's hay.
type ran struct {
	fed, short float64
	first      units.Date
	months     map[int]bool
}

// byPlan plans a farm under the rain of a year and counts its hay day by day.
func byPlan(t testing.TB, holding farm.Farm, months []rainfall.MonthlyRain) ran {
	t.Helper()
	holding.Rain.Months = map[string]units.RainDepth{}
	for _, m := range months {
		holding.Rain.Months[fmt.Sprintf("%04d-%02d", m.Year, m.Month)] = m.Rain
	}
	plan, err := holding.Plan()
	require.NoError(t, err)
	// 907.18474 kg in a short ton, 90 % of it dry, 13 % wasted.
	store := float64(holding.Feed.Hay) * 0.90 * (1 - 0.13)
	r := ran{months: map[int]bool{}}
	for _, d := range plan.Days {
		r.fed += float64(d.Counted)
		if r.fed-store > r.short+1e-6 {
			r.short = r.fed - store
			r.months[int(d.Date.Month())] = true
			if r.first == 0 {
				r.first = d.Date
			}
		}
	}
	return r
}

// TestStudyAgainstPlans holds odds, days and percentiles against a plan for each
// year of the record. Of n seasons the share that a chance p brings lies within four
// standard errors, √(p (1 - p) ÷ n), but once in 16,000 times.
func TestStudyAgainstPlans(t *testing.T) {
	const n = 4000
	s := grazersOnly(t, n)
	crowd(&s.Farm)
	s.Farm.Feed.Hay = 35600 // so that the years part into those with and without enough
	result := answered(t, s)
	require.Len(t, result.Years, 31)
	point := result.Points[0]
	var fed []float64
	short, firsts, byMonth := 0.0, map[units.Date]bool{}, map[int]float64{}
	for _, year := range result.Years {
		r := byPlan(t, s.Farm, ofYear(s.Record, year, 2001))
		fed = append(fed, r.fed)
		if r.short > 0 {
			short += 1.0 / 31
			firsts[r.first] = true
		}
		for m := range r.months {
			byMonth[m] += 1.0 / 31
		}
	}
	near := func(p float64, got units.Fraction, what string) {
		assert.InDelta(t, p, float64(got), 4*math.Sqrt(p*(1-p)/n)+1e-12, what)
	}
	require.Greater(t, short, 0.1)
	require.Less(t, short, 0.9)
	near(short, point.Odds, "odds")
	for _, m := range point.Months {
		near(byMonth[m.Month], m.Odds, time.Month(m.Month).String())
	}
	for _, day := range point.First {
		assert.True(t, firsts[day], "%s", day)
	}
	assert.True(t, slices.IsSorted(point.First))
	slices.Sort(fed)
	assert.InEpsilon(t, stat.Mean(fed, nil), float64(point.Fed.Mean), 0.1)
	for _, v := range []units.DryMatter{point.Fed.Low, point.Fed.Middle, point.Fed.High} {
		at, _ := slices.BinarySearch(fed, float64(v)-1e-6)
		assert.InDelta(t, fed[at], float64(v), 1e-6)
	}
	// The median season lies within the years of 40 to 60 %.
	assert.GreaterOrEqual(t, float64(point.Fed.Middle), fed[12]-1e-6)
	assert.LessOrEqual(t, float64(point.Fed.Middle), fed[18]+1e-6)
	assert.LessOrEqual(t, float64(point.Fed.High), fed[30]+1e-6)
	assert.GreaterOrEqual(t, float64(point.Fed.High), fed[27]-1e-6)
	assert.LessOrEqual(t, float64(point.Fed.Low), fed[3]+1e-6)
	if s := float64(point.Short.High); short > 0.05 {
		assert.InDelta(t, float64(point.Fed.High)-35600*0.90*(1-0.13), s, 1e-6)
	}
}

// TestStudyCountsHayFromItsCut: hay that is cut after a shortage does not undo it.
func TestStudyCountsHayFromItsCut(t *testing.T) {
	s := exampleStudy(t, 1)
	s.Record = nil
	s.Farm.Feed.Hay = 0
	crowd(&s.Farm)
	plan, err := s.Farm.Plan()
	require.NoError(t, err)
	early, all := 0.0, 0.0 // fed to the geese, goats and cows before the cut of 4 June
	var first units.Date
	cut, _ := units.NewDate(2001, 6, 4)
	for _, d := range plan.Days {
		all += float64(d.Counted)
		if d.Date < cut {
			early += float64(d.Counted)
		}
		if d.Counted > 0 && first == 0 {
			first = d.Date
		}
	}
	require.Positive(t, early)
	point := answered(t, s).Points[0]
	made := float64(plan.Hay.Made) * 0.90 * (1 - 0.13)
	assert.InDelta(t, max(early, all-made), float64(point.Short.Middle), 1e-6)
	assert.Equal(t, units.Fraction(1), point.Odds)
	assert.Equal(t, first, point.First[0])
}

// TestStudyIsTheSameOnAnyWorkers: bit for bit, months fitted and points spread.
func TestStudyIsTheSameOnAnyWorkers(t *testing.T) {
	s := exampleStudy(t, 150)
	s.Draw, s.Fit = study.DrawGamma, rainfall.FitThom
	s.Design, s.Points = study.DesignHypercube, 3
	s.Inputs = []study.Sweep{{Input: study.InputGrowth, Span: &units.Span[float64]{Low: 0.7, High: 1.1}}}
	var answers []study.Result
	for _, workers := range []int{1, 2, 8} {
		last := 0
		result, err := s.RunContext(context.Background(), workers, func(done, all int) {
			assert.Equal(t, 450, all)
			assert.Greater(t, done, last)
			last = done
		})
		require.NoError(t, err)
		assert.Equal(t, 450, last)
		answers = append(answers, result)
	}
	assert.Empty(t, cmp.Diff(answers[0], answers[1]))
	assert.Empty(t, cmp.Diff(answers[0], answers[2]))
	s.Seed = 8
	other := answered(t, s)
	assert.NotEmpty(t, cmp.Diff(answers[0].Points[0].Fed, other.Points[0].Fed), "another seed, other seasons")
}

// TestStudyTakesNoMoreMemoryForMore: a season leaves nothing on the heap but what the
// percentiles need of it, the numbers of one point, whatever the number of points.
func TestStudyTakesNoMoreMemoryForMore(t *testing.T) {
	months := 0
	takes := func(seasons int) (pieces, bytes float64) {
		s := exampleStudy(t, seasons)
		s.Design = study.DesignGrid
		s.Inputs = []study.Sweep{{Input: study.InputHay, Hay: &units.Span[units.FreshFeed]{Low: 0, High: 100}, Steps: 2}}
		var before, after runtime.MemStats
		runtime.ReadMemStats(&before)
		result, err := s.RunContext(context.Background(), 1, nil)
		runtime.ReadMemStats(&after)
		require.NoError(t, err)
		months = len(result.Points[0].Months)
		return float64(after.Mallocs - before.Mallocs), float64(after.TotalAlloc - before.TotalAlloc)
	}
	takes(10)                  // what is made once
	few, fewBytes := takes(64) // powers of two, which the runtime hands out as they are asked for
	many, manyBytes := takes(1024)
	assert.InDelta(t, few, many, 50, "of 960 seasons")
	// Of a season: fed and short, the first day, and room to put either in order, 8
	// bytes each; of each month 8 for what is left and 1 for whether any was missed. A
	// quarter more is for what the runtime and the day loop do by the way.
	assert.Equal(t, 7, months, "April to October")
	each := (manyBytes - fewBytes) / 960
	assert.LessOrEqual(t, each, (5*8+7*(8+1))*5/4.0, "bytes a season")
	assert.Greater(t, each, 0.0)
}

// TestStudyCanBeStopped: the answer is the context's error then.
func TestStudyCanBeStopped(t *testing.T) {
	s := exampleStudy(t, 10000)
	ctx, stop := context.WithCancel(context.Background())
	most := 0
	_, err := s.RunContext(ctx, 2, func(done, _ int) { most = done; stop() })
	assert.ErrorIs(t, err, context.Canceled)
	assert.Less(t, most, 1000)
	var none context.Context
	s.Seasons = 1
	_, err = s.RunContext(none, 1, nil)
	assert.NoError(t, err, "no context never ends it")
	late, end := context.WithTimeout(context.Background(), 0)
	defer end()
	_, err = s.RunContext(late, 1, nil)
	assert.ErrorIs(t, err, context.DeadlineExceeded)
}

// crowd puts more stock on the farm than the grass of its dry spring holds.
func crowd(f *farm.Farm) { f.Groups[0].Head, f.Groups[1].Head = 30, 12 }

// TestStudySweeps holds every input against the plan of a farm changed by hand.
func TestStudySweeps(t *testing.T) {
	number := func(low, high float64) *units.Span[float64] { return &units.Span[float64]{Low: low, High: high} }
	height := func(low, high units.Height) *units.Span[units.Height] {
		return &units.Span[units.Height]{Low: low, High: high}
	}
	inch := units.Height(0.0254)
	for _, c := range []struct {
		sweep  study.Sweep
		values [3]float64
		change func(f *farm.Farm, value float64)
	}{
		{study.Sweep{Input: study.InputGrowth, Span: number(0.5, 1)}, [3]float64{0.5, 0.75, 1}, func(f *farm.Farm, v float64) {
			f.OwnFactor = &farm.OwnFactor{Growth: units.Fraction(v), Why: "poor ground"}
		}},
		{study.Sweep{Input: study.InputHead, Group: "goats", Span: number(6, 25)}, [3]float64{6, 16, 25}, func(f *farm.Farm, v float64) { f.Groups[0].Head = v }},
		{study.Sweep{Input: study.InputHeadFactor, Group: "cows", Span: number(0.5, 3)}, [3]float64{0.5, 1.75, 3}, func(f *farm.Farm, v float64) { f.Groups[1].Head = 12 * v }},
		{study.Sweep{Input: study.InputLeave, Heights: height(3*inch, 5*inch)}, [3]float64{0.0762, 0.1016, 0.127}, func(f *farm.Farm, v float64) { f.Rotations[0].Leave = units.Height(v) }},
		{study.Sweep{Input: study.InputTurnIn, Rotation: 0, Heights: height(6*inch, 12*inch)}, [3]float64{0.1524, 0.2286, 0.3048}, func(f *farm.Farm, v float64) { f.Rotations[0].TurnIn = units.Height(v) }},
		{study.Sweep{Input: study.InputRest, Rotation: 1, Span: number(10, 45)}, [3]float64{10, 28, 45}, func(f *farm.Farm, v float64) { f.Rotations[1].ShortestRest = units.Days(v) }},
		{study.Sweep{Input: study.InputMoves, Span: number(1, 3)}, [3]float64{1, 2, 3}, func(f *farm.Farm, v float64) { f.Rotations[0].MovesADay = int(v) }},
	} {
		s := exampleStudy(t, 1)
		s.Record = nil
		crowd(&s.Farm)
		s.Design, s.Inputs = study.DesignGrid, []study.Sweep{c.sweep}
		s.Inputs[0].Steps = 3
		result := answered(t, s)
		require.Len(t, result.Points, 3)
		feeds := map[units.DryMatter]bool{}
		for i, value := range c.values {
			holding := exampleFarm(t)
			crowd(holding)
			c.change(holding, value)
			plan, err := holding.Plan()
			require.NoError(t, err)
			assert.InDelta(t, value, result.Points[i].Values[0], 1e-12, "%s", c.sweep.Input)
			assert.InEpsilon(t, float64(plan.Hay.Eaten-plan.Hay.Opening), float64(result.Points[i].Fed.Middle), 1e-9, "%s %v", c.sweep.Input, value)
			feeds[result.Points[i].Fed.Middle] = true
		}
		assert.Greater(t, len(feeds), 1, "%s changes something", c.sweep.Input)
	}
}

// appetite multiplies what a group wants by hand, in a class row of its own.
func appetite(t testing.TB, g *farm.Group, factor float64) {
	t.Helper()
	class, err := herd.ClassByName(g.Class.Name)
	require.NoError(t, err)
	class.Intake = slices.Clone(class.Intake)
	for i := range class.Intake {
		share := &class.Intake[i].Share
		share.Low *= units.Fraction(factor)
		share.High *= units.Fraction(factor)
	}
	g.Class = herd.ClassRow{Row: &class}
}

// TestStudySweptIsTheDocumentChangedByHand holds the points of a sweep, all that is told
// of them, against a study of its own whose document was changed by hand.
func TestStudySweptIsTheDocumentChangedByHand(t *testing.T) {
	number := func(low, high float64) *units.Span[float64] { return &units.Span[float64]{Low: low, High: high} }
	for name, c := range map[string]struct {
		sweep  study.Sweep
		values [3]float64
		change func(s *study.Study, value float64)
		within float64 // of a figure; 0: bit for bit
	}{
		"rain factor": {study.Sweep{Input: study.InputRainFactor, Span: number(0, 1.5)}, [3]float64{0, 0.75, 1.5}, func(s *study.Study, v float64) {
			for i := range s.Record {
				s.Record[i].Rain *= units.RainDepth(v)
			}
		}, 0},
		"hay": {study.Sweep{Input: study.InputHay, Hay: &units.Span[units.FreshFeed]{Low: 0, High: 2000}}, [3]float64{0, 1000, 2000}, func(s *study.Study, v float64) {
			s.Farm.Feed.Hay = units.FreshFeed(v)
		}, 0},
		"all land": {study.Sweep{Input: study.InputLandFactor, Span: number(0.5, 1.5)}, [3]float64{0.5, 1, 1.5}, func(s *study.Study, v float64) {
			for i := range s.Farm.Land {
				s.Farm.Land[i].Width *= units.Length(v)
				s.Farm.Land[i].Area *= units.Area(v)
			}
		}, 0},
		"a lane": {study.Sweep{Input: study.InputLandFactor, Land: "meadow 1", Span: number(0.25, 1.25)}, [3]float64{0.25, 0.75, 1.25}, func(s *study.Study, v float64) {
			require.Equal(t, "meadow 1", s.Farm.Land[0].ID)
			s.Farm.Land[0].Width *= units.Length(v)
		}, 0},
		"all appetites": {study.Sweep{Input: study.InputIntakeFactor, Span: number(0.5, 1.5)}, [3]float64{0.5, 1, 1.5}, func(s *study.Study, v float64) {
			for i := range s.Farm.Groups {
				appetite(t, &s.Farm.Groups[i], v)
			}
		}, 1e-9},
		"one appetite": {study.Sweep{Input: study.InputIntakeFactor, Group: "goats", Span: number(0.5, 1.5)}, [3]float64{0.5, 1, 1.5}, func(s *study.Study, v float64) {
			require.Equal(t, "goats", s.Farm.Groups[0].ID)
			appetite(t, &s.Farm.Groups[0], v)
		}, 1e-9},
	} {
		fresh := func() *study.Study {
			s := exampleStudy(t, 40)
			crowd(&s.Farm)
			return s
		}
		s := fresh()
		s.Design, s.Inputs = study.DesignGrid, []study.Sweep{c.sweep}
		s.Inputs[0].Steps = 3
		swept := answered(t, s).Points
		require.Len(t, swept, 3, name)
		for i, value := range c.values {
			s := fresh()
			s.Record, s.Farm.Land, s.Farm.Groups = slices.Clone(s.Record), slices.Clone(s.Farm.Land), slices.Clone(s.Farm.Groups)
			c.change(s, value)
			want := answered(t, s).Points[0]
			assert.Equal(t, []float64{value}, swept[i].Values, name)
			want.Values = swept[i].Values
			near := cmp.Comparer(func(a, b units.DryMatter) bool {
				// Of what was fed too, since what is left of a store may be near 0.
				return math.Abs(float64(a-b)) <= c.within*float64(max(a, -a, want.Fed.High))
			})
			assert.Empty(t, cmp.Diff(want, swept[i], near), "%s %v", name, value)
		}
		assert.NotEqual(t, swept[0].Short, swept[2].Short, "%s changes something", name)
	}
}

// TestStudyRainFactorIsAnotherRecord: the factor is on what is drawn, months and
// distributions alike, neither on months that are known nor on the normals.
func TestStudyRainFactorIsAnotherRecord(t *testing.T) {
	for _, past := range []study.Past{study.PastKnown, study.PastDrawn} {
		for _, draw := range []study.Draw{study.DrawYears, study.DrawGamma} {
			s := exampleStudy(t, 30)
			s.Past, s.Draw = past, draw
			if draw == study.DrawGamma {
				s.Fit = rainfall.FitMoments
			}
			plain, err := study.Rain(s, 30)
			require.NoError(t, err)
			without := answered(t, s).Points[0]
			s.Design = study.DesignGrid
			s.Inputs = []study.Sweep{{Input: study.InputRainFactor, Span: &units.Span[float64]{Low: 0.5, High: 1}, Steps: 2}}
			drier, err := study.Rain(s, 30) // of the first point
			require.NoError(t, err)
			for i := range plain {
				for m, was := range plain[i] {
					// The farm knows January to March 2001, and today is 20 April.
					if known := past == study.PastKnown && was.Year == 2001 && was.Month <= time.March; !known {
						was.Rain *= 0.5
					}
					require.Equal(t, was, drier[i][m])
				}
			}
			with := answered(t, s).Points[1]
			without.Values = []float64{1}
			assert.Equal(t, without, with, "a factor of 1 is none, bit for bit")
		}
	}
	// A farm without normals of its own has the record's, as they are.
	s := exampleStudy(t, 30)
	normals, err := rainfall.MonthNormals(s.Record)
	require.NoError(t, err)
	s.Farm.Rain.Normal = nil
	s.Design = study.DesignGrid
	s.Inputs = []study.Sweep{{Input: study.InputRainFactor, Span: &units.Span[float64]{Low: 0.5, High: 1}, Steps: 2}}
	none := answered(t, s)
	s.Farm.Rain.Normal = normals[:]
	assert.Equal(t, answered(t, s), none)
	assert.NotEqual(t, none.Points[0].Fed, none.Points[1].Fed)
}

// TestStudyMoreHayLowersNoOdds: hay in store moves what is left by its own dry matter
// and nothing else, so that no season and no month runs short that did not with less.
func TestStudyMoreHayLowersNoOdds(t *testing.T) {
	s := exampleStudy(t, 200)
	crowd(&s.Farm)
	s.Design = study.DesignGrid
	s.Inputs = []study.Sweep{{Input: study.InputHay, Hay: &units.Span[units.FreshFeed]{Low: 30000, High: 46000}, Steps: 9}}
	points := answered(t, s).Points
	for i := 1; i < len(points); i++ {
		less, more := points[i-1], points[i]
		assert.LessOrEqual(t, more.Odds, less.Odds)
		assert.Equal(t, less.Fed, more.Fed)
		for m := range more.Months {
			assert.LessOrEqual(t, more.Months[m].Odds, less.Months[m].Odds)
			// 2,000 kg at 90 % dry matter less 13 % waste.
			assert.InDelta(t, 2000*0.90*(1-0.13), float64(more.Months[m].Left.Middle-less.Months[m].Left.Middle), 1e-6)
		}
	}
	assert.Less(t, points[8].Odds, points[0].Odds, "and some less")
}

// TestStudyDesigns: a grid has every step with every other; of a hypercube every
// part of every span is used once.
func TestStudyDesigns(t *testing.T) {
	s := exampleStudy(t, 1)
	s.Design = study.DesignGrid
	s.Inputs = []study.Sweep{
		{Input: study.InputGrowth, Span: &units.Span[float64]{Low: 0.5, High: 1}, Steps: 2},
		{Input: study.InputMoves, Span: &units.Span[float64]{Low: 1, High: 3}, Steps: 3},
	}
	var values [][]float64
	for _, p := range answered(t, s).Points {
		values = append(values, p.Values)
	}
	assert.Equal(t, [][]float64{{0.5, 1}, {0.5, 2}, {0.5, 3}, {1, 1}, {1, 2}, {1, 3}}, values)
	s.Design, s.Points = study.DesignHypercube, 20
	s.Inputs = []study.Sweep{
		{Input: study.InputGrowth, Span: &units.Span[float64]{Low: 0.5, High: 1.5}},
		{Input: study.InputHeadFactor, Group: "goats", Span: &units.Span[float64]{Low: 1, High: 3}},
	}
	var parts [2][20]int
	var both []float64
	for _, p := range answered(t, s).Points {
		parts[0][int((p.Values[0]-0.5)*20)]++
		parts[1][int((p.Values[1]-1)/2*20)]++
		both = append(both, (p.Values[0]-1)*(p.Values[1]-2))
	}
	for k := range parts {
		for i, times := range parts[k] {
			assert.Equal(t, 1, times, "part %d of input %d", i, k)
		}
	}
	// Of three whole numbers each has a third of the points.
	s.Points, s.Inputs = 30, []study.Sweep{{Input: study.InputMoves, Span: &units.Span[float64]{Low: 1, High: 3}}}
	moves := map[float64]int{}
	for _, p := range answered(t, s).Points {
		moves[p.Values[0]]++
	}
	assert.Equal(t, map[float64]int{1: 10, 2: 10, 3: 10}, moves)
	// Uncorrelated: the mean product of 20 is 0 within 4 × √(1/12 × 4/12 ÷ 20).
	assert.InDelta(t, 0, stat.Mean(both, nil), 4*math.Sqrt(1.0/12*4/12/20))
}

// TestStudyDrawsYearsAlike: over 31,000 draws each of 31 years comes 1,000 times,
// give or take four times √1,000, and a year tells nothing of the one after, nor a
// season of the next.
func TestStudyDrawsYearsAlike(t *testing.T) {
	s := exampleStudy(t, 10000)
	for i := range s.Record {
		if r := &s.Record[i]; r.Month == time.June { // which then tells the years apart
			r.Rain = units.RainDepth(r.Year) * units.RainMillimetre
		}
	}
	times, pairs := map[units.RainDepth]int{}, map[[2]units.RainDepth]bool{}
	var here, next []float64
	const n = 15500
	drawn, err := study.Rain(s, n)
	require.NoError(t, err)
	for _, rain := range drawn {
		require.Len(t, rain, 24)
		a, b := rain[5], rain[17]
		require.Equal(t, []int{2000, 2001, 6}, []int{a.Year, b.Year, int(b.Month)})
		times[a.Rain]++
		times[b.Rain]++
		pairs[[2]units.RainDepth{a.Rain, b.Rain}] = true
		here, next = append(here, float64(a.Rain)), append(next, float64(b.Rain))
	}
	require.Len(t, times, 31)
	for rain, k := range times {
		assert.InDelta(t, 1000, k, 4*math.Sqrt(1000), "%v", rain)
	}
	assert.Len(t, pairs, 31*31, "every year with every other")
	assert.InDelta(t, 0, stat.Correlation(here, next, nil), 4/math.Sqrt(n))
	assert.InDelta(t, 0, stat.Correlation(next[1:], next[:n-1], nil), 4/math.Sqrt(n))
}

// TestStudyDrawsGammas: mean, variance and dry share of each month are those of its
// distribution: mean αβ, variance αβ² of what is wet.
func TestStudyDrawsGammas(t *testing.T) {
	s := exampleStudy(t, 1)
	for i := range s.Record { // some Julys without rain
		if r := &s.Record[i]; r.Month == time.July && r.Year%4 == 0 {
			r.Rain = 0
		}
	}
	s.Draw, s.Fit = study.DrawGamma, rainfall.FitLikelihood
	fits, err := study.Fits(s)
	require.NoError(t, err)
	const n = 4000
	drawn, err := study.Rain(s, n)
	require.NoError(t, err)
	for _, month := range []int{0, 5, 6} {
		fit := fits[month]
		var wet []float64
		for _, rain := range drawn {
			if v := float64(rain[12+month].Rain); v > 0 {
				wet = append(wet, v)
			}
		}
		dry := float64(fit.Dry)
		assert.InDelta(t, dry, 1-float64(len(wet))/n, 4*math.Sqrt(dry*(1-dry)/n)+1e-12)
		mean, deviation := fit.Shape*float64(fit.Scale), math.Sqrt(fit.Shape)*float64(fit.Scale)
		assert.InDelta(t, mean, stat.Mean(wet, nil), 4*deviation/math.Sqrt(n*0.7))
		assert.InEpsilon(t, deviation, stat.StdDev(wet, nil), 0.1)
		if month == 6 {
			assert.InDelta(t, 8.0/31, dry, 1e-12, "1980 to 2008, every fourth")
		}
	}
}

// TestStudyKeepsWhatIsKnown: months before today's stay as the farm tells them.
func TestStudyKeepsWhatIsKnown(t *testing.T) {
	s := exampleStudy(t, 1)
	s.Past = study.PastKnown
	april := map[units.RainDepth]bool{}
	drawn, err := study.Rain(s, 50)
	require.NoError(t, err)
	for _, rain := range drawn {
		for m, mm := range []float64{37.4, 98.8, 57.2} {
			assert.InDelta(t, mm, rain[12+m].Rain.Millimetres(), 1e-9)
		}
		april[rain[15].Rain] = true
	}
	assert.Greater(t, len(april), 10, "today is 20 April: April is not past")
}

// TestDrierNeverGrowsMore: less rain in any month gives no more growth on any day.
func TestDrierNeverGrowsMore(t *testing.T) {
	s := exampleStudy(t, 1)
	drawn, err := study.Rain(s, 100)
	require.NoError(t, err)
	rapid.Check(t, func(r *rapid.T) {
		months := rapid.SampledFrom(drawn).Draw(r, "season")
		drier := slices.Clone(months)
		for i := range drier {
			drier[i].Rain *= units.RainDepth(rapid.Float64Range(0, 1).Draw(r, "share"))
		}
		wet, err := study.Growth(s, months)
		require.NoError(t, err)
		dry, err := study.Growth(s, drier)
		require.NoError(t, err)
		for l := range wet {
			for day := range wet[l] {
				require.LessOrEqual(t, dry[l][day], wet[l][day])
			}
		}
	})
}

// TestStudyPercentiles are those of the empirical distribution, as another library
// reckons it.
func TestStudyPercentiles(t *testing.T) {
	for n := 1; n <= 400; n++ {
		sorted := make([]float64, n)
		for i := range sorted {
			sorted[i] = float64(i * i)
		}
		for _, share := range []float64{0.05, 0.25, 0.5, 0.75, 0.95} {
			if at := share * float64(n); math.Abs(at-math.Round(at)) > 1e-9 {
				assert.Equal(t, stat.Quantile(share, stat.Empirical, sorted, nil), study.Quantile(share, sorted), "%v of %d", share, n)
			}
		}
	}
	assert.Equal(t, 5.0, study.Quantile(0.05, upTo(100)), "the fifth of a hundred")
	assert.Equal(t, 95.0, study.Quantile(0.95, upTo(100)))
	values := upTo(1000)
	slices.Reverse(values)
	assert.Equal(t, study.Spread{Low: 50, Lower: 250, Middle: 500, Upper: 750, High: 950, Mean: 500.5}, study.SpreadOf(values))
}

func upTo(n int) []float64 {
	all := make([]float64, n)
	for i := range all {
		all[i] = float64(i + 1)
	}
	return all
}

// smallStudy is a whole question in few words, which the tests change.
const smallStudy = `{"version": 1, "draw": "years", "past": "drawn", "seasons": 20,
  "record": RECORD, "note": "ours",
  "farm": {"version": 1, "today": "2001-05-01", "season": {"from": "2001-05-01", "to": "2001-06-20"},
    "land": [{"id": "a", "width": "30 m", "length": "100 m", "height": "20 cm", "pasture": "mixed-pasture"}],
    "groups": [{"id": "ewes", "class": "ewe", "head": 8}],
    "rotations": [{"land": ["a"], "groups": [{"group": "ewes"}], "shortest_rest": "20 days"}]}}`

// twoYears is a wet year and a dry one.
func twoYears() string {
	var months []string
	for month := 1; month <= 12; month++ {
		months = append(months, fmt.Sprintf(`{"year": 1999, "month": %d, "rain": "80 mm"}`, month), fmt.Sprintf(`{"year": 2000, "month": %d, "rain": "%d mm"}`, month, 10+month))
	}
	return "[" + strings.Join(months, ", ") + "]"
}

func changedStudy(t testing.TB, pairs ...string) string {
	t.Helper()
	text := smallStudy
	for i := 0; i < len(pairs); i += 2 {
		require.Equal(t, 1, strings.Count(text, pairs[i]), "%q must stand once", pairs[i])
		text = strings.Replace(text, pairs[i], pairs[i+1], 1)
	}
	return strings.Replace(text, "RECORD", twoYears(), 1)
}

// TestBadStudies puts one thing wrong at a time.
func TestBadStudies(t *testing.T) {
	sweep := func(text string) string { return `"design": "grid", "inputs": [` + text + `]` }
	for _, c := range []struct{ old, bad, path, says string }{
		{`{"version": 1, "draw"`, `{"version": 2, "draw"`, "version", "no known version"},
		{`"draw": "years"`, `"draw": "days"`, "draw", "years, gamma"},
		{`"draw": "years"`, `"draw": "gamma"`, "fit", "was left out"},
		{`"draw": "years"`, `"draw": "years", "fit": "thom"`, "fit", "beside whole years"},
		{`"draw": "years"`, `"draw": "gamma", "fit": "best"`, "fit", "thom, likelihood, moments"},
		{`"past": "drawn"`, `"past": "gone"`, "past", "known, drawn"},
		{`"past": "drawn", `, ``, "past", "missing"},
		{`"seasons": 20`, `"seasons": 0`, "seasons", "1 to 10000"},
		{`"seasons": 20`, `"seasons": 10001`, "seasons", "1 to 10000"},
		{`"note": "ours"`, `"seed": -1`, "seed", "no seed"},
		{`"note": "ours"`, `"seed": 9007199254740992`, "seed", "no seed"},
		{`"note": "ours"`, `"end": "top"`, "end", "low, middle, high"},
		{`"record": RECORD, `, ``, "farm.rain.months", "0 months cannot be drawn from"},
		{`RECORD`, `[{"year": 2000, "month": 13, "rain": "1 mm"}]`, "record", "13 is not a month; 1 to 12"},
		{`RECORD`, `[{"year": 2000, "month": 1, "rain": "1 mm"}]`, "record", "1 month cannot be drawn from: record: has no February in any year"},
		{`RECORD`, `[{"year": 2000, "month": 1}]`, "record[0].rain", "missing"},
		{`"head": 8`, `"head": -8`, "farm.groups[0].head", ""},
		{`"note": "ours"`, `"design": "grid"`, "design", "without inputs"},
		{`"note": "ours"`, `"inputs": [{"input": "growth", "span": {"low": 1, "high": 2}}]`, "design", "was left out"},
		{`"note": "ours"`, `"points": 3`, "points", "without a hypercube"},
		{`"note": "ours"`, `"design": "hypercube", "inputs": [{"input": "growth", "span": {"low": 1, "high": 2}}]`, "points", "2 to 1000"},
		{`"note": "ours"`, `"design": "hypercube", "points": 1001, "inputs": [{"input": "growth", "span": {"low": 1, "high": 2}}]`, "points", "2 to 1000"},
		{`"note": "ours"`, `"design": "hypercube", "points": 3, "inputs": [{"input": "growth", "span": {"low": 1, "high": 2}, "steps": 2}]`, "inputs[0].steps", "beside a hypercube"},
		{`"note": "ours"`, sweep(`{"input": "luck", "steps": 2}`), "inputs[0].input", "growth, head"},
		{`"note": "ours"`, sweep(`{"input": "growth", "span": {"low": 1, "high": 2}}`), "inputs[0].steps", "2 to 100"},
		{`"note": "ours"`, sweep(`{"input": "growth", "span": {"low": 1, "high": 2}, "steps": 101}`), "inputs[0].steps", "2 to 100"},
		{`"note": "ours"`, sweep(`{"input": "growth", "span": {"low": 2, "high": 1}, "steps": 2}`), "inputs[0].span", "no span"},
		{`"note": "ours"`, sweep(`{"input": "growth", "span": {"low": 1, "high": 3.1}, "steps": 2}`), "point[1].farm.own_factor.growth", "no factor"},
		{`"note": "ours"`, sweep(`{"input": "growth", "heights": {"low": "1 in", "high": "2 in"}, "steps": 2}`), "inputs[0].span", "number to number"},
		{`"note": "ours"`, sweep(`{"input": "growth", "group": "ewes", "span": {"low": 1, "high": 2}, "steps": 2}`), "inputs[0].group", "of no group"},
		{`"note": "ours"`, sweep(`{"input": "leave", "span": {"low": 1, "high": 2}, "steps": 2}`), "inputs[0].heights", "height to height"},
		{`"note": "ours"`, sweep(`{"input": "leave", "heights": {"low": "0 in", "high": "2 in"}, "steps": 2}`), "inputs[0].heights", "no span of heights"},
		{`"note": "ours"`, sweep(`{"input": "leave", "heights": {"low": "2 in", "high": "100.5 m"}, "steps": 2}`), "inputs[0].heights", "is no span of heights; low above 0, high up to 100 m and not below it"},
		{`"note": "ours"`, sweep(`{"input": "leave", "heights": {"low": "2 in", "high": "40 in"}, "steps": 2}`), "point[1].farm.", "turn"},
		{`"note": "ours"`, sweep(`{"input": "rest", "rotation": 1, "span": {"low": 1, "high": 2}, "steps": 2}`), "inputs[0].rotation", "0 to 0"},
		{`"note": "ours"`, sweep(`{"input": "rest", "span": {"low": 0.4, "high": 2}, "steps": 2}`), "inputs[0].span", "1 or more"},
		{`"note": "ours"`, sweep(`{"input": "rest", "span": {"low": 1, "high": 2.5}, "steps": 2}`), "inputs[0].span", "1 to 2.5 is no span of whole numbers"},
		{`"note": "ours"`, sweep(`{"input": "rest", "span": {"low": 20, "high": 22}, "steps": 4}`), "inputs[0].steps", "4 are more than the whole numbers of 20 to 22; up to 3, or a wider span"},
		{`"note": "ours"`, sweep(`{"input": "head", "group": "cows", "span": {"low": 1, "high": 2}, "steps": 2}`), "inputs[0].group", "of no group"},
		{`"note": "ours"`, sweep(`{"input": "head", "group": "ewes", "span": {"low": 1, "high": 2}, "steps": 2}, {"input": "head factor", "group": "ewes", "span": {"low": 1, "high": 2}, "steps": 2}`), "inputs[1].input", "stands twice"},
		{`"note": "ours"`, sweep(`{"input": "rain factor", "span": {"low": -0.1, "high": 2}, "steps": 2}`), "inputs[0].span", "low 0 (no rain) or more, high up to 10"},
		{`"note": "ours"`, sweep(`{"input": "rain factor", "span": {"low": 0, "high": 10.5}, "steps": 2}`), "inputs[0].span", "0 to 10.5 is no span of factors on rain"},
		{`"note": "ours"`, sweep(`{"input": "land factor", "span": {"low": 0, "high": 2}, "steps": 2}`), "inputs[0].span", "low above 0, high up to 10"},
		{`"note": "ours"`, sweep(`{"input": "land factor", "span": {"low": 1, "high": 11}, "steps": 2}`), "inputs[0].span", "low above 0, high up to 10"},
		{`"note": "ours"`, sweep(`{"input": "land factor", "land": "b", "span": {"low": 1, "high": 2}, "steps": 2}`), "inputs[0].land", "of no land"},
		{`"note": "ours"`, sweep(`{"input": "rain factor", "land": "a", "span": {"low": 1, "high": 2}, "steps": 2}`), "inputs[0].land", "beside an input that is of no land"},
		{`"note": "ours"`, sweep(`{"input": "rain factor", "rotation": 1, "span": {"low": 1, "high": 2}, "steps": 2}`), "inputs[0].rotation", "of no rotation"},
		{`"note": "ours"`, sweep(`{"input": "land factor", "span": {"low": 1, "high": 2}, "steps": 2}, {"input": "land factor", "land": "a", "span": {"low": 1, "high": 2}, "steps": 2}`), "inputs[1].input", "stands twice"},
		{`"note": "ours"`, sweep(`{"input": "intake factor", "span": {"low": 1, "high": 12}, "steps": 2}`), "inputs[0].span", "low above 0, high up to 10"},
		{`"note": "ours"`, sweep(`{"input": "intake factor", "group": "cows", "span": {"low": 1, "high": 2}, "steps": 2}`), "inputs[0].group", "of no group"},
		{`"note": "ours"`, sweep(`{"input": "intake factor", "group": "ewes", "span": {"low": 1, "high": 2}, "steps": 2}, {"input": "intake factor", "span": {"low": 1, "high": 2}, "steps": 2}`), "inputs[1].input", "stands twice"},
		{`"note": "ours"`, sweep(`{"input": "hay", "span": {"low": 1, "high": 2}, "steps": 2}`), "inputs[0].hay", "mass to mass"},
		{`"note": "ours"`, sweep(`{"input": "hay", "hay": {"low": "1 t", "high": "2 t"}, "heights": {"low": "1 in", "high": "2 in"}, "steps": 2}`), "inputs[0].hay", "no span or heights"},
		{`"note": "ours"`, sweep(`{"input": "growth", "hay": {"low": "1 t", "high": "2 t"}, "steps": 2}`), "inputs[0].span", "no heights or hay"},
		{`"note": "ours"`, sweep(`{"input": "leave", "hay": {"low": "1 t", "high": "2 t"}, "steps": 2}`), "inputs[0].heights", "no span or hay"},
		{`"note": "ours"`, sweep(`{"input": "hay", "hay": {"low": "-1 t", "high": "2 t"}, "steps": 2}`), "inputs[0].hay", ""},
		{`"note": "ours"`, sweep(`{"input": "hay", "hay": {"low": "3 t", "high": "2 t"}, "steps": 2}`), "inputs[0].hay", "low 0 or more"},
		{`"note": "ours"`, sweep(`{"input": "growth", "span": {"low": 1, "high": 2}, "steps": 40}, {"input": "rest", "span": {"low": 1, "high": 40}, "steps": 26}`), "inputs", "up to 1000"},
		{`"note": "ours"`, `"nots": "ours"`, "nots", "note"},
	} {
		_, err := study.Read([]byte(changedStudy(t, c.old, c.bad)))
		var wrong *document.Error
		if assert.ErrorAs(t, err, &wrong, "%s", c.bad) {
			assert.Contains(t, wrong.Path, c.path, "%s", c.bad)
			assert.Contains(t, err.Error(), c.says, "%s", c.bad)
			assert.NotContains(t, err.Error(), "\n")
		}
	}
	for _, good := range []string{`"seasons": 10000`, `"seasons": 1`} {
		_, err := study.Read([]byte(changedStudy(t, `"seasons": 20`, good)))
		assert.NoError(t, err)
	}
	for _, good := range []string{
		`"seed": 9007199254740991`,
		sweep(`{"input": "rain factor", "span": {"low": 0, "high": 10}, "steps": 2}`),
		sweep(`{"input": "hay", "hay": {"low": "0 t", "high": "1000000 t"}, "steps": 2}`),
		sweep(`{"input": "land factor", "land": "a", "span": {"low": 0.1, "high": 10}, "steps": 2}, {"input": "intake factor", "span": {"low": 0.5, "high": 10}, "steps": 2}, {"input": "head factor", "group": "ewes", "span": {"low": 1, "high": 2}, "steps": 2}`),
		`"design": "hypercube", "points": 1000, "inputs": [{"input": "growth", "span": {"low": 1, "high": 2}}]`,
		sweep(`{"input": "growth", "span": {"low": 1, "high": 2}, "steps": 100}, {"input": "rest", "span": {"low": 1, "high": 40}, "steps": 10}`),
	} {
		_, err := study.Read([]byte(changedStudy(t, `"note": "ours"`, good)))
		assert.NoError(t, err, good)
	}
}

// TestStudiedComesBackAsItWas writes a question and reads it again.
func TestStudiedComesBackAsItWas(t *testing.T) {
	s, err := study.Read([]byte(changedStudy(t, `"note": "ours"`, `"note": "ours", "x-colour": 1, "design": "grid", "inputs": [{"input": "leave", "heights": {"low": "3 in", "high": "4 in"}, "steps": 2}]`)))
	require.NoError(t, err)
	data, err := s.JSON(units.US)
	require.NoError(t, err)
	again, err := study.Read(data)
	require.NoError(t, err)
	assert.InDelta(t, 0.0762, float64(again.Inputs[0].Heights.Low), 1e-9)
	a, b := answered(t, s), answered(t, again)
	assert.Equal(t, a.Years, b.Years)
	assert.InDelta(t, float64(a.Points[0].Fed.Middle), float64(b.Points[0].Fed.Middle), 1e-6)
}

// FuzzRead reads any text: what it takes runs, and gives numbers.
func FuzzRead(f *testing.F) {
	text := strings.Replace(smallStudy, "RECORD", twoYears(), 1)
	f.Add([]byte(text))
	f.Add([]byte(strings.Replace(text, `"years"`, `"gamma", "fit": "moments"`, 1)))
	f.Add([]byte(strings.Replace(text, `"note": "ours"`, `"design": "hypercube", "points": 2, "inputs": [{"input": "head", "group": "ewes", "span": {"low": 1, "high": 90}}]`, 1)))
	f.Fuzz(func(t *testing.T, data []byte) {
		s, err := study.Read(data)
		if err != nil || len(s.Inputs) > 1 || s.Points > 2 {
			return
		}
		s.Seasons = 2
		result, err := s.Run()
		if err != nil {
			return
		}
		for _, p := range result.Points {
			for _, v := range []units.DryMatter{p.Fed.High, p.Fed.Mean, p.Short.High, p.Months[0].Left.Low} {
				if v-v != 0 {
					t.Fatalf("%v in %s", v, data)
				}
			}
		}
	})
}

// How often does a farm without hay in store run short, where every other year is
// dry?
func ExampleStudy_Run() {
	studied, err := study.Read([]byte(strings.Replace(smallStudy, "RECORD", twoYears(), 1)))
	if err != nil {
		fmt.Println(err)
		return
	}
	studied.Seasons, studied.Farm.Groups[0].Head = 1000, 10.5
	result, err := studied.Run()
	if err != nil {
		fmt.Println(err)
		return
	}
	point := result.Points[0]
	fmt.Println("drawn from", result.Years)
	fmt.Printf("runs short in %.0f of 10 seasons\n", 10*point.Odds)
	fmt.Println("a wet year wants", point.Fed.Lower.In(units.Metric))
	// Output:
	// drawn from [1999 2000]
	// runs short in 5 of 10 seasons
	// a wet year wants 0 kg
}

// BenchmarkStudy runs 1,000 and 10,000 seasons of the embedded farm on all processors.
func BenchmarkStudy(b *testing.B) {
	for _, seasons := range []int{1000, 10000} {
		b.Run(fmt.Sprint(seasons), func(b *testing.B) {
			s := exampleStudy(b, seasons)
			b.ReportAllocs()
			for b.Loop() {
				if _, err := s.Run(); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
