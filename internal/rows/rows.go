package rows

import (
	"sync"

	"example.org/soum/forage"
	"example.org/soum/herd"
	"example.org/soum/units"
)

// What a document may leave out.
const (
	productivity = forage.ProductivityMedium
	hayDryMatter = 90 * units.Percent // [NEB-AUM]: air dry is 90 % dry matter
)

// pastures and classes hold the printed rows by name, which a plan asks for many
// times: packages forage and herd give a copy each time. Nobody changes these.
var (
	pastures = sync.OnceValue(func() map[string]*forage.Pasture {
		return byName(forage.Pastures(), func(p *forage.Pasture) string { return p.Name })
	})
	classes = sync.OnceValue(func() map[string]*herd.Class {
		return byName(herd.Classes(), func(c *herd.Class) string { return c.Name })
	})
)

func byName[T any](rows []T, name func(*T) string) map[string]*T {
	all := make(map[string]*T, len(rows))
	for i := range rows {
		all[name(&rows[i])] = &rows[i]
	}
	return all
}

// Pasture gives the row that is named or written out. It is not to be changed.
func Pasture(of *forage.PastureRow) (*forage.Pasture, error) {
	if of.Row != nil {
		return of.Row, nil
	}
	if row := pastures()[of.Name]; row != nil {
		return row, nil
	}
	_, err := forage.PastureByName(of.Name)
	return &forage.Pasture{}, err
}

// Class gives the row that is named or written out. It is not to be changed.
func Class(of *herd.ClassRow) (*herd.Class, error) {
	if of.Row != nil {
		return grazing(of.Row), nil
	}
	if row := classes()[of.Name]; row != nil {
		return row, nil
	}
	_, err := herd.ClassByName(of.Name)
	return &herd.Class{}, err
}

// grazing gives a row of the user's own, which takes all that it eats from pasture where
// it does not say how much.
func grazing(row *herd.Class) *herd.Class {
	if row.Pasture != (units.Span[units.Fraction]{}) {
		return row
	}
	all := *row
	all.Pasture = units.Span[units.Fraction]{Low: units.Whole, High: units.Whole}
	return &all
}

// Yield gives the dry matter that land grows in a normal year: the document's own, or
// that of the row at a productivity, medium where the document names none.
func Yield(row *forage.Pasture, own units.Yield, at forage.Productivity) (units.Yield, error) {
	if own != 0 {
		return own, nil
	}
	if at == 0 {
		at = productivity
	}
	return row.Yield(at)
}

// HayDryMatter gives the dry matter of hay: the document's, or that of air-dry feed.
func HayDryMatter(own units.Fraction) units.Fraction {
	if own == 0 {
		return hayDryMatter
	}
	return own
}
