package farm

import (
	"math"
	"slices"
	"sync"

	"example.org/soum/herd"
	"example.org/soum/internal/season"
	"example.org/soum/units"
)

// wormed marks the visits of sheep and goats by what they may pick up from stock with the
// same worms that was on the ground before, and counts them by group. Published sources
// have the days of worms for sheep and goats alone.
func wormed(r *ready, result *season.Result, visits [][]Visit, met *problems) []tally {
	w := worms{
		visits: visits, groups: make([]wormGroup, 0, len(r.herd)), last: make([]int, len(r.lands)),
		grounds: make([]dunged, 0, len(visits)), droppings: make([]dropping, 0, 2*len(visits)), tallies: make([]tally, len(r.herd)),
	}
	any := false
	for g := range r.herd {
		kind := r.herd[g].Class.Kind
		any = any || hasWormDays(kind)
		w.groups = append(w.groups, wormGroup{r.farm.Groups[g].ID, hasWormDays(kind), herd.SharesWorms(kind, herd.Sheep)}) // and goats, which have the same
	}
	if !any {
		return w.tallies
	}
	var err error
	w.risks, err = wormReturns(r.wormRule())
	met.keep(err, r.start, r.input.Days)
	for i := range visits {
		w.drop(i, &result.Moves[i])
		w.search(i)
		w.tally(i)
	}
	return w.tallies
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

// worms is the ground by who was on it.
type worms struct {
	visits    [][]Visit    // by move
	groups    []wormGroup  // of the farm
	risks     []wormReturn // of stock that shares worms, by days
	last      []int        // by land: 1 and the last move to it
	grounds   []dunged     // by move
	droppings []dropping
	tallies   []tally // by group
}

// wormGroup is a group as far as worms go.
type wormGroup struct {
	id           string
	host, leaves bool // sheep or goats; stock that leaves worms which they pick up
}

// dropping is a visit of a group whose worms a group of sheep or goats may pick up.
type dropping struct {
	from, to     units.Date
	group, visit int
}

// dunged is a move as far as worms go.
type dunged struct {
	from, to  float64
	pass      int
	before    int        // the move to the same land before; -1: none
	earlier   int        // the last one of the pass before; -1: none
	until     units.Date // the last day of the droppings of this move and those before; noDung where there are none
	droppings []dropping
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
	from, visits := len(w.droppings), w.visits[move]
	for i := range visits {
		group := slices.IndexFunc(w.groups, func(g wormGroup) bool { return g.id == visits[i].Group })
		if w.groups[group].leaves {
			w.droppings = append(w.droppings, dropping{visits[i].From, visits[i].To, group, i})
			g.until = max(g.until, visits[i].To)
		}
	}
	g.droppings = w.droppings[from:len(w.droppings):len(w.droppings)]
	w.grounds = append(w.grounds, g)
	w.last[m.Land] = move + 1
}

// search gives each visit of sheep or goats to a move the worst class of what the visits
// of earlier moves to the same ground, or of its own, have left for it.
func (w *worms) search(move int) {
	is, visits := w.grounds[move], w.visits[move]
	hosts := is.droppings
	for i := range hosts {
		if w.groups[hosts[i].group].host {
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
	worst, all := herd.ReturnOtherHost, w.grounds[move].droppings
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
	visits, hosts := w.visits[move], w.grounds[move].droppings
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

// wormRule is the rule of rest that the document asks for.
func (r *ready) wormRule() herd.RestRule {
	if r.farm.WormRest == 0 {
		return herd.RestTemperate
	}
	return r.farm.WormRest
}

// wormNotes tells of each group of sheep or goats how often it comes to ground whose
// larvae are alive, and by whose rule.
func wormNotes(r *ready, tallies []tally) (all []Note) {
	for g := range r.herd {
		id, t := r.farm.Groups[g].ID, &tallies[g]
		if !hasWormDays(r.herd[g].Class.Kind) || t.infective == 0 {
			continue
		}
		rule := r.wormRule().String()
		all = append(all, note("worms", Values{"group": id, "visits": t.visits, "infective": t.infective, "peak": t.peak, "first": t.first.String(), "rule": rule},
			"%s come %d times of %d to ground where worms left by their like can be alive, %d of them at the peak of the larvae; first on %s. Reckoned by the rule \"%s\" of rest; sources differ, and worm_rest chooses [EXT-GOAT-WORMS, NCAT-WORMS, WVU-WORMS]. Rest cures nothing: have dung counted and ask a vet.", id, t.infective, t.visits, t.peak, t.first, rule))
	}
	return all
}
