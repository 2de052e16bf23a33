package rainfall

var cropRows = []CropRow{
	{"pasture-rotated", 0.40, 0.85, 1.05, 0.85, printed("FAO-56 table 12", "B")},
	{"pasture-extensive", 0.30, 0.75, 0.75, 0.75, printed("FAO-56 table 12", "B")},
	{"alfalfa-hay", 0.40, 0.95, 0.95, 0.90, printed("FAO-56 table 12, averaged over the cuts", "B")},
	{"alfalfa-hay-one-cut", 0.40, 1.20, 1.20, 1.15, printed("FAO-56 table 12, a single cut", "B")},
	{"bermuda-hay", 0.55, 1.00, 1.00, 0.85, printed("FAO-56 table 12", "B")},
	{"ryegrass-hay", 0.95, 1.05, 1.05, 1.00, printed("FAO-56 table 12", "B")},
	{"sudan-hay", 0.50, 0.90, 0.90, 0.85, printed("FAO-56 table 12", "B")},
	{"turf-cool", 0.90, 0.95, 0.95, 0.95, printed("FAO-56 table 12", "B")},
	{"turf-warm", 0.80, 0.85, 0.85, 0.85, printed("FAO-56 table 12", "B")},
	{"open-water-shallow", 0, 1.05, 1.05, 0, printed("FAO-56 table 12, one figure for the year", "B")},
}
