// Package forage holds the arithmetic of standing grass: how much dry matter a
// height stands for, how much of it animals take, how fast it comes back, and
// the printed figures of common pastures to begin from.
//
// A pasture is a row of figures:
//
//	p, err := forage.PastureByName("orchardgrass-legume")
//	density, err := p.Density(forage.Good)
//	yield, err := forage.Available(8*units.HeightInch, 3*units.HeightInch, density.At(units.Middle))
//
// The rows come from print, each figure with its source and how it was read
// (mark A: in the publication; B: in a reprint or press report; D: derived from
// printed figures; M: from memory; "ours": no source, our choice). A user's own
// row is the same struct, filled by the user.
//
// Heights against a ruler and heights under a plate meter are two types, with
// two densities: their factors differ by two to four times.
//
// A walk is a slice of readings: MeanHeight and MeanPlateHeight give its mean with
// the interval that the true mean lies in, ReadingsNeeded how many readings a
// paddock takes, CalibratePlate and CalibrateRuler a line of one's own from places
// clipped (ClippedYield), whose answers carry their error. LineOfCovers sets the
// paddocks of a farm beside the cover that a steady rotation wants of each.
//
// Where sources disagree (the share used, rest, the roots that stop) the source is
// an argument of the look-up, and the rows can be listed: UseRows, RestRows.
//
// Growth between two grazings is the logistic curve: slow on a short stubble,
// fastest at half of the ceiling, slow again when the stand is full. Regrown
// steps it, DaysToRegrow turns it round, MeanToPeak and PeakGrowth fit it to the
// growth that is known of a month. Gompertz and Expolinear are two other curves, each
// with its inverse; all three are choices, as no print fits temperate pasture.
package forage
