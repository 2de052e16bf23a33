package farm

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"example.org/soum/internal/document"
	"example.org/soum/internal/season"
	"example.org/soum/units"
)

// What the places of a log are held against.
const (
	logSnap  = 1e-3 * units.Millimetre // ours: two borders as near as this are one, as far as digits of a document go
	logRound = 2 * units.Centimetre    // ours: a place is told to a tenth of a foot, or a centimetre
	logRoom  = 10 * units.Percent      // ours: the area in a log may differ so much from that of the place
)

// placed is a stay on land of the farm.
type placed struct {
	stay
	land     int
	from, to units.Length
	last     units.Date // the last day on it, the one before the new today at the latest
	leads    bool       // it is the leaders' ground
}

// told is what a log and readings tell of a land, for its note.
type told struct {
	stays, unread, bare int
	before, later       int // stays that are left out
	measured            bool
	under               units.Date     // the day on which those who are on it leave; 0: none are
	borders             []units.Length // in order
}

// readLog gives the ground of every stay of a log that matters.
func (r *resumed) readLog(log string) (*season.Log, error) {
	known := &season.Log{Days: r.over}
	if r.logged = strings.TrimSpace(log) != ""; !r.logged {
		return known, nil
	}
	stays, err := readStays(log)
	if err != nil {
		return nil, err
	}
	slices.SortStableFunc(stays, func(a, b stay) int { return cmp.Or(cmp.Compare(a.In, b.In), cmp.Compare(a.line, b.line)) })
	var before []placed
	for _, s := range stays {
		p := placed{stay: s, last: min(max(s.In, s.Out-1), r.today-1)}
		if r.leftOut(&p) {
			continue
		}
		if err := r.place(&p); err != nil {
			return nil, err
		}
		r.put(known, &p, before)
		before = append(before, p)
	}
	slices.SortStableFunc(known.Given, func(a, b season.Given) int { return cmp.Compare(a.Day, b.Day) })
	return known, nil
}

// leftOut tells whether a stay was over before the document's own today, or not begun by
// the new one.
func (r *resumed) leftOut(p *placed) bool {
	over, later := max(p.In, p.Out-1) < r.start, p.In >= r.today
	if at := r.farm.landIndex(p.Paddock); at >= 0 && later {
		r.told[at].later++
	} else if at >= 0 && over {
		r.told[at].before++
	}
	return over || later
}

// landNamed gives the land of a name; else what is wrong with it, and names near it.
func (r *resumed) landNamed(name string, wrong func(problem, allowed string) error) (int, error) {
	at := r.farm.landIndex(name)
	if at >= 0 {
		return at, nil
	}
	var ids []string
	for i := range r.farm.Land {
		ids = append(ids, r.farm.Land[i].ID)
	}
	return -1, wrong("is the id of no land", document.OneOf(name, ids))
}

// knows refuses a stay of a group that the farm has not.
func (r *resumed) knows(s *stay) error {
	if s.Group == "" || r.farm.groupIndex(s.Group) >= 0 {
		return nil
	}
	var ids []string
	for i := range r.farm.Groups {
		ids = append(ids, r.farm.Groups[i].ID)
	}
	return s.wrong("group", s.Group, "is the id of no group", document.OneOf(s.Group, ids)+"; empty where nobody knows")
}

// place puts a stay on its land.
func (r *resumed) place(p *placed) error {
	var err error
	if p.land, err = r.landNamed(p.Paddock, func(problem, allowed string) error { return p.wrong("paddock", p.Paddock, problem, allowed) }); err != nil {
		return err
	}
	if err := r.knows(&p.stay); err != nil {
		return err
	}
	l := &r.farm.Land[p.land]
	if p.from, p.to, err = r.between(p.land, p.From, p.To, p.wrong); err != nil {
		return err
	}
	ceiling := l.ceiling(r.lands[p.land].pasture)
	area := units.Area(float64(l.area()) * float64((p.to-p.from)/l.length()))
	if p.Left > ceiling {
		return p.wrong("left", p.Left.In(r.farm.Units), "is above the ceiling of "+strconv.Quote(l.ID)+", at which growth ends", "at most "+document.Both(ceiling))
	}
	if p.Area >= area*units.Area(1-logRoom) && p.Area <= area*units.Area(1+logRoom) {
		return nil
	}
	problem := fmt.Sprintf("is not the whole of %q, which is %s", l.ID, document.Both(area))
	allowed := "the columns from and to tell where along the lane they were"
	switch {
	case l.isPaddock():
		problem, allowed = problem+" and grazed whole", "a lane of the farm, with width and length, where it is grazed in parts"
	case p.From > 0 || p.To > 0:
		problem = fmt.Sprintf("is not that of the place, %s from %s to %s", document.Both(area), document.Both(p.from), document.Both(p.to))
		allowed = "area and place that agree; look at their units, too"
	}
	return p.wrong("area", p.Area.In(r.farm.Units), problem, allowed)
}

// between gives a place on a land, the whole of it where none is told.
func (r *resumed) between(land int, from, to units.Length, wrong func(column, text, problem, allowed string) error) (units.Length, units.Length, error) {
	l := &r.farm.Land[land]
	end := l.length()
	switch {
	case from == 0 && to == 0:
		return 0, end, nil
	case l.isPaddock():
		return 0, 0, wrong("from", document.Both(from), fmt.Sprintf("is a place, and %q is a paddock, grazed whole", l.ID), "from and to empty")
	case from >= end-logSnap:
		return 0, 0, wrong("from", document.Both(from), "is not within the lane", "less than its length, "+document.Both(end))
	case to > end+logRound:
		return 0, 0, wrong("to", document.Both(to), "is beyond the lane", "at most its length, "+document.Both(end))
	case to == 0 || to > end-logRound:
		to = end
	}
	return r.told[land].border(from), r.told[land].border(to), nil
}

// border gives the border that a place is near, which from now on is the place itself where
// there is none.
func (t *told) border(at units.Length) units.Length {
	i, _ := slices.BinarySearch(t.borders, at-logSnap)
	if i == len(t.borders) || t.borders[i] > at+logSnap {
		t.borders = slices.Insert(t.borders, i, at)
	}
	return t.borders[i]
}

// put gives a stay to the day loop: the leaders' ground, and what is known of the evening in
// which they left it.
func (r *resumed) put(log *season.Log, p *placed, before []placed) {
	rotation, lag, follows := r.comes(p, before)
	day := int(p.In-r.start) - lag
	left := season.Left{Day: int(p.last - r.start), Land: p.land, From: float64(p.from), To: float64(p.to), Bare: !p.leads && !follows}
	if p.leads {
		give(log, season.Given{
			Rotation: rotation, Land: p.land, Day: day, Days: int(p.days()), Open: p.Out > r.today, From: left.From, To: left.To,
		})
	}
	if at := &r.lands[p.land]; p.Left > 0 && p.Out <= r.today {
		left.Mass = float64(min(r.mass(at, p.Left, new(problems)), at.ceiling))
	}
	log.Left = append(log.Left, left)
	r.tell(p, left.Bare, rotation < 0 || lag >= r.farm.Rotations[rotation].longestLag() || p.Group == "")
}

// comes finds how a stay comes to its ground: as the first of the rotation of that land, -1
// for none, so many days behind its leaders, or following others.
func (r *resumed) comes(p *placed, before []placed) (rotation, lag int, follows bool) {
	rotation = slices.IndexFunc(r.input.Rotations, func(of season.Rotation) bool { return slices.Contains(of.Lands, p.land) })
	if rotation < 0 {
		return rotation, 0, false
	}
	of, day, due := &r.input.Rotations[rotation], int(p.In-r.start), r.dueUntil(p) >= int(p.In-r.start)
	behind := due || p.behind(before, of)
	switch at := r.farm.Rotations[rotation].place(p.Group); {
	case p.Group == "": // it leads where it is behind nobody
		for lag = 0; lag < day && !behind && r.input.First(of, day-lag) != lag; {
			lag++
		}
		due = behind
	case at < 0:
		return rotation, 0, false
	default:
		lag = of.Members[at].Lag
		due = due && lag > 0
	}
	for d := max(0, day-lag); !due && (lag == 0 || day >= lag) && d < min(day-lag+int(p.days()), r.over); d++ {
		p.leads = p.leads || r.input.First(of, d) == lag
	}
	return rotation, lag, behind && !p.leads
}

// behind tells whether a stay comes behind another: its end lies on ground that was opened
// within the days of the rotation's last group.
func (p *placed) behind(before []placed, of *season.Rotation) bool {
	lag := of.Members[len(of.Members)-1].Lag
	return slices.ContainsFunc(before, func(b placed) bool {
		return b.leads && b.land == p.land && b.last.Add(lag) >= p.In && b.from < p.to-logSnap && p.to <= b.to+logSnap
	})
}

// dueUntil gives the last day on which the document has somebody come to the ground of a
// stay.
func (r *resumed) dueUntil(p *placed) int {
	last, l := math.MinInt, &r.input.Lands[p.land]
	if l.Stay.Days > 0 {
		last = l.Stay.From + l.Stay.Days - 1 + r.farm.rotationOf(p.Paddock).longestLag()
	}
	from := 0.0
	for _, piece := range l.Stretches {
		for _, d := range piece.Due {
			if from < float64(p.to) && float64(p.from) < piece.To {
				last = max(last, d.Day)
			}
		}
		from = piece.To
	}
	return last
}

// give adds leaders' ground to a log; groups that lead together are there together.
func give(log *season.Log, g season.Given) {
	for i := range log.Given {
		if b := &log.Given[i]; b.Land == g.Land && b.From == g.From && b.To == g.To && g.Day < b.Day+b.Days && b.Day < g.Day+g.Days {
			until := max(b.Day+b.Days, g.Day+g.Days)
			b.Day, b.Open = min(b.Day, g.Day), b.Open || g.Open
			b.Days = until - b.Day
			return
		}
	}
	log.Given = append(log.Given, g)
}

// tell keeps what the land's note says of a stay: what it left is wanted of those who come
// last.
func (r *resumed) tell(p *placed, bare, last bool) {
	t := &r.told[p.land]
	switch {
	case p.Out > r.today:
		t.under = max(t.under, p.Out)
	case bare && p.Left == 0:
		t.bare++
	case last && p.Left == 0:
		t.unread++
	}
	t.stays++
}
