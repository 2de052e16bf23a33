package farm

import (
	"math"
	"sync"

	"example.org/soum/herd"
	"example.org/soum/internal/season"
	"example.org/soum/units"
)

// fillWorms marks the visits of sheep and goats by what they may pick up from
// stock with the same worms that was on the ground before. Print has the days of
// worms for sheep and goats alone.
func (s *setting) fillWorms(plan *Plan, r *season.Result) error {
	if !s.any(hasWormDays) {
		return nil
	}
	risks, err := wormReturns(s.wormRule())
	if err != nil {
		return err
	}
	w := worms{setting: s, plan: plan, risks: risks}
	s.last, s.tallies, s.leaves = zeros(s.last, len(s.lands)), zeros(s.tallies, len(s.herd)), zeros(s.leaves, len(s.herd))
	s.grounds, s.droppings = s.grounds[:0], s.droppings[:0]
	for g, kind := range s.kinds {
		s.leaves[g] = herd.SharesWorms(kind, herd.Sheep) // and goats, which have the same
	}
	for i := range plan.Moves {
		w.drop(i, &r.Moves[i])
		w.search(i)
		w.tally(i)
	}
	return nil
}

func hasWormDays(kind herd.Kind) bool { return kind == herd.Sheep || kind == herd.Goats }

// wormReturn is the class of a return after so many days, and the worst of it and of
// all that are later.
type wormReturn struct{ now, later herd.WormReturn }

// wormRules keeps the classes by days for each rule, since plans ask for the same days
// over and over.
var wormRules sync.Map

func wormReturns(rule herd.RestRule) ([]wormReturn, error) {
	if known, ok := wormRules.Load(rule); ok {
		return known.([]wormReturn), nil
	}
	returns := make([]wormReturn, longestPlan+2)
	for days := range returns {
		risk, err := herd.WormRisk(herd.Sheep, herd.Sheep, units.Days(days), rule)
		if err != nil {
			return nil, err
		}
		returns[days] = wormReturn{risk, risk}
	}
	for days := len(returns) - 2; days >= 0; days-- {
		returns[days].later = max(returns[days].now, returns[days+1].later)
	}
	wormRules.Store(rule, returns)
	return returns, nil
}

// worms is what fillWorms goes by.
type worms struct {
	*setting
	plan  *Plan
	risks []wormReturn // of stock that shares worms, by days
}

// dropping is a visit of a group whose worms a group of sheep or goats may pick up.
type dropping struct {
	from, to     units.Date
	group, visit int32
}

// dunged is a move as far as worms go.
type dunged struct {
	from, to  float64
	pass      int
	before    int        // the move to the same land before; -1: none
	earlier   int        // the last one of the pass before; -1: none
	until     units.Date // the last day of the droppings of this move and those before; noDung where there are none
	droppings part
}

// noDung is the day of the last droppings where nobody with these worms has been.
const noDung = units.Date(math.MinInt32)

// drop writes a move down.
func (w *worms) drop(move int, m *season.Move) {
	g := dunged{from: m.From, to: m.To, pass: m.Pass, before: w.last[m.Land] - 1, earlier: -1, until: noDung}
	if g.before >= 0 {
		before := &w.grounds[g.before]
		g.until, g.earlier = before.until, before.earlier
		if before.pass != m.Pass {
			g.earlier = g.before
		}
	}
	g.droppings.from = len(w.droppings)
	visits, at := w.plan.Moves[move].Visits, w.moves[move].from
	for i := range visits {
		if group := w.visitors[at+i]; w.leaves[group] {
			w.droppings = append(w.droppings, dropping{visits[i].From, visits[i].To, group, int32(i)})
			g.until = max(g.until, visits[i].To)
		}
	}
	g.droppings.to = len(w.droppings)
	w.grounds = append(w.grounds, g)
	w.last[m.Land] = move + 1
}

// of gives the droppings of a move.
func (w *worms) of(move int) []dropping {
	at := w.grounds[move].droppings
	return w.droppings[at.from:at.to]
}

// search gives each visit of sheep or goats to a move the worst class of what the visits
// of earlier moves to the same ground, or of its own, have left for it.
func (w *worms) search(move int) {
	is, hosts, visits := w.grounds[move], w.of(move), w.plan.Moves[move].Visits
	for i := range hosts {
		if hasWormDays(w.kinds[hosts[i].group]) {
			visits[hosts[i].visit].Worms = herd.ReturnOtherHost
		}
	}
	for k := move; k >= 0; {
		was := &w.grounds[k]
		if was.to <= is.from { // what was grazed before it in this pass lies farther back
			k = was.earlier
			continue
		}
		if was.from < is.to && !w.add(k, hosts, visits) {
			return
		}
		k = was.before
	}
}

// add puts what a move has left to visits, and tells whether anything older could be
// worse.
func (w *worms) add(move int, hosts []dropping, visits []Visit) (more bool) {
	until := w.grounds[move].until
	if until == noDung {
		return false
	}
	for i := range hosts {
		host := &hosts[i]
		v := &visits[host.visit]
		if youngest := max(1, int(host.from-until)); v.Worms > 0 && w.risks[youngest].later > v.Worms {
			v.Worms = max(v.Worms, w.left(move, host))
			more = true
		}
	}
	return more
}

// left gives the worst class of what the visits of a move have left for another.
func (w *worms) left(move int, host *dropping) herd.WormReturn {
	worst, all := herd.ReturnOtherHost, w.of(move)
	for i := range all {
		was := &all[i]
		if was.to >= host.from {
			continue
		}
		// Its last dung is the freshest, and its first the ripest: the worse counts.
		worst = max(worst, w.risks[host.from-was.from].now, w.risks[host.from-was.to].now)
	}
	return worst
}

// tally is how often a group comes to ground by what worms have left there.
type tally struct {
	visits, infective, peak int
	first                   units.Date // of those that are infective or at the peak
}

func (w *worms) tally(move int) {
	visits, hosts := w.plan.Moves[move].Visits, w.of(move)
	for i := range hosts {
		v, t := &visits[hosts[i].visit], &w.tallies[hosts[i].group]
		t.visits++
		if v.Worms < herd.ReturnInfective {
			continue
		}
		if t.infective++; t.infective == 1 {
			t.first = v.From
		}
		if v.Worms == herd.ReturnPeak {
			t.peak++
		}
	}
}

func (s *setting) kindOf(group string) herd.Kind { return s.classOf(group).Kind }

func (s *setting) classOf(group string) *herd.Class { return &s.herd[s.farm.groupIndex(group)].Class }

// wormRule is the rule of rest that the document asks for.
func (s *setting) wormRule() herd.RestRule {
	if s.farm.WormRest == 0 {
		return herd.RestTemperate
	}
	return s.farm.WormRest
}

// remarkWorms tells of each group of sheep or goats how often it comes to ground
// whose larvae are alive, and by whose rule.
func (s *setting) remarkWorms() {
	for g := range s.farm.Groups {
		id := s.farm.Groups[g].ID
		if !hasWormDays(s.kinds[g]) {
			continue
		}
		if t := &s.tallies[g]; t.infective > 0 {
			rule := s.wormRule().String()
			s.notes.add("worms", []value{word("group", id), whole("visits", t.visits), whole("infective", t.infective), whole("peak", t.peak), day("first", t.first), word("rule", rule)},
				"%s come %s times of %s to ground where worms left by their like can be alive, %s of them at the peak of the larvae; first on %s. Reckoned by the rule \"%s\" of rest; sources differ, and worm_rest chooses [EXT-GOAT-WORMS, NCAT-WORMS, WVU-WORMS]. Rest cures nothing: have dung counted and ask a vet.", said(id), whole("", t.infective), whole("", t.visits), whole("", t.peak), day("", t.first), said(rule))
		}
	}
}
