package grazing_test

import (
	"encoding/json"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/grazing"
	"example.org/soum/internal/document"
	"example.org/soum/units"
)

// jobText is laneJob as a document, with keys of the user's own.
const jobText = `{
  "length": "660 ft", "width": "82.5 ft", "lanes": 4, "wires": 2, "spacing": "30 ft", "strips": 2, "spare": 1,
  "moved": "netting", "rod_rule": "utility", "interest": "6 %", "note": "invented", "x-owner": 7,
  "prices": [
    {"item": "wire", "price": "100 USD", "length": "4000 ft", "years": 25, "upkeep": "5 %"},
    {"item": "post", "price": "5 USD", "years": 20, "upkeep": "5 %"},
    {"item": "netting", "price": "160 USD", "length": "164 ft", "years": 8, "upkeep": "5 %"},
    {"item": "energizer", "price": "200 USD", "years": 10},
    {"item": "rod", "price": "20 USD", "length": "8 ft", "years": 20, "upkeep": "0 %"},
    {"item": "moved wire", "price": "40 USD", "length": "656 ft", "years": 5, "upkeep": "10 %"},
    {"item": "moved post", "price": "3 USD", "years": 5}
  ]
}`

func TestReadFenceJob(t *testing.T) {
	job, err := grazing.ReadFenceJob([]byte(jobText))
	require.NoError(t, err)
	want := laneJob(t)
	want.Note, want.Extra = "invented", map[string]any{"x-owner": json.Number("7")}
	assert.Equal(t, want, job)
	bill, err := grazing.BillOfFence(job)
	require.NoError(t, err)
	assert.Equal(t, "1715.00", bill.Cost.Amount.StringFixed(2)) // as in TestBillOfFenceByHand
}

// TestFenceJobTeaches: what is wrong with the text has its path, the value and the mend.
func TestFenceJobTeaches(t *testing.T) {
	for _, c := range []struct{ from, to, want string }{
		{`"660 ft"`, `660`, `length: 660 is a bare number; text with a unit, such as "660 ft" (the length of a lane, above 0)`},
		{`"width": "82.5 ft", `, ``, "width: missing; the width of a lane, above 0"},
		{`"lanes": 4`, `"lanes": 4.5`, "lanes: 4.5 is not a whole number; the lanes side by side, a whole number from 1 on"},
		{`"netting", "rod_rule"`, `"hedge", "rod_rule"`, `moved: "hedge" is no moved fence: no such word; "one wire", "netting" or "wires" (one of: one wire, netting, either, wires)`},
		{`"rod_rule": "utility", `, ``, `rod_rule: missing; "trade press" or "utility": whose rule of ground rods`},
		{`"spare": 1`, `"spair": 1`, `spair: unknown key, perhaps "spare" is meant`},
		{`"years": 25`, `"years": 25, "years": 30`, "prices[0].years: "},
		{`"item": "post", `, ``, `prices[1].item: missing; what it is, such as "wire" or "post"`},
		{`"price": "5 USD", `, ``, `prices[1].price: missing; the price of one piece or one roll, such as "5 USD"`},
		{`"164 ft"`, `"0 ft"`, "prices[2].length: 0 m (0 ft) is not above 0, or was left out; the length of the roll, or of the rod, above 0"},
		{jobText, `[]`, "document: […] is a list; a JSON object"},
	} {
		require.Contains(t, jobText, c.from)
		job, err := grazing.ReadFenceJob([]byte(strings.Replace(jobText, c.from, c.to, 1)))
		assert.ErrorContains(t, err, c.want)
		assert.Zero(t, job)
		var wrong *document.Error
		assert.ErrorAs(t, err, &wrong)
	}
}

// TestFenceJobRefuses: a job made in Go is held to the same, with the same paths.
func TestFenceJobRefuses(t *testing.T) {
	for _, c := range []struct {
		spoil func(*grazing.FenceJob)
		want  string
	}{
		{func(j *grazing.FenceJob) { j.Length = units.Length(math.NaN()) }, "length: NaN m (NaN ft) is not a length that a fence can have; 1 mm to 1,000 km"},
		{func(j *grazing.FenceJob) { j.Length = units.Length(math.Inf(1)) }, "length: "},
		{func(j *grazing.FenceJob) { j.Width = 0 }, "width: 0 m (0 ft) is not above 0, or was left out; the width of a lane, above 0"},
		{func(j *grazing.FenceJob) { j.Width = -82.5 * units.Foot }, "width: -25.1 m (-82.5 ft) is negative"},
		{func(j *grazing.FenceJob) { j.Lanes = 0 }, "lanes: 0 is too few, or was left out; a whole number from 1 on"},
		{func(j *grazing.FenceJob) { j.Lanes = 1001 }, "lanes: 1001 is more than any fence has; up to 1000"},
		{func(j *grazing.FenceJob) { j.Wires = 0 }, "wires: 0 is too few"},
		{func(j *grazing.FenceJob) { j.Spacing = 0 }, "spacing: 0 m (0 ft) is not above 0"},
		{func(j *grazing.FenceJob) { j.Spacing = 1e-6 }, "spacing: 0.000001 m (0.00000328 ft) is not a length that a fence can have; 1 mm to 1,000 km"},
		{func(j *grazing.FenceJob) { j.Strips = 0 }, "strips: 0 is too few"},
		{func(j *grazing.FenceJob) { j.Spare = -1 }, "spare: -1 is too few, or was left out; a whole number from 0 on"},
		{func(j *grazing.FenceJob) { j.Interest = 1.01 }, "interest: 101 % is not a share; 0 % to 100 %"},
		{func(j *grazing.FenceJob) { j.Moved = 0 }, `moved: "" is not one kind of moved fence; "one wire", "netting" or "wires"`},
		{func(j *grazing.FenceJob) { j.Moved = grazing.MovedEither }, `moved: "either" is not one kind of moved fence`},
		{func(j *grazing.FenceJob) { j.Moved = grazing.MovedOneWire }, "moved_wires: 0 does not go with one wire; 1"},
		{func(j *grazing.FenceJob) { j.MovedWires = 2 }, "moved_wires: 2 does not go with netting, which has its own strands; 0, or no such key"},
		{func(j *grazing.FenceJob) { j.Moved, j.MovedWires = grazing.MovedWires, 1 }, "moved_wires: 1 does not go with several wires; 2 to 1000"},
		{func(j *grazing.FenceJob) { j.Moved, j.MovedWires = grazing.MovedOneWire, 1 }, "moved_spacing: 0 m (0 ft) is not above 0"},
		{func(j *grazing.FenceJob) { j.RodRule = 0 }, `rod_rule: 0 is not a rule, or was left out; "trade press" or "utility"`},
		{func(j *grazing.FenceJob) { j.Prices = j.Prices[1:] }, `prices: no "wire", which this fence needs; one price for each item that the fence needs`},
		{func(j *grazing.FenceJob) { j.Prices = nil }, `prices: no "wire"`},
		{func(j *grazing.FenceJob) { j.Prices = append(j.Prices, j.Prices[0]) }, `prices[7].item: "wire" stands twice; each item once`},
		{func(j *grazing.FenceJob) { j.Prices[2].Item = 0 }, "prices[2].item: 0 is not an item, or was left out"},
		{func(j *grazing.FenceJob) { j.Prices[0].Length = 0 }, "prices[0].length: 0 m (0 ft) is not above 0"},
		{func(j *grazing.FenceJob) { j.Prices[1].Years = 0 }, "prices[1].years: 0 is not above 0, or was left out; how many years it lasts"},
		{func(j *grazing.FenceJob) { j.Prices[1].Years = math.Inf(1) }, "prices[1].years: "},
		{func(j *grazing.FenceJob) { j.Prices[1].Upkeep = -0.01 }, "prices[1].upkeep: -1 % is not a share of the price; 0 % or more"},
		{func(j *grazing.FenceJob) { j.Prices[1].Price = units.Money{} }, `prices[1].price: 0 has no currency, or was left out; the price of one piece or one roll, such as "5 USD"`},
		{func(j *grazing.FenceJob) { j.Prices[1].Price = money(t, "-5 USD") }, "prices[1].price: -5 USD is negative; money of 0 or more"},
		{func(j *grazing.FenceJob) { j.Prices[3].Price.Currency = "EUR" }, "prices[3].price: 200 EUR is another currency than USD; one currency in all prices"},
	} {
		job := laneJob(t)
		c.spoil(&job)
		bill, err := grazing.BillOfFence(job)
		assert.ErrorContains(t, err, c.want)
		assert.Zero(t, bill)
		var wrong *document.Error
		assert.ErrorAs(t, err, &wrong)
	}
}
