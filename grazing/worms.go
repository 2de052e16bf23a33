package grazing

import (
	"example.org/soum/herd"
	"example.org/soum/internal/season"
	"example.org/soum/units"
)

// fillWorms marks the visits of sheep and goats by what they may pick up from
// stock with the same worms that was on the ground before. Print has the days of
// worms for sheep and goats alone.
func (s *setting) fillWorms(plan *Plan, _ *season.Result) error {
	kinds := map[string]herd.Kind{}
	for i := range s.farm.Groups {
		kinds[s.farm.Groups[i].ID] = s.herd[i].Class.Kind
	}
	risks, err := s.wormRisks()
	if err != nil {
		return err
	}
	before := map[string][]int{} // moves so far, by land
	for i := range plan.Moves {
		move := &plan.Moves[i]
		before[move.Land] = append(before[move.Land], i)
		for j := range move.Visits {
			visit := &move.Visits[j]
			kind := kinds[visit.Group]
			if kind != herd.Sheep && kind != herd.Goats {
				continue
			}
			visit.Worms = herd.ReturnOtherHost
			for _, k := range before[move.Land] {
				if earlier := &plan.Moves[k]; move.Length == 0 || (earlier.To > move.From && earlier.From < move.To) {
					visit.Worms = max(visit.Worms, wormsLeft(earlier, visit, kind, kinds, risks))
				}
			}
		}
	}
	return nil
}

// wormRisks gives the class of a return after so many days, of stock that shares
// worms: a plan asks for the same days over and over.
func (s *setting) wormRisks() ([]herd.WormReturn, error) {
	risks := make([]herd.WormReturn, s.input.Days+1)
	for days := range risks {
		var err error
		if risks[days], err = herd.WormRisk(herd.Sheep, herd.Sheep, units.Days(days), s.wormRule()); err != nil {
			return nil, err
		}
	}
	return risks, nil
}

// wormsLeft gives the worst that the visits of a move have left for a later visit
// on the same ground; 0 where nothing was there.
func wormsLeft(earlier *Move, visit *Visit, kind herd.Kind, kinds map[string]herd.Kind, risks []herd.WormReturn) herd.WormReturn {
	worst := herd.WormReturn(0)
	for i := range earlier.Visits {
		before := &earlier.Visits[i]
		if before.To >= visit.From {
			continue
		}
		if !herd.SharesWorms(kinds[before.Group], kind) {
			worst = max(worst, herd.ReturnOtherHost)
			continue
		}
		// Its last dung is the freshest, and its first the ripest: the worse counts.
		worst = max(worst, risks[int(visit.From-before.From)], risks[int(visit.From-before.To)])
	}
	return worst
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
