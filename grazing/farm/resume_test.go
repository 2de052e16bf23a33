package farm_test

import (
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"math"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"example.org/soum/forage"
	"example.org/soum/grazing/farm"
	"example.org/soum/herd"
	"example.org/soum/internal/check"
	"example.org/soum/internal/document"
	"example.org/soum/units"
)

const handHead = "paddock,in,out,area (m2),animals (AU),from (m),to (m),left (m),group\n"

// handRow is a row of the season done by hand that tells of a place.
type handRow struct {
	kind, land, who, name string
	day                   int
	from, to              float64
}

func handRows(t *testing.T, sums map[string]float64) (rows []handRow) {
	t.Helper()
	file, err := os.Open("../../internal/season/testdata/by_hand_expected.csv")
	require.NoError(t, err)
	defer file.Close()
	reader := csv.NewReader(file)
	reader.Comment = '#'
	for {
		row, err := reader.Read()
		if errors.Is(err, io.EOF) {
			return rows
		}
		require.NoError(t, err)
		day, _ := strconv.Atoi(row[1])
		if row[3] != "" {
			rows = append(rows, handRow{row[0], row[2], row[5], row[6], day, sums[row[3]], sums[row[4]]})
		}
	}
}

// TestCarriedOnByHand puts the moves of the season done by hand into a log, up to each
// of its days, and holds today's heights, days of the last bite, visits still to come and
// heads against its sums, to the last digit: where nobody wrote what was left, and where
// somebody did.
func TestCarriedOnByHand(t *testing.T) {
	holding, err := farm.Read([]byte(strings.ReplaceAll(handFarm, "PASTURE", handPasture)))
	require.NoError(t, err)
	given, err := holding.JSON(units.Metric)
	require.NoError(t, err)
	sums, err := check.WorkSums("../../internal/season/testdata/by_hand.txt")
	require.NoError(t, err)
	rows := handRows(t, sums)
	width := map[string]float64{"A": 30, "B": 40, "C": 25}
	compared := 0
	for n := 1; n < 20; n++ {
		log, bitten, opened, front := handHead, map[string]int{}, map[string]int{}, handRow{}
		for _, r := range rows {
			if r.kind == "cut" && r.day <= n {
				bitten[fmt.Sprint(r.land, r.from)] = r.day
			}
			if r.kind != "piece" || r.day > n {
				continue
			}
			if r.who != "follower" {
				opened[fmt.Sprint(r.land, r.from)] = r.day
				front = r
			}
			bitten[fmt.Sprint(r.land, r.from)] = r.day
		}
		for _, r := range strips(rows) {
			if r.day > n {
				continue
			}
			left := ""
			if r.who == "follower" && n%2 == 0 { // read on every other day of the test
				left = fmt.Sprint(sums[strings.Replace(r.name, "_fol_kg", "_F", 1)] / sums["density"])
			}
			date := holding.Today.Add(r.day - 1)
			log += fmt.Sprintf("%s,%s,%s,%v,1,%v,%v,%s,%s\n", r.land, date, date+1, width[r.land]*(r.to-r.from), r.from, r.to, left, map[bool]string{true: holding.Groups[1].ID, false: holding.Groups[0].ID}[r.who == "follower"])
		}
		next, err := holding.CarryOn(holding.Today.Add(n), log, "")
		require.NoError(t, err, n)
		for _, r := range rows {
			if r.kind != "mass" || r.day != n {
				continue
			}
			got := stretchAt(t, next, r.land, (r.from+r.to)/2)
			assert.InDelta(t, sums[r.name], got.Height.Metres()*sums["density"], 1e-9, "day %d, %s", n, r.name)
			if day, was := bitten[fmt.Sprint(r.land, r.from)]; was {
				require.NotNil(t, got.Grazed, r.name)
				assert.Equal(t, holding.Today.Add(day-1), *got.Grazed, "day %d, %s", n, r.name)
			}
			if day, led := opened[fmt.Sprint(r.land, r.from)]; led && day+2 > n && day+2 <= 20 { // the follower comes two days on
				require.Len(t, got.Due, 1, "day %d, %s", n, r.name)
				assert.Equal(t, holding.Today.Add(day+1), got.Due[0].Date)
			} else {
				assert.Empty(t, got.Due, "day %d, %s", n, r.name)
			}
			compared++
		}
		if f := next.Rotations[0].Front; assert.Equal(t, front.to == map[string]float64{"A": 60, "B": 52, "C": 40}[front.land], f == nil, n) && f != nil {
			assert.Equal(t, front.land, f.Land, n)
			assert.InDelta(t, front.to, f.At.Metres(), 1e-9, n)
		}
		// day 10 is 3 June, 13 is 6 June, 17 is 10 June; day n + 1 is today
		heads := func(before, after float64, day int) float64 {
			if n+1 >= day {
				return after
			}
			return before
		}
		assert.Equal(t, heads(heads(15, 12, 13), 21, 17), next.Groups[0].Head, n)
		assert.Equal(t, heads(11, 13, 10), next.Groups[1].Head, n)
		assert.Len(t, next.Cuts, int(heads(1, 0, 7)), n)
		plan(t, next)
		again, err := holding.JSON(units.Metric)
		require.NoError(t, err)
		require.Equal(t, string(given), string(again), "the farm given was changed")
	}
	assert.Equal(t, 232, compared) // every row of the days 1 to 19
}

// strips joins the pieces of one strip, which are worked out one by one where they stood
// apart, for the leader; the follower's are left as they are.
func strips(rows []handRow) (all []handRow) {
	for _, r := range rows {
		if r.kind != "piece" {
			continue
		}
		if n := len(all); n > 0 && r.who != "follower" && all[n-1].who == r.who && all[n-1].day == r.day && all[n-1].land == r.land && all[n-1].to == r.from {
			all[n-1].to = r.to
			continue
		}
		all = append(all, r)
	}
	return all
}

// stretchAt gives the stretch of a farm's land that a place lies in.
func stretchAt(t require.TestingT, holding *farm.Farm, land string, at float64) farm.Stretch {
	i := slices.IndexFunc(holding.Land, func(l farm.Land) bool { return l.ID == land })
	require.GreaterOrEqual(t, i, 0)
	l := &holding.Land[i]
	for _, s := range l.Stretches {
		if s.To.Metres() > at {
			return s
		}
	}
	require.Empty(t, l.Stretches)
	return farm.Stretch{To: l.Length, Height: l.Height, Grazed: l.Grazed}
}

// logOf writes the first moves of a plan as a log: those opened before a day, a line
// for each visit that began before it, with what was left after the last of them. Who is
// there that morning goes out as the plan had it then, whatever comes between.
func logOf(p *farm.Plan, before units.Date, left bool) string {
	log := handHead
	for _, m := range slices.Concat(p.UnderWay, p.Moves) {
		for _, v := range m.Visits {
			if v.From >= before {
				continue
			}
			place, height := ",,", ""
			if m.Length > 0 {
				place = fmt.Sprintf(",%v,%v", m.From.Metres(), m.To.Metres())
			}
			if left {
				height = fmt.Sprint(m.Left.Metres())
			}
			log += fmt.Sprintf("%s,%s,%s,%v,1%s,%v,%s\n", m.Land, v.From, v.To+1, m.Area.SquareMetres(), place, height, v.Group)
		}
	}
	return log
}

// TestLogGivesThePlanAgain writes the first days of a plan as a log, with and without what
// was left, and carries the farm on by it: the document is that of the plan followed to that
// day, with all that is due, stays and fronts. Followers, strips of several days, paddocks
// stayed on in, several moves a day and feeding between are among them.
func TestLogGivesThePlanAgain(t *testing.T) {
	var met struct{ due, stays, long, fed, moves, fronts int }
	rapid.Check(t, func(t *rapid.T) {
		holding := drawFarm(t)
		holding.Rotations[0].ShortestStrip = units.Length(rapid.SampledFrom([]float64{0, 1, 12}).Draw(t, "shortest strip"))
		if rapid.Bool().Draw(t, "paddocks") {
			holding.Rotations[0].Land, holding.Rotations[1].Land = []string{"plot", "long"}, []string{"short"}
			holding.Rotations[0].TurnIn, holding.Rotations[0].Leave = holding.Rotations[1].TurnIn, holding.Rotations[1].Leave
		}
		once, err := holding.Plan()
		require.NoError(t, err)
		today := holding.Today.Add(rapid.IntRange(1, 60).Draw(t, "days"))
		want, got := logGivesFollowed(t, holding, once, today)
		// And on from there, by the log of a plan made on that day. With a rest of one day it does
		// not tell staying on from entering anew.
		if holding.Rotations[0].ShortestRest > 1 {
			again, err := got.Plan()
			require.NoError(t, err)
			later := today.Add(rapid.IntRange(1, 10).Draw(t, "days more"))
			twice, err := got.CarryOn(later, logOf(again, later, rapid.Bool().Draw(t, "left")), "")
			require.NoError(t, err)
			followed, err := holding.Followed(later)
			require.NoError(t, err)
			sameDocument(t, followed, twice)
		}
		for _, l := range want.Land {
			for _, s := range l.Stretches {
				met.due += len(s.Due)
			}
			if l.Stay != nil {
				met.stays++
			}
		}
		for _, m := range once.Moves {
			if m.Date < today && m.Length > 0 && m.Stay > 1 {
				met.long++
			}
			if m.Date < today {
				met.moves++
			}
		}
		if want.Rotations[0].Front != nil {
			met.fronts++
		}
		met.fed += len(once.Feeding)
	})
	assert.Greater(t, min(met.due, met.stays, met.long, met.fed, met.fronts), 10, met)
	assert.Greater(t, met.moves, 1000)
}

// logGivesFollowed carries a farm on by the log of its plan and by the plan itself, and holds
// the two documents against one another.
func logGivesFollowed(t require.TestingT, holding *farm.Farm, once *farm.Plan, today units.Date) (want, got *farm.Farm) {
	want, err := holding.Followed(today)
	require.NoError(t, err)
	for _, left := range []bool{false, true} {
		got, err = holding.CarryOn(today, logOf(once, today, left), "")
		require.NoError(t, err)
		sameDocument(t, want, got)
	}
	return want, got
}

// sameDocument holds two farms of one day against one another: masses to a millionth,
// lengths to a millimetre, and all else but notes and the hay in store.
func sameDocument(t require.TestingT, want, got *farm.Farm) {
	const alike, millimetre = 1e-6, 1e-3
	require.Equal(t, want.Today, got.Today)
	require.Equal(t, want.Groups, got.Groups)
	require.Equal(t, want.Cuts, got.Cuts)
	require.Equal(t, want.Rain, got.Rain)
	for i := range want.Land {
		w, g := &want.Land[i], &got.Land[i]
		require.Equal(t, w.Stay == nil, g.Stay == nil, w.ID)
		if w.Stay != nil {
			require.InDelta(t, float64(*w.Stay.First), float64(*g.Stay.First), alike)
			require.Equal(t, [3]any{w.Stay.From, w.Stay.Planned, w.Stay.Days}, [3]any{g.Stay.From, g.Stay.Planned, g.Stay.Days}, w.ID)
		}
		pieces := partedBy(w, g)
		for j, q := range partedBy(g, w) {
			p := pieces[j]
			where := fmt.Sprintf("%s to %v", w.ID, p.To)
			require.InDelta(t, p.To.Metres(), q.To.Metres(), millimetre, where)
			require.InEpsilon(t, p.Height.Metres(), q.Height.Metres(), alike, where)
			require.Equal(t, p.Grazed, q.Grazed, where)
			require.Len(t, q.Due, len(p.Due), where)
			for k, due := range p.Due {
				require.Equal(t, [2]any{due.Group, due.Date}, [2]any{q.Due[k].Group, q.Due[k].Date}, where)
				require.InDelta(t, float64(due.Eat), float64(q.Due[k].Eat), alike*(1+float64(due.Eat)), where)
				require.InDelta(t, float64(due.Use), float64(q.Due[k].Use), alike, where)
			}
		}
	}
	for i := range want.Rotations {
		w, g := &want.Rotations[i], &got.Rotations[i]
		require.Equal(t, w.GrassFrom, g.GrassFrom)
		require.Equal(t, w.Front == nil, g.Front == nil, "%v, %v", w.Front, g.Front)
		if w.Front != nil {
			require.Equal(t, w.Front.Land, g.Front.Land)
			require.InDelta(t, w.Front.At.Metres(), g.Front.At.Metres(), millimetre)
		}
	}
}

// partedBy gives the stretches of a land parted at the borders of another's too: between
// ground that is alike a border may stand in the one and not in the other.
func partedBy(l, other *farm.Land) (all []farm.Stretch) {
	const apart = 1e-3
	pieces, from := l.Stretches, units.Length(0)
	if len(pieces) == 0 {
		pieces = []farm.Stretch{{To: max(1, l.Length), Height: l.Height, Grazed: l.Grazed}}
	}
	for _, p := range pieces {
		start := from
		for _, o := range append(slices.Clone(other.Stretches), p) {
			if o.To != p.To && (o.To < from+apart || o.To > p.To-apart) {
				continue
			}
			part := farm.Stretch{To: o.To, Height: p.Height, Grazed: p.Grazed}
			for _, d := range p.Due {
				d.Eat *= units.DryMatter((o.To - from) / (p.To - start))
				part.Due = append(part.Due, d)
			}
			if all, from = append(all, part), o.To; o.To == p.To {
				break
			}
		}
	}
	return all
}

// TestLogOfFarms does the same for the cases done by hand, and for farms with births,
// weaning, sales, cuts, weights that grow and an account of the soil's water.
func TestLogOfFarms(t *testing.T) {
	paths := []string{"../../examples/season/data/farm.json", "../../examples/season/data/births.json", "testdata/weaned-behind-cows.json"}
	for number := range 8 {
		paths = append(paths, fmt.Sprintf("testdata/by_hand/%d.json", number+1))
	}
	for _, path := range paths {
		data, err := os.ReadFile(path)
		require.NoError(t, err)
		holding, err := farm.Read(data)
		require.NoError(t, err)
		once := plan(t, holding)
		step := max(1, len(once.Days)/25)
		for days := 1; days < len(once.Days); days += step {
			t.Run(fmt.Sprintf("%s after %d days", path, days), func(t *testing.T) {
				logGivesFollowed(t, holding, once, holding.Today.Add(days))
			})
		}
	}
}

// TestGrowsOnByTheCurve: ten ewes want what their class says and cannot eat 20 m × 30 m down
// from what stands there, so that what was left is read here. It lets ground grow from 1 May to 16 June: 24 % of 1.15 kg/m2 fall
// on each of the months, of June the half by then. By the logistic curve with the
// ceiling K = 1.1 × 0.40 and mean-to-peak rho = 4 (T - R) ÷ (K ln[T (K - R) ÷ (R (K - T))]),
// T = 0.22 and R = 0.132 kg/m2: V = K ÷ (1 + (K/V0 - 1) exp(-4 ÷ K × 1.15 × 0.24 × 1.5 ÷ rho)).
// Two steps come to where one comes to, and the document can be written and read.
func TestGrowsOnByTheCurve(t *testing.T) {
	holding := grownFarm(t)
	log := handHead + "A,2001-05-31,2001-06-01,600,1,10,30,0.12,\n"
	june16, may20 := dateOf(t, "2001-06-16"), dateOf(t, "2001-05-20")
	once, err := holding.CarryOn(june16, log, "")
	require.NoError(t, err)
	assert.InDelta(t, afterMonths(0.15, 1.5), stretchAt(t, once, "A", 5).Height.Metres(), 1e-12)
	bitten := stretchAt(t, once, "A", 20)
	assert.InDelta(t, afterMonths(0.12, 1.0/31+15.0/30), bitten.Height.Metres(), 1e-12) // a day of May and 15 of June
	assert.Equal(t, dateOf(t, "2001-05-31"), *bitten.Grazed)
	assert.InDelta(t, afterMonths(0.15, 1.5), stretchAt(t, once, "A", 55).Height.Metres(), 1e-12)
	assert.InDelta(t, afterMonths(0.18, 1.5), stretchAt(t, once, "B", 0).Height.Metres(), 1e-12)
	assert.Len(t, once.Land[0].Stretches, 3)
	assert.Equal(t, holding.Season.From, once.Season.From)

	half, err := holding.CarryOn(may20, log, "")
	require.NoError(t, err)
	twice, err := half.CarryOn(june16, log, "")
	require.NoError(t, err)
	for _, at := range []float64{5, 20, 55} {
		assert.InDelta(t, stretchAt(t, once, "A", at).Height.Metres(), stretchAt(t, twice, "A", at).Height.Metres(), 1e-12)
	}
	assert.Equal(t, once.Land[0].Note, twice.Land[0].Note)
	assert.Empty(t, once.Land[0].Note)
	unread, err := holding.CarryOn(june16, handHead+"A,2001-05-31,2001-06-01,600,1,10,30,,\n", "")
	require.NoError(t, err)
	assert.Equal(t, "As carried on to 2001-06-16: nobody read what was left after 1 stay, and it is reckoned by what they wanted, not below the leave height, 12 cm.", unread.Land[0].Note)
	assert.Contains(t, once.Land[1].Note, "mine. As carried on to 2001-06-16: not in the log, so grown on")
	for _, system := range []units.System{units.Metric, units.US} {
		text, err := once.JSON(system)
		require.NoError(t, err)
		back, err := farm.Read(text)
		require.NoError(t, err)
		assert.InDelta(t, once.Land[0].Stretches[0].Height.Metres(), back.Land[0].Stretches[0].Height.Metres(), 1e-9)
	}
}

// afterMonths gives the height after some months with 24 % of the yield.
func afterMonths(height, months float64) float64 {
	const k, turnIn, left = 1.1 * 0.40, 1.1 * 0.20, 1.1 * 0.12
	rho := 4 * (turnIn - left) / (k * math.Log(turnIn*(k-left)/(left*(k-turnIn))))
	return k / (1 + (k/(1.1*height)-1)*math.Exp(-4/k*1.15*0.24*months/rho)) / 1.1
}

// grownFarm is two lanes of the hand-made pasture, and no rain.
func grownFarm(t testing.TB) *farm.Farm {
	t.Helper()
	holding, err := farm.Read([]byte(strings.ReplaceAll(`{
  "version": 1, "today": "2001-05-01", "season": {"from": "2001-05-01", "to": "2001-08-31"},
  "land": [{"id": "A", "width": "30 m", "length": "60 m", "pasture": PASTURE, "height": "15 cm"},
           {"id": "B", "width": "40 m", "length": "52 m", "pasture": PASTURE, "height": "18 cm", "grazed": "2001-04-01", "note": "mine"}],
  "groups": [{"id": "ewes", "class": "ewe", "head": 10}],
  "rotations": [{"land": ["A", "B"], "groups": [{"group": "ewes"}], "turn_in": "20 cm", "leave": "12 cm", "shortest_rest": "21 days"}]}`, "PASTURE", handPasture)))
	require.NoError(t, err)
	return holding
}

// TestLaterStaysLieOverEarlierOnes: what was left, and the day, by the last stay on a
// place. Where nobody read it, ten ewes have eaten a day of it: their want, of which so much
// more disappears, off 20 m × 30 m, and what they want of it on two days more is kept. A
// border told to the centimetre is the lane's end.
func TestLaterStaysLieOverEarlierOnes(t *testing.T) {
	holding := grownFarm(t)
	log := handHead +
		"A,2001-05-02,2001-05-03,600,1,0,20,0.13,\nA,2001-05-03,2001-05-04,600,1,20,40,0.13,\n" +
		"A,2001-05-03,2001-05-04,600,2,20,40,0.1,\n" + // both groups, the second reading counts
		"A,2001-05-06,2001-05-07,600,1,10,30,0.11,\n" +
		"B,2001-05-08,2001-05-08,2080,1,,,0.1,\nB,2001-05-08,2001-05-09,2080,2,,,,\n" + // 10 cm, then no reading
		"A,2001-05-10,2001-05-13,600,1,40,60.01,,\n" // under way on 11 May
	today := dateOf(t, "2001-05-11")
	next, err := holding.CarryOn(today, log, "")
	require.NoError(t, err)
	var bitten []string
	for _, s := range next.Land[0].Stretches {
		bitten = append(bitten, fmt.Sprintf("%.0f %s", s.To.Metres(), s.Grazed))
	}
	assert.Equal(t, []string{"10 2001-05-02", "30 2001-05-06", "40 2001-05-03", "60 2001-05-10"}, bitten)
	wants := plan(t, holding).Days[9].Wanted.Kilograms()
	use, err := forage.UsableShare(3 * units.Day)
	require.NoError(t, err)
	stood := afterMonths(0.15, 9.0/31) - wants/float64(use)/600/1.1
	assert.InDelta(t, afterMonths(stood, 1.0/31), next.Land[0].Stretches[3].Height.Metres(), 1e-9)
	require.Len(t, next.Land[0].Stretches[3].Due, 2) // the days that the log has for it
	assert.InDelta(t, wants, next.Land[0].Stretches[3].Due[0].Eat.Kilograms(), 1e-9)
	assert.Equal(t, today.Add(1), next.Land[0].Stretches[3].Due[1].Date)
	assert.InDelta(t, afterMonths(0.11, 5.0/31), next.Land[0].Stretches[1].Height.Metres(), 1e-12)
	assert.InDelta(t, afterMonths(0.10, 8.0/31), next.Land[0].Stretches[2].Height.Metres(), 1e-12)
	assert.Empty(t, next.Land[1].Stretches)
	assert.InDelta(t, afterMonths(0.10, 3.0/31), next.Land[1].Height.Metres(), 1e-12)
	assert.Contains(t, next.Land[0].Note, "animals are on it up to 2001-05-13 by the log, and the plan has them go on by its rules")
	assert.Nil(t, next.Rotations[0].Front) // the ground opened last ends where the lane does

	// a stay that begins today is left out, one that was over before the document's day too
	for _, row := range []string{"A,2001-05-11,2001-05-12,600,1,0,20,0.13,\n", "A,2001-04-11,2001-04-12,600,1,0,20,0.13,\n", "nowhere,2001-04-11,2001-04-12,600,1,0,20,0.13,\n"} {
		alone, err := holding.CarryOn(dateOf(t, "2001-05-11"), handHead+row, "")
		require.NoError(t, err)
		none, err := holding.CarryOn(dateOf(t, "2001-05-11"), "", "")
		require.NoError(t, err)
		alone.Land[0].Note, alone.Land[1].Note, alone.Feed.Note = none.Land[0].Note, none.Land[1].Note, none.Feed.Note
		assert.Equal(t, none, alone)
	}
}

// TestNotesTellWhatWasLeftOut: of land on which nobody was, why its heights are what they
// are, in the farm's own units, and which stays of the log do not count.
func TestNotesTellWhatWasLeftOut(t *testing.T) {
	const carried = "As carried on to 2001-05-11: "
	for log, want := range map[string]string{
		"": "no log, so grown on from the document's heights.",
		handHead + "B,2001-05-02,2001-05-03,2080,1,,,,\n":                                                                                "not in the log, so grown on from the document's heights.",
		handHead + "A,2001-04-11,2001-04-12,600,1,0,20,,\nA,2001-04-30,2001-05-01,600,1,0,20,,\n":                                        "grown on from the document's heights; 2 stays before 2001-05-01 left out, being in the document's heights already.",
		handHead + "A,2001-05-11,2001-05-12,600,1,0,20,,\n":                                                                              "grown on from the document's heights; 1 stay from 2001-05-11 on left out, being still to come.",
		handHead + "A,2001-05-02,2001-05-03,600,1,0,20,,\nA,2001-05-01,2001-05-02,600,1,20,40,,\nA,2001-04-11,2001-04-12,600,1,0,20,,\n": "nobody read what was left after 2 stays, and it is reckoned by what they wanted, not below the leave height, 4.72 in; 1 stay before 2001-05-01 left out, being in the document's heights already.",
	} {
		holding := grownFarm(t)
		holding.Units = units.US
		next, err := holding.CarryOn(dateOf(t, "2001-05-11"), log, "")
		require.NoError(t, err)
		assert.Equal(t, carried+want, next.Land[0].Note)
	}
	for own, want := range map[string]string{"mine": "mine. ", "mine!": "mine! ", "": ""} {
		holding := grownFarm(t)
		holding.Land[0].Note = own
		next, err := holding.CarryOn(dateOf(t, "2001-05-11"), "", "")
		require.NoError(t, err)
		assert.Equal(t, want+carried+"no log, so grown on from the document's heights.", next.Land[0].Note)
	}
}

// TestHayOfPastCutsIsTold: the store stays as it was, and the note tells what a cut gave:
// 20 m × 30 m of a lane at 15 cm, grown on for 9 of 31 days of May, cut to 6 cm, of
// 1.1 kg/m2 in 1 m of height; a fifth is lost, and the hay is 90 % dry matter. Of the
// other cut, still to come, nothing is told.
func TestHayOfPastCutsIsTold(t *testing.T) {
	holding := grownFarm(t)
	loss := 20 * units.Percent
	holding.Feed = farm.Feed{Hay: 100, Loss: &loss, Note: "in the barn"}
	holding.Cuts = []farm.Cut{
		{Land: "A", Date: dateOf(t, "2001-05-10"), Stubble: 0.06, From: 10, To: 30},
		{Land: "B", Date: dateOf(t, "2001-05-21"), Stubble: 0.06},
	}
	next, err := holding.CarryOn(dateOf(t, "2001-05-20"), "", "")
	require.NoError(t, err)
	hay := units.FreshFeed((afterMonths(0.15, 9.0/31) - 0.06) * 1.1 * 20 * 30 * 0.8 / 0.9)
	assert.Equal(t, "in the barn. As carried on to 2001-05-20: hay in store is carried over as it stood, nothing taken off for what was fed since: "+
		"put in what lies there now; the cut of 2001-05-10 gave "+hay.In(units.Metric)+" by the heights reckoned; none of that is in the store yet.", next.Feed.Note)
	assert.Equal(t, 100*units.FreshKilogram, next.Feed.Hay)
	assert.Greater(t, hay, 50*units.FreshKilogram)

	same, err := holding.CarryOn(holding.Today, "", "")
	require.NoError(t, err)
	assert.Equal(t, "in the barn", same.Feed.Note)
}

// TestBordersAndAreasNearby: borders as near as the digits of a document are one, five
// millimetres apart they are two; an area in the log may be a tenth off, but not more.
func TestBordersAndAreasNearby(t *testing.T) {
	holding, today := grownFarm(t), dateOf(t, "2001-05-11")
	for second, pieces := range map[float64]int{20.0000005: 3, 20.005: 4} {
		next, err := holding.CarryOn(today, handHead+fmt.Sprintf("A,2001-05-02,2001-05-03,600,1,0,20,0.1,\nA,2001-05-03,2001-05-04,600,1,%v,40,0.1,\n", second), "")
		require.NoError(t, err)
		assert.Len(t, next.Land[0].Stretches, pieces, second)
	}
	for area, wrong := range map[float64]bool{530: true, 545: false, 655: false, 670: true} {
		_, err := holding.CarryOn(today, handHead+fmt.Sprintf("A,2001-05-02,2001-05-03,%v,1,0,20,0.1,\n", area), "")
		assert.Equal(t, wrong, err != nil, area)
	}
}

// TestReadingsWin lays heights read that day over what was reckoned.
func TestReadingsWin(t *testing.T) {
	holding, today := grownFarm(t), dateOf(t, "2001-05-11")
	log := handHead + "A,2001-05-02,2001-05-03,600,1,0,20,0.13,\n"
	next, err := holding.CarryOn(today, log, "Paddock,height (cm),from (m),to (m)\n# walked at noon\nA,14,10,30\nB,22,,\n")
	require.NoError(t, err)
	assert.InDelta(t, 0.14, stretchAt(t, next, "A", 15).Height.Metres(), 1e-12)
	assert.InDelta(t, 0.14, stretchAt(t, next, "A", 25).Height.Metres(), 1e-12)
	assert.Equal(t, "2001-05-02", stretchAt(t, next, "A", 15).Grazed.String()) // the bite is where it was
	assert.Nil(t, stretchAt(t, next, "A", 25).Grazed)
	assert.InDelta(t, 0.22, next.Land[1].Height.Metres(), 1e-12)
	assert.Contains(t, next.Land[1].Note, "mine. As carried on to 2001-05-11: heights read that day are taken as they were read.")

	same, err := holding.CarryOn(holding.Today, "", "paddock,height\nA,16 cm\n") // today's walk alone
	require.NoError(t, err)
	assert.InDelta(t, 0.16, same.Land[0].Height.Metres(), 1e-12)
	assert.InDelta(t, 0.18, same.Land[1].Height.Metres(), 1e-12)
	assert.Equal(t, "mine", same.Land[1].Note)
}

// TestReadingsKeepWhatIsDue: a reading over a part of ground that was opened changes what
// stands there, and leaves what is kept for followers, by the length on either side of its
// border, stays and fronts.
func TestReadingsKeepWhatIsDue(t *testing.T) {
	holding := byHand(t, 5)
	today := dateOf(t, "2026-04-12")
	log := logOf(plan(t, holding), today, false)
	reckoned, err := holding.CarryOn(today, log, "")
	require.NoError(t, err)
	read, err := holding.CarryOn(today, log, "paddock,height (cm),from (m),to (m)\nlane,18,15,30\n")
	require.NoError(t, err)
	var told []string
	for _, s := range read.Land[0].Stretches {
		of := fmt.Sprintf("to %.6g m: %.4g cm", s.To.Metres(), 100*s.Height.Metres())
		for _, d := range s.Due {
			of += fmt.Sprintf(", %s %s %.4g kg", d.Group, d.Date, float64(d.Eat))
		}
		told = append(told, of)
	}
	assert.Equal(t, []string{ // the ewe's 6 kg on 20 m
		"to 15 m: 13.75 cm, ewe 2026-04-12 4.5 kg", "to 20 m: 18 cm, ewe 2026-04-12 1.5 kg",
		"to 30 m: 18 cm, ewe 2026-04-13 3 kg", "to 40 m: 13.75 cm, ewe 2026-04-13 3 kg", "to 200 m: 20 cm",
	}, told)
	assert.Equal(t, reckoned.Rotations, read.Rotations)

	holding, today = byHand(t, 3), dateOf(t, "2026-06-05")
	log = logOf(plan(t, holding), today, false)
	reckoned, err = holding.CarryOn(today, log, "")
	require.NoError(t, err)
	read, err = holding.CarryOn(today, log, "paddock,height (cm)\n"+holding.Land[0].ID+",17\n")
	require.NoError(t, err)
	assert.InDelta(t, 0.17, read.Land[0].Height.Metres(), 1e-12)
	require.NotNil(t, read.Land[0].Stay)
	assert.Equal(t, reckoned.Land[0].Stay, read.Land[0].Stay)
}

// TestHerdGoesOn: what the groups want on every day to come is what they wanted in the
// plan of the farm given, through births, weaning, growth, sales and weights. With a
// day's move from the log or none, animals and dates alone decide it.
func TestHerdGoesOn(t *testing.T) {
	holding := birthsFarm(t)
	weight, none, heavy, head := 62*units.LiveKilogram, 0.0, 50*units.LiveKilogram, 5.0
	holding.Groups[1].Events = []farm.Event{{Date: dateOf(t, "2026-06-20"), Weight: &weight, Head: &head}}
	holding.Groups[2].Events = []farm.Event{{Date: dateOf(t, "2026-09-10"), Weight: &heavy}} // above what they grow to
	holding.Groups[3].Events = []farm.Event{{Date: dateOf(t, "2026-08-01"), Head: &none}}    // sold
	once := plan(t, holding)
	for n := 1; n < len(once.Days); n++ {
		next, err := holding.CarryOn(holding.Today.Add(n), "", "")
		require.NoError(t, err, n)
		text, err := next.JSON(units.Metric)
		require.NoError(t, err)
		next, err = farm.Read(text)
		require.NoError(t, err, n)
		again := plan(t, next)
		require.Len(t, again.Days, len(once.Days)-n)
		for i, day := range again.Days {
			require.InDelta(t, once.Days[n+i].Wanted.Kilograms(), day.Wanted.Kilograms(), 1e-6, "%s from %s on", day.Date, next.Today)
		}
		var births int
		for _, b := range again.Births {
			births++
			require.Contains(t, once.Births, b)
		}
		require.Equal(t, 3, births)
	}
	// what is past is in the group itself
	next, err := holding.CarryOn(dateOf(t, "2026-09-01"), "", "")
	require.NoError(t, err)
	assert.Equal(t, 12.0, next.Groups[2].Head)
	assert.InDelta(t, 27+8*0.2, next.Groups[2].Weight.Kilograms(), 1e-9)
	assert.Empty(t, next.Groups[1].Events)
	assert.Equal(t, 5.0, next.Groups[1].Head)
	assert.InDelta(t, 62, next.Groups[1].Weight.Kilograms(), 1e-9)
	assert.Zero(t, next.Groups[1].Births[0].Young)
}

// TestStageSaidAfterTheBirth: a stage of the document's own that is past outlives the
// one of the birth before it.
func TestStageSaidAfterTheBirth(t *testing.T) {
	holding := birthsFarm(t)
	dry := herd.StageDry
	holding.Groups[0].Events = []farm.Event{{Date: dateOf(t, "2026-06-01"), Stage: &dry}} // the calves were lost
	once := plan(t, holding)
	next, err := holding.CarryOn(dateOf(t, "2026-07-01"), "", "")
	require.NoError(t, err)
	again := plan(t, next)
	assert.InDelta(t, once.Days[77].Wanted.Kilograms(), again.Days[0].Wanted.Kilograms(), 1e-9)
}

// TestSoilGoesOn: the months of the account that are still to come are those of the
// plan before, followed or logged, with rain on record before today, with none, and with none
// in a season that has not begun: the account begins where it began.
func TestSoilGoesOn(t *testing.T) {
	for _, row := range []struct{ months, from, begun string }{
		{`"2001-05": "150 mm", "2001-06": "10 mm"`, "2001-05-01", "2001-05"},
		{`"2001-03": "90 mm"`, "2001-05-01", "2001-03"},
		{`"2001-07": "70 mm"`, "2001-05-01", "2001-05"},
		{`"2001-07": "70 mm"`, "2001-02-10", "2001-02"}, // a season under way
		{`"2001-07": "70 mm"`, "2001-06-10", "2001-05"},
	} {
		holding := readSmall(t, `"note": "ours"`, strings.Replace(account, `"2001-05": "150 mm", "2001-06": "10 mm"`, row.months, 1))
		holding.Season.From = dateOf(t, row.from)
		holding.Rain.Balance.Irrigation["2001-05"] = 5 * units.RainMillimetre
		holding.Rain.Balance.Reference[4] = 60 * units.RainMillimetre // something is left
		holding.Rain.Balance.Reference[5] = 50 * units.RainMillimetre
		once := plan(t, holding)
		logged, err := holding.CarryOn(dateOf(t, "2001-07-10"), "", "")
		require.NoError(t, err)
		followed, err := holding.Followed(dateOf(t, "2001-07-10"))
		require.NoError(t, err)
		for _, next := range []*farm.Farm{logged, followed} {
			assert.Equal(t, row.begun, next.Rain.Balance.Begun)
			again := plan(t, next)
			require.Len(t, again.Soil, 2)
			for i, m := range again.Soil {
				was := once.Soil[2+i]
				assert.InDelta(t, millimetres(was.Store), millimetres(m.Store), 1e-9)
				assert.InDelta(t, float64(was.Growth), float64(m.Growth), 1e-12)
			}
			assert.Equal(t, holding.Rain.Balance.Start, next.Rain.Balance.Start)
		}
		assert.Len(t, holding.Rain.Balance.Irrigation, 2, "the farm given was changed")
		assert.Empty(t, holding.Rain.Balance.Begun, "the farm given was changed")
	}
	for _, begun := range []string{"2001-06", "May 2001", "2001-5"} {
		holding := readSmall(t, `"note": "ours"`, account)
		holding.Rain.Balance.Begun = begun
		assert.ErrorContains(t, holding.Check(), "rain.balance.begun: \""+begun+"\" is no month, or after today's")
	}
}

// TestCutsBeforeTodayAreMade: the cut of a part of a lane, and of a paddock, whose mean
// then counts; what is still to come stays in the document.
func TestCutsBeforeTodayAreMade(t *testing.T) {
	holding := readSmall(t, `"note": "ours"`, `"note": "ours", "cuts": [
	  {"land": "long", "date": "2001-05-09", "stubble": "6 cm", "from": "100 m"},
	  {"land": "plot", "date": "2001-05-09", "stubble": "5 cm", "to": "0.5 m"},
	  {"land": "short", "date": "2001-05-10", "stubble": "6 cm"}]`)
	next, err := holding.CarryOn(dateOf(t, "2001-05-10"), "", "")
	require.NoError(t, err)
	require.Len(t, next.Cuts, 1)
	require.Len(t, holding.Cuts, 3)
	assert.Equal(t, "2001-05-09", next.Land[0].Stretches[1].Grazed.String())
	assert.InDelta(t, 0.06, next.Land[0].Stretches[1].Height.Metres(), 0.004)
	assert.Contains(t, next.Land[0].Note, "cut as written on 2001-05-09")
	assert.Contains(t, next.Feed.Note, "put in what lies there now")
	whole, err := readSmall(t, `"note": "ours"`, `"note": "ours"`).CarryOn(dateOf(t, "2001-05-10"), "", "")
	require.NoError(t, err)
	assert.Empty(t, next.Land[2].Stretches)
	assert.InDelta(t, (whole.Land[2].Height.Metres()+0.05)/2, next.Land[2].Height.Metres(), 0.003) // the half at 5 cm has grown a day
	assert.Equal(t, "2001-05-09", next.Land[2].Grazed.String())
}

// TestBadLogsForTheFarm: what does not fit the land is told with line, column and mend.
func TestBadLogsForTheFarm(t *testing.T) {
	holding, today := readSmall(t, `"note": "ours"`, `"note": "ours"`), dateOf(t, "2001-05-20")
	for row, want := range map[string]string{
		"Lang,2001-05-02,2001-05-03,400,1,0,20,,":      `line 2, column 1 (paddock): "Lang" is the id of no land; perhaps "long"; one of: long, short, plot`,
		"barn,2001-05-02,2001-05-03,400,1,0,20,,":      `"barn" is the id of no land; one of: long`,
		"long,2001-05-02,2001-05-03,400,1,,,,":         `(area (m2)): "0.04 ha" is not the whole of "long", which is 0.6 ha (1.48 ac); the columns from and to tell where along the lane they were`,
		"long,2001-05-02,2001-05-03,400,1,0,30,,":      `(area (m2)): "0.04 ha" is not that of the place, 0.06 ha (0.148 ac) from 0 m (0 ft) to 30 m (98.4 ft)`,
		"long,2001-05-02,2001-05-03,400,1,290,310,,":   `(to (m)): "310 m (1,017 ft)" is beyond the lane; at most its length, 300 m (984 ft)`,
		"long,2001-05-02,2001-05-03,400,1,300,310,,":   `(from (m)): "300 m (984 ft)" is not within the lane`,
		"long,2001-05-02,2001-05-03,400,1,20,10,,":     `(to (m)): "10" is not beyond from`,
		"long,2001-05-02,2001-05-03,400,1,20,0,,":      `(to (m)): "0" is not beyond from`,
		"long,2001-05-02,2001-05-03,400,1,twenty,40,,": `(from (m)): "twenty" is not a place along a lane`,
		"long,2001-05-02,2001-05-03,400,1,-5,15,,":     `(from (m)): "-5" is not a place`,
		"long,2001-05-02,2001-05-03,400,1,0,20,0,":     `(left (m)): "0" is not a height of grass; a height above 0`,
		"long,2001-05-02,2001-05-03,400,1,0,20,8,":     `is above the ceiling of "long"`,
		"plot,2001-05-02,2001-05-03,2000,1,0,20,,":     `"plot" is a paddock, grazed whole; from and to empty`,
		"plot,2001-05-02,2001-05-03,1000,1,,,,":        `"plot", which is 0.2 ha (0.494 ac) and grazed whole; a lane`,
		"plot,2001-05-03,2001-05-02,2000,1,,,,":        "is before they came",
		"long,2001-05-02,2001-05-03,400,1,0,20,,pigs":  `(group): "pigs" is the id of no group; one of: milkers, dry ewes, ganders; empty where nobody knows`,
		"long,2001-05-02,2001-05-03,400,1,0,20,,miker": `"miker" is the id of no group; perhaps "milkers"`,
	} {
		_, err := holding.CarryOn(today, handHead+row+"\n", "")
		holdsLogError(t, err, "log, line 2", want)
	}
	for readings, want := range map[string]string{
		"paddock,height\nlong,12\n":                                        `line 2, column 2 (height): "12" is not a height of grass; a height above 0, its unit in the heading`,
		"paddock,height (in)\nlung,5\n":                                    `perhaps "long"`,
		"paddock,height (in)\n,5\n":                                        `"" is empty; the name of the land`,
		"paddock,height (in)\nlong,50\n":                                   "above the ceiling at which growth ends; at most ",
		"paddock,height (in)\nlong,5\nlong,6\n":                            `line 3, column 1 (paddock): "long" is read twice in one place`,
		"paddock,height (in),from (m),to (m)\nlong,5,0,20\nlong,6,10,30\n": "is read twice in one place",
		"paddock,height (in),from (m),to (m)\nplot,5,0,20\n":               "from and to empty",
		"paddock,height (in),from (m),to (m)\nshort,5,0,201\n":             `(to (m)): "201 m (659 ft)" is beyond the lane`,
		"paddock,heigth (in)\nlong,5\n":                                    `names no column height; a header such as paddock, height (in), from (ft), to (ft)`,
		"# nothing\n":                                                      "is empty; begin with the header",
		"paddock,height (in)\nlong,\"5\n":                                  "a quote within it twice",
		strings.Repeat("x", 4<<20+1):                                       "bytes are too many",
	} {
		_, err := holding.CarryOn(today, "", readings)
		holdsLogError(t, err, "readings", want)
	}
	for day, want := range map[string]string{"2001-04-30": "today: 2001-04-30 is before the day of the farm's heights", "2001-09-01": "is after the season's end"} {
		_, err := holding.CarryOn(dateOf(t, day), "", "")
		assert.ErrorContains(t, err, want)
	}
	_, err := (*farm.Farm)(nil).CarryOn(today, "", "")
	assert.ErrorContains(t, err, "is no document")
	_, err = holding.CarryOn(today, "x", "")
	assert.ErrorContains(t, err, `names no column paddock`)
}

func holdsLogError(t *testing.T, err error, where, want string) {
	t.Helper()
	var bad *document.Error
	require.Error(t, err, want)
	require.True(t, errors.As(err, &bad), err.Error())
	assert.True(t, strings.HasPrefix(err.Error(), where), err.Error())
	assert.ErrorContains(t, err, want)
	assert.NotContains(t, err.Error(), "\n")
	assert.Less(t, len(err.Error()), 400)
}

// TestFrontInTheDocument: strips go on where the document says, in the middle of a
// lane; a border of the stretches as near as 2 cm is the front.
func TestFrontInTheDocument(t *testing.T) {
	holding := readSmall(t, `"shortest_rest": "21 days"`, `"shortest_rest": "21 days", "front": {"land": "short", "at": "120 m"}`)
	first := plan(t, holding).Moves[0]
	assert.Equal(t, "short 120", fmt.Sprint(first.Land, " ", first.From.Metres()))
	assert.Equal(t, 1, first.Pass)
	day := holding.Today
	holding.Land[1].Grazed, holding.Land[1].Height = nil, 0
	holding.Land[1].Stretches = []farm.Stretch{{To: 120.015, Height: 0.08, Grazed: &day}, {To: 200, Height: 0.18}}
	first = plan(t, holding).Moves[0]
	assert.Equal(t, "short 120.015", fmt.Sprint(first.Land, " ", first.From.Metres()))
	for front, says := range map[string]string{
		`{"land": "plot", "at": "1 m"}`:    "rotations[0].front.land: \"plot\" is no land of the rotation",
		`{"land": "short", "at": "200 m"}`: "rotations[0].front.at: 200 m (656 ft) is no place within the lane",
		`{"land": "short", "at": "0 m"}`:   "is no place within the lane",
		`{"land": "short"}`:                "rotations[0].front.at",
	} {
		_, err := farm.Read([]byte(changed(t, `"shortest_rest": "21 days"`, `"shortest_rest": "21 days", "front": `+front)))
		assert.ErrorContains(t, err, says)
	}
	_, err := farm.Read([]byte(changed(t, `"shortest_rest": "14 days"`, `"shortest_rest": "14 days", "front": {"land": "plot", "at": "1 m"}`)))
	assert.ErrorContains(t, err, "is a paddock, grazed whole")
}

// FuzzCarryOn carries a farm on by anything: it does not panic, what is wrong is one
// short line, and what comes out is a farm that can be planned.
func FuzzCarryOn(f *testing.F) {
	holding, err := farm.Read([]byte(smallFarm))
	require.NoError(f, err)
	f.Add(handHead+"long,2001-05-02,2001-05-03,400,1,0,20,0.1,milkers\nplot,2001-05-02,2001-05-09,2000,1,,,,\n", "paddock,height (cm)\nshort,12\n", 9)
	f.Fuzz(func(t *testing.T, log, readings string, days int) {
		next, err := holding.CarryOn(holding.Today.Add(days%200), log, readings)
		if err != nil {
			if strings.Contains(err.Error(), "\n") || len(err.Error()) > 500 {
				t.Fatalf("%q", err)
			}
			return
		}
		require.NoError(t, next.Check())
		_, err = next.Plan()
		require.NoError(t, err)
	})
}

// It is 10 May. The ewes were on the first 40 m of the lane, and the grass has grown.
// What stands there, and where do they go on?
func ExampleFarm_CarryOn() {
	holding, err := farm.Read([]byte(`{
	  "version": 1, "today": "2001-05-01", "season": {"from": "2001-05-01", "to": "2001-07-31"},
	  "land": [{"id": "lane", "width": "25 m", "length": "120 m", "pasture": "mixed-pasture", "height": "20 cm"}],
	  "groups": [{"id": "ewes", "class": "ewe", "head": 30}],
	  "rotations": [{"land": ["lane"], "groups": [{"group": "ewes"}], "leave": "8 cm", "turn_in": "15 cm", "shortest_rest": "21 days"}]
	}`))
	if err != nil {
		fmt.Println(err)
		return
	}
	log := "paddock,in,out,area (m2),animals (AU),from (m),to (m),left (cm)\n" +
		"lane,2001-05-01,2001-05-05,500,4,0,20,9\n" +
		"lane,2001-05-05,2001-05-10,500,4,20,40,8\n"
	today, _ := units.ParseDate("2001-05-10")
	holding, err = holding.CarryOn(today, log, "")
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, s := range holding.Land[0].Stretches {
		fmt.Printf("to %s: %s\n", s.To.In(units.Metric), s.Height.In(units.Metric))
	}
	plan, err := holding.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%s: from %s on\n", plan.Moves[0].Date, plan.Moves[0].From.In(units.Metric))
	// Output:
	// to 20 m: 12.3 cm
	// to 40 m: 8.48 cm
	// to 120 m: 24.3 cm
	// 2001-05-10: from 40 m on
}
