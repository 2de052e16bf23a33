package check

import "testing"

// Speed benchmarks a formula. Its argument differs at every call, by less than any
// figure shows, so that nothing is kept from one call to the next.
func Speed[A, R ~float64](b *testing.B, from A, call func(A) (R, error)) {
	b.ReportAllocs()
	step := from * 1e-12
	for b.Loop() {
		_, _ = call(from)
		from += step
	}
}
