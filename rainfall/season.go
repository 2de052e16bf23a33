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
// Errors: a *document.Error with the place for a day of the span that the record lacks,
// has twice or knows no temperature of, and for a span that ends before it begins; a
// *units.DomainError for a base that DegreeDays refuses; a *units.ParseError that lists
// the forms
//
// Check: TestSeattle, TestSeasonRefuses
//
// Source: GREENCAST-DEGREES
func DegreeDaySum(record []DailyWeather, form DegreeDayForm, base units.Temperature, first, last units.Date) (units.DegreeDays, error) {
	nothing := units.DegreeDays(math.NaN())
	if err := checkWarmth("rainfall.DegreeDaySum", form, base); err != nil {
		return nothing, err
	}
	days, err := stretch(record, first, last)
	if err != nil {
		return nothing, err
	}
	sum := units.DegreeDays(0)
	for i := range days {
		day, err := warmthOf(record, &days[i], form, base)
		if err != nil {
			return nothing, err
		}
		sum += day
	}
	return sum, nil
}

// checkWarmth refuses a form or a base that DegreeDays refuses, for functions whose
// second and third arguments they are.
func checkWarmth(function string, form DegreeDayForm, base units.Temperature) error {
	if form < WarmthMean || form > WarmthCorn {
		return noWord(function, "form", 2, "rainfall.DegreeDayForm", form, namesDegreeDayForm[1:])
	}
	a := formulaDegreeDays.Arguments[3]
	if v := float64(base); !(v >= a.Domain.Low && v <= a.Domain.High) {
		return units.OutOfDomain(function, 3, a, v)
	}
	return nil
}

// warmthOf gives the warmth of a day of a record, with the day's place in an error.
func warmthOf(record []DailyWeather, day *DailyWeather, form DegreeDayForm, base units.Temperature) (units.DegreeDays, error) {
	sum, err := DegreeDays(form, day.High, day.Low, base)
	if err != nil {
		return sum, wrong(placeOf(record, day.Date), fmt.Sprintf("%v to %v", day.Low, day.High), "are not the temperatures of a day", "-100 °C to 100 °C, the lower one first")
	}
	return sum, nil
}

// DegreeDayDate gives the day on which the warmth since another day first reaches a
// target, such as the sum of 200 °C days from 1 January over a base of 0 °C at which
// grass is given its first nitrogen (DegreeDayTarget).
//
// Errors: as DegreeDaySum, up to that day; a *units.DomainError for a target that is not
// above 0; a *document.Error for a record that ends before the target is reached
//
// Check: TestSeattle, TestSeasonRefuses
//
// Source: EUROFINS-TSUM
func DegreeDayDate(record []DailyWeather, form DegreeDayForm, base units.Temperature, first units.Date, target units.DegreeDays) (units.Date, error) {
	const function = "rainfall.DegreeDayDate"
	if err := checkWarmth(function, form, base); err != nil {
		return 0, err
	}
	if !(target > 0) || math.IsInf(float64(target), 1) {
		return 0, units.OutOfDomain(function, 5, units.Argument{Name: "target", Unit: "°C day", Factor: float64(units.CelsiusDay), Domain: above(0)}, float64(target))
	}
	days := inOrder(record)
	sum := units.DegreeDays(0)
	for at := first; ; at = at.Add(1) {
		if len(days) > 0 && at > days[len(days)-1].Date && at > first {
			return 0, wrong("record", "", fmt.Sprintf("ends on %v with %s of the %s", at.Add(-1), sum.In(units.Metric), target.In(units.Metric)), "every day until the target is reached")
		}
		day, err := onDay(record, days, at)
		if err != nil {
			return 0, err
		}
		one, err := warmthOf(record, day, form, base)
		if err != nil {
			return 0, err
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
	Base units.Temperature `json:"base_c"`
	// Sum is the printed span of the sum.
	Sum units.Span[units.DegreeDays] `json:"sum_c_days"`
	// Begins tells in words when the count begins.
	Begins string `json:"begins"`
	units.Printed
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
// Errors: a *units.ParseError that lists the rules, or the ends
//
// Source: EUROFINS-TSUM, BRITAIN-T200, OREGON-T200, NDSU-READINESS, as the row says
func DegreeDayTarget(rule string, end units.End) (units.DegreeDays, error) {
	const function = "rainfall.DegreeDayTarget"
	if err := checkEnd(function, 2, end); err != nil {
		return units.DegreeDays(math.NaN()), err
	}
	var rules []string
	for i := range targetRows {
		if targetRows[i].Rule == rule {
			return targetRows[i].Sum.At(end), nil
		}
		rules = append(rules, targetRows[i].Rule)
	}
	return units.DegreeDays(math.NaN()), noRow(function, "rule", 1, "rainfall.TargetRow", rule, "no such sum of warmth", rules)
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
// Errors: a *document.Error with the place for a day from the first to the last of the
// span that the record lacks, has twice or knows no temperature of, a turn outside the
// span, and a span in which it never starts; a *units.DomainError for a run of fewer days
// than one, and a limit that is not a number
//
// Check: TestSeattle, TestSeasonByWarmth, TestSeasonRefuses
//
// Source: DEFRA-SEASON
func SeasonByWarmth(record []DailyWeather, limit units.Temperature, run int, first, turn, last units.Date) (GrowingSeason, error) {
	const function = "rainfall.SeasonByWarmth"
	days, err := stretch(record, first, last)
	switch {
	case err != nil:
		return GrowingSeason{}, err
	case limit-limit != 0:
		return GrowingSeason{}, notLimit(function, limit)
	case run < 1:
		return GrowingSeason{}, units.OutOfDomain(function, 3, units.Argument{Name: "run", Unit: "days", Factor: 1, Domain: units.Between(1, math.Inf(1), "")}, float64(run))
	case turn < first || turn > last:
		return GrowingSeason{}, wrong("turn", turn.String(), "is outside the span", fmt.Sprintf("%v to %v", first, last))
	}
	start := firstRun(days, run, func(mean float64) bool { return mean > float64(limit) })
	if start < 0 {
		return GrowingSeason{}, wrong("record", "", fmt.Sprintf("has no %d days in a row over %v from %v to %v", run, limit, first, last), "a span in which the season starts")
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

// notLimit says of the second argument that it is not a temperature.
func notLimit(function string, limit units.Temperature) error {
	return units.OutOfDomain(function, 2, units.Argument{Name: "limit", Unit: "°C", Factor: 1, Domain: units.Between(math.Inf(-1), math.Inf(1), "")}, float64(limit))
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

// ColdOf gives the US word for a night by its lowest temperature. After a frost some
// plants are a danger to stock: sorghums above all hold prussic acid.
//
// Table: frost at 36 °F or less, freeze at 32 °F, hard freeze at 28 °F
//
// Where:
//   - low in °C: lowest temperature of the night; any
//
// Source: NWS-FROST
func ColdOf(low units.Temperature) (Cold, error) {
	if _, err := units.Answer(&formulaColdOf, float64(low), float64(low)); err != nil {
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
// Errors: a *units.DomainError for a month outside 1 to 12, or a limit that is not a
// number; a *document.Error with the place for a day that is there twice, and a record in
// which no such year is whole
//
// Check: TestSeattle, TestFrostYears, TestSeasonRefuses
//
// Source: definition: a frost is a lowest temperature at or under the limit
func FrostYears(record []DailyWeather, limit units.Temperature, summer int) ([]FrostYear, error) {
	const function = "rainfall.FrostYears"
	if limit-limit != 0 {
		return nil, notLimit(function, limit)
	}
	if summer < 1 || summer > 12 {
		return nil, units.OutOfDomain(function, 3, units.Argument{Name: "summer", Factor: 1, Domain: units.Between(1, 12, "")}, float64(summer))
	}
	days := inOrder(record)
	for i := 1; i < len(days); i++ {
		if days[i].Date == days[i-1].Date {
			return nil, dayTwice(record, days[i].Date)
		}
	}
	if len(days) == 0 {
		return nil, wrong("record", "", "is empty", "the days of a year or more")
	}
	var years []FrostYear
	for i := range days {
		year := days[i].Date.Year()
		if i > 0 && year == days[i-1].Date.Year() { // a year without a day is not whole
			continue
		}
		turn, _ := units.NewDate(year, time.Month(summer), 1)
		half := time.Date(year, time.Month(summer-6), 1, 0, 0, 0, 0, time.UTC)
		from, _ := units.NewDate(half.Year(), half.Month(), 1)
		next := time.Date(year, time.Month(summer+6), 1, 0, 0, 0, 0, time.UTC)
		to, _ := units.NewDate(next.Year(), next.Month(), 1)
		whole, err := stretch(days, from, to.Add(-1))
		if err == nil {
			years = append(years, frosts(whole, turn, limit))
		}
	}
	if years == nil {
		return nil, wrong("record", "", fmt.Sprintf("has no year with every day of the half years before and after the first of month %d", summer), "one such year or more")
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
// Errors: a *document.Error with the place for no years, and a day more than half a year
// from the turn of summer that the years have; a *units.ParseError that lists the sides
//
// Check: TestFrostYears, TestSeasonRefuses
//
// Source: definition: years with such a frost over all years
func FrostOdds(years []FrostYear, side FrostSide, date units.Date) (units.Fraction, error) {
	nothing := units.Fraction(math.NaN())
	if len(years) == 0 {
		return nothing, noYears()
	}
	if side != FrostSpring && side != FrostAutumn {
		return nothing, noSide("rainfall.FrostOdds", side)
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
		return nothing, wrong("date", date.String(), fmt.Sprintf("is more than half a year from the turn of summer, 1 %s", turn.Month()), "a day of the half year before or after it")
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

func noYears() error {
	return wrong("years", "", "is empty", "one year or more, as FrostYears gives them")
}

func noSide(function string, side FrostSide) error {
	return noWord(function, "side", 2, "rainfall.FrostSide", side, namesFrostSide[1:])
}

// halfYear is the longest half of a year, in days.
const halfYear = 184

// FrostDate gives the day of spring on or after which so large a share of the years
// had its last frost, or the day of autumn on or before which so large a share had
// its first, in the year of the turn of summer given. Ranks are m/(n + 1), with a
// straight line between, to the nearest day; print calls 10 % and 90 % early and
// late.
//
// Errors: a *document.Error with the place for no years, and a year without such a
// frost, which no date can stand for; a *units.ParseError that lists the sides; a
// *units.DomainError for a chance outside 1/(n + 1) to n/(n + 1), which so few years
// cannot tell
//
// Check: TestFrostYears, TestSeasonRefuses
//
// Source: MRCC-FREEZE the percentiles; WEIBULL-RANKS the ranks
func FrostDate(years []FrostYear, side FrostSide, chance units.Fraction, turn units.Date) (units.Date, error) {
	const function = "rainfall.FrostDate"
	if len(years) == 0 {
		return 0, noYears()
	}
	if side != FrostSpring && side != FrostAutumn {
		return 0, noSide(function, side)
	}
	distances := make([]int, 0, len(years))
	for i := range years {
		year := &years[i]
		at, had := year.FirstAutumn, year.Autumn
		if side == FrostSpring {
			at, had = year.LastSpring, year.Spring
		}
		if !had {
			return 0, wrong(fmt.Sprintf("years[%d]", i), "", fmt.Sprintf("has no frost in the %s of the summer of %v", side, year.Turn), "years with such a frost: FrostOdds counts the others too")
		}
		distances = append(distances, int(at-year.Turn))
	}
	slices.Sort(distances)
	n := len(distances)
	rank := float64(chance) * float64(n+1)
	if !(rank >= 1-1e-9 && rank <= float64(n)+1e-9) {
		limits := units.Between(1/float64(n+1), float64(n)/float64(n+1), "")
		return 0, units.OutOfDomain(function, 3, units.Argument{Name: "chance", Unit: "%", Factor: float64(units.Percent), Domain: limits}, float64(chance))
	}
	if side == FrostSpring { // the chance is of a later day
		rank = float64(1-chance) * float64(n+1)
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
func onDay(record, days []DailyWeather, at units.Date) (*DailyWeather, error) {
	i, found := slices.BinarySearchFunc(days, at, func(d DailyWeather, at units.Date) int { return int(d.Date) - int(at) })
	if !found {
		return nil, lacksDay(at)
	}
	return &days[i], known(record, days, i)
}

func lacksDay(at units.Date) error {
	return wrong("record", "", fmt.Sprintf("lacks %v", at), "every day of the span")
}

// known refuses a day, of a record in the order of its days, that is there twice or
// whose temperatures are not known.
func known(record, days []DailyWeather, i int) error {
	day := &days[i]
	if i+1 < len(days) && days[i+1].Date == day.Date {
		return dayTwice(record, day.Date)
	}
	if day.High-day.High != 0 || day.Low-day.Low != 0 || day.Low > day.High {
		return wrong(placeOf(record, day.Date), fmt.Sprintf("%v to %v", day.Low, day.High), "are not the temperatures of a day", "two temperatures, low at most as high as high")
	}
	return nil
}

// placeOf gives the path of a day in a record that may be in any order.
func placeOf(record []DailyWeather, date units.Date) string {
	return fmt.Sprintf("record[%d]", slices.IndexFunc(record, func(d DailyWeather) bool { return d.Date == date }))
}

// dayTwice gives the error of a day that a record has more than once: it names the
// second place.
func dayTwice(record []DailyWeather, date units.Date) error {
	is := func(d DailyWeather) bool { return d.Date == date }
	second := slices.IndexFunc(record, is) + 1
	second += slices.IndexFunc(record[second:], is)
	return wrong(fmt.Sprintf("record[%d].date", second), date.String(), "is there twice", "each day once")
}

// stretch gives the days from one to another, each known and there once.
func stretch(record []DailyWeather, first, last units.Date) ([]DailyWeather, error) {
	if last < first {
		return nil, wrong("last", last.String(), "is before first, "+first.String(), "that day, or one after it")
	}
	days := inOrder(record)
	begin, _ := slices.BinarySearchFunc(days, first, func(d DailyWeather, at units.Date) int { return int(d.Date) - int(at) })
	at := first
	for i := begin; i < len(days) && days[i].Date <= last; i++ {
		if days[i].Date > at {
			break
		}
		if err := known(record, days, i); err != nil {
			return nil, err
		}
		at = at.Add(1)
	}
	if at <= last {
		return nil, lacksDay(at)
	}
	return days[begin : begin+int(last-first)+1], nil
}
