package herd_test

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/herd"
	"example.org/soum/internal/check"
	"example.org/soum/units"
)

// reckonings gives all there are.
func reckonings() (all []herd.Reckoning) {
	for r := herd.Reckoning(1); r.String() != ""; r++ {
		all = append(all, r)
	}
	return all
}

// TestEquivalentsAgainstPrint compares every row with a second reading of
// print, in both directions, and sees that what is handed out is a copy.
func TestEquivalentsAgainstPrint(t *testing.T) {
	read := map[herd.Reckoning]int{}
	for _, row := range secondReading(t, "testdata/equivalents.csv") {
		var reckoning herd.Reckoning
		require.NoError(t, reckoning.UnmarshalText([]byte(row[0])))
		got, err := herd.Equivalent(row[1], reckoning)
		if !assert.NoError(t, err) {
			continue
		}
		of := row[0] + " " + row[1]
		read[reckoning]++
		assert.Equal(t, []string{row[1], row[6], row[7]}, []string{got.Class, got.Mark, sourceKey.FindString(got.Source)}, of)
		assert.Equal(t, reckoning, got.Reckoning, of)
		head, low, high := 1.0, number(t, row[3]), number(t, row[4])
		if first, last, span := strings.Cut(row[2], " to "); span { // a span of head for the units: told for one
			low, high = low/number(t, last), high/number(t, first)
		} else {
			head = number(t, row[2])
		}
		same(t, of, head, got.Head)
		same(t, of, low, got.Units.Low)
		same(t, of, high, got.Units.High)
		same(t, of, low/head, each(t, got, units.Low))
		same(t, of, high/head, each(t, got, units.High))
		weight := units.LiveWeight(0)
		if row[5] != "" {
			weight, err = units.ParseLiveWeight(row[5])
			require.NoError(t, err)
		}
		same(t, of, weight, got.Weight)
	}
	for _, r := range reckonings() {
		rows, err := herd.Equivalents(r)
		require.NoError(t, err)
		assert.Len(t, rows, read[r], "%s: rows of the second reading", r)
		seen := map[string]bool{}
		for i, row := range rows {
			assert.False(t, seen[row.Class], "%s %s stands twice", r, row.Class)
			seen[row.Class] = true
			assert.Regexp(t, `^[a-z0-9]+(-[a-z0-9]+)*$`, row.Class)
			rows[i].Class = "spoilt"
		}
		again, err := herd.Equivalents(r)
		require.NoError(t, err)
		for _, row := range again {
			assert.NotEqual(t, "spoilt", row.Class)
		}
	}
}

func number(t *testing.T, text string) float64 {
	v, err := strconv.ParseFloat(text, 64)
	require.NoError(t, err)
	return v
}

// TestDefinitions: every reckoning says what its unit is and who says so; of
// the rows of a unit that is an animal, that animal counts one.
func TestDefinitions(t *testing.T) {
	for _, r := range reckonings() {
		d, err := herd.Definition(r)
		require.NoError(t, err, r)
		assert.Equal(t, r, d.Reckoning)
		assert.NotEmpty(t, d.Unit.String(), r)
		assert.NotEmpty(t, d.What, r)
		assert.Regexp(t, sourceKey, d.Source, r)
		assert.Contains(t, []string{"A", "B"}, d.Mark, r)
	}
	for _, c := range []struct {
		reckoning herd.Reckoning
		says      string
	}{
		{herd.ReckoningVallentine, "26 lb (12 kg) of oven-dry"},
		{herd.ReckoningManitoba, "780 lb in a month of 30 days"},
		{herd.ReckoningTexas, "9,490 lb"},
		{herd.ReckoningJornada, "dry beef cow of 1,100 lb"},
		{herd.ReckoningEuropean, "3,000 kg of milk"},
		{herd.ReckoningAdultEquivalent, "73 MJ"},
		{herd.ReckoningDrySheepMla, "0.95 kg"},
		{herd.ReckoningDrySheepVictoria, "7.60 MJ"},
		{herd.ReckoningNewZealand, "5,500 MJ"},
		{herd.ReckoningTropicalWeight, "250 kg"},
	} {
		d, err := herd.Definition(c.reckoning)
		require.NoError(t, err)
		assert.Contains(t, d.What, c.says)
	}
	for reckoning, class := range map[herd.Reckoning]string{
		herd.ReckoningVallentine: "dry-cow", herd.ReckoningManitoba: "cow", herd.ReckoningSmallholder: "cow-with-calf",
		herd.ReckoningExtension: "cow-with-calf", herd.ReckoningCalifornia: "cow", herd.ReckoningTexas: "beef-cow",
		herd.ReckoningEuropean: "dairy-cow", herd.ReckoningNix: "dairy-cow", herd.ReckoningDrySheepMla: "wether",
		herd.ReckoningNewZealand: "ewe", herd.ReckoningTropicalStorck: "cow", herd.ReckoningTropicalChewaka: "cow",
	} {
		row, err := herd.Equivalent(class, reckoning)
		require.NoError(t, err)
		same(t, reckoning.String(), 1, each(t, row, units.Middle))
	}
	for _, r := range []herd.Reckoning{-1, 0, herd.Reckoning(len(reckonings()) + 1)} {
		_, errA := herd.Definition(r)
		_, errB := herd.Equivalents(r)
		_, errC := herd.Equivalent("cow", r)
		for _, err := range []error{errA, errB, errC} {
			var wrong *units.DomainError
			require.ErrorAs(t, err, &wrong)
			assert.Equal(t, "reckoning", wrong.Argument)
			assert.ErrorContains(t, err, "vallentine")
		}
		assert.Equal(t, "3 units of no reckoning", herd.Reckoned{Value: 3, Reckoning: r}.String())
	}
	_, err := herd.Conversion(herd.ReckoningAdultEquivalent, herd.ReckoningNix)
	var wrong *units.ParseError
	require.ErrorAs(t, err, &wrong)
	wrong.Accepts[0] = "spoilt"
	assert.Equal(t, "adult equivalent", herd.ReckoningAdultEquivalent.String())
}

func TestEquivalentRefuses(t *testing.T) {
	_, err := herd.Equivalent("unicorn", herd.ReckoningManitoba)
	var wrong *units.ParseError
	require.ErrorAs(t, err, &wrong)
	assert.ErrorContains(t, err, "manitoba")
	assert.Contains(t, wrong.Accepts, "large-cow")
	assert.NotContains(t, wrong.Accepts, "broiler")
	_, err = herd.Equivalent("cow", herd.ReckoningMetabolic)
	require.ErrorAs(t, err, &wrong)
	assert.Equal(t, "reckoning", wrong.Argument, "the word that is wrong is the reckoning")
	assert.Equal(t, "metabolic", wrong.Text)
	assert.ErrorContains(t, err, "by weight")
	assert.Contains(t, wrong.Accepts, "manitoba")
	assert.NotContains(t, wrong.Accepts, "weight")
	row, err := herd.Equivalent("large-cow", herd.ReckoningManitoba)
	require.NoError(t, err)
	for _, end := range []units.End{-1, 0, 4, 7} {
		one, err := row.Each(end)
		assert.True(t, units.Impossible(err) && math.IsNaN(one.Value), end)
		total, err := herd.TotalEquivalent([]string{"large-cow"}, []float64{1}, herd.ReckoningManitoba, end)
		assert.True(t, units.Impossible(err) && math.IsNaN(total.Value), end)
		assert.ErrorContains(t, err, "herd.TotalEquivalent: end is")
	}
	for _, area := range []units.Area{0, -1, units.Area(math.NaN()), units.Area(math.Inf(1))} {
		rate, err := herd.Reckoned{Value: 3, Reckoning: herd.ReckoningNix}.PerHectare(area)
		assert.True(t, units.Impossible(err) && math.IsNaN(rate), area)
	}
	rows, err := herd.Equivalents(herd.ReckoningMetabolic)
	require.NoError(t, err)
	assert.NotNil(t, rows)
	assert.Empty(t, rows)
}

// TestUnitsOfTwoReckoningsDoNotAdd: the compiler refuses a plus sign, and Plus
// refuses another reckoning, even of the same sort of unit.
func TestUnitsOfTwoReckoningsDoNotAdd(t *testing.T) {
	ewe := herd.Reckoned{Value: 0.11, Reckoning: herd.ReckoningNix}
	sum, err := ewe.Plus(herd.Reckoned{Value: 0.89, Reckoning: herd.ReckoningNix})
	require.NoError(t, err)
	same(t, "0.11 + 0.89", 1, sum.Value)
	for _, r := range reckonings() {
		if r == herd.ReckoningNix {
			continue
		}
		sum, err = ewe.Plus(herd.Reckoned{Value: 1, Reckoning: r})
		assert.ErrorContains(t, err, "cannot be added")
		assert.ErrorContains(t, err, r.String())
		assert.True(t, math.IsNaN(sum.Value))
	}
}

// TestTotalEquivalent has the two herds of a smallholder as printed: 2 LU of
// sheep, 2.83 of cattle, 4.83 of both.
func TestTotalEquivalent(t *testing.T) {
	sheep, err := herd.TotalEquivalent([]string{"sheep", "lamb"}, []float64{12 + 1 + 1 + 2, 18}, herd.ReckoningScottish, units.Low)
	require.NoError(t, err)
	same(t, "16 * 0.08 + 18 * 0.04", 2, sheep.Value)
	cattle, err := herd.TotalEquivalent([]string{"heifer", "calf", "store-bovine"}, []float64{2, 2, 1}, herd.ReckoningScottish, units.Low)
	require.NoError(t, err)
	same(t, "2 * 0.75 + 2 * 0.34 + 0.65", 2.83, cattle.Value)
	both, err := sheep.Plus(cattle)
	require.NoError(t, err)
	same(t, "both", 4.83, both.Value)
	assert.Equal(t, "4.83 LU (scottish)", both.String())

	// 10 cows of 13 to 16 and 100 breeding ewes of 1.5 on 20 ha: 280 to 310, 14 to 15.5 a hectare
	for end, want := range map[units.End]float64{units.Low: 280, units.Middle: 295, units.High: 310} {
		total, err := herd.TotalEquivalent([]string{"cow-with-calf", "breeding-ewe"}, []float64{10, 100}, herd.ReckoningDrySheepSouthAustralia, end)
		require.NoError(t, err)
		same(t, end.String(), want, total.Value)
		perHectare, err := total.PerHectare(20 * units.Hectare)
		require.NoError(t, err)
		same(t, end.String(), want/20, perHectare)
	}
	// 320 * 1.2 + 160 * 1.6 = 384 + 256 = 640, a lesson's sum of animal units by weight
	large, err := herd.AnimalUnits(1200 * units.LivePound)
	require.NoError(t, err)
	larger, err := herd.AnimalUnits(1600 * units.LivePound)
	require.NoError(t, err)
	total, err := herd.TotalUnits([]float64{320, 160}, []units.AnimalUnits{large, larger})
	require.NoError(t, err)
	same(t, "the lesson's herd", 640, total)
	none, err := herd.TotalEquivalent(nil, nil, herd.ReckoningNix, units.Low)
	require.NoError(t, err)
	assert.Zero(t, none.Value)
}

func TestTotalEquivalentRefuses(t *testing.T) {
	for _, c := range []struct {
		classes []string
		head    []float64
		says    string
	}{
		{[]string{"cow"}, []float64{1, 2}, "len(head) is 2"},
		{[]string{"cow"}, []float64{-1}, "head is -1"},
		{[]string{"cow"}, []float64{math.NaN()}, "head is NaN"},
		{[]string{"cow", "cow"}, []float64{1.5e308, 1.5e308}, "result"},
		{[]string{"ewe"}, []float64{1}, "no such class"},
	} {
		got, err := herd.TotalEquivalent(c.classes, c.head, herd.ReckoningManitoba, units.Low)
		assert.ErrorContains(t, err, c.says)
		assert.True(t, math.IsNaN(got.Value))
	}
}

func TestEquivalentHead(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		all := reckonings()
		r := all[rapid.IntRange(0, len(all)-1).Draw(t, "reckoning")]
		rows, _ := herd.Equivalents(r)
		if len(rows) == 0 {
			t.Skip()
		}
		of := rows[rapid.IntRange(0, len(rows)-1).Draw(t, "of")].Class
		to := rows[rapid.IntRange(0, len(rows)-1).Draw(t, "to")].Class
		end := units.End(rapid.IntRange(1, 3).Draw(t, "end"))
		head := rapid.Float64Range(0.1, 1e5).Draw(t, "head")
		there, err := herd.EquivalentHead(head, of, to, r, end)
		if err != nil {
			t.Fatal(err)
		}
		back, err := herd.EquivalentHead(there, to, of, r, end)
		if err != nil || !near(back, head) {
			t.Fatalf("%v %s are %v %s are %v (%v)", head, of, there, to, back, err)
		}
		one, _ := herd.TotalEquivalent([]string{of}, []float64{head}, r, end)
		other, _ := herd.TotalEquivalent([]string{to}, []float64{there}, r, end)
		if !near(one.Value, other.Value) {
			t.Fatalf("%v against %v", one, other)
		}
	})
	for _, pair := range [][2]string{{"unicorn", "cow"}, {"cow", "unicorn"}} {
		got, err := herd.EquivalentHead(1, pair[0], pair[1], herd.ReckoningManitoba, units.Low)
		assert.ErrorContains(t, err, "unicorn")
		assert.True(t, math.IsNaN(got))
	}
}

// TestSourcesDisagree holds what the doc of Equivalent says of horses and
// poultry to the rows: spread, not one number.
func TestSourcesDisagree(t *testing.T) {
	for _, c := range []struct {
		class     string
		reckoning herd.Reckoning
		low, high float64
	}{
		{"horse", herd.ReckoningEuropean, 0.8, 0.8},
		{"horse", herd.ReckoningNix, 0.8, 0.8},
		{"horse", herd.ReckoningIowaHorses, 0.9, 0.9},
		{"horse", herd.ReckoningEntryLevel, 1.0, 1.0},
		{"horse", herd.ReckoningManitoba, 1.20, 1.20},
		{"horse", herd.ReckoningTexas, 1.27, 1.27},
		{"heavy-horse", herd.ReckoningSmallholder, 2, 2},
		{"horse", herd.ReckoningDrySheepSouthAustralia, 10, 10},
		{"horse", herd.ReckoningNewZealandSmallholding, 10, 12},
		{"laying-hen", herd.ReckoningNix, 0.017, 0.017},
		{"laying-hen", herd.ReckoningEuropean, 0.014, 0.014},
		{"chicken", herd.ReckoningTropicalChewaka, 0.005, 0.005},
		{"goose", herd.ReckoningNix, 0.003, 0.003},
		{"goose", herd.ReckoningEuropean, 0.030, 0.030},
	} {
		row, err := herd.Equivalent(c.class, c.reckoning)
		require.NoError(t, err)
		same(t, c.class, c.low, each(t, row, units.Low))
		same(t, c.class, c.high, each(t, row, units.High))
	}
}

// TestTexasRowsFollowFromWeight: the chart's units are its weight times its
// intake, rounded to a hundredth.
func TestTexasRowsFollowFromWeight(t *testing.T) {
	rows, err := herd.Equivalents(herd.ReckoningTexas)
	require.NoError(t, err)
	shares := map[string]float64{"beef-cow": 2.6, "horse": 3.0, "spanish-nanny": 4.5, "angora-nanny": 4.5, "eland": 2.5}
	for _, row := range rows {
		share, known := shares[row.Class]
		if !known {
			share = 3.5
		}
		au, err := herd.IntakeAnimalUnits(row.Weight, units.Fraction(share)*units.Percent)
		require.NoError(t, err)
		assert.InDelta(t, row.Units.Low, au.AnimalUnits(), 0.005+1e-9, row.Class)
	}
}

func TestConversionAndBack(t *testing.T) {
	steers := herd.Reckoned{Value: 10, Reckoning: herd.ReckoningAdultEquivalent}
	sheep, err := steers.In(herd.ReckoningDrySheepMla)
	require.NoError(t, err)
	same(t, "10 * 8.4", 84, sheep.Value)
	back, err := sheep.In(herd.ReckoningAdultEquivalent)
	require.NoError(t, err)
	same(t, "84 / 8.4", 10, back.Value)
	assert.Equal(t, herd.ReckoningAdultEquivalent, back.Reckoning)
	none, err := sheep.In(herd.ReckoningDrySheepVictoria)
	assert.ErrorContains(t, err, `to is "dry sheep victoria": no source prints a rate from dry sheep mla; it takes one of: adult equivalent, dry sheep mla`)
	assert.True(t, units.Impossible(err) && math.IsNaN(none.Value))
	_, err = herd.Conversion(0, herd.ReckoningNix)
	assert.ErrorContains(t, err, "from is 0")
}

// TestTropicalUnitsByPower undoes the power 3/4 by the power 4/3.
func TestTropicalUnitsByPower(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		kg := rapid.Float64Range(0.01, 2000).Draw(t, "kg")
		tlu, err := herd.TropicalUnits(units.LiveWeight(kg))
		if err != nil {
			t.Fatal(err)
		}
		if back := 250 * math.Pow(tlu, 4.0/3); math.Abs(back-kg) > 1e-9*kg {
			t.Fatalf("%v kg comes back as %v", kg, back)
		}
	})
}

// TestMerinoEweIsMonotone: a heavier ewe never counts less, and one with more
// to do counts more.
func TestMerinoEweIsMonotone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		kg := rapid.Float64Range(40, 60).Draw(t, "kg")
		more := rapid.Float64Range(kg, 60).Draw(t, "more")
		last := 0.0
		for s := herd.MerinoDry; s <= herd.MerinoLactatingTwin; s++ {
			a, errA := herd.MerinoDrySheep(units.LiveWeight(kg), s)
			b, errB := herd.MerinoDrySheep(units.LiveWeight(more), s)
			if errA != nil || errB != nil || b < a || a <= last {
				t.Fatalf("%v: %v kg %v, %v kg %v (%v, %v)", s, kg, a, more, b, errA, errB)
			}
			last = a
		}
	})
	for _, s := range []herd.MerinoState{-1, 0, 6} {
		got, err := herd.MerinoDrySheep(50, s)
		assert.True(t, units.Impossible(err) && math.IsNaN(got), s)
	}
}

func TestManureUnitsAgainstPrint(t *testing.T) {
	rows, read := herd.ManureUnitRows(), secondReading(t, "testdata/manure_units.csv")
	require.Len(t, rows, len(read))
	for i, row := range read {
		assert.Equal(t, []string{row[0], row[2], "MINN-116-06"}, []string{rows[i].Class, rows[i].Mark, rows[i].Source})
		same(t, row[0], number(t, row[1]), rows[i].Each.Value)
	}
	rows[0].Class = "spoilt"
	assert.NotEqual(t, "spoilt", herd.ManureUnitRows()[0].Class)
}

func TestTotalManureUnits(t *testing.T) {
	// 10 * 1.4 + 100 * 0.1 + 200 * 0.005
	got, err := herd.TotalManureUnits([]string{"dairy-cow-over-1000-lb", "sheep", "chicken-over-5-lb-dry-manure"}, []float64{10, 100, 200})
	require.NoError(t, err)
	same(t, "a herd", 25, got.Value)
	assert.Equal(t, "25 AU of manure", got.String())
	for _, c := range []struct {
		classes []string
		head    []float64
		says    string
	}{
		{[]string{"horse"}, nil, "len(head) is 0"},
		{[]string{"horse"}, []float64{-1}, "head is -1"},
		{[]string{"alpaca"}, []float64{1}, "ManureUnitsByWeight"},
		{[]string{"horse", "horse"}, []float64{1.5e308, 1.5e308}, "result"},
	} {
		got, err := herd.TotalManureUnits(c.classes, c.head)
		assert.ErrorContains(t, err, c.says)
		assert.True(t, math.IsNaN(got.Value))
	}
}

func TestManureUnitsByWeight(t *testing.T) {
	got, err := herd.ManureUnitsByWeight(150 * units.LivePound)
	require.NoError(t, err)
	same(t, "150 / 1000", 0.15, got.Value)
	for _, w := range []units.LiveWeight{-1, units.LiveWeight(math.NaN()), units.LiveWeight(math.Inf(1))} {
		got, err = herd.ManureUnitsByWeight(w)
		assert.True(t, units.Impossible(err) && math.IsNaN(got.Value), w)
	}
}

// TestTheCompilerKeepsUnitsApart type-checks snippets: units of a reckoning are
// never added by a plus sign, and units of manure go nowhere that forage is
// reckoned.
func TestTheCompilerKeepsUnitsApart(t *testing.T) {
	check.Compile(t, []string{"herd", "units"}, [][2]string{
		{"a := herd.Reckoned{Value: 1, Reckoning: herd.ReckoningNix}; b, err := a.Plus(a); _, _ = b, err", ""},
		{"m := herd.ManureUnits{Value: 1}; _ = m.Value", ""},
		{"var u units.AnimalUnits = 2; _, _ = herd.HeadPerUnit(u)", ""},

		{"_ = herd.Reckoned{} + herd.Reckoned{}", "operator + not defined"},
		{"_ = herd.ManureUnits{} + herd.ManureUnits{}", "operator + not defined"},
		{"var u units.AnimalUnits = herd.ManureUnits{Value: 1}; _ = u", "cannot use"},
		{"_ = units.AnimalUnits(herd.ManureUnits{Value: 1})", "cannot convert"},
		{"var r herd.Reckoned = herd.ManureUnits{Value: 1}; _ = r", "cannot use"},
		{"_ = herd.Reckoned(herd.ManureUnits{Value: 1})", "cannot convert"},
		{"_, _ = herd.HeadPerUnit(herd.ManureUnits{Value: 1})", "cannot use"},
		{"_, _ = herd.TotalUnits([]float64{1}, []herd.ManureUnits{{Value: 1}})", "cannot use"},
		{"_, _ = herd.Reckoned{}.Plus(herd.ManureUnits{Value: 1})", "cannot use"},
		{"var u units.AnimalUnits = herd.Reckoned{Value: 1}; _ = u", "cannot use"},
	})
}

// each gives what one animal of a row counts.
func each(t *testing.T, row herd.EquivalentRow, end units.End) float64 {
	t.Helper()
	one, err := row.Each(end)
	require.NoError(t, err)
	return one.Value
}

// What does a ewe count in dry sheep, by two Australian sets?
func ExampleEquivalent() {
	south, err := herd.Equivalent("breeding-ewe", herd.ReckoningDrySheepSouthAustralia)
	dse, _ := south.Each(units.Low)
	fmt.Println(dse, south.Source, err)
	tasmania, err := herd.Equivalent("ewe-with-lambs", herd.ReckoningDrySheepTasmania)
	dse, _ = tasmania.Each(units.Low)
	fmt.Println(dse, tasmania.Source, err)
	// Output:
	// 1.5 DSE (dry sheep south australia) SA-DSE <nil>
	// 3.3 DSE (dry sheep tasmania) CRADLE-COAST-DSE <nil>
}

// Which animals does the federal reckoning know, and how many make a unit?
func ExampleEquivalents() {
	rows, err := herd.Equivalents(herd.ReckoningFederal)
	for _, row := range rows {
		if row.Head > 1 {
			fmt.Printf("%.0f %s\n", row.Head, row.Class)
		}
	}
	fmt.Println(err)
	// Output:
	// 5 sheep
	// 5 goat
	// <nil>
}

// What is one livestock unit of the European Union?
func ExampleDefinition() {
	d, err := herd.Definition(herd.ReckoningEuropean)
	fmt.Println(d.What, err)
	// Output:
	// the grazing of a grown dairy cow that gives 3,000 kg of milk a year without concentrate <nil>
}

// How many livestock units are my sixteen sheep and eighteen lambs?
func ExampleTotalEquivalent() {
	total, err := herd.TotalEquivalent([]string{"sheep", "lamb"}, []float64{16, 18}, herd.ReckoningScottish, units.Low)
	fmt.Println(total, err)
	// Output:
	// 2 LU (scottish) <nil>
}

// How many alpacas eat as much as a hundred wethers?
func ExampleEquivalentHead() {
	head, err := herd.EquivalentHead(100, "wether", "female-alpaca", herd.ReckoningDrySheepSouthAustralia, units.Low)
	fmt.Printf("%.0f %v\n", head, err)
	// Output:
	// 77 <nil>
}

// How many dry sheep are ten adult equivalents, and how many livestock units?
func ExampleConversion() {
	factor, err := herd.Conversion(herd.ReckoningAdultEquivalent, herd.ReckoningDrySheepMla)
	fmt.Println(10*factor, err)
	_, err = herd.Conversion(herd.ReckoningAdultEquivalent, herd.ReckoningNix)
	fmt.Println(units.Impossible(err))
	// Output:
	// 84 <nil>
	// true
}

// How many tropical livestock units is an ox of 400 kg?
func ExampleTropicalUnits() {
	tlu, err := herd.TropicalUnits(400 * units.LiveKilogram)
	fmt.Printf("%.2f %v\n", tlu, err)
	// Output:
	// 1.42 <nil>
}

// What does a ewe of 60 kg that rears 140 lambs to the hundred count in New
// Zealand?
func ExampleNewZealandUnits() {
	lu, err := herd.NewZealandUnits(60*units.LiveKilogram, 140*units.Percent)
	fmt.Printf("%.1f %v\n", lu, err)
	// Output:
	// 1.6 <nil>
}

// What does a Merino ewe of 52 kg with twins at foot count, and one of 37 kg?
func ExampleMerinoDrySheep() {
	dse, err := herd.MerinoDrySheep(52*units.LiveKilogram, herd.MerinoLactatingTwin)
	fmt.Printf("%.2f %v\n", dse, err)
	dse, err = herd.MerinoDrySheep(37*units.LiveKilogram, herd.MerinoLactatingTwin)
	fmt.Println(dse, err)
	// Output:
	// 3.54 <nil>
	// 2.9 herd.MerinoDrySheep: weight is 37 kg, outside what MMFS-12-14 covers (from 40 kg to 60 kg); the value is still given
}

// How many animal units of manure are ten big dairy cows and a hundred sheep?
func ExampleTotalManureUnits() {
	m, err := herd.TotalManureUnits([]string{"dairy-cow-over-1000-lb", "sheep"}, []float64{10, 100})
	fmt.Println(m, err)
	// Output:
	// 24 AU of manure <nil>
}

// And an alpaca, which the statute does not list?
func ExampleManureUnitsByWeight() {
	m, err := herd.ManureUnitsByWeight(150 * units.LivePound)
	fmt.Println(m, err)
	// Output:
	// 0.15 AU of manure <nil>
}

// What does a duck count under rules on manure?
func ExampleManureUnitRows() {
	for _, row := range herd.ManureUnitRows() {
		if row.Class == "duck" {
			fmt.Println(row.Each, row.Source)
		}
	}
	// Output:
	// 0.01 AU of manure MINN-116-06
}
