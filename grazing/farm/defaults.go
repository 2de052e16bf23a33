package farm

import (
	"slices"

	"example.org/soum/forage"
	"example.org/soum/herd"
	"example.org/soum/internal/rows"
	"example.org/soum/units"
)

// What a document may leave out.
const (
	defaultCondition = forage.Good
	longestStay      = 5               // days: after 4 to 5 regrowth is bitten [PROG-LANE]
	shortestOfLarge  = 4 * units.Metre // ours: room for cattle, horses and donkeys to stand and turn
	shortestOfSmall  = 2 * units.Metre // ours: for sheep, goats, camelids, deer and pigs
	shortestOfAll    = 1 * units.Metre // ours: nobody sets a fence for less
)

func (f *Farm) landIndex(id string) int {
	for i := range f.Land {
		if f.Land[i].ID == id {
			return i
		}
	}
	return -1
}

func (f *Farm) groupIndex(id string) int {
	for i := range f.Groups {
		if f.Groups[i].ID == id {
			return i
		}
	}
	return -1
}

func (l *Land) isPaddock() bool { return l.Area != 0 }

// length gives a lane's length; a paddock is a lane of length one.
func (l *Land) length() units.Length {
	if l.isPaddock() {
		return units.Metre
	}
	return l.Length
}

// area gives the whole area of the land.
func (l *Land) area() units.Area {
	if l.isPaddock() {
		return l.Area
	}
	return units.Area(l.Width * l.Length)
}

func (l *Land) pasture() (*forage.Pasture, error) { return rows.Pasture(&l.Pasture) }

func (l *Land) condition() forage.Condition {
	if l.Condition == 0 {
		return defaultCondition
	}
	return l.Condition
}

func (l *Land) ceiling(p *forage.Pasture) units.Height {
	if l.Ceiling != 0 {
		return l.Ceiling
	}
	return p.Ceiling
}

// density gives the land's density at an end of the printed span.
func (l *Land) density(p *forage.Pasture, end units.End) (units.Density, error) {
	if l.Density != 0 {
		return l.Density, nil
	}
	span, err := p.Density(l.condition())
	return span.At(end), err
}

// yield gives the dry matter the land grows in a normal year.
func (l *Land) yield(p *forage.Pasture) (units.Yield, error) {
	return rows.Yield(p, l.Yield, l.Productivity)
}

func (g *Group) class() (*herd.Class, error) { return rows.Class(&g.Class) }

func (r *Rotation) turnIn(p *forage.Pasture) units.Height {
	if r != nil && r.TurnIn != 0 {
		return r.TurnIn
	}
	return p.TurnIn.At(units.Middle)
}

// least gives T0, the height from which land is grazed where nothing stands at the turn-in
// height: the document's, else the printed low end where the turn-in is above it, else
// three quarters of the way from leave to turn-in (ours); never less than a quarter of
// the way, a bite worth a fence (ours).
func (r *Rotation) least(p *forage.Pasture) units.Height {
	aim, leave := r.turnIn(p), r.leave(p)
	least := leave + (aim-leave)*3/4
	switch {
	case r != nil && r.LeastTurnIn != 0:
		least = r.LeastTurnIn
	case p.TurnIn.Low < aim:
		least = p.TurnIn.Low
	}
	return max(least, leave+(aim-leave)/4)
}

func (r *Rotation) leave(p *forage.Pasture) units.Height {
	if r != nil && r.Leave != 0 {
		return r.Leave
	}
	return p.Leave.At(units.Middle)
}

// rotationOf gives the rotation that land is in, nil where it is in none.
func (f *Farm) rotationOf(id string) *Rotation {
	for i := range f.Rotations {
		if slices.Contains(f.Rotations[i].Land, id) {
			return &f.Rotations[i]
		}
	}
	return nil
}
