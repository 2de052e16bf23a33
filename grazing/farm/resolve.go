package farm

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"sync"
	"time"

	"example.org/soum/forage"
	"example.org/soum/herd"
	"example.org/soum/internal/rows"
	"example.org/soum/internal/season"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// What a document may leave out.
const (
	defaultCondition = forage.Good
	longestStay      = 5               // days: after 4 to 5 regrowth is bitten [PROG-LANE]
	shortestOfLarge  = 4 * units.Metre // ours: room for cattle, horses and donkeys to stand and turn
	shortestOfSmall  = 2 * units.Metre // ours: for sheep, goats, camelids, deer and pigs
	shortestOfAll    = 1 * units.Metre // ours: nobody sets a fence for less
)

func (f *Farm) landIndex(id string) int {
	for i := range f.Land {
		if f.Land[i].ID == id {
			return i
		}
	}
	return -1
}

func (f *Farm) groupIndex(id string) int {
	for i := range f.Groups {
		if f.Groups[i].ID == id {
			return i
		}
	}
	return -1
}

func (l *Land) isPaddock() bool { return l.Area != 0 }

// length gives a lane's length; a paddock is a lane of length one.
func (l *Land) length() units.Length {
	if l.isPaddock() {
		return units.Metre
	}
	return l.Length
}

// area gives the whole area of the land.
func (l *Land) area() units.Area {
	if l.isPaddock() {
		return l.Area
	}
	return units.Area(l.Width * l.Length)
}

func (l *Land) pasture() (*forage.Pasture, error) { return rows.Pasture(&l.Pasture) }

func (l *Land) condition() forage.Condition {
	if l.Condition == 0 {
		return defaultCondition
	}
	return l.Condition
}

func (l *Land) ceiling(p *forage.Pasture) units.Height {
	if l.Ceiling != 0 {
		return l.Ceiling
	}
	return p.Ceiling
}

// density gives the land's density at an end of the printed span.
func (l *Land) density(p *forage.Pasture, end units.End) (units.Density, error) {
	if l.Density != 0 {
		return l.Density, nil
	}
	span, err := p.Density(l.condition())
	return span.At(end), err
}

// yield gives the dry matter the land grows in a normal year.
func (l *Land) yield(p *forage.Pasture) (units.Yield, error) {
	return rows.Yield(p, l.Yield, l.Productivity)
}

func (g *Group) class() (*herd.Class, error) { return rows.Class(&g.Class) }

func (r *Rotation) turnIn(p *forage.Pasture) units.Height {
	if r != nil && r.TurnIn != 0 {
		return r.TurnIn
	}
	return p.TurnIn.At(units.Middle)
}

// least gives T0, the height from which land is grazed where nothing stands at the turn-in
// height: the document's, else the printed low end where the turn-in is above it, else
// three quarters of the way from leave to turn-in (ours); never less than a quarter of
// the way, a bite worth a fence (ours).
func (r *Rotation) least(p *forage.Pasture) units.Height {
	aim, leave := r.turnIn(p), r.leave(p)
	least := leave + (aim-leave)*3/4
	switch {
	case r != nil && r.LeastTurnIn != 0:
		least = r.LeastTurnIn
	case p.TurnIn.Low < aim:
		least = p.TurnIn.Low
	}
	return max(least, leave+(aim-leave)/4)
}

func (r *Rotation) leave(p *forage.Pasture) units.Height {
	if r != nil && r.Leave != 0 {
		return r.Leave
	}
	return p.Leave.At(units.Middle)
}

// rotationOf gives the rotation that land is in, nil where it is in none.
func (f *Farm) rotationOf(id string) *Rotation {
	for i := range f.Rotations {
		if slices.Contains(f.Rotations[i].Land, id) {
			return &f.Rotations[i]
		}
	}
	return nil
}

// setting is a farm made ready for the day loop at one end of the printed
// spans.
type setting struct {
	farm      *Farm
	end       units.End
	start     units.Date
	first     int // the day from which the animals are here
	lands     []site
	herd      []herd.Group
	spells    [][]spell // by group
	months    []month
	yearParts []yearPart // in order
	input     season.Input
	notes     *notebook
	record    []rainfall.MonthlyRain
	grass     []int         // by rotation: grass-from, or never
	soil      []SoilMonth   // by month of the account; nil where none is kept
	soilFirst int           // the account's first month, by monthIndex
	runner    season.Runner // for many seasons of this farm
	kinds     []herd.Kind   // by group
	names     []string      // of which the lists of a plan's notes are parts
	dates     []units.Date  // likewise
	blocks                  // what the lists above are parts of
}

// blocks are lists that many short ones are cut from: one by one these would be most
// of the pieces of memory that a plan takes. They are kept for the next plan.
type blocks struct {
	numbers   []float64 // by day, of every land and group
	given     int       // of numbers
	spell     []spell
	starts    []int
	pieces    []season.Stretch
	places    []int
	joined    []season.Member
	wanted    []float64 // by day, of all groups
	moves     []part    // of a plan's visits
	visitors  []int32   // the group of each visit
	last      []int     // by land: 1 and the last move to it
	grounds   []dunged
	droppings []dropping
	leaves    []bool // by group: worms that sheep and goats may pick up
	tallies   []tally
	seen      []seen // by group
	changed   []changed
	book      notebook
}

// cut gives the last of a list, from a place on, as one of its own.
func cut[T any](list []T, from int) []T { return list[from:len(list):len(list)] }

// zeros gives a list of so many zero values, in the memory of an old one where it is
// large enough.
func zeros[T any](old []T, n int) []T {
	all := slices.Grow(old[:0], n)[:n]
	clear(all)
	return all
}

// byDay gives a number for every day.
func (s *setting) byDay() []float64 {
	from := s.given
	s.given += s.input.Days
	return s.numbers[from:s.given:s.given]
}

// namesFrom gives the names put into the list since a place in it, nil where none was.
func (s *setting) namesFrom(from int) []string {
	if len(s.names) == from {
		return nil
	}
	return cut(s.names, from)
}

// site is land with its figures settled.
type site struct {
	pasture                *forage.Pasture
	density                units.Density
	turnIn, leave, ceiling units.Yield
	least                  units.Yield // T0, from which it is grazed where nothing stands at the aim
	leaveHeight            units.Height
	annual                 units.Yield
}

// growsLike tells whether the potential growth of two lands is the same.
func (at *site) growsLike(other *site) bool {
	return at.pasture == other.pasture && at.annual == other.annual && at.turnIn == other.turnIn && at.leave == other.leave && at.ceiling == other.ceiling
}

// settle makes a farm ready. It fails with a DomainError of a formula where
// the document's figures are impossible together.
func settle(f *Farm, end units.End) (*setting, error) {
	s := new(setting)
	if err := s.settle(f, end, nil); err != nil {
		return nil, err
	}
	return s, nil
}

// settle makes a farm ready in the memory of the one before.
func (s *setting) settle(f *Farm, end units.End, notes *notebook) error {
	s.begin(f)
	s.end, s.notes = end, notes
	if err := s.settleSoil(); err != nil {
		return fmt.Errorf("rain.balance: %w", err)
	}
	for i := range f.Land {
		if err := s.settleLand(&f.Land[i]); err != nil {
			return pathed("land", i, err)
		}
	}
	var err error
	if s.herd, err = f.herds(s.herd); err != nil {
		return err
	}
	for i := range s.herd {
		s.kinds = append(s.kinds, s.herd[i].Class.Kind)
	}
	s.settleSeasons()
	for i := range s.herd {
		s.spells = append(s.spells, s.spellsOf(&s.herd[i]))
		if err := s.settleGroup(i); err != nil {
			return pathed("groups", i, err)
		}
	}
	for i := range f.Rotations {
		s.settleRotation(&f.Rotations[i])
	}
	s.settleGrass()
	s.settleCuts()
	return nil
}

// begin empties a setting, for a farm, and keeps its memory.
func (s *setting) begin(f *Farm) {
	in, b := &s.input, &s.blocks
	days := int(f.Season.To.Sub(f.Today)) + 1
	b.numbers, b.given = zeros(b.numbers, days*(len(f.Land)+len(f.Groups))), 0
	b.spell, b.pieces, b.places, b.joined = b.spell[:0], b.pieces[:0], b.places[:0], b.joined[:0]
	b.book.clear()
	*s = setting{
		farm: f, start: f.Today, first: max(0, int(f.Season.From.Sub(f.Today))), record: f.Rain.Series(), runner: s.runner, blocks: *b,
		lands: s.lands[:0], herd: s.herd[:0], spells: s.spells[:0], kinds: s.kinds[:0],
		grass: s.grass[:0], months: monthsOf(s.months[:0], f.Today, days), yearParts: s.yearParts[:0],
		input: season.Input{
			Days: days, From: int(f.Season.From.Sub(f.Today)),
			Lands: in.Lands[:0], Groups: in.Groups[:0], Rotations: in.Rotations[:0], Cuts: in.Cuts[:0],
		},
	}
}

func (s *setting) date(day int) units.Date { return s.start.Add(day) }

// mass gives what stands at a height, by the land's density.
func (s *setting) mass(at *site, height units.Height) (units.Yield, error) {
	mass, err := forage.Standing(height, at.density)
	return mass, s.notes.keep(err, s.start, 1)
}

func (s *setting) settleLand(l *Land) error {
	pasture, err := l.pasture()
	if err != nil {
		return err
	}
	at := site{pasture: pasture}
	if at.density, err = l.density(pasture, s.end); err != nil {
		return err
	}
	if at.annual, err = l.yield(pasture); err != nil {
		return err
	}
	if s.farm.OwnFactor != nil {
		at.annual *= units.Yield(s.farm.OwnFactor.Growth)
	}
	rotation := s.farm.rotationOf(l.ID)
	at.leaveHeight = rotation.leave(pasture)
	for _, pair := range []struct {
		mass   *units.Yield
		height units.Height
	}{{&at.turnIn, rotation.turnIn(pasture)}, {&at.least, rotation.least(pasture)}, {&at.leave, at.leaveHeight}, {&at.ceiling, l.ceiling(pasture)}} {
		if *pair.mass, err = s.mass(&at, pair.height); err != nil {
			return err
		}
	}
	land := season.Land{
		Width: float64(l.Width), Length: float64(l.length()), Paddock: l.isPaddock(),
		Aim: float64(at.turnIn), Least: float64(at.least), Leave: float64(at.leave), Ceiling: float64(at.ceiling),
	}
	if l.isPaddock() {
		land.Width = float64(l.Area) // a paddock is a lane of length one
	}
	if l.Stay != nil {
		land.Stay = l.Stay.season(s.start)
	}
	if l.MowAbove > 0 {
		above, err := s.mass(&at, l.MowAbove)
		if err != nil {
			return err
		}
		land.MowAbove = float64(above)
	}
	if land.Stretches, err = s.stretches(l, &at); err != nil {
		return err
	}
	if land.Peak, err = s.peaks(&at); err != nil {
		return err
	}
	s.lands = append(s.lands, at)
	s.input.Lands = append(s.input.Lands, land)
	return nil
}

// season gives the stay as the day loop has it.
func (stay *Stay) season(start units.Date) season.Stay {
	days, first := stay.Days, units.Whole
	if days == 0 {
		days = stay.Planned
	}
	if stay.First != nil {
		first = *stay.First
	}
	return season.Stay{From: int(stay.From.Sub(start)), Planned: int(stay.Planned), Days: int(days), First: float64(first)}
}

// stretches gives today's stand.
func (s *setting) stretches(l *Land, at *site) ([]season.Stretch, error) {
	pieces := l.Stretches
	if len(pieces) == 0 {
		pieces = []Stretch{{To: l.length(), Height: l.Height, Grazed: l.Grazed}}
	}
	begin := len(s.pieces)
	for i := range pieces {
		p := &pieces[i]
		mass, err := s.mass(at, p.Height)
		if err != nil {
			return nil, err
		}
		bitten := season.Never
		if p.Grazed != nil {
			bitten = int(*p.Grazed) - int(s.start)
		}
		piece := season.Stretch{To: float64(p.To), Mass: float64(min(mass, at.ceiling)), Bitten: bitten}
		for _, d := range p.Due {
			piece.Due = append(piece.Due, season.Due{Group: s.farm.groupIndex(d.Group), Day: int(d.Date.Sub(s.start)), Eat: float64(d.Eat), Use: float64(d.Use)})
		}
		s.pieces = append(s.pieces, piece)
	}
	s.pieces[len(s.pieces)-1].To = float64(l.length())
	return cut(s.pieces, begin), nil
}

// peaks gives the potential growth of every day: the month's share of the
// annual yield, by the rain so far, spread over the month's days, and raised
// from the mean of a grazed stand to the fastest growth of the curve. Land that grows as
// land before it does is not reckoned again.
func (s *setting) peaks(at *site) ([]float64, error) {
	for i := range s.lands {
		if s.lands[i].growsLike(at) {
			return s.input.Lands[i].Peak, nil
		}
	}
	meanToPeak, err := forage.MeanToPeak(at.leave, at.turnIn, at.ceiling)
	if err = s.notes.keep(err, s.start, s.input.Days); err != nil {
		return nil, err
	}
	peaks := s.byDay()
	for _, m := range s.months {
		peak, err := s.peak(at, m, meanToPeak)
		if err != nil {
			return nil, err
		}
		for day := m.from; day < m.to; day++ {
			peaks[day] = float64(peak)
		}
	}
	return peaks, nil
}

// peak gives the potential growth of the days of a month.
func (s *setting) peak(at *site, m month, meanToPeak float64) (units.Growth, error) {
	scale, err := s.rainScale(at, s.date(m.from))
	if err != nil {
		return 0, err
	}
	return s.peakBy(scale, at, m, meanToPeak)
}

// peakBy gives the potential growth of the days of a month by forage as a share of
// normal.
func (s *setting) peakBy(scale units.Fraction, at *site, m month, meanToPeak float64) (units.Growth, error) {
	date := s.date(m.from)
	mean, err := forage.MonthGrowth(at.annual, at.pasture.Shares[m.month-time.January]*scale, units.Days(m.days))
	if err = s.notes.keep(err, date, m.to-m.from); err != nil {
		return 0, err
	}
	peak, err := forage.PeakGrowth(mean, meanToPeak)
	return peak, s.notes.keep(err, date, m.to-m.from)
}

// daysLeft gives the days of the plan in a date's month, from the date on.
func (s *setting) daysLeft(date units.Date) int {
	return min(date.DaysInMonth()-date.Day()+1, int(s.farm.Season.To.Sub(date))+1)
}

// rainScale gives forage as a share of normal, by the water of the soil where an
// account of it is kept, and else by the rain of the key months so far; 1 where
// the rain is not known.
func (s *setting) rainScale(at *site, date units.Date) (units.Fraction, error) {
	if s.soil != nil {
		return s.soilOn(date).Growth, nil
	}
	if len(s.farm.Rain.Normal) != 12 || len(s.record) == 0 {
		return 1, nil
	}
	share, err := rainfall.KeyRainShare(date, at.pasture.KeyMonths, s.record, s.farm.Rain.normals())
	if err = s.notes.keep(err, date, s.daysLeft(date)); err != nil {
		return 0, err
	}
	scale, err := rainfall.ForageShare(share)
	return scale, s.notes.keep(err, date, s.daysLeft(date))
}

// Series returns the rain of the months in the document, in order. A key that is not
// a month, which Check refuses, is left out.
func (r *Rain) Series() []rainfall.MonthlyRain {
	var all []rainfall.MonthlyRain
	for _, key := range slices.Sorted(maps.Keys(r.Months)) {
		if first, err := firstOfMonth(key); err == nil {
			all = append(all, rainfall.MonthlyRain{Year: first.Year(), Month: first.Month(), Rain: r.Months[key]})
		}
	}
	return all
}

// firstOfMonth gives the first day of a month such as "2000-04".
func firstOfMonth(key string) (units.Date, error) {
	return units.ParseDate(key + "-01")
}

func (r *Rain) normals() (all [12]units.RainDepth) {
	copy(all[:], r.Normal)
	return all
}

// normalYear gives the rain of a normal year, 0 where it is not known.
func (r *Rain) normalYear() units.RainDepth {
	if len(r.Normal) == 0 {
		return r.Year
	}
	sum := units.RainDepth(0)
	for _, depth := range r.Normal {
		sum += depth
	}
	return sum
}

func (s *setting) settleGroup(group int) error {
	demand := s.byDay()
	for _, sp := range s.spells[group] {
		from := max(sp.from, s.first) // before the season the animals are elsewhere
		if from >= sp.to {
			continue
		}
		d, err := s.herd[group].DemandOn(s.date(from), s.end.Other())
		if err = s.notes.keep(err, s.date(from), sp.to-from); err != nil {
			return err
		}
		for day := from; day < sp.to; day++ {
			demand[day] = float64(d)
		}
	}
	s.input.Groups = append(s.input.Groups, season.Group{Demand: demand})
	return nil
}

// usableShares holds the share eaten of a stay of whole days, from one on; beyond the
// last it stays what it is.
var usableShares = sync.OnceValue(func() (shares []float64) {
	for stay := units.Day; ; stay++ {
		use, err := forage.UsableShare(stay)
		shares = append(shares, float64(use))
		if err != nil {
			return shares
		}
	}
})

func (s *setting) settleRotation(r *Rotation) {
	rotation := season.Rotation{
		ShortestRest: int(r.ShortestRest), LongestStay: longestStay, Moves: max(1, r.MovesADay), ShortestStrip: float64(s.shortestStrip(r)),
	}
	if r.LongestStay > 0 {
		rotation.LongestStay = int(r.LongestStay)
	}
	places, members := len(s.places), len(s.joined)
	for _, id := range r.Land {
		s.places = append(s.places, s.farm.landIndex(id))
	}
	if r.Front != nil {
		rotation.Front, rotation.At = slices.Index(r.Land, r.Front.Land), s.frontAt(r.Front)
	}
	for _, m := range r.Groups {
		s.joined = append(s.joined, season.Member{Group: s.farm.groupIndex(m.Group), Lag: int(m.Behind)})
	}
	rotation.Lands, rotation.Members = cut(s.places, places), cut(s.joined, members)
	rotation.Use = usableShares()
	s.input.Rotations = append(s.input.Rotations, rotation)
}

// shortestStrip gives the shortest strip of a rotation: the document's, or the longest of
// what the kinds of its groups are given room for.
func (s *setting) shortestStrip(r *Rotation) units.Length {
	if r.ShortestStrip > 0 {
		return r.ShortestStrip
	}
	longest := shortestOfAll
	for _, m := range r.Groups {
		switch kind := s.kinds[s.farm.groupIndex(m.Group)]; {
		case kind == herd.Cattle || kind.Equine():
			longest = max(longest, shortestOfLarge)
		case kind.Ruminant() || kind == herd.Pigs:
			longest = max(longest, shortestOfSmall)
		}
	}
	return longest
}

// frontAt gives the place of a front: the nearest border of the lane's stretches where
// one is as near as places are told, so that no sliver of what is grazed lies before it.
func (s *setting) frontAt(f *Front) float64 {
	lane := &s.input.Lands[s.farm.landIndex(f.Land)]
	at, near := float64(f.At), float64(logRound)
	for _, piece := range lane.Stretches {
		if away := math.Abs(piece.To - float64(f.At)); away <= near && piece.To < lane.Length {
			at, near = piece.To, away
		}
	}
	return at
}

func (s *setting) settleCuts() {
	for _, c := range s.farm.Cuts {
		at := s.farm.landIndex(c.Land)
		stubble, err := s.mass(&s.lands[at], c.Stubble)
		if err != nil {
			continue // a positive height times a positive density
		}
		to := c.To
		if to == 0 {
			to = s.farm.Land[at].length()
		}
		s.input.Cuts = append(s.input.Cuts, season.Cut{
			Day: int(c.Date) - int(s.start), Land: at, Stubble: float64(stubble), From: float64(c.From), To: float64(to),
		})
	}
}

// widen multiplies every lane's width and every paddock's area.
func (s *setting) widen(factor float64) {
	for i := range s.input.Lands {
		s.input.Lands[i].Width *= factor
	}
}

// multiply sets one group's head, its changes in proportion.
func (s *setting) multiply(group int, factor float64) {
	demand := s.input.Groups[group].Demand
	scaled := make([]float64, len(demand))
	for i, d := range demand {
		scaled[i] = d * factor
	}
	s.input.Groups[group].Demand = scaled
}

// hayAllowed gives the dry matter of the hay in store that animals can eat.
func (f *Farm) hayAllowed() units.DryMatter {
	return units.DryMatter(float64(f.Feed.Hay) * float64(f.hayDryMatter()) * float64(1-f.Feed.Waste))
}

// madeAllowed gives the dry matter of a cut that animals can eat.
func (f *Farm) madeAllowed(cut units.DryMatter) units.DryMatter {
	return units.DryMatter(float64(f.kept(cut)) * float64(1-f.Feed.Waste))
}

// kept gives what is left of a cut when it is fed.
func (f *Farm) kept(cut units.DryMatter) units.DryMatter {
	if f.Feed.Loss == nil {
		return cut
	}
	return units.DryMatter(float64(cut) * float64(1-*f.Feed.Loss))
}

func (f *Farm) hayDryMatter() units.Fraction {
	return rows.HayDryMatter(f.Feed.DryMatter)
}

// asFed gives the hay to carry out so that the animals eat so much dry matter.
func (f *Farm) asFed(eaten units.DryMatter) units.FreshFeed {
	return units.FreshFeed(float64(eaten) / float64(f.hayDryMatter()) / float64(1-f.Feed.Waste))
}
