package forage

import "example.org/soum/units"

// monthly makes a row of growth by month, in per cent.
func monthly(name string, shares [12]units.Fraction, source, mark, note string) GrowthCurve {
	for i := range shares {
		shares[i] *= units.Percent
	}
	return GrowthCurve{name, shares, printed(source, mark), note}
}

var growthCurves = []GrowthCurve{
	monthly("north-dakota-cool-season", [12]units.Fraction{0, 0, 0, 5, 40, 35, 10, 5, 5, 0, 0, 0}, "ND-CURVE curve ND0002", "A", ""),
	monthly("colorado-warm-season", [12]units.Fraction{0, 0, 0, 3, 20, 45, 20, 10, 2, 0, 0, 0}, "COLORADO-CURVES C06707", "B", "Upland fine soils, 100 lb/ac of the plants counted."),
	monthly("colorado-untitled", [12]units.Fraction{0, 0, 0, 0, 15, 45, 25, 15, 0, 0, 0, 0}, "COLORADO-CURVES", "B", "Its title was not read."),
	monthly("colorado-cool-season", [12]units.Fraction{0, 0, 5, 10, 22, 35, 15, 10, 3, 0, 0, 0}, "COLORADO-CURVES", "B", "Of a cool-season type."),
	monthly("colorado-second", [12]units.Fraction{0, 0, 0, 5, 30, 40, 20, 5, 0, 0, 0, 0}, "COLORADO-CURVES", "B", "The second curve of the page of colorado-cool-season."),
	monthly("alfalfa-grass", [12]units.Fraction{0, 0, 0, 0, 31, 20, 15, 15, 10, 6, 0, 0}, "PSU-MONTHS", "D", "Solved from printed acres, each month alone; May lies between 28.4 and 33.5 %. Yields 3, 4.5 and 6 short tons an acre."),
	monthly("stockpiled-tall-fescue", [12]units.Fraction{0, 0, 0, 5, 31, 20, 12, 0, 0, 11, 12, 11.7}, "PSU-MONTHS", "D", "Solved from printed acres, each month alone; grown from August, grazed from October. Yields 3, 4.5 and 5.5 short tons an acre."),
}

// seasonal makes a row of growth by season, in per cent and kg/ha.
func seasonal(place string, winter, spring, summer, autumn units.Fraction, annual units.Yield) SeasonCurve {
	const p = units.Percent
	return SeasonCurve{place, winter * p, spring * p, summer * p, autumn * p, annual * units.KilogramPerHectare, printed("NZ-SEASONS", "A")}
}

var seasonCurves = []SeasonCurve{
	seasonal("gisborne-plains", 17, 35, 25, 23, 0),
	seasonal("wairarapa", 16, 46, 16, 22, 0),
	seasonal("wairakei", 8, 38, 37, 17, 0),
	seasonal("stratford", 9, 36, 32, 23, 9940),
	seasonal("southland-plains", 6, 35, 40, 19, 0),
	seasonal("invermay", 6, 38, 38, 18, 0),
	seasonal("motueka", 13, 46, 20, 21, 0),
}

const (
	lbDay = units.PoundPerAcreDay
	kgDay = units.KilogramPerHectareDay
)

var growthRows = []GrowthRow{
	{"ohio-2010", "28-march", 38.6 * lbDay, printed("OSU-PLATE", "A")},
	{"ohio-2010", "4-april", 34.4 * lbDay, printed("OSU-PLATE", "A")},
	{"ohio-2010", "11-april", 56.4 * lbDay, printed("OSU-PLATE", "A")},
	{"ohio-2010", "18-april", 48.6 * lbDay, printed("OSU-PLATE", "A")},
	{"ohio-2010", "25-april", 75 * lbDay, printed("OSU-PLATE", "A")},
	{"ohio-2010", "2-may", 97.7 * lbDay, printed("OSU-PLATE", "A")},
	{"ohio-2010", "9-may", 77.8 * lbDay, printed("OSU-PLATE", "A")},
	{"ohio-2010", "16-may", 67.4 * lbDay, printed("OSU-PLATE", "A")},
	{"ohio-2010", "23-may", 84 * lbDay, printed("OSU-PLATE", "A")},
	{"ohio-2010", "30-may", 64.6 * lbDay, printed("OSU-PLATE", "A")},
	{"ohio-2010", "6-june", 48.1 * lbDay, printed("OSU-PLATE", "A")},
	{"ohio-2010", "13-june", 64.2 * lbDay, printed("OSU-PLATE", "A")},
	{"ohio-2010", "20-june", 51.5 * lbDay, printed("OSU-PLATE", "A")},
	{"ohio-five-years", "18-april", 60.9 * lbDay, printed("OSU-PLATE", "A")},
	{"ohio-five-years", "25-april", 75.2 * lbDay, printed("OSU-PLATE", "A")},
	{"ohio-five-years", "2-may", 78.6 * lbDay, printed("OSU-PLATE", "A")},
	{"ohio-five-years", "9-may", 86.4 * lbDay, printed("OSU-PLATE", "A")},
	{"ohio-five-years", "16-may", 100 * lbDay, printed("OSU-PLATE", "A")},
	{"ohio-five-years", "23-may", 75.7 * lbDay, printed("OSU-PLATE", "A")},
	{"ohio-five-years", "30-may", 58.4 * lbDay, printed("OSU-PLATE", "A")},
	{"ohio-five-years", "6-june", 51 * lbDay, printed("OSU-PLATE", "A")},
	{"ohio-five-years", "13-june", 48.3 * lbDay, printed("OSU-PLATE", "A")},
	{"ohio-five-years", "20-june", 47.4 * lbDay, printed("OSU-PLATE", "A")},
	{"new-zealand-ryegrass-clover", "spring-at-its-fastest", 150 * lbDay, printed("BROUGHAM-1955", "A")},
	{"ireland-2023", "may", 75 * kgDay, printed("IRELAND-GROWTH", "B")},
	{"ireland-2023", "june", 45 * kgDay, printed("IRELAND-GROWTH", "B")},
	{"ireland-2023", "july-to-mid-september", 60 * kgDay, printed("IRELAND-GROWTH", "B")},
	{"ireland-2023", "winter", 4 * kgDay, printed("IRELAND-GROWTH", "B")},
	{"south-island-farm", "june", 9.5 * kgDay, printed("SIDDC-COVER", "A")},
	{"south-island-farm", "july", 8.5 * kgDay, printed("SIDDC-COVER", "A")},
	{"south-island-farm", "early-may", 28 * kgDay, printed("SIDDC-COVER", "A")},
	{"south-island-farm", "late-may", 19 * kgDay, printed("SIDDC-COVER", "A")},
	{"northern-ireland-dairy-2021", "april", 36.5 * kgDay, printed("NI-GROWTH", "B")},
	{"northern-ireland-dairy-2021", "may", 66.6 * kgDay, printed("NI-GROWTH", "B")},
	{"northern-ireland-dairy-2021", "june", 77.9 * kgDay, printed("NI-GROWTH", "B")},
	{"northern-ireland-dairy-2021", "march-to-june", 51.2 * kgDay, printed("NI-GROWTH", "B")},
	{"northern-ireland-dairy-2020", "april", 52.7 * kgDay, printed("NI-GROWTH", "B")},
	{"northern-ireland-dairy-2020", "may", 71 * kgDay, printed("NI-GROWTH", "B")},
	{"northern-ireland-dairy-2020", "june", 72.2 * kgDay, printed("NI-GROWTH", "B")},
	{"northern-ireland-dairy-2020", "march-to-june", 52.4 * kgDay, printed("NI-GROWTH", "B")},
	{"northern-ireland-dairy-2019", "march-to-june", 59.5 * kgDay, printed("NI-GROWTH", "B")},
	{"northern-ireland-beef-and-sheep-2021", "june", 67.1 * kgDay, printed("NI-GROWTH", "B")},
	{"northern-ireland-beef-and-sheep-2021", "march-to-june", 43.8 * kgDay, printed("NI-GROWTH", "B")},
	{"united-kingdom-planning", "summer", 40 * kgDay, printed("FAS-ROTATION", "A")},
}
