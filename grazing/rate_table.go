package grazing

import "example.org/soum/units"

// slopeSteps and waterSteps are HOLECHEK-1988, mark M.
var (
	slopeSteps = [...]step[units.Fraction]{
		{10 * units.Percent, 0},
		{30 * units.Percent, 30 * units.Percent},
		{60 * units.Percent, 60 * units.Percent},
	}
	waterSteps = [...]step[units.Length]{
		{1 * units.Mile, 0},
		{2 * units.Mile, 50 * units.Percent},
	}
)

const (
	perAcre    = units.AnimalUnitMonthPerAcre
	daysHere   = units.AnimalUnitDayPerHectare
	nativeWhen = "native range; tame dryland pasture half as much again"
)

func usage(low, high, unit units.UseRate) units.Span[units.UseRate] {
	return units.Span[units.UseRate]{Low: low * unit, High: high * unit}
}

func flat(v, unit units.UseRate) units.Span[units.UseRate] { return units.Single(v * unit) }

// initialRates is the table of InitialRate, one row a site and year.
var initialRates = []InitialRateRow{
	{"montana-valley-1", YearBelow, flat(0.09, perAcre), nativeWhen, "NRCS-MONTANA-RATES Valley County", "A"},
	{"montana-valley-1", YearNormal, flat(0.14, perAcre), nativeWhen, "NRCS-MONTANA-RATES Valley County", "A"},
	{"montana-valley-1", YearAbove, flat(0.23, perAcre), nativeWhen, "NRCS-MONTANA-RATES Valley County", "A"},
	{"montana-valley-2", YearBelow, flat(0.33, perAcre), nativeWhen, "NRCS-MONTANA-RATES Valley County", "A"},
	{"montana-valley-2", YearNormal, flat(0.44, perAcre), nativeWhen, "NRCS-MONTANA-RATES Valley County", "A"},
	{"montana-valley-2", YearAbove, flat(0.55, perAcre), nativeWhen, "NRCS-MONTANA-RATES Valley County", "A"},
	{"montana-valley-7", YearBelow, flat(0.14, perAcre), nativeWhen, "NRCS-MONTANA-RATES Valley County", "A"},
	{"montana-valley-7", YearNormal, flat(0.19, perAcre), nativeWhen, "NRCS-MONTANA-RATES Valley County", "A"},
	{"montana-valley-7", YearAbove, flat(0.25, perAcre), nativeWhen, "NRCS-MONTANA-RATES Valley County", "A"},
	{"montana-valley-15", YearBelow, flat(0.26, perAcre), nativeWhen, "NRCS-MONTANA-RATES Valley County", "A"},
	{"montana-valley-15", YearNormal, flat(0.40, perAcre), nativeWhen, "NRCS-MONTANA-RATES Valley County", "A"},
	{"montana-valley-15", YearAbove, flat(0.52, perAcre), nativeWhen, "NRCS-MONTANA-RATES Valley County", "A"},
	{"montana-valley-32-wet", YearBelow, flat(1.48, perAcre), nativeWhen, "NRCS-MONTANA-RATES Valley County", "A"},
	{"montana-valley-32-wet", YearNormal, flat(1.56, perAcre), nativeWhen, "NRCS-MONTANA-RATES Valley County", "A"},
	{"montana-valley-32-wet", YearAbove, flat(1.64, perAcre), nativeWhen, "NRCS-MONTANA-RATES Valley County", "A"},
	{"montana-dawson-20a", YearBelow, flat(0.29, perAcre), nativeWhen, "NRCS-MONTANA-RATES Dawson County", "A"},
	{"montana-dawson-20a", YearNormal, flat(0.38, perAcre), nativeWhen, "NRCS-MONTANA-RATES Dawson County", "A"},
	{"montana-dawson-20a", YearAbove, flat(0.49, perAcre), nativeWhen, "NRCS-MONTANA-RATES Dawson County", "A"},
	{"montana-dawson-50b", YearBelow, flat(0.33, perAcre), nativeWhen, "NRCS-MONTANA-RATES Dawson County", "A"},
	{"montana-dawson-50b", YearNormal, flat(0.44, perAcre), nativeWhen, "NRCS-MONTANA-RATES Dawson County", "A"},
	{"montana-dawson-50b", YearAbove, flat(0.57, perAcre), nativeWhen, "NRCS-MONTANA-RATES Dawson County", "A"},
	{"montana-dawson-38a", YearBelow, flat(0.55, perAcre), nativeWhen, "NRCS-MONTANA-RATES Dawson County", "A"},
	{"montana-dawson-38a", YearNormal, flat(0.74, perAcre), nativeWhen, "NRCS-MONTANA-RATES Dawson County", "A"},
	{"montana-dawson-38a", YearAbove, flat(0.96, perAcre), nativeWhen, "NRCS-MONTANA-RATES Dawson County", "A"},
	{"montana-sheridan-boa", YearBelow, flat(0.52, perAcre), nativeWhen, "NRCS-MONTANA-RATES Sheridan County", "A"},
	{"montana-sheridan-boa", YearNormal, flat(0.63, perAcre), nativeWhen, "NRCS-MONTANA-RATES Sheridan County", "A"},
	{"montana-sheridan-boa", YearAbove, flat(0.71, perAcre), nativeWhen, "NRCS-MONTANA-RATES Sheridan County", "A"},
	{"montana-roosevelt-daniels-7", YearBelow, flat(0.52, perAcre), nativeWhen, "NRCS-MONTANA-RATES Roosevelt and Daniels Counties", "A"},
	{"montana-roosevelt-daniels-7", YearNormal, flat(0.89, perAcre), nativeWhen, "NRCS-MONTANA-RATES Roosevelt and Daniels Counties", "A"},
	{"montana-roosevelt-daniels-7", YearAbove, flat(1.02, perAcre), nativeWhen, "NRCS-MONTANA-RATES Roosevelt and Daniels Counties", "A"},
	{"colorado-m240-excellent", YearNormal, usage(0.34, 0.42, perAcre), "mountain range, season-long, 76 to 100 % of climax plants", "SCS-COLORADO-M240 condition table", "A"},
	{"colorado-m240-fair", YearNormal, usage(0.13, 0.21, perAcre), "mountain range, season-long, 26 to 50 % of climax plants", "SCS-COLORADO-M240 condition table", "A"},
	{"colorado-m240-poor", YearNormal, usage(0, 0.12, perAcre), "mountain range, season-long, 0 to 25 % of climax plants: that much or less", "SCS-COLORADO-M240 condition table", "A"},
	{"colorado-326-excellent", YearNormal, flat(0.24, perAcre), "35 % of palatable plants; 4.1 to 5.5 acres per AUM beside it", "SCS-COLORADO-326", "B"},
	{"colorado-326-good", YearNormal, flat(0.17, perAcre), "35 % of palatable plants; 5.5 to 8.2 acres per AUM beside it", "SCS-COLORADO-326", "B"},
	{"colorado-326-fair", YearNormal, flat(0.10, perAcre), "35 % of palatable plants; 8.2 to 16.6 acres per AUM beside it", "SCS-COLORADO-326", "B"},
	{"colorado-326-poor", YearNormal, flat(0.05, perAcre), "35 % of palatable plants; 16.6 to 20 acres per AUM and over beside it", "SCS-COLORADO-326", "B"},
	{"saskatchewan-valuation-example", YearNormal, flat(0.250, perAcre), "the valuation's own example", "SAMA-LAND", "A"},
	{"plains-sand-sagebrush-lowest", YearNormal, flat(43, daysHere), "tried all year round", "GILLEN-2004", "A"},
	{"plains-sand-sagebrush-middle", YearNormal, flat(57, daysHere), "tried all year round", "GILLEN-2004", "A"},
	{"plains-sand-sagebrush-highest", YearNormal, flat(85, daysHere), "tried all year round", "GILLEN-2004", "A"},
	{"oklahoma-mixed-grass-winter-lowest", YearNormal, flat(29.7, daysHere), "tried for 88 days of winter", "GUNTER-2019", "A"},
	{"oklahoma-mixed-grass-winter-middle", YearNormal, flat(33.2, daysHere), "tried for 88 days of winter", "GUNTER-2019", "A"},
	{"oklahoma-mixed-grass-winter-highest", YearNormal, flat(39.4, daysHere), "tried for 88 days of winter", "GUNTER-2019", "A"},
	{"new-mexico-blue-grama", YearNormal, flat(35, daysHere), "tried at three densities", "LAURIAULT-2023", "A"},
	{"nebraska-sandhills-meadow", YearNormal, flat(7.4, units.AnimalUnitMonthPerHectare), "subirrigated meadow, moderate", "ANDRADE-2022", "A"},
}

func land(low, high, unit units.Area) units.Span[units.Area] {
	return units.Span[units.Area]{Low: low * unit, High: high * unit}
}

const (
	halfYear   = 180 * units.Day
	fiveMonths = 150 * units.Day
	graze3     = 3 * units.Day
)

// planningRows is the table of PlanningLand. Where a source prints head per acre,
// the land is its inverse.
var planningRows = []PlanningRow{
	{"kansas-flint-hills", "cow-and-calf", land(7.5, 8.0, units.Acre), halfYear, "six months", "KSTATE-STOCKING", "B"},
	{"western-kansas", "stocker-600-lb", land(7, 7, units.Acre), fiveMonths, "five months of a normal year", "KSTATE-STOCKING", "B"},
	{"missouri", "cow-and-calf", land(2.5, 2.5, units.Acre), 0, "good pasture of 3 short tons an acre if nothing were wasted", "MISSOURI-5292", "A"},
	{"mid-atlantic", "thousand-pounds", land(2, 2, units.Acre), 0, "each 1,000 lb of live weight", "SHEEP101-LAND", "A"},
	{"mid-atlantic", "sheep", land(1.0/3, 1.0/2, units.Acre), 0, "two or three to the acre", "SHEEP101-LAND", "A"},
	{"mid-atlantic", "goat", land(1.0/5, 1.0/4, units.Acre), 0, "four or five to the acre", "SHEEP101-LAND", "A"},
	{"west-texas", "sheep-or-goat", land(10, 10, units.Acre), 0, "ten acres or more", "SHEEP101-LAND", "A"},
	{"arkansas", "sheep-or-goat", land(1.0/2, 1/1.5, units.Acre), 0, "one and a half to two to the acre", "ARKANSAS-COFFEY", "B"},
	{"eastern-oregon", "cow", land(2, 2, units.Acre), 0, "good irrigated pasture; about five sheep or goats are one cow", "OREGON-ACRES", "A"},
	{"minnesota", "cow-and-calf", land(1.5, 3, units.Acre), 0, "normal pasture, a season", "MINN-PASTURE", "B"},
	{"alabama", "cow-on-stockpile", land(1, 1, units.Acre), 0, "grass rested 75 days, 2,000 to 3,000 lb/ac", "ALABAMA-STOCKPILE", "B"},
	{"united-kingdom", "livestock-unit", land(2, 2, units.Acre), 0, "an acre of summer grazing and an acre kept for winter forage", "SMALLHOLDING-LU", "B"},
	{"ireland-20-head", "cattle-500-kg", land(0.53/20, 0.53/20, units.Hectare), graze3, "a paddock for three days at 1,300 to 1,500 kg/ha", "TEAGASC-GUIDE", "B"},
	{"ireland-40-head", "cattle-500-kg", land(0.96/40, 0.96/40, units.Hectare), graze3, "a paddock for three days at 1,300 to 1,500 kg/ha", "TEAGASC-GUIDE", "B"},
	{"ireland-20-head", "cattle-300-kg", land(0.36/20, 0.36/20, units.Hectare), graze3, "a paddock for three days at 1,300 to 1,500 kg/ha", "TEAGASC-GUIDE", "B"},
	{"ireland-40-head", "cattle-300-kg", land(0.60/40, 0.60/40, units.Hectare), graze3, "a paddock for three days at 1,300 to 1,500 kg/ha", "TEAGASC-GUIDE", "B"},
	{"ireland-10-head", "cow-and-calf", land(0.36/10, 0.36/10, units.Hectare), graze3, "a paddock for three days at 1,300 to 1,500 kg/ha", "TEAGASC-GUIDE", "B"},
	{"ireland-30-head", "cow-and-calf", land(1.1/30, 1.1/30, units.Hectare), graze3, "a paddock for three days at 1,300 to 1,500 kg/ha", "TEAGASC-GUIDE", "B"},
}
