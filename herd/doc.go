// Package herd holds the arithmetic of the animals: what they are, what they
// eat and drink, what they leave behind.
//
//	class.go       stock classes: kind, need, stages, and the table of them
//	group.go       animals kept together, and their changes by date
//	intake.go      dry matter wanted in a day and over many
//	feeding.go     intake by fibre, quality, milk and print's tables; horses
//	cold.go        critical temperature, wind chill, more feed in the cold
//	diet.go        grass, forbs and browse; overlap; who can graze beside whom
//	units.go       animal units by weight, by weight^0.75, by intake; unit days
//	equivalent.go  animal units by every printed table, each with its definition
//	energy.go      energy and protein in the short published forms
//	weight.go      a cow and her calf as one weight
//	tape.go        weight by tape
//	growth.go      weight at a date, days to market
//	breeding.go    gestation, cycles, incubation: from service to birth and back
//	water.go       water by weight or by head
//	drinking.go    water by class, milk, feed and temperature; the peak
//	manure.go      manure and its nutrients by one table
//	nutrients.go   manure and nutrients by every table; what stays on the land
//	heat.go        heat indexes with their classes; limits of stock water
//	parasite.go    worms and flies by temperature and days; shared hosts
//
// A table of the trade stands beside its topic in x_table.go, a source and a
// mark on each row. The marks: A, read in the publication; B, read in a reprint
// or a press report; D, worked out from printed figures; M, from memory;
// practice, common practice without a source.
//
// Figures of feed, water and manure are for planning. The animals have the last
// word: watch their condition, and ask a vet or an adviser where it falls off.
package herd
