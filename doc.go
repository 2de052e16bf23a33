// Package soum is the map of a library of the arithmetic of grazing several
// kinds of stock over a few acres. It holds no code itself:
//
//	subject                                     package    sources, mostly
//	quantities, units, text, dates, errors      units      standards bodies
//	animal units, intake, water, manure         herd       extension services, NRC, NRCS
//	measuring, growing, using, leaving grass    forage     extension services, journals
//	rain and passes, rain and growth            rainfall   trade press, extension services
//	stocking, paddocks, strips, fence, budgets  grazing    extension services
//	a farm document and its dated season        grazing    rules of ours, made of the above
//
// Every formula names its source, its units and its range, and reproduces a
// printed figure. SOURCES.md lists the sources; README.md begins from a
// question; DEVELOPERS.md tells how a formula is added and how a season steps.
//
// On Scottish commons a soum was the grass that keeps one cow, and other stock
// was reckoned in parts of it.
package soum
