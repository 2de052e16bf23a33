package units

// Gap gives the error of an argument that lies between two parts of what the
// source of a formula covers: covered up to low and again from high on, both in
// base units. It goes beside the formula's value.
func (f *Formula) Gap(argument int, value, low, high float64, source string) error {
	a := &f.Arguments[argument]
	return &RangeError{
		Function: f.Name, Argument: a.Name, Index: argument + 1,
		Value: value / a.Factor, Low: low / a.Factor, High: high / a.Factor, Gap: true,
		Unit: a.Unit, Source: source,
		wanted: "at most " + number(low/a.Factor, a.Unit) + " or at least " + number(high/a.Factor, a.Unit),
	}
}
