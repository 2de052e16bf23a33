package farm

import (
	"slices"
	"sync"
	"time"

	"example.org/soum/herd"
	"example.org/soum/internal/season"
	"example.org/soum/units"
)

// lowestLeave is common practice without a source: never leave under 3 in,
// better 4 to 6.
const lowestLeave = 3 * units.HeightInch

// remark writes the notes of a plan.
func (s *setting) remark(plan *Plan, r *season.Result) {
	s.remarkRain(plan)
	s.remarkRules()
	s.remarkOrder()
	s.remarkFeeding(plan)
	s.remarkTwoLands(plan, r)
	s.remarkStays(r)
	s.remarkSurplus(plan)
	s.remarkBirths(plan)
	s.remarkWorms()
	s.remarkBirds()
	s.remarkRoom()
	s.remarkGeese(plan)
	s.remarkMixing()
	s.remarkLegume()
	s.remarkEndophyte()
	s.remarkUnknown(plan)
	s.remarkRows()
	if own := s.farm.OwnFactor; own != nil {
		plan.Factor = own.Growth
		s.notes.add("own-factor", []value{number("growth", own.Growth), word("why", own.Why)},
			"Growth is multiplied by %s, a factor of your own (%s). Print contradicts itself on gains from rotation and from mixing stock, so none is built in.", s.said(own.Growth), said(own.Why))
	}
}

func (s *setting) remarkRain(plan *Plan) {
	if s.soil != nil {
		s.remarkSoil(plan)
		return
	}
	if len(s.farm.Rain.Normal) != 12 || len(s.record) == 0 {
		s.notes.add("rain-not-known", nil, "This year's rain by month or its normal is not in the document: growth is that of a normal year.")
		return
	}
	lowest, at := units.Fraction(1), ""
	for i := range s.farm.Land {
		for _, m := range plan.Months {
			date, _ := units.NewDate(m.Year, time.Month(m.Month), 1)
			scale, err := s.rainScale(&s.lands[i], max(date, s.start))
			if err == nil && scale < lowest {
				lowest, at = scale, s.farm.Land[i].ID
			}
		}
	}
	if lowest < 1 {
		s.notes.add("rain-below-normal", []value{number("share", lowest), word("land", at)},
			"Rain of the key months falls to %s of normal (%s), and growth with it: one printed point, 75 %% of rain gives 75 %% of forage [NDSU-SPRING]. Rain above normal adds nothing.", s.said(lowest), said(at))
	}
}

func (s *setting) remarkRules() {
	if s.farm.Feed.Waste == 0 {
		s.notes.add("no-waste", nil, "No waste of hay is allowed for: feeders are printed at 3.5 %% to 21 %%, the ground at 45 %% [ILL-FEEDERS]; set feed.waste.")
	}
	if len(s.farm.Cuts) > 0 && s.farm.Feed.Loss == nil {
		s.notes.add("no-harvest-loss", nil, "No loss of the cuts is allowed for: 10 %% to 20 %% of the dry matter is printed as lost at harvest [ISU-HARVEST], more in store; set feed.harvest_loss.")
	}
	for i := range s.farm.Rotations {
		r := &s.farm.Rotations[i]
		from := len(s.names)
		for _, id := range r.Land {
			if at := &s.lands[s.farm.landIndex(id)]; at.leaveHeight < lowestLeave-units.HeightInch/1000 {
				s.names = append(s.names, id)
			}
		}
		if low := s.namesFrom(from); low != nil {
			leave := s.lands[s.farm.landIndex(low[0])].leaveHeight
			s.notes.add("leaves-little", []value{words("land", low), number("leave_m", leave)},
				"On %s %s is left; common practice, without a source, is never under 3 in and better 4 to 6.", words("", low), s.said(leave))
		}
	}
}

// remarkOrder compares the order of the groups with that of need.
func (s *setting) remarkOrder() {
	for i := range s.farm.Rotations {
		members := s.farm.Rotations[i].Groups
		for j := 1; j < len(members); j++ {
			first, second := members[j-1].Group, members[j].Group
			before, behind := s.classOf(first).Need, s.classOf(second).Need
			if before > behind && behind != 0 {
				s.notes.add("order", []value{whole("rotation", i), word("first", first), word("second", second)},
					"%s go before %s, whose need is higher; common practice, without an agreed source, is the highest need first, other ruminants next, pigs behind them, birds last.", said(first), said(second))
			}
		}
	}
}

// remarkFeeding tells of each group what it is fed, when and why; the plan lists
// every spell of days.
func (s *setting) remarkFeeding(plan *Plan) {
	for g := range s.farm.Groups {
		id := s.farm.Groups[g].ID
		var sum fedSum
		for i := range plan.Feeding {
			if f := &plan.Feeding[i]; f.Group == id {
				sum.add(f)
			}
		}
		if sum.days == 0 {
			continue
		}
		s.remarkFed(g, &sum)
	}
}

func (s *setting) remarkFed(group int, sum *fedSum) {
	id, n := s.farm.Groups[group].ID, s.notes
	what := "of hay"
	if !s.grazer(group) {
		what = "more of their ration"
	}
	n.say("%s get %s %s, reckoned as dry matter, ", said(id), s.said(sum.wanted), said(what))
	if all := int(sum.to-sum.from) + 1; sum.days < all {
		n.say("on %s of the %s days ", whole("", sum.days), whole("", all))
	}
	n.span(sum.from, sum.to)
	from := len(s.names)
	for why, days := range sum.by {
		if days == 0 {
			continue
		}
		begin := ": "
		if len(s.names) > from {
			begin = "; "
		}
		s.names = append(s.names, FeedReason(why).String())
		n.say("%s%s", said(begin), said(feedReasons[FeedReason(why)]))
		if days < sum.days {
			n.say(" (%s)", said(units.Days(days).In(units.Metric)))
		}
	}
	n.say(".")
	n.end(entry{code: "fed"}, word("group", id), day("from", sum.from), day("to", sum.to), whole("days", sum.days), number("wanted_kg", sum.wanted), words("why", s.namesFrom(from)))
}

// fedSum adds up what a group is fed.
type fedSum struct {
	from, to units.Date
	days     int
	wanted   units.DryMatter
	by       [FeedNoStrip + 1]int // days, by reason
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

// seen is where a group was last, and the last day told of as one on two lands.
type seen struct{ day, land, told int }

// changed is a day on which a group is on two lands.
type changed struct{ group, day int }

// remarkTwoLands names the days on which a group is on two lands.
func (s *setting) remarkTwoLands(_ *Plan, r *season.Result) {
	s.seen, s.changed = s.seen[:0], s.changed[:0]
	for range s.herd {
		s.seen = append(s.seen, seen{day: -1, told: -1})
	}
	for i := range r.Visits {
		v := &r.Visits[i]
		last, land := &s.seen[v.Group], v.Land
		if last.day == v.Day && last.land != land && last.told < v.Day {
			s.changed = append(s.changed, changed{v.Group, v.Day})
			last.told = v.Day
		}
		last.day, last.land = v.Day, land
	}
	for g := range s.herd {
		from := len(s.dates)
		for _, c := range s.changed {
			if c.group == g {
				s.dates = append(s.dates, s.date(c.day))
			}
		}
		if dates := cut(s.dates, from); len(dates) > 0 {
			id := s.farm.Groups[g].ID
			s.notes.add("two-lands", []value{word("group", id), days("dates", dates)},
				"%s go from one land to the next within the day on %s.", said(id), days("", dates))
		}
	}
}

// remarkBirths says what the plan makes of births.
func (s *setting) remarkBirths(plan *Plan) {
	if len(plan.Births) > 0 {
		s.notes.add("births", []value{number("late_gestation_days", herd.LateGestation)},
			"Births are reckoned as though all came on the likely day. Where the class has a figure for late gestation it holds for the last %s, unless the document says otherwise [NRC-1985-SHEEP, VT-REPRODUCTION]. Young count with their mothers until they are weaned; what they graze themselves before that is not reckoned.", s.said(herd.LateGestation))
	}
}

// remarkMixing tells, of kinds of stock that graze the same land, how far their
// diets are alike. The plan reckons as though all ate the same grass.
func (s *setting) remarkMixing() {
	for i := range s.farm.Rotations {
		kinds := make([]herd.Kind, 0, herd.Horses)
		for _, m := range s.farm.Rotations[i].Groups {
			if kind := s.kindOf(m.Group); kind <= herd.Horses && !slices.Contains(kinds, kind) {
				kinds = append(kinds, kind)
			}
		}
		for a := range kinds {
			for _, other := range kinds[a+1:] {
				s.remarkPair(i, kinds[a], other)
			}
		}
	}
}

// sharedDiet is how far the diets of two kinds are alike, and how much of the head of
// each that it carries alone land carries of both together.
type sharedDiet struct {
	overlap units.Fraction
	each    float64
}

var sharedDiets = sync.OnceValue(func() map[[2]herd.Kind]sharedDiet {
	all := map[[2]herd.Kind]sharedDiet{}
	for one := herd.Cattle; one <= herd.Horses; one++ {
		for other := herd.Cattle; other <= herd.Horses; other++ {
			overlap, err := herd.DietOverlap(diet(one), diet(other))
			if err != nil {
				continue // print has no diet of it
			}
			if each, err := herd.CoGrazing(1, overlap); err == nil {
				all[[2]herd.Kind{one, other}] = sharedDiet{overlap, each}
			}
		}
	}
	return all
})

func (s *setting) remarkPair(rotation int, one, other herd.Kind) {
	of, known := sharedDiets()[[2]herd.Kind{one, other}]
	if !known {
		return
	}
	overlap, each := of.overlap, of.each
	s.notes.add("mixed-diets", []value{whole("rotation", rotation), word("one", one.String()), word("other", other.String()), number("overlap", overlap), number("of_each", each)},
		"Where they can choose, %s and %s have %s of their diets in common [UGA-DIETS, the middles of the spans made to add up to a whole], and by one starting point land then carries together %s of the head of each that it carries alone [ANIMUT-2008]. The plan counts on none of it: on plain grass all eat the same.", said(one.String()), said(other.String()), s.said(overlap), s.said(units.Fraction(each)))
}

// diet gives what a kind eats where it can choose, scaled to a whole: the middles
// of the printed spans add up to a little more or less.
func diet(kind herd.Kind) []units.Fraction {
	var shares []units.Fraction
	sum := units.Fraction(0)
	for _, plants := range []herd.Plants{herd.PlantsGrass, herd.PlantsForbs, herd.PlantsBrowse} {
		share, err := herd.DietShare(kind, plants, units.Whole/2)
		if err != nil {
			return nil
		}
		shares = append(shares, share)
		sum += share
	}
	for i := range shares {
		shares[i] /= sum
	}
	return shares
}

// remarkSurplus says of each land when and how far it outgrows its mowing
// height; the plan lists every piece.
func (s *setting) remarkSurplus(plan *Plan) {
	for i := range s.farm.Land {
		id := s.farm.Land[i].ID
		var first, last units.Date
		for _, over := range plan.Surplus {
			if over.Land != id {
				continue
			}
			if first == 0 {
				first = over.Date
			}
			last = over.Date
		}
		if first != 0 {
			s.notes.say("%s outgrows its mowing height of %s before the front gets there, ", said(id), s.said(s.farm.Land[i].MowAbove))
			if last > first {
				s.notes.say("piece by piece, first on %s and last on %s", day("", first), day("", last))
			} else {
				s.notes.say("on %s", day("", first))
			}
			s.notes.say(": consider a cut. Nothing is cut unless the document says so.")
			s.notes.end(entry{code: "surplus"}, word("land", id), day("from", first), day("to", last))
		}
	}
}

// remarkLegume names land whose row holds legume of a share nobody has told,
// since the bloat caution goes by that share.
func (s *setting) remarkLegume() {
	if !s.any(herd.Kind.Ruminant) {
		return
	}
	from := len(s.names)
	for i := range s.farm.Land {
		l := &s.farm.Land[i]
		if s.lands[i].pasture.HoldsLegume && l.Legume == nil && s.farm.rotationOf(l.ID) != nil {
			s.names = append(s.names, l.ID)
		}
	}
	if untold := s.namesFrom(from); untold != nil {
		s.notes.add("legume-not-told", []value{words("land", untold), number("limit", 0.5)},
			"%s hold legume, and how much is not in the document: over half of the stand the risk of bloat rises [UKY-BLOAT]. Look, and set legume.", words("", untold))
	}
}

// remarkUnknown names what print has no figure for.
func (s *setting) remarkUnknown(plan *Plan) {
	for i := range plan.Water {
		if w := plan.Water[i]; !w.Known {
			s.notes.add("water-not-known", []value{word("group", w.Group)}, "No printed figure for the water of %s was found: they need clean water at all times all the same.", said(w.Group))
		}
	}
	for _, m := range plan.Manure {
		switch {
		case !m.Known:
			s.notes.add("manure-not-known", []value{word("group", m.Group)}, "The manure tables have no row for %s: they are left out of the sums.", said(m.Group))
		case len(m.Missing) > 0:
			from := len(s.names)
			for _, what := range m.Missing {
				s.names = append(s.names, what.String())
			}
			missing := s.namesFrom(from)
			s.notes.add("manure-known-in-part", []value{word("group", m.Group), words("missing", missing)}, "The manure row for %s (%s) does not tell %s.", said(m.Group), said(m.Row), words("", missing))
		}
	}
}

// remarkRows names the figures of the rows that have no published source, once
// for all land of a row.
func (s *setting) remarkRows() {
	for i := range s.farm.Land {
		l, row := &s.farm.Land[i], s.lands[i].pasture
		same := func(other Land) bool { return other.Pasture.Row == nil && other.Pasture.Name == row.Name }
		if l.Pasture.Row != nil || slices.ContainsFunc(s.farm.Land[:i], same) {
			continue
		}
		if l.Ceiling == 0 {
			s.notes.add("ceiling-ours", []value{word("pasture", row.Name), number("ceiling_m", row.Ceiling)},
				"Growth of %s ends at %s, a figure of ours: none is published. Give a ceiling of your own if you have measured one.", said(row.Name), s.said(row.Ceiling))
		}
		if sum := sumShares(row.Shares); sum < 1-1e-9 || sum > 1+1e-9 {
			s.notes.add("shares-as-printed", []value{word("pasture", row.Name), number("sum", sum)},
				"The monthly shares of %s sum to %s and are used as they stand, so the year grows that much of its yield.", said(row.Name), s.said(sum))
		}
	}
	for i := range s.farm.Groups {
		class := &s.herd[i].Class
		if class.WeightMark == "M" && s.farm.Groups[i].Weight == 0 {
			s.notes.add("weight-from-memory", []value{word("group", s.farm.Groups[i].ID), number("weight_kg", class.Weight)},
				"The weight of %s, %s each, is from memory, not from print: weigh them and put it in the document.", said(s.farm.Groups[i].ID), s.said(class.Weight))
		}
	}
}

func sumShares(shares [12]units.Fraction) (sum units.Fraction) {
	for _, share := range shares {
		sum += share
	}
	return sum
}
