package forage

import "example.org/soum/units"

// rest makes a row of printed rest, in days.
func rest(situation string, season Season, low, high units.Days, source, mark, note string) RestRow {
	return RestRow{situation, season, units.Span[units.Days]{Low: low, High: high}, printed(source, mark), note}
}

var restRows = []RestRow{
	rest("alfalfa-grazing-type", AllYear, 15, 30, "UGA-HEIGHTS", "A", ""),
	rest("annual-ryegrass", AllYear, 7, 15, "UGA-HEIGHTS", "A", ""),
	rest("bahiagrass", AllYear, 10, 20, "UGA-HEIGHTS", "A", "Florida names 28 days: bahiagrass-florida."),
	rest("bermudagrass", AllYear, 7, 15, "UGA-HEIGHTS", "A", ""),
	rest("white-clover", AllYear, 7, 15, "UGA-HEIGHTS", "A", ""),
	rest("other-clovers", AllYear, 10, 20, "UGA-HEIGHTS", "A", ""),
	rest("orchardgrass", AllYear, 15, 30, "UGA-HEIGHTS", "A", ""),
	rest("pearl-millet", AllYear, 10, 20, "UGA-HEIGHTS", "A", ""),
	rest("small-grains", AllYear, 7, 15, "UGA-HEIGHTS", "A", ""),
	rest("sorghum-sudan", AllYear, 10, 20, "UGA-HEIGHTS", "A", ""),
	rest("switchgrass", AllYear, 30, 45, "UGA-HEIGHTS", "A", ""),
	rest("tall-fescue", AllYear, 15, 30, "UGA-HEIGHTS", "A", ""),
	rest("bahiagrass-florida", AllYear, 28, 28, "IFAS-REST", "A", "Named as ideal."),
	rest("british-pasture", Spring, 15, 21, "FAS-ROTATION", "A", ""),
	rest("british-pasture", Summer, 25, 30, "FAS-ROTATION", "A", ""),
	rest("british-pasture", Autumn, 30, 40, "FAS-ROTATION", "A", ""),
	rest("british-pasture", Winter, 90, 100, "FAS-ROTATION", "A", ""),
	rest("british-cattle-or-ewes", AllYear, 21, 21, "SRUC-SHEEPNET", "B", ""),
	rest("british-ewes-and-lambs", AllYear, 12, 21, "SRUC-EWES", "B", "Where they rotate."),
	rest("new-york-cool-season", Spring, 15, 15, "CORNELL-PLAN", "A", "For planning."),
	rest("new-york-cool-season", Summer, 30, 30, "CORNELL-PLAN", "A", "For planning."),
	rest("new-york-cool-season", Autumn, 30, 30, "CORNELL-PLAN", "A", "For planning."),
	rest("indiana-cool-season", Spring, 14, 14, "INDIANA-REST", "B", "30 as growth slows."),
	rest("indiana-cool-season", Summer, 45, 60, "INDIANA-REST", "B", "In the heat."),
	rest("west-virginia-grass-clover", Spring, 21, 21, "WVU-PADDOCKS", "A", ""),
	rest("west-virginia-grass-clover", Summer, 42, 42, "WVU-PADDOCKS", "A", "Midsummer."),
	rest("pennsylvania-pasture", Spring, 15, 15, "PENNSYLVANIA-GUIDE", "A", "Early spring."),
	rest("pennsylvania-pasture", Summer, 30, 30, "PENNSYLVANIA-GUIDE", "A", ""),
	rest("fescue-ryegrass-dairy", AllYear, 12, 28, "OZARKS-DAIRY", "B", "Leaving 4 in."),
	rest("southern-australia-perennial", Spring, 20, 20, "MLA-REST", "A", "Not less, even in spring."),
	rest("irish-pasture", Summer, 25, 25, "FARMERS-JOURNAL-ROTATION", "A", "Middle of August; a rotation, of which the stay is a part."),
	rest("irish-pasture", Autumn, 30, 35, "FARMERS-JOURNAL-ROTATION", "A", "Early and middle of September; a rotation, of which the stay is a part."),
	rest("irrigated-ryegrass", AllYear, 23, 48, "PRETORIA-REST", "A", "23 days at 94 kg/ha a day, 39 at 73 and at 56, 48 at 43."),
}

// leafDays is DAIRYNZ-LEAF, spring first; mark A.
var leafDays = [...]units.Span[units.Days]{
	Spring - 1: {Low: 9, High: 11},
	Summer - 1: {Low: 8, High: 10},
	Autumn - 1: {Low: 8, High: 12},
	Winter - 1: {Low: 11, High: 15},
}
