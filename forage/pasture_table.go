package forage

import "example.org/soum/units"

// densityRow is a row of the pasture stick, in lb/ac/in.
type densityRow struct {
	fair, good, excellent [2]units.Density
	source, mark          string
}

// The pasture stick's densities above the stubble that is left.
var (
	stickBluegrass    = densityRow{[2]units.Density{150, 200}, [2]units.Density{250, 300}, [2]units.Density{350, 400}, "UMAINE-STICK", "A"}
	stickRyegrass     = densityRow{[2]units.Density{150, 200}, [2]units.Density{250, 300}, [2]units.Density{350, 400}, "UMAINE-STICK", "A"}
	stickOrchardgrass = densityRow{[2]units.Density{150, 200}, [2]units.Density{250, 300}, [2]units.Density{300, 350}, "UMAINE-STICK", "A"}
	stickTimothy      = densityRow{[2]units.Density{150, 200}, [2]units.Density{250, 300}, [2]units.Density{300, 350}, "UMAINE-STICK", "A"}
	stickFescue       = densityRow{[2]units.Density{100, 150}, [2]units.Density{200, 250}, [2]units.Density{350, 400}, "UMAINE-STICK", "A"}
	stickMixed        = densityRow{[2]units.Density{150, 200}, [2]units.Density{250, 300}, [2]units.Density{300, 350}, "UMAINE-STICK", "A"}
	// Two single figures of one body for bermudagrass, not graded by condition.
	stickBermudagrass = densityRow{[2]units.Density{}, [2]units.Density{200, 250}, [2]units.Density{}, "NOBLE-DROUGHT, NOBLE-PICTURE", "A"}
)

// heightRow is a row of heights, in inches.
type heightRow struct {
	turnIn, leave [2]units.Height
	source, mark  string
}

// Heights at which grazing begins and ends.
var (
	lowSpecies          = heightRow{[2]units.Height{4, 6}, [2]units.Height{1, 2}, "UMAINE-STICK", "A"}
	tallSpecies         = heightRow{[2]units.Height{6, 8}, [2]units.Height{2, 3}, "UMAINE-STICK", "A"}
	heightsOrchardgrass = heightRow{[2]units.Height{8, 12}, [2]units.Height{3, 6}, "UGA-HEIGHTS", "A"}
	heightsFescue       = heightRow{[2]units.Height{4, 8}, [2]units.Height{2, 3}, "UGA-HEIGHTS", "A"}
	heightsAnyPasture   = heightRow{[2]units.Height{6, 6}, [2]units.Height{3, 3}, "WSU-HEIGHTS", "A"}
	heightsRyegrass     = heightRow{[2]units.Height{10 / 2.54, 10 / 2.54}, [2]units.Height{5 / 2.54, 5 / 2.54}, "SRUC-SHEEPNET", "B"} // cm in print
	heightsBermudagrass = heightRow{[2]units.Height{6, 6}, [2]units.Height{3, 3}, "LULING-STICK", "A"}
)

// growthRow is a row of yields a year and of shares by month in per cent,
// January first.
type growthRow struct {
	low, medium, high units.Yield
	shares            [12]units.Fraction
	source, mark      string
}

const shortTon = units.ShortTonPerAcre

// Yields as printed. The shares are not: they are solved from the printed acres
// for an animal unit a month, and of the values that round to those acres a
// plain one is taken.
var (
	growthBluegrassClover = growthRow{1 * shortTon, 2 * shortTon, 3 * shortTon, [12]units.Fraction{0, 0, 0, 5, 45, 20, 5, 5, 12, 8, 0, 0}, "PSU-MONTHS", "D"}
	growthRedClover       = growthRow{2 * shortTon, 3 * shortTon, 4.5 * shortTon, [12]units.Fraction{0, 0, 0, 0, 31, 20, 12, 12, 16, 8, 0, 0}, "PSU-MONTHS", "D"}
	growthTrefoil         = growthRow{2 * shortTon, 3 * shortTon, 3.5 * shortTon, [12]units.Fraction{0, 0, 0, 0, 27, 24.5, 15, 15, 15, 3, 0, 0}, "PSU-MONTHS", "D"}
	growthTallGrass       = growthRow{2 * shortTon, 3 * shortTon, 4.5 * shortTon, [12]units.Fraction{0, 0, 0, 5, 35, 20, 10, 12, 15, 3, 0, 0}, "PSU-MONTHS", "D"}
	growthWarmSeason      = growthRow{3 * shortTon, 4 * shortTon, 5 * shortTon, [12]units.Fraction{0, 0, 0, 0, 0, 20, 33, 33, 15, 0, 0, 0}, "PSU-MONTHS", "D"}
)

// rainRow is the months whose rain decides the year.
type rainRow struct {
	months       []int
	source, mark string
}

// Both rows are read for range of the northern plains; taking them for sown
// pasture is ours.
var (
	rainCoolSeason = rainRow{[]int{4, 5, 6}, "NDSU-SPRING", "A"}
	rainWarmSeason = rainRow{[]int{5, 6, 7}, "NDSU-BALANCE", "B"}
)

// pastureRow joins a row of each table. The ceiling is in inches, twice the
// upper turn-in height: ours, as none is published.
type pastureRow struct {
	name    string
	density *densityRow
	height  *heightRow
	growth  *growthRow
	rain    *rainRow
	ceiling units.Height
	legume  bool
	// Of the dangers, endophyte is of tall fescue; danger is the source's key.
	endophyte bool
	danger    string
	note      string
}

var pastureRows = [...]pastureRow{
	{"bluegrass-clover", &stickBluegrass, &lowSpecies, &growthBluegrassClover, &rainCoolSeason, 12, true, false, "UKY-BLOAT", "Heights are those of low species. Growth is that of Kentucky bluegrass with white clover. The ceiling is ours."},
	{"orchardgrass-legume", &stickOrchardgrass, &heightsOrchardgrass, &growthRedClover, &rainCoolSeason, 24, true, false, "UKY-BLOAT", "Growth is that of red clover with grass: the pairing is ours. The ceiling is ours."},
	{"timothy-legume", &stickTimothy, &tallSpecies, &growthTrefoil, &rainCoolSeason, 16, true, false, "UKY-BLOAT", "Heights are those of tall species. Growth is that of birdsfoot trefoil with grass: the pairing is ours. The ceiling is ours."},
	{"ryegrass-clover", &stickRyegrass, &heightsRyegrass, &growthBluegrassClover, &rainCoolSeason, 20 / 2.54, true, false, "UKY-BLOAT", "Perennial ryegrass. Heights are those of cattle in a Scottish rotation, 10 and 5 cm. Growth is that of Kentucky bluegrass with white clover: the pairing is ours. The ceiling is ours."},
	{"tall-fescue", &stickFescue, &heightsFescue, &growthTallGrass, &rainCoolSeason, 16, false, true, "OSU-ENDOPHYTE", "With nitrogen, in density and growth alike. Growth is that of tall grass with nitrogen: the pairing is ours. The ceiling is ours."},
	{"mixed-pasture", &stickMixed, &heightsAnyPasture, &growthRedClover, &rainCoolSeason, 12, true, false, "UKY-BLOAT", "Heights are one printed pair for any pasture of the Pacific Northwest. Growth is that of red clover with grass: the pairing is ours. The ceiling is ours."},
	{"warm-season-grass", &stickBermudagrass, &heightsBermudagrass, &growthWarmSeason, &rainWarmSeason, 12, false, false, "", "Density is of bermudagrass alone, two single figures (200 continuously grazed in a dry June, 250 for planning) that no source grades by condition: they stand under good, and fair and excellent are not published. Heights are those of a Texas stick; another source begins bermudagrass at 4 to 8 in and leaves 1 to 2. Growth is that of warm-season grass in Pennsylvania; September lies between 14.5 and 15.5 %. The ceiling is ours."},
}
