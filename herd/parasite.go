package herd

import (
	"fmt"
	"math"
	"slices"

	"example.org/soum/units"
)

// HatchDays returns how long the eggs of the barber pole worm of sheep and goats
// take to hatch by the temperature.
//
// Table: 15 to 30 days at 50 to 52 °F, 3 to 5 days at 77 to 79 °F, and a straight
// line between, which is ours; outside the value of the end
//
// Where:
//   - temperature in °C: mean on the ground; any
//   - place in %: where in the printed span, 0 its low end and 100 its high; 0 to 100
//
// Errors: a *units.RangeError beside the value where the temperature is outside
// 50 to 79 °F
//
// Note: this worm does best from 65 to 85 °F. Worms kill; rest days and moves are a
// part of keeping them down and no cure: have dung counted and ask a vet.
//
// Source: EXT-GOAT-WORMS phase 3
func HatchDays(temperature units.Temperature, place units.Fraction) (units.Days, error) {
	degrees := min(temperature.Fahrenheit(), hatchDegrees[len(hatchDegrees)-1])
	low, high := along(hatchDegrees[:], hatchLow[:], degrees), along(hatchDegrees[:], hatchHigh[:], degrees)
	days := units.Days(low + (high-low)*float64(place))
	arguments := [...]float64{float64(temperature), float64(place)}
	if temperature < hatchColdest || temperature > hatchWarmest {
		return units.AnswerWithin(&formulaHatchDays, 0, units.Between(float64(hatchColdest), float64(hatchWarmest), "EXT-GOAT-WORMS"), days, arguments[:]...)
	}
	return units.Answer(&formulaHatchDays, days, arguments[:]...)
}

// The ends of hatching in °C, reckoned as a user's own figures are.
var (
	hatchColdest = units.Fahrenheit(hatchDegrees[0])
	hatchWarmest = units.Fahrenheit(hatchDegrees[len(hatchDegrees)-1])
)

// WormStage is what a figure of worms counts.
type WormStage int

// What is counted of worms.
const (
	EggToInfective    WormStage = iota + 1 // from dung on the ground to larvae that infect
	InfectiveToLaying                      // from the mouth to eggs in the dung
	LarvaePeak                             // from dung on the ground to most larvae on the grass
	LarvaeDown                             // from dung on the ground, or the day stock leave, to few larvae
	LarvaeDead                             // until most larvae are dead
	MoveOut                                // the stay after which stock go on
)

// WormSource is whose figure of worms is used.
type WormSource int

// The sources of figures of worms.
const (
	WormsWestVirginia WormSource = iota + 1 // West Virginia University
	WormsOhio                               // Penn State and Ohio State
	WormsTemperate                          // eXtension, temperate climate
	WormsTropics                            // eXtension, tropics
	WormsNcat                               // NCAT
	WormsTrade                              // an Australian trade page
)

// WormRow is a row of the table of WormDays.
type WormRow struct {
	// Stage is what is counted.
	Stage WormStage `json:"stage"`
	// By is whose figure it is.
	By WormSource `json:"by"`
	// Days is the printed span.
	Days units.Span[units.Days] `json:"days"`
	units.Printed
}

// WormRows gives the table of WormDays, as a copy.
//
// Check: TestWormRows
//
// Source: ours: a collection, each figure with the source and mark on its row
func WormRows() []WormRow { return slices.Clone(wormRows) }

// WormDays gives a figure of the worms of sheep and goats on pasture, at an end of
// the printed span.
//
// The sources differ, and so the source is an argument: rest at least 40 days by
// one, about 60 in a temperate climate by another, 30 in the tropics. Rest for the
// grass, 21 to 35 days, falls near the peak of the larvae in a temperate climate.
// Rest and moves lower what stock pick up and cure nothing: have dung counted, and
// ask a vet before and after dosing.
//
// Where:
//   - stage: what is counted
//   - by: whose figure
//   - end: of the printed span
//
// Errors: a *units.ParseError that lists the sources that have such a figure
//
// Source: WVU-WORMS, OHIO-WORMS, EXT-GOAT-WORMS, NCAT-WORMS, PARKES-WORMS, as the
// row says
func WormDays(stage WormStage, by WormSource, end units.End) (units.Days, error) {
	arguments := [...]float64{float64(stage), float64(by), float64(end)}
	if row := wormRow(stage, by); row != nil {
		return units.Answer(&formulaWormDays, row.Days.At(end), arguments[:]...)
	}
	var sources []string
	for _, row := range wormRows {
		if row.Stage == stage {
			sources = append(sources, row.By.String())
		}
	}
	return units.Days(math.NaN()), formulaWormDays.NoRow("by", by.String(), fmt.Sprintf("has no figure of %q", stage), sources, arguments[:]...)
}

// wormRow looks a row of WormRows up, nil where there is none.
func wormRow(stage WormStage, by WormSource) *WormRow {
	for i := range wormRows {
		if row := &wormRows[i]; row.Stage == stage && row.By == by {
			return row
		}
	}
	return nil
}

// wormHost is the group of kinds that keep the same worms.
func wormHost(kind Kind) Kind {
	switch kind {
	case Goats:
		return Sheep
	case Donkeys:
		return Horses
	}
	return kind
}

// SharesWorms tells whether two kinds of stock infect each other with worms of the
// gut, so that land grazed by the one is not rested for the other.
//
// Sheep and goats share theirs and count as one. Most worms keep to one host, the
// barber pole worm dies in cattle, and cattle or horses are used to clean for sheep
// and goats. But a French trial with adult goats, two years together with cattle and
// five years one after the other, found no fewer worms in the goats (WORMX-MIXED),
// so false is no promise. From
// memory, not from print: horses and donkeys share theirs, camelids and deer take
// those of sheep, goats and cattle; what is not a known kind is taken to share.
//
// Check: TestSharesWorms
//
// Source: NCAT-WORMS; HFG-WORMS
func SharesWorms(a, b Kind) bool {
	if a.String() == "" || b.String() == "" || wormHost(a) == wormHost(b) {
		return true
	}
	taker := func(k Kind) bool { return k == Camelids || k == Deer }
	return a.Ruminant() && b.Ruminant() && (taker(a) || taker(b))
}

// RestRule is whose days of rest against worms are used.
type RestRule int

// The rules of rest.
const (
	RestTemperate RestRule = iota + 1 // eXtension, temperate: peak at 28 to 35 days, down at about 60
	RestTropics                       // eXtension, tropics: peak at 14 days, down at 30
	RestNcat                          // NCAT: at least 40 days, no peak told
)

// WormReturn is a class of the risk of worms on a return.
type WormReturn int

// The classes of a return, the safer first.
const (
	ReturnOtherHost    WormReturn = iota + 1 // the kinds keep different worms
	ReturnRested                             // rested as long as the rule asks: fewer larvae, not none
	ReturnNotInfective                       // sooner than larvae become infective
	ReturnInfective                          // larvae are infective and not yet down
	ReturnPeak                               // at the peak of the larvae
)

// WormRisk gives the class of risk of worms where one kind of stock comes onto land
// that another, or the same, left so many days ago.
//
// It counts from the dung that these animals dropped; what lay there before them
// is older and may be ripe. Larvae become infective from the fourth day on
// (WVU-WORMS), sooner than most plans come back; in cold or drought all is slower
// and larvae live longer. The rule of the tropics is for the tropics. Rest lowers
// the risk and cures nothing: have dung counted, and ask a vet.
//
// Where:
//   - before: the kind that grazed
//   - after: the kind that comes
//   - rest in days: from the one to the other; >= 0
//   - rule: whose days of rest
//
// Source: EXT-GOAT-WORMS, NCAT-WORMS the rest; WVU-WORMS infective from 4 days on
func WormRisk(before, after Kind, rest units.Days, rule RestRule) (WormReturn, error) {
	if _, err := units.Answer(&formulaWormRisk, rest, float64(before), float64(after), float64(rest), float64(rule)); err != nil {
		return 0, err
	}
	by := restSources[rule]
	down, peak := wormRow(LarvaeDown, by).Days.Low, wormRow(LarvaePeak, by)
	switch {
	case !SharesWorms(before, after):
		return ReturnOtherHost, nil
	case rest >= down:
		return ReturnRested, nil
	case rest < wormRow(EggToInfective, WormsWestVirginia).Days.Low:
		return ReturnNotInfective, nil
	case peak != nil && rest >= peak.Days.Low && rest <= peak.Days.High:
		return ReturnPeak, nil
	}
	return ReturnInfective, nil
}

// restSources are the sources of the days of larvae, by rule.
var restSources = [...]WormSource{RestTemperate: WormsTemperate, RestTropics: WormsTropics, RestNcat: WormsNcat}

// ClimbSource is whose figure of how high larvae climb is used.
type ClimbSource int

// The sources of how high larvae climb.
const (
	ClimbNcatUsual   ClimbSource = iota + 1 // NCAT, usually
	ClimbNcatMost                           // NCAT, at the most
	ClimbSouthDakota                        // South Dakota State
)

// LarvalClimb returns how high the larvae of worms climb on grass.
//
// Table: the printed span
//
// Where:
//   - by: whose
//   - place in %: where in the printed span, 0 its low end and 100 its high; 0 to 100
//
// Note: the sources differ, and a trial in Chile contradicts them all: larvae of
// cattle worms stood no thicker in the lower half of the sward than in the upper
// one in spring and summer, thicker in the upper half in autumn and winter
// (SIEVERS-CHILE).
//
// Source: NCAT-WORMS; SDSU-WORMS
func LarvalClimb(by ClimbSource, place units.Fraction) (units.Height, error) {
	var span units.Span[units.Height]
	if by >= ClimbNcatUsual && int(by) <= len(larvalClimbs) {
		span = larvalClimbs[by-1]
	}
	return units.Answer(&formulaLarvalClimb, span.Low+(span.High-span.Low)*units.Height(place), float64(by), float64(place))
}

// StubbleSource is whose stubble against worms is left.
type StubbleSource int

// The sources of the stubble.
const (
	StubbleSouthDakota StubbleSource = iota + 1 // South Dakota State
	StubbleNcat                                 // NCAT
)

// WormStubble returns the height below which sheep and goats should not graze,
// because of worms.
//
// Table: the printed height
//
// Where:
//   - by: whose
//
// Note: the cautions of LarvalClimb hold: the sources leave 4 or 6 in, and a trial
// found no more larvae below than above.
//
// Source: SDSU-WORMS; NCAT-WORMS
func WormStubble(by StubbleSource) (units.Height, error) {
	var height units.Height
	if by >= StubbleSouthDakota && int(by) <= len(wormStubbles) {
		height = wormStubbles[by-1]
	}
	return units.Answer(&formulaWormStubble, height, float64(by))
}

// Fly is a fly that breeds in dung or litter.
type Fly int

// The flies.
const (
	HornFly   Fly = iota + 1 // on fresh cattle dung only
	HouseFly                 // house fly
	StableFly                // stable fly
	FaceFly                  // face fly
)

// FlyDays returns how long a fly takes from egg to adult.
//
// Table: the printed span; the horn fly from egg to egg-laying
//
// Where:
//   - fly: which
//   - place in %: where in the printed span, 0 its low end and 100 its high; 0 to 100
//
// Note: at the best for the horn fly and the house fly. Horn flies are treated from
// 200 an animal on [HORN-FLY-THRESHOLD]. Breaking pats with a drag did not lower horn
// or face flies in 30 traps and two years [SARE-FNE18]. Which substances, and when,
// is for a vet and the local rules.
//
// Source: VIRGINIA-FLIES horn fly; PSU-FLIES house and stable fly; PRESTOX-FLIES
// face fly
func FlyDays(fly Fly, place units.Fraction) (units.Days, error) {
	var span units.Span[units.Days]
	if fly >= HornFly && int(fly) <= len(flyDays) {
		span = flyDays[fly-1]
	}
	return units.Answer(&formulaFlyDays, span.Low+(span.High-span.Low)*units.Days(place), float64(fly), float64(place))
}

// BirdsFollow returns how many days after cattle or sheep birds are brought on, so
// that they scratch out fly larvae: a custom.
//
// Table: three to four days
//
// Where:
//   - place in %: where in the span, 0 its low end and 100 its high; 0 to 100
//
// Note: common practice without a source. It lies inside the larval time of all
// flies of FlyDays. The one controlled trial, with broilers after three to four
// days, found no fewer face flies: 4.4 % of larvae lived without birds, 5.6 and
// 3.2 % with few and many [PHILLIPS-BROILERS]. No test with laying hens was found;
// two trials of poultry after sheep against worms gave no result [ARS-420809].
// Count on nothing. Keep turkeys off ground that held chickens, and birds off
// ground that held pigs.
//
// Source: ours: common practice, from memory; PHILLIPS-BROILERS for the trial
func BirdsFollow(place units.Fraction) (units.Days, error) {
	span := birdsFollowDays
	return units.Answer(&formulaBirdsFollow, span.Low+(span.High-span.Low)*units.Days(place), float64(place))
}
