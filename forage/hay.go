package forage

import (
	"fmt"
	"math"
	"slices"

	"example.org/soum/units"
)

// WasteRule is how a share of waste is reckoned in.
type WasteRule int

// The rules. At 20 % the first hauls 125 for 100 eaten, the second 120.
const (
	WasteOfHauled WasteRule = iota + 1 // the share is of what is hauled, as trials measure it
	WasteOnTop                         // the share is of what is eaten, put on top of it
)

// HayToHaul returns the feed as it lies that has to be put out so that so much dry
// matter is eaten.
//
// Method: eaten ÷ content, then ÷ (1 − waste) where the waste is a share of what is
// hauled, or × (1 + waste) where it is put on top of what is eaten
//
// Where:
//   - eaten in lb: dry matter to be eaten; >= 0
//   - content in %: dry matter of the feed as it lies; > 0 and <= 100
//   - waste in %: share of waste, 0 for none; >= 0 and < 100
//   - rule: how the share is reckoned in
//
// Note: losses in store come before: what goes into the barn is more still.
//
// Source: AGRILIFE-BALE dry matter to feed as it lies; KLAMATH-1981 the same;
// OSU-HAY waste of what is hauled; ALABAMA-HAY waste on top
func HayToHaul(eaten units.DryMatter, content, waste units.Fraction, rule WasteRule) (units.FreshFeed, error) {
	feed := float64(eaten) / float64(content)
	if rule == WasteOnTop {
		feed *= 1 + float64(waste)
	} else {
		feed /= 1 - float64(waste)
	}
	return units.Answer(&formulaHayToHaul, units.FreshFeed(feed), float64(eaten), float64(content), float64(waste), float64(rule))
}

// HayDays returns how long a store of hay feeds a group.
//
// Formula: store * (1 - lost) * content * (1 - waste) / demand
//
// Where:
//   - store in lb: hay as it went into store; >= 0
//   - lost in %: share lost in store; 0 to 100
//   - content in %: dry matter of the hay as it lies; > 0 and <= 100
//   - waste in %: share wasted at feeding of what is hauled; 0 to 100
//   - demand in lb/day: dry matter that the group eats in a day; > 0
//
// Note: StorageLoss and FeederWaste hold the printed shares.
//
// Source: definition: what is left of the store over what is eaten in a day
func HayDays(store units.FreshFeed, lost, content, waste units.Fraction, demand units.Demand) (units.Days, error) {
	days := float64(store) * float64(1-lost) * float64(content) * float64(1-waste) / float64(demand)
	return units.Answer(&formulaHayDays, units.Days(days), float64(store), float64(lost), float64(content), float64(waste), float64(demand))
}

// Bales returns the number of bales that hold so much feed, a part of a bale with
// them.
//
// Formula: feed / bale
//
// Where:
//   - feed in lb: feed as it lies; >= 0
//   - bale in lb: weight of one bale; > 0
//
// Note: bales of one size can differ by 200 to 300 lb (AGRILIFE-BALE): weigh a few.
//
// Source: OHIO-HAY-2010; ALABAMA-HAY
func Bales(feed, bale units.FreshFeed) (float64, error) {
	return units.Answer(&formulaBales, float64(feed/bale), float64(feed), float64(bale))
}

// BaleVolume returns the volume of a round bale.
//
// Formula: 3.141592653589793 / 4 * diameter * diameter * width
//
// Where:
//   - diameter in ft: across the round face; > 0
//   - width in ft: from face to face; > 0
//
// Source: AGRILIFE-BALE
func BaleVolume(diameter, width units.Length) (units.Volume, error) {
	volume := units.Volume(math.Pi / 4 * float64(diameter) * float64(diameter) * float64(width))
	return units.Answer(&formulaBaleVolume, volume, float64(diameter), float64(width))
}

// BaleWeight returns the weight of a round bale as it lies.
//
// Formula: 3.141592653589793 / 4 * diameter * diameter * width * density
//
// Where:
//   - diameter in ft: across the round face; > 0
//   - width in ft: from face to face; > 0
//   - density in lb/ft³: how tight the bale is; > 0
//
// Note: 11.21 lb/ft³ is that of a bale of 1,100 lb, 5 by 5 ft; loose bales are
// lighter. A round bale can weigh as much as a bull and rolls: never stand below one
// on a slope.
//
// Source: AGRILIFE-BALE; the caution is from memory
func BaleWeight(diameter, width units.Length, density units.FeedDensity) (units.FreshFeed, error) {
	weight := units.FreshFeed(math.Pi / 4 * float64(diameter) * float64(diameter) * float64(width) * float64(density))
	return units.Answer(&formulaBaleWeight, weight, float64(diameter), float64(width), float64(density))
}

// OuterShare returns the share of a round bale that lies within a layer of its
// outside, where the weather spoils it first. The faces are left out.
//
// Method: 1 − ((diameter − 2 layer) ÷ diameter)²
//
// Where:
//   - diameter in in: across the round face; > 0
//   - layer in in: how deep the layer is, up to the middle; >= 0
//
// Errors: a domain error where the layer is deeper than half of the diameter
//
// Source: AGRILIFE-BALE prints one such share, 24 % for 4 in of a 5 ft bale, and
// the formula gives 24.9; the formula: definition: one circle less another
func OuterShare(diameter, layer units.Length) (units.Fraction, error) {
	inner := float64((diameter - 2*layer) / diameter)
	if inner < 0 {
		return units.AnswerWithin(&formulaOuterShare, 1, units.Between(0, float64(diameter)/2, ""), units.Fraction(0), float64(diameter), float64(layer))
	}
	return units.Answer(&formulaOuterShare, units.Fraction(1-float64(inner*inner)), float64(diameter), float64(layer))
}

// Storage is how hay is kept.
type Storage int

// The ways to keep hay.
const (
	StoredInside            Storage = iota + 1 // under a roof, the floor not told
	StoredInsideOnRock                         // under a roof, on crushed rock
	StoredInsideOnGround                       // under a roof, on bare ground
	StoredCoveredOnPad                         // outside, covered, on stone or a pad
	StoredCoveredOnGround                      // outside, covered, on the ground
	StoredUncoveredOnPad                       // outside, uncovered, on stone or a pad
	StoredUncoveredOnGround                    // outside, uncovered, on the ground
	StoredWrapped                              // wrapped in plastic
)

// StorageSource is whose figure of what is lost in store is used.
type StorageSource int

// The sources of losses in store.
const (
	StorageByKentucky      StorageSource = iota + 1 // University of Kentucky 2012
	StorageByIowa                                   // Iowa State
	StorageByWisconsin                              // University of Wisconsin, up to 9 months
	StorageByWisconsinLong                          // University of Wisconsin, 12 to 18 months
	StorageByPurdue                                 // Purdue, told as what is kept
)

// StorageRow is a row of the table of losses in store.
type StorageRow struct {
	// Kept is how the hay is kept.
	Kept Storage `json:"kept"`
	// By is whose figure it is.
	By StorageSource `json:"by"`
	// Loss is the share of the dry matter that is lost; for Purdue, of the weight.
	Loss units.Span[units.Fraction] `json:"loss"`
	// AndMore tells that print has no upper end.
	AndMore bool `json:"and_more"`
	units.Printed
}

// StorageRows gives the table of StorageLoss, as a copy.
//
// Check: TestStorageRows
//
// Source: KENTUCKY-HAY, ISU-STORAGE, WISC-STORAGE, PURDUE-STORAGE, as the row says
func StorageRows() []StorageRow { return slices.Clone(storageRows) }

// StorageLoss gives one end of the printed share of hay that is lost in store.
//
// The sources differ: uncovered on the ground 5 to 20 % is lost in nine months in
// Wisconsin, 25 to 35 % in Iowa, 20 % and more in Kentucky, over half in its worst
// case. Mouldy hay can make stock sick and cast their young: leave it out of the
// sum and out of the rack. Hay baled too wet heats and can burn the barn down: feel
// and measure it in the first weeks.
//
// Where:
//   - kept: how
//   - by: whose figure
//   - end: of the printed span
//
// Errors: a *units.ParseError that lists the sources with a figure
//
// Note: where print has no upper end, the high end is the printed lower one. That
// damp hay burns, and what mould does, is from memory.
//
// Source: KENTUCKY-HAY, ISU-STORAGE, WISC-STORAGE, PURDUE-STORAGE
func StorageLoss(kept Storage, by StorageSource, end units.End) (units.Fraction, error) {
	arguments := [...]float64{float64(kept), float64(by), float64(end)}
	row := rowOf(storageRows, func(r *StorageRow) bool { return r.Kept == kept && r.By == by })
	if row == nil {
		sources := known(storageRows, func(r *StorageRow) bool { return r.Kept == kept }, func(r *StorageRow) string { return r.By.String() })
		return noRow[units.Fraction](&formulaStorageLoss, "by", by.String(), fmt.Sprintf("has no loss of hay kept %q", kept), sources, arguments[:]...)
	}
	return units.Answer(&formulaStorageLoss, row.Loss.At(end), arguments[:]...)
}

// Feeder is what hay is fed in.
type Feeder int

// The feeders for round bales.
const (
	FeederCone    Feeder = iota + 1 // a ring with a cone that holds the bale off the ground
	FeederRing                      // an open ring
	FeederTrailer                   // a trailer
	FeederCradle                    // a cradle
	FeederSheeted                   // a ring with a sheeted bottom
	FeederPoly                      // a ring of plastic pipe
	FeederNone                      // no feeder
)

// FeederSource is whose trial of waste at feeding is used.
type FeederSource int

// The trials of waste at feeding.
const (
	FeederByBuskirk  FeederSource = iota + 1 // Buskirk and others 2003
	FeederByOklahoma                         // Oklahoma State
	FeederByBell                             // Bell and Martz 1973
)

// FeederRow is a row of the table of waste at feeding.
type FeederRow struct {
	// Feeder is what the hay is fed in.
	Feeder Feeder `json:"feeder"`
	// By is whose trial it is.
	By FeederSource `json:"by"`
	// Waste is the share of what is hauled.
	Waste units.Fraction `json:"waste"`
	units.Printed
}

// FeederRows gives the table of FeederWaste, as a copy.
//
// Check: TestFeederRows
//
// Source: ILL-FEEDERS
func FeederRows() []FeederRow { return slices.Clone(feederRows) }

// FeederWaste gives the share of hauled hay that cattle waste at a feeder, by one
// trial.
//
// The trials differ: an open ring wasted 6.1 % in one and 20.5 % in another, and 6
// to 20 % or more is the general range. Horned stock and calves can be caught in a
// feeder: look at what is bought.
//
// Where:
//   - feeder: what the hay is fed in
//   - by: whose trial
//
// Errors: a *units.ParseError that lists the trials with a figure of the feeder
//
// Note: the caution is from memory, without a source read.
//
// Source: ILL-FEEDERS
func FeederWaste(feeder Feeder, by FeederSource) (units.Fraction, error) {
	row := rowOf(feederRows, func(r *FeederRow) bool { return r.Feeder == feeder && r.By == by })
	if row == nil {
		sources := known(feederRows, func(r *FeederRow) bool { return r.Feeder == feeder }, func(r *FeederRow) string { return r.By.String() })
		return noRow[units.Fraction](&formulaFeederWaste, "by", by.String(), fmt.Sprintf("has no waste of the feeder %q", feeder), sources, float64(feeder), float64(by))
	}
	return row.Waste, nil
}

// WasteShare returns the share of the hay that disappears which is waste.
//
// Formula: wasted / gone
//
// Where:
//   - wasted in lb/day: hay wasted by one animal in a day; 0 to gone
//   - gone in lb/day: hay that disappears for one animal in a day; > 0
//
// Note: what is eaten is the rest. The printed shares are means of single animals and
// differ from this by up to half a point.
//
// Source: ILL-FEEDERS
func WasteShare(wasted, gone units.Demand) (units.Fraction, error) {
	return units.Answer(&formulaWasteShare, units.Fraction(wasted/gone), float64(wasted), float64(gone))
}

// RainedGrass is a grass whose loss under rain was measured.
type RainedGrass int

// The grasses rained on.
const (
	RainedBermudagrass RainedGrass = iota + 1 // bermudagrass
	RainedOrchardgrass                        // orchardgrass
)

// RainLoss returns the share of the dry matter that cut grass, near the dryness for
// baling, loses when it is rained on.
//
// Method: bermudagrass -0.0081 X² + 0.83 X + 0.49, orchardgrass -0.018 X² + 2.39 X +
// 10.29, with X the rain in mm and the result in g/kg
//
// Where:
//   - rain in mm: rain on the swath; >= 0
//   - grass: which grass
//
// Errors: a *units.RangeError beside the value where the curve has passed its top (51
// mm, 66 mm): more rain does not give dry matter back
//
// Note: the units are not printed with the equations: mm and g/kg are the likely ones,
// and so the figure is derived. Wetter swaths lose less. Quality falls as well.
//
// Source: AGRONJ-97-604 figure 1, units ours
func RainLoss(rain units.RainDepth, grass RainedGrass) (units.Fraction, error) {
	arguments := [...]float64{float64(rain), float64(grass)}
	if grass.String() == "" {
		return units.Answer(&formulaRainLoss, units.Fraction(0), arguments[:]...)
	}
	c, x := &rainLosses[grass-1], float64(rain/units.RainMillimetre)
	loss := units.Fraction((float64(c.square*x*x) + float64(c.slope*x) + c.start) / 1000)
	if top := -c.slope / (2 * c.square); x > top {
		return units.AnswerWithin(&formulaRainLoss, 0, units.Between(0, top*float64(units.RainMillimetre), "AGRONJ-97-604"), loss, arguments[:]...)
	}
	return units.Answer(&formulaRainLoss, loss, arguments[:]...)
}
