package farm

import (
	"sync"

	"example.org/soum/herd"
	"example.org/soum/internal/document"
	"example.org/soum/internal/season"
	"example.org/soum/units"
)

// Plan is the season of a farm, day by day, and what comes of it. As JSON its
// quantities are numbers in base units under keys that end in the unit.
type Plan struct {
	Today    units.Date      `json:"today"`             // the document's
	From     units.Date      `json:"from"`              // the season's first day
	To       units.Date      `json:"to"`                // the season's last day
	Verdict  Verdict         `json:"verdict"`           // what it comes to
	Months   []Month         `json:"months"`            // the balance by month
	Births   []ExpectedBirth `json:"births"`            // those of the document
	Changes  []Change        `json:"changes"`           // of head, stage and weight, by date
	UnderWay []Move          `json:"under_way"`         // ground opened before today to which somebody is still to come
	Moves    []Move          `json:"moves"`             // who goes where, in order
	Feeding  []Feeding       `json:"feeding"`           // days fed in place of grass
	Surplus  []Surplus       `json:"surplus"`           // ground that outgrows the mower's mark
	Passes   Passes          `json:"passes"`            // beside the rainfall rule
	Soil     []SoilMonth     `json:"soil"`              // the soil's water by month; empty where no account is kept
	Drought  []DroughtDate   `json:"drought"`           // when to look at the rain gauge; empty where the normals are not known
	Hay      HayNeed         `json:"hay"`               // what it takes of hay
	Water    []Drink         `json:"water"`             // of each group
	Manure   []Manure        `json:"manure"`            // of each group
	Fence    FenceNeed       `json:"fence"`             // what it takes of fence
	Days     []PlanDay       `json:"days"`              // every day, for pictures
	Notes    []Note          `json:"notes"`             // what the reader should know
	Cautions []Caution       `json:"cautions"`          // what can hurt somebody
	Factor   units.Fraction  `json:"own_growth_factor"` // 1 unless the user states one
	Balance  units.DryMatter `json:"balance_kg"`        // start + growth - eaten - trampled - cut - left: rounding only
}

// Month is the balance of a month of the plan.
type Month struct {
	Year     int             `json:"year"`        // the calendar year
	Month    int             `json:"month"`       // 1 to 12
	Days     int             `json:"days"`        // of the month that the plan holds
	Grown    units.DryMatter `json:"grown_kg"`    // on all land
	Wanted   units.DryMatter `json:"wanted_kg"`   // by all groups, of pasture
	Eaten    units.DryMatter `json:"eaten_kg"`    // by all groups
	Trampled units.DryMatter `json:"trampled_kg"` // and so not eaten
	Cut      units.DryMatter `json:"cut_kg"`      // as hay
	Fed      units.DryMatter `json:"fed_kg"`      // in place of pasture, before waste
	Standing units.DryMatter `json:"standing_kg"` // at the month's end
}

// Move is a strip opened, or a paddock entered, and who comes there when. Of ground under
// way only what is still to come is told: visits from today on, and no pass, height or
// density; its date is the latest on which it can have been opened.
type Move struct {
	Date       units.Date         `json:"date"`                // the day it is opened
	Rotation   int                `json:"rotation"`            // its place in the document
	Land       string             `json:"land"`                // the land's id
	Pass       int                `json:"pass"`                // how many times the front has begun on this land
	From       units.Length       `json:"from_m"`              // from the lane's start
	To         units.Length       `json:"to_m"`                // from the lane's start
	Length     units.Length       `json:"length_m"`            // 0 for a paddock grazed whole
	Paces      float64            `json:"paces"`               // 0 where no pace is given
	Rolls      float64            `json:"rolls"`               // netting across the lane; 0 where no roll is given
	Area       units.Area         `json:"area_m2"`             // of the ground opened
	Stay       units.Days         `json:"stay_days"`           // of the leader, with days stayed on in a paddock
	Below      bool               `json:"below"`               // it is below the turn-in height: nothing that had rested stood at it
	Height     units.Height       `json:"height_m"`            // mean, when opened
	Leave      units.Height       `json:"leave_m"`             // to be left by the last group: what the plan expects, where that is above the leave height
	Left       units.Height       `json:"left_m"`              // mean, after the last group; 0 where the plan ends before
	Density    units.StockDensity `json:"stock_density_kg_m2"` // live weight of the groups that lead, on the ground
	Visits     []Visit            `json:"visits"`              // who is there when
	ReadyAgain *units.Date        `json:"ready_again"`         // none where that is after the plan
}

// Visit is a group's time on the ground of a move.
type Visit struct {
	Group string          `json:"group"`           // the group's id
	From  units.Date      `json:"from"`            // its first day
	To    units.Date      `json:"to"`              // its last day
	Eaten units.DryMatter `json:"eaten_kg"`        // in all
	Worms herd.WormReturn `json:"worms,omitempty"` // of sheep and goats: what earlier visits left
}

// Feeding is days in a row on which a group is fed in place of grass.
type Feeding struct {
	Group  string          `json:"group"`     // the group's id
	From   units.Date      `json:"from"`      // its first day
	To     units.Date      `json:"to"`        // its last day
	Wanted units.DryMatter `json:"wanted_kg"` // dry matter, before waste
	Why    FeedReason      `json:"why"`       // the reason
	Counts bool            `json:"counts"`    // against the land: hay on a day on which there should be grass
}

// FeedReason tells why a group is fed in place of grass.
type FeedReason int

// The reasons for feeding.
const (
	FeedLeadIn   FeedReason = iota + 1 // a follower waits for ground that its leaders have grazed
	FeedNoGrass                        // nothing had grown to the least height
	FeedNoRest                         // grass enough, not rested long enough
	FeedNoGrowth                       // nothing grows at this time of the year
	FeedCut                            // a cut took what was kept for a follower
	FeedNoLand                         // the group is in no rotation
	FeedNoStrip                        // what is ready is too short for a strip, or too little for a day
)

// Surplus is ground that outgrows the mower's mark before the front gets there.
type Surplus struct {
	Date units.Date   `json:"date"`   // the day it passes the mark
	Land string       `json:"land"`   // the land's id
	From units.Length `json:"from_m"` // from the lane's start
	To   units.Length `json:"to_m"`   // from the lane's start
}

// Passes holds the passes of the plan beside those of the rainfall rule.
type Passes struct {
	Planned  float64         `json:"planned"`          // area opened over the area in rotation
	Rain     units.RainDepth `json:"rain_m"`           // of a normal year; 0 where not known
	Rule     float64         `json:"rule"`             // by a normal year's rain
	ThisYear units.RainDepth `json:"this_year_m"`      // of the record's months of this year
	Months   int             `json:"this_year_months"` // of this year in the record
}

// HayNeed is the hay of the plan. Pigs and poultry without pasture are fed
// their own ration, which is no hay.
type HayNeed struct {
	Eaten   units.DryMatter `json:"eaten_kg"`   // dry matter that grazers want in place of grass
	Opening units.DryMatter `json:"opening_kg"` // of which on days before there is grass for them, and of groups in no rotation: it does not count against the land
	Carried units.FreshFeed `json:"carried_kg"` // as fed, with waste
	Store   units.FreshFeed `json:"store_kg"`   // the document's
	Made    units.FreshFeed `json:"made_kg"`    // of the plan's cuts, when it is fed
	Short   units.FreshFeed `json:"short_kg"`   // beyond store and cuts
	Days    int             `json:"days"`       // with hay for any group
	Cost    units.Money     `json:"cost"`       // of what is short
	Ration  units.DryMatter `json:"ration_kg"`  // wanted by pigs and poultry in place of pasture
	Winter  *WinterHay      `json:"winter"`     // from the season's end to the next grass; none where it ends later, or the plan was begun after the first grass of this season
}

// WinterHay is the hay until there is grass again, if next year is as this one: what grazers
// want on the season's last day, on every day. It is in none of the other sums.
type WinterHay struct {
	From    units.Date      `json:"from"`       // the day after the season
	To      units.Date      `json:"to"`         // the day before the first grass, a year after that of this season
	Eaten   units.DryMatter `json:"eaten_kg"`   // in place of pasture
	Carried units.FreshFeed `json:"carried_kg"` // as fed, with waste
}

// Drink is the water of a group.
type Drink struct {
	Group string          `json:"group"`       // the group's id
	Known bool            `json:"known"`       // false: no printed figure for this kind of stock
	Low   units.WaterRate `json:"low_m3_day"`  // on that day, the low printed figure
	High  units.WaterRate `json:"high_m3_day"` // on the day it is most
}

// Manure is what a group leaves on the pasture in the season. Where print tells a
// part alone, the rest is in Missing.
type Manure struct {
	Group     string         `json:"group"`        // the group's id
	Known     bool           `json:"known"`        // false: no row in any table
	Mass      units.Mass     `json:"mass_kg"`      // dung and urine
	Nitrogen  units.Mass     `json:"nitrogen_kg"`  // N, as excreted
	Phosphate units.Mass     `json:"phosphate_kg"` // P2O5, as excreted
	Potash    units.Mass     `json:"potash_kg"`    // K2O, as excreted
	Missing   []herd.Excreta `json:"missing"`      // of these four, what print does not tell
	Row       string         `json:"row"`          // the row of the tables that was used
}

// FenceNeed is the fence of the plan.
type FenceNeed struct {
	Sides   units.Length `json:"sides_m"`                  // round lanes and paddocks
	Cross   units.Length `json:"cross_m"`                  // moved across the lanes, for the strips in use at one time
	Strips  int          `json:"strips"`                   // in use at one time
	Rolls   int          `json:"rolls"`                    // of netting for the cross fence; 0 where no roll is given
	Assumed bool         `json:"paddocks_taken_as_square"` // paddocks have an area and no shape

	Energizer units.PulseEnergy `json:"energizer_j"`  // at least, of each pulse, for sides and cross; 0 where the fence is dead
	Rods      units.Length      `json:"ground_rod_m"` // in the earth, all rods together, by the safer rule
}

// PlanDay is a day of the plan, for pictures.
type PlanDay struct {
	Date     units.Date        `json:"date"`                // the day
	Standing units.DryMatter   `json:"standing_kg"`         // on all land at the day's end
	Grown    units.DryMatter   `json:"grown_kg"`            // that day
	Wanted   units.DryMatter   `json:"wanted_kg"`           // of pasture, by all groups
	Fed      units.DryMatter   `json:"fed_kg"`              // in place of pasture
	Counted  units.DryMatter   `json:"counted_kg"`          // of what was fed, the hay that counts against the land
	Lands    []units.DryMatter `json:"standing_by_land_kg"` // in the order of the document
}

// Plan plans a farm's season day by day: who goes where, how long a
// strip, what to leave, when the ground may be grazed again, and what it takes
// of hay, water and fence. It reads no clock: today is the document's. How many
// head the land would carry is asked of Leaders or Carries, since that takes
// many seasons.
//
// Method: the day loop told in DEVELOPERS.md, "The season, rule by rule"
//
// Errors: a *document error with the path in the farm, its value and what is
// allowed; a *units.DomainError where figures are impossible together. A
// *units.RangeError met on the way is a note of the plan.
//
// Note: figures are planning figures. The grass and the animals decide: walk
// the ground before each move, and heed the cautions of the plan.
//
// Check: TestPlanOfHandSeason, TestPlanInvariants, TestTwiceTheFarm
//
// Source: ours: the rules in DEVELOPERS.md, made of the formulas named there
func (f *Farm) Plan() (*Plan, error) {
	if err := f.Check(); err != nil {
		return nil, err
	}
	r, err := settle(f, units.Middle)
	if err != nil {
		return nil, err
	}
	runner := runners.Get().(*season.Runner)
	defer runners.Put(runner)
	return plan(r, runner.Run(&r.input))
}

// runners keep the memory of the day loop, ten times that of a plan, from one plan to the
// next. A plan holds nothing of it.
var runners = sync.Pool{New: func() any { return new(season.Runner) }}

// plan makes the plan of a season that was run, section by section: each takes what it
// needs of those before it.
func plan(r *ready, result *season.Result) (*Plan, error) {
	met := &problems{ranges: r.outside}
	p := &Plan{Today: r.farm.Today, From: r.date(r.first), To: r.farm.Season.To, Factor: 1, Balance: units.DryMatter(result.Balance())}
	if own := r.farm.OwnFactor; own != nil {
		p.Factor = own.Growth
	}
	p.Days = days(r, result)
	p.Months = months(r, result, p.Days)
	p.Births, p.Changes = document.Listed(births(r, met)), document.Listed(changes(r))
	visits := visits(r, result)
	worms := wormed(r, result, visits, met)
	p.UnderWay, p.Moves = moves(r, result, visits, met)
	p.Feeding, p.Surplus = document.Listed(feeding(r, result)), document.Listed(surplus(r, result))
	p.Passes, p.Soil = passes(r, p.Moves, met), document.Listed(soil(r))
	p.Hay, p.Water, p.Manure = hay(r, result), water(r), manure(r, met)
	var err error
	if p.Drought, err = drought(r); err != nil {
		return nil, err
	}
	if p.Fence, err = fence(r.farm); err != nil {
		return nil, err
	}
	p.Drought = document.Listed(p.Drought)
	p.Cautions = document.Listed(cautions(r, p))
	p.Notes = notes(r, result, p, worms)
	p.Verdict = verdict(r, result, p, met)
	p.Notes = document.Listed(append(p.Notes, met.notes()...))
	return p, met.err
}
