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

	lbDay = units.PoundPerDay

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
		Water: WaterSmallRuminant, WaterInMilk: WaterLactatingEwe, Manure: ManureUnknown, Excretion: "lamb", ExcretionBy: ExcretedHandbook,
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
		Water: WaterSmallRuminant, WaterInMilk: WaterLactatingEwe, Manure: ManureUnknown, Excretion: "lamb", ExcretionBy: ExcretedHandbook,
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
		Water: WaterSmallRuminant, WaterInMilk: WaterLactatingGoat, Manure: ManureUnknown, Excretion: "goat", ExcretionBy: ExcretedEngland,
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
		Water: WaterSmallRuminant, WaterInMilk: WaterLactatingGoat, Manure: ManureUnknown, Excretion: "goat", ExcretionBy: ExcretedEngland,
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
		Water: WaterHorse, Manure: ManureUnknown, Excretion: "horse-idle", ExcretionBy: ExcretedHandbook,
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
		Water: WaterChicken, Manure: ManureUnknown, Excretion: "broiler", ExcretionBy: ExcretedHandbook,
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
	{
		Name: "dairy-heifer", Kind: Cattle, Need: NeedGrowth,
		Weight: 1000 * lb, WeightSource: "UMAINE-DEMAND table 2", WeightMark: "A",
		Intake: []StageIntake{
			{StageGrowing, percent(2.5, 3.5), "UMAINE-DEMAND table 2", "A"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterCattle, Manure: ManureHeifer,
		Note: "The print reckons the heifer at the shares of the cow; NCAT-MATH prints 3 % for growing cattle.",
	},
	{
		Name: "beef-heifer", Kind: Cattle, Need: NeedGrowth,
		Weight: 700 * lb, WeightSource: "MANITOBA-AUM heifer", WeightMark: "A",
		Intake: []StageIntake{
			{StageGrowing, percent(3, 3), "NCAT-MATH growing cattle", "A"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterCattle, Manure: ManureSteer,
		Note: "A heifer of this weight is 0.80 animal units with MANITOBA-AUM, 0.7 by weight; in calf she is a whole one with RANGELANDS-GATEWAY.",
	},
	{
		Name: "weaned-calf", Kind: Cattle, Need: NeedGrowth,
		Weight: 200 * kg, WeightSource: "FEED-TABLE-STEERS row of 200 kg", WeightMark: "B",
		Intake: []StageIntake{
			{StageGrowing, measured(4500*g, 5400*g, 200*kg), "FEED-TABLE-STEERS gaining 0.25 to 0.75 kg a day, for 200 kg", "D"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterCattle, Manure: ManureSteer,
		Note: "Reckoned in animal units a weaned calf is 0.6 (RANGELANDS-GATEWAY, IDAHO-RANGE) or 0.75 (SMALLHOLDER-AU). A calf at its mother is no class of its own: PairWeight adds it.",
	},
	{
		Name: "bull", Kind: Cattle, Need: NeedUpkeep,
		Weight: 2000 * lb, WeightSource: "MSU-P2564 row of 2,000 lb", WeightMark: "B",
		Intake: []StageIntake{
			{StageDry, measured(37.2*lbDay, 37.2*lbDay, 2000*lb), "MSU-P2564 37.2 lb holding weight, for 2,000 lb", "D"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterCattle, Manure: ManureSteer,
		Note: "Bulls kill people, those of dairy breeds above all: never work with one alone or turn your back on him, and ask an adviser before you keep one near a path. In animal units print has from 1.25 to over 2.0.",
	},
	{
		Name: "ram", Kind: Sheep, Need: NeedUpkeep,
		Weight: 260 * lb, WeightSource: "SOUTHERN-LIVESTOCK about 0.26 animal units, read as weight over 1,000 lb", WeightMark: "D",
		Intake: []StageIntake{
			{StageDry, percent(2.5, 2.5), "SDSU-RAM mature rams before mating", "A"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterSmallRuminant, Manure: ManureUnknown, Excretion: "lamb", ExcretionBy: ExcretedHandbook,
		Note: "No print of a ram at rest was found; a ewe at rest eats 2.5 % with NCAT-MATH and less with others. The weight is that of a large ram: state your own.",
	},
	{
		Name: "growing-lamb", Kind: Sheep, Need: NeedGrowth,
		Weight: 85 * lb, WeightSource: "PSU-GROWTH middle of 50 and 120 lb", WeightMark: "D",
		Intake: []StageIntake{
			{StageGrowing, measured(2.5*lbDay, 2.5*lbDay, 85*lb), "PSU-GROWTH 0.5 lb gain a day at 5 lb of feed, at the middle of 50 and 120 lb; complete feed as it lies", "D"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterSmallRuminant, Manure: ManureUnknown, Excretion: "lamb", ExcretionBy: ExcretedHandbook,
		Note: "Fed on grass a lamb gains less and wants more of it for each pound. Lambs at foot are reckoned with the ewe.",
	},
	{
		Name: "buck-goat", Kind: Goats, Need: NeedUpkeep,
		Weight: 200 * lb, WeightSource: "LANGSTON-BUCK", WeightMark: "A",
		Intake: []StageIntake{
			{StageDry, measured(3.55*lbDay, 3.55*lbDay, 200*lb), "LANGSTON-BUCK 3.55 lb at rest, for 200 lb", "D"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterSmallRuminant, Manure: ManureUnknown, Excretion: "goat", ExcretionBy: ExcretedEngland,
		Note: "A maintenance figure, 1.8 %; grazing goats eat more: NCAT-MATH prints 4 to 5 % for goats of any kind.",
	},
	{
		Name: "growing-kid", Kind: Goats, Need: NeedGrowth,
		Weight: 40 * kg, WeightSource: "EFSA-2018 table E.1, fattening goat", WeightMark: "A",
		Intake: []StageIntake{
			{StageGrowing, measured(1500*g, 1500*g, 40*kg), "EFSA-2018 table E.1 1.5 kg for 40 kg, gaining 0.3 kg a day", "D"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterSmallRuminant, Manure: ManureUnknown,
		Note: "In the print 40 % of it is not forage: on grass alone the kid gains less, and where it is fed, state the share from pasture.",
	},
	{
		Name: "pony", Kind: Horses, Need: NeedUpkeep,
		Weight: 268 * kg, WeightSource: "PONY-PASTURE mean of four mares", WeightMark: "A",
		Intake: []StageIntake{
			{StageDry, percent(1.6, 3.3), "PONY-RESTRICTED horses and ponies at pasture", "A"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterHorse, Manure: ManureUnknown, Excretion: "horse-idle", ExcretionBy: ExcretedHandbook,
		Note: "Sources differ twofold: 1.5 to 2.0 % is the usual span for grown horses, four idle ponies ate 3.4 to 4.2 % of their weight and gained nearly a kilogram a day (PONY-PASTURE). Rich grass founders ponies: a vet decides how much grass one may have.",
	},
	{
		Name: "weanling-horse", Kind: Horses, Need: NeedGrowth,
		Weight: 300 * kg, WeightSource: "HORSE-GLOSSARY", WeightMark: "B",
		Intake: []StageIntake{
			{StageGrowing, percent(2, 2), "HORSE-GLOSSARY 6 kg a day for 300 kg", "B"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterHorse, Manure: ManureUnknown, Excretion: "horse-idle", ExcretionBy: ExcretedHandbook,
		Note: "VT-HORSE prints 2.0 to 3.5 % at six months, air dry, of which only 0.5 to 1.0 % is forage.",
	},
	{
		Name: "donkey", Kind: Donkeys, Need: NeedUpkeep,
		Weight: 180 * kg, WeightSource: "BURDEN-BELL-2019 its example", WeightMark: "B",
		Intake: []StageIntake{
			{StageDry, percent(1.3, 1.8), "BURDEN-BELL-2019", "B"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterUnknown, Manure: ManureUnknown,
		Note: "LRRD-DONKEY quotes 3.1 % from work of 1973. Donkeys need less than horses and grow fat, and ill, on grass that suits a cow: straw is the usual filler, and a vet decides. No print of what they drink was found.",
	},
	{
		Name: "alpaca", Kind: Camelids, Need: NeedUpkeep,
		Weight: 65 * kg, WeightSource: "SA-DSE", WeightMark: "A",
		Intake: []StageIntake{
			{StageDry, percent(1.5, 2), "HAF-CAMELID grown alpaca", "B"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterUnknown, Manure: ManureUnknown,
		Note: "SA-DSE has 1.1 dry sheep for a male and 1.3 for a female of this weight; at a kilogram of dry matter each that is 1.7 and 2.0 %, which agrees.",
	},
	{
		Name: "llama", Kind: Camelids, Need: NeedUpkeep,
		Weight: 365 * lb, WeightSource: "RUTGERS-CAMELID middle of 280 and 450 lb", WeightMark: "D",
		Intake: []StageIntake{
			{StageDry, measured(0.30*9480.0/365*lbDay, 0.30*9480.0/365*lbDay, 365*lb), "NRCS-BRYAN-528 0.30 of an animal unit of 9,480 lb a year, for 365 lb", "D"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterUnknown, Manure: ManureUnknown,
		Note: "The weight and the appetite are of two sources. HAF-CAMELID prints 1.5 to 2.0 % for the alpaca; of the llama no share was found.",
	},
	{
		Name: "white-tailed-deer", Kind: Deer, Need: NeedUpkeep,
		Weight: 100 * lb, WeightSource: "TX-AU-CHART", WeightMark: "A",
		Intake: []StageIntake{
			{StageDry, percent(3.5, 3.5), "TX-AU-CHART", "A"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterUnknown, Manure: ManureUnknown,
		Note: "The chart is for forage of any sort; deer browse more than they graze. Sheep may carry a fever that kills deer: keep them apart.",
	},
	{
		Name: "axis-deer", Kind: Deer, Need: NeedUpkeep,
		Weight: 150 * lb, WeightSource: "TX-AU-CHART", WeightMark: "A",
		Intake: []StageIntake{
			{StageDry, percent(3.5, 3.5), "TX-AU-CHART", "A"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterUnknown, Manure: ManureUnknown,
		Note: "As for the white-tailed deer. For farmed red and fallow deer print has units and no weights: Equivalents lists them with SA-DSE.",
	},
	{
		Name: "sika-deer", Kind: Deer, Need: NeedUpkeep,
		Weight: 145 * lb, WeightSource: "TX-AU-CHART", WeightMark: "A",
		Intake: []StageIntake{
			{StageDry, percent(3.5, 3.5), "TX-AU-CHART", "A"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterUnknown, Manure: ManureUnknown,
		Note: "As for the white-tailed deer.",
	},
	{
		Name: "growing-rabbit", Kind: Rabbits, Need: NeedGrowth,
		Weight: 1.4 * kg, WeightSource: "ESEU-2021 table 3 mean weight", WeightMark: "A",
		Intake: []StageIntake{
			{StageGrowing, measured(43.4*g, 45.2*g, 1.4*kg), "WRS-18243 43.4 and 45.2 g of grass a day at 45 to 80 days, for 1.4 kg", "D"},
		},
		Pasture: percent(100, 100), PastureSource: onlyGrass, PastureMark: "practice",
		Water: WaterUnknown, Manure: ManureUnknown,
		Note: counted + " The rabbits of the print had too little grass; with plenty they ate up to about 75 g for each kg^0.75 (LEGENDRE-RABBIT). MLA-DSE has 0.1 dry sheep for a wild rabbit.",
	},
	{
		Name: "turkey", Kind: Turkeys, Need: NeedGleaning,
		Weight: 6.5 * kg, WeightSource: "ESEU-2021 table 3 mean weight", WeightMark: "A",
		Intake: []StageIntake{
			{StageGrowing, measured(197*g, 197*g, 6.5*kg), "EPA-BIRD equation at 6.5 kg", "D"},
		},
		Pasture: percent(0, 30), PastureSource: "SFA-POULTRY up to 30 % of the diet", PastureMark: "A",
		Water: WaterTurkey, Manure: ManureTurkey,
		Note: "The share is the most that turkeys may take, not what a ration may leave out: plan on none, as IFAS-AN237 has it for chickens, of which SFA-POULTRY says up to 20 %. Keep turkeys off ground that held chickens.",
	},
	{
		Name: "duck", Kind: Ducks, Need: NeedGleaning,
		Weight: 1.6 * kg, WeightSource: "ESEU-2021 table 3 mean weight", WeightMark: "A",
		Intake: []StageIntake{
			{StageGrowing, measured(79*g, 79*g, 1.6*kg), "EPA-BIRD equation at 1.6 kg", "D"},
		},
		Pasture: percent(5, 10), PastureSource: "ours: that of hens (IFAS-AN237), since no print of ducks was found", PastureMark: "practice",
		Water: WaterUnknown, Manure: ManureUnknown, Excretion: "duck", ExcretionBy: ExcretedHandbook,
		Note: "A duck is 0.003, 0.010 or 0.030 of a unit by source; use none of them for grass.",
	},
}

// rate is a printed span of head on an area.
func rate(low, high float64, unit units.HeadRate) units.Span[units.HeadRate] {
	return units.Span[units.HeadRate]{Low: units.HeadRate(low) * unit, High: units.HeadRate(high) * unit}
}

// each is the rate by the room of one animal.
func each(room float64, unit units.Area) units.Span[units.HeadRate] {
	return units.Single(units.HeadRate(1 / (room * float64(unit))))
}

const (
	perAcre    = units.HeadPerAcre
	perHectare = units.HeadPerHectare
)
