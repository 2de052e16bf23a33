package document_test

import (
	"encoding/json"
	"errors"
	"math"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
	"pgregory.net/rapid"

	"example.org/soum/internal/document"
	"example.org/soum/units"
)

// slope is a word such as the library's enumerations are.
type slope int

const (
	flat slope = iota + 1
	steep
)

func (s slope) MarshalText() ([]byte, error) {
	return []byte([]string{"", "flat", "steep"}[s]), nil
}

func (s *slope) UnmarshalText(text []byte) error {
	for i, name := range []string{"flat", "steep"} {
		if name == string(text) {
			*s = slope(i + 1)
			return nil
		}
	}
	return &units.ParseError{Quantity: "slope", Text: string(text), Problem: "no such word", Accepts: []string{"flat", "steep"}, Word: true}
}

// kept is embedded, as every object of a farm may have it.
type kept struct {
	Note  string         `json:"note,omitempty"`
	Extra map[string]any `json:"-" document:"extra"`
}

type grass struct {
	Density units.Density `json:"density" document:"required"`
}

type piece struct {
	To     units.Length `json:"to" document:"required"`
	Height units.Height `json:"height" allowed:"a ruler height above 0"`
}

type field struct {
	ID      string                     `json:"id" document:"required" allowed:"a name of your own"`
	Area    units.Area                 `json:"area,omitempty"`
	Slope   slope                      `json:"slope,omitempty"`
	Pasture units.RowOr[grass]         `json:"pasture,omitempty"`
	Pieces  []piece                    `json:"pieces,omitempty"`
	Shade   *bool                      `json:"shade,omitempty"`
	Trees   int                        `json:"trees,omitempty" allowed:"a whole number of 0 or more"`
	Turn    [2]int                     `json:"turn,omitempty"`
	Warm    *units.Temperature         `json:"warm,omitempty"`
	Rain    map[string]units.RainDepth `json:"rain,omitempty"`
	kept
}

type holding struct {
	Version int             `json:"version" document:"required"`
	Today   units.Date      `json:"today,omitempty"`
	Fields  []field         `json:"fields"`
	Share   units.Fraction  `json:"share,omitempty"`
	Factor  float64         `json:"factor,omitempty"`
	Hay     units.FeedPrice `json:"hay,omitzero"`
	Cash    *units.Money    `json:"cash,omitempty"`
	Any     any             `json:"any,omitempty"`
	Hidden  string
	kept
}

func must(t *testing.T, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

func equal[T comparable](t *testing.T, want, got T) {
	t.Helper()
	if want != got {
		t.Errorf("got  %v\nwant %v", got, want)
	}
}

func fails(t *testing.T, err error, with string) {
	t.Helper()
	if err == nil || !strings.Contains(err.Error(), with) {
		t.Errorf("got  %v\nwant …%s…", err, with)
	}
}

const whole = `{
  "version": 1,
  "today": "2000-04-15",
  "fields": [
    {"id": "top", "area": "3.5 ac", "slope": "steep", "pasture": "old meadow", "shade": false, "trees": 12.0, "turn": [3, 4],
     "pieces": [{"to": "45 ft", "height": "8 in"}, {"to": "90 ft", "height": "3 in"}], "warm": "-4 °F",
     "rain": {"2000-01": "1.5 in", "b.c": "3 mm"}, "x-colour": {"deep": [1, null, true, 2.50]}, "note": "wet in March"},
    {"id": "low", "pasture": {"density": "250 lb/ac/in"}}
  ],
  "share": "28 %", "factor": 1e-3, "hay": "180 USD/t", "cash": "12.50 EUR", "any": [1], "note": "ours"
}`

func wantWhole() holding {
	no, warm := false, units.Fahrenheit(-4)
	cash, _ := units.ParseMoney("12.50 EUR")
	hay, _ := units.ParseFeedPrice("180 USD/t")
	today, _ := units.NewDate(2000, time.April, 15)
	return holding{
		Version: 1, Today: today, Share: 28 * units.Percent, Factor: 0.001, Hay: hay, Cash: &cash, Any: []any{json.Number("1")},
		kept: kept{Note: "ours"},
		Fields: []field{
			{
				ID: "top", Area: 3.5 * units.Acre, Slope: steep, Pasture: units.RowOr[grass]{Name: "old meadow"}, Shade: &no, Trees: 12, Turn: [2]int{3, 4},
				Pieces: []piece{{45 * units.Foot, 8 * units.HeightInch}, {90 * units.Foot, 3 * units.HeightInch}}, Warm: &warm,
				Rain: map[string]units.RainDepth{"2000-01": 1.5 * units.RainInch, "b.c": 3 * units.RainMillimetre},
				kept: kept{Note: "wet in March", Extra: map[string]any{"x-colour": map[string]any{"deep": []any{json.Number("1"), nil, true, json.Number("2.50")}}}},
			},
			{ID: "low", Pasture: units.RowOr[grass]{Row: &grass{250 * units.PoundPerAcreInch}}},
		},
	}
}

// near compares quantities as the writer writes them, and what has unexported
// parts by its text.
var near = cmp.Options{
	cmpopts.EquateEmpty(),
	cmp.AllowUnexported(field{}, holding{}),
	cmp.Comparer(func(a, b units.Money) bool { return a.String() == b.String() }),
	cmp.Comparer(func(a, b units.FeedPrice) bool { return a.String() == b.String() }),
	cmp.Comparer(func(a, b units.Area) bool { return math.Abs(float64(a-b)) <= 1e-9*math.Abs(float64(b)) }),
	cmp.Comparer(func(a, b units.Length) bool { return math.Abs(float64(a-b)) <= 1e-9*math.Abs(float64(b)) }),
	cmp.Comparer(func(a, b units.Height) bool { return math.Abs(float64(a-b)) <= 1e-9*math.Abs(float64(b)) }),
	cmp.Comparer(func(a, b units.RainDepth) bool { return math.Abs(float64(a-b)) <= 1e-9*math.Abs(float64(b)) }),
	cmp.Comparer(func(a, b units.Density) bool { return math.Abs(float64(a-b)) <= 1e-9*math.Abs(float64(b)) }),
	cmp.Comparer(func(a, b units.Temperature) bool { return math.Abs(float64(a-b)) <= 1e-9*math.Abs(float64(b)) }),
	cmp.Comparer(func(a, b units.Fraction) bool { return math.Abs(float64(a-b)) <= 1e-9*math.Abs(float64(b)) }),
}

func TestWholeDocument(t *testing.T) {
	for _, data := range []string{whole, "\ufeff" + whole} { // some editors put a mark in front
		var got holding
		must(t, document.Decode([]byte(data), &got))
		if diff := cmp.Diff(wantWhole(), got, near); diff != "" {
			t.Error(diff)
		}
	}
}

func TestWhatIsWritten(t *testing.T) {
	got, err := document.Encode(wantWhole(), units.US)
	must(t, err)
	equal(t, `{
  "version": 1,
  "today": "2000-04-15",
  "fields": [
    {
      "id": "top",
      "area": "3.5 ac",
      "slope": "steep",
      "pasture": "old meadow",
      "pieces": [
        {
          "to": "45 ft",
          "height": "8 in"
        },
        {
          "to": "90 ft",
          "height": "3 in"
        }
      ],
      "shade": false,
      "trees": 12,
      "turn": [
        3,
        4
      ],
      "warm": "-4 °F",
      "rain": {
        "2000-01": "1.5 in",
        "b.c": "0.1181102362 in"
      },
      "note": "wet in March",
      "x-colour": {
        "deep": [
          1,
          null,
          true,
          2.50
        ]
      }
    },
    {
      "id": "low",
      "pasture": {
        "density": "250 lb/ac/in"
      }
    }
  ],
  "share": "28 %",
  "factor": 0.001,
  "hay": "180 USD/t",
  "cash": "12.50 EUR",
  "any": [
    1
  ],
  "note": "ours"
}
`, string(got))
}

func TestWrittenIsReadBack(t *testing.T) {
	for _, system := range []units.System{units.US, units.Metric} {
		data, err := document.Encode(wantWhole(), system)
		must(t, err)
		var got holding
		must(t, document.Decode(data, &got))
		if diff := cmp.Diff(wantWhole(), got, near); diff != "" {
			t.Error(diff)
		}
	}
}

func TestAnyQuantityIsWrittenWithinAThousandMillionth(t *testing.T) {
	type all struct {
		Height units.Height      `json:"height"`
		Area   units.Area        `json:"area"`
		Warm   units.Temperature `json:"warm"`
		Share  units.Fraction    `json:"share"`
		Factor float64           `json:"factor"`
	}
	number := rapid.OneOf(rapid.Float64Range(-1e9, 1e9), rapid.Float64Range(-50, 50), rapid.Float64Range(-1e-25, 1e-25), rapid.Float64Range(-1e29, 1e29)).
		Filter(func(v float64) bool { return v == 0 || math.Abs(v) > 1e-29 }) // smaller ones are refused
	rapid.Check(t, func(t *rapid.T) {
		want := all{
			units.Height(number.Draw(t, "height")), units.Area(number.Draw(t, "area")), units.Temperature(number.Draw(t, "warm")),
			units.Fraction(number.Draw(t, "share")), number.Draw(t, "factor"),
		}
		data, err := document.Encode(&want, units.System(rapid.IntRange(0, 1).Draw(t, "system")))
		if err != nil {
			t.Fatal(err)
		}
		var got all
		if err := document.Decode(data, &got); err != nil {
			t.Fatal(err)
		}
		near := func(a, b float64) bool { return math.Abs(a-b) <= 1e-9*math.Abs(a) }
		if !near(float64(want.Height), float64(got.Height)) || !near(float64(want.Area), float64(got.Area)) ||
			!near(float64(want.Warm), float64(got.Warm)) || !near(float64(want.Share), float64(got.Share)) || want.Factor != got.Factor {
			t.Fatalf("%v was written as %s and read as %v", want, data, got)
		}
	})
}

func TestShortText(t *testing.T) {
	type one struct {
		Height units.Height `json:"height"`
	}
	for _, c := range []struct {
		height units.Height
		system units.System
		want   string
	}{
		{9 * units.HeightInch, units.US, "9 in"},
		{9 * units.HeightInch, units.Metric, "22.86 cm"}, // 9 × 2.54
		{0, units.US, "0 in"},
		{9.000000000001 * units.HeightInch, units.US, "9 in"},
		{9.00001 * units.HeightInch, units.US, "9.00001 in"},
		{-0.25 * units.HeightInch, units.US, "-0.25 in"},
		{1200 * units.HeightInch, units.US, "1200 in"},
	} {
		data, err := document.Encode(one{c.height}, c.system)
		must(t, err)
		equal(t, "{\n  \"height\": \""+c.want+"\"\n}\n", string(data))
	}
}

// TestEncodeWantsASystem: a system that is neither of the two is not taken for metric.
func TestEncodeWantsASystem(t *testing.T) {
	for _, system := range []units.System{-1, 2, 99} {
		data, err := document.Encode(wantWhole(), system)
		if err == nil || !strings.HasSuffix(err.Error(), "no such system; system takes one of: metric, US") || data != nil {
			t.Errorf("system %d: %v, %s", int(system), err, data)
		}
	}
}

// inFields puts a field into a holding that is right but for it.
func inFields(field string) string { return `{"version": 1, "fields": [` + field + `]}` }

func TestWrongDocuments(t *testing.T) {
	nested := func(n int) string {
		return `{"version":1,"x-deep":` + strings.Repeat("[", n) + strings.Repeat("]", n) + `}`
	}
	for name, c := range map[string]struct{ data, want string }{
		"empty":             {"", "document: empty; a JSON object"},
		"blank":             {" \n\t", "document: empty; a JSON object"},
		"no JSON":           {"land: 3 acres", "document: not JSON at line 1, column 1: invalid character 'l' looking for beginning of value"},
		"broken later":      {"{\n \"version\": 1,\n \"fields\": [{\"id\": top}]}", "fields[0].id: not JSON at line 3, column 20: invalid character 'o' in literal true (expecting 'r')"},
		"cut off":           {`{"version": 1, "fields": [{"id"`, "fields[0].id: not JSON: the text ends before the object does; a whole JSON object"},
		"comma at the end":  {`{"version": 1,}`, "document: not JSON at line 1, column 15: invalid character '}' looking for beginning of object key string"},
		"key without quote": {`{version: 1}`, "document: not JSON at line 1, column 2: invalid character 'v'"},
		"key a number":      {`{1: 1}`, "document: not JSON at line 1, column 2: invalid character '1'"},
		"a list":            {`[1]`, "document: […] is a list; a JSON object"},
		"a text":            {`"farm"`, `document: "farm" is text; a JSON object`},
		"null":              {`null`, "document: null is not taken; a JSON object"},
		"two objects":       {`{"version": 1} {}`, "document: something stands behind the end of the object; one JSON object and nothing else"},
		"rubbish behind":    {`{"version": 1}x`, "document: something stands behind the end of the object; one JSON object and nothing else"},
		"not UTF-8":         {"{\"version\": 1, \"note\": \"\xff\"}", "document: not UTF-8 text; JSON in UTF-8"},
		"too deep":          {nested(64), "x-deep" + strings.Repeat("[0]", 63) + ": is nested more than 64 deep; a flatter document"},

		"missing":             {`{"fields": []}`, "version: missing; a whole number"},
		"missing inside":      {inFields(`{"area": "1 ac"}`), "fields[0].id: missing; a name of your own"},
		"missing deep inside": {inFields(`{"id": "a", "pieces": [{"to": "1 m"}, {"height": "2 cm"}]}`), "fields[0].pieces[1].to: missing; text: a number and one of: m, mm, cm, km, yd, ft, in, mi"},
		"misspelt":            {inFields(`{"id": "a", "aera": "1 ac"}`), `fields[0].aera: unknown key, perhaps "area" is meant; the keys here are id, area, slope, pasture, pieces, shade, trees, turn, warm, rain, note, and any that begin with x-`},
		"in another case":     {`{"Version": 1}`, `Version: unknown key, perhaps "version" is meant; the keys here are version, today, fields, share, factor, hay, cash, any, note, and any that begin with x-`},
		"unknown":             {`{"version": 1, "weather": 3}`, `weather: unknown key; the keys here are version, today, fields, share, factor, hay, cash, any, note, and any that begin with x-`},
		"untagged":            {`{"version": 1, "Hidden": "a"}`, `Hidden: unknown key; the keys here are version, today, fields, share, factor, hay, cash, any, note, and any that begin with x-`},
		"an odd key":          {`{"version": 1, "a.b\nc": 3}`, `["a.b\nc"]: unknown key; the keys here are version, today, fields, share, factor, hay, cash, any, note, and any that begin with x-`},
		"twice":               {`{"version": 1, "version": 1}`, "version: this key stands twice in its object; each key once"},
		"twice inside":        {inFields(`{"id": "a", "rain": {"2000-01": "1 in", "2000-01": "1 in"}}`), "fields[0].rain.2000-01: this key stands twice in its object; each key once"},
		"twice in x-":         {`{"version": 1, "x-a": {"b": 1, "b": 1}}`, "x-a.b: this key stands twice in its object; each key once"},
		"own key unkept":      {inFields(`{"id": "a", "pieces": [{"to": "1 m", "x-a": 1}]}`), "fields[0].pieces[0].x-a: this object keeps no keys of your own; the keys here are to, height"},
		"null inside":         {inFields(`{"id": null}`), "fields[0].id: null is not taken; leave the key out, or give a name of your own"},
		"null pointer":        {inFields(`{"id": "a", "shade": null}`), "fields[0].shade: null is not taken; leave the key out, or give true or false"},

		"bare number":       {inFields(`{"id": "a", "pieces": [{"to": 45, "height": "8 in"}]}`), `fields[0].pieces[0].to: 45 is a bare number; text with a unit, such as "45 ft"`},
		"bare number, tag":  {inFields(`{"id": "a", "pieces": [{"to": "1 m", "height": 8}]}`), `fields[0].pieces[0].height: 8 is a bare number; text with a unit, such as "8 in" (a ruler height above 0)`},
		"bare text":         {inFields(`{"id": "a", "pieces": [{"to": "1 m", "height": "8"}]}`), `fields[0].pieces[0].height: "8" is no height: the unit is missing; a ruler height above 0 (a number and one of: m, mm, cm, ft, in)`},
		"wrong unit":        {inFields(`{"id": "a", "area": "3 lb"}`), `fields[0].area: "3 lb" is no area: no unit "lb"; a number and one of: m2, ha, ft2, yd2, ac`},
		"boundless":         {inFields(`{"id": "a", "area": "Inf ac"}`), `fields[0].area: "Inf ac" is not a finite number; text: a number and one of: m2, ha, ft2, yd2, ac`},
		"no number":         {inFields(`{"id": "a", "area": "NaN ac"}`), `fields[0].area: "NaN ac" is not a finite number; text: a number and one of: m2, ha, ft2, yd2, ac`},
		"list for quantity": {inFields(`{"id": "a", "area": []}`), `fields[0].area: […] is a list; text: a number and one of: m2, ha, ft2, yd2, ac`},
		"no such day":       {`{"version": 1, "today": "2001-02-29"}`, `today: "2001-02-29" is no date: there is no such day; one of: year-month-day, such as 2000-04-15`},
		"day a number":      {`{"version": 1, "today": 20000415}`, `today: 20000415 is a bare number; text: one of: year-month-day, such as 2000-04-15`},
		"no such word":      {inFields(`{"id": "a", "slope": "mild"}`), `fields[0].slope: "mild" is no slope: no such word; one of: flat, steep`},
		"money a number":    {`{"version": 1, "cash": 12.5}`, `cash: 12.5 is a bare number; text: a number and one of: a currency of three capital letters such as USD or EUR`},
		"number for text":   {inFields(`{"id": 4}`), "fields[0].id: 4 is a bare number; a name of your own"},
		"text for number":   {inFields(`{"id": "a", "trees": "12"}`), `fields[0].trees: "12" is text; a whole number of 0 or more`},
		"not whole":         {inFields(`{"id": "a", "trees": 2.5}`), `fields[0].trees: 2.5 is not a whole number; a whole number of 0 or more`},
		"too large":         {inFields(`{"id": "a", "trees": 1e17}`), `fields[0].trees: 1e17 is too large a number; a whole number of 0 or more`},
		"overflow":          {`{"version": 1, "factor": 1e999}`, `factor: 1e999 is too large a number; a number`},
		"huge":              {`{"version": 1, "factor": 1.1e30}`, `factor: 1.1e30 is too large a number; a number`},
		"tiny":              {`{"version": 1, "factor": -9e-31}`, `factor: -9e-31 is too small a number; a number`},
		"huge quantity":     {inFields(`{"id": "a", "area": "1e308 m2"}`), `fields[0].area: "1e308 m2" is too large a number; text: a number and one of: m2, ha, ft2, yd2, ac`},
		"tiny quantity":     {inFields(`{"id": "a", "area": "5e-324 ha"}`), `fields[0].area: "5e-324 ha" is too small a number; text: a number and one of: m2, ha, ft2, yd2, ac`},
		"overflow in text":  {inFields(`{"id": "a", "area": "1e999 ac"}`), `fields[0].area: "1e999 ac" is no area: the number is too large; a number and one of: m2, ha, ft2, yd2, ac`},
		"endless in text":   {inFields(`{"id": "a", "area": "Infinity"}`), `fields[0].area: "Infinity" is no area: no unit "inity"; a number and one of: m2, ha, ft2, yd2, ac`},
		"a year too far":    {`{"version": 1, "today": "+10000-01-01"}`, `today: "+10000-01-01" is outside the years 0000 to 9999; text: one of: year-month-day, such as 2000-04-15`},
		"a year before":     {`{"version": 1, "today": "-0001-12-31"}`, `today: "-0001-12-31" is outside the years 0000 to 9999; text: one of: year-month-day, such as 2000-04-15`},
		"number for truth":  {inFields(`{"id": "a", "shade": 1}`), "fields[0].shade: 1 is a bare number; true or false"},
		"truth for text":    {inFields(`{"id": true}`), "fields[0].id: true is a yes or no; a name of your own"},
		"short list":        {inFields(`{"id": "a", "turn": [1]}`), "fields[0].turn: […] has 1 items; a list of 2 items"},
		"object for list":   {`{"version": 1, "fields": {}}`, "fields: {…} is an object; a list"},
		"list for object":   {inFields(`[]`), "fields[0]: […] is a list; an object"},
		"text for map":      {inFields(`{"id": "a", "rain": "3 in"}`), `fields[0].rain: "3 in" is text; an object`},
		"in a map":          {inFields(`{"id": "a", "rain": {"2000-01": "wet"}}`), `fields[0].rain.2000-01: "wet" is no rain depth: no number in front; a number and one of: m, mm, cm, in`},
		"number for row":    {inFields(`{"id": "a", "pasture": 3}`), "fields[0].pasture: 3 is a bare number; the name of a row, or an object with a row of your own"},
		"no name for row":   {inFields(`{"id": "a", "pasture": ""}`), `fields[0].pasture: "" is no name; the name of a row, or an object with a row of your own`},
		"in a row":          {inFields(`{"id": "a", "pasture": {}}`), "fields[0].pasture.density: missing; text: a number and one of: kg/m2/m, kg/ha/cm, lb/ac/in"},
		"long value":        {inFields(`{"id": "a", "slope": "` + strings.Repeat("é", 500) + `"}`), `fields[0].slope: "` + strings.Repeat("é", 60) + `…" is no slope: no such word; one of: flat, steep`},
		"long number":       {inFields(`{"id": ` + strings.Repeat("1", 500) + `}`), `fields[0].id: ` + strings.Repeat("1", 60) + `… is a bare number; a name of your own`},
		"the first counts":  {inFields(`{"id": 1}, {"id": 2}`), "fields[0].id: 1 is a bare number; a name of your own"},
	} {
		t.Run(name, func(t *testing.T) {
			before := holding{Hidden: "as it was"}
			got := before
			err := document.Decode([]byte(c.data), &got)
			var wrong *document.Error
			if !errors.As(err, &wrong) {
				t.Fatalf("%T %v", err, err)
			}
			equal(t, c.want, err.Error())
			equal(t, "", cmp.Diff(before, got, near)) // the struct is left alone
		})
	}
}

func TestErrorHasItsParts(t *testing.T) {
	var wrong *document.Error
	if err := document.Decode([]byte(inFields(`{"id": "a", "trees": 2.5}`)), &holding{}); !errors.As(err, &wrong) {
		t.Fatal(err)
	}
	equal(t, document.Error{Path: "fields[0].trees", Value: "2.5", Problem: "is not a whole number", Allowed: "a whole number of 0 or more"}, *wrong)
	equal(t, "groups[0].head: -3 is negative; a whole number of 0 or more",
		(&document.Error{Path: "groups[0].head", Value: "-3", Problem: "is negative", Allowed: "a whole number of 0 or more"}).Error())
}

func TestDepth(t *testing.T) {
	nested := func(n int) []byte {
		return []byte(`{"version":1,"fields":[],"x-deep":` + strings.Repeat("[", n) + strings.Repeat("]", n) + `}`)
	}
	var got holding
	must(t, document.Decode(nested(63), &got))
	data, err := document.Encode(got, units.Metric)
	must(t, err)
	must(t, document.Decode(data, &got))
	fails(t, document.Decode(nested(64), &got), "nested more than 64 deep")
	fails(t, document.Decode(nested(10_000), &got), "nested more than 64 deep")
	fails(t, document.Decode([]byte(strings.Repeat("[", 10_000)), &got), "nested more than 64 deep")
	fails(t, document.Decode([]byte(strings.Repeat(`{"a":`, 10_000)), &got), "nested more than 64 deep")
	ring := map[string]any{}
	ring["x-ring"] = ring
	_, err = document.Encode(holding{kept: kept{Extra: ring}}, units.Metric)
	fails(t, err, "nested more than 64 deep")
}

func TestWhatCannotBeWritten(t *testing.T) {
	var itself any
	itself = &itself
	for name, c := range map[string]struct {
		v    any
		want string
	}{
		"not a number": {holding{Factor: math.NaN()}, "factor: NaN is not a finite number"},
		"boundless":    {holding{Share: units.Fraction(math.Inf(1))}, `share: "+Inf share" could not be read back; text: a number and one of: share, %, lb/short ton`},
		"no such word": {struct {
			S slope `json:"s"`
		}{}, `s: "" could not be read back; text: one of: flat, steep`},
		"price of nothing": {struct {
			P units.FeedPrice `json:"p"`
		}{}, `p: "0/" could not be read back; text: a number and one of: a currency and a mass: USD/t, USD/kg, USD/lb, USD/short ton, with any currency`},
		"not UTF-8":     {holding{kept: kept{Note: "\xff"}}, `note: "\xff" is not UTF-8 text`},
		"key not ours":  {holding{kept: kept{Extra: map[string]any{"colour": 1}}}, `colour: no key of the user's own; keys that begin with x-`},
		"note twice":    {holding{kept: kept{Note: "a", Extra: map[string]any{"note": "b"}}}, `note: no key of the user's own; keys that begin with x-`},
		"two for a row": {field{Pasture: units.RowOr[grass]{Name: "a", Row: &grass{}}}, `pasture: "a" and a row are both set; one of the two`},
		"none for a row": {struct {
			R units.RowOr[grass] `json:"r"`
		}{}, `r: nothing set; a name or a row`},
		"huge": {holding{Factor: 2e30}, "factor: 2e+30 is too large a number"},
		"tiny": {holding{Share: 1e-31}, `share: "1e-31 share" could not be read back; text: a number and one of: share, %, lb/short ton`},
		"a channel": {struct {
			C chan int `json:"c"`
		}{}, "c: no document holds a Go chan int"},
		"a ring":    {holding{kept: kept{Extra: map[string]any{"x-a": itself}}}, "x-a: no document holds a Go interface {}"},
		"no digits": {holding{Any: json.Number("twelve")}, `any: "twelve" is not a number`},
		"too large": {holding{Version: math.MaxInt64}, "version: 9223372036854775807 is too large a number"},
		"a nil in a list": {struct {
			L []*int `json:"l"`
		}{[]*int{nil}}, "l[0]: nothing set; a whole number"},
		"keys of numbers": {struct {
			M map[int]int `json:"m"`
		}{}, "m: no document holds a Go map[int]int"},
		"not a struct": {3, "document.Encode: int is neither a struct nor a pointer to one"},
		"nothing":      {nil, "document.Encode: <nil> is neither a struct nor a pointer to one"},
		"nil pointer":  {(*holding)(nil), "document.Encode: *document_test.holding is neither a struct nor a pointer to one"},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := document.Encode(c.v, units.Metric)
			if err == nil || err.Error() != c.want {
				t.Errorf("got  %v\nwant %s", err, c.want)
			}
		})
	}
}

func TestWhatCannotBeReadInto(t *testing.T) {
	for _, into := range []any{nil, 3, holding{}, (*holding)(nil), new(int), &map[string]any{}} {
		fails(t, document.Decode([]byte(whole), into), "must be a pointer to a struct")
	}
	type pointer **int
	fails(t, document.Decode([]byte(`{"c": 1}`), &struct {
		C chan int `json:"c"`
	}{}), "c: no document holds a Go chan int")
	fails(t, document.Decode([]byte(`{"c": 1}`), &struct {
		C pointer `json:"c"`
	}{}), "c: no document holds a Go")
	fails(t, document.Decode([]byte(`{"c": 1}`), &struct {
		C error `json:"c"`
	}{}), "c: no document holds a Go error")
	fails(t, document.Decode([]byte(`{"c": {}}`), &struct {
		C map[int]int `json:"c"`
	}{}), "c: no document holds a Go map[int]int")
}

// TestNoteWithoutAField keeps note among the user's own keys where no field
// takes it.
func TestNoteWithoutAField(t *testing.T) {
	var got struct {
		Extra map[string]any `json:"-" document:"extra"`
	}
	must(t, document.Decode([]byte(`{"note": "dry", "x-a": null}`), &got))
	equal(t, "", cmp.Diff(map[string]any{"note": "dry", "x-a": nil}, got.Extra))
	data, err := document.Encode(got, units.Metric)
	must(t, err)
	equal(t, "{\n  \"note\": \"dry\",\n  \"x-a\": null\n}\n", string(data))
}

// FuzzDecode reads anything: it must not panic, what is wrong is one short
// line, and what is read can be written and read again as the same.
func FuzzDecode(f *testing.F) {
	for _, seed := range []string{whole, "", "{}", "[", `{"version":1}`, inFields(`{"id":"a","pasture":{"density":"1 kg/m3"},"x-a":[{"b":null}]}`), `{"version":1,"any":{"a":1e400}}`, `{"version":1,"hay":"1e30 USD/short ton"}`,
		inFields(`{"id":"a","area":"1e30 m2"}`), inFields(`{"id":"a","area":"1e-30 m2"}`), `{"version":1,"today":"9999-12-31"}`} {
		f.Add([]byte(seed))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		var got holding
		if err := document.Decode(data, &got); err != nil {
			var wrong *document.Error
			if !errors.As(err, &wrong) || strings.ContainsAny(err.Error(), "\n\r") || len(err.Error()) > 100_000 {
				t.Fatalf("%T %q", err, err)
			}
			return
		}
		if !json.Valid([]byte(strings.TrimPrefix(string(data), "\ufeff"))) {
			t.Fatalf("%q was read", data)
		}
		written, err := document.Encode(got, units.Metric)
		if err != nil {
			t.Fatalf("%q was read but not written: %v", data, err)
		}
		var again holding
		if err := document.Decode(written, &again); err != nil {
			t.Fatalf("%s was written but not read: %v", written, err)
		}
		if diff := cmp.Diff(got, again, near); diff != "" {
			t.Fatal(diff)
		}
	})
}
