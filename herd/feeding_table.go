package herd

import "example.org/soum/units"

// beefRows is what a beef cow eats, by class of forage: low under 52 % total
// digestible nutrients, high over 59.
var beefRows = []struct {
	source BeefSource
	stage  Stage
	class  forageClass
	share  units.Fraction
}{
	{BeefHibberdThrift, StageDry, lowForage, 1.8 * units.Percent},           // HIBBERD-THRIFT A
	{BeefHibberdThrift, StageDry, averageForage, 2.2 * units.Percent},       // HIBBERD-THRIFT A
	{BeefHibberdThrift, StageDry, highForage, 2.5 * units.Percent},          // HIBBERD-THRIFT A
	{BeefHibberdThrift, StageLactating, lowForage, 2.2 * units.Percent},     // HIBBERD-THRIFT A
	{BeefHibberdThrift, StageLactating, averageForage, 2.5 * units.Percent}, // HIBBERD-THRIFT A
	{BeefHibberdThrift, StageLactating, highForage, 2.7 * units.Percent},    // HIBBERD-THRIFT A
	{BeefNebraska, StageDry, lowForage, 1.8 * units.Percent},                // NEB-RASBY B
	{BeefNebraska, StageDry, averageForage, 2.0 * units.Percent},            // NEB-RASBY B
	{BeefNebraska, StageLactating, averageForage, 2.3 * units.Percent},      // NEB-RASBY B
}

// The columns of the sheep table, kg of dry matter a day by kg of ewe:
// NRC-1985-SHEEP table 1, A.
var (
	eweUpkeep         = []tablePoint{{50, 1.0}, {60, 1.1}, {70, 1.2}, {90, 1.4}}
	eweFlushing       = []tablePoint{{50, 1.6}, {60, 1.7}, {70, 1.8}, {90, 2.0}}
	eweEarlyGestation = []tablePoint{{50, 1.2}, {60, 1.3}, {70, 1.4}}
)

func eweColumn(state EweState) []tablePoint {
	switch state {
	case EweFlushing:
		return eweFlushing
	case EweEarlyGestation:
		return eweEarlyGestation
	}
	return eweUpkeep
}

// inPounds turns rows printed in pounds, both columns, into base units.
func inPounds(rows ...tablePoint) []tablePoint {
	for i := range rows {
		rows[i] = tablePoint{rows[i].at * float64(units.LivePound), rows[i].value * float64(units.PoundPerDay)}
	}
	return rows
}

// The goat table, lb a day by lb of goat, and what growth in lb a day adds:
// ACES-GOAT table 3, A.
var (
	goatDryMatter = inPounds(
		tablePoint{22, 0.63},
		tablePoint{45, 1.08},
		tablePoint{67, 1.46},
		tablePoint{112, 2.13},
		tablePoint{134, 2.44},
		tablePoint{179, 3.05},
		tablePoint{224, 3.58},
	)
	goatGrowth = inPounds(
		tablePoint{0, 0},
		tablePoint{0.11, 0.40},
		tablePoint{0.22, 0.79},
		tablePoint{0.33, 1.19},
	)
)

// goatPregnant is what late pregnancy adds: ACES-GOAT table 3, A.
const goatPregnant = 1.56 * float64(units.PoundPerDay)

// growingGains and growingWeights are the columns and rows of growingRows, in kg
// a day and kg.
var (
	growingGains   = [...]float64{0, 0.25, 0.50, 0.75, 1.00}
	growingWeights = [...]float64{100, 150, 200, 250, 300, 350, 450, 500}
)

// growingRows is the table of steers, kg of dry matter a day: FEED-TABLE-STEERS, B.
var growingRows = [len(growingWeights)][len(growingGains)]float64{
	{2.2, 2.6, 3.0, 3.2, 3.3},    // 100 kg
	{3.0, 3.8, 4.2, 4.4, 4.5},    // 150 kg
	{3.7, 4.5, 5.2, 5.4, 5.6},    // 200 kg
	{4.4, 5.3, 6.2, 6.4, 6.6},    // 250 kg
	{5.0, 6.0, 7.0, 7.4, 7.5},    // 300 kg
	{5.7, 6.8, 7.9, 8.3, 8.5},    // 350 kg
	{6.8, 8.2, 9.5, 10.0, 10.2},  // 450 kg
	{7.4, 8.9, 10.3, 10.8, 11.0}, // 500 kg
}

type horseRow struct {
	class  string
	shares [3]units.Span[units.Fraction]
}

// horseRows is what horses are expected to eat, forage, concentrate and total:
// VT-HORSE table 5, A.
var horseRows = []horseRow{
	{"maintenance", [3]units.Span[units.Fraction]{percent(1.5, 2.0), percent(0, 0.5), percent(1.5, 2.0)}},
	{"late-gestation", [3]units.Span[units.Fraction]{percent(1.0, 1.5), percent(0.5, 1.0), percent(1.5, 2.0)}},
	{"early-lactation", [3]units.Span[units.Fraction]{percent(1.0, 2.0), percent(1.0, 2.0), percent(2.0, 3.0)}},
	{"late-lactation", [3]units.Span[units.Fraction]{percent(1.0, 2.0), percent(0.5, 1.5), percent(2.0, 2.5)}},
	{"light-work", [3]units.Span[units.Fraction]{percent(1.0, 2.0), percent(0.5, 1.0), percent(1.5, 2.5)}},
	{"intense-work", [3]units.Span[units.Fraction]{percent(0.75, 1.5), percent(1.0, 2.0), percent(2.0, 3.0)}},
	{"weanling", [3]units.Span[units.Fraction]{percent(0.5, 1.0), percent(1.5, 3.0), percent(2.0, 3.5)}},
	{"yearling", [3]units.Span[units.Fraction]{percent(1.0, 1.5), percent(1.0, 2.0), percent(2.0, 3.0)}},
}

// eaten is a printed span of grams of dry matter a day.
func eaten(low, high float64) units.Span[units.Demand] {
	return units.Span[units.Demand]{Low: units.Demand(low) * g, High: units.Demand(high) * g}
}

// eatenKilograms is a printed span of kilograms of dry matter a day.
func eatenKilograms(low, high units.Demand) units.Span[units.Demand] {
	return units.Span[units.Demand]{Low: low, High: high}
}

// eatenPounds is one printed figure of pounds of dry matter a day.
func eatenPounds(figure float64) units.Span[units.Demand] {
	return units.Single(units.Demand(figure) * units.PoundPerDay)
}

// What several rows say in their note.
const (
	organic  = "Printed as organic matter: the dry matter is more by the ash."
	riskWork = "A reference figure of feed-safety work, the whole ration."
	ofTwins  = "A ewe with twins, the whole feed."
	nzEwe    = "Printed beside the ewe's weight as her need."
)

// intakeFigures is the table of printed intakes.
var intakeFigures = []IntakeFigure{
	{"broiler-on-pasture", Chickens, 0, units.Single(10.7 * g), true, printed("RIVERA-2007", "A"), "Aged 25 to 80 days; up to 7 % of their protein and 3 % of their energy."},
	{"barnacle-goose-wild", Geese, 0, units.Single(135 * g), true, printed("WILDFOWL-EBBINGE", "A"), "Wild, on winter grass."},
	{"domestic-goose", Geese, 0, eaten(240, 420), true, printed("GEESE-SPAIN", "B"), "No agency prints a figure of a farm goose."},
	{"sow-pregnant", Pigs, 0, units.Single(units.Demand(2.4)), true, printed("THUENEN-SOW", "A"), "Grass-clover of 8.1 MJ metabolizable energy a kg: half of maintenance. ORGANIC-SOW measured a sixth of it."},
	{"organic-sow-pregnant", Pigs, 0, units.Single(420 * g), true, printed("ORGANIC-SOW", "A"), "2.4 kg fresh. THUENEN-SOW measured six times as much."},
	{"organic-sow-peak-milk", Pigs, 0, units.Single(574 * g), true, printed("ORGANIC-SOW", "A"), "3.2 kg fresh."},
	{"organic-sow-day-40", Pigs, 0, units.Single(472 * g), true, printed("ORGANIC-SOW", "A"), "2.6 kg fresh."},
	{"sow-spring", Pigs, 0, eatenKilograms(0.2, 1.8), true, printed("RIVERA-EDWARDS-2001", "A"), organic},
	{"sow-summer", Pigs, 0, eatenKilograms(0.9, 4.8), true, printed("RIVERA-EDWARDS-2001", "A"), organic},

	{"ewe-upkeep", Sheep, 150 * lb, eatenPounds(2.6), false, printed("NCSU-EWE", "A"), ofTwins},
	{"ewe-late-gestation", Sheep, 150 * lb, eatenPounds(4.0), false, printed("NCSU-EWE", "A"), ofTwins},
	{"ewe-lactating", Sheep, 150 * lb, eatenPounds(4.4), false, printed("NCSU-EWE", "A"), ofTwins + " 2.9 % of weight; NCAT-MATH prints 4.5 %."},
	{"ewe-crossbred-breeding", Sheep, 0, units.Single(units.Demand(1.11)), false, printed("EWE-TRIAL", "A"), "One trial."},
	{"ewe-crossbred-mid-pregnancy", Sheep, 0, units.Single(units.Demand(1.20)), false, printed("EWE-TRIAL", "A"), "One trial."},
	{"ewe-crossbred-late-pregnancy", Sheep, 0, units.Single(units.Demand(1.44)), false, printed("EWE-TRIAL", "A"), "One trial."},
	{"nz-ewe-45-flushing", Sheep, 45 * kg, eatenKilograms(1.20, 1.28), false, printed("NZ-FEED", "B"), nzEwe},
	{"nz-ewe-55-flushing", Sheep, 55 * kg, eatenKilograms(1.35, 1.5), false, printed("NZ-FEED", "B"), nzEwe},
	{"nz-ewe-45-three-months", Sheep, 45 * kg, eatenKilograms(0.89, 0.90), false, printed("NZ-FEED", "B"), nzEwe + " Three months before lambing."},
	{"nz-ewe-55-three-months", Sheep, 55 * kg, eatenKilograms(0.95, 1.05), false, printed("NZ-FEED", "B"), nzEwe + " Three months before lambing."},
	{"nz-ewe-65-three-months", Sheep, 65 * kg, eatenKilograms(1.10, 1.20), false, printed("NZ-FEED", "B"), nzEwe + " Three months before lambing."},
	{"nz-ewe-45-two-months", Sheep, 45 * kg, eatenKilograms(0.90, 0.95), false, printed("NZ-FEED", "B"), nzEwe + " Two months before lambing."},
	{"nz-ewe-55-two-months", Sheep, 55 * kg, eatenKilograms(1.0, 1.10), false, printed("NZ-FEED", "B"), nzEwe + " Two months before lambing."},
	{"nz-ewe-65-two-months", Sheep, 65 * kg, eatenKilograms(1.15, 1.25), false, printed("NZ-FEED", "B"), nzEwe + " Two months before lambing."},
	{"boer-cross-buck", Goats, 200 * lb, eatenPounds(3.55), false, printed("LANGSTON-BUCK", "A"), "At rest, holding weight."},

	{"dairy-cow-40-kg-milk", Cattle, 650 * kg, units.Single(units.Demand(20.7)), false, printed("EFSA-2018 table E.1", "A"), riskWork + " 40 % of it not forage."},
	{"beef-1-kg-gain", Cattle, 400 * kg, units.Single(units.Demand(9.6)), false, printed("EFSA-2018 table E.1", "A"), riskWork + " 15 % of it not forage."},
	{"beef-maize-silage", Cattle, 300 * kg, units.Single(units.Demand(6.6)), false, printed("EFSA-2018 table E.1", "A"), riskWork + " Gains 1.4 kg; 25 % of it not forage."},
	{"beef-straw", Cattle, 300 * kg, units.Single(units.Demand(8.0)), false, printed("EFSA-2018 table E.1", "A"), riskWork + " Gains 0.9 kg; 68 % of it not forage."},
	{"beef-cereals", Cattle, 400 * kg, units.Single(units.Demand(10.0)), false, printed("EFSA-2018 table E.1", "A"), riskWork + " Gains 1.4 kg; 85 % of it not forage."},
	{"ewe-twins", Sheep, 80 * kg, units.Single(units.Demand(2.8)), false, printed("EFSA-2018 table E.1", "A"), riskWork + " 50 % of it not forage."},
	{"goat-6-kg-milk", Goats, 60 * kg, units.Single(units.Demand(3.4)), false, printed("EFSA-2018 table E.1", "A"), riskWork + " 65 % of it not forage."},
	{"goat-fattening", Goats, 40 * kg, units.Single(units.Demand(1.5)), false, printed("EFSA-2018 table E.1", "A"), riskWork + " Gains 0.3 kg; 40 % of it not forage."},
	{"horse-moderate-work", Horses, 450 * kg, units.Single(units.Demand(9.0)), false, printed("EFSA-2018 table E.1", "A"), riskWork + " 50 % of it not forage."},
}
