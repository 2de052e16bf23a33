package grazing_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/grazing"
	"example.org/soum/units"
)

// laneJob is an invented fence: four lanes of 660 by 82.5 ft.
func laneJob(t require.TestingT) grazing.FenceJob {
	return grazing.FenceJob{
		Length: 660 * units.Foot, Width: 82.5 * units.Foot, Lanes: 4, Wires: 2, Spacing: 30 * units.Foot,
		Strips: 2, Spare: 1, Moved: grazing.MovedNetting, RodRule: grazing.RodUtility, Interest: 6 * units.Percent,
		Prices: []grazing.FencePrice{
			{Item: grazing.ItemWire, Price: money(t, "100 USD"), Length: 4000 * units.Foot, Years: 25, Upkeep: 5 * units.Percent},
			{Item: grazing.ItemPost, Price: money(t, "5 USD"), Years: 20, Upkeep: 5 * units.Percent},
			{Item: grazing.ItemNetting, Price: money(t, "160 USD"), Length: 164 * units.Foot, Years: 8, Upkeep: 5 * units.Percent},
			{Item: grazing.ItemEnergizer, Price: money(t, "200 USD"), Years: 10, Upkeep: 0},
			{Item: grazing.ItemRod, Price: money(t, "20 USD"), Length: 8 * units.Foot, Years: 20, Upkeep: 0},
			{Item: grazing.ItemMovedWire, Price: money(t, "40 USD"), Length: 656 * units.Foot, Years: 5, Upkeep: 10 * units.Percent},
			{Item: grazing.ItemMovedPost, Price: money(t, "3 USD"), Years: 5, Upkeep: 0},
		},
	}
}

// TestBillOfFenceByHand. Sides 5 × 660 + 8 × 82.5 = 3,960 ft, twice 7,920 ft of wire,
// two rolls, 200. Posts: 5 sides of 22 spaces are 5 × 23, 8 ends of 3 spaces 8 × 2
// between the corners: 131, 655. Cross fences: 2 strips take 3, one more spare: 4 of
// a roll each, 640. Fence of 3,960 + 330 = 4,290 ft is 0.8125 mi and J; 4.8 × 0.8125
// = 3.9 ft of rod, one rod, 20. Energizer 200. In all 1,715. A year: wire 200 ÷ 25 +
// 6 + 10 = 24; posts 32.75 + 19.65 + 32.75 = 85.15; netting 80 + 19.20 + 32 =
// 131.20; energizer 20 + 6 = 26; rod 1 + 0.60 = 1.60: 267.95.
func TestBillOfFenceByHand(t *testing.T) {
	bill, err := grazing.BillOfFence(laneJob(t))
	require.NoError(t, err)
	assert.InDelta(t, 3960, bill.Fence.Feet(), 1e-9)
	assert.InDelta(t, 330, bill.Cross.Feet(), 1e-9)
	assert.InDelta(t, 0.8125, float64(bill.Output), 1e-9)
	assert.InDelta(t, 3.9, bill.Rod.Feet(), 1e-9)
	pieces := map[grazing.FenceItem]float64{}
	for _, line := range bill.Lines {
		pieces[line.Item] = line.Pieces
	}
	assert.Equal(t, map[grazing.FenceItem]float64{grazing.ItemWire: 2, grazing.ItemPost: 131, grazing.ItemNetting: 4, grazing.ItemEnergizer: 1, grazing.ItemRod: 1}, pieces)
	assert.InDelta(t, 7920, bill.Lines[0].Needed.Feet(), 1e-9)
	assert.Equal(t, "1715.00", bill.Cost.Amount.StringFixed(2))
	assert.Equal(t, "267.95", bill.Year.Amount.StringFixed(2))

	// with two moved wires: 4 × 165 ft, a roll each, and posts each 20 ft: 5 spaces, 4
	// posts between the fences, 16
	job := laneJob(t)
	job.Moved, job.MovedWires, job.MovedSpacing, job.RodRule = grazing.MovedWires, 2, 20*units.Foot, grazing.RodTradePress
	bill, err = grazing.BillOfFence(job)
	require.NoError(t, err)
	pieces = map[grazing.FenceItem]float64{}
	for _, line := range bill.Lines {
		pieces[line.Item] = line.Pieces
	}
	assert.Equal(t, 4.0, pieces[grazing.ItemMovedWire])
	assert.Equal(t, 16.0, pieces[grazing.ItemMovedPost])
	assert.NotContains(t, pieces, grazing.ItemNetting)
	assert.InDelta(t, 3*0.8125, bill.Rod.Feet(), 1e-9)
}

// TestTwiceTheLanes: more lanes never cost less, and the fence is that of LaneSides.
func TestTwiceTheLanes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		job := laneJob(t)
		job.Lanes = rapid.IntRange(1, 30).Draw(t, "lanes")
		one, err := grazing.BillOfFence(job)
		require.NoError(t, err)
		sides, err := grazing.LaneSides(job.Length, job.Width, float64(job.Lanes))
		require.NoError(t, err)
		nearly(t, sides, one.Fence)
		job.Lanes *= 2
		two, err := grazing.BillOfFence(job)
		require.NoError(t, err)
		require.True(t, two.Cost.Amount.GreaterThan(one.Cost.Amount))
		require.True(t, two.Year.Amount.GreaterThan(one.Year.Amount))
	})
}

// What do two lanes with one moved wire for a quiet cow take?
func ExampleBillOfFence() {
	usd := func(text string) units.Money { m, _ := units.ParseMoney(text); return m }
	bill, err := grazing.BillOfFence(grazing.FenceJob{
		Length: 100 * units.Metre, Width: 25 * units.Metre, Lanes: 2, Wires: 2, Spacing: 10 * units.Metre,
		Strips: 1, Spare: 1, Moved: grazing.MovedOneWire, MovedWires: 1, MovedSpacing: 10 * units.Metre,
		RodRule: grazing.RodUtility, Interest: 5 * units.Percent,
		Prices: []grazing.FencePrice{
			{Item: grazing.ItemWire, Price: usd("90 USD"), Length: 500 * units.Metre, Years: 25, Upkeep: 5 * units.Percent},
			{Item: grazing.ItemPost, Price: usd("4 USD"), Years: 20, Upkeep: 5 * units.Percent},
			{Item: grazing.ItemMovedWire, Price: usd("35 USD"), Length: 200 * units.Metre, Years: 5, Upkeep: 10 * units.Percent},
			{Item: grazing.ItemMovedPost, Price: usd("3 USD"), Years: 5},
			{Item: grazing.ItemEnergizer, Price: usd("150 USD"), Years: 10},
			{Item: grazing.ItemRod, Price: usd("18 USD"), Length: 2 * units.Metre, Years: 20},
		},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, line := range bill.Lines {
		fmt.Println(line.Pieces, line.Item)
	}
	// Output:
	// 2 wire
	// 41 post
	// 3 moved wire
	// 6 moved post
	// 1 energizer
	// 1 rod
}
