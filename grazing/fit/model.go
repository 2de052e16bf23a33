package fit

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"math"
	"slices"

	"github.com/shopspring/decimal"

	"example.org/soum/herd"
	"example.org/soum/internal/document"
	"example.org/soum/internal/english"
	"example.org/soum/internal/linear"
	"example.org/soum/units"
)

// model is a question with its figures settled at one end of the printed
// spans, and the linear program made of it.
type model struct {
	ctx      context.Context // of a question that is answered
	question *Question
	end      units.End
	supply   [12][plants]float64   // eatable dry matter
	land     [][12][plants]float64 // of that, by piece of land
	grows    [12]bool
	stock    []kept
	currency string
	hayPrice float64 // for a kilogram as it lies

	pools   []pool
	columns int
	carried [12][plants]int // columns of what is left for the next month; 0: none is
	bought  int             // the column of bought hay
	rows    []linear.Row
	ofRule  []int // of each row its rule; -1: what holds by itself
	rules   []Rule
}

// pool is all stock of one diet: whatever they eat together, each can have
// its part of, since any mixture within a diet can be parted in proportion.
type pool struct {
	stock    []int
	hay      bool
	mixtures [][plants]float64
	eats     [12]int // the first column of each month; one a mixture
	fed      [12]int // the column of hay, where there is hay for them
}

// mixtures gives the corners of a diet: the shares, adding up to 1, of which
// every mixture that the spans allow is made.
func mixtures(diet [plants]units.Span[units.Fraction]) [][plants]float64 {
	const near = 1e-9
	var all [][plants]float64
	for free := range plants { // two classes at an end, and the third takes the rest
		for ends := range 4 {
			var shares [plants]float64
			rest, bit := 1.0, 0
			for k, span := range diet {
				if k == free {
					continue
				}
				shares[k] = float64(span.Low)
				if ends>>bit&1 == 1 {
					shares[k] = float64(span.High)
				}
				rest -= shares[k]
				bit++
			}
			if rest < float64(diet[free].Low)-near || rest > float64(diet[free].High)+near {
				continue
			}
			if shares[free] = rest; rest < near {
				shares[free] = 0 // the rounding of a sum is no share
			}
			same := func(other [plants]float64) bool {
				for k := range shares {
					if math.Abs(shares[k]-other[k]) > near {
						return false
					}
				}
				return true
			}
			if !slices.ContainsFunc(all, same) {
				all = append(all, shares)
			}
		}
	}
	return all
}

// build makes the program's columns and rows.
func (m *model) build() {
	m.columns = len(m.stock)
	for i := range m.stock {
		m.pool(i)
	}
	column := func() int { m.columns++; return m.columns - 1 }
	for i := range m.pools {
		p := &m.pools[i]
		for month := range yearDays {
			p.eats[month] = m.columns
			m.columns += len(p.mixtures)
			if p.hay {
				p.fed[month] = column()
			}
		}
	}
	if m.question.Carry > 0 {
		for month := range yearDays {
			for k := range plants {
				m.carried[month][k] = column()
			}
		}
	}
	m.bought = column()
	m.growthRows()
	m.needRows()
	m.hayRows()
	m.waterRows()
	m.ownRows()
}

// pool puts a stock with those of the same diet.
func (m *model) pool(i int) {
	s := &m.stock[i]
	same := func(p pool) bool {
		other := &m.stock[p.stock[0]]
		return other.hay == s.hay && other.diet == s.diet
	}
	at := slices.IndexFunc(m.pools, same)
	if at < 0 {
		at = len(m.pools)
		m.pools = append(m.pools, pool{hay: s.hay, mixtures: mixtures(s.diet)})
	}
	m.pools[at].stock = append(m.pools[at].stock, i)
}

// row adds a row of a rule, or, with -1, one that holds by itself.
func (m *model) row(rule int, most float64) []float64 {
	coefficients := make([]float64, m.columns)
	m.rows = append(m.rows, linear.Row{Coefficients: coefficients, Most: most})
	m.ofRule = append(m.ofRule, rule)
	return coefficients
}

func (m *model) rule(kind RuleKind, id string, months []int, english string) int {
	m.rules = append(m.rules, Rule{Kind: kind, ID: id, Months: document.Listed(months), English: english})
	return len(m.rules) - 1
}

// growthRows: what is eaten of a class of plants in a month, and what is kept of
// it for the next, is at most what grew and what was kept from the month before.
func (m *model) growthRows() {
	for month := range yearDays {
		for k := range plants {
			row := m.row(m.growthRule(month, k), m.supply[month][k])
			for i := range m.pools {
				for v, mixture := range m.pools[i].mixtures {
					row[m.pools[i].eats[month]+v] = mixture[k]
				}
			}
			if m.question.Carry > 0 {
				row[m.carried[month][k]] = 1
				row[m.carried[(month+11)%12][k]] = -float64(m.question.Carry)
			}
		}
	}
}

// needRows: what the stock of a diet eat and are fed in a month is what they want.
func (m *model) needRows() {
	for i := range m.pools {
		p := &m.pools[i]
		for month := range yearDays {
			row := m.row(-1, 0)
			for _, s := range p.stock {
				row[s] = m.stock[s].need[month]
			}
			for v := range p.mixtures {
				row[p.eats[month]+v] = -1
			}
			if p.hay {
				row[p.fed[month]] = -1
			}
		}
	}
}

func (m *model) hayRows() {
	f := m.question
	row := m.row(m.rule(RuleHay, "", nil, "the hay in store"), float64(f.Hay.Store))
	for i := range m.pools {
		if p := &m.pools[i]; p.hay {
			for month := range yearDays {
				row[p.fed[month]] = f.hayPerDry()
			}
		}
	}
	row[m.bought] = -1
	buying := -1
	if f.Hay.Buy > 0 {
		buying = m.rule(RuleBuying, "", nil, "the hay that may be bought")
	}
	m.row(buying, float64(f.Hay.Buy))[m.bought] = 1
}

// waterRows: one for the months in which every head drinks the same.
func (m *model) waterRows() {
	if m.question.Water.Supply == 0 {
		return
	}
	same := func(a, b int) bool {
		return !slices.ContainsFunc(m.stock, func(s kept) bool { return s.drinks[a] != s.drinks[b] })
	}
	done := [12]bool{}
	for first := range yearDays {
		if done[first] {
			continue
		}
		var months []int
		for month := first; month < 12; month++ {
			if !done[month] && same(first, month) {
				done[month] = true
				months = append(months, month+1)
			}
		}
		row := m.row(m.rule(RuleWater, "", months, "the water of the source "+inMonths(months)), float64(m.question.Water.Supply))
		for i := range m.stock {
			row[i] = m.stock[i].drinks[first]
		}
	}
}

// ownRows are the user's: housing, needs, ratios, fewest and most head.
func (m *model) ownRows() {
	for i := range m.question.Housing {
		h := &m.question.Housing[i]
		row := m.row(m.rule(RuleHousing, h.ID, nil, "the room of "+h.ID+" ("+counted(h.Room, h.Unit)+")"), h.Room)
		for id, takes := range h.Takes {
			row[m.index(id)] = takes
		}
	}
	for i := range m.question.Needs {
		n := &m.question.Needs[i]
		row := m.row(m.rule(RuleNeed, n.ID, nil, "the need of "+n.ID+" (at least "+counted(n.Least, n.Unit)+")"), -n.Least)
		for id, gives := range n.Gives {
			row[m.index(id)] = -gives
		}
	}
	for i := range m.question.Ratios {
		r := &m.question.Ratios[i]
		if r.Least != nil {
			m.ratioRow(r, RuleRatioLeast, -1, *r.Least)
		}
		if r.Most != nil {
			m.ratioRow(r, RuleRatioMost, 1, *r.Most)
		}
	}
	for i := range m.question.Stock {
		c, id := &m.question.Stock[i], m.stock[i].id
		if c.Most != nil {
			m.row(m.rule(RuleMost, id, nil, "at most "+m.head(*c.Most, "", id)), *c.Most)[i] = 1
		}
		if c.Least > 0 {
			m.row(m.rule(RuleLeast, id, nil, "at least "+m.head(c.Least, "", id)), -c.Least)[i] = -1
		}
	}
}

// ratioRow holds a stock to so many head for each of the others: at most with a
// sign of 1, at least with -1.
func (m *model) ratioRow(r *Ratio, kind RuleKind, sign, head float64) {
	row := m.row(m.rule(kind, r.Of, nil, r.text(kind, head)), 0)
	row[m.index(r.Of)] = sign
	for _, id := range r.To {
		row[m.index(id)] = -sign * head / r.each()
	}
}

// goals gives the coefficients of the goal, to be made the most, and of what
// decides between herds that are equally good.
func (m *model) goals() (first, second []float64) {
	animals, hay := make([]float64, m.columns), make([]float64, m.columns)
	for i := range m.stock {
		animals[i] = float64(m.stock[i].each)
	}
	for i := range m.pools {
		for month := range yearDays {
			if m.pools[i].hay {
				hay[m.pools[i].fed[month]] = -m.question.hayPerDry()
			}
		}
	}
	hay[m.bought] = -1 // none is bought that is not fed
	switch m.question.Goal {
	case GoalLeastHay:
		for i := range animals {
			animals[i] = -animals[i]
		}
		animals[m.bought] = -1
		hay[m.bought] = 0
		return hay, animals
	case GoalMargin:
		money := make([]float64, m.columns)
		for i := range m.stock {
			money[i] = m.stock[i].margin
		}
		money[m.bought] = -m.hayPrice
		return money, hay
	}
	return animals, hay
}

// solve answers the program with a goal, and some more rows.
func (m *model) solve(goal []float64, more ...linear.Row) (linear.Answer, error) {
	if m.ctx.Err() != nil {
		return linear.Answer{}, m.ctx.Err()
	}
	p := linear.Program{Objective: goal, Rows: slices.Concat(m.rows, more)}
	return p.Solve()
}

// bound is a row that holds a stock's head at most, or, with a sign of -1, at
// least.
func (m *model) bound(stock int, sign, head float64) linear.Row {
	coefficients := make([]float64, m.columns)
	coefficients[stock] = sign
	return linear.Row{Coefficients: coefficients, Most: sign * head}
}

// decisive is the weight of the second goal beside the first, once both have
// coefficients of about one.
const decisive = 1e-6

// joined is one goal made of two, the second of which only decides between
// herds that are equal by the first.
func joined(first, second []float64) []float64 {
	both := make([]float64, len(first))
	one, other := greatest(first), greatest(second)
	for i := range both {
		both[i] = first[i]/one + float64(decisive*second[i]/other)
	}
	return both
}

func greatest(of []float64) float64 {
	most := 0.0
	for _, v := range of {
		most = max(most, math.Abs(v))
	}
	if most == 0 {
		return 1
	}
	return most
}

// best gives the best answer by the first goal, and of those the best by the
// second; the prices are of the first.
func (m *model) best(more ...linear.Row) (linear.Answer, error) {
	first, second := m.goals()
	pure, err := m.solve(first, more...)
	if err != nil {
		return linear.Answer{}, err
	}
	decided, err := m.solve(joined(first, second), more...)
	if err != nil {
		return pure, nil //nolint:nilerr // the second goal is a nicety
	}
	decided.Value = 0
	for i, v := range first {
		decided.Value += float64(v * decided.X[i])
	}
	if decided.Value < pure.Value-1e-9*(1+math.Abs(pure.Value)) {
		return pure, nil
	}
	decided.Value, decided.Prices = pure.Value, pure.Prices
	return decided, nil
}

// fit answers the question.
func (m *model) fit() (Answer, error) {
	m.build()
	a := Answer{Goal: m.question.Goal}
	answer, err := m.best()
	switch {
	case errors.Is(err, linear.ErrInfeasible):
		a.Clash = m.clash()
	case err != nil:
		return Answer{}, m.explain(err)
	default:
		a.Fits = true
		a.Relaxed = m.herd(answer)
		if err := m.fitWhole(&a, answer); err != nil {
			return Answer{}, err
		}
		if a.Binds, err = m.binds(answer, &a.Relaxed); err != nil {
			return Answer{}, err
		}
	}
	if a.Spans, err = m.spans(); err != nil {
		return Answer{}, err
	}
	a.Clash, a.Binds, a.Months = document.Listed(a.Clash), document.Listed(a.Binds), document.Listed(a.Months)
	a.Relaxed.Head, a.Whole.Head = document.Listed(a.Relaxed.Head), document.Listed(a.Whole.Head)
	a.English = m.text(&a)
	if err := m.ctx.Err(); err != nil { // what was ended on the way is no answer
		return Answer{}, err
	}
	return a, nil
}

// explain tells which stock has no limit, or that the numbers are no farm's.
func (m *model) explain(err error) error {
	var unbounded *linear.Unbounded
	if m.ctx.Err() != nil {
		return m.ctx.Err()
	}
	if !errors.As(err, &unbounded) {
		return document.Wrong("stock", len(m.stock), "stocks on this land cannot be reckoned with: the numbers lie too far apart", "numbers of a farm")
	}
	var free []string
	at := 0
	for i := range m.stock {
		if unbounded.Ray[i] > 0 {
			if len(free) == 0 {
				at = i
			}
			free = append(free, m.stock[i].id)
		}
	}
	return document.Wrong(fmt.Sprintf("stock[%d]", at), english.List(free), "could be kept without end: nothing is taken of what the land grows, and no rule holds the number", "the most head, housing, or months in which the land grows")
}

// herd reads a herd off an answer.
func (m *model) herd(answer linear.Answer) Herd {
	h := Herd{Value: near(answer.Value)}
	money := units.Money{}
	for i := range m.stock {
		head := near(answer.X[i])
		h.Head = append(h.Head, Head{ID: m.stock[i].id, Head: head})
		h.Units += units.AnimalUnits(head) * m.stock[i].each
		if margin := m.question.Stock[i].Margin; margin != nil {
			money, _ = money.Add(margin.Times(decimal.NewFromFloat(head))) // one currency: settleMoney
		}
	}
	for i := range m.pools {
		for month := range yearDays {
			if m.pools[i].hay {
				h.Hay += units.FreshFeed(answer.X[m.pools[i].fed[month]] * m.question.hayPerDry())
			}
		}
	}
	h.Hay = units.FreshFeed(near(float64(h.Hay)))
	if h.Bought = max(0, h.Hay-m.question.Hay.Store); h.Bought < 1e-6 {
		h.Bought = 0
	}
	if price := m.question.Hay.Price; price != nil {
		h.Cost = price.Of(h.Bought, moneyPlaces)
	}
	if money.Currency != "" {
		h.Margin, _ = money.Add(h.Cost.Times(decimal.NewFromInt(-1)))
		h.Margin = h.Margin.Round(moneyPlaces)
	}
	if m.question.Goal == GoalLeastHay {
		h.Value = float64(h.Hay)
	}
	return h
}

// moneyPlaces is how many places a sum of money is given to.
const moneyPlaces = 2

// near takes what is a whole number but for rounding as one.
func near(v float64) float64 {
	if whole := math.Round(v); math.Abs(v-whole) < 1e-9*(1+math.Abs(v)) {
		return whole + 0 // and -0 as 0
	}
	return v
}

// mostParts is how often a question is parted in two in search of the best herd
// of whole animals.
const mostParts = 150

// fitWhole seeks the best herd of whole animals.
func (m *model) fitWhole(a *Answer, relaxed linear.Answer) error {
	goal, _ := m.goals()
	best, found, lost := math.Inf(-1), []float64(nil), false
	try := func(rows []linear.Row) (linear.Answer, bool) {
		answer, err := m.solve(goal, rows...)
		if err != nil {
			lost = lost || !errors.Is(err, linear.ErrInfeasible) // what rounding has led astray may hold a better herd
			return answer, false
		}
		return answer, answer.Value > best+1e-9*(1+math.Abs(best)) || found == nil
	}
	floor := make([]float64, len(m.stock)) // the relaxed herd cut down to whole animals
	for i := range floor {
		floor[i] = math.Floor(near(relaxed.X[i]))
	}
	if answer, better := try(m.fixed(floor)); better {
		best, found = answer.Value, floor
	}
	open := [][]linear.Row{nil}
	for parts := 0; len(open) > 0 && parts < mostParts; parts++ {
		rows := open[len(open)-1]
		open = open[:len(open)-1]
		answer, better := try(rows)
		if !better {
			continue
		}
		at := m.parted(answer.X)
		if at < 0 {
			best, found = answer.Value, make([]float64, len(m.stock))
			for i := range found {
				found[i] = math.Round(answer.X[i])
			}
			continue
		}
		down := slices.Concat(rows, []linear.Row{m.bound(at, 1, math.Floor(answer.X[at]))})
		up := slices.Concat(rows, []linear.Row{m.bound(at, -1, math.Ceil(answer.X[at]))})
		if answer.X[at]-math.Floor(answer.X[at]) < 0.5 { // the nearer one is tried first
			open = append(open, up, down)
		} else {
			open = append(open, down, up)
		}
	}
	a.Proved = len(open) == 0 && !lost
	if found == nil {
		return nil
	}
	answer, err := m.best(m.fixed(found)...)
	if err != nil {
		return m.explain(err)
	}
	copy(answer.X, found)
	if a.Found = m.holds(answer.X); !a.Found {
		a.Proved = false
		return nil
	}
	a.Whole, a.Months = m.herd(answer), m.months(answer)
	return nil
}

// fixed are the rows that hold every stock at a head.
func (m *model) fixed(head []float64) []linear.Row {
	var rows []linear.Row
	for i, h := range head {
		rows = append(rows, m.bound(i, 1, h), m.bound(i, -1, h))
	}
	return rows
}

// parted gives the stock that is furthest from a whole number, -1 where all are
// whole.
func (m *model) parted(x []float64) int {
	at, furthest := -1, 1e-7
	for i := range m.stock {
		if off := math.Abs(x[i] - math.Round(x[i])); off > furthest*(1+x[i]*1e-6) {
			at, furthest = i, off
		}
	}
	return at
}

// holds checks every rule against a herd and what it eats.
func (m *model) holds(x []float64) bool {
	for _, row := range m.rows {
		sum, scale := 0.0, math.Abs(row.Most)
		for j, v := range row.Coefficients {
			sum += v * x[j]
			scale = max(scale, math.Abs(v*x[j]))
		}
		if sum > row.Most+1e-7*(1+scale) {
			return false
		}
	}
	return true
}

// months tells a year with a herd.
func (m *model) months(answer linear.Answer) []Month {
	var all []Month
	carry := float64(m.question.Carry)
	before := m.decemberLeft(answer)
	for month := range yearDays {
		of := Month{Month: month + 1}
		for i := range m.stock {
			of.Wanted += units.DryMatter(m.stock[i].need[month] * answer.X[i])
		}
		for i := range m.pools {
			if m.pools[i].hay {
				of.Hay += units.DryMatter(near(answer.X[m.pools[i].fed[month]]))
			}
		}
		eaten := m.eaten(answer, month)
		for k, feed := range []*Feed{&of.Grass, &of.Forbs, &of.Browse} {
			supply := m.supply[month][k] + before[k]*carry
			before[k] = near(max(0, supply-eaten[k]))
			*feed = Feed{Supply: units.DryMatter(supply), Eaten: units.DryMatter(near(eaten[k])), Left: units.DryMatter(before[k])}
		}
		all = append(all, of)
	}
	return all
}

// eaten is what is eaten in a month of each class of plants.
func (m *model) eaten(answer linear.Answer, month int) (eaten [plants]float64) {
	for i := range m.pools {
		p := &m.pools[i]
		for v, mixture := range p.mixtures {
			for k := range plants {
				eaten[k] += float64(mixture[k] * answer.X[p.eats[month]+v])
			}
		}
	}
	return eaten
}

// decemberLeft is what December leaves of each class of plants where every year
// is like the one before: what it would leave if January found nothing, and of
// that the part that has come all the way round, and so on.
func (m *model) decemberLeft(answer linear.Answer) (left [plants]float64) {
	carry, round := float64(m.question.Carry), 1.0
	for month := range yearDays {
		eaten := m.eaten(answer, month)
		for k := range left {
			left[k] = m.supply[month][k] + float64(left[k]*carry) - eaten[k]
		}
		round *= carry
	}
	for k := range left {
		left[k] = max(0, left[k]/(1-round))
	}
	return left
}

// spans tells the relaxed herd at each end of the printed intake.
func (m *model) spans() ([]AtEnd, error) {
	var all []AtEnd
	for end := units.Low; end <= units.High; end++ {
		other, err := m.question.settle(end)
		if err != nil {
			return nil, err
		}
		other.ctx = m.ctx
		other.build()
		span := AtEnd{End: end, Head: []Head{}}
		answer, err := other.best()
		switch {
		case errors.Is(err, linear.ErrInfeasible):
		case err != nil:
			return nil, other.explain(err)
		default:
			herd := other.herd(answer)
			span.Fits, span.Value, span.Head = true, herd.Value, herd.Head
		}
		all = append(all, span)
	}
	return all, nil
}

// clash gives a smallest set of rules that contradict one another: each is left
// out in turn, and stays out where the rest still do.
func (m *model) clash() []Rule {
	kept := make([]bool, len(m.rules))
	for i := range kept {
		kept[i] = true
	}
	contradicts := func() bool {
		p := linear.Program{Objective: make([]float64, m.columns)}
		for i, rule := range m.ofRule {
			if rule < 0 || kept[rule] {
				p.Rows = append(p.Rows, m.rows[i])
			}
		}
		if m.ctx.Err() != nil {
			return true
		}
		_, err := p.Solve()
		return errors.Is(err, linear.ErrInfeasible)
	}
	var all []Rule
	for i := range m.rules { // growth stands first, so that it stays only where it must
		kept[i] = false
		if !contradicts() {
			kept[i] = true
			all = append(all, m.rules[i])
		}
	}
	return all
}

// binds tells what holds the relaxed herd down, and asks the question again with
// one more of each.
func (m *model) binds(answer linear.Answer, relaxed *Herd) ([]Bind, error) {
	var all []Bind
	rows := m.rows
	defer func() { m.rows = rows }()
	more := func(rule Rule, price, by float64, change func(by float64)) error {
		if !(price > 0) {
			return nil
		}
		m.rows = slices.Clone(rows)
		change(by)
		with, err := m.best()
		if err != nil {
			return m.explain(err)
		}
		bind := Bind{Rule: rule, Price: price, More: by, Gain: near(with.Value - answer.Value), Changes: []Head{}}
		if !(bind.Gain > 1e-9*(1+math.Abs(answer.Value))) {
			return nil // by itself it gains nothing
		}
		for s, head := range m.herd(with).Head {
			if change := head.Head - relaxed.Head[s].Head; math.Abs(change) > 1e-6 {
				bind.Changes = append(bind.Changes, Head{ID: head.ID, Head: near(change)})
			}
		}
		bind.English = m.bindText(&bind)
		all = append(all, bind)
		return nil
	}
	for i := range m.question.Land {
		price, area := m.landPrice(answer, i), float64(m.question.Land[i].Area)
		rule := Rule{Kind: RuleLand, ID: m.question.Land[i].ID, Months: []int{}, English: "the land of " + m.question.Land[i].ID}
		if err := more(rule, price, m.oneMore(RuleLand, 0), func(by float64) { m.widen(i, by/area) }); err != nil {
			return nil, err
		}
	}
	for i, rule := range m.ofRule {
		if rule < 0 {
			continue
		}
		by := m.oneMore(m.rules[rule].Kind, m.rows[i].Most)
		if err := more(m.rules[rule], answer.Prices[i], by, func(by float64) { m.rows[i].Most += by }); err != nil {
			return nil, err
		}
	}
	slices.SortStableFunc(all, func(a, b Bind) int { return cmp.Compare(b.Gain, a.Gain) })
	return all, nil
}

// landPrice gives what a square metre more of a piece of land brings at the most:
// the rows of growth are the first ones.
func (m *model) landPrice(answer linear.Answer, land int) float64 {
	price := 0.0
	for month := range yearDays {
		for k := range plants {
			price += float64(answer.Prices[month*plants+k] * m.land[land][month][k])
		}
	}
	return price / float64(m.question.Land[land].Area)
}

// widen adds a share of a piece of land's growth to the rows of growth.
func (m *model) widen(land int, share float64) {
	for month := range yearDays {
		for k := range plants {
			m.rows[month*plants+k].Most += float64(share * m.land[land][month][k])
		}
	}
}

// oneMore is how much more of a rule is tried: a hectare or an acre of land, a
// tonne or short ton of feed, a hundred litres or gallons of water, one head, place
// or piece. Of what is asked
// for at least it is so much less.
func (m *model) oneMore(kind RuleKind, most float64) float64 {
	us := m.question.Units == units.US
	switch kind {
	case RuleGrowth, RuleHay, RuleBuying:
		if us {
			return float64(units.DryMatterShortTon)
		}
		return float64(units.DryMatterTonne)
	case RuleWater:
		if us {
			return float64(100 * units.GallonPerDay)
		}
		return float64(100 * units.LitrePerDay)
	case RuleLand:
		if us {
			return float64(units.Acre)
		}
		return float64(units.Hectare)
	case RuleNeed, RuleLeast:
		return min(1, -most)
	}
	return 1
}

// growthRule names the growth of a class of plants in a month. Where the land has
// none of it all year, and no diet asks for it, there is nothing to name.
func (m *model) growthRule(month, k int) int {
	grows, wanted := false, false
	for other := range yearDays {
		grows = grows || m.supply[other][k] > 0
	}
	for i := range m.pools {
		wanted = wanted || !slices.ContainsFunc(m.pools[i].mixtures, func(of [plants]float64) bool { return of[k] == 0 })
	}
	if !grows && !wanted {
		return -1
	}
	plant := herd.Plants(k + 1).String()
	return m.rule(RuleGrowth, plant, []int{month + 1}, plant+" "+inMonths([]int{month + 1}))
}
