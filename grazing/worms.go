package grazing

import (
	"example.org/soum/herd"
	"example.org/soum/internal/season"
	"example.org/soum/units"
)

// fillWorms marks the visits of sheep and goats by what they may pick up from
// stock with the same worms that was on the ground before. Print has the days of
// worms for sheep and goats alone.
func (s *setting) fillWorms(plan *Plan, r *season.Result) error {
	if len(s.has(hasWormDays)) == 0 {
		return nil
	}
	w := s.worms(plan)
	last, before := make([]int, len(s.lands)), make([]int, len(plan.Moves)) // 1 and the move on the same land before
	var ground []int
	for i := range plan.Moves {
		land, is := r.Moves[i].Land, &plan.Moves[i]
		before[i], last[land] = last[land], i+1
		ground = ground[:0]
		for k := i; k >= 0; k = before[k] - 1 {
			if was := &plan.Moves[k]; is.Length == 0 || (was.To > is.From && was.From < is.To) {
				ground = append(ground, k)
			}
		}
		for j := range is.Visits {
			if stay := w.stays[i][j]; hasWormDays(s.herd[stay.group].Class.Kind) {
				var err error
				if is.Visits[j].Worms, err = w.worst(stay, ground); err != nil {
					return err
				}
			}
		}
	}
	return nil
}

func hasWormDays(kind herd.Kind) bool { return kind == herd.Sheep || kind == herd.Goats }

// worms is what fillWorms goes by. The class of a return is kept by days, since a
// plan asks for the same days over and over.
type worms struct {
	stays  [][]wormStay      // by move and visit
	shares [][]bool          // by group and group: whether they share worms
	risks  []herd.WormReturn // of stock that shares worms; 0 where nobody has asked yet
	rule   herd.RestRule
}

// wormStay is a visit as far as worms go.
type wormStay struct {
	group    int
	from, to units.Date
}

func (s *setting) worms(plan *Plan) *worms {
	w := &worms{stays: make([][]wormStay, len(plan.Moves)), risks: make([]herd.WormReturn, s.input.Days+1), rule: s.wormRule()}
	visits := 0
	for i := range plan.Moves {
		visits += len(plan.Moves[i].Visits)
	}
	flat := make([]wormStay, 0, visits)
	for i := range plan.Moves {
		from := len(flat)
		for _, v := range plan.Moves[i].Visits {
			flat = append(flat, wormStay{s.farm.groupIndex(v.Group), v.From, v.To})
		}
		w.stays[i] = flat[from:]
	}
	for g := range s.herd {
		shares := make([]bool, len(s.herd))
		for other := range s.herd {
			shares[other] = herd.SharesWorms(s.herd[other].Class.Kind, s.herd[g].Class.Kind)
		}
		w.shares = append(w.shares, shares)
	}
	return w
}

// worst gives the worst class of what the visits of earlier moves, or of its own,
// have left on the ground for a visit.
func (w *worms) worst(visit wormStay, ground []int) (herd.WormReturn, error) {
	worst, shares := herd.ReturnOtherHost, w.shares[visit.group]
	for _, k := range ground {
		for _, before := range w.stays[k] {
			if before.to >= visit.from || !shares[before.group] {
				continue
			}
			// Its last dung is the freshest, and its first the ripest: the worse counts.
			for _, dung := range [...]units.Date{before.from, before.to} {
				risk, err := w.risk(int(visit.from - dung))
				if err != nil {
					return 0, err
				}
				worst = max(worst, risk)
			}
		}
		if worst == herd.ReturnPeak {
			break
		}
	}
	return worst, nil
}

// risk gives the class of a return after so many days.
func (w *worms) risk(days int) (herd.WormReturn, error) {
	if w.risks[days] == 0 {
		risk, err := herd.WormRisk(herd.Sheep, herd.Sheep, units.Days(days), w.rule)
		if err != nil {
			return 0, err
		}
		w.risks[days] = risk
	}
	return w.risks[days], nil
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
func (s *setting) remarkWorms(plan *Plan) {
	for i := range s.farm.Groups {
		id := s.farm.Groups[i].ID
		if !hasWormDays(s.herd[i].Class.Kind) {
			continue
		}
		risky, peak, visits := 0, 0, 0
		var first units.Date
		for m := range plan.Moves {
			for j := range plan.Moves[m].Visits {
				v := &plan.Moves[m].Visits[j]
				if v.Group != id || v.Worms == 0 {
					continue
				}
				visits++
				if v.Worms < herd.ReturnInfective {
					continue
				}
				if risky++; risky == 1 {
					first = v.From
				}
				if v.Worms == herd.ReturnPeak {
					peak++
				}
			}
		}
		if risky > 0 {
			rule := s.wormRule().String()
			s.notes.add("worms", []value{word("group", id), whole("visits", visits), whole("infective", risky), whole("peak", peak), day("first", first), word("rule", rule)},
				"%s come %s times of %s to ground where worms left by their like can be alive, %s of them at the peak of the larvae; first on %s. Reckoned by the rule \"%s\" of rest; sources differ, and worm_rest chooses [EXT-GOAT-WORMS, NCAT-WORMS, WVU-WORMS]. Rest cures nothing: have dung counted and ask a vet.", said(id), whole("", risky), whole("", visits), whole("", peak), day("", first), said(rule))
		}
	}
}
