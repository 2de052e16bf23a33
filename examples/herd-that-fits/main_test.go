package main

import (
	"bytes"
	"context"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Example runs the program. Sums that show in it: 3 cows of 1.3 animal units, 5
// ewes of 0.15, 2 goats of 60 kg (0.132) and 60 hens of 0.004 are 5.15; 21 goats at
// 150 USD and 60 hens at 8 are 3,630 USD, less 650.93 for hay 2,979.07; 8 cows take
// 40 places of 30. In every month what is left is what is to be had, less what is
// wanted, plus hay.
func Example() {
	run(context.Background(), nil, os.Stdout, os.Stderr)
	// Output:
	// For animal units: 3 cows, 5 ewes, 2 goats and 60 hens: 5.15 animal units. With parts of animals allowed it would be 5.45 animal units. No herd of whole animals is better. It is fed 13.7 short tons of hay, 3.68 short tons of it bought for 662.93 USD. 1 short ton more of April grass would carry 0.312 more cows (0.406 animal units more). 1 short ton more of hay in store would carry 0.259 more cows (0.337 animal units more). 1 short ton more of hay that may be bought would carry 0.259 more cows (0.337 animal units more).
	//
	//   lb of dry matter  to be had  wanted    hay   left
	//   January                   0   3,509  3,509      0
	//   February                  0   3,169  3,169      0
	//   March                     0   3,588  3,588      0
	//   April                   250   4,261  4,011      0
	//   May                  11,294   4,403      0  6,891
	//   June                  7,730   4,261      0  3,469
	//   July                  4,638   4,403      0    235
	//   August                4,388   3,938      0    450
	//   September             5,784   3,811      0  1,973
	//   October               2,992   3,938    946      0
	//   November                  0   3,435  3,435      0
	//   December                  0   3,509  3,509      0
	//   What is left in a month is not made into hay; `carry` in the file is the share of it that can still be eaten in the next, here 0 %.
	//
	//   The same with parts of animals, by what the stock eat within the printed spans:
	//   hungry stock:     4.76 animal units
	//   half way between: 5.45 animal units
	//   modest eaters:    6.39 animal units
	//
	// For margin: 21 goats and 60 hens: 2979.07 USD. With parts of animals allowed it would be 2987.55 USD. No herd of whole animals is better. It is fed 13.6 short tons of hay, 3.62 short tons of it bought for 650.93 USD. 1 short ton more of April grass would bring 249.50 USD more, with 1.66 more goats. 1 short ton more of hay in store would bring 202.10 USD more, with 1.35 more goats. 1 short ton more of October grass would bring 147.93 USD more, with 0.986 more goats.
	//
	// For least hay: 2 goats: 1.1 short tons of hay. No herd of whole animals is better. All of it is from the store. Asking for 1 lb of milk a day less in the need of milk would save 0.126 short tons of hay. 1 short ton more of April grass would save 0.0661 short tons of hay. 1 ac more of hillside would save 0.0309 short tons of hay.
	//
	// With 8 cows asked for: Nothing fits: the room of barn (30 places) and at least 8 cows do not go together; leave out either and the other can be kept.
}

// asked gives the exit status and the texts for the farm within after some changes, as
// a file.
func asked(t *testing.T, fromTo ...string) (status int, out, told string) {
	t.Helper()
	text := string(farm)
	for i := 0; i < len(fromTo); i += 2 {
		require.Contains(t, text, fromTo[i])
	}
	file := filepath.Join(t.TempDir(), "farm.json")
	require.NoError(t, os.WriteFile(file, []byte(strings.NewReplacer(fromTo...).Replace(text)), 0o600))
	var o, e bytes.Buffer
	status = run(context.Background(), []string{"-file", file}, &o, &e)
	return status, o.String(), e.String()
}

// TestFile: a file's own goal comes first and has the table; 21 goats at 150 USD and 60
// hens at 8 are 3,630 USD, less 650.93 for hay. A goal that it has no figures for says
// which are wanting. In kilograms the 250 lb of April are 113.
func TestFile(t *testing.T) {
	status, out, told := asked(t, `"goal": "animal units"`, `"goal": "margin"`, `"units": "US"`, `"units": "metric"`)
	require.Zero(t, status, told)
	assert.True(t, strings.HasPrefix(out, "For margin: 21 goats and 60 hens: 2979.07 USD."), out)
	assert.Equal(t, 1, strings.Count(out, "For margin"))
	assert.Equal(t, 1, strings.Count(out, "to be had"))
	assert.Regexp(t, `kg of dry matter .*to be had`, out)
	assert.Regexp(t, `April +113 `, out)
	assert.Regexp(t, `half way between: 2987\.55 USD\n`, out)
	assert.Less(t, strings.Index(out, "For animal units: "), strings.Index(out, "For least hay: "))
	assert.NotContains(t, out, "With 8 cows asked for", "that wish is of the farm within")

	status, out, told = asked(t, `, "margin": "70 USD"`, ``, `"needs": [{"id": "milk", "least": 10, "gives": {"goats": 5}, "unit": "lb of milk a day"}],`, ``,
		`"goal": "animal units"`, `"goal": "animal units", "carry": "50 %"`)
	require.Zero(t, status, told)
	assert.Contains(t, out, "For margin the file gives no answer: stock[1].margin: is missing")
	assert.Contains(t, out, `For least hay the file gives no answer: goal: "least hay" is met by no animals at all`)
	assert.Contains(t, out, "can still be eaten in the next, here 50 %.")

	// 8 cows want 40 places of 30: no goal can be met, and there is no table
	status, out, _ = asked(t, `"birth": 4, "weaned": 11`, `"birth": 4, "weaned": 11, "least": 8`)
	assert.Zero(t, status)
	assert.Equal(t, 3, strings.Count(out, "Nothing fits: the room of barn"))
	assert.NotContains(t, out, "to be had")

	// two goats give the milk; of hay for them hungry ones want more than the middle
	status, out, _ = asked(t, `"goal": "animal units"`, `"goal": "least hay"`)
	assert.Zero(t, status)
	assert.Regexp(t, `hungry stock: +[\d,]+ lb of hay`, out)
}

func TestRefuses(t *testing.T) {
	for _, c := range []struct{ from, to, want string }{
		{`"use": "60 %"`, `"use": "160 %"`, "herd-that-fits: land[0].use: 160 % is no share that is eaten; above 0 % and up to 100 %\n"},
		{`"area": "9 ac"`, `"area": 9`, `herd-that-fits: land[0].area: 9 is a bare number; text with a unit, such as "9 ac" (an area above 0)` + "\n"},
		{`"goal": "animal units"`, `"goal": "most"`, `herd-that-fits: goal: "most" is no goal`},
	} {
		status, out, told := asked(t, c.from, c.to)
		assert.Equal(t, 2, status)
		assert.Empty(t, out)
		assert.Contains(t, told, c.want)
	}
	for want, args := range map[string][]string{
		`"farm.json" is no flag: -file takes the file`: {"farm.json"},
		"no such file": {"-file", filepath.Join(t.TempDir(), "none")},
		"not defined":  {"-fiel", "x"},
	} {
		var out, told bytes.Buffer
		assert.Equal(t, 2, run(context.Background(), args, &out, &told))
		assert.Contains(t, told.String(), want)
		assert.Empty(t, out.String())
	}
	var told bytes.Buffer
	assert.Zero(t, run(context.Background(), []string{"-help"}, new(bytes.Buffer), &told))
	assert.Contains(t, told.String(), "-file")
	stopped, stop := context.WithCancel(context.Background())
	stop()
	assert.Equal(t, 1, run(stopped, nil, new(bytes.Buffer), new(bytes.Buffer)))
}
