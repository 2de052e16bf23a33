package grazing

import "example.org/soum/units"

// StripLength returns how far to move the front along a lane to open an area.
//
// Formula: area / width
//
// Where:
//   - area in ac: the strip wanted, as of StayArea; >= 0
//   - width in ft: width of the lane, the length of the cross wire; > 0
//
// Note: put the next cross wire up before the old one comes down
// [KENTUCKY-STRIP], and move animals that know the fence.
//
// Source: definition: a rectangle; UCONN-STEPS prints one
func StripLength(area units.Area, width units.Length) (units.Length, error) {
	length := units.Length(float64(area) / float64(width))
	return units.Answer(&formulaStripLength, length, float64(area), float64(width))
}

// StripArea returns the land in a strip across a lane, or in any rectangle.
//
// Formula: length * width
//
// Where:
//   - length in ft: along the lane; >= 0
//   - width in ft: across it; >= 0
//
// Source: definition: a rectangle; UCONN-STEPS prints one
func StripArea(length, width units.Length) (units.Area, error) {
	area := units.Area(float64(length) * float64(width))
	return units.Answer(&formulaStripArea, area, float64(length), float64(width))
}
