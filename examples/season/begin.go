package main

import (
	"bufio"
	"flag"
	"fmt"
	"io"
	"os"
	"strconv"
	"strings"
	"time"

	"example.org/soum/forage"
	"example.org/soum/grazing/farm"
	"example.org/soum/herd"
	"example.org/soum/units"
)

// answers is what the flags say of a first farm, as it was typed.
type answers struct{ land, pasture, rain, stock, height, today string }

func (a *answers) flags(f *flag.FlagSet) {
	f.StringVar(&a.land, "land", "", "with -begin: the grazing land, such as \"8 ac\" (`area`)")
	f.StringVar(&a.pasture, "pasture", "", "with -begin: the `kind` of pasture: "+strings.Join(pastureNames(), ", "))
	f.StringVar(&a.rain, "rain", "", "with -begin: the rain of a normal year, such as \"32 in\" (`depth`)")
	f.StringVar(&a.stock, "stock", "", "with -begin: `number and class`, such as \"12 dairy-goat, 2 suckler-cow\"; the classes are "+strings.Join(classNames(), ", "))
	f.StringVar(&a.height, "height", "", "with -begin: today's `height` of the grass, such as \"7 in\", where it was measured")
	f.StringVar(&a.today, "today", "", "with -begin or -log: the `day` the plan begins, such as 2026-05-01; the clock's if left out")
}

func pastureNames() (names []string) {
	for _, p := range forage.Pastures() {
		names = append(names, p.Name)
	}
	return names
}

func classNames() (names []string) {
	for _, c := range herd.Classes() {
		names = append(names, c.Name)
	}
	return names
}

// beginFarm writes a first farm of a few answers to a file that is not there yet.
func (o *options) beginFarm(in io.Reader, out, prompts io.Writer) error {
	if o.begin == standardOutput {
		return wrong("-begin takes the name of a file")
	}
	if _, err := os.Lstat(o.begin); err == nil {
		return wrong("%s is there already: -begin writes new files only", o.begin)
	}
	given, err := o.ask(&console{lines: bufio.NewScanner(in), prompts: prompts})
	if err != nil {
		return err
	}
	holding, err := farm.First(given)
	if err != nil {
		return inputError{err}
	}
	data, err := holding.JSON(given.Units)
	if err != nil {
		return err
	}
	if err := writeNew(o.begin, data); err != nil {
		return err
	}
	_, err = fmt.Fprintf(out, "A first farm stands in %s. Read its notes, which say what was filled in, and\nput your own figures in their place. Plan it with\n\n    go run ./examples/season -farm %s\n", o.begin, shellWord(o.begin))
	return err
}

// shellWord quotes a path where a shell would part it.
func shellWord(path string) string {
	if strings.ContainsAny(path, " \t'\"$&;()<>|*?`\\") {
		return "'" + strings.ReplaceAll(path, "'", `'\''`) + "'"
	}
	return path
}

// question is one thing that a first farm needs to know.
type question struct {
	flag     string
	text     string // what is asked; "" for what is never asked
	answer   string // what the flag said
	take     func(text string) error
	optional bool
}

// ask takes the answers of the flags and asks for the others.
func (o *options) ask(c *console) (farm.Answers, error) {
	a, given := &o.answers, farm.Answers{}
	given.Today = clockToday()
	questions := []question{
		{"today", "", a.today, reader(&given.Today), true},
		{"land", "How much grazing land? Such as 8 ac, or 3 ha.", a.land, reader(&given.Area), false},
		{"pasture", "Which pasture is most like yours? One of " + strings.Join(pastureNames(), ", ") + ".", a.pasture, pastureReader(&given.Pasture), false},
		{"rain", "How much rain in a normal year? Such as 32 in, or 800 mm.", a.rain, reader(&given.Rain), false},
		{"stock", "Which stock, and how many? Such as 12 dairy-goat, 2 suckler-cow. The classes are " + strings.Join(classNames(), ", ") + ".", a.stock, stockReader(&given.Stock), false},
		{"height", "How high is the grass today? Such as 7 in, or 18 cm. Leave it empty if you have not measured.", a.height, reader(&given.Height), true},
	}
	for i := range questions {
		q := &questions[i]
		switch err := c.answer(q); {
		case err != nil:
			return given, err
		case q.flag == "land" && inUS(q.answer):
			given.Units = units.US
		}
	}
	if o.units != nil {
		given.Units = *o.units
	}
	return given, nil
}

// clockToday gives the clock's date here. The library reads no clock.
func clockToday() units.Date {
	now := time.Now()
	date, _ := units.NewDate(now.Year(), now.Month(), now.Day())
	return date
}

// inUS tells whether an area was given in acres, feet or yards.
func inUS(text string) bool {
	return strings.Contains(text, "ac") || strings.Contains(text, "ft") || strings.Contains(text, "yd")
}

// reader reads a quantity or a date.
func reader(into interface{ UnmarshalText([]byte) error }) func(string) error {
	return func(text string) error { return into.UnmarshalText([]byte(text)) }
}

func pastureReader(into *string) func(string) error {
	return func(text string) error {
		_, err := forage.PastureByName(text)
		*into = text
		return err
	}
}

// stockReader reads "12 dairy-goat, 2 suckler-cow".
func stockReader(into *[]farm.StockAnswer) func(string) error {
	return func(text string) error {
		var all []farm.StockAnswer
		for part := range strings.SplitSeq(text, ",") {
			count, class, _ := strings.Cut(strings.TrimSpace(part), " ")
			head, err := strconv.ParseFloat(count, 64)
			if err != nil {
				return fmt.Errorf(`%q is not a number and a class, such as "12 dairy-goat"`, strings.TrimSpace(part))
			}
			class = strings.TrimSpace(class)
			if _, err := herd.ClassByName(class); err != nil {
				return err
			}
			all = append(all, farm.StockAnswer{Class: class, Head: head})
		}
		*into = all
		return nil
	}
}

// console asks on one stream and reads the answers from another.
type console struct {
	lines   *bufio.Scanner
	prompts io.Writer
}

// answer takes the answer of the flag, or asks until one is right.
func (c *console) answer(q *question) error {
	if q.answer != "" {
		if err := q.take(q.answer); err != nil {
			return wrong("-%s: %w", q.flag, err)
		}
		return nil
	}
	if q.text == "" {
		return nil
	}
	for problem := q.text; ; {
		fmt.Fprint(c.prompts, wrap(problem, "", ""), "> ")
		if !c.lines.Scan() {
			fmt.Fprintln(c.prompts)
			break
		}
		q.answer = strings.TrimSpace(c.lines.Text())
		if q.answer == "" {
			if q.optional {
				return nil
			}
			continue
		}
		err := q.take(q.answer)
		if err == nil {
			return nil
		}
		problem = err.Error()
	}
	if err := c.lines.Err(); err != nil {
		return err
	}
	if q.optional {
		return nil
	}
	return wrong("-%s is missing, and no answer came", q.flag)
}
