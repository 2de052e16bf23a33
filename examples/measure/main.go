// Measure turns a walk with a ruler into a strip: how much grass stands, how sure
// that is, what may be eaten of it, and how long tomorrow's strip is to be.
//
//	go run ./examples/measure
//	go run ./examples/measure -units metric
//	go run ./examples/measure -file walk.csv -density "250 lb/ac/in" -leave "4 in" -demand "67.5 lb/day" -width "100 ft"
//
// The file is CSV with one column of heights, whose head tells the unit: "height
// (in)" or "height (cm)". An empty cell is a place that was not read.
//
// The exit status is 0 when all went well, 2 when something was wrong with what
// was given to it.
package main

import (
	"bytes"
	_ "embed"
	"encoding/csv"
	"errors"
	"flag"
	"fmt"
	"io"
	"math"
	"os"
	"regexp"
	"slices"
	"strings"

	"example.org/soum/forage"
	"example.org/soum/grazing"
	"example.org/soum/units"
)

//go:embed data/walk.csv
var inventedWalk []byte

// sure is the confidence of every interval printed.
const sure = 95 * units.Percent

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

func run(args []string, out, problems io.Writer) int {
	switch err := measure(args, out); {
	case errors.Is(err, flag.ErrHelp):
		return 0
	case err != nil:
		fmt.Fprintln(problems, "measure: "+strings.Join(strings.Fields(err.Error()), " "))
		return 2
	}
	return 0
}

// question is what the flags say. Ten ewes in milk of 150 lb eat 4.5 % of their
// weight: 67.5 lb a day.
type question struct {
	file    string
	system  units.System
	density units.Density
	leave   units.Height
	demand  units.Demand
	width   units.Length
}

func measure(args []string, out io.Writer) error {
	q := question{system: units.US, density: 300 * units.PoundPerAcreInch, leave: 4 * units.HeightInch, demand: 67.5 * units.PoundPerDay, width: 100 * units.Foot}
	flags := flag.NewFlagSet("measure", flag.ContinueOnError)
	flags.SetOutput(io.Discard)
	flags.StringVar(&q.file, "file", "", "read the walk from this `file` instead of the invented one")
	flags.TextVar(&q.system, "units", q.system, "print in these `units`: metric or US")
	flags.Func("density", "dry matter of each unit of height, as \"300 lb/ac/in\"", reads(&q.density, units.ParseDensity))
	flags.Func("leave", "height to be left, as \"4 in\"", reads(&q.leave, units.ParseHeight))
	flags.Func("demand", "what the animals eat in a day, as \"67.5 lb/day\"", reads(&q.demand, units.ParseDemand))
	flags.Func("width", "width of the lane, as \"100 ft\"", reads(&q.width, units.ParseLength))
	if err := flags.Parse(args); errors.Is(err, flag.ErrHelp) {
		fmt.Fprintln(out, "Turns a walk with a ruler into tomorrow's strip. The flags are:")
		flags.SetOutput(out)
		flags.PrintDefaults()
		return err
	} else if err != nil {
		return fmt.Errorf("%w (-help lists the flags)", err)
	}
	if flags.NArg() > 0 {
		return fmt.Errorf("%q is no flag: -file takes the walk's file (-help lists the flags)", flags.Arg(0))
	}
	heights, err := walked(q.file)
	if err != nil {
		return err
	}
	var text bytes.Buffer // nothing is printed where something is wrong
	if err := q.answer(heights, &text); err != nil {
		return err
	}
	_, err = text.WriteTo(out)
	return err
}

// reads makes the reader of a flag that is text with a unit.
func reads[Q any](into *Q, parse func(string) (Q, error)) func(string) error {
	return func(text string) (err error) {
		*into, err = parse(text)
		return err
	}
}

// answer prints what the walk tells.
func (q question) answer(heights []units.Height, out io.Writer) error {
	walk, err := forage.MeanHeight(heights, sure)
	if err != nil {
		return err
	}
	fmt.Fprintf(out, "%d readings%s: the grass is %s high, give or take %s: the true mean lies between %s and %s nineteen times in twenty.\n",
		walk.Readings, gaps(walk.Gaps), walk.Mean.In(q.system), (walk.High - walk.Mean).In(q.system), walk.Low.In(q.system), walk.High.In(q.system))
	if err := q.enough(walk, out); err != nil {
		return err
	}
	standing, err := q.each(walk, func(h units.Height) (units.Yield, error) { return forage.Standing(h, q.density) })
	if err != nil {
		return err
	}
	fmt.Fprintf(out, "At %s that is %s standing (%s to %s).\n", q.density.In(q.system), standing[1].In(q.system), standing[0].In(q.system), standing[2].In(q.system))

	available, err := forage.Available(walk.Mean, q.leave, q.density)
	if err != nil {
		return err
	}
	use, err := forage.UsableShare(1 * units.Day)
	if err != nil {
		return err
	}
	trampled, err := forage.Trampled(available, use)
	if err != nil {
		return err
	}
	fmt.Fprintf(out, "Left at %s, %s stand above, of which %s may be eaten in a day; %s are trampled.\n",
		q.leave.In(q.system), available.In(q.system), (available - trampled).In(q.system), trampled.In(q.system))

	length, err := q.strip(walk.Mean, use)
	if err != nil {
		return err
	}
	fmt.Fprintf(out, "Animals that eat %s need a strip of %s in a lane of %s.\n", q.demand.In(q.system), length.In(q.system), q.width.In(q.system))
	return q.doubt(walk, use, out)
}

func gaps(n int) string {
	if n == 0 {
		return ""
	}
	return fmt.Sprintf(" (%d not read)", n)
}

// enough tells how many readings this paddock takes.
func (q question) enough(walk forage.HeightReadings, out io.Writer) error {
	if walk.Variation <= 0 {
		return nil
	}
	needed, err := forage.ReadingsNeeded(walk.Variation, 10*units.Percent, sure)
	if err == nil {
		fmt.Fprintf(out, "A mean within a tenth takes %.0f readings on grass as uneven as this.\n", needed)
	}
	return err
}

// each reckons at the low end, the mean and the high end of the height. Below the
// soil there is nothing.
func (q question) each(walk forage.HeightReadings, of func(units.Height) (units.Yield, error)) (got [3]units.Yield, err error) {
	for i, height := range [...]units.Height{max(walk.Low, 0), walk.Mean, walk.High} {
		if got[i], err = of(height); err != nil {
			return got, err
		}
	}
	return got, nil
}

// strip gives the length of a day's strip on grass of a height.
func (q question) strip(height units.Height, use units.Fraction) (units.Length, error) {
	available, err := forage.Available(height, q.leave, q.density)
	if err != nil {
		return 0, err
	}
	area, err := grazing.StayArea(q.demand, 1*units.Day, available, use)
	if err != nil {
		return 0, err
	}
	return grazing.StripLength(area, q.width)
}

// doubt tells what the strip would be at the ends of the interval.
func (q question) doubt(walk forage.HeightReadings, use units.Fraction, out io.Writer) error {
	short, err := q.strip(walk.High, use)
	if err != nil {
		return err
	}
	if walk.Low <= q.leave {
		fmt.Fprintf(out, "The readings leave open whether anything stands above %s at all: take more of them.\n", q.leave.In(q.system))
		return nil
	}
	long, err := q.strip(walk.Low, use)
	if err != nil {
		return err
	}
	_, err = fmt.Fprintf(out, "By the readings alone it is %s to %s, and the density is less sure than the height: look at what is left tomorrow, and move the fence by that.\n", short.In(q.system), long.In(q.system))
	return err
}

// heightHead matches the head of the column of heights.
var heightHead = regexp.MustCompile(`^height \(([^)]+)\)$`)

// walked reads the heights of a walk, the invented one without a file.
func walked(file string) ([]units.Height, error) {
	data, name := inventedWalk, "the invented walk"
	if file != "" {
		var err error
		if data, err = os.ReadFile(file); err != nil {
			return nil, err
		}
		name = file
	}
	r := csv.NewReader(bytes.NewReader(bytes.TrimPrefix(data, []byte("\xef\xbb\xbf"))))
	r.Comment = '#'
	head, err := r.Read()
	if err != nil {
		return nil, fmt.Errorf("%s: no head of columns: the first line names them, such as \"place,height (in)\"", name)
	}
	column := slices.IndexFunc(head, func(cell string) bool { return heightHead.MatchString(strings.TrimSpace(cell)) })
	if column < 0 {
		return nil, fmt.Errorf("%s: the columns are %q: one of them is to be \"height (in)\" or \"height (cm)\", a ruler's height with its unit", name, head)
	}
	unit := heightHead.FindStringSubmatch(strings.TrimSpace(head[column]))[1]
	var heights []units.Height
	for {
		row, err := r.Read()
		if errors.Is(err, io.EOF) {
			return heights, nil
		}
		if err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		height := units.Height(math.NaN())
		if cell := strings.TrimSpace(row[column]); cell != "" {
			if height, err = units.ParseHeight(cell + " " + unit); err != nil {
				line, _ := r.FieldPos(column)
				return nil, fmt.Errorf("%s, line %d: %w", name, line, err)
			}
		}
		heights = append(heights, height)
	}
}
