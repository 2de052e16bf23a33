package farm

import (
	"cmp"
	"example.org/soum/internal/english"
	"fmt"
	"maps"
	"slices"
	"strconv"

	"example.org/soum/herd"
	"example.org/soum/internal/document"
	"example.org/soum/units"
)

// mothers names the animal of the table of gestations for a kind of stock, where
// there is one such animal.
var mothers = map[herd.Kind]string{
	herd.Cattle: "cow", herd.Sheep: "ewe", herd.Goats: "doe", herd.Pigs: "sow",
	herd.Horses: "mare", herd.Donkeys: "donkey", herd.Rabbits: "rabbit",
}

func (b *Birth) animal(kind herd.Kind) string {
	if b.Animal != "" {
		return b.Animal
	}
	return mothers[kind]
}

// expected gives the days of birth: one day where the document gives it.
func (b *Birth) expected(kind herd.Kind) (herd.ExpectedDates, error) {
	if b.Date != nil {
		return herd.ExpectedDates{Early: *b.Date, Likely: *b.Date, Late: *b.Date}, nil
	}
	return herd.DueDate(*b.Service, b.animal(kind), b.By)
}

// herd gives the birth as package herd reckons with it.
func (b *Birth) herd(kind herd.Kind) (herd.Birth, error) {
	due, err := b.expected(kind)
	birth := herd.Birth{Date: due.Likely, Late: herd.LateGestation}
	if b.Late != nil {
		birth.Late = *b.Late
	}
	if b.Weaned != nil {
		birth.Weaned = *b.Weaned
	}
	return birth, err
}

// herd gives the group as package herd reckons with it, but for the young that
// are weaned into it.
func (g *Group) herd(today units.Date) (herd.Group, error) {
	class, err := g.class()
	group := herd.Group{Class: *class, Head: g.Head, Weight: g.Weight, Stage: g.Stage, Gain: g.Gain, Grown: g.Grown, Since: today}
	if err != nil {
		return group, err
	}
	for i := range g.Births {
		birth, err := g.Births[i].herd(class.Kind)
		if err != nil {
			return group, err
		}
		group.Events = append(group.Events, birth.Events(*class)...)
	}
	for _, e := range g.Events { // after the births: on one day the document's own word wins
		group.Events = append(group.Events, herd.Event{Date: e.Date, Head: e.Head, Weight: e.Weight, Stage: e.Stage})
	}
	return group, nil
}

// weaning is young that go into a group.
type weaning struct {
	date units.Date
	from string
	head float64
}

// weanings gives the young that go into a group, by date.
func (f *Farm) weanings(into string) []weaning {
	var all []weaning
	for i := range f.Groups {
		for _, b := range f.Groups[i].Births {
			if b.Into == into && b.Weaned != nil {
				all = append(all, weaning{*b.Weaned, f.Groups[i].ID, b.Young})
			}
		}
	}
	slices.SortStableFunc(all, func(a, b weaning) int { return cmp.Compare(a.date, b.date) })
	return all
}

// herds gives all groups as package herd reckons with them.
func (f *Farm) herds() ([]herd.Group, error) {
	all := make([]herd.Group, 0, len(f.Groups))
	for i := range f.Groups {
		g := &f.Groups[i]
		group, err := g.herd(f.Today)
		if err != nil {
			return nil, pathed("groups", i, err)
		}
		for _, w := range f.weanings(g.ID) {
			if group.Head == 0 && group.Since == f.Today {
				group.Since = w.date // the weight in the document is theirs when they come
			}
			if g.countedOn(w.date) {
				continue // the document's own number of that day stands, whoever comes
			}
			head := group.On(w.date).Head + w.head
			group.Events = append(group.Events, herd.Event{Date: w.date, Head: &head})
		}
		all = append(all, group)
	}
	return all, nil
}

// countedOn tells whether the document gives the head of a day.
func (g *Group) countedOn(date units.Date) bool {
	return slices.ContainsFunc(g.Events, func(e Event) bool { return e.Date == date && e.Head != nil })
}

// checkBirths holds the births of a group against its class and the other groups.
func (f *Farm) checkBirths(g *Group, class *herd.Class) error {
	for i := range g.Births {
		at := fmt.Sprintf("births[%d]", i)
		if err := g.Births[i].check(at, class); err != nil {
			return err
		}
		if err := f.checkYoung(at, g, &g.Births[i]); err != nil {
			return err
		}
	}
	return nil
}

func (b *Birth) check(at string, class *herd.Class) error {
	_, milk := class.IntakeAt(herd.StageLactating)
	_, late := class.IntakeAt(herd.StageLateGestation)
	_, dry := class.IntakeAt(herd.StageDry)
	switch {
	case milk != nil && late != nil:
		return document.Wrong(at, strconv.Quote(class.Name), "changes nothing: the class has no figures for stock in milk or in late gestation", "a class of your own with such a stage, or no births; it has: "+stagesOf(class))
	case (b.Date == nil) == (b.Service == nil):
		return document.Wrong(at, "", "has both or neither of date and service", "one of them")
	case b.Service == nil && (b.By != 0 || b.Animal != ""):
		return document.Wrong(at, "", "has by or animal without service", "service, or neither")
	case b.Late != nil && !(*b.Late >= 0 && *b.Late <= 366 && *b.Late == units.Days(int(*b.Late))):
		return document.Wrong(at+".late", float64(*b.Late), "is no whole number of days before a birth", "whole days from 0 to 366")
	}
	due, err := b.expected(class.Kind)
	if err != nil {
		return wrongGestation(at, b, class.Kind)
	}
	switch {
	case b.Weaned != nil && *b.Weaned <= due.Likely:
		return document.Wrong(at+".weaned", *b.Weaned, "is not after the birth", "a date after "+due.Likely.String())
	case b.Weaned != nil && dry != nil:
		return document.Wrong(at+".weaned", *b.Weaned, "leads to a stage that the class has no figures for", "a class with a dry stage; it has: "+stagesOf(class))
	}
	return nil
}

// wrongGestation tells what would be right in place of a gestation that is not in
// the table.
func wrongGestation(at string, b *Birth, kind herd.Kind) error {
	animal := b.animal(kind)
	sources, animals := "", map[string]bool{}
	for _, row := range herd.BreedingRows() {
		if row.Figure != herd.Gestation {
			continue
		}
		animals[row.Animal] = true
		if row.Animal == animal {
			sources += fmt.Sprintf("; %s, %s", row.By, row.Mean.In(units.Metric))
		}
	}
	switch {
	case !animals[animal]:
		return document.Wrong(at+".animal", strconv.Quote(animal), "has no printed gestation", "one of: "+english.Listed(slices.Sorted(maps.Keys(animals))))
	case b.By == 0:
		return document.Wrong(at+".by", `""`, "is missing beside service: sources differ", "one of: "+sources[2:])
	}
	return document.Wrong(at+".by", strconv.Quote(b.By.String()), "has no gestation of "+animal, "one of: "+sources[2:])
}

func (f *Farm) checkYoung(at string, g *Group, b *Birth) error {
	switch {
	case b.Into == "" && b.Young == 0:
		return nil
	case b.Weaned == nil || b.Into == "" || b.Young == 0:
		return document.Wrong(at, "", "tells only a part of where the young go", "weaned, young and into together, or neither young nor into")
	case !(b.Young > 0 && b.Young <= 1e6):
		return document.Wrong(at+".young", b.Young, "is negative or beyond counting", "the number of young weaned, above 0")
	case b.Into == g.ID || f.groupIndex(b.Into) < 0:
		return document.Wrong(at+".into", strconv.Quote(b.Into), "is not the id of another group", "the id of another group")
	}
	return nil
}
