package grazing

import (
	"fmt"
	"math"
	"slices"

	"example.org/soum/units"
)

// VoltageAim is what a voltage on the fence is meant for.
type VoltageAim int

// The aims of a voltage.
const (
	VoltageLeast   VoltageAim = iota + 1 // the least that the animal feels as a shock
	VoltageWorking                       // what to hold on a working fence
	VoltageMost                          // no more than this
)

// VoltageRow is a row of the table of FenceVoltage.
type VoltageRow struct {
	// Stock is the animal in words, lower case with hyphens.
	Stock string `json:"stock"`
	// Aim is what the voltage is meant for.
	Aim VoltageAim `json:"aim"`
	// Voltage is the printed span.
	Voltage units.Span[units.Voltage] `json:"voltage"`
	// Source is a key of SOURCES.md with the place.
	Source string `json:"source"`
	// Mark is how the figure was come by.
	Mark string `json:"mark"`
}

// VoltageRows gives the table of FenceVoltage, as a copy.
//
// Check: TestVoltageRows
//
// Source: ours: a collection, each figure with the source and mark on its row
func VoltageRows() []VoltageRow { return slices.Clone(voltageRows) }

// FenceVoltage gives the voltage of a fence for a kind of stock, at an end of the
// printed span.
//
// The least that acts and what to hold are two figures: an agency prints 2,000 V
// as the least for sheep, an adviser 4,000 V as usually enough for sheep and goats.
// A wet or weedy fence, dry ground and long wool take volts away: measure at the
// far end.
//
// An electric fence can hurt people and animals: what WireLength tells of the
// standard holds [IEC-FENCE]. A good pulse lasts 0.0003 s; pulses of 0.003 to 0.3 s
// melt polywire and start fires [UMAINE-FENCE-DESIGN]. Local rules decide.
//
// Where:
//   - stock: as in VoltageRows
//   - aim: what the voltage is meant for
//   - end: of the printed span
//
// Errors: a *units.ParseError that lists what there is a figure for
//
// Source: IOWA-382, SHEEP101-FENCE, WPS-FENCE, as the row says
func FenceVoltage(stock string, aim VoltageAim, end units.End) (units.Voltage, error) {
	var has []string
	for _, row := range voltageRows {
		if row.Stock == stock && row.Aim == aim {
			return units.Answer(&formulaFenceVoltage, row.Voltage.At(end), 0, float64(aim), float64(end))
		}
		has = append(has, row.Stock+" ("+row.Aim.String()+")")
	}
	problem := fmt.Sprintf("no voltage of it for %q", aim)
	return units.Voltage(math.NaN()), formulaFenceVoltage.NoRow("stock", stock, problem, has, 0, float64(aim), float64(end))
}

// EnergizerOutput returns the energy that a fence wants of its energizer in each
// pulse.
//
// Empirical: fence * 1
//
// Where:
//   - fence in mi: length of the fence on the ground, however many wires it has; >= 0
//   - result in J: output, not what is stored
//
// Note: a rule of the trade press for fence kept clear of weeds. One energizer a
// fence, and never two on one wire [IEC-FENCE]. A stronger one is not safer for
// people: buy one made to the standard, and follow local rules.
//
// Source: BEEF-FENCE-MISTAKES
func EnergizerOutput(fence units.Length) (units.PulseEnergy, error) {
	return units.Answer(&formulaEnergizerOutput, units.PulseEnergy(fence/units.Mile), float64(fence))
}

// RodRule is a rule of the ground rods of an energizer.
type RodRule int

// The rules of ground rods.
const (
	RodTradePress RodRule = iota + 1 // 3 ft for each joule
	RodUtility                       // three rods of 8 ft for 5 J, which is 4.8 ft for each joule
)

// GroundRod returns the length of ground rod in the earth, all rods together, for
// an energizer.
//
// Table: feet of rod for each joule, times the joules: 3 by the trade press, 4.8 by
// a power company, which asks three rods of 8 ft for 5 J
//
// Where:
//   - output in J: of the energizer; >= 0
//   - rule: whose rule
//
// Note: the two disagree; the longer is the safer choice, and dry or sandy ground
// wants more than either. Rods are 6 to 8 ft long and stand 10 ft apart
// [VIRGINIA-382], at least 10 m from the earth of anything else [IEC-FENCE].
//
// Source: BEEF-FENCE-MISTAKES; CLOVERLAND-FENCE
func GroundRod(output units.PulseEnergy, rule RodRule) (units.Length, error) {
	each := rodTradePress
	if rule == RodUtility {
		each = rodUtility
	}
	return units.Answer(&formulaGroundRod, units.Length(float64(output))*each, float64(output), float64(rule))
}

// Length of rod for each joule.
const (
	rodTradePress = 3 * units.Foot
	rodUtility    = 3 * 8 * units.Foot / 5
)

// GroundRods returns the rods that a length of ground rod makes, whole ones.
//
// Method: rod / each, rounded up
//
// Where:
//   - rod in ft: length wanted in the earth, as of GroundRod; >= 0
//   - each in ft: length of one rod; > 0
//
// Source: BEEF-FENCE-MISTAKES 18 ft are three rods of 6 ft
func GroundRods(rod, each units.Length) (float64, error) {
	return units.Answer(&formulaGroundRods, math.Ceil(float64(rod)/float64(each)-almost), float64(rod), float64(each))
}
