// Package document reads JSON documents into Go structs, and writes them, with
// errors that name the place in the document, the value found there and what
// would be right.
//
// A field belongs to the document by its tag `json:"name"`; a field without one
// does not, except that the fields of an embedded struct count as the outer
// struct's own. More tags:
//
//	document:"required"      the key must be there
//	document:"extra"         on a map[string]any tagged json:"-": it takes the
//	                         keys that begin with x-, and note where no field has it
//	allowed:"a number above 0"   what an error says would be right
//
// It is stricter than JSON asks: one object, UTF-8, no key twice, no unknown
// key, no null, names in the case they are written in, whole lists only where a
// length is fixed, objects and lists nested no more than 64 deep, no number that
// only a slip of the hand can have made. Nothing is dropped in silence and nothing
// is guessed.
//
// Decode reads what a person wrote: every quantity is text with its unit. Arguments
// reads what a program hands to a function: the same rules, but numbers may be bare,
// in base units, of any size, or gaps.
package document
