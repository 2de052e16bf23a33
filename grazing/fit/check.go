package fit

import (
	"context"
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"

	"example.org/soum/forage"
	"example.org/soum/herd"
	"example.org/soum/internal/document"
	"example.org/soum/internal/english"
	"example.org/soum/internal/rows"
	"example.org/soum/units"
)

// The most that a question may hold, so that the worst is answered within half a
// minute and most in a second.
const (
	mostStock = 12
	mostRules = 50
	mostLand  = 200
)

// orOwnRow is what may stand in place of the name of a row.
const orOwnRow = ", or a row of your own"

// yearDays are the days of the months of a common year.
var yearDays = [12]units.Days{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31}

// plants is how many classes of plants there are.
const plants = int(herd.PlantsBrowse)

// kept is a stock with its figures settled, by month where they change.
type kept struct {
	id     string
	class  herd.Class
	weight units.LiveWeight
	each   units.AnimalUnits
	need   [12]float64 // dry matter of one head
	drinks [12]float64 // of one head, a day
	hay    bool        // hay stands in for what it grazes
	diet   [plants]units.Span[units.Fraction]
	margin float64
}

// settle checks the question and makes it ready at an end of the printed spans.
func (f *Question) settle(end units.End) (*model, error) {
	m := &model{ctx: context.Background(), question: f, end: end}
	for _, check := range []func(*model) error{f.settleForm, f.settleLand, f.settleStock, f.settleMoney, f.settleRules} {
		if err := check(m); err != nil {
			return nil, err
		}
	}
	return m, nil
}

func (f *Question) settleForm(m *model) error {
	switch {
	case f.Version != 1:
		return document.Wrong("version", f.Version, "is no known version of the form", "1")
	case f.Goal.String() == "":
		return document.Wrong("goal", int(f.Goal), "is no goal", `"animal units", "least hay" or "margin"`)
	case m.end < units.Low || m.end > units.High:
		return document.Wrong("end", int(f.End), "is no end of a span", `"low", "middle" or "high"`)
	case !(f.Carry >= 0 && f.Carry < 1):
		return document.Wrong("carry", f.Carry, "is no share that can be carried", "0 % to below 100 %")
	case !(f.Hay.Store >= 0 && f.Hay.Store < 1e9):
		return document.Wrong("hay.store", f.Hay.Store, "is negative or beyond any store", "0 or more")
	case !(f.Hay.Buy >= 0 && f.Hay.Buy < 1e9):
		return document.Wrong("hay.buy", f.Hay.Buy, "is negative or beyond any load", "0 or more")
	case !(f.hayDryMatter() >= 1*units.Percent && f.hayDryMatter() <= 1):
		return document.Wrong("hay.dry_matter", f.Hay.DryMatter, "is no dry matter of hay", "1 % to 100 %")
	case !(f.Hay.Waste >= 0 && f.Hay.Waste <= 99*units.Percent):
		return document.Wrong("hay.waste", f.Hay.Waste, "is no share that can be wasted", "0 % to 99 %")
	case f.Water.Supply < 0 || f.Water.Supply-f.Water.Supply != 0:
		return document.Wrong("water.supply", f.Water.Supply, "is negative", "above 0")
	}
	return nil
}

func (f *Question) settleLand(m *model) error {
	if len(f.Land) == 0 || len(f.Land) > mostLand {
		return document.Wrong("land", len(f.Land), "pieces of land cannot be fitted", "1 to "+strconv.Itoa(mostLand))
	}
	m.land = make([][12][plants]float64, len(f.Land))
	ids := map[string]bool{}
	for i := range f.Land {
		l, path := &f.Land[i], fmt.Sprintf("land[%d]", i)
		if err := document.CheckID(l.ID, ids[l.ID]); err != nil {
			return document.Inside(path, err)
		}
		ids[l.ID] = true
		switch {
		case !(l.Area > 0):
			return document.NotAbove0(path+".area", l.Area, "an area above 0")
		case l.Area > 1e10:
			return document.Wrong(path+".area", l.Area, "is larger than any farm", "at most 1,000,000 ha")
		case !(l.Use > 0 && l.Use <= 1):
			return document.Wrong(path+".use", l.Use, "is no share that is eaten", "above 0 % and up to 100 %")
		case !(l.Forbs >= 0 && l.Forbs <= 1):
			return document.Wrong(path+".forbs", l.Forbs, "is no share", "0 % to 100 %")
		case !(l.Browse >= 0 && l.Browse <= 1):
			return document.Wrong(path+".browse", l.Browse, "is no share", "0 % to 100 %")
		case l.Forbs+l.Browse > 1+1e-9:
			return document.Wrong(path+".browse", l.Browse, "and the forbs are more than all that grows", "forbs and browse together up to 100 %")
		}
		yield, shares, err := l.growth(path)
		if err != nil {
			return err
		}
		grass := max(0, 1-l.Forbs-l.Browse)
		for month, share := range shares {
			usable, err := forage.Usable(yield*units.Yield(share), l.Area, l.Use)
			if units.Impossible(err) {
				return document.Wrong(path, l.ID, "cannot be reckoned: "+err.Error(), "figures that go together")
			}
			for k, part := range [plants]units.Fraction{grass, l.Forbs, l.Browse} {
				m.land[i][month][k] = float64(usable) * float64(part)
				m.supply[month][k] += m.land[i][month][k]
			}
			m.grows[month] = m.grows[month] || usable > 0
		}
	}
	return nil
}

// growth gives the land's yield of a year and the shares of the months.
func (l *Land) growth(path string) (units.Yield, []units.Fraction, error) {
	yield, shares := l.Yield, l.Months
	if l.Pasture.Name != "" || l.Pasture.Row != nil {
		row, err := rows.Pasture(&l.Pasture)
		if err != nil {
			return 0, nil, document.NoRow(path+".pasture", l.Pasture.Name, err, orOwnRow)
		}
		if yield, err = rows.Yield(row, l.Yield, l.Productivity); err != nil {
			return 0, nil, document.Wrong(path+".productivity", int(l.Productivity), "is no productivity", `"low", "medium" or "high"`)
		}
		if len(shares) == 0 {
			shares = row.Shares[:]
		}
	}
	if yield > 100 {
		return 0, nil, document.Wrong(path+".yield", yield, "is more than any land grows", "dry matter a year, up to 1,000 t/ha")
	}
	if !(yield > 0) {
		return 0, nil, document.NotAbove0(path+".yield", yield, "dry matter a year, above 0 and up to 1,000 t/ha, or a pasture row")
	}
	if len(shares) != 12 {
		return 0, nil, document.Wrong(path+".months", english.Plural(float64(len(shares)), "share"), "cannot make up a year", "twelve shares, January first, or a pasture row")
	}
	sum := units.Fraction(0)
	for i, share := range shares {
		if !(share >= 0 && share <= 1) {
			return 0, nil, document.Wrong(fmt.Sprintf("%s.months[%d]", path, i), share, "is no share", "0 % to 100 %")
		}
		sum += share
	}
	if sum < 0.9 || sum > 1.1 {
		return 0, nil, document.Wrong(path+".months", sum, "do not make up a year", "a sum of 90 % to 110 %")
	}
	return yield, shares, nil
}

func (f *Question) settleStock(m *model) error {
	if len(f.Stock) == 0 || len(f.Stock) > mostStock {
		return document.Wrong("stock", len(f.Stock), "stocks cannot be fitted", "1 to "+strconv.Itoa(mostStock))
	}
	ids := map[string]bool{}
	for i := range f.Stock {
		c, path := &f.Stock[i], fmt.Sprintf("stock[%d]", i)
		s := kept{id: c.ID}
		class, err := rows.Class(&c.Class)
		if err != nil {
			return document.NoRow(path+".class", c.Class.Name, err, orOwnRow)
		}
		s.class = *class
		if s.id == "" {
			s.id = s.class.Name
		}
		if err := document.CheckID(s.id, ids[s.id]); err != nil {
			return document.Inside(path, err)
		}
		ids[s.id] = true
		if err := rows.CheckClass(&s.class); err != nil {
			return document.Inside(path+".class", err)
		}
		if err := c.check(path); err != nil {
			return err
		}
		if s.weight = c.Weight; s.weight == 0 {
			s.weight = s.class.Weight
		}
		if !(s.weight > 0 && s.weight <= 1e5) {
			return document.Wrong(path+".weight", s.weight, "is no weight of an animal", "above 0 and up to 100 t")
		}
		if s.each, err = herd.AnimalUnits(s.weight); units.Impossible(err) {
			return err
		}
		kind := s.class.Kind
		s.hay = kind.Ruminant() || kind.Equine() || kind == herd.Rabbits || kind == herd.Geese
		for _, settle := range []func(*model, *kept, string) error{c.settleNeed, c.settleDiet, c.settleWater} {
			if err := settle(m, &s, path); err != nil {
				return err
			}
		}
		m.stock = append(m.stock, s)
	}
	return nil
}

func (c *Stock) check(path string) error {
	month := func(v int) bool { return v >= 1 && v <= 12 }
	switch {
	case c.Weight < 0:
		return document.Wrong(path+".weight", c.Weight, "is negative", "the live weight of one animal, above 0")
	case !sensible(c.Least, 0):
		return document.Wrong(path+".least", c.Least, "is negative or beyond counting", "0 or more")
	case c.Most != nil && !sensible(*c.Most, 0):
		return document.Wrong(path+".most", *c.Most, "is negative or beyond counting", "0 or more")
	case c.Birth != 0 && !month(c.Birth):
		return document.Wrong(path+".birth", c.Birth, "is no month", "1 to 12")
	case c.Birth == 0 && c.Weaned != 0:
		return document.Wrong(path+".weaned", c.Weaned, "stands without birth", "the month of birth beside it")
	case c.Birth != 0 && (!month(c.Weaned) || c.Weaned == c.Birth):
		return document.Wrong(path+".weaned", c.Weaned, "is not the month in which the milk ends", "1 to 12, not the month of birth")
	case c.Birth != 0 && c.Stage != 0:
		return document.Wrong(path+".stage", strconv.Quote(c.Stage.String()), "stands beside birth, which gives the stages", "one or the other")
	case c.Drinks < 0 || c.Drinks-c.Drinks != 0:
		return document.Wrong(path+".drinks", c.Drinks, "is negative", "above 0")
	case c.Eats.String() == "":
		return document.Wrong(path+".eats", int(c.Eats), "is no way of choosing", `"printed", "up to printed", "own" or "anything"`)
	case c.Eats == DietOwn && c.Diet == nil:
		return document.Wrong(path+".diet", "", "is missing: it eats a diet of your own", "spans of grass, forbs and browse")
	case c.Eats != DietOwn && c.Diet != nil:
		return document.Wrong(path+".diet", "", "stands beside eats "+strconv.Quote(c.Eats.String()), `eats "own", or no diet`)
	}
	for i, v := range c.Months {
		if !month(v) || slices.Contains(c.Months[:i], v) {
			return document.Wrong(fmt.Sprintf("%s.months[%d]", path, i), v, "is no month, or stands twice", "1 to 12, each once")
		}
	}
	return nil
}

// here tells whether the stock is on the farm in a month, 0 for January.
func (c *Stock) here(month int) bool {
	return len(c.Months) == 0 || slices.Contains(c.Months, month+1)
}

// stage gives what the stock's stage is in a month, 0 for January.
func (c *Stock) stage(class herd.Class, month int) herd.Stage {
	switch {
	case c.Stage != 0:
		return c.Stage
	case c.Birth == 0:
		return class.Intake[0].Stage
	case (month+1-c.Birth+12)%12 < (c.Weaned-c.Birth+12)%12:
		return herd.StageLactating
	case (month+2-c.Birth+12)%12 == 0 && hasStage(class, herd.StageLateGestation):
		return herd.StageLateGestation
	}
	return herd.StageDry
}

func hasStage(class herd.Class, stage herd.Stage) bool {
	_, err := class.IntakeAt(stage)
	return err == nil
}

// settleNeed gives what one head grazes in each month. Stock that is fed a ration
// where nothing grows wants nothing then.
func (c *Stock) settleNeed(m *model, s *kept, path string) error {
	for month, days := range yearDays {
		stage := c.stage(s.class, month)
		intake, err := s.class.IntakeAt(stage)
		if err != nil {
			at := path + ".birth"
			if c.Stage != 0 {
				at = path + ".stage"
			}
			return document.Wrong(at, strconv.Quote(stage.String()), "is a stage that the class has no intake for", "another stage, or a row of your own: "+err.Error())
		}
		if !c.here(month) || (!s.hay && !m.grows[month]) {
			continue
		}
		hungry := m.end.Other()
		demand, err := herd.Demand(1, s.weight, intake.Share.At(hungry), s.class.Pasture.At(hungry))
		if units.Impossible(err) {
			return err
		}
		mass, err := herd.Feed(demand, days)
		if units.Impossible(err) {
			return err
		}
		s.need[month] = float64(mass)
	}
	return nil
}

func (c *Stock) settleDiet(m *model, s *kept, path string) error {
	switch c.Eats {
	case DietPrinted, DietUpToPrinted:
		for k := range s.diet {
			for i, end := range []units.Fraction{0, units.Whole} {
				share, err := herd.DietShare(s.class.Kind, herd.Plants(k+1), end)
				if err != nil {
					return document.Wrong(path+".eats", strconv.Quote(c.Eats.String()), "cannot be: there is no printed diet of "+s.class.Kind.String(), `"own" with a diet, or "anything"`)
				}
				*[]*units.Fraction{&s.diet[k].Low, &s.diet[k].High}[i] = share
			}
		}
		if c.Eats == DietUpToPrinted {
			s.diet[0].High = units.Whole
			for k := range s.diet {
				s.diet[k].Low = 0
			}
		}
	case DietOwn:
		s.diet = [plants]units.Span[units.Fraction]{c.Diet.Grass, c.Diet.Forbs, c.Diet.Browse}
	default:
		for k := range s.diet {
			s.diet[k] = units.Span[units.Fraction]{Low: 0, High: units.Whole}
		}
	}
	for k, span := range s.diet {
		if !document.IsShare(span) {
			return document.Wrong(path+".diet."+herd.Plants(k+1).String(), document.SpanText(span), "is no span of shares", "low and high from 0 % to 100 %")
		}
	}
	if len(mixtures(s.diet)) == 0 {
		return document.Wrong(path+".diet", "", "cannot add up to 100 %", "low ends that add up to 100 % at most, and high ends to 100 % at least")
	}
	return nil
}

func (c *Stock) settleWater(m *model, s *kept, path string) error {
	if m.question.Water.Supply == 0 {
		return nil
	}
	for month := range s.drinks {
		if !c.here(month) {
			continue
		}
		if s.drinks[month] = float64(c.Drinks); c.Drinks != 0 {
			continue
		}
		season := herd.Winter
		if m.grows[month] {
			season = herd.Summer
		}
		water, err := herd.Water(1, s.weight, s.class.WaterAt(c.stage(s.class, month)), season, units.Whole)
		if units.Impossible(err) {
			return document.Wrong(path+".drinks", "", "is missing: the source's water is limited, and there is no printed figure of what "+s.class.Name+" drinks", "water a day for one head")
		}
		s.drinks[month] = float64(water)
	}
	return nil
}

// settleMoney reads the prices, which must all be of one currency.
func (f *Question) settleMoney(m *model) error {
	see := func(path string, money units.Money) error {
		if m.currency == "" {
			m.currency = money.Currency
		}
		if money.Currency != m.currency || money.Currency == "" {
			return document.Wrong(path, money.String(), "is another currency than "+m.currency, "one currency in a question")
		}
		return nil
	}
	for i := range f.Stock {
		path := fmt.Sprintf("stock[%d].margin", i)
		if f.Stock[i].Margin == nil {
			if f.Goal == GoalMargin {
				return document.Wrong(path, "", "is missing: the goal is the best margin", "what one head brings in a year less what it costs, hay apart")
			}
			continue
		}
		if err := see(path, *f.Stock[i].Margin); err != nil {
			return err
		}
		if m.stock[i].margin = f.Stock[i].Margin.Amount.InexactFloat64(); !(m.stock[i].margin >= -1e9 && m.stock[i].margin <= 1e9) {
			return document.Wrong(path, f.Stock[i].Margin.String(), "is beyond any animal", "a sum under a thousand million")
		}
	}
	if f.Hay.Price == nil {
		if f.Goal == GoalMargin && f.Hay.Buy > 0 {
			return document.Wrong("hay.price", "", "is missing: the goal is the best margin, and hay may be bought", "money for a mass")
		}
		return nil
	}
	if err := see("hay.price", f.Hay.Price.Money); err != nil {
		return err
	}
	m.hayPrice = f.Hay.Price.Money.Amount.InexactFloat64() / float64(f.Hay.Price.Per)
	if !(m.hayPrice >= 0 && m.hayPrice <= 1e9) {
		return document.Wrong("hay.price", f.Hay.Price.String(), "is no price of hay", "0 or more")
	}
	return nil
}

// settleRules checks housing, needs and ratios, and that a goal of least hay asks
// for any animal.
func (f *Question) settleRules(m *model) error {
	for _, of := range []struct {
		path  string
		rules int
	}{{"housing", len(f.Housing)}, {"needs", len(f.Needs)}, {"ratios", len(f.Ratios)}} {
		if of.rules > mostRules {
			return document.Wrong(of.path, of.rules, "rules are too many", "up to "+strconv.Itoa(mostRules))
		}
	}
	for _, check := range []func(*model) error{f.checkHousing, f.checkNeeds, f.checkRatios} {
		if err := check(m); err != nil {
			return err
		}
	}
	wanted := len(f.Needs) > 0 || slices.ContainsFunc(f.Stock, func(c Stock) bool { return c.Least > 0 })
	if f.Goal == GoalLeastHay && !wanted {
		return document.Wrong("goal", strconv.Quote(f.Goal.String()), "is met by no animals at all", "needs, or the fewest head of a stock, beside it")
	}
	return nil
}

func (f *Question) checkHousing(m *model) error {
	ids := map[string]bool{}
	for i := range f.Housing {
		h, path := &f.Housing[i], fmt.Sprintf("housing[%d]", i)
		if err := document.CheckID(h.ID, ids[h.ID]); err != nil {
			return document.Inside(path, err)
		}
		ids[h.ID] = true
		if !sensible(h.Room, 0) {
			return document.Wrong(path+".room", h.Room, "is negative or beyond counting", "0 or more")
		}
		if err := m.checkEach(path+".takes", h.Takes); err != nil {
			return err
		}
	}
	return nil
}

func (f *Question) checkNeeds(m *model) error {
	ids := map[string]bool{}
	for i := range f.Needs {
		n, path := &f.Needs[i], fmt.Sprintf("needs[%d]", i)
		if err := document.CheckID(n.ID, ids[n.ID]); err != nil {
			return document.Inside(path, err)
		}
		ids[n.ID] = true
		if !sensible(n.Least, 0) || n.Least == 0 {
			return document.Wrong(path+".least", n.Least, "is no number above 0", "above 0")
		}
		if err := m.checkEach(path+".gives", n.Gives); err != nil {
			return err
		}
	}
	return nil
}

// checkEach checks numbers by the id of stock.
func (m *model) checkEach(path string, of map[string]float64) error {
	if len(of) == 0 {
		return document.Wrong(path, "{}", "names no stock", "by the id of stock, a number above 0")
	}
	for _, id := range slices.Sorted(maps.Keys(of)) {
		if err := m.checkStock(path+"."+id, id); err != nil {
			return err
		}
		if !sensible(of[id], leastCounted) {
			return document.Wrong(path+"."+id, of[id], "is no number above 0", "a number above 0")
		}
	}
	return nil
}

// checkStock checks that an id is that of stock.
func (m *model) checkStock(path, id string) error {
	if m.index(id) < 0 {
		return document.Wrong(path, strconv.Quote(id), "is the id of no stock", "one of: "+strings.Join(m.ids(), ", "))
	}
	return nil
}

func (f *Question) checkRatios(m *model) error {
	for i := range f.Ratios {
		r, path := &f.Ratios[i], fmt.Sprintf("ratios[%d]", i)
		if err := r.checkStock(m, path); err != nil {
			return err
		}
		if err := r.checkNumbers(path); err != nil {
			return err
		}
	}
	return nil
}

func (r *Ratio) checkStock(m *model, path string) error {
	if err := m.checkStock(path+".of", r.Of); err != nil {
		return err
	}
	if len(r.To) == 0 {
		return document.Wrong(path+".to", "[]", "names no stock that "+r.Of+" could go with", "the ids of other stock")
	}
	for i, id := range r.To {
		at := fmt.Sprintf("%s.to[%d]", path, i)
		if err := m.checkStock(at, id); err != nil {
			return err
		}
		switch {
		case id == r.Of:
			return document.Wrong(at, strconv.Quote(id), "stands against itself: a ratio is of one stock to another", "the id of other stock")
		case slices.Contains(r.To[:i], id):
			return document.Wrong(at, strconv.Quote(id), "stands twice", "each stock once")
		}
	}
	return nil
}

func (r *Ratio) checkNumbers(path string) error {
	if r.Least == nil && r.Most == nil {
		return document.Wrong(path+".least", "", "is missing, and so is most: the ratio asks for nothing", "the fewest or the most head, or both")
	}
	for _, one := range []struct {
		key   string
		value *float64
	}{{"each", r.Each}, {"least", r.Least}, {"most", r.Most}} {
		switch at := path + "." + one.key; {
		case one.value == nil:
		case !(*one.value > 0):
			return document.Wrong(at, *one.value, "is no ratio above 0", "a number above 0")
		case !sensible(*one.value, leastCounted):
			return document.Wrong(at, *one.value, "is no number to count animals with", "0.000001 to 1,000,000")
		case one.key != "each" && !sensible(*one.value/r.each(), leastCounted):
			return document.Wrong(at, *one.value, "for each "+units.Number(r.each())+" is no ratio of animals", "0.000001 to 1,000,000 of the one to one of the other")
		}
	}
	if r.Least != nil && r.Most != nil && *r.Most < *r.Least {
		return document.Wrong(path+".most", *r.Most, "is below the fewest, "+units.Number(*r.Least), "a number not below the fewest")
	}
	return nil
}

func (m *model) index(id string) int {
	return slices.IndexFunc(m.stock, func(s kept) bool { return s.id == id })
}

// ids are those of the stock, in their order.
func (m *model) ids() (all []string) {
	for i := range m.stock {
		all = append(all, m.stock[i].id)
	}
	return all
}
