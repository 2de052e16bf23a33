package forage

import "example.org/soum/units"

const perCentimetre = units.PlateKilogramPerHectareCentimetre

var plateRows = []PlateEquation{
	{"irish-ryegrass", 250 * perCentimetre, 4 * units.PlateCentimetre, 0, 0, "Ireland, ryegrass, above 4 cm", printed("TEAGASC-PLATE", "A")},
	{"ryegrass-clover-first-winter", 312 * perCentimetre, 0, 0, 0, "ryegrass and white clover, a winter", printed("MICHELL-1982", "A")},
	{"ryegrass-clover-second-winter", 267 * perCentimetre, 0, 0, 0, "ryegrass and white clover, another winter", printed("MICHELL-1982", "A")},
	{"ryegrass-clover-first-summer", 800 * perCentimetre, 0, 0, 0, "ryegrass and white clover, up to so much in a summer; the relation was curved in mid and late summer", printed("MICHELL-1982", "A")},
	{"ryegrass-clover-second-summer", 452 * perCentimetre, 0, 0, 0, "ryegrass and white clover, up to so much in another summer; the relation was curved in mid and late summer", printed("MICHELL-1982", "A")},
	{"falling-plate-northeast", 452 * perCentimetre, 0, 753 * units.KilogramPerHectare, 0.52, "New York and West Virginia, rotational pasture, acrylic plate of 5.6 mm, 46 by 46 cm", printed("RAYBURN-1998", "A")},
}
