package farm

import (
	"example.org/soum/internal/english"
	"sync"

	"example.org/soum/herd"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// passes puts the plan's passes beside those of the rainfall rule.
func passes(r *ready, moves []Move, met *problems) (p Passes) {
	inRotation, opened := units.Area(0), units.Area(0)
	for i := range r.farm.Land {
		if r.farm.rotationOf(r.farm.Land[i].ID) != nil {
			inRotation += r.farm.Land[i].area()
		}
	}
	for i := range moves {
		opened += moves[i].Area
	}
	p.Planned, p.Rain = float64(opened/inRotation), r.farm.Rain.normalYear()
	for _, m := range r.record {
		if m.Year == r.farm.Today.Year() {
			p.ThisYear += m.Rain
			p.Months++
		}
	}
	if p.Rain > 0 {
		var err error
		p.Rule, err = rainfall.Passes(p.Rain)
		met.keep(err, r.start, r.input.Days)
	}
	return p
}

// water gives what each group drinks on the day it is most.
func water(r *ready) []Drink {
	all := make([]Drink, len(r.herd))
	for g := range r.herd {
		most, on := &all[g], 0
		most.Group = r.farm.Groups[g].ID
		most.Known = r.drink(g, units.High, func(from, _ int, drink units.WaterRate) {
			if drink > most.High {
				most.High, on = drink, from
			}
		})
		r.drink(g, units.Low, func(from, to int, drink units.WaterRate) {
			if from <= on && on < to && most.High > 0 {
				most.Low = drink
			}
		})
	}
	return all
}

// left is one of the four figures of Manure.
type left struct {
	what herd.Excreta
	sum  func(*Manure) *units.Mass
}

var lefts = []left{
	{herd.ExcretaManure, func(m *Manure) *units.Mass { return &m.Mass }},
	{herd.ExcretaNitrogen, func(m *Manure) *units.Mass { return &m.Nitrogen }},
	{herd.ExcretaPhosphate, func(m *Manure) *units.Mass { return &m.Phosphate }},
	{herd.ExcretaPotash, func(m *Manure) *units.Mass { return &m.Potash }},
}

// nutrientOf names what is left as the manure table does.
var nutrientOf = map[herd.Excreta]herd.Nutrient{
	herd.ExcretaNitrogen: herd.Nitrogen, herd.ExcretaPhosphate: herd.Phosphate, herd.ExcretaPotash: herd.Potash,
}

// manure gives what each group leaves on the pasture.
func manure(r *ready, met *problems) []Manure {
	all := make([]Manure, len(r.herd))
	for g := range r.herd {
		m, class := &all[g], &r.herd[g].Class
		m.Group, m.Missing = r.farm.Groups[g].ID, []herd.Excreta{}
		if m.Row = class.Excretion; m.Row != "" {
			m.Row += ", " + class.ExcretionBy.String()
		} else if class.Manure > herd.ManureUnknown {
			m.Row = class.Manure.String()
		}
		for _, l := range lefts {
			r.addManure(l, m, g, met)
		}
		m.Known = len(m.Missing) < len(lefts)
	}
	return all
}

// addManure sums what a group leaves over the season, stretch of like days by
// stretch.
func (r *ready) addManure(l left, m *Manure, group int, met *problems) {
	for _, sp := range r.spells[group] {
		from := max(sp.from, r.first)
		if from >= sp.to {
			continue
		}
		mass, known, err := leftBy(&r.herd[group].Class, l.what, sp.state, units.Days(sp.to-from))
		met.keep(err, r.date(from), sp.to-from)
		if !known {
			m.Missing = append(m.Missing, l.what)
			return
		}
		*l.sum(m) += mass
	}
}

// leftBy gives what animals in one state leave over a time, and whether print has
// a figure.
func leftBy(class *herd.Class, what herd.Excreta, state herd.State, days units.Days) (units.Mass, bool, error) {
	if class.Manure > herd.ManureUnknown {
		weight := units.LiveWeight(state.Head) * state.Weight
		if what == herd.ExcretaManure {
			mass, err := herd.ManureMass(class.Manure, weight, days)
			return mass, true, err
		}
		mass, err := herd.NutrientMass(class.Manure, nutrientOf[what], herd.Excreted, weight, days)
		return mass, true, err
	}
	if !excreted()[excretion{class.Excretion, class.ExcretionBy, what}] {
		return 0, false, nil
	}
	mass, err := herd.Excretion(class.Excretion, class.ExcretionBy, what, state.Head, state.Weight, days)
	return mass, true, err
}

// excretion is a figure of what animals leave.
type excretion struct {
	animal string
	by     herd.ExcretionSource
	what   herd.Excreta
}

// excreted tells which figures print has of what animals leave, so that nobody needs
// to be refused one to know.
var excreted = sync.OnceValue(func() map[excretion]bool {
	all := map[excretion]bool{}
	for _, row := range herd.ExcretionRows() {
		for _, l := range lefts {
			if _, err := herd.Excretion(row.Animal, row.By, l.what, 1, units.LivePound, 1); err == nil {
				all[excretion{row.Animal, row.By, l.what}] = true
			}
		}
	}
	return all
})

// unknownNotes names what print has no figure for.
func unknownNotes(plan *Plan) (all []Note) {
	for _, w := range plan.Water {
		if !w.Known {
			all = append(all, note("water-not-known", Values{"group": w.Group}, "No printed figure for the water of %s was found: they need clean water at all times all the same.", w.Group))
		}
	}
	for _, m := range plan.Manure {
		switch {
		case !m.Known:
			all = append(all, note("manure-not-known", Values{"group": m.Group}, "The manure tables have no row for %s: they are left out of the sums.", m.Group))
		case len(m.Missing) > 0:
			missing := make([]string, 0, len(m.Missing))
			for _, what := range m.Missing {
				missing = append(missing, what.String())
			}
			all = append(all, note("manure-known-in-part", Values{"group": m.Group, "missing": missing}, "The manure row for %s (%s) does not tell %s.", m.Group, m.Row, english.Listed(missing)))
		}
	}
	return all
}
