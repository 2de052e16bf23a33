package forage

import (
	"slices"

	"example.org/soum/units"
)

// ClippedYield returns the dry matter per area of a sample clipped from one frame
// or from several.
//
// Formula: sample * dryMatter / frame
//
// Where:
//   - sample in lb: weight of all that was clipped, as it is when dryMatter is told; >= 0
//   - dryMatter in %: dry matter of the sample, 100 where it is dried already; 0 to 100
//   - frame in ft2: ground clipped, of all frames together; > 0
//
// Note: the printed factors of frames are this formula for one gram of dry
// matter, rounded: 10 lb an acre for ten plots of 0.96 ft², 62.5 kg a hectare for a
// frame of 0.4 m a side. An ounce on a square foot is 2,722.5 lb an acre. The ounce
// factors of one sheet are a tenth of what they should be, and one frame's printed
// sides and area disagree: see the sources' entries, and measure your own frame.
// TAMU-1646 clips ten plots first and at least ten a day after that, to correct the
// eye; MLA-CUTS takes at least five.
//
// Source: UMAINE-DRYING formula and worked example; TEAGASC-CUT in metric;
// VEGETATION-ATTRIBUTES, LULING-STICK, TAMU-1646 factors of frames
func ClippedYield(sample units.FreshFeed, dryMatter units.Fraction, frame units.Area) (units.Yield, error) {
	yield := units.Yield(float64(sample) * float64(dryMatter) / float64(frame))
	return units.Answer(&formulaClippedYield, yield, float64(sample), float64(dryMatter), float64(frame))
}

// HoopArea returns the ground inside a hoop from the length of its rim.
//
// Formula: rim * rim / (4 * 3.141592653589793)
//
// Where:
//   - rim in m: length round the hoop, on its inner side; >= 0
//
// Source: IDAHO-RANGE a hoop of a square metre; definition: a circle of a circumference
func HoopArea(rim units.Length) (units.Area, error) {
	area := units.Area(float64(rim) * float64(rim) / (4 * pi))
	return units.Answer(&formulaHoopArea, area, float64(rim))
}

const pi = 3.141592653589793

// Frame is a row of the table of clipping frames. A user's own frame needs no
// row: ClippedYield takes its area.
type Frame struct {
	// Name of the frame, lower case with hyphens.
	Name string `json:"name"`
	// Area is the ground clipped, of all plots together.
	Area units.Area `json:"area"`
	// Factor is the printed dry matter per area for one gram of dry sample; 0
	// where the source prints the size alone.
	Factor units.Yield `json:"factor"`
	units.Printed
	// Note tells what does not agree.
	Note string `json:"note,omitempty"`
}

// Frames gives the table of clipping frames, as a copy.
//
// Check: TestPrintedFactorsFollowFromTheFrame
//
// Source: ours: a collection, each frame with its source on its row
func Frames() []Frame { return slices.Clone(frameRows) }

// FrameArea gives the ground that a printed frame clips.
//
// Table: areas by frame, of all its plots together
//
// Where:
//   - frame: as in Frames
//
// Errors: a *units.ParseError that lists the frames
//
// Source: VEGETATION-ATTRIBUTES, CATTLEMAN-2014, LULING-STICK, TEAGASC-CUT,
// NDMC-CLIP, IDAHO-RANGE, TAMU-1646, as the row says
func FrameArea(frame string) (units.Area, error) {
	row := rowOf(frameRows, func(f *Frame) bool { return f.Name == frame })
	if row == nil {
		return noRow[units.Area](&formulaFrameArea, "frame", frame, "no such frame", namesOf(frameRows, func(f *Frame) string { return f.Name }), 0)
	}
	return row.Area, nil
}

// RangePlant is a row of the table of air-dry matter by stage.
type RangePlant int

// The plants of the table.
const (
	PlantAlkaliSacaton     RangePlant = iota + 1 // alkali sacaton
	PlantBeardedWheatgrass                       // bearded wheatgrass
	PlantBluebunch                               // bluebunch wheatgrass
	PlantBlueWildrye                             // blue wildrye
	PlantCheatgrass                              // cheatgrass
	PlantColumbiaNeedle                          // Columbia needlegrass
	PlantCrestedWheatgrass                       // crested wheatgrass
	PlantDrylandSedge                            // dryland sedge
)

// PlantStage is how far a plant has grown.
type PlantStage int

// The stages.
const (
	StageToFlowering PlantStage = iota + 1 // ready to flower
	StageFullBloom                         // in full bloom
	StageSeedShed                          // its seed shed
)

// AirDryShare returns what is left of green weight when a range plant has dried in
// the air, by its stage: green weight × share = air-dry weight.
//
// Table: printed shares by plant and stage
//
// Where:
//   - plant: which
//   - stage: how far it has grown
//
// Note: measured in Utah, 1953 to 1963. Air-dry is not oven-dry: about a tenth of
// it is water still. That tenth is common practice, from memory.
//
// Source: UTAH-AIR-DRY
func AirDryShare(plant RangePlant, stage PlantStage) (units.Fraction, error) {
	share := units.Fraction(0)
	if plant >= PlantAlkaliSacaton && plant <= PlantDrylandSedge && stage >= StageToFlowering && stage <= StageSeedShed {
		share = airDryShares[plant-1][stage-1] * units.Percent
	}
	return units.Answer(&formulaAirDryShare, share, float64(plant), float64(stage))
}
