package grazing_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/grazing"
	"example.org/soum/herd"
	"example.org/soum/units"
)

// TestOrder puts a mixed farm in order: the cow in milk first, beef cattle and
// sheep next, pigs behind the ruminants, birds last (common practice, without
// an agreed source), whatever order they are given in.
func TestOrder(t *testing.T) {
	places, err := grazing.Order([]string{"laying-hen", "sow", "ewe", "growing-cattle", "dairy-cow"})
	require.NoError(t, err)
	var names []string
	for _, p := range places {
		names = append(names, p.Class)
		assert.NotEmpty(t, p.Why)
		assert.NotEmpty(t, p.Source)
	}
	assert.Equal(t, []string{"dairy-cow", "growing-cattle", "ewe", "sow", "laying-hen"}, names)
	assert.Equal(t, grazing.RoleLead, places[0].Role)
	assert.Equal(t, grazing.RoleFollow, places[2].Role)
	assert.Equal(t, grazing.RoleCleanUp, places[3].Role)
	assert.Equal(t, grazing.RoleCleanUp, places[4].Role)
	// a day between groups
	assert.Equal(t, []units.Days{0, 1, 2, 3, 4}, []units.Days{places[0].Behind, places[1].Behind, places[2].Behind, places[3].Behind, places[4].Behind})

	// birds three days behind ruminants
	places, err = grazing.Order([]string{"laying-hen", "dairy-cow"})
	require.NoError(t, err)
	assert.Equal(t, 3*units.Day, places[1].Behind)

	_, err = grazing.Order([]string{"dragon"})
	require.ErrorContains(t, err, "dairy-cow")
	none, err := grazing.Order(nil)
	require.NoError(t, err)
	assert.Empty(t, none)
}

// TestConflicts: turkeys not after chickens, no birds after pigs, none after
// water birds; each with its reason and source, and a copy is handed out.
func TestConflicts(t *testing.T) {
	has := func(before, after herd.Kind) bool {
		for _, c := range grazing.Conflicts() {
			if c.Before == before && c.After == after {
				return c.Why != "" && c.Source != "" && c.Code != ""
			}
		}
		return false
	}
	assert.True(t, has(herd.Chickens, herd.Turkeys))
	assert.True(t, has(herd.Pigs, herd.Turkeys))
	assert.True(t, has(herd.Pigs, herd.Chickens))
	assert.True(t, has(herd.Geese, herd.Chickens))
	assert.False(t, has(herd.Cattle, herd.Sheep))
	grazing.Conflicts()[0].Why = ""
	assert.NotEmpty(t, grazing.Conflicts()[0].Why)
}

func ExampleOrder() {
	places, err := grazing.Order([]string{"laying-hen", "dairy-goat", "suckler-cow"})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, p := range places {
		fmt.Printf("%s %s, %s behind the leader\n", p.Class, p.Role, p.Behind.In(units.Metric))
	}
	// Output:
	// dairy-goat lead, 0 days behind the leader
	// suckler-cow follow, 1 day behind the leader
	// laying-hen clean up, 4 days behind the leader
}

func ExampleConflicts() {
	for _, c := range grazing.Conflicts() {
		if c.After == herd.Turkeys {
			fmt.Println("no turkeys after", c.Before)
		}
	}
	// Output:
	// no turkeys after chickens
	// no turkeys after pigs
	// no turkeys after sheep
	// no turkeys after geese
	// no turkeys after ducks
}
