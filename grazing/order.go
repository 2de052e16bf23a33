package grazing

import (
	"cmp"
	"slices"

	"example.org/soum/herd"
	"example.org/soum/units"
)

// Role is a group's part in a rotation.
type Role int

// The roles.
const (
	RoleLead    Role = iota + 1 // the best of the grass, first
	RoleFollow                  // behind the leader
	RoleCleanUp                 // what the others leave: pigs and birds
)

// Place is a class's place in the order of grazing.
type Place struct {
	Class  string     `json:"class"`       // the row's name
	Role   Role       `json:"role"`        // its part
	Behind units.Days `json:"behind_days"` // the leader, at the least
	Why    string     `json:"why"`         // in words
	Source string     `json:"source"`      // keys of SOURCES.md, or that it is common practice
}

// Order gives the order in which classes of stock graze one after the other:
// the highest need leads, other ruminants and horses follow a day behind one
// another, pigs come behind them, birds last, three days behind the ruminants.
//
// Method: sorted by the need of the class row, those of one need as given; a
// day between groups, and for birds three days behind the group before them
// where that is a ruminant or a horse
//
// Errors: a *units.ParseError that lists the rows, where none has the name
//
// Note: the order is common practice without an agreed source; print has the
// part that those of higher need go first [MISSOURI-FSRC-1994]. Calves ahead of
// their dams gained half a pound a day more in one report
// [MISSOURI-LEADER-FOLLOWER], and a dairy trial found no gain in the mean of both
// groups [MAYNE-LEADER-FOLLOWER]. Three days for birds is custom, meant for fly
// larvae; the one controlled trial found no effect [PHILLIPS-BROILERS]. No source
// found has the share of the grass that leaders take and followers find: a plan gives
// each group what it wants, in turn, and its visits tell how the ground was shared.
//
// Check: TestOrder
//
// Source: MISSOURI-FSRC-1994 higher need first; the rest is common practice
func Order(classes []string) ([]Place, error) {
	var rows []herd.Class
	for _, name := range classes {
		row, err := herd.ClassByName(name)
		if err != nil {
			return nil, err
		}
		rows = append(rows, row)
	}
	slices.SortStableFunc(rows, func(a, b herd.Class) int { return cmp.Compare(a.Need, b.Need) })
	var places []Place
	behind := units.Days(0)
	for i, row := range rows {
		if i > 0 {
			behind += interval(rows[i-1].Kind, row.Kind)
		}
		places = append(places, place(row, i, behind))
	}
	return places, nil
}

// birdsBehind is custom: the days birds come behind cattle, sheep or goats.
const birdsBehind = 3 * units.Day

// interval gives the days between two groups.
func interval(before, after herd.Kind) units.Days {
	if after.Bird() && !before.Bird() && before != herd.Pigs {
		return birdsBehind
	}
	return units.Day
}

func place(row herd.Class, i int, behind units.Days) Place {
	p := Place{Class: row.Name, Behind: behind, Role: RoleFollow, Source: "common practice, without an agreed source"}
	switch {
	case row.Kind.Bird():
		p.Role, p.Why = RoleCleanUp, "birds come last: they scratch the dung apart and take what the others leave; the days between are custom, meant for fly larvae, and the one controlled trial found no effect [PHILLIPS-BROILERS]"
	case row.Kind == herd.Pigs:
		p.Role, p.Why = RoleCleanUp, "pigs come behind the ruminants: they root up what is still to be grazed"
	case i == 0:
		p.Role, p.Why, p.Source = RoleLead, "the highest need has the best of the grass", "MISSOURI-FSRC-1994"
	default:
		p.Why, p.Source = "a lower need takes what the leader leaves", "MISSOURI-FSRC-1994"
	}
	return p
}

// Conflict is two kinds of stock of which one must not come on the ground of
// the other.
type Conflict struct {
	Before herd.Kind `json:"before"` // was on the ground
	After  herd.Kind `json:"after"`  // must not follow
	Code   string    `json:"code"`   // of the caution
	Why    string    `json:"why"`    // in words
	Source string    `json:"source"` // keys of SOURCES.md
}

// conflicts is the table of what must not follow what.
var conflicts = []Conflict{
	{herd.Chickens, herd.Turkeys, "chickens and turkeys", "chickens carry blackhead, which kills turkeys, and its germ lives for years in worm eggs and earthworms", "GUELPH-BLACKHEAD, OKLAHOMA-BLACKHEAD"},
	{herd.Pigs, herd.Turkeys, "birds after pigs", "pigs carry erysipelas, which kills turkeys, and it stays in the soil for years", "WASHINGTON-756"},
	{herd.Pigs, herd.Chickens, "birds after pigs", "pigs carry erysipelas, which birds take, and it stays in the soil for years", "WASHINGTON-756"},
	{herd.Sheep, herd.Turkeys, "birds after pigs", "sheep carry erysipelas, which kills turkeys, and it stays in the soil for years", "WASHINGTON-756"},
	{herd.Geese, herd.Chickens, "water birds", "water birds can carry avian influenza unseen", "MARYLAND-BIRDS, APHIS-WILD-BIRDS"},
	{herd.Ducks, herd.Chickens, "water birds", "water birds can carry avian influenza unseen", "MARYLAND-BIRDS, APHIS-WILD-BIRDS"},
	{herd.Geese, herd.Turkeys, "water birds", "water birds can carry avian influenza unseen", "MARYLAND-BIRDS, APHIS-WILD-BIRDS"},
	{herd.Ducks, herd.Turkeys, "water birds", "water birds can carry avian influenza unseen", "MARYLAND-BIRDS, APHIS-WILD-BIRDS"},
}

// Conflicts gives the table of what must not follow what on the same ground. A
// pair that is not in it is no promise of safety.
//
// Check: TestConflicts
//
// Source: ours: a collection, each pair with its source
func Conflicts() []Conflict { return slices.Clone(conflicts) }
