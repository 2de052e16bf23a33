package forage

import (
	"slices"
	"time"

	"example.org/soum/units"
)

// Condition is how thick a stand is, as a pasture stick judges it.
type Condition int

// The conditions of a stand.
const (
	Fair      Condition = iota + 1 // thin, with bare ground between the plants
	Good                           // closed for the most part
	Excellent                      // thick and closed
)

// Productivity is the class of yield of a stand, by soil and care.
type Productivity int

// The classes of productivity.
const (
	ProductivityLow    Productivity = iota + 1 // the lowest printed yield
	ProductivityMedium                         // the middle one
	ProductivityHigh                           // the highest
)

// PastureRow is a pasture of the table by its name, or a row of the user's own.
type PastureRow = units.RowOr[Pasture]

// Pasture is a row of figures of one kind of pasture. Each group of figures
// has its source key and its mark beside it. A user's own row is filled in the
// same way.
type Pasture struct {
	Name string `json:"name"` // lower case with hyphens

	// Dry matter per area for each unit of ruler height above the stubble, by
	// condition of the stand. A zero span is not published: see Density.
	Fair      units.Span[units.Density] `json:"density_fair,omitempty"`
	Good      units.Span[units.Density] `json:"density_good,omitempty"`
	Excellent units.Span[units.Density] `json:"density_excellent,omitempty"`
	// Key of SOURCES.md and mark of the densities.
	DensitySource string `json:"density_source,omitempty"`
	DensityMark   string `json:"density_mark,omitempty"`

	// Mean ruler height at which grazing begins, and at which it ends.
	TurnIn units.Span[units.Height] `json:"turn_in"`
	Leave  units.Span[units.Height] `json:"leave"`
	// Key of SOURCES.md and mark of the heights.
	HeightSource string `json:"height_source,omitempty"`
	HeightMark   string `json:"height_mark,omitempty"`

	// The height at which an ungrazed stand grows no more. None is published:
	// the rows take twice the upper end of TurnIn, which is our choice.
	Ceiling units.Height `json:"ceiling"`

	// Dry matter grown in a year, by productivity.
	YieldLow    units.Yield `json:"yield_low"`
	YieldMedium units.Yield `json:"yield_medium"`
	YieldHigh   units.Yield `json:"yield_high"`
	// The share of the year's yield that each month grows, January first, as
	// printed: a row's sum need not be 1 and is never scaled to it.
	Shares [12]units.Fraction `json:"shares"`
	// Key of SOURCES.md and mark of the yields and shares. The yields of a row
	// marked D are read in print, the shares are solved from it.
	GrowthSource string `json:"growth_source,omitempty"`
	GrowthMark   string `json:"growth_mark,omitempty"`

	// The months, 1 to 12 in the order they come, whose rain decides the year.
	KeyMonths []int `json:"key_months,omitempty"`
	// Key of SOURCES.md and mark of the months.
	KeyMonthsSource string `json:"key_months_source,omitempty"`
	KeyMonthsMark   string `json:"key_months_mark,omitempty"`

	// HoldsLegume tells that figures of the row are printed for a stand with a
	// legume in it.
	HoldsLegume bool `json:"holds_legume,omitempty"`
	// Legume is the share of legume in the stand; 0 is "not said". No source of
	// the rows says it, so look at the stand: above half of it, see BloatRisk.
	Legume units.Fraction `json:"legume,omitempty"`

	// MayBloat tells that the row holds a legume, which may be one that bloats: see
	// BloatRisk and BloatOf.
	MayBloat bool `json:"may_bloat,omitempty"`
	// PrussicAcid tells that the row makes prussic acid: see PrussicRisk.
	PrussicAcid bool `json:"prussic_acid,omitempty"`
	// Endophyte tells that the row may carry the toxic fungus of tall fescue: see
	// EndophyteLoss.
	Endophyte bool `json:"endophyte,omitempty"`
	// Key of SOURCES.md of what stock are in danger of on the row; none where print
	// tells of nothing, which is not "safe".
	DangerSource string `json:"danger_source,omitempty"`

	// Note tells what was chosen where print leaves it open.
	Note string `json:"note,omitempty"`
}

// Density gives the printed span of density for a condition. Where the row has
// none for it, a neighbour's figure is not put in its place.
//
// Errors: a *units.ParseError that lists the conditions that the row has a density
// for; a *units.DomainError for a number that is no condition
func (p Pasture) Density(condition Condition) (units.Span[units.Density], error) {
	const function = "forage.Pasture.Density"
	if condition < Fair || condition > Excellent {
		return units.Single(notANumber[units.Density]()), units.OutOfDomain(function, 1, formulaDensityOf.Arguments[1], float64(condition))
	}
	span := p.densities()[condition-Fair]
	if isPrinted(span) {
		return span, nil
	}
	return units.Single(notANumber[units.Density]()), &units.ParseError{
		Quantity: "condition", Text: condition.String(), Problem: p.noDensity(condition), Accepts: p.conditions(), Word: true,
		Function: function, Argument: "condition", Index: 1,
	}
}

// densities are the spans of density by condition, Fair first.
func (p *Pasture) densities() [Excellent]units.Span[units.Density] {
	return [...]units.Span[units.Density]{p.Fair, p.Good, p.Excellent}
}

// isPrinted reports whether a span of density is published.
func isPrinted(span units.Span[units.Density]) bool { return span.Low > 0 && span.High >= span.Low }

// conditions lists those that the row has a density for.
func (p *Pasture) conditions() []string {
	var has []string
	for i, span := range p.densities() {
		if isPrinted(span) {
			has = append(has, (Fair + Condition(i)).String())
		}
	}
	return has
}

func (p *Pasture) noDensity(c Condition) string {
	return "the row " + p.Name + " has no density for a " + c.String() + " stand: take another condition, or give a density of your own"
}

// Yield gives the dry matter grown in a year for a class of productivity.
//
// Errors: a *units.DomainError for a number that is no class
func (p Pasture) Yield(of Productivity) (units.Yield, error) {
	switch of {
	case ProductivityLow:
		return p.YieldLow, nil
	case ProductivityMedium:
		return p.YieldMedium, nil
	case ProductivityHigh:
		return p.YieldHigh, nil
	}
	return notANumber[units.Yield](), units.OutOfDomain("forage.Pasture.Yield", 1, formulaYieldOf.Arguments[1], float64(of))
}

// Pastures gives the rows of the library, as copies of the caller's own.
//
// Where a density row and a growth row are put together in one pasture, the
// pairing is ours and the row's note says which growth row it is.
//
// Check: TestPasturesHoldWhatTheyPromise, TestPasturesAreCopies
//
// Source: UMAINE-STICK densities; UMAINE-STICK, UGA-HEIGHTS, WSU-HEIGHTS, LULING-STICK,
// SRUC-SHEEPNET heights; PSU-MONTHS yields and shares; UKY-BLOAT, OSU-ENDOPHYTE dangers; ours: pairing and ceiling, as no source joins them
func Pastures() []Pasture {
	all := make([]Pasture, 0, len(pastureRows))
	for i := range pastureRows {
		all = append(all, pastureRows[i].pasture())
	}
	return all
}

// PastureByName gives one row. The error lists the rows there are.
//
// Check: TestPastureByName
//
// Source: definition: a look-up in Pastures
func PastureByName(name string) (Pasture, error) {
	if row := pastureRowOf(name); row != nil {
		return row.pasture(), nil
	}
	return Pasture{}, &units.ParseError{Quantity: "forage.Pasture", Text: name, Problem: "no such row", Accepts: namesOf(pastureRows[:], nameOf), Word: true}
}

func pastureRowOf(name string) *pastureRow {
	return rowOf(pastureRows[:], func(r *pastureRow) bool { return r.name == name })
}

func nameOf(r *pastureRow) string { return r.name }

// noPasture is NaN and the error of a look-up by a name that no row has.
func noPasture[Q ~float64](formula *units.Formula, name string, arguments ...float64) (Q, error) {
	return noRow[Q](formula, "pasture", name, "no such row", namesOf(pastureRows[:], nameOf), arguments...)
}

// DensityOf gives one end of the printed density of a row.
//
// Table: dry matter for each unit of ruler height above the stubble, by row and
// condition of the stand
//
// Where:
//   - pasture: as in Pastures
//   - condition: of the stand
//   - end: of the printed span
//
// Errors: a *units.ParseError that lists the rows, or the conditions that the row has
// a density for
//
// Source: UMAINE-STICK; NOBLE-PICTURE and NOBLE-DROUGHT for warm-season-grass
func DensityOf(pasture string, condition Condition, end units.End) (units.Density, error) {
	arguments := [...]float64{0, float64(condition), float64(end)}
	row := pastureRowOf(pasture)
	if row == nil {
		return noPasture[units.Density](&formulaDensityOf, pasture, arguments[:]...)
	}
	var span units.Span[units.Density]
	if condition >= Fair && condition <= Excellent {
		p := row.pasture()
		if span = p.densities()[condition-Fair]; !isPrinted(span) {
			return noRow[units.Density](&formulaDensityOf, "condition", condition.String(), p.noDensity(condition), p.conditions(), arguments[:]...)
		}
	}
	return units.Answer(&formulaDensityOf, span.At(end), arguments[:]...)
}

// TurnInOf gives one end of the height at which a row may be grazed.
//
// Table: mean ruler height at turn-in, by row
//
// Where:
//   - pasture: as in Pastures
//   - end: of the printed span
//
// Errors: a *units.ParseError that lists the rows
//
// Source: UMAINE-STICK, UGA-HEIGHTS, WSU-HEIGHTS, LULING-STICK, SRUC-SHEEPNET
func TurnInOf(pasture string, end units.End) (units.Height, error) {
	row := pastureRowOf(pasture)
	if row == nil {
		return noPasture[units.Height](&formulaTurnInOf, pasture, 0, float64(end))
	}
	return units.Answer(&formulaTurnInOf, inches(row.height.turnIn).At(end), 0, float64(end))
}

// LeaveOf gives one end of the height to be left on a row.
//
// Table: mean ruler height at turn-out, by row
//
// Where:
//   - pasture: as in Pastures
//   - end: of the printed span
//
// Errors: a *units.ParseError that lists the rows
//
// Note: common practice, without a source that we could find, never leaves
// less than 3 in and rather 4 to 6: more than most of the printed figures.
//
// Source: UMAINE-STICK, UGA-HEIGHTS, WSU-HEIGHTS, LULING-STICK, SRUC-SHEEPNET
func LeaveOf(pasture string, end units.End) (units.Height, error) {
	row := pastureRowOf(pasture)
	if row == nil {
		return noPasture[units.Height](&formulaLeaveOf, pasture, 0, float64(end))
	}
	return units.Answer(&formulaLeaveOf, inches(row.height.leave).At(end), 0, float64(end))
}

// YieldOf gives the dry matter that a row grows in a year.
//
// Table: yield by row and class of productivity
//
// Where:
//   - pasture: as in Pastures
//   - of: which class of productivity
//
// Errors: a *units.ParseError that lists the rows
//
// Source: PSU-MONTHS
func YieldOf(pasture string, of Productivity) (units.Yield, error) {
	row := pastureRowOf(pasture)
	if row == nil {
		return noPasture[units.Yield](&formulaYieldOf, pasture, 0, float64(of))
	}
	yield, _ := row.pasture().Yield(of) // the guard refuses what is no class
	return units.Answer(&formulaYieldOf, yield, 0, float64(of))
}

// ShareOf gives the share of the year's yield that a row grows in a month.
//
// Table: shares by row and month; they are solved from the printed acres for an
// animal unit a month, each month alone, so that a row sums to 97 to 102.7 % and
// not to 100
//
// Where:
//   - pasture: as in Pastures
//   - month: January is 1; 1 to 12
//
// Errors: a *units.ParseError that lists the rows
//
// Source: PSU-MONTHS
func ShareOf(pasture string, month time.Month) (units.Fraction, error) {
	row := pastureRowOf(pasture)
	if row == nil {
		return noPasture[units.Fraction](&formulaShareOf, pasture, 0, float64(month))
	}
	return units.Answer(&formulaShareOf, ofMonth(&row.growth.shares, month)*units.Percent, 0, float64(month))
}

// pasture joins the tables into one row.
func (r *pastureRow) pasture() Pasture {
	p := Pasture{
		Name:          r.name,
		DensitySource: r.density.source, DensityMark: r.density.mark,
		TurnIn: inches(r.height.turnIn), Leave: inches(r.height.leave),
		HeightSource: r.height.source, HeightMark: r.height.mark,
		Ceiling:  r.ceiling * units.HeightInch,
		YieldLow: r.growth.low, YieldMedium: r.growth.medium, YieldHigh: r.growth.high,
		GrowthSource: r.growth.source, GrowthMark: r.growth.mark,
		KeyMonths:       slices.Clone(r.rain.months),
		KeyMonthsSource: r.rain.source, KeyMonthsMark: r.rain.mark,
		HoldsLegume: r.legume, MayBloat: r.legume, Endophyte: r.endophyte, DangerSource: r.danger,
		Note: r.note,
	}
	p.Fair, p.Good, p.Excellent = perInch(r.density.fair), perInch(r.density.good), perInch(r.density.excellent)
	for i, share := range r.growth.shares {
		p.Shares[i] = share * units.Percent
	}
	return p
}

func inches(of [2]units.Height) units.Span[units.Height] {
	return units.Span[units.Height]{Low: of[0] * units.HeightInch, High: of[1] * units.HeightInch}
}

func perInch(of [2]units.Density) units.Span[units.Density] {
	return units.Span[units.Density]{Low: of[0] * units.PoundPerAcreInch, High: of[1] * units.PoundPerAcreInch}
}
