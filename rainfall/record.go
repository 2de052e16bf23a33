package rainfall

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"time"

	"example.org/soum/units"
)

// MonthlyRain is the rain of one calendar month.
type MonthlyRain struct {
	Year  int             `json:"year" document:"required"`  // calendar year
	Month time.Month      `json:"month" document:"required"` // 1 to 12
	Rain  units.RainDepth `json:"rain" document:"required"`  // fallen in the month
}

// ShareOfNormal returns rain as a share of the normal of the same time.
//
// Formula: rain / normal
//
// Where:
//   - rain in mm: rain fallen; >= 0
//   - normal in mm: long-term mean of the same months; > 0
//
// Source: definition: rain over its normal
func ShareOfNormal(rain, normal units.RainDepth) (units.Fraction, error) {
	share := units.Fraction(float64(rain) / float64(normal))
	return units.Answer(&formulaShareOfNormal, share, float64(rain), float64(normal))
}

// MonthNormals gives the mean rain of each calendar month, January first, over
// the years of the record that have it.
//
// Method: plain mean, month by month
//
// Errors: a *document.Error with the place for a month that no year has, that is there
// twice or is outside 1 to 12, and for rain below zero, above 1,000 m or not a number
//
// Check: TestFortCollinsNormals, TestMonthNormalsRefuses
//
// Source: definition: a normal is the mean of a stated run of years, here those given
func MonthNormals(record []MonthlyRain) ([12]units.RainDepth, error) {
	var normals [12]units.RainDepth
	if err := checkRecord(record); err != nil {
		return unknown12, err
	}
	var years [12]int
	for i := range record {
		m := record[i].Month - time.January
		years[m]++
		normals[m] += (record[i].Rain - normals[m]) / units.RainDepth(years[m]) // a running mean cannot overflow
	}
	for m := range normals {
		if years[m] == 0 {
			return unknown12, wrong("record", "", fmt.Sprintf("has no %s in any year", time.January+time.Month(m)), "every month in one year or more")
		}
	}
	return normals, nil
}

// YearTotal gives the rain of a calendar year.
//
// Method: the sum of its twelve months
//
// Errors: a *document.Error for a month of that year that the record lacks; those of
// MonthNormals
//
// Check: TestFortCollinsYears, TestYearTotalRefuses
//
// Source: definition: the sum of the twelve months
func YearTotal(record []MonthlyRain, year int) (units.RainDepth, error) {
	nothing := units.RainDepth(math.NaN())
	if err := checkRecord(record); err != nil {
		return nothing, err
	}
	var total units.RainDepth
	var known [12]bool
	for i := range record {
		if record[i].Year == year {
			total += record[i].Rain
			known[record[i].Month-time.January] = true
		}
	}
	for m, has := range known {
		if !has {
			return nothing, wrong("record", "", fmt.Sprintf("lacks %s %d", time.January+time.Month(m), year), "all twelve months of the year")
		}
	}
	return total, nil
}

// KeyRainShare gives the rain of the months that decide the year, as a share of their
// normal, as far as a date knows it: what is to come counts as normal.
//
// Method: the newest run of key months that began on or before the date, the
// first key month opening the run. The rain of those that are wholly past and in the
// record, and the normal of all the others, over the normal of all; 1 where that is
// nothing; never above 1.
//
// Note: a dry year thus holds on until the next run begins, one dry month weighs as
// much as it is of the run, and in the first key month of a year nothing is known yet.
// In a list that passes the turn of the year, such as 11, 12, 1, the later months are of
// the year after.
//
// Errors: a *document.Error with the place for a key month outside 1 to 12 or named
// twice, one that goes round the year more than once, and a normal below zero or not a
// number; those of MonthNormals but the month that no year has
//
// Check: TestKeyRainShare, TestKeyRainShareRefuses
//
// Source: ours: how rain "so far" is counted, since print knows the whole run only
func KeyRainShare(date units.Date, keyMonths []int, record []MonthlyRain, normals [12]units.RainDepth) (units.Fraction, error) {
	nothing := units.Fraction(math.NaN())
	if err := checkKeyMonths(keyMonths, normals); err != nil {
		return nothing, err
	}
	var normal, missed units.RainDepth // missed: by how much the months known fell short
	for _, m := range keyMonths {
		normal += normals[m-1]
	}
	var known [12]bool
	for i := range record {
		r := &record[i]
		if err := checkMonth(i, r); err != nil {
			return nothing, err
		}
		if !inRun(r, keyMonths, date) {
			continue
		}
		if known[r.Month-time.January] {
			return nothing, twice(i, r)
		}
		known[r.Month-time.January] = true
		missed += normals[r.Month-time.January] - r.Rain
	}
	if normal == 0 || missed <= 0 {
		return 1, nil
	}
	return units.Fraction(max(0, (normal-missed)/normal)), nil
}

// inRun tells whether a month is one of the key months of the newest run and
// wholly past on a date.
func inRun(r *MonthlyRain, keyMonths []int, date units.Date) bool {
	if !slices.Contains(keyMonths, int(r.Month)) {
		return false
	}
	year := date.Year() // in which the newest run began
	if int(date.Month()) < keyMonths[0] {
		year--
	}
	if int(r.Month) < keyMonths[0] {
		year++ // the run passes the turn of the year
	}
	past := year < date.Year() || (year == date.Year() && r.Month < date.Month())
	return past && r.Year == year
}

func checkKeyMonths(keyMonths []int, normals [12]units.RainDepth) error {
	var seen [12]bool
	turns := 0
	for i, month := range keyMonths {
		path := func() string { return fmt.Sprintf("keyMonths[%d]", i) }
		if month < int(time.January) || month > int(time.December) {
			return wrong(path(), strconv.Itoa(month), "is not a month", "1 to 12")
		}
		if seen[month-1] {
			return wrong(path(), strconv.Itoa(month), "is named again", "each month once")
		}
		seen[month-1] = true
		if i > 0 && month < keyMonths[i-1] {
			turns++
		}
		if turns > 1 || (turns == 1 && month > keyMonths[0]) {
			return wrong(path(), strconv.Itoa(month), "goes round the year more than once", "the months in the order they come, as 11, 12, 1")
		}
	}
	for m, normal := range normals {
		if !finite(normal) {
			return wrongDepth(fmt.Sprintf("normals[%d]", m), normal)
		}
	}
	return nil
}

// calendar is a month of a year.
type calendar struct {
	year  int
	month time.Month
}

// checkRecord refuses what cannot be a record of rain.
func checkRecord(record []MonthlyRain) error {
	seen := make(map[calendar]bool, len(record))
	for i := range record {
		r := &record[i]
		if err := checkMonth(i, r); err != nil {
			return err
		}
		if seen[calendar{r.Year, r.Month}] {
			return twice(i, r)
		}
		seen[calendar{r.Year, r.Month}] = true
	}
	return nil
}

func checkMonth(i int, r *MonthlyRain) error {
	if r.Month < time.January || r.Month > time.December {
		return wrong(fmt.Sprintf("record[%d].month", i), strconv.Itoa(int(r.Month)), "is not a month", "1 to 12")
	}
	if !finite(r.Rain) {
		return wrongDepth(fmt.Sprintf("record[%d].rain", i), r.Rain)
	}
	return nil
}

func twice(i int, r *MonthlyRain) error {
	return wrong(fmt.Sprintf("record[%d]", i), fmt.Sprintf("%s %d", r.Month, r.Year), "is there twice", "each month once")
}

// mostRain is more than can fall: sums of such depths stay finite.
const mostRain = 1000 * units.RainMetre

// finite tells whether a depth can have fallen.
func finite(depth units.RainDepth) bool { return depth >= 0 && depth <= mostRain }

func millimetres(depth units.RainDepth) string {
	return fmt.Sprintf("%g mm", depth.Millimetres())
}

// YearRain is the rain of the same part of one year.
type YearRain struct {
	Year int             `json:"year"`   // the year in which it began
	Rain units.RainDepth `json:"rain_m"` // fallen in it
}

// Depths gives the rain of the years alone, for the functions that rank it.
//
// Check: TestKeyTotals
//
// Source: definition: one column of a list
func Depths(years []YearRain) []units.RainDepth {
	depths := make([]units.RainDepth, len(years))
	for i := range years {
		depths[i] = years[i].Rain
	}
	return depths
}

// MonthTotals gives the rain of each month of a daily record.
//
// Method: plain sums; a month of which any day is missing is left out, as a gap
//
// Errors: a *document.Error with the place for days not in order or there twice, and
// rain below zero, above 1,000 m or not a number
//
// Check: TestSeattleTotals, TestDailyRefuses
//
// Source: definition: the sum of the days
func MonthTotals(days []DailyRain) ([]MonthlyRain, error) {
	if err := checkDays(days); err != nil {
		return nil, err
	}
	months := []MonthlyRain{}
	for i := 0; i < len(days); {
		first := days[i].Date
		length := first.DaysInMonth() - first.Day() + 1
		whole := first.Day() == 1 && i+length <= len(days) && days[i+length-1].Date == first.Add(length-1)
		var total units.RainDepth
		for end := int(first) + length; i < len(days) && int(days[i].Date) < end; i++ {
			total += days[i].Rain
		}
		if whole {
			months = append(months, MonthlyRain{first.Year(), first.Month(), total})
		}
	}
	return months, nil
}

// DayTotals gives the rain from one day of the year to another, both counted,
// for every year of a daily record that has all the days between.
//
// Method: plain sums; a year that lacks a day is left out. Where the last day
// comes before the first in the calendar, it is of the year after.
//
// Note: with ChanceAtLeast this is the chance of so much rain by a date.
//
// Errors: a *units.DomainError for a month or a day of it that not every year has; those
// of MonthTotals
//
// Check: TestSeattleTotals, TestDailyRefuses
//
// Source: definition: the sum of the days
func DayTotals(days []DailyRain, firstMonth, firstDay, lastMonth, lastDay int) ([]YearRain, error) {
	if err := checkDays(days); err != nil {
		return nil, err
	}
	first, err := dayOfYear("first", 2, firstMonth, firstDay)
	if err != nil {
		return nil, err
	}
	last, err := dayOfYear("last", 4, lastMonth, lastDay)
	if err != nil {
		return nil, err
	}
	years := []YearRain{}
	over := 0
	if last < first {
		over = 1
	}
	for i := 0; i < len(days); {
		year := days[i].Date.Year()
		begin, ok1 := units.NewDate(year, time.Month(firstMonth), firstDay)
		end, ok2 := units.NewDate(year+over, time.Month(lastMonth), lastDay)
		from, _ := slices.BinarySearchFunc(days, begin, byDate)
		to, found := slices.BinarySearchFunc(days, end, byDate)
		if found && ok1 && ok2 && to-from == int(end-begin) {
			var total units.RainDepth
			for ; from <= to; from++ {
				total += days[from].Rain
			}
			years = append(years, YearRain{year, total})
		}
		following, ok := units.NewDate(year+1, time.January, 1)
		if !ok { // beyond the calendar
			break
		}
		i, _ = slices.BinarySearchFunc(days, following, byDate)
	}
	return years, nil
}

// dayOfYear gives a day that every year has, in one without 29 February. Its month and
// day are the arguments of DayTotals from an index on.
func dayOfYear(which string, index, month, day int) (units.Date, error) {
	const function, common = "rainfall.DayTotals", 2001
	begin, ok := units.NewDate(common, time.Month(month), 1)
	if !ok {
		return 0, units.OutOfDomain(function, index, units.Argument{Name: which + "Month", Factor: 1, Domain: units.Between(1, 12, "")}, float64(month))
	}
	date, ok := units.NewDate(common, time.Month(month), day)
	if !ok {
		return 0, units.OutOfDomain(function, index+1, units.Argument{Name: which + "Day", Factor: 1, Domain: units.Between(1, float64(begin.DaysInMonth()), "")}, float64(day))
	}
	return date, nil
}

func byDate(day DailyRain, date units.Date) int { return int(day.Date) - int(date) }

// SumMonths gives the rain of so many months in a row, for every month of the
// record with which such a run ends.
//
// Method: plain sums in the order of time; a run that lacks a month is left out,
// as a gap
//
// Errors: a *units.DomainError for fewer than one month; those of MonthNormals but the
// month that no year has
//
// Check: TestWichitaSums, TestSumMonthsRefuses
//
// Source: definition: the sum of the months
func SumMonths(record []MonthlyRain, months int) ([]MonthlyRain, error) {
	return sumMonths("rainfall.SumMonths", record, months)
}

// sumMonths is SumMonths for a function that has the same first arguments.
func sumMonths(function string, record []MonthlyRain, months int) ([]MonthlyRain, error) {
	if err := checkRecord(record); err != nil {
		return nil, err
	}
	if months < 1 {
		return nil, units.OutOfDomain(function, 2, units.Argument{Name: "months", Factor: 1, Domain: units.Between(1, math.Inf(1), "")}, float64(months))
	}
	sorted := inTime(record)
	sums := []MonthlyRain{}
	for i := months - 1; i < len(sorted); i++ {
		run := sorted[i-months+1 : i+1]
		if number(&run[months-1])-number(&run[0]) != months-1 {
			continue
		}
		sum := MonthlyRain{Year: sorted[i].Year, Month: sorted[i].Month}
		for j := range run {
			sum.Rain += run[j].Rain
		}
		sums = append(sums, sum)
	}
	return sums, nil
}

// number counts months from the year 0.
func number(r *MonthlyRain) int { return r.Year*12 + int(r.Month-time.January) }

// inTime gives the record in the order of time, as a copy.
func inTime(record []MonthlyRain) []MonthlyRain {
	sorted := slices.Clone(record)
	slices.SortFunc(sorted, func(a, b MonthlyRain) int { return number(&a) - number(&b) })
	return sorted
}

// KeyTotals gives the rain of the key months of each year that has them all.
//
// Method: plain sums. The first key month opens the run and names its year; in a
// list that passes the turn of the year, such as 11, 12, 1, the later months are
// of the year after. All twelve from 1 give the years.
//
// Errors: a *document.Error where no key month is named; those of KeyRainShare
//
// Check: TestKeyTotals, TestKeyTotalsRefuses
//
// Source: definition: the sum of the months
func KeyTotals(record []MonthlyRain, keyMonths []int) ([]YearRain, error) {
	if err := checkRecord(record); err != nil {
		return nil, err
	}
	if err := checkKeyMonths(keyMonths, [12]units.RainDepth{}); err != nil {
		return nil, err
	}
	if len(keyMonths) == 0 {
		return nil, noKeyMonth()
	}
	years := []YearRain{}
	known := 0
	for _, r := range inTime(record) {
		if !slices.Contains(keyMonths, int(r.Month)) {
			continue
		}
		year := r.Year
		if int(r.Month) < keyMonths[0] {
			year--
		}
		if n := len(years); n == 0 || years[n-1].Year != year {
			if n > 0 && known < len(keyMonths) {
				years = years[:n-1]
			}
			years, known = append(years, YearRain{Year: year}), 0
		}
		years[len(years)-1].Rain += r.Rain
		known++
	}
	if known < len(keyMonths) && len(years) > 0 {
		years = years[:len(years)-1]
	}
	return years, nil
}

func noKeyMonth() error {
	return wrong("keyMonths", "", "is empty", "the months that decide the year, such as 4, 5, 6")
}

func checkDays(days []DailyRain) error {
	for i := range days {
		if !finite(days[i].Rain) {
			return wrongDepth(fmt.Sprintf("days[%d].rain", i), days[i].Rain)
		}
		if i > 0 && days[i].Date <= days[i-1].Date {
			return wrong(fmt.Sprintf("days[%d].date", i), days[i].Date.String(), "comes after "+days[i-1].Date.String(), "each day once, in order")
		}
	}
	return nil
}
