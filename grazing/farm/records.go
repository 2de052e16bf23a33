package farm

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"sort"

	"example.org/soum/internal/document"
	"example.org/soum/units"
)

// RecordRules is what a log of moves is read with.
type RecordRules struct {
	Today  units.Date     `json:"today"`         // the day of the question; stays that begin later are left out
	Demand units.Demand   `json:"demand_kg_day"` // what an animal unit eats in a day, as of herd.UnitDemand
	Use    units.Fraction `json:"use"`           // share of what stood that was eaten
	Rest   units.Days     `json:"rest_days"`     // rest wanted before the next pass
}

// PaddockRecord is what a log tells of one paddock, or of one lane.
type PaddockRecord struct {
	Paddock   string        `json:"paddock"`         // its name
	Stays     int           `json:"stays"`           // stays that had begun
	Grazed    units.Days    `json:"grazed_days"`     // days of all stays together
	Ground    units.Area    `json:"ground_m2"`       // the land that they were on, every place counted once
	Use       units.UseRate `json:"use_aud_m2"`      // animal-unit days taken from an area of that land
	Harvested units.Yield   `json:"harvested_kg_m2"` // what was eaten, by the demand
	Standing  units.Yield   `json:"standing_kg_m2"`  // what stood in all, by the share eaten
	Left      units.Date    `json:"left"`            // the day on which the last stay ended
	LeftFirst units.Date    `json:"left_first"`      // the day on which the ground that has rested longest was left
	Shortest  units.Days    `json:"shortest_days"`   // the shortest rest between two passes over the same ground; 0 with one pass
	Rested    units.Days    `json:"rested_days"`     // since the last day on which anybody was there; 0 where they are on it
	Occupied  bool          `json:"occupied"`        // they are on it
	Ready     units.Date    `json:"ready"`           // the day on which the ground that has rested longest has rested enough
	ReadyAll  units.Date    `json:"ready_all"`       // the day on which all of it has
}

// longestRest is the longest rest that a record may ask for, in days.
const longestRest = 366

var recordGuard = units.Formula{
	Name: "farm.PaddockRecords", Source: "NEB-AUM",
	Arguments: []units.Argument{
		{Name: "demand", Unit: "kg/day", Factor: 1, Domain: units.AtLeast(0)},
		{Name: "use", Unit: "%", Factor: float64(units.Percent), Domain: units.Above(0, 1)},
		{Name: "rest", Unit: "days", Factor: 1, Domain: units.Between(0, longestRest, "")},
	},
}

// PaddockRecords tells of each paddock in a log what was taken from it, what grew,
// what rest it had and when it is ready; the one to go to next comes first.
//
// Method: animal units × days, added up over the stays, ÷ the land they were on, every
// place counted once; × what an animal unit eats is harvested; ÷ the share eaten is
// what stood; rest from the last day on which anybody was there, as a plan counts it,
// to the day on which the next pass came to the same ground
//
// The land. The places of a lane are those of the columns from and to; where a stay has
// from and no to, it went to the end of the lane, the largest to in the log. The area of
// a place is that of the stay that was on it first. A stay without from and to was on
// the whole, as on a paddock. An area alone has no place: where it is less by more than a
// tenth than the whole, as other stays tell it, the log is refused. Strips of about one
// size without from and to cannot be told from one paddock grazed again and again, and
// are taken for that: write from and to, or give each strip a name of its own. Borders
// within 2 cm of one another are one.
//
// The rest. A pass is one grazing of a place by all groups that come one behind
// another. Who comes before the ground has been a day without animals belongs to the
// pass. So does a group that comes later, if it was not there yet in this pass and
// comes before the ground had the rest wanted: it follows. The same group back again,
// or any group after the rest wanted, begins the next pass. Where the log does not name
// the groups, everybody who comes after a day without animals begins the next pass, so
// name the groups where some follow days behind. The next strip of a lane is other
// ground, and no return.
//
// A lane is ready, first of all, where it was left first; all of it is when its last
// strip has rested too. Followers that are still to come are not in a log, and put the
// day off.
//
// The harvest is what the animals should have eaten, not what was weighed: where they
// were fed beside the pasture, or gained or lost, it is off by that. A stay of hours
// counts as a day: where a group was in two places on one day, part its animal units
// between them. Readiness is a matter of days here: look at the grass before you open
// the gate.
//
// Errors: a *document error of ReadMoves, or where the ground of a stay cannot be known;
// *units.DomainError where a rule is impossible
//
// Check: TestPaddockRecordsByHand, TestLaneRecordsByHand, TestRestByHand, TestRecordsOfAPlan,
// TestPaddockRecordsRefuse, TestRecordsAddUp
//
// Source: NEB-AUM animal-unit days; ours: harvested and standing yield by them, and what
// a pass is
func PaddockRecords(log string, rules RecordRules) ([]PaddockRecord, error) {
	if _, err := units.Answer(&recordGuard, 0.0, float64(rules.Demand), float64(rules.Use), float64(rules.Rest)); err != nil {
		return nil, err
	}
	stays, err := someStays(log)
	if err != nil {
		return nil, err
	}
	records := []PaddockRecord{}
	for _, h := range histories(stays, rules.Today) {
		r, err := h.record(&rules)
		if err != nil {
			return nil, err
		}
		records = append(records, r)
	}
	slices.SortStableFunc(records, func(a, b PaddockRecord) int {
		return cmp.Or(cmp.Compare(a.Ready, b.Ready), cmp.Compare(a.Paddock, b.Paddock))
	})
	return records, nil
}

// history is the stays on one paddock, in the order of their days, with places, and
// what became of its ground.
type history struct {
	stays    []stay
	end      units.Length // of the lane, as far as the log goes
	pieces   []trodden
	shortest units.Days // between two passes; 0: none
}

// trodden is a piece of ground by the last pass over it.
type trodden struct {
	to   units.Length
	pass *pass // nil: nobody was there
}

// pass is one grazing of a piece of ground.
type pass struct {
	groups []string
	last   units.Date // the last day on which anybody was there
	left   units.Date // the day on which the last of them left
}

// histories parts the stays that had begun by paddock.
func histories(stays []stay, today units.Date) (all []*history) {
	at := map[string]*history{}
	for _, s := range stays {
		if s.In > today {
			continue
		}
		h, known := at[s.Paddock]
		if !known {
			h = &history{}
			at[s.Paddock] = h
			all = append(all, h)
		}
		h.stays = append(h.stays, s)
		h.end = max(h.end, s.To)
	}
	return all
}

// whole tells whether a stay was on all of the paddock.
func (m *LoggedMove) whole() bool { return m.From == 0 && m.To == 0 }

// record works out the record of a paddock.
func (h *history) record(rules *RecordRules) (PaddockRecord, error) {
	ground, err := h.ground()
	if err != nil {
		return PaddockRecord{}, err
	}
	h.follow(rules.Rest)
	r := PaddockRecord{Paddock: h.stays[0].Paddock, Stays: len(h.stays), Ground: ground, Shortest: h.shortest, Left: min(h.stays[0].Out, rules.Today)}
	last := h.stays[0].lastDay()
	taken := 0.0 // animal-unit days
	for i := range h.stays {
		m := &h.stays[i].LoggedMove
		days := m.days()
		if m.Out > rules.Today {
			days, r.Occupied = units.Days(rules.Today-m.In)+1, true
		}
		r.Grazed += days
		taken += float64(m.Animals) * float64(days)
		r.Left = max(r.Left, min(m.Out, rules.Today))
		last = max(last, m.lastDay())
	}
	last = min(last, rules.Today)
	r.Use = units.UseRate(taken / float64(ground))
	r.Harvested = units.Yield(float64(r.Use) * float64(rules.Demand))
	r.Standing = units.Yield(float64(r.Harvested) / float64(rules.Use))
	if !r.Occupied {
		r.Rested = units.Days(rules.Today - last)
	}
	rest := units.Date(math.Ceil(float64(rules.Rest)))
	r.LeftFirst = r.Left
	longest := last
	for _, p := range h.pieces {
		if p.pass != nil {
			r.LeftFirst, longest = min(r.LeftFirst, p.pass.left), min(longest, p.pass.last)
		}
	}
	r.Ready, r.ReadyAll = longest+rest, last+rest
	return r, nil
}

// ground gives the land of all stays, every place once, and puts those without a
// place on the whole.
func (h *history) ground() (units.Area, error) {
	if err := h.places(); err != nil {
		return 0, err
	}
	if h.end == 0 {
		h.end = units.Metre // nobody tells a place: of any length, then
	}
	whole, placed := units.Area(0), history{end: h.end}
	for i := range h.stays {
		if s := &h.stays[i]; s.whole() {
			whole = max(whole, s.Area)
		} else {
			placed.stays = append(placed.stays, *s)
		}
	}
	whole = max(whole, placed.covered())
	for i := range h.stays {
		s := &h.stays[i]
		switch {
		case !s.whole():
		case s.Area < whole*units.Area(1-logRoom):
			return 0, s.wrong("area", document.Both(s.Area), fmt.Sprintf("is not the whole of %.60q, which is %s by other stays", s.Paddock, document.Both(whole)), "the columns from and to tell where along the lane they were, or each part has a name of its own")
		default:
			s.To = h.end
		}
	}
	return whole, nil
}

// places ends the stays that tell where they begin only.
func (h *history) places() error {
	for i := range h.stays {
		s := &h.stays[i]
		switch {
		case s.From == 0 || s.To > 0:
		case s.From >= h.end:
			return s.wrong("to", "", "is empty, and no stay tells where the lane ends", "where the place ends, or from empty too where the whole is meant")
		default:
			s.To = h.end
		}
	}
	return nil
}

// covered gives the land of stays with a place, the area of a place by the stay that
// was on it first.
func (h *history) covered() (area units.Area) {
	h.pieces = []trodden{{to: h.end}}
	for i := range h.stays {
		s := &h.stays[i]
		first, last := h.between(s)
		from := h.start(first)
		for j := first; j < last; j++ {
			p := &h.pieces[j]
			if p.pass == nil {
				area += s.Area * units.Area(min(1, (p.to-from)/(s.To-s.From))) // above 1 by the rounding of borders only
				p.pass = &pass{}
			}
			from = p.to
		}
	}
	if area == 0 && len(h.stays) > 0 {
		area = h.stays[0].Area // strips of a centimetre have land too
	}
	return area
}

// follow lets every piece of ground go through its stays.
func (h *history) follow(rest units.Days) {
	h.pieces = []trodden{{to: h.end}}
	for i := range h.stays {
		s := &h.stays[i]
		first, last := h.between(s)
		next := map[*pass]*pass{}
		fresh := &pass{[]string{s.Group}, s.lastDay(), s.Out}
		for j := first; j < last; j++ {
			p := &h.pieces[j]
			after, seen := next[p.pass]
			switch {
			case seen:
			case p.pass.goesOn(s, rest):
				after = p.pass.with(s)
			default:
				after = fresh
				h.rested(p.pass, s)
			}
			next[p.pass], p.pass = after, after
		}
		h.join(first, last)
	}
}

// rested keeps the shortest rest before a stay that begins a pass.
func (h *history) rested(before *pass, s *stay) {
	if before == nil {
		return
	}
	if rest := units.Days(s.In - before.last); h.shortest == 0 || rest < h.shortest {
		h.shortest = rest
	}
}

// lastDay is the last day on the ground, of a stay of hours its only one.
func (m *LoggedMove) lastDay() units.Date { return max(m.In, m.Out-1) }

// goesOn tells whether a stay belongs to a pass, by the rule of PaddockRecords.
func (p *pass) goesOn(s *stay, rest units.Days) bool {
	switch {
	case p == nil:
		return false
	case s.In <= p.last+1:
		return true
	case s.Group == "" || slices.Contains(p.groups, "") || slices.Contains(p.groups, s.Group):
		return false
	}
	return rest == 0 || units.Days(s.In-p.last) < rest
}

// with gives a pass with one stay more.
func (p *pass) with(s *stay) *pass {
	after := &pass{p.groups, max(p.last, s.lastDay()), max(p.left, s.Out)}
	if !slices.Contains(p.groups, s.Group) {
		after.groups = append(slices.Clip(p.groups), s.Group)
	}
	return after
}

// between gives the pieces of a stay, the first and the one behind the last.
func (h *history) between(s *stay) (first, last int) {
	first = h.split(s.From)
	return first, h.split(s.To)
}

// start gives where a piece begins.
func (h *history) start(i int) units.Length {
	if i == 0 {
		return 0
	}
	return h.pieces[i-1].to
}

// split gives the index of the piece that begins at a place, parting the one that it
// lies in; a border within 2 cm is that place.
func (h *history) split(at units.Length) int {
	i := sort.Search(len(h.pieces), func(i int) bool { return h.pieces[i].to > at-logRound })
	switch {
	case at < logRound:
		return 0
	case i == len(h.pieces) || h.pieces[i].to <= at+logRound:
		return min(i+1, len(h.pieces))
	}
	h.pieces = slices.Insert(h.pieces, i, trodden{at, h.pieces[i].pass})
	return i + 1
}

// join makes one piece of neighbours with one pass, from one piece to another: a log of
// many years stays short.
func (h *history) join(first, last int) {
	from, to := max(0, first-1), min(len(h.pieces), last+1)
	if from >= to {
		return
	}
	joined := h.pieces[:from+1]
	for _, p := range h.pieces[from+1 : to] {
		if before := &joined[len(joined)-1]; before.pass == p.pass {
			before.to = p.to
		} else {
			joined = append(joined, p)
		}
	}
	h.pieces = append(joined, h.pieces[to:]...)
}
