package farm

import (
	"fmt"
	"slices"
	"time"

	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// RainSoFar tells how the rain stands to the figure of a date.
type RainSoFar int

// The answers.
const (
	SoFarUnknown RainSoFar = iota + 1 // the months that the record has do not decide it
	SoFarEnough                       // the figure was reached
	SoFarShort                        // less fell than the figure
)

// DroughtDate is a date of the farm's drought plan: hold the rain gauge against the
// figure, and where less has fallen act.
type DroughtDate struct {
	Date    units.Date      `json:"date"`     // when to look
	Since   units.Date      `json:"since"`    // the day from which the rain counts
	Normal  units.RainDepth `json:"normal_m"` // from then to the evening before the date
	Below   units.Fraction  `json:"below"`    // the share of it under which to act
	Figure  units.RainDepth `json:"figure_m"` // act if less than this has fallen
	Rain    units.RainDepth `json:"rain_m"`   // of the whole months from since to the date that the record has
	SoFar   RainSoFar       `json:"so_far"`   // whether the figure was reached
	CutLow  units.Fraction  `json:"cut_low"`  // by how much less forage or stock, at the least; 0 where print has no figure
	CutHigh units.Fraction  `json:"cut_high"` // at the most
	Act     string          `json:"act"`      // what to do
	Land    []string        `json:"land"`     // ids of the land whose key months these are; empty for a printed date
	Place   string          `json:"place"`    // where the date was printed for; "" for the land's own key months
	Source  string          `json:"source"`   // keys of SOURCES.md
}

// normalRecord puts the document's normals into the form of a record, a year long.
func (r *ready) normalRecord() []rainfall.MonthlyRain {
	record := make([]rainfall.MonthlyRain, 12)
	for i, depth := range r.farm.Rain.Normal {
		record[i] = rainfall.MonthlyRain{Year: r.start.Year(), Month: time.January + time.Month(i), Rain: depth}
	}
	return record
}

// keyLand is land that goes by the same key months.
type keyLand struct {
	months []int
	land   []string
}

// keyLands joins the land by its key months, in the order of the document.
func (r *ready) keyLands() (all []keyLand) {
	for i := range r.farm.Land {
		months, id := r.lands[i].pasture.KeyMonths, r.farm.Land[i].ID
		if len(months) == 0 {
			continue
		}
		at := slices.IndexFunc(all, func(k keyLand) bool { return slices.Equal(k.months, months) })
		if at < 0 {
			all = append(all, keyLand{months: months})
			at = len(all) - 1
		}
		all[at].land = append(all[at].land, id)
	}
	return all
}

// drought lists the dates of the drought plan from the first of January of
// today's year to the season's last day, where the normals are known.
func drought(r *ready) (all []DroughtDate, err error) {
	if len(r.farm.Rain.Normal) != 12 {
		return nil, nil
	}
	normals := r.normalRecord()
	for i, k := range r.keyLands() {
		for year := r.start.Year() - 1; year <= r.farm.Season.To.Year(); year++ { // key months may pass the turn of the year
			steps, err := rainfall.DroughtPlan(year, k.months, normals)
			if err != nil {
				return nil, fmt.Errorf("the drought plan of %s: %w", k.land[0], err)
			}
			for j := range steps {
				date := r.droughtDate(&steps[j], k)
				inPlan := date.Date.Year() >= r.start.Year() && date.Date <= r.farm.Season.To
				if !inPlan || (i > 0 && date.Place != "") { // the printed dates stand there once
					continue
				}
				all = append(all, date)
			}
		}
	}
	slices.SortStableFunc(all, func(a, b DroughtDate) int { return int(a.Date) - int(b.Date) })
	return all, nil
}

func (r *ready) droughtDate(step *rainfall.DroughtStep, of keyLand) DroughtDate {
	date := DroughtDate{
		Date: step.Date, Since: step.Since, Normal: step.Normal, Below: step.Below, Figure: step.Figure,
		CutLow: step.Cut.Low, CutHigh: step.Cut.High, Act: step.Act, Land: []string{}, Source: step.Source,
	}
	for _, t := range rainfall.Triggers() {
		if t.Source == step.Source && t.Act == step.Act {
			date.Place = t.Place
		}
	}
	counts := func(time.Month) bool { return true }
	if date.Place == "" {
		date.Land = of.land
		counts = func(month time.Month) bool { return slices.Contains(of.months, int(month)) }
	}
	date.Rain, date.SoFar = r.soFar(step, counts)
	return date
}

// soFar holds the months of the record against a figure. Of a month that the date
// parts the rain lies between nothing and all of the month's; where the figure does
// too, or a month is missing, nothing is decided but that what fell may be enough.
func (r *ready) soFar(step *rainfall.DroughtStep, counts func(time.Month) bool) (units.RainDepth, RainSoFar) {
	var least, most units.RainDepth
	complete := true
	for month := step.Since; month < step.Date; month = month.Add(month.DaysInMonth()) {
		if !counts(month.Month()) {
			continue
		}
		at := slices.IndexFunc(r.record, func(m rainfall.MonthlyRain) bool {
			return m.Year == month.Year() && m.Month == month.Month()
		})
		if at < 0 {
			complete = false
			continue
		}
		most += r.record[at].Rain
		if month.Add(month.DaysInMonth()) <= step.Date {
			least += r.record[at].Rain
		}
	}
	switch {
	case least >= step.Figure:
		return least, SoFarEnough
	case complete && most < step.Figure:
		return least, SoFarShort
	}
	return least, SoFarUnknown
}
