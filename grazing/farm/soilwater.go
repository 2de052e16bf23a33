package farm

import (
	"errors"
	"fmt"
	"maps"
	"slices"
	"strconv"
	"time"

	"example.org/soum/internal/document"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// WaterAccount is what the monthly account of the root zone's water needs beside
// the rain. With it the growth of a month goes by the share of the wanted water
// that the plants get, in place of the rain of the key months.
type WaterAccount struct {
	Reference   []units.RainDepth          `json:"reference" document:"required" allowed:"twelve depths of normal reference evapotranspiration, January first"`
	Crop        string                     `json:"crop,omitempty" allowed:"the name of a crop row, taken at full cover, where coefficient is left out"`
	Coefficient float64                    `json:"coefficient,omitempty" allowed:"what the pasture uses of the reference, above 0 and up to 2, where crop is left out"`
	Store       units.RainDepth            `json:"store,omitempty" allowed:"the water that the root zone holds when full, above 0, where soil is left out"`
	Soil        string                     `json:"soil,omitempty" allowed:"the texture of a soil row, with by and roots, where store is left out"`
	By          rainfall.SoilSource        `json:"by,omitempty" allowed:"whose figures of the soil, with soil"`
	Roots       units.Length               `json:"roots,omitempty" allowed:"the depth of the roots, above 0, with soil"`
	Start       *units.Fraction            `json:"start,omitempty" allowed:"how full the soil is before the first month, 0 % to 100 %; full if left out"`
	Begun       string                     `json:"begun,omitempty" allowed:"the month with which the account began, such as \"2000-04\", up to today's; if left out the first of rain.months, of the season or of today, whichever is earliest"`
	Rule        rainfall.BucketRule        `json:"rule,omitempty" allowed:"\"plain\" or \"exponential\"; plain if left out"`
	Irrigation  map[string]units.RainDepth `json:"irrigation,omitempty" allowed:"water given by month, such as \"2000-07\": \"50 mm\", in months of the account"`
	Note        string                     `json:"note,omitempty"`
	Extra       map[string]any             `json:"-" document:"extra"`
}

// SoilMonth is a month of the account of the root zone's water.
type SoilMonth struct {
	Year       int             `json:"year"`         // the calendar year
	Month      int             `json:"month"`        // 1 to 12
	Known      bool            `json:"known"`        // false: the rain is the normal's, the record has not the month
	Rain       units.RainDepth `json:"rain_m"`       // without the water given
	Irrigation units.RainDepth `json:"irrigation_m"` // the water given
	Demand     units.RainDepth `json:"demand_m"`     // what the plants would have used with water enough
	Actual     units.RainDepth `json:"actual_m"`     // what they use
	Drained    units.RainDepth `json:"drained_m"`    // what the soil cannot hold
	Store      units.RainDepth `json:"store_m"`      // in the soil at the month's end
	Deficit    units.RainDepth `json:"deficit_m"`    // short of full at the month's end
	Growth     units.Fraction  `json:"growth_share"` // growth over that with water enough
	Ground     rainfall.Ground `json:"ground"`       // whether it bears stock at the month's end, by the deficit
}

// What the account of the soil's water may leave out.
const (
	defaultRule       = rainfall.BucketPlain
	mostOfReference   = 2 // ours: the crop rows end at 1.2
	defaultSoilFilled = units.Whole
)

// monthIndex numbers the months of all years.
func monthIndex(year int, month time.Month) int { return year*12 + int(month-time.January) }

func monthOf(date units.Date) int { return monthIndex(date.Year(), date.Month()) }

// accountSpan gives the first and the last month of the account: from the month with which
// it began, else the first of the record, of the season or of today, whichever is earliest,
// to the plan's last.
func (f *Farm) accountSpan() (first, last int) {
	last = monthOf(f.Season.To)
	if b := f.Rain.Balance; b != nil && b.Begun != "" {
		return monthOfKey(b.Begun), last
	}
	first = min(monthOf(f.Today), monthOf(f.Season.From))
	for _, m := range f.Rain.Series() {
		first = min(first, monthIndex(m.Year, m.Month))
	}
	return first, last
}

func (f *Farm) checkBalance() error {
	const path = "rain.balance"
	b := f.Rain.Balance
	if b == nil {
		return nil
	}
	if n := len(f.Rain.Normal); n != 12 {
		return document.Wrong("rain.normal", n, "months are not twelve, and rain.balance needs the normals for the months to come", "twelve depths, January first")
	}
	if n := len(b.Reference); n != 12 {
		return document.Wrong(path+".reference", n, "months are not twelve", "twelve depths, January first")
	}
	for i, depth := range b.Reference {
		if !(depth >= 0) {
			return document.Wrong(fmt.Sprintf("%s.reference[%d]", path, i), depth, "is negative", "a depth of 0 or more")
		}
	}
	for _, check := range []func(string) error{b.checkCrop, b.checkStore} {
		if err := check(path); err != nil {
			return err
		}
	}
	switch {
	case b.Begun != "" && (!isMonth(b.Begun) || monthOfKey(b.Begun) > monthOf(f.Today)):
		return document.Wrong(path+".begun", strconv.Quote(b.Begun), "is no month, or after today's", `a month such as "2000-04", up to today's`)
	case b.Start != nil && !(*b.Start >= 0 && *b.Start <= 1):
		return document.Wrong(path+".start", *b.Start, "is no share", "0 % to 100 %")
	case b.Rule == rainfall.BucketStress:
		return document.Wrong(path+".rule", strconv.Quote(b.Rule.String()), "is a rule for days, and this account goes by months", `"plain" or "exponential"`)
	}
	return f.checkIrrigation(path + ".irrigation.")
}

func (b *WaterAccount) checkCrop(path string) error {
	switch {
	case b.Crop != "" && b.Coefficient != 0:
		return document.Wrong(path+".coefficient", b.Coefficient, "stands beside crop", "one or the other")
	case b.Crop != "":
		_, err := rainfall.CropCoefficient(b.Crop, rainfall.StageMid, units.Middle)
		return document.NoRow(path+".crop", b.Crop, err, ", or coefficient in place of crop")
	case !(b.Coefficient > 0 && b.Coefficient <= mostOfReference):
		return document.Wrong(path+".coefficient", b.Coefficient, "is no share of the reference, or was left out", "a number above 0 and up to 2, or crop")
	}
	return nil
}

func (b *WaterAccount) checkStore(path string) error {
	switch {
	case b.Soil == "" && (b.By != 0 || b.Roots != 0):
		return document.Wrong(path+".soil", `""`, "is missing beside by or roots", "the texture of a soil row")
	case b.Soil == "" && !(b.Store > 0):
		return document.NotAbove0(path+".store", b.Store, "a depth above 0, or soil, by and roots")
	case b.Soil == "":
		return nil
	case b.Store != 0:
		return document.Wrong(path+".store", b.Store, "stands beside soil", "one or the other")
	case !(b.Roots > 0):
		return document.NotAbove0(path+".roots", b.Roots, "the depth of the roots")
	}
	_, err := rainfall.SoilWater(b.Soil, b.By, units.Middle)
	var parse *units.ParseError
	if errors.As(err, &parse) && parse.Quantity == "rainfall.SoilSource" {
		return document.NoRow(path+".by", b.By.String(), err, ", whose figure of this soil it is")
	}
	return document.NoRow(path+".soil", b.Soil, err, ", or store in place of soil")
}

func (f *Farm) checkIrrigation(path string) error {
	first, last := f.accountSpan()
	for _, key := range slices.Sorted(maps.Keys(f.Rain.Balance.Irrigation)) {
		depth := f.Rain.Balance.Irrigation[key]
		if !isMonth(key) {
			return document.Wrong(path+key, strconv.Quote(key), "is no month", `a month such as "2000-04"`)
		}
		switch at := monthOfKey(key); {
		case !(depth >= 0):
			return document.Wrong(path+key, depth, "is negative", "a depth of 0 or more")
		case at < first || at > last:
			return document.Wrong(path+key, strconv.Quote(key), "is outside the account of the soil's water", "a month from the account's first, which is begun, to the season's last")
		}
	}
	return nil
}

func monthOfKey(key string) int {
	date, _ := firstOfMonth(key)
	return monthOf(date)
}

// bucket gives the store of the root zone at an end of the printed spans.
func (b *WaterAccount) bucket(end units.End) (rainfall.Bucket, error) {
	bucket := rainfall.Bucket{Holds: b.Store, Rule: b.Rule}
	if b.Rule == 0 {
		bucket.Rule = defaultRule
	}
	if b.Soil != "" {
		holds, err := rainfall.SoilWater(b.Soil, b.By, end)
		if err != nil {
			return bucket, err
		}
		if bucket.Holds, err = rainfall.RootZoneWater(b.Roots, holds); err != nil {
			return bucket, err
		}
	}
	start := defaultSoilFilled
	if b.Start != nil {
		start = *b.Start
	}
	bucket.Start = min(bucket.Holds, bucket.Holds*units.RainDepth(start))
	return bucket, nil
}

func (b *WaterAccount) coefficient(end units.End) (float64, error) {
	if b.Crop == "" {
		return b.Coefficient, nil
	}
	return rainfall.CropCoefficient(b.Crop, rainfall.StageMid, end)
}

// settleSoil keeps the account of the root zone's water, where the document asks
// for one. At the low end of the printed spans the soil holds little and the
// plants want much.
func (r *ready) settleSoil(met *problems) error {
	b := r.farm.Rain.Balance
	if b == nil {
		return nil
	}
	coefficient, err := b.coefficient(r.end.Other())
	if err != nil {
		return err
	}
	bucket, err := b.bucket(r.end)
	if met.keep(err, r.start, r.input.Days); met.err != nil {
		return met.err
	}
	first, last := r.farm.accountSpan()
	months := r.soilMonths(first, last, coefficient)
	water, demand := make([]units.RainDepth, len(months)), make([]units.RainDepth, len(months))
	for i := range months {
		water[i], demand[i] = months[i].Rain+months[i].Irrigation, months[i].Demand
	}
	steps, err := rainfall.WaterBalance(bucket, water, demand)
	if err != nil {
		return err
	}
	for i, step := range steps {
		m := &months[i]
		m.Actual, m.Drained, m.Store, m.Deficit = min(step.Actual, step.Demand), step.Drained, step.Store, step.Deficit
		if m.Ground, err = rainfall.GroundFor(m.Deficit); err != nil {
			return err
		}
		m.Growth = units.Whole // nothing is wanted, so nothing is lacking
		if m.Demand > 0 {
			if m.Growth, err = rainfall.GrowthShare(m.Actual, m.Demand); err != nil {
				return err
			}
		}
	}
	r.soil, r.soilFirst = months, first
	return nil
}

// soilMonths gives the months of the account with their rain, known or normal,
// the water given and what the plants want.
func (r *ready) soilMonths(first, last int, coefficient float64) []SoilMonth {
	rain := &r.farm.Rain
	months := make([]SoilMonth, last-first+1)
	for i := range months {
		at := first + i
		month := at % 12
		months[i] = SoilMonth{Year: at / 12, Month: month + 1, Rain: rain.Normal[month], Demand: rain.Balance.Reference[month] * units.RainDepth(coefficient)}
	}
	for _, m := range r.record {
		if i := monthIndex(m.Year, m.Month) - first; i >= 0 && i < len(months) {
			months[i].Rain, months[i].Known = m.Rain, true
		}
	}
	for key, depth := range rain.Balance.Irrigation {
		months[monthOfKey(key)-first].Irrigation = depth
	}
	return months
}

// soilOn gives the month of the account that a date is in.
func (r *ready) soilOn(date units.Date) *SoilMonth {
	return &r.soil[monthOf(date)-r.soilFirst]
}

// soil lists the account's months of the plan.
func soil(r *ready) []SoilMonth {
	if r.soil == nil {
		return nil
	}
	return slices.Clone(r.soil[monthOf(r.start)-r.soilFirst:])
}

// soilNote says that growth goes by the water of the soil, and by which rule.
func soilNote(r *ready) Note {
	guessed := 0
	for i := range r.soil {
		if !r.soil[i].Known {
			guessed++
		}
	}
	months := soil(r)
	driest := &months[0]
	for i := range months {
		if months[i].Growth < driest.Growth {
			driest = &months[i]
		}
	}
	rule := r.farm.Rain.Balance.Rule
	if rule == 0 {
		rule = defaultRule
	}
	begin := "full, which is ours"
	if start := r.farm.Rain.Balance.Start; start != nil {
		begin = r.text(*start) + " full"
	}
	return note("growth-by-water", Values{"rule": rule.String(), "share": float64(driest.Growth), "year": driest.Year, "month": driest.Month, "months": len(r.soil), "normal_months": guessed},
		"Growth goes by the water in the soil, month by month, by the %s rule, and not by the rain of the key months: in %s %d it is %s of what the book has for the month, the least of this plan. Of the %d months of the account %d are not in the record and have normal rain; it began %s. Water enough adds nothing above the book.",
		rule, time.Month(driest.Month), driest.Year, r.text(driest.Growth), len(r.soil), guessed, begin)
}
