package forage

import (
	"fmt"
	"slices"

	"example.org/soum/units"
)

// PrussicCrop is a crop that makes prussic acid. Johnsongrass and shattercane do
// as well, mostly as weeds; pearl millet, foxtail millet and maize do not.
type PrussicCrop int

// The crops that make prussic acid.
const (
	PrussicSudangrass        PrussicCrop = iota + 1 // sudangrass
	PrussicSorghum                                  // forage and grain sorghum
	PrussicSorghumSudangrass                        // crosses of the two
)

// PrussicSource is whose heights and waits are used.
type PrussicSource int

// The sources of heights and waits.
const (
	PrussicByNebraska PrussicSource = iota + 1 // Nebraska Extension
	PrussicByIllinois                          // University of Illinois
	PrussicByKansas                            // Kansas State, in a press report
	PrussicByPress                             // trade press on frost and forages
	PrussicByDairy                             // trade press on prussic acid
	PrussicByDrovers                           // trade press on frosted forage
)

// Frost is what a frost did to a crop.
type Frost int

// The frosts.
const (
	FrostLight   Frost = iota + 1 // the tops are hurt, the crop lives
	FrostKilling                  // the crop is dead
)

// PrussicHeightRow is a row of the least heights for grazing.
type PrussicHeightRow struct {
	// Crop is the crop.
	Crop PrussicCrop `json:"crop"`
	// By is whose figure it is.
	By PrussicSource `json:"by"`
	// Height is the least height of the stand.
	Height units.Span[units.Height] `json:"height"`
	units.Printed
}

// PrussicWaitRow is a row of the days to wait after a frost.
type PrussicWaitRow struct {
	// Frost is what the frost did.
	Frost Frost `json:"frost"`
	// By is whose figure it is.
	By PrussicSource `json:"by"`
	// Wait is the days from the frost to grazing.
	Wait units.Span[units.Days] `json:"wait"`
	units.Printed
}

// PrussicHeights gives the least heights for grazing, as a copy.
//
// Check: TestPrussicRows
//
// Source: NEBRASKA-PRUSSIC, ILLINOIS-PRUSSIC, KSTATE-SORGHUM, AGPROUD-FROST,
// DROVERS-FROST, as the row says
func PrussicHeights() []PrussicHeightRow { return slices.Clone(prussicHeights) }

// PrussicWaits gives the days to wait after a frost, as a copy.
//
// Check: TestPrussicRows
//
// Source: NEBRASKA-PRUSSIC, ILLINOIS-PRUSSIC, AGPROUD-FROST, AGPROUD-PRUSSIC,
// DROVERS-FROST, as the row says
func PrussicWaits() []PrussicWaitRow { return slices.Clone(prussicWaits) }

// PrussicHeight gives the least height at which a crop may be grazed, by one source.
//
// The sources differ by half: 15 to 30 in for a cross. PrussicRisk takes the
// highest of them, and its cautions hold.
//
// Where:
//   - crop: which
//   - by: whose figure
//   - end: of the printed span
//
// Errors: a *units.ParseError that lists the sources with a figure of the crop
//
// Source: NEBRASKA-PRUSSIC, ILLINOIS-PRUSSIC, KSTATE-SORGHUM, AGPROUD-FROST,
// DROVERS-FROST, as the source says
func PrussicHeight(crop PrussicCrop, by PrussicSource, end units.End) (units.Height, error) {
	arguments := [...]float64{float64(crop), float64(by), float64(end)}
	row := rowOf(prussicHeights, func(r *PrussicHeightRow) bool { return r.Crop == crop && r.By == by })
	if row == nil {
		sources := known(prussicHeights, func(r *PrussicHeightRow) bool { return r.Crop == crop }, func(r *PrussicHeightRow) string { return r.By.String() })
		return noRow[units.Height](&formulaPrussicHeight, "by", by.String(), fmt.Sprintf("has no height of %q", crop), sources, arguments[:]...)
	}
	return units.Answer(&formulaPrussicHeight, row.Height.At(end), arguments[:]...)
}

// PrussicWait gives the days from a frost to grazing, by one source.
//
// The sources differ by three times: 5 to 14 days after a killing frost, and they
// call a frost killing at 24 or at 28 °F. PrussicDaysLeft takes the longest wait,
// and the cautions of PrussicRisk hold. Each new frost starts the wait again.
//
// Where:
//   - frost: light or killing
//   - by: whose figure
//   - end: of the printed span
//
// Errors: a *units.ParseError that lists the sources with a figure for the frost
//
// Source: NEBRASKA-PRUSSIC, ILLINOIS-PRUSSIC, AGPROUD-FROST, AGPROUD-PRUSSIC,
// DROVERS-FROST, as the source says
func PrussicWait(frost Frost, by PrussicSource, end units.End) (units.Days, error) {
	arguments := [...]float64{float64(frost), float64(by), float64(end)}
	row := rowOf(prussicWaits, func(r *PrussicWaitRow) bool { return r.Frost == frost && r.By == by })
	if row == nil {
		sources := known(prussicWaits, func(r *PrussicWaitRow) bool { return r.Frost == frost }, func(r *PrussicWaitRow) string { return r.By.String() })
		return noRow[units.Days](&formulaPrussicWait, "by", by.String(), fmt.Sprintf("has no wait after a %q frost", frost), sources, arguments[:]...)
	}
	return units.Answer(&formulaPrussicWait, row.Wait.At(end), arguments[:]...)
}

// PrussicDaysLeft returns how many more days stock stay off a frosted crop that
// makes prussic acid, by the longest printed wait.
//
// Formula: max(14-since, 0)
//
// Where:
//   - since in days: since the last frost, light or killing; >= 0
//
// Note: each new frost starts the wait again. The cautions of PrussicRisk hold.
//
// Source: DROVERS-FROST 14 days; AGPROUD-FROST the same; shorter ones are rows of
// PrussicWaits
func PrussicDaysLeft(since units.Days) (units.Days, error) {
	return units.Answer(&formulaPrussicDaysLeft, max(longestPrussicWait-since, 0), float64(since))
}

// Prussic is a class of the risk of prussic acid on a crop.
type Prussic int

// The classes. PrussicLower does not mean none.
const (
	PrussicLower   Prussic = iota + 1 // tall enough and long enough after frost
	PrussicShort                      // shorter than the highest printed height
	PrussicFrosted                    // within the longest printed wait after a frost
)

// PrussicRisk tells whether a crop that makes prussic acid stands too low or too
// shortly after a frost to be grazed, by the strictest printed figures.
//
// Prussic acid kills within minutes. A lower class is not a safe crop: young shoots,
// wilted or drought-struck leaves and regrowth from the base after a frost are the
// worst, whatever the rest of the stand measures. Keep stock off on nights when
// frost is likely, never turn hungry stock onto such a crop, have it tested where
// there is any doubt, and ask a vet or an adviser; an animal that gasps or falls is
// a case for the vet at once.
//
// Table: frosted where fewer than 14 days have gone by since the last frost; short
// where the stand is below 18 in (sudangrass), 24 in (sorghum) or 30 in (their
// crosses); else lower
//
// Where:
//   - crop: which
//   - height in in: of the stand; >= 0
//   - since in days: since the last frost, light or killing; >= 0
//
// Note: for a stand that has had no frost give 14 days or more. Sorghum is the most
// dangerous of the three and yet its highest printed height is below that of the
// crosses, so that its row is no lesser caution.
//
// Source: NEBRASKA-PRUSSIC, AGPROUD-FROST heights; DROVERS-FROST, AGPROUD-FROST 14 days
func PrussicRisk(crop PrussicCrop, height units.Height, since units.Days) (Prussic, error) {
	if _, err := units.Answer(&formulaPrussicRisk, height, float64(crop), float64(height), float64(since)); err != nil {
		return 0, err
	}
	if since < longestPrussicWait {
		return PrussicFrosted, nil
	}
	for _, row := range prussicHeights {
		if row.Crop == crop && height < row.Height.High {
			return PrussicShort, nil
		}
	}
	return PrussicLower, nil
}

// FeedBasis is what a share of feed is counted of.
type FeedBasis int

// The bases.
const (
	BasisDry  FeedBasis = iota + 1 // of the dry matter
	BasisAsIs                      // of the feed as it lies
)

// Cyanide is a class of prussic acid in feed.
type Cyanide int

// The classes. CyanideLower does not mean none.
const (
	CyanideLower  Cyanide = iota + 1 // below the limit
	CyanideToxic                     // to be treated as toxic, never the only feed
	CyanideDeadly                    // highly dangerous
)

// CyanideClass gives the class of prussic acid, HCN, that a laboratory found in a feed.
//
// The gas leaves a sample on its way: ask the laboratory how to send it. The
// cautions of PrussicRisk hold.
//
// Table: toxic over 500 ppm of the dry matter, or 200 ppm of the feed as it lies;
// deadly over 0.1 % of the dry matter; the second limit is not told for feed as it
// lies
//
// Where:
//   - amount in ppm: of prussic acid; >= 0
//   - basis: what it is a share of
//
// Source: KSTATE-CYANIDE toxic; AGRILIFE-CYANIDE deadly; that gas leaves a sample
// is from memory
func CyanideClass(amount units.Concentration, basis FeedBasis) (Cyanide, error) {
	if _, err := units.Answer(&formulaCyanideClass, amount, float64(amount), float64(basis)); err != nil {
		return 0, err
	}
	switch {
	case basis == BasisDry && amount > cyanideDeadly:
		return CyanideDeadly, nil
	case basis == BasisDry && amount > cyanideToxicDry, basis == BasisAsIs && amount > cyanideToxicAsIs:
		return CyanideToxic, nil
	}
	return CyanideLower, nil
}

// CherryDose returns the wilted leaves of wild black cherry that can kill a cow or a
// sheep, from the least to the most printed.
//
// Empirical: (0.46 + place/100*(1.82-0.46)) * weight
//
// Where:
//   - weight in lb: live weight of one animal; > 0
//   - place in %: 0 for the least printed dose, 100 for the most; 0 to 100
//   - result in g: leaves
//
// Note: a dose to reckon back from, not one to allow: a fallen limb holds many times
// as much. Clear limbs out before stock come in, walk the fences after every storm,
// and call a vet at once where leaves were eaten. Young leaves, and leaves that wilt
// on the limb, are the worst.
//
// Source: MARYLAND-CHERRY; PSU-CHERRY
func CherryDose(weight units.LiveWeight, place units.Fraction) (units.Mass, error) {
	each := cherryLeast + float64(float64(place)*(cherryMost-cherryLeast))
	return units.Answer(&formulaCherryDose, units.Mass(each*float64(weight/units.LivePound))*units.Gram, float64(weight), float64(place))
}
