package farm

import (
	"fmt"
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

// remarkRoom tells of pigs and birds that are more to the acre of the land they go
// over than print keeps on it.
func (s *setting) remarkRoom() {
	for i := range s.farm.Rotations {
		area := units.Area(0)
		for _, id := range s.farm.Rotations[i].Land {
			area += s.farm.Land[s.farm.landIndex(id)].area()
		}
		for _, m := range s.farm.Rotations[i].Groups {
			s.remarkRoomOf(m.Group, area)
		}
	}
}

func (s *setting) remarkRoomOf(group string, area units.Area) {
	g := s.farm.groupIndex(group)
	at := slices.IndexFunc(keptOns, func(k keptOn) bool { return k.class == s.herd[g].Class.Name })
	if at < 0 {
		return
	}
	k := &keptOns[at]
	has, most := units.HeadRate(s.herd[g].Head/float64(area)), k.rate()
	if has <= most {
		return
	}
	s.notes.add("room", []value{word("group", group), number("head_per_m2", has), number("printed_per_m2", most)},
		"%s are %s on the land they go over; print has %s %s [%s]. Watch the ground, rest what is bare, and keep to the local rules.", said(group), s.said(has), s.said(most), said(k.why), said(k.source))
}

// remarkGeese tells where geese that go first come to grass taller than they want.
func (s *setting) remarkGeese(plan *Plan) {
	for i := range s.farm.Rotations {
		leader := s.farm.Rotations[i].Groups[0].Group
		if s.kindOf(leader) != herd.Geese {
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
			s.notes.add("tall-for-geese", []value{word("group", leader), whole("times", times), number("tallest_m", tallest), number("limit_m", tallForGeese)},
				"%s come %s to grass above %s, up to %s; geese want it shorter than that [CELTIC-GEESE]. Let other stock go first, or mow.", said(leader), said(often(times)), s.said(tallForGeese), s.said(tallest))
		}
	}
}

// often tells a number of times in words.
func often(times int) string {
	if times == 1 {
		return "once"
	}
	return fmt.Sprintf("%d times", times)
}

// remarkBirds tells that the days between ruminants and birds are custom.
func (s *setting) remarkBirds() {
	for i := range s.farm.Rotations {
		members := s.farm.Rotations[i].Groups
		for j := 1; j < len(members); j++ {
			before, behind := members[j-1], members[j]
			if on := behind.Behind - before.Behind; on > 0 && s.kindOf(behind.Group).Bird() && s.kindOf(before.Group).Ruminant() {
				s.notes.add("bird-interval", []value{whole("rotation", i), word("before", before.Group), word("birds", behind.Group), number("days", on)},
					"%s come %s behind %s. The interval is custom, meant for fly larvae in the dung: the one controlled trial found no effect on flies [PHILLIPS-BROILERS].", said(behind.Group), s.said(on), said(before.Group))
			}
		}
	}
}
