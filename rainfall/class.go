package rainfall

import (
	"math"
	"slices"

	"example.org/soum/units"
)

// ClassScheme is a printed table of words for how dry or wet it is.
type ClassScheme int

// The schemes, each over a number of its own.
const (
	SchemeIndex         ClassScheme = iota + 1 // the index SPI in the words of WMO
	SchemeIndexOlder                           // the index SPI in the older words of drought
	SchemeMonitorIndex                         // the index SPI by the US Drought Monitor
	SchemeMonitorPalmer                        // the Palmer index PDSI by the US Drought Monitor
	SchemeMonitorWhole                         // the percentile by the US Drought Monitor, bands of whole numbers
	SchemeMonitorBounds                        // the percentile by drought.gov, bands that meet, wet ones too
	SchemeDecilePairs                          // the decile, in pairs
	SchemeDecileSplit                          // the decile, the outer ones apart
	SchemePercentOfYear                        // per cent of the normal rain of a year
)

// ClassRow is a row of the table of RainClass.
type ClassRow struct {
	// Scheme is whose table it is.
	Scheme ClassScheme `json:"scheme"`
	// Name is the class, lower case.
	Name string `json:"name"`
	// Low is the lowest number of the class, as printed; without meaning where
	// LowOpen.
	Low float64 `json:"low"`
	// High is the highest number of the class, as printed; without meaning where
	// HighOpen.
	High float64 `json:"high"`
	// LowOpen tells that the class has no lower end.
	LowOpen bool `json:"low_open"`
	// HighOpen tells that the class has no upper end.
	HighOpen bool `json:"high_open"`
	units.Printed
}

// ClassRows gives the table of RainClass, as a copy. Of each scheme the outer
// classes stand first: they have the numbers that two classes share.
//
// Check: TestClassRows
//
// Source: ours: a collection, each row with its source and mark
func ClassRows() []ClassRow { return slices.Clone(classRows) }

// places are the decimals in which the classes of a scheme are printed; -1 where
// its bands meet.
var places = [...]float64{
	SchemeIndex: 2, SchemeIndexOlder: 2, SchemeMonitorIndex: 1, SchemeMonitorPalmer: 1, SchemeMonitorWhole: 0,
	SchemeMonitorBounds: -1, SchemeDecilePairs: 0, SchemeDecileSplit: 0, SchemePercentOfYear: -1,
}

// RainClass gives the word for how dry or wet it is.
//
// Table: ClassRows. Most bands are printed with gaps, as 1.0 to 1.49 and 1.5 to
// 1.99: the number is rounded to the printed decimals first, half away from 0.
// Where two bands share a bound, the number on it is of the outer class.
//
// The tables differ. The index of -1.6 is severely dry by WMO, severe drought in
// the older words and extreme drought by the US Drought Monitor; -0.7 is near
// normal, mild drought and abnormally dry. Say whose word it is.
//
// Note: 77 % of normal rain is near normal by the index where rain varies much: at
// Fort Collins the rule of 75 % calls 15 years of 103 a drought.
//
// Errors: a *units.DomainError for a number that no class has, as a percentile above
// 100; a *units.ParseError that lists the schemes
//
// Check: TestRainClass
//
// Source: WMO-1090-TABLE; MCKEE-WORDS; MONITOR-CLASSES; DROUGHT-GOV; GIBBS-DECILES;
// CARIBBEAN-DECILES; NRCS-DROUGHT, as the row says; ours: the rounding
func RainClass(scheme ClassScheme, value float64) (string, error) {
	const name = "rainfall.RainClass"
	if scheme < SchemeIndex || scheme > SchemePercentOfYear {
		return "", noWord(name, "scheme", 1, "rainfall.ClassScheme", scheme, namesClassScheme[1:])
	}
	rounded := value
	if p := places[scheme]; p >= 0 {
		ten := math.Pow(10, p)
		rounded = math.Round(value*ten) / ten
	}
	for i := range classRows {
		r := &classRows[i]
		if r.Scheme != scheme || rounded-rounded != 0 {
			continue
		}
		if (r.LowOpen || rounded >= r.Low) && (r.HighOpen || rounded <= r.High) {
			return r.Name, nil
		}
	}
	return "", units.OutOfDomain(name, 2, units.Argument{Name: "value", Factor: 1, Domain: scheme.limits()}, value)
}

// limits gives from the lowest to the highest number that a scheme has a class for.
func (e ClassScheme) limits() units.Limits {
	low, high := math.Inf(1), math.Inf(-1)
	for i := range classRows {
		r := &classRows[i]
		switch {
		case r.Scheme != e:
			continue
		case r.LowOpen:
			low = math.Inf(-1)
		case r.HighOpen:
			high = math.Inf(1)
		}
		low, high = min(low, r.Low), max(high, r.High)
	}
	return units.Between(low, high, "")
}
