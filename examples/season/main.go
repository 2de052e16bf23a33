// Season plans the grazing season of a farm: its own invented one, or the one
// in a file of yours. It prints the verdict, the balance by month, the next
// moves, what it takes of hay, water and fence, and the cautions; flags write
// the same for programs, calendars and eyes.
//
//	go run ./examples/season
//	go run ./examples/season -explain 2001-05-14
//	go run ./examples/season -begin farm.json
//	go run ./examples/season -farm farm.json -calendar moves.ics -pictures pictures
//	go run ./examples/season -farm farm.json -log moves.csv -today 2001-05-08
//
// The exit status is 0 when all went well, 2 when something was wrong with what
// was given to it, 1 when something else failed, such as a disk that is full.
package main

import (
	_ "embed"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"strings"

	"example.org/soum/grazing/farm"
	"example.org/soum/units"
)

//go:embed data/farm.json
var inventedFarm []byte

const program = "season"

// The exit statuses.
const (
	allWell = iota
	failed
	badInput
)

// inputError is something wrong with what the user gave.
type inputError struct{ error }

func (e inputError) Unwrap() error { return e.error }

// wrong makes an inputError, which is one line whatever it quotes.
func wrong(format string, args ...any) error { return inputError{fmt.Errorf(format, args...)} }

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }

func run(args []string, in io.Reader, out, errors io.Writer) int {
	err := start(args, in, out, errors)
	if err == nil {
		return allWell
	}
	fmt.Fprintln(errors, program+": "+oneLine(err.Error()))
	if isInput(err) {
		return badInput
	}
	return failed
}

func isInput(err error) bool {
	var input inputError
	return errors.As(err, &input)
}

// options is what the flags say.
type options struct {
	farm                          string
	units                         *units.System // nil: the farm's own
	days                          int
	json, moves, calendar, images string
	explain                       *units.Date // nil: the plan itself
	begin                         string
	answers                       answers
	log, heights, save            string     // where a farm is carried on
	moved                         string     // what the log holds
	since                         units.Date // the day of the farm's own heights; 0 where it is not carried on
}

// start reads the flags and does what they ask for.
func start(args []string, in io.Reader, out, prompts io.Writer) error {
	var o options
	flags := o.flags()
	switch err := flags.Parse(args); {
	case errors.Is(err, flag.ErrHelp):
		return usage(flags, out)
	case err != nil:
		return wrong("%v (-help lists the flags)", err)
	case flags.NArg() > 0:
		return wrong("%q is no flag: -farm takes the farm's file (-help lists the flags)", flags.Arg(0))
	}
	if err := o.check(flags); err != nil {
		return err
	}
	if o.begin != "" {
		return o.beginFarm(in, out, prompts)
	}
	return o.planSeason(in, out)
}

func (o *options) flags() *flag.FlagSet {
	f := flag.NewFlagSet(program, flag.ContinueOnError)
	f.SetOutput(io.Discard)
	f.StringVar(&o.farm, "farm", "", "plan the farm in this `file` instead of the invented one; - is standard input")
	f.Func("units", "print in these `units`: metric or US, whatever the farm's own are", o.setUnits)
	f.IntVar(&o.days, "days", 14, "list the moves of so many `days`")
	f.StringVar(&o.json, "json", "", "write the whole plan as JSON to this `file`")
	f.StringVar(&o.moves, "moves", "", "write all moves as CSV to this `file`")
	f.StringVar(&o.calendar, "calendar", "", "write all moves as an iCalendar to this `file`")
	f.StringVar(&o.images, "pictures", "", "write two pictures (SVG) into this `directory`")
	f.Func("explain", "in place of the plan, show the work behind a `day` of it, such as 2001-05-14: each formula with its numbers and its source", o.setExplain)
	o.logFlags(f)
	f.StringVar(&o.begin, "begin", "", "write a first farm to this new `file`; what the flags below do not say is asked")
	o.answers.flags(f)
	return f
}

func (o *options) setUnits(text string) error {
	o.units = new(units.System)
	return o.units.UnmarshalText([]byte(text))
}

func (o *options) setExplain(text string) error {
	o.explain = new(units.Date)
	return o.explain.UnmarshalText([]byte(text))
}

// usage prints the flags.
func usage(flags *flag.FlagSet, out io.Writer) error {
	fmt.Fprintln(out, "Plans the grazing season of a farm and prints it. The flags are:")
	flags.SetOutput(out)
	flags.PrintDefaults()
	_, err := fmt.Fprintln(out, "A file named - is standard output; the plan is then not printed beside it.")
	return err
}

// check tells which flags do not go together.
func (o *options) check(flags *flag.FlagSet) error {
	var err error
	flags.Visit(func(f *flag.Flag) {
		named := func(list string) bool { return strings.Contains(list, " "+f.Name+" ") }
		ofPlan, ofBoth := named(" farm days json moves calendar pictures explain log heights save "), named(" units today ")
		switch {
		case err != nil:
		case o.begin != "" && ofPlan:
			err = wrong("-%s does not go with -begin: write the farm first, then plan it", f.Name)
		case o.begin == "" && !ofPlan && !ofBoth:
			err = wrong("-%s goes with -begin only: a farm's file holds its own", f.Name)
		case o.explain != nil && ofPlan && !named(" farm explain log heights "):
			err = wrong("-%s does not go with -explain, which shows the work and not the plan", f.Name)
		case f.Value.String() == "" && f.Name != "units" && f.Name != "explain":
			err = wrong("-%s is empty", f.Name)
		}
	})
	if err == nil {
		err = o.checkInputs()
	}
	if err == nil && (o.days < 1 || o.days > 1100) {
		err = wrong("-days: %d is out of bounds; 1 to 1,100", o.days)
	}
	return err
}

// planSeason plans a farm and writes what was asked for: files first, so that
// nothing is printed where one of them fails.
func (o *options) planSeason(in io.Reader, out io.Writer) error {
	holding, err := o.readFarm(in)
	if err != nil {
		return err
	}
	if holding, err = o.carryOn(holding, in); err != nil {
		return err
	}
	if o.explain != nil {
		return explainDay(holding, *o.explain, out)
	}
	plan, err := holding.Plan()
	if err != nil {
		return inputError{err}
	}
	files, err := o.outputs(holding, plan)
	if err != nil {
		return err
	}
	return writeAll(files, out)
}

func (o *options) readFarm(in io.Reader) (*farm.Farm, error) {
	data := inventedFarm
	if o.farm != "" {
		var err error
		if data, err = readAll("farm", o.farm, in); err != nil {
			return nil, err
		}
	}
	holding, err := farm.Read(data)
	if err != nil {
		return nil, inputError{err}
	}
	if o.units != nil {
		holding.Units = *o.units
	}
	return holding, nil
}

// readAll reads what a flag names: a file, or standard input.
func readAll(name, path string, in io.Reader) ([]byte, error) {
	read := func() ([]byte, error) { return os.ReadFile(path) }
	if path == standardInput {
		read = func() ([]byte, error) { return io.ReadAll(in) }
	}
	data, err := read()
	if err != nil {
		return nil, wrong("-%s: %w", name, err)
	}
	return data, nil
}
