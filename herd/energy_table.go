package herd

import "example.org/soum/units"

// chainRow gives the digestible energy of a kg of total digestible nutrients and
// the share of it at a level, 0 where the chain prints none.
func chainRow(chain EnergyChain, level EnergyLevel) (each units.EnergyDensity, share float64) {
	for i := range chainRows {
		if row := &chainRows[i]; row.chain == chain && row.level == level {
			return row.each, row.share
		}
	}
	return 0, 0
}

// chainRows are the printed factors from digestible nutrients to energy.
var chainRows = []struct {
	chain EnergyChain
	level EnergyLevel
	each  units.EnergyDensity
	share float64
}{
	{ChainGoat, EnergyDigestible, 4.409 * units.MegacaloriePerKilogram, 1},            // NRC-1981-GOAT A
	{ChainGoat, EnergyMetabolizable, 4.409 * units.MegacaloriePerKilogram, 62. / 76.}, // NRC-1981-GOAT A
	{ChainGoat, EnergyNet, 4.409 * units.MegacaloriePerKilogram, 35. / 76.},           // NRC-1981-GOAT A
	{ChainRuminant, EnergyDigestible, 4.4 * units.MegacaloriePerKilogram, 1},          // NMSU-SHEEP A
	{ChainRuminant, EnergyMetabolizable, 4.4 * units.MegacaloriePerKilogram, 0.82},    // NMSU-SHEEP A
	{ChainPound, EnergyDigestible, 2000 * units.KilocaloriePerPound, 1},               // TDN-SLIDES A
}

// The columns of upkeep.
var (
	eweProtein = []tablePoint{{50, 0.095}, {60, 0.104}, {70, 0.113}, {90, 0.131}} // kg a day by kg: NRC-1985-SHEEP A
	eweEnergy  = []tablePoint{{50, 2.0}, {60, 2.2}, {70, 2.4}, {90, 2.8}}         // Mcal a day by kg: NRC-1985-SHEEP A

	// lb a day by lb: ACES-GOAT table 3, A
	goatProtein = inPounds(
		tablePoint{22, 0.05},
		tablePoint{45, 0.08},
		tablePoint{67, 0.11},
		tablePoint{112, 0.17},
		tablePoint{134, 0.19},
		tablePoint{179, 0.23},
		tablePoint{224, 0.28},
	)
	goatDigestible = inPounds(
		tablePoint{22, 0.35},
		tablePoint{45, 0.59},
		tablePoint{67, 0.80},
		tablePoint{112, 1.17},
		tablePoint{134, 1.34},
		tablePoint{179, 1.66},
		tablePoint{224, 1.96},
	)
)

func upkeepColumn(table UpkeepTable) (rows []tablePoint, source string) {
	switch table {
	case UpkeepGoatProtein:
		return goatProtein, "ACES-GOAT"
	case UpkeepGoatDigestible:
		return goatDigestible, "ACES-GOAT"
	}
	return eweProtein, "NRC-1985-SHEEP"
}

// needRows are printed needs, 0 where print has none.
var needRows = []struct {
	stock               NeedStock
	digestible, protein units.NutrientRate // lb a day
}{
	{NeedEweUpkeep, 1.4, 0.2},        // NCSU-EWE A
	{NeedEweLateGestation, 2.7, 0.4}, // NCSU-EWE A
	{NeedEweLactating, 2.9, 0.7},     // NCSU-EWE A
	{NeedCowAfterCalving, 16, 2.7},   // NEB-RASBY B
	{NeedCowLateGestation, 12.7, 0},  // NDSU-COLD A
}

func needOf(stock NeedStock, value FeedValue) units.NutrientRate {
	for i := range needRows {
		row := &needRows[i]
		if row.stock != stock {
			continue
		}
		if value == FeedProtein {
			return row.protein * units.NutrientPoundPerDay
		}
		return row.digestible * units.NutrientPoundPerDay
	}
	return 0
}
