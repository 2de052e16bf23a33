package grazing_test

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/grazing"
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
	moves, err := grazing.ReadMoves(smallLog)
	require.NoError(t, err)
	require.Len(t, moves, 4)
	assert.Equal(t, grazing.LoggedMove{Paddock: "A", In: dateOf(t, "2026-05-01"), Out: dateOf(t, "2026-05-04"), Area: 2 * units.Acre, Animals: 10}, moves[0])
	assert.Equal(t, 3*units.Acre, moves[3].Area)

	// other units, another order of columns and of lines, a mark at the beginning
	moves, err = grazing.ReadMoves("\ufeffAnimals (AU),Out,In,Area (ha),Paddock\n5,2026-05-09,2026-05-08,0.5,B\n5,2026-05-08,2026-05-07,0.5,A\n")
	require.NoError(t, err)
	assert.Equal(t, "A", moves[0].Paddock)
	assert.Equal(t, 0.5*units.Hectare, moves[0].Area)
}

// TestReadPlaces reads the columns that a log may have: the group, the place along a
// lane and the height left, with the unit in the header or the cell; empty is not told.
func TestReadPlaces(t *testing.T) {
	moves, err := grazing.ReadMoves("group,paddock,in,out,area (ac),animals (AU),from (ft),to (ft),left (in)\n" +
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
		"paddock,in,out,area (ac)\n":            `column "animals": is missing`,
		"in,in,paddock,out,area,animals\n":      `column "in": stands twice`,
		head + "A,2026-05-01,2026-05-02,2\n":    `line 2, column "animals": is no number`,
		head + ",2026-05-01,2026-05-02,2,3\n":   `line 2, column "paddock": is empty`,
		head + "A,1.5.2026,2026-05-02,2,3\n":    `line 2, column "in": "1.5.2026": is no day: write it as 2026-06-01`,
		head + "A,2026-05-01,tomorrow,2,3\n":    `column "out": "tomorrow"`,
		head + "A,2026-05-02,2026-05-01,2,3\n":  `is before they came, 2026-05-02`,
		head + "A,2026-05-01,2026-05-02,0,3\n":  `column "area": "0"`,
		head + "A,2026-05-01,2026-05-02,x,3\n":  `column "area": "x"`,
		head + "A,2026-05-01,2026-05-02,2,-3\n": `column "animals": "-3"`,
		"paddock,in,out,area,animals (AU)\nA,2026-05-01,2026-05-02,2,3\n":          "put the unit into the header, as in area (ac)",
		head + "\n#\nA,2026-05-01,2026-05-02,2,3\nB,2026-05-01,2026-05-02,2,NaN\n": "line 5",
		head + "A,2026-05-01,2026-05-02,2,3\nA,2026-05-01,2026-05-02,2,3\n":        "the same stay twice, from 2026-05-01 to 2026-05-02",
		head + "A,2026-05-01,2026-05-02,2,3\nB,2026-05-01,2026-05-02,2,\"3\" AU\n": "line 3: ",
		strings.Repeat(" ", 4<<20+1):                                               "4 million bytes",
		head + strings.Repeat("A,2026-05-01,2026-05-02,2,3\n", 50001):              "line 50002: there are more than 50000 stays",
	} {
		_, err := grazing.ReadMoves(log)
		name := fmt.Sprintf("%.80q", log)
		var bad *grazing.LogError
		require.Error(t, err, name)
		require.True(t, errors.As(err, &bad), name)
		assert.ErrorContains(t, err, want, name)
		assert.NotContains(t, err.Error(), "\n", name)
		assert.Less(t, len(err.Error()), 300, name)
	}
}

// TestPaddockRecordsByHand, on 2026-05-30, 26 lb of dry matter an animal unit, 65 %
// eaten, 21 days of rest. A: 10 × 3 ÷ 2 + 12 × 2 ÷ 2 = 27 AUD an acre, 702 lb/ac
// eaten of 1,080; left on 27 May, after a rest of 21 days (4 to 25 May); ready on 17
// June. B: 10 AUD an acre, ready on 27 May. C: they came on the 27th, this is the
// fourth day, 12 × 4 ÷ 3 = 16.
func TestPaddockRecordsByHand(t *testing.T) {
	records, err := grazing.PaddockRecords(smallLog, grazing.RecordRules{Today: dateOf(t, "2026-05-30"), Demand: 26 * units.PoundPerDay, Use: 65 * units.Percent, Rest: 20.5})
	require.NoError(t, err)
	require.Len(t, records, 3)
	b, a, c := records[0], records[1], records[2]
	assert.Equal(t, "BAC", b.Paddock+a.Paddock+c.Paddock)
	nearly(t, 27*units.AnimalUnitDayPerAcre, a.Use)
	nearly(t, 702*units.PoundPerAcre, a.Harvested)
	nearly(t, 1080*units.PoundPerAcre, a.Standing)
	assert.Equal(t, 2, a.Stays)
	assert.Equal(t, units.Days(5), a.Grazed)
	assert.Equal(t, units.Days(21), a.Shortest)
	assert.Equal(t, units.Days(3), a.Rested)
	assert.Equal(t, "2026-05-27 2026-06-17", a.Left.String()+" "+a.Ready.String())
	nearly(t, 10*units.AnimalUnitDayPerAcre, b.Use)
	assert.Equal(t, units.Days(0), b.Shortest)
	assert.Equal(t, "2026-05-27", b.Ready.String())
	assert.True(t, c.Occupied)
	assert.Zero(t, c.Rested)
	nearly(t, 16*units.AnimalUnitDayPerAcre, c.Use)
	assert.False(t, a.Occupied || b.Occupied)

	// what had not begun is left out, and a stay of hours is a day
	records, err = grazing.PaddockRecords(smallLog+"D,2026-05-02,2026-05-02,1,4\n", grazing.RecordRules{Today: dateOf(t, "2026-05-02"), Demand: 1, Use: 1})
	require.NoError(t, err)
	require.Len(t, records, 2)
	assert.True(t, records[0].Occupied)
	nearly(t, 10*units.AnimalUnitDayPerAcre, records[0].Use)
	nearly(t, 4*units.AnimalUnitDayPerAcre, records[1].Use)
}

func TestPaddockRecordsRefuse(t *testing.T) {
	for name, bad := range map[string]grazing.RecordRules{
		"demand": {Demand: -1, Use: 1}, "use": {Use: 0}, "rest": {Use: 1, Rest: 367},
	} {
		_, err := grazing.PaddockRecords(smallLog, bad)
		assert.True(t, units.Impossible(err), name)
		assert.ErrorContains(t, err, name)
	}
	_, err := grazing.PaddockRecords("", grazing.RecordRules{Use: 1})
	assert.ErrorContains(t, err, "header")
}

// TestRecordsAddUp: every animal-unit day of the log stands in a record, and twice
// the animals are twice the use.
func TestRecordsAddUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var log, twice strings.Builder
		log.WriteString("paddock,in,out,area (ha),animals (AU)\n")
		twice.WriteString(log.String())
		total, day := 0.0, units.Date(20000)
		for range rapid.IntRange(1, 30).Draw(t, "moves") {
			days, name := rapid.IntRange(1, 9).Draw(t, "days"), rapid.SampledFrom([]string{"a", "b", "c"}).Draw(t, "paddock")
			animals := rapid.IntRange(0, 60).Draw(t, "animals")
			for to, n := range map[*strings.Builder]int{&log: animals, &twice: 2 * animals} {
				fmt.Fprintf(to, "%s,%s,%s,1,%d\n", name, day, day+units.Date(days), n)
			}
			day += units.Date(days)
			total += float64(animals * days)
		}
		rules := grazing.RecordRules{Today: day, Demand: 12, Use: 0.5, Rest: 30}
		one, err := grazing.PaddockRecords(log.String(), rules)
		require.NoError(t, err)
		two, err := grazing.PaddockRecords(twice.String(), rules)
		require.NoError(t, err)
		sum := 0.0
		for i := range one {
			sum += float64(one[i].Use / units.AnimalUnitDayPerHectare)
			nearly(t, 2*one[i].Use, two[i].Use)
			nearly(t, 2*one[i].Harvested, one[i].Standing)
			require.False(t, one[i].Occupied)
		}
		require.InDelta(t, total, sum, 1e-6)
	})
}

// FuzzReadMoves reads anything: it does not panic, what is wrong is one short line,
// and what is read can be reckoned with.
func FuzzReadMoves(f *testing.F) {
	f.Add(smallLog)
	f.Add("paddock,in,out,area (ac),animals (AU)\nA,2026-05-01,2026-05-02,2 ha,3e0\n")
	f.Add("paddock,in,out,area (,animals ()\n\"A\n\"\"x\",2026-05-01,0001-01-01,2,3\n")
	f.Fuzz(func(t *testing.T, log string) {
		moves, err := grazing.ReadMoves(log)
		if err != nil {
			if strings.Contains(err.Error(), "\n") || len(err.Error()) > 400 {
				t.Fatalf("%q", err)
			}
			return
		}
		records, err := grazing.PaddockRecords(log, grazing.RecordRules{Today: moves[len(moves)-1].In, Demand: 12, Use: 0.6, Rest: 30})
		if err != nil || len(records) == 0 {
			t.Fatal(err, len(records))
		}
		for _, r := range records {
			if math.IsNaN(float64(r.Use)) || r.Use < 0 {
				t.Fatal(r)
			}
		}
	})
}

// What does the log say, and where do they go next?
func ExamplePaddockRecords() {
	today, _ := units.ParseDate("2026-05-30")
	records, err := grazing.PaddockRecords(smallLog, grazing.RecordRules{Today: today, Demand: 26 * units.PoundPerDay, Use: 65 * units.Percent, Rest: 21 * units.Day})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, r := range records {
		fmt.Printf("%s: %.0f AU-days an acre, %s eaten, ready %s\n", r.Paddock, float64(r.Use/units.AnimalUnitDayPerAcre), r.Harvested.In(units.US), r.Ready)
	}
	// Output:
	// B: 10 AU-days an acre, 260 lb/ac eaten, ready 2026-05-27
	// A: 27 AU-days an acre, 702 lb/ac eaten, ready 2026-06-17
	// C: 16 AU-days an acre, 416 lb/ac eaten, ready 2026-06-20
}

// What is wrong with my log?
func ExampleReadMoves() {
	_, err := grazing.ReadMoves("paddock,in,out,area (ac),animals (AU)\nA,2026-05-04,2026-05-01,2,10\n")
	fmt.Println(err)
	// Output: the log of moves, line 2, column "out": "2026-05-01": is before they came, 2026-05-04
}
