//go:build soumfault

package door

// The build with faults, for tests of the bindings: behind the last formula
// stands one that panics, and a call that does.
var _ = func() bool {
	table = append(table, struct {
		name      string
		arguments int
		rows      rows
	}{"test.Fault", 1, func([most][]float64, [most]int, []float64, []int32) { panic("a fault put in for a test") }})
	specials["test.fault"] = func([]byte) (any, error) { panic("a fault put in for a test") }
	return true
}()
