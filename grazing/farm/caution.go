package farm

import (
	"fmt"
	"math"
	"slices"
	"sync"
	"time"

	"example.org/soum/forage"
	"example.org/soum/grazing"
	"example.org/soum/herd"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// Caution is a warning that an answer can hurt somebody or an animal: a code of
// plain words, why it was raised, what to do, whose advice that is. It is no
// rule: local law, a vet or an adviser decides.
type Caution struct {
	Code   string `json:"code"`   // plain words, always the same for one kind of caution
	Why    string `json:"why"`    // what on this farm raised it
	Do     string `json:"do"`     // what to do
	Source string `json:"source"` // keys of SOURCES.md
	Defer  string `json:"defer"`  // who decides
	Values Values `json:"values"` // the number against its limit, for a program
}

// regrazingLimit is the days after which regrowth can be bitten. [PROG-LANE]
// prints 4 to 5: the caution takes the earlier.
const regrazingLimit = 4 * units.Day

// advice is what is always said of a caution.
type advice struct{ do, source, defers string }

var advices = map[string]advice{
	"horned stock and netting": {
		do:     "Keep horned stock, and young kids and lambs, behind single wires or solid fence; where mesh must be used, look at it several times a day.",
		source: "DEFRA-SHEEP, DEFRA-GOAT",
		defers: "Welfare codes differ by country: follow the local one, and ask a vet or adviser.",
	},
	"food scraps": {
		do:     "Feed no kitchen or catering waste until the law where you are is known: in the UK and the EU it may go to no farmed animal at all; in the United States what touched meat needs a licence and boiling.",
		source: "CFR-166, UK-SCRAPS",
		defers: "Ask the local veterinary authority before feeding any scraps.",
	},
	"copper and sheep": {
		do:     "Keep sheep from feed, mineral and lick made for cattle, pigs or poultry, and from ground spread with pig slurry or poultry litter; have the whole diet's copper looked at. 15 mg/kg is printed as the highest safe figure, and 10 to 14 has killed where molybdenum was low or the breed sensitive.",
		source: "COPPER-DUNCAN, COPPER-BERGER, COPPER-ROGERS",
		defers: "A vet decides on copper, in sheep and in cattle.",
	},
	"electric fence and people": {
		do:     "One fence from one energizer only, never barbed wire made live, at least 2.5 m between fences on different energizers, the earth at least 10 m from any other, warning signs where people pass; switch off before working on it.",
		source: "IEC-FENCE",
		defers: "The energizer's manual and local rules decide, above all beside paths, roads and power lines.",
	},
	"water birds": {
		do:     "Keep geese and ducks apart from chickens and turkeys: they can carry avian influenza unseen. Keep both from standing water that wild birds use.",
		source: "MARYLAND-BIRDS, APHIS-WILD-BIRDS",
		defers: "Housing orders and registration rules are local law; a vet must see sudden deaths.",
	},
	"bloat": {
		do:     "Do not turn hungry ruminants onto wet, leafy legume; fill them with dry feed first, move them in the afternoon, watch them for the first hours.",
		source: "UKY-BLOAT; the handling is common practice without a source here",
		defers: "Bloat kills within hours: call a vet at once, and ask one beforehand about drenches.",
	},
	"ionophores": {
		do:     "Keep horses and turkeys from any feed or lick that holds monensin or another ionophore, and from spilt cattle or chicken feed.",
		source: "MONENSIN-REVIEW, MONENSIN-MICHIGAN, MONENSIN-TURKEYS",
		defers: "Small amounts kill horses and there is no antidote: call a vet at once, and read the label before buying.",
	},
	"sheep beside deer or cattle": {
		do:     "Treat all sheep as carriers of malignant catarrhal fever; keep deer and bison well apart from sheep, and know that cattle fall ill less often.",
		source: "ALBERTA-MCF, EGYPT-MCF",
		defers: "A vet decides; the disease is notifiable in places.",
	},
	"chickens and turkeys": {
		do:     "Keep turkeys off ground that chickens have used in the last years.",
		source: "GUELPH-BLACKHEAD, OKLAHOMA-BLACKHEAD",
		defers: "A vet must see sick birds; ask before stocking.",
	},
	"birds after pigs": {
		do:     "Do not range birds where pigs or sheep have grazed, or where their manure was spread.",
		source: "WASHINGTON-756",
		defers: "People catch erysipelas too: gloves, and a doctor or vet where a wound swells or birds die.",
	},
	"bulls and cows with calves": {
		do:     "Never go among them alone or with a dog, keep a way out open, fence them from public paths, cull at the first aggression.",
		source: "HSE-CATTLE, FACE-BULLS",
		defers: "Local law on paths and on bulls in fields decides.",
	},
	"nitrate": {
		do:     "Limit it to the share of the ration that forage.NitrateRation prints, fill stock with other feed first, keep mares, cows and ewes in young off it, and test again after rain, frost or cloud.",
		source: "CLEMSON-NITRATE, DAIRYLAND-NITRATE",
		defers: "Stock that gasp or stagger are a case for the vet at once; a laboratory and an adviser decide what may be fed.",
	},
	"prussic acid": {
		do:     "Keep stock off until it stands higher than the limit and 14 days have gone by since the last frost; each frost begins the wait anew. Never turn hungry stock onto it, and have it tested where in doubt.",
		source: "NEBRASKA-PRUSSIC, AGPROUD-FROST, DROVERS-FROST",
		defers: "It kills within minutes: call a vet at once; a laboratory and an adviser decide.",
	},
	"grass tetany": {
		do:     "Have magnesium in the mineral before turn-in and eaten every day, and look at cows and ewes in early milk several times a day.",
		source: "RAHMAN-2022, MANITOBA-TETANY, OHIO-TETANY",
		defers: "An animal that staggers, twitches or lies kicking is a case for the vet at once; ask one about magnesium beforehand.",
	},
	"fescue endophyte": {
		do:     "Mix it with clover or other grass, graze it in cool weather, keep it short of seed heads, and keep mares near foaling off it.",
		source: "OSU-ENDOPHYTE; the handling is common practice without a source here",
		defers: "A vet decides where stock are lame, hot or in foal.",
	},
	"regrowth bitten": {
		do:     "Shorten the days between the first and the last group, or keep the last group on older ground: regrowth bitten in its first days sets the plant back.",
		source: "PROG-LANE",
		defers: "An adviser who knows the sward decides.",
	},
	"wet ground": {
		do:     "Go out and look before each move; take stock off early in a wet spell, to a lot or the driest ground, and hold feed for it: hooves pug soil that is nearly full of water, sooner under heavy stock and on slopes, and stock that must stand in mud gets foot and udder trouble.",
		source: "LAURENSON-2016, CSU-WET-GRAZING",
		defers: "The ground decides, not the monthly figure; ask an adviser, and a vet where stock goes lame.",
	},
}

// caution gives one of the advices above with what raised it.
func (e *entry) caution(why string, values Values) Caution {
	a := advices[e.code]
	c := Caution{Code: e.code, Why: why, Do: a.do, Source: a.source, Defer: a.defers, Values: values}
	if e.do != "" {
		c.Do = e.do
	}
	return c
}

// caution raises those that a farm asks for, in the order of the table.
func (s *setting) caution(plan *Plan) {
	for _, raise := range [...]func(*setting, *Plan){horns, scraps, copper, ionophores, catarrhalFever, conflicting, dangerousCattle, current, waterBirds, bloat, nitrate, prussicAcid, tetany, endophyte, regrowth, wetGround} {
		raise(s, plan)
	}
}

func horns(s *setting, _ *Plan) {
	if !s.farm.Fence.Netting {
		return
	}
	for i := range s.farm.Groups {
		g := &s.farm.Groups[i]
		switch {
		case g.Horned:
			s.notes.warn("horned stock and netting", []value{word("group", g.ID)}, "%s are horned and the fence is netting.", said(g.ID))
		case g.Young:
			s.notes.warn("horned stock and netting", []value{word("group", g.ID)}, "%s have young at foot and the fence is netting.", said(g.ID))
		}
	}
}

func scraps(s *setting, _ *Plan) {
	if s.farm.Feed.Scraps {
		s.notes.warn("food scraps", nil, "Food scraps are fed on this farm.")
	}
}

// has gives the ids of the groups that a test of their kind picks.
func (s *setting) has(is func(herd.Kind) bool) []string {
	from := len(s.names)
	for i := range s.herd {
		if is(s.herd[i].Class.Kind) {
			s.names = append(s.names, s.farm.Groups[i].ID)
		}
	}
	return s.namesFrom(from)
}

// any tells whether there is a group that a test of its kind picks.
func (s *setting) any(is func(herd.Kind) bool) bool {
	return slices.ContainsFunc(s.kinds, is)
}

func isSheep(k herd.Kind) bool { return k == herd.Sheep }

func copper(s *setting, _ *Plan) {
	sheep, others := s.has(isSheep), s.has(func(k herd.Kind) bool { return k != herd.Sheep })
	if len(sheep) == 0 || (len(others) == 0 && !s.farm.Feed.Minerals) {
		return
	}
	s.notes.warn("copper and sheep", []value{words("sheep", sheep), words("others", others), whole("limit_mg_per_kg", 15)},
		"Sheep (%s) share ground with other stock, whose feed and mineral may hold copper that kills sheep.", words("", sheep))
}

func ionophores(s *setting, _ *Plan) {
	at := s.has(func(k herd.Kind) bool { return k.Equine() || k == herd.Turkeys })
	if len(at) > 0 && s.farm.Feed.Ionophores {
		s.notes.warn("ionophores", []value{words("groups", at)}, "Feed with an ionophore is used on a farm that keeps %s.", words("", at))
	}
}

func catarrhalFever(s *setting, _ *Plan) {
	sheep, others := s.has(isSheep), s.has(func(k herd.Kind) bool { return k == herd.Cattle || k == herd.Deer })
	if len(sheep) > 0 && len(others) > 0 {
		s.notes.warn("sheep beside deer or cattle", []value{words("sheep", sheep), words("others", others)}, "Sheep (%s) are kept beside %s.", words("", sheep), words("", others))
	}
}

// conflicts is the table, which a plan asks for many times.
var conflicts = sync.OnceValue(grazing.Conflicts)

// conflicting raises what must not follow what, for groups of one rotation;
// water birds have a caution of their own.
func conflicting(s *setting, _ *Plan) {
	for i := range s.farm.Rotations {
		r := &s.farm.Rotations[i]
		for j := range conflicts() {
			c := &conflicts()[j]
			if c.Code == "water birds" || !slices.Contains(s.kinds, c.Before) || !slices.Contains(s.kinds, c.After) {
				continue
			}
			before, after := s.members(r, c.Before), s.members(r, c.After)
			if before != nil && after != nil {
				s.notes.warn(c.Code, []value{words("before", before), words("after", after)}, "%s and %s use the same ground: %s.", words("", before), words("", after), said(c.Why))
			}
		}
	}
}

// members gives the ids of a rotation's groups of a kind.
func (s *setting) members(r *Rotation, kind herd.Kind) []string {
	from := len(s.names)
	for _, m := range r.Groups {
		if s.kindOf(m.Group) == kind {
			s.names = append(s.names, m.Group)
		}
	}
	return s.namesFrom(from)
}

// everInMilk tells whether a group is in milk on any day of the season.
func (s *setting) everInMilk(group int) bool {
	return slices.ContainsFunc(s.spells[group], func(sp spell) bool {
		return sp.to > s.first && sp.state.Stage == herd.StageLactating
	})
}

// dangerousCattle names bulls and cows with calves at foot.
func dangerousCattle(s *setting, _ *Plan) {
	from := len(s.names)
	for i := range s.herd {
		c := &s.herd[i].Class
		if c.Kind == herd.Cattle && (c.Name == "bull" || (c.Need == herd.NeedSuckling && s.everInMilk(i))) {
			s.names = append(s.names, s.farm.Groups[i].ID)
		}
	}
	if ids := s.namesFrom(from); ids != nil {
		s.notes.warn("bulls and cows with calves", []value{words("groups", ids)}, "%s can attack people: most deaths of the public by cattle are by cows with calves.", words("", ids))
	}
}

func current(s *setting, _ *Plan) {
	if !s.farm.Fence.Dead {
		s.notes.warn("electric fence and people", nil, "The strips of this plan stand behind electric fence.")
	}
}

func waterBirds(s *setting, _ *Plan) {
	water := s.has(herd.Kind.WaterBird)
	others := s.has(func(k herd.Kind) bool { return k.Bird() && !k.WaterBird() })
	if len(water) == 0 || len(others) == 0 {
		return
	}
	where := "are kept on one farm"
	for _, r := range s.farm.Rotations {
		has := func(ids []string) bool {
			return slices.ContainsFunc(r.Groups, func(m Member) bool { return slices.Contains(ids, m.Group) })
		}
		if has(water) && has(others) {
			where = "use the same ground"
		}
	}
	s.notes.warn("water birds", []value{words("water_birds", water), words("others", others)},
		"Water birds (%s) and other poultry (%s) %s.", words("", water), words("", others), said(where))
}

func bloat(s *setting, _ *Plan) {
	ruminants := s.has(herd.Kind.Ruminant)
	if len(ruminants) == 0 {
		return
	}
	for i := range s.farm.Land {
		l := &s.farm.Land[i]
		legume := s.lands[i].pasture.Legume
		if l.Legume != nil {
			legume = *l.Legume
		}
		limit := forage.HazardLimits().Legume
		if risk, err := forage.BloatRisk(legume); units.Impossible(err) || risk != forage.BloatRaised || s.farm.rotationOf(l.ID) == nil {
			continue
		}
		s.notes.warn("bloat", []value{word("land", l.ID), number("legume", legume), number("limit", limit)},
			"%s is %s legume, over %s, and ruminants (%s) graze it.", said(l.ID), said(legume.In(units.Metric)), said(limit.In(units.Metric)), words("", ruminants))
	}
}

// regrowth warns of ground where animals stand so long after the first bite
// that they bite what has grown since: a last group far behind, or a long stay.
func regrowth(s *setting, plan *Plan) {
	for i := range s.farm.Rotations {
		groups := s.farm.Rotations[i].Groups
		last := groups[len(groups)-1]
		longest, land := units.Days(0), ""
		for j := range plan.Moves {
			if m := &plan.Moves[j]; m.Rotation == i && m.Stay > longest {
				longest, land = m.Stay, m.Land
			}
		}
		if on := longest - units.Day + last.Behind; on > regrazingLimit {
			bitten := entry{kind: entryCaution, code: "regrowth bitten"}
			if last.Behind == 0 {
				bitten.do = "Shorten the stay, with more paddocks or smaller ones: regrowth bitten in its first days sets the plant back."
			}
			s.notes.say("On %s, %s are still eating %s after the first bite; regrowth can be bitten from 4 to 5 days on.", said(land), said(last.Group), said(on.In(units.Metric)))
			s.notes.end(bitten, word("land", land), word("group", last.Group), number("days", on), number("limit_days", regrazingLimit))
		}
	}
}

// wetGround warns of months whose account of the soil's water ends with so little
// room that hooves pug the ground, for land that is grazed in them.
func wetGround(s *setting, plan *Plan) {
	var months, land []string
	deficit := units.RainDepth(math.Inf(1))
	for i := range plan.Soil {
		m := &plan.Soil[i]
		grazed := grazedIn(plan, m.Year, time.Month(m.Month))
		if m.Ground != rainfall.GroundSoft || grazed == nil {
			continue
		}
		months = append(months, fmt.Sprintf("%04d-%02d", m.Year, m.Month))
		deficit = min(deficit, m.Deficit)
		for _, id := range grazed {
			if !slices.Contains(land, id) {
				land = append(land, id)
			}
		}
	}
	if months != nil {
		s.notes.warn("wet ground", []value{words("months", months), words("land", land), number("deficit_m", deficit), number("limit_m", rainfall.FirmDeficit())},
			"The soil is full or nearly so at the end of %s (short of full by %s, the least of these), and %s are grazed then.", words("", months), s.said(deficit), words("", land))
	}
}

// grazedIn gives the land on which any group stands in a month.
func grazedIn(plan *Plan, year int, month time.Month) (land []string) {
	first, _ := units.NewDate(year, month, 1)
	last := first.Add(first.DaysInMonth() - 1)
	for i := range plan.Moves {
		m := &plan.Moves[i]
		stands := slices.ContainsFunc(m.Visits, func(v Visit) bool { return v.From <= last && v.To >= first })
		if stands && !slices.Contains(land, m.Land) {
			land = append(land, m.Land)
		}
	}
	return land
}
