package units_test

import (
	"encoding"
	"fmt"
	"math"
	"math/big"
	"reflect"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/soum/internal/check"
	"example.org/soum/internal/decl"
	"example.org/soum/units"
)

func TestPrintedTables(t *testing.T) { check.Tables(t) }

// quantity is what every generated quantity can do, through its pointer.
type quantity interface {
	encoding.TextUnmarshaler
	fmt.Stringer
	In(units.System) string
}

// quantities has one of every generated quantity;
// TestEveryConstantIsItsDefinition fails for one that is missing.
func quantities() []quantity {
	return []quantity{
		new(units.Length), new(units.Height), new(units.PlateHeight), new(units.RainDepth), new(units.Area), new(units.Volume),
		new(units.Mass), new(units.DryMatter), new(units.FreshFeed), new(units.LiveWeight), new(units.Yield), new(units.Density),
		new(units.PlateDensity), new(units.Growth), new(units.Demand), new(units.StockDensity), new(units.HeadRate),
		new(units.AnimalUnits), new(units.UnitDays), new(units.UnitRate), new(units.UseRate), new(units.UseDensity),
		new(units.LandPerUse), new(units.WaterRate), new(units.Days), new(units.Fraction), new(units.TemperatureDifference),
		new(units.Milk), new(units.LiveGain), new(units.NutrientRate), new(units.EnergyRate), new(units.EnergyDensity), new(units.Speed),
		new(units.Concentration), new(units.Dressing), new(units.FeedDensity),
		new(units.RainUse),
		new(units.RainRate), new(units.Radiation), new(units.Pressure), new(units.PressureSlope), new(units.Angle), new(units.WaterHolding), new(units.DegreeDays),
		new(units.Voltage), new(units.PulseEnergy),
	}
}

func name(q any) string { return reflect.TypeOf(q).Elem().Name() }

// value gives the float behind a quantity.
func value(q any) float64 { return reflect.ValueOf(q).Elem().Float() }

// with gives a new quantity of q's type.
func with(q any, v float64) quantity {
	made := reflect.New(reflect.TypeOf(q).Elem())
	made.Elem().SetFloat(v)
	return made.Interface().(quantity)
}

// exactly evaluates a definition: products and quotients of numbers and of the
// units the world agreed on.
func exactly(t *testing.T, definition string) *big.Rat {
	t.Helper()
	// The international yard and pound of 1959, the acre of 4,840 square yards,
	// the US gallon of 231 cubic inches, an inch being a 36th of a yard.
	agreed := map[string]string{
		"yd": "0.9144", "lb": "0.45359237", "ha": "10000",
		"ft": "yd / 3", "in": "yd / 36", "ac": "4840 * yd * yd", "gal": "231 * in * in * in",
	}
	result, operator := big.NewRat(1, 1), "*"
	for _, word := range strings.Fields(definition) {
		if word == "*" || word == "/" {
			operator = word
			continue
		}
		factor, isNumber := new(big.Rat).SetString(word)
		if !isNumber {
			of, known := agreed[word]
			if !known {
				t.Fatalf("%q: no unit %q", definition, word)
			}
			factor = exactly(t, of)
		}
		if operator == "*" {
			result.Mul(result, factor)
		} else {
			result.Quo(result, factor)
		}
	}
	return result
}

// definitions tells every unit in base units.
var definitions = map[string]string{
	"Metre": "1", "Millimetre": "1 / 1000", "Centimetre": "1 / 100", "Kilometre": "1000", "Yard": "yd", "Foot": "ft", "Inch": "in", "Mile": "1760 * yd",
	"HeightMetre": "1", "HeightMillimetre": "1 / 1000", "HeightCentimetre": "1 / 100", "HeightFoot": "ft", "HeightInch": "in",
	"PlateMetre": "1", "PlateMillimetre": "1 / 1000", "PlateCentimetre": "1 / 100", "PlateInch": "in",
	"RainMetre": "1", "RainMillimetre": "1 / 1000", "RainCentimetre": "1 / 100", "RainInch": "in",
	"SquareMetre": "1", "Hectare": "ha", "SquareFoot": "ft * ft", "SquareYard": "yd * yd", "Acre": "ac",
	"CubicMetre": "1", "Litre": "1 / 1000", "CubicFoot": "ft * ft * ft", "CubicInch": "in * in * in", "Gallon": "gal",
	"Kilogram": "1", "Gram": "1 / 1000", "Tonne": "1000", "Pound": "lb", "Ounce": "lb / 16", "ShortTon": "2000 * lb",
	"DryMatterKilogram": "1", "DryMatterGram": "1 / 1000", "DryMatterTonne": "1000", "DryMatterPound": "lb", "DryMatterShortTon": "2000 * lb",
	"FreshKilogram": "1", "FreshGram": "1 / 1000", "FreshTonne": "1000", "FreshPound": "lb", "FreshOunce": "lb / 16", "FreshShortTon": "2000 * lb",
	"LiveKilogram": "1", "LiveGram": "1 / 1000", "LiveTonne": "1000", "LivePound": "lb",
	"KilogramPerSquareMetre": "1", "KilogramPerHectare": "1 / ha", "TonnePerHectare": "1000 / ha", "PoundPerAcre": "lb / ac", "ShortTonPerAcre": "2000 * lb / ac",
	"KilogramPerCubicMetre": "1", "KilogramPerHectareCentimetre": "1 / ha * 100", "PoundPerAcreInch": "lb / ac / in",
	"PlateKilogramPerCubicMetre": "1", "PlateKilogramPerHectareCentimetre": "1 / ha * 100", "PlatePoundPerAcreInch": "lb / ac / in",
	"KilogramPerSquareMetreDay": "1", "KilogramPerHectareDay": "1 / ha", "PoundPerAcreDay": "lb / ac",
	"KilogramPerDay": "1", "GramPerDay": "1 / 1000", "PoundPerDay": "lb",
	"StockKilogramPerSquareMetre": "1", "StockKilogramPerHectare": "1 / ha", "StockPoundPerAcre": "lb / ac",
	"HeadPerSquareMetre": "1", "HeadPerHectare": "1 / ha", "HeadPerAcre": "1 / ac",
	"AnimalUnit": "1", "AnimalUnitDay": "1", "AnimalUnitMonth": "30", "AnimalUnitYear": "360",
	"AnimalUnitPerSquareMetre": "1", "AnimalUnitPerHectare": "1 / ha", "AnimalUnitPerAcre": "1 / ac",
	"AnimalUnitDayPerSquareMetre": "1", "AnimalUnitDayPerHectare": "1 / ha", "AnimalUnitDayPerAcre": "1 / ac",
	"AnimalUnitMonthPerHectare": "30 / ha", "AnimalUnitMonthPerAcre": "30 / ac",
	"AnimalUnitDayPerCubicMetre": "1", "AnimalUnitDayPerHectareCentimetre": "1 / ha * 100", "AnimalUnitDayPerAcreInch": "1 / ac / in",
	"SquareMetrePerAnimalUnitDay": "1", "HectarePerAnimalUnitMonth": "ha / 30", "AcrePerAnimalUnitMonth": "ac / 30", "AcrePerAnimalUnitYear": "ac / 360",
	"CubicMetrePerDay": "1", "LitrePerDay": "1 / 1000", "GallonPerDay": "gal",
	"Day": "1", "Week": "7", "Hour": "1 / 24",
	"Whole": "1", "Percent": "1 / 100", "PoundPerShortTon": "1 / 2000",
	"MilkKilogramPerDay": "1", "MilkPoundPerDay": "lb",
	"GainKilogramPerDay": "1", "GainGramPerDay": "1 / 1000", "GainPoundPerDay": "lb",
	"NutrientKilogramPerDay": "1", "NutrientGramPerDay": "1 / 1000", "NutrientPoundPerDay": "lb",
	"MegajoulePerDay": "1", "KilojoulePerDay": "1 / 1000", "MegacaloriePerDay": "4.184", "KilocaloriePerDay": "4.184 / 1000",
	"MegajoulePerKilogram": "1", "MegacaloriePerKilogram": "4.184", "KilocaloriePerKilogram": "4.184 / 1000",
	"MegacaloriePerPound": "4.184 / lb", "KilocaloriePerPound": "4.184 / 1000 / lb",
	"MetrePerDay": "1", "MetrePerSecond": "24 * 3600", "KilometrePerHour": "24 * 1000", "MilePerHour": "24 * 1760 * yd",
	"UseKilogramPerCubicMetre": "1", "UseKilogramPerHectareMillimetre": "1000 / ha", "UsePoundPerAcreInch": "lb / ac / in", "UseShortTonPerAcreInch": "2000 * lb / ac / in",
	"CelsiusDegree": "1", "FahrenheitDegree": "5 / 9",
	"KilogramPerKilogram": "1", "PartPerHundred": "1 / 100", "PartPerMillion": "1 / 1000000",
	"DressingKilogramPerSquareMetre": "1", "DressingKilogramPerHectare": "1 / ha", "DressingPoundPerAcre": "lb / ac",
	"FeedKilogramPerCubicMetre": "1", "FeedPoundPerCubicFoot": "lb / ft / ft / ft",
	"AcreFoot":        "ac * ft",
	"RainMetrePerDay": "1", "RainMillimetrePerDay": "1 / 1000", "RainInchPerDay": "in", "RainInchPerWeek": "in / 7", "RainMillimetrePerHour": "24 / 1000", "RainInchPerHour": "24 * in",
	"MegajoulePerSquareMetreDay": "1", "WattPerSquareMetre": "24 * 3600 / 1000000",
	"Kilopascal": "1", "Pascal": "1 / 1000", "Millibar": "1 / 10", "KilopascalPerCelsius": "1",
	"Radian": "1", "Degree": "3.14159265358979323846264338327950288419716 / 180",
	"HoldingMetrePerMetre": "1", "HoldingMillimetrePerMetre": "1 / 1000", "HoldingInchPerFoot": "1 / 12",
	"CelsiusDay": "1", "FahrenheitDay": "5 / 9",
	"Volt": "1", "Kilovolt": "1000", "Joule": "1", "Millijoule": "1 / 1000",
}

// TestEveryConstantIsItsDefinition compares every unit, through every spelling
// that is declared, with the nearest float to its exact definition.
func TestEveryConstantIsItsDefinition(t *testing.T) {
	root, err := decl.Root()
	if err != nil {
		t.Fatal(err)
	}
	declared, err := decl.Read(root, "units")
	if err != nil {
		t.Fatal(err)
	}
	byName := map[string]quantity{}
	for _, q := range quantities() {
		byName[name(q)] = q
	}
	spellings := 0
	for _, d := range declared.Quantities {
		if len(d.Units) == 0 {
			continue // Temperature has tests of its own
		}
		q := byName[d.Name]
		if q == nil {
			t.Errorf("%s is in no test", d.Name)
			continue
		}
		for _, u := range d.Units {
			definition, known := definitions[u.Name]
			if !known {
				t.Errorf("units.%s is not defined here", u.Name)
				continue
			}
			want, _ := exactly(t, definition).Float64()
			for _, s := range u.Spellings {
				for _, text := range []string{"1 " + s, "1" + s, " 1  " + s + " ", "1e0 " + s, "+1.0 " + s} {
					if err := q.UnmarshalText([]byte(text)); err != nil || value(q) != want {
						t.Errorf("%s: %q is %v (%v), want %v", d.Name, text, value(q), err, want)
					}
				}
				spellings++
			}
			accessor(t, q, want)
		}
		if got := accessors(q); got != len(d.Units) {
			t.Errorf("%s has %d accessors for %d units", d.Name, got, len(d.Units))
		}
	}
	if spellings < 200 {
		t.Errorf("%d spellings were read, where have the others gone?", spellings)
	}
}

var plainNumber = reflect.TypeFor[func() float64]()

// accessor looks for the method that tells one unit as 1.
func accessor(t *testing.T, q quantity, factor float64) {
	t.Helper()
	v := reflect.ValueOf(with(q, factor)).Elem()
	for i := range v.NumMethod() {
		if method := v.Method(i); method.Type() == plainNumber && method.Call(nil)[0].Float() == 1 {
			return
		}
	}
	t.Errorf("no accessor of %s tells %v as 1", name(q), factor)
}

func accessors(q quantity) (n int) {
	v := reflect.ValueOf(q).Elem()
	for i := range v.NumMethod() {
		if v.Method(i).Type() == plainNumber {
			n++
		}
	}
	return n
}

// TestAccessorsBearTheirUnit spot-checks that names and factors go together.
func TestAccessorsBearTheirUnit(t *testing.T) {
	for _, c := range []struct {
		what      string
		got, want float64
	}{
		{"12 in in feet", (12 * units.Inch).Feet(), 1},
		{"1 yd in inches", units.Yard.Inches(), 36},
		{"1 mi in feet", units.Mile.Feet(), 5280},
		{"1 km in metres", units.Kilometre.Metres(), 1000},
		{"1 ac in square feet", units.Acre.SquareFeet(), 43560},
		{"1 ac in square yards", units.Acre.SquareYards(), 4840},
		{"1 gal in cubic inches", units.Gallon.CubicInches(), 231},
		{"1 short ton in pounds", units.ShortTon.Pounds(), 2000},
		{"1 lb in ounces", units.Pound.Ounces(), 16},
		{"28 % as a share", (28 * units.Percent).Whole(), 0.28},
		{"1 t/ha in kg/ha", units.TonnePerHectare.KilogramsPerHectare(), 1000},
		{"2 weeks in hours", (2 * units.Week).Hours(), 336},
		{"1 km/h in m/s", (3.6 * units.KilometrePerHour).MetresPerSecond(), 1},
		{"1 Mcal in kJ", units.MegacaloriePerDay.KilojoulesPerDay(), 4184},
		{"1 lb/day in g/day", units.GainPoundPerDay.GramsPerDay(), 453.59237},
		{"1 AUY in AUM", units.AnimalUnitYear.Months(), 12},
	} {
		if math.Abs(c.got-c.want) > 1e-12*c.want {
			t.Errorf("%s: %v, want %v", c.what, c.got, c.want)
		}
	}
}

// same tells whether two floats are one value, the sign of 0 included.
func same(a, b float64) bool {
	return math.Float64bits(a) == math.Float64bits(b) || math.IsNaN(a) && math.IsNaN(b)
}

// odd are the floats that things go wrong with.
var odd = []float64{
	0, math.Copysign(0, -1), 1, -1, 0.1, 1.0 / 3, math.MaxFloat64, -math.MaxFloat64, math.SmallestNonzeroFloat64,
	-math.SmallestNonzeroFloat64, 0x1p-1022, 1e21, 1e-7, math.Inf(1), math.Inf(-1), math.NaN(),
}

// readsBack says how a quantity's String fails to give the same value.
func readsBack(q any, v float64) error {
	printed := with(q, v)
	text := printed.String()
	back := with(q, 1)
	if err := back.UnmarshalText([]byte(text)); err != nil || !same(value(back), v) {
		return fmt.Errorf("%s: %v is printed %q and read as %v (%v)", name(q), v, text, value(back), err)
	}
	_ = printed.In(units.US) + printed.In(units.Metric) // no panic
	return nil
}

func TestWhateverStringPrintsParsesBack(t *testing.T) {
	all := quantities()
	for _, q := range all {
		for _, v := range odd {
			if err := readsBack(q, v); err != nil {
				t.Error(err)
			}
		}
	}
	for _, v := range odd {
		if err := temperatureReadsBack(v); err != nil {
			t.Error(err)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		v := math.Float64frombits(rapid.Uint64().Draw(t, "bits"))
		for _, q := range all {
			if err := readsBack(q, v); err != nil {
				t.Fatal(err)
			}
		}
		if err := temperatureReadsBack(v); err != nil {
			t.Fatal(err)
		}
	})
}

func temperatureReadsBack(v float64) error {
	text := units.Celsius(v).String()
	back, err := units.ParseTemperature(text)
	if err != nil || !same(float64(back), v) {
		return fmt.Errorf("%v is printed %q and read as %v (%v)", v, text, float64(back), err)
	}
	return nil
}
