package fit

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/herd"
	"example.org/soum/internal/linear"
	"example.org/soum/units"
)

// mixedFitting has stock of three diets on grass, forbs and browse with hay.
const mixedFitting = `{
  "version": 1, "goal": "animal units", "carry": "10 %",
  "land": [{"id": "field", "area": "4 ha", "pasture": "bluegrass-clover", "use": "50 %", "forbs": "30 %", "browse": "15 %"}],
  "stock": [
    {"id": "cows", "class": "suckler-cow", "eats": "printed"},
    {"id": "ewes", "class": "ewe", "eats": "up to printed", "birth": 4, "weaned": 8},
    {"id": "donkeys", "class": "donkey", "eats": "anything", "drinks": "20 L/day"}
  ],
  "hay": {"store": "6 t"},
  "housing": [{"id": "barn", "room": 12, "takes": {"cows": 4, "ewes": 1}}],
  "needs": [{"id": "company", "least": 3, "gives": {"donkeys": 2, "ewes": 1}}]
}`

func mixedModel(t *testing.T, change func(*Question)) *model {
	t.Helper()
	f, err := Read([]byte(mixedFitting))
	require.NoError(t, err)
	change(f)
	m, err := f.settle(units.Middle)
	require.NoError(t, err)
	m.build()
	return m
}

// proved tells what the prices of an answer leave unproved: that none is below 0, that
// they come to the value, and that they price no column under what it brings.
func (m *model) proved(answer linear.Answer) error {
	bound, costs := 0.0, make([]float64, m.columns)
	for i, row := range m.rows {
		if answer.Prices[i] < 0 {
			return fmt.Errorf("row %d: price %v", i, answer.Prices[i])
		}
		bound += answer.Prices[i] * row.Most
		for j, v := range row.Coefficients {
			costs[j] += answer.Prices[i] * v
		}
	}
	if math.Abs(bound-answer.Value) > 1e-7*(1+math.Abs(bound)) {
		return fmt.Errorf("value %v, bound %v", answer.Value, bound)
	}
	first, _ := m.goals()
	for j, brings := range first {
		if costs[j] < brings-1e-8*(1+greatest(first)) { // the steps end where less than 1e-9 of the goal is to be won
			return fmt.Errorf("column %d brings %v and costs %v", j, brings, costs[j])
		}
	}
	return nil
}

// priced gives every stock a margin, hay a price, and lets some be bought.
func priced(t require.TestingT, f *Question, margins []string, price string) {
	f.Hay.Price, f.Hay.Buy = new(units.FeedPrice), 4000
	require.NoError(t, f.Hay.Price.UnmarshalText([]byte(price)))
	for i := range f.Stock {
		f.Stock[i].Margin = new(units.Money)
		require.NoError(t, f.Stock[i].Margin.UnmarshalText([]byte(margins[i%len(margins)])))
	}
}

// TestFitStockDual: the prices of a farm's rules come to the value of its herd,
// and price no stock under what it brings, which proves that no herd is better.
func TestFitStockDual(t *testing.T) {
	for _, goal := range []Goal{GoalAnimalUnits, GoalLeastHay, GoalMargin} {
		for _, water := range []units.WaterRate{0, 150 * units.LitrePerDay} {
			m := mixedModel(t, func(f *Question) {
				f.Goal, f.Water.Supply = goal, water
				priced(t, f, []string{"400 USD", "30 USD", "-20 USD"}, "120 USD/t")
			})
			answer, err := m.best()
			require.NoError(t, err)
			require.NoError(t, m.proved(answer), "%s", goal)
			assert.NotZero(t, answer.Value, "%s", goal)
			assert.True(t, m.holds(answer.X))
			answer.X[0]++
			assert.False(t, m.holds(answer.X), "a cow more, and nothing eaten for her")
		}
	}
}

// TestFitStockKeepsSmallRules: rules whose numbers are a ten-thousandth of the farm's
// and less hold like the rest: a kilogram of hay, and browse by the crumb.
func TestFitStockKeepsSmallRules(t *testing.T) {
	m := mixedModel(t, func(f *Question) {
		f.Carry, f.Land[0].Area, f.Land[0].Browse, f.Hay.Store = 0.7, 66510.875, 2.9103830456733704e-11, 1
	})
	answer, err := m.best()
	require.NoError(t, err)
	assert.True(t, m.holds(answer.X))
	assert.NoError(t, m.proved(answer))
}

// TestFitStockLargest asks the largest question that there may be of stock and rules,
// every diet another, whose steps stall by the hundred: it has an answer, and the
// prices prove it.
func TestFitStockLargest(t *testing.T) {
	span := func(low, high float64) units.Span[units.Fraction] {
		return units.Span[units.Fraction]{Low: units.Fraction(low), High: units.Fraction(high)}
	}
	m := mixedModel(t, func(f *Question) {
		f.Land[0].Area, f.Hay.Store = 100*units.Hectare, 200000
		f.Stock, f.Housing, f.Needs = nil, nil, nil
		for i, class := range []string{"suckler-cow", "ewe", "meat-goat", "horse", "growing-cattle", "growing-lamb", "weaned-calf", "ram", "dairy-goat", "bull", "ewe", "suckler-cow"} {
			x := float64(i) / 100
			f.Stock = append(f.Stock, Stock{
				ID: fmt.Sprint(i), Class: herd.ClassRow{Name: class},
				Eats: DietOwn, Diet: &OwnDiet{Grass: span(0.2+x, 0.6+x), Forbs: span(0.1+x, 0.5-x), Browse: span(0.05+x/2, 0.3+x)},
			})
		}
		for j := range mostRules {
			each := map[string]float64{}
			for i := range f.Stock {
				each[f.Stock[i].ID] = 1 + float64((i*7+j*13)%29)/7
			}
			one, many := 1.0, 20+float64(j)
			f.Housing = append(f.Housing, Housing{ID: fmt.Sprint(j), Room: 300 + float64(j), Takes: each})
			f.Needs = append(f.Needs, Need{ID: fmt.Sprint(j), Least: 1 + float64(j)/10, Gives: each})
			f.Ratios = append(f.Ratios, Ratio{Of: fmt.Sprint(j % 12), To: []string{fmt.Sprint((j + 1 + j/12) % 12)}, Least: &one, Each: &many})
		}
	})
	answer, err := m.best()
	require.NoError(t, err)
	bound := 0.0
	for i, row := range m.rows {
		bound += answer.Prices[i] * row.Most
		assert.GreaterOrEqual(t, answer.Slack[i], -1e-6*(1+math.Abs(row.Most)), "row %d", i)
	}
	assert.InEpsilon(t, answer.Value, bound, 1e-6)
}

// TestFitStockClashIsSmallest: without any one of its rules a clash is none, and
// with all of them it is one.
func TestFitStockClashIsSmallest(t *testing.T) {
	many := 40.0
	for name, change := range map[string]func(*Question){
		"cows":    func(f *Question) { f.Stock[0].Least = many },
		"company": func(f *Question) { f.Needs[0].Least = 4000 },
		"winter":  func(f *Question) { f.Stock[0].Least, f.Hay.Store = 2, 0 },
		"most":    func(f *Question) { f.Housing, f.Stock[1].Least, f.Stock[1].Most = nil, 3000, &many },
	} {
		m := mixedModel(t, change)
		clash := m.clash()
		require.NotEmpty(t, clash, name)
		for without := -1; without < len(clash); without++ {
			p := linear.Program{Objective: make([]float64, m.columns)}
			for i, rule := range m.ofRule {
				in := rule < 0
				if !in {
					at := slices.IndexFunc(clash, func(r Rule) bool { return r.English == m.rules[rule].English })
					in = at >= 0 && at != without
				}
				if in {
					p.Rows = append(p.Rows, m.rows[i])
				}
			}
			_, err := p.Solve()
			assert.Equal(t, without < 0, errors.Is(err, linear.ErrInfeasible), "%s without rule %d of %v: %v", name, without, clash, err)
		}
	}
}

// TestMixtures: the corners of a diet, by hand.
func TestMixtures(t *testing.T) {
	span := func(low, high units.Fraction) units.Span[units.Fraction] {
		return units.Span[units.Fraction]{Low: low, High: high}
	}
	all := mixtures([plants]units.Span[units.Fraction]{span(0, 1), span(0, 1), span(0, 1)})
	assert.ElementsMatch(t, [][plants]float64{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}, all)
	all = mixtures([plants]units.Span[units.Fraction]{span(0.5, 0.75), span(0.25, 0.5), span(0, 0)})
	assert.ElementsMatch(t, [][plants]float64{{0.5, 0.5, 0}, {0.75, 0.25, 0}}, all)
	assert.Empty(t, mixtures([plants]units.Span[units.Fraction]{span(0, 0.3), span(0, 0.3), span(0, 0.3)}))
	all = mixtures([plants]units.Span[units.Fraction]{span(0, 0), span(0.7, 0.7), span(0.3, 0.3)})
	require.Len(t, all, 1)
	assert.Zero(t, all[0][0], "the rounding of 1 - 0.7 - 0.3 is no grass")
}

// TestFitStockWords: one and many, by names in the plural and by a class's own name.
func TestFitStockWords(t *testing.T) {
	m := mixedModel(t, func(f *Question) { f.Stock[2].ID, f.Needs = "", nil })
	assert.Equal(t, "2 cows", m.head(2, "", "cows"))
	assert.Equal(t, "1 head of cows", m.head(1, "", "cows"))
	assert.Equal(t, "1 more head of cows", m.head(1, "more", "cows"))
	assert.Equal(t, "0.5 fewer cows", m.head(0.5, "fewer", "cows"))
	assert.Equal(t, "5 head of donkey", m.head(5, "", "donkey"))
	assert.Equal(t, "1 animal unit", m.value(1))
	assert.Equal(t, "0.5 animal units", m.value(0.5))
	// What changes by less than a hundredth of the greatest change is left out.
	b := Bind{Rule: Rule{Kind: RuleMost, ID: "cows"}, More: 1, Gain: 1, Changes: []Head{{"cows", -100}, {"ewes", 1.004}}}
	assert.Equal(t, "Allowing 1 more head of cows would carry 100 fewer cows and 1 more head of ewes (1 animal unit more).", m.bindText(&b))
	b.Changes[1].Head = 0.999
	assert.Equal(t, "Allowing 1 more head of cows would carry 100 fewer cows (1 animal unit more).", m.bindText(&b))
	m.question.Units = units.US
	assert.Equal(t, "1 short ton", m.ton(907.18474))
	assert.Equal(t, "2 short tons", m.ton(2*907.18474))
	for months, want := range map[*[]int]string{
		{3}: "in March", {5, 6}: "from May to June", {1, 2, 3, 5}: "from January to March and in May",
		{1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12}: "all year",
	} {
		assert.Equal(t, want, inMonths(*months))
	}
}

// TestFitStockHoldsUp draws farms of up to six stocks by the printed diets and any goal: each
// has an answer that keeps every rule and is proved by its prices, or a clash.
func TestFitStockHoldsUp(t *testing.T) {
	classes := []string{"suckler-cow", "ewe", "meat-goat", "horse", "growing-cattle", "growing-lamb", "weaned-calf", "ram"}
	rapid.Check(t, func(r *rapid.T) {
		f, err := Read([]byte(mixedFitting))
		if err != nil {
			r.Fatal(err)
		}
		f.Goal = rapid.SampledFrom([]Goal{GoalAnimalUnits, GoalLeastHay, GoalMargin}).Draw(r, "goal")
		f.Water.Supply = units.WaterRate(rapid.SampledFrom([]int{0, 0, 200, 2000}).Draw(r, "water")) * units.LitrePerDay
		f.Carry = units.Fraction(rapid.IntRange(0, 9).Draw(r, "carry")) / 10
		f.Land[0].Area = units.Area(rapid.Float64Range(100, 1e6).Draw(r, "area"))
		f.Land[0].Browse = units.Fraction(rapid.Float64Range(0, 0.5).Draw(r, "browse"))
		f.Hay.Store = units.FreshFeed(rapid.Float64Range(0, 1e5).Draw(r, "store"))
		for i := range rapid.IntRange(0, 3).Draw(r, "more") {
			f.Stock = append(f.Stock, Stock{
				ID: fmt.Sprint(i), Class: herd.ClassRow{Name: rapid.SampledFrom(classes).Draw(r, "class")},
				Eats: []Diet{DietPrinted, DietUpToPrinted, DietAnything}[rapid.IntRange(0, 2).Draw(r, "eats")], Least: float64(rapid.IntRange(0, 4).Draw(r, "least")),
			})
		}
		var margins []string
		for range f.Stock {
			margins = append(margins, fmt.Sprintf("%d USD", rapid.IntRange(-50, 500).Draw(r, "margin")))
		}
		priced(r, f, margins, fmt.Sprintf("%d USD/t", rapid.IntRange(0, 400).Draw(r, "price")))
		m, err := f.settle(units.Middle)
		if err != nil {
			r.Fatal(err)
		}
		m.build()
		answer, err := m.best()
		if errors.Is(err, linear.ErrInfeasible) {
			return // TestFitStockClashIsSmallest looks into clashes
		}
		if err != nil {
			r.Fatal(err)
		}
		if !m.holds(answer.X) {
			r.Fatal("a rule is broken")
		}
		if err := m.proved(answer); err != nil {
			r.Fatal(err)
		}
	})
}
