package farm

import (
	"example.org/soum/internal/english"
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
func caution(code string, values Values, why string, args ...any) Caution {
	if values == nil {
		values = Values{} // as JSON it is an object, not null
	}
	a := advices[code]
	return Caution{Code: code, Why: fmt.Sprintf(why, args...), Do: a.do, Source: a.source, Defer: a.defers, Values: values}
}

// cautions raises those that a farm asks for, in the order of the table.
func cautions(r *ready, plan *Plan) []Caution {
	return slices.Concat(
		horns(r), scraps(r), copper(r), ionophores(r), catarrhalFever(r), conflicting(r), dangerousCattle(r), current(r), waterBirds(r), bloat(r),
		nitrate(r), prussicAcid(r, plan), tetany(r), endophyte(r), regrowth(r, plan), wetGround(r, plan),
	)
}

func horns(r *ready) (all []Caution) {
	for i := range r.farm.Groups {
		g := &r.farm.Groups[i]
		switch {
		case !r.farm.Fence.Netting:
		case g.Horned:
			all = append(all, caution("horned stock and netting", Values{"group": g.ID}, "%s are horned and the fence is netting.", g.ID))
		case g.Young:
			all = append(all, caution("horned stock and netting", Values{"group": g.ID}, "%s have young at foot and the fence is netting.", g.ID))
		}
	}
	return all
}

func scraps(r *ready) []Caution {
	if !r.farm.Feed.Scraps {
		return nil
	}
	return []Caution{caution("food scraps", nil, "Food scraps are fed on this farm.")}
}

// groupsOf gives the ids of the groups that a test of their kind picks.
func (r *ready) groupsOf(is func(herd.Kind) bool) (ids []string) {
	for i := range r.herd {
		if is(r.herd[i].Class.Kind) {
			ids = append(ids, r.farm.Groups[i].ID)
		}
	}
	return ids
}

// keeps tells whether a kind is kept.
func (r *ready) keeps(kind herd.Kind) bool {
	return slices.ContainsFunc(r.herd, func(g herd.Group) bool { return g.Class.Kind == kind })
}

// members gives the ids of a rotation's groups that a test of their kind picks.
func (r *ready) members(of *Rotation, is func(herd.Kind) bool) (ids []string) {
	if of == nil {
		return nil
	}
	for _, m := range of.Groups {
		if is(r.kindOf(m.Group)) {
			ids = append(ids, m.Group)
		}
	}
	return ids
}

func isSheep(k herd.Kind) bool { return k == herd.Sheep }

func copper(r *ready) []Caution {
	sheep, others := r.groupsOf(isSheep), r.groupsOf(func(k herd.Kind) bool { return k != herd.Sheep })
	if sheep == nil || (others == nil && !r.farm.Feed.Minerals) {
		return nil
	}
	return []Caution{caution("copper and sheep", Values{"sheep": sheep, "others": others, "limit_mg_per_kg": 15},
		"Sheep (%s) share ground with other stock, whose feed and mineral may hold copper that kills sheep.", english.Listed(sheep))}
}

func ionophores(r *ready) []Caution {
	at := r.groupsOf(func(k herd.Kind) bool { return k.Equine() || k == herd.Turkeys })
	if at == nil || !r.farm.Feed.Ionophores {
		return nil
	}
	return []Caution{caution("ionophores", Values{"groups": at}, "Feed with an ionophore is used on a farm that keeps %s.", english.Listed(at))}
}

func catarrhalFever(r *ready) []Caution {
	sheep, others := r.groupsOf(isSheep), r.groupsOf(func(k herd.Kind) bool { return k == herd.Cattle || k == herd.Deer })
	if sheep == nil || others == nil {
		return nil
	}
	return []Caution{caution("sheep beside deer or cattle", Values{"sheep": sheep, "others": others}, "Sheep (%s) are kept beside %s.", english.Listed(sheep), english.Listed(others))}
}

// conflicts is the table, which a plan asks for many times.
var conflicts = sync.OnceValue(grazing.Conflicts)

// conflicting raises what must not follow what, for groups of one rotation;
// water birds have a caution of their own.
func conflicting(r *ready) (all []Caution) {
	for i := range r.farm.Rotations {
		for j := range conflicts() {
			c := &conflicts()[j]
			if c.Code == "water birds" || !r.keeps(c.Before) || !r.keeps(c.After) {
				continue
			}
			before := r.members(&r.farm.Rotations[i], func(k herd.Kind) bool { return k == c.Before })
			after := r.members(&r.farm.Rotations[i], func(k herd.Kind) bool { return k == c.After })
			if before != nil && after != nil {
				all = append(all, caution(c.Code, Values{"before": before, "after": after}, "%s and %s use the same ground: %s.", english.Listed(before), english.Listed(after), c.Why))
			}
		}
	}
	return all
}

// dangerousCattle names bulls and cows with calves at foot on any day of the season.
func dangerousCattle(r *ready) []Caution {
	var ids []string
	for i := range r.herd {
		c := &r.herd[i].Class
		inMilk := slices.ContainsFunc(r.spells[i], func(sp spell) bool { return sp.to > r.first && sp.state.Stage == herd.StageLactating })
		if c.Kind == herd.Cattle && (c.Name == "bull" || (c.Need == herd.NeedSuckling && inMilk)) {
			ids = append(ids, r.farm.Groups[i].ID)
		}
	}
	if ids == nil {
		return nil
	}
	return []Caution{caution("bulls and cows with calves", Values{"groups": ids}, "%s can attack people: most deaths of the public by cattle are by cows with calves.", english.Listed(ids))}
}

func current(r *ready) []Caution {
	if r.farm.Fence.Dead {
		return nil
	}
	return []Caution{caution("electric fence and people", nil, "The strips of this plan stand behind electric fence.")}
}

func waterBirds(r *ready) []Caution {
	dry := func(k herd.Kind) bool { return k.Bird() && !k.WaterBird() }
	water, others := r.groupsOf(herd.Kind.WaterBird), r.groupsOf(dry)
	if water == nil || others == nil {
		return nil
	}
	where := "are kept on one farm"
	for i := range r.farm.Rotations {
		if of := &r.farm.Rotations[i]; r.members(of, herd.Kind.WaterBird) != nil && r.members(of, dry) != nil {
			where = "use the same ground"
		}
	}
	return []Caution{caution("water birds", Values{"water_birds": water, "others": others}, "Water birds (%s) and other poultry (%s) %s.", english.Listed(water), english.Listed(others), where)}
}

func bloat(r *ready) (all []Caution) {
	ruminants := r.groupsOf(herd.Kind.Ruminant)
	for i := range r.farm.Land {
		l := &r.farm.Land[i]
		legume := r.lands[i].pasture.Legume
		if l.Legume != nil {
			legume = *l.Legume
		}
		limit := forage.HazardLimits().Legume
		risk, err := forage.BloatRisk(legume)
		if ruminants == nil || units.Impossible(err) || risk != forage.BloatRaised || r.farm.rotationOf(l.ID) == nil {
			continue
		}
		all = append(all, caution("bloat", Values{"land": l.ID, "legume": float64(legume), "limit": float64(limit)},
			"%s is %s legume, over %s, and ruminants (%s) graze it.", l.ID, legume.In(units.Metric), limit.In(units.Metric), english.Listed(ruminants)))
	}
	return all
}

// regrowth warns of ground where animals stand so long after the first bite
// that they bite what has grown since: a last group far behind, or a long stay.
func regrowth(r *ready, plan *Plan) (all []Caution) {
	for i := range r.farm.Rotations {
		groups := r.farm.Rotations[i].Groups
		last := groups[len(groups)-1]
		longest, land := units.Days(0), ""
		for j := range plan.Moves {
			if m := &plan.Moves[j]; m.Rotation == i && m.Stay > longest {
				longest, land = m.Stay, m.Land
			}
		}
		on := longest - units.Day + last.Behind
		if on <= regrazingLimit {
			continue
		}
		bitten := caution("regrowth bitten", Values{"land": land, "group": last.Group, "days": float64(on), "limit_days": float64(regrazingLimit)},
			"On %s, %s are still eating %s after the first bite; regrowth can be bitten from 4 to 5 days on.", land, last.Group, on.In(units.Metric))
		if last.Behind == 0 {
			bitten.Do = "Shorten the stay, with more paddocks or smaller ones: regrowth bitten in its first days sets the plant back."
		}
		all = append(all, bitten)
	}
	return all
}

// wetGround warns of months whose account of the soil's water ends with so little
// room that hooves pug the ground, for land that is grazed in them.
func wetGround(r *ready, plan *Plan) []Caution {
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
	if months == nil {
		return nil
	}
	return []Caution{caution("wet ground", Values{"months": months, "land": land, "deficit_m": float64(deficit), "limit_m": float64(rainfall.FirmDeficit())},
		"The soil is full or nearly so at the end of %s (short of full by %s, the least of these), and %s are grazed then.", english.Listed(months), r.text(deficit), english.Listed(land))}
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
