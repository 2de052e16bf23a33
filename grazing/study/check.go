package study

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"strconv"
	"time"

	"example.org/soum/grazing/farm"
	"example.org/soum/internal/document"
	"example.org/soum/internal/english"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// The most that a study may ask for.
const (
	mostSeasons = 10000
	mostPoints  = 1000
	mostSteps   = 100
	mostInputs  = 11
	mostFactor  = 10        // on rain, land and intake
	mostCounted = 1e6       // head, days or moves
	mostHay     = 1e9       // kg; beyond it no farm stores any
	mostSeed    = 1<<53 - 1 // beyond it not every language has whole numbers
)

// ready is a study made ready.
type ready struct {
	studied *Study
	farm    farm.Farm            // with normals
	years   []int                // of the record, whole
	rain    [][12]rain           // of those years
	fits    [12]rainfall.RainFit // for gamma
	first   int                  // the first calendar year that is drawn
	drawn   int                  // calendar years from it on
	known   []rainfall.MonthlyRain
	points  [][]float64
}

type rain = units.RainDepth

// ready checks the study and makes it ready.
func (s *Study) ready() (*ready, error) {
	if s == nil {
		return nil, document.Wrong("studied", "nil", "is no document", "a question, such as Read gives")
	}
	p := &ready{studied: s, farm: s.Farm}
	for _, step := range []func() error{p.checkForm, p.readRecord, p.fitMonths, p.checkInputs, p.layPoints, p.tryPoints} {
		if err := step(); err != nil {
			return nil, err
		}
	}
	return p, nil
}

func (p *ready) checkForm() error {
	s := p.studied
	if s.Version != 1 {
		return document.Wrong("version", s.Version, "is no known version of the form", "1")
	}
	if err := s.Farm.Check(); err != nil {
		return document.Inside("farm", err)
	}
	switch {
	case s.Draw.String() == "":
		return document.Wrong("draw", int(s.Draw), "is no way of drawing", `"years" or "gamma"`)
	case s.Draw == DrawGamma && (s.Fit < rainfall.FitThom || s.Fit > rainfall.FitMoments):
		return document.Wrong("fit", int(s.Fit), "is no fit, or was left out", `"thom", "likelihood" or "moments"`)
	case s.Draw == DrawYears && s.Fit != 0:
		return document.Wrong("fit", strconv.Quote(s.Fit.String()), "stands beside whole years, which are not fitted", `draw "gamma", or no fit`)
	case s.Past.String() == "":
		return document.Wrong("past", int(s.Past), "does not say what becomes of past months", `"known" or "drawn"`)
	case s.End != 0 && (s.End < units.Low || s.End > units.High):
		return document.Wrong("end", int(s.End), "is no end of a span", `"low", "middle" or "high"`)
	case s.Seasons < 1 || s.Seasons > mostSeasons:
		return document.Wrong("seasons", s.Seasons, "seasons cannot be run", "1 to "+strconv.Itoa(mostSeasons))
	case s.Seed < 0 || s.Seed > mostSeed:
		return document.Wrong("seed", s.Seed, "is no seed", "0 to "+strconv.Itoa(mostSeed))
	}
	return nil
}

// readRecord takes the whole years out of the record.
func (p *ready) readRecord() error {
	record, path := p.studied.Record, "record"
	if len(record) == 0 {
		record, path = p.farm.Rain.Series(), "farm.rain.months"
	}
	normals, err := rainfall.MonthNormals(record)
	if err != nil {
		return document.Wrong(path, english.Plural(float64(len(record)), "month"), "cannot be drawn from: "+err.Error(), "one whole calendar year or more, each month once")
	}
	if len(p.farm.Rain.Normal) == 0 {
		p.farm.Rain.Normal = normals[:]
	}
	totals, err := rainfall.KeyTotals(record, []int{1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
	if err != nil {
		return document.Wrong(path, english.Plural(float64(len(record)), "month"), "cannot be drawn from: "+err.Error(), "one whole calendar year or more, each month once")
	}
	at := map[int]int{}
	for i, y := range totals {
		at[y.Year] = i
		p.years = append(p.years, y.Year)
	}
	p.rain = make([][12]rain, len(p.years))
	for _, r := range record {
		if i, whole := at[r.Year]; whole {
			p.rain[i][r.Month-time.January] = r.Rain
		}
	}
	if len(p.years) == 0 {
		return document.Wrong(path, english.Plural(float64(len(record)), "month"), "cannot be drawn from: no calendar year is whole", "one whole calendar year or more")
	}
	p.first = p.farm.Today.Year() - 1 // a run of key months may have begun in it
	p.drawn = p.farm.Season.To.Year() - p.first + 1
	if p.studied.Past == PastKnown {
		this := p.farm.Today.Year()*12 + int(p.farm.Today.Month())
		for _, r := range p.farm.Rain.Series() {
			if r.Year >= p.first && r.Year*12+int(r.Month) < this {
				p.known = append(p.known, r)
			}
		}
	}
	return nil
}

// fitMonths fits the distributions of the months.
func (p *ready) fitMonths() error {
	if p.studied.Draw != DrawGamma {
		return nil
	}
	depths := make([]rain, len(p.rain))
	for month := range p.fits {
		for i := range p.rain {
			depths[i] = p.rain[i][month]
		}
		var err error
		if p.fits[month], err = rainfall.FitRain(depths, p.studied.Fit); err != nil {
			return document.Wrong("record", time.Month(month+1), "cannot be fitted: "+err.Error(), `more years, or draw "years"`)
		}
	}
	return nil
}

// heights tells whether an input goes over heights.
func (i Input) heights() bool { return i == InputLeave || i == InputTurnIn }

// head tells whether an input is the head of a group.
func (i Input) head() bool { return i == InputHead || i == InputHeadFactor }

// rotation tells whether an input is of a rotation.
func (i Input) rotation() bool { return i.heights() || i == InputRest || i == InputMoves }

// whole tells whether an input knows whole numbers only.
func (i Input) whole() bool { return i == InputHead || i == InputRest || i == InputMoves }

// most gives the highest number that an input may take.
func (i Input) most() float64 {
	if i == InputRainFactor || i == InputLandFactor || i == InputIntakeFactor {
		return mostFactor
	}
	return mostCounted
}

// ends gives the span of a sweep in base units.
func (w *Sweep) ends() (low, high float64) {
	switch {
	case w.Input.heights():
		return float64(w.Heights.Low), float64(w.Heights.High)
	case w.Input == InputHay:
		return float64(w.Hay.Low), float64(w.Hay.High)
	}
	return w.Span.Low, w.Span.High
}

// meets tells whether two sweeps change the same. All groups, or all land, meet each
// of them.
func (w *Sweep) meets(o *Sweep) bool {
	switch {
	case w.Input.head() && o.Input.head():
		return w.Group == o.Group
	case w.Input != o.Input:
		return false
	case w.Input == InputIntakeFactor:
		return w.Group == o.Group || w.Group == "" || o.Group == ""
	case w.Input == InputLandFactor:
		return w.Land == o.Land || w.Land == "" || o.Land == ""
	}
	return w.Rotation == o.Rotation
}

func (p *ready) checkInputs() error {
	s := p.studied
	switch {
	case len(s.Inputs) > mostInputs:
		return document.Wrong("inputs", len(s.Inputs), "inputs are too many", "up to "+strconv.Itoa(mostInputs))
	case len(s.Inputs) == 0 && s.Design != 0:
		return document.Wrong("design", strconv.Quote(s.Design.String()), "stands without inputs", "inputs beside it")
	case len(s.Inputs) > 0 && s.Design.String() == "":
		return document.Wrong("design", int(s.Design), "is no design, or was left out", `"grid" or "hypercube"`)
	case s.Design == DesignHypercube && (s.Points < 2 || s.Points > mostPoints):
		return document.Wrong("points", s.Points, "cannot be laid", "2 to "+strconv.Itoa(mostPoints))
	case s.Design != DesignHypercube && s.Points != 0:
		return document.Wrong("points", s.Points, "stand without a hypercube", `design "hypercube", or no points`)
	}
	for i := range s.Inputs {
		if err := p.checkInput(fmt.Sprintf("inputs[%d]", i), &s.Inputs[i], s.Inputs[:i]); err != nil {
			return err
		}
	}
	return nil
}

func (p *ready) checkInput(path string, w *Sweep, before []Sweep) error {
	switch {
	case w.Input.String() == "":
		return document.Wrong(path+".input", int(w.Input), "is no input", `"growth", "head", "head factor", "leave", "turn in", "rest", "moves", "rain factor", "hay", "land factor" or "intake factor"`)
	case slices.ContainsFunc(before, func(o Sweep) bool { return w.meets(&o) }):
		return document.Wrong(path+".input", strconv.Quote(w.Input.String()), "stands twice for the same", "each once")
	case p.studied.Design == DesignGrid && (w.Steps < 2 || w.Steps > mostSteps):
		return document.Wrong(path+".steps", w.Steps, "cannot make a grid", "2 to "+strconv.Itoa(mostSteps))
	case p.studied.Design == DesignHypercube && w.Steps != 0:
		return document.Wrong(path+".steps", w.Steps, "stand beside a hypercube", "points of the study, and no steps")
	}
	if err := p.checkWhose(path, w); err != nil {
		return err
	}
	return w.checkSpan(path)
}

// checkWhose checks of which group, land or rotation an input is.
func (p *ready) checkWhose(path string, w *Sweep) error {
	group := groupIndex(&p.farm, w.Group)
	takesGroup := w.Input.head() || w.Input == InputIntakeFactor && w.Group != ""
	switch {
	case takesGroup && group < 0:
		return document.Wrong(path+".group", strconv.Quote(w.Group), "is the id of no group", "the id of a group in the farm")
	case w.Input.head() && p.farm.Groups[group].Head == 0:
		return document.Wrong(path+".group", strconv.Quote(w.Group), "begins without animals: the young of another group come into it", "the id of a group with head at the start")
	case !takesGroup && w.Group != "":
		return document.Wrong(path+".group", strconv.Quote(w.Group), "stands beside an input that is of no group", "no group")
	case w.Input != InputLandFactor && w.Land != "":
		return document.Wrong(path+".land", strconv.Quote(w.Land), "stands beside an input that is of no land", "no land")
	case w.Land != "" && !hasLand(&p.farm, w.Land):
		return document.Wrong(path+".land", strconv.Quote(w.Land), "is the id of no land", "the id of land in the farm, or none for all of it")
	case !w.Input.rotation() && w.Rotation != 0:
		return document.Wrong(path+".rotation", w.Rotation, "stands beside an input that is of no rotation", "no rotation")
	case w.Rotation < 0 || w.Rotation >= len(p.farm.Rotations):
		return document.Wrong(path+".rotation", w.Rotation, "is the place of no rotation", "0 to "+strconv.Itoa(len(p.farm.Rotations)-1))
	}
	return nil
}

// checkSpan checks from where to where an input goes.
func (w *Sweep) checkSpan(path string) error {
	switch {
	case w.Input.heights() && (w.Heights == nil || w.Span != nil || w.Hay != nil):
		return document.Wrong(path+".heights", "", "a height goes from height to height", `heights such as {"low": "3 in", "high": "5 in"}, and no span or hay`)
	case w.Input == InputHay && (w.Hay == nil || w.Span != nil || w.Heights != nil):
		return document.Wrong(path+".hay", "", "hay goes from mass to mass", `hay such as {"low": "0 t", "high": "6 t"}, and no span or heights`)
	case !w.Input.heights() && w.Input != InputHay && (w.Span == nil || w.Heights != nil || w.Hay != nil):
		return document.Wrong(path+".span", "", "the input goes from number to number", `a span such as {"low": 1, "high": 2}, and no heights or hay`)
	}
	switch low, high := w.ends(); {
	case w.Input.heights() && !(low > 0 && high >= low && high <= 100):
		return document.Wrong(path+".heights", document.SpanText(*w.Heights), "is no span of heights", "low above 0, high up to 100 m and not below it")
	case w.Input == InputHay && !(low >= 0 && high >= low && high <= mostHay):
		return document.Wrong(path+".hay", document.SpanText(*w.Hay), "is no span of hay", "low 0 or more, high up to 1,000,000 t and not below it")
	case w.Input.heights() || w.Input == InputHay:
		return nil
	default:
		return w.checkNumbers(path, low, high)
	}
}

// checkNumbers checks a span of numbers.
func (w *Sweep) checkNumbers(path string, low, high float64) error {
	whole := func(v float64) bool { return v >= 1 && v == math.Floor(v) }
	most := w.Input.most()
	inside := high >= low && high <= most
	switch text := fmt.Sprintf("%g to %g", low, high); {
	case w.Input == InputRainFactor && !(low >= 0 && inside):
		return document.Wrong(path+".span", text, "is no span of factors on rain", "low 0 (no rain) or more, high up to "+units.Number(most)+" and not below it")
	case w.Input != InputRainFactor && !(low > 0 && inside):
		return document.Wrong(path+".span", text, "is no span", "low above 0, high up to "+units.Number(most)+" and not below it")
	case w.Input.whole() && !(whole(low) && whole(high)):
		return document.Wrong(path+".span", text, "is no span of whole numbers", "whole numbers, 1 or more")
	case w.Input.whole() && float64(w.Steps) > high-low+1:
		return document.Wrong(path+".steps", w.Steps, "are more than the whole numbers of "+text, "up to "+units.Number(high-low+1)+", or a wider span")
	}
	return nil
}

// layPoints lays the points over the inputs.
func (p *ready) layPoints() error {
	s := p.studied
	if len(s.Inputs) == 0 {
		p.points = [][]float64{{}}
		return nil
	}
	count := s.Points
	if s.Design == DesignGrid {
		count = 1
		for i := range s.Inputs {
			if count *= s.Inputs[i].Steps; count > mostPoints {
				return document.Wrong("inputs", len(s.Inputs), "inputs make more points than can be run", "steps whose product is up to "+strconv.Itoa(mostPoints))
			}
		}
	}
	p.points = make([][]float64, count)
	for i := range p.points {
		p.points[i] = make([]float64, len(s.Inputs))
	}
	random := rand.New(rand.NewPCG(uint64(s.Seed), math.MaxUint64)) // no season has that number
	block := count
	for k := range s.Inputs {
		w := &s.Inputs[k]
		var parts []int
		if s.Design == DesignHypercube {
			parts = random.Perm(count)
		} else {
			block /= w.Steps
		}
		for i := range p.points {
			if s.Design == DesignHypercube {
				p.points[i][k] = w.within((float64(parts[i]) + random.Float64()) / float64(count))
			} else {
				p.points[i][k] = w.step(i / block % w.Steps)
			}
		}
	}
	return nil
}

// within gives the value at a share, below 1, of the way through a span. Of whole
// numbers each has an equal part of the way.
func (w *Sweep) within(share float64) float64 {
	low, high := w.ends()
	if w.Input.whole() {
		return low + math.Floor(share*(high-low+1))
	}
	return low + float64((high-low)*share)
}

// step gives the value of a step of a grid, 0 for the first.
func (w *Sweep) step(step int) float64 {
	low, high := w.ends()
	value := low + float64((high-low)*float64(step))/float64(w.Steps-1)
	if w.Input.whole() {
		return math.Round(value)
	}
	return value
}

// tryPoints refuses a study of which the farm at any point is refused; the path begins
// with the place of the point.
func (p *ready) tryPoints() error {
	for i := range p.points {
		holding := p.at(i)
		if err := holding.Check(); err != nil {
			return document.InList("point", i, document.Inside("farm", err))
		}
	}
	return nil
}

// at gives the farm at a point, but for its head, its appetite and its rain.
func (p *ready) at(point int) *farm.Farm {
	at := p.farm
	at.Rotations, at.Land = slices.Clone(at.Rotations), slices.Clone(at.Land)
	for k, value := range p.points[point] {
		w := &p.studied.Inputs[k]
		r := &at.Rotations[w.Rotation]
		switch w.Input {
		case InputGrowth:
			at.OwnFactor = &farm.OwnFactor{Growth: units.Fraction(value), Why: "the study changes it"}
		case InputLeave:
			r.Leave = units.Height(value)
		case InputTurnIn:
			r.TurnIn = units.Height(value)
		case InputRest:
			r.ShortestRest = units.Days(value)
		case InputMoves:
			r.MovesADay = int(value)
		case InputHay:
			at.Feed.Hay = units.FreshFeed(value)
		case InputLandFactor:
			enlarge(&at, w.Land, value)
		}
	}
	return &at
}

// enlarge multiplies the size of land, of all where none is named. Lengths of lanes
// stay, since stretches, cuts and a front lie along them.
func enlarge(f *farm.Farm, id string, factor float64) {
	for i := range f.Land {
		if l := &f.Land[i]; id == "" || l.ID == id {
			l.Width *= units.Length(factor)
			l.Area *= units.Area(factor)
		}
	}
}

// groupIndex gives the place of a group, -1 where the farm has none of the id.
func groupIndex(f *farm.Farm, id string) int {
	return slices.IndexFunc(f.Groups, func(g farm.Group) bool { return g.ID == id })
}

func hasLand(f *farm.Farm, id string) bool {
	return slices.ContainsFunc(f.Land, func(l farm.Land) bool { return l.ID == id })
}
