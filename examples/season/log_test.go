package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/soum/grazing/farm"
	"example.org/soum/units"
)

const logDay = "2001-05-15"

// carried gives the invented farm as it stands by the invented log.
func carried(t *testing.T, readings string) *farm.Farm {
	t.Helper()
	holding, _ := invented(t, units.US)
	log, err := os.ReadFile("data/moves.csv")
	require.NoError(t, err)
	today, err := units.ParseDate(logDay)
	require.NoError(t, err)
	next, err := holding.CarryOn(today, string(log), readings)
	require.NoError(t, err)
	return next
}

// TestPlansFromTheLog prints the land as the log leaves it, then the plan from there.
func TestPlansFromTheLog(t *testing.T) {
	holding := carried(t, "")
	plan, err := holding.Plan()
	require.NoError(t, err)
	printed := good(t, "-log", "data/moves.csv", "-today", logDay)
	text := oneSpace(printed)
	require.Contains(t, text, "Made of the heights of Friday 20 April 2001, carried on to Tuesday 15 May 2001.")
	require.Contains(t, printed, "\nThe land on Tuesday 15 May 2001\n")
	require.Contains(t, text, oneSpace(plan.Verdict.English))
	rows := 0
	for i := range holding.Land {
		l := &holding.Land[i]
		for _, s := range l.Stretches {
			require.Contains(t, text, fmt.Sprintf("%s %s %s", number(s.To, units.US), number(s.Height, units.US), oneSpace(whenGrazed(s.Grazed))))
			rows++
		}
		if _, note, found := strings.Cut(l.Note, farm.LogNote); found {
			require.Contains(t, text, oneSpace(l.ID+", as carried on to "+note))
		}
	}
	require.Greater(t, rows, 20)
	require.Contains(t, text, "The strips go on at 337 ft of meadow 2.") // 5 strips of 38 ft and 20 of 42, less the 693 ft of meadow 1
	require.Contains(t, text, "animals are on it up to 2001-05-21")
	require.Contains(t, findRow(t, printed, plan.Moves[0].Date, "meadow 2"), " 337 ")
	for line := range strings.Lines(printed) {
		require.Less(t, len([]rune(line)), 100, line)
	}
	require.Contains(t, good(t, "-log", "data/moves.csv", "-today", logDay, "-explain", logDay), "Meadow 2 on "+logDay)
}

// TestPrintsTheRecords adds the log up by hand. Meadow 1: the goats 16 days × 2.7 + 2.12
// AU, the cows 16 × 2.1 + 1.65 and the hens 16 × 0.03 + 0.024 are 81.07 animal-unit days;
// 3 strips of 0.096 ac, 13 of 0.106 and one of 0.083 are 1.749 ac: 46.4 an acre, of 26 lb
// 1,205 lb. The hens left its first strip on 25 April and its last on 11 May: with 28 days
// of rest ready on 23 May and 8 June. The orchard: 0.5 AU on 0.25 ac for 11 days are 22 an
// acre, 572 lb, left on 1 May, with 18 days ready on the 19th; of the orchard west they
// are on it, for the fifth day, 10 an acre.
func TestPrintsTheRecords(t *testing.T) {
	printed := good(t, "-log", "data/moves.csv", "-today", logDay)
	_, section, found := strings.Cut(printed, "\nWhat the log tells\n")
	require.True(t, found)
	section, _, _ = strings.Cut(section, "\nBalance by month")
	text := oneSpace(section)
	require.Contains(t, text, "orchard east 22 572 – 1 May 18 May 18 May")
	require.Contains(t, text, "meadow 1 46.4 1,205 – 25 Apr 22 May 7 Jun")
	require.Contains(t, text, "orchard west 10 260 – on it – –")
	require.Contains(t, text, "By rest alone orchard east is next, on Friday 18 May 2001. Not in the log: meadow 3, meadow 4, orchard north.")
	require.Contains(t, text, "AU-days/ac lb/ac days")
	require.Contains(t, good(t, "-log", "data/moves.csv", "-today", logDay, "-units", "metric"), "AU-days/ha")
	for _, other := range []string{good(t), good(t, "-today", logDay)} {
		require.NotContains(t, other, "What the log tells")
	}
	// strips without a place, before the farm's own day: the plan does without them
	log := filepath.Join(t.TempDir(), "log.csv")
	require.NoError(t, os.WriteFile(log, []byte("paddock,in,out,area (ac),animals (AU)\nmeadow 1,2001-03-01,2001-03-02,0.1,3\nmeadow 1,2001-03-02,2001-03-03,0.2,3\n"), 0o600))
	require.Contains(t, oneSpace(good(t, "-log", log, "-today", logDay)), `Of the land nothing is added up: log, line 2, column`)
}

// TestHayOfALogIsTold: what the store leaves out stands under the hay, and after
// the verdict; a plan of the farm's own day says nothing of it.
func TestHayOfALogIsTold(t *testing.T) {
	text := oneSpace(good(t, "-log", "data/moves.csv", "-today", "2001-06-15"))
	_, hay, _ := strings.Cut(text, "From the cuts of this plan: 0 lb.")
	require.Regexp(t, `^ Short: 0 lb\. As carried on to 2001-06-15: hay in store is carried over as it stood, .* the cut of 2001-06-04 gave [0-9],[0-9]{3} lb by the heights reckoned; none of that is in the store yet\.`, hay)
	require.Contains(t, text, "The hay counted here is what the farm's file has in store; what that leaves out stands under Hay. Room for each group")
	require.NotContains(t, good(t), "The hay counted here")
	require.NotContains(t, good(t), farm.LogNote)
}

// TestRecordsOfThePlan reads what -moves writes back: what the plan has them eat stands
// in the records of each land, over the ground of its moves.
func TestRecordsOfThePlan(t *testing.T) {
	holding, plan := invented(t, units.US)
	holding.Today = plan.To.Add(1)
	records, err := recordsOf(holding, good(t, "-moves", "-"))
	require.NoError(t, err)
	eaten := map[string]float64{}
	for i := range plan.Moves {
		for _, v := range plan.Moves[i].Visits {
			eaten[plan.Moves[i].Land] += v.Eaten.Kilograms()
		}
	}
	require.Len(t, records, len(eaten))
	for _, r := range records {
		require.InEpsilon(t, eaten[r.Paddock], float64(r.Harvested)*float64(r.Ground), 1e-9, r.Paddock)
		area, rest := 1.75, 28.0 // 110 ft × 693 ft
		if strings.HasPrefix(r.Paddock, "orchard") {
			area, rest = 0.25, 18
		}
		require.InEpsilon(t, area*4046.8564224, float64(r.Ground), 0.005, r.Paddock) // all of it was grazed
		if r.Shortest == 0 {
			continue // grazed once
		}
		require.GreaterOrEqual(t, float64(r.Shortest), rest, r.Paddock)
		require.Less(t, float64(r.Shortest), 150.0, r.Paddock)
	}
}

// TestPlansFromReadings lays heights read over the log's, and saves the farm, which
// plans the same.
func TestPlansFromReadings(t *testing.T) {
	dir := t.TempDir()
	heights, saved := filepath.Join(dir, "heights.csv"), filepath.Join(dir, "today.json")
	const readings = "paddock,height (in)\nmeadow 3,11\n"
	require.NoError(t, os.WriteFile(heights, []byte(readings), 0o600))
	out := good(t, "-log", "data/moves.csv", "-heights", heights, "-today", logDay, "-save", saved)
	require.Contains(t, oneSpace(out), "meadow 3, as carried on to 2001-05-15: heights read that day are taken as they were read.")
	data, err := os.ReadFile(saved)
	require.NoError(t, err)
	holding, err := farm.Read(data)
	require.NoError(t, err)
	require.InDelta(t, 11*0.0254, holding.Land[2].Height.Metres(), 1e-9)
	_, fromHere, _ := strings.Cut(out, "\nBalance by month")
	_, again, _ := strings.Cut(good(t, "-farm", saved), "\nBalance by month")
	require.Equal(t, fromHere, again)
}

// TestMovesAreALog reads back what -moves writes: the moves still to come are those of
// the plan before, to the season's end, and so are those who follow.
func TestMovesAreALog(t *testing.T) {
	written := good(t, "-moves", "-")
	stays, err := farm.ReadMoves(written)
	require.NoError(t, err)
	holding, plan := invented(t, units.US)
	visits := 0
	for i := range plan.Moves {
		visits += len(plan.Moves[i].Visits)
	}
	require.Len(t, stays, visits)
	require.Equal(t, "goats", stays[0].Group)

	file := filepath.Join(t.TempDir(), "moves.csv")
	require.NoError(t, os.WriteFile(file, []byte(written), 0o600))
	good(t, "-log", file, "-today", "2001-04-30")
	today, err := units.ParseDate("2001-04-30")
	require.NoError(t, err)
	next, err := holding.CarryOn(today, written, "")
	require.NoError(t, err)
	again, err := next.Plan()
	require.NoError(t, err)
	at := 0
	for at < len(plan.Moves) && plan.Moves[at].Date < today {
		at++
	}
	require.Len(t, again.Moves, len(plan.Moves)-at)
	for i, got := range again.Moves {
		want := plan.Moves[at+i]
		require.Equal(t, fmt.Sprint(want.Date, want.Land, want.Stay, want.Visits[0].Group), fmt.Sprint(got.Date, got.Land, got.Stay, got.Visits[0].Group))
		require.InDelta(t, float64(want.To), float64(got.To), 1e-3)
	}
}

// TestBadLogsAreRefused: one line each, with the place and the mend.
func TestBadLogsAreRefused(t *testing.T) {
	dir := t.TempDir()
	bad := filepath.Join(dir, "bad.csv")
	require.NoError(t, os.WriteFile(bad, []byte("paddock,in,out,area (ac),animals (AU)\nmeadow 9,2001-04-21,2001-04-22,0.1,3\n"), 0o600))
	for _, row := range []struct {
		says string
		args []string
	}{
		{`log, line 2, column 1 (paddock): "meadow 9" is the id of no land; perhaps "meadow 1"`, []string{"-log", bad, "-today", logDay}},
		{"-log: open", []string{"-log", filepath.Join(dir, "none.csv"), "-today", logDay}},
		{"-heights: open", []string{"-heights", filepath.Join(dir, "none.csv"), "-today", logDay}},
		{"-today: \"May\"", []string{"-log", bad, "-today", "May"}},
		{"2001-04-01 is before the day of the farm's heights", []string{"-log", bad, "-today", "2001-04-01"}},
		{"both to come from standard input", []string{"-farm", "-", "-log", "-", "-today", logDay}},
		{"-log does not go with -begin", []string{"-begin", filepath.Join(dir, "f.json"), "-log", bad}},
		{"-save does not go with -explain", []string{"-explain", logDay, "-save", filepath.Join(dir, "f.json")}},
		{"written over", []string{"-log", "data/moves.csv", "-today", logDay, "-save", "data/moves.csv"}},
		{"-log is empty", []string{"-log", ""}},
	} {
		require.Contains(t, refused(t, call(t, "", row.args...)), row.says)
	}
}
