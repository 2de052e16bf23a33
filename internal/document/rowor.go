package document

import "reflect"

// RowOr is a row of a table: the name of a printed one, or one that the user
// writes out. In a document it is text or an object. One of the two is set.
type RowOr[T any] struct {
	Name string
	Row  *T
}

// variant is what every RowOr is to the reader and the writer.
type variant interface {
	parts() (name, row reflect.Value)
}

func (r *RowOr[T]) parts() (name, row reflect.Value) {
	v := reflect.ValueOf(r).Elem()
	return v.Field(0), v.Field(1)
}
