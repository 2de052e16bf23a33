package main

import (
	"fmt"
	"os"
	"text/tabwriter"
)

// row is a line of what is printed: something measured, beside something else or
// by itself, and what is aimed at.
type row struct {
	what, measured string
	beside         string  // "" for a figure by itself
	unit           float64 // of the figure by itself, in what is measured
	in             string
	aim            float64 // 0 for none: the most that the ratio, or the figure, should be
}

const (
	milli = 1e6 // nanoseconds in a millisecond
	mega  = 1e6 // bytes
)

var rows = []row{
	{what: "C: row of a product / the bare loop at -O2", measured: "C product", beside: "C product loop"},
	{what: "C: row of w^0.75 / the loop with pow", measured: "C power", beside: "C power loop"},
	{what: "C: row of the logistic curve / the loop with exp", measured: "C logistic", beside: "C logistic loop"},
	{what: "C: a single call", measured: "C call", unit: 1, in: "ns"},
	{what: "Python: row of a product / guarded NumPy", measured: "Python product", beside: "NumPy product guarded", aim: 1.0 / 3},
	{what: "Python: row of a product / the bare C loop", measured: "Python product", beside: "C product loop", aim: 2.5},
	{what: "Python: row of a product / NumPy's expression", measured: "Python product", beside: "NumPy product"},
	{what: "Python: row of w^0.75 / NumPy's expression", measured: "Python power", beside: "NumPy power"},
	{what: "Python: row of the logistic curve / NumPy's expression", measured: "Python logistic", beside: "NumPy logistic"},
	{what: "Python: a single call", measured: "Python call", unit: 1, in: "ns", aim: 700},
	{what: "Python: import", measured: "Python import", unit: milli, in: "ms", aim: 15},
	{what: "Python: loading the library, first call", measured: "Python load", unit: milli, in: "ms"},
	{what: "Node: row of a product / plain JavaScript", measured: "Node product", beside: "JavaScript product"},
	{what: "Node: row of the logistic curve / plain JavaScript", measured: "Node logistic", beside: "JavaScript logistic"},
	{what: "Node: a single call", measured: "Node call", unit: 1, in: "ns"},
	{what: "Node: start, import and first call", measured: "Node start", unit: milli, in: "ms", aim: 90},
	{what: "browser build, raw", measured: "wasm raw", unit: mega, in: "MB"},
	{what: "browser build, gzip", measured: "wasm gzip", unit: mega, in: "MB"},
	{what: "browser build, brotli", measured: "wasm brotli", unit: mega, in: "MB", aim: 1.1},
	{what: "a season's plan by soum_call / in Go", measured: "plan by call", beside: "plan in Go"},
}

// print writes the table, then what JSON takes of a plan.
func (c *costs) print() {
	w := tabwriter.NewWriter(os.Stdout, 0, 0, 2, ' ', 0)
	fmt.Fprintln(w, "\nwhat\tmeasured\tbeside it\tratio\taim")
	for _, r := range rows {
		measured, is := c.found[r.measured]
		other, has := c.found[r.beside]
		switch {
		case !is, r.beside != "" && !has:
			fmt.Fprintf(w, "%s\tskipped\n", r.what)
		case r.beside == "":
			fmt.Fprintf(w, "%s\t%.3g %s\t\t\t%s\n", r.what, measured/r.unit, r.in, judged(measured/r.unit, r.aim))
		default:
			fmt.Fprintf(w, "%s\t%s\t%s\t%.2f\t%s\n", r.what, span(measured), span(other), measured/other, judged(measured/other, r.aim))
		}
	}
	w.Flush()
	if call, plan := c.found["plan by call"], c.found["plan in Go"]; plan > 0 {
		fmt.Printf("\nJSON, farm in and plan out (%.0f kB), takes %.0f %% of a plan by soum_call.\n", c.found["plan size"]/1000, 100*(1-plan/call))
	}
}

func judged(figure, aim float64) string {
	switch {
	case aim == 0:
		return ""
	case figure <= aim:
		return fmt.Sprintf("%.3g: met", aim)
	}
	return fmt.Sprintf("%.3g: not met", aim)
}

// span prints nanoseconds in a unit that suits.
func span(ns float64) string {
	if ns >= milli {
		return fmt.Sprintf("%.3g ms", ns/milli)
	}
	return fmt.Sprintf("%.3g ns", ns)
}
