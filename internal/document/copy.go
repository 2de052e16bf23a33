package document

import "reflect"

// Copy gives a document of its own: nothing in it is shared with the old one, so
// that a change of the one leaves the other.
func Copy[T any](v *T) *T { return deep(reflect.ValueOf(v)).Interface().(*T) }

// deep copies a value and all that it points to. Fields that are not exported are
// taken over as they stand; the documents have none that point anywhere.
func deep(v reflect.Value) reflect.Value {
	if (v.Kind() == reflect.Pointer || v.Kind() == reflect.Interface || v.Kind() == reflect.Map || v.Kind() == reflect.Slice) && v.IsNil() {
		return v
	}
	c := reflect.New(v.Type()).Elem()
	switch v.Kind() {
	case reflect.Pointer:
		c.Set(reflect.New(v.Type().Elem()))
		c.Elem().Set(deep(v.Elem()))
	case reflect.Interface:
		c.Set(deep(v.Elem()))
	case reflect.Map:
		c.Set(reflect.MakeMapWithSize(v.Type(), v.Len()))
		for each := v.MapRange(); each.Next(); {
			c.SetMapIndex(each.Key(), deep(each.Value()))
		}
	case reflect.Slice:
		c.Set(reflect.MakeSlice(v.Type(), v.Len(), v.Len()))
		for i := range v.Len() {
			c.Index(i).Set(deep(v.Index(i)))
		}
	case reflect.Struct:
		c.Set(v)
		for i := range v.NumField() {
			if v.Type().Field(i).IsExported() {
				c.Field(i).Set(deep(v.Field(i)))
			}
		}
	default:
		return v
	}
	return c
}
