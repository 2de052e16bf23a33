package fit

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"time"

	"github.com/shopspring/decimal"

	"example.org/soum/internal/document"
	"example.org/soum/internal/english"
	"example.org/soum/units"
)

// inMonths tells months in order, runs of them by their ends: "from January to
// March and in May".
func inMonths(months []int) string {
	if len(months) == 12 {
		return "all year"
	}
	in := [14]bool{} // with an empty month before and after
	for _, m := range months {
		in[m] = true
	}
	var runs []string
	for first := 1; first <= 12; first++ {
		if !in[first] {
			continue
		}
		last := first
		for in[last+1] {
			last++
		}
		text := "in " + time.Month(first).String()
		if last > first {
			text = "from " + time.Month(first).String() + " to " + time.Month(last).String()
		}
		runs = append(runs, text)
		first = last
	}
	return english.List(runs)
}

// counted is a number with the user's own unit.
func counted(v float64, unit string) string { return strings.TrimSpace(units.Number(v) + " " + unit) }

// head writes so many of a stock, with a word such as "more" behind the number. The
// ids are taken for plurals; one animal, and a class that goes by its own name, are
// counted by the head, which reads alike for one and many.
func (m *model) head(v float64, word, id string) string {
	text := units.Number(v)
	one := text == "1"
	if word != "" {
		text += " " + word
	}
	if one || m.question.Stock[m.index(id)].ID == "" {
		text += " head of"
	}
	return text + " " + id
}

// each is for how many of the others a ratio's head are.
func (r *Ratio) each() float64 {
	if r.Each == nil {
		return 1
	}
	return *r.Each
}

// text names a ratio: "the ratio of rams to ewes (at least 1 to 30)".
func (r *Ratio) text(kind RuleKind, head float64) string {
	others, limit := english.List(r.To), "at least "
	if len(r.To) > 1 {
		others += " together"
	}
	if kind == RuleRatioMost {
		limit = "at most "
	}
	return "the ratio of " + r.Of + " to " + others + " (" + limit + units.Number(head) + " to " + units.Number(r.each()) + ")"
}

// in writes a quantity in the reader's units.
func (m *model) in(q document.Shown) string { return q.In(m.question.Units) }

// ton writes a mass of feed by the tonne or the short ton.
func (m *model) ton(kilograms float64) string {
	if m.question.Units == units.US {
		return english.Plural(kilograms/float64(units.DryMatterShortTon), "short ton")
	}
	return units.Number(kilograms/float64(units.DryMatterTonne)) + " t"
}

// value writes a value of the goal.
func (m *model) value(v float64) string {
	switch m.question.Goal {
	case GoalLeastHay:
		return m.ton(math.Abs(v)) + " of hay"
	case GoalMargin:
		return units.Money{Amount: decimal.NewFromFloat(v).Round(moneyPlaces), Currency: m.currency}.String()
	}
	return english.Plural(v, "animal unit")
}

// bindText tells what one more of a rule would bring.
func (m *model) bindText(b *Bind) string {
	more, effect := m.moreText(b), ""
	var changes []string
	most := 0.0
	for _, c := range b.Changes {
		most = max(most, math.Abs(c.Head))
	}
	for _, c := range b.Changes {
		if math.Abs(c.Head) < leastTold*most {
			continue
		}
		word := "more"
		if c.Head < 0 {
			word = "fewer"
		}
		changes = append(changes, m.head(math.Abs(c.Head), word, c.ID))
	}
	stock := english.List(changes)
	switch {
	case m.question.Goal == GoalAnimalUnits:
		effect = " would carry " + stock + " (" + m.value(b.Gain) + " more)."
	case m.question.Goal == GoalLeastHay:
		effect = " would save " + m.value(b.Gain) + "."
	default:
		effect = " would bring " + m.value(b.Gain) + " more"
		if stock != "" {
			effect += ", with " + stock
		}
		effect += "."
	}
	return more + effect
}

// leastTold is the share of the greatest change under which another is left out
// of the text.
const leastTold = 0.01

// moreText names what there is one more of.
func (m *model) moreText(b *Bind) string {
	switch b.Rule.Kind {
	case RuleGrowth:
		return m.ton(b.More) + " more of " + time.Month(b.Rule.Months[0]).String() + " " + b.Rule.ID
	case RuleHay:
		return m.ton(b.More) + " more of hay in store"
	case RuleBuying:
		return m.ton(b.More) + " more of hay that may be bought"
	case RuleWater:
		return m.in(units.WaterRate(b.More)) + " more of water " + inMonths(b.Rule.Months)
	case RuleLand:
		if m.question.Units == units.US {
			return "1 ac more of " + b.Rule.ID
		}
		return "1 ha more of " + b.Rule.ID
	case RuleNeed:
		return "Asking for " + counted(b.More, m.needUnit(b.Rule.ID)) + " less in the need of " + b.Rule.ID
	case RuleLeast:
		return "Asking for " + m.head(b.More, "fewer", b.Rule.ID)
	case RuleMost:
		return "Allowing " + m.head(b.More, "more", b.Rule.ID)
	case RuleRatioLeast:
		return "Asking for 1 head of " + b.Rule.ID + " less than " + b.Rule.English
	case RuleRatioMost:
		return "Allowing 1 head of " + b.Rule.ID + " beyond " + b.Rule.English
	}
	return "1 more in " + b.Rule.English
}

// needUnit is what a need is counted in; empty where the document does not say.
func (m *model) needUnit(id string) string {
	at := slices.IndexFunc(m.question.Needs, func(n Need) bool { return n.ID == id })
	return m.question.Needs[at].Unit
}

// mostTold is how much of what binds the paragraph tells.
const mostTold = 3

// text tells the answer in one paragraph.
func (m *model) text(a *Answer) string {
	if !a.Fits {
		return "Nothing fits: " + clashText(a.Clash) + "."
	}
	var b strings.Builder
	switch {
	case !a.Found && a.Proved:
		fmt.Fprintf(&b, "No herd of whole animals fits; with parts of animals allowed it would be %s.", m.value(a.Relaxed.Value))
	case !a.Found:
		fmt.Fprintf(&b, "No herd of whole animals was found before the search was ended; with parts of animals allowed it would be %s.", m.value(a.Relaxed.Value))
	default:
		whole, relaxed := m.value(a.Whole.Value), m.value(a.Relaxed.Value)
		fmt.Fprintf(&b, "%s: %s.", m.herdText(&a.Whole), whole)
		if relaxed != whole { // else it would say the same figure again
			fmt.Fprintf(&b, " With parts of animals allowed it would be %s.", relaxed)
		}
		if a.Proved {
			b.WriteString(" No herd of whole animals is better.")
		} else {
			b.WriteString(" The search was ended before every herd of whole animals was ruled out, so a better one may exist.")
		}
		m.hayText(&b, &a.Whole)
	}
	told := 0
	for _, bind := range a.Binds {
		if bind.Rule.Kind == RuleGrowth && !m.grows[bind.Rule.Months[0]-1] {
			continue // nobody can have more of what does not grow
		}
		if b.WriteString(" " + bind.English); told == mostTold-1 {
			break
		}
		told++
	}
	return b.String()
}

// hayText tells the hay; how much it is stands there already where that is the goal.
func (m *model) hayText(b *strings.Builder, h *Herd) {
	least, all, bought := m.question.Goal == GoalLeastHay, m.ton(float64(h.Hay)), m.ton(float64(h.Bought))
	cost := ""
	if h.Cost.Currency != "" {
		cost = " for " + h.Cost.String()
	}
	switch {
	case h.Hay == 0:
		b.WriteString(" It is fed no hay.")
	case h.Bought == 0 && least:
		b.WriteString(" All of it is from the store.")
	case h.Bought == 0:
		fmt.Fprintf(b, " It is fed %s of hay from the store.", all)
	case least:
		fmt.Fprintf(b, " %s of it must be bought%s.", bought, cost)
	default:
		fmt.Fprintf(b, " It is fed %s of hay, %s of it bought%s.", all, bought, cost)
	}
}

// herdText tells a herd.
func (m *model) herdText(h *Herd) string {
	var all []string
	for _, s := range h.Head {
		if s.Head > 0 {
			all = append(all, m.head(s.Head, "", s.ID))
		}
	}
	if len(all) == 0 {
		return "No animals"
	}
	return english.List(all)
}

// clashText tells rules that contradict one another, the growth of several
// months in one.
func clashText(rules []Rule) string {
	var all []string
	months := map[string][]int{}
	for _, r := range rules {
		if r.Kind == RuleGrowth {
			months[r.ID] = append(months[r.ID], r.Months...)
		}
	}
	for _, r := range rules {
		switch {
		case r.Kind != RuleGrowth:
			all = append(all, r.English)
		case months[r.ID] != nil:
			slices.Sort(months[r.ID])
			all = append(all, "what grows of "+r.ID+" "+inMonths(months[r.ID]))
			delete(months, r.ID)
		}
	}
	switch len(all) {
	case 1:
		return all[0] + " cannot be met by itself"
	case 2:
		return english.List(all) + " do not go together; leave out either and the other can be kept"
	}
	return english.List(all) + " do not go together; leave out any one of them and the rest do"
}
