package farm

import (
	"example.org/soum/forage"
	"example.org/soum/herd"
	"example.org/soum/internal/document"
	"example.org/soum/units"
)

// Farm is one document: the land, the stock, the order they graze in, the rain,
// and what the farm has of feed, water and fence. As JSON its quantities are
// text with a unit ("8 in"), head and counts are numbers, ids are the user's
// own and come back in the plan. Keys beginning "x-", and "note", pass through.
type Farm struct {
	Version   int            `json:"version" document:"required" allowed:"1, the version of this form"`
	Units     units.System   `json:"units,omitempty" allowed:"\"metric\" or \"US\": the reader's units in the plan's text"`
	Today     units.Date     `json:"today" document:"required" allowed:"a date such as \"2000-04-15\": the day the heights were read"`
	Season    Season         `json:"season" document:"required"`    // the time that is planned
	Land      []Land         `json:"land" document:"required"`      // lanes and paddocks
	Groups    []Group        `json:"groups" document:"required"`    // the animals
	Rotations []Rotation     `json:"rotations" document:"required"` // who grazes what, in which order
	Rain      Rain           `json:"rain,omitempty"`                // what is known of the rain
	Feed      Feed           `json:"feed,omitempty"`                // what there is besides grass
	Cuts      []Cut          `json:"cuts,omitempty"`                // hay or silage taken
	Water     Water          `json:"water,omitempty"`               // what the source gives
	Fence     Fence          `json:"fence,omitempty"`               // how the land is parted
	Prices    Prices         `json:"prices,omitempty"`              // the user's own
	WormRest  herd.RestRule  `json:"worm_rest,omitempty" allowed:"whose rest against worms of sheep and goats is reckoned with; temperate if left out"`
	OwnFactor *OwnFactor     `json:"own_factor,omitempty"` // a factor of the user's own
	Note      string         `json:"note,omitempty"`
	Extra     map[string]any `json:"-" document:"extra"`
}

// Season is the time that is planned.
type Season struct {
	From  units.Date     `json:"from" document:"required" allowed:"a date such as \"2000-04-15\""`
	To    units.Date     `json:"to" document:"required" allowed:"a date after season.from, within 1,100 days of today"`
	Note  string         `json:"note,omitempty"`
	Extra map[string]any `json:"-" document:"extra"`
}

// Land is a lane (width and length), grazed in strips across it, or a paddock
// (area), grazed whole.
type Land struct {
	ID           string              `json:"id" document:"required" allowed:"a name of your own, once"`
	Width        units.Length        `json:"width,omitempty" allowed:"a length above 0, with length, for a lane"`
	Length       units.Length        `json:"length,omitempty" allowed:"a length above 0, with width, for a lane"`
	Area         units.Area          `json:"area,omitempty" allowed:"an area above 0, for a paddock grazed whole"`
	Pasture      forage.PastureRow   `json:"pasture" document:"required" allowed:"the name of a pasture row, or a row of your own"`
	Condition    forage.Condition    `json:"condition,omitempty" allowed:"\"fair\", \"good\" or \"excellent\"; good if left out"`
	Productivity forage.Productivity `json:"productivity,omitempty" allowed:"\"low\", \"medium\" or \"high\"; medium if left out"`
	Density      units.Density       `json:"density,omitempty" allowed:"dry matter per area and height, above 0, in place of the row's"`
	Yield        units.Yield         `json:"yield,omitempty" allowed:"dry matter a year, above 0, in place of the row's"`
	Ceiling      units.Height        `json:"ceiling,omitempty" allowed:"the height at which growth ends, above turn-in, in place of the row's"`
	Legume       *units.Fraction     `json:"legume,omitempty" allowed:"the share of legume in the stand, 0 % to 100 %"`
	Nitrate      units.Concentration `json:"nitrate,omitempty" allowed:"nitrate nitrogen in the dry matter by a laboratory, such as 900 ppm"`
	Potassium    units.Fraction      `json:"potassium,omitempty" allowed:"share of the dry matter by a laboratory, with calcium and magnesium"`
	Calcium      units.Fraction      `json:"calcium,omitempty" allowed:"share of the dry matter by a laboratory, with potassium and magnesium"`
	Magnesium    units.Fraction      `json:"magnesium,omitempty" allowed:"share of the dry matter by a laboratory, with potassium and calcium"`
	Infected     *units.Fraction     `json:"infected,omitempty" allowed:"the share of fescue plants with the toxic fungus, 0 % to 100 %"`
	Frosted      *units.Date         `json:"frosted,omitempty" allowed:"the day of the last frost, today at the latest"`
	MowAbove     units.Height        `json:"mow_above,omitempty" allowed:"the height above which the stand is listed as surplus"`
	Height       units.Height        `json:"height,omitempty" allowed:"today's height, where the whole land stands alike"`
	Grazed       *units.Date         `json:"grazed,omitempty" allowed:"the day it was last grazed or cut, today at the latest"`
	Stretches    []Stretch           `json:"stretches,omitempty"` // pieces of a lane that stand differently
	Stay         *Stay               `json:"stay,omitempty"`      // of a paddock in which groups stay, or are still to come
	Note         string              `json:"note,omitempty"`
	Extra        map[string]any      `json:"-" document:"extra"`
}

// Stretch is a piece of a lane that has one height and one last bite.
type Stretch struct {
	To     units.Length   `json:"to" document:"required" allowed:"the distance from the lane's start to this piece's end"`
	Height units.Height   `json:"height" document:"required" allowed:"today's height, above 0"`
	Grazed *units.Date    `json:"grazed,omitempty" allowed:"the day it was last grazed or cut, today at the latest"`
	Due    []Due          `json:"due,omitempty"` // visits still to come, today's too
	Note   string         `json:"note,omitempty"`
	Extra  map[string]any `json:"-" document:"extra"`
}

// Due is grass of a stretch that a plan keeps for a group. What a strip of several days
// keeps for the leaders stands here too, with nothing to eat where they want nothing.
type Due struct {
	Group string          `json:"group" document:"required" allowed:"the id of a group of the land's rotation"`
	Date  units.Date      `json:"date" document:"required" allowed:"the day it comes, today or later"`
	Eat   units.DryMatter `json:"eat" document:"required" allowed:"dry matter of the whole stretch, 0 or more"`
	Use   units.Fraction  `json:"use" document:"required" allowed:"the share eaten of what disappears, above 0 % and up to 100 %"`
	Note  string          `json:"note,omitempty"`
	Extra map[string]any  `json:"-" document:"extra"`
}

// Stay is a rotation's stay in a paddock, kept until its last group has been there and
// the leaders have had a morning to stay on.
type Stay struct {
	From    units.Date      `json:"from" document:"required" allowed:"its first day, before today"`
	Planned units.Days      `json:"planned" document:"required" allowed:"whole days for which it was entered, 1 day or more"`
	Days    units.Days      `json:"days,omitempty" allowed:"whole days with those stayed on, or fewer where it was broken off; as planned if left out"`
	First   *units.Fraction `json:"first,omitempty" allowed:"the share of the first day's want, above 0 % and up to 100 %; all if left out"`
	Note    string          `json:"note,omitempty"`
	Extra   map[string]any  `json:"-" document:"extra"`
}

// Group is animals that graze together.
type Group struct {
	ID     string           `json:"id" document:"required" allowed:"a name of your own, once"`
	Class  herd.ClassRow    `json:"class" document:"required" allowed:"the name of a stock class, or a row of your own"`
	Head   float64          `json:"head" document:"required" allowed:"a number of animals, 0 or more"`
	Weight units.LiveWeight `json:"weight,omitempty" allowed:"the live weight of one animal, in place of the class's"`
	Stage  herd.Stage       `json:"stage,omitempty" allowed:"a stage that the class has; its first if left out"`
	Horned bool             `json:"horned,omitempty" allowed:"true or false"`
	Young  bool             `json:"young,omitempty" allowed:"true where there are kids or lambs under netting"`
	Gain   units.LiveGain   `json:"gain,omitempty" allowed:"what one animal gains in a day, above 0, from today or its last weight on"`
	Grown  units.LiveWeight `json:"grown,omitempty" allowed:"the live weight at which growth ends, with gain"`
	Births []Birth          `json:"births,omitempty"` // calving, lambing, farrowing
	Events []Event          `json:"events,omitempty"` // changes on a day
	Note   string           `json:"note,omitempty"`
	Extra  map[string]any   `json:"-" document:"extra"`
}

// Birth is a birth that a group comes to: from then on it eats as stock in milk,
// and before it as in late gestation where its class has a figure. The young count
// with their mothers until they are weaned, and go into a group of their own then
// where the document says so.
type Birth struct {
	Date    *units.Date         `json:"date,omitempty" allowed:"the day of birth, where service is left out"`
	Service *units.Date         `json:"service,omitempty" allowed:"the day of service, where date is left out"`
	Animal  string              `json:"animal,omitempty" allowed:"an animal with a gestation, with service; that of the class's kind if left out"`
	By      herd.BreedingSource `json:"by,omitempty" allowed:"whose gestation, with service"`
	Late    *units.Days         `json:"late,omitempty" allowed:"whole days of late gestation before the birth; 42 days if left out"`
	Weaned  *units.Date         `json:"weaned,omitempty" allowed:"the day the young are weaned, or the milk is ended, after the birth"`
	Young   float64             `json:"young,omitempty" allowed:"the number of young weaned, with into"`
	Into    string              `json:"into,omitempty" allowed:"the id of the group that the weaned young go into"`
	Note    string              `json:"note,omitempty"`
	Extra   map[string]any      `json:"-" document:"extra"`
}

// Event is a change of a group on a day: births, sales, weights, stages.
type Event struct {
	Date   units.Date        `json:"date" document:"required" allowed:"a date"`
	Head   *float64          `json:"head,omitempty" allowed:"the number from that day on, 0 or more"`
	Weight *units.LiveWeight `json:"weight,omitempty" allowed:"the live weight from that day on, above 0"`
	Stage  *herd.Stage       `json:"stage,omitempty" allowed:"a stage that the class has"`
	Note   string            `json:"note,omitempty"`
	Extra  map[string]any    `json:"-" document:"extra"`
}

// Rotation is land in order, and groups in order behind a leader.
type Rotation struct {
	Land          []string       `json:"land" document:"required"`   // ids, in order
	Groups        []Member       `json:"groups" document:"required"` // the leader first
	Leave         units.Height   `json:"leave,omitempty" allowed:"the height to leave standing, above 0 and below the turn-in"`
	TurnIn        units.Height   `json:"turn_in,omitempty" allowed:"the height from which land is grazed, below the ceiling"`
	LeastTurnIn   units.Height   `json:"least_turn_in,omitempty" allowed:"the height from which land is grazed where nothing stands at turn_in, above leave and up to turn_in"`
	ShortestRest  units.Days     `json:"shortest_rest" document:"required" allowed:"whole days of rest, 1 day or more"`
	MovesADay     int            `json:"moves_a_day,omitempty" allowed:"a whole number from 1 to 24; 1 if left out"`
	ShortestStrip units.Length   `json:"shortest_strip,omitempty" allowed:"a length above 0; 4 m with cattle, horses or donkeys, 2 m with sheep, goats, camelids, deer or pigs, else 1 m if left out"`
	LongestStay   units.Days     `json:"longest_stay,omitempty" allowed:"whole days, 1 day or more; 5 days if left out"`
	GrassFrom     *units.Date    `json:"grass_from,omitempty" allowed:"the first day on which there was ground to graze; by the plan if left out"`
	Front         *Front         `json:"front,omitempty"` // where the moves go on in the middle of a lane; the land rested longest if left out
	Note          string         `json:"note,omitempty"`
	Extra         map[string]any `json:"-" document:"extra"`
}

// Front is the place that the strips of a rotation have come to.
type Front struct {
	Land  string         `json:"land" document:"required" allowed:"the id of a lane of the rotation"`
	At    units.Length   `json:"at" document:"required" allowed:"the distance from the lane's start, above 0 and below its length"`
	Note  string         `json:"note,omitempty"`
	Extra map[string]any `json:"-" document:"extra"`
}

// Member is a group's place in a rotation.
type Member struct {
	Group  string         `json:"group" document:"required" allowed:"the id of a group"`
	Behind units.Days     `json:"behind,omitempty" allowed:"whole days behind the leader, in order; 0 for the leader"`
	Note   string         `json:"note,omitempty"`
	Extra  map[string]any `json:"-" document:"extra"`
}

// Rain is what is known of the rain, normal and of this year.
type Rain struct {
	Record  string                     `json:"record,omitempty" allowed:"where the figures come from"`
	Normal  []units.RainDepth          `json:"normal,omitempty" allowed:"twelve depths, January first"`
	Year    units.RainDepth            `json:"year,omitempty" allowed:"the normal rain of a year, where the months are not known"`
	Months  map[string]units.RainDepth `json:"months,omitempty" allowed:"depths by month, such as \"2000-04\": \"30.7 mm\""`
	Balance *WaterAccount              `json:"balance,omitempty"` // the account of the soil's water, by which growth goes then
	Note    string                     `json:"note,omitempty"`
	Extra   map[string]any             `json:"-" document:"extra"`
}

// Feed is what the farm has besides grass.
type Feed struct {
	Hay        units.FreshFeed `json:"hay,omitempty" allowed:"hay in store, as it lies"`
	DryMatter  units.Fraction  `json:"dry_matter,omitempty" allowed:"the dry matter of the hay, above 0 % and up to 100 %; 90 % if left out"`
	Waste      units.Fraction  `json:"waste,omitempty" allowed:"the share of the hay that is wasted, 0 % to below 100 %"`
	Loss       *units.Fraction `json:"harvest_loss,omitempty" allowed:"the share of a cut's dry matter that is lost before it is fed, 0 % to below 100 %"`
	Scraps     bool            `json:"scraps,omitempty" allowed:"true where food scraps are fed"`
	Ionophores bool            `json:"ionophores,omitempty" allowed:"true where any feed holds monensin or another ionophore"`
	Minerals   bool            `json:"minerals,omitempty" allowed:"true where feed or mineral made for other stock is within reach of sheep"`
	Note       string          `json:"note,omitempty"`
	Extra      map[string]any  `json:"-" document:"extra"`
}

// Cut is hay or silage taken on a day.
type Cut struct {
	Land    string         `json:"land" document:"required" allowed:"the id of land"`
	Date    units.Date     `json:"date" document:"required" allowed:"a date"`
	Stubble units.Height   `json:"stubble" document:"required" allowed:"the height left, above 0"`
	From    units.Length   `json:"from,omitempty" allowed:"a distance along the lane; its start if left out"`
	To      units.Length   `json:"to,omitempty" allowed:"a distance along the lane; its end if left out"`
	Note    string         `json:"note,omitempty"`
	Extra   map[string]any `json:"-" document:"extra"`
}

// Water is what the source gives.
type Water struct {
	Supply units.WaterRate `json:"supply,omitempty" allowed:"water a day that the source gives, above 0"`
	Note   string          `json:"note,omitempty"`
	Extra  map[string]any  `json:"-" document:"extra"`
}

// Fence is how the land is parted.
type Fence struct {
	Netting   bool           `json:"netting,omitempty" allowed:"true where electric netting is used"`
	Roll      units.Length   `json:"roll,omitempty" allowed:"the length of one roll of netting, above 0"`
	Pace      units.Length   `json:"pace,omitempty" allowed:"the length of your pace, above 0"`
	Adjoining bool           `json:"adjoining,omitempty" allowed:"true where the lanes lie side by side and share their sides"`
	Dead      bool           `json:"dead,omitempty" allowed:"true where no fence is electric"`
	Note      string         `json:"note,omitempty"`
	Extra     map[string]any `json:"-" document:"extra"`
}

// Prices are the user's own.
type Prices struct {
	Hay   *units.FeedPrice `json:"hay,omitempty" allowed:"money for a mass, such as \"180 USD/t\""`
	Note  string           `json:"note,omitempty"`
	Extra map[string]any   `json:"-" document:"extra"`
}

// OwnFactor multiplies growth by a factor that the user states, such as a gain
// they expect of rotation or of mixing stock. Print contradicts itself on such
// gains, so none is built in, and the plan says that the factor is the user's.
type OwnFactor struct {
	Growth units.Fraction `json:"growth" document:"required" allowed:"a share above 0 %, up to 300 %"`
	Why    string         `json:"why" document:"required" allowed:"your reason, which the plan prints"`
	Note   string         `json:"note,omitempty"`
	Extra  map[string]any `json:"-" document:"extra"`
}

// Read reads a farm from JSON and checks it whole. The error names the path
// in the document, the value and what is allowed.
//
// Source: definition: the form of the farm document is ours
//
// Check: TestBadFarms, TestFarmComesBackAsItWas
func Read(data []byte) (*Farm, error) {
	var farm Farm
	if err := document.Decode(data, &farm); err != nil {
		return nil, err
	}
	if err := farm.Check(); err != nil {
		return nil, err
	}
	return &farm, nil
}

// Clone returns a farm of its own: a change of the one leaves the other as it is.
func (f *Farm) Clone() *Farm { return document.Copy(f) }

// JSON writes the farm as a document in a system of units. Read reads it back.
func (f *Farm) JSON(system units.System) ([]byte, error) { return document.Encode(f, system) }
