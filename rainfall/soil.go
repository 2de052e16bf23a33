package rainfall

import (
	"fmt"
	"math"
	"slices"

	"example.org/soum/units"
)

// SoilSource is whose figures of the water that soils hold are used.
type SoilSource int

// The sources.
const (
	SoilByCalifornia SoilSource = iota + 1 // University of California
	SoilByWyoming                          // NRCS in Wyoming
	SoilByNebraska                         // University of Nebraska
)

// SoilRow is a row of the table of water that soils hold for plants.
type SoilRow struct {
	// Texture is the texture of the soil, lower case with hyphens.
	Texture string `json:"texture"`
	// By is whose figure it is.
	By SoilSource `json:"by"`
	// Holds is the printed span of available water.
	Holds units.Span[units.WaterHolding] `json:"holds_m_m"`
	units.Printed
}

// SoilRows gives the table of water that soils hold, as a copy.
//
// Check: TestSoilRows
//
// Source: ours: a collection, each figure with the source and mark on its row
func SoilRows() []SoilRow { return slices.Clone(soilRows) }

// SoilWater gives the water that a depth of soil holds for plants, between what
// drains away and what roots cannot reach, by its texture.
//
// The sources differ: silt loam holds 1.5 to 2.3 in/ft by one, 1.5 to 2.1 by another,
// about 2 by a third.
//
// Errors: a *units.ParseError that lists the textures, or the sources, that have a
// figure, or the ends
//
// Source: UC-SOIL-WATER, NRCS-WYOMING-SOIL, UNL-SOIL-WATER, as the row says
func SoilWater(texture string, by SoilSource, end units.End) (units.WaterHolding, error) {
	const function = "rainfall.SoilWater"
	nothing := units.WaterHolding(math.NaN())
	if err := checkEnd(function, 3, end); err != nil {
		return nothing, err
	}
	var sources, textures []string
	for i := range soilRows {
		row := &soilRows[i]
		switch {
		case row.Texture == texture && row.By == by:
			return row.Holds.At(end), nil
		case row.Texture == texture:
			sources = append(sources, row.By.String())
		}
		if !slices.Contains(textures, row.Texture) {
			textures = append(textures, row.Texture)
		}
	}
	if sources != nil {
		return nothing, noRow(function, "by", 2, "rainfall.SoilSource", wordOf(by), fmt.Sprintf("has no figure of %q", texture), sources)
	}
	return nothing, noRow(function, "texture", 1, "rainfall.SoilRow", texture, "no figure of this texture", textures)
}

// RootZoneWater returns the water that the soil holds within reach of the roots.
//
// Formula: root * holds
//
// Where:
//   - root in ft: depth of the roots; >= 0
//   - holds in in/ft: water that the soil holds (SoilWater); >= 0
//
// Source: definition: depth of soil times what it holds
func RootZoneWater(root units.Length, holds units.WaterHolding) (units.RainDepth, error) {
	return units.Answer(&formulaRootZoneWater, units.RainDepth(float64(root)*float64(holds)), float64(root), float64(holds))
}

// RefillPoint returns the water that is still in the root zone when it is time to
// water.
//
// Formula: store * (1 - used)
//
// Where:
//   - store in in: what the root zone holds (RootZoneWater); >= 0
//   - used in %: share that may be used up; 0 to 100
//
// Note: print waters pasture when half is used; grass grew best with 15 to 50 % used
// (NZREGEN-MOISTURE).
//
// Source: USU-PASTURE-WATER the 50 %; definition: what is left of the store
func RefillPoint(store units.RainDepth, used units.Fraction) (units.RainDepth, error) {
	return units.Answer(&formulaRefillPoint, units.RainDepth(float64(store)*(1-float64(used))), float64(store), float64(used))
}

// ProfileWater gives the water that a soil in layers holds for plants.
//
// Errors: a *document.Error with the place for lists of different lengths or empty, a
// depth or a holding below 0 or not a number; a *units.DomainError where the sum
// overflows
//
// Check: TestProfileWater
//
// Source: PROFILE-CLASSES
func ProfileWater(depths []units.Length, holds []units.WaterHolding) (units.RainDepth, error) {
	nothing := units.RainDepth(math.NaN())
	if err := sameLength("depths", len(depths), "holds", len(holds)); err != nil {
		return nothing, err
	}
	sum := 0.0
	for i, depth := range depths {
		if !(depth >= 0) || math.IsInf(float64(depth), 1) {
			return nothing, wrong(fmt.Sprintf("depths[%d]", i), depth.String(), "is not the depth of a layer", "0 m or more")
		}
		if !(holds[i] >= 0) || math.IsInf(float64(holds[i]), 1) {
			return nothing, wrong(fmt.Sprintf("holds[%d]", i), holds[i].String(), "is not water that a soil holds", "0 m/m or more")
		}
		sum += float64(depth) * float64(holds[i])
	}
	if sum-sum != 0 {
		return nothing, overflows("rainfall.ProfileWater", sum)
	}
	return units.RainDepth(sum), nil
}

// ProfileClass is a class of the water that a soil of 60 in holds.
type ProfileClass int

// The classes.
const (
	ProfileVeryLow  ProfileClass = iota + 1 // under 3 in
	ProfileLow                              // 3 to 6 in
	ProfileModerate                         // 6 to 9 in
	ProfileHigh                             // over 9 in
)

// ClassOfProfile gives the class of a soil by the water that its upper 60 in (or
// all of it, where rock comes sooner) hold for plants. Print leaves open where 6 in
// belong: to the higher class here.
//
// Table: very low under 3 in, low under 6, moderate to 9, high above
//
// Where:
//   - water in in: water that the soil holds for plants; >= 0
//
// Source: PROFILE-CLASSES
func ClassOfProfile(water units.RainDepth) (ProfileClass, error) {
	if _, err := units.Answer(&formulaClassOfProfile, float64(water), float64(water)); err != nil {
		return 0, err
	}
	switch {
	case water < profileLimits[0]:
		return ProfileVeryLow, nil
	case water < profileLimits[1]:
		return ProfileLow, nil
	case water <= profileLimits[2]:
		return ProfileModerate, nil
	}
	return ProfileHigh, nil
}
