package rainfall

import (
	"slices"
	"time"

	"example.org/soum/units"
)

// Trigger is a printed rule for a date: if by then less than some share of the
// normal rain has fallen, act.
type Trigger struct {
	// Name is lower case with hyphens.
	Name string `json:"name"`
	// Month of the date on which to look, from 1.
	Month int `json:"month"`
	// Day of the date.
	Day int `json:"day"`
	// Since is the month from whose first day the rain counts.
	Since int `json:"since"`
	// Below is the share of normal under which to act.
	Below units.Fraction `json:"below"`
	// Cut is by how much less forage or stock is printed; 0 where print has no figure.
	Cut units.Span[units.Fraction] `json:"cut"`
	// Act is what to do.
	Act string `json:"act"`
	// Place is the country that it was printed for.
	Place string `json:"place"`
	units.Printed
}

// Triggers gives the printed trigger dates, as a copy, in the order of the year.
//
// The dates are of the northern and central plains of the US, whose grass is made
// by the rain of April to June. Another climate has other dates: those by which
// most of its grass is made, see GrownShare.
//
// Check: TestTriggers
//
// Source: ours: a collection, each row with its source and mark
func Triggers() []Trigger { return slices.Clone(triggers) }

// DroughtRule is a printed rule for drought that no sum of rain by a date decides.
type DroughtRule struct {
	// Name is lower case with hyphens.
	Name string `json:"name"`
	// When is in which case it holds.
	When string `json:"when"`
	// Cut is by how much less forage or stock is printed; 0 where print has no figure.
	Cut units.Span[units.Fraction] `json:"cut"`
	// Act is what to do, or to expect.
	Act string `json:"act"`
	units.Printed
}

// DroughtRules gives the other printed rules for drought, as a copy.
//
// They contradict each other in one thing: the year after a drought is 20 to 50 %
// below the average by one print, hardly different by another.
//
// Check: TestDroughtRules
//
// Source: ours: a collection, each row with its source and mark
func DroughtRules() []DroughtRule { return slices.Clone(droughtRules) }

// Sale is a row of the order in which stock is sold in a drought.
type Sale struct {
	// By is whose order it is, lower case.
	By string `json:"by"`
	// Rank is the place in that order, from 1; stock of one rank goes together.
	Rank int `json:"rank"`
	// Stock is which animals.
	Stock string `json:"stock"`
	units.Printed
}

// SellingOrder gives the printed orders in which cattle are sold in a drought, as
// a copy, what goes first in front.
//
// Early weaning comes before it: milk raises a cow's needs by more than 60 %
// (UC-PLACER-DROUGHT). An adviser who knows the herd decides.
//
// Check: TestSellingOrder
//
// Source: ours: a collection, each row with its source and mark
func SellingOrder() []Sale { return slices.Clone(sellingOrder) }

// TriggerReading is a trigger held against a record.
type TriggerReading struct {
	Trigger string          `json:"trigger"`  // its name in Triggers
	Date    units.Date      `json:"date"`     // on which one looks
	Through units.Date      `json:"through"`  // the last day that is counted
	Rain    units.RainDepth `json:"rain_m"`   // fallen since the trigger's first month
	Normal  units.RainDepth `json:"normal_m"` // of the same months
	Share   units.Fraction  `json:"share"`    // rain over normal
	Met     bool            `json:"met"`      // it is below the trigger's share
}

// JudgeTriggers holds each trigger against the rain of a year.
//
// Method: the rain of the months from the trigger's first to the last that is
// wholly past on its date, over the normal of the same months, which is MonthNormals
// of the record. A trigger of which the record lacks a month, or whose months are
// normally dry, is left out.
//
// Note: a monthly record does not know the first half of April: on 15 April the
// months to March are judged. With a gauge, hold the sum to the day against the
// figure of DroughtPlan.
//
// Errors: those of MonthNormals; a *units.DomainError for a year outside -9999 to 9999
//
// Check: TestJudgeTriggers, TestDroughtRefuses
//
// Source: CHERRY-TRIGGER, SDSU-MAY-RULE, NDSU-JULY-RULE, NDSU-SPRING, as the trigger
// says; ours: whole months only
func JudgeTriggers(year int, record []MonthlyRain) ([]TriggerReading, error) {
	normals, err := normalsFor("rainfall.JudgeTriggers", year, record)
	if err != nil {
		return nil, err
	}
	var fallen [12]units.RainDepth
	var known [12]bool
	for i := range record {
		if r := &record[i]; r.Year == year {
			fallen[r.Month-time.January], known[r.Month-time.January] = r.Rain, true
		}
	}
	readings := []TriggerReading{}
	for i := range triggers {
		t := &triggers[i]
		reading := TriggerReading{Trigger: t.Name}
		reading.Date, _ = units.NewDate(year, time.Month(t.Month), t.Day)
		begin, _ := units.NewDate(year, time.Month(t.Month), 1)
		reading.Through = begin.Add(-1)
		complete := true
		for m := t.Since - 1; m < t.Month-1; m++ {
			reading.Rain += fallen[m]
			reading.Normal += normals[m]
			complete = complete && known[m]
		}
		if !complete || reading.Normal == 0 {
			continue
		}
		reading.Share = units.Fraction(reading.Rain / reading.Normal)
		reading.Met = reading.Share < t.Below
		readings = append(readings, reading)
	}
	return readings, nil
}

// DroughtStep is a date of a drought plan.
type DroughtStep struct {
	Date   units.Date                 `json:"date"`     // when to look
	Since  units.Date                 `json:"since"`    // the day from which the rain counts
	Normal units.RainDepth            `json:"normal_m"` // from then to the evening before the date
	Below  units.Fraction             `json:"below"`    // the share of it under which to act
	Figure units.RainDepth            `json:"figure_m"` // act if less than this has fallen
	Cut    units.Span[units.Fraction] `json:"cut"`      // by how much less forage or stock; 0 where print has no figure
	Act    string                     `json:"act"`      // what to do
	Source string                     `json:"source"`   // a key of SOURCES.md
}

// DroughtPlan gives the dates of a year on which to hold the rain gauge against a
// figure, and what to do when less has fallen.
//
// Method: after each key month, three quarters of the normal rain of the key months
// so far, at which a quarter less forage is to be expected; and the printed
// Triggers, in the order of the dates. Normals are MonthNormals of the record; of a
// month that is not past, as many days as are past, as if its rain fell evenly. A
// date whose normal is nothing is left out.
//
// Note: the triggers are of the plains of North America, the key months are your
// own. What stands under Act is where to begin: the sooner stock goes, the less is
// bought for it, and an adviser, and a vet for stock in poor condition, decide with
// you. SellingOrder tells who goes first.
//
// Errors: a *document.Error where no key month is named; those of KeyRainShare and
// JudgeTriggers
//
// Check: TestDroughtPlan, TestDroughtRefuses
//
// Source: NDMC-DATES a target of 75 % of average rain; NDSU-SPRING the forage at
// that; CHERRY-TRIGGER, SDSU-MAY-RULE, NDSU-JULY-RULE, as the step says; ours: rain
// spread evenly over a month
func DroughtPlan(year int, keyMonths []int, record []MonthlyRain) ([]DroughtStep, error) {
	normals, err := normalsFor("rainfall.DroughtPlan", year, record)
	if err != nil {
		return nil, err
	}
	if err := checkKeyMonths(keyMonths, normals); err != nil {
		return nil, err
	}
	if len(keyMonths) == 0 {
		return nil, noKeyMonth()
	}
	steps := keySteps(year, keyMonths, normals)
	for i := range triggers {
		t := &triggers[i]
		step := DroughtStep{Below: t.Below, Cut: t.Cut, Act: t.Act, Source: t.Source}
		step.Date, _ = units.NewDate(year, time.Month(t.Month), t.Day)
		step.Since, _ = units.NewDate(year, time.Month(t.Since), 1)
		for m := t.Since; m < t.Month; m++ {
			step.Normal += normals[m-1]
		}
		step.Normal += normals[t.Month-1] * units.RainDepth(t.Day-1) / units.RainDepth(step.Date.DaysInMonth())
		steps = append(steps, step)
	}
	steps = slices.DeleteFunc(steps, func(s DroughtStep) bool { return s.Normal == 0 })
	for i := range steps {
		steps[i].Figure = steps[i].Normal * units.RainDepth(steps[i].Below)
	}
	slices.SortStableFunc(steps, func(a, b DroughtStep) int { return int(a.Date) - int(b.Date) })
	return steps, nil
}

// keySteps gives the first day after each key month.
func keySteps(year int, keyMonths []int, normals [12]units.RainDepth) []DroughtStep {
	begin, _ := units.NewDate(year, time.Month(keyMonths[0]), 1)
	var steps []DroughtStep
	var normal units.RainDepth
	for _, m := range inRunOrder(keyMonths) {
		normal += normals[m-1]
		over := 0
		if m < keyMonths[0] {
			over = 1
		}
		first, _ := units.NewDate(year+over, time.Month(m), 1)
		steps = append(steps, DroughtStep{
			Date: first.Add(first.DaysInMonth()), Since: begin, Normal: normal, Below: keyTarget,
			Cut: units.Single(1 - keyTarget), Act: keyAct, Source: "NDMC-DATES, NDSU-SPRING",
		})
	}
	return steps
}

// inRunOrder gives the key months as they come, the first one first.
func inRunOrder(keyMonths []int) []int {
	sorted := slices.Clone(keyMonths)
	slices.SortFunc(sorted, func(a, b int) int { return (a-keyMonths[0]+12)%12 - (b-keyMonths[0]+12)%12 })
	return sorted
}

// normalsFor gives the normals for a year that the calendar has.
func normalsFor(function string, year int, record []MonthlyRain) ([12]units.RainDepth, error) {
	const most = 9999
	if year < -most || year > most {
		return [12]units.RainDepth{}, units.OutOfDomain(function, 1, units.Argument{Name: "year", Factor: 1, Domain: units.Between(-most, most, "")}, float64(year))
	}
	return MonthNormals(record)
}
