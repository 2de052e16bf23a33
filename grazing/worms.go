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
	w := &worms{plan: plan, kinds: s.visitKinds(plan), risks: make([]herd.WormReturn, s.input.Days+1), rule: s.wormRule()}
	last, before := make([]int, len(s.lands)), make([]int, len(plan.Moves)) // 1 and the move on the same land before
	for i := range plan.Moves {
		land := r.Moves[i].Land
		before[i], last[land] = last[land], i+1
		for j := range plan.Moves[i].Visits {
			if !hasWormDays(w.kinds[i][j]) {
				continue
			}
			worst := herd.ReturnOtherHost
			for k := i; k >= 0 && worst < herd.ReturnPeak; k = before[k] - 1 {
				left, err := w.left(k, i, j)
				if err != nil {
					return err
				}
				worst = max(worst, left)
			}
			plan.Moves[i].Visits[j].Worms = worst
		}
	}
	return nil
}

func hasWormDays(kind herd.Kind) bool { return kind == herd.Sheep || kind == herd.Goats }

// visitKinds gives the kinds of stock by move and visit.
func (s *setting) visitKinds(plan *Plan) [][]herd.Kind {
	visits := 0
	for i := range plan.Moves {
		visits += len(plan.Moves[i].Visits)
	}
	all, flat := make([][]herd.Kind, len(plan.Moves)), make([]herd.Kind, 0, visits)
	for i := range plan.Moves {
		from := len(flat)
		for j := range plan.Moves[i].Visits {
			flat = append(flat, s.kindOf(plan.Moves[i].Visits[j].Group))
		}
		all[i] = flat[from:]
	}
	return all
}

// worms is what fillWorms goes by. The class of a return is kept by days, since a
// plan asks for the same days over and over.
type worms struct {
	plan  *Plan
	kinds [][]herd.Kind
	risks []herd.WormReturn // of stock that shares worms; 0 where nobody has asked yet
	rule  herd.RestRule
}

// left gives the worst that the visits of a move have left for a visit of a later
// move, or of the same, on the same ground; 0 where nothing was there.
func (w *worms) left(earlier, later, visit int) (worst herd.WormReturn, err error) {
	was, is := &w.plan.Moves[earlier], &w.plan.Moves[later]
	if is.Length != 0 && (was.To <= is.From || was.From >= is.To) {
		return 0, nil
	}
	from := is.Visits[visit].From
	for i := range was.Visits {
		before := &was.Visits[i]
		switch {
		case before.To >= from:
		case !herd.SharesWorms(w.kinds[earlier][i], w.kinds[later][visit]):
			worst = max(worst, herd.ReturnOtherHost)
		default:
			// Its last dung is the freshest, and its first the ripest: the worse counts.
			for _, dung := range [...]units.Date{before.From, before.To} {
				risk, err := w.risk(int(from - dung))
				if err != nil {
					return 0, err
				}
				worst = max(worst, risk)
			}
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

func (s *setting) kindOf(group string) herd.Kind { return s.herd[s.farm.groupIndex(group)].Class.Kind }

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
		risky, peak, visits := 0, 0, 0
		var first units.Date
		for _, m := range plan.Moves {
			for _, v := range m.Visits {
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
			s.notes.add("worms", map[string]any{"group": id, "visits": visits, "infective": risky, "peak": peak, "first": first.String(), "rule": s.wormRule().String()},
				"%s come %d times of %d to ground where worms left by their like can be alive, %d of them at the peak of the larvae; first on %s. Reckoned by the rule %q of rest; sources differ, and worm_rest chooses [EXT-GOAT-WORMS, NCAT-WORMS, WVU-WORMS]. Rest cures nothing: have dung counted and ask a vet.", id, risky, visits, peak, first, s.wormRule())
		}
	}
}
