package grazing

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"example.org/soum/forage"
	"example.org/soum/herd"
	"example.org/soum/internal/document"
	"example.org/soum/units"
)

// longestPlan keeps a slip in a year from asking for a plan of centuries.
const longestPlan = 1100

// mostRain is the most rain of a month that package rainfall reckons with.
const mostRain = 1000 * units.RainMetre

// mostMoves is the most moves a day: one an hour.
const mostMoves = 24

// fault is one thing wrong with the farm document.
func fault(path string, value any, problem, allowed string) error {
	text := fmt.Sprint(value)
	if q, ok := value.(shown); ok {
		text = both(q)
	}
	return &document.Error{Path: path, Value: text, Problem: problem, Allowed: allowed}
}

// size is fault for a quantity that must lie above 0: what is 0 was left out,
// or might as well have been.
func size[Q quantity](path string, value Q, allowed string) error {
	if value == 0 {
		return fault(path, value, "is not above 0, or was left out", allowed)
	}
	return fault(path, value, "is negative", allowed)
}

// wrongName is fault for the name of a row.
func wrongName(path, name string, err error) error {
	var parse *units.ParseError
	if errors.As(err, &parse) {
		return fault(path, strconv.Quote(name), "is the name of no row: "+parse.Problem, "one of: "+strings.Join(parse.Accepts, ", ")+", or a row of your own")
	}
	return fault(path, strconv.Quote(name), "cannot be used: "+err.Error(), "a row's name, or a row of your own")
}

// shown is a quantity that prints for people.
type shown interface{ In(units.System) string }

// quantity is a number that prints for people.
type quantity interface {
	~float64
	shown
}

// both prints a quantity in metric and in US units, since the reader's own
// text is gone by the time a value is checked.
func both(q shown) string {
	metric, us := q.In(units.Metric), q.In(units.US)
	if metric == us {
		return metric
	}
	return metric + " (" + us + ")"
}

// spanText prints both ends of a span.
func spanText[Q quantity](s units.Span[Q]) string { return both(s.Low) + " to " + both(s.High) }

// Check tells the first thing that is wrong with the farm, with its path in
// the document, its value and what is allowed; nil where nothing is.
func (f *Farm) Check() error {
	if f == nil {
		return fault("farm", "nil", "is no document", "a farm, such as ReadFarm gives")
	}
	for _, check := range []func() error{f.checkSeason, f.checkLand, f.checkGroups, f.checkRotations, f.checkCuts, f.checkRain, f.checkRest} {
		if err := check(); err != nil {
			return err
		}
	}
	return nil
}

func (f *Farm) checkSeason() error {
	switch {
	case f.Version != 1:
		return fault("version", f.Version, "is no known version of the form", "1")
	case f.Season.To < f.Season.From:
		return fault("season.to", f.Season.To, "is before season.from", "a date from "+f.Season.From.String()+" on")
	case f.Season.To < f.Today:
		return fault("season.to", f.Season.To, "is before today", "a date from "+f.Today.String()+" on")
	case f.Season.To.Sub(f.Today) > longestPlan:
		return fault("season.to", f.Season.To, "is too far off", fmt.Sprintf("a date within %d days of today", longestPlan))
	}
	return nil
}

func (f *Farm) checkLand() error {
	if len(f.Land) == 0 {
		return fault("land", "[]", "holds no land", "at least one lane or paddock")
	}
	ids := map[string]bool{}
	for i := range f.Land {
		l, path := &f.Land[i], fmt.Sprintf("land[%d]", i)
		if err := checkID(ids, path, l.ID); err != nil {
			return err
		}
		if err := l.checkSize(path); err != nil {
			return err
		}
		pasture, err := l.pasture()
		if err != nil {
			return wrongName(path+".pasture", l.Pasture.Name, err)
		}
		if err := checkPasture(path+".pasture", pasture); err != nil {
			return err
		}
		if err := l.checkStand(path, f.Today); err != nil {
			return err
		}
		if err := l.checkTests(path, f.Today); err != nil {
			return err
		}
	}
	return nil
}

func checkID(ids map[string]bool, path, id string) error {
	if id == "" {
		return fault(path+".id", `""`, "is empty", "a name of your own")
	}
	if ids[id] {
		return fault(path+".id", strconv.Quote(id), "stands twice", "a name that no other has")
	}
	ids[id] = true
	return nil
}

func (l *Land) checkSize(path string) error {
	lane := l.Width != 0 || l.Length != 0
	switch {
	case lane && l.Area != 0:
		return fault(path+".area", l.Area, "stands beside width or length: a lane has those, a paddock an area", "one or the other")
	case !lane && !(l.Area > 0):
		return size(path+".area", l.Area, "an area above 0, or width and length above 0")
	case lane && !(l.Width > 0):
		return size(path+".width", l.Width, "a length above 0")
	case lane && !(l.Length > 0):
		return size(path+".length", l.Length, "a length above 0")
	case l.Width > 1e5 || l.Length > 1e5 || l.Area > 1e10:
		return fault(path, l.ID, "is larger than any farm", "at most 100 km either way")
	}
	return nil
}

// checkPasture holds a row, a user's above all, against what the season needs.
func checkPasture(path string, p forage.Pasture) error {
	sum := units.Fraction(0)
	for month, share := range p.Shares {
		if !(share >= 0 && share <= 1) {
			return fault(fmt.Sprintf("%s.shares[%d]", path, month), share, "is no share", "0 % to 100 %")
		}
		sum += share
	}
	switch {
	case sum < 0.9 || sum > 1.1:
		return fault(path+".shares", sum, "do not make up a year", "a sum of 90 % to 110 %")
	case !(p.Leave.Low > 0) || !(p.Leave.High >= p.Leave.Low):
		return fault(path+".leave", spanText(p.Leave), "is no span of heights", "low above 0, high not below it")
	case !(p.TurnIn.Low > 0) || !(p.TurnIn.High >= p.TurnIn.Low):
		return fault(path+".turn_in", spanText(p.TurnIn), "is no span of heights", "low above 0, high not below it")
	case !(p.YieldLow > 0) || !(p.YieldMedium > 0) || !(p.YieldHigh > 0):
		return size(path+".yield_medium", p.YieldMedium, "three yields above 0")
	}
	for i, month := range p.KeyMonths {
		if month < 1 || month > 12 {
			return fault(fmt.Sprintf("%s.key_months[%d]", path, i), month, "is no month", "1 to 12")
		}
		if slices.Contains(p.KeyMonths[:i], month) {
			return fault(fmt.Sprintf("%s.key_months[%d]", path, i), month, "stands twice", "each month once")
		}
	}
	return nil
}

// checkStand checks today's heights.
func (l *Land) checkStand(path string, today units.Date) error {
	pasture, _ := l.pasture()
	ceiling := l.ceiling(pasture)
	condition := l.condition()
	if _, err := pasture.Density(condition); err != nil && l.Density == 0 {
		return fault(path+".condition", strconv.Quote(condition.String()), "is a condition that the pasture row has no density for", "another condition, or a density of your own")
	}
	switch {
	case l.Density < 0:
		return fault(path+".density", l.Density, "is negative", "a density above 0")
	case l.Yield < 0:
		return fault(path+".yield", l.Yield, "is negative", "a yield above 0")
	case !(ceiling > 0):
		return size(path+".ceiling", ceiling, "the height at which growth ends")
	case l.MowAbove < 0:
		return fault(path+".mow_above", l.MowAbove, "is negative", "a height above 0")
	case l.Legume != nil && !(*l.Legume >= 0 && *l.Legume <= 1):
		return fault(path+".legume", *l.Legume, "is no share", "0 % to 100 %")
	case len(l.Stretches) > 0 && l.isPaddock():
		return fault(path+".stretches", len(l.Stretches), "stretches cannot be grazed apart: a paddock is grazed whole", "height, and no stretches")
	case len(l.Stretches) > 0 && l.Height != 0:
		return fault(path+".height", l.Height, "stands beside stretches", "one height for the whole, or stretches")
	case len(l.Stretches) > 0 && l.Grazed != nil:
		return fault(path+".grazed", *l.Grazed, "stands beside stretches", "one date for the whole, or one in each stretch")
	}
	if len(l.Stretches) == 0 {
		return checkHeight(path, l.Height, l.Grazed, ceiling, today)
	}
	from := units.Length(0)
	for i, s := range l.Stretches {
		at := fmt.Sprintf("%s.stretches[%d]", path, i)
		if !(s.To > from) {
			return fault(at+".to", s.To, "is not beyond the stretch before it", "a distance above "+both(from))
		}
		from = s.To
		if err := checkHeight(at, s.Height, s.Grazed, ceiling, today); err != nil {
			return err
		}
	}
	if difference := from - l.Length; difference > 1e-6*l.Length || difference < -1e-6*l.Length {
		return fault(fmt.Sprintf("%s.stretches[%d].to", path, len(l.Stretches)-1), from, "does not end where the lane does", both(l.Length))
	}
	return nil
}

func checkHeight(path string, height units.Height, grazed *units.Date, ceiling units.Height, today units.Date) error {
	switch {
	case !(height > 0):
		return size(path+".height", height, "today's height, above 0")
	case height > ceiling:
		return fault(path+".height", height, "is above the ceiling at which growth ends", "at most "+both(ceiling)+", or a higher ceiling of your own")
	case grazed != nil && *grazed > today:
		return fault(path+".grazed", *grazed, "is after today", "a date up to "+today.String())
	}
	return nil
}

func (f *Farm) checkGroups() error {
	if len(f.Groups) == 0 {
		return fault("groups", "[]", "holds no animals", "at least one group")
	}
	ids := map[string]bool{}
	for i := range f.Groups {
		g, path := &f.Groups[i], fmt.Sprintf("groups[%d]", i)
		if err := checkID(ids, path, g.ID); err != nil {
			return err
		}
		class, err := g.class()
		if err != nil {
			return wrongName(path+".class", g.Class.Name, err)
		}
		if err := checkClass(path+".class", class); err != nil {
			return err
		}
		if err := g.check(path, class, len(f.weanings(g.ID)) > 0); err != nil {
			return err
		}
		if err := f.checkBirths(path, g, class); err != nil {
			return err
		}
	}
	return nil
}

// checkClass holds a row, a user's above all, against what the season needs.
func checkClass(path string, c herd.Class) error {
	switch {
	case len(c.Intake) == 0:
		return fault(path+".intake", "[]", "holds no intake", "dry matter a day as a share of live weight, for at least one stage")
	case c.Kind.String() == "":
		return fault(path+".kind", int(c.Kind), "is missing", "the kind of animal")
	case !(c.Weight > 0):
		return size(path+".weight", c.Weight, "the live weight of one animal")
	case !isShare(c.Pasture):
		return fault(path+".pasture", spanText(c.Pasture), "is no span of shares", "low and high from 0 % to 100 %")
	}
	if c.Excretion != "" || c.ExcretionBy != 0 {
		if _, err := herd.Excretion(c.Excretion, c.ExcretionBy, herd.ExcretaNitrogen, 1, c.Weight, 1); err != nil {
			return fault(path+".excretion", strconv.Quote(c.Excretion), "is no row of manure, by "+strconv.Quote(c.ExcretionBy.String()), "a row and its source: "+err.Error())
		}
	}
	for i, row := range c.Intake {
		if !isShare(row.Share) || row.Share.High == 0 {
			return fault(fmt.Sprintf("%s.intake[%d].share", path, i), spanText(row.Share), "is no span of shares", "low and high above 0 % and up to 100 %")
		}
	}
	return nil
}

func isShare(s units.Span[units.Fraction]) bool {
	return s.Low >= 0 && s.High >= s.Low && s.High <= 1
}

func (g *Group) check(path string, class herd.Class, filled bool) error {
	weight := g.Weight
	if weight == 0 {
		weight = class.Weight
	}
	switch {
	case g.Head == 0 && !filled:
		return fault(path+".head", g.Head, "is a group without animals", "a number above 0; 0 where young are weaned into the group")
	case !(g.Head >= 0 && g.Head <= 1e6):
		return fault(path+".head", g.Head, "is negative or beyond counting", "a number above 0")
	case g.Weight < 0:
		return fault(path+".weight", g.Weight, "is negative", "the live weight of one animal, above 0")
	case !(g.Gain >= 0):
		return fault(path+".gain", g.Gain, "is negative", "what one animal gains in a day, above 0")
	case g.Grown != 0 && g.Gain == 0:
		return fault(path+".grown", g.Grown, "stands without gain", "gain beside it, or neither")
	case g.Grown != 0 && !(g.Grown > weight):
		return fault(path+".grown", g.Grown, "is not above the weight of "+weight.In(units.Metric), "the live weight at which growth ends, above the weight")
	}
	if err := checkStage(path+".stage", class, g.Stage); err != nil {
		return err
	}
	for i, e := range g.Events {
		at := fmt.Sprintf("%s.events[%d]", path, i)
		switch {
		case e.Head == nil && e.Weight == nil && e.Stage == nil:
			return fault(at, e.Date, "changes nothing", "head, weight or stage")
		case e.Head != nil && !(*e.Head >= 0 && *e.Head <= 1e6):
			return fault(at+".head", *e.Head, "is negative or beyond counting", "the number from that day on, 0 or more")
		case e.Weight != nil && !(*e.Weight > 0):
			return fault(at+".weight", *e.Weight, "is 0 or negative", "a live weight above 0")
		}
		if e.Stage != nil {
			if err := checkStage(at+".stage", class, *e.Stage); err != nil {
				return err
			}
		}
	}
	return nil
}

func checkStage(path string, class herd.Class, stage herd.Stage) error {
	if stage == 0 {
		return nil
	}
	if _, err := class.IntakeAt(stage); err != nil {
		return fault(path, strconv.Quote(stage.String()), "is no stage of this class", "one of: "+stagesOf(class))
	}
	return nil
}

// stagesOf lists the stages that a class has figures for.
func stagesOf(class herd.Class) string {
	var all []string
	for _, row := range class.Intake {
		all = append(all, row.Stage.String())
	}
	return strings.Join(all, ", ")
}

func (f *Farm) checkRotations() error {
	if len(f.Rotations) == 0 {
		return fault("rotations", "[]", "holds no rotation", "at least one, with land and groups")
	}
	landOf, groupOf := map[string]string{}, map[string]string{}
	for i := range f.Rotations {
		r, path := &f.Rotations[i], fmt.Sprintf("rotations[%d]", i)
		if len(r.Land) == 0 {
			return fault(path+".land", "[]", "holds no land", "ids of land, in order")
		}
		if len(r.Groups) == 0 {
			return fault(path+".groups", "[]", "holds no groups", "groups, the leader first")
		}
		for j, id := range r.Land {
			at := fmt.Sprintf("%s.land[%d]", path, j)
			if f.landIndex(id) < 0 {
				return fault(at, strconv.Quote(id), "is the id of no land", "the id of land")
			}
			if before, taken := landOf[id]; taken {
				return fault(at, strconv.Quote(id), "stands in "+before+" already", "each land in one rotation, once")
			}
			landOf[id] = at
			if err := f.checkHeights(r, path, id); err != nil {
				return err
			}
		}
		if err := f.checkMembers(r, path, groupOf); err != nil {
			return err
		}
		if err := r.check(path); err != nil {
			return err
		}
		if err := f.checkFront(r, path+".front"); err != nil {
			return err
		}
	}
	return nil
}

func (f *Farm) checkFront(r *Rotation, path string) error {
	if r.Front == nil {
		return nil
	}
	if !slices.Contains(r.Land, r.Front.Land) {
		return fault(path+".land", strconv.Quote(r.Front.Land), "is no land of the rotation", "one of: "+list(r.Land))
	}
	l := &f.Land[f.landIndex(r.Front.Land)]
	switch {
	case l.isPaddock():
		return fault(path+".land", strconv.Quote(l.ID), "is a paddock, grazed whole", "a lane, or no front")
	case !(r.Front.At > 0 && r.Front.At < l.Length):
		return fault(path+".at", r.Front.At, "is no place within the lane", "above 0 and below "+both(l.Length))
	}
	return nil
}

// checkHeights sees to it that on each land ceiling stands above turn-in and
// turn-in above what is left.
func (f *Farm) checkHeights(r *Rotation, path, id string) error {
	l := &f.Land[f.landIndex(id)]
	pasture, _ := l.pasture()
	turnIn, leave, ceiling := r.turnIn(pasture), r.leave(pasture), l.ceiling(pasture)
	switch {
	case !(leave > 0):
		return size(path+".leave", leave, "a height above 0")
	case !(leave < turnIn):
		return fault(path+".leave", leave, "is not below the turn-in height on "+strconv.Quote(id), "below "+both(turnIn))
	case !(turnIn < ceiling):
		return fault(path+".turn_in", turnIn, "is not below the ceiling of "+strconv.Quote(id), "below "+both(ceiling))
	}
	return nil
}

func (f *Farm) checkMembers(r *Rotation, path string, groupOf map[string]string) error {
	behind := units.Days(0)
	for j, m := range r.Groups {
		at := fmt.Sprintf("%s.groups[%d]", path, j)
		if f.groupIndex(m.Group) < 0 {
			return fault(at+".group", strconv.Quote(m.Group), "is the id of no group", "the id of a group")
		}
		if before, taken := groupOf[m.Group]; taken {
			return fault(at+".group", strconv.Quote(m.Group), "stands in "+before+" already", "each group in one rotation, once")
		}
		groupOf[m.Group] = at
		switch {
		case j == 0 && m.Behind != 0:
			return fault(at+".behind", m.Behind, "is not 0, and the first group leads", "0 days")
		case m.Behind < behind:
			return fault(at+".behind", m.Behind, "is less than the group before it", both(behind)+" or more")
		case m.Behind != units.Days(int(m.Behind)) || m.Behind > longestPlan:
			return fault(at+".behind", m.Behind, "is not in whole days", "0 days, 1 day, 2 days and so on")
		}
		behind = m.Behind
	}
	return nil
}

func (r *Rotation) check(path string) error {
	switch {
	case !(r.ShortestRest >= 1) || r.ShortestRest != units.Days(int(r.ShortestRest)) || r.ShortestRest > longestPlan:
		return fault(path+".shortest_rest", r.ShortestRest, "is no rest in whole days", "1 day or more, in whole days")
	case r.MovesADay < 0 || r.MovesADay > mostMoves:
		return fault(path+".moves_a_day", r.MovesADay, "is no number of moves", "a whole number from 1 to 24")
	case r.ShortestStrip < 0:
		return fault(path+".shortest_strip", r.ShortestStrip, "is negative", "a length above 0")
	}
	return nil
}

func (f *Farm) checkCuts() error {
	for i, c := range f.Cuts {
		path := fmt.Sprintf("cuts[%d]", i)
		at := f.landIndex(c.Land)
		switch {
		case at < 0:
			return fault(path+".land", strconv.Quote(c.Land), "is the id of no land", "the id of land")
		case c.Date < f.Today || c.Date > f.Season.To:
			return fault(path+".date", c.Date, "is outside the plan", "a date from today to the season's end")
		case !(c.Stubble > 0):
			return size(path+".stubble", c.Stubble, "a height above 0")
		case c.From < 0 || c.To < 0 || c.To > f.Land[at].length() || (c.To != 0 && c.To <= c.From) || c.From >= f.Land[at].length():
			return fault(path+".to", c.To, "makes no piece of the land with from", "from 0 to "+both(f.Land[at].length()))
		}
	}
	return nil
}

// isMonth tells whether a text is a month such as "2000-04".
func isMonth(text string) bool {
	_, err := units.ParseDate(text + "-01")
	return err == nil && len(text) == len("2000-04")
}

func (f *Farm) checkRain() error {
	if n := len(f.Rain.Normal); n != 0 && n != 12 {
		return fault("rain.normal", n, "months are not twelve", "twelve depths, January first")
	}
	for i, depth := range f.Rain.Normal {
		if !(depth >= 0) {
			return fault(fmt.Sprintf("rain.normal[%d]", i), depth, "is negative", "a depth of 0 or more")
		}
		if depth > mostRain {
			return fault(fmt.Sprintf("rain.normal[%d]", i), depth, "is more than ever falls", "at most "+both(mostRain))
		}
	}
	for _, key := range sortedKeys(f.Rain.Months) {
		switch {
		case !isMonth(key):
			return fault("rain.months."+key, strconv.Quote(key), "is no month", `a month such as "2000-04"`)
		case !(f.Rain.Months[key] >= 0):
			return fault("rain.months."+key, f.Rain.Months[key], "is negative", "a depth of 0 or more")
		case f.Rain.Months[key] > mostRain:
			return fault("rain.months."+key, f.Rain.Months[key], "is more than ever falls", "at most "+both(mostRain))
		}
	}
	if f.Rain.Year < 0 {
		return fault("rain.year", f.Rain.Year, "is negative", "a depth above 0")
	}
	return f.checkBalance()
}

func (f *Farm) checkRest() error {
	switch {
	case f.Feed.Hay < 0:
		return fault("feed.hay", f.Feed.Hay, "is negative", "0 or more")
	case f.Feed.DryMatter < 0 || f.Feed.DryMatter > 1:
		return fault("feed.dry_matter", f.Feed.DryMatter, "is no share", "above 0 % and up to 100 %")
	case !(f.Feed.Waste >= 0 && f.Feed.Waste < 1):
		return fault("feed.waste", f.Feed.Waste, "is no share", "0 % to below 100 %")
	case f.Feed.Loss != nil && !(*f.Feed.Loss >= 0 && *f.Feed.Loss < 1):
		return fault("feed.harvest_loss", *f.Feed.Loss, "is no share", "0 % to below 100 %")
	case f.Water.Supply < 0:
		return fault("water.supply", f.Water.Supply, "is negative", "above 0")
	case f.Fence.Roll < 0:
		return fault("fence.roll", f.Fence.Roll, "is negative", "above 0")
	case f.Fence.Pace < 0:
		return fault("fence.pace", f.Fence.Pace, "is negative", "above 0")
	case f.OwnFactor != nil && !(f.OwnFactor.Growth > 0 && f.OwnFactor.Growth <= 3):
		return fault("own_factor.growth", f.OwnFactor.Growth, "is no factor", "above 0 % and up to 300 %")
	case f.OwnFactor != nil && f.OwnFactor.Why == "":
		return fault("own_factor.why", `""`, "is empty", "your reason, which the plan prints")
	}
	return nil
}
