package rainfall

import (
	"fmt"
	"slices"
	"time"

	"example.org/soum/units"
)

// MonthlyRain is the rain of one calendar month.
type MonthlyRain struct {
	Year  int             `json:"year"`  // calendar year
	Month time.Month      `json:"month"` // 1 to 12
	Rain  units.RainDepth `json:"rain"`  // fallen in the month
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
// Errors: a month that no year has, one that stands twice, one outside 1 to 12,
// rain below zero or not a number
//
// Check: TestFortCollinsNormals, TestMonthNormalsRefuses
//
// Source: definition: a normal is the mean of a stated run of years, here those given
func MonthNormals(record []MonthlyRain) ([12]units.RainDepth, error) {
	var normals [12]units.RainDepth
	if err := checkRecord("rainfall.MonthNormals", record); err != nil {
		return normals, err
	}
	var years [12]int
	for i := range record {
		m := record[i].Month - time.January
		years[m]++
		normals[m] += (record[i].Rain - normals[m]) / units.RainDepth(years[m]) // a running mean cannot overflow
	}
	for m := range normals {
		if years[m] == 0 {
			return [12]units.RainDepth{}, fmt.Errorf("rainfall.MonthNormals: no year of the record has %s", time.January+time.Month(m))
		}
	}
	return normals, nil
}

// YearTotal gives the rain of a calendar year.
//
// Method: the sum of its twelve months
//
// Errors: a month of that year that the record has not, and those of
// MonthNormals
//
// Check: TestFortCollinsYears, TestYearTotalRefuses
//
// Source: definition: the sum of the twelve months
func YearTotal(record []MonthlyRain, year int) (units.RainDepth, error) {
	if err := checkRecord("rainfall.YearTotal", record); err != nil {
		return 0, err
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
			return 0, fmt.Errorf("rainfall.YearTotal: the record lacks %s %d", time.January+time.Month(m), year)
		}
	}
	return total, nil
}

// KeyRainShare gives the rain so far of the months that decide the year, as a
// share of their normal, on a date.
//
// Method: the newest run of key months that began on or before the date, the
// first key month opening the run; of it, the months wholly past. Their rain
// over their normal, a month that the record lacks left out of both. 1 where
// none is past or known, or where their normal is nothing; never above 1.
//
// Note: a dry year thus holds on until the next run begins, and in the first
// key month of a year nothing is known yet. In a list that passes the turn of
// the year, such as 11, 12, 1, the later months are of the year after.
//
// Errors: a key month outside 1 to 12 or named twice, a normal below zero or
// not a number, and those of MonthNormals but the month that no year has
//
// Check: TestKeyRainShare, TestKeyRainShareRefuses
//
// Source: ours: how rain "so far" is counted, since print knows the whole run only
func KeyRainShare(date units.Date, keyMonths []int, record []MonthlyRain, normals [12]units.RainDepth) (units.Fraction, error) {
	const name = "rainfall.KeyRainShare"
	if err := checkKeyMonths(name, keyMonths, normals); err != nil {
		return 0, err
	}
	var rain, normal units.RainDepth
	var known [12]bool
	for i := range record {
		r := &record[i]
		if err := checkMonth(name, i, r); err != nil {
			return 0, err
		}
		if !inRun(r, keyMonths, date) {
			continue
		}
		if known[r.Month-time.January] {
			return 0, twice(name, i, r)
		}
		known[r.Month-time.January] = true
		rain += r.Rain
		normal += normals[r.Month-time.January]
	}
	if normal == 0 || rain >= normal {
		return 1, nil
	}
	return units.Fraction(rain / normal), nil
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

func checkKeyMonths(function string, keyMonths []int, normals [12]units.RainDepth) error {
	var seen [12]bool
	for _, month := range keyMonths {
		if month < int(time.January) || month > int(time.December) {
			return fmt.Errorf("%s: key month %d is none of 1 to 12", function, month)
		}
		if seen[month-1] {
			return fmt.Errorf("%s: key month %d is named twice", function, month)
		}
		seen[month-1] = true
	}
	for m, normal := range normals {
		if !finite(normal) {
			return fmt.Errorf("%s: the normal of %s is %s, must be 0 mm or more", function, time.January+time.Month(m), millimetres(normal))
		}
	}
	return nil
}

// checkRecord refuses what cannot be a record of rain.
func checkRecord(function string, record []MonthlyRain) error {
	type calendar struct {
		year  int
		month time.Month
	}
	seen := make(map[calendar]bool, len(record))
	for i := range record {
		r := &record[i]
		if err := checkMonth(function, i, r); err != nil {
			return err
		}
		if seen[calendar{r.Year, r.Month}] {
			return twice(function, i, r)
		}
		seen[calendar{r.Year, r.Month}] = true
	}
	return nil
}

func checkMonth(function string, i int, r *MonthlyRain) error {
	if r.Month < time.January || r.Month > time.December {
		return fmt.Errorf("%s: record[%d]: month %d is none of 1 to 12", function, i, int(r.Month))
	}
	if !finite(r.Rain) {
		return fmt.Errorf("%s: record[%d]: the rain of %s %d is %s, must be 0 mm or more", function, i, r.Month, r.Year, millimetres(r.Rain))
	}
	return nil
}

func twice(function string, i int, r *MonthlyRain) error {
	return fmt.Errorf("%s: record[%d]: %s %d stands twice", function, i, r.Month, r.Year)
}

// finite tells whether a depth can have fallen.
func finite(depth units.RainDepth) bool { return depth >= 0 && depth-depth == 0 }

func millimetres(depth units.RainDepth) string {
	return fmt.Sprintf("%g mm", depth.Millimetres())
}
