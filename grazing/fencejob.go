package grazing

import (
	"math"
	"slices"
	"strconv"

	"example.org/soum/internal/document"
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
	Item   FenceItem      `json:"item" document:"required" allowed:"what it is, such as \"wire\" or \"post\""`
	Price  units.Money    `json:"price" document:"required" allowed:"the price of one piece or one roll, such as \"5 USD\""`
	Length units.Length   `json:"length,omitempty" allowed:"the length of the roll, or of the rod; none for what is bought by the piece"`
	Years  float64        `json:"years" document:"required" allowed:"how many years it lasts, above 0"`
	Upkeep units.Fraction `json:"upkeep,omitempty" allowed:"maintenance of a year as a share of the price; 0 % if left out"`
	Note   string         `json:"note,omitempty"`
	Extra  map[string]any `json:"-" document:"extra"`
}

// FenceJob is a fence of equal lanes side by side, with moved fence across them. As
// JSON its quantities are text with a unit ("660 ft") and its counts are numbers. Keys
// beginning "x-", and "note", pass through.
type FenceJob struct {
	Length       units.Length   `json:"length" document:"required" allowed:"the length of a lane, above 0"`
	Width        units.Length   `json:"width" document:"required" allowed:"the width of a lane, above 0"`
	Lanes        int            `json:"lanes" document:"required" allowed:"the lanes side by side, a whole number from 1 on"`
	Wires        int            `json:"wires" document:"required" allowed:"the wires of the fence that stays, one above the other, a whole number from 1 on"`
	Spacing      units.Length   `json:"spacing" document:"required" allowed:"from post to post of the fence that stays, at the most, above 0"`
	Strips       int            `json:"strips" document:"required" allowed:"the strips next to each other that hold animals at one time, a whole number from 1 on"`
	Spare        int            `json:"spare,omitempty" allowed:"cross fences more, ready for the next move, a whole number; 0 if left out"`
	Moved        MovedFence     `json:"moved" document:"required" allowed:"\"one wire\", \"netting\" or \"wires\""`
	MovedWires   int            `json:"moved_wires,omitempty" allowed:"the wires of the moved fence; none for netting"`
	MovedSpacing units.Length   `json:"moved_spacing,omitempty" allowed:"from post to post of the moved fence, at the most; none for netting, which has its own posts"`
	RodRule      RodRule        `json:"rod_rule" document:"required" allowed:"\"trade press\" or \"utility\": whose rule of ground rods"`
	Interest     units.Fraction `json:"interest,omitempty" allowed:"of a year, on half of the price, 0 % to 100 %; 0 % if left out"`
	Prices       []FencePrice   `json:"prices" document:"required" allowed:"a list with one price for each item that the fence needs"`
	Note         string         `json:"note,omitempty"`
	Extra        map[string]any `json:"-" document:"extra"`
}

// The bounds of a job.
const (
	mostOfFence    = 1000 // lanes, wires or strips
	shortestLength = 1e-3 // m
	longestLength  = 1e6  // m
	lengthsAllowed = "1 mm to 1,000 km"
)

// ReadFenceJob reads a fence from JSON and checks it whole. The error names the path in
// the document, the value and what is allowed.
//
// Check: TestReadFenceJob, TestFenceJobRefuses
//
// Source: definition: the form of the document is ours
func ReadFenceJob(data []byte) (FenceJob, error) {
	var job FenceJob
	if err := document.Decode(data, &job); err != nil {
		return FenceJob{}, err
	}
	if err := job.check(); err != nil {
		return FenceJob{}, err
	}
	return job, nil
}

// check gives the error of the first thing that is wrong with a job.
func (j *FenceJob) check() error {
	for _, check := range []func() error{j.checkSizes, j.checkCounts, j.checkMoved, j.checkPrices} {
		if err := check(); err != nil {
			return err
		}
	}
	return nil
}

func (j *FenceJob) checkSizes() error {
	if err := checkLength("length", j.Length, "the length of a lane, above 0"); err != nil {
		return err
	}
	if err := checkLength("width", j.Width, "the width of a lane, above 0"); err != nil {
		return err
	}
	if err := checkLength("spacing", j.Spacing, "from post to post at the most, above 0"); err != nil {
		return err
	}
	if !(j.Interest >= 0 && j.Interest <= units.Whole) {
		return document.Wrong("interest", j.Interest, "is not a share", "0 % to 100 %")
	}
	return nil
}

// checkLength holds a length to what a fence can have.
func checkLength(path string, length units.Length, allowed string) error {
	switch {
	case length <= 0:
		return document.NotAbove0(path, length, allowed)
	case !(length >= shortestLength && length <= longestLength):
		return document.Wrong(path, length, "is not a length that a fence can have", lengthsAllowed)
	}
	return nil
}

func (j *FenceJob) checkCounts() error {
	for _, at := range []struct {
		path         string
		count, least int
	}{{"lanes", j.Lanes, 1}, {"wires", j.Wires, 1}, {"strips", j.Strips, 1}, {"spare", j.Spare, 0}} {
		switch {
		case at.count < at.least:
			return document.Wrong(at.path, at.count, "is too few, or was left out", "a whole number from "+strconv.Itoa(at.least)+" on")
		case at.count > mostOfFence:
			return document.Wrong(at.path, at.count, "is more than any fence has", "up to "+strconv.Itoa(mostOfFence))
		}
	}
	return nil
}

// checkMoved checks the fence that moves, and whose rule of rods it is.
func (j *FenceJob) checkMoved() error {
	wrong := func(with, allowed string) error {
		return document.Wrong("moved_wires", j.MovedWires, "does not go with "+with, allowed)
	}
	switch {
	case j.RodRule.String() == "":
		return document.Wrong("rod_rule", int(j.RodRule), "is not a rule, or was left out", `"trade press" or "utility"`)
	case j.Moved == MovedNetting && j.MovedWires != 0:
		return wrong("netting, which has its own strands", "0, or no such key")
	case j.Moved == MovedNetting:
		return nil
	case j.Moved == MovedOneWire && j.MovedWires != 1:
		return wrong("one wire", "1")
	case j.Moved == MovedWires && !(j.MovedWires >= 2 && j.MovedWires <= mostOfFence):
		return wrong("several wires", "2 to "+strconv.Itoa(mostOfFence))
	case j.Moved != MovedOneWire && j.Moved != MovedWires:
		return document.Wrong("moved", strconv.Quote(j.Moved.String()), "is not one kind of moved fence", `"one wire", "netting" or "wires"`)
	}
	return checkLength("moved_spacing", j.MovedSpacing, "from post to post of the moved fence at the most, above 0")
}

// checkPrices checks each price, and that the fence has one for each of its items.
func (j *FenceJob) checkPrices() error {
	for i := range j.Prices {
		if err := j.checkPrice(i); err != nil {
			return document.InList("prices", i, err)
		}
	}
	for _, item := range j.items() {
		if j.priceOf(item) == nil {
			return document.Wrong("prices", "", "no "+strconv.Quote(item.String())+", which this fence needs", "one price for each item that the fence needs")
		}
	}
	return nil
}

func (j *FenceJob) checkPrice(i int) error {
	p, currency := &j.Prices[i], j.Prices[0].Price.Currency
	switch {
	case p.Item.String() == "":
		return document.Wrong("item", int(p.Item), "is not an item, or was left out", `what it is, such as "wire" or "post"`)
	case slices.ContainsFunc(j.Prices[:i], func(before FencePrice) bool { return before.Item == p.Item }):
		return document.Wrong("item", strconv.Quote(p.Item.String()), "stands twice", "each item once")
	case p.Price.Currency == "":
		return document.Wrong("price", p.Price, "has no currency, or was left out", `the price of one piece or one roll, such as "5 USD"`)
	case p.Price.Amount.IsNegative():
		return document.Wrong("price", p.Price, "is negative", "money of 0 or more")
	case p.Price.Currency != currency:
		return document.Wrong("price", p.Price, "is another currency than "+currency, "one currency in all prices")
	case !(p.Years > 0 && p.Years <= math.MaxFloat64):
		return document.Wrong("years", units.Number(p.Years), "is not above 0, or was left out", "how many years it lasts")
	case !(p.Upkeep >= 0 && p.Upkeep <= math.MaxFloat64):
		return document.Wrong("upkeep", p.Upkeep, "is not a share of the price", "0 % or more")
	case p.Item.byLength():
		return checkLength("length", p.Length, "the length of the roll, or of the rod, above 0")
	}
	return nil
}

// byLength tells which items are bought by the roll or the rod.
func (i FenceItem) byLength() bool {
	return slices.Contains([]FenceItem{ItemWire, ItemMovedWire, ItemNetting, ItemRod}, i)
}

// items lists what the fence needs.
func (j *FenceJob) items() []FenceItem {
	if j.Moved == MovedNetting {
		return []FenceItem{ItemWire, ItemPost, ItemNetting, ItemEnergizer, ItemRod}
	}
	return []FenceItem{ItemWire, ItemPost, ItemMovedWire, ItemMovedPost, ItemEnergizer, ItemRod}
}

// priceOf gives the price of an item, nil where there is none.
func (j *FenceJob) priceOf(item FenceItem) *FencePrice {
	if i := slices.IndexFunc(j.Prices, func(p FencePrice) bool { return p.Item == item }); i >= 0 {
		return &j.Prices[i]
	}
	return nil
}
