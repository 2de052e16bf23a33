package main

import (
	"fmt"
	"io"
	"slices"
	"strings"
	"time"

	"example.org/soum/grazing"
	"example.org/soum/grazing/farm"
	"example.org/soum/grazing/study"
	"example.org/soum/herd"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// teller prints the answers.
type teller struct {
	out    io.Writer
	farm   *farm.Farm
	plan   *farm.Plan
	study  *study.Study
	result *study.Result
}

func (t *teller) say(format string, args ...any) { fmt.Fprintf(t.out, format+"\n", args...) }

func (t *teller) mass(m units.DryMatter) string { return m.In(t.farm.Units) }

// odds tells how often the hay does not reach.
func (t *teller) odds(p *study.Point) {
	years := t.result.Years
	how := "the rain of one of them, each as likely as any other"
	if t.study.Draw == study.DrawGamma {
		how = "each month's rain drawn by what that month had in them"
	}
	t.say("%s from %s to %s. On record are %d whole years, %d to %d; every season has %s.",
		plural(t.result.Seasons, "season"), t.farm.Season.From, t.farm.Season.To, len(years), years[0], years[len(years)-1], how)
	t.say("\nThe hay in store does not reach in %s of the seasons.", p.Odds.In(t.farm.Units))
	t.say("Feed wanted in place of grass, dry matter: %s in the middle one; one season in twenty wants more than %s.", t.mass(p.Fed.Middle), t.mass(p.Fed.High))
	if len(p.First) > 0 {
		t.say("Where it runs out, it does so on %s in the middle one, and by %s in one of twenty.%s", p.First[middle], p.First[early], t.more(p))
	}
}

// The places of two figures among the first days without feed.
const (
	early  = 0 // of 5 % of the seasons that run short
	middle = 2 // of half of them
)

// plural counts something whose plural ends in an s.
func plural(n int, one string) string {
	if n == 1 {
		return "1 " + one
	}
	return units.Number(float64(n)) + " " + one + "s"
}

// more tells how short a bad season is.
func (t *teller) more(p *study.Point) string {
	if p.Short.High == 0 {
		return ""
	}
	return " One season in twenty lacks more than " + t.mass(p.Short.High) + "."
}

// decide tells the last day on which something can still be done.
func (t *teller) decide(p *study.Point, lead units.Days) error {
	if len(p.First) == 0 {
		return nil
	}
	whose := "your -lead"
	if lead == usualLead {
		whose = "a figure of ours, -lead takes yours"
	}
	t.say("To sell stock, to buy feed or to find grass elsewhere takes %s (%s). So, of the seasons that run short:", lead.In(t.farm.Units), whose)
	for _, of := range []struct {
		seasons string
		at      int
	}{{"one in twenty wants you to decide", early}, {"half of them want you to decide", middle}} {
		short, err := decideBefore(t.farm.Today, p.First[of.at], lead)
		if err != nil {
			return err
		}
		told := ""
		if short.Action == grazing.FeedDecide {
			told = ": today, or sooner"
		}
		t.say("  %s by %s%s.", of.seasons, short.Decide, told)
	}
	return nil
}

// decideBefore asks the library for the last day to decide. Feed that lasts so many
// days is so many days' worth of what is eaten, whatever that is; nothing grows
// beside it, since the study has counted that. The library looks a year ahead: of a
// first day further off the year before it is asked.
func decideBefore(today, first units.Date, lead units.Days) (grazing.Shortage, error) {
	today = max(today, first-365)
	return grazing.ShortOfFeed(grazing.GrassToday{
		Today: today, End: first + 1, Lead: lead,
		Mass: units.Yield(first.Sub(today)) * units.KilogramPerHectare, Eaten: units.KilogramPerHectareDay,
	})
}

// months tells in which months feed is missing.
func (t *teller) months(p *study.Point) {
	t.say("\n%-10s %-22s %s", "month", "feed is missing in", "hay left at its end: one season in twenty, the middle one")
	for _, m := range p.Months {
		t.say("%-10s %-22s %s, %s", time.Month(m.Month), m.Odds.In(t.farm.Units)+" of seasons", t.mass(m.Left.Low), t.mass(m.Left.Middle))
	}
	t.say("(hay is dry matter with the waste taken off; below 0: what was missing by then)")
}

// heads tells the odds for fewer and more head.
func (t *teller) heads() {
	sweep := &t.study.Inputs[0]
	t.say("")
	for i := range t.result.Points {
		p := &t.result.Points[i]
		t.say("With %s: short in %s of the seasons.%s", head(p.Values[0], sweep.Group), p.Odds.In(t.farm.Units), t.more(p))
	}
}

// head counts animals of a group, whose name is taken for a plural.
func head(n float64, group string) string {
	if n == 1 {
		return "1 head of " + group
	}
	return units.Number(n) + " " + group
}

// dates tells when to look at the gauge, and how it stands on the days that are past.
func (t *teller) dates() {
	if len(t.plan.Drought) == 0 {
		t.say("\nNo dates to look at the gauge: no land of this farm has key months, or none of them has normal rain.")
		return
	}
	normals := "the means of the record"
	if len(t.farm.Rain.Normal) > 0 {
		normals = "the farm's own"
	}
	t.say("\nWhen to look at the gauge (printed dates are of the plains of North America; where to begin, not the last word; normals: %s):", normals)
	for i := range t.plan.Drought {
		d := &t.plan.Drought[i]
		t.say("  %s  under %s since %s, %s of normal (%s): %s [%s]%s",
			d.Date, d.Figure.In(t.farm.Units), d.Since, d.Below.In(t.farm.Units), t.whose(d), d.Act, d.Source, t.soFar(d))
	}
}

// whose tells whose date it is.
func (t *teller) whose(d *farm.DroughtDate) string {
	switch {
	case d.Place != "":
		return "printed for " + d.Place
	case len(d.Land) == len(t.farm.Land):
		return "after a key month of all land"
	}
	return "after a key month of land " + strings.Join(d.Land, ", ")
}

// soFar tells what the farm's gauge says to a date, up to today: nobody knows what
// will have fallen by a later one.
func (t *teller) soFar(d *farm.DroughtDate) string {
	fell := d.Rain.In(t.farm.Units)
	switch {
	case d.Date > t.farm.Today:
		return ""
	case d.SoFar == farm.SoFarShort:
		return ". Less has fallen, " + fell + " in whole months: act"
	case d.SoFar == farm.SoFarEnough:
		return ". Enough has fallen, " + fell
	case !t.recorded(d):
		return ". Read your gauge: the farm's rain.months has none of these months"
	}
	return fmt.Sprintf(". So far %s in the whole months on record; with %s more by the gauge it is enough", fell, (d.Figure - d.Rain).In(t.farm.Units))
}

// recorded tells whether the farm's gauge has any month from which a date counts.
func (t *teller) recorded(d *farm.DroughtDate) bool {
	for month := d.Since; month < d.Date; month = month.Add(month.DaysInMonth()) {
		if _, ok := t.farm.Rain.Months[month.String()[:len("2012-04")]]; ok {
			return true
		}
	}
	return false
}

// selling tells who goes first: print has orders for cattle alone.
func (t *teller) selling() {
	if t.kind(t.study.Inputs[0].Group) != herd.Cattle {
		t.say("Who goes first: the printed orders are of cattle; of other stock an adviser knows.")
		return
	}
	first := rainfall.SellingOrder()[0]
	t.say("First to go: %s [%s].", first.Stock, first.Source)
}

// kind gives the kind of a group; a farm that was planned has no unknown class.
func (t *teller) kind(group string) herd.Kind {
	at := slices.IndexFunc(t.farm.Groups, func(g farm.Group) bool { return g.ID == group })
	class := t.farm.Groups[at].Class
	if class.Row != nil {
		return class.Row.Kind
	}
	row, _ := herd.ClassByName(class.Name)
	return row.Kind
}
