package grazing

import (
	"fmt"
	"math"
	"slices"

	"example.org/soum/units"
)

// FenceItem is something that a fence is made of.
type FenceItem int

// What a fence is made of.
const (
	ItemWire      FenceItem = iota + 1 // wire that stays
	ItemPost                           // posts that stay
	ItemMovedWire                      // wire on reels, moved with the stock
	ItemNetting                        // rolls of netting, moved with the stock
	ItemMovedPost                      // posts moved with the wire
	ItemEnergizer                      // one for the whole fence
	ItemRod                            // ground rods
)

// FencePrice is the user's price of an item.
type FencePrice struct {
	Item   FenceItem      `json:"item"`   // what it is
	Price  units.Money    `json:"price"`  // of one piece or one roll
	Length units.Length   `json:"length"` // of the roll, or of the rod; 0 for what is bought by the piece
	Years  float64        `json:"years"`  // how long it lasts
	Upkeep units.Fraction `json:"upkeep"` // maintenance of a year as a share of the price
}

// FenceJob is a fence of equal lanes side by side, with moved fence across them.
type FenceJob struct {
	Length       units.Length   `json:"length"`        // of a lane
	Width        units.Length   `json:"width"`         // of a lane
	Lanes        int            `json:"lanes"`         // side by side
	Wires        int            `json:"wires"`         // of the fence that stays, one above the other
	Spacing      units.Length   `json:"spacing"`       // from post to post of the fence that stays, at the most
	Strips       int            `json:"strips"`        // strips next to each other that hold animals at one time
	Spare        int            `json:"spare"`         // cross fences more, ready for the next move
	Moved        MovedFence     `json:"moved"`         // one wire, netting or wires
	MovedWires   int            `json:"moved_wires"`   // of the moved fence; 0 for netting
	MovedSpacing units.Length   `json:"moved_spacing"` // from post to post of the moved fence; 0 for netting, which has its own
	RodRule      RodRule        `json:"rod_rule"`      // whose rule of ground rods
	Interest     units.Fraction `json:"interest"`      // of a year, on half of the price
	Prices       []FencePrice   `json:"prices"`        // one for each item that the fence needs
}

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

// mostOfFence bounds the counts of a job.
const mostOfFence = 1000

var fenceJobGuard = units.Formula{
	Name: "grazing.BillOfFence", Source: "the user's fence",
	Arguments: []units.Argument{
		{Name: "length", Unit: "m", Factor: 1, Domain: units.Above(0, 1e6)},
		{Name: "width", Unit: "m", Factor: 1, Domain: units.Above(0, 1e6)},
		{Name: "lanes", Factor: 1, Domain: units.Between(1, mostOfFence, "")},
		{Name: "wires", Factor: 1, Domain: units.Between(1, mostOfFence, "")},
		{Name: "spacing", Unit: "m", Factor: 1, Domain: units.Above(0, 1e6)},
		{Name: "strips", Factor: 1, Domain: units.Between(1, mostOfFence, "")},
		{Name: "spare", Factor: 1, Domain: units.Between(0, mostOfFence, "")},
		{Name: "interest", Unit: "%", Factor: float64(units.Percent), Domain: units.Between(0, 1, "")},
	},
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
// Errors: *units.DomainError names the first field that is impossible; an error
// where a price is missing, stands twice, or is in another currency
//
// Check: TestBillOfFenceByHand, TestBillOfFenceRefuses, TestTwiceTheLanes
//
// Source: IOWA-FENCE-COSTS the year; BEEF-FENCE-MISTAKES, CLOVERLAND-FENCE energizer and rods; ours: counted on a sketch
func BillOfFence(job FenceJob) (FenceBill, error) {
	if err := job.possible(); err != nil {
		return FenceBill{}, err
	}
	bill := FenceBill{Lines: []FenceBillLine{}}
	lanes, crosses := float64(job.Lanes), float64(job.Strips+1+job.Spare)
	bill.Fence = units.Length((lanes+1)*float64(job.Length) + 2*lanes*float64(job.Width))
	bill.Cross = units.Length(crosses * float64(job.Width))
	bill.Output = units.PulseEnergy((bill.Fence + bill.Cross) / units.Mile)
	var err error
	if bill.Rod, err = GroundRod(bill.Output, job.RodRule); err != nil {
		return FenceBill{}, err
	}
	whole := func(length, each units.Length) float64 { return math.Ceil(float64(length)/float64(each) - almost) }
	posts := (lanes+1)*(whole(job.Length, job.Spacing)+1) + 2*lanes*(whole(job.Width, job.Spacing)-1)
	if err = bill.buy(&job, ItemWire, bill.Fence*units.Length(job.Wires), 1); err == nil {
		err = bill.buy(&job, ItemPost, 0, posts)
	}
	if err == nil && job.Moved == MovedNetting {
		err = bill.buy(&job, ItemNetting, job.Width, crosses)
	} else if err == nil {
		if err = bill.buy(&job, ItemMovedWire, job.Width*units.Length(job.MovedWires), crosses); err == nil {
			err = bill.buy(&job, ItemMovedPost, 0, crosses*max(0, whole(job.Width, job.MovedSpacing)-1))
		}
	}
	if err == nil {
		err = bill.buy(&job, ItemEnergizer, 0, 1)
	}
	if err == nil {
		err = bill.buy(&job, ItemRod, bill.Rod, 1)
	}
	if err != nil {
		return FenceBill{}, err
	}
	return bill, nil
}

// possible gives the error of the first field that is impossible.
func (j *FenceJob) possible() error {
	_, err := units.Answer(&fenceJobGuard, 0.0, float64(j.Length), float64(j.Width), float64(j.Lanes), float64(j.Wires),
		float64(j.Spacing), float64(j.Strips), float64(j.Spare), float64(j.Interest))
	switch {
	case err != nil:
		return err
	case j.Moved != MovedNetting && j.Moved != MovedOneWire && j.Moved != MovedWires:
		return noRow("grazing.MovedFence", j.Moved.String(), "a bill is for one kind of moved fence", []string{"one wire", "netting", "wires"})
	case j.Moved == MovedOneWire && j.MovedWires != 1:
		return fmt.Errorf("grazing.BillOfFence: moved_wires is %d: one wire is 1", j.MovedWires)
	case j.Moved == MovedNetting && j.MovedWires != 0:
		return fmt.Errorf("grazing.BillOfFence: moved_wires is %d: netting has its own strands, write 0", j.MovedWires)
	case j.Moved == MovedWires && !(j.MovedWires >= 2 && j.MovedWires <= mostOfFence):
		return fmt.Errorf("grazing.BillOfFence: moved_wires is %d: several wires are 2 or more, up to %d", j.MovedWires, mostOfFence)
	case j.Moved != MovedNetting && !(j.MovedSpacing > 0 && j.MovedSpacing <= 1e6):
		return fmt.Errorf("grazing.BillOfFence: moved_spacing is %s: it must be above 0", j.MovedSpacing)
	case j.RodRule.String() == "":
		return noRow("grazing.RodRule", fmt.Sprint("rule ", int(j.RodRule)), "no such rule", namesRodRule[1:])
	}
	return nil
}

// byLength tells which items are bought by the roll or the rod.
func (i FenceItem) byLength() bool {
	return slices.Contains([]FenceItem{ItemWire, ItemMovedWire, ItemNetting, ItemRod}, i)
}

// buy adds a line: so many times a length in whole rolls, or so many pieces.
func (b *FenceBill) buy(job *FenceJob, item FenceItem, each units.Length, times float64) error {
	at := -1
	for i := range job.Prices {
		switch {
		case job.Prices[i].Item != item:
		case at >= 0:
			return fmt.Errorf("grazing.BillOfFence: prices has %q twice: keep one", item)
		default:
			at = i
		}
	}
	if at < 0 {
		return fmt.Errorf("grazing.BillOfFence: prices has no %q, and this fence needs it: add its price", item)
	}
	p := &job.Prices[at]
	line := FenceBillLine{Item: item, Pieces: times}
	if item.byLength() {
		if !(p.Length > 0 && p.Length <= 1e6) {
			return fmt.Errorf("grazing.BillOfFence: prices, %q: length is %s: write how long a roll or a rod is", item, p.Length)
		}
		line.Needed = each * units.Length(times)
		line.Pieces = times * math.Ceil(float64(each)/float64(p.Length)-almost)
	}
	line.Cost = p.Price.Times(share(line.Pieces)).Round(cents)
	var err error
	if line.Yearly, err = CostOfYear(line.Cost, p.Years, job.Interest, p.Upkeep); err != nil {
		return fmt.Errorf("grazing.BillOfFence: prices, %q: %w", item, err)
	}
	if b.Cost, err = b.Cost.Add(line.Cost); err != nil {
		return fmt.Errorf("grazing.BillOfFence: prices, %q: %w", item, err)
	}
	b.Lines = append(b.Lines, line)
	b.Year, err = b.Year.Add(line.Yearly.Total)
	return err
}
