package herd

import "example.org/soum/units"

// cubicInch and cubicCentimetre are in the cubic metres that girth and length
// come in.
const (
	cubicInch       = float64(units.Inch * units.Inch * units.Inch)
	cubicCentimetre = float64(units.Centimetre * units.Centimetre * units.Centimetre)
	tapePound       = float64(units.LivePound)
)

// tape is a rule of girth and length in base units: what multiplies girth² ·
// length, what is added always, and what is added below a weight.
type tape struct{ factor, added, below, young float64 }

func tapeRow(rule TapeRule) tape {
	switch rule {
	case TapeHorse:
		return tape{factor: tapePound / (330 * cubicInch)} // ARKANSAS-HORSE A
	case TapeHorseMetric:
		return tape{factor: 1 / (11900 * cubicCentimetre)} // GAUTENG-TAPE B
	case TapeDonkey:
		return tape{factor: tapePound / (300 * cubicInch), added: 50 * tapePound} // PEACE-CORPS-TAPE A
	case TapePig:
		return tape{factor: tapePound / (400 * cubicInch)} // PIG-TAPE B
	case TapePigPlusSeven:
		return tape{factor: tapePound / (400 * cubicInch), below: 150 * tapePound, young: 7 * tapePound} // PIG-TAPE B
	case TapePigPlusSix:
		return tape{factor: tapePound / (400 * cubicInch), below: 150 * tapePound, young: 6 * tapePound} // PIG-TAPE B
	case TapePigMetric:
		return tape{factor: 69.3} // VIOVET-TAPE B
	}
	return tape{factor: tapePound / (300 * cubicInch)} // PEACE-CORPS-TAPE A cattle, VIOVET-TAPE B sheep and goats
}

// goatChart is weight by girth of dairy goats: GOAT-GIRTH, B.
var goatChart = [...]tablePoint{
	{10.75 * float64(units.Inch), 5 * tapePound},
	{20 * float64(units.Inch), 30 * tapePound},
	{32 * float64(units.Inch), 100 * tapePound},
}
