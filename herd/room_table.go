package herd

import "example.org/soum/units"

// rooms is the table of outdoor room.
var rooms = []Room{
	{"sow", rate(8, 8, perAcre), "at most, on good pasture, for a season", printed("UMN-SOW", "A")},
	{"sow", rate(10, 15, perHectare), "rotated, ground cover kept over three quarters; 25 was tried too", printed("SOW-GROUND-COVER", "A")},
	{"pig-under-100-lb", rate(15, 30, perAcre), "on good pasture, for a season", printed("UMN-SOW", "A")},
	{"pig-over-100-lb", rate(10, 20, perAcre), "on good pasture, for a season", printed("UMN-SOW", "A")},
	{"growing-pig", rate(37, 148, perHectare), "tested, not advised", printed("GROWER-STOCKING", "A")},
	{"growing-pig", rate(47, 47, perHectare), "tested on fescue, where rotation and strips beat leaving them in one place", printed("GROWER-FESCUE", "A")},
	{"gilt", rate(17.5, 35, perHectare), "tested on bluestem", printed("RACHUONYO-2002", "A")},
	{"chicken", each(5, units.SquareFoot), "running free", printed("CNG-POULTRY", "A")},
	{"chicken", each(2, units.SquareFoot), "in a pen moved daily", printed("CNG-POULTRY", "A")},
	{"laying-hen", rate(2000, 2000, perHectare), "at most, organic range, British code", printed("EGG-ORGANIC", "A")},
	{"laying-hen", rate(500, 500, perAcre), "a week, as one grower reads it", printed("HENS-500", "B")},
	{"duck", each(4.5, units.SquareMetre), "organic, outdoors, European Union", printed("EU-2020-464", "A")},
	{"gosling", rate(20, 40, perAcre), "on good pasture from five or six weeks of age", printed("MISSOURI-GOSLING", "B")},
	{"alpaca", rate(5, 7, perAcre), "on good pasture", printed("ALPACA-NZ", "A")},
	{"horse", units.Span[units.HeadRate]{Low: perAcre / 2, High: perAcre}, "on excellent sod, 1 to 2 acres each", printed("IOWA-HORSES", "A")},
	{"horse", units.Span[units.HeadRate]{Low: perAcre / 2.5, High: perAcre / 2}, "on average sod, 2 to 2.5 acres each", printed("IOWA-HORSES", "A")},
	{"horse", units.Single(perAcre / 3), "on thin sod, 3 acres each or more", printed("IOWA-HORSES", "A")},
}
