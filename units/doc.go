// Package units holds the quantities of grazing as types: lengths and heights,
// areas, masses of dry matter, fresh feed and live weight, yields, densities,
// rates, temperatures, civil days, shares and money.
//
// A quantity is a float64 of its own type, as time.Duration is an integer:
//
//	strip := 45 * units.Foot
//	fmt.Println(strip.Metres())
//
// Text carries its unit, always, and is read by Parse… ("3.5 ac", "250
// lb/ac/in", "28 %"). String prints all digits in the base unit, so that it
// parses back to the same value; In prints for people, in their system.
//
// The package also holds the errors of every formula and look-up: *DomainError, with
// NaN, where an argument is impossible; *RangeError, beside the value, where an
// argument lies outside what the formula's source covers; *ParseError, with NaN, where
// a text is not what it should be, or no table has a word or a name. An answer that
// cannot be NaN is its zero value in place of it.
package units

//go:generate go run ../bindings/internal/bindgen
//go:generate go run ../bindings/internal/bindgen/checks
