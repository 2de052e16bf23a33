package grazing

import (
	"math"
	"time"

	"example.org/soum/units"
)

// GrazeableMass returns the dry matter that can be grazed in a period, what
// stands above the mass to be left and what grows meanwhile. Below nothing it
// is what is missing.
//
// Formula: mass - leave + growth * days
//
// Where:
//   - mass in kg/ha: dry matter standing at the start; >= 0
//   - leave in kg/ha: dry matter to be left at the end; >= 0
//   - growth in kg/ha/day: growth expected, below nothing where more dies than grows; any
//   - days in days: length of the period; >= 0
//
// Note: the mass to be left is the animals' safety as much as the grass's: the
// source keeps at least 1,500 kg green dry matter a hectare before ewes with
// twins. Ask an adviser for your stock.
//
// Source: AWI-MLA-8-4 worked example; MISSOURI-ENTRY available above a residual
func GrazeableMass(mass, leave units.Yield, growth units.Growth, days units.Days) (units.Yield, error) {
	grazeable := units.Yield(float64(mass) - float64(leave) + float64(float64(growth)*float64(days)))
	return units.Answer(&formulaGrazeableMass, grazeable, float64(mass), float64(leave), float64(growth), float64(days))
}

// HeadNeed returns the dry matter to set aside for one animal through a
// period.
//
// Formula: intake * days * (1 + spoilage)
//
// Where:
//   - intake in kg/day: dry matter the animal eats in a day; >= 0
//   - days in days: length of the period; >= 0
//   - spoilage in %: trampled and fouled, as a share of what is eaten; 0 to 100
//
// Note: the spoilage is added to what is eaten. Where a sheet gives waste as a
// share of what is offered, divide by one less the waste instead: 15 % one way
// is 13 % the other.
//
// Source: AWI-MLA-8-4 worked example; OSU-PSS-2871 animal-unit month and year; ALABAMA-STOCKPILE hay for a winter
func HeadNeed(intake units.Demand, days units.Days, spoilage units.Fraction) (units.DryMatter, error) {
	need := units.DryMatter(float64(intake) * float64(days) * (1 + float64(spoilage)))
	return units.Answer(&formulaHeadNeed, need, float64(intake), float64(days), float64(spoilage))
}

// HeadPerLand returns the animals that each unit of land feeds through a
// period, exact and not rounded: round down.
//
// Formula: grazeable / need
//
// Where:
//   - grazeable in kg/ha: dry matter that can be grazed, as of GrazeableMass; >= 0
//   - need in kg: dry matter set aside for one animal, as of HeadNeed; > 0
//
// Source: AWI-MLA-8-4 worked example
func HeadPerLand(grazeable units.Yield, need units.DryMatter) (units.HeadRate, error) {
	rate := units.HeadRate(float64(grazeable) / float64(need))
	return units.Answer(&formulaHeadPerLand, rate, float64(grazeable), float64(need))
}

// GrowthLessNeed returns what grows beyond what is eaten, per area and day;
// below nothing, what the stand loses.
//
// Formula: growth - demand / area
//
// Where:
//   - growth in lb/ac/day: growth of the whole area; any
//   - demand in lb/day: dry matter the herd eats in a day; >= 0
//   - area in ac: all the land the herd lives off; > 0
//
// Source: OHIO-2012 worked example
func GrowthLessNeed(growth units.Growth, demand units.Demand, area units.Area) (units.Growth, error) {
	surplus := units.Growth(float64(growth) - float64(demand)/float64(area))
	return units.Answer(&formulaGrowthLessNeed, surplus, float64(growth), float64(demand), float64(area))
}

// CoverAfter returns the average cover of a farm after some days of growth
// and grazing. Below nothing, the grass ran out before.
//
// Formula: cover + (growth - demand / area) * days
//
// Where:
//   - cover in kg/ha: average dry matter standing over the whole farm; >= 0
//   - growth in kg/ha/day: average growth; any
//   - demand in kg/day: dry matter the herd eats in a day, bought feed taken off; >= 0
//   - area in ha: all the land; > 0
//   - days in days: how far to look ahead; >= 0
//
// Note: growth is held the same for all the days: look ahead by weeks, not by
// seasons.
//
// Source: definition: what was there, what grew, what was eaten; AWI-MLA-8-4 is its case without stock
func CoverAfter(cover units.Yield, growth units.Growth, demand units.Demand, area units.Area, days units.Days) (units.Yield, error) {
	after := units.Yield(float64(cover) + float64((float64(growth)-float64(demand)/float64(area))*float64(days)))
	return units.Answer(&formulaCoverAfter, after, float64(cover), float64(growth), float64(demand), float64(area), float64(days))
}

// BalanceCover returns the average cover a farm needs on the day when growth
// catches up with demand: paddocks stand evenly from just grazed to ready, so
// that half of a round's feed stands above the residual.
//
// Formula: rate * intake * round * 0.5 + residual
//
// Where:
//   - rate in head/ha: animals per area of the whole farm; >= 0
//   - intake in kg/day: dry matter one animal takes from pasture in a day; >= 0
//   - round in days: length of the round on that day; >= 0
//   - residual in kg/ha: dry matter left behind; >= 0
//
// Source: SIDDC-COVER worked example
func BalanceCover(rate units.HeadRate, intake units.Demand, round units.Days, residual units.Yield) (units.Yield, error) {
	cover := units.Yield(float64(rate)*float64(intake)*float64(round)*0.5 + float64(residual))
	return units.Answer(&formulaBalanceCover, cover, float64(rate), float64(intake), float64(round), float64(residual))
}

// GrazingDays returns how long grass lasts above the mass to be left while it
// grows and is eaten.
//
// Formula: (mass - leave) / (eaten - growth)
//
// Where:
//   - mass in kg/ha: dry matter standing now, average of the land; >= leave
//   - leave in kg/ha: dry matter to be left; >= 0
//   - eaten in kg/ha/day: what the herd eats in a day, spread over the land; > growth
//   - growth in kg/ha/day: average growth, below nothing where more dies than grows; any
//
// Note: where growth keeps up with what is eaten the grass never runs out, and the
// argument eaten is refused. Look ahead by weeks: growth changes. Start a budget by
// the month when demand passes growth in autumn, by the week when feed is tight
// [NZ-BUDGETS].
//
// Source: PASTURE-NETWORKS; AWI-MLA-8-4 the growth, solved for the days
func GrazingDays(mass, leave units.Yield, eaten, growth units.Growth) (units.Days, error) {
	days := units.Days((float64(mass) - float64(leave)) / (float64(eaten) - float64(growth)))
	return units.Answer(&formulaGrazingDays, days, float64(mass), float64(leave), float64(eaten), float64(growth))
}

// WinterFeed returns the stored feed a herd takes through the days without
// grazing, with what is wasted and what is kept in reserve.
//
// Formula: demand * days * (1 + reserve) / (1 - waste)
//
// Where:
//   - demand in lb/day: dry matter the whole herd eats in a day; >= 0
//   - days in days: how long it is fed; >= 0
//   - reserve in %: kept beyond that, as a share of what is eaten; >= 0
//   - waste in %: lost between store and mouth, as a share of what is stored; >= 0 and < 100
//
// Note: feed as it lies is more: herd.AsFed. How much reserve is the farmer's
// risk: a fifth to a half of a winter is common practice. New Zealand reckons 80 to
// 120 days of winter from north to south [NZ-DEER-BUDGET].
//
// Source: OHIO-HAY-2010 180 and 90 days of hay; ours: reserve and waste
func WinterFeed(demand units.Demand, days units.Days, reserve, waste units.Fraction) (units.DryMatter, error) {
	feed := units.DryMatter(float64(demand) * float64(days) * (1 + float64(reserve)) / (1 - float64(waste)))
	return units.Answer(&formulaWinterFeed, feed, float64(demand), float64(days), float64(reserve), float64(waste))
}

// HeadToSell returns the share of the herd that must go for the grass and the
// store to last, or be fed from elsewhere.
//
// Formula: max(0, 1 - (supply / need))
//
// Where:
//   - supply in kg: grass that can be eaten and stored feed, to the end of the season; >= 0
//   - need in kg: what the whole herd eats until then; > 0
//
// Note: the share holds if they go today. Each day of waiting raises it: see
// ShortOfFeed for the day. In print the other ways are a longer rest with more
// paddocks or feed, and where paddocks run ahead to drop some out for hay [MLA-REST].
//
// Source: definition: supply over need
func HeadToSell(supply, need units.DryMatter) (units.Fraction, error) {
	share := units.Fraction(math.Max(0, 1-float64(supply)/float64(need)))
	return units.Answer(&formulaHeadToSell, share, float64(supply), float64(need))
}

// FeedAction is what to do about grass.
type FeedAction int

// What to do about grass.
const (
	FeedEnough FeedAction = iota + 1 // it lasts to the end of the season
	FeedLong                         // more than lasts: drop paddocks out for hay, or bring stock in
	FeedWatch                        // short, and time is left to decide
	FeedDecide                       // short, and today is the last day, or it is past
)

// Shortage is what ShortOfFeed tells.
type Shortage struct {
	// Action is what to do.
	Action FeedAction `json:"action"`
	// Out is the day on which the grass is down to what is to be left; the last day
	// of the season where it lasts.
	Out units.Date `json:"out"`
	// Decide is the last day on which a decision still takes effect before Out.
	Decide units.Date `json:"decide"`
	// Short is the time for which feed is missing.
	Short units.Days `json:"short_days"`
	// Missing is the feed that is missing in that time, per area.
	Missing units.Yield `json:"missing_kg_m2"`
	// Spare is what stands above what is to be left on the last day, per area.
	Spare units.Yield `json:"spare_kg_m2"`
}

// GrassToday is the state of the grass that ShortOfFeed starts from.
type GrassToday struct {
	// Today is the day of the measurement.
	Today units.Date `json:"today"`
	// End is the last day for which the grass is to last.
	End units.Date `json:"end"`
	// Mass is the dry matter standing now, average of the land.
	Mass units.Yield `json:"mass_kg_m2"`
	// Leave is the dry matter to be left.
	Leave units.Yield `json:"leave_kg_m2"`
	// Growth is the average growth expected until the end.
	Growth units.Growth `json:"growth_kg_m2_day"`
	// Eaten is what the herd eats in a day, spread over the land.
	Eaten units.Growth `json:"eaten_kg_m2_day"`
	// Lead is the time that a decision takes: to sell stock, to find and haul hay.
	Lead units.Days `json:"lead_days"`
}

var grassGuard = units.Formula{
	Name: "grazing.ShortOfFeed", Source: "PASTURE-NETWORKS",
	Arguments: []units.Argument{
		{Name: "mass", Unit: "kg/ha", Factor: float64(units.KilogramPerHectare), Domain: units.AtLeast(0)},
		{Name: "leave", Unit: "kg/ha", Factor: float64(units.KilogramPerHectare), Domain: units.AtLeast(0)},
		{Name: "growth", Unit: "kg/ha/day", Factor: float64(units.KilogramPerHectareDay), Domain: units.Limits{Low: -inf, High: inf, LowOf: -1, HighOf: -1}},
		{Name: "eaten", Unit: "kg/ha/day", Factor: float64(units.KilogramPerHectareDay), Domain: units.AtLeast(0)},
		{Name: "lead", Unit: "days", Factor: 1, Domain: units.Between(0, longestLook, "")},
		{Name: "end", Unit: "days", Factor: 1, Domain: units.Between(0, longestLook, "")},
	},
}

// longestLook bounds how far ahead a budget of one growth rate may look, days.
const longestLook = 366

// longRound is the share of what is eaten to the end that must be to spare before
// the grass counts as long; practice, ours.
const longRound = 0.25

// ShortOfFeed tells whether grass lasts to a day, and where it does not, when it
// runs out and the last day on which something can still be done about it.
//
// Method: GrazingDays from today; short where they end before the last day; the day
// to decide is as many days earlier as a decision takes, whole days; long where on
// the last day a quarter of what was eaten until then stands to spare
//
// What to do when short, from the mildest: rest longer by feeding hay now while it
// is cheap, take out the animals that need least or earn least, wean, sell.
// When long: drop paddocks out of the round for hay [MLA-REST]. The quarter that
// counts as long is ours. Hungry stock break out and eat poisonous plants: where
// condition falls ask a vet or an adviser.
//
// Errors: *units.DomainError names the first field that is impossible
//
// Check: TestShortOfFeedByHand, TestShortOfFeedRefuses, TestShortOfFeedAgreesWithCover
//
// Source: PASTURE-NETWORKS grazing days; ours: the day to decide and what counts as long
func ShortOfFeed(grass GrassToday) (Shortage, error) {
	season := float64(grass.End - grass.Today)
	above := float64(grass.Mass) - float64(grass.Leave)
	loss := float64(grass.Eaten) - float64(grass.Growth)
	left, err := units.Answer(&grassGuard, above-loss*season, float64(grass.Mass), float64(grass.Leave), float64(grass.Growth), float64(grass.Eaten), float64(grass.Lead), season)
	if err != nil {
		return Shortage{}, err
	}
	answer := Shortage{Action: FeedEnough, Out: grass.End, Decide: grass.End, Spare: units.Yield(math.Max(0, left))}
	switch {
	case left >= 0 && above >= 0:
		if grass.Eaten > 0 && left > longRound*float64(grass.Eaten)*season {
			answer.Action = FeedLong
		}
		return answer, nil
	case left >= 0: // thin today, and grown out of it by the end
		answer.Short = units.Days(math.Min(season, above/loss))
		answer.Out, answer.Missing = grass.Today, units.Yield(-above)
	default:
		lasts := 0.0
		if above > 0 {
			lasts = math.Floor(above/loss + almost)
		}
		answer.Short = units.Days(season - lasts)
		answer.Out, answer.Missing = grass.Today+units.Date(lasts), units.Yield(-left)
	}
	answer.Decide = answer.Out - units.Date(math.Ceil(float64(grass.Lead)))
	answer.Action = FeedWatch
	if answer.Decide <= grass.Today {
		answer.Action = FeedDecide
	}
	return answer, nil
}

// BudgetMonth is one month of a feed budget.
type BudgetMonth struct {
	Month      time.Month      `json:"month"`         // 1 is January
	Supply     units.DryMatter `json:"supply_kg"`     // grown in the month and eatable
	Need       units.DryMatter `json:"need_kg"`       // wanted by the animals in the month
	Difference units.DryMatter `json:"difference_kg"` // supply less need, below nothing where feed is short
}

// monthGuard and yearGuard are the limits of MonthBalance, which takes tables
// and so has no limits written by the generator.
var (
	yearGuard = units.Formula{
		Name: "grazing.MonthBalance", Source: monthSource,
		Arguments: []units.Argument{
			{Name: "annual", Unit: "kg/ha", Factor: float64(units.KilogramPerHectare), Domain: units.AtLeast(0)},
			{Name: "area", Unit: "ha", Factor: float64(units.Hectare), Domain: units.AtLeast(0)},
			{Name: "use", Unit: "%", Factor: float64(units.Percent), Domain: units.Between(0, 1, "")},
			{Name: "year", Factor: 1, Domain: units.Between(1, 9999, "")},
			{Name: "sum of shares", Unit: "%", Factor: float64(units.Percent), Domain: units.Between(0.9, 1.1, "")},
		},
	}
	monthGuard = units.Formula{
		Name: "grazing.MonthBalance", Source: monthSource,
		Arguments: []units.Argument{
			{Name: "shares", Unit: "%", Factor: float64(units.Percent), Domain: units.Between(0, 1, "")},
			{Name: "demand", Unit: "kg/day", Factor: float64(units.KilogramPerDay), Domain: units.AtLeast(0)},
		},
	}
)

const monthSource = "PSU-MONTHS"

// MonthBalance returns supply, need and their difference for the twelve months
// of a year, January first: the textbook budget. Supply is the year's yield ×
// the month's share × the share eaten × the area; need is the demand × the days
// of the month.
//
// Nothing is carried over: what June has too much, August does not get. The
// shares are used as they are, never rescaled, and printed ones rarely add up
// to 100 %; a row outside 90 to 110 % is refused. A grazing season carries grass
// over, loses some and stops regrowing where it is bitten too short: where it
// differs from this budget, follow the season.
//
// Errors: *units.DomainError names the first argument that is impossible.
//
// Check: TestMonthBalanceByHand, TestMonthBalanceRefuses
//
// Source: PSU-MONTHS the sum behind acres per animal unit by month, solved for the feed
func MonthBalance(annual units.Yield, shares [12]units.Fraction, area units.Area, use units.Fraction, demand [12]units.Demand, year int) ([]BudgetMonth, error) {
	sum := 0.0
	for i := range shares {
		if _, err := units.Answer(&monthGuard, 31*float64(demand[i]), float64(shares[i]), float64(demand[i])); err != nil {
			return nil, err
		}
		sum += float64(shares[i])
	}
	eatable, err := units.Answer(&yearGuard, float64(annual)*float64(area)*float64(use), float64(annual), float64(area), float64(use), float64(year), sum)
	if err != nil {
		return nil, err
	}
	months := make([]BudgetMonth, 0, len(shares))
	for i := range shares {
		month := time.Month(i + 1)
		first, _ := units.NewDate(year, month, 1)
		supply := units.DryMatter(eatable * float64(shares[i]))
		need := units.DryMatter(float64(demand[i]) * float64(first.DaysInMonth()))
		months = append(months, BudgetMonth{Month: month, Supply: supply, Need: need, Difference: supply - need})
	}
	return months, nil
}
