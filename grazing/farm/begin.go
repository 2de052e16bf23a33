package farm

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"example.org/soum/forage"
	"example.org/soum/herd"
	"example.org/soum/internal/document"
	"example.org/soum/units"
)

// Answers is the little that a farm can begin from.
type Answers struct {
	Today   units.Date      `json:"today"`    // the day the plan begins
	Units   units.System    `json:"units"`    // the reader's units
	Area    units.Area      `json:"area_m2"`  // all the grazing land
	Pasture string          `json:"pasture"`  // the name of a pasture row
	Rain    units.RainDepth `json:"rain_m"`   // of a normal year
	Height  units.Height    `json:"height_m"` // today's; 0 where nobody has measured it
	Stock   []StockAnswer   `json:"stock"`
}

// StockAnswer is one kind of stock.
type StockAnswer struct {
	Class string  `json:"class"` // the name of a stock class
	Head  float64 `json:"head"`
}

// lastYear is the last year that a document can tell.
const lastYear = 9999

// What a first farm is filled in with.
const (
	firstLanes = 4
	firstRest  = 30 * units.Day // [CORNELL-PLAN]: 30 days in summer and fall, the longer of its two figures
)

// First returns a first farm document made of a few answers: a square field
// cut into four lanes, one rotation, the groups in the order of their need a day
// behind one another. Where there are both pigs and birds, the pigs have lanes and a
// rotation of their own, of land by what they eat of all. Every figure that was filled in
// says so, with its source, in a note beside it: change it for your own.
//
// Method: lanes as long as the square's side and a quarter as wide; heights of
// the pasture row, at least 3 in left; the season from today to the end of the
// last month in which the row grows, within a year
//
// Errors: an error that names the answer, its value and what is allowed
//
// Check: TestFirstFarm
//
// Source: ours: what is filled in says where it comes from
func First(a Answers) (*Farm, error) {
	pasture, err := forage.PastureByName(a.Pasture)
	if err != nil {
		return nil, document.NoRow("pasture", a.Pasture, err, "")
	}
	switch {
	case a.Today.Year() < 1 || a.Today.Year() > lastYear:
		return nil, document.Wrong("today", a.Today, "is not a day that a farm is planned on", "a date from year 1 to year 9999")
	case !(a.Area > 0):
		return nil, document.NotAbove0("land", a.Area, "an area above 0")
	case !(a.Rain >= 0):
		return nil, document.Wrong("rain", a.Rain, "is negative", "the rain of a normal year, 0 or more")
	case len(a.Stock) == 0:
		return nil, document.Wrong("stock", "", "names no animals", `at least one, such as "12 dairy-goat"`)
	}
	farm := &Farm{
		Version: 1, Units: a.Units, Today: a.Today,
		Season: Season{From: a.Today, To: lastGrowth(pasture, a.Today), Note: "To the end of the last month in which the pasture row grows."},
		Rain:   Rain{Year: a.Rain, Note: "Your answer. With the months of this year and their normals under \"months\" and \"normal\" growth follows the rain."},
		Feed:   Feed{Note: "No hay in store and no waste: fill in hay, dry_matter and waste."},
		Note:   "A first farm. Figures that were filled in for you say so in a note beside them; change them for your own.",
	}
	if err := firstStock(farm, a.Stock); err != nil {
		return nil, err
	}
	parts, err := firstParts(farm)
	if err != nil {
		return nil, err
	}
	for i := range parts {
		firstLand(farm, a, pasture, &parts[i])
		firstRotation(farm, pasture, &parts[i])
	}
	if err := farm.Check(); err != nil {
		return nil, err
	}
	return farm, waitForGrass(farm)
}

// waitForGrass lets the season begin on the first day, within 60, on which the
// grass has grown to the turn-in height.
func waitForGrass(farm *Farm) error {
	r, err := settle(farm, units.Middle)
	if err != nil {
		return err
	}
	at := &r.lands[0]
	mass := units.Yield(r.input.Lands[0].Stretches[0].Mass)
	for day := range min(60, r.input.Days) {
		if mass >= at.turnIn {
			if day > 0 {
				farm.Season.From = r.date(day)
				farm.Season.Note = "It begins on the day the grass is reckoned to reach the turn-in height. " + farm.Season.Note
			}
			return nil
		}
		if mass, err = r.grown(0, day, mass); err != nil {
			return err
		}
	}
	return nil
}

// lastGrowth gives the last day of the last month with growth within a year.
func lastGrowth(p forage.Pasture, today units.Date) units.Date {
	last := today
	for month := today - units.Date(today.Day()-1); month.Sub(today) < 365; month = month.Add(month.DaysInMonth()) {
		if p.Shares[month.Month()-1] > 0 {
			last = month.Add(month.DaysInMonth() - 1)
		} else if last > today {
			break // the first months without growth end the season
		}
	}
	return max(last, today)
}

// firstPart is groups that share a rotation, and their part of the land.
type firstPart struct {
	lane   string // what its lanes are called
	share  float64
	groups []string
	note   string
}

// firstParts keeps pigs and birds apart; else all groups go together.
func firstParts(farm *Farm) ([]firstPart, error) {
	all, pigs := firstPart{lane: "lane"}, firstPart{lane: "pig lane", note: "Lanes of their own, by what they eat of all: no birds are to range where pigs have grazed [WASHINGTON-756]. "}
	birds := false
	for i := range farm.Groups {
		g := &farm.Groups[i]
		group, err := g.herd(farm.Today)
		if err != nil {
			return nil, err
		}
		demand, err := group.DemandOn(farm.Today, units.Middle)
		if units.Impossible(err) {
			return nil, err
		}
		of := &all
		if group.Class.Kind == herd.Pigs {
			of = &pigs
		}
		of.share += float64(demand)
		of.groups = append(of.groups, g.ID)
		birds = birds || group.Class.Kind.Bird()
	}
	if !birds || len(pigs.groups) == 0 {
		all.groups, all.share = nil, 1
		for i := range farm.Groups {
			all.groups = append(all.groups, farm.Groups[i].ID)
		}
		return []firstPart{all}, nil
	}
	all.share, pigs.share = all.share/(all.share+pigs.share), pigs.share/(all.share+pigs.share)
	return []firstPart{all, pigs}, nil
}

// firstLand cuts a part of a square into lanes.
func firstLand(farm *Farm, a Answers, p forage.Pasture, part *firstPart) {
	side := math.Sqrt(float64(a.Area))
	height, note := a.Height, "your height"
	if height == 0 {
		height, note = p.TurnIn.Low, "height filled in: the row's lowest turn-in height ("+p.HeightSource+"); walk the land and measure"
	}
	first := len(farm.Land)
	for i := range firstLanes {
		farm.Land = append(farm.Land, Land{
			ID: fmt.Sprintf("%s %d", part.lane, i+1), Width: units.Length(side / firstLanes * part.share), Length: units.Length(side),
			Pasture: forage.PastureRow{Name: a.Pasture}, Condition: defaultCondition, Productivity: forage.ProductivityMedium, Height: height,
			Note: "As " + part.lane + " 1.",
		})
	}
	farm.Land[first].Note = fmt.Sprintf("Width and length filled in: %s taken as a square, this part of it in %d lanes, ours. Condition good (density %s) and productivity medium (yield %s): filled in; %s.",
		a.Area.In(a.Units), firstLanes, p.DensitySource, p.GrowthSource, note)
}

// firstStock makes a group of every kind of stock, those of the highest need
// first.
func firstStock(farm *Farm, stock []StockAnswer) error {
	need := map[string]herd.Need{}
	for i, answer := range stock {
		class, err := herd.ClassByName(answer.Class)
		if err != nil {
			return document.NoRow(fmt.Sprintf("stock[%d]", i), answer.Class, err, "")
		}
		if !(answer.Head > 0) {
			return document.Wrong(fmt.Sprintf("stock[%d]", i), units.Number(answer.Head)+" "+answer.Class, "is no number of animals", "a number above 0")
		}
		if need[answer.Class] != 0 {
			return document.Wrong(fmt.Sprintf("stock[%d]", i), answer.Class, "stands twice", "each class once")
		}
		need[answer.Class] = class.Need
		farm.Groups = append(farm.Groups, Group{
			ID: answer.Class, Class: herd.ClassRow{Name: answer.Class}, Head: answer.Head,
			Note: fmt.Sprintf("Weight (%s, %s) and appetite (%s) are those of the class.", class.Weight.In(farm.Units), class.WeightSource, class.Intake[0].Source),
		})
	}
	slices.SortStableFunc(farm.Groups, func(x, y Group) int { return cmp.Compare(need[x.ID], need[y.ID]) })
	return nil
}

// firstRotation puts the groups of a part on its lanes, a day behind one another.
func firstRotation(farm *Farm, p forage.Pasture, part *firstPart) {
	r := Rotation{
		TurnIn: p.TurnIn.Low, Leave: max(p.Leave.Low, lowestLeave), ShortestRest: firstRest, MovesADay: 1,
	}
	r.Note = part.note + strings.Join([]string{
		"Heights filled in: the lower ends of the row (" + p.HeightSource + "), but not under 3 in left (common practice, without a source)",
		"rest filled in: 30 days [CORNELL-PLAN]",
		"one move a day, and groups a day behind one another in the order of need: common practice, without a source",
	}, "; ") + "."
	for i := range firstLanes {
		r.Land = append(r.Land, fmt.Sprintf("%s %d", part.lane, i+1))
	}
	for i, id := range part.groups {
		r.Groups = append(r.Groups, Member{Group: id, Behind: units.Days(i)})
	}
	if r.Leave >= r.TurnIn { // a low sward: the row's own height after all
		r.Leave = p.Leave.Low
	}
	farm.Rotations = append(farm.Rotations, r)
}
