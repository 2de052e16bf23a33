// Package herd holds the arithmetic of the animals: what they are, what they
// eat and drink, what they leave behind.
//
//	class.go    stock classes: kind, need, stages, and the table of them
//	group.go    animals kept together, and their changes by date
//	intake.go   dry matter wanted in a day and over many
//	units.go    animal units by weight, by weight^0.75, by intake; unit days
//	weight.go   a cow and her calf as one weight
//	water.go    water by weight or by head
//	manure.go   manure and its nutrients by one table
//
// A table of the trade stands beside its topic in x_table.go, a source and a
// mark on each row. The marks: A, read in the publication; B, read in a reprint
// or a press report; D, worked out from printed figures; M, from memory;
// practice, common practice without a source.
//
// Figures of feed, water and manure are for planning. The animals have the last
// word: watch their condition, and ask a vet or an adviser where it falls off.
package herd
