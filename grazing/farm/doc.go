// Package farm holds the farm as one document, and the dated season that comes of it.
//
//	farm        the document: land, groups, rotations, rain, feed     Read, First
//	plan        the season day by day, a section a file               Farm.Plan
//	carries     how many head, how much land                          Farm.Carries, CarriesEach, Leaders, LandFor
//	explain     the work behind a day                                 Farm.Explain
//	resume      the farm on a later day, by the log of its moves      Farm.CarryOn
//	followed    the farm on a later day, by its plan                  Farm.Followed
//	movelog     the log read back                                     ReadMoves
//	records     what a log tells of each paddock                      PaddockRecords
//	seasons     the season run many times under other rain            Farm.Seasons
//	caution     what can hurt somebody                                Caution
//
// A plan begins from a document: land with today's heights, groups, rotations, rain,
// feed. It gives the dated moves, the balance, hay, water, manure and fence, with
// notes and cautions. The rules of the season stand in DEVELOPERS.md.
//
// The answers are planning figures: walk the ground before each move. Cautions
// defer to local law, a vet or an adviser, and one that is not raised is no
// promise of safety.
package farm
