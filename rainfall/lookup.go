package rainfall

import "example.org/soum/units"

// printed is where the figures of a row come from, and how.
func printed(source, mark string) units.Printed { return units.Printed{Source: source, Mark: mark} }
