package herd

import "example.org/soum/units"

// criticalRows is °F by coat, for thin, average and fleshy cows.
var criticalRows = [...][3]float64{
	{27, 19, 11}, // dry heavy winter: NEB-COLD A
	{40, 32, 24}, // dry winter: NEB-COLD A
	{67, 59, 51}, // dry summer: NEB-COLD A
	{61, 53, 45}, // wet heavy winter: NEB-COLD A
	{63, 55, 47}, // wet winter: NEB-COLD A
	{69, 61, 53}, // wet summer: NEB-COLD A
	{18, 18, 18}, // short form, heavy winter: SDSU-COLD A
	{32, 32, 32}, // short form, winter: SDSU-COLD A
	{45, 45, 45}, // short form, autumn: SDSU-COLD A
	{59, 59, 59}, // short form, wet or summer: SDSU-COLD A
}

// chillDegrees and chillWinds are the columns and rows of chillRows, °F of the
// still air and mph.
var (
	chillDegrees = [...]float64{-10, -5, 0, 5, 10, 20, 30, 40}
	chillWinds   = [...]float64{10, 20, 30}
)

// chillRows is °F felt by wind: NEB-COLD, A.
var chillRows = [len(chillWinds)][len(chillDegrees)]float64{
	{-21, -16, -11, -6, -1, 8, 18, 28},    // 10 mph
	{-30, -25, -20, -15, -10, 0, 9, 19},   // 20 mph
	{-46, -41, -36, -31, -26, -16, -6, 3}, // 30 mph
}

// coldShare is what a °F of cold adds to the need of energy.
func coldShare(rule ColdRule) units.Fraction {
	switch rule {
	case ColdTwoPercent:
		return 2 * units.Percent // OSU-COLD B
	case ColdIowa:
		return 0.7 * units.Percent // IOWA-COLD B
	case ColdPurdue:
		return 1.3 * units.Percent // PURDUE-COLD B
	}
	return 1 * units.Percent // SDSU-COLD, KSU-COLD, NDSU-COLD A
}
