package grazing

import (
	"fmt"
	"slices"
	"strconv"

	"example.org/soum/forage"
	"example.org/soum/herd"
	"example.org/soum/units"
)

// checkTests holds what the document tells of a stand's dangers against what can
// be.
func (l *Land) checkTests(path string, today units.Date) error {
	minerals := 0
	for _, m := range []struct {
		key   string
		share units.Fraction
	}{{"potassium", l.Potassium}, {"calcium", l.Calcium}, {"magnesium", l.Magnesium}} {
		if !(m.share >= 0 && m.share < 1) {
			return fault(path+"."+m.key, m.share, "is no share of the dry matter", "a laboratory's figure such as 2.5 %")
		}
		if m.share > 0 {
			minerals++
		}
	}
	switch {
	case minerals > 0 && minerals < 3:
		return fault(path, strconv.Quote(l.ID), "tells only a part of potassium, calcium and magnesium", "all three, or none")
	case !(l.Nitrate >= 0 && l.Nitrate < 1):
		return fault(path+".nitrate", l.Nitrate, "is no share of the dry matter", "nitrate nitrogen by a laboratory, such as 900 ppm")
	case l.Infected != nil && !(*l.Infected >= 0 && *l.Infected <= 1):
		return fault(path+".infected", *l.Infected, "is no share", "0 % to 100 %")
	case l.Frosted != nil && *l.Frosted > today:
		return fault(path+".frosted", *l.Frosted, "is after today", "the day of the last frost, today at the latest")
	}
	return nil
}

// grazers gives the ids of the groups that graze a land and that a test of their
// kind picks.
func (s *setting) grazers(l *Land, is func(herd.Kind) bool) []string {
	var ids []string
	if r := s.farm.rotationOf(l.ID); r != nil {
		for _, m := range r.Groups {
			if is(s.kindOf(m.Group)) {
				ids = append(ids, m.Group)
			}
		}
	}
	return ids
}

// nitrate goes by the laboratory's figure and Clemson's steps.
func nitrate(s *setting, _ *Plan) []Caution {
	var all []Caution
	for i := range s.farm.Land {
		l := &s.farm.Land[i]
		ids := s.grazers(l, herd.Kind.Ruminant)
		level, err := forage.NitrateClass(l.Nitrate, forage.NitrateNitrogen, forage.NitrateByClemson)
		if err != nil || l.Nitrate == 0 || level == forage.LevelSafe || ids == nil {
			continue
		}
		all = append(all, caution("nitrate", fmt.Sprintf("%s holds %s of nitrate nitrogen in the dry matter (%s), and %s graze it.", l.ID, s.text(l.Nitrate), level, list(ids)),
			map[string]any{"land": l.ID, "groups": ids, "nitrate_nitrogen": float64(l.Nitrate), "level": level.String(), "limit": float64(firstLimited())}))
	}
	return all
}

// firstLimited is the lowest nitrate that Clemson limits at all.
func firstLimited() units.Concentration {
	steps := forage.NitrateSteps()
	return steps[slices.IndexFunc(steps, func(s forage.NitrateStep) bool {
		return s.Scale == forage.NitrateByClemson && s.Level != forage.LevelSafe
	})].From
}

// noFrost is days since a frost where the document tells of none: more than any
// printed wait.
const noFrost = 365 * units.Day

// prussicAcid is raised by the first strip that is opened too low or too soon after
// the frost in the document, by the strictest figures in print: the row does not say
// which crop it is, and crosses have the highest limit.
func prussicAcid(s *setting, plan *Plan) []Caution {
	limit, err := forage.PrussicHeight(forage.PrussicSorghumSudangrass, forage.PrussicByPress, units.High)
	if err != nil {
		return nil // a row of the table
	}
	var all []Caution
	for i := range s.farm.Land {
		l := &s.farm.Land[i]
		ids := s.grazers(l, func(k herd.Kind) bool { return k.Ruminant() || k.Equine() })
		if !s.lands[i].pasture.PrussicAcid || ids == nil {
			continue
		}
		for j := range plan.Moves {
			m := &plan.Moves[j]
			if m.Land != l.ID {
				continue
			}
			since := noFrost
			if l.Frosted != nil {
				since = m.Date.Sub(*l.Frosted)
			}
			risk, err := forage.PrussicRisk(forage.PrussicSorghumSudangrass, m.Height, since)
			if err != nil || risk == forage.PrussicLower {
				continue
			}
			why := fmt.Sprintf("%s makes prussic acid and is opened on %s at %s, under %s", l.ID, m.Date, s.text(m.Height), s.text(limit))
			if risk == forage.PrussicFrosted {
				why = fmt.Sprintf("%s makes prussic acid and is opened on %s, %s after a frost", l.ID, m.Date, s.text(since))
			}
			all = append(all, caution("prussic acid", fmt.Sprintf("%s; %s graze it.", why, list(ids)),
				map[string]any{"land": l.ID, "groups": ids, "date": m.Date.String(), "height_m": float64(m.Height), "limit_m": float64(limit), "class": risk.String()}))
			break // the first says it
		}
	}
	return all
}

// tetany goes by the laboratory's potassium, calcium and magnesium.
func tetany(s *setting, _ *Plan) []Caution {
	var all []Caution
	for i := range s.farm.Land {
		l := &s.farm.Land[i]
		ids := s.grazers(l, herd.Kind.Ruminant)
		if l.Potassium == 0 || ids == nil {
			continue
		}
		risk, err := forage.TetanyRisk(l.Potassium, l.Calcium, l.Magnesium)
		ratio, _ := forage.TetanyRatio(l.Potassium, l.Calcium, l.Magnesium)
		if err != nil || risk != forage.TetanyRaised {
			continue
		}
		limits := forage.HazardLimits()
		all = append(all, caution("grass tetany", fmt.Sprintf("On %s potassium over calcium and magnesium is %s (limit %s), and magnesium %s of the dry matter (needed: above %s); %s graze it.",
			l.ID, units.Number(ratio), units.Number(limits.Potassium), s.text(l.Magnesium), s.text(limits.Magnesium), list(ids)),
			map[string]any{"land": l.ID, "groups": ids, "ratio": ratio, "limit": limits.Potassium, "magnesium": float64(l.Magnesium), "needed": float64(limits.Magnesium)}))
	}
	return all
}

// endophyte is raised where the document tells how much of a fescue is infected.
func endophyte(s *setting, _ *Plan) []Caution {
	var all []Caution
	for i := range s.farm.Land {
		l := &s.farm.Land[i]
		ids := s.grazers(l, func(k herd.Kind) bool { return k.Ruminant() || k.Equine() })
		if l.Infected == nil || *l.Infected == 0 || ids == nil {
			continue
		}
		loss, err := forage.EndophyteLoss(*l.Infected)
		if err != nil {
			continue
		}
		all = append(all, caution("fescue endophyte", fmt.Sprintf("%s of the fescue on %s carry the toxic fungus: steers gain some %s less by one line through many trials; %s graze it.", s.text(*l.Infected), l.ID, s.text(loss), list(ids)),
			map[string]any{"land": l.ID, "groups": ids, "infected": float64(*l.Infected), "loss_kg_day": float64(loss)}))
	}
	return all
}

// remarkEndophyte names land whose row may carry the fungus where nobody has told
// how much.
func (s *setting) remarkEndophyte() {
	var untold []string
	for i := range s.farm.Land {
		l := &s.farm.Land[i]
		if s.lands[i].pasture.Endophyte && l.Infected == nil && s.grazers(l, func(k herd.Kind) bool { return k.Ruminant() || k.Equine() }) != nil {
			untold = append(untold, l.ID)
		}
	}
	if untold != nil {
		s.notes.add("endophyte-not-told", map[string]any{"land": untold},
			"%s may carry the toxic fungus of tall fescue, and how much is not in the document: gains fall with it, and mares near foaling are in danger [OSU-ENDOPHYTE; mares from memory]. A laboratory counts infected tillers; set infected.", list(untold))
	}
}
