package farm

import (
	"example.org/soum/internal/english"
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"

	"example.org/soum/forage"
	"example.org/soum/herd"
	"example.org/soum/internal/document"
	"example.org/soum/internal/rows"
	"example.org/soum/units"
)

// longestPlan keeps a slip in a year from asking for a plan of centuries.
const longestPlan = 1100

// mostRain is the most rain of a month that package rainfall reckons with.
const mostRain = 1000 * units.RainMetre

// orOwnRow is what may stand in place of the name of a row.
const orOwnRow = ", or a row of your own"

// mostMoves is the most moves a day: one an hour.
const mostMoves = 24

// Check tells the first thing that is wrong with the farm, with its path in
// the document, its value and what is allowed; nil where nothing is.
func (f *Farm) Check() error {
	if f == nil {
		return document.Wrong("farm", "nil", "is no document", "a farm, such as ReadFarm gives")
	}
	for _, check := range []func() error{f.checkSeason, f.checkLand, f.checkGroups, f.checkRotations, f.checkDue, f.checkCuts, f.checkRain, f.checkRest} {
		if err := check(); err != nil {
			return err
		}
	}
	return nil
}

func (f *Farm) checkSeason() error {
	switch {
	case f.Version != 1:
		return document.Wrong("version", f.Version, "is no known version of the form", "1")
	case f.Season.To < f.Season.From:
		return document.Wrong("season.to", f.Season.To, "is before season.from", "a date from "+f.Season.From.String()+" on")
	case f.Season.To < f.Today:
		return document.Wrong("season.to", f.Season.To, "is before today", "a date from "+f.Today.String()+" on")
	case f.Season.To.Sub(f.Today) > longestPlan:
		return document.Wrong("season.to", f.Season.To, "is too far off", fmt.Sprintf("a date within %d days of today", longestPlan))
	}
	return nil
}

func (f *Farm) checkLand() error {
	if len(f.Land) == 0 {
		return document.Wrong("land", "[]", "holds no land", "at least one lane or paddock")
	}
	for i := range f.Land {
		if err := f.Land[i].check(f.landIndex(f.Land[i].ID) < i, f.Today); err != nil {
			return document.InList("land", i, err)
		}
	}
	return nil
}

func (l *Land) check(twice bool, today units.Date) error {
	if err := document.CheckID(l.ID, twice); err != nil {
		return err
	}
	if err := l.checkSize(); err != nil {
		return err
	}
	pasture, err := l.pasture()
	if err != nil {
		return document.NoRow("pasture", l.Pasture.Name, err, orOwnRow)
	}
	if err := rows.CheckPasture(pasture); err != nil {
		return document.Inside("pasture", err)
	}
	if err := l.checkStand(pasture, today); err != nil {
		return err
	}
	if err := l.Stay.check(l, today); err != nil {
		return document.Inside("stay", err)
	}
	return l.checkTests(today)
}

func (l *Land) checkSize() error {
	lane := l.Width != 0 || l.Length != 0
	switch {
	case lane && l.Area != 0:
		return document.Wrong("area", l.Area, "stands beside width or length: a lane has those, a paddock an area", "one or the other")
	case !lane && !(l.Area > 0):
		return document.NotAbove0("area", l.Area, "an area above 0, or width and length above 0")
	case lane && !(l.Width > 0):
		return document.NotAbove0("width", l.Width, "a length above 0")
	case lane && !(l.Length > 0):
		return document.NotAbove0("length", l.Length, "a length above 0")
	case l.Width > 1e5 || l.Length > 1e5 || l.Area > 1e10:
		return document.Wrong("", l.ID, "is larger than any farm", "at most 100 km either way")
	}
	return nil
}

// checkStand checks today's heights.
func (l *Land) checkStand(pasture *forage.Pasture, today units.Date) error {
	ceiling := l.ceiling(pasture)
	condition := l.condition()
	if _, err := pasture.Density(condition); err != nil && l.Density == 0 {
		return document.Wrong("condition", strconv.Quote(condition.String()), "is a condition that the pasture row has no density for", "another condition, or a density of your own")
	}
	switch {
	case l.Density < 0:
		return document.Wrong("density", l.Density, "is negative", "a density above 0")
	case l.Yield < 0:
		return document.Wrong("yield", l.Yield, "is negative", "a yield above 0")
	case !(ceiling > 0):
		return document.NotAbove0("ceiling", ceiling, "the height at which growth ends")
	case l.MowAbove < 0:
		return document.Wrong("mow_above", l.MowAbove, "is negative", "a height above 0")
	case l.Legume != nil && !(*l.Legume >= 0 && *l.Legume <= 1):
		return document.Wrong("legume", *l.Legume, "is no share", "0 % to 100 %")
	case len(l.Stretches) > 0 && l.isPaddock():
		return document.Wrong("stretches", len(l.Stretches), "stretches cannot be grazed apart: a paddock is grazed whole", "height, and no stretches")
	case len(l.Stretches) > 0 && l.Height != 0:
		return document.Wrong("height", l.Height, "stands beside stretches", "one height for the whole, or stretches")
	case len(l.Stretches) > 0 && l.Grazed != nil:
		return document.Wrong("grazed", *l.Grazed, "stands beside stretches", "one date for the whole, or one in each stretch")
	}
	if len(l.Stretches) == 0 {
		return checkHeight(l.Height, l.Grazed, ceiling, today)
	}
	from := units.Length(0)
	for i, s := range l.Stretches {
		if !(s.To > from) {
			return document.InList("stretches", i, document.Wrong("to", s.To, "is not beyond the stretch before it", "a distance above "+document.Both(from)))
		}
		from = s.To
		for j := range s.Due {
			if err := s.Due[j].check(today); err != nil {
				return document.InList("stretches", i, document.InList("due", j, err))
			}
		}
		if err := checkHeight(s.Height, s.Grazed, ceiling, today); err != nil {
			return document.InList("stretches", i, err)
		}
	}
	if difference := from - l.Length; difference > 1e-6*l.Length || difference < -1e-6*l.Length {
		return document.InList("stretches", len(l.Stretches)-1, document.Wrong("to", from, "does not end where the lane does", document.Both(l.Length)))
	}
	return nil
}

// check holds a visit still to come against today.
func (d *Due) check(today units.Date) error {
	switch {
	case d.Date < today || d.Date.Sub(today) > longestPlan:
		return document.Wrong("date", d.Date, "is before today, or too far off", "a date from "+today.String()+" on")
	case !(d.Eat >= 0):
		return document.Wrong("eat", d.Eat, "is negative", "dry matter of the whole stretch, 0 or more")
	case !(d.Use > 0 && d.Use <= 1):
		return document.Wrong("use", d.Use, "is not a share", "above 0 % and up to 100 %")
	}
	return nil
}

// check holds a stay against today.
func (stay *Stay) check(l *Land, today units.Date) error {
	whole := func(d units.Days) bool { return d == units.Days(int(d)) && d >= 0 && d <= longestPlan }
	switch {
	case stay == nil:
		return nil
	case !l.isPaddock():
		return document.Wrong("", strconv.Quote(l.ID), "is a lane, grazed in strips", "due of its stretches")
	case stay.From >= today || today.Sub(stay.From) > longestPlan:
		return document.Wrong("from", stay.From, "is not before today", "its first day, before "+today.String())
	case !whole(stay.Planned) || stay.Planned < 1:
		return document.Wrong("planned", stay.Planned, "is not a whole number of days", "1 day or more, in whole days")
	case !whole(stay.Days):
		return document.Wrong("days", stay.Days, "is not a whole number of days", "1 day or more, in whole days; as planned if left out")
	case stay.First != nil && !(*stay.First > 0 && *stay.First <= 1):
		return document.Wrong("first", *stay.First, "is not a share", "above 0 % and up to 100 %")
	}
	return nil
}

func checkHeight(height units.Height, grazed *units.Date, ceiling units.Height, today units.Date) error {
	switch {
	case !(height > 0):
		return document.NotAbove0("height", height, "today's height, above 0")
	case height > ceiling:
		return document.Wrong("height", height, "is above the ceiling at which growth ends", "at most "+document.Both(ceiling)+", or a higher ceiling of your own")
	case grazed != nil && *grazed > today:
		return document.Wrong("grazed", *grazed, "is after today", "a date up to "+today.String())
	}
	return nil
}

func (f *Farm) checkGroups() error {
	if len(f.Groups) == 0 {
		return document.Wrong("groups", "[]", "holds no animals", "at least one group")
	}
	for i := range f.Groups {
		if err := f.checkGroup(i); err != nil {
			return document.InList("groups", i, err)
		}
	}
	return nil
}

func (f *Farm) checkGroup(i int) error {
	g := &f.Groups[i]
	if err := document.CheckID(g.ID, f.groupIndex(g.ID) < i); err != nil {
		return err
	}
	class, err := g.class()
	if err != nil {
		return document.NoRow("class", g.Class.Name, err, orOwnRow)
	}
	if err := rows.CheckClass(class); err != nil {
		return document.Inside("class", err)
	}
	if err := g.check(class); err != nil {
		return err
	}
	return f.checkBirths(g, class)
}

func (g *Group) check(class *herd.Class) error {
	weight := g.Weight
	if weight == 0 {
		weight = class.Weight
	}
	switch {
	case !(g.Head >= 0 && g.Head <= 1e6):
		return document.Wrong("head", g.Head, "is negative or beyond counting", "a number of animals, 0 or more")
	case g.Weight < 0:
		return document.Wrong("weight", g.Weight, "is negative", "the live weight of one animal, above 0")
	case !(g.Gain >= 0):
		return document.Wrong("gain", g.Gain, "is negative", "what one animal gains in a day, above 0")
	case g.Grown != 0 && g.Gain == 0:
		return document.Wrong("grown", g.Grown, "stands without gain", "gain beside it, or neither")
	case g.Grown != 0 && !(g.Grown > weight):
		return document.Wrong("grown", g.Grown, "is not above the weight of "+weight.In(units.Metric), "the live weight at which growth ends, above the weight")
	}
	if err := checkStage(class, g.Stage); err != nil {
		return err
	}
	for i := range g.Events {
		if err := g.Events[i].check(class); err != nil {
			return document.InList("events", i, err)
		}
	}
	return nil
}

func (e *Event) check(class *herd.Class) error {
	switch {
	case e.Head == nil && e.Weight == nil && e.Stage == nil:
		return document.Wrong("", e.Date, "changes nothing", "head, weight or stage")
	case e.Head != nil && !(*e.Head >= 0 && *e.Head <= 1e6):
		return document.Wrong("head", *e.Head, "is negative or beyond counting", "the number from that day on, 0 or more")
	case e.Weight != nil && !(*e.Weight > 0):
		return document.Wrong("weight", *e.Weight, "is 0 or negative", "a live weight above 0")
	case e.Stage != nil:
		return checkStage(class, *e.Stage)
	}
	return nil
}

func checkStage(class *herd.Class, stage herd.Stage) error {
	if stage == 0 {
		return nil
	}
	if _, err := class.IntakeAt(stage); err != nil {
		return document.Wrong("stage", strconv.Quote(stage.String()), "is no stage of this class", "one of: "+stagesOf(class))
	}
	return nil
}

// stagesOf lists the stages that a class has figures for.
func stagesOf(class *herd.Class) string {
	var all []string
	for _, row := range class.Intake {
		all = append(all, row.Stage.String())
	}
	return strings.Join(all, ", ")
}

func (f *Farm) checkRotations() error {
	if len(f.Rotations) == 0 {
		return document.Wrong("rotations", "[]", "holds no rotation", "at least one, with land and groups")
	}
	for i := range f.Rotations {
		if err := f.checkRotation(i); err != nil {
			return document.InList("rotations", i, err)
		}
	}
	return nil
}

func (f *Farm) checkRotation(i int) error {
	r := &f.Rotations[i]
	if len(r.Land) == 0 {
		return document.Wrong("land", "[]", "holds no land", "ids of land, in order")
	}
	if len(r.Groups) == 0 {
		return document.Wrong("groups", "[]", "holds no groups", "groups, the leader first")
	}
	for j, id := range r.Land {
		if f.landIndex(id) < 0 {
			return document.InList("land", j, document.Wrong("", strconv.Quote(id), "is the id of no land", "the id of land"))
		}
		inLand := func(r *Rotation) int { return slices.Index(r.Land, id) }
		if before, at := f.firstIn(inLand); before != i || at != j {
			return document.InList("land", j, document.Wrong("", strconv.Quote(id), fmt.Sprintf("stands in rotations[%d].land[%d] already", before, at), "each land in one rotation, once"))
		}
		if err := f.checkHeights(r, id); err != nil {
			return err
		}
	}
	if err := f.checkMembers(i); err != nil {
		return err
	}
	if err := r.check(); err != nil {
		return err
	}
	return document.Inside("front", f.checkFront(r))
}

// firstIn gives the first rotation in which something has a place, and the place.
func (f *Farm) firstIn(in func(*Rotation) int) (rotation, at int) {
	for i := range f.Rotations {
		if at := in(&f.Rotations[i]); at >= 0 {
			return i, at
		}
	}
	return -1, -1
}

func (f *Farm) checkFront(r *Rotation) error {
	if r.Front == nil {
		return nil
	}
	if !slices.Contains(r.Land, r.Front.Land) {
		return document.Wrong("land", strconv.Quote(r.Front.Land), "is no land of the rotation", "one of: "+english.Listed(r.Land))
	}
	l := &f.Land[f.landIndex(r.Front.Land)]
	switch {
	case l.isPaddock():
		return document.Wrong("land", strconv.Quote(l.ID), "is a paddock, grazed whole", "a lane, or no front")
	case !(r.Front.At > 0 && r.Front.At < l.Length):
		return document.Wrong("at", r.Front.At, "is no place within the lane", "above 0 and below "+document.Both(l.Length))
	}
	return nil
}

// checkHeights sees to it that on each land ceiling stands above turn-in and
// turn-in above what is left.
func (f *Farm) checkHeights(r *Rotation, id string) error {
	l := &f.Land[f.landIndex(id)]
	pasture, _ := l.pasture()
	turnIn, leave, ceiling := r.turnIn(pasture), r.leave(pasture), l.ceiling(pasture)
	least := r.LeastTurnIn
	switch {
	case !(leave > 0):
		return document.NotAbove0("leave", leave, "a height above 0")
	case !(leave < turnIn):
		return document.Wrong("leave", leave, "is not below the turn-in height on "+strconv.Quote(id), "below "+document.Both(turnIn))
	case least != 0 && !(least > leave && least <= turnIn):
		return document.Wrong("least_turn_in", least, "is not between leave and turn-in on "+strconv.Quote(id), "above "+document.Both(leave)+" and up to "+document.Both(turnIn))
	case !(turnIn < ceiling):
		return document.Wrong("turn_in", turnIn, "is not below the ceiling of "+strconv.Quote(id), "below "+document.Both(ceiling))
	}
	return nil
}

// checkDue sees to it that who is due on land is in its rotation.
func (f *Farm) checkDue() error {
	for i := range f.Land {
		r := f.rotationOf(f.Land[i].ID)
		for j, s := range f.Land[i].Stretches {
			for k, d := range s.Due {
				if r == nil || r.place(d.Group) < 0 {
					err := document.Wrong("group", strconv.Quote(d.Group), "is not a group of the land's rotation", "one of its groups")
					return document.InList("land", i, document.InList("stretches", j, document.InList("due", k, err)))
				}
			}
		}
	}
	return nil
}

func (f *Farm) checkMembers(rotation int) error {
	members := f.Rotations[rotation].Groups
	for j := range members {
		m := &members[j]
		if f.groupIndex(m.Group) < 0 {
			return document.InList("groups", j, document.Wrong("group", strconv.Quote(m.Group), "is the id of no group", "the id of a group"))
		}
		inGroups := func(r *Rotation) int { return r.place(m.Group) }
		if before, at := f.firstIn(inGroups); before != rotation || at != j {
			return document.InList("groups", j, document.Wrong("group", strconv.Quote(m.Group), fmt.Sprintf("stands in rotations[%d].groups[%d] already", before, at), "each group in one rotation, once"))
		}
		behind := units.Days(0)
		if j > 0 {
			behind = members[j-1].Behind
		}
		switch {
		case j == 0 && m.Behind != 0:
			return document.InList("groups", j, document.Wrong("behind", m.Behind, "is not 0, and the first group leads", "0 days"))
		case m.Behind < behind:
			return document.InList("groups", j, document.Wrong("behind", m.Behind, "is less than the group before it", document.Both(behind)+" or more"))
		case m.Behind != units.Days(int(m.Behind)) || m.Behind > longestPlan:
			return document.InList("groups", j, document.Wrong("behind", m.Behind, "is not in whole days", "0 days, 1 day, 2 days and so on"))
		}
	}
	return nil
}

// place gives a group's place in the rotation, -1 where it has none.
func (r *Rotation) place(group string) int {
	for i := range r.Groups {
		if r.Groups[i].Group == group {
			return i
		}
	}
	return -1
}

func (r *Rotation) check() error {
	switch {
	case !(r.ShortestRest >= 1) || r.ShortestRest != units.Days(int(r.ShortestRest)) || r.ShortestRest > longestPlan:
		return document.Wrong("shortest_rest", r.ShortestRest, "is no rest in whole days", "1 day or more, in whole days")
	case r.LongestStay != 0 && (!(r.LongestStay >= 1) || r.LongestStay != units.Days(int(r.LongestStay)) || r.LongestStay > longestPlan):
		return document.Wrong("longest_stay", r.LongestStay, "is not a whole number of days", "1 day or more, in whole days")
	case r.MovesADay < 0 || r.MovesADay > mostMoves:
		return document.Wrong("moves_a_day", r.MovesADay, "is no number of moves", "a whole number from 1 to 24")
	case r.ShortestStrip < 0:
		return document.Wrong("shortest_strip", r.ShortestStrip, "is negative", "a length above 0")
	}
	return nil
}

func (f *Farm) checkCuts() error {
	for i := range f.Cuts {
		if err := f.checkCut(&f.Cuts[i]); err != nil {
			return document.InList("cuts", i, err)
		}
	}
	return nil
}

func (f *Farm) checkCut(c *Cut) error {
	at := f.landIndex(c.Land)
	switch {
	case at < 0:
		return document.Wrong("land", strconv.Quote(c.Land), "is the id of no land", "the id of land")
	case c.Date < f.Today || c.Date > f.Season.To:
		return document.Wrong("date", c.Date, "is outside the plan", "a date from today to the season's end")
	case !(c.Stubble > 0):
		return document.NotAbove0("stubble", c.Stubble, "a height above 0")
	case c.From < 0 || c.To < 0 || c.To > f.Land[at].length() || (c.To != 0 && c.To <= c.From) || c.From >= f.Land[at].length():
		return document.Wrong("to", c.To, "makes no piece of the land with from", "from 0 to "+document.Both(f.Land[at].length()))
	}
	return nil
}

// isMonth tells whether a text is a month such as "2000-04".
func isMonth(text string) bool {
	_, err := firstOfMonth(text)
	return err == nil && len(text) == len("2000-04")
}

func (f *Farm) checkRain() error {
	if n := len(f.Rain.Normal); n != 0 && n != 12 {
		return document.Wrong("rain.normal", n, "months are not twelve", "twelve depths, January first")
	}
	for i, depth := range f.Rain.Normal {
		if !(depth >= 0) {
			return document.Wrong(fmt.Sprintf("rain.normal[%d]", i), depth, "is negative", "a depth of 0 or more")
		}
		if depth > mostRain {
			return document.Wrong(fmt.Sprintf("rain.normal[%d]", i), depth, "is more than ever falls", "at most "+document.Both(mostRain))
		}
	}
	for _, key := range slices.Sorted(maps.Keys(f.Rain.Months)) {
		switch {
		case !isMonth(key):
			return document.Wrong("rain.months."+key, strconv.Quote(key), "is no month", `a month such as "2000-04"`)
		case !(f.Rain.Months[key] >= 0):
			return document.Wrong("rain.months."+key, f.Rain.Months[key], "is negative", "a depth of 0 or more")
		case f.Rain.Months[key] > mostRain:
			return document.Wrong("rain.months."+key, f.Rain.Months[key], "is more than ever falls", "at most "+document.Both(mostRain))
		}
	}
	if f.Rain.Year < 0 {
		return document.Wrong("rain.year", f.Rain.Year, "is negative", "a depth above 0")
	}
	return f.checkBalance()
}

func (f *Farm) checkRest() error {
	switch {
	case f.Feed.Hay < 0:
		return document.Wrong("feed.hay", f.Feed.Hay, "is negative", "0 or more")
	case f.Feed.DryMatter < 0 || f.Feed.DryMatter > 1:
		return document.Wrong("feed.dry_matter", f.Feed.DryMatter, "is no share", "above 0 % and up to 100 %")
	case !(f.Feed.Waste >= 0 && f.Feed.Waste < 1):
		return document.Wrong("feed.waste", f.Feed.Waste, "is no share", "0 % to below 100 %")
	case f.Feed.Loss != nil && !(*f.Feed.Loss >= 0 && *f.Feed.Loss < 1):
		return document.Wrong("feed.harvest_loss", *f.Feed.Loss, "is no share", "0 % to below 100 %")
	case f.Water.Supply < 0:
		return document.Wrong("water.supply", f.Water.Supply, "is negative", "above 0")
	case f.Fence.Roll < 0:
		return document.Wrong("fence.roll", f.Fence.Roll, "is negative", "above 0")
	case f.Fence.Pace < 0:
		return document.Wrong("fence.pace", f.Fence.Pace, "is negative", "above 0")
	case f.OwnFactor != nil && !(f.OwnFactor.Growth > 0 && f.OwnFactor.Growth <= 3):
		return document.Wrong("own_factor.growth", f.OwnFactor.Growth, "is no factor", "above 0 % and up to 300 %")
	case f.OwnFactor != nil && f.OwnFactor.Why == "":
		return document.Wrong("own_factor.why", `""`, "is empty", "your reason, which the plan prints")
	}
	return nil
}
