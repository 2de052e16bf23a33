// Dry-year asks how a farm fares if its year's rain falls like that of any year on
// record: how often the hay does not reach, from when on, how that changes with the
// head of stock, and on which dates to look at the gauge and decide. A flag draws
// the fan of outcomes.
//
//	go run ./examples/dry-year
//	go run ./examples/dry-year -farm farm.json -record gauge.csv -group ewes -picture fan.png
//
// The odds are planning figures of rain alone. What stands beside a date is where to
// begin; an adviser who knows the land, and a vet for stock in poor condition, decide
// with you.
package main

import (
	"context"
	_ "embed"
	"flag"
	"fmt"
	"io"
	"math"
	"os"
	"os/signal"
	"time"

	"example.org/soum/examples/internal/wichita"
	"example.org/soum/grazing"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

//go:embed data/farm.json
var ownFarm []byte

// keyMonths are those in which the grass of mixed pasture is made.
var keyMonths = []int{4, 5, 6}

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	if err := run(ctx, os.Args[1:], os.Stdout); err != nil {
		fmt.Fprintln(os.Stderr, "dry-year:", err)
		os.Exit(1)
	}
}

// question is what the flags ask.
type question struct {
	farm, record, group, picture string
	seasons, seed                int
	draw                         grazing.StudyDraw
}

func ask(args []string, out io.Writer) (q question, err error) {
	q.draw = grazing.DrawYears
	f := flag.NewFlagSet("dry-year", flag.ContinueOnError)
	f.SetOutput(out)
	f.StringVar(&q.farm, "farm", "", "read this farm `file` instead of the farm within")
	f.StringVar(&q.record, "record", "", "read this `file` of monthly rain (CSV: year,month,rain mm) instead of the record of Wichita")
	f.StringVar(&q.group, "group", "cows", "change the head of this `group`")
	f.StringVar(&q.picture, "picture", "", "draw the fan of outcomes into this PNG `file`")
	f.IntVar(&q.seasons, "seasons", 2000, "how many seasons to run")
	f.IntVar(&q.seed, "seed", 1, "another number draws other seasons")
	f.Func("draw", "draw whole `years` of the record, or each month by itself (gamma)", func(text string) error { return q.draw.UnmarshalText([]byte(text)) })
	return q, f.Parse(args)
}

// read gives the bytes of a file, or those within where none is named.
func read(path string, within []byte) ([]byte, error) {
	if path == "" {
		return within, nil
	}
	return os.ReadFile(path)
}

func run(ctx context.Context, args []string, out io.Writer) error {
	q, err := ask(args, out)
	if err != nil {
		return err
	}
	data, err := read(q.farm, ownFarm)
	if err != nil {
		return err
	}
	farm, err := grazing.ReadFarm(data)
	if err != nil {
		return err
	}
	if data, err = read(q.record, []byte(wichita.Record())); err != nil {
		return err
	}
	record, err := rainfall.ReadMonths(string(data))
	if err != nil {
		return err
	}
	heads, asItStands, err := headsRound(farm, q.group)
	if err != nil {
		return err
	}
	study := grazing.Studied{
		Version: 1, Farm: *farm, Record: record, Draw: q.draw, Past: grazing.PastKnown,
		Seasons: q.seasons, Seed: q.seed, Design: grazing.DesignGrid, Inputs: []grazing.StudySweep{heads},
	}
	if q.draw == grazing.DrawGamma {
		study.Fit = rainfall.FitThom
	}
	result, err := study.Run(ctx, 0, nil)
	if err != nil {
		return err
	}
	t := teller{out: out, farm: farm, study: &study, result: &result}
	asItIs := &result.Points[asItStands]
	t.odds(asItIs)
	t.months(asItIs)
	t.heads()
	if err := t.dates(record); err != nil {
		return err
	}
	if q.picture == "" {
		return nil
	}
	return draw(q.picture, farm, asItIs)
}

// The head that are tried beside the farm's own: so many tenths fewer and more.
const (
	fewer = 3
	more  = 2
)

// headsRound gives whole heads below and above a group's own, a tenth at a time, and
// which of them is its own.
func headsRound(farm *grazing.Farm, group string) (sweep grazing.StudySweep, asItStands int, err error) {
	for _, g := range farm.Groups {
		if g.ID == group {
			if g.Head < 1 {
				return sweep, 0, fmt.Errorf("group %q begins without animals: name one with -group that has some", group)
			}
			step := max(1, math.Round(g.Head/10))
			asItStands = min(fewer, int((g.Head-1)/step)) // a herd of one has no fewer
			return grazing.StudySweep{
				Input: grazing.InputHead, Group: group, Steps: asItStands + more + 1,
				Span: &units.Span[float64]{Low: g.Head - float64(asItStands)*step, High: g.Head + more*step},
			}, asItStands, nil
		}
	}
	return sweep, 0, fmt.Errorf("the farm has no group %q: name one with -group", group)
}

// teller prints the answers.
type teller struct {
	out    io.Writer
	farm   *grazing.Farm
	study  *grazing.Studied
	result *grazing.StudyResult
}

func (t *teller) say(format string, args ...any) { fmt.Fprintf(t.out, format+"\n", args...) }

func (t *teller) mass(m units.DryMatter) string { return m.In(t.farm.Units) }

// odds tells how often the hay does not reach.
func (t *teller) odds(p *grazing.StudyPoint) {
	years := t.result.Years
	how := "the rain of one of them, each as likely as any other"
	if t.study.Draw == grazing.DrawGamma {
		how = "each month's rain drawn by what that month had in them"
	}
	t.say("%d seasons from %s to %s. On record are %d whole years, %d to %d; every season has %s.",
		t.result.Seasons, t.farm.Season.From, t.farm.Season.To, len(years), years[0], years[len(years)-1], how)
	t.say("\nThe hay in store does not reach in %s of the seasons.", p.Odds.In(t.farm.Units))
	t.say("Feed wanted in place of grass, dry matter: %s in the middle one; one season in twenty wants more than %s.", t.mass(p.Fed.Middle), t.mass(p.Fed.High))
	if len(p.First) > 0 {
		t.say("Where it runs out, it does so on %s in the middle one, and by %s in one of twenty.%s", p.First[2], p.First[0], t.more(p))
	}
}

// more tells how short a bad season is.
func (t *teller) more(p *grazing.StudyPoint) string {
	if p.Short.High == 0 {
		return ""
	}
	return " One season in twenty lacks more than " + t.mass(p.Short.High) + "."
}

// months tells in which months feed is missing.
func (t *teller) months(p *grazing.StudyPoint) {
	t.say("\n%-10s %-22s %s", "month", "feed is missing in", "hay left at its end: one season in twenty, the middle one")
	for _, m := range p.Months {
		t.say("%-10s %-22s %s, %s", time.Month(m.Month), m.Odds.In(t.farm.Units)+" of seasons", t.mass(m.Left.Low), t.mass(m.Left.Middle))
	}
	t.say("(below 0: what was missing by then)")
}

// heads tells the odds for fewer and more head.
func (t *teller) heads() {
	sweep := &t.study.Inputs[0]
	t.say("")
	for i := range t.result.Points {
		p := &t.result.Points[i]
		t.say("With %s %s: short in %s of the seasons.%s", units.Number(p.Values[0]), sweep.Group, p.Odds.In(t.farm.Units), t.more(p))
	}
}

// dates tells when to look at the gauge, and how this year stands so far.
func (t *teller) dates(record []rainfall.MonthlyRain) error {
	year := t.farm.Today.Year()
	all := record
	for key, depth := range t.farm.Rain.Months { // the farm's own gauge
		var y, m int
		if _, err := fmt.Sscanf(key, "%d-%d", &y, &m); err != nil {
			return err
		}
		if y > record[len(record)-1].Year {
			all = append(all[:len(all):len(all)], rainfall.MonthlyRain{Year: y, Month: time.Month(m), Rain: depth})
		}
	}
	readings, err := rainfall.JudgeTriggers(year, all)
	if err != nil {
		return err
	}
	t.say("\n%d so far:", year)
	for _, r := range readings {
		verdict := "no need to act"
		if r.Met {
			verdict = "act"
		}
		t.say("  %s  %s of %s, %s of normal: %s", r.Date, r.Rain.In(t.farm.Units), r.Normal.In(t.farm.Units), r.Share.In(t.farm.Units), verdict)
	}
	steps, err := rainfall.DroughtPlan(year, keyMonths, record)
	if err != nil {
		return err
	}
	t.say("When to look again (dates of the plains of North America; where to begin, not the last word):")
	for _, s := range steps {
		if s.Date < t.farm.Today {
			continue
		}
		t.say("  %s  if under %s since %s: %s [%s]", s.Date, s.Figure.In(t.farm.Units), s.Since, s.Act, s.Source)
	}
	t.say("First to go: %s.", rainfall.SellingOrder()[0].Stock)
	return nil
}
