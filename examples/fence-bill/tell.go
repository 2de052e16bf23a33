package main

import (
	"fmt"
	"strings"

	"github.com/shopspring/decimal"

	"example.org/soum/grazing"
	"example.org/soum/units"
)

// teller writes the answer.
type teller struct {
	strings.Builder
	q      *question
	bill   *grazing.FenceBill
	system units.System
}

func (t *teller) say(format string, args ...any) { fmt.Fprintf(t, format+"\n", args...) }

// fence says what stands round the land, and what print has for such stock.
func (t *teller) fence() {
	job := &t.q.Job
	t.say("The fence: %d lanes of %s by %s, %s of fence that stays with %s.",
		job.Lanes, job.Length.In(t.system), job.Width.In(t.system), t.bill.Fence.In(t.system), wires(units.Single(float64(job.Wires))))
	var has []string
	for _, row := range grazing.WireRows() {
		switch {
		case row.Line != grazing.LineBoundary || row.Stock == barbed:
			continue
		case row.Stock != t.q.As:
			has = append(has, row.Stock)
			continue
		}
		t.say("For %s print has %s round the land, %s [%s].", t.q.As, wires(row.Wires), row.When, row.Source)
		if float64(job.Wires) < row.Wires.Low {
			t.say("Yours has fewer: it may not hold them.")
		}
		return
	}
	t.say("For %s no wires are printed here, as they are for %s: ask an adviser whether yours hold them.", t.q.As, strings.Join(has, ", "))
}

// wires tells a span of wires: "3 wires", "3 to 4 wires".
func wires(span units.Span[float64]) string {
	text := units.Number(span.Low)
	if span.High > span.Low {
		text += " to " + units.Number(span.High)
	}
	if text == "1" {
		return "1 wire"
	}
	return text + " wires"
}

// moved says what is moved across the lanes, and whether it suits.
func (t *teller) moved() error {
	q := t.q
	t.say("Across the lanes: %s, moved: %s in all for %d strips in use and %d spare.", q.Job.Moved, t.bill.Cross.In(t.system), q.Job.Strips, q.Job.Spare)
	suits, err := grazing.NettingOrWire(q.Stock, q.Land)
	if err != nil {
		return err
	}
	switch {
	case q.Stock == grazing.FencedHorned && q.Job.Moved == grazing.MovedNetting:
		t.say("NOT netting for anybody horned or for young kids: they die in it. Take several wires [DEFRA-SHEEP, DEFRA-GOAT].")
	case suits == grazing.MovedEither:
		t.say("On %s netting or several wires are both done: count both (common practice).", q.Land.In(t.system))
	case suits != q.Job.Moved:
		t.say("On %s most people take %s for such stock (common practice).", q.Land.In(t.system), suits)
	}
	return nil
}

// power says what the energizer and its earth should be, and the volts.
func (t *teller) power() error {
	press, err := grazing.GroundRod(t.bill.Output, grazing.RodTradePress)
	if err != nil {
		return err
	}
	utility, err := grazing.GroundRod(t.bill.Output, grazing.RodUtility)
	if err != nil {
		return err
	}
	t.say("Energizer: at least %s, one joule a mile of fence, however many wires [BEEF-FENCE-MISTAKES].", t.bill.Output.In(t.system))
	t.say("Ground rods: %s by the trade press [BEEF-FENCE-MISTAKES], %s by a power company [CLOVERLAND-FENCE], whose rule is the safer; yours follows: %s.", press.In(t.system), utility.In(t.system), t.q.Job.RodRule)
	told := false
	for _, row := range grazing.VoltageRows() {
		if row.Stock != t.q.As {
			continue
		}
		told = true
		volts := row.Voltage.Low.In(t.system)
		if row.Voltage.High > row.Voltage.Low {
			volts += " to " + row.Voltage.High.In(t.system)
		}
		switch row.Aim {
		case grazing.VoltageLeast:
			t.say("Voltage for %s: at least %s at the far end [%s].", t.q.As, volts, row.Source)
		case grazing.VoltageWorking:
			t.say("Better hold %s [%s].", volts, row.Source)
		}
	}
	if !told {
		t.say("No voltage is printed here for %s: look up each animal behind the fence.", t.q.As)
	}
	return nil
}

// money prints the bill.
func (t *teller) money() {
	t.say("\nThe bill, at the prices in the file:\n\n%-12s %8s %14s %14s", "", "pieces", "cost", "a year")
	for _, line := range t.bill.Lines {
		t.say("%-12s %8.0f %14s %14s", line.Item, line.Pieces, line.Cost.Round(2), line.Yearly.Total.Round(2))
	}
	t.say("%-12s %8s %14s %14s\n", "together", "", t.bill.Cost.Round(2), t.bill.Year.Round(2))
	t.say("A year is the price over the years it lasts, %s of interest on half of it, and upkeep [IOWA-FENCE-COSTS].", t.q.Job.Interest.In(t.system))
	t.say("Gates, braces, insulators and your own work are not in it.")
}

// worth tells, where the file has the figures, what the fence costs for what is
// grazed behind it, and when it has paid for itself.
func (t *teller) worth() error {
	if t.q.Grazed != nil {
		each, err := grazing.CostPerUse(t.bill.Year, *t.q.Grazed)
		if err != nil {
			return fmt.Errorf("grazed: %w", err)
		}
		t.say("Over %s grazed behind it in a year that is %s for each animal-unit month.", units.Number(float64(*t.q.Grazed/units.AnimalUnitMonth))+" AUM", each)
	}
	if t.q.Saves == nil {
		return nil
	}
	upkeep, err := t.upkeep()
	if err != nil {
		return err
	}
	gain, err := t.q.Saves.Add(upkeep.Times(decimal.NewFromInt(-1)))
	if err != nil {
		return fmt.Errorf("saves: %w", err)
	}
	if !gain.Amount.IsPositive() {
		return fmt.Errorf("saves: %s is no more than the upkeep of a year, %s: such a fence never pays; a sum above that, or no such key", t.q.Saves, upkeep.Round(2))
	}
	years, err := grazing.PaybackYears(t.bill.Cost, gain)
	if err != nil {
		return fmt.Errorf("saves: %w", err)
	}
	t.say("It saves %s a year, less %s of upkeep: paid for after %s years. A trade paper's graziers look for 2 to 3 on productive land, 3 to 5 on range [STOCKMAN-PAYBACK].",
		t.q.Saves.Round(2), upkeep.Round(2), units.Number(years))
	return nil
}

// upkeep is what the whole fence takes of it in a year.
func (t *teller) upkeep() (sum units.Money, err error) {
	for _, line := range t.bill.Lines {
		if sum, err = sum.Add(line.Yearly.Maintenance); err != nil {
			return sum, err
		}
	}
	return sum, nil
}

const caution = `
Electric fence can hurt people and animals. One energizer for one fence, made to
the safety standard; never barbed wire; 2.5 m from the fence of another energizer;
its earth 10 m from any other; signs where people pass; off before you work on it
(IEC-FENCE, IEC 60335-2-76 as makers reprint it). Horned stock and young kids never
behind netting. The local rules and an adviser decide.
`
