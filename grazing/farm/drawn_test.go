package farm

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/soum/forage"
	"example.org/soum/herd"
	"example.org/soum/units"
)

// DrawnFarms is how many farms there are: those of seeds 1 to 300.
const DrawnFarms = 300

// drawing is a farm under way, of the size and the kinds that real ones have.
type drawing struct {
	*rand.Rand
	farm  *Farm
	row   forage.Pasture
	mid   bool // it is planned anew in mid-season
	shape int  // 0: lanes, 1: paddocks, 2: some of both
}

// Drawn makes a farm of 1 to 20 acres, on 1 to 10 lands, with 1 to 4 groups of stock in
// the order of their need, stocked at 50 to 150 % of the textbook sum. The same seed makes
// the same farm.
func Drawn(t testing.TB, seed int) *Farm {
	t.Helper()
	rows := forage.Pastures()
	d := &drawing{Rand: rand.New(rand.NewPCG(uint64(seed), 15)), farm: &Farm{Version: 1, Units: units.Metric}, row: rows[seed%len(rows)]}
	d.mid, d.shape = d.once(4), d.IntN(4)
	d.season()
	d.land()
	d.groups()
	d.rotations()
	d.stock(t)
	if d.once(3) {
		d.births()
	}
	if d.once(6) {
		d.cut()
	}
	d.farm.Feed = Feed{Hay: units.FreshFeed(d.between(0, 4000)), Waste: 0.13, DryMatter: 0.86}
	require.NoError(t, d.farm.Check(), "seed %d", seed)
	return d.farm
}

func (d *drawing) once(in int) bool { return d.IntN(in) == 0 }

func (d *drawing) between(low, high float64) float64 { return low + (high-low)*d.Float64() }

// season begins in the first half of the first month that grows, or the one after it.
func (d *drawing) season() {
	first := slices.IndexFunc(d.row.Shares[:], func(share units.Fraction) bool { return share > 0 })
	from, _ := units.NewDate(2026, time.Month(first+1+d.IntN(2)), 1+d.IntN(15))
	to, _ := units.NewDate(2026, 10, 1+d.IntN(31))
	d.farm.Season.From, d.farm.Season.To, d.farm.Today = from, to, from
	if d.mid {
		d.farm.Today = from.Add(30 + d.IntN(60))
	}
}

// land is of one row; lanes are 15 to 45 m wide, or square, paddocks of what is left.
func (d *drawing) land() {
	area, count := units.Area(d.between(1, 20)*4046.8564224), 1+d.IntN(10)
	sizes, sum := make([]float64, count), 0.0
	for i := range sizes {
		sizes[i] = d.between(1, 2)
		sum += sizes[i]
	}
	for i, size := range sizes {
		l := Land{ID: fmt.Sprint("field ", i+1), Pasture: forage.PastureRow{Name: d.row.Name}}
		of := units.Area(float64(area) * size / sum)
		if d.shape == 0 || d.shape == 3 && d.once(2) {
			l.Width = units.Length(min(math.Sqrt(float64(of)), d.between(15, 45)))
			l.Length = units.Length(float64(of) / float64(l.Width))
		} else {
			l.Area = of
		}
		d.stand(&l)
		d.farm.Land = append(d.farm.Land, l)
	}
}

// stand sets what grows on a land: in spring something about the height to be left up to
// the turn-in height, in mid-season by the days since it was grazed, one after the other.
func (d *drawing) stand(l *Land) {
	leave, turnIn := d.row.Leave.At(units.Middle), d.row.TurnIn.At(units.Middle)
	at := d.between(0.2, 1.2)
	if d.mid {
		at = d.between(0, 1.3)
		day := d.farm.Today.Add(-1 - int(40*at/1.3))
		l.Grazed = &day
	}
	l.Height = min(leave+units.Height(at)*(turnIn-leave), d.row.Ceiling*9/10)
}

// drawnKinds are the classes of a rotation in order: highest need, other ruminants and
// horses, pigs, birds.
var drawnKinds = [][]string{
	{"dairy-cow", "dairy-goat", "dairy-ewe", "growing-lamb", "growing-cattle", "weaned-calf"},
	{"suckler-cow", "ewe", "meat-goat", "horse", "donkey", "alpaca", "bull"},
	{"sow", "growing-pig"},
	{"laying-hen", "turkey", "duck", "goose", "broiler"},
}

// groups are 1 to 4, of kinds that go one after the other.
func (d *drawing) groups() {
	kinds := d.Perm(len(drawnKinds))[:1+d.IntN(4)]
	slices.Sort(kinds)
	if kinds[0] > 1 { // somebody eats grass
		kinds[0] = d.IntN(2)
	}
	for _, kind := range kinds {
		class := drawnKinds[kind][d.IntN(len(drawnKinds[kind]))]
		d.farm.Groups = append(d.farm.Groups, Group{ID: class, Class: herd.ClassRow{Name: class}, Head: 1})
	}
}

// rotations are one, or two with land and stock of their own.
func (d *drawing) rotations() {
	lands, groups := len(d.farm.Land), len(d.farm.Groups)
	parts := [][4]int{{0, lands, 0, groups}}
	if lands > 3 && groups > 1 && d.once(3) {
		half, first := lands/2, 1+d.IntN(groups-1)
		parts = [][4]int{{0, half, 0, first}, {half, lands, first, groups}}
	}
	for _, part := range parts {
		r := Rotation{ShortestRest: units.Days(14 + d.IntN(22)), MovesADay: 1}
		if d.once(4) {
			r.MovesADay = 2
		}
		for _, l := range d.farm.Land[part[0]:part[1]] {
			r.Land = append(r.Land, l.ID)
		}
		behind := units.Days(0)
		for i, g := range d.farm.Groups[part[2]:part[3]] {
			if i > 0 {
				behind += units.Days(d.IntN(3))
			}
			r.Groups = append(r.Groups, Member{Group: g.ID, Behind: behind})
		}
		d.farm.Rotations = append(d.farm.Rotations, r)
	}
}

// stock sets the head: birds and pigs beside, and of the others so many that they come to
// 50 to 150 % of the textbook sum.
func (d *drawing) stock(t testing.TB) {
	p, err := d.farm.Plan()
	require.NoError(t, err)
	wanted, eaters := float64(p.Verdict.Textbook)*d.between(0.5, 1.5), 0
	for i := range d.farm.Groups {
		if class, _ := d.farm.Groups[i].class(); class.Need != herd.NeedRooting && class.Need != herd.NeedGleaning {
			eaters++
		}
	}
	for i := range d.farm.Groups {
		g := &d.farm.Groups[i]
		class, _ := g.class()
		each, err := herd.AnimalUnits(class.Weight)
		require.NoError(t, err)
		part := wanted / float64(eaters)
		if class.Need == herd.NeedRooting || class.Need == herd.NeedGleaning {
			part = wanted * d.between(0.02, 0.15)
		}
		g.Head = max(1, math.Round(part/float64(each)))
	}
}

// births are of the first group that can have them; the young are weaned on a later day,
// and half of the time go into a group of their own, behind the others.
func (d *drawing) births() {
	for i := range d.farm.Groups {
		g := &d.farm.Groups[i]
		class, _ := g.class()
		_, milk := class.IntakeAt(herd.StageLactating)
		_, dry := class.IntakeAt(herd.StageDry)
		if milk != nil || dry != nil {
			continue
		}
		born := d.farm.Today.Add(d.IntN(70))
		weaned := born.Add(40 + d.IntN(60))
		g.Stage, g.Births = herd.StageDry, []Birth{{Date: &born, Weaned: &weaned}}
		young := map[herd.Kind]string{herd.Sheep: "growing-lamb", herd.Cattle: "weaned-calf", herd.Goats: "growing-kid"}[class.Kind]
		if young == "" || !d.once(2) || slices.ContainsFunc(d.farm.Groups, func(g Group) bool { return g.ID == young }) {
			return
		}
		g.Births[0].Young, g.Births[0].Into = g.Head, young
		d.farm.Groups = append(d.farm.Groups, Group{ID: young, Class: herd.ClassRow{Name: young}})
		r := &d.farm.Rotations[0]
		r.Groups = append(r.Groups, Member{Group: young, Behind: r.Groups[len(r.Groups)-1].Behind})
		return
	}
}

// cut takes the hay of one land.
func (d *drawing) cut() {
	l := &d.farm.Land[d.IntN(len(d.farm.Land))]
	d.farm.Cuts = []Cut{{Land: l.ID, Date: min(d.farm.Today.Add(20+d.IntN(50)), d.farm.Season.To), Stubble: d.row.Leave.At(units.Middle)}}
	loss := units.Fraction(0.15)
	d.farm.Feed.Loss = &loss
}
