package farm

import (
	"slices"
	"sort"
	"time"

	"example.org/soum/herd"
	"example.org/soum/internal/season"
	"example.org/soum/units"
)

// spell is days in a row on which a group stands as it stood on the first of them.
// A season asks every day what stock wants, drinks and leaves; it changes on few.
type spell struct {
	from, to int // days of the plan; to is the first day of the next
	state    herd.State
}

// month is the days of the plan in one calendar month.
type month struct {
	year     int
	month    time.Month
	days     int // of the whole month
	from, to int // days of the plan; to is the first day of the next
}

// monthsOf gives the months of a plan, in order.
func monthsOf(start units.Date, days int) []month {
	all := make([]month, 0, days/28+2)
	for from := 0; from < days; {
		first := start.Add(from)
		length := first.DaysInMonth()
		to := min(days, from+length-first.Day()+1)
		all = append(all, month{first.Year(), first.Month(), length, from, to})
		from = to
	}
	return all
}

// spellsOf gives the spells of a group from today to the season's end.
func (r *ready) spellsOf(group *herd.Group) (all []spell) {
	starts := []int{0}
	for _, e := range group.Events {
		if day := int(e.Date.Sub(r.start)); day > 0 && day < r.input.Days {
			starts = append(starts, day)
		}
	}
	if group.Gain > 0 {
		for day := 1; day < r.input.Days; day++ {
			starts = append(starts, day) // growing, it is another every day
		}
	}
	slices.Sort(starts)
	starts = append(slices.Compact(starts), r.input.Days)
	for i, from := range starts[:len(starts)-1] {
		state := group.On(r.date(from))
		if last := len(all) - 1; last >= 0 && all[last].state == state {
			all[last].to = starts[i+1]
			continue
		}
		all = append(all, spell{from, starts[i+1], state})
	}
	return all
}

// state gives a group as it stands on a day.
func (r *ready) state(group, day int) herd.State {
	all := r.spells[group]
	i := sort.Search(len(all), func(i int) bool { return all[i].to > day })
	return all[min(i, len(all)-1)].state
}

// yearPart is days in a row of one season.
type yearPart struct {
	from, to int // days of the plan; to is the first day of the next
	season   herd.Season
}

// yearParts tells summer from winter by growth: winter is when no land grows.
func yearParts(in *season.Input) (all []yearPart) {
	for day := range in.Days {
		now := herd.Winter
		if slices.ContainsFunc(in.Lands, func(l season.Land) bool { return l.Peak[day] > 0 }) {
			now = herd.Summer
		}
		if last := len(all) - 1; last < 0 || all[last].season != now {
			all = append(all, yearPart{day, day, now})
		}
		all[len(all)-1].to = day + 1
	}
	return all
}

// drink tells what a group drinks in days that are alike, in order, at one end of the
// printed span; nothing from the day on for which print has no figure. It tells whether
// print has any.
func (r *ready) drink(group int, end units.End, each func(from, to int, drink units.WaterRate)) (known bool) {
	for _, sp := range r.spells[group] {
		for _, part := range r.yearParts {
			from, to := max(sp.from, part.from), min(sp.to, part.to)
			if from >= to {
				continue
			}
			drink, err := r.herd[group].WaterOn(r.date(from), part.season, end)
			if units.Impossible(err) {
				return known
			}
			each(from, to, drink)
			known = true
		}
	}
	return known
}
