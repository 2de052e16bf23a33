package farm_test

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/grazing/farm"
	"example.org/soum/internal/document"
	"example.org/soum/units"
)

const smallLog = `# the east side
paddock, in, out, area (ac), animals (AU), remark
A,2026-05-01,2026-05-04,2,10,"wet, cold"
B,2026-05-04,2026-05-06,2,10,
A,2026-05-25,2026-05-27,2,12,
C,2026-05-27,2026-06-02,3 ac,12,still there
`

func dateOf(t require.TestingT, text string) units.Date {
	d, err := units.ParseDate(text)
	require.NoError(t, err)
	return d
}

func TestReadMoves(t *testing.T) {
	moves, err := farm.ReadMoves(smallLog)
	require.NoError(t, err)
	require.Len(t, moves, 4)
	assert.Equal(t, farm.LoggedMove{Paddock: "A", In: dateOf(t, "2026-05-01"), Out: dateOf(t, "2026-05-04"), Area: 2 * units.Acre, Animals: 10}, moves[0])
	assert.Equal(t, 3*units.Acre, moves[3].Area)

	// other units, another order of columns and of lines, a mark at the beginning
	moves, err = farm.ReadMoves("\ufeffAnimals (AU),Out,In,Area (ha),Paddock\n5,2026-05-09,2026-05-08,0.5,B\n5,2026-05-08,2026-05-07,0.5,A\n")
	require.NoError(t, err)
	assert.Equal(t, "A", moves[0].Paddock)
	assert.Equal(t, 0.5*units.Hectare, moves[0].Area)
}

// TestReadPlaces reads the columns that a log may have: the group, the place along a
// lane and the height left, with the unit in the header or the cell; empty is not told.
func TestReadPlaces(t *testing.T) {
	moves, err := farm.ReadMoves("group,paddock,in,out,area (ac),animals (AU),from (ft),to (ft),left (in)\n" +
		"goats,A,2026-05-01,2026-05-02,0.1,1,0,30,6\ncows,A,2026-05-01,2026-05-02,0.1,1,0,30,10 cm\n,A,2026-05-02,2026-05-03,0.1,1,30,20 m,\n,B,2026-05-03,2026-05-04,0.1,1\n")
	require.NoError(t, err)
	require.Len(t, moves, 4)
	assert.Equal(t, "goats cows", moves[0].Group+" "+moves[1].Group)
	nearly(t, 30*units.Foot, moves[0].To)
	nearly(t, 6*units.HeightInch, moves[0].Left)
	nearly(t, 10*units.HeightCentimetre, moves[1].Left)
	nearly(t, 30*units.Foot, moves[2].From)
	nearly(t, 20*units.Metre, moves[2].To)
	assert.Zero(t, moves[2].Left)
	assert.Zero(t, moves[3].From+moves[3].To)
}

func TestBadLogs(t *testing.T) {
	head := "paddock,in,out,area (ac),animals (AU)\n"
	for log, want := range map[string]string{
		"":                                      "begin with the header",
		"# only a remark\n":                     "begin with the header",
		head:                                    "no stays",
		"paddock,in,out,area (ac)\n":            `names no column animals`,
		"in,in,paddock,out,area,animals\n":      `names the column in again`,
		head + "A,2026-05-01,2026-05-02,2\n":    `line 2, column 5 (animals (AU)): "" is not a number of animal units`,
		head + ",2026-05-01,2026-05-02,2,3\n":   `line 2, column 1 (paddock): "" is empty`,
		head + "A,1.5.2026,2026-05-02,2,3\n":    `line 2, column 2 (in): "1.5.2026" is not a date; year-month-day`,
		head + "A,2026-05-01,tomorrow,2,3\n":    `column 3 (out): "tomorrow"`,
		head + "A,2026-05-02,2026-05-01,2,3\n":  `is before they came, 2026-05-02`,
		head + "A,2026-05-01,2026-05-02,0,3\n":  `column 4 (area (ac)): "0"`,
		head + "A,2026-05-01,2026-05-02,x,3\n":  `column 4 (area (ac)): "x"`,
		head + "A,2026-05-01,2026-05-02,2,-3\n": `column 5 (animals (AU)): "-3"`,
		"paddock,in,out,area,animals (AU)\nA,2026-05-01,2026-05-02,2,3\n":          "its unit in the heading as in area (ac)",
		head + "\n#\nA,2026-05-01,2026-05-02,2,3\nB,2026-05-01,2026-05-02,2,NaN\n": "line 5",
		head + "A,2026-05-01,2026-05-02,2,3\nA,2026-05-01,2026-05-02,2,3\n":        "the same stay twice, from 2026-05-01 to 2026-05-02",
		head + "A,2026-05-01,2026-05-02,2,3\nB,2026-05-01,2026-05-02,2,\"3\" AU\n": "line 3",
		strings.Repeat(" ", 4<<20+1):                                               "bytes are too many",
		head + strings.Repeat("A,2026-05-01,2026-05-02,2,3\n", 50001):              "line 50002: there are more than 50000 lines",
	} {
		_, err := farm.ReadMoves(log)
		name := fmt.Sprintf("%.80q", log)
		var bad *document.Error
		require.Error(t, err, name)
		require.True(t, errors.As(err, &bad), name)
		assert.ErrorContains(t, err, want, name)
		assert.NotContains(t, err.Error(), "\n", name)
		assert.Less(t, len(err.Error()), 300, name)
	}
}

// FuzzReadMoves reads anything: it does not panic, what is wrong is one short line,
// and what is read can be reckoned with.
func FuzzReadMoves(f *testing.F) {
	f.Add(smallLog)
	f.Add("paddock,in,out,area (ac),animals (AU)\nA,2026-05-01,2026-05-02,2 ha,3e0\n")
	f.Add("paddock,group,in,out,area (ha),animals (AU),from (m),to (m)\nA,x,2026-05-01,2026-05-02,2,3,1,1.001\nA,y,2026-05-04,2026-05-04,2,0,1,\nA,x,2026-05-04,2026-05-04,2,0,,\n")
	f.Add("paddock,in,out,area (,animals ()\n\"A\n\"\"x\",2026-05-01,0001-01-01,2,3\n")
	f.Fuzz(func(t *testing.T, log string) {
		moves, err := farm.ReadMoves(log)
		if err != nil {
			if strings.Contains(err.Error(), "\n") || len(err.Error()) > 400 {
				t.Fatalf("%q", err)
			}
			return
		}
		records, err := farm.PaddockRecords(log, farm.RecordRules{Today: moves[len(moves)-1].In, Demand: 12, Use: 0.6, Rest: 30})
		var unknown *document.Error // ground that the log does not tell
		if errors.As(err, &unknown) && strings.Contains(unknown.Path, "line") && !strings.Contains(err.Error(), "\n") {
			return
		}
		if err != nil || len(records) == 0 {
			t.Fatal(err, len(records))
		}
		for _, r := range records {
			if math.IsNaN(float64(r.Use)) || r.Use < 0 || !(r.Ground > 0) || math.IsInf(float64(r.Ground), 0) || r.LeftFirst > r.Left || r.Shortest < 0 {
				t.Fatal(r)
			}
		}
	})
}

// What is wrong with my log?
func ExampleReadMoves() {
	_, err := farm.ReadMoves("paddock,in,out,area (ac),animals (AU)\nA,2026-05-04,2026-05-01,2,10\n")
	fmt.Println(err)
	// Output: log, line 2, column 3 (out): "2026-05-01" is before they came, 2026-05-04; the day on which they left; the same day counts as one
}

// nearly holds two quantities to a relative 1e-9.
func nearly[Q ~float64](t require.TestingT, want, got Q) {
	require.InDelta(t, 0, float64(got-want), 1e-9*math.Max(math.Abs(float64(want)), math.Abs(float64(got))))
}
