package forage

import "example.org/soum/units"

// grown is a row of yields in short tons an acre.
func grown(crop string, low, middle, high units.Yield, source string) YieldRow {
	return YieldRow{crop, low * shortTon, middle * shortTon, high * shortTon, printed(source, "A")}
}

// yieldRows is the table of CropYield.
var yieldRows = []YieldRow{
	grown("bluegrass-white-clover", 1, 2, 3, "PSU-MONTHS"),
	grown("alfalfa-grass", 3, 4.5, 6, "PSU-MONTHS"),
	grown("red-clover-grass", 2, 3, 4.5, "PSU-MONTHS"),
	grown("birdsfoot-trefoil-grass", 2, 3, 3.5, "PSU-MONTHS"),
	grown("tall-grass-with-nitrogen", 2, 3, 4.5, "PSU-MONTHS"),
	grown("warm-season-grass", 3, 4, 5, "PSU-MONTHS"),
	grown("stockpiled-tall-fescue", 3, 4.5, 5.5, "PSU-MONTHS"),
	grown("brassica-sown-in-spring", 2.5, 3.8, 5.0, "PSU-MONTHS"),
	grown("brassica-sown-in-summer", 2.0, 3.0, 4.0, "PSU-MONTHS"),
	grown("corn-stover", 1.7, 1.7, 1.7, "PSU-MONTHS"),
	grown("tall-fescue", 2, 3, 4, "KENTUCKY-FEEDS"),
	grown("orchardgrass", 2, 3, 4, "KENTUCKY-FEEDS"),
	grown("introduced-grass-unfertilised", 0.5, 1, 1.5, "NRCS-BRYAN-528"),
	grown("introduced-grass-fertilised", 3, 5, 7, "NRCS-BRYAN-528"),
	grown("native-warm-season-grass-legume-july-hay", 2, 2.5, 3, "MISSOURI-NATIVE"),
}
