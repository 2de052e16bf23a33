// Package grazing holds the arithmetic of the rotation, and the dated season
// that comes of it.
//
//	stocking    land, head, animal units, areas and stays     StayArea, StayDays, CarryingCapacity …
//	rate        rates to begin with, slope, water             InitialRate, UseOfYield, GrazedArea …
//	density     weight and head on the ground                 HeadDensity, RelativeLoad …
//	order       who goes first, what must not follow          Order, Conflicts
//	space       room for birds and pigs                       Space
//	paddock     paddocks, rest, cycle                         Paddocks, Rest, Cycle …
//	strip       strips across a lane                          StripLength, StripArea
//	budget      growth against need, month by month           MonthBalance, CoverAfter …
//	fence       lanes, paddocks, wires                        FenceLength, LaneSides, CrossWires …
//	posts       posts, wires by stock, netting                FencePosts, Wires, NettingOrWire …
//	energizer   voltage, energizer, ground rods               FenceVoltage, EnergizerOutput, GroundRod …
//	tank        the walk to water, tanks and flow             WalkLimit, TankVolume, FillRate …
//	money       fence, rent, hay against grass                FenceCost, RentPerUse, PaybackYears …
//	fencebill   a bill of fence                               BillOfFence
//	movelog     a log of moves read back                      ReadMoves
//	records     what a log tells of each paddock              PaddockRecords
//	setstocked  one paddock, fixed stock: another model       SetStocked, SetStockedBalances
//	farm        the farm document                             ReadFarm, FirstFarm
//	resume      the farm on a later day, by its log           FarmToday
//	plan        the season day by day                         PlanSeason, Explain
//	carries     how many head, how much land                  Carries, LandFor
//	study       many seasons under drawn rain                 Study, ReadStudied
//	fitstock    which numbers of which stock fit              FitStock, ReadFitting
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
