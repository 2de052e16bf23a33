package farm

import (
	"cmp"
	"fmt"
	"maps"
	"math"
	"slices"
	"sort"
	"strconv"
	"strings"

	"example.org/soum/forage"
	"example.org/soum/herd"
	"example.org/soum/internal/document"
	"example.org/soum/internal/english"
	"example.org/soum/internal/season"
	"example.org/soum/internal/sheet"
	"example.org/soum/units"
)

// What the places of a log are held against.
const (
	logSnap  = 1 * units.Millimetre // ours: two borders as near as this are one
	logRound = 2 * units.Centimetre // ours: a place is told to a tenth of a foot, or a centimetre
	logRoom  = 10 * units.Percent   // ours: the area in a log may differ so much from that of the place
	logAlike = 1e-9                 // share of a mass by which neighbours are alike: the digits of a document
)

// LogNote begins what CarryOn writes into the notes of a farm.
const LogNote = "As carried on to "

// CarryOn returns the farm as it stands on a later day, by the log of the moves
// since the document's: today moved on, today's heights, the days of the last bite
// and the animals as they are then, so that a season is planned from there on. The
// given farm is not changed.
//
// Method: day by day from the document's today to the new one: the cuts dated that
// day are taken as made; on the last day of a stay its ground is set to what was left;
// then everything grows a day, on the season's own curve (Regrown, by month, rain and
// soil). Readings of the new day, where there are any, are laid over the outcome: what
// somebody measured is better than what was reckoned, so walk the ground
//
// The land. Names in the log are ids of land. Land that is not in the log grows on. A
// stay on a lane needs from and to, unless its area is that of the whole lane: an area
// alone has no place, and a guess would send stock onto bitten ground. A paddock is
// grazed whole. Area and place that differ by more than a tenth are an error. Later
// stays lie over earlier ones; the pieces become stretches, neighbours alike are
// joined, and borders within a millimetre of one another are one.
//
// The height left is the reading, where the log has one, and else the leave height of
// the rotation, or what stood there where that was less; the land's note tells on how
// much of it. Ground on which followers are still due stands at the leave height, grazed
// today, whatever was read before them: they will have eaten it before anybody returns,
// and a document cannot say that grass is kept for them. The plan has them fed on those
// days, as any plan has followers in its first days: that feed stands on the ground in
// truth. The worms of stays before today are not in the new plan.
//
// The days. The new today is the day to be planned: a stay that begins on it, or later,
// is left out. One that began before and goes on leaves its ground grazed today. Stays
// that were over before the document's own today are in its heights already. Where the
// last ground opened ends within a lane, the rotation's front is put there.
//
// The rest. Head, weight and stage of the groups, and the young weaned by then, become
// those of the day; changes and cuts that are past go. season.from stays as it is: what
// was bitten since counts as bitten this season. Where the account of the soil's water
// would begin later than it did, it begins with the water that was there. The rain of the months since, and the hay in
// store, are yours to put in: the log tells neither what was fed nor what a cut gave, so
// the store stays as it was, and the note of the feed tells what the cuts gave by the
// heights reckoned. Notes of this function begin with "As carried on to", and whatever
// stands behind these words is written anew each time.
//
// The log is that of ReadMoves, "" for no moves; a group that it names is one of the farm. The readings are a list of their own,
// "" for none: columns paddock and height, and from and to for a piece of a lane, as in
// paddock, height (in), from (ft), to (ft).
//
// Errors: a *document error with line, column and mend where the log or the readings are
// wrong, or do not fit the land; a *document error where the new day is before the
// farm's or after its season, or the farm is wrong
//
// Check: TestCarriedOnByHand, TestLogGivesThePlanAgain, TestGrowsOnByTheCurve, TestHerdGoesOn
//
// Source: ours: the rules in DEVELOPERS.md
func (f *Farm) CarryOn(today units.Date, log, readings string) (*Farm, error) {
	if err := f.Check(); err != nil {
		return nil, err
	}
	switch {
	case today < f.Today:
		return nil, document.Wrong("today", today, "is before the day of the farm's heights", "a date from "+f.Today.String()+" to "+f.Season.To.String())
	case today > f.Season.To:
		return nil, document.Wrong("today", today, "is after the season's end", "a date from "+f.Today.String()+" to "+f.Season.To.String()+", or a farm whose season.to is later")
	}
	made, err := settle(f, units.Middle)
	if err != nil {
		return nil, err
	}
	r := &resumed{ready: made, today: today, next: document.Copy(f)}
	r.next.Today = today
	for _, step := range []func() error{
		func() error { return r.readLog(log) }, r.stand, func() error { return r.measure(readings) }, r.writeLand, r.settleGroups, r.carrySoil,
	} {
		if err := step(); err != nil {
			return nil, err
		}
	}
	r.settleRest()
	return r.next, r.next.Check()
}

// resumed is a farm on its way to a later day.
type resumed struct {
	*ready
	today   units.Date
	next    *Farm
	stays   []placed
	grounds []ground
	logged  bool        // there is a log
	outside map[int]out // stays of the log that are left out, by land
	made    []string    // what the cuts since gave
}

// out counts the stays that are left out.
type out struct{ before, later int }

// placed is a stay on land of the farm.
type placed struct {
	stay
	land     int
	from, to units.Length
	last     units.Date // the last day on it, today at the latest
	opens    bool       // it opened the ground; false where it followed others there
	due      bool       // followers are still to come
}

// ground is land whose pieces have histories of their own.
type ground struct {
	land   *Land
	pieces []piece
	on     []placed // the stays on it
	// What the note says.
	measured int
	due      units.Date // the last day on which followers come; 0: none
	under    units.Date // the day on which those who are on it leave; 0: none are
	made     []string   // cuts
}

// piece is a stretch of ground by what stands on it.
type piece struct {
	to     units.Length
	mass   units.Yield
	grazed *units.Date
	unread bool    // the leave height was taken for what nobody read
	was    Stretch // the document's, for what the user wrote there
}

// longestLag gives the days of a rotation's last group behind the leader.
func (r *Rotation) longestLag() int {
	if r == nil {
		return 0
	}
	return int(r.Groups[len(r.Groups)-1].Behind)
}

// readLog finds the ground of every stay that matters: one that a follower could
// have come behind since the document's today, or later.
func (r *resumed) readLog(log string) error {
	if strings.TrimSpace(log) == "" {
		return nil
	}
	stays, err := readStays(log)
	if err != nil {
		return err
	}
	r.logged, r.outside = true, map[int]out{}
	reach := 0
	for i := range r.farm.Rotations {
		reach = max(reach, r.farm.Rotations[i].longestLag())
	}
	for _, s := range stays {
		last := min(max(s.In, s.Out-1), r.today)
		if s.Out > r.today {
			last = r.today // they are on it
		}
		r.count(&s, last)
		if s.In >= r.today || last < r.farm.Today.Add(-reach) {
			continue
		}
		p := placed{stay: s, last: last}
		if p.land, err = r.landNamed(s.Paddock, func(problem, allowed string) error { return s.wrong("paddock", s.Paddock, problem, allowed) }); err != nil {
			return err
		}
		if err := r.knows(&s); err != nil {
			return err
		}
		if err := r.place(&p); err != nil {
			return err
		}
		r.stays = append(r.stays, p)
	}
	slices.SortStableFunc(r.stays, func(a, b placed) int { return cmp.Or(cmp.Compare(a.In, b.In), cmp.Compare(a.line, b.line)) })
	r.follow()
	return nil
}

// count keeps how many stays on a land are left out: over before the document's own
// today, or not begun by the new one.
func (r *resumed) count(s *stay, last units.Date) {
	at := r.farm.landIndex(s.Paddock)
	n := r.outside[at]
	switch {
	case at < 0:
		return
	case s.In >= r.today:
		n.later++
	case last < r.farm.Today:
		n.before++
	}
	r.outside[at] = n
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
	return -1, wrong("is the id of no land", oneOf(name, ids))
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
	return s.wrong("group", s.Group, "is the id of no group", oneOf(s.Group, ids)+"; empty where nobody knows")
}

// oneOf lists ids, not too many, the one that is perhaps meant first.
func oneOf(name string, ids []string) string {
	const most = 8
	if len(ids) > most {
		ids = append(ids[:most:most], "…")
	}
	text := "one of: " + strings.Join(ids, ", ")
	if near := document.Nearest(name, ids); near != "" {
		return "perhaps " + strconv.Quote(near) + "; " + text
	}
	return text
}

// place puts a stay on its land.
func (r *resumed) place(p *placed) error {
	l := &r.farm.Land[p.land]
	var err error
	if p.from, p.to, err = l.between(p.From, p.To, p.wrong); err != nil {
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

// between gives a place on the land, the whole of it where none is told.
func (l *Land) between(from, to units.Length, wrong func(column, text, problem, allowed string) error) (units.Length, units.Length, error) {
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
	case to == 0 || to > end:
		to = end
	}
	return from, to, nil
}

// follow tells the stays that opened ground from those that came behind, and where
// followers are still due. A stay comes behind another where its end lies on ground
// that was grazed within the days of the rotation's last group.
func (r *resumed) follow() {
	for i := range r.stays {
		p := &r.stays[i]
		lag := r.farm.rotationOf(r.farm.Land[p.land].ID).longestLag()
		before := slices.IndexFunc(r.stays[:i], func(b placed) bool {
			return b.land == p.land && b.last.Add(lag) >= p.In && b.from < p.to-logSnap && p.to <= b.to+logSnap
		})
		if p.opens = before < 0; p.opens {
			p.due = lag > 0 && p.last.Add(lag) >= r.today
		} else {
			p.due = r.stays[before].due
		}
	}
}

// stand lets every land go through its days.
func (r *resumed) stand() error {
	for i := range r.farm.Land {
		g := r.begin(i)
		for date := r.farm.Today; date < r.today; date++ {
			r.cut(&g, i, int(date-r.farm.Today))
			if err := r.graze(&g, i, date); err != nil {
				return err
			}
			if err := r.grow(&g, i, int(date-r.farm.Today)); err != nil {
				return err
			}
		}
		if err := r.graze(&g, i, r.today); err != nil {
			return err
		}
		r.grounds = append(r.grounds, g)
	}
	return nil
}

// begin gives the land as the document has it.
func (r *resumed) begin(land int) ground {
	g := ground{land: &r.farm.Land[land]}
	for _, s := range r.stays {
		if s.land == land {
			g.on = append(g.on, s)
		}
	}
	for i, s := range r.input.Lands[land].Stretches {
		p := piece{to: units.Length(s.To), mass: units.Yield(s.Mass)}
		if s.Bitten != season.Never {
			bitten := r.date(s.Bitten)
			p.grazed = &bitten
		}
		if len(g.land.Stretches) > 0 {
			p.was = r.next.Land[land].Stretches[i]
		}
		g.pieces = append(g.pieces, p)
	}
	return g
}

// split gives the index of the piece that begins at a place, parting the one that it
// lies in.
func (g *ground) split(at units.Length) int {
	i := sort.Search(len(g.pieces), func(i int) bool { return g.pieces[i].to > at-logSnap })
	switch {
	case at < logSnap:
		return 0
	case i == len(g.pieces) || g.pieces[i].to <= at+logSnap:
		return min(i+1, len(g.pieces))
	}
	before := g.pieces[i]
	before.to = at
	g.pieces = slices.Insert(g.pieces, i, before)
	return i + 1
}

// within gives the pieces between two places.
func (g *ground) within(from, to units.Length) []piece {
	first := g.split(from)
	last := g.split(to)
	return g.pieces[min(first, last):last]
}

// cut makes the cuts of a day of the document.
func (r *resumed) cut(g *ground, land, day int) {
	date := r.date(day)
	for _, c := range r.input.Cuts {
		if c.Land != land || c.Day != day {
			continue
		}
		g.made = append(g.made, date.String())
		taken := g.mow(units.Length(c.From), units.Length(c.To), units.Yield(c.Stubble), date)
		hay := units.FreshFeed(float64(r.farm.kept(taken)) / float64(r.farm.hayDryMatter()))
		r.made = append(r.made, fmt.Sprintf("the cut of %s on %s gave %s by the heights reckoned", g.land.ID, date, r.text(hay)))
	}
}

// mow cuts what stands above the stubble between two places and gives how much it was.
func (g *ground) mow(from, to units.Length, stubble units.Yield, date units.Date) (taken units.DryMatter) {
	width := float64(g.land.area()) / float64(g.land.length())
	for i, last := g.split(from), g.split(to); i < last; i++ {
		p, start := &g.pieces[i], units.Length(0)
		if i > 0 {
			start = g.pieces[i-1].to
		}
		if p.mass > stubble {
			taken += units.DryMatter(float64(p.mass-stubble) * width * float64(p.to-start))
			p.mass, p.grazed = stubble, &date
		}
	}
	return taken
}

// graze sets the ground of the stays that end on a day.
func (r *resumed) graze(g *ground, land int, date units.Date) error {
	for i := range g.on {
		s := &g.on[i]
		if s.last != date {
			continue
		}
		left, err := r.left(s, land)
		if err != nil {
			return err
		}
		g.note(s, r.today, r.farm.rotationOf(g.land.ID).longestLag())
		day := s.last
		if s.due {
			day = r.today // it will be grazed later still
		}
		for j, all := 0, g.within(s.from, s.to); j < len(all); j++ {
			all[j].graze(left, &day, s.read(), s.due || s.Out > r.today)
		}
	}
	return nil
}

// read tells whether what a stay left was read, and counts.
func (p *placed) read() bool { return p.Left > 0 && !p.due }

// left gives what stands after a stay.
func (r *resumed) left(s *placed, land int) (units.Yield, error) {
	at := &r.lands[land]
	if !s.read() {
		return at.leave, nil
	}
	return min(r.mass(at, s.Left, new(problems)), at.ceiling), nil
}

// note keeps what the land's note says of stays that go on, and of followers.
func (g *ground) note(s *placed, today units.Date, lag int) {
	if s.Out > today {
		g.under = max(g.under, s.Out)
	}
	if s.due && s.opens {
		g.due = max(g.due, s.last.Add(lag))
	}
}

// graze sets what is left: what somebody read, or at the most the leave height, which
// is worth a remark where it is not told of the ground as a whole.
func (p *piece) graze(left units.Yield, day *units.Date, read, told bool) {
	p.grazed = day
	switch {
	case read:
		p.mass, p.unread = left, false
	case p.mass > left:
		p.mass, p.unread = left, !told
	}
}

// grow lets the pieces of a land grow a day of the document.
func (r *resumed) grow(g *ground, land, day int) error {
	for i := range g.pieces {
		var err error
		if g.pieces[i].mass, err = r.grown(land, day, g.pieces[i].mass); err != nil {
			return err
		}
	}
	return nil
}

// grown gives what stands after a day of the season's own growth.
func (r *ready) grown(land, day int, mass units.Yield) (units.Yield, error) {
	ceiling := r.lands[land].ceiling
	after, err := forage.Regrown(mass, ceiling, units.Growth(r.input.Lands[land].Peak[day]), units.Day)
	if units.Impossible(err) {
		return mass, err
	}
	return min(after, ceiling), nil
}

// readingsForm is the list of what somebody measured today.
var readingsForm = sheet.Form{
	Name: "readings", Header: "paddock, height (in), from (ft), to (ft)", Must: []string{"paddock", "height"}, May: []string{"from", "to"},
	Others: true, Ragged: true, MostBytes: mostLogBytes, MostLines: mostLogMoves,
}

// measure lays the readings of today over what was reckoned.
func (r *resumed) measure(readings string) error {
	if strings.TrimSpace(readings) == "" {
		return nil
	}
	s, err := readingsForm.Open(readings)
	if err != nil {
		return err
	}
	read := map[int][]placed{}
	for s.Next() {
		p, height, err := r.reading(s)
		if err != nil {
			return err
		}
		if slices.ContainsFunc(read[p.land], func(b placed) bool { return b.from < p.to-logSnap && p.from < b.to-logSnap }) {
			return s.Wrong("paddock", "is read twice in one place", "one line with the mean of its readings")
		}
		read[p.land] = append(read[p.land], p)
		if err := r.correct(&p, height); err != nil {
			return err
		}
	}
	return s.Err()
}

// correct sets the mass of a place by its height.
func (r *resumed) correct(p *placed, height units.Height) error {
	at, g := &r.lands[p.land], &r.grounds[p.land]
	mass := r.mass(at, height, new(problems))
	g.measured++
	for i, all := 0, g.within(p.from, p.to); i < len(all); i++ {
		all[i].mass, all[i].unread = min(mass, at.ceiling), false
	}
	return nil
}

// reading gives the place and the height of one reading.
func (r *resumed) reading(s *sheet.Sheet) (p placed, height units.Height, err error) {
	p.sheet, p.line = s, s.Line()
	if p.Paddock, err = readPaddock(s); err != nil {
		return p, 0, err
	}
	if p.land, err = r.landNamed(p.Paddock, func(problem, allowed string) error { return s.Wrong("paddock", problem, allowed) }); err != nil {
		return p, 0, err
	}
	if height, err = heightCell.Read(s, "height"); err != nil {
		return p, 0, err
	}
	if p.From, p.To, err = readPlace(s); err != nil {
		return p, 0, err
	}
	l := &r.farm.Land[p.land]
	if p.from, p.to, err = l.between(p.From, p.To, p.wrong); err != nil {
		return p, 0, err
	}
	if ceiling := l.ceiling(r.lands[p.land].pasture); height > ceiling {
		err = s.Wrong("height", "is above the ceiling at which growth ends", "at most "+document.Both(ceiling)+", or a higher ceiling of your own in the farm")
	}
	return p, height, err
}

// writeLand writes the ground into the new document.
func (r *resumed) writeLand() error {
	for i := range r.grounds {
		g, l, at := &r.grounds[i], &r.next.Land[i], &r.lands[i]
		l.Note = r.noted(l.Note, r.remarks(g, i, r.text(at.leaveHeight)))
		g.join()
		l.Height, l.Grazed, l.Stretches = 0, nil, nil
		var pieces []Stretch
		for _, p := range g.pieces {
			height, err := forage.HeightOf(p.mass, at.density)
			if units.Impossible(err) {
				return err
			}
			if p.grazed != nil {
				day := *p.grazed
				p.grazed = &day
			}
			pieces = append(pieces, Stretch{To: p.to, Height: min(height, l.ceiling(at.pasture)), Grazed: p.grazed, Note: p.was.Note, Extra: p.was.Extra})
		}
		if len(pieces) == 1 && pieces[0].Note == "" && len(pieces[0].Extra) == 0 {
			l.Height, l.Grazed = pieces[0].Height, pieces[0].Grazed
		} else {
			l.Stretches = pieces
		}
	}
	return nil
}

// join makes one piece of neighbours alike, and of all of a paddock, of which a cut
// may have taken a part: it is grazed whole, so its mean and its last bite count.
func (g *ground) join() {
	joined, from := g.pieces[:1], units.Length(0)
	for _, p := range g.pieces[1:] {
		last := &joined[len(joined)-1]
		if !g.land.isPaddock() && !last.alike(&p) {
			from = last.to
			joined = append(joined, p)
			continue
		}
		share := units.Yield((p.to - last.to) / (p.to - from))
		last.mass += share * (p.mass - last.mass)
		if last.to = p.to; last.grazed == nil || (p.grazed != nil && *p.grazed > *last.grazed) {
			last.grazed = p.grazed
		}
	}
	g.pieces = joined
}

// alike tells whether two neighbours have one height, one day of the last bite and
// one note.
func (p *piece) alike(next *piece) bool {
	sameDay := p.grazed == next.grazed || (p.grazed != nil && next.grazed != nil && *p.grazed == *next.grazed)
	return sameDay && math.Abs(float64(p.mass-next.mass)) <= logAlike*float64(p.mass) &&
		p.was.Note == next.was.Note && len(p.was.Extra)+len(next.was.Extra) == 0
}

// remarks tells what of a land's figures is reckoned, and how.
func (r *resumed) remarks(g *ground, land int, leave string) []string {
	var all []string
	if g.measured > 0 {
		all = append(all, "heights read that day are taken as they were read")
	}
	if on := r.unread(g); on != "" {
		all = append(all, fmt.Sprintf("nobody read what was left on %s, and the leave height is taken, %s", on, leave))
	}
	if g.due != 0 {
		all = append(all, fmt.Sprintf("followers are due up to %s, and their ground is taken as grazed to the leave height, %s, today", g.due, leave))
	}
	if g.under != 0 {
		all = append(all, fmt.Sprintf("animals are on it up to %s, and it is taken as grazed today: the plan has them go on", g.under))
	}
	if len(g.made) > 0 {
		all = append(all, "cut as written on "+strings.Join(g.made, " and "))
	}
	if len(all) == 0 && !g.trodden(r.farm.Today) && r.today > r.farm.Today {
		all = append(all, r.untouched(land))
	}
	if n := r.outside[land].before; n > 0 {
		all = append(all, fmt.Sprintf("%s before %s left out, being in the document's heights already", english.Plural(float64(n), "stay"), r.farm.Today))
	}
	if n := r.outside[land].later; n > 0 {
		all = append(all, fmt.Sprintf("%s from %s on left out, being still to come", english.Plural(float64(n), "stay"), r.today))
	}
	return all
}

// trodden tells whether anybody was on it since a day.
func (g *ground) trodden(since units.Date) bool {
	return slices.ContainsFunc(g.on, func(p placed) bool { return p.last >= since })
}

// untouched tells of a land on which nobody was why its heights are what they are.
func (r *resumed) untouched(land int) string {
	const grown = "grown on from the document's heights"
	switch {
	case !r.logged:
		return "no log, so " + grown
	case r.outside[land] != out{}:
		return grown
	}
	return "not in the log, so " + grown
}

// unread tells how much of a land stands as taken and not as read, "" for nothing.
func (r *resumed) unread(g *ground) string {
	from, on := units.Length(0), units.Length(0)
	for _, p := range g.pieces {
		if p.unread {
			on += p.to - from
		}
		from = p.to
	}
	switch {
	case on == 0:
		return ""
	case on >= from-logSnap:
		return "the whole of it"
	}
	return r.text(on) + " of it"
}

// noted puts remarks behind what the user wrote, in place of earlier ones.
func (r *resumed) noted(note string, remarks []string) string {
	own, _, _ := strings.Cut(note, LogNote)
	own = strings.TrimSpace(own)
	if len(remarks) == 0 {
		return own
	}
	if own != "" && !strings.ContainsAny(own[len(own)-1:], ".!?:;") {
		own += "."
	}
	return strings.TrimSpace(own + " " + LogNote + r.today.String() + ": " + strings.Join(remarks, "; ") + ".")
}

// settleGroups makes the animals those of today.
func (r *resumed) settleGroups() error {
	for i := range r.next.Groups {
		g := &r.next.Groups[i]
		if len(g.Events)+len(g.Births) == 0 && g.Gain == 0 && len(r.farm.weanings(g.ID)) == 0 {
			continue
		}
		r.carry(g, r.herd[i].On(r.today))
	}
	after, err := r.next.herds()
	if err != nil {
		return err
	}
	for i := range after {
		if state := r.herd[i].On(r.today); after[i].On(r.today).Stage != state.Stage { // a birth that is past would have it otherwise
			r.next.Groups[i].today(r.today).Stage = &state.Stage
		}
	}
	return nil
}

// carry puts a group's state on a day into the document and takes out what is past. A
// figure that a group cannot begin with becomes an event of that day.
func (r *resumed) carry(g *Group, state herd.State) {
	g.Events = slices.DeleteFunc(g.Events, func(e Event) bool { return e.Date <= r.today })
	for j := range g.Births {
		if b := &g.Births[j]; b.Weaned != nil && *b.Weaned <= r.today {
			b.Young, b.Into = 0, "" // they are among the others
		}
	}
	g.Stage = state.Stage
	if g.Grown != 0 && state.Weight >= g.Grown {
		g.today(r.today).Weight = &state.Weight
	} else if class, err := g.class(); err != nil || g.Weight != 0 || state.Weight != class.Weight {
		g.Weight = state.Weight
	}
	if state.Head > 0 || g.Head == 0 {
		g.Head = state.Head
	} else {
		g.today(r.today).Head = &state.Head
	}
}

// today gives the group's event of a day, made where there is none.
func (g *Group) today(date units.Date) *Event {
	at := slices.IndexFunc(g.Events, func(e Event) bool { return e.Date == date })
	if at < 0 {
		g.Events = append(g.Events, Event{Date: date})
		at = len(g.Events) - 1
	}
	return &g.Events[at]
}

// carrySoil lets an account of the soil's water that would begin later than it did
// begin with the water that was there.
func (r *resumed) carrySoil() error {
	b := r.next.Rain.Balance
	if b == nil {
		return nil
	}
	first, _ := r.next.accountSpan()
	if first <= r.soilFirst {
		return nil
	}
	bucket, err := b.bucket(units.Middle)
	if units.Impossible(err) {
		return err
	}
	start := units.Fraction(r.soil[first-r.soilFirst-1].Store / bucket.Holds)
	b.Start = &start
	maps.DeleteFunc(b.Irrigation, func(key string, _ units.RainDepth) bool { return monthOfKey(key) < first })
	return nil
}

// settleRest sets the season, the cuts, the fronts and the store.
func (r *resumed) settleRest() {
	f := r.next
	f.Cuts = slices.DeleteFunc(f.Cuts, func(c Cut) bool { return c.Date < r.today })
	if r.today > r.farm.Today {
		f.Feed.Note = r.noted(f.Feed.Note, r.hayRemarks())
	}
	for i := range f.Rotations {
		r.settleFront(&f.Rotations[i])
	}
}

// hayRemarks tells what the store leaves out.
func (r *resumed) hayRemarks() []string {
	all := []string{"hay in store is carried over as it stood, nothing taken off for what was fed since: put in what lies there now"}
	if len(r.made) > 0 {
		all = append(append(all, r.made...), "none of that is in the store yet")
	}
	return all
}

// settleFront puts a rotation's front where the ground opened last ends.
func (r *resumed) settleFront(rotation *Rotation) {
	for i := len(r.stays) - 1; i >= 0; i-- {
		p := &r.stays[i]
		l := &r.farm.Land[p.land]
		if !p.opens || p.In < r.farm.Today || !slices.Contains(rotation.Land, l.ID) {
			continue
		}
		rotation.Front = nil
		if !l.isPaddock() && p.to < l.Length-logRound {
			rotation.Front = &Front{Land: l.ID, At: p.to}
		}
		return
	}
}
