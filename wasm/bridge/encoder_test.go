package bridge

import (
	"encoding/json"
	"math/rand/v2"
	"reflect"
	"testing"
)

// What is generated writes what encoding/json writes, of any value: ten of each answer, with and without each member.
func TestEncodersWriteAsTheLibraryDoes(t *testing.T) {
	random := rand.New(rand.NewPCG(5, 8))
	answers := []reflect.Type{reflect.TypeFor[refusal]()}
	for _, m := range methods {
		answers = append(answers, reflect.TypeOf(m).Out(0))
	}
	for _, of := range answers {
		for range 10 {
			answer := reflect.New(of).Elem()
			fill(answer, random)
			text, err := json.Marshal(map[string]any{"data": answer.Interface()})
			if err != nil {
				t.Fatal(err)
			}
			var want, got any
			if err := json.Unmarshal(text, &want); err != nil {
				t.Fatal(err)
			}
			written := encoded("data", answer.Interface())
			if err := json.Unmarshal(written, &got); err != nil {
				t.Fatalf("%s: %v: %s", of, err, written)
			}
			if !reflect.DeepEqual(got, want) {
				t.Fatalf("%s:\n%s\nnot\n%s", of, written, text)
			}
		}
	}
}

var awkward = []string{"", "a", `"\/`, "<&>", "a\u2028\tä\x00\x1f…", "1e3"}

// fill gives v and what it holds random values, empty ones among them. A nil list is left to TestListsAreThere.
func fill(v reflect.Value, random *rand.Rand) {
	switch v.Kind() {
	case reflect.String:
		v.SetString(awkward[random.IntN(len(awkward))])
	case reflect.Bool:
		v.SetBool(random.IntN(2) == 0)
	case reflect.Int:
		v.SetInt(random.Int64N(5) - 2)
	case reflect.Float64:
		v.SetFloat([]float64{0, -1, 1e6, 1e21, -1e300, 5e-324, random.NormFloat64()}[random.IntN(7)])
	case reflect.Pointer:
		if random.IntN(3) > 0 {
			v.Set(reflect.New(v.Type().Elem()))
			fill(v.Elem(), random)
		}
	case reflect.Slice:
		if v.Type().Implements(reflect.TypeFor[json.Marshaler]()) {
			v.SetBytes([]byte(`[1,{"a":null}]`))
			return
		}
		n := random.IntN(4) / 2
		v.Set(reflect.MakeSlice(v.Type(), n, n))
		if v.Type().Elem().Kind() == reflect.Uint8 {
			return
		}
		for i := range n {
			fill(v.Index(i), random)
		}
	case reflect.Array:
		for i := range v.Len() {
			fill(v.Index(i), random)
		}
	case reflect.Map:
		v.Set(reflect.MakeMap(v.Type()))
		for range random.IntN(3) {
			value := reflect.New(v.Type().Elem()).Elem()
			fill(value, random)
			v.SetMapIndex(reflect.ValueOf(awkward[random.IntN(len(awkward))]), value)
		}
	case reflect.Struct:
		for i := range v.NumField() {
			if f := v.Type().Field(i); f.Tag.Get("json") != "-" && (f.IsExported() || f.Anonymous) {
				fill(v.Field(i), random)
			}
		}
	}
}
