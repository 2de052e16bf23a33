package units

// RowOr is a row of a table: the name of a published one, or one that the user writes
// out. One of the two is set. In a document it is text or an object.
type RowOr[T any] struct {
	Name string // of a row of the table
	Row  *T     // of the user's own
}
