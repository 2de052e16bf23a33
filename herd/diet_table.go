package herd

import "example.org/soum/units"

// dietShares is UGA-DIETS: shares of grass, of legumes and forbs, and of browse;
// mark A. The rows are in the order of the kinds cattle to horses.
var dietShares = [...][3]units.Span[units.Fraction]{
	Cattle - 1: {percent(65, 75), percent(20, 30), percent(5, 10)},
	Sheep - 1:  {percent(45, 55), percent(30, 40), percent(10, 20)},
	Goats - 1:  {percent(20, 30), percent(10, 30), percent(30, 50)},
	Horses - 1: {percent(70, 80), percent(15, 25), percent(0, 5)},
}

// overlap is a row with one figure at both ends.
func overlap(name string, low, high float64, source, mark string) OverlapRow {
	return OverlapRow{name, percent(low, high), printed(source, mark)}
}

// overlapRows is the table of PrintedOverlap.
var overlapRows = []OverlapRow{
	overlap("sheep-goat-summer", 77.0, 77.0, "MYSTERUD-2000", "A"),
	overlap("sheep-reindeer-summer", 55.1, 55.1, "MYSTERUD-2000", "A"),
	overlap("sheep-red-deer-summer", 59.3, 59.3, "MYSTERUD-2000", "A"),
	overlap("sheep-red-deer-winter", 63.9, 63.9, "MYSTERUD-2000", "A"),
	overlap("moose-roe-deer-summer", 20.7, 20.7, "MYSTERUD-2000", "A"),
	overlap("moose-roe-deer-winter", 33.6, 33.6, "MYSTERUD-2000", "A"),
	overlap("moose-red-deer", 32.0, 32.0, "MYSTERUD-2000", "A"),
	overlap("sheep-cattle-late-spring-colorado", 53, 53, "MACCRACKEN-1981", "A"),
	overlap("sheep-mule-deer-late-spring-colorado", 15, 15, "MACCRACKEN-1981", "A"),
	overlap("sheep-elk-late-spring-colorado", 46, 46, "MACCRACKEN-1981", "A"),
	overlap("mule-deer-cattle-late-spring-colorado", 10, 10, "MACCRACKEN-1981", "A"),
	overlap("mule-deer-elk-late-spring-colorado", 30, 30, "MACCRACKEN-1981", "A"),
	overlap("elk-cattle-late-spring-colorado", 39, 39, "MACCRACKEN-1981", "A"),
	overlap("horse-cattle-summer-wyoming", 72, 72, "KRYSL-1984", "A"),
	overlap("horse-cattle-winter-wyoming", 84, 84, "KRYSL-1984", "A"),
	overlap("horse-cattle-oregon", 62, 78, "MCINNIS-1987 by season", "A"),
	overlap("pronghorn-horse-oregon", 7, 26, "MCINNIS-1987", "A"),
	overlap("pronghorn-cattle-oregon", 8, 25, "MCINNIS-1987", "A"),
	overlap("horse-cattle-colorado", 59, 75, "HUBBARD-1976", "A"),
	overlap("deer-cattle-summer", 12, 38, "HANSEN-1975", "A"),
	overlap("elk-cattle-summer", 30, 51, "HANSEN-1975", "A"),
	overlap("deer-elk-year", 3, 48, "HANSEN-1975", "A"),
	overlap("goat-white-tailed-deer-texas", 75, 88, "EKBLAD-1993 Angora goats", "A"),
}

// addOns is how many head go to a cow without taking cows off.
var addOns = [...]units.Span[float64]{
	AddGoatsGeorgia - 1:   {Low: 1, High: 2},
	AddGoatsArkansas - 1:  {Low: 1, High: 3},
	AddEitherMissouri - 1: {Low: 1, High: 1},
	AddSheepArkansas - 1:  {Low: 2, High: 2},
	AddEweSouthDakota - 1: {Low: 1, High: 1},
}
