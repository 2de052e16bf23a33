package season

import (
	"testing"

	"pgregory.net/rapid"
)

// TestWindowHoldsAll puts stretches in and takes them out and looks whether all that are
// marked stay in the window.
func TestWindowHoldsAll(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		marked, w := make([]bool, 3), nowhere
		for range rapid.IntRange(1, 40).Draw(t, "steps") {
			at := rapid.IntRange(1, len(marked)).Draw(t, "at")
			switch rapid.IntRange(0, 2).Draw(t, "what") {
			case 0: // parted from the one before it, and marked as that is
				marked = append(marked[:at:at], append([]bool{marked[at-1]}, marked[at:]...)...)
				w.inserted(at)
			case 1: // joined to the one before it, where neither is marked
				if at < len(marked) && !marked[at] && !marked[at-1] {
					marked = append(marked[:at:at], marked[at+1:]...)
					w.removed(at)
				}
			case 2:
				last := min(len(marked)-1, at+rapid.IntRange(0, 2).Draw(t, "more"))
				for i := at - 1; i <= last; i++ {
					marked[i] = true
				}
				w.include(at-1, last)
			}
			if rapid.Bool().Draw(t, "unmark") {
				marked[rapid.IntRange(0, len(marked)-1).Draw(t, "which")] = false
			}
			for i, is := range marked {
				if is && (i < w.low || i > w.high) {
					t.Fatalf("%d of %v lies outside of %v", i, marked, w)
				}
			}
		}
	})
}
