package units_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/soum/units"
)

// TestShowAStep puts numbers into a formula of its own: what stands in brackets
// stays there before a factor, a factor that no reader knows gives way to base
// units, and a look-up names what it was asked.
func TestShowAStep(t *testing.T) {
	argument := func(n int) units.Term { return units.Term{Argument: n} }
	term := func(op string, terms ...units.Term) units.Term { return units.Term{Op: op, Terms: terms} }
	lanes := units.Formula{
		Name: "grazing.WidthLeft", Quantity: "Length", Source: "ours",
		Arguments: []units.Argument{{Name: "area", Quantity: "Area", Factor: 1}, {Name: "length", Quantity: "Length", Factor: 1}, {Name: "taken", Quantity: "Length", Factor: 1}},
		Lines:     []units.Line{{Value: term("-", term("/", argument(1), argument(2)), argument(3))}},
	}
	step := lanes.Show(units.US, float64(50*units.Foot), float64(1*units.Acre), float64(435.6*units.Foot), float64(50*units.Foot))
	require.Equal(t, "width left = area ÷ length − taken = 4,047 m2 ÷ 133 m − 15.2 m = 15.2 m = 50 ft", step.Text)
	sum := units.Formula{
		Name: "grazing.PlotArea", Quantity: "Area", Source: "ours",
		Arguments: []units.Argument{{Name: "side", Quantity: "Length", Factor: 1}, {Name: "side2", Quantity: "Length", Factor: 1}},
		Lines:     []units.Line{{Value: term("+", term("*", argument(1), argument(2)), term("*", argument(1), argument(1)))}},
	}
	step = sum.Show(units.US, float64(43560*units.SquareFoot), float64(100*units.Foot), float64(335.6*units.Foot))
	require.Equal(t, "(100 ft × 336 ft + 100 ft × 100 ft)", step.Numbers)
	require.Equal(t, "÷ 43,560 ft²/ac", step.Factor)
	require.Equal(t, "1 ac", step.Answer)
	table := units.Formula{
		Name: "herd.WarmthOf", Lookup: "share by word and warmth * 2.", Source: "ours", Quantity: "Fraction",
		Arguments: []units.Argument{{Name: "word", Words: []string{"low", "high"}}, {Name: "warmth", Quantity: "Temperature", Factor: 1}, {Name: "days", Quantity: "Days", Factor: 1}},
	}
	step = table.Show(units.US, 0.25, 2, 20, 3)
	require.Equal(t, "warmth for word high, warmth 68 °F, 3 days = 25 % (share by word and warmth × 2)", step.Text)
}
