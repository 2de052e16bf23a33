package herd

import (
	"fmt"
	"math"
	"slices"

	"example.org/soum/units"
)

// ExcretionSource is whose figure of what an animal leaves is used.
type ExcretionSource int

// The sources of what animals leave.
const (
	ExcretedEngland        ExcretionSource = iota + 1 // English regulations of 2015, as excreted
	ExcretedEnglandEarlier                            // English regulations of 2008, pigs
	ExcretedUlster                                    // Northern Ireland 2018, poultry
	ExcretedWisconsin                                 // Wisconsin A3601, manure
	ExcretedForFirstCrop                              // Wisconsin A3601, what a crop can use in the first year, all confined
	ExcretedIreland                                   // Irish rules, dairy cows
	ExcretedScotland                                  // Scottish code, slurry
	ExcretedHandbook                                  // US agricultural waste handbook 2008, confined stock
	ExcretedWatershed                                 // defaults of a watershed model
	ExcretedGuideline                                 // German guideline, an animal place
	ExcretedChamber                                   // a German chamber of agriculture, an animal place
	ExcretedPaper                                     // the mean of those two, as a paper takes it
	ExcretedElsewhere                                 // single figures, the source on the row
)

// Excreta is what is counted of what an animal leaves.
type Excreta int

// What is counted.
const (
	ExcretaManure     Excreta = iota + 1 // dung and urine, by mass
	ExcretaNitrogen                      // N
	ExcretaPhosphorus                    // P
	ExcretaPhosphate                     // P2O5
	ExcretaPotassium                     // K
	ExcretaPotash                        // K2O
	ExcretaSulfur                        // S
)

// ExcretionRow is a row of the table of Excretion. What print does not give is 0.
type ExcretionRow struct {
	// Animal is the animal, lower case with hyphens.
	Animal string `json:"animal"`
	// By is whose figure it is.
	By ExcretionSource `json:"by"`
	// Head is the number of animals that the figure is for; 0 where it goes by
	// weight.
	Head float64 `json:"head"`
	// Weight is the live weight that the figure is for; 0 where it goes by head.
	Weight units.LiveWeight `json:"weight"`
	// Days is the time that the figure is for; 0 where it is for a bird's life.
	Days units.Days `json:"days"`
	// Volume is the volume of the manure.
	Volume units.Volume `json:"volume"`
	// Manure is the mass of the manure.
	Manure units.Mass `json:"manure"`
	// Nitrogen is N.
	Nitrogen units.Mass `json:"nitrogen"`
	// Phosphorus is P.
	Phosphorus units.Mass `json:"phosphorus"`
	// Phosphate is P2O5, where print gives it so.
	Phosphate units.Mass `json:"phosphate"`
	// Potassium is K.
	Potassium units.Mass `json:"potassium"`
	// Potash is K2O, where print gives it so.
	Potash units.Mass `json:"potash"`
	// Sulfur is S.
	Sulfur units.Mass `json:"sulfur"`
	units.Printed
}

// ExcretionRows gives the table of Excretion, as a copy.
//
// Check: TestExcretionRows
//
// Source: ours: a collection, each figure with the source and mark on its row
func ExcretionRows() []ExcretionRow {
	return slices.Concat(excretionTables...)
}

// Excretion gives what so many animals leave over a time, by the printed figures of
// one source; figures by head do not use the weight of one, figures by live
// weight do. Where print has P or K, P2O5 and K2O are worked out from it, and the
// other way round.
//
// The sources differ, and so the source is an argument. A dairy cow's nitrogen a
// day for 1,000 lb is 0.71 lb in the US handbook of 2008, 0.44 in a watershed
// model and in the older table of NutrientMass; a laying hen's in a year is 0.35 or
// 0.76 kg; a horse leaves 24 L or 50 lb a day. The US handbook is for confined
// stock and says that droppings on pasture are outside it; it has no row for
// goats, alpacas or llamas. Geese have no row: the grams in print do not say
// whether dry or fresh (KEAR-GEESE).
//
// Common practice has it that a cow leaves 50 lb a day of dung and urine and ten
// sheep as much. Per 1,000 lb of beef cow print has 63 (NRCS-MANURE) to 104
// (AWMFH-2008), so 50 fits a beef animal of about 800 lb, or a horse of 1,000
// (LPELC-HORSE); a dairy cow of 1,400 lb leaves 120 (WISC-A3601). Ten sheep as one
// cow agrees with England, 9 to 10 ewes to the suckler cow by volume though 7 to 8
// by nitrogen (NVZ-2015), and ten sheep of 125 lb leave 50 lb (SHEEP101-MANURE).
//
// A single farm may lie several times off: have a sample analysed before you rely
// on a figure, and keep to the local rules on manure and water.
//
// Where:
//   - animal: as in ExcretionRows
//   - by: whose figure
//   - of: what is counted
//   - head: number of animals; >= 0
//   - weight in lb: live weight of one; > 0
//   - days in days: how long; >= 0
//
// Errors: a *units.ParseError that lists the animals, or the sources, that have a
// figure
//
// Source: NVZ-2015, NVZ-2008, NI-2018, WISC-A3601, IRELAND-N, AWMFH-2008,
// WATERSHED-MODEL, ESEU-2021 and others, as the row says
func Excretion(animal string, by ExcretionSource, of Excreta, head float64, weight units.LiveWeight, days units.Days) (units.Mass, error) {
	arguments := [...]float64{0, float64(by), float64(of), head, float64(weight), float64(days)}
	fits := func(row *ExcretionRow) bool { return row.Days > 0 }
	row := excretionRow(animal, by, of, fits)
	if row == nil {
		return units.Mass(math.NaN()), noExcretion(&formulaExcretion, "animal", animal, by, of, "not one for the bird's life", fits, arguments[:]...)
	}
	mass := float64(row.mass(of)) * head * float64(days/row.Days)
	if row.Weight > 0 {
		mass *= float64(weight / row.Weight)
	} else {
		mass /= row.Head
	}
	return units.Answer(&formulaExcretion, units.Mass(mass), arguments[:]...)
}

// ExcretedInLife gives what so many birds leave from the day they come to the day
// they are killed, by the printed figures that are for that time. The cautions of
// Excretion hold.
//
// Where:
//   - bird: as in ExcretionRows
//   - by: whose figure
//   - of: what is counted
//   - head: number of birds; >= 0
//
// Errors: a *units.ParseError that lists the birds, or the sources, that have such
// a figure
//
// Source: NI-2018
func ExcretedInLife(bird string, by ExcretionSource, of Excreta, head float64) (units.Mass, error) {
	arguments := [...]float64{0, float64(by), float64(of), head}
	fits := func(row *ExcretionRow) bool { return row.Days == 0 }
	row := excretionRow(bird, by, of, fits)
	if row == nil {
		return units.Mass(math.NaN()), noExcretion(&formulaExcretedInLife, "bird", bird, by, of, "for a bird's life", fits, arguments[:]...)
	}
	return units.Answer(&formulaExcretedInLife, units.Mass(float64(row.mass(of))*head/row.Head), arguments[:]...)
}

// ManureVolume gives the volume of what so many animals leave over a time, by the
// printed figures that are volumes: as excreted in England, slurry in Scotland.
// The cautions of Excretion hold.
//
// Where:
//   - animal: as in ExcretionRows
//   - by: whose figure
//   - head: number of animals; >= 0
//   - days in days: how long; >= 0
//
// Errors: a *units.ParseError that lists the animals, or the sources, that have
// such a figure
//
// Source: NVZ-2015; NVZ-2008 pigs; SCOTLAND-SLURRY, its month a twelfth of 365 days
func ManureVolume(animal string, by ExcretionSource, head float64, days units.Days) (units.Volume, error) {
	arguments := [...]float64{0, float64(by), head, float64(days)}
	fits := func(row *ExcretionRow) bool { return row.Volume > 0 }
	row := excretionRow(animal, by, volume, fits)
	if row == nil {
		return units.Volume(math.NaN()), noExcretion(&formulaManureVolume, "animal", animal, by, volume, "of a volume", fits, arguments[:]...)
	}
	return units.Answer(&formulaManureVolume, row.Volume*units.Volume(head/row.Head*float64(days/row.Days)), arguments[:]...)
}

// mass gives what a row has of a substance, worked out from its oxide or element
// where print has that; 0 where it has neither.
func (row *ExcretionRow) mass(of Excreta) units.Mass {
	switch of {
	case ExcretaManure:
		return row.Manure
	case ExcretaNitrogen:
		return row.Nitrogen
	case ExcretaPhosphorus:
		return row.Phosphorus + row.Phosphate/oxideOfPhosphorus
	case ExcretaPhosphate:
		return row.Phosphate + row.Phosphorus*oxideOfPhosphorus
	case ExcretaPotassium:
		return row.Potassium + row.Potash/oxideOfPotassium
	case ExcretaPotash:
		return row.Potash + row.Potassium*oxideOfPotassium
	case ExcretaSulfur:
		return row.Sulfur
	}
	return 0
}

// volume stands for what is counted where rows of manure are looked up by volume.
const volume Excreta = 0

// has reports whether a row has a figure of what is counted.
func (row *ExcretionRow) has(of Excreta) bool { return of == volume || row.mass(of) > 0 }

// excretionRow looks a row up that fits, nil where there is none.
func excretionRow(animal string, by ExcretionSource, of Excreta, fits func(*ExcretionRow) bool) *ExcretionRow {
	for _, rows := range excretionTables {
		for i := range rows {
			if row := &rows[i]; row.Animal == animal && row.By == by && row.has(of) && fits(row) {
				return row
			}
		}
	}
	return nil
}

// noExcretion tells which animals, or which sources of an animal, have a row that
// fits, or what is counted where none does; argument is the one that names the animal.
func noExcretion(formula *units.Formula, argument, animal string, by ExcretionSource, of Excreta, what string, fits func(*ExcretionRow) bool, arguments ...float64) error {
	var fitting []ExcretionRow
	for _, row := range slices.Concat(excretionTables...) {
		if fits(&row) {
			fitting = append(fitting, row)
		}
	}
	with := slices.DeleteFunc(slices.Clone(fitting), func(row ExcretionRow) bool { return !row.has(of) })
	if len(with) == 0 {
		var counted []string
		for other := ExcretaManure; other <= ExcretaSulfur; other++ {
			if slices.ContainsFunc(fitting, func(row ExcretionRow) bool { return row.has(other) }) {
				counted = append(counted, other.String())
			}
		}
		return formula.NoRow("of", of.String(), "no such figure "+what, counted, arguments...)
	}
	animals := namesOf(with, func(row *ExcretionRow) string { return row.Animal })
	if !slices.Contains(animals, animal) {
		return formula.NoRow(argument, animal, "no such figure of this animal, "+what, animals, arguments...)
	}
	with = slices.DeleteFunc(with, func(row ExcretionRow) bool { return row.Animal != animal })
	sources := namesOf(with, func(row *ExcretionRow) string { return row.By.String() })
	return formula.NoRow("by", by.String(), fmt.Sprintf("has no such figure of %q, %s", animal, what), sources, arguments...)
}

// ManureDryMatter returns the dry matter in dung and urine from the dry matter
// eaten.
//
// Formula: feed * (1 - digestibility) + urine
//
// Where:
//   - feed in lb: dry matter eaten; >= 0
//   - digestibility in %: share of it that is digested; 0 to 100
//   - urine in lb: dry matter in the urine, 0 for dung alone; >= 0
//
// Source: AWMFH-2008 the form of the standard; RUTGERS-FS036 worked example
func ManureDryMatter(feed units.DryMatter, digestibility units.Fraction, urine units.DryMatter) (units.DryMatter, error) {
	dung := feed*units.DryMatter(1-digestibility) + urine
	return units.Answer(&formulaManureDryMatter, dung, float64(feed), float64(digestibility), float64(urine))
}

// proteinOfNitrogen is crude protein over its nitrogen.
const proteinOfNitrogen = 6.25

// FeedNitrogen returns the nitrogen in feed from its crude protein.
//
// Formula: feed * protein / 6.25
//
// Where:
//   - feed in lb: dry matter eaten; >= 0
//   - protein in %: crude protein of the dry matter; 0 to 100
//
// Note: the factor is the trade's definition of crude protein, from memory; the
// source's 16 % of protein as 2.6 % of nitrogen agrees with it.
//
// Source: EXT-DAIRY-N
func FeedNitrogen(feed units.DryMatter, protein units.Fraction) (units.Mass, error) {
	nitrogen := units.Mass(float64(feed) * float64(protein) / proteinOfNitrogen)
	return units.Answer(&formulaFeedNitrogen, nitrogen, float64(feed), float64(protein))
}

// KeptSource is whose share of the nutrients eaten stays in the animal or leaves
// as milk, meat or wool.
type KeptSource int

// The sources of the share kept.
const (
	KeptFlorida          KeptSource = iota + 1 // Florida: N, P, K, Ca and Mg
	KeptNebraska                               // Nebraska: N
	KeptPrairieHeavy                           // shortgrass prairie, heavy grazing: N
	KeptPrairieLight                           // shortgrass prairie, light grazing: N
	KeptFattening                              // Rothamsted 1894: N of fattening oxen and sheep, and of horses
	KeptPig                                    // Rothamsted 1894: N of pigs
	KeptMilkingCow                             // Rothamsted 1894: N of milking cows
	KeptPurdueNitrogen                         // Purdue 1993: N
	KeptPurduePhosphorus                       // Purdue 1993: P
	KeptPurduePotassium                        // Purdue 1993: K
	KeptHolsteinMilk                           // Holstein cows: N that goes to milk
)

// NutrientKept returns the share of a nutrient eaten that does not come back to
// the land.
//
// Table: the printed span of the source; where print gives what passes through,
// the rest
//
// Where:
//   - by: whose
//   - place in %: where in the printed span, 0 its low end and 100 its high; 0 to 100
//
// Note: the sources differ: of nitrogen 10 to 20 % (Florida), 10 to 30 (Nebraska),
// 17 to 21 (prairie), under 5 (fattening stock), 15 (pigs), 25 (milking cows).
// Most potassium leaves in the urine, most phosphorus and magnesium in the dung,
// and much of it falls near shade and water, not where it was eaten [IFAS-RETURN].
//
// Source: IFAS-RETURN, NEB-RETURN, PRAIRIE-1975, AIKMAN-1894, PURDUE-AY277,
// EXT-DAIRY-N
func NutrientKept(by KeptSource, place units.Fraction) (units.Fraction, error) {
	var span units.Span[units.Fraction]
	if by >= KeptFlorida && int(by) <= len(keptShares) {
		span = keptShares[by-1]
	}
	return units.Answer(&formulaNutrientKept, span.Low+(span.High-span.Low)*place, float64(by), float64(place))
}

// NutrientReturned returns what comes back to the land of a nutrient eaten.
//
// Formula: eaten * (1 - kept)
//
// Where:
//   - eaten in lb: nutrient in the feed; >= 0
//   - kept in %: share that the animal keeps or gives in milk; 0 to 100
//
// Note: NutrientKept holds the shares in print. Come back is not where it is
// wanted: see there.
//
// Source: IFAS-RETURN; EXT-DAIRY-N
func NutrientReturned(eaten units.Mass, kept units.Fraction) (units.Mass, error) {
	return units.Answer(&formulaNutrientReturned, eaten*units.Mass(1-kept), float64(eaten), float64(kept))
}

// HeadAtNitrogenLimit returns how many animals a nitrogen limit allows.
//
// Formula: limit / nitrogen / 10000
//
// Where:
//   - limit in kg: nitrogen from manure that a hectare may get in a year; >= 0
//   - nitrogen in kg: nitrogen of one animal in a year; > 0
//
// Note: the limit is law, 170 kg in the European Union and more where the
// authority allows it [IRELAND-N], and so is the figure of one animal: use those
// of your country, and ask the authority or an adviser.
//
// Source: IRELAND-N; ESEU-2021
func HeadAtNitrogenLimit(limit, nitrogen units.Mass) (units.HeadRate, error) {
	rate := units.HeadRate(float64(limit)/float64(nitrogen)) * units.HeadPerHectare
	return units.Answer(&formulaHeadAtNitrogenLimit, rate, float64(limit), float64(nitrogen))
}

// Housing is where dairy cows spend their year.
type Housing int

// The ways of housing.
const (
	HousingWinter        Housing = iota + 1 // six winter months all in, half of the summer days
	HousingSummerMilking                    // in summer in for milking only
)

// CollectedShare returns the share of dairy cows' manure that is collected; the
// rest falls on pasture.
//
// Table: the printed share
//
// Where:
//   - housing: how they are kept
//
// Source: WISC-A3601
func CollectedShare(housing Housing) (units.Fraction, error) {
	var share units.Fraction
	if housing >= HousingWinter && int(housing) <= len(collectedShares) {
		share = collectedShares[housing-1]
	}
	return units.Answer(&formulaCollectedShare, share, float64(housing))
}

// CropContact is how the part of a crop that is eaten stands to the soil.
type CropContact int

// The ways a crop stands.
const (
	EdibleTouchesSoil  CropContact = iota + 1 // the part that is eaten touches the soil
	EdibleAboveSoil                           // it does not
	EdibleNotForPeople                        // people do not eat the crop
)

// RawManureDays returns how many days must lie between raw manure, grazing animals'
// too, and the harvest of an organic crop in the United States.
//
// Table: 120 days where the edible part touches the soil, 90 where it does not,
// none where people do not eat the crop
//
// Where:
//   - contact: how the crop stands
//
// Note: the rule is of organic farming in one country. Raw manure can carry what
// makes people ill: keep to the local rules of food safety, which may ask for
// more. That droppings of grazing stock count as raw manure is from memory.
//
// Source: CFR-205 paragraph 203(c)(1)
func RawManureDays(contact CropContact) (units.Days, error) {
	var days units.Days
	if contact >= EdibleTouchesSoil && int(contact) <= len(rawManureDays) {
		days = rawManureDays[contact-1]
	}
	return units.Answer(&formulaRawManureDays, days, float64(contact))
}
