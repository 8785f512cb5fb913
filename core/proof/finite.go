package proof

import (
	"math"
	"reflect"
	"testing"
)

// Finite fails on any number in v that is not finite.
func Finite(t testing.TB, name string, v any) {
	t.Helper()
	var visit func(reflect.Value)
	visit = func(v reflect.Value) {
		switch v.Kind() {
		case reflect.Float64:
			if x := v.Float(); math.IsNaN(x) || math.IsInf(x, 0) {
				t.Fatalf("%s holds %v", name, x)
			}
		case reflect.Struct:
			for i := range v.NumField() {
				visit(v.Field(i))
			}
		case reflect.Slice:
			for i := range v.Len() {
				visit(v.Index(i))
			}
		case reflect.Pointer, reflect.Interface:
			if !v.IsNil() {
				visit(v.Elem())
			}
		case reflect.Map:
			for _, key := range v.MapKeys() {
				visit(v.MapIndex(key))
			}
		}
	}
	visit(reflect.ValueOf(v))
}
