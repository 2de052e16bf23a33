package farm

import (
	"slices"
	"sort"
	"time"

	"example.org/soum/herd"
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

// monthsOf puts the months of the plan, in order, to those of a list.
func monthsOf(all []month, start units.Date, days int) []month {
	for from := 0; from < days; {
		first := start.Add(from)
		length := first.DaysInMonth()
		to := min(days, from+length-first.Day()+1)
		all = append(all, month{first.Year(), first.Month(), length, from, to})
		from = to
	}
	return all
}

// spells gives the spells of a group from today to the season's end.
func (s *setting) spellsOf(group *herd.Group) []spell {
	starts := append(s.starts[:0], 0)
	for _, e := range group.Events {
		if day := int(e.Date.Sub(s.start)); day > 0 && day < s.input.Days {
			starts = append(starts, day)
		}
	}
	if group.Gain > 0 {
		for day := 1; day < s.input.Days; day++ {
			starts = append(starts, day) // growing, it is another every day
		}
	}
	slices.Sort(starts)
	starts = slices.Compact(starts)
	s.starts = starts
	begin := len(s.spell)
	for i, from := range starts {
		to := s.input.Days
		if i+1 < len(starts) {
			to = starts[i+1]
		}
		state := group.On(s.date(from))
		if last := len(s.spell) - 1; last >= begin && s.spell[last].state == state {
			s.spell[last].to = to
			continue
		}
		s.spell = append(s.spell, spell{from, to, state})
	}
	return cut(s.spell, begin)
}

// state gives a group as it stands on a day.
func (s *setting) state(group, day int) herd.State {
	all := s.spells[group]
	if len(all) == 1 {
		return all[0].state
	}
	i := sort.Search(len(all), func(i int) bool { return all[i].to > day })
	return all[min(i, len(all)-1)].state
}

// yearPart is days in a row of one season.
type yearPart struct {
	from, to int // days of the plan; to is the first day of the next
	season   herd.Season
}

// settleSeasons tells summer from winter by growth: winter is when no land grows.
func (s *setting) settleSeasons() {
	for day := range s.input.Days {
		season := herd.Winter
		for i := range s.input.Lands {
			if s.input.Lands[i].Peak[day] > 0 {
				season = herd.Summer
				break
			}
		}
		if last := len(s.yearParts) - 1; last < 0 || s.yearParts[last].season != season {
			s.yearParts = append(s.yearParts, yearPart{day, day, season})
		}
		s.yearParts[len(s.yearParts)-1].to = day + 1
	}
}

// drink tells what a group drinks in days that are alike, in order, at one end of the
// printed span; nothing from the day on for which print has no figure. It tells whether
// print has any.
func (s *setting) drink(group int, end units.End, each func(from, to int, drink units.WaterRate)) (known bool) {
	for _, sp := range s.spells[group] {
		for _, part := range s.yearParts {
			from, to := max(sp.from, part.from), min(sp.to, part.to)
			if from >= to {
				continue
			}
			drink, err := s.herd[group].WaterOn(s.date(from), part.season, end)
			if units.Impossible(err) {
				return known
			}
			each(from, to, drink)
			known = true
		}
	}
	return known
}
