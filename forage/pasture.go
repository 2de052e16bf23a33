package forage

import (
	"fmt"
	"slices"
	"strconv"
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
// none for it, the error says so: a neighbour's figure is not put in its place.
func (p Pasture) Density(c Condition) (units.Span[units.Density], error) {
	var span units.Span[units.Density]
	switch c {
	case Fair:
		span = p.Fair
	case Good:
		span = p.Good
	case Excellent:
		span = p.Excellent
	default:
		return span, fmt.Errorf("forage.Pasture.Density: condition %d is none of fair, good, excellent", int(c))
	}
	if !(span.Low > 0 && span.High >= span.Low) {
		return span, fmt.Errorf("forage.Pasture.Density: the row %s has no density for a %s stand: take another condition, or give a density of your own", p.Name, c)
	}
	return span, nil
}

// Yield gives the dry matter grown in a year for a class of productivity.
func (p Pasture) Yield(of Productivity) (units.Yield, error) {
	switch of {
	case ProductivityLow:
		return p.YieldLow, nil
	case ProductivityMedium:
		return p.YieldMedium, nil
	case ProductivityHigh:
		return p.YieldHigh, nil
	}
	return 0, fmt.Errorf("forage.Pasture.Yield: productivity %d is none of low, medium, high", int(of))
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
	for i := range pastureRows {
		if pastureRows[i].name == name {
			return pastureRows[i].pasture(), nil
		}
	}
	names := make([]string, len(pastureRows))
	for i := range pastureRows {
		names[i] = pastureRows[i].name
	}
	return Pasture{}, &units.ParseError{Quantity: "forage.Pasture", Text: name, Problem: "no such row", Accepts: names, Word: true}
}

// DensityOf gives one end of the printed density of a row.
//
// Table: dry matter for each unit of ruler height above the stubble, by row and
// condition of the stand
//
// Source: UMAINE-STICK; NOBLE-PICTURE and NOBLE-DROUGHT for warm-season-grass
func DensityOf(pasture string, condition Condition, end units.End) (units.Density, error) {
	p, err := PastureByName(pasture)
	if err != nil {
		return 0, err
	}
	span, err := p.Density(condition)
	if err != nil {
		return 0, err
	}
	return span.At(end), nil
}

// TurnInOf gives one end of the height at which a row may be grazed.
//
// Table: mean ruler height at turn-in, by row
//
// Source: UMAINE-STICK, UGA-HEIGHTS, WSU-HEIGHTS, LULING-STICK, SRUC-SHEEPNET
func TurnInOf(pasture string, end units.End) (units.Height, error) {
	p, err := PastureByName(pasture)
	return p.TurnIn.At(end), err
}

// LeaveOf gives one end of the height to be left on a row.
//
// Table: mean ruler height at turn-out, by row
//
// Note: common practice, without a source that we could find, never leaves
// less than 3 in and rather 4 to 6: more than most of the printed figures.
//
// Source: UMAINE-STICK, UGA-HEIGHTS, WSU-HEIGHTS, LULING-STICK, SRUC-SHEEPNET
func LeaveOf(pasture string, end units.End) (units.Height, error) {
	p, err := PastureByName(pasture)
	return p.Leave.At(end), err
}

// YieldOf gives the dry matter that a row grows in a year.
//
// Table: yield by row and class of productivity
//
// Source: PSU-MONTHS
func YieldOf(pasture string, of Productivity) (units.Yield, error) {
	p, err := PastureByName(pasture)
	if err != nil {
		return 0, err
	}
	return p.Yield(of)
}

// ShareOf gives the share of the year's yield that a row grows in a month.
//
// Table: shares by row and month; they are solved from the printed acres for an
// animal unit a month, each month alone, so that a row sums to 97 to 102.7 % and
// not to 100
//
// Source: PSU-MONTHS
func ShareOf(pasture string, month time.Month) (units.Fraction, error) {
	p, err := PastureByName(pasture)
	if err != nil {
		return 0, err
	}
	if month < time.January || month > time.December {
		return 0, fmt.Errorf("forage.ShareOf: month %s is none of 1 to 12", strconv.Itoa(int(month)))
	}
	return p.Shares[month-time.January], nil
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
