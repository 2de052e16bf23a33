package rainfall_test

import (
	"reflect"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/internal/decl"
	"example.org/soum/internal/functions"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// keyEnds are what the key of a quantity ends in: its base unit, nothing for a share.
var keyEnds = map[reflect.Type]string{
	reflect.TypeFor[units.RainDepth]():    "_m",
	reflect.TypeFor[units.Length]():       "_m",
	reflect.TypeFor[units.RainRate]():     "_m_day",
	reflect.TypeFor[units.RainUse]():      "_kg_m2_m",
	reflect.TypeFor[units.WaterHolding](): "_m_m",
	reflect.TypeFor[units.DegreeDays]():   "_c_days",
	reflect.TypeFor[units.Temperature]():  "_c",
	reflect.TypeFor[units.Days]():         "_days",
	reflect.TypeFor[units.Fraction]():     "",
}

// records are what users write down themselves, in text with a unit or in base units:
// their keys are names.
var records = []reflect.Type{
	reflect.TypeFor[rainfall.MonthlyRain](), reflect.TypeFor[rainfall.DailyRain](), reflect.TypeFor[rainfall.DailyWeather](), reflect.TypeFor[rainfall.Bucket](),
}

// TestKeysTellTheUnit walks what every function of the package takes and gives: the key
// of a quantity in a result ends in its unit, and no key is in camel case.
func TestKeysTellTheUnit(t *testing.T) {
	root, err := decl.Root()
	require.NoError(t, err)
	p, err := decl.Read(root, "rainfall")
	require.NoError(t, err)
	seen := map[reflect.Type]bool{}
	for i := range p.Functions {
		f := functions.ByName(p.Functions[i].Full())
		if f == nil {
			continue
		}
		of := reflect.TypeOf(f.Call)
		for j := range of.NumIn() {
			walkKeys(t, of.In(j), seen)
		}
		for j := range of.NumOut() {
			walkKeys(t, of.Out(j), seen)
		}
	}
	assert.Greater(t, len(seen), 20, "the structs of the package")
}

func walkKeys(t *testing.T, of reflect.Type, seen map[reflect.Type]bool) {
	for of.Kind() == reflect.Slice || of.Kind() == reflect.Array || of.Kind() == reflect.Pointer {
		of = of.Elem()
	}
	if of.Kind() != reflect.Struct || !strings.HasSuffix(of.PkgPath(), "soum/rainfall") || seen[of] {
		return
	}
	seen[of] = true
	for i := range of.NumField() {
		field := of.Field(i)
		if field.Anonymous {
			continue // source and mark
		}
		key, _, _ := strings.Cut(field.Tag.Get("json"), ",")
		assert.Regexp(t, `^[a-z][a-z0-9_]*$`, key, "%s.%s", of, field.Name)
		quantity := field.Type
		if quantity.Kind() == reflect.Struct && strings.HasPrefix(quantity.Name(), "Span[") {
			quantity = quantity.Field(0).Type
		}
		if quantity.Kind() != reflect.Float64 || quantity.PkgPath() == "" || isRecord(of) {
			continue
		}
		end, known := keyEnds[quantity]
		require.True(t, known, "%s has no end for a key", quantity)
		assert.True(t, strings.HasSuffix(key, end), "%s.%s has the key %s, which does not end in %s", of, field.Name, key, end)
	}
}

func isRecord(of reflect.Type) bool {
	for _, record := range records {
		if of == record {
			return true
		}
	}
	return false
}
