package main

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"github.com/emersion/go-ical"
	"github.com/stretchr/testify/require"

	"example.org/soum/examples/internal/wichita"
	"example.org/soum/grazing/farm"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

var binary string

// TestMain builds the program once, as a user's machine would.
func TestMain(m *testing.M) {
	dir, err := os.MkdirTemp("", "season")
	if err == nil {
		binary = filepath.Join(dir, "season")
		var told []byte
		if told, err = exec.Command("go", "build", "-o", binary, ".").CombinedOutput(); err != nil {
			err = fmt.Errorf("%w: %s", err, told)
		}
	}
	status := 1
	if err != nil {
		fmt.Fprintln(os.Stderr, "the program was not built:", err)
	} else {
		status = m.Run()
	}
	os.RemoveAll(dir)
	os.Exit(status)
}

// ran is what a run of the program came to.
type ran struct {
	status      int
	out, errors string
}

// call runs the built program on some input.
func call(t *testing.T, input string, args ...string) ran {
	t.Helper()
	var out, told bytes.Buffer
	c := exec.Command(binary, args...)
	c.Stdin, c.Stdout, c.Stderr = strings.NewReader(input), &out, &told
	err := c.Run()
	var exit *exec.ExitError
	if err != nil && !errors.As(err, &exit) {
		t.Fatal(err)
	}
	return ran{c.ProcessState.ExitCode(), out.String(), told.String()}
}

// good runs the program and holds it to status 0 and silence beside its output.
func good(t *testing.T, args ...string) string {
	t.Helper()
	r := call(t, "", args...)
	require.Zero(t, r.status, r.errors)
	require.Empty(t, r.errors)
	return r.out
}

// refused holds a run to one line, status 2 and nothing on standard output, and
// gives the line.
func refused(t *testing.T, r ran) string {
	t.Helper()
	require.Equal(t, badInput, r.status, r.errors)
	require.Empty(t, r.out)
	require.Equal(t, 1, strings.Count(r.errors, "\n"), r.errors)
	require.True(t, strings.HasPrefix(r.errors, "season: ") && strings.HasSuffix(r.errors, "\n"), r.errors)
	return strings.TrimSuffix(strings.TrimPrefix(r.errors, "season: "), "\n")
}

func invented(t *testing.T, system units.System) (*farm.Farm, *farm.Plan) {
	t.Helper()
	holding, err := farm.Read(inventedFarm)
	require.NoError(t, err)
	holding.Units = system
	plan, err := holding.Plan()
	require.NoError(t, err)
	return holding, plan
}

// oneSpace puts single blanks for whatever stands between words, so that wrapped
// text can be looked for.
func oneSpace(text string) string { return strings.Join(strings.Fields(text), " ") }

func TestPrintsThePlan(t *testing.T) {
	for _, system := range []units.System{units.US, units.Metric} {
		holding, plan := invented(t, system)
		printed := good(t, "-units", system.String())
		text := oneSpace(printed)
		at := 0
		for _, head := range []string{"Grazing plan, Friday 20 April 2001 to Wednesday 31 October 2001", "Room for each group", "Balance by month", "Moves from Friday 20 April 2001 to Thursday 3 May 2001",
			"Passes over the land", "If it stays dry", "Hay", "Water on the thirstiest day", "Manure", "Fence", "Notes", "Cautions"} {
			next := strings.Index(printed[at:], "\n"+head)
			if at == 0 {
				next = strings.Index(printed, head)
			}
			require.GreaterOrEqual(t, next, 0, "the section %q is missing or out of its place", head)
			at += next + 1
		}
		require.Contains(t, text, oneSpace(plan.Verdict.English))
		require.Contains(t, text, oneSpace(plan.Verdict.Growth))
		room, err := holding.CarriesEach()
		require.NoError(t, err)
		require.Len(t, room, 4)
		for _, c := range room {
			head := holding.Groups[slices.IndexFunc(holding.Groups, func(g farm.Group) bool { return g.ID == c.Group })].Head
			require.Regexp(t, fmt.Sprintf(`\n%s +%v +(≥ )?%d +(≥ )?%d +(≥ )?%d +%s`, c.Group, head, c.Low, c.Middle, c.High, c.Limits[1]), printed)
		}
		require.NotEmpty(t, plan.Cautions)
		last := strings.LastIndex(text, "Cautions:")
		for _, c := range plan.Cautions {
			for _, part := range []string{c.Why, c.Do, c.Source, c.Defer} {
				require.Contains(t, text[last:], oneSpace(part))
			}
		}
		for _, n := range plan.Notes {
			require.Contains(t, text, oneSpace(n.English))
		}
		for _, part := range []string{plan.Hay.Carried.In(system), plan.Hay.Made.In(system), plan.Fence.Sides.In(system), plan.Fence.Cross.In(system),
			plan.Passes.Rain.In(system), plan.Passes.ThisYear.In(system), units.Number(plan.Passes.Planned), "common practice without an agreed source"} {
			require.Contains(t, text, part)
		}
	}
}

// TestPrintsTheMonths works the table's figures out of the plan by another way:
// kilograms by the avoirdupois pound of 0.45359237 kg.
func TestPrintsTheMonths(t *testing.T) {
	_, plan := invented(t, units.US)
	printed := good(t)
	for _, m := range plan.Months {
		row := strings.Fields(lineWith(t, printed, fmt.Sprintf("%s %d", time.Month(m.Month), m.Year)))
		row = row[len(row)-7:]
		for i, mass := range []units.DryMatter{m.Grown, m.Wanted, m.Eaten, m.Trampled, m.Cut, m.Fed, m.Standing} {
			got, err := strconv.ParseFloat(strings.ReplaceAll(row[i], ",", ""), 64)
			require.NoError(t, err)
			require.InDelta(t, float64(mass)/0.45359237, got, 0.5+1e-9)
		}
	}
}

// lineWith gives the first line that begins with a text.
func lineWith(t *testing.T, text, begin string) string {
	t.Helper()
	for line := range strings.Lines(text) {
		if strings.HasPrefix(line, begin) {
			return line
		}
	}
	t.Fatalf("no line begins with %q", begin)
	return ""
}

func TestListsTheMovesOfTheDays(t *testing.T) {
	_, plan := invented(t, units.US)
	for _, days := range []int{1, 14, 40} {
		printed := good(t, "-days", strconv.Itoa(days))
		_, printed, _ = strings.Cut(printed, "\nMoves from ")
		printed, _, _ = strings.Cut(printed, "\nPasses over")
		wanted := 0
		for _, m := range plan.Moves {
			if m.Date.Sub(plan.Today) >= units.Days(days) {
				continue
			}
			wanted++
			row := findRow(t, printed, m.Date, m.Land)
			require.Contains(t, row, " "+number(m.Height, units.US)+" ")
			require.Contains(t, row, " "+number(m.Leave, units.US)+" ")
			if m.Length > 0 {
				require.Contains(t, row, " "+number(m.From, units.US)+" ")
				require.Contains(t, row, " "+number(m.To, units.US)+" ")
				require.Contains(t, row, " "+number(m.Length, units.US)+" ")
			}
			for _, v := range m.Visits {
				require.Contains(t, row, fmt.Sprintf("%d %s", v.To.Day(), v.To.Month().String()[:3]))
			}
			require.Equal(t, m.ReadyAgain == nil, strings.Contains(row, "after 31 Oct"))
		}
		rows := 0
		for line := range strings.Lines(printed) {
			if strings.Contains(line, "  meadow ") || strings.Contains(line, "  orchard ") {
				rows++
			}
		}
		require.Equal(t, wanted, rows)
	}
}

// TestSeasonBeginsLater moves a season's first day behind today: the list begins
// with the season, or with what is opened ahead of it.
func TestSeasonBeginsLater(t *testing.T) {
	data, err := os.ReadFile("testdata/small.json")
	require.NoError(t, err)
	later := strings.Replace(string(data), `"from": "2001-04-20"`, `"from": "2001-06-01"`, 1)
	holding, err := farm.Read([]byte(later))
	require.NoError(t, err)
	plan, err := holding.Plan()
	require.NoError(t, err)
	first := min(plan.From, plan.Moves[0].Date)
	r := call(t, later, "-farm", "-", "-days", "5")
	require.Zero(t, r.status, r.errors)
	require.Contains(t, r.out, "\nMoves from "+long(first)+" to "+long(first+4)+"\n")
	for _, m := range plan.Moves {
		if m.Date < first+5 {
			findRow(t, r.out, m.Date, m.Land)
		}
	}
}

func TestLabelKeepsBothEnds(t *testing.T) {
	require.Equal(t, "meadow 1", label("meadow 1"))
	require.Equal(t, "the long …number 2", label("the long orchard number 2"))
}

func findRow(t *testing.T, printed string, date units.Date, land string) string {
	t.Helper()
	begin := fmt.Sprintf("%s %2d %s  %s ", date.Weekday().String()[:3], date.Day(), date.Month().String()[:3], land)
	return " " + lineWith(t, printed, begin)
}

// TestTextIsNeat looks at the shape of all that is printed.
func TestTextIsNeat(t *testing.T) {
	for _, args := range [][]string{nil, {"-units", "metric"}, {"-farm", "testdata/small.json"}, {"-days", "1100"}} {
		printed := good(t, args...)
		require.True(t, strings.HasSuffix(printed, "\n") && !strings.HasSuffix(printed, "\n\n"))
		for line := range strings.Lines(printed) {
			line = strings.TrimSuffix(line, "\n")
			require.Equal(t, strings.TrimRight(line, " \t"), line, "blanks at the end of a line")
			require.NotContains(t, line, "\t")
			require.NotContains(t, line, "NaN")
			require.NotContains(t, line, "%!")
			require.Less(t, utf8.RuneCountInString(line), 110, line) // a strip of two days has wide dates
		}
		require.NotContains(t, printed, "\n\n\n")
	}
}

// TestExplainsADay finds every step and every source of a day with moves, in
// both systems, the sums in order and the strip that the plan opens at their end.
func TestExplainsADay(t *testing.T) {
	for _, system := range []units.System{units.US, units.Metric} {
		holding, plan := invented(t, system)
		for _, m := range []farm.Move{plan.Moves[0], plan.Moves[len(plan.Moves)/2]} {
			printed := good(t, "-units", system.String(), "-explain", m.Date.String())
			text := oneSpace(printed)
			require.True(t, strings.HasPrefix(text, "The work behind "+long(m.Date)+"."))
			all, err := holding.Explain(m.Date)
			require.NoError(t, err)
			at := 0
			for _, e := range all {
				for i, step := range e.Steps {
					require.Contains(t, text, oneSpace(step.Text))
					require.Contains(t, text, oneSpace("Source: "+step.Source))
					if strings.HasPrefix(e.About, growthOn) {
						continue // lands that grow alike stand together
					}
					next := strings.Index(text[at:], oneSpace(step.Text))
					require.GreaterOrEqual(t, next, 0, "step %d of %q is out of its place", i, e.About)
					at += next
				}
				require.Contains(t, text, oneSpace(e.Note))
			}
			for i := range holding.Land {
				require.Contains(t, text, holding.Land[i].ID)
			}
			require.Contains(t, printed, "\n"+capital(m.Land)+" on "+m.Date.String()+"\n---")
			for line := range strings.Lines(printed) {
				require.LessOrEqual(t, utf8.RuneCountInString(line), 81, line)
			}
		}
	}
}

// badFarms are the files of testdata/bad: the place in the document that the
// line must name, and what it must say of it.
var badFarms = map[string]struct{ path, says string }{
	"bare-number":            {"land[1].height", `15 is a bare number; text with a unit, such as "15 in"`},
	"cut-short":              {"feed.hay", "not JSON"},
	"duplicate-key":          {"groups[0].head", "twice"},
	"empty":                  {"document", "empty; a JSON object"},
	"group-twice":            {"rotations[0].groups[1].group", `"goats" stands in rotations[0].groups[0] already`},
	"half-a-day-of-rest":     {"rotations[0].shortest_rest", "28.5 days"},
	"height-above-ceiling":   {"land[1].height", "150 cm"},
	"impossible-date":        {"today", `"2001-02-30"`},
	"lane-without-length":    {"land[0].length", "a length above 0"},
	"missing-field":          {"land[0].pasture", "missing"},
	"missing-section":        {"rotations", "missing"},
	"misspelt-field":         {"rotations[0].shortest_rset", `perhaps "shortest_rest" is meant`},
	"negative-head":          {"groups[1].head", "-20"},
	"no-groups":              {"groups", "at least one group"},
	"not-json":               {"document", "not JSON at line 1, column 1"},
	"null":                   {"groups[0].weight", "null is not taken"},
	"one-id-twice":           {"land[1].id", `"lane" stands twice`},
	"paddock-of-zero-size":   {"land[1].area", "0 ha"},
	"percentage-above-100":   {"feed.waste", "130 %"},
	"residual-above-turn-in": {"rotations[0].leave", "18 cm (7.09 in) is not below the turn-in height"},
	"season-backwards":       {"season.to", "2001-03-31 is before season.from; a date from 2001-04-20 on"},
	"stage-the-class-lacks":  {"groups[0].stage", "growing"},
	"stretches-end-early":    {"land[0].stretches[1].to", "150 m"},
	"text-for-a-number":      {"groups[0].head", `"four" is text; a number of animals, 0 or more`},
	"thousands-comma":        {"feed.hay", "without commas"},
	"ton":                    {"feed.hay", `write "t" or "short ton"`},
	"too-deep":               {"x-deep", "more than 64"},
	"turn-in-above-ceiling":  {"rotations[0].turn_in", "80 cm (31.5 in) is not below the ceiling"},
	"unknown-class":          {"groups[1].class", "laying-hen"},
	"unknown-field":          {"soil", "unknown key; the keys here are version, units"},
	"unknown-land":           {"rotations[0].land[1]", `"barn"`},
	"wrong-unit":             {"land[0].width", `no unit "kg"`},
}

func TestBadFarms(t *testing.T) {
	good(t, "-farm", "testdata/small.json") // what they were made of is right
	files, err := filepath.Glob("testdata/bad/*.json")
	require.NoError(t, err)
	require.Len(t, files, len(badFarms))
	for _, file := range files {
		name := strings.TrimSuffix(filepath.Base(file), ".json")
		t.Run(name, func(t *testing.T) {
			wanted, known := badFarms[name]
			require.True(t, known)
			dir := t.TempDir()
			line := refused(t, call(t, "", "-farm", file, "-json", filepath.Join(dir, "p.json"), "-moves", filepath.Join(dir, "m.csv"),
				"-calendar", filepath.Join(dir, "c.ics"), "-pictures", filepath.Join(dir, "pictures")))
			require.True(t, strings.HasPrefix(line, wanted.path), line)
			require.Contains(t, line, wanted.says)
			requireEmpty(t, dir)
		})
	}
}

func requireEmpty(t *testing.T, dir string) {
	t.Helper()
	left, err := os.ReadDir(dir)
	require.NoError(t, err)
	require.Empty(t, left)
}

func TestBadFlags(t *testing.T) {
	dir := t.TempDir()
	for _, row := range []struct {
		says string
		args []string
	}{
		{"-fram", []string{"-fram", "x"}},
		{"is no flag", []string{"farm.json"}},
		{"-units", []string{"-units", "imperial"}},
		{"-days", []string{"-days", "0"}},
		{"-days", []string{"-days", "many"}},
		{"-json is empty", []string{"-json", ""}},
		{"-farm", []string{"-farm", filepath.Join(dir, "none.json")}},
		{"-land goes with -begin", []string{"-land", "8 ac"}},
		{"-explain", []string{"-explain", "2001-02-30"}},
		{"outside the plan", []string{"-explain", "2001-11-01"}},
		{"-json does not go with -explain", []string{"-explain", "2001-05-14", "-json", filepath.Join(dir, "p.json")}},
		{"-explain does not go with -begin", []string{"-begin", filepath.Join(dir, "f.json"), "-explain", "2001-05-14"}},
		{"-json does not go with -begin", []string{"-begin", filepath.Join(dir, "f.json"), "-json", "-"}},
		{"written over", []string{"-json", "-", "-moves", "-"}},
		{"written over", []string{"-farm", "testdata/small.json", "-json", "testdata/small.json"}},
	} {
		require.Contains(t, refused(t, call(t, "", row.args...)), row.says)
	}
	requireEmpty(t, dir)
	help := call(t, "", "-help")
	require.Zero(t, help.status)
	for _, name := range []string{"-farm", "-units", "-days", "-json", "-moves", "-calendar", "-pictures", "-explain", "-begin"} {
		require.Contains(t, help.out, name)
	}
}

func TestUnwritableFile(t *testing.T) {
	dir := t.TempDir()
	r := call(t, "", "-moves", filepath.Join(dir, "m.csv"), "-json", filepath.Join(dir, "no", "such", "p.json"))
	require.Equal(t, failed, r.status)
	require.Empty(t, r.out)
	require.Equal(t, 1, strings.Count(r.errors, "\n"))
	requireEmpty(t, dir)
}

func TestFileIsReplacedWhole(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "m.csv")
	require.NoError(t, os.WriteFile(path, []byte("older"), 0o600))
	good(t, "-moves", path)
	written, err := os.ReadFile(path)
	require.NoError(t, err)
	require.True(t, strings.HasPrefix(string(written), "date,"))
	left, err := os.ReadDir(dir)
	require.NoError(t, err)
	require.Len(t, left, 1)
}

func TestFarmFromStandardInput(t *testing.T) {
	data, err := os.ReadFile("testdata/small.json")
	require.NoError(t, err)
	r := call(t, string(data), "-farm", "-")
	require.Zero(t, r.status, r.errors)
	require.Equal(t, good(t, "-farm", "testdata/small.json"), r.out)
}

func TestJSON(t *testing.T) {
	_, plan := invented(t, units.US)
	out := good(t, "-json", "-")
	var read struct {
		From   string
		Moves  []map[string]any
		Months []map[string]any
		Days   []map[string]any
	}
	require.NoError(t, json.Unmarshal([]byte(out), &read))
	require.Equal(t, "2001-04-20", read.From)
	require.Len(t, read.Moves, len(plan.Moves))
	require.Len(t, read.Months, 7)
	require.Len(t, read.Days, 195) // 11 of April, 31, 30, 31, 31, 30, 31
	for _, key := range []string{"from_m", "area_m2", "height_m", "stay_days", "visits"} {
		require.Contains(t, read.Moves[0], key)
	}
	require.NotContains(t, out, "NaN")
	require.NotContains(t, out, "Inf")
}

func TestMovesCSV(t *testing.T) {
	_, plan := invented(t, units.US)
	rows, err := csv.NewReader(strings.NewReader(good(t, "-moves", "-"))).ReadAll()
	require.NoError(t, err)
	require.Equal(t, movesHeader, rows[0])
	visits, eaten := 0, 0.0
	for _, m := range plan.Moves {
		visits += len(m.Visits)
	}
	require.Len(t, rows, 1+visits)
	for _, row := range rows[1:] {
		kg, err := strconv.ParseFloat(row[len(row)-1], 64)
		require.NoError(t, err)
		require.False(t, math.IsNaN(kg))
		eaten += kg
	}
	inMonths := 0.0
	for _, m := range plan.Months {
		inMonths += float64(m.Eaten)
	}
	require.InDelta(t, inMonths, eaten, 1e-6)
}

// TestCalendar reads the calendar with another library than the one that wrote
// it.
func TestCalendar(t *testing.T) {
	holding, plan := invented(t, units.US)
	out := good(t, "-calendar", "-")
	for line := range strings.Lines(out) {
		require.True(t, strings.HasSuffix(line, "\r\n"))
		require.LessOrEqual(t, len(line)-2, 75)
		require.True(t, utf8.ValidString(line))
	}
	decoder := ical.NewDecoder(strings.NewReader(out))
	read, err := decoder.Decode()
	require.NoError(t, err)
	days := map[string]bool{} // day and rotation
	for _, m := range plan.Moves {
		days[fmt.Sprint(m.Date, m.Rotation)] = true
	}
	begun, uids := map[string]int{}, map[string]bool{}
	for _, event := range read.Events() {
		start := event.Props.Get(ical.PropDateTimeStart)
		require.Equal(t, ical.ValueDate, start.ValueType())
		first, err := start.DateTime(time.UTC)
		require.NoError(t, err)
		end, err := event.DateTimeEnd(time.UTC)
		require.NoError(t, err)
		require.Equal(t, 24*time.Hour, end.Sub(first))
		stamp, err := event.Props.DateTime(ical.PropDateTimeStamp, time.UTC)
		require.NoError(t, err)
		require.Equal(t, holding.Today.String()+" 00:00", stamp.Format("2006-01-02 15:04"))
		uid, err := event.Props.Text(ical.PropUID)
		require.NoError(t, err)
		require.False(t, uids[uid], "an UID stands twice")
		uids[uid] = true
		begun[first.Format(time.DateOnly)]++
	}
	require.Len(t, uids, len(days))
	for _, m := range plan.Moves {
		require.NotZero(t, begun[m.Date.String()])
	}
	require.Equal(t, out, good(t, "-calendar", "-"), "the same farm gives the same file")
	_, err = decoder.Decode()
	require.ErrorIs(t, err, io.EOF)
}

func TestCalendarSaysWhatToDo(t *testing.T) {
	_, plan := invented(t, units.US)
	read, err := ical.NewDecoder(strings.NewReader(good(t, "-calendar", "-"))).Decode()
	require.NoError(t, err)
	summaries := ""
	for _, event := range read.Events() {
		summary, err := event.Props.Text(ical.PropSummary)
		require.NoError(t, err)
		summaries += summary + "\n"
	}
	for _, m := range plan.Moves {
		if m.Length > 0 {
			require.Contains(t, summaries, fmt.Sprintf("%s: open %s to %s", m.Land, number(m.From, units.US), m.To.In(units.US)))
		} else {
			require.Contains(t, summaries, m.Land+": open for ")
		}
	}
}

func TestPictures(t *testing.T) {
	holding, _ := invented(t, units.US)
	dir := filepath.Join(t.TempDir(), "new", "pictures")
	good(t, "-pictures", dir)
	texts := map[string]map[string]bool{}
	for _, name := range []string{"standing-grass.svg", "where-they-stand.svg"} {
		data, err := os.ReadFile(filepath.Join(dir, name))
		require.NoError(t, err)
		require.NotContains(t, string(data), "NaN")
		texts[name] = textsOf(t, data)
		for _, land := range holding.Land {
			require.Contains(t, texts[name], land.ID)
		}
	}
	for _, group := range holding.Groups {
		require.Contains(t, texts["where-they-stand.svg"], group.ID)
	}
	for _, line := range []string{"grown", "wanted by all", "fed instead"} {
		require.Contains(t, texts["standing-grass.svg"], line)
	}
	left, err := os.ReadDir(dir)
	require.NoError(t, err)
	require.Len(t, left, 2)
}

// textsOf reads an SVG whole as XML and gives its texts.
func textsOf(t *testing.T, data []byte) map[string]bool {
	t.Helper()
	texts, inText := map[string]bool{}, false
	decoder := xml.NewDecoder(bytes.NewReader(data))
	for {
		token, err := decoder.Token()
		if errors.Is(err, io.EOF) {
			return texts
		}
		require.NoError(t, err)
		switch token := token.(type) {
		case xml.StartElement:
			inText = token.Name.Local == "text"
		case xml.EndElement:
			inText = false
		case xml.CharData:
			if inText {
				texts[strings.TrimSpace(string(token))] = true
			}
		}
	}
}

// TestRainIsTheRecord holds the farm's rain against the record it names.
func TestRainIsTheRecord(t *testing.T) {
	record, err := rainfall.ReadMonths(wichita.Record())
	require.NoError(t, err)
	holding, _ := invented(t, units.US)
	found := 0
	for _, month := range record {
		if depth, known := holding.Rain.Months[fmt.Sprintf("%04d-%02d", month.Year, month.Month)]; known {
			found++
			require.InDelta(t, float64(month.Rain), float64(depth), 1e-12)
		}
	}
	require.Len(t, record, 382)
	require.Equal(t, 12, found)
	require.Len(t, holding.Rain.Months, 12)
	normals, err := rainfall.MonthNormals(record)
	require.NoError(t, err)
	for i, normal := range normals {
		require.InDelta(t, float64(normal), float64(holding.Rain.Normal[i]), 0.05e-3+1e-12)
	}
}

// TestTime tells the time of a run; a machine under load is no failure.
func TestTime(t *testing.T) {
	best := time.Hour
	for range 5 {
		begun := time.Now()
		good(t)
		best = min(best, time.Since(begun))
	}
	t.Logf("a run of the built program takes %v", best)
	require.Less(t, best, 5*time.Second)
}

var beginFlags = []string{"-land", "8 ac", "-pasture", "orchardgrass-legume", "-rain", "32 in", "-stock", "12 dairy-goat, 2 suckler-cow", "-height", "9 in", "-today", "2026-05-01"}

func TestBegin(t *testing.T) {
	path := filepath.Join(t.TempDir(), "my farm.json")
	out := good(t, append([]string{"-begin", path}, beginFlags...)...)
	require.Contains(t, out, "-farm '"+path+"'")
	data, err := os.ReadFile(path)
	require.NoError(t, err)
	holding, err := farm.Read(data)
	require.NoError(t, err)
	require.Equal(t, units.US, holding.Units)
	require.Equal(t, "2026-05-01", holding.Today.String())
	require.Len(t, holding.Groups, 2)
	require.InDelta(t, 32*0.0254, float64(holding.Rain.Year), 1e-9)
	area := 0.0
	for i := range holding.Land {
		area += float64(holding.Land[i].Area) + float64(holding.Land[i].Width)*float64(holding.Land[i].Length)
		require.InDelta(t, 9*0.0254, float64(holding.Land[i].Height), 1e-9)
	}
	require.InDelta(t, 8*4046.8564224, area, 1e-3)
	printed := good(t, "-farm", path)
	require.Contains(t, printed, "Grazing plan, Friday 1 May 2026")
	require.Contains(t, printed, "\nMoves from Friday 1 May 2026")

	line := refused(t, call(t, "", append([]string{"-begin", path}, beginFlags...)...))
	require.Contains(t, line, "is there already")
	again, err := os.ReadFile(path)
	require.NoError(t, err)
	require.Equal(t, data, again)
}

func TestBeginAsks(t *testing.T) {
	path := filepath.Join(t.TempDir(), "farm.json")
	r := call(t, "some\n3 ha\nmixed-pasture\n800 mm\n5 ewe\n\n", "-begin", path)
	require.Zero(t, r.status, r.errors)
	require.Contains(t, r.errors, "How much grazing land?")
	require.Contains(t, oneSpace(r.errors), "empty if you have not measured")
	require.Contains(t, r.errors, "no number in front") // then it asks again
	require.NotContains(t, r.out, "?")
	good(t, "-farm", path)
	data, err := os.ReadFile(path)
	require.NoError(t, err)
	holding, err := farm.Read(data)
	require.NoError(t, err)
	require.Equal(t, units.Metric, holding.Units)
	require.Equal(t, 5.0, holding.Groups[0].Head)
}

func TestBeginRefuses(t *testing.T) {
	dir := t.TempDir()
	for _, row := range []struct{ flag, answer, says string }{
		{"-land", "8", "unit is missing"},
		{"-land", "0 ac", "land"},
		{"-land", "8 lb", "area takes"},
		{"-pasture", "moss", "moss"},
		{"-rain", "-3 in", "rain"},
		{"-rain", "wet", "no number"},
		{"-stock", "goats", "not a number and a class"},
		{"-stock", "12 unicorn", "unicorn"},
		{"-stock", "0 dairy-goat", "dairy-goat"},
		{"-stock", "NaN dairy-goat", "dairy-goat"},
		{"-height", "high", "-height"},
		{"-today", "2026-02-30", "2026-02-30"},
	} {
		args := append([]string{"-begin", filepath.Join(dir, "farm.json")}, beginFlags...)
		line := refused(t, call(t, "", append(args, row.flag, row.answer)...))
		require.Contains(t, line, row.says, row)
	}
	r := call(t, "", "-begin", filepath.Join(dir, "farm.json"), "-land", "8 ac")
	require.Equal(t, badInput, r.status)
	require.Empty(t, r.out)
	require.Contains(t, r.errors, "-pasture is missing")
	requireEmpty(t, dir)
	_, err := os.Stat(filepath.Join(dir, "farm.json"))
	require.ErrorIs(t, err, fs.ErrNotExist)
}

// TestSoilAndDryness prints the two sections of the rain where there is something
// to say, and neither where not. The account: 80 mm in a full soil, 100 wanted each
// month. April: 10 of rain and the 80 are 90. May: 150 of rain, 100 used, 50 left.
func TestSoilAndDryness(t *testing.T) {
	data, err := os.ReadFile("testdata/small.json")
	require.NoError(t, err)
	printed := call(t, string(data), "-farm", "-").out
	require.NotContains(t, printed, "\nWater in the soil")
	require.NotContains(t, printed, "\nIf it stays dry")
	twelve := func(depth string) string {
		return "[" + strings.TrimSuffix(strings.Repeat(`"`+depth+`", `, 12), ", ") + "]"
	}
	rain := `"rain": {"normal": ` + twelve("40 mm") + `, "months": {"2001-04": "10 mm", "2001-05": "150 mm"}, "balance": {"reference": ` + twelve("100 mm") + `, "coefficient": 1, "store": "80 mm"}}, "feed"`
	r := call(t, strings.Replace(string(data), `"feed"`, rain, 1), "-farm", "-")
	require.Zero(t, r.status, r.errors)
	text := oneSpace(r.out)
	require.Contains(t, text, "Water in the soil, in mm")
	require.Contains(t, text, "April 2001 10 0 100 90 0 0 90 % firm")
	require.Contains(t, text, "May 2001 150 0 100 100 0 50 100 % firm")
	require.Contains(t, text, "June 2001 (normal) 40 0 100 90 0 0 90 % firm")
	require.Contains(t, text, "- Tuesday 1 May 2001: less than 30 mm since 1 Apr (75 % of normal; on all land)")
	require.Contains(t, text, "[NDMC-DATES, NDSU-SPRING]. Less has fallen: act.")
	require.Contains(t, text, "[SDSU-MAY-RULE].") // April to 20 May: 10 to 160 mm
}
