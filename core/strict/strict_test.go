package strict

import (
	"encoding/json"
	"errors"
	"strings"
	"testing"
)

func TestDepthIsBounded(t *testing.T) {
	nested := func(n int) []byte { return []byte(strings.Repeat("[", n) + strings.Repeat("]", n)) }
	var v any
	for n, want := range map[int]error{1: nil, Depth: nil, Depth + 1: ErrDeep, 9000: ErrDeep, 1e6: ErrDeep} {
		if err := Unmarshal(nested(n), &v); !errors.Is(err, want) {
			t.Errorf("%d brackets: %v", n, err)
		}
		if err := Decode(nested(n), &v); !errors.Is(err, want) {
			t.Errorf("%d brackets, strictly: %v", n, err)
		}
	}
	if err := Unmarshal([]byte(`["`+strings.Repeat("[", 9000)+`\"[", 1]`), &v); err != nil {
		t.Errorf("brackets in a string: %v", err)
	}
}

func TestDecodeTakesOneKnownValue(t *testing.T) {
	var v struct{ A int }
	for text, wrong := range map[string]bool{`{"a":1}`: false, `{"a":1} `: false, `{"b":1}`: true, `{"a":1}{"a":2}`: true, `{"a":1}]`: true, `{"a":`: true, ``: true} {
		if err := Decode([]byte(text), &v); (err != nil) != wrong {
			t.Errorf("%s: %v", text, err)
		}
	}
}

// Elements are counted as encoding/json finds them.
func TestCount(t *testing.T) {
	for _, text := range []string{`[]`, ` [ ] `, `[1]`, `[1, 2 ,3]`, `[[1,2],{"a":[3,4]},"x,]y\\",null]`, `["\\\""]`, `[[],[]]`, `[{}]`} {
		var want []json.RawMessage
		if err := json.Unmarshal([]byte(text), &want); err != nil {
			t.Fatal(err)
		}
		if got := Count([]byte(text)); got != len(want) {
			t.Errorf("%s: %d elements, want %d", text, got, len(want))
		}
	}
	for _, text := range []string{`null`, `{"a":1,"b":2}`, `"[1,2]"`, `7`} {
		if got := Count([]byte(text)); got != 0 {
			t.Errorf("%s is a list of %d", text, got)
		}
	}
}
