package grazing

import (
	"math"

	"example.org/soum/units"
)

// FenceBillLine is one line of a bill.
type FenceBillLine struct {
	Item   FenceItem    `json:"item"`     // what it is
	Needed units.Length `json:"needed_m"` // length needed; 0 for what is counted
	Pieces float64      `json:"pieces"`   // rolls or pieces to buy, whole ones
	Cost   units.Money  `json:"cost"`     // of them
	Yearly YearlyCost   `json:"yearly"`   // what they cost in a year
}

// FenceBill is what a fence takes and costs.
type FenceBill struct {
	Fence  units.Length      `json:"fence_m"`  // that stays, on the ground
	Cross  units.Length      `json:"cross_m"`  // moved, on the ground
	Output units.PulseEnergy `json:"output_j"` // that the energizer should have
	Rod    units.Length      `json:"rod_m"`    // ground rod in the earth, by the rule asked for
	Lines  []FenceBillLine   `json:"lines"`    // what to buy
	Cost   units.Money       `json:"cost"`     // of all lines
	Year   units.Money       `json:"year"`     // of all lines, in a year
}

// BillOfFence tells what a fence of lanes takes, what it costs to buy and what it
// costs in a year, at the user's prices.
//
// Method: sides and ends as LaneSides counts them, wire for each strand, posts at
// corners and between; a moved fence across a lane for the front and back of each
// strip and what is spare, each of whole rolls of netting or of wire; the energizer
// by EnergizerOutput, the rods by GroundRod; whole rolls and pieces; the year by
// CostOfYear
//
// Gates, corners, braces, insulators, knots and work are not in it. An electric fence
// can hurt people and animals: one energizer for one fence, never barbed wire, 2.5 m
// from the fence of another energizer, the earth 10 m from any other, signs where
// people pass [IEC-FENCE]. Never netting for anybody horned or for young kids
// [DEFRA-SHEEP, DEFRA-GOAT]. Local rules decide.
//
// Errors: a document error with the path, the value and what is allowed, as of
// ReadFenceJob
//
// Check: TestBillOfFenceByHand, TestFenceJobRefuses, TestTwiceTheLanes
//
// Source: IOWA-FENCE-COSTS the year; BEEF-FENCE-MISTAKES, CLOVERLAND-FENCE energizer and rods; ours: counted on a sketch
func BillOfFence(job FenceJob) (FenceBill, error) {
	if err := job.check(); err != nil {
		return FenceBill{}, err
	}
	lanes, crosses := float64(job.Lanes), float64(job.Strips+1+job.Spare)
	bill := FenceBill{
		Fence: units.Length((lanes+1)*float64(job.Length) + 2*lanes*float64(job.Width)),
		Cross: units.Length(crosses * float64(job.Width)),
		Lines: []FenceBillLine{},
	}
	bill.Output = units.PulseEnergy((bill.Fence + bill.Cross) / units.Mile)
	var err error
	if bill.Rod, err = GroundRod(bill.Output, job.RodRule); err != nil {
		return FenceBill{}, err
	}
	for _, item := range job.items() {
		if err := bill.buy(&job, item); err != nil {
			return FenceBill{}, err
		}
	}
	return bill, nil
}

// wholeOf gives how many pieces of a length make up another, the last one cut.
func wholeOf(length, each units.Length) float64 {
	return math.Ceil(float64(length)/float64(each) - almost)
}

// wants gives what the fence takes of an item: so many times a length in whole rolls,
// or, where each is 0, so many pieces.
func (b *FenceBill) wants(job *FenceJob, item FenceItem) (each units.Length, times float64) {
	lanes, crosses := float64(job.Lanes), float64(job.Strips+1+job.Spare)
	switch item {
	case ItemWire:
		return b.Fence * units.Length(job.Wires), 1
	case ItemPost:
		return 0, (lanes+1)*(wholeOf(job.Length, job.Spacing)+1) + 2*lanes*(wholeOf(job.Width, job.Spacing)-1)
	case ItemNetting:
		return job.Width, crosses
	case ItemMovedWire:
		return job.Width * units.Length(job.MovedWires), crosses
	case ItemMovedPost:
		return 0, crosses * max(0, wholeOf(job.Width, job.MovedSpacing)-1)
	case ItemRod:
		return b.Rod, 1
	}
	return 0, 1 // one energizer
}

// buy adds the line of an item.
func (b *FenceBill) buy(job *FenceJob, item FenceItem) error {
	p := job.priceOf(item)
	each, times := b.wants(job, item)
	line := FenceBillLine{Item: item, Pieces: times}
	if item.byLength() {
		line.Needed = each * units.Length(times)
		line.Pieces = times * wholeOf(each, p.Length)
	}
	line.Cost = p.Price.Times(share(line.Pieces)).Round(cents)
	var err error
	if line.Yearly, err = CostOfYear(line.Cost, p.Years, job.Interest, p.Upkeep); err != nil {
		return err
	}
	if b.Cost, err = b.Cost.Add(line.Cost); err != nil {
		return err
	}
	b.Lines = append(b.Lines, line)
	b.Year, err = b.Year.Add(line.Yearly.Total)
	return err
}
