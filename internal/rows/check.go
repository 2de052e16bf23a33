// Package rows finds the rows of tables that documents name, and holds the rows that
// their users write out against what can be.
package rows

import (
	"slices"
	"strconv"

	"example.org/soum/forage"
	"example.org/soum/herd"
	"example.org/soum/internal/document"
	"example.org/soum/units"
)

// SumShares gives what the months of a row grow of its annual yield.
func SumShares(p *forage.Pasture) (sum units.Fraction) {
	for _, share := range p.Shares {
		sum += share
	}
	return sum
}

// CheckPasture holds a row, a user's above all, against what the season needs.
func CheckPasture(p *forage.Pasture) error {
	for month, share := range p.Shares {
		if !(share >= 0 && share <= 1) {
			return document.InList("shares", month, document.Wrong("", share, "is no share", "0 % to 100 %"))
		}
	}
	sum := SumShares(p)
	switch {
	case sum < 0.9 || sum > 1.1:
		return document.Wrong("shares", sum, "do not make up a year", "a sum of 90 % to 110 %")
	case !(p.Leave.Low > 0) || !(p.Leave.High >= p.Leave.Low):
		return document.Wrong("leave", document.SpanText(p.Leave), "is no span of heights", "low above 0, high not below it")
	case !(p.TurnIn.Low > 0) || !(p.TurnIn.High >= p.TurnIn.Low):
		return document.Wrong("turn_in", document.SpanText(p.TurnIn), "is no span of heights", "low above 0, high not below it")
	case !(p.YieldLow > 0) || !(p.YieldMedium > 0) || !(p.YieldHigh > 0):
		return document.NotAbove0("yield_medium", p.YieldMedium, "three yields above 0")
	}
	turns := 0 // of the year
	for i, month := range p.KeyMonths {
		if month < 1 || month > 12 {
			return document.InList("key_months", i, document.Wrong("", month, "is no month", "1 to 12"))
		}
		if slices.Contains(p.KeyMonths[:i], month) {
			return document.InList("key_months", i, document.Wrong("", month, "stands twice", "each month once"))
		}
		if i > 0 && month < p.KeyMonths[i-1] {
			turns++
		}
		if turns > 1 || (turns == 1 && month > p.KeyMonths[0]) {
			return document.InList("key_months", i, document.Wrong("", month, "goes round the year more than once", "the months in the order they come, as 11, 12, 1"))
		}
	}
	return nil
}

// CheckClass holds a row, a user's above all, against what the season needs.
func CheckClass(c *herd.Class) error {
	switch {
	case len(c.Intake) == 0:
		return document.Wrong("intake", "[]", "holds no intake", "dry matter a day as a share of live weight, for at least one stage")
	case c.Kind.String() == "":
		return document.Wrong("kind", int(c.Kind), "is missing", "the kind of animal")
	case !(c.Weight > 0):
		return document.NotAbove0("weight", c.Weight, "the live weight of one animal")
	case !document.IsShare(c.Pasture):
		return document.Wrong("pasture", document.SpanText(c.Pasture), "is no span of shares", "low and high from 0 % to 100 %")
	}
	if c.Excretion != "" || c.ExcretionBy != 0 {
		if _, err := herd.Excretion(c.Excretion, c.ExcretionBy, herd.ExcretaNitrogen, 1, c.Weight, 1); err != nil {
			return document.Wrong("excretion", strconv.Quote(c.Excretion), "is no row of manure, by "+strconv.Quote(c.ExcretionBy.String()), "a row and its source: "+err.Error())
		}
	}
	for i, row := range c.Intake {
		if !document.IsShare(row.Share) || row.Share.High == 0 {
			return document.InList("intake", i, document.Wrong("share", document.SpanText(row.Share), "is no span of shares", "low and high above 0 % and up to 100 %"))
		}
	}
	return nil
}
