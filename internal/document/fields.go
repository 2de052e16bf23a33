package document

import (
	"reflect"
	"slices"
	"strconv"
	"strings"
)

// shape is what a struct type says of its object in a document.
type shape struct {
	word   string // what its keys are called
	fields []field
	extra  *field // the map for keys of the user's own, nil for none
}

// field is a key of an object.
type field struct {
	name      string
	index     []int
	required  bool
	omitEmpty bool
	allowed   string
}

// shapes remembers the shapes of types for one reading or writing.
type shapes map[reflect.Type]*shape

func (s shapes) of(t reflect.Type) *shape {
	if known := s[t]; known != nil {
		return known
	}
	made := &shape{word: "key"}
	made.add(t, nil)
	s[t] = made
	return made
}

func (s *shape) add(t reflect.Type, outer []int) {
	for i := range t.NumField() {
		f := t.Field(i)
		index := append(slices.Clone(outer), i)
		tag, tagged := f.Tag.Lookup("json")
		name, options, _ := strings.Cut(tag, ",")
		marks := strings.Split(f.Tag.Get("document"), ",")
		switch {
		case f.Anonymous && !tagged && f.Type.Kind() == reflect.Struct:
			s.add(f.Type, index)
		case !f.IsExported():
		case slices.Contains(marks, "extra") && f.Type == reflect.TypeFor[map[string]any]():
			s.extra = &field{index: index}
		case !tagged || name == "-" || name == "":
		default:
			s.fields = append(s.fields, field{
				name: name, index: index,
				required:  slices.Contains(marks, "required"),
				omitEmpty: strings.Contains(options, "omitempty") || strings.Contains(options, "omitzero"),
				allowed:   f.Tag.Get("allowed"),
			})
		}
	}
}

func (s *shape) find(name string) *field {
	for i := range s.fields {
		if s.fields[i].name == name {
			return &s.fields[i]
		}
	}
	return nil
}

// ownKey tells whether a key is one of the user's own, which pass through.
func ownKey(name string) bool { return strings.HasPrefix(name, "x-") || name == "note" }

// nearest gives the key that a misspelt one may stand for, "" for none.
func (s *shape) nearest(name string) string {
	known := make([]string, len(s.fields))
	for i := range s.fields {
		known[i] = s.fields[i].name
	}
	return Nearest(name, known)
}

// OneOf lists the names that could have been given, not too many, the one that is perhaps
// meant first.
func OneOf(name string, names []string) string {
	const most = 8
	if len(names) > most {
		names = append(names[:most:most], "…")
	}
	text := "one of: " + strings.Join(names, ", ")
	if near := Nearest(name, names); near != "" {
		return "perhaps " + strconv.Quote(near) + "; " + text
	}
	return text
}

// Nearest gives the name that a misspelt one may stand for, "" for none.
func Nearest(name string, names []string) string {
	best, least := "", 3
	for _, known := range names {
		if d := distance(strings.ToLower(name), strings.ToLower(known)); d < least && d < len(known) {
			best, least = known, d
		}
	}
	return best
}

// distance counts the letters to change, add or take away between two short
// texts; long ones are simply far.
func distance(a, b string) int {
	if len(a) > longest || len(b) > longest {
		return longest
	}
	row := make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := range len(a) {
		corner := row[0]
		row[0] = i + 1
		for j := range len(b) {
			change := corner
			if a[i] != b[j] {
				change++
			}
			corner = row[j+1]
			row[j+1] = min(change, row[j]+1, row[j+1]+1)
		}
	}
	return row[len(b)]
}

// names lists the keys of an object.
func (s *shape) names() string {
	all := make([]string, len(s.fields))
	for i := range s.fields {
		all[i] = s.fields[i].name
	}
	return strings.Join(all, ", ")
}
