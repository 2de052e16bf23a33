package forage

import "example.org/soum/units"

func prussicInches(crop PrussicCrop, by PrussicSource, low, high units.Height, source, mark string) PrussicHeightRow {
	return PrussicHeightRow{crop, by, inches([2]units.Height{low, high}), printed(source, mark)}
}

// prussicHeights is the table of PrussicHeight.
var prussicHeights = []PrussicHeightRow{
	prussicInches(PrussicSudangrass, PrussicByNebraska, 18, 18, "NEBRASKA-PRUSSIC", "A"),
	prussicInches(PrussicSorghum, PrussicByNebraska, 24, 24, "NEBRASKA-PRUSSIC", "A"),
	prussicInches(PrussicSorghumSudangrass, PrussicByNebraska, 24, 24, "NEBRASKA-PRUSSIC", "A"),
	prussicInches(PrussicSudangrass, PrussicByIllinois, 18, 18, "ILLINOIS-PRUSSIC", "A"),
	prussicInches(PrussicSorghumSudangrass, PrussicByIllinois, 24, 24, "ILLINOIS-PRUSSIC", "A"),
	prussicInches(PrussicSorghum, PrussicByKansas, 18, 24, "KSTATE-SORGHUM", "B"),
	prussicInches(PrussicSudangrass, PrussicByPress, 18, 18, "AGPROUD-FROST", "B"),
	prussicInches(PrussicSorghumSudangrass, PrussicByPress, 30, 30, "AGPROUD-FROST", "B"),
	prussicInches(PrussicSorghum, PrussicByDrovers, 15, 15, "DROVERS-FROST", "B"),
	prussicInches(PrussicSorghumSudangrass, PrussicByDrovers, 15, 15, "DROVERS-FROST", "B"),
}

func waitDays(low, high units.Days) units.Span[units.Days] {
	return units.Span[units.Days]{Low: low, High: high}
}

// prussicWaits is the table of PrussicWait. Of AGPROUD-FROST the wait for stands
// below its heights is taken, and its end of two weeks after the frost that kills new
// shoots agrees with it.
var prussicWaits = []PrussicWaitRow{
	{FrostLight, PrussicByNebraska, waitDays(7, 7), printed("NEBRASKA-PRUSSIC", "A")},
	{FrostKilling, PrussicByNebraska, waitDays(7, 7), printed("NEBRASKA-PRUSSIC", "A")},
	{FrostLight, PrussicByIllinois, waitDays(4, 5), printed("ILLINOIS-PRUSSIC", "A")},
	{FrostKilling, PrussicByIllinois, waitDays(8, 10), printed("ILLINOIS-PRUSSIC", "A")},
	{FrostKilling, PrussicByPress, waitDays(10, 14), printed("AGPROUD-FROST", "B")},
	{FrostKilling, PrussicByDairy, waitDays(5, 6), printed("AGPROUD-PRUSSIC", "B")},
	{FrostLight, PrussicByDrovers, waitDays(14, 14), printed("DROVERS-FROST", "B")},
	{FrostKilling, PrussicByDrovers, waitDays(10, 14), printed("DROVERS-FROST", "B")},
}

// longestPrussicWait is the longest of them.
const longestPrussicWait units.Days = 14

// The limits of CyanideClass: KSTATE-CYANIDE, mark A; AGRILIFE-CYANIDE, mark A.
const (
	cyanideToxicDry  = 500 * units.PartPerMillion
	cyanideToxicAsIs = 200 * units.PartPerMillion
	cyanideDeadly    = 0.1 * units.PartPerHundred
)

// Grams of wilted leaves for a pound of weight, MARYLAND-CHERRY, mark A.
const (
	cherryLeast = 0.46
	cherryMost  = 1.82
)
