// Dry-year asks how a farm fares if its year's rain falls like that of any year on
// record: how often the hay does not reach, from when on, by which day that is to be
// decided, how it changes with the head of stock, and on which dates to look at the
// gauge. A flag draws the fan of outcomes.
//
//	go run ./examples/dry-year
//	go run ./examples/dry-year -farm farm.json -record gauge.csv -group ewes -picture fan.png
//	go run ./examples/dry-year -lead "8 weeks"
//
// The odds are planning figures of rain alone. What stands beside a date is where to
// begin; an adviser who knows the land, and a vet for stock in poor condition, decide
// with you.
package main

import (
	"context"
	_ "embed"
	"errors"
	"flag"
	"fmt"
	"io"
	"math"
	"os"
	"os/signal"
	"strings"

	"example.org/soum/examples/internal/wichita"
	"example.org/soum/grazing/farm"
	"example.org/soum/grazing/study"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

//go:embed data/farm.json
var ownFarm []byte

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
	draw                         study.Draw
	lead                         units.Days
}

// usualLead is how long it takes to sell stock, to buy feed or to find grass
// elsewhere where the user does not say. No source has a figure: it is ours.
const usualLead = 30 * units.Day

func ask(args []string, out io.Writer) (q question, err error) {
	q.draw, q.lead = study.DrawYears, usualLead
	f := flag.NewFlagSet("dry-year", flag.ContinueOnError)
	f.SetOutput(io.Discard) // what is wrong is told once, as an error
	f.StringVar(&q.farm, "farm", "", "read this farm `file` instead of the farm within")
	f.StringVar(&q.record, "record", "", "read this `file` of monthly rain (CSV: year,month,rain mm) instead of the record of Wichita; the months of this year stand in the farm's rain.months")
	f.StringVar(&q.group, "group", "", "change the head of this `group` (the farm's first that has animals)")
	f.StringVar(&q.picture, "picture", "", "draw the fan of outcomes into this PNG `file`")
	f.IntVar(&q.seasons, "seasons", 2000, "how many seasons to run")
	f.IntVar(&q.seed, "seed", 1, "another number draws other seasons")
	f.Func("draw", "draw whole `years` of the record, or each month by itself (gamma)", func(text string) error { return q.draw.UnmarshalText([]byte(text)) })
	f.Func("lead", "how much `time` you need to sell stock, to buy feed or to find grass elsewhere (30 days; the figure is ours)", func(text string) error { return q.lead.UnmarshalText([]byte(text)) })
	switch err := f.Parse(args); {
	case errors.Is(err, flag.ErrHelp):
		fmt.Fprintln(out, "Tells how a farm fares in the dry years on record. The flags are:")
		f.SetOutput(out)
		f.PrintDefaults()
		return q, err
	case err != nil:
		return q, fmt.Errorf("%w (-help lists the flags)", err)
	case f.NArg() > 0:
		return q, fmt.Errorf("%q is no flag: -farm takes the farm's file, -record that of the rain (-help lists the flags)", f.Arg(0))
	}
	if _, err := decideBefore(0, 1, q.lead); err != nil { // on any two days, before long work is done
		return q, fmt.Errorf("-lead: %w", err)
	}
	return q, nil
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
	if errors.Is(err, flag.ErrHelp) {
		return nil
	}
	if err != nil {
		return err
	}
	data, err := read(q.farm, ownFarm)
	if err != nil {
		return err
	}
	holding, err := farm.Read(data)
	if err != nil {
		return err
	}
	if data, err = read(q.record, []byte(wichita.Record())); err != nil {
		return err
	}
	record, err := rainfall.ReadMonths(string(data))
	if err != nil {
		return fmt.Errorf("-record: %w", err)
	}
	heads, asItStands, err := headsRound(holding, q.group)
	if err != nil {
		return err
	}
	asked := study.Study{
		Version: 1, Farm: *holding, Record: record, Draw: q.draw, Past: study.PastKnown,
		Seasons: q.seasons, Seed: q.seed, Design: study.DesignGrid, Inputs: []study.Sweep{heads},
	}
	if q.draw == study.DrawGamma {
		asked.Fit = rainfall.FitThom
	}
	result, err := asked.RunContext(ctx, 0, nil)
	if err != nil {
		return err
	}
	plan, err := planned(holding, record)
	if err != nil {
		return err
	}
	t := teller{out: out, farm: holding, plan: plan, study: &asked, result: &result}
	asItIs := &result.Points[asItStands]
	t.odds(asItIs)
	if err := t.decide(asItIs, q.lead); err != nil {
		return err
	}
	t.months(asItIs)
	t.heads()
	t.dates()
	t.selling()
	if q.picture == "" {
		return nil
	}
	return draw(q.picture, holding, asItIs)
}

// planned plans the farm's own season. Its drought dates go by the farm's normals, or
// by the record's where it has none, as the study does.
func planned(holding *farm.Farm, record []rainfall.MonthlyRain) (*farm.Plan, error) {
	own := *holding
	if len(own.Rain.Normal) == 0 {
		normals, err := rainfall.MonthNormals(record)
		if err != nil {
			return nil, err
		}
		own.Rain.Normal = normals[:]
	}
	return own.Plan()
}

// The head that are tried beside the farm's own: so many tenths fewer and more.
const (
	fewer = 3
	more  = 2
)

// headsRound gives whole heads below and above a group's own, a tenth at a time, and
// which of them is its own. Without a name it is the first group with animals.
func headsRound(holding *farm.Farm, group string) (sweep study.Sweep, asItStands int, err error) {
	var ids []string
	for _, g := range holding.Groups {
		ids = append(ids, g.ID)
		switch {
		case group == "" && g.Head < 1, group != "" && g.ID != group:
			continue
		case g.Head < 1:
			return sweep, 0, fmt.Errorf("-group: %q begins without animals: name one that has some", group)
		}
		step := max(1, math.Round(g.Head/10))
		asItStands = min(fewer, int((g.Head-1)/step)) // a herd of one has no fewer
		return study.Sweep{
			Input: study.InputHead, Group: g.ID, Steps: asItStands + more + 1,
			Span: &units.Span[float64]{Low: g.Head - float64(asItStands)*step, High: g.Head + more*step},
		}, asItStands, nil
	}
	return sweep, 0, fmt.Errorf("-group: the farm has no group %q with animals; its groups are %s", group, strings.Join(ids, ", "))
}
