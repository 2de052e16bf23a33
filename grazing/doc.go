// Package grazing holds the arithmetic of the rotation, and the dated season
// that comes of it.
//
//	stocking    land, head, animal units, areas and stays     StayArea, StayDays, CarryingCapacity …
//	paddock     paddocks, rest, cycle                         Paddocks, Rest, Cycle …
//	strip       strips across a lane                          StripLength, StripArea
//	budget      growth against need, month by month           MonthBalance, CoverAfter …
//	fence       lanes, paddocks, wires                        FenceLength, LaneSides, CrossWires …
//	setstocked  one paddock, fixed stock: another model       SetStocked, SetStockedBalances
//	farm        the farm document                             ReadFarm, FirstFarm
//	movelog     a log of moves, what it tells               ReadMoves, PaddockRecords
//	resume      the farm on a later day, by its log         FarmToday
//	plan        the season day by day                         PlanSeason, Explain
//	carries     how many head, how much land                  Carries, LandFor
//	fitstock    which numbers of which stock fit             FitStock, ReadFitting
//	caution     what can hurt somebody                        Caution
//
// A plan begins from a farm document: land with today's heights, groups,
// rotations, rain, feed. PlanSeason gives the dated moves, the balance, hay,
// water, manure and fence, with notes and cautions; Explain shows the work behind
// a day. The rules of the season stand in DEVELOPERS.md.
//
// The answers are planning figures: walk the ground before each move. Cautions
// defer to local law, a vet or an adviser, and one that is not raised is no
// promise of safety.
package grazing
