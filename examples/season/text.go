package main

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"time"

	"example.org/soum/grazing/farm"
	"example.org/soum/herd"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// report is the plan as text.
type report struct {
	strings.Builder
	farm  *farm.Farm
	plan  *farm.Plan
	room  []farm.Carried // of each group
	days  int            // of moves to list
	since units.Date     // the day of the heights, where the farm was carried on from it; else 0
	moved string         // the log that it was carried on by
}

// text writes the whole plan, cautions last.
func (o *options) text(holding *farm.Farm, plan *farm.Plan, room []farm.Carried) string {
	r := &report{farm: holding, plan: plan, room: room, days: o.days, since: o.since, moved: o.moved}
	for _, section := range []func(){
		r.title, r.carried, r.ground, r.records, r.balance, r.changes, r.moves, r.passes, r.soil, r.dry, r.hay, r.water, r.manure, r.fence, r.notes, r.cautions,
	} {
		section()
	}
	return r.String()
}

func (r *report) heading(format string, args ...any) {
	head := fmt.Sprintf(format, args...)
	fmt.Fprintf(r, "\n%s\n%s\n", head, strings.Repeat("-", len([]rune(head))))
}

func (r *report) paragraph(format string, args ...any) {
	r.WriteString(wrap(fmt.Sprintf(format, args...), "", ""))
}

// line is a paragraph whose later lines stand in.
func (r *report) line(format string, args ...any) {
	r.WriteString(wrap(fmt.Sprintf(format, args...), "", "  "))
}

// in prints a quantity in the reader's units.
func (r *report) in(q shown) string { return q.In(r.farm.Units) }

func (r *report) title() {
	head := fmt.Sprintf("Grazing plan, %s to %s", long(r.plan.From), long(r.plan.To))
	fmt.Fprintf(r, "%s\n%s\n", head, strings.Repeat("=", len([]rune(head))))
	r.paragraph("%s %s", r.made(), r.farm.Note)
	r.WriteByte('\n')
	r.paragraph("%s", r.plan.Verdict.Growth)
	r.WriteByte('\n')
	r.paragraph("%s", r.plan.Verdict.English)
	if r.hayNote() != "" {
		r.paragraph("The hay counted here is what the farm's file has in store; what that leaves out stands under Hay.")
	}
}

// carried prints how many head of each group there is room for.
func (r *report) carried() {
	if len(r.room) == 0 {
		return
	}
	r.heading("Room for each group, all else as it stands")
	group, now, low, middle, high, why := column{head: "group", words: true}, column{head: "now"}, column{head: "low"}, column{head: "middle"}, column{head: "high"}, column{head: "bound by", words: true}
	for _, c := range r.room {
		group.cells, now.cells = append(group.cells, c.Group), append(now.cells, units.Number(r.headOf(c.Group)))
		for i, column := range []*column{&low, &middle, &high} {
			head := strconv.Itoa([]int{c.Low, c.Middle, c.High}[i])
			if c.Limits[i] == farm.LimitNone {
				head = "≥ " + head
			}
			column.cells = append(column.cells, head)
		}
		why.cells = append(why.cells, c.Limits[1].String())
	}
	r.WriteString(tabulate([]column{group, now, low, middle, high, why}))
	r.paragraph("Head that the land carries with the hay there is, by thin grass and hungry stock (low) to thick grass and modest stock (high); what bounds the middle figure stands beside it. Room: print keeps no more on so much ground. ≥: no more were tried. More head of one group leave less room for the others.")
}

func (r *report) headOf(group string) float64 {
	return r.farm.Groups[slices.IndexFunc(r.farm.Groups, func(g farm.Group) bool { return g.ID == group })].Head
}

// hayNote is what the store leaves out where the farm was carried on by a log.
func (r *report) hayNote() string {
	_, note, _ := strings.Cut(r.farm.Feed.Note, farm.LogNote)
	return note
}

// balance prints the months and their sum.
func (r *report) balance() {
	r.heading("Balance by month, in %s of dry matter", unitOf(units.DryMatter(0), r.farm.Units))
	month := column{words: true}
	columns := []column{{head: "grown"}, {head: "wanted"}, {head: "eaten"}, {head: "trampled"}, {head: "cut"}, {head: "fed"}, {head: "standing"}}
	sum := make([]units.DryMatter, len(columns))
	for _, m := range r.plan.Months {
		month.cells = append(month.cells, monthName(m))
		for i, mass := range masses(m) {
			sum[i] += mass
			columns[i].cells = append(columns[i].cells, whole(mass, r.farm.Units))
		}
	}
	last := len(columns) - 1
	sum[last] = r.plan.Months[len(r.plan.Months)-1].Standing
	month.cells = append(month.cells, "in all")
	for i := range columns {
		columns[i].cells = append(columns[i].cells, whole(sum[i], r.farm.Units))
	}
	r.WriteString(tabulate(append([]column{month}, columns...)))
	r.paragraph("Wanted is what all animals together would take from pasture; fed is what they get in place of it, before waste; standing is all grass at the month's end, stubble included.")
}

func monthName(m farm.Month) string {
	date, _ := units.NewDate(m.Year, 1, 1)
	for int(date.Month()) != m.Month {
		date = date.Add(date.DaysInMonth())
	}
	name := fmt.Sprintf("%s %d", date.Month(), m.Year)
	if m.Days < date.DaysInMonth() {
		name += fmt.Sprintf(" (%s)", days(m.Days))
	}
	return name
}

func masses(m farm.Month) []units.DryMatter {
	return []units.DryMatter{m.Grown, m.Wanted, m.Eaten, m.Trampled, m.Cut, m.Fed, m.Standing}
}

func days(n int) string {
	if n == 1 {
		return "1 day"
	}
	return fmt.Sprintf("%d days", n)
}

// changes prints the births, and what the groups want as their year goes on.
func (r *report) changes() {
	if len(r.plan.Births)+len(r.plan.Changes) == 0 {
		return
	}
	r.heading("Births and changes of the herd")
	for _, b := range r.plan.Births {
		text := fmt.Sprintf("%s give birth on %s", b.Group, long(b.Likely))
		if b.Early != b.Late {
			text += fmt.Sprintf(", by print between %s and %s", long(b.Early), long(b.Late))
		}
		if !b.Weaned.IsZero() {
			text += fmt.Sprintf("; their milk ends on %s", long(b.Weaned))
		}
		r.line("%s.", text)
	}
	if len(r.plan.Changes) == 0 {
		return
	}
	day, group, stage := column{head: "day", words: true}, column{head: "group", words: true}, column{head: "from then on", words: true}
	head, weight, before, after := column{head: "head"}, column{head: "each"}, column{head: "before"}, column{head: "after"}
	weight.unit = unitOf(units.LiveWeight(0), r.farm.Units)
	before.unit, after.unit = unitOf(units.Demand(0), r.farm.Units), unitOf(units.Demand(0), r.farm.Units)
	for _, c := range r.plan.Changes {
		day.cells, group.cells = append(day.cells, dayMonth(c.Date)), append(group.cells, c.Group)
		stage.cells = append(stage.cells, c.Stage.String())
		head.cells = append(head.cells, fmt.Sprint(c.Head))
		weight.cells = append(weight.cells, number(c.Weight, r.farm.Units))
		before.cells, after.cells = append(before.cells, number(c.Before, r.farm.Units)), append(after.cells, number(c.After, r.farm.Units))
	}
	r.WriteString(tabulate([]column{day, group, stage, head, weight, before, after}))
	r.paragraph("Before and after are what the group wants of pasture in a day, the day before and that day.")
}

// moves prints the moves of the next days, a table for each rotation.
func (r *report) moves() {
	first := r.firstDay()
	last := min(first.Add(r.days-1), r.plan.To)
	r.heading("Moves from %s to %s", long(first), long(last))
	r.paragraph("A row is a strip to open or a paddock to enter%s. Distances run along the lane from its start. Height is what the plan expects when the animals come; leave is what the last of them should leave standing; again is the day from which it can be grazed anew. Walk the ground first: where the grass is shorter, measure and plan again.", r.openedBefore())
	for i := range r.farm.Rotations {
		rotation := &r.farm.Rotations[i]
		fmt.Fprintf(r, "\n%s\n", oneLine(order(rotation)))
		rows := r.movesOf(i, first, last)
		if len(rows) == 0 {
			r.paragraph("No move in these days.")
			continue
		}
		r.WriteString(tabulate(r.moveColumns(rotation, rows)))
	}
	r.fed(first, last)
}

// firstDay is the first day of the moves: today, or where the season begins
// later its first day or that of the first strip, opened ahead for a follower.
func (r *report) firstDay() units.Date {
	first := r.plan.From
	if len(r.plan.Moves) > 0 {
		first = min(first, r.plan.Moves[0].Date)
	}
	return max(first, r.plan.Today)
}

// openedBefore explains the rows of ground under way, where there are any.
func (r *report) openedBefore() string {
	if len(r.plan.UnderWay) == 0 {
		return ""
	}
	return ", and one of an earlier day is ground opened before, to which somebody is still to come"
}

// movesOf gives the moves of a rotation from one day to another, and before them the
// ground opened earlier to which somebody is still to come.
func (r *report) movesOf(rotation int, first, last units.Date) (rows []*farm.Move) {
	for i := range r.plan.UnderWay {
		if m := &r.plan.UnderWay[i]; m.Rotation == rotation {
			rows = append(rows, m)
		}
	}
	for i := range r.plan.Moves {
		if m := &r.plan.Moves[i]; m.Rotation == rotation && m.Date >= first && m.Date <= last {
			rows = append(rows, m)
		}
	}
	return rows
}

// order names the groups of a rotation in their order.
func order(rotation *farm.Rotation) string {
	ids := make([]string, len(rotation.Groups))
	for i, m := range rotation.Groups {
		ids[i] = m.Group
	}
	return strings.Join(ids, ", then ")
}

// moveColumns makes the columns of a table of moves; those that hold nothing
// for any move are left out when printed.
func (r *report) moveColumns(rotation *farm.Rotation, moves []*farm.Move) []column {
	s := r.farm.Units
	length, tall, area := unitOf(units.Length(0), s), unitOf(units.Height(0), s), unitOf(units.Area(0), s)
	strip := func(print func(*farm.Move) string) func(*farm.Move) string {
		return func(m *farm.Move) string {
			if m.Length == 0 {
				return ""
			}
			return print(m)
		}
	}
	columns := []column{
		{head: "day", words: true, cells: each(moves, func(m *farm.Move) string { return weekday(m.Date) })},
		{head: "land", words: true, cells: each(moves, func(m *farm.Move) string { return m.Land })},
		{head: "from", unit: length, cells: each(moves, strip(func(m *farm.Move) string { return number(m.From, s) }))},
		{head: "to", unit: length, cells: each(moves, strip(func(m *farm.Move) string { return number(m.To, s) }))},
		{head: "strip", unit: length, cells: each(moves, strip(func(m *farm.Move) string { return number(m.Length, s) }))},
		{head: "paces", cells: each(moves, paces)},
		{head: "whole", unit: area, cells: each(moves, func(m *farm.Move) string { return wholePaddock(m, s) })},
		{head: "height", unit: tall, cells: each(moves, func(m *farm.Move) string { return height(m, s) })},
		{head: "leave", unit: tall, cells: each(moves, func(m *farm.Move) string { return number(m.Leave, s) })},
	}
	for _, member := range rotation.Groups {
		columns = append(columns, column{head: member.Group, cells: each(moves, func(m *farm.Move) string { return stay(m, member.Group) })})
	}
	return append(columns, column{head: "again", cells: each(moves, r.again)})
}

func each(moves []*farm.Move, print func(*farm.Move) string) []string {
	cells := make([]string, len(moves))
	for i, m := range moves {
		cells[i] = print(m)
	}
	return cells
}

func wholePaddock(m *farm.Move, s units.System) string {
	if m.Length != 0 {
		return ""
	}
	return number(m.Area, s)
}

// height is that of the grass when the ground is opened.
func height(m *farm.Move, s units.System) string {
	if m.Height == 0 {
		return ""
	}
	return number(m.Height, s)
}

func paces(m *farm.Move) string {
	if m.Paces == 0 {
		return ""
	}
	return fmt.Sprintf("%.0f", m.Paces)
}

// stay gives the days that a group is on the ground of a move.
func stay(m *farm.Move, group string) string {
	for _, v := range m.Visits {
		if v.Group == group {
			return fromTo(v.From, v.To)
		}
	}
	return "–"
}

func (r *report) again(m *farm.Move) string {
	if m.ReadyAgain == nil {
		return "after " + dayMonth(r.plan.To)
	}
	return dayMonth(*m.ReadyAgain)
}

// fed names who is fed in place of grass in these days.
func (r *report) fed(first, last units.Date) {
	var all []string
	for i := range r.farm.Groups {
		id := r.farm.Groups[i].ID
		for _, stay := range r.fedDays(id, first, last) {
			all = append(all, id+" "+fromTo(stay[0], stay[1]))
		}
	}
	if all != nil {
		r.WriteByte('\n')
		r.paragraph("Fed in place of grass in these days: %s. The notes say why.", strings.Join(all, "; "))
	}
}

// fedDays gives the first and the last day of each time a group is fed, whatever
// the reasons.
func (r *report) fedDays(group string, first, last units.Date) (stays [][2]units.Date) {
	for _, f := range r.plan.Feeding {
		from, to := max(f.From, first), min(f.To, last)
		switch n := len(stays); {
		case f.Group != group || from > to:
		case n > 0 && stays[n-1][1] >= from-1:
			stays[n-1][1] = max(stays[n-1][1], to)
		default:
			stays = append(stays, [2]units.Date{from, to})
		}
	}
	return stays
}

// passes puts the plan beside the rainfall rule.
func (r *report) passes() {
	p := &r.plan.Passes
	r.heading("Passes over the land, beside the rainfall rule")
	r.line("Planned, over the land in rotation: %s.", units.Number(p.Planned))
	if p.Rain > 0 {
		r.line("By the rule and a normal year's rain of %s: %s.", r.in(p.Rain), r.rule(p.Rain))
	} else {
		r.line("The normal rain is not in the farm's file, so the rule gives nothing.")
	}
	switch {
	case p.Months == 12:
		r.line("By the rule and the rain of %d, %s: %s.", r.plan.Today.Year(), r.in(p.ThisYear), r.rule(p.ThisYear))
	case p.Months > 0:
		r.line("The rain of %d is known for %s only, %s: too little for the rule.", r.plan.Today.Year(), months(p.Months), r.in(p.ThisYear))
	}
	if r.farm.Rain.Record != "" {
		r.line("Rain record: %s.", strings.TrimSuffix(r.farm.Rain.Record, "."))
	}
	r.paragraph("The rule is common practice without an agreed source: from 10 to 25 in of rain a year one pass for each 10 in, from about 30 in one for each 7 in, under 10 in hardly any grazing without added water. It knows neither warmth nor the length of the season.")
}

// soil prints the account of the soil's water.
func (r *report) soil() {
	if len(r.plan.Soil) == 0 {
		return
	}
	r.heading("Water in the soil, in %s", unitOf(units.RainDepth(0), r.farm.Units))
	month := column{words: true}
	columns := []column{{head: "rain"}, {head: "given"}, {head: "wanted"}, {head: "used"}, {head: "drained"}, {head: "left"}, {head: "growth"}, {head: "ground"}}
	for i := range r.plan.Soil {
		m := &r.plan.Soil[i]
		name := fmt.Sprintf("%s %d", time.Month(m.Month), m.Year)
		if !m.Known {
			name += " (normal)"
		}
		month.cells = append(month.cells, name)
		for j, depth := range []units.RainDepth{m.Rain, m.Irrigation, m.Demand, m.Actual, m.Drained, m.Store} {
			columns[j].cells = append(columns[j].cells, number(depth, r.farm.Units))
		}
		columns[6].cells = append(columns[6].cells, r.in(m.Growth))
		columns[7].cells = append(columns[7].cells, m.Ground.String())
	}
	r.WriteString(tabulate(append([]column{month}, columns...)))
	r.paragraph("Growth is that of the book times the share of the wanted water that the grass gets. Left and ground are those of the month's end; ground is soft where hooves pug it. Months with normal rain are not known yet.")
}

// dry prints the dates of the drought plan.
func (r *report) dry() {
	if len(r.plan.Drought) == 0 {
		return
	}
	r.heading("If it stays dry")
	r.paragraph("On each of these days hold the rain gauge against the figure; where less has fallen, act. The printed dates are of the plains of North America; the others are of the key months of your land. An adviser, and a vet for stock in poor condition, decide with you.")
	for i := range r.plan.Drought {
		d := &r.plan.Drought[i]
		whose := "on " + strings.Join(d.Land, ", ")
		switch {
		case d.Place != "":
			whose = "printed for " + d.Place
		case len(d.Land) == len(r.farm.Land):
			whose = "on all land"
		}
		told := ""
		switch d.SoFar {
		case farm.SoFarShort:
			told = " Less has fallen: act."
		case farm.SoFarEnough:
			told = " Enough has fallen."
		}
		r.WriteString(wrap(fmt.Sprintf("%s: less than %s since %s (%s of normal; %s): %s [%s].%s", long(d.Date), r.in(d.Figure), dayMonth(d.Since), r.in(d.Below), oneLine(whose), d.Act, d.Source, told), "- ", "  "))
	}
}

func months(n int) string {
	if n == 1 {
		return "1 month"
	}
	return fmt.Sprintf("%d months", n)
}

// rule gives the passes of the rainfall rule, and says where it does not speak.
func (r *report) rule(rain units.RainDepth) string {
	passes, err := rainfall.Passes(rain)
	var gap *units.RangeError
	switch {
	case errors.As(err, &gap):
		return units.Number(passes) + " (the rule says nothing of such rain; a straight line stands in)"
	case err != nil:
		return "nothing (" + err.Error() + ")"
	}
	return units.Number(passes)
}

func (r *report) hay() {
	h := &r.plan.Hay
	r.heading("Hay")
	if h.Eaten == 0 {
		r.paragraph("No grazing animal needs hay in this plan.")
	} else {
		r.paragraph("Grazing animals are fed on %s: %s of dry matter, which is %s of hay as it lies, its waste included.", days(h.Days), r.in(h.Eaten), r.in(h.Carried))
	}
	r.paragraph("In store: %s. From the cuts of this plan: %s. Short: %s.", r.in(h.Store), r.in(h.Made), r.in(h.Short))
	if note := r.hayNote(); note != "" {
		r.paragraph("%s%s", farm.LogNote, note)
	}
	if h.Short > 0 && h.Cost.Currency != "" {
		r.paragraph("At your price what is short costs %s.", h.Cost)
	}
	if h.Ration > 0 {
		r.paragraph("Pigs and poultry (but geese) want %s of dry matter more of their own ration on days without pasture. That is no hay.", r.in(h.Ration))
	}
}

// water prints what each group drinks on the day it is most.
func (r *report) water() {
	r.heading("Water on the thirstiest day")
	groups, low, high := column{head: "group", words: true}, column{head: "from"}, column{head: "to"}
	sum, unknown := units.WaterRate(0), false
	for _, w := range r.plan.Water {
		groups.cells = append(groups.cells, w.Group)
		if !w.Known {
			low.cells, high.cells = append(low.cells, "not"), append(high.cells, "known")
			unknown = true
			continue
		}
		low.cells, high.cells = append(low.cells, number(w.Low, r.farm.Units)), append(high.cells, number(w.High, r.farm.Units))
		sum += w.High
	}
	low.unit, high.unit = unitOf(sum, r.farm.Units), unitOf(sum, r.farm.Units)
	r.WriteString(tabulate([]column{groups, low, high}))
	who := "All together drink"
	if unknown {
		who = "Those with a printed figure drink, together,"
	}
	r.paragraph("%s up to %s.", who, r.in(sum))
	if supply := r.farm.Water.Supply; supply > 0 {
		r.paragraph("The source gives %s.", r.in(supply))
	}
}

func (r *report) manure() {
	r.heading("Manure left on the land in the season")
	groups := column{head: "group", words: true}
	columns := []column{{head: "manure"}, {head: "nitrogen"}, {head: "phosphate"}, {head: "potash"}}
	for i := range columns {
		columns[i].unit = unitOf(units.Mass(0), r.farm.Units)
	}
	for _, m := range r.plan.Manure {
		groups.cells = append(groups.cells, m.Group)
		what := []herd.Excreta{herd.ExcretaManure, herd.ExcretaNitrogen, herd.ExcretaPhosphate, herd.ExcretaPotash}
		for i, mass := range []units.Mass{m.Mass, m.Nitrogen, m.Phosphate, m.Potash} {
			cell := number(mass, r.farm.Units)
			if slices.Contains(m.Missing, what[i]) {
				cell = "not known"
			}
			columns[i].cells = append(columns[i].cells, cell)
		}
	}
	r.WriteString(tabulate(append([]column{groups}, columns...)))
	r.paragraph("Nutrients are as excreted, phosphate as P2O5 and potash as K2O. Part of the nitrogen is lost to the air.")
}

func (r *report) fence() {
	f := &r.plan.Fence
	r.heading("Fence")
	square := ""
	if f.Assumed {
		square = ", paddocks taken as square"
	}
	r.paragraph("Round the land: %s%s.", r.in(f.Sides), square)
	if f.Strips > 0 {
		rolls := ""
		if f.Rolls > 0 {
			rolls = fmt.Sprintf(", %d of your rolls of netting", f.Rolls)
		}
		r.paragraph("Moved across the lanes: %s for up to %d strips in use at one time%s.", r.in(f.Cross), f.Strips, rolls)
	}
	if f.Energizer > 0 {
		r.paragraph("Energizer, were all of it live: at least %s in each pulse, one joule a mile [BEEF-FENCE-MISTAKES]. Ground rods: %s in the earth, all together, by the safer of two rules [CLOVERLAND-FENCE].", r.in(f.Energizer), r.in(f.Rods))
	}
}

func (r *report) notes() {
	r.heading("Notes")
	for _, n := range r.plan.Notes {
		r.WriteString(wrap(n.English, "- ", "  "))
	}
	if len(r.plan.Notes) == 0 {
		r.paragraph("None.")
	}
	r.paragraph("Names in capitals are the sources: SOURCES.md tells where each is read.")
}

// cautions come last, where they are seen.
func (r *report) cautions() {
	r.heading("Cautions: what can hurt people or animals")
	for i, c := range r.plan.Cautions {
		if i > 0 {
			r.WriteByte('\n')
		}
		r.WriteString(wrap(fmt.Sprintf("%d. %s", i+1, capital(c.Code)), "", "   "))
		for _, line := range []struct{ head, text string }{{"Why", c.Why}, {"Do", c.Do}, {"Source", c.Source}, {"Who decides", c.Defer}} {
			r.WriteString(wrap(line.head+": "+line.text, "   ", "   "))
		}
	}
	if len(r.plan.Cautions) == 0 {
		r.paragraph("None was raised. That is no promise: local rules, a vet or an adviser decide.")
	}
}

func capital(text string) string { return strings.ToUpper(text[:1]) + text[1:] }
