package farm

import (
	"example.org/soum/internal/english"
	"fmt"
	"slices"
	"strconv"

	"example.org/soum/forage"
	"example.org/soum/herd"
	"example.org/soum/internal/document"
	"example.org/soum/units"
)

// checkTests holds what the document tells of a stand's dangers against what can
// be.
func (l *Land) checkTests(today units.Date) error {
	minerals := 0
	for _, m := range []struct {
		key   string
		share units.Fraction
	}{{"potassium", l.Potassium}, {"calcium", l.Calcium}, {"magnesium", l.Magnesium}} {
		if !(m.share >= 0 && m.share < 1) {
			return document.Wrong(m.key, m.share, "is no share of the dry matter", "a laboratory's figure such as 2.5 %")
		}
		if m.share > 0 {
			minerals++
		}
	}
	switch {
	case minerals > 0 && minerals < 3:
		return document.Wrong("", strconv.Quote(l.ID), "tells only a part of potassium, calcium and magnesium", "all three, or none")
	case !(l.Nitrate >= 0 && l.Nitrate < 1):
		return document.Wrong("nitrate", l.Nitrate, "is no share of the dry matter", "nitrate nitrogen by a laboratory, such as 900 ppm")
	case l.Infected != nil && !(*l.Infected >= 0 && *l.Infected <= 1):
		return document.Wrong("infected", *l.Infected, "is no share", "0 % to 100 %")
	case l.Frosted != nil && *l.Frosted > today:
		return document.Wrong("frosted", *l.Frosted, "is after today", "the day of the last frost, today at the latest")
	}
	return nil
}

// grazers gives the ids of the groups that graze a land and that a test of their kind
// picks.
func (r *ready) grazers(l *Land, is func(herd.Kind) bool) []string {
	return r.members(r.farm.rotationOf(l.ID), is)
}

func ruminantOrEquine(k herd.Kind) bool { return k.Ruminant() || k.Equine() }

// nitrate goes by the laboratory's figure and Clemson's steps.
func nitrate(r *ready) (all []Caution) {
	for i := range r.farm.Land {
		l := &r.farm.Land[i]
		if l.Nitrate == 0 {
			continue
		}
		level, err := forage.NitrateClass(l.Nitrate, forage.NitrateNitrogen, forage.NitrateByClemson)
		ids := r.grazers(l, herd.Kind.Ruminant)
		if err != nil || level == forage.LevelSafe || ids == nil {
			continue
		}
		all = append(all, caution("nitrate", Values{"land": l.ID, "groups": ids, "nitrate_nitrogen": float64(l.Nitrate), "level": level.String(), "limit": float64(firstLimited())},
			"%s holds %s of nitrate nitrogen in the dry matter (%s), and %s graze it.", l.ID, r.text(l.Nitrate), level, english.Listed(ids)))
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
func prussicAcid(r *ready, plan *Plan) (all []Caution) {
	limit, err := forage.PrussicHeight(forage.PrussicSorghumSudangrass, forage.PrussicByPress, units.High)
	if err != nil {
		return nil // a row of the table
	}
	for i := range r.farm.Land {
		l := &r.farm.Land[i]
		if !r.lands[i].pasture.PrussicAcid {
			continue
		}
		ids := r.grazers(l, ruminantOrEquine)
		for j := range plan.Moves {
			m := &plan.Moves[j]
			if m.Land != l.ID || ids == nil {
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
			when := fmt.Sprintf("at %s, under %s", r.text(m.Height), r.text(limit))
			if risk == forage.PrussicFrosted {
				when = r.text(since) + " after a frost"
			}
			all = append(all, caution("prussic acid", Values{"land": l.ID, "groups": ids, "date": m.Date.String(), "height_m": float64(m.Height), "limit_m": float64(limit), "class": risk.String()},
				"%s makes prussic acid and is opened on %s, %s; %s graze it.", l.ID, m.Date, when, english.Listed(ids)))
			break // the first says it
		}
	}
	return all
}

// tetany goes by the laboratory's potassium, calcium and magnesium.
func tetany(r *ready) (all []Caution) {
	for i := range r.farm.Land {
		l := &r.farm.Land[i]
		if l.Potassium == 0 {
			continue
		}
		risk, err := forage.TetanyRisk(l.Potassium, l.Calcium, l.Magnesium)
		ratio, _ := forage.TetanyRatio(l.Potassium, l.Calcium, l.Magnesium)
		ids := r.grazers(l, herd.Kind.Ruminant)
		if err != nil || risk != forage.TetanyRaised || ids == nil {
			continue
		}
		limits := forage.HazardLimits()
		all = append(all, caution("grass tetany", Values{"land": l.ID, "groups": ids, "ratio": ratio, "limit": limits.Potassium, "magnesium": float64(l.Magnesium), "needed": float64(limits.Magnesium)},
			"On %s potassium over calcium and magnesium is %s (limit %s), and magnesium %s of the dry matter (needed: above %s); %s graze it.",
			l.ID, units.Number(ratio), units.Number(limits.Potassium), r.text(l.Magnesium), r.text(limits.Magnesium), english.Listed(ids)))
	}
	return all
}

// endophyte is raised where the document tells how much of a fescue is infected.
func endophyte(r *ready) (all []Caution) {
	for i := range r.farm.Land {
		l := &r.farm.Land[i]
		if l.Infected == nil || *l.Infected == 0 {
			continue
		}
		loss, err := forage.EndophyteLoss(*l.Infected)
		ids := r.grazers(l, ruminantOrEquine)
		if err != nil || ids == nil {
			continue
		}
		all = append(all, caution("fescue endophyte", Values{"land": l.ID, "groups": ids, "infected": float64(*l.Infected), "loss_kg_day": float64(loss)},
			"%s of the fescue on %s carry the toxic fungus: steers gain some %s less by one line through many trials; %s graze it.", r.text(*l.Infected), l.ID, r.text(loss), english.Listed(ids)))
	}
	return all
}

// endophyteNotes names land whose row may carry the fungus where nobody has told how
// much.
func endophyteNotes(r *ready) []Note {
	untold := r.landWhere(func(i int, l *Land) bool {
		return r.lands[i].pasture.Endophyte && l.Infected == nil && r.grazers(l, ruminantOrEquine) != nil
	})
	if untold == nil {
		return nil
	}
	return []Note{note("endophyte-not-told", Values{"land": untold},
		"%s may carry the toxic fungus of tall fescue, and how much is not in the document: gains fall with it, and mares near foaling are in danger [OSU-ENDOPHYTE; mares from memory]. A laboratory counts infected tillers; set infected.", english.Listed(untold))}
}
