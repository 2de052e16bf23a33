package farm

import "example.org/soum/units"

// YieldOf gives the yield that a piece of land grows, for the tests.
func YieldOf(f *Farm, i int) (units.Yield, error) {
	p, err := f.Land[i].pasture()
	if err != nil {
		return 0, err
	}
	return f.Land[i].yield(p)
}

// CautionSources gives the sources of every caution by its code.
func CautionSources() map[string]string {
	all := map[string]string{}
	for code, a := range advices {
		all[code] = a.source
	}
	return all
}
