// Package rainfall holds what rain tells of grass: how often a year lets a
// pasture be grazed, what share of the usual forage a dry spring leaves, and the
// record of monthly rain that both are read from.
//
// Two rules for the number of passes stand side by side, since each forgets what
// the other knows: Passes goes by the rain of the year, PassesBySeason by the
// length of the season and of the rotation.
//
// A record is a list of months or days (ReadMonths, ReadDays): sums, quantiles,
// chances and dry runs are read off it, and RainIndex tells how far it is from the
// usual, by a fit that the caller names. DroughtPlan turns it into dates and depths
// to hold the gauge against.
//
// WaterBalance keeps the account of the root zone: rain or effective rain in, what
// the crop uses out (ReferenceWater, HargreavesSamani or Thornthwaite, times
// CropCoefficient). GrowthShare tells what of the growth that leaves.
package rainfall
