// Package fit tells which numbers of which stock fit a farm's land through a year, what
// holds them down, and what one more of that would bring. Its question is a document,
// Question; Question.Answer answers it.
//
// The answer is a planning figure of a mean year: a plan of the season, and the grass
// itself, have the last word.
package fit

import (
	"context"
	"math"

	"example.org/soum/forage"
	"example.org/soum/grazing/farm"
	"example.org/soum/herd"
	"example.org/soum/internal/document"
	"example.org/soum/internal/rows"
	"example.org/soum/units"
)

// Question asks which numbers of which stock fit a farm. It is a document of its
// own beside the farm's: it knows no dates and no heights, and reckons with a
// year that is like the one before. As JSON its quantities are text with a unit,
// as a farm's are.
type Question struct {
	Version int            `json:"version" document:"required" allowed:"1, the version of this form"`
	Units   units.System   `json:"units,omitempty" allowed:"\"metric\" or \"US\": the reader's units in the answer's text"`
	Goal    Goal           `json:"goal" document:"required" allowed:"\"animal units\" for the most of them, \"least hay\", or \"margin\" for the best by your own prices"`
	End     units.End      `json:"end,omitempty" allowed:"\"low\" for hungry stock, \"middle\" or \"high\" for modest stock, by the printed spans of intake; middle if left out"`
	Land    []Land         `json:"land" document:"required"`  // what grows
	Stock   []Stock        `json:"stock" document:"required"` // what may be kept
	Carry   units.Fraction `json:"carry,omitempty" allowed:"the share of what a month leaves that can still be eaten in the next, 0 % to below 100 %; 0 % if left out"`
	Hay     Hay            `json:"hay,omitempty"`     // in store and to be bought
	Water   farm.Water     `json:"water,omitempty"`   // what the source gives
	Housing []Housing      `json:"housing,omitempty"` // what has only so much room
	Needs   []Need         `json:"needs,omitempty"`   // what the family wants at least
	Ratios  []Ratio        `json:"ratios,omitempty"`  // how many of one stock go with others
	Note    string         `json:"note,omitempty"`
	Extra   map[string]any `json:"-" document:"extra"`
}

// Goal is what the best herd has the most of.
type Goal int

// The goals.
const (
	GoalAnimalUnits Goal = iota + 1 // the most animal units, by weight
	GoalLeastHay                    // the least hay with which the needs are met
	GoalMargin                      // the most money by the user's own figures
)

// Land is land, and what grows on it for whom. Of the year's dry matter the
// user tells the shares that are forbs and browse; the rest is grass. Legumes
// count with the forbs, as in the printed diets: a sward with a third of clover
// is a third forbs. No source tells the shares of a place, so look: part the
// ground into patches, guess each patch's share of the bulk, and take shrubs that
// are eaten less of as land of their own with a use of their own.
type Land struct {
	ID           string              `json:"id" document:"required" allowed:"a name of your own, once"`
	Area         units.Area          `json:"area" document:"required" allowed:"an area above 0"`
	Pasture      forage.PastureRow   `json:"pasture,omitempty" allowed:"the name of a pasture row, or a row of your own; it may be left out where yield and months stand"`
	Productivity forage.Productivity `json:"productivity,omitempty" allowed:"\"low\", \"medium\" or \"high\"; medium if left out"`
	Yield        units.Yield         `json:"yield,omitempty" allowed:"dry matter a year, above 0, in place of the row's"`
	Months       []units.Fraction    `json:"months,omitempty" allowed:"twelve shares of the year's yield, January first, in place of the row's"`
	Use          units.Fraction      `json:"use" document:"required" allowed:"the share of what grows that is eaten, above 0 % and up to 100 %"`
	Forbs        units.Fraction      `json:"forbs,omitempty" allowed:"the share of the yield that is legumes and other herbs, 0 % to 100 %; 0 % if left out"`
	Browse       units.Fraction      `json:"browse,omitempty" allowed:"the share of the yield that is leaves and twigs, 0 % to 100 %; 0 % if left out"`
	Note         string              `json:"note,omitempty"`
	Extra        map[string]any      `json:"-" document:"extra"`
}

// Diet is how a class chooses among grass, forbs and browse.
type Diet int

// The ways of choosing.
const (
	DietPrinted     Diet = iota + 1 // within the printed spans of its kind, of animals free to choose
	DietUpToPrinted                 // forbs and browse up to the printed high ends, and grass for the rest
	DietOwn                         // within the user's own spans
	DietAnything                    // whatever stands
)

// Stock is stock that may be kept.
type Stock struct {
	ID     string           `json:"id,omitempty" allowed:"a name of your own, once; the name of the class if left out"`
	Class  herd.ClassRow    `json:"class" document:"required" allowed:"the name of a stock class, or a row of your own"`
	Weight units.LiveWeight `json:"weight,omitempty" allowed:"the live weight of one animal, above 0, in place of the class's"`
	Stage  herd.Stage       `json:"stage,omitempty" allowed:"a stage that the class has, all year, where no birth is given"`
	Birth  int              `json:"birth,omitempty" allowed:"the month of birth, 1 to 12: in milk from it on, in late gestation the month before where the class has a figure for it"`
	Weaned int              `json:"weaned,omitempty" allowed:"the first month, 1 to 12, in which there is no milk, with birth"`
	Months []int            `json:"months,omitempty" allowed:"the months, 1 to 12, in which it is on the farm; all twelve if left out"`
	Eats   Diet             `json:"eats" document:"required" allowed:"\"printed\" for the printed diet of its kind, \"up to printed\" for no more forbs and browse than that and grass for the rest, \"own\" for a diet of your own, \"anything\" for what stands"`
	Diet   *OwnDiet         `json:"diet,omitempty" allowed:"spans of your own, where it eats \"own\""`
	Least  float64          `json:"least,omitempty" allowed:"the fewest head, 0 or more"`
	Most   *float64         `json:"most,omitempty" allowed:"the most head, not below the fewest"`
	Margin *units.Money     `json:"margin,omitempty" allowed:"what one head brings in a year less what it costs, hay apart, such as \"85 USD\"; it may be below 0"`
	Drinks units.WaterRate  `json:"drinks,omitempty" allowed:"water a day for one head, above 0, in place of the class's figure"`
	Note   string           `json:"note,omitempty"`
	Extra  map[string]any   `json:"-" document:"extra"`
}

// OwnDiet is a diet of the user's own: how much of what is grazed may be of
// each class of plants.
type OwnDiet struct {
	Grass  units.Span[units.Fraction] `json:"grass" document:"required" allowed:"low and high, 0 % to 100 %"`
	Forbs  units.Span[units.Fraction] `json:"forbs" document:"required" allowed:"low and high, 0 % to 100 %"`
	Browse units.Span[units.Fraction] `json:"browse" document:"required" allowed:"low and high, 0 % to 100 %"`
	Note   string                     `json:"note,omitempty"`
	Extra  map[string]any             `json:"-" document:"extra"`
}

// Hay is the hay of a year.
type Hay struct {
	Store     units.FreshFeed  `json:"store,omitempty" allowed:"hay that there is each year, as it lies, 0 or more"`
	Buy       units.FreshFeed  `json:"buy,omitempty" allowed:"the most hay that may be bought in a year, as it lies; none if left out"`
	Price     *units.FeedPrice `json:"price,omitempty" allowed:"money for a mass, such as \"180 USD/t\", where hay may be bought"`
	DryMatter units.Fraction   `json:"dry_matter,omitempty" allowed:"the dry matter of the hay, above 0 % and up to 100 %; 90 % if left out"`
	Waste     units.Fraction   `json:"waste,omitempty" allowed:"the share of the hay that is wasted, 0 % to below 100 %"`
	Note      string           `json:"note,omitempty"`
	Extra     map[string]any   `json:"-" document:"extra"`
}

// Housing is anything with only so much room: a barn, a milking parlour, the
// hours of a day.
type Housing struct {
	ID    string             `json:"id" document:"required" allowed:"a name of your own, once"`
	Room  float64            `json:"room" document:"required" allowed:"how much there is of it, 0 or more"`
	Takes map[string]float64 `json:"takes" document:"required" allowed:"by the id of stock, how much of it one head takes, above 0"`
	Unit  string             `json:"unit,omitempty" allowed:"what it is counted in, such as \"places\""`
	Note  string             `json:"note,omitempty"`
	Extra map[string]any     `json:"-" document:"extra"`
}

// Need is something that the family wants at least so much of: milk, eggs,
// wool, animals to look at.
type Need struct {
	ID    string             `json:"id" document:"required" allowed:"a name of your own, once"`
	Least float64            `json:"least" document:"required" allowed:"how much of it is wanted, above 0"`
	Gives map[string]float64 `json:"gives" document:"required" allowed:"by the id of stock, how much of it one head gives, above 0"`
	Unit  string             `json:"unit,omitempty" allowed:"what it is counted in, such as \"kg of milk a day\""`
	Note  string             `json:"note,omitempty"`
	Extra map[string]any     `json:"-" document:"extra"`
}

// Ratio says how many of one stock go with others, such as rams with ewes. None
// holds unless the document says so, and whole animals are held to it as it stands:
// at least 1 to 30 asks for two rams from 31 ewes on, and at most 1 to 30 allows none
// below 30 ewes.
//
// In print a mature bull has 25 to 35 cows [OKSTATE-BULLS], two mature rams 100 ewes
// and three 250, a ram lamb 30 at the most [WYLR-RAMS], a mature buck 20 to 40 does
// [KYSU-BUCKS] and a boar 15 to 20 sows [PROAGRI-BOARS], where one who falls ill is not
// thought of.
type Ratio struct {
	Of    string         `json:"of" document:"required" allowed:"the id of stock, such as that of the rams"`
	To    []string       `json:"to" document:"required" allowed:"the ids of the stock that it goes with, such as that of the ewes, each once; several count together"`
	Least *float64       `json:"least,omitempty" allowed:"the fewest head of it, above 0, for so many of the others"`
	Most  *float64       `json:"most,omitempty" allowed:"the most head of it, above 0 and not below the fewest, for so many of the others"`
	Each  *float64       `json:"each,omitempty" allowed:"for how many head of the others, above 0; 1 if left out"`
	Note  string         `json:"note,omitempty"`
	Extra map[string]any `json:"-" document:"extra"`
}

// Answer is which stock fits. Where nothing does, Clash names the rules that
// contradict one another, and the rest is empty.
type Answer struct {
	Goal    Goal    `json:"goal"`    // the document's
	Fits    bool    `json:"fits"`    // false: the rules contradict one another
	Clash   []Rule  `json:"clash"`   // of these, leave out any one and the rest go together
	Relaxed Herd    `json:"relaxed"` // with parts of animals allowed: no herd is better
	Whole   Herd    `json:"whole"`   // the best herd of whole animals that was found
	Found   bool    `json:"found"`   // false: no herd of whole animals was found
	Proved  bool    `json:"proved"`  // no herd of whole animals is better, or there is none; false: the search was ended
	Binds   []Bind  `json:"binds"`   // what holds the relaxed herd down, what gains most first
	Months  []Month `json:"months"`  // of the herd of whole animals
	Spans   []AtEnd `json:"spans"`   // the relaxed herd at each end of the printed intake
	English string  `json:"english"` // the same in one paragraph
}

// Herd is a herd and what comes of it in a year.
type Herd struct {
	Head   []Head            `json:"head"`          // of each stock, in the document's order
	Units  units.AnimalUnits `json:"animal_units"`  // by weight ÷ 1,000 lb
	Hay    units.FreshFeed   `json:"hay_kg"`        // fed, with waste, as it lies
	Bought units.FreshFeed   `json:"hay_bought_kg"` // of that, beyond the store
	Cost   units.Money       `json:"hay_cost"`      // of what is bought; nothing without a price
	Margin units.Money       `json:"margin"`        // the stock's margins less that cost; nothing without margins
	Value  float64           `json:"value"`         // by the goal: animal units, kg of hay, or money
}

// Head is how many of one stock.
type Head struct {
	ID   string  `json:"id"`   // the stock's id
	Head float64 `json:"head"` // how many; a part of an animal where parts are allowed
}

// RuleKind is what sort of rule holds a herd down, or asks for it.
type RuleKind int

// The sorts of rules.
const (
	RuleGrowth     RuleKind = iota + 1 // what grows of a class of plants in a month
	RuleHay                            // hay in store
	RuleBuying                         // hay that may be bought
	RuleWater                          // the water of the source
	RuleHousing                        // what has only so much room
	RuleNeed                           // what the family wants
	RuleMost                           // the most head of a stock
	RuleLeast                          // the fewest head of a stock
	RuleLand                           // the area of a piece of land, which is told among what binds alone
	RuleRatioLeast                     // the fewest head of a stock for so many others
	RuleRatioMost                      // the most head of a stock for so many others
)

// Rule is one rule of the question.
type Rule struct {
	Kind    RuleKind `json:"kind"`    // its sort
	ID      string   `json:"id"`      // of the stock, housing, need or land; the first stock of a ratio; the class of plants of growth; else empty
	Months  []int    `json:"months"`  // the months that it is of, 1 to 12; none: the year
	English string   `json:"english"` // in words
}

// Bind is a rule that holds the relaxed herd down: with more of it alone the
// herd would be better.
type Bind struct {
	Rule    Rule    `json:"rule"`    // which
	Price   float64 `json:"price"`   // what each one more gains at the most, in the goal's unit for each kg, m³ of water a day, m² of land, head or place
	More    float64 `json:"more"`    // how much more was tried, in the same unit
	Gain    float64 `json:"gain"`    // what the goal gained by it
	Changes []Head  `json:"changes"` // of the relaxed herd by it
	English string  `json:"english"` // in words
}

// Month is a month of a year with the herd of whole animals.
type Month struct {
	Month  int             `json:"month"`      // 1 to 12
	Grass  Feed            `json:"grass"`      // grasses
	Forbs  Feed            `json:"forbs"`      // legumes and other herbs
	Browse Feed            `json:"browse"`     // leaves and twigs
	Wanted units.DryMatter `json:"wanted_kg"`  // by all stock
	Hay    units.DryMatter `json:"hay_dry_kg"` // eaten as hay
}

// Feed is one class of plants in a month. Where stock may choose, what they
// take of each class is one way among several.
type Feed struct {
	Supply units.DryMatter `json:"supply_kg"` // grown and eatable, with what the month before has left
	Eaten  units.DryMatter `json:"eaten_kg"`  // by all stock
	Left   units.DryMatter `json:"left_kg"`   // not eaten
}

// AtEnd is the relaxed herd at one end of the printed spans of intake.
type AtEnd struct {
	End   units.End `json:"end"`   // low: hungry stock
	Fits  bool      `json:"fits"`  // false: the rules contradict one another
	Value float64   `json:"value"` // by the goal
	Head  []Head    `json:"head"`  // of each stock
}

// Read reads a question from JSON and checks it whole. The
// error names the path in the document, the value and what is allowed.
//
// Check: TestBadFittings, FuzzRead
//
// Source: definition: the form of the document is ours
func Read(data []byte) (*Question, error) {
	var f Question
	if err := document.Decode(data, &f); err != nil {
		return nil, err
	}
	if _, err := f.settle(f.end()); err != nil {
		return nil, err
	}
	return &f, nil
}

// JSON writes the question as a document in a system of units. Read reads
// it back.
func (f *Question) JSON(system units.System) ([]byte, error) { return document.Encode(f, system) }

// Answer tells which numbers of which stock fit a farm's land: the herd with
// the most animal units, the least hay or the best margin that month by month
// finds its grass, forbs and browse or hay, and keeps to the room, the water, the
// family's needs and the ratios of one stock to another; what holds it down, and what one more of that would bring.
//
// Method: a linear program in floats over the head of each stock, what each kind
// of diet eats of each class of plants in each month, and hay. A year is twelve
// months of 365 days and like the one before. Supply of a month is area × yield ×
// share of the month × use × share of the plants, and what may be carried from the
// month before; need is weight × intake × pasture share × days. Diets are spans:
// stock of one diet may eat any mixture within it. Stock that hay does not stand
// in for (pigs, poultry other than geese) are fed their ration where nothing
// grows, and graze their share otherwise. Of answers that are equally good the one
// with less hay is taken, and with the least hay for a goal the one with fewer
// animal units. The herd of whole animals is the best of a search that begins at
// the relaxed herd, parts the question in two at a part of an animal, and ends
// after a number of steps; it is checked against every rule by itself. What one
// more of a rule brings is found by asking the whole question again.
//
// Errors: a document error with the path, the value and what is allowed; one that
// names the stock where nothing limits it. Rules that contradict one another are
// no error: Fits is false and Clash names a smallest set of them, found by leaving
// out one after another.
//
// Note: a planning figure of a mean year: a dry one carries less, and the season
// of a plan, which knows heights and rest, has the last word on grazing. The
// printed diets are of animals free to choose, and hold both ways: cattle that are
// to eat theirs want 5 % of browse, and are fed where there is none. Stock eat what
// stands, and goats held to grass, or horses to clover, may not thrive: ask an
// adviser. Bloat,
// copper for sheep, parasites and stock that should not follow one another are not
// in it: see the cautions of the plan and grazing.Conflicts.
//
// Check: TestFitStockByHand, TestFitStockRatios, TestFitStockPrintedRatios, TestFitStockAgainstEveryHerd, TestFitStockScales,
// TestFitStockPrices, TestFitStockDual, TestFitStockClash,
// TestFitStockClashIsSmallest
//
// Source: ours: the program; UGA-DIETS printed diets; the rows of herd and forage
// the figures of stock and pasture; the doc of Ratio names printed ratios
func (f *Question) Answer() (Answer, error) { return f.AnswerContext(context.Background()) }

// AnswerContext is Answer that can be stopped: it ends with the error of the context
// soon after that is done. Of many stocks with a diet each it may take half a minute.
func (f *Question) AnswerContext(ctx context.Context) (Answer, error) {
	if f == nil {
		return Answer{}, document.Wrong("fitting", "nil", "is no document", "a question, such as Read gives")
	}
	m, err := f.settle(f.end())
	if err != nil {
		return Answer{}, err
	}
	if m.ctx = ctx; ctx == nil {
		m.ctx = context.Background()
	}
	return m.fit()
}

func (f *Question) end() units.End {
	if f.End == 0 {
		return units.Middle
	}
	return f.End
}

func (f *Question) hayDryMatter() units.Fraction {
	return rows.HayDryMatter(f.Hay.DryMatter)
}

// hayPerDry is the hay as it lies for a kilogram of dry matter eaten.
func (f *Question) hayPerDry() float64 {
	return 1 / float64(f.hayDryMatter()) / float64(1-f.Hay.Waste)
}

// sensible tells a number that a document may count with.
func sensible(v, low float64) bool { return v >= low && v <= mostCounted && !math.IsNaN(v) }

// The least and the most of head, places or pieces that a document may count with.
const (
	leastCounted = 1e-6
	mostCounted  = 1e6
)
