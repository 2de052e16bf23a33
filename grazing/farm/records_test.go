package farm_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/grazing/farm"
	"example.org/soum/units"
)

// TestPaddockRecordsByHand, on 2026-05-30, 26 lb of dry matter an animal unit, 65 %
// eaten, 21 days of rest. A: 10 × 3 ÷ 2 + 12 × 2 ÷ 2 = 27 AUD an acre, 702 lb/ac
// eaten of 1,080; left on 27 May, the 26th being the last day there, after a rest of 22
// days (3 to 25 May); ready on 16 June. B: 10 AUD an acre, ready on 26 May. C: they came on the 27th, this is the
// fourth day, 12 × 4 ÷ 3 = 16.
func TestPaddockRecordsByHand(t *testing.T) {
	records, err := farm.PaddockRecords(smallLog, farm.RecordRules{Today: dateOf(t, "2026-05-30"), Demand: 26 * units.PoundPerDay, Use: 65 * units.Percent, Rest: 20.5})
	require.NoError(t, err)
	require.Len(t, records, 3)
	b, a, c := records[0], records[1], records[2]
	assert.Equal(t, "BAC", b.Paddock+a.Paddock+c.Paddock)
	nearly(t, 27*units.AnimalUnitDayPerAcre, a.Use)
	nearly(t, 702*units.PoundPerAcre, a.Harvested)
	nearly(t, 1080*units.PoundPerAcre, a.Standing)
	assert.Equal(t, 2, a.Stays)
	assert.Equal(t, units.Days(5), a.Grazed)
	assert.Equal(t, units.Days(22), a.Shortest)
	assert.Equal(t, units.Days(4), a.Rested)
	assert.Equal(t, "2026-05-27 2026-06-16", a.Left.String()+" "+a.Ready.String())
	nearly(t, 10*units.AnimalUnitDayPerAcre, b.Use)
	assert.Equal(t, units.Days(0), b.Shortest)
	assert.Equal(t, "2026-05-26", b.Ready.String())
	assert.True(t, c.Occupied)
	assert.Zero(t, c.Rested)
	nearly(t, 16*units.AnimalUnitDayPerAcre, c.Use)
	assert.False(t, a.Occupied || b.Occupied)

	// what had not begun is left out, and a stay of hours is a day
	records, err = farm.PaddockRecords(smallLog+"D,2026-05-02,2026-05-02,1,4\n", farm.RecordRules{Today: dateOf(t, "2026-05-02"), Demand: 1, Use: 1})
	require.NoError(t, err)
	require.Len(t, records, 2)
	assert.True(t, records[0].Occupied)
	nearly(t, 10*units.AnimalUnitDayPerAcre, records[0].Use)
	nearly(t, 4*units.AnimalUnitDayPerAcre, records[1].Use)
}

func TestPaddockRecordsRefuse(t *testing.T) {
	for name, bad := range map[string]farm.RecordRules{
		"demand": {Demand: -1, Use: 1}, "use": {Use: 0}, "rest": {Use: 1, Rest: 367},
	} {
		_, err := farm.PaddockRecords(smallLog, bad)
		assert.True(t, units.Impossible(err), name)
		assert.ErrorContains(t, err, name)
	}
	_, err := farm.PaddockRecords("", farm.RecordRules{Use: 1})
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
		rules := farm.RecordRules{Today: day, Demand: 12, Use: 0.5, Rest: 30}
		one, err := farm.PaddockRecords(log.String(), rules)
		require.NoError(t, err)
		two, err := farm.PaddockRecords(twice.String(), rules)
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

// laneHead is the header of a log of a lane 20 m wide: 50 m of it are 0.1 ha.
const laneHead = "paddock,group,in,out,from (m),to (m),area (ha),animals (AU)\n"

const laneLog = laneHead +
	"L,goats,2026-05-01,2026-05-02,0,50,0.1,3\n" +
	"L,goats,2026-05-02,2026-05-03,50,100,0.1,3\n" +
	"L,cows,2026-05-02,2026-05-03,0,50,0.1,2\n" +
	"L,goats,2026-05-03,2026-05-05,100,120,0.04,3\n" +
	"L,cows,2026-05-03,2026-05-04,50,100,0.1,2\n"

// TestLaneRecordsByHand: 3 + 3 + 2 + 2 + 2 × 3 = 16 animal-unit days from 0.1 + 0.1 +
// 0.04 = 0.24 ha, 66.7 an ha; of 12 kg each 800 kg/ha, of which 50 % were eaten. The
// first 50 m were left on the 3rd, the last 20 m on the 5th: with 21 days of rest ready
// on the 23rd and the 25th, counted from the last day there, as a plan counts. Back on the first 100 m from 30 May to 1 June, 6 more:
// 22 ÷ 0.24 an ha. The cows' last day on the second 50 m was 3 May, 27 days before, on the
// first a day earlier; what was left first is now the last 20 m, on the 5th.
func TestLaneRecordsByHand(t *testing.T) {
	rules := farm.RecordRules{Today: dateOf(t, "2026-05-10"), Demand: 12 * units.KilogramPerDay, Use: 50 * units.Percent, Rest: 21}
	r := oneRecord(t, laneLog, rules)
	nearly(t, 0.24*units.Hectare, r.Ground)
	nearly(t, 16/0.24*units.AnimalUnitDayPerHectare, r.Use)
	nearly(t, 800*units.KilogramPerHectare, r.Harvested)
	nearly(t, 1600*units.KilogramPerHectare, r.Standing)
	assert.Equal(t, "2026-05-03 2026-05-05 2026-05-23 2026-05-25", fmt.Sprint(r.LeftFirst, r.Left, r.Ready, r.ReadyAll))
	assert.Equal(t, []any{5, units.Days(6), units.Days(0), units.Days(6)}, []any{r.Stays, r.Grazed, r.Shortest, r.Rested})

	rules.Today = dateOf(t, "2026-06-01")
	r = oneRecord(t, laneLog+"L,goats,2026-05-30,2026-06-01,0,100,0.2,3\n", rules)
	nearly(t, 0.24*units.Hectare, r.Ground)
	nearly(t, 22/0.24*units.AnimalUnitDayPerHectare, r.Use)
	assert.Equal(t, "2026-05-05 2026-06-01", fmt.Sprint(r.LeftFirst, r.Left))
	assert.Equal(t, units.Days(27), r.Shortest)

	// from 100 m on is up to 120 m, where the lane ends by the first goats' third strip;
	// a line without a place is the whole lane, which may go on beyond what was grazed
	for row, hectares := range map[string]float64{
		"L,cows,2026-05-05,2026-05-06,100,,0.04,2\n":   0.24,
		"L,hens,2026-05-06,2026-05-07,,,0.24,2\n":      0.24,
		"L,hens,2026-05-06,2026-05-07,,,0.22,2\n":      0.24, // told roughly
		"L,hens,2026-05-06,2026-05-07,,,0.4,2\n":       0.4,
		"L,hens,2026-05-05,2026-05-06,90,150,0.12,2\n": 0.3, // 30 m more
	} {
		r = oneRecord(t, laneLog+row, rules)
		nearly(t, units.Area(hectares)*units.Hectare, r.Ground)
		nearly(t, units.UseRate(18/hectares)*units.AnimalUnitDayPerHectare, r.Use)
		assert.Zero(t, r.Shortest, row)
	}

	// a lane that widens: 50 m of 20 m, grazed twice, and 50 m of 40 m are 0.3 ha
	r = oneRecord(t, laneHead+"L,x,2026-05-01,2026-05-02,0,50,0.1,3\nL,x,2026-05-02,2026-05-03,50,100,0.2,3\nL,x,2026-05-20,2026-05-21,0,50,0.1,3\n", rules)
	nearly(t, 0.3*units.Hectare, r.Ground)
	nearly(t, 30*units.AnimalUnitDayPerHectare, r.Use)
}

func oneRecord(t *testing.T, log string, rules farm.RecordRules) farm.PaddockRecord {
	t.Helper()
	records, err := farm.PaddockRecords(log, rules)
	require.NoError(t, err)
	require.Len(t, records, 1)
	return records[0]
}

// TestRestByHand: from the last day on which a group was there to the next pass over the
// same ground, 20 days being wanted. Stays are group, in, out in May 2026 and place.
func TestRestByHand(t *testing.T) {
	for name, row := range map[string]struct {
		stays string
		rest  units.Days
	}{
		"leader out, follower in":                          {"goats 1 2 0 50, cows 2 3 0 50", 0},
		"a follower three days behind":                     {"goats 1 2 0 50, hens 5 6 0 50", 0},
		"two passes of three, 26 - 5":                      {"goats 1 2 0 50, cows 2 3 0 50, hens 5 6 0 50, goats 26 27 0 50, cows 27 28 0 50, hens 30 31 0 50", 21},
		"the cows come first in the next pass, 9 - 5":      {"goats 1 2 0 50, cows 2 3 0 50, hens 5 6 0 50, cows 9 10 0 50, goats 10 11 0 50", 4},
		"others, before the rest wanted: they follow":      {"goats 1 2 0 50, sheep 20 21 0 50", 0},
		"others, after the rest wanted, 21 - 1":            {"goats 1 2 0 50, sheep 21 22 0 50", 20},
		"one stay in two lines":                            {"goats 1 2 0 50, goats 2 4 0 50", 0},
		"hours of two days on end":                         {"goats 1 1 0 50, goats 2 2 0 50", 0},
		"hours, and three days later, 4 - 1":               {"goats 1 1 0 50, goats 4 4 0 50", 3},
		"the next strips are other ground":                 {"goats 1 2 0 50, goats 4 5 50 100, goats 9 10 100 150", 0},
		"a centimetre over the border is the border":       {"goats 1 2 0 50, goats 4 5 49.99 100", 0},
		"ten metres over the border are not, 4 - 1":        {"goats 1 2 0 50, goats 4 5 40 100", 3},
		"no groups, overlapping":                           {"- 1 5 0 50, - 3 8 0 50", 0},
		"no groups, touching":                              {"- 1 5 0 50, - 5 8 0 50", 0},
		"no groups, 8 - 4":                                 {"- 1 5 0 50, - 8 9 0 50", 4},
		"a group after nobody knows whom, 8 - 4":           {"- 1 5 0 50, goats 8 9 0 50", 4},
		"nobody knows who after a group, 8 - 4":            {"goats 1 5 0 50, - 8 9 0 50", 4},
		"the shortest of three, 9 - 1, 13 - 9, 20 - 13":    {"goats 1 2 0 50, goats 9 10 0 50, goats 13 14 0 50, goats 20 21 0 50", 4},
		"two halves of one pass, 20 - 3":                   {"goats 1 2 0 50, goats 3 4 50 100, goats 20 21 0 100", 17},
		"those who stay longest leave last, 20 - 8":        {"goats 1 2 0 50, cows 1 9 0 50, goats 20 21 0 50", 12},
		"those who came in between left before, 20 - 8":    {"cows 1 9 0 50, goats 2 3 0 50, cows 20 21 0 50", 12},
		"the last is on it while the second leaves":        {"- 1 9 0 50, - 2 3 0 50, - 8 10 0 50", 0},
		"all of the lane and then a strip of it, 12 - 1":   {"goats 1 2 , goats 12 13 30 50", 11},
		"the hens have been on the first half only, 9 - 5": {"goats 1 2 0 100, hens 5 6 0 50, hens 9 10 0 100", 4},
	} {
		log := laneHead
		for _, s := range strings.Split(row.stays, ", ") {
			f := append(strings.Fields(s), "", "")
			metres, area := [2]float64{}, 0.1
			if n, _ := fmt.Sscan(f[3]+" "+f[4], &metres[0], &metres[1]); n == 2 {
				area = (metres[1] - metres[0]) * 20 / 1e4
			}
			log += fmt.Sprintf("L,%s,2026-05-%02s,2026-05-%02s,%s,%s,%v,1\n", strings.Trim(f[0], "-"), f[1], f[2], f[3], f[4], area)
		}
		r := oneRecord(t, log, farm.RecordRules{Today: dateOf(t, "2026-06-10"), Demand: 12, Use: 0.5, Rest: 20})
		assert.Equal(t, row.rest, r.Shortest, name)
	}

	// with no rest wanted the groups alone decide
	late := laneHead + "L,goats,2026-05-01,2026-05-02,0,50,0.1,1\nL,hens,2026-05-05,2026-05-06,0,50,0.1,1\n"
	assert.Zero(t, oneRecord(t, late, farm.RecordRules{Today: dateOf(t, "2026-06-10"), Demand: 12, Use: 0.5}).Shortest)
}

// TestRecordsOfAPlan writes plans of drawn farms as logs. What the plan has them eat
// stands in the records, over the ground that its moves were on; and the shortest rest
// is the shortest between two of its moves that overlap, from the last visit of the one.
func TestRecordsOfAPlan(t *testing.T) {
	const unit = 12.0 // kg a day
	returns := 0
	rapid.Check(t, func(t *rapid.T) {
		holding := drawFarm(t)
		for i := range holding.Rotations { // nobody is back before the last follower has been
			holding.Rotations[i].ShortestRest = units.Days(rapid.IntRange(10, 30).Draw(t, "long rest"))
		}
		p, err := holding.Plan()
		require.NoError(t, err)
		log, eaten := handHead, map[string]float64{}
		for i := range p.Moves {
			m := &p.Moves[i]
			place := ",,"
			if m.Length > 0 {
				place = fmt.Sprintf(",%v,%v", m.From.Metres(), m.To.Metres())
			}
			for _, v := range m.Visits {
				log += fmt.Sprintf("%s,%s,%s,%v,%v%s,,%s\n", m.Land, v.From, v.To+1, m.Area.SquareMetres(), v.Eaten.Kilograms()/unit/float64(v.To+1-v.From), place, v.Group)
				eaten[m.Land] += v.Eaten.Kilograms()
			}
		}
		if log == handHead {
			t.Skip("nobody grazes")
		}
		records, err := farm.PaddockRecords(log, farm.RecordRules{Today: p.To + 1, Demand: unit * units.KilogramPerDay, Use: 0.5, Rest: 10})
		require.NoError(t, err)
		require.Len(t, records, len(eaten))
		for _, r := range records {
			moves := slices.DeleteFunc(slices.Clone(p.Moves), func(m farm.Move) bool { return m.Land != r.Paddock || len(m.Visits) == 0 })
			ground := groundOf(moves)
			require.InEpsilon(t, ground, r.Ground.SquareMetres(), 0.01) // borders as near as 2 cm are one
			require.InEpsilon(t, eaten[r.Paddock], float64(r.Harvested)*r.Ground.SquareMetres(), 1e-9)
			// ground less than 5 cm long may count or not: borders as near as 2 cm are one
			low, high := shortestBetween(moves, 0), shortestBetween(moves, 5*units.Centimetre)
			rest := r.Shortest
			if rest == 0 {
				rest = never
			}
			require.LessOrEqual(t, low, rest, r.Paddock)
			require.LessOrEqual(t, rest, high, r.Paddock)
			if low == high && high < never {
				returns++
			}
		}
	})
	assert.Greater(t, returns, 50)
}

// groundOf gives the square metres that moves on one land were on.
func groundOf(moves []farm.Move) (area float64) {
	if moves[0].Length == 0 {
		return moves[0].Area.SquareMetres()
	}
	slices.SortFunc(moves, func(a, b farm.Move) int {
		if a.From < b.From {
			return -1
		}
		return 1
	})
	end := units.Length(0)
	for _, m := range moves {
		if m.To > end {
			area += m.Area.SquareMetres() / m.Length.Metres() * (m.To - max(end, m.From)).Metres()
			end = m.To
		}
	}
	return area
}

const never = 1000 * units.Day // longer than any of these plans

// shortestBetween gives the shortest rest between two moves on the same ground, of more
// than some length.
func shortestBetween(moves []farm.Move, length units.Length) units.Days {
	shortest := never
	for i := range moves {
		left := units.Date(0)
		for _, v := range moves[i].Visits {
			left = max(left, v.To)
		}
		for j := range moves {
			next := &moves[j]
			over := min(moves[i].To, next.To) - max(moves[i].From, next.From)
			rest := units.Days(next.Visits[0].From - left)
			if (next.Length == 0 || over > length) && rest > 0 {
				shortest = min(shortest, rest)
			}
		}
	}
	return shortest
}

// TestGroundUnknown: what the log does not tell of the ground is refused with the line.
func TestGroundUnknown(t *testing.T) {
	for row, want := range map[string]string{
		"L,goats,2026-05-05,2026-05-06,,,0.1,3\n":                                         `line 7, column 7 (area (ha)): "0.1 ha (0.247 ac)" is not the whole of "L", which is 0.24 ha (0.593 ac) by other stays; the columns from and to tell`,
		"M,goats,2026-05-05,2026-05-06,,,0.2,3\nM,goats,2026-05-06,2026-05-07,,,0.17,3\n": `line 8, column 7 (area (ha)): "0.17 ha (0.42 ac)" is not the whole of "M"`,
		"M,goats,2026-05-05,2026-05-06,20,,0.2,3\n":                                       `(to (m)): "" is empty, and no stay tells where the lane ends`,
		"L,goats,2026-05-05,2026-05-06,120,,0.2,3\n":                                      `(to (m)): "" is empty`,
	} {
		_, err := farm.PaddockRecords(laneLog+row, farm.RecordRules{Today: dateOf(t, "2026-05-10"), Demand: 12, Use: 1})
		holdsLogError(t, err, "log, line", want)
	}
}

// What does the log say, and where do they go next?
func ExamplePaddockRecords() {
	today, _ := units.ParseDate("2026-05-30")
	records, err := farm.PaddockRecords(smallLog, farm.RecordRules{Today: today, Demand: 26 * units.PoundPerDay, Use: 65 * units.Percent, Rest: 21 * units.Day})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, r := range records {
		fmt.Printf("%s: %.0f AU-days an acre, %s eaten, ready %s\n", r.Paddock, float64(r.Use/units.AnimalUnitDayPerAcre), r.Harvested.In(units.US), r.Ready)
	}
	// Output:
	// B: 10 AU-days an acre, 260 lb/ac eaten, ready 2026-05-26
	// A: 27 AU-days an acre, 702 lb/ac eaten, ready 2026-06-16
	// C: 16 AU-days an acre, 416 lb/ac eaten, ready 2026-06-20
}
