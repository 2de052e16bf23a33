package grazing

import "example.org/soum/units"

// LandPerUse returns the land behind each animal-unit day, the stocking rate
// as most range sheets write it (acres per animal-unit month or year).
//
// Formula: area / (animals * days)
//
// Where:
//   - area in ac: all the land the herd uses in that time; > 0
//   - animals in AU: the herd in animal units, of whichever reckoning you state beside it; > 0
//   - days in days: how long the herd is on it; > 0
//
// Note: a month of grazing is 30 days here and a year 360, as the unit itself
// has it. The animal unit is not one thing (by weight, by metabolic weight, of
// a table): rates compare only within one reckoning.
//
// Source: OSU-PSS-2871 stocking rate example
func LandPerUse(area units.Area, animals units.AnimalUnits, days units.Days) (units.LandPerUse, error) {
	land := units.LandPerUse(float64(area) / (float64(animals) * float64(days)))
	return units.Answer(&formulaLandPerUse, land, float64(area), float64(animals), float64(days))
}

// UsePerLand returns the grazing taken from each unit of land, the other way
// up from LandPerUse: animal-unit months per acre, or the grazing days per
// hectare of a grazing record.
//
// Formula: animals * days / area
//
// Where:
//   - area in ac: all the land the herd uses in that time; > 0
//   - animals in AU: the herd in animal units; >= 0
//   - days in days: how long the herd is on it; >= 0
//
// Note: one animal unit for 30 days on so many acres turns acres per
// animal-unit month into its inverse.
//
// Source: SCS-COLORADO-M240 the two columns of the condition table
func UsePerLand(area units.Area, animals units.AnimalUnits, days units.Days) (units.UseRate, error) {
	rate := units.UseRate(float64(animals) * float64(days) / float64(area))
	return units.Answer(&formulaUsePerLand, rate, float64(area), float64(animals), float64(days))
}

// Use returns the grazing that a piece of land offers at a rate, as when the
// map units of a farm are added up one by one.
//
// Formula: rate * area
//
// Where:
//   - rate in AUM/ac: grazing per area that a survey or a valuation gives; >= 0
//   - area in ac: the land of that kind; >= 0
//
// Source: SAMA-LAND carrying capacity of a quarter section; STOCKING-LESSON
func Use(rate units.UseRate, area units.Area) (units.UnitDays, error) {
	use := units.UnitDays(float64(rate) * float64(area))
	return units.Answer(&formulaUse, use, float64(rate), float64(area))
}

// StayArea returns the land that feeds a herd for a stay.
//
// Formula: demand * days / (available * use)
//
// Where:
//   - demand in lb/day: dry matter the whole herd eats in a day; >= 0
//   - days in days: length of the stay; >= 0
//   - available in lb/ac: dry matter standing above what is to be left; > 0
//   - use in %: share of the available that ends in the animals; > 0 and <= 100
//
// Note: the answer is as good as the measured grass. Watch the animals and the
// height left on the first moves: hungry stock break fences and take plants
// they would pass by, some of them poisonous. Where condition falls, ask a vet
// or an adviser.
//
// Source: PSU-STAY; UCONN-STEPS sheep example; MISSOURI-5292
func StayArea(demand units.Demand, days units.Days, available units.Yield, use units.Fraction) (units.Area, error) {
	area := units.Area(float64(demand) * float64(days) / (float64(available) * float64(use)))
	return units.Answer(&formulaStayArea, area, float64(demand), float64(days), float64(available), float64(use))
}

// StayDays returns how long a piece of land feeds a herd, growth during the
// stay left out. It is StayArea solved for the days.
//
// Formula: area * available * use / demand
//
// Where:
//   - area in ac: land the herd may reach; >= 0
//   - available in lb/ac: dry matter standing above what is to be left; >= 0
//   - use in %: share of the available that ends in the animals; 0 to 100
//   - demand in lb/day: dry matter the whole herd eats in a day; > 0
//
// Note: for range the sheets take the whole standing crop and a small share of
// it (25 %), for pasture what stands above the residual and a large one (60 to
// 80 %). Do not mix the two.
//
// Source: TAMU-1646 days of grazing left; UMAINE-STICK days formula
func StayDays(area units.Area, available units.Yield, use units.Fraction, demand units.Demand) (units.Days, error) {
	days := units.Days(float64(area) * float64(available) * float64(use) / float64(demand))
	return units.Answer(&formulaStayDays, days, float64(area), float64(available), float64(use), float64(demand))
}

// StayHead returns how many animals a piece of land feeds for a stay, exact
// and not rounded: round down.
//
// Formula: area * available * use / (weight * intake * days)
//
// Where:
//   - area in ac: land the animals may reach; >= 0
//   - available in lb/ac: dry matter on offer, on the basis that use is a share of; >= 0
//   - use in %: share of it that ends in the animals; 0 to 100
//   - weight in lb: live weight of one animal; > 0
//   - intake in %: dry matter eaten in a day as a share of live weight; > 0 and <= 100
//   - days in days: length of the stay; > 0
//
// Source: KSTATE-STOCKING; UMAINE-STICK number of animals
func StayHead(area units.Area, available units.Yield, use units.Fraction, weight units.LiveWeight, intake units.Fraction, days units.Days) (float64, error) {
	head := float64(area) * float64(available) * float64(use) / (float64(weight) * float64(intake) * float64(days))
	return units.Answer(&formulaStayHead, head, float64(area), float64(available), float64(use), float64(weight), float64(intake), float64(days))
}

// DaysPerHeight returns the cow-days in each unit of height of a stand.
//
// Formula: density / intake
//
// Where:
//   - density in lb/ac/in: dry matter per area and height of the stand; >= 0
//   - intake in lb/day: what the cow of the cow-day eats; > 0
//
// Note: the source's cow eats 30 lb a day, more than the 25 or 26 lb of most
// animal units, and it rounds an exact 11.7 down to 11. A cow-day is kept as an
// animal-unit day of that intake: keep the intake with it.
//
// Source: UMAINE-LESSON-5 a simpler approach
func DaysPerHeight(density units.Density, intake units.Demand) (units.UseDensity, error) {
	days := units.UseDensity(float64(density) / float64(intake))
	return units.Answer(&formulaDaysPerHeight, days, float64(density), float64(intake))
}

// DaysPerLand returns the cow-days on each unit of land between the height
// standing and the height to be left.
//
// Formula: (height - residual) * density
//
// Where:
//   - height in in: mean ruler height of the undisturbed stand; >= 0
//   - residual in in: height to be left standing; 0 to height
//   - density in AUD/ac/in: cow-days per area and height, as of DaysPerHeight; >= 0
//
// Source: UMAINE-LESSON-5 a simpler approach, worked example
func DaysPerLand(height, residual units.Height, density units.UseDensity) (units.UseRate, error) {
	days := units.UseRate(float64(height-residual) * float64(density))
	return units.Answer(&formulaDaysPerLand, days, float64(height), float64(residual), float64(density))
}

// DayArea returns the land a herd needs where the cow-days on it are known.
//
// Formula: animals * days / use
//
// Where:
//   - animals in AU: the herd, in the cows of the cow-day; >= 0
//   - days in days: length of the stay; >= 0
//   - use in AUD/ac: cow-days on each unit of land, as of DaysPerLand; > 0
//
// Source: UMAINE-LESSON-5 a simpler approach, worked example
func DayArea(animals units.AnimalUnits, days units.Days, use units.UseRate) (units.Area, error) {
	area := units.Area(float64(animals) * float64(days) / float64(use))
	return units.Answer(&formulaDayArea, area, float64(animals), float64(days), float64(use))
}

// CarryingCapacity returns the animals that each unit of land feeds through a
// season. With the grass available now, the use of one stay and the days of
// that stay the same sum is the number of head per area for one grazing
// period.
//
// Formula: yield * use / (intake * days)
//
// Where:
//   - yield in lb/ac: dry matter grown in the season, or available now; >= 0
//   - use in %: share of it eaten over the season, or in the stay; 0 to 100
//   - intake in lb/day: dry matter one animal eats in a day; > 0
//   - days in days: length of the season, or of the stay; > 0
//
// Note: the share eaten over a season and the share eaten in one stay are two
// figures; the first is the lower on range and where stock stay long. Print has the
// first by system (forage.SystemUse), the second by stay (forage.UsableShare). What a
// season carries also depends on when the grass grows: this sum does not know.
//
// Source: UMAINE-LESSON-5 equations 1 and 2; NRCS-BRYAN-528 job sheet
func CarryingCapacity(yield units.Yield, use units.Fraction, intake units.Demand, days units.Days) (units.HeadRate, error) {
	rate := units.HeadRate(float64(yield) * float64(use) / (float64(intake) * float64(days)))
	return units.Answer(&formulaCarryingCapacity, rate, float64(yield), float64(use), float64(intake), float64(days))
}

// LandForHead returns the land for a group at so many head per area.
//
// Formula: head / rate
//
// Where:
//   - head: animals in the group; >= 0
//   - rate in head/ha: animals each unit of land carries; > 0
//
// Source: SRUC-SHEEPNET group and paddock areas; FREE-RANGE-HENS 4 m² each
func LandForHead(head float64, rate units.HeadRate) (units.Area, error) {
	area := units.Area(head / float64(rate))
	return units.Answer(&formulaLandForHead, area, head, float64(rate))
}

// HeadOnLand returns the animals that a rate puts on a piece of land, exact and
// not rounded: round down. It is LandForHead the other way round.
//
// Formula: area * rate
//
// Where:
//   - area in ha: the land; >= 0
//   - rate in head/ha: animals each unit of land carries; >= 0
//
// Source: QUEENSLAND-CAPACITY head of 1,000 ha; definition: rate times land
func HeadOnLand(area units.Area, rate units.HeadRate) (float64, error) {
	return units.Answer(&formulaHeadOnLand, float64(area)*float64(rate), float64(area), float64(rate))
}
