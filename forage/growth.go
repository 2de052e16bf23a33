package forage

import (
	"math"

	"example.org/soum/units"
)

// MonthGrowth returns the mean daily growth of a month.
//
// Formula: annual * share / days
//
// Where:
//   - annual in lb/ac: dry matter grown in a year; >= 0
//   - share in %: share of the year's growth that falls in the month; 0 to 100
//   - days in days: days of the month; > 0
//
// Source: definition: the month's part of the year's growth, spread evenly over its days
func MonthGrowth(annual units.Yield, share units.Fraction, days units.Days) (units.Growth, error) {
	growth := units.Growth(float64(annual) * float64(share) / float64(days))
	return units.Answer(&formulaMonthGrowth, growth, float64(annual), float64(share), float64(days))
}

// MeanGrowth returns the mean daily growth between two measurements of a stand
// that nothing grazed. It is below zero where the stand lost mass.
//
// Formula: (now - then) / days
//
// Where:
//   - now in lb/ac: dry matter standing at the later measurement; >= 0
//   - then in lb/ac: dry matter standing at the earlier one; >= 0
//   - days in days: time between the two; > 0
//
// Source: PSU-YIELD; OSU-PLATE the same
func MeanGrowth(now, then units.Yield, days units.Days) (units.Growth, error) {
	growth := units.Growth(float64(now-then) / float64(days))
	return units.Answer(&formulaMeanGrowth, growth, float64(now), float64(then), float64(days))
}

// Regrown returns what an ungrazed stand holds after so many days of one
// weather: the logistic curve, exact for any step.
//
// Formula: ceiling / (1 + (ceiling/start-1)*exp(-4*peak*days/ceiling))
//
// Where:
//   - start in kg/ha: dry matter at the beginning; > 0
//   - ceiling in kg/ha: dry matter at which growth ends; >= start
//   - peak in kg/ha/day: fastest growth of the curve, at half of the ceiling; >= 0
//   - days in days: time grown; >= 0
//
// Note: the usual relative rate g of the curve is 4 peak ÷ ceiling. No published
// ceiling or rate of temperate pasture was found. That regrowth is slow, steady
// and slow again is measured (BROUGHAM-1955); that it is this curve is a choice.
//
// Source: NJAS-1999 and NOY-MEIR-1975 for the form, from memory; ours: told by
// its fastest growth, which a farmer can know, in place of a relative rate
func Regrown(start, ceiling units.Yield, peak units.Growth, days units.Days) (units.Yield, error) {
	v, k := float64(start), float64(ceiling)
	mass := units.Yield(k / (1 + (k/v-1)*math.Exp(-4*float64(peak)*float64(days)/k)))
	return units.Answer(&formulaRegrown, mass, v, k, float64(peak), float64(days))
}

// DaysToRegrow returns the time in which an ungrazed stand comes from one mass
// to another: Regrown turned round.
//
// Formula: ceiling / (4 * peak) * (log(target/start) + log((ceiling-start)/(ceiling-target)))
//
// Where:
//   - start in kg/ha: dry matter at the beginning; > 0
//   - target in kg/ha: dry matter wanted; >= start
//   - ceiling in kg/ha: dry matter at which growth ends; > target
//   - peak in kg/ha/day: fastest growth of the curve, at half of the ceiling; > 0
//
// Source: definition: the inverse of Regrown
func DaysToRegrow(start, target, ceiling units.Yield, peak units.Growth) (units.Days, error) {
	v, t, k := float64(start), float64(target), float64(ceiling)
	days := units.Days(k / (4 * float64(peak)) * (math.Log(t/v) + math.Log((k-v)/(k-t))))
	return units.Answer(&formulaDaysToRegrow, days, v, t, k, float64(peak))
}

// MeanToPeak returns the mean growth from the mass left to the mass at turn-in,
// as a share of the fastest growth of the curve. A stand grazed by the book
// moves between these two alone, so that a growth known of the month is the mean
// of this stretch and not the fastest.
//
// Formula: 4 * (turnIn - leave) / (ceiling * (log(turnIn/leave) + log((ceiling-leave)/(ceiling-turnIn))))
//
// Where:
//   - leave in kg/ha: dry matter left by the grazing before; > 0
//   - turnIn in kg/ha: dry matter at which grazing begins; > leave
//   - ceiling in kg/ha: dry matter at which growth ends; > turnIn
//
// Source: ours: (turnIn - leave) over the time that DaysToRegrow gives between
// the two, over the fastest growth
func MeanToPeak(leave, turnIn, ceiling units.Yield) (float64, error) {
	r, t, k := float64(leave), float64(turnIn), float64(ceiling)
	share := 4 * (t - r) / (k * (math.Log(t/r) + math.Log((k-r)/(k-t))))
	return units.Answer(&formulaMeanToPeak, share, r, t, k)
}

// PeakGrowth returns the fastest growth of the curve whose mean growth between
// two grazings is given.
//
// Formula: mean / meanToPeak
//
// Where:
//   - mean in kg/ha/day: mean daily growth between the mass left and turn-in; >= 0
//   - meanToPeak: that mean as a share of the fastest, see MeanToPeak; > 0 and <= 1
//
// Source: definition: see MeanToPeak
func PeakGrowth(mean units.Growth, meanToPeak float64) (units.Growth, error) {
	peak := units.Growth(float64(mean) / meanToPeak)
	return units.Answer(&formulaPeakGrowth, peak, float64(mean), meanToPeak)
}

// Grown returns what a time of steady growth adds to a stand.
//
// Formula: growth * days
//
// Where:
//   - growth in kg/ha/day: mean daily growth; any
//   - days in days: time grown; >= 0
//
// Note: cages that keep stock out yield about 30 % more than the farm around them
// grows (DAIRYNZ-CAGES).
//
// Source: MLA-REST days of the month × daily growth; AWI-MLA-8-4 worked example;
// NI-GROWTH the yields that follow from the means
func Grown(growth units.Growth, days units.Days) (units.Yield, error) {
	return units.Answer(&formulaGrown, units.Yield(float64(growth)*float64(days)), float64(growth), float64(days))
}

// ForagePerTurn returns what a pasture holds ready at each turn of a rotation, by the
// hay that the same ground would yield in a year.
//
// Formula: 0.2 * hay
//
// Where:
//   - hay in short ton/ac: hay of a year, as soil surveys tell it; >= 0; 2.5 to 5.5 [CORNELL-PLAN]
//
// Note: a figure to plan with before anything is measured: 400 lb for each short
// ton. It says nothing of how many turns a season has.
//
// Source: PENNSYLVANIA-GUIDE 400 lb/ac at each grazing for each ton of hay;
// CORNELL-PLAN the table of New York
func ForagePerTurn(hay units.Yield) (units.Yield, error) {
	return units.Answer(&formulaForagePerTurn, units.Yield(0.2*float64(hay)), float64(hay))
}

// GrowthByRain returns the growth to be expected of a year by its rain.
//
// Formula: normal * share
//
// Where:
//   - normal in kg/ha/day: growth of a normal year; >= 0
//   - share in %: forage as a share of normal by the rain of the key months; >= 0
//
// Note: the share is what rainfall.ForageShare gives of the rain: with three
// quarters of normal rain in April to June the year grows about a quarter less.
// Growth above normal in a wet year is not printed.
//
// Source: NDSU-SPRING the share; definition: a share of the normal growth
func GrowthByRain(normal units.Growth, share units.Fraction) (units.Growth, error) {
	growth := units.Growth(float64(normal) * float64(share))
	return units.Answer(&formulaGrowthByRain, growth, float64(normal), float64(share))
}

// euler is e, the base of the natural logarithm.
const euler = 2.718281828459045

// Gompertz returns what an ungrazed stand holds after so many days by the Gompertz
// curve: like Regrown, but fastest at 37 % of the ceiling and slower in the end.
//
// Formula: ceiling * pow(start/ceiling, exp(-2.718281828459045*peak*days/ceiling))
//
// Where:
//   - start in kg/ha: dry matter at the beginning; > 0
//   - ceiling in kg/ha: dry matter at which growth ends; >= start
//   - peak in kg/ha/day: fastest growth of the curve, at the ceiling ÷ e; >= 0
//   - days in days: time grown; >= 0
//
// Note: no parameters of temperate pasture were found in print. The usual rate k
// of the curve is e × peak ÷ ceiling.
//
// Source: NJAS-1999 that the form is used, the form itself from memory; ours: told
// by its fastest growth
func Gompertz(start, ceiling units.Yield, peak units.Growth, days units.Days) (units.Yield, error) {
	v, k := float64(start), float64(ceiling)
	mass := units.Yield(k * math.Pow(v/k, math.Exp(-euler*float64(peak)*float64(days)/k)))
	return units.Answer(&formulaGompertz, mass, v, k, float64(peak), float64(days))
}

// GompertzDays returns the time in which an ungrazed stand comes from one mass to
// another by the Gompertz curve: Gompertz turned round.
//
// Formula: ceiling / (2.718281828459045 * peak) * log(log(ceiling/start)/log(ceiling/target))
//
// Where:
//   - start in kg/ha: dry matter at the beginning; > 0
//   - target in kg/ha: dry matter wanted; >= start
//   - ceiling in kg/ha: dry matter at which growth ends; > target
//   - peak in kg/ha/day: fastest growth of the curve, at the ceiling ÷ e; > 0
//
// Source: definition: the inverse of Gompertz
func GompertzDays(start, target, ceiling units.Yield, peak units.Growth) (units.Days, error) {
	v, t, k := float64(start), float64(target), float64(ceiling)
	days := units.Days(k / (euler * float64(peak)) * math.Log(math.Log(k/v)/math.Log(k/t)))
	return units.Answer(&formulaGompertzDays, days, v, t, k, float64(peak))
}

// Expolinear returns what a crop holds so many days after it came up: growth that
// is exponential at first and then steady, without an end.
//
// Formula: fastest / relative * (max(relative*(days-lost), 0) + log(1+exp(-max(relative*(days-lost), relative*(lost-days)))))
//
// Where:
//   - fastest in kg/ha/day: the steady growth that the curve comes to; >= 0
//   - relative: growth a day as a share of the mass, at first; > 0
//   - days in days: time since the beginning; >= 0
//   - lost in days: where the steady line begins, read back to nothing; any
//
// Note: in timothy and meadow fescue the steady growth rose with nitrogen and did
// not differ by species, the first growth differed by site and year (EXPOLINEAR-HAY).
// The curve knows no ceiling: use it up to heading.
//
// Source: GOUDRIAAN-1990 for the curve, its form from memory
func Expolinear(fastest units.Growth, relative float64, days, lost units.Days) (units.Yield, error) {
	along := relative * float64(days-lost)
	mass := units.Yield(float64(fastest) / relative * (max(along, 0) + math.Log(1+math.Exp(-math.Abs(along)))))
	return units.Answer(&formulaExpolinear, mass, float64(fastest), relative, float64(days), float64(lost))
}

// ExpolinearDays returns the time in which a crop comes to a mass by the
// expolinear curve: Expolinear turned round. It is below nothing where the curve
// held that much at its beginning.
//
// Formula: lost + (mass*relative/fastest + log(1-exp(-mass*relative/fastest)))/relative
//
// Where:
//   - mass in kg/ha: dry matter wanted; > 0
//   - fastest in kg/ha/day: the steady growth that the curve comes to; > 0
//   - relative: growth a day as a share of the mass, at first; > 0
//   - lost in days: where the steady line begins, read back to nothing; any
//
// Source: definition: the inverse of Expolinear
func ExpolinearDays(mass units.Yield, fastest units.Growth, relative float64, lost units.Days) (units.Days, error) {
	steps := float64(mass) * relative / float64(fastest)
	days := units.Days(float64(lost) + (steps+math.Log(1-math.Exp(-steps)))/relative)
	return units.Answer(&formulaExpolinearDays, days, float64(mass), float64(fastest), relative, float64(lost))
}
