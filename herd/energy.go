package herd

import "example.org/soum/units"

// FatCorrectedMilk returns the milk of 4 % fat that holds as much energy as a
// milk of another fat.
//
// Formula: milk * (0.4 + 15*fat)
//
// Where:
//   - milk in kg/day: milk as it was given; >= 0
//   - fat in %: fat of that milk; 0 to 100
//
// Source: GAINES-FCM
func FatCorrectedMilk(milk units.Milk, fat units.Fraction) (units.Milk, error) {
	corrected := float64(milk) * (0.4 + float64(15*float64(fat)))
	return units.Answer(&formulaFatCorrectedMilk, units.Milk(corrected), float64(milk), float64(fat))
}

// GoatEnergy returns the metabolizable energy that a goat needs in a day to hold
// her weight, grow and give milk.
//
// Empirical: 101.38*pow(weight, 0.75) + 7.25*gain + 1246.12*milk
//
// Where:
//   - weight in kg: live weight; > 0
//   - gain in g/day: growth; >= 0
//   - milk in kg/day: milk told at 4 % fat, see FatCorrectedMilk; >= 0
//   - result in kcal/day: metabolizable energy
//
// Note: this is a goat that stands. Walking for browse costs more, and so does
// cold. The source corrects a kilogram of milk by 16.28 kcal for each half per
// cent of fat; milk told at 4 % fat is corrected already.
//
// Source: NRC-1981-GOAT
func GoatEnergy(weight units.LiveWeight, gain units.LiveGain, milk units.Milk) (units.EnergyRate, error) {
	kilocalories := float64(101.38*metabolic(float64(weight))) + float64(7.25*float64(gain/units.GainGramPerDay)) + float64(1246.12*float64(milk))
	return units.Answer(&formulaGoatEnergy, units.EnergyRate(kilocalories)*units.KilocaloriePerDay, float64(weight), float64(gain), float64(milk))
}

// ProteinKind is which protein is meant.
type ProteinKind int

// The kinds.
const (
	ProteinDigestible ProteinKind = iota + 1 // what is digested of it
	ProteinTotal                             // all of it, crude protein
)

// GoatProtein returns the protein that goes with a goat's digestible energy.
//
// Table: 22 g of digestible or 32 g of total protein for each megacalorie
//
// Where:
//   - energy in Mcal/day: digestible energy; >= 0
//   - kind: digestible or total protein
//
// Source: NRC-1981-GOAT
func GoatProtein(energy units.EnergyRate, kind ProteinKind) (units.NutrientRate, error) {
	each := 22 * units.NutrientGramPerDay
	if kind == ProteinTotal {
		each = 32 * units.NutrientGramPerDay
	}
	protein := units.NutrientRate(float64(energy/units.MegacaloriePerDay)) * each
	return units.Answer(&formulaGoatProtein, protein, float64(energy), float64(kind))
}

// MaintenanceEnergy returns the net energy that beef cattle need in a day to hold
// their weight.
//
// Empirical: 0.077 * pow(weight, 0.75)
//
// Where:
//   - weight in kg: shrunk weight, without the fill of the gut; > 0
//   - result in Mcal/day: net energy for maintenance
//
// Note: the factor is from memory; what it gives agrees with what a lesson prints
// for a steer of 715 lb but for the third digit (5.885 against 5.89). Cold, wet
// and walking come on top: see ColdNeed.
//
// Source: NEM-SLIDES the printed value; the factor from memory
func MaintenanceEnergy(weight units.LiveWeight) (units.EnergyRate, error) {
	megacalories := 0.077 * metabolic(float64(weight))
	return units.Answer(&formulaMaintenanceEnergy, units.EnergyRate(megacalories)*units.MegacaloriePerDay, float64(weight))
}

// EnergyForGain returns the net energy for gain that is left when a beast has
// eaten what holds its weight. Below 0 the feed does not hold it; how much it
// loses is not told by that.
//
// Formula: (intake - need/maintenance) * gain
//
// Where:
//   - intake in kg/day: dry matter eaten; >= 0
//   - need in Mcal/day: net energy for maintenance, see MaintenanceEnergy; >= 0
//   - maintenance in Mcal/kg: net energy of the feed for maintenance; > 0
//   - gain in Mcal/kg: net energy of the feed for gain; >= 0
//
// Source: NEM-SLIDES
func EnergyForGain(intake units.Demand, need units.EnergyRate, maintenance, gain units.EnergyDensity) (units.EnergyRate, error) {
	left := (float64(intake) - float64(need)/float64(maintenance)) * float64(gain)
	return units.Answer(&formulaEnergyForGain, units.EnergyRate(left), float64(intake), float64(need), float64(maintenance), float64(gain))
}

// EnergyChain is whose factors turn digestible nutrients into energy.
type EnergyChain int

// The chains. They differ in the third digit.
const (
	ChainGoat     EnergyChain = iota + 1 // 4.409 Mcal a kg; 76 digestible are 62 metabolizable are 35 net
	ChainRuminant                        // 4.4 Mcal a kg; metabolizable is 82 % of digestible
	ChainPound                           // 2,000 kcal a pound, digestible only
)

// EnergyLevel is how far down the gut the energy of a feed is counted.
type EnergyLevel int

// The levels.
const (
	EnergyDigestible    EnergyLevel = iota + 1 // not lost in dung
	EnergyMetabolizable                        // nor in urine and gas
	EnergyNet                                  // nor as the heat of eating
)

// EnergyOfNutrients returns the energy in total digestible nutrients, digestible,
// metabolizable or net.
//
// Table: digestible energy for each kg or lb of total digestible nutrients, and
// the shares of it that are metabolizable and net, by chain
//
// Where:
//   - tdn in kg/day: total digestible nutrients; >= 0
//   - chain: whose factors
//   - level: which energy
//
// Errors: a *units.ParseError where the chain prints no factor for the level: net
// energy of the ruminants' chain, and all but digestible energy of the pound's
//
// Note: net energy is one number here; for beef and dairy cattle it is told apart
// for maintenance, gain and milk, which this does not do.
//
// Source: NRC-1981-GOAT; NMSU-SHEEP; TDN-SLIDES
func EnergyOfNutrients(tdn units.NutrientRate, chain EnergyChain, level EnergyLevel) (units.EnergyRate, error) {
	each, share := chainRow(chain, level)
	energy := units.EnergyRate(float64(tdn) * float64(each) * share)
	if share == 0 {
		var levels []string
		for _, row := range chainRows {
			if row.chain == chain {
				levels = append(levels, row.level.String())
			}
		}
		return units.NoFigure[units.EnergyRate](&formulaEnergyOfNutrients, 2, "the source prints no factor for this energy", levels,
			float64(tdn), float64(chain), float64(level))
	}
	return units.Answer(&formulaEnergyOfNutrients, energy, float64(tdn), float64(chain), float64(level))
}

// UpkeepTable is a printed column of what an animal needs to hold its weight.
type UpkeepTable int

// The columns.
const (
	UpkeepEweProtein     UpkeepTable = iota + 1 // crude protein of a ewe, 50 to 90 kg
	UpkeepGoatProtein                           // crude protein of a goat, 22 to 224 lb
	UpkeepGoatDigestible                        // total digestible nutrients of a goat, 22 to 224 lb
)

// UpkeepNutrient returns the protein or the digestible nutrients that a ewe or a
// goat needs in a day to hold its weight.
//
// Table: by weight; between two rows a straight line, which is ours. Below the
// first and above the last row the value of that row, beside a range error.
//
// Where:
//   - table: column of which print
//   - weight in kg: live weight; > 0
//
// Errors: a *units.RangeError beside the value outside the rows of the table
//
// Source: NRC-1985-SHEEP; ACES-GOAT table 3
func UpkeepNutrient(table UpkeepTable, weight units.LiveWeight) (units.NutrientRate, error) {
	rows, source := upkeepColumn(table)
	need := units.NutrientRate(alongTable(rows, float64(weight)))
	first, last := rows[0].at, rows[len(rows)-1].at
	if float64(weight) < first || float64(weight) > last {
		return units.AnswerWithin(&formulaUpkeepNutrient, 1, units.Between(first, last, source), need, float64(table), float64(weight))
	}
	return units.Answer(&formulaUpkeepNutrient, need, float64(table), float64(weight))
}

// EweEnergy returns the metabolizable energy that a ewe needs in a day to hold
// her weight.
//
// Table: rows of 50, 60, 70 and 90 kg; between two rows a straight line, which is
// ours. Below the first and above the last row the value of that row, beside a
// range error.
//
// Where:
//   - weight in kg: live weight; > 0; 50 to 90 [NRC-1985-SHEEP]
//
// Note: it is 2.0 Mcal for each kg of dry matter in EweIntake.
//
// Source: NRC-1985-SHEEP table 1
func EweEnergy(weight units.LiveWeight) (units.EnergyRate, error) {
	energy := units.EnergyRate(alongTable(eweEnergy, float64(weight))) * units.MegacaloriePerDay
	return units.Answer(&formulaEweEnergy, energy, float64(weight))
}

// NeedStock is an animal of one weight whose needs print tells.
type NeedStock int

// The animals.
const (
	NeedEweUpkeep        NeedStock = iota + 1 // ewe of 150 lb with twins, maintenance
	NeedEweLateGestation                      // the same, late gestation
	NeedEweLactating                          // the same, in milk
	NeedCowAfterCalving                       // beef cow of 1,200 lb, first 90 days, 20 lb of milk at the peak
	NeedCowLateGestation                      // beef cow of 1,300 lb, late gestation
)

// FeedValue is what a feed is valued by.
type FeedValue int

// The values.
const (
	FeedDigestible FeedValue = iota + 1 // total digestible nutrients
	FeedProtein                         // crude protein
)

// FeedNeed returns the digestible nutrients or the protein that print wants for an
// animal in a day.
//
// Table: by animal
//
// Where:
//   - stock: which animal
//   - value: digestible nutrients or protein
//
// Errors: a *units.ParseError where print has no figure: the protein of the cow in
// late gestation
//
// Note: needs of animals in good flesh and mild weather; see ColdNeed. An adviser
// balances a ration on an analysis of the feed.
//
// Source: NCSU-EWE; NEB-RASBY; NDSU-COLD
func FeedNeed(stock NeedStock, value FeedValue) (units.NutrientRate, error) {
	need := needOf(stock, value)
	if need == 0 {
		return units.NoFigure[units.NutrientRate](&formulaFeedNeed, 1, "no figure is printed for this animal", namesFeedValue[FeedDigestible:FeedProtein], float64(stock), float64(value))
	}
	return units.Answer(&formulaFeedNeed, need, float64(stock), float64(value))
}
