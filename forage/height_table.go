package forage

import "example.org/soum/units"

// tall is a row of heights in inches.
func tall(crop string, by HeightSource, begin, most, end, left units.Height, source, mark string) HeightRow {
	return HeightRow{crop, by, inches([2]units.Height{begin, most}), inches([2]units.Height{end, left}), printed(source, mark)}
}

// tallMetric is a row of single heights in centimetres.
func tallMetric(crop string, begin, end units.Height) HeightRow {
	return HeightRow{crop, HeightsByScotland, units.Single(begin * units.HeightCentimetre), units.Single(end * units.HeightCentimetre), printed("SRUC-SHEEPNET", "B")}
}

// heightRows is the table of GrazingHeight.
var heightRows = []HeightRow{
	tall("alfalfa", HeightsByGeorgia, 10, 16, 2, 4, "UGA-HEIGHTS", "A"),
	tall("annual-ryegrass", HeightsByGeorgia, 6, 12, 3, 4, "UGA-HEIGHTS", "A"),
	tall("bahiagrass", HeightsByGeorgia, 6, 10, 1, 2, "UGA-HEIGHTS", "A"),
	tall("bermudagrass", HeightsByGeorgia, 4, 8, 1, 2, "UGA-HEIGHTS", "A"),
	tall("white-clover", HeightsByGeorgia, 6, 8, 1, 3, "UGA-HEIGHTS", "A"),
	tall("other-clovers", HeightsByGeorgia, 8, 10, 3, 5, "UGA-HEIGHTS", "A"),
	tall("orchardgrass", HeightsByGeorgia, 8, 12, 3, 6, "UGA-HEIGHTS", "A"),
	tall("pearl-millet", HeightsByGeorgia, 20, 24, 8, 12, "UGA-HEIGHTS", "A"),
	tall("small-grains", HeightsByGeorgia, 8, 12, 4, 4, "UGA-HEIGHTS", "A"),
	tall("sorghum-sudangrass", HeightsByGeorgia, 20, 24, 8, 12, "UGA-HEIGHTS", "A"),
	tall("switchgrass", HeightsByGeorgia, 18, 22, 8, 12, "UGA-HEIGHTS", "A"),
	tall("tall-fescue", HeightsByGeorgia, 4, 8, 2, 3, "UGA-HEIGHTS", "A"),

	tall("sideoats-grama", HeightsByLuling, 6, 6, 4, 4, "LULING-STICK", "A"),
	tall("switchgrass", HeightsByLuling, 12, 12, 8, 8, "LULING-STICK", "A"),
	tall("brownseed-paspalum", HeightsByLuling, 8, 8, 6, 6, "LULING-STICK", "A"),
	tall("big-bluestem", HeightsByLuling, 12, 12, 8, 8, "LULING-STICK", "A"),
	tall("eastern-gamagrass", HeightsByLuling, 12, 12, 8, 8, "LULING-STICK", "A"),
	tall("cordgrass", HeightsByLuling, 8, 8, 4, 4, "LULING-STICK", "A"),
	tall("little-bluestem", HeightsByLuling, 12, 12, 8, 8, "LULING-STICK", "A"),
	tall("indiangrass", HeightsByLuling, 12, 12, 8, 8, "LULING-STICK", "A"),
	tall("blue-grama", HeightsByLuling, 5, 5, 3, 3, "LULING-STICK", "A"),
	tall("bermudagrass", HeightsByLuling, 6, 6, 3, 3, "LULING-STICK", "A"),
	tall("bahiagrass", HeightsByLuling, 6, 6, 3, 3, "LULING-STICK", "A"),
	tall("kleingrass", HeightsByLuling, 8, 8, 6, 6, "LULING-STICK", "A"),
	tall("dallisgrass", HeightsByLuling, 8, 8, 6, 6, "LULING-STICK", "A"),
	tall("introduced-bluestem", HeightsByLuling, 8, 8, 6, 6, "LULING-STICK", "A"),

	tall("tall-species", HeightsByMaine, 6, 8, 2, 3, "UMAINE-STICK", "A"),
	tall("low-species", HeightsByMaine, 4, 6, 1, 2, "UMAINE-STICK", "A"),
	tall("native-warm-season-grass", HeightsByTennessee, 24, 28, 14, 14, "TENNESSEE-NATIVE", "A"),
	tall("any-pasture", HeightsByWashington, 6, 6, 3, 3, "WSU-HEIGHTS", "A"),
	tall("mixed-mountain-pasture", HeightsByMiddlePark, 6, 8, 3, 4, "MIDDLE-PARK", "A"),
	tall("tall-grass-legume", HeightsByCornell, 8, 10, 2, 2.5, "CORNELL-INTENSIVE", "A"),
	tall("tall-grass-legume-first-turn", HeightsByCornell, 4, 5, 1.5, 1.5, "CORNELL-INTENSIVE", "A"),

	tallMetric("rotation-cattle", 10, 5),
	tallMetric("rotation-ewes-with-singles", 8, 4),
	tallMetric("rotation-ewes-with-twins", 8, 5),
	tallMetric("rotation-cows-with-calves", 8, 5),
}
