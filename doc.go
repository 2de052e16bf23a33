// Package soum is the map of a library of the arithmetic of grazing several
// kinds of stock over a few acres. It holds no code itself:
//
//	subject                                     package        sources, mostly
//	quantities, units, text, dates, errors      units          standards bodies
//	animal units, intake, energy, weights       herd           extension services, NRC, NRCS
//	births, water, manure, diets, worms, heat   herd           extension services, journals
//	measuring, growing, using, resting grass    forage         extension services, journals
//	hay, quality, what is dangerous in grass    forage         extension services, laboratories
//	records of rain, odds, drought, passes      rainfall       trade press, extension services
//	the water of the soil, warmth and frost     rainfall       FAO-56, NRCS, extension services
//	stocking, paddocks, strips, fence, water    grazing        extension services, agencies
//	budgets, money                              grazing        extension services
//	a farm document and its dated season        grazing/farm   rules of ours, made of the above
//	a log of moves, what each paddock gave      grazing/farm   extension services
//	many seasons at once                        grazing/study  rules of ours
//	which stock fits                            grazing/fit    rules of ours
//
// Every formula names its source, its units and its range, and reproduces a
// printed figure. SOURCES.md lists the sources; README.md begins from a
// question; DEVELOPERS.md tells how a formula is added and how a season steps.
//
// On Scottish commons a soum was the grass that keeps one cow, and other stock
// was reckoned in parts of it.
package soum
