package herd_test

import (
	"encoding/csv"
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"os"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/herd"
	"example.org/soum/units"
)

// TestClassesAgainstPrint compares every figure of the table of classes with a
// second reading of print, in testdata/classes.csv, in both directions.
func TestClassesAgainstPrint(t *testing.T) {
	data, err := os.ReadFile("testdata/classes.csv")
	require.NoError(t, err)
	reader := csv.NewReader(strings.NewReader(string(data)))
	reader.Comment = '#'
	rows, err := reader.ReadAll()
	require.NoError(t, err)
	read := map[string]int{}
	for _, row := range rows[1:] {
		c, err := herd.ClassByName(row[0])
		if !assert.NoError(t, err) {
			continue
		}
		at := read[row[0]]
		read[row[0]]++
		inMilk := ""
		if c.WaterInMilk != 0 {
			inMilk = c.WaterInMilk.String()
		}
		got := []string{c.Kind.String(), c.Need.String(), c.WeightMark, c.PastureMark, c.Water.String(), inMilk, c.Manure.String()}
		assert.Equal(t, []string{row[1], row[2], row[4], row[7], row[8], row[9], row[10]}, got, row[0])
		weight, err := units.ParseLiveWeight(row[3])
		require.NoError(t, err)
		same(t, row[0]+" weight", weight, c.Weight)
		same(t, row[0]+" pasture", share(t, row[5], ""), c.Pasture.Low)
		same(t, row[0]+" pasture", share(t, row[6], ""), c.Pasture.High)
		if !assert.Less(t, at, len(c.Intake), row[0]) {
			continue
		}
		intake := c.Intake[at]
		assert.Equal(t, []string{row[11], row[15]}, []string{intake.Stage.String(), intake.Mark}, row[0])
		same(t, row[0]+" "+row[11], share(t, row[12], row[14]), intake.Share.Low)
		same(t, row[0]+" "+row[11], share(t, row[13], row[14]), intake.Share.High)
	}
	for _, c := range herd.Classes() {
		assert.Equal(t, len(c.Intake), read[c.Name], "%s: rows of the second reading", c.Name)
	}
}

// share reads "2.5 %", or a feed of a day over the weight of the animal.
func share(t *testing.T, text, over string) units.Fraction {
	if over == "" {
		f, err := units.ParseFraction(text)
		require.NoError(t, err)
		return f
	}
	feed, err := units.ParseDemand(text)
	require.NoError(t, err)
	weight, err := units.ParseLiveWeight(over)
	require.NoError(t, err)
	return units.Fraction(float64(feed) / float64(weight))
}

// same allows for the rounding of a float64 and no more.
func same[Q ~float64](t *testing.T, what string, want, got Q) {
	t.Helper()
	assert.InDelta(t, float64(want), float64(got), 1e-9*math.Abs(float64(want)), what)
}

var sourceKey = regexp.MustCompile(`\b[A-Z][A-Z0-9]*(-[A-Z0-9]+)+\b`)

// TestClassesNameTheirSources: a figure has a key of SOURCES.md, or says that
// it has none.
func TestClassesNameTheirSources(t *testing.T) {
	honest := func(of, source, mark string) {
		t.Helper()
		switch mark {
		case "A", "B", "D":
			assert.Regexp(t, sourceKey, source, of)
		case "M":
			assert.Contains(t, source, "from memory", of)
		case "practice":
			assert.Contains(t, source, "ours", of)
		default:
			t.Errorf("%s: mark %q", of, mark)
		}
	}
	seen := map[string]bool{}
	for _, c := range herd.Classes() {
		assert.Regexp(t, `^[a-z]+(-[a-z]+)*$`, c.Name)
		assert.False(t, seen[c.Name], c.Name)
		seen[c.Name] = true
		assert.NotEmpty(t, c.Note, c.Name)
		assert.Positive(t, float64(c.Weight), c.Name)
		honest(c.Name, c.WeightSource, c.WeightMark)
		honest(c.Name, c.PastureSource, c.PastureMark)
		require.NotEmpty(t, c.Intake, c.Name)
		for _, row := range c.Intake {
			honest(c.Name, row.Source, row.Mark)
			assert.LessOrEqual(t, row.Share.Low, row.Share.High, c.Name)
			assert.Positive(t, float64(row.Share.Low), c.Name)
		}
	}
	for _, w := range herd.WaterFigures() {
		honest(w.Rule.String(), w.Source, w.Mark)
	}
}

func TestClassesAreCopies(t *testing.T) {
	rows := herd.Classes()
	rows[0].Name = "spoilt"
	rows[0].Intake[0].Share.Low = 9
	one, err := herd.ClassByName("ewe")
	require.NoError(t, err)
	one.Intake[0].Share.Low = 9
	for _, c := range herd.Classes() {
		assert.NotEqual(t, "spoilt", c.Name)
		for _, row := range c.Intake {
			assert.Less(t, float64(row.Share.Low), 1.0, c.Name)
		}
	}
}

func TestClassByName(t *testing.T) {
	for _, c := range herd.Classes() {
		got, err := herd.ClassByName(c.Name)
		require.NoError(t, err)
		assert.Equal(t, c, got)
	}
	_, err := herd.ClassByName("cow")
	var wrong *units.ParseError
	require.ErrorAs(t, err, &wrong)
	assert.ErrorContains(t, err, `"cow"`)
	for _, c := range herd.Classes() {
		assert.ErrorContains(t, err, c.Name)
	}
}

func TestIntakeAtAnotherStage(t *testing.T) {
	ewe, err := herd.ClassByName("ewe")
	require.NoError(t, err)
	row, err := ewe.IntakeAt(herd.StageLactating)
	require.NoError(t, err)
	same(t, "ewe in milk", 4.5*units.Percent, row.Share.At(units.Middle))
	_, err = ewe.IntakeAt(herd.StageLaying)
	assert.ErrorContains(t, err, "dry, lactating, late gestation")
	assert.ErrorContains(t, err, "ewe")
	var none *units.DomainError
	for _, stage := range []herd.Stage{0, -1, 99} {
		_, err = ewe.IntakeAt(stage)
		require.ErrorAs(t, err, &none)
		assert.Equal(t, "stage", none.Argument)
		assert.ErrorContains(t, err, "dry, late gestation, lactating, growing, laying")
	}
}

// TestEatsHay: those that hay feeds in place of grass, and nobody else.
func TestEatsHay(t *testing.T) {
	var eats []string
	for kind := herd.Kind(-1); kind <= herd.Donkeys+1; kind++ {
		if kind.EatsHay() {
			eats = append(eats, kind.String())
		}
	}
	assert.Equal(t, []string{"cattle", "sheep", "goats", "horses", "geese", "camelids", "deer", "rabbits", "donkeys"}, eats)
}

func TestKinds(t *testing.T) {
	var ruminants, birds, water, equine []herd.Kind
	for k := herd.Kind(-1); k < 20; k++ {
		if k.Ruminant() {
			ruminants = append(ruminants, k)
		}
		if k.Bird() {
			birds = append(birds, k)
		}
		if k.WaterBird() {
			water = append(water, k)
		}
		if k.Equine() {
			equine = append(equine, k)
		}
	}
	assert.Equal(t, []herd.Kind{herd.Cattle, herd.Sheep, herd.Goats, herd.Camelids, herd.Deer}, ruminants)
	assert.Equal(t, []herd.Kind{herd.Horses, herd.Donkeys}, equine)
	assert.Equal(t, []herd.Kind{herd.Chickens, herd.Turkeys, herd.Geese, herd.Ducks}, birds)
	assert.Equal(t, []herd.Kind{herd.Geese, herd.Ducks}, water)
}

// TestOrderOfNeeds holds the table to common practice, which has no agreed
// source: cow in milk, then beef cattle and sheep, then pigs, then birds.
func TestOrderOfNeeds(t *testing.T) {
	need := func(name string) herd.Need {
		c, err := herd.ClassByName(name)
		require.NoError(t, err)
		return c.Need
	}
	for _, second := range []string{"suckler-cow", "growing-cattle", "ewe", "meat-goat", "horse", "bull", "ram", "alpaca", "donkey"} {
		assert.Less(t, need("dairy-cow"), need(second), second)
		assert.Less(t, need(second), need("sow"), second)
	}
	for _, last := range []string{"laying-hen", "broiler", "goose", "turkey", "duck"} {
		assert.Less(t, need("growing-pig"), need(last), last)
	}
}

func TestWaterAt(t *testing.T) {
	ewe, err := herd.ClassByName("ewe")
	require.NoError(t, err)
	assert.Equal(t, herd.WaterLactatingEwe, ewe.WaterAt(herd.StageLactating))
	assert.Equal(t, herd.WaterSmallRuminant, ewe.WaterAt(herd.StageDry))
	cow, err := herd.ClassByName("suckler-cow")
	require.NoError(t, err)
	assert.Equal(t, herd.WaterCattle, cow.WaterAt(herd.StageLactating))
	assert.Equal(t, herd.WaterUnknown, herd.Class{}.WaterAt(herd.StageDry))
}

// TestBirdsByEquation works out the feed of birds for which print has only the
// equation, kg a day = 0.0582 * kg^0.651, as the rows give it: in whole grams.
func TestBirdsByEquation(t *testing.T) {
	for name, kg := range map[string]float64{"turkey": 6.5, "duck": 1.6, "laying-hen": 2} {
		c, err := herd.ClassByName(name)
		require.NoError(t, err)
		grams := math.Round(1000 * 0.0582 * math.Pow(kg, 0.651))
		same(t, name, units.Fraction(grams/1000/kg), c.Intake[0].Share.Low)
		if name != "laying-hen" { // her row has another weight
			same(t, name, units.LiveWeight(kg), c.Weight)
		}
	}
}

// secondReading reads a table of testdata that the tests compare themselves.
func secondReading(t *testing.T, path string) [][]string {
	data, err := os.ReadFile(path)
	require.NoError(t, err)
	reader := csv.NewReader(strings.NewReader(string(data)))
	reader.Comment = '#'
	rows, err := reader.ReadAll()
	require.NoError(t, err)
	return rows[1:]
}

// TestRowOfOnesOwn: a user's row is the same struct, with words for the
// enumerations and text with units for the quantities.
func TestRowOfOnesOwn(t *testing.T) {
	var c herd.Class
	err := json.Unmarshal([]byte(`{"name": "small-ewe", "kind": "sheep", "need": "upkeep", "weight": "40 kg",
		"intake": [{"stage": "late gestation", "share": {"low": "2 %", "high": "3 %"}, "source": "my scale", "mark": "practice"}],
		"pasture": {"low": "90 %", "high": "100 %"}, "water": "small ruminant", "manure": "unknown"}`), &c)
	require.NoError(t, err)
	demand, err := herd.Group{Class: c, Head: 10}.DemandOn(0, units.Low)
	require.NoError(t, err)
	same(t, "10 * 40 kg * 2 % * 90 %", 7.2*units.KilogramPerDay, demand)

	err = json.Unmarshal([]byte(`{"kind": "unicorn"}`), &c)
	var wrong *units.ParseError
	require.True(t, errors.As(err, &wrong))
	assert.Contains(t, wrong.Accepts, "cattle")
}

func ExampleClasses() {
	for _, c := range herd.Classes()[:3] {
		fmt.Println(c.Name, c.Weight.In(units.US), c.Intake[0].Share.High.In(units.US))
	}
	// Output:
	// dairy-cow 1,400 lb 3.5 %
	// suckler-cow 1,300 lb 2.7 %
	// growing-cattle 750 lb 3 %
}

// What does a milking goat eat, and who says so?
func ExampleClassByName() {
	goat, err := herd.ClassByName("dairy-goat")
	if err != nil {
		fmt.Println(err)
		return
	}
	intake, err := goat.IntakeAt(herd.StageLactating)
	fmt.Println(intake.Share.Low.In(units.US), "to", intake.Share.High.In(units.US), "of", goat.Weight.In(units.US), intake.Source, err)
	_, err = goat.IntakeAt(herd.StageLaying)
	fmt.Println(err)
	// Output:
	// 4 % to 5 % of 132 lb NCAT-MATH <nil>
	// "laying": no intake is given for this stage; class dairy-goat takes one of: lactating, dry
}
