package rainfall

import (
	"fmt"
	"math"
	"slices"
	"time"

	"example.org/soum/units"
)

// DailyWeather is the weather of a day. What was not measured is not a number.
type DailyWeather struct {
	// Date is the day.
	Date units.Date `json:"date"`
	// Rain is what fell.
	Rain units.RainDepth `json:"rain"`
	// High is the highest temperature.
	High units.Temperature `json:"high"`
	// Low is the lowest temperature.
	Low units.Temperature `json:"low"`
}

// mean is the mean of the day: half way between its ends.
func (d *DailyWeather) mean() float64 { return (float64(d.High) + float64(d.Low)) / 2 }

// DegreeDayForm is how a day's warmth is counted.
type DegreeDayForm int

// The forms.
const (
	WarmthMean DegreeDayForm = iota + 1 // the mean of the day over the base
	WarmthCorn                          // the ends of the day first brought within the base and 86 °F
)

// cornHottest is where corn stops growing faster, 86 °F, from memory.
const cornHottest = 30.0

// DegreeDays returns the warmth of a day over a base, which growth goes by.
//
// Method: mean: (high + low) / 2 less the base, never below 0. Corn: the same with
// high and low first raised to the base where they are under it, and lowered to 86 °F
// where they are over
//
// Where:
//   - form: of the two
//   - high in °C: highest temperature of the day; low to 100
//   - low in °C: lowest temperature of the day; -100 to 100
//   - base in °C: under which nothing grows; -30 to 30
//
// Note: bases in print are 0, 6 and 10 °C; cool-season grasses about stop at 6 °C,
// warm-season ones at 10 °C (GREENCAST-DEGREES). On the northern Plains 32 °F and 40
// °F are used. Corn has the base of 50 °F; its limit of 86 °F is from memory.
//
// Source: GREENCAST-DEGREES mean; CAPJOURNAL-DEGREES corn
func DegreeDays(form DegreeDayForm, high, low, base units.Temperature) (units.DegreeDays, error) {
	sum := warmth(form, float64(high), float64(low), float64(base))
	return units.Answer(&formulaDegreeDays, units.DegreeDays(sum), float64(form), float64(high), float64(low), float64(base))
}

func warmth(form DegreeDayForm, high, low, base float64) float64 {
	if form == WarmthCorn {
		high, low = min(max(high, base), cornHottest), min(max(low, base), cornHottest)
	}
	return max(0, (high+low)/2-base)
}

// DegreeDaySum gives the warmth of the days from one to another, both counted.
//
// Errors: a day of the span that the record lacks, has twice or knows no temperature
// of; a form or base that DegreeDays refuses; a span that ends before it begins
//
// Check: TestSeattle, TestSeasonRefuses
//
// Source: GREENCAST-DEGREES
func DegreeDaySum(record []DailyWeather, form DegreeDayForm, base units.Temperature, first, last units.Date) (units.DegreeDays, error) {
	days, err := stretch("rainfall.DegreeDaySum", record, first, last)
	if err != nil {
		return units.DegreeDays(math.NaN()), err
	}
	sum := units.DegreeDays(0)
	for i := range days {
		day, err := DegreeDays(form, days[i].High, days[i].Low, base)
		if err != nil {
			return units.DegreeDays(math.NaN()), fmt.Errorf("%v: %w", days[i].Date, err)
		}
		sum += day
	}
	return sum, nil
}

// DegreeDayDate gives the day on which the warmth since another day first reaches a
// target, such as the sum of 200 °C days from 1 January over a base of 0 °C at which
// grass is given its first nitrogen (DegreeDayTarget).
//
// Errors: as DegreeDaySum, up to that day; a target that is not above 0; a record
// that ends before the target is reached
//
// Check: TestSeattle, TestSeasonRefuses
//
// Source: EUROFINS-TSUM
func DegreeDayDate(record []DailyWeather, form DegreeDayForm, base units.Temperature, first units.Date, target units.DegreeDays) (units.Date, error) {
	const function = "rainfall.DegreeDayDate"
	if !(target > 0) {
		return 0, fmt.Errorf("%s: the target is %v, must be above 0 °C day", function, target)
	}
	days := inOrder(record)
	sum := units.DegreeDays(0)
	for at := first; ; at = at.Add(1) {
		day, err := onDay(function, days, at)
		if err != nil {
			if len(days) > 0 && at > days[len(days)-1].Date && at > first {
				return 0, fmt.Errorf("%s: the record ends on %v with %s of the %s", function, at.Add(-1), sum.In(units.Metric), target.In(units.Metric))
			}
			return 0, err
		}
		one, err := DegreeDays(form, day.High, day.Low, base)
		if err != nil {
			return 0, fmt.Errorf("%v: %w", at, err)
		}
		if sum += one; sum >= target {
			return at, nil
		}
	}
}

// TargetRow is a row of the printed sums of warmth.
type TargetRow struct {
	// Rule names what the sum tells, lower case with hyphens.
	Rule string `json:"rule"`
	// Base is what warmth is counted over.
	Base units.Temperature `json:"base"`
	// Sum is the printed span of the sum.
	Sum units.Span[units.DegreeDays] `json:"sum"`
	// Begins tells in words when the count begins.
	Begins string `json:"begins"`
	// Source is a key of SOURCES.md with the place.
	Source string `json:"source"`
	// Mark is how the figure was come by.
	Mark string `json:"mark"`
}

// TargetRows gives the printed sums of warmth, as a copy.
//
// Check: TestTargetRows
//
// Source: ours: a collection, each figure with the source and mark on its row
func TargetRows() []TargetRow { return slices.Clone(targetRows) }

// DegreeDayTarget gives the sum of warmth at which something is to be done. The
// sources differ: the first nitrogen at 200 by one, 180 to 250 and more by another.
// Grazing too early has cost up to 60 % of the year's forage (NDSU-TOO-EARLY).
//
// Errors: a *units.ParseError that lists the rules
//
// Source: EUROFINS-TSUM, BRITAIN-T200, OREGON-T200, NDSU-READINESS, as the row says
func DegreeDayTarget(rule string, end units.End) (units.DegreeDays, error) {
	var rules []string
	for i := range targetRows {
		if targetRows[i].Rule == rule {
			return targetRows[i].Sum.At(end), nil
		}
		rules = append(rules, targetRows[i].Rule)
	}
	return units.DegreeDays(math.NaN()), noTableRow("rainfall.TargetRow", rule, "no such sum of warmth", rules)
}

// GrowingSeason is a season by the temperature.
type GrowingSeason struct {
	// Start is the first of the days in a row that are warm.
	Start units.Date `json:"start"`
	// End is the first of the days in a row that are cold, or the day after the span
	// where no such days came.
	End units.Date `json:"end"`
	// Ended tells that they came.
	Ended bool `json:"ended"`
	// Length is the days from start to end.
	Length units.Days `json:"length_days"`
}

// SeasonByWarmth gives the growing season: it starts with the first run of so many
// days whose means are all over a limit, and ends where the first run of as many
// days, all under the limit, begins; the end is looked for from the turn of the
// year's warmth on, a day that the user names (1 July in the north), since a cold
// week in March ends no season. Print has five days and 5 °C; a text for gardeners
// has 6 °C (GROWING-SIX).
//
// In Britain the season was 244 days in 1861 to 1890 and 280 in 2006 to 2015; 181 in
// 1782, 330 in 2000 (DEFRA-SEASON; MET-OFFICE-SEASON).
//
// Errors: a day from the first to the last of the span that the record lacks, has
// twice or knows no temperature of; a turn outside the span; a run of fewer days
// than one; a limit that is not a number; a span in which it never starts
//
// Check: TestSeattle, TestSeasonByWarmth, TestSeasonRefuses
//
// Source: DEFRA-SEASON
func SeasonByWarmth(record []DailyWeather, limit units.Temperature, run int, first, turn, last units.Date) (GrowingSeason, error) {
	const function = "rainfall.SeasonByWarmth"
	days, err := stretch(function, record, first, last)
	switch {
	case err != nil:
		return GrowingSeason{}, err
	case turn < first || turn > last:
		return GrowingSeason{}, fmt.Errorf("%s: the turn %v is outside %v to %v", function, turn, first, last)
	case run < 1 || limit-limit != 0:
		return GrowingSeason{}, fmt.Errorf("%s: %d days in a row at %v, must be 1 day or more and a temperature", function, run, limit)
	}
	start := firstRun(days, run, func(mean float64) bool { return mean > float64(limit) })
	if start < 0 {
		return GrowingSeason{}, fmt.Errorf("%s: no %d days in a row over %v in %v to %v", function, run, limit, first, last)
	}
	later := max(int(turn-first), start)
	end := firstRun(days[later:], run, func(mean float64) bool { return mean < float64(limit) })
	s := GrowingSeason{Start: days[start].Date, End: last.Add(1)}
	if end >= 0 {
		s.End, s.Ended = days[later+end].Date, true
	}
	s.Length = s.End.Sub(s.Start)
	return s, nil
}

// firstRun gives where so many days in a row begin whose means are all as wanted,
// -1 where nowhere.
func firstRun(days []DailyWeather, run int, wanted func(float64) bool) int {
	held := 0
	for i := range days {
		if !wanted(days[i].mean()) {
			held = 0
		} else if held++; held == run {
			return i + 1 - run
		}
	}
	return -1
}

// Cold is a word for a cold night.
type Cold int

// The words, the milder first.
const (
	ColdNone       Cold = iota + 1 // over 36 °F
	ColdFrost                      // 36 °F or less
	ColdFreeze                     // 32 °F or less
	ColdHardFreeze                 // 28 °F or less
)

var coldGuard = units.Formula{
	Name: "rainfall.ColdOf", Source: "NWS-FROST",
	Arguments: []units.Argument{{Name: "low", Quantity: "Temperature", Unit: "°C", Factor: 1, Domain: units.Limits{Low: math.Inf(-1), LowOf: -1, High: math.Inf(1), HighOf: -1}}},
}

// ColdOf gives the US word for a night by its lowest temperature. After a frost some
// plants are a danger to stock: sorghums above all hold prussic acid.
//
// Errors: a domain error where the temperature is not a number
//
// Source: NWS-FROST
func ColdOf(low units.Temperature) (Cold, error) {
	if _, err := units.Answer(&coldGuard, float64(low), float64(low)); err != nil {
		return 0, err
	}
	cold := ColdNone
	for _, step := range coldSteps {
		if low <= step.from {
			cold = step.cold
		}
	}
	return cold, nil
}

// FrostYear is the frosts around one summer.
type FrostYear struct {
	// Turn is the first day of the summer month that parts spring from autumn.
	Turn units.Date `json:"turn"`
	// LastSpring is the last day of frost in the half year before the turn.
	LastSpring units.Date `json:"last_spring"`
	// Spring tells that there was one.
	Spring bool `json:"spring"`
	// FirstAutumn is the first day of frost in the half year from the turn on.
	FirstAutumn units.Date `json:"first_autumn"`
	// Autumn tells that there was one.
	Autumn bool `json:"autumn"`
}

// FrostYears gives the last frost of spring and the first of autumn of each summer
// in the record whose half years before and after are known to the day. The summer
// month parts them: 7 in the north, 1 in the south.
//
// Errors: a month that is none of 1 to 12; a limit that is not a number; a day that
// stands twice; a record in which no such year is whole
//
// Check: TestSeattle, TestFrostYears, TestSeasonRefuses
//
// Source: definition: a frost is a lowest temperature at or under the limit
func FrostYears(record []DailyWeather, limit units.Temperature, summer int) ([]FrostYear, error) {
	const function = "rainfall.FrostYears"
	if summer < 1 || summer > 12 || limit-limit != 0 {
		return nil, fmt.Errorf("%s: month %d at %v, must be 1 to 12 and a temperature", function, summer, limit)
	}
	days := inOrder(record)
	for i := 1; i < len(days); i++ {
		if days[i].Date == days[i-1].Date {
			return nil, fmt.Errorf("%s: %v stands twice", function, days[i].Date)
		}
	}
	if len(days) == 0 {
		return nil, fmt.Errorf("%s: the record is empty", function)
	}
	var years []FrostYear
	for year := days[0].Date.Year(); year <= days[len(days)-1].Date.Year(); year++ {
		turn, _ := units.NewDate(year, time.Month(summer), 1)
		half := time.Date(year, time.Month(summer-6), 1, 0, 0, 0, 0, time.UTC)
		from, _ := units.NewDate(half.Year(), half.Month(), 1)
		next := time.Date(year, time.Month(summer+6), 1, 0, 0, 0, 0, time.UTC)
		to, _ := units.NewDate(next.Year(), next.Month(), 1)
		whole, err := stretch(function, days, from, to.Add(-1))
		if err == nil {
			years = append(years, frosts(whole, turn, limit))
		}
	}
	if years == nil {
		return nil, fmt.Errorf("%s: no year of the record has every day of half a year before and after the month %d", function, summer)
	}
	return years, nil
}

func frosts(days []DailyWeather, turn units.Date, limit units.Temperature) FrostYear {
	year := FrostYear{Turn: turn}
	for i := range days {
		day := &days[i]
		switch {
		case day.Low > limit:
		case day.Date < turn:
			year.LastSpring, year.Spring = day.Date, true
		case !year.Autumn:
			year.FirstAutumn, year.Autumn = day.Date, true
		}
	}
	return year
}

// FrostSide is a half of the year.
type FrostSide int

// The halves.
const (
	FrostSpring FrostSide = iota + 1 // the chance of frost on a day or after it
	FrostAutumn                      // the chance of frost on a day or before it
)

// FrostOdds gives the share of the years that still had a frost on a day of spring
// or after it, or had one already on a day of autumn or before it. The day is any
// year's: its distance from that year's turn counts.
//
// It counts years and fits nothing: with 30 years a tenth is three of them. A spring
// day of 90 % has such cold after it in nine years of ten (NOAA-FREEZE).
//
// Errors: no years; a side that is none; a day more than half a year from the turn
// of summer that the years have
//
// Check: TestFrostYears, TestSeasonRefuses
//
// Source: definition: years with such a frost over all years
func FrostOdds(years []FrostYear, side FrostSide, date units.Date) (units.Fraction, error) {
	const function = "rainfall.FrostOdds"
	nothing := units.Fraction(math.NaN())
	if len(years) == 0 {
		return nothing, fmt.Errorf("%s: no years", function)
	}
	if side != FrostSpring && side != FrostAutumn {
		return nothing, noTableRow("rainfall.FrostSide", side.String(), "no such half of the year", namesFrostSide[1:])
	}
	turn, _ := units.NewDate(date.Year(), years[0].Turn.Month(), 1)
	if side == FrostSpring && date >= turn {
		turn, _ = units.NewDate(date.Year()+1, years[0].Turn.Month(), 1)
	}
	if side == FrostAutumn && date < turn {
		turn, _ = units.NewDate(date.Year()-1, years[0].Turn.Month(), 1)
	}
	distance := int(date - turn)
	if distance < -halfYear || distance >= halfYear {
		return nothing, fmt.Errorf("%s: %v is more than half a year from the turn of summer, 1 %s", function, date, turn.Month())
	}
	cold := 0
	for i := range years {
		year := &years[i]
		if side == FrostSpring && year.Spring && int(year.LastSpring-year.Turn) >= distance || side == FrostAutumn && year.Autumn && int(year.FirstAutumn-year.Turn) <= distance {
			cold++
		}
	}
	return units.Fraction(float64(cold) / float64(len(years))), nil
}

// halfYear is the longest half of a year, in days.
const halfYear = 184

// FrostDate gives the day of spring on or after which so large a share of the years
// had its last frost, or the day of autumn on or before which so large a share had
// its first, in the year of the turn of summer given. Ranks are m/(n + 1), with a
// straight line between, to the nearest day; print calls 10 % and 90 % early and
// late.
//
// Errors: no years; a year without such a frost, which no date can stand for; a side
// that is none; a chance outside 1/(n + 1) to n/(n + 1), which so few years cannot tell
//
// Check: TestFrostYears, TestSeasonRefuses
//
// Source: MRCC-FREEZE the percentiles; WEIBULL-RANKS the ranks
func FrostDate(years []FrostYear, side FrostSide, chance units.Fraction, turn units.Date) (units.Date, error) {
	const function = "rainfall.FrostDate"
	if side != FrostSpring && side != FrostAutumn {
		return 0, noTableRow("rainfall.FrostSide", side.String(), "no such half of the year", namesFrostSide[1:])
	}
	distances := make([]int, 0, len(years))
	for i := range years {
		year := &years[i]
		at, had := year.FirstAutumn, year.Autumn
		if side == FrostSpring {
			at, had = year.LastSpring, year.Spring
		}
		if !had {
			return 0, fmt.Errorf("%s: the %s of the summer of %v has no frost: FrostOdds counts such years", function, side, year.Turn)
		}
		distances = append(distances, int(at-year.Turn))
	}
	slices.Sort(distances)
	n := len(distances)
	if side == FrostSpring { // the chance is of a later day
		chance = 1 - chance
	}
	rank := float64(chance) * float64(n+1)
	if !(rank >= 1-1e-9 && rank <= float64(n)+1e-9) {
		return 0, fmt.Errorf("%s: %d years tell of chances from 1/%d to %d/%d alone", function, n, n+1, n, n+1)
	}
	below := min(max(int(math.Floor(rank+1e-9)), 1), n)
	above := min(below+1, n)
	part := max(0, rank-float64(below))
	distance := float64(distances[below-1]) + part*float64(distances[above-1]-distances[below-1])
	return turn.Add(int(math.Round(distance))), nil
}

// inOrder gives the record in the order of its days, a copy where it is not.
func inOrder(record []DailyWeather) []DailyWeather {
	order := func(a, b DailyWeather) int { return int(a.Date) - int(b.Date) }
	if slices.IsSortedFunc(record, order) {
		return record
	}
	sorted := slices.Clone(record)
	slices.SortStableFunc(sorted, order)
	return sorted
}

// onDay finds a day whose temperatures are known.
func onDay(function string, days []DailyWeather, at units.Date) (*DailyWeather, error) {
	i, found := slices.BinarySearchFunc(days, at, func(d DailyWeather, at units.Date) int { return int(d.Date) - int(at) })
	if !found {
		return nil, fmt.Errorf("%s: the record lacks %v", function, at)
	}
	return &days[i], known(function, days, i)
}

func known(function string, days []DailyWeather, i int) error {
	day := &days[i]
	if i+1 < len(days) && days[i+1].Date == day.Date {
		return fmt.Errorf("%s: %v stands twice", function, day.Date)
	}
	if day.High-day.High != 0 || day.Low-day.Low != 0 || day.Low > day.High {
		return fmt.Errorf("%s: %v has the temperatures %v and %v", function, day.Date, day.Low, day.High)
	}
	return nil
}

// stretch gives the days from one to another, each known and there once.
func stretch(function string, record []DailyWeather, first, last units.Date) ([]DailyWeather, error) {
	if last < first {
		return nil, fmt.Errorf("%s: %v to %v ends before it begins", function, first, last)
	}
	days := inOrder(record)
	begin, _ := slices.BinarySearchFunc(days, first, func(d DailyWeather, at units.Date) int { return int(d.Date) - int(at) })
	at := first
	for i := begin; i < len(days) && days[i].Date <= last; i++ {
		if days[i].Date > at {
			break
		}
		if err := known(function, days, i); err != nil {
			return nil, err
		}
		at = at.Add(1)
	}
	if at <= last {
		return nil, fmt.Errorf("%s: the record lacks %v", function, at)
	}
	return days[begin : begin+int(last-first)+1], nil
}
