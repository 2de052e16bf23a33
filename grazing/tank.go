package grazing

import (
	"math"
	"slices"

	"example.org/soum/units"
)

// WalkRow is a row of the table of WalkLimit.
type WalkRow struct {
	// By is whose figure it is.
	By WalkSource `json:"by"`
	// Distance is the printed span of the walk to water.
	Distance units.Span[units.Length] `json:"distance"`
	// When says what it holds for.
	When string `json:"when"`
	// Source is a key of SOURCES.md with the place.
	Source string `json:"source"`
	// Mark is how the figure was come by.
	Mark string `json:"mark"`
}

// WalkSource is whose figure of the walk to water is used.
type WalkSource int

// The sources of the walk to water.
const (
	WalkKentucky   WalkSource = iota + 1 // no more than this
	WalkEven                             // pasture used evenly between these
	WalkMissouri                         // no more than this
	WalkFarmPress                        // no more than this
	WalkDairy                            // cows in milk
	WalkOther                            // other stock, the same plan as for dairy cows
	WalkUnused                           // beyond this less than a fifth was used
	WalkRangeFlat                        // range, level
	WalkRangeRough                       // range, rough
)

// WalkRows gives the table of WalkLimit, as a copy.
//
// Check: TestWalkRows
//
// Source: ours: a collection, each figure with the source and mark on its row
func WalkRows() []WalkRow { return slices.Clone(walkRows) }

// WalkLimit returns the longest walk to water by a source.
//
// Table: the printed distance
//
// Where:
//   - by: whose figure
//   - place in %: where in the printed span, 0 its low end and 100 its high; 0 to 100
//
// Note: the sources run from 300 ft to 1,000 ft on pasture, and to 2 miles on
// level range, because they ask different things: milk, even grazing, or whether
// the animals get there at all. In hot weather and for young stock take the least.
// Within 200 ft of water pasture is used very hard [KENTUCKY-WATER]. Stock without
// water die: herd.Water and herd.PeakWater tell how much.
//
// Source: KENTUCKY-WATER; MISSOURI-WATER-PRESS; HFG-WATER; NRCS-PLAN-WATER; FSRC-WATER
func WalkLimit(by WalkSource, place units.Fraction) (units.Length, error) {
	var span units.Span[units.Length]
	for i := range walkRows {
		if walkRows[i].By == by {
			span = walkRows[i].Distance
		}
	}
	distance := span.Low + (span.High-span.Low)*units.Length(place)
	return units.Answer(&formulaWalkLimit, distance, float64(by), float64(place))
}

// WaterVisit is how stock come to drink.
type WaterVisit int

// The ways of coming to drink.
const (
	VisitSingly WaterVisit = iota + 1 // one by one, through the day
	VisitEither                       // between the two: watch them
	VisitHerd                         // all at once
)

// VisitOf tells how stock come to water by its distance: one by one up to 600 ft,
// as a herd beyond 1,000 ft; between is open.
//
// The source says one by one under 600 to 900 ft, and between 900 and 1,000 ft
// nothing: from 600 ft on watch them, and build for the herd.
//
// Table: one by one to 600 ft, as a herd beyond 1,000 ft, open between
//
// Where:
//   - distance in ft: way from the farthest grass to the water; >= 0
//
// Source: OHIO-ANR-12
func VisitOf(distance units.Length) (WaterVisit, error) {
	if _, err := units.Answer(&formulaVisitOf, distance, float64(distance)); err != nil {
		return 0, err
	}
	switch {
	case distance <= visitSingly:
		return VisitSingly, nil
	case distance <= visitHerd:
		return VisitEither, nil
	}
	return VisitHerd, nil
}

// The distances of VisitOf.
const (
	visitSingly = 600 * units.Foot
	visitHerd   = 1000 * units.Foot
)

// TankRule is a rule of the store in a tank by how it fills.
type TankRule int

// The rules of tanks.
const (
	TankHour     TankRule = iota + 1 // fills again within an hour: 2 gal a head
	TankHours                        // fills again within four hours: a quarter of the day's need
	TankSlow                         // takes longer: the need of a day
	TankSun                          // solar or unsure supply: the need of two days
	TankUnsure                       // unsure supply, South Dakota: the need of three days
	TankHerdOhio                     // a herd comes at once, Ohio: at least a quarter of the day's need, filled again in an hour
)

// TankVolume returns the water that a tank should hold.
//
// Table: head times 2 gal, or times what one drinks in a day and the share of the
// rule: a quarter, one, two or three days
//
// Where:
//   - rule: how the tank fills
//   - head: animals that drink from it; >= 0
//   - each in gal/day: what one of them drinks in a day, as of herd.Drinking and herd.PeakWater; >= 0
//
// Note: a float set wrong, a frozen pipe or a broken pump leaves the tank as all
// there is: look every day, and twice in heat. Ask a vet or an adviser how long
// your stock can wait; in heat it is hours.
//
// Source: USDA-TANK-SHEET; SD2006-1 three days; OHIO-ANR-12 a herd at once
func TankVolume(rule TankRule, head float64, each units.WaterRate) (units.Volume, error) {
	volume := units.Volume(head) * tankHourEach
	if rule > TankHour && int(rule) <= len(tankDays) {
		volume = units.Volume(head * float64(each) * tankDays[rule-1])
	}
	return units.Answer(&formulaTankVolume, volume, float64(rule), head, float64(each))
}

// FillRate returns the flow that refills what was drunk within a time.
//
// Formula: volume / time
//
// Where:
//   - volume in gal: what is to be refilled, a day's need or a tank; >= 0
//   - time in h: how soon; > 0
//
// Note: four hours for the need of a day where stock come one by one, one hour for
// the tank where they come as a herd [OHIO-ANR-12]; where nothing is stored, 2 gal
// a minute at each place to drink [USDA-TANK-SHEET]. 1,440 gal a day is one a
// minute.
//
// Source: OHIO-ANR-12; definition: volume over time
func FillRate(volume units.Volume, time units.Days) (units.WaterRate, error) {
	return units.Answer(&formulaFillRate, units.WaterRate(float64(volume)/float64(time)), float64(volume), float64(time))
}

// TankEdge returns the edge of tank that a share of the herd needs to drink at
// once.
//
// Formula: head * share * each
//
// Where:
//   - head: animals in the herd; >= 0
//   - share in %: of them that drink at once; 0 to 100; 2 to 10 [OHIO-ANR-12]
//   - each in ft: edge for one of them; >= 0
//
// Note: 2 to 4 % where they come one by one, 5 to 10 % where they come as a herd,
// at 2 ft a head of cattle. Timid animals drink last: more edge is kinder.
//
// Source: OHIO-ANR-12
func TankEdge(head float64, share units.Fraction, each units.Length) (units.Length, error) {
	return units.Answer(&formulaTankEdge, units.Length(head*float64(share)*float64(each)), head, float64(share), float64(each))
}

// RoundTank returns the water in a round tank.
//
// Formula: 3.14 * pow(radius, 2) * depth
//
// Where:
//   - radius in in: half the width inside; >= 0
//   - depth in in: of the water; >= 0
//
// Note: the source's 3.14 is kept; the gallon of its 231 cubic inches is the unit.
//
// Source: KSU-ROUND-TANK
func RoundTank(radius, depth units.Length) (units.Volume, error) {
	volume := units.Volume(3.14 * math.Pow(float64(radius), 2) * float64(depth))
	return units.Answer(&formulaRoundTank, volume, float64(radius), float64(depth))
}
