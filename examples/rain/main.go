// Rain reads a record of monthly rain, its own of Wichita or the one in a file of
// yours, and tells what a grazier asks of it: how often the rain lets the land be
// grazed often enough, how long the driest run was, how this year stands at each
// date on which to decide, and when to look at the gauge next year. A flag draws
// the years and their deciles.
//
//	go run ./examples/rain
//	go run ./examples/rain -record gauge.csv -passes 5 -units US -picture rain.png
//
// What stands under the drought plan is where to begin; an adviser who knows the
// land decides with you.
package main

import (
	"flag"
	"fmt"
	"io"
	"os"
	"time"

	"example.org/soum/examples/internal/wichita"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// keyMonths make the grass of mixed prairie.
var keyMonths = []int{4, 5, 6}

func main() {
	if err := run(os.Args[1:], os.Stdout); err != nil {
		fmt.Fprintln(os.Stderr, "rain:", err)
		os.Exit(1)
	}
}

func run(args []string, out io.Writer) error {
	f := flag.NewFlagSet("rain", flag.ContinueOnError)
	file := f.String("record", "", "read this `file` (CSV: year,month,rain mm) instead of the record of Wichita")
	passes := f.Float64("passes", 3, "how `often` a year the land is to be grazed")
	picture := f.String("picture", "", "draw the years and their deciles into this PNG `file`")
	system := units.Metric
	f.Func("units", "print in these `units`: metric or US", func(text string) error { return system.UnmarshalText([]byte(text)) })
	if err := f.Parse(args); err != nil {
		return err
	}
	text := wichita.Record()
	if *file != "" {
		data, err := os.ReadFile(*file)
		if err != nil {
			return err
		}
		text = string(data)
	}
	record, err := rainfall.ReadMonths(text)
	if err != nil {
		return err
	}
	if len(record) == 0 {
		return fmt.Errorf("the record holds no month")
	}
	years, err := rainfall.KeyTotals(record, []int{1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
	if err != nil {
		return err
	}
	normals, err := rainfall.MonthNormals(record)
	if err != nil {
		return err
	}
	t := teller{out, system}
	last := record[len(record)-1]
	for _, tell := range []func() error{
		func() error { return t.passes(years, *passes) },
		func() error { return t.dryRun(record, normals) },
		func() error { return t.thisYear(last.Year, record) },
		func() error { return t.plan(last.Year+1, record) },
	} {
		if err := tell(); err != nil {
			return err
		}
	}
	if *picture == "" {
		return nil
	}
	return draw(*picture, years, system)
}

// teller prints the answers.
type teller struct {
	out    io.Writer
	system units.System
}

func (t *teller) say(format string, args ...any) { fmt.Fprintf(t.out, format+"\n", args...) }

// passes tells the odds of enough rain for so many passes.
func (t *teller) passes(years []rainfall.YearRain, passes float64) error {
	wanted, note := rainfall.RainForPasses(passes)
	if units.Impossible(note) {
		return note
	}
	depths := rainfall.Depths(years)
	chance, err := rainfall.ChanceAtLeast(depths, wanted, rainfall.PositionWeibull)
	if err != nil {
		return err
	}
	variation, err := rainfall.Variation(depths)
	if err != nil {
		return err
	}
	t.say("%s passes want %s of rain by the rule; of %d years %s bring as much.", units.Number(passes), wanted.In(t.system), len(years), chance.In(t.system))
	if note != nil {
		t.say("  (%v)", note)
	}
	t.say("The rain of the years varies by %s.", variation.In(t.system))
	return nil
}

// dryRun tells the longest run of months under three quarters of normal, and the
// driest twelve months by the index.
func (t *teller) dryRun(record []rainfall.MonthlyRain, normals [12]units.RainDepth) error {
	runs, err := rainfall.DryMonthRuns(record, 75*units.Percent, normals)
	if err != nil {
		return err
	}
	var longest rainfall.DryMonths
	for _, r := range runs {
		if r.Months > longest.Months {
			longest = r
		}
	}
	t.say("\nThe longest run of months under 75 %% of normal: %d from %s %d, with %s where %s is normal.",
		longest.Months, time.Month(longest.Month), longest.Year, longest.Rain.In(t.system), longest.Normal.In(t.system))
	indices, err := rainfall.RainIndex(record, 12, rainfall.FitThom)
	if err != nil || len(indices) == 0 {
		return err
	}
	driest := indices[0]
	for _, i := range indices {
		if i.Index < driest.Index {
			driest = i
		}
	}
	word, err := rainfall.RainClass(rainfall.SchemeIndex, driest.Index)
	t.say("The driest twelve months ended in %s %d: %s, index %.2f, %s.", time.Month(driest.Month), driest.Year, driest.Rain.In(t.system), driest.Index, word)
	return err
}

// thisYear holds the newest year against the printed trigger dates.
func (t *teller) thisYear(year int, record []rainfall.MonthlyRain) error {
	readings, err := rainfall.JudgeTriggers(year, record)
	if err != nil {
		return err
	}
	t.say("\n%d at each trigger date, whole months:", year)
	for _, r := range readings {
		verdict := "no need to act"
		if r.Met {
			verdict = "act"
		}
		t.say("  %s  %s of %s, %s: %s (%s)", r.Date, r.Rain.In(t.system), r.Normal.In(t.system), r.Share.In(t.system), verdict, r.Trigger)
	}
	return nil
}

// plan prints the drought plan of a year.
func (t *teller) plan(year int, record []rainfall.MonthlyRain) error {
	steps, err := rainfall.DroughtPlan(year, keyMonths, record)
	if err != nil {
		return err
	}
	t.say("\nDrought plan for %d. Triggers are of the northern plains of the US; your adviser decides with you.", year)
	for _, s := range steps {
		t.say("  %s  under %s since %s: %s [%s]", s.Date, s.Figure.In(t.system), s.Since, s.Act, s.Source)
	}
	t.say("First to go: %s.", rainfall.SellingOrder()[0].Stock)
	return nil
}
