package farm_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/grazing/farm"
	"example.org/soum/units"
)

// anew makes a farm on a later day, written and read.
func anew(t *testing.T, next *farm.Farm, err error) *farm.Farm {
	t.Helper()
	require.NoError(t, err)
	written, err := next.JSON(units.Metric)
	require.NoError(t, err)
	read, err := farm.Read(written)
	require.NoError(t, err)
	return read
}

// goesOn holds a plan made anew against the one that was followed up to then: no move
// differs by more than 5 cm, no mass by more than a millionth.
func goesOn(t *testing.T, once, again *farm.Plan, name string, seed int) {
	t.Helper()
	want := slices.DeleteFunc(slices.Clone(once.Moves), func(m farm.Move) bool { return m.Date < again.Today })
	require.Len(t, again.Moves, len(want), "%s, seed %d", name, seed)
	for i, w := range want {
		g := again.Moves[i]
		require.Equal(t, [2]any{w.Land, w.Date}, [2]any{g.Land, g.Date}, "%s, seed %d", name, seed)
		require.InDelta(t, w.From.Metres(), g.From.Metres(), 0.05, "%s, seed %d", name, seed)
		require.InDelta(t, w.To.Metres(), g.To.Metres(), 0.05, "%s, seed %d", name, seed)
	}
	over := len(once.Days) - len(again.Days)
	for i, d := range again.Days {
		for land, mass := range d.Lands {
			require.InEpsilon(t, float64(once.Days[over+i].Lands[land]), float64(mass), 1e-6, "%s, seed %d, %s", name, seed, d.Date)
		}
		require.InDelta(t, float64(once.Days[over+i].Fed), float64(d.Fed), 1e-6*(1+float64(d.Wanted)), "%s, seed %d, %s", name, seed, d.Date)
	}
}

// traits tells what of the season a farm that is followed to a day has had.
func traits(f *farm.Farm, p *farm.Plan, today units.Date) (all []string) {
	add := func(name string, is bool) {
		if is {
			all = append(all, name)
		}
	}
	before := func(is func(*farm.Move) bool) bool {
		return slices.ContainsFunc(p.Moves, func(m farm.Move) bool { return m.Date < today && is(&m) })
	}
	add("followers", slices.ContainsFunc(f.Rotations, func(r farm.Rotation) bool { return r.Groups[len(r.Groups)-1].Behind > 0 }))
	add("paddocks", before(func(m *farm.Move) bool { return m.Length == 0 && m.Stay > 1 }))
	add("strips of several days", before(func(m *farm.Move) bool { return m.Length > 0 && m.Stay > 1 }))
	add("births", len(p.Births) > 0)
	add("cuts", slices.ContainsFunc(f.Cuts, func(c farm.Cut) bool { return c.Date < today }))
	add("two rotations", len(f.Rotations) > 1)
	add("stays under way", slices.ContainsFunc(p.Moves, func(m farm.Move) bool {
		return m.Date < today && m.Length == 0 && m.Date.Add(int(m.Stay)) > today
	}))
	return all
}

// TestDrawnFarmsGoOn follows the plan of each drawn farm for 1 to 80 days, writes the farm
// of that morning down, reads it and plans anew.
func TestDrawnFarmsGoOn(t *testing.T) {
	count := map[string]int{}
	for seed := 1; seed <= farm.DrawnFarms; seed++ {
		f := farm.Drawn(t, seed)
		once, err := f.Plan()
		require.NoError(t, err)
		today := f.Today.Add(1 + seed*37%min(80, len(once.Days)-1))
		for _, trait := range traits(f, once, today) {
			count[trait]++
		}
		next, err := f.Followed(today)
		again, err := anew(t, next, err).Plan()
		require.NoError(t, err)
		goesOn(t, once, again, "followed", seed)
		next, err = f.CarryOn(today, logOf(once, today, seed%2 == 0), "")
		logged, err := anew(t, next, err).Plan()
		require.NoError(t, err)
		goesOn(t, once, logged, "logged", seed)
	}
	assert.Len(t, count, 7)
	for trait, farms := range count {
		assert.GreaterOrEqual(t, farms, 10, trait)
	}
	t.Log(count)
}
