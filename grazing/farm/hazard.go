package farm

import (
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

// grazers gives the ids of the groups that graze a land and that a test of their
// kind picks.
func (s *setting) grazers(l *Land, is func(herd.Kind) bool) []string {
	from := len(s.names)
	if r := s.farm.rotationOf(l.ID); r != nil {
		for _, m := range r.Groups {
			if is(s.kindOf(m.Group)) {
				s.names = append(s.names, m.Group)
			}
		}
	}
	return s.namesFrom(from)
}

// grazed tells whether any group that a test of its kind picks grazes a land.
func (s *setting) grazed(l *Land, is func(herd.Kind) bool) bool {
	r := s.farm.rotationOf(l.ID)
	return r != nil && slices.ContainsFunc(r.Groups, func(m Member) bool { return is(s.kindOf(m.Group)) })
}

func ruminantOrEquine(k herd.Kind) bool { return k.Ruminant() || k.Equine() }

// nitrate goes by the laboratory's figure and Clemson's steps.
func nitrate(s *setting, _ *Plan) {
	for i := range s.farm.Land {
		l := &s.farm.Land[i]
		if l.Nitrate == 0 || !s.grazed(l, herd.Kind.Ruminant) {
			continue
		}
		level, err := forage.NitrateClass(l.Nitrate, forage.NitrateNitrogen, forage.NitrateByClemson)
		if err != nil || level == forage.LevelSafe {
			continue
		}
		ids := s.grazers(l, herd.Kind.Ruminant)
		s.notes.warn("nitrate", []value{word("land", l.ID), words("groups", ids), number("nitrate_nitrogen", l.Nitrate), word("level", level.String()), number("limit", firstLimited())},
			"%s holds %s of nitrate nitrogen in the dry matter (%s), and %s graze it.", said(l.ID), s.said(l.Nitrate), said(level.String()), words("", ids))
	}
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
func prussicAcid(s *setting, plan *Plan) {
	limit, err := forage.PrussicHeight(forage.PrussicSorghumSudangrass, forage.PrussicByPress, units.High)
	if err != nil {
		return // a row of the table
	}
	for i := range s.farm.Land {
		l := &s.farm.Land[i]
		if !s.lands[i].pasture.PrussicAcid || !s.grazed(l, ruminantOrEquine) {
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
			s.notes.say("%s makes prussic acid and is opened on %s", said(l.ID), day("", m.Date))
			if risk == forage.PrussicFrosted {
				s.notes.say(", %s after a frost", s.said(since))
			} else {
				s.notes.say(" at %s, under %s", s.said(m.Height), s.said(limit))
			}
			ids := s.grazers(l, ruminantOrEquine)
			s.notes.warn("prussic acid", []value{word("land", l.ID), words("groups", ids), day("date", m.Date), number("height_m", m.Height), number("limit_m", limit), word("class", risk.String())},
				"; %s graze it.", words("", ids))
			break // the first says it
		}
	}
}

// tetany goes by the laboratory's potassium, calcium and magnesium.
func tetany(s *setting, _ *Plan) {
	for i := range s.farm.Land {
		l := &s.farm.Land[i]
		if l.Potassium == 0 || !s.grazed(l, herd.Kind.Ruminant) {
			continue
		}
		risk, err := forage.TetanyRisk(l.Potassium, l.Calcium, l.Magnesium)
		ratio, _ := forage.TetanyRatio(l.Potassium, l.Calcium, l.Magnesium)
		if err != nil || risk != forage.TetanyRaised {
			continue
		}
		limits := forage.HazardLimits()
		ids := s.grazers(l, herd.Kind.Ruminant)
		s.notes.warn("grass tetany", []value{word("land", l.ID), words("groups", ids), number("ratio", ratio), number("limit", limits.Potassium), number("magnesium", l.Magnesium), number("needed", limits.Magnesium)},
			"On %s potassium over calcium and magnesium is %s (limit %s), and magnesium %s of the dry matter (needed: above %s); %s graze it.",
			said(l.ID), said(units.Number(ratio)), said(units.Number(limits.Potassium)), s.said(l.Magnesium), s.said(limits.Magnesium), words("", ids))
	}
}

// endophyte is raised where the document tells how much of a fescue is infected.
func endophyte(s *setting, _ *Plan) {
	for i := range s.farm.Land {
		l := &s.farm.Land[i]
		if l.Infected == nil || *l.Infected == 0 || !s.grazed(l, ruminantOrEquine) {
			continue
		}
		loss, err := forage.EndophyteLoss(*l.Infected)
		if err != nil {
			continue
		}
		ids := s.grazers(l, ruminantOrEquine)
		s.notes.warn("fescue endophyte", []value{word("land", l.ID), words("groups", ids), number("infected", *l.Infected), number("loss_kg_day", loss)},
			"%s of the fescue on %s carry the toxic fungus: steers gain some %s less by one line through many trials; %s graze it.", s.said(*l.Infected), said(l.ID), s.said(loss), words("", ids))
	}
}

// remarkEndophyte names land whose row may carry the fungus where nobody has told
// how much.
func (s *setting) remarkEndophyte() {
	from := len(s.names)
	for i := range s.farm.Land {
		l := &s.farm.Land[i]
		if s.lands[i].pasture.Endophyte && l.Infected == nil && s.grazed(l, ruminantOrEquine) {
			s.names = append(s.names, l.ID)
		}
	}
	if untold := s.namesFrom(from); untold != nil {
		s.notes.add("endophyte-not-told", []value{words("land", untold)},
			"%s may carry the toxic fungus of tall fescue, and how much is not in the document: gains fall with it, and mares near foaling are in danger [OSU-ENDOPHYTE; mares from memory]. A laboratory counts infected tillers; set infected.", words("", untold))
	}
}
