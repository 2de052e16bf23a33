// Fence-bill answers one question: what fence does this land take, and what does it
// cost in a year? It reads the fence and your prices from a JSON file (its own
// invented farm where none is named) and prints the answer with the numbers behind
// it. Where the file has `grazed`, what is grazed behind the fence in a year, it
// tells the cost of each animal-unit month, and where it has `saves`, when the fence
// has paid for itself.
//
//	go run ./examples/fence-bill
//	go run ./examples/fence-bill -file my-fence.json -units metric
//
// The exit status is 0 when all went well, 2 when something was wrong with what was
// given to it, 1 when something else failed.
package main

import (
	_ "embed"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"strings"

	"example.org/soum/grazing"
	"example.org/soum/units"
)

//go:embed data/fence.json
var invented []byte

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

func run(args []string, out, told io.Writer) int {
	flags := flag.NewFlagSet("fence-bill", flag.ContinueOnError)
	flags.SetOutput(told)
	file := flags.String("file", "", "read the fence and the prices from this `file`")
	system := units.US
	flags.Func("units", "print in these `units`: metric or US", func(text string) error { return system.UnmarshalText([]byte(text)) })
	switch err := flags.Parse(args); {
	case errors.Is(err, flag.ErrHelp):
		return 0
	case err != nil:
		return 2
	case flags.NArg() > 0:
		fmt.Fprintf(told, "fence-bill: %q is no flag: -file takes the file (-help lists the flags)\n", flags.Arg(0))
		return 2
	}
	data := invented
	if *file != "" {
		var err error
		if data, err = os.ReadFile(*file); err != nil {
			fmt.Fprintln(told, "fence-bill:", err)
			return 2
		}
	}
	text, err := answer(data, system)
	if err != nil {
		fmt.Fprintln(told, "fence-bill:", strings.ReplaceAll(err.Error(), "\n", " "))
		return 2
	}
	if _, err = io.WriteString(out, text); err != nil {
		return 1
	}
	return 0
}

// answer reads the question and writes the answer.
func answer(data []byte, system units.System) (string, error) {
	q, err := read(data)
	if err != nil {
		return "", err
	}
	bill, err := grazing.BillOfFence(q.Job)
	if err != nil {
		return "", fmt.Errorf("job.%w", err)
	}
	t := teller{q: q, bill: &bill, system: system}
	t.fence()
	if err := errors.Join(t.moved(), t.power()); err != nil {
		return "", err
	}
	t.money()
	if err := t.worth(); err != nil {
		return "", err
	}
	t.WriteString(caution)
	return t.String(), nil
}
