package farm

import (
	"example.org/soum/internal/english"
	"fmt"

	"example.org/soum/herd"
	"example.org/soum/internal/rows"
	"example.org/soum/internal/season"
	"example.org/soum/units"
)

// feeding joins days of feeding in a row.
func feeding(r *ready, result *season.Result) (all []Feeding) {
	last := make([]int, len(r.herd)) // by group: 1 and the place of its last feeding
	for _, fed := range result.Fed {
		f := Feeding{
			Group: r.farm.Groups[fed.Group].ID, From: r.date(fed.Day), To: r.date(fed.Day), Wanted: units.DryMatter(fed.Hay), Why: FeedReason(fed.Reason), Counts: r.counts(&fed),
		}
		if at := last[fed.Group] - 1; at >= 0 {
			if before := &all[at]; before.To == f.From-1 && before.Why == f.Why && before.Counts == f.Counts {
				before.To = f.To
				before.Wanted += f.Wanted
				continue
			}
		}
		all = append(all, f)
		last[fed.Group] = len(all)
	}
	return all
}

// grazer tells whether hay stands in for a group's grass; pigs and poultry
// other than geese have a ration instead.
func (r *ready) grazer(group int) bool {
	kind := r.herd[group].Class.Kind
	return kind.Ruminant() || kind.Equine() || kind == herd.Rabbits || kind == herd.Geese
}

// hay gives the hay of the plan.
func hay(r *ready, result *season.Result) (h HayNeed) {
	last := -1
	for i := range result.Fed { // by day
		fed := &result.Fed[i]
		wanted := units.DryMatter(fed.Hay)
		if !r.grazer(fed.Group) {
			h.Ration += wanted
			continue
		}
		h.Eaten += wanted
		if !r.counts(fed) {
			h.Opening += wanted
		}
		if fed.Day != last {
			h.Days++
			last = fed.Day
		}
	}
	cut := units.DryMatter(0)
	for i := range result.Days {
		cut += units.DryMatter(result.Days[i].Cut)
	}
	h.Carried, h.Store = r.farm.asFed(h.Eaten), r.farm.Feed.Hay
	h.Made = r.farm.hayOf(cut)
	h.Short = max(0, h.Carried-h.Store-h.Made)
	if price := r.farm.Prices.Hay; price != nil {
		h.Cost = price.Of(h.Short, 2)
	}
	h.Winter = winterHay(r)
	return h
}

// winterHay gives the hay from the season's end to a year after the first grass of this
// one; nothing where the plan does not know of that, having begun on ground that was bitten
// already.
func winterHay(r *ready) *WinterHay {
	const year = 365
	w := &WinterHay{From: r.farm.Season.To.Add(1)}
	for i := range r.grass {
		of := &r.input.Rotations[i]
		if r.grass[i] != never && (r.farm.Rotations[i].GrassFrom != nil || !r.bitten(of, r.grazedInGrowth)) {
			w.To = max(w.To, r.farm.Season.From.Add(year-1), r.date(r.grass[i]).Add(year-1))
		}
	}
	if w.To < w.From {
		return nil
	}
	for g := range r.herd {
		if r.grazer(g) {
			w.Eaten += units.DryMatter(r.input.Groups[g].Demand[r.input.Days-1] * float64(w.To.Sub(w.From)+1))
		}
	}
	w.Carried = r.farm.asFed(w.Eaten)
	return w
}

// hayAllowed gives the dry matter of the hay in store that animals can eat.
func (f *Farm) hayAllowed() units.DryMatter {
	return units.DryMatter(float64(f.Feed.Hay) * float64(f.hayDryMatter()) * float64(1-f.Feed.Waste))
}

// madeAllowed gives the dry matter of a cut that animals can eat.
func (f *Farm) madeAllowed(cut units.DryMatter) units.DryMatter {
	return units.DryMatter(float64(f.kept(cut)) * float64(1-f.Feed.Waste))
}

// kept gives what is left of a cut when it is fed.
func (f *Farm) kept(cut units.DryMatter) units.DryMatter {
	if f.Feed.Loss == nil {
		return cut
	}
	return units.DryMatter(float64(cut) * float64(1-*f.Feed.Loss))
}

// hayOf gives the hay of a cut as it lies when it is fed.
func (f *Farm) hayOf(cut units.DryMatter) units.FreshFeed {
	return units.FreshFeed(float64(f.kept(cut)) / float64(f.hayDryMatter()))
}

func (f *Farm) hayDryMatter() units.Fraction { return rows.HayDryMatter(f.Feed.DryMatter) }

// asFed gives the hay to carry out so that the animals eat so much dry matter.
func (f *Farm) asFed(eaten units.DryMatter) units.FreshFeed {
	return units.FreshFeed(float64(eaten) / float64(f.hayDryMatter()) / float64(1-f.Feed.Waste))
}

// feedReasons tells the reasons for feeding in words.
var feedReasons = [...]string{
	FeedLeadIn:   "they wait for ground that has been grazed ahead of them",
	FeedNoGrass:  "no land in their rotation had grown high enough",
	FeedNoRest:   "there is grass, but none that has rested long enough",
	FeedNoGrowth: "nothing grows at this time of the year",
	FeedCut:      "a cut took what had been kept for them",
	FeedNoLand:   "they are in no rotation",
	FeedNoStrip:  "what is ready is too short for a strip, or too little for a day",
}

// fedNotes tells of each group what it is fed, when and why; the plan lists every spell
// of days.
func fedNotes(r *ready, plan *Plan) (all []Note) {
	for g := range r.farm.Groups {
		sum := fedSum{group: r.farm.Groups[g].ID, what: "of hay"}
		if !r.grazer(g) {
			sum.what = "more of their ration"
		}
		for i := range plan.Feeding {
			if f := &plan.Feeding[i]; f.Group == sum.group {
				sum.add(f)
			}
		}
		if sum.days > 0 {
			all = append(all, sum.note(r))
		}
	}
	return all
}

// fedSum adds up what a group is fed.
type fedSum struct {
	group, what string
	from, to    units.Date
	days        int
	wanted      units.DryMatter
	by          [len(feedReasons)]int // days, by reason
}

func (f *fedSum) add(spell *Feeding) {
	days := int(spell.To-spell.From) + 1
	if f.days == 0 {
		f.from = spell.From
	}
	f.to = max(f.to, spell.To)
	f.days += days
	f.wanted += spell.Wanted
	f.by[spell.Why] += days
}

func (f *fedSum) note(r *ready) Note {
	why, reasons := make([]string, 0, len(f.by)), make([]byte, 0, 256)
	for reason, days := range f.by {
		if days == 0 {
			continue
		}
		if len(why) > 0 {
			reasons = append(reasons, "; "...)
		}
		why, reasons = append(why, FeedReason(reason).String()), append(reasons, feedReasons[reason]...)
		if days < f.days {
			reasons = fmt.Appendf(reasons, " (%d %s)", days, english.Word(days, "day"))
		}
	}
	from, to, some := f.from.String(), f.to.String(), ""
	if all := int(f.to-f.from) + 1; f.days < all {
		some = fmt.Sprintf("on %d of the %d days ", f.days, all)
	}
	return note("fed", Values{"group": f.group, "from": from, "to": to, "days": f.days, "wanted_kg": float64(f.wanted), "why": why},
		"%s get %s %s, reckoned as dry matter, %s%s: %s.", f.group, r.text(f.wanted), f.what, some, english.OnDays(from, to), reasons)
}
