package herd

import (
	"fmt"
	"math"
	"slices"

	"example.org/soum/units"
)

// BeefDrinker is a row of the table of beef cattle's water by temperature.
type BeefDrinker int

// The rows of that table.
const (
	DrinkerCalf      BeefDrinker = iota + 1 // a calf of 500 lb
	DrinkerGrowing                          // a growing animal of 800 lb
	DrinkerFinishing                        // a finishing animal of 800 lb
	DrinkerDryCow                           // a dry pregnant cow
	DrinkerBull                             // a mature bull
)

// along reads a straight line through printed points. Below the first point it
// gives the value of that point; above the last the line runs on: too much water
// is the better error.
func along(at, value []float64, v float64) float64 {
	i := 1
	for i < len(at)-1 && v > at[i] {
		i++
	}
	if v < at[0] {
		v = at[0]
	}
	return value[i-1] + (v-at[i-1])/(at[i]-at[i-1])*(value[i]-value[i-1])
}

// partOf tells how far along a stretch a value is: 0 before it, more than 1 beyond
// it, as along runs on.
func partOf(from, to, v float64) float64 {
	if v < from {
		return 0
	}
	return (v - from) / (to - from)
}

// BeefWater returns what one head of beef cattle drinks in a day by the
// temperature.
//
// Table: straight lines between the printed columns of 70, 80 and 90 °F, which
// is ours; below 70 °F the value of 70, above 90 °F the line runs on
//
// Where:
//   - drinker: the row
//   - temperature in °C: of the day; any
//
// Errors: a *units.RangeError beside the value where the temperature is outside
// 70 to 90 °F
//
// Note: the cautions of Water hold: stock without water die, plan on more.
//
// Source: WINCHESTER-1956
func BeefWater(drinker BeefDrinker, temperature units.Temperature) (units.WaterRate, error) {
	arguments := [...]float64{float64(drinker), float64(temperature)}
	if drinker < DrinkerCalf || drinker > DrinkerBull {
		return units.Answer(&formulaBeefWater, units.WaterRate(0), arguments[:]...)
	}
	water := units.WaterRate(along(beefWaterDegrees[:], beefWater[drinker-1][:], temperature.Fahrenheit())) * units.GallonPerDay
	if temperature < beefWaterColdest || temperature > beefWaterHottest {
		return units.AnswerWithin(&formulaBeefWater, 1, units.Between(float64(beefWaterColdest), float64(beefWaterHottest), "WINCHESTER-1956"), water, arguments[:]...)
	}
	return units.Answer(&formulaBeefWater, water, arguments[:]...)
}

// The ends of the tables in °C, reckoned as a user's own figures are, so that
// the printed ends lie within.
var (
	beefWaterColdest = units.Fahrenheit(beefWaterDegrees[0])
	beefWaterHottest = units.Fahrenheit(beefWaterDegrees[len(beefWaterDegrees)-1])
	cowWaterColdest  = units.Fahrenheit(cowWaterDegrees[0])
	cowWaterHottest  = units.Fahrenheit(cowWaterDegrees[len(cowWaterDegrees)-1])
)

// CowWater returns what a beef cow drinks in a day by her weight, her milk and
// the mean temperature of the day.
//
// Table: straight lines between the printed cells: along temperature and weight
// print itself runs straight, along milk it is ours. Below the ends of the table
// the value of the end, above them the lines run on.
//
// Where:
//   - weight in lb: live weight of the cow; > 0; 1100 to 1500 [KSU-COW-WATER]
//   - milk in lb/day: milk of a day, 0 for a dry cow; >= 0; 0 to 25 [KSU-COW-WATER]
//   - temperature in °C: mean of the day; any
//
// Errors: a *units.RangeError beside the value where the temperature is outside
// 40 to 90 °F
//
// Note: sources differ for a cow in milk at 90 °F: 15.7 to 21.4 gal here by weight
// and milk, about 16.5 at 88 °F by NDSU-WATER-2008; MONTANA-WATER prints the
// figures of 1,300 lb of this table and calls 15 lb of milk what this source calls
// 10. The cautions of Water hold.
//
// Source: KSU-COW-WATER
func CowWater(weight units.LiveWeight, milk units.Milk, temperature units.Temperature) (units.WaterRate, error) {
	warm := partOf(cowWaterDegrees[0], cowWaterDegrees[1], temperature.Fahrenheit())
	column, pounds := 0, float64(milk/units.MilkPoundPerDay)
	if pounds > cowWaterMilk[1] {
		column = 1
	}
	part := partOf(cowWaterMilk[column], cowWaterMilk[column+1], pounds)
	var byWeight [2]float64
	for w := range byWeight {
		less, more := &cowWater[w][column], &cowWater[w][column+1]
		little, much := less[0]+warm*(less[1]-less[0]), more[0]+warm*(more[1]-more[0])
		byWeight[w] = little + part*(much-little)
	}
	heavy := partOf(cowWaterPounds[0], cowWaterPounds[1], float64(weight/units.LivePound))
	water := units.WaterRate(byWeight[0]+heavy*(byWeight[1]-byWeight[0])) * units.GallonPerDay
	arguments := [...]float64{float64(weight), float64(milk), float64(temperature)}
	got, err := units.Answer(&formulaCowWater, water, arguments[:]...)
	if err == nil && (temperature < cowWaterColdest || temperature > cowWaterHottest) {
		return units.AnswerWithin(&formulaCowWater, 2, units.Between(float64(cowWaterColdest), float64(cowWaterHottest), "KSU-COW-WATER"), water, arguments[:]...)
	}
	return got, err
}

// DairyWater returns what a dairy cow of 1,400 lb drinks in a day at 80 °F by her
// milk.
//
// Table: straight lines between the printed figures for 20, 80 and 100 lb of
// milk, which is ours; below 20 lb the value of 20, above 100 lb the line runs on
//
// Where:
//   - milk in lb/day: milk of a day; >= 0; 20 to 100 [NDSU-WATER-2008]
//
// Note: print has 24.7 gal at 60 lb, far below the line of its neighbours (31.8);
// that cell is not used, and the higher figure is the safer one. A dry cow of the
// same weight is the row cow-dairy-dry-1400lb-at-80f of Drinking, 16.2. The
// cautions of Water hold.
//
// Source: NDSU-WATER-2008
func DairyWater(milk units.Milk) (units.WaterRate, error) {
	water := units.WaterRate(along(dairyWaterMilk[:], dairyWaterGallons[:], float64(milk/units.MilkPoundPerDay))) * units.GallonPerDay
	return units.Answer(&formulaDairyWater, water, float64(milk))
}

// WaterCurve is a printed row of water by live weight.
type WaterCurve int

// The rows by live weight.
const (
	CurveGrowingCool   WaterCurve = iota + 1 // growing beef cattle at 40 °F
	CurveFinishingCool                       // finishing beef cattle at 40 °F
	CurveGrowingHot                          // growing beef cattle at 88 °F
	CurveFinishingHot                        // finishing beef cattle at 88 °F
	CurveDairyHeifer                         // dairy heifers at 80 °F
)

// WaterByWeight returns what one head of young or fattening cattle drinks in a
// day by its weight.
//
// Table: straight lines between the printed weights, which is ours; below the
// lowest its value, above the highest the line runs on
//
// Where:
//   - curve: the row, with its temperature
//   - weight in lb: live weight; > 0
//
// Errors: a *units.RangeError beside the value where the weight is outside the
// printed ones: 400 to 800 lb growing, and finishing at 40 °F; 600 to 1,200 lb
// finishing at 88 °F; 200 to 1,200 lb dairy heifers
//
// Note: the cautions of Water hold.
//
// Source: NDSU-AS1763-COPY at 40 °F; NDSU-WATER-2008 at 88 °F, and dairy heifers
func WaterByWeight(curve WaterCurve, weight units.LiveWeight) (units.WaterRate, error) {
	arguments := [...]float64{float64(curve), float64(weight)}
	if curve < CurveGrowingCool || curve > CurveDairyHeifer {
		return units.Answer(&formulaWaterByWeight, units.WaterRate(0), arguments[:]...)
	}
	row := &waterCurves[curve-1]
	water := units.WaterRate(along(row.pounds, row.gallons, float64(weight/units.LivePound))) * units.GallonPerDay
	low, high := units.LiveWeight(row.pounds[0])*units.LivePound, units.LiveWeight(row.pounds[len(row.pounds)-1])*units.LivePound
	if weight < low || weight > high {
		return units.AnswerWithin(&formulaWaterByWeight, 1, units.Between(float64(low), float64(high), row.source), water, arguments[:]...)
	}
	return units.Answer(&formulaWaterByWeight, water, arguments[:]...)
}

// DrinkingSource is whose figure of what an animal drinks is used.
type DrinkingSource int

// The sources of what animals drink.
const (
	DrinkByKansas      DrinkingSource = iota + 1 // Kansas State, watering handbook
	DrinkByOhio                                  // Ohio State, stock in milk
	DrinkByLincoln                               // Lincoln University of Missouri
	DrinkByCarolina                              // North Carolina, small ruminants
	DrinkByAustralia                             // wethers measured on pasture
	DrinkByDakota                                // North Dakota 2008, hot days
	DrinkByDakotaTable                           // North Dakota AS1763, at 40 °F
	DrinkByCompilation                           // an older US compilation
	DrinkBySouthDakota                           // South Dakota C274
)

// DrinkingRow is a row of the table of Drinking.
type DrinkingRow struct {
	// Animal is the animal with its circumstances, lower case with hyphens.
	Animal string `json:"animal"`
	// By is whose figure it is.
	By DrinkingSource `json:"by"`
	// Head is the number of animals that the figure is for.
	Head float64 `json:"head"`
	// Days is the time that the figure is for.
	Days units.Days `json:"days"`
	// Water is the printed span for so many animals and so many days.
	Water units.Span[units.WaterRate] `json:"water"`
	units.Printed
}

// DrinkingRows gives the table of Drinking, as a copy.
//
// Check: TestDrinkingRows
//
// Source: ours: a collection, each figure with the source and mark on its row
func DrinkingRows() []DrinkingRow { return slices.Clone(drinkingRows) }

// Drinking gives what so many animals drink in a day by the printed figures that
// go by head: at the low end of the printed span, half way, or at its high end.
//
// The sources differ, and so the source is an argument: a dairy cow drinks 15 to
// 30 gal by one, 25 by another, 10 to 16 by a third; a sheep 0.75 to 1.5 or 1 to 4;
// a hundred laying hens 5 to 7.5 or, as chickens, 8 to 10. Measured wethers drank
// a tenth of a litre on green winter pasture and almost twenty times that on dry
// summer pasture, goats 55.6 ml a kg of weight there and twice as much at 35 °C
// (MCGREGOR-1986). Small ruminants drink 40 % more in summer than in winter
// (NC-WATER); sheep about 20 %, meat goats about 15 % of what beef cattle drink
// (LINCOLN-WATER). Plan on the high end and on PeakWater: stock without water die,
// a loss of a tenth of the body's water kills most (NDSU-AS1763). A vet, an
// adviser and the local rules decide.
//
// Where:
//   - animal: as in DrinkingRows
//   - by: whose figure
//   - head: number of animals; >= 0
//   - end: of the printed span
//
// Errors: a *units.ParseError that lists the animals, or the sources, that have a
// figure
//
// Source: KSU-WATER, OHIO-WATER, LINCOLN-WATER, NC-WATER, MCGREGOR-1986,
// NDSU-WATER-2008, NDSU-AS1763-COPY, HENS-WATER, SDSU-C274, as the row says
func Drinking(animal string, by DrinkingSource, head float64, end units.End) (units.WaterRate, error) {
	arguments := [...]float64{0, float64(by), head, float64(end)}
	for i := range drinkingRows {
		if row := &drinkingRows[i]; row.Animal == animal && row.By == by {
			water := row.Water.At(end) * units.WaterRate(head/row.Head/float64(row.Days))
			return units.Answer(&formulaDrinking, water, arguments[:]...)
		}
	}
	return units.WaterRate(math.NaN()), noDrinking(animal, by, arguments[:]...)
}

// noDrinking tells which animals, or which sources of an animal, have a figure.
func noDrinking(animal string, by DrinkingSource, arguments ...float64) error {
	var sources []string
	for _, row := range drinkingRows {
		if row.Animal == animal {
			sources = append(sources, row.By.String())
		}
	}
	if sources != nil {
		return formulaDrinking.NoRow("by", by.String(), fmt.Sprintf("has no figure of %q", animal), sources, arguments...)
	}
	animals := namesOf(drinkingRows, func(row *DrinkingRow) string { return row.Animal })
	return formulaDrinking.NoRow("animal", animal, "no figure of what this animal drinks", animals, arguments...)
}

// FeedWater is a rule of water by the feed eaten.
type FeedWater int

// The rules of water by feed.
const (
	FeedWaterSheep FeedWater = iota + 1 // sheep: a gallon with four pounds of feed of 90 % dry matter
	FeedWaterCow                        // a beef cow in milk: three to five pounds with a pound of dry matter
)

// WaterByFeed returns what an animal needs in a day by the dry matter it eats, the
// water in the feed counted in.
//
// Table: sheep a gallon for each 4 lb of feed of 90 % dry matter; a beef cow in
// milk 3 to 5 lb of water for each lb of dry matter, a litre to the kilogram
//
// Where:
//   - rule: which
//   - feed in lb/day: dry matter eaten in a day; >= 0
//   - place in %: where in the printed span, 0 its low end and 100 its high; 0 to 100
//
// Note: young stock and stock in milk take 10 to 15 % more [NDSU-AS1763-COPY].
// That the water of wet feed is a part of it is ours, from memory: on green
// pasture the trough gives less of it. The cautions of Water hold.
//
// Source: OREGON-SHEEP-WATER sheep; NDSU-AS1763-COPY cows
func WaterByFeed(rule FeedWater, feed units.Demand, place units.Fraction) (units.WaterRate, error) {
	water := units.WaterRate(float64(feed/sheepFeedOfGallon)) * units.GallonPerDay
	if rule == FeedWaterCow {
		water = units.WaterRate(float64(feed)*(cowWaterLow+(cowWaterHigh-cowWaterLow)*float64(place))) * units.LitrePerDay
	}
	return units.Answer(&formulaWaterByFeed, water, float64(rule), float64(feed), float64(place))
}

// PeakWater returns what stock may drink on a day over 25 °C.
//
// Formula: average * 2
//
// Where:
//   - average in gal/day: what they drink on an average day; >= 0
//
// Note: the source says up to twice. Trough, pipe and well must give it within
// the hours in which the animals come. Water over 80 °F lowers intake, over 85 °F
// cool it [KENTUCKY-ID170].
//
// Source: ALBERTA-WATER
func PeakWater(average units.WaterRate) (units.WaterRate, error) {
	return units.Answer(&formulaPeakWater, average*2, float64(average))
}
