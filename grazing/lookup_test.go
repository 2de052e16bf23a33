package grazing_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/grazing"
	"example.org/soum/units"
)

// TestLookUpsNameWhatIsWrong: a number that stands for no word, or for no end, is a
// domain error that names it, with NaN, and never a middle in silence; a name without a
// row is a parse error that names the argument and lists those with one.
func TestLookUpsNameWhatIsWrong(t *testing.T) {
	for _, c := range []struct {
		argument string
		ask      func() (float64, error)
	}{
		{"end", func() (float64, error) { return asked(grazing.InitialRate("montana-valley-1", grazing.YearNormal, 0)) }},
		{"year", func() (float64, error) { return asked(grazing.InitialRate("montana-valley-1", 4, units.Low)) }},
		{"end", func() (float64, error) {
			return asked(grazing.PlanningLand("kansas-flint-hills", "cow-and-calf", 1, 4))
		}},
		{"head", func() (float64, error) { return asked(grazing.PlanningLand("moon", "cow", -1, units.Low)) }},
		{"end", func() (float64, error) {
			return asked(grazing.Space("laying-hen", grazing.SpaceNitrogen, "eu-organic", 1, -1))
		}},
		{"rule", func() (float64, error) { return asked(grazing.Space("laying-hen", 7, "eu-organic", 1, units.Low)) }},
		{"head", func() (float64, error) {
			return asked(grazing.Space("laying-hen", grazing.SpaceNitrogen, "eu-organic", math.NaN(), units.Low))
		}},
		{"end", func() (float64, error) { return asked(grazing.FenceVoltage("sheep", grazing.VoltageLeast, 0)) }},
		{"aim", func() (float64, error) { return asked(grazing.FenceVoltage("sheep", 0, units.Low)) }},
		{"end", func() (float64, error) { return asked(grazing.Wires("sheep", grazing.LineBoundary, 0)) }},
		{"line", func() (float64, error) { return asked(grazing.Wires("sheep", 3, units.Low)) }},
	} {
		got, err := c.ask()
		var domain *units.DomainError
		require.ErrorAs(t, err, &domain, c.argument)
		assert.Equal(t, c.argument, domain.Argument)
		assert.True(t, math.IsNaN(got), "%s: %v", c.argument, got)
	}
	for _, c := range []struct {
		argument, accepts string
		ask               func() (float64, error)
	}{
		{"site", "montana-valley-1", func() (float64, error) { return asked(grazing.InitialRate("moon", grazing.YearNormal, units.Low)) }},
		{"year", "normal", func() (float64, error) {
			return asked(grazing.InitialRate("nebraska-sandhills-meadow", grazing.YearAbove, units.Low))
		}},
		{"region", "arkansas", func() (float64, error) { return asked(grazing.PlanningLand("moon", "cow", 1, units.Low)) }},
		{"stock", "laying-hen (nitrogen, eu-organic)", func() (float64, error) {
			return asked(grazing.Space("dragon", grazing.SpaceNitrogen, "eu-organic", 1, units.Low))
		}},
		{"stock", "sheep (least)", func() (float64, error) { return asked(grazing.FenceVoltage("dragon", grazing.VoltageLeast, units.Low)) }},
		{"stock", "sheep (boundary)", func() (float64, error) { return asked(grazing.Wires("dragon", grazing.LineBoundary, units.Low)) }},
	} {
		got, err := c.ask()
		var word *units.ParseError
		require.ErrorAs(t, err, &word, c.argument)
		assert.Equal(t, c.argument, word.Argument)
		assert.Contains(t, word.Accepts, c.accepts)
		assert.True(t, math.IsNaN(got), c.argument)
	}
}

// asked gives the answer of a look-up as a plain number.
func asked[Q ~float64](q Q, err error) (float64, error) { return float64(q), err }
