// Package rainfall holds what rain tells of grass: how often a year lets a
// pasture be grazed, what share of the usual forage a dry spring leaves, and the
// record of monthly rain that both are read from.
//
// Two rules for the number of passes stand side by side, since each forgets what
// the other knows: Passes goes by the rain of the year, PassesBySeason by the
// length of the season and of the rotation.
package rainfall
