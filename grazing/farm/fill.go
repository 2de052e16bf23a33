package farm

import (
	"math"
	"slices"
	"sync"

	"example.org/soum/forage"
	"example.org/soum/grazing"
	"example.org/soum/herd"
	"example.org/soum/internal/document"
	"example.org/soum/internal/season"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// fillDays fills the days.
func (s *setting) fillDays(plan *Plan, r *season.Result) error {
	plan.Days = make([]PlanDay, len(r.Days))
	n := len(s.lands)
	lands := make([]units.DryMatter, len(r.Stood))
	for i, standing := range r.Stood {
		lands[i] = units.DryMatter(standing)
	}
	s.wanted = zeros(s.wanted, len(r.Days))
	for g := range s.input.Groups {
		for i, want := range s.input.Groups[g].Demand {
			s.wanted[i] += want
		}
	}
	for i := range r.Days {
		d, day, wanted := &r.Days[i], &plan.Days[i], s.wanted[i]
		day.Date, day.Standing, day.Grown = s.date(i), units.DryMatter(d.End), units.DryMatter(d.Grown)
		day.Wanted, day.Fed, day.Lands = units.DryMatter(wanted), units.DryMatter(d.Hay), lands[i*n:(i+1)*n:(i+1)*n]
		plan.Balance += units.DryMatter(d.Start + d.Grown - d.Eaten - d.Trampled - d.Cut - d.End)
	}
	for i := range r.Fed {
		if f := &r.Fed[i]; s.counts(f) {
			plan.Days[f.Day].Counted += units.DryMatter(f.Hay)
		}
	}
	return nil
}

// fillMonths adds the days up by month.
func (s *setting) fillMonths(plan *Plan, r *season.Result) error {
	plan.Months = make([]Month, len(s.months))
	for i, at := range s.months {
		m := &plan.Months[i]
		*m = Month{Year: at.year, Month: int(at.month), Days: at.to - at.from, Standing: plan.Days[at.to-1].Standing}
		for day := at.from; day < at.to; day++ {
			d := &r.Days[day]
			m.Grown += units.DryMatter(d.Grown)
			m.Wanted += plan.Days[day].Wanted
			m.Eaten += units.DryMatter(d.Eaten)
			m.Trampled += units.DryMatter(d.Trampled)
			m.Cut += units.DryMatter(d.Cut)
			m.Fed += units.DryMatter(d.Hay)
		}
	}
	return nil
}

// fillMoves fills the moves with their visits.
func (s *setting) fillMoves(plan *Plan, r *season.Result) error {
	visits := s.visits(r)
	plan.Moves = make([]Move, len(r.Moves))
	ready := make([]units.Date, len(r.Moves))
	for i := range r.Moves {
		m, move := &r.Moves[i], &plan.Moves[i]
		if err := s.fillMove(move, m); err != nil {
			return err
		}
		if m.Ready >= 0 && m.Ready < s.input.Days {
			ready[i] = s.date(m.Ready)
			move.ReadyAgain = &ready[i]
		}
		of := s.moves[i]
		move.Visits = visits[of.from:of.to:of.to]
	}
	return nil
}

// part is a piece of a list.
type part struct{ from, to int }

// visits joins the visits of a group to the ground of a move, of one day each, in one,
// those of a move in order of their first day; s.moves tells where a move has its own.
func (s *setting) visits(r *season.Result) []Visit {
	places := 0
	s.moves = s.moves[:0]
	for i := range r.Moves {
		s.moves = append(s.moves, part{places, places})
		places += len(s.input.Rotations[r.Moves[i].Rotation].Members)
	}
	all := make([]Visit, places) // a move may have places for more than came
	s.visitors = zeros(s.visitors, places)
	for i := range r.Visits {
		v := &r.Visits[i]
		if v.Move < 0 {
			continue // on ground of before the first day
		}
		of, group := &s.moves[v.Move], int32(v.Group)
		at, date := of.from, s.date(v.Day)
		for at < of.to && s.visitors[at] != group {
			at++
		}
		visit := &all[at]
		if at == of.to {
			of.to++
			s.visitors[at] = group
			visit.Group, visit.From = s.farm.Groups[group].ID, date
		}
		visit.To = date
		visit.Eaten += units.DryMatter(v.Eaten)
	}
	return all
}

func (s *setting) fillMove(move *Move, m *season.Move) error {
	land, at := &s.farm.Land[m.Land], &s.lands[m.Land]
	move.Date, move.Rotation, move.Land, move.Pass = s.date(m.Day), m.Rotation, land.ID, m.Pass
	move.From, move.To, move.Stay, move.Leave, move.Below = units.Length(m.From), units.Length(m.To), units.Days(m.Stay), at.leaveHeight, m.Below
	move.Area = units.Area((m.To - m.From) * s.input.Lands[m.Land].Width)
	err := s.noteStay(m, move.Date)
	if err != nil {
		return err
	}
	move.Height, err = forage.HeightOf(units.Yield(m.Before), at.density)
	if err = s.notes.keep(err, move.Date, 1); err != nil {
		return err
	}
	if m.After > 0 {
		move.Left, err = forage.HeightOf(units.Yield(m.After), at.density)
		if err = s.notes.keep(err, move.Date, 1); err != nil {
			return err
		}
		if m.After > float64(at.leave)*(1+1e-9) { // a strip longer than their want, beyond rounding
			move.Leave = move.Left
		}
	}
	move.Density, err = grazing.StockDensity(s.weightOn(m.Day, m.Rotation), move.Area)
	if err = s.notes.keep(err, move.Date, 1); err != nil {
		return err
	}
	if land.isPaddock() {
		move.From, move.To = 0, 0
		return nil
	}
	move.Length = move.To - move.From
	if pace := s.farm.Fence.Pace; pace > 0 {
		move.Paces = float64(move.Length / pace)
	}
	if roll := s.farm.Fence.Roll; roll > 0 {
		move.Rolls = float64(land.Width / roll)
	}
	return nil
}

// noteStay notes a stay that print has no share eaten for.
func (s *setting) noteStay(m *season.Move, date units.Date) error {
	if moves := s.input.Rotations[m.Rotation].Moves; moves > 1 || m.Stay >= len(usableShares()) {
		_, err := forage.UsableShare(units.Days(m.Stay) / units.Days(moves))
		return s.notes.keep(err, date, m.Stay)
	}
	return nil // whole days, all of them printed
}

// weightOn gives the live weight of a rotation's leading groups on a day: of all
// that stand there together when the ground is opened.
func (s *setting) weightOn(day, rotation int) units.LiveWeight {
	total := units.LiveWeight(0)
	for _, m := range s.input.Rotations[rotation].Members {
		if m.Lag == 0 {
			state := s.state(m.Group, day)
			total += units.LiveWeight(state.Head) * state.Weight
		}
	}
	return total
}

// fillFeeding joins days of feeding in a row.
func (s *setting) fillFeeding(plan *Plan, r *season.Result) error {
	open := make([]int, len(s.herd)) // by group: 1 and the place of its last feeding
	if len(r.Fed) > 0 {
		plan.Feeding = make([]Feeding, 0, 4*len(s.herd)) // as most plans do with
	}
	for _, fed := range r.Fed {
		date, why, counts := s.date(fed.Day), FeedReason(fed.Reason), s.counts(&fed)
		if at := open[fed.Group]; at > 0 {
			last := &plan.Feeding[at-1]
			if last.To == date-1 && last.Why == why && last.Counts == counts {
				last.To = date
				last.Wanted += units.DryMatter(fed.Hay)
				continue
			}
		}
		open[fed.Group] = len(plan.Feeding) + 1
		plan.Feeding = append(plan.Feeding, Feeding{Group: s.farm.Groups[fed.Group].ID, From: date, To: date, Wanted: units.DryMatter(fed.Hay), Why: why, Counts: counts})
	}
	return nil
}

func (s *setting) fillSurplus(plan *Plan, r *season.Result) error {
	for _, over := range r.Surplus {
		land := s.farm.Land[over.Land].ID
		from, to, date := units.Length(over.From), units.Length(over.To), s.date(over.Day)
		if n := len(plan.Surplus); n > 0 {
			if last := &plan.Surplus[n-1]; last.Land == land && last.Date == date && last.To == from {
				last.To = to
				continue
			}
		}
		plan.Surplus = append(plan.Surplus, Surplus{Date: date, Land: land, From: from, To: to})
	}
	return nil
}

// fillPasses puts the plan's passes beside those of the rainfall rule.
func (s *setting) fillPasses(plan *Plan, _ *season.Result) error {
	inRotation, opened := units.Area(0), units.Area(0)
	for i := range s.farm.Land {
		if s.farm.rotationOf(s.farm.Land[i].ID) != nil {
			inRotation += s.farm.Land[i].area()
		}
	}
	for _, m := range plan.Moves {
		opened += m.Area
	}
	plan.Passes.Planned = float64(opened / inRotation)
	plan.Passes.Rain = s.farm.Rain.normalYear()
	for _, m := range s.record {
		if m.Year == s.farm.Today.Year() {
			plan.Passes.ThisYear += m.Rain
			plan.Passes.Months++
		}
	}
	if plan.Passes.Rain == 0 {
		return nil
	}
	passes, err := rainfall.Passes(plan.Passes.Rain)
	plan.Passes.Rule = passes
	return s.notes.keep(err, s.start, s.input.Days)
}

// grazer tells whether hay stands in for a group's grass; pigs and poultry
// other than geese have a ration instead.
func (s *setting) grazer(group int) bool {
	kind := s.herd[group].Class.Kind
	return kind.Ruminant() || kind.Equine() || kind == herd.Rabbits || kind == herd.Geese
}

func (s *setting) fillHay(plan *Plan, r *season.Result) error {
	h := &plan.Hay
	last := -1
	for i := range r.Fed { // by day
		fed := &r.Fed[i]
		if !s.grazer(fed.Group) {
			h.Ration += units.DryMatter(fed.Hay)
			continue
		}
		h.Eaten += units.DryMatter(fed.Hay)
		if fed.Day != last {
			h.Days++
			last = fed.Day
		}
	}
	h.Opening = s.opening(r)
	h.Carried = s.farm.asFed(h.Eaten)
	h.Store = s.farm.Feed.Hay
	cut := units.DryMatter(0)
	for i := range r.Days {
		cut += units.DryMatter(r.Days[i].Cut)
	}
	h.Made = units.FreshFeed(float64(s.farm.kept(cut)) / float64(s.farm.hayDryMatter()))
	h.Short = max(0, h.Carried-h.Store-h.Made)
	if price := s.farm.Prices.Hay; price != nil {
		h.Cost = price.Of(h.Short, 2)
	}
	return nil
}

func (s *setting) fillWater(plan *Plan, _ *season.Result) error {
	plan.Water = make([]Drink, len(s.herd))
	for g := range s.herd {
		most, on := &plan.Water[g], 0
		most.Group = s.farm.Groups[g].ID
		most.Known = s.drink(g, units.High, func(from, _ int, drink units.WaterRate) {
			if drink > most.High {
				most.High, on = drink, from
			}
		})
		s.drink(g, units.Low, func(from, to int, drink units.WaterRate) {
			if from <= on && on < to && most.High > 0 {
				most.Low = drink
			}
		})
	}
	return nil
}

// left is one of the four figures of Manure.
type left struct {
	what herd.Excreta
	sum  func(*Manure) *units.Mass
}

var lefts = []left{
	{herd.ExcretaManure, func(m *Manure) *units.Mass { return &m.Mass }},
	{herd.ExcretaNitrogen, func(m *Manure) *units.Mass { return &m.Nitrogen }},
	{herd.ExcretaPhosphate, func(m *Manure) *units.Mass { return &m.Phosphate }},
	{herd.ExcretaPotash, func(m *Manure) *units.Mass { return &m.Potash }},
}

// nutrientOf names what is left as the manure table does.
var nutrientOf = map[herd.Excreta]herd.Nutrient{
	herd.ExcretaNitrogen: herd.Nitrogen, herd.ExcretaPhosphate: herd.Phosphate, herd.ExcretaPotash: herd.Potash,
}

func (s *setting) fillManure(plan *Plan, _ *season.Result) error {
	plan.Manure = make([]Manure, 0, len(s.herd))
	for g := range s.herd {
		m := Manure{Group: s.farm.Groups[g].ID}
		class := &s.herd[g].Class
		if m.Row = class.Excretion; m.Row != "" {
			m.Row += ", " + class.ExcretionBy.String()
		} else if class.Manure > herd.ManureUnknown {
			m.Row = class.Manure.String()
		}
		for _, l := range lefts {
			if err := s.addManure(l, &m, g); err != nil {
				return err
			}
		}
		m.Known = len(m.Missing) < len(lefts)
		plan.Manure = append(plan.Manure, m)
	}
	return nil
}

// addManure sums what a group leaves over the season, stretch of like days by
// stretch.
func (s *setting) addManure(l left, m *Manure, group int) error {
	for _, sp := range s.spells[group] {
		from := max(sp.from, s.first)
		if from >= sp.to {
			continue
		}
		mass, known, err := leftBy(&s.herd[group].Class, l.what, sp.state, units.Days(sp.to-from))
		if err = s.notes.keep(err, s.date(from), sp.to-from); err != nil {
			return err
		}
		if !known {
			m.Missing = append(m.Missing, l.what)
			return nil
		}
		*l.sum(m) += mass
	}
	return nil
}

// leftBy gives what animals in one state leave over a time, and whether print has
// a figure.
func leftBy(class *herd.Class, what herd.Excreta, state herd.State, days units.Days) (units.Mass, bool, error) {
	if class.Manure > herd.ManureUnknown {
		weight := units.LiveWeight(state.Head) * state.Weight
		if what == herd.ExcretaManure {
			mass, err := herd.ManureMass(class.Manure, weight, days)
			return mass, true, err
		}
		mass, err := herd.NutrientMass(class.Manure, nutrientOf[what], herd.Excreted, weight, days)
		return mass, true, err
	}
	if !excreted()[excretion{class.Excretion, class.ExcretionBy, what}] {
		return 0, false, nil
	}
	mass, err := herd.Excretion(class.Excretion, class.ExcretionBy, what, state.Head, state.Weight, days)
	return mass, true, err
}

// excretion is a figure of what animals leave.
type excretion struct {
	animal string
	by     herd.ExcretionSource
	what   herd.Excreta
}

// excreted tells which figures print has of what animals leave, so that nobody needs
// to be refused one to know.
var excreted = sync.OnceValue(func() map[excretion]bool {
	all := map[excretion]bool{}
	for _, row := range herd.ExcretionRows() {
		for _, l := range lefts {
			if _, err := herd.Excretion(row.Animal, row.By, l.what, 1, units.LivePound, 1); err == nil {
				all[excretion{row.Animal, row.By, l.what}] = true
			}
		}
	}
	return all
})

func (s *setting) fillFence(plan *Plan, _ *season.Result) error {
	f := &plan.Fence
	for i := range s.farm.Rotations {
		r := &s.farm.Rotations[i]
		strips := (int(r.Groups[len(r.Groups)-1].Behind) + 1) * max(1, r.MovesADay)
		widest := units.Length(0)
		for _, id := range r.Land {
			widest = max(widest, s.farm.Land[s.farm.landIndex(id)].Width)
		}
		if widest == 0 {
			continue // paddocks only: nothing is moved
		}
		cross, err := grazing.CrossWires(widest, float64(strips))
		if err != nil {
			return err
		}
		f.Strips += strips
		f.Cross += cross
	}
	if roll := s.farm.Fence.Roll; roll > 0 {
		f.Rolls = int(math.Ceil(float64(f.Cross/roll) - 1e-9))
	}
	if err := s.fillSides(f); err != nil {
		return err
	}
	return s.fillCurrent(f)
}

// fillCurrent fills in what electric fence of that length wants.
func (s *setting) fillCurrent(f *FenceNeed) (err error) {
	if s.farm.Fence.Dead {
		return nil
	}
	if f.Energizer, err = grazing.EnergizerOutput(f.Sides + f.Cross); err != nil {
		return err
	}
	f.Rods, err = grazing.GroundRod(f.Energizer, grazing.RodUtility)
	return err
}

// fillSides adds up the sides of lanes and paddocks. Adjoining lanes of one
// size share their sides.
func (s *setting) fillSides(f *FenceNeed) error {
	for i := range s.farm.Land {
		l := &s.farm.Land[i]
		sides, err := grazing.FenceLength(l.Area, 1)
		if !l.isPaddock() {
			alike := func(other Land) bool {
				return s.farm.Fence.Adjoining && other.Width == l.Width && other.Length == l.Length
			}
			if slices.ContainsFunc(s.farm.Land[:i], alike) {
				continue // counted with the first of its size
			}
			lanes := 1
			for _, other := range s.farm.Land[i+1:] {
				if alike(other) {
					lanes++
				}
			}
			sides, err = grazing.LaneSides(l.Length, l.Width, float64(lanes))
		}
		if err != nil {
			return err
		}
		f.Sides += sides
		f.Assumed = f.Assumed || l.isPaddock()
	}
	return nil
}

// text prints a quantity in the reader's units.
func (s *setting) text(q document.Shown) string { return q.In(s.farm.Units) }

// said makes a quantity in the reader's units an argument of a text.
func (s *setting) said(q document.Shown) value { return said(s.text(q)) }
