package rainfall

import "example.org/soum/units"

func percents(low, high float64) units.Span[units.Fraction] {
	return units.Span[units.Fraction]{Low: units.Fraction(low) * units.Percent, High: units.Fraction(high) * units.Percent}
}

// The target after each key month, NDMC-DATES, and what NDSU-SPRING expects at it.
const (
	keyTarget = 75 * units.Percent
	keyAct    = "expect a quarter less forage than usual: rent grass, buy feed or sell stock to match"
)

// triggers is the table of Triggers. That the rain of the third week of May counts
// from April, and the year to date from January, is ours.
var triggers = []Trigger{
	{"mid-april-year-to-date", 4, 15, 1, 75 * units.Percent, percents(10, 10), "cut the summer's stocking by 10 %", "Nebraska Sandhills", printed("CHERRY-TRIGGER", "A")},
	{"late-may-half", 5, 21, 4, 50 * units.Percent, percents(0, 0), "put the drought plan to work and adjust the stocking", "South Dakota", printed("SDSU-MAY-RULE", "B")},
	{"july-three-quarters", 7, 1, 4, 75 * units.Percent, percents(25, 25), "expect a quarter less forage than usual", "North Dakota", printed("NDSU-SPRING", "A")},
	{"july-half", 7, 1, 4, 50 * units.Percent, percents(30, 30), "without rain by now, expect 30 % less forage or worse", "North Dakota", printed("NDSU-JULY-RULE", "B")},
}

// droughtRules is the table of DroughtRules.
var droughtRules = []DroughtRule{
	{"after-severe-year", "after a severe drought year, even with normal spring rain", percents(20, 25), "begin the season with fewer stock", printed("UNL-PANHANDLE", "A")},
	{"after-dry-year", "after a dry year that left no old grass standing", percents(10, 10), "begin the season with fewer stock, by this much or more", printed("SDSU-TRIGGER-DATES", "A")},
	{"drought-through-may", "the drought lasts through May", percents(10, 10), "cut the stocking by this much or more", printed("NDSU-STOCKING-CUT", "B")},
	{"year-under-three-quarters", "a year brings less than 75 % of its average rain", percents(0, 0), "call it a drought", printed("NRCS-DROUGHT", "A")},
	{"quarter-below-mean", "rain is 25 % or more below its mean, or 60 % of the key plants are eaten", percents(0, 0), "act on the drought plan", printed("BLM-CASPER", "A")},
	{"moist-sand", "in mid-April sand is moist 3 ft down or more", percents(0, 0), "moderate stocking will do in 8 years of 10", printed("NDMC-DATES", "A")},
	{"dates-of-a-ranch", "1 April, 15 June, 15 August and 1 November, warm-season grass in Kansas", percents(0, 0), "look at rain, grass and stock on these days", printed("FARMPROGRESS-DATES", "B")},
	{"monitor-older-d0", "less than 75 % of normal rain in 3 months", percents(0, 0), "abnormally dry, D0", printed("MONITOR-OLDER", "B")},
	{"monitor-older-d1", "less than 70 % of normal rain in 3 months", percents(0, 0), "moderate drought, D1", printed("MONITOR-OLDER", "B")},
	{"monitor-older-d2", "less than 65 % of normal rain in 6 months", percents(0, 0), "severe drought, D2", printed("MONITOR-OLDER", "B")},
	{"monitor-older-d3", "less than 60 % of normal rain in 6 months", percents(0, 0), "extreme drought, D3", printed("MONITOR-OLDER", "B")},
	{"monitor-older-d4", "less than 65 % of normal rain in 12 months", percents(0, 0), "exceptional drought, D4", printed("MONITOR-OLDER", "B")},
	{"breeding-herd", "every year, with stock that can be sold", percents(30, 50), "keep the breeding herd this far below the average carrying capacity, and yearlings for the rest", printed("UNL-FLEXIBLE", "B")},
	{"never-above", "every year", percents(0, 0), "never stock more than 20 % above the long-term carrying capacity", printed("FUTUREBEEF-MATCH", "A")},
	{"severe-year-forage", "one severe year after normal ones, by how the grass was used before", percents(25, 60), "forage is this far below normal; the report can also be read as what is left", printed("KSTATE-DROUGHT", "B")},
	{"year-after-long-drought", "the year after a long drought, even with good rain", percents(20, 50), "forage is this far below the average", printed("UNL-NF584", "A")},
	{"year-after-contrary", "the year after one year's drought", percents(0, 0), "little evidence of any loss", printed("WYOMING-2013", "B")},
}

// sellingOrder is the table of SellingOrder.
var sellingOrder = []Sale{
	{"noble", 1, "spring and summer calvers without a calf, 5 to 15 % of many herds", printed("NOBLE-1998-DROUGHT", "A")},
	{"noble", 2, "replacement heifers that are not in production", printed("NOBLE-1998-DROUGHT", "A")},
	{"noble", 3, "first-calf heifers", printed("NOBLE-1998-DROUGHT", "A")},
	{"noble", 4, "older cows by class, those of 4 to 7 years last", printed("NOBLE-1998-DROUGHT", "A")},
	{"placer", 1, "open females", printed("UC-PLACER-DROUGHT", "A")},
	{"placer", 1, "the unsound, the wild, the old and toothless", printed("UC-PLACER-DROUGHT", "A")},
	{"placer", 2, "replacements: keep none", printed("UC-PLACER-DROUGHT", "A")},
	{"placer", 2, "stockers: keep none", printed("UC-PLACER-DROUGHT", "A")},
	{"texas", 1, "yearlings and other stock that was meant to come and go", printed("TIMESRECORD-DROUGHT", "B")},
}
