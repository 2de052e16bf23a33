package main

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"example.org/soum/grazing"
	"example.org/soum/internal/document"
	"example.org/soum/units"
)

// question is the document that the program reads.
type question struct {
	Note   string              `json:"note,omitempty"`
	Stock  grazing.FencedStock `json:"stock" document:"required" allowed:"\"quiet cattle\", \"small\", \"birds\" or \"horned\""`
	As     string              `json:"wired_as" document:"required" allowed:"the animal that the wires are chosen for, such as \"sheep\""`
	Land   units.Area          `json:"land" document:"required" allowed:"the land that the moved fence goes over, an area above 0"`
	Job    grazing.FenceJob    `json:"job" document:"required" allowed:"an object: the fence and the prices"`
	Saves  *units.Money        `json:"saves,omitempty" allowed:"what the fence saves or brings in a year, before its upkeep, such as \"500 USD\""`
	Grazed *units.UnitDays     `json:"grazed,omitempty" allowed:"what is grazed behind the fence in a year, such as \"35 AUM\""`
	Extra  map[string]any      `json:"-" document:"extra"`
}

// read reads the document and checks what the library has no path for.
func read(data []byte) (*question, error) {
	var q question
	if err := document.Decode(data, &q); err != nil {
		return nil, err
	}
	for _, check := range []func() error{q.checkSizes, q.checkCounts, q.checkWords, q.checkPrices} {
		if err := check(); err != nil {
			return nil, err
		}
	}
	return &q, nil
}

func (q *question) checkSizes() error {
	for _, at := range []struct {
		path, is string
		value    quantity
		right    bool
	}{
		{"land", "an area above 0", q.Land, q.Land > 0},
		{"job.length", "the length of a lane, above 0", q.Job.Length, q.Job.Length > 0},
		{"job.width", "the width of a lane, above 0", q.Job.Width, q.Job.Width > 0},
		{"job.spacing", "from post to post at the most, above 0", q.Job.Spacing, q.Job.Spacing > 0},
	} {
		if !at.right {
			return &document.Error{Path: at.path, Value: both(at.value), Problem: "is not above 0, or was left out", Allowed: at.is}
		}
	}
	if q.Grazed != nil && !(*q.Grazed >= units.AnimalUnitDay) {
		return &document.Error{Path: "grazed", Value: both(*q.Grazed), Problem: "is less than one animal unit grazes in a day", Allowed: "1 AUD or more, or no such key"}
	}
	return nil
}

func (q *question) checkCounts() error {
	for _, at := range []struct {
		key    string
		number int
		least  int
	}{{"lanes", q.Job.Lanes, 1}, {"wires", q.Job.Wires, 1}, {"strips", q.Job.Strips, 1}, {"spare", q.Job.Spare, 0}} {
		if at.number < at.least {
			return &document.Error{Path: "job." + at.key, Value: strconv.Itoa(at.number), Problem: "is too few, or was left out", Allowed: fmt.Sprintf("a whole number from %d on", at.least)}
		}
	}
	return nil
}

func (q *question) checkWords() error {
	switch {
	case q.Job.Moved == 0:
		return &document.Error{Path: "job.moved", Problem: "missing", Allowed: `"one wire", "netting" or "wires"`}
	case q.Job.RodRule == 0:
		return &document.Error{Path: "job.rod_rule", Problem: "missing", Allowed: `"trade press" or "utility"`}
	}
	if q.As == barbed {
		return &document.Error{Path: "wired_as", Value: strconv.Quote(q.As), Problem: "is a fence that nobody may electrify, and this one is electric", Allowed: "one of: " + strings.Join(wiredAs(), ", ")}
	}
	if animals := wiredAs(); !slices.Contains(animals, q.As) {
		return &document.Error{Path: "wired_as", Value: strconv.Quote(q.As), Problem: "is no animal that an electric fence is printed for", Allowed: "one of: " + strings.Join(animals, ", ")}
	}
	return nil
}

// checkPrices checks each price by itself, and that all money is of one currency.
func (q *question) checkPrices() error {
	for i := range q.Job.Prices {
		p, path := &q.Job.Prices[i], fmt.Sprintf("job.prices[%d].", i)
		switch {
		case p.Item == 0:
			return &document.Error{Path: path + "item", Problem: "missing", Allowed: `what it is, such as "wire" or "post"`}
		case p.Price.Currency == "":
			return &document.Error{Path: path + "price", Problem: "missing", Allowed: `the price of one piece or one roll, such as "5 USD"`}
		case p.Price.Amount.IsNegative():
			return &document.Error{Path: path + "price", Value: p.Price.String(), Problem: "is negative", Allowed: "money of 0 or more"}
		case p.Price.Currency != q.Job.Prices[0].Price.Currency:
			return &document.Error{Path: path + "price", Value: p.Price.String(), Problem: "is another currency than " + q.Job.Prices[0].Price.Currency, Allowed: "one currency in a file"}
		case !(p.Years > 0):
			return &document.Error{Path: path + "years", Value: units.Number(p.Years), Problem: "is not above 0, or was left out", Allowed: "how many years it lasts"}
		}
	}
	if q.Saves != nil && len(q.Job.Prices) > 0 && q.Saves.Currency != q.Job.Prices[0].Price.Currency {
		return &document.Error{Path: "saves", Value: q.Saves.String(), Problem: "is another currency than " + q.Job.Prices[0].Price.Currency, Allowed: "one currency in a file"}
	}
	return nil
}

// quantity prints itself for people.
type quantity interface{ In(units.System) string }

// both prints a quantity in both systems, so that the user's own is among them.
func both(q quantity) string {
	metric, us := q.In(units.Metric), q.In(units.US)
	if metric == us {
		return metric
	}
	return fmt.Sprintf("%s (%s)", metric, us)
}

// barbed is the row of a fence that nobody may electrify, and this one is electric.
const barbed = "any-behind-barbed-wire"

// wiredAs lists the animals that print has wires round the land for, or the least
// voltage: some have only the one.
func wiredAs() (animals []string) {
	add := func(animal string) {
		if animal != barbed && !slices.Contains(animals, animal) {
			animals = append(animals, animal)
		}
	}
	for _, row := range grazing.WireRows() {
		if row.Line == grazing.LineBoundary {
			add(row.Stock)
		}
	}
	for _, row := range grazing.VoltageRows() {
		if row.Aim == grazing.VoltageLeast {
			add(row.Stock)
		}
	}
	return animals
}
