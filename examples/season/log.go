package main

import (
	"cmp"
	"flag"
	"fmt"
	"io"
	"slices"
	"strings"

	"example.org/soum/grazing/farm"
	"example.org/soum/herd"
	"example.org/soum/units"
)

const standardInput = "-"

func (o *options) logFlags(f *flag.FlagSet) {
	f.StringVar(&o.log, "log", "", "plan from -today on, by the moves since the farm's own day in this CSV `file`, such as -moves writes; - is standard input")
	f.StringVar(&o.heights, "heights", "", "with -log or -today: heights read that day, a CSV `file` with the columns paddock, height (in), from (ft), to (ft)")
	f.StringVar(&o.save, "save", "", "with -log or -today: write the farm as it stands that day to this `file`")
}

// carriesOn tells whether a plan is to begin on a later day than its farm.
func (o *options) carriesOn() bool { return o.log+o.heights+o.save+o.answers.today != "" }

// carryOn gives the farm as it stands on the day asked for.
func (o *options) carryOn(holding *farm.Farm, in io.Reader) (*farm.Farm, error) {
	if !o.carriesOn() {
		return holding, nil
	}
	today := clockToday()
	if text := o.answers.today; text != "" {
		if err := today.UnmarshalText([]byte(text)); err != nil {
			return nil, wrong("-today: %w", err)
		}
	}
	lists := [2]string{}
	for i, list := range []struct{ name, path string }{{"log", o.log}, {"heights", o.heights}} {
		if list.path == "" {
			continue
		}
		data, err := readAll(list.name, list.path, in)
		if err != nil {
			return nil, err
		}
		lists[i] = string(data)
	}
	o.since, o.moved = holding.Today, lists[0]
	holding, err := holding.CarryOn(today, lists[0], lists[1])
	if err != nil {
		return nil, inputError{err}
	}
	return holding, nil
}

// checkInputs refuses to read two things from standard input.
func (o *options) checkInputs() error {
	first := ""
	for _, input := range []struct{ name, path string }{{"farm", o.farm}, {"log", o.log}, {"heights", o.heights}} {
		switch {
		case input.path != standardInput:
		case first != "":
			return wrong("-%s and -%s are both to come from standard input: give one of them a file", first, input.name)
		default:
			first = input.name
		}
	}
	return nil
}

// farmJSON writes the farm.
func farmJSON(holding *farm.Farm, _ *farm.Plan) ([]byte, error) { return holding.JSON(holding.Units) }

// ground prints what stands on the land where the farm was carried on by a log.
func (r *report) ground() {
	if r.since.IsZero() {
		return
	}
	r.heading("The land on %s", long(r.farm.Today))
	land, grazed := column{head: "land", words: true}, column{head: "last grazed"}
	from, to := column{head: "from", unit: unitOf(units.Length(0), r.farm.Units)}, column{head: "to", unit: unitOf(units.Length(0), r.farm.Units)}
	height := column{head: "height", unit: unitOf(units.Height(0), r.farm.Units)}
	row := func(id, first, last string, h units.Height, day *units.Date) {
		land.cells, from.cells, to.cells = append(land.cells, id), append(from.cells, first), append(to.cells, last)
		height.cells, grazed.cells = append(height.cells, number(h, r.farm.Units)), append(grazed.cells, whenGrazed(day))
	}
	for i := range r.farm.Land {
		l := &r.farm.Land[i]
		if len(l.Stretches) == 0 {
			row(l.ID, "", "", l.Height, l.Grazed)
		}
		start := units.Length(0)
		for _, s := range l.Stretches {
			row(l.ID, number(start, r.farm.Units), number(s.To, r.farm.Units), s.Height, s.Grazed)
			start = s.To
		}
	}
	r.WriteString(tabulate([]column{land, from, to, height, grazed}))
	r.paragraph("Reckoned from the heights of %s by the moves since, but for what was read that day. Walk the ground: a reading is better than a sum, and -heights takes it.", long(r.since))
	for i := range r.farm.Land {
		if _, note, found := strings.Cut(r.farm.Land[i].Note, farm.LogNote); found {
			r.line("%s, as carried on to %s", r.farm.Land[i].ID, note)
		}
	}
	for i := range r.farm.Rotations {
		if f := r.farm.Rotations[i].Front; f != nil {
			r.line("The strips go on at %s of %s.", r.in(f.At), f.Land)
		}
	}
}

// records prints what the log tells of the land that it names: what was taken, the
// rest given, and what is ready next.
func (r *report) records() {
	logged, err := recordsOf(r.farm, r.moved)
	if len(logged) == 0 && err == nil {
		return
	}
	r.heading("What the log tells")
	if err != nil {
		r.paragraph("Of the land nothing is added up: %v.", err)
		return
	}
	s := r.farm.Units
	day, of := units.AnimalUnitDayPerHectare, "AU-days/ha"
	if s == units.US {
		day, of = units.AnimalUnitDayPerAcre, "AU-days/ac"
	}
	columns := []column{
		{head: "land", words: true}, {head: "taken", unit: of}, {head: "eaten", unit: unitOf(units.Yield(0), s)},
		{head: "rest given", unit: "days"}, {head: "left from"}, {head: "ready from"}, {head: "ready all"},
	}
	for i := range logged {
		l := &logged[i]
		left, ready, all := rested(l, r.farm.Today)
		for j, cell := range []string{l.Paddock, units.Number(float64(l.Use / day)), number(l.Harvested, s), restGiven(l.Shortest), left, ready, all} {
			columns[j].cells = append(columns[j].cells, cell)
		}
	}
	r.WriteString(tabulate(columns))
	r.paragraph("Taken is animal-unit days over the land grazed, every place once; eaten is what they should have eaten of it, 26 lb of dry matter each. Rest given is the shortest between two passes, from the last day of the last group to the first day of the next. Ready is by the rest that the farm's file wants, where the land was grazed first and where it was grazed last; followers still to come put it off, and the plan looks at the grass too.")
	r.paragraph("By rest alone %s is next, on %s.%s", logged[0].Paddock, long(logged[0].Ready), unlogged(r.farm, logged))
}

// rested gives when a land was left, and when the first and all of it will have rested;
// where they are on it nobody knows yet.
func rested(l *farm.PaddockRecord, today units.Date) (left, ready, all string) {
	left, ready, all = dayMonth(l.LeftFirst), dayMonth(l.Ready), dayMonth(l.ReadyAll)
	if l.Occupied {
		all = "–"
		if l.LeftFirst == today {
			left, ready = "on it", "–"
		}
	}
	return left, ready, all
}

func restGiven(rest units.Days) string {
	if rest == 0 {
		return "–"
	}
	return units.Number(float64(rest))
}

// unlogged names the land in rotation that nobody was on.
func unlogged(holding *farm.Farm, logged []farm.PaddockRecord) string {
	var ids []string
	for i := range holding.Rotations {
		for _, id := range holding.Rotations[i].Land {
			if !slices.ContainsFunc(logged, func(l farm.PaddockRecord) bool { return l.Paddock == id }) {
				ids = append(ids, id)
			}
		}
	}
	if ids == nil {
		return ""
	}
	return " Not in the log: " + strings.Join(ids, ", ") + "."
}

// recordsOf reads a log back, each land with the rest that its rotation wants.
func recordsOf(holding *farm.Farm, log string) ([]farm.PaddockRecord, error) {
	if log == "" {
		return nil, nil
	}
	demand, err := herd.UnitDemand(herd.UnitTwentySixPounds)
	if err != nil {
		return nil, err
	}
	var all []farm.PaddockRecord
	for i := range holding.Rotations {
		rotation := &holding.Rotations[i]
		const nothing = 1 // of the yield that stood nothing is printed
		records, err := farm.PaddockRecords(log, farm.RecordRules{Today: holding.Today, Demand: demand, Use: nothing, Rest: rotation.ShortestRest})
		if err != nil {
			return nil, err
		}
		for _, record := range records {
			if slices.Contains(rotation.Land, record.Paddock) {
				all = append(all, record)
			}
		}
	}
	slices.SortStableFunc(all, func(a, b farm.PaddockRecord) int { return cmp.Compare(a.Ready, b.Ready) })
	return all, nil
}

func whenGrazed(day *units.Date) string {
	if day == nil {
		return ""
	}
	return dayMonth(*day)
}

// made tells of which day the heights of a plan are.
func (r *report) made() string {
	if r.since.IsZero() {
		return fmt.Sprintf("Made of the heights of %s.", long(r.plan.Today))
	}
	return fmt.Sprintf("Made of the heights of %s, carried on to %s.", long(r.since), long(r.plan.Today))
}
