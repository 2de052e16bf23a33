package herd

import "example.org/soum/units"

// percent is a printed span of shares in percent.
func percent(low, high float64) units.Span[units.Fraction] {
	return units.Span[units.Fraction]{Low: units.Fraction(low) * units.Percent, High: units.Fraction(high) * units.Percent}
}

// measured is a span of grams of dry matter a day told as a share of the weight
// of the animal that ate them.
func measured(low, high units.Demand, weight units.LiveWeight) units.Span[units.Fraction] {
	return units.Span[units.Fraction]{Low: units.Fraction(float64(low) / float64(weight)), High: units.Fraction(float64(high) / float64(weight))}
}

const (
	lb = units.LivePound
	kg = units.LiveKilogram
	g  = units.GramPerDay

	// onlyGrass is why a row's pasture share is the whole.
	onlyGrass = "ours: the row reckons without other feed"
	// counted says that a row's intake is the grass alone.
	counted = "The intake counts the grazed grass alone, so all of it is from pasture; the ration at the trough comes on top."
)

// classes is the table of stock classes. Where a printed share is for another
// weight, the row says whose.
var classes = []Class{
	{
		Name: "dairy-cow", Kind: Cattle, Need: NeedMilk,
		Weight: 1400 * lb, WeightSource: "UMAINE-DEMAND table 2", WeightMark: "A",
		Intake: []StageIntake{
			{StageLactating, percent(2.5, 3.5), "NCAT-MATH", "A"},
			{StageDry, percent(1.8, 2.5), "HIBBERD-THRIFT dry, low to high forage", "A"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterDairyCow, Manure: ManureDairyCow,
		Note: "The dry share is printed for beef cows. A cow fed concentrate grazes less: state her share from pasture.",
	},
	{
		Name: "suckler-cow", Kind: Cattle, Need: NeedSuckling,
		Weight: 1300 * lb, WeightSource: "OSU-WATER middle of 1,100 to 1,500 lb", WeightMark: "D",
		Intake: []StageIntake{
			{StageLactating, percent(2.2, 2.7), "HIBBERD-THRIFT lactating, low to high forage", "A"},
			{StageDry, percent(1.8, 2.5), "HIBBERD-THRIFT dry, low to high forage", "A"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterCattle, Manure: ManureBeefCow,
		Note: "On average forage HIBBERD-THRIFT prints 2.5 % lactating and 2.2 % dry, NEB-RASBY 2.3 and 2.0, NCAT-MATH 2.5 to 3.0 for beef cattle of any stage. The calf's own grazing is not in it: PairWeight adds it.",
	},
	{
		Name: "growing-cattle", Kind: Cattle, Need: NeedGrowth,
		Weight: 750 * lb, WeightSource: "WISC-A3601 beef", WeightMark: "B",
		Intake: []StageIntake{
			{StageGrowing, percent(3, 3), "NCAT-MATH", "A"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterCattle, Manure: ManureSteer,
		Note: "One printed figure, so low and high are the same.",
	},
	{
		Name: "dairy-ewe", Kind: Sheep, Need: NeedMilk,
		Weight: 150 * lb, WeightSource: "NCSU-EWE", WeightMark: "A",
		Intake: []StageIntake{
			{StageLactating, percent(4.5, 4.5), "NCAT-MATH", "A"},
			{StageDry, percent(2.5, 2.5), "NCAT-MATH", "A"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterSmallRuminant, WaterInMilk: WaterLactatingEwe, Manure: ManureUnknown,
		Note: "The weight is that of a meat ewe; no figure of a milked ewe's intake on pasture was found.",
	},
	{
		Name: "ewe", Kind: Sheep, Need: NeedSuckling,
		Weight: 150 * lb, WeightSource: "NCSU-EWE", WeightMark: "A",
		Intake: []StageIntake{
			{StageDry, percent(2.5, 2.5), "NCAT-MATH", "A"},
			{StageLactating, percent(4.5, 4.5), "NCAT-MATH", "A"},
			{StageLateGestation, measured(4.0*units.PoundPerDay, 4.0*units.PoundPerDay, 150*lb), "NCSU-EWE 4.0 lb for 150 lb", "D"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterSmallRuminant, WaterInMilk: WaterLactatingEwe, Manure: ManureUnknown,
		Note: "For the same ewe with twins NCSU-EWE prints 2.6 lb at maintenance and 4.4 lb in milk (1.7 and 2.9 % of weight), well under NCAT-MATH; its late-gestation figure belongs to that lower set.",
	},
	{
		Name: "dairy-goat", Kind: Goats, Need: NeedMilk,
		Weight: 60 * kg, WeightSource: "EFSA-2018 table E.1, milking goat", WeightMark: "A",
		Intake: []StageIntake{
			{StageLactating, percent(4, 5), "NCAT-MATH", "A"},
			{StageDry, percent(3, 5), "UMN-GOAT", "A"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterSmallRuminant, WaterInMilk: WaterLactatingGoat, Manure: ManureUnknown,
		Note: "UMN-GOAT prints 3 to 5 % for dairy goats on pasture at any stage. ACES-GOAT prints 1.6 to 2.8 % at bare maintenance; grazing goats eat more.",
	},
	{
		Name: "meat-goat", Kind: Goats, Need: NeedSuckling,
		Weight: 130 * lb, WeightSource: "EXT-GOAT example doe", WeightMark: "A",
		Intake: []StageIntake{
			{StageDry, percent(4, 5), "NCAT-MATH", "A"},
			{StageLactating, percent(4, 5), "NCAT-MATH", "A"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterSmallRuminant, WaterInMilk: WaterLactatingGoat, Manure: ManureUnknown,
		Note: "NCAT-MATH prints one span for goats of any stage. TX-AU-CHART has 4.5 % for nannies of 70 and 90 lb. Goats that browse graze less.",
	},
	{
		Name: "horse", Kind: Horses, Need: NeedUpkeep,
		Weight: 1000 * lb, WeightSource: "LPELC-HORSE", WeightMark: "A",
		Intake: []StageIntake{
			{StageDry, percent(1.5, 2.5), "EXT-HORSE grazing all day", "A"},
			{StageLactating, percent(2.8, 2.8), "HORSE-GLOSSARY lactating mare", "B"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterHorse, Manure: ManureUnknown,
		Note: "Fewer hours on grass do not cut what is eaten in step.",
	},
	{
		Name: "sow", Kind: Pigs, Need: NeedRooting,
		Weight: 375 * lb, WeightSource: "WISC-A3601 sow and litter", WeightMark: "B",
		Intake: []StageIntake{
			{StageDry, measured(420*g, 2400*g, 375*lb), "ORGANIC-SOW 420 g pregnant, THUENEN-SOW 2.4 kg, for 375 lb", "D"},
			{StageLactating, measured(472*g, 574*g, 375*lb), "ORGANIC-SOW 472 g at day 40, 574 g at peak milk, for 375 lb", "D"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterPig, WaterInMilk: WaterLactatingSow, Manure: ManureBreedingPig,
		Note: counted + " UMN-SOW holds that good forage can take the place of up to half of a sow's grain and supplement.",
	},
	{
		Name: "growing-pig", Kind: Pigs, Need: NeedRooting,
		Weight: 150 * lb, WeightSource: "WISC-A3601 pig", WeightMark: "B",
		Intake: []StageIntake{
			{StageGrowing, measured(5.1*units.PoundPerDay, 5.1*units.PoundPerDay, 160*lb), "PSU-GROWTH 1.7 lb gain a day at 3 lb feed, at the mean of 60 and 260 lb; feed as it lies", "D"},
		},
		Pasture: percent(4, 5), PastureSource: "EDWARDS-PIG with free feed and with feed at 70 %", PastureMark: "B",
		Water: WaterPig, Manure: ManureSlaughterPig,
		Note: "The intake is the whole ration; nearly all of it comes from the trough.",
	},
	{
		Name: "laying-hen", Kind: Chickens, Need: NeedGleaning,
		Weight: 4 * lb, WeightSource: "WISC-A3601 layer", WeightMark: "B",
		Intake: []StageIntake{
			{StageLaying, measured(91*g, 91*g, 2*kg), "EPA-BIRD equation at 2 kg", "D"},
		},
		Pasture: percent(5, 10), PastureSource: "IFAS-AN237", PastureMark: "A",
		Water: WaterChicken, Manure: ManureHen,
		Note: "IFAS-AN237 says to plan on no feed from pasture when a ration is made: the share is what hens may take from the grass, not what the ration may leave out.",
	},
	{
		Name: "broiler", Kind: Chickens, Need: NeedGleaning,
		Weight: 2 * lb, WeightSource: "WISC-A3601 broiler", WeightMark: "B",
		Intake: []StageIntake{
			{StageGrowing, measured(10.7*g, 10.7*g, 2*lb), "RIVERA-2007 10.7 g, for 2 lb", "D"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterChicken, Manure: ManureUnknown,
		Note: counted + " It gave the birds up to 7 % of their protein and 3 % of their energy.",
	},
	{
		Name: "goose", Kind: Geese, Need: NeedGleaning,
		Weight: 5 * kg, WeightSource: "from memory: a grown goose of a middling farm breed, no source seen", WeightMark: "M",
		Intake: []StageIntake{
			{StageDry, measured(240*g, 420*g, 5*kg), "GEESE-SPAIN 240 to 420 g, for 5 kg; the weight is from memory", "D"},
		},
		Pasture: percent(100, 100), PastureSource: "NCAT-POULTRY up to nearly all", PastureMark: "A",
		Water: WaterUnknown, Manure: ManureUnknown,
		Note: "No agency figure of a farm goose's grazing was found: GEESE-SPAIN was read in a copy. Reckoned in livestock units a goose is 0.003 or 0.030, ten times apart; use neither for grass. Goslings need more than grass.",
	},
}
