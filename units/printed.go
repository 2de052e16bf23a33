package units

// Printed is where the figures of a row stand in print, and how they were come by. The
// rows of the tables embed it.
type Printed struct {
	// Source is a key of SOURCES.md, mostly with the place.
	Source string `json:"source"`
	// Mark is how the figures were come by: A read in the publication, B in a reprint
	// or a press report, D derived by arithmetic, M from memory, or "practice".
	Mark string `json:"mark"`
}
