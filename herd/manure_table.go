package herd

import "example.org/soum/units"

// manureFigures is a row of the manure table: short tons for each 1,000 lb of
// live weight and year; pounds of N, P2O5 and K2O in a short ton, each as
// excreted and after losses.
type manureFigures struct {
	kind      ManureKind
	tons      units.Mass
	nutrients [3][2]units.Fraction
}

// manureTable is NRCS-MANURE, mark A.
var manureTable = []manureFigures{
	{ManureBeefCow, 11.50, [3][2]units.Fraction{{10.95, 3.30}, {3.79, 3.23}, {8.25, 7.44}}},
	{ManureDairyCow, 15.24, [3][2]units.Fraction{{10.69, 4.30}, {1.92, 1.65}, {6.70, 6.04}}},
	{ManureHeifer, 12.05, [3][2]units.Fraction{{6.06, 1.82}, {1.30, 1.10}, {5.03, 4.53}}},
	{ManureBreedingPig, 6.11, [3][2]units.Fraction{{13.26, 3.32}, {4.28, 3.62}, {7.85, 7.16}}},
	{ManureSlaughterPig, 14.69, [3][2]units.Fraction{{11.30, 2.82}, {3.29, 2.80}, {7.95, 7.16}}},
	{ManureHen, 11.45, [3][2]units.Fraction{{26.93, 18.46}, {9.98, 8.50}, {10.44, 9.40}}},
	{ManureTurkey, 8.18, [3][2]units.Fraction{{30.36, 16.18}, {11.83, 10.06}, {11.61, 10.44}}},
	{ManureSteer, 10.59, [3][2]units.Fraction{{10.98, 3.30}, {3.37, 2.86}, {7.87, 7.08}}},
	{ManureTurkeyHen, 9.12, [3][2]units.Fraction{{22.41, 11.20}, {13.23, 11.23}, {7.60, 6.84}}},
}

// manureRow looks a kind up; one without a row gives an empty one.
func manureRow(kind ManureKind) manureFigures {
	for _, row := range manureTable {
		if row.kind == kind {
			return row
		}
	}
	return manureFigures{}
}

// share looks a nutrient up; what is none gives 0, for the guard to refuse.
func (m manureFigures) share(nutrient Nutrient, fate Fate) units.Fraction {
	if nutrient < Nitrogen || nutrient > Potash || fate < Excreted || fate > AfterLosses {
		return 0
	}
	return m.nutrients[nutrient-1][fate-1] * units.PoundPerShortTon
}
