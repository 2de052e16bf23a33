// Fence-bill answers one question: what fence does this land take, and what does it
// cost in a year? It reads the fence and your prices from a JSON file (its own
// invented farm where none is named) and prints the answer with the numbers behind
// it.
//
//	go run ./examples/fence-bill
//	go run ./examples/fence-bill -file my-fence.json -units metric
//
// The exit status is 0 when all went well, 2 when something was wrong with what was
// given to it, 1 when something else failed.
package main

import (
	"bytes"
	_ "embed"
	"encoding/json"
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

// question is the document that the program reads.
type question struct {
	Note  string              `json:"note"`
	Stock grazing.FencedStock `json:"stock"`    // quiet cattle, small, birds or horned
	As    string              `json:"wired_as"` // the animal that the wires are chosen for
	Land  units.Area          `json:"land"`     // that the moved fence goes over
	Job   grazing.FenceJob    `json:"job"`
}

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
	var q question
	reader := json.NewDecoder(bytes.NewReader(data))
	reader.DisallowUnknownFields()
	if err := reader.Decode(&q); err != nil {
		return "", err
	}
	bill, err := grazing.BillOfFence(q.Job)
	if err != nil {
		return "", err
	}
	var b strings.Builder
	if err := q.tellFence(&b, &bill, system); err != nil {
		return "", err
	}
	tellMoney(&b, &q, &bill)
	b.WriteString(caution)
	return b.String(), nil
}

// tellFence says what stands where and why.
func (q *question) tellFence(b *strings.Builder, bill *grazing.FenceBill, system units.System) error {
	fmt.Fprintf(b, "The fence: %d lanes of %s by %s, %s of fence that stays with %d wires.\n",
		q.Job.Lanes, q.Job.Length.In(system), q.Job.Width.In(system), bill.Fence.In(system), q.Job.Wires)
	least, err := grazing.Wires(q.As, grazing.LineBoundary, units.Low)
	if err != nil {
		return err
	}
	most, err := grazing.Wires(q.As, grazing.LineBoundary, units.High)
	if err != nil {
		return err
	}
	fmt.Fprintf(b, "For %s print has %.0f to %.0f wires round the land (ARS-SPURGE-FENCE).\n", q.As, least, most)
	if float64(q.Job.Wires) < least {
		fmt.Fprintf(b, "Yours has fewer: it may not hold them.\n")
	}
	fmt.Fprintf(b, "Across the lanes: %s, moved: %s in all for %d strips in use and %d spare.\n", q.Job.Moved, bill.Cross.In(system), q.Job.Strips, q.Job.Spare)
	suits, err := grazing.NettingOrWire(q.Stock, q.Land)
	if err != nil {
		return err
	}
	switch {
	case q.Stock == grazing.FencedHorned && q.Job.Moved == grazing.MovedNetting:
		b.WriteString("NOT netting for anybody horned or for young kids: they die in it. Take several wires (DEFRA-SHEEP, DEFRA-GOAT).\n")
	case suits == grazing.MovedEither:
		fmt.Fprintf(b, "On %s netting or several wires are both done: count both (common practice).\n", q.Land.In(system))
	case suits != q.Job.Moved:
		fmt.Fprintf(b, "On %s most people take %s for such stock (common practice).\n", q.Land.In(system), suits)
	}
	press, err := grazing.GroundRod(bill.Output, grazing.RodTradePress)
	if err != nil {
		return err
	}
	utility, err := grazing.GroundRod(bill.Output, grazing.RodUtility)
	if err != nil {
		return err
	}
	fmt.Fprintf(b, "Energizer: at least %s, one joule a mile of fence, however many wires (BEEF-FENCE-MISTAKES).\n", bill.Output.In(system))
	fmt.Fprintf(b, "Ground rods: %s by the trade press, %s by a power company, whose rule is the safer; yours follows: %s.\n", press.In(system), utility.In(system), q.Job.RodRule)
	voltage, err := grazing.FenceVoltage(q.As, grazing.VoltageLeast, units.Low)
	if err == nil {
		fmt.Fprintf(b, "Voltage for %s: at least %s at the far end (IOWA-382).\n", q.As, voltage.In(system))
	}
	if voltage, err = grazing.FenceVoltage(q.As, grazing.VoltageWorking, units.Low); err == nil {
		fmt.Fprintf(b, "Better hold %s (SHEEP101-FENCE).\n", voltage.In(system))
	}
	return nil
}

// tellMoney prints the bill.
func tellMoney(b *strings.Builder, q *question, bill *grazing.FenceBill) {
	fmt.Fprintf(b, "\nThe bill, at the prices in the file:\n\n%-12s %8s %14s %14s\n", "", "pieces", "cost", "a year")
	for _, line := range bill.Lines {
		fmt.Fprintf(b, "%-12s %8.0f %14s %14s\n", line.Item, line.Pieces, line.Cost.Round(2), line.Yearly.Total.Round(2))
	}
	fmt.Fprintf(b, "%-12s %8s %14s %14s\n\n", "together", "", bill.Cost.Round(2), bill.Year.Round(2))
	fmt.Fprintf(b, "A year is the price over the years it lasts, %s of interest on half of it, and upkeep (IOWA-FENCE-COSTS).\n", q.Job.Interest.In(units.US))
	b.WriteString("Gates, braces, insulators and your own work are not in it.\n")
}

const caution = `
Electric fence can hurt people and animals. One energizer for one fence, made to
the safety standard; never barbed wire; 2.5 m from the fence of another energizer;
its earth 10 m from any other; signs where people pass; off before you work on it
(IEC-FENCE, IEC 60335-2-76 as makers reprint it). Horned stock and young kids never
behind netting. The local rules and an adviser decide.
`
