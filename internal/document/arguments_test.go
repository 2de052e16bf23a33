package document_test

import (
	"encoding/json"
	"errors"
	"math"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"example.org/soum/internal/document"
	"example.org/soum/units"
)

// strip is what a function may take as one argument, with its fields.
type strip struct {
	Name  string       `json:"name"`
	Area  units.Area   `json:"area_m2"`
	Day   units.Date   `json:"day"`
	Price units.Money  `json:"price"`
	Cover []units.Area `json:"cover"`
}

// arguments has one of each kind.
type arguments struct {
	Height units.Height
	Factor float64
	Head   int
	Sure   bool
	Name   string
	Slope  slope
	Day    units.Date
	Price  units.Money
	Cover  []units.Height
	Turn   [2]int
	Strip  strip
	Strips []strip
	Farm   *holding
	Later  document.Part
}

// places puts every field at its name with a small letter, none required.
func (a *arguments) places() []document.Argument {
	return []document.Argument{
		{"height", &a.Height, true}, {"factor", &a.Factor, true}, {"head", &a.Head, true}, {"sure", &a.Sure, true},
		{"name", &a.Name, true}, {"slope", &a.Slope, true}, {"day", &a.Day, true}, {"price", &a.Price, true},
		{"cover", &a.Cover, true}, {"turn", &a.Turn, true}, {"strip", &a.Strip, true}, {"strips", &a.Strips, true},
		{"farm", &a.Farm, true}, {"later", &a.Later, true},
	}
}

// sameOrGap compares quantities of which both may be NaN.
func sameOrGap[Q ~float64](a, b Q) bool {
	return a == b || math.IsNaN(float64(a)) && math.IsNaN(float64(b))
}

func TestArguments(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	money, _ := units.ParseMoney("12.50 EUR")
	day, _ := units.ParseDate("2000-04-15")
	for data, want := range map[string]arguments{
		`{}`:                                                              {},
		"\ufeff {\"head\": 3}\n":                                          {Head: 3},
		`{"height": 0.25}`:                                                {Height: 0.25},
		`{"height": "25 cm"}`:                                             {Height: 25 * units.HeightCentimetre},
		`{"height": "1e300 m"}`:                                           {Height: 1e300}, // a function judges the size of its arguments
		`{"height": 5e-324}`:                                              {Height: 5e-324},
		`{"height": null, "factor": null}`:                                {Height: units.Height(nan), Factor: nan},
		`{"height": "NaN", "factor": "NaN"}`:                              {Height: units.Height(nan), Factor: nan},
		`{"height": "Infinity", "factor": "-Inf"}`:                        {Height: units.Height(inf), Factor: -inf},
		`{"height": "-Inf m", "factor": "0.25"}`:                          {Height: units.Height(-inf), Factor: 0.25},
		`{"head": 12.0, "turn": [1, 2], "sure": true}`:                    {Head: 12, Turn: [2]int{1, 2}, Sure: true},
		`{"name": "NaN", "slope": "steep"}`:                               {Name: "NaN", Slope: steep},
		`{"day": "2000-04-15", "price": "12.50 EUR"}`:                     {Day: day, Price: money},
		`{"cover": [0.25, null, "25 cm"], "strips": [{"name": "a"}, {}]}`: {Cover: []units.Height{0.25, units.Height(nan), 25 * units.HeightCentimetre}, Strips: []strip{{Name: "a"}, {}}},
		`{"strip": {"area_m2": 3, "day": "2000-04-15", "cover": ["2 m2", null]}}`: {Strip: strip{Area: 3, Day: day, Cover: []units.Area{2, units.Area(nan)}}},
		`{"farm": {"version": 1, "share": "28 %", "fields": []}}`:                 {Farm: &holding{Version: 1, Share: 28 * units.Percent, Fields: []field{}}},
	} {
		var got arguments
		if err := document.Arguments([]byte(data), got.places()); err != nil {
			t.Errorf("%s: %v", data, err)
		}
		same := cmp.Options{
			cmp.AllowUnexported(field{}, holding{}), cmpopts.EquateNaNs(), cmp.Comparer(sameOrGap[units.Height]), cmp.Comparer(sameOrGap[units.Area]), cmpopts.IgnoreFields(arguments{}, "Later"),
			cmp.Comparer(func(a, b units.Money) bool { return a.String() == b.String() }),
			cmp.Comparer(func(a, b units.FeedPrice) bool { return a.String() == b.String() }),
		}
		if diff := cmp.Diff(want, got, same); diff != "" {
			t.Errorf("%s: %s", data, diff)
		}
	}
}

func TestWrongArguments(t *testing.T) {
	const known = "height, factor, head, sure, name, slope, day, price, cover, turn, strip, strips, farm, later"
	const areas = "a number in base units, or text: a number and one of: m2, ha, ft2, yd2, ac"
	const heights = "a number and one of: m, mm, cm, ft, in"
	for data, want := range map[string]string{
		``:                             `document: empty; a JSON object of arguments, such as {"height": 0.2}`,
		`[1]`:                          `document: […] is a list; a JSON object of arguments, such as {"height": 0.2}`,
		`{"height": 1`:                 `document: not JSON: the text ends before the object does; a whole JSON object`,
		`{"height": 1,}`:               `document: not JSON at line 1, column 14: invalid character '}' looking for beginning of object key string`,
		`{"height": 01}`:               `document: not JSON at line 1, column 13: invalid character '1' after object key:value pair`,
		`{"height": 1} 2`:              `document: something stands behind the end of the object; one JSON object and nothing else`,
		"{\"name\": \"\xff\"}":         `document: not UTF-8 text; JSON in UTF-8`,
		`{"height": 1, "height": 2}`:   `height: this key stands twice in its object; each key once`,
		`{"strip": {"day":1,"day":1}}`: `strip.day: this key stands twice in its object; each key once`,
		`{"later": {"day":1,"day":1}}`: `later.day: this key stands twice in its object; each key once`,
		`{"later": ` + strings.Repeat("[", 64) + strings.Repeat("]", 64) + `}`: `later` + strings.Repeat("[0]", 63) + `: is nested more than 64 deep; a flatter document`,

		`{"heigth": 1}`:            `heigth: unknown argument, perhaps "height" is meant; the arguments here are ` + known,
		`{"zebra": 1, "apple": 2}`: `zebra: unknown argument; the arguments here are ` + known,
		`{"apple": 1, "zebra": 2}`: `apple: unknown argument; the arguments here are ` + known,
		`{"Head": 1}`:              `Head: unknown argument, perhaps "head" is meant; the arguments here are ` + known,
		`{"strip": {"are_m2": 1}}`: `strip.are_m2: unknown key, perhaps "area_m2" is meant; the keys here are name, area_m2, day, price, cover`,

		`{"height": 1e999}`:             `height: 1e999 is too large a number; a number in base units, or text: ` + heights,
		`{"factor": -1e999}`:            `factor: -1e999 is too large a number; a number`,
		`{"factor": "1e999"}`:           `factor: "1e999" is text; a number`,
		`{"factor": "a lot"}`:           `factor: "a lot" is text; a number`,
		`{"factor": ""}`:                `factor: "" is text; a number`,
		`{"height": "0.25"}`:            `height: "0.25" is no height: the unit is missing; ` + heights,
		`{"height": "1 lb"}`:            `height: "1 lb" is no height: no unit "lb"; ` + heights,
		`{"height": true}`:              `height: true is a yes or no; a number in base units, or text: ` + heights,
		`{"height": [1]}`:               `height: […] is a list; a number in base units, or text: ` + heights,
		`{"cover": [1, {}]}`:            `cover[1]: {…} is an object; a number in base units, or text: ` + heights,
		`{"cover": 1}`:                  `cover: 1 is a bare number; a list`,
		`{"cover": null}`:               `cover: null is not taken; a list`,
		`{"turn": [1]}`:                 `turn: […] has 1 items; a list of 2 items`,
		`{"head": 2.5}`:                 `head: 2.5 is not a whole number; a whole number`,
		`{"head": 2147483648}`:          `head: 2147483648 is too large a number; a whole number`,
		`{"head": 1e999}`:               `head: 1e999 is too large a number; a whole number`,
		`{"head": null}`:                `head: null is not taken; a whole number`,
		`{"head": "2"}`:                 `head: "2" is text; a whole number`,
		`{"sure": null}`:                `sure: null is not taken; true or false`,
		`{"sure": 1}`:                   `sure: 1 is a bare number; true or false`,
		`{"name": 1}`:                   `name: 1 is a bare number; text`,
		`{"slope": 1}`:                  `slope: 1 is a bare number; text: one of: flat, steep`,
		`{"slope": "mild"}`:             `slope: "mild" is no slope: no such word; one of: flat, steep`,
		`{"day": 11062}`:                `day: 11062 is a bare number; text: one of: year-month-day, such as 2000-04-15`,
		`{"day": "+10000-01-01"}`:       `day: "+10000-01-01" is outside the years 0000 to 9999; text: one of: year-month-day, such as 2000-04-15`,
		`{"price": {}}`:                 `price: {…} is an object; text: a number and one of: a currency of three capital letters such as USD or EUR`,
		`{"strip": null}`:               `strip: null is not taken; an object`,
		`{"strip": {"area_m2": []}}`:    `strip.area_m2: […] is a list; ` + areas,
		`{"strips": [{}, {"day": ""}]}`: `strips[1].day: "" is no date: not a date; one of: year-month-day, such as 2000-04-15`,

		// A document keeps the stricter rule, and paths of its own.
		`{"farm": 3}`:    `farm: 3 is a bare number; an object`,
		`{"farm": null}`: `farm: null is not taken; an object`,
		`{"farm": {}}`:   `version: missing; a whole number`,
		`{"farm": {"version": 1, "share": 0.28}}`:                               `share: 0.28 is a bare number; text with a unit, such as "0.28 %"`,
		`{"farm": {"version": 1, "share": null}}`:                               `share: null is not taken; leave the key out, or give text: a number and one of: share, %, lb/short ton`,
		`{"farm": {"version": 1, "share": "NaN"}}`:                              `share: "NaN" is no fraction: the unit is missing; a number and one of: share, %, lb/short ton`,
		`{"farm": {"version": 1, "share": "Inf %"}}`:                            `share: "Inf %" is not a finite number; text: a number and one of: share, %, lb/short ton`,
		`{"farm": {"version": 1, "factor": "2"}}`:                               `factor: "2" is text; a number`,
		`{"farm": {"version": 1, "factor": 1e31}}`:                              `factor: 1e31 is too large a number; a number`,
		`{"farm": {"version": 1, "factor": 1e999}}`:                             `factor: 1e999 is too large a number; a number`,
		`{"farm": {"version": 1, "version": 1}}`:                                `version: this key stands twice in its object; each key once`,
		`{"farm": {"version": 1, "fields": [{"id": x}]}}`:                       `fields[0].id: not JSON at line 1, column 43: invalid character 'x' looking for beginning of value`,
		`{"farm": ` + strings.Repeat("[", 64) + strings.Repeat("]", 64) + `}`:   strings.Repeat("[0]", 63) + `: is nested more than 64 deep; a flatter document`,
		`{"strip": {"name": "a", "cover": [1]}, "farm": {"versoin": 1}, "x":1}`: `versoin: unknown key, perhaps "version" is meant; the keys here are version, today, fields, share, factor, hay, cash, any, note, and any that begin with x-`,
	} {
		var got arguments
		err := document.Arguments([]byte(data), got.places())
		var wrong *document.Error
		if !errors.As(err, &wrong) {
			t.Errorf("%.200s: %T %v", data, err, err)
			continue
		}
		equal(t, want, err.Error())
	}
}

// TestMissingArguments names the first one, in the function's order.
func TestMissingArguments(t *testing.T) {
	var height units.Height
	var name string
	into := []document.Argument{{Name: "height", Into: &height}, {Name: "name", Into: &name}}
	fails(t, document.Arguments([]byte(`{}`), into), "height: missing; a number in base units, or text: a number and one of: m, mm, cm, ft, in")
	fails(t, document.Arguments([]byte(`{"height": 1}`), into), "name: missing; text")
	must(t, document.Arguments([]byte(`{"name": "a", "height": 1}`), into))
}

// TestPart reads an argument when its type is known, with the path it had.
func TestPart(t *testing.T) {
	var got arguments
	must(t, document.Arguments([]byte(`{"later": {"height": "25 cm", "head": 1e999}}`), got.places()))
	var whole strip
	fails(t, got.Later.Fill(&whole), `later.height: unknown key; the keys here are name, area_m2`)
	var again arguments
	fails(t, got.Later.Arguments(again.places()), `later.head: 1e999 is too large a number; a whole number`)
	equal(t, 25*units.HeightCentimetre, again.Height)
	must(t, document.Arguments([]byte(`{"later": null}`), got.places()))
	var number float64
	must(t, got.Later.Fill(&number))
	equal(t, true, math.IsNaN(number))
	fails(t, got.Later.Arguments(nil), `later: null is not taken; an object of arguments`)
}

// FuzzArguments reads anything: it must not panic, and what is wrong is one short line.
func FuzzArguments(f *testing.F) {
	for _, seed := range []string{
		`{}`, `{"height": 0.2, "factor": "Inf", "cover": [1, null, "2 m"]}`, `{"head": 3, "slope": "flat", "day": "2000-04-15", "price": "1 USD"}`,
		`{"strips": [{"name": "a", "price": "1 USD"}], "later": {"x": [null]}}`, `{"farm": ` + whole + `}`, `{"height": 1, "height": 2}`, `{"turn": [1, 2.5]}`,
	} {
		f.Add([]byte(seed))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		var got arguments
		if err := document.Arguments(data, got.places()); err != nil {
			var wrong *document.Error
			if !errors.As(err, &wrong) || strings.ContainsAny(err.Error(), "\n\r") || len(err.Error()) > 100_000 {
				t.Fatalf("%T %q", err, err)
			}
			return
		}
		if !json.Valid([]byte(strings.TrimPrefix(string(data), "\ufeff"))) {
			t.Fatalf("%q was read", data)
		}
	})
}
