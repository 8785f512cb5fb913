package design

import (
	"testing"

	"finwright/core/field"
	"finwright/core/rating"
)

// rate rates a design that can be.
func rate(t testing.TB, in field.Input) Heat {
	t.Helper()
	h, err := Rate(in)
	if err != nil {
		t.Fatal(err)
	}
	return h
}

func evaluate(t testing.TB, in field.Input) Result {
	t.Helper()
	return Evaluate(in, rate(t, in))
}

// held is what a design holds of its geometry and its velocity.
func held(in field.Input) *rating.Kept {
	k := in.Keep(nil)
	return &k
}
