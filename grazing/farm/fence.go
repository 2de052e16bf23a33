package farm

import (
	"math"
	"slices"

	"example.org/soum/grazing"
	"example.org/soum/units"
)

// fence gives the fence of the farm.
func fence(f *Farm) (need FenceNeed, err error) {
	for i := range f.Rotations {
		r := &f.Rotations[i]
		widest := units.Length(0)
		for _, id := range r.Land {
			widest = max(widest, f.Land[f.landIndex(id)].Width)
		}
		if widest == 0 {
			continue // paddocks only: nothing is moved
		}
		strips := (r.longestLag() + 1) * max(1, r.MovesADay)
		cross, err := grazing.CrossWires(widest, float64(strips))
		if err != nil {
			return need, err
		}
		need.Strips += strips
		need.Cross += cross
	}
	if roll := f.Fence.Roll; roll > 0 {
		need.Rolls = int(math.Ceil(float64(need.Cross/roll) - 1e-9))
	}
	if need.Sides, err = f.sides(); err != nil {
		return need, err
	}
	need.Assumed = slices.ContainsFunc(f.Land, func(l Land) bool { return l.isPaddock() })
	if f.Fence.Dead {
		return need, nil
	}
	if need.Energizer, err = grazing.EnergizerOutput(need.Sides + need.Cross); err != nil {
		return need, err
	}
	need.Rods, err = grazing.GroundRod(need.Energizer, grazing.RodUtility)
	return need, err
}

// sides adds up the sides of lanes and paddocks. Adjoining lanes of one size share
// their sides.
func (f *Farm) sides() (all units.Length, err error) {
	for i := range f.Land {
		l := &f.Land[i]
		sides, err := grazing.FenceLength(l.Area, 1)
		if !l.isPaddock() {
			alike := func(other Land) bool {
				return f.Fence.Adjoining && other.Width == l.Width && other.Length == l.Length
			}
			if slices.ContainsFunc(f.Land[:i], alike) {
				continue // counted with the first of its size
			}
			lanes := 1
			for _, other := range f.Land[i+1:] {
				if alike(other) {
					lanes++
				}
			}
			sides, err = grazing.LaneSides(l.Length, l.Width, float64(lanes))
		}
		if err != nil {
			return 0, err
		}
		all += sides
	}
	return all, nil
}
