package herd

import "example.org/soum/units"

// bred is a row with the printed mean and the printed span around it.
func bred(animal string, figure BreedingFigure, by BreedingSource, mean, low, high units.Days, source, mark string) BreedingRow {
	return BreedingRow{animal, figure, by, mean, units.Span[units.Days]{Low: low, High: high}, printed(source, mark)}
}

// bredOn is a row of one printed figure, without a span.
func bredOn(animal string, figure BreedingFigure, by BreedingSource, mean units.Days, source, mark string) BreedingRow {
	return bred(animal, figure, by, mean, mean, mean, source, mark)
}

// bredWithin is a row of which print gives the span alone; the middle is ours.
func bredWithin(animal string, figure BreedingFigure, by BreedingSource, low, high units.Days, source, mark string) BreedingRow {
	return bred(animal, figure, by, low+(high-low)/2, low, high, source, mark)
}

// breedingRows is the table of breeding.
var breedingRows = []BreedingRow{
	bredOn("cow", Gestation, ByFrandson, 282, "FRANDSON-8 table 27-1", "B"),
	bredOn("ewe", Gestation, ByFrandson, 150, "FRANDSON-8 table 27-1", "B"),
	bredOn("sow", Gestation, ByFrandson, 114, "FRANDSON-8 table 27-1", "B"),
	bredOn("mare", Gestation, ByFrandson, 336, "FRANDSON-8 table 27-1", "B"),

	bredOn("cow", Gestation, ByLists, 283, "BREEDING-LISTS", "B"),
	bredOn("cow-holstein", Gestation, ByLists, 279, "BREEDING-LISTS", "B"),
	bredOn("cow-brown-swiss", Gestation, ByLists, 290, "BREEDING-LISTS", "B"),
	bredOn("ewe", Gestation, ByLists, 150, "BREEDING-LISTS", "B"),
	bred("doe", Gestation, ByLists, 150, 145, 155, "BREEDING-LISTS", "B"),
	bred("sow", Gestation, ByLists, 113, 112, 115, "BREEDING-LISTS", "B"),
	bred("mare", Gestation, ByLists, 336, 330, 342, "BREEDING-LISTS", "B"),
	bredOn("mare", Gestation, ByOtherLists, 340, "BREEDING-LISTS another of them", "B"),
	bredOn("donkey", Gestation, ByLists, 365, "BREEDING-LISTS", "B"),
	bredOn("llama", Gestation, ByLists, 330, "BREEDING-LISTS", "B"),
	bredOn("alpaca", Gestation, ByLists, 345, "BREEDING-LISTS", "B"),
	bred("rabbit", Gestation, ByLists, 31, 28, 35, "BREEDING-LISTS", "B"),

	bred("cow", Gestation, ByVirginia, 279, 270, 289, "VT-REPRODUCTION", "A"),
	bred("mare", Gestation, ByVirginia, 335, 305, 380, "VT-REPRODUCTION under 320 is premature", "A"),
	bred("ewe", Gestation, ByVirginia, 147, 145, 150, "VT-REPRODUCTION", "A"),

	bredOn("cow", Gestation, ByMissouri, 284, "MISSOURI-BREEDING", "B"),
	bredOn("mare", Gestation, ByMissouri, 341, "MISSOURI-BREEDING", "B"),
	bredWithin("ewe", Gestation, ByMissouri, 144, 151, "MISSOURI-BREEDING", "B"),
	bredWithin("doe", Gestation, ByMissouri, 145, 155, "MISSOURI-BREEDING", "B"),

	bredOn("ewe", Gestation, ByHairSheep, 147, "HAIR-SHEEP-LITTERS the common planning figure", "A"),
	bredOn("ewe-single", Gestation, ByHairSheep, 149.8, "HAIR-SHEEP-LITTERS", "A"),
	bredOn("ewe-twins", Gestation, ByHairSheep, 147.4, "HAIR-SHEEP-LITTERS", "A"),
	bredOn("ewe-triplets", Gestation, ByHairSheep, 146.7, "HAIR-SHEEP-LITTERS", "A"),

	bred("alpaca", Gestation, ByAlpacaFarm, 340, 314, 362, "BLACKLANDS-ALPACAS 69 births, the mean just under 340", "B"),

	bred("cow", Cycle, ByMerck, 21, 18, 24, "MERCK-CYCLES", "A"),
	bred("ewe", Cycle, ByMerck, 17, 14, 20, "MERCK-CYCLES", "A"),
	bredOn("doe", Cycle, ByMerck, 21, "MERCK-CYCLES", "A"),
	bred("sow", Cycle, ByMerck, 21, 19, 23, "MERCK-CYCLES", "A"),
	bred("mare", Cycle, ByMerck, 21, 19, 23, "MERCK-CYCLES", "A"),

	bred("cow", HeatLength, ByMerck, 18*units.Hour, 6*units.Hour, 24*units.Hour, "MERCK-CYCLES", "A"),
	bredWithin("ewe", HeatLength, ByMerck, 24*units.Hour, 36*units.Hour, "MERCK-CYCLES", "A"),
	bredWithin("doe", HeatLength, ByMerck, 24*units.Hour, 48*units.Hour, "MERCK-CYCLES", "A"),
	bredWithin("sow", HeatLength, ByMerck, 40*units.Hour, 60*units.Hour, "MERCK-CYCLES", "A"),
	bredWithin("mare", HeatLength, ByMerck, 5, 7, "MERCK-CYCLES", "A"),

	bredWithin("cow", FirstHeat, ByMerck, 20, 60, "MERCK-CYCLES after birth", "A"),
	bredWithin("sow", FirstHeat, ByMerck, 4, 10, "MERCK-CYCLES after weaning, not after birth", "A"),
	bred("mare", FirstHeat, ByMerck, 9, 4, 14, "MERCK-CYCLES after birth", "A"),

	bredOn("chicken", Incubation, ByMississippi, 21, "MSU-INCUBATION", "A"),
	bredOn("turkey", Incubation, ByMississippi, 28, "MSU-INCUBATION", "A"),
	bredOn("duck", Incubation, ByMississippi, 28, "MSU-INCUBATION most ducks", "A"),
	bredOn("goose", Incubation, ByMississippi, 33, "MSU-INCUBATION about", "A"),
	bredOn("quail-coturnix", Incubation, ByMississippi, 17, "MSU-INCUBATION", "A"),
	bredOn("quail-bobwhite", Incubation, ByMississippi, 23, "MSU-INCUBATION", "A"),

	bredOn("chicken", Incubation, ByLists, 21, "INCUBATION-LISTS", "B"),
	bredOn("turkey", Incubation, ByLists, 28, "INCUBATION-LISTS", "B"),
	bredOn("duck", Incubation, ByLists, 28, "INCUBATION-LISTS", "B"),
	bredWithin("muscovy-duck", Incubation, ByLists, 33, 35, "INCUBATION-LISTS", "B"),
	bredOn("muscovy-duck", Incubation, ByOtherLists, 35, "INCUBATION-LISTS another of them", "B"),
	bredWithin("goose", Incubation, ByLists, 28, 33, "INCUBATION-LISTS", "B"),
	bredWithin("goose", Incubation, ByOtherLists, 29, 31, "INCUBATION-LISTS another of them", "B"),
	bredOn("goose-small", Incubation, ByLists, 28, "INCUBATION-LISTS", "B"),
	bredWithin("goose-large", Incubation, ByLists, 34, 35, "INCUBATION-LISTS", "B"),
	bredWithin("guinea-fowl", Incubation, ByLists, 26, 28, "INCUBATION-LISTS", "B"),
	bredWithin("guinea-fowl", Incubation, ByOtherLists, 27, 28, "INCUBATION-LISTS another of them", "B"),
	bredWithin("quail-coturnix", Incubation, ByLists, 17, 18, "INCUBATION-LISTS", "B"),
	bredWithin("quail-coturnix", Incubation, ByOtherLists, 16, 18, "INCUBATION-LISTS another of them", "B"),
	bredWithin("quail-bobwhite", Incubation, ByLists, 23, 24, "INCUBATION-LISTS", "B"),
}

// pubertyMonths is the age at puberty in months, MERCK-CYCLES, mark A.
var pubertyMonths = map[string]units.Span[float64]{
	"cow":  {Low: 10, High: 12},
	"ewe":  {Low: 6, High: 9},
	"doe":  {Low: 5, High: 7},
	"sow":  {Low: 6, High: 7},
	"mare": {Low: 10, High: 24},
}
