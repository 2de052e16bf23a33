package farm

import (
	"example.org/soum/internal/english"
	"math"
	"slices"
	"sync"

	"example.org/soum/grazing"
	"example.org/soum/herd"
	"example.org/soum/units"
)

// tallForGeese is the height under which geese want their grass. [CELTIC-GEESE]
const tallForGeese = 4 * units.HeightInch

// keptOn is the pasture that print gives a class, of which the manure of a season
// or what the animals root up sets the limit.
type keptOn struct {
	class, why, source string
	rate               func() units.HeadRate
}

var keptOns = []keptOn{
	{"laying-hen", "by an old rule of manure; the nitrogen limit of the EU's organic rule is 93", "PLAMONDON-HENS, EU-889-2008", usedSpace("laying-hen", "old-rule")},
	{"goose", "which grass feeds at the most", "MISSOURI-GOSLING", usedSpace("goose", "missouri")},
	{"sow", "on good pasture for a season; three quarters of the ground should stay covered", "UMN-SOW, SOW-GROUND-COVER", roomOf("sow")},
	{"growing-pig", "on good pasture for a season, over 100 lb; three quarters of the ground should stay covered", "UMN-SOW, SOW-GROUND-COVER", roomOf("pig-over-100-lb")},
}

// usedSpace gives the most animals on pasture by a row of Space.
func usedSpace(stock, by string) func() units.HeadRate {
	return sync.OnceValue(func() units.HeadRate {
		each, _ := grazing.Space(stock, grazing.SpaceUsed, by, 1, units.Low)
		return units.HeadRate(1 / each)
	})
}

// roomOf gives the most animals on pasture by the first row of herd.Rooms.
func roomOf(class string) func() units.HeadRate {
	return sync.OnceValue(func() units.HeadRate {
		rooms := herd.Rooms()
		return rooms[slices.IndexFunc(rooms, func(r herd.Room) bool { return r.Class == class })].Rate.High
	})
}

// keptOnOf gives the row of a class; nil where print has none.
func keptOnOf(class string) *keptOn {
	at := slices.IndexFunc(keptOns, func(k keptOn) bool { return k.class == class })
	if at < 0 {
		return nil
	}
	return &keptOns[at]
}

// areaOf gives the land of a rotation.
func (r *ready) areaOf(rotation int) (area units.Area) {
	for _, land := range r.input.Rotations[rotation].Lands {
		area += r.farm.Land[land].area()
	}
	return area
}

// printedRoom gives the most head of a group that print keeps on the land of its rotation;
// no end where it has no row.
func (r *ready) printedRoom(group, rotation int) float64 {
	k := keptOnOf(r.herd[group].Class.Name)
	if k == nil || rotation < 0 {
		return math.Inf(1)
	}
	return float64(k.rate()) * float64(r.areaOf(rotation))
}

// roomNotes tells of pigs and birds that are more to the acre of the land they go over
// than print keeps on it.
func roomNotes(r *ready) (all []Note) {
	for i := range r.farm.Rotations {
		for _, m := range r.input.Rotations[i].Members {
			k := keptOnOf(r.herd[m.Group].Class.Name)
			if k == nil {
				continue
			}
			id := r.farm.Groups[m.Group].ID
			if has, most := units.HeadRate(r.herd[m.Group].Head/float64(r.areaOf(i))), k.rate(); has > most {
				all = append(all, note("room", Values{"group": id, "head_per_m2": float64(has), "printed_per_m2": float64(most)},
					"%s are %s on the land they go over; print has %s %s [%s]. Watch the ground, rest what is bare, and keep to the local rules.", id, r.text(has), r.text(most), k.why, k.source))
			}
		}
	}
	return all
}

// gooseNotes tells where geese that go first come to grass taller than they want.
func gooseNotes(r *ready, plan *Plan) (all []Note) {
	for i := range r.farm.Rotations {
		leader := r.farm.Rotations[i].Groups[0].Group
		if r.kindOf(leader) != herd.Geese {
			continue
		}
		tallest, times := units.Height(0), 0
		for m := range plan.Moves {
			if move := &plan.Moves[m]; move.Rotation == i && move.Height > tallForGeese {
				tallest = max(tallest, move.Height)
				times++
			}
		}
		if times > 0 {
			all = append(all, note("tall-for-geese", Values{"group": leader, "times": times, "tallest_m": float64(tallest), "limit_m": float64(tallForGeese)},
				"%s come %s to grass above %s, up to %s; geese want it shorter than that [CELTIC-GEESE]. Let other stock go first, or mow.", leader, english.Often(times), r.text(tallForGeese), r.text(tallest)))
		}
	}
	return all
}

// birdNotes tells that the days between ruminants and birds are custom.
func birdNotes(r *ready) (all []Note) {
	for i := range r.farm.Rotations {
		members := r.farm.Rotations[i].Groups
		for j := 1; j < len(members); j++ {
			before, behind := members[j-1], members[j]
			if on := behind.Behind - before.Behind; on > 0 && r.kindOf(behind.Group).Bird() && r.kindOf(before.Group).Ruminant() {
				all = append(all, note("bird-interval", Values{"rotation": i, "before": before.Group, "birds": behind.Group, "days": float64(on)},
					"%s come %s behind %s. The interval is custom, meant for fly larvae in the dung: the one controlled trial found no effect on flies [PHILLIPS-BROILERS].", behind.Group, r.text(on), before.Group))
			}
		}
	}
	return all
}
