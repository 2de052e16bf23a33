// Package study runs many seasons of one farm under rain drawn from a record, and tells
// how often, how early and by how much the hay does not reach, and how that changes with
// what the farmer may choose. Its question is a document, Study; Study.Run answers it.
//
// The odds are of rain alone, and planning figures: an adviser who knows the place has
// the last word.
package study

import (
	"context"

	"example.org/soum/grazing/farm"
	"example.org/soum/internal/document"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// Study asks for many seasons of one farm, each with another rain, and, where
// inputs are named, for as many again at every point of them. As JSON its
// quantities are text with a unit, as a farm's are.
type Study struct {
	Version int                    `json:"version" document:"required" allowed:"1, the version of this form"`
	Farm    farm.Farm              `json:"farm" document:"required"` // whose seasons they are
	Record  []rainfall.MonthlyRain `json:"record,omitempty"`         // the rain that is drawn from; the months of the farm's rain if left out
	Draw    Draw                   `json:"draw" document:"required" allowed:"\"years\" for whole years of the record, \"gamma\" for months by a distribution fitted to each"`
	Fit     rainfall.Fit           `json:"fit,omitempty" allowed:"\"thom\", \"likelihood\" or \"moments\", with draw \"gamma\""`
	Past    Past                   `json:"past" document:"required" allowed:"\"known\" where months of the farm's rain that are past today stay, \"drawn\" where they are drawn like the rest"`
	End     units.End              `json:"end,omitempty" allowed:"\"low\" for thin grass and hungry stock, \"middle\" or \"high\", by the printed spans; middle if left out"`
	Seasons int                    `json:"seasons" document:"required" allowed:"seasons at each point, 1 to 10,000"`
	Seed    int                    `json:"seed,omitempty" allowed:"a whole number from 0 to 9,007,199,254,740,991: the same gives the same answer; 0 if left out"`
	Design  Design                 `json:"design,omitempty" allowed:"\"grid\" for every step with every other, \"hypercube\" for points spread over all inputs at once; with inputs"`
	Points  int                    `json:"points,omitempty" allowed:"points of a hypercube, 2 to 1,000"`
	Inputs  []Sweep                `json:"inputs,omitempty"` // what changes from point to point
	Note    string                 `json:"note,omitempty"`
	Extra   map[string]any         `json:"-" document:"extra"`
}

// Draw is how the rain of a season is drawn.
type Draw int

// The draws.
const (
	DrawYears Draw = iota + 1 // whole calendar years of the record, each as likely as any other, every time anew
	DrawGamma                 // each month by itself, from the gamma distribution fitted to that month
)

// Past is what becomes of the months that are past today.
type Past int

// What becomes of them.
const (
	PastKnown Past = iota + 1 // those in the farm's rain stay as they fell
	PastDrawn                 // all are drawn: the odds before anything was known
)

// Design is how points are laid over the inputs.
type Design int

// The designs.
const (
	DesignGrid      Design = iota + 1 // every step of an input with every step of the others
	DesignHypercube                   // a Latin hypercube: each input's span in as many parts as points, each part used once
)

// Input is what a sweep changes.
type Input int

// The inputs.
const (
	InputGrowth       Input = iota + 1 // the own factor on growth, in place of the document's
	InputHead                          // whole head of a group, its changes in proportion
	InputHeadFactor                    // a factor on a group's head
	InputLeave                         // the height a rotation leaves
	InputTurnIn                        // the height from which a rotation grazes
	InputRest                          // the shortest rest of a rotation, whole days
	InputMoves                         // moves a day of a rotation, whole
	InputRainFactor                    // a factor on the rain of every month that is drawn; what past keeps as it fell, and the normals, stay
	InputHay                           // the hay in store, as it lies, in place of the document's
	InputLandFactor                    // a factor on the size of land: the width of a lane, the area of a paddock
	InputIntakeFactor                  // a factor on what animals want, from grass and in place of it
)

// Sweep is an input and the span over which it goes.
type Sweep struct {
	Input    Input                        `json:"input" document:"required" allowed:"\"growth\", \"head\", \"head factor\", \"leave\", \"turn in\", \"rest\", \"moves\", \"rain factor\", \"hay\", \"land factor\" or \"intake factor\""`
	Group    string                       `json:"group,omitempty" allowed:"the id of a group, with head and head factor; with intake factor too, or all groups if left out"`
	Land     string                       `json:"land,omitempty" allowed:"the id of land, with land factor; all land if left out"`
	Rotation int                          `json:"rotation,omitempty" allowed:"the place of a rotation in the farm, 0 for the first, with leave, turn in, rest and moves"`
	Span     *units.Span[float64]         `json:"span,omitempty" allowed:"low and high as numbers: whole head, days or moves, or factors; those on rain, land and intake up to 10"`
	Heights  *units.Span[units.Height]    `json:"heights,omitempty" allowed:"low and high, with leave and turn in"`
	Hay      *units.Span[units.FreshFeed] `json:"hay,omitempty" allowed:"low and high, 0 or more, with hay"`
	Steps    int                          `json:"steps,omitempty" allowed:"steps of a grid, ends among them, 2 to 100; no more than there are whole numbers in the span of an input that knows those alone"`
	Note     string                       `json:"note,omitempty"`
	Extra    map[string]any               `json:"-" document:"extra"`
}

// Result is what came of the seasons.
type Result struct {
	Seasons int     `json:"seasons"` // at each point
	Years   []int   `json:"years"`   // of the record that are whole, from which is drawn
	Seed    int     `json:"seed"`    // of the draws
	Points  []Point `json:"points"`  // one where no input was named
}

// Point is what came of the seasons at one point of the inputs.
type Point struct {
	Values []float64      `json:"values"`           // of the inputs in their order, in base units
	Fed    Spread         `json:"fed_kg"`           // dry matter wanted in place of grass, by stock that hay stands in for
	Short  Spread         `json:"short_kg"`         // of it, the most by which it ran ahead of the hay in store and cut by then
	Odds   units.Fraction `json:"odds"`             // of a season that runs short
	First  []units.Date   `json:"first_short_days"` // of the seasons that run short, their first day at 5, 25, 50, 75 and 95 %; empty where none does
	Months []Month        `json:"months"`           // of the plan, in order
}

// Spread is a figure over all seasons: in 5 % of them it is no more than
// Low, and so on.
type Spread struct {
	Low    units.DryMatter `json:"p5"`   // of 5 % of the seasons
	Lower  units.DryMatter `json:"p25"`  // of 25 %
	Middle units.DryMatter `json:"p50"`  // of 50 %
	Upper  units.DryMatter `json:"p75"`  // of 75 %
	High   units.DryMatter `json:"p95"`  // of 95 %
	Mean   units.DryMatter `json:"mean"` // of all
}

// Month is a month of the plan over all seasons.
type Month struct {
	Year  int            `json:"year"`    // the calendar year
	Month int            `json:"month"`   // 1 to 12
	Odds  units.Fraction `json:"odds"`    // of feed wanted in it beyond the hay
	Left  Spread         `json:"left_kg"` // hay allowed by the month's end less feed wanted by then, dry matter; below 0: what was missing
}

// Read reads the question of a study from JSON and checks it whole. The
// error names the path in the document, the value and what is allowed.
//
// Check: TestBadStudies
//
// Source: definition: the form of the document is ours
func Read(data []byte) (*Study, error) {
	var s Study
	if err := document.Decode(data, &s); err != nil {
		return nil, err
	}
	if _, err := s.ready(); err != nil {
		return nil, err
	}
	return &s, nil
}

// JSON writes the question as a document in a system of units. Read reads
// it back.
func (s *Study) JSON(system units.System) ([]byte, error) { return document.Encode(s, system) }

// Run runs many seasons of a farm, each with rain drawn from a record, and tells
// how much feed they want, how often and how early the hay does not reach, and how
// that changes with inputs of the user's choice.
//
// Method: for each season every calendar year that the plan touches, and the one
// before, is a whole year of the record drawn with replacement, or twelve months
// drawn from gamma distributions; the growth of each month follows from the rain by
// the plan's own rule, and the day loop is the plan's. The same season number has
// the same rain at every point. A percentile is the smallest value that so many of
// the seasons do not exceed. Feed counts as the plan counts it, the first days of
// followers included; hay counts from the day it is cut.
//
// Note: the odds are of rain alone: not of hail, sickness or a late spring, and
// above the normal rain there is no gain. Years are drawn one by one, so two
// droughts in a row come as often as chance has it; months drawn by themselves know
// nothing of one another, and a year of them varies less than those of a record in
// which dry months come together. A record of thirty years holds no drought of one
// in a hundred. Normals are those of the farm's rain, or the record's means where it
// has none. A rain factor makes every month that is drawn so much drier or wetter, those
// before today too where they are drawn; normals stay, and so do months that are kept as
// they fell. Whether the water reaches for more head is not asked. Notes and cautions
// are those of a plan.
//
// Errors: a document error with the path, the value and what is allowed, the path
// beginning with point[3] where the inputs make a farm that is refused at their fourth
// point; a *units.DomainError where figures are impossible together at a point
//
// Check: TestStudyOfItsOwnYearIsThePlan, TestStudyAgainstPlans,
// TestStudyIsTheSameOnAnyWorkers, TestStudySweeps, TestStudyRainFactorIsAnotherRecord
//
// Source: ours: the draw of whole years and the counting; rainfall.ForageShare and
// rainfall.FitRain name what they stand on
func (s *Study) Run() (Result, error) {
	return s.RunContext(context.Background(), 0, nil)
}

// RunContext is Run that can be stopped: it ends with the error of the context soon after
// that is done. Workers is how many seasons run at a time, 0 for as many as there are
// processors; the answer does not depend on it. Progress, where it is not nil, is told
// from time to time how many seasons of how many are done, by one worker at a time.
//
// The number of pieces of memory does not grow with the seasons. Their size does, by
// what the percentiles need of every season: 40 bytes and 9 for each month of the plan,
// about 100 bytes a season of seven months, whatever the number of points.
func (s *Study) RunContext(ctx context.Context, workers int, progress func(done, all int)) (Result, error) {
	p, err := s.ready()
	if err != nil {
		return Result{}, err
	}
	if ctx == nil {
		ctx = context.Background()
	}
	return p.run(ctx, workers, progress)
}
