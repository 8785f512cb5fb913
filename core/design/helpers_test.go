package design

import (
	"testing"

	"finwright/core/field"
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
