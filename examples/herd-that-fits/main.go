// Herd-that-fits answers one question: which numbers of cows, ewes, goats and hens
// fit this land? It reads a fitting document (its own invented farm where none is
// named) and prints the best herd for each goal that the document has figures for,
// its own goal first.
//
//	go run ./examples/herd-that-fits
//	go run ./examples/herd-that-fits -file my-farm.json
//
// The exit status is 0 when all went well, 2 when something was wrong with what was
// given to it, 1 when something else failed.
package main

import (
	"context"
	_ "embed"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"os/signal"
	"strings"

	"example.org/soum/grazing/fit"
)

//go:embed farm.json
var farm []byte

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	status := run(ctx, os.Args[1:], os.Stdout, os.Stderr)
	stop()
	os.Exit(status)
}

func run(ctx context.Context, args []string, out, told io.Writer) int {
	flags := flag.NewFlagSet("herd-that-fits", flag.ContinueOnError)
	flags.SetOutput(told)
	file := flags.String("file", "", "read the land, the stock and the wishes from this `file`, a fitting document")
	switch err := flags.Parse(args); {
	case errors.Is(err, flag.ErrHelp):
		return 0
	case err != nil:
		return 2
	case flags.NArg() > 0:
		fmt.Fprintf(told, "herd-that-fits: %q is no flag: -file takes the file (-help lists the flags)\n", flags.Arg(0))
		return 2
	}
	text, err := answer(ctx, *file)
	switch {
	case errors.Is(err, context.Canceled):
		fmt.Fprintln(told, "herd-that-fits: stopped")
		return 1
	case err != nil:
		fmt.Fprintln(told, "herd-that-fits:", strings.ReplaceAll(err.Error(), "\n", " "))
		return 2
	}
	if _, err = io.WriteString(out, text); err != nil {
		return 1
	}
	return 0
}

// answer gives the text for a file, or for the farm within where none is named.
func answer(ctx context.Context, file string) (string, error) {
	data := farm
	if file != "" {
		var err error
		if data, err = os.ReadFile(file); err != nil {
			return "", err
		}
	}
	question, err := fit.Read(data)
	if err != nil {
		return "", err
	}
	var b strings.Builder
	if err := goals(ctx, &b, question); err != nil {
		return "", err
	}
	if file == "" {
		err = oneWishTooMany(ctx, &b, question)
	}
	return b.String(), err
}

// goals asks the question for the document's own goal and for each other that it has
// figures for.
func goals(ctx context.Context, b *strings.Builder, question *fit.Question) error {
	own := question.Goal
	defer func() { question.Goal = own }()
	for _, goal := range []fit.Goal{own, fit.GoalAnimalUnits, fit.GoalMargin, fit.GoalLeastHay} {
		if goal == own && b.Len() > 0 {
			continue // it came first
		}
		question.Goal = goal
		answer, err := question.AnswerContext(ctx)
		switch {
		case err != nil && goal != own && ctx.Err() == nil: // nobody asked the file for it
			fmt.Fprintf(b, "For %s the file gives no answer: %s.\n\n", goal, err)
			continue
		case err != nil:
			return err
		}
		fmt.Fprintf(b, "For %s: %s\n", goal, answer.English)
		if goal == own && answer.Fits {
			tell(b, question, &answer)
		}
		b.WriteByte('\n')
	}
	return nil
}

// oneWishTooMany asks the farm within for more cows than its barn has room for.
func oneWishTooMany(ctx context.Context, b *strings.Builder, question *fit.Question) error {
	question.Stock[0].Least = 8
	answer, err := question.AnswerContext(ctx)
	if err != nil {
		return err
	}
	_, err = fmt.Fprintln(b, "With 8 cows asked for:", answer.English)
	return err
}
