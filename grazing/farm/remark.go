package farm

import (
	"example.org/soum/internal/english"
	"fmt"
	"slices"
	"sync"

	"example.org/soum/herd"
	"example.org/soum/internal/rows"
	"example.org/soum/internal/season"
	"example.org/soum/units"
)

// lowestLeave is common practice without a source: never leave under 3 in,
// better 4 to 6.
const lowestLeave = 3 * units.HeightInch

// notes tells what the reader of a plan should know.
func notes(r *ready, result *season.Result, plan *Plan, worms []tally) []Note {
	return slices.Concat(
		rainNotes(r), supplyNotes(r), orderNotes(r), fedNotes(r, plan), twoLandNotes(r, result), stayNotes(r, result), birthNotes(r, plan),
		wormNotes(r, worms), birdNotes(r), roomNotes(r), gooseNotes(r, plan), mixingNotes(r), legumeNotes(r), endophyteNotes(r), unknownNotes(plan), rowNotes(r), ownNotes(r),
	)
}

// rainNotes says how growth goes by the rain.
func rainNotes(r *ready) []Note {
	if r.soil != nil {
		return []Note{soilNote(r)}
	}
	if !r.rainKnown() {
		return []Note{note("rain-not-known", nil, "This year's rain by month or its normal is not in the document: growth is that of a normal year.")}
	}
	lowest, at := units.Fraction(1), ""
	for i := range r.farm.Land {
		for _, m := range r.months {
			if scale := r.rainScale(&r.lands[i], r.date(m.from), new(problems)); scale < lowest {
				lowest, at = scale, r.farm.Land[i].ID
			}
		}
	}
	if lowest == 1 {
		return nil
	}
	return []Note{note("rain-below-normal", Values{"share": float64(lowest), "land": at},
		"Rain of the key months falls to %s of normal (%s), and growth with it: one printed point, 75 %% of rain gives 75 %% of forage [NDSU-SPRING]. Rain above normal adds nothing.", r.text(lowest), at)}
}

// supplyNotes names what the document leaves out of hay, and heights left that are low.
func supplyNotes(r *ready) (all []Note) {
	if r.farm.Feed.Waste == 0 {
		all = append(all, note("no-waste", nil, "No waste of hay is allowed for: feeders are printed at 3.5 %% to 21 %%, the ground at 45 %% [ILL-FEEDERS]; set feed.waste."))
	}
	if len(r.farm.Cuts) > 0 && r.farm.Feed.Loss == nil {
		all = append(all, note("no-harvest-loss", nil, "No loss of the cuts is allowed for: 10 %% to 20 %% of the dry matter is printed as lost at harvest [ISU-HARVEST], more in store; set feed.harvest_loss."))
	}
	for i := range r.farm.Rotations {
		var low []string
		for _, id := range r.farm.Rotations[i].Land {
			if r.lands[r.farm.landIndex(id)].leaveHeight < lowestLeave-units.HeightInch/1000 {
				low = append(low, id)
			}
		}
		if low != nil {
			leave := r.lands[r.farm.landIndex(low[0])].leaveHeight
			all = append(all, note("leaves-little", Values{"land": low, "leave_m": float64(leave)},
				"On %s %s is left; common practice, without a source, is never under 3 in and better 4 to 6.", english.Listed(low), r.text(leave)))
		}
	}
	return all
}

// orderNotes compares the order of the groups with that of need.
func orderNotes(r *ready) (all []Note) {
	for i := range r.farm.Rotations {
		members := r.farm.Rotations[i].Groups
		for j := 1; j < len(members); j++ {
			first, second := members[j-1].Group, members[j].Group
			if before, behind := r.classOf(first).Need, r.classOf(second).Need; before > behind && behind != 0 {
				all = append(all, note("order", Values{"rotation": i, "first": first, "second": second},
					"%s go before %s, whose need is higher; common practice, without an agreed source, is the highest need first, other ruminants next, pigs behind them, birds last.", first, second))
			}
		}
	}
	return all
}

// twoLandNotes tells on how many days the leaders of a rotation go on to another land
// within the day, and with them, later, all who follow; the moves tell on which.
func twoLandNotes(r *ready, result *season.Result) (all []Note) {
	for i := range r.input.Rotations {
		leader := r.input.Rotations[i].Members[0].Group
		days, first, told, last := 0, 0, -1, season.Visit{Day: -1}
		for k := range result.Visits {
			v := &result.Visits[k]
			if v.Group != leader {
				continue
			}
			if v.Day == last.Day && v.Land != last.Land && told < v.Day {
				told = v.Day
				if days++; days == 1 {
					first = v.Day
				}
			}
			last = *v
		}
		if days == 0 {
			continue
		}
		id, day := r.farm.Groups[leader].ID, r.date(first).String()
		when := "on " + day
		if days > 1 {
			when = fmt.Sprintf("on %d days, the first %s", days, day)
		}
		all = append(all, note("two-lands", Values{"group": id, "days": days, "first": day}, "%s go from one land to the next within the day %s.", id, when))
	}
	return all
}

// birthNotes says what the plan makes of births.
func birthNotes(r *ready, plan *Plan) []Note {
	if len(plan.Births) == 0 {
		return nil
	}
	return []Note{note("births", Values{"late_gestation_days": float64(herd.LateGestation)},
		"Births are reckoned as though all came on the likely day. Where the class has a figure for late gestation it holds for the last %s, unless the document says otherwise [NRC-1985-SHEEP, VT-REPRODUCTION]. Young count with their mothers until they are weaned; what they graze themselves before that is not reckoned.", r.text(herd.LateGestation))}
}

// mixingNotes tells, of kinds of stock that graze the same land, how far their diets are
// alike. The plan goes by one grass for all.
func mixingNotes(r *ready) (all []Note) {
	for i := range r.farm.Rotations {
		kinds := make([]herd.Kind, 0, len(r.farm.Rotations[i].Groups))
		for _, m := range r.farm.Rotations[i].Groups {
			if kind := r.kindOf(m.Group); kind <= herd.Horses && !slices.Contains(kinds, kind) {
				kinds = append(kinds, kind)
			}
		}
		for a, one := range kinds {
			for _, other := range kinds[a+1:] {
				of, known := sharedDiets()[[2]herd.Kind{one, other}]
				if !known {
					continue
				}
				all = append(all, note("mixed-diets", Values{"rotation": i, "one": one.String(), "other": other.String(), "overlap": float64(of.overlap), "of_each": of.each},
					"Where they can choose, %s and %s have %s of their diets in common [UGA-DIETS, the middles of the spans made to add up to a whole], and by one starting point land then carries together %s of the head of each that it carries alone [ANIMUT-2008]. The plan counts on none of it: on plain grass all eat the same.", one, other, r.text(of.overlap), r.text(units.Fraction(of.each))))
			}
		}
	}
	return all
}

// sharedDiet is how far the diets of two kinds are alike, and how much of the head of
// each that it carries alone land carries of both together.
type sharedDiet struct {
	overlap units.Fraction
	each    float64
}

var sharedDiets = sync.OnceValue(func() map[[2]herd.Kind]sharedDiet {
	all := map[[2]herd.Kind]sharedDiet{}
	for one := herd.Cattle; one <= herd.Horses; one++ {
		for other := herd.Cattle; other <= herd.Horses; other++ {
			overlap, err := herd.DietOverlap(diet(one), diet(other))
			if err != nil {
				continue // print has no diet of it
			}
			if each, err := herd.CoGrazing(1, overlap); err == nil {
				all[[2]herd.Kind{one, other}] = sharedDiet{overlap, each}
			}
		}
	}
	return all
})

// diet gives what a kind eats where it can choose, scaled to a whole: the middles
// of the printed spans add up to a little more or less.
func diet(kind herd.Kind) []units.Fraction {
	var shares []units.Fraction
	sum := units.Fraction(0)
	for _, plants := range []herd.Plants{herd.PlantsGrass, herd.PlantsForbs, herd.PlantsBrowse} {
		share, err := herd.DietShare(kind, plants, units.Whole/2)
		if err != nil {
			return nil
		}
		shares = append(shares, share)
		sum += share
	}
	for i := range shares {
		shares[i] /= sum
	}
	return shares
}

// legumeNotes names land whose row holds legume of a share nobody has told, since the
// bloat caution goes by that share.
func legumeNotes(r *ready) []Note {
	untold := r.landWhere(func(i int, l *Land) bool {
		return r.lands[i].pasture.HoldsLegume && l.Legume == nil && r.farm.rotationOf(l.ID) != nil
	})
	if untold == nil || r.groupsOf(herd.Kind.Ruminant) == nil {
		return nil
	}
	return []Note{note("legume-not-told", Values{"land": untold, "limit": 0.5},
		"%s hold legume, and how much is not in the document: over half of the stand the risk of bloat rises [UKY-BLOAT]. Look, and set legume.", english.Listed(untold))}
}

// landWhere gives the ids of land for which a test holds.
func (r *ready) landWhere(is func(int, *Land) bool) (ids []string) {
	for i := range r.farm.Land {
		if l := &r.farm.Land[i]; is(i, l) {
			ids = append(ids, l.ID)
		}
	}
	return ids
}

// rowNotes names the figures of the rows that have no published source, once for all
// land of a row.
func rowNotes(r *ready) (all []Note) {
	for i := range r.farm.Land {
		l, row := &r.farm.Land[i], r.lands[i].pasture
		same := func(other Land) bool { return other.Pasture.Row == nil && other.Pasture.Name == row.Name }
		if l.Pasture.Row != nil || slices.ContainsFunc(r.farm.Land[:i], same) {
			continue
		}
		if l.Ceiling == 0 {
			all = append(all, note("ceiling-ours", Values{"pasture": row.Name, "ceiling_m": float64(row.Ceiling)},
				"Growth of %s ends at %s, a figure of ours: none is published. Give a ceiling of your own if you have measured one.", row.Name, r.text(row.Ceiling)))
		}
		if sum := rows.SumShares(row); sum < 1-1e-9 || sum > 1+1e-9 {
			all = append(all, note("shares-as-printed", Values{"pasture": row.Name, "sum": float64(sum)},
				"The monthly shares of %s sum to %s and are used as they stand, so the year grows that much of its yield.", row.Name, r.text(sum)))
		}
	}
	for i := range r.farm.Groups {
		if g, class := &r.farm.Groups[i], &r.herd[i].Class; class.WeightMark == "M" && g.Weight == 0 {
			all = append(all, note("weight-from-memory", Values{"group": g.ID, "weight_kg": float64(class.Weight)},
				"The weight of %s, %s each, is from memory, not from print: weigh them and put it in the document.", g.ID, r.text(class.Weight)))
		}
	}
	return all
}

// ownNotes says that growth is multiplied by a factor of the user's.
func ownNotes(r *ready) []Note {
	own := r.farm.OwnFactor
	if own == nil {
		return nil
	}
	return []Note{note("own-factor", Values{"growth": float64(own.Growth), "why": own.Why},
		"Growth is multiplied by %s, a factor of your own (%s). Print contradicts itself on gains from rotation and from mixing stock, so none is built in.", r.text(own.Growth), own.Why)}
}
