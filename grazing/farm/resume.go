package farm

import (
	"fmt"
	"slices"
	"strings"

	"example.org/soum/internal/document"
	"example.org/soum/internal/english"
	"example.org/soum/internal/season"
	"example.org/soum/internal/sheet"
	"example.org/soum/units"
)

// LogNote begins what CarryOn writes into the notes of a farm.
const LogNote = "As carried on to "

// CarryOn returns the farm as it stands on a later day, by the log of the moves
// since the document's: today moved on, today's heights, what is still to come on ground
// that was opened, and the animals as they are then, so that a season is planned from
// there on. The given farm is not changed.
//
// Method: the season is stepped from the document's today to the evening before the new
// one as a plan steps it, cuts, followers, growth and all, but the leaders graze the ground
// that the log has for them in place of what the plan would choose. So what is due, stays
// and fronts are those that the rules give that ground. A plan that was followed, and
// written down, gives the document of Followed. Readings of the new day, where there are
// any, are laid over the outcome, and leave alone what is due: what somebody measured is
// better than what was reckoned, so walk the ground
//
// The land. Names in the log are ids of land. Land that is not in the log grows on. A
// stay on a lane needs from and to, unless its area is that of the whole lane: an area
// alone has no place, and a guess would send stock onto bitten ground. A paddock is
// grazed whole. Area and place that differ by more than a tenth are an error. Borders
// as near as the digits of a document go are one, and one within 2 cm of a lane's end is that.
//
// Who was there. A stay of a group that leads is the leaders' ground: they eat what they
// want of it, not below the leave height, and grass is kept there for followers as the
// rules keep it, on the days on which these want it. A stay of a group that follows confirms
// that, and tells the day of the last bite. Where the log does not name the group, a stay
// behind another, within the days of the rotation's last group, follows it; else it leads.
// On days of which the log tells nothing the leaders graze nowhere: the log is the truth, and
// a gap in it is fed, or was another's ground. Two exceptions: what the document has under
// way goes on as booked until the log tells where they went, and on days on which leaders
// want nothing, so that no log would name them, the rules choose for those who follow. What
// cannot be stepped leaves the leave height, or what stood there where that was less: a stay
// of a group of no or another rotation, or of followers where nobody led.
//
// The height left. Where the log has one, it is the mean of that ground in the evening of
// the stay's last day, if nobody is still to come there: with followers due, what leaders left
// changes nothing. Where nobody read it, it is what the stepping left.
//
// The days. The new today is the day to be planned: a stay that begins on it, or later,
// is left out, and so is one that was over before the document's own today, being in its
// heights already. A stay in a paddock that goes on is kept as the rules plan it, whatever
// day the log has for its end; a strip that goes on is kept for the days that the log has.
//
// The rest. Head, weight and stage of the groups, and the young weaned by then, become
// those of the day, whatever animals the log counts; changes and cuts that are past go.
// season.from stays as it is: what was bitten since counts as bitten this season. The
// account of the soil's water begins where it began (rain.balance.begun). The rain of the
// months since, and the hay in store, are yours to put in: the log tells neither what was
// fed nor what a cut gave, so the store stays as it was, and the note of the feed tells what
// the cuts gave by the heights reckoned, and what was not found on the logged ground. Notes
// of this function begin with "As carried on to", and whatever stands behind these words is
// written anew each time. The worms of stays before today are not in the new plan.
//
// Note: of a move left before its time because of a cut that was still to come, a log
// tells the days and not the plan; with more than one move a day it does not tell which
// ground was which move's, and a piece is taken for what it holds.
//
// The log is that of ReadMoves, "" for no moves; a group that it names is one of the farm.
// The readings are a list of their own, "" for none: columns paddock and height, and from
// and to for a piece of a lane, as in paddock, height (in), from (ft), to (ft).
//
// Errors: a *document error with line, column and mend where the log or the readings are
// wrong, or do not fit the land; a *document error where the new day is before the
// farm's or after its season, or the farm is wrong
//
// Check: TestCarriedOnByHand, TestLogGivesThePlanAgain, TestLogOfFarms, TestReadingsKeepWhatIsDue,
// TestGrowsOnByTheCurve, TestHerdGoesOn
//
// Source: ours: the rules in DEVELOPERS.md
func (f *Farm) CarryOn(today units.Date, log, readings string) (*Farm, error) {
	r, err := f.resume(today)
	if err != nil {
		return nil, err
	}
	in := r.input
	if in.Log, err = r.readLog(log); err != nil {
		return nil, err
	}
	result, err := r.goOn(&in, func(morning *season.State) error { return r.measure(readings, morning) })
	if err != nil {
		return nil, err
	}
	r.remark(result)
	return r.next, r.next.Check()
}

// readingsForm is the list of what somebody measured today.
var readingsForm = sheet.Form{
	Name: "readings", Header: "paddock, height (in), from (ft), to (ft)", Must: []string{"paddock", "height"}, May: []string{"from", "to"},
	Others: true, Ragged: true, MostBytes: mostLogBytes, MostLines: mostLogMoves,
}

// measure lays the readings of today over what was reckoned.
func (r *resumed) measure(readings string, morning *season.State) error {
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
		at, pieces := &r.lands[p.land], &morning.Lands[p.land]
		r.told[p.land].measured = true
		for i, last := split(pieces, float64(p.from)), split(pieces, float64(p.to)); i < last; i++ {
			(*pieces)[i].Mass = float64(min(r.mass(at, height, new(problems)), at.ceiling))
		}
	}
	return s.Err()
}

// split parts the stretch that a place lies in, and what is due on it, and gives the index
// of the one that begins there.
func split(pieces *[]season.Stretch, at float64) int {
	from := 0.0
	for i, p := range *pieces {
		switch {
		case at <= from+float64(logSnap):
			return i
		case at < p.To-float64(logSnap):
			before, behind := p, p
			before.To = at
			before.Due, behind.Due = slices.Clone(p.Due), slices.Clone(p.Due)
			for j := range p.Due {
				before.Due[j].Eat *= (at - from) / (p.To - from)
				behind.Due[j].Eat -= before.Due[j].Eat
			}
			*pieces = slices.Replace(*pieces, i, i+1, before, behind)
			return i + 1
		}
		from = p.To
	}
	return len(*pieces)
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
	if p.from, p.to, err = r.between(p.land, p.From, p.To, p.wrong); err != nil {
		return p, 0, err
	}
	if ceiling := l.ceiling(r.lands[p.land].pasture); height > ceiling {
		err = s.Wrong("height", "is above the ceiling at which growth ends", "at most "+document.Both(ceiling)+", or a higher ceiling of your own in the farm")
	}
	return p, height, err
}

// remark writes what was reckoned, and how, into the notes of the land and of the feed.
func (r *resumed) remark(result *season.Result) {
	for i := range r.next.Land {
		r.next.Land[i].Note = r.noted(r.next.Land[i].Note, r.remarks(i))
	}
	if r.over > 0 {
		r.next.Feed.Note = r.noted(r.next.Feed.Note, r.hayRemarks(result))
	}
}

// remarks tells what of a land's figures is reckoned, and how.
func (r *resumed) remarks(land int) (all []string) {
	t, leave := &r.told[land], r.text(r.lands[land].leaveHeight)
	say := func(when bool, format string, args ...any) {
		if when {
			all = append(all, fmt.Sprintf(format, args...))
		}
	}
	say(t.measured, "heights read that day are taken as they were read")
	say(t.unread > 0, "nobody read what was left after %s, and it is reckoned by what they wanted, not below the leave height, %s",
		english.Plural(float64(t.unread), "stay"), leave)
	say(t.bare > 0, "what %s took cannot be reckoned, and the leave height is taken, %s", english.Plural(float64(t.bare), "stay"), leave)
	say(t.under != 0, "animals are on it up to %s by the log, and the plan has them go on by its rules", t.under)
	var cuts []string
	for _, c := range r.input.Cuts {
		if c.Land == land && c.Day < r.over {
			cuts = append(cuts, r.date(c.Day).String())
		}
	}
	say(len(cuts) > 0, "cut as written on %s", strings.Join(cuts, " and "))
	if len(all) == 0 && r.over > 0 && t.stays == 0 {
		all = append(all, r.untouched(land))
	}
	say(t.before > 0, "%s before %s left out, being in the document's heights already", english.Plural(float64(t.before), "stay"), r.start)
	say(t.later > 0, "%s from %s on left out, being still to come", english.Plural(float64(t.later), "stay"), r.today)
	return all
}

// untouched tells of a land on which nobody was why its heights are what they are.
func (r *resumed) untouched(land int) string {
	const grown = "grown on from the document's heights"
	switch t := &r.told[land]; {
	case !r.logged:
		return "no log, so " + grown
	case t.before+t.later > 0:
		return grown
	}
	return "not in the log, so " + grown
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

// hayRemarks tells what the store leaves out.
func (r *resumed) hayRemarks(result *season.Result) []string {
	all := []string{"hay in store is carried over as it stood, nothing taken off for what was fed since: put in what lies there now"}
	if fed := r.fed(result); r.logged && fed > 0 {
		all = append(all, "what grazers did not find on the logged ground comes to "+r.text(r.farm.asFed(fed))+" of hay")
	}
	for day := range r.over {
		if made := r.made(result.Days[day : day+1]); made > 0 {
			all = append(all, fmt.Sprintf("the cut of %s gave %s by the heights reckoned", r.date(day), r.text(made)))
		}
	}
	if len(all) > 1 {
		all = append(all, "none of that is in the store yet")
	}
	return all
}
